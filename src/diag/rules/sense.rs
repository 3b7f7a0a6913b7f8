//! Rules of meaning: what fits together and what does not.

use crate::diag::Rule;
use crate::diag::rules::{advice, error, warning};

/// The rows of this phase.
pub(super) static ROWS: &[&Rule] = &[
    &GOES_IN_A_CIRCLE,
    &UNKNOWN_LAYER,
    &PLACED_TWICE,
    &DIRECTION_UNCLEAR,
    &PART_COUNT,
    &UNKNOWN_PART,
    &CUT_PAST_THE_EDGE,
    &PIECE_LARGER_THAN_SHEET,
    &BASE_LARGER_THAN_SHEET,
    &LATE_CUT_LARGER_THAN_PIECE,
    &GREETING_LARGER_THAN_LABEL,
    &NARROWED_TO_NOTHING,
    &MAT_SLID_THE_WRONG_WAY,
    &LABEL_OVER_MAT,
    &MAT_SEAM_SHOWS,
    &PUNCH_LARGER_THAN_STRIP,
    &LABEL_LARGER_THAN_SCRAP,
    &TRIMMER_SHORTER_THAN_SHEET,
    &LABEL_ON_PATTERN,
    &NEIGHBOUR_OF_OTHER_PAPER,
    &NEIGHBOURS_NOT_FLUSH,
    &NEIGHBOURS_ROUND_A_CORNER,
    &NEIGHBOURS_PLACE_TAKEN,
    &REGION_OFF_THE_SHEET,
    &REGION_ASKED_TWICE,
    &PIECE_NEVER_USED,
    &PART_NEVER_USED,
    &GREETING_NEVER_USED,
    &PAPER_NEVER_USED,
    &BASE_NEVER_USED,
    &NOTHING_TO_MAKE,
];

/// Things are described by each other, in a circle.
pub static GOES_IN_A_CIRCLE: Rule = error(
    "goes-in-a-circle",
    "Things are described by each other, in a circle.",
    "One of them must be described by itself.",
    "a: {like: b}\nb: {like: a}",
    "a: {size: 1 x 2 in}\nb: {like: a}",
);

/// A layer is placed by another that isn't below it on this card.
pub static UNKNOWN_LAYER: Rule = error(
    "unknown-layer",
    "A layer is placed by another that isn't below it on this card.",
    "Layers are laid from the base upwards; one can be placed by those before it in the list.",
    "- {piece: sill, below: rail}\n- {piece: rail}",
    "- {piece: rail}\n- {piece: sill, below: rail}",
);

/// A layer is placed twice in the same direction.
pub static PLACED_TWICE: Rule = error(
    "placed-twice",
    "A layer is placed twice in the same direction.",
    "It can't be both so far from the left and so far from the right. Keep one.",
    "{piece: tile, left: 1 in, right: 1 in}",
    "{piece: tile, left: 1 in}",
);

/// A direction can't be told on a square.
pub static DIRECTION_UNCLEAR: Rule = error(
    "direction-unclear",
    "A direction can't be told on a square.",
    "Neither side is longer. Say `high` or `wide` for a cut, `up` or `across` for the grain.",
    "halve: lengthwise",
    "halve: level",
);

/// A late cut makes another number of parts than are named.
pub static PART_COUNT: Rule = error(
    "part-count",
    "A late cut makes another number of parts than are named.",
    "Cutting off makes two parts, first the one that comes off. Halves may share one name.",
    "{piece: a, cut off: 1 in wide, makes: {b: {}}}",
    "{piece: a, cut off: 1 in wide, makes: {b: {}, c: {}}}",
);

/// A step of the cutting takes a part that no step before it made.
pub static UNKNOWN_PART: Rule = error(
    "unknown-part",
    "A step of the cutting takes a part that no step before it made.",
    "A part gets its name from `other part` or `call`.",
    "- {keep: side}",
    "- {trim to: 5 in wide, other part: side}\n- {keep: side}",
);

/// A step of the cutting cuts off more than is in hand.
pub static CUT_PAST_THE_EDGE: Rule = error(
    "cut-past-the-edge",
    "A step of the cutting cuts off more than is in hand.",
    "After the steps before it the part in hand is smaller than that.",
    "- {cut off: 9 in high}",
    "- {cut off: 2 in high}",
);

/// A piece is larger than every sheet of its paper.
pub static PIECE_LARGER_THAN_SHEET: Rule = error(
    "piece-larger-than-sheet",
    "A piece is larger than every sheet of its paper.",
    "It can't be cut from it in any way that its pattern allows.",
    "sash: {of: meadow, size: 9 x 2 in}",
    "sash: {of: meadow, size: 8 x 2 in}",
);

