//! Outlines as corners: what two passes of one punch leave, what room words have.
//!
//! The corners of curved outlines lie on the curve or just inside it, so that
//! what is said to fit does. How round a corner is, and how much a tag lacks, is
//! common practice, no source; the drawings go by the same figures.

use i_overlay::core::fill_rule::FillRule;
use i_overlay::core::overlay::Overlay;
use i_overlay::core::overlay_rule::OverlayRule;
use i_overlay::i_float::int::point::IntPoint;

use crate::geom::{Length, Shape, Side, Size, Turn};

/// The radius of a rounded corner, in hundredths of the shorter side.
const ROUND: i64 = 18;
/// What each cut corner of a tag lacks, in hundredths of the shorter side.
const TAG_CUT: i64 = 28;
/// The largest outline that is laid over another: 1 m.
pub const MOST_OUTLINE: Length = Length::mm(1000);

/// A quarter of a curve is divided into so many straight stretches: on a circle
/// of 2 in they are never further off than 1/100 mm.
const STRETCHES: i64 = 24;

/// What is left of an outline after a second pass of the same punch.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Narrowed {
    /// The outline of each pass.
    pub of: Curved,
    /// Width × height of the whole outline.
    pub whole: Size,
    /// How far the second pass was moved.
    pub by: Length,
    /// From which side something came off.
    pub side: Side,
}

/// An outline that doesn't stay what it is when it is narrowed.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Curved {
    /// A rectangle with round corners.
    Rounded,
    /// A circle.
    Circle,
    /// An oval.
    Oval,
    /// A tag.
    Tag,
}

type Corner = (i64, i64);

/// The corners of a shape, clockwise, from the top left corner of its box.
pub fn corners(shape: Shape, size: Size) -> Vec<(Length, Length)> {
    let corners = match shape {
        Shape::Narrowed(narrowed) => overlap(narrowed).unwrap_or_default(),
        _ => whole(shape, size),
    };
    let length = |(x, y)| (Length::from_units(x), Length::from_units(y));
    corners.into_iter().map(length).collect()
}

/// What is left of a shape after a second pass that takes `by` off at a side, and
/// the size of the box around it; `None` if nothing is left.
pub fn narrowed(
    shape: Shape,
    size: Size,
    by: Length,
    side: Side,
) -> Option<(Shape, Size)> {
    let extent = match side {
        Side::Left | Side::Right => size.width,
        Side::Top | Side::Bottom => size.height,
    };
    if by <= Length::ZERO || extent <= by || MOST_OUTLINE < size.long() {
        return None;
    }
    let of = match shape {
        Shape::Rectangle => {
            let left = match side {
                Side::Left | Side::Right => Size::new(size.width - by, size.height),
                Side::Top | Side::Bottom => Size::new(size.width, size.height - by),
            };
            return Some((Shape::Rectangle, left));
        }
        Shape::Rounded => Curved::Rounded,
        Shape::Circle => Curved::Circle,
        Shape::Oval => Curved::Oval,
        Shape::Tag => Curved::Tag,
        Shape::Narrowed(_) => return None,
    };
    let narrowed = Narrowed { of, whole: size, by, side };
    let left = overlap(narrowed)?;
    let (width, height) =
        (left.iter().map(|it| it.0).max()?, left.iter().map(|it| it.1).max()?);
    let size = Size::new(Length::from_units(width), Length::from_units(height));
    Some((Shape::Narrowed(narrowed), size))
}

/// Whether a rectangle in the middle of a shape lies within it.
pub fn holds(shape: Shape, size: Size, middle: Size) -> bool {
    if !middle.fits(size) {
        return false;
    }
    let corners = corners(shape, size);
    let (left, top) =
        ((size.width - middle.width).half(), (size.height - middle.height).half());
    let (right, bottom) = (left + middle.width, top + middle.height);
    [(left, top), (right, top), (right, bottom), (left, bottom)]
        .into_iter()
        .all(|point| is_within(&corners, point))
}

/// How wide a rectangle of a height may be in the middle of a shape.
pub fn widest(shape: Shape, size: Size, height: Length) -> Length {
    let fits =
        |width: i64| holds(shape, size, Size::new(Length::from_units(width), height));
    // A width that fits, and one that doesn't.
    let (mut low, mut high) = (0, size.width.units() + 1);
    if !fits(low) {
        return Length::ZERO;
    }
    while low + 1 < high {
        let middle = low + (high - low) / 2;
        if fits(middle) { low = middle } else { high = middle }
    }
    Length::from_units(low)
}

