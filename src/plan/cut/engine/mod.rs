//! Finds the cuts: fewest sheets first, then the largest offcut, then few cuts.
//!
//! Two exact methods that share no search code stand side by side: the [`frontier`]
//! answers for all smaller kits at once what the narrowest sheet is, and
//! [`buildup`] joins rectangles best-first under the bounds of [`dp`] and
//! [`multipliers`]. For many sheets [`columns`] has a linear programme; [`greedy`]
//! and [`ruin`] find plans that the others prove. [`one`] says in which order they
//! are asked for one size of sheet, [`stock`] for several, and [`keep`] looks for
//! the offcut.
//!
//! All lengths in the search are whole numbers. Work is counted in steps
//! ([`meter`]), never in time.

mod all_in;
mod bin;
mod board;
mod buildup;
mod columns;
mod counts;
mod dp;
mod few_cuts;
mod few_turns;
mod fewest;
mod frontier;
mod greedy;
mod keep;
mod kits;
pub mod knapsack;
mod lane;
mod layered;
mod meter;
mod multipliers;
mod nearer;
mod one;
mod packed;
mod peel;
mod raster;
mod rough;
mod ruin;
mod simplex;
mod sketch;
mod spare;
mod stock;
mod unfold;
mod ways;

use crate::geom::{Length, Size};
use crate::plan::cut::Tree;
use crate::plan::cut::engine::meter::Meter;
use crate::plan::cut::engine::one::Job;

/// Nothing longer than this is cut: some 76 kilometres, in 1/14400 mm.
const LONGEST: i64 = 1 << 40;

/// Steps that are worth spending on one paper: a few seconds at most.
pub const BUDGET: u64 = 200_000_000;

/// Rectangles to be cut from sheets by cuts that run from edge to edge.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Problem {
    /// The sheets there are. As little paper as possible is bought (by area, of the
    /// sizes without [`SheetKind::at_hand`]); then as few sheets as possible are
    /// taken from what is at hand.
    pub sheets: Vec<SheetKind>,
    /// What is wanted, at most one row for each size and turning.
    pub kinds: Vec<Kind>,
    /// What the cuts must keep to.
    pub limits: Limits,
}

/// A size of sheet.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct SheetKind {
    /// Width × height.
    pub size: Size,
    /// No more than so many are at hand; `None` if more can be had.
    pub at_hand: Option<u32>,
}

/// A kind of rectangle that is wanted.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Kind {
    /// Width × height.
    pub size: Size,
    /// Whether it may be turned by a quarter.
    pub free: bool,
    /// How many; at least 1.
    pub count: u32,
}

/// What the cuts must keep to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Limits {
    /// At most so many runs of cuts in one direction from the sheet to a part (2 or
    /// 3), or any number. A last cut that only frees a part from what is left over
    /// is not counted. Fewer than 2 count as 2.
    pub stages: Option<u8>,
    /// The longest cut that the trimmer makes, or any.
    pub longest_cut: Option<Length>,
    /// A sheet whose shorter side is below this is waste, not an offcut.
    pub least_offcut: Length,
    /// Search steps that may be spent in all.
    pub budget: u64,
}

/// A plan for a [`Problem`], or what is known without one.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Solution {
    /// Ways to cut a sheet: index of the sheet kind, the cuts, how many sheets.
    /// Trees name parts by their index in `kinds`, and are not deep: at most some
    /// dozens of cuts between a sheet and a part. Empty if what is at hand is not
    /// enough (if that is `proven`) or no plan was found.
    pub patterns: Vec<(usize, Tree, u32)>,
    /// What is known about the fewest sheets; with several sizes, about those that
    /// have to be bought.
    pub bound: Bound,
    /// Whether no plan can do with fewer sheets (or buy less paper).
    pub proven: bool,
    /// The kept offcut: index of its pattern, its size, and whether no plan with
    /// so few sheets leaves a larger one.
    pub offcut: Option<(usize, Size, bool)>,
    /// Kinds of which none fits any sheet, by index. They are left out.
    pub too_large: Vec<usize>,
    /// Search steps spent; the same on every machine.
    pub spent: u64,
}

