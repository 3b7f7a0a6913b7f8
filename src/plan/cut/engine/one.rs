//! The plan for one size of sheet: bounds, a quick plan, then the proof.

use crate::geom::Size;
use crate::plan::cut::engine::board::{Board, Lie};
use crate::plan::cut::engine::columns::{self, Plan};
use crate::plan::cut::engine::fewest::Fewest;
use crate::plan::cut::engine::greedy::{self, Rules};
use crate::plan::cut::engine::keep;
use crate::plan::cut::engine::kits;
use crate::plan::cut::engine::knapsack;
use crate::plan::cut::engine::meter::Meter;
use crate::plan::cut::engine::raster::Raster;
use crate::plan::cut::engine::ruin;
use crate::plan::cut::engine::sketch::Sheet;
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
    let mut search = Search {
        job,
        least: job.limits.least_offcut.units(),
        bound: Bound { sheets: area_bound(job), how: How::Area },
        plan: greedy::plan(&rules(job, &board), &wanted, area_bound(job), meter),
        board,
    };
    search.raise(pair_bound(&search.board), How::Pairs);
    if let Some(stages) = job.limits.stages {
        if let Some(found) = search.without_stages(stages, meter) {
            return found;
        }
        return search.finish(false);
    }
    // Few sheets are settled quickest by looking at all smaller kits, many by the
    // linear programme.
    let few = columns::sheets(&search.plan) <= FEW;
    let first = if search.proven() { TINY } else { SMALL };
    if few && let Some(found) = search.all_kits(first, meter) {
        return found;
    }
    if !search.proven() && search.bound.sheets == 1 {
        search.shake(SHAKE / 16, meter);
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
    let kept = search.largest_offcut(meter);
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
const LARGE: u64 = 40_000_000;
/// Steps for the linear programme with proper ways, and for fixing way by way.
const PROPER: u64 = 30_000_000;
const DIVE: u64 = 10_000_000;
/// Steps for building one sheet up from all parts.
const BUILD: u64 = 10_000_000;
/// Steps for taking parts of all sheets out and in.
const SHAKE: u64 = 8_000_000;
/// Steps for the largest offcut: for looking at smaller kits with little waste, then
/// for building up all parts with it, in two turns.
const OFFCUT: [(u64, u64); 2] = [(1_600_000, 900_000), (8_000_000, 4_500_000)];

/// A plan and a bound that come nearer to each other.
struct Search<'a> {
    job: &'a Job,
    board: Board,
    least: i64,
    bound: Bound,
    plan: Plan,
}

