//! What is needed, in whole packs.

use crate::project::{BaseId, GreetingId, PaperId, ToolId};

/// What to buy and to have at hand, for all kits and for one.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Supplies {
    /// Kits including spares.
    pub kits: u32,
    /// How many of these are spares.
    pub spares: u32,
    /// One row for each thing, in the order in which they are listed.
    pub rows: Vec<Supply>,
}

/// A row of the supply list.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Supply {
    /// What it is.
    pub what: Good,
    /// How many one kit needs; `None` for things that are shared or that are
    /// cut for all kits together.
    pub per_kit: Option<u32>,
    /// How many all kits need together, spares included.
    pub needed: u32,
    /// In how many packs it is bought, if it is sold in packs.
    pub packs: Option<Packs>,
}

/// What a row of the supply list is about.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Good {
    /// Whole sheets of a paper.
    Sheets(PaperId),
    /// Scraps of a paper, so many pieces.
    Scraps(PaperId),
    /// Bought bases.
    Bases(BaseId),
    /// Envelopes for a base.
    Envelopes(BaseId),
    /// Foam squares of a kind.
    Foam(ToolId),
    /// Foam squares, when no tool was named.
    AnyFoam,
    /// A tool or consumable, once.
    Tool(ToolId),
    /// Labels of a greeting to stamp and punch.
    Labels(GreetingId),
}

/// Whole packs of something.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Packs {
    /// How many are in one.
    pub holds: u32,
    /// How many to buy.
    pub buy: u32,
    /// How many are left over.
    pub over: u32,
}
