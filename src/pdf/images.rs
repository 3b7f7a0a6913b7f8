//! Pictures: each stands once in the file, with no more pixels than can be printed.

use std::collections::BTreeMap;
use std::io::Write;
use std::sync::{Arc, Weak};

use flate2::Compression;
use flate2::write::ZlibEncoder;
use printpdf::{
    DictItem, ExternalStream, ExternalXObject, PdfDocument, XObject, XObjectId,
};

use super::{Fault, Resolution};
use crate::page::{Laid, What, Window};
use crate::raster::{Coded, Picture, Print};

/// A picture is left as it is rather than shrunk by less than this.
const WORTH_IT: f64 = 0.95;

/// What a picture is called in the file.
pub(super) fn id(picture: usize) -> XObjectId {
    XObjectId(format!("P{}", picture + 1))
}

/// The matrix that lays a picture's unit square (ISO 32000-1, 8.9.5.1: y grows
/// upwards) on a page whose y grows upwards from the bottom.
pub(super) fn matrix(window: &Window, picture: &Picture, page_height: f64) -> [f64; 6] {
    let [corner, right, down] = window.whole;
    let at = |u: f64, v: f64| {
        let (x, y) = picture.stands().seen_at((u, v));
        (
            corner.0 + x * right.0 + y * down.0,
            page_height - (corner.1 + x * right.1 + y * down.1),
        )
    };
    let (origin, along, up) = (at(0.0, 1.0), at(1.0, 1.0), at(0.0, 0.0));
    [
        along.0 - origin.0,
        along.1 - origin.1,
        up.0 - origin.0,
        up.1 - origin.1,
        origin.0,
        origin.1,
    ]
}

/// Pictures that were made ready for a file. Copies for many people show the same
/// ones, which are shrunk and packed for the first of them only.
#[derive(Default)]
pub struct Ready {
    /// A picture that is no longer in use is forgotten.
    kept: Vec<(Weak<Picture>, (u32, u32), ExternalStream)>,
}

impl Ready {
    /// The stream of a picture with so many pixels, width x height as stored.
    fn stream(
        &mut self,
        picture: &Arc<Picture>,
        pixels: (u32, u32),
    ) -> Result<ExternalStream, Fault> {
        // A weak link keeps its address from being given to another picture.
        let known = self.kept.iter().find(|(of, size, _)| {
            *size == pixels && std::ptr::eq(of.as_ptr(), Arc::as_ptr(picture))
        });
        if let Some((_, _, stream)) = known {
            return Ok(stream.clone());
        }
        let made = if pixels == picture.stored() {
            stream(picture.print())?
        } else {
            stream(picture.shrunk(pixels.0, pixels.1).print())?
        };
        self.kept.retain(|(of, ..)| of.strong_count() > 0);
        self.kept.push((Arc::downgrade(picture), pixels, made.clone()));
        Ok(made)
    }
}

/// Writes every picture that is seen on a page.
pub(super) fn embed(
    laid: &Laid,
    resolution: Resolution,
    ready: &mut Ready,
    document: &mut PdfDocument,
) -> Result<(), Fault> {
    // By picture, the largest that it is drawn, in points.
    let mut drawn: BTreeMap<usize, (f64, f64)> = BTreeMap::new();
    for page in &laid.pages {
        for item in &page.items {
            let What::Window(window) = &item.what else { continue };
            let Some(picture) = laid.pictures.get(window.picture) else { continue };
            let [a, b, c, d, ..] = matrix(window, picture, page.height);
            let largest = drawn.entry(window.picture).or_default();
            largest.0 = largest.0.max(a.hypot(b));
            largest.1 = largest.1.max(c.hypot(d));
        }
    }
    for (number, size) in drawn {
        let picture = &laid.pictures[number];
        let pixels = fitting(picture, size, resolution);
        let object = XObject::External(ExternalXObject {
            stream: ready.stream(picture, pixels)?,
            width: None,
            height: None,
            dpi: None,
        });
        document.resources.xobjects.map.insert(id(number), object);
    }
    Ok(())
}

/// As many pixels of a picture, width x height, as its largest drawing can show.
fn fitting(picture: &Picture, size: (f64, f64), most: Resolution) -> (u32, u32) {
    let (width, height) = picture.stored();
    let dots = f64::from(most.0) / 72.0;
    let part = (size.0 * dots / f64::from(width)).max(size.1 * dots / f64::from(height));
    if part >= WORTH_IT {
        return (width, height);
    }
    // Places on the page are rounded; a hundredth of a pixel is nothing.
    let fewer = |side: u32| {
        #[expect(
            clippy::cast_possible_truncation,
            clippy::cast_sign_loss,
            reason = "less than the side, and not below zero"
        )]
        let fewer = (f64::from(side) * part - 0.01).ceil() as u32;
        fewer
    };
    (fewer(width), fewer(height))
}

