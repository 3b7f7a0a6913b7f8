//! What a reader still needs in her bag.

use std::collections::BTreeSet;

use crate::plan::supplies::foam_under;
use crate::plan::uses::paper_of;
use crate::plan::{Act, Good, Task, WorkPlan};
use crate::project::{
    CardId, Layer, PaperId, Placed, Project, Reader, Stock, ToolId, ToolKind,
};

/// What a reader still needs in her bag: what is used by tasks not done ahead.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Packing {
    /// Things to have at hand, each once.
    pub goods: Vec<Good>,
    /// Made parts to pack, by card; cards without any are left out.
    pub parts: Vec<Packed>,
}

/// Parts that are packed for one card.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Packed {
    /// Which card.
    pub card: CardId,
    /// Layers of its front whose parts are packed, by index.
    pub layers: Vec<usize>,
    /// Layers of its inside.
    pub inside: Vec<usize>,
    /// Layers of its envelope.
    pub envelope: Vec<usize>,
}

impl WorkPlan {
    /// What goes into the bag of a reader.
    ///
    /// Sheets go in whole where she cuts them, else the parts that were cut. A
    /// base goes in as long as anything is done to one of its cards. Envelopes
    /// always go in.
    pub fn packing(&self, project: &Project, reader: Reader) -> Packing {
        let ahead: BTreeSet<Act> =
            self.ahead(reader).iter().map(|id| self.tasks[id.0].act).collect();
        let left = || self.tasks.iter().filter(|task| !ahead.contains(&task.act));
        let mut goods = BTreeSet::new();
        for task in left() {
            goods.extend(task.ink.map(Good::Tool));
            goods.extend(task.tool.map(|tool| tool_good(project, tool)));
            goods.extend(used(project, task, &ahead));
        }
        for card in &project.cards {
            if project.bases[card.base.0].envelope.is_some() {
                goods.insert(Good::Envelopes(card.base));
            }
        }
        Packing { goods: goods.into_iter().collect(), parts: parts(project, &ahead) }
    }
}

/// What a task that the reader does uses, besides its tool and ink.
fn used(project: &Project, task: &Task, ahead: &BTreeSet<Act>) -> Vec<Good> {
    let cut = |paper: PaperId| ahead.contains(&Act::CutPaper(paper));
    match task.act {
        Act::CutPaper(paper) => match project.papers[paper.0].stock {
            Stock::Sheets(_) => vec![Good::Sheets(paper)],
            Stock::Scraps(..) => vec![Good::Scraps(paper)],
        },
        Act::ScoreBase(base) | Act::FoldBase(base) => vec![Good::Bases(base)],
        Act::StampGreeting(id)
        | Act::PunchLabel(id)
        | Act::PunchMat(id)
        | Act::MatLabel(id) => {
            let here = cut(project.greetings[id.0].of);
            if here { vec![Good::Labels(id)] } else { Vec::new() }
        }
        Act::Attach(card, index) => {
            let card = &project.cards[card.0];
            let layer = &card.layers[index];
            let any_foam = layer.raised > 0 && foam_under(project, layer).is_none();
            let foam = any_foam.then_some(Good::AnyFoam);
            [Some(Good::Bases(card.base)), foam].into_iter().flatten().collect()
        }
        Act::TrimFlush(card, _)
        | Act::StampInside(card)
        | Act::AttachInside(card, _)
        | Act::AddExtra(card, _)
        | Act::ChooseInside(card) => vec![Good::Bases(project.cards[card.0].base)],
        Act::LateCut(_) | Act::AttachEnvelope(..) => Vec::new(),
    }
}

fn tool_good(project: &Project, tool: ToolId) -> Good {
    match project.tools[tool.0].kind {
        ToolKind::Foam { .. } => Good::Foam(tool),
        _ => Good::Tool(tool),
    }
}

/// The layers that are still to be fixed and whose parts are cut already.
fn parts(project: &Project, ahead: &BTreeSet<Act>) -> Vec<Packed> {
    let is_cut = |what: Placed| {
        let paper = paper_of(project, what);
        ahead.contains(&Act::CutPaper(paper))
    };
    let mut all = Vec::new();
    for (index, card) in project.cards.iter().enumerate() {
        let id = CardId(index);
        let packed = |layers: &[Layer], act: fn(CardId, usize) -> Act| {
            let rows = layers.iter().enumerate();
            rows.filter(|(at, layer)| {
                !ahead.contains(&act(id, *at)) && is_cut(layer.what)
            })
            .map(|(at, _)| at)
            .collect::<Vec<_>>()
        };
        let packed = Packed {
            card: id,
            layers: packed(&card.layers, Act::Attach),
            inside: packed(&card.inside.layers, Act::AttachInside),
            envelope: packed(&card.envelope, Act::AttachEnvelope),
        };
        if !(packed.layers.is_empty()
            && packed.inside.is_empty()
            && packed.envelope.is_empty())
        {
            all.push(packed);
        }
    }
    all
}
