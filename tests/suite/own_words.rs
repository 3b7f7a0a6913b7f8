//! What descriptions say in their own words: thirds, cautions, foam by size, guesses.

use leafwright::geom::{Axis, Length, Size};
use leafwright::handout::{self, Options, Template};
use leafwright::plan::{PlanOptions, plan};
use leafwright::project::{LateHow, Project};

use crate::diagnostics::read;

const SET: &str = "title: Own words
unit: in
papers: {reed: {sheet: 12 x 12 in, faces: {rows: {runs: up}, dots: {runs: any}}}}
bases: {note: {format: a2-us, bought: true}}
tools:
  foam squares: {kind: foam squares, thickness: 2 mm, size: 1/4 in}
cautions:
  - The heat tool stays at the window.
pieces: {sash: {of: reed, size: 4 1/2 x 1 1/2 in}}
late cuts:
  - {piece: sash, HOW, makes: {cord: {showing: dots}}, when: later}
cards:
  - name: One
    stands: wide
    layers:
      - {piece: cord, bottom: 1/2 in, raised: 4 squares}
      - {piece: cord, bottom: 1 1/2 in}
      - {piece: cord, bottom: 2 1/2 in}
    inside: {words: chosen later}
";

fn project(how: &str) -> Project {
    let (_, outcome) = read("own.yaml", &SET.replace("HOW", how));
    outcome.value.unwrap_or_else(|| panic!("{:#?}", outcome.notes))
}

#[test]
fn a_piece_is_cut_into_thirds_that_one_card_uses_up() {
    let project = project("thirds: lengthwise");
    let late = &project.late_cuts[0];
    assert_eq!(late.how, LateHow::Thirds { cut: Axis::Level });
    assert!(late.at_the_card);
    assert_eq!((late.makes.len(), late.makes[0].makes), (1, 3));
    let size = Size::new(Length::inch(9, 2), Length::inch(1, 2));
    assert_eq!(late.makes[0].size, size);
    let plan = plan(&project, &PlanOptions::default()).value.expect("a plan");
    assert_eq!(plan.cuts[0].parts[0].per_kit, 1);
}

#[test]
fn what_is_chosen_later_is_no_words_to_stamp() {
    let inside = &project("thirds: lengthwise").cards[0].inside;
    assert!(inside.chosen && inside.words.is_none());
}

#[test]
fn her_own_cautions_stand_with_the_usual_ones() {
    let project = project("halved: lengthwise");
    let plan = plan(&project, &PlanOptions::default()).value.expect("a plan");
    let template = Template::built_in("class").expect("it comes with the house");
    let document = handout::write(&project, &plan, &template, Options::default());
    let said = format!("{document:?}");
    assert!(said.contains("The heat tool stays at the window."));
    assert!(said.contains("Each half makes"));
}

#[test]
fn foam_squares_are_as_large_as_is_said() {
    let foam = |size: &str| {
        let text = SET.replace("HOW", "thirds: lengthwise").replace("1/4 in}", size);
        let project = read("own.yaml", &text).1.value.expect("a project");
        let notes = plan(&project, &PlanOptions::default()).notes;
        notes.into_iter().find(|it| it.rule.name == "too-many-squares")
    };
    assert!(foam("1/4 in}").is_none());
    // Half an inch finds no room behind a cord that is half an inch high.
    let note = foam("1/2 in}").expect("a warning");
    assert!(note.help[0].contains("squares of 1/2 in"), "{note:?}");
}

#[test]
fn a_size_in_words_is_answered_with_the_key_for_it() {
    for (written, help) in [
        ("third of sash", "write `size: {third of: sash}`"),
        ("half of sash", "write `size: {half of: sash}`"),
        ("same as sash", "write `like: sash` in place of the size"),
    ] {
        let piece = format!("pieces: {{tile: {{of: reed, size: {written}}}, sash");
        let text = SET.replace("HOW", "halve: along").replace("pieces: {sash", &piece);
        let (_, outcome) = read("own.yaml", &text);
        let said: Vec<_> = outcome.notes.iter().flat_map(|it| &it.help).collect();
        assert!(said.iter().any(|it| it.as_str() == help), "{written}: {said:?}");
    }
}

/// By the equation of the oval: a corner 1/2 and 1/4 in from the middle lies beyond one of
/// 1 1/4 x 3/4 in (16/25 + 4/9 > 1) and within one of 2 x 1 in (1/4 + 1/4 < 1).
#[test]
fn a_corner_that_peeps_out_of_a_round_mat_is_seen() {
    for (mat, peeps) in [("1 1/4 x 3/4 in", true), ("2 x 1 in", false)] {
        let text = SET.replace("HOW", "thirds: lengthwise").replace(
            "cautions:",
            &format!(
                "  egg: {{kind: punch, outline: oval {mat}}}\ngreetings:\n  hi: {{words: Hi, \
                 label: {{cut: 1 x 1/2 in}}, of: reed, mat: {{of: reed, punched with: egg}}}}\n\
                 cautions:"
            ),
        );
        let text = text.replace("    inside", "      - {greeting: hi}\n    inside");
        let notes = read("own.yaml", &text).1.notes;
        let found = notes.iter().any(|it| it.message.contains("peeps out"));
        assert_eq!(found, peeps, "{mat}: {notes:#?}");
    }
}
