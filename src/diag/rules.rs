//! The catalogue of everything that can be wrong with a description.

<<<<<<< HEAD
mod layout;
mod plan;

pub use layout::*;
=======
mod own;
mod plan;

pub use own::*;
>>>>>>> schedule
pub use plan::*;
