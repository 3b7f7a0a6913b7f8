//! Parts of pictures, seen as through windows.

use crate::document::Stroke;
use crate::geom::Rect;
use crate::geom::Shape;
use crate::geom::Turn;
use crate::page::Window;

use super::canvas::{Canvas, Edges, look, overlap};
use super::shapes::outline;

/// A picture as it lies under its window.
#[derive(Clone, Copy, Debug)]
pub(super) struct Seen {
    /// Which picture of the document.
    pub(super) number: usize,
    /// Where the whole of it lies, after its turn.
    pub(super) whole: Rect,
    /// How it is turned.
    pub(super) turn: Turn,
}

/// Draws what of a picture falls into a box, and the outline of the box.
pub(super) fn picture(
    canvas: &mut Canvas,
    rect: Rect,
    shape: Shape,
    line: Option<Stroke>,
    seen: Seen,
) {
    let edges = canvas.edges(rect);
    let whole = canvas.edges(seen.whole);
    let piece = outline(edges, shape);
    let line = line.map(look);
    let half = line.as_ref().map_or(0.0, |it| it.width / 2.0);
    let [left, top, right, bottom] = edges;
    canvas.cover([left - half, top - half, right + half, bottom + half]);
    // The outline stands out from a picture that lies below this one.
    if let Some(line) = &line {
        canvas.halo(std::slice::from_ref(&piece), edges, line);
    }
    if overlap(edges, whole) {
        let number = seen.number;
        let window = Window {
            picture: number,
            whole: corners(whole, seen.turn),
            outline: piece.clone(),
        };
        canvas.window(window);
        let seen: Edges = [
            left.max(whole[0]),
            top.max(whole[1]),
            right.min(whole[2]),
            bottom.min(whole[3]),
        ];
        canvas.pictures.push((canvas.drawn.len(), seen));
    }
    if let Some(line) = line {
        canvas.path(vec![piece], None, Some(line));
    }
}

/// Where the top left corner of a turned picture lies in its box, and the ways from
/// there to its top right and to its bottom left corner.
fn corners([left, top, right, bottom]: Edges, turn: Turn) -> [(f64, f64); 3] {
    let (width, height) = (right - left, bottom - top);
    match turn {
        Turn::None => [(left, top), (width, 0.0), (0.0, height)],
        Turn::Right => [(right, top), (0.0, height), (-width, 0.0)],
        Turn::Over => [(right, bottom), (-width, 0.0), (0.0, -height)],
        Turn::Left => [(left, bottom), (0.0, -height), (width, 0.0)],
    }
}
