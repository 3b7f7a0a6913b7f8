//! The highest stack of layers over any point of a front.

use crate::geom::{Length, Rect};

/// So many layers are looked at point by point; more are simply stacked. No
/// card has a tenth of them.
const MOST: usize = 400;

/// Something flat that lies on a part of the front.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Slab {
    /// Where.
    pub(super) at: Rect,
    /// How thick it is.
    pub(super) thickness: Length,
}

/// How high the slabs lie over one another where they lie highest; and whether
/// that is exact, rather than more than it can be.
pub(super) fn highest(slabs: &[Slab]) -> (Length, bool) {
    if MOST < slabs.len() {
        return (slabs.iter().map(|slab| slab.thickness).sum(), false);
    }
    // The highest stack begins somewhere at the left side of one of its slabs.
    let at_left_of = |edge: &Slab| {
        let x = edge.at.x;
        let met = slabs.iter().filter(|it| it.at.x <= x && x < it.at.right());
        highest_along(met)
    };
    (slabs.iter().map(at_left_of).max().unwrap_or_default(), true)
}

/// The highest stack along an upright line that meets these slabs.
fn highest_along<'a>(slabs: impl Iterator<Item = &'a Slab>) -> Length {
    // Slabs that only touch don't lie on one another: what ends comes first.
    let mut ends: Vec<(Length, Length)> = slabs
        .filter(|slab| slab.at.y < slab.at.bottom())
        .flat_map(|it| [(it.at.y, it.thickness), (it.at.bottom(), -it.thickness)])
        .collect();
    ends.sort_unstable();
    let (mut height, mut most) = (Length::ZERO, Length::ZERO);
    for (_, change) in ends {
        height += change;
        most = most.max(height);
    }
    most
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::geom::Size;

    fn slab(x: i64, y: i64, width: i64, height: i64, thickness: i64) -> Slab {
        let size = Size::new(Length::mm(width), Length::mm(height));
        let at = Rect::new(Length::mm(x), Length::mm(y), size);
        Slab { at, thickness: Length::mm(thickness) }
    }

    #[test]
    fn only_what_overlaps_is_stacked() {
        let side_by_side = [slab(0, 0, 10, 10, 1), slab(10, 0, 10, 10, 2)];
        assert_eq!(highest(&side_by_side), (Length::mm(2), true));
        let above = [slab(0, 0, 10, 10, 1), slab(0, 10, 10, 10, 2)];
        assert_eq!(highest(&above), (Length::mm(2), true));
        let crossing = [slab(0, 4, 10, 2, 1), slab(4, 0, 2, 10, 2)];
        assert_eq!(highest(&crossing), (Length::mm(3), true));
        assert_eq!(highest(&[]), (Length::ZERO, true));
    }

    #[test]
    fn three_that_overlap_by_pairs_are_not_a_stack_of_three() {
        let ring = [slab(0, 0, 10, 4, 1), slab(6, 2, 4, 8, 1), slab(0, 3, 5, 7, 1)];
        assert_eq!(highest(&ring), (Length::mm(2), true));
    }

    #[test]
    fn a_flood_of_layers_is_bounded_from_above() {
        let many = vec![slab(0, 0, 10, 10, 1); 401];
        assert_eq!(highest(&many), (Length::mm(401), false));
        assert_eq!(highest(&many[1..]), (Length::mm(400), true));
    }

    #[test]
    fn the_highest_stack_is_that_of_a_look_at_every_millimetre() {
        // A sequence of small numbers, the same on every machine.
        let mut state = 7_u32;
        let mut next = |below: u32| {
            state = state.wrapping_mul(1_664_525).wrapping_add(1_013_904_223);
            i64::from(state >> 16) % i64::from(below)
        };
        for _ in 0..200 {
            let slabs: Vec<_> = (0..8)
                .map(|_| slab(next(12), next(12), next(9), next(9), 1 + next(3)))
                .collect();
            let over = |x, y| {
                let met = slabs.iter().filter(|it| {
                    let (x, y) = (Length::mm(x), Length::mm(y));
                    it.at.x <= x
                        && x < it.at.right()
                        && it.at.y <= y
                        && y < it.at.bottom()
                });
                met.map(|it| it.thickness).sum::<Length>()
            };
            let most = (0..24).flat_map(|x| (0..24).map(move |y| (x, y)));
            let most = most.map(|(x, y)| over(x, y)).max().unwrap();
            assert_eq!(highest(&slabs), (most, true), "{slabs:?}");
        }
    }
}
