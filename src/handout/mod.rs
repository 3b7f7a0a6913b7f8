//! Which sections a handout has, in which order, for which reader.
//!
//! One file for each kind of section; what they share is in `writer` (the words,
//! and whose work is whose) and `phrases` (what things are called).

mod attach;
mod bag;
mod buy;
mod cards;
mod cautions;
mod check_bar;
mod cover;
mod cut_plan;
mod cutting;
mod envelope;
mod extras;
mod fronts;
mod need;
mod phrases;
mod prepare;
mod punched;
mod sheets;
mod template;
mod writer;

pub use template::{
    BUILT_IN, Drawings, Hands, Kind, Template, TemplateError, Wanted, When,
};

use crate::document::{Block, Document, Foot, Section, Start, Text};
use crate::handout::writer::Writer;
use crate::plan::Plan;
use crate::project::Project;
use crate::words::{Units, Words};

/// What a reader may choose for her copy.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Options {
    /// The units that lengths are printed in; the project's own if left out.
    pub units: Option<Units>,
}

/// Writes a handout.
pub fn write(
    project: &Project,
    plan: &Plan,
    template: &Template,
    options: Options,
) -> Document {
    let units = options.units.unwrap_or(Units::Only(project.unit));
    let words = Words::load(&project.language, units);
    let w = &Writer { project, plan, template, words: &words };
    let mut sections = Vec::new();
    for (at, wanted) in template.sections.iter().enumerate() {
        let mut written = section(w, wanted);
        if let (Some(first), true) = (written.first_mut(), wanted.new_page) {
            first.start = Start::NewPage;
        }
        // A template may ask for one section twice.
        let before = &template.sections[..at];
        if before.iter().any(|it| it.kind == wanted.kind) {
            for section in &mut written {
                section.anchor = format!("{}-{at}", section.anchor);
            }
        }
        sections.extend(written);
    }
    Document {
        title: project.title.words.clone(),
        language: words.language().to_owned(),
        foot: foot(w),
        sections,
    }
}

fn section(w: &Writer<'_>, wanted: &Wanted) -> Vec<Section> {
    match wanted.kind {
        Kind::Cover => cover::write(w, wanted),
        Kind::Cautions => cautions::write(w, wanted),
        Kind::Need => need::write(w, wanted),
        Kind::Buy => buy::write(w),
        Kind::Bag => bag::received(w),
        Kind::CutPlan => cut_plan::write(w, wanted),
        Kind::Cutting => cutting::write(w, wanted),
        Kind::Prepare => prepare::write(w, wanted),
        Kind::Cards => cards::write(w, wanted),
        Kind::Pack => bag::packed(w),
        Kind::Envelope => envelope::write(w),
        Kind::CheckBar => check_bar::write(w),
    }
}

/// A section of some blocks; none if there are none.
fn of_blocks(anchor: &str, title: Text, blocks: Vec<Block>) -> Vec<Section> {
    if blocks.is_empty() {
        return Vec::new();
    }
    vec![Section { anchor: anchor.to_owned(), title, start: Start::Below, blocks }]
}

fn foot(w: &Writer<'_>) -> Foot {
    let title = w.user(&w.project.title);
    let left = match &w.project.edition {
        Some(edition) => {
            let edition = w.user(edition);
            let values = [("title", title.into()), ("edition", edition.into())];
            w.say("foot-with-edition", &values)
        }
        None => writer::plain(&title),
    };
    Foot {
        left,
        page_of: w
            .say("foot-page", &[("page", "{page}".into()), ("pages", "{pages}".into())]),
        continued: w.say("foot-continued", &[]),
        scale: w.say("foot-scale", &[("scale", "{scale}".into())]),
    }
}
