//! Finished ways to cut a sheet: brought together, renamed, and their offcuts.

use crate::geom::Size;
use crate::plan::cut::{Leaf, Token, Tree};

/// Ways to cut a sheet: its size by index, the cuts, how many sheets.
pub(super) type Ways = Vec<(usize, Tree, u32)>;

/// Brings equal ways to cut together.
pub(super) fn gather(ways: Ways) -> Ways {
    let mut patterns: Ways = Ways::new();
    for (sheet, tree, copies) in ways {
        match patterns.iter_mut().find(|it| it.0 == sheet && it.1 == tree) {
            Some(same) => same.2 += copies,
            None => patterns.push((sheet, tree, copies)),
        }
    }
    patterns
}

/// The largest offcut of all patterns by area: the pattern's place and its size.
pub(super) fn largest_offcut<'a>(
    patterns: impl Iterator<Item = (&'a Tree, Size)>,
) -> Option<(usize, Size)> {
    let mut offcut: Option<(usize, Size)> = None;
    for (index, (tree, sheet)) in patterns.enumerate() {
        for leaf in tree.placements(sheet) {
            let size = leaf.rect.size;
            let larger = offcut.is_none_or(|(_, most)| most.area() < size.area());
            if leaf.leaf == Leaf::Keep && larger {
                offcut = Some((index, size));
            }
        }
    }
    offcut
}

/// Puts the caller's indices of kinds into a tree.
pub(super) fn rename(tree: &Tree, names: &[usize]) -> Tree {
    let tokens: Vec<Token> = tree
        .tokens()
        .map(|token| match token {
            Token::Leaf(Leaf::Part { part, turned }) => {
                Token::Leaf(Leaf::Part { part: names[part], turned })
            }
            other => other,
        })
        .collect();
    Tree::from_tokens(&tokens).expect("only names were exchanged")
}

/// The most runs of cuts in one direction from a sheet to a part. A last cut that only
/// frees a part from what is left over is not counted.
pub(super) fn turns(tree: &Tree) -> u32 {
    let part = |tree: &Tree| matches!(tree, Tree::Leaf(Leaf::Part { .. }));
    let left = |tree: &Tree| matches!(tree, Tree::Leaf(Leaf::Waste | Leaf::Keep));
    let mut most = 0;
    let mut open = vec![(tree, None, 0)];
    while let Some((tree, last, turns)) = open.pop() {
        let Tree::Cut(cut) = tree else { continue };
        let trims = part(&cut.first) && left(&cut.second)
            || left(&cut.first) && part(&cut.second);
        let turns = turns + u32::from(last != Some(cut.axis));
        if !trims {
            most = most.max(turns);
        }
        open.push((&cut.first, Some(cut.axis), turns));
        open.push((&cut.second, Some(cut.axis), turns));
    }
    most
}
