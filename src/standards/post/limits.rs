//! Limits in the unit of whoever set them, compared without rounding.

use std::cmp::Ordering;

use crate::geom::{Length, Unit};
use crate::standards::post::MailItem;

/// A length that an operator names, in the unit in which it is laid down.
///
/// 0.007 in is no whole number of the units of a [`Length`], so a limit keeps
/// its own unit and is compared there.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Measure {
    /// Thousandths of an inch.
    Mils(i64),
    /// Hundredths of a millimetre.
    Hundredths(i64),
}

impl Measure {
    /// Whole millimetres.
    pub const fn mm(millimetres: i64) -> Self {
        Self::Hundredths(millimetres * 100)
    }

    /// The unit it is laid down in.
    pub const fn unit(self) -> Unit {
        match self {
            Self::Mils(_) => Unit::Inch,
            Self::Hundredths(_) => Unit::Mm,
        }
    }

    /// For printing and drawing: rounded to a whole unit, which is less than
    /// the thickness of a hair. Comparisons go through [`Measure::compare`].
    pub const fn length(self) -> Length {
        match self {
            Self::Mils(count) => {
                Length::from_units((count * Length::INCH.units() + 500) / 1000)
            }
            Self::Hundredths(count) => {
                Length::from_units(count * Length::MM.units() / 100)
            }
        }
    }

    /// How a length stands to this, exactly.
    pub fn compare(self, length: Length) -> Ordering {
        let (count, whole, parts) = match self {
            Self::Mils(count) => (count, Length::INCH, 1000),
            Self::Hundredths(count) => (count, Length::MM, 100),
        };
        let length = i128::from(length.units()) * parts;
        length.cmp(&(i128::from(count) * i128::from(whole.units())))
    }

    fn reached_by(self, length: Length) -> bool {
        self.compare(length) != Ordering::Less
    }

    fn kept_by(self, length: Length) -> bool {
        self.compare(length) != Ordering::Greater
    }
}

/// A mass that an operator names, in the unit in which it is laid down.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Mass {
    /// Grams.
    Grams(u32),
    /// Halves of an ounce; 1 oz is 28.349523125 g exactly (NBS 1959).
    HalfOunces(u32),
}

impl Mass {
    /// How a mass in milligrams stands to this, exactly.
    pub fn compare(self, mass_mg: u64) -> Ordering {
        let mass = u128::from(mass_mg);
        match self {
            Self::Grams(grams) => mass.cmp(&(u128::from(grams) * 1000)),
            // Both sides in halves of a nanogram.
            Self::HalfOunces(halves) => {
                (mass * 2_000_000).cmp(&(u128::from(halves) * 28_349_523_125))
            }
        }
    }
}

/// One thing that an operator asks of an item.
///
/// "Long" and "short" are the sides of the face; every bound is included.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Limit {
    /// The longer side is at least so long.
    LongAtLeast(Measure),
    /// The shorter side is at least so long.
    ShortAtLeast(Measure),
    /// It is at least so thick.
    ThickAtLeast(Measure),
    /// The longer side is at most so long.
    LongUpTo(Measure),
    /// The shorter side is at most so long.
    ShortUpTo(Measure),
    /// It is at most so thick.
    ThickUpTo(Measure),
    /// Both sides and the thickness add up to no more than this.
    SumUpTo(Measure),
    /// It is at least so heavy.
    MassAtLeast(Mass),
    /// It is at most so heavy.
    MassUpTo(Mass),
    /// The longer side is at least so many tenths of the shorter.
    RatioAtLeast(u8),
    /// The longer side is at most so many tenths of the shorter.
    RatioUpTo(u8),
    /// It is at least `thick` if a side is beyond `long` or `short`.
    LargeAtLeast {
        /// What it must measure then.
        thick: Measure,
        /// Beyond this the longer side makes it large.
        long: Measure,
        /// Beyond this the shorter side makes it large.
        short: Measure,
    },
}

impl Limit {
    /// Whether an item keeps to it.
    pub fn holds(self, item: &MailItem) -> bool {
        let (long, short) = (item.size.long(), item.size.short());
        match self {
            Self::LongAtLeast(bound) => bound.reached_by(long),
            Self::ShortAtLeast(bound) => bound.reached_by(short),
            Self::ThickAtLeast(bound) => bound.reached_by(item.thickness),
            Self::LongUpTo(bound) => bound.kept_by(long),
            Self::ShortUpTo(bound) => bound.kept_by(short),
            Self::ThickUpTo(bound) => bound.kept_by(item.thickness),
            Self::SumUpTo(bound) => bound.kept_by(long + short + item.thickness),
            Self::MassAtLeast(bound) => bound.compare(item.mass_mg) != Ordering::Less,
            Self::MassUpTo(bound) => bound.compare(item.mass_mg) != Ordering::Greater,
            Self::RatioAtLeast(tenths) => ratio(long, short, tenths) != Ordering::Less,
            Self::RatioUpTo(tenths) => ratio(long, short, tenths) != Ordering::Greater,
            Self::LargeAtLeast { thick, long: over_long, short: over_short } => {
                let small = over_long.kept_by(long) && over_short.kept_by(short);
                small || thick.reached_by(item.thickness)
            }
        }
    }

    /// Whether it asks for more rather than for less.
    pub const fn is_minimum(self) -> bool {
        match self {
            Self::LongAtLeast(_)
            | Self::ShortAtLeast(_)
            | Self::ThickAtLeast(_)
            | Self::LargeAtLeast { .. }
            | Self::MassAtLeast(_) => true,
            Self::LongUpTo(_)
            | Self::ShortUpTo(_)
            | Self::ThickUpTo(_)
            | Self::SumUpTo(_)
            | Self::MassUpTo(_)
            | Self::RatioAtLeast(_)
            | Self::RatioUpTo(_) => false,
        }
    }
}

/// How the longer side stands to so many tenths of the shorter.
fn ratio(long: Length, short: Length, tenths: u8) -> Ordering {
    let (long, short) = (i128::from(long.units()), i128::from(short.units()));
    (long * 10).cmp(&(short * i128::from(tenths)))
}