impl Search<'_> {
    /// Whether no plan takes fewer sheets.
    fn proven(&self) -> bool {
        columns::sheets(&self.plan) <= self.bound.sheets
    }

    fn raise(&mut self, sheets: u32, how: How) {
        if self.bound.sheets < sheets {
            self.bound = Bound { sheets, how };
        }
    }

    fn improve(&mut self, plan: Option<Plan>) {
        if let Some(plan) = plan
            && columns::sheets(&plan) < columns::sheets(&self.plan)
        {
            self.plan = plan;
        }
    }

    /// Plans with any number of turns of the paper: no plan with few turns takes fewer
    /// sheets. That plan itself, if it turns the paper no more often than allowed.
    fn without_stages(&mut self, stages: u8, meter: &mut Meter) -> Option<Found> {
        if self.proven() {
            return None;
        }
        let limits = Limits { stages: None, ..self.job.limits };
        let found = solve(&Job { limits, ..self.job.clone() }, meter);
        self.raise(found.bound.sheets, found.bound.how);
        let sheets =
            found.patterns.iter().fold(0, |sum: u32, it| sum.saturating_add(it.1));
        let most = u32::from(stages).max(2);
        let better = sheets < columns::sheets(&self.plan)
            && found.patterns.iter().all(|it| ways::turns(&it.0) <= most);
        let offcut = found.offcut.map(|it| (it.0, it.1, it.2 && found.proven));
        better.then_some(Found { offcut, ..found })
    }

    /// Looks at all smaller kits, if that takes at most so many steps.
    fn all_kits(&mut self, most: u64, meter: &mut Meter) -> Option<Found> {
        let counts = kits::count(&self.board.wanted)?;
        let kits = kits::look_at_all(&self.board, &counts, most, meter)?;
        let fits = (0..counts.len()).map(|it| kits.fits(it)).collect();
        let fewest = Fewest::new(&counts, fits, meter)?;
        self.raise(fewest.sheets, How::Search);
        let kept = kits.largest_offcut(&fewest.last_sheets(), self.least, 0, meter);
        let peeled = kept.is_some();
        self.plan.clear();
        let mut rest = (counts.all(), fewest.sheets);
        if let Some(Some((kit, sheet))) = kept {
            rest = (rest.0 - kit, rest.1 - 1);
            self.plan.push((sheet, 1));
        }
        let others = fewest.divide(rest.0, rest.1);
        self.plan.extend(others.into_iter().map(|kit| (kits.draw(kit), 1)));
        Some(self.finish(peeled))
    }

    /// Decides whether the number of sheets that the bound allows is enough, as
    /// long as steps last: if so little may be wasted, few smaller kits pass.
    fn settle(&mut self, meter: &mut Meter) {
        let Some(counts) = kits::count(&self.board.wanted) else { return };
        let mut share = Meter::new(meter.left().min(LARGE));
        while !self.proven() {
            let sheets = self.bound.sheets;
            let Some(decided) = kits::decide(&self.board, &counts, sheets, &mut share)
            else {
                break;
            };
            match decided {
                Some(plan) => self.plan = plan.into_iter().map(|it| (it, 1)).collect(),
                None => self.raise(sheets + 1, How::Search),
            }
        }
        meter.add(share);
    }

    /// Decides whether one sheet is enough by building it up: every part is worth
    /// its area, and no less than the worth of all parts will do.
    fn one_sheet(&mut self, meter: &mut Meter) {
        let Some(raster) = Raster::new(&self.board) else { return };
        let shift = (0..).find(|it| self.board.area() >> it < 1 << 24).unwrap_or(0);
        let worth =
            |lies: &Vec<Lie>| i64::try_from(lies[0].area() >> shift).unwrap_or(0) + 1;
        let values: Vec<i64> = self.board.lies.iter().map(worth).collect();
        let all: i64 =
            values.iter().zip(&self.board.wanted).map(|(it, &n)| it * i64::from(n)).sum();
        let mut share = Meter::new(meter.left().min(BUILD));
        let found = knapsack::best(&self.board, &raster, &values, all - 1, &mut share);
        meter.add(share);
        match found {
            Some(knapsack::Found { drawn: Some(drawn), .. }) => {
                self.plan = vec![(drawn.sheet, 1)];
            }
            Some(knapsack::Found { bound, .. }) if bound < all => {
                self.raise(2, How::Search);
            }
            _ => {}
        }
    }

    /// Takes parts of all sheets out and in again, with one sheet less each time.
    fn shake(&mut self, steps: u64, meter: &mut Meter) {
        let mut share = Meter::new(meter.left().min(steps));
        while !self.proven() {
            let sheets = columns::sheets(&self.plan) - 1;
            let plan = ruin::search(&self.board, sheets as usize, &mut share);
            let Some(plan) = plan else { break };
            self.plan = plan.into_iter().map(|it| (it, 1)).collect();
        }
        meter.add(share);
    }

    /// Linear programme, rounding, and taking parts out and in.
    fn many(&mut self, meter: &mut Meter) {
        if columns::MOST_KINDS < self.job.kinds.len() {
            return;
        }
        let Some(raster) = Raster::new(&self.board) else { return };
        let seeds: Vec<Sheet> = self.plan.iter().map(|it| it.0.clone()).collect();
        let enough = columns::sheets(&self.plan);
        let relaxed = columns::relax(&self.board, &raster, &seeds, enough, meter);
        let Some(mut relaxed) = relaxed else { return };
        self.raise(relaxed.bound, How::Weights);
        for properly in [false, true] {
            if self.proven() {
                return;
            }
            if properly {
                let enough = columns::sheets(&self.plan);
                let mut share = Meter::new(meter.left().min(PROPER));
                let board = &self.board;
                columns::relax_properly(board, &raster, &mut relaxed, enough, &mut share);
                meter.add(share);
                self.raise(relaxed.bound, How::Weights);
                if self.proven() {
                    return;
                }
            }
            let most = columns::sheets(&self.plan);
            let enough = self.bound.sheets;
            let plan = columns::round(
                &relaxed,
                &self.board.wanted,
                most,
                enough,
                &mut |left, most| self.rest(left, most, meter),
            );
            self.improve(plan);
            if !self.proven() {
                let most = columns::sheets(&self.plan) - 1;
                let board = &self.board;
                let mut share = Meter::new(meter.left().min(DIVE));
                let plan = columns::dive(
                    board,
                    &raster,
                    &relaxed,
                    most,
                    &mut |left, most| self.rest(left, most, meter),
                    &mut share,
                );
                meter.add(share);
                self.improve(plan);
            }
        }
    }

    /// Looks for the largest offcut by both ways in turn: the one is quick with few
    /// kinds, the other with little waste, and which it is shows only in the doing.
    fn largest_offcut(&mut self, meter: &mut Meter) -> Option<Option<Plan>> {
        let real = self.board.real();
        if !self.proven() || real.0.min(real.1) < self.least {
            return None;
        }
        let mut keep = keep::Largest::new(&self.board, &self.plan, self.least);
        let mut spare = spare::Largest::new(&self.board, &self.plan, self.least);
        for (first, second) in OFFCUT {
            let now = self.finish(false).offcut.map_or(0, |it| it.1.area());
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
                Some((Some(plan), false)) => self.plan = plan,
                Some((None, false)) | None => {}
            }
        }
        None
    }

    /// Plans what rounding has left with at most so many sheets.
    fn rest(&self, left: &[u32], most: u32, meter: &mut Meter) -> Option<Plan> {
        let kinds: Vec<usize> = (0..left.len()).filter(|&it| 0 < left[it]).collect();
        let area: i128 = kinds
            .iter()
            .map(|&it| i128::from(left[it]) * self.board.lies[it][0].area())
            .sum();
        if i128::from(most) * self.board.area() < area {
            return None;
        }
        let rules = rules(self.job, &self.board);
        let quick = greedy::plan(&rules, left, most, meter);
        if columns::sheets(&quick) <= most {
            return Some(quick);
        }
        let enough = usize::try_from(most).unwrap_or(usize::MAX);
        let mut board = self.board.clone();
        board.wanted = left.to_vec();
        let mut share = Meter::new(meter.left().min(RUIN));
        let sheets = ruin::search(&board, enough, &mut share);
        meter.add(share);
        Some(sheets?.into_iter().map(|it| (it, 1)).collect())
    }

    /// The plan as trees.
    fn finish(&self, peeled: bool) -> Found {
        let real = self.board.real();
        let trees = self
            .plan
            .iter()
            .map(|(sheet, copies)| {
                (sheet.sketch.tree(sheet.root, real, self.least), *copies)
            })
            .collect();
        found(self.job, trees, self.bound, peeled)
    }
}

