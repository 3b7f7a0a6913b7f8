//! Chooses among the trees that cut the same parts from the same sheets.
//!
//! The search for few sheets takes the first tree that holds everything. Many
//! others hold the same parts and leave the same offcut, and some are far easier
//! to cut. [`tidy`] looks for them: it takes a rectangle of the tree (a plate, or
//! some children of a plate), has its parts rearranged (`rearrange`), and keeps the
//! change if the whole paper then needs fewer marks, else as many marks and fewer
//! cuts, else fewer turns. Counts, sheets and offcuts never change.

use std::collections::{BTreeMap, BTreeSet};

use crate::geom::{Axis, Length, Size};
use crate::plan::cut::plates::{Child, Flat, extent};
use crate::plan::cut::rearrange::{Item, Parts, Taste};
use crate::plan::cut::schedule::{Effort, effort, marks_needed};
use crate::plan::cut::{Leaf, Pattern, Tree};
use crate::project::Trimmer;

/// Search steps that suit a plan of a few sheets: well under a second.
pub const TIDY_BUDGET: u64 = 8_000_000;

/// More parts than this are not rearranged together.
const MOST_ITEMS: usize = 300;

/// What a cut, an extent and chance weigh when parts are rearranged, by round.
const TASTES: [(u32, u32, u32); 6] =
    [(4, 3, 0), (3, 6, 3), (6, 1, 4), (1, 4, 6), (2, 2, 12), (1, 8, 2)];

/// What [`tidy`] found.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Tidied {
    /// A tree for each pattern, with the same parts and offcuts.
    pub trees: Vec<Tree>,
    /// Search steps spent; the same on every machine.
    pub spent: u64,
}

/// Rewrites the trees of one paper for fewer marks, then fewer cuts, then fewer
/// turns of the paper.
///
/// `free` says for each part whether it may be turned by a quarter. Every pattern
/// keeps its parts and its offcuts in number and size. Where at most so many
/// `stages` are allowed (see [`Limits`](crate::plan::cut::Limits)), no sheet is cut
/// in more of them than it was.
pub fn tidy(
    patterns: &[Pattern],
    free: &[bool],
    trimmer: &Trimmer,
    stages: Option<u8>,
    budget: u64,
) -> Tidied {
    tidy_with(patterns, free, trimmer, Tree::clone, stages, budget)
}

/// The same where some parts are rows of others: `apart` is the tree with its rows cut
/// up, and the marks of those cuts count too.
pub(crate) fn tidy_with(
    patterns: &[Pattern],
    free: &[bool],
    trimmer: &Trimmer,
    apart: impl Fn(&Tree) -> Tree,
    stages: Option<u8>,
    budget: u64,
) -> Tidied {
    let mut work = Work::new(patterns, free, trimmer, &apart, budget);
    work.stages = stages;
    work.best.too_deep = work.too_deep(&work.patterns);
    let given = work.patterns.clone();
    // Each round looks for something else; when none of them gains, all is done.
    let rounds = TASTES.len();
    let mut idle = 0;
    for round in 0..4 * rounds {
        let before = work.best;
        for pattern in 0..patterns.len() {
            work.improve(pattern, round);
        }
        idle = if work.best == before { idle + 1 } else { 0 };
        if idle == rounds || work.spent >= budget {
            break;
        }
    }
    // Gains were measured by a narrow search; the full one has the last word.
    let marks = |of: &[Pattern], spent: &mut u64| {
        marks_needed(&cut_up(of, &apart), trimmer, spent)
    };
    let (before, after) =
        (marks(&given, &mut work.spent), marks(&work.patterns, &mut work.spent));
    let deeper = work.too_deep(&work.patterns) > work.too_deep(&given);
    let chosen = if after <= before && !deeper { work.patterns } else { given };
    let trees = chosen.into_iter().map(|it| it.tree).collect();
    Tidied { trees, spent: work.spent }
}

/// Patterns with their trees as they are cut to the end.
fn cut_up(patterns: &[Pattern], apart: &dyn Fn(&Tree) -> Tree) -> Vec<Pattern> {
    let patterns = patterns.iter();
    patterns.map(|it| Pattern { tree: apart(&it.tree), ..*it }).collect()
}

