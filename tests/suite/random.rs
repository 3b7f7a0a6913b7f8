//! Numbers that look random and are the same on every run.

/// A linear congruential generator (multiplier of Knuth's MMIX, from memory).
pub(crate) struct Random(u64);

impl Random {
    /// Begins a sequence.
    pub(crate) fn new(seed: u64) -> Self {
        Self(seed)
    }

    /// A number from 0 to `limit - 1`.
    pub(crate) fn below(&mut self, limit: i64) -> i64 {
        self.0 = self
            .0
            .wrapping_mul(6_364_136_223_846_793_005)
            .wrapping_add(1_442_695_040_888_963_407);
        i64::try_from(self.0 >> 33).expect("31 bits fit") % limit
    }
}
