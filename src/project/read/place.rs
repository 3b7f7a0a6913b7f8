//! Where a layer sits: from a side, centred, against the fold, by another layer.

use crate::diag::{Diagnostic, rules};
use crate::geom::{Axis, Length, Side, Size};
use crate::project::read::cards::border;
use crate::project::read::desk::{Desk, quote};
use crate::project::read::shape::Keys;
use crate::project::tree::{Entry, Node};
use crate::project::{Along, FoldAlong, Layer, Stands, Text};
use crate::source::Site;

/// What layers are placed on.
#[derive(Clone, Copy)]
pub(crate) struct Front {
    /// Its size as the card stands, if it is known.
    pub(crate) size: Option<Size>,
    /// Where the fold is, if there is one.
    pub(crate) fold: Option<Side>,
}

/// A layer as others see it.
pub(crate) struct Seat {
    /// What it is called.
    pub(crate) name: String,
    /// Its size as it is turned.
    pub(crate) size: Option<Size>,
    /// The later layer that it shows around.
    pub(crate) behind: Option<Text>,
    /// Where it is said that it shares the width, or the height, with its neighbours.
    pub(crate) evenly: Shares,
}

/// In which directions a layer is one of a run with equal gaps.
#[derive(Clone, Copy, Default)]
pub(crate) struct Shares {
    pub(crate) across: Option<Site>,
    pub(crate) up: Option<Site>,
}

impl Shares {
    /// Where it is said for one direction.
    pub(crate) fn along(self, way: Axis) -> Option<Site> {
        match way {
            Axis::Level => self.across,
            Axis::Upright => self.up,
        }
    }
}

/// Where a layer was placed.
pub(crate) struct Placing {
    pub(crate) across: Along,
    pub(crate) up: Along,
    pub(crate) edge_to_edge: Option<Axis>,
}

/// Where the fold of a card is as it stands.
pub(crate) fn fold_side(stands: Stands, fold: FoldAlong) -> Side {
    match (stands, fold) {
        (Stands::Tall, FoldAlong::Long) | (Stands::Wide, FoldAlong::Short) => Side::Left,
        (Stands::Wide, FoldAlong::Long) | (Stands::Tall, FoldAlong::Short) => Side::Top,
    }
}

/// What was said about one direction, and where.
type Said = Vec<(Along, Site)>;

/// Reads where a layer sits; `seats` are the layers before it.
pub(crate) fn read(
    desk: &mut Desk<'_>,
    keys: &Keys<'_>,
    front: Front,
    seats: &[Seat],
    seat: &mut Seat,
) -> Option<Placing> {
    let before = desk.notes.len();
    let within = keys.get("within").and_then(|node| earlier(desk, node, seats));
    let (mut across, mut up): (Said, Said) = (Vec::new(), Vec::new());
    for (name, side) in [
        ("left", Side::Left),
        ("right", Side::Right),
        ("top", Side::Top),
        ("bottom", Side::Bottom),
    ] {
        let Some(entry) = keys.entry(name) else { continue };
        if desk.says(&entry.value, "fold") {
            desk.fault(
                &rules::NOT_A_LENGTH,
                entry.value.site,
                "the fold is no length",
                "write `along: fold` instead, for a layer that lies against the fold",
            );
            continue;
        }
        let Some(inset) = desk.length(&entry.value) else { continue };
        let site = entry.value.site;
        let along = match within {
            Some((of, _)) => Along::Within { of, side, inset, site },
            None => Along::From(side, inset, site),
        };
        axis(side, &mut across, &mut up).push((along, entry.site));
    }
    let fold = against_fold(desk, keys, front, &mut across, &mut up);
    let beside = beside(desk, keys, seats, &mut across, &mut up);
    let straddled = straddling(desk, keys, seats, &mut across, &mut up);
    let centred = keys.entry("centered on").and_then(|entry| {
        let (of, site) = earlier(desk, &entry.value, seats)?;
        across.push((Along::CenterOf(of, site), entry.site));
        up.push((Along::CenterOf(of, site), entry.site));
        Some((of, site))
    });
    let middle = within.map_or(Along::Center, |(of, site)| Along::CenterOf(of, site));
    let centre = |desk: &mut Desk<'_>, name, said: &mut Said| {
        let entry = keys.entry(name)?;
        let which = desk.one_of(&entry.value, &["center", "evenly"])?;
        said.push((middle, entry.site));
        (which == 1).then_some(entry.site)
    };
    seat.evenly.across = centre(desk, "across", &mut across);
    seat.evenly.up = centre(desk, "up", &mut up);
    if let (Some(behind), Some((_, first))) =
        (&seat.behind, across.first().or(up.first()))
    {
        twice(desk, behind.site, *first);
    }
    let edges = keys.entry("edge to edge");
    let edge_to_edge = edges
        .filter(|entry| desk.yes(&entry.value) == Some(true))
        .and_then(|entry| edge(desk, entry, fold, front, seat.size, &across, &up));
    let other = within.or(beside).or(straddled).or(centred);
    let usual = other.map_or(Along::Center, |(of, site)| Along::CenterOf(of, site));
    let mut one = |said: &Said, runs: Axis| {
        let mut said = said.clone();
        if edge_to_edge == Some(runs) {
            said.clear();
            return Along::Center;
        }
        if let [(_, first), (_, second), ..] = said[..] {
            twice(desk, second, first);
        }
        said.first().map_or(usual, |(along, _)| *along)
    };
    let (across, up) = (one(&across, Axis::Level), one(&up, Axis::Upright));
    // A fault may be noted without costing the place; then nothing is built.
    let sound =
        desk.notes[before.min(desk.notes.len())..].iter().all(|it| !it.is_error());
    sound.then_some(Placing { across, up, edge_to_edge })
}

