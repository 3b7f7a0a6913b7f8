//! The fewest settings of the mark that carry out a whole forest of cuts.
//!
//! **State.** The set of ops that are done. An op can be done when the op that
//! yields its plate is done; an op on a plate that is hard to hold only when all
//! others are done. Setting the mark to a length does every op of that length
//! that can be done, again and again until none is left: doing more is never
//! worse, because whatever completes a set of ops also completes a larger one.
//! When all but one op of a plate without a rest are done and the last one is a
//! single child, it is what remains, and counts as done without a mark.
//!
//! **Search.** A* over these sets, one setting a step. The order of cuts on one
//! chain of plates is a shortest common supersequence, so nothing polynomial is
//! to be expected; but kits are small and the bound below is close.
//!
//! **Bound.** For each length apart, the settings that it still needs: 1 if some
//! op that cannot remain (`single` is false) has this length, and one more
//! each time such an op lies below another of the same length with one of a
//! different length in between, since the mark has to leave and come back.
//! The largest such count over all chains is taken for each length, and the sum
//! over the lengths is a bound because a setting serves one length. Then, plate
//! by plate, of the single children whose lengths are not counted yet all but one
//! need a mark; their lengths are counted once.
//!
//! **Forced setting.** If a length that surely needs a setting can be finished
//! for good by one setting now, that setting is as good as any: every other order
//! sets it sooner or later and loses nothing by doing so at once.
//!
//! **Incumbent.** A beam search over the same states comes first. A* then only
//! looks at states whose bound is below it; if it runs dry, the beam's answer is
//! proven. Everything is counted in steps, so the answer is the same everywhere.

use std::collections::{BTreeMap, BTreeSet};

use crate::plan::cut::schedule::forest::Forest;
use crate::plan::cut::schedule::plenty;

/// An order of marks and what is known about it.
#[derive(Clone, Debug, Default)]
pub(super) struct Order {
    /// Indices of the marks, one for each setting.
    pub(super) settings: Vec<usize>,
    /// No order needs fewer settings than this.
    pub(super) at_least: usize,
    /// Search steps spent.
    pub(super) spent: u64,
}

/// States that the exact search may open.
const OPENINGS: usize = 60_000;
/// States kept from one setting to the next by the beam.
const BEAM: usize = 48;

/// Finds an order with few settings, in most cases the fewest.
pub(super) fn order(forest: &Forest) -> Order {
    // The set of done ops is a fixed number of words, so that it can be copied.
    match forest.ops.len() {
        0..=64 => Search::<1>::new(forest).run(BEAM, OPENINGS),
        65..=128 => Search::<2>::new(forest).run(BEAM, OPENINGS),
        129..=256 => Search::<4>::new(forest).run(BEAM, OPENINGS / 2),
        257..=512 => Search::<8>::new(forest).run(BEAM / 4, 0),
        _ => Order {
            settings: plenty::order(forest),
            at_least: at_least(forest),
            spent: forest.ops.len() as u64,
        },
    }
}

/// Finds an order with few settings in little time.
pub(super) fn quick(forest: &Forest) -> Order {
    const NARROW: usize = 6;
    match forest.ops.len() {
        0..=64 => Search::<1>::new(forest).run(NARROW, 0),
        65..=128 => Search::<2>::new(forest).run(NARROW, 0),
        129..=256 => Search::<4>::new(forest).run(1, 0),
        _ => Order { settings: plenty::order(forest), ..Order::default() },
    }
}

/// A number of settings that no order undercuts.
pub(super) fn at_least(forest: &Forest) -> usize {
    let bound = match forest.ops.len() {
        0..=64 => Search::<1>::new(forest).bound(&[0; 1]),
        65..=128 => Search::<2>::new(forest).bound(&[0; 2]),
        129..=256 => Search::<4>::new(forest).bound(&[0; 4]),
        257..=8192 => Search::<128>::new(forest).bound(&[0; 128]),
        _ => 0,
    };
    usize::try_from(bound).unwrap_or(usize::MAX)
}

type Set<const K: usize> = [u64; K];

/// A forest as the search sees it.
pub(super) struct Search<const K: usize> {
    ops: Vec<Row>,
    /// The ops of each mark.
    by_mark: Vec<Vec<usize>>,
    /// The ops of each plate that has no rest, and its singles.
    open_plates: Vec<Vec<usize>>,
    all: Set<K>,
    /// Ops on plates that can be held.
    soft: Set<K>,
    spent: u64,
    /// Scratch for the bound: settings for each op's run and for each mark.
    runs: Vec<u32>,
    need: Vec<u32>,
}

