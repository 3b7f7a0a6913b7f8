//! Fewer pixels, and greys.

use super::Picture;
use super::tone::Greys;

impl Picture {
    /// The picture with no more pixels than so many a side, as they are stored;
    /// each is the mean of those it stands for. Larger sizes leave it as it is.
    #[must_use]
    pub fn shrunk(&self, width: u32, height: u32) -> Self {
        let width = width.clamp(1, self.width);
        let height = height.clamp(1, self.height);
        if (width, height) == (self.width, self.height) {
            return self.clone();
        }
        let across = shares(self.width, width);
        let down = shares(self.height, height);
        let depth = self.depth;
        let long = width as usize * depth;
        let mut pixels = Vec::with_capacity(long * height as usize);
        let mut row = vec![0_u64; long];
        for (from, weights) in &down {
            row.fill(0);
            for (y, high) in (*from..).zip(weights) {
                let stored = self.row(y);
                for (x, (from, weights)) in across.iter().enumerate() {
                    for (at, wide) in (*from..).zip(weights) {
                        let share = high * wide;
                        for part in 0..depth {
                            row[x * depth + part] +=
                                share * u64::from(stored[at * depth + part]);
                        }
                    }
                }
            }
            pixels.extend(row.iter().map(|sum| {
                let mean = (sum + (WHOLE * WHOLE / 2)) / (WHOLE * WHOLE);
                u8::try_from(mean).unwrap_or(u8::MAX)
            }));
        }
        let (stands, lossy) = (self.stands, self.lossy);
        Self { width, height, stands, depth, pixels, file: None, lossy }
    }

    /// The picture in greys of the same luminance.
    #[must_use]
    pub fn gray(&self) -> Self {
        if self.depth == 1 {
            return self.clone();
        }
        let greys = Greys::new();
        let colors = self.pixels.chunks_exact(3);
        let pixels = colors.map(|it| greys.of([it[0], it[1], it[2]])).collect();
        let Self { width, height, stands, lossy, .. } = *self;
        Self { width, height, stands, depth: 1, pixels, file: None, lossy }
    }
}

/// The weights of all old pixels in a new one sum up to this.
const WHOLE: u64 = 1 << 16;

/// For each of the new pixels in a line, the first old one and the weights of it
/// and those that follow.
fn shares(old: u32, new: u32) -> Vec<(usize, Vec<u64>)> {
    let (old, new) = (u64::from(old), u64::from(new));
    (0..new)
        .map(|at| {
            // In units of 1/new of an old pixel, a new one is `old` long.
            let (start, end) = (at * old, (at + 1) * old);
            let first = start / new;
            let last = (end - 1) / new;
            let mut left = WHOLE;
            let weights = (first..=last).map(|it| {
                let long = end.min((it + 1) * new) - start.max(it * new);
                let weight = if it == last { left } else { long * WHOLE / old };
                left -= weight;
                weight
            });
            (usize::try_from(first).unwrap_or(usize::MAX), weights.collect())
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::{WHOLE, shares};

    #[test]
    fn every_old_pixel_counts_and_weights_are_whole() {
        for (old, new) in [(7, 3), (1000, 999), (5, 1), (64, 64), (9, 4)] {
            let shares = shares(old, new);
            assert_eq!(shares.len(), new as usize);
            let mut seen = vec![false; old as usize];
            for (from, weights) in shares {
                assert_eq!(weights.iter().sum::<u64>(), WHOLE);
                (from..).zip(weights).for_each(|(at, _)| seen[at] = true);
            }
            assert!(seen.iter().all(|it| *it), "{old} to {new}");
        }
    }
}
