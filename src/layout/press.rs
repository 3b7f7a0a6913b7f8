//! What is kept from handout to handout: the faces, and every text once shaped.

use std::borrow::Cow;
use std::collections::BTreeMap;
use std::ops::Range;
use std::sync::Arc;

use parley::fontique::{Blob, Collection, CollectionOptions, FontInfoOverride};
use parley::{
    FontContext, FontFamily, FontFamilyName, FontFeature, FontFeatures, LayoutContext,
    LineHeight, OverflowWrap, StyleProperty,
};

use crate::fonts::Bytes;
use crate::fonts::FaceId;
use crate::fonts::Library;

/// A stretch of a text that is set in one face.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) struct Stretch {
    /// First byte of the text, and one past the last.
    pub(crate) range: (usize, usize),
    /// In which face it is tried first.
    pub(crate) face: FaceId,
    /// Which words of the paragraph it belongs to.
    pub(crate) part: u16,
}

/// What tells one shaped text from another.
#[derive(Clone, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) struct Key {
    /// Size of the em in 1/1000 pt.
    pub(crate) size: u32,
    /// The words.
    pub(crate) text: String,
    /// Which parts are set in which face; they cover the text.
    pub(crate) stretches: Vec<Stretch>,
}

/// A shaped text with what it became at the widths that were asked for.
pub(crate) struct Shaped {
    /// Not yet bound to a width.
    pub(crate) layout: parley::Layout<u16>,
    /// Broken into lines, by width in 1/1000 pt.
    pub(crate) broken: BTreeMap<(u64, usize, u64), Arc<super::text::Lines>>,
}

/// Faces, contexts of the shaper, and a cache of shaped texts: make one for each
/// worker and use it for many handouts.
pub struct Press {
    library: Library,
    fonts: FontContext,
    layouts: LayoutContext<u16>,
    /// Which face a font blob of the shaper is.
    faces: BTreeMap<u64, FaceId>,
    /// The families to try, by the face that is wanted.
    families: Vec<Vec<String>>,
    shaped: BTreeMap<Key, Shaped>,
}

/// Shaped texts that are kept; more are forgotten all at once.
const KEPT: usize = 20_000;

impl Press {
    /// A press with the committed faces.
    pub fn new() -> Self {
        Self::with(Library::new())
    }

    /// A press with more faces; nothing is taken from the system.
    pub fn with(library: Library) -> Self {
        let options = CollectionOptions { shared: false, system_fonts: false };
        let mut fonts = FontContext {
            collection: Collection::new(options),
            ..FontContext::default()
        };
        let mut faces = BTreeMap::new();
        for (id, face) in library.faces() {
            let blob = match &face.bytes {
                Bytes::Static(bytes) => Blob::new(Arc::new(*bytes)),
                Bytes::Shared(bytes) => Blob::new(Arc::new(Arc::clone(bytes))),
            };
            faces.insert(blob.id(), id);
            // A family for each face: what is wanted is what is taken, and nothing
            // is slanted or emboldened by machine.
            let name = FontInfoOverride {
                family_name: Some(&face.name),
                ..FontInfoOverride::default()
            };
            fonts.collection.register_fonts(blob, Some(name));
        }
        let names: Vec<_> = library.faces().map(|(_, face)| face.name.clone()).collect();
        let families = (0..names.len())
            .map(|first| {
                let rest = (0..names.len()).filter(|it| *it != first);
                std::iter::once(first).chain(rest).map(|it| names[it].clone()).collect()
            })
            .collect();
        Self {
            library,
            fonts,
            layouts: LayoutContext::new(),
            faces,
            families,
            shaped: BTreeMap::new(),
        }
    }

    /// The faces that glyphs are taken from.
    pub fn library(&self) -> &Library {
        &self.library
    }

    /// Which face a font of the shaper is.
    pub(crate) fn face_of(&self, font: &parley::FontData) -> FaceId {
        self.faces.get(&font.data.id()).copied().unwrap_or(FaceId::SERIF)
    }

