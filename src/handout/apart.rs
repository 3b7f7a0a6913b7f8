//! Layers pulled apart, in the order in which they go on.

use crate::document::{Block, Drawing, Figure, Fill, Mark, ScaleWish, Section, Stroke};
use crate::document::{Text, Tone};
use crate::geom::{Length, Rect, Shape, Size};
use crate::handout::fronts::{self, Half};
use crate::handout::of_blocks;
use crate::handout::writer::{Writer, plain};
use crate::plan::Set;
use crate::project::CardId;

/// The drawings that share a scale.
const APART: u32 = 6;

/// A foam square, and how far it stays from the edge (as the plan has it for the
/// number of squares that find room).
const FOAM: Length = Length::mm(6);
const INSET: Length = Length::mm(2);

/// One section with every card that has layers.
pub(super) fn write(w: &Writer<'_>) -> Vec<Section> {
    let cards = w.project.cards.iter().enumerate();
    let figures: Vec<Figure> = cards
        .filter_map(|(at, card)| {
            let front = w.front(CardId(at)).filter(|it| !it.layers.is_empty())?;
            let half = Half {
                card: CardId(at),
                front,
                what: "front",
                layers: &card.layers,
                sets: &front.layers,
            };
            Some(figure(w, half, Some(w.user(&card.name))))
        })
        .collect();
    if figures.is_empty() {
        return Vec::new();
    }
    let foam = w.plan.fronts.iter().flat_map(|it| &it.layers).any(|it| it.raised > 0);
    let foam = if foam { "yes" } else { "no" };
    let scale = ScaleWish::shared_by(APART);
    let text = w.tell("layers-text", &[("scale", scale.into()), ("foam", foam.into())]);
    // Three stand in a row, so that names have room.
    let mut rows = figures.chunks(3).map(|it| Block::Figures(it.to_vec()));
    let first = [Block::Paragraph(Tone::Body, text)].into_iter().chain(rows.next());
    let blocks = [Block::Keep(first.collect())].into_iter().chain(rows).collect();
    of_blocks("layers", w.tell("layers-title", &[]), blocks)
}

/// The layers of a half pulled apart.
pub(super) fn figure(w: &Writer<'_>, half: Half<'_>, caption: Option<Text>) -> Figure {
    let named = |set: &Set| {
        let name = plain(&w.placed_name(set.what));
        w.tell("apart-alt-layer", &[("name", name.into()), ("raised", set.raised.into())])
    };
    let layers = w.list(half.sets.iter().map(named).collect());
    let card = w.bare(&w.project.cards[half.card.0].name);
    let values = [("card", card.into()), ("layers", plain(&layers).into())];
    Figure {
        drawing: drawing(w, half),
        alt: w.say("apart-alt", &values),
        caption,
        scale: ScaleWish::Finer(APART),
        says_scale: false,
    }
}

/// Each layer one step further up and to the left than what it lies on, with lines
/// from its corners to the place where it goes, and the foam squares there.
fn drawing(w: &Writer<'_>, half: Half<'_>) -> Drawing {
    let Size { width, height } = half.front.size;
    let step = Length::from_units(half.front.size.short().units() / 6);
    let planes = planes(half.sets);
    let most = planes.iter().copied().max().unwrap_or(0);
    let on = |plane: i64| step * (most - plane);
    let mut marks: Vec<Mark> =
        fronts::base(w, half.front).into_iter().map(|it| shifted(it, on(0))).collect();
    let mut names = Vec::new();
    for plane in 1..=most {
        let here =
            || half.sets.iter().zip(&planes).zip(1..).filter(|it| *it.0.1 == plane);
        for ((set, _), _) in here() {
            marks.extend(place(set, on(plane - 1), step));
        }
        for ((set, _), number) in here() {
            let number: u32 = number;
            marks.extend(
                fronts::layer(w, set).into_iter().map(|it| shifted(it, on(plane))),
            );
            let rect = moved(set.visible(), on(plane));
            names.push(fronts::label(w, set, rect, Some(number)));
        }
    }
    marks.extend(names);
    let off = on(0);
    Drawing { size: Size::new(width + off, height + off), marks }
}

/// Where a layer goes on the plane below: its outline, its foam squares, and the ways
/// from its corners.
fn place(set: &Set, below: Length, step: Length) -> Vec<Mark> {
    let rect = set.visible();
    let ghost = |rect, shape, fill, line| {
        shifted(Mark::Area { rect, shape, line: Some(line), fill }, below)
    };
    let shape = if set.mat.is_some() { Shape::Rectangle } else { set.shape };
    let mut marks = vec![ghost(rect, shape, Fill::None, Stroke::Ghost)];
    let foam = foam(rect, set.raised);
    marks.extend(
        foam.into_iter().map(|it| ghost(it, Shape::Rectangle, Fill::Paper, Stroke::Thin)),
    );
    let up = moved(rect, below - step);
    for (x, y) in [(up.x, up.bottom()), (up.right(), up.y), (up.right(), up.bottom())] {
        let along = Rect::new(x, y, Size::new(step, step));
        marks.push(Mark::Line { along, line: Stroke::Ghost });
    }
    marks
}

/// On which plane each layer lies: one above the highest of those that it covers a
/// part of; the base is plane 0.
fn planes(sets: &[Set]) -> Vec<i64> {
    let mut planes: Vec<i64> = Vec::new();
    for set in sets {
        let below = sets.iter().zip(&planes);
        let below = below.filter(|(it, _)| it.visible().overlap(set.visible()).is_some());
        planes.push(below.map(|it| *it.1).max().unwrap_or(0) + 1);
    }
    planes
}

/// The places of foam squares under a layer: in one row up to three, else in two.
fn foam(rect: Rect, count: u32) -> Vec<Rect> {
    let rows = if count > 3 { 2 } else { 1 };
    let first = count.div_ceil(rows);
    let mut all = Vec::new();
    for (row, count) in (0..rows).zip([first, count - first]) {
        for at in 0..count {
            let x = rect.x + spread(rect.size.width, at, count);
            let y = rect.y + spread(rect.size.height, row, rows);
            all.push(Rect::new(x, y, Size::new(FOAM, FOAM)));
        }
    }
    all
}

/// How far in the so-and-so-many-th of some squares lies along a side.
fn spread(side: Length, at: u32, count: u32) -> Length {
    let room = side - FOAM - INSET * 2;
    if count < 2 {
        return (side - FOAM).half();
    }
    INSET + Length::from_units(room.units() / i64::from(count - 1)) * i64::from(at)
}

fn moved(rect: Rect, by: Length) -> Rect {
    Rect::new(rect.x + by, rect.y + by, rect.size)
}

/// A mark moved down and to the right.
fn shifted(mark: Mark, by: Length) -> Mark {
    match mark {
        Mark::Area { rect, shape, line, fill } => {
            Mark::Area { rect: moved(rect, by), shape, line, fill }
        }
        Mark::Picture { rect, shape, line, number, whole, turn } => {
            let (rect, whole) = (moved(rect, by), moved(whole, by));
            Mark::Picture { rect, shape, line, number, whole, turn }
        }
        Mark::Line { along, line } => Mark::Line { along: moved(along, by), line },
        other => other,
    }
}
