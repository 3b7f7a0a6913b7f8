//! Many sheets: ways to cut one, and how often to use each.
//!
//! P. C. Gilmore and R. E. Gomory's column generation (1961, 1965): a linear
//! programme says what a part of each kind is worth, the recursion of [`dp`] finds
//! the sheet that is worth most, and that becomes a new way to cut. Whenever the
//! best sheet is worth `g`, the wanted parts together divided by `g` are a lower
//! bound on the number of sheets (A. A. Farley, 1990); it is computed in whole
//! numbers. The fractions are rounded in several ways and the rest is planned as a
//! small problem of its own.

use crate::plan::cut::engine::board::Board;
use crate::plan::cut::engine::dp::{self, Table, Valued};
use crate::plan::cut::engine::knapsack;
use crate::plan::cut::engine::layered::Layered;
use crate::plan::cut::engine::meter::Meter;
use crate::plan::cut::engine::raster::Raster;
use crate::plan::cut::engine::simplex::Master;
use crate::plan::cut::engine::sketch::Sheet;

/// More kinds than this are not planned with a linear programme.
pub(super) const MOST_KINDS: usize = 120;
/// Ways to cut that are made at most.
const MOST_WAYS: usize = 600;
/// Weights are scaled to whole numbers so that a sheet is worth about this much.
const SHEET: i64 = 1 << 22;

/// A plan as sheets and how often each is cut.
pub(super) type Plan = Vec<(Sheet, u32)>;

/// How many sheets a plan takes.
pub(super) fn sheets(plan: &Plan) -> u32 {
    plan.iter().fold(0, |sum: u32, it| sum.saturating_add(it.1))
}

/// Ways to cut a sheet with their use in a fractional plan.
pub(super) struct Relaxed {
    /// The ways.
    pub(super) ways: Vec<Sheet>,
    /// How often each is used.
    pub(super) uses: Vec<f64>,
    /// No plan takes fewer sheets.
    pub(super) bound: u32,
}

/// Solves the fractional problem. `seeds` are sheets that are known; `enough` is
/// a number of sheets that is reached, so that a bound as high ends the work.
pub(super) fn relax(
    board: &Board,
    raster: &Raster,
    seeds: &[Sheet],
    enough: u32,
    meter: &mut Meter,
) -> Option<Relaxed> {
    let n = board.wanted.len();
    if MOST_KINDS < n {
        return None;
    }
    let mut ways: Vec<Sheet> = (0..n).map(|kind| alone(board, kind)).collect();
    let mut master = Master::new(&board.wanted, &vec![1; n]);
    for seed in seeds {
        if ways.iter().all(|it| it.holds != seed.holds) {
            master.add(seed.holds.clone());
            ways.push(seed.clone());
        }
    }
    let mut bound = 0;
    while ways.len() < MOST_WAYS {
        let pivots = master.improve();
        let weights = whole_weights(board, &master.weights());
        let parts = dp::valued(&board.lies, &weights.0);
        let best = Best::new(board, raster, &parts);
        if !meter.spend(best.work() + u64::from(pivots) * (n * n) as u64 / 64 + 1) {
            break;
        }
        let most = best.value();
        bound = bound.max(farley(&board.wanted, &weights.0, most));
        if enough <= bound || most <= weights.1 + (weights.1 >> 18) {
            break;
        }
        let (sheet, holds) = best.draw(board);
        if master.ways.contains(&holds) {
            break;
        }
        ways.push(sheet);
        master.add(holds);
    }
    let uses = master.uses();
    Some(Relaxed { ways, uses, bound })
}

/// Sharpens the bound and the ways: no way may hold more of a kind than is wanted
/// in all. Worth its price where a sheet could hold more than that.
pub(super) fn relax_properly(
    board: &Board,
    raster: &Raster,
    relaxed: &mut Relaxed,
    enough: u32,
    meter: &mut Meter,
) {
    let n = board.wanted.len();
    let mut master = Master::new(&board.wanted, &vec![1; n]);
    for way in &relaxed.ways[n..] {
        master.add(way.holds.clone());
    }
    while relaxed.ways.len() < MOST_WAYS {
        master.improve();
        let (weights, sheet) = whole_weights(board, &master.weights());
        let values: Vec<i64> = weights.iter().map(|&it| i64::from(it) >> 4).collect();
        let sheet = sheet >> 4;
        let beat = sheet + (sheet >> 15);
        let Some(found) = knapsack::best(board, raster, &values, beat, meter) else {
            break;
        };
        let small: Vec<i32> =
            values.iter().map(|&it| i32::try_from(it).unwrap_or(i32::MAX)).collect();
        let bound = farley(&board.wanted, &small, found.bound);
        relaxed.bound = relaxed.bound.max(bound);
        let Some(drawn) = found.drawn else { break };
        if enough <= relaxed.bound || master.ways.contains(&drawn.sheet.holds) {
            break;
        }
        master.add(drawn.sheet.holds.clone());
        relaxed.ways.push(drawn.sheet);
    }
    relaxed.uses = master.uses();
}

