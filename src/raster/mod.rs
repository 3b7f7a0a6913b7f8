//! Pictures that were read: patterns of papers, photos of cards.
//!
//! Here alone pictures are decoded. A file is judged by its head before any of its
//! pixels is touched, so that a lying or huge one costs nothing.

mod encode;
mod jpeg;
mod open;
mod shrink;
mod tone;

pub use encode::{Coded, Print};
pub use open::{Fault, MOST_BYTES, MOST_PIXELS, open};
pub use tone::{contrast, luminance};

use std::fmt;

/// A picture with all its pixels.
#[derive(Clone, PartialEq, Eq)]
pub struct Picture {
    /// Pixels from left to right as they are stored.
    width: u32,
    /// Rows as they are stored.
    height: u32,
    /// How it is turned to be looked at.
    stands: Stands,
    /// Bytes per pixel: 1 for greys, 3 for red, green and blue (sRGB).
    depth: usize,
    /// Row by row, from the top left corner of what is stored.
    pixels: Vec<u8>,
    /// The file itself, if it is a JPEG file that can be printed as it is.
    file: Option<Vec<u8>>,
    /// The file was a JPEG file: what is made from it is one again.
    lossy: bool,
}

/// How stored pixels stand when the picture is looked at (Exif 2.3, tag 0x0112).
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Stands(u8);

impl Stands {
    /// As it is stored.
    pub const UPRIGHT: Self = Self(1);

    /// The value of the tag, from 1 to 8; all others are 1.
    pub fn from_tag(value: u8) -> Self {
        if (1..=8).contains(&value) { Self(value) } else { Self::UPRIGHT }
    }

    /// Whether width and height change places.
    pub const fn swaps(self) -> bool {
        self.0 >= 5
    }

    /// Where a point of the stored picture is seen; both are parts of the width
    /// and height from 0 to 1, from the top left corner.
    ///
    /// The tag says on which sides the first row and the first column are seen.
    pub fn seen_at(self, (u, v): (f64, f64)) -> (f64, f64) {
        match self.0 {
            2 => (1.0 - u, v),
            3 => (1.0 - u, 1.0 - v),
            4 => (u, 1.0 - v),
            5 => (v, u),
            6 => (1.0 - v, u),
            7 => (1.0 - v, 1.0 - u),
            8 => (v, 1.0 - u),
            _ => (u, v),
        }
    }
}

impl Picture {
    /// Width and height in pixels, as it is looked at.
    pub fn size(&self) -> (u32, u32) {
        if self.stands.swaps() {
            (self.height, self.width)
        } else {
            (self.width, self.height)
        }
    }

    /// Width and height in pixels, as they are stored.
    pub fn stored(&self) -> (u32, u32) {
        (self.width, self.height)
    }

    /// How what is stored stands.
    pub fn stands(&self) -> Stands {
        self.stands
    }

    /// So many pixels.
    pub fn pixels(&self) -> u64 {
        u64::from(self.width) * u64::from(self.height)
    }

    /// A row of pixels as they are stored.
    fn row(&self, y: usize) -> &[u8] {
        let long = self.width as usize * self.depth;
        &self.pixels[y * long..(y + 1) * long]
    }
}

/// Pixels are for nobody to read.
impl fmt::Debug for Picture {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let (width, height) = self.size();
        write!(f, "Picture({width} x {height})")
    }
}

#[cfg(test)]
mod tests {
    use super::Stands;

    #[test]
    fn the_first_row_and_column_are_seen_where_exif_says() {
        // Exif 2.3 (CIPA DC-008-2012), table 4, tag 0x0112: the side of row 0, then
        // the side of column 0.
        let sides = [
            (1, "top", "left"),
            (2, "top", "right"),
            (3, "bottom", "right"),
            (4, "bottom", "left"),
            (5, "left", "top"),
            (6, "right", "top"),
            (7, "right", "bottom"),
            (8, "left", "bottom"),
        ];
        let side = |(x, y): (f64, f64)| match (x, y) {
            (_, 0.0) => "top",
            (_, 1.0) => "bottom",
            (0.0, _) => "left",
            _ => "right",
        };
        for (tag, row, column) in sides {
            let stands = Stands::from_tag(tag);
            assert_eq!(side(stands.seen_at((0.5, 0.0))), row, "{tag}");
            assert_eq!(side(stands.seen_at((0.0, 0.5))), column, "{tag}");
        }
    }
}
