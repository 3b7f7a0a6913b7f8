//! The second pass: tags, bookmarks, links, metadata and identity, and nothing that
//! differs from run to run.

use std::io::Write;

use flate2::Compression;
use flate2::write::ZlibEncoder;
use lopdf::{Dictionary, Document, Object, ObjectId, SaveOptions, Stream, dictionary};

use super::content::Content;
use super::faces::Subset;
use super::metadata;
use super::tree::Tree;
use super::{Fault, Flavour, PdfInfo};
use crate::page::Laid;

/// The colour space that our colours mean: sRGB as an ICC profile of version 2.
const SRGB: &[u8] = include_bytes!("../../fonts/sRGB.icc");

/// Finishes a file.
pub(super) fn finish(
    laid: &Laid,
    content: Content,
    tree: &Tree,
    info: &PdfInfo,
) -> Result<Vec<u8>, Fault> {
    let document = Document::load_mem(&content.bytes).map_err(Fault::new)?;
    let pages: Vec<_> = document.page_iter().collect();
    let mut finisher = Finisher { document, pages, laid, tree };
    finisher.faces(&content.subsets)?;
    let links = finisher.links()?;
    let root = finisher.tags(&content.sequences, &links)?;
    let outline = finisher.outline();
    finisher.catalog(root, outline, info)?;
    finisher.save(info)
}

/// A file on its way, with what it is made from.
pub(super) struct Finisher<'a> {
    pub(super) document: Document,
    /// Its pages, in order.
    pub(super) pages: Vec<ObjectId>,
    pub(super) laid: &'a Laid,
    pub(super) tree: &'a Tree,
}

