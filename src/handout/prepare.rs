//! Work that is done in one go for all cards, batched by tool.

use crate::document::{Block, Figure, Section, Step, Text, Tone};
use crate::geom::{Axis, Size};
use crate::handout::writer::{Writer, sentences};
use crate::handout::{
    Drawings, Hands, Wanted, When, cards, of_blocks, punched, readied, states, strips,
};
use crate::plan::cut::{Part, PartOf};
use crate::plan::{Act, Task};
use crate::project::{
    BaseId, CardId, Comes, FoldAlong, GreetingId, LateHow, LateId, Placed, Reader, Stock,
    ToolId, ToolKind, Work,
};

pub(super) fn write(w: &Writer<'_>, wanted: &Wanted) -> Vec<Section> {
    let tasks = w.mine().filter(|(task, when)| {
        let at_card = matches!(task.act, Act::LateCut(it) if cards::at_card(w, it));
        let cut = matches!(task.act, Act::CutPaper(_));
        task.act.card().is_none()
            && !cut
            && !at_card
            && wanted.when.is_none_or(|it| it == *when)
    });
    let mut groups: Vec<Vec<&Task>> = Vec::new();
    for (task, _) in tasks {
        match groups.last_mut() {
            Some(group) if alike(group, task) => group.push(task),
            _ => groups.push(vec![task]),
        }
    }
    let drawn = wanted.drawings != Drawings::LeftOut;
    let steps: Vec<Step> = groups
        .iter()
        .enumerate()
        .map(|(at, group)| Step {
            number: (at + 1).to_string(),
            text: step(w, group),
            aside: None,
            figure: drawn.then(|| figure(w, group)).flatten(),
        })
        .collect();
    let mut blocks = Vec::new();
    if !steps.is_empty() {
        blocks.push(Block::Steps(steps));
    }
    let how = how(w, wanted);
    if !how.is_empty() {
        blocks.push(Block::Paragraph(Tone::Body, how));
    }
    let whose = match (w.template.hands, w.template.reader, wanted.when) {
        (Hands::Maker, ..) => "maker",
        (_, Reader::Travel, Some(When::Before)) => "before",
        (_, Reader::Travel, Some(When::Here)) => "travel",
        _ => "here",
    };
    let title = w.tell("prepare-title", &[("whose", whose.into())]);
    of_blocks("prepare", title, blocks)
}

/// What holds whenever a layer is fixed, said once.
fn how(w: &Writer<'_>, wanted: &Wanted) -> Text {
    let fixes = |task: &Task| {
        let of = |card: CardId| &w.project.cards[card.0];
        match task.act {
            Act::Attach(card, at) => of(card).layers.get(at),
            Act::AttachInside(card, at) => of(card).inside.layers.get(at),
            Act::AttachEnvelope(card, at) => of(card).envelope.get(at),
            _ => None,
        }
    };
    let mine = w.mine().filter(|(_, when)| wanted.when.is_none_or(|it| it == *when));
    let (mut tape, mut glue, mut foam, mut waits) = (false, false, false, false);
    for layer in mine.filter_map(|(task, _)| fixes(task)) {
        let kind = w.fixed_with(layer).map(|it| &w.project.tools[it.0].kind);
        tape |= kind == Some(&ToolKind::Tape);
        glue |= matches!(kind, Some(ToolKind::Glue { .. }));
        foam |= layer.raised > 0;
        waits |= matches!(kind, Some(ToolKind::Glue { dries: 1.. }));
    }
    let said = [
        tape.then(|| w.tell("how-tape", &[])),
        glue.then(|| w.tell("how-glue", &[])),
        waits.then(|| {
            let minutes = cards::all_wait(w).unwrap_or(0);
            w.tell("how-waits", &[("minutes", minutes.into())])
        }),
        foam.then(|| w.tell("how-foam", &[])),
        states::scale(w, wanted.when),
    ];
    sentences(said.into_iter().flatten())
}

