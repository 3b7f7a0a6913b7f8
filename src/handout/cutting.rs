//! The steps at the trimmer: the part in hand, its edge, the mark, what comes
//! off and what stays.

use std::collections::BTreeSet;

use crate::document::{Block, Figure, Inline, ScaleWish, Section, Step, Text, Tone};
use crate::geom::Rect;
use crate::handout::prepare::edge_along;
use crate::handout::writer::{Writer, sentences};
use crate::handout::{Drawings, Kind, Wanted, cut_plan, of_blocks, sheets};
use crate::plan::Act;
use crate::plan::cut::{self, Becomes, Hand, PaperCut};
use crate::project::{FaceId, ToolKind, Trimmer};

/// The drawings of the first paper share this scale, those of the next the next.
const STEPS: u32 = 10;

/// With so many steps a way with fewer is pointed out again.
const MANY_STEPS: usize = 12;

/// So many piles of parts laid aside can be told apart without slips.
const FEW_PILES: usize = 3;

/// Of more plans than this it is not said one by one what gets the difference.
const MOST_SLACK: usize = 2;

pub(super) fn write(w: &Writer<'_>, wanted: &Wanted) -> Vec<Section> {
    let mine = w.plan.cuts.iter().filter(|it| w.is_mine(Act::CutPaper(it.paper)));
    mine.flat_map(|cut| section(w, wanted, cut)).collect()
}

fn section(w: &Writer<'_>, wanted: &Wanted, cut: &PaperCut) -> Vec<Section> {
    let schedule = &cut.schedule;
    if schedule.steps.is_empty() {
        return Vec::new();
    }
    let drawings = wanted.drawings != Drawings::LeftOut && sheets::draws_steps(cut);
    let steps = (0..schedule.steps.len()).map(|at| Step {
        number: (at + 1).to_string(),
        text: text(w, cut, at),
        aside: Some(vec![Inline::plain(w.words.length(schedule.steps[at].mark))]),
        figure: drawings.then(|| figure(w, cut, at)),
    });
    let mut intro = vec![before(w, cut)];
    if drawings {
        let scale = ScaleWish::shared_by(scale_number(cut));
        intro.push(w.tell("cutting-scale", &[("scale", scale.into())]));
    }
    let mut blocks = vec![Block::Paragraph(Tone::Body, sentences(intro))];
    let planned = w.template.sections.iter().any(|it| it.kind == Kind::CutPlan);
    if schedule.steps.len() >= MANY_STEPS && !planned {
        // Who looks at so many steps should know that there is a shorter way; where
        // the plan is drawn it is told there.
        let shorter = cut_plan::alike_instead(w, cut);
        blocks.extend(shorter.map(|text| Block::Paragraph(Tone::Body, text)));
    }
    blocks.push(Block::Steps(steps.collect()));
    let paper = w.user(&w.project.papers[cut.paper.0].name);
    let title = w.tell("cutting-title", &[("paper", paper.into())]);
    of_blocks(&format!("cutting-{}", cut.paper.0 + 1), title, blocks)
}

/// The number of the scale that the steps of a paper share.
fn scale_number(cut: &PaperCut) -> u32 {
    STEPS.saturating_add(u32::try_from(cut.paper.0).unwrap_or(0))
}

fn trimmer<'a>(w: &Writer<'a>) -> Option<&'a Trimmer> {
    w.project.tools.iter().find_map(|it| match &it.kind {
        ToolKind::Trimmer(trimmer) => Some(trimmer),
        _ => None,
    })
}

/// What holds for all steps.
fn before(w: &Writer<'_>, cut: &PaperCut) -> Text {
    let schedule = &cut.schedule;
    let proven = if schedule.proven { "yes" } else { "no" };
    let values = [("marks", schedule.marks.into()), ("proven", proven.into())];
    let first = w.plan.cuts.iter().find(|it| w.is_mine(Act::CutPaper(it.paper)));
    let mut all = Vec::new();
    if first.is_some_and(|it| it.paper == cut.paper) {
        all.push(w.tell("cutting-mark", &[]));
    }
    all.push(w.tell("cutting-marks", &values));
    let several = schedule.steps.iter().any(|it| it.parts_in_hand() > 1);
    match trimmer(w) {
        Some(trimmer) if several && trimmer.sheets_at_once > 1 => {
            let count = trimmer.sheets_at_once.into();
            all.push(w.tell("cutting-stack", &[("count", count)]));
        }
        _ if several => all.push(w.tell("cutting-each", &[])),
        _ => {}
    }
    if piles(cut) > FEW_PILES {
        all.push(w.tell("cutting-slips", &[]));
    }
    if sheets::directed(w, cut) {
        all.push(w.tell("cutting-edges", &[]));
    }
    all.extend(slack(w, cut));
    sentences(all)
}

