//! Every sheet cut the same way: more paper perhaps, but far fewer steps.

use crate::geom::Size;
use crate::plan::cut::look::look;
use crate::plan::cut::paper::{Bench, Known};
use crate::plan::cut::{Alike, PaperCut, Part, Pattern, ReplayFault, Toil};
use crate::project::StockSheet;

/// The share of the search steps of a paper that one number of kits may take.
const SHARE: u64 = 40;

/// Numbers of kits that are tried on one sheet.
const MOST_TRIES: usize = 12;

/// Looks for a plan that cuts every sheet alike, each into whole kits.
///
/// The plan with the fewest sheets comes back with the other beside it as figures,
/// or the other way round if that is wanted. Where there is no such plan, or all
/// sheets are cut alike as it is, the plan comes back as it was.
pub(crate) fn every_sheet_alike(
    bench: &Bench,
    best: PaperCut,
    wanted: bool,
) -> Result<PaperCut, ReplayFault> {
    if best.patterns.len() < 2 || bench.kits < 2 {
        return Ok(best);
    }
    let Some(sheet) = bench.sheets.first() else { return Ok(best) };
    let fewest = toil(&best);
    let Some(found) = most_kits_on_a_sheet(bench, sheet, fewest.sheets) else {
        return Ok(best);
    };
    let Found { each, sheets, pattern, spent } = found;
    let all = each.saturating_mul(sheets);
    let parts = parts_of(&bench.parts, all);
    let known = Known {
        bound: best.bound,
        proven: sheets <= best.bound.sheets,
        // With as few sheets as this, others may leave a larger one.
        largest: None,
        spent: best.spent.saturating_add(spent),
    };
    let patterns = vec![Pattern { copies: sheets, ..pattern }];
    let other = bench.finished(parts, patterns, known)?;
    let alike = Alike {
        kits_per_sheet: each,
        left_over: all - bench.kits,
        alike: toil(&other),
        fewest,
        chosen: wanted,
    };
    let chosen = if wanted { other } else { best };
    Ok(PaperCut { alike: Some(alike), ..chosen })
}

struct Found {
    each: u32,
    sheets: u32,
    pattern: Pattern,
    spent: u64,
}

/// The largest number of kits that is found to lie on one sheet, or the smallest
/// that takes no more sheets.
fn most_kits_on_a_sheet(bench: &Bench, sheet: &StockSheet, fewest: u32) -> Option<Found> {
    let area = |size: Size| size.area();
    let kit: i128 = bench.parts.iter().fold(0, |sum: i128, part| {
        sum.saturating_add(area(part.size).saturating_mul(i128::from(part.per_kit)))
    });
    let room = area(sheet.size).checked_div(kit).unwrap_or(0);
    let mut most = bench.kits.div_ceil(fewest.max(1));
    most = most.min(u32::try_from(room).unwrap_or(u32::MAX));
    let mut tries = 0;
    while most > 0 && tries < MOST_TRIES {
        tries += 1;
        let sheets = bench.kits.div_ceil(most);
        if sheet.at_hand.is_some_and(|at_hand| at_hand < sheets) {
            return None;
        }
        // So many sheets also do with fewer kits on each.
        let each = bench.kits.div_ceil(sheets);
        if let Some((pattern, spent)) = on_one_sheet(bench, sheet, each) {
            return Some(Found { each, sheets, pattern, spent });
        }
        most = each - 1;
    }
    None
}

fn on_one_sheet(bench: &Bench, sheet: &StockSheet, each: u32) -> Option<(Pattern, u64)> {
    let parts = parts_of(&bench.parts, each);
    let found = look(bench, &parts, &[*sheet], bench.budget / SHARE);
    match found.patterns.as_slice() {
        [Pattern { copies: 1, .. }] if found.enough => {
            Some((found.patterns.into_iter().next()?, found.known.spent))
        }
        _ => None,
    }
}

/// The parts for so many kits.
pub(crate) fn parts_of(parts: &[Part], kits: u32) -> Vec<Part> {
    let counted = parts
        .iter()
        .map(|part| Part { count: part.per_kit.saturating_mul(kits), ..part.clone() });
    counted.collect()
}

/// What a plan takes.
pub(crate) fn toil(cut: &PaperCut) -> Toil {
    let sheets =
        cut.patterns.iter().fold(0, |sum: u32, it| sum.saturating_add(it.copies));
    let steps = u32::try_from(cut.schedule.steps.len()).unwrap_or(u32::MAX);
    Toil { sheets, marks: cut.schedule.marks, steps }
}
