//! Documents to lay out: an invented handout with every kind of block, and stress.

use leafwright::document::*;
use leafwright::geom::Side;

use crate::drawings::{
    area, boxed, cut_plan, dimension, face, front, in_hand, name, rulers, shapes,
};

/// Plain words.
pub(crate) fn words(text: &str) -> Text {
    vec![Inline::plain(text)]
}

/// A figure at the largest scale that fits.
pub(crate) fn figure(drawing: Drawing, caption: &str) -> Figure {
    Figure {
        drawing,
        alt: format!("A drawing of {caption}"),
        caption: Some(words(caption)),
        scale: ScaleWish::Largest,
        says_scale: true,
    }
}

fn foot() -> Foot {
    Foot {
        left: "Meadow Days, edition 2".into(),
        page_of: "Page {page} of {pages}".into(),
        continued: "continued".into(),
        scale: "Scale {scale}".into(),
        rulers: ["in".into(), "mm".into()],
    }
}

fn column(head: &str, align: Align) -> Column {
    Column { head: words(head), align }
}

/// What is needed, as a table with boxes to tick.
pub(crate) fn supplies(rows: usize) -> Table {
    let things = [
        ("1", "8 × 8 in sheet, patterned", "two faces: rows and dots"),
        ("6", "note bases, 4 1/4 × 5 1/2 in", "scored, with envelopes"),
        ("1", "strip of oat cardstock, 2 3/4 × 11 in", "for six labels"),
        ("24", "foam squares, 1/4 in", ""),
        (
            "1",
            "scrap of slate cardstock",
            "at least 2 3/4 × 1 1/2 in, for the mat behind Thank you",
        ),
    ];
    let rows = (0..rows)
        .map(|index| {
            let (count, what, note) = things[index % things.len()];
            vec![Vec::new(), words(count), words(what), words(note)]
        })
        .collect();
    Table {
        summary: "What you need".into(),
        columns: vec![
            column("", Align::Start),
            column("Count", Align::End),
            column("What", Align::Start),
            column("Note", Align::Start),
        ],
        rows,
    }
}

fn step(number: usize, text: &str, aside: &str, figure: Option<Figure>) -> Step {
    let aside = (!aside.is_empty()).then(|| words(aside));
    Step { number: number.to_string(), text: words(text), aside, figure }
}

fn cutting() -> Vec<Step> {
    let shared = |drawing: Drawing, alt: &str| Figure {
        drawing,
        alt: alt.into(),
        caption: None,
        scale: ScaleWish::Shared(1),
        says_scale: false,
    };
    vec![
        step(
            1,
            "Lay the sheet with the rows upright and its bottom edge against the rule. Set the left edge at 5 1/2 in and cut. Put the part on the right aside for the banner.",
            "5 1/2 in",
            Some(shared(in_hand(64, 64, 44, "5 1/2 in"), "The sheet, cut at 5 1/2 in")),
        ),
        step(
            2,
            "Turn the wide part a quarter to the right. Set its edge at 2 in and cut once: this is the sash.",
            "2 in",
            Some(shared(in_hand(64, 44, 16, "2 in"), "The wide part, cut at 2 in")),
        ),
        step(
            3,
            "Set the edge at 1 1/4 in and cut twice: two ribbons.",
            "1 1/4 in, twice",
            Some(shared(
                in_hand(48, 44, 10, "1 1/4 in"),
                "What is left, cut at 1 1/4 in",
            )),
        ),
        step(4, "Halve what is left: two tiles of 2 3/4 × 3 1/2 in.", "2 3/4 in", None),
    ]
}

fn card(title: &str, tall: bool) -> Vec<Block> {
    vec![
        Block::Heading { level: 2, text: words(title), anchor: None },
        Block::Beside(
            figure(front(tall, "E"), "The front"),
            vec![Block::Steps(vec![
                step(
                    1,
                    "Glue the sash across the front, edge to edge, 1 in above the bottom.",
                    "",
                    None,
                ),
                step(
                    2,
                    "Stamp the greeting in plum ink on the label and let it dry for a minute.",
                    "",
                    None,
                ),
                step(
                    3,
                    "Raise the label on four foam squares, in the middle of the sash.",
                    "",
                    None,
                ),
                step(4, "Write inside: You made our autumn.", "", None),
            ])],
        ),
    ]
}

fn section(anchor: &str, title: &str, blocks: Vec<Block>) -> Section {
    Section { anchor: anchor.into(), title: words(title), start: Start::Below, blocks }
}