/// Whether a task is done in one go with others.
fn alike(group: &[&Task], task: &Task) -> bool {
    group.last().is_some_and(|last| {
        last.work == task.work
            && last.tool == task.tool
            && last.ink == task.ink
            && !matches!(task.work, Work::LateCut | Work::Score)
            && matches!(last.act, Act::PunchMat(_))
                == matches!(task.act, Act::PunchMat(_))
    })
}

/// The drawing beside a step: the score of a base, or the strip of a label at the
/// first of the steps that it passes through.
fn figure(w: &Writer<'_>, group: &[&Task]) -> Option<Figure> {
    group.iter().find_map(|task| match task.act {
        Act::ScoreBase(base) => Some(readied::scored(w, base)),
        Act::StampGreeting(it) if stamped_on_strip(w, task.act, it) => {
            readied::strip(w, it, true)
        }
        Act::PunchLabel(it) if !w.is_mine(Act::StampGreeting(it)) => {
            readied::strip(w, it, false)
        }
        _ => None,
    })
}

/// Whether a greeting is stamped on the strip before its label is punched from it.
fn stamped_on_strip(w: &Writer<'_>, stamp: Act, greeting: GreetingId) -> bool {
    let punch = Act::PunchLabel(greeting);
    let at = |act: Act| w.plan.work.tasks.iter().position(|it| it.act == act);
    at(punch).is_some_and(|punch| at(stamp).is_some_and(|stamp| stamp < punch))
        && (!w.is_ahead(punch) || w.is_ahead(stamp))
}

/// How often a task is done by whoever holds the handout.
pub(super) fn times(w: &Writer<'_>, task: &Task) -> u32 {
    task.times.max(1).saturating_mul(w.kits())
}

fn step(w: &Writer<'_>, group: &[&Task]) -> Text {
    let Some(first) = group.first() else { return Text::new() };
    let mut texts = Vec::new();
    match first.act {
        Act::ScoreBase(_) => texts.extend(group.iter().map(|it| score(w, it))),
        Act::FoldBase(_) => texts.push(fold(w, group)),
        Act::StampGreeting(_) => texts.extend(stamp_all(w, group)),
        Act::PunchLabel(_) | Act::PunchMat(_) => {
            let is_mat = |task: &&&Task| matches!(task.act, Act::PunchMat(_));
            let (mats, labels): (Vec<&Task>, Vec<&Task>) =
                group.iter().partition(|task| is_mat(task));
            if !labels.is_empty() {
                texts.push(punch(w, &labels));
                texts.extend(strips::go_on(w, &labels, PartOf::Label));
                texts.extend(punched::narrow(w, &labels));
            }
            if !mats.is_empty() {
                texts.push(punched::mats(w, &mats, times));
                texts.extend(strips::go_on(w, &mats, PartOf::LabelMat));
            }
        }
        Act::MatLabel(_) => texts.extend(mats(w, group)),
        Act::LateCut(late) => texts.push(late_cut(w, late, times(w, first))),
        _ => {}
    }
    if let Some(longest) = group.iter().max_by_key(|it| it.waits) {
        texts.push(match (first.work, longest.waits) {
            (Work::Stamp, 0) => w.tell("ink-dries", &[]),
            _ => waits(w, longest),
        });
    }
    sentences(texts)
}

/// How long to wait after a task, if at all.
fn waits(w: &Writer<'_>, task: &Task) -> Text {
    match task.waits {
        0 => Text::new(),
        minutes => w.tell("waits", &[("minutes", minutes.into())]),
    }
}

fn base_of(act: Act) -> Option<BaseId> {
    match act {
        Act::ScoreBase(base) | Act::FoldBase(base) => Some(base),
        _ => None,
    }
}

fn counted_base(w: &Writer<'_>, task: &Task) -> Text {
    let Some(base) = base_of(task.act) else { return Text::new() };
    let name = w.user(&w.project.bases[base.0].name);
    let part = w.part(PartOf::Base(base));
    let values = [("count", times(w, task).into()), ("name", name.into())];
    w.lettered(w.tell("base-counted", &values), part)
}

