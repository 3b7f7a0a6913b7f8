//! The most value that one sheet can hold, with proof.
//!
//! The recursion without counts gives a bound and, cut down to what is wanted, a
//! first filling; prices sharpen the bound; what is left open is searched from the
//! bottom up. The same serves to say whether a kit fits one sheet at all: every
//! part is worth its area, and the value to beat is the whole kit's less one.

use crate::geom::{Axis, Size};
use crate::plan::cut::engine::board::Board;
use crate::plan::cut::engine::buildup::{Bounds, End, Search};
use crate::plan::cut::engine::dp::{self, First, Table, Valued};
use crate::plan::cut::engine::meter::Meter;
use crate::plan::cut::engine::multipliers::{Filling, Priced};
use crate::plan::cut::engine::packed::Packed;
use crate::plan::cut::engine::raster::Raster;
use crate::plan::cut::engine::sketch::Sheet;
use crate::plan::cut::{Kind, Leaf, Limits, Tree};

/// The most value found, and how sure it is.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Filled {
    /// The value of the parts on the sheet.
    pub value: i64,
    /// No filling is worth more than this.
    pub bound: i64,
    /// The cuts.
    pub tree: Tree,
    /// Search steps spent.
    pub spent: u64,
}

/// Finds parts worth as much as can be cut from one sheet, no more of a kind than
/// its count. `values` has one value for a part of each kind.
///
/// `None` if the sheet is too fine or the values are too large for the tables.
pub fn fill(
    sheet: Size,
    kinds: &[Kind],
    values: &[i64],
    limits: &Limits,
) -> Option<Filled> {
    let wanted: Vec<u32> = kinds.iter().map(|it| it.count).collect();
    let board = Board::new(sheet, kinds, &wanted, limits);
    let raster = Raster::new(&board)?;
    let mut meter = Meter::new(limits.budget);
    let found = best(&board, &raster, values, 0, &mut meter)?;
    let (value, tree) = match found.drawn {
        Some(drawn) => {
            let Sheet { sketch, root, .. } = &drawn.sheet;
            let tree = sketch.tree(*root, board.real(), i64::MAX);
            (drawn.value, tree)
        }
        None => (0, Tree::Leaf(Leaf::Waste)),
    };
    Some(Filled { value, bound: found.bound, tree, spent: meter.spent() })
}

/// The most value that one sheet can hold if there is no limit to the parts of a
/// kind; counts are not looked at.
pub fn unlimited(
    sheet: Size,
    kinds: &[Kind],
    values: &[i64],
    limits: &Limits,
) -> Option<i64> {
    let often = |kind: &Kind| {
        let whole = sheet.area() / kind.size.area().max(1) + 1;
        u32::try_from(whole).unwrap_or(u32::MAX)
    };
    let wanted: Vec<u32> = kinds.iter().map(often).collect();
    let board = Board::new(sheet, kinds, &wanted, limits);
    let raster = Raster::new(&board)?;
    let values: Option<Vec<i32>> = values
        .iter()
        .map(|&it| i32::try_from(it).ok().filter(|it| *it < 1 << 24))
        .collect();
    let parts = dp::valued(&board.lies, &values?);
    let table = dp::inside(&raster, &parts, board.reach());
    Some(i64::from(table.get(raster.x.len() - 1, raster.y.len() - 1)))
}

/// A filling of one sheet.
#[derive(Clone, Debug)]
pub(super) struct Drawn {
    /// What it is worth.
    pub(super) value: i64,
    /// The cuts and the counts.
    pub(super) sheet: Sheet,
}

/// The outcome of [`best`].
#[derive(Clone, Debug)]
pub(super) struct Found {
    /// A filling worth more than what was to be beaten.
    pub(super) drawn: Option<Drawn>,
    /// No filling is worth more than this and the value to be beaten.
    pub(super) bound: i64,
}

