//! Documents to lay out: an invented handout with every kind of block, and stress.

use leafwright::document::*;
use leafwright::geom::{Length, Rect, Shape, Side, Size, Turn};

/// Eighths of an inch.
pub(crate) fn eighths(count: i64) -> Length {
    Length::inch(count, 8)
}

/// A box in eighths of an inch.
pub(crate) fn boxed(x: i64, y: i64, width: i64, height: i64) -> Rect {
    Rect::new(eighths(x), eighths(y), Size::new(eighths(width), eighths(height)))
}

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

fn area(rect: Rect, line: Stroke, fill: Fill) -> Mark {
    Mark::Area { rect, shape: Shape::Rectangle, line: Some(line), fill }
}

fn face(index: u8) -> Fill {
    Fill::Face { index, color: None, turn: Turn::None }
}

fn name(rect: Rect, short: &str, long: &str) -> Mark {
    let long = (!long.is_empty()).then(|| long.to_string());
    Mark::Name { rect, short: short.into(), long, may_turn: true }
}

fn dimension(side: Side, along: Rect, text: &str, tier: u8) -> Mark {
    Mark::Dimension { side, along, text: text.into(), tier }
}

/// An 8 × 8 in sheet cut into pieces, with names, cuts and dimensions.
pub(crate) fn cut_plan() -> Drawing {
    let pieces = [
        (boxed(0, 0, 44, 16), "A", "sash", 0),
        (boxed(0, 16, 44, 10), "B", "ribbon", 1),
        (boxed(0, 26, 44, 10), "B", "ribbon", 1),
        (boxed(0, 36, 22, 28), "C", "tile", 2),
        (boxed(22, 36, 22, 28), "C", "tile", 2),
        (boxed(44, 0, 20, 44), "D", "banner", 3),
    ];
    let mut marks = vec![area(boxed(0, 0, 64, 64), Stroke::Edge, Fill::Paper)];
    for (rect, _, _, index) in pieces {
        marks.push(area(rect, Stroke::Thin, face(index)));
    }
    marks.push(area(boxed(44, 44, 20, 20), Stroke::Thin, Fill::Kept));
    marks.push(name(boxed(44, 44, 20, 20), "", "kept"));
    for (rect, short, long, _) in pieces {
        marks.push(name(rect, short, long));
        marks.push(Mark::Runs { rect, turn: Turn::None, both_ways: short == "B" });
    }
    marks.push(Mark::CutNumber { side: Side::Top, along: boxed(44, 0, 0, 64), text: "1".into() });
    for (number, y) in [(2, 16), (3, 26), (4, 36)] {
        marks.push(Mark::CutNumber {
            side: Side::Left,
            along: boxed(0, y, 44, 0),
            text: number.to_string(),
        });
    }
    marks.push(dimension(Side::Top, boxed(0, 0, 44, 0), "5 1/2 in", 0));
    marks.push(dimension(Side::Top, boxed(44, 0, 20, 0), "2 1/2 in", 0));
    marks.push(dimension(Side::Top, boxed(0, 0, 64, 0), "8 in", 1));
    for (y, height, text) in [(0, 16, "2 in"), (16, 10, "1 1/4 in"), (26, 10, "1 1/4 in")] {
        marks.push(dimension(Side::Left, boxed(0, y, 0, height), text, 0));
    }
    marks.push(dimension(Side::Left, boxed(0, 36, 0, 28), "3 1/2 in", 0));
    marks.push(dimension(Side::Left, boxed(0, 0, 0, 64), "8 in", 1));
    marks.push(dimension(Side::Right, boxed(0, 0, 0, 44), "5 1/2 in", 0));
    marks.push(dimension(Side::Bottom, boxed(0, 0, 22, 0), "2 3/4 in", 0));
    marks.push(dimension(Side::Bottom, boxed(22, 0, 22, 0), "2 3/4 in", 0));
    Drawing { size: Size::new(eighths(64), eighths(64)), marks }
}

