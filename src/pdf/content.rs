//! Pages into operators: text, paths, and marks that say which tag they belong to.

use std::collections::BTreeMap;

use printpdf::{
    Codepoint, Color, CurTransMat, DictItem, FontId, LineCapStyle, LineDashPattern,
    LineJoinStyle, LinePoint, Op, PaintMode, PdfDocument, PdfFontHandle, PdfPage,
    PdfSaveOptions, Point, Polygon, PolygonRing, Pt, Rgb, TextItem, TextMatrix,
    WindingOrder, XObjectTransform,
};

use super::faces::{Faces, Subset};
use super::images::{self, Ready};
use super::{Fault, Resolution};
use crate::fonts::Library;
use crate::page::Ink;
use crate::page::Laid;
use crate::page::Line;
use crate::page::Owner;
use crate::page::Page;
use crate::page::Path;
use crate::page::PathStep;
use crate::page::Piece;
use crate::page::TagId;
use crate::page::Text;
use crate::page::What;
use crate::page::Window;
use crate::raster::Picture;

/// Pages as printpdf wrote them, not yet finished.
pub(super) struct Content {
    /// A whole file.
    pub(super) bytes: Vec<u8>,
    /// For each page, its marked content in the order of their ids.
    pub(super) sequences: Vec<Vec<Sequence>>,
    /// What is embedded.
    pub(super) subsets: Vec<Subset>,
}

/// A sequence of marked content.
#[derive(Clone, Copy, Debug)]
pub(super) struct Sequence {
    /// What it belongs to.
    pub(super) tag: TagId,
    /// When it is read, among those of all pages.
    pub(super) rank: usize,
}

/// Writes the pages.
pub(super) fn write(
    laid: &Laid,
    library: &Library,
    resolution: Resolution,
    ready: &mut Ready,
) -> Result<Content, Fault> {
    let mut faces = Faces::default();
    let mut document = PdfDocument::new("");
    let mut sequences = Vec::new();
    for (number, page) in laid.pages.iter().enumerate() {
        let (ops, tags) = operators(page, number, laid, library, &mut faces);
        let media = printpdf::Rect::from_wh(point(page.width), point(page.height));
        document.pages.push(PdfPage {
            media_box: media.clone(),
            trim_box: media.clone(),
            crop_box: media,
            ops,
        });
        sequences.push(tags);
    }
    let subsets = faces.embed(library, &mut document)?;
    images::embed(laid, resolution, ready, &mut document)?;
    let options = PdfSaveOptions {
        optimize: false,
        subset_fonts: false,
        secure: false,
        ..PdfSaveOptions::default()
    };
    let mut warnings = Vec::new();
    let bytes = document.save(&options, &mut warnings);
    if let Some(warning) = warnings.first() {
        return Err(Fault::new(format!("printpdf warns: {}", warning.msg)));
    }
    Ok(Content { bytes, sequences, subsets })
}

/// The state that operators leave behind, to leave out what changes nothing.
struct Pen {
    ops: Vec<Op>,
    height: f64,
    fill: Option<Ink>,
    stroke: Option<Ink>,
    line: Option<Line>,
}

/// The operators of one page, and its marked content.
fn operators(
    page: &Page,
    number: usize,
    laid: &Laid,
    library: &Library,
    faces: &mut Faces,
) -> (Vec<Op>, Vec<Sequence>) {
    let mut pen = Pen {
        ops: Vec::new(),
        height: page.height,
        fill: None,
        stroke: None,
        line: None,
    };
    let mut tags = Vec::new();
    let mut open = None;
    for (at, item) in page.items.iter().enumerate() {
        // What is read at another time is marked on its own.
        let here = (item.owner, page.rank(number, at));
        if open != Some(here) {
            if open.is_some() {
                pen.ops.push(Op::EndMarkedContent);
            }
            pen.begin(here, &mut tags);
            open = Some(here);
        }
        match &item.what {
            What::Text(text) => pen.text(text, library, faces),
            What::Path(path) => pen.path(path),
            What::Window(window) => {
                if let Some(picture) = laid.pictures.get(window.picture) {
                    pen.window(window, picture);
                }
            }
        }
    }
    if open.is_some() {
        pen.ops.push(Op::EndMarkedContent);
    }
    (pen.ops, tags)
}

impl Pen {
    /// Begins a sequence of marked content.
    fn begin(&mut self, (owner, rank): (Owner, usize), tags: &mut Vec<Sequence>) {
        let (tag, map) = match owner {
            Owner::Tag(tag) => {
                let id = DictItem::Int(i64::try_from(tags.len()).unwrap_or(i64::MAX));
                tags.push(Sequence { tag, rank });
                ("Span", BTreeMap::from([("MCID".to_string(), id)]))
            }
            Owner::Running => (
                "Artifact",
                BTreeMap::from([(
                    "Type".to_string(),
                    DictItem::Name("Pagination".into()),
                )]),
            ),
            Owner::Decoration => (
                "Artifact",
                BTreeMap::from([("Type".to_string(), DictItem::Name("Layout".into()))]),
            ),
        };
        let properties = DictItem::Dict { map };
        self.ops
            .push(Op::BeginMarkedContentWithProperties { tag: tag.into(), properties });
    }

