//! Tables: widths of columns, rows that stay whole, heads that come again.

use std::rc::Rc;

use crate::document::Align;
use crate::document::Column;
use crate::document::Inline;
use crate::document::Look;
use crate::document::Marker;
use crate::document::Table;
use crate::page::Ink;
use crate::page::Owner;
use crate::page::Role;
use crate::page::TagId;

use super::blocks::plain;
use super::setter::{Frame, Setter, Stand};
use super::slab::{NEVER, Slab, fuse};
use super::text;

/// Rows of up to so many lines are never cut.
const WHOLE: usize = 12;

/// A column at its place.
#[derive(Clone, Copy, Debug)]
struct Slot {
    left: f64,
    width: f64,
    stand: Stand,
    /// Its empty cells are boxes to tick.
    boxes: bool,
}

impl Setter<'_> {
    /// A table.
    pub(crate) fn table(
        &mut self,
        table: &Table,
        frame: Frame,
        parent: TagId,
    ) -> Vec<Slab> {
        if table.columns.is_empty() {
            return Vec::new();
        }
        let tag = self.tags.add(parent, Role::Table(table.summary.clone()));
        let slots = self.slots(table, frame);
        let (first, last) = (slots[0], slots[slots.len() - 1]);
        let (left, right) = (first.left, last.left + last.width);
        let mut slabs = Vec::new();
        let mut again = None;
        if table.columns.iter().any(|it| !plain(&it.head).is_empty()) {
            let heads: Vec<_> = table.columns.iter().map(|it| it.head.clone()).collect();
            let mut head = fuse(self.row(&heads, &slots, true, tag));
            let rule = self.rule(left, right, head.height - 0.3, Ink::TEXT, 0.6);
            head.items.push(rule);
            head.after = NEVER;
            again = Some(Rc::new(self.head_again(&head, frame, left)));
            slabs.push(head);
        }
        let count = table.rows.len();
        for (index, cells) in table.rows.iter().enumerate() {
            let mut lines = self.row(cells, &slots, false, tag);
            if let Some(line) = lines.last_mut() {
                let rule = self.rule(left, right, line.height - 0.3, Ink::RULE, 0.3);
                line.items.push(rule);
            }
            // A row is not left alone, and a short table is not parted at all.
            let tied = index == 0 || index + 2 == count || count < 4;
            let last = lines.len() - 1;
            for (at, line) in lines.iter_mut().enumerate() {
                line.after = match count {
                    _ if tied && at == last => NEVER,
                    // It is read at a glance, if it is whole.
                    ..=7 => 2_600.0,
                    _ => 260.0,
                };
                line.head.clone_from(&again);
            }
            if index == 0 {
                // The head itself stands above the first row.
                lines[0].head = None;
            }
            slabs.extend(lines);
        }
        if let Some(last) = slabs.last_mut() {
            last.after = 0.0;
        }
        slabs
    }

    /// Where the columns stand: as wide as their words if there is room, else as
    /// wide as they must be and a fair share of the rest.
    fn slots(&mut self, table: &Table, frame: Frame) -> Vec<Slot> {
        let gap = 14.0 * self.theme.enlarged;
        let tick = 11.0 * self.theme.enlarged;
        let voice = self.theme.cell;
        let head = self.theme.cell;
        let mut widths = Vec::new();
        for (index, column) in table.columns.iter().enumerate() {
            let (mut most, mut least) =
                if plain(&column.head).is_empty() { (tick, tick) } else { (0.0, 0.0) };
            let strong = strong(&column.head);
            let of_head = text::widths(self.press, &strong, &head);
            let cells = table.rows.iter().filter_map(|row| row.get(index));
            let of_cells: Vec<_> =
                cells.map(|it| text::widths(self.press, it, &voice)).collect();
            for (wide, narrow) in std::iter::once(of_head).chain(of_cells) {
                most = f64::max(most, wide);
                least = f64::max(least, narrow);
            }
            // One word as long as a line is broken rather than given a line.
            widths.push((most + 0.5, (least + 0.5).min(0.4 * frame.width)));
        }
        let gaps = gap * (widths.len() - 1) as f64;
        let most: f64 = widths.iter().map(|it| it.0).sum();
        let least: f64 = widths.iter().map(|it| it.1).sum();
        let (left, room) =
            if most + gaps <= frame.width || least + gaps <= 0.7 * frame.width {
                (frame.left, frame.width - gaps)
            } else {
                (frame.wide.0, frame.wide.1 - gaps)
            };
        let shared = [fair(&widths, room), modest(&widths, room)];
        let shared = shared.map(|it| (self.lines_at(table, &it), it));
        let [(one, fair), (two, modest)] = shared;
        let widths = if two < one { modest } else { fair };
        let mut slots = Vec::new();
        let mut x = left;
        for (column, width) in table.columns.iter().zip(widths) {
            let Column { head, align } = column;
            let stand = if *align == Align::End { Stand::End } else { Stand::Start };
            slots.push(Slot { left: x, width, stand, boxes: plain(head).is_empty() });
            x += width + gap;
        }
        slots
    }

    /// How many lines the rows take at widths of the columns.
    fn lines_at(&mut self, table: &Table, widths: &[f64]) -> usize {
        let voice = self.theme.cell;
        let mut lines = 0;
        for row in &table.rows {
            let cells = row.iter().zip(widths);
            let counts = cells
                .map(|(it, width)| text::set(self.press, it, &voice, *width).lines.len());
            lines += counts.max().unwrap_or(0);
        }
        lines
    }

    /// One row: whole, or line by line if it is very high.
    fn row(
        &mut self,
        cells: &[Vec<Inline>],
        slots: &[Slot],
        head: bool,
        table: TagId,
    ) -> Vec<Slab> {
        let row = self.tags.add(table, Role::Row);
        let voice = self.theme.cell;
        let mut columns = Vec::with_capacity(slots.len());
        for (index, slot) in slots.iter().enumerate() {
            let role = if head { Role::Head } else { Role::Cell };
            let tag = self.tags.add(row, role);
            let none = Vec::new();
            let cell = cells.get(index).unwrap_or(&none);
            let mut set = Vec::new();
            if !plain(cell).is_empty() {
                let words = if head { strong(cell) } else { cell.clone() };
                set = self.stand(&words, &voice, tag, slot.left, slot.width, slot.stand);
            } else if slot.boxes && !head {
                let mut line = Slab::blank(voice.leading);
                let middle = voice.baseline() - 0.24 * voice.size;
                line.items.push(self.mark(Marker::Box, slot.left, middle, tag));
                set.push(line);
            }
            columns.push(set);
        }
        let count = columns.iter().map(Vec::len).max().unwrap_or(0).max(1);
        if count <= WHOLE {
            // Cell by cell, as a row is read.
            let mut whole = Slab::blank(voice.leading * count as f64);
            columns.into_iter().for_each(|set| whole.absorb(fuse(set), 0.0));
            return vec![whole];
        }
        let mut lines = vec![Slab::blank(voice.leading); count];
        for (at, line) in columns.into_iter().flat_map(|set| set.into_iter().enumerate())
        {
            lines[at].absorb(line, 0.0);
        }
        lines
    }

    /// The head as it is repeated on later pages, with the word for it: in the margin,
    /// or above a table that takes the margin itself.
    fn head_again(&mut self, head: &Slab, frame: Frame, left: f64) -> Slab {
        let mut again = head.clone();
        again.marks.clear();
        again.links.clear();
        let words = [Inline::plain(self.phrases.continued.as_str())];
        let voice = self.theme.remark.in_ink(Ink::QUIET);
        if let Some((at, width)) = frame.margin.filter(|it| it.0 + it.1 < left) {
            let note = self.stand(&words, &voice, TagId::ROOT, at, width, Stand::End);
            let lift = self.theme.cell.baseline() - voice.baseline();
            again.absorb(fuse(note), lift);
        } else {
            let (_, width) = frame.wide;
            let note = fuse(self.paragraph(&words, &voice, TagId::ROOT, left, width));
            let mut stacked = Slab::blank(note.height + again.height);
            let below = note.height;
            stacked.absorb(note, 0.0);
            stacked.absorb(again, below);
            again = stacked;
        }
        for item in &mut again.items {
            if item.owner != Owner::Decoration {
                item.owner = Owner::Running;
            }
        }
        again
    }
}

