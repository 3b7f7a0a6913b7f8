//! How long a class takes: minutes that were given, or estimates.
//!
//! One person's work goes in the order of the tasks; while something dries she
//! goes on with what can be done. All seconds become minutes at the very end, each
//! row rounded up.

use std::collections::BTreeMap;

use crate::plan::work::{Act, Task};
use crate::plan::{Plan, TaskId};
use crate::project::{CardId, Project, Reader, Work};

/// A beginner takes half as long again, and a tenth is added to the whole (common
/// practice, no source).
const SLOWER: (u64, u64) = (3, 2);
const BUFFER: u64 = 10;

/// What is taken for granted where nothing was said, in seconds (no source, which
/// is why it is printed as an estimate): welcome, once of each kind of work in the
/// order of [`Work::ALL`], putting away, and how long a class lasts.
const SET_UP: u32 = 600;
const ONCE: [u32; 9] = [240, 60, 30, 60, 30, 60, 60, 120, 60];
const CLEAN_UP: u32 = 600;
const LASTS: u32 = 5400;

/// When what is done at a table, and how long it takes.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Timetable {
    /// In order; each begins where the one before ends.
    pub rows: Vec<Span>,
    /// Minutes in all.
    pub total: u32,
    /// Minutes that a class lasts.
    pub lasts: u32,
    /// Some of the times are estimates.
    pub estimated: bool,
    /// Cards to leave out so that the rest fits, from the last one on, and the first
    /// card never: the last one that is enough by itself, else as few as can be found.
    pub left_out: Vec<CardId>,
    /// Minutes that this saves.
    pub saves: u32,
    /// Whether all fits with these left out.
    pub fits: bool,
    /// The last card that saves anything if it is left out, with the minutes.
    pub spare: Option<(CardId, u32)>,
}

/// A stretch of the timetable.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Span {
    /// What is done.
    pub what: Doing,
    /// The minute at which it begins.
    pub from: u32,
    /// How many minutes it takes.
    pub minutes: u32,
}

/// What is done in a stretch.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Doing {
    /// Welcome, and laying out.
    SetUp,
    /// What is done for all cards in one go.
    Preparing,
    /// A card.
    Card(CardId),
    /// Waiting, when nothing else can be done.
    Waiting,
    /// Putting away.
    CleanUp,
    /// In reserve.
    Buffer,
}

/// The timetable of one person's work at a reader's table.
pub fn timetable(project: &Project, plan: &Plan, reader: Reader) -> Timetable {
    let said = &project.minutes;
    let ahead = plan.work.ahead(reader);
    let here: Vec<(usize, &Task)> = plan
        .work
        .tasks
        .iter()
        .enumerate()
        .filter(|(at, task)| {
            !ahead.contains(&TaskId(*at)) && !matches!(task.act, Act::ChooseInside(_))
        })
        .collect();
    let lasts = minutes(u64::from(said.lasts.unwrap_or(LASTS)));
    let whole = rows(project, plan, &here, &[]);
    let total = sum(&whole);
    let without = |out: &[CardId]| sum(&rows(project, plan, &here, out));
    let left_out = left_out(project.cards.len(), lasts, total, &without);
    let rest = without(&left_out);
    let mut later = (1..project.cards.len()).rev().map(CardId);
    let spare = later.find_map(|card| {
        let saves = total.saturating_sub(without(&[card]));
        (saves > 0).then_some((card, saves))
    });
    Timetable {
        rows: whole,
        total,
        lasts,
        estimated: is_estimated(project, &here),
        saves: total.saturating_sub(rest),
        left_out,
        fits: rest <= lasts,
        spare,
    }
}

fn sum(rows: &[Span]) -> u32 {
    rows.iter().map(|it| it.minutes).fold(0, u32::saturating_add)
}

/// The cards to leave out: while one dries others are made, so that a card may save
/// nothing by itself, and much with another.
fn left_out(
    cards: usize,
    lasts: u32,
    total: u32,
    without: &dyn Fn(&[CardId]) -> u32,
) -> Vec<CardId> {
    if total <= lasts {
        return Vec::new();
    }
    let later = || (1..cards).rev().map(CardId);
    if let Some(card) = later().find(|card| without(&[*card]) <= lasts) {
        return vec![card];
    }
    let mut out = Vec::new();
    for card in later() {
        out.push(card);
        if without(&out) <= lasts {
            break;
        }
    }
    if without(&out) > lasts {
        return out;
    }
    // What need not be left out is made after all, the first cards before others.
    for card in out.clone().into_iter().rev() {
        let fewer: Vec<CardId> = out.iter().copied().filter(|it| *it != card).collect();
        if without(&fewer) <= lasts {
            out = fewer;
        }
    }
    out
}

