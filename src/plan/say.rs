//! Lengths and sizes in the messages of the planner.

use crate::geom::{Length, Size, Unit};

/// A length in a unit, as one writes it in a description.
pub(crate) fn length(length: Length, unit: Unit) -> String {
    let (whole, word) = match unit {
        Unit::Inch => (Length::INCH.units(), "in"),
        Unit::Mm => (Length::MM.units(), "mm"),
    };
    let sign = if length.units() < 0 { "-" } else { "" };
    let units = length.units().abs();
    let (full, rest) = (units / whole, units % whole);
    if rest == 0 {
        return format!("{sign}{full} {word}");
    }
    if unit == Unit::Inch && rest * 64 % whole == 0 {
        let (mut above, mut below) = (rest * 64 / whole, 64);
        while above % 2 == 0 {
            (above, below) = (above / 2, below / 2);
        }
        let full = if full == 0 { String::new() } else { format!("{full} ") };
        return format!("{sign}{full}{above}/{below} {word}");
    }
    let thousandths = (units * 1000 + whole / 2) / whole;
    let decimals = format!("{}.{:03}", thousandths / 1000, thousandths % 1000);
    let decimals = decimals.trim_end_matches('0').trim_end_matches('.');
    format!("{sign}{decimals} {word}")
}

/// Width × height in a unit.
pub(crate) fn size(size: Size, unit: Unit) -> String {
    let width = length(size.width, unit);
    let width = width.rsplit_once(' ').map_or(width.as_str(), |(number, _)| number);
    format!("{width} x {}", length(size.height, unit))
}