/// A sheet with one part of a kind.
fn alone(board: &Board, kind: usize) -> Sheet {
    let mut sheet = Sheet::empty(board.wanted.len());
    sheet.holds[kind] = 1;
    let lie = board.lies[kind][0];
    let lies = (lie.width * board.unit.0, lie.height * board.unit.1);
    let level = board.real().0 <= board.longest;
    sheet.sketch.place(sheet.root, board.real(), (kind, lie.turned), lies, level);
    sheet
}

/// Weights as whole numbers, and what a sheet is then worth.
fn whole_weights(board: &Board, weights: &[f64]) -> (Vec<i32>, i64) {
    let mut sheet = SHEET;
    let dense = |sheet: i64| {
        board.lies.iter().zip(weights).any(|(lies, weight)| {
            let fits = board.area() / lies[0].area().max(1) + 1;
            (1_i64 << 29) as f64 <= fits as f64 * weight * sheet as f64
        })
    };
    while 1 < sheet && dense(sheet) {
        sheet /= 2;
    }
    let whole = |weight: &f64| {
        #[expect(clippy::cast_possible_truncation, reason = "scaled to stay below 2^29")]
        let whole = (weight.max(0.0) * sheet as f64) as i32;
        whole
    };
    (weights.iter().map(whole).collect(), sheet)
}

/// What is wanted, divided by what a sheet holds at most, rounded up.
fn farley(wanted: &[u32], weights: &[i32], best: i64) -> u32 {
    let total: i128 =
        wanted.iter().zip(weights).map(|(&n, &it)| i128::from(n) * i128::from(it)).sum();
    let best = i128::from(best.max(1));
    u32::try_from((total + best - 1) / best).unwrap_or(u32::MAX)
}

/// Whole plans from the fractional one: ways are used as often as their fraction
/// says, rounded up from each of several thresholds on; `finish` plans the rest
/// with at most so many sheets. The best plan below `most` sheets, if any.
pub(super) fn round(
    relaxed: &Relaxed,
    wanted: &[u32],
    most: u32,
    enough: u32,
    finish: &mut dyn FnMut(&[u32], u32) -> Option<Plan>,
) -> Option<Plan> {
    let mut best: Option<Plan> = None;
    let mut most = most;
    let mut tried: Vec<Vec<u32>> = Vec::new();
    for threshold in [1.0, 0.8, 0.65, 0.5, 0.35, 0.2, 0.05] {
        let mut left = wanted.to_vec();
        let mut order: Vec<usize> = (0..relaxed.ways.len()).collect();
        let fraction = |way: usize| relaxed.uses[way] - relaxed.uses[way].floor();
        order.sort_by(|&a, &b| fraction(b).total_cmp(&fraction(a)));
        let mut plan = Plan::new();
        for way in order {
            #[expect(clippy::cast_possible_truncation, reason = "no more than is wanted")]
            #[expect(clippy::cast_sign_loss, reason = "uses are not negative")]
            let copies = (relaxed.uses[way] + 1.0 - threshold + 1e-6).floor() as u32;
            use_way(&relaxed.ways[way], copies, &mut left, &mut plan);
        }
        if tried.contains(&left) {
            continue;
        }
        tried.push(left.clone());
        let used = sheets(&plan);
        if most <= used {
            continue;
        }
        if left.iter().any(|&it| 0 < it) {
            let Some(rest) = finish(&left, most - 1 - used) else { continue };
            plan.extend(rest);
        }
        most = sheets(&plan);
        best = Some(plan);
        if most <= enough {
            break;
        }
    }
    best
}

/// Uses a way so often, but makes no more of any kind than is left to make.
pub(super) fn use_way(way: &Sheet, copies: u32, left: &mut [u32], plan: &mut Plan) {
    let mut copies = copies;
    while 0 < copies {
        let sheet = way.at_most(left);
        let times = sheet
            .holds
            .iter()
            .zip(&*left)
            .filter(|(holds, _)| 0 < **holds)
            .map(|(&holds, &left)| left / holds)
            .min();
        let Some(times) = times else { return };
        let times = times.min(copies);
        for (left, &holds) in left.iter_mut().zip(&sheet.holds) {
            *left -= holds * times;
        }
        plan.push((sheet, times));
        copies -= times;
    }
}

