//! Numbered steps, and drawings with text beside them.

use crate::document::Block;
use crate::document::Figure;
use crate::document::Inline;
use crate::document::Look;
use crate::document::ScaleWish;
use crate::document::Step;
use crate::document::Text;
use crate::page::Role;
use crate::page::TagId;

use super::blocks::{kept, plain, spaced};
use super::setter::{Frame, Notch, Setter, Stand};
use super::slab::{NEVER, Order, Slab, abreast, fuse, height};
use super::text;

/// Text beside a drawing is no narrower, in large print likewise more.
const NARROWEST: f64 = 102.0;

/// The room of a drawing that is taken in at a glance, with its dimensions: about
/// five lines high.
const GLANCE: [f64; 2] = [96.0, 58.0];

/// Between the words and the drawing of a step.
const BETWEEN: f64 = 10.0;

impl Setter<'_> {
    /// How much of the frame's width a drawing beside text may take, and how high
    /// it may be; `None` if the text would become too narrow.
    pub(crate) fn room_beside(&self, frame: Frame, share: f64) -> Option<(f64, f64)> {
        let width = frame.width * share;
        let left = frame.width - width - BETWEEN;
        (left >= NARROWEST * self.theme.enlarged)
            .then(|| (width, 0.62 * self.theme.height()))
    }

    /// The room for a drawing that stands on its own below text.
    pub(crate) fn room_below(&self, frame: Frame) -> (f64, f64) {
        (frame.width, 0.5 * self.theme.height())
    }

    /// The room for the drawing of a step.
    pub(crate) fn room_of_step(&self, frame: Frame) -> (f64, f64) {
        let inner = self.step_frame(frame);
        let (width, _) =
            self.room_beside(inner, 0.5).unwrap_or_else(|| self.room_below(inner));
        // A state of the paper is seen at a glance: its drawing may be small, so that
        // many steps are seen together.
        let (high, least) =
            if frame.margin.is_some() { (0.21, 140.0) } else { (0.165, 88.0) };
        (width, (high * self.theme.height()).max(least))
    }

    /// The room for this drawing, where `room` is the one for any drawing of a step.
    pub(crate) fn room_of_state(&self, figure: &Figure, room: (f64, f64)) -> (f64, f64) {
        match figure.scale {
            ScaleWish::Glance(_) => {
                let (width, height) = GLANCE.map(|it| it * self.theme.enlarged).into();
                (room.0.min(width), height)
            }
            ScaleWish::Full
            | ScaleWish::Largest
            | ScaleWish::Shared(_)
            | ScaleWish::Finer(_) => room,
        }
    }

    /// Where the text of steps stands: beside numerals in the margin, or behind
    /// hanging numerals where there is none.
    fn step_frame(&self, frame: Frame) -> Frame {
        let hang = if frame.margin.is_some() { 0.0 } else { 21.0 * self.theme.enlarged };
        Frame {
            left: frame.left + hang,
            width: frame.width - hang,
            margin: None,
            wide: (frame.left + hang, frame.width - hang),
        }
    }

    /// Numbered steps; each stays with its numeral, aside and drawing.
    pub(crate) fn steps(
        &mut self,
        steps: &[Step],
        frame: Frame,
        parent: TagId,
    ) -> Vec<Slab> {
        let list = self.tags.add(parent, Role::List { numbered: true });
        let room = self.room_of_step(frame);
        let rows: Vec<Vec<Slab>> = if self.saves_in_pairs(steps, frame, room) {
            let cells = self.cells(frame);
            let row = |pair: &[Step]| {
                let mut row = Slab::default();
                for (step, cell) in pair.iter().zip(cells) {
                    let set = fuse(self.step(step, cell, room, list));
                    row.height = row.height.max(set.height);
                    row.absorb(set, 0.0);
                }
                vec![row]
            };
            steps.chunks(2).map(row).collect()
        } else {
            steps.iter().map(|step| self.step(step, frame, room, list)).collect()
        };
        let count = rows.len();
        let mut slabs = Vec::new();
        for (index, mut set) in rows.into_iter().enumerate() {
            let ends = index == 0 || index + 2 == count;
            if let Some(last) = set.last_mut() {
                last.after = if index + 1 == count {
                    0.0
                } else if ends {
                    60.0
                } else {
                    25.0
                };
            }
            let above = if index == 0 { 0.0 } else { self.theme.between };
            slabs.extend(spaced(set, above));
        }
        slabs
    }

    /// The two places of steps that stand in pairs.
    fn cells(&self, frame: Frame) -> [Frame; 2] {
        let (left, whole) = frame.wide;
        let gap = 1.3 * self.theme.gutter;
        let width = (whole - gap) / 2.0;
        [left, left + width + gap].map(|left| Frame {
            left,
            width,
            margin: None,
            wide: (left, width),
        })
    }

    /// Whether steps with drawings take clearly less paper in pairs: short words
    /// beside a drawing leave the better part of the measure empty.
    fn saves_in_pairs(&mut self, steps: &[Step], frame: Frame, room: (f64, f64)) -> bool {
        let drawn = steps.iter().filter(|it| it.figure.is_some()).count();
        if frame.margin.is_none() || drawn < 2 {
            return false;
        }
        let whole = self.step_frame(frame);
        let cell = self.step_frame(self.cells(frame)[0]);
        let heights: Vec<_> = steps
            .iter()
            .map(|step| {
                let figure =
                    step.figure.as_ref().map_or((0.0, 0.0), |it| self.size(it, room));
                (self.guess(step, figure, whole), self.guess(step, figure, cell))
            })
            .collect();
        let single: f64 = heights.iter().map(|it| it.0).sum();
        let pairs: f64 = heights
            .chunks(2)
            .map(|it| it.iter().map(|it| it.1).fold(0.0, f64::max))
            .sum();
        let highest = heights.iter().map(|it| it.1).fold(0.0, f64::max);
        pairs < 0.8 * single && highest < 0.5 * self.theme.height()
    }

    /// About how high a step is with a drawing of a size.
    fn guess(&mut self, step: &Step, figure: (f64, f64), inner: Frame) -> f64 {
        let voice = self.theme.body;
        let mut width = inner.width;
        let beside = inner.width - figure.0 - BETWEEN;
        let stacked = beside < NARROWEST * self.theme.enlarged;
        if figure.0 > 0.0 && !stacked {
            width = beside;
        }
        let lines =
            text::set(self.press, &step.text, &voice, width.min(self.theme.measure));
        let words = lines.lines.len() as f64 * voice.leading;
        if stacked { words + figure.1 } else { words.max(figure.1) }
    }

    /// One step.
    pub(crate) fn step(
        &mut self,
        step: &Step,
        frame: Frame,
        room: (f64, f64),
        list: TagId,
    ) -> Vec<Slab> {
        let tag = self.tags.add(list, Role::Entry);
        let label = self.tags.add(tag, Role::Label);
        let body = self.tags.add(tag, Role::Body);
        let inner = self.step_frame(frame);
        let voice = self.theme.body;
        let number = self.numeral(step, frame, label);
        // Where there is no margin, a note that repeats words makes them strong, and
        // any other ends the step.
        let stronger = match &step.aside {
            Some(aside) if frame.margin.is_none() => Some(stronger(&step.text, aside)),
            _ => None,
        };
        let aside = step.aside.as_ref().filter(|_| stronger.is_none());
        let text = stronger.as_ref().unwrap_or(&step.text);
        // The drawing first, since its width decides that of the text; its words
        // are read after those of the step all the same.
        let words = self.tags.add(body, Role::Paragraph);
        let aside_tag = aside.map(|_| self.tags.add(body, Role::Paragraph));
        let drawn = step.figure.as_ref().map(|figure| {
            let room = self.room_of_state(figure, room);
            let mut drawn = self.draw(figure, room, body);
            let narrow =
                drawn.width + BETWEEN + NARROWEST * self.theme.enlarged > inner.width;
            let x =
                if narrow { inner.left } else { inner.left + inner.width - drawn.width };
            drawn.move_to(x);
            (narrow, drawn)
        });
        let beside = match &drawn {
            Some((false, drawn)) => inner.width - drawn.width - BETWEEN,
            _ => inner.width,
        };
        let mut width = beside.min(self.theme.measure);
        // Where there is no margin, the words run on below a low drawing.
        if let Some((false, drawn)) = &drawn
            && frame.margin.is_none()
            && self.notch.is_none_or(|it| it.deep <= 0.0)
        {
            let (edge, deep) = (inner.left + beside, drawn.slab.height);
            self.notch = Some(Notch { edge, deep });
            width = inner.width;
        }
        let mut slabs = self.paragraph(text, &voice, words, inner.left, width);
        if let (Some(aside), Some(tag)) = (aside, aside_tag) {
            slabs = self.aside(aside, tag, slabs, frame, inner, width);
        }
        self.notch = None;
        if slabs.is_empty() {
            slabs.push(Slab::blank(voice.leading));
        }
        // The numeral is read first.
        let mut slabs = abreast(slabs, number, Order::Beside);
        if let Some((narrow, drawn)) = drawn {
            let figure = drawn.slab;
            if narrow {
                if let Some(last) = slabs.last_mut() {
                    last.after = NEVER;
                }
                slabs.extend(spaced(vec![figure], self.theme.unit / 2.0));
                // A step is never parted from its drawing.
                if height(&slabs) <= self.theme.height() {
                    slabs = vec![fuse(slabs)];
                }
            } else {
                slabs = abreast(slabs, figure, Order::Slabs);
            }
        }
        // A short step is never parted at all.
        if slabs.len() > 1 && height(&slabs) <= 6.0 * voice.leading {
            slabs = vec![fuse(slabs)];
        }
        slabs
    }

    /// The numeral of a step in the margin.
    fn numeral(&mut self, step: &Step, frame: Frame, tag: TagId) -> Slab {
        let words = [Inline::plain(step.number.as_str())];
        let voice = self.theme.numeral;
        let notch = self.notch.take();
        let (left, width, stand) = match frame.margin {
            Some((left, width)) => (left, width, Stand::End),
            None => (frame.left, 20.0 * self.theme.enlarged, Stand::Start),
        };
        let slabs = self.stand(&words, &voice, tag, left, width, stand);
        self.notch = notch;
        // Its baseline is that of the step's first line.
        let lift = self.theme.body.baseline() - voice.baseline();
        let mut number = Slab::default();
        number.absorb(fuse(slabs), lift);
        number.height = self.theme.body.leading;
        number
    }

    /// The aside of a step: in the margin below the numeral, or below the text.
    fn aside(
        &mut self,
        aside: &[Inline],
        tag: TagId,
        slabs: Vec<Slab>,
        frame: Frame,
        inner: Frame,
        width: f64,
    ) -> Vec<Slab> {
        let voice = self.theme.remark;
        if let Some((left, margin)) = frame.margin {
            let set = self.stand(aside, &voice, tag, left, margin, Stand::End);
            let mut note = Slab::default();
            note.absorb(fuse(set.clone()), self.theme.body.leading);
            note.height = self.theme.body.leading + height(&set);
            return abreast(slabs, note, Order::Slabs);
        }
        let set = self.paragraph(aside, &voice, tag, inner.left, width);
        let mut slabs = kept(slabs);
        if let Some(last) = slabs.last_mut() {
            last.after = NEVER;
        }
        slabs.extend(set);
        slabs
    }

    /// A drawing with blocks beside it, or below it where the page is narrow.
    pub(crate) fn beside(
        &mut self,
        figure: &Figure,
        blocks: &[Block],
        frame: Frame,
        parent: TagId,
    ) -> Vec<Slab> {
        if frame.margin.is_none()
            && let Some(set) = self.around(figure, blocks, frame, parent)
        {
            return set;
        }
        let before = self.tags.count();
        let group = self.tags.add(parent, Role::Group);
        // The drawing may use the margin column, so that the text keeps its own.
        let (left, whole) = frame.wide;
        let right = left + whole;
        if let Some((room, high)) =
            self.room_beside(Frame { left, width: whole, ..frame }, 0.52)
        {
            let mut drawn = self.draw(figure, (room, high), group);
            let edge = (left + drawn.width + 1.4 * self.theme.gutter).max(frame.left);
            let width = right - edge;
            if width >= 1.25 * NARROWEST * self.theme.enlarged {
                drawn.move_to(left);
                let inner =
                    Frame { left: edge, width, margin: None, wide: (edge, width) };
                let slabs = self.blocks(blocks, inner, group);
                let mut both = abreast(slabs, drawn.slab, Order::Beside);
                // What tells of a drawing is rather not parted from it.
                both.iter_mut().for_each(|it| it.after = it.after.max(200.0));
                if both[0].height <= self.theme.height() {
                    return both;
                }
            }
        }
        // What was set abreast is too high or too narrow, and in vain.
        self.tags.truncate(before);
        let tag = self.tags.add(parent, Role::Group);
        let mut slabs = self.single(figure, frame, tag);
        if let Some(last) = slabs.last_mut() {
            last.after = NEVER;
        }
        let rest = self.blocks(blocks, frame, tag);
        slabs.extend(spaced(rest, self.theme.unit));
        slabs
    }
}

