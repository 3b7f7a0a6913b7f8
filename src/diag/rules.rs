//! The catalogue of everything that can be wrong with a description.

mod layout;
mod own;
mod plan;

pub use layout::*;
pub use own::*;
pub use plan::*;
