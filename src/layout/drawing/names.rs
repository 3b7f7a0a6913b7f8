//! Names inside what they name, or beside the drawing with a leader; and arrows
//! that show how a pattern stands.

use crate::document::Drawing;
use crate::document::Mark;
use crate::fonts::FaceId;
use crate::geom::Turn;
use crate::page::Ink;
use crate::page::Line;
use crate::page::Piece;

use super::canvas::{Canvas, Edges, Word, inset, overlap, within};
use super::shapes::thin;
use crate::layout::setter::Setter;

/// A name that found no place inside.
pub(super) struct Homeless {
    /// What it names.
    edges: Edges,
    words: String,
}

/// Air around words.
const AIR: f64 = 1.5;

/// Writes the names that fit into what they name; gives those that don't.
pub(super) fn inside(
    canvas: &mut Canvas,
    setter: &mut Setter<'_>,
    drawing: &Drawing,
) -> Vec<Homeless> {
    let mut homeless = Vec::new();
    for mark in &drawing.marks {
        match mark {
            Mark::Name { rect, short, long, may_turn } => {
                let edges = canvas.edges(*rect);
                let areas = above(canvas, edges);
                let size = canvas.size;
                let short_word = Word::new(setter, short, FaceId::SANS_STRONG, size);
                let long_word = long
                    .as_ref()
                    .filter(|it| !it.is_empty())
                    .map(|it| Word::new(setter, it, FaceId::SANS, size));
                let turns: &[bool] = if *may_turn { &[false, true] } else { &[false] };
                let mut written = false;
                let wishes = [long_word.as_ref(), None];
                let first = usize::from(long_word.is_none());
                for long in &wishes[first..] {
                    for upwards in turns {
                        written = written
                            || write(canvas, edges, areas, &short_word, *long, *upwards);
                    }
                }
                if !written {
                    // Narrow pages have no room beside a drawing for what the text says.
                    let narrow = setter.theme.margin == 0.0;
                    let words = match long {
                        Some(_) if narrow && !short.is_empty() => short.clone(),
                        Some(long) if short.is_empty() => long.clone(),
                        Some(long) if !long.is_empty() => format!("{short}  {long}"),
                        _ => short.clone(),
                    };
                    homeless.push(Homeless { edges, words });
                }
            }
            Mark::Area { .. }
            | Mark::Picture { .. }
            | Mark::Line { .. }
            | Mark::Dimension { .. }
            | Mark::Runs { .. }
            | Mark::CutNumber { .. }
            | Mark::Rule { .. }
            | Mark::RulerInch { .. }
            | Mark::RulerMm { .. } => {}
        }
    }
    homeless
}

/// The first of the areas that may hide what lies in a box: those drawn after the
/// area that is this box, or else after the last one that holds it.
fn above(canvas: &Canvas, edges: Edges) -> usize {
    let same =
        |it: &Edges| it.iter().zip(edges).all(|(one, two)| (one - two).abs() < 0.01);
    let held = |it: &Edges| within(edges, inset(*it, -0.01));
    let last = |test: &dyn Fn(&Edges) -> bool| {
        canvas.drawn.iter().rposition(|it| test(&it.edges)).map(|it| it + 1)
    };
    last(&same).or_else(|| last(&held)).unwrap_or(0)
}

/// The part of an area that signs may stand in; the whole box where no area is.
fn core_of(canvas: &Canvas, edges: Edges) -> Edges {
    let drawn = canvas.drawn[..above(canvas, edges)].last();
    let same = drawn.filter(|it| within(it.edges, inset(edges, -0.01)));
    same.map_or(edges, |it| it.core)
}

/// Writes a name at the first of several places in its box that is free.
fn write(
    canvas: &mut Canvas,
    edges: Edges,
    areas: usize,
    short: &Word,
    long: Option<&Word>,
    upwards: bool,
) -> bool {
    let size = canvas.size;
    let leading = 1.2 * size;
    let lines: Vec<_> =
        [Some(short), long].into_iter().flatten().filter(|it| !it.is_empty()).collect();
    if lines.is_empty() {
        return true;
    }
    let width = lines.iter().map(|it| it.width).fold(0.0, f64::max);
    // Capitals reach up 0.66 em, tails down 0.22 em.
    let letter = long.is_none() && short.is_letter();
    let (high, air) = if letter { (0.68, 1.3) } else { (0.88, AIR + 0.5) };
    let height = high * size + leading * (lines.len() - 1) as f64;
    let (across, down) = if upwards { (height, width) } else { (width, height) };
    let room = inset(core_of(canvas, edges), air);
    let (free_x, free_y) = (room[2] - room[0] - across, room[3] - room[1] - down);
    if free_x < 0.0 || free_y < 0.0 {
        return false;
    }
    let covering: Vec<_> =
        canvas.drawn[areas.min(canvas.drawn.len())..].iter().map(|it| it.edges).collect();
    // The middle is best; then up and down; then the sides and corners.
    const SPOTS: [(f64, f64); 9] = [
        (0.5, 0.5),
        (0.5, 0.15),
        (0.5, 0.85),
        (0.15, 0.5),
        (0.85, 0.5),
        (0.0, 0.0),
        (1.0, 0.0),
        (0.0, 1.0),
        (1.0, 1.0),
    ];
    for (fx, fy) in SPOTS {
        let (x, y) = (room[0] + free_x * fx, room[1] + free_y * fy);
        let spot = [x - AIR, y - AIR, x + across + AIR, y + down + AIR];
        let hidden = covering.iter().any(|it| overlap(*it, spot));
        if hidden || !canvas.is_free(spot) {
            continue;
        }
        canvas.clear(spot);
        for (line, word) in (0_u8..).zip(lines) {
            let along = (width - word.width) / 2.0;
            let below = 0.66 * size + leading * f64::from(line);
            let (x, y) = if upwards {
                (x + below, y + down - along)
            } else {
                (x + along, y + below)
            };
            canvas.write(word, x, y, upwards, Ink::TEXT);
        }
        canvas.taken.push(spot);
        return true;
    }
    false
}

