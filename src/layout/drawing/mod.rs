//! Drawings: marks in paper lengths become items in points, at one scale.
//!
//! Whatever the scale, words keep their size: they stand inside what they name if
//! they fit, else outside, and never upon one another.

mod canvas;
mod dimensions;
mod hatch;
mod names;
mod pictures;
mod rulers;
mod shapes;

use crate::document::Drawing;
use crate::document::Mark;
use crate::geom::Scale;
use crate::page::Item;
use crate::page::Owner;
use crate::page::TagId;

use super::setter::Setter;
use canvas::Canvas;

/// A finished drawing, its top left corner at the origin.
pub(crate) struct Picture {
    /// With all that stands outside the area.
    pub(crate) width: f64,
    /// Likewise.
    pub(crate) height: f64,
    /// In the order in which they cover each other.
    pub(crate) items: Vec<Item>,
}

/// Draws at a scale.
pub(crate) fn picture(
    setter: &mut Setter<'_>,
    drawing: &Drawing,
    scale: Scale,
    tag: TagId,
) -> Picture {
    draw(setter, drawing, scale, Owner::Tag(tag)).finish()
}

/// How wide and high a drawing is at a scale, with all that stands outside.
pub(crate) fn extent(
    setter: &mut Setter<'_>,
    drawing: &Drawing,
    scale: Scale,
) -> (f64, f64) {
    if let Some(extent) = setter.extents.known(drawing, scale) {
        return extent;
    }
    let [left, top, right, bottom] =
        draw(setter, drawing, scale, Owner::Tag(TagId::ROOT)).bounds;
    let extent = (right - left, bottom - top);
    setter.extents.keep(drawing, scale, extent);
    extent
}

/// Draws from the bottom upwards: areas and lines, then what is outside, then the
/// names, which look for a place that is free.
fn draw(
    setter: &mut Setter<'_>,
    drawing: &Drawing,
    scale: Scale,
    owner: Owner,
) -> Canvas {
    let mut canvas = Canvas::new(setter, drawing, scale, owner);
    for mark in &drawing.marks {
        match mark {
            Mark::Area { rect, shape, line, fill } => {
                shapes::area(&mut canvas, *rect, *shape, *line, *fill);
            }
            Mark::Picture { rect, shape, line, number, whole, turn } => {
                let seen = pictures::Seen { number: *number, whole: *whole, turn: *turn };
                pictures::picture(&mut canvas, *rect, *shape, *line, seen);
            }
            Mark::Line { along, line } => shapes::line(&mut canvas, *along, *line),
            Mark::Rule { side, rect } => shapes::rule(&mut canvas, *side, *rect),
            Mark::RulerInch { rect } => rulers::inches(&mut canvas, setter, *rect),
            Mark::RulerMm { rect } => rulers::millimetres(&mut canvas, setter, *rect),
            Mark::Name { .. }
            | Mark::Dimension { .. }
            | Mark::Runs { .. }
            | Mark::CutNumber { .. } => {}
        }
    }
    shapes::edge_again(&mut canvas, drawing);
    names::arrows(&mut canvas, drawing);
    let outside = names::inside(&mut canvas, setter, drawing);
    let bare = canvas.reach;
    let rings = dimensions::rings(&mut canvas, setter, drawing);
    let below = canvas.items.len();
    dimensions::dimensions(&mut canvas, setter, drawing, bare);
    dimensions::draw_rings(&mut canvas, rings);
    names::leaders(&mut canvas, setter, outside, below);
    canvas
}
