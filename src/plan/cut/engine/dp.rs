//! The most value a rectangle can hold, and the most that can lie around one.
//!
//! *Inside* is the recursion of P. C. Gilmore and R. E. Gomory (1966) in the form
//! of J. E. Beasley (1985): as many of each part as one likes. *Outside* is its
//! counterpart for bottom-up search (K. V. Viswanathan and A. Bagchi, 1993): the
//! most value that can still be laid around a rectangle that is finished. Both
//! ignore how many parts are wanted, so they are upper bounds.

use crate::geom::Axis;
use crate::plan::cut::engine::board::Lie;
use crate::plan::cut::engine::raster::{Line, Raster};

/// A value for each pair of positions: rows are widths, cells are heights.
#[derive(Clone, Debug)]
pub(super) struct Table {
    cells: Vec<i32>,
    row: usize,
    /// The steps it took to fill it.
    pub(super) work: u64,
}

impl Table {
    fn new(raster: &Raster) -> Self {
        Self { cells: vec![0; raster.cells()], row: raster.y.len(), work: 0 }
    }

    /// The value at a position across and along.
    pub(super) fn get(&self, x: usize, y: usize) -> i32 {
        self.cells[x * self.row + y]
    }

    /// The values for one width, by height.
    pub(super) fn row(&self, x: usize) -> &[i32] {
        &self.cells[x * self.row..(x + 1) * self.row]
    }
}

/// A way to lie, with the kind and its value.
pub(super) type Valued = (Lie, usize, i32);

/// The ways to lie of all kinds whose value is above nothing.
pub(super) fn valued(lies: &[Vec<Lie>], values: &[i32]) -> Vec<Valued> {
    let mut all = Vec::new();
    for (kind, (lies, &value)) in lies.iter().zip(values).enumerate() {
        if 0 < value {
            all.extend(lies.iter().map(|&lie| (lie, kind, value)));
        }
    }
    all
}

/// The most value in each rectangle, with any number of each part.
///
/// `reach` is the greatest height of an upright cut and the greatest width of a
/// level one.
pub(super) fn inside(raster: &Raster, parts: &[Valued], reach: (i64, i64)) -> Table {
    let mut table = Table::new(raster);
    let (x, y) = (&raster.x, &raster.y);
    for (lie, _, value) in parts {
        let cell = x.floor(lie.width) * table.row + y.floor(lie.height);
        table.cells[cell] = table.cells[cell].max(*value);
    }
    let upright_to = y.at.partition_point(|&it| it <= reach.0);
    // A cut where nothing is gained over the position before is no use.
    let mut useful: Vec<usize> = Vec::new();
    let mut joins = 0;
    let mut looks = 0;
    for i in 1..x.len() {
        let (before, rest) = table.cells.split_at_mut(i * table.row);
        let row = &mut rest[..table.row];
        let earlier = |x: usize| &before[x * y.len()..(x + 1) * y.len()];
        at_least(row, earlier(i - 1));
        for &a in useful.iter().take_while(|&&a| x.at[a] * 2 <= x.at[i]) {
            let b = x.floor(x.at[i] - x.at[a]);
            let (a, b) = (&earlier(a)[..upright_to], &earlier(b)[..upright_to]);
            join(&mut row[..upright_to], a, b);
            joins += 1;
        }
        if x.at[i] <= reach.1 {
            looks += convolve(row, y);
        } else {
            rise(row);
        }
        if row.iter().zip(earlier(i - 1)).any(|(new, old)| old < new) {
            useful.push(i);
        }
    }
    table.work =
        joins * (y.len() as u64 / 64 + 1) + looks / 32 + raster.cells() as u64 / 64;
    table
}

