//! Envelopes, and what to ask at the post.

use crate::document::{Block, Section, Tone};
use crate::handout::of_blocks;
use crate::handout::writer::{Writer, sentences};
use crate::project::BaseId;

pub(super) fn write(w: &Writer<'_>) -> Vec<Section> {
    let mut texts = Vec::new();
    for (at, base) in w.project.bases.iter().enumerate() {
        let cards = w.project.cards.iter().filter(|it| it.base == BaseId(at));
        let names: Vec<_> = cards.map(|it| w.user(&it.name)).collect();
        let Some(envelope) = base.envelope else { continue };
        if names.is_empty() {
            continue;
        }
        let count = u32::try_from(names.len()).unwrap_or(u32::MAX);
        let cards = w.list(names);
        let text = match envelope.size {
            Some(size) => {
                let size = w.words.size(size);
                let values = [
                    ("cards", cards.into()),
                    ("count", count.into()),
                    ("size", size.into()),
                ];
                w.tell("envelope-size", &values)
            }
            None => w.tell(
                "envelope-with",
                &[("cards", cards.into()), ("count", count.into())],
            ),
        };
        texts.push(text);
    }
    if texts.is_empty() {
        return Vec::new();
    }
    let raised = w.plan.fronts.iter().any(|it| it.layers.iter().any(|it| it.raised > 0));
    let raised = if raised { "yes" } else { "no" };
    let text = w.tell("envelope-post", &[("raised", raised.into())]);
    texts.push(text);
    let block = Block::Paragraph(Tone::Body, sentences(texts));
    of_blocks("envelope", w.tell("envelope-title", &[]), vec![block])
}
