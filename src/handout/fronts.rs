//! Fronts as drawings: finished, and with the places of their layers measured.

use crate::document::{Drawing, Fill, Mark, Stroke};
use crate::geom::{Length, Rect, Shape, Side, Size, Turn};
use crate::handout::writer::{Writer, plain};
use crate::plan::cut::PartOf;
use crate::plan::{Front, Set};
use crate::project::{Along, BaseFrom, CardId, Layer, PaperKind, Placed};

/// The front of a finished card, without anything that is only for the maker.
pub(super) fn finished(w: &Writer<'_>, card: CardId) -> Drawing {
    let Some(front) = w.front(card) else {
        return Drawing { size: Size::default(), marks: Vec::new() };
    };
    let mut marks = base(w, front);
    for set in &front.layers {
        marks.extend(layer(w, set));
    }
    Drawing { size: front.size, marks }
}

/// What is placed on the front of a card, or on the half inside that faces one.
#[derive(Clone, Copy)]
pub(super) struct Half<'a> {
    pub(super) card: CardId,
    pub(super) front: &'a Front,
    /// `front` or `inside`, as messages choose by it.
    pub(super) what: &'static str,
    /// The layers as they are described, and the places they have found.
    pub(super) layers: &'a [Layer],
    pub(super) sets: &'a [Set],
}

/// Layers on a half, each with its letter and its distance from two sides.
pub(super) fn measured(w: &Writer<'_>, half: Half<'_>) -> Drawing {
    let mut marks = base(w, half.front);
    for set in half.sets {
        marks.extend(layer(w, set));
        marks.push(label(w, set, set.rect, None));
    }
    let mut dimensions = Dimensions::default();
    for (set, layer) in half.sets.iter().zip(half.layers) {
        let Size { width, height } = half.front.size;
        let (rect, across, up) = (set.placed(), layer.across, layer.up);
        dimensions.add(from_left_or_right(rect, width, across));
        dimensions.add(from_top_or_bottom(rect, height, up));
    }
    marks.extend(dimensions.marks(w));
    Drawing { size: half.front.size, marks }
}

/// What a measured drawing shows: the layers with their places.
pub(super) fn alt(w: &Writer<'_>, half: Half<'_>) -> String {
    let layers = half.sets.iter().enumerate().map(|(at, set)| {
        let name = plain(&w.placed(set.what));
        let place = w.place(half.front, half.layers, at);
        let place = place.join(&w.say("list-comma", &[]));
        w.say("front-alt-layer", &[("name", name.into()), ("place", place.into())])
    });
    let layers = layers.collect::<Vec<_>>().join(&w.say("list-semicolon", &[]));
    let name = w.bare(&w.project.cards[half.card.0].name);
    let values = [
        ("what", half.what.into()),
        ("card", name.into()),
        ("size", w.words.size(half.front.size).into()),
        ("fold", Writer::side(half.front.fold).into()),
        ("layers", layers.into()),
    ];
    w.say("front-alt", &values)
}

/// The base with its fold.
pub(super) fn base(w: &Writer<'_>, front: &Front) -> Vec<Mark> {
    let base = w.project.cards[front.card.0].base;
    let fill = match w.project.bases[base.0].from {
        BaseFrom::Bought(_) => Fill::Paper,
        BaseFrom::Made(paper) => w.fill(paper, None, Turn::None),
    };
    let Size { width, height } = front.size;
    let fold = match front.fold {
        Side::Left | Side::Right => Size::new(Length::ZERO, height),
        Side::Top | Side::Bottom => Size::new(width, Length::ZERO),
    };
    let mut marks = vec![Mark::Area {
        rect: Rect::whole(front.size),
        shape: Shape::Rectangle,
        line: Some(Stroke::Edge),
        fill,
    }];
    marks.extend(w.patterns.base(front.card));
    marks.push(Mark::Line { along: Rect::whole(fold), line: Stroke::Fold });
    marks
}

/// A layer, with the mat below it.
pub(super) fn layer(w: &Writer<'_>, set: &Set) -> Vec<Mark> {
    let mut marks = Vec::new();
    // Where the pattern itself is seen, it draws the outline.
    let mut area = |rect, shape, fill, seen: Option<Mark>| {
        let line = seen.is_none().then_some(Stroke::Edge);
        marks.push(Mark::Area { rect, shape, line, fill });
        marks.extend(seen);
    };
    if let (Some(rect), Placed::Greeting(greeting)) = (set.mat, set.what)
        && let Some(mat) = w.project.greetings[greeting.0].mat
    {
        let shape = mat.punched.map_or(set.shape, |it| it.shape);
        area(rect, shape, w.fill(mat.of, None, Turn::None), w.patterns.mat(set));
    }
    // Words must stay readable on a label.
    let is_label = matches!(set.what, Placed::Greeting(_));
    let patterned = w.project.papers[set.paper.0].kind == PaperKind::Patterned;
    let fill = if is_label && !patterned {
        Fill::Paper
    } else {
        w.fill(set.paper, set.showing, set.turned)
    };
    area(set.rect, set.shape, fill, w.patterns.layer(set));
    marks
}

