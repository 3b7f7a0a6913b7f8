//! The most value a rectangle can hold if the paper may be turned only a few times.
//!
//! P. C. Gilmore and R. E. Gomory's staged recursion (1965), with as many of each part
//! as one likes: the deepest run of cuts lays parts in a row, every other run parts
//! and what the run below it holds. It serves where [`dp`] serves for any number of
//! turns: as a bound, and to price sheets for the linear programme.

use crate::geom::Axis;
use crate::plan::cut::engine::board::Board;
use crate::plan::cut::engine::dp::{self, Table, Valued};
use crate::plan::cut::engine::raster::Raster;
use crate::plan::cut::engine::sketch::Sheet;

/// The most value in each rectangle for each run of cuts, and for both directions of
/// the first.
pub(super) struct Layered<'a> {
    board: &'a Board,
    raster: &'a Raster,
    parts: &'a [Valued],
    /// One part in each rectangle.
    single: Table,
    /// From the deepest run to the first one: once for a first cut upright, once for
    /// one that is level.
    runs: [Vec<(Axis, Table)>; 2],
    /// The steps it took.
    pub(super) work: u64,
}

impl<'a> Layered<'a> {
    /// Fills the tables for so many runs.
    pub(super) fn new(
        board: &'a Board,
        raster: &'a Raster,
        parts: &'a [Valued],
        stages: u8,
    ) -> Self {
        let single = dp::single(raster, parts);
        let mut work = single.work;
        let mut layers = |first: Axis| {
            let mut runs: Vec<(Axis, Table)> = Vec::new();
            for below in (0..stages).rev() {
                let axis = if below % 2 == 0 { first } else { first.other() };
                let before = runs.last().map_or(&single, |it| &it.1);
                let table = dp::row_of(raster, before, axis);
                work += table.work;
                runs.push((axis, table));
            }
            runs
        };
        let runs = [layers(Axis::Upright), layers(Axis::Level)];
        Self { board, raster, parts, single, runs, work }
    }

    /// The most value that the whole sheet holds.
    pub(super) fn best(&self) -> i64 {
        self.runs.iter().map(|it| self.whole(it)).max().unwrap_or(0)
    }

    fn whole(&self, runs: &[(Axis, Table)]) -> i64 {
        let whole = (self.raster.x.len() - 1, self.raster.y.len() - 1);
        runs.last().map_or(0, |it| i64::from(it.1.get(whole.0, whole.1)))
    }

    /// A sheet of the most value, with no more of a kind than wanted, and how many of
    /// each kind it would hold if that were not looked at.
    pub(super) fn draw(&self) -> (Sheet, Vec<u32>) {
        let mut sheet = Sheet::empty(self.board.wanted.len());
        let mut holds = vec![0; self.board.wanted.len()];
        let first = usize::from(self.whole(&self.runs[0]) < self.whole(&self.runs[1]));
        let runs = &self.runs[first];
        let at = (self.raster.x.len() - 1, self.raster.y.len() - 1);
        let mut open = vec![(runs.len() - 1, at, self.board.real(), sheet.root)];
        let unit = self.board.unit;
        while let Some((run, at, size, leaf)) = open.pop() {
            let (axis, table) = &runs[run];
            let value = table.get(at.0, at.1);
            if value == 0 {
                continue;
            }
            // As little extent across the cuts as the value needs.
            let mut least = at;
            match axis {
                Axis::Upright => {
                    while 0 < least.0 && table.get(least.0 - 1, least.1) == value {
                        least.0 -= 1;
                    }
                }
                Axis::Level => {
                    while 0 < least.1 && table.get(least.0, least.1 - 1) == value {
                        least.1 -= 1;
                    }
                }
            }
            let extent = self.extent(*axis, least);
            let (real, cut) = match axis {
                Axis::Upright => (size.0, extent * unit.0),
                Axis::Level => (size.1, extent * unit.1),
            };
            let (leaf, _) = sheet.sketch.cut(leaf, *axis, cut, real);
            let strip = |cut: i64| match axis {
                Axis::Upright => (cut, size.1),
                Axis::Level => (size.0, cut),
            };
            let size = strip(cut);
            if self.single.get(least.0, least.1) == value {
                let (width, height) =
                    (self.raster.x.at[least.0], self.raster.y.at[least.1]);
                let part = self.parts.iter().find(|(lie, _, it)| {
                    *it == value && lie.width <= width && lie.height <= height
                });
                let &(lie, kind, _) = part.expect("the table was filled with it");
                holds[kind] += 1;
                if sheet.holds[kind] < self.board.wanted[kind] {
                    sheet.holds[kind] += 1;
                    let lies = (lie.width * unit.0, lie.height * unit.1);
                    sheet.sketch.place(leaf, size, (kind, lie.turned), lies, true);
                }
                continue;
            }
            if 0 < run && runs[run - 1].1.get(least.0, least.1) == value {
                open.push((run - 1, least, size, leaf));
                continue;
            }
            let (one, other) = self.divide(*axis, table, least);
            let cut = match axis {
                Axis::Upright => self.raster.x.at[one.0] * unit.0,
                Axis::Level => self.raster.y.at[one.1] * unit.1,
            };
            let (first, second) = sheet.sketch.cut(
                leaf,
                *axis,
                cut,
                if *axis == Axis::Upright { size.0 } else { size.1 },
            );
            let rest = match axis {
                Axis::Upright => (size.0 - cut, size.1),
                Axis::Level => (size.0, size.1 - cut),
            };
            let strip = match axis {
                Axis::Upright => (cut, size.1),
                Axis::Level => (size.0, cut),
            };
            open.push((run, one, strip, first));
            open.push((run, other, rest, second.expect("both take room")));
        }
        (sheet, holds)
    }

    /// How far a position reaches across cuts of a direction.
    fn extent(&self, axis: Axis, at: (usize, usize)) -> i64 {
        match axis {
            Axis::Upright => self.raster.x.at[at.0],
            Axis::Level => self.raster.y.at[at.1],
        }
    }

    /// Where a run divides a rectangle in two.
    fn divide(
        &self,
        axis: Axis,
        table: &Table,
        at: (usize, usize),
    ) -> ((usize, usize), (usize, usize)) {
        let value = table.get(at.0, at.1);
        let extent = self.extent(axis, at);
        let last = if axis == Axis::Upright { at.0 } else { at.1 };
        let pairs = (1..last).map(|place| match axis {
            Axis::Upright => {
                let rest = self.raster.x.floor(extent - self.raster.x.at[place]);
                ((place, at.1), (rest, at.1))
            }
            Axis::Level => {
                let rest = self.raster.y.floor(extent - self.raster.y.at[place]);
                ((at.0, place), (at.0, rest))
            }
        });
        let worth = |at: (usize, usize)| table.get(at.0, at.1);
        let mut found = pairs.filter(|it| worth(it.0) + worth(it.1) == value);
        found.next().expect("what the table holds came from somewhere")
    }
}
