//! Lengths and sizes as people write them: `4 1/4 in`, `108 mm`, `5 1/2 x 2 in`.

use crate::geom::{Length, Size, Unit};

/// Why a text is not a length.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum LengthFault {
    /// There is no number in front, or something unreadable after it.
    NotALength,
    /// A bare number where no unit goes without saying.
    NoUnit,
    /// A number with a unit that is neither inches nor millimetres nor centimetres.
    UnknownUnit(String),
    /// A comma where the decimal point belongs; the text with a point.
    DecimalComma(String),
    /// No ruler shows it; the nearest length that one does, in the unit it was given.
    OffRuler(Length, Unit),
    /// A fraction over nothing.
    OverNothing,
    /// Less than nothing.
    BelowZero,
    /// Longer than [`Length::MOST`].
    TooLong,
}

/// Why a text is not a size.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum SizeFault {
    /// Only one side is given.
    OneSide,
    /// More than two sides are given.
    ManySides,
    /// A side is no length; its text and why.
    Side(String, LengthFault),
}

/// A number as a fraction.
#[derive(Clone, Copy)]
struct Ratio {
    over: i128,
    under: i128,
    decimal: bool,
}

impl Length {
    /// The longest length that is read: 100 m, far above any sheet.
    pub const MOST: Self = Self::mm(100_000);

    /// Reads `4 1/4 in`, `4-1/4"`, `4.25in`, `108 mm`, `10.8 cm`, or a bare
    /// number where `bare` says what it means.
    ///
    /// # Errors
    /// What is wrong with the text; see [`LengthFault`].
    pub fn parse(text: &str, bare: Option<Unit>) -> Result<Self, LengthFault> {
        Self::parse_in(text, bare).map(|(length, _)| length)
    }

    /// As [`Length::parse`], with the unit that the text was written in.
    ///
    /// # Errors
    /// What is wrong with the text; see [`LengthFault`].
    pub fn parse_in(text: &str, bare: Option<Unit>) -> Result<(Self, Unit), LengthFault> {
        let (number, unit, measure) = split(text, bare)?;
        let over = number.over * i128::from(measure.units());
        let ruler = unit != Unit::Inch || number.decimal || 64 % number.under == 0;
        let mark = match unit {
            Unit::Inch => Self::inch(1, 64),
            Unit::Mm => Self::from_units(144),
        };
        if Self::MOST.units() as i128 * number.under < over {
            return Err(LengthFault::TooLong);
        }
        if !ruler || over % number.under != 0 {
            let step = i128::from(mark.units());
            let marks = nearest(over, number.under * step);
            return Err(LengthFault::OffRuler(whole(marks * step), unit));
        }
        Ok((whole(over / number.under), unit))
    }

    /// As [`Length::parse`], to the nearest unit of 1/14400 mm: for the
    /// thickness of paper, which nobody reads off a ruler.
    ///
    /// # Errors
    /// What is wrong with the text; see [`LengthFault`].
    pub fn parse_near(text: &str, bare: Option<Unit>) -> Result<Self, LengthFault> {
        let (number, _, measure) = split(text, bare)?;
        let over = number.over * i128::from(measure.units());
        if Self::MOST.units() as i128 * number.under < over {
            return Err(LengthFault::TooLong);
        }
        Ok(whole(nearest(over, number.under)))
    }

    /// The length without a unit: `4 1/4`, `107.95`.
    ///
    /// What no 1/64 in shows, and hundredths of a millimetre, are rounded.
    pub fn show_bare(self, unit: Unit) -> String {
        let sign = if self < Self::ZERO { "-" } else { "" };
        let units = i128::from(self.units().unsigned_abs());
        let sixty_fourth = i128::from(Self::inch(1, 64).units());
        if unit == Unit::Inch && units % sixty_fourth == 0 {
            let (mut over, mut under) = (units / sixty_fourth, 64);
            let inches = over / under;
            over %= under;
            while 0 < over && over % 2 == 0 {
                (over, under) = (over / 2, under / 2);
            }
            return match (inches, over) {
                (_, 0) => format!("{sign}{inches}"),
                (0, _) => format!("{sign}{over}/{under}"),
                _ => format!("{sign}{inches} {over}/{under}"),
            };
        }
        let one = match unit {
            Unit::Inch => i128::from(Self::INCH.units()),
            Unit::Mm => i128::from(Self::MM.units()),
        };
        let thousandths = nearest(units * 1000, one);
        let text = format!("{}.{:03}", thousandths / 1000, thousandths % 1000);
        format!("{sign}{}", text.trim_end_matches('0').trim_end_matches('.'))
    }

