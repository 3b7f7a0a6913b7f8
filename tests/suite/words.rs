//! Words: no message missing or unused, every name filled in; lengths as printed.

use std::collections::{BTreeMap, BTreeSet};
use std::fs;
use std::path::{Path, PathBuf};

use leafwright::geom::{Length, Size, Unit};
use leafwright::words::{Units, Words};

const INCH: Units = Units::Only(Unit::Inch);
const MM: Units = Units::Only(Unit::Mm);

fn lengths(units: Units) -> impl Fn(Length) -> String {
    let words = Words::load("en", units);
    move |length| words.length(length).replace('\u{a0}', " ")
}

#[test]
fn inches_are_mixed_fractions_joined_by_spaces_that_do_not_break() {
    let words = Words::load("en", INCH);
    assert_eq!(words.length(Length::inch(17, 4)), "4\u{a0}1/4\u{a0}in");
    let size = Size::new(Length::inch(11, 2), Length::inch(2, 1));
    assert_eq!(words.size(size), "5\u{a0}1/2\u{a0}×\u{a0}2\u{a0}in");
    let inches = lengths(INCH);
    // Fractions are reduced (common practice, no source).
    assert_eq!(inches(Length::inch(2, 16)), "1/8 in");
    assert_eq!(inches(Length::inch(63, 64)), "63/64 in");
    assert_eq!(inches(Length::ZERO), "0 in");
    assert_eq!(inches(Length::ZERO - Length::inch(1, 8)), "\u{2212}1/8 in");
}

#[test]
fn inches_between_the_marks_are_decimals() {
    // 105 mm / 25.4 mm = 4.13386 (1 in = 25.4 mm exactly: NBS, Federal Register
    // 1959-07-01).
    assert_eq!(lengths(INCH)(Length::mm(105)), "4.134 in");
    assert_eq!(lengths(INCH)(Length::mm(1)), "0.039 in");
}

#[test]
fn millimetres_have_no_more_decimals_than_they_need() {
    // From the definition of the inch, as above.
    let mm = lengths(MM);
    let known = [
        ((1, 1), "25.4 mm"),
        ((1, 8), "3.18 mm"),
        ((1, 4), "6.35 mm"),
        ((11, 2), "139.7 mm"),
        ((17, 2), "215.9 mm"),
        ((11, 1), "279.4 mm"),
        ((12, 1), "304.8 mm"),
        ((1, 16), "1.59 mm"),
    ];
    for ((over, under), printed) in known {
        assert_eq!(mm(Length::inch(over, under)), printed);
    }
    assert_eq!(mm(Length::mm(90)), "90 mm");
}

#[test]
fn the_second_unit_is_rounded_to_its_own_ruler_from_the_exact_value() {
    // 5 1/2 in = 139.7 mm: the nearest half millimetre is 139.5.
    let both = lengths(Units::Both(Unit::Inch));
    assert_eq!(both(Length::inch(11, 2)), "5 1/2 in (139.5 mm)");
    // A6 (ISO 216) is 105 × 148 mm: 4 1/8 × 5 13/16 on a ruler with 1/16 in.
    let words = Words::load("en", Units::Both(Unit::Mm));
    let a6 = words.size(Size::new(Length::mm(105), Length::mm(148)));
    assert_eq!(a6.replace('\u{a0}', " "), "105 × 148 mm (4 1/8 × 5 13/16 in)");
    // 4.3 in is nearest to 4 5/16 in.
    let mm = lengths(Units::Both(Unit::Mm));
    let odd = Length::from_units(Length::INCH.units() * 43 / 10);
    assert_eq!(mm(odd), "109.22 mm (4 5/16 in)");
}

#[test]
fn rounding_to_a_ruler_is_never_off_by_more_than_half_a_step() {
    // Half of 1/16 in is 0.79375 mm, half of half a millimetre is 0.25 mm.
    let both = Words::load("en", Units::Both(Unit::Inch));
    for units in (0..2_000_000).step_by(7_919) {
        let length = Length::from_units(units + 400_000);
        let said = both.length(length);
        let mm = said.split('(').nth(1).unwrap().split('\u{a0}').next().unwrap();
        let off = (mm.parse::<f64>().unwrap() - length.as_mm()).abs();
        assert!(off <= 0.25 + 1e-9, "{said}: {off}");
    }
}

