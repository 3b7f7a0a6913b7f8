//! Photos of what is made.

use crate::document::{Drawing, Figure, Mark, ScaleWish};
use crate::geom::{Rect, Shape, Turn};
use crate::handout::writer::Writer;
use crate::project::{CardId, Photo};

/// A photo at its size, of a card or of the whole set.
pub(super) fn figure(
    w: &Writer<'_>,
    photo: &Photo,
    card: Option<CardId>,
) -> Option<Figure> {
    let rect = Rect::whole(photo.printed);
    let mark = Mark::Picture {
        rect,
        shape: Shape::Rectangle,
        line: None,
        number: w.patterns.number(&photo.picture)?,
        whole: rect,
        turn: Turn::None,
    };
    let alt = match (&photo.shows, card) {
        (Some(shows), _) => shows.words.clone(),
        (None, Some(card)) => {
            let name = w.bare(&w.project.cards[card.0].name);
            w.say("photo-of-card", &[("card", name.into())])
        }
        (None, None) => w.say("photo-of-set", &[]),
    };
    Some(Figure {
        drawing: Drawing { size: photo.printed, marks: vec![mark] },
        alt,
        caption: photo.caption.as_ref().map(|it| w.user(it)),
        // It has no scale; its size is worked out already.
        scale: ScaleWish::Full,
        says_scale: false,
    })
}
