//! Forty kits and their spares, cut on imaginary paper by the steps alone, fill
//! exactly the bags that the maker is told to fill.

use std::collections::BTreeMap;
use std::fs;

use leafwright::document::{Block, Document};
use leafwright::handout::{self, Options, Template};
use leafwright::plan::{PlanOptions, cuts_json, plan};
use serde_json::Value;

use crate::demos;
use crate::diagnostics::read;

/// Left, top, width, height, in units of the file.
type Place = [i64; 4];

/// The steps of a description as anyone reads them, and the bags of its maker.
fn batch(path: &str, kits: u32) -> (Value, Document) {
    let text = fs::read_to_string(path).expect("a readable demo");
    let (sources, outcome) = read(path, &text);
    let project = outcome.value.expect("a sound demo");
    let template = Template::built_in("bench").expect("a built-in template");
    let asked = PlanOptions {
        kits: Some(kits),
        reader: template.reader,
        budget: 50_000,
        ..PlanOptions::default()
    };
    let plan = plan(&project, &asked).value.expect("a plan");
    let document = handout::write(&project, &plan, &template, Options::default());
    let json = cuts_json(&project, &plan, &[], &sources);
    (serde_json::from_str(&json).expect("what is written is JSON"), document)
}

fn rows<'a>(value: &'a Value, key: &str) -> &'a [Value] {
    value[key].as_array().map_or(&[], Vec::as_slice)
}

fn units(value: &Value) -> i64 {
    value["units"].as_i64().expect("a length")
}

fn place(rect: &Value) -> Place {
    ["x", "y", "width", "height"].map(|key| units(&rect[key]))
}

/// Carries the steps of a paper out: what is on the table is taken from there and
/// cut at the mark, and nothing else exists. What comes of it, by letter.
fn carried_out(paper: &Value) -> Result<BTreeMap<String, i64>, String> {
    let mut table: BTreeMap<(i64, Place), i64> = BTreeMap::new();
    for (at, pattern) in (0..).zip(rows(paper, "patterns")) {
        let sheet = &pattern["sheet"];
        let whole = [0, 0, units(&sheet["width"]), units(&sheet["height"])];
        table.insert((at, whole), pattern["copies"].as_i64().expect("a count"));
    }
    let sizes: BTreeMap<&str, [i64; 2]> = rows(paper, "parts")
        .iter()
        .map(|it| {
            let size = ["width", "height"].map(|key| units(&it["size"][key]));
            (it["letter"].as_str().expect("a letter"), size)
        })
        .collect();
    let mut made = BTreeMap::new();
    for (number, step) in (1..).zip(rows(paper, "steps")) {
        let pattern = step["pattern"].as_i64().expect("a number");
        let copies = step["copies"].as_i64().expect("a count");
        let first = place(&step["in_hand"]);
        // An upright cut goes across the width, a level one across the height.
        let side = if step["runs"] == "upright" { 0 } else { 1 };
        let alike = rows(step, "alike").iter().map(place);
        for part in std::iter::once(first).chain(alike) {
            let there = table.entry((pattern, part)).or_default();
            if *there < copies {
                return Err(format!("step {number}: {part:?} is not on the table"));
            }
            *there -= copies;
            let stays = std::iter::once(&step["stays"]);
            let pieces: Vec<&Value> = rows(step, "off").iter().chain(stays).collect();
            // Cut by cut, from the edge at the rule: only the last may differ.
            let mut lengths: Vec<i64> =
                pieces.iter().map(|it| place(&it["rect"])[2 + side]).collect();
            if lengths.iter().sum::<i64>() != part[2 + side] {
                return Err(format!("step {number}: the parts are not the whole"));
            }
            lengths.pop();
            if lengths.iter().any(|it| *it != units(&step["mark"])) {
                return Err(format!("step {number}: something else comes off"));
            }
            for piece in pieces {
                let mut lies = place(&piece["rect"]);
                if lies[3 - side] != part[3 - side] {
                    return Err(format!("step {number}: not from edge to edge"));
                }
                lies[0] += part[0] - first[0];
                lies[1] += part[1] - first[1];
                let becomes = &piece["becomes"];
                match becomes["is"].as_str().expect("a word") {
                    "part" => {
                        let letter = becomes["letter"].as_str().expect("a letter");
                        let size = [lies[2], lies[3]];
                        let wanted = sizes[letter];
                        if size != wanted && size != [wanted[1], wanted[0]] {
                            return Err(format!("step {number}: {letter} is {size:?}"));
                        }
                        *made.entry(letter.to_owned()).or_insert(0) += copies;
                    }
                    "aside" | "hand" => {
                        *table.entry((pattern, lies)).or_insert(0) += copies;
                    }
                    "offcut" | "waste" => {}
                    other => return Err(format!("step {number}: {other}")),
                }
            }
        }
    }
    match table.iter().find(|it| *it.1 > 0) {
        Some((left, count)) => Err(format!("{count} of {left:?} are never cut")),
        None => Ok(made),
    }
}

