//! What stands outside the outline: rings with the numbers of cuts, and dimensions
//! (ISO 129-1: each once, outside, readable from below and from the right, always
//! the real size).

use crate::document::Drawing;
use crate::document::Mark;
use crate::fonts::FaceId;
use crate::geom::Side;
use crate::page::Ink;
use crate::page::PathStep;
use crate::page::Piece;

use super::canvas::{Canvas, Edges, Word, index};
use super::names::head;
use super::shapes::thin;
use crate::layout::setter::Setter;

/// A stretch along a side, and how far from the area.
#[derive(Clone, Copy, Debug)]
struct Spot {
    side: Side,
    from: f64,
    to: f64,
}

impl Spot {
    /// A point so far along and so far out.
    fn point(self, area: Edges, along: f64, out: f64) -> (f64, f64) {
        match self.side {
            Side::Left => (area[0] - out, along),
            Side::Top => (along, area[1] - out),
            Side::Right => (area[2] + out, along),
            Side::Bottom => (along, area[3] + out),
        }
    }

    /// The box between two distances.
    fn edges(self, area: Edges, (from, to): (f64, f64), (near, far): (f64, f64)) -> Edges {
        let one = self.point(area, from, near);
        let two = self.point(area, to, far);
        [one.0.min(two.0), one.1.min(two.1), one.0.max(two.0), one.1.max(two.1)]
    }
}

/// Draws the numbers of cuts in rings.
pub(super) fn rings(canvas: &mut Canvas, setter: &mut Setter<'_>, drawing: &Drawing) {
    let radius = 0.78 * canvas.size;
    let area = canvas.area;
    let start = canvas.reach;
    for mark in &drawing.marks {
        let Mark::CutNumber { side, along, text } = mark else { continue };
        let edges = canvas.edges(*along);
        let level = matches!(side, Side::Top | Side::Bottom);
        let at = if level { (edges[0] + edges[2]) / 2.0 } else { (edges[1] + edges[3]) / 2.0 };
        let word = Word::new(setter, text, FaceId::SANS_STRONG, canvas.size);
        let radius = radius.max(word.width / 2.0 + 2.5);
        let spot = Spot { side: *side, from: at - radius, to: at + radius };
        // The nearest lane in which no other ring is in the way.
        let mut out = start[index(*side)] + 3.5;
        let mut ring = spot.edges(area, (spot.from, spot.to), (out, out + 2.0 * radius));
        while !canvas.is_free(ring) {
            out += 2.0 * radius + 1.0;
            ring = spot.edges(area, (spot.from, spot.to), (out, out + 2.0 * radius));
        }
        let centre = spot.point(area, at, out + radius);
        let stem = Piece::line(spot.point(area, at, 0.5), spot.point(area, at, out));
        canvas.strokes(vec![stem], Ink::ACCENT, 0.8);
        canvas.path(vec![circle(centre, radius)], Some(Ink::PAPER), None);
        canvas.strokes(vec![circle(centre, radius)], Ink::ACCENT, 0.9);
        let baseline = centre.1 + 0.34 * canvas.size;
        canvas.write(&word, centre.0 - word.width / 2.0, baseline, false, Ink::TEXT);
        canvas.taken.push(ring);
        canvas.cover([ring[0] - 0.5, ring[1] - 0.5, ring[2] + 0.5, ring[3] + 0.5]);
        let reach = &mut canvas.reach[index(*side)];
        *reach = reach.max(out + 2.0 * radius);
    }
}

