//! The cuts that the tables of a frontier stand for.

use crate::geom::Axis;
use crate::plan::cut::engine::board::Lie;
use crate::plan::cut::engine::counts::Parts;
use crate::plan::cut::engine::few_cuts::{FewCuts, FirstCut};
use crate::plan::cut::engine::frontier::Frontier;
use crate::plan::cut::engine::lane::Lane;
use crate::plan::cut::engine::sketch::Sketch;

impl<T: Lane> Frontier<T> {
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
        let few = FewCuts::new(self, kit, size);
        let mut open = vec![(kit, size, leaf)];
        while let Some((kit, size, leaf)) = open.pop() {
            let vector = self.counts.vector(kit);
            if vector.iter().sum::<u32>() == 1 {
                self.place(&vector, size, sketch, leaf);
                continue;
            }
            let cut = few.first_cut(kit, size);
            let (part, axis, at) = cut.unwrap_or_else(|| self.split(kit, &vector, size));
            let extent = if axis == Axis::Upright { size.0 } else { size.1 };
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
    /// Of several the one that leaves the fewest strips to be trimmed.
    fn split(&self, kit: usize, vector: &[u32], size: (i64, i64)) -> FirstCut {
        let unit = self.board.unit;
        let height = size.1 / unit.1;
        let row = self.at_height(height);
        // More width than needed is trimmed off in the end.
        let width = self.table(kit)[row].length().min(size.0 / unit.0);
        let line = self.at_width(width);
        let (upright, level) =
            (size.1 <= self.board.longest, size.0 <= self.board.longest);
        let mut best: Option<(u32, FirstCut)> = None;
        for part in Parts::new(&self.counts, vector) {
            if part == kit {
                break;
            }
            if !self.has_table(part) || !self.has_table(kit - part) {
                continue;
            }
            let (a, b) = (self.table(part), self.table(kit - part));
            let mut consider = |axis, first: T, second: T, most: i64, across: i64| {
                if most < first.plus(second).length() {
                    return;
                }
                let (one, rest) = (first.length(), most - first.length());
                let trims = u32::from(self.wastes(part, one * across))
                    + u32::from(self.wastes(kit - part, rest * across))
                    + u32::from(second.length() < rest);
                if best.is_none_or(|it| trims < it.0) {
                    let unit = if axis == Axis::Upright { unit.0 } else { unit.1 };
                    best = Some((trims, (part, axis, one * unit)));
                }
            };
            if upright {
                consider(Axis::Upright, a[row], b[row], width, height);
            }
            if level {
                consider(Axis::Level, a[line], b[line], height, width);
            }
            if best.is_some_and(|it| it.0 == 0) {
                break;
            }
        }
        if let Some((_, split)) = best {
            return split;
        }
        // The cut that is needed would be too long: trim first.
        let reach = self.board.reach();
        if level {
            (kit, Axis::Level, self.ys[self.at_height(reach.0)] * unit.1)
        } else {
            (kit, Axis::Upright, self.xs[self.at_width(reach.1) - self.ys.len()] * unit.0)
        }
    }

    /// Whether a kit leaves some of so much area.
    pub(super) fn wastes(&self, kit: usize, area: i64) -> bool {
        let vector = self.counts.vector(kit);
        let used: i128 = vector
            .iter()
            .zip(&self.board.lies)
            .filter(|(n, _)| 0 < **n)
            .map(|(&n, lies)| i128::from(n) * lies[0].area())
            .sum();
        used < i128::from(area)
    }

    /// The way in which the one part of a kit lies within a rectangle.
    pub(super) fn lie_within(&self, vector: &[u32], size: (i64, i64)) -> Option<&Lie> {
        let kind = vector.iter().position(|&it| it == 1)?;
        let unit = self.board.unit;
        let fits =
            |it: &&Lie| it.width * unit.0 <= size.0 && it.height * unit.1 <= size.1;
        self.board.lies[kind].iter().find(fits)
    }

    /// Makes a leaf one part.
    fn place(&self, vector: &[u32], size: (i64, i64), sketch: &mut Sketch, leaf: usize) {
        let kind = vector.iter().position(|&it| it == 1).expect("one part");
        let lie = self.lie_within(vector, size).expect("the part fits");
        let unit = self.board.unit;
        let lies = (lie.width * unit.0, lie.height * unit.1);
        sketch.place(leaf, size, (kind, lie.turned), lies, size.0 <= self.board.longest);
    }
}