/// Writes the names that found no place inside, beside the drawing.
///
/// Their lines go below what was drawn from `below` on: words of dimensions cover
/// them, not they the words.
pub(super) fn leaders(
    canvas: &mut Canvas,
    setter: &mut Setter<'_>,
    homeless: Vec<Homeless>,
    below: usize,
) {
    if homeless.is_empty() {
        return;
    }
    let size = canvas.size;
    let leading = 1.2 * size;
    let middle = (canvas.area[0] + canvas.area[2]) / 2.0;
    // Dimensions stand at one side more often than at both: the other is nearer.
    let left_is_free = canvas.reach[0] < canvas.reach[2];
    let (far_left, far_right) = (canvas.bounds[0], canvas.bounds[2]);
    let mut words: Vec<_> = homeless
        .into_iter()
        .map(|it| {
            let lines = Word::lines(setter, &it.words, 11.0 * size);
            let spots = spots_of(canvas, it.edges);
            // The first from which a line leads out that crosses no words.
            let near = |at: f64| {
                if (at - middle).abs() < 1.0 { left_is_free } else { at < middle }
            };
            let ways = [true, false].map(|it| spots.iter().map(move |at| (*at, it)));
            let mut ways = ways.into_iter().flatten();
            let clear = ways.find_map(|(at, nearer)| {
                let left = near(at.0) == nearer;
                let (from, to) = if left { (far_left, at.0) } else { (at.0, far_right) };
                let line = [from, at.1 - 0.8, to, at.1 + 0.8];
                canvas.is_free(line).then_some((at, left))
            });
            (clear.unwrap_or((spots[0], near(spots[0].0))), lines)
        })
        .collect();
    words.sort_by(|one, two| one.0.0.1.total_cmp(&two.0.0.1));
    let mut next = [f64::NEG_INFINITY; 2];
    let (mut strokes, mut dots) = (Vec::new(), Vec::new());
    for ((at, left), lines) in words {
        let side = usize::from(left);
        let width = lines.iter().map(|it| it.width).fold(0.0, f64::max);
        let height = 0.9 * size + leading * (lines.len().max(1) - 1) as f64;
        let mut top = (at.1 - 0.45 * size).max(next[side]);
        let x = if left { far_left - 9.0 - width } else { far_right + 9.0 };
        let spot = |top: f64| [x - 1.0, top, x + width + 1.0, top + height];
        while !canvas.is_free(spot(top)) {
            top += 1.0;
        }
        next[side] = top + height + 0.3 * size;
        let bounds = spot(top);
        for (line, word) in (0_u32..).zip(&lines) {
            let x = if left { x + width - word.width } else { x };
            let y = top + 0.66 * size + leading * f64::from(line);
            canvas.write(word, x, y, false, Ink::TEXT);
        }
        let from =
            (if left { bounds[2] + 1.0 } else { bounds[0] - 1.0 }, top + 0.45 * size);
        strokes.push(Piece::line(from, at));
        dots.push(Piece::line(at, at));
        canvas.taken.push(bounds);
        canvas.cover(bounds);
    }
    let words = canvas.items.split_off(below);
    for stroke in &strokes {
        let edges = canvas.area;
        canvas.halo(std::slice::from_ref(stroke), edges, &thin(Ink::TEXT));
    }
    canvas.path(strokes, None, Some(thin(Ink::TEXT)));
    let dot = Line { ink: Ink::TEXT, width: 2.2, dash: Vec::new(), round: true };
    canvas.path(dots, None, Some(dot));
    canvas.items.extend(words);
}

