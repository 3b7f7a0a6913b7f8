//! Tints and hatches: every fill can be told from the others without colour.

use crate::document::Fill;
use crate::geom::Turn;
use crate::page::Ink;
use crate::page::Line;
use crate::page::Piece;

use super::canvas::Edges;

/// Lines at one angle.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Lines {
    /// 0 is level, 90 upright; anticlockwise.
    degrees: f64,
    /// From line to line.
    gap: f64,
    /// Dash and gap along the line; a dash of 0 gives dots.
    dash: Option<(f64, f64)>,
}

/// A hatch: one or two sets of lines.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Pattern {
    lines: [Option<Lines>; 2],
    width: f64,
    ink: Ink,
}

/// Continuous lines at an angle.
const fn lines(degrees: f64, gap: f64) -> Option<Lines> {
    Some(Lines { degrees, gap, dash: None })
}

/// Broken lines at an angle.
const fn dashes(degrees: f64, gap: f64, dash: f64, pause: f64) -> Option<Lines> {
    Some(Lines { degrees, gap, dash: Some((dash, pause)) })
}

/// The hatches of paper faces. 45° is left to waste, dots to what is kept.
const FACES: [[Option<Lines>; 2]; 8] = [
    [lines(90.0, 5.0), None],
    [dashes(0.0, 5.0, 5.0, 4.0), None],
    [lines(135.0, 5.0), None],
    [lines(0.0, 8.0), lines(90.0, 8.0)],
    [lines(0.0, 3.6), None],
    [dashes(90.0, 3.6, 1.5, 2.4), None],
    [lines(60.0, 8.0), lines(120.0, 8.0)],
    [lines(20.0, 4.4), None],
];

/// The tints of paper faces that have no colour of their own.
const TINTS: [[u8; 3]; 8] = [
    [0xe9, 0xee, 0xec],
    [0xf3, 0xee, 0xe4],
    [0xec, 0xec, 0xf2],
    [0xf5, 0xf3, 0xea],
    [0xe4, 0xe9, 0xe4],
    [0xf2, 0xea, 0xea],
    [0xf0, 0xf2, 0xf4],
    [0xea, 0xe6, 0xde],
];

/// Lines of hatches.
const HATCH: Ink = Ink([0x86, 0x86, 0x82]);

/// What shines through; text on it has a contrast of 7 : 1 and more.
pub(super) fn ground(fill: Fill) -> Option<Ink> {
    match fill {
        Fill::None => None,
        Fill::Paper | Fill::Waste | Fill::Kept => Some(Ink::PAPER),
        Fill::Face { color: Some(color), .. } => Some(Ink(color).tint()),
        Fill::Face { index, color: None, .. } => {
            Some(Ink(TINTS[usize::from(index) % TINTS.len()]))
        }
        Fill::Strong => Some(Ink::ACCENT.lighter(0.78)),
    }
}

/// The hatch of a fill.
pub(super) fn pattern(fill: Fill) -> Option<Pattern> {
    match fill {
        Fill::None | Fill::Paper | Fill::Strong => None,
        Fill::Face { index, turn, .. } => {
            let mut lines = FACES[usize::from(index) % FACES.len()];
            // A quarter turn of the paper turns its hatch with it.
            let quarter = match turn {
                Turn::None | Turn::Over => 0.0,
                Turn::Right => -90.0,
                Turn::Left => 90.0,
            };
            for set in lines.iter_mut().flatten() {
                set.degrees += quarter;
            }
            Some(Pattern { lines, width: 0.45, ink: HATCH })
        }
        Fill::Waste => {
            Some(Pattern { lines: [lines(45.0, 8.0), None], width: 0.5, ink: HATCH })
        }
        Fill::Kept => {
            let dots = dashes(0.0, 6.0, 0.0, 6.0);
            Some(Pattern { lines: [dots, None], width: 1.1, ink: HATCH })
        }
    }
}

