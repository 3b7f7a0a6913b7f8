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
    // The area that a name belongs to is the last one drawn in its box before it.
    let mut areas = 0;
    for mark in &drawing.marks {
        match mark {
            Mark::Area { .. } => areas += 1,
            Mark::Name { rect, short, long, may_turn } => {
                let edges = canvas.edges(*rect);
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
                    let words = match long {
                        Some(long) if short.is_empty() => long.clone(),
                        Some(long) if !long.is_empty() => format!("{short}  {long}"),
                        _ => short.clone(),
                    };
                    homeless.push(Homeless { edges, words });
                }
            }
            Mark::Line { .. }
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
    let height = 0.88 * size + leading * (lines.len() - 1) as f64;
    let (across, down) = if upwards { (height, width) } else { (width, height) };
    let room = inset(edges, AIR + 0.5);
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
        let ground =
            canvas.drawn.iter().rev().find(|it| within(spot, inset(it.edges, -0.1)));
        if let Some(ground) = ground.and_then(|it| it.ground) {
            canvas.blank(spot, ground);
        }
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
pub(super) fn leaders(
    canvas: &mut Canvas,
    setter: &mut Setter<'_>,
    homeless: Vec<Homeless>,
) {
    if homeless.is_empty() {
        return;
    }
    let size = canvas.size;
    let leading = 1.25 * size;
    let middle = (canvas.area[0] + canvas.area[2]) / 2.0;
    // Dimensions stand at one side more often than at both: the other is nearer.
    let left_is_free = canvas.reach[0] < canvas.reach[2];
    let (far_left, far_right) = (canvas.bounds[0], canvas.bounds[2]);
    let mut words: Vec<_> = homeless
        .into_iter()
        .map(|it| {
            let word = Word::new(setter, &it.words, FaceId::SANS, size);
            let at =
                ((it.edges[0] + it.edges[2]) / 2.0, (it.edges[1] + it.edges[3]) / 2.0);
            (at, word)
        })
        .collect();
    words.sort_by(|one, two| one.0.1.total_cmp(&two.0.1));
    let mut next = [f64::NEG_INFINITY; 2];
    for (at, word) in words {
        let left = if (at.0 - middle).abs() < 1.0 { left_is_free } else { at.0 < middle };
        let side = usize::from(left);
        let mut top = (at.1 - 0.45 * size).max(next[side]);
        let x = if left { far_left - 9.0 - word.width } else { far_right + 9.0 };
        let spot = |top: f64| [x - 1.0, top, x + word.width + 1.0, top + 0.9 * size];
        while !canvas.is_free(spot(top)) {
            top += 1.0;
        }
        next[side] = top + leading;
        let bounds = spot(top);
        canvas.write(&word, x, top + 0.66 * size, false, Ink::TEXT);
        let from =
            (if left { bounds[2] + 1.0 } else { bounds[0] - 1.0 }, top + 0.45 * size);
        canvas.path(vec![Piece::line(from, at)], None, Some(thin(Ink::TEXT)));
        let dot = Line { ink: Ink::TEXT, width: 2.2, dash: Vec::new(), round: true };
        canvas.path(vec![Piece::line(at, at)], None, Some(dot));
        canvas.taken.push(bounds);
        canvas.cover(bounds);
    }
}

/// Draws the arrows that show how patterns stand.
pub(super) fn arrows(canvas: &mut Canvas, drawing: &Drawing) {
    for mark in &drawing.marks {
        let Mark::Runs { rect, turn, both_ways } = mark else { continue };
        let edges = canvas.edges(*rect);
        let short = (edges[2] - edges[0]).min(edges[3] - edges[1]);
        let long = (0.7 * short).clamp(7.0, 20.0);
        let upright = !turn.swaps();
        let (across, down) = if upright { (5.0, long) } else { (long, 5.0) };
        let room = inset(edges, 3.0);
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
        let spot = SPOTS.iter().map(|it| place(*it)).find(|it| canvas.is_free(*it));
        let spot = spot.unwrap_or_else(|| place(SPOTS[0]));
        if let Some(ground) = canvas
            .drawn
            .iter()
            .rev()
            .find(|it| within(spot, inset(it.edges, -0.1)))
            .and_then(|it| it.ground)
        {
            canvas.blank(spot, ground);
        }
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
