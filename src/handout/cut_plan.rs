//! How each sheet is divided, to scale, with what is cut from it.

use crate::document::{
    Align, Block, Column, Figure, Inline, ScaleWish, Section, Table, Text, Tone,
};
use crate::geom::Side;
use crate::handout::writer::{Arg, Writer, plain, sentences};
use crate::handout::{Drawings, Wanted, links, of_blocks, sheets};
use crate::plan::Act;
use crate::plan::cut::{Alike, Leaf, OwnCompared, PaperCut, Part, PartOf, Toil};
use crate::project::{FaceId, PieceId, Stock};

/// The drawings of sheets that share a scale.
const PLANS: u32 = 3;

pub(super) fn write(w: &Writer<'_>, wanted: &Wanted) -> Vec<Section> {
    let mine = w.plan.cuts.iter().filter(|it| w.is_mine(Act::CutPaper(it.paper)));
    mine.flat_map(|cut| section(w, wanted, cut)).collect()
}

fn section(w: &Writer<'_>, wanted: &Wanted, cut: &PaperCut) -> Vec<Section> {
    let paper = w.user(&w.project.papers[cut.paper.0].name);
    let mut blocks = vec![Block::Paragraph(Tone::Body, sheets_needed(w, cut))];
    if let Some(own) = cut.own.filter(|_| wanted.own_way) {
        blocks.push(Block::Paragraph(Tone::Body, own_way(w, own)));
    }
    if let Some(alike) = cut.alike {
        let text = every_sheet_alike(w, alike);
        blocks.extend((!text.is_empty()).then_some(Block::Paragraph(Tone::Body, text)));
    }
    let text = from_places(w, cut);
    blocks.extend((!text.is_empty()).then_some(Block::Paragraph(Tone::Body, text)));
    if wanted.drawings != Drawings::LeftOut {
        let figures = (0..cut.patterns.len()).map(|it| figure(w, cut, it));
        blocks.extend(figures.map(Block::Figure));
    }
    blocks.push(Block::Table(table(w, cut)));
    let title = w.tell("cut-plan-title", &[("paper", paper.into())]);
    of_blocks(&links::of_plan(cut.paper.0), title, blocks)
}

/// How many sheets, whether fewer would do, and what is left over.
fn sheets_needed(w: &Writer<'_>, cut: &PaperCut) -> Text {
    let sheets = sheets(cut);
    let paper = &w.project.papers[cut.paper.0];
    if let Stock::Scraps(least, _) = paper.stock {
        let size = w.words.size(least);
        let values = [("paper", w.user(&paper.name).into()), ("size", size.into())];
        return w.tell("sheets-scraps", &values);
    }
    let size = cut.patterns.first().map(|it| it.sheet).unwrap_or_default();
    let spares = w.plan.supplies.spares.min(cut.kits.saturating_sub(1));
    let needed = w.tell(
        "sheets-needed",
        &[
            ("sheets", sheets.into()),
            ("paper", w.user(&paper.name).into()),
            ("size", w.words.size(size).into()),
            ("kits", cut.kits.into()),
            ("spares", spares.into()),
        ],
    );
    // Where sheets are cut alike, fewer would do: that is said in its own place.
    let alike = cut.alike.is_some_and(|it| it.chosen);
    let proof = if alike {
        Text::new()
    } else if let Some(fewest) = cut.fewest {
        w.tell("fewer-sheets", &price(sheets, cut.schedule.marks, fewest))
    } else if cut.proven {
        w.tell("sheets-proven", &[("sheets", sheets.into())])
    } else {
        w.tell("sheets-bound", &[("least", cut.bound.sheets.into())])
    };
    // A single sheet speaks for itself.
    let proof = if sheets > 1 { proof } else { Text::new() };
    let offcut = match cut.offcut {
        Some(offcut) => {
            let size = w.words.size(offcut.size);
            let proven = if offcut.proven { "yes" } else { "no" };
            w.tell("offcut-kept", &[("size", size.into()), ("proven", proven.into())])
        }
        None => Text::new(),
    };
    sentences([needed, proof, offcut])
}

