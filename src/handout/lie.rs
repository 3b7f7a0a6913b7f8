//! How a picture lies on something that was cut from a sheet: flipped, cut out,
//! turned.

use crate::geom::{Rect, Size, Turn};

/// A thing of a size, and where the whole picture lies on it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Lie {
    /// Width × height of the thing as it lies.
    pub(super) size: Size,
    /// Where the whole picture lies, from the thing's top left corner.
    pub(super) whole: Rect,
    /// How the picture is turned.
    pub(super) turn: Turn,
}

/// Which side of the sheet is looked at.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Looked {
    /// The one that lies up when cutting.
    Front,
    /// The other one: the sheet is flipped about its upright axis, so that what
    /// was cut on the left is seen on the right.
    Back,
}

impl Lie {
    /// A part of a sheet; `cut` is where it lies when it is cut, `covers` where the
    /// picture lies on the side that is looked at.
    pub(super) fn on_sheet(sheet: Size, cut: Rect, covers: Rect, looked: Looked) -> Self {
        let seen = match looked {
            Looked::Front => cut,
            Looked::Back => Rect::new(sheet.width - cut.right(), cut.y, cut.size),
        };
        let whole = Rect::new(covers.x - seen.x, covers.y - seen.y, covers.size);
        Self { size: cut.size, whole, turn: Turn::None }
    }

    /// The thing after a turn.
    #[must_use]
    pub(super) fn turned(self, turn: Turn) -> Self {
        Self {
            size: if turn.swaps() { self.size.turned() } else { self.size },
            whole: turned(self.whole, self.size, turn),
            turn: together(self.turn, turn),
        }
    }

    /// Where the whole picture lies when the thing is laid on a place.
    pub(super) fn laid_on(self, place: Rect) -> Rect {
        Rect::new(place.x + self.whole.x, place.y + self.whole.y, self.whole.size)
    }
}

/// A rectangle on a thing of a size after the thing was turned.
pub(super) fn turned(rect: Rect, on: Size, turn: Turn) -> Rect {
    let Rect { x, y, size } = rect;
    match turn {
        Turn::None => rect,
        Turn::Right => Rect::new(on.height - rect.bottom(), x, size.turned()),
        Turn::Over => Rect::new(on.width - rect.right(), on.height - rect.bottom(), size),
        Turn::Left => Rect::new(y, on.width - rect.right(), size.turned()),
    }
}

/// One turn after the other.
fn together(one: Turn, other: Turn) -> Turn {
    const ALL: [Turn; 4] = [Turn::None, Turn::Right, Turn::Over, Turn::Left];
    let quarters = |turn| ALL.iter().position(|it| *it == turn).unwrap_or(0);
    ALL[(quarters(one) + quarters(other)) % 4]
}

#[cfg(test)]
mod tests {
    use super::{Lie, Looked, turned};
    use crate::geom::{Length, Rect, Size, Turn};

    fn rect(x: i64, y: i64, width: i64, height: i64) -> Rect {
        let inch = |it| Length::inch(it, 1);
        Rect::new(inch(x), inch(y), Size::new(inch(width), inch(height)))
    }

    #[test]
    fn four_quarter_turns_lead_back() {
        let lie = Lie::on_sheet(
            rect(0, 0, 8, 6).size,
            rect(1, 2, 3, 2),
            rect(0, 0, 8, 6),
            Looked::Front,
        );
        for turn in [Turn::Right, Turn::Left] {
            let round = (0..4).fold(lie, |lie, _| lie.turned(turn));
            assert_eq!(round, lie);
            assert_eq!(lie.turned(turn).turned(turn), lie.turned(Turn::Over));
        }
    }

    #[test]
    fn what_is_cut_on_the_left_is_seen_on_the_right_from_behind() {
        let (sheet, cut) = (rect(0, 0, 8, 6).size, rect(0, 1, 3, 2));
        let lie = Lie::on_sheet(sheet, cut, Rect::whole(sheet), Looked::Back);
        // From behind, the part starts 5 in from the left.
        assert_eq!(lie.whole, rect(-5, -1, 8, 6));
    }

    #[test]
    fn a_corner_goes_round_clockwise() {
        // The top left square inch of a thing 4 wide and 3 high.
        let (corner, on) = (rect(0, 0, 1, 1), rect(0, 0, 4, 3).size);
        assert_eq!(turned(corner, on, Turn::Right), rect(2, 0, 1, 1));
        assert_eq!(turned(corner, on, Turn::Over), rect(3, 2, 1, 1));
        assert_eq!(turned(corner, on, Turn::Left), rect(0, 3, 1, 1));
    }
}
