//! What is wrong with a text that is no YAML, in plain words.

use serde_yaml::granit_parser::{ErrorKind, ScanError};

use crate::diag::{Diagnostic, Rule, rules};
use crate::project::tree;
use crate::source::Site;

/// The note for an error of the parser.
pub(super) fn explain(error: &ScanError, text: &str, file: u16) -> Diagnostic {
    let start = tree::byte(text, error.marker());
    let mut at = start as usize;
    while !text.is_char_boundary(at) {
        at -= 1;
    }
    let line = text[..at].rfind('\n').map_or(0, |it| it + 1);
    let indent = &text[line..][..text[line..].len() - text[line..].trim_start().len()];
    let (rule, message, help) = if indent.split('\n').next().is_some_and(has_tab) {
        TAB
    } else {
        words(error.kind(), text, at)
    };
    let end = text[at..].chars().next().map_or(at, |sign| at + sign.len_utf8());
    let site = Site { file, start, end: u32::try_from(end).unwrap_or(start) };
    Diagnostic::new(rule, site, message).help(help)
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

fn has_tab(indent: &str) -> bool {
    indent.contains('\t')
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
        K::InvalidTrailingSingleQuotedScalar | K::InvalidTrailingDoubleQuotedScalar => {
            AFTER_QUOTE
        }
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
        K::MisplacedFlowCollectionEnd | K::MismatchedFlowCollectionEnd { .. } => (
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
        K::SimpleKeyExpected | K::InvalidSimpleKey => (
            &rules::BROKEN_LINE,
            "a colon is missing after these words",
            "write `key: value`, with a space after the colon",
        ),
        K::BlockSequenceEntryNotAllowed | K::InvalidBlockEntryWhitespace => (
            &rules::WRONG_INDENT,
            "a dash can't start a list here",
            "start the list on a new line, below its key",
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
