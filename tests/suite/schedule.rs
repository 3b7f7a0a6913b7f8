//! The order of work at the trimmer: worked examples, a replay that knows nothing
//! of the scheduler, and the fewest marks against plain search.

pub(crate) mod carry;
pub(crate) mod made_up;
mod plain;

use leafwright::geom::{Axis, Length, Size};
use leafwright::plan::cut::{Becomes, Hand, Leaf, Pattern, Schedule, Tree, schedule};
use leafwright::project::{Trimmer, TrimmerKind};

use crate::random::Random;
use carry::check;
use made_up::{sheets, to_tree};
use plain::Plain;

/// Sixty-fourths of an inch.
fn l(sixty_fourths: i64) -> Length {
    Length::inch(sixty_fourths, 64)
}

/// Quarters of an inch.
fn q(quarters: i64) -> Length {
    Length::inch(quarters, 4)
}

fn size(width: Length, height: Length) -> Size {
    Size::new(width, height)
}

fn trimmer(at_once: u32, narrowest: Length) -> Trimmer {
    Trimmer {
        longest_cut: None,
        sheets_at_once: at_once,
        marks: Length::inch(1, 16),
        narrowest,
        kind: TrimmerKind::Sliding,
    }
}

fn up(at: Length, first: Tree, second: Tree) -> Tree {
    Tree::cut(Axis::Upright, at, first, second)
}

fn level(at: Length, first: Tree, second: Tree) -> Tree {
    Tree::cut(Axis::Level, at, first, second)
}

const KEEP: Tree = Tree::Leaf(Leaf::Keep);
const WASTE: Tree = Tree::Leaf(Leaf::Waste);
const A: Tree = Tree::part(0);
const B: Tree = Tree::part(1);
const C: Tree = Tree::part(2);

fn one(sheet: Size, tree: Tree, copies: u32) -> Pattern {
    Pattern { sheet, tree, copies }
}

/// A strip of the given parts, each cut off from the left.
fn row(mut parts: Vec<(Length, Tree)>) -> Tree {
    let (_, mut tree) = parts.pop().expect("a strip has parts");
    while let Some((at, part)) = parts.pop() {
        tree = up(at, part, tree);
    }
    tree
}

fn marks_of(schedule: &Schedule) -> Vec<Length> {
    schedule.steps.iter().filter(|it| it.moves).map(|it| it.mark).collect()
}

#[test]
fn a_small_kit_takes_five_cuts_and_three_marks() {
    // Check value: 6 x 6 in; two 1 x 5, one 1 1/2 x 5, two 2 1/2 x 2 1/2; offcut
    // 1 x 6 (as 6 x 1 here); five cuts, three marks (common practice, no source).
    let strip = row(vec![(q(4), A), (q(4), A), (q(6), B), (q(10), level(q(10), C, C))]);
    let tree = level(q(20), strip, KEEP);
    assert_eq!(tree.cuts(), 5);
    let patterns = [one(size(q(24), q(24)), tree, 1)];
    let found = schedule(&patterns, &trimmer(1, q(1)));
    check(&patterns, &found, &trimmer(1, q(1)));
    assert_eq!((found.marks, found.proven), (3, true));
    assert_eq!(found.strokes, 5);
    assert!(found.steps[0].trims(), "the trim comes first");
}

#[test]
fn four_small_kits_take_twenty_cuts_four_marks_and_eleven_strokes() {
    // Check value: the same kit four times on 12 x 12 in; offcut 2 x 12; 20 cuts,
    // four marks, eleven strokes with two strips stacked (common practice, no
    // source).
    let strip = || {
        let mut parts = Vec::new();
        parts.extend((0..2).map(|_| (q(10), level(q(10), C, C))));
        parts.extend((0..4).map(|_| (q(4), A)));
        parts.extend((0..2).map(|_| (q(6), B)));
        row(parts)
    };
    let tree = level(q(20), strip(), level(q(20), strip(), KEEP));
    assert_eq!(tree.cuts(), 20);
    let patterns = [one(size(q(48), q(48)), tree, 1)];
    let two = trimmer(2, q(1));
    let found = schedule(&patterns, &two);
    check(&patterns, &found, &two);
    assert_eq!((found.marks, found.proven), (4, true));
    assert_eq!(found.strokes, 11);
    let offcut = found.laid[0].placements(size(q(48), q(48)));
    let offcut: Vec<Size> =
        offcut.iter().filter(|it| it.leaf == Leaf::Keep).map(|it| it.rect.size).collect();
    assert_eq!(offcut, [size(q(48), q(8))]);
}

