//! All parts and an offcut on few sheets, built up from the bottom.
//!
//! Every part is worth its area, and no less than all of them will do: what may be
//! wasted is known beforehand. Of two sheets one loses at most half of that (of
//! three, a third), with prices on the counts too. So only builds that lose little
//! are joined, each that can be a sheet by itself is noted, and for these the rest
//! is tried on the other sheets.

use std::cmp::Reverse;

use crate::plan::cut::engine::board::{Board, Lie};
use crate::plan::cut::engine::buildup::{Bounds, End, Search};
use crate::plan::cut::engine::dp;
use crate::plan::cut::engine::meter::Meter;
use crate::plan::cut::engine::multipliers::{Filling, Priced, Prices};
use crate::plan::cut::engine::packed::Packed;
use crate::plan::cut::engine::raster::Raster;
use crate::plan::cut::engine::sketch::Sheet;

/// Subgradient steps for a first question, and for one that follows.
const FIRST: u32 = 40;
const NEXT: u32 = 12;
/// Steps for the rest, before new prices are looked for.
const SHORT: u64 = 60_000;

/// Cuts all that is wanted from so many sheets; the last kind is the offcut, of
/// which one is wanted. The inner `None` says that this can't be done, the outer one
/// that steps ran out.
///
/// `prices` are those of the question before, if there was one much like this.
pub(super) fn cut(
    board: &Board,
    sheets: u32,
    prices: &mut Option<Prices>,
    meter: &mut Meter,
) -> Option<Option<Vec<Sheet>>> {
    let bits: u32 = board.wanted.iter().map(|it| 33 - it.leading_zeros()).sum();
    match bits {
        0..=64 => build::<[u64; 1]>(board, sheets, prices, meter),
        65..=120 => build::<[u64; 2]>(board, sheets, prices, meter),
        _ => build::<[u64; 8]>(board, sheets, prices, meter),
    }
}

fn build<P: Packed>(
    board: &Board,
    sheets: u32,
    prices: &mut Option<Prices>,
    meter: &mut Meter,
) -> Option<Option<Vec<Sheet>>> {
    let raster = Raster::new(board)?;
    let area = |lies: &Vec<Lie>| lies.first().map_or(0, |it| it.area());
    let values: Option<Vec<i64>> =
        board.lies.iter().map(|it| i64::try_from(area(it)).ok()).collect();
    let values = values?;
    let total: i64 =
        values.iter().zip(&board.wanted).map(|(it, &n)| it * i64::from(n)).sum();
    let filling = Filling {
        raster: &raster,
        lies: &board.lies,
        values: &values,
        wanted: &board.wanted,
        reach: board.reach(),
        sheets,
    };
    let (plain, _) = filling.plain()?;
    if !meter.spend(plain.inside.work) {
        return None;
    }
    if plain.bound < total {
        return Some(None);
    }
    let again = prices.as_ref().and_then(|it| filling.again(&plain, it));
    let start = again.as_ref().filter(|it| it.bound / it.scale < plain.bound);
    let rounds = if start.is_some() { NEXT } else { FIRST };
    let better = filling.prices(start.unwrap_or(&plain), total - 1, rounds, meter);
    let chosen: &Priced = better.as_ref().or(start).unwrap_or(&plain);
    *prices = Some(chosen.prices());
    if chosen.bound.div_euclid(chosen.scale) < total {
        return Some(None);
    }
    let outer_plain = dp::outside(&raster, &plain.inside);
    let outer_priced = dp::outside(&raster, &chosen.inside);
    if !meter.spend(outer_plain.work + outer_priced.work) {
        return None;
    }
    let whole = (raster.x.len() - 1, raster.y.len() - 1);
    let more = i64::from(sheets) - 1;
    let most = |table: &dp::Table| i64::from(table.get(whole.0, whole.1));
    let bounds = Bounds {
        values: &plain.reduced,
        plain: &outer_plain,
        priced: &outer_priced,
        reduced: &chosen.reduced,
        refund: chosen.refund,
        scale: chosen.scale,
        sheets,
        others: (more * most(&plain.inside), more * most(&chosen.inside)),
    };
    let kept = board.lies.len() - 1;
    let mut search = Search::<P>::new(board, &raster, bounds, total - 1)?;
    search.far = Some(kept);
    let end = search.run(meter);
    let draw = |id: u32| drawn(&search, board, id);
    if let Some((one, other)) = search.found {
        return Some(Some(std::iter::once(one).chain(other).map(draw).collect()));
    }
    if end != End::Proven {
        return None;
    }
    if sheets == 1 {
        return Some(None);
    }
    for (id, rest) in rests(&search, board) {
        let board = only(board, rest);
        let refund = chosen.refund_for(&board.wanted);
        let bounds = Bounds { refund, sheets: 1, others: (0, 0), ..bounds };
        let done = match in_short::<P>(&board, &raster, bounds, sheets - 1, meter) {
            None => cut(&board, sheets - 1, &mut prices.clone(), meter),
            known => known,
        };
        if let Some(mut all) = done? {
            all.push(draw(id));
            return Some(Some(all));
        }
    }
    Some(None)
}

/// The builds that can be a sheet by themselves, and what each leaves for the
/// others. Of two that leave more and less, only the one that leaves less.
fn rests<P: Packed>(search: &Search<P>, board: &Board) -> Vec<(u32, Vec<u32>)> {
    let mut rests: Vec<(u32, Vec<u32>)> = Vec::new();
    let mut full: Vec<(u32, Vec<u32>)> =
        search.full.iter().map(|&id| (id, search.counts(id))).collect();
    full.sort_by_key(|it| Reverse(it.1.iter().sum::<u32>()));
    for (id, counts) in full {
        let rest: Vec<u32> =
            board.wanted.iter().zip(&counts).map(|(all, it)| all - it).collect();
        let less = |it: &Vec<u32>| it.iter().zip(&rest).all(|(less, more)| less <= more);
        if !rests.iter().any(|it| less(&it.1)) {
            rests.push((id, rest));
        }
    }
    rests
}

/// The sheet with less wanted from it.
fn only(board: &Board, wanted: Vec<u32>) -> Board {
    let mut second = board.clone();
    for (lies, &count) in second.lies.iter_mut().zip(&wanted) {
        if count == 0 {
            lies.clear();
        }
    }
    second.wanted = wanted;
    second
}

/// Cuts all that is wanted from one sheet, if it is one and a short search with the bounds for
/// more parts tells.
fn in_short<P: Packed>(
    board: &Board,
    raster: &Raster,
    bounds: Bounds,
    sheets: u32,
    meter: &mut Meter,
) -> Option<Option<Vec<Sheet>>> {
    if sheets != 1 {
        return None;
    }
    let values = bounds.values.iter().zip(&board.wanted);
    let total: i64 = values.map(|(&it, &n)| i64::from(it) * i64::from(n)).sum();
    let mut search = Search::<P>::new(board, raster, bounds, total - 1)?;
    search.far = Some(board.lies.len() - 1);
    let mut share = Meter::new(meter.left().min(SHORT));
    let end = search.run(&mut share);
    meter.add(share);
    match search.found {
        Some((id, _)) => Some(Some(vec![drawn(&search, board, id)])),
        None => (end == End::Proven).then_some(None),
    }
}

/// A build as a sheet.
fn drawn<P: Packed>(search: &Search<P>, board: &Board, id: u32) -> Sheet {
    let mut sheet = Sheet::empty(board.lies.len());
    search.draw(id, board.real(), &mut sheet.sketch, sheet.root);
    sheet.holds = search.counts(id);
    sheet
}
