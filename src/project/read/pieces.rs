//! Pieces that are cut from sheets, some of them described by others.

use crate::diag::{Diagnostic, rules};
use crate::geom::{Length, Size};
use crate::project::read::desk::{Desk, quote};
use crate::project::read::draft::Draft;
use crate::project::read::places;
use crate::project::read::shape::{Keys, name_of};
use crate::project::tree::{Entry, Node, Value};
use crate::project::{NextTo, PaperId, PatternOn, Piece, Region, Text};
use crate::source::Site;

/// The most pieces that are read.
const MOST: usize = 10_000;

/// A piece as it is described, before others are looked at.
struct Raw<'n> {
    entry: &'n Entry,
    name: Text,
    of: Option<PaperId>,
    size: Option<RawSize>,
    pattern: Option<PatternOn>,
    spare: Option<u32>,
    count: Option<u32>,
    like: Option<usize>,
    next_to: Option<NextTo>,
    region: Option<Region>,
    /// Something that it needs is missing or wrong, and noted.
    noted: bool,
}

#[derive(Clone, Copy)]
enum RawSize {
    Own(Size, Site),
    By(usize, Step, Site),
}

/// How a size follows from that of another piece.
#[derive(Clone, Copy)]
enum Step {
    /// It shows so much all round.
    Around(Length),
    /// It is one of so many equal shares; `across` if the cuts between them run
    /// along the shorter side.
    Share { of: i64, across: bool },
}

impl Step {
    fn after(self, size: Size) -> Size {
        match self {
            Self::Around(border) => {
                Size::new(size.width + border * 2, size.height + border * 2)
            }
            Self::Share { of, across } => {
                let share = |length: Length| Length::from_units(length.units() / of);
                if (size.height <= size.width) == across {
                    Size::new(share(size.width), size.height)
                } else {
                    Size::new(size.width, share(size.height))
                }
            }
        }
    }
}

/// Reads every piece; the papers must have been read.
pub(crate) fn read(desk: &mut Desk<'_>, node: Option<&Node>, draft: &mut Draft) {
    let (names, mut entries) = desk.named(node, "piece");
    draft.piece_names = names;
    if MOST < entries.len() {
        let message = format!("there are more than {MOST} pieces");
        let help = "split the project in two";
        desk.fault(&rules::OUT_OF_RANGE, entries[MOST].site, message, help);
        entries.truncate(MOST);
    }
    let raws: Vec<Raw<'_>> =
        entries.iter().map(|entry| raw(desk, entry, draft)).collect();
    let mut lost = vec![false; raws.len()];
    let settled = (0..raws.len()).map(|index| settle(desk, &raws, index, &mut lost));
    draft.pieces = settled.collect();
}

fn raw<'n>(desk: &mut Desk<'_>, entry: &'n Entry, draft: &Draft) -> Raw<'n> {
    let keys = desk.open(&entry.value, entry.site, "piece");
    let like = keys.get("like").map(|node| desk.resolve(node, &draft.piece_names));
    let of = keys.get("of").map(|node| desk.resolve(node, &draft.paper_names));
    let size = keys.get("size").map(|node| size(desk, node, draft));
    let mut noted = false;
    for name in ["of", "size"] {
        if keys.get(name).is_none() && like.is_none() {
            desk.missing(&keys, name);
            noted = true;
        }
    }
    noted |= matches!(like, Some(None))
        || matches!(of, Some(None))
        || matches!(size, Some(None));
    let spare = keys.get("spare").and_then(|node| desk.count(node, 0, 10_000));
    let count = keys.get("count").and_then(|node| desk.count(node, 1, 10_000));
    let next_to = keys.get("next to").and_then(|node| places::next_to(desk, node, draft));
    let region = keys.get("region").and_then(|node| places::region(desk, node));
    Raw {
        entry,
        name: desk.printed(name_of(entry), &keys),
        of: of.flatten().map(PaperId),
        size: size.flatten(),
        pattern: pattern(desk, &keys),
        spare,
        count,
        like: like.flatten(),
        next_to,
        region,
        noted,
    }
}

fn pattern(desk: &mut Desk<'_>, keys: &Keys<'_>) -> Option<PatternOn> {
    match desk.one_of(keys.get("pattern")?, &["as it runs", "any way"])? {
        0 => Some(PatternOn::AsItRuns),
        _ => Some(PatternOn::AnyWay),
    }
}

