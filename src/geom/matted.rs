//! Whether a label lies on its mat all round.

use crate::geom::{Axis, Length, Shape, Size, corners, is_within};

/// So much of a corner beside its mat is not seen (common practice, no source).
const UNSEEN: Length = Length::from_units(1_440);

/// The halves of a punched mat and how they lie.
#[derive(Clone, Copy, Debug)]
pub struct Halves {
    /// The shape that the punch makes.
    pub shape: Shape,
    /// Its size.
    pub size: Size,
    /// Which way the cut between the halves runs.
    pub cut: Axis,
    /// How far they are moved apart; below zero, together.
    pub moved: Length,
}

impl Halves {
    /// Whether a corner of a label in the middle peeps out beside the mat.
    ///
    /// What lies over a gap between the halves does not count: that is a seam.
    pub fn let_out(self, shape: Shape, size: Size) -> bool {
        let mat = corners(self.shape, self.size);
        let (across, up) = (size.width.half(), size.height.half());
        corners(shape, size).into_iter().any(|(x, y)| {
            let (x, y) = (nearer(x - across), nearer(y - up));
            ![-1, 1].into_iter().any(|side| self.covers(&mat, side, x, y))
        })
    }

    /// Whether one half lies under a point, counted from the middle.
    fn covers(self, mat: &[(Length, Length)], side: i64, x: Length, y: Length) -> bool {
        let back = Length::from_units(-side * self.moved.half().units());
        let (x, y) = match self.cut {
            Axis::Level => (x, y + back),
            Axis::Upright => (x + back, y),
        };
        let off = if self.cut == Axis::Level { y } else { x };
        let over_gap = off.units() * side < 0 && Length::ZERO < self.moved;
        let middle = (self.size.width.half(), self.size.height.half());
        let own = over_gap || 0 <= off.units() * side;
        own && is_within(mat, (x + middle.0, y + middle.1))
    }
}

/// A little nearer to the middle.
fn nearer(off: Length) -> Length {
    if off < Length::ZERO {
        Length::ZERO.min(off + UNSEEN)
    } else {
        Length::ZERO.max(off - UNSEEN)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_square_corner_peeps_out_of_an_oval() {
        // x²/a² + y²/b² of the corner of a rectangle as wide as half an oval is
        // 1/4 + 1/4; as wide as four fifths of it 16/25 twice, which is over 1.
        let size = Size::new(Length::mm(60), Length::mm(40));
        let mat = |moved| Halves { shape: Shape::Oval, size, cut: Axis::Level, moved };
        let label =
            |tenths: i64| Size::new(Length::mm(6 * tenths), Length::mm(4 * tenths));
        assert!(!mat(Length::ZERO).let_out(Shape::Rectangle, label(5)));
        assert!(mat(Length::ZERO).let_out(Shape::Rectangle, label(8)));
        // 12 mm apart, the corner lies where 10 mm less of the height counts.
        assert!(!mat(Length::mm(20)).let_out(Shape::Rectangle, label(7)));
        assert!(mat(-Length::mm(8)).let_out(Shape::Rectangle, label(7)));
        assert!(!mat(Length::ZERO).let_out(Shape::Oval, label(10)));
    }
}
