//! The frontier: for every smaller kit, how narrow a sheet of each height can be.
//!
//! For each vector of counts `S` and each height `y` that parts can make, the
//! least width `w(S, y)` from which `S` can be cut, and likewise the least height
//! for each width. A first cut upright gives `w(A, y) + w(S - A, y)`, a first cut
//! level gives the same with the axes changed, and the two are brought together.
//! It is the dynamic programme over sub-kits that answers all of them at once;
//! the steps are the canonical positions of J. C. Herz (1972) and N. Christofides
//! and C. Whitlock (1977).

use crate::geom::Axis;
use crate::plan::cut::engine::board::{Board, Lie};
use crate::plan::cut::engine::counts::{Counts, Parts};
use crate::plan::cut::engine::meter::Meter;
use crate::plan::cut::engine::sketch::Sketch;

/// Bytes that the tables may take.
const MEMORY: usize = 192 << 20;
/// No table for this kit: it can't be cut from the sheet.
const NONE: u32 = u32::MAX;

/// A number that lanes of a table are made of: narrow ones are faster.
pub(super) trait Lane: Copy + Ord {
    /// More than any sheet.
    const FAR: Self;
    /// The largest sheet, with room for one more.
    const MOST: i64;
    /// From a length; what is too long is [`Lane::FAR`].
    fn from_length(length: i64) -> Self;
    /// As a length.
    fn length(self) -> i64;
    /// Both together, at most [`Lane::FAR`] or something else beyond any sheet.
    fn plus(self, other: Self) -> Self;
    /// What is left if another is taken away, at least nothing.
    fn less(self, other: Self) -> Self;
}

impl Lane for u8 {
    const FAR: Self = Self::MAX;
    const MOST: i64 = 253;
    fn from_length(length: i64) -> Self {
        Self::try_from(length).unwrap_or(Self::FAR)
    }
    fn length(self) -> i64 {
        i64::from(self)
    }
    fn plus(self, other: Self) -> Self {
        self.saturating_add(other)
    }
    fn less(self, other: Self) -> Self {
        self.saturating_sub(other)
    }
}

impl Lane for i16 {
    const FAR: Self = 16_000;
    const MOST: i64 = 15_998;
    fn from_length(length: i64) -> Self {
        Self::try_from(length).unwrap_or(Self::FAR).min(Self::FAR)
    }
    fn length(self) -> i64 {
        i64::from(self)
    }
    fn plus(self, other: Self) -> Self {
        self + other
    }
    fn less(self, other: Self) -> Self {
        (self - other).max(0)
    }
}

impl Lane for i32 {
    const FAR: Self = 1_000_000_000;
    const MOST: i64 = 999_999_998;
    fn from_length(length: i64) -> Self {
        Self::try_from(length).unwrap_or(Self::FAR).min(Self::FAR)
    }
    fn length(self) -> i64 {
        i64::from(self)
    }
    fn plus(self, other: Self) -> Self {
        self + other
    }
    fn less(self, other: Self) -> Self {
        (self - other).max(0)
    }
}

/// The tables for every kit that can be cut from one sheet.
#[derive(Clone, Debug)]
pub(super) struct Frontier<T> {
    /// Heights at which widths are known.
    pub(super) ys: Vec<i64>,
    /// Widths at which heights are known.
    pub(super) xs: Vec<i64>,
    /// The kits, by number.
    pub(super) counts: Counts,
    /// Where the table of each kit stands.
    pub(super) slots: Vec<u32>,
    /// Least widths by height, then least heights by width, for each kit.
    pub(super) lanes: Vec<T>,
    /// The sheet.
    pub(super) board: Board,
}

/// The steps it would take to look at all smaller kits, or a number beyond
/// `most`: used to choose a method before any work is done.
pub(super) fn work(board: &Board, counts: &Counts, most: u64) -> u64 {
    let areas = areas(board);
    let lanes =
        usize::try_from(board.size.0 + board.size.1).unwrap_or(usize::MAX).min(4_000);
    let mut vector = vec![0; board.wanted.len()];
    let mut work = 0_u64;
    for _ in 0..counts.len() {
        let area: i128 = vector
            .iter()
            .zip(&areas)
            .map(|(&count, area)| i128::from(count) * area)
            .sum();
        let splits = Counts::splits(&vector);
        work = work.saturating_add(if area <= board.area() {
            // Once for the widths, twice for what can be left.
            Meter::lanes(splits / 2 * 3, lanes)
        } else {
            splits / 32 + 1
        });
        if most < work {
            break;
        }
        counts.step(&mut vector);
    }
    work
}

