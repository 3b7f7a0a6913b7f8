//! Exact lengths on paper, and the points of a page.
//!
//! Paper is measured in whole units of 1/14400 mm ([`Length`]), so that sums and
//! comparisons are exact. A page is measured in points ([`Pt`]). The two meet at
//! one [`Scale`]. On paper as on a page, x grows to the right and y grows
//! downwards from the top left corner.

mod length;
mod matted;
mod measure;
mod outline;
mod page;
mod shape;

pub use length::{Length, Unit};
pub use matted::Halves;
pub use measure::{LengthFault, SizeFault};
pub use outline::{
    Curved, MOST_OUTLINE, Narrowed, corners, holds, is_within, narrowed, widest,
};
pub use page::{Pt, Scale};
pub use shape::{Axis, Rect, Shape, Side, Size, Turn};
