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
    let mut words = Vec::new();
    // Lines keep clear of words that stand inside them.
    let mut inner = [LINE; 4];
    for (side, along, text, tier) in marks {
        let edges = canvas.edges(along);
        let level = matches!(side, Side::Top | Side::Bottom);
        let (from, to) = if level { (edges[0], edges[2]) } else { (edges[1], edges[3]) };
        let word = Word::new(setter, text, FaceId::SANS, canvas.size);
        let spot = Spot { side, from, to };
        let stand = match stand(spot, &word) {
            // Large print has no room beside its drawings.
            Stand::Level if setter.theme.enlarged > 1.0 => turned(side),
            stand => stand,
        };
        if stand != Stand::Level && matches!(side, Side::Right | Side::Bottom) {
            inner[index(side)] = 1.15 * canvas.size;
        }
        words.push((spot, tier, stand, word));
    }
    for side in [Side::Left, Side::Right] {
        turn_if_many(&mut words, side, canvas.size);
    }
    // What is taken on each side, lane by lane.
    let mut taken: [Vec<Taken>; 4] = Default::default();
    let mut texts = Vec::new();
    for (spot, tier, stand, word) in words {
        let side = index(spot.side);
        let wants = wants(spot, stand, &word, (canvas.size, inner[side]));
        let clash = |lane: u8| {
            let clashes = |want: &Taken| {
                let there = Taken { lane: want.lane + lane, ..*want };
                taken[side].iter().any(|it| it.clashes(&there))
            };
            wants.iter().any(clashes)
        };
        let last = u8::MAX - LANES;
        let lane = (tier.min(last)..last).find(|it| !clash(*it)).unwrap_or(last);
        taken[side].extend(wants.iter().map(|it| Taken { lane: it.lane + lane, ..*it }));
        texts.push((spot, lane, stand, word));
    }
    let mut placed = Vec::new();
    for (spot, lane, stand, word) in texts {
        let side = index(spot.side);
        // Lanes that nothing stands in take no room.
        let mut used: Vec<u8> = taken[side].iter().map(|it| it.lane).collect();
        used.sort_unstable();
        used.dedup();
        let lane = used.iter().position(|it| *it == lane).unwrap_or(0);
        let near = start[side] + 4.0 + PITCH * canvas.size * lane as f64;
        let outs = [bare[side], near, near + inner[side]];
        placed.push(dimension(canvas, spot, stand, outs, word));
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

/// Where the words of a dimension stand.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Stand {
    /// Along the line: above it, as one reads.
    Along,
    /// Below the line, since they are longer than the stretch and would hide the lines
    /// that lead to it.
    Beyond,
    /// Level beside a line that is upright, where they would be longer than it.
    Level,
}

/// Where there is room for the words of a dimension.
fn stand(spot: Spot, word: &Word) -> Stand {
    let long = spot.to - spot.from < word.width + 3.0;
    match spot.side {
        Side::Left | Side::Right if long => Stand::Level,
        Side::Bottom if long => Stand::Beyond,
        Side::Left | Side::Right | Side::Top | Side::Bottom => Stand::Along,
    }
}

/// Turns the words that stand level at a side if two of them would stand beside each
/// other: the drawing would become wide.
fn turn_if_many(words: &mut [(Spot, u8, Stand, Word)], side: Side, size: f64) {
    let level = |it: &(Spot, u8, Stand, Word)| it.0.side == side && it.2 == Stand::Level;
    let taken: Vec<(f64, f64)> =
        words.iter().filter(|it| level(it)).map(|it| stretch(it.0, 0.6 * size)).collect();
    let beside = |at: f64| taken.iter().filter(|it| it.0 <= at && at < it.1).count();
    if taken.iter().any(|it| beside(it.0) > 1) {
        words.iter_mut().filter(|it| level(it)).for_each(|it| it.2 = turned(side));
    }
}

/// Where words stand that could stand level.
fn turned(side: Side) -> Stand {
    if side == Side::Left { Stand::Along } else { Stand::Beyond }
}

/// What a dimension takes along its side: itself, the arrows that point at it from
/// outside where it is short, and half of its words on each side of its middle.
fn stretch(spot: Spot, half: f64) -> (f64, f64) {
    let short = spot.to - spot.from < SHORT;
    let more = if short { OUTSIDE } else { -0.1 };
    let middle = (spot.from + spot.to) / 2.0;
    ((spot.from - more).min(middle - half), (spot.to + more).max(middle + half))
}

