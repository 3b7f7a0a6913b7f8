//! Rules of the plan: what is only known once cutting and placing are computed.
//!
//! Their fixtures stand with the tests of the plan, since reading alone doesn't
//! find them.

use crate::diag::Rule;
use crate::diag::rules::{advice, error, warning};

/// The rows of this phase, in the order in which it checks.
pub(super) static ROWS: &[&Rule] = &[
    &LAYER_OFF_THE_FRONT,
    &LAYER_DOES_NOT_REACH,
    &LAYERS_IN_A_CIRCLE,
    &RAISED_LAYER_TRIMMED,
    &TOO_MANY_SQUARES,
    &PATTERN_TURNED,
    &LATE_PART_LEFT_OVER,
    &COUNT_TOO_LOW,
    &FOLD_ACROSS_THE_GRAIN,
    &PART_FITS_NO_SHEET,
    &CUT_TOO_LONG,
    &NOT_ENOUGH_SHEETS,
    &NEIGHBOURS_DIFFER_IN_NUMBER,
    &REGION_NOT_REACHED,
    &REGION_TAKES_MORE_SHEETS,
    &SHEETS_NOT_ALIKE,
    &KEPT_PLAN_DOES_NOT_FIT,
    &CUTS_DO_NOT_COME_OUT,
    &SIZE_OFF_THE_MARKS,
    &PUNCH_DOES_NOT_REACH,
    &CARD_LARGER_THAN_ENVELOPE,
    &ENVELOPE_SIZE_UNKNOWN,
    &CARD_TOO_THICK_FOR_ENVELOPE,
    &CARD_THICK_FOR_A_LETTER,
    &DONE_AHEAD_TOO_EARLY,
];

/// A layer hangs over the side of what it is placed on.
pub static LAYER_OFF_THE_FRONT: Rule = error(
    "layer-off-the-front",
    "A layer hangs over the side of what it is placed on.",
    "What hangs over is seen from behind and catches in the envelope. Move the layer, make the piece smaller, or say `trim flush: true` if it is trimmed from the inside once it is fixed.",
    "front: 3 x 3 in … {piece: sash, left: 1 in}   # sash is 2 1/2 in wide",
    "front: 3 x 3 in … {piece: sash, left: 1/2 in}",
);

/// A layer that is to go from edge to edge is too short, or lies so that it misses an edge.
pub static LAYER_DOES_NOT_REACH: Rule = error(
    "layer-does-not-reach",
    "A layer that is to go from edge to edge is too short, or lies so that it misses an edge.",
    "A bare line at the side looks like a mistake. Make the piece as long as the front, or longer with `trim flush: true`, or leave `edge to edge` out.",
    "sash: {of: meadow, size: 5 x 2 in} … {piece: sash, edge to edge: true}   # the front is 5 1/2 in wide",
    "sash: {of: meadow, size: 5 1/2 x 2 in}",
);

/// Layers are placed by one another in a circle, so that none has a place.
pub static LAYERS_IN_A_CIRCLE: Rule = error(
    "layers-in-a-circle",
    "Layers are placed by one another in a circle, so that none has a place.",
    "Place one of them from a side of the front, or in its middle.",
    "- {piece: rail, below: sill}\n- {piece: sill, above: rail}",
    "- {piece: rail, bottom: 3/4 in}\n- {piece: sill, above: rail}",
);

/// A layer on foam squares hangs over the edge and would have to be trimmed flush.
pub static RAISED_LAYER_TRIMMED: Rule = error(
    "raised-layer-trimmed",
    "A layer on foam squares hangs over the edge and would have to be trimmed flush.",
    "A raised layer can't be trimmed from the inside, and its squares would show. Lay it flat, or keep it inside the front.",
    "- {piece: sash, left: 4 in, trim flush: true, raised: 4 squares}",
    "- {piece: sash, left: 4 in, trim flush: true}",
);

/// More foam squares are asked for than find room behind the layer.
pub static TOO_MANY_SQUARES: Rule = warning(
    "too-many-squares",
    "More foam squares are asked for than find room behind the layer.",
    "A square that comes closer than 2 mm to the edge shows from the side. Take fewer, or cut them smaller.",
    "- {piece: strip, raised: 8 squares}   # strip is 1 x 1/2 in",
    "- {piece: strip, raised: 2 squares}",
);

/// A layer is turned although the pattern of the face that shows has a direction.
pub static PATTERN_TURNED: Rule = advice(
    "pattern-turned",
    "A layer is turned although the pattern of the face that shows has a direction.",
    "The pattern will not stand upright on the card. If that is meant, nothing has to be done.",
    "faces: {boughs: {runs: up}} … {piece: sash, turned: right}",
    "- {piece: sash}   # and give its size the other way round",
);

