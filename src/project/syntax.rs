//! What is wrong with a text that is no YAML, in plain words.

use serde_yaml::granit_parser::{ErrorKind, ScanError};

use crate::diag::{Diagnostic, Rule, rules};
use crate::project::tree;
use crate::source::Site;

/// The note for an error of the parser; `bracket` is the innermost one that is
/// open.
pub(super) fn explain(
    error: &ScanError,
    text: &str,
    file: u16,
    bracket: Option<Site>,
) -> Diagnostic {
    let mut at = tree::byte(text, error.marker()) as usize;
    while !text.is_char_boundary(at) {
        at -= 1;
    }
    let line = text[..at].rfind('\n').map_or(0, |it| it + 1);
    let indent = text[line..].split(|it| !matches!(it, ' ' | '\t')).next().unwrap_or("");
    let known = words(error.kind(), text, at);
    let tight = tight_colon(text, line).filter(|_| known == COLON || known == NO_COLON);
    let before = bracket.filter(|it| (it.start as usize) < line);
    let mut label = None;
    let (rule, message, help) = match known {
        _ if indent.contains('\t') => TAB,
        _ if tight.is_some() => TIGHT,
        COLON if before.is_some() => {
            label = before;
            STILL_OPEN
        }
        COLON if bracket.is_some() => SECOND_COLON,
        COLON if !text[line..at].contains(": ") && runs_on(text, line) => DEEPER,
        NO_COLON if text[at..].starts_with('-') => TIGHT_DASH,
        known => known,
    };
    let at = tight.unwrap_or(at);
    let end = text[at..].chars().next().map_or(at, |sign| at + sign.len_utf8());
    let byte = |at: usize| u32::try_from(at).unwrap_or(u32::MAX);
    let site = Site { file, start: byte(at), end: byte(end) };
    let note = Diagnostic::new(rule, site, message).help(help);
    match label {
        Some(bracket) => {
            note.label(Site { end: bracket.start + 1, ..bracket }, "opened here")
        }
        None => note,
    }
}

/// A colon with a letter right after it, on the line that starts at a byte or on
/// the one above, where no other colon stands.
fn tight_colon(text: &str, line: usize) -> Option<usize> {
    let above = text[..line.saturating_sub(1)].rfind('\n').map_or(0, |it| it + 1);
    [above, line].into_iter().find_map(|start| {
        let row = text[start..].lines().next().unwrap_or("");
        let row = row.split(" #").next().unwrap_or("");
        let colon = row.find(':')?;
        let next = row[colon + 1..].chars().next()?;
        let alone = !row.contains(": ") && !row.contains("://");
        (alone && next.is_alphanumeric()).then_some(start + colon)
    })
}

