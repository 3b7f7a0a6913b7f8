//! Layers in a row that share the width or the height of the front with equal gaps.

use crate::diag::{Diagnostic, rules};
use crate::geom::{Axis, Length, Side};
use crate::project::read::desk::Desk;
use crate::project::read::place::{Front, Seat};
use crate::project::{Along, Layer};

/// Where a layer sits along one direction.
fn place(layer: &Layer, way: Axis) -> Along {
    match way {
        Axis::Level => layer.across,
        Axis::Upright => layer.up,
    }
}

/// Gives the layers of every run their places: those that say `evenly`, one after the
/// other, and are alike in the other direction.
pub(crate) fn space(
    desk: &mut Desk<'_>,
    layers: &mut [Option<Layer>],
    seats: &[Seat],
    front: Front,
) {
    for way in [Axis::Level, Axis::Upright] {
        let mut from = 0;
        while from < layers.len() {
            let until = end(way, from, layers, seats);
            if from + 1 < until {
                run(desk, way, from, &mut layers[from..until], seats, front);
            }
            from = until.max(from + 1);
        }
    }
}

/// Where a run that begins with a layer ends; there if none begins.
fn end(way: Axis, from: usize, layers: &[Option<Layer>], seats: &[Seat]) -> usize {
    let first = layers[from].as_ref().filter(|_| seats[from].evenly.along(way).is_some());
    let Some(first) = first else { return from };
    let alike = |at: &usize| {
        seats[*at].evenly.along(way).is_some()
            && layers[*at].as_ref().is_some_and(|it| {
                same(place(it, way), place(first, way))
                    && (same(place(it, way.other()), place(first, way.other()))
                        // A run in both directions is a slope.
                        || seats[*at].evenly.along(way.other()).is_some())
            })
    };
    (from..layers.len()).take_while(alike).count() + from
}

/// Whether two places are the same, wherever they are said.
fn same(one: Along, two: Along) -> bool {
    match (one, two) {
        (Along::Center, Along::Center) => true,
        (Along::From(side, inset, _), Along::From(of, by, _)) => {
            (side, inset) == (of, by)
        }
        (Along::CenterOf(of, _), Along::CenterOf(it, _)) => of == it,
        (
            Along::Beyond { of, side, gap, .. },
            Along::Beyond { of: it, side: at, gap: by, .. },
        ) => (of, side, gap) == (it, at, by),
        (
            Along::Within { of, side, inset, .. },
            Along::Within { of: it, side: at, inset: by, .. },
        ) => (of, side, inset) == (it, at, by),
        (
            Along::Straddling { of, side, .. },
            Along::Straddling { of: it, side: at, .. },
        ) => (of, side) == (it, at),
        _ => false,
    }
}

/// Places the layers of one run from the first side on.
fn run(
    desk: &mut Desk<'_>,
    way: Axis,
    from: usize,
    layers: &mut [Option<Layer>],
    seats: &[Seat],
    front: Front,
) {
    let within = layers[0].as_ref().map(|it| place(it, way));
    let within = within.and_then(|it| match it {
        Along::CenterOf(of, site) => Some((of, site)),
        _ => None,
    });
    let room = within.map_or(front.size, |(of, _)| seats[of].size);
    let run = &seats[from..from + layers.len()];
    let extents: Option<Vec<Length>> =
        run.iter().map(|it| Some(it.size?.along(way))).collect();
    let (Some(room), Some(extents), Some(site)) =
        (room, extents, run[0].evenly.along(way))
    else {
        return;
    };
    let room = room.along(way);
    let all: Length = extents.iter().copied().sum();
    if room < all {
        let unit = desk.shown();
        let message = format!(
            "these {} layers are {} {} together, but there are only {}",
            layers.len(),
            all.show(unit),
            if way == Axis::Level { "wide" } else { "high" },
            room.show(unit),
        );
        let help = "leave one out, make them smaller, or place them one by one";
        desk.note(Diagnostic::new(&rules::LAYER_OFF_THE_FRONT, site, message).help(help));
        return;
    }
    let gaps = i64::try_from(layers.len() + 1).unwrap_or(i64::MAX);
    let gap = Length::from_units((room - all).units() / gaps);
    let side = if way == Axis::Level { Side::Left } else { Side::Top };
    let mut inset = gap;
    for (layer, extent) in layers.iter_mut().zip(extents) {
        let along = match within {
            Some((of, site)) => Along::Within { of, side, inset, site },
            None => Along::From(side, inset, site),
        };
        if let Some(layer) = layer {
            match way {
                Axis::Level => layer.across = along,
                Axis::Upright => layer.up = along,
            }
        }
        inset = inset + extent + gap;
    }
}