/// The area of one part of each kind; more than the sheet's if it can't be cut.
fn areas(board: &Board) -> Vec<i128> {
    let area = |lies: &Vec<Lie>| match lies.first() {
        Some(lie) => lie.area(),
        None => board.area() + 1,
    };
    board.lies.iter().map(area).collect()
}

impl<T: Lane> Frontier<T> {
    /// Fills the tables, unless the sheet is too fine, memory or steps run out.
    pub(super) fn new(board: &Board, counts: &Counts, meter: &mut Meter) -> Option<Self> {
        if T::MOST < board.size.0.max(board.size.1) {
            return None;
        }
        let xs = both_ends(&board.sums(false)?, board.size.0);
        let ys = both_ends(&board.sums(true)?, board.size.1);
        let mut frontier = Self {
            ys,
            xs,
            counts: counts.clone(),
            slots: vec![NONE; counts.len()],
            lanes: Vec::new(),
            board: board.clone(),
        };
        let stride = frontier.stride();
        let most_slots = MEMORY / (stride * size_of::<T>());
        let areas = areas(board);
        let mut vector = vec![0; board.wanted.len()];
        let mut table = vec![T::FAR; stride];
        let mut used = 0;
        for number in 1..counts.len() {
            counts.step(&mut vector);
            if !frontier.may_fit(number, &vector, &areas) {
                continue;
            }
            if !meter.spend(Meter::lanes(Counts::splits(&vector) / 2 + 1, stride)) {
                return None;
            }
            frontier.fill(number, &vector, &mut table);
            if table[frontier.ys.len() - 1].length() <= board.size.0 {
                if most_slots <= used {
                    return None;
                }
                frontier.slots[number] = u32::try_from(used).ok()?;
                frontier.lanes.extend_from_slice(&table);
                used += 1;
            }
        }
        Some(frontier)
    }

    /// How many lanes the table of a kit has.
    pub(super) fn stride(&self) -> usize {
        self.ys.len() + self.xs.len()
    }

    /// Whether a kit can be cut from the sheet.
    pub(super) fn fits(&self, kit: usize) -> bool {
        kit == 0 || self.slots[kit] != NONE
    }

    /// The table of a kit that fits.
    pub(super) fn table(&self, kit: usize) -> &[T] {
        let start = self.slots[kit] as usize * self.stride();
        &self.lanes[start..start + self.stride()]
    }

    /// Whether area and the smaller kits leave it open that a kit fits.
    fn may_fit(&self, number: usize, vector: &[u32], areas: &[i128]) -> bool {
        let area: i128 =
            vector.iter().zip(areas).map(|(&count, area)| i128::from(count) * area).sum();
        area <= self.board.area()
            && vector
                .iter()
                .zip(self.counts.weights())
                .all(|(&count, weight)| count == 0 || self.fits(number - weight))
    }

    /// Computes the table of a kit from those of its parts.
    fn fill(&self, number: usize, vector: &[u32], table: &mut [T]) {
        table.fill(T::FAR);
        for part in Parts::new(&self.counts, vector) {
            let other = number - part;
            if other < part || other == 0 {
                break;
            }
            let (a, b) = (self.table(part), self.table(other));
            for ((lane, &a), &b) in table.iter_mut().zip(a).zip(b) {
                *lane = (*lane).min(a.plus(b));
            }
        }
        let (widths, heights) = table.split_at_mut(self.ys.len());
        // A sheet wider than the longest cut can't be divided along its width.
        let reach = self.board.reach();
        forbid(widths, &self.ys, reach.0);
        forbid(heights, &self.xs, reach.1);
        if vector.iter().sum::<u32>() == 1 {
            let kind = vector.iter().position(|&it| it == 1).expect("one part");
            for lie in &self.board.lies[kind] {
                let from = self.ys.partition_point(|&it| it < lie.height);
                for lane in &mut widths[from..] {
                    *lane = (*lane).min(T::from_length(lie.width));
                }
            }
        }
        bring_together(widths, &self.ys, heights, &self.xs);
        let (width, height) = self.board.size;
        beyond(widths, width);
        beyond(heights, height);
    }

    /// The lane of the largest known height that is at most `y`.
    pub(super) fn at_height(&self, y: i64) -> usize {
        self.ys.partition_point(|&it| it <= y).saturating_sub(1)
    }

    /// The lane of the largest known width that is at most `x`.
    pub(super) fn at_width(&self, x: i64) -> usize {
        self.ys.len() + self.xs.partition_point(|&it| it <= x).saturating_sub(1)
    }

