//! The catalogue of everything that can be wrong with a description.

mod own;
mod plan;

pub use own::*;
pub use plan::*;