struct Row {
    mark: usize,
    parent: Option<usize>,
    hard: bool,
    single: bool,
    /// Index into `open_plates`, if its plate has no rest.
    open: Option<usize>,
    /// The nearest op above with this mark that surely needs it, and whether one
    /// with another mark lies between.
    again: Option<(usize, bool)>,
}

fn has<const K: usize>(set: &Set<K>, op: usize) -> bool {
    set[op / 64] >> (op % 64) & 1 == 1
}

fn put<const K: usize>(set: &mut Set<K>, op: usize) {
    set[op / 64] |= 1 << (op % 64);
}

impl<const K: usize> Search<K> {
    pub(super) fn new(forest: &Forest) -> Self {
        let mut by_mark = vec![Vec::new(); forest.marks.len()];
        let mut open_plates = Vec::new();
        let mut open_of = vec![None; forest.plates.len()];
        for (idx, plate) in forest.plates.iter().enumerate() {
            if plate.rest.is_none() {
                open_of[idx] = Some(open_plates.len());
                open_plates.push(forest.ops_of(idx).collect());
            }
        }
        let (mut all, mut soft) = ([0; K], [0; K]);
        let mut ops: Vec<Row> = Vec::with_capacity(forest.ops.len());
        for (idx, op) in forest.ops.iter().enumerate() {
            let hard = forest.plates[op.plate].hard;
            by_mark[op.mark].push(idx);
            put(&mut all, idx);
            if !hard {
                put(&mut soft, idx);
            }
            let (mut again, mut above, mut between) = (None, op.parent, false);
            while let Some(it) = above {
                let row: &Row = &ops[it];
                if !row.single && row.mark == op.mark {
                    again = Some((it, between));
                    break;
                }
                between |= !row.single;
                above = row.parent;
            }
            let (mark, parent, single) = (op.mark, op.parent, op.single);
            ops.push(Row { mark, parent, hard, single, open: open_of[op.plate], again });
        }
        let (runs, need) = (vec![0; ops.len()], vec![0; forest.marks.len()]);
        Self { ops, by_mark, open_plates, all, soft, spent: 0, runs, need }
    }

    /// Counts the last single child of a plate without a rest as done.
    fn remains(&self, set: &mut Set<K>, open: usize) {
        let mut left = self.open_plates[open].iter().filter(|&&op| !has(set, op));
        if let (Some(&op), None) = (left.next(), left.next())
            && self.ops[op].single
        {
            put(set, op);
        }
    }

    /// Sets the mark and does all that can be done.
    fn set_mark(&mut self, set: &mut Set<K>, mark: usize) {
        loop {
            let before = *set;
            for &op in &self.by_mark[mark] {
                self.spent += 1;
                let row = &self.ops[op];
                let ready = row.parent.is_none_or(|it| has(set, it));
                let late = !row.hard || (0..K).all(|k| self.soft[k] & !set[k] == 0);
                if !has(set, op) && ready && late {
                    put(set, op);
                    if let Some(open) = row.open {
                        self.remains(set, open);
                    }
                }
            }
            if *set == before {
                return;
            }
        }
    }

    /// A number of settings that no order from here undercuts.
    fn bound(&mut self, set: &Set<K>) -> u32 {
        self.need.fill(0);
        for op in 0..self.ops.len() {
            let row = &self.ops[op];
            if row.single || has(set, op) {
                continue;
            }
            let runs = match row.again {
                Some((above, between)) if !has(set, above) => {
                    self.runs[above] + u32::from(between)
                }
                _ => 1,
            };
            self.runs[op] = runs;
            let need = &mut self.need[row.mark];
            *need = (*need).max(runs);
        }
        let sure: u32 = self.need.iter().sum();
        self.spent += 1 + self.ops.len() as u64 / 2;
        // Singles: all but one of those whose marks are not counted yet.
        let mut more = 0;
        for plate in &self.open_plates {
            let fresh = |need: &Vec<u32>, op: &usize| {
                !has(set, *op) && self.ops[*op].single && need[self.ops[*op].mark] == 0
            };
            let n = plate.iter().filter(|it| fresh(&self.need, it)).count();
            if n >= 2 {
                more += u32::try_from(n - 1).unwrap_or(u32::MAX);
                for op in plate {
                    if fresh(&self.need, op) {
                        self.need[self.ops[*op].mark] = u32::MAX;
                    }
                }
            }
        }
        sure + more
    }

