//! Parts of one size are one kind for the search; this leads there and back.

use std::collections::BTreeMap;

use crate::geom::Size;
use crate::plan::cut::{Kind, Leaf, Part, Pattern, Token, Tree, Turning};

/// The kinds that parts fall into, and which parts are of each kind.
pub(crate) struct Kinds {
    /// What the search is asked for: one row for each size and turning.
    pub(crate) kinds: Vec<Kind>,
    /// For each kind, the indexes of its parts, in order.
    pub(crate) parts: Vec<Vec<usize>>,
}

/// Merges parts of one size and turning into kinds, in order of first use.
///
/// A part that may be turned lies along its longer side in its kind, so that
/// 2 × 3 and 3 × 2 are one kind. Parts of which none is wanted are left out.
pub(crate) fn kinds(parts: &[Part]) -> Kinds {
    let mut merged = Kinds { kinds: Vec::new(), parts: Vec::new() };
    let mut seen: BTreeMap<(Size, bool), usize> = BTreeMap::new();
    for (index, part) in parts.iter().enumerate().filter(|(_, part)| part.count > 0) {
        let free = part.turning == Turning::Free;
        let size = if free { laid_long(part.size) } else { part.size };
        let kind = *seen.entry((size, free)).or_insert(merged.kinds.len());
        if kind == merged.kinds.len() {
            merged.kinds.push(Kind { size, free, count: 0 });
            merged.parts.push(Vec::new());
        }
        let count = &mut merged.kinds[kind].count;
        *count = count.saturating_add(part.count);
        merged.parts[kind].push(index);
    }
    merged
}

/// Names the parts in patterns that name kinds.
///
/// Leaves are given to the parts of their kind in some order, as many sheets at a
/// time as one part can use; a pattern is divided where a part runs out within
/// it. Of several orders, the one counts that leads to the fewest different sheets.
/// What is more than wanted becomes waste.
pub(crate) fn parts_in_patterns(
    patterns: &[Pattern],
    merged: &Kinds,
    parts: &[Part],
) -> Vec<Pattern> {
    let as_they_are = merged.parts.clone();
    if as_they_are.iter().all(|parts| parts.len() < 2) {
        let patterns: Vec<&Pattern> = patterns.iter().collect();
        return named_in_order(&patterns, &as_they_are, merged, parts);
    }
    let mut fewest_first = merged.parts.clone();
    for parts_of_kind in &mut fewest_first {
        parts_of_kind.sort_by_key(|part| parts[*part].count);
    }
    let mut most_first = fewest_first.clone();
    most_first.iter_mut().for_each(|parts| parts.reverse());
    let mut many_first: Vec<&Pattern> = patterns.iter().collect();
    many_first.sort_by_key(|pattern| std::cmp::Reverse(pattern.copies));
    let few_first: Vec<&Pattern> = many_first.iter().rev().copied().collect();

    let orders = [patterns.iter().collect(), many_first, few_first];
    let orders = orders.iter().flat_map(|patterns| {
        let parts = [&as_they_are, &most_first, &fewest_first];
        parts.map(|parts| (patterns, parts))
    });
    let ways =
        orders.map(|(patterns, open)| named_in_order(patterns, open, merged, parts));
    ways.min_by_key(Vec::len).unwrap_or_default()
}

/// Names the parts in patterns, both in the given order.
fn named_in_order(
    patterns: &[&Pattern],
    order: &[Vec<usize>],
    merged: &Kinds,
    parts: &[Part],
) -> Vec<Pattern> {
    let mut wanted: Vec<u32> = parts.iter().map(|part| part.count).collect();
    // For each kind, its parts of which some are still wanted, the next one last.
    let mut open: Vec<Vec<usize>> = order.to_vec();
    open.iter_mut().for_each(|parts| parts.reverse());
    let mut named: Vec<Pattern> = Vec::new();
    for pattern in patterns {
        let leaves: Vec<(usize, bool)> = pattern
            .tree
            .placements(pattern.sheet)
            .iter()
            .filter_map(|it| match it.leaf {
                Leaf::Part { part, turned } => Some((part, turned)),
                Leaf::Waste | Leaf::Keep => None,
            })
            .collect();
        let mut copies = pattern.copies;
        while copies > 0 {
            let (chosen, run) = choose(&leaves, copies, &mut wanted, &open);
            for parts in &mut open {
                while parts.last().is_some_and(|part| wanted[*part] == 0) {
                    parts.pop();
                }
            }
            let mut chosen = chosen.iter().zip(&leaves).map(|(part, (kind, turned))| {
                part.map_or(Leaf::Waste, |part| {
                    let crossed = parts[part].size != merged.kinds[*kind].size;
                    Leaf::Part { part, turned: *turned != crossed }
                })
            });
            let tree = renamed(&pattern.tree, &mut chosen);
            let sheet = pattern.sheet;
            match named.iter_mut().find(|it| it.sheet == sheet && it.tree == tree) {
                Some(same) => same.copies += run,
                None => named.push(Pattern { sheet, tree, copies: run }),
            }
            copies -= run;
        }
    }
    named
}

/// Chooses a part for each leaf of a sheet, and how many sheets can be cut so.
fn choose(
    leaves: &[(usize, bool)],
    copies: u32,
    wanted: &mut [u32],
    open: &[Vec<usize>],
) -> (Vec<Option<usize>>, u32) {
    let mut taken = vec![0_u32; wanted.len()];
    let mut run = copies;
    let mut chosen = Vec::with_capacity(leaves.len());
    for (kind, _) in leaves {
        let of_kind = open.get(*kind).map_or(&[][..], Vec::as_slice);
        let room = |part: usize| wanted[part] / (taken[part] + 1);
        // The first part that wants as many as there are sheets, else the one
        // that wants most.
        let enough = of_kind.iter().rev().copied().find(|part| room(*part) >= run);
        let most = || {
            let with_room = of_kind.iter().copied().filter(|part| room(*part) > 0);
            with_room.max_by_key(|part| room(*part))
        };
        let part = enough.or_else(most);
        if let Some(part) = part {
            run = run.min(room(part));
            taken[part] += 1;
        }
        chosen.push(part);
    }
    for (part, taken) in taken.iter().enumerate() {
        wanted[part] -= taken * run;
    }
    (chosen, run)
}

/// The tree with its parts replaced, in the order of [`Tree::placements`].
fn renamed(tree: &Tree, names: &mut impl Iterator<Item = Leaf>) -> Tree {
    let tokens: Vec<Token> = tree
        .tokens()
        .map(|token| match token {
            Token::Leaf(Leaf::Part { .. }) => {
                Token::Leaf(names.next().unwrap_or(Leaf::Waste))
            }
            other => other,
        })
        .collect();
    Tree::from_tokens(&tokens).expect("only names were exchanged")
}

fn laid_long(size: Size) -> Size {
    if size.width >= size.height { size } else { size.turned() }
}
