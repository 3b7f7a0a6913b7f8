//! Prices on the wanted counts that make the unconstrained bound tight.
//!
//! If every part of a kind costs a price and the wanted counts are refunded at
//! that price, a filling with the wanted counts loses nothing, while one with too
//! many of a kind pays for it: J. E. Beasley's Lagrangian relaxation (1985) on
//! the unconstrained recursion. The prices are found by subgradient steps, and are
//! whole numbers, so that the bound is exact whatever they are.

use crate::plan::cut::engine::board::Lie;
use crate::plan::cut::engine::dp::{self, Table, Valued};
use crate::plan::cut::engine::meter::Meter;
use crate::plan::cut::engine::raster::Raster;

/// So many steps without gain, and the stride is halved.
const PATIENCE: u32 = 6;
/// A total value in scaled units stays below this.
const MOST: i64 = 1 << 29;

/// A filling problem: how much value a sheet can hold.
pub(super) struct Filling<'a> {
    /// The positions.
    pub(super) raster: &'a Raster,
    /// For each kind the ways it can lie.
    pub(super) lies: &'a [Vec<Lie>],
    /// For each kind the value of one part.
    pub(super) values: &'a [i64],
    /// For each kind how many are wanted.
    pub(super) wanted: &'a [u32],
    /// The greatest height of an upright cut, and width of a level one.
    pub(super) reach: (i64, i64),
    /// How many sheets are filled together.
    pub(super) sheets: u32,
}

/// Values less prices, the bound they give, and what is best inside.
pub(super) struct Priced {
    /// A value of 1 in the scaled units of everything below.
    pub(super) scale: i64,
    /// For each kind value less price, scaled; may be negative.
    pub(super) reduced: Vec<i32>,
    /// What is refunded in all, scaled.
    pub(super) refund: i64,
    /// Refund and best filling: no filling with the wanted counts is worth more.
    pub(super) bound: i64,
    /// The best values inside, scaled.
    pub(super) inside: Table,
    /// The prices, scaled.
    prices: Vec<i64>,
}

/// Prices on the counts.
#[derive(Clone, Debug)]
pub(super) struct Prices {
    scale: i64,
    prices: Vec<i64>,
}

impl Priced {
    /// What is refunded if less is wanted.
    pub(super) fn refund_for(&self, wanted: &[u32]) -> i64 {
        self.prices.iter().zip(wanted).map(|(it, &n)| it * i64::from(n)).sum()
    }

    /// The prices alone.
    pub(super) fn prices(&self) -> Prices {
        Prices { scale: self.scale, prices: self.prices.clone() }
    }
}

