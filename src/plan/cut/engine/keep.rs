//! The offcut: as large as can be while the number of sheets stays the fewest.

use std::cmp::Reverse;

use crate::geom::{Length, Size};
use crate::plan::cut::engine::board::Board;
use crate::plan::cut::engine::columns::{self, Plan};
use crate::plan::cut::engine::counts::Counts;
use crate::plan::cut::engine::fewest::Fewest;
use crate::plan::cut::engine::kits;
use crate::plan::cut::engine::meter::Meter;
use crate::plan::cut::engine::ruin;
use crate::plan::cut::engine::sketch::Sheet;
use crate::plan::cut::engine::ways;

/// Kits that would take more steps than this are not begun.
const MOST_WORK: u64 = 32_000_000;
/// Steps for one attempt at a smaller sheet.
const ATTEMPT: u64 = 6_000;
/// Steps for cutting one sheet better, and for all sheets.
const POLISH_ONE: u64 = 20_000;
const POLISH: u64 = 300_000;
/// Plans with more sheets are not searched for the largest offcut.
const MOST_SHEETS: u32 = 3;

/// The search for the largest offcut of all plans with as many sheets as one has, the
/// fewest. It can be taken up again where steps ran out.
///
/// What all sheets waste beside the offcut also limits what any rectangle may
/// waste, and few smaller kits pass that. The limit grows until an offcut is
/// found, which then is the largest.
pub(super) struct Largest<'a> {
    board: &'a Board,
    counts: Counts,
    sheets: u32,
    least: i64,
    /// The waste beside the offcut that is asked for next, in square 1/14400 mm.
    slack: i128,
}

impl<'a> Largest<'a> {
    /// Begins the search, unless there are too many smaller kits.
    pub(super) fn new(board: &'a Board, plan: &Plan, least: i64) -> Option<Self> {
        let sheets = columns::sheets(plan);
        if MOST_SHEETS < sheets {
            return None;
        }
        let counts = kits::count(&board.wanted)?;
        if !kits::within(board, &counts, MOST_WORK) {
            return None;
        }
        let slack = board.real_area() / 64;
        Some(Self { board, counts, sheets, least, slack })
    }

    /// The outer `None` means that steps ran out; the inner one that no offcut is
    /// larger than `now` (square 1/14400 mm), the largest that is known.
    pub(super) fn search(
        &mut self,
        now: i128,
        meter: &mut Meter,
    ) -> Option<Option<Plan>> {
        let Self { board, counts, sheets, least, slack } = self;
        let unit = i128::from(board.unit.0) * i128::from(board.unit.1);
        let sheet = board.real_area();
        let free = i128::from(*sheets) * sheet - board.parts_area() * unit;
        loop {
            let floor = (free - *slack).max(now).min(sheet);
            let waste = (free - floor) / unit;
            let kits = kits::look_at_tight(board, counts, waste, meter)?;
            let fits = (0..counts.len()).map(|it| kits.fits(it)).collect();
            let fewest = Fewest::known(counts, fits, *sheets, meter)?;
            let kept =
                kits.largest_offcut(&fewest.last_sheets(), *least, floor, meter)?;
            if let Some((kit, sheet)) = kept {
                let mut plan = vec![(sheet, 1)];
                let others = fewest.divide(counts.all() - kit, *sheets - 1);
                plan.extend(others.into_iter().map(|kit| (kits.draw(kit), 1)));
                return Some(Some(plan));
            }
            if floor <= now {
                return Some(None);
            }
            *slack *= 2;
        }
    }
}

