//! `cuts`: how the sheets are cut, in the terminal or as JSON.

use crate::cli::args::Cuts;
use crate::cli::notes::{self, Planned};
use crate::cli::{Halt, Streams, make, plain};
use crate::handout::{self, Drawings, Hands, Kind, Template, Wanted};

/// Shows the cutting.
pub(crate) fn run(asked: &Cuts, streams: &mut Streams<'_>) -> Result<(), Halt> {
    let template = make::built_in(asked.reader.template())?;
    let planned = notes::planned(&asked.described, template.reader, streams)?;
    let Planned { sources, project, plan, notes } = planned;
    notes::write(&notes, &sources, asked.described.messages, streams);
    let template =
        Template { sections: SECTIONS.to_vec(), hands: Hands::Maker, ..template };
    let options = handout::Options::default();
    let document = handout::write(&project, &plan, &template, options);
    let mut text = String::new();
    for (title, section) in plain::text(&document) {
        text.push_str(&format!("{title}\n\n{section}"));
    }
    streams.say(&text)?;
    Ok(())
}

/// What is shown: the plan of each paper, then its steps.
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
