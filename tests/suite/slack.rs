//! What takes up the difference if a sheet is not quite as large as it should be.

use leafwright::geom::{Rect, Size};
use leafwright::plan::cut::{Leaf, PaperCut, Pattern, TakesUp, slack};
use leafwright::plan::{PlanOptions, plan};
use leafwright::project::*;

use crate::hand_made::*;

fn cut(pieces: &[(Size, u32)]) -> PaperCut {
    let mut project = project();
    let named = pieces.iter().enumerate().map(|(index, (size, count))| Piece {
        count: Some(*count),
        ..piece(&format!("piece {index}"), *size)
    });
    project.pieces = named.collect();
    let outcome = plan(&project, &PlanOptions::default());
    outcome.value.unwrap_or_else(|| panic!("{:#?}", outcome.notes)).cuts.remove(0)
}

const fn takes_up(part: usize, count: u32, of: u32) -> TakesUp {
    TakesUp { part, count, of }
}

#[test]
fn where_the_sheet_is_filled_the_last_piece_gets_the_difference() {
    // 12 x 12 in in four strips of 12 x 3 in: the last one is what stays.
    let filled = cut(&[(size(192, 48), 4)]);
    let found = slack(&filled);
    assert_eq!(found.len(), 1);
    // A strip is as wide as the sheet, whatever that is.
    let (wide, high) = (&found[0].in_width, &found[0].in_height);
    let sides = [wide.as_slice(), high.as_slice()];
    let lies_level = filled.schedule.steps[0].in_hand.size == size(192, 192)
        && filled.schedule.steps[0].off[0].0.size == size(192, 48);
    let expected: [&[TakesUp]; 2] = [&[takes_up(0, 4, 4)], &[takes_up(0, 1, 4)]];
    let expected = if lies_level { expected } else { [expected[1], expected[0]] };
    assert_eq!(sides, expected);
}

#[test]
fn where_something_is_left_over_that_gets_the_difference() {
    // Nine tiles of 3 1/2 x 3 1/2 in leave a strip on both sides.
    assert_eq!(slack(&cut(&[(size(56, 56), 9)])), []);
    // Three strips of 12 x 3 in leave the fourth.
    let found = slack(&cut(&[(size(192, 48), 3)]));
    assert_eq!(found.len(), 1);
    assert!(found[0].in_height.is_empty() || found[0].in_width.is_empty());
}

#[test]
fn every_part_at_the_far_edges_is_named_and_no_other() {
    // All cuts are measured from the left and the top, so what lies at the right or
    // the bottom edge of a sheet grows with it, and nothing else does.
    for pieces in [
        &[(size(64, 96), 2), (size(32, 96), 4)][..],
        &[(size(80, 112), 1), (size(112, 80), 1), (size(80, 80), 1)],
        &[(size(96, 96), 4)],
        &[(size(120, 60), 3), (size(72, 30), 2)],
    ] {
        let cut = cut(pieces);
        for pattern in 0..cut.patterns.len() {
            let Pattern { sheet, tree, .. } = &cut.patterns[pattern];
            let placed = tree.placements(*sheet);
            let at_edge = |far: &dyn Fn(Rect) -> bool| {
                let parts =
                    placed.iter().filter(|it| matches!(it.leaf, Leaf::Part { .. }));
                u32::try_from(parts.filter(|it| far(it.rect)).count()).expect("few")
            };
            let found = slack(&cut).into_iter().find(|it| it.pattern == pattern);
            let found = found.unwrap_or_default();
            let sum = |rows: &[TakesUp]| rows.iter().map(|it| it.count).sum::<u32>();
            assert_eq!(sum(&found.in_width), at_edge(&|it| it.right() == sheet.width));
            assert_eq!(sum(&found.in_height), at_edge(&|it| it.bottom() == sheet.height));
        }
    }
}