    /// Draws the cuts that make a kit from a leaf of this size in 1/14400 mm.
    ///
    /// The kit must fit into that size.
    pub(super) fn draw(
        &self,
        kit: usize,
        size: (i64, i64),
        sketch: &mut Sketch,
        leaf: usize,
    ) {
        let unit = self.board.unit;
        let mut open = vec![(kit, size, leaf)];
        while let Some((kit, size, leaf)) = open.pop() {
            let vector = self.counts.vector(kit);
            if vector.iter().sum::<u32>() == 1 {
                self.place(&vector, size, sketch, leaf);
                continue;
            }
            let (part, axis, at) = self.split(kit, &vector, size);
            let (at, extent) = match axis {
                Axis::Upright => (at * unit.0, size.0),
                Axis::Level => (at * unit.1, size.1),
            };
            let (first, rest) = match axis {
                Axis::Upright => ((at, size.1), (size.0 - at, size.1)),
                Axis::Level => ((size.0, at), (size.0, size.1 - at)),
            };
            let (one, other) = sketch.cut(leaf, axis, at, extent);
            open.push((part, first, one));
            if let (Some(other), true) = (other, part < kit) {
                open.push((kit - part, rest, other));
            }
        }
    }

    /// A first cut of a rectangle: the kit on its first side, the axis and where.
    fn split(&self, kit: usize, vector: &[u32], size: (i64, i64)) -> (usize, Axis, i64) {
        let unit = self.board.unit;
        let (width, height) = (size.0 / unit.0, size.1 / unit.1);
        let (row, line) = (self.at_height(height), self.at_width(width));
        let (upright, level) =
            (size.1 <= self.board.longest, size.0 <= self.board.longest);
        for part in Parts::new(&self.counts, vector) {
            if part == kit {
                break;
            }
            let (a, b) = (self.table(part), self.table(kit - part));
            if upright && a[row].plus(b[row]).length() <= width {
                return (part, Axis::Upright, a[row].length());
            }
            if level && a[line].plus(b[line]).length() <= height {
                return (part, Axis::Level, a[line].length());
            }
        }
        // The cut that is needed would be too long: trim first.
        let reach = self.board.reach();
        if level {
            (kit, Axis::Level, self.ys[self.at_height(reach.0)])
        } else {
            (kit, Axis::Upright, self.xs[self.at_width(reach.1) - self.ys.len()])
        }
    }

    /// Makes a leaf one part.
    fn place(&self, vector: &[u32], size: (i64, i64), sketch: &mut Sketch, leaf: usize) {
        let kind = vector.iter().position(|&it| it == 1).expect("one part");
        let unit = self.board.unit;
        let real = |lie: &Lie| (lie.width * unit.0, lie.height * unit.1);
        let fits = |lie: &&Lie| real(lie).0 <= size.0 && real(lie).1 <= size.1;
        let lie = self.board.lies[kind].iter().find(fits).expect("the part fits");
        let level_first = size.0 <= self.board.longest;
        sketch.place(leaf, size, (kind, lie.turned), real(lie), level_first);
    }
}

/// The sums, and what they leave of the whole: where an offcut can begin.
fn both_ends(sums: &[i64], whole: i64) -> Vec<i64> {
    let mut all: Vec<i64> =
        sums.iter().copied().chain(sums.iter().map(|it| whole - it)).collect();
    all.sort_unstable();
    all.dedup();
    all
}

/// Takes away the joins whose cut would be longer than the longest.
fn forbid<T: Lane>(lanes: &mut [T], at: &[i64], longest: i64) {
    let from = at.partition_point(|&it| it <= longest);
    lanes[from..].fill(T::FAR);
}

/// Marks what is more than the sheet has.
fn beyond<T: Lane>(lanes: &mut [T], most: i64) {
    for lane in lanes {
        if most < lane.length() {
            *lane = T::FAR;
        }
    }
}

/// Makes widths by height and heights by width say the same: each takes over
/// what the other knows, and more room is never worse.
fn bring_together<T: Lane>(widths: &mut [T], ys: &[i64], heights: &mut [T], xs: &[i64]) {
    only_falling(widths);
    only_falling(heights);
    take_over(widths, ys, heights, xs);
    take_over(heights, xs, widths, ys);
}

/// More room is never worse.
fn only_falling<T: Lane>(lanes: &mut [T]) {
    let mut least = T::FAR;
    for lane in lanes {
        least = least.min(*lane);
        *lane = least;
    }
}

/// Improves `mine` (by `at`) with what `theirs` (by `by`) knows.
fn take_over<T: Lane>(mine: &mut [T], at: &[i64], theirs: &[T], by: &[i64]) {
    let mut reached = by.len();
    for (lane, &have) in mine.iter_mut().zip(at) {
        while 0 < reached && theirs[reached - 1].length() <= have {
            reached -= 1;
        }
        if reached < by.len() {
            *lane = (*lane).min(T::from_length(by[reached]));
        }
    }
}
