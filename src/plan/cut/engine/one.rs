//! The plan for one size of sheet: bounds, a quick plan, then the proof.

use crate::geom::Size;
use crate::plan::cut::engine::board::{Board, lies};
use crate::plan::cut::engine::counts::Counts;
use crate::plan::cut::engine::fewest::Fewest;
use crate::plan::cut::engine::frontier::{self, Frontier, Lane};
use crate::plan::cut::engine::greedy::{self, Rules};
use crate::plan::cut::engine::meter::Meter;
use crate::plan::cut::engine::peel::Peel;
use crate::plan::cut::engine::sketch::Sketch;
use crate::plan::cut::{Bound, How, Kind, Leaf, Limits, Tree};

/// More kits than this are not looked at one by one.
const MOST_KITS: usize = 400_000;

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
pub(super) fn solve(job: &Job, meter: &mut Meter) -> Found {
    let wanted: Vec<u32> = job.kinds.iter().map(|it| it.count).collect();
    let board = Board::new(job.sheet, &job.kinds, &wanted, &job.limits);
    let mut bound = Bound { sheets: area_bound(job), how: How::Area };
    let quick = quick(job, &board, bound.sheets, meter);
    let least = job.limits.least_offcut.units();
    if job.limits.stages.is_none()
        && let Some(exact) = by_frontier(&board, least, meter)
    {
        let sheets = exact.iter().map(|it| it.1).sum();
        if bound.sheets < sheets {
            bound = Bound { sheets, how: How::Search };
        }
        return found(job, exact, bound, true);
    }
    let trees = quick
        .into_iter()
        .map(|it| (it.sketch.tree(it.root, board.real(), least), 1))
        .collect();
    found(job, trees, bound, false)
}

/// The fewest sheets by area.
fn area_bound(job: &Job) -> u32 {
    let area: i128 = job
        .kinds
        .iter()
        .map(|it| it.size.area().saturating_mul(i128::from(it.count)))
        .fold(0, i128::saturating_add);
    let sheets = (area + job.sheet.area() - 1) / job.sheet.area();
    u32::try_from(sheets).unwrap_or(u32::MAX)
}

/// A plan that is made quickly.
fn quick(job: &Job, board: &Board, enough: u32, meter: &mut Meter) -> Vec<greedy::Sheet> {
    let rules = Rules {
        sheet: board.real(),
        lies: job
            .kinds
            .iter()
            .map(|kind| {
                lies(kind, job.sheet, &job.limits)
                    .into_iter()
                    .map(|(it, turned)| (it.width.units(), it.height.units(), turned))
                    .collect()
            })
            .collect(),
        longest: board.longest,
        stages: job.limits.stages.map_or(u32::MAX, u32::from),
    };
    let enough = usize::try_from(enough).unwrap_or(usize::MAX);
    let mut first = Meter::new(u64::MAX);
    let plan = greedy::best_order(&rules, &board.wanted, enough, &mut first);
    meter.add(first);
    plan.unwrap_or_default()
}

/// The fewest sheets and the largest offcut by looking at every smaller kit.
fn by_frontier(board: &Board, least: i64, meter: &mut Meter) -> Option<Vec<(Tree, u32)>> {
    let counts = Counts::new(&board.wanted, MOST_KITS)?;
    if meter.left() < frontier::work(board, &counts) {
        return None;
    }
    if board.size.0.max(board.size.1) < i16::FAR.length() {
        exact::<i16>(board, &counts, least, meter)
    } else {
        exact::<i32>(board, &counts, least, meter)
    }
}

fn exact<T: Lane>(
    board: &Board,
    counts: &Counts,
    least: i64,
    meter: &mut Meter,
) -> Option<Vec<(Tree, u32)>> {
    let frontier = Frontier::<T>::new(board, counts, meter)?;
    let fits = (0..counts.len()).map(|it| frontier.fits(it)).collect();
    let fewest = Fewest::new(counts, fits, meter)?;
    let peel = Peel::new(&frontier, meter);
    let kept = peel.as_ref().and_then(|peel| {
        fewest
            .last_sheets()
            .filter_map(|kit| Some((kit, peel.largest(kit, least)?)))
            .max_by_key(|(kit, (width, height))| {
                (i128::from(*width) * i128::from(*height), std::cmp::Reverse(*kit))
            })
    });
    let mut plan = Vec::new();
    let mut rest = (counts.all(), fewest.sheets);
    if let (Some(peel), Some((kit, offcut))) = (peel, kept) {
        let mut sketch = Sketch::default();
        let root = sketch.sheet();
        peel.draw(kit, offcut, &mut sketch, root);
        plan.push((sketch.tree(root, board.real(), least), 1));
        rest = (rest.0 - kit, rest.1 - 1);
    }
    for kit in fewest.divide(rest.0, rest.1) {
        let mut sketch = Sketch::default();
        let root = sketch.sheet();
        frontier.draw(kit, board.real(), &mut sketch, root);
        plan.push((sketch.tree(root, board.real(), least), 1));
    }
    Some(plan)
}

/// Brings equal ways to cut together, and names the largest offcut.
fn found(job: &Job, trees: Vec<(Tree, u32)>, bound: Bound, peeled: bool) -> Found {
    let mut patterns: Vec<(Tree, u32)> = Vec::new();
    for (tree, copies) in trees {
        match patterns.iter_mut().find(|it| it.0 == tree) {
            Some(same) => same.1 += copies,
            None => patterns.push((tree, copies)),
        }
    }
    let sheets: u32 = patterns.iter().map(|it| it.1).sum();
    let proven = sheets <= bound.sheets;
    let mut offcut: Option<(usize, Size)> = None;
    for (index, (tree, _)) in patterns.iter().enumerate() {
        for leaf in tree.placements(job.sheet) {
            let size = leaf.rect.size;
            let larger = offcut.is_none_or(|(_, most)| most.area() < size.area());
            if leaf.leaf == Leaf::Keep && larger {
                offcut = Some((index, size));
            }
        }
    }
    let offcut = offcut.map(|(index, size)| (index, size, proven && peeled));
    Found { patterns, bound, proven, offcut }
}
