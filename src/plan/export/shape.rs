//! The shape of an exported cutting: what `templates/cuts.schema.json` describes.

use serde::Serialize;

/// The version of this shape; it grows when a field changes or goes.
pub(crate) const VERSION: u32 = 1;

/// The whole cutting of a set.
#[derive(Serialize)]
pub(crate) struct Cutting<'a> {
    pub(crate) format: &'static str,
    pub(crate) version: u32,
    pub(crate) title: &'a str,
    pub(crate) unit: &'static str,
    pub(crate) units_per_mm: i64,
    pub(crate) kits: u32,
    pub(crate) spares: u32,
    pub(crate) papers: Vec<Paper<'a>>,
    pub(crate) notes: Vec<Note<'a>>,
}

/// One paper, and how it is cut.
#[derive(Serialize)]
pub(crate) struct Paper<'a> {
    pub(crate) name: &'a str,
    pub(crate) kits_together: u32,
    pub(crate) stock: &'static str,
    pub(crate) sheets: Vec<Sheet>,
    pub(crate) sheets_used: u32,
    pub(crate) sheets_at_least: u32,
    pub(crate) known_by: &'static str,
    pub(crate) proven: bool,
    pub(crate) parts: Vec<Part>,
    pub(crate) patterns: Vec<Pattern>,
    pub(crate) steps: Vec<Step>,
    pub(crate) marks: u32,
    pub(crate) marks_at_least: u32,
    pub(crate) strokes: u32,
    pub(crate) turns: u32,
    pub(crate) offcut: Option<Offcut>,
    pub(crate) own_way: Option<OwnWay>,
    pub(crate) every_sheet_alike: Option<Alike>,
    pub(crate) fewest_sheets: Option<Toil>,
    pub(crate) search_steps: u64,
}

/// Every sheet cut the same way, beside the fewest sheets.
#[derive(Serialize)]
pub(crate) struct Alike {
    pub(crate) chosen: bool,
    pub(crate) kits_per_sheet: u32,
    pub(crate) kits_left_over: u32,
    pub(crate) alike: Toil,
    pub(crate) fewest: Toil,
}

/// What a plan takes.
#[derive(Serialize)]
pub(crate) struct Toil {
    pub(crate) sheets: u32,
    pub(crate) marks: u32,
    pub(crate) steps: u32,
}

/// A length as one writes it, and exactly.
#[derive(Serialize)]
pub(crate) struct Length {
    pub(crate) text: String,
    pub(crate) units: i64,
}

#[derive(Serialize)]
pub(crate) struct Size {
    pub(crate) width: Length,
    pub(crate) height: Length,
}

#[derive(Serialize)]
pub(crate) struct Rect {
    pub(crate) x: Length,
    pub(crate) y: Length,
    pub(crate) width: Length,
    pub(crate) height: Length,
}

#[derive(Serialize)]
pub(crate) struct Sheet {
    pub(crate) size: Size,
    pub(crate) at_hand: Option<u32>,
    pub(crate) used: u32,
}

#[derive(Serialize)]
pub(crate) struct Part {
    pub(crate) letter: String,
    pub(crate) name: String,
    pub(crate) kind: &'static str,
    pub(crate) size: Size,
    pub(crate) may_turn: bool,
    pub(crate) per_kit: u32,
    pub(crate) count: u32,
}

#[derive(Serialize)]
pub(crate) struct Pattern {
    pub(crate) sheet: Size,
    pub(crate) copies: u32,
    pub(crate) cuts: u32,
    pub(crate) tree: Option<Tree>,
}

/// What a rectangle of paper is: cut once more, or not.
#[derive(Serialize)]
#[serde(tag = "is", rename_all = "lowercase")]
pub(crate) enum Tree {
    Cut { runs: &'static str, at: Length, first: Box<Tree>, second: Box<Tree> },
    Part { letter: String, turned: bool },
    Offcut,
    Waste,
}

#[derive(Serialize)]
pub(crate) struct Step {
    pub(crate) pattern: usize,
    pub(crate) hand: Hand,
    pub(crate) in_hand: Rect,
    pub(crate) alike: Vec<Rect>,
    pub(crate) runs: &'static str,
    pub(crate) from_far_side: bool,
    pub(crate) turn: bool,
    pub(crate) mark: Length,
    pub(crate) moves: bool,
    pub(crate) times: u32,
    pub(crate) off: Vec<Made>,
    pub(crate) stays: Made,
    pub(crate) slack: bool,
    pub(crate) hard_to_hold: bool,
    pub(crate) copies: u32,
}

/// What is in hand.
#[derive(Serialize)]
#[serde(tag = "is", rename_all = "lowercase")]
pub(crate) enum Hand {
    Sheet,
    Aside { number: u32 },
    Same,
}

/// What a cut makes, and what becomes of it.
#[derive(Serialize)]
pub(crate) struct Made {
    pub(crate) rect: Rect,
    pub(crate) becomes: Becomes,
}

#[derive(Serialize)]
#[serde(tag = "is", rename_all = "lowercase")]
pub(crate) enum Becomes {
    Part { letter: String },
    Aside { number: u32 },
    Hand,
    Offcut,
    Waste,
}

#[derive(Serialize)]
pub(crate) struct Offcut {
    pub(crate) pattern: usize,
    pub(crate) size: Size,
    pub(crate) proven: bool,
}

/// The designer's own way beside the best one found.
#[derive(Serialize)]
pub(crate) struct OwnWay {
    pub(crate) sheets: u32,
    pub(crate) cuts: u32,
    pub(crate) offcut: Option<Size>,
    pub(crate) best_sheets: u32,
    pub(crate) best_cuts: u32,
    pub(crate) best_offcut: Option<Size>,
}

#[derive(Serialize)]
pub(crate) struct Note<'a> {
    pub(crate) rule: &'static str,
    pub(crate) severity: &'static str,
    pub(crate) file: Option<&'a str>,
    pub(crate) line: Option<usize>,
    pub(crate) column: Option<usize>,
    pub(crate) message: &'a str,
    pub(crate) help: &'a [String],
}