    /// The shaped form of a text, made once.
    pub(crate) fn shaped(&mut self, key: &Key) -> &mut Shaped {
        let Self { fonts, layouts, families, shaped, .. } = self;
        if !shaped.contains_key(key) {
            if shaped.len() > KEPT {
                shaped.clear();
            }
            let layout = shape(fonts, layouts, families, key);
            shaped.insert(key.clone(), Shaped { layout, broken: BTreeMap::new() });
        }
        shaped.get_mut(key).expect("it was there or has just been made")
    }
}

impl Default for Press {
    fn default() -> Self {
        Self::new()
    }
}

/// Has the shaper choose glyphs for a text.
fn shape(
    fonts: &mut FontContext,
    layouts: &mut LayoutContext<u16>,
    families: &[Vec<String>],
    key: &Key,
) -> parley::Layout<u16> {
    let text = key.text.as_str();
    #[expect(clippy::cast_possible_truncation, reason = "sizes are small")]
    let size = (f64::from(key.size) / 1000.0) as f32;
    let mut builder = layouts.ranged_builder(fonts, text, 1.0, false);
    builder.push_default(StyleProperty::FontSize(size));
    builder.push_default(StyleProperty::LineHeight(LineHeight::Absolute(size)));
    builder.push_default(StyleProperty::OverflowWrap(OverflowWrap::BreakWord));
    for stretch in &key.stretches {
        let names: Vec<_> = families[stretch.face.index()]
            .iter()
            .map(|it| FontFamilyName::Named(Cow::Borrowed(it.as_str())))
            .collect();
        let family = FontFamily::List(Cow::Owned(names));
        let (start, end) = stretch.range;
        builder.push(StyleProperty::FontFamily(family), start..end);
        builder.push(StyleProperty::Brush(stretch.part), start..end);
    }
    for range in fractions(text) {
        let one = [FontFeature::new(parley::setting::Tag::new(b"frac"), 1)];
        let features = FontFeatures::List(Cow::Owned(one.to_vec()));
        builder.push(StyleProperty::FontFeatures(features), range);
    }
    builder.build(text)
}

/// Where fractions such as `11/16` stand in a text: digits, a stroke, digits, and
/// neither more digits nor more strokes beside them.
pub(crate) fn fractions(text: &str) -> Vec<Range<usize>> {
    let bytes = text.as_bytes();
    let digits = |mut at: usize| {
        while bytes.get(at).is_some_and(u8::is_ascii_digit) {
            at += 1;
        }
        at
    };
    let mut found = Vec::new();
    let mut at = 0;
    while at < bytes.len() {
        let stroke = digits(at);
        if stroke == at {
            at += 1;
            continue;
        }
        let end = digits(stroke + 1);
        let before = at.checked_sub(1).map(|it| bytes[it]);
        let alone = !matches!(before, Some(b'/' | b'.' | b',' | b'-'))
            && !before.is_some_and(|it| it.is_ascii_alphanumeric());
        let closed = !matches!(bytes.get(end), Some(b'/'))
            && !bytes.get(end).is_some_and(u8::is_ascii_alphabetic);
        // More than three digits make a date or an order number.
        let short = stroke - at <= 3 && end <= stroke + 4;
        if bytes.get(stroke) == Some(&b'/') && end > stroke + 1 {
            if alone && closed && short {
                found.push(at..end);
            }
            at = end;
        } else {
            at = stroke;
        }
    }
    found
}

#[cfg(test)]
mod tests {
    use super::fractions;

    #[test]
    fn only_fractions_are_set_as_fractions() {
        let found = |text: &str| -> Vec<String> {
            fractions(text).into_iter().map(|it| text[it].to_string()).collect()
        };
        assert_eq!(found("4 1/4 × 5 1/2 in"), ["1/4", "1/2"]);
        assert_eq!(found("11/16"), ["11/16"]);
        assert!(found("24/11/2026 and 2026/11 and a/4 and 3/ and 10").is_empty());
    }
}
