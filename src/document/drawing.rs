//! A drawing in paper lengths, ready to be drawn at any scale.

use crate::geom::{Rect, Shape, Side, Size, Turn};

/// Marks on an area, in real lengths; the origin is its top left corner.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Drawing {
    /// Width × height of the area that the outlines take up, without dimension
    /// lines and labels outside of it.
    pub size: Size,
    /// From the bottom upwards.
    pub marks: Vec<Mark>,
}

/// Something that is drawn.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Mark {
    /// A shape with its outline and what fills it.
    Area {
        /// The box around it.
        rect: Rect,
        /// What shape fills the box.
        shape: Shape,
        /// How its outline is drawn.
        line: Option<Stroke>,
        /// What it is filled with.
        fill: Fill,
    },
    /// A picture as through a window: what of it falls into a box is seen.
    Picture {
        /// The window.
        rect: Rect,
        /// What shape fills the window.
        shape: Shape,
        /// How its outline is drawn.
        line: Option<Stroke>,
        /// Which picture of the document.
        number: usize,
        /// Where the whole picture would lie, after its turn.
        whole: Rect,
        /// How the picture is turned.
        turn: Turn,
    },
    /// A straight line from one point to another.
    Line {
        /// One end and the other, as the opposite corners of a box: from its top
        /// left to its bottom right corner.
        along: Rect,
        /// How it is drawn.
        line: Stroke,
    },
    /// A name within a box: in the middle if it fits, else beside the drawing
    /// with a leader.
    Name {
        /// The box that is named.
        rect: Rect,
        /// First line, such as a letter: always printed.
        short: String,
        /// Second line, such as a name; left out where there is no room.
        long: Option<String>,
        /// Turned to read from the right, if it fits better so.
        may_turn: bool,
    },
    /// A dimension with its lines outside the area.
    Dimension {
        /// On which side of the area it stands.
        side: Side,
        /// Where the measured stretch starts along that side, and its extent, as
        /// a box: for a dimension at the top or bottom only x and width count.
        along: Rect,
        /// The text, in the reader's unit.
        text: String,
        /// 0 is nearest to the area; larger ones stand further out.
        tier: u8,
    },
    /// An arrow that shows which way a pattern stands (up, before the turn).
    Runs {
        /// In which box it stands.
        rect: Rect,
        /// How it is turned.
        turn: Turn,
        /// Stripes look the same upside down: an arrow with two heads.
        both_ways: bool,
    },
    /// A number in a ring beside the end of a cut, outside the area.
    CutNumber {
        /// On which side of the area it stands.
        side: Side,
        /// The cut, as a box without width or without height.
        along: Rect,
        /// The number.
        text: String,
    },
    /// The sheet's edge that lies against the rule of the trimmer.
    Rule {
        /// On which side of the box.
        side: Side,
        /// The part in hand.
        rect: Rect,
    },
    /// A ruler in inches along the bottom of the area, from its left side.
    RulerInch {
        /// Its box; the width is a whole number of inches.
        rect: Rect,
    },
    /// A ruler in millimetres, likewise.
    RulerMm {
        /// Its box; the width is a whole number of centimetres.
        rect: Rect,
    },
}

/// How a line is drawn (ISO 128-2).
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Stroke {
    /// An edge or a cut that is there: continuous, wide.
    Edge,
    /// The edge of what the text speaks of, among others: continuous, extra wide.
    Heavy,
    /// A cut that is to be made: continuous, wide, in the accent.
    Cut,
    /// A fold or score: dashed, narrow.
    Fold,
    /// The outline that a punch is going to take: short dashes, thin.
    Punch,
    /// Something behind, or trimmed away: long dashes with two dots, narrow.
    Ghost,
    /// A thin continuous line.
    Thin,
}

/// What a shape is filled with. Every fill can be told from the others on a grey
/// printer.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Fill {
    /// Nothing.
    None,
    /// Paper white, which covers what is below.
    Paper,
    /// A tint and hatch for the so-and-so-many-th paper face of the project.
    Face {
        /// Which pattern of tint and hatch.
        index: u8,
        /// A colour that the user gave.
        color: Option<[u8; 3]>,
        /// How the hatch is turned.
        turn: Turn,
    },
    /// Waste: a wide 45° hatch.
    Waste,
    /// Kept: dots.
    Kept,
    /// Plain tint for what the text speaks of.
    Strong,
}
