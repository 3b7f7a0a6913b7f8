//! What goes onto a card: pieces, greetings, layers and where they sit.

use crate::geom::{Axis, Length, Shape, Side, Size, Turn};
use crate::project::{BaseId, FaceId, Outline, PaperId, Photo, Text, ToolId};
use crate::source::Site;

/// Index of a [`Piece`] in its project.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct PieceId(pub usize);

/// Index of a [`LateCut`] in its project.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct LateId(pub usize);

/// Index of a [`Greeting`] in its project.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct GreetingId(pub usize);

/// Index of a [`Card`] in its project.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct CardId(pub usize);

/// A rectangle that is cut from a sheet.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Piece {
    /// What it is called.
    pub name: Text,
    /// The paper it is cut from.
    pub of: PaperId,
    /// Width × height, as it lies on the sheet with the pattern upright.
    pub size: Size,
    /// Where the size is given, or what it is derived from.
    pub size_site: Site,
    /// Whether the piece may be turned on the sheet although the pattern runs.
    pub pattern: PatternOn,
    /// So many more than the cards need, in each kit.
    pub spare: u32,
    /// So many in each kit whatever the cards say (for projects without cards).
    pub count: Option<u32>,
    /// The layer that it frames, if it is a mat given by its border.
    pub mat: bool,
    /// The piece that it lies next to on the sheet, so that the pattern runs on.
    pub next_to: Option<NextTo>,
    /// Where on the sheet it lies, if it shows one place of the pattern.
    pub region: Option<Region>,
}

/// A piece lies next to another one on the sheet.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct NextTo {
    /// The other one.
    pub piece: PieceId,
    /// On which side of the other one, as the pattern stands.
    pub side: Side,
    /// Where it is said.
    pub site: Site,
}

/// A place on the sheet, as it lies when it is cut.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Region {
    /// From the left edge of the sheet to the left edge of the piece.
    pub left: Length,
    /// From the top edge of the sheet to the top edge of the piece.
    pub top: Length,
    /// Where it is said.
    pub site: Site,
}

/// Whether the direction of a pattern binds a piece.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PatternOn {
    /// It lies on the sheet as its paper's faces allow.
    AsItRuns,
    /// It may lie any way, whatever its paper says.
    AnyWay,
}

/// A piece that is cut once more, at the card or when one says.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct LateCut {
    /// What is cut.
    pub piece: PieceId,
    /// How it is cut.
    pub how: LateHow,
    /// What comes of it; one row for halves that share a name, else two: first
    /// what comes off, then what stays.
    pub makes: Vec<LatePart>,
    /// What it is cut with, if that was said.
    pub with: Option<ToolId>,
    /// At the card, rather than with the other preparing.
    pub at_the_card: bool,
    /// Where it is said.
    pub site: Site,
}

/// How a piece is cut again.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LateHow {
    /// Into two equal halves by one cut along `cut`.
    Halve {
        /// Which way the cut runs on the piece as it lies.
        cut: Axis,
    },
    /// Into three equal parts by two cuts along `cut`.
    Thirds {
        /// Which way the cuts run on the piece as it lies.
        cut: Axis,
    },
    /// `at` is cut off by one cut along `cut`.
    CutOff {
        /// Which way the cut runs on the piece as it lies.
        cut: Axis,
        /// How much comes off.
        at: Length,
    },
}

/// A part that a late cut makes.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct LatePart {
    /// What it is called.
    pub name: Text,
    /// Width × height as it came off, pattern upright.
    pub size: Size,
    /// How many of it one late cut makes: 2 for halves that share a name.
    pub makes: u32,
    /// The face that shows, if it was said.
    pub showing: Option<FaceId>,
}

/// Words on a label.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Greeting {
    /// What it is called in the description.
    pub name: Text,
    /// The words.
    pub words: Text,
    /// Width × height of the printed image, if it was given.
    pub stamped: Option<Size>,
    /// The stamp set, if one is named.
    pub stamps: Option<ToolId>,
    /// The ink, if one is named.
    pub ink: Option<ToolId>,
    /// The shape that bears the words.
    pub label: Label,
    /// What the label is cut or punched from.
    pub of: PaperId,
    /// The second pass of the punch that made the label narrower, if there is one.
    pub narrowed: Option<Narrowing>,
    /// The mat under the label.
    pub mat: Option<LabelMat>,
}

/// A second pass of the punch that takes something off a label.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Narrowing {
    /// How much comes off.
    pub take_off: Length,
    /// At which side of the label as it stands.
    pub side: Side,
    /// What holds it in the punch, if that was said.
    pub held_with: Option<Text>,
    /// Where it is said.
    pub site: Site,
}

/// The small shape that bears a greeting.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Label {
    /// Its outline as it goes onto the card.
    pub outline: Outline,
    /// The punch that makes it; `None` if it is cut.
    pub punch: Option<ToolId>,
    /// Where it is said.
    pub site: Site,
}