#[test]
fn a_language_without_words_is_printed_in_english() {
    assert_eq!(Words::load("xx", INCH).language(), "en");
    assert_eq!(Words::load("en-GB", INCH).language(), "en");
}

/// The messages of a language, each with the names that it fills in.
pub(crate) fn messages(path: &str) -> BTreeMap<String, BTreeSet<String>> {
    let text = fs::read_to_string(path).unwrap();
    let mut messages = BTreeMap::new();
    let mut last = String::new();
    for line in text.lines().filter(|it| !it.starts_with('#')) {
        if let Some((name, _)) = line.split_once(" = ").filter(|_| !line.starts_with(' '))
        {
            last = name.to_owned();
            let twice = messages.insert(last.clone(), BTreeSet::new());
            assert!(twice.is_none(), "`{name}` stands twice in {path}");
        }
        for after in line.split('$').skip(1) {
            let end = after.find(|it: char| !it.is_alphanumeric()).unwrap_or(after.len());
            messages.get_mut(&last).unwrap().insert(after[..end].to_owned());
        }
    }
    messages
}

/// Every Rust file in which sentences are asked for.
fn sources() -> Vec<(PathBuf, String)> {
    let mut all = Vec::new();
    for folder in ["src/handout", "src/words", "src/cli"] {
        for entry in fs::read_dir(Path::new(folder)).unwrap() {
            let path = entry.unwrap().path();
            if path.extension().is_some_and(|it| it == "rs") {
                let text = fs::read_to_string(&path).unwrap();
                all.push((path, text));
            }
        }
    }
    all
}

/// The text of a call from its opening bracket to the closing one.
fn call(text: &str) -> &str {
    let mut deep = 0;
    for (at, letter) in text.char_indices() {
        match letter {
            '(' => deep += 1,
            ')' if deep == 1 => return &text[..at],
            ')' => deep -= 1,
            _ => {}
        }
    }
    text
}

#[test]
fn no_message_is_missing_or_unused() {
    let messages = messages("templates/en.ftl");
    let sources = sources();
    for name in messages.keys() {
        let quoted = format!("\"{name}\"");
        let used = sources.iter().any(|(_, text)| text.contains(&quoted));
        assert!(used, "nobody says `{name}`");
    }
    for (path, text) in &sources {
        for verb in [".say(", ".tell("] {
            for (at, _) in text.match_indices(verb) {
                let call = call(&text[at + verb.len() - 1..]);
                let first = call.trim_start_matches('(').trim_start();
                let Some(name) =
                    first.strip_prefix('"').and_then(|it| it.split('"').next())
                else {
                    continue;
                };
                let Some(wants) = messages.get(name) else {
                    panic!("{} says `{name}`, which is missing", path.display());
                };
                // Names that are given on the spot; others are seen when it runs.
                let given: BTreeSet<String> = call
                    .split("(\"")
                    .skip(1 + usize::from(call.starts_with("(\"")))
                    .filter_map(|it| it.split_once("\",").map(|it| it.0.to_owned()))
                    .collect();
                let nested = [".say(", ".tell("].iter().any(|it| call.contains(it));
                if call.contains("&[") && !nested {
                    assert_eq!(&given, wants, "`{name}` in {}", path.display());
                }
            }
        }
    }
}

#[test]
fn no_message_speaks_of_panels_and_software() {
    let text = fs::read_to_string("templates/en.ftl").unwrap().to_lowercase();
    let words: Vec<&str> = text.split(|it: char| !it.is_alphabetic()).collect();
    for avoided in ["kerf", "grid", "column", "row", "node", "stop"] {
        assert!(!words.contains(&avoided), "`{avoided}` is a word of other trades");
    }
}
