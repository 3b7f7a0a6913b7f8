//! Several sizes of sheet, some of which are at hand in small numbers.
//!
//! First as little paper as possible is bought (by area), then as few sheets as
//! possible are taken from what is at hand. A small kit is settled by looking at
//! all smaller kits for every size; a large one is planned size by size.

use crate::geom::Size;
use crate::plan::cut::engine::board::{self, Board};
use crate::plan::cut::engine::counts::{Counts, Parts};
use crate::plan::cut::engine::kits::{self, Kits};
use crate::plan::cut::engine::knapsack;
use crate::plan::cut::engine::meter::Meter;
use crate::plan::cut::engine::one::{self, Job};
use crate::plan::cut::engine::raster::Raster;
use crate::plan::cut::engine::sketch::Sheet;
use crate::plan::cut::engine::ways::{self, Ways};
use crate::plan::cut::{Bound, How, Kind, Limits, SheetKind, Tree};

/// Steps for looking at all smaller kits of every size.
const SMALL: u64 = 4_000_000;
/// Steps for filling one sheet at hand.
const FILL: u64 = 2_000_000;
/// Sheets at hand that are looked at one by one.
const MOST_AT_HAND: u32 = 24;

/// A plan for several sizes of sheet: size by index, cuts, how many.
pub(super) struct Stocked {
    /// Ways to cut a sheet.
    pub(super) patterns: Ways,
    /// What is known about the fewest sheets to be bought.
    pub(super) bound: Bound,
    /// No plan buys less, or there is none at all if there are no patterns.
    pub(super) proven: bool,
}

/// Plans the cutting from several sizes of sheet.
pub(super) fn solve(
    sheets: &[SheetKind],
    kinds: &[Kind],
    limits: &Limits,
    meter: &mut Meter,
) -> Stocked {
    small(sheets, kinds, limits, meter)
        .unwrap_or_else(|| large(sheets, kinds, limits, meter))
}

fn search_bound(sheets: u32) -> Bound {
    Bound { sheets, how: How::Search }
}

/// The sheets at hand, one entry for each, no more than there are parts.
fn at_hand(sheets: &[SheetKind], kinds: &[Kind]) -> Vec<usize> {
    let parts = kinds.iter().fold(0_u32, |sum, it| sum.saturating_add(it.count));
    let mut each = Vec::new();
    for (index, sheet) in sheets.iter().enumerate() {
        let number = sheet.at_hand.unwrap_or(0).min(parts).min(MOST_AT_HAND);
        each.extend(std::iter::repeat_n(index, number as usize));
    }
    // Large ones first; equal ones in the order given.
    each.sort_by_key(|&it| std::cmp::Reverse(sheets[it].size.area()));
    each.truncate(MOST_AT_HAND as usize);
    each
}

/// Every division of every smaller kit among all sizes.
fn small(
    sheets: &[SheetKind],
    kinds: &[Kind],
    limits: &Limits,
    meter: &mut Meter,
) -> Option<Stocked> {
    if limits.stages.is_some() {
        return None;
    }
    let wanted: Vec<u32> = kinds.iter().map(|it| it.count).collect();
    let counts = kits::count(&wanted)?;
    let boards: Vec<Board> =
        sheets.iter().map(|it| Board::new(it.size, kinds, &wanted, limits)).collect();
    let most = SMALL / u64::try_from(sheets.len()).ok()?;
    let tables: Vec<Box<dyn Kits>> = boards
        .iter()
        .map(|it| kits::look_at_all(it, &counts, most, meter))
        .collect::<Option<_>>()?;
    let each = at_hand(sheets, kinds);
    let truncated = sheets.iter().filter_map(|it| it.at_hand).any(|it| MOST_AT_HAND < it);
    let splits: u64 = split_work(&counts);
    let rounds = u64::try_from(each.len()).ok()? + u64::try_from(sheets.len()).ok()?;
    if !meter.spend(splits.saturating_mul(rounds) / 32 + 1) {
        return None;
    }
    let bought = buy(sheets, &counts, &tables);
    let used = take(&counts, &tables, &each);
    let all = counts.all();
    let last = used.last()?;
    let cheapest = (0..=all)
        .filter(|&kit| last[kit] != u8::MAX && bought[all - kit].0.0 != i128::MAX)
        .min_by_key(|&kit| (bought[all - kit].0, last[kit], kit));
    let Some(kit) = cheapest else {
        let bound = search_bound(0);
        return Some(Stocked { patterns: Vec::new(), bound, proven: !truncated });
    };
    let mut plan: Vec<(usize, usize)> = Vec::new();
    let mut left = kit;
    for (place, &sheet) in each.iter().enumerate().rev() {
        if used[place][left] == used[place + 1][left] {
            continue;
        }
        let vector = counts.vector(left);
        let part = Parts::new(&counts, &vector).find(|&part| {
            tables[sheet].fits(part)
                && used[place][left - part].saturating_add(1) == used[place + 1][left]
        })?;
        plan.push((sheet, part));
        left -= part;
    }
    let mut left = all - kit;
    let mut number = 0;
    while left != 0 {
        let (_, sheet, part) = bought[left];
        plan.push((sheet, part));
        left -= part;
        number += 1;
    }
    let patterns = plan
        .into_iter()
        .map(|(sheet, kit)| {
            let drawn = tables[sheet]
                .largest_offcut(&[kit], limits.least_offcut.units(), 0, meter)
                .flatten()
                .map_or_else(|| tables[sheet].draw(kit), |it| it.1);
            (sheet, tree(&drawn, sheets[sheet].size, limits), 1)
        })
        .collect();
    let proven = !truncated || number == 0;
    let bound = search_bound(if proven { number } else { 0 });
    Some(Stocked { patterns: ways::gather(patterns), bound, proven })
}

