//! What is laid down elsewhere, each figure with its source.

pub mod post;

/// Where a figure comes from.
#[derive(Debug, PartialEq, Eq)]
pub struct Citation {
    /// The document.
    pub title: &'static str,
    /// The place in it.
    pub section: &'static str,
    /// How far the figure was held against it.
    pub seen: Seen,
}

/// How far a figure was held against its source.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Seen {
    /// The document's own text.
    Document,
    /// A secondary text that repeats the document.
    Repeated,
    /// No document: it is what the trade does.
    Practice,
}
