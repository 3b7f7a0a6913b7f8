//! Every outline of every drawing of every demo, measured in the finished file.

use std::collections::BTreeMap;
use std::fs;

use leafwright::document::{Block, Document, Figure, Fill, Mark};
use leafwright::geom::{Pt, Size, Unit};
use leafwright::handout::{self, Template};
use leafwright::layout::{self, PageSetup, PageSize};
use leafwright::pdf::{self, PdfInfo};
use leafwright::plan::{PlanOptions, plan};
use leafwright::project;
use leafwright::source::Source;
use lopdf::content::Content;
use lopdf::{Object, ObjectId};

use crate::demos;
use crate::paint::Beside;
use crate::readback::{Read, number};

/// How far a length on paper may be off.
const TOLERANCE: f64 = 0.01;

/// Every figure of some blocks, in reading order.
fn figures<'a>(blocks: &'a [Block], all: &mut Vec<&'a Figure>) {
    for block in blocks {
        match block {
            Block::Figure(figure) => all.push(figure),
            Block::Figures(figures) => all.extend(figures),
            Block::Steps(steps) => {
                all.extend(steps.iter().filter_map(|it| it.figure.as_ref()));
            }
            Block::Beside(figure, blocks) => {
                all.push(figure);
                figures(blocks, all);
            }
            Block::Keep(blocks) => figures(blocks, all),
            _ => {}
        }
    }
}

/// The boxes of the shapes that each marked sequence of a page draws, in points.
fn boxes(read: &Read, page: usize) -> BTreeMap<i64, Vec<(f64, f64)>> {
    let bytes = read.document.get_page_content(read.pages[page]);
    let content = Content::decode(&bytes).expect("operators");
    let mut found: BTreeMap<i64, Vec<(f64, f64)>> = BTreeMap::new();
    let mut marks: Vec<Option<i64>> = Vec::new();
    let mut points: Vec<(f64, f64)> = Vec::new();
    let mut close = |points: &mut Vec<(f64, f64)>, marks: &[Option<i64>]| {
        let points = std::mem::take(points);
        let Some(id) = marks.last().copied().flatten() else { return };
        let span = |of: fn(&(f64, f64)) -> f64| {
            let (mut low, mut high) = (f64::INFINITY, f64::NEG_INFINITY);
            for value in points.iter().map(of) {
                (low, high) = (low.min(value), high.max(value));
            }
            high - low
        };
        if 2 < points.len() {
            found.entry(id).or_default().push((span(|it| it.0), span(|it| it.1)));
        }
    };
    for operation in &content.operations {
        let values: Vec<f64> = match operation.operator.as_str() {
            "m" | "l" | "c" | "re" => operation.operands.iter().map(number).collect(),
            _ => Vec::new(),
        };
        match operation.operator.as_str() {
            "BDC" | "BMC" => {
                let dict = operation.operands.get(1).and_then(|it| it.as_dict().ok());
                marks.push(dict.and_then(|it| it.get(b"MCID").ok()?.as_i64().ok()));
            }
            "EMC" => drop(marks.pop()),
            "m" => {
                close(&mut points, &marks);
                points.push((values[0], values[1]));
            }
            "l" => points.push((values[0], values[1])),
            "c" => points.push((values[4], values[5])),
            "re" => {
                close(&mut points, &marks);
                points.extend([
                    (values[0], values[1]),
                    (values[0] + values[2], values[1]),
                    (values[0] + values[2], values[1] + values[3]),
                ]);
                close(&mut points, &marks);
            }
            "S" | "s" | "f" | "f*" | "B" | "B*" | "b" | "b*" | "n" => {
                close(&mut points, &marks);
            }
            _ => {}
        }
    }
    found
}

/// The drawings that a file is tagged to have: what each shows, and the boxes of
/// the shapes in it.
fn drawn(read: &Read) -> Vec<(String, Vec<(f64, f64)>)> {
    let pages: Vec<_> = (0..read.pages.len()).map(|page| boxes(read, page)).collect();
    let mut drawings = Vec::new();
    for object in read.document.objects.values() {
        let Ok(element) = object.as_dict() else { continue };
        if element.get(b"S").and_then(Object::as_name).ok() != Some(b"Figure") {
            continue;
        }
        let alt = element.get(b"Alt").expect("a figure says what it shows");
        let alt = lopdf::decode_text_string(alt).expect("words");
        let page: ObjectId = element
            .get(b"Pg")
            .and_then(Object::as_reference)
            .expect("a figure stands on a page");
        let page =
            read.pages.iter().position(|it| *it == page).expect("a page of the file");
        let kids = match element.get(b"K") {
            Ok(Object::Array(kids)) => kids.clone(),
            Ok(kid) => vec![kid.clone()],
            Err(_) => Vec::new(),
        };
        let ids = kids.iter().filter_map(|it| it.as_i64().ok());
        let shapes = ids.flat_map(|id| pages[page].get(&id).cloned().unwrap_or_default());
        drawings.push((alt, shapes.collect()));
    }
    drawings
}

