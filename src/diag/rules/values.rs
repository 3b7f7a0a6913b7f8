//! Rules of single values: lengths, numbers, names.

use crate::diag::Rule;
use crate::diag::rules::error;

/// The rows of this phase.
pub(super) static ROWS: &[&Rule] = &[
    &NOT_A_LENGTH,
    &NO_UNIT,
    &DECIMAL_COMMA,
    &OFF_RULER,
    &NOT_A_SIZE,
    &ZERO_SIZE,
    &TOO_LONG,
    &NOT_A_NUMBER,
    &OUT_OF_RANGE,
    &NOT_A_CHOICE,
    &NOT_A_WEIGHT,
    &WEIGHT_WITHOUT_GRADE,
    &NOT_A_COLOUR,
    &UNKNOWN_FORMAT,
    &UNKNOWN_NAME,
    &NAME_USED_TWICE,
];

/// This is not a length.
pub static NOT_A_LENGTH: Rule = error(
    "not-a-length",
    "This is not a length.",
    "A length is a number and a unit. Fractions are written with a space: `4 1/4 in`.",
    "gap: a little",
    "gap: 1/8 in",
);

/// A number has no unit, and the description states none.
pub static NO_UNIT: Rule = error(
    "no-unit",
    "A number has no unit, and the description states none.",
    "Two readers would take it for two different lengths. Give the value a unit, or state `unit: in` or `unit: mm` once.",
    "gap: 4",
    "gap: 4 mm",
);

/// A length has a comma in its number.
pub static DECIMAL_COMMA: Rule = error(
    "decimal-comma",
    "A length has a comma in its number.",
    "A comma also divides values, so decimals are written with a point.",
    "gap: 4,5 mm",
    "gap: 4.5 mm",
);

/// No ruler shows this length.
pub static OFF_RULER: Rule = error(
    "off-ruler",
    "No ruler shows this length.",
    "Fractions of an inch are halves down to 1/64, decimals must come out even. Take the nearest that does, or give the length in millimetres.",
    "gap: 1/3 in",
    "gap: 21/64 in",
);

/// This is not a size.
pub static NOT_A_SIZE: Rule = error(
    "not-a-size",
    "This is not a size.",
    "A size is width x height, as the piece lies with its pattern upright.",
    "size: 5 1/2 in",
    "size: 5 1/2 x 2 in",
);

/// A length is zero where there must be some.
pub static ZERO_SIZE: Rule = error(
    "zero-size",
    "A length is zero where there must be some.",
    "Nothing can be cut to no width.",
    "size: 0 x 2 in",
    "size: 1 x 2 in",
);

/// A length is longer than 100 m.
pub static TOO_LONG: Rule = error(
    "too-long",
    "A length is longer than 100 m.",
    "No sheet is; a unit is wrong, or a sign is missing.",
    "sheet: 8000 x 8000 in",
    "sheet: 8 x 8 in",
);

/// This is not a whole number.
pub static NOT_A_NUMBER: Rule = error(
    "not-a-number",
    "This is not a whole number.",
    "Counts are written in digits, without a unit.",
    "kits: a dozen",
    "kits: 12",
);

/// A number is too small or too large.
pub static OUT_OF_RANGE: Rule = error(
    "out-of-range",
    "A number is too small or too large.",
    "The limits are far above what a table can hold; the number is likely a slip.",
    "kits: 0",
    "kits: 1",
);

/// The value is none of those that can stand here.
pub static NOT_A_CHOICE: Rule = error(
    "not-a-choice",
    "The value is none of those that can stand here.",
    "This key takes one of a few words.",
    "stands: upright",
    "stands: tall",
);

/// This is not a weight of paper.
pub static NOT_A_WEIGHT: Rule = error(
    "not-a-weight",
    "This is not a weight of paper.",
    "Weights are given in gsm, or in lb with the grade.",
    "weight: heavy",
    "weight: 250 gsm",
);

/// A weight in pounds doesn't say of which grade.
pub static WEIGHT_WITHOUT_GRADE: Rule = error(
    "weight-without-grade",
    "A weight in pounds doesn't say of which grade.",
    "The same pounds mean different papers: 110 lb index weighs 199 gsm, 110 lb cover 297 gsm.",
    "weight: 110 lb",
    "weight: 110 lb cover",
);

/// This is not a colour.
pub static NOT_A_COLOUR: Rule = error(
    "not-a-colour",
    "This is not a colour.",
    "Colours are written as six hexadecimal digits for red, green and blue, in quotes, or \
     by a common name, such as `navy`.",
    "colour: sage",
    "colour: \"#7a9a6b\"",
);

/// There is no format of this name.
pub static UNKNOWN_FORMAT: Rule = error(
    "unknown-format",
    "There is no format of this name.",
    "A format is known by its name, such as `letter`, `a4`, `a2-us`; the size itself can be given instead.",
    "sheet: leter",
    "sheet: letter",
);

/// There is nothing of this name.
pub static UNKNOWN_NAME: Rule = error(
    "unknown-name",
    "There is nothing of this name.",
    "The name must be written as it is where the thing is described.",
    "sash: {of: meadw, size: 1 x 2 in}",
    "sash: {of: meadow, size: 1 x 2 in}",
);

/// Two things have the same name.
pub static NAME_USED_TWICE: Rule = error(
    "name-used-twice",
    "Two things have the same name.",
    "The cards could not tell them apart. Rename one.",
    "pieces: {sash: …}\nlate cuts: [{…, makes: {sash: {}}}]",
    "pieces: {sash: …}\nlate cuts: [{…, makes: {cord: {}}}]",
);
