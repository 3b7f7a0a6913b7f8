//! Carries a cut plan out on imaginary paper, and knows nothing of the search.
//!
//! Every sheet is cut as the plan says, cut by cut, by its own arithmetic. What
//! comes out is counted and compared with what is wanted. Nothing here is shared
//! with the engine, so that a mistake there can't hide itself.

use std::fmt;

use crate::geom::{Axis, Length, Size};
use crate::plan::cut::{Kind, Leaf, Limits, Tree};

/// What is wrong with a plan.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ReplayFault {
    /// A cut does not lie within the rectangle that it divides.
    CutOutside {
        /// Index of the pattern.
        pattern: usize,
        /// Width × height of the rectangle.
        size: Size,
        /// Which way the cut runs.
        axis: Axis,
        /// Where it was to be.
        at: Length,
    },
    /// A cut is longer than the trimmer makes.
    CutTooLong {
        /// Index of the pattern.
        pattern: usize,
        /// The length of the cut.
        length: Length,
    },
    /// The paper is turned more often than allowed.
    TooManyTurns {
        /// Index of the pattern.
        pattern: usize,
        /// How often.
        turns: u32,
    },
    /// A leaf names a part that is not wanted.
    NoSuchPart {
        /// Index of the pattern.
        pattern: usize,
        /// Index that the leaf names.
        part: usize,
    },
    /// A part does not come out in its size.
    WrongSize {
        /// Index of the pattern.
        pattern: usize,
        /// Index of the part.
        part: usize,
        /// The size that comes out.
        comes: Size,
        /// The size it should have as it lies.
        wanted: Size,
    },
    /// A part is turned that must not be.
    Turned {
        /// Index of the pattern.
        pattern: usize,
        /// Index of the part.
        part: usize,
    },
    /// A kept offcut is narrower than what is worth keeping.
    OffcutTooNarrow {
        /// Index of the pattern.
        pattern: usize,
        /// Its size.
        size: Size,
    },
    /// The named offcut is not left by the pattern.
    NoSuchOffcut {
        /// Index of the pattern.
        pattern: usize,
        /// The size it should have.
        size: Size,
    },
    /// A part does not lie where the pattern on the paper ties it: next to another
    /// one, or at its place on the sheet.
    OutOfPlace {
        /// Index of the pattern.
        pattern: usize,
        /// Index of the part.
        part: usize,
    },
    /// Not as many of a part come out as are wanted.
    WrongCount {
        /// Index of the part.
        part: usize,
        /// How many come out.
        comes: u64,
        /// How many are wanted.
        wanted: u32,
    },
}

/// One way to cut a sheet: the sheet's size, the cuts, and how many sheets.
pub type Way<'a> = (Size, &'a Tree, u32);

/// What comes out of a plan that holds.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Replayed {
    /// Sheets in all.
    pub sheets: u64,
    /// Cuts on one sheet of each pattern.
    pub cuts: Vec<u32>,
    /// The largest offcut by area, with its pattern.
    pub offcut: Option<(usize, Size)>,
}

/// Cuts every pattern and compares what comes out with what is wanted.
///
/// `left_out` names kinds that the plan leaves out because they fit no sheet;
/// none of them may come out. `offcut` is the one the plan names.
pub fn replay(
    kinds: &[Kind],
    limits: &Limits,
    ways: &[Way],
    left_out: &[usize],
    offcut: Option<(usize, Size)>,
) -> Result<Replayed, ReplayFault> {
    let mut replayed = Replayed::default();
    let mut come = vec![0_u64; kinds.len()];
    let mut found = offcut.is_none();
    for (pattern, &(sheet, tree, copies)) in ways.iter().enumerate() {
        let mut hands = Hands { pattern, kinds, limits, cuts: 0 };
        for (leaf, size) in hands.cut(sheet, tree)? {
            match leaf {
                Leaf::Part { part, .. } => come[part] += u64::from(copies),
                Leaf::Keep => {
                    found |= offcut == Some((pattern, size));
                    let larger = |(_, most): (usize, Size)| most.area() < size.area();
                    if replayed.offcut.is_none_or(larger) {
                        replayed.offcut = Some((pattern, size));
                    }
                }
                Leaf::Waste => {}
            }
        }
        replayed.sheets += u64::from(copies);
        replayed.cuts.push(hands.cuts);
    }
    for (part, (&comes, kind)) in come.iter().zip(kinds).enumerate() {
        let wanted = if left_out.contains(&part) { 0 } else { kind.count };
        if comes != u64::from(wanted) {
            return Err(ReplayFault::WrongCount { part, comes, wanted });
        }
    }
    match offcut {
        Some((pattern, size)) if !found => {
            Err(ReplayFault::NoSuchOffcut { pattern, size })
        }
        _ => Ok(replayed),
    }
}

