//! From what a description says of a layer's place to a rectangle.

use crate::diag::{Diagnostic, rules};
use crate::geom::{Axis, Length, Rect, Side, Size};
use crate::plan::uses::name_of;
use crate::project::{Along, Layer, Project};

/// The place of every layer on a ground of a size, from its top left corner;
/// `None` if some are placed by one another in a circle.
///
/// `sizes` are the sizes of the layers as they are laid on.
pub(crate) fn places(
    project: &Project,
    layers: &[Layer],
    sizes: &[Size],
    ground: Size,
    notes: &mut Vec<Diagnostic>,
) -> Option<Vec<Rect>> {
    let before = notes.len();
    // What lies from left to right never depends on what lies from top to bottom.
    let mut find = |axis: Axis| {
        let rows: Vec<Row> = layers
            .iter()
            .zip(sizes)
            .map(|(layer, size)| Row {
                along: match axis {
                    Axis::Level => layer.across,
                    Axis::Upright => layer.up,
                },
                extent: size.along(axis),
            })
            .collect();
        let starts = starts(&rows, ground.along(axis));
        for circle in starts.iter().zip(layers).filter(|(start, _)| start.is_none()) {
            let layer = circle.1;
            let name = name_of(project, layer.what);
            let message = format!("`{name}` is placed by layers that are placed by it");
            let note = Diagnostic::new(&rules::LAYERS_IN_A_CIRCLE, layer.site, message);
            notes.push(note.help("place one of them from a side, or in the middle"));
        }
        starts
    };
    let (x, y) = (find(Axis::Level), find(Axis::Upright));
    if notes.len() > before {
        return None;
    }
    let corners = x.into_iter().flatten().zip(y.into_iter().flatten());
    let rects = corners.zip(sizes).map(|((x, y), size)| Rect::new(x, y, *size));
    Some(rects.collect())
}

/// A layer in one direction: where it is said to sit, and how long it is.
struct Row {
    along: Along,
    extent: Length,
}

/// Where each row begins; `None` for those that hang on one another.
fn starts(rows: &[Row], ground: Length) -> Vec<Option<Length>> {
    let mut starts: Vec<Option<Length>> = vec![None; rows.len()];
    for first in 0..rows.len() {
        // Goes from layer to layer until one has its place, then comes back.
        let mut chain = Vec::new();
        let mut at = first;
        while starts[at].is_none() {
            // Longer than there are layers is a circle.
            if chain.len() > rows.len() {
                break;
            }
            chain.push(at);
            match other(rows[at].along).filter(|of| *of < rows.len()) {
                Some(of) => at = of,
                None => break,
            }
        }
        if chain.len() > rows.len() {
            continue;
        }
        for index in chain.into_iter().rev() {
            let of = other(rows[index].along).filter(|of| *of < rows.len());
            let anchor = match of {
                Some(of) => starts[of].map(|start| (start, rows[of].extent)),
                None => Some((Length::ZERO, ground)),
            };
            starts[index] =
                anchor.map(|anchor| start(rows[index].along, rows[index].extent, anchor));
        }
    }
    starts
}

/// The layer that a place refers to, if any.
const fn other(along: Along) -> Option<usize> {
    match along {
        Along::From(..) | Along::Center => None,
        Along::CenterOf(of, _)
        | Along::Beyond { of, .. }
        | Along::Straddling { of, .. }
        | Along::Within { of, .. } => Some(of),
    }
}

/// Where a layer of an extent begins, counted from the left or top, by an anchor
/// with its start and extent: another layer, or the whole ground.
fn start(along: Along, extent: Length, (from, length): (Length, Length)) -> Length {
    let to = from + length;
    match along {
        Along::Center | Along::CenterOf(..) => from + (length - extent).half(),
        Along::From(side, inset, _) | Along::Within { side, inset, .. } => match side {
            Side::Left | Side::Top => from + inset,
            Side::Right | Side::Bottom => to - inset - extent,
        },
        Along::Beyond { side, gap, .. } => match side {
            Side::Left | Side::Top => from - gap - extent,
            Side::Right | Side::Bottom => to + gap,
        },
        Along::Straddling { side, .. } => match side {
            Side::Left | Side::Top => from - extent.half(),
            Side::Right | Side::Bottom => to - extent.half(),
        },
    }
}
