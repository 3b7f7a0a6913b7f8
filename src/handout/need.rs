//! What to have at hand: tools and what is used up, with boxes to tick.

use std::collections::BTreeSet;

use crate::document::{Block, Marker, Section, Text};
use crate::handout::writer::Writer;
use crate::handout::{Hands, Wanted, of_blocks};
use crate::plan::{Act, Task, TaskId};
use crate::project::{Reader, Tool, ToolId, ToolKind};

pub(super) fn write(w: &Writer<'_>, wanted: &Wanted) -> Vec<Section> {
    let tasks: Vec<&Task> = w
        .mine()
        .filter(|(_, when)| wanted.when.is_none_or(|it| it == *when))
        .map(|(task, _)| task)
        .collect();
    let items = items(w, &tasks);
    if items.is_empty() {
        return Vec::new();
    }
    let reader = w.template.reader.word();
    let blocks = vec![Block::List(Marker::Box, items)];
    let when = match (w.template.hands, w.template.reader) {
        (Hands::Maker, _) => "maker",
        (Hands::Reader, _) => reader,
    };
    of_blocks("need", w.tell("need-title", &[("reader", when.into())]), blocks)
}

/// What some tasks take, as lines: the tools, and a pen that nobody listed.
pub(super) fn items(w: &Writer<'_>, tasks: &[&Task]) -> Vec<Text> {
    let tools = tools(w, tasks).into_iter().map(|it| item(w, it));
    tools.chain(pen(w, tasks)).collect()
}

/// A pen, if something is written by hand and none was listed.
pub(super) fn pen(w: &Writer<'_>, tasks: &[&Task]) -> Option<Text> {
    let by_hand = tasks.iter().any(|task| match task.act {
        Act::StampInside(card) => {
            let inside = &w.project.cards[card.0].inside;
            inside.ink.is_none() && inside.words.is_some()
        }
        Act::ChooseInside(_) => true,
        _ => false,
    });
    let has_pen = w.project.tools.iter().any(|it| it.kind == ToolKind::Pen);
    (by_hand && !has_pen).then(|| w.tell("need-pen", &[]))
}

/// The tasks that are done at the table of the class, or by the reader.
pub(super) fn at_table<'a>(w: &Writer<'a>) -> Vec<&'a Task> {
    let ahead = w.plan.work.ahead(w.template.reader);
    let tasks = w.plan.work.tasks.iter().enumerate();
    tasks.filter(|(at, _)| !ahead.contains(&TaskId(*at))).map(|it| it.1).collect()
}

/// The tools that whoever holds the handout has to see to: those of her own work,
/// and if she is the host those of the table.
pub(super) fn provided(w: &Writer<'_>) -> BTreeSet<ToolId> {
    let mut tasks: Vec<&Task> = w.mine().map(|it| it.0).collect();
    if w.template.hands == Hands::Maker && w.template.reader == Reader::Class {
        tasks.extend(at_table(w));
    }
    tools(w, &tasks)
}

/// The tools of some tasks, in the order of the project.
pub(super) fn tools(w: &Writer<'_>, tasks: &[&Task]) -> BTreeSet<ToolId> {
    let mut used = BTreeSet::new();
    let first = |is: fn(&ToolKind) -> bool| {
        w.project.tools.iter().position(|it| is(&it.kind)).map(ToolId)
    };
    for task in tasks {
        used.extend(task.tool);
        used.extend(task.ink);
        match task.act {
            Act::CutPaper(_) if task.tool.is_none() => {
                used.extend(first(|it| matches!(it, ToolKind::Trimmer(_))));
            }
            Act::Attach(card, layer) => {
                used.extend(w.fixed_with(&w.project.cards[card.0].layers[layer]));
            }
            Act::AttachInside(card, layer) => {
                let layers = &w.project.cards[card.0].inside.layers;
                used.extend(w.fixed_with(&layers[layer]));
            }
            Act::AttachEnvelope(card, layer) => {
                used.extend(w.fixed_with(&w.project.cards[card.0].envelope[layer]));
            }
            Act::MatLabel(_) => used.extend(w.adhesive()),
            Act::FoldBase(_) => used.extend(first(|it| *it == ToolKind::Folder)),
            Act::ScoreBase(_) => used.extend(first(|it| *it == ToolKind::ScoringTool)),
            Act::ChooseInside(_) => used.extend(first(|it| *it == ToolKind::Pen)),
            Act::StampInside(card) => {
                used.extend(w.project.cards[card.0].inside.ink);
            }
            _ => {}
        }
    }
    // Foam squares are counted out with the pieces.
    let tools: &[Tool] = &w.project.tools;
    used.retain(|it| !matches!(tools[it.0].kind, ToolKind::Foam { .. }));
    used
}

/// A tool, and what does instead.
pub(super) fn item(w: &Writer<'_>, tool: ToolId) -> Text {
    let name = w.tool(tool);
    match &w.project.tools[tool.0].instead {
        Some(instead) => {
            let instead = w.user(instead);
            let values = [("tool", name.into()), ("instead", instead.into())];
            w.tell("need-instead", &values)
        }
        None => name,
    }
}