/// The same text with the first place that says the words of a note made strong;
/// with the note at its end, if there is none.
fn stronger(text: &[Inline], note: &[Inline]) -> Text {
    let words = plain(note);
    if text.iter().any(|it| it.look == Look::Strong && it.text == words) {
        return text.to_vec();
    }
    let says = |it: &Inline| {
        let (before, after) = it.text.split_once(&words)?;
        // Not the end of a longer number, such as `148` of `210 × 148`.
        let alone = !before.trim_end().ends_with(['×', '/'])
            && !after.trim_start().starts_with('×');
        (it.look == Look::Plain && alone).then(|| (before.to_owned(), after.to_owned()))
    };
    let found = text.iter().enumerate().find_map(|(at, it)| Some((at, says(it)?)));
    let Some((at, (before, after))) = found.filter(|_| !words.is_empty()) else {
        let gap = Inline::plain("\u{2002}");
        let strong = note.iter().map(|it| Inline { look: Look::Strong, ..it.clone() });
        return text.iter().cloned().chain([gap]).chain(strong).collect();
    };
    let part = |says: String, look: Look| Inline { text: says, look, ..text[at].clone() };
    let parts =
        [part(before, Look::Plain), part(words, Look::Strong), part(after, Look::Plain)];
    let mut all = text[..at].to_vec();
    all.extend(parts.into_iter().filter(|it| !it.text.is_empty()));
    all.extend_from_slice(&text[at + 1..]);
    all
}