/// Where a leader may end: in the middle of what it names, or wherever that is seen;
/// at least one place, the best first.
fn spots_of(canvas: &Canvas, edges: Edges) -> Vec<(f64, f64)> {
    const PARTS: [f64; 5] = [0.5, 0.3, 0.7, 0.12, 0.88];
    let hiding = &canvas.drawn[above(canvas, edges)..];
    let points =
        PARTS.iter().flat_map(|down| PARTS.iter().map(move |across| (*across, *down)));
    let points = points.map(|(across, down)| {
        (
            edges[0] + (edges[2] - edges[0]) * across,
            edges[1] + (edges[3] - edges[1]) * down,
        )
    });
    let dot = |(x, y): (f64, f64)| [x - 1.5, y - 1.5, x + 1.5, y + 1.5];
    let seen = |it: &(f64, f64)| {
        canvas.is_free(dot(*it))
            && hiding.iter().all(|area| !overlap(area.edges, dot(*it)))
    };
    let middle = ((edges[0] + edges[2]) / 2.0, (edges[1] + edges[3]) / 2.0);
    // Of a mat, a narrow border is all that is seen.
    let [left, top, right, bottom] = edges;
    let border = [
        (left + 0.8, middle.1),
        (right - 0.8, middle.1),
        (middle.0, top + 0.8),
        (middle.0, bottom - 0.8),
    ];
    let bare = |at: &(f64, f64)| {
        let [x, y] = [at.0, at.1];
        hiding.iter().all(|it| {
            let [left, top, right, bottom] = it.edges;
            x < left || x > right || y < top || y > bottom
        })
    };
    let seen: Vec<_> = points.filter(seen).collect();
    if !seen.is_empty() {
        return seen;
    }
    vec![border.into_iter().find(bare).unwrap_or(middle)]
}

/// Draws the arrows that show how patterns stand; names find their place afterwards.
pub(super) fn arrows(canvas: &mut Canvas, drawing: &Drawing) {
    for mark in &drawing.marks {
        let Mark::Runs { rect, turn, both_ways } = mark else { continue };
        let edges = canvas.edges(*rect);
        let short = (edges[2] - edges[0]).min(edges[3] - edges[1]);
        let long = (0.7 * short).clamp(7.0, 20.0);
        let upright = !turn.swaps();
        let (across, down) = if upright { (5.0, long) } else { (long, 5.0) };
        let room = inset(core_of(canvas, edges), 3.0);
        let (free_x, free_y) =
            ((room[2] - room[0] - across).max(0.0), (room[3] - room[1] - down).max(0.0));
        // Corners first: the middle belongs to the name.
        const SPOTS: [(f64, f64); 8] = [
            (1.0, 1.0),
            (0.0, 1.0),
            (1.0, 0.0),
            (0.0, 0.0),
            (1.0, 0.5),
            (0.0, 0.5),
            (0.5, 0.0),
            (0.5, 1.0),
        ];
        let place = |(fx, fy): (f64, f64)| {
            let (x, y) = (room[0] + free_x * fx, room[1] + free_y * fy);
            [x - 1.0, y - 1.0, x + across + 1.0, y + down + 1.0]
        };
        let covering = &canvas.drawn[above(canvas, edges)..];
        let seen = |spot: &Edges| covering.iter().all(|it| !overlap(it.edges, *spot));
        let spots = SPOTS.map(place);
        let spot = spots.iter().find(|it| canvas.is_free(**it) && seen(it));
        let spot = spot.or_else(|| spots.iter().find(|it| seen(it))).unwrap_or(&spots[0]);
        let spot = *spot;
        canvas.clear(spot);
        arrow(canvas, inset(spot, 1.0), *turn, *both_ways);
        canvas.taken.push(spot);
    }
}

/// One arrow filling a box.
fn arrow(
    canvas: &mut Canvas,
    [left, top, right, bottom]: Edges,
    turn: Turn,
    both_ways: bool,
) {
    let (x, y) = ((left + right) / 2.0, (top + bottom) / 2.0);
    let (tail, tip) = match turn {
        Turn::None => ((x, bottom), (x, top)),
        Turn::Over => ((x, top), (x, bottom)),
        Turn::Right => ((left, y), (right, y)),
        Turn::Left => ((right, y), (left, y)),
    };
    canvas.path(
        vec![Piece::line(tail, tip)],
        None,
        Some(Line { width: 0.9, ..thin(Ink::TEXT) }),
    );
    let mut heads = vec![head(tail, tip, 6.0, 2.3)];
    if both_ways {
        heads.push(head(tip, tail, 6.0, 2.3));
    }
    canvas.path(heads, Some(Ink::TEXT), None);
}

/// An arrowhead: filled, its point at `tip`.
pub(super) fn head(from: (f64, f64), tip: (f64, f64), long: f64, half: f64) -> Piece {
    let (dx, dy) = (tip.0 - from.0, tip.1 - from.1);
    let length = dx.hypot(dy).max(1e-9);
    let (ux, uy) = (dx / length, dy / length);
    let back = (tip.0 - ux * long, tip.1 - uy * long);
    Piece::polygon(&[
        tip,
        (back.0 - uy * half, back.1 + ux * half),
        (back.0 + uy * half, back.1 - ux * half),
    ])
}
