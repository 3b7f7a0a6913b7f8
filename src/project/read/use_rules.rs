//! Rules of use: what is described, and then put to no use.

use std::collections::BTreeSet;

use crate::diag::{Rule, rules};
use crate::project::read::desk::{Desk, quote};
use crate::project::read::draft::Draft;
use crate::project::{BaseFrom, Layer, Placed, Text};

/// Checks a description that has no errors.
pub(crate) fn check(desk: &mut Desk<'_>, draft: &Draft) {
    let used = used(draft);
    let cut_again: BTreeSet<usize> =
        draft.late_cuts.iter().flatten().map(|late| late.piece.0).collect();
    for (index, piece) in draft.pieces.iter().enumerate() {
        let Some(piece) = piece else { continue };
        let placed = used.contains(&Seen::Piece(index)) || cut_again.contains(&index);
        if !placed && piece.count.is_none() {
            let help = "put it on a card, give it a `count`, or remove it";
            unused(desk, &rules::PIECE_NEVER_USED, &piece.name, "is on no card", help);
        }
    }
    for (index, late) in draft.late_cuts.iter().enumerate() {
        for (part, row) in late.iter().flat_map(|late| late.makes.iter().enumerate()) {
            let counted = late
                .as_ref()
                .and_then(|it| draft.piece(it.piece))
                .is_some_and(|it| it.count.is_some());
            if !used.contains(&Seen::Part(index, part)) && !counted {
                let help = "put it on a card, or cut the piece another way";
                unused(desk, &rules::PART_NEVER_USED, &row.name, "is on no card", help);
            }
        }
    }
    for (index, greeting) in draft.greetings.iter().flatten().enumerate() {
        if !used.contains(&Seen::Greeting(index)) {
            let help = "put it on a card, or remove it";
            unused(
                desk,
                &rules::GREETING_NEVER_USED,
                &greeting.name,
                "is on no card",
                help,
            );
        }
    }
    let bases: BTreeSet<usize> =
        draft.cards.iter().flatten().map(|it| it.base.0).collect();
    for (index, base) in draft.bases.iter().flatten().enumerate() {
        if !bases.contains(&index) && !draft.cards.is_empty() {
            let help = "make a card on it, or remove it";
            unused(
                desk,
                &rules::BASE_NEVER_USED,
                &base.name,
                "has no card made on it",
                help,
            );
        }
    }
    papers(desk, draft);
}

fn papers(desk: &mut Desk<'_>, draft: &Draft) {
    let mut papers: BTreeSet<usize> =
        draft.pieces.iter().flatten().map(|piece| piece.of.0).collect();
    for base in draft.bases.iter().flatten() {
        if let BaseFrom::Made(of) = base.from {
            papers.insert(of.0);
        }
    }
    for greeting in draft.greetings.iter().flatten() {
        papers.insert(greeting.of.0);
        papers.extend(greeting.mat.map(|mat| mat.of.0));
    }
    for (index, paper) in draft.papers.iter().flatten().enumerate() {
        if !papers.contains(&index) {
            let help = "cut something from it, or remove it";
            let what = "has nothing cut from it";
            unused(desk, &rules::PAPER_NEVER_USED, &paper.name, what, help);
        }
    }
}

fn unused(desk: &mut Desk<'_>, rule: &'static Rule, name: &Text, what: &str, help: &str) {
    desk.fault(rule, name.site, format!("{} {what}", quote(&name.words)), help);
}

#[derive(PartialEq, Eq, PartialOrd, Ord)]
enum Seen {
    Piece(usize),
    Part(usize, usize),
    Greeting(usize),
}

/// Everything that is on a card, in it, or on its envelope.
fn used(draft: &Draft) -> BTreeSet<Seen> {
    let mut used = BTreeSet::new();
    let mut add = |layers: &[Layer]| {
        used.extend(layers.iter().map(|layer| match layer.what {
            Placed::Piece(id) => Seen::Piece(id.0),
            Placed::Late(id, part) => Seen::Part(id.0, part),
            Placed::Greeting(id) => Seen::Greeting(id.0),
        }));
    };
    for card in draft.cards.iter().flatten() {
        add(&card.layers);
        add(&card.inside.layers);
        add(&card.envelope);
    }
    used
}
