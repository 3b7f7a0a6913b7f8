//! What the cards are made of and with: papers, bases, tools.

use crate::geom::{Length, Shape, Size};
use crate::project::{FacePicture, Text};
use crate::source::Site;

/// Index of a [`Paper`] in its project.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct PaperId(pub usize);

/// Index of a [`Base`] in its project.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct BaseId(pub usize);

/// Index of a [`Tool`] in its project.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct ToolId(pub usize);

/// Index of a face among the faces of one paper; 0 lies up when cutting.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct FaceId(pub usize);

/// A paper that is bought in sheets, or lies about in scraps.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Paper {
    /// What it is called.
    pub name: Text,
    /// Patterned paper, cardstock, or the user's own word for its kind.
    pub kind: PaperKind,
    /// Where the pieces come from.
    pub stock: Stock,
    /// One or two faces; the first lies up when cutting.
    pub faces: Vec<Face>,
    /// Substance in hundredths of a gram per square metre.
    pub grams: Option<u32>,
    /// Thickness of one sheet, if it is given.
    pub thickness: Option<Length>,
    /// Which way the fibres run in the sheet as it lies, if it is known.
    pub grain: Option<Grain>,
    /// How it is sold.
    pub pack: Option<Pack>,
    /// `#rrggbb`, if the user gave a colour.
    pub color: Option<[u8; 3]>,
    /// What its faces look like, at most one for each.
    pub pictures: Vec<FacePicture>,
    /// What to write on the order.
    pub order_number: Option<Text>,
    /// Whether every sheet is cut the same way; as the project says if it is not
    /// said.
    pub sheets_alike: Option<bool>,
    /// What it costs, and what of it is there already.
    pub trade: Trade,
}

/// What something costs, and how much of it is there already.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Trade {
    /// The price of a pack, or of one where it is not sold in packs, in hundredths
    /// of the project's currency.
    pub price: Option<u32>,
    /// So many are there already and need not be bought: sheets, bases, squares,
    /// rolls, bottles.
    pub on_hand: u32,
}

/// What sort of paper.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum PaperKind {
    /// With a pattern on it.
    Patterned,
    /// Plain and stiff enough for a card.
    Cardstock,
    /// Plain.
    Plain,
}

/// Where pieces of a paper come from.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Stock {
    /// Sheets of one or more sizes; at least one row. The first is the one that
    /// is bought when more are needed.
    Sheets(Vec<StockSheet>),
    /// Scraps one has lying about, each at least so large; not planned.
    Scraps(Size, Site),
}

/// A size of sheet that a paper comes in, or an offcut that is at hand.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct StockSheet {
    /// Width × height with the pattern upright.
    pub size: Size,
    /// No more than so many are at hand; `None` if more can be bought.
    pub at_hand: Option<u32>,
    /// Where the size is given.
    pub site: Site,
}

/// One side of a paper.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Face {
    /// What it is called; empty for the only face of a plain paper.
    pub name: Text,
    /// Which way its pattern stands.
    pub runs: Runs,
}

/// The way a face's pattern stands, and so how a piece may be turned.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Runs {
    /// It has a top: a piece must stay upright.
    Up,
    /// It looks the same upside down, as stripes do: no quarter turns.
    BothWays,
    /// Any turn looks right.
    Any,
}

/// Which way the fibres run.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Grain {
    /// From left to right as the sheet lies.
    Level,
    /// From top to bottom as the sheet lies.
    Upright,
}

/// How something is sold.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Pack {
    /// How many are in a pack; at least 1.
    pub holds: u32,
    /// How many designs an assorted pack has; 1 if all are alike. A pack holds
    /// `holds / designs` sheets of each.
    pub designs: u32,
}

/// A card base: a sheet folded once, or to be folded.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Base {
    /// What it is called.
    pub name: Text,
    /// The front of the folded card, standing tall (width ≤ height).
    pub front: Size,
    /// The name of the format, if one was named.
    pub format: Option<&'static str>,
    /// Along which side of the front the fold lies.
    pub fold: FoldAlong,
    /// Bought, or cut from a paper.
    pub from: BaseFrom,
    /// In what state it is when work begins.
    pub comes: Comes,
    /// Whether an envelope belongs to it, and its size, width × height.
    pub envelope: Option<Envelope>,
    /// What to write on the order, where it is bought.
    pub order_number: Option<Text>,
    /// What it costs, and what of it is there already.
    pub trade: Trade,
}

/// Along which side of the front a base is folded.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum FoldAlong {
    /// The longer side: left on a tall card, top on a wide one.
    Long,
    /// The shorter side: top on a tall card, left on a wide one.
    Short,
}

