//! Pages of made-up projects, and of the demos, for every reader on every paper.

use std::fs;

use leafwright::diag::render;
use leafwright::document::{Block, Caution, Document, Figure, Marker, Tone};
use leafwright::handout::{self, BUILT_IN, Options, Template};
use leafwright::layout::{PageSetup, PageSize, Press, lay_out};
use leafwright::page::{Laid, Owner};
use leafwright::pdf::{self, PdfInfo};
use leafwright::plan::{PlanOptions, plan};

use crate::demos;
use crate::diagnostics::read;
use crate::drawings::cut_plan;
use crate::made_up;
use crate::page_checks::{faults, texts};
use crate::readback::Read;
use crate::sample_pages;

const SIZES: [PageSize; 4] =
    [PageSize::Letter, PageSize::A4, PageSize::HalfLetter, PageSize::A5];

/// The handout of a description for a reader; any sound plan does.
pub(crate) fn written(name: &str, text: &str, reader: &str) -> Document {
    let (sources, outcome) = read(name, text);
    let said = |notes: &[leafwright::diag::Diagnostic]| {
        let notes = notes.iter().map(|it| render::short(it, &sources));
        notes.collect::<Vec<_>>().join("\n")
    };
    let project =
        outcome.value.unwrap_or_else(|| panic!("{text}\n{}", said(&outcome.notes)));
    let template = Template::built_in(reader).expect("a template of the house");
    let options =
        PlanOptions { reader: template.reader, budget: 2_000, ..PlanOptions::default() };
    let plan = plan(&project, &options);
    let notes = said(&plan.notes);
    let plan = plan.value.unwrap_or_else(|| panic!("{text}\n{notes}"));
    handout::write(&project, &plan, &template, Options::default())
}

fn laid(press: &mut Press, document: &Document, setup: &PageSetup) -> Laid {
    lay_out(press, document, setup).value.expect("pages")
}

#[test]
fn pages_of_two_hundred_projects_hold() {
    let mut press = Press::new();
    let mut wrong = Vec::new();
    for seed in 0..200_u64 {
        let at = usize::try_from(seed).unwrap();
        let reader = BUILT_IN[at % BUILT_IN.len()].0;
        let setup = PageSetup {
            size: SIZES[at / BUILT_IN.len() % 4],
            large_print: at % 9 == 4,
            gray: at % 7 == 3,
        };
        let name = format!("made-up-{seed}.yaml");
        let document = written(&name, &made_up::description(seed), reader);
        let laid = laid(&mut press, &document, &setup);
        let found = faults(&laid);
        wrong.extend(
            found.iter().map(|it| format!("{seed} for {reader}, {setup:?}: {it}")),
        );
        if seed % 40 == 7 {
            let file = pdf::write(&laid, press.library(), &PdfInfo::default());
            let file = Read::new(&file.expect("a file"));
            assert_eq!(file.pages.len(), laid.pages.len());
            let words = file.text(0).replace(char::is_whitespace, "");
            let (_, first) = texts(&laid.pages[0]).next().expect("a title");
            let first = first.run.text.replace(char::is_whitespace, "");
            assert!(words.contains(&first), "{first} in {words}");
        }
    }
    assert!(wrong.is_empty(), "{} faults\n{}", wrong.len(), wrong.join("\n"));
}

#[test]
fn pages_of_every_demo_hold_on_every_paper() {
    let mut press = demos::press();
    let mut wrong = Vec::new();
    for path in demos::paths() {
        let text = fs::read_to_string(&path).expect("a demo");
        let name = path.display().to_string();
        for (reader, _) in BUILT_IN {
            let document = written(&name, &text, reader);
            for size in SIZES {
                for large_print in [false, true] {
                    let setup = PageSetup { size, large_print, gray: large_print };
                    let laid = laid(&mut press, &document, &setup);
                    let found = faults(&laid);
                    wrong.extend(
                        found
                            .iter()
                            .map(|it| format!("{name} for {reader}, {setup:?}: {it}")),
                    );
                }
            }
        }
    }
    assert!(wrong.is_empty(), "{} faults\n{}", wrong.len(), wrong.join("\n"));
}

#[test]
fn words_are_as_large_as_clear_print_asks() {
    let mut press = Press::new();
    let handout = sample_pages::handout();
    let mut check = |blocks: Vec<Block>, least: f64, enlarged: f64| {
        let mut document = handout.clone();
        document.sections.truncate(1);
        document.sections[0].title = sample_pages::words("Words");
        document.sections[0].blocks = blocks;
        for size in SIZES {
            for (large_print, least) in [(false, least), (true, enlarged)] {
                let setup = PageSetup { size, large_print, gray: false };
                let laid = laid(&mut press, &document, &setup);
                for (item, text) in laid.pages.iter().flat_map(texts) {
                    let words = &text.run.text;
                    let small = item.owner == Owner::Running && !large_print;
                    assert!(small || text.run.size >= least - 1e-9, "{setup:?}: {words}");
                }
            }
        }
    };
    let said = || sample_pages::words("Cut 5 1/2 in off and keep what is left.");
    let caution = Caution { signal: "CAUTION".into(), triangle: true, text: said() };
    // Cautions: ISO/IEC Guide 37, 7.3, as a national text has it: 12 pt. Large print:
    // UKAAF G003: 18 pt. Running text: 11 pt (common practice, no source).
    check(vec![Block::Caution(caution)], 12.0, 18.0);
    check(vec![Block::Paragraph(Tone::Body, said())], 11.0, 18.0);
    check(vec![Block::List(Marker::Box, vec![said(), said()])], 11.0, 18.0);
    check(vec![Block::Table(sample_pages::supplies(3))], 10.0, 18.0);
    let drawn = Figure { caption: None, ..sample_pages::figure(cut_plan(), "a sheet") };
    let drawn = Figure { says_scale: false, ..drawn };
    // Labels of drawings: ISO 3098's 2.5 mm capitals are about 10 pt; 9 pt at least.
    check(vec![Block::Figure(drawn)], 9.0, 13.0);
}
