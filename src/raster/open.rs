//! From the bytes of a file to a picture, or to why there is none.

use std::fmt;
use std::io::Cursor;

use flate2::Crc;
use image::codecs::jpeg::JpegDecoder;
use image::codecs::png::PngDecoder;
use image::{ColorType, ImageDecoder, ImageResult, Limits};

use super::{Picture, Stands, jpeg};

/// A file may not be larger.
pub const MOST_BYTES: usize = 32 * 1024 * 1024;

/// A picture may not have more pixels: 12 × 12 in at 500 dots an inch.
pub const MOST_PIXELS: u64 = 36_000_000;

/// No side of a picture may be longer.
const LONGEST: u32 = 30_000;

/// Decoded, no picture may take more bytes.
const MOST_MEMORY: u64 = 160 * 1024 * 1024;

/// A JPEG file that goes over its picture more often is made to waste time.
const MOST_SCANS: usize = 64;

/// Nor does one go over more pixels in all: twelve times over a large picture, where
/// ten are usual.
const MOST_PASSED: u64 = 400_000_000;

/// What the decoder keeps of a JPEG file that is built up in several goes, with the
/// picture itself, may take so many bytes.
const MOST_KEPT: u64 = 180 * 1024 * 1024;

/// Why a file is no picture that can be used.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Fault {
    /// There is nothing in it.
    Empty,
    /// It is neither a PNG nor a JPEG file; what it looks like, if that is known.
    OtherKind(Option<&'static str>),
    /// So many bytes are too many.
    TooManyBytes(usize),
    /// So many pixels are too many.
    TooManyPixels(u32, u32),
    /// It says that it is so wide and high, but holds too little for it.
    CutShort(u32, u32),
    /// Its colours are those of printing inks.
    PrintingInks,
    /// It is coded in a way that few programs know.
    RareCoding,
    /// It is built up in several goes, too many for its size.
    ManyGoes(u32, u32),
    /// It can't be decoded.
    Broken,
}

/// A phrase to put after the file's name.
impl fmt::Display for Fault {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        match self {
            Self::Empty => write!(f, "is empty"),
            Self::OtherKind(None) => write!(f, "is neither a PNG nor a JPEG file"),
            Self::OtherKind(Some(kind)) => {
                write!(f, "is a {kind} file, neither PNG nor JPEG")
            }
            Self::TooManyBytes(bytes) => write!(
                f,
                "has {} MiB; the most is {} MiB",
                bytes.div_ceil(1024 * 1024),
                MOST_BYTES / 1024 / 1024
            ),
            Self::TooManyPixels(width, height) => write!(
                f,
                "has {width} x {height} pixels; the most is {} million",
                MOST_PIXELS / 1_000_000
            ),
            Self::CutShort(width, height) => write!(
                f,
                "is cut short: it says that it has {width} x {height} pixels, and holds fewer"
            ),
            Self::PrintingInks => write!(f, "has the colours of printing inks (CMYK)"),
            Self::RareCoding => write!(f, "is coded in a way that few programs know"),
            Self::ManyGoes(width, height) => write!(
                f,
                "is a progressive JPEG file, which takes too much memory or time with \
                 {width} x {height} pixels"
            ),
            Self::Broken => write!(f, "is damaged and can't be shown"),
        }
    }
}

impl Fault {
    /// What to do about it.
    pub fn cure(&self) -> &'static str {
        match self {
            Self::Empty | Self::CutShort(..) => "copy or export the picture again",
            Self::OtherKind(_) => "export the picture as PNG or JPEG",
            Self::TooManyBytes(_) | Self::TooManyPixels(..) => {
                "scan or export it at 300 dots an inch; more is not printed"
            }
            Self::PrintingInks => "export it in RGB colours (sRGB)",
            Self::ManyGoes(..) => "export it as a plain JPEG file, not a progressive one",
            Self::RareCoding => "export it as a usual JPEG file with 8 bits a colour",
            Self::Broken => "open it in a picture program and export it again",
        }
    }
}

