//! Every message: its place, its rule, and how it is shown.
//!
//! A fixture is a description in which a remark at the end of a line names the
//! rules that are broken on it: `# error: rule, other-rule`, `# warning: rule`,
//! `# advice: rule`. The whole set is compared.

use std::collections::BTreeSet;
use std::fs;
use std::path::PathBuf;

use leafwright::diag::{Outcome, render, rules};
use leafwright::project::{self, Project};
use leafwright::source::{Source, Sources};

use crate::paint::Beside;

pub(crate) fn read(name: &str, text: &str) -> (Sources, Outcome<Project>) {
    project::read(Source::new(name, text), &Beside::new(name))
}

fn fixtures() -> Vec<(PathBuf, String)> {
    let folder = fs::read_dir("tests/suite/diagnostics").expect("the folder of fixtures");
    let mut paths: Vec<_> = folder.map(|it| it.expect("an entry").path()).collect();
    paths.sort();
    paths
        .into_iter()
        .map(|path| {
            let text = fs::read_to_string(&path).expect("a readable fixture");
            (path, text)
        })
        .collect()
}

/// Line, severity and rule of everything that a fixture expects.
pub(crate) fn expected(text: &str) -> BTreeSet<(usize, String, String)> {
    let mut expected = BTreeSet::new();
    for (index, line) in text.lines().enumerate() {
        for severity in ["error", "warning", "advice"] {
            let Some((_, names)) = line.split_once(&format!("# {severity}: ")) else {
                continue;
            };
            let names = names.split(" # ").next().unwrap_or_default();
            for name in names.split(',') {
                expected.insert((index + 1, severity.to_owned(), name.trim().to_owned()));
            }
        }
    }
    expected
}

fn found(
    sources: &Sources,
    outcome: &Outcome<Project>,
) -> BTreeSet<(usize, String, String)> {
    let found = outcome.notes.iter().map(|note| {
        let source = sources.of(note.site).expect("a note lies in a file");
        let (line, _) = source.line_column(note.site.start as usize);
        (line, note.rule.severity.word().to_owned(), note.rule.name.to_owned())
    });
    found.collect()
}

