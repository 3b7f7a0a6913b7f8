//! Among the orders with the same number of marks, one that is pleasant to follow.
//!
//! From a first order, neighbouring ones are tried: one setting moved to another
//! place. An order is better if fewer parts are laid aside and taken up again; then
//! if fewer cuts leave less in hand than they take off (the wider part is easier to
//! hold: common practice, no source); then if it has fewer steps; then if larger
//! marks come first. It never has more marks than the first one.

use std::cmp::Reverse;

use crate::plan::cut::Pattern;
use crate::plan::cut::plates::extent;
use crate::plan::cut::schedule::forest::Forest;
use crate::plan::cut::schedule::steps::carry_out;
use crate::plan::cut::schedule::{Becomes, Hand, Schedule, Step};
use crate::project::Trimmer;

/// Orders tried at most, for a forest of one op; fewer for larger ones.
const TRIES: usize = 12_000;

/// Carries out the given order, or one with as few marks that is better to follow.
pub(super) fn polished(
    forest: &Forest,
    patterns: &[Pattern],
    trimmer: &Trimmer,
    settings: Vec<usize>,
) -> Option<Schedule> {
    let mut best = carry_out(forest, patterns, trimmer, &settings)?;
    let mut order = settings;
    let mut burden = Burden::new(&best.schedule, &order);
    let mut tries = TRIES / forest.ops.len().max(1);
    let mut gained = true;
    while std::mem::take(&mut gained) {
        for from in 0..order.len() {
            for to in 0..order.len() {
                if from == to || tries == 0 {
                    continue;
                }
                tries -= 1;
                let mut other = order.clone();
                let mark = other.remove(from);
                other.insert(to, mark);
                let Some(found) = carry_out(forest, patterns, trimmer, &other) else {
                    continue;
                };
                let weighs = Burden::new(&found.schedule, &other);
                if found.schedule.marks <= best.schedule.marks && weighs < burden {
                    (best, order, burden, gained) = (found, other, weighs, true);
                }
            }
        }
    }
    Some(best.finished(forest))
}

/// What makes an order hard to follow, worst first.
#[derive(PartialEq, Eq, PartialOrd, Ord)]
struct Burden {
    marks: u32,
    taken_up: usize,
    narrow_in_hand: usize,
    steps: usize,
    order: Reverse<Vec<usize>>,
}

impl Burden {
    fn new(schedule: &Schedule, order: &[usize]) -> Self {
        let count = |of: fn(&&Step) -> bool| schedule.steps.iter().filter(of).count();
        Self {
            marks: schedule.marks,
            taken_up: count(|it| matches!(it.hand, Hand::Aside(_))),
            narrow_in_hand: count(|it| {
                let used = !matches!(it.stays.1, Becomes::Waste | Becomes::Keep);
                used && extent(it.stays.0.size, it.axis) < it.mark
            }),
            steps: schedule.steps.len(),
            order: Reverse(order.to_vec()),
        }
    }
}
