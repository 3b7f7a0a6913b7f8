//! What the maker of kits needs besides: a label for each bag, and a table to cross
//! out while the bags are filled.

use crate::document::{
    Align, Block, Column, Drawing, Figure, Fill, Inline, Mark, ScaleWish, Section,
    Stroke, Table, Tone,
};
use crate::geom::{Length, Rect, Shape, Size, Unit};
use crate::handout::writer::Writer;
use crate::handout::{bag, of_blocks};

/// More labels are printed in several runs.
const MOST_LABELS: u32 = 400;

/// So many rows of the table at most; beyond that a row stands for a tray of bags.
const MOST_ROWS: u32 = 44;

/// So many things side by side.
const MOST_THINGS: usize = 12;

/// A label for each bag, to be cut apart.
pub(super) fn labels(w: &Writer<'_>) -> Vec<Section> {
    let kits = w.kits();
    if kits < 2 {
        return Vec::new();
    }
    let size = match w.words.units().first() {
        Unit::Inch => Size::new(Length::inch(9, 4), Length::inch(7, 8)),
        Unit::Mm => Size::new(Length::mm(56), Length::mm(22)),
    };
    let rect = Rect::whole(size);
    let asked = kits.saturating_sub(w.plan.supplies.spares);
    let label = |number: u32| {
        let spare = if number > asked { "yes" } else { "no" };
        let values =
            [("number", number.into()), ("kits", kits.into()), ("spare", spare.into())];
        let area = Mark::Area {
            rect,
            shape: Shape::Rectangle,
            line: Some(Stroke::Thin),
            fill: Fill::None,
        };
        let name = Mark::Name {
            rect,
            short: w.say("label-number", &values),
            long: Some(w.project.title.words.clone()),
            may_turn: false,
        };
        Figure {
            drawing: Drawing { size, marks: vec![area, name] },
            alt: w.say("label-alt", &values),
            caption: None,
            scale: ScaleWish::Full,
            says_scale: false,
        }
    };
    let count = kits.min(MOST_LABELS);
    let mut blocks = vec![Block::Paragraph(Tone::Body, w.tell("labels-text", &[]))];
    blocks.push(Block::Figures((1..=count).map(label).collect()));
    of_blocks("labels", w.tell("labels-title", &[]), blocks)
}

/// Bags against what goes into them: each number is crossed out once so many lie in
/// the bag.
pub(super) fn tally(w: &Writer<'_>) -> Vec<Section> {
    let kits = w.kits();
    let things = bag::heads(w);
    if kits < 2 || things.is_empty() {
        return Vec::new();
    }
    // A tray holds a round number of bags.
    let tray = [1, 5, 10, 20, 50, 100, 500].into_iter();
    let tray = tray.into_iter().find(|tray| kits.div_ceil(*tray) <= MOST_ROWS);
    let tray = tray.unwrap_or(1000);
    let mut blocks = vec![Block::Paragraph(
        Tone::Body,
        w.tell("tally-text", &[("tray", tray.into())]),
    )];
    for things in things.chunks(MOST_THINGS) {
        let bag = Column { head: w.tell("tally-bag", &[]), align: Align::Start };
        let heads = things.iter().map(|it| it.0.clone());
        let heads = heads.map(|head| Column { head, align: Align::End });
        let rows = (0..kits.div_ceil(tray)).map(|row| {
            let first = row * tray + 1;
            let last = first.saturating_add(tray - 1).min(kits);
            let bags = last - first + 1;
            let name =
                if bags == 1 { first.to_string() } else { format!("{first}–{last}") };
            let counts = things.iter().map(|it| it.1.saturating_mul(bags).to_string());
            let cells = std::iter::once(name).chain(counts);
            cells.map(|it| vec![Inline::plain(it)]).collect()
        });
        blocks.push(Block::Table(Table {
            summary: w.say("tally-summary", &[]),
            columns: std::iter::once(bag).chain(heads).collect(),
            rows: rows.collect(),
        }));
    }
    of_blocks("tally", w.tell("tally-title", &[]), blocks)
}