impl Finisher<'_> {
    /// States which glyphs a subset holds, which PDF/A-1 asks for.
    fn faces(&mut self, subsets: &[Subset]) -> Result<(), Fault> {
        let descriptors: Vec<_> = self
            .document
            .objects
            .iter()
            .filter_map(|(id, object)| {
                let name =
                    object.as_dict().ok()?.get(b"FontName").ok()?.as_name().ok()?;
                let glyphs = subsets.iter().find(|it| it.name.as_bytes() == name)?.glyphs;
                Some((*id, glyphs))
            })
            .collect();
        for (id, glyphs) in descriptors {
            let mut set = vec![0_u8; usize::from(glyphs).div_ceil(8)];
            for glyph in 0..usize::from(glyphs) {
                set[glyph / 8] |= 0x80 >> (glyph % 8);
            }
            let set = self.document.add_object(Stream::new(Dictionary::new(), set));
            let descriptor = self.document.get_dictionary_mut(id).map_err(Fault::new)?;
            descriptor.set("CIDSet", set);
        }
        Ok(())
    }

    /// Writes what holds for the whole file.
    fn catalog(
        &mut self,
        tags: ObjectId,
        outline: Option<ObjectId>,
        info: &PdfInfo,
    ) -> Result<(), Fault> {
        let xmp = metadata::xmp(self.laid, info).into_bytes();
        let entries = dictionary! { "Type" => "Metadata", "Subtype" => "XML" };
        // Readers look for it with the eye: it stays uncompressed.
        let metadata =
            self.document.add_object(Stream::new(entries, xmp).with_compression(false));
        let profile = Stream::new(dictionary! { "N" => 3 }, SRGB.to_vec());
        let profile = self.document.add_object(profile);
        let intent = self.document.add_object(dictionary! {
            "Type" => "OutputIntent",
            "S" => "GTS_PDFA1",
            "OutputConditionIdentifier" => Object::string_literal("sRGB"),
            "Info" => Object::string_literal("sRGB IEC 61966-2-1"),
            "RegistryName" => Object::string_literal("http://www.color.org"),
            "DestOutputProfile" => profile,
        });
        let labels = dictionary! { "Nums" => self.labels() };
        let catalog = self.document.catalog_mut().map_err(Fault::new)?;
        catalog.remove(b"PageLayout");
        catalog
            .set("PageMode", if outline.is_some() { "UseOutlines" } else { "UseNone" });
        catalog.set("Lang", words(&self.laid.language));
        catalog.set("MarkInfo", dictionary! { "Marked" => true });
        catalog.set("StructTreeRoot", tags);
        catalog.set("Metadata", metadata);
        catalog.set("OutputIntents", vec![intent.into()]);
        catalog.set("PageLabels", labels);
        // Diagrams are true to scale only if nothing is fitted to the paper.
        let mut viewing =
            dictionary! { "DisplayDocTitle" => true, "PrintScaling" => "None" };
        if self.laid.folded && info.flavour == Flavour::Tagged {
            // Sheets lie on their long side: turned over it, every back would stand
            // on its head.
            viewing.set("Duplex", "DuplexFlipShortEdge");
        }
        catalog.set("ViewerPreferences", viewing);
        if let Some(outline) = outline {
            catalog.set("Outlines", outline);
        }
        let mut about = dictionary! {
            "Title" => words(&self.laid.title),
            "Producer" => Object::string_literal(metadata::PRODUCER),
        };
        if let Some(author) = &info.author {
            about.set("Author", words(author));
        }
        if let Some(subject) = &info.subject {
            about.set("Subject", words(subject));
        }
        let about = self.document.add_object(about);
        if let Ok(old) = self.document.trailer.get(b"Info").and_then(Object::as_reference)
        {
            self.document.objects.remove(&old);
        }
        self.document.trailer.set("Info", about);
        Ok(())
    }

    /// What viewers call the pages: by their numbers, and sides of a folded sheet by
    /// the numbers of the pages on it.
    fn labels(&self) -> Vec<Object> {
        if !self.laid.folded {
            return vec![0.into(), dictionary! { "S" => "D" }.into()];
        }
        let sides = (0_i64..).zip(&self.laid.pages);
        let labels = sides.flat_map(|(side, page)| {
            let parts = page.reads.iter().map(|it| (it.rank + 1).to_string());
            let label = parts.collect::<Vec<_>>().join(", ");
            [side.into(), dictionary! { "P" => words(&label) }.into()]
        });
        labels.collect()
    }

    /// Compresses what is not yet: the highest level takes twice the time of a middle
    /// one and saves a hundredth.
    fn compress(&mut self) -> Result<(), Fault> {
        for object in self.document.objects.values_mut() {
            let Object::Stream(stream) = object else { continue };
            if !stream.allows_compression || stream.dict.has(b"Filter") {
                continue;
            }
            let room = Vec::with_capacity(stream.content.len() / 3 + 64);
            let mut encoder = ZlibEncoder::new(room, Compression::new(5));
            encoder.write_all(&stream.content).map_err(Fault::new)?;
            let compressed = encoder.finish().map_err(Fault::new)?;
            if compressed.len() + 20 < stream.content.len() {
                stream.dict.set("Filter", "FlateDecode");
                stream.set_content(compressed);
            }
        }
        Ok(())
    }

    /// Gives the file its identity and writes it out.
    fn save(mut self, info: &PdfInfo) -> Result<Vec<u8>, Fault> {
        let modern = info.flavour == Flavour::Tagged;
        self.document.version = if modern { "1.7" } else { "1.4" }.into();
        self.document.trailer.remove(b"ID");
        self.document.renumber_objects();
        // The identity of a file is a hash of what its streams say.
        let (mut one, mut two) = (0x6c65_6166, 0x7772_6967);
        for object in self.document.objects.values() {
            if let Object::Stream(stream) = object {
                one = hash(&stream.content, one);
                two = hash(&stream.content, two);
            }
        }
        let mut id = one.to_be_bytes().to_vec();
        id.extend(two.to_be_bytes());
        let id = Object::String(id, lopdf::StringFormat::Hexadecimal);
        self.document.trailer.set("ID", vec![id.clone(), id]);
        self.compress()?;
        let mut bytes = Vec::new();
        if modern {
            let options = SaveOptions::builder()
                .use_object_streams(true)
                .use_xref_streams(true)
                .compression_level(5)
                .build();
            self.document.save_with_options(&mut bytes, options).map_err(Fault::new)?;
        } else {
            self.document.save_to(&mut bytes).map_err(Fault::new)?;
        }
        Ok(bytes)
    }
}

/// A number with a fraction.
pub(super) fn real(value: f64) -> Object {
    #[expect(clippy::cast_possible_truncation, reason = "a page has no larger numbers")]
    let value = ((value * 1000.0).round() / 1000.0) as f32;
    Object::Real(value)
}

/// Words as a text string (ISO 32000-1, 7.9.2.2).
pub(super) fn words(text: &str) -> Object {
    if text.is_ascii() {
        return Object::string_literal(text);
    }
    let mut bytes = vec![0xfe, 0xff];
    bytes.extend(text.encode_utf16().flat_map(u16::to_be_bytes));
    Object::String(bytes, lopdf::StringFormat::Hexadecimal)
}

/// FNV-1a over words of eight bytes: quick, and the same everywhere.
pub(super) fn hash(bytes: &[u8], seed: u64) -> u64 {
    let mut hash = 0xcbf2_9ce4_8422_2325 ^ seed;
    for chunk in bytes.chunks(8) {
        let mut word = [0_u8; 8];
        word[..chunk.len()].copy_from_slice(chunk);
        hash = (hash ^ u64::from_le_bytes(word)).wrapping_mul(0x0000_0100_0000_01b3);
        hash ^= hash >> 29;
    }
    hash
}
