//! The catalogue of everything that can be wrong with a description.

mod plan;

pub use plan::*;
