//! Outlines with their fills, lines, and the edge that lies at the rule.

use crate::document::Drawing;
use crate::document::Fill;
use crate::document::Mark;
use crate::document::Stroke;
use crate::geom::{self, Curved, Length, Narrowed, Rect, Shape, Side};
use crate::page::Ink;
use crate::page::Line;
use crate::page::PathStep;
use crate::page::Piece;

use super::canvas::{Canvas, Drawn, Edges, index, inset, look, within};
use super::hatch;

/// How far a handle of a quarter of a circle reaches, in radii.
const HANDLE: f64 = 0.552_284_75;

/// A shape with its outline and what fills it.
pub(super) fn area(
    canvas: &mut Canvas,
    rect: Rect,
    shape: Shape,
    line: Option<Stroke>,
    fill: Fill,
) {
    let edges = canvas.edges(rect);
    let piece = outline(edges, shape);
    let ground = hatch::ground(fill);
    if let Some(ground) = ground {
        canvas.path(vec![piece.clone()], Some(ground), None);
    }
    if let Some(pattern) = hatch::pattern(fill) {
        for (pieces, line) in hatch::paths(&corners(&piece), edges, &pattern) {
            canvas.path(pieces, None, Some(line));
        }
    }
    canvas.drawn.push(Drawn { edges, core: core(edges, shape), ground });
    if let Some(stroke) = line {
        let line = look(stroke);
        let half = line.width / 2.0;
        canvas.halo(std::slice::from_ref(&piece), edges, &line);
        canvas.path(vec![piece], None, Some(line));
        canvas.cover([
            edges[0] - half,
            edges[1] - half,
            edges[2] + half,
            edges[3] + half,
        ]);
    }
    canvas.cover(edges);
}

/// Draws the outline of the lowest area again where what lies on it has covered the
/// inner half of its line.
pub(super) fn edge_again(canvas: &mut Canvas, drawing: &Drawing) {
    let Some(Mark::Area { rect, shape, line: Some(stroke), .. }) = drawing.marks.first()
    else {
        return;
    };
    let edges = canvas.edges(*rect);
    let held = canvas.drawn.iter().all(|it| within(it.edges, inset(edges, -0.01)));
    let covered = canvas.drawn.len() > 1 || !canvas.pictures.is_empty();
    if covered && held {
        canvas.path(vec![outline(edges, *shape)], None, Some(look(*stroke)));
    }
}

/// A straight line.
pub(super) fn line(canvas: &mut Canvas, along: Rect, stroke: Stroke) {
    let [left, top, right, bottom] = canvas.edges(along);
    canvas.cover([left, top, right, bottom]);
    let line = look(stroke);
    let pieces = vec![Piece::line((left, top), (right, bottom))];
    canvas.halo(&pieces, [left, top, right, bottom], &line);
    canvas.path(pieces, None, Some(line));
}

/// The edge that lies against the trimmer's rule: a thick bar beside it.
pub(super) fn rule(canvas: &mut Canvas, side: Side, rect: Rect) {
    const GAP: f64 = 1.6;
    const THICK: f64 = 3.4;
    let [left, top, right, bottom] = canvas.edges(rect);
    let far = GAP + THICK;
    let bar: Edges = match side {
        Side::Left => [left - far, top, left - GAP, bottom],
        Side::Top => [left, top - far, right, top - GAP],
        Side::Right => [right + GAP, top, right + far, bottom],
        Side::Bottom => [left, bottom + GAP, right, bottom + far],
    };
    canvas.blank(bar, Ink::TEXT);
    canvas.cover(bar);
    canvas.taken.push(bar);
    // What else stands on this side keeps clear of it.
    let area = canvas.area;
    let out = [area[0] - bar[0], area[1] - bar[1], bar[2] - area[2], bar[3] - area[3]];
    let side = index(side);
    canvas.reach[side] = canvas.reach[side].max(out[side]);
}