/// Fixes one way after the other: the one with the largest use is cut as often as
/// its whole part says, at least once, and the fractions are computed anew for
/// what is left. `None` if more than `most` sheets are needed.
pub(super) fn dive(
    board: &Board,
    raster: &Raster,
    relaxed: &Relaxed,
    most: u32,
    finish: &mut dyn FnMut(&[u32], u32) -> Option<Plan>,
    meter: &mut Meter,
) -> Option<Plan> {
    let mut left = board.wanted.clone();
    let mut plan = Plan::new();
    let mut ways = relaxed.ways.clone();
    let mut uses = relaxed.uses.clone();
    loop {
        let way = (0..ways.len()).reduce(|a, b| if uses[a] < uses[b] { b } else { a })?;
        #[expect(clippy::cast_possible_truncation, reason = "no more than is wanted")]
        #[expect(clippy::cast_sign_loss, reason = "uses are not negative")]
        let copies = (uses[way] + 1e-6).floor().max(1.0) as u32;
        use_way(&ways[way], copies, &mut left, &mut plan);
        let used = sheets(&plan);
        if most < used {
            return None;
        }
        if left.iter().all(|&it| it == 0) {
            return Some(plan);
        }
        let kinds = left.iter().filter(|&&it| 0 < it).count();
        let pieces = left.iter().fold(0, |sum: u32, &it| sum.saturating_add(it));
        if (kinds < 4 || pieces < 24)
            && let Some(rest) = finish(&left, most - used)
        {
            plan.extend(rest);
            return Some(plan);
        }
        let mut rest = board.clone();
        rest.wanted = left.iter().map(|&it| it.max(1)).collect();
        let seeds: Vec<Sheet> = ways.iter().map(|it| it.at_most(&left)).collect();
        let mut next = relax_part(&rest, &left, raster, &seeds, meter)?;
        if most < used + next.bound {
            return None;
        }
        std::mem::swap(&mut ways, &mut next.ways);
        uses = next.uses;
    }
}

/// The fractional problem for what is left; kinds that are done weigh nothing.
fn relax_part(
    board: &Board,
    left: &[u32],
    raster: &Raster,
    seeds: &[Sheet],
    meter: &mut Meter,
) -> Option<Relaxed> {
    let open: Vec<usize> = (0..left.len()).filter(|&it| 0 < left[it]).collect();
    let pick = |all: &[u32]| open.iter().map(|&it| all[it]).collect::<Vec<u32>>();
    let mut small = board.clone();
    small.lies = open.iter().map(|&it| board.lies[it].clone()).collect();
    small.wanted = pick(left);
    let mut ways: Vec<Sheet> = open.iter().map(|&it| alone(board, it)).collect();
    let mut master = Master::new(&small.wanted, &vec![1; open.len()]);
    for seed in seeds {
        let holds = pick(&seed.holds);
        if holds.iter().any(|&it| 0 < it) && !master.ways.contains(&holds) {
            master.add(holds);
            ways.push(seed.clone());
        }
    }
    let mut bound = 0;
    for _ in 0..8 + open.len() * 2 {
        master.improve();
        let (weights, sheet) = whole_weights(&small, &master.weights());
        let mut all = vec![0; left.len()];
        for (&kind, &weight) in open.iter().zip(&weights) {
            all[kind] = weight;
        }
        let parts = dp::valued(&board.lies, &all);
        let mut limited = board.clone();
        limited.wanted = left.to_vec();
        let best = Best::new(&limited, raster, &parts);
        if !meter.spend(best.work() + 1) {
            return None;
        }
        let most = best.value();
        bound = bound.max(farley(&small.wanted, &weights, most));
        if most <= sheet + (sheet >> 18) {
            break;
        }
        let drawn = best.draw(&limited).0;
        let holds = pick(&drawn.holds);
        if master.ways.contains(&holds) {
            break;
        }
        master.add(holds);
        ways.push(drawn);
    }
    let uses = master.uses();
    Some(Relaxed { ways, uses, bound })
}

/// A sheet of the most value, whatever the counts: with any number of turns of the
/// paper, or with few.
enum Best<'a> {
    Any { raster: &'a Raster, parts: &'a [Valued], table: Table, reach: (i64, i64) },
    Few(Layered<'a>),
}

impl<'a> Best<'a> {
    fn new(board: &'a Board, raster: &'a Raster, parts: &'a [Valued]) -> Self {
        if let Some(stages) = board.stages {
            return Self::Few(Layered::new(board, raster, parts, stages));
        }
        let reach = board.reach();
        Self::Any { raster, parts, table: dp::inside(raster, parts, reach), reach }
    }

    fn work(&self) -> u64 {
        match self {
            Self::Any { table, .. } => table.work,
            Self::Few(layered) => layered.work,
        }
    }

    fn value(&self) -> i64 {
        match self {
            Self::Any { raster, table, .. } => {
                i64::from(table.get(raster.x.len() - 1, raster.y.len() - 1))
            }
            Self::Few(layered) => layered.best(),
        }
    }

    /// The sheet with no more of a kind than wanted, and all that it would hold.
    fn draw(&self, board: &Board) -> (Sheet, Vec<u32>) {
        match self {
            Self::Any { raster, parts, table, reach } => {
                let kinds = board.wanted.len();
                let holds = dp::filling(raster, parts, table, *reach, kinds);
                (knapsack::draw_inside(board, raster, parts, table), holds)
            }
            Self::Few(layered) => layered.draw(),
        }
    }
}

#[cfg(test)]
mod tests;
