//! What every section writes with: the words, and whose work is whose.

use crate::document::{Inline, Look, Text};
use crate::geom::Turn;
use crate::handout::pattern::Patterns;
use crate::handout::{Hands, Options, Template, When};
use crate::plan::cut::{PaperCut, Part, PartOf};
use crate::plan::{Act, Plan, Task, TaskId};
use crate::project::{self, FaceId, PaperId, Project, Reader};
use crate::words::{Value, Words};

/// The project and its plan, seen by one reader and said in one language.
pub(super) struct Writer<'a> {
    pub(super) project: &'a Project,
    pub(super) plan: &'a Plan,
    pub(super) template: &'a Template,
    pub(super) words: &'a Words,
    /// The language that the user's words are wanted in, as in BCP 47.
    pub(super) language: &'a str,
    /// What of the patterns is seen where.
    pub(super) patterns: &'a Patterns,
    /// What the reader chose for her copy.
    pub(super) options: &'a Options<'a>,
}

/// What is put in place of a name in a message.
pub(super) enum Arg {
    /// A number that the message may decline by.
    Count(u32),
    /// Words in the document's language, or a case that the message chooses by.
    Word(String),
    /// Words that look different, or that the user wrote.
    Text(Text),
}

impl From<u32> for Arg {
    fn from(count: u32) -> Self {
        Self::Count(count)
    }
}

impl From<&str> for Arg {
    fn from(word: &str) -> Self {
        Self::Word(word.to_owned())
    }
}

impl From<String> for Arg {
    fn from(word: String) -> Self {
        Self::Word(word)
    }
}

impl From<Text> for Arg {
    fn from(text: Text) -> Self {
        Self::Text(text)
    }
}

/// The words of a text without their looks.
pub(super) fn plain(text: &[Inline]) -> String {
    text.iter().map(|it| it.text.as_str()).collect()
}

/// Sentences one after the other.
pub(super) fn sentences(parts: impl IntoIterator<Item = Text>) -> Text {
    let mut all = Text::new();
    for part in parts.into_iter().filter(|it| !it.is_empty()) {
        if !all.is_empty() {
            all.push(Inline::plain(" "));
        }
        all.extend(part);
    }
    joined(all)
}

/// Puts neighbours that look alike into one.
fn joined(text: Text) -> Text {
    let mut all = Text::new();
    for inline in text.into_iter().filter(|it| !it.text.is_empty()) {
        match all.last_mut() {
            Some(last)
                if last.look == inline.look
                    && last.lang == inline.lang
                    && last.site.is_none()
                    && inline.site.is_none()
                    && last.link == inline.link =>
            {
                last.text.push_str(&inline.text);
            }
            _ => all.push(inline),
        }
    }
    all
}

/// Words that run from right to left, parted from the sentence around them, so that
/// its commas and quotes stay where they are (UAX #9, FSI and PDI).
fn isolated(words: &str) -> String {
    if words.chars().any(runs_leftwards) {
        format!("\u{2068}{words}\u{2069}")
    } else {
        words.to_owned()
    }
}

/// Whether a letter is of a script that runs from right to left (the blocks that
/// UAX #9 sets aside for such scripts).
fn runs_leftwards(letter: char) -> bool {
    matches!(
        letter,
        '\u{590}'..='\u{8ff}'
            | '\u{fb1d}'..='\u{fdff}'
            | '\u{fe70}'..='\u{feff}'
            | '\u{10800}'..='\u{10fff}'
            | '\u{1e800}'..='\u{1efff}'
    )
}

/// The first of the characters that hold the place of a text while its message
/// is filled in: they belong to nobody (Unicode, private use).
const HOLD: u32 = 0xE000;

impl<'a> Writer<'a> {
    /// A message as plain words.
    pub(super) fn say(&self, message: &str, values: &[(&str, Arg)]) -> String {
        plain(&self.tell(message, values))
    }

