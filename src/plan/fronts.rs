//! Where every layer of a card really sits.

use crate::geom::{Rect, Shape, Side, Size, Turn};
use crate::project::{CardId, FaceId, PaperId, Placed};

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
    /// Inside, on the half that faces the reader.
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
    /// Its mat, if it is a greeting that has one: a rectangle around `laid`.
    pub mat: Option<Rect>,
    /// Foam squares under it; 0 if it lies flat.
    pub raised: u32,
}
