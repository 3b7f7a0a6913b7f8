//! Other ways to cut the same parts from a rectangle of paper.
//!
//! For every sub-multiset of the parts, smallest first, the blocks that can be made
//! of it are built by joining two smaller blocks side by side or one above the
//! other. A block that is not smaller than another one, in width, height and
//! score, is dropped, and only a few are kept of each sub-multiset. So this finds
//! good ways, not all ways: whoever asks compares them with what she had.

use std::collections::BTreeMap;

use crate::geom::{Axis, Length, Size};
use crate::plan::cut::{Leaf, Tree};

/// A part or an offcut that lies somewhere in the rectangle.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(super) struct Item {
    /// Width × height as it lies now.
    pub(super) size: Size,
    /// It may be turned by a quarter.
    pub(super) free: bool,
    /// What it is.
    pub(super) leaf: Leaf,
}

/// What a block is liked for.
#[derive(Clone, Copy, Debug)]
pub(super) struct Taste {
    /// What a cut costs.
    pub(super) cut: u32,
    /// What each different extent costs.
    pub(super) mark: u32,
    /// Two blocks that differ by less than this are chosen between by chance.
    pub(super) chance: u32,
    /// A number for the chance.
    pub(super) seed: u64,
}

/// Blocks kept of each sub-multiset.
const KEPT: usize = 10;
/// More sub-multisets than this are not looked at.
const MOST_SETS: usize = 4096;
/// More splits of sub-multisets than this are not looked at.
const MOST_SPLITS: u64 = 40_000;

/// Parts of one size, by number.
pub(super) struct Parts {
    kinds: Vec<KindOf>,
    /// One step of each kind in the index of a sub-multiset.
    strides: Vec<usize>,
    n_sets: usize,
}

struct KindOf {
    size: Size,
    free: bool,
    keep: bool,
    /// The leaves, with the size that each has when it is not turned.
    leaves: Vec<(Leaf, Size)>,
}

#[derive(Clone, Copy)]
struct Block {
    width: Length,
    height: Length,
    cuts: u32,
    extents: u64,
    score: u32,
    made: Made,
}

#[derive(Clone, Copy)]
enum Made {
    One(usize),
    Joined(Axis, (usize, usize), (usize, usize)),
}

impl Parts {
    /// Sorts items by kind; `None` if there are too many ways to split them.
    pub(super) fn new(items: &[Item]) -> Option<Self> {
        let mut kinds: BTreeMap<(Size, bool, bool), Vec<(Leaf, Size)>> = BTreeMap::new();
        for item in items {
            let turned = matches!(item.leaf, Leaf::Part { turned: true, .. });
            let bare = if turned { item.size.turned() } else { item.size };
            let keep = item.leaf == Leaf::Keep;
            let lying = Size::new(item.size.long(), item.size.short());
            let key = if item.free { lying } else { item.size };
            kinds.entry((key, item.free, keep)).or_default().push((item.leaf, bare));
        }
        let (mut n_sets, mut n_splits) = (1_usize, 1_u64);
        let mut strides = Vec::new();
        for leaves in kinds.values() {
            strides.push(n_sets);
            let n = leaves.len();
            n_sets = n_sets.checked_mul(n + 1)?;
            n_splits = n_splits.checked_mul((n as u64 + 1) * (n as u64 + 2) / 2)?;
        }
        let kinds = kinds.into_iter().map(|((size, free, keep), leaves)| KindOf {
            size,
            free,
            keep,
            leaves,
        });
        let small = n_sets <= MOST_SETS && n_splits <= MOST_SPLITS;
        small.then(|| Self { kinds: kinds.collect(), strides, n_sets })
    }

    /// Trees that cut all parts from a room, best first; counts its steps.
    pub(super) fn ways(&self, room: Size, taste: Taste, steps: &mut u64) -> Vec<Tree> {
        let mut search = Search {
            parts: self,
            room,
            taste,
            blocks: vec![Vec::new(); self.n_sets],
            spare: 0,
        };
        let area: i128 =
            self.kinds.iter().map(|it| it.size.area() * it.leaves.len() as i128).sum();
        search.spare = room.area() - area;
        for set in 1..self.n_sets {
            search.fill(set, steps);
        }
        let last = self.n_sets - 1;
        let mut order: Vec<usize> = (0..search.blocks[last].len()).collect();
        order.sort_by_key(|&idx| search.blocks[last][idx].score);
        let mut trees = Vec::new();
        for idx in order {
            search.trees(last, idx, &mut trees);
        }
        trees
    }