    /// Sets the colour of text and areas.
    fn fill(&mut self, ink: Ink) {
        if self.fill != Some(ink) {
            self.ops.push(Op::SetFillColor { col: color(ink) });
            self.fill = Some(ink);
        }
    }

    /// Sets how lines look.
    fn line(&mut self, line: &Line) {
        if self.stroke != Some(line.ink) {
            self.ops.push(Op::SetOutlineColor { col: color(line.ink) });
            self.stroke = Some(line.ink);
        }
        let old = self.line.take();
        if old.as_ref().map(|it| it.width) != Some(line.width) {
            self.ops.push(Op::SetOutlineThickness { pt: point(line.width) });
        }
        if old.as_ref().map_or(!line.dash.is_empty(), |it| it.dash != line.dash) {
            let dash: Vec<_> = line.dash.iter().map(|it| short(*it)).collect();
            self.ops
                .push(Op::SetLineDashPattern { dash: LineDashPattern::new(0.0, &dash) });
        }
        if old.map_or(line.round, |it| it.round != line.round) {
            let (cap, join) = if line.round {
                (LineCapStyle::Round, LineJoinStyle::Round)
            } else {
                (LineCapStyle::Butt, LineJoinStyle::Miter)
            };
            self.ops.push(Op::SetLineCapStyle { cap });
            self.ops.push(Op::SetLineJoinStyle { join });
        }
        self.line = Some(line.clone());
    }

    /// Draws a path: its area first, then its line.
    fn path(&mut self, path: &Path) {
        if path.pieces.is_empty() {
            return;
        }
        if let Some(ink) = path.fill {
            self.fill(ink);
        }
        if let Some(line) = &path.line {
            self.line(line);
        }
        let mode = match (&path.fill, &path.line) {
            (Some(_), Some(_)) => PaintMode::FillStroke,
            (Some(_), None) => PaintMode::Fill,
            (None, Some(_)) => PaintMode::Stroke,
            (None, None) => return,
        };
        // printpdf closes the last ring only: closed pieces of a line are drawn one
        // by one, open ones together, where it does no harm but to the last, which
        // has two ends and returns along itself.
        let straight = path.pieces.iter().all(|it| !it.closed && it.steps.len() == 1);
        // On its way back a dashed line would fill its own gaps.
        let dashed = path.line.as_ref().is_some_and(|it| !it.dash.is_empty());
        let alone = path.pieces.len() == 1;
        if (straight && !(dashed && alone)) || path.line.is_none() {
            let mut rings: Vec<_> = path.pieces.iter().map(|it| self.ring(it)).collect();
            if let (true, Some(first)) = (straight && dashed, path.pieces.first()) {
                // A line without length is closed in place of the last one.
                let nowhere = PathStep::To(first.start.0, first.start.1);
                rings.push(self.ring(&Piece { steps: vec![nowhere], ..first.clone() }));
            }
            self.polygon(rings, mode);
            return;
        }
        for piece in &path.pieces {
            let ring = self.ring(piece);
            if piece.closed || mode != PaintMode::Stroke {
                self.polygon(vec![ring], mode);
            } else {
                let line = printpdf::Line { points: ring.points, is_closed: false };
                self.ops.push(Op::DrawLine { line });
            }
        }
    }

    /// Shows a part of a picture. What it changes for this is changed back.
    fn window(&mut self, window: &Window, picture: &Picture) {
        let matrix = images::matrix(window, picture, self.height);
        let ring = self.ring(&window.outline);
        self.ops.push(Op::SaveGraphicsState);
        self.polygon(vec![ring], PaintMode::Clip);
        let matrix = CurTransMat::Raw(matrix.map(short));
        self.ops.push(Op::SetTransformationMatrix { matrix });
        let transform = XObjectTransform { no_auto_scale: true, ..Default::default() };
        self.ops.push(Op::UseXobject { id: images::id(window.picture), transform });
        self.ops.push(Op::RestoreGraphicsState);
    }

    fn polygon(&mut self, rings: Vec<PolygonRing>, mode: PaintMode) {
        let polygon = Polygon { rings, mode, winding_order: WindingOrder::NonZero };
        self.ops.push(Op::DrawPolygon { polygon });
    }

    /// A piece of a path; here alone y is turned to grow upwards.
    fn ring(&self, piece: &Piece) -> PolygonRing {
        let at = |(x, y): (f64, f64), bezier: bool| LinePoint {
            p: Point { x: point(x), y: point(self.height - y) },
            bezier,
        };
        let mut points = vec![at(piece.start, false)];
        for step in &piece.steps {
            match *step {
                PathStep::To(x, y) => points.push(at((x, y), false)),
                PathStep::Curve([one, two, to]) => {
                    points.extend([at(one, true), at(two, true), at(to, false)]);
                }
            }
        }
        PolygonRing { points }
    }

