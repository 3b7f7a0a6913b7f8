//! Drawings of what is made ready for all cards: a base with its score, a strip with
//! the outline that is punched from it.

use crate::document::{Drawing, Figure, Fill, Mark, ScaleWish, Stroke};
use crate::geom::{Axis, Length, Rect, Shape, Side, Size};
use crate::handout::fronts::Dimensions;
use crate::handout::prepare;
use crate::handout::writer::{Writer, plain};
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

/// The strip of a punched label, with the outline that the punch takes and the place
/// of the stamped words; nothing for a label that is cut.
///
/// `words`: whether they stand on the strip before the punch comes.
pub(super) fn strip(w: &Writer<'_>, id: GreetingId, words: bool) -> Option<Figure> {
    let greeting = &w.project.greetings[id.0];
    greeting.label.punch?;
    let size = w.part(PartOf::Label(id))?.size;
    let outline = greeting.label.outline;
    // The outline lies on the strip as it fits.
    let turned = !outline.size.fits(size);
    let turn = |it: Size| if turned { it.turned() } else { it };
    let middle = |it: Size| {
        let (x, y) = (size.width - it.width, size.height - it.height);
        Rect::new(x.half(), y.half(), it)
    };
    let punched = middle(turn(outline.size));
    let mut marks = vec![area(Rect::whole(size), Shape::Rectangle, Stroke::Edge)];
    let stamped = greeting.stamped.filter(|_| words);
    if let Some(stamped) = stamped {
        let rect = middle(turn(stamped));
        let (shape, fill) = (Shape::Rectangle, Fill::Strong);
        marks.push(Mark::Area { rect, shape, line: None, fill });
    }
    let (line, fill) = (Some(Stroke::Punch), Fill::None);
    marks.push(Mark::Area { rect: punched, shape: outline.shape, line, fill });
    let mut dimensions = Dimensions::default();
    let stretch = |side, from, to| (from < to).then_some((side, from, to));
    dimensions.add(stretch(Side::Bottom, Length::ZERO, punched.x));
    dimensions.add(stretch(Side::Right, Length::ZERO, punched.y));
    marks.extend(dimensions.marks(w));
    let stamped = if stamped.is_some() { "yes" } else { "no" };
    let values = [
        ("size", w.words.size(size).into()),
        ("punched", w.words.size(punched.size).into()),
        ("stamped", stamped.into()),
    ];
    Some(Figure {
        drawing: Drawing { size, marks },
        alt: w.say("strip-alt", &values),
        caption: Some(w.tell("strip-caption", &[])),
        scale: ScaleWish::Largest,
        says_scale: true,
    })
}

fn area(rect: Rect, shape: Shape, line: Stroke) -> Mark {
    Mark::Area { rect, shape, line: Some(line), fill: Fill::Paper }
}