/// Reads a PNG or JPEG file.
///
/// What a file says of itself is held against its length before it is decoded.
/// What shines through is put on white; 16 bits become 8.
///
/// # Errors
/// Why the file can't be used; a phrase to put after its name.
pub fn open(bytes: &[u8]) -> Result<Picture, Fault> {
    if bytes.is_empty() {
        return Err(Fault::Empty);
    }
    if bytes.len() > MOST_BYTES {
        return Err(Fault::TooManyBytes(bytes.len()));
    }
    if bytes.starts_with(b"\x89PNG\r\n\x1a\n") {
        return png(bytes);
    }
    if bytes.starts_with(&[0xff, 0xd8, 0xff]) {
        return jpeg(bytes);
    }
    let at = |from: usize| bytes.get(from..from + 4).unwrap_or_default();
    Err(Fault::OtherKind(match (at(0), at(8)) {
        (b"GIF8", _) => Some("GIF"),
        (b"RIFF", b"WEBP") => Some("WebP"),
        (b"II*\0" | b"MM\0*", _) => Some("TIFF"),
        (b"%PDF", _) => Some("PDF"),
        (_, b"heic" | b"heix" | b"mif1" | b"msf1") => Some("HEIC"),
        (_, b"avif") => Some("AVIF"),
        ([b'B', b'M', ..], _) => Some("BMP"),
        ([b'<', ..], _) => Some("SVG or other text"),
        _ => None,
    }))
}

/// Checks sizes before a byte is set aside for pixels.
fn check_size(width: u32, height: u32) -> Result<(), Fault> {
    if width == 0 || height == 0 {
        return Err(Fault::Broken);
    }
    let pixels = u64::from(width) * u64::from(height);
    if width > LONGEST || height > LONGEST || pixels > MOST_PIXELS {
        return Err(Fault::TooManyPixels(width, height));
    }
    Ok(())
}

fn png(bytes: &[u8]) -> Result<Picture, Fault> {
    // The head stands at a fixed place (ISO/IEC 15948, 11.2.2).
    let side = |at: usize| {
        let side = bytes.get(at..at + 4).and_then(|it| it.try_into().ok());
        side.map(u32::from_be_bytes).ok_or(Fault::Broken)
    };
    let (width, height) = (side(16)?, side(20)?);
    check_size(width, height)?;
    if !whole(bytes)? {
        return Err(Fault::CutShort(width, height));
    }
    let limits = || {
        let mut limits = Limits::no_limits();
        limits.max_alloc = Some(MOST_MEMORY);
        limits
    };
    let decoder = PngDecoder::with_limits(Cursor::new(bytes), limits());
    let decoder = decoder.map_err(|_| Fault::Broken)?;
    // Deflate packs 1032 bytes at most into one (RFC 1951: 258 bytes in two bits).
    let bits = u64::from(decoder.original_color_type().bits_per_pixel());
    let least = u64::from(width) * u64::from(height) * bits / 8 / 1032;
    if (bytes.len() as u64) < least {
        return Err(Fault::CutShort(width, height));
    }
    decoded(decoder, None)
}

/// Whether a PNG file goes on to its end; an error where a check value is wrong, so
/// that damage is found before anything is decoded (ISO/IEC 15948, 5.3 and 5.4).
fn whole(bytes: &[u8]) -> Result<bool, Fault> {
    let mut rest = &bytes[8..];
    while let Some((long, after)) = rest.split_first_chunk::<4>() {
        let long = usize::try_from(u32::from_be_bytes(*long)).unwrap_or(usize::MAX);
        // The kind is checked along with what it holds.
        let Some((held, after)) =
            long.checked_add(4).and_then(|it| after.split_at_checked(it))
        else {
            return Ok(false);
        };
        let Some((check, after)) = after.split_first_chunk::<4>() else {
            return Ok(false);
        };
        // Capital kinds are needed to show the picture; what is wrong with others
        // does no harm.
        let needed = held.first().is_some_and(u8::is_ascii_uppercase);
        let mut crc = Crc::new();
        crc.update(if needed { held } else { &[] });
        if needed && crc.sum() != u32::from_be_bytes(*check) {
            return Err(Fault::Broken);
        }
        if held.starts_with(b"IEND") {
            return Ok(true);
        }
        rest = after;
    }
    Ok(false)
}