/// Cuts of a tree that come after more than so many runs in one direction; a last
/// cut that only frees a part from what is left over is not counted.
fn cuts_beyond(tree: &Tree, most: u32) -> usize {
    let part = |it: &Tree| matches!(it, Tree::Leaf(Leaf::Part { .. }));
    let left = |it: &Tree| matches!(it, Tree::Leaf(Leaf::Waste | Leaf::Keep));
    let mut beyond = 0;
    let mut open = vec![(tree, 0, None)];
    while let Some((tree, runs, last)) = open.pop() {
        let Tree::Cut(cut) = tree else { continue };
        let runs = runs + u32::from(last != Some(cut.axis));
        let (first, second) = (&cut.first, &cut.second);
        let frees = (part(first) && left(second)) || (left(first) && part(second));
        beyond += usize::from(most < runs && !frees);
        open.push((first, runs, Some(cut.axis)));
        open.push((second, runs, Some(cut.axis)));
    }
    beyond
}

struct Work<'a> {
    patterns: Vec<Pattern>,
    /// The same cut to the end, which is what counts.
    apart: Vec<Pattern>,
    /// Cuts rows of parts up.
    cut_up: &'a dyn Fn(&Tree) -> Tree,
    free: &'a [bool],
    trimmer: &'a Trimmer,
    stages: Option<u8>,
    best: Effort,
    /// Digests of trees that were tried for each pattern and are no better, or were and
    /// led on.
    refused: Vec<BTreeSet<u64>>,
    /// What was put in place of which children of a row, for each pattern as it is now.
    tried: Vec<BTreeSet<(usize, Vec<usize>, u64)>>,
    budget: u64,
    spent: u64,
}

/// Trees for the same parts in the same room, with their digests.
type Known = BTreeMap<(Size, Vec<Item>), Vec<(Tree, u64)>>;

/// Some children of a plate, with the parts that come from them.
struct Region {
    row: usize,
    children: Vec<usize>,
    items: Vec<Item>,
    room: Size,
}

impl<'a> Work<'a> {
    fn new(
        patterns: &[Pattern],
        free: &'a [bool],
        trimmer: &'a Trimmer,
        cut_up: &'a dyn Fn(&Tree) -> Tree,
        budget: u64,
    ) -> Self {
        // Waste gathered on each plate is a gain that costs nothing.
        let gathered = patterns.iter().map(|it| {
            let tree = Flat::new(&it.tree, it.sheet).tree(None);
            Pattern { tree, ..it.clone() }
        });
        let patterns: Vec<Pattern> = gathered.collect();
        let apart = self::cut_up(&patterns, cut_up);
        let mut spent = 0;
        let best = effort(&apart, trimmer, None, &mut spent)
            .expect("without a limit there is an answer");
        let stages = None;
        let refused = vec![BTreeSet::new(); patterns.len()];
        let tried = vec![BTreeSet::new(); patterns.len()];
        Self {
            patterns,
            apart,
            cut_up,
            free,
            trimmer,
            stages,
            best,
            refused,
            tried,
            budget,
            spent,
        }
    }

    /// Cuts that lie deeper than the stages allow.
    fn too_deep(&self, patterns: &[Pattern]) -> usize {
        let most = self.stages.map(|most| u32::from(most).max(2));
        let deep = |most| patterns.iter().map(|it| cuts_beyond(&it.tree, most)).sum();
        most.map_or(0, deep)
    }