/// Draws the dimensions.
pub(super) fn dimensions(canvas: &mut Canvas, setter: &mut Setter<'_>, drawing: &Drawing) {
    let mut marks: Vec<_> = drawing
        .marks
        .iter()
        .filter_map(|mark| match mark {
            Mark::Dimension { side, along, text, tier } => Some((*side, *along, text, *tier)),
            _ => None,
        })
        .collect();
    marks.sort_by_key(|it| it.3);
    let start = canvas.reach;
    // What is taken on each side: lane and stretch.
    let mut lanes: [Vec<(u8, f64, f64)>; 4] = Default::default();
    let mut texts = Vec::new();
    for (side, along, text, tier) in marks {
        let edges = canvas.edges(along);
        let level = matches!(side, Side::Top | Side::Bottom);
        let (from, to) = if level { (edges[0], edges[2]) } else { (edges[1], edges[3]) };
        let word = Word::new(setter, text, FaceId::SANS, canvas.size);
        let middle = (from + to) / 2.0;
        let half = (word.width / 2.0 + 2.0).max((to - from) / 2.0 - 0.1);
        let taken = &mut lanes[index(side)];
        let clash = |lane: u8| {
            taken.iter().any(|it| it.0 == lane && it.1 < middle + half && middle - half < it.2)
        };
        let lane = (tier..u8::MAX).find(|it| !clash(*it)).unwrap_or(u8::MAX);
        taken.push((lane, middle - half, middle + half));
        texts.push((Spot { side, from, to }, lane, word));
    }
    // Lanes that nothing stands in take no room.
    for (spot, lane, word) in texts {
        let side = index(spot.side);
        let mut used: Vec<u8> = lanes[side].iter().map(|it| it.0).collect();
        used.sort_unstable();
        used.dedup();
        let lane = used.iter().position(|it| *it == lane).unwrap_or(0);
        dimension(canvas, spot, start[side], lane, &word);
    }
}

/// Draws one dimension in its lane.
fn dimension(canvas: &mut Canvas, spot: Spot, start: f64, lane: usize, word: &Word) {
    let (size, area) = (canvas.size, canvas.area);
    let pitch = 1.5 * size;
    // Words stand above their line: outside it at the top and left, inside it at
    // the bottom and right.
    let outside = matches!(spot.side, Side::Top | Side::Left);
    let near = start + 4.0 + pitch * lane as f64;
    let line = near + if outside { 2.0 } else { 1.15 * size };
    let (words_near, words_far) =
        if outside { (line + 2.2, line + 2.2 + 0.9 * size) } else { (near, line - 2.0) };
    let (from, to) = (spot.from, spot.to);
    let point = |along: f64, out: f64| spot.point(area, along, out);
    let gap = start + 1.5;
    canvas.path(
        vec![
            Piece::line(point(from, gap), point(from, line + 2.5)),
            Piece::line(point(to, gap), point(to, line + 2.5)),
        ],
        None,
        Some(thin(Ink::QUIET)),
    );
    let (long, slim) = (5.0, 1.1);
    let mut heads = Vec::new();
    let mut strokes = Vec::new();
    if to - from >= 2.0 * long + 2.0 {
        strokes.push(Piece::line(point(from, line), point(to, line)));
        heads.push(head(point(to, line), point(from, line), long, slim));
        heads.push(head(point(from, line), point(to, line), long, slim));
    } else {
        // Too short for arrows inside: they point at it from outside.
        strokes.push(Piece::line(point(from - 8.0, line), point(to + 8.0, line)));
        heads.push(head(point(from - 9.0, line), point(from, line), long, slim));
        heads.push(head(point(to + 9.0, line), point(to, line), long, slim));
    }
    canvas.path(strokes, None, Some(thin(Ink::QUIET)));
    canvas.path(heads, Some(Ink::QUIET), None);
    let middle = (from + to) / 2.0;
    let half = word.width / 2.0;
    let words =
        spot.edges(area, (middle - half - 1.0, middle + half + 1.0), (words_near, words_far));
    // Lines of dimensions further out may pass: they end at the words.
    canvas.blank(words, Ink::PAPER);
    if matches!(spot.side, Side::Left | Side::Right) {
        canvas.write(word, words[2] - 0.2 * size, middle + half, true, Ink::TEXT);
    } else {
        canvas.write(word, middle - half, words[3] - 0.2 * size, false, Ink::TEXT);
    }
    canvas.taken.push(words);
    let ends = spot.edges(area, (from.min(to - 1.0), to), (0.0, line + 2.5));
    canvas.cover(words);
    canvas.cover(ends);
    let reach = &mut canvas.reach[index(spot.side)];
    *reach = reach.max(words_far.max(line + 2.5));
}

/// A circle.
fn circle((x, y): (f64, f64), radius: f64) -> Piece {
    let handle = radius * 0.552_284_75;
    Piece {
        start: (x + radius, y),
        steps: vec![
            PathStep::Curve([(x + radius, y + handle), (x + handle, y + radius), (x, y + radius)]),
            PathStep::Curve([(x - handle, y + radius), (x - radius, y + handle), (x - radius, y)]),
            PathStep::Curve([(x - radius, y - handle), (x - handle, y - radius), (x, y - radius)]),
            PathStep::Curve([(x + handle, y - radius), (x + radius, y - handle), (x + radius, y)]),
        ],
        closed: true,
    }
}
