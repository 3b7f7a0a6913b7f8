//! Sizes, rectangles, sides and quarter turns.

use crate::geom::{Length, Narrowed};

/// Width × height, as the thing lies before one with its pattern upright.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Size {
    /// From left to right.
    pub width: Length,
    /// From top to bottom.
    pub height: Length,
}

impl Size {
    /// A size from its two sides.
    pub const fn new(width: Length, height: Length) -> Self {
        Self { width, height }
    }

    /// The same thing after a quarter turn.
    pub const fn turned(self) -> Self {
        Self { width: self.height, height: self.width }
    }

    /// The area in square units of 1/14400 mm; never overflows.
    pub fn area(self) -> i128 {
        i128::from(self.width.units()) * i128::from(self.height.units())
    }

    /// Whether this lies within `other` without a turn.
    pub fn fits(self, other: Self) -> bool {
        self.width <= other.width && self.height <= other.height
    }

    /// The side along an axis: the width along a level line, else the height.
    pub const fn along(self, axis: Axis) -> Length {
        match axis {
            Axis::Level => self.width,
            Axis::Upright => self.height,
        }
    }

    /// The longer side.
    pub fn long(self) -> Length {
        self.width.max(self.height)
    }

    /// The shorter side.
    pub fn short(self) -> Length {
        self.width.min(self.height)
    }
}

/// The direction of a line: from left to right, or from top to bottom.
///
/// A *level* cut runs from left to right and divides the height; an *upright*
/// cut runs from top to bottom and divides the width.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Axis {
    /// From left to right.
    Level,
    /// From top to bottom.
    Upright,
}

impl Axis {
    /// The other direction.
    pub const fn other(self) -> Self {
        match self {
            Self::Level => Self::Upright,
            Self::Upright => Self::Level,
        }
    }
}

/// One of the four sides of a rectangle.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Side {
    /// The left side.
    Left,
    /// The top side.
    Top,
    /// The right side.
    Right,
    /// The bottom side.
    Bottom,
}

/// A turn clockwise by quarters.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Turn {
    /// As it was.
    #[default]
    None,
    /// A quarter clockwise: what was on top is on the right.
    Right,
    /// Upside down.
    Over,
    /// A quarter anticlockwise: what was on top is on the left.
    Left,
}

impl Turn {
    /// Whether width and height change places.
    pub const fn swaps(self) -> bool {
        matches!(self, Self::Right | Self::Left)
    }
}

/// A rectangle with its top left corner at (x, y); y grows downwards.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Rect {
    /// The left side.
    pub x: Length,
    /// The top side.
    pub y: Length,
    /// Its extent.
    pub size: Size,
}

impl Rect {
    /// A rectangle from its top left corner and its size.
    pub const fn new(x: Length, y: Length, size: Size) -> Self {
        Self { x, y, size }
    }

    /// The whole of a size, with the corner at the origin.
    pub const fn whole(size: Size) -> Self {
        Self { x: Length::ZERO, y: Length::ZERO, size }
    }

    /// The right side.
    pub fn right(self) -> Length {
        self.x + self.size.width
    }

    /// The bottom side.
    pub fn bottom(self) -> Length {
        self.y + self.size.height
    }

    /// The part that both cover, if they overlap.
    pub fn overlap(self, other: Self) -> Option<Self> {
        let (x, y) = (self.x.max(other.x), self.y.max(other.y));
        let right = self.right().min(other.right());
        let bottom = self.bottom().min(other.bottom());
        (x < right && y < bottom)
            .then(|| Self::new(x, y, Size::new(right - x, bottom - y)))
    }

    /// Divides the rectangle: the left or top part of extent `at`, and the rest.
    ///
    /// An upright cut divides the width, a level cut the height.
    pub fn split(self, cut: Axis, at: Length) -> (Self, Self) {
        let Size { width, height } = self.size;
        match cut {
            Axis::Upright => (
                Self::new(self.x, self.y, Size::new(at, height)),
                Self::new(self.x + at, self.y, Size::new(width - at, height)),
            ),
            Axis::Level => (
                Self::new(self.x, self.y, Size::new(width, at)),
                Self::new(self.x, self.y + at, Size::new(width, height - at)),
            ),
        }
    }
}

/// What shape an outline has.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Shape {
    /// With square corners.
    Rectangle,
    /// With round corners.
    Rounded,
    /// A circle.
    Circle,
    /// An oval.
    Oval,
    /// A tag with two cut corners.
    Tag,
    /// What two passes of one punch leave of another shape.
    Narrowed(Narrowed),
}