/// The lines of a hatch within a convex polygon: one path for each set.
fn lines_within(polygon: &[(f64, f64)], set: Lines, bounds: Edges) -> Vec<Piece> {
    let (sin, cos) = set.degrees.to_radians().sin_cos();
    // Along the line, and across it; y grows downwards.
    let along = (cos, -sin);
    let across = (sin, cos);
    let at = |point: (f64, f64)| point.0 * across.0 + point.1 * across.1;
    // Lines start from the box's corner, so that like pieces look alike.
    let origin = (bounds[0], bounds[1]);
    let (mut least, mut most) = (f64::INFINITY, f64::NEG_INFINITY);
    for point in polygon {
        least = least.min(at(*point));
        most = most.max(at(*point));
    }
    let start = at(origin) + set.gap / 2.0;
    let mut offset = start + ((least - start) / set.gap).ceil() * set.gap;
    let mut pieces = Vec::new();
    // A page has room for a thousand lines; more would be a fault.
    while offset < most && pieces.len() < 4000 {
        if let Some((from, to)) = cross(polygon, across, along, offset)
            && to - from > 1.0
        {
            let point = |t: f64| {
                (offset * across.0 + t * along.0, offset * across.1 + t * along.1)
            };
            pieces.push(Piece::line(point(from), point(to)));
        }
        offset += set.gap;
    }
    pieces
}

/// Where a line crosses a convex polygon, as stretches along it.
fn cross(
    polygon: &[(f64, f64)],
    across: (f64, f64),
    along: (f64, f64),
    offset: f64,
) -> Option<(f64, f64)> {
    let (mut from, mut to) = (f64::INFINITY, f64::NEG_INFINITY);
    for (index, one) in polygon.iter().enumerate() {
        let two = polygon[(index + 1) % polygon.len()];
        let d1 = one.0 * across.0 + one.1 * across.1 - offset;
        let d2 = two.0 * across.0 + two.1 * across.1 - offset;
        if (d1 < 0.0) == (d2 < 0.0) {
            continue;
        }
        let t = d1 / (d1 - d2);
        let point = (one.0 + (two.0 - one.0) * t, one.1 + (two.1 - one.1) * t);
        let place = point.0 * along.0 + point.1 * along.1;
        from = from.min(place);
        to = to.max(place);
    }
    (from < to).then_some((from, to))
}

/// The paths of a hatch.
pub(super) fn paths(
    polygon: &[(f64, f64)],
    bounds: Edges,
    pattern: &Pattern,
) -> Vec<(Vec<Piece>, Line)> {
    let mut paths = Vec::new();
    for set in pattern.lines.iter().flatten() {
        let pieces = lines_within(polygon, *set, bounds);
        if pieces.is_empty() {
            continue;
        }
        let dash = set.dash.map_or(Vec::new(), |(dash, gap)| vec![dash, gap]);
        let round = set.dash.is_some_and(|it| it.0 == 0.0);
        let line = Line { ink: pattern.ink, width: pattern.width, dash, round };
        paths.push((pieces, line));
    }
    paths
}

#[cfg(test)]
mod tests {
    use super::{FACES, Ink, TINTS, ground, lines_within};
    use crate::document::Fill;
    use crate::geom::Turn;

    #[test]
    fn text_can_be_read_on_every_ground() {
        for tint in TINTS {
            assert!(Ink(tint).contrast(Ink::TEXT) >= 7.0);
        }
        for color in
            [[0, 0, 0], [255, 0, 0], [0, 64, 0], [255, 255, 255], [128, 128, 128]]
        {
            let fill = Fill::Face { index: 0, color: Some(color), turn: Turn::None };
            assert!(ground(fill).unwrap().contrast(Ink::TEXT) >= 7.0);
        }
        assert!(ground(Fill::Strong).unwrap().contrast(Ink::TEXT) >= 7.0);
    }

    #[test]
    fn hatches_stay_within_their_shape() {
        let square = [(10.0, 10.0), (50.0, 10.0), (50.0, 30.0), (10.0, 30.0)];
        for set in FACES.iter().flatten().flatten() {
            let pieces = lines_within(&square, *set, [10.0, 10.0, 50.0, 30.0]);
            assert!(!pieces.is_empty());
            for piece in pieces {
                let crate::page::PathStep::To(x, y) = piece.steps[0] else {
                    panic!("a line")
                };
                for (x, y) in [piece.start, (x, y)] {
                    assert!((9.999..50.001).contains(&x) && (9.999..30.001).contains(&y));
                }
            }
        }
    }
}
