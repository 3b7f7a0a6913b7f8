//! Pieces that are cut again.

use crate::diag::{Diagnostic, rules};
use crate::geom::{Axis, Length, Size};
use crate::project::read::desk::{Desk, Way, quote};
use crate::project::read::draft::{Draft, at};
use crate::project::read::shape::{Keys, Names, name_of};
use crate::project::tree::{Entry, Node};
use crate::project::{
    FaceId, LateCut, LateHow, LateId, LatePart, PieceId, Placed, Text, ToolId,
};

/// The words for a cut that halves.
pub(crate) const WAYS: [&str; 6] =
    ["lengthwise", "crosswise", "along", "across", "level", "upright"];

/// Reads every late cut; the pieces and tools must have been read.
pub(crate) fn read(desk: &mut Desk<'_>, node: Option<&Node>, draft: &mut Draft) {
    draft.part_names = Names::new("piece");
    let rows = node.map_or(&[][..], |node| desk.list(node));
    for row in rows {
        let id = LateId(draft.late_cuts.len());
        let late = late(desk, row, id, draft);
        draft.late_cuts.push(late);
    }
}

fn late(
    desk: &mut Desk<'_>,
    node: &Node,
    id: LateId,
    draft: &mut Draft,
) -> Option<LateCut> {
    let keys = desk.open(node, node.site, "late cut");
    desk.either_key(&keys, "cut off", "halve");
    desk.either_key(&keys, "cut off", "thirds");
    desk.either_key(&keys, "halve", "thirds");
    let (_, parts) = desk.named(keys.get("makes"), "part");
    for (index, part) in parts.iter().enumerate() {
        name_part(desk, part, Placed::Late(id, index), draft);
    }
    let piece = desk.need(&keys, "piece");
    let piece = piece.and_then(|node| desk.resolve(node, &draft.piece_names));
    let with = keys.get("with").and_then(|node| desk.resolve(node, &draft.tool_names));
    let when = keys
        .get("when")
        .and_then(|node| desk.one_of(node, &["at the card", "ahead", "later"]));
    let faces = parts.iter().map(|part| {
        let keys = desk.open(&part.value, part.site, "part");
        let name = desk.printed(name_of(part), &keys);
        let mut showing = || {
            let node = keys.get("showing")?;
            let of = draft.piece(PieceId(piece?))?.of;
            face(desk, node, draft, of.0)
        };
        (name, showing())
    });
    let faces: Vec<(Text, Option<FaceId>)> = faces.collect();
    let size = piece.and_then(|it| draft.piece(PieceId(it))).map(|it| it.size);
    let how = how(desk, &keys, size);
    if keys.get("makes").is_none() {
        desk.missing(&keys, "makes");
        return None;
    }
    let (piece, (how, sizes)) = (PieceId(piece?), how?);
    let makes = match (how, parts.len()) {
        (LateHow::Halve { .. }, 1) => 2,
        (LateHow::Thirds { .. }, 1) => 3,
        (LateHow::Thirds { .. }, 3) => 1,
        (LateHow::Halve { .. } | LateHow::CutOff { .. }, 2) => 1,
        (LateHow::Thirds { .. }, _) => {
            let message = "thirds are three parts: one name for all, or three";
            part_count(desk, &keys, message);
            return None;
        }
        (LateHow::Halve { .. }, _) => {
            part_count(desk, &keys, "halving makes two parts: one name for both, or two");
            return None;
        }
        (LateHow::CutOff { .. }, _) => {
            part_count(
                desk,
                &keys,
                "cutting off makes two parts: what comes off, and the rest",
            );
            return None;
        }
    };
    let makes = sizes.into_iter().zip(faces).map(|(size, (name, showing))| LatePart {
        name,
        size,
        makes,
        showing,
    });
    let makes = makes.collect();
    let at_the_card = matches!(when, Some(0 | 2));
    Some(LateCut {
        piece,
        how,
        makes,
        with: with.map(ToolId),
        at_the_card,
        site: keys.site,
    })
}

/// Adds the name of a part to those that cards can place.
fn name_part(desk: &mut Desk<'_>, part: &Entry, placed: Placed, draft: &mut Draft) {
    let name = part.key.trim();
    let piece = draft.piece_names.find(name).map(|it| draft.piece_names.list[it].1);
    let first = piece.or_else(|| draft.part_names.add(name, part.site));
    match first {
        None => draft.parts.push(placed),
        Some(first) => desk.note(
            Diagnostic::new(
                &rules::NAME_USED_TWICE,
                part.site,
                format!("{} is already the name of another piece", quote(name)),
            )
            .label(first, "first here")
            .help("give the part a name of its own"),
        ),
    }
}