/// Widths between the most and the least that columns want: a like share of the
/// way for each.
fn fair(widths: &[(f64, f64)], room: f64) -> Vec<f64> {
    let most: f64 = widths.iter().map(|it| it.0).sum();
    let least: f64 = widths.iter().map(|it| it.1).sum();
    let share = ((room - least) / (most - least).max(0.1)).clamp(0.0, 1.0);
    // More columns than even their longest words have room for.
    let squeeze = (room / least.max(0.1)).min(1.0);
    widths
        .iter()
        .map(|(most, least)| (least + (most - least) * share) * squeeze)
        .collect()
}

/// Widths where those who want little get all of it, and the rest what is left.
fn modest(widths: &[(f64, f64)], room: f64) -> Vec<f64> {
    let mut order: Vec<_> = (0..widths.len()).collect();
    order.sort_by(|one, two| widths[*one].0.total_cmp(&widths[*two].0));
    let least: f64 = widths.iter().map(|it| it.1).sum();
    let mut free = room - least;
    if free < 0.0 {
        return fair(widths, room);
    }
    let mut given: Vec<_> = widths.iter().map(|it| it.1).collect();
    for index in order {
        let (most, least) = widths[index];
        let more = (most - least).clamp(0.0, free);
        given[index] += more;
        free -= more;
    }
    given
}

/// The same words, stronger.
fn strong(words: &[Inline]) -> Vec<Inline> {
    words.iter().map(|it| Inline { look: Look::Strong, ..it.clone() }).collect()
}
