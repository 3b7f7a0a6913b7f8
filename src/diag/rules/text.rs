//! Rules of the text itself: its signs, its lines, its keys.

use crate::diag::Rule;
use crate::diag::rules::{error, warning};

/// The rows of this phase.
pub(super) static ROWS: &[&Rule] = &[
    &TOO_LARGE,
    &BROKEN_LINE,
    &TAB_IN_INDENT,
    &WRONG_INDENT,
    &UNCLOSED_QUOTE,
    &UNCLOSED_BRACKET,
    &COLON_IN_WORDS,
    &COMMA_IN_BRACES,
    &HASH_HIDES_VALUE,
    &HASH_CUTS_WORDS,
    &BAD_ALIAS,
    &DUPLICATE_KEY,
    &UNKNOWN_KEY,
    &MISSING_KEY,
    &WRONG_SHAPE,
    &EMPTY_VALUE,
    &KEY_WITHOUT_EFFECT,
    &ONE_OR_THE_OTHER,
    &FILE_NOT_THERE,
];

/// The description is larger than any description needs to be.
pub static TOO_LARGE: Rule = error(
    "too-large",
    "The description is larger than any description needs to be.",
    "The limits keep a damaged or hostile file from using up the machine: 4 MiB, 500 000 values, 64 levels. Split the project in two.",
    "tips: [one, two, …]    # and 20 000 more",
    "tips: [one, two]",
);

/// A line can't be understood.
pub static BROKEN_LINE: Rule = error(
    "broken-line",
    "A line can't be understood.",
    "The signs of YAML are out of place here. The message says what was expected; the fault is often on the line before.",
    "papers: ]",
    "papers: {}",
);

/// A line is indented with a tab.
pub static TAB_IN_INDENT: Rule = error(
    "tab-in-indent",
    "A line is indented with a tab.",
    "Only spaces count as indent, since a tab is wide on one machine and narrow on the next. Set the editor to write spaces.",
    "papers:\n\toat: {}",
    "papers:\n  oat: {}",
);

/// A line is indented too far or too little.
pub static WRONG_INDENT: Rule = error(
    "wrong-indent",
    "A line is indented too far or too little.",
    "What belongs together starts in the same column. Line it up with its neighbours.",
    "papers:\n  oat: {}\n slate: {}",
    "papers:\n  oat: {}\n  slate: {}",
);

/// A quote is opened and never closed.
pub static UNCLOSED_QUOTE: Rule = error(
    "unclosed-quote",
    "A quote is opened and never closed.",
    "Everything after it is read as words. Close it on the same line; an apostrophe inside single quotes is written twice.",
    "title: \"Meadow Days",
    "title: \"Meadow Days\"",
);

/// A bracket or brace is opened and never closed.
pub static UNCLOSED_BRACKET: Rule = error(
    "unclosed-bracket",
    "A bracket or brace is opened and never closed.",
    "What follows is read as part of it. Close it, or write the list on lines of its own.",
    "tips: [one, two",
    "tips: [one, two]",
);

/// A colon inside words ends them.
pub static COLON_IN_WORDS: Rule = error(
    "colon-in-words",
    "A colon inside words ends them.",
    "A colon with a space after it divides a key from its value. Put the words in quotes.",
    "title: Meadows: a day out",
    "title: \"Meadows: a day out\"",
);

/// A comma inside braces or brackets ends the words.
pub static COMMA_IN_BRACES: Rule = error(
    "comma-in-braces",
    "A comma inside braces or brackets ends the words.",
    "Between braces a comma divides one key from the next. Put the words in quotes, or on a line of their own.",
    "inside: {words: With thanks, all of us}",
    "inside: {words: \"With thanks, all of us\"}",
);

/// The value starts with `#`, and so is a remark.
pub static HASH_HIDES_VALUE: Rule = error(
    "hash-hides-value",
    "The value starts with `#`, and so is a remark.",
    "What follows a `#` is not read. Put the value in quotes.",
    "colour: #7a9a6b",
    "colour: \"#7a9a6b\"",
);

/// A `#` after a space cuts the words short.
pub static HASH_CUTS_WORDS: Rule = warning(
    "hash-cuts-words",
    "A `#` after a space cuts the words short.",
    "What follows a space and a `#` is a remark and isn't read. Put the words in quotes if it belongs to them.",
    "title: Our walk #2",
    "title: \"Our walk #2\"",
);

/// A `*name` stands for nothing, or for itself.
pub static BAD_ALIAS: Rule = error(
    "bad-alias",
    "A `*name` stands for nothing, or for itself.",
    "`*name` repeats what was marked `&name` earlier. Write it out instead, or say `like`.",
    "base: *note",
    "base: note",
);

/// A key is given twice in the same place.
pub static DUPLICATE_KEY: Rule = error(
    "duplicate-key",
    "A key is given twice in the same place.",
    "Only one of the two can count, and it isn't clear which. Remove one or rename it.",
    "kits: 2\nkits: 3",
    "kits: 3",
);

/// A key means nothing in this place.
pub static UNKNOWN_KEY: Rule = error(
    "unknown-key",
    "A key means nothing in this place.",
    "It is misspelt, or belongs somewhere else, or is indented too far or too little.",
    "sheat: letter",
    "sheet: letter",
);

/// A key that is needed is missing.
pub static MISSING_KEY: Rule = error(
    "missing-key",
    "A key that is needed is missing.",
    "There is no sensible value to assume for it.",
    "sash: {size: 5 1/2 x 2 in}",
    "sash: {of: meadow, size: 5 1/2 x 2 in}",
);

/// A list stands where words belong, or the other way round.
pub static WRONG_SHAPE: Rule = error(
    "wrong-shape",
    "A list stands where words belong, or the other way round.",
    "Each key takes words, a list (`[a, b]` or lines with dashes), or keys of its own (`{a: b}` or indented lines).",
    "title: [Meadow, Days]",
    "title: Meadow Days",
);

/// A key has no value.
pub static EMPTY_VALUE: Rule = error(
    "empty-value",
    "A key has no value.",
    "Give it one or leave the key out.",
    "title:",
    "title: Meadow Days",
);

/// A key has no effect on this kind of thing.
pub static KEY_WITHOUT_EFFECT: Rule = warning(
    "key-without-effect",
    "A key has no effect on this kind of thing.",
    "It was meant for another kind, or the kind is not the right one.",
    "scissors: {kind: scissors, reach: 1 in}",
    "scissors: {kind: scissors}",
);

/// Keys are given together that rule each other out.
pub static ONE_OR_THE_OTHER: Rule = error(
    "one-or-the-other",
    "Keys are given together that rule each other out.",
    "Both say the same thing in different ways. Keep the one that is meant.",
    "oat: {sheet: a4, scraps: at least 2 x 3 in}",
    "oat: {sheet: a4}",
);

/// A file that is used can't be had.
pub static FILE_NOT_THERE: Rule = error(
    "file-not-there",
    "A file that the description uses can't be had.",
    "Files are named as they lie in the folder of the description or below it; a path that leads out of it, by `..` or by a link, is refused.",
    "use: ../my-supplies.yaml",
    "use: my-supplies.yaml",
);