    /// Shows one run.
    fn text(&mut self, text: &Text, library: &Library, faces: &mut Faces) {
        let run = &*text.run;
        let face = library.face(run.face);
        let used = faces.of(run.face, library);
        self.fill(text.ink);
        // In the order in which they are read, whichever way that is: who goes by the
        // order of the file and who goes by places both find the words.
        let count = run.glyphs.len();
        let order = (0..count).map(|it| if run.leftwards { count - 1 - it } else { it });
        let mut shows = Shows::default();
        let mut plain = true;
        for glyph in order.map(|it| &run.glyphs[it]) {
            let text_of = &run.text[glyph.text.clone()];
            let (new, says) = used.glyph(face, glyph.id, text_of);
            let (x, rise) = (glyph.x / run.size, glyph.rise / run.size);
            let show = (new, used.says(new), used.widths[usize::from(new)]);
            if run.leftwards && !says {
                // Readers that go by places turn words around that run leftwards: what
                // is said for a whole run would be turned around once too often.
                self.shows(std::mem::take(&mut shows), text, &used.font, None);
                shows.add(show, x, rise);
                let shows = std::mem::take(&mut shows);
                self.shows(shows, text, &used.font, Some(text_of));
            } else {
                shows.add(show, x, rise);
                plain &= says;
            }
        }
        // What the glyphs say one by one is not what is read: say it once for all.
        let says = (!plain).then_some(run.text.as_str());
        self.shows(shows, text, &used.font, says);
    }

    /// Shows glyphs of a run; with what they say, if they don't say it themselves.
    fn shows(&mut self, shows: Shows, text: &Text, font: &FontId, says: Option<&str>) {
        if shows.done.is_empty() {
            return;
        }
        if let Some(says) = says {
            let mut data = vec![0xfe, 0xff];
            data.extend(says.encode_utf16().flat_map(u16::to_be_bytes));
            let says = DictItem::String { data, literal: false };
            let map = BTreeMap::from([("ActualText".to_string(), says)]);
            let properties = DictItem::Dict { map };
            self.ops.push(Op::BeginMarkedContentWithProperties {
                tag: "Span".into(),
                properties,
            });
        }
        let size = text.run.size;
        self.ops.push(Op::StartTextSection);
        let font = PdfFontHandle::External(font.clone());
        self.ops.push(Op::SetFont { font, size: point(size) });
        for show in shows.done {
            let (along, up) = (show.x * size, show.rise * size);
            let (x, y) = if text.upwards {
                (text.x - up, text.y - along)
            } else {
                (text.x + along, text.y - up)
            };
            let (x, y) = (point(x), point(self.height - y));
            let matrix = if text.upwards {
                TextMatrix::Raw([0.0, 1.0, -1.0, 0.0, x.0, y.0])
            } else {
                TextMatrix::Translate(x, y)
            };
            self.ops.push(Op::SetTextMatrix { matrix });
            self.ops.push(Op::ShowText { items: vec![TextItem::GlyphIds(show.glyphs)] });
        }
        self.ops.push(Op::EndTextSection);
        if says.is_some() {
            self.ops.push(Op::EndMarkedContent);
        }
    }
}

/// Glyphs that are shown by one operator.
struct Show {
    x: f64,
    rise: f64,
    glyphs: Vec<Codepoint>,
    /// Where a reader of the file now stands, in em from `x`.
    pen: f64,
}

/// The operators that show a run.
#[derive(Default)]
struct Shows {
    done: Vec<Show>,
}

impl Shows {
    /// Adds a glyph at a place; all in em from the start of the run, but its width
    /// in 1/1000 em.
    fn add(&mut self, (glyph, says, width): (u16, String, f64), x: f64, rise: f64) {
        let raised = self.done.last().is_none_or(|it| (it.rise - rise).abs() > 1e-4);
        if raised {
            self.done.push(Show { x, rise, glyphs: Vec::new(), pen: 0.0 });
        }
        let last = self.done.last_mut().expect("one was just pushed");
        // Positive moves to the left.
        let correct = (last.pen - (x - last.x)) * 1000.0;
        if correct.abs() > 0.05
            && let Some(before) = last.glyphs.last_mut()
        {
            let correct = (correct * 10.0).round() / 10.0;
            before.offset += narrow(correct);
            last.pen -= correct / 1000.0;
        }
        last.glyphs.push(Codepoint::with_cid(glyph, 0.0, says));
        last.pen += width / 1000.0;
    }
}

/// A length as printpdf holds it, in 1/1000 pt: finer than any printer, and short
/// to write.
fn point(value: f64) -> Pt {
    Pt(short(value))
}

fn short(value: f64) -> f32 {
    narrow((value * 1000.0).round() / 1000.0)
}

fn narrow(value: f64) -> f32 {
    #[expect(clippy::cast_possible_truncation, reason = "a page has no larger numbers")]
    let narrow = value as f32;
    narrow
}

/// A colour in sRGB.
fn color(ink: Ink) -> Color {
    let [r, g, b] = ink.0.map(|it| short(f64::from(it) / 255.0));
    Color::Rgb(Rgb { r, g, b, icc_profile: None })
}