/// Whether a point lies within corners that are given clockwise and bulge out.
pub fn is_within(corners: &[(Length, Length)], (x, y): (Length, Length)) -> bool {
    let next = corners.iter().skip(1).chain(corners.first());
    let units = |length: Length| i128::from(length.units());
    corners.len() > 2
        && corners.iter().zip(next).all(|(a, b)| {
            let along = (units(b.0 - a.0), units(b.1 - a.1));
            let to = (units(x - a.0), units(y - a.1));
            // Corners are rounded to whole units: so near the line counts.
            along.0 * to.1 - along.1 * to.0 + along.0.abs() + along.1.abs() >= 0
        })
}

impl Shape {
    /// The shape as it stands after a turn.
    #[must_use]
    pub fn after(self, turn: Turn) -> Self {
        let Self::Narrowed(narrowed) = self else { return self };
        let whole = narrowed.whole;
        let whole = if turn.swaps() { whole.turned() } else { whole };
        let quarters = match turn {
            Turn::None => 0,
            Turn::Right => 1,
            Turn::Over => 2,
            Turn::Left => 3,
        };
        let around = [Side::Top, Side::Right, Side::Bottom, Side::Left];
        let at = around.iter().position(|it| *it == narrowed.side).unwrap_or(0);
        let side = around[(at + quarters) % 4];
        Self::Narrowed(Narrowed { whole, side, ..narrowed })
    }
}

/// The corners of what both passes share, moved into the corner of its box.
fn overlap(narrowed: Narrowed) -> Option<Vec<Corner>> {
    let shape = match narrowed.of {
        Curved::Rounded => Shape::Rounded,
        Curved::Circle => Shape::Circle,
        Curved::Oval => Shape::Oval,
        Curved::Tag => Shape::Tag,
    };
    let by = narrowed.by.units();
    let (dx, dy) = match narrowed.side {
        Side::Left => (by, 0),
        Side::Right => (-by, 0),
        Side::Top => (0, by),
        Side::Bottom => (0, -by),
    };
    let point = |(x, y): Corner| {
        Some(IntPoint::new(i32::try_from(x).ok()?, i32::try_from(y).ok()?))
    };
    let first = whole(shape, narrowed.whole);
    let second = first.iter().map(|(x, y)| point((x + dx, y + dy)));
    let second: Vec<IntPoint> = second.collect::<Option<_>>()?;
    let first: Vec<IntPoint> =
        first.iter().map(|it| point(*it)).collect::<Option<_>>()?;
    let mut overlay = Overlay::with_contour(&first, &second);
    let shapes = overlay.overlay(OverlayRule::Intersect, FillRule::NonZero);
    let contour = shapes.into_iter().next()?.into_iter().next()?;
    let mut corners: Vec<Corner> =
        contour.iter().map(|it| (i64::from(it.x), i64::from(it.y))).collect();
    let (left, top) =
        (corners.iter().map(|it| it.0).min()?, corners.iter().map(|it| it.1).min()?);
    for corner in &mut corners {
        *corner = (corner.0 - left, corner.1 - top);
    }
    if turns_left(&corners) {
        corners.reverse();
    }
    Some(corners)
}

/// Whether corners run anticlockwise, with y growing downwards.
fn turns_left(corners: &[Corner]) -> bool {
    let next = corners.iter().skip(1).chain(corners.first());
    let twice: i128 = corners
        .iter()
        .zip(next)
        .map(|(a, b)| {
            i128::from(a.0) * i128::from(b.1) - i128::from(b.0) * i128::from(a.1)
        })
        .sum();
    twice < 0
}

/// The corners of a shape in a box of this size, clockwise from the left.
fn whole(shape: Shape, size: Size) -> Vec<Corner> {
    let (width, height) = (size.width.units(), size.height.units());
    let short = width.min(height);
    match shape {
        Shape::Rectangle | Shape::Narrowed(_) => {
            vec![(0, 0), (width, 0), (width, height), (0, height)]
        }
        Shape::Rounded => {
            let across = short * ROUND / 100 * 2;
            arcs(width, height, across, across)
        }
        Shape::Circle | Shape::Oval => arcs(width, height, width, height),
        Shape::Tag => {
            let cut = short * TAG_CUT / 100;
            if height <= width {
                vec![
                    (cut, 0),
                    (width, 0),
                    (width, height),
                    (cut, height),
                    (0, height - cut),
                    (0, cut),
                ]
            } else {
                vec![
                    (cut, 0),
                    (width - cut, 0),
                    (width, cut),
                    (width, height),
                    (0, height),
                    (0, cut),
                ]
            }
        }
    }
}