/// Where a base comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum BaseFrom {
    /// Bought, in packs if they are known.
    Bought(Option<Pack>),
    /// Cut from a paper, twice the front in size.
    Made(PaperId),
}

/// In what state a base is when work begins.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Comes {
    /// Neither scored nor folded.
    Flat,
    /// Scored, but lying flat.
    Scored,
    /// Folded.
    Folded,
}

/// An envelope for a base.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Envelope {
    /// Width × height, long side level; `None` if only "an envelope" was said.
    pub size: Option<Size>,
    /// Whether it comes in the pack of the bases.
    pub with_base: bool,
    /// Where it is said.
    pub site: Site,
}

/// A tool, or something that is used up.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Tool {
    /// What it is called.
    pub name: Text,
    /// What sort of tool.
    pub kind: ToolKind,
    /// What does instead.
    pub instead: Option<Text>,
    /// `#rrggbb`, if it is an ink or pen and the user gave its colour.
    pub color: Option<[u8; 3]>,
    /// What to write on the order.
    pub order_number: Option<Text>,
    /// What it costs, and how many are there already.
    pub trade: Trade,
    /// How far one of it goes.
    pub lasts: Lasts,
}

/// How far one tool, roll, bottle or pad goes.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Lasts {
    /// So many people share one; `None` if one is enough for all.
    pub shared_by: Option<u32>,
    /// It is used up after so many cards; `None` if one is enough for all.
    pub cards: Option<u32>,
    /// The length on a roll of tape.
    pub roll: Option<Length>,
}

impl Lasts {
    /// How many so many people take, where it is said how many share one.
    pub fn for_people(self, people: u32) -> Option<u32> {
        self.shared_by.map(|shared| people.div_ceil(shared.max(1)))
    }
}

/// What sort of tool.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum ToolKind {
    /// Cuts straight across a sheet.
    Trimmer(Trimmer),
    /// Punches an outline.
    Punch(Punch),
    /// Stamps with greetings.
    StampSet,
    /// Ink for stamps.
    InkPad,
    /// Scissors.
    Scissors,
    /// A knife with a loose or fixed blade.
    Knife,
    /// For pressing score lines.
    ScoringTool,
    /// For pressing folds flat.
    Folder,
    /// Liquid glue, with the minutes until it is dry.
    Glue {
        /// Minutes until it is dry; 0 if it was not said.
        dries: u32,
    },
    /// Double-sided tape.
    Tape,
    /// Foam squares or foam tape that raise a layer.
    Foam {
        /// Thickness, if it was given.
        thickness: Option<Length>,
        /// The side of a square, if it was given.
        side: Option<Length>,
        /// How many squares are in a pack, if it was given.
        pack: Option<Pack>,
    },
    /// Ribbon, cord or the like, by length.
    Ribbon {
        /// How much is on a roll, if it was given.
        roll: Option<Length>,
    },
    /// Small things that are put onto cards, by count.
    Embellishments {
        /// How many are in a pack, if it was given.
        pack: Option<Pack>,
    },
    /// Bags, boxes or stickers that a kit is packed with.
    Packaging {
        /// How many each kit takes.
        each: u32,
        /// How many are in a pack, if it was given.
        pack: Option<Pack>,
    },
    /// Something hot.
    Heat,
    /// A pen or pencil.
    Pen,
    /// Anything else, in the user's word.
    Other,
}

/// A trimmer: what it can cut and how fine.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Trimmer {
    /// The longest cut it makes; `None` if there is no limit.
    pub longest_cut: Option<Length>,
    /// How many sheets it cuts in one stroke; at least 1.
    pub sheets_at_once: u32,
    /// The spacing of the marks on its ruler.
    pub marks: Length,
    /// The narrowest strip that it holds.
    pub narrowest: Length,
    /// Slides, swings down as a lever, or rolls.
    pub kind: TrimmerKind,
}

/// How a trimmer's blade moves; decides the caution.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum TrimmerKind {
    /// A small blade in a carriage.
    Sliding,
    /// A long blade on a lever.
    Lever,
    /// A rolling blade.
    Rotary,
}

/// A punch or die.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Punch {
    /// What it cuts out.
    pub outline: Outline,
    /// How far from the edge of the paper it reaches.
    pub reach: Option<Length>,
    /// The width of strip that it takes.
    pub takes_strips: Option<Length>,
}

/// A small shape.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Outline {
    /// What shape.
    pub shape: Shape,
    /// Width × height of the box around it.
    pub size: Size,
}
