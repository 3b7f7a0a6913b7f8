//! The order of work: as few changes of tool and ink as can be.
//!
//! Preparing is ordered first. Whatever needs no other tool or ink than those in
//! hand is done at once, which is never worse: it only sets free what waits for
//! it. Which tool and ink follow which is found in `fewest`; where that is too
//! much to search, the cheapest change is taken each time.
//!
//! Then the cards are made one after the other, or in batches: each card gets one
//! layer, then each the next. While glue dries on a card, others are gone on with.

use std::collections::{BTreeMap, BTreeSet};

use crate::plan::work::fewest::{self, Hand, Job};
use crate::plan::work::tasks::{Draft, Moment};
use crate::plan::work::{Task, TaskId};
use crate::project::Work;

/// The drafts in the order in which they are done, and whether no order of the
/// preparing changes tool and ink less often.
pub(crate) fn order(drafts: &[Draft], in_batches: bool) -> (Vec<usize>, bool) {
    let links = Links::of(drafts);
    let start = Bench::new(drafts, &links);
    let found = fewest::fewest_changes(&jobs(drafts));
    let mut order = match &found {
        Some(taken) => taken_up(start, taken),
        None => cheapest_each_time(start),
    };
    let mut done = vec![false; drafts.len()];
    for index in &order {
        done[*index] = true;
    }
    card_by_card(drafts, in_batches, &mut done, &mut order);
    (order, found.is_some())
}

/// The preparing as the search for the fewest changes takes it.
fn jobs(drafts: &[Draft]) -> Vec<Job> {
    let preparing: Vec<usize> =
        (0..drafts.len()).filter(|at| drafts[*at].moment == Moment::Preparing).collect();
    let bit = |of: usize| {
        let at = preparing.iter().position(|it| *it == of);
        // Beyond 64 tasks the search gives way before it looks at any.
        at.and_then(|at| 1_u64.checked_shl(u32::try_from(at).ok()?)).unwrap_or(0)
    };
    let jobs = preparing.iter().map(|index| {
        let draft = &drafts[*index];
        let before = before(draft).fold(0, |all, it| all | bit(it));
        Job { hand: (draft.task.tool, draft.task.ink), before }
    });
    jobs.collect()
}

/// Takes up groups in this order.
fn taken_up(mut bench: Bench<'_>, taken: &[Hand]) -> Vec<usize> {
    bench.take_up((None, None));
    for hand in taken {
        bench.take_up(*hand);
    }
    bench.order
}

/// The tasks in an order, their needs renumbered.
pub(crate) fn arranged(drafts: Vec<Draft>, order: &[usize]) -> Vec<Task> {
    let mut place = vec![0; drafts.len()];
    for (at, index) in order.iter().enumerate() {
        place[*index] = at;
    }
    let mut tasks: Vec<(usize, Task)> = drafts
        .into_iter()
        .enumerate()
        .map(|(index, draft)| {
            let mut task = draft.task;
            for need in &mut task.needs {
                *need = TaskId(place[need.0]);
            }
            task.needs.sort_unstable();
            task.needs.dedup();
            (place[index], task)
        })
        .collect();
    tasks.sort_by_key(|(place, _)| *place);
    tasks.into_iter().map(|(_, task)| task).collect()
}

/// Which tasks of the preparing wait for which.
struct Links {
    hands: Vec<Hand>,
    followers: Vec<Vec<usize>>,
}

impl Links {
    fn of(drafts: &[Draft]) -> Self {
        let mut followers = vec![Vec::new(); drafts.len()];
        for (index, draft) in drafts.iter().enumerate() {
            for before in before(draft) {
                followers[before].push(index);
            }
        }
        let hands =
            drafts.iter().map(|draft| (draft.task.tool, draft.task.ink)).collect();
        Self { hands, followers }
    }
}

/// Everything that a draft comes after, by need or by preference.
fn before(draft: &Draft) -> impl Iterator<Item = usize> {
    let needs = draft.task.needs.iter().map(|need| need.0);
    needs.chain(draft.after.iter().copied())
}