    /// A message in which some words keep their own looks.
    pub(super) fn tell(&self, message: &str, values: &[(&str, Arg)]) -> Text {
        let mut texts: Vec<&Text> = Vec::new();
        let mut named: Vec<(&str, Value<'_>)> = Vec::new();
        for (name, arg) in values {
            let value = match arg {
                Arg::Count(count) => Value::from(*count),
                Arg::Word(word) => Value::from(word.as_str()),
                Arg::Text(text) => {
                    let at = u32::try_from(texts.len()).unwrap_or(u32::MAX);
                    texts.push(text);
                    let held = HOLD.checked_add(at).and_then(char::from_u32);
                    Value::from(held.map(String::from).unwrap_or_default())
                }
            };
            named.push((name, value));
        }
        let said = self.words.say(message, &named);
        let mut all = Text::new();
        let mut run = String::new();
        for letter in said.chars() {
            let held = u32::from(letter)
                .checked_sub(HOLD)
                .and_then(|at| texts.get(usize::try_from(at).ok()?));
            match held {
                Some(text) => {
                    all.push(Inline::plain(std::mem::take(&mut run)));
                    all.extend(text.iter().cloned());
                }
                None => run.push(letter),
            }
        }
        all.push(Inline::plain(run));
        joined(all)
    }

    /// Words that the user wrote.
    pub(super) fn user(&self, text: &project::Text) -> Text {
        let (words, lang) = text.told_in(self.language);
        let lang = lang.unwrap_or(&self.project.language);
        let lang = (lang != self.words.language()).then(|| lang.to_owned());
        let site = Some(text.site);
        vec![Inline { lang, site, ..Inline::plain(isolated(words)) }]
    }

    /// Words that the user wrote, as a paragraph of their own: it runs as they do.
    pub(super) fn alone(&self, text: &project::Text) -> Text {
        let mut alone = self.user(text);
        for inline in &mut alone {
            inline.text = self.bare(text);
        }
        alone
    }

    /// Words that the user wrote, without where and in which language.
    pub(super) fn bare(&self, text: &project::Text) -> String {
        text.told_in(self.language).0.to_owned()
    }

    /// Words that the user wrote, in quotes.
    pub(super) fn quoted(&self, text: &project::Text) -> Text {
        let words = self.words.quoted(&isolated(text.told_in(self.language).0));
        let mut quoted = self.user(text);
        for inline in &mut quoted {
            inline.text.clone_from(&words);
            inline.look = Look::Quoted;
        }
        quoted
    }

    /// `a`, `a and b`, `a, b and c`.
    pub(super) fn list(&self, items: Vec<Text>) -> Text {
        self.chained(items, |first, last| {
            self.tell("list-last", &[("first", first.into()), ("last", last.into())])
        })
    }

    /// `a`, `a or b`, `a, b or c`.
    pub(super) fn choice(&self, items: Vec<Text>) -> Text {
        self.chained(items, |first, last| {
            self.tell("list-choice", &[("first", first.into()), ("last", last.into())])
        })
    }

    fn chained(&self, mut items: Vec<Text>, end: impl Fn(Text, Text) -> Text) -> Text {
        let Some(last) = items.pop() else { return Text::new() };
        let first = items.into_iter().reduce(|first, next| {
            self.tell("list-next", &[("first", first.into()), ("next", next.into())])
        });
        match first {
            Some(first) => end(first, last),
            None => last,
        }
    }

    /// When a task is done by whoever holds the handout; `None` if it is done by
    /// somebody else, and so not spoken of.
    pub(super) fn when(&self, id: TaskId) -> Option<When> {
        let reader = self.template.reader;
        let ahead = self.plan.work.ahead.iter();
        let ahead = ahead.filter(|it| it.0 == reader).any(|it| it.1.contains(&id));
        let task = &self.plan.work.tasks[id.0];
        // A traveller prepares at home herself what was not said to be the
        // maker's; others get it from the maker.
        let at_home = reader == Reader::Travel
            && !(matches!(task.act, Act::CutPaper(_)) && self.maker_cuts());
        match (self.template.hands, ahead, at_home) {
            (Hands::Reader, false, _) => Some(When::Here),
            (Hands::Reader, true, true) | (Hands::Maker, true, false) => {
                Some(When::Before)
            }
            (Hands::Reader, true, false) | (Hands::Maker, ..) => None,
        }
    }

    /// Whether it was said that the maker cuts the sheets for this reader.
    fn maker_cuts(&self) -> bool {
        let reader = self.template.reader;
        self.project.cut_by.iter().any(|it| it.reader == reader && !it.reader_cuts)
    }

    /// The tasks of whoever holds the handout, in order.
    pub(super) fn mine(&self) -> impl Iterator<Item = (&'a Task, When)> {
        let tasks = self.plan.work.tasks.iter().enumerate();
        tasks.filter_map(|(at, task)| Some((task, self.when(TaskId(at))?)))
    }

    /// Whether something is done by whoever holds the handout.
    pub(super) fn is_mine(&self, act: Act) -> bool {
        self.mine().any(|(task, _)| task.act == act)
    }

    /// Whether something is done before the cards reach the place where they are
    /// finished.
    pub(super) fn is_ahead(&self, act: Act) -> bool {
        let ahead = self.plan.work.ahead.iter();
        ahead.filter(|it| it.0 == self.template.reader).any(|(_, tasks)| {
            tasks.iter().any(|id| self.plan.work.tasks[id.0].act == act)
        })
    }

    /// How many kits whoever holds the handout works on.
    pub(super) fn kits(&self) -> u32 {
        match self.template.hands {
            Hands::Reader => 1,
            Hands::Maker => self.plan.supplies.kits.max(1),
        }
    }

    /// How a paper is cut, if it is.
    pub(super) fn cut_of(&self, paper: PaperId) -> Option<&'a PaperCut> {
        self.plan.cuts.iter().find(|it| it.paper == paper)
    }

    /// What is cut for something, if it is cut from a planned sheet.
    pub(super) fn part(&self, of: PartOf) -> Option<&'a Part> {
        let is = |part: &&Part| match (of, part.of) {
            // Labels of one size and paper are one part.
            (PartOf::Label(greeting), PartOf::Label(_))
            | (PartOf::LabelMat(greeting), PartOf::LabelMat(_)) => {
                part.greetings.iter().any(|it| it.0 == greeting)
            }
            (wanted, known) => wanted == known,
        };
        self.plan.cuts.iter().flat_map(|it| &it.parts).find(is)
    }

    /// The fill that stands for a face of a paper.
    pub(super) fn fill(
        &self,
        paper: PaperId,
        face: Option<FaceId>,
        turn: Turn,
    ) -> crate::document::Fill {
        let before = self.project.papers.iter().take(paper.0);
        let before: usize = before.map(|it| it.faces.len().max(1)).sum();
        let index = before + face.map_or(0, |it| it.0);
        crate::document::Fill::Face {
            index: u8::try_from(index).unwrap_or(u8::MAX),
            color: self.project.papers[paper.0].color,
            turn,
        }
    }
}
