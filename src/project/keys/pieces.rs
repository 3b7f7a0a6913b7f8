//! The keys of pieces, late cuts and greetings.

use crate::project::keys::{Group, PRINTED, Takes, key};

/// For keys that another thing of the kind may say.
const UNLESS_LIKE: &str = "needed, unless it is `like` another";

pub(super) static PIECE: Group = Group {
    name: "piece",
    a: "a piece",
    keys: &[
        key(
            "of",
            Takes::Name("paper"),
            UNLESS_LIKE,
            "The paper it is cut from.",
            "meadow",
        ),
        key(
            "size",
            Takes::Any(&[Takes::Size, Takes::Group("around")]),
            UNLESS_LIKE,
            "Width x height as it lies with the pattern upright; or by another piece.",
            "5 1/2 x 2 in",
        ),
        key(
            "like",
            Takes::Name("piece"),
            "",
            "Another piece that it is like in all that isn't said.",
            "sash",
        ),
        key(
            "count",
            Takes::Count(1, 10_000),
            "as the cards need",
            "How many are in a kit, if the cards don't say.",
            "20",
        ),
        key(
            "spare",
            Takes::Count(0, 10_000),
            "0",
            "How many more than the cards need are in each kit.",
            "1",
        ),
        key(
            "pattern",
            Takes::OneOf(&["as it runs", "any way"]),
            "as it runs",
            "Whether the way the pattern runs binds this piece.",
            "any way",
        ),
        key(
            "next to",
            Takes::Group("next to"),
            "",
            "The piece that it lies next to on the sheet, so that the pattern runs on.",
            "{piece: sash, side: bottom}",
        ),
        key(
            "region",
            Takes::Group("region"),
            "",
            "Where on the sheet it lies, to show one place of the pattern.",
            "{left: 2 in, top: 1 in}",
        ),
        PRINTED,
    ],
};

pub(super) static NEXT_TO: Group = Group {
    name: "next to",
    a: "`next to`",
    keys: &[
        key("piece", Takes::Name("piece"), "needed", "The other piece.", "sash"),
        key(
            "side",
            Takes::OneOf(&["left", "right", "top", "bottom"]),
            "needed",
            "On which side of the other piece, as the sheet lies when it is cut.",
            "right",
        ),
    ],
};

pub(super) static REGION: Group = Group {
    name: "region",
    a: "a place on the sheet",
    keys: &[
        key(
            "left",
            Takes::Length,
            "needed",
            "How far the piece lies from the left edge of the sheet, first face up.",
            "2 in",
        ),
        key("top", Takes::Length, "needed", "How far it lies from the top edge.", "1 in"),
    ],
};

pub(super) static AROUND: Group = Group {
    name: "around",
    a: "a size by another piece",
    keys: &[
        key("around", Takes::Name("piece"), "", "The piece it shows around.", "sash"),
        key(
            "border",
            Takes::Length,
            "needed with `around`",
            "How much of it shows all round.",
            "1/8 in",
        ),
        key("half of", Takes::Name("piece"), "", "It is half as large.", "sash"),
        key("third of", Takes::Name("piece"), "", "It is a third.", "sash"),
        key("quarter of", Takes::Name("piece"), "", "It is a quarter.", "sash"),
        key(
            "cut",
            Takes::OneOf(&["lengthwise", "crosswise"]),
            "crosswise",
            "Which way the cuts between the shares run.",
            "lengthwise",
        ),
    ],
};

const WAYS: &[&str] = &["lengthwise", "crosswise", "along", "across", "level", "upright"];

pub(super) static LATE: Group = Group {
    name: "late cut",
    a: "a late cut",
    keys: &[
        key("piece", Takes::Name("piece"), "needed", "The piece that is cut.", "ribbon"),
        key(
            "cut off",
            Takes::Length,
            "",
            "How much comes off: so much high, wide, lengthwise or crosswise.",
            "3/8 in high",
        ),
        key(
            "halve",
            Takes::OneOf(WAYS),
            "",
            "Cuts it into halves instead.",
            "lengthwise",
        )
        .or("halved"),
        key(
            "thirds",
            Takes::OneOf(WAYS),
            "",
            "Cuts it into thirds instead.",
            "crosswise",
        ),
        key(
            "makes",
            Takes::Named("part"),
            "needed",
            "What the parts are called, first the one that comes off.",
            "{sill: {showing: dots}, cord: {}}",
        ),
        key("with", Takes::Name("tool"), "", "What it is cut with.", "scissors"),
        key(
            "when",
            Takes::OneOf(&["at the card", "ahead"]),
            "ahead",
            "When.",
            "at the card",
        ),
    ],
};

