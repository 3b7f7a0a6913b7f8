//! Rules about the designer's own way of cutting.

use crate::diag::Rule;
use crate::diag::rules::{advice, error, warning};

/// The rows of this phase, in the order in which it checks.
pub(super) static ROWS: &[&Rule] = &[
    &OWN_PART_UNKNOWN,
    &OWN_PART_USED_TWICE,
    &OWN_NOTHING_IN_HAND,
    &OWN_NAME_TWICE,
    &OWN_CUT_TOO_LARGE,
    &OWN_CUT_TOO_LONG,
    &OWN_PIECE_OTHER_PAPER,
    &OWN_PIECE_TURNED,
    &OWN_PIECE_OTHER_SIZE,
    &OWN_PIECES_MISSING,
    &OWN_PIECES_TO_SPARE,
    &OWN_PART_FORGOTTEN,
    &OWN_PIECE_OUT_OF_PLACE,
];

/// A step takes or keeps a part that no earlier step has named.
pub static OWN_PART_UNKNOWN: Rule = error(
    "own-part-unknown",
    "A step takes or keeps a part that no earlier step has named.",
    "Whoever follows the steps would look for a part that is not there. Name it where it comes off, with `other part:` or `call:`.",
    "- {trim to: 5 1/2 in wide}\n- {take: side, cut off: 2 in high, for: sash}",
    "- {trim to: 5 1/2 in wide, other part: side}\n- {take: side, cut off: 2 in high, for: sash}",
);

/// A step takes a part that an earlier step has finished.
pub static OWN_PART_USED_TWICE: Rule = error(
    "own-part-used-twice",
    "A step takes a part that an earlier step has finished.",
    "A part that has become a piece or is kept can't be cut again.",
    "- {keep: side}\n- {take: side, cut off: 2 in high, for: sash}",
    "- {take: side, cut off: 2 in high, for: sash}\n- {keep: side}",
);

/// A step cuts although no part is in hand.
pub static OWN_NOTHING_IN_HAND: Rule = error(
    "own-nothing-in-hand",
    "A step cuts although no part is in hand.",
    "The step before used up what was in hand. Say with `take:` which part is cut next.",
    "- {halve: across, for: tile}\n- {cut off: 1 in high, for: rail}",
    "- {halve: across, for: tile}\n- {take: side, cut off: 1 in high, for: rail}",
);

/// Two parts are given the same name.
pub static OWN_NAME_TWICE: Rule = error(
    "own-name-twice",
    "Two parts are given the same name.",
    "A later step that takes the name could mean either.",
    "- {trim to: 5 in wide, other part: side}\n- {trim to: 4 in high, other part: side}",
    "- {trim to: 5 in wide, other part: side}\n- {trim to: 4 in high, other part: foot}",
);

/// A cut lies beyond the part in hand.
pub static OWN_CUT_TOO_LARGE: Rule = error(
    "own-cut-too-large",
    "A cut lies beyond the part in hand.",
    "The part in hand is smaller than what is to be cut off, or just as large, so that nothing is left to cut.",
    "- {trim to: 5 in wide}\n- {cut off: 6 in wide, for: sash}",
    "- {trim to: 6 in wide}\n- {cut off: 2 in high, for: sash}",
);

/// A cut is longer than the trimmer makes.
pub static OWN_CUT_TOO_LONG: Rule = error(
    "own-cut-too-long",
    "A cut is longer than the trimmer makes.",
    "Cut the sheet the other way first, or describe a longer trimmer.",
    "trimmer: {kind: sliding trimmer, longest cut: 8 in}   # the sheet is 12 in high\n- {trim to: 5 in wide}",
    "- {trim to: 8 in high}\n- {trim to: 5 in wide}",
);

/// A step is for a piece that is not cut from this paper.
pub static OWN_PIECE_OTHER_PAPER: Rule = error(
    "own-piece-other-paper",
    "A step is for a piece that is not cut from this paper, or that no card needs.",
    "The steps of a paper can only make pieces that are described as `of:` this paper and are used.",
    "sash: {of: oat, size: 2 x 1 in}\ncutting: {meadow: [{cut off: 1 in high, for: sash}]}",
    "sash: {of: meadow, size: 2 x 1 in}",
);

/// A piece would lie across the pattern of its paper.
pub static OWN_PIECE_TURNED: Rule = error(
    "own-piece-turned",
    "A piece would lie across the pattern of its paper.",
    "Width and height are exchanged on the sheet, so that the pattern would lie on its side. Cut the other way, or say that the piece may lie any way.",
    "meadow: {faces: {rows: {runs: up}}}\nsash: {size: 2 x 1 in}\n- {cut off: 2 in high, for: sash}   # 1 in wide",
    "- {cut off: 1 in high, for: sash}   # 2 in wide",
);

/// What comes off has another size than the piece it is for.
pub static OWN_PIECE_OTHER_SIZE: Rule = error(
    "own-piece-other-size",
    "What comes off has another size than the piece it is for.",
    "Either the step or the size of the piece is wrong. A piece must come off exactly as large as it is described.",
    "sash: {size: 5 1/2 x 2 in}\n- {cut off: 1 7/8 in high, for: sash}",
    "- {cut off: 2 in high, for: sash}",
);

/// The steps make fewer of a piece than a kit needs.
pub static OWN_PIECES_MISSING: Rule = error(
    "own-pieces-missing",
    "The steps make fewer of a piece than a kit needs.",
    "A sheet that is cut so does not make a kit. Add the missing steps, or leave the cutting out and it is worked out.",
    "- {cut off: 1 in high, for: rail}   # two cards have a rail",
    "- {cut off: 1 in high, for: rail, times: 2}",
);

/// The steps make more of a piece than the kits need.
pub static OWN_PIECES_TO_SPARE: Rule = warning(
    "own-pieces-to-spare",
    "The steps make more of a piece than the kits need.",
    "Paper that is cut for nothing could have been one larger offcut. Leave the step out, or say `spare: 1` at the piece if it is meant.",
    "- {cut off: 1 in high, for: rail, times: 3}   # two cards have a rail",
    "- {cut off: 1 in high, for: rail, times: 2}",
);

/// A part is given a name, and no later step uses it.
pub static OWN_PART_FORGOTTEN: Rule = advice(
    "own-part-forgotten",
    "A part is given a name, and no later step uses it.",
    "It counts as waste. Say `keep:` if it is worth keeping.",
    "- {trim to: 5 1/2 in wide, other part: side}",
    "- {trim to: 5 1/2 in wide, other part: side}\n- {keep: side}",
);

/// A piece does not lie next to its neighbour, or at its place.
pub static OWN_PIECE_OUT_OF_PLACE: Rule = error(
    "own-piece-out-of-place",
    "A piece does not lie next to its neighbour, or at its place on the sheet.",
    "The description says `next to` or `region` of it, and these steps cut it somewhere else. Change the steps, or leave the key out.",
    "side: {next to: {piece: tile, side: right}}\n- {cut off: 2 in high, for: tile}\n- {cut off: 2 in high, for: side}",
    "- {cut off: 2 in high, call: both}\n- {take: both, cut off: 3 in wide, for: tile}\n- {cut off: 2 in wide, for: side}",
);
