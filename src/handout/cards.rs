//! A section for each card: its front measured, what it takes, step by step.

use crate::document::{Block, Figure, ScaleWish, Section, Start, Step, Text, Tone};
use crate::geom::Side;
use crate::handout::fronts::Half;
use crate::handout::writer::{Writer, sentences};
use crate::handout::{
    Drawings, Wanted, When, apart, cover, extras, fronts, photo, prepare, states,
};
use crate::plan::{Act, Front, Task};
use crate::project::{Card, CardId, LateId, Layer, Placed, Work};

/// The drawings of cards that share a scale.
const CARDS: u32 = 2;

pub(super) fn write(w: &Writer<'_>, wanted: &Wanted) -> Vec<Section> {
    let cards = w.project.cards.iter().enumerate();
    let mut sections: Vec<Section> =
        cards.filter_map(|(at, card)| section(w, wanted, CardId(at), card)).collect();
    if let (true, [first, _, ..]) = (w.project.in_batches, &mut sections[..]) {
        let text = Block::Paragraph(Tone::Body, w.tell("cards-in-batches", &[]));
        first.blocks.insert(0, text);
    }
    sections
}

fn section(w: &Writer<'_>, wanted: &Wanted, id: CardId, card: &Card) -> Option<Section> {
    let front = w.front(id)?;
    let tasks: Vec<&Task> = w
        .mine()
        .filter(|(task, when)| {
            task.act.card() == Some(id) && wanted.when.is_none_or(|it| it == *when)
        })
        .map(|(task, _)| task)
        .collect();
    if tasks.is_empty() {
        return None;
    }
    let drawn = wanted.drawings == Drawings::StepByStep;
    let mut texts = Vec::new();
    let mut figures = Vec::new();
    let mut attached = None;
    for task in &tasks {
        texts.extend(steps(w, card, front, task));
        figures.resize(texts.len(), None);
        if let (Some(last), true) = (figures.last_mut(), drawn) {
            *last = states::beside(w, front, task.act);
        }
        if task.work == Work::Attach {
            attached = texts.len().checked_sub(1);
        }
    }
    // Layers dry together, and other cards are made meanwhile.
    let waits = tasks.iter().map(|it| it.waits).max().unwrap_or(0);
    // What holds for every card is said once, before them.
    let waits = if all_wait(w).is_some() { 0 } else { waits };
    if let Some(last) = attached.filter(|_| waits > 0).and_then(|it| texts.get_mut(it)) {
        let waits = w.tell("card-waits", &[("minutes", waits.into())]);
        *last = sentences([std::mem::take(last), waits]);
    }
    let steps = texts.into_iter().zip(figures).zip(1..);
    let steps = steps.map(|((text, figure), number): (_, u32)| Step {
        number: number.to_string(),
        text,
        aside: None,
        figure,
    });
    let mut beside = Vec::new();
    if card.count > 1 {
        let text = w.tell("card-count", &[("count", card.count.into())]);
        beside.push(Block::Paragraph(Tone::Body, text));
    }
    beside.push(Block::Paragraph(Tone::Body, takes(w, card, front)));
    beside.push(Block::Steps(steps.collect()));
    for tip in &card.tips {
        let tip = w.tell("tip", &[("tip", w.user(tip).into())]);
        beside.push(Block::Paragraph(Tone::Remark, tip));
    }
    if let Some(photo) =
        card.photo.as_ref().filter(|_| wanted.drawings != Drawings::LeftOut)
    {
        beside.extend(photo::figure(w, photo, Some(id)).map(Block::Figure));
    }
    let half = Half {
        card: id,
        front,
        what: "front",
        layers: &card.layers,
        sets: &front.layers,
    };
    let (layers, sets) = (&card.inside.layers, &front.inside);
    let inside = Half { what: "inside", layers, sets, ..half };
    let blocks = match wanted.drawings {
        Drawings::LeftOut => beside,
        Drawings::Drawn | Drawings::StepByStep => {
            let mut blocks = vec![Block::Beside(figure(w, half), beside)];
            if !sets.is_empty() {
                blocks.push(Block::Figure(figure(w, inside)));
            }
            blocks
        }
        Drawings::Apart => {
            let mut figures = vec![figure(w, half), apart::figure(w, half, None)];
            if !sets.is_empty() {
                figures.extend([figure(w, inside), apart::figure(w, inside, None)]);
            }
            [Block::Figures(figures)].into_iter().chain(beside).collect()
        }
    };
    let blocks = vec![Block::Keep(blocks)];
    let title = w.user(&card.name);
    Some(Section { anchor: cover::anchor(id), title, start: Start::Below, blocks })
}