/// The steps to look at every division of every smaller kit.
fn split_work(counts: &Counts) -> u64 {
    let mut vector = counts.vector(0);
    let mut work = 0_u64;
    for _ in 0..counts.len() {
        work = work.saturating_add(Counts::splits(&vector));
        counts.step(&mut vector);
    }
    work
}

/// For each kit the least area to buy (of equal areas the fewest sheets), and the
/// last sheet with its parts.
fn buy(
    sheets: &[SheetKind],
    counts: &Counts,
    tables: &[Box<dyn Kits>],
) -> Vec<((i128, u32), usize, usize)> {
    let mut best = vec![((i128::MAX, 0), 0, 0); counts.len()];
    best[0].0 = (0, 0);
    let mut vector = counts.vector(0);
    for kit in 1..counts.len() {
        counts.step(&mut vector);
        let lowest = vector.iter().position(|&it| 0 < it).expect("not the empty kit");
        let one = counts.weights()[lowest];
        let mut rest = vector.clone();
        rest[lowest] -= 1;
        for part in std::iter::once(0).chain(Parts::new(counts, &rest)) {
            let (before, number) = best[kit - one - part].0;
            if before == i128::MAX {
                continue;
            }
            for (index, (sheet, table)) in sheets.iter().zip(tables).enumerate() {
                let area = (before.saturating_add(sheet.size.area()), number + 1);
                if sheet.at_hand.is_none() && area < best[kit].0 && table.fits(part + one)
                {
                    best[kit] = (area, index, part + one);
                }
            }
        }
    }
    best
}

/// For each number of sheets at hand that are looked at, and each kit, the fewest
/// of them that it takes; `u8::MAX` if they don't do.
fn take(counts: &Counts, tables: &[Box<dyn Kits>], each: &[usize]) -> Vec<Vec<u8>> {
    let mut used = vec![vec![u8::MAX; counts.len()]];
    used[0][0] = 0;
    for &sheet in each {
        let before = used.last().expect("the start is there");
        let mut after = before.clone();
        let mut vector = counts.vector(0);
        for kit in 1..counts.len() {
            counts.step(&mut vector);
            for part in Parts::new(counts, &vector) {
                let more = before[kit - part].saturating_add(1);
                if more < after[kit] && tables[sheet].fits(part) {
                    after[kit] = more;
                }
            }
        }
        used.push(after);
    }
    used
}

/// The finished cuts of a sheet.
fn tree(sheet: &Sheet, size: Size, limits: &Limits) -> Tree {
    let real = (size.width.units(), size.height.units());
    sheet.sketch.tree(sheet.root, real, limits.least_offcut.units())
}

/// Size by size: sheets at hand are filled as well as can be, what is left is
/// bought; a sheet at hand that saves nothing is put back.
fn large(
    sheets: &[SheetKind],
    kinds: &[Kind],
    limits: &Limits,
    meter: &mut Meter,
) -> Stocked {
    let each = at_hand(sheets, kinds);
    let mut best = attempt(sheets, kinds, limits, &[], meter);
    let mut hand = each.clone();
    let full = attempt(sheets, kinds, limits, &hand, meter);
    if full.0 < best.0 {
        best = full;
        // The smallest are put back first.
        for place in (0..hand.len()).rev().take(8) {
            let mut fewer = hand.clone();
            fewer.remove(place);
            let without = attempt(sheets, kinds, limits, &fewer, meter);
            if without.0 <= best.0 {
                (hand, best) = (fewer, without);
            }
        }
    }
    let (cost, patterns) = best;
    let bought = |it: &&(usize, Tree, u32)| sheets[it.0].at_hand.is_none();
    let number =
        patterns.iter().filter(bought).fold(0_u32, |sum, it| sum.saturating_add(it.2));
    let bound = Bound { sheets: area_bound(sheets, kinds), how: How::Area };
    let one_size = sheets.iter().filter(|it| it.at_hand.is_none()).count() == 1;
    let proven =
        !patterns.is_empty() && (cost == 0 || one_size && number <= bound.sheets);
    Stocked { patterns: ways::gather(patterns), bound, proven }
}

