//! The project as a whole.

use crate::geom::{Length, Unit};
use crate::project::{
    Base, Card, Greeting, LateCut, OwnCutting, Paper, Photo, Piece, Told, Tool,
};
use crate::source::Site;

/// Words that the user wrote, and where.
#[derive(Clone, Debug, Default, PartialEq, Eq, Hash)]
pub struct Text {
    /// The words; of several languages those that were written first. A name is
    /// the one by which the description knows the thing.
    pub words: String,
    /// The words as they are to be printed, where their language was said.
    pub told: Vec<Told>,
    /// Where they stand.
    pub site: Site,
}

/// A set of cards with everything that it takes to make them.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Project {
    /// What the set is called.
    pub title: Text,
    /// One or two sentences for the cover.
    pub about: Option<Text>,
    /// A photo of the finished set.
    pub photo: Option<Photo>,
    /// Language of the printed words, as in BCP 47: `en`, `de`.
    pub language: String,
    /// Every language that the description asks for, the first of them `language`;
    /// none if it says nothing.
    pub languages: Vec<Text>,
    /// Printed in the foot, so that an old printout is known as one.
    pub edition: Option<Text>,
    /// Whom a reader can ask.
    pub handed_out_by: Option<HandedOutBy>,
    /// The unit that a bare number means, and that is printed first.
    pub unit: Unit,
    /// How many people's sets are to be made; at least 1.
    pub kits: u32,
    /// Extra kits or pieces.
    pub spares: Spares,
    /// Every sheet of a paper is cut the same way, even if that takes more sheets.
    pub sheets_alike: bool,
    /// Every paper.
    pub papers: Vec<Paper>,
    /// Every card base.
    pub bases: Vec<Base>,
    /// Every tool and consumable.
    pub tools: Vec<Tool>,
    /// Every piece that is cut from a sheet.
    pub pieces: Vec<Piece>,
    /// Pieces that are cut again.
    pub late_cuts: Vec<LateCut>,
    /// Every greeting.
    pub greetings: Vec<Greeting>,
    /// The cards, in the order in which they are made and printed.
    pub cards: Vec<Card>,
    /// The designer's own way of cutting, at most one for a paper.
    pub cutting: Vec<OwnCutting>,
    /// What is prepared before, by reader.
    pub done_ahead: Vec<DoneAhead>,
    /// Who cuts the sheets, by reader.
    pub cut_by: Vec<CutBy>,
    /// The user's own cautions, printed with the usual ones.
    pub cautions: Vec<Text>,
    /// Tips for the whole set.
    pub tips: Vec<Text>,
    /// Paths of the fonts that are tried for characters that ours lack, in order.
    pub fonts: Vec<Text>,
    /// What prices are given in, as it is printed: `EUR`, `$`.
    pub currency: Option<Text>,
    /// Layers are put on in batches, the same on every card, rather than card by
    /// card.
    pub in_batches: bool,
    /// What holds the finished cards together, if they are given as a set.
    pub gift: Option<Gift>,
    /// How long things take, as far as it was said.
    pub minutes: Minutes,
}

/// The finished cards as a gift set.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Gift {
    /// A band or a box.
    pub kind: GiftKind,
    /// How wide a band is.
    pub width: Length,
}

/// What holds a gift set together.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum GiftKind {
    /// A strip of paper around the stack.
    Band,
    /// A box with a lid.
    Box,
}

/// How long things take, in seconds, as far as it was said.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Minutes {
    /// Welcome, and laying out.
    pub set_up: Option<u32>,
    /// Once of each kind of work, in the order of [`Work::ALL`].
    pub once: [Option<u32>; 9],
    /// Putting things away.
    pub clean_up: Option<u32>,
    /// How long the class may last.
    pub lasts: Option<u32>,
}

/// Whom a reader can ask when something is missing or unclear.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct HandedOutBy {
    /// A name to print.
    pub name: Text,
    /// How to reach them.
    pub reach: Option<Text>,
}

/// How many spares are made.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Spares {
    /// None for one kit, else one kit in ten, at least one
    /// (common practice, no source).
    #[default]
    Usual,
    /// So many whole kits more; none is `Kits(0)`.
    Kits(u32),
}

/// Who a packet is for.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Reader {
    /// A person at a class table.
    Class,
    /// The buyer of a kit.
    Kit,
    /// Someone who finishes the cards on a journey.
    Travel,
}

impl Reader {
    /// Every reader, in the order in which help lists them.
    pub const ALL: [Self; 3] = [Self::Class, Self::Kit, Self::Travel];

    /// The word for the reader in descriptions, options and file names.
    pub const fn word(self) -> &'static str {
        match self {
            Self::Class => "class",
            Self::Kit => "kit",
            Self::Travel => "travel",
        }
    }
}

/// A kind of work that can be done ahead.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Work {
    /// Cutting sheets into pieces.
    Cut,
    /// Scoring the fold lines.
    Score,
    /// Folding the bases.
    Fold,
    /// Stamping greetings on their labels.
    Stamp,
    /// Punching labels.
    Punch,
    /// Cutting pieces again.
    LateCut,
    /// Putting layers together that go onto the card as one.
    Layer,
    /// Fixing layers to the base.
    Attach,
    /// Stamping or writing inside.
    Inside,
}

impl Work {
    /// Every kind, in the order in which it is usually done.
    pub const ALL: [Self; 9] = [
        Self::Cut,
        Self::Score,
        Self::Fold,
        Self::Stamp,
        Self::Punch,
        Self::LateCut,
        Self::Layer,
        Self::Attach,
        Self::Inside,
    ];

    /// The word for it in descriptions.
    pub const fn word(self) -> &'static str {
        match self {
            Self::Cut => "cut",
            Self::Score => "score",
            Self::Fold => "fold",
            Self::Stamp => "stamp",
            Self::Punch => "punch",
            Self::LateCut => "cut again",
            Self::Layer => "layer",
            Self::Attach => "attach",
            Self::Inside => "stamp inside",
        }
    }
}

/// What is prepared before a packet reaches its reader.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct DoneAhead {
    /// For whom.
    pub reader: Reader,
    /// The kinds of work, in the order of [`Work::ALL`].
    pub work: Vec<Work>,
    /// Where it is said.
    pub site: Site,
}

/// Whether sheets are cut together or each person gets her own.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct CutBy {
    /// For whom.
    pub reader: Reader,
    /// Each person is given whole sheets and cuts them: nothing is pooled.
    pub reader_cuts: bool,
    /// Where it is said.
    pub site: Site,
}