fn figure(w: &Writer<'_>, half: Half<'_>) -> Figure {
    Figure {
        drawing: fronts::measured(w, half),
        alt: fronts::alt(w, half),
        caption: None,
        scale: ScaleWish::Shared(CARDS),
        says_scale: true,
    }
}

/// How many minutes each card dries whose layers are fixed, if all dry as long and
/// more than one does.
pub(super) fn all_wait(w: &Writer<'_>) -> Option<u32> {
    let mut waits: Vec<(CardId, u32)> = Vec::new();
    for (task, _) in w.mine().filter(|it| it.0.work == Work::Attach) {
        let Some(card) = task.act.card() else { continue };
        match waits.iter_mut().find(|it| it.0 == card) {
            Some(known) => known.1 = known.1.max(task.waits),
            None => waits.push((card, task.waits)),
        }
    }
    let (_, first) = *waits.first()?;
    let alike = waits.iter().all(|it| it.1 == first);
    (first > 0 && alike && waits.len() > 1).then_some(first)
}

/// What lies ready for a card.
fn takes(w: &Writer<'_>, card: &Card, front: &Front) -> Text {
    let mut items = vec![(w.base(card.base), 1_u32)];
    let layers = card.layers.iter().chain(&card.inside.layers).chain(&card.envelope);
    let mut raised = 0_u32;
    for layer in layers {
        raised = raised.saturating_add(layer.raised);
        let item = match layer.what {
            Placed::Late(late, _)
                if at_card(w, late) && first_use(w, late) == Some(card) =>
            {
                w.placed(Placed::Piece(w.project.late_cuts[late.0].piece))
            }
            what => w.placed(what),
        };
        let late = matches!(layer.what, Placed::Late(..));
        match items.iter_mut().find(|it| it.0 == item) {
            // One piece makes several parts.
            Some(_) if late => {}
            Some(known) => known.1 += 1,
            None => items.push((item, 1)),
        }
    }
    let counted = items.into_iter().map(|(item, count)| match count {
        1 => item,
        _ => w.tell("several", &[("count", count.into()), ("item", item.into())]),
    });
    let mut items: Vec<Text> = counted.collect();
    if raised > 0 {
        items.push(w.tell("foam-squares", &[("count", raised.into())]));
    }
    items.extend(card.extras.iter().map(|it| extras::item(w, it)));
    let fold = Writer::side(front.fold);
    w.tell("card-takes", &[("fold", fold.into()), ("items", w.list(items).into())])
}

/// Whether a late cut is made in the steps of a card.
pub(super) fn at_card(w: &Writer<'_>, late: LateId) -> bool {
    let act = Act::LateCut(late);
    w.project.late_cuts[late.0].at_the_card
        && w.mine().any(|(task, when)| task.act == act && when == When::Here)
}

/// The first card that uses what a late cut makes.
fn first_use<'a>(w: &Writer<'a>, late: LateId) -> Option<&'a Card> {
    w.project.cards.iter().find(|card| uses(card, late).next().is_some())
}

