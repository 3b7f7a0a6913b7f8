//! Labels that are made narrower by a second pass of their punch, and mats.

use crate::diag::{Diagnostic, rules};
use crate::geom::{self, Axis, Halves, Length, Side, Size, Unit};
use crate::project::read::desk::Desk;
use crate::project::read::draft::{Draft, at};
use crate::project::read::tools::of_kind;
use crate::project::tree::{Node, Value};
use crate::project::{
    Label, LabelMat, Narrowing, Outline, PaperId, PunchedMat, ToolId, ToolKind,
};
use crate::source::Site;

/// A second pass as it is described.
pub(crate) type Pass = Narrowing;

/// A mat as it is described, before the label under which it lies is known.
#[derive(Clone, Debug)]
pub(crate) struct RawMat {
    of: PaperId,
    border: Option<Length>,
    punched: Option<(ToolId, Outline)>,
    halved: Option<Axis>,
    /// Slid together or apart, and where that is said.
    apart: Option<(bool, Site)>,
    site: Site,
}

/// Whether a node says `none`.
fn is_none(node: &Node) -> bool {
    matches!(&node.value, Value::Words { text, .. } if text.trim() == "none")
}

/// Reads a second pass; `none` takes back that of the greeting it is like.
pub(crate) fn pass(desk: &mut Desk<'_>, node: &Node) -> Option<Pass> {
    if is_none(node) {
        return None;
    }
    let keys = desk.open(node, node.site, "narrowed");
    let take_off = desk.need(&keys, "take off").and_then(|node| desk.some_length(node));
    let sides = [Side::Top, Side::Bottom, Side::Left, Side::Right];
    let side = desk.need(&keys, "side").and_then(|node| {
        desk.one_of(node, &["top", "bottom", "left", "right"]).map(|it| sides[it])
    });
    let held_with = keys.get("held with").and_then(|node| desk.words(node));
    let site = keys.get("take off").map_or(node.site, |it| it.site);
    Some(Narrowing { take_off: take_off?, side: side?, held_with, site })
}

/// Reads a mat; `none` takes back that of the greeting it is like.
pub(crate) fn raw(desk: &mut Desk<'_>, node: &Node, draft: &Draft) -> Option<RawMat> {
    if is_none(node) {
        return None;
    }
    let keys = desk.open(node, node.site, "mat");
    let of =
        desk.need(&keys, "of").and_then(|node| desk.resolve(node, &draft.paper_names));
    let border = keys.get("border").map(|node| desk.some_length(node));
    let punched = keys.get("punched with").map(|node| {
        let punch = of_kind(desk, node, draft, "a punch", |kind| {
            matches!(kind, ToolKind::Punch(_))
        })?;
        match at(&draft.tools, punch.0)?.kind {
            ToolKind::Punch(made) => Some((punch, made.outline)),
            _ => None,
        }
    });
    if punched.is_none() && border.is_none() {
        desk.missing(&keys, "border");
    }
    let halved = keys.get("halved").map(|node| {
        desk.one_of(node, &["top and bottom", "left and right"])
            .map(|it| [Axis::Level, Axis::Upright][it])
    });
    let apart = keys.get("slid").map(|node| {
        desk.one_of(node, &["together", "apart"]).map(|it| (it == 1, node.site))
    });
    for (name, other) in [("halved", "punched with"), ("slid", "halved")] {
        if let (Some(entry), None) = (keys.entry(name), keys.entry(other)) {
            let message = format!("`{name}` has no effect without `{other}`");
            let help = format!("write `{other}` with it, or remove it");
            desk.fault(&rules::KEY_WITHOUT_EFFECT, entry.site, message, help);
        }
    }
    // What is given must have been understood.
    let border = match border {
        Some(border) => Some(border?),
        None => None,
    };
    let punched = match punched {
        Some(punched) => Some(punched?),
        None => None,
    };
    Some(RawMat {
        of: PaperId(of?),
        border,
        punched,
        halved: halved.flatten(),
        apart: apart.flatten(),
        site: node.site,
    })
}

/// The label after its second pass, if it has one.
pub(crate) fn narrow(
    desk: &mut Desk<'_>,
    label: Label,
    pass: Option<Pass>,
) -> Option<(Label, Option<Narrowing>)> {
    let Some(pass) = pass else { return Some((label, None)) };
    if label.punch.is_none() {
        desk.note(
            Diagnostic::new(
                &rules::KEY_WITHOUT_EFFECT,
                pass.site,
                "`narrowed` has no effect on a label that is cut",
            )
            .label(label.site, "the label")
            .help("cut it to the size it is to have"),
        );
        return Some((label, None));
    }
    let Outline { shape, size } = label.outline;
    let left = geom::narrowed(shape, size, pass.take_off, pass.side);
    let Some((shape, size)) = left else {
        let unit = desk.shown();
        let extent = match pass.side {
            Side::Left | Side::Right => size.width,
            Side::Top | Side::Bottom => size.height,
        };
        let (off, extent) = (pass.take_off.show(unit), extent.show(unit));
        desk.note(
            Diagnostic::new(
                &rules::NARROWED_TO_NOTHING,
                pass.site,
                format!("{off} comes off, and the punch makes only {extent} there"),
            )
            .label(label.site, "the label")
            .help("take less off"),
        );
        return None;
    };
    Some((Label { outline: Outline { shape, size }, ..label }, Some(pass)))
}