fn size(desk: &mut Desk<'_>, node: &Node, draft: &Draft) -> Option<RawSize> {
    if !matches!(node.value, Value::Keys(_)) {
        return desk.size(node).map(|size| RawSize::Own(size, node.site));
    }
    let keys = desk.open(node, node.site, "around");
    let shares = [("half of", 2), ("third of", 3), ("quarter of", 4)];
    let share = shares.into_iter().find_map(|(name, of)| Some((keys.get(name)?, of)));
    for (name, _) in shares {
        desk.either_key(&keys, "around", name);
    }
    desk.either_key(&keys, "half of", "third of");
    desk.either_key(&keys, "half of", "quarter of");
    desk.either_key(&keys, "third of", "quarter of");
    let idle = if share.is_some() { "border" } else { "cut" };
    if let Some(entry) = keys.entry(idle) {
        let message = format!("`{idle}` has no effect on a size of this kind");
        desk.fault(&rules::KEY_WITHOUT_EFFECT, entry.site, message, "remove it");
    }
    if let Some((it, of)) = share {
        let piece = desk.resolve(it, &draft.piece_names);
        let across = match keys.get("cut") {
            Some(node) => desk.one_of(node, &["lengthwise", "crosswise"])? == 1,
            None => true,
        };
        return Some(RawSize::By(piece?, Step::Share { of, across }, node.site));
    }
    let around =
        desk.need(&keys, "around").and_then(|it| desk.resolve(it, &draft.piece_names));
    let border = desk.need(&keys, "border").and_then(|it| desk.some_length(it));
    Some(RawSize::By(around?, Step::Around(border?), node.site))
}

/// Looks up in other pieces what a piece doesn't say itself.
///
/// Pieces that lead to nothing are marked as `lost`, so that none is followed
/// twice.
fn settle(
    desk: &mut Desk<'_>,
    raws: &[Raw<'_>],
    index: usize,
    lost: &mut [bool],
) -> Option<Piece> {
    let raw = &raws[index];
    let shown = size_of(raws, index, lost);
    if let Shown::Circle(least) = shown
        && least == index
    {
        let name = &raw.entry.key;
        desk.note(
            Diagnostic::new(
                &rules::GOES_IN_A_CIRCLE,
                raw.entry.site,
                format!("{} is described by itself, by way of others", quote(name)),
            )
            .help("give it a size of its own"),
        );
    }
    let Shown::Size { size, site, mat } = shown else { return None };
    let mut of = None;
    let mut pattern = None;
    let mut next = Some(index);
    // Pieces that are like each other in a circle have no size, and were left
    // above; the count is for circles that a size of its own hides.
    for _ in 0..=raws.len() {
        let Some(raw) = next.and_then(|it| raws.get(it)) else { break };
        of = of.or(raw.of);
        pattern = pattern.or(raw.pattern);
        next = raw.like;
    }
    if raw.noted {
        return None;
    }
    let Some(of) = of else {
        if !raws.iter().any(|it| it.noted) {
            let message =
                "neither this piece nor those it is like say what it is cut from";
            let help = "write `of:` with a paper";
            desk.fault(&rules::MISSING_KEY, raw.entry.site, message, help);
        }
        return None;
    };
    Some(Piece {
        name: raw.name.clone(),
        of,
        size,
        size_site: site,
        pattern: pattern.unwrap_or(PatternOn::AsItRuns),
        spare: raw.spare.unwrap_or(0),
        count: raw.count,
        mat,
        next_to: raw.next_to,
        region: raw.region,
    })
}

/// What the size of a piece comes to.
enum Shown {
    Size {
        size: Size,
        site: Site,
        mat: bool,
    },
    /// It leads back to itself; the least index on the circle.
    Circle(usize),
    /// It leads to others that lead back to themselves.
    LeadsToCircle,
    /// Something on the way is at fault, and noted.
    Lost,
}

fn size_of(raws: &[Raw<'_>], index: usize, lost: &mut [bool]) -> Shown {
    let shown = follow(raws, index, lost);
    let mut at = index;
    let ends = matches!(shown, Shown::Circle(_) | Shown::Lost);
    while ends && at < raws.len() && !lost[at] {
        lost[at] = true;
        at = match (raws[at].size, raws[at].like) {
            (Some(RawSize::By(of, ..)), _) => of,
            (_, like) => like.unwrap_or(raws.len()),
        };
    }
    shown
}

/// Follows a piece to the one that has a size of its own.
fn follow(raws: &[Raw<'_>], index: usize, lost: &[bool]) -> Shown {
    let (mut at, mut steps, mut mat) = (index, Vec::new(), false);
    let (mut site, mut least) = (None, index);
    for _ in 0..=raws.len() {
        let Some(raw) = raws.get(at).filter(|_| !lost[at]) else { return Shown::Lost };
        match (raw.size, raw.like) {
            (Some(RawSize::Own(size, own)), _) => {
                let size =
                    steps.iter().rev().fold(size, |size, it: &Step| it.after(size));
                return Shown::Size { size, site: site.unwrap_or(own), mat };
            }
            (Some(RawSize::By(of, step, own)), _) => {
                steps.push(step);
                mat |= site.is_none() && matches!(step, Step::Around(_));
                site.get_or_insert(own);
                at = of;
            }
            (None, Some(like)) => at = like,
            (None, None) => return Shown::Lost,
        }
        least = least.min(at);
        if at == index {
            return Shown::Circle(least);
        }
    }
    Shown::LeadsToCircle
}