/// The fewest sheets to buy by area, if all that is at hand were filled.
fn area_bound(sheets: &[SheetKind], kinds: &[Kind]) -> u32 {
    let parts = kinds
        .iter()
        .map(|it| it.size.area().saturating_mul(i128::from(it.count)))
        .fold(0, i128::saturating_add);
    let hand = sheets
        .iter()
        .map(|it| it.size.area().saturating_mul(i128::from(it.at_hand.unwrap_or(0))))
        .fold(0, i128::saturating_add);
    let largest =
        sheets.iter().filter(|it| it.at_hand.is_none()).map(|it| it.size.area()).max();
    let Some(largest) = largest.filter(|it| 0 < *it) else { return 0 };
    let left = parts.saturating_sub(hand).max(0);
    u32::try_from(left / largest + i128::from(left % largest != 0)).unwrap_or(u32::MAX)
}

/// A plan that may use the given sheets at hand: the area bought and the patterns.
/// No patterns and a boundless area if that is not enough.
fn attempt(
    sheets: &[SheetKind],
    kinds: &[Kind],
    limits: &Limits,
    hand: &[usize],
    meter: &mut Meter,
) -> (i128, Ways) {
    let mut left: Vec<u32> = kinds.iter().map(|it| it.count).collect();
    let mut patterns = Vec::new();
    for &sheet in hand {
        if let Some(filled) = fill(sheets[sheet].size, kinds, &left, limits, meter) {
            for (left, &holds) in left.iter_mut().zip(&filled.holds) {
                *left -= holds;
            }
            patterns.push((sheet, tree(&filled, sheets[sheet].size, limits), 1));
        }
    }
    let mut sizes: Vec<usize> =
        (0..sheets.len()).filter(|&it| sheets[it].at_hand.is_none()).collect();
    sizes.sort_by_key(|&it| sheets[it].size.area());
    // One size for as much as can be: the one that all parts fit, else each part
    // from the smallest that it fits.
    let fits = |sheet: usize, kind: usize| {
        !board::lies(&kinds[kind], sheets[sheet].size, limits).is_empty()
    };
    let open = |left: &[u32]| -> Vec<usize> {
        (0..left.len()).filter(|&it| 0 < left[it]).collect()
    };
    let mut best: Option<(i128, Ways)> = None;
    for &main in &sizes {
        let mut bought = 0_i128;
        let mut ways = Vec::new();
        let mut rest = left.clone();
        for &sheet in std::iter::once(&main).chain(&sizes) {
            let mine: Vec<usize> =
                open(&rest).into_iter().filter(|&it| fits(sheet, it)).collect();
            if mine.is_empty() {
                continue;
            }
            let some =
                mine.iter().map(|&it| Kind { count: rest[it], ..kinds[it] }).collect();
            let job = Job { sheet: sheets[sheet].size, kinds: some, limits: *limits };
            let found = one::solve(&job, meter);
            for (tree, copies) in found.patterns {
                bought = bought
                    .saturating_add(job.sheet.area().saturating_mul(i128::from(copies)));
                ways.push((sheet, ways::rename(&tree, &mine), copies));
            }
            for kind in mine {
                rest[kind] = 0;
            }
        }
        if open(&rest).is_empty() && best.as_ref().is_none_or(|it| bought < it.0) {
            best = Some((bought, ways));
        }
    }
    match best {
        Some((bought, ways)) => {
            patterns.extend(ways);
            (bought, patterns)
        }
        None if open(&left).is_empty() => (0, patterns),
        None => (i128::MAX, Vec::new()),
    }
}

/// One sheet with as much area of what is left as can be found.
fn fill(
    size: Size,
    kinds: &[Kind],
    left: &[u32],
    limits: &Limits,
    meter: &mut Meter,
) -> Option<Sheet> {
    let mut board = Board::new(size, kinds, left, limits);
    for (lies, &left) in board.lies.iter_mut().zip(left) {
        if left == 0 {
            lies.clear();
        }
    }
    let raster = Raster::new(&board)?;
    let values: Vec<i64> = board
        .lies
        .iter()
        .map(|lies| {
            lies.first().map_or(0, |it| i64::try_from(it.area()).unwrap_or(i64::MAX))
        })
        .collect();
    let mut share = Meter::new(meter.left().min(FILL));
    let found = knapsack::best(&board, &raster, &values, 0, &mut share);
    meter.add(share);
    Some(found?.drawn?.sheet)
}
