//! What a handout says, block by block: not where it stands on a page.
//!
//! Nothing here knows of cards or plans. If layout wants to know what a block
//! means, a word is missing here.

mod drawing;

pub use drawing::*;

use std::sync::Arc;

use crate::raster::Picture;
use crate::source::Site;

/// A whole handout in one language.
#[derive(Clone, Debug, PartialEq)]
pub struct Document {
    /// Shown in the viewer's title bar.
    pub title: String,
    /// Language of the text, as in BCP 47.
    pub language: String,
    /// Runs at the foot of every page.
    pub foot: Foot,
    /// In reading order.
    pub sections: Vec<Section>,
    /// Every picture, each once; drawings name them by number.
    pub pictures: Vec<Arc<Picture>>,
}

/// What stands at the foot of each page, as data for the layout.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Foot {
    /// At the left: title and edition.
    pub left: String,
    /// Phrase for the page number, with `{page}` and `{pages}` to be filled in.
    pub page_of: String,
    /// Phrase that is put after a heading or table head that goes on on the next
    /// page.
    pub continued: String,
    /// Phrase for the scale of a drawing, with `{scale}` to be filled in, as in
    /// "Scale 1:2".
    pub scale: String,
    /// What stands behind the nought of a ruler in inches, and of one in millimetres.
    pub rulers: [String; 2],
}

/// A part of the handout under one heading.
#[derive(Clone, Debug, PartialEq)]
pub struct Section {
    /// Names it for links; unique in the document.
    pub anchor: String,
    /// The heading; the first section's heading is the title of the handout.
    pub title: Text,
    /// Where it starts.
    pub start: Start,
    /// In reading order.
    pub blocks: Vec<Block>,
}

/// Where a section starts.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Start {
    /// Below what stands before it.
    Below,
    /// On a new page.
    NewPage,
}

/// A run of words.
pub type Text = Vec<Inline>;

/// A stretch of words that look alike.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Inline {
    /// The words. Fractions are written `1/4`; numbers and units are joined with
    /// U+00A0.
    pub text: String,
    /// How they look.
    pub look: Look,
    /// Their language, if it is not the document's.
    pub lang: Option<String>,
    /// Where the user wrote them, if she did.
    pub site: Option<Site>,
    /// The anchor that they lead to.
    pub link: Option<String>,
}

/// How words look.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Look {
    /// As the block has it.
    #[default]
    Plain,
    /// Stronger.
    Strong,
    /// Apart, such as words that are quoted or to be stamped.
    Quoted,
}

impl Inline {
    /// Plain words in the document's language.
    pub fn plain(text: impl Into<String>) -> Self {
        Self { text: text.into(), look: Look::Plain, lang: None, site: None, link: None }
    }

    /// Strong words in the document's language.
    pub fn strong(text: impl Into<String>) -> Self {
        Self { look: Look::Strong, ..Self::plain(text) }
    }
}

/// A block of a section.
#[derive(Clone, Debug, PartialEq)]
pub enum Block {
    /// A heading within the section; level 2 or 3.
    Heading {
        /// 2 or 3.
        level: u8,
        /// Its words.
        text: Text,
        /// Names it for links.
        anchor: Option<String>,
    },
    /// A paragraph.
    Paragraph(Tone, Text),
    /// A list.
    List(Marker, Vec<Text>),
    /// Numbered steps.
    Steps(Vec<Step>),
    /// A table.
    Table(Table),
    /// One drawing.
    Figure(Figure),
    /// One drawing at true size, in parts where it is larger than the page.
    Tiled(Tiled),
    /// Drawings side by side, all at one scale, broken into rows as they fit.
    Figures(Vec<Figure>),
    /// A caution.
    Caution(Caution),
    /// A drawing with blocks beside it (below it where the page is narrow).
    Beside(Figure, Vec<Block>),
    /// Blocks that stay on one page if they fit on one.
    Keep(Vec<Block>),
}

/// How a paragraph speaks.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Tone {
    /// Running text.
    #[default]
    Body,
    /// The sentence that opens the handout.
    Lead,
    /// A remark that may be passed over.
    Remark,
}

/// What stands before the items of a list.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Marker {
    /// A dash or dot.
    Dot,
    /// An empty box to tick.
    Box,
}

/// A numbered step.
#[derive(Clone, Debug, PartialEq)]
pub struct Step {
    /// The number or letter in the margin, such as `3`.
    pub number: String,
    /// What to do.
    pub text: Text,
    /// Short notes in the outer margin, such as a size.
    pub aside: Option<Text>,
    /// A drawing of the state of things.
    pub figure: Option<Figure>,
}

/// A table with one row of heads.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Table {
    /// What the table shows, for those who can't see it.
    pub summary: String,
    /// From left to right.
    pub columns: Vec<Column>,
    /// Each as long as `columns`.
    pub rows: Vec<Vec<Text>>,
}

/// A column of a table.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Column {
    /// Its head; empty for a column of boxes to tick.
    pub head: Text,
    /// Which side its text stands on.
    pub align: Align,
}

/// Which side text stands on.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Hash)]
pub enum Align {
    /// At the left (at the right, in languages that run so).
    #[default]
    Start,
    /// At the other side, as numbers do.
    End,
}

/// A drawing in the text.
#[derive(Clone, Debug, PartialEq)]
pub struct Figure {
    /// What is drawn.
    pub drawing: Drawing,
    /// What the drawing shows, in words; never empty.
    pub alt: String,
    /// Below the drawing; the scale is added by the layout.
    pub caption: Option<Text>,
    /// At which scale it is drawn.
    pub scale: ScaleWish,
    /// Whether the layout prints the scale beside it.
    pub says_scale: bool,
}

/// A drawing at true size. Where it is larger than the page, parts of it that overlap
/// are printed on pages of their own and laid together.
#[derive(Clone, Debug, PartialEq)]
pub struct Tiled {
    /// What is drawn; its scale is 1:1 whatever it wishes for.
    pub figure: Figure,
    /// Phrase for one of several parts, with `{part}` and `{parts}` to be filled in,
    /// as in "Part A2 of 4".
    pub part: String,
    /// How parts are laid together.
    pub joined: Text,
}

/// At which scale a drawing is drawn.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum ScaleWish {
    /// At true size, whatever happens; refused if it can't fit.
    Full,
    /// At the largest recommended scale of ISO 5455 that fits.
    Largest,
    /// All drawings of this number share the largest scale that fits them all
    /// into the share of the measure that their block gives them.
    Shared(u32),
    /// Likewise, also at 1:3 and 1:4, since ISO 5455 lets its series be extended where
    /// need be.
    Finer(u32),
    /// As `Shared`, but so small that it is taken in at a glance beside a few lines of
    /// text.
    Glance(u32),
}

impl ScaleWish {
    /// What stands in a paragraph for the scale that drawings of a number share;
    /// the layout puts the scale in its place, as in `1:5`.
    pub fn shared_by(number: u32) -> String {
        format!("{{scale-of-{number}}}")
    }
}

/// A caution in the form that ANSI Z535.6 and ISO/IEC Guide 37 ask for.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Caution {
    /// The signal word, printed in capitals by the words themselves.
    pub signal: String,
    /// Whether the alert triangle stands before it (not for mere damage).
    pub triangle: bool,
    /// Hazard, consequence, avoidance.
    pub text: Text,
}
