//! The keys of pictures and photos.

use crate::project::keys::{Group, Takes, key};

/// A file, or more about it.
const OF_FACE: Takes = Takes::Any(&[Takes::Words, Takes::Group("picture")]);

/// One picture, or one for each face.
pub(super) const PICTURES: Takes =
    Takes::Any(&[Takes::Words, Takes::Group("picture"), Takes::NamedAs(&OF_FACE)]);

/// A photo, or more about it.
pub(super) const PHOTO_OF: Takes = Takes::Any(&[Takes::Words, Takes::Group("photo")]);

pub(super) static PICTURE: Group = Group {
    name: "picture",
    a: "a picture",
    keys: &[
        key(
            "file",
            Takes::Words,
            "needed",
            "A PNG or JPEG file in the folder of the description.",
            "scans/rows.png",
        ),
        key(
            "covers",
            Takes::Words,
            "the whole sheet",
            "The part of the sheet that it shows: a corner and a size.",
            "top left 4 x 4 in",
        ),
    ],
};

pub(super) static PHOTO: Group = Group {
    name: "photo",
    a: "a photo",
    keys: &[
        key(
            "file",
            Takes::Words,
            "needed",
            "A PNG or JPEG file in the folder of the description.",
            "photos/hello.png",
        ),
        key("caption", Takes::Words, "", "What is said below it.", "On the windowsill"),
        key(
            "shows",
            Takes::Words,
            "that it is a photo of the card, or of the set",
            "What is seen on it, for those who can't see it.",
            "Five cards stand in a row.",
        ),
    ],
};
