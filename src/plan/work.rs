//! The tasks of a set and the order in which they are done.

use crate::plan::Good;
use crate::project::{BaseId, CardId, GreetingId, LateId, PaperId, Reader, ToolId, Work};

/// What is done in which order, and what of it is done ahead.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct WorkPlan {
    /// Every task; a task's needs stand before it.
    pub tasks: Vec<Task>,
    /// For each reader: which tasks are done before the packet reaches her.
    pub ahead: Vec<(Reader, Vec<TaskId>)>,
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
    /// Fixes a label on its mat.
    MatLabel(GreetingId),
    /// Cuts a piece again.
    LateCut(LateId),
    /// Fixes the so-and-so-many-th layer of a card's front.
    Attach(CardId, usize),
    /// Trims a layer flush from the inside.
    TrimFlush(CardId, usize),
    /// Stamps or writes the words inside.
    StampInside(CardId),
    /// Fixes a layer inside.
    AttachInside(CardId, usize),
    /// Fixes a layer on the envelope.
    AttachEnvelope(CardId, usize),
    /// Chooses and writes the words inside when the card is sent.
    ChooseInside(CardId),
}

/// What a reader still needs in her bag: what is used by tasks not done ahead.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Packing {
    /// Things to have at hand, each once.
    pub goods: Vec<Good>,
    /// Made parts to pack, by card: counts of pieces, labels, bases.
    pub parts: Vec<Packed>,
}

/// Parts that are packed for one card.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Packed {
    /// Which card.
    pub card: CardId,
    /// Layers whose parts are packed, by index.
    pub layers: Vec<usize>,
}
