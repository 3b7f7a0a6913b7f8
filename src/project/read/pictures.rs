//! Pictures of papers, and photos of cards.

use std::collections::BTreeMap;
use std::path::Path;
use std::sync::Arc;

use crate::diag::{Diagnostic, rules};
use crate::geom::{Length, Rect, Size};
use crate::project::picture::{FacePicture, Photo, fitted};
use crate::project::read::desk::{Desk, either, quote};
use crate::project::read::shape::Keys;
use crate::project::tree::{Node, Value};
use crate::project::{Face, FaceId, Stock};
use crate::raster::{self, Picture};
use crate::source::{Folder, Site};

/// All pictures of a description together may not have more pixels.
const MOST_PIXELS: u64 = 120_000_000;

/// At least so many dots to an inch of a printed photo.
const LEAST_DOTS: i64 = 150;

/// The corners by which a picture is laid on a sheet; the flags are right, bottom.
const CORNERS: [(&str, bool, bool); 4] = [
    ("top left", false, false),
    ("top right", true, false),
    ("bottom left", false, true),
    ("bottom right", true, true),
];

/// The pictures that were read, each once.
pub(crate) struct Shelf<'a> {
    folder: &'a dyn Folder,
    known: BTreeMap<String, Option<Arc<Picture>>>,
    pixels: u64,
}

impl<'a> Shelf<'a> {
    pub(crate) fn new(folder: &'a dyn Folder) -> Self {
        Self { folder, known: BTreeMap::new(), pixels: 0 }
    }
}

/// The picture in a file that a node names. What is wrong with it is noted once,
/// where it is named first.
fn picture(desk: &mut Desk<'_>, node: &Node) -> Option<Arc<Picture>> {
    let path = desk.words(node)?.words;
    if let Some(known) = desk.shelf.known.get(&path) {
        return known.clone();
    }
    let read = load(desk, &path, node.site).map(Arc::new);
    desk.shelf.known.insert(path, read.clone());
    read
}

fn load(desk: &mut Desk<'_>, path: &str, site: Site) -> Option<Picture> {
    let bytes = match desk.shelf.folder.bytes(Path::new(path)) {
        Ok(bytes) => bytes,
        Err(why) => {
            let help = "name a file in the folder of the description, such as `rows.png`";
            desk.fault(&rules::PICTURE_NOT_FOUND, site, why, help);
            return None;
        }
    };
    let read = match raster::open(&bytes) {
        Ok(read) => read,
        Err(fault) => {
            let message = format!("{} {fault}", quote(path));
            desk.fault(&rules::PICTURE_NOT_USABLE, site, message, fault.cure());
            return None;
        }
    };
    desk.shelf.pixels = desk.shelf.pixels.saturating_add(read.pixels());
    if desk.shelf.pixels > MOST_PIXELS {
        desk.shelf.pixels -= read.pixels();
        let message = format!(
            "with {} the pictures have more than {} million pixels",
            quote(path),
            MOST_PIXELS / 1_000_000
        );
        let help = "scan or export them at 300 dots an inch; more is not printed";
        desk.fault(&rules::TOO_MANY_PICTURES, site, message, help);
        return None;
    }
    Some(read)
}

/// What the faces of a paper look like.
pub(crate) fn of_paper(
    desk: &mut Desk<'_>,
    keys: &Keys<'_>,
    faces: &[Face],
    stock: &Stock,
) -> Vec<FacePicture> {
    let Some(entry) = keys.entry("pictures") else { return Vec::new() };
    let Stock::Sheets(sheets) = stock else {
        desk.fault(
            &rules::KEY_WITHOUT_EFFECT,
            entry.site,
            "`pictures` has no effect on scraps, which have no fixed size",
            "remove it, or say how large a `sheet` is",
        );
        return Vec::new();
    };
    let Some(sheet) = sheets.first() else { return Vec::new() };
    let named = faces.iter().any(|it| !it.name.words.is_empty());
    let entries = match &entry.value.value {
        Value::Keys(entries) if named => entries,
        _ if named && faces.len() > 1 => {
            let names: Vec<_> = faces.iter().map(|it| it.name.words.as_str()).collect();
            desk.fault(
                &rules::WRONG_SHAPE,
                entry.value.site,
                "this paper has two faces, and a picture shows one of them",
                format!("write `{{{}: FILE}}`, for instance", names[0]),
            );
            return Vec::new();
        }
        _ => {
            let face = FaceId(0);
            return of_face(desk, &entry.value, face, sheet.size).into_iter().collect();
        }
    };
    let mut found: Vec<FacePicture> = Vec::new();
    for entry in entries {
        let name = entry.key.trim();
        let Some(at) = faces.iter().position(|it| it.name.words == name) else {
            let names: Vec<_> = faces.iter().map(|it| it.name.words.as_str()).collect();
            let message = format!("this paper has no face called {}", quote(name));
            let help = format!("write {}", either(&names));
            desk.fault(&rules::UNKNOWN_NAME, entry.site, message, help);
            continue;
        };
        if found.iter().any(|it| it.face == FaceId(at)) {
            let message = format!("{} is given twice", quote(name));
            desk.fault(&rules::DUPLICATE_KEY, entry.site, message, "remove one of them");
            continue;
        }
        found.extend(of_face(desk, &entry.value, FaceId(at), sheet.size));
    }
    found
}

