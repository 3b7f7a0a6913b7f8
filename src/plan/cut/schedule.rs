//! The steps at the trimmer, in the order in which they are done.

use crate::geom::{Axis, Length, Rect, Size};
use crate::plan::cut::Pattern;
use crate::project::Trimmer;

/// Orders the cuts of all patterns of one paper for as few marks as possible.
pub fn schedule(patterns: &[Pattern], trimmer: &Trimmer) -> Schedule {
    let _ = (patterns, trimmer);
    Schedule::default()
}

/// All steps for one paper.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Schedule {
    /// In order.
    pub steps: Vec<Step>,
    /// How often the mark is set.
    pub marks: u32,
    /// No order of these cuts needs fewer marks.
    pub proven: bool,
    /// How many strokes of the blade it takes when sheets are stacked.
    pub strokes: u32,
}

/// One kind of cut: the same mark, on the same part of the same pattern.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Step {
    /// Which pattern (way to cut a sheet).
    pub pattern: usize,
    /// The part in hand, where it lay on the sheet.
    pub in_hand: Rect,
    /// What the part in hand is called: the sheet itself, or a number given
    /// when it came off.
    pub hand: Hand,
    /// Which way the cut runs on the sheet as it lay.
    pub axis: Axis,
    /// The edge of the part in hand that lies to the rule: `true` if it is the
    /// right or bottom one, so that what comes off is on that side.
    pub from_far_side: bool,
    /// The mark on the ruler; the extent of what comes off.
    pub mark: Length,
    /// The mark is moved for this step.
    pub moves: bool,
    /// How many cuts in a row are made at this mark from the part in hand.
    pub times: u32,
    /// What each cut takes off, one for each of `times`, where it lay.
    pub off: Vec<(Rect, Becomes)>,
    /// What stays in hand after the last cut, and what becomes of it.
    pub stays: (Rect, Becomes),
    /// On how many sheets this is done.
    pub copies: u32,
    /// The part in hand must be turned by a quarter before.
    pub turn: bool,
    /// The part that is hard to hold is cut last, by this step.
    pub hard_to_hold: bool,
}

/// What a part in hand is called.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Hand {
    /// A whole sheet.
    Sheet,
    /// The part with this number, which an earlier step laid aside.
    Aside(u32),
    /// What stayed in hand after the step before.
    Same,
}

/// What becomes of a part that a cut makes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Becomes {
    /// It is finished: the part with this index.
    Part(usize),
    /// It is cut further later; laid aside under this number.
    Aside(u32),
    /// It stays in hand for the next step.
    InHand,
    /// It is kept as an offcut.
    Keep,
    /// It is thrown away.
    Waste,
}

impl Step {
    /// Width × height of the part in hand as it lay on the sheet.
    pub fn size_in_hand(&self) -> Size {
        self.in_hand.size
    }
}
