//! The tasks of a set and the order in which they are done.

mod ahead;
mod fewest;
mod order;
mod tasks;

use crate::diag::Diagnostic;
use crate::plan::cut::PaperCut;
use crate::plan::uses::Uses;
use crate::project::{
    BaseId, CardId, GreetingId, LateId, PaperId, Project, Reader, ToolId, Work,
};

/// What is done in which order, and what of it is done ahead.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct WorkPlan {
    /// Every task; a task's needs stand before it. First what is prepared for all
    /// cards, with as few changes of tool and ink as can be; then card by card;
    /// last what is chosen when a card is sent.
    pub tasks: Vec<Task>,
    /// For each reader, in the order of [`Reader::ALL`]: which tasks are done before the packet reaches her.
    pub ahead: Vec<(Reader, Vec<TaskId>)>,
    /// No order of the preparing changes tool and ink less often.
    pub fewest: bool,
}

/// Index of a [`Task`].
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct TaskId(pub usize);

/// Something that is done in one go.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Task {
    /// What kind of work it is, for "done ahead".
    pub work: Work,
    /// What is done.
    pub act: Act,
    /// What must be done before.
    pub needs: Vec<TaskId>,
    /// The tool in hand.
    pub tool: Option<ToolId>,
    /// The ink, when stamping.
    pub ink: Option<ToolId>,
    /// How often it is done in one kit.
    pub times: u32,
    /// Minutes that must pass before what needs it may begin (drying).
    pub waits: u32,
}

/// What a task does.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Act {
    /// Cuts the sheets of a paper by its cutting steps.
    CutPaper(PaperId),
    /// Scores the fold of a base.
    ScoreBase(BaseId),
    /// Folds a base.
    FoldBase(BaseId),
    /// Stamps a greeting on its strip or label.
    StampGreeting(GreetingId),
    /// Punches the label of a greeting.
    PunchLabel(GreetingId),
    /// Punches the mat under the label of a greeting.
    PunchMat(GreetingId),
    /// Fixes a label on its mat.
    MatLabel(GreetingId),
    /// Cuts a piece again.
    LateCut(LateId),
    /// Fixes the so-and-so-many-th layer of a card's front.
    Attach(CardId, usize),
    /// Trims a layer flush from the inside.
    TrimFlush(CardId, usize),
    /// Puts the so-and-so-many-th extra onto a card.
    AddExtra(CardId, usize),
    /// Stamps or writes the words inside.
    StampInside(CardId),
    /// Fixes a layer inside.
    AttachInside(CardId, usize),
    /// Fixes a layer on the envelope.
    AttachEnvelope(CardId, usize),
    /// Chooses and writes the words inside when the card is sent.
    ChooseInside(CardId),
}

impl Act {
    /// The card that it is done to, if it is done to one.
    pub const fn card(self) -> Option<CardId> {
        match self {
            Self::Attach(card, _)
            | Self::TrimFlush(card, _)
            | Self::AddExtra(card, _)
            | Self::StampInside(card)
            | Self::AttachInside(card, _)
            | Self::AttachEnvelope(card, _)
            | Self::ChooseInside(card) => Some(card),
            Self::CutPaper(_)
            | Self::ScoreBase(_)
            | Self::FoldBase(_)
            | Self::StampGreeting(_)
            | Self::PunchLabel(_)
            | Self::PunchMat(_)
            | Self::MatLabel(_)
            | Self::LateCut(_) => None,
        }
    }
}

impl WorkPlan {
    /// The tasks that are done before the packet reaches a reader, in order.
    pub fn ahead(&self, reader: Reader) -> &[TaskId] {
        let mut rows = self.ahead.iter();
        rows.find(|(of, _)| *of == reader).map_or(&[], |(_, tasks)| tasks)
    }

    /// How often the tool or the ink is changed over all tasks. The first one in
    /// hand is no change; work without a tool leaves it lying ready.
    pub fn changes(&self) -> u32 {
        let count = |of: fn(&Task) -> Option<ToolId>| {
            let mut hand: Vec<ToolId> = self.tasks.iter().filter_map(of).collect();
            hand.dedup();
            u32::try_from(hand.len()).unwrap_or(u32::MAX).saturating_sub(1)
        };
        count(|task| task.tool).saturating_add(count(|task| task.ink))
    }
}

/// Lists the tasks of a set, puts them in order, and sees what is done ahead.
pub(crate) fn work(
    project: &Project,
    uses: &Uses,
    cuts: &[PaperCut],
    notes: &mut Vec<Diagnostic>,
) -> WorkPlan {
    let drafts = tasks::tasks(project, uses, cuts);
    let (order, fewest) = order::order(&drafts, project.in_batches);
    let tasks = order::arranged(drafts, &order);
    let ahead = ahead::ahead(project, &tasks, notes);
    WorkPlan { tasks, ahead, fewest }
}
