//! What has to be done for a set, and what each task needs.

use std::collections::BTreeMap;

use crate::plan::cut::PaperCut;
use crate::plan::supplies::foam_under;
use crate::plan::uses::{Uses, layers};
use crate::plan::work::{Act, Task, TaskId};
use crate::project::{
    BaseFrom, BaseId, Card, CardId, Comes, GreetingId, LateId, Layer, Placed, Project,
    ToolId, ToolKind, Work,
};

/// A task before it has its place in the order.
pub(crate) struct Draft {
    /// The task; its needs are indexes of drafts.
    pub(crate) task: Task,
    /// Drafts that are better done before, where both are done by one person:
    /// a label is stamped before it is punched, words go inside before raised
    /// layers make the front uneven.
    pub(crate) after: Vec<usize>,
    /// At which moment of the work.
    pub(crate) moment: Moment,
}

/// When a task is done.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) enum Moment {
    /// For all cards in one go.
    Preparing,
    /// While this card is made.
    Card(usize),
    /// When the card is sent.
    Sending,
}

/// Everything that has to be done, in the order in which one would think of it.
pub(crate) fn tasks(project: &Project, uses: &Uses, cuts: &[PaperCut]) -> Vec<Draft> {
    let mut list = List { project, uses, drafts: Vec::new(), by_act: BTreeMap::new() };
    for cut in cuts {
        let tool = list.tool(|kind| matches!(kind, ToolKind::Trimmer(_)));
        list.add(Act::CutPaper(cut.paper), Work::Cut, Moment::Preparing).tool = tool;
    }
    let used = || (0..uses.greetings.len()).filter(|index| uses.greetings[*index] > 0);
    used().for_each(|index| list.greeting(GreetingId(index)));
    // Mats come after all labels, so that each is punched in one go.
    used().for_each(|index| list.mats(GreetingId(index)));
    for index in 0..project.late_cuts.len() {
        list.late_cut(LateId(index));
    }
    for (index, card) in project.cards.iter().enumerate() {
        list.words_inside(CardId(index), card);
    }
    for index in (0..uses.bases.len()).filter(|index| uses.bases[*index] > 0) {
        list.base(BaseId(index));
    }
    for (index, card) in project.cards.iter().enumerate() {
        list.card(CardId(index), card);
    }
    for (index, card) in project.cards.iter().enumerate() {
        if card.inside.chosen || !card.inside.among.is_empty() {
            let pen = list.tool(|kind| *kind == ToolKind::Pen);
            let act = Act::ChooseInside(CardId(index));
            let task = list.add(act, Work::Inside, Moment::Sending);
            (task.ink, task.times) = (card.inside.ink, card.count);
            task.tool = if card.inside.ink.is_none() { pen } else { None };
        }
    }
    list.drafts
}

/// The drafts so far, and where to find them.
struct List<'a> {
    project: &'a Project,
    uses: &'a Uses,
    drafts: Vec<Draft>,
    by_act: BTreeMap<Act, usize>,
}

