//! What is laid down elsewhere: formats of sheets, cards and envelopes, and the
//! basis sizes that weights in pounds refer to.
//!
//! Every row names where its figure comes from, and in the unit of that source.

mod colors;
mod formats;
pub mod post;
mod weights;

pub use colors::{color, color_names};
pub use formats::{FORMATS, Format, FormatKind};
pub use weights::{GRADES, Grade, grams_of_pounds};

use crate::geom::Size;

/// Where a figure comes from.
#[derive(Debug, PartialEq, Eq)]
pub struct Citation {
    /// The document.
    pub title: &'static str,
    /// The place in it.
    pub section: &'static str,
    /// How far the figure was held against it.
    pub seen: Seen,
}

/// How far a figure was held against its source.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Seen {
    /// The document's own text.
    Document,
    /// A secondary text that repeats the document.
    Repeated,
    /// No document: it is what the trade does.
    Practice,
}

/// The format of that name or by-name, among those of a kind.
///
/// Case and the signs between words don't matter.
pub fn format(name: &str, kind: FormatKind) -> Option<&'static Format> {
    let name = squeeze(name);
    FORMATS.iter().find(|format| {
        format.kind == kind
            && (squeeze(format.name) == name
                || format.also.iter().any(|also| squeeze(also) == name))
    })
}

/// The envelope that usually goes with a card format, and its size lying wide.
pub fn usual_envelope(card: &Format) -> Option<(&'static Format, Size)> {
    let envelope = format(card.envelope?, FormatKind::Envelope)?;
    Some((envelope, envelope.size().turned()))
}

/// The names of all formats of a kind.
pub fn names(kind: FormatKind) -> impl Iterator<Item = &'static str> {
    FORMATS.iter().filter(move |it| it.kind == kind).map(|it| it.name)
}

/// The name in lower case, with nothing but letters and digits.
fn squeeze(name: &str) -> String {
    name.chars().filter(|it| it.is_alphanumeric()).flat_map(char::to_lowercase).collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::geom::{Length, Unit};

    #[test]
    fn names_are_unique_within_a_kind_and_formats_stand_tall() {
        for (index, format) in FORMATS.iter().enumerate() {
            assert!(format.short <= format.long, "{} lies down", format.name);
            for other in &FORMATS[index + 1..] {
                let same = squeeze(format.name) == squeeze(other.name);
                assert!(!(same && format.kind == other.kind), "{} twice", format.name);
            }
            for also in format.also {
                let found = super::format(also, format.kind).unwrap();
                assert_eq!(found.name, format.name, "`{also}` names two formats");
            }
        }
        for kind in [FormatKind::Sheet, FormatKind::Card, FormatKind::Envelope] {
            let names: Vec<_> = names(kind).collect();
            assert!(names.is_sorted(), "{names:?}");
        }
    }

    #[test]
    fn every_card_fits_its_usual_envelope() {
        for card in FORMATS.iter().filter(|it| it.envelope.is_some()) {
            let (envelope, size) = usual_envelope(card).expect(card.name);
            assert!(card.short < envelope.short && card.long < envelope.long);
            assert_eq!(size.width, envelope.long);
        }
    }

    #[test]
    fn clearances_are_those_of_the_tables() {
        // ISO 269 content column and the lists of North American envelopes.
        let clearance = |card: &str, unit| {
            let card = format(card, FormatKind::Card).unwrap();
            let envelope = usual_envelope(card).unwrap().0;
            let (short, long) = (envelope.short - card.short, envelope.long - card.long);
            format!("{}, {}", short.show(unit), long.show(unit))
        };
        assert_eq!(clearance("a7-us", Unit::Inch), "1/4 in, 1/4 in");
        assert_eq!(clearance("a2-us", Unit::Inch), "1/8 in, 1/4 in");
        assert_eq!(clearance("a6", Unit::Mm), "9 mm, 14 mm");
        assert_eq!(clearance("a5", Unit::Mm), "14 mm, 19 mm");
        assert_eq!(clearance("dl", Unit::Mm), "11 mm, 10 mm");
    }

    #[test]
    fn each_size_of_the_a_series_halves_the_one_above() {
        // ISO 216, 4.1: half the long side, rounded down to a millimetre.
        for n in 3..8 {
            let large = format(&format!("a{n}"), FormatKind::Sheet).unwrap();
            let small = format(&format!("a{}", n + 1), FormatKind::Sheet).unwrap();
            let half = large.long.units() / 2 / Length::MM.units();
            assert_eq!(small.long, large.short);
            assert_eq!(small.short, Length::mm(half));
        }
    }

    #[test]
    fn envelopes_of_north_america_in_millimetres() {
        // From the definition of the inch.
        for (name, mm) in [
            ("a7-us", "133.35 x 184.15 mm"),
            ("a2-us", "111.125 x 146.05 mm"),
            ("a6-us", "120.65 x 165.1 mm"),
        ] {
            let size = format(name, FormatKind::Envelope).unwrap().size();
            assert_eq!(size.show(Unit::Mm), mm);
        }
    }

    #[test]
    fn pounds_become_grams() {
        // US Government Paper Specification Standards: L20, K10, A91, Q60 give
        // nominal 175 (65 lb cover), 200 (110 lb index), 120 (80 lb text), 195.
        for (pounds, grade, hundredths) in [
            (50, "cover", 13520),
            (65, "cover", 17576),
            (80, "cover", 21632),
            (110, "index", 19888),
            (110, "cover", 29745),
            (80, "text", 11841),
            (20, "bond", 7519),
            (89, "bristol", 19515),
        ] {
            let grade = GRADES.iter().find(|it| it.name == grade).unwrap();
            let grams = grams_of_pounds(pounds * 100, grade).unwrap();
            assert!(
                grams.abs_diff(hundredths) <= 2,
                "{pounds} lb {}: {grams}",
                grade.name
            );
        }
    }
}
