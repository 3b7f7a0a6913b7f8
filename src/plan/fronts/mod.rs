//! Where every layer of a card really sits.

mod check;
mod place;

use crate::diag::{Diagnostic, rules};
use crate::geom::{Rect, Shape, Side, Size, Turn};
use crate::plan::uses::{face_of, paper_of};
use crate::project::{
    Card, CardId, FaceId, FoldAlong, Layer, PaperId, Placed, Project, Stands,
};

/// A card's front (or inside, or envelope) with its layers at fixed places.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Front {
    /// Which card.
    pub card: CardId,
    /// Width × height of the front as the card stands.
    pub size: Size,
    /// Where the fold is as the card stands: left or top.
    pub fold: Side,
    /// On the front, from the base upwards, one for each layer of the card.
    pub layers: Vec<Set>,
    /// Inside, on the half that faces the reader; as large as the front.
    pub inside: Vec<Set>,
    /// On the envelope.
    pub envelope: Vec<Set>,
}

/// A layer that has found its place.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Set {
    /// What is placed.
    pub what: Placed,
    /// The paper that shows.
    pub paper: PaperId,
    /// The face of it that shows, if it has two.
    pub showing: Option<FaceId>,
    /// The turn from the way it lay on the sheet.
    pub turned: Turn,
    /// Its outline.
    pub shape: Shape,
    /// Where it lies on the front as it is laid on, from the front's top left
    /// corner; it may hang over.
    pub laid: Rect,
    /// What of it is left when the overhang is trimmed flush.
    pub rect: Rect,
    /// Its mat, if it is a greeting that has one: a rectangle around `laid`. What
    /// the description says of the layer's place is then meant for the mat.
    pub mat: Option<Rect>,
    /// Foam squares under it; 0 if it lies flat.
    pub raised: u32,
}

impl Set {
    /// All that shows of the layer, with its mat.
    pub fn visible(&self) -> Rect {
        self.mat.unwrap_or(self.rect)
    }

    /// What the description's distances are measured from: the layer as it is laid
    /// on, or its mat.
    pub fn placed(&self) -> Rect {
        self.mat.unwrap_or(self.laid)
    }
}

/// Puts every layer of every card in its place.
pub(crate) fn fronts(project: &Project, notes: &mut Vec<Diagnostic>) -> Vec<Front> {
    let cards = project.cards.iter().enumerate();
    cards.map(|(index, card)| front(project, CardId(index), card, notes)).collect()
}

fn front(
    project: &Project,
    id: CardId,
    card: &Card,
    notes: &mut Vec<Diagnostic>,
) -> Front {
    let base = &project.bases[card.base.0];
    let (size, fold) = match (card.stands, base.fold) {
        (Stands::Tall, FoldAlong::Long) => (base.front, Side::Left),
        (Stands::Tall, FoldAlong::Short) => (base.front, Side::Top),
        (Stands::Wide, FoldAlong::Long) => (base.front.turned(), Side::Top),
        (Stands::Wide, FoldAlong::Short) => (base.front.turned(), Side::Left),
    };
    let layers = set(project, &card.layers, size, "the front", notes);
    let inside = set(project, &card.inside.layers, size, "the inside", notes);
    let envelope = match base.envelope.and_then(|envelope| envelope.size) {
        Some(size) => set(project, &card.envelope, size, "the envelope", notes),
        None => {
            notes.extend(card.envelope.first().map(|layer| {
                let message =
                    "the size of the envelope that this is placed on is not known";
                Diagnostic::new(&rules::ENVELOPE_SIZE_UNKNOWN, layer.site, message)
                    .label(base.name.site, "the base that the envelope belongs to")
                    .help(
                        "say `envelope: 4 3/8 x 5 3/4 in` (or its own size) for the base",
                    )
            }));
            Vec::new()
        }
    };
    Front { card: id, size, fold, layers, inside, envelope }
}

/// Places the layers on a ground of a size, and checks how they lie.
fn set(
    project: &Project,
    layers: &[Layer],
    ground: Size,
    ground_name: &str,
    notes: &mut Vec<Diagnostic>,
) -> Vec<Set> {
    let sizes: Vec<Size> =
        layers.iter().map(|layer| outer_size(project, layer)).collect();
    let Some(places) = place::places(project, layers, &sizes, ground, notes) else {
        return Vec::new();
    };
    let mut sets = Vec::with_capacity(layers.len());
    for (layer, outer) in layers.iter().zip(places) {
        let on = check::Ground { project, size: ground, name: ground_name };
        on.check(layer, outer, notes);
        sets.push(lay(project, layer, outer, ground));
    }
    sets
}

/// A layer at its place, with its mat around it and its overhang trimmed.
fn lay(project: &Project, layer: &Layer, outer: Rect, ground: Size) -> Set {
    let paper = paper_of(project, layer.what);
    let border = match layer.what {
        Placed::Greeting(id) => project.greetings[id.0].mat.map(|mat| mat.shows),
        Placed::Piece(_) | Placed::Late(..) => None,
    };
    let border = border.map(|it| if layer.turned.swaps() { it.turned() } else { it });
    let laid = match border {
        Some(Size { width, height }) => Rect::new(
            outer.x + width,
            outer.y + height,
            Size::new(outer.size.width - width * 2, outer.size.height - height * 2),
        ),
        None => outer,
    };
    let shape = match layer.what {
        Placed::Greeting(id) => {
            project.greetings[id.0].label.outline.shape.after(layer.turned)
        }
        Placed::Piece(_) | Placed::Late(..) => Shape::Rectangle,
    };
    let two_faced = project.papers[paper.0].faces.len() > 1;
    Set {
        what: layer.what,
        paper,
        showing: two_faced.then(|| face_of(project, layer)),
        turned: layer.turned,
        shape,
        laid,
        rect: laid.overlap(Rect::whole(ground)).unwrap_or(laid),
        mat: border.map(|_| outer),
        raised: layer.raised,
    }
}

/// Width × height of a layer as it is laid on, with its mat, after its turn.
fn outer_size(project: &Project, layer: &Layer) -> Size {
    let size = match layer.what {
        Placed::Piece(piece) => project.pieces[piece.0].size,
        Placed::Late(late, part) => project.late_cuts[late.0].makes[part].size,
        Placed::Greeting(id) => {
            let greeting = &project.greetings[id.0];
            let shows = greeting.mat.map_or_else(Default::default, |mat| mat.shows);
            let Size { width, height } = greeting.label.outline.size;
            Size::new(width + shows.width * 2, height + shows.height * 2)
        }
    };
    if layer.turned.swaps() { size.turned() } else { size }
}