impl List<'_> {
    /// Adds a task that is done once, without a tool, and needs nothing.
    fn add(&mut self, act: Act, work: Work, moment: Moment) -> &mut Task {
        let (needs, after) = (Vec::new(), Vec::new());
        let task = Task { work, act, needs, tool: None, ink: None, times: 1, waits: 0 };
        let index = self.drafts.len();
        self.by_act.insert(act, index);
        self.drafts.push(Draft { task, after, moment });
        &mut self.drafts[index].task
    }

    /// The task added last needs another, if there is such a task.
    fn needs(&mut self, act: Act) {
        let other = self.by_act.get(&act).copied();
        if let (Some(other), Some(draft)) = (other, self.drafts.last_mut()) {
            draft.task.needs.push(TaskId(other));
        }
    }

    /// The task added last is better done after another, if there is such a task.
    fn after(&mut self, act: Act) {
        let other = self.by_act.get(&act).copied();
        if let (Some(other), Some(draft)) = (other, self.drafts.last_mut()) {
            draft.after.push(other);
        }
    }

    /// The first tool of a kind.
    fn tool(&self, is: fn(&ToolKind) -> bool) -> Option<ToolId> {
        self.project.tools.iter().position(|tool| is(&tool.kind)).map(ToolId)
    }

    /// Tape or glue, and the minutes until it is dry.
    fn adhesive(&self, with: Option<ToolId>) -> (Option<ToolId>, u32) {
        let sticks =
            |kind: &ToolKind| matches!(kind, ToolKind::Tape | ToolKind::Glue { .. });
        let tool = with.or_else(|| self.tool(sticks));
        let dries = tool.map_or(0, |tool| match self.project.tools[tool.0].kind {
            ToolKind::Glue { dries } => dries,
            _ => 0,
        });
        (tool, dries)
    }

    /// Stamps and punches the labels of a greeting.
    fn greeting(&mut self, id: GreetingId) {
        let greeting = &self.project.greetings[id.0];
        let times = self.uses.greetings[id.0];
        let pen = self.tool(|kind| *kind == ToolKind::Pen);

        let task = self.add(Act::StampGreeting(id), Work::Stamp, Moment::Preparing);
        task.times = times;
        task.ink = greeting.ink;
        task.tool = greeting.stamps.or(if greeting.ink.is_none() { pen } else { None });
        self.needs(Act::CutPaper(greeting.of));

        if let Some(punch) = greeting.label.punch {
            let task = self.add(Act::PunchLabel(id), Work::Punch, Moment::Preparing);
            (task.times, task.tool) = (times, Some(punch));
            self.needs(Act::CutPaper(greeting.of));
            self.after(Act::StampGreeting(id));
        }
    }

    /// Punches the mats of a greeting and puts its labels on them.
    fn mats(&mut self, id: GreetingId) {
        let greeting = &self.project.greetings[id.0];
        let times = self.uses.greetings[id.0];
        if let Some(mat) = greeting.mat {
            if let Some(punched) = mat.punched {
                let task = self.add(Act::PunchMat(id), Work::Punch, Moment::Preparing);
                (task.times, task.tool) = (times, Some(punched.with));
                self.needs(Act::CutPaper(mat.of));
            }
            let (tool, waits) = self.adhesive(None);
            let task = self.add(Act::MatLabel(id), Work::Layer, Moment::Preparing);
            (task.times, task.tool, task.waits) = (times, tool, waits);
            self.needs(Act::CutPaper(mat.of));
            self.needs(Act::CutPaper(greeting.of));
            self.needs(Act::PunchMat(id));
            self.needs(Act::PunchLabel(id));
            self.after(Act::StampGreeting(id));
        }
    }

    /// Cuts a piece again, with the preparing or at the first card that needs it.
    fn late_cut(&mut self, id: LateId) {
        let late = &self.project.late_cuts[id.0];
        let times = self.uses.late_cuts(self.project, id);
        if times == 0 {
            return;
        }
        let uses =
            |layer: &Layer| matches!(layer.what, Placed::Late(late, _) if late == id);
        let mut cards = self.project.cards.iter();
        let first = cards.position(|card| layers(card).any(uses));
        let moment = match first {
            Some(card) if late.at_the_card => Moment::Card(card),
            Some(_) | None => Moment::Preparing,
        };
        let trimmer = || self.tool(|kind| matches!(kind, ToolKind::Trimmer(_)));
        let tool = late.with.or_else(trimmer);
        let of = self.project.pieces[late.piece.0].of;
        let task = self.add(Act::LateCut(id), Work::LateCut, moment);
        (task.times, task.tool) = (times, tool);
        self.needs(Act::CutPaper(of));
    }

    /// Stamps or writes the words inside, while the base still lies flat.
    fn words_inside(&mut self, id: CardId, card: &Card) {
        if card.inside.words.is_none() {
            return;
        }
        let pen = self.tool(|kind| *kind == ToolKind::Pen);
        let task = self.add(Act::StampInside(id), Work::Inside, Moment::Preparing);
        task.times = card.count;
        task.ink = card.inside.ink;
        task.tool = if card.inside.ink.is_none() { pen } else { None };
        self.needs_base_cut(card.base);
    }

    /// Scores and folds a base, as far as it does not come so. What is cut from a
    /// sheet is neither.
    fn base(&mut self, id: BaseId) {
        let base = &self.project.bases[id.0];
        let comes = match base.from {
            BaseFrom::Made(_) => Comes::Flat,
            BaseFrom::Bought(_) => base.comes,
        };
        let times = self.uses.bases[id.0];
        if comes == Comes::Flat {
            let tool = self.tool(|kind| *kind == ToolKind::ScoringTool);
            let folder = self.tool(|kind| *kind == ToolKind::Folder);
            let task = self.add(Act::ScoreBase(id), Work::Score, Moment::Preparing);
            (task.times, task.tool) = (times, tool.or(folder));
            self.needs_base_cut(id);
        }
        if comes != Comes::Folded {
            let tool = self.tool(|kind| *kind == ToolKind::Folder);
            let task = self.add(Act::FoldBase(id), Work::Fold, Moment::Preparing);
            (task.times, task.tool) = (times, tool);
            self.needs(Act::ScoreBase(id));
            for (card, _) in of_base(self.project, id) {
                self.after(Act::StampInside(CardId(card)));
            }
        }
    }

    /// Fixes the layers of a card, from the base upwards.
    fn card(&mut self, id: CardId, card: &Card) {
        for (index, layer) in card.layers.iter().enumerate() {
            self.attach(Act::Attach(id, index), id, card, layer);
            self.needs_base(card.base);
            if let Some(below) = index.checked_sub(1) {
                self.needs(Act::Attach(id, below));
                self.needs(Act::TrimFlush(id, below));
            }
            if layer.raised > 0 {
                self.after(Act::StampInside(id));
            }
            if layer.trim_flush {
                let cuts = |kind: &ToolKind| {
                    matches!(kind, ToolKind::Scissors | ToolKind::Knife)
                };
                let tool = self.tool(cuts);
                let act = Act::TrimFlush(id, index);
                let task = self.add(act, Work::Attach, Moment::Card(id.0));
                (task.times, task.tool) = (card.count, tool);
                self.needs(Act::Attach(id, index));
            }
        }
        for index in 0..card.extras.len() {
            let act = Act::AddExtra(id, index);
            self.add(act, Work::Attach, Moment::Card(id.0)).times = card.count;
            self.needs_base(card.base);
            if let Some(last) = card.layers.len().checked_sub(1) {
                self.needs(Act::Attach(id, last));
                self.needs(Act::TrimFlush(id, last));
            }
        }
        for (index, layer) in card.inside.layers.iter().enumerate() {
            self.attach(Act::AttachInside(id, index), id, card, layer);
            self.needs_base(card.base);
            self.after(Act::StampInside(id));
            if let Some(below) = index.checked_sub(1) {
                self.needs(Act::AttachInside(id, below));
            }
        }
        for (index, layer) in card.envelope.iter().enumerate() {
            self.attach(Act::AttachEnvelope(id, index), id, card, layer);
            if let Some(below) = index.checked_sub(1) {
                self.needs(Act::AttachEnvelope(id, below));
            }
        }
    }

    /// Adds the task that fixes a layer; it needs what the layer is made of.
    fn attach(&mut self, act: Act, id: CardId, card: &Card, layer: &Layer) {
        let (tool, waits) = if layer.raised > 0 {
            (foam_under(self.project, layer), 0)
        } else {
            self.adhesive(layer.with)
        };
        let task = self.add(act, Work::Attach, Moment::Card(id.0));
        (task.times, task.tool, task.waits) = (card.count, tool, waits);
        match layer.what {
            Placed::Piece(piece) => {
                self.needs(Act::CutPaper(self.project.pieces[piece.0].of));
            }
            Placed::Late(late, _) => self.needs(Act::LateCut(late)),
            Placed::Greeting(id) => {
                self.needs(Act::CutPaper(self.project.greetings[id.0].of));
                self.needs(Act::StampGreeting(id));
                self.needs(Act::PunchLabel(id));
                self.needs(Act::MatLabel(id));
            }
        }
    }

    /// The task added last needs the base cut, if it is cut from a sheet.
    fn needs_base_cut(&mut self, base: BaseId) {
        if let BaseFrom::Made(of) = self.project.bases[base.0].from {
            self.needs(Act::CutPaper(of));
        }
    }

    /// The task added last needs the base ready for layers: cut and scored, and
    /// better folded.
    fn needs_base(&mut self, base: BaseId) {
        self.needs_base_cut(base);
        self.needs(Act::ScoreBase(base));
        self.after(Act::FoldBase(base));
    }
}

/// The cards that are made on a base.
fn of_base(project: &Project, base: BaseId) -> impl Iterator<Item = (usize, &Card)> {
    project.cards.iter().enumerate().filter(move |(_, card)| card.base == base)
}
