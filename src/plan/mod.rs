//! From the checked project to everything that is computed: the cutting, the
//! shopping, where each layer sits, and the order of work.

pub mod cut;
mod fronts;
mod supplies;
mod work;

pub use fronts::*;
pub use supplies::*;
pub use work::*;

use crate::plan::cut::PaperCut;

/// Everything that was computed for a project.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Plan {
    /// One row for each paper from which something is cut, in the order of the
    /// project's papers.
    pub cuts: Vec<PaperCut>,
    /// Where each layer of each card sits, in the order of the cards.
    pub fronts: Vec<Front>,
    /// What to buy and to have at hand.
    pub supplies: Supplies,
    /// What is done in which order.
    pub work: WorkPlan,
}
