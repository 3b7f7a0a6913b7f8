//! Drawings of cards and of what is made ready for them: which there are, what is in
//! them, and what they say to those who can't see them.

use std::fs;

use leafwright::document::{Block, Document, Figure, Fill, Foot, Mark, ScaleWish};
use leafwright::document::{Drawing, Inline, Section, Start, Step, Stroke};
use leafwright::geom::{Length, Rect, Size};
use leafwright::handout::{self, Options, Template};
use leafwright::layout::{PageSetup, Press, lay_out};
use leafwright::pdf::{self, PdfInfo};
use leafwright::plan::{PlanOptions, plan};
use lopdf::content::Content;

use crate::diagnostics::read;

/// What a demo says to a reader.
fn document(demo: &str, reader: &str) -> Document {
    let path = format!("demo-data/{demo}.yaml");
    let text = fs::read_to_string(&path).expect("a readable demo");
    let project = read(&path, &text).1.value.expect("a sound demo");
    let template = Template::built_in(reader).expect("a built-in template");
    let options = PlanOptions { reader: template.reader, ..PlanOptions::default() };
    let plan = plan(&project, &options).value.expect("a plan");
    handout::write(&project, &plan, &template, Options::default())
}

fn plain(text: &[Inline]) -> String {
    text.iter().map(|it| it.text.as_str()).collect()
}

/// The blocks of a section, those within others too.
fn blocks(section: &Section) -> Vec<&Block> {
    let mut all = Vec::new();
    let mut open: Vec<&Block> = section.blocks.iter().rev().collect();
    while let Some(block) = open.pop() {
        all.push(block);
        if let Block::Keep(within) | Block::Beside(_, within) = block {
            open.extend(within.iter().rev());
        }
    }
    all
}

fn steps(section: &Section) -> Vec<&Step> {
    fn of(block: &Block) -> &[Step] {
        match block {
            Block::Steps(steps) => steps,
            _ => &[],
        }
    }
    blocks(section).into_iter().flat_map(of).collect()
}

fn section<'a>(document: &'a Document, title: &str) -> &'a Section {
    let is = |it: &&Section| plain(&it.title) == title;
    document.sections.iter().find(is).expect("a section of that title")
}

/// The boxes of areas whose outline is drawn so.
fn outlined(figure: &Figure, stroke: Stroke) -> Vec<Rect> {
    let of = |mark: &Mark| match mark {
        Mark::Area { rect, line, .. } if *line == Some(stroke) => Some(*rect),
        // Where the pattern is seen, its picture has the outline.
        Mark::Picture { rect, line, .. } if *line == Some(stroke) => Some(*rect),
        _ => None,
    };
    figure.drawing.marks.iter().filter_map(of).collect()
}

fn eighths(count: i64) -> Length {
    Length::inch(count, 8)
}

#[test]
fn a_step_has_a_drawing_where_its_layer_is_placed_by_another() {
    let document = document("orchard-evenings", "kit");
    let hello = steps(section(&document, "Hello"));
    // The ribbon is cut again; rail, sill and label follow; then the inside.
    let drawn: Vec<bool> = hello.iter().map(|it| it.figure.is_some()).collect();
    assert_eq!(drawn, [false, false, true, true, false]);
    // Of a card with two layers the front as a whole says as much.
    for card in ["Thank you", "Well done", "Get well", "Three pips"] {
        let steps = steps(section(&document, card));
        assert!(steps.iter().all(|it| it.figure.is_none()), "{card}");
    }
    // At the table the fronts are large enough.
    let document = self::document("orchard-evenings", "class");
    let hello = steps(section(&document, "Hello"));
    assert!(hello.iter().all(|it| it.figure.is_none()));
}

#[test]
fn the_state_of_a_front_shows_what_is_new_and_measures_it() {
    let document = document("orchard-evenings", "kit");
    let hello = steps(section(&document, "Hello"));
    let sill = hello[2].figure.as_ref().expect("a drawing");
    assert_eq!(
        sill.alt,
        "The front of Hello after this step, with the fold at the top. There already, \
         drawn plain: rail. New, drawn with a heavy outline: sill, edge to edge, \
         1/8\u{a0}in below the rail."
    );
    // The rail is 1 1/4 in high and ends 1 1/4 in above the bottom of 4 1/4 in; the
    // sill, 1/2 in high, begins 1/8 in below it.
    let (width, rail, new) = (eighths(44), eighths(14), eighths(25));
    assert_eq!(
        outlined(sill, Stroke::Heavy),
        [Rect::new(Length::ZERO, new, Size::new(width, eighths(4)))]
    );
    assert_eq!(
        outlined(sill, Stroke::Thin),
        [Rect::new(Length::ZERO, rail, Size::new(width, eighths(10)))]
    );
    let hatched =
        |mark: &&Mark| matches!(mark, Mark::Area { fill: Fill::Face { .. }, .. });
    assert_eq!(sill.drawing.marks.iter().filter(hatched).count(), 1);
    let texts: Vec<_> = sill
        .drawing
        .marks
        .iter()
        .filter_map(|it| match it {
            Mark::Dimension { text, .. } => Some(text.as_str()),
            _ => None,
        })
        .collect();
    assert_eq!(texts, ["5/8\u{a0}in"]);
    // All are drawn at one scale, and it is said.
    let label = hello[3].figure.as_ref().expect("a drawing");
    assert_eq!(sill.scale, label.scale);
    let ScaleWish::Glance(number) = sill.scale else { panic!("{:?}", sill.scale) };
    let said = ScaleWish::shared_by(number);
    let says =
        document.sections.iter().flat_map(blocks).any(
            |it| matches!(it, Block::Paragraph(_, text) if plain(text).contains(&said)),
        );
    assert!(says);
}

