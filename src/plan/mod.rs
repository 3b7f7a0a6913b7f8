//! From the checked project to everything that is computed: the cutting, the
//! shopping, where each layer sits, and the order of work.

mod check;
pub mod cut;
mod export;
mod fit;
mod fronts;
mod gift;
mod packing;
mod supplies;
mod time;
mod uses;
mod work;

pub use export::cuts_json;
pub use fit::{Clearance, Fit, Room, fit};
pub use fronts::{Front, Set};
pub use gift::{GiftSet, Holder, gift_set};
pub use packing::{Packed, Packing};
pub use supplies::{Cost, Good, Packs, Supplies, Supply, cost, packs, ribbon_step};
pub use time::{Doing, Span, Timetable, timetable};
pub use work::{Act, Task, TaskId, WorkPlan};

use crate::diag::{Diagnostic, Outcome};
use crate::plan::cut::{Kept, KeptFault, PaperCut, Wishes};
use crate::plan::uses::{Kits, Uses};
use crate::project::{Project, Reader};

/// Everything that was computed for a project.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Plan {
    /// One row for each paper from which something is cut, in the order of the
    /// project's papers.
    pub cuts: Vec<PaperCut>,
    /// Where each layer of each card sits, in the order of the cards.
    pub fronts: Vec<Front>,
    /// How thick and heavy each card is, and how it goes into its envelope and
    /// the post; one for each front.
    pub fits: Vec<Fit>,
    /// What to buy and to have at hand.
    pub supplies: Supplies,
    /// What is done in which order.
    pub work: WorkPlan,
}

/// For whom and for how many is planned.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct PlanOptions {
    /// So many kits, whatever the project says.
    pub kits: Option<u32>,
    /// Whose packet it is: decides whether sheets are cut together.
    pub reader: Reader,
    /// Search steps that may be spent on each paper.
    pub budget: u64,
    /// A cutting plan that was kept, to be followed while it fits; or why the file
    /// that should hold one can't be read.
    pub kept: Option<Result<Kept, KeptFault>>,
    /// Every sheet of a paper is cut the same way, as with `sheets alike`.
    pub alike: bool,
}

impl Default for PlanOptions {
    fn default() -> Self {
        let budget = cut::BUDGET;
        Self { kits: None, reader: Reader::Class, budget, kept: None, alike: false }
    }
}

/// Plans the cutting, the placing, the shopping and the work.
///
/// There is no plan if any note is an error.
pub fn plan(project: &Project, options: &PlanOptions) -> Outcome<Plan> {
    let mut notes = Vec::new();
    // Look at what needs no plan: punches, envelopes.
    check::check(project, &mut notes);
    // Count everything on the cards of one kit, and the kits.
    let uses = Uses::count(project);
    let kits = Kits::count(project, options.kits, options.reader);
    // Lay everything that has to be cut onto sheets, paper by paper.
    let wishes = wishes(project, options, &mut notes);
    let cuts = cut::cuts(project, &uses, &kits, wishes, &mut notes);
    // Put every layer in its place.
    let fronts = fronts::fronts(project, &mut notes);
    // Measure the finished cards, in their envelopes and for the post.
    let (fits, on_fits) = fit::fit(project, &fronts);
    notes.extend(on_fits);
    // Fill the shopping list.
    let supplies = supplies::supplies(project, &uses, &kits, &cuts);
    // Put the work in order, and see what can be done ahead.
    let work = work::work(project, &uses, &cuts, &mut notes);

    notes.sort_by_key(|note| (note.site.file, note.site.start));
    let sound = !notes.iter().any(Diagnostic::is_error);
    Outcome { value: sound.then_some(Plan { cuts, fronts, fits, supplies, work }), notes }
}

/// How the cutting is to be planned; a kept plan that can't be read is pointed out.
fn wishes<'a>(
    project: &Project,
    options: &'a PlanOptions,
    notes: &mut Vec<Diagnostic>,
) -> Wishes<'a> {
    let kept = match &options.kept {
        Some(Ok(kept)) => Some(kept),
        Some(Err(fault)) => {
            let (site, unit) = (project.title.site, project.unit);
            notes.push(cut::kept_not_followed(site, unit, fault));
            None
        }
        None => None,
    };
    Wishes { budget: options.budget, kept, alike: options.alike }
}

/// Looks at how the layers lie on the cards of a project, and plans nothing.
///
/// It serves where a description is at fault elsewhere, so that the faults of its
/// cards are told with the others.
pub fn check_cards(project: &Project) -> Vec<Diagnostic> {
    let mut notes = Vec::new();
    let _ = fronts::fronts(project, &mut notes);
    notes.retain(Diagnostic::is_error);
    notes
}
