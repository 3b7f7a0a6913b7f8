//! The cover: what the set is, what it makes, and who does what.

use crate::document::{
    Block, Figure, Inline, Marker, ScaleWish, Section, Start, Text, Tone,
};
use crate::handout::writer::{Writer, plain, sentences};
use crate::handout::{Drawings, Hands, NAME, Wanted, When, fronts, photo};
use crate::plan::TaskId;
use crate::project::{CardId, Reader, Work};

/// The drawings that share a scale on the cover.
const FRONTS: u32 = 1;

pub(super) fn write(w: &Writer<'_>, wanted: &Wanted) -> Vec<Section> {
    let project = w.project;
    let mut blocks = Vec::new();
    if w.options.for_name {
        let name = w.tell("cover-name", &[("name", NAME.into())]);
        blocks.push(Block::Paragraph(Tone::Lead, name));
    }
    if let Some(about) = &project.about {
        blocks.push(Block::Paragraph(Tone::Lead, w.alone(about)));
    }
    if wanted.drawings != Drawings::LeftOut {
        let photo = project.photo.as_ref().and_then(|it| photo::figure(w, it, None));
        blocks.extend(photo.map(Block::Figure));
    }
    if w.template.hands == Hands::Maker {
        let kits = w.kits();
        let spares = w.plan.supplies.spares;
        let reader = w.template.reader.word();
        let values =
            [("reader", reader.into()), ("kits", kits.into()), ("spares", spares.into())];
        blocks.push(Block::Paragraph(Tone::Body, w.tell("cover-maker", &values)));
    }
    let drawn = wanted.drawings != Drawings::LeftOut && !w.plan.fronts.is_empty();
    if let Some(makes) = makes(w) {
        let scale = ScaleWish::shared_by(FRONTS);
        let scale = drawn.then(|| w.tell("cover-scale", &[("scale", scale.into())]));
        blocks.push(Block::Paragraph(
            Tone::Body,
            sentences([makes, scale.unwrap_or_default()]),
        ));
    }
    if drawn {
        blocks.push(Block::Figures(
            w.plan.fronts.iter().map(|it| front(w, it.card)).collect(),
        ));
    }
    let shares = sentences(shares(w));
    if !shares.is_empty() {
        blocks.push(Block::Paragraph(Tone::Body, shares));
    }
    let asks = w.template.hands == Hands::Reader;
    if let Some(by) = project.handed_out_by.as_ref().filter(|_| asks) {
        let name = w.user(&by.name);
        let text = match &by.reach {
            Some(reach) => {
                let reach = w.user(reach);
                w.tell(
                    "cover-ask-reach",
                    &[("name", name.into()), ("reach", reach.into())],
                )
            }
            None => w.tell("cover-ask", &[("name", name.into())]),
        };
        blocks.push(Block::Paragraph(Tone::Remark, text));
    }
    if !project.tips.is_empty() && w.template.hands == Hands::Reader {
        let tips = project.tips.iter().map(|it| w.alone(it)).collect();
        let text = w.tell("tips-title", &[]);
        blocks.push(Block::Heading { level: 2, text, anchor: None });
        blocks.push(Block::List(Marker::Dot, tips));
    }
    let title = w.user(&project.title);
    vec![Section { anchor: "cover".to_owned(), title, start: Start::Below, blocks }]
}

/// The names of the cards, each a link to its section.
fn makes(w: &Writer<'_>) -> Option<Text> {
    let cards = &w.project.cards;
    if cards.is_empty() {
        return None;
    }
    let names = cards.iter().enumerate().map(|(at, card)| {
        let link = (w.template.hands == Hands::Reader).then(|| anchor(CardId(at)));
        let name = w.user(&card.name).into_iter();
        name.map(|it| Inline { link: link.clone(), ..it }).collect()
    });
    let count = cards.iter().fold(0_u32, |sum, it| sum.saturating_add(it.count));
    let names = w.list(names.collect());
    Some(w.tell("cover-makes", &[("count", count.into()), ("names", names.into())]))
}

/// The anchor of a card's section.
pub(super) fn anchor(card: CardId) -> String {
    format!("card-{}", card.0 + 1)
}

fn front(w: &Writer<'_>, card: CardId) -> Figure {
    let name = w.user(&w.project.cards[card.0].name);
    Figure {
        drawing: fronts::finished(w, card),
        alt: w.say("front-alt-short", &[("card", plain(&name).into())]),
        caption: Some(name),
        scale: ScaleWish::Shared(FRONTS),
        says_scale: false,
    }
}

/// The kinds of work that are done then, as what to do; `None` for what somebody
/// else does, as what is done.
pub(super) fn works(w: &Writer<'_>, when: Option<When>) -> Vec<Text> {
    let tasks = &w.plan.work.tasks;
    let whens = |work: Work| {
        let ids = (0..tasks.len()).map(TaskId);
        ids.filter(move |id| tasks[id.0].work == work).map(|id| w.when(id))
    };
    // A kind of work is done for her only if all of it is.
    let with = |work: &Work| match when {
        None => whens(*work).next().is_some() && whens(*work).all(|it| it.is_none()),
        Some(_) => whens(*work).any(|it| it == when),
    };
    let phrase = if when.is_none() { "work-done" } else { "work-do" };
    let works = Work::ALL.into_iter().filter(with);
    works.map(|work| w.tell(phrase, &[("work", work_word(work).into())])).collect()
}

/// Who does what: done for the reader, done before, done there.
fn shares(w: &Writer<'_>) -> Vec<Text> {
    let mut all = Vec::new();
    let travels = w.template.reader == Reader::Travel;
    let done = works(w, None);
    if !done.is_empty() && w.template.hands == Hands::Reader {
        all.push(w.tell("cover-done", &[("works", w.list(done).into())]));
    }
    let before = works(w, Some(When::Before));
    if !before.is_empty() {
        let whose = if w.template.hands == Hands::Maker { "maker" } else { "reader" };
        let values = [("works", w.list(before).into()), ("hands", whose.into())];
        all.push(w.tell("cover-before", &values));
    }
    let here = works(w, Some(When::Here));
    if !here.is_empty() {
        let place = if travels { "travel" } else { "other" };
        let values = [("works", w.list(here).into()), ("place", place.into())];
        all.push(w.tell("cover-here", &values));
    }
    all
}

/// The word by which messages choose a kind of work.
fn work_word(work: Work) -> &'static str {
    match work {
        Work::Cut => "cut",
        Work::Score => "score",
        Work::Fold => "fold",
        Work::Stamp => "stamp",
        Work::Punch => "punch",
        Work::LateCut => "again",
        Work::Layer => "layer",
        Work::Attach => "attach",
        Work::Inside => "inside",
    }
}