/// Cutting a piece again makes more of a part than the cards use.
pub static LATE_PART_LEFT_OVER: Rule = advice(
    "late-part-left-over",
    "Cutting a piece again makes more of a part than the cards use.",
    "The rest is a spare or goes to the scraps. Use it on a card, or cut the part from the sheet.",
    "makes: {sill: {}, rail: {}}   # one sill and two rails are on the cards",
    "- {piece: sill, below: rail}   # on the second card too",
);

/// A piece has a `count` that is smaller than what the cards use.
pub static COUNT_TOO_LOW: Rule = error(
    "count-too-low",
    "A piece has a `count` that is smaller than what the cards use.",
    "Someone would sit at the table without her piece. Leave `count` out to have it counted from the cards, or raise it.",
    "tile: {of: orchard, size: 1 x 1 in, count: 2}   # three tiles are on the cards",
    "tile: {of: orchard, size: 1 x 1 in}",
);

/// A base has to be cut so that its fold runs across the grain of the paper.
pub static FOLD_ACROSS_THE_GRAIN: Rule = warning(
    "fold-across-the-grain",
    "A base has to be cut so that its fold runs across the grain of the paper.",
    "Stiff paper cracks when it is folded across the grain. Score it well, or take a sheet with the grain the other way.",
    "oat: {sheet: 7 x 5 in, grain: long} … note: {front: 3 1/2 x 5 in, made: {of: oat}}",
    "oat: {sheet: 7 x 5 in, grain: short}",
);

/// Something that has to be cut is larger than every sheet of its paper.
pub static PART_FITS_NO_SHEET: Rule = error(
    "part-fits-no-sheet",
    "Something that has to be cut is larger than every sheet of its paper.",
    "Take a larger sheet, or make it smaller. A pattern or a fold with a direction may also keep it from being turned.",
    "oat: {sheet: a5} … note: {format: a5, made: {of: oat}}",
    "oat: {sheet: a4}",
);

/// Something can't be cut because the trimmer's longest cut is too short.
pub static CUT_TOO_LONG: Rule = error(
    "cut-too-long",
    "Something can't be cut because the trimmer's longest cut is too short.",
    "Take a longer trimmer, or sheets that are cut smaller when they are bought.",
    "trimmer: {kind: sliding trimmer, longest cut: 6 in} … sheet: 12 x 12 in",
    "trimmer: {kind: sliding trimmer, longest cut: 12 in}",
);

/// The sheets at hand don't do for all the kits, and no more can be had.
pub static NOT_ENOUGH_SHEETS: Rule = error(
    "not-enough-sheets",
    "The sheets at hand don't do for all the kits, and no more can be had.",
    "Make fewer kits, or name a size of sheet that can be bought.",
    "kits: 30 … sheets: [{size: 6 x 6 in, at hand: 2}]",
    "sheets: [{size: 6 x 6 in, at hand: 2}, 12 x 12 in]",
);

/// A kit takes more of a piece than of the one it lies next to.
pub static NEIGHBOURS_DIFFER_IN_NUMBER: Rule = error(
    "neighbours-differ-in-number",
    "A kit takes more of a piece than of the one it lies next to.",
    "Pieces that lie next to each other come off the sheet together, one for one. Say `spare:` at the piece of which there are fewer.",
    "tile: {count: 2}\nside: {count: 1, next to: {piece: tile, side: right}}",
    "tile: {count: 2}\nside: {count: 1, spare: 1, next to: {piece: tile, side: right}}",
);

/// No plan was found in which a piece is cut at the place it asks for.
pub static REGION_NOT_REACHED: Rule = error(
    "region-not-reached",
    "No plan was found in which a piece is cut at the place it asks for.",
    "The sheets at hand don't do, or the trimmer's longest cut is too short to cut the piece free there. Several pieces with places of their own are cut from one sheet only where straight cuts from edge to edge part them, else each from sheets of its own.",
    "sheet: 12 x 12 in … longest cut: 8 in … tower: {size: 2 x 2 in, region: {left: 5 in, top: 5 in}}",
    "longest cut: 12 in",
);

/// A piece at its place takes more sheets than it would anywhere else.
pub static REGION_TAKES_MORE_SHEETS: Rule = advice(
    "region-takes-more-sheets",
    "A piece at its place takes more sheets than it would anywhere else.",
    "The cuts that free it leave narrow strips. A place nearer to a corner leaves larger ones.",
    "sheet: 8 x 8 in … tower: {size: 2 x 2 in, region: {left: 3 in, top: 3 in}}",
    "tower: {size: 2 x 2 in, region: {left: 6 in, top: 0 in}}",
);

/// Sheets are to be cut alike, but one kit takes more than one of them.
pub static SHEETS_NOT_ALIKE: Rule = advice(
    "sheets-not-alike",
    "Sheets are to be cut alike, but one kit takes more than one of them.",
    "Sheets that are all cut alike each hold whole kits. The plan with the fewest sheets is taken; take a larger sheet, or leave `sheets alike` out.",
    "sheets alike: true … sheet: 6 x 6 in … window: {of: orchard, size: 5 x 5 in, count: 2}",
    "sheets alike: true … sheet: 12 x 12 in … window: {of: orchard, size: 5 x 5 in, count: 2}",
);