/// A card base is larger than every sheet of its paper when it lies open.
pub static BASE_LARGER_THAN_SHEET: Rule = error(
    "base-larger-than-sheet",
    "A card base is larger than every sheet of its paper when it lies open.",
    "Open it has twice the front.",
    "big: {front: 6 x 9 in, made: {of: oat}}",
    "big: {front: 5 x 7 in, made: {of: oat}}",
);

/// A late cut takes off as much as there is, or more.
pub static LATE_CUT_LARGER_THAN_PIECE: Rule = error(
    "late-cut-larger-than-piece",
    "A late cut takes off as much as there is, or more.",
    "Both parts need some width.",
    "{piece: ribbon, cut off: 2 in high}",
    "{piece: ribbon, cut off: 1/2 in high}",
);

/// The stamped words are larger than the label that bears them.
pub static GREETING_LARGER_THAN_LABEL: Rule = error(
    "greeting-larger-than-label",
    "The stamped words are larger than the label that bears them.",
    "They would run over its edge. Take a larger label or a smaller stamp.",
    "{stamped: 3 x 1 in, label: {cut: 2 x 1 in}}",
    "{stamped: 1 3/4 x 3/4 in, label: {cut: 2 x 1 in}}",
);

/// A punch makes an outline that is larger than the strip it takes.
pub static PUNCH_LARGER_THAN_STRIP: Rule = error(
    "punch-larger-than-strip",
    "A punch makes an outline that is larger than the strip it takes.",
    "One of the two figures is wrong.",
    "{outline: circle 3 in, takes strips: 2 in}",
    "{outline: circle 3 in, takes strips: 3 1/4 in}",
);

/// A label is larger than the scraps it is cut from.
pub static LABEL_LARGER_THAN_SCRAP: Rule = warning(
    "label-larger-than-scrap",
    "A label is larger than the scraps it is cut from.",
    "Scraps are asked for by their least size; larger ones may not be at hand.",
    "scraps: at least 1 x 1 in",
    "scraps: at least 3 x 2 in",
);

/// The trimmer's longest cut is shorter than a side of a sheet.
pub static TRIMMER_SHORTER_THAN_SHEET: Rule = advice(
    "trimmer-shorter-than-sheet",
    "The trimmer's longest cut is shorter than a side of a sheet.",
    "The first cut can then only run the other way, or must be made with a knife and a ruler.",
    "longest cut: 8 in",
    "longest cut: 12 in",
);

/// A label is cut from patterned paper.
pub static LABEL_ON_PATTERN: Rule = advice(
    "label-on-pattern",
    "A label is cut from patterned paper.",
    "Stamped words are hard to read on a pattern. Take a plain paper.",
    "of: meadow",
    "of: oat",
);

/// A piece is on no card.
pub static PIECE_NEVER_USED: Rule = warning(
    "piece-never-used",
    "A piece is on no card.",
    "It would be cut for nothing. Give it a `count`, put it on a card, or remove it.",
    "pieces: {sash: …}",
    "layers: [{piece: sash}]",
);

/// A part of a late cut is on no card.
pub static PART_NEVER_USED: Rule = warning(
    "part-never-used",
    "A part of a late cut is on no card.",
    "It would be cut for nothing. Both parts of a cut can be put to use.",
    "makes: {sill: {}, rail: {}}",
    "layers: [{piece: sill}, {piece: rail}]",
);

/// A greeting is on no card.
pub static GREETING_NEVER_USED: Rule = warning(
    "greeting-never-used",
    "A greeting is on no card.",
    "It would not be made. Put it on a card or remove it.",
    "greetings: {hello: …}",
    "layers: [{greeting: hello}]",
);

/// Nothing is cut from a paper.
pub static PAPER_NEVER_USED: Rule = advice(
    "paper-never-used",
    "Nothing is cut from a paper.",
    "It would not be bought. Remove it, or cut something from it.",
    "papers: {oat: …}",
    "pieces: {sash: {of: oat, …}}",
);

/// No card is made on a base.
pub static BASE_NEVER_USED: Rule = advice(
    "base-never-used",
    "No card is made on a base.",
    "It would not be bought or made. Remove it, or make a card on it.",
    "bases: {note: …}",
    "cards: [{name: Hello, base: note}]",
);

/// The description has no cards, and no piece with a count.
pub static NOTHING_TO_MAKE: Rule = error(
    "nothing-to-make",
    "The description has no cards, and no piece with a count.",
    "There is nothing to plan. Add cards, or give pieces a `count`.",
    "title: Meadow Days",
    "pieces: {tile: {of: oat, size: 1 x 1 in, count: 20}}",
);

/// A piece is to lie next to one that is cut from another paper.
pub static NEIGHBOUR_OF_OTHER_PAPER: Rule = error(
    "neighbour-of-other-paper",
    "A piece is to lie next to one that is cut from another paper.",
    "The pattern can only run on from one piece to the next within one sheet.",
    "side: {of: meadow, size: 2 x 3 in, next to: {piece: tile, side: right}} # tile is of oat",
    "side: {of: oat, size: 2 x 3 in, next to: {piece: tile, side: right}}",
);

