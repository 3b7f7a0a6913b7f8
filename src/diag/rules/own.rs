//! Rules about the designer's own way of cutting.

use crate::diag::{Rule, Severity};

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
];

/// A step takes or keeps a part that no earlier step has named.
pub static OWN_PART_UNKNOWN: Rule = Rule {
    name: "own-part-unknown",
    severity: Severity::Error,
    what: "A step takes or keeps a part that no earlier step has named.",
    why: "Whoever follows the steps would look for a part that is not there. Name it where it comes off, with `other part:` or `call:`.",
    example: "- {trim to: 5 1/2 in wide}\n- {take: side, cut off: 2 in high, for: sash}",
    cure: "- {trim to: 5 1/2 in wide, other part: side}\n- {take: side, cut off: 2 in high, for: sash}",
};

/// A step takes a part that an earlier step has finished.
pub static OWN_PART_USED_TWICE: Rule = Rule {
    name: "own-part-used-twice",
    severity: Severity::Error,
    what: "A step takes a part that an earlier step has finished.",
    why: "A part that has become a piece or is kept can't be cut again.",
    example: "- {keep: side}\n- {take: side, cut off: 2 in high, for: sash}",
    cure: "- {take: side, cut off: 2 in high, for: sash}\n- {keep: side}",
};

/// A step cuts although no part is in hand.
pub static OWN_NOTHING_IN_HAND: Rule = Rule {
    name: "own-nothing-in-hand",
    severity: Severity::Error,
    what: "A step cuts although no part is in hand.",
    why: "The step before used up what was in hand. Say with `take:` which part is cut next.",
    example: "- {halve: across, for: tile}\n- {cut off: 1 in high, for: rail}",
    cure: "- {halve: across, for: tile}\n- {take: side, cut off: 1 in high, for: rail}",
};

/// Two parts are given the same name.
pub static OWN_NAME_TWICE: Rule = Rule {
    name: "own-name-twice",
    severity: Severity::Error,
    what: "Two parts are given the same name.",
    why: "A later step that takes the name could mean either.",
    example: "- {trim to: 5 in wide, other part: side}\n- {trim to: 4 in high, other part: side}",
    cure: "- {trim to: 5 in wide, other part: side}\n- {trim to: 4 in high, other part: foot}",
};

/// A cut lies beyond the part in hand.
pub static OWN_CUT_TOO_LARGE: Rule = Rule {
    name: "own-cut-too-large",
    severity: Severity::Error,
    what: "A cut lies beyond the part in hand.",
    why: "The part in hand is smaller than what is to be cut off, or just as large, so that nothing is left to cut.",
    example: "- {trim to: 5 in wide}\n- {cut off: 6 in wide, for: sash}",
    cure: "- {trim to: 6 in wide}\n- {cut off: 2 in high, for: sash}",
};

/// A cut is longer than the trimmer makes.
pub static OWN_CUT_TOO_LONG: Rule = Rule {
    name: "own-cut-too-long",
    severity: Severity::Error,
    what: "A cut is longer than the trimmer makes.",
    why: "Cut the sheet the other way first, or describe a longer trimmer.",
    example: "trimmer: {kind: sliding trimmer, longest cut: 8 in}   # the sheet is 12 in high\n- {trim to: 5 in wide}",
    cure: "- {trim to: 8 in high}\n- {trim to: 5 in wide}",
};

/// A step is for a piece that is not cut from this paper.
pub static OWN_PIECE_OTHER_PAPER: Rule = Rule {
    name: "own-piece-other-paper",
    severity: Severity::Error,
    what: "A step is for a piece that is not cut from this paper, or that no card needs.",
    why: "The steps of a paper can only make pieces that are described as `of:` this paper and are used.",
    example: "sash: {of: oat, size: 2 x 1 in}\ncutting: {meadow: [{cut off: 1 in high, for: sash}]}",
    cure: "sash: {of: meadow, size: 2 x 1 in}",
};

/// A piece would lie across the pattern of its paper.
pub static OWN_PIECE_TURNED: Rule = Rule {
    name: "own-piece-turned",
    severity: Severity::Error,
    what: "A piece would lie across the pattern of its paper.",
    why: "Width and height are exchanged on the sheet, so that the pattern would lie on its side. Cut the other way, or say that the piece may lie any way.",
    example: "meadow: {faces: {rows: {runs: up}}}\nsash: {size: 2 x 1 in}\n- {cut off: 2 in high, for: sash}   # 1 in wide",
    cure: "- {cut off: 1 in high, for: sash}   # 2 in wide",
};

/// What comes off has another size than the piece it is for.
pub static OWN_PIECE_OTHER_SIZE: Rule = Rule {
    name: "own-piece-other-size",
    severity: Severity::Error,
    what: "What comes off has another size than the piece it is for.",
    why: "Either the step or the size of the piece is wrong. A piece must come off exactly as large as it is described.",
    example: "sash: {size: 5 1/2 x 2 in}\n- {cut off: 1 7/8 in high, for: sash}",
    cure: "- {cut off: 2 in high, for: sash}",
};

/// The steps make fewer of a piece than a kit needs.
pub static OWN_PIECES_MISSING: Rule = Rule {
    name: "own-pieces-missing",
    severity: Severity::Error,
    what: "The steps make fewer of a piece than a kit needs.",
    why: "A sheet that is cut so does not make a kit. Add the missing steps, or leave the cutting out and it is worked out.",
    example: "- {cut off: 1 in high, for: rail}   # two cards have a rail",
    cure: "- {cut off: 1 in high, for: rail, times: 2}",
};

/// The steps make more of a piece than the kits need.
pub static OWN_PIECES_TO_SPARE: Rule = Rule {
    name: "own-pieces-to-spare",
    severity: Severity::Warning,
    what: "The steps make more of a piece than the kits need.",
    why: "Paper that is cut for nothing could have been one larger offcut. Leave the step out, or say `spare: 1` at the piece if it is meant.",
    example: "- {cut off: 1 in high, for: rail, times: 3}   # two cards have a rail",
    cure: "- {cut off: 1 in high, for: rail, times: 2}",
};

/// A part is given a name, and no later step uses it.
pub static OWN_PART_FORGOTTEN: Rule = Rule {
    name: "own-part-forgotten",
    severity: Severity::Advice,
    what: "A part is given a name, and no later step uses it.",
    why: "It counts as waste. Say `keep:` if it is worth keeping.",
    example: "- {trim to: 5 1/2 in wide, other part: side}",
    cure: "- {trim to: 5 1/2 in wide, other part: side}\n- {keep: side}",
};