/// What has to lie in each bag, as the first line of the maker's tally has it.
fn in_a_bag(document: &Document) -> BTreeMap<String, i64> {
    let tally = document.sections.iter().find(|it| it.anchor == "tally");
    let tables = tally.into_iter().flat_map(|it| &it.blocks);
    let tables = tables.filter_map(|it| match it {
        Block::Table(table) => Some(table),
        _ => None,
    });
    let mut bag = BTreeMap::new();
    for table in tables {
        for (column, cell) in table.columns.iter().zip(&table.rows[0]).skip(1) {
            let head: String = column.head.iter().map(|it| it.text.as_str()).collect();
            bag.insert(head, cell[0].text.parse().expect("a count"));
        }
    }
    bag
}

/// What is wrong if all bags are filled from what was cut.
fn short_or_over(
    made: &BTreeMap<String, i64>,
    bag: &BTreeMap<String, i64>,
    bags: i64,
) -> Vec<String> {
    let wrong = made.iter().filter(|(letter, made)| {
        bag.get(*letter).is_none_or(|each| each * bags != **made)
    });
    wrong.map(|it| it.0.clone()).collect()
}

#[test]
fn forty_kits_and_their_spares_fill_the_bags_to_the_last_piece() {
    for path in demos::paths() {
        let name = path.display().to_string();
        let (cuts, document) = batch(&name, 40);
        let bags = cuts["kits"].as_i64().expect("a count");
        assert!(bags > 40, "{name}: {bags} with spares");
        let bag = in_a_bag(&document);
        for paper in rows(&cuts, "papers").iter().filter(|it| it["stock"] == "sheets") {
            // Sheets that a buyer cuts herself lie in her bag as they are.
            let pooled = paper["kits_together"].as_i64().expect("a count");
            if pooled != bags {
                continue;
            }
            let made = carried_out(paper).unwrap_or_else(|it| panic!("{name}: {it}"));
            assert!(!made.is_empty(), "{name}");
            assert_eq!(short_or_over(&made, &bag, bags), [""; 0], "{name}: {made:?}");
        }
    }
}

#[test]
fn a_piece_that_is_taken_away_is_missed() {
    let (cuts, document) = batch("demo-data/orchard-evenings.yaml", 40);
    let bags = cuts["kits"].as_i64().expect("a count");
    let bag = in_a_bag(&document);
    let paper = &cuts["papers"][0];
    let steps = rows(paper, "steps").len();
    let mut missed = 0;
    for at in 0..steps {
        // What should have become a piece is thrown away instead.
        let mut paper = paper.clone();
        let step = &mut paper["steps"][at];
        if step["stays"]["becomes"]["is"] != "part" {
            continue;
        }
        let letter = step["stays"]["becomes"]["letter"].as_str().expect("one").to_owned();
        step["stays"]["becomes"] = serde_json::json!({ "is": "waste" });
        let made = carried_out(&paper).expect("the cuts are the same");
        assert_eq!(short_or_over(&made, &bag, bags), [letter], "step {}", at + 1);
        missed += 1;
    }
    assert!(missed > 5, "{missed}");
    // A sheet less, and the cuts cannot even be made.
    let mut paper = paper.clone();
    let copies = paper["patterns"][0]["copies"].as_i64().expect("a count");
    paper["patterns"][0]["copies"] = (copies - 1).into();
    assert!(carried_out(&paper).is_err());
}