/// A box whose four corners are quarters of an oval that is so wide and so high.
///
/// The corners are (1 - t²)/(1 + t²) and 2t/(1 + t²) along the axes, for t in equal
/// steps: whole numbers all the way, and rounded towards the middle.
fn arcs(width: i64, height: i64, across: i64, up: i64) -> Vec<Corner> {
    let quarter = (0..=STRETCHES).map(|t| {
        let all = STRETCHES * STRETCHES + t * t;
        let (cos, sin) = (STRETCHES * STRETCHES - t * t, 2 * STRETCHES * t);
        // How far in from the corner of the box, rounded up.
        let inset =
            |extent: i64, part: i64| (extent * (all - part) + 2 * all - 1) / (2 * all);
        (inset(across, cos), inset(up, sin))
    });
    let quarter: Vec<Corner> = quarter.collect();
    let mut corners = Vec::with_capacity(quarter.len() * 4);
    corners.extend(quarter.iter().map(|(x, y)| (*x, *y)));
    corners.extend(quarter.iter().rev().map(|(x, y)| (width - x, *y)));
    corners.extend(quarter.iter().map(|(x, y)| (width - x, height - y)));
    corners.extend(quarter.iter().rev().map(|(x, y)| (*x, height - y)));
    corners.dedup();
    if corners.first() == corners.last() {
        corners.pop();
    }
    corners
}

#[cfg(test)]
mod tests {
    use super::*;

    fn mm(width: i64, height: i64) -> Size {
        Size::new(Length::mm(width), Length::mm(height))
    }

    #[test]
    fn two_circles_share_a_lens() {
        // A circle of radius 25 mm moved by 30 mm: the lens is 20 mm wide and, by
        // Euclid III.3 and I.47, 2 * sqrt(25² - 15²) = 40 mm high.
        let (shape, size) =
            narrowed(Shape::Circle, mm(50, 50), Length::mm(30), Side::Left).unwrap();
        assert_eq!(size.width, Length::mm(20));
        let off = (size.height - Length::mm(40)).units().abs();
        assert!(off < 144 * 4, "{off} units off");
        assert!(holds(shape, size, mm(10, 20)) && !holds(shape, size, mm(19, 20)));
    }

    #[test]
    fn a_circle_holds_the_rectangle_of_pythagoras() {
        // 3 : 4 : 5, so 30 x 40 mm has a diagonal of 50 mm.
        assert!(holds(
            Shape::Circle,
            mm(50, 50),
            Size::new(Length::mm(30), Length::mm(40) - Length::from_units(300))
        ));
        assert!(!holds(Shape::Circle, mm(50, 50), mm(31, 40)));
        let widest = widest(Shape::Circle, mm(50, 50), Length::mm(40));
        assert!((widest - Length::mm(30)).units().abs() < 600, "{widest:?}");
    }

    #[test]
    fn a_straight_side_moves_as_far_as_the_second_pass() {
        for shape in [Shape::Rectangle, Shape::Rounded, Shape::Tag] {
            for (side, left) in [(Side::Top, mm(60, 20)), (Side::Bottom, mm(60, 20))] {
                let (_, size) =
                    narrowed(shape, mm(60, 30), Length::mm(10), side).unwrap();
                assert_eq!(size, left, "{shape:?} {side:?}");
            }
        }
        assert_eq!(narrowed(Shape::Oval, mm(60, 30), Length::mm(30), Side::Top), None);
    }

    #[test]
    fn corners_run_clockwise_and_bulge_out() {
        for shape in
            [Shape::Rectangle, Shape::Rounded, Shape::Circle, Shape::Oval, Shape::Tag]
        {
            for size in [mm(60, 30), mm(30, 60), mm(40, 40)] {
                let mut all = vec![(shape, size)];
                let by = Length::mm(7);
                all.extend(
                    [Side::Left, Side::Top]
                        .map(|it| narrowed(shape, size, by, it).unwrap()),
                );
                for (shape, size) in all {
                    let corners = corners(shape, size);
                    let middle = (size.width.half(), size.height.half());
                    assert!(is_within(&corners, middle), "{shape:?} {size:?}");
                    assert!(
                        corners.iter().all(|it| is_within(&corners, *it)),
                        "{shape:?} {size:?}"
                    );
                }
            }
        }
    }
}