/// The best filling that is worth more than `beat`.
pub(super) fn best(
    board: &Board,
    raster: &Raster,
    values: &[i64],
    beat: i64,
    meter: &mut Meter,
) -> Option<Found> {
    let filling = Filling {
        raster,
        lies: &board.lies,
        values,
        wanted: &board.wanted,
        reach: board.reach(),
        sheets: 1,
    };
    let (plain, counts) = filling.plain()?;
    meter.spend(plain.inside.work);
    let mut drawn = None;
    let mut most = beat;
    let worth = filling.worth(&counts);
    if most < worth {
        let parts = dp::valued(&board.lies, &plain.reduced);
        let sheet = draw_inside(board, raster, &parts, &plain.inside);
        if sheet.keeps_to(board) {
            most = worth;
            drawn = Some(Drawn { value: worth, sheet });
        }
    }
    if plain.bound <= most {
        return Some(Found { drawn, bound: most });
    }
    let outer_plain = dp::outside(raster, &plain.inside);
    let mut priced: Option<Priced> = None;
    let mut bound = plain.bound;
    // Most problems need no more than good prices; the others are worth better
    // ones before the search is begun anew.
    for (rounds, steps) in ATTEMPTS {
        let start = priced.as_ref().unwrap_or(&plain);
        priced = filling.prices(start, most, rounds, meter).or(priced);
        let chosen = priced.as_ref().unwrap_or(&plain);
        bound = bound.min(chosen.bound.div_euclid(chosen.scale));
        if bound <= most {
            return Some(Found { drawn, bound: most });
        }
        let outer_priced = dp::outside(raster, &chosen.inside);
        if !meter.spend(outer_plain.work + outer_priced.work) {
            break;
        }
        let bounds = Bounds {
            values: &plain.reduced,
            plain: &outer_plain,
            priced: &outer_priced,
            reduced: &chosen.reduced,
            refund: chosen.refund,
            scale: chosen.scale,
            sheets: 1,
            others: (0, 0),
        };
        let mut share = Meter::new(meter.left().min(steps));
        let found = search(board, raster, bounds, most, &mut share);
        meter.add(share);
        let (found, end) = found?;
        if let Some(found) = found {
            most = found.value;
            drawn = Some(found);
        }
        match end {
            End::Proven => return Some(Found { drawn, bound: most }),
            End::Open(open) => bound = bound.min(open),
        }
    }
    Some(Found { drawn, bound })
}

/// Subgradient steps and steps of the search, attempt by attempt.
const ATTEMPTS: [(u32, u64); 3] = [(60, 1_500_000), (240, 12_000_000), (240, u64::MAX)];

/// Searches with as few words for the counts as will do.
fn search(
    board: &Board,
    raster: &Raster,
    bounds: Bounds,
    beat: i64,
    meter: &mut Meter,
) -> Option<(Option<Drawn>, End)> {
    let bits: u32 = board.wanted.iter().map(|it| 33 - it.leading_zeros()).sum();
    match bits {
        0..=64 => search_in::<[u64; 1]>(board, raster, bounds, beat, meter),
        65..=120 => search_in::<[u64; 2]>(board, raster, bounds, beat, meter),
        _ => search_in::<[u64; 8]>(board, raster, bounds, beat, meter),
    }
}

fn search_in<P: Packed>(
    board: &Board,
    raster: &Raster,
    bounds: Bounds,
    beat: i64,
    meter: &mut Meter,
) -> Option<(Option<Drawn>, End)> {
    let mut search = Search::<P>::new(board, raster, bounds, beat)?;
    let end = search.run(meter);
    let drawn = search.found.map(|(id, _)| {
        let mut sheet = Sheet::empty(board.wanted.len());
        search.draw(id, board.real(), &mut sheet.sketch, sheet.root);
        sheet.holds = search.counts(id);
        Drawn { value: search.best(), sheet }
    });
    Some((drawn, end))
}

/// Draws the filling that the recursion without counts finds, and leaves out
/// what is more than wanted.
pub(super) fn draw_inside(
    board: &Board,
    raster: &Raster,
    parts: &[Valued],
    table: &Table,
) -> Sheet {
    let mut sheet = Sheet::empty(board.wanted.len());
    let whole = (raster.x.len() - 1, raster.y.len() - 1);
    let mut open = vec![(whole, board.real(), sheet.root)];
    let unit = board.unit;
    while let Some((box_at, size, leaf)) = open.pop() {
        match dp::first_cut(raster, parts, table, board.reach(), box_at) {
            First::Nothing => {}
            First::Part(part) => {
                let (lie, kind, _) = parts[part];
                if sheet.holds[kind] < board.wanted[kind] {
                    sheet.holds[kind] += 1;
                    let lies = (lie.width * unit.0, lie.height * unit.1);
                    let level = size.0 <= board.longest;
                    sheet.sketch.place(leaf, size, (kind, lie.turned), lies, level);
                }
            }
            First::Cut(axis, one, other) => {
                let (width, height) =
                    (raster.x.at[one.0] * unit.0, raster.y.at[one.1] * unit.1);
                let (mut leaf, mut size) = (leaf, size);
                // A cut that would be too long needs a trim first.
                if axis == Axis::Upright && board.longest < size.1 {
                    leaf = sheet.sketch.cut(leaf, Axis::Level, height, size.1).0;
                    size.1 = height;
                } else if axis == Axis::Level && board.longest < size.0 {
                    leaf = sheet.sketch.cut(leaf, Axis::Upright, width, size.0).0;
                    size.0 = width;
                }
                let (at, extent, first, rest) = match axis {
                    Axis::Upright => {
                        (width, size.0, (width, size.1), (size.0 - width, size.1))
                    }
                    Axis::Level => {
                        (height, size.1, (size.0, height), (size.0, size.1 - height))
                    }
                };
                let (a, b) = sheet.sketch.cut(leaf, axis, at, extent);
                open.push((one, first, a));
                if let Some(b) = b {
                    open.push((other, rest, b));
                }
            }
        }
    }
    sheet
}