#[test]
fn a_sheet_of_eight_takes_the_marks_six_three_and_one_and_a_quarter() {
    // Check value: 8 x 8 in; two 6 x 1 1/4, one 6 x 2 1/2, two 3 x 3 in; offcut
    // 2 x 8; five cuts, marks 6, 3, 1 1/4 in (own arithmetic, checked by hand).
    let squares = up(q(12), C, C);
    let strips = level(q(5), A, level(q(5), A, level(q(10), B, squares)));
    let tree = up(q(24), strips, KEEP);
    assert_eq!(tree.cuts(), 5);
    let patterns = [one(size(q(32), q(32)), tree, 1)];
    let found = schedule(&patterns, &trimmer(1, q(1)));
    check(&patterns, &found, &trimmer(1, q(1)));
    assert!(found.proven);
    let mut marks = marks_of(&found);
    marks.sort_unstable();
    assert_eq!(marks, [q(5), q(12), q(24)]);
    // The trim comes first, and no part has to be laid aside.
    assert_eq!(found.steps[0].mark, q(24));
    assert!(!found.steps.iter().any(|it| matches!(it.hand, Hand::Aside(_))));
    // The 2 1/2 in strip is what remains, so nobody measures it.
    assert!(found.steps.iter().any(|it| it.slack && it.stays.1 == Becomes::Part(1)));
}

#[test]
fn what_is_hard_to_hold_is_cut_last() {
    let sliver = level(q(8), A, A);
    let tree = up(Length::inch(1, 8), sliver, up(q(8), level(q(4), B, WASTE), WASTE));
    let patterns = [one(size(q(24), q(16)), tree, 1)];
    let holds = trimmer(1, q(1));
    let found = schedule(&patterns, &holds);
    check(&patterns, &found, &holds);
    let hard: Vec<bool> = found.steps.iter().map(|it| it.hard_to_hold).collect();
    assert_eq!(hard.iter().filter(|it| **it).count(), 1);
    assert_eq!(hard.last(), Some(&true));
}

#[test]
fn a_sheet_that_is_not_cut_needs_no_step() {
    let patterns = [one(size(q(24), q(24)), A, 3), one(size(q(24), q(24)), WASTE, 1)];
    let found = schedule(&patterns, &trimmer(1, q(1)));
    assert_eq!((found.marks, found.proven, found.steps.len()), (0, true, 0));
    assert_eq!(found.laid, [A, WASTE]);
}

#[test]
fn a_chain_of_ten_thousand_cuts_is_ordered() {
    let (mut tree, mut extent) = (Tree::part(0), l(1));
    let mut height = l(1);
    for idx in 0..10_000 {
        if idx % 2 == 0 {
            tree = up(l(1 + idx % 7), A, tree);
            extent += l(1 + idx % 7);
        } else {
            tree = level(l(1 + idx % 5), B, tree);
            height += l(1 + idx % 5);
        }
    }
    assert_eq!(tree.cuts(), 10_000);
    let patterns = [one(size(extent, height), tree, 1)];
    let found = schedule(&patterns, &trimmer(1, Length::ZERO));
    check(&patterns, &found, &trimmer(1, Length::ZERO));
}

#[test]
fn plans_too_large_to_search_are_ordered_all_the_same() {
    let mut random = Random::new(51);
    for n in [30, 150] {
        let mut patterns = Vec::new();
        while patterns.len() < n {
            for it in sheets(&mut random, 3, 9, 5) {
                patterns.push(one(it.size, to_tree(&it), 2));
            }
        }
        let trimmer = trimmer(3, l(6));
        let found = schedule(&patterns, &trimmer);
        check(&patterns, &found, &trimmer);
        let apart =
            patterns.iter().map(|it| schedule(std::slice::from_ref(it), &trimmer));
        let apart: u32 = apart.map(|it| it.marks).sum();
        assert!(found.marks * 2 < apart, "{} of {apart}", found.marks);
    }
}

#[test]
fn thousands_of_schedules_can_be_carried_out() {
    let mut random = Random::new(20);
    for round in 0..2000 {
        let patterns: Vec<Pattern> = sheets(&mut random, 3, 8, 4)
            .iter()
            .map(|it| {
                one(it.size, to_tree(it), u32::try_from(random.below(9) + 1).unwrap())
            })
            .collect();
        let at_once = u32::try_from(random.below(4) + 1).unwrap();
        let trimmer = trimmer(at_once, l(random.below(10)));
        let found = schedule(&patterns, &trimmer);
        check(&patterns, &found, &trimmer);
        assert!(found.at_least <= found.marks);
        assert_eq!(found.proven, found.at_least == found.marks);
        if round % 16 == 0 {
            assert_eq!(found, schedule(&patterns, &trimmer), "the same order every time");
        }
    }
}

#[test]
fn the_fewest_marks_are_those_of_plain_search() {
    let mut random = Random::new(3);
    let mut n_checked = 0;
    let mut most = 0;
    while n_checked < 4000 {
        let sheets = sheets(&mut random, 3, 4, 3);
        let narrowest = l(random.below(12));
        let plain = Plain::new(&sheets, narrowest);
        if plain.children.len() > 11 || plain.children.is_empty() {
            continue;
        }
        let patterns: Vec<Pattern> =
            sheets.iter().map(|it| one(it.size, to_tree(it), 1)).collect();
        let found = schedule(&patterns, &trimmer(1, narrowest));
        assert!(found.proven);
        assert_eq!(found.marks, plain.fewest(), "{patterns:?}");
        most = most.max(found.marks);
        n_checked += 1;
    }
    assert!(most >= 7, "the forests are too easy");
}
