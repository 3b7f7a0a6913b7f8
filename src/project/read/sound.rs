//! What can still be looked at when a description is at fault.

use crate::geom::Unit;
use crate::project::read::draft::{Draft, at};
use crate::project::{BaseFrom, Card, Layer, Minutes, PaperId, Placed, Project};

/// The project with those cards only of which everything could be read; `None`
/// if there is no such card.
///
/// Things at fault are stood in for by others of their kind, which no card of it
/// uses. It serves to look at the cards, and for nothing else.
pub(crate) fn sound_cards(draft: &Draft, unit: Unit) -> Option<Project> {
    let cards: Vec<Card> = draft
        .cards
        .iter()
        .flatten()
        .filter(|card| is_sound(draft, card))
        .cloned()
        .collect();
    (!cards.is_empty()).then(|| Project {
        title: draft.title.clone().unwrap_or_default(),
        photo: None,
        about: None,
        language: draft.language.clone(),
        languages: Vec::new(),
        edition: None,
        handed_out_by: None,
        unit,
        kits: draft.kits.max(1),
        spares: draft.spares,
        sheets_alike: draft.sheets_alike,
        papers: filled(&draft.papers),
        bases: filled(&draft.bases),
        tools: filled(&draft.tools),
        pieces: filled(&draft.pieces),
        late_cuts: filled(&draft.late_cuts),
        greetings: filled(&draft.greetings),
        cards,
        cutting: Vec::new(),
        done_ahead: draft.done_ahead.clone(),
        cut_by: draft.cut_by.clone(),
        cautions: Vec::new(),
        tips: Vec::new(),
        fonts: Vec::new(),
        currency: None,
        in_batches: draft.in_batches,
        gift: draft.gift,
        minutes: Minutes::default(),
    })
}

fn is_sound(draft: &Draft, card: &Card) -> bool {
    let base = at(&draft.bases, card.base.0);
    let base = base.is_some_and(|base| match base.from {
        BaseFrom::Made(PaperId(paper)) => at(&draft.papers, paper).is_some(),
        BaseFrom::Bought(_) => true,
    });
    let layers = card.layers.iter().chain(&card.inside.layers).chain(&card.envelope);
    base && layers.into_iter().all(|layer| is_known(draft, layer))
}

fn is_known(draft: &Draft, layer: &Layer) -> bool {
    let tool = layer.with.is_none_or(|it| at(&draft.tools, it.0).is_some());
    let mat = match layer.what {
        Placed::Greeting(id) => at(&draft.greetings, id.0)
            .and_then(|it| it.mat)
            .is_none_or(|it| at(&draft.papers, it.of.0).is_some()),
        Placed::Piece(_) | Placed::Late(..) => true,
    };
    tool && mat
        && draft.size_of(layer.what).is_some()
        && draft.paper_of(layer.what).is_some()
}

/// Every thing at its index, gaps filled with the first one that is there.
fn filled<T: Clone>(things: &[Option<T>]) -> Vec<T> {
    let Some(first) = things.iter().flatten().next() else { return Vec::new() };
    things.iter().map(|it| it.as_ref().unwrap_or(first).clone()).collect()
}