/// Width × height of a base before it is folded, and which way the fold runs.
pub(super) fn unfolded(front: Size, fold: FoldAlong) -> (Size, Axis) {
    match fold {
        FoldAlong::Long => (Size::new(front.width * 2, front.height), Axis::Upright),
        FoldAlong::Short => (Size::new(front.width, front.height * 2), Axis::Level),
    }
}

/// `long`, `short` or `any`: which edge of a size runs along an axis.
pub(super) fn edge_along(size: Size, axis: Axis) -> &'static str {
    let (this, other) = (size.along(axis), size.along(axis.other()));
    match this.cmp(&other) {
        std::cmp::Ordering::Less => "short",
        std::cmp::Ordering::Equal => "any",
        std::cmp::Ordering::Greater => "long",
    }
}

fn score(w: &Writer<'_>, task: &Task) -> Text {
    let Some(id) = base_of(task.act) else { return Text::new() };
    let base = &w.project.bases[id.0];
    let (size, fold) = unfolded(base.front, base.fold);
    let at = size.along(fold.other()).half();
    let values = [
        ("base", counted_base(w, task).into()),
        ("count", times(w, task).into()),
        ("size", w.words.size(size).into()),
        ("at", w.words.length(at).into()),
        ("edge", edge_along(size, fold).into()),
    ];
    w.tell("score-base", &values)
}

fn fold(w: &Writer<'_>, group: &[&Task]) -> Text {
    let bases = group.iter().map(|it| counted_base(w, it)).collect();
    let scored = group.iter().all(|it| {
        base_of(it.act).is_some_and(|base| {
            w.project.bases[base.0].comes != Comes::Flat
                || w.plan.work.tasks.iter().any(|it| it.act == Act::ScoreBase(base))
        })
    });
    let scored = if scored { "yes" } else { "no" };
    let folder = || w.project.tools.iter().position(|it| it.kind == ToolKind::Folder);
    let tool = group[0].tool.or_else(|| folder().map(ToolId));
    let bases = w.list(bases);
    let text =
        w.tell("fold-bases", &[("bases", bases.into()), ("scored", scored.into())]);
    let press = match tool {
        Some(tool) => w.tell("press-with", &[("tool", w.tool_name(tool).into())]),
        None => w.tell("press-plain", &[]),
    };
    sentences([text, press])
}

pub(super) fn greeting_of(act: Act) -> Option<GreetingId> {
    match act {
        Act::StampGreeting(it)
        | Act::PunchLabel(it)
        | Act::PunchMat(it)
        | Act::MatLabel(it) => Some(it),
        _ => None,
    }
}

/// The letter of what bears a greeting, or a word for it if it has none.
fn bearer(w: &Writer<'_>, greeting: GreetingId) -> Text {
    match w.part(PartOf::Label(greeting)) {
        Some(part) => vec![crate::document::Inline::strong(part.letter.clone())],
        None => w.tell("its-label", &[]),
    }
}

/// Stamps greetings: those that share strips first, each kind of strip by itself.
fn stamp_all(w: &Writer<'_>, group: &[&Task]) -> Vec<Text> {
    let on_strip = |task: &&&Task| {
        let strip = strips::shared(w, task)?;
        let first = greeting_of(task.act)?;
        stamped_on_strip(w, task.act, first).then_some(strip)
    };
    let mut texts = Vec::new();
    let mut parts: Vec<&Part> = Vec::new();
    for part in group.iter().filter_map(|task| on_strip(&task)) {
        if !parts.contains(&part) {
            parts.push(part);
        }
    }
    for part in parts {
        let mine: Vec<&Task> =
            group.iter().filter(|it| on_strip(it) == Some(part)).copied().collect();
        texts.push(strips::stamp(w, part, &mine));
    }
    let alone: Vec<&Task> =
        group.iter().filter(|it| on_strip(it).is_none()).copied().collect();
    if !alone.is_empty() {
        texts.push(stamp(w, &alone));
    }
    texts
}

