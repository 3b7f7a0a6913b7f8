//! The desk at which a description is read: single values, and the notes on them.
//!
//! A value that can't be read is noted and is `None`; reading goes on.

use crate::diag::{self, Diagnostic, Rule, rules};
use crate::geom::{Length, LengthFault, Size, SizeFault, Unit};
use crate::project::Text;
use crate::project::read::faults;
use crate::project::read::pictures::Shelf;
use crate::project::tree::{Node, Value};
use crate::source::{Folder, Site, Sources};

/// More notes than anyone reads at once are not kept.
const MOST_NOTES: usize = 500;
/// After so many notes, what was meant is no longer guessed.
const MOST_GUESSES: usize = 40;

/// What is gathered while a description is read.
pub(crate) struct Desk<'a> {
    /// The files.
    pub(crate) sources: &'a Sources,
    /// What a bare number means, if the description says so.
    pub(crate) unit: Option<Unit>,
    /// The same for files that the description uses, by their index.
    pub(crate) shared_units: Vec<(u16, Option<Unit>)>,
    /// The unit of the first length that was read.
    pub(crate) first: Option<Unit>,
    /// The language of words that do not say theirs.
    pub(crate) language: String,
    /// Everything that was noted.
    pub(crate) notes: Vec<Diagnostic>,
    /// The pictures that were read.
    pub(crate) shelf: Shelf<'a>,
    /// Whether an error was noted.
    failed: bool,
}

/// Which way a length is meant.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Way {
    /// From top to bottom.
    High,
    /// From left to right.
    Wide,
    /// The cut runs along the longer side.
    Lengthwise,
    /// The cut runs along the shorter side.
    Crosswise,
}

impl<'a> Desk<'a> {
    pub(crate) fn new(sources: &'a Sources, folder: &'a dyn Folder) -> Self {
        Self {
            sources,
            unit: None,
            shared_units: Vec::new(),
            first: None,
            language: "en".to_owned(),
            notes: Vec::new(),
            shelf: Shelf::new(folder),
            failed: false,
        }
    }

    /// What a bare number means at a place.
    fn unit_at(&self, site: Site) -> Option<Unit> {
        let shared = self.shared_units.iter().find(|(file, _)| *file == site.file);
        shared.map_or(self.unit, |(_, unit)| *unit)
    }

    /// The unit that messages are written in.
    pub(crate) fn shown(&self) -> Unit {
        self.unit.or(self.first).unwrap_or_default()
    }

    pub(crate) fn note(&mut self, note: Diagnostic) {
        let first_error = note.is_error() && !self.failed;
        self.failed |= note.is_error();
        if first_error || self.notes.len() < MOST_NOTES {
            self.notes.push(note);
        }
    }

    /// Notes a fault with what to write instead.
    pub(crate) fn fault(
        &mut self,
        rule: &'static Rule,
        site: Site,
        message: impl Into<String>,
        help: impl Into<String>,
    ) {
        self.note(Diagnostic::new(rule, site, message).help(help));
    }

    pub(crate) fn has_errors(&self) -> bool {
        self.failed
    }

