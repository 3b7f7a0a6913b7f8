//! Whether stamped words can be read: the ink's colour on the paper's.

use crate::diag::{Diagnostic, rules};
use crate::project::read::desk::{Desk, quote};
use crate::project::read::draft::{Draft, at};
use crate::project::{BaseFrom, PaperId, PaperKind, Text, ToolId};
use crate::raster;

/// Text needs so much contrast (WCAG 2.2, success criterion 1.4.3).
const LEAST: f64 = 4.5;

/// Looks at every greeting, and at the words inside every card.
pub(crate) fn check(desk: &mut Desk<'_>, draft: &Draft) {
    for greeting in draft.greetings.iter().flatten() {
        look(desk, draft, &greeting.words, greeting.ink, greeting.of);
    }
    for card in draft.cards.iter().flatten() {
        let base = at(&draft.bases, card.base.0);
        let (Some(base), Some(words)) = (base, &card.inside.words) else { continue };
        if let BaseFrom::Made(paper) = base.from {
            look(desk, draft, words, card.inside.ink, paper);
        }
    }
}

fn look(
    desk: &mut Desk<'_>,
    draft: &Draft,
    words: &Text,
    ink: Option<ToolId>,
    paper: PaperId,
) {
    let ink = ink.and_then(|it| at(&draft.tools, it.0));
    let (Some(ink), Some(paper)) = (ink, at(&draft.papers, paper.0)) else { return };
    let (Some(dark), Some(light)) = (ink.color, paper.color) else { return };
    // The one colour of a pattern doesn't say what lies below the words.
    let ratio = raster::contrast(dark, light);
    if ratio >= LEAST || paper.kind == PaperKind::Patterned {
        return;
    }
    let message = format!(
        "{} has a contrast of {ratio:.1} : 1 in {} on {}",
        quote(&words.words),
        quote(&ink.name.words),
        quote(&paper.name.words)
    );
    desk.note(
        Diagnostic::new(&rules::INK_HARD_TO_READ, words.site, message)
            .label(ink.name.site, "this ink")
            .label(paper.name.site, "this paper")
            .help("take a darker ink or a lighter paper; 4.5 : 1 is needed to read well"),
    );
}
