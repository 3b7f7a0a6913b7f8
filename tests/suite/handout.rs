//! What a handout says, as an outline of its sections and sentences.

use leafwright::document::{Block, Document, Figure, Inline, Mark, Step};
use leafwright::geom::{Length, Size, Unit};
use leafwright::handout::{self, Drawings, Hands, Options, Template};
use leafwright::plan::{PlanOptions, plan};
use leafwright::project::{PieceId, Placed, Project, Reader, Runs, Stands};
use leafwright::words::Units;

use crate::hand_made::{card, layer, paper, piece, project, size};
use crate::sample::orchard;

/// What is said does not hang on the best of all plans.
fn quick(reader: Reader, kits: u32) -> PlanOptions {
    PlanOptions { reader, kits: Some(kits), budget: 100_000, ..PlanOptions::default() }
}

pub(crate) fn written(project: &Project, template: &str, reader: Reader) -> Document {
    let kits = if template == "travel" { 1 } else { 3 };
    let planned = plan(project, &quick(reader, kits));
    let plan = planned.value.unwrap_or_else(|| panic!("{:#?}", planned.notes));
    let template = Template::built_in(template).unwrap();
    handout::write(project, &plan, &template, Options::default())
}

/// A document as plain lines, drawings by what they show.
pub(crate) fn outline(document: &Document) -> String {
    let mut out = String::new();
    for section in &document.sections {
        out += &format!("# {}\n", plain(&section.title));
        blocks(&section.blocks, &mut out);
    }
    out.replace('\u{a0}', "_")
}

fn plain(text: &[Inline]) -> String {
    text.iter().map(|it| it.text.as_str()).collect()
}

fn line(out: &mut String, text: String) {
    out.push_str(&text);
    out.push('\n');
}

fn blocks(blocks_: &[Block], out: &mut String) {
    for block in blocks_ {
        match block {
            Block::Heading { text, .. } => line(out, format!("## {}", plain(text))),
            Block::Paragraph(_, text) => line(out, plain(text)),
            Block::List(_, items) => {
                items.iter().for_each(|it| line(out, format!("- {}", plain(it))));
            }
            Block::Steps(steps) => {
                for Step { number, text, aside, .. } in steps {
                    let aside = aside.as_ref().map(|it| format!(" [{}]", plain(it)));
                    line(
                        out,
                        format!("{number}. {}{}", plain(text), aside.unwrap_or_default()),
                    );
                }
            }
            Block::Table(table) => {
                let heads: Vec<_> =
                    table.columns.iter().map(|it| plain(&it.head)).collect();
                line(out, format!("| {} |", heads.join(" | ")));
                for row in &table.rows {
                    let row: Vec<_> = row.iter().map(|it| plain(it)).collect();
                    line(out, format!("| {} |", row.join(" | ")));
                }
            }
            Block::Figure(figure) => line(out, drawn(figure)),
            Block::Figures(figures) => figures.iter().for_each(|it| line(out, drawn(it))),
            Block::Tiled(tiled) => {
                line(out, format!("{} {}", drawn(&tiled.figure), plain(&tiled.joined)));
            }
            Block::Caution(caution) => {
                line(out, format!("{}: {}", caution.signal, plain(&caution.text)));
            }
            Block::Beside(figure, below) => {
                line(out, drawn(figure));
                blocks(below, out);
            }
            Block::Keep(below) => {
                blocks(below, out);
            }
        }
    }
}

fn drawn(figure: &Figure) -> String {
    let caption = figure.caption.as_ref().map(|it| format!(" ({})", plain(it)));
    format!("<{}>{}", figure.alt, caption.unwrap_or_default())
}

#[test]
fn the_packet_for_a_class_reads_well() {
    let document = written(&orchard(), "class", Reader::Class);
    insta::assert_snapshot!(outline(&document));
}

/// Every block of a document, from the outside inwards.
fn all_blocks(document: &Document) -> Vec<&Block> {
    let mut open: Vec<&Block> =
        document.sections.iter().flat_map(|it| &it.blocks).collect();
    let mut at = 0;
    while at < open.len() {
        if let Block::Beside(_, below) | Block::Keep(below) = open[at] {
            open.extend(below);
        }
        at += 1;
    }
    open
}

