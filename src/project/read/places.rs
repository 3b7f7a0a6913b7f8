//! Where pieces lie on their sheet for the sake of the pattern: next to another
//! piece, or at one place.

use crate::diag::{Diagnostic, rules};
use crate::geom::{Axis, Length, Side};
use crate::project::read::desk::{Desk, quote};
use crate::project::read::draft::{Draft, at};
use crate::project::tree::Node;
use crate::project::{NextTo, Piece, PieceId, Region, Stock};

/// The words for sides.
const SIDES: [(&str, Side); 4] = [
    ("left", Side::Left),
    ("right", Side::Right),
    ("top", Side::Top),
    ("bottom", Side::Bottom),
];

/// Reads the piece that a piece lies next to.
pub(crate) fn next_to(desk: &mut Desk<'_>, node: &Node, draft: &Draft) -> Option<NextTo> {
    let keys = desk.open(node, node.site, "next to");
    let piece =
        desk.need(&keys, "piece").and_then(|it| desk.resolve(it, &draft.piece_names));
    let side = desk.need(&keys, "side");
    let side = side.and_then(|it| desk.one_of(it, &SIDES.map(|it| it.0)));
    let (piece, (_, side)) = (PieceId(piece?), SIDES[side?]);
    Some(NextTo { piece, side, site: node.site })
}

/// Reads the place of a piece on its sheet.
pub(crate) fn region(desk: &mut Desk<'_>, node: &Node) -> Option<Region> {
    let keys = desk.open(node, node.site, "region");
    let mut from = |name| {
        let node = desk.need(&keys, name)?;
        let length = desk.length(node)?;
        if length < Length::ZERO {
            let help = "measure from the edge of the sheet inwards";
            let message = "this place is not on the sheet";
            desk.fault(&rules::OUT_OF_RANGE, node.site, message, help);
            return None;
        }
        Some(length)
    };
    let (left, top) = (from("left"), from("top"));
    Some(Region { left: left?, top: top?, site: node.site })
}

/// Which way the cut between two neighbours runs.
pub(crate) const fn between(side: Side) -> Axis {
    match side {
        Side::Left | Side::Right => Axis::Upright,
        Side::Top | Side::Bottom => Axis::Level,
    }
}

/// Checks that neighbours can lie next to each other, and places are on the sheet.
pub(crate) fn check(desk: &mut Desk<'_>, draft: &Draft) {
    let row = neighbours_fit(desk, draft);
    places_are_on_the_sheet(desk, draft);
    one_place_for_a_row(desk, draft, &row);
}

/// Pieces with their neighbours, by index.
fn neighbours(draft: &Draft) -> impl Iterator<Item = (usize, &Piece, NextTo)> {
    let pieces = draft.pieces.iter().enumerate();
    pieces.filter_map(|(index, piece)| {
        let piece = piece.as_ref()?;
        Some((index, piece, piece.next_to?))
    })
}

