//! Layers that share the width or the height of a front with equal gaps.

use leafwright::geom::{Length, Side};
use leafwright::project::{Along, Project};

use crate::diagnostics::read;

/// A card 4 1/4 x 5 1/2 in with these layers.
fn card(layers: &str) -> String {
    format!(
        "title: Row
unit: in
papers:
  rust: {{kind: patterned, sheet: 12 x 12 in, runs: any}}
bases:
  note: {{format: a2-us, bought: {{pack: 10}}}}
tools:
  trimmer: {{kind: sliding trimmer, longest cut: 12 in}}
  foam: {{kind: foam squares, thickness: 2 mm, pack: 100}}
  tape: {{kind: tape runner}}
pieces:
  tile: {{of: rust, size: 1 1/4 x 1 1/4 in}}
  bar: {{of: rust, size: 1/2 x 2 in}}
  ground: {{of: rust, size: 4 x 4 in}}
cards:
  - name: One
    layers:
{layers}"
    )
}

fn sound(layers: &str) -> Project {
    let (_, read) = read("row.yaml", &card(layers));
    assert!(read.notes.iter().all(|it| !it.is_error()), "{:?}", read.notes);
    read.value.expect("a sound description")
}

/// What is between the named side and each layer, in both directions.
fn insets(project: &Project) -> Vec<[Option<(Side, Length)>; 2]> {
    let place = |along: Along| match along {
        Along::From(side, inset, _) | Along::Within { side, inset, .. } => {
            Some((side, inset))
        }
        _ => None,
    };
    let layers = project.cards[0].layers.iter();
    layers.map(|it| [place(it.across), place(it.up)]).collect()
}

/// 4 1/4 in less three times 1 1/4 in leaves 1/2 in: four gaps of 1/8 in.
#[test]
fn three_squares_in_a_row_have_four_equal_gaps() {
    let project = sound(
        "      - {piece: tile, across: evenly, top: 1 in}
      - {piece: tile, across: evenly, top: 1 in, raised: 2 squares}
      - {piece: tile, across: evenly, top: 1 in}
",
    );
    let inch = |number, of| Some((Side::Left, Length::inch(number, of)));
    let top = Some((Side::Top, Length::inch(1, 1)));
    let wanted = vec![[inch(1, 8), top], [inch(12, 8), top], [inch(23, 8), top]];
    assert_eq!(insets(&project), wanted);
}

#[test]
fn a_run_shares_the_height_from_the_top_and_within_another_layer() {
    let project = sound(
        "      - {piece: ground, top: 1/2 in}
      - {piece: tile, within: ground, left: 1/8 in, up: evenly}
      - {piece: tile, within: ground, left: 1/8 in, up: evenly}
",
    );
    // 4 in less twice 1 1/4 in are three gaps of 1/2 in.
    let ups: Vec<_> = insets(&project).iter().map(|it| it[1]).collect();
    let inch = |number, of| Some((Side::Top, Length::inch(number, of)));
    assert_eq!(ups, [inch(1, 2), inch(1, 2), inch(9, 4)]);
}

#[test]
fn two_rows_are_two_runs_and_one_layer_alone_is_in_the_middle() {
    let project = sound(
        "      - {piece: tile, across: evenly, top: 1 in}
      - {piece: tile, across: evenly, top: 1 in}
      - {piece: bar, across: evenly, bottom: 1 in}
",
    );
    let across: Vec<_> = insets(&project).iter().map(|it| it[0]).collect();
    // 4 1/4 in less twice 1 1/4 in are three gaps of 7/12 in.
    let gap = Length::from_units(Length::inch(7, 4).units() / 3);
    let second = gap + Length::inch(5, 4) + gap;
    assert_eq!(across, [Some((Side::Left, gap)), Some((Side::Left, second)), None]);
    assert_eq!(project.cards[0].layers[2].across, Along::Center);
}

#[test]
fn a_run_that_is_too_wide_is_refused_with_both_numbers() {
    let text = card(&"      - {piece: tile, across: evenly}\n".repeat(4));
    let (_, read) = read("row.yaml", &text);
    let fault = read.notes.iter().find(|it| it.is_error()).expect("a fault");
    assert_eq!(fault.rule.name, "layer-off-the-front");
    let message = &fault.message;
    assert!(message.contains("5 in wide") && message.contains("4 1/4 in"), "{message}");
}