fn figures(document: &Document) -> Vec<&Figure> {
    let mut all = Vec::new();
    for block in all_blocks(document) {
        match block {
            Block::Figure(figure) | Block::Beside(figure, _) => all.push(figure),
            Block::Figures(figures) => all.extend(figures),
            Block::Steps(steps) => {
                all.extend(steps.iter().filter_map(|it| it.figure.as_ref()));
            }
            _ => {}
        }
    }
    all
}

fn packets() -> Vec<Document> {
    let readers = [
        ("class", Reader::Class),
        ("host", Reader::Class),
        ("kit", Reader::Kit),
        ("bench", Reader::Kit),
        ("travel", Reader::Travel),
    ];
    readers.into_iter().map(|(name, reader)| written(&orchard(), name, reader)).collect()
}

#[test]
fn every_drawing_says_what_it_shows_and_lies_within_its_size() {
    for document in packets() {
        for figure in figures(&document) {
            assert!(!figure.alt.is_empty());
            let Size { width, height } = figure.drawing.size;
            for mark in &figure.drawing.marks {
                let (Mark::Area { rect, .. } | Mark::Name { rect, .. }) = mark else {
                    continue;
                };
                assert!(
                    rect.x >= Length::ZERO && rect.right() <= width,
                    "{}",
                    figure.alt
                );
                assert!(
                    rect.y >= Length::ZERO && rect.bottom() <= height,
                    "{}",
                    figure.alt
                );
            }
        }
    }
}

#[test]
fn every_anchor_is_there_once_and_every_link_leads_to_one() {
    for document in packets() {
        let anchors: Vec<&str> =
            document.sections.iter().map(|it| it.anchor.as_str()).collect();
        for (at, anchor) in anchors.iter().enumerate() {
            assert!(!anchors[..at].contains(anchor), "`{anchor}` is there twice");
        }
        for block in all_blocks(&document) {
            let Block::Paragraph(_, text) = block else { continue };
            for link in text.iter().filter_map(|it| it.link.as_deref()) {
                assert!(anchors.contains(&link), "`{link}` leads nowhere");
            }
        }
    }
}

#[test]
fn what_is_done_ahead_is_left_out_for_her_and_told_to_the_maker() {
    let class = outline(&written(&orchard(), "class", Reader::Class));
    let host = outline(&written(&orchard(), "host", Reader::Class));
    for words in ["# Cutting: orchard", "tag punch", "# What to buy"] {
        assert!(!class.contains(words), "{words}");
        assert!(host.contains(words), "{words}");
    }
    for words in ["# Hello", "Stamp each greeting"] {
        assert!(class.contains(words), "{words}");
        assert!(!host.contains(words), "{words}");
    }
}

#[test]
fn cautions_are_those_of_the_work_and_give_way_to_local_rules() {
    let of = |name, reader| outline(&written(&orchard(), name, reader));
    let (class, kit) = (of("class", Reader::Class), of("kit", Reader::Kit));
    let travel = of("travel", Reader::Travel);
    for text in [&class, &kit, &travel] {
        assert!(text.contains("CAUTION: Sharp blade in the trimmer."));
        assert!(
            text.contains("Local rules and the instructions that come with each tool")
        );
        assert!(!text.contains("adults"), "no lever, nothing hot");
    }
    assert!(kit.contains("WARNING: Small parts"));
    assert!(!class.contains("Small parts"));
    assert!(!class.contains("pinch"), "the labels come punched");
    assert!(travel.contains("ask your carrier"));
    assert!(travel.contains("moving vehicle"));
    // Whoever takes no blade along needs no word about it.
    let mut project = orchard();
    project.late_cuts[0].at_the_card = false;
    let travel = outline(&written(&project, "travel", Reader::Travel));
    assert!(!travel.contains("carrier") && !travel.contains("vehicle"));
}

