//! The cutting as JSON: as its schema says, and enough to cut by.

use std::collections::BTreeMap;
use std::fs;

use leafwright::plan::{PlanOptions, cuts_json, plan};
use leafwright::project::*;
use leafwright::source::{Site, Source, Sources};
use serde_json::{Value, json};

use crate::hand_made::*;
use crate::json_schema::fault;

/// Strips and panels of one paper, a base and labels of another, mats of scraps.
fn set(kits: u32) -> Project {
    let mut project = project();
    project.kits = kits;
    project.spares = Spares::Kits(0);
    project.papers.push(paper("oat", size(136, 176), &[Runs::Any]));
    project.papers.push(paper("slate", size(0, 0), &[Runs::Any]));
    project.papers[2].stock = Stock::Scraps(size(48, 48), Site::default());
    project.bases[0].from = BaseFrom::Made(PaperId(1));
    project.pieces = vec![
        piece("sash", size(88, 32)),
        piece("panel", size(60, 80)),
        piece("tile", size(20, 20)),
    ];
    let mut hello = greeting("hello");
    hello.of = PaperId(1);
    let border = sixteenths(1);
    hello.mat = Some(LabelMat::cut(PaperId(2), border, Site::default()));
    project.greetings.push(hello);
    let on = |index| layer(Placed::Piece(PieceId(index)));
    project.cards = vec![
        card("One", Stands::Wide, vec![on(0), layer(Placed::Greeting(GreetingId(0)))]),
        card("Two", Stands::Tall, vec![on(1), on(2), on(2)]),
    ];
    project
}

fn exported(project: &Project) -> Value {
    let options = PlanOptions { budget: 1_000_000, ..PlanOptions::default() };
    let outcome = plan(project, &options);
    let plan = outcome.value.unwrap_or_else(|| panic!("{:#?}", outcome.notes));
    let files = vec![Source::new("set.yaml", "title: A set\n")];
    let json = cuts_json(project, &plan, &outcome.notes, &Sources { files });
    serde_json::from_str(&json).expect("what is written is JSON")
}

fn schema() -> Value {
    let text = fs::read_to_string("templates/cuts.schema.json").expect("the schema");
    serde_json::from_str(&text).expect("the schema is JSON")
}

#[test]
fn the_cutting_is_as_its_schema_says() {
    let schema = schema();
    for kits in [1, 7] {
        let mut project = set(kits);
        // Between two marks, so that there is a note.
        project.pieces[2].size.width = leafwright::geom::Length::mm(29);
        let exported = exported(&project);
        assert_eq!(fault(&schema, &schema, &exported, ""), None);
        assert_eq!(exported["notes"][0]["file"], "set.yaml");
    }
}

#[test]
fn the_schema_finds_what_is_wrong() {
    let schema = schema();
    let right = exported(&set(1));
    for (place, wrong) in [
        ("/version", json!(2)),
        ("/kits", json!("1")),
        ("/papers/0/sheets_used", json!(-1)),
        ("/papers/0/parts/0/kind", json!("lid")),
        ("/papers/0/patterns/0/tree", json!({"is": "cut"})),
        ("/papers/0/steps/0/mark", json!({"text": "1 in", "units": 365_760, "more": 1})),
    ] {
        let mut value = right.clone();
        *value.pointer_mut(place).expect("a place in the export") = wrong;
        assert!(fault(&schema, &schema, &value, "").is_some(), "{place}");
    }
}

/// Width and height in units.
type Sides = (i64, i64);

fn sides(value: &Value) -> Sides {
    let units = |name: &str| value[name]["units"].as_i64().expect("a length");
    (units("width"), units("height"))
}

/// Cuts a sheet by the nested cuts, and counts what comes out by letter.
fn cut_by_tree(
    tree: &Value,
    (width, height): Sides,
    out: &mut Vec<(String, bool, Sides)>,
) {
    match tree["is"].as_str().expect("what it is") {
        "part" => {
            let letter = tree["letter"].as_str().expect("a letter").to_owned();
            let turned = tree["turned"].as_bool().expect("turned or not");
            out.push((letter, turned, (width, height)));
        }
        "cut" => {
            let at = tree["at"]["units"].as_i64().expect("a length");
            let upright = tree["runs"] == "upright";
            assert!(0 < at && at < if upright { width } else { height });
            let (first, second) = if upright {
                ((at, height), (width - at, height))
            } else {
                ((width, at), (width, height - at))
            };
            cut_by_tree(&tree["first"], first, out);
            cut_by_tree(&tree["second"], second, out);
        }
        _ => {}
    }
}

