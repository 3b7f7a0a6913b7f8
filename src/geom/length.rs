//! A length on paper, exact.

use std::ops::{Add, AddAssign, Mul, Neg, Sub, SubAssign};

/// A length on paper, counted in units of 1/14400 mm.
///
/// The unit makes 1/64 in (5715 units), 0.01 mm (144) and 1 pt (5080) all whole
/// (1 in = 25.4 mm exactly, NBS 1959), so lengths compare, hash and sum exactly
/// and the planner needs no tolerance.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Length(i64);

/// A unit that lengths are written in.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Unit {
    /// Inches, with fractions down to 1/64.
    #[default]
    Inch,
    /// Millimetres.
    Mm,
}

impl Length {
    /// No length at all.
    pub const ZERO: Self = Self(0);
    /// One millimetre.
    pub const MM: Self = Self(14_400);
    /// One inch.
    pub const INCH: Self = Self(365_760);

    /// From units of 1/14400 mm.
    pub const fn from_units(units: i64) -> Self {
        Self(units)
    }

    /// In units of 1/14400 mm.
    pub const fn units(self) -> i64 {
        self.0
    }

    /// `numerator / denominator` inches; the denominator must divide 64.
    pub const fn inch(numerator: i64, denominator: i64) -> Self {
        assert!(0 < denominator && 64 % denominator == 0, "not a ruler's fraction");
        Self(numerator * (Self::INCH.0 / denominator))
    }

    /// Whole millimetres.
    pub const fn mm(millimetres: i64) -> Self {
        Self(millimetres * Self::MM.0)
    }

    /// In millimetres, for weights and page pictures; not for planning.
    pub fn as_mm(self) -> f64 {
        self.0 as f64 / Self::MM.0 as f64
    }

    /// Half of it, rounded down to a whole unit.
    pub const fn half(self) -> Self {
        Self(self.0.div_euclid(2))
    }
}

impl Add for Length {
    type Output = Self;
    fn add(self, other: Self) -> Self {
        Self(self.0 + other.0)
    }
}

impl Sub for Length {
    type Output = Self;
    fn sub(self, other: Self) -> Self {
        Self(self.0 - other.0)
    }
}

impl AddAssign for Length {
    fn add_assign(&mut self, other: Self) {
        self.0 += other.0;
    }
}

impl SubAssign for Length {
    fn sub_assign(&mut self, other: Self) {
        self.0 -= other.0;
    }
}

impl Neg for Length {
    type Output = Self;
    fn neg(self) -> Self {
        Self(-self.0)
    }
}

impl Mul<i64> for Length {
    type Output = Self;
    fn mul(self, times: i64) -> Self {
        Self(self.0 * times)
    }
}

impl std::iter::Sum for Length {
    fn sum<I: Iterator<Item = Self>>(lengths: I) -> Self {
        lengths.fold(Self::ZERO, Self::add)
    }
}
