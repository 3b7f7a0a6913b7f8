//! Pictures that are made for a test, and folders that hold them.

use std::collections::BTreeMap;
use std::fs;
use std::io::Cursor;
use std::path::{Path, PathBuf};

use image::codecs::jpeg::JpegEncoder;
use image::{ExtendedColorType, ImageFormat, RgbImage};
use leafwright::source::Folder;

/// A PNG file, pixel by pixel.
pub(crate) fn png(
    width: u32,
    height: u32,
    color: impl Fn(u32, u32) -> [u8; 3],
) -> Vec<u8> {
    let picture = RgbImage::from_fn(width, height, |x, y| image::Rgb(color(x, y)));
    let mut bytes = Vec::new();
    picture.write_to(&mut Cursor::new(&mut bytes), ImageFormat::Png).expect("a PNG file");
    bytes
}

/// A JPEG file, pixel by pixel.
pub(crate) fn jpeg(
    width: u32,
    height: u32,
    color: impl Fn(u32, u32) -> [u8; 3],
) -> Vec<u8> {
    let picture = RgbImage::from_fn(width, height, |x, y| image::Rgb(color(x, y)));
    let mut bytes = Vec::new();
    JpegEncoder::new_with_quality(&mut bytes, 90)
        .encode(&picture, width, height, ExtendedColorType::Rgb8)
        .expect("a JPEG file");
    bytes
}

/// A colour that is different at every place.
pub(crate) fn shade(x: u32, y: u32) -> [u8; 3] {
    let low = |it: u32| u8::try_from(it % 256).expect("a byte");
    [low(x * 7 + y), low(y * 5), low(x * y + 40)]
}

/// The same JPEG file, said to stand in a way (Exif 2.3, tag 0x0112).
pub(crate) fn standing(jpeg: &[u8], tag: u8) -> Vec<u8> {
    let mut exif = b"Exif\0\0MM\0*\0\0\0\x08\0\x01\x01\x12\0\x03\0\0\0\x01\0".to_vec();
    exif.extend([tag, 0, 0, 0, 0, 0, 0]);
    let long = u16::try_from(exif.len() + 2).expect("a short segment");
    let mut bytes = vec![0xff, 0xd8, 0xff, 0xe1];
    bytes.extend(long.to_be_bytes());
    bytes.extend(exif);
    bytes.extend(&jpeg[2..]);
    bytes
}

/// A folder of files that are only thought of.
pub(crate) struct Drawer(pub(crate) BTreeMap<&'static str, Vec<u8>>);

impl Folder for Drawer {
    fn bytes(&self, path: &Path) -> Result<Vec<u8>, String> {
        let file = path.to_str().and_then(|it| self.0.get(it));
        file.cloned().ok_or_else(|| format!("there is no file `{}`", path.display()))
    }
}

/// The folder of a description, in which every `scans/….png` and `photos/….png` is
/// thought of.
pub(crate) struct Beside(PathBuf);

impl Beside {
    /// The folder around a description.
    pub(crate) fn new(description: &str) -> Self {
        let parent = Path::new(description).parent();
        Self(parent.unwrap_or(Path::new(".")).to_path_buf())
    }
}

impl Folder for Beside {
    fn bytes(&self, path: &Path) -> Result<Vec<u8>, String> {
        if path.starts_with("scans") {
            return Ok(png(80, 100, shade));
        }
        if path.starts_with("photos") {
            return Ok(png(600, 600, |_, _| [90, 120, 90]));
        }
        // Tests also read demos under names of their own.
        fs::read(self.0.join(path))
            .or_else(|_| fs::read(Path::new("demo-data").join(path)))
            .map_err(|_| format!("`{}` can't be opened", path.display()))
    }
}
