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
    fn edges(
        self,
        area: Edges,
        (from, to): (f64, f64),
        (near, far): (f64, f64),
    ) -> Edges {
        let one = self.point(area, from, near);
        let two = self.point(area, to, far);
        [one.0.min(two.0), one.1.min(two.1), one.0.max(two.0), one.1.max(two.1)]
    }
}

/// A ring that has found its place.
pub(super) struct Ring {
    centre: (f64, f64),
    radius: f64,
    stem: Piece,
    word: Word,
}

/// Finds places for the numbers of cuts.
pub(super) fn rings(
    canvas: &mut Canvas,
    setter: &mut Setter<'_>,
    drawing: &Drawing,
) -> Vec<Ring> {
    let area = canvas.area;
    let start = canvas.reach;
    let mut rings = Vec::new();
    for mark in &drawing.marks {
        let Mark::CutNumber { side, along, text } = mark else { continue };
        let edges = canvas.edges(*along);
        let level = matches!(side, Side::Top | Side::Bottom);
        let at =
            if level { (edges[0] + edges[2]) / 2.0 } else { (edges[1] + edges[3]) / 2.0 };
        let word = Word::new(setter, text, FaceId::SANS_STRONG, canvas.size);
        let radius = (0.78 * canvas.size).max(word.width / 2.0 + 2.5);
        let spot = Spot { side: *side, from: at - radius, to: at + radius };
        // The nearest lane in which no other ring is in the way.
        let mut out = start[index(*side)] + 3.5;
        let place =
            |out: f64| spot.edges(area, (spot.from, spot.to), (out, out + 2.0 * radius));
        while !canvas.is_free(place(out)) {
            out += 2.0 * radius + 1.0;
        }
        let ring = place(out);
        canvas.taken.push(ring);
        canvas.cover([ring[0] - 0.5, ring[1] - 0.5, ring[2] + 0.5, ring[3] + 0.5]);
        let reach = &mut canvas.reach[index(*side)];
        *reach = reach.max(out + 2.0 * radius);
        let stem = Piece::line(spot.point(area, at, 0.5), spot.point(area, at, out));
        rings.push(Ring {
            centre: spot.point(area, at, out + radius),
            radius,
            stem,
            word,
        });
    }
    rings
}

/// Draws the rings upon the lines that pass below them.
pub(super) fn draw_rings(canvas: &mut Canvas, rings: Vec<Ring>) {
    if rings.is_empty() {
        return;
    }
    let stems = rings.iter().map(|it| it.stem.clone()).collect();
    canvas.strokes(stems, Ink::ACCENT, 0.8);
    for Ring { centre, radius, word, .. } in rings {
        canvas.path(vec![circle(centre, radius)], Some(Ink::PAPER), None);
        canvas.strokes(vec![circle(centre, radius)], Ink::ACCENT, 0.9);
        let baseline = centre.1 + 0.34 * canvas.size;
        canvas.write(&word, centre.0 - word.width / 2.0, baseline, false, Ink::TEXT);
    }
}

/// Draws the dimensions; `bare` is how far the outline itself reaches on each side,
/// with the bar of a rule but without rings.
pub(super) fn dimensions(
    canvas: &mut Canvas,
    setter: &mut Setter<'_>,
    drawing: &Drawing,
    bare: [f64; 4],
) {
    let mut marks: Vec<_> = drawing
        .marks
        .iter()
        .filter_map(|mark| match mark {
            Mark::Dimension { side, along, text, tier } => {
                Some((*side, *along, text, *tier))
            }
            _ => None,
        })
        .collect();
    marks.sort_by_key(|it| it.3);
    let start = canvas.reach;
    // What is taken on each side, lane by lane: by lines, and by words.
    let mut lines: [Vec<(u8, f64, f64)>; 4] = Default::default();
    let mut words: [Vec<(u8, f64, f64)>; 4] = Default::default();
    let mut texts = Vec::new();
    for (side, along, text, tier) in marks {
        let edges = canvas.edges(along);
        let level = matches!(side, Side::Top | Side::Bottom);
        let (from, to) = if level { (edges[0], edges[2]) } else { (edges[1], edges[3]) };
        let word = Word::new(setter, text, FaceId::SANS, canvas.size);
        let spot = Spot { side, from, to };
        let (start, end) = taken(spot, &word);
        let (lines, words) = (&mut lines[index(side)], &mut words[index(side)]);
        let clash = |taken: &[(u8, f64, f64)], lane: u8| {
            taken.iter().any(|it| it.0 == lane && it.1 < end && start < it.2)
        };
        // Words beyond their line stand where the words of the next lane would.
        let next = u8::from(stands_beyond(spot, &word));
        let lane = (tier..u8::MAX - 1)
            .find(|it| !clash(lines, *it) && !clash(words, *it + next))
            .unwrap_or(u8::MAX - 1);
        lines.push((lane, start, end));
        words.push((lane + next, start, end));
        texts.push((spot, lane, word));
    }
    let mut placed = Vec::new();
    // Lanes that nothing stands in take no room.
    for (spot, lane, word) in texts {
        let side = index(spot.side);
        let taken = lines[side].iter().chain(&words[side]);
        let mut used: Vec<u8> = taken.map(|it| it.0).collect();
        used.sort_unstable();
        used.dedup();
        let lane = used.iter().position(|it| *it == lane).unwrap_or(0);
        placed.push(dimension(canvas, spot, (bare[side], start[side]), lane, word));
    }
    // Words last: lines of dimensions further out end at them.
    for Placed { word, edges, upwards } in placed {
        canvas.blank(edges, Ink::PAPER);
        let base = 0.2 * canvas.size;
        let (x, y) = if upwards {
            (edges[2] - base, edges[3] - 1.0)
        } else {
            (edges[0] + 1.0, edges[3] - base)
        };
        canvas.write(&word, x, y, upwards, Ink::TEXT);
    }
}

