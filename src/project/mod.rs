//! The checked description of a project: every name resolved, every default filled.
//!
//! Reading goes in steps: text → spanned tree → keys → meaning → rules. What
//! comes out is a [`Project`] in which `Option` never stands for a default.

mod card;
mod cutting;
pub mod keys;
mod model;
mod picture;
mod read;
mod stock;
mod syntax;
mod told;
mod tree;

pub use card::*;
pub use cutting::*;
pub use model::*;
pub use picture::{FacePicture, Photo};
pub use read::is_language;
pub use read::{Reading, read, read_all};
pub use stock::*;
pub use told::{Told, primary, untold};