/// The most value of one part in each rectangle.
pub(super) fn single(raster: &Raster, parts: &[Valued]) -> Table {
    let mut table = Table::new(raster);
    let (x, y) = (&raster.x, &raster.y);
    for (lie, _, value) in parts {
        let cell = x.floor(lie.width) * table.row + y.floor(lie.height);
        table.cells[cell] = table.cells[cell].max(*value);
    }
    for i in 0..x.len() {
        let (before, rest) = table.cells.split_at_mut(i * table.row);
        let row = &mut rest[..table.row];
        if 0 < i {
            at_least(row, &before[(i - 1) * y.len()..]);
        }
        rise(row);
    }
    table.work = raster.cells() as u64 / 64;
    table
}

/// The most value in each rectangle if it is only cut in one direction, into what
/// another table holds.
pub(super) fn row_of(raster: &Raster, single: &Table, axis: Axis) -> Table {
    let mut table = single.clone();
    let (x, y) = (&raster.x, &raster.y);
    let (mut joins, mut looks) = (0, 0);
    let mut useful: Vec<usize> = Vec::new();
    for i in 1..x.len() {
        let (before, rest) = table.cells.split_at_mut(i * table.row);
        let row = &mut rest[..table.row];
        let earlier = |x: usize| &before[x * y.len()..(x + 1) * y.len()];
        if axis == Axis::Level {
            looks += convolve(row, y);
            continue;
        }
        at_least(row, earlier(i - 1));
        for &a in useful.iter().take_while(|&&a| x.at[a] * 2 <= x.at[i]) {
            join(row, earlier(a), earlier(x.floor(x.at[i] - x.at[a])));
            joins += 1;
        }
        if row.iter().zip(earlier(i - 1)).any(|(new, old)| old < new) {
            useful.push(i);
        }
    }
    table.work =
        joins * (y.len() as u64 / 64 + 1) + looks / 32 + raster.cells() as u64 / 64;
    table
}

/// The most value around a finished rectangle, with any number of each part.
pub(super) fn outside(raster: &Raster, inside: &Table) -> Table {
    let mut table = Table::new(raster);
    let (x, y) = (&raster.x, &raster.y);
    let useful: Vec<usize> = (1..x.len())
        .filter(|&a| {
            inside.row(a).iter().zip(inside.row(a - 1)).any(|(new, old)| old < new)
        })
        .collect();
    let whole = (x.at[x.len() - 1], y.at[y.len() - 1]);
    let mut steps: Vec<usize> = Vec::new();
    let mut joins = 0;
    let mut looks = 0;
    for i in (0..x.len()).rev() {
        let (head, later) = table.cells.split_at_mut((i + 1) * table.row);
        let row = &mut head[i * y.len()..];
        let at = |x: usize| &later[(x - i - 1) * y.len()..(x - i) * y.len()];
        if i + 1 < x.len() {
            at_least(row, at(i + 1));
        }
        for &a in useful.iter().take_while(|&&a| x.at[a] + x.at[i] <= whole.0) {
            let around = x.floor(x.at[i] + x.at[a]);
            if i < around {
                join(row, at(around), inside.row(a));
                joins += 1;
            }
        }
        let beside = inside.row(i);
        steps.clear();
        steps.extend((1..y.len()).filter(|&c| beside[c - 1] < beside[c]));
        looks += (steps.len() * y.len()) as u64;
        for j in (0..y.len()).rev() {
            let mut most = row[j];
            if j + 1 < y.len() {
                most = most.max(row[j + 1]);
            }
            for &c in &steps {
                if whole.1 < y.at[j] + y.at[c] {
                    break;
                }
                most = most.max(row[y.floor(y.at[j] + y.at[c])] + beside[c]);
            }
            row[j] = most;
        }
    }
    table.work =
        joins * (y.len() as u64 / 64 + 1) + looks / 32 + raster.cells() as u64 / 64;
    table
}

