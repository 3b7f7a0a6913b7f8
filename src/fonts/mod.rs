//! The faces that handouts are set in, and the fonts that a user adds to them.

mod tables;

use std::sync::Arc;

pub use tables::Metrics;

/// Which face of the [`Library`] glyphs are taken from.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct FaceId(u16);

impl FaceId {
    /// Running text.
    pub const SERIF: Self = Self(0);
    /// Strong words in running text.
    pub const SERIF_STRONG: Self = Self(1);
    /// Words that are quoted or to be stamped.
    pub const SERIF_ITALIC: Self = Self(2);
    /// Labels and tables.
    pub const SANS: Self = Self(3);
    /// Headings, numerals, signal words.
    pub const SANS_STRONG: Self = Self(4);

    /// Place in the library.
    pub fn index(self) -> usize {
        usize::from(self.0)
    }
}

/// The bytes of a font file; cheap to clone.
#[derive(Clone, Debug)]
pub enum Bytes {
    /// Part of the program.
    Static(&'static [u8]),
    /// Read for this run.
    Shared(Arc<[u8]>),
}

impl AsRef<[u8]> for Bytes {
    fn as_ref(&self) -> &[u8] {
        match self {
            Self::Static(bytes) => bytes,
            Self::Shared(bytes) => bytes,
        }
    }
}

/// One face: an upright, an italic, a bold.
#[derive(Clone, Debug)]
pub struct Face {
    /// What the layout calls it; unique in the library.
    pub name: String,
    /// The whole font file.
    pub bytes: Bytes,
    /// What its tables say.
    pub metrics: Metrics,
}

/// The five faces that come with the program.
const COMMITTED: [(&str, &[u8]); 5] = [
    ("Serif", include_bytes!("../../fonts/SourceSerif4-Regular.ttf")),
    ("SerifStrong", include_bytes!("../../fonts/SourceSerif4-SemiBold.ttf")),
    ("SerifItalic", include_bytes!("../../fonts/SourceSerif4-Italic.ttf")),
    ("Sans", include_bytes!("../../fonts/SourceSans3-Regular.ttf")),
    ("SansStrong", include_bytes!("../../fonts/SourceSans3-SemiBold.ttf")),
];

/// All the faces that may be used, in the order in which they are tried for a
/// character that the wanted face lacks.
#[derive(Clone, Debug)]
pub struct Library {
    faces: Vec<Face>,
}

impl Library {
    /// The committed faces.
    pub fn new() -> Self {
        let faces = COMMITTED
            .iter()
            .map(|(name, bytes)| {
                let metrics =
                    Metrics::read(bytes).expect("the committed faces are sound");
                Face { name: (*name).into(), bytes: Bytes::Static(bytes), metrics }
            })
            .collect();
        Self { faces }
    }

    /// Adds a face of the user's, to be tried for characters that no face before
    /// it has.
    ///
    /// # Errors
    /// A sentence for the user if the file is no font that can be embedded.
    pub fn add(&mut self, bytes: &[u8]) -> Result<FaceId, String> {
        let index = u16::try_from(self.faces.len()).map_err(|_| "too many fonts")?;
        let metrics = Metrics::read(bytes)?;
        if !metrics.may_be_embedded {
            return Err("its licence bits forbid that it is embedded".into());
        }
        self.faces.push(Face {
            name: format!("User{}", usize::from(index) + 1 - COMMITTED.len()),
            bytes: Bytes::Shared(bytes.into()),
            metrics,
        });
        Ok(FaceId(index))
    }

    /// The face of an id that this library gave.
    pub fn face(&self, id: FaceId) -> &Face {
        &self.faces[id.index()]
    }

    /// Every face with its id.
    pub fn faces(&self) -> impl Iterator<Item = (FaceId, &Face)> {
        // There are never more than u16::MAX of them: see `add`.
        (0..).map(FaceId).zip(&self.faces)
    }
}

impl Default for Library {
    fn default() -> Self {
        Self::new()
    }
}
