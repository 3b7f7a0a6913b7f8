//! The fewest changes of tool and ink, proven where a search over sets of done
//! tasks comes to its end.
//!
//! Tasks that take the same tool and ink make a group. Only which group follows
//! which is a choice: with a group in hand, everything of it that can be done is
//! done, and so is what needs no tool. So a state is the set of tasks done and
//! what is in hand; the search goes over states, and not over orders of tasks,
//! cheapest first with what is still to be taken up added (Hart, Nilsson and
//! Raphael 1968). That sum never falls, so that the first whole order is one of
//! the best; equal ones are taken in the order of the tasks.

use std::cmp::Reverse;
use std::collections::{BTreeSet, BinaryHeap};

use crate::project::ToolId;

/// A tool and an ink, as far as a task takes one.
pub(super) type Hand = (Option<ToolId>, Option<ToolId>);

/// So many states are looked at before the search gives way.
const STATES: usize = 60_000;

/// More tasks than bits are not looked at.
const MOST: usize = 64;

/// A task: what it takes, and a bit for each task that comes before it.
#[derive(Clone, Copy, Debug)]
pub(super) struct Job {
    pub(super) hand: Hand,
    pub(super) before: u64,
}

/// In which order the groups are taken up so that tool and ink change as seldom as
/// can be; `None` if there are too many tasks or too many states.
pub(super) fn fewest_changes(jobs: &[Job]) -> Option<Vec<Hand>> {
    if jobs.len() > MOST {
        return None;
    }
    let bench = Bench::of(jobs);
    let mut heap = BinaryHeap::new();
    let start = bench.carried_on(State::default());
    heap.push(Reverse((bench.least(&start), Vec::new(), start)));
    let mut seen: BTreeSet<(u64, Hand)> = BTreeSet::new();
    let mut looked_at = 0;
    while let Some(Reverse((_, taken, state))) = heap.pop() {
        if state.done == bench.all {
            return Some(
                taken.into_iter().map(|it: u8| bench.hands[usize::from(it)]).collect(),
            );
        }
        if !seen.insert((state.done, state.hand)) {
            continue;
        }
        looked_at += 1;
        if looked_at > STATES {
            return None;
        }
        for (index, hand) in bench.hands.iter().enumerate() {
            if !bench.is_ready(&state, index) {
                continue;
            }
            let changes = state.changes + cost(*hand, state.hand);
            let hand = (hand.0.or(state.hand.0), hand.1.or(state.hand.1));
            let next = bench.carried_on(State { changes, hand, ..state });
            let mut taken = taken.clone();
            taken.push(u8::try_from(index).ok()?);
            heap.push(Reverse((bench.least(&next), taken, next)));
        }
    }
    None
}

/// What taking up a tool and an ink costs: one for each that changes.
pub(super) fn cost(wanted: Hand, held: Hand) -> u32 {
    let changed = |wanted: Option<ToolId>, held: Option<ToolId>| {
        u32::from(wanted.is_some() && wanted != held)
    };
    changed(wanted.0, held.0) + changed(wanted.1, held.1)
}

/// How far the work has come.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord)]
struct State {
    changes: u32,
    hand: Hand,
    done: u64,
}

/// The tasks by group.
struct Bench<'a> {
    jobs: &'a [Job],
    all: u64,
    /// Each tool and ink that are taken together, in the order of the first task.
    hands: Vec<Hand>,
    /// The tasks of each.
    groups: Vec<u64>,
    /// The tasks that take each tool, and each ink.
    tools: Vec<(ToolId, u64)>,
    inks: Vec<(ToolId, u64)>,
}

impl<'a> Bench<'a> {
    fn of(jobs: &'a [Job]) -> Self {
        let (mut hands, mut groups): (Vec<Hand>, Vec<u64>) = (Vec::new(), Vec::new());
        let (mut tools, mut inks) = (Vec::new(), Vec::new());
        let mut all = 0;
        for (index, job) in jobs.iter().enumerate() {
            let bit = 1 << index;
            all |= bit;
            match hands.iter().position(|hand| *hand == job.hand) {
                Some(at) => groups[at] |= bit,
                None => {
                    hands.push(job.hand);
                    groups.push(bit);
                }
            }
            for (kinds, kind) in [(&mut tools, job.hand.0), (&mut inks, job.hand.1)] {
                let Some(kind) = kind else { continue };
                match kinds.iter_mut().find(|it: &&mut (ToolId, u64)| it.0 == kind) {
                    Some(row) => row.1 |= bit,
                    None => kinds.push((kind, bit)),
                }
            }
        }
        Self { jobs, all, hands, groups, tools, inks }
    }

