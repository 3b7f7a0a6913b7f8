//! Every message of the planner stands at its place.
//!
//! A fixture in `planning` is a description that reads without an error; remarks
//! name the rules that its plan breaks, as for the messages of reading.

use std::collections::BTreeSet;
use std::fs;

use leafwright::diag::{Diagnostic, Severity, render, rules};
use leafwright::plan::{PlanOptions, plan};
use leafwright::source::Sources;

use crate::diagnostics::{expected, read};

/// Rules of the plan that no fixture here breaks: the model can't express it from
/// a description, or another test does.
const ELSEWHERE: [&str; 6] = [
    "layers-in-a-circle",
    "part-fits-no-sheet",
    "card-too-thick-for-envelope",
    "card-thick-for-a-letter",
    "kept-plan-does-not-fit",
    // Only a fault in the planner breaks this one.
    "cuts-do-not-come-out",
];

fn fixtures() -> Vec<(String, String)> {
    let folder = fs::read_dir("tests/suite/planning").expect("the folder of fixtures");
    let mut paths: Vec<_> = folder.map(|it| it.expect("an entry").path()).collect();
    paths.sort();
    let read = |path| fs::read_to_string(path).expect("a readable fixture");
    paths.iter().map(|path| (path.display().to_string(), read(path))).collect()
}

/// Line, severity and rule of the notes of a plan.
fn found(sources: &Sources, notes: &[Diagnostic]) -> BTreeSet<(usize, String, String)> {
    let found = notes.iter().map(|note| {
        let source = sources.of(note.site).expect("a note lies in a file");
        let (line, _) = source.line_column(note.site.start as usize);
        (line, note.rule.severity.word().to_owned(), note.rule.name.to_owned())
    });
    found.collect()
}

#[test]
fn every_fixture_is_planned_with_the_notes_that_it_names() {
    for (name, text) in fixtures() {
        let (sources, outcome) = read(&name, &text);
        let said: Vec<_> =
            outcome.notes.iter().map(|it| render::short(it, &sources)).collect();
        let project = outcome.value.unwrap_or_else(|| panic!("{}", said.join("\n")));
        let plan = plan(&project, &PlanOptions::default());
        let said: Vec<_> =
            plan.notes.iter().map(|it| render::short(it, &sources)).collect();
        let found: BTreeSet<_> = [&outcome.notes, &plan.notes]
            .into_iter()
            .flat_map(|notes| found(&sources, notes))
            .collect();
        assert_eq!(found, expected(&text), "{name}\n{said:#?}");
        assert_eq!(plan.value.is_none(), plan.has_errors());
        let place = |it: &Diagnostic| (it.site.file, it.site.start);
        assert!(plan.notes.iter().map(place).is_sorted(), "{name}");
    }
}

#[test]
fn every_rule_of_the_plan_is_broken_somewhere() {
    let texts: Vec<_> = fixtures().into_iter().map(|(_, text)| expected(&text)).collect();
    let mut broken: BTreeSet<String> =
        texts.into_iter().flatten().map(|(_, _, rule)| rule).collect();
    broken.extend(ELSEWHERE.map(str::to_owned));
    let first = rules::find("layer-off-the-front").expect("a rule of the plan");
    let rows = rules::ALL.iter().find(|rows| rows.contains(&first)).expect("its rows");
    for rule in *rows {
        assert!(broken.contains(rule.name), "`{}` is broken nowhere", rule.name);
    }
}

#[test]
fn every_message_of_the_plan_is_a_phrase_and_errors_offer_a_cure() {
    for (name, text) in fixtures() {
        let (_, outcome) = read(&name, &text);
        let project = outcome.value.expect("it reads");
        for note in plan(&project, &PlanOptions::default()).notes {
            let message = &note.message;
            assert!(!message.ends_with('.'), "{message}");
            assert!(!message.starts_with(char::is_uppercase), "{message}");
            let cure = note.rule.severity != Severity::Error || !note.help.is_empty();
            assert!(cure, "{message}");
        }
    }
}
