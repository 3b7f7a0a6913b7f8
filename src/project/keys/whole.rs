//! The keys of the description as a whole.

use crate::project::keys::pictures::PHOTO_OF;
use crate::project::keys::{Group, Key, Takes, key};

/// What is done ahead.
const READER: Takes = Takes::Any(&[Takes::SomeOf(WORKS), Takes::Group("all but")]);

/// The words for kinds of work.
pub(in crate::project) const WORKS: &[&str] = &[
    "cut",
    "score",
    "fold",
    "stamp",
    "punch",
    "cut again",
    "layer",
    "attach",
    "stamp inside",
];

/// Who cuts the sheets.
const CUTTER: Takes = Takes::OneOf(&["maker", "reader"]);

pub(super) static PROJECT: Group = Group {
    name: "project",
    a: "a description",
    keys: &[
        key("title", Takes::Told, "needed", "What the set is called.", "Meadow Days"),
        key(
            "about",
            Takes::Told,
            "",
            "One or two sentences for the cover.",
            "Six note cards from a single sheet.",
        ),
        key(
            "photo",
            PHOTO_OF,
            "",
            "A photo of the finished set, for the cover.",
            "photos/set.png",
        ),
        key(
            "unit",
            Takes::OneOf(&["in", "mm"]),
            "none; lengths are printed in the unit of the first one",
            "What a number without a unit means, and which unit is printed first.",
            "in",
        ),
        key(
            "kits",
            Takes::Count(1, 10_000),
            "1",
            "How many people's sets are made.",
            "12",
        ),
        key(
            "spares",
            Takes::Any(&[Takes::OneOf(&["none", "usual"]), Takes::Count(0, 10_000)]),
            "usual: none for one kit, else one kit in ten",
            "How many kits are made beyond those.",
            "none",
        ),
        key(
            "sheets alike",
            Takes::YesNo,
            "no: as few sheets as can be",
            "Every sheet of a paper is cut the same way: fewer steps, sometimes more sheets.",
            "true",
        ),
        key(
            "edition",
            Takes::Told,
            "",
            "Stands in the foot of every page, so that an old printout is known as one.",
            "2",
        ),
        key(
            "language",
            Takes::WordsOrList,
            "en",
            "The language of the printed words, as in BCP 47; of several, one handout each.",
            "[en, de]",
        ),
        key(
            "fonts",
            Takes::WordsOrList,
            "",
            "Font files below this folder, tried in order for characters that ours lack.",
            "[fonts/brush.ttf]",
        ),
        key(
            "handed out by",
            Takes::Group("giver"),
            "",
            "Whom a reader can ask.",
            "{name: The harvest table, reach: the note on the tea urn}",
        ),
        key(
            "use",
            Takes::WordsOrList,
            "",
            "Files in this folder or below it with papers, bases and tools of yours.",
            "my-supplies.yaml",
        ),
        key(
            "papers",
            Takes::Named("paper"),
            "",
            "Every paper, by the name it goes by.",
            "{oat: {kind: cardstock, sheet: letter}}",
        ),
        key(
            "bases",
            Takes::Named("base"),
            "",
            "Every card base, by name.",
            "{note: {format: a2-us, bought: {pack: 12}}}",
        ),
        key(
            "tools",
            Takes::Named("tool"),
            "",
            "Every tool, and everything that is used up.",
            "{scissors: {kind: scissors}}",
        ),
        key(
            "pieces",
            Takes::Named("piece"),
            "",
            "Every piece that is cut from a sheet; how many is counted from the cards.",
            "{sash: {of: oat, size: 5 1/2 x 2 in}}",
        ),
        key(
            "late cuts",
            Takes::List("late cut"),
            "",
            "Pieces that are cut again, at the card or ahead.",
            "[{piece: sash, halve: lengthwise, makes: {cord: {}}}]",
        ),
        key(
            "greetings",
            Takes::Named("greeting"),
            "",
            "Words on labels, by name.",
            "{hello: {words: Hello, label: {cut: 2 x 1 in}, of: oat}}",
        ),
        key(
            "cards",
            Takes::List("card"),
            "",
            "The cards, in the order in which they are made.",
            "[{name: Hello, base: note, stands: tall}]",
        ),
        key(
            "cutting",
            Takes::NamedLists("step"),
            "found for you",
            "Your own way of cutting a paper, step by step.",
            "{oat: [{cut off: 2 in high, for: sash}]}",
        ),
        key(
            "done ahead",
            Takes::Group("ahead"),
            "nothing",
            "What is prepared before a packet reaches its reader.",
            "{class: [cut, punch]}",
        ),
        key(
            "cut by",
            Takes::Group("cut by"),
            "maker",
            "Whether the sheets of all kits are cut together, or each reader cuts her own.",
            "{travel: reader}",
        ),
        key(
            "cautions",
            Takes::ToldOrList,
            "",
            "Cautions of your own, printed with the usual ones.",
            "[The heat tool stays at the host's table.]",
        ),
        key("tips", Takes::ToldOrList, "", "Tips for the whole set.", "[Cut all first.]"),
        key(
            "currency",
            Takes::Words,
            "",
            "What prices are given in, as it is printed.",
            "EUR",
        ),
        key(
            "cards made",
            Takes::OneOf(&["one by one", "in batches"]),
            "one by one",
            "Whether one card is made after the other, or all get their first layer first.",
            "in batches",
        ),
        key(
            "gift set",
            Takes::Group("gift set"),
            "",
            "The finished cards are given as a set, in a band or a box.",
            "{kind: band, width: 1 1/2 in}",
        ),
        key(
            "minutes",
            Takes::Group("minutes"),
            "estimates, which are printed as such",
            "How long each kind of work takes, once.",
            "{attach: 3 min, class lasts: 90 min}",
        ),
    ],
};