#[test]
fn every_fixture_gives_the_notes_that_it_names() {
    let mut wrong = Vec::new();
    for (path, text) in fixtures() {
        let (sources, outcome) = read(&path.display().to_string(), &text);
        let (expected, found) = (expected(&text), found(&sources, &outcome));
        let missing: Vec<_> = expected.difference(&found).collect();
        let surplus: Vec<_> = found.difference(&expected).collect();
        if !missing.is_empty() || !surplus.is_empty() {
            let said: Vec<_> =
                outcome.notes.iter().map(|it| render::short(it, &sources)).collect();
            wrong.push(format!(
                "{}\n  missing {missing:?}\n  surplus {surplus:?}\n  {}",
                path.display(),
                said.join("\n  ")
            ));
        }
        assert_eq!(outcome.value.is_none(), outcome.has_errors(), "{}", path.display());
        let place = |it: &leafwright::diag::Diagnostic| (it.site.file, it.site.start);
        assert!(outcome.notes.iter().map(place).is_sorted(), "{}", path.display());
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}

#[test]
fn every_rule_of_reading_has_a_fixture_and_says_what_to_do() {
    let named: BTreeSet<String> =
        fixtures().iter().flat_map(|(_, text)| expected(text)).map(|it| it.2).collect();
    // Text, values and sense come first; the others are found after reading.
    let planned = rules::ALL[3..].concat();
    for rule in rules::all() {
        let fixture = named.contains(rule.name) || planned.contains(&rule);
        assert!(fixture, "`{}` has no fixture", rule.name);
        assert!(rule.what.ends_with('.') && rule.why.ends_with('.'), "{}", rule.name);
        assert!(!rule.example.is_empty() && !rule.cure.is_empty(), "{}", rule.name);
        assert_ne!(rule.example, rule.cure, "{}", rule.name);
        assert_eq!(rules::find(rule.name), Some(rule), "`{}` stands twice", rule.name);
    }
    for (_, text) in fixtures() {
        for (_, severity, name) in expected(&text) {
            let rule = rules::find(&name).unwrap_or_else(|| panic!("no rule `{name}`"));
            assert_eq!(rule.severity.word(), severity, "{name}");
        }
    }
}

#[test]
fn every_message_is_a_phrase_with_a_cure() {
    for (path, text) in fixtures() {
        let (sources, outcome) = read(&path.display().to_string(), &text);
        for note in &outcome.notes {
            let short = render::short(note, &sources);
            assert!(!note.help.is_empty(), "{short} has no cure");
            let first = note.message.chars().next().expect("a message");
            assert!(!first.is_uppercase() && !note.message.ends_with('.'), "{short}");
            for jargon in ["mapping", "scalar", "sequence", "node", "token", "parse"] {
                assert!(!note.message.contains(jargon), "{short} says {jargon}");
            }
            assert!(
                render::render(note, &sources, render::Style::Styled).contains('\u{1b}')
            );
        }
    }
}

#[test]
fn a_message_marks_its_place_and_offers_the_cure() {
    let text = "title: Meadow Days
unit: in
papers:
  oat: {kind: cardstock, sheet: letter}
pieces:
  café sash: {of: oat, size: 9 x 12 in, count: 2}
  ribbon: {of: oats, size: 5 1/3 x 2 in, count: 2}
";
    let (sources, outcome) = read("walk.yaml", text);
    let said: Vec<_> = outcome
        .notes
        .iter()
        .map(|note| render::render(note, &sources, render::Style::Plain))
        .collect();
    insta::assert_snapshot!(said.join("\n\n"), @r"
    error[piece-larger-than-sheet]: `café sash` is 9 x 12 in; the largest sheet is 8 1/2 x 11 in
     --> walk.yaml:6:30
      |
    4 |   oat: {kind: cardstock, sheet: letter}
      |                                 ------ the largest sheet of its paper
    5 | pieces:
    6 |   café sash: {of: oat, size: 9 x 12 in, count: 2}
      |                              ^^^^^^^^^
      |
      = help: make it smaller, or take a sheet of at least 9 x 12 in

    error[unknown-name]: there is no paper called `oats`
     --> walk.yaml:7:16
      |
    7 |   ribbon: {of: oats, size: 5 1/3 x 2 in, count: 2}
      |                ^^^^
      |
      = help: did you mean `oat`?

    error[off-ruler]: no ruler shows `5 1/3`
     --> walk.yaml:7:28
      |
    7 |   ribbon: {of: oats, size: 5 1/3 x 2 in, count: 2}
      |                            ^^^^^^^^^^^^
      |
      = help: the nearest that one does is `5 21/64 in`
    ");
    let short: Vec<_> =
        outcome.notes.iter().map(|it| render::short(it, &sources)).collect();
    insta::assert_snapshot!(short.join("\n"), @r"
    walk.yaml:6:30: error[piece-larger-than-sheet]: `café sash` is 9 x 12 in; the largest sheet is 8 1/2 x 11 in
    walk.yaml:7:16: error[unknown-name]: there is no paper called `oats`
    walk.yaml:7:28: error[off-ruler]: no ruler shows `5 1/3`
    ");
}

#[test]
fn eight_faults_of_a_file_are_reported_together() {
    let path = "tests/suite/diagnostics/eight-at-once.yaml";
    let text = fs::read_to_string(path).expect("the fixture");
    let (_, outcome) = read(path, &text);
    assert_eq!(outcome.notes.iter().filter(|it| it.is_error()).count(), 8);
}

#[test]
fn the_traps_of_yaml_are_told_in_plain_words() {
    for (text, said) in [
        ("title:Meadow Days\nunit: in", "1:6: a space is missing after this colon"),
        ("title: A\nunit:in", "2:5: a space is missing after this colon"),
        ("title: 'Don't go'", "1:13: the single quote before this closes the words"),
        ("title: \"A\" walk", "1:12: something follows the closing quote"),
        ("title: A\nabout: one\ntwo", "3:1: a colon is missing after these words"),
        (
            "title: A\nunit: in\ntips:\n- one\n-two",
            "5:1: a space is missing after this dash",
        ),
        ("title: A\ntips:\n - one\n  - two", "4:3: this row is indented further"),
        ("title: A\nabout: - one", "2:8: a dash can't start a list here"),
        ("title: A\ntips: [one, two\nkits: 3", "3:5: a new key starts here"),
        (
            "title: A\ntips: [one, two}",
            "2:7: this bracket is closed with one of another shape",
        ),
        (
            "title: A\ncut by: {class: maker kit: reader}",
            "2:26: a second colon without a comma",
        ),
        ("title: A\nabout: @home", "2:8: this sign can't start a value"),
        ("title: A\nabout: \"\\q\"", "2:8: a `\\` between double quotes"),
        (
            "title: A\npapers:\n  oat:\n    sheet: a4\n     kind: plain",
            "5:10: this line is indented further",
        ),
        (
            "title: A\npapers:\n  tips:\n    kits: 3",
            "3:3: `tips` is indented as if it were a paper",
        ),
        ("title: A\n---\ntitle: B", "2:1: a second description starts here"),
        ("title: A\n[a]: b", "2:1: a key must be a word or some words"),
        ("just words", "1:1: a description has keys of its own"),
    ] {
        let (sources, outcome) = read("trap.yaml", text);
        let notes: Vec<_> = outcome
            .notes
            .iter()
            .map(|note| {
                let (line, column) =
                    sources.files[0].line_column(note.site.start as usize);
                format!("{line}:{column}: {}", note.message)
            })
            .collect();
        assert!(outcome.value.is_none(), "{text}");
        assert!(notes.iter().any(|it| it.starts_with(said)), "{text}\n{said}\n{notes:?}");
    }
    for (text, help) in [
        (
            "title: A\npapers:\noat: {sheet: a4}",
            "indent the line if it belongs to `papers`",
        ),
        ("title: A\npapers: {oat: {sheet: 8,5 x 11 in}}", "write decimals with a point"),
        (
            "title: A\nlayers: []",
            "it is a key of a card, of the inside of a card: is the line indented too far or too little?",
        ),
        ("title: A\nbases: {note: {format: a2}}", "did you mean `a2-us`?"),
    ] {
        let (_, outcome) = read("trap.yaml", text);
        let all: Vec<_> = outcome.notes.iter().flat_map(|it| &it.help).collect();
        assert!(all.iter().any(|it| *it == help), "{text}\n{all:?}");
    }
}
