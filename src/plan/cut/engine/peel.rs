//! The largest offcut that can be left whole when a kit is cut from a sheet.
//!
//! Walk from the whole sheet to the offcut: each cut on the way takes off a
//! rectangle that holds some of the parts, as narrow as the frontier allows. So
//! for every kit `S` already taken off and every height `y` there is a greatest
//! width `r(S, y)` that can be left, with `r(none, y)` the sheet's width and
//! `r(S, y) = max over A of r(S - A, y) - w(A, y)`; the same with the axes
//! changed, and both brought together.

use crate::geom::Axis;
use crate::plan::cut::engine::counts::{Counts, Parts};
use crate::plan::cut::engine::frontier::Frontier;
use crate::plan::cut::engine::lane::{self, Lane};
use crate::plan::cut::engine::meter::Meter;
use crate::plan::cut::engine::sketch::Sketch;

/// No table for this kit.
const NONE: u32 = u32::MAX;

/// What can be left of a sheet, for every kit that may lead to the largest offcut.
///
/// Tables hold one more than the length, so that 0 means: nothing can be left.
#[derive(Clone, Debug)]
pub(super) struct Peel<'a, T> {
    frontier: &'a Frontier<T>,
    /// Where the table of each kit stands.
    slots: Vec<u32>,
    lanes: Vec<T>,
}

impl<'a, T: Lane> Peel<'a, T> {
    /// Fills the tables, unless steps run out or some cuts would be too long:
    /// then what can be trimmed depends on more than the size.
    ///
    /// `targets` are the kits that may be cut from the sheet in the end, and `floor`
    /// the area of an offcut that is known to be possible, in square 1/14400 mm. A
    /// kit is dropped on the way if even without further waste less than that, or
    /// than a strip along the sheet, would be left for every target.
    pub(super) fn new(
        frontier: &'a Frontier<T>,
        targets: &[usize],
        least: i64,
        floor: i128,
        meter: &mut Meter,
    ) -> Option<Self> {
        let stride = frontier.stride();
        let counts = &frontier.counts;
        let board = &frontier.board;
        if board.longest < board.real().0.max(board.real().1) {
            return None;
        }
        let tall = frontier.ys.len();
        let mut lanes = vec![T::from_length(board.size.0 + 1); tall];
        lanes.resize(stride, T::from_length(board.size.1 + 1));
        let mut slots = vec![NONE; counts.len()];
        slots[0] = 0;
        let mut peel = Self { frontier, slots, lanes };
        let strips = targets.iter().filter_map(|&it| peel.strip(it, least));
        let floor = strips.max().unwrap_or(0).max(floor);
        let kit_areas: Vec<i128> = frontier.areas();
        let area = |kit: usize| -> i128 {
            let vector = counts.vector(kit);
            vector.iter().zip(&kit_areas).map(|(&n, area)| i128::from(n) * area).sum()
        };
        let lightest = targets.iter().map(|&it| area(it)).min().unwrap_or(0);
        let whole = i128::from(board.real().0) * i128::from(board.real().1);
        let mut vector = vec![0; board.wanted.len()];
        let none = T::from_length(0);
        let mut table = vec![none; stride];
        for number in 1..counts.len() {
            counts.step(&mut vector);
            let taken: i128 = vector
                .iter()
                .zip(&kit_areas)
                .map(|(&n, area)| i128::from(n) * area)
                .sum();
            if whole < taken + floor || frontier.slack.is_none() && !frontier.fits(number)
            {
                continue;
            }
            table.fill(none);
            let mut joins = 1;
            for part in Parts::new(counts, &vector) {
                let slot = peel.slots[number - part];
                if slot == NONE || !frontier.has_table(part) {
                    continue;
                }
                joins += 1;
                let off = frontier.table(part);
                let before = peel.lanes_at(slot);
                let span = frontier.span(part);
                leave(&mut table, before, off, span.tall);
                leave(&mut table, before, off, span.wide);
            }
            if !meter.spend(Meter::lanes(joins, stride) + Counts::splits(&vector) / 4) {
                return None;
            }
            let (widths, heights) = table.split_at_mut(tall);
            bring_together(widths, &frontier.ys, heights, &frontier.xs);
            let taken: i128 = vector
                .iter()
                .zip(&kit_areas)
                .map(|(&n, area)| i128::from(n) * area)
                .sum();
            let needed = (lightest - taken).max(0);
            if floor + needed <= peel.most(&table) {
                peel.slots[number] = u32::try_from(peel.lanes.len() / stride).ok()?;
                peel.lanes.extend_from_slice(&table);
            }
        }
        Some(peel)
    }