/// Whether any time that counts was not given.
fn is_estimated(project: &Project, here: &[(usize, &Task)]) -> bool {
    let said = &project.minutes;
    let missing = |work: Work| said.once[place(work)].is_none();
    said.set_up.is_none()
        || said.clean_up.is_none()
        || here.iter().any(|(_, task)| missing(task.work))
}

fn place(work: Work) -> usize {
    Work::ALL.iter().position(|it| *it == work).unwrap_or(0)
}

/// The rows without the cards that are left out.
fn rows(
    project: &Project,
    plan: &Plan,
    here: &[(usize, &Task)],
    out: &[CardId],
) -> Vec<Span> {
    let mut now = 0_u64;
    let mut ends: BTreeMap<usize, u64> = BTreeMap::new();
    // Seconds of each doing, in the order in which it is first done.
    let mut spent: Vec<(Doing, u64)> = Vec::new();
    let mut add =
        |what: Doing, seconds: u64| match spent.iter_mut().find(|it| it.0 == what) {
            Some(row) => row.1 += seconds,
            None => spent.push((what, seconds)),
        };
    let mut waited = 0;
    let mut last_card = None;
    for (at, task) in here {
        let card = task.act.card().filter(|_| task.work != Work::Inside);
        if task.act.card().is_some_and(|it| out.contains(&it)) {
            continue;
        }
        let ready = task.needs.iter().filter_map(|need| ends.get(&need.0));
        let ready = ready.copied().max().unwrap_or(0);
        waited += ready.saturating_sub(now);
        now = now.max(ready);
        let seconds = seconds(project, plan, task);
        now = now.saturating_add(seconds);
        ends.insert(*at, now.saturating_add(u64::from(task.waits) * 60));
        let cut_at_card = matches!(task.act, Act::LateCut(late)
            if project.late_cuts[late.0].at_the_card);
        let what = match (card, last_card) {
            (Some(card), _) => Doing::Card(card),
            // A piece that is cut at its card is cut just before.
            (None, Some(card)) if cut_at_card => Doing::Card(card),
            (None, _) => Doing::Preparing,
        };
        last_card = card.or(last_card);
        add(what, seconds);
    }
    let said = &project.minutes;
    let mut all = vec![(Doing::SetUp, u64::from(said.set_up.unwrap_or(SET_UP)))];
    all.extend(spent);
    all.push((Doing::Waiting, waited));
    all.push((Doing::CleanUp, u64::from(said.clean_up.unwrap_or(CLEAN_UP))));
    let sum: u64 = all.iter().map(|it| it.1).sum();
    all.push((Doing::Buffer, sum / BUFFER));
    let mut from = 0_u32;
    let mut rows = Vec::new();
    for (what, seconds) in all.into_iter().filter(|it| it.1 > 0) {
        let minutes = minutes(seconds);
        rows.push(Span { what, from, minutes });
        from = from.saturating_add(minutes);
    }
    rows
}

/// How long a task takes a beginner, in seconds.
fn seconds(project: &Project, plan: &Plan, task: &Task) -> u64 {
    let at = place(task.work);
    let once = u64::from(project.minutes.once[at].unwrap_or(ONCE[at]));
    let times = match task.act {
        // Sheets are counted, not pieces; one person's share of those cut together.
        Act::CutPaper(paper) => {
            let cut = plan.cuts.iter().find(|it| it.paper == paper);
            cut.map_or(1, |cut| {
                let sheets =
                    cut.patterns.iter().map(|it| u64::from(it.copies)).sum::<u64>();
                sheets.div_ceil(u64::from(cut.kits.max(1))).max(1)
            })
        }
        _ => u64::from(task.times),
    };
    once.saturating_mul(times).saturating_mul(SLOWER.0) / SLOWER.1
}

fn minutes(seconds: u64) -> u32 {
    u32::try_from(seconds.div_ceil(60)).unwrap_or(u32::MAX)
}