/// The direction that a side is measured in.
fn axis<'s>(side: Side, across: &'s mut Said, up: &'s mut Said) -> &'s mut Said {
    match side {
        Side::Left | Side::Right => across,
        Side::Top | Side::Bottom => up,
    }
}

fn twice(desk: &mut Desk<'_>, site: Site, first: Site) {
    desk.note(
        Diagnostic::new(
            &rules::PLACED_TWICE,
            site,
            "the layer already has a place in this direction",
        )
        .label(first, "from here")
        .help("keep one of the two"),
    );
}

/// The earlier layer that a node names: the last one of that name.
fn earlier(desk: &mut Desk<'_>, node: &Node, seats: &[Seat]) -> Option<(usize, Site)> {
    let (name, _) = desk.raw(node)?;
    earlier_called(desk, name, node.site, seats)
}

fn earlier_called(
    desk: &mut Desk<'_>,
    name: &str,
    site: Site,
    seats: &[Seat],
) -> Option<(usize, Site)> {
    let found = seats.iter().rposition(|seat| seat.name == name);
    if found.is_none() {
        let names: Vec<_> = seats.iter().map(|seat| seat.name.as_str()).collect();
        let help = match names[..] {
            [] => "this is the first layer; place it from a side".to_owned(),
            _ => format!("write {}", crate::project::read::desk::either(&names)),
        };
        let message = format!("no layer before this one is called {}", quote(name));
        desk.fault(&rules::UNKNOWN_LAYER, site, message, help);
    }
    found.map(|of| (of, site))
}

/// The layer lies against the fold; gives the direction of the fold line.
fn against_fold(
    desk: &mut Desk<'_>,
    keys: &Keys<'_>,
    front: Front,
    across: &mut Said,
    up: &mut Said,
) -> Option<Axis> {
    let entry = keys.entry("along")?;
    desk.one_of(&entry.value, &["fold"])?;
    let Some(side) = front.fold else {
        if front.size.is_some() {
            let help = "place it from a side instead";
            desk.fault(
                &rules::NOT_A_CHOICE,
                entry.site,
                "an envelope has no fold here",
                help,
            );
        }
        return None;
    };
    let along = Along::From(side, Length::ZERO, entry.value.site);
    axis(side, across, up).push((along, entry.site));
    Some(if side == Side::Left { Axis::Upright } else { Axis::Level })
}

fn beside(
    desk: &mut Desk<'_>,
    keys: &Keys<'_>,
    seats: &[Seat],
    across: &mut Said,
    up: &mut Said,
) -> Option<(usize, Site)> {
    let gap = keys.entry("gap");
    let length = gap.and_then(|entry| desk.length(&entry.value)).unwrap_or(Length::ZERO);
    let (mut found, mut any) = (None, false);
    for (name, side) in [
        ("below", Side::Bottom),
        ("above", Side::Top),
        ("left of", Side::Left),
        ("right of", Side::Right),
    ] {
        let Some(entry) = keys.entry(name) else { continue };
        any = true;
        let Some((of, site)) = earlier(desk, &entry.value, seats) else { continue };
        let along = Along::Beyond { of, side, gap: length, site };
        axis(side, across, up).push((along, entry.site));
        found = found.or(Some((of, site)));
    }
    if let (Some(gap), false) = (gap, any) {
        desk.fault(
            &rules::KEY_WITHOUT_EFFECT,
            gap.site,
            "`gap` has no effect without a layer to keep away from",
            "write `below`, `above`, `left of` or `right of` with it",
        );
    }
    found
}