/// More lanes than any words take.
const LANES: u8 = 12;

/// Between a dimension's line and words that stand beside its arrowheads.
const CLEAR: f64 = 3.6;

/// Where the line of a lane stands that has no words inside.
const LINE: f64 = 2.0;

/// How far apart lanes are, in sizes of the words.
const PITCH: f64 = 1.5;

/// A stretch that is taken in a lane.
#[derive(Clone, Copy, Debug)]
struct Taken {
    lane: u8,
    from: f64,
    to: f64,
    /// Both a line and words; else lines pass by the words of the lane before.
    line: bool,
    words: bool,
}

impl Taken {
    fn clashes(&self, other: &Self) -> bool {
        let alike = (self.line && other.line) || (self.words && other.words);
        alike && self.lane == other.lane && self.from < other.to && other.from < self.to
    }
}

/// What a dimension takes, were it in the first lane; `inner` is how far into the lane
/// its line stands.
fn wants(spot: Spot, stand: Stand, word: &Word, (size, inner): (f64, f64)) -> Vec<Taken> {
    let around = |half: f64| stretch(spot, half);
    let taken = |lane, (from, to), line, words| Taken { lane, from, to, line, words };
    let half = word.width / 2.0 + 2.0;
    match stand {
        Stand::Along => vec![taken(0, around(half), true, true)],
        // Words stand where the words of the next lane would.
        Stand::Beyond => {
            vec![taken(0, around(half), true, false), taken(1, around(half), false, true)]
        }
        Stand::Level => {
            let far = (inner + CLEAR + word.width + 3.0) / (PITCH * size);
            #[expect(
                clippy::cast_possible_truncation,
                clippy::cast_sign_loss,
                reason = "clamped"
            )]
            let lanes = far.ceil().clamp(1.0, f64::from(LANES)) as u8;
            let half = 0.6 * size;
            let middle = (spot.from + spot.to) / 2.0;
            let words = (middle - half, middle + half);
            let first = taken(0, around(half), true, true);
            let next = (1..lanes).map(|lane| taken(lane, words, true, true));
            std::iter::once(first).chain(next).collect()
        }
    }
}

/// Draws one dimension in its lane, which starts at `near`, with its line at `line`;
/// `bare` is where the outline ends.
fn dimension(
    canvas: &mut Canvas,
    spot: Spot,
    stand: Stand,
    [bare, near, line]: [f64; 3],
    word: Word,
) -> Placed {
    let (size, area) = (canvas.size, canvas.area);
    // Words stand above their line: outside it at the top and left, inside it at
    // the bottom and right.
    let outside = matches!(spot.side, Side::Top | Side::Left);
    let high = 0.9 * size;
    let (words_near, words_far) = match stand {
        Stand::Level => (line + CLEAR, line + CLEAR + word.width + 1.0),
        Stand::Beyond => (line + 2.2, line + 2.2 + high),
        Stand::Along if outside => (line + 2.2, line + 2.2 + high),
        Stand::Along => (near, line - 2.0),
    };
    // Lines that lead to the stretch end short of words that stand beyond it.
    let over = if stand == Stand::Along { 2.5 } else { 1.6 };
    let (from, to) = (spot.from, spot.to);
    let point = |along: f64, out: f64| spot.point(area, along, out);
    let ends =
        [from, to].map(|it| Piece::line(point(it, bare + 1.5), point(it, line + over)));
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
    let middle = (from + to) / 2.0;
    let upright = matches!(spot.side, Side::Left | Side::Right);
    let half = match stand {
        Stand::Level => high / 2.0,
        Stand::Along | Stand::Beyond => word.width / 2.0 + 1.0,
    };
    let along = (middle - half, middle + half);
    let words = spot.edges(area, along, (words_near, words_far));
    canvas.taken.push(words);
    canvas.cover(words);
    canvas.cover(spot.edges(area, (from - 0.3, to + 0.3), (0.0, line + over)));
    let reach = &mut canvas.reach[index(spot.side)];
    *reach = reach.max(words_far.max(line + over));
    let upwards = upright && stand != Stand::Level;
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
