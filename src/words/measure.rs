//! Lengths as numbers: mixed fractions of an inch, or decimal millimetres.

use crate::geom::{Length, Unit};

/// The units that lengths are printed in.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Units {
    /// Only one.
    Only(Unit),
    /// First this one, which rules, then the other in brackets, rounded to the
    /// marks of its own ruler.
    Both(Unit),
}

impl Units {
    /// The unit that rules.
    pub const fn first(self) -> Unit {
        match self {
            Self::Only(unit) | Self::Both(unit) => unit,
        }
    }

    /// The unit that stands in brackets.
    pub const fn second(self) -> Option<Unit> {
        match self {
            Self::Only(_) => None,
            Self::Both(Unit::Inch) => Some(Unit::Mm),
            Self::Both(Unit::Mm) => Some(Unit::Inch),
        }
    }
}

/// Between a whole number and its fraction.
const JOIN: char = '\u{a0}';

/// The nearest mark of a usual ruler: 1/16 in, or half a millimetre, which the
/// eye still reads (common practice, no source). Something stays as it is rather
/// than become nothing.
pub(super) fn to_marks(length: Length, unit: Unit) -> Length {
    let step = match unit {
        Unit::Inch => Length::inch(1, 16).units(),
        Unit::Mm => Length::MM.half().units(),
    };
    let steps = rounded_ratio(length.units(), 1, step);
    if steps == 0 { length } else { Length::from_units(steps * step) }
}

/// Inches without the unit: a mixed fraction down to 1/64, else three decimals.
pub(super) fn inches(length: Length) -> String {
    let units = length.units();
    let step = Length::inch(1, 64).units();
    if units % step != 0 {
        return decimal(rounded_ratio(units, 1000, Length::INCH.units()), 3);
    }
    let sign = if units < 0 { "\u{2212}" } else { "" };
    let parts = (units / step).unsigned_abs();
    let (whole, mut over, mut under) = (parts / 64, parts % 64, 64);
    while over != 0 && over % 2 == 0 {
        (over, under) = (over / 2, under / 2);
    }
    match (whole, over) {
        (_, 0) => format!("{sign}{whole}"),
        (0, _) => format!("{sign}{over}/{under}"),
        _ => format!("{sign}{whole}{JOIN}{over}/{under}"),
    }
}

/// Millimetres without the unit, with at most two decimals.
pub(super) fn millimetres(length: Length) -> String {
    decimal(rounded_ratio(length.units(), 100, Length::MM.units()), 2)
}

/// `units * times / step` to the nearest whole number, halves away from zero.
fn rounded_ratio(units: i64, times: i64, step: i64) -> i64 {
    let (over, under) = (i128::from(units) * i128::from(times), i128::from(step));
    let half = if over < 0 { -under / 2 } else { under / 2 };
    let whole = (over + half) / under;
    i64::try_from(whole).unwrap_or(if whole < 0 { i64::MIN } else { i64::MAX })
}

/// A number that counts units of its last place, without zeros at the end.
fn decimal(counted: i64, places: u32) -> String {
    let sign = if counted < 0 { "\u{2212}" } else { "" };
    let (counted, ten) = (counted.unsigned_abs(), 10_u64.pow(places));
    let whole = counted / ten;
    let places = places as usize;
    let rest = format!("{:0places$}", counted % ten);
    match rest.trim_end_matches('0') {
        "" => format!("{sign}{whole}"),
        rest => format!("{sign}{whole}.{rest}"),
    }
}