/// How many piles wait on the table at once, at most.
fn piles(cut: &PaperCut) -> usize {
    let mut waiting = BTreeSet::new();
    let mut most = 0;
    for step in &cut.schedule.steps {
        if let Hand::Aside(aside) = step.hand {
            waiting.remove(&aside);
        }
        let laid = step.off.iter().chain([&step.stays]);
        waiting.extend(laid.filter_map(|it| match it.1 {
            Becomes::Aside(aside) => Some(aside),
            _ => None,
        }));
        most = most.max(waiting.len());
    }
    most
}

/// What takes up the difference if a sheet is not as large as it should be; nothing
/// where it only shows in what is left over.
fn slack(w: &Writer<'_>, cut: &PaperCut) -> Vec<Text> {
    let mut all = Vec::new();
    let plans = count(cut.patterns.len() as u64);
    let found = cut::slack(cut);
    if found.len() > MOST_SLACK {
        return vec![w.tell("slack-many", &[])];
    }
    for it in found {
        let sheets = cut.patterns.get(it.pattern).map_or(1, |it| it.copies);
        for (way, rows) in [("width", &it.in_width), ("height", &it.in_height)] {
            let parts = rows.iter().filter_map(|row| {
                let name = w.part_named(cut.parts.get(row.part)?);
                let whole = if row.count == row.of { "yes" } else { "no" };
                let values = [
                    ("name", name.into()),
                    ("count", row.count.into()),
                    ("all", whole.into()),
                ];
                Some(w.tell("slack-part", &values))
            });
            let parts: Vec<Text> = parts.collect();
            if parts.is_empty() {
                continue;
            }
            let one = match rows.as_slice() {
                [row] => row.count == 1 || row.count == row.of,
                _ => false,
            };
            let values = [
                ("plans", plans.into()),
                ("plan", count(it.pattern as u64 + 1).into()),
                ("sheets", sheets.into()),
                ("way", way.into()),
                ("parts", w.list(parts).into()),
                ("count", if one { 1 } else { 2 }.into()),
            ];
            all.push(w.tell("slack", &values));
        }
    }
    all
}

fn text(w: &Writer<'_>, cut: &PaperCut, at: usize) -> Text {
    let step = &cut.schedule.steps[at];
    let mut all = vec![take(w, cut, at)];
    let values = [
        ("edge", edge(w, cut, step).into()),
        ("mark", vec![Inline::strong(w.words.length(step.mark))].into()),
        ("moves", if step.moves { "yes" } else { "no" }.into()),
        ("times", step.times.into()),
        ("count", count(step.parts_in_hand()).into()),
    ];
    all.push(w.tell("line-up", &values));
    match all_aside(w, cut, at) {
        Some(text) => all.push(text),
        None => all.extend([comes_off(w, cut, at), stays(w, cut, at)]),
    }
    if step.hard_to_hold {
        all.push(w.tell("hard-to-hold", &[]));
    }
    sentences(all)
}

/// A number for words; the many that don't fit are all "many".
fn count(number: u64) -> u32 {
    u32::try_from(number).unwrap_or(u32::MAX)
}

