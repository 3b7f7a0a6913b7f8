//! The plan for one size of sheet: bounds, a quick plan, then the proof.

use crate::geom::Size;
use crate::plan::cut::engine::board::Board;
use crate::plan::cut::engine::columns::{self, Plan};
use crate::plan::cut::engine::few_turns::FewTurns;
use crate::plan::cut::engine::fewest::Fewest;
use crate::plan::cut::engine::greedy;
use crate::plan::cut::engine::keep;
use crate::plan::cut::engine::kits;
use crate::plan::cut::engine::meter::Meter;
use crate::plan::cut::engine::nearer::Search;
use crate::plan::cut::engine::rough;
use crate::plan::cut::engine::spare;
use crate::plan::cut::engine::ways;
use crate::plan::cut::{Bound, How, Kind, Limits, Tree};

/// What is wanted from sheets of one size.
#[derive(Clone, Debug)]
pub(super) struct Job {
    /// Width × height of the sheet.
    pub(super) sheet: Size,
    /// What is wanted; each kind can be cut from the sheet.
    pub(super) kinds: Vec<Kind>,
    /// What the cuts must keep to.
    pub(super) limits: Limits,
}

/// A plan for a [`Job`].
#[derive(Clone, Debug)]
pub(super) struct Found {
    /// Ways to cut a sheet, and how many sheets.
    pub(super) patterns: Vec<(Tree, u32)>,
    /// What is known about the fewest sheets.
    pub(super) bound: Bound,
    /// No plan takes fewer sheets.
    pub(super) proven: bool,
    /// The offcut: its pattern, its size, and whether none can be larger.
    pub(super) offcut: Option<(usize, Size, bool)>,
}

/// Plans the cutting.
///
/// Cheap things first: a quick plan and the bound by area. A kit with few smaller
/// kits is then settled by looking at all of them. For others the plan and the
/// bound are brought together by the linear programme, by taking parts out and
/// putting them in again, and by proving that one sheet is not enough.
pub(super) fn solve(job: &Job, meter: &mut Meter) -> Found {
    let wanted: Vec<u32> = job.kinds.iter().map(|it| it.count).collect();
    let board = Board::new(job.sheet, &job.kinds, &wanted, &job.limits);
    let by_area = rough::area_bound(job);
    let mut search = Search {
        job,
        least: job.limits.least_offcut.units(),
        bound: Bound { sheets: by_area, how: How::Area },
        plan: greedy::plan(&rough::rules(job, &board), &wanted, by_area, meter),
        board,
    };
    search.raise(rough::pair_bound(&search.board), How::Pairs);
    if let Some(stages) = job.limits.stages {
        return with_few_turns(search, stages, meter);
    }
    // Few sheets are settled quickest by looking at all smaller kits, many by the
    // linear programme.
    let few = columns::sheets(&search.plan) <= FEW;
    let first = if search.proven() { TINY } else { SMALL };
    if few && let Some(found) = search.all_kits(first, meter) {
        return found;
    }
    if !search.proven() && search.bound.sheets == 1 {
        search.shake(SHORT_SHAKE, meter);
    }
    if !search.proven() && search.bound.sheets == 1 {
        search.one_sheet(meter);
    }
    if !search.proven() {
        search.many(meter);
    }
    if !few
        && !search.proven()
        && let Some(found) = search.all_kits(SMALL, meter)
    {
        return found;
    }
    if !search.proven() {
        search.settle(meter);
    }
    if !search.proven() {
        search.shake(SHAKE, meter);
    }
    let kept = largest_offcut(&mut search, meter);
    match kept {
        Some(plan) => {
            search.plan = plan.unwrap_or(search.plan);
            search.finish(true)
        }
        None => {
            let now = search.finish(false).offcut.map_or(0, |it| it.1.area());
            let plan =
                keep::larger(&search.board, &search.plan, search.least, now, meter);
            let plan = plan.unwrap_or(search.plan);
            search.plan = keep::polish(&search.board, plan, search.least, meter);
            search.finish(false)
        }
    }
}

