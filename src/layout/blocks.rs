//! Blocks into slabs: headings, paragraphs, lists, and where to find the others.

use crate::document::Block;
use crate::document::Inline;
use crate::document::Marker;
use crate::document::Section;
use crate::document::Tone;
use crate::page::Ink;
use crate::page::Item;
use crate::page::Line;
use crate::page::Owner;
use crate::page::Path;
use crate::page::Piece;
use crate::page::Role;
use crate::page::TagId;
use crate::page::What;

use super::setter::{Frame, Setter};
use super::slab::{Mark, NEVER, Slab, fuse, height};
use super::text::widths;

/// What is kept together is long if it takes such a part of a page.
const LONG: f64 = 0.3;

/// What it costs to part it.
const PARTED: f64 = 450.0;

/// The words of a text without their looks.
pub(crate) fn plain(text: &[Inline]) -> String {
    text.iter().map(|it| it.text.as_str()).collect()
}

/// Space above the first of the slabs.
pub(crate) fn spaced(mut slabs: Vec<Slab>, above: f64) -> Vec<Slab> {
    if let Some(first) = slabs.first_mut() {
        first.above = first.above.max(above);
    }
    slabs
}

/// Forbids to break the page anywhere within the slabs.
pub(crate) fn kept(mut slabs: Vec<Slab>) -> Vec<Slab> {
    let last = slabs.len().saturating_sub(1);
    slabs.iter_mut().take(last).for_each(|it| it.after = NEVER);
    slabs
}

/// Allows to break the page within the slabs, if that saves paper.
fn parted(mut slabs: Vec<Slab>) -> Vec<Slab> {
    let last = slabs.len().saturating_sub(1);
    slabs.iter_mut().take(last).for_each(|it| it.after = it.after.max(PARTED));
    slabs
}