type Words = (&'static Rule, &'static str, &'static str);

const TAB: Words = (
    &rules::TAB_IN_INDENT,
    "this line is indented with a tab",
    "indent with spaces, two for each level",
);
const INDENT: Words = (
    &rules::WRONG_INDENT,
    "this line doesn't line up with those above it",
    "start it in the same column as the lines it belongs with",
);
const COLON: Words = (
    &rules::COLON_IN_WORDS,
    "a second colon on one line: the words before it end here",
    "put the words in quotes: `\"one: two\"`",
);
const QUOTE: Words = (
    &rules::UNCLOSED_QUOTE,
    "this quote is never closed",
    "close it, or leave both quotes out if the words have no `: ` and no ` #`",
);
const AFTER_QUOTE: Words = (
    &rules::BROKEN_LINE,
    "something follows the closing quote",
    "put all of the words between the quotes, or none of them",
);
const BRACKET: Words = (
    &rules::UNCLOSED_BRACKET,
    "this bracket or brace is never closed",
    "close it with `]` or `}`, or write the list on lines of its own",
);
const SIGN: Words =
    (&rules::BROKEN_LINE, "this sign can't start a value", "put the words in quotes");

const NO_COLON: Words = (
    &rules::BROKEN_LINE,
    "a colon is missing after these words",
    "write `key: value`, with a space after the colon",
);
const TIGHT: Words = (
    &rules::BROKEN_LINE,
    "a space is missing after this colon",
    "write `key: value`, with a space after the colon",
);
const TIGHT_DASH: Words = (
    &rules::BROKEN_LINE,
    "a space is missing after this dash",
    "write `- ` before each row of a list",
);
const STILL_OPEN: Words = (
    &rules::UNCLOSED_BRACKET,
    "a new key starts here, but a bracket is still open",
    "close it with `]` or `}`, or write the list on lines of its own",
);
const SECOND_COLON: Words = (
    &rules::COLON_IN_WORDS,
    "a second colon without a comma before it",
    "divide keys with commas; put words that have a colon in quotes",
);
const APOSTROPHE: Words = (
    &rules::BROKEN_LINE,
    "the single quote before this closes the words",
    "put words that have an apostrophe in double quotes: `\"Don't go\"`",
);
const DEEPER: Words = (
    &rules::WRONG_INDENT,
    "this line is indented further than the one above, and so is read as more of its words",
    "start it in the same column as the line above",
);

/// Whether the line that starts at a byte is indented further than the one
/// above it, which has a value of its own.
fn runs_on(text: &str, line: usize) -> bool {
    let depth = |line: &str| line.len() - line.trim_start_matches([' ', '-']).len();
    let above = text[..line].lines().rev().find(|it| !it.trim().is_empty());
    let this = text[line..].lines().next().unwrap_or("");
    above.is_some_and(|above| depth(above) < depth(this) && above.contains(": "))
}

/// Rule, message and help for a kind of error.
fn words(kind: &ErrorKind, text: &str, at: usize) -> Words {
    use ErrorKind as K;
    match kind {
        K::TabNotAllowed
        | K::TabInBlockIndentation
        | K::TabInIndentation
        | K::TabAtBlockScalarStart => TAB,
        K::TabInPlainScalar => (
            &rules::TAB_IN_INDENT,
            "there is a tab between the words",
            "write a space, or put the words in quotes",
        ),
        K::UnclosedQuotedScalar | K::DocumentIndicatorInQuotedScalar => QUOTE,
        K::InvalidTrailingSingleQuotedScalar => APOSTROPHE,
        K::InvalidTrailingDoubleQuotedScalar => AFTER_QUOTE,
        K::UnexpectedEofFlowSequence
        | K::UnexpectedEofFlowMapping
        | K::UnexpectedEofImplicitFlowMapping
        | K::UnclosedFlowCollection { .. } => BRACKET,
        K::ExpectedFlowMappingSeparator | K::ExpectedFlowSequenceSeparator => {
            if text[at..].starts_with(':') {
                COLON
            } else {
                (
                    &rules::UNCLOSED_BRACKET,
                    "a comma or a closing bracket is missing before this",
                    "divide the values with commas, and close every `[` and `{`",
                )
            }
        }
        K::MismatchedFlowCollectionEnd { .. } => (
            &rules::BROKEN_LINE,
            "this bracket is closed with one of another shape",
            "close `[` with `]`, and `{` with `}`",
        ),
        K::MisplacedFlowCollectionEnd => (
            &rules::BROKEN_LINE,
            "this closes a bracket that wasn't opened",
            "remove it, or open one with the same shape before it",
        ),
        K::MappingValueNotAllowed
        | K::InvalidColonPlacement
        | K::InvalidMappingValueWhitespace
        | K::FlowMappingValueAdjacentCollection => COLON,
        K::ExpectedBlockMappingKey
        | K::InvalidIndentation
        | K::InvalidBlockScalarIndent
        | K::InvalidQuotedScalarIndent
        | K::InvalidFlowScalarIndent
        | K::ExpectedBlockSequenceEntry
        | K::MappingKeyNotAllowed
        | K::UnexpectedEofBlockMapping
        | K::UnexpectedEofBlockSequence => INDENT,
        K::SimpleKeyExpected | K::InvalidSimpleKey => NO_COLON,
        K::BlockSequenceEntryNotAllowed | K::InvalidBlockEntryWhitespace => (
            &rules::WRONG_INDENT,
            "a dash can't start a list here",
            "start the list on a new line, or put the words in quotes",
        ),
        K::BlockEntryInFlowCollection | K::PlainScalarStartsWithDashFlowIndicator => (
            &rules::BROKEN_LINE,
            "a dash can't stand between brackets",
            "divide the values with commas, or put each on a line with a dash",
        ),
        K::CommentInterceptedScalar | K::CommentNotSeparated => (
            &rules::BROKEN_LINE,
            "a remark cuts the words in two",
            "put words that have a `#` in them in quotes",
        ),
        K::UnknownQuotedScalarEscape
        | K::InvalidQuotedScalarHexEscape
        | K::InvalidUnicodeEscape => (
            &rules::BROKEN_LINE,
            "a `\\` between double quotes starts a sign of its own",
            "write it twice, or use single quotes",
        ),
        K::RecursionLimitExceeded => (
            &rules::TOO_LARGE,
            "lists and keys are nested more than 64 levels deep here",
            "look for a bracket that is opened too often",
        ),
        K::UnexpectedCharacter { .. } => SIGN,
        K::ExpectedNodeContent if text[at..].trim().is_empty() => BRACKET,
        K::ExpectedNodeContent => SIGN,
        _ => (
            &rules::BROKEN_LINE,
            "this line can't be understood",
            "write `key: value` on each line, and words with signs in quotes",
        ),
    }
}
