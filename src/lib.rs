//! From a YAML description of a card project to a printable handout.
//!
//! ```text
//! description ─read→ Project ─plan→ Plan ─write→ Document ─lay out→ pages ─to PDF→ bytes
//! ```

pub mod cli;
pub mod diag;
pub mod document;
pub mod fonts;
pub mod geom;
pub mod handout;
pub mod layout;
pub mod page;
pub mod pdf;
pub mod plan;
pub mod project;
pub mod raster;
pub mod source;
pub mod standards;
pub mod words;
