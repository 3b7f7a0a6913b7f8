//! What has to be cut from a paper.

use crate::geom::Size;
use crate::project::{BaseId, GreetingId, LateId, PieceId};
use crate::source::Site;

/// A kind of rectangle that has to be cut from one paper.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Part {
    /// What it is.
    pub of: PartOf,
    /// The letter that the diagram and the lists call it by: `A`, `B`, … `AA`.
    pub letter: String,
    /// Width × height as it lies on the sheet with the pattern upright.
    pub size: Size,
    /// Whether it may be turned by a quarter on the sheet.
    pub turning: Turning,
    /// How many one kit needs.
    pub per_kit: u32,
    /// How many all kits need, spares included.
    pub count: u32,
    /// Late cuts that are made from it, with their number in one kit.
    pub late: Vec<(LateId, u32)>,
    /// Where its size is described.
    pub site: Site,
}

/// What a part is in the project.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum PartOf {
    /// A piece.
    Piece(PieceId),
    /// A made base, unfolded.
    Base(BaseId),
    /// The label of a greeting, or the strip it is punched from.
    Label(GreetingId),
    /// The mat under the label of a greeting.
    LabelMat(GreetingId),
}

/// Whether a part may be turned by a quarter on the sheet.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Turning {
    /// It must lie as its size says.
    Fixed,
    /// It may lie either way.
    Free,
}
