//! The finished cards as a gift set: the stack, and the band or box around it.

use crate::document::{Block, Section, Tone};
use crate::handout::envelope::{self, thickness};
use crate::handout::of_blocks;
use crate::handout::writer::{Writer, sentences};
use crate::plan::{Holder, gift_set};

/// A section of its own where nothing is told of envelopes.
pub(super) fn write(w: &Writer<'_>) -> Vec<Section> {
    match told(w).filter(|_| !envelope::is_told(w)) {
        Some(block) => of_blocks("gift", w.tell("gift-title", &[]), vec![block]),
        None => Vec::new(),
    }
}

/// The set, if the cards are given as one.
pub(super) fn told(w: &Writer<'_>) -> Option<Block> {
    let gift = gift_set(w.project, w.plan)?;
    let high = thickness(w, gift.high);
    let mut texts = vec![
        w.tell("gift-stack", &[("cards", gift.cards.into()), ("high", high.into())]),
    ];
    match gift.holds {
        Holder::Band { strip, from } => {
            let long = w.words.length(strip.width);
            let wide = w.words.length(strip.height);
            let values = [("long", long.into()), ("wide", wide.into())];
            texts.push(w.tell("gift-band", &values));
            texts.push(match from {
                Some(paper) => {
                    let paper = w.user(&w.project.papers[paper.0].name);
                    w.tell("gift-from-offcut", &[("paper", paper.into())])
                }
                None => w.tell("gift-from-other", &[]),
            });
        }
        Holder::Box { inside, high } => {
            let (size, high) = (w.words.size(inside), w.words.length(high));
            let values = [("size", size.into()), ("high", high.into())];
            texts.push(w.tell("gift-box", &values));
        }
    }
    Some(Block::Paragraph(Tone::Body, sentences(texts)))
}
