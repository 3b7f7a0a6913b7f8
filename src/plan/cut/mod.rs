//! Cutting sheets: what is to be cut, the plan, and the steps at the trimmer.

mod alike;
mod assign;
mod blanks;
mod compared;
mod demand;
mod drawn;
mod engine;
mod faults;
mod follow;
mod frames;
mod in_place;
mod kept;
mod look;
mod own;
mod paper;
mod plates;
mod rearrange;
mod replay;
mod schedule;
mod select;
mod slack;
mod strips;
mod ties;
mod tree;

pub(crate) use blanks::strip_runs;
pub use demand::{Part, PartOf, Turning};
pub use drawn::{Pencil, drawn};
pub use engine::knapsack;
pub use engine::{BUDGET, Bound, How, Kind, Limits, Problem, SheetKind, Solution, solve};
pub(crate) use faults::{called, kept_not_followed};
pub use kept::{Kept, KeptFault, KeptPaper, KeptPart};
pub use own::{OwnWay, own_way};
pub(crate) use paper::Wishes;
pub use replay::{ReplayFault, Replayed, Way, replay};
pub use schedule::{Becomes, Hand, Schedule, Step, schedule};
pub use select::{TIDY_BUDGET, Tidied, tidy};
pub use slack::{Slack, TakesUp, slack};
pub use tree::{Cut, Leaf, Placement, Token, Tree};

use crate::diag::Diagnostic;
use crate::geom::Size;
use crate::plan::uses::{Kits, Uses};
use crate::project::{PaperId, Project};

/// How one paper is cut, for all kits.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct PaperCut {
    /// Which paper.
    pub paper: PaperId,
    /// What is cut from it; trees name parts by their index here.
    pub parts: Vec<Part>,
    /// Kits that are cut together: 1 where each person cuts her own sheets.
    pub kits: u32,
    /// Different ways to cut a sheet, each with its number of sheets; none if
    /// the paper comes in scraps, which are not planned.
    pub patterns: Vec<Pattern>,
    /// What is known about the fewest sheets.
    pub bound: Bound,
    /// Whether no plan can do with fewer sheets.
    pub proven: bool,
    /// The largest offcut that is kept, and whether none can be larger.
    pub offcut: Option<Offcut>,
    /// The steps at the trimmer.
    pub schedule: Schedule,
    /// Her own way beside the best plan found, if she gave one; the patterns and
    /// steps are then hers, in her order.
    pub own: Option<OwnCompared>,
    /// What it is to cut every sheet the same way, where that differs from the plan
    /// with the fewest sheets.
    pub alike: Option<Alike>,
    /// What the plan with the fewest sheets takes, where this one was kept or is
    /// her own and takes more sheets.
    pub fewest: Option<Toil>,
    /// How many steps the search took; the same on every machine.
    pub spent: u64,
}

/// One way to cut a sheet, and how many sheets are cut so.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Pattern {
    /// Width × height of the sheet.
    pub sheet: Size,
    /// The cuts, laid out so that everything lies where the steps cut it.
    pub tree: Tree,
    /// So many sheets.
    pub copies: u32,
}

/// An offcut that is worth keeping.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Offcut {
    /// Index of the pattern it comes from; it is on one sheet of it at least.
    pub pattern: usize,
    /// Width × height as it lies on the sheet.
    pub size: Size,
    /// No plan with so few sheets leaves a larger one (by area).
    pub proven: bool,
}

/// A designer's own plan beside the best one found.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct OwnCompared {
    /// Sheets her plan takes.
    pub sheets: u32,
    /// Cuts her plan takes on a sheet.
    pub cuts: u32,
    /// Sheets the best plan takes.
    pub best_sheets: u32,
    /// Cuts the best plan takes on a sheet, on average and rounded up.
    pub best_cuts: u32,
    /// Her largest offcut, by area.
    pub offcut: Option<Size>,
    /// The largest offcut of the best plan.
    pub best_offcut: Option<Size>,
}

/// Every sheet cut the same way, beside the plan with the fewest sheets.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Alike {
    /// Whole kits that are cut from each sheet.
    pub kits_per_sheet: u32,
    /// Kits that are cut beyond those wanted.
    pub left_over: u32,
    /// What it takes to cut every sheet the same way.
    pub alike: Toil,
    /// What the plan with the fewest sheets takes.
    pub fewest: Toil,
    /// The plan is the one that cuts every sheet the same way.
    pub chosen: bool,
}

/// What a plan takes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Toil {
    /// Sheets.
    pub sheets: u32,
    /// Marks of the trimmer.
    pub marks: u32,
    /// Steps.
    pub steps: u32,
}

/// Plans the cutting of every paper from which something is cut.
pub(crate) fn cuts(
    project: &Project,
    uses: &Uses,
    kits: &Kits,
    wishes: Wishes<'_>,
    notes: &mut Vec<Diagnostic>,
) -> Vec<PaperCut> {
    let mut demand = demand::demand(project, uses, kits, notes);
    for (paper, parts) in &mut demand {
        strips::joined(project, (*paper, parts), kits, wishes);
    }
    // Plans that were kept, and the letters that were printed with them.
    let followed = follow::kept_patterns(project, &mut demand, wishes, kits, notes);
    let papers = demand.into_iter().zip(followed);
    papers
        .filter_map(|(paper, kept)| {
            paper::cut_paper(project, paper, kept, kits, wishes, notes)
        })
        .collect()
}
