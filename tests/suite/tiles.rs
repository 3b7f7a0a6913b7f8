//! Sheets at true size: parts cover the sheet, and crosses lie on crosses.

use leafwright::document::{Block, Document, Drawing, Figure, Fill, Stroke, Tiled};
use leafwright::geom::Size;
use leafwright::layout::{PageSetup, PageSize, Press, lay_out};
use leafwright::page::{Laid, Path, PathStep, Role, What};
use leafwright::pdf::{self, PdfInfo};

use crate::drawings::{area, boxed, eighths, name};
use crate::page_checks::faults;
use crate::readback::Read;
use crate::sample_pages;

/// Half of 0.01 pt is finer than any printer.
const TOLERANCE: f64 = 0.01;

/// A square sheet, in eighths of an inch, with a name where its parts meet.
fn document(side: i64) -> Document {
    let mut document = sample_pages::handout();
    let whole = boxed(0, 0, side, side);
    let marks = vec![area(whole, Stroke::Edge, Fill::None), name(whole, "A", "sash")];
    let size = Size::new(eighths(side), eighths(side));
    let figure = sample_pages::figure(Drawing { size, marks }, "the sheet");
    let figure = Figure { says_scale: false, ..figure };
    let tiled = Tiled {
        figure,
        part: "Part {part} of {parts}".into(),
        joined: sample_pages::words("Lay crosses on crosses."),
    };
    let section = &mut document.sections[0];
    section.blocks = vec![Block::Tiled(tiled)];
    document.sections.truncate(1);
    document
}

/// A part: its place on the page and what is drawn in it.
struct Part<'a> {
    name: String,
    area: [f64; 4],
    paths: Vec<&'a Path>,
}

fn parts(laid: &Laid) -> Vec<Part<'_>> {
    let mut parts = Vec::new();
    for (id, tag) in laid.tags.all() {
        let Role::Figure { alt, area: Some(area) } = &tag.role else { continue };
        let owner = leafwright::page::Owner::Tag(id);
        let items = laid.pages.iter().flat_map(|it| &it.items);
        let paths =
            items.filter(|it| it.owner == owner).filter_map(|it| match &it.what {
                What::Path(path) => Some(path),
                What::Text(_) | What::Window(_) => None,
            });
        let name = alt.rsplit(' ').next().unwrap_or_default().to_owned();
        parts.push(Part { name, area: *area, paths: paths.collect() });
    }
    parts
}

/// The middles of the crosses of a part, from its top left corner.
fn crosses(part: &Part<'_>) -> Vec<(f64, f64)> {
    let bars = part.paths.iter().flat_map(|it| &it.pieces).filter_map(|it| {
        let [PathStep::To(x, y)] = it.steps[..] else { return None };
        let ((left, top), level) = (it.start, y == it.start.1);
        let long = (x - left).hypot(y - top);
        ((long - 14.0).abs() < TOLERANCE && level && !it.closed)
            .then(|| ((left + x) / 2.0 - part.area[0], y - part.area[1]))
    });
    bars.collect()
}

#[test]
fn parts_of_a_sheet_cover_it_and_meet() {
    // 12 x 12 in = 864 units (ISO 32000-1, 8.3.2.3: 72 to the inch).
    for (size, across, down) in
        [(PageSize::Letter, 2, 2), (PageSize::A4, 2, 2), (PageSize::HalfLetter, 3, 3)]
    {
        let setup = PageSetup { size, ..PageSetup::default() };
        let laid = lay_out(&mut Press::new(), &document(96), &setup);
        assert!(laid.notes.is_empty(), "{:?}", laid.notes);
        let laid = laid.value.unwrap();
        assert_eq!(faults(&laid), [""; 0]);
        let parts = parts(&laid);
        assert_eq!(parts.len(), across * down, "{size:?}");
        let part = |row: usize, column: usize| {
            let letter = char::from(b'A' + u8::try_from(row).unwrap());
            let name = format!("{letter}{}", column + 1);
            parts.iter().find(|it| it.name == name).expect("a part of that name")
        };
        let width = |it: &Part<'_>| it.area[2] - it.area[0];
        let height = |it: &Part<'_>| it.area[3] - it.area[1];
        let overlap = 10.0 * 72.0 / 25.4;
        // Side by side they are as long as the sheet and the line around it, less
        // what they share.
        let line = 0.9;
        let (mut long, mut high) = (0.0, 0.0);
        for column in 0..across {
            long += width(part(0, column)) - if column > 0 { overlap } else { 0.0 };
        }
        for row in 0..down {
            high += height(part(row, 0)) - if row > 0 { overlap } else { 0.0 };
        }
        assert!((long - 864.0 - line).abs() < TOLERANCE, "{long}");
        assert!((high - 864.0 - line).abs() < TOLERANCE, "{high}");
        // Laid on each other, the crosses of neighbours meet.
        let meet = |one: &Part<'_>, two: &Part<'_>, dx: f64, dy: f64| {
            let two = crosses(two);
            let same = |it: &(f64, f64)| {
                two.iter().any(|other| {
                    (it.0 - dx - other.0).hypot(it.1 - dy - other.1) < TOLERANCE
                })
            };
            crosses(one).iter().filter(|it| same(it)).count()
        };
        for row in 0..down {
            for column in 1..across {
                let (one, two) = (part(row, column - 1), part(row, column));
                assert_eq!(meet(one, two, width(one) - overlap, 0.0), 2);
            }
        }
        for row in 1..down {
            for column in 0..across {
                let (one, two) = (part(row - 1, column), part(row, column));
                assert_eq!(meet(one, two, 0.0, height(one) - overlap), 2);
            }
        }
    }
}

#[test]
fn the_edges_of_a_sheet_in_parts_are_as_long_as_the_sheet() {
    let mut press = Press::new();
    let laid = lay_out(&mut press, &document(96), &PageSetup::default()).value.unwrap();
    let file = pdf::write(&laid, press.library(), &PdfInfo::default()).unwrap();
    let file = Read::new(&file);
    // Each edge of 864 units is drawn in two parts that share 10 mm.
    let overlap = 10.0 * 72.0 / 25.4;
    let half = 432.0 + overlap / 2.0;
    let lines = (0..file.pages.len()).flat_map(|page| file.segments(page));
    let edges = lines.filter(|it| !it.dashed && (it.length() - half).abs() < TOLERANCE);
    assert_eq!(edges.count(), 8);
}

#[test]
fn a_sheet_that_fits_is_not_parted() {
    let laid = lay_out(&mut Press::new(), &document(48), &PageSetup::default());
    let laid = laid.value.unwrap();
    let parts = parts(&laid);
    assert_eq!(parts.len(), 1);
    assert!((parts[0].area[2] - parts[0].area[0] - 432.9).abs() < TOLERANCE);
    assert!(crosses(&parts[0]).is_empty());
}

#[test]
fn a_sheet_like_a_wall_is_refused() {
    let laid = lay_out(&mut Press::new(), &document(80_000), &PageSetup::default());
    let rules: Vec<_> = laid.notes.iter().map(|it| it.rule.name).collect();
    assert_eq!(rules, ["drawing-larger-than-page"]);
}