    /// The length for messages: `4 1/4 in`, `108 mm`.
    pub fn show(self, unit: Unit) -> String {
        format!("{} {}", self.show_bare(unit), unit.symbol())
    }
}

impl Unit {
    /// The symbol of the unit: `in` or `mm`.
    pub const fn symbol(self) -> &'static str {
        match self {
            Self::Inch => "in",
            Self::Mm => "mm",
        }
    }
}

impl Size {
    /// Reads `5 1/2 x 2 in`, `5 1/2 in × 2 in`, `5.5 by 2 in`, width first.
    ///
    /// A unit that is given once serves both sides.
    ///
    /// # Errors
    /// What is wrong with the text; see [`SizeFault`].
    pub fn parse(text: &str, bare: Option<Unit>) -> Result<Self, SizeFault> {
        Self::parse_in(text, bare).map(|(size, _)| size)
    }

    /// As [`Size::parse`], with the unit of the second side.
    ///
    /// # Errors
    /// What is wrong with the text; see [`SizeFault`].
    pub fn parse_in(text: &str, bare: Option<Unit>) -> Result<(Self, Unit), SizeFault> {
        let spaced = text.replace(" by ", " x ");
        let sides: Vec<&str> = spaced.split(['x', 'X', '×']).map(str::trim).collect();
        let (width, height) = match sides[..] {
            [width, height] => (width, height),
            [_] => return Err(SizeFault::OneSide),
            _ => return Err(SizeFault::ManySides),
        };
        let side = |text: &str, bare| {
            Length::parse_in(text, bare)
                .map_err(|fault| SizeFault::Side(text.to_owned(), fault))
        };
        let (height, width) = match side(height, None) {
            Err(SizeFault::Side(_, LengthFault::NoUnit)) => {
                let width = side(width, bare)?;
                (side(height, Some(width.1))?, width)
            }
            height => {
                let height = height?;
                (height, side(width, Some(height.1))?)
            }
        };
        Ok((Self::new(width.0, height.0), height.1))
    }

    /// The size for messages: `5 1/2 x 2 in`.
    pub fn show(self, unit: Unit) -> String {
        format!("{} x {}", self.width.show_bare(unit), self.height.show(unit))
    }
}

/// The number, the unit it is shown in, and what one of it measures.
fn split(text: &str, bare: Option<Unit>) -> Result<(Ratio, Unit, Length), LengthFault> {
    let plain = plain(text);
    let (number, rest) = number(&plain)?;
    let (unit, measure) = match rest.trim().trim_end_matches('.') {
        "" => match bare.ok_or(LengthFault::NoUnit)? {
            Unit::Inch => (Unit::Inch, Length::INCH),
            Unit::Mm => (Unit::Mm, Length::MM),
        },
        "in" | "inch" | "inches" | "\"" | "''" => (Unit::Inch, Length::INCH),
        "mm" | "millimetre" | "millimetres" | "millimeter" | "millimeters" => {
            (Unit::Mm, Length::MM)
        }
        "cm" | "centimetre" | "centimetres" | "centimeter" | "centimeters" => {
            (Unit::Mm, Length::mm(10))
        }
        "m" | "metre" | "metres" | "meter" | "meters" => (Unit::Mm, Length::mm(1000)),
        "yd" | "yard" | "yards" => (Unit::Inch, Length::inch(36, 1)),
        other if other.chars().all(|it| it.is_alphabetic() || it == '\'') => {
            return Err(LengthFault::UnknownUnit(other.to_owned()));
        }
        _ => return Err(LengthFault::NotALength),
    };
    Ok((number, unit, measure))
}