fn stamp(w: &Writer<'_>, group: &[&Task]) -> Text {
    let bearers = group.iter().filter_map(|it| Some(bearer(w, greeting_of(it.act)?)));
    let bearers: Vec<Text> = bearers.collect();
    // One letter for all need not be said with each.
    let (first, shared) = match bearers.as_slice() {
        [first, rest @ ..] => (first.clone(), rest.iter().all(|it| it == first)),
        [] => (Text::new(), true),
    };
    let items = group.iter().zip(&bearers).filter_map(|(task, bearer)| {
        let greeting = greeting_of(task.act)?;
        let words = w.quoted(&w.project.greetings[greeting.0].words);
        let count = times(w, task).into();
        Some(if shared {
            w.tell("stamp-item", &[("words", words.into()), ("count", count)])
        } else {
            let bearer = bearer.clone();
            let values =
                [("words", words.into()), ("on", bearer.into()), ("count", count)];
            w.tell("stamp-item-on", &values)
        })
    });
    let items = w.list(items.collect());
    let letter = if shared { first } else { Text::new() };
    // Punched already, or stamped on the strip first?
    let on_strip = group.iter().any(|task| {
        greeting_of(task.act).is_some_and(|it| stamped_on_strip(w, task.act, it))
    });
    let on = if on_strip { "strip" } else { "label" };
    let on = w.tell("stamp-on", &[("on", on.into())]);
    let has_letter = shared
        && greeting_of(group[0].act)
            .is_some_and(|it| w.part(PartOf::Label(it)).is_some());
    let on = if has_letter {
        w.tell("name-with-letter", &[("name", on.into()), ("letter", letter.into())])
    } else {
        on
    };
    let has = |tool: Option<ToolId>| if tool.is_some() { "yes" } else { "no" };
    let (set, ink) = (group[0].tool, group[0].ink);
    let values = [
        ("hasink", has(ink).into()),
        ("ink", ink.map(|it| w.tool_name(it)).unwrap_or_default().into()),
        ("hasset", has(set).into()),
        ("set", set.map(|it| w.tool(it)).unwrap_or_default().into()),
        ("on", on.into()),
        ("items", items.into()),
    ];
    w.tell("stamp-greetings", &values)
}

fn punch(w: &Writer<'_>, group: &[&Task]) -> Text {
    let from = |task: &&Task| {
        let greeting = greeting_of(task.act)?;
        let paper = &w.project.papers[w.project.greetings[greeting.0].of.0];
        Some(match &paper.stock {
            Stock::Scraps(..) => {
                w.tell("scraps-of", &[("paper", w.user(&paper.name).into())])
            }
            Stock::Sheets(_) => bearer(w, greeting),
        })
    };
    let mut strips: Vec<Text> = Vec::new();
    for strip in group.iter().filter_map(from) {
        if !strips.contains(&strip) {
            strips.push(strip);
        }
    }
    let count = group.iter().fold(0_u32, |sum, it| sum.saturating_add(times(w, it)));
    let stamped = group.iter().all(|task| {
        greeting_of(task.act).is_some_and(|greeting| {
            let stamp = Act::StampGreeting(greeting);
            let tasks = &w.plan.work.tasks;
            let at = |act: Act| tasks.iter().position(|it| it.act == act);
            let first = at(stamp).zip(at(task.act)).is_some_and(|(a, b)| a < b);
            first && (w.is_mine(stamp) || w.is_ahead(stamp))
        })
    });
    let tool = group[0].tool.map(|it| w.tool_name(it));
    let values = [
        ("tool", tool.unwrap_or_else(|| w.tell("a-punch", &[])).into()),
        ("count", count.into()),
        ("strips", w.list(strips).into()),
        ("stamped", if stamped { "yes" } else { "no" }.into()),
    ];
    w.tell("punch-labels", &values)
}