impl Setter<'_> {
    /// A section with its heading.
    pub(crate) fn section(
        &mut self,
        section: &Section,
        first: bool,
        frame: Frame,
    ) -> Vec<Slab> {
        let tag = self.tags.add(TagId::ROOT, Role::Section);
        let mut slabs = Vec::new();
        if !plain(&section.title).trim().is_empty() {
            let level = usize::from(!first);
            slabs = self.heading(&section.title, level, tag, frame);
        }
        let body = self.blocks(&section.blocks, frame, tag);
        slabs.extend(body);
        let line = 1.1 * self.theme.body.leading;
        if let [.., before, last] = slabs.as_mut_slice() {
            // A line on its own is not how a page starts.
            if last.height < line {
                before.after = before.after.max(700.0);
            }
        }
        if let Some(last) = slabs.last_mut() {
            last.after = 0.0;
        }
        if slabs.is_empty() {
            slabs.push(Slab::blank(0.0));
        }
        slabs[0].marks.push(Mark::Anchor(section.anchor.clone()));
        slabs
    }

    /// A heading: 0 is the title, 1 a section's, 2 and 3 stand within it.
    fn heading(
        &mut self,
        words: &[Inline],
        level: usize,
        parent: TagId,
        frame: Frame,
    ) -> Vec<Slab> {
        let voice = self.theme.headings[level];
        let unit = self.theme.unit;
        // Readers by ear count on levels without a gap, whatever they look like.
        let number = u8::try_from(level.max(1)).unwrap_or(3).min(self.level + 1);
        self.level = number;
        let tag = self.tags.add(parent, Role::Heading(number));
        let (left, width) =
            if level < 3 { frame.wide } else { (frame.left, frame.width) };
        let width = self.balanced(words, &voice, width);
        let mut slabs = self.paragraph(words, &voice, tag, left, width);
        let Some(first) = slabs.first_mut() else { return slabs };
        first.marks.push(Mark::Heading(number, plain(words).trim().to_string()));
        first.above = match level {
            0 => 0.0,
            1 if self.theme.margin > 0.0 => 3.0 * unit,
            1 => 2.1 * unit,
            2 => 2.0 * unit,
            _ => unit,
        };
        if level == 1 {
            // The rule stands in the space above, which falls away at a page's top
            // together with the need for a rule.
            let rule = self.rule(left, frame.wide.0 + frame.wide.1, 0.0, Ink::RULE, 0.6);
            first.items.insert(0, rule);
        }
        slabs.iter_mut().for_each(|it| it.after = NEVER);
        if level < 2 {
            // A little air below the headings that span the page.
            let last = slabs.len() - 1;
            let tail = self.theme.snap(height(&slabs) + 0.3 * unit) - height(&slabs);
            slabs[last].height += tail;
        }
        slabs
    }

    /// Blocks one below the other.
    pub(crate) fn blocks(
        &mut self,
        blocks: &[Block],
        frame: Frame,
        parent: TagId,
    ) -> Vec<Slab> {
        let mut slabs = Vec::new();
        let mut before: Option<&Block> = None;
        let mut rest = blocks;
        while let Some(block) = rest.first() {
            let unit = self.theme.between;
            let after_heading =
                slabs.last().is_none_or(|it: &Slab| it.after.is_infinite());
            let (set, count) = self.few(rest, frame, parent);
            rest = &rest[count..];
            let lines = set.len();
            let above = match block {
                Block::Heading { .. } => 0.0,
                Block::Figure(_) | Block::Figures(_) | Block::Beside(..)
                    if after_heading =>
                {
                    unit / 2.0
                }
                _ if after_heading => 0.0,
                _ => match before {
                    Some(Block::Figure(_) | Block::Figures(_) | Block::Table(_)) => {
                        1.5 * unit
                    }
                    _ => unit,
                },
            };
            slabs.extend(spaced(set, above));
            before = Some(block);
            if let Some(last) = slabs.last_mut() {
                // Pages rather end where a section ends, and what leads to steps or
                // tells of a drawing stands with it.
                let tie = match (block, rest.first()) {
                    (
                        Block::Paragraph(..),
                        Some(Block::Steps(_) | Block::Table(_) | Block::Figure(_)),
                    ) if after_heading => 1_500.0,
                    // What leads to a list is read with it.
                    (Block::Paragraph(..), Some(Block::List(..))) => 9_000.0,
                    // Many lines that hold for all steps are read before them.
                    (Block::Paragraph(..), Some(Block::Steps(_))) if lines > 4 => 40.0,
                    (_, Some(Block::Table(_))) => 600.0,
                    _ => 40.0,
                };
                last.after = last.after.max(tie);
            }
        }
        slabs
    }

    /// The first block, or the first few if they stand together; says how many.
    fn few(
        &mut self,
        blocks: &[Block],
        frame: Frame,
        parent: TagId,
    ) -> (Vec<Slab>, usize) {
        let drawings: Vec<_> = blocks
            .iter()
            .map_while(
                |it| if let Block::Figure(figure) = it { Some(figure) } else { None },
            )
            .cloned()
            .collect();
        if drawings.len() > 1 {
            // Drawings that follow one another stand side by side.
            return (self.figures(&drawings, frame, parent), drawings.len());
        }
        if let [lead @ Block::Paragraph(..), Block::Figure(figure), after @ ..] = blocks
            && !matches!(after.first(), Some(Block::Figure(_)))
            && figure.caption.is_some()
            && frame.margin.is_none()
            && let Some(set) = self.captioned_aside(lead, figure, frame, parent)
        {
            return (set, 2);
        }
        (self.block(&blocks[0], frame, parent), 1)
    }

    /// One block.
    pub(crate) fn block(
        &mut self,
        block: &Block,
        frame: Frame,
        parent: TagId,
    ) -> Vec<Slab> {
        match block {
            Block::Heading { level, text, anchor } => {
                let level = usize::from((*level).clamp(2, 3));
                let mut slabs = self.heading(text, level, parent, frame);
                if let (Some(first), Some(anchor)) = (slabs.first_mut(), anchor) {
                    first.marks.push(Mark::Anchor(anchor.clone()));
                }
                slabs
            }
            Block::Paragraph(tone, text) => {
                let text = &self.with_scales(text);
                let voice = match tone {
                    Tone::Body => self.theme.body,
                    Tone::Lead => self.theme.lead,
                    Tone::Remark => self.theme.remark,
                };
                let tag = self.tags.add(parent, Role::Paragraph);
                let mut width = frame.width.min(self.theme.measure);
                if *tone == Tone::Lead {
                    width = self.balanced(text, &voice, frame.width);
                }
                self.paragraph(text, &voice, tag, frame.left, width)
            }
            Block::List(marker, entries) => self.list(*marker, entries, frame, parent),
            Block::Steps(steps) => self.steps(steps, frame, parent),
            Block::Table(table) => self.table(table, frame, parent),
            Block::Figure(figure) => self.single(figure, frame, parent),
            Block::Figures(figures) => self.figures(figures, frame, parent),
            Block::Caution(caution) => self.caution(caution, frame, parent),
            Block::Tiled(tiled) => self.tiled(tiled, frame, parent),
            Block::Beside(figure, blocks) => self.beside(figure, blocks, frame, parent),
            Block::Keep(blocks) => {
                let slabs = self.blocks(blocks, frame, parent);
                let part = height(&slabs) / self.theme.height();
                if part > 1.0 {
                    slabs
                } else if part > LONG && frame.margin.is_none() {
                    // On narrow pages, to keep what is long would cost a page.
                    parted(slabs)
                } else {
                    kept(slabs)
                }
            }
        }
    }

    /// A list with dots, or with boxes to tick.
    fn list(
        &mut self,
        marker: Marker,
        entries: &[Vec<Inline>],
        frame: Frame,
        parent: TagId,
    ) -> Vec<Slab> {
        let list = self.tags.add(parent, Role::List { numbered: false });
        let voice = self.theme.body;
        let k = self.theme.enlarged;
        let indent = match marker {
            Marker::Dot => 12.0 * k,
            Marker::Box => 18.0 * k,
        };
        let mut slabs: Vec<Slab> = Vec::new();
        let half = self.half_of_list(marker, entries, indent, frame);
        // Whether the place beside the last entry is free.
        let mut open = false;
        for entry in entries {
            let tag = self.tags.add(list, Role::Entry);
            let label = self.tags.add(tag, Role::Label);
            let body = self.tags.add(tag, Role::Body);
            let short = self.fits_half(entry, indent, frame);
            let second = half.filter(|_| open && short);
            open = half.is_some() && short && second.is_none();
            let left = frame.left + second.unwrap_or(0.0);
            let width = (frame.width - indent).min(self.theme.measure);
            let mut lines = self.paragraph(entry, &voice, body, left + indent, width);
            if lines.is_empty() {
                lines.push(Slab::blank(voice.leading));
            }
            let middle = voice.baseline() - 0.24 * voice.size;
            let mark = self.mark(marker, left, middle, label);
            lines[0].items.insert(0, mark);
            if let (Some(_), Some(first)) = (second, slabs.last_mut()) {
                first.absorb(fuse(lines), 0.0);
                continue;
            }
            if let Some(last) = lines.last_mut() {
                last.after = 40.0;
            }
            slabs.extend(lines);
        }
        // The first entry, and the last, are not left alone.
        let count = slabs.len();
        if count > 2 {
            slabs[0].after = slabs[0].after.max(700.0);
            slabs[count - 2].after = slabs[count - 2].after.max(700.0);
        }
        if let Some(last) = slabs.last_mut() {
            last.after = 0.0;
        }
        slabs
    }

    /// How far to the right every second entry stands, if boxes to tick have so
    /// few words that two fit into a line.
    fn half_of_list(
        &mut self,
        marker: Marker,
        entries: &[Vec<Inline>],
        indent: f64,
        frame: Frame,
    ) -> Option<f64> {
        let half = (frame.width.min(self.theme.measure) + self.theme.gutter) / 2.0;
        let short = marker == Marker::Box
            && entries.len() > 2
            && self.notch.is_none()
            && entries.iter().filter(|it| self.fits_half(it, indent, frame)).count() > 1;
        short.then_some(half)
    }

    /// Whether an entry of a list is short enough to stand beside another.
    fn fits_half(&mut self, entry: &[Inline], indent: f64, frame: Frame) -> bool {
        let half = (frame.width.min(self.theme.measure) - self.theme.gutter) / 2.0;
        let voice = self.theme.body;
        widths(self.press, entry, &voice).0 <= half - indent
    }

    /// The dot, or the box to tick, of a list.
    pub(crate) fn mark(
        &mut self,
        marker: Marker,
        left: f64,
        middle: f64,
        tag: TagId,
    ) -> Item {
        let k = self.theme.enlarged;
        let ink = self.theme.ink(Ink::TEXT);
        let says = match marker {
            Marker::Dot => "\u{2022}",
            Marker::Box => "\u{2610}",
        };
        self.tags.get_mut(tag).says = Some(says.into());
        let path = match marker {
            Marker::Dot => {
                let dot = (left + 4.0 * k, middle);
                let line = Line { ink, width: 3.0 * k, dash: Vec::new(), round: true };
                Path { pieces: vec![Piece::line(dot, dot)], fill: None, line: Some(line) }
            }
            Marker::Box => {
                let side = 8.5 * k;
                let square = Piece::rect(left + 0.5, middle - side / 2.0, side, side);
                let line = Line { ink, width: 0.7, dash: Vec::new(), round: false };
                Path { pieces: vec![square], fill: None, line: Some(line) }
            }
        };
        Item { owner: Owner::Tag(tag), what: What::Path(path) }
    }
}
