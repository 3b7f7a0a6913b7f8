//! Sheets at true size, to lay paper on: where a sheet is larger than the page, in
//! parts that are laid together.

use crate::document::{
    Block, Drawing, Figure, Fill, Mark, ScaleWish, Section, Start, Tiled, Tone,
};
use crate::handout::cut_plan;
use crate::handout::sheets;
use crate::handout::writer::{Writer, sentences};
use crate::plan::cut::PaperCut;

pub(super) fn write(w: &Writer<'_>) -> Vec<Section> {
    let drawings = w.plan.cuts.iter().flat_map(|cut| {
        (0..cut.patterns.len()).map(move |pattern| tiled(w, cut, pattern))
    });
    let mut blocks: Vec<_> = drawings.map(Block::Tiled).collect();
    if blocks.is_empty() {
        return Vec::new();
    }
    blocks.insert(0, Block::Paragraph(Tone::Body, w.tell("true-size-text", &[])));
    let title = w.tell("true-size-title", &[]);
    let anchor = "true-size".to_owned();
    vec![Section { anchor, title, start: Start::NewPage, blocks }]
}

fn tiled(w: &Writer<'_>, cut: &PaperCut, pattern: usize) -> Tiled {
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
    let figure = Figure {
        drawing: outlines(sheets::divided(w, cut, pattern)),
        alt: w.say("true-size-alt", &values()),
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