/// How far the preparing has come, and what is in hand.
struct Bench<'a> {
    links: &'a Links,
    /// How many tasks each still waits for; `usize::MAX` keeps it out.
    waits_for: Vec<usize>,
    /// What could be done now, by what it takes.
    ready: BTreeMap<Hand, BTreeSet<usize>>,
    hand: Hand,
    order: Vec<usize>,
}

impl<'a> Bench<'a> {
    fn new(drafts: &[Draft], links: &'a Links) -> Self {
        let mut bench = Self {
            links,
            waits_for: vec![usize::MAX; drafts.len()],
            ready: BTreeMap::new(),
            hand: (None, None),
            order: Vec::new(),
        };
        let preparing = drafts.iter().enumerate();
        for (index, draft) in preparing.filter(|(_, it)| it.moment == Moment::Preparing) {
            bench.waits_for[index] = before(draft).count();
            if bench.waits_for[index] == 0 {
                bench.ready.entry(links.hands[index]).or_default().insert(index);
            }
        }
        bench
    }

    /// What taking up a tool and an ink costs: one for each that changes.
    fn cost(&self, wanted: Hand) -> u32 {
        fewest::cost(wanted, self.hand)
    }

    /// Takes up a tool and an ink, and does all that can be done with them.
    fn take_up(&mut self, hand: Hand) {
        self.hand = (hand.0.or(self.hand.0), hand.1.or(self.hand.1));
        while let Some(free) = self.free() {
            let set = self.ready.get_mut(&free).expect("it was found there");
            let index = set.pop_first().expect("empty sets are removed");
            if set.is_empty() {
                self.ready.remove(&free);
            }
            self.order.push(index);
            for follower in &self.links.followers[index] {
                let waits = &mut self.waits_for[*follower];
                if *waits != usize::MAX {
                    *waits -= 1;
                    if *waits == 0 {
                        let hand = self.links.hands[*follower];
                        self.ready.entry(hand).or_default().insert(*follower);
                    }
                }
            }
        }
    }

    /// Among what needs nothing else than what is in hand, the earliest.
    fn free(&self) -> Option<Hand> {
        let free = self.ready.iter().filter(|(hand, _)| self.cost(**hand) == 0);
        free.min_by_key(|(_, set)| set.first().copied()).map(|(hand, _)| *hand)
    }
}

/// Takes the cheapest change each time, then the one with the earliest task.
fn cheapest_each_time(mut bench: Bench<'_>) -> Vec<usize> {
    bench.take_up((None, None));
    while let Some(hand) = {
        let ready = bench.ready.iter();
        let best =
            ready.min_by_key(|(hand, set)| (bench.cost(**hand), set.first().copied()));
        best.map(|(hand, _)| *hand)
    } {
        bench.take_up(hand);
    }
    bench.order
}

/// Adds the making of each card, then what is done when cards are sent.
fn card_by_card(
    drafts: &[Draft],
    in_batches: bool,
    done: &mut [bool],
    order: &mut Vec<usize>,
) {
    let mut cards: BTreeMap<Moment, Vec<usize>> = BTreeMap::new();
    for (index, draft) in drafts.iter().enumerate().rev().filter(|(at, _)| !done[*at]) {
        cards.entry(draft.moment).or_default().push(index);
    }
    let sending = cards.remove(&Moment::Sending).unwrap_or_default();
    while !cards.is_empty() {
        let before = order.len();
        for rest in cards.values_mut() {
            // What was glued since this card was taken up still dries.
            let taken_up = order.len();
            while let Some(index) = rest.last().copied() {
                let task = &drafts[index].task;
                let can = task.needs.iter().all(|need| done[need.0]);
                let dries = order[taken_up..].iter().any(|at| {
                    drafts[*at].task.waits > 0 && task.needs.contains(&TaskId(*at))
                });
                if !can || dries {
                    break;
                }
                rest.pop();
                done[index] = true;
                order.push(index);
                if in_batches && drafts[index].task.work == Work::Attach {
                    break;
                }
            }
        }
        cards.retain(|_, rest| !rest.is_empty());
        if order.len() == before {
            // A task never needs a later one of its card, so this cannot come to
            // pass; were it to, the tasks are done in the order they were listed.
            order.extend(cards.into_values().flat_map(|rest| rest.into_iter().rev()));
            break;
        }
    }
    order.extend(sending.into_iter().rev());
}
