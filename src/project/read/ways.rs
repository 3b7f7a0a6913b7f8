//! The designer's own way of cutting, step by step.
//!
//! Only names and extents are looked at here; that every piece comes out is
//! proved when the plan is carried out.

use std::collections::BTreeMap;

use crate::diag::{Diagnostic, rules};
use crate::geom::{Axis, Length, Size};
use crate::project::read::desk::{Desk, Way, either, quote};
use crate::project::read::draft::{Draft, at};
use crate::project::read::late::halving;
use crate::project::read::shape::Keys;
use crate::project::tree::{Entry, Node};
use crate::project::{OwnAct, OwnCutting, OwnStep, PaperId, PieceId, Stock, Text};
use crate::source::Site;

/// The most steps that are read for one paper.
const MOST: usize = 1000;

/// What is on the table while the steps are read.
struct Table {
    /// The extent of the part in hand, as far as it is known.
    hand: Option<Size>,
    /// What the part in hand was called when it was taken.
    called: Option<String>,
    /// The parts with a name that were put aside.
    aside: BTreeMap<String, Option<Size>>,
}

/// Reads the cutting of every paper; papers and pieces must have been read.
pub(crate) fn read(desk: &mut Desk<'_>, node: Option<&Node>, draft: &mut Draft) {
    let (_, entries) = desk.named(node, "paper");
    draft.cutting = entries.iter().map(|entry| way(desk, entry, draft)).collect();
}

fn way(desk: &mut Desk<'_>, entry: &Entry, draft: &Draft) -> Option<OwnCutting> {
    let paper = draft.paper_names.find(entry.key.trim());
    if paper.is_none() {
        let names = [&draft.paper_names];
        desk.unknown_name(entry.key.trim(), entry.site, "paper", &names);
    }
    let sheet = paper.and_then(|paper| match &at(&draft.papers, paper)?.stock {
        Stock::Sheets(sheets) => sheets.first().map(|it| it.size),
        Stock::Scraps(..) => None,
    });
    let mut rows = desk.list(&entry.value);
    if MOST < rows.len() {
        let message = format!("there are more than {MOST} steps");
        let help = "leave the cutting out, and it is found for you";
        desk.fault(&rules::OUT_OF_RANGE, rows[MOST].site, message, help);
        rows = &rows[..MOST];
    }
    let mut table = Table { hand: sheet, called: None, aside: BTreeMap::new() };
    let steps: Vec<_> =
        rows.iter().map(|row| step(desk, row, &mut table, draft)).collect();
    let steps = steps.into_iter().collect::<Option<Vec<_>>>()?;
    Some(OwnCutting { paper: PaperId(paper?), steps, site: entry.site })
}

fn step(
    desk: &mut Desk<'_>,
    node: &Node,
    table: &mut Table,
    draft: &Draft,
) -> Option<OwnStep> {
    let keys = desk.open(node, node.site, "step");
    desk.either_key(&keys, "trim to", "cut off");
    desk.either_key(&keys, "trim to", "halve");
    desk.either_key(&keys, "cut off", "halve");
    let take = keys.get("take").and_then(|node| desk.words(node));
    if let Some(take) = &take {
        table.hand = taken(desk, take, table);
        table.called = Some(take.words.clone());
    }
    let piece = keys.get("for").map(|node| desk.resolve(node, &draft.piece_names));
    let for_piece = piece.flatten().map(PieceId);
    let size = for_piece.and_then(|id| draft.piece(id)).map(|it| it.size);
    let act = if let Some(node) = keys.get("trim to") {
        trim(desk, node, &keys, table)
    } else if let Some(node) = keys.get("cut off") {
        cut_off(desk, node, &keys, for_piece, table)
    } else if let Some(node) = keys.get("halve") {
        let doubled = size.or(table.hand);
        let cut = halving(desk, node, table.hand.or(doubled));
        let piece = desk.need(&keys, "for").and(for_piece);
        table.hand = None;
        cut.zip(piece).map(|(cut, piece)| OwnAct::Halve { cut, piece })
    } else if let Some(node) = keys.get("keep") {
        keep(desk, node, table)
    } else if keys.get("for").is_some() {
        table.hand = None;
        for_piece.map(OwnAct::Is)
    } else if take.is_some() {
        Some(OwnAct::Take)
    } else {
        desk.missing(&keys, "cut off");
        None
    };
    if matches!(piece, Some(None)) {
        return None;
    }
    act.map(|act| OwnStep { take, act, site: node.site })
}