/// What it would cost to take fewer sheets: how many fewer, and how many more marks
/// or fewer.
fn price(sheets: u32, marks: u32, fewest: Toil) -> [(&'static str, Arg); 3] {
    let fewer = sheets.saturating_sub(fewest.sheets);
    let marks = i64::from(fewest.marks) - i64::from(marks);
    let dearer = if marks < 0 { "no" } else { "yes" };
    let marks = u32::try_from(marks.unsigned_abs()).unwrap_or(u32::MAX);
    [("fewer", fewer.into()), ("dearer", dearer.into()), ("marks", marks.into())]
}

pub(super) fn sheets(cut: &PaperCut) -> u32 {
    cut.patterns.iter().fold(0, |sum, it| sum.saturating_add(it.copies))
}

/// The designer's own way beside the best one found.
fn own_way(w: &Writer<'_>, own: OwnCompared) -> Text {
    let same = match (own.sheets == own.best_sheets, own.cuts == own.best_cuts) {
        (true, true) => "all",
        (true, false) => "sheets",
        (false, _) => "none",
    };
    let compared = w.tell(
        "own-way",
        &[
            ("sheets", own.sheets.into()),
            ("cuts", own.cuts.into()),
            ("bestsheets", own.best_sheets.into()),
            ("bestcuts", own.best_cuts.into()),
            ("same", same.into()),
        ],
    );
    let offcuts = match (own.offcut, own.best_offcut) {
        (Some(hers), Some(best)) if hers != best => w.tell(
            "own-offcut",
            &[("size", w.words.size(hers).into()), ("best", w.words.size(best).into())],
        ),
        _ => Text::new(),
    };
    sentences([compared, offcuts])
}

/// What it costs to cut every sheet the same way, and what it saves; nothing if it
/// saves nothing.
fn every_sheet_alike(w: &Writer<'_>, it: Alike) -> Text {
    let more = it.alike.sheets.saturating_sub(it.fewest.sheets);
    if it.chosen {
        let kits = [("kits", it.kits_per_sheet.into()), ("over", it.left_over.into())];
        let chosen = w.tell("alike-chosen", &kits);
        let price = price(it.alike.sheets, it.alike.marks, it.fewest);
        let steps =
            [("steps", it.alike.steps.into()), ("othersteps", it.fewest.steps.into())];
        let values: Vec<(&str, Arg)> = price.into_iter().chain(steps).collect();
        let other = w.tell("fewer-sheets-alike", &values);
        return sentences([chosen, other]);
    }
    if it.alike.steps >= it.fewest.steps {
        return Text::new();
    }
    let instead = w.tell(
        "alike-instead",
        &[
            ("more", more.into()),
            ("steps", it.alike.steps.into()),
            ("othersteps", it.fewest.steps.into()),
        ],
    );
    sentences([instead, w.tell("alike-how", &[])])
}

/// The way with fewer steps, where every sheet could be cut alike and is not.
pub(super) fn alike_instead(w: &Writer<'_>, cut: &PaperCut) -> Option<Text> {
    let alike = cut.alike.filter(|it| !it.chosen)?;
    Some(every_sheet_alike(w, alike)).filter(|it| !it.is_empty())
}

/// Which pieces lie next to each other, or at a place, for the sake of the pattern.
fn from_places(w: &Writer<'_>, cut: &PaperCut) -> Text {
    let mut all = Vec::new();
    let part = |id: PieceId| cut.parts.iter().find(|it| it.of == PartOf::Piece(id));
    for (index, piece) in w.project.pieces.iter().enumerate() {
        let Some(mine) = part(PieceId(index)) else { continue };
        if let Some(next) = piece.next_to
            && let Some(other) = part(next.piece)
        {
            let side = match next.side {
                Side::Left => "left",
                Side::Right => "right",
                Side::Top => "top",
                Side::Bottom => "bottom",
            };
            let values = [
                ("piece", w.part_named(mine).into()),
                ("other", w.part_named(other).into()),
                ("side", side.into()),
            ];
            all.push(w.tell("lies-next-to", &values));
        }
        if let Some(region) = piece.region {
            let values = [
                ("piece", w.part_named(mine).into()),
                ("left", w.words.length(region.left).into()),
                ("top", w.words.length(region.top).into()),
            ];
            all.push(w.tell("lies-at-place", &values));
        }
    }
    sentences(all)
}

fn figure(w: &Writer<'_>, cut: &PaperCut, pattern: usize) -> Figure {
    let it = &cut.patterns[pattern];
    let plans = u32::try_from(cut.patterns.len()).unwrap_or(u32::MAX);
    let number = u32::try_from(pattern + 1).unwrap_or(u32::MAX);
    let caption = w.tell(
        "plan-caption",
        &[("plans", plans.into()), ("plan", number.into()), ("sheets", it.copies.into())],
    );
    let caption = sentences([caption, lies(w, cut)]);
    Figure {
        drawing: sheets::divided(w, cut, pattern),
        alt: alt(w, cut, pattern),
        caption: Some(caption),
        scale: ScaleWish::Shared(PLANS),
        says_scale: true,
    }
}

/// Which face lies up, and which way the pattern runs.
pub(super) fn lies(w: &Writer<'_>, cut: &PaperCut) -> Text {
    let directed = if sheets::directed(w, cut) { "yes" } else { "no" };
    match (w.back_of(cut.paper, FaceId(0)), w.face(cut.paper, FaceId(0))) {
        (Some(_), Some(face)) => {
            let values = [("face", face.into()), ("directed", directed.into())];
            w.tell("plan-lies", &values)
        }
        _ if directed == "yes" => w.tell("plan-upright", &[]),
        _ => Text::new(),
    }
}

fn alt(w: &Writer<'_>, cut: &PaperCut, pattern: usize) -> String {
    let it = &cut.patterns[pattern];
    let mut counts: Vec<(usize, u32)> = Vec::new();
    for placement in it.tree.placements(it.sheet) {
        if let Leaf::Part { part, .. } = placement.leaf {
            match counts.iter_mut().find(|known| known.0 == part) {
                Some(known) => known.1 += 1,
                None => counts.push((part, 1)),
            }
        }
    }
    counts.sort_unstable();
    let parts = counts.into_iter().filter_map(|(part, count)| {
        let part = cut.parts.get(part)?;
        let name = w.part_named(part);
        let values = [
            ("count", count.into()),
            ("name", name.into()),
            ("size", w.words.size(part.size).into()),
        ];
        Some(w.tell("plan-alt-part", &values))
    });
    let parts = w.list(parts.collect());
    let values = [
        ("size", w.words.size(it.sheet).into()),
        ("cuts", it.tree.cuts().into()),
        ("parts", plain(&parts).into()),
    ];
    w.say("plan-alt", &values)
}

fn table(w: &Writer<'_>, cut: &PaperCut) -> Table {
    let head = |text, align| Column { head: text, align };
    let many = cut.kits > 1;
    let mut columns = vec![
        head(w.tell("parts-letter", &[]), Align::Start),
        head(w.tell("parts-name", &[]), Align::Start),
        head(w.tell("parts-size", &[]), Align::Start),
        head(w.tell("parts-per-kit", &[]), Align::End),
    ];
    if many {
        columns.push(head(w.tell("parts-in-all", &[]), Align::End));
    }
    let row = |part: &Part| {
        let number = |count: u32| vec![Inline::plain(count.to_string())];
        let mut row = vec![
            vec![Inline::strong(part.letter.clone())],
            w.part_name(part),
            vec![Inline::plain(w.words.size(part.size))],
            number(part.per_kit),
        ];
        if many {
            row.push(number(part.count));
        }
        row
    };
    let paper = w.bare(&w.project.papers[cut.paper.0].name);
    Table {
        summary: w.say("parts-summary", &[("paper", paper.into())]),
        rows: cut.parts.iter().map(row).collect(),
        columns,
    }
}