fn named(rect: Rect, short: String, long: Option<String>) -> Mark {
    // A name stands upright wherever there is room for it.
    let may_turn = rect.size.width < rect.size.height;
    Mark::Name { rect, short, long, may_turn }
}

/// The letter and the name of a layer in a box, after its number in the order of work
/// if that is to be told; the name alone if it has no letter.
pub(super) fn label(w: &Writer<'_>, set: &Set, rect: Rect, number: Option<u32>) -> Mark {
    let numbered = |name: &str| match number {
        Some(number) => format!("{number}\u{2002}{name}"),
        None => name.to_owned(),
    };
    let (of, name) = match set.what {
        Placed::Piece(piece) => {
            (Some(PartOf::Piece(piece)), w.bare(&w.project.pieces[piece.0].name))
        }
        Placed::Late(late, at) => {
            (None, w.bare(&w.project.late_cuts[late.0].makes[at].name))
        }
        Placed::Greeting(greeting) => (
            Some(PartOf::Label(greeting)),
            w.bare(&w.project.greetings[greeting.0].words),
        ),
    };
    match of.and_then(|it| w.part(it)) {
        Some(part) => named(rect, numbered(&part.letter), Some(name)),
        None => named(rect, numbered(&name), None),
    }
}

/// A stretch that is measured on a side of the front: from, to.
pub(super) type Stretch = (Side, Length, Length);

/// How far a layer sits from the left or the right side, unless it spans both.
pub(super) fn from_left_or_right(
    rect: Rect,
    width: Length,
    across: Along,
) -> Option<Stretch> {
    let (left, right) = (rect.x, width - rect.right());
    // What stands in the middle is seen to, and the step says so.
    let spans = left <= Length::ZERO && right <= Length::ZERO;
    if spans || matches!(across, Along::Center) {
        return None;
    }
    let from_left = match across {
        Along::From(side, ..) => side != Side::Right,
        _ => left <= right,
    };
    let (from, to) = if from_left { (Length::ZERO, left) } else { (rect.right(), width) };
    (from < to).then_some((Side::Bottom, from, to))
}

/// How far a layer sits from the top or the bottom side, unless it spans both.
pub(super) fn from_top_or_bottom(
    rect: Rect,
    height: Length,
    up: Along,
) -> Option<Stretch> {
    let (top, bottom) = (rect.y, height - rect.bottom());
    let spans = top <= Length::ZERO && bottom <= Length::ZERO;
    if spans || matches!(up, Along::Center) {
        return None;
    }
    let from_top = match up {
        Along::From(side, ..) => side == Side::Top,
        _ => top < bottom,
    };
    let (from, to) = if from_top { (Length::ZERO, top) } else { (rect.bottom(), height) };
    (from < to).then_some((Side::Right, from, to))
}

/// Dimensions that are each drawn once and don't lie on one another.
#[derive(Default)]
pub(super) struct Dimensions {
    stretches: Vec<Stretch>,
}

impl Dimensions {
    /// Adds a stretch unless it is there already.
    pub(super) fn add(&mut self, stretch: Option<Stretch>) {
        if let Some(stretch) = stretch.filter(|it| !self.stretches.contains(it)) {
            self.stretches.push(stretch);
        }
    }

    /// Short stretches nearest to the outline, each on the first tier where it
    /// has room.
    pub(super) fn marks(mut self, w: &Writer<'_>) -> Vec<Mark> {
        self.stretches.sort_by_key(|(_, from, to)| *to - *from);
        let mut placed: Vec<(Stretch, u8)> = Vec::new();
        for stretch in self.stretches {
            let (side, from, to) = stretch;
            let in_the_way = |tier: u8| {
                placed.iter().any(|((its, low, high), at)| {
                    *its == side && *at == tier && *low < to && from < *high
                })
            };
            let tier = (0..u8::MAX).find(|it| !in_the_way(*it)).unwrap_or(u8::MAX);
            placed.push((stretch, tier));
        }
        let marks = placed.into_iter().map(|((side, from, to), tier)| {
            let along = match side {
                Side::Top | Side::Bottom => {
                    Rect::new(from, Length::ZERO, Size::new(to - from, Length::ZERO))
                }
                Side::Left | Side::Right => {
                    Rect::new(Length::ZERO, from, Size::new(Length::ZERO, to - from))
                }
            };
            Mark::Dimension { side, along, text: w.words.length(to - from), tier }
        });
        marks.collect()
    }
}

impl<'a> Writer<'a> {
    /// Where the layers of a card sit.
    pub(super) fn front(&self, card: CardId) -> Option<&'a Front> {
        self.plan.fronts.iter().find(|it| it.card == card)
    }
}