/// What is taken in hand.
fn take(w: &Writer<'_>, cut: &PaperCut, at: usize) -> Text {
    let step = &cut.schedule.steps[at];
    let size = w.words.size(step.in_hand.size);
    let number = count(step.parts_in_hand());
    let turn = if step.turn { "yes" } else { "no" };
    match step.hand {
        Hand::Sheet => {
            let paper = w.user(&w.project.papers[cut.paper.0].name);
            let plans = count(cut.patterns.len() as u64);
            let plan = count(step.pattern as u64 + 1);
            let values = [
                ("count", number.into()),
                ("paper", paper.into()),
                ("plans", plans.into()),
                ("plan", plan.into()),
            ];
            let take = w.tell("take-sheet", &values);
            let up = match (w.back_of(cut.paper, FaceId(0)), w.face(cut.paper, FaceId(0)))
            {
                (Some(_), Some(face)) => {
                    w.tell("sheet-face-up", &[("face", face.into())])
                }
                _ => Text::new(),
            };
            sentences([take, up])
        }
        Hand::Aside(aside) => {
            let from = made_in(cut, aside, at).unwrap_or(at);
            let values = [
                ("count", number.into()),
                ("size", size.into()),
                ("step", count(from as u64 + 1).into()),
                ("turn", turn.into()),
            ];
            w.tell("take-aside", &values)
        }
        Hand::Same => {
            let values =
                [("count", number.into()), ("size", size.into()), ("turn", turn.into())];
            w.tell("go-on", &values)
        }
    }
}

/// The last step before one in which a part was laid aside.
fn made_in(cut: &PaperCut, aside: u32, before: usize) -> Option<usize> {
    cut.schedule.steps[..before].iter().rposition(|step| {
        let mut parts = step.off.iter().chain([&step.stays]);
        parts.any(|it| it.1 == Becomes::Aside(aside))
    })
}

/// The first step after one in which a part that was laid aside is taken in hand
/// again.
fn used_in(cut: &PaperCut, aside: u32, after: usize) -> u32 {
    let steps = cut.schedule.steps.iter().enumerate().skip(after + 1);
    let mut used = steps.filter(|it| it.1.hand == Hand::Aside(aside));
    used.next().map_or(0, |(at, _)| count(at as u64 + 1))
}

/// The edge that is lined up: by its side where the pattern tells which is the
/// top, else by its length alone.
fn edge(w: &Writer<'_>, cut: &PaperCut, step: &cut::Step) -> String {
    let size = step.in_hand.size;
    let length = w.words.length(size.along(step.axis));
    if sheets::directed(w, cut) {
        let edge = w.edge(sheets::rule_side(step));
        return w
            .say("edge-of-length", &[("edge", edge.into()), ("length", length.into())]);
    }
    let which = edge_along(size, step.axis);
    w.say("edge-by-length", &[("which", which.into()), ("length", length.into())])
}

/// Where everything goes if what comes off and what stays are laid aside together.
fn all_aside(w: &Writer<'_>, cut: &PaperCut, at: usize) -> Option<Text> {
    let step = &cut.schedule.steps[at];
    let (rect, becomes) = step.stays;
    let Becomes::Aside(aside) = becomes else { return None };
    let alike = |off: &(Rect, Becomes)| off.1 == becomes && off.0.size == rect.size;
    if !step.off.iter().all(alike) {
        return None;
    }
    let cut_from_each = step.off.len() as u64 + 1;
    let all = count(step.parts_in_hand().saturating_mul(cut_from_each));
    let values = [
        ("count", all.into()),
        ("size", w.words.size(rect.size).into()),
        ("step", used_in(cut, aside, at).into()),
    ];
    Some(w.tell("all-aside", &values))
}

/// What becomes of what comes off; all of it is of one size.
fn comes_off(w: &Writer<'_>, cut: &PaperCut, at: usize) -> Text {
    let step = &cut.schedule.steps[at];
    let Some(&(rect, becomes)) = step.off.first() else { return Text::new() };
    if step.off.iter().any(|it| it.1 != becomes) {
        return sorted(w, cut, at);
    }
    let total = count(step.parts_in_hand().saturating_mul(step.off.len() as u64));
    let mut values =
        vec![("count", total.into()), ("size", w.words.size(rect.size).into())];
    match becomes {
        Becomes::Part(part) => {
            let Some(part) = cut.parts.get(part) else { return Text::new() };
            let strokes = count(step.off.len() as u64);
            let name = w.part_named(part).into();
            let values =
                [("count", strokes.into()), ("total", total.into()), ("name", name)];
            w.tell("off-part", &values)
        }
        Becomes::Aside(aside) => {
            values.push(("step", used_in(cut, aside, at).into()));
            w.tell("off-aside", &values)
        }
        Becomes::InHand => w.tell("off-in-hand", &values),
        Becomes::Keep => {
            let large = if sheets::is_large(rect.size) { "yes" } else { "no" };
            values.push(("large", large.into()));
            w.tell("off-keep", &values)
        }
        Becomes::Waste => w.tell("off-waste", &values),
    }
}