#[test]
fn the_nested_cuts_alone_yield_what_the_cards_need() {
    for kits in [1, 5] {
        let exported = exported(&set(kits));
        for paper in exported["papers"].as_array().expect("papers") {
            if paper["stock"] == "scraps" {
                continue;
            }
            let mut come: BTreeMap<String, u64> = BTreeMap::new();
            let parts = paper["parts"].as_array().expect("parts");
            for pattern in paper["patterns"].as_array().expect("patterns") {
                let mut out = Vec::new();
                cut_by_tree(&pattern["tree"], sides(&pattern["sheet"]), &mut out);
                for (letter, turned, size) in out {
                    let part =
                        parts.iter().find(|part| part["letter"] == letter.as_str());
                    let part = part.expect("a part with this letter");
                    let (width, height) = sides(&part["size"]);
                    assert!(!turned || part["may_turn"] == true);
                    assert_eq!(
                        size,
                        if turned { (height, width) } else { (width, height) }
                    );
                    *come.entry(letter).or_default() +=
                        pattern["copies"].as_u64().expect("copies");
                }
            }
            for part in parts {
                let letter = part["letter"].as_str().expect("a letter");
                assert_eq!(come.get(letter).copied(), part["count"].as_u64(), "{letter}");
            }
        }
        // What one kit needs by its cards: own count.
        let per_kit: Vec<_> = exported["papers"]
            .as_array()
            .expect("papers")
            .iter()
            .flat_map(|paper| paper["parts"].as_array().expect("parts"))
            .map(|part| (part["letter"].as_str(), part["per_kit"].as_u64()))
            .collect();
        assert_eq!(
            per_kit,
            [
                (Some("A"), Some(1)),
                (Some("B"), Some(1)),
                (Some("C"), Some(2)),
                (Some("D"), Some(2)),
                (Some("E"), Some(1)),
                (Some("F"), Some(1)),
            ]
        );
    }
}

#[test]
fn the_steps_alone_yield_what_the_cards_need() {
    let exported = exported(&set(5));
    for paper in exported["papers"].as_array().expect("papers") {
        let mut come: BTreeMap<&str, u64> = BTreeMap::new();
        let mut mark = None;
        let mut marks = 0;
        for step in paper["steps"].as_array().expect("steps") {
            let units = step["mark"]["units"].as_i64();
            assert_eq!(step["moves"], mark != units, "the mark is said to move or not");
            marks += u64::from(mark != units);
            mark = units;
            let copies = step["copies"].as_u64().expect("copies");
            let alike = step["alike"].as_array().expect("a list").len() as u64 + 1;
            let off = step["off"].as_array().expect("a list");
            assert_eq!(step["times"].as_u64(), Some(off.len() as u64));
            for made in off.iter().chain([&step["stays"]]) {
                if made["becomes"]["is"] == "part" {
                    let letter = made["becomes"]["letter"].as_str().expect("a letter");
                    *come.entry(letter).or_default() += copies * alike;
                }
            }
            for made in off {
                let (width, height) = sides(&made["rect"]);
                let across = if step["runs"] == "upright" { width } else { height };
                assert_eq!(
                    Some(across),
                    units,
                    "what comes off has the mark as its extent"
                );
            }
        }
        assert_eq!(paper["marks"].as_u64(), Some(marks));
        if paper["stock"] == "sheets" {
            for part in paper["parts"].as_array().expect("parts") {
                let letter = part["letter"].as_str().expect("a letter");
                assert_eq!(come.get(letter).copied(), part["count"].as_u64(), "{letter}");
            }
        }
    }
}

#[test]
fn lengths_are_written_as_one_writes_them_and_exactly() {
    let exported = exported(&set(1));
    let width = &exported["papers"][0]["parts"][0]["size"]["width"];
    assert_eq!(width, &json!({"text": "5 1/2 in", "units": 11 * 365_760 / 2}));
}

#[test]
fn sheets_without_any_card_are_cut_as_well_in_both_units() {
    let text = "title: Sheets\nunit: in\nkits: 7\nspares: none\npapers:\n  \
                leaf: {sheet: 12 x 12 in}\n  sea: {sheet: a4}\npieces:\n  \
                one: {of: leaf, size: 40 mm x 2 1/4 in, count: 3}\n  \
                two: {of: leaf, size: 3 in x 70 mm, count: 2}\n  \
                three: {of: sea, size: 50 x 60 mm, count: 3}\n";
    let (sources, read) = crate::diagnostics::read("sheets.yaml", text);
    let project = read.value.expect("it reads");
    let plan = plan(&project, &PlanOptions::default()).value.expect("it can be cut");
    let exported = cuts_json(&project, &plan, &[], &sources);
    let exported: Value = serde_json::from_str(&exported).expect("JSON");
    let schema = schema();
    assert_eq!(fault(&schema, &schema, &exported, ""), None);
    let counts = |paper: usize| -> Vec<Value> {
        let parts = exported["papers"][paper]["parts"].as_array().expect("parts");
        parts.iter().map(|it| it["count"].clone()).collect()
    };
    assert_eq!((counts(0), counts(1)), (vec![json!(21), json!(14)], vec![json!(21)]));
    let one = &exported["papers"][0]["parts"][0]["size"];
    assert_eq!(one["width"]["units"], 40 * 14_400);
}
