//! The table of keys: all that stands in it is read, and nothing else.

use std::fs;
use std::path::Path;

use leafwright::project;
use leafwright::project::keys::{self, GROUPS, Key};
use leafwright::source::{Folder, Site, Source};

use crate::diagnostics::read;

/// Names for the examples of the table to refer to.
const STOCK: &str = "title: Meadow Days
unit: in
papers:
  meadow: {sheet: 12 x 12 in, faces: {rows: {runs: up}, dots: {runs: any}}}
  oat: {kind: cardstock, sheet: letter}
  slate: {kind: cardstock, scraps: at least 4 x 4 in}
tools:
  scissors: {kind: scissors}
  brads: {kind: embellishments}
  cord: {kind: ribbon}
  tape runner: {kind: tape}
  tag: {kind: punch, outline: tag 2 1/4 x 1 1/4 in}
  kind words: {kind: stamp set}
  plum ink: {kind: ink pad}
bases:
  note: {format: a2-us, bought: {pack: 12, with: envelopes}}
pieces:
  sash: {of: meadow, size: 5 1/2 x 2 in}
  ribbon: {of: meadow, size: 5 1/2 x 1 1/4 in}
  rail: {of: meadow, size: 5 x 1 in}
  tile: {of: meadow, size: 1 x 1 in}
greetings:
  thanks: {words: Thank you, label: {cut: 2 x 1 in}, of: oat}
";

/// A description in which a key of a group stands, with `@` for its value.
fn around(group: &str, key: &Key) -> String {
    let name = key.name;
    let paper = "  mist: {sheet: 8 x 10 in, KEY}\n";
    let within = |section: &str, row: &str| {
        STOCK.replacen(&format!("{section}:\n"), &format!("{section}:\n{row}"), 1)
    };
    let card = |rest: &str| format!("{STOCK}cards:\n  - {{name: One, {rest}}}\n");
    let layers =
        "layers: [{piece: sash}, {piece: rail}, {piece: tile, KEY}, {piece: tile}]";
    let layer = match name {
        "piece" | "greeting" => card("layers: [{KEY}]"),
        "gap" => card("layers: [{piece: rail}, {piece: tile, below: rail, KEY}]"),
        "behind" => card("layers: [{piece: sash, KEY}, {piece: tile}]"),
        _ => card(layers),
    };
    let kind = match name {
        "longest cut" | "sheets at once" | "marks" | "narrowest strip" => {
            "kind: lever trimmer, "
        }
        "outline" => "kind: punch, ",
        "reach" | "takes strips" => "kind: punch, outline: circle 1 in, ",
        "dries" | "enough for" => "kind: glue, ",
        "roll" => "kind: ribbon, ",
        "for each kit" => "kind: packaging, ",
        "thickness" | "size" | "pack" => "kind: foam squares, ",
        "kind" => "",
        "colour" => "kind: ink pad, ",
        _ => "kind: other, ",
    };
    let step = match name {
        "other part" => "trim to: 2 in wide, KEY",
        "times" | "call" => "cut off: 1 in high, KEY",
        "halve" => "KEY, for: sash",
        _ => "KEY",
    };
    let text = match group {
        "project" | "supplies" => "KEY\n".to_owned(),
        "giver" => format!("{STOCK}handed out by: {{KEY}}\n"),
        "ahead" => format!("{STOCK}done ahead: {{KEY}}\n"),
        "all but" => format!("{STOCK}done ahead: {{kit: {{KEY}}}}\n"),
        "gift set" if name == "kind" => format!("{STOCK}gift set: {{KEY}}\n"),
        "gift set" => format!("{STOCK}gift set: {{kind: band, KEY}}\n"),
        "minutes" => format!("{STOCK}minutes: {{KEY}}\n"),
        "cut by" => format!("{STOCK}cut by: {{KEY}}\n"),
        "step" => format!(
            "{STOCK}cutting:\n  meadow: [{{trim to: 9 in wide, other part: side}}, {{{step}}}]\n"
        ),
        "paper" if ["sheet", "sheets", "scraps"].contains(&name) => {
            within("papers", "  mist: {KEY}\n")
        }
        "paper" => within("papers", paper),
        "sheet" => within("papers", "  mist: {sheets: [{size: 8 x 8 in, KEY}]}\n")
            .replace(
                "size: 8 x 8 in, KEY",
                if name == "size" { "KEY" } else { "size: a4, KEY" },
            ),
        "face" => within("papers", "  mist: {sheet: a4, faces: {front: {KEY}}}\n"),
        "pack" if name == "sheets" => {
            within("papers", "  mist: {sheet: a4, pack: {KEY}}\n")
        }
        "pack" => within("papers", "  mist: {sheet: a4, pack: {sheets: 24, KEY}}\n"),
        "base" => match name {
            "format" | "front" => within("bases", "  mist: {bought: true, KEY}\n"),
            "bought" | "made" => within("bases", "  mist: {format: a6, KEY}\n"),
            _ => within("bases", "  mist: {format: a6, bought: true, KEY}\n"),
        },
        "bought" => within("bases", "  mist: {format: a6, bought: {KEY}}\n"),
        "made" => within("bases", "  mist: {format: a6, made: {KEY}}\n"),
        "tool" => within("tools", &format!("  mist: {{{kind}KEY}}\n")),
        "piece" => within("pieces", "  mist: {KEY}\n"),
        "next to" | "region" => within(
            "pieces",
            &format!("  mist: {{of: meadow, size: 5 1/2 x 2 in, {group}: {{KEY}}}}\n"),
        ),
        "around" => {
            let rest = match name {
                "border" => "around: sash, ",
                "cut" => "half of: sash, ",
                _ => "",
            };
            within("pieces", &format!("  mist: {{of: oat, size: {{{rest}KEY}}}}\n"))
        }
        "extra" => {
            let rest = match name {
                "what" => "",
                "length" => "what: cord, ",
                _ => "what: brads, ",
            };
            card(&format!("extras: [{{{rest}KEY}}]"))
        }
        "late cut" => format!("{STOCK}late cuts: [{{KEY}}]\n"),
        "part" => format!(
            "{STOCK}late cuts: [{{piece: rail, halve: along, makes: {{half: {{KEY}}}}}}]\n"
        ),
        "greeting" => within("greetings", "  mist: {KEY}\n"),
        "label" => within("greetings", "  mist: {words: a, of: oat, label: {KEY}}\n"),
        "narrowed" => {
            let rest = if name == "take off" { "side: top" } else { "take off: 1/8 in" };
            within(
                "greetings",
                &format!("  mist: {{like: thanks, narrowed: {{{rest}, KEY}}}}\n"),
            )
        }
        "mat" if ["halved", "slid"].contains(&name) => within(
            "greetings",
            "  mist: {like: thanks, mat: {of: slate, punched with: tag, KEY}}\n",
        ),
        "mat" => within("greetings", "  mist: {like: thanks, mat: {KEY}}\n"),
        "card" if name == "name" => format!("{STOCK}cards:\n  - {{KEY}}\n"),
        "card" => card("KEY"),
        "inside" => card("inside: {KEY}"),
        "photo" => card(match name {
            "file" => "photo: {KEY}",
            _ => "photo: {file: photos/a.png, KEY}",
        }),
        "picture" => within(
            "papers",
            match name {
                "file" => "  mist: {sheet: 8 x 10 in, pictures: {KEY}}\n",
                _ => "  mist: {sheet: 8 x 8 in, pictures: {file: scans/a.png, KEY}}\n",
            },
        ),
        "layer" => layer,
        other => panic!("the test has no place for the keys of {other}"),
    };
    text.replacen("KEY", &format!("{name}: @"), 1)
}