#[test]
fn a_step_names_the_part_the_edge_the_mark_and_what_becomes_of_both() {
    let mut project = project();
    project.papers[0] = paper("leaf", size(192, 192), &[Runs::Up]);
    project.pieces = vec![piece("sash", size(88, 32))];
    project.cards =
        vec![card("One", Stands::Wide, vec![layer(Placed::Piece(PieceId(0)))])];
    let text = outline(&written(&project, "travel", Reader::Travel));
    let steps: Vec<&str> = text.lines().filter(|it| it.starts_with(['1', '2'])).collect();
    // Worked out by hand: the strip first, with the whole edge of 12 in at the
    // rule, then the piece; or the other way round.
    assert!(steps[0].contains("Take the sheet of leaf."), "{text}");
    assert!(steps[0].contains("edge (12_in) with the mark at "), "{text}");
    assert!(steps[1].contains("The sash_(A) comes off."), "{text}");
    assert!(steps[1].contains("by a quarter"), "{text}");
    assert!(text.contains("One sheet of leaf, 12_×_12_in, is enough."));
}

#[test]
fn both_units_are_printed_if_wanted() {
    let project = orchard();
    let plan = plan(&project, &quick(Reader::Class, 3)).value.unwrap();
    let template = Template::built_in("class").unwrap();
    let units = Some(Units::Both(Unit::Inch));
    let options = Options { units, ..Options::default() };
    let document = handout::write(&project, &plan, &template, options);
    let text = outline(&document);
    // 5 1/2 in = 139.7 mm, 2 in = 50.8 mm, to the nearest half millimetre.
    assert!(text.contains("5_1/2_×_2_in (139.5_×_51_mm)"), "{text}");
}

#[test]
fn a_template_of_ones_own_is_read() {
    let text = "reader: travel\npage: a5\nbooklet: true\nsections:\n  - cover: \
                {drawings: left out}\n  - cards: {starts: on a new page}\n";
    let template = Template::parse(text).unwrap();
    assert_eq!(template.reader, Reader::Travel);
    assert_eq!(template.hands, Hands::Reader);
    assert!(template.booklet);
    assert_eq!(template.sections[0].drawings, Drawings::LeftOut);
    assert!(template.sections[1].new_page);
    for (name, _) in handout::BUILT_IN {
        assert!(Template::built_in(name).is_ok(), "{name}");
    }
}

#[test]
fn a_template_that_asks_for_what_there_is_not_is_refused_with_a_guess() {
    let fault = |text: &str| Template::parse(text).unwrap_err().to_string();
    assert_eq!(
        fault("reader: class\nsections: [covr]\n"),
        "there is no section `covr`; did you mean `cover`?"
    );
    assert_eq!(
        fault("reader: guest\nsections: [cover]\n"),
        "there is no reader `guest`; there are `class`, `kit`, `travel`"
    );
    assert_eq!(
        fault("reader: class\nsections:\n  - cover: {drawings: maybe}\n"),
        "there is no value of `drawings` `maybe`; there are `drawn`, \
         `step by step`, `apart`, `left out`"
    );
    assert!(fault("reader: class\nsections: []\n").contains("no section"));
    assert!(fault("reader: [").starts_with("the template can't be read"));
}

#[test]
fn layers_pulled_apart_lie_within_their_drawing() {
    let project = orchard();
    let plan = plan(&project, &quick(Reader::Kit, 1)).value.unwrap();
    let text = "reader: kit\nsections:\n  - cards: {drawings: apart}\n";
    let template = Template::parse(text).unwrap();
    let document = handout::write(&project, &plan, &template, Options::default());
    let all = figures(&document);
    let apart = all.iter().find(|it| it.alt.contains("pulled apart")).unwrap();
    assert_eq!(
        apart.alt,
        "The layers of Thank you pulled apart, in the order in which they go onto the \
         base: sash and label “With thanks, all of us” on 4 foam squares."
    );
    for mark in &apart.drawing.marks {
        let (Mark::Area { rect, .. } | Mark::Line { along: rect, .. }) = mark else {
            continue;
        };
        assert!(rect.x >= Length::ZERO && rect.right() <= apart.drawing.size.width);
        assert!(rect.y >= Length::ZERO && rect.bottom() <= apart.drawing.size.height);
    }
}
