//! Labels that are punched twice, and mats that are punched and halved.

use leafwright::geom::{Axis, Length, Size};
use leafwright::plan::cut::PartOf;
use leafwright::plan::{PlanOptions, plan};
use leafwright::project::{Greeting, Project, Reader};

use crate::diagnostics::read;
use crate::handout::{outline, written};

/// A punch of 2 1/2 x 1 1/4 in, and what a greeting says of its label and mat.
fn set(rest: &str) -> String {
    format!(
        "title: Narrow Lanes
unit: in
papers:
  oat: {{kind: cardstock, sheet: letter}}
  dusk: {{kind: cardstock, sheet: letter}}
tools:
  tag: {{kind: punch, outline: rounded 2 1/2 x 1 1/4 in, takes strips: 2 3/4 in wide}}
  large tag: {{kind: punch, outline: rounded 3 x 2 in}}
bases:
  note: {{format: a2-us, bought: true, comes: scored flat}}
greetings:
  thanks:
    words: Thank you
    stamped: 1 7/8 x 1/2 in
    label: tag
    of: oat
{rest}
cards:
  - name: Thank you
    base: note
    stands: wide
    layers: [{{greeting: thanks, raised: 4 squares, across: center, bottom: 1 in}}]
"
    )
}

fn project(rest: &str) -> Project {
    let (_, outcome) = read("narrow.yaml", &set(rest));
    let said: Vec<_> = outcome.notes.iter().map(|it| it.message.clone()).collect();
    outcome.value.unwrap_or_else(|| panic!("{said:#?}"))
}

fn greeting(rest: &str) -> Greeting {
    project(rest).greetings.remove(0)
}

fn inch(over: i64, under: i64) -> Length {
    Length::inch(over, under)
}

const NARROWED: &str =
    "    narrowed: {take off: 3/8 in, side: top, held with: a slip of paper}\n";

#[test]
fn a_second_pass_leaves_what_both_share() {
    let greeting = greeting(NARROWED);
    // 1 1/4 - 3/8 = 7/8 in; the straight sides keep the width.
    let left = Size::new(inch(5, 2), inch(7, 8));
    assert_eq!(greeting.label.outline.size, left);
}

#[test]
fn a_mat_of_the_same_punch_is_slid_together_under_a_narrowed_label() {
    let rest = format!(
        "{NARROWED}    mat: {{of: dusk, punched with: tag, halved: top and bottom, slid: together, border: 1/16 in}}"
    );
    let mat = greeting(&rest).mat.expect("a mat");
    let punched = mat.punched.expect("it is punched");
    // 7/8 in and twice 1/16 in are 1 in: the halves of 1 1/4 in overlap by 1/4 in.
    assert_eq!(punched.moved, -inch(1, 4));
    assert_eq!(punched.halved, Axis::Level);
    assert_eq!(mat.shows, Size::new(Length::ZERO, inch(1, 16)));
    assert_eq!(punched.trim, Length::ZERO);
}

#[test]
fn a_mat_of_the_same_punch_is_slid_apart_under_a_whole_label() {
    let rest =
        "    mat: {of: dusk, punched with: tag, halved: left and right, border: 1/8 in}";
    let mat = greeting(rest).mat.expect("a mat");
    // The label of the same punch: the halves move by both borders.
    assert_eq!(mat.punched.expect("it is punched").moved, inch(1, 4));
    assert_eq!(mat.shows, Size::new(inch(1, 8), Length::ZERO));
}

#[test]
fn what_shows_more_than_wanted_is_trimmed() {
    let rest = "    mat: {of: dusk, punched with: large tag, halved: top and bottom, border: 1/8 in}";
    let mat = greeting(rest).mat.expect("a mat");
    let punched = mat.punched.expect("it is punched");
    // 3 - 2 1/2 leaves 1/4 in at each end, twice what is wanted; 1 1/4 + 1/4 in of
    // 2 in makes the halves overlap by 1/2 in.
    assert_eq!((punched.trim, punched.moved), (inch(1, 8), -inch(1, 2)));
    assert_eq!(mat.shows, Size::new(inch(1, 8), inch(1, 8)));
}

#[test]
fn a_mat_of_a_larger_punch_may_stay_whole() {
    let mat =
        greeting("    mat: {of: dusk, punched with: large tag}").mat.expect("a mat");
    assert_eq!(mat.shows, Size::new(inch(1, 4), inch(3, 8)));
}

#[test]
fn the_mat_takes_a_strip_of_its_paper_and_its_place_on_the_card() {
    let rest = format!(
        "{NARROWED}    mat: {{of: dusk, punched with: tag, halved: top and bottom, slid: together}}"
    );
    let project = project(&rest);
    let plan = plan(&project, &PlanOptions::default());
    let plan = plan.value.expect("a plan");
    let strips: Vec<Size> = plan
        .cuts
        .iter()
        .flat_map(|cut| &cut.parts)
        .filter(|part| matches!(part.of, PartOf::Label(_) | PartOf::LabelMat(_)))
        .map(|part| part.size)
        .collect();
    // As wide as the punch takes strips; 1/8 in more than the outline before and
    // behind it (common practice, no source).
    let strip = Size::new(inch(11, 4), inch(3, 2));
    assert_eq!(strips, [strip, strip]);
    let set = &plan.fronts[0].layers[0];
    let mat = set.mat.expect("a mat");
    assert_eq!((mat.size.width, mat.size.height), (inch(5, 2), inch(1, 1)));
    assert_eq!(set.laid.size.height, inch(7, 8));
}

#[test]
fn the_handout_says_both_passes_and_how_the_halves_lie() {
    let rest = format!(
        "{NARROWED}    mat: {{of: dusk, punched with: tag, halved: top and bottom, slid: together}}"
    );
    let project = project(&rest);
    let said = outline(&written(&project, "class", Reader::Class)).replace('_', " ");
    for words in [
        "slide it back into the punch, 3/8 in further up, hold it with a slip of paper, and punch again, so that 3/8 in comes off at the top.",
        "What is left is 2 1/2 × 7/8 in; for the words to be in its middle, they stand 3/16 in below the middle of the opening at the first pass.",
        "With the tag, punch the mat out of B.",
        "Cut the mat (B) in half from left to right and slide the halves over each other by 1/4 in.",
        "1/16 in shows at the top and at the bottom.",
    ] {
        assert!(said.contains(words), "{words}\n{said}");
    }
}