/// The stream of a picture.
fn stream(print: Print<'_>) -> Result<ExternalStream, Fault> {
    let name = |it: &str| DictItem::Name(it.into());
    let count = |it: u32| DictItem::Int(i64::from(it));
    let tone = |gray: bool| name(if gray { "DeviceGray" } else { "DeviceRGB" });
    let mut dict = BTreeMap::from([
        ("Type".to_string(), name("XObject")),
        ("Subtype".to_string(), name("Image")),
        ("Width".to_string(), count(print.width)),
        ("Height".to_string(), count(print.height)),
        ("BitsPerComponent".to_string(), count(8)),
    ]);
    let (space, filter, content) = match print.coded {
        Coded::Jpeg { file, gray } => (tone(gray), "DCTDecode", file.into_owned()),
        Coded::Few { colors, pixels } => {
            let last = i64::try_from(colors.len() / 3).unwrap_or(1) - 1;
            let table = DictItem::String { data: colors, literal: false };
            let space = vec![name("Indexed"), tone(false), DictItem::Int(last), table];
            (DictItem::Array(space), "FlateDecode", packed(&pixels)?)
        }
        Coded::Gray(pixels) => {
            (tone(true), "FlateDecode", smaller(&pixels, 1, print.width, &mut dict)?)
        }
        Coded::Colors(pixels) => {
            (tone(false), "FlateDecode", smaller(&pixels, 3, print.width, &mut dict)?)
        }
    };
    dict.insert("ColorSpace".to_string(), space);
    dict.insert("Filter".to_string(), name(filter));
    Ok(ExternalStream { dict, content, compress: false })
}

/// Pixels compressed as they are or as differences, whichever is smaller.
fn smaller(
    pixels: &[u8],
    depth: usize,
    width: u32,
    dict: &mut BTreeMap<String, DictItem>,
) -> Result<Vec<u8>, Fault> {
    let plain = packed(pixels)?;
    let changes = packed(&differences(pixels, depth, width as usize * depth))?;
    if plain.len() <= changes.len() {
        return Ok(plain);
    }
    // ISO 32000-1, 7.4.4.4: 15 lets every row say how it differs.
    let map = BTreeMap::from([
        ("Predictor".to_string(), DictItem::Int(15)),
        ("Colors".to_string(), DictItem::Int(if depth == 1 { 1 } else { 3 })),
        ("BitsPerComponent".to_string(), DictItem::Int(8)),
        ("Columns".to_string(), DictItem::Int(i64::from(width))),
    ]);
    dict.insert("DecodeParms".to_string(), DictItem::Dict { map });
    Ok(changes)
}

fn packed(bytes: &[u8]) -> Result<Vec<u8>, Fault> {
    let mut encoder = ZlibEncoder::new(Vec::new(), Compression::new(6));
    encoder.write_all(bytes).map_err(Fault::new)?;
    encoder.finish().map_err(Fault::new)
}

/// Rows as differences from what stands before or above, each with the number of
/// its way (ISO/IEC 15948, 9.2): 0 none, 1 from before, 2 from above.
fn differences(pixels: &[u8], depth: usize, long: usize) -> Vec<u8> {
    let mut changes = Vec::with_capacity(pixels.len() + pixels.len() / long.max(1));
    let mut above: &[u8] = &[];
    for row in pixels.chunks(long.max(1)) {
        let before = |at: usize| at.checked_sub(depth).map_or(0, |it| row[it]);
        let top = |at: usize| above.get(at).copied().unwrap_or(0);
        let ways: [Vec<u8>; 3] = [
            row.to_vec(),
            (0..row.len()).map(|at| row[at].wrapping_sub(before(at))).collect(),
            (0..row.len()).map(|at| row[at].wrapping_sub(top(at))).collect(),
        ];
        // The way with the smallest differences packs best (ISO/IEC 15948, 12.8).
        let cost = |way: &Vec<u8>| -> u64 {
            way.iter().map(|it| u64::from((*it).min(it.wrapping_neg()))).sum()
        };
        let best = (0_u8..).zip(ways).min_by_key(|it| cost(&it.1));
        if let Some((number, way)) = best {
            changes.push(number);
            changes.extend(way);
        }
        above = row;
    }
    changes
}
