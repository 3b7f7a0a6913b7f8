//! The second pass: tags, bookmarks, links, metadata and identity, and nothing that
//! differs from run to run.

use lopdf::{Dictionary, Document, Object, ObjectId, SaveOptions, Stream, dictionary};

use super::content::Content;
use super::faces::Subset;
use super::metadata;
use super::tree::{Kid, Tree, structure_type};
use super::{Fault, Flavour, PdfInfo};
use crate::page::Bookmark;
use crate::page::Laid;
use crate::page::Role;
use crate::page::TagId;

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

/// A link of the file: its annotation and the tag that its words belong to.
struct Linked {
    annotation: ObjectId,
    page: usize,
    tag: TagId,
}

struct Finisher<'a> {
    document: Document,
    pages: Vec<ObjectId>,
    laid: &'a Laid,
    tree: &'a Tree,
}

impl Finisher<'_> {
    /// States which glyphs a subset holds, which PDF/A-1 asks for.
    fn faces(&mut self, subsets: &[Subset]) -> Result<(), Fault> {
        let descriptors: Vec<_> = self
            .document
            .objects
            .iter()
            .filter_map(|(id, object)| {
                let name = object.as_dict().ok()?.get(b"FontName").ok()?.as_name().ok()?;
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

    /// Writes the links of all pages.
    fn links(&mut self) -> Result<Vec<Linked>, Fault> {
        let mut links = Vec::new();
        let count = i64::try_from(self.pages.len()).map_err(Fault::new)?;
        for (index, page) in self.laid.pages.iter().enumerate() {
            let mut annotations = Vec::new();
            for link in &page.links {
                // A link that leads nowhere stays plain text.
                let Some(place) = self.laid.anchors.get(&link.to) else { continue };
                let [left, top, right, bottom] = link.area;
                let target = &self.laid.pages[place.page];
                let destination = vec![
                    self.pages[place.page].into(),
                    "XYZ".into(),
                    real(place.x),
                    real(target.height - place.y),
                    Object::Null,
                ];
                let number = count + i64::try_from(links.len()).map_err(Fault::new)?;
                let annotation = self.document.add_object(dictionary! {
                    "Type" => "Annot",
                    "Subtype" => "Link",
                    "Rect" => [left, page.height - bottom, right, page.height - top]
                        .map(real).to_vec(),
                    "Border" => vec![0.into(), 0.into(), 0.into()],
                    "F" => 4,
                    "Contents" => words(&link.says),
                    "Dest" => destination,
                    "StructParent" => number,
                });
                annotations.push(Object::Reference(annotation));
                links.push(Linked { annotation, page: index, tag: link.tag });
            }
            let id = self.pages[index];
            let dict = self.document.get_dictionary_mut(id).map_err(Fault::new)?;
            dict.set("StructParents", i64::try_from(index).map_err(Fault::new)?);
            dict.set("Tabs", "S");
            if annotations.is_empty() {
                dict.remove(b"Annots");
            } else {
                dict.set("Annots", annotations);
            }
        }
        Ok(links)
    }

    /// Writes the tree of tags.
    fn tags(&mut self, sequences: &[Vec<TagId>], links: &[Linked]) -> Result<ObjectId, Fault> {
        let tags = &self.laid.tags;
        let ids: Vec<_> = tags.all().map(|_| self.document.new_object_id()).collect();
        let root = self.document.new_object_id();
        let mut written = vec![false; ids.len()];
        written[0] = true;
        for (tag, node) in tags.all() {
            // Parents come first: what no parent holds is no part of the tree.
            if !written[tag.index()] {
                continue;
            }
            let page = self.tree.page(tag);
            let mut kids = Vec::new();
            for kid in self.tree.kids(tag) {
                match *kid {
                    Kid::Tag(child) => {
                        written[child.index()] = true;
                        kids.push(ids[child.index()].into());
                    }
                    Kid::Content(at, id) => {
                        let id = i64::try_from(id).map_err(Fault::new)?;
                        kids.push(if Some(at) == page {
                            id.into()
                        } else {
                            dictionary! {
                                "Type" => "MCR", "Pg" => self.pages[at], "MCID" => id
                            }
                            .into()
                        });
                    }
                }
            }
            for link in links.iter().filter(|it| it.tag == tag) {
                let reference = dictionary! {
                    "Type" => "OBJR", "Pg" => self.pages[link.page], "Obj" => link.annotation
                };
                kids.push(reference.into());
            }
            let parent = if tag == TagId::ROOT { root } else { ids[node.parent.index()] };
            let mut element = dictionary! {
                "Type" => "StructElem",
                "S" => structure_type(&node.role),
                "P" => parent,
            };
            match kids.len() {
                0 => {}
                1 => element.set("K", kids.remove(0)),
                _ => element.set("K", kids),
            }
            if let Some(page) = page {
                element.set("Pg", self.pages[page]);
            }
            if let Some(language) = &node.language {
                element.set("Lang", words(language));
            }
            self.attributes(&node.role, tag, &mut element);
            self.document.set_object(ids[tag.index()], element);
        }
        let mut numbers = Vec::new();
        for (index, tags) in sequences.iter().enumerate() {
            let parents: Vec<Object> = tags.iter().map(|it| ids[it.index()].into()).collect();
            numbers.push(i64::try_from(index).map_err(Fault::new)?.into());
            numbers.push(self.document.add_object(parents).into());
        }
        for (index, link) in links.iter().enumerate() {
            let number = sequences.len() + index;
            numbers.push(i64::try_from(number).map_err(Fault::new)?.into());
            numbers.push(ids[link.tag.index()].into());
        }
        let next = i64::try_from(sequences.len() + links.len()).map_err(Fault::new)?;
        let parents = self.document.add_object(dictionary! { "Nums" => numbers });
        self.document.set_object(
            root,
            dictionary! {
                "Type" => "StructTreeRoot",
                "K" => vec![ids[0].into()],
                "ParentTree" => parents,
                "ParentTreeNextKey" => next,
            },
        );
        Ok(root)
    }

    /// What an element says beyond its type.
    fn attributes(&self, role: &Role, tag: TagId, element: &mut Dictionary) {
        match role {
            Role::Figure { alt, area } => {
                element.set("Alt", words(alt));
                if let (Some([left, top, right, bottom]), Some(page)) =
                    (area, self.tree.page(tag))
                {
                    let height = self.laid.pages[page].height;
                    let bounds = [*left, height - bottom, *right, height - top];
                    let bounds: Vec<_> = bounds.map(real).to_vec();
                    element.set("A", dictionary! {
                        "O" => "Layout", "BBox" => bounds, "Placement" => "Block"
                    });
                }
            }
            Role::List { numbered } => {
                let numbering = if *numbered { "Decimal" } else { "Disc" };
                element.set("A", dictionary! { "O" => "List", "ListNumbering" => numbering });
            }
            Role::Table(summary) if !summary.is_empty() => {
                element.set("A", dictionary! { "O" => "Table", "Summary" => words(summary) });
            }
            Role::Head => {
                element.set("A", dictionary! { "O" => "Table", "Scope" => "Column" });
            }
            Role::Note => {
                element.set("ID", Object::string_literal(format!("note{}", tag.index())));
            }
            Role::Document
            | Role::Section
            | Role::Heading(_)
            | Role::Paragraph
            | Role::Entry
            | Role::Label
            | Role::Body
            | Role::Table(_)
            | Role::Row
            | Role::Cell
            | Role::Caption
            | Role::Link
            | Role::Span
            | Role::Group => {}
        }
    }

    /// Writes the bookmarks, nested by level.
    fn outline(&mut self) -> Option<ObjectId> {
        let marks = &self.laid.outline;
        if marks.is_empty() {
            return None;
        }
        let root = self.document.new_object_id();
        let ids: Vec<_> = marks.iter().map(|_| self.document.new_object_id()).collect();
        let parents = parents(marks);
        for (index, mark) in marks.iter().enumerate() {
            let siblings: Vec<_> =
                (0..marks.len()).filter(|it| parents[*it] == parents[index]).collect();
            let at = siblings.iter().position(|it| *it == index).unwrap_or(0);
            let children: Vec<_> =
                (0..marks.len()).filter(|it| parents[*it] == Some(index)).collect();
            let page = &self.laid.pages[mark.place.page];
            let mut entry = dictionary! {
                "Title" => words(&mark.title),
                "Parent" => parents[index].map_or(root, |it| ids[it]),
                "Dest" => vec![
                    self.pages[mark.place.page].into(),
                    "XYZ".into(),
                    real(0.0),
                    real(page.height - mark.place.y),
                    Object::Null,
                ],
            };
            if let Some(before) = at.checked_sub(1) {
                entry.set("Prev", ids[siblings[before]]);
            }
            if let Some(next) = siblings.get(at + 1) {
                entry.set("Next", ids[*next]);
            }
            if let (Some(first), Some(last)) = (children.first(), children.last()) {
                entry.set("First", ids[*first]);
                entry.set("Last", ids[*last]);
                // Closed at first: only sections are seen.
                entry.set("Count", -i64::try_from(children.len()).unwrap_or(0));
            }
            self.document.set_object(ids[index], entry);
        }
        let top: Vec<_> = (0..marks.len()).filter(|it| parents[*it].is_none()).collect();
        let (first, last) = (ids[top[0]], ids[top[top.len() - 1]]);
        self.document.set_object(
            root,
            dictionary! {
                "Type" => "Outlines",
                "First" => first,
                "Last" => last,
                "Count" => i64::try_from(top.len()).unwrap_or(0),
            },
        );
        Some(root)
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
        let labels = dictionary! {
            "Nums" => vec![0.into(), dictionary! { "S" => "D" }.into()]
        };
        let catalog = self.document.catalog_mut().map_err(Fault::new)?;
        catalog.remove(b"PageLayout");
        catalog.set("PageMode", if outline.is_some() { "UseOutlines" } else { "UseNone" });
        catalog.set("Lang", words(&self.laid.language));
        catalog.set("MarkInfo", dictionary! { "Marked" => true });
        catalog.set("StructTreeRoot", tags);
        catalog.set("Metadata", metadata);
        catalog.set("OutputIntents", vec![intent.into()]);
        catalog.set("PageLabels", labels);
        // Diagrams are true to scale only if nothing is fitted to the paper.
        catalog.set(
            "ViewerPreferences",
            dictionary! { "DisplayDocTitle" => true, "PrintScaling" => "None" },
        );
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
        if let Ok(old) = self.document.trailer.get(b"Info").and_then(Object::as_reference) {
            self.document.objects.remove(&old);
        }
        self.document.trailer.set("Info", about);
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
        self.document.compress();
        let mut bytes = Vec::new();
        if modern {
            let options = SaveOptions::builder()
                .use_object_streams(true)
                .use_xref_streams(true)
                .compression_level(6)
                .build();
            self.document.save_with_options(&mut bytes, options).map_err(Fault::new)?;
        } else {
            self.document.save_to(&mut bytes).map_err(Fault::new)?;
        }
        Ok(bytes)
    }
}

/// The parent of each bookmark: the last one before it with a lower level.
fn parents(marks: &[Bookmark]) -> Vec<Option<usize>> {
    let mut open: Vec<usize> = Vec::new();
    let mut parents = Vec::with_capacity(marks.len());
    for (index, mark) in marks.iter().enumerate() {
        while open.last().is_some_and(|it| marks[*it].level >= mark.level) {
            open.pop();
        }
        parents.push(open.last().copied());
        open.push(index);
    }
    parents
}

/// A number with a fraction.
fn real(value: f64) -> Object {
    #[expect(clippy::cast_possible_truncation, reason = "a page has no larger numbers")]
    let value = ((value * 1000.0).round() / 1000.0) as f32;
    Object::Real(value)
}

/// Words as a text string (ISO 32000-1, 7.9.2.2).
fn words(text: &str) -> Object {
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
