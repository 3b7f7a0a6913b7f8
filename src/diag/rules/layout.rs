//! What the layout can find wrong.

use crate::diag::Rule;
use crate::diag::Severity;

/// The rows of this phase.
pub(super) static ROWS: &[&Rule] = &[
    &UNPRINTABLE_CHARACTER,
    &DRAWING_LARGER_THAN_PAGE,
    &FONT_UNUSABLE,
    &NO_WORDS_IN_LANGUAGE,
    &TEXT_NOT_TOLD,
];

/// A character that none of the faces has.
pub static UNPRINTABLE_CHARACTER: Rule = Rule {
    name: "unprintable-character",
    severity: Severity::Error,
    what: "A character is in none of the fonts.",
    why: "It would be printed as an empty box, and readers and screen readers would lose \
          it. Write it in other characters, or name a font that has it under `fonts:`.",
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

/// A font that can't be read or may not be embedded.
pub static FONT_UNUSABLE: Rule = Rule {
    name: "font-unusable",
    severity: Severity::Error,
    what: "A font can't be used.",
    why: "Its file is missing, or is no TrueType or OpenType font of one face, or its \
          licence forbids that it goes into a PDF. Name another file, below the folder \
          of the description.",
    example: "fonts: brush.woff2",
    cure: "fonts: brush.ttf",
};

/// A language in which there are no sentences yet.
pub static NO_WORDS_IN_LANGUAGE: Rule = Rule {
    name: "no-words-in-language",
    severity: Severity::Warning,
    what: "There are no sentences in the language of the handout.",
    why: "The texts of the description are printed in it where they are told in it, but \
          all that the handout says of its own is English.",
    example: "language: eo",
    cure: "language: fr",
};

/// A text that is not told in the language of the handout, while others are.
pub static TEXT_NOT_TOLD: Rule = Rule {
    name: "text-not-told",
    severity: Severity::Advice,
    what: "A text is not told in the language of the handout, while others are.",
    why: "It is printed in the language in which it was written first, and the reader \
          may not understand it.",
    example: "title: {en: Meadow Days, de: Wiesentage}\nabout: Six note cards.",
    cure: "title: {en: Meadow Days, de: Wiesentage}\nabout: {en: Six note cards., de: Sechs Karten.}",
};
