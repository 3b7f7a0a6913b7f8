//! Texts that were read, and places in them.

use std::hash::{Hash, Hasher};
use std::path::Path;

/// A place in one of the files that were read: a range of bytes.
///
/// It travels with the values of the model and tells a message where to point.
/// Two sites are always equal and hash alike, so that models can be compared
/// without regard to where they were written.
#[derive(Clone, Copy, Debug, Default)]
pub struct Site {
    /// Index of the file in [`Sources`].
    pub file: u16,
    /// First byte.
    pub start: u32,
    /// One past the last byte.
    pub end: u32,
}

impl PartialEq for Site {
    fn eq(&self, _: &Self) -> bool {
        true
    }
}

impl Eq for Site {}

impl Hash for Site {
    fn hash<H: Hasher>(&self, _: &mut H) {}
}

/// A text with the name that messages call it by.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Source {
    /// Usually a path as the user typed it.
    pub name: String,
    /// The whole text.
    pub text: String,
}

impl Source {
    /// A text under a name.
    pub fn new(name: impl Into<String>, text: impl Into<String>) -> Self {
        Self { name: name.into(), text: text.into() }
    }

    /// Line and column of a byte, both from 1; columns count characters.
    pub fn line_column(&self, byte: usize) -> (usize, usize) {
        let mut byte = byte.min(self.text.len());
        while !self.text.is_char_boundary(byte) {
            byte -= 1;
        }
        let before = &self.text[..byte];
        let line = before.matches('\n').count() + 1;
        let start = before.rfind('\n').map_or(0, |at| at + 1);
        (line, before[start..].chars().count() + 1)
    }
}

/// All the files that make up one description; the first is the main one.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Sources {
    /// In the order in which they were opened.
    pub files: Vec<Source>,
}

impl Sources {
    /// The file a site lies in.
    pub fn of(&self, site: Site) -> Option<&Source> {
        self.files.get(usize::from(site.file))
    }
}

/// Where files that a description names come from.
///
/// Only the command line opens files; the layers below are handed a folder.
/// Implementations refuse paths that lead out of the description's folder.
pub trait Folder {
    /// The bytes of a file below the folder.
    ///
    /// # Errors
    /// A sentence for the user that says why the file can't be had.
    fn bytes(&self, path: &Path) -> Result<Vec<u8>, String>;
}

/// A folder with nothing in it.
#[derive(Clone, Copy, Debug, Default)]
pub struct Empty;

impl Folder for Empty {
    fn bytes(&self, path: &Path) -> Result<Vec<u8>, String> {
        Err(format!("there is no file `{}`", path.display()))
    }
}
