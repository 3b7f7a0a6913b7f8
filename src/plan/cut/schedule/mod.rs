//! The steps at the trimmer, in the order in which they are done.
//!
//! The cuts of all patterns of one paper are ordered together, for the fewest
//! settings of the mark: `forest` turns the trees into plates and the cuts that
//! they need, `marks` finds the order (`plenty` for huge ones), `polish` chooses among
//! equals, `steps` writes it out.

mod forest;
mod marks;
mod plenty;
mod polish;
mod steps;

use crate::geom::{Axis, Length, Rect, Size};
use crate::plan::cut::{Pattern, Tree};
use crate::project::Trimmer;

use forest::Forest;

/// Orders the cuts of all patterns of one paper for as few marks as possible.
pub fn schedule(patterns: &[Pattern], trimmer: &Trimmer) -> Schedule {
    let forest = Forest::new(patterns, trimmer.narrowest);
    let order = marks::order(&forest);
    let schedule = polish::polished(&forest, patterns, trimmer, order.settings)
        .expect("the search ends when all is cut");
    let at_least = u32::try_from(order.at_least).unwrap_or(u32::MAX);
    let proven = schedule.marks <= at_least;
    Schedule { at_least, proven, spent: order.spent, ..schedule }
}

/// How much work a set of trees is; the less, the better, from the first on.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(super) struct Effort {
    /// Cuts beyond the stages that are allowed; only who chooses trees knows these.
    pub(super) too_deep: usize,
    /// Plates that are longer than the trimmer cuts.
    too_long: usize,
    /// Settings of the mark, as a narrow search finds them.
    marks: usize,
    /// Cuts on one sheet of each pattern.
    cuts: u32,
    /// Plates that are turned to be cut.
    turns: usize,
    /// Plates that are hard to hold.
    hard: usize,
}

impl Effort {
    /// The same with so many cuts beyond the stages that are allowed.
    pub(super) fn of_depth(self, too_deep: usize) -> Self {
        Self { too_deep, ..self }
    }
}

/// How much work it is to cut patterns; `None` if it is surely not less than
/// `below`. Counts its steps.
pub(super) fn effort(
    patterns: &[Pattern],
    trimmer: &Trimmer,
    below: Option<Effort>,
    steps: &mut u64,
) -> Option<Effort> {
    let forest = Forest::new(patterns, trimmer.narrowest);
    let long = |it: &&forest::Plate| {
        trimmer.longest_cut.is_some_and(|longest| it.size.along(it.axis) > longest)
    };
    let mut effort = Effort {
        too_deep: 0,
        too_long: forest.plates.iter().filter(long).count(),
        marks: marks::at_least(&forest),
        cuts: patterns.iter().map(|it| it.tree.cuts()).sum(),
        turns: forest.plates.iter().filter(|it| forest.is_turned(it)).count(),
        hard: forest.plates.iter().filter(|it| it.hard).count(),
    };
    // Building the forest costs far more than one step of a search.
    *steps += 64 * forest.ops.len() as u64;
    if below.is_some_and(|below| below <= effort) {
        return None;
    }
    let order = marks::quick(&forest);
    *steps += order.spent;
    effort.marks = order.settings.len();
    Some(effort)
}

/// How often the mark is set for these patterns, by the full search.
pub(super) fn marks_needed(
    patterns: &[Pattern],
    trimmer: &Trimmer,
    steps: &mut u64,
) -> usize {
    let order = marks::order(&Forest::new(patterns, trimmer.narrowest));
    *steps += order.spent;
    order.settings.len()
}

/// All steps for one paper.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Schedule {
    /// In order.
    pub steps: Vec<Step>,
    /// How often the mark is set.
    pub marks: u32,
    /// No order of these cuts needs fewer marks than this.
    pub at_least: u32,
    /// No order of these cuts needs fewer marks: `marks == at_least`.
    pub proven: bool,
    /// How often a part is turned by a quarter before a step.
    pub turns: u32,
    /// How many strokes of the blade it takes when sheets are stacked.
    pub strokes: u32,
    /// The tree of each pattern with neighbours exchanged so that everything lies
    /// where the steps cut it. All rectangles of the steps are meant on these, so
    /// these are what a drawing shows.
    pub laid: Vec<Tree>,
    /// Search steps spent; the same on every machine.
    pub spent: u64,
}

/// One kind of cut: the same mark, on the same part of the same pattern.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Step {
    /// Which pattern (way to cut a sheet).
    pub pattern: usize,
    /// The part in hand, where it lay on the sheet.
    pub in_hand: Rect,
    /// Further parts of the same sheet that are cut just so at the same time,
    /// on the stack or one after another. What comes off them lies as it lies in
    /// `off` and `stays` from the corner of `in_hand`.
    pub alike: Vec<Rect>,
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
    /// What stays is used although it was never measured: it takes up what the
    /// sheet is short or over.
    pub slack: bool,
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
    /// What the step before left in hand.
    Same,
}

/// What becomes of a part that a cut makes.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
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

    /// Whether the edge at the rule is an edge of the sheet as it was bought, and
    /// not one that was cut.
    pub fn factory_edge(&self) -> bool {
        let corner = match self.axis {
            Axis::Upright => self.in_hand.x,
            Axis::Level => self.in_hand.y,
        };
        !self.from_far_side && corner == Length::ZERO
    }

    /// Whether the step trims: the one part that comes off is measured and used,
    /// and what stays is an offcut or waste.
    pub fn trims(&self) -> bool {
        self.times == 1 && matches!(self.stays.1, Becomes::Keep | Becomes::Waste)
    }

    /// Parts that are cut in this step over all sheets.
    pub fn parts_in_hand(&self) -> u64 {
        u64::from(self.copies) * (1 + self.alike.len() as u64)
    }

    /// Strokes of the blade when parts are stacked as high as the trimmer takes.
    pub fn strokes(&self, trimmer: &Trimmer) -> u32 {
        let stacks =
            self.parts_in_hand().div_ceil(u64::from(trimmer.sheets_at_once.max(1)));
        u32::try_from(stacks.saturating_mul(u64::from(self.times))).unwrap_or(u32::MAX)
    }
}