/// A handout of a demo, and its file.
fn made(text: &str, template: &str) -> (Document, Vec<u8>) {
    let (_, read) = project::read(
        Source::new("demo.yaml", text),
        &Beside::new("demo-data/demo.yaml"),
    );
    let project = read.value.expect("demos have no faults");
    let template = Template::built_in(template).expect("a template of the house");
    let options = PlanOptions {
        reader: template.reader,
        budget: 300_000,
        ..PlanOptions::default()
    };
    let plan = plan(&project, &options).value.expect("demos can be planned");
    let document =
        handout::write(&project, &plan, &template, handout::Options::default());
    let size = match project.unit {
        Unit::Inch => PageSize::Letter,
        Unit::Mm => PageSize::A5,
    };
    let setup = PageSetup { size, ..PageSetup::default() };
    let mut press = demos::press();
    let laid = layout::lay_out(&mut press, &document, &setup);
    let laid = laid.value.expect("demos can be laid out");
    let bytes = pdf::write(&laid, press.library(), &PdfInfo::default());
    (document, bytes.expect("a file"))
}

/// One drawing: at some scale that ISO 5455 knows or that extends it, every area has
/// its size.
fn assert_to_scale(name: &str, figure: &Figure, shapes: &[(f64, f64)]) {
    let areas: Vec<Size> = figure
        .drawing
        .marks
        .iter()
        .filter_map(|mark| match mark {
            Mark::Area { rect, line, fill, .. } => {
                (line.is_some() || *fill != Fill::None).then_some(rect.size)
            }
            _ => None,
        })
        .collect();
    let fits = |scale: f64| {
        areas.iter().all(|area| {
            let width = Pt::true_size(area.width).0 * scale;
            let height = Pt::true_size(area.height).0 * scale;
            shapes.iter().any(|shape| {
                (shape.0 - width).abs() < TOLERANCE
                    && (shape.1 - height).abs() < TOLERANCE
            })
        })
    };
    let scales = [1, 2, 3, 4, 5, 6, 7, 8, 10, 20, 50].map(f64::from);
    let found = scales.into_iter().find(|real| fits(1.0 / real));
    assert!(
        found.is_some(),
        "{name}: not to scale: {}\n{areas:?}\n{shapes:?}",
        figure.alt
    );
}

/// Rulers are true to size: a line of their length is drawn. Whether there are any.
fn assert_rulers(name: &str, figure: &Figure, file: &Read) -> bool {
    let rulers = figure.drawing.marks.iter().filter_map(|mark| match mark {
        Mark::RulerInch { rect } | Mark::RulerMm { rect } => Some(rect.size.width),
        _ => None,
    });
    let lengths: Vec<f64> = rulers.map(|it| Pt::true_size(it).0).collect();
    for length in &lengths {
        let mut segments = (0..file.pages.len()).flat_map(|page| file.segments(page));
        let drawn = segments.any(|it| (it.length() - length).abs() < TOLERANCE);
        assert!(drawn, "{name}: no ruler of {length} pt");
    }
    !lengths.is_empty()
}

#[test]
fn every_outline_of_every_demo_has_its_size() {
    let mut measured = 0;
    for path in demos::paths() {
        let text = fs::read_to_string(&path).expect("a demo");
        for template in ["class", "host", "kit", "travel"] {
            let name = format!("{} for {template}", path.display());
            let (document, bytes) = made(&text, template);
            let mut wanted = Vec::new();
            for section in &document.sections {
                figures(&section.blocks, &mut wanted);
            }
            let file = Read::new(&bytes);
            let drawings = drawn(&file);
            for figure in wanted {
                if assert_rulers(&name, figure, &file) {
                    measured += 1;
                    continue;
                }
                let shapes: Vec<_> = drawings
                    .iter()
                    .filter(|(alt, _)| *alt == figure.alt)
                    .flat_map(|(_, shapes)| shapes.iter().copied())
                    .collect();
                assert!(!shapes.is_empty(), "{name}: nothing is drawn of {}", figure.alt);
                assert_to_scale(&name, figure, &shapes);
                measured += 1;
            }
        }
    }
    assert!(60 < measured, "only {measured} drawings were measured");
}