/// Says for each piece which row it belongs to, by the index of one of its pieces.
fn neighbours_fit(desk: &mut Desk<'_>, draft: &Draft) -> Vec<usize> {
    // What lies before and after each piece, with the way the cut between runs.
    let mut taken: Vec<[Option<NextTo>; 2]> = vec![[None; 2]; draft.pieces.len()];
    let mut way: Vec<Option<NextTo>> = vec![None; draft.pieces.len()];
    // The row that each piece belongs to, by its first member.
    let mut row: Vec<usize> = (0..draft.pieces.len()).collect();
    for (index, piece, next) in neighbours(draft) {
        let Some(other) = draft.piece(next.piece) else { continue };
        let (name, of) = (quote(&piece.name.words), quote(&other.name.words));
        if row[index] == row[next.piece.0] {
            let message = format!("{name} would lie next to itself, by way of others");
            let note = Diagnostic::new(&rules::GOES_IN_A_CIRCLE, next.site, message);
            desk.note(note.help("leave `next to` out at one of them"));
            continue;
        }
        if piece.of != other.of {
            let paper = |it: &Piece| {
                at(&draft.papers, it.of.0)
                    .map_or_else(String::new, |it| quote(&it.name.words))
            };
            let message = format!(
                "{name} is cut from {}, and {of} from {}",
                paper(piece),
                paper(other)
            );
            let note =
                Diagnostic::new(&rules::NEIGHBOUR_OF_OTHER_PAPER, next.site, message);
            desk.note(note.help("a pattern can only run on within one sheet"));
            continue;
        }
        let axis = between(next.side);
        let (mine, theirs) = (piece.size.along(axis), other.size.along(axis));
        if mine != theirs {
            let (unit, word) =
                (desk.shown(), if axis == Axis::Upright { "high" } else { "wide" });
            let message = format!(
                "{name} is {} {word}, and {of} beside it {}",
                mine.show(unit),
                theirs.show(unit)
            );
            let help = format!(
                "make both {} {word}, and trim one of them with a late cut",
                mine.max(theirs).show(unit)
            );
            desk.note(
                Diagnostic::new(&rules::NEIGHBOURS_NOT_FLUSH, next.site, message)
                    .label(other.size_site, "the size of the other piece")
                    .help(help),
            );
            continue;
        }
        let turns = [index, next.piece.0]
            .into_iter()
            .find_map(|it| way[it].filter(|it| between(it.side) != axis));
        if let Some(first) = turns {
            let message = format!(
                "{name} and {of} would be part of a row that goes round a corner"
            );
            desk.note(
                Diagnostic::new(&rules::NEIGHBOURS_ROUND_A_CORNER, next.site, message)
                    .label(first.site, "here the row runs the other way")
                    .help("neighbours lie in one row, side by side or one above another"),
            );
            continue;
        }
        // The place after the other piece is the place before this one.
        let after = usize::from(matches!(next.side, Side::Right | Side::Bottom));
        let places = [(next.piece.0, after), (index, 1 - after)];
        let first = places.iter().find_map(|(piece, side)| taken[*piece][*side]);
        if let Some(first) = first {
            let message = format!("another piece lies there already, next to {of}");
            desk.note(
                Diagnostic::new(&rules::NEIGHBOURS_PLACE_TAKEN, next.site, message)
                    .label(first.site, "first here")
                    .help("choose the other side, or lie next to the other neighbour"),
            );
            continue;
        }
        for (piece, side) in places {
            taken[piece][side] = Some(next);
            way[piece] = Some(next);
        }
        let (gone, stays) = (row[index], row[next.piece.0]);
        row.iter_mut().filter(|it| **it == gone).for_each(|it| *it = stays);
    }
    row
}

fn places_are_on_the_sheet(desk: &mut Desk<'_>, draft: &Draft) {
    for piece in draft.pieces.iter().flatten() {
        let Some(region) = piece.region else { continue };
        let Some(paper) = at(&draft.papers, piece.of.0) else { continue };
        let name = quote(&piece.name.words);
        let sheets = match &paper.stock {
            Stock::Sheets(sheets) => sheets,
            Stock::Scraps(..) => {
                let message = format!("{name} is cut from scraps, which have no places");
                let help = "give the paper a size of sheet, or leave `region` out";
                desk.fault(&rules::REGION_OFF_THE_SHEET, region.site, message, help);
                continue;
            }
        };
        let (right, bottom) =
            (region.left + piece.size.width, region.top + piece.size.height);
        if sheets.iter().any(|it| right <= it.size.width && bottom <= it.size.height) {
            continue;
        }
        let Some(sheet) = sheets.iter().max_by_key(|it| it.size.area()) else { continue };
        let unit = desk.shown();
        let (reaches, has, edge) = if right > sheet.size.width {
            (right, sheet.size.width, "left")
        } else {
            (bottom, sheet.size.height, "top")
        };
        let message = format!(
            "{name} would reach {} from the {edge} edge; the sheet ends at {}",
            reaches.show(unit),
            has.show(unit)
        );
        desk.note(
            Diagnostic::new(&rules::REGION_OFF_THE_SHEET, region.site, message)
                .label(sheet.site, "the largest sheet of its paper")
                .help("move the place, or make the piece smaller"),
        );
    }
}

/// Pieces that lie next to each other come off the sheet as one, which has one place.
fn one_place_for_a_row(desk: &mut Desk<'_>, draft: &Draft, row: &[usize]) {
    let mut first: Vec<Option<&Piece>> = vec![None; draft.pieces.len()];
    for (piece, &row) in draft.pieces.iter().zip(row) {
        let Some((piece, region)) =
            piece.as_ref().and_then(|it| it.region.map(|region| (it, region)))
        else {
            continue;
        };
        let Some(other) = first[row] else {
            first[row] = Some(piece);
            continue;
        };
        let message = format!(
            "{} asks for a place on its sheet, and so does {}, which lies next to it",
            quote(&piece.name.words),
            quote(&other.name.words)
        );
        let site = other.region.map_or(other.name.site, |it| it.site);
        desk.note(
            Diagnostic::new(&rules::REGION_ASKED_TWICE, region.site, message)
                .label(site, "first here")
                .help("say the place of one of them; the other lies where it lies"),
        );
    }
}
