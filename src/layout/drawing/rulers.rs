//! Rulers to check a printout with, exact to the last point.

use crate::fonts::FaceId;
use crate::geom::Length;
use crate::geom::Rect;
use crate::page::Ink;
use crate::page::Piece;

use super::canvas::{Canvas, Word};
use crate::layout::setter::Setter;

/// How ticks are spaced and numbered.
struct Marks {
    /// From tick to tick.
    step: Length,
    /// How long the n-th tick is, as a part of the longest.
    long: fn(i64) -> f64,
    /// A number stands at every so-and-so-many-th tick.
    numbered: i64,
    /// What the number counts, in ticks.
    each: i64,
    /// What is written after the nought: which of the phrases of the document.
    unit: usize,
}

/// A ruler in inches, with ticks at eighths.
pub(super) fn inches(canvas: &mut Canvas, setter: &mut Setter<'_>, rect: Rect) {
    let long = |tick: i64| match tick % 8 {
        0 => 1.0,
        4 => 0.7,
        2 | 6 => 0.5,
        _ => 0.32,
    };
    let step = Length::inch(1, 8);
    ruler(canvas, setter, rect, &Marks { step, long, numbered: 8, each: 8, unit: 0 });
}

/// A ruler in millimetres, numbered at every centimetre.
pub(super) fn millimetres(canvas: &mut Canvas, setter: &mut Setter<'_>, rect: Rect) {
    let long = |tick: i64| match tick % 10 {
        0 => 1.0,
        5 => 0.7,
        _ => 0.38,
    };
    let step = Length::MM;
    ruler(canvas, setter, rect, &Marks { step, long, numbered: 10, each: 1, unit: 1 });
}

/// Draws a level line of the ruler's exact length, with ticks below it.
fn ruler(canvas: &mut Canvas, setter: &mut Setter<'_>, rect: Rect, marks: &Marks) {
    let [left, top, right, _] = canvas.edges(rect);
    let mut pieces = vec![Piece::line((left, top), (right, top))];
    let height = (canvas.on(rect.size.height) * 0.5).clamp(6.0, 11.0);
    let ticks = rect.size.width.units() / marks.step.units();
    // At a small scale the shortest ticks would run together.
    let apart = canvas.on(marks.step);
    for tick in 0..=ticks.min(4000) {
        let long = (marks.long)(tick);
        if apart < 1.6 && long < 0.5 {
            continue;
        }
        let x = left + canvas.on(marks.step * tick);
        pieces.push(Piece::line((x, top), (x, top + long * height)));
    }
    canvas.strokes(pieces, Ink::TEXT, 0.6);
    canvas.cover([left - 0.3, top - 0.3, right + 0.3, top + height]);
    let size = canvas.size;
    let baseline = top + height + 0.95 * size;
    let mut free = f64::NEG_INFINITY;
    for tick in
        (0..=ticks.min(4000)).step_by(usize::try_from(marks.numbered).unwrap_or(1))
    {
        let number = (tick / marks.each).to_string();
        let word = Word::new(setter, &number, FaceId::SANS, size);
        let x = left + canvas.on(marks.step * tick) - word.width / 2.0;
        if x < free {
            continue;
        }
        let mut end = x + word.width;
        canvas.write(&word, x, baseline, false, Ink::TEXT);
        if tick == 0 {
            // The unit stands behind the nought, where it is out of the way.
            let unit = setter.phrases.rulers[marks.unit].clone();
            let unit = Word::new(setter, &unit, FaceId::SANS, size);
            let gap = 0.25 * size;
            canvas.write(&unit, end + gap, baseline, false, Ink::TEXT);
            end += gap + unit.width;
        }
        let bounds = [x, baseline - 0.75 * size, end, baseline + 0.25 * size];
        canvas.cover(bounds);
        canvas.taken.push(bounds);
        free = end + 3.0;
    }
}
