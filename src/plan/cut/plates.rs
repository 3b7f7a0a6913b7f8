//! Cut trees as plates: rectangles that are cut in one direction into children
//! that lie side by side, and those the other way in turn.
//!
//! Neighbours on a plate may change places, and waste on a plate may be gathered
//! into one strip: a binary tree says more about the order than is needed.

use std::collections::BTreeMap;

use crate::geom::{Axis, Length, Size};
use crate::plan::cut::{Leaf, Tree};

/// One tree as plates, before siblings are merged.
pub(super) struct Flat {
    /// Parents before children.
    pub(super) rows: Vec<Row>,
    pub(super) root: Child,
}

/// A plate.
pub(super) struct Row {
    pub(super) axis: Axis,
    pub(super) size: Size,
    /// Extents and children.
    pub(super) children: Vec<(Length, Child)>,
    /// Its two children lie as the pattern on the paper needs them, and don't
    /// change places.
    pub(super) held: bool,
}

impl Flat {
    /// Flattens a tree.
    pub(super) fn new(tree: &Tree, sheet: Size) -> Self {
        let mut rows = Vec::new();
        // Every tree that becomes a row, in order of the rows.
        let mut trees: Vec<(&Tree, Size)> = vec![(tree, sheet)];
        if let Tree::Leaf(leaf) = *tree {
            return Self { rows, root: Child::Leaf(leaf) };
        }
        let mut next = 0;
        while let Some(&(tree, size)) = trees.get(next) {
            next += 1;
            let Tree::Cut(top) = tree else { unreachable!("only cuts are queued") };
            let (axis, held) = (top.axis, top.held);
            let mut children = Vec::new();
            let (first, second) = split(size, axis, top.at);
            let mut open = vec![(&top.second, second), (&top.first, first)];
            while let Some((tree, size)) = open.pop() {
                match tree {
                    Tree::Cut(cut) if cut.axis == axis && !cut.held && !held => {
                        let (first, second) = split(size, axis, cut.at);
                        open.push((&cut.second, second));
                        open.push((&cut.first, first));
                    }
                    Tree::Cut(_) => {
                        children.push((extent(size, axis), Child::Plate(trees.len())));
                        trees.push((tree, size));
                    }
                    Tree::Leaf(leaf) => {
                        children.push((extent(size, axis), Child::Leaf(*leaf)));
                    }
                }
            }
            rows.push(Row { axis, size, children, held });
        }
        let mut flat = Self { rows, root: Child::Plate(0) };
        flat.gather_waste();
        flat
    }

    /// Makes one strip of the waste on each plate; a plate of waste is waste.
    fn gather_waste(&mut self) {
        const WASTE: Child = Child::Leaf(Leaf::Waste);
        let mut becomes: Vec<Child> = (0..self.rows.len()).map(Child::Plate).collect();
        for idx in (0..self.rows.len()).rev() {
            let row = &mut self.rows[idx];
            for (_, child) in &mut row.children {
                if let Child::Plate(plate) = *child {
                    *child = becomes[plate];
                }
            }
            if row.held {
                if row.children.iter().all(|it| it.1 == WASTE) {
                    becomes[idx] = WASTE;
                    row.children.clear();
                }
                continue;
            }
            let waste: Length =
                row.children.iter().filter(|it| it.1 == WASTE).map(|it| it.0).sum();
            row.children.retain(|it| it.1 != WASTE);
            if row.children.is_empty() {
                becomes[idx] = WASTE;
            } else if waste > Length::ZERO {
                row.children.push((waste, WASTE));
            } else if let [(_, only)] = row.children[..] {
                becomes[idx] = only;
                row.children.clear();
            }
        }
        self.root = becomes[0];
    }

