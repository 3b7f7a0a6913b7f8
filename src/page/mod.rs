//! Finished pages: items at fixed places.
//!
//! All numbers are points of 1/72 in; x grows to the right and y grows downwards
//! from the top left corner of the page. Whoever writes pages to a file makes no
//! decision about where things stand.

use std::collections::BTreeMap;
use std::ops::Range;
use std::sync::Arc;

use crate::fonts::FaceId;
use crate::raster::Picture;

mod booklet;
mod ink;
mod tags;

pub use booklet::{fold, sides};
pub use ink::Ink;
pub use tags::{Role, Tag, TagId, Tags};

/// A handout with everything at its place.
#[derive(Clone, Debug)]
pub struct Laid {
    /// Shown in the viewer's title bar.
    pub title: String,
    /// Language of the text (BCP 47).
    pub language: String,
    /// In order.
    pub pages: Vec<Page>,
    /// What the items mean, in reading order.
    pub tags: Tags,
    /// Headings, in reading order.
    pub outline: Vec<Bookmark>,
    /// Where the anchors of the document ended up.
    pub anchors: BTreeMap<String, Place>,
    /// Every picture of the document as it is printed, in colour or grey; items
    /// name them by number.
    pub pictures: Vec<Arc<Picture>>,
    /// Pages are sides of sheets that are printed on both sides and folded.
    pub folded: bool,
}

/// A spot on a page.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Place {
    /// Counted from 0.
    pub page: usize,
    /// From the left.
    pub x: f64,
    /// From the top.
    pub y: f64,
}

/// An entry of the list of headings.
#[derive(Clone, Debug, PartialEq)]
pub struct Bookmark {
    /// From 1; grows by no more than 1.
    pub level: u8,
    /// The words of the heading.
    pub title: String,
    /// Where it stands.
    pub place: Place,
}

/// One finished page.
#[derive(Clone, Debug)]
pub struct Page {
    /// Width of the paper.
    pub width: f64,
    /// Height of the paper.
    pub height: f64,
    /// How far down the page is filled, as a part of the height for text.
    pub filled: f64,
    /// In reading order; later ones cover earlier ones.
    pub items: Vec<Item>,
    /// Places that lead elsewhere.
    pub links: Vec<Link>,
    /// When its parts are read, where that is not page by page: by the first item
    /// of each.
    pub reads: Vec<Reads>,
}

/// A part of a page, up to the next, with its place in the reading order.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Reads {
    /// Its first item.
    pub from: usize,
    /// Parts with smaller ranks are read before it.
    pub rank: usize,
}

impl Page {
    /// Its place in the reading order, and that of an item on it, if its parts are
    /// not read together; `number` is that of the page.
    pub fn rank(&self, number: usize, item: usize) -> usize {
        let part = self.reads.iter().rev().find(|it| it.from <= item);
        part.map_or(number, |it| it.rank)
    }
}

/// A thing at its place.
#[derive(Clone, Debug)]
pub struct Item {
    /// What it belongs to.
    pub owner: Owner,
    /// What is drawn.
    pub what: What,
}

/// What an item belongs to.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Owner {
    /// It is part of the content.
    Tag(TagId),
    /// It is repeated at the head or foot of pages.
    Running,
    /// It only pleases the eye.
    Decoration,
}

/// What is drawn.
#[derive(Clone, Debug)]
pub enum What {
    /// Shaped words.
    Text(Text),
    /// Lines and areas.
    Path(Path),
    /// A part of a picture.
    Window(Window),
}

/// A part of a picture, seen as through a window.
#[derive(Clone, Debug, PartialEq)]
pub struct Window {
    /// Which picture of [`Laid::pictures`].
    pub picture: usize,
    /// Where the whole picture lies as it is looked at: its top left corner, and
    /// the ways from there to its top right and to its bottom left corner.
    pub whole: [(f64, f64); 3],
    /// What is seen of it; a closed outline.
    pub outline: Piece,
}

/// Shaped words at their place.
#[derive(Clone, Debug)]
pub struct Text {
    /// The glyphs, shared by all the places where they stand.
    pub run: Arc<Run>,
    /// Where the first glyph starts on the baseline.
    pub x: f64,
    /// The baseline.
    pub y: f64,
    /// Reads upwards instead of to the right.
    pub upwards: bool,
    /// Their colour.
    pub ink: Ink,
}