fn jpeg(bytes: &[u8]) -> Result<Picture, Fault> {
    let head = jpeg::head(bytes).ok_or(Fault::Broken)?;
    check_size(head.width, head.height)?;
    if head.components == 4 {
        return Err(Fault::PrintingInks);
    }
    let known = head.usual && head.precision == 8 && matches!(head.components, 1 | 3);
    if !known || head.scans > MOST_SCANS {
        return Err(Fault::RareCoding);
    }
    // A block of 64 pixels takes a bit at least, even where nothing is to be seen.
    let least = u64::from(head.width) * u64::from(head.height) / 64 / 8;
    if !head.whole || (bytes.len() as u64) < least {
        return Err(Fault::CutShort(head.width, head.height));
    }
    let pixels = u64::from(head.width) * u64::from(head.height);
    let takes = head.kept * 2 + pixels * u64::from(head.components);
    if head.kept > 0 && takes > MOST_KEPT || head.scans as u64 * pixels > MOST_PASSED {
        return Err(Fault::ManyGoes(head.width, head.height));
    }
    let decoder = JpegDecoder::new(Cursor::new(bytes)).map_err(|_| Fault::Broken)?;
    let file = head.plain_colors.then(|| bytes.to_vec());
    let picture = decoded(decoder, file)?;
    Ok(Picture { lossy: true, ..picture })
}

/// Decodes the pixels.
fn decoded(
    mut decoder: impl ImageDecoder,
    file: Option<Vec<u8>>,
) -> Result<Picture, Fault> {
    let (width, height) = decoder.dimensions();
    check_size(width, height)?;
    let bytes = decoder.total_bytes();
    if bytes > MOST_MEMORY {
        return Err(Fault::TooManyPixels(width, height));
    }
    let stands = decoder
        .orientation()
        .map_or(Stands::UPRIGHT, |it| Stands::from_tag(it.to_exif()));
    let kind = decoder.color_type();
    let read = || -> ImageResult<Vec<u8>> {
        let room = usize::try_from(bytes).unwrap_or(usize::MAX);
        let mut pixels = vec![0; room];
        decoder.read_image(&mut pixels)?;
        Ok(pixels)
    };
    let mut pixels = read().map_err(|fault| match fault {
        // What ends early is told apart from what makes no sense.
        image::ImageError::IoError(fault)
            if fault.kind() == std::io::ErrorKind::UnexpectedEof =>
        {
            Fault::CutShort(width, height)
        }
        _ => Fault::Broken,
    })?;
    let depth = match kind {
        ColorType::L8 | ColorType::La8 | ColorType::L16 | ColorType::La16 => 1,
        _ => 3,
    };
    // One pass within the same bytes: a second copy of a large picture would be
    // as large again.
    let alpha = matches!(
        kind,
        ColorType::La8 | ColorType::La16 | ColorType::Rgba8 | ColorType::Rgba16
    );
    let wide = usize::from(kind.bytes_per_pixel()) / (depth + usize::from(alpha));
    let stride = usize::from(kind.bytes_per_pixel());
    if stride != depth {
        let count = pixels.len() / stride;
        for at in 0..count {
            let value = |part: usize| {
                let from = at * stride + part * wide;
                match (wide, pixels.get(from..from + wide)) {
                    // 16 bits come in the order of the machine.
                    (2, Some(&[one, two])) => u16::from_ne_bytes([one, two]),
                    (_, Some(&[one, ..])) => u16::from(one) * 257,
                    _ => 0,
                }
            };
            let values = [0, 1, 2].map(|it| if it < depth { value(it) } else { 0 });
            let cover = if alpha { value(depth) } else { u16::MAX };
            for (part, value) in values.into_iter().take(depth).enumerate() {
                pixels[at * depth + part] = on_white(value, cover);
            }
        }
        pixels.truncate(count * depth);
        pixels.shrink_to_fit();
    }
    Ok(Picture { width, height, stands, depth, pixels, file, lossy: false })
}

/// A value of 16 bits that covers white paper by so much, in 8 bits.
fn on_white(value: u16, cover: u16) -> u8 {
    let most = u64::from(u16::MAX);
    let (value, cover) = (u64::from(value), u64::from(cover));
    let mixed = (value * cover + most * (most - cover)) / most;
    u8::try_from((mixed + 128) / 257).unwrap_or(u8::MAX)
}
