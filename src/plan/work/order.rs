//! The order of work: as few changes of tool and ink as can be.
//!
//! Preparing is ordered first. Whatever needs no other tool or ink than those in
//! hand is done at once, which is never worse: it only sets free what waits for
//! it. So only the changes are choices, and the search goes over them, cheapest
//! first (Dijkstra 1959); equal ones are taken in the order of the tasks. Beyond
//! a number of choices it takes the cheapest change each time.
//!
//! Then the cards are made one after the other. While glue dries on a card, the
//! next ones are gone on with.

use std::cmp::Reverse;
use std::collections::{BTreeMap, BTreeSet, BinaryHeap};

use crate::plan::work::tasks::{Draft, Moment};
use crate::plan::work::{Task, TaskId};
use crate::project::ToolId;

/// How many states of the preparing are looked at before the search gives way,
const CHOICES: usize = 4000;

/// and how many tasks they may hold together.
const HELD: usize = 1_000_000;

/// The drafts in the order in which they are done.
pub(crate) fn order(drafts: &[Draft]) -> Vec<usize> {
    let links = Links::of(drafts);
    let start = Bench::new(drafts, &links);
    let choices = CHOICES.min(HELD / drafts.len().max(1));
    let mut order = match fewest_changes(start.clone(), choices) {
        Some(order) => order,
        None => cheapest_each_time(start),
    };
    let mut done = vec![false; drafts.len()];
    for index in &order {
        done[*index] = true;
    }
    card_by_card(drafts, &mut done, &mut order);
    order
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

/// A tool and an ink, as far as a task takes one.
type Hand = (Option<ToolId>, Option<ToolId>);

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
#[derive(Clone)]
struct Bench<'a> {
    links: &'a Links,
    /// How many tasks each still waits for; `usize::MAX` keeps it out.
    waits_for: Vec<usize>,
    /// What could be done now, by what it takes.
    ready: BTreeMap<Hand, BTreeSet<usize>>,
    hand: Hand,
    changes: u32,
    order: Vec<usize>,
    /// How many are still to be done.
    open: usize,
}

impl<'a> Bench<'a> {
    fn new(drafts: &[Draft], links: &'a Links) -> Self {
        let mut bench = Self {
            links,
            waits_for: vec![usize::MAX; drafts.len()],
            ready: BTreeMap::new(),
            hand: (None, None),
            changes: 0,
            order: Vec::new(),
            open: 0,
        };
        let preparing = drafts.iter().enumerate();
        for (index, draft) in preparing.filter(|(_, it)| it.moment == Moment::Preparing) {
            bench.open += 1;
            bench.waits_for[index] = before(draft).count();
            if bench.waits_for[index] == 0 {
                bench.ready.entry(links.hands[index]).or_default().insert(index);
            }
        }
        bench
    }

    /// What taking up a tool and an ink costs: one for each that changes.
    fn cost(&self, (tool, ink): Hand) -> u32 {
        let changed = |wanted: Option<ToolId>, held: Option<ToolId>| {
            u32::from(wanted.is_some() && wanted != held)
        };
        changed(tool, self.hand.0) + changed(ink, self.hand.1)
    }

    /// Takes up a tool and an ink, and does all that can be done with them.
    fn take_up(&mut self, hand: Hand) {
        self.changes += self.cost(hand);
        self.hand = (hand.0.or(self.hand.0), hand.1.or(self.hand.1));
        while let Some(free) = self.free() {
            let set = self.ready.get_mut(&free).expect("it was found there");
            let index = set.pop_first().expect("empty sets are removed");
            if set.is_empty() {
                self.ready.remove(&free);
            }
            self.order.push(index);
            self.open -= 1;
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

/// The order with the fewest changes; `None` if too many states were looked at.
fn fewest_changes(start: Bench<'_>, choices: usize) -> Option<Vec<usize>> {
    let mut states = vec![start];
    states[0].take_up((None, None));
    // Fewest changes first; among equal ones, what began with earlier tasks.
    let mut heap = BinaryHeap::new();
    heap.push(Reverse((0, states[0].order.clone(), 0)));
    let mut seen: BTreeSet<(Vec<usize>, Hand)> = BTreeSet::new();
    while let Some(Reverse((_, _, at))) = heap.pop() {
        if states[at].open == 0 {
            return Some(std::mem::take(&mut states[at].order));
        }
        let bench = states[at].clone();
        let mut done = bench.order.clone();
        done.sort_unstable();
        if !seen.insert((done, bench.hand)) {
            continue;
        }
        for hand in bench.ready.keys() {
            if states.len() >= choices {
                return None;
            }
            let mut next = bench.clone();
            next.take_up(*hand);
            heap.push(Reverse((next.changes, next.order.clone(), states.len())));
            states.push(next);
        }
    }
    None
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
fn card_by_card(drafts: &[Draft], done: &mut [bool], order: &mut Vec<usize>) {
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