    /// The tree of these plates; some children of one row, if they are given, are
    /// replaced by a tree of their own.
    pub(super) fn tree(&self, replaced: Option<(usize, &[usize], Tree)>) -> Tree {
        let root = match self.root {
            Child::Leaf(leaf) => return Tree::Leaf(leaf),
            Child::Plate(root) => root,
        };
        let mut replaced = replaced;
        let mut trees: Vec<Option<Tree>> = Vec::new();
        trees.resize_with(self.rows.len(), || None);
        for (idx, row) in self.rows.iter().enumerate().rev() {
            let mut children: Vec<(Length, Tree)> = Vec::new();
            let mut gone = Length::ZERO;
            for (at, &(extent, child)) in row.children.iter().enumerate() {
                let taken = match child {
                    Child::Leaf(leaf) => Some(Tree::Leaf(leaf)),
                    Child::Plate(below) => trees[below].take(),
                };
                match &replaced {
                    Some((row, these, _)) if *row == idx && these.contains(&at) => {
                        gone += extent;
                    }
                    _ => children.extend(taken.map(|tree| (extent, tree))),
                }
            }
            if gone > Length::ZERO
                && let Some((_, _, tree)) = replaced.take()
            {
                children.push((gone, tree));
            }
            trees[idx] = children.into_iter().rev().fold(None, |rest, (at, tree)| {
                Some(match rest {
                    None => tree,
                    Some(rest) if row.held => Tree::held(row.axis, at, tree, rest),
                    Some(rest) => Tree::cut(row.axis, at, tree, rest),
                })
            });
        }
        trees[root].take().unwrap_or(Tree::Leaf(Leaf::Waste))
    }

    /// A number that is equal for trees that differ in the order of neighbours only, and
    /// hardly ever for others.
    pub(super) fn digest(&self) -> u64 {
        let mut digests = vec![0; self.rows.len()];
        let digest = |child: Child, digests: &[u64]| match child {
            Child::Plate(plate) => digests[plate],
            Child::Leaf(Leaf::Waste) => 1,
            Child::Leaf(Leaf::Keep) => 2,
            Child::Leaf(Leaf::Part { part, turned }) => {
                mixed(part as u64, 3 + u64::from(turned))
            }
        };
        let mut children = Vec::new();
        for (idx, row) in self.rows.iter().enumerate().rev() {
            children.clear();
            for &(extent, child) in &row.children {
                let extent = extent.units().cast_unsigned();
                children.push(mixed(extent, digest(child, &digests)));
            }
            if !row.held {
                children.sort_unstable();
            }
            let Size { width, height } = row.size;
            let own = [width, height].map(|it| it.units().cast_unsigned());
            let kind = u64::from(row.axis == Axis::Level) + 2 * u64::from(row.held);
            let start = mixed(mixed(kind, own[0]), own[1]);
            digests[idx] = children.iter().fold(start, |sum, &it| mixed(sum, it));
        }
        digest(self.root, &digests)
    }

    /// For each row a number that is equal where rows are cut alike.
    pub(super) fn classes(&self) -> Vec<usize> {
        let mut known = BTreeMap::new();
        let mut classes = vec![0; self.rows.len()];
        for (idx, row) in self.rows.iter().enumerate().rev() {
            let mut children: Vec<(Length, Child)> = row
                .children
                .iter()
                .map(|&(extent, child)| match child {
                    Child::Plate(plate) => (extent, Child::Plate(classes[plate])),
                    Child::Leaf(_) => (extent, child),
                })
                .collect();
            if !row.held {
                children.sort_unstable();
            }
            let fresh = known.len();
            let key = (row.axis, row.size, row.held, children);
            classes[idx] = *known.entry(key).or_insert(fresh);
        }
        classes
    }
}

/// Two numbers mixed to one, so that others rarely give the same (the finishing steps of
/// splitmix64; G. L. Steele, D. Lea and C. H. Flood, 2014).
fn mixed(one: u64, other: u64) -> u64 {
    let mut mix = one.rotate_left(31).wrapping_mul(0x9E37_79B9_7F4A_7C15) ^ other;
    mix = (mix ^ mix >> 30).wrapping_mul(0xBF58_476D_1CE4_E5B9);
    mix = (mix ^ mix >> 27).wrapping_mul(0x94D0_49BB_1331_11EB);
    mix ^ mix >> 31
}

/// What a cut yields.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(super) enum Child {
    /// Not cut further.
    Leaf(Leaf),
    /// Cut further: a plate, by its index.
    Plate(usize),
}

/// The side of a size that cuts of this axis divide.
pub(super) fn extent(size: Size, axis: Axis) -> Length {
    size.along(axis.other())
}

fn split(size: Size, axis: Axis, at: Length) -> (Size, Size) {
    let Size { width, height } = size;
    match axis {
        Axis::Upright => (Size::new(at, height), Size::new(width - at, height)),
        Axis::Level => (Size::new(width, at), Size::new(width, height - at)),
    }
}
