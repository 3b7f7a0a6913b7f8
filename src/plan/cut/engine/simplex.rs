//! The linear programme behind many equal sheets: how often to use each way.
//!
//! G. B. Dantzig's revised simplex method with an explicit inverse. It works in
//! floating point because it only *guides*: it says which ways to cut are worth
//! having and which weights on the parts look right. What is claimed with those
//! weights is recomputed in whole numbers by the caller. Only sums, products and
//! quotients are used, which IEEE 754 fixes to the last bit, so that the guidance
//! is the same on every machine.

/// A value nearer to zero than this counts as zero.
const TINY: f64 = 1e-9;
/// Exchanges at most in one go.
const MOST_PIVOTS: u32 = 2_000;

/// Ways to cut a sheet, and how often each is used so that at least the wanted
/// counts come out and the sheets are as few as fractions allow.
#[derive(Clone, Debug)]
pub(super) struct Master {
    wanted: Vec<f64>,
    /// Counts by kind of each way.
    pub(super) ways: Vec<Vec<u32>>,
    basis: Vec<Entry>,
    inverse: Vec<Vec<f64>>,
    level: Vec<f64>,
}

/// What a place in the basis stands for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Entry {
    /// A way, by its index.
    Way(usize),
    /// More of a kind than wanted.
    Surplus(usize),
}

impl Master {
    /// Starts with one way for each kind, in the order of the kinds: so many of
    /// that kind, at least 1, and nothing else.
    pub(super) fn new(wanted: &[u32], alone: &[u32]) -> Self {
        let n = wanted.len();
        let mut ways = vec![vec![0; n]; n];
        let mut inverse = vec![vec![0.0; n]; n];
        let mut level = vec![0.0; n];
        for kind in 0..n {
            ways[kind][kind] = alone[kind];
            inverse[kind][kind] = 1.0 / f64::from(alone[kind]);
            level[kind] = f64::from(wanted[kind]) / f64::from(alone[kind]);
        }
        let wanted = wanted.iter().map(|&it| f64::from(it)).collect();
        Self { wanted, ways, basis: (0..n).map(Entry::Way).collect(), inverse, level }
    }

    /// The weight of one part of each kind: the multipliers of the basis.
    pub(super) fn weights(&self) -> Vec<f64> {
        let n = self.wanted.len();
        let mut weights = vec![0.0; n];
        for (entry, row) in self.basis.iter().zip(&self.inverse) {
            if matches!(entry, Entry::Way(_)) {
                for (weight, value) in weights.iter_mut().zip(row) {
                    *weight += value;
                }
            }
        }
        weights
    }

    /// How often each way is used.
    pub(super) fn uses(&self) -> Vec<f64> {
        let mut uses = vec![0.0; self.ways.len()];
        for (entry, level) in self.basis.iter().zip(&self.level) {
            if let Entry::Way(way) = entry {
                uses[*way] = level.max(0.0);
            }
        }
        uses
    }

    /// Adds a way.
    pub(super) fn add(&mut self, way: Vec<u32>) {
        self.ways.push(way);
    }

    /// Exchanges ways until none of those known would save anything; gives the
    /// number of exchanges.
    pub(super) fn improve(&mut self) -> u32 {
        let mut pivots = 0;
        while pivots < MOST_PIVOTS {
            let weights = self.weights();
            let Some(entering) = self.best_entry(&weights) else { break };
            if !self.exchange(entering) {
                break;
            }
            pivots += 1;
        }
        pivots
    }

    /// What would save most; the first of equals.
    fn best_entry(&self, weights: &[f64]) -> Option<Entry> {
        let mut best = None;
        let mut most = TINY;
        for (index, way) in self.ways.iter().enumerate() {
            let worth: f64 =
                way.iter().zip(weights).map(|(&n, it)| f64::from(n) * it).sum();
            if most < worth - 1.0 {
                most = worth - 1.0;
                best = Some(Entry::Way(index));
            }
        }
        for (kind, &weight) in weights.iter().enumerate() {
            if most < -weight {
                most = -weight;
                best = Some(Entry::Surplus(kind));
            }
        }
        best.filter(|it| !self.basis.contains(it))
    }

    /// Takes an entry into the basis; `false` if that changes nothing.
    fn exchange(&mut self, entering: Entry) -> bool {
        let n = self.wanted.len();
        let direction: Vec<f64> = match entering {
            Entry::Way(way) => {
                let way = &self.ways[way];
                let times = |row: &Vec<f64>| {
                    row.iter().zip(way).map(|(it, &n)| it * f64::from(n)).sum()
                };
                self.inverse.iter().map(times).collect()
            }
            Entry::Surplus(kind) => self.inverse.iter().map(|row| -row[kind]).collect(),
        };
        let mut leaving = None;
        let mut least = f64::INFINITY;
        for place in 0..n {
            if TINY < direction[place] {
                let ratio = self.level[place].max(0.0) / direction[place];
                let pivot = leaving.map_or(0.0, |it: usize| direction[it]);
                if ratio < least - TINY
                    || (ratio < least + TINY && pivot < direction[place])
                {
                    least = ratio.min(least);
                    leaving = Some(place);
                }
            }
        }
        let Some(leaving) = leaving else { return false };
        let pivot = direction[leaving];
        for value in &mut self.inverse[leaving] {
            *value /= pivot;
        }
        self.level[leaving] /= pivot;
        let row = self.inverse[leaving].clone();
        let level = self.level[leaving];
        for (place, &factor) in direction.iter().enumerate() {
            if place != leaving && factor != 0.0 {
                for (value, &other) in self.inverse[place].iter_mut().zip(&row) {
                    *value -= factor * other;
                }
                self.level[place] -= factor * level;
            }
        }
        self.basis[leaving] = entering;
        true
    }
}