/// The text with plain signs: `4 1/4"` for `4¼″`.
fn plain(text: &str) -> String {
    const FRACTIONS: [(char, &str); 9] = [
        ('½', " 1/2"),
        ('¼', " 1/4"),
        ('¾', " 3/4"),
        ('⅛', " 1/8"),
        ('⅜', " 3/8"),
        ('⅝', " 5/8"),
        ('⅞', " 7/8"),
        ('⅓', " 1/3"),
        ('⅔', " 2/3"),
    ];
    let mut plain = String::with_capacity(text.len());
    for sign in text.trim().chars() {
        match sign {
            '″' | '”' | '“' => plain.push('"'),
            '\u{2044}' => plain.push('/'),
            '−' | '–' | '‑' => plain.push('-'),
            sign if sign.is_whitespace() => plain.push(' '),
            sign => match FRACTIONS.iter().find(|(it, _)| *it == sign) {
                Some((_, fraction)) => plain.push_str(fraction),
                None => plain.extend(sign.to_lowercase()),
            },
        }
    }
    plain.trim().to_owned()
}

/// The number at the start of a text, and what follows it.
fn number(text: &str) -> Result<(Ratio, &str), LengthFault> {
    if let Some(rest) = text.strip_prefix('-') {
        return Err(match digits(rest.trim_start()) {
            ("", _) => LengthFault::NotALength,
            _ => LengthFault::BelowZero,
        });
    }
    let (first, rest) = digits(text);
    if let Some(after) = rest.strip_prefix('.') {
        let (parts, rest) = digits(after);
        if parts.is_empty() || 9 < parts.len() {
            return Err(LengthFault::NotALength);
        }
        let under = 10_i128.pow(u32::try_from(parts.len()).unwrap_or(9));
        let over = int(first)? * under + int(parts)?;
        return Ok((Ratio { over, under, decimal: true }, rest));
    }
    if first.is_empty() {
        return Err(LengthFault::NotALength);
    }
    if let Some(after) = rest.strip_prefix(',') {
        return Err(match digits(after) {
            ("", _) => LengthFault::NotALength,
            _ => LengthFault::DecimalComma(text.replacen(',', ".", 1)),
        });
    }
    if let Some(after) = rest.strip_prefix('/') {
        let (under, rest) = digits(after);
        return fraction(0, first, under).map(|it| (it, rest));
    }
    if let Some(after) = rest.strip_prefix([' ', '-']) {
        let (over, fraction_rest) = digits(after.trim_start());
        if let (false, Some(after)) = (over.is_empty(), fraction_rest.strip_prefix('/')) {
            let (under, rest) = digits(after);
            return fraction(int(first)?, over, under).map(|it| (it, rest));
        }
    }
    Ok((Ratio { over: int(first)?, under: 1, decimal: false }, rest))
}

fn fraction(inches: i128, over: &str, under: &str) -> Result<Ratio, LengthFault> {
    if under.is_empty() {
        return Err(LengthFault::NotALength);
    }
    let (over, under) = (int(over)?, int(under)?);
    if under == 0 {
        return Err(LengthFault::OverNothing);
    }
    Ok(Ratio { over: inches * under + over, under, decimal: false })
}

/// The digits at the start of a text, and the rest.
fn digits(text: &str) -> (&str, &str) {
    text.split_at(text.find(|it: char| !it.is_ascii_digit()).unwrap_or(text.len()))
}

fn int(digits: &str) -> Result<i128, LengthFault> {
    match digits.trim_start_matches('0') {
        "" => Ok(0),
        digits if digits.len() <= 9 => digits.parse().map_err(|_| LengthFault::TooLong),
        _ => Err(LengthFault::TooLong),
    }
}

/// The whole number nearest to `over / under`; halves go up.
fn nearest(over: i128, under: i128) -> i128 {
    (2 * over + under).div_euclid(2 * under)
}

