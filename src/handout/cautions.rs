//! What can hurt in the work that the reader does herself, and how it does not.
//!
//! The form is that of ANSI Z535.6: signal word, hazard, consequence, avoidance;
//! "notice" without a triangle where only things can be spoiled. The weights are
//! our judgement (common practice, no source).

use std::collections::BTreeSet;

use crate::document::{Block, Caution, Section, Tone};
use crate::handout::writer::Writer;
use crate::handout::{Wanted, When, of_blocks};
use crate::plan::{Act, Task};
use crate::project::{Reader, ToolKind, TrimmerKind};

/// What can hurt or spoil, the graver first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
enum Hazard {
    Lever,
    Heat,
    SmallParts,
    Moving,
    Luggage,
    Sliding,
    Rotary,
    Knife,
    Scissors,
    Punch,
    Glue,
    Ink,
    HotCar,
    Order,
}

pub(super) fn write(w: &Writer<'_>, wanted: &Wanted) -> Vec<Section> {
    let tasks = || {
        let mine = w.mine();
        mine.filter(|(_, when)| wanted.when.is_none_or(|it| it == *when))
    };
    let mut hazards: BTreeSet<Hazard> =
        tasks().flat_map(|(task, _)| of_task(w, task)).collect();
    let reader = w.template.reader;
    if reader == Reader::Travel {
        let on_the_way = |bad: fn(&Hazard) -> bool| {
            tasks()
                .filter(|(_, when)| *when == When::Here)
                .any(|(task, _)| of_task(w, task).iter().any(bad))
        };
        if on_the_way(|it| is_blade(*it) || *it == Hazard::Heat) {
            hazards.insert(Hazard::Moving);
        }
        if on_the_way(|it| is_blade(*it)) {
            hazards.insert(Hazard::Luggage);
        }
        if on_the_way(|it| matches!(*it, Hazard::Ink | Hazard::Glue)) {
            // It says for the way what these two say for a table.
            hazards.insert(Hazard::HotCar);
            hazards.remove(&Hazard::Ink);
            hazards.remove(&Hazard::Glue);
        }
    }
    let raised = w.plan.fronts.iter().any(|front| {
        let layers = front.layers.iter().chain(&front.inside).chain(&front.envelope);
        layers.into_iter().any(|it| it.raised > 0)
    });
    if reader == Reader::Kit && raised {
        hazards.insert(Hazard::SmallParts);
    }
    let mut blocks: Vec<Block> =
        hazards.into_iter().map(|it| Block::Caution(caution(w, it))).collect();
    // Her own come after the usual ones, with the middle weight.
    blocks.extend(w.project.cautions.iter().map(|it| {
        let signal = w.say("signal", &[("weight", "caution".into())]);
        Block::Caution(Caution { signal, triangle: true, text: w.user(it) })
    }));
    if !blocks.is_empty() {
        blocks.push(Block::Paragraph(Tone::Body, w.tell("caution-last", &[])));
    }
    of_blocks("cautions", w.tell("cautions-title", &[]), blocks)
}

fn is_blade(hazard: Hazard) -> bool {
    use Hazard::{Knife, Lever, Rotary, Scissors, Sliding};
    matches!(hazard, Lever | Sliding | Rotary | Knife | Scissors)
}

/// What can hurt in a task.
fn of_task(w: &Writer<'_>, task: &Task) -> Vec<Hazard> {
    let mut found = Vec::new();
    let tools = &w.project.tools;
    let trimmer = || tools.iter().find(|it| matches!(it.kind, ToolKind::Trimmer(_)));
    let tool = match (task.tool, task.act) {
        (Some(tool), _) => Some(&tools[tool.0]),
        (None, Act::CutPaper(_)) => trimmer(),
        (None, _) => None,
    };
    match tool.map(|it| &it.kind) {
        Some(ToolKind::Trimmer(trimmer)) => found.push(match trimmer.kind {
            TrimmerKind::Sliding => Hazard::Sliding,
            TrimmerKind::Lever => Hazard::Lever,
            TrimmerKind::Rotary => Hazard::Rotary,
        }),
        Some(ToolKind::Punch(_)) => found.push(Hazard::Punch),
        Some(ToolKind::Scissors) => found.push(Hazard::Scissors),
        Some(ToolKind::Knife) => found.push(Hazard::Knife),
        Some(ToolKind::Heat) => found.push(Hazard::Heat),
        Some(ToolKind::Glue { .. }) => found.push(Hazard::Glue),
        Some(_) => {}
        None => match task.act {
            Act::CutPaper(_) => found.push(Hazard::Knife),
            Act::LateCut(_) | Act::TrimFlush(..) => found.push(Hazard::Scissors),
            _ => {}
        },
    }
    if task.ink.is_some() {
        found.push(Hazard::Ink);
    }
    if matches!(task.act, Act::CutPaper(_)) {
        found.push(Hazard::Order);
    }
    found
}

fn caution(w: &Writer<'_>, hazard: Hazard) -> Caution {
    use Hazard::{Glue, Heat, HotCar, Ink, Lever, Order, SmallParts};
    let weight = match hazard {
        Lever | Heat | SmallParts => "warning",
        Ink | Glue | HotCar | Order => "notice",
        _ => "caution",
    };
    let text = match hazard {
        Lever => w.tell("caution-lever", &[]),
        Heat => w.tell("caution-heat", &[]),
        SmallParts => w.tell("caution-small-parts", &[]),
        Hazard::Moving => w.tell("caution-moving", &[]),
        Hazard::Luggage => w.tell("caution-luggage", &[]),
        Hazard::Sliding => w.tell("caution-sliding", &[]),
        Hazard::Rotary => w.tell("caution-rotary", &[]),
        Hazard::Knife => w.tell("caution-knife", &[]),
        Hazard::Scissors => w.tell("caution-scissors", &[]),
        Hazard::Punch => w.tell("caution-punch", &[]),
        Glue => w.tell("caution-glue", &[]),
        Ink => w.tell("caution-ink", &[]),
        HotCar => w.tell("caution-hot-car", &[]),
        Order => w.tell("caution-order", &[]),
    };
    Caution {
        signal: w.say("signal", &[("weight", weight.into())]),
        triangle: weight != "notice",
        text,
    }
}
