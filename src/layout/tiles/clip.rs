//! What of a drawing a part of it shows.

use crate::page::Item;
use crate::page::Owner;
use crate::page::Path;
use crate::page::PathStep;
use crate::page::Piece;
use crate::page::TagId;
use crate::page::Text;
use crate::page::What;
use crate::page::Window;

/// A box: left, top, right and bottom.
type Edges = [f64; 4];

/// A point.
type At = (f64, f64);

/// Straight lines that stand for a curve: at the size of a sheet, a thousandth of it
/// is less than a line's width.
const CHORDS: u32 = 32;

/// What of some items is seen through a window. Words are shown whole, by the one
/// part in whose core their middle lies.
pub(super) fn within(
    items: &[Item],
    window: Edges,
    core: &Edges,
    owner: TagId,
) -> Vec<Item> {
    let owner = Owner::Tag(owner);
    let mut seen = Vec::new();
    for item in items {
        match &item.what {
            What::Text(text) => {
                let text = shown(text, window, core);
                seen.extend(text.map(|it| Item { owner, what: What::Text(it) }));
            }
            What::Path(path) => {
                let paths = cut(path, window).into_iter();
                seen.extend(paths.map(|it| Item { owner, what: What::Path(it) }));
            }
            What::Window(picture) => {
                let outline = area(&straight(&picture.outline), window);
                if outline.len() > 2 {
                    let outline = Piece::polygon(&outline);
                    let what = What::Window(Window { outline, ..picture.clone() });
                    seen.push(Item { owner, what });
                }
            }
        }
    }
    seen
}

/// Words that belong to this part, moved as far as they would stand over its edge.
fn shown(text: &Text, window: Edges, core: &Edges) -> Option<Text> {
    let (size, along) = (text.run.size, text.run.advance);
    let around = if text.upwards {
        [text.x - size, text.y - along, text.x + 0.3 * size, text.y]
    } else {
        [text.x, text.y - size, text.x + along, text.y + 0.3 * size]
    };
    let middle = ((around[0] + around[2]) / 2.0, (around[1] + around[3]) / 2.0);
    let mine = core[0] <= middle.0
        && middle.0 < core[2]
        && core[1] <= middle.1
        && middle.1 < core[3];
    // What stands outside of the drawing's box belongs to nobody else.
    if !mine {
        return None;
    }
    let back = |from: f64, to: f64, low: f64, high: f64| {
        (low - from).max(0.0) - (to - high).max(0.0)
    };
    Some(Text {
        x: text.x + back(around[0], around[2], window[0], window[2]),
        y: text.y + back(around[1], around[3], window[1], window[3]),
        ..text.clone()
    })
}

/// The parts of a path in a window: its area, then its line.
fn cut(path: &Path, window: Edges) -> Vec<Path> {
    let pieces: Vec<_> = path.pieces.iter().map(straight).collect();
    let mut parts = Vec::new();
    if path.fill.is_some() {
        let areas = pieces.iter().map(|it| area(it, window));
        let areas: Vec<_> = areas.filter(|it| it.len() > 2).collect();
        let areas: Vec<_> = areas.iter().map(|it| Piece::polygon(it)).collect();
        if !areas.is_empty() {
            parts.push(Path { pieces: areas, fill: path.fill, line: None });
        }
    }
    if path.line.is_some() {
        let closed = path.pieces.iter().map(|it| it.closed);
        let lines = pieces.iter().zip(closed);
        let lines: Vec<_> =
            lines.flat_map(|(it, closed)| line(it, closed, window)).collect();
        if !lines.is_empty() {
            let line = path.line.clone();
            parts.push(Path { pieces: lines, fill: None, line });
        }
    }
    parts
}

/// The corners of a piece, its curves as chords.
fn straight(piece: &Piece) -> Vec<At> {
    let mut points = vec![piece.start];
    for step in &piece.steps {
        match *step {
            PathStep::To(x, y) => points.push((x, y)),
            PathStep::Curve([one, two, to]) => {
                let from = points[points.len() - 1];
                points.extend((1..=CHORDS).map(|it| {
                    let t = f64::from(it) / f64::from(CHORDS);
                    let s = 1.0 - t;
                    let on = |a: f64, b: f64, c: f64, d: f64| {
                        s * s * s * a
                            + 3.0 * s * s * t * b
                            + 3.0 * s * t * t * c
                            + t * t * t * d
                    };
                    (on(from.0, one.0, two.0, to.0), on(from.1, one.1, two.1, to.1))
                }));
            }
        }
    }
    points
}