    /// Tries every region of a pattern, larger ones first.
    fn improve(&mut self, pattern: usize, round: usize) {
        let (cut, mark, chance) = TASTES[round % TASTES.len()];
        let taste = Taste { cut, mark, chance, seed: round as u64 };
        let mut next = 0;
        // The same parts lie in the same room again and again.
        let mut known = Known::new();
        let mut flat = self.flat(pattern);
        let mut regions = self.regions(&flat);
        while let Some(region) = regions.get(next) {
            next += 1;
            if self.spent >= self.budget {
                return;
            }
            let Region { row, children, room, .. } = region;
            let key = (*room, region.items.clone());
            let ways = known.entry(key).or_insert_with_key(|(room, items)| {
                let parts = Parts::new(items);
                let ways = parts.map(|it| it.ways(*room, taste, &mut self.spent));
                let ways = ways.unwrap_or_default().into_iter();
                ways.map(|way| (way.clone(), Flat::new(&way, *room).digest())).collect()
            });
            let mut better = None;
            for (way, digest) in ways {
                self.spent += 1;
                if !self.tried[pattern].insert((*row, children.clone(), *digest)) {
                    continue;
                }
                let tree = flat.tree(Some((*row, children, way.clone())));
                let sheet = self.patterns[pattern].sheet;
                // Once more through the plates, to gather the waste.
                let gathered = Flat::new(&tree, sheet);
                if !self.refused[pattern].insert(gathered.digest()) {
                    continue;
                }
                let tree = gathered.tree(None);
                let cut_up = (self.cut_up)(&tree);
                let swap = |it: &mut Pattern, tree| std::mem::replace(&mut it.tree, tree);
                let old = swap(&mut self.patterns[pattern], tree);
                let old_cut_up = swap(&mut self.apart[pattern], cut_up);
                let too_deep = self.too_deep(&self.patterns);
                let found =
                    effort(&self.apart, self.trimmer, Some(self.best), &mut self.spent);
                match found.map(|found| found.of_depth(too_deep)) {
                    Some(found) if found < self.best => {
                        self.best = found;
                        better = Some(());
                        // Beside this one, those of other patterns count anew.
                        for other in (0..self.patterns.len()).filter(|&it| it != pattern)
                        {
                            self.refused[other].clear();
                            self.tried[other].clear();
                        }
                    }
                    _ => {
                        self.patterns[pattern].tree = old;
                        self.apart[pattern].tree = old_cut_up;
                    }
                }
            }
            if better.is_some() {
                // The regions are others now. Larger ones were tried before.
                self.tried[pattern].clear();
                flat = self.flat(pattern);
                regions = self.regions(&flat);
                next = 0;
            }
        }
    }

    fn flat(&self, pattern: usize) -> Flat {
        Flat::new(&self.patterns[pattern].tree, self.patterns[pattern].sheet)
    }

    /// Whole plates first, then pairs of children, those with most parts first.
    fn regions(&self, flat: &Flat) -> Vec<Region> {
        let mut items: Vec<Option<Vec<Item>>> = vec![None; flat.rows.len()];
        for idx in (0..flat.rows.len()).rev() {
            let row = &flat.rows[idx];
            // What is held keeps its place, and so does all around it.
            if row.held {
                continue;
            }
            let all: Vec<usize> = (0..row.children.len()).collect();
            items[idx] = self.items(flat, idx, &all, &items);
        }
        let mut regions = Vec::new();
        for (idx, row) in flat.rows.iter().enumerate().filter(|it| !it.1.held) {
            let n = row.children.len();
            let mut add = |children: Vec<usize>| {
                let Some(items) = self.items(flat, idx, &children, &items) else {
                    return;
                };
                let along: Length = children.iter().map(|&it| row.children[it].0).sum();
                let room = match row.axis {
                    Axis::Upright => Size::new(along, row.size.height),
                    Axis::Level => Size::new(row.size.width, along),
                };
                if items.len() >= 2 {
                    regions.push(Region { row: idx, children, items, room });
                }
            };
            add((0..n).collect());
            for one in 0..n.min(16) {
                for two in one + 1..n.min(16) {
                    if n > 2 && row.children[one] != row.children[two] {
                        add(vec![one, two]);
                    }
                }
            }
        }
        // All that is too much for a rearrangement is skipped there.
        regions.sort_by_key(|it| std::cmp::Reverse(it.items.len()));
        regions.truncate(64);
        regions
    }

    /// The parts and offcuts that some children of a row yield; `None` if they are
    /// too many to be rearranged.
    fn items(
        &self,
        flat: &Flat,
        row: usize,
        children: &[usize],
        below: &[Option<Vec<Item>>],
    ) -> Option<Vec<Item>> {
        let Size { width, height } = flat.rows[row].size;
        let mut items = Vec::new();
        for &child in children {
            match flat.rows[row].children[child] {
                (_, Child::Plate(plate)) => items.extend(below[plate].as_ref()?),
                (_, Child::Leaf(Leaf::Waste)) => {}
                (at, Child::Leaf(leaf)) => {
                    let size = match flat.rows[row].axis {
                        Axis::Upright => Size::new(at, height),
                        Axis::Level => Size::new(width, at),
                    };
                    debug_assert_eq!(extent(size, flat.rows[row].axis), at);
                    let free = match leaf {
                        Leaf::Part { part, .. } => self.free.get(part) == Some(&true),
                        Leaf::Keep | Leaf::Waste => false,
                    };
                    items.push(Item { size, free, leaf });
                }
            }
            if items.len() > MOST_ITEMS {
                return None;
            }
        }
        Some(items)
    }
}