/// A piece of paper in hand, and how it came about.
struct InHand<'a> {
    size: Size,
    tree: &'a Tree,
    /// Runs of cuts in one direction that led here.
    turns: u32,
    last: Option<Axis>,
}

/// Who cuts one sheet.
struct Hands<'a> {
    pattern: usize,
    kinds: &'a [Kind],
    limits: &'a Limits,
    cuts: u32,
}

impl Hands<'_> {
    /// Cuts a sheet; gives back what comes out, with its size.
    fn cut(
        &mut self,
        sheet: Size,
        tree: &Tree,
    ) -> Result<Vec<(Leaf, Size)>, ReplayFault> {
        let mut out = Vec::new();
        let mut hand = vec![InHand { size: sheet, tree, turns: 0, last: None }];
        while let Some(InHand { size, tree, turns, last }) = hand.pop() {
            let cut = match tree {
                Tree::Leaf(leaf) => {
                    self.look_at(*leaf, size)?;
                    out.push((*leaf, size));
                    continue;
                }
                Tree::Cut(cut) => cut,
            };
            self.cuts += 1;
            let (along, across) = match cut.axis {
                Axis::Upright => (size.height, size.width),
                Axis::Level => (size.width, size.height),
            };
            let pattern = self.pattern;
            if cut.at <= Length::ZERO || across <= cut.at {
                let (axis, at) = (cut.axis, cut.at);
                return Err(ReplayFault::CutOutside { pattern, size, axis, at });
            }
            if self.limits.longest_cut.is_some_and(|longest| longest < along) {
                return Err(ReplayFault::CutTooLong { pattern, length: along });
            }
            let turns = turns + u32::from(last != Some(cut.axis));
            if !only_trims(&cut.first, &cut.second)
                && self.limits.stages.is_some_and(|most| u32::from(most).max(2) < turns)
            {
                return Err(ReplayFault::TooManyTurns { pattern, turns });
            }
            let rest = across - cut.at;
            let part = |extent: Length| match cut.axis {
                Axis::Upright => Size::new(extent, size.height),
                Axis::Level => Size::new(size.width, extent),
            };
            let last = Some(cut.axis);
            hand.push(InHand { size: part(rest), tree: &cut.second, turns, last });
            hand.push(InHand { size: part(cut.at), tree: &cut.first, turns, last });
        }
        Ok(out)
    }

    /// Whether what came out is what it is said to be.
    fn look_at(&self, leaf: Leaf, size: Size) -> Result<(), ReplayFault> {
        let pattern = self.pattern;
        match leaf {
            Leaf::Waste => Ok(()),
            Leaf::Keep if size.width.min(size.height) < self.limits.least_offcut => {
                Err(ReplayFault::OffcutTooNarrow { pattern, size })
            }
            Leaf::Keep => Ok(()),
            Leaf::Part { part, turned } => {
                let Some(kind) = self.kinds.get(part) else {
                    return Err(ReplayFault::NoSuchPart { pattern, part });
                };
                let Size { width, height } = kind.size;
                let wanted = if turned {
                    Size::new(height, width)
                } else {
                    Size::new(width, height)
                };
                if wanted != size {
                    return Err(ReplayFault::WrongSize {
                        pattern,
                        part,
                        comes: size,
                        wanted,
                    });
                }
                if turned && !kind.free && width != height {
                    return Err(ReplayFault::Turned { pattern, part });
                }
                Ok(())
            }
        }
    }
}

/// A cut that only frees a part from what is left over is not counted as a turn.
fn only_trims(first: &Tree, second: &Tree) -> bool {
    let part = |tree: &Tree| matches!(tree, Tree::Leaf(Leaf::Part { .. }));
    let left = |tree: &Tree| matches!(tree, Tree::Leaf(Leaf::Waste | Leaf::Keep));
    (part(first) && left(second)) || (left(first) && part(second))
}

impl fmt::Display for ReplayFault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "the cut plan does not hold: {self:?}")
    }
}

impl std::error::Error for ReplayFault {}