/// A line in a window: it may fall into several stretches.
fn line(points: &[At], closed: bool, window: Edges) -> Vec<Piece> {
    let back = closed.then(|| points[0]);
    let ends = points.iter().copied().skip(1).chain(back);
    let mut pieces: Vec<Piece> = Vec::new();
    let mut at: Option<At> = None;
    let whole = points.iter().all(|it| inside(*it, window));
    if whole && closed {
        return vec![Piece::polygon(points)];
    }
    if points.len() == 1 && whole {
        return vec![Piece::line(points[0], points[0])];
    }
    for (from, to) in points.iter().copied().zip(ends) {
        let Some((from, to)) = segment(from, to, window) else {
            at = None;
            continue;
        };
        match pieces.last_mut().filter(|_| at == Some(from)) {
            Some(open) => open.steps.push(PathStep::To(to.0, to.1)),
            None => pieces.push(Piece::line(from, to)),
        }
        at = Some(to);
    }
    pieces
}

fn inside(point: At, window: Edges) -> bool {
    window[0] <= point.0
        && point.0 <= window[2]
        && window[1] <= point.1
        && point.1 <= window[3]
}

/// A straight line in a window (Liang and Barsky 1984, from memory).
fn segment(from: At, to: At, window: Edges) -> Option<(At, At)> {
    let (dx, dy) = (to.0 - from.0, to.1 - from.1);
    let (mut first, mut last) = (0.0_f64, 1.0_f64);
    for (step, room) in [
        (-dx, from.0 - window[0]),
        (dx, window[2] - from.0),
        (-dy, from.1 - window[1]),
        (dy, window[3] - from.1),
    ] {
        if step == 0.0 {
            if room < 0.0 {
                return None;
            }
        } else if step < 0.0 {
            first = first.max(room / step);
        } else {
            last = last.min(room / step);
        }
    }
    if first > last {
        return None;
    }
    let on = |share: f64| (from.0 + share * dx, from.1 + share * dy);
    let start = if first == 0.0 { from } else { on(first) };
    let end = if last == 1.0 { to } else { on(last) };
    Some((start, end))
}

/// An area in a window, edge by edge (Sutherland and Hodgman 1974, from memory).
fn area(points: &[At], window: Edges) -> Vec<At> {
    let mut points = points.to_vec();
    for (edge, limit) in window.into_iter().enumerate() {
        let upright = edge % 2 == 0;
        let depth = |point: At| {
            let value = if upright { point.0 } else { point.1 };
            if edge < 2 { value - limit } else { limit - value }
        };
        let mut kept = Vec::with_capacity(points.len() + 4);
        for (at, &to) in points.iter().enumerate() {
            let from = points[if at == 0 { points.len() - 1 } else { at - 1 }];
            let (a, b) = (depth(from), depth(to));
            if (a < 0.0) != (b < 0.0) {
                let share = a / (a - b);
                kept.push((
                    from.0 + share * (to.0 - from.0),
                    from.1 + share * (to.1 - from.1),
                ));
            }
            if b >= 0.0 {
                kept.push(to);
            }
        }
        points = kept;
    }
    points
}

#[cfg(test)]
mod tests {
    use super::{area, segment};

    const WINDOW: [f64; 4] = [0.0, 0.0, 10.0, 10.0];

    #[test]
    fn a_line_ends_at_the_window() {
        assert_eq!(
            segment((-5.0, 5.0), (15.0, 5.0), WINDOW),
            Some(((0.0, 5.0), (10.0, 5.0)))
        );
        assert_eq!(segment((-5.0, 11.0), (15.0, 11.0), WINDOW), None);
        assert_eq!(
            segment((2.0, 2.0), (3.0, 3.0), WINDOW),
            Some(((2.0, 2.0), (3.0, 3.0)))
        );
        assert_eq!(segment((-4.0, 4.0), (4.0, -4.0), WINDOW).map(|it| it.0.0), Some(0.0));
    }

    #[test]
    fn an_area_keeps_what_the_window_shows() {
        let square = [(-5.0, -5.0), (5.0, -5.0), (5.0, 5.0), (-5.0, 5.0)];
        let kept = area(&square, WINDOW);
        let span = |of: fn(&(f64, f64)) -> f64| {
            let all = kept.iter().map(of);
            (all.clone().fold(f64::MAX, f64::min), all.fold(f64::MIN, f64::max))
        };
        assert_eq!((span(|it| it.0), span(|it| it.1)), ((0.0, 5.0), (0.0, 5.0)));
        assert!(area(&[(20.0, 20.0), (30.0, 20.0), (30.0, 30.0)], WINDOW).is_empty());
    }
}
