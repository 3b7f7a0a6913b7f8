//! The largest offcut as one more part, built up together with all the others.
//!
//! Of all sizes that an offcut can have, the smallest that are larger than a
//! known offcut are tried at once: they are the ways in which one more part can
//! lie. If all parts and this one can't be cut from the sheets, no offcut is
//! larger. So little may be wasted then that few builds pass the bounds of
//! [`buildup`](crate::plan::cut::engine::buildup), however many kinds there are.

use crate::geom::{Length, Size};
use crate::plan::cut::engine::all_in;
use crate::plan::cut::engine::board::{Board, Lie};
use crate::plan::cut::engine::columns::{self, Plan};
use crate::plan::cut::engine::meter::Meter;
use crate::plan::cut::engine::multipliers::Prices;
use crate::plan::cut::engine::sketch::Sheet;
use crate::plan::cut::engine::ways;

/// Sheets with more square search units are not built up here: areas are values.
const MOST_AREA: i128 = 1 << 24;
/// Plans with more sheets are not searched for the largest offcut.
const MOST_SHEETS: u32 = 3;
/// What may be wasted at first: the sheet's area divided by this.
const FIRST: i128 = 256;

/// The search for the largest offcut of all plans with as many sheets as one has. It
/// can be taken up again where steps ran out.
///
/// At first only very large offcuts are asked for: they leave little to waste, and
/// a no is found quickly. Then smaller ones, in small steps: the work grows fast
/// with what may be wasted, and it ends where the largest offcut is passed.
pub(super) struct Largest<'a> {
    board: &'a Board,
    sheets: u32,
    least: i64,
    /// The waste beside the offcut that is asked for next, in square 1/14400 mm.
    slack: i128,
    /// No offcut is larger than this, in square 1/14400 mm.
    most: i128,
    /// Prices on the counts that were good for the question before.
    prices: Option<Prices>,
}

impl<'a> Largest<'a> {
    /// Begins the search, if there are few sheets and all cuts can be made.
    pub(super) fn new(board: &'a Board, plan: &Plan, least: i64) -> Option<Self> {
        let sheets = columns::sheets(plan);
        let (width, height) = board.real();
        let small = board.area() <= MOST_AREA && width.max(height) <= board.longest;
        let sheet = board.real_area();
        (small && sheets <= MOST_SHEETS).then_some(Self {
            board,
            sheets,
            least,
            slack: sheet / FIRST,
            most: sheet,
            prices: None,
        })
    }

    /// A plan with a larger offcut than `now` (square 1/14400 mm), the largest that is
    /// known, if one was found, and whether no offcut is larger.
    pub(super) fn search(
        &mut self,
        now: i128,
        meter: &mut Meter,
    ) -> (Option<Plan>, bool) {
        let board = self.board;
        let unit = i128::from(board.unit.0) * i128::from(board.unit.1);
        let all = i128::from(self.sheets) * board.real_area();
        let free = all - board.parts_area() * unit;
        let mut best: Option<Plan> = None;
        let mut known = now;
        loop {
            let floor = (free - self.slack).max(known);
            match self.beyond(floor, meter) {
                None => return (best, false),
                Some(Some(plan)) => {
                    let area = offcut(board, &plan, self.least);
                    if area <= floor {
                        return (best, false);
                    }
                    (known, best) = (area, Some(plan));
                }
                Some(None) if floor <= known => return (best, true),
                Some(None) => {
                    self.most = self.most.min(floor);
                    self.slack += self.slack / 4 + 1;
                }
            }
        }
    }

    /// A plan with an offcut larger than an area, or the inner `None` if there is none
    /// with so many sheets.
    fn beyond(&mut self, floor: i128, meter: &mut Meter) -> Option<Option<Plan>> {
        let board = self.board;
        let mut sizes = sizes(board, self.least, floor)?;
        let real = |it: &Lie| {
            let across = it.width * board.unit.0 + board.rest.0;
            let along = it.height * board.unit.1 + board.rest.1;
            i128::from(across) * i128::from(along)
        };
        sizes.retain(|it| real(it) <= self.most);
        let room = i128::from(self.sheets) * board.area() - board.parts_area();
        sizes.retain(|it| it.area() <= room);
        if sizes.is_empty() {
            return Some(None);
        }
        let kept = board.lies.len();
        let mut all = board.clone();
        all.lies.push(sizes);
        all.wanted.push(1);
        let found = all_in::cut(&all, self.sheets, &mut self.prices, meter)?;
        let plan = |sheets: Vec<Sheet>| {
            sheets.into_iter().map(|it| (released(it, kept), 1)).collect()
        };
        Some(found.map(plan))
    }
}

/// A sheet on which what was one part is left over.
fn released(mut sheet: Sheet, kept: usize) -> Sheet {
    sheet.sketch.release(sheet.root, kept);
    sheet.holds.truncate(kept);
    sheet
}