pub(super) static SUPPLIES: Group = Group {
    name: "supplies",
    a: "a file that is used",
    keys: &[
        key(
            "unit",
            Takes::OneOf(&["in", "mm"]),
            "none",
            "What a number without a unit means in this file.",
            "in",
        ),
        key("use", Takes::WordsOrList, "", "Further files.", "my-papers.yaml"),
        key(
            "papers",
            Takes::Named("paper"),
            "",
            "Papers; those that a description names are taken over.",
            "{oat: {kind: cardstock, sheet: letter}}",
        ),
        key(
            "bases",
            Takes::Named("base"),
            "",
            "Card bases, likewise.",
            "{note: {format: a2-us, bought: {pack: 12}}}",
        ),
        key(
            "tools",
            Takes::Named("tool"),
            "",
            "Tools, likewise; of those that needn't be named, the first of each kind.",
            "{scissors: {kind: scissors}}",
        ),
    ],
};

pub(super) static GIVER: Group = Group {
    name: "giver",
    a: "`handed out by`",
    keys: &[
        key("name", Takes::Told, "needed", "A name to print.", "The harvest table"),
        key("reach", Takes::Told, "", "How to reach them.", "the note on the tea urn"),
    ],
};

pub(super) static AHEAD: Group = Group {
    name: "ahead",
    a: "`done ahead`",
    keys: &[
        key("class", READER, "nothing", "For a class table.", "[cut, punch]"),
        key("kit", READER, "nothing", "For the buyer of a kit.", "{all but: [attach]}"),
        key("travel", READER, "nothing", "For someone on a journey.", "[cut]"),
    ],
};

pub(super) static ALL_BUT: Group = Group {
    name: "all but",
    a: "what is done ahead",
    keys: &[key(
        "all but",
        Takes::SomeOf(WORKS),
        "needed",
        "Everything is done ahead but these.",
        "[fold, attach]",
    )],
};

pub(super) static CUT_BY: Group = Group {
    name: "cut by",
    a: "`cut by`",
    keys: &[
        key("class", CUTTER, "maker", "For a class table.", "maker"),
        key("kit", CUTTER, "maker", "For the buyer of a kit.", "maker"),
        key("travel", CUTTER, "maker", "For someone on a journey.", "reader"),
    ],
};

pub(super) static GIFT: Group = Group {
    name: "gift set",
    a: "`gift set`",
    keys: &[
        key(
            "kind",
            Takes::OneOf(&["band", "box"]),
            "needed",
            "What holds the stack of cards.",
            "band",
        ),
        key(
            "width",
            Takes::Length,
            "1 1/2 in or 40 mm",
            "How wide a band is.",
            "1 1/4 in",
        ),
    ],
};

/// A row for a time.
const fn time(
    name: &'static str,
    default: &'static str,
    about: &'static str,
    example: &'static str,
) -> Key {
    key(name, Takes::Words, default, about, example)
}

pub(super) static MINUTES: Group = Group {
    name: "minutes",
    a: "`minutes`",
    keys: &[
        time("set up", "10 min", "Welcome, and laying out.", "15 min"),
        time("cut", "4 min", "Cutting one sheet.", "5 min"),
        time("score", "1 min", "Scoring one base.", "1 min"),
        time("fold", "30 s", "Folding one base.", "30 s"),
        time("stamp", "1 min", "Stamping one greeting.", "1 min"),
        time("punch", "30 s", "Punching one label.", "30 s"),
        time("cut again", "1 min", "Cutting one piece again.", "1 min"),
        time("layer", "1 min", "Putting one label on its mat.", "1 min"),
        time("attach", "2 min", "Fixing one layer.", "2 min"),
        time("stamp inside", "1 min", "The words inside one card.", "2 min"),
        time("clean up", "10 min", "Putting things away.", "10 min"),
        time("class lasts", "90 min", "How long the class may last.", "2 h"),
    ],
};

/// A row for a key of a cutting step.
const fn step(
    name: &'static str,
    takes: Takes,
    about: &'static str,
    example: &'static str,
) -> Key {
    key(name, takes, "", about, example)
}

pub(super) static STEP: Group = Group {
    name: "step",
    a: "a step of the cutting",
    keys: &[
        step(
            "take",
            Takes::Words,
            "Takes a part in hand that an earlier step named.",
            "side",
        ),
        step(
            "trim to",
            Takes::Length,
            "Trims the part in hand to an extent, wide or high.",
            "5 1/2 in wide",
        ),
        step(
            "other part",
            Takes::Words,
            "What the part that comes off is called.",
            "side",
        ),
        step(
            "cut off",
            Takes::Length,
            "Cuts so much off, wide or high; the rest stays in hand.",
            "2 in high",
        ),
        step("times", Takes::Count(1, 1000), "How often; once if it isn't said.", "2"),
        step(
            "halve",
            Takes::OneOf(&[
                "lengthwise",
                "crosswise",
                "along",
                "across",
                "level",
                "upright",
            ]),
            "Halves the part in hand.",
            "across",
        ),
        step("for", Takes::Name("piece"), "The piece that comes of it.", "sash"),
        step("call", Takes::Words, "What the part that comes off is called.", "band"),
        step("keep", Takes::Words, "Keeps a part, or the `rest`, as an offcut.", "rest"),
    ],
};