/// Glyphs of one face and size in a line, from left to right.
#[derive(Clone, Debug, PartialEq)]
pub struct Run {
    /// Where they are taken from.
    pub face: FaceId,
    /// Size of the em.
    pub size: f64,
    /// From left to right.
    pub glyphs: Vec<Glyph>,
    /// What they say, in the order in which it is read.
    pub text: String,
    /// Where the next run would start.
    pub advance: f64,
    /// The text runs from right to left.
    pub leftwards: bool,
}

/// A glyph in its run.
#[derive(Clone, Debug, PartialEq)]
pub struct Glyph {
    /// As the font file numbers it.
    pub id: u16,
    /// Where it stands from the start of the run.
    pub x: f64,
    /// How far it is raised from the baseline.
    pub rise: f64,
    /// The part of the run's text that it stands for; empty if an earlier glyph
    /// stands for it too.
    pub text: Range<usize>,
}

/// Lines and areas.
#[derive(Clone, Debug, PartialEq)]
pub struct Path {
    /// Every piece starts with a move.
    pub pieces: Vec<Piece>,
    /// What fills it.
    pub fill: Option<Ink>,
    /// What is drawn along it.
    pub line: Option<Line>,
}

/// A connected stretch of a path.
#[derive(Clone, Debug, PartialEq)]
pub struct Piece {
    /// Where it starts.
    pub start: (f64, f64),
    /// How it goes on.
    pub steps: Vec<PathStep>,
    /// Whether it returns to its start.
    pub closed: bool,
}

/// How a path goes on.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum PathStep {
    /// Straight to a point.
    To(f64, f64),
    /// Along a cubic curve: two handles and the end.
    Curve([(f64, f64); 3]),
}

/// How a line looks.
#[derive(Clone, Debug, PartialEq)]
pub struct Line {
    /// Its colour.
    pub ink: Ink,
    /// Its width.
    pub width: f64,
    /// Lengths of dashes and gaps in turn; empty for a continuous line.
    pub dash: Vec<f64>,
    /// Ends are round, so that a line without length is a dot.
    pub round: bool,
}

/// A place that leads elsewhere.
#[derive(Clone, Debug, PartialEq)]
pub struct Link {
    /// Left, top, right and bottom.
    pub area: [f64; 4],
    /// The anchor that it leads to.
    pub to: String,
    /// What it says, for those who can't see it.
    pub says: String,
    /// The tag that its words belong to.
    pub tag: TagId,
}

impl Piece {
    /// A straight line.
    pub fn line(from: (f64, f64), to: (f64, f64)) -> Self {
        Self { start: from, steps: vec![PathStep::To(to.0, to.1)], closed: false }
    }

    /// A closed polygon; needs at least one point.
    pub fn polygon(points: &[(f64, f64)]) -> Self {
        let (start, rest) = points.split_first().expect("a polygon has points");
        let steps = rest.iter().map(|it| PathStep::To(it.0, it.1)).collect();
        Self { start: *start, steps, closed: true }
    }

    /// A closed rectangle.
    pub fn rect(x: f64, y: f64, width: f64, height: f64) -> Self {
        let (right, bottom) = (x + width, y + height);
        Self::polygon(&[(x, y), (right, y), (right, bottom), (x, bottom)])
    }
}

impl Piece {
    /// Moves it.
    fn shift(&mut self, dx: f64, dy: f64) {
        let moved = |point: (f64, f64)| (point.0 + dx, point.1 + dy);
        self.start = (self.start.0 + dx, self.start.1 + dy);
        for step in &mut self.steps {
            *step = match *step {
                PathStep::To(x, y) => PathStep::To(x + dx, y + dy),
                PathStep::Curve(points) => PathStep::Curve(points.map(moved)),
            };
        }
    }
}

impl Item {
    /// Moves it.
    pub fn shift(&mut self, dx: f64, dy: f64) {
        match &mut self.what {
            What::Text(text) => {
                text.x += dx;
                text.y += dy;
            }
            What::Path(path) => {
                path.pieces.iter_mut().for_each(|it| it.shift(dx, dy));
            }
            What::Window(window) => {
                window.outline.shift(dx, dy);
                window.whole[0].0 += dx;
                window.whole[0].1 += dy;
            }
        }
    }
}
