//! Finished pages into the bytes of a PDF file.
//!
//! printpdf writes what is seen: glyphs, lines, areas, embedded subsets. A second
//! pass with lopdf adds what is known: tags, bookmarks, metadata, output intent.
//! Built to the rules of PDF/UA-1 (ISO 14289-1) and PDF/A-2a (ISO 19005-2).

mod content;
mod faces;
mod finish;
mod images;
mod metadata;
mod navigation;
mod structure;
mod tree;

pub use images::Ready;

use crate::fonts::Library;
use crate::page::Laid;

/// What is said about the file, besides what its pages say.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct PdfInfo {
    /// Who made the handout.
    pub author: Option<String>,
    /// What it is about, in a sentence.
    pub subject: Option<String>,
    /// Which rules the file keeps to.
    pub flavour: Flavour,
    /// How finely pictures are printed at most.
    pub pictures: Resolution,
}

/// Dots an inch.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Resolution(pub u32);

impl Default for Resolution {
    /// 300 dots an inch: more can't be seen at arm's length (common practice, no
    /// source).
    fn default() -> Self {
        Self(300)
    }
}

/// Which rules a file keeps to.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Flavour {
    /// PDF 1.7 to the rules of PDF/A-2a and PDF/UA-1, with object streams.
    #[default]
    Tagged,
    /// PDF 1.4 to the rules of PDF/A-1b, for checkers that know no other.
    Archive1b,
}

/// Why no file could be written: a fault of this program or of a font.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Fault(String);

impl std::fmt::Display for Fault {
    fn fmt(&self, to: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        to.write_str(&self.0)
    }
}

impl std::error::Error for Fault {}

impl Fault {
    fn new(what: impl std::fmt::Display) -> Self {
        Self(what.to_string())
    }
}

/// Writes pages to the bytes of a file. The same pages give the same bytes.
///
/// # Errors
/// A font that can't be made smaller, or a fault of this program.
pub fn write(laid: &Laid, library: &Library, info: &PdfInfo) -> Result<Vec<u8>, Fault> {
    write_again(laid, library, info, &mut Ready::default())
}

/// The same, with pictures that earlier files have shown kept ready; the bytes do not
/// depend on what is ready.
///
/// # Errors
/// A font that can't be made smaller, or a fault of this program.
pub fn write_again(
    laid: &Laid,
    library: &Library,
    info: &PdfInfo,
    ready: &mut Ready,
) -> Result<Vec<u8>, Fault> {
    // The pages as operators; every sequence of marked content knows its tag.
    let content = content::write(laid, library, info.pictures, ready)?;
    // What the sequences mean, as a tree.
    let tree = tree::Tree::of(&laid.tags, &content.sequences);
    // All that printpdf leaves out, or that differs from run to run.
    finish::finish(laid, content, &tree, info)
}
