//! The catalogue of everything that can be wrong with a description.

mod layout;
mod plan;

pub use layout::*;
pub use plan::*;