    /// The larger of the two strips along the sheet that a kit can leave, by area.
    fn strip(&self, kit: usize, least: i64) -> Option<i128> {
        let frontier = self.frontier;
        if !frontier.fits(kit) || frontier.slack.is_some() {
            return None;
        }
        let board = &frontier.board;
        let table = frontier.table(kit);
        let (width, height) = board.real();
        let used = table[frontier.ys.len() - 1].length() * board.unit.0;
        let beside = (width - used, height);
        let used = table[frontier.stride() - 1].length() * board.unit.1;
        let below = (width, height - used);
        [beside, below]
            .into_iter()
            .filter(|size| least.max(1) <= size.0.min(size.1))
            .map(|size| i128::from(size.0) * i128::from(size.1))
            .max()
    }

    /// The sizes that a table says can be left, in 1/14400 mm.
    fn sizes(&self, table: &[T]) -> impl Iterator<Item = (i64, i64)> {
        let board = &self.frontier.board;
        table.iter().zip(&self.frontier.ys).filter(|(width, _)| 0 < width.length()).map(
            |(width, &height)| {
                (
                    (width.length() - 1) * board.unit.0 + board.rest.0,
                    height * board.unit.1 + board.rest.1,
                )
            },
        )
    }

    /// The largest area that a table says can be left.
    fn most(&self, table: &[T]) -> i128 {
        let areas = self.sizes(table).map(|it| i128::from(it.0) * i128::from(it.1));
        areas.max().unwrap_or(-1)
    }

    fn lanes_at(&self, slot: u32) -> &[T] {
        let stride = self.frontier.stride();
        let start = slot as usize * stride;
        &self.lanes[start..start + stride]
    }

    /// The table of a kit that has one.
    fn table(&self, kit: usize) -> &[T] {
        self.lanes_at(self.slots[kit])
    }

    /// The largest offcut by area, in 1/14400 mm, whose shorter side is not below
    /// `least`, that can be left when a kit is cut from the sheet.
    pub(super) fn largest(&self, kit: usize, least: i64) -> Option<(i64, i64)> {
        if self.slots[kit] == NONE {
            return None;
        }
        self.sizes(self.table(kit))
            .filter(|size| least.max(1) <= size.0.min(size.1))
            .max_by_key(|&(width, height)| {
                (i128::from(width) * i128::from(height), width.min(height))
            })
    }

    /// Draws the cuts that take a kit off the sheet and leave an offcut that
    /// [`Peel::largest`] gave.
    pub(super) fn draw(
        &self,
        kit: usize,
        offcut: (i64, i64),
        sketch: &mut Sketch,
        sheet: usize,
    ) {
        let frontier = self.frontier;
        let board = &frontier.board;
        let unit = board.unit;
        // From the offcut outwards: what was taken off last comes first.
        let mut taken = Vec::new();
        let mut kit = kit;
        let mut size = (offcut.0 / unit.0, offcut.1 / unit.1);
        loop {
            self.widen(kit, &mut size, &mut taken);
            if kit == 0 {
                break;
            }
            let (part, axis, extent) = self.last(kit, size);
            match axis {
                Axis::Upright => size.0 += extent,
                Axis::Level => size.1 += extent,
            }
            taken.push((part, axis, extent));
            kit -= part;
        }
        let (mut leaf, mut real) = (sheet, board.real());
        for (part, axis, extent) in taken.into_iter().rev() {
            match axis {
                Axis::Upright => {
                    let off = extent * unit.0;
                    let (one, other) = sketch.cut(leaf, axis, off, real.0);
                    if part != 0 {
                        frontier.draw(part, (off, real.1), sketch, one);
                    }
                    (leaf, real.0) = (other.unwrap_or(one), real.0 - off);
                }
                Axis::Level => {
                    let off = extent * unit.1;
                    let (one, other) = sketch.cut(leaf, axis, off, real.1);
                    if part != 0 {
                        frontier.draw(part, (real.0, off), sketch, one);
                    }
                    (leaf, real.1) = (other.unwrap_or(one), real.1 - off);
                }
            }
        }
    }

