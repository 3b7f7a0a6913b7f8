//! Pictures in the handout: which part of a pattern stands where, how large, how often.

use std::collections::BTreeMap;

use leafwright::geom::{Length, Rect};
use leafwright::handout::{self, Options, Template};
use leafwright::layout::{PageSetup, Press, lay_out};
use leafwright::page::{Ink, Laid, Path, PathStep, What};
use leafwright::pdf::{self, PdfInfo, Resolution};
use leafwright::plan::{Plan, PlanOptions, plan};
use leafwright::project;
use leafwright::source::Source;

use crate::paint::{Drawer, jpeg, png, shade, standing};
use crate::readback::{Read, Window};

/// How the printed file is asked for.
#[derive(Default)]
pub(crate) struct Asked {
    pub(crate) template: Option<&'static str>,
    pub(crate) gray: bool,
    pub(crate) dots: Option<u32>,
}

/// The file, the plan, and how large the file is.
fn made(
    text: &str,
    files: &[(&'static str, Vec<u8>)],
    asked: &Asked,
) -> (Read, Plan, usize) {
    let mut press = Press::new();
    let (laid, plan) = laid(text, files, asked, &mut press);
    let info = PdfInfo {
        pictures: asked.dots.map(Resolution).unwrap_or_default(),
        ..PdfInfo::default()
    };
    let bytes = pdf::write(&laid, press.library(), &info).expect("a file");
    (Read::new(&bytes), plan, bytes.len())
}

/// The finished pages.
pub(crate) fn laid(
    text: &str,
    files: &[(&'static str, Vec<u8>)],
    asked: &Asked,
    press: &mut Press,
) -> (Laid, Plan) {
    let folder = Drawer(files.iter().cloned().collect());
    let (_, read) = project::read(Source::new("pictures.yaml", text), &folder);
    let project = read.value.unwrap_or_else(|| panic!("{:#?}", read.notes));
    let template =
        Template::built_in(asked.template.unwrap_or("class")).expect("built in");
    let options = PlanOptions { reader: template.reader, ..PlanOptions::default() };
    let plan = plan(&project, &options).value.expect("a plan");
    let document = handout::write(&project, &plan, &template, Options::default());
    let setup = PageSetup { gray: asked.gray, ..PageSetup::default() };
    (lay_out(press, &document, &setup).value.expect("pages"), plan)
}

fn windows(file: &Read) -> Vec<Window> {
    (0..file.pages.len()).flat_map(|page| file.windows(page)).collect()
}

/// A place of a sheet that is 8 in wide and 6 in high, in inches from the top left
/// corner of the face that is looked at.
fn on_sheet(window: &Window, (x, y): (f64, f64)) -> (f64, f64) {
    let (u, v) = window.seen_at(x, y);
    (u * 8.0, v * 6.0)
}

/// Left, top, right and bottom of what is seen, in inches on the sheet.
fn region(window: &Window) -> [f64; 4] {
    let [left, bottom, right, top] = window.clip;
    let corners = [(left, top), (right, bottom)].map(|it| on_sheet(window, it));
    let [(x0, y0), (x1, y1)] = corners;
    [x0.min(x1), y0.min(y1), x0.max(x1), y0.max(y1)]
}

fn near(one: &[f64], two: &[f64]) -> bool {
    // The page is written in thousandths of a point.
    one.iter().zip(two).all(|(one, two)| (one - two).abs() < 0.003)
}

fn inches(rect: Rect) -> [f64; 4] {
    let inch = |it: Length| it.as_mm() / 25.4;
    [inch(rect.x), inch(rect.y), inch(rect.right()), inch(rect.bottom())]
}

const SIX: &str = "title: Six from a sheet
unit: in
papers:
  rows:
    sheet: 8 x 6 in
    faces: {front: {runs: both ways}, back: {runs: both ways}}
    pictures: {front: front.png, back: back.png}
bases:
  note: {front: 4 1/4 x 5 1/2 in, bought: true}
tools:
  trimmer: {kind: sliding trimmer}
pieces:
  a: {of: rows, size: 4 x 2 in}
cards:
  - {name: One, base: note, layers: [{piece: a}]}
  - {name: Two, base: note, layers: [{piece: a, turned: left}]}
  - {name: Three, base: note, layers: [{piece: a, turned: right}]}
  - {name: Four, base: note, layers: [{piece: a, turned: over}]}
  - {name: Five, base: note, layers: [{piece: a, showing: back}]}
  - {name: Six, base: note, layers: [{piece: a, showing: back, turned: left}]}
";

fn faces() -> Vec<(&'static str, Vec<u8>)> {
    let front = png(80, 60, shade);
    let back = png(80, 60, |x, y| shade(y + 3, x + 9));
    vec![("front.png", front), ("back.png", back)]
}

/// The same six pieces as the cards show them: front or back, and which corner of
/// the window holds the top left corner of the piece.
const TURNS: [(bool, usize); 6] =
    [(true, 0), (true, 3), (true, 1), (true, 2), (false, 0), (false, 3)];

/// Corners clockwise from the top left.
fn corner(window: &Window, number: usize) -> (f64, f64) {
    let [left, bottom, right, top] = window.clip;
    [(left, top), (right, top), (right, bottom), (left, bottom)][number]
}

#[test]
fn every_front_shows_the_very_part_that_was_cut_for_it_turned_as_it_is() {
    let (file, _, _) = made(SIX, &faces(), &Asked::default());
    let all = windows(&file);
    // Six fronts on the cover, then the sheet and its steps, then six cards.
    for six in [&all[..6], &all[all.len() - 6..]] {
        let mut found: Vec<[f64; 4]> = Vec::new();
        for (window, (front, at)) in six.iter().zip(TURNS) {
            assert_eq!(window.name, if front { "P1" } else { "P2" });
            let seen = region(window);
            let first = on_sheet(window, corner(window, at));
            assert!(near(&[first.0, first.1], &seen[..2]), "{at}: {first:?} of {seen:?}");
            let next = on_sheet(window, corner(window, (at + 1) % 4));
            assert!(near(&[next.0, next.1], &[seen[2], seen[1]]), "{next:?} of {seen:?}");
            // Behind the left end of a sheet that is flipped lies its right end.
            let [left, top, right, bottom] = seen;
            found.push(if front { seen } else { [8.0 - right, top, 8.0 - left, bottom] });
        }
        // Six pieces of 4 x 2 in leave one way to fill a sheet of 8 x 6 in with
        // upright patterns: two abreast, three down.
        for x in [0.0, 4.0] {
            for y in [0.0, 2.0, 4.0] {
                let cell = [x, y, x + 4.0, y + 2.0];
                let times = found.iter().filter(|it| near(*it, &cell)).count();
                assert_eq!(times, 1, "{cell:?} in {found:?}");
            }
        }
    }
}

#[test]
fn the_sheet_and_the_parts_in_hand_show_their_own_part_of_the_pattern() {
    let (file, plan, _) = made(SIX, &faces(), &Asked::default());
    let all = windows(&file);
    let middle = &all[6..all.len() - 6];
    let [cut] = &plan.cuts[..] else { panic!("one paper") };
    let steps = cut.schedule.steps.iter().map(|it| inches(it.in_hand));
    let wanted: Vec<_> = std::iter::once([0.0, 0.0, 8.0, 6.0]).chain(steps).collect();
    assert!(wanted.len() >= 3);
    assert_eq!(middle.len(), wanted.len());
    for (window, wanted) in middle.iter().zip(wanted) {
        assert_eq!(window.name, "P1", "the front lies up when cutting");
        assert!(near(&region(window), &wanted), "{:?}, {wanted:?}", region(window));
        let first = on_sheet(window, corner(window, 0));
        assert!(near(&[first.0, first.1], &wanted[..2]), "it is not turned");
    }
}

/// The box around a path without curves: left, top, right and bottom.
fn around(path: &Path) -> [f64; 4] {
    let ends = path.pieces.iter().flat_map(|it| {
        let steps = it.steps.iter().map(|step| match step {
            PathStep::To(x, y) => (*x, *y),
            PathStep::Curve(points) => points[2],
        });
        std::iter::once(it.start).chain(steps)
    });
    ends.fold([f64::MAX, f64::MAX, f64::MIN, f64::MIN], |it, (x, y)| {
        [it[0].min(x), it[1].min(y), it[2].max(x), it[3].max(y)]
    })
}

#[test]
fn words_and_lines_upon_a_picture_keep_their_contrast() {
    let (laid, _) = laid(SIX, &faces(), &Asked::default(), &mut Press::new());
    let (mut words, mut lines) = (0, 0);
    for page in &laid.pages {
        // What was last drawn at a place is what lies below.
        let mut seen: Vec<[f64; 4]> = Vec::new();
        let mut plates: Vec<[f64; 4]> = Vec::new();
        let mut light: Option<&Path> = None;
        for item in &page.items {
            match &item.what {
                What::Window(window) => {
                    let pieces = vec![window.outline.clone()];
                    let area = around(&Path { pieces, fill: None, line: None });
                    plates.retain(|it| {
                        it[0] >= area[2]
                            || it[2] <= area[0]
                            || it[1] >= area[3]
                            || it[3] <= area[1]
                    });
                    seen.push(area);
                }
                What::Path(path) => {
                    if path.fill == Some(Ink::PAPER) {
                        plates.push(around(path));
                    }
                    let Some(line) = &path.line else { continue };
                    if line.ink == Ink::PAPER {
                        light = Some(path);
                        continue;
                    }
                    // Cuts across a picture: a wider light line below each.
                    let [left, top, right, bottom] = around(path);
                    let on = |it: &[f64; 4]| {
                        let (x, y) = ((left + right) / 2.0, (top + bottom) / 2.0);
                        it[0] + 1.0 < x
                            && x < it[2] - 1.0
                            && it[1] + 1.0 < y
                            && y < it[3] - 1.0
                    };
                    let cut = path.pieces.len() == 1 && line.width > 1.0;
                    if line.ink == Ink::ACCENT && cut && seen.iter().any(on) {
                        let halo = light.expect("a light line");
                        assert_eq!(halo.pieces, path.pieces);
                        let wide = halo.line.as_ref().map_or(0.0, |it| it.width);
                        assert!(wide >= line.width + 1.0);
                        assert!(line.ink.contrast(Ink::PAPER) >= 4.5);
                        lines += 1;
                    }
                }
                What::Text(text) => {
                    let (x, y) = (text.x + text.run.advance / 2.0, text.y - 2.0);
                    let holds =
                        |it: &&[f64; 4]| it[0] < x && x < it[2] && it[1] < y && y < it[3];
                    if text.upwards || !seen.iter().any(|it| holds(&it)) {
                        continue;
                    }
                    let plate = plates.iter().rev().find(holds).expect("a plate");
                    assert!(plate[0] <= text.x && text.x + text.run.advance <= plate[2]);
                    assert!(text.ink.contrast(Ink::PAPER) >= 4.5);
                    words += 1;
                }
            }
        }
    }
    assert!(words >= 12 && lines >= 3, "{words} words and {lines} lines");
}

#[test]
fn the_pixels_in_the_file_are_those_of_the_picture() {
    let (file, _, _) = made(SIX, &faces(), &Asked::default());
    let pictures = file.pictures();
    let pixels = pictures["P1"].decompressed_content().expect("pixels");
    let wanted = (0..60).flat_map(|y| (0..80).flat_map(move |x| shade(x, y)));
    assert!(pixels == wanted.collect::<Vec<u8>>());
}

#[test]
fn parts_of_a_late_cut_show_their_own_strip() {
    let text = "title: Late
unit: in
papers:
  rows:
    sheet: 8 x 6 in
    faces: {front: {runs: up}, back: {runs: any}}
    pictures: {front: front.png, back: back.png}
bases: {note: {front: 4 1/4 x 5 1/2 in, bought: true}}
pieces:
  block: {of: rows, size: 8 x 4 in, count: 1}
  ribbon: {of: rows, size: 4 x 2 in}
late cuts:
  - {piece: ribbon, cut off: 1/2 in high, makes: {sill: {showing: back}, rail: {showing: front}}}
cards:
  - name: One
    base: note
    layers: [{piece: rail, top: 1 in}, {piece: sill, below: rail}]
";
    let (file, plan, _) = made(text, &faces(), &Asked::default());
    let all = windows(&file);
    let [rail, sill] = [&all[0], &all[1]].map(region);
    // Where the ribbon was cut, as the plan says it; the block takes the rest.
    let [cut] = &plan.cuts[..] else { panic!("one paper") };
    let placements = cut.schedule.laid[0].placements(cut.patterns[0].sheet);
    let size = leafwright::geom::Size::new(Length::inch(4, 1), Length::inch(2, 1));
    let ribbon = placements.iter().find(|it| it.rect.size == size).expect("the ribbon");
    let [left, top, right, bottom] = inches(ribbon.rect);
    assert!(near(&rail, &[left, top + 0.5, right, bottom]), "{rail:?}");
    assert!(near(&sill, &[8.0 - right, top, 8.0 - left, top + 0.5]), "{sill:?}");
}

#[test]
fn a_piece_that_lies_turned_on_the_sheet_shows_its_pattern_turned() {
    let text = "title: Turned
unit: in
papers:
  rows: {sheet: 2 1/2 x 6 in, runs: any, pictures: front.png}
bases: {note: {front: 5 x 7 in, bought: true}}
pieces: {long: {of: rows, size: 6 x 2 in}}
cards: [{name: One, base: note, stands: wide, layers: [{piece: long}]}]
";
    let files = [("front.png", png(50, 120, shade))];
    let (file, plan, _) = made(text, &files, &Asked::default());
    let window = &windows(&file)[0];
    let [cut] = &plan.cuts[..] else { panic!("one paper") };
    let placements = cut.schedule.laid[0].placements(cut.patterns[0].sheet);
    let two = Length::inch(2, 1);
    let lies = placements.iter().find(|it| it.rect.size.width == two).expect("it lies");
    let [left, top, right, bottom] = inches(lies.rect);
    let seen = [0, 1, 2, 3].map(|at| {
        let (x, y) = corner(window, at);
        let (u, v) = window.seen_at(x, y);
        (u * 2.5, v * 6.0)
    });
    // A quarter to the right brings the lower left corner to the upper left.
    let wanted = [(left, bottom), (left, top), (right, top), (right, bottom)];
    for (seen, wanted) in seen.iter().zip(wanted) {
        assert!(near(&[seen.0, seen.1], &[wanted.0, wanted.1]), "{seen:?}, {wanted:?}");
    }
}

#[test]
fn a_picture_of_a_part_of_the_sheet_lies_on_that_part() {
    let text = SIX.replace(
        "front: front.png",
        "front: {file: front.png, covers: bottom right 4 x 3 in}",
    );
    let (file, _, _) = made(&text, &faces(), &Asked::default());
    let all = windows(&file);
    let sheet = all.iter().find(|it| {
        let [left, bottom, right, top] = it.clip;
        ((right - left) / (top - bottom) - 8.0 / 6.0).abs() < 0.001
    });
    let sheet = sheet.expect("the cut plan");
    let [left, bottom, right, top] = sheet.clip;
    let middle = sheet.seen_at((left + right) / 2.0, (bottom + top) / 2.0);
    let end = sheet.seen_at(right, bottom);
    assert!(near(&[middle.0, middle.1, end.0, end.1], &[0.0, 0.0, 1.0, 1.0]));
}

#[test]
fn twelve_pieces_of_one_picture_and_it_is_in_the_file_once() {
    let rows = (0..12).map(|it| {
        format!("  - {{name: Card {it}, base: note, layers: [{{piece: tile}}]}}\n")
    });
    let text = format!(
        "title: Twelve\nunit: in\npapers:\n  rows: {{sheet: 8 x 6 in, runs: up, pictures: rows.jpg}}\n\
         bases: {{note: {{front: 4 1/4 x 5 1/2 in, bought: true}}}}\n\
         pieces: {{tile: {{of: rows, size: 2 x 2 in}}}}\ncards:\n{}",
        rows.collect::<String>()
    );
    let picture = jpeg(1600, 1200, shade);
    let long = picture.len();
    let (file, _, bytes) = made(&text, &[("rows.jpg", picture)], &Asked::default());
    let fronts = windows(&file);
    assert!(fronts.len() > 24, "on the cover, on the sheet, on every card");
    assert_eq!(file.pictures().len(), 1);
    let images = file.document.objects.values().filter(|it| {
        let stream = it.as_stream().ok();
        stream.is_some_and(|it| {
            it.dict
                .get(b"Subtype")
                .is_ok_and(|it| it.as_name().is_ok_and(|it| it == b"Image"))
        })
    });
    assert_eq!(images.count(), 1);
    // The largest drawing is 1:2, and at 300 dots an inch the whole sheet then has
    // 1200 x 900: a part of the pixels, and all else takes less than 100 kB.
    assert!(bytes < long + 100_000, "{bytes} with a picture of {long}");
}

/// A project with one photo on a card.
pub(crate) fn with_photo(name: &str) -> String {
    format!(
        "title: Photos\nunit: in\npapers: {{oat: {{kind: cardstock, sheet: letter}}}}\n\
         bases: {{note: {{front: 4 1/4 x 5 1/2 in, bought: true}}}}\n\
         pieces: {{tile: {{of: oat, size: 2 x 2 in}}}}\ncards:\n  - name: One\n    base: note\n\
         \x20   photo: {{file: {name}, caption: On the sill, shows: A card by a window.}}\n\
         \x20   layers: [{{piece: tile}}]\n"
    )
}

/// The one picture of a file, its window, and its stream.
fn the_photo(file: &Read) -> (Window, &lopdf::Stream) {
    let windows = windows(file);
    let [window] = &windows[..] else { panic!("{} windows", windows.len()) };
    (window.clone(), file.pictures()[&window.name])
}

#[test]
fn a_jpeg_file_that_need_not_shrink_passes_through_untouched() {
    let photo = jpeg(600, 400, shade);
    let (file, ..) =
        made(&with_photo("a.jpg"), &[("a.jpg", photo.clone())], &Asked::default());
    let (window, stream) = the_photo(&file);
    assert!(stream.content == photo);
    assert_eq!(stream.dict.get(b"Filter").unwrap().as_name().unwrap(), b"DCTDecode");
    // 3 : 2 stays 3 : 2, within 2 1/2 x 2 1/4 in.
    let [left, bottom, right, top] = window.clip;
    assert!(near(&[right - left, top - bottom], &[180.0, 120.0]), "{:?}", window.clip);
    let text: String = (0..file.pages.len()).map(|it| file.text(it)).collect();
    assert!(text.contains("On the sill"));
    let alts = file.document.objects.values().filter_map(|it| it.as_dict().ok());
    let alts = alts.filter_map(|it| it.get(b"Alt").ok()?.as_str().ok());
    assert!(alts.into_iter().any(|it| it == b"A card by a window."));
}

#[test]
fn larger_photos_are_shrunk_to_the_dots_that_are_printed() {
    for (dots, most) in [(None, 750), (Some(150), 375)] {
        for photo in [jpeg(2000, 1000, shade), png(2000, 1000, shade)] {
            let files = [("a.jpg", photo)];
            let (file, ..) =
                made(&with_photo("a.jpg"), &files, &Asked { dots, ..Asked::default() });
            let (_, stream) = the_photo(&file);
            let side = |key: &[u8]| stream.dict.get(key).unwrap().as_i64().unwrap();
            // 2 1/2 in wide.
            assert_eq!((side(b"Width"), side(b"Height")), (most, (most + 1) / 2));
        }
    }
}

#[test]
fn photos_stand_as_the_camera_was_held() {
    // Exif 2.3: 6 says that the first row is seen at the right and the first column
    // at the top, so that the top left pixel is seen at the top right.
    let seen = [(1, (0.0, 0.0)), (3, (1.0, 1.0)), (6, (1.0, 0.0)), (8, (0.0, 1.0))];
    for (tag, (across, down)) in seen {
        let photo = standing(&jpeg(600, 400, shade), tag);
        let (file, ..) =
            made(&with_photo("a.jpg"), &[("a.jpg", photo)], &Asked::default());
        let (window, _) = the_photo(&file);
        let [left, bottom, right, top] = window.clip;
        let high = top - bottom > right - left;
        assert_eq!(high, tag >= 5, "{tag}");
        let x = left + across * (right - left);
        let y = top - down * (top - bottom);
        let (u, v) = window.seen_at(x, y);
        assert!(near(&[u, v], &[0.0, 0.0]), "{tag}: {u}, {v}");
    }
}

#[test]
fn without_colours_pictures_are_grey() {
    let asked = Asked { gray: true, ..Asked::default() };
    let (file, ..) = made(SIX, &faces(), &asked);
    let photo = jpeg(600, 400, shade);
    let (other, ..) = made(&with_photo("a.jpg"), &[("a.jpg", photo)], &asked);
    let mut count = 0;
    for stream in file.pictures().values().chain(other.pictures().values()) {
        let space = stream.dict.get(b"ColorSpace").unwrap().as_name().unwrap();
        assert_eq!(space, b"DeviceGray");
        count += 1;
    }
    assert_eq!(count, 3);
}

#[test]
fn few_colours_take_a_byte_for_each_pixel_and_alpha_lies_on_white() {
    let mut bytes = Vec::new();
    let half = image::RgbaImage::from_fn(90, 90, |x, _| {
        image::Rgba(if x < 45 { [0, 0, 0, 0] } else { [200, 0, 0, 255] })
    });
    half.write_to(&mut std::io::Cursor::new(&mut bytes), image::ImageFormat::Png)
        .unwrap();
    let (file, ..) = made(&with_photo("a.png"), &[("a.png", bytes)], &Asked::default());
    let (_, stream) = the_photo(&file);
    let space = stream.dict.get(b"ColorSpace").unwrap().as_array().unwrap();
    assert_eq!(space[0].as_name().unwrap(), b"Indexed");
    assert_eq!(space[3].as_str().unwrap(), [255, 255, 255, 200, 0, 0]);
    assert_eq!(stream.decompressed_content().unwrap().len(), 90 * 90);
}

#[test]
fn sixteen_bits_become_eight() {
    let mut bytes = Vec::new();
    let deep = image::ImageBuffer::<image::Rgb<u16>, _>::from_fn(80, 60, |x, y| {
        let [red, green, blue] = shade(x, y).map(|it| u16::from(it) * 257);
        image::Rgb([red, green, blue])
    });
    image::DynamicImage::from(deep)
        .write_to(&mut std::io::Cursor::new(&mut bytes), image::ImageFormat::Png)
        .unwrap();
    let files =
        BTreeMap::from([("front.png", bytes), ("back.png", faces()[1].1.clone())]);
    let files: Vec<_> = files.into_iter().collect();
    let (file, ..) = made(SIX, &files, &Asked::default());
    let pixels = file.pictures()["P1"].decompressed_content().unwrap();
    let wanted = (0..60).flat_map(|y| (0..80).flat_map(move |x| shade(x, y)));
    assert!(pixels == wanted.collect::<Vec<u8>>());
}