/// How many of each kind a best filling of the whole sheet holds.
pub(super) fn filling(
    raster: &Raster,
    parts: &[Valued],
    table: &Table,
    reach: (i64, i64),
    kinds: usize,
) -> Vec<u32> {
    let mut counts = vec![0; kinds];
    let mut open = vec![(raster.x.len() - 1, raster.y.len() - 1)];
    while let Some((x, y)) = open.pop() {
        match first_cut(raster, parts, table, reach, (x, y)) {
            First::Nothing => {}
            First::Part(part) => counts[parts[part].1] += 1,
            First::Cut(_, one, other) => open.extend([one, other]),
        }
    }
    counts
}

/// What a best filling of a rectangle begins with.
pub(super) enum First {
    /// Nothing of value fits.
    Nothing,
    /// It is one part, by its place in the list.
    Part(usize),
    /// It is cut in two along an axis: the positions of both.
    Cut(Axis, (usize, usize), (usize, usize)),
}

/// Finds what a best filling of a rectangle begins with.
pub(super) fn first_cut(
    raster: &Raster,
    parts: &[Valued],
    table: &Table,
    reach: (i64, i64),
    (x, y): (usize, usize),
) -> First {
    let (mut x, mut y) = (x, y);
    let value = table.get(x, y);
    if value == 0 {
        return First::Nothing;
    }
    while 0 < x && table.get(x - 1, y) == value {
        x -= 1;
    }
    while 0 < y && table.get(x, y - 1) == value {
        y -= 1;
    }
    let (width, height) = (raster.x.at[x], raster.y.at[y]);
    let part = parts.iter().position(|(lie, _, it)| {
        *it == value && lie.width <= width && lie.height <= height
    });
    if let Some(part) = part {
        return First::Part(part);
    }
    if height <= reach.0 {
        for a in 1..x {
            let b = raster.x.floor(width - raster.x.at[a]);
            if table.get(a, y) + table.get(b, y) == value {
                return First::Cut(Axis::Upright, (a, y), (b, y));
            }
        }
    }
    if width <= reach.1 {
        for a in 1..y {
            let b = raster.y.floor(height - raster.y.at[a]);
            if table.get(x, a) + table.get(x, b) == value {
                return First::Cut(Axis::Level, (x, a), (x, b));
            }
        }
    }
    First::Nothing
}

/// Raises each value to that of another row.
fn at_least(row: &mut [i32], other: &[i32]) {
    for (value, &other) in row.iter_mut().zip(other) {
        *value = (*value).max(other);
    }
}

/// Raises each value to the sum of two other rows.
fn join(row: &mut [i32], a: &[i32], b: &[i32]) {
    for ((value, &a), &b) in row.iter_mut().zip(a).zip(b) {
        *value = (*value).max(a + b);
    }
}

/// More height is never worse.
fn rise(row: &mut [i32]) {
    let mut most = 0;
    for value in row {
        most = most.max(*value);
        *value = most;
    }
}

/// Level cuts within one width: every height as the sum of two smaller ones.
///
/// Gives the looks it took.
fn convolve(row: &mut [i32], y: &Line) -> u64 {
    let mut looks = 0;
    for c in 1..row.len() {
        let value = row[c].max(row[c - 1]);
        let gained = row[c - 1] < value;
        row[c] = value;
        if !gained {
            continue;
        }
        if y.even {
            let most = c.min(row.len() - 1 - c);
            looks += most as u64 / 4;
            let (low, high) = row.split_at_mut(c + 1);
            for (target, &other) in high.iter_mut().zip(&low[1..=most]) {
                *target = (*target).max(value + other);
            }
        } else {
            let whole = y.at[row.len() - 1];
            looks += c as u64;
            for d in 1..=c {
                let sum = y.at[c] + y.at[d];
                if whole < sum {
                    break;
                }
                if row[d - 1] < row[d] {
                    // The first position that is high enough for both.
                    let floor = y.floor(sum);
                    let target = floor + usize::from(y.at[floor] < sum);
                    row[target] = row[target].max(value + row[d]);
                }
            }
        }
    }
    looks
}
