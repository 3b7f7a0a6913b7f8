//! A plan and a bound for one size of sheet, brought nearer to each other.
//!
//! Each way to do that is one call here; [`one`](crate::plan::cut::engine::one) says
//! in which order they are asked.

use crate::plan::cut::engine::board::{Board, Lie};
use crate::plan::cut::engine::columns::{self, Plan};
use crate::plan::cut::engine::fewest::Fewest;
use crate::plan::cut::engine::greedy;
use crate::plan::cut::engine::kits;
use crate::plan::cut::engine::knapsack;
use crate::plan::cut::engine::meter::Meter;
use crate::plan::cut::engine::one::{Found, Job};
use crate::plan::cut::engine::raster::Raster;
use crate::plan::cut::engine::rough;
use crate::plan::cut::engine::ruin;
use crate::plan::cut::engine::sketch::Sheet;
use crate::plan::cut::engine::ways;
use crate::plan::cut::{Bound, How, Tree};

/// Steps for looking at kits with little waste.
const LARGE: u64 = 40_000_000;
/// Steps for the linear programme with proper ways, and for fixing way by way.
const PROPER: u64 = 30_000_000;
const DIVE: u64 = 10_000_000;
/// Steps for building one sheet up from all parts.
const BUILD: u64 = 10_000_000;
/// Steps for one attempt at putting parts in again.
const RUIN: u64 = 400_000;

/// A plan and a bound that come nearer to each other.
pub(super) struct Search<'a> {
    /// What is wanted.
    pub(super) job: &'a Job,
    /// The same in search units.
    pub(super) board: Board,
    /// The least side of an offcut in 1/14400 mm.
    pub(super) least: i64,
    /// What is known about the fewest sheets.
    pub(super) bound: Bound,
    /// The best plan so far.
    pub(super) plan: Plan,
}

impl Search<'_> {
    /// Whether no plan takes fewer sheets.
    pub(super) fn proven(&self) -> bool {
        columns::sheets(&self.plan) <= self.bound.sheets
    }

    /// Takes over a higher bound.
    pub(super) fn raise(&mut self, sheets: u32, how: How) {
        if self.bound.sheets < sheets {
            self.bound = Bound { sheets, how };
        }
    }

    /// Takes over a plan with fewer sheets.
    pub(super) fn improve(&mut self, plan: Option<Plan>) {
        if let Some(plan) = plan
            && columns::sheets(&plan) < columns::sheets(&self.plan)
        {
            self.plan = plan;
        }
    }

    /// Looks at all smaller kits, if that takes at most so many steps.
    pub(super) fn all_kits(&mut self, most: u64, meter: &mut Meter) -> Option<Found> {
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
    pub(super) fn settle(&mut self, meter: &mut Meter) {
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
    pub(super) fn one_sheet(&mut self, meter: &mut Meter) {
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
    pub(super) fn shake(&mut self, steps: u64, meter: &mut Meter) {
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
    pub(super) fn many(&mut self, meter: &mut Meter) {
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
        let rules = rough::rules(self.job, &self.board);
        let quick = greedy::plan(&rules, left, most, meter);
        if columns::sheets(&quick) <= most {
            return Some(quick);
        }
        if self.board.stages.is_some() {
            return None;
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
    pub(super) fn finish(&self, peeled: bool) -> Found {
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