/// Parts that come off together and go different ways, each way with its number.
fn sorted(w: &Writer<'_>, cut: &PaperCut, at: usize) -> Text {
    let step = &cut.schedule.steps[at];
    let number = |of: usize| {
        count(step.parts_in_hand().saturating_mul(of.try_into().unwrap_or(u64::MAX)))
    };
    let size = step.off[0].0.size;
    let mut ways: Vec<Becomes> = step.off.iter().map(|it| it.1).collect();
    // Finished pieces first, then what is needed first.
    ways.sort_by_key(|it| match *it {
        Becomes::Aside(aside) => (Becomes::Aside(0), used_in(cut, aside, at)),
        other => (other, 0),
    });
    ways.dedup();
    let share = |way: &Becomes| {
        let many = number(step.off.iter().filter(|it| it.1 == *way).count());
        let mut values = vec![("count", many.into())];
        let message = match *way {
            Becomes::Part(part) => {
                values.push(("name", w.part_named(cut.parts.get(part)?).into()));
                "share-part"
            }
            Becomes::Aside(aside) => {
                values.push(("step", used_in(cut, aside, at).into()));
                "share-aside"
            }
            Becomes::InHand => "share-in-hand",
            Becomes::Keep => {
                let large = if sheets::is_large(size) { "yes" } else { "no" };
                values.push(("large", large.into()));
                "share-keep"
            }
            Becomes::Waste => "share-waste",
        };
        Some(w.tell(message, &values))
    };
    let shares = w.list(ways.iter().filter_map(share).collect());
    let values = [
        ("count", number(step.off.len()).into()),
        ("size", w.words.size(size).into()),
        ("shares", shares.into()),
    ];
    w.tell("off-mixed", &values)
}

/// What becomes of what stays.
fn stays(w: &Writer<'_>, cut: &PaperCut, at: usize) -> Text {
    let step = &cut.schedule.steps[at];
    let (rect, becomes) = step.stays;
    let size = w.words.size(rect.size);
    let total = count(step.parts_in_hand());
    match becomes {
        Becomes::Part(part) => {
            let Some(part) = cut.parts.get(part) else { return Text::new() };
            let also = step.off.iter().any(|it| it.1 == becomes);
            let also = if also { "yes" } else { "no" };
            let values = [
                ("name", w.part_named(part).into()),
                ("also", also.into()),
                ("total", total.into()),
            ];
            let stays = w.tell("stays-part", &values);
            let check = if step.slack {
                let values = [("size", size.into()), ("total", total.into())];
                w.tell("stays-check", &values)
            } else {
                Text::new()
            };
            sentences([stays, check])
        }
        Becomes::Aside(aside) => {
            let step = used_in(cut, aside, at);
            let values =
                [("size", size.into()), ("step", step.into()), ("total", total.into())];
            w.tell("stays-aside", &values)
        }
        Becomes::InHand => {
            w.tell("stays-in-hand", &[("size", size.into()), ("total", total.into())])
        }
        Becomes::Keep => {
            let large = if sheets::is_large(rect.size) { "yes" } else { "no" };
            let values =
                [("size", size.into()), ("large", large.into()), ("total", total.into())];
            w.tell("stays-keep", &values)
        }
        Becomes::Waste => {
            w.tell("stays-waste", &[("size", size.into()), ("total", total.into())])
        }
    }
}

fn figure(w: &Writer<'_>, cut: &PaperCut, at: usize) -> Figure {
    let step = &cut.schedule.steps[at];
    let size = |size| Inline::plain(w.words.size(size));
    let mut off: Vec<Text> = Vec::new();
    for (rect, _) in &step.off {
        let rect: Text = vec![size(rect.size)];
        if !off.contains(&rect) {
            off.push(rect);
        }
    }
    let values = [
        ("number", count(at as u64 + 1).into()),
        ("size", w.words.size(step.in_hand.size).into()),
        ("edge", edge(w, cut, step).into()),
        ("mark", w.words.length(step.mark).into()),
        ("off", w.list(off).into()),
    ];
    Figure {
        drawing: sheets::in_hand(w, cut, step),
        alt: w.say("step-alt", &values),
        caption: None,
        scale: ScaleWish::Shared(scale_number(cut)),
        says_scale: false,
    }
}
