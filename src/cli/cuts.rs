//! `cuts`: how the sheets are cut, in the terminal or as JSON, and kept for later.

use crate::cli::args::Cuts;
use crate::cli::notes::{self, Planned};
use crate::cli::plain::{self, Told};
use crate::cli::{Halt, Streams, files, make};
use crate::handout::{self, Drawings, Hands, Kind, Template, Wanted};
use crate::plan::cut::{Kept, PaperCut, Pencil, drawn};
use crate::plan::cuts_json;
use crate::project::{Project, Reader};

/// Shows the cutting.
pub(crate) fn run(asked: &Cuts, streams: &mut Streams<'_>) -> Result<(), Halt> {
    let template = make::built_in(asked.reader.template())?;
    let planned = notes::planned(&asked.described, template.reader, streams)?;
    let Planned { sources, project, plan, notes } = planned;
    notes::write(&notes, &sources, asked.described.messages, streams);
    if asked.keep {
        let path = files::kept_beside(&asked.described.description);
        let mut kept = Kept::new(&project, &plan.cuts);
        // Others may cut their own sheets: what they cut is kept as well.
        for reader in Reader::ALL.into_iter().filter(|it| *it != template.reader) {
            let planned = notes::planned(&asked.described, reader, streams)?;
            kept = kept.beside(Kept::new(&planned.project, &planned.plan.cuts));
        }
        if let Some(Ok(older)) = files::kept(&asked.described.description) {
            kept = kept.beside(older);
        }
        files::write_whole(&path, kept.to_json().as_bytes())?;
    }
    if asked.json {
        streams.say(&cuts_json(&project, &plan, &notes, &sources))?;
        return Ok(());
    }
    // Whoever cuts, here it is told: the maker's sheets and the reader's.
    let told = [Hands::Maker, Hands::Reader].map(|hands| {
        let sections = SECTIONS.to_vec();
        let template = Template { sections, hands, ..template.clone() };
        let options = handout::Options::default();
        plain::text(&handout::write(&project, &plan, &template, options))
    });
    let told = told.concat();
    let mut text = String::new();
    for cut in &plan.cuts {
        let number = cut.paper.0 + 1;
        section(&mut text, &told, &format!("cut-plan-{number}"));
        text.push_str(&sheets(&project, cut, asked.ascii));
        section(&mut text, &told, &format!("cutting-{number}"));
    }
    streams.say(&text)?;
    Ok(())
}

/// What is told: the plan of each paper and its steps, without drawings.
const SECTIONS: [Wanted; 2] = [wanted(Kind::CutPlan), wanted(Kind::Cutting)];

const fn wanted(kind: Kind) -> Wanted {
    Wanted {
        kind,
        new_page: false,
        drawings: Drawings::LeftOut,
        own_way: true,
        when: None,
    }
}

/// A section under its underlined heading.
fn section(text: &mut String, told: &[Told], anchor: &str) {
    if let Some(section) = told.iter().find(|it| it.anchor == anchor) {
        let underline = "-".repeat(section.title.chars().count());
        text.push_str(&format!("{}\n{underline}\n\n{}", section.title, section.text));
    }
}

/// Every way in which a sheet is cut, drawn.
fn sheets(project: &Project, cut: &PaperCut, ascii: bool) -> String {
    let pencil = Pencil::new(project.unit, ascii);
    let sheets = cut.patterns.iter().enumerate().map(|(index, pattern)| {
        let sheet = drawn(pattern.sheet, &pattern.tree, &cut.parts, &pencil);
        match (cut.patterns.len(), pattern.copies) {
            (1, _) => format!("{sheet}\n"),
            (_, 1) => format!("Plan {}, one sheet:\n{sheet}\n", index + 1),
            (_, copies) => format!("Plan {}, {copies} sheets:\n{sheet}\n", index + 1),
        }
    });
    sheets.collect()
}
