//! Choosing among trees: the same parts and offcuts, never more work.

use leafwright::geom::{Axis, Length, Size};
use leafwright::plan::cut::{Leaf, Pattern, TIDY_BUDGET, Tree, schedule, tidy};
use leafwright::project::{Trimmer, TrimmerKind};

use crate::random::Random;
use crate::schedule::made_up::{sheets, to_tree};

const TRIMMER: Trimmer = Trimmer {
    longest_cut: None,
    sheets_at_once: 1,
    marks: Length::inch(1, 16),
    narrowest: Length::ZERO,
    kind: TrimmerKind::Sliding,
};

/// Leaves with their sizes: parts as they are when not turned, and offcuts.
fn kept(pattern: &Pattern) -> Vec<(Option<usize>, Size)> {
    let mut kept: Vec<(Option<usize>, Size)> = pattern
        .tree
        .placements(pattern.sheet)
        .iter()
        .filter_map(|it| match it.leaf {
            Leaf::Waste => None,
            Leaf::Keep => Some((None, it.rect.size)),
            Leaf::Part { part, turned: true } => {
                Some((Some(part), it.rect.size.turned()))
            }
            Leaf::Part { part, turned: false } => Some((Some(part), it.rect.size)),
        })
        .collect();
    kept.sort_unstable();
    kept
}

#[test]
fn a_careless_tree_becomes_five_cuts_and_three_marks() {
    // The check value of `schedule`: 8 x 8 in; two 6 x 1 1/4, one 6 x 2 1/2, two
    // 3 x 3 in. Here the squares are cut in two levels, and the strips trimmed one
    // by one, which takes more cuts and marks.
    let q = |n| Length::inch(n, 4);
    let up = |at, first, second| Tree::cut(Axis::Upright, at, first, second);
    let level = |at, first, second| Tree::cut(Axis::Level, at, first, second);
    let [a, b, c] = [Tree::part(0), Tree::part(1), Tree::part(2)];
    let waste = || Tree::Leaf(Leaf::Waste);
    let squares = up(q(12), c.clone(), up(q(12), c, Tree::Leaf(Leaf::Waste)));
    let strips = level(q(5), a.clone(), level(q(5), a, b));
    let tree = level(q(12), squares, up(q(24), strips, waste()));
    let sheet = Size::new(q(32), q(32));
    let pattern = Pattern { sheet, tree, copies: 1 };
    let found =
        tidy(std::slice::from_ref(&pattern), &[true; 3], &TRIMMER, None, TIDY_BUDGET);
    let better = Pattern { tree: found.trees[0].clone(), ..pattern.clone() };
    assert_eq!(kept(&better), kept(&pattern));
    assert_eq!(better.tree.cuts(), 5);
    let order = schedule(&[better], &TRIMMER);
    assert_eq!((order.marks, order.proven), (3, true));
}

#[test]
fn tidying_keeps_every_part_and_never_adds_a_mark() {
    let mut random = Random::new(8);
    let mut saved = 0;
    for _ in 0..150 {
        let patterns: Vec<Pattern> = sheets(&mut random, 2, 5, 3)
            .iter()
            .map(|it| Pattern { sheet: it.size, tree: to_tree(it), copies: 1 })
            .collect();
        let free: Vec<bool> = (0..9).map(|it| it % 2 == 0).collect();
        let found = tidy(&patterns, &free, &TRIMMER, None, 40_000);
        let better: Vec<Pattern> = patterns
            .iter()
            .zip(&found.trees)
            .map(|(it, tree)| Pattern { tree: tree.clone(), ..it.clone() })
            .collect();
        for (new, old) in better.iter().zip(&patterns) {
            assert_eq!(kept(new), kept(old));
            for placed in new.tree.placements(new.sheet) {
                let turned = matches!(placed.leaf, Leaf::Part { part, turned: true } if !free[part]);
                assert!(!turned, "a part with a pattern was turned");
            }
        }
        let (before, after) =
            (schedule(&patterns, &TRIMMER), schedule(&better, &TRIMMER));
        assert!(after.marks <= before.marks);
        let cuts = |trees: &[Tree]| trees.iter().map(Tree::cuts).sum::<u32>();
        assert!(after.marks < before.marks || cuts(&after.laid) <= cuts(&before.laid));
        saved += before.marks - after.marks;
        assert_eq!(
            found,
            tidy(&patterns, &free, &TRIMMER, None, 40_000),
            "the same every time"
        );
    }
    assert!(saved > 0, "tidying gains nothing");
}

/// The most runs of cuts in one direction that lead to a part; a last cut that frees
/// one part from what is left over is not counted.
fn stages(tree: &Tree, last: Option<Axis>, runs: u32) -> u32 {
    let Tree::Cut(cut) = tree else { return runs };
    let now = runs + u32::from(last != Some(cut.axis));
    let left = |it: &Tree| matches!(it, Tree::Leaf(Leaf::Waste | Leaf::Keep));
    let part = |it: &Tree| matches!(it, Tree::Leaf(Leaf::Part { .. }));
    let (one, other) = (&cut.first, &cut.second);
    if (part(one) && left(other)) || (left(one) && part(other)) {
        return runs;
    }
    stages(one, Some(cut.axis), now).max(stages(other, Some(cut.axis), now))
}

#[test]
fn tidying_keeps_to_the_stages_that_are_allowed() {
    let mut random = Random::new(15);
    let (mut deeper, mut tried) = (0, 0);
    for _ in 0..120 {
        let sheets = sheets(&mut random, 1, 6, 2);
        let tree = to_tree(&sheets[0]);
        let pattern = Pattern { sheet: sheets[0].size, tree, copies: 1 };
        if stages(&pattern.tree, None, 0) > 2 {
            continue;
        }
        tried += 1;
        let free = [true; 9];
        let one = std::slice::from_ref(&pattern);
        let held = tidy(one, &free, &TRIMMER, Some(2), 40_000);
        assert!(stages(&held.trees[0], None, 0) <= 2, "{:?}", held.trees[0]);
        let loose = tidy(one, &free, &TRIMMER, None, 40_000);
        deeper += u32::from(stages(&loose.trees[0], None, 0) > 2);
    }
    assert!(tried > 20 && deeper > 0, "{tried} tried, {deeper} would be deeper");
}

#[test]
fn a_chain_of_ten_thousand_cuts_is_tidied_within_its_budget() {
    let l = |n| Length::inch(n, 64);
    let (mut tree, mut width, mut height) = (Tree::part(0), l(1), l(1));
    for idx in 0..10_000 {
        let (axis, extent) = match idx % 2 {
            0 => (Axis::Upright, &mut width),
            _ => (Axis::Level, &mut height),
        };
        *extent += l(1 + idx % 7);
        tree = Tree::cut(axis, l(1 + idx % 7), Tree::part(1), tree);
    }
    let pattern = Pattern { sheet: Size::new(width, height), tree, copies: 1 };
    let found = tidy(std::slice::from_ref(&pattern), &[true; 2], &TRIMMER, None, 500_000);
    let better = Pattern { tree: found.trees[0].clone(), ..pattern.clone() };
    assert_eq!(kept(&better), kept(&pattern));
}