fn part_count(desk: &mut Desk<'_>, keys: &Keys<'_>, message: &str) {
    let site = keys.entry("makes").map_or(keys.site, |it| it.site);
    let help = "write `makes: {one: {}, two: {}}`";
    desk.fault(&rules::PART_COUNT, site, message, help);
}

/// How the piece is cut, and the sizes of its parts.
fn how(
    desk: &mut Desk<'_>,
    keys: &Keys<'_>,
    size: Option<Size>,
) -> Option<(LateHow, Vec<Size>)> {
    if let Some(node) = keys.get("thirds") {
        let cut = halving(desk, node, size)?;
        let size = size?;
        let third = |extent: Length| Length::from_units(extent.units() / 3);
        let third = match cut {
            Axis::Level => Size::new(size.width, third(size.height)),
            Axis::Upright => Size::new(third(size.width), size.height),
        };
        return Some((LateHow::Thirds { cut }, vec![third; 3]));
    }
    if let Some(node) = keys.get("halve") {
        let cut = halving(desk, node, size)?;
        let size = size?;
        let half = match cut {
            Axis::Level => Size::new(size.width, size.height.half()),
            Axis::Upright => Size::new(size.width.half(), size.height),
        };
        return Some((LateHow::Halve { cut }, vec![half, half]));
    }
    let node = desk.need(keys, "cut off")?;
    let (off, way) = desk.length_and_way(node)?;
    let cut = match way {
        Some(Way::High) => Axis::Level,
        Some(Way::Wide) => Axis::Upright,
        Some(Way::Lengthwise) => lengthwise(desk, node, size)?,
        Some(Way::Crosswise) => lengthwise(desk, node, size)?.other(),
        None => {
            let message =
                "it isn't said in which direction the part that comes off is measured";
            let help =
                "write `high`, `wide`, `lengthwise` or `crosswise` after the length";
            desk.fault(&rules::DIRECTION_UNCLEAR, node.site, message, help);
            return None;
        }
    };
    let size = size?;
    let extent = size.along(cut.other());
    if extent <= off {
        let unit = desk.shown();
        let (off, extent) = (off.show(unit), extent.show(unit));
        let way = if cut == Axis::Level { "high" } else { "wide" };
        desk.fault(
            &rules::LATE_CUT_LARGER_THAN_PIECE,
            node.site,
            format!("{off} comes off; the piece is {extent} {way}"),
            "cut off less, or cut the piece larger",
        );
        return None;
    }
    let parts = match cut {
        Axis::Level => [Size::new(size.width, off), Size::new(size.width, extent - off)],
        Axis::Upright => {
            [Size::new(off, size.height), Size::new(extent - off, size.height)]
        }
    };
    Some((LateHow::CutOff { cut, at: off }, parts.to_vec()))
}

/// Which way a cut runs that halves a part of this size.
pub(crate) fn halving(
    desk: &mut Desk<'_>,
    node: &Node,
    size: Option<Size>,
) -> Option<Axis> {
    match desk.one_of(node, &WAYS)? {
        0 | 2 => lengthwise(desk, node, size),
        1 | 3 => lengthwise(desk, node, size).map(Axis::other),
        4 => Some(Axis::Level),
        _ => Some(Axis::Upright),
    }
}

/// Which way a cut along the longer side runs.
fn lengthwise(desk: &mut Desk<'_>, node: &Node, size: Option<Size>) -> Option<Axis> {
    let size = size?;
    if size.width == size.height && Length::ZERO < size.width {
        desk.fault(
            &rules::DIRECTION_UNCLEAR,
            node.site,
            "both sides are equally long, so neither is the longer one",
            "say `high` or `wide` for what comes off, `level` or `upright` for a cut",
        );
        return None;
    }
    Some(if size.height < size.width { Axis::Level } else { Axis::Upright })
}

/// The face of a paper that a node names.
pub(crate) fn face(
    desk: &mut Desk<'_>,
    node: &Node,
    draft: &Draft,
    paper: usize,
) -> Option<FaceId> {
    let (name, _) = desk.raw(node)?;
    let paper = at(&draft.papers, paper)?;
    let mut names = Names::new("face");
    for face in paper.faces.iter().filter(|it| !it.name.words.is_empty()) {
        let _ = names.add(&face.name.words, face.name.site);
    }
    let found = names.find(name);
    if found.is_none() {
        let what = format!("face of {}", quote(&paper.name.words));
        desk.unknown_name(name, node.site, &what, &[&names]);
    }
    found.map(FaceId)
}