/// A mat under a label, with the label in its middle.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct LabelMat {
    /// What it is cut or punched from.
    pub of: PaperId,
    /// How much of it shows: the width at the left and at the right, the height at
    /// the top and at the bottom. All are alike on a mat that is cut.
    pub shows: Size,
    /// How it is punched and halved; `None` if it is cut.
    pub punched: Option<PunchedMat>,
    /// Where it is said.
    pub site: Site,
}

impl LabelMat {
    /// A mat that is cut, with the same border all round.
    pub const fn cut(of: PaperId, border: Length, site: Site) -> Self {
        Self { of, shows: Size::new(border, border), punched: None, site }
    }
}

/// A mat from a punch that is halved, and its halves laid nearer or further apart.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct PunchedMat {
    /// The punch.
    pub with: ToolId,
    /// What shape it makes.
    pub shape: Shape,
    /// Which way the cut runs that halves it.
    pub halved: Axis,
    /// How far the halves are moved apart; below zero if they are slid together
    /// and overlap by so much.
    pub moved: Length,
    /// How much is trimmed from each end of the seam, so that no more than is
    /// wanted shows there.
    pub trim: Length,
}

/// A card of the set.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Card {
    /// What it is called.
    pub name: Text,
    /// How many of it are in one kit; at least 1.
    pub count: u32,
    /// What it is made on.
    pub base: BaseId,
    /// Tall or wide.
    pub stands: Stands,
    /// On the front, from the base upwards.
    pub layers: Vec<Layer>,
    /// What is put on last: ribbon, embellishments.
    pub extras: Vec<Extra>,
    /// What is inside.
    pub inside: Inside,
    /// Layers on the envelope.
    pub envelope: Vec<Layer>,
    /// A photo of it.
    pub photo: Option<Photo>,
    /// Tips for this card.
    pub tips: Vec<Text>,
}

/// Ribbon or embellishments on a card.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Extra {
    /// What it is.
    pub what: ToolId,
    /// How much of it.
    pub amount: Amount,
    /// Where it goes, in the user's words.
    pub place: Option<Text>,
    /// Where it is said.
    pub site: Site,
}

/// How much of something.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Amount {
    /// So many.
    Count(u32),
    /// So long.
    Length(Length),
}

/// How a card stands.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Stands {
    /// Higher than wide.
    Tall,
    /// Wider than high.
    Wide,
}

/// Something placed on a front, inside, or on the envelope.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Layer {
    /// What is placed.
    pub what: Placed,
    /// The face that shows; `None` for the first face or where there is one.
    pub showing: Option<FaceId>,
    /// How it is turned from the way it lies on the sheet.
    pub turned: Turn,
    /// Where it sits from left to right.
    pub across: Along,
    /// Where it sits from bottom to top.
    pub up: Along,
    /// It reaches from edge to edge of the front in this direction.
    pub edge_to_edge: Option<Axis>,
    /// It may hang over and is trimmed flush from the inside.
    pub trim_flush: bool,
    /// It is raised on so many foam squares; 0 if it is flat.
    pub raised: u32,
    /// What it is fixed with, if that was said.
    pub with: Option<ToolId>,
    /// Where it is said.
    pub site: Site,
}

/// What a layer is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Placed {
    /// A piece as it was cut from the sheet.
    Piece(PieceId),
    /// A part that a late cut makes, by its index in `makes`.
    Late(LateId, usize),
    /// A greeting on its label (and mat).
    Greeting(GreetingId),
}

/// Where a layer sits in one direction.
///
/// "Low" is the left or the bottom side, "high" the right or the top side.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Along {
    /// So far in from a side of the front.
    From(Side, Length, Site),
    /// In the middle of the front.
    Center,
    /// In the middle of an earlier layer of the card.
    CenterOf(usize, Site),
    /// Outside an earlier layer, beyond one of its sides, with a gap.
    Beyond {
        /// Index of the earlier layer.
        of: usize,
        /// On which side of it.
        side: Side,
        /// How far off.
        gap: Length,
        /// Where it is said.
        site: Site,
    },
    /// With its own middle on a side of an earlier layer.
    Straddling {
        /// Index of the earlier layer.
        of: usize,
        /// Which side of it.
        side: Side,
        /// Where it is said.
        site: Site,
    },
    /// Inward from the same side of an earlier layer, which may be 0.
    Within {
        /// Index of the earlier layer.
        of: usize,
        /// From which side of it.
        side: Side,
        /// How far in.
        inset: Length,
        /// Where it is said.
        site: Site,
    },
}

/// What is inside a card.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Inside {
    /// The words to stamp or write there.
    pub words: Option<Text>,
    /// The ink they are stamped in, if that was said.
    pub ink: Option<ToolId>,
    /// The words are chosen when the card is sent.
    pub chosen: bool,
    /// What to choose from, if that was said.
    pub among: Vec<Text>,
    /// Layers inside, placed on the right or lower half.
    pub layers: Vec<Layer>,
}
