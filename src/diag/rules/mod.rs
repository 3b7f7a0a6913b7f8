//! The catalogue of everything that can be wrong with a description.
//!
//! A rule is a row; its name names the fault and not the cure. Rows stand in the
//! file of the phase that finds the fault, and in [`ALL`] so that they can be
//! listed and explained. Each has a fixture among the tests.

mod layout;
mod own;
mod pictures;
mod plan;
mod sense;
mod text;
mod values;

pub use layout::*;
pub use own::*;
pub use pictures::*;
pub use plan::*;
pub use sense::*;
pub use text::*;
pub use values::*;

use crate::diag::{Rule, Severity};

/// Every rule, by phase.
pub static ALL: &[&[&Rule]] = &[
    text::ROWS,
    values::ROWS,
    sense::ROWS,
    plan::ROWS,
    own::ROWS,
    layout::ROWS,
    pictures::ROWS,
];

/// The rules of single values.
pub static VALUES: &[&Rule] = values::ROWS;

/// Every rule of the catalogue, one by one.
pub fn all() -> impl Iterator<Item = &'static Rule> {
    ALL.iter().flat_map(|rows| rows.iter().copied())
}

/// The rule of that name.
pub fn find(name: &str) -> Option<&'static Rule> {
    all().find(|rule| rule.name == name)
}

/// A rule without which no handout can be made.
const fn error(
    name: &'static str,
    what: &'static str,
    why: &'static str,
    example: &'static str,
    cure: &'static str,
) -> Rule {
    Rule { name, severity: Severity::Error, what, why, example, cure }
}

/// A rule about something that is likely to go wrong.
const fn warning(
    name: &'static str,
    what: &'static str,
    why: &'static str,
    example: &'static str,
    cure: &'static str,
) -> Rule {
    Rule { name, severity: Severity::Warning, what, why, example, cure }
}

/// A rule about something that there is a better way for.
const fn advice(
    name: &'static str,
    what: &'static str,
    why: &'static str,
    example: &'static str,
    cure: &'static str,
) -> Rule {
    Rule { name, severity: Severity::Advice, what, why, example, cure }
}
