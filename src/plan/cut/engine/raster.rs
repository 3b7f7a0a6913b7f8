//! The widths and heights at which a rectangle in the search can end.

use crate::plan::cut::engine::board::Board;

/// Sheets up to so many units have a table from lengths to positions.
const MOST_TABLED: i64 = 1 << 16;
/// From this part of all units on, every unit counts as a position: even steps
/// are quicker than fewer steps.
const DENSE_FROM: usize = 3;
/// Cells of a table times positions at most: what filling it takes.
const MOST_WORK: usize = 1 << 31;

/// Positions along one axis, in order, from 0 to the sheet's extent.
#[derive(Clone, Debug)]
pub(super) struct Line {
    /// The positions in search units.
    pub(super) at: Vec<i64>,
    /// Every unit is a position.
    pub(super) even: bool,
    floor: Vec<u32>,
}

/// Positions across and along a sheet.
#[derive(Clone, Debug)]
pub(super) struct Raster {
    /// Widths.
    pub(super) x: Line,
    /// Heights.
    pub(super) y: Line,
}

impl Line {
    fn new(sums: Vec<i64>, whole: i64) -> Self {
        let units = usize::try_from(whole).unwrap_or(usize::MAX);
        let even = units / DENSE_FROM < sums.len();
        let at = if even { (0..=whole).collect() } else { sums };
        let mut floor = Vec::new();
        if !even && whole <= MOST_TABLED {
            let mut index = 0;
            for length in 0..=whole {
                if at.get(index + 1).is_some_and(|&it| it <= length) {
                    index += 1;
                }
                floor.push(u32::try_from(index).expect("as many as lengths"));
            }
        }
        Self { at, even, floor }
    }

    /// The last position that is not beyond a length between 0 and the whole.
    pub(super) fn floor(&self, length: i64) -> usize {
        let index = usize::try_from(length).expect("not negative");
        if self.even {
            index
        } else if let Some(&floor) = self.floor.get(index) {
            floor as usize
        } else {
            self.at.partition_point(|&it| it <= length) - 1
        }
    }

    /// How many positions there are.
    pub(super) fn len(&self) -> usize {
        self.at.len()
    }
}

impl Raster {
    /// The positions that the wanted parts can make on a sheet, if they are few
    /// enough for a table.
    pub(super) fn new(board: &Board) -> Option<Self> {
        let x = Line::new(board.sums(false)?, board.size.0);
        let y = Line::new(board.sums(true)?, board.size.1);
        let work = x.len().checked_mul(y.len())?.checked_mul(x.len() + y.len())?;
        (work <= MOST_WORK).then_some(Self { x, y })
    }

    /// How many cells a table has.
    pub(super) fn cells(&self) -> usize {
        self.x.len() * self.y.len()
    }
}