/// Looks for a larger offcut along a side of the emptiest sheet, without proof:
/// its parts are put into a narrower and narrower sheet.
pub(super) fn larger(
    board: &Board,
    plan: &Plan,
    least: i64,
    now: i128,
    meter: &mut Meter,
) -> Option<Plan> {
    let area = |holds: &[u32]| -> i128 {
        holds.iter().zip(&board.lies).map(|(&n, it)| it[0].area() * i128::from(n)).sum()
    };
    let real = board.real();
    if real.0.min(real.1) < least {
        return None;
    }
    let emptiest = (0..plan.len()).min_by_key(|&it| area(&plan[it].0.holds))?;
    let mut part = board.clone();
    part.wanted.clone_from(&plan[emptiest].0.holds);
    // What `polish` finds out exactly is not tried before.
    let few = plan.len() as u64 <= POLISH / POLISH_ONE;
    let counts = if few { kits::count(&part.wanted) } else { None };
    if counts.is_some_and(|it| kits::within(&part, &it, POLISH_ONE)) {
        return None;
    }
    let needed = area(&part.wanted);
    let mut best = None;
    let mut most = now;
    for upright in [true, false] {
        if board.longest < if upright { real.1 } else { real.0 } {
            continue;
        }
        let whole = if upright { board.size.0 } else { board.size.1 };
        let other = if upright { board.size.1 } else { board.size.0 };
        // Everything fits the whole side, and nothing fits less than its area.
        let mut low = i64::try_from(needed / i128::from(other.max(1))).unwrap_or(whole);
        let mut high = whole;
        while low < high {
            let side = low + (high - low) / 2;
            if upright {
                (part.size.0, part.rest.0) = (side, 0);
            } else {
                (part.size.1, part.rest.1) = (side, 0);
            }
            let mut share = Meter::new(meter.left().min(ATTEMPT));
            let found = ruin::search(&part, 1, &mut share);
            meter.add(share);
            let Some(mut sheets) = found else {
                low = side + 1;
                continue;
            };
            high = side;
            let strip = if upright {
                (real.0 - side * board.unit.0, real.1)
            } else {
                (real.0, real.1 - side * board.unit.1)
            };
            let strip_area = i128::from(strip.0) * i128::from(strip.1);
            if most < strip_area && least <= strip.0.min(strip.1) {
                most = strip_area;
                let cut = sheets.pop()?;
                let at = (side * board.unit.0, side * board.unit.1);
                best = Some(cut.beside(upright, at, real));
            }
        }
        (part.size, part.rest) = (board.size, board.rest);
    }
    let sheet = best?;
    let mut plan = plan.clone();
    if plan[emptiest].1 == 1 {
        plan[emptiest].0 = sheet;
    } else {
        plan[emptiest].1 -= 1;
        plan.push((sheet, 1));
    }
    Some(plan)
}

/// Cuts each sheet of a plan anew, with the same parts on it: with a larger offcut,
/// or else with fewer cuts. Sheets with very many smaller kits stay as they are.
pub(super) fn polish(board: &Board, plan: Plan, least: i64, meter: &mut Meter) -> Plan {
    let mut share = Meter::new(meter.left().min(POLISH));
    let mut polished = Plan::new();
    for (sheet, copies) in plan {
        let better = cut_anew(board, &sheet, least, &mut share);
        polished.push((better.unwrap_or(sheet), copies));
    }
    meter.add(share);
    polished
}

/// The same parts cut better from a sheet, if that is easily found.
fn cut_anew(
    board: &Board,
    sheet: &Sheet,
    least: i64,
    meter: &mut Meter,
) -> Option<Sheet> {
    let mut part = board.clone();
    part.wanted.clone_from(&sheet.holds);
    let counts = kits::count(&part.wanted)?;
    let kits = kits::look_at_all(&part, &counts, POLISH_ONE, meter)?;
    let all = counts.all();
    let anew = match kits.largest_offcut(&[all], least, 0, meter)? {
        Some((_, sheet)) => sheet,
        None => kits.draw(all),
    };
    let real = board.real();
    let size = Size::new(Length::from_units(real.0), Length::from_units(real.1));
    let worth = |sheet: &Sheet| {
        let tree = sheet.sketch.tree(sheet.root, real, least);
        let offcut = ways::largest_offcut(std::iter::once((&tree, size)));
        (offcut.map_or(0, |it| it.1.area()), Reverse(tree.cuts()))
    };
    (worth(sheet) < worth(&anew)).then_some(anew)
}
