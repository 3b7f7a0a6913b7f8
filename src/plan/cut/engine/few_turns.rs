//! Every smaller kit and the narrowest sheet for it, if the paper may be turned only
//! a few times.
//!
//! Where two or three runs of cuts are allowed, a sheet is strips, or strips of
//! strips, as P. C. Gilmore and R. E. Gomory have them (1965): the deepest run frees
//! parts, every other one parts and what the run below it makes. For each vector of
//! counts `S`, each run and each length `y` of its cuts there is a least extent
//! `w(S, y)`: that of one part, that of the run below turned, or
//! `w(A, y) + w(S - A, y)`. Both directions of the first run are looked at, so the
//! answer is exact for every kit.

use crate::geom::Axis;
use crate::plan::cut::engine::board::{Board, Lie};
use crate::plan::cut::engine::counts::{Counts, Parts};
use crate::plan::cut::engine::frontier;
use crate::plan::cut::engine::meter::Meter;
use crate::plan::cut::engine::sketch::{Sheet, Sketch};

/// Bytes that the tables may take.
const MEMORY: usize = 192 << 20;
/// More runs of cuts than this are not told apart here.
const MOST_STAGES: usize = 8;
/// Longer than any sheet; twice of it is still a number.
const FAR: i32 = (1 << 30) - 1;
/// No table for this kit: it can't be cut from the sheet.
const NONE: u32 = u32::MAX;

/// The tables for every kit that can be cut from one sheet.
pub(super) struct FewTurns {
    board: Board,
    counts: Counts,
    /// The runs of a first cut upright and of one level, each from the deepest to the
    /// first.
    runs: Vec<Run>,
    /// Heights and widths at which lengths are known.
    ys: Vec<i64>,
    xs: Vec<i64>,
    slots: Vec<u32>,
    lanes: Vec<i32>,
    stride: usize,
}

/// A run of cuts in one direction.
#[derive(Clone, Copy, Debug)]
struct Run {
    /// Upright cuts: least widths by height; level ones: least heights by width.
    axis: Axis,
    /// Its lanes in a table.
    from: usize,
    to: usize,
    /// Cuts only parts; else also what the run before it in the list makes.
    deepest: bool,
    /// Is the first run of a sheet.
    first: bool,
}

impl FewTurns {
    /// The steps it would take to fill the tables.
    pub(super) fn work(board: &Board, counts: &Counts, most: u64) -> u64 {
        let stages = u64::from(board.stages.unwrap_or(0));
        frontier::work(board, counts, most).saturating_mul(stages)
    }

    /// Fills the tables, unless the sheet is too fine, a cut may be too long, or memory
    /// or steps run out.
    pub(super) fn new(board: &Board, counts: &Counts, meter: &mut Meter) -> Option<Self> {
        let stages = usize::from(board.stages?);
        let size = (board.size.0.max(board.size.1), board.real());
        if MOST_STAGES < stages
            || i64::from(FAR) <= size.0
            || board.longest < size.1.0.max(size.1.1)
        {
            return None;
        }
        let (xs, ys) = (board.sums(false)?, board.sums(true)?);
        let mut runs = Vec::new();
        let mut stride = 0;
        for first in [Axis::Upright, Axis::Level] {
            for run in 0..stages {
                let below = stages - 1 - run;
                let axis = if below % 2 == 0 { first } else { first.other() };
                let lanes = if axis == Axis::Upright { ys.len() } else { xs.len() };
                let (from, to) = (stride, stride + lanes);
                runs.push(Run { axis, from, to, deepest: run == 0, first: below == 0 });
                stride = to;
            }
        }
        let (board, counts) = (board.clone(), counts.clone());
        let (slots, lanes) = (vec![NONE; counts.len()], Vec::new());
        let mut few = Self { board, counts, runs, ys, xs, slots, lanes, stride };
        few.fill(meter)?;
        Some(few)
    }

    fn fill(&mut self, meter: &mut Meter) -> Option<()> {
        let most = MEMORY / (self.stride * size_of::<i32>());
        let counts = self.counts.clone();
        let mut vector = counts.vector(0);
        let mut table = vec![FAR; self.stride];
        let mut tables = 0;
        for number in 1..counts.len() {
            counts.step(&mut vector);
            let mut kinds = vector.iter().zip(counts.weights());
            if !kinds.all(|(&n, &weight)| n == 0 || self.fits(number - weight)) {
                continue;
            }
            table.fill(FAR);
            let mut joins = 1;
            for part in Parts::new(&counts, &vector) {
                let other = number - part;
                if other < part || other == 0 {
                    break;
                }
                if let (Some(a), Some(b)) = (self.table(part), self.table(other)) {
                    for ((lane, a), b) in table.iter_mut().zip(a).zip(b) {
                        *lane = (*lane).min(a + b);
                    }
                    joins += 1;
                }
            }
            let splits = Counts::splits(&vector) / 8;
            if !meter.spend(Meter::lanes(joins, self.stride) + splits) {
                return None;
            }
            let one = (vector.iter().sum::<u32>() == 1)
                .then(|| vector.iter().position(|&it| it == 1))
                .flatten();
            self.complete(&mut table, one);
            if table.iter().any(|it| *it < FAR) {
                if most <= tables {
                    return None;
                }
                self.slots[number] = u32::try_from(tables).ok()?;
                self.lanes.extend_from_slice(&table);
                tables += 1;
            }
        }
        Some(())
    }

