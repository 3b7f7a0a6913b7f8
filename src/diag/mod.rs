//! What is said about a description: errors, warnings, advice.

mod near;
pub mod render;
pub mod rules;

pub use near::near;

use crate::source::Site;

/// How much a note weighs.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Severity {
    /// No handout can be made.
    Error,
    /// The handout is made, but something is likely to go wrong.
    Warning,
    /// It works; there is a better way.
    Advice,
}

/// A row of the catalogue in [`rules`].
#[derive(Debug, PartialEq, Eq)]
pub struct Rule {
    /// Kebab-case; names the fault, not the cure.
    pub name: &'static str,
    /// How much it weighs.
    pub severity: Severity,
    /// What the fault is, in one sentence.
    pub what: &'static str,
    /// Why it matters and what to do.
    pub why: &'static str,
    /// A line or two of a description that has the fault.
    pub example: &'static str,
    /// The same, mended.
    pub cure: &'static str,
}

/// One note on a description, with its place.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Diagnostic {
    /// Which rule was broken.
    pub rule: &'static Rule,
    /// The place it is about.
    pub site: Site,
    /// A lower-case phrase without a full stop; the user's words in backticks.
    pub message: String,
    /// Other places that explain it.
    pub labels: Vec<(Site, String)>,
    /// What to write instead, in the imperative.
    pub help: Vec<String>,
}

impl Diagnostic {
    /// A note of a rule about a place.
    pub fn new(rule: &'static Rule, site: Site, message: impl Into<String>) -> Self {
        Self { rule, site, message: message.into(), labels: Vec::new(), help: Vec::new() }
    }

    /// Adds another place that explains the note.
    #[must_use]
    pub fn label(mut self, site: Site, text: impl Into<String>) -> Self {
        self.labels.push((site, text.into()));
        self
    }

    /// Adds what to write instead.
    #[must_use]
    pub fn help(mut self, text: impl Into<String>) -> Self {
        self.help.push(text.into());
        self
    }

    /// Whether no handout can be made.
    pub fn is_error(&self) -> bool {
        self.rule.severity == Severity::Error
    }
}

/// A value with everything that was noted while it was made.
///
/// The value is `None` only where nothing sensible could be built.
#[derive(Clone, Debug, PartialEq)]
pub struct Outcome<T> {
    /// What was made.
    pub value: Option<T>,
    /// In the order of their places.
    pub notes: Vec<Diagnostic>,
}

impl<T> Outcome<T> {
    /// Whether any note is an error.
    pub fn has_errors(&self) -> bool {
        self.notes.iter().any(Diagnostic::is_error)
    }
}