/// The words of a dimension at their place.
struct Placed {
    word: Word,
    edges: Edges,
    upwards: bool,
}

/// Room that arrows take that point at a short stretch from outside.
const OUTSIDE: f64 = 9.0;

/// Half the width of an arrowhead, and its length: about 1 : 4.
const HEAD: (f64, f64) = (1.2, 5.0);

/// Shorter stretches have no room for two arrowheads.
const SHORT: f64 = 2.0 * HEAD.1 + 2.0;

/// Whether the words stand beyond their line, since they are longer than the stretch
/// and would hide the lines that lead to it.
fn stands_beyond(spot: Spot, word: &Word) -> bool {
    let inside = matches!(spot.side, Side::Right | Side::Bottom);
    inside && spot.to - spot.from < word.width + 3.0
}

/// The stretch that a dimension takes in its lane.
fn taken(spot: Spot, word: &Word) -> (f64, f64) {
    let short = spot.to - spot.from < SHORT;
    let more = if short { OUTSIDE } else { -0.1 };
    let middle = (spot.from + spot.to) / 2.0;
    let half = word.width / 2.0 + 2.0;
    ((spot.from - more).min(middle - half), (spot.to + more).max(middle + half))
}

/// Draws one dimension in its lane: `bare` is where the outline ends, `start` where
/// the lanes begin.
fn dimension(
    canvas: &mut Canvas,
    spot: Spot,
    (bare, start): (f64, f64),
    lane: usize,
    word: Word,
) -> Placed {
    let (size, area) = (canvas.size, canvas.area);
    // Words stand above their line: outside it at the top and left, inside it at
    // the bottom and right.
    let outside = matches!(spot.side, Side::Top | Side::Left);
    let near = start + 4.0 + 1.5 * size * lane as f64;
    let line = near + if outside { 2.0 } else { 1.15 * size };
    let beyond = stands_beyond(spot, &word);
    let (words_near, words_far) = if outside || beyond {
        (line + 2.2, line + 2.2 + 0.9 * size)
    } else {
        (near, line - 2.0)
    };
    let (from, to) = (spot.from, spot.to);
    let point = |along: f64, out: f64| spot.point(area, along, out);
    let ends =
        [from, to].map(|it| Piece::line(point(it, bare + 1.5), point(it, line + 2.5)));
    canvas.path(ends.to_vec(), None, Some(thin(Ink::QUIET)));
    let (slim, long) = HEAD;
    // Where it is too short for arrows inside, they point at it from outside.
    let reach = if to - from >= SHORT { 0.0 } else { OUTSIDE - 1.0 };
    let (tail, tip) = (point(from - reach, line), point(to + reach, line));
    canvas.path(vec![Piece::line(tail, tip)], None, Some(thin(Ink::QUIET)));
    let heads = if reach > 0.0 {
        [
            head(tail, point(from, line), long, slim),
            head(tip, point(to, line), long, slim),
        ]
    } else {
        [head(tip, tail, long, slim), head(tail, tip, long, slim)]
    };
    canvas.path(heads.to_vec(), Some(Ink::QUIET), None);
    let half = word.width / 2.0;
    let middle = (from + to) / 2.0;
    let along = (middle - half - 1.0, middle + half + 1.0);
    let words = spot.edges(area, along, (words_near, words_far));
    canvas.taken.push(words);
    canvas.cover(words);
    canvas.cover(spot.edges(area, (from - 0.3, to + 0.3), (0.0, line + 2.5)));
    let reach = &mut canvas.reach[index(spot.side)];
    *reach = reach.max(words_far.max(line + 2.5));
    let upwards = matches!(spot.side, Side::Left | Side::Right);
    Placed { word, edges: words, upwards }
}

/// A circle.
fn circle((x, y): (f64, f64), radius: f64) -> Piece {
    let handle = radius * 0.552_284_75;
    Piece {
        start: (x + radius, y),
        steps: vec![
            PathStep::Curve([
                (x + radius, y + handle),
                (x + handle, y + radius),
                (x, y + radius),
            ]),
            PathStep::Curve([
                (x - handle, y + radius),
                (x - radius, y + handle),
                (x - radius, y),
            ]),
            PathStep::Curve([
                (x - radius, y - handle),
                (x - handle, y - radius),
                (x, y - radius),
            ]),
            PathStep::Curve([
                (x + handle, y - radius),
                (x + radius, y - handle),
                (x + radius, y),
            ]),
        ],
        closed: true,
    }
}
