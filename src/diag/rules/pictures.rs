//! Rules of pictures, photos and colours.

use crate::diag::Rule;
use crate::diag::rules::{advice, error, warning};

/// The rows of this phase.
pub(super) static ROWS: &[&Rule] = &[
    &PICTURE_NOT_FOUND,
    &PICTURE_NOT_USABLE,
    &TOO_MANY_PICTURES,
    &PICTURE_PAST_THE_SHEET,
    &PICTURE_OUT_OF_SHAPE,
    &PHOTO_TOO_COARSE,
    &INK_HARD_TO_READ,
];

/// The file of a picture can't be had.
pub static PICTURE_NOT_FOUND: Rule = error(
    "picture-not-found",
    "The file of a picture can't be had.",
    "Pictures lie in the folder of the description or in one below it, so that the \
     folder can be passed on as a whole.",
    "pictures: ../rows.png",
    "pictures: scans/rows.png",
);

/// The file of a picture is no picture that can be used.
pub static PICTURE_NOT_USABLE: Rule = error(
    "picture-not-usable",
    "The file of a picture is no picture that can be used.",
    "Pictures are PNG or JPEG files in RGB colours or greys, whole, and not larger than \
     can be printed.",
    "pictures: scans/rows.tiff",
    "pictures: scans/rows.png",
);

/// The pictures are too large together.
pub static TOO_MANY_PICTURES: Rule = error(
    "too-many-pictures",
    "The pictures of a description are too large together.",
    "More than 120 million pixels are printed nowhere. Scan at 300 dots an inch.",
    "photo: photos/at-1200-dpi.jpg",
    "photo: photos/at-300-dpi.jpg",
);

/// A picture is said to show more than the sheet.
pub static PICTURE_PAST_THE_SHEET: Rule = error(
    "picture-past-the-sheet",
    "A picture is said to show more than the sheet.",
    "One of the two sizes is wrong.",
    "{file: rows.png, covers: top left 9 x 9 in}",
    "{file: rows.png, covers: top left 8 x 8 in}",
);

/// A picture has another shape than what it shows.
pub static PICTURE_OUT_OF_SHAPE: Rule = warning(
    "picture-out-of-shape",
    "A picture has another shape than the part of the sheet that it shows.",
    "It would be drawn stretched. Crop it to the edges of the sheet, or say what part it \
     shows.",
    "{file: strip.png, covers: top left 8 x 8 in}",
    "{file: strip.png, covers: top left 8 x 2 in}",
);

/// A photo has too few pixels for its printed size.
pub static PHOTO_TOO_COARSE: Rule = warning(
    "photo-too-coarse",
    "A photo has too few pixels for its printed size.",
    "Below 150 dots an inch, pixels are seen at arm's length (common practice, no \
     source).",
    "photo: photos/thumbnail.png",
    "photo: photos/hello.png",
);

/// An ink is hard to read on its paper.
pub static INK_HARD_TO_READ: Rule = advice(
    "ink-hard-to-read",
    "An ink is hard to read on the paper it is stamped on.",
    "Words need a contrast of 4.5 : 1 (WCAG 2.2, success criterion 1.4.3). Take a darker \
     ink or a lighter paper.",
    "sky ink: {kind: ink pad, colour: \"#9fc3d9\"}",
    "deep ink: {kind: ink pad, colour: \"#1f3d5c\"}",
);