    /// The states that one setting leads to: one if a setting is forced.
    fn next(&mut self, set: &Set<K>) -> Vec<(usize, Set<K>)> {
        let mut found = Vec::new();
        for mark in (0..self.by_mark.len()).rev() {
            if self.by_mark[mark].iter().all(|&op| has(set, op)) {
                continue;
            }
            let mut then = *set;
            self.set_mark(&mut then, mark);
            if then == *set {
                continue;
            }
            let sure = |&op: &usize| !self.ops[op].single && !has(set, op);
            if self.by_mark[mark].iter().all(|&op| has(&then, op))
                && self.by_mark[mark].iter().any(sure)
            {
                return vec![(mark, then)];
            }
            found.push((mark, then));
        }
        found
    }

    /// Beam first, then A* below what it found.
    pub(super) fn run(mut self, width: usize, openings: usize) -> Order {
        let start = [0; K];
        let least = self.bound(&start);
        let mut settings = self.beam(start, width);
        let mut at_least = usize::try_from(least).unwrap_or(usize::MAX);
        if at_least < settings.len() && openings > 0 {
            let (found, bound) = self.exact(start, settings.len(), openings);
            at_least = at_least.max(bound);
            settings = found.unwrap_or(settings);
        }
        Order { settings, at_least, spent: self.spent }
    }

    /// Keeps the best few states from one setting to the next.
    fn beam(&mut self, start: Set<K>, width: usize) -> Vec<usize> {
        let mut trail: Vec<(usize, usize)> = vec![(0, 0)];
        let mut level = vec![(start, 0)];
        loop {
            if let Some(&(_, at)) = level.iter().find(|it| it.0 == self.all) {
                return path(at, |at| trail[at]);
            }
            let mut seen = BTreeSet::new();
            let mut found = Vec::new();
            for (set, at) in level {
                for (mark, then) in self.next(&set) {
                    if seen.insert(then) {
                        let left: u32 =
                            (0..K).map(|k| (self.all[k] & !then[k]).count_ones()).sum();
                        found.push((
                            self.bound(&then),
                            left,
                            found.len(),
                            then,
                            at,
                            mark,
                        ));
                    }
                }
            }
            found.sort_unstable();
            found.truncate(width);
            level = Vec::with_capacity(found.len());
            for (_, _, _, then, at, mark) in found {
                trail.push((at, mark));
                level.push((then, trail.len() - 1));
            }
        }
    }

    /// A* for fewer than `below` settings: the order, and a proven bound.
    fn exact(
        &mut self,
        start: Set<K>,
        below: usize,
        openings: usize,
    ) -> (Option<Vec<usize>>, usize) {
        struct Node<const K: usize> {
            set: Set<K>,
            before: usize,
            mark: usize,
            depth: usize,
        }
        let mut nodes = vec![Node { set: start, before: 0, mark: 0, depth: 0 }];
        let mut best = BTreeMap::from([(start, 0)]);
        // Open states by depth + bound; the deepest of the best is opened first.
        let mut open: Vec<Vec<usize>> = vec![Vec::new(); below];
        open[self.bound(&start) as usize].push(0);
        let mut least = 0;
        let mut opened = 0;
        loop {
            while open.get(least).is_some_and(Vec::is_empty) {
                least += 1;
            }
            let Some(at) = open.get_mut(least).and_then(Vec::pop) else {
                return (None, below);
            };
            let (set, depth) = (nodes[at].set, nodes[at].depth);
            if set == self.all {
                let order = path(at, |at| (nodes[at].before, nodes[at].mark));
                return (Some(order), depth);
            }
            if best.get(&set).is_some_and(|&known| known < depth) {
                continue;
            }
            if opened == openings {
                return (None, least);
            }
            opened += 1;
            for (mark, then) in self.next(&set).into_iter().rev() {
                let depth = depth + 1;
                if best.get(&then).is_some_and(|&known| known <= depth) {
                    continue;
                }
                best.insert(then, depth);
                let total = (depth + self.bound(&then) as usize).max(least);
                if total < below {
                    open[total].push(nodes.len());
                    nodes.push(Node { set: then, before: at, mark, depth });
                }
            }
        }
    }
}

/// The marks that lead to a state, first to last; state 0 is the start.
fn path(mut at: usize, step: impl Fn(usize) -> (usize, usize)) -> Vec<usize> {
    let mut marks = Vec::new();
    while at != 0 {
        let (before, mark) = step(at);
        marks.push(mark);
        at = before;
    }
    marks.reverse();
    marks
}
