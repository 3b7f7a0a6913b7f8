//! Slips of the hand, a thousand of them: a handout or a message at its place.

use std::fs;

use leafwright::diag::{Diagnostic, render};
use leafwright::handout::{self, Options, Template};
use leafwright::layout::{self, PageSetup};
use leafwright::pdf::{self, PdfInfo};
use leafwright::plan::{PlanOptions, plan};
use leafwright::project::Project;
use leafwright::source::Sources;

use crate::demos;
use crate::diagnostics::read;
use crate::mutate::mutated;

/// Few steps: what is asked here is whether it ends well, not how good it is.
const BUDGET: u64 = 300;

fn texts() -> Vec<String> {
    demos::paths().iter().map(|it| fs::read_to_string(it).expect("a demo")).collect()
}

/// Every note points at characters of its file, and can be written in every form.
fn located(sources: &Sources, notes: &[Diagnostic], seed: u64) {
    for note in notes {
        let source = sources.of(note.site).expect("a note lies in a file");
        let range = note.site.start as usize..note.site.end as usize;
        assert!(source.text.get(range).is_some(), "seed {seed}: {note:?}");
        assert!(!note.message.is_empty(), "seed {seed}: {note:?}");
        let _ = render::render(note, sources, render::Style::Plain);
        let _ = render::json(note, sources);
    }
}

/// What comes of a mutated demo: its project with its plan, or notes.
fn tried(texts: &[String], seed: u64) -> Option<(Project, leafwright::plan::Plan)> {
    let which = usize::try_from(seed).unwrap_or(0) % texts.len();
    let (sources, outcome) = read("mutated.yaml", &mutated(&texts[which], seed));
    located(&sources, &outcome.notes, seed);
    let Some(project) = outcome.value else {
        assert!(outcome.notes.iter().any(Diagnostic::is_error), "seed {seed}");
        return None;
    };
    let planned =
        plan(&project, &PlanOptions { budget: BUDGET, ..PlanOptions::default() });
    located(&sources, &planned.notes, seed);
    let Some(plan) = planned.value else {
        assert!(planned.notes.iter().any(Diagnostic::is_error), "seed {seed}");
        return None;
    };
    Some((project, plan))
}

#[test]
fn a_thousand_slips_give_a_plan_or_a_message_at_its_place() {
    let texts = texts();
    let sound = (0..1000).filter(|seed| tried(&texts, *seed).is_some()).count();
    assert!((100..900).contains(&sound), "{sound} of 1000 were no slips");
}

#[test]
fn fifty_handouts_of_slips_are_made() {
    let texts = texts();
    let mut press = demos::press();
    let mut made = 0;
    for seed in 0.. {
        let Some((project, plan)) = tried(&texts, seed) else { continue };
        let reader = ["class", "kit", "travel", "host", "bench"][made % 5];
        let template = Template::built_in(reader).expect("it comes with the house");
        let document = handout::write(&project, &plan, &template, Options::default());
        let laid = layout::lay_out(&mut press, &document, &PageSetup::default());
        match laid.value {
            Some(laid) => {
                let bytes = pdf::write(&laid, press.library(), &PdfInfo::default());
                assert!(bytes.expect("a handout").starts_with(b"%PDF"), "seed {seed}");
            }
            None => assert!(laid.notes.iter().any(Diagnostic::is_error), "seed {seed}"),
        }
        made += 1;
        if made == 50 {
            break;
        }
    }
}