/// The cutting plan that was kept is not for this description.
pub static KEPT_PLAN_DOES_NOT_FIT: Rule = warning(
    "kept-plan-does-not-fit",
    "The cutting plan that was kept is not for this description.",
    "Something was changed since the plan was kept, or another number of kits is asked for, so the cuts are worked out anew and an earlier printout may differ. Keep the new plan, or delete the file that ends in `.cuts.json`.",
    "sash: {of: orchard, size: 5 1/2 x 1 7/8 in}   # 5 1/2 x 2 in when the plan was kept",
    "leafwright cuts NAME.yaml --keep",
);

/// A plan came out wrong when it was carried out on imaginary paper.
pub static CUTS_DO_NOT_COME_OUT: Rule = error(
    "cuts-do-not-come-out",
    "A plan came out wrong when it was carried out on imaginary paper.",
    "Every plan is tried before it is printed, so that no sheet is spoilt. This is a fault in leafwright and not in the description; please report it.",
    "any description for which this appears",
    "another size of sheet, until it is mended",
);

/// A size lies between two marks of the trimmer.
pub static SIZE_OFF_THE_MARKS: Rule = advice(
    "size-off-the-marks",
    "A size lies between two marks of the trimmer.",
    "It has to be guessed by eye, and every piece comes out a little different. The plan keeps the size as it is; choose a size on a mark if it may be changed.",
    "trimmer: {kind: sliding trimmer, marks: 1/16 in} … size: 2.1 x 2 in",
    "size: 2 1/8 x 2 in",
);

/// A punch does not reach so far into the paper as its outline is long.
pub static PUNCH_DOES_NOT_REACH: Rule = error(
    "punch-does-not-reach",
    "A punch does not reach so far into the paper as its outline is long.",
    "The label would be cut off at the edge of the paper. Check `reach` and `outline` of the punch.",
    "tag: {kind: punch, outline: rounded 2 1/2 x 1 1/4 in, reach: 1 in}",
    "tag: {kind: punch, outline: rounded 2 1/2 x 1 1/4 in, reach: 1 3/8 in}",
);

/// A folded card does not go into its envelope.
pub static CARD_LARGER_THAN_ENVELOPE: Rule = error(
    "card-larger-than-envelope",
    "A folded card does not go into its envelope.",
    "Take a larger envelope, or a smaller base.",
    "note: {front: 5 x 7 in, envelope: 4 3/8 x 5 3/4 in}",
    "note: {front: 5 x 7 in, envelope: 5 1/4 x 7 1/4 in}",
);

/// A layer is placed on an envelope whose size is not known.
pub static ENVELOPE_SIZE_UNKNOWN: Rule = error(
    "envelope-size-unknown",
    "A layer is placed on an envelope whose size is not known.",
    "Its place can't be worked out or drawn. Say how large the envelope is.",
    "note: {front: 3 x 5 in} … envelope: [{piece: tile, right: 1/2 in}]",
    "note: {front: 3 x 5 in, envelope: 3 1/2 x 5 1/4 in}",
);

/// Work that is done ahead needs other work that is not.
pub static DONE_AHEAD_TOO_EARLY: Rule = error(
    "done-ahead-too-early",
    "Work that is done ahead needs other work that is not.",
    "It can't be done before the other. Do both ahead, or neither.",
    "done ahead: {kit: [punch]}   # the labels are not cut yet",
    "done ahead: {kit: [cut, punch]}",
);

/// A card goes into its envelope by its face, but not with its thickness.
pub static CARD_TOO_THICK_FOR_ENVELOPE: Rule = warning(
    "card-too-thick-for-envelope",
    "A card goes into its envelope by its face, but not with its thickness.",
    "A flat envelope loses in width and height what the card takes in thickness, so a card with raised layers wants that much more room each way. Take a larger envelope, thinner foam squares, or raise fewer layers. Measure a finished card in its envelope before you buy a pack.",
    "note: {front: 5 x 7 in, envelope: 5 1/16 x 7 1/4 in} … {greeting: thanks, raised: 4 squares}",
    "note: {front: 5 x 7 in, envelope: 5 1/4 x 7 1/4 in} … {greeting: thanks, raised: 4 squares}",
);

/// A card in its envelope is close to 5 mm thick, or thicker.
pub static CARD_THICK_FOR_A_LETTER: Rule = advice(
    "card-thick-for-a-letter",
    "A card in its envelope is close to 5 mm thick, or thicker.",
    "Many postal operators take a letter up to 5 mm (1/4 in in the United States) and charge a larger class above; uneven or stiff contents may cost more even below. Raise fewer layers, or take thinner foam squares. Check with your postal operator.",
    "foam: {kind: foam squares, thickness: 5 mm} … {greeting: thanks, raised: 4 squares}",
    "foam: {kind: foam squares, thickness: 2 mm} … {greeting: thanks, raised: 4 squares}",
);