/// Work in steps that is done at once, and work that is done if other ways have
/// not settled the question.
const FEW: u32 = 4;
const TINY: u64 = 300_000;
const SMALL: u64 = 2_000_000;
/// Steps for looking at all smaller kits where the turns are limited.
const FEW_TURNS: u64 = 20_000_000;
/// Steps for taking parts of all sheets out and in.
const SHORT_SHAKE: u64 = 500_000;
const SHAKE: u64 = 8_000_000;
/// Steps for the largest offcut: for looking at smaller kits with little waste, then
/// for building up all parts with it, in two turns.
/// With more sizes than [`MOST_SIZES`] the second turn wins nothing.
const OFFCUT: [(u64, u64); 2] = [(1_600_000, 900_000), (8_000_000, 4_500_000)];
const MOST_SIZES: usize = 12;

/// Looks for the largest offcut by both ways in turn: the one is quick with few
/// kinds, the other with little waste, and which it is shows only in the doing.
fn largest_offcut(search: &mut Search<'_>, meter: &mut Meter) -> Option<Option<Plan>> {
    let real = search.board.real();
    if !search.proven() || real.0.min(real.1) < search.least {
        return None;
    }
    let mut keep = keep::Largest::new(&search.board, &search.plan, search.least);
    let mut spare = spare::Largest::new(&search.board, &search.plan, search.least);
    let turns = if MOST_SIZES < search.board.lies.len() { 1 } else { OFFCUT.len() };
    for (first, second) in OFFCUT.into_iter().take(turns) {
        let now = search.finish(false).offcut.map_or(0, |it| it.1.area());
        let mut share = Meter::new(meter.left().min(first));
        let kept = keep.as_mut().and_then(|it| it.search(now, &mut share));
        meter.add(share);
        if kept.is_some() {
            return kept;
        }
        let mut share = Meter::new(meter.left().min(second));
        let found = spare.as_mut().map(|it| it.search(now, &mut share));
        meter.add(share);
        match found {
            Some((plan, true)) => return Some(plan),
            Some((Some(plan), false)) => search.plan = plan,
            Some((None, false)) | None => {}
        }
    }
    None
}

/// The plan if the paper may be turned only a few times.
///
/// A kit with few smaller kits is settled by looking at all of them, run by run. For
/// others the same is built up for one sheet, or the linear programme prices sheets
/// with so few turns. A plan with any number of turns is the last resort: none with
/// few turns takes fewer sheets, and perhaps it has few turns itself.
fn with_few_turns(mut search: Search<'_>, stages: u8, meter: &mut Meter) -> Found {
    let real = search.board.real();
    if !search.proven() && real.0.max(real.1) <= search.board.longest {
        if !all_kits_with_few_turns(&mut search, meter) && search.bound.sheets == 1 {
            search.one_sheet(meter);
        }
        if !search.proven() {
            search.many(meter);
        }
    }
    if search.proven() {
        return search.finish(false);
    }
    let limits = Limits { stages: None, ..search.job.limits };
    let found = solve(&Job { limits, ..search.job.clone() }, meter);
    search.raise(found.bound.sheets, found.bound.how);
    let sheets = found.patterns.iter().fold(0, |sum: u32, it| sum.saturating_add(it.1));
    let most = u32::from(stages).max(2);
    if sheets < columns::sheets(&search.plan)
        && found.patterns.iter().all(|it| ways::turns(&it.0) <= most)
    {
        let offcut = found.offcut.map(|it| (it.0, it.1, it.2 && found.proven));
        return Found { offcut, ..found };
    }
    search.finish(false)
}

/// Looks at all smaller kits, run of cuts by run of cuts; whether that settled it.
fn all_kits_with_few_turns(search: &mut Search<'_>, meter: &mut Meter) -> bool {
    let Some(counts) = kits::count(&search.board.wanted) else { return false };
    let mut share = Meter::new(meter.left().min(FEW_TURNS));
    let most = share.left();
    let mut settle = || {
        if most < FewTurns::work(&search.board, &counts, most) {
            return None;
        }
        let kits = FewTurns::new(&search.board, &counts, &mut share)?;
        let fits = (0..counts.len()).map(|it| kits.fits(it)).collect();
        let fewest = Fewest::new(&counts, fits, &mut share)?;
        let divided = fewest.divide(counts.all(), fewest.sheets);
        let plan = divided.into_iter().map(|it| (kits.draw(it), 1)).collect();
        Some((fewest.sheets, plan))
    };
    let settled = settle();
    meter.add(share);
    let Some((sheets, plan)) = settled else { return false };
    search.raise(sheets, How::Search);
    search.improve(Some(plan));
    true
}
