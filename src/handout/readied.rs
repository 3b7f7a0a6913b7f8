//! Drawings of what is made ready for all cards: a base with its score, a strip with
//! the outline that is punched from it.

use crate::document::{Drawing, Figure, Fill, Mark, ScaleWish, Stroke};
use crate::geom::{Axis, Length, Rect, Shape, Side, Size};
use crate::handout::fronts::Dimensions;
use crate::handout::writer::{Writer, plain};
use crate::handout::{prepare, strips};
use crate::plan::cut::PartOf;
use crate::project::{BaseId, GreetingId};

/// A base as it lies flat, with its score and how far that is from an edge.
pub(super) fn scored(w: &Writer<'_>, id: BaseId) -> Figure {
    let base = &w.project.bases[id.0];
    let (size, fold) = prepare::unfolded(base.front, base.fold);
    let at = size.along(fold.other()).half();
    let (line, side) = match fold {
        Axis::Upright => {
            let along = Size::new(Length::ZERO, size.height);
            (Rect::new(at, Length::ZERO, along), Side::Bottom)
        }
        Axis::Level => {
            let along = Size::new(size.width, Length::ZERO);
            (Rect::new(Length::ZERO, at, along), Side::Right)
        }
    };
    let mut marks = vec![
        area(Rect::whole(size), Shape::Rectangle, Stroke::Edge),
        Mark::Line { along: line, line: Stroke::Fold },
    ];
    let mut dimensions = Dimensions::default();
    dimensions.add(Some((side, Length::ZERO, at)));
    marks.extend(dimensions.marks(w));
    let values = [
        ("base", plain(&w.base(id)).into()),
        ("size", w.words.size(size).into()),
        ("at", w.words.length(at).into()),
        ("edge", prepare::edge_along(size, fold).into()),
    ];
    Figure {
        drawing: Drawing { size, marks },
        alt: w.say("score-alt", &values),
        caption: Some(w.tell("score-caption", &[])),
        scale: ScaleWish::Largest,
        says_scale: true,
    }
}

/// The strip of a punched label, with the outlines that the punch takes and the
/// places of the stamped words; nothing for a label that is cut. Several places are
/// numbered from the end at which one begins.
///
/// `words`: whether they stand on the strip before the punch comes.
pub(super) fn strip(w: &Writer<'_>, id: GreetingId, words: bool) -> Option<Figure> {
    let greeting = &w.project.greetings[id.0];
    greeting.label.punch?;
    let part = w.part(PartOf::Label(id))?;
    let (size, outline) = (part.size, greeting.label.outline);
    let line = strips::Line::of(w, part);
    let mut on_strip = strips::places(part);
    // The outline lies on the strip as it fits.
    let turned = !outline.size.fits(line.one);
    let turn = |it: Size| if turned { it.turned() } else { it };
    let mut marks = vec![area(Rect::whole(size), Shape::Rectangle, Stroke::Edge)];
    let mut stretches = Vec::new();
    let mut before: Option<Rect> = None;
    for at in 0..line.labels {
        let id = on_strip.next().filter(|_| line.labels > 1).unwrap_or(id);
        let stamped = w.project.greetings[id.0].stamped.filter(|_| words);
        if let Some(stamped) = stamped {
            let rect = line.place(at, turn(stamped));
            let (shape, fill) = (Shape::Rectangle, Fill::Strong);
            marks.push(Mark::Area { rect, shape, line: None, fill });
        }
        let rect = line.place(at, turn(outline.size));
        let (edge, fill) = (Some(Stroke::Punch), Fill::None);
        marks.push(Mark::Area { rect, shape: outline.shape, line: edge, fill });
        if line.labels > 1 {
            let (short, long) = ((at + 1).to_string(), None);
            marks.push(Mark::Name { rect, short, long, may_turn: false });
        }
        // Between two of them it is the same everywhere.
        match before {
            None => {
                stretches.push((Side::Bottom, Length::ZERO, rect.x));
                stretches.push((Side::Right, Length::ZERO, rect.y));
            }
            Some(other) if at == 1 => stretches.push(match line.runs {
                Axis::Level => (Side::Bottom, other.right(), rect.x),
                Axis::Upright => (Side::Right, other.bottom(), rect.y),
            }),
            Some(_) => {}
        }
        before = Some(rect);
    }
    let mut dimensions = Dimensions::default();
    for (side, from, to) in stretches {
        dimensions.add((from < to).then_some((side, from, to)));
    }
    marks.extend(dimensions.marks(w));
    let stamped = greeting.stamped.is_some() && words;
    let values = [
        ("size", w.words.size(size).into()),
        ("punched", w.words.size(turn(outline.size)).into()),
        ("stamped", if stamped { "yes" } else { "no" }.into()),
        ("count", line.labels.into()),
        ("apart", w.words.length(line.apart()).into()),
    ];
    let alt = if line.labels == 1 { "strip-alt" } else { "strips-alt" };
    let count = [("count", line.labels.into())];
    Some(Figure {
        drawing: Drawing { size, marks },
        alt: w.say(alt, &values),
        caption: Some(match line.labels {
            1 => w.tell("strip-caption", &[]),
            _ => w.tell("strips-caption", &count),
        }),
        scale: ScaleWish::Largest,
        says_scale: true,
    })
}

fn area(rect: Rect, shape: Shape, line: Stroke) -> Mark {
    Mark::Area { rect, shape, line: Some(line), fill: Fill::Paper }
}