/// A file that is used, beside a description that uses it.
struct Beside(String);

impl Folder for Beside {
    fn bytes(&self, path: &Path) -> Result<Vec<u8>, String> {
        match path.to_str() {
            Some("supplies.yaml") => Ok(self.0.clone().into_bytes()),
            _ => Err("there is no such file".to_owned()),
        }
    }
}

/// The rules that are broken where the value of a key stands.
fn broken(group: &str, key: &Key, value: &str) -> Vec<String> {
    let text = around(group, key);
    let start = text.find('@').expect("the place of the value");
    let text = text.replacen('@', value, 1);
    let (file, (_, outcome)) = match group {
        "supplies" => {
            let names = "title: A\nuse: supplies.yaml\ntips: [oat, note]\n";
            (1, project::read(Source::new("keys.yaml", names), &Beside(text)))
        }
        _ => (0, read("keys.yaml", &text)),
    };
    let inside = |at: Site| {
        at.file == file && (start..start + value.len()).contains(&(at.start as usize))
    };
    let errors = outcome.notes.iter().filter(|it| it.is_error() && inside(it.site));
    errors.map(|it| format!("{}: {}", it.rule.name, it.message)).collect()
}

#[test]
fn every_key_of_the_table_is_read() {
    for group in GROUPS {
        for key in group.keys {
            // No key takes a list in a list in a list.
            let said = broken(group.name, key, "[[[x]]]");
            assert!(!said.is_empty(), "`{}` of {} is not read", key.name, group.a);
        }
    }
}

#[test]
fn every_example_of_the_table_can_be_read() {
    for group in GROUPS {
        for key in group.keys {
            let mut said = broken(group.name, key, key.example);
            // The examples of whole sections name what only another one describes.
            // No file lies beside them.
            said.retain(|it| {
                !["project", "supplies"].contains(&group.name)
                    || !(it.starts_with("unknown-name")
                        || it.starts_with("file-not-there"))
            });
            assert!(said.is_empty(), "`{}` of {}: {said:?}", key.name, group.a);
        }
    }
}

#[test]
fn the_schema_for_editors_is_that_of_the_table() {
    let path = "templates/project.schema.json";
    let schema = serde_json::to_string_pretty(&keys::schema()).expect("a schema") + "\n";
    let kept = fs::read_to_string(path).unwrap_or_default();
    if kept != schema {
        fs::write(path, schema).expect("the schema is rewritten");
        panic!("{path} was out of date and has been rewritten; run the test again");
    }
}