/// Steps for one attempt at putting parts in again.
const RUIN: u64 = 400_000;

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

/// What the quick plan has to keep to.
fn rules(job: &Job, board: &Board) -> Rules {
    let unit = board.unit;
    Rules {
        sheet: board.real(),
        lies: board
            .lies
            .iter()
            .map(|lies| {
                lies.iter()
                    .map(|it| (it.width * unit.0, it.height * unit.1, it.turned))
                    .collect()
            })
            .collect(),
        longest: board.longest,
        stages: job.limits.stages.map_or(u32::MAX, |it| u32::from(it).max(2)),
    }
}

/// Parts of which no two fit one sheet: wider and higher than half of it.
fn pair_bound(board: &Board) -> u32 {
    let large = |lies: &Vec<Lie>| {
        lies.iter().all(|it| board.size.0 < it.width * 2 && board.size.1 < it.height * 2)
    };
    let pairs = board.lies.iter().zip(&board.wanted);
    pairs.filter(|it| large(it.0)).fold(0, |sum: u32, it| sum.saturating_add(*it.1))
}

/// Brings equal ways to cut together, and names the largest offcut.
fn found(job: &Job, trees: Vec<(Tree, u32)>, bound: Bound, peeled: bool) -> Found {
    let ways = trees.into_iter().map(|(tree, copies)| (0, tree, copies)).collect();
    let patterns: Vec<_> =
        ways::gather(ways).into_iter().map(|it| (it.1, it.2)).collect();
    let sheets = patterns.iter().fold(0, |sum: u32, it| sum.saturating_add(it.1));
    let proven = sheets <= bound.sheets;
    let offcut = ways::largest_offcut(patterns.iter().map(|it| (&it.0, job.sheet)));
    let offcut = offcut.map(|(index, size)| (index, size, proven && peeled));
    Found { patterns, bound, proven, offcut }
}
