//! Pictures that a description names: patterns of papers, photos of cards.

use std::sync::Arc;

use crate::geom::{Length, Rect, Size};
use crate::project::{FaceId, Text};
use crate::raster::Picture;
use crate::source::Site;

/// What a face of a paper looks like, on the whole sheet or a part of it.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct FacePicture {
    /// Which face.
    pub face: FaceId,
    /// How it looks when that face lies up with its pattern upright.
    pub picture: Arc<Picture>,
    /// The part of the sheet that it shows, from the top left corner of that face.
    pub covers: Rect,
    /// The sheet that `covers` was measured on.
    pub sheet: Size,
    /// Where its file is named.
    pub site: Site,
}

/// A photo of what is made.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Photo {
    /// The photo itself.
    pub picture: Arc<Picture>,
    /// What is said below it.
    pub caption: Option<Text>,
    /// What it shows, for those who can't see it.
    pub shows: Option<Text>,
    /// Width × height on the printed page, in the shape of the photo.
    pub printed: Size,
    /// Where its file is named.
    pub site: Site,
}

/// The room for a photo on the cover: it fits a narrow page.
pub(crate) const COVER_ROOM: Size = Size::new(Length::inch(15, 4), Length::inch(11, 4));

/// The room for a photo of a card, beside or below its steps.
pub(crate) const CARD_ROOM: Size = Size::new(Length::inch(5, 2), Length::inch(9, 4));

/// The largest size within a room that has the shape of a picture.
pub(crate) fn fitted(picture: &Picture, room: Size) -> Size {
    let (width, height) = picture.size();
    let part = |of: Length, share: u32, whole: u32| {
        Length::from_units(of.units() * i64::from(share) / i64::from(whole.max(1)))
    };
    let high = part(room.width, height, width);
    if high <= room.height {
        Size::new(room.width, high)
    } else {
        Size::new(part(room.height, width, height), room.height)
    }
}
