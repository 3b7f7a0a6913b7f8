//! Subsets of the faces: only the glyphs that are used, renumbered in the order in
//! which they first occur.

use std::collections::BTreeMap;

use printpdf::{FontId, FontMetrics, FontType, ParsedFont, PdfFont, PdfFontMetricsStub};
use subsetter::GlyphRemapper;

use super::Fault;
use crate::fonts::Face;
use crate::fonts::FaceId;
use crate::fonts::Library;

/// The faces that a file uses.
#[derive(Default)]
pub(super) struct Faces {
    used: BTreeMap<FaceId, Used>,
}

/// The glyphs of one face that a file uses.
pub(super) struct Used {
    /// Resource name.
    pub(super) font: FontId,
    remap: GlyphRemapper,
    /// What each new glyph says; the first use decides.
    texts: Vec<Option<String>>,
    /// Advance of each new glyph in 1/1000 em, as the file states it.
    pub(super) widths: Vec<f64>,
}

/// An embedded subset, for what is written about it later.
pub(super) struct Subset {
    /// With its tag of six letters.
    pub(super) name: String,
    /// Glyphs that it holds.
    pub(super) glyphs: u16,
}

impl Faces {
    /// The record of a face.
    pub(super) fn of(&mut self, id: FaceId, library: &Library) -> &mut Used {
        self.used.entry(id).or_insert_with(|| Used {
            font: FontId(library.face(id).name.clone()),
            remap: GlyphRemapper::new(),
            // Glyph 0 is in every subset.
            texts: vec![None],
            widths: vec![0.0],
        })
    }

    /// Makes the subsets, and has a document embed them.
    pub(super) fn embed(
        self,
        library: &Library,
        document: &mut printpdf::PdfDocument,
    ) -> Result<Vec<Subset>, Fault> {
        let mut subsets = Vec::new();
        for (id, used) in self.used {
            let face = library.face(id);
            let bytes = subsetter::subset(face.bytes.as_ref(), 0, &used.remap)
                .map_err(|it| Fault::new(format!("{}: {it}", face.metrics.postscript)))?;
            let name = format!("{}+{}", tag(&bytes), face.metrics.postscript);
            subsets.push(Subset { name: name.clone(), glyphs: glyphs(&bytes) });
            let font = PdfFont::new(parsed(face, bytes, name, &used));
            document.resources.fonts.map.insert(used.font, font);
        }
        Ok(subsets)
    }
}

impl Used {
    /// The new number of a glyph, and whether it says the text that it should;
    /// readers know only one text for each glyph.
    pub(super) fn glyph(&mut self, face: &Face, id: u16, text: &str) -> (u16, bool) {
        let new = self.remap.remap(id);
        let at = usize::from(new);
        if at >= self.texts.len() {
            let advance =
                face.metrics.advances.get(usize::from(id)).copied().unwrap_or(0);
            let upm = f64::from(face.metrics.units_per_em);
            self.texts.resize(at + 1, None);
            self.widths.resize(at + 1, 0.0);
            // The file states whole thousandths.
            self.widths[at] = (f64::from(advance) * 1000.0 / upm).trunc();
        }
        match &self.texts[at] {
            Some(known) => (new, known == text),
            None => {
                // A glyph that says nothing by itself still says that it is there.
                let says = if text.is_empty() { "\u{200b}" } else { text };
                self.texts[at] = Some(says.to_string());
                (new, !text.is_empty())
            }
        }
    }

    /// What a glyph says in this file.
    pub(super) fn says(&self, new: u16) -> String {
        self.texts[usize::from(new)].clone().unwrap_or_default()
    }
}

/// A face as printpdf embeds it.
fn parsed(face: &Face, bytes: Vec<u8>, name: String, used: &Used) -> ParsedFont {
    let metrics = &face.metrics;
    let advances =
        used.remap.remapped_gids().map(|it| metrics.advances.get(usize::from(it)));
    let glyph_widths = (0..).zip(advances.map(|it| it.copied().unwrap_or(0))).collect();
    let [x_min, y_min, x_max, y_max] = metrics.bounds;
    ParsedFont {
        original_bytes: bytes,
        font_index: 0,
        font_name: Some(name),
        codepoint_to_glyph: BTreeMap::new(),
        glyph_widths,
        units_per_em: metrics.units_per_em,
        font_metrics: FontMetrics { ascent: metrics.ascent, descent: metrics.descent },
        font_type: FontType::TrueType,
        pdf_font_metrics: PdfFontMetricsStub {
            units_per_em: metrics.units_per_em,
            x_min,
            y_min,
            x_max,
            y_max,
            caret_slope_rise: metrics.caret[0],
            caret_slope_run: metrics.caret[1],
            us_weight_class: metrics.weight,
        },
    }
}

/// Six letters that tell this subset from others of its face.
fn tag(bytes: &[u8]) -> String {
    let hash = super::finish::hash(bytes, 0);
    let letter = |place: u32| {
        char::from(b'A' + u8::try_from(hash >> (8 * place) & 0xf).unwrap_or(0))
    };
    (0..6).map(letter).collect()
}

/// How many glyphs a font file holds (`maxp`).
fn glyphs(bytes: &[u8]) -> u16 {
    let u16_at = |at: usize| {
        bytes.get(at..at + 2).map_or(0, |it| u16::from_be_bytes([it[0], it[1]]))
    };
    for record in 0..usize::from(u16_at(4)) {
        let at = 12 + 16 * record;
        if bytes.get(at..at + 4) == Some(b"maxp") {
            let start = usize::from(u16_at(at + 8)) << 16 | usize::from(u16_at(at + 10));
            return u16_at(start + 4);
        }
    }
    0
}
