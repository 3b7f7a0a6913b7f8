//! A picture as it goes into a printed file.

use std::borrow::Cow;
use std::collections::BTreeMap;

use image::ExtendedColorType;
use image::codecs::jpeg::JpegEncoder;

use super::Picture;

/// How good a JPEG file is that is made from a larger one: between the two there
/// is nothing to be seen (common practice, no source).
const QUALITY: u8 = 88;

/// A picture ready to be written.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Print<'a> {
    /// Pixels from left to right.
    pub width: u32,
    /// Rows.
    pub height: u32,
    /// The pixels.
    pub coded: Coded<'a>,
}

/// How pixels are written down.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Coded<'a> {
    /// A whole JPEG file; greys if it is said.
    Jpeg {
        /// Its bytes.
        file: Cow<'a, [u8]>,
        /// One value for each pixel.
        gray: bool,
    },
    /// One byte for each pixel.
    Gray(Cow<'a, [u8]>),
    /// Red, green and blue for each pixel.
    Colors(Cow<'a, [u8]>),
    /// Few colours, and for each pixel the number of its colour.
    Few {
        /// Red, green and blue, one after the other.
        colors: Vec<u8>,
        /// One byte for each pixel.
        pixels: Vec<u8>,
    },
}

impl Picture {
    /// The picture as it is to be written: a JPEG file untouched, pixels that came
    /// from one as a JPEG file again, all else without loss.
    pub fn print(&self) -> Print<'_> {
        let (width, height) = self.stored();
        let gray = self.depth == 1;
        let coded = match &self.file {
            Some(file) => Coded::Jpeg { file: Cow::Borrowed(file), gray },
            None if self.lossy => self.jpeg(),
            None if gray => Coded::Gray(Cow::Borrowed(&self.pixels)),
            None => self.few().unwrap_or(Coded::Colors(Cow::Borrowed(&self.pixels))),
        };
        Print { width, height, coded }
    }

    /// The pixels as a JPEG file, or as they are if they can't be one.
    fn jpeg(&self) -> Coded<'_> {
        let gray = self.depth == 1;
        let kind = if gray { ExtendedColorType::L8 } else { ExtendedColorType::Rgb8 };
        let mut file = Vec::new();
        let mut encoder = JpegEncoder::new_with_quality(&mut file, QUALITY);
        match encoder.encode(&self.pixels, self.width, self.height, kind) {
            Ok(()) => Coded::Jpeg { file: Cow::Owned(file), gray },
            Err(_) if gray => Coded::Gray(Cow::Borrowed(&self.pixels)),
            Err(_) => Coded::Colors(Cow::Borrowed(&self.pixels)),
        }
    }

    /// The pixels by number, if there are no more than 256 colours.
    fn few(&self) -> Option<Coded<'_>> {
        let mut known: BTreeMap<[u8; 3], u8> = BTreeMap::new();
        let mut colors = Vec::new();
        let mut pixels = Vec::with_capacity(self.pixels.len() / 3);
        let mut last = None;
        for it in self.pixels.chunks_exact(3) {
            let color = [it[0], it[1], it[2]];
            let number = match last {
                Some((same, number)) if same == color => number,
                _ => match known.get(&color) {
                    Some(number) => *number,
                    None => {
                        let number = u8::try_from(known.len()).ok()?;
                        known.insert(color, number);
                        colors.extend(color);
                        number
                    }
                },
            };
            last = Some((color, number));
            pixels.push(number);
        }
        Some(Coded::Few { colors, pixels })
    }
}
