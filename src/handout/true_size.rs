//! Sheets at true size, to lay paper on, or the pieces of those who get them cut;
//! what is larger than the page comes in parts that are laid together.

use crate::document::{
    Block, Drawing, Figure, Fill, Mark, ScaleWish, Section, Start, Stroke, Text, Tiled,
    Tone,
};
use crate::geom::Rect;
use crate::handout::cut_plan;
use crate::handout::sheets;
use crate::handout::writer::{Writer, sentences};
use crate::plan::Act;
use crate::plan::cut::{PaperCut, Part};

pub(super) fn write(w: &Writer<'_>) -> Vec<Section> {
    let mut drawings = Vec::new();
    for cut in &w.plan.cuts {
        if w.is_mine(Act::CutPaper(cut.paper)) {
            drawings.extend((0..cut.patterns.len()).map(|it| sheet(w, cut, it)));
        } else {
            // Whoever gets the pieces cut has no use for sheets.
            drawings.extend(cut.parts.iter().map(|it| piece(w, it)));
        }
    }
    let mut blocks: Vec<_> = drawings.into_iter().map(Block::Tiled).collect();
    if blocks.is_empty() {
        return Vec::new();
    }
    blocks.insert(0, Block::Paragraph(Tone::Body, w.tell("true-size-text", &[])));
    let title = w.tell("true-size-title", &[]);
    let anchor = "true-size".to_owned();
    vec![Section { anchor, title, start: Start::NewPage, blocks }]
}

fn sheet(w: &Writer<'_>, cut: &PaperCut, pattern: usize) -> Tiled {
    let paper = w.user(&w.project.papers[cut.paper.0].name);
    let size = w.words.size(cut.patterns[pattern].sheet);
    let plans = u32::try_from(cut.patterns.len()).unwrap_or(u32::MAX);
    let number = u32::try_from(pattern + 1).unwrap_or(u32::MAX);
    let values = || {
        [
            ("paper", paper.clone().into()),
            ("size", size.clone().into()),
            ("plans", plans.into()),
            ("plan", number.into()),
        ]
    };
    let caption =
        sentences([w.tell("true-size-caption", &values()), cut_plan::lies(w, cut)]);
    let alt = w.say("true-size-alt", &values());
    tiled(w, outlines(sheets::divided(w, cut, pattern)), alt, caption)
}

/// One piece, to hold what was cut against.
fn piece(w: &Writer<'_>, part: &Part) -> Tiled {
    let rect = Rect::whole(part.size);
    let long = Some(w.part_short(part));
    let marks = vec![
        sheets::area(rect, Some(Stroke::Edge), Fill::None),
        Mark::Name { rect, short: part.letter.clone(), long, may_turn: true },
    ];
    let size = w.words.size(part.size);
    let values = || [("name", w.part_named(part).into()), ("size", size.clone().into())];
    let alt = w.say("true-size-piece-alt", &values());
    let caption = w.tell("true-size-piece", &values());
    tiled(w, Drawing { size: part.size, marks }, alt, caption)
}

/// A drawing that is laid together from parts, if it must be.
fn tiled(w: &Writer<'_>, drawing: Drawing, alt: String, caption: Text) -> Tiled {
    let figure = Figure {
        drawing,
        alt,
        caption: Some(caption),
        scale: ScaleWish::Full,
        says_scale: false,
    };
    let holds = [("part", "{part}".into()), ("parts", "{parts}".into())];
    Tiled {
        figure,
        part: w.say("true-size-part", &holds),
        joined: w.tell("true-size-joined", &[]),
    }
}

/// The same drawing without what costs ink or tells what a ruler would tell.
fn outlines(mut drawing: Drawing) -> Drawing {
    drawing
        .marks
        .retain(|it| !matches!(it, Mark::Dimension { .. } | Mark::CutNumber { .. }));
    for mark in &mut drawing.marks {
        if let Mark::Area { fill, .. } = mark
            && *fill != Fill::Waste
        {
            *fill = Fill::None;
        }
    }
    drawing
}
