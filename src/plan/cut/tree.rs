//! A sheet and the straight edge-to-edge cuts that divide it.

use crate::geom::{Axis, Length, Rect, Size};

/// How a rectangle of paper is divided, cut by cut.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Tree {
    /// Not used further.
    Leaf(Leaf),
    /// Cut once from edge to edge.
    Cut(Box<Cut>),
}

/// What a rectangle of paper is in the end.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Leaf {
    /// Too little to keep.
    Waste,
    /// An offcut worth keeping.
    Keep,
    /// A part, by its index, perhaps turned by a quarter on the sheet.
    Part {
        /// Index in the list of parts.
        part: usize,
        /// It lies with width and height exchanged.
        turned: bool,
    },
}

/// One cut, and what becomes of both sides.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Cut {
    /// Which way the cut runs: an upright cut divides the width.
    pub axis: Axis,
    /// The extent of the first part: the left one or the top one.
    pub at: Length,
    /// The left or top part.
    pub first: Tree,
    /// The right or bottom part.
    pub second: Tree,
}

/// A leaf with its place on the sheet.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Placement {
    /// Where it lies.
    pub rect: Rect,
    /// What it is.
    pub leaf: Leaf,
}

impl Tree {
    /// How many cuts it takes.
    pub fn cuts(&self) -> u32 {
        match self {
            Self::Leaf(_) => 0,
            Self::Cut(cut) => 1 + cut.first.cuts() + cut.second.cuts(),
        }
    }

    /// Every leaf with its place, in reading order of the tree.
    pub fn placements(&self, sheet: Size) -> Vec<Placement> {
        let mut placements = Vec::new();
        let mut open = vec![(self, Rect::whole(sheet))];
        while let Some((tree, rect)) = open.pop() {
            match tree {
                Self::Leaf(leaf) => placements.push(Placement { rect, leaf: *leaf }),
                Self::Cut(cut) => {
                    let (first, second) = rect.split(cut.axis, cut.at);
                    open.push((&cut.second, second));
                    open.push((&cut.first, first));
                }
            }
        }
        placements
    }
}