/// The mat under a label of a size: what shows of it, what is trimmed.
pub(crate) fn settle(
    desk: &mut Desk<'_>,
    raw: &RawMat,
    on_top: Outline,
) -> Option<LabelMat> {
    let label = on_top.size;
    let wanted = raw.border.unwrap_or(match desk.shown() {
        Unit::Inch => Length::inch(1, 16),
        Unit::Mm => Length::from_units(Length::MM.units() * 3 / 2),
    });
    let Some((with, outline)) = raw.punched else {
        return Some(LabelMat::cut(raw.of, wanted, raw.site));
    };
    let whole = outline.size;
    let over = |axis: Axis| whole.along(axis) - label.along(axis);
    let Some(halved) = raw.halved else {
        let [across, up] = [Axis::Level, Axis::Upright].map(over);
        if across < Length::ZERO || up < Length::ZERO {
            label_over_mat(desk, raw, label, whole);
            return None;
        }
        peeps_out(desk, raw, on_top, (outline, Axis::Level, Length::ZERO));
        let shows = Size::new(across.half(), up.half());
        let shape = outline.shape;
        let (moved, trim) = (Length::ZERO, Length::ZERO);
        let punched = PunchedMat { with, shape, halved: Axis::Level, moved, trim };
        return Some(LabelMat {
            of: raw.of,
            shows,
            punched: Some(punched),
            site: raw.site,
        });
    };
    // Halves move across the cut between them.
    let (along, across) = (halved.other(), halved);
    let moved = wanted * 2 - over(along);
    if let Some((apart, site)) = raw.apart
        && moved != Length::ZERO
        && apart != (Length::ZERO < moved)
    {
        slid_wrongly(desk, raw, apart, moved, site);
        return None;
    }
    if over(across) < Length::ZERO || label.along(along) < moved {
        label_over_mat(desk, raw, label, whole);
        return None;
    }
    peeps_out(desk, raw, on_top, (outline, halved, moved));
    let at_ends = over(across).half();
    let trim = if wanted < at_ends { at_ends - wanted } else { Length::ZERO };
    let at_ends = at_ends - trim;
    if Length::ZERO < at_ends && moved != Length::ZERO {
        let unit = desk.shown();
        let ends = match across {
            Axis::Level => "at the left and at the right",
            Axis::Upright => "at the top and at the bottom",
        };
        desk.fault(
            &rules::MAT_SEAM_SHOWS,
            raw.site,
            format!("the seam of the mat shows for {} {ends}", at_ends.show(unit)),
            "halve it the other way, or take a punch that leaves no border there",
        );
    }
    let shows = match along {
        Axis::Level => Size::new(wanted, at_ends),
        Axis::Upright => Size::new(at_ends, wanted),
    };
    let punched = PunchedMat { with, shape: outline.shape, halved, moved, trim };
    Some(LabelMat { of: raw.of, shows, punched: Some(punched), site: raw.site })
}

fn slid_wrongly(
    desk: &mut Desk<'_>,
    raw: &RawMat,
    apart: bool,
    moved: Length,
    site: Site,
) {
    let unit = desk.shown();
    let by = if moved < Length::ZERO { -moved } else { moved }.show(unit);
    let (message, cure) = if apart {
        (
            format!(
                "slid apart, too much of the mat would show; it must come together by {by}"
            ),
            "together",
        )
    } else {
        (
            format!(
                "slid together, the mat would be too small; its halves must lie {by} apart"
            ),
            "apart",
        )
    };
    desk.note(
        Diagnostic::new(&rules::MAT_SLID_THE_WRONG_WAY, site, message)
            .label(raw.site, "the mat")
            .help(format!("write `slid: {cure}`")),
    );
}

/// Notes a label of which a corner is seen beside its mat, although its box is not.
fn peeps_out(
    desk: &mut Desk<'_>,
    raw: &RawMat,
    label: Outline,
    (mat, cut, moved): (Outline, Axis, Length),
) {
    let halves = Halves { shape: mat.shape, size: mat.size, cut, moved };
    if halves.let_out(label.shape, label.size) {
        let message = "a corner of the label peeps out where the mat is rounder";
        let help = "take a rounder label, a larger punch, or a mat that is cut";
        desk.fault(&rules::LABEL_OVER_MAT, raw.site, message, help);
    }
}

fn label_over_mat(desk: &mut Desk<'_>, raw: &RawMat, label: Size, mat: Size) {
    let unit = desk.shown();
    let (label, mat) = (label.show(unit), mat.show(unit));
    desk.fault(
        &rules::LABEL_OVER_MAT,
        raw.site,
        format!(
            "the label is {label}; the punch makes {mat}, which doesn't reach around it"
        ),
        "halve it the other way, or take a larger punch",
    );
}
