//! What is said about a text that is no length.

use crate::diag::{Diagnostic, rules};
use crate::geom::LengthFault;
use crate::project::read::desk::quote;
use crate::source::Site;

/// The note for a text that is no length.
pub(crate) fn length(fault: &LengthFault, text: &str, site: Site) -> Diagnostic {
    let said = quote(text);
    match fault {
        LengthFault::NotALength => {
            Diagnostic::new(&rules::NOT_A_LENGTH, site, format!("{said} is not a length"))
                .help("write a number and a unit, such as `4 1/4 in` or `108 mm`")
        }
        LengthFault::NoUnit => {
            Diagnostic::new(&rules::NO_UNIT, site, format!("{said} has no unit")).help(
                format!(
                    "write `{} in` or `{} mm`, or state `unit: in` or `unit: mm` once",
                    text.trim(),
                    text.trim()
                ),
            )
        }
        LengthFault::UnknownUnit(unit) => Diagnostic::new(
            &rules::NOT_A_LENGTH,
            site,
            format!("{said} is not a length: {} is no unit of it", quote(unit)),
        )
        .help("units are `in`, `mm` and `cm`"),
        LengthFault::DecimalComma(cure) => Diagnostic::new(
            &rules::DECIMAL_COMMA,
            site,
            format!("{said} has a decimal comma"),
        )
        .help(format!("write {} with a point", quote(cure))),
        LengthFault::OffRuler(nearest, unit) => {
            Diagnostic::new(&rules::OFF_RULER, site, format!("no ruler shows {said}"))
                .help(format!("the nearest that one does is `{}`", nearest.show(*unit)))
        }
        LengthFault::OverNothing => Diagnostic::new(
            &rules::NOT_A_LENGTH,
            site,
            format!("{said} is not a length: nothing can be divided by 0"),
        )
        .help("write the fraction again"),
        LengthFault::BelowZero => Diagnostic::new(
            &rules::NOT_A_LENGTH,
            site,
            format!("{said} is less than nothing"),
        )
        .help("write a length from zero upwards"),
        LengthFault::TooLong => Diagnostic::new(
            &rules::TOO_LONG,
            site,
            format!("{said} is longer than 100 m"),
        )
        .help("look for a wrong unit or a missing sign"),
    }
}