fn straddling(
    desk: &mut Desk<'_>,
    keys: &Keys<'_>,
    seats: &[Seat],
    across: &mut Said,
    up: &mut Said,
) -> Option<(usize, Site)> {
    let entry = keys.entry("straddling")?;
    let (text, _) = desk.raw(&entry.value)?;
    let site = entry.value.site;
    let named = text.split_once(" of ").and_then(|(side, name)| {
        let side = match side.trim() {
            "top" => Side::Top,
            "bottom" => Side::Bottom,
            "left" => Side::Left,
            "right" => Side::Right,
            _ => return None,
        };
        Some((side, name.trim()))
    });
    let Some((side, name)) = named else {
        let message = format!("{} is not a side of a layer", quote(text));
        let help = "write `top of …`, `bottom of …`, `left of …` or `right of …`";
        desk.fault(&rules::NOT_A_CHOICE, site, message, help);
        return None;
    };
    let (of, site) = earlier_called(desk, name, site, seats)?;
    axis(side, across, up).push((Along::Straddling { of, side, site }, entry.site));
    Some((of, site))
}

/// The direction in which a layer reaches from edge to edge.
fn edge(
    desk: &mut Desk<'_>,
    entry: &Entry,
    fold: Option<Axis>,
    front: Front,
    size: Option<Size>,
    across: &Said,
    up: &Said,
) -> Option<Axis> {
    if fold.is_some() {
        return fold;
    }
    let set = |said: &Said| {
        let off = said.iter().find(|(along, _)| !matches!(along, Along::Center));
        off.map(|(_, site)| *site)
    };
    match (set(across), set(up)) {
        (None, Some(_)) => Some(Axis::Level),
        (Some(_), None) => Some(Axis::Upright),
        (None, None) => {
            let (front, size) = (front.size?, size?);
            let level = match (size.width == front.width, size.height == front.height) {
                (true, false) => true,
                (false, true) => false,
                _ => size.height <= size.width,
            };
            Some(if level { Axis::Level } else { Axis::Upright })
        }
        (Some(first), Some(_)) => {
            twice(desk, entry.site, first);
            None
        }
    }
}

/// Places a layer that shows around a later one, so that their middles meet.
pub(crate) fn behind(
    desk: &mut Desk<'_>,
    index: usize,
    layers: &mut [Option<Layer>],
    seats: &[Seat],
) {
    let Some(name) = &seats[index].behind else { return };
    let later = (index + 1..seats.len()).find(|at| seats[*at].name == name.words);
    let Some(later) = later else {
        let message = format!("no layer after this one is called {}", quote(&name.words));
        let help = "write the layer that it shows around after it";
        desk.fault(&rules::UNKNOWN_LAYER, name.site, message, help);
        return;
    };
    let (Some(front), Some(outer), Some(inner)) =
        (layers[later].clone(), seats[index].size, seats[later].size)
    else {
        return;
    };
    let by = border(outer, inner);
    let moved = |along: Along, by: Length| match along {
        Along::From(side, inset, site) => Along::From(side, inset - by, site),
        Along::Beyond { of, side, gap, site } => {
            Along::Beyond { of, side, gap: gap - by, site }
        }
        Along::Within { of, side, inset, site } => {
            Along::Within { of, side, inset: inset - by, site }
        }
        Along::Center | Along::CenterOf(..) | Along::Straddling { .. } => along,
    };
    for along in [front.across, front.up] {
        if let Along::CenterOf(of, site)
        | Along::Beyond { of, site, .. }
        | Along::Straddling { of, site, .. }
        | Along::Within { of, site, .. } = along
            && index <= of
        {
            let what =
                if of == index { "the layer behind it" } else { "a layer above this" };
            desk.note(
                Diagnostic::new(
                    &rules::UNKNOWN_LAYER,
                    name.site,
                    format!("{} is itself placed by {what}", quote(&name.words)),
                )
                .label(site, "here")
                .help("place it from a side, or by a layer below both"),
            );
            return;
        }
    }
    if let Some(layer) = &mut layers[index] {
        layer.across = moved(front.across, by.width);
        layer.up = moved(front.up, by.height);
    }
}
