//! Whether a layer lies well where it lies.

use crate::diag::{Diagnostic, rules};
use crate::geom::{Axis, Length, Rect, Side, Size, Turn, Unit};
use crate::plan::uses::{face_of, name_of, paper_of, runs};
use crate::project::{Layer, Project, Runs, ToolKind};

/// The side of a foam square (common practice, no source).
const SQUARE: Length = Length::mm(6);

/// How far in from the edge a foam square does not show (common practice, no
/// source).
const HIDDEN: Length = Length::mm(2);

/// What layers are placed on: a front, an inside, an envelope.
pub(crate) struct Ground<'a> {
    pub(crate) project: &'a Project,
    pub(crate) size: Size,
    /// With its article, for messages.
    pub(crate) name: &'a str,
}

impl Ground<'_> {
    /// Notes everything that is wrong with a layer at its place.
    pub(crate) fn check(&self, layer: &Layer, outer: Rect, notes: &mut Vec<Diagnostic>) {
        let before = notes.len();
        self.reaches(layer, outer, notes);
        if notes.len() == before {
            self.stays_on(layer, outer, notes);
        }
        self.squares_fit(layer, outer.size, notes);
        self.pattern_stands(layer, notes);
    }

    /// A layer that is to go from edge to edge does so.
    fn reaches(&self, layer: &Layer, outer: Rect, notes: &mut Vec<Diagnostic>) {
        let Some(axis) = layer.edge_to_edge else { return };
        let unit = self.project.unit;
        let (has, needs) = (outer.size.along(axis), self.size.along(axis));
        let name = name_of(self.project, layer.what);
        let (word, sides) = match axis {
            Axis::Level => ("wide", [Side::Left, Side::Right]),
            Axis::Upright => ("high", [Side::Top, Side::Bottom]),
        };
        if has < needs {
            let message = format!(
                "`{name}` is {} {word}, but {} is {}: {} short of going from edge to edge",
                has.show(unit),
                self.name,
                needs.show(unit),
                (needs - has).show(unit),
            );
            let help = format!("make it {} {word}", needs.show(unit));
            let note = Diagnostic::new(&rules::LAYER_DOES_NOT_REACH, layer.site, message);
            notes.push(note.help(help));
            return;
        }
        for side in sides {
            let missing = -self.over(outer, side);
            if missing > Length::ZERO {
                let message = format!(
                    "`{name}` lies {} in from the {} edge, which it is to reach",
                    missing.show(unit),
                    side_word(side),
                );
                let note =
                    Diagnostic::new(&rules::LAYER_DOES_NOT_REACH, layer.site, message);
                notes.push(note.help("leave its place in this direction out"));
            }
        }
    }

    /// Nothing hangs over, unless it is trimmed flush.
    fn stays_on(&self, layer: &Layer, outer: Rect, notes: &mut Vec<Diagnostic>) {
        let unit = self.project.unit;
        let name = name_of(self.project, layer.what);
        let beside = outer.overlap(Rect::whole(self.size)).is_none();
        let mut hangs = false;
        for side in [Side::Left, Side::Top, Side::Right, Side::Bottom] {
            let over = self.over(outer, side);
            if over <= Length::ZERO {
                continue;
            }
            hangs = true;
            if layer.trim_flush && !beside {
                continue;
            }
            let (axis, word) = match side {
                Side::Left | Side::Right => (Axis::Level, "wide"),
                Side::Top | Side::Bottom => (Axis::Upright, "high"),
            };
            let (has, room) = (outer.size.along(axis), self.size.along(axis));
            let message = format!(
                "`{name}` hangs {} over the {} edge of {}",
                over.show(unit),
                side_word(side),
                self.name,
            );
            let help = if has > room {
                format!(
                    "it is {} {word} and {} only {}: make it smaller, or say `trim flush: true`",
                    has.show(unit),
                    self.name,
                    room.show(unit),
                )
            } else {
                format!(
                    "move it {} {}, or say `trim flush: true`; {} is {} {word}",
                    over.show(unit),
                    inward(side),
                    self.name,
                    room.show(unit),
                )
            };
            let note = Diagnostic::new(&rules::LAYER_OFF_THE_FRONT, layer.site, message);
            notes.push(note.help(help));
        }
        if hangs && layer.trim_flush && !beside && layer.raised > 0 {
            let message = format!("`{name}` is raised, so it can't be trimmed flush");
            let note = Diagnostic::new(&rules::RAISED_LAYER_TRIMMED, layer.site, message);
            notes.push(note.help("lay it flat, or keep it inside"));
        }
    }

    /// How far a rectangle hangs over a side; negative if it lies within.
    fn over(&self, outer: Rect, side: Side) -> Length {
        match side {
            Side::Left => -outer.x,
            Side::Top => -outer.y,
            Side::Right => outer.right() - self.size.width,
            Side::Bottom => outer.bottom() - self.size.height,
        }
    }

    /// The foam squares find room behind the layer, away from its edge.
    fn squares_fit(&self, layer: &Layer, size: Size, notes: &mut Vec<Diagnostic>) {
        if layer.raised == 0 {
            return;
        }
        let square = self.square(layer);
        let in_one = |extent: Length| (extent - HIDDEN * 2).units() / square.units();
        let (across, up) = (in_one(size.width).max(0), in_one(size.height).max(0));
        let room = across.saturating_mul(up);
        if i64::from(layer.raised) > room {
            let unit = self.project.unit;
            let message = format!(
                "{} foam squares don't fit behind `{}`, which is {}",
                layer.raised,
                name_of(self.project, layer.what),
                size.show(unit),
            );
            let help = format!(
                "{room} squares of {} find room, {} in from the edge",
                square.show(if square == SQUARE { Unit::Mm } else { unit }),
                HIDDEN.show(Unit::Mm),
            );
            let note = Diagnostic::new(&rules::TOO_MANY_SQUARES, layer.site, message);
            notes.push(note.help(help));
        }
    }

    /// The side of the foam squares behind a layer: those it is fixed with, else the
    /// first that say how large they are.
    fn square(&self, layer: &Layer) -> Length {
        let side = |kind: &ToolKind| match kind {
            ToolKind::Foam { side, .. } => side.filter(|it| Length::ZERO < *it),
            _ => None,
        };
        let tools = &self.project.tools;
        let own = layer.with.and_then(|it| side(&tools[it.0].kind));
        own.or_else(|| tools.iter().find_map(|it| side(&it.kind))).unwrap_or(SQUARE)
    }

    /// A pattern with a direction stands upright.
    fn pattern_stands(&self, layer: &Layer, notes: &mut Vec<Diagnostic>) {
        let paper = &self.project.papers[paper_of(self.project, layer.what).0];
        let face = face_of(self.project, layer);
        let lies = match runs(paper, face) {
            Runs::Up => layer.turned != Turn::None,
            Runs::BothWays => layer.turned.swaps(),
            Runs::Any => false,
        };
        if lies {
            let name = name_of(self.project, layer.what);
            let message = format!("the pattern of `{name}` will not stand upright");
            let note = Diagnostic::new(&rules::PATTERN_TURNED, layer.site, message);
            let face = paper.faces.get(face.0).map_or(paper.name.site, |it| it.name.site);
            notes.push(note.label(face, "the pattern of this face has a direction"));
        }
    }
}

const fn side_word(side: Side) -> &'static str {
    match side {
        Side::Left => "left",
        Side::Top => "top",
        Side::Right => "right",
        Side::Bottom => "bottom",
    }
}

const fn inward(side: Side) -> &'static str {
    match side {
        Side::Left => "to the right",
        Side::Top => "down",
        Side::Right => "to the left",
        Side::Bottom => "up",
    }
}
