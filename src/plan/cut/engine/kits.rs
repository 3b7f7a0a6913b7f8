//! The tables of all smaller kits behind one face, whatever their lanes are.

use crate::plan::cut::engine::board::Board;
use crate::plan::cut::engine::counts::Counts;
use crate::plan::cut::engine::fewest::Fewest;
use crate::plan::cut::engine::frontier::{self, Frontier};
use crate::plan::cut::engine::lane::Lane;
use crate::plan::cut::engine::meter::Meter;
use crate::plan::cut::engine::peel::Peel;
use crate::plan::cut::engine::sketch::Sheet;

/// More kits than this are not looked at one by one.
const MOST_KITS: usize = 400_000;

/// What is known of all smaller kits and one size of sheet.
pub(super) trait Kits {
    /// Whether a kit can be cut from one sheet.
    fn fits(&self, kit: usize) -> bool;
    /// A sheet cut into a kit that fits.
    fn draw(&self, kit: usize) -> Sheet;
    /// Of the candidates, the kit that leaves the largest offcut whose shorter
    /// side is not below `least` (1/14400 mm), and its sheet. Offcuts with less
    /// area than `floor` may be overlooked. The outer `None` means that steps ran
    /// out.
    fn largest_offcut(
        &self,
        candidates: &[usize],
        least: i64,
        floor: i128,
        meter: &mut Meter,
    ) -> Option<Option<(usize, Sheet)>>;
}

/// Numbers all smaller kits, if they are few enough.
pub(super) fn count(wanted: &[u32]) -> Option<Counts> {
    Counts::new(wanted, MOST_KITS)
}

/// Looks at all smaller kits, if that takes at most so many steps.
pub(super) fn look_at_all(
    board: &Board,
    counts: &Counts,
    most: u64,
    meter: &mut Meter,
) -> Option<Box<dyn Kits>> {
    if !within(board, counts, most.min(meter.left())) {
        return None;
    }
    tables(board, counts, None, meter)
}

/// Whether it would take at most so many steps to look at all smaller kits.
pub(super) fn within(board: &Board, counts: &Counts, most: u64) -> bool {
    frontier::work(board, counts, most) <= most
}

/// Looks at the smaller kits that waste at most `slack` square search units, as
/// long as steps last.
pub(super) fn look_at_tight(
    board: &Board,
    counts: &Counts,
    slack: i128,
    meter: &mut Meter,
) -> Option<Box<dyn Kits>> {
    tables(board, counts, Some(slack), meter)
}

/// Decides whether a whole kit can be cut from so many sheets: the sheets, or the
/// inner `None` if it can't. The outer `None` means that steps ran out.
pub(super) fn decide(
    board: &Board,
    counts: &Counts,
    sheets: u32,
    meter: &mut Meter,
) -> Option<Option<Vec<Sheet>>> {
    let parts: i128 = board
        .lies
        .iter()
        .zip(&board.wanted)
        .map(|(it, &n)| it[0].area().saturating_mul(i128::from(n)))
        .sum();
    let slack = i128::from(sheets) * board.area() - parts;
    if slack < 0 {
        return Some(None);
    }
    let kits = look_at_tight(board, counts, slack, meter)?;
    let fits = (0..counts.len()).map(|it| kits.fits(it)).collect();
    let fewest = Fewest::known(counts, fits, sheets, meter)?;
    if !fewest.possible() {
        return Some(None);
    }
    let divided = fewest.divide(counts.all(), sheets);
    Some(Some(divided.into_iter().map(|kit| kits.draw(kit)).collect()))
}

fn tables(
    board: &Board,
    counts: &Counts,
    slack: Option<i128>,
    meter: &mut Meter,
) -> Option<Box<dyn Kits>> {
    let size = board.size.0.max(board.size.1);
    if size <= u8::MOST {
        Some(Box::new(Frontier::<u8>::new(board, counts, slack, meter)?))
    } else if size <= i16::MOST {
        Some(Box::new(Frontier::<i16>::new(board, counts, slack, meter)?))
    } else {
        Some(Box::new(Frontier::<i32>::new(board, counts, slack, meter)?))
    }
}

impl<T: Lane> Kits for Frontier<T> {
    fn fits(&self, kit: usize) -> bool {
        Frontier::fits(self, kit)
    }

    fn draw(&self, kit: usize) -> Sheet {
        let mut sheet = Sheet::empty(self.board.wanted.len());
        if kit != 0 {
            Frontier::draw(self, kit, self.board.real(), &mut sheet.sketch, sheet.root);
        }
        sheet.holds = self.counts.vector(kit);
        sheet
    }

    fn largest_offcut(
        &self,
        candidates: &[usize],
        least: i64,
        floor: i128,
        meter: &mut Meter,
    ) -> Option<Option<(usize, Sheet)>> {
        let peel = Peel::new(self, candidates, least, floor, meter)?;
        let mut best: Option<(i128, usize, (i64, i64))> = None;
        for &kit in candidates {
            if let Some(size) = peel.largest(kit, least) {
                let area = i128::from(size.0) * i128::from(size.1);
                if best.is_none_or(|it| it.0 < area) {
                    best = Some((area, kit, size));
                }
            }
        }
        Some(best.map(|(_, kit, size)| {
            let mut sheet = Sheet::empty(self.board.wanted.len());
            peel.draw(kit, size, &mut sheet.sketch, sheet.root);
            sheet.holds = self.counts.vector(kit);
            (kit, sheet)
        }))
    }
}