    /// The text of a node that should hold words.
    pub(crate) fn raw<'n>(&mut self, node: &'n Node) -> Option<(&'n str, bool)> {
        let found = match &node.value {
            Value::Words { text, plain } if !text.trim().is_empty() => {
                if *plain && self.swallows_row(node.site) {
                    return None;
                }
                return Some((text.trim(), *plain));
            }
            Value::Words { .. } | Value::Nothing { .. } => {
                self.nothing(node);
                return None;
            }
            Value::List(_) => "a list",
            Value::Keys(_) => "keys of its own",
        };
        let help = "write the value after the colon, on the same line";
        let message = format!("one value belongs here, not {found}");
        self.fault(&rules::WRONG_SHAPE, node.site, message, help);
        None
    }

    /// Notes a row of a list that is indented so far that it became words.
    fn swallows_row(&mut self, site: Site) -> bool {
        let text = self.sources.of(site).map_or("", |it| it.text.as_str());
        let words = text.get(site.start as usize..site.end as usize).unwrap_or_default();
        let mut start = site.start as usize;
        let dash =
            words.split('\n').skip(1).zip(words.split('\n')).find_map(|(row, above)| {
                start += above.len() + 1;
                let indent = row.len() - row.trim_start().len();
                row[indent..].starts_with("- ").then_some(start + indent)
            });
        let Some(dash) = dash else { return false };
        let start = u32::try_from(dash).unwrap_or(site.start);
        self.fault(
            &rules::WRONG_INDENT,
            Site { start, end: start + 1, ..site },
            "this row is indented further than the one above, and so is read as more of its words",
            "start all dashes of a list in the same column",
        );
        true
    }

    /// Notes that a key has no value.
    pub(crate) fn nothing(&mut self, node: &Node) {
        match node.value {
            Value::Nothing { hidden: true } => self.fault(
                &rules::HASH_HIDES_VALUE,
                node.site,
                "a value that starts with `#` is a remark and isn't read",
                "put the value in quotes",
            ),
            _ => self.fault(
                &rules::EMPTY_VALUE,
                node.site,
                "there is no value here",
                "write one after the colon, or remove the key",
            ),
        }
    }

    /// Whether a node is this one word.
    pub(crate) fn says(&self, node: &Node, word: &str) -> bool {
        matches!(&node.value, Value::Words { text, .. } if text.trim() == word)
    }

    /// Words to print or to compare.
    pub(crate) fn words(&mut self, node: &Node) -> Option<Text> {
        let (words, plain) = self.raw(node)?;
        if plain && self.cut_short(node.site) {
            self.fault(
                &rules::HASH_CUTS_WORDS,
                node.site,
                format!(
                    "the words end at {}, since a `#` after a space starts a remark",
                    quote(words)
                ),
                "put all of the words in quotes if the `#` belongs to them",
            );
        }
        Some(Text { words: words.to_owned(), site: node.site, ..Text::default() })
    }

    /// Whether a `#` right after plain words looks as if it were meant.
    fn cut_short(&self, site: Site) -> bool {
        let text = self.sources.of(site).map_or("", |it| it.text.as_str());
        let rest = text.get(site.end as usize..).unwrap_or_default();
        let mut signs = rest.trim_start_matches([' ', '\t']).chars();
        signs.next() == Some('#') && signs.next().is_some_and(char::is_alphanumeric)
    }

    /// A whole number between two.
    pub(crate) fn count(&mut self, node: &Node, least: u32, most: u32) -> Option<u32> {
        let (text, _) = self.raw(node)?;
        self.count_in(text, node.site, least, most)
    }

    /// A whole number in a text.
    pub(crate) fn count_in(
        &mut self,
        text: &str,
        site: Site,
        least: u32,
        most: u32,
    ) -> Option<u32> {
        let digits = text.strip_prefix('-').unwrap_or(text);
        if digits.is_empty() || !digits.bytes().all(|it| it.is_ascii_digit()) {
            self.fault(
                &rules::NOT_A_NUMBER,
                site,
                format!("{} is not a whole number", quote(text)),
                format!("write a number from {least} to {most} in digits"),
            );
            return None;
        }
        match text.parse() {
            Ok(number) if least <= number && number <= most => Some(number),
            _ => {
                self.fault(
                    &rules::OUT_OF_RANGE,
                    site,
                    format!("{} is not between {least} and {most}", quote(text)),
                    format!("write a number from {least} to {most}"),
                );
                None
            }
        }
    }

    /// A length, which may be zero.
    pub(crate) fn length(&mut self, node: &Node) -> Option<Length> {
        let (text, _) = self.raw(node)?;
        self.length_in(text, node.site)
    }

    /// A length above zero.
    pub(crate) fn some_length(&mut self, node: &Node) -> Option<Length> {
        let length = self.length(node)?;
        self.above_zero(length, node.site)
    }

    fn above_zero(&mut self, length: Length, site: Site) -> Option<Length> {
        if Length::ZERO < length {
            return Some(length);
        }
        let help = "write a length above zero, or remove the key";
        self.fault(&rules::ZERO_SIZE, site, "this length is zero", help);
        None
    }

    pub(crate) fn length_in(&mut self, text: &str, site: Site) -> Option<Length> {
        match Length::parse_in(text, self.unit_at(site)) {
            Ok((length, unit)) => {
                self.first.get_or_insert(unit);
                Some(length)
            }
            Err(fault) => {
                let note = faults::length(&fault, text, site);
                self.note(note);
                None
            }
        }
    }

    /// A thickness, which need not be on a ruler.
    pub(crate) fn thickness(&mut self, node: &Node) -> Option<Length> {
        let (text, _) = self.raw(node)?;
        match Length::parse_near(text, None) {
            Ok(length) => self.above_zero(length, node.site),
            Err(fault) => {
                let note = faults::length(&fault, text, node.site);
                self.note(note);
                None
            }
        }
    }

    /// A length above zero with the way it is meant: `2 in high`.
    pub(crate) fn length_and_way(
        &mut self,
        node: &Node,
    ) -> Option<(Length, Option<Way>)> {
        let (text, _) = self.raw(node)?;
        let (rest, way) = match text.rsplit_once(' ') {
            Some((rest, "high")) => (rest, Some(Way::High)),
            Some((rest, "wide")) => (rest, Some(Way::Wide)),
            Some((rest, "lengthwise" | "along")) => (rest, Some(Way::Lengthwise)),
            Some((rest, "crosswise" | "across")) => (rest, Some(Way::Crosswise)),
            Some((rest, "top" | "bottom")) if from_the(rest).is_some() => {
                (from_the(rest).unwrap_or(rest), Some(Way::High))
            }
            Some((rest, "left" | "right")) if from_the(rest).is_some() => {
                (from_the(rest).unwrap_or(rest), Some(Way::Wide))
            }
            _ => (text, None),
        };
        let length = self.length_in(rest, node.site)?;
        Some((self.above_zero(length, node.site)?, way))
    }

    /// A size with both sides above zero.
    pub(crate) fn size(&mut self, node: &Node) -> Option<Size> {
        let (text, _) = self.raw(node)?;
        self.size_in(text, node.site)
    }

    pub(crate) fn size_in(&mut self, text: &str, site: Site) -> Option<Size> {
        match Size::parse_in(text, self.unit_at(site)) {
            Ok((size, unit)) => {
                self.first.get_or_insert(unit);
                if Length::ZERO < size.width && Length::ZERO < size.height {
                    return Some(size);
                }
                let message = format!("{} leaves no width or no height", quote(text));
                self.fault(
                    &rules::ZERO_SIZE,
                    site,
                    message,
                    "write width x height, both above zero",
                );
                None
            }
            Err(SizeFault::Side(side, fault)) => {
                let bare = fault == LengthFault::NoUnit;
                let said = if bare { text } else { side.as_str() };
                let note = faults::length(&fault, said, site);
                self.note(note);
                None
            }
            Err(SizeFault::OneSide | SizeFault::ManySides) => {
                // A size in the words of another piece, as one would say it.
                let said = [("half of ", "half of"), ("third of ", "third of")];
                let part = said.iter().find_map(|(words, key)| {
                    let other = text.trim_start_matches("a ").strip_prefix(words)?;
                    Some(format!("write `size: {{{key}: {other}}}`"))
                });
                let same = ["same as ", "the same as ", "like ", "as "];
                let same = same.iter().find_map(|words| text.strip_prefix(words));
                let same =
                    same.map(|it| format!("write `like: {it}` in place of the size"));
                let usual = "write width x height, such as `5 1/2 x 2 in`".to_owned();
                let help = part.or(same).unwrap_or(usual);
                let message = format!("{} is not a size", quote(text));
                self.fault(&rules::NOT_A_SIZE, site, message, help);
                None
            }
        }
    }

    /// Yes or no.
    pub(crate) fn yes(&mut self, node: &Node) -> Option<bool> {
        const WORDS: [&str; 4] = ["true", "yes", "false", "no"];
        self.one_of(node, &WORDS).map(|index| index < 2)
    }

    /// The index of the word among those that can stand here.
    pub(crate) fn one_of(&mut self, node: &Node, words: &[&str]) -> Option<usize> {
        let (text, _) = self.raw(node)?;
        let low = text.to_lowercase().replace("centre", "center");
        if let Some(index) = words.iter().position(|word| *word == low) {
            return Some(index);
        }
        let help = match self.near(&low, words.iter().copied()) {
            Some(word) => format!("did you mean `{word}`?"),
            None => format!("write {}", either(words)),
        };
        let message = format!("{} can't stand here", quote(text));
        self.fault(&rules::NOT_A_CHOICE, node.site, message, help);
        None
    }

    /// The word that is most likely meant, if one is near enough.
    ///
    /// Looks only while few notes were made, so that a file full of slips takes no
    /// longer than one with a few.
    pub(crate) fn near<'w>(
        &self,
        written: &str,
        words: impl Iterator<Item = &'w str>,
    ) -> Option<&'w str> {
        if MOST_GUESSES < self.notes.len() {
            return None;
        }
        diag::near(written, words)
    }
}

/// What stands before `from the`, as in `1 in from the top`.
fn from_the(text: &str) -> Option<&str> {
    [" from the", " off the", " at the"].iter().find_map(|it| text.strip_suffix(it))
}

/// The user's words for a message: in backticks, not too long, on one line.
pub(crate) fn quote(words: &str) -> String {
    let mut quoted = String::from("`");
    for (index, sign) in words.chars().enumerate() {
        if 60 <= index {
            quoted.push('…');
            break;
        }
        quoted.push(if sign.is_control() { ' ' } else { sign });
    }
    quoted.push('`');
    quoted
}

/// The words as a choice: `a`, `b` or `c`.
pub(crate) fn either(words: &[&str]) -> String {
    let Some((last, rest)) = words.split_last() else { return String::new() };
    if rest.is_empty() {
        return format!("`{last}`");
    }
    let rest: Vec<_> = rest.iter().map(|word| format!("`{word}`")).collect();
    format!("{} or `{last}`", rest.join(", "))
}