/// The extent of a part that an earlier step named.
fn taken(desk: &mut Desk<'_>, name: &Text, table: &mut Table) -> Option<Size> {
    if let Some(size) = table.aside.remove(&name.words) {
        return size;
    }
    let names: Vec<_> = table.aside.keys().map(String::as_str).take(8).collect();
    let help = match names[..] {
        [] => "give a part a name first, with `other part` or `call`".to_owned(),
        _ => format!("write {}", either(&names)),
    };
    let message = format!("no part called {} is on the table", quote(&name.words));
    desk.fault(&rules::UNKNOWN_PART, name.site, message, help);
    None
}

/// A length with the direction it is measured in, and so the cut.
fn extent(desk: &mut Desk<'_>, node: &Node) -> Option<(Axis, Length)> {
    let (length, way) = desk.length_and_way(node)?;
    match way {
        Some(Way::High) => Some((Axis::Level, length)),
        Some(Way::Wide) => Some((Axis::Upright, length)),
        _ => {
            let message = "it isn't said in which direction this is measured";
            let help = "write `high` or `wide` after the length";
            desk.fault(&rules::DIRECTION_UNCLEAR, node.site, message, help);
            None
        }
    }
}

/// Splits the part in hand: the extent that is said, and the other part.
///
/// `equal` allows the whole of it.
fn split(
    desk: &mut Desk<'_>,
    hand: Option<Size>,
    cut: Axis,
    at: Length,
    site: Site,
    equal: bool,
) -> Option<(Size, Size)> {
    let hand = hand?;
    let has = hand.along(cut.other());
    if has < at || (has == at && !equal) {
        let unit = desk.shown();
        let way = if cut == Axis::Level { "high" } else { "wide" };
        let (has, at) = (has.show(unit), at.show(unit));
        desk.note(
            Diagnostic::new(
                &rules::CUT_PAST_THE_EDGE,
                site,
                format!("{at} is measured off; the part in hand is {has} {way}"),
            )
            .help("measure off less, or take another part in hand first"),
        );
        return None;
    }
    Some(match cut {
        Axis::Level => {
            (Size::new(hand.width, at), Size::new(hand.width, hand.height - at))
        }
        Axis::Upright => {
            (Size::new(at, hand.height), Size::new(hand.width - at, hand.height))
        }
    })
}

fn trim(
    desk: &mut Desk<'_>,
    node: &Node,
    keys: &Keys<'_>,
    table: &mut Table,
) -> Option<OwnAct> {
    let other = keys.get("other part").and_then(|node| desk.words(node));
    let (cut, to) = extent(desk, node)?;
    let parts = split(desk, table.hand, cut, to, node.site, true);
    if let Some(other) = &other {
        table.aside.insert(other.words.clone(), parts.map(|it| it.1));
    }
    table.hand = parts.map(|it| it.0);
    Some(OwnAct::TrimTo { cut, to, other })
}

fn cut_off(
    desk: &mut Desk<'_>,
    node: &Node,
    keys: &Keys<'_>,
    piece: Option<PieceId>,
    table: &mut Table,
) -> Option<OwnAct> {
    desk.either_key(keys, "for", "call");
    let name = keys.get("call").and_then(|node| desk.words(node));
    let times = keys.get("times").and_then(|node| desk.count(node, 1, 1000)).unwrap_or(1);
    let (cut, at) = extent(desk, node)?;
    for _ in 0..times {
        let parts = split(desk, table.hand, cut, at, node.site, false);
        if let Some(name) = &name {
            table.aside.insert(name.words.clone(), parts.map(|it| it.0));
        }
        table.hand = parts.map(|it| it.1);
        if parts.is_none() {
            break;
        }
    }
    Some(OwnAct::CutOff { cut, at, piece, name, times, at_site: node.site })
}

fn keep(desk: &mut Desk<'_>, node: &Node, table: &mut Table) -> Option<OwnAct> {
    let name = desk.words(node)?;
    // A part that was taken keeps its name while it is in hand.
    let in_hand = table.called.as_ref() == Some(&name.words)
        && !table.aside.contains_key(&name.words);
    if in_hand || name.words == "rest" {
        table.hand = None;
        return Some(OwnAct::Keep(None));
    }
    let _ = taken(desk, &name, table);
    Some(OwnAct::Keep(Some(name)))
}