impl Filling<'_> {
    /// The scale: the largest power of two for which the sheet's value stays small.
    fn scale(&self, most: i64) -> i64 {
        let mut scale = 1;
        while scale < 1 << 16 && most.saturating_mul(scale * 4) < MOST {
            scale *= 2;
        }
        scale
    }

    /// Evaluates prices (scaled).
    fn price(&self, scale: i64, prices: &[i64]) -> (Priced, Vec<Valued>) {
        let reduced: Vec<i32> = self
            .values
            .iter()
            .zip(prices)
            .map(|(value, price)| {
                let reduced = (value * scale - price).max(-MOST);
                i32::try_from(reduced).expect("values are scaled to be small")
            })
            .collect();
        let parts = dp::valued(self.lies, &reduced);
        let inside = dp::inside(self.raster, &parts, self.reach);
        let refund =
            prices.iter().zip(self.wanted).map(|(it, &n)| it * i64::from(n)).sum();
        let best = inside.get(self.raster.x.len() - 1, self.raster.y.len() - 1);
        let bound = refund + i64::from(best) * i64::from(self.sheets);
        let prices = prices.to_vec();
        (Priced { scale, reduced, refund, bound, inside, prices }, parts)
    }

    /// Without prices: the plain unconstrained bound, and a best filling.
    ///
    /// `None` if the values are too large to be summed safely.
    pub(super) fn plain(&self) -> Option<(Priced, Vec<u32>)> {
        let total: i64 = self
            .values
            .iter()
            .zip(self.wanted)
            .try_fold(0_i64, |sum, (&value, &n)| {
                sum.checked_add(value.checked_mul(n.into())?)
            })?;
        if MOST / 2 <= self.most_by_area()? || MOST / 2 <= total {
            return None;
        }
        let prices = vec![0; self.values.len()];
        let (priced, parts) = self.price(1, &prices);
        let counts = self.counts(&priced, &parts);
        Some((priced, counts))
    }

    /// Prices that were good for a problem much like this one.
    pub(super) fn again(&self, plain: &Priced, old: &Prices) -> Option<Priced> {
        let scale = self.scale(plain.bound.max(self.most_by_area()?));
        let prices: Vec<i64> = old
            .prices
            .iter()
            .zip(self.values)
            .map(|(price, value)| (price * scale / old.scale).clamp(0, value * scale))
            .collect();
        Some(self.price(scale, &prices).0)
    }

    /// More value than any filling has: the densest kind all over the sheet.
    fn most_by_area(&self) -> Option<i64> {
        let whole =
            i128::from(*self.raster.x.at.last()?) * i128::from(*self.raster.y.at.last()?);
        let mut most = 0;
        for (lies, &value) in self.lies.iter().zip(self.values) {
            if let Some(lie) = lies.first() {
                most = most.max(whole * i128::from(value) / lie.area() + 1);
            }
        }
        i64::try_from(most * i128::from(self.sheets)).ok()
    }

    fn counts(&self, priced: &Priced, parts: &[Valued]) -> Vec<u32> {
        let kinds = self.values.len();
        let counts = dp::filling(self.raster, parts, &priced.inside, self.reach, kinds);
        counts.into_iter().map(|it| it * self.sheets).collect()
    }

    /// What a filling is worth if no more than the wanted counts are taken.
    pub(super) fn worth(&self, counts: &[u32]) -> i64 {
        counts
            .iter()
            .zip(self.wanted)
            .zip(self.values)
            .map(|((&count, &wanted), value)| i64::from(count.min(wanted)) * value)
            .sum()
    }

    /// Looks for prices with a low bound, for so many subgradient steps from the
    /// prices given. Stops where the bound (unscaled) is not above `target`, the
    /// value that is known to be reached. `None` if no bound is lower.
    pub(super) fn prices(
        &self,
        start: &Priced,
        target: i64,
        rounds: u32,
        meter: &mut Meter,
    ) -> Option<Priced> {
        let scale = self.scale((start.bound / start.scale).max(self.most_by_area()?));
        let mut prices: Vec<i64> =
            start.prices.iter().map(|it| it * scale / start.scale).collect();
        let parts = dp::valued(self.lies, &start.reduced);
        let mut counts = self.counts(start, &parts);
        let mut bound = start.bound / start.scale * scale + scale - 1;
        let mut best: Option<Priced> = None;
        let mut least = bound;
        let mut stride = 1.0_f64;
        let mut waited = 0;
        for _ in 0..rounds {
            if least < (target + 1) * scale {
                break;
            }
            let slope: Vec<i64> = self
                .wanted
                .iter()
                .zip(&counts)
                .zip(&prices)
                .map(|((&wanted, &count), &price)| {
                    let slope = i64::from(wanted) - i64::from(count);
                    if price == 0 { slope.min(0) } else { slope }
                })
                .collect();
            let norm: i64 = slope.iter().map(|it| it * it).sum();
            if norm == 0 {
                break;
            }
            let gap = (bound - target * scale).max(scale);
            let step = stride * gap as f64 / norm as f64;
            for ((price, &slope), &value) in
                prices.iter_mut().zip(&slope).zip(self.values)
            {
                #[expect(
                    clippy::cast_possible_truncation,
                    reason = "prices stay below MOST"
                )]
                let change = (step * slope as f64) as i64;
                *price = (*price - change).clamp(0, value * scale);
            }
            let (priced, parts) = self.price(scale, &prices);
            if !meter.spend(priced.inside.work) {
                break;
            }
            counts = self.counts(&priced, &parts);
            bound = priced.bound;
            if bound < least {
                least = bound;
                best = Some(priced);
                waited = 0;
            } else {
                waited += 1;
                if waited % PATIENCE == 0 {
                    stride *= 0.5;
                }
            }
        }
        best
    }
}