/// Puts labels onto their mats; what is done alike is told once.
fn mats(w: &Writer<'_>, group: &[&Task]) -> Vec<Text> {
    let mut told = Vec::new();
    let mut texts = Vec::new();
    let mut same = Vec::new();
    for task in group {
        let Some(greeting) = greeting_of(task.act) else { continue };
        let letter = w.part(PartOf::LabelMat(greeting)).map(|it| it.letter.clone());
        let alike = (w.project.greetings[greeting.0].mat, letter, task.tool);
        if told.contains(&alike) {
            same.push(w.placed(Placed::Greeting(greeting)));
            continue;
        }
        told.push(alike);
        texts.push(mat(w, task));
    }
    if !same.is_empty() {
        texts.push(w.tell("mat-same", &[("labels", w.list(same).into())]));
    }
    texts
}

fn mat(w: &Writer<'_>, task: &Task) -> Text {
    let Some(greeting) = greeting_of(task.act) else { return Text::new() };
    let Some(mat) = w.project.greetings[greeting.0].mat else { return Text::new() };
    let label = w.placed(Placed::Greeting(greeting));
    let back = w.tell("back-plain", &[("what", label.into())]);
    let fix = w.fix_flat(task.tool.or_else(|| w.adhesive()), back);
    let mut name = w.tell("its-mat", &[]);
    name = w.lettered(name, w.part(PartOf::LabelMat(greeting)));
    if let Some(made) = mat.punched {
        let [halve, shows] = punched::mat(w, &mat, &made, name);
        return sentences([halve, fix, shows]);
    }
    let border = w.words.length(mat.shows.width);
    let lay = w.tell("mat-lay", &[("mat", name.into()), ("border", border.into())]);
    sentences([fix, lay])
}

/// Cuts a piece again.
pub(super) fn late_cut(w: &Writer<'_>, late: LateId, count: u32) -> Text {
    let cut = &w.project.late_cuts[late.0];
    let piece = w.placed(Placed::Piece(cut.piece));
    let size = w.project.pieces[cut.piece.0].size;
    let made = |at: usize| {
        let part = cut.makes.get(at)?;
        let size = w.words.size(part.size);
        let values = [("name", w.user(&part.name).into()), ("size", size.into())];
        Some(w.tell("late-part", &values))
    };
    let (first, second) = (made(0).unwrap_or_default(), made(1));
    let with = if cut.with.is_some() { "yes" } else { "no" };
    let tool = cut.with.map(|it| w.tool_name(it)).unwrap_or_default();
    match (cut.how, second) {
        (LateHow::Halve { cut: axis }, second) => {
            let edge = edge_along(size, axis);
            let parts = match second {
                Some(second) => w.list(vec![first, second]),
                None => first,
            };
            let values = [
                ("piece", piece.into()),
                ("edge", edge.into()),
                ("count", count.into()),
                ("parts", parts.into()),
                ("with", with.into()),
                ("tool", tool.into()),
            ];
            w.tell("late-halve", &values)
        }
        (LateHow::Thirds { cut: axis }, _) => {
            let parts: Vec<Text> = (0..cut.makes.len()).filter_map(made).collect();
            let values = [
                ("piece", piece.into()),
                ("edge", edge_along(size, axis).into()),
                ("count", count.into()),
                ("parts", w.list(parts).into()),
                ("with", with.into()),
                ("tool", tool.into()),
            ];
            w.tell("late-thirds", &values)
        }
        (LateHow::CutOff { cut: axis, at }, second) => {
            let values = [
                ("piece", piece.into()),
                ("edge", edge_along(size, axis).into()),
                ("at", w.words.length(at).into()),
                ("count", count.into()),
                ("off", first.into()),
                ("with", with.into()),
                ("tool", tool.into()),
            ];
            let off = w.tell("late-cut-off", &values);
            let stays = second.map(|it| w.tell("late-stays", &[("stays", it.into())]));
            sentences([off, stays.unwrap_or_default()])
        }
    }
}
