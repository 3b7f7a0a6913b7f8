//! The designer's own way of cutting a sheet, as she wrote it.

use crate::geom::{Axis, Length};
use crate::project::{PaperId, PieceId, Text};
use crate::source::Site;

/// Her own way of cutting one paper.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct OwnCutting {
    /// Which paper.
    pub paper: PaperId,
    /// Step by step.
    pub steps: Vec<OwnStep>,
    /// Where it is said.
    pub site: Site,
}

/// One step of her own way. It goes on with the part in hand unless it takes
/// another one.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct OwnStep {
    /// A part that an earlier step named is taken in hand first.
    pub take: Option<Text>,
    /// What is done.
    pub act: OwnAct,
    /// Where it is said.
    pub site: Site,
}

/// What a step of her own way does.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum OwnAct {
    /// Only takes the part in hand.
    Take,
    /// Trims the part in hand to an extent; the other part gets a name.
    TrimTo {
        /// Which way the cut runs.
        cut: Axis,
        /// The extent that stays in hand.
        to: Length,
        /// What the part that comes off is called, if it is used later.
        other: Option<Text>,
    },
    /// Cuts a part off, for a piece or under a name; the rest stays in hand.
    CutOff {
        /// Which way the cut runs.
        cut: Axis,
        /// The extent of what comes off.
        at: Length,
        /// The piece it is.
        piece: Option<PieceId>,
        /// What it is called, if it is cut again.
        name: Option<Text>,
        /// How often, from the same part in hand.
        times: u32,
        /// Where the extent is given.
        at_site: Site,
    },
    /// Halves the part in hand, both for a piece.
    Halve {
        /// Which way the cut runs.
        cut: Axis,
        /// The piece that both halves are.
        piece: PieceId,
    },
    /// The part in hand is the piece, without a cut.
    Is(PieceId),
    /// Keeps the part in hand, or a named one, as an offcut.
    Keep(Option<Text>),
}
