//! The keys of papers, bases and tools.

use crate::project::keys::pictures::PICTURES;
use crate::project::keys::{Group, Key, PRINTED, Takes, key};

const MANY: Takes = Takes::Count(1, 100_000);
const PACKED: Takes = Takes::Any(&[MANY, Takes::Group("pack")]);

/// Which way a pattern stands.
const RUNS: Takes = Takes::OneOf(&["up", "both ways", "any"]);

/// What something costs, whatever it is.
const PRICE: Key = key(
    "price",
    Takes::Words,
    "",
    "What a pack costs, or one where it is not sold in packs.",
    "3.90",
);

/// How much of it need not be bought.
const ON_HAND: Key = key(
    "on hand",
    Takes::Count(0, 1_000_000),
    "0",
    "How many are there already and need not be bought.",
    "4",
);

pub(super) static PAPER: Group = Group {
    name: "paper",
    a: "a paper",
    keys: &[
        key(
            "kind",
            Takes::OneOf(&["patterned", "cardstock", "plain"]),
            "patterned with faces or `runs`, else plain",
            "What sort of paper it is.",
            "patterned",
        ),
        key(
            "sheet",
            Takes::Any(&[Takes::Size, Takes::Words]),
            "",
            "The size of a sheet with the pattern upright, or its format.",
            "8 x 8 in",
        ),
        key(
            "sheets",
            Takes::Rows(&Takes::Any(&[Takes::Words, Takes::Group("sheet")])),
            "",
            "Several sizes of sheet; the first is the one that is bought.",
            "[letter, {size: 6 x 11 in, at hand: 2}]",
        ),
        key(
            "scraps",
            Takes::Words,
            "",
            "Instead of sheets: scraps one has lying about, and how large.",
            "at least 2 3/4 x 1 1/2 in",
        ),
        key(
            "faces",
            Takes::Named("face"),
            "",
            "The two sides of the paper; the first lies up when cutting.",
            "{rows: {runs: up}, dots: {runs: any}}",
        ),
        key(
            "runs",
            RUNS,
            "up on patterned paper, else any",
            "Which way the pattern stands, on a paper with one face.",
            "up",
        ),
        key(
            "weight",
            Takes::Words,
            "",
            "Its weight, in gsm, or in lb with the grade.",
            "80 lb cover",
        ),
        key("thickness", Takes::Length, "", "How thick a sheet is.", "0.18 mm"),
        key(
            "grain",
            Takes::OneOf(&["long", "short", "up", "across"]),
            "",
            "Which way the fibres run: along the long or short side, or as the sheet lies.",
            "long",
        ),
        key(
            "pack",
            PACKED,
            "",
            "How many sheets are in a pack, and of how many designs.",
            "{sheets: 24, designs: 12}",
        ),
        key("colour", Takes::Words, "", "Its colour, for drawings.", "\"#7a9a6b\"")
            .or("color"),
        key(
            "pictures",
            PICTURES,
            "",
            "A picture of each face, or of the only one; drawings show it.",
            "scans/rows.png",
        ),
        key("order number", Takes::Words, "", "What to write on the order.", "OAT-25"),
        key(
            "sheets alike",
            Takes::YesNo,
            "as the project says",
            "Cut every sheet of this paper the same way: fewer steps, sometimes more sheets.",
            "true",
        ),
        PRICE,
        ON_HAND,
        PRINTED,
    ],
};

pub(super) static SHEET: Group = Group {
    name: "sheet",
    a: "a sheet",
    keys: &[
        key(
            "size",
            Takes::Any(&[Takes::Size, Takes::Words]),
            "needed",
            "Its size with the pattern upright, or its format.",
            "6 x 11 in",
        ),
        key(
            "at hand",
            Takes::Count(1, 100_000),
            "as many as are needed",
            "How many there are, if no more can be had.",
            "2",
        ),
    ],
};

pub(super) static FACE: Group = Group {
    name: "face",
    a: "a face",
    keys: &[
        key(
            "runs",
            RUNS,
            "up on patterned paper, else any",
            "Which way its pattern stands.",
            "both ways",
        ),
        PRINTED,
    ],
};

pub(super) static PACK: Group = Group {
    name: "pack",
    a: "a pack",
    keys: &[
        key("sheets", MANY, "needed", "How many are in it.", "24"),
        key(
            "designs",
            Takes::Count(1, 1000),
            "1",
            "Of how many designs it has the same number.",
            "12",
        ),
    ],
};