#[test]
fn layers_pulled_apart_show_every_foam_square_and_where_each_layer_goes() {
    let document = document("orchard-evenings", "bench");
    let all = blocks(section(&document, "How the cards go together"));
    let figures: Vec<&Figure> = all
        .into_iter()
        .filter_map(|it| match it {
            Block::Figures(figures) => Some(figures),
            _ => None,
        })
        .flatten()
        .collect();
    assert_eq!(figures.len(), 5);
    // The name of the card, its layers, its foam squares.
    for (figure, (card, layers, foam)) in figures.iter().zip([
        ("Thank you", 2, 4),
        ("Hello", 3, 4),
        ("Well done", 2, 4),
        ("Get well", 2, 4),
        ("Three pips", 3, 0),
    ]) {
        assert_eq!(plain(figure.caption.as_ref().expect("a caption")), card);
        assert_eq!(outlined(figure, Stroke::Ghost).len(), layers, "{card}");
        assert_eq!(outlined(figure, Stroke::Thin).len(), foam, "{card}");
        // The base, and every layer.
        assert_eq!(outlined(figure, Stroke::Edge).len(), layers + 1, "{card}");
        let whole = Rect::whole(figure.drawing.size);
        for rect in outlined(figure, Stroke::Edge) {
            assert_eq!(rect.overlap(whole), Some(rect), "{card}");
        }
    }
    assert_eq!(
        figures[1].alt,
        "The layers of Hello pulled apart, in the order in which they go onto the base: \
         rail, sill and label “Hello” on 4 foam squares."
    );
}

#[test]
fn a_base_is_drawn_with_its_score_and_a_strip_with_its_label() {
    let document = document("orchard-evenings", "bench");
    let steps = steps(section(&document, "Prepare for all kits"));
    let figures: Vec<&Figure> =
        steps.iter().filter_map(|it| it.figure.as_ref()).collect();
    assert_eq!(figures.len(), 2);
    // A strip 2 3/4 in wide; 1/8 in before and behind the label of 2 1/2 x 1 1/4 in.
    let [strip, base] = [figures[0], figures[1]];
    assert_eq!(strip.drawing.size, Size::new(eighths(22), eighths(12)));
    assert_eq!(
        outlined(strip, Stroke::Punch),
        [Rect::new(eighths(1), eighths(1), Size::new(eighths(20), eighths(10)))]
    );
    assert!(strip.alt.contains("the place of the stamped words"), "{}", strip.alt);
    // The base of 3 1/2 x 5 in folds along its longer side.
    assert_eq!(base.drawing.size, Size::new(eighths(56), eighths(40)));
    let score = base.drawing.marks.iter().find_map(|it| match it {
        Mark::Line { along, line: Stroke::Fold } => Some(*along),
        _ => None,
    });
    let along = Size::new(Length::ZERO, eighths(40));
    assert_eq!(score, Some(Rect::new(eighths(28), Length::ZERO, along)));
    assert!(base.alt.contains("3\u{a0}1/2\u{a0}in from a short edge"), "{}", base.alt);
    // A host whose class stamps the words has no words on her strips.
    let document = self::document("orchard-evenings", "host");
    let steps = self::steps(section(&document, "Prepare for all kits"));
    let strip = steps[0].figure.as_ref().expect("a drawing");
    assert!(!strip.alt.contains("words"), "{}", strip.alt);
}

/// A dashed line that is closed returns along itself and fills its own gaps.
#[test]
fn no_dashed_line_is_drawn_there_and_back() {
    let size = Size::new(eighths(40), eighths(24));
    let line = |x: i64| Mark::Line {
        along: Rect::new(eighths(x), Length::ZERO, Size::new(Length::ZERO, eighths(24))),
        line: Stroke::Fold,
    };
    let figure = Figure {
        drawing: Drawing { size, marks: vec![line(0), line(20)] },
        alt: "Two dashed lines.".into(),
        caption: None,
        scale: ScaleWish::Full,
        says_scale: false,
    };
    let section = Section {
        anchor: "lines".into(),
        title: vec![Inline::plain("Lines")],
        start: Start::Below,
        blocks: vec![Block::Figure(figure)],
    };
    let document = Document {
        title: "Lines".into(),
        language: "en".into(),
        foot: Foot::default(),
        pictures: Vec::new(),
        sections: vec![section],
    };
    let mut press = Press::new();
    let laid = lay_out(&mut press, &document, &PageSetup::default());
    let laid = laid.value.expect("pages");
    let bytes = pdf::write(&laid, press.library(), &PdfInfo::default()).expect("bytes");
    let file = lopdf::Document::load_mem(&bytes).expect("a file that can be read");
    let page = file.page_iter().next().expect("a page");
    let content = Content::decode(&file.get_page_content(page)).expect("operators");
    let (mut dashed, mut drawn, mut closed) = (false, 0, 0);
    for operation in &content.operations {
        match operation.operator.as_str() {
            "d" => {
                let dashes = operation.operands[0].as_array().expect("dashes");
                dashed = !dashes.is_empty();
            }
            "l" if dashed => drawn += 1,
            "h" | "s" | "b" if dashed => closed += 1,
            _ => {}
        }
    }
    assert_eq!((drawn, closed), (2, 0));
}
