//! Several pieces of one paper that each ask for a place on the sheet.

use leafwright::geom::Rect;
use leafwright::plan::cut::{Part, Pattern};
use leafwright::plan::{PlanOptions, plan};
use leafwright::project::*;

use crate::hand_made::*;
use crate::neighbours::{TRIMMER, at, counted, lying, planned, set};
use crate::random::Random;
use crate::schedule::carry;

/// How many there are of each piece that asks for a place; panics where one lies
/// elsewhere.
fn in_their_places(
    project: &Project,
    parts: &[Part],
    patterns: &[Pattern],
) -> Vec<(u32, u32)> {
    let places = project.pieces.iter().enumerate();
    let places = places.filter_map(|(index, piece)| Some((index, piece, piece.region?)));
    let found = places.map(|(index, piece, region)| {
        let mut count = 0;
        for pattern in patterns {
            for (rect, turned) in lying(pattern, index) {
                let place = Rect::new(region.left, region.top, piece.size);
                assert_eq!((rect, turned), (place, false), "{:?}", piece.name);
                count += pattern.copies;
            }
        }
        (count, parts[index].count)
    });
    found.collect()
}

fn sheets(patterns: &[Pattern]) -> u32 {
    patterns.iter().map(|it| it.copies).sum()
}

#[test]
fn two_places_that_a_straight_cut_parts_come_from_one_sheet() {
    // The tower in the top left corner, the boat in the middle of the right half.
    let project = set(
        Runs::Up,
        3,
        vec![
            at(16, 16, counted("tower", size(32, 48), 1)),
            at(112, 64, counted("boat", size(48, 32), 1)),
            counted("strip", size(80, 16), 2),
        ],
    );
    let (plan, notes) = planned(&project, &PlanOptions::default());
    let expected = "with `tower` and `boat` at their places it takes 3 sheets; \
                    lying anywhere, 1 would do";
    assert_eq!(notes, [expected]);
    let cut = &plan.cuts[0];
    let found = in_their_places(&project, &cut.parts, &cut.patterns);
    assert_eq!((found, sheets(&cut.patterns)), (vec![(3, 3), (3, 3)], 3));
    assert!(cut.proven, "each sheet has the place once");
    carry::check(&cut.patterns, &cut.schedule, &TRIMMER);
}

#[test]
fn places_that_overlap_come_from_different_sheets() {
    let project = set(
        Runs::Up,
        2,
        vec![
            at(64, 64, counted("tower", size(32, 48), 1)),
            at(80, 96, counted("boat", size(48, 32), 2)),
        ],
    );
    let (plan, notes) = planned(&project, &PlanOptions::default());
    let cut = &plan.cuts[0];
    let found = in_their_places(&project, &cut.parts, &cut.patterns);
    assert_eq!((found, sheets(&cut.patterns)), (vec![(2, 2), (4, 4)], 6));
    assert!(cut.proven, "no sheet has both");
    let expected = "with `tower` and `boat` at their places it takes 6 sheets; \
                    lying anywhere, 1 would do";
    assert_eq!(notes, [expected]);
    carry::check(&cut.patterns, &cut.schedule, &TRIMMER);
}

#[test]
fn what_is_at_hand_and_what_it_takes_are_both_told() {
    let tower = at(64, 64, counted("tower", size(32, 48), 3));
    let boat = at(80, 96, counted("boat", size(48, 32), 1));
    let few = |at_hand: u32, pieces: &[Piece]| {
        let mut project = set(Runs::Up, 1, pieces.to_vec());
        let Stock::Sheets(sheets) = &mut project.papers[0].stock else { return None };
        sheets[0].at_hand = Some(at_hand);
        let outcome = plan(&project, &PlanOptions::default());
        let note = outcome.notes.into_iter().next()?;
        Some((note.rule.name, note.message))
    };
    let told = |message: &str| Some(("region-not-reached", message.to_owned()));
    let alone = [tower.clone()];
    let expected = "`tower` at its place takes 3 sheets; 2 are at hand";
    assert_eq!(few(2, &alone), told(expected));
    let both = [tower.clone(), boat];
    let expected = "`tower` and `boat` at their places take 4 sheets; 3 are at hand";
    assert_eq!(few(3, &both), told(expected));
    // Nothing as large is left of sheets with the place near their middle.
    let panel = counted("panel", size(128, 128), 1);
    let expected = "`tower` at its place takes 3 sheets of 3 at hand, and what is left of \
                    them does not do for the other parts";
    assert_eq!(few(3, &[tower, panel]), told(expected));
}

#[test]
fn random_places_are_kept_or_refused() {
    let mut random = Random::new(21);
    let mut together = 0;
    for _ in 0..40 {
        let mut pieces = Vec::new();
        let number = usize::try_from(1 + random.below(3)).unwrap_or(1);
        for name in ["tower", "boat", "sun"].iter().take(number) {
            let (width, height) = (16 + random.below(44), 16 + random.below(44));
            let (left, top) = (random.below(192 - width), random.below(192 - height));
            let count = if random.below(2) == 0 { 1 } else { 2 };
            pieces.push(at(left, top, counted(name, size(width, height), count)));
        }
        pieces.push(counted("strip", size(64, 16), 3));
        let project = set(Runs::Up, 1, pieces);
        let (plan, _) = planned(&project, &PlanOptions::default());
        let cut = &plan.cuts[0];
        let found = in_their_places(&project, &cut.parts, &cut.patterns);
        assert!(found.iter().all(|it| it.0 == it.1), "{found:?}");
        let most = found.iter().map(|it| it.0).max().unwrap_or(0);
        together += u32::from(found.len() > 1 && sheets(&cut.patterns) == most);
        carry::check(&cut.patterns, &cut.schedule, &TRIMMER);
    }
    assert!(together > 5, "{together} plans have all places on one sheet");
}