    /// Makes a rectangle that can be left as large as can be; what it grows by is
    /// trimmed off as waste.
    fn widen(
        &self,
        kit: usize,
        size: &mut (i64, i64),
        taken: &mut Vec<(usize, Axis, i64)>,
    ) {
        let frontier = self.frontier;
        let width = self.table(kit)[frontier.at_height(size.1)].length() - 1;
        if size.0 < width {
            taken.push((0, Axis::Upright, width - size.0));
            size.0 = width;
        }
        let height = self.table(kit)[frontier.at_width(size.0)].length() - 1;
        if size.1 < height {
            taken.push((0, Axis::Level, height - size.1));
            size.1 = height;
        }
    }

    /// What was taken off last when this was left: the parts, the axis of the
    /// cut, and the extent of what they were cut from.
    fn last(&self, kit: usize, size: (i64, i64)) -> (usize, Axis, i64) {
        let frontier = self.frontier;
        let (row, line) = (frontier.at_height(size.1), frontier.at_width(size.0));
        let vector = frontier.counts.vector(kit);
        for part in Parts::new(&frontier.counts, &vector) {
            if self.slots[kit - part] == NONE || !frontier.has_table(part) {
                continue;
            }
            let (before, off) = (self.table(kit - part), frontier.table(part));
            if size.0 + 1 + off[row].length() <= before[row].length() {
                return (part, Axis::Upright, off[row].length());
            }
            if size.1 + 1 + off[line].length() <= before[line].length() {
                return (part, Axis::Level, off[line].length());
            }
        }
        unreachable!("what is left was left by a last cut")
    }
}

/// Raises lanes to what another leaves of a third.
fn leave<T: Lane>(table: &mut [T], before: &[T], off: &[T], span: (u32, u32)) {
    let (from, to) = (span.0 as usize, span.1 as usize);
    if to <= from {
        return;
    }
    let lanes = table[from..to].iter_mut().zip(&before[from..to]).zip(&off[from..to]);
    for ((lane, &before), &off) in lanes {
        *lane = (*lane).max(before.less(off));
    }
}

/// Makes widths by height and heights by width say the same: each takes over
/// what the other knows, and what can be left can be left smaller.
fn bring_together<T: Lane>(widths: &mut [T], ys: &[i64], heights: &mut [T], xs: &[i64]) {
    only_falling(widths);
    only_falling(heights);
    take_over(widths, ys, heights, xs);
    take_over(heights, xs, widths, ys);
}

/// What can be left at a greater height can be left at a smaller one.
fn only_falling<T: Lane>(lanes: &mut [T]) {
    let mut most = T::from_length(0);
    for lane in lanes.iter_mut().rev() {
        most = most.max(*lane);
        *lane = most;
    }
}

/// Improves `mine` (by `at`) with what `theirs` (by `by`) knows.
fn take_over<T: Lane>(mine: &mut [T], at: &[i64], theirs: &[T], by: &[i64]) {
    lane::walk(mine, at, theirs, |lane, beyond| {
        if 0 < beyond {
            *lane = (*lane).max(T::from_length(by[beyond - 1] + 1));
        }
    });
}
