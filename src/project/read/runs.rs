//! Layers in a row that share the width or the height of the front with equal gaps.

use crate::diag::{Diagnostic, rules};
use crate::geom::{Length, Side, Size};
use crate::project::read::desk::Desk;
use crate::project::read::place::{Front, Seat};
use crate::project::{Along, Layer};
use crate::source::Site;

/// One of the two directions.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Way {
    Across,
    Up,
}

impl Way {
    fn said(self, seat: &Seat) -> Option<Site> {
        match self {
            Self::Across => seat.evenly.across,
            Self::Up => seat.evenly.up,
        }
    }

    fn extent(self, size: Size) -> Length {
        match self {
            Self::Across => size.width,
            Self::Up => size.height,
        }
    }

    fn place(self, layer: &Layer) -> Along {
        match self {
            Self::Across => layer.across,
            Self::Up => layer.up,
        }
    }

    fn other(self) -> Self {
        match self {
            Self::Across => Self::Up,
            Self::Up => Self::Across,
        }
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
    for way in [Way::Across, Way::Up] {
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
fn end(way: Way, from: usize, layers: &[Option<Layer>], seats: &[Seat]) -> usize {
    let first = layers[from].as_ref().filter(|_| way.said(&seats[from]).is_some());
    let Some(first) = first else { return from };
    let alike = |at: &usize| {
        way.said(&seats[*at]).is_some()
            && layers[*at].as_ref().is_some_and(|it| {
                same(way.place(it), way.place(first))
                    && (same(way.other().place(it), way.other().place(first))
                        // A run in both directions is a slope.
                        || way.other().said(&seats[*at]).is_some())
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
    way: Way,
    from: usize,
    layers: &mut [Option<Layer>],
    seats: &[Seat],
    front: Front,
) {
    let within = layers[0].as_ref().map(|it| way.place(it));
    let within = within.and_then(|it| match it {
        Along::CenterOf(of, site) => Some((of, site)),
        _ => None,
    });
    let room = within.map_or(front.size, |(of, _)| seats[of].size);
    let run = &seats[from..from + layers.len()];
    let extents: Option<Vec<Length>> =
        run.iter().map(|it| Some(way.extent(it.size?))).collect();
    let (Some(room), Some(extents), Some(site)) = (room, extents, way.said(&run[0]))
    else {
        return;
    };
    let room = way.extent(room);
    let all = extents.iter().fold(Length::ZERO, |sum, it| sum + *it);
    if room < all {
        let unit = desk.shown();
        let message = format!(
            "these {} layers are {} {} together, but there are only {}",
            layers.len(),
            all.show(unit),
            if way == Way::Across { "wide" } else { "high" },
            room.show(unit),
        );
        let help = "leave one out, make them smaller, or place them one by one";
        desk.note(Diagnostic::new(&rules::LAYER_OFF_THE_FRONT, site, message).help(help));
        return;
    }
    let gaps = i64::try_from(layers.len() + 1).unwrap_or(i64::MAX);
    let gap = Length::from_units((room - all).units() / gaps);
    let side = if way == Way::Across { Side::Left } else { Side::Top };
    let mut inset = gap;
    for (layer, extent) in layers.iter_mut().zip(extents) {
        let along = match within {
            Some((of, site)) => Along::Within { of, side, inset, site },
            None => Along::From(side, inset, site),
        };
        if let Some(layer) = layer {
            match way {
                Way::Across => layer.across = along,
                Way::Up => layer.up = along,
            }
        }
        inset = inset + extent + gap;
    }
}
