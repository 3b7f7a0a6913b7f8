//! Draws what was built up.

use crate::geom::Axis;
use crate::plan::cut::engine::board::Lie;
use crate::plan::cut::engine::buildup::{How, Search};
use crate::plan::cut::engine::packed::Packed;
use crate::plan::cut::engine::sketch::Sketch;

impl<P: Packed> Search<'_, P> {
    /// How many of each kind a build holds.
    pub(in crate::plan::cut::engine) fn counts(&self, id: u32) -> Vec<u32> {
        self.places.read(self.builds[id as usize].counts)
    }

    /// Draws a build into a leaf of this size, in 1/14400 mm.
    pub(in crate::plan::cut::engine) fn draw(
        &self,
        id: u32,
        size: (i64, i64),
        sketch: &mut Sketch,
        leaf: usize,
    ) {
        let unit = self.board.unit;
        let longest = self.board.longest;
        let mut open = vec![(id, size, leaf)];
        while let Some((id, size, leaf)) = open.pop() {
            let build = &self.builds[id as usize];
            let (axis, one, other) = match build.how {
                How::Part(kind, lie) => {
                    let kind = kind as usize;
                    let Lie { width, height, turned } =
                        self.board.lies[kind][lie as usize];
                    let lies = (width * unit.0, height * unit.1);
                    sketch.place(leaf, size, (kind, turned), lies, size.0 <= longest);
                    continue;
                }
                How::Join(axis, one, other) => (axis, one, other),
            };
            // What is laid far off comes second.
            let far = self.far.is_some_and(|it| 0 < self.counts(one)[it]);
            let (one, other) = if far { (other, one) } else { (one, other) };
            let width = self.raster.x.at[build.x as usize] * unit.0;
            let height = self.raster.y.at[build.y as usize] * unit.1;
            let first = &self.builds[one as usize];
            match axis {
                Axis::Upright if longest < size.1 => {
                    let (leaf, _) = sketch.cut(leaf, Axis::Level, height, size.1);
                    open.push((id, (size.0, height), leaf));
                }
                Axis::Level if longest < size.0 => {
                    let (leaf, _) = sketch.cut(leaf, Axis::Upright, width, size.0);
                    open.push((id, (width, size.1), leaf));
                }
                Axis::Upright => {
                    let at = self.raster.x.at[first.x as usize] * unit.0;
                    let (left, right) = sketch.cut(leaf, axis, at, size.0);
                    open.push((one, (at, size.1), left));
                    let mut right = right.expect("both builds take room");
                    let mut rest = size.0 - at;
                    if self.board.stages.is_some() {
                        // Trimmed in the same run, so that nothing is turned for it.
                        let needed = self.builds[other as usize].x as usize;
                        let needed = self.raster.x.at[needed] * unit.0;
                        right = sketch.cut(right, axis, needed, rest).0;
                        rest = needed;
                    }
                    open.push((other, (rest, size.1), right));
                }
                Axis::Level => {
                    let at = self.raster.y.at[first.y as usize] * unit.1;
                    let (top, bottom) = sketch.cut(leaf, axis, at, size.1);
                    open.push((one, (size.0, at), top));
                    let mut bottom = bottom.expect("both builds take room");
                    let mut rest = size.1 - at;
                    if self.board.stages.is_some() {
                        let needed = self.builds[other as usize].y as usize;
                        let needed = self.raster.y.at[needed] * unit.1;
                        bottom = sketch.cut(bottom, axis, needed, rest).0;
                        rest = needed;
                    }
                    open.push((other, (size.0, rest), bottom));
                }
            }
        }
    }
}