/// A handout with every kind of block.
pub(crate) fn handout() -> Document {
    let mut link = Inline::plain("the cut plan");
    link.link = Some("cut".into());
    let fronts =
        [("Thank you", false), ("Hello", false), ("With love", true), ("Welcome", false)]
            .map(|(title, tall)| Figure {
                drawing: front(tall, "E"),
                alt: format!("The front of {title}"),
                caption: Some(words(title)),
                scale: ScaleWish::Shared(2),
                says_scale: true,
            });
    let mut quoted = Inline::plain("With thanks, all of us");
    quoted.look = Look::Quoted;
    let cover = section(
        "cover",
        "Meadow Days",
        vec![
            Block::Paragraph(
                Tone::Lead,
                words(
                    "Six note cards from a single 8 × 8 in sheet, for an evening at the table.",
                ),
            ),
            Block::Figures(fronts.to_vec()),
            Block::Paragraph(
                Tone::Body,
                vec![
                    Inline::plain(
                        "The office of a waffle: efficient fluffy offices. Read on at ",
                    ),
                    link,
                    Inline::plain(
                        ", where every piece has a letter. Each greeting, such as ",
                    ),
                    quoted,
                    Inline::plain(", is stamped on a label of 2 1/2 × 1 1/4 in; "),
                    Inline::strong("keep the sheet’s rows upright"),
                    Inline::plain(" while you cut."),
                ],
            ),
            Block::Caution(Caution {
                signal: "CAUTION".into(),
                triangle: true,
                text: words(
                    "A trimmer’s blade cuts skin. Keep your fingers behind the rule, and close the blade when you put the trimmer down. Follow the rules of the place you are in.",
                ),
            }),
        ],
    );
    let need = section(
        "need",
        "What you need",
        vec![
            Block::Table(supplies(5)),
            Block::Heading { level: 3, text: words("Tools"), anchor: None },
            Block::List(
                Marker::Box,
                vec![
                    words("Trimmer that takes 12 in"),
                    words("Tag punch, 2 1/2 × 1 1/4 in"),
                    words(
                        "Bone folder; a paper knife will do if its back is round and it is held flat along the fold",
                    ),
                ],
            ),
        ],
    );
    let cut = section(
        "cut",
        "Cut the sheet",
        vec![
            Block::Paragraph(
                Tone::Body,
                words(
                    "Every piece comes from one sheet. Lay it with the rows upright; the ringed numbers give the order of the cuts.",
                ),
            ),
            Block::Figure(figure(cut_plan(), "The sheet and its pieces")),
            Block::Steps(cutting()),
        ],
    );
    let mut blocks = Vec::new();
    for (title, tall) in
        [("Thank you", false), ("Hello", false), ("With love", true), ("Welcome", false)]
    {
        blocks.extend(card(title, tall));
    }
    let cards = section("cards", "Make the cards", blocks);
    let check = section(
        "check",
        "Check the printout",
        vec![
            Block::Paragraph(
                Tone::Remark,
                words(
                    "Print at 100 %. The upper bar is 6 in long, the lower one 150 mm.",
                ),
            ),
            Block::Figure(Figure {
                drawing: rulers(),
                alt: "A ruler of 6 in and one of 150 mm".into(),
                caption: None,
                scale: ScaleWish::Full,
                says_scale: false,
            }),
            Block::Heading { level: 2, text: words("Before you start"), anchor: None },
            Block::Heading { level: 3, text: words("At the table"), anchor: None },
            Block::List(
                Marker::Dot,
                vec![words("Fold on a flat table."), words("Let the ink dry.")],
            ),
            Block::Keep(vec![Block::Paragraph(
                Tone::Body,
                words("Ask at your post office before you post a raised card."),
            )]),
        ],
    );
    Document {
        title: "Meadow Days".into(),
        language: "en".into(),
        foot: foot(),
        sections: vec![cover, need, cut, cards, check],
        pictures: Vec::new(),
    }
}

/// The handout many times over.
pub(crate) fn long(times: usize) -> Document {
    let mut document = handout();
    let sections = document.sections.clone();
    for time in 1..times {
        document.sections.extend(sections.iter().cloned().map(|mut section| {
            section.anchor = format!("{}{time}", section.anchor);
            section
        }));
    }
    document
}

/// Every block with names of forty characters and more, and too little room.
pub(crate) fn crowded() -> Document {
    let long = "Grandmother’s bluegreen meadw-walk ribbon";
    let word = "Meadowwalkribbonbluegreengrandmotherspaper";
    let mut sheet = cut_plan();
    for mark in &mut sheet.marks {
        if let Mark::Name { long: slot, .. } = mark {
            *slot = Some(long.into());
        }
    }
    // Slivers that hold no name, and dimensions with no room for their words.
    for (index, x) in (0_u8..6).map(|it| (it, 20 + 2 * i64::from(it))) {
        let rect = boxed(x, 40, 2, 12);
        sheet.marks.push(area(rect, Stroke::Edge, face(index)));
        sheet.marks.push(name(rect, &format!("S{index}"), long));
        sheet.marks.push(dimension(Side::Bottom, boxed(x, 0, 2, 0), "1/4 in", 0));
    }
    let mut table = supplies(40);
    for row in &mut table.rows {
        row[2] = words(word);
        row[3] = words(long);
    }
    let steps = (1_u8..=9)
        .map(|it| {
            let drawing = in_hand(96, 12, 10 + i64::from(it), "1 1/4 in");
            step(
                usize::from(it),
                &format!("{long}. {word}. {long}."),
                long,
                Some(figure(drawing, long)),
            )
        })
        .collect();
    let caution = Caution {
        signal: "WARNING".into(),
        triangle: true,
        text: words(&long.repeat(9)),
    };
    Document {
        title: long.into(),
        language: "en".into(),
        foot: Foot { left: long.repeat(3), ..foot() },
        sections: vec![section(
            "one",
            &format!("{long} {word}"),
            vec![
                Block::Figure(figure(shapes(), word)),
                Block::Figure(figure(sheet.clone(), long)),
                Block::Caution(caution),
                Block::Table(table),
                Block::Steps(steps),
                Block::Beside(
                    figure(sheet.clone(), word),
                    vec![
                        Block::Paragraph(Tone::Body, words(&long.repeat(6))),
                        Block::List(Marker::Box, vec![words(word), words(long)]),
                    ],
                ),
                Block::Figures(vec![figure(sheet.clone(), long); 5]),
                Block::Heading {
                    level: 2,
                    text: words(word),
                    anchor: Some("two".into()),
                },
                Block::Keep(vec![Block::List(Marker::Dot, vec![words(long); 12])]),
            ],
        )],
        pictures: Vec::new(),
    }
}