/// Plans the cutting.
///
/// The same problem gives the same plan on every machine: work is counted in
/// steps, and ties are broken by the order of `kinds`.
pub fn solve(problem: &Problem) -> Solution {
    let mut meter = Meter::new(problem.limits.budget);
    let usable: Vec<usize> = (0..problem.kinds.len())
        .filter(|&it| {
            0 < problem.kinds[it].count && cuttable(&problem.kinds[it], problem)
        })
        .collect();
    let too_large: Vec<usize> = (0..problem.kinds.len())
        .filter(|it| 0 < problem.kinds[*it].count && !usable.contains(it))
        .collect();
    let mut solution = Solution {
        patterns: Vec::new(),
        bound: Bound { sheets: 0, how: How::Area },
        proven: usable.is_empty(),
        offcut: None,
        too_large,
        spent: 0,
    };
    if usable.is_empty() {
        return solution;
    }
    let kinds: Vec<Kind> = usable.iter().map(|&it| problem.kinds[it]).collect();
    let sheets: Vec<usize> = (0..problem.sheets.len())
        .filter(|&it| serves(&problem.sheets[it], &kinds, &problem.limits))
        .collect();
    let some: Vec<SheetKind> = sheets.iter().map(|&it| problem.sheets[it]).collect();
    let patterns: Vec<(usize, Tree, u32)> = match some.as_slice() {
        [SheetKind { size, at_hand: None }] => {
            let job = Job { sheet: *size, kinds, limits: problem.limits };
            let found = one::solve(&job, &mut meter);
            (solution.bound, solution.proven) = (found.bound, found.proven);
            solution.offcut = found.offcut;
            found.patterns.into_iter().map(|(tree, copies)| (0, tree, copies)).collect()
        }
        _ => {
            let found = stock::solve(&some, &kinds, &problem.limits, &mut meter);
            (solution.bound, solution.proven) = (found.bound, found.proven);
            let sizes: Vec<Size> =
                found.patterns.iter().map(|it| some[it.0].size).collect();
            let trees = found.patterns.iter().zip(sizes).map(|(it, size)| (&it.1, size));
            solution.offcut =
                ways::largest_offcut(trees).map(|(index, size)| (index, size, false));
            found.patterns
        }
    };
    solution.patterns = patterns
        .into_iter()
        .map(|(sheet, tree, copies)| {
            (sheets[sheet], ways::rename(&tree, &usable), copies)
        })
        .collect();
    solution.spent = meter.spent();
    solution
}

/// Whether a length can be reckoned with.
fn sane(size: Size) -> bool {
    let within = |length: Length| (1..=LONGEST).contains(&length.units());
    within(size.width) && within(size.height)
}

/// Whether some part can be cut from a sheet.
fn serves(sheet: &SheetKind, kinds: &[Kind], limits: &Limits) -> bool {
    sheet.at_hand != Some(0)
        && sane(sheet.size)
        && kinds
            .iter()
            .any(|it| sane(it.size) && !board::lies(it, sheet.size, limits).is_empty())
}

/// Whether a kind can be cut from some sheet.
fn cuttable(kind: &Kind, problem: &Problem) -> bool {
    problem
        .sheets
        .iter()
        .any(|it| serves(it, std::slice::from_ref(kind), &problem.limits))
}

/// What is known about the fewest sheets.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Bound {
    /// No plan can do with fewer sheets than this.
    pub sheets: u32,
    /// By which argument.
    pub how: How,
}

/// By which argument a number of sheets is known to be needed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum How {
    /// The pieces together have more area than fewer sheets.
    Area,
    /// Large pieces that can't share a sheet.
    Pairs,
    /// Every way to cut was searched.
    Search,
    /// A weighting of the pieces (linear programming bound).
    Weights,
}
