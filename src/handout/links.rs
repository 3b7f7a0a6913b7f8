//! Letters of pieces lead to where the piece is drawn: the plan of its sheet, or the
//! one card that it is for.

use std::collections::{BTreeMap, BTreeSet};

use crate::document::{Block, Figure, Inline, Section, Step, Text};
use crate::handout::cover;
use crate::handout::writer::Writer;
use crate::plan::cut::{Part, PartOf};
use crate::project::{CardId, Placed};

/// A letter that leads to its piece, once [`settle`] has found where that is drawn.
pub(super) fn letter(part: &Part) -> Inline {
    Inline { link: Some(wish(part)), ..Inline::strong(part.letter.clone()) }
}

/// What a link is until its place is known.
fn wish(part: &Part) -> String {
    format!("part {}", part.letter)
}

/// The anchor of the plan of a paper's sheets, papers being counted from 0.
pub(super) fn of_plan(paper: usize) -> String {
    format!("cut-plan-{}", paper + 1)
}

/// Gives every letter the place it leads to: none if it isn't drawn, or right here.
pub(super) fn settle(w: &Writer<'_>, sections: &mut [Section]) {
    let there: BTreeSet<String> = sections.iter().map(|it| it.anchor.clone()).collect();
    let mut places = BTreeMap::new();
    for cut in &w.plan.cuts {
        for part in &cut.parts {
            let ways =
                [Some(of_plan(cut.paper.0)), only_card(w, part).map(cover::anchor)];
            let place = ways.into_iter().flatten().find(|it| there.contains(it));
            places.insert(wish(part), place);
        }
    }
    for section in sections {
        let here = section.anchor.clone();
        let mut settled = |text: &mut Text| {
            for inline in text {
                let Some(place) = inline.link.as_ref().and_then(|it| places.get(it))
                else {
                    continue;
                };
                inline.link = place.clone().filter(|it| *it != here);
            }
        };
        section.blocks.iter_mut().for_each(|it| texts(it, &mut settled));
    }
}

/// The card that all of a part goes to, if it is a single one.
fn only_card(w: &Writer<'_>, part: &Part) -> Option<CardId> {
    let is_part = |what: Placed| match (what, part.of) {
        (Placed::Piece(piece), PartOf::Piece(of)) => piece == of,
        (Placed::Late(late, _), PartOf::Piece(of)) => {
            w.project.late_cuts[late.0].piece == of
        }
        (Placed::Greeting(greeting), PartOf::Label(_)) => {
            part.greetings.iter().any(|it| it.0 == greeting)
        }
        _ => false,
    };
    let mut cards = w.plan.fronts.iter().filter(|front| {
        let its = w.project.cards[front.card.0].base;
        let sets = front.layers.iter().chain(&front.inside).chain(&front.envelope);
        part.of == PartOf::Base(its) || sets.into_iter().any(|it| is_part(it.what))
    });
    let first = cards.next()?.card;
    cards.next().is_none().then_some(first)
}

/// Every text of a block.
fn texts(block: &mut Block, settle: &mut impl FnMut(&mut Text)) {
    match block {
        Block::Heading { text, .. } | Block::Paragraph(_, text) => settle(text),
        Block::List(_, entries) => entries.iter_mut().for_each(settle),
        Block::Steps(steps) => steps.iter_mut().for_each(|it| of_step(it, settle)),
        Block::Table(table) => table.rows.iter_mut().flatten().for_each(settle),
        Block::Figure(figure) => of_figure(figure, settle),
        Block::Figures(figures) => {
            figures.iter_mut().for_each(|it| of_figure(it, settle));
        }
        Block::Caution(caution) => settle(&mut caution.text),
        Block::Tiled(tiled) => {
            settle(&mut tiled.joined);
            of_figure(&mut tiled.figure, settle);
        }
        Block::Beside(figure, blocks) => {
            of_figure(figure, settle);
            blocks.iter_mut().for_each(|it| texts(it, settle));
        }
        Block::Keep(blocks) => blocks.iter_mut().for_each(|it| texts(it, settle)),
    }
}

fn of_step(step: &mut Step, settle: &mut impl FnMut(&mut Text)) {
    settle(&mut step.text);
    step.aside.iter_mut().for_each(&mut *settle);
    step.figure.iter_mut().for_each(|it| of_figure(it, settle));
}

fn of_figure(figure: &mut Figure, settle: &mut impl FnMut(&mut Text)) {
    figure.caption.iter_mut().for_each(settle);
}
