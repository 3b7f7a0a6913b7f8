//! The keys of cards and layers.

use crate::project::keys::pictures::PHOTO_OF;
use crate::project::keys::{Group, Takes, key};

pub(super) static CARD: Group = Group {
    name: "card",
    a: "a card",
    keys: &[
        key("name", Takes::Told, "needed", "What it is called.", "Thank you"),
        key(
            "base",
            Takes::Name("base"),
            "the base, if there is only one",
            "What it is made on.",
            "note",
        ),
        key("stands", Takes::OneOf(&["tall", "wide"]), "tall", "How it stands.", "wide"),
        key("count", Takes::Count(1, 1000), "1", "How many of it are in a kit.", "2"),
        key(
            "layers",
            Takes::List("layer"),
            "",
            "What is on the front, from the base upwards.",
            "[{piece: sash, bottom: 1/2 in}]",
        ),
        key(
            "extras",
            Takes::List("extra"),
            "",
            "Ribbon by length, embellishments by count, put on last.",
            "[{what: brads, count: 3}]",
        ),
        key("inside", Takes::Group("inside"), "", "What is inside.", "{words: Hello}"),
        key(
            "envelope",
            Takes::List("layer"),
            "",
            "What is put on its envelope.",
            "[{piece: tile}]",
        ),
        key("photo", PHOTO_OF, "", "A photo of the finished card.", "photos/hello.png"),
        key(
            "tips",
            Takes::ToldOrList,
            "",
            "Tips for this card.",
            "[Leave a line of the base.]",
        ),
    ],
};

pub(super) static INSIDE: Group = Group {
    name: "inside",
    a: "the inside of a card",
    keys: &[
        key(
            "words",
            Takes::Told,
            "",
            "The words to stamp or write there.",
            "You made our autumn",
        ),
        key("ink", Takes::Name("tool"), "", "The ink they are stamped in.", "plum ink"),
        key(
            "choose",
            Takes::OneOf(&["when the card is sent", "later"]),
            "",
            "The words are chosen later.",
            "when the card is sent",
        ),
        key("among", Takes::ToldOrList, "", "The words to choose from.", "[Write soon]"),
        key(
            "layers",
            Takes::List("layer"),
            "",
            "What is fixed inside.",
            "[{piece: tile}]",
        ),
    ],
};

pub(super) static EXTRA: Group = Group {
    name: "extra",
    a: "an extra",
    keys: &[
        key(
            "what",
            Takes::Name("tool"),
            "needed",
            "Something among the tools: ribbon, embellishments.",
            "brads",
        ),
        key(
            "count",
            Takes::Count(1, 1000),
            "1, unless it has a length",
            "How many.",
            "3",
        ),
        key("length", Takes::Length, "", "How long, of what comes by length.", "8 in"),
        key(
            "where",
            Takes::Words,
            "",
            "Where it goes, and how, for the step.",
            "at the corners of the sash",
        ),
    ],
};

pub(super) static LAYER: Group = Group {
    name: "layer",
    a: "a layer",
    keys: &[
        key(
            "piece",
            Takes::Name("piece"),
            "",
            "The piece or part that is placed.",
            "sash",
        ),
        key("greeting", Takes::Name("greeting"), "", "Or the greeting.", "thanks"),
        key(
            "called",
            Takes::Words,
            "its name",
            "What later layers call it.",
            "first tile",
        ),
        key("showing", Takes::Words, "the first face", "The face that shows.", "dots"),
        key(
            "turned",
            Takes::OneOf(&["left", "right", "over"]),
            "not",
            "Turned a quarter to the left or right, or upside down.",
            "left",
        ),
        key(
            "pattern",
            Takes::OneOf(&["upright"]),
            "upright",
            "It isn't turned.",
            "upright",
        ),
        key("left", Takes::Length, "", "So far in from the left side.", "1/4 in"),
        key("right", Takes::Length, "", "So far in from the right side.", "1/4 in"),
        key("top", Takes::Length, "", "So far in from the top.", "1 in"),
        key("bottom", Takes::Length, "", "So far in from the bottom.", "1/2 in"),
        key(
            "across",
            Takes::OneOf(&["center", "evenly"]),
            "center",
            "From left to right; `evenly` shares the width among layers that are \
             written one after the other.",
            "evenly",
        ),
        key(
            "up",
            Takes::OneOf(&["center", "evenly"]),
            "center",
            "From bottom to top; `evenly` shares the height, the first one at the top.",
            "center",
        ),
        key("along", Takes::OneOf(&["fold"]), "", "It lies against the fold.", "fold"),
        key(
            "edge to edge",
            Takes::YesNo,
            "no",
            "It reaches from one edge of the front to the other.",
            "true",
        ),
        key("below", Takes::Words, "", "Below an earlier layer.", "rail"),
        key("above", Takes::Words, "", "Above an earlier layer.", "rail"),
        key("left of", Takes::Words, "", "To the left of an earlier layer.", "rail"),
        key("right of", Takes::Words, "", "To the right of an earlier layer.", "rail"),
        key("gap", Takes::Length, "0", "How far from that layer.", "1/8 in"),
        key(
            "straddling",
            Takes::Words,
            "",
            "With its middle on a side of an earlier layer.",
            "top of rail",
        ),
        key(
            "centered on",
            Takes::Words,
            "",
            "In the middle of an earlier layer.",
            "rail",
        )
        .or("centred on"),
        key(
            "within",
            Takes::Words,
            "the front",
            "An earlier layer from whose sides it is measured.",
            "sash",
        ),
        key(
            "behind",
            Takes::Words,
            "",
            "A later layer that it shows around, such as the mat of a picture.",
            "tile",
        ),
        key(
            "trim flush",
            Takes::YesNo,
            "no",
            "It may hang over and is trimmed flush from the inside.",
            "true",
        ),
        key("raised", Takes::Words, "no", "Raised on so many foam squares.", "4 squares"),
        key("with", Takes::Name("tool"), "", "What it is fixed with.", "tape runner"),
    ],
};