/// The paper in hand, lying against the rule, with one cut to make.
pub(crate) fn in_hand(width: i64, height: i64, cut: i64, text: &str) -> Drawing {
    let whole = boxed(0, 0, width, height);
    let marks = vec![
        area(boxed(0, 0, cut, height), Stroke::Edge, face(0)),
        area(boxed(cut, 0, width - cut, height), Stroke::Edge, Fill::Paper),
        Mark::Line { along: boxed(cut, 0, 0, height), line: Stroke::Cut },
        Mark::Rule { side: Side::Bottom, rect: whole },
        name(boxed(0, 0, cut, height), "A", "sash"),
        dimension(Side::Top, boxed(0, 0, cut, 0), text, 0),
    ];
    Drawing { size: Size::new(eighths(width), eighths(height)), marks }
}

/// A card front with layers.
pub(crate) fn front(tall: bool, label: &str) -> Drawing {
    let (width, height) = if tall { (34, 44) } else { (44, 34) };
    let whole = boxed(0, 0, width, height);
    let band = boxed(0, height - 20, width, 12);
    let tag = boxed(width / 2 - 10, height - 19, 20, 10);
    let marks = vec![
        area(whole, Stroke::Edge, Fill::Paper),
        area(band, Stroke::Edge, face(0)),
        Mark::Area {
            rect: tag,
            shape: Shape::Rounded,
            line: Some(Stroke::Edge),
            fill: Fill::Strong,
        },
        name(tag, label, ""),
        name(whole, "", "base"),
        name(band, "A", "sash"),
        Mark::Line { along: boxed(0, 0, width, 0), line: Stroke::Fold },
        dimension(Side::Right, boxed(0, height - 8, 0, 8), "1 in", 0),
        dimension(Side::Right, boxed(0, height - 20, 0, 12), "1 1/2 in", 0),
        dimension(Side::Bottom, boxed(0, 0, width, 0), if tall { "4 1/4 in" } else { "5 1/2 in" }, 0),
    ];
    Drawing { size: Size::new(eighths(width), eighths(height)), marks }
}

/// A ruler of six inches and one of fifteen centimetres.
pub(crate) fn rulers() -> Drawing {
    let size = Size::new(eighths(48), eighths(8));
    let cm = Rect::new(Length::ZERO, eighths(5), Size::new(Length::mm(150), eighths(2)));
    let marks =
        vec![Mark::RulerInch { rect: boxed(0, 0, 48, 2) }, Mark::RulerMm { rect: cm }];
    Drawing { size, marks }
}

