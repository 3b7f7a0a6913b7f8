//! Which sections a handout has, in which order, for which reader.
//!
//! One file for each kind of section; what they share is in `writer` (the words,
//! and whose work is whose) and `phrases` (what things are called).

mod apart;
mod attach;
mod bag;
mod bench;
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
mod gift;
mod host;
mod lie;
mod links;
mod need;
mod pattern;
mod photo;
mod phrases;
mod prepare;
mod punched;
mod readied;
mod sheets;
mod states;
mod strips;
mod template;
mod true_size;
mod writer;

pub use template::{
    BUILT_IN, Drawings, Hands, Kind, Template, TemplateError, Wanted, When,
};

use crate::document::{Block, Document, Foot, Section, Start, Text};
use crate::handout::pattern::Patterns;
use crate::handout::writer::Writer;
use crate::plan::Plan;
use crate::project::Project;
use crate::words::{Units, Words};

/// What a reader may choose for her copy.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Options<'a> {
    /// The units that lengths are printed in; the project's own if left out.
    pub units: Option<Units>,
    /// The language that it is written in, as in BCP 47; the project's own if left
    /// out.
    pub language: Option<&'a str>,
    /// The sheets are drawn at true size as well, whether the template asks or not.
    pub true_size: bool,
    /// Everybody gets her own copy: there is room for a name, to be filled in by
    /// [`named`].
    pub for_name: bool,
    /// Those who take part, for the host's list.
    pub names: &'a [String],
}

/// Stands for the name of a copy's owner until it is filled in; the character
/// belongs to nobody (Unicode, private use).
const NAME: &str = "\u{f8ff}";

/// The copy of a person, of a handout that was written with [`Options::for_name`].
pub fn named(document: &Document, name: &str) -> Document {
    let mut copy = document.clone();
    copy.foot.left = copy.foot.left.replace(NAME, name);
    let blocks = copy.sections.iter_mut().flat_map(|it| &mut it.blocks);
    for block in blocks {
        if let Block::Paragraph(_, text) = block {
            for inline in text.iter_mut().filter(|it| it.text.contains(NAME)) {
                inline.text = inline.text.replace(NAME, name);
            }
        }
    }
    copy
}

/// Writes a handout.
pub fn write(
    project: &Project,
    plan: &Plan,
    template: &Template,
    options: Options<'_>,
) -> Document {
    let units = options.units.unwrap_or(Units::Only(project.unit));
    let language = options.language.unwrap_or(&project.language);
    let words = Words::load(language, units);
    let patterns = Patterns::new(project, plan);
    let w = &Writer {
        project,
        plan,
        template,
        words: &words,
        language,
        patterns: &patterns,
        options: &options,
    };
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
    let asked = template.sections.iter().any(|it| it.kind == Kind::TrueSize);
    if options.true_size && !asked {
        sections.extend(true_size::write(w));
    }
    links::settle(w, &mut sections);
    Document {
        title: w.bare(&project.title),
        language: words.language().to_owned(),
        foot: foot(w),
        sections,
        pictures: patterns.pictures,
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
        Kind::Layers => apart::write(w),
        Kind::Cards => cards::write(w, wanted),
        Kind::Pack => bag::packed(w),
        Kind::Envelope => envelope::write(w),
        Kind::CheckBar => check_bar::write(w),
        Kind::Countdown => host::countdown(w),
        Kind::Times => host::times(w),
        Kind::Attendance => host::attendance(w),
        Kind::Labels => bench::labels(w),
        Kind::Tally => bench::tally(w),
        Kind::Gift => gift::write(w),
        Kind::TrueSize => true_size::write(w),
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
    let mut left = match &w.project.edition {
        Some(edition) => {
            let edition = w.user(edition);
            // A bare number would be taken for that of the page.
            let number = writer::plain(&edition).chars().all(|it| it.is_ascii_digit());
            let kind = if number { "number" } else { "words" };
            let values = [
                ("title", title.into()),
                ("kind", kind.into()),
                ("edition", edition.into()),
            ];
            w.say("foot-with-edition", &values)
        }
        None => writer::plain(&title),
    };
    if w.options.for_name {
        left = w.say("foot-with-name", &[("left", left.into()), ("name", NAME.into())]);
    }
    Foot {
        left,
        page_of: w
            .say("foot-page", &[("page", "{page}".into()), ("pages", "{pages}".into())]),
        continued: w.say("foot-continued", &[]),
        scale: w.say("foot-scale", &[("scale", "{scale}".into())]),
        rulers: [w.say("ruler-inch", &[]), w.say("ruler-mm", &[])],
    }
}