/// The largest offcut of a plan in square 1/14400 mm.
fn offcut(board: &Board, plan: &Plan, least: i64) -> i128 {
    let real = board.real();
    let size = Size::new(Length::from_units(real.0), Length::from_units(real.1));
    let trees: Vec<_> =
        plan.iter().map(|it| it.0.sketch.tree(it.0.root, real, least)).collect();
    let found = ways::largest_offcut(trees.iter().map(|it| (it, size)));
    found.map_or(0, |it| it.1.area())
}

/// The smallest sizes of an offcut with more area than `floor` (square 1/14400 mm)
/// and sides of at least `least`, in search units. Every larger one holds one of
/// them. An offcut ends where parts in a row can begin.
fn sizes(board: &Board, least: i64, floor: i128) -> Option<Vec<Lie>> {
    let wide = board.sums(false)?;
    let tall = board.sums(true)?;
    // What the last unit leaves may itself be an offcut; it has no size here.
    let beside = (board.rest.0, board.real().1);
    let below = (board.real().0, board.rest.1);
    let counts = |it: &(i64, i64)| {
        least.max(1) <= it.0.min(it.1) && floor < i128::from(it.0) * i128::from(it.1)
    };
    if [beside, below].iter().any(counts) {
        return None;
    }
    let mut sizes: Vec<Lie> = Vec::new();
    let mut place = 0;
    // From narrow and tall to wide and low.
    for width in wide.iter().rev().map(|it| board.size.0 - it) {
        let across = width * board.unit.0 + board.rest.0;
        if across < least.max(1) || width == 0 {
            continue;
        }
        let enough = |height: i64| {
            let along = height * board.unit.1 + board.rest.1;
            least.max(1) <= along
                && floor < i128::from(across) * i128::from(along)
                && 0 < height
        };
        // The last height that is enough; wider offcuts may be lower.
        while tall.get(place + 1).is_some_and(|it| enough(board.size.1 - it)) {
            place += 1;
        }
        let height = board.size.1 - tall[place];
        if !enough(height) {
            continue;
        }
        if sizes.last().is_some_and(|it| it.height == height) {
            continue;
        }
        sizes.push(Lie { width, height, turned: false });
    }
    sizes.sort_by_key(|it| it.area());
    Some(sizes)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::plan::cut::engine::fewest::Fewest;
    use crate::plan::cut::engine::kits;
    use crate::plan::cut::{Kind, Limits};

    /// A number that looks random (G. Marsaglia, xorshift generators, 2003).
    fn roll(dice: &mut u64, below: u64) -> i64 {
        *dice ^= *dice << 13;
        *dice ^= *dice >> 7;
        *dice ^= *dice << 17;
        i64::try_from(*dice % below).expect("small")
    }

    #[test]
    fn both_ways_to_the_largest_offcut_agree() {
        let mut dice = 0x1234_5678_9ABC_DEF1_u64;
        let mut compared = [0; 3];
        for _ in 0..600 {
            let size = |dice: &mut u64, least, most| {
                let side = |dice: &mut u64| Length::mm(least + roll(dice, most));
                Size::new(side(dice), side(dice))
            };
            let sheet = size(&mut dice, 8, 9);
            let kinds: Vec<Kind> = (0..2 + roll(&mut dice, 4))
                .map(|_| Kind {
                    size: size(&mut dice, 1, 8),
                    free: roll(&mut dice, 2) == 0,
                    count: 1 + u32::try_from(roll(&mut dice, 2)).expect("small"),
                })
                .collect();
            let limits = Limits {
                stages: None,
                longest_cut: None,
                least_offcut: Length::mm(1 + roll(&mut dice, 2)),
                budget: u64::MAX,
            };
            let wanted: Vec<u32> = kinds.iter().map(|it| it.count).collect();
            let board = Board::new(sheet, &kinds, &wanted, &limits);
            let least = limits.least_offcut.units();
            let mut meter = Meter::new(u64::MAX);
            let counts = kits::count(&wanted).expect("a small kit");
            let kits = kits::look_at_all(&board, &counts, u64::MAX, &mut meter)
                .expect("a small kit");
            let fits = (0..counts.len()).map(|it| kits.fits(it)).collect();
            let fewest = Fewest::new(&counts, fits, &mut meter).expect("a small kit");
            if board.lies.iter().any(Vec::is_empty) || 3 < fewest.sheets {
                continue;
            }
            let kept = kits
                .largest_offcut(&fewest.last_sheets(), least, 0, &mut meter)
                .expect("steps enough")
                .map_or(0, |it| offcut(&board, &vec![(it.1, 1)], least));
            let plan = vec![(Sheet::empty(kinds.len()), fewest.sheets)];
            let mut search = Largest::new(&board, &plan, least).expect("few sheets");
            let (found, proven) = search.search(0, &mut meter);
            let area = found.as_ref().map_or(0, |it| offcut(&board, it, least));
            assert!(area <= kept, "{sheet:?} {kinds:?}");
            if proven {
                assert_eq!(area, kept, "{sheet:?} {kinds:?}");
                compared[fewest.sheets as usize - 1] += 1;
            }
        }
        assert!(compared.iter().all(|it| 30 < *it), "{compared:?}");
    }
}
