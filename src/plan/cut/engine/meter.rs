//! Steps that the search may still take.

/// Counts steps down, so that a search ends at the same place on every machine.
///
/// A step is about the work of joining two tables of 64 lanes: some ten
/// nanoseconds on a desk computer of 2025.
#[derive(Clone, Copy, Debug)]
pub(super) struct Meter {
    left: u64,
    spent: u64,
}

impl Meter {
    /// So many steps may be spent.
    pub(super) fn new(budget: u64) -> Self {
        Self { left: budget, spent: 0 }
    }

    /// Spends steps; `false` if there are not so many left. Then the rest is
    /// gone too, so that a search can't go on with smaller bites.
    pub(super) fn spend(&mut self, steps: u64) -> bool {
        if self.left < steps {
            self.spent += self.left;
            self.left = 0;
            return false;
        }
        self.left -= steps;
        self.spent += steps;
        true
    }

    /// How many steps were spent.
    pub(super) fn spent(&self) -> u64 {
        self.spent
    }

    /// How many steps are left.
    pub(super) fn left(&self) -> u64 {
        self.left
    }

    /// Takes over what a share has spent.
    pub(super) fn add(&mut self, share: Self) {
        let spent = share.spent.min(self.left);
        self.left -= spent;
        self.spent += spent;
    }

    /// Steps for `joins` joins of tables of `lanes` lanes.
    pub(super) fn lanes(joins: u64, lanes: usize) -> u64 {
        joins.saturating_mul(u64::try_from(lanes / 64 + 1).unwrap_or(u64::MAX))
    }
}