fn uses(card: &Card, late: LateId) -> impl Iterator<Item = usize> {
    let layers = card.layers.iter().chain(&card.inside.layers).chain(&card.envelope);
    layers.filter_map(move |layer| match layer.what {
        Placed::Late(its, part) if its == late => Some(part),
        _ => None,
    })
}

/// The steps of a task.
fn steps(w: &Writer<'_>, card: &Card, front: &Front, task: &Task) -> Vec<Text> {
    let mut steps = Vec::new();
    let text = match task.act {
        Act::Attach(_, at) => {
            steps.extend(late_step(w, card, &card.layers, at));
            steps.push(w.attach(front, &card.layers, &front.layers, at));
            Text::new()
        }
        Act::TrimFlush(_, at) => {
            let what = card.layers.get(at).map(|it| w.placed(it.what));
            w.tell("trim-flush", &[("what", what.unwrap_or_default().into())])
        }
        Act::AttachInside(_, at) => {
            steps.extend(late_step(w, card, &card.inside.layers, at));
            let attach = w.attach(front, &card.inside.layers, &front.inside, at);
            sentences([w.tell("inside-open", &[("half", half(front).into())]), attach])
        }
        Act::AttachEnvelope(_, at) => {
            steps.extend(late_step(w, card, &card.envelope, at));
            let attach = w.attach(front, &card.envelope, &front.envelope, at);
            sentences([w.tell("envelope-take", &[]), attach])
        }
        Act::AddExtra(_, at) => {
            card.extras.get(at).map(|it| extras::step(w, it)).unwrap_or_default()
        }
        Act::StampInside(_) => stamp_inside(w, card, front),
        Act::ChooseInside(_) => choose_inside(w, card),
        _ => Text::new(),
    };
    if !text.is_empty() {
        steps.push(text);
    }
    steps
}

/// Cuts a piece again, before the first layer that needs it.
fn late_step(w: &Writer<'_>, card: &Card, layers: &[Layer], at: usize) -> Option<Text> {
    let Placed::Late(late, _) = layers.get(at)?.what else { return None };
    let again = layers
        .iter()
        .take(at)
        .any(|it| matches!(it.what, Placed::Late(its, _) if its == late));
    if again || !at_card(w, late) || first_use(w, late) != Some(card) {
        return None;
    }
    let mut text = vec![prepare::late_cut(w, late, 1)];
    // What this card leaves over is for another.
    for (part, made) in w.project.late_cuts[late.0].makes.iter().enumerate() {
        let here = uses(card, late).any(|it| it == part);
        let elsewhere = w
            .project
            .cards
            .iter()
            .find(|it| *it != card && uses(it, late).any(|its| its == part));
        if let (false, Some(other)) = (here, elsewhere) {
            let name = w.user(&made.name);
            let values = [("part", name.into()), ("card", w.user(&other.name).into())];
            text.push(w.tell("late-keep", &values));
        }
    }
    Some(sentences(text))
}

fn half(front: &Front) -> &'static str {
    match front.fold {
        Side::Top | Side::Bottom => "lower",
        Side::Left | Side::Right => "right",
    }
}

fn stamp_inside(w: &Writer<'_>, card: &Card, front: &Front) -> Text {
    let words = card.inside.words.as_ref().map(|it| w.quoted(it)).unwrap_or_default();
    let half = half(front);
    match card.inside.ink {
        Some(ink) => {
            let ink = w.tool_name(ink);
            let values =
                [("words", words.into()), ("ink", ink.into()), ("half", half.into())];
            w.tell("inside-stamp", &values)
        }
        None => w.tell("inside-write", &[("words", words.into()), ("half", half.into())]),
    }
}

fn choose_inside(w: &Writer<'_>, card: &Card) -> Text {
    let among: Vec<Text> = card.inside.among.iter().map(|it| w.quoted(it)).collect();
    if among.is_empty() {
        w.tell("inside-later", &[])
    } else {
        w.tell("inside-choose", &[("among", w.choice(among).into())])
    }
}
