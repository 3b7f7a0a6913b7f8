//! Strips that hold several labels: where each greeting is stamped, and how labels
//! are punched from them.

use crate::document::{Inline, Text};
use crate::geom::{Axis, Length, Rect, Size};
use crate::handout::prepare::greeting_of;
use crate::handout::writer::Writer;
use crate::plan::Task;
use crate::plan::cut::{Part, PartOf, strip_runs};
use crate::project::{GreetingId, ToolKind};

/// How labels lie on a strip.
pub(super) struct Line {
    /// So many one after another.
    pub(super) labels: u32,
    /// The way they follow each other.
    pub(super) runs: Axis,
    /// Width × height of the share of each.
    pub(super) one: Size,
}

impl Line {
    /// How the labels or mats of a part lie on each of its strips.
    pub(super) fn of(w: &Writer<'_>, part: &Part) -> Self {
        let Size { width, height } = part.size;
        let tool = match part.of {
            PartOf::Label(id) => w.project.greetings[id.0].label.punch,
            PartOf::LabelMat(id) => {
                w.project.greetings[id.0].mat.and_then(|it| it.punched).map(|it| it.with)
            }
            PartOf::Piece(_) | PartOf::Base(_) => None,
        };
        let runs = match tool.map(|it| w.project.tools[it.0].kind.clone()) {
            Some(ToolKind::Punch(punch)) => strip_runs(punch),
            _ => Axis::Upright,
        };
        let labels = part.on_each();
        let share = |it: Length| Length::from_units(it.units() / i64::from(labels));
        let one = match runs {
            Axis::Level => Size::new(share(width), height),
            Axis::Upright => Size::new(width, share(height)),
        };
        Self { labels, runs, one }
    }

    /// Something in the middle of the so-and-so-many-th share, counted from 0.
    pub(super) fn place(&self, at: u32, size: Size) -> Rect {
        let x = (self.one.width - size.width).half();
        let y = (self.one.height - size.height).half();
        let on = self.apart() * i64::from(at);
        match self.runs {
            Axis::Level => Rect::new(x + on, y, size),
            Axis::Upright => Rect::new(x, y + on, size),
        }
    }

    /// How far it is from the middle of one label to that of the next.
    pub(super) fn apart(&self) -> Length {
        self.one.along(self.runs)
    }
}

/// The greetings on the strips of one kit, strip by strip from the end at which one
/// begins.
pub(super) fn places(part: &Part) -> impl Iterator<Item = GreetingId> {
    let greetings = part.greetings.iter();
    greetings.flat_map(|(id, count)| (0..*count).map(|_| *id))
}

/// What is stamped on which strip: the first of the tasks that share it, with all
/// that go onto it; `None` for labels that lie alone.
pub(super) fn shared<'a>(w: &Writer<'a>, task: &Task) -> Option<&'a Part> {
    let part = w.part(PartOf::Label(greeting_of(task.act)?))?;
    (part.on_each() > 1).then_some(part)
}

/// Stamps greetings onto strips that hold several.
pub(super) fn stamp(w: &Writer<'_>, part: &Part, group: &[&Task]) -> Text {
    let line = Line::of(w, part);
    let items = group.iter().filter_map(|task| {
        let id = greeting_of(task.act)?;
        let mine = places(part).enumerate().filter(|(_, it)| *it == id);
        let mine = mine.map(|(at, _)| vec![Inline::plain((at + 1).to_string())]);
        let mine: Vec<Text> = mine.collect();
        let count = u32::try_from(mine.len()).unwrap_or(u32::MAX);
        let words = w.quoted(&w.project.greetings[id.0].words);
        let values = [
            ("count", count.into()),
            ("places", w.list(mine).into()),
            ("words", words.into()),
        ];
        Some(w.tell("stamp-in-place", &values))
    });
    let items = w.list(items.collect());
    let letter: Text = vec![Inline::strong(part.letter.clone())];
    let first = line.apart().half();
    let strips = part.per_kit.saturating_mul(w.kits());
    let has = |there: bool| if there { "yes" } else { "no" };
    let (set, ink) = (group[0].tool, group[0].ink);
    let values = [
        ("hasink", has(ink.is_some()).into()),
        ("ink", ink.map(|it| w.tool_name(it)).unwrap_or_default().into()),
        ("hasset", has(set.is_some()).into()),
        ("set", set.map(|it| w.tool(it)).unwrap_or_default().into()),
        ("letter", letter.into()),
        ("items", items.into()),
        ("first", w.words.length(first).into()),
        ("apart", w.words.length(line.apart()).into()),
        ("changes", has(strips > 1 && group.len() > 1).into()),
    ];
    w.tell("stamp-strips", &values)
}

/// How the strip comes to its next label, where any of those that are punched lie on
/// one with others.
pub(super) fn go_on(
    w: &Writer<'_>,
    group: &[&Task],
    of: fn(GreetingId) -> PartOf,
) -> Option<Text> {
    let parts = group.iter().filter_map(|it| w.part(of(greeting_of(it.act)?)));
    let part = parts.into_iter().find(|part| part.on_each() > 1)?;
    let line = Line::of(w, part);
    let tool = group[0].tool?;
    let ToolKind::Punch(punch) = &w.project.tools[tool.0].kind else { return None };
    let size = punch.outline.size;
    // The outline lies along the strip as it fits.
    let size = if size.fits(line.one) { size } else { size.turned() };
    let end = (line.apart() - size.along(line.runs)).half();
    Some(w.tell("punch-go-on", &[("end", w.words.length(end).into())]))
}