    /// Adds to each run what needs no cut in it: one part, or the run below.
    fn complete(&self, table: &mut [i32], one: Option<usize>) {
        for (index, run) in self.runs.iter().enumerate() {
            let (at, along) = self.lengths(run.axis);
            if let Some(kind) = one {
                for lie in &self.board.lies[kind] {
                    let (extent, length) = lengthwise(lie, run.axis);
                    let from = at.partition_point(|&it| it < length);
                    for lane in &mut table[run.from + from..run.to] {
                        *lane = (*lane).min(narrow(extent));
                    }
                }
            }
            if !run.deepest {
                let (before, mine) = table.split_at_mut(run.from);
                let below = &before[self.runs[index - 1].from..];
                // The longer the cuts, the less extent the run below needs.
                let mut place = along.len();
                for (lane, &length) in mine[..run.to - run.from].iter_mut().zip(at) {
                    while 0 < place && i64::from(below[place - 1]) <= length {
                        place -= 1;
                    }
                    if let Some(&extent) = along.get(place) {
                        *lane = (*lane).min(narrow(extent));
                    }
                }
            }
            let (width, height) = self.board.size;
            let most = if run.axis == Axis::Upright { width } else { height };
            for lane in &mut table[run.from..run.to] {
                if most < i64::from(*lane) {
                    *lane = FAR;
                }
            }
        }
    }

    /// Lengths of the cuts in a direction, and extents across them.
    fn lengths(&self, axis: Axis) -> (&[i64], &[i64]) {
        match axis {
            Axis::Upright => (&self.ys, &self.xs),
            Axis::Level => (&self.xs, &self.ys),
        }
    }

    fn table(&self, kit: usize) -> Option<&[i32]> {
        let slot = self.slots[kit];
        let start = slot as usize * self.stride;
        (slot != NONE).then(|| &self.lanes[start..start + self.stride])
    }

    /// Whether a kit can be cut from the sheet.
    pub(super) fn fits(&self, kit: usize) -> bool {
        kit == 0 || self.first_run(kit).is_some()
    }

    /// The first run of cuts that a kit can be cut with.
    fn first_run(&self, kit: usize) -> Option<usize> {
        let table = self.table(kit)?;
        (0..self.runs.len())
            .find(|&it| self.runs[it].first && table[self.runs[it].to - 1] < FAR)
    }

    /// A sheet cut into a kit that fits.
    pub(super) fn draw(&self, kit: usize) -> Sheet {
        let mut sheet = Sheet::empty(self.board.wanted.len());
        sheet.holds = self.counts.vector(kit);
        let Some(run) = self.first_run(kit) else { return sheet };
        let mut open = vec![(kit, run, self.board.real(), sheet.root)];
        while let Some((kit, run, size, leaf)) = open.pop() {
            let task = self.draw_one(kit, run, size, leaf, &mut sheet.sketch);
            open.extend(task);
        }
        sheet
    }

    /// Draws one cut, or a part; gives what remains to be drawn.
    fn draw_one(
        &self,
        kit: usize,
        index: usize,
        size: (i64, i64),
        leaf: usize,
        sketch: &mut Sketch,
    ) -> Vec<(usize, usize, (i64, i64), usize)> {
        let run = self.runs[index];
        let unit = self.board.unit;
        let (extent, length, unit_across) = match run.axis {
            Axis::Upright => (size.0, size.1 / unit.1, unit.0),
            Axis::Level => (size.1, size.0 / unit.0, unit.1),
        };
        let lane = self.lengths(run.axis).0.partition_point(|&it| it <= length) - 1;
        let at = |kit: usize| self.table(kit).map_or(FAR, |it| it[run.from + lane]);
        let needed = at(kit);
        let vector = self.counts.vector(kit);
        let part = |at: i64| match run.axis {
            Axis::Upright => ((at, size.1), (extent - at, size.1)),
            Axis::Level => ((size.0, at), (size.0, extent - at)),
        };
        if vector.iter().sum::<u32>() == 1 {
            let kind = vector.iter().position(|&it| it == 1).expect("one part");
            let fits = |lie: &&Lie| {
                lengthwise(lie, run.axis).0 == i64::from(needed)
                    && lengthwise(lie, run.axis).1 <= length
            };
            if let Some(lie) = self.board.lies[kind].iter().find(fits) {
                // Cut off in the run it belongs to; what is left is a trim.
                let extent_cut = i64::from(needed) * unit_across;
                let (leaf, _) = sketch.cut(leaf, run.axis, extent_cut, extent);
                let lies = (lie.width * unit.0, lie.height * unit.1);
                let strip = part(extent_cut).0;
                sketch.place(leaf, strip, (kind, lie.turned), lies, true);
                return Vec::new();
            }
        }
        if !run.deepest {
            let below = self.runs[index - 1];
            let along = self.lengths(run.axis).1;
            let place = along.partition_point(|&it| it <= extent / unit_across) - 1;
            let lane = self.table(kit).map_or(FAR, |it| it[below.from + place]);
            if i64::from(lane) <= length {
                return vec![(kit, index - 1, size, leaf)];
            }
        }
        let split = Parts::new(&self.counts, &vector)
            .find(|&it| it < kit && at(it) + at(kit - it) == needed)
            .expect("what the table holds came from somewhere");
        let cut = i64::from(at(split)) * unit_across;
        let (one, other) = sketch.cut(leaf, run.axis, cut, extent);
        let (strip, rest) = part(cut);
        let other = other.expect("both kits take room");
        vec![(split, index, strip, one), (kit - split, index, rest, other)]
    }
}

/// How far a part reaches across cuts of a direction, and along them.
fn lengthwise(lie: &Lie, axis: Axis) -> (i64, i64) {
    match axis {
        Axis::Upright => (lie.width, lie.height),
        Axis::Level => (lie.height, lie.width),
    }
}

/// An extent as a lane; what is too long is beyond every sheet.
fn narrow(extent: i64) -> i32 {
    i32::try_from(extent).unwrap_or(FAR).min(FAR)
}