pub(super) static PART: Group = Group {
    name: "part",
    a: "a part of a late cut",
    keys: &[
        key("showing", Takes::Words, "the first face", "The face that shows.", "dots"),
        PRINTED,
    ],
};

pub(super) static GREETING: Group = Group {
    name: "greeting",
    a: "a greeting",
    keys: &[
        key("words", Takes::Told, UNLESS_LIKE, "The words.", "Thank you"),
        key(
            "stamped",
            Takes::Size,
            "",
            "The size of the printed words.",
            "1 7/8 x 1/2 in",
        ),
        key("stamps", Takes::Name("tool"), "", "The set the stamp is in.", "kind words"),
        key("ink", Takes::Name("tool"), "", "The ink it is stamped in.", "plum ink"),
        key(
            "label",
            Takes::Any(&[Takes::Name("tool"), Takes::Group("label")]),
            UNLESS_LIKE,
            "The shape that bears the words: a punch, or a size to cut.",
            "{cut: 2 x 1 in}",
        ),
        key("of", Takes::Name("paper"), UNLESS_LIKE, "What the label is made of.", "oat"),
        key(
            "narrowed",
            Takes::Any(&[Takes::Group("narrowed"), Takes::OneOf(&["none"])]),
            "",
            "A second pass of the punch makes the label narrower.",
            "none",
        ),
        key(
            "mat",
            Takes::Any(&[Takes::Group("mat"), Takes::OneOf(&["none"])]),
            "",
            "A mat under the label, cut or punched.",
            "{of: slate, border: 1/8 in}",
        ),
        key(
            "like",
            Takes::Name("greeting"),
            "",
            "Another greeting that it is like in all that isn't said.",
            "thanks",
        ),
    ],
};

pub(super) static LABEL: Group = Group {
    name: "label",
    a: "a label",
    keys: &[
        key("cut", Takes::Size, "needed", "The size it is cut to.", "2 x 1 in"),
        key(
            "shape",
            Takes::OneOf(&["rectangle", "rounded", "circle", "oval", "tag"]),
            "rectangle",
            "The shape it is cut to.",
            "oval",
        ),
    ],
};

pub(super) static NARROWED: Group = Group {
    name: "narrowed",
    a: "a second pass",
    keys: &[
        key(
            "take off",
            Takes::Length,
            "needed",
            "How much the second pass takes off: what is left is where both overlap.",
            "3/8 in",
        ),
        key(
            "side",
            Takes::OneOf(&["top", "bottom", "left", "right"]),
            "needed",
            "At which side of the label.",
            "top",
        ),
        key(
            "held with",
            Takes::Words,
            "",
            "What holds the label in the punch.",
            "a slip of paper",
        ),
    ],
};

pub(super) static MAT: Group = Group {
    name: "mat",
    a: "a mat",
    keys: &[
        key(
            "of",
            Takes::Name("paper"),
            "needed",
            "What it is cut or punched from.",
            "slate",
        ),
        key(
            "border",
            Takes::Length,
            "needed if it is cut, else 1/16 in or 1.5 mm",
            "How much shows all round, or is wanted if it is punched.",
            "1/16 in",
        ),
        key(
            "punched with",
            Takes::Name("tool"),
            "it is cut",
            "The punch that makes it.",
            "tag",
        ),
        key(
            "halved",
            Takes::OneOf(&["top and bottom", "left and right"]),
            "it stays whole",
            "Into which halves a punched mat is cut.",
            "top and bottom",
        ),
        key(
            "slid",
            Takes::OneOf(&["together", "apart"]),
            "as the border takes",
            "Which way the halves are slid.",
            "together",
        ),
    ],
};