fn of_face(
    desk: &mut Desk<'_>,
    node: &Node,
    face: FaceId,
    sheet: Size,
) -> Option<FacePicture> {
    let mut covers = Some(Rect::whole(sheet));
    let mut file = node;
    if matches!(node.value, Value::Keys(_)) {
        let keys = desk.open(node, node.site, "picture");
        if let Some(node) = keys.get("covers") {
            covers = part_of(desk, node, sheet);
        }
        file = desk.need(&keys, "file")?;
    }
    let picture = picture(desk, file)?;
    let covers = covers?;
    let (width, height) = picture.size();
    // Within a fiftieth nobody sees that it is stretched.
    let one = i128::from(covers.size.width.units()) * i128::from(height);
    let other = i128::from(covers.size.height.units()) * i128::from(width);
    if (one - other).abs() * 50 > one.max(other) {
        let unit = desk.shown();
        let message = format!(
            "the picture has {width} x {height} pixels, and shows {} of the sheet: it would be stretched",
            covers.size.show(unit)
        );
        let help = "crop it to the edges of the sheet, or say which part it `covers`";
        desk.fault(&rules::PICTURE_OUT_OF_SHAPE, file.site, message, help);
    }
    Some(FacePicture { face, picture, covers, sheet, site: file.site })
}

/// A part of a sheet: a corner and a size.
fn part_of(desk: &mut Desk<'_>, node: &Node, sheet: Size) -> Option<Rect> {
    let (text, _) = desk.raw(node)?;
    let corner = CORNERS.iter().find_map(|(words, right, bottom)| {
        Some((text.strip_prefix(words)?, *right, *bottom))
    });
    let Some((rest, right, bottom)) = corner else {
        desk.fault(
            &rules::NOT_A_CHOICE,
            node.site,
            format!("{} doesn't start with a corner of the sheet", quote(text)),
            "write `top left 4 x 4 in`, for instance",
        );
        return None;
    };
    let size = desk.size_in(rest.trim(), node.site)?;
    if !size.fits(sheet) {
        let unit = desk.shown();
        let message = format!(
            "the picture is said to show {}, and the sheet is {}",
            size.show(unit),
            sheet.show(unit)
        );
        let help = "write the size that the picture shows; it lies within the sheet";
        desk.fault(&rules::PICTURE_PAST_THE_SHEET, node.site, message, help);
        return None;
    }
    let far = |far: bool, room: Length| if far { room } else { Length::ZERO };
    let x = far(right, sheet.width - size.width);
    let y = far(bottom, sheet.height - size.height);
    Some(Rect::new(x, y, size))
}

/// A photo that is printed within a room.
pub(crate) fn photo(
    desk: &mut Desk<'_>,
    node: Option<&Node>,
    room: Size,
) -> Option<Photo> {
    let node = node?;
    let (mut caption, mut shows, mut file) = (None, None, node);
    if matches!(node.value, Value::Keys(_)) {
        let keys = desk.open(node, node.site, "photo");
        caption = keys.get("caption").and_then(|node| desk.words(node));
        shows = keys.get("shows").and_then(|node| desk.words(node));
        file = desk.need(&keys, "file")?;
    }
    let picture = picture(desk, file)?;
    let printed = fitted(&picture, room);
    let (width, height) = picture.size();
    let dots = i64::from(width) * Length::INCH.units() / printed.width.units().max(1);
    if dots < LEAST_DOTS {
        let unit = desk.shown();
        let message = format!(
            "the photo has {width} x {height} pixels, {dots} to an inch when it is printed {}",
            printed.show(unit)
        );
        let (least, high) = (pixels(printed.width), pixels(printed.height));
        let help = format!("take one of {least} x {high} pixels or more");
        let note = Diagnostic::new(&rules::PHOTO_TOO_COARSE, file.site, message);
        desk.note(note.help(help));
    }
    Some(Photo { picture, caption, shows, printed, site: file.site })
}

/// The pixels that a printed length needs at least.
fn pixels(length: Length) -> i64 {
    let inch = Length::INCH.units();
    (length.units() * LEAST_DOTS + inch - 1) / inch
}
