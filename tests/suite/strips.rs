//! Strips that hold several labels: counted, spaced, cut, stamped and punched.

use leafwright::document::{Block, Mark, Stroke};
use leafwright::geom::{Length, Rect, Size};
use leafwright::plan::cut::{
    Kind, Leaf, Limits, PaperCut, PartOf, Problem, SheetKind, solve,
};
use leafwright::plan::{Plan, PlanOptions, plan};
use leafwright::project::{Project, Reader};

use crate::diagnostics::read;
use crate::handout::{outline, written};
use crate::random::Random;

/// A punch of 2 1/2 x 1 1/4 in, and a card for each number, with so many of a
/// greeting each.
fn set(sheet: &str, greetings: &[i64], more: &str) -> Project {
    let mut text = format!(
        "title: Long Strips
unit: in
papers:
  oat: {{kind: cardstock, sheet: {sheet}}}
tools:
  tag: {{kind: punch, outline: rounded 2 1/2 x 1 1/4 in, takes strips: 2 3/4 in wide}}
  words: {{kind: stamp set}}
  ink: {{kind: ink pad}}
bases:
  note: {{format: a2-us, bought: true, comes: scored flat}}
greetings:
"
    );
    for number in 0..greetings.len() {
        text.push_str(&format!(
            "  greeting {number}: {{words: Words {number}, stamped: 1 x 1/2 in, \
             stamps: words, ink: ink, label: tag, of: oat}}\n"
        ));
    }
    text.push_str("cards:\n");
    for (number, count) in greetings.iter().enumerate() {
        text.push_str(&format!(
            "  - name: Card {number}\n    base: note\n    count: {count}\n    \
             stands: wide\n    layers: [{{greeting: greeting {number}, across: center, \
             bottom: 1 in}}]\n"
        ));
    }
    text.push_str(more);
    let (_, outcome) = read("strips.yaml", &text);
    let said: Vec<_> = outcome.notes.iter().map(|it| it.message.clone()).collect();
    outcome.value.unwrap_or_else(|| panic!("{said:#?}"))
}

fn planned(project: &Project, kits: u32) -> Plan {
    let options = PlanOptions { kits: Some(kits), ..PlanOptions::default() };
    plan(project, &options).value.expect("there is a plan")
}

/// Labels that come off the sheets, counted strip by strip.
fn punched(cut: &PaperCut) -> u32 {
    let of_one = |pattern: &leafwright::plan::cut::Pattern| {
        let leaves = pattern.tree.placements(pattern.sheet).into_iter();
        leaves.fold(0, |sum, it| match it.leaf {
            Leaf::Part { part, .. } => sum + cut.parts[part].on_each(),
            _ => sum,
        })
    };
    cut.patterns.iter().map(|it| of_one(it) * it.copies).sum()
}

/// How many sheets it takes if every label has a strip of its own.
fn sheets_one_by_one(sheet: Size, labels: u32) -> u32 {
    let one = Size::new(Length::inch(11, 4), Length::inch(3, 2));
    let solution = solve(&Problem {
        sheets: vec![SheetKind { size: sheet, at_hand: None }],
        kinds: vec![Kind { size: one, free: true, count: labels }],
        limits: Limits {
            stages: None,
            longest_cut: None,
            least_offcut: Length::inch(1, 2),
            budget: 1_000_000,
        },
    });
    solution.patterns.iter().map(|it| it.2).sum()
}

#[test]
fn strips_hold_the_labels_of_all_kits_and_take_no_sheet_more() {
    let mut random = Random::new(9);
    let mut joined = 0;
    for round in 0..60 {
        let cards = 1 + random.below(4);
        let greetings: Vec<i64> = (0..cards).map(|_| 1 + random.below(3)).collect();
        let kits = u32::try_from(1 + random.below(6)).expect("small");
        let (sheet, size) = match random.below(3) {
            0 => ("letter", Size::new(Length::inch(17, 2), Length::inch(11, 1))),
            1 => ("6 x 6 in", Size::new(Length::inch(6, 1), Length::inch(6, 1))),
            _ => ("3 x 5 in", Size::new(Length::inch(3, 1), Length::inch(5, 1))),
        };
        let project = set(sheet, &greetings, "");
        let plan = planned(&project, kits);
        let [cut] = plan.cuts.as_slice() else { panic!("one paper: {round}") };
        let [part] = cut.parts.as_slice() else { panic!("one part: {round}") };
        let a_kit = u32::try_from(greetings.iter().sum::<i64>()).expect("small");
        let all = plan.supplies.kits * a_kit;
        // Neither short nor one too many, in a bag and in all.
        assert_eq!(part.per_kit * part.on_each(), a_kit, "{round}");
        assert_eq!(punched(cut), all, "{round}");
        // Each label has 1/8 in before and behind it: common practice, no source.
        let long = (Length::inch(5, 4) + Length::inch(1, 4)) * i64::from(part.on_each());
        assert_eq!(part.size, Size::new(Length::inch(11, 4), long), "{round}");
        let sheets: u32 = cut.patterns.iter().map(|it| it.copies).sum();
        assert!(sheets <= sheets_one_by_one(size, all), "{round}");
        joined += u32::from(part.on_each() > 1);
    }
    assert!(joined > 20, "{joined} of 60");
}