fn whole(units: i128) -> Length {
    Length::from_units(i64::try_from(units).unwrap_or(Length::MOST.units()))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn inch(text: &str) -> Length {
        Length::parse(text, Some(Unit::Inch)).unwrap()
    }

    #[test]
    fn every_sixty_fourth_is_read_as_it_is_shown() {
        for n in 0..=12 * 64 {
            let length = Length::inch(n, 64);
            let shown = length.show(Unit::Inch);
            assert_eq!(Length::parse(&shown, None), Ok(length), "{shown}");
        }
    }

    #[test]
    fn one_inch_is_25_4_mm() {
        // NBS Circular 572, addendum of 1960: exactly.
        assert_eq!(inch("1"), Length::parse("25.4 mm", None).unwrap());
        for (inches, mm) in [
            ("1/16 in", "1.588 mm"),
            ("1/8 in", "3.175 mm"),
            ("1/4 in", "6.35 mm"),
            ("5 1/2 in", "139.7 mm"),
            ("8 1/2 in", "215.9 mm"),
            ("11 in", "279.4 mm"),
            ("12 in", "304.8 mm"),
            ("4 1/4 in", "107.95 mm"),
        ] {
            assert_eq!(inch(inches).show(Unit::Mm), mm, "{inches}");
        }
    }

    #[test]
    fn a_length_may_be_written_in_many_ways() {
        for text in [
            "4 1/4 in",
            "4-1/4\"",
            "4.25in",
            "4¼″",
            "4 2/8 inches",
            "17/4 in",
            "107.95 mm",
        ] {
            assert_eq!(Length::parse(text, None), Ok(Length::inch(17, 4)), "{text}");
        }
        assert_eq!(Length::parse("10.8 cm", None), Ok(Length::mm(108)));
        assert_eq!(Length::parse("108", Some(Unit::Mm)), Ok(Length::mm(108)));
        assert_eq!(inch(".5"), Length::inch(1, 2));
    }

    #[test]
    fn what_is_no_length_says_why() {
        let fault = |text| Length::parse(text, None).unwrap_err();
        assert_eq!(fault("4"), LengthFault::NoUnit);
        assert_eq!(fault("four in"), LengthFault::NotALength);
        assert_eq!(fault("4 ft"), LengthFault::UnknownUnit("ft".to_owned()));
        assert_eq!(fault("4,25 in"), LengthFault::DecimalComma("4.25 in".to_owned()));
        assert_eq!(fault("1/0 in"), LengthFault::OverNothing);
        assert_eq!(fault("-1 in"), LengthFault::BelowZero);
        assert_eq!(fault("100.01 cm 3"), LengthFault::NotALength);
        assert_eq!(fault("100001 mm"), LengthFault::TooLong);
        assert_eq!(fault("99999999999999999999 mm"), LengthFault::TooLong);
        assert_eq!(
            fault("1/3 in"),
            LengthFault::OffRuler(Length::inch(21, 64), Unit::Inch)
        );
        assert_eq!(
            fault("4.33 in"),
            LengthFault::OffRuler(Length::inch(4 * 64 + 21, 64), Unit::Inch)
        );
        assert_eq!(Length::parse("100000 mm", None), Ok(Length::MOST));
    }

    #[test]
    fn thickness_may_lie_between_the_marks() {
        // 0.009 in is 0.2286 mm (US Postal Service, DMM 101 1.1).
        let near = Length::parse_near("0.009 in", None).unwrap();
        assert_eq!(near.show(Unit::Mm), "0.229 mm");
    }

    #[test]
    fn a_unit_given_once_serves_both_sides() {
        let size = Size::new(Length::inch(11, 2), Length::inch(2, 1));
        for text in [
            "5 1/2 x 2 in",
            "5 1/2 in x 2 in",
            "5½ × 2\"",
            "5.5 by 2 in",
            "5 1/2 in x 2",
            "139.7 mm x 2 in",
        ] {
            assert_eq!(Size::parse(text, None), Ok(size), "{text}");
        }
        assert_eq!(size.show(Unit::Inch), "5 1/2 x 2 in");
        assert_eq!(Size::parse("5 in", None), Err(SizeFault::OneSide));
        assert_eq!(Size::parse("1 x 2 x 3 in", None), Err(SizeFault::ManySides));
        assert!(Size::parse("1 x 2", None).is_err());
        assert_eq!(Size::parse("10 x 20", Some(Unit::Mm)).unwrap().width, Length::mm(10));
    }
}