    /// Whether something of a group could be done now.
    fn is_ready(&self, state: &State, group: usize) -> bool {
        bits(self.groups[group] & !state.done)
            .any(|index| self.jobs[index].before & !state.done == 0)
    }

    /// Does all that needs no other tool or ink than those in hand.
    fn carried_on(&self, mut state: State) -> State {
        loop {
            let before = state.done;
            for index in bits(self.all & !state.done) {
                let job = self.jobs[index];
                if job.before & !state.done == 0 && cost(job.hand, state.hand) == 0 {
                    state.done |= 1 << index;
                }
            }
            if state.done == before {
                return state;
            }
        }
    }

    /// The changes so far, and one more for each tool and each ink that is still
    /// wanted and not in hand.
    fn least(&self, state: &State) -> u32 {
        let left = self.all & !state.done;
        let wanted = |kinds: &[(ToolId, u64)], held: Option<ToolId>| {
            let open = kinds.iter().filter(|it| it.1 & left != 0 && Some(it.0) != held);
            u32::try_from(open.count()).unwrap_or(u32::MAX)
        };
        state.changes
            + wanted(&self.tools, state.hand.0)
            + wanted(&self.inks, state.hand.1)
    }
}

/// The places of the bits that are set, from the lowest.
fn bits(mut set: u64) -> impl Iterator<Item = usize> {
    std::iter::from_fn(move || {
        let at = (set != 0).then(|| set.trailing_zeros())?;
        set &= set - 1;
        usize::try_from(at).ok()
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A sequence of small numbers, the same on every machine.
    struct Dice(u32);

    impl Dice {
        fn below(&mut self, bound: u32) -> u32 {
            self.0 = self.0.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
            (self.0 >> 16) % bound
        }
    }

    fn jobs(dice: &mut Dice, count: usize, groups: u32, links: u32) -> Vec<Job> {
        let tool = |number: u32| {
            (number > 0).then(|| ToolId(usize::try_from(number).expect("small")))
        };
        let hands: Vec<Hand> = (0..groups)
            .map(|_| (tool(dice.below(5)), tool(dice.below(3) * 10)))
            .collect();
        (0..count)
            .map(|at| {
                let which = usize::try_from(dice.below(groups)).expect("small");
                let mut before = 0;
                for earlier in 0..at {
                    if dice.below(10) < links {
                        before |= 1 << earlier;
                    }
                }
                Job { hand: hands[which], before }
            })
            .collect()
    }

    /// Tries every order of the tasks.
    fn tried(jobs: &[Job], done: u64, hand: Hand, changes: u32, best: &mut u32) {
        if changes >= *best {
            return;
        }
        if done.count_ones() as usize == jobs.len() {
            *best = changes;
            return;
        }
        for (index, job) in jobs.iter().enumerate() {
            if done >> index & 1 == 0 && job.before & !done == 0 {
                let held = (job.hand.0.or(hand.0), job.hand.1.or(hand.1));
                let changes = changes + cost(job.hand, hand);
                tried(jobs, done | 1 << index, held, changes, best);
            }
        }
    }

    /// What an order of groups comes to, carried out plainly.
    fn carried_out(jobs: &[Job], taken: &[Hand]) -> Option<u32> {
        let (mut done, mut hand, mut changes) = (0_u64, (None, None), 0);
        for wanted in std::iter::once(&(None, None)).chain(taken) {
            changes += cost(*wanted, hand);
            hand = (wanted.0.or(hand.0), wanted.1.or(hand.1));
            while let Some(index) = (0..jobs.len()).find(|at| {
                done >> at & 1 == 0
                    && jobs[*at].before & !done == 0
                    && cost(jobs[*at].hand, hand) == 0
            }) {
                done |= 1 << index;
            }
        }
        (done.count_ones() as usize == jobs.len()).then_some(changes)
    }

    #[test]
    fn no_order_of_all_changes_less_often() {
        let mut dice = Dice(11);
        for case in 0..3000_u32 {
            let count = 1 + usize::try_from(dice.below(8)).expect("small");
            let (groups, links) = (1 + dice.below(5), dice.below(5));
            let jobs = jobs(&mut dice, count, groups, links);
            let taken = fewest_changes(&jobs).expect("so few are always searched");
            let mut best = u32::MAX;
            tried(&jobs, 0, (None, None), 0, &mut best);
            assert_eq!(carried_out(&jobs, &taken), Some(best), "case {case}: {jobs:?}");
        }
    }

    #[test]
    fn sixty_tasks_in_nine_groups_are_searched_to_the_end() {
        let mut dice = Dice(5);
        for case in 0..40_u32 {
            let jobs = jobs(&mut dice, 60, 9, case % 3);
            let taken = fewest_changes(&jobs);
            assert!(taken.is_some_and(|it| carried_out(&jobs, &it).is_some()), "{case}");
        }
    }
}