/// Two pieces that lie next to each other don't have the same height, or width.
pub static NEIGHBOURS_NOT_FLUSH: Rule = error(
    "neighbours-not-flush",
    "Two pieces that lie next to each other don't have the same height, or width.",
    "They come off the sheet together and are then cut apart, so the side where they meet is as long on both.",
    "tile: {size: 3 x 3 in}\nside: {size: 2 x 4 in, next to: {piece: tile, side: right}}",
    "tile: {size: 3 x 4 in}\nside: {size: 2 x 4 in, next to: {piece: tile, side: right}}",
);

/// Neighbours lie partly side by side and partly one above another.
pub static NEIGHBOURS_ROUND_A_CORNER: Rule = error(
    "neighbours-round-a-corner",
    "Neighbours lie partly side by side and partly one above another.",
    "Neighbours come off the sheet as one strip, in one row.",
    "b: {next to: {piece: a, side: right}}\nc: {next to: {piece: b, side: bottom}}",
    "b: {next to: {piece: a, side: right}}\nc: {next to: {piece: b, side: right}}",
);

/// Two pieces are to lie on the same side of a third.
pub static NEIGHBOURS_PLACE_TAKEN: Rule = error(
    "neighbours-place-taken",
    "Two pieces are to lie on the same side of a third.",
    "Only one of them can. Put the other on the opposite side, or next to the first of them.",
    "b: {next to: {piece: a, side: right}}\nc: {next to: {piece: a, side: right}}",
    "b: {next to: {piece: a, side: right}}\nc: {next to: {piece: b, side: right}}",
);

/// The place that a piece asks for lies beyond the edge of its sheet.
pub static REGION_OFF_THE_SHEET: Rule = error(
    "region-off-the-sheet",
    "The place that a piece asks for lies beyond the edge of its sheet.",
    "What a piece shows must be on the sheet as a whole.",
    "sheet: 8 x 8 in … tower: {size: 3 x 4 in, region: {left: 6 in, top: 1 in}}",
    "sheet: 8 x 8 in … tower: {size: 3 x 4 in, region: {left: 5 in, top: 1 in}}",
);

/// Pieces that lie next to each other each ask for a place on the sheet.
pub static REGION_ASKED_TWICE: Rule = error(
    "region-asked-twice",
    "Pieces that lie next to each other each ask for a place on the sheet.",
    "They come off the sheet as one. Say the place of one of them; that of the others follows from it.",
    "tower: {region: {left: 1 in, top: 1 in}}\nboat: {next to: {piece: tower, side: right}, region: {left: 5 in, top: 1 in}}",
    "tower: {region: {left: 1 in, top: 1 in}}\nboat: {next to: {piece: tower, side: right}}",
);

/// A second pass of the punch leaves nothing of the label.
pub static NARROWED_TO_NOTHING: Rule = error(
    "narrowed-to-nothing",
    "A second pass of the punch leaves nothing of the label.",
    "What is left is where both passes overlap, so less must come off than the punch makes.",
    "label: tag   # 2 x 1 in\nnarrowed: {take off: 1 in, side: top}",
    "narrowed: {take off: 1/4 in, side: top}",
);

/// The halves of a mat are slid the wrong way.
pub static MAT_SLID_THE_WRONG_WAY: Rule = error(
    "mat-slid-the-wrong-way",
    "The halves of a mat are slid the wrong way.",
    "Slid together the mat gets smaller, slid apart it gets larger. A narrowed label wants the one, a whole one the other.",
    "label: tag\nmat: {of: slate, punched with: tag, halved: top and bottom, slid: together}",
    "mat: {of: slate, punched with: tag, halved: top and bottom, slid: apart}",
);

/// A punched mat doesn't reach around its label.
pub static LABEL_OVER_MAT: Rule = error(
    "label-over-mat",
    "A punched mat doesn't reach around its label.",
    "Halving and sliding changes one direction only; in the other the punch must be at least as large as the label.",
    "label: large tag\nmat: {of: slate, punched with: small tag}",
    "label: small tag\nmat: {of: slate, punched with: large tag}",
);

/// The seam between the halves of a mat is seen beside the label.
pub static MAT_SEAM_SHOWS: Rule = warning(
    "mat-seam-shows",
    "The seam between the halves of a mat is seen beside the label.",
    "The label hides the seam only where the mat shows no border at its ends. Halve the mat the other way, or take it as it looks.",
    "mat: {of: slate, punched with: large tag, halved: top and bottom}",
    "mat: {of: slate, punched with: tag, halved: top and bottom}",
);