pub(super) static BASE: Group = Group {
    name: "base",
    a: "a card base",
    keys: &[
        PRINTED,
        key("format", Takes::Words, "", "The format of the folded card.", "a2-us"),
        key("front", Takes::Size, "", "The size of its front instead.", "3 1/2 x 5 in"),
        key(
            "bought",
            Takes::Any(&[Takes::YesNo, Takes::Group("bought")]),
            "",
            "It is bought; in packs of how many, and with what.",
            "{pack: 12, with: envelopes}",
        ),
        key("made", Takes::Group("made"), "", "It is cut from a paper.", "{of: oat}"),
        key(
            "comes",
            Takes::OneOf(&["flat", "scored flat", "folded"]),
            "folded if bought, flat if made",
            "In what state it is when work begins.",
            "scored flat",
        ),
        key(
            "fold",
            Takes::OneOf(&["long side", "short side"]),
            "long side",
            "Along which side of the front the fold lies.",
            "long side",
        ),
        key(
            "envelope",
            Takes::Any(&[Takes::Size, Takes::Words]),
            "the usual one if it comes with envelopes, else none",
            "The envelope: its size, its format, `usual` or `none`.",
            "c6",
        ),
        key("order number", Takes::Words, "", "What to write on the order.", "N-10"),
        PRICE,
        ON_HAND,
    ],
};

pub(super) static BOUGHT: Group = Group {
    name: "bought",
    a: "`bought`",
    keys: &[
        key("pack", MANY, "", "How many are in a pack.", "12"),
        key(
            "with",
            Takes::OneOf(&["envelopes"]),
            "",
            "What is in the pack.",
            "envelopes",
        ),
    ],
};

pub(super) static MADE: Group = Group {
    name: "made",
    a: "`made`",
    keys: &[key(
        "of",
        Takes::Name("paper"),
        "needed",
        "The paper it is cut from.",
        "oat",
    )],
};

/// The words for kinds of tools.
pub(in crate::project) const KINDS: &[&str] = &[
    "sliding trimmer",
    "lever trimmer",
    "rotary trimmer",
    "punch",
    "stamp set",
    "ink pad",
    "scissors",
    "knife",
    "scoring tool",
    "folder",
    "glue",
    "tape",
    "foam squares",
    "heat tool",
    "pen",
    "ribbon",
    "embellishments",
    "packaging",
    "other",
];

pub(super) static TOOL: Group = Group {
    name: "tool",
    a: "a tool",
    keys: &[
        key(
            "kind",
            Takes::Any(&[Takes::OneOf(KINDS), Takes::Words]),
            "needed",
            "What sort of tool it is.",
            "sliding trimmer",
        ),
        key(
            "longest cut",
            Takes::Length,
            "no limit",
            "The longest cut that a trimmer makes.",
            "12 in",
        ),
        key(
            "sheets at once",
            Takes::Count(1, 100),
            "1",
            "How many sheets a trimmer cuts in one stroke.",
            "3",
        ),
        key(
            "marks",
            Takes::Length,
            "1/16 in or 1 mm",
            "The spacing of the marks on a trimmer's ruler.",
            "1/16 in",
        ),
        key(
            "narrowest strip",
            Takes::Length,
            "1/4 in or 6 mm",
            "The narrowest strip that a trimmer holds.",
            "1/4 in",
        ),
        key(
            "outline",
            Takes::Words,
            "needed for a punch",
            "What a punch cuts out: rectangle, rounded, circle, oval or tag, and how large.",
            "rounded 2 1/2 x 1 1/4 in",
        ),
        key(
            "reach",
            Takes::Length,
            "no limit",
            "How far from the edge of the paper a punch reaches.",
            "1 3/8 in",
        ),
        key(
            "takes strips",
            Takes::Length,
            "any",
            "The width of strip that a punch takes.",
            "2 3/4 in wide",
        ),
        key("dries", Takes::Words, "0 min", "How long a glue takes to dry.", "20 min"),
        key("thickness", Takes::Length, "", "How thick foam squares are.", "2 mm"),
        key(
            "size",
            Takes::Length,
            "6 mm",
            "How wide and high a foam square is.",
            "1/4 in",
        ),
        key(
            "pack",
            PACKED,
            "",
            "How many foam squares, embellishments or bags are in a pack.",
            "100",
        ),
        key(
            "for each kit",
            Takes::Count(1, 1000),
            "1",
            "How many of a packaging each kit takes, where there are several kits.",
            "2",
        ),
        key("roll", Takes::Length, "", "How much tape or ribbon is on a roll.", "8 m"),
        key("colour", Takes::Words, "", "The colour of an ink or a pen.", "\"#4a2c4f\"")
            .or("color"),
        key("instead", Takes::Told, "", "What does instead.", "a knife and a ruler"),
        key("order number", Takes::Words, "", "What to write on the order.", "F-2"),
        PRICE,
        ON_HAND,
        key(
            "shared by",
            Takes::Count(1, 10_000),
            "all",
            "How many people share one at the table.",
            "4",
        ),
        key(
            "enough for",
            Takes::Count(1, 100_000),
            "all",
            "How many cards one tape, glue, ink or pen is enough for.",
            "200",
        ),
        PRINTED,
    ],
};
