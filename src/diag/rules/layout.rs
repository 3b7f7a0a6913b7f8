//! What the layout can find wrong.

use crate::diag::Rule;
use crate::diag::Severity;

/// The rows of this phase.
pub(super) static ROWS: &[&Rule] = &[&UNPRINTABLE_CHARACTER, &DRAWING_LARGER_THAN_PAGE];

/// A character that none of the faces has.
pub static UNPRINTABLE_CHARACTER: Rule = Rule {
    name: "unprintable-character",
    severity: Severity::Error,
    what: "A character is in none of the fonts.",
    why: "It would be printed as an empty box, and readers and screen readers would lose \
          it. Write it in other characters, or name a font that has it.",
    example: "title: 手紙の日",
    cure: "title: Letter day",
};

/// A drawing that was to be true to size and can't be.
pub static DRAWING_LARGER_THAN_PAGE: Rule = Rule {
    name: "drawing-larger-than-page",
    severity: Severity::Error,
    what: "A drawing at true size is larger than the page.",
    why: "A template must be printed at true size to be of use. Choose a larger page.",
    example: "page: a5",
    cure: "page: letter",
};