#[test]
fn a_prime_number_of_labels_that_fits_no_strip_is_cut_one_by_one() {
    // 7 x 1 1/2 in is longer than a sheet of 3 x 5 in, and 7 has no smaller share.
    let plan = planned(&set("3 x 5 in", &[7], ""), 1);
    assert_eq!((plan.cuts[0].parts[0].on_each(), plan.cuts[0].parts[0].per_kit), (1, 7));
}

#[test]
fn a_strip_is_stamped_in_numbered_places_and_punched_from_its_end() {
    let project = set("letter", &[1, 2, 1], "done ahead: {kit: [cut, stamp, punch]}\n");
    let document = written(&project, "bench", Reader::Kit);
    let said = outline(&document).replace('_', " ");
    for words in [
        "strip for 4 labels",
        "“Words 0” in place 1, “Words 1” in places 2 and 3 and “Words 2” in place 4",
        // Half of 1 1/2 in, then 1 1/2 in each.
        "first place is 3/4 in from the end of the strip, each next one 1 1/2 in further",
        "After each label cut the strip off 1/8 in before the next",
    ] {
        assert!(said.contains(words), "{words}: {said}");
    }
    // The drawing shows every outline, 1/4 in from the next.
    let steps = document.sections.iter().flat_map(|it| &it.blocks);
    let steps = steps.filter_map(|it| match it {
        Block::Steps(steps) => Some(steps),
        _ => None,
    });
    let mut figures = steps.flatten().filter_map(|it| it.figure.as_ref());
    let strip = figures.find(|it| it.alt.contains("4 labels")).expect("a strip");
    let punched = strip.drawing.marks.iter().filter_map(|it| match it {
        Mark::Area { rect, line: Some(Stroke::Punch), .. } => Some(*rect),
        _ => None,
    });
    let punched: Vec<Rect> = punched.collect();
    assert_eq!(punched.len(), 4);
    assert_eq!(punched[0].y, Length::inch(1, 8));
    for pair in punched.windows(2) {
        assert_eq!(pair[1].y - pair[0].bottom(), Length::inch(1, 4));
    }
    assert_eq!(strip.drawing.size.height - punched[3].bottom(), Length::inch(1, 8));
}

#[test]
fn a_bag_gets_strips_until_they_are_punched() {
    let of = |ahead: &str| {
        let project = set("letter", &[2, 2], &format!("done ahead: {{kit: {ahead}}}\n"));
        outline(&written(&project, "kit", Reader::Kit))
    };
    let (cut, punched) = (of("[cut]"), of("[cut, punch]"));
    assert!(cut.contains("strip for 4 labels"), "{cut}");
    assert!(punched.contains("4 | blank labels"), "{punched}");
    assert!(!punched.contains("strip for"), "{punched}");
    // The table of the bench counts what lies in the bag.
    let bench = |ahead: &str| {
        let project = set("letter", &[2, 2], &format!("done ahead: {{kit: {ahead}}}\n"));
        outline(&written(&project, "bench", Reader::Kit))
    };
    // The bag, four bases, and the strip or its labels.
    let (cut, punched) = (bench("[cut]"), bench("[cut, punch]"));
    assert!(cut.contains("| 1 | 4 | 1 |"), "{cut}");
    assert!(punched.contains("| 1 | 4 | 4 |"), "{punched}");
}

#[test]
fn labels_of_one_part_are_counted_as_labels() {
    let plan = planned(&set("letter", &[1, 1, 2], ""), 3);
    let part = &plan.cuts[0].parts[0];
    assert!(matches!(part.of, PartOf::Label(_)));
    let labels: u32 = part.greetings.iter().map(|it| it.1).sum();
    assert_eq!((labels, part.on_each(), part.per_kit), (4, 4, 1));
    assert_eq!(part.count, plan.supplies.kits);
}
