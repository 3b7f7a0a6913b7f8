//! The frontier: for every smaller kit, how narrow a sheet of each height can be.
//!
//! For each vector of counts `S` and each height `y` that parts can make, the
//! least width `w(S, y)` from which `S` can be cut, and likewise the least height
//! for each width. A first cut upright gives `w(A, y) + w(S - A, y)`, a first cut
//! level gives the same with the axes changed, and the two are brought together.
//! It is the dynamic programme over sub-kits that answers all of them at once;
//! the steps are the canonical positions of J. C. Herz (1972) and N. Christofides
//! and C. Whitlock (1977).

use crate::plan::cut::engine::board::{Board, Lie};
use crate::plan::cut::engine::counts::{Counts, Parts};
use crate::plan::cut::engine::lane::{self, Lane};
use crate::plan::cut::engine::meter::Meter;

/// Bytes that the tables may take.
const MEMORY: usize = 192 << 20;
/// No table for this kit: it can't be cut from the sheet.
const NONE: u32 = u32::MAX;

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
    /// What is worth knowing of each table before it is read.
    spans: Vec<Span>,
    /// The sheet.
    pub(super) board: Board,
    /// The waste that is allowed in square search units, if it is limited.
    pub(super) slack: Option<i128>,
}

/// What is known of a table at a glance.
#[derive(Clone, Copy, Debug)]
pub(super) struct Span {
    /// The lanes of the heights at which a width is known.
    pub(super) tall: (u32, u32),
    /// The lanes of the widths at which a height is known.
    pub(super) wide: (u32, u32),
    /// The least width and the least height of all.
    least: (i64, i64),
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
    ///
    /// With a `slack`, widths and heights with more waste than that are left out,
    /// and kits that always waste more. What is left is exact: the parts of a
    /// rectangle waste no more than the rectangle.
    pub(super) fn new(
        board: &Board,
        counts: &Counts,
        slack: Option<i128>,
        meter: &mut Meter,
    ) -> Option<Self> {
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
            spans: Vec::new(),
            board: board.clone(),
            slack,
        };
        let stride = frontier.stride();
        let most_slots = MEMORY / (stride * size_of::<T>());
        let areas = areas(board);
        let mut vector = vec![0; board.wanted.len()];
        let mut table = vec![T::FAR; stride];
        for number in 1..counts.len() {
            counts.step(&mut vector);
            let area = vector
                .iter()
                .zip(&areas)
                .map(|(&count, area)| i128::from(count) * area)
                .sum();
            if board.area() < area || !frontier.may_fit(number, &vector) {
                continue;
            }
            let joins = frontier.fill(number, &vector, area, &mut table);
            let looks = Counts::splits(&vector) / 8;
            if !meter.spend(Meter::lanes(joins + 1, stride) + looks) {
                return None;
            }
            let span = frontier.span_of(&table);
            if span.tall.0 < span.tall.1 || span.wide.0 < span.wide.1 {
                if most_slots <= frontier.spans.len() {
                    return None;
                }
                frontier.slots[number] = u32::try_from(frontier.spans.len()).ok()?;
                frontier.lanes.extend_from_slice(&table);
                frontier.spans.push(span);
            }
        }
        Some(frontier)
    }

    /// How many lanes the table of a kit has.
    pub(super) fn stride(&self) -> usize {
        self.ys.len() + self.xs.len()
    }

    /// The area of one part of each kind, in square units of 1/14400 mm.
    pub(super) fn areas(&self) -> Vec<i128> {
        let unit = i128::from(self.board.unit.0) * i128::from(self.board.unit.1);
        areas(&self.board).into_iter().map(|it| it * unit).collect()
    }

    /// Whether a kit can be cut from the sheet; with a slack, only if the whole
    /// sheet wastes no more than that.
    pub(super) fn fits(&self, kit: usize) -> bool {
        kit == 0
            || self.has_table(kit)
                && self.table(kit)[self.ys.len() - 1].length() <= self.board.size.0
    }

    /// Whether there is a table for a kit.
    pub(super) fn has_table(&self, kit: usize) -> bool {
        self.slots[kit] != NONE
    }

    /// The table of a kit that has one.
    pub(super) fn table(&self, kit: usize) -> &[T] {
        let start = self.slots[kit] as usize * self.stride();
        &self.lanes[start..start + self.stride()]
    }

    /// What is known of the table of a kit that has one, at a glance.
    pub(super) fn span(&self, kit: usize) -> Span {
        self.spans[self.slots[kit] as usize]
    }

    fn span_of(&self, table: &[T]) -> Span {
        let tall = self.ys.len();
        let known = |lanes: &[T], offset: usize| {
            let from = lanes.iter().take_while(|it| **it == T::FAR).count();
            let after =
                lanes[from..].iter().rev().take_while(|it| **it == T::FAR).count();
            let to = lanes.len() - after;
            let least = if from < to { lanes[to - 1].length() } else { T::FAR.length() };
            let place = |lane: usize| u32::try_from(lane + offset).unwrap_or(u32::MAX);
            ((place(from), place(to)), least)
        };
        let (widths, heights) = (known(&table[..tall], 0), known(&table[tall..], tall));
        Span { tall: widths.0, wide: heights.0, least: (widths.1, heights.1) }
    }

    /// Whether the smaller kits leave it open that a kit fits.
    fn may_fit(&self, number: usize, vector: &[u32]) -> bool {
        self.slack.is_some()
            || vector
                .iter()
                .zip(self.counts.weights())
                .all(|(&count, weight)| count == 0 || self.fits(number - weight))
    }

    /// Computes the table of a kit from those of its parts; gives the joins.
    fn fill(&self, number: usize, vector: &[u32], area: i128, table: &mut [T]) -> u64 {
        table.fill(T::FAR);
        let mut joins = 0_u64;
        for part in Parts::new(&self.counts, vector) {
            let other = number - part;
            if other < part || other == 0 {
                break;
            }
            if !self.has_table(part) || !self.has_table(other) {
                continue;
            }
            let (one, two) = (self.span(part), self.span(other));
            let (a, b) = (self.table(part), self.table(other));
            if one.least.0 + two.least.0 <= self.board.size.0 {
                join(table, a, b, one.tall, two.tall);
                joins += 1;
            }
            if one.least.1 + two.least.1 <= self.board.size.1 {
                join(table, a, b, one.wide, two.wide);
                joins += 1;
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
        if let Some(slack) = self.slack {
            let most = i64::try_from(area + slack).unwrap_or(i64::MAX);
            wasteful(widths, &self.ys, most);
            wasteful(heights, &self.xs, most);
        }
        joins.div_ceil(2)
    }

    /// The lane of the largest known height that is at most `y`.
    pub(super) fn at_height(&self, y: i64) -> usize {
        self.ys.partition_point(|&it| it <= y).saturating_sub(1)
    }

    /// The lane of the largest known width that is at most `x`.
    pub(super) fn at_width(&self, x: i64) -> usize {
        self.ys.len() + self.xs.partition_point(|&it| it <= x).saturating_sub(1)
    }
}

/// Lowers lanes to the sums of two others, where both are known.
fn join<T: Lane>(table: &mut [T], a: &[T], b: &[T], one: (u32, u32), two: (u32, u32)) {
    let (from, to) = (one.0.max(two.0) as usize, one.1.min(two.1) as usize);
    if to <= from {
        return;
    }
    let lanes = table[from..to].iter_mut().zip(&a[from..to]).zip(&b[from..to]);
    for ((lane, &a), &b) in lanes {
        *lane = (*lane).min(a.plus(b));
    }
}

/// Leaves out lanes whose rectangle has more area than `most`.
fn wasteful<T: Lane>(lanes: &mut [T], at: &[i64], most: i64) {
    for (lane, at) in lanes.iter_mut().zip(at) {
        if most < lane.length().saturating_mul(*at) {
            *lane = T::FAR;
        }
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
    lane::walk(mine, at, theirs, |lane, beyond| {
        if let Some(&enough) = by.get(beyond) {
            *lane = (*lane).min(T::from_length(enough));
        }
    });
}