/// The outline of a shape in a box.
pub(super) fn outline([left, top, right, bottom]: Edges, shape: Shape) -> Piece {
    let (width, height) = (right - left, bottom - top);
    let short = width.min(height);
    match shape {
        Shape::Rectangle => Piece::rect(left, top, width, height),
        Shape::Rounded => rounded([left, top, right, bottom], 0.18 * short, 0.18 * short),
        Shape::Circle | Shape::Oval => {
            rounded([left, top, right, bottom], width / 2.0, height / 2.0)
        }
        Shape::Tag => {
            // Two corners of the narrow side on the left or at the top are cut.
            let cut = 0.28 * short;
            let points = if width >= height {
                [
                    (left + cut, top),
                    (right, top),
                    (right, bottom),
                    (left + cut, bottom),
                    (left, bottom - cut),
                    (left, top + cut),
                ]
            } else {
                [
                    (left + cut, top),
                    (right - cut, top),
                    (right, top + cut),
                    (right, bottom),
                    (left, bottom),
                    (left, top + cut),
                ]
            };
            Piece::polygon(&points)
        }
        Shape::Narrowed(narrowed) => overlap([left, top, right, bottom], narrowed),
    }
}

/// What two passes of a punch leave, stretched into a box.
fn overlap([left, top, right, bottom]: Edges, narrowed: Narrowed) -> Piece {
    let corners = geom::corners(Shape::Narrowed(narrowed), narrowed.whole);
    if corners.is_empty() {
        return Piece::rect(left, top, right - left, bottom - top);
    }
    let most =
        |of: fn(&(Length, Length)) -> f64| corners.iter().map(of).fold(1e-9, f64::max);
    let (wide, high) = (most(|it| it.0.as_mm()), most(|it| it.1.as_mm()));
    let points: Vec<(f64, f64)> = corners
        .iter()
        .map(|(x, y)| {
            (
                left + x.as_mm() / wide * (right - left),
                top + y.as_mm() / high * (bottom - top),
            )
        })
        .collect();
    Piece::polygon(&points)
}

/// The largest part of a shape that is a box, with a little air.
fn core(edges: Edges, shape: Shape) -> Edges {
    let [left, top, right, bottom] = edges;
    let (width, height) = (right - left, bottom - top);
    // An oval holds a box of 1/√2 of its width and height.
    let short = width.min(height);
    let (dx, dy) = match shape {
        Shape::Rectangle => (0.0, 0.0),
        Shape::Rounded => (0.055 * short, 0.055 * short),
        // Its corners are as round as they were when it was higher.
        Shape::Narrowed(narrowed) if narrowed.of == Curved::Rounded => {
            (0.08 * short, 0.08 * short)
        }
        Shape::Circle | Shape::Oval | Shape::Narrowed(_) => (0.15 * width, 0.15 * height),
        Shape::Tag => (0.14 * width, 0.14 * height),
    };
    [left + dx, top + dy, right - dx, bottom - dy]
}

/// A box with corners that are quarters of an ellipse.
fn rounded([left, top, right, bottom]: Edges, rx: f64, ry: f64) -> Piece {
    let (hx, hy) = (rx * (1.0 - HANDLE), ry * (1.0 - HANDLE));
    let steps = vec![
        PathStep::To(right - rx, top),
        PathStep::Curve([(right - hx, top), (right, top + hy), (right, top + ry)]),
        PathStep::To(right, bottom - ry),
        PathStep::Curve([
            (right, bottom - hy),
            (right - hx, bottom),
            (right - rx, bottom),
        ]),
        PathStep::To(left + rx, bottom),
        PathStep::Curve([(left + hx, bottom), (left, bottom - hy), (left, bottom - ry)]),
        PathStep::To(left, top + ry),
        PathStep::Curve([(left, top + hy), (left + hx, top), (left + rx, top)]),
    ];
    Piece { start: (left + rx, top), steps, closed: true }
}

/// The outline as a polygon; curves become short straight lines.
fn corners(piece: &Piece) -> Vec<(f64, f64)> {
    let mut points = vec![piece.start];
    for step in &piece.steps {
        let from = points[points.len() - 1];
        match *step {
            PathStep::To(x, y) => points.push((x, y)),
            PathStep::Curve([one, two, to]) => {
                for part in 1..=8 {
                    let t = f64::from(part) / 8.0;
                    let u = 1.0 - t;
                    let mix = |a: f64, b: f64, c: f64, d: f64| {
                        u * u * u * a
                            + 3.0 * u * u * t * b
                            + 3.0 * u * t * t * c
                            + t * t * t * d
                    };
                    points.push((
                        mix(from.0, one.0, two.0, to.0),
                        mix(from.1, one.1, two.1, to.1),
                    ));
                }
            }
        }
    }
    points
}

/// A thin continuous line.
pub(super) fn thin(ink: Ink) -> Line {
    Line { ink, width: 0.45, dash: Vec::new(), round: false }
}