fn foot() -> Foot {
    Foot {
        left: "Lantern Walk, edition 2".into(),
        page_of: "Page {page} of {pages}".into(),
        continued: "continued".into(),
        scale: "Scale {scale}".into(),
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
        ("1", "scrap of dusk cardstock", "at least 2 3/4 × 1 1/2 in, for the mat behind Thank you"),
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
            Some(shared(in_hand(48, 44, 10, "1 1/4 in"), "What is left, cut at 1 1/4 in")),
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
                step(1, "Glue the sash across the front, edge to edge, 1 in above the bottom.", "", None),
                step(2, "Stamp the greeting in dusk ink on the label and let it dry for a minute.", "", None),
                step(3, "Raise the label on four foam squares, in the middle of the sash.", "", None),
                step(4, "Write inside: You made our week.", "", None),
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
    let fronts = [("Thank you", false), ("Hello", false), ("With love", true), ("Welcome", false)]
        .map(|(title, tall)| Figure {
            drawing: front(tall, "E"),
            alt: format!("The front of {title}"),
            caption: Some(words(title)),
            scale: ScaleWish::Shared(2),
            says_scale: true,
        });
    let mut quoted = Inline::plain("Thank you, neighbour");
    quoted.look = Look::Quoted;
    let cover = section("cover", "Lantern Walk", vec![
        Block::Paragraph(Tone::Lead, words("Six note cards from a single 8 × 8 in sheet, for an evening at the table.")),
        Block::Figures(fronts.to_vec()),
        Block::Paragraph(Tone::Body, vec![
            Inline::plain("The office of a waffle: efficient fluffy offices. Read on at "),
            link,
            Inline::plain(", where every piece has a letter. Each greeting, such as "),
            quoted,
            Inline::plain(", is stamped on a label of 2 1/2 × 1 1/4 in; "),
            Inline::strong("keep the sheet’s rows upright"),
            Inline::plain(" while you cut."),
        ]),
        Block::Caution(Caution {
            signal: "CAUTION".into(),
            triangle: true,
            text: words("A trimmer’s blade cuts skin. Keep your fingers behind the rule, and close the blade when you put the trimmer down. Follow the rules of the place you are in."),
        }),
    ]);
    let need = section("need", "What you need", vec![
        Block::Table(supplies(5)),
        Block::Heading { level: 3, text: words("Tools"), anchor: None },
        Block::List(Marker::Box, vec![
            words("Trimmer that takes 12 in"),
            words("Tag punch, 2 1/2 × 1 1/4 in"),
            words("Bone folder; a paper knife will do if its back is round and it is held flat along the fold"),
        ]),
    ]);
    let cut = section("cut", "Cut the sheet", vec![
        Block::Paragraph(Tone::Body, words("Every piece comes from one sheet. Lay it with the rows upright; the ringed numbers give the order of the cuts.")),
        Block::Figure(figure(cut_plan(), "The sheet and its pieces")),
        Block::Steps(cutting()),
    ]);
    let mut blocks = Vec::new();
    for (title, tall) in [("Thank you", false), ("Hello", false), ("With love", true), ("Welcome", false)] {
        blocks.extend(card(title, tall));
    }
    let cards = section("cards", "Make the cards", blocks);
    let check = section("check", "Check the printout", vec![
        Block::Paragraph(Tone::Remark, words("Print at 100 %. The upper bar is 6 in long, the lower one 150 mm.")),
        Block::Figure(Figure {
            drawing: rulers(),
            alt: "A ruler of 6 in and one of 150 mm".into(),
            caption: None,
            scale: ScaleWish::Full,
            says_scale: false,
        }),
        Block::Heading { level: 2, text: words("Before you start"), anchor: None },
        Block::Heading { level: 3, text: words("At the table"), anchor: None },
        Block::List(Marker::Dot, vec![words("Fold on a flat table."), words("Let the ink dry.")]),
        Block::Keep(vec![
            Block::Paragraph(Tone::Body, words("Ask at your post office before you post a raised card.")),
        ]),
    ]);
    Document {
        title: "Lantern Walk".into(),
        language: "en".into(),
        foot: foot(),
        sections: vec![cover, need, cut, cards, check],
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
    let long = "Grandmother’s bluegreen lantern-walk ribbon";
    let word = "Lanternwalkribbonbluegreengrandmotherspaper";
    let mut sheet = cut_plan();
    for mark in &mut sheet.marks {
        if let Mark::Name { long: slot, .. } = mark {
            *slot = Some(long.into());
        }
    }
    // Slivers that hold no name, and dimensions with no room for their words.
    for (index, x) in (0..6).map(|it| (it, 20 + 2 * it)) {
        let rect = boxed(x, 40, 2, 12);
        sheet.marks.push(area(rect, Stroke::Edge, face(index as u8)));
        sheet.marks.push(name(rect, &format!("S{index}"), long));
        sheet.marks.push(dimension(Side::Bottom, boxed(x, 0, 2, 0), "1/4 in", 0));
    }
    let mut table = supplies(40);
    for row in &mut table.rows {
        row[2] = words(word);
        row[3] = words(long);
    }
    let steps = (1..=9)
        .map(|it| {
            let drawing = in_hand(96, 12, 10 + it, "1 1/4 in");
            step(it as usize, &format!("{long}. {word}. {long}."), long, Some(figure(drawing, long)))
        })
        .collect();
    let caution = Caution { signal: "WARNING".into(), triangle: true, text: words(&long.repeat(9)) };
    Document {
        title: long.into(),
        language: "en".into(),
        foot: Foot { left: long.repeat(3), ..foot() },
        sections: vec![
            section("one", &format!("{long} {word}"), vec![
                Block::Figure(figure(sheet.clone(), long)),
                Block::Caution(caution),
                Block::Table(table),
                Block::Steps(steps),
                Block::Beside(figure(sheet.clone(), word), vec![
                    Block::Paragraph(Tone::Body, words(&long.repeat(6))),
                    Block::List(Marker::Box, vec![words(word), words(long)]),
                ]),
                Block::Figures(vec![figure(sheet.clone(), long); 5]),
                Block::Heading { level: 2, text: words(word), anchor: Some("two".into()) },
                Block::Keep(vec![Block::List(Marker::Dot, vec![words(long); 12])]),
            ]),
        ],
    }
}