    fn digit(&self, set: usize, kind: usize) -> usize {
        set / self.strides[kind] % (self.kinds[kind].leaves.len() + 1)
    }

    fn area(&self, set: usize) -> i128 {
        let kinds = self.kinds.iter().enumerate();
        kinds.map(|(idx, it)| it.size.area() * self.digit(set, idx) as i128).sum()
    }
}

struct Search<'a> {
    parts: &'a Parts,
    room: Size,
    taste: Taste,
    /// The blocks kept of each sub-multiset.
    blocks: Vec<Vec<Block>>,
    /// Area of the room that no part covers.
    spare: i128,
}

impl Search<'_> {
    /// Finds the blocks of a sub-multiset from those of its parts.
    fn fill(&mut self, set: usize, steps: &mut u64) {
        let parts = self.parts;
        if let Some(kind) = parts.strides.iter().position(|&it| it == set) {
            let KindOf { size, free, keep, .. } = parts.kinds[kind];
            let (made, cuts, extents) = (Made::One(kind), 0, 0);
            let turned = size.turned();
            for Size { width, height } in [size, turned] {
                if (free && !keep) || (Size { width, height }) == size {
                    self.put(set, Block { width, height, cuts, extents, score: 0, made });
                }
            }
            return;
        }
        let digits: Vec<usize> =
            (0..parts.kinds.len()).map(|kind| parts.digit(set, kind)).collect();
        let most = self.spare + parts.area(set);
        let mut counts = vec![0; digits.len()];
        loop {
            // The next sub-multiset of the set; each split is met once.
            let Some(kind) = (0..digits.len()).find(|&it| counts[it] < digits[it]) else {
                return;
            };
            counts[kind] += 1;
            counts[..kind].fill(0);
            let first: usize =
                counts.iter().zip(&parts.strides).map(|(n, it)| n * it).sum();
            let second = set - first;
            if first > second || second == 0 {
                continue;
            }
            for one in 0..self.blocks[first].len() {
                for two in 0..self.blocks[second].len() {
                    *steps += 1;
                    for axis in [Axis::Upright, Axis::Level] {
                        self.join(set, most, axis, (first, one), (second, two));
                    }
                }
            }
        }
    }

    /// Lays two blocks beside each other (an upright cut between) or one above
    /// the other.
    fn join(
        &mut self,
        set: usize,
        most: i128,
        axis: Axis,
        first: (usize, usize),
        second: (usize, usize),
    ) {
        let (one, two) = (self.blocks[first.0][first.1], self.blocks[second.0][second.1]);
        let (along, across) = match axis {
            Axis::Upright => ((one.width, two.width), (one.height, two.height)),
            Axis::Level => ((one.height, two.height), (one.width, two.width)),
        };
        let (sum, most_across) = (along.0 + along.1, across.0.max(across.1));
        let (width, height) = match axis {
            Axis::Upright => (sum, most_across),
            Axis::Level => (most_across, sum),
        };
        let fits = width <= self.room.width && height <= self.room.height;
        if !fits || Size::new(width, height).area() > most {
            return;
        }
        let mut extents = one.extents | two.extents;
        for (block, extent) in [(one, along.0), (two, along.1)] {
            let keep =
                matches!(block.made, Made::One(kind) if self.parts.kinds[kind].keep);
            if !keep {
                extents |= bit(extent);
            }
        }
        let mut cuts = one.cuts + two.cuts + 1;
        if across.0 != across.1 {
            cuts += 1;
            extents |= bit(across.0.min(across.1));
        }
        let taste = self.taste;
        let mut score = taste.cut * cuts + taste.mark * extents.count_ones();
        if taste.chance > 0 {
            let mix = (first.0 as u64)
                .wrapping_mul(0x9E37_79B9_7F4A_7C15)
                .wrapping_add(second.0 as u64 ^ taste.seed << 20)
                .wrapping_mul(0xD1B5_4A32_D192_ED03);
            score += u32::try_from((mix >> 40) % u64::from(taste.chance)).unwrap_or(0);
        }
        let made = Made::Joined(axis, first, second);
        self.put(set, Block { width, height, cuts, extents, score, made });
    }

    /// Keeps a block unless another one is as good in everything.
    fn put(&mut self, set: usize, new: Block) {
        if new.width > self.room.width || new.height > self.room.height {
            return;
        }
        let blocks = &mut self.blocks[set];
        let beats = |it: &Block, other: &Block| {
            it.width <= other.width
                && it.height <= other.height
                && it.score <= other.score
        };
        if blocks.iter().any(|it| beats(it, &new)) {
            return;
        }
        blocks.retain(|it| !beats(&new, it));
        blocks.push(new);
        if blocks.len() > KEPT {
            // The largest goes, but never the one that scores best.
            let best = (0..blocks.len()).min_by_key(|&it| blocks[it].score);
            let area =
                |it: &usize| Size::new(blocks[*it].width, blocks[*it].height).area();
            let largest =
                (0..blocks.len()).filter(|it| Some(*it) != best).max_by_key(area);
            if let Some(largest) = largest {
                blocks.remove(largest);
            }
        }
    }

    /// The tree of a block that holds everything, trimmed in either order.
    fn trees(&self, set: usize, idx: usize, trees: &mut Vec<Tree>) {
        let block = self.blocks[set][idx];
        let kinds = self.parts.kinds.iter();
        let mut leaves: Vec<Vec<(Leaf, Size)>> =
            kinds.map(|it| it.leaves.clone()).collect();
        let tree = self.tree(set, idx, &mut leaves);
        let inner = Size::new(block.width, block.height);
        let (wide, high) =
            (inner.width < self.room.width, inner.height < self.room.height);
        if wide && high {
            let level = trimmed(tree.clone(), Axis::Level, inner.height);
            trees.push(trimmed(level, Axis::Upright, inner.width));
        }
        let tree = if wide { trimmed(tree, Axis::Upright, inner.width) } else { tree };
        trees.push(if high { trimmed(tree, Axis::Level, inner.height) } else { tree });
    }

    /// The tree of a block. It is as deep as there are parts, and those are few.
    fn tree(&self, set: usize, idx: usize, leaves: &mut [Vec<(Leaf, Size)>]) -> Tree {
        let block = self.blocks[set][idx];
        match block.made {
            Made::One(kind) => {
                let (leaf, bare) = leaves[kind].pop().expect("a set counts its leaves");
                let turned = bare != Size::new(block.width, block.height);
                Tree::Leaf(match leaf {
                    Leaf::Part { part, .. } => Leaf::Part { part, turned },
                    Leaf::Keep | Leaf::Waste => leaf,
                })
            }
            Made::Joined(axis, one, two) => {
                let whole = match axis {
                    Axis::Upright => block.height,
                    Axis::Level => block.width,
                };
                let mut sides = [one, two].map(|(set, idx)| {
                    let side = self.blocks[set][idx];
                    let across = match axis {
                        Axis::Upright => side.height,
                        Axis::Level => side.width,
                    };
                    let tree = self.tree(set, idx, leaves);
                    let short = across < whole;
                    if short { trimmed(tree, axis.other(), across) } else { tree }
                });
                let at = match axis {
                    Axis::Upright => self.blocks[one.0][one.1].width,
                    Axis::Level => self.blocks[one.0][one.1].height,
                };
                let second = std::mem::replace(&mut sides[1], Tree::Leaf(Leaf::Waste));
                let first = std::mem::replace(&mut sides[0], Tree::Leaf(Leaf::Waste));
                Tree::cut(axis, at, first, second)
            }
        }
    }
}

fn trimmed(tree: Tree, axis: Axis, at: Length) -> Tree {
    Tree::cut(axis, at, tree, Tree::Leaf(Leaf::Waste))
}

/// One of 64 bits for an extent; two extents may share one, which only blunts the
/// score.
fn bit(extent: Length) -> u64 {
    let mix = extent.units().cast_unsigned().wrapping_mul(0x9E37_79B9_7F4A_7C15);
    1 << (mix >> 58)
}
