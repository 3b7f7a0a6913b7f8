//! What the packets say of supplies, the post, bags and times.

use std::fs;

use leafwright::document::{Block, Document};
use leafwright::geom::Length;
use leafwright::handout::{self, Options, Template};
use leafwright::plan::{Holder, Plan, PlanOptions, gift_set, plan};
use leafwright::project::{Gift, GiftKind, PaperId, Project};

use crate::diagnostics::read;

/// A demo as one reader sees it.
pub(crate) fn packet(
    demo: &str,
    reader: &str,
    options: Options,
) -> (Project, Plan, Document) {
    let path = format!("demo-data/{demo}.yaml");
    let text = fs::read_to_string(&path).expect("a readable demo");
    let project = read(&path, &text).1.value.expect("a sound demo");
    let template = Template::built_in(reader).expect("a built-in template");
    let asked =
        PlanOptions { reader: template.reader, budget: 50_000, ..PlanOptions::default() };
    let plan = plan(&project, &asked).value.expect("a plan");
    let document = handout::write(&project, &plan, &template, options);
    (project, plan, document)
}

/// All words of a section; nothing if there is no such section.
fn words(document: &Document, anchor: &str) -> String {
    let mut all = String::new();
    for section in document.sections.iter().filter(|it| it.anchor == anchor) {
        section.blocks.iter().for_each(|it| say(it, &mut all));
    }
    all.replace('\u{a0}', " ")
}

fn say(block: &Block, all: &mut String) {
    let mut text = |text: &[leafwright::document::Inline]| {
        text.iter().for_each(|it| all.push_str(&it.text));
        all.push('\n');
    };
    match block {
        Block::Paragraph(_, words) | Block::Heading { text: words, .. } => text(words),
        Block::List(_, items) => items.iter().for_each(|it| text(it)),
        Block::Table(table) => {
            table.columns.iter().for_each(|it| text(&it.head));
            table.rows.iter().flatten().for_each(|it| text(it));
        }
        Block::Keep(blocks) | Block::Beside(_, blocks) => {
            blocks.iter().for_each(|it| say(it, all));
        }
        Block::Caution(caution) => text(&caution.text),
        Block::Steps(steps) => steps.iter().for_each(|it| text(&it.text)),
        Block::Figure(_) | Block::Figures(_) | Block::Tiled(_) => {}
    }
}

#[test]
fn whoever_posts_cards_is_sent_to_the_operator() {
    for reader in ["kit", "bench"] {
        for demo in ["orchard-evenings", "market-morning", "tide-post", "willow-week"] {
            let (_, plan, document) = packet(demo, reader, Options::default());
            let said = words(&document, "envelope");
            assert!(said.contains("check with your postal operator"), "{demo}: {said}");
            // What a raised card goes as is too doubtful for a reader.
            let raised = |it: &leafwright::plan::Set| it.raised > 0;
            let raised = plan.fronts.iter().any(|it| it.layers.iter().any(raised));
            let hints = plan.fits.iter().any(|it| !it.hints.is_empty())
                && !(raised && reader == "kit");
            let country = said.contains("United Kingdom");
            assert_eq!(hints, country, "{demo} for {reader}: {said}");
        }
    }
}

#[test]
fn hints_name_class_and_year() {
    let bench = words(&packet("tide-post", "bench", Options::default()).2, "envelope");
    // A6 in C6 below 5 mm and 20 g: limits of the operators, each with its document in
    // `standards::post`.
    assert!(bench.contains("Standardbrief (2013)"), "{bench}");
    assert!(bench.contains("Letter (read 2026)"), "{bench}");
    assert!(bench.contains("Domestic Mail Manual"), "with its source: {bench}");
}

#[test]
fn a_traveller_tucks_the_parts_of_a_card_into_its_envelope() {
    let said = words(&packet("tide-post", "travel", Options::default()).2, "pack");
    assert!(said.contains("Two shells: base and 2 × shell (D)"), "{said}");
    // What is cut at the card is packed whole, once for both of its parts.
    assert!(said.contains("Swell: base, wave band (B)"), "{said}");
    assert!(said.contains("a pen") && said.contains("postage: "), "{said}");
    // What was cut at home stays there.
    assert!(!said.contains("trimmer"), "{said}");
}

#[test]
fn a_host_knows_what_to_do_when() {
    let names = vec!["Ada Mill".to_owned(), "Zoe Brook".to_owned()];
    let options = Options { names: &names, ..Options::default() };
    let (_, _, document) = packet("orchard-evenings", "host", options);
    let before = words(&document, "before");
    let told = [
        "Print 13 class handouts",
        "Fill 14 bags, 2 of them spare",
        // Of what is used at the table she reads all, and how many there have to be.
        "4 × tape runner: one for 3 people",
        "bone folder",
        "plum ink",
        "a pen",
    ];
    for said in told {
        assert!(before.contains(said), "{said}: {before}");
    }
    // Labels are punched ahead: nobody needs the punch at the table.
    assert!(!before.contains("tag punch"), "{before}");
    // Two rolls on hand and two to buy are the four runners; they stand in one line.
    let buy = words(&document, "buy");
    assert_eq!(buy.matches("tape runner").count(), 1, "{buy}");
    assert!(buy.contains("2 rolls of 8.0 m"), "{buy}");
    assert!(!buy.contains("tag punch"), "{buy}");
    let there = words(&document, "attendance");
    assert!(there.contains("Zoe Brook") && there.contains("12"), "{there}");
    assert!(words(&document, "times").contains("90 minutes"));
}

#[test]
fn a_bench_crosses_out_every_bag() {
    let (_, plan, document) = packet("market-morning", "bench", Options::default());
    let said = words(&document, "tally");
    assert!(said.contains("22\n"), "{said}");
    // A bag is not full before the things without a letter lie in it as well.
    for thing in ["market note base", "foam squares", "envelopes"] {
        assert!(said.contains(thing), "{thing}: {said}");
    }
    // Bags and stickers are for the bags, and bought; glue is the buyer's own.
    let pack = words(&document, "pack");
    assert!(pack.contains("For each kit: paper bag and 2 × sticker"), "{pack}");
    let labels = document.sections.iter().find(|it| it.anchor == "labels");
    let figures = labels.expect("labels").blocks.iter().find_map(|it| match it {
        Block::Figures(figures) => Some(figures.len()),
        _ => None,
    });
    assert_eq!(figures, usize::try_from(plan.supplies.kits).ok());
    let buy = words(&document, "buy");
    assert!(buy.contains("sticker") && !buy.contains("glue"), "{buy}");
    assert!(buy.contains("96.00 EUR") && buy.contains("order number S-08"), "{buy}");
}

#[test]
fn a_step_says_how_many_parts_come_off_and_stay() {
    let (_, _, document) = packet("market-morning", "bench", Options::default());
    let said = words(&document, "cutting-1");
    for told in [
        "Keep the 22 parts that come off, 6 × 8 in each, in hand.",
        "Lay the 22 parts that stay, 2 × 8 in each, aside for step 5.",
        "Keep the 22 parts that stay, 2 × 2 in each, as offcuts.",
    ] {
        assert!(said.contains(told), "{told}: {said}");
    }
    let slips = "Put a slip with the number of its step on every part";
    assert!(!said.contains(slips), "{said}");
    // Many piles want slips; parts of one size that go together are laid aside at once.
    let (_, _, document) = packet("orchard-evenings", "bench", Options::default());
    let said = words(&document, "cutting-1");
    assert!(said.contains(slips), "{said}");
    assert!(said.contains("Lay both parts, 7 1/2 × 5 in each, aside for step"), "{said}");
    assert!(!said.contains("sheets alike"), "that stands in the cut plan: {said}");
    assert!(words(&document, "cut-plan-1").contains("sheets alike"));
}

#[test]
fn what_the_post_may_take_cards_for_is_told_where_they_are_sent() {
    let (_, _, document) = packet("orchard-evenings", "travel", Options::default());
    let said = words(&document, "pack");
    assert!(said.contains("As a hint only, with the year of the source: "), "{said}");
    assert!(said.contains("check with your postal operator"), "{said}");
    let (_, _, document) = packet("orchard-evenings", "bench", Options::default());
    let said = words(&document, "envelope");
    assert!(said.contains("evenly thick and easy to bend: United States"), "{said}");
    // The host of a class posts nothing.
    let (_, _, document) = packet("orchard-evenings", "host", Options::default());
    assert!(!words(&document, "envelope").contains("United States"));
}

#[test]
fn the_mats_of_a_bag_are_counted_as_what_they_are() {
    let (_, _, document) = packet("willow-week", "host", Options::default());
    let said = words(&document, "pack");
    assert!(said.contains("4\nmats for the labels (F)"), "{said}");
}

#[test]
fn a_copy_bears_its_name_and_no_other_does() {
    let options = Options { for_name: true, ..Options::default() };
    let (_, _, document) = packet("tide-post", "class", options);
    let copy = handout::named(&document, "Ada Mill");
    assert!(copy.foot.left.ends_with("Ada Mill"), "{}", copy.foot.left);
    assert!(words(&copy, "cover").starts_with("For Ada Mill\n"));
    let (_, _, plain) = packet("tide-post", "class", Options::default());
    assert!(!words(&plain, "cover").contains("For "));
}

#[test]
fn a_band_goes_around_the_whole_stack() {
    let (mut project, plan, _) = packet("tide-post", "travel", Options::default());
    project.gift = Some(Gift { kind: GiftKind::Band, width: Length::mm(30) });
    let gift = gift_set(&project, &plan).expect("it is wanted");
    let high: Length = plan.fits.iter().map(|it| it.thickness).sum();
    assert_eq!((gift.cards, gift.high), (5, high));
    // C6 is 114 mm high (ISO 269); twice that and the stack, and 15 mm of overlap, to
    // the next millimetre.
    let around = (Length::mm(114) + high) * 2 + Length::mm(15);
    let Holder::Band { strip, .. } = gift.holds else { panic!("a band was asked for") };
    let over = strip.width - around;
    assert!(Length::ZERO <= over && over < Length::mm(1), "{strip:?}");
    assert_eq!(strip.height, Length::mm(30));
}

/// From which paper the band of each kit comes, where a kit takes one panel of so
/// much height from a sheet of 12 x 12 in.
fn band_from(high: i64, kits: u32) -> Option<PaperId> {
    let text = format!(
        "title: A Band
unit: in
gift set: {{kind: band, width: 1 in}}
papers:
  oat: {{kind: cardstock, sheet: 12 x 12 in}}
bases:
  note: {{front: 4 x 3 in, bought: true, comes: folded}}
pieces:
  panel: {{of: oat, size: 12 x {high} in, count: 1}}
cards:
  - {{name: One, base: note, stands: wide}}
"
    );
    let (_, outcome) = read("band.yaml", &text);
    let notes: Vec<_> = outcome.notes.iter().map(|it| it.message.clone()).collect();
    let project = outcome.value.unwrap_or_else(|| panic!("{notes:#?}"));
    let options = PlanOptions { kits: Some(kits), ..PlanOptions::default() };
    let plan = plan(&project, &options).value.expect("a plan");
    match gift_set(&project, &plan).expect("it is wanted").holds {
        Holder::Band { from, strip } => {
            // Twice 3 in, the card, and 15 mm of overlap: at most 7 in.
            assert!(strip.width <= Length::inch(7, 1), "{strip:?}");
            from
        }
        Holder::Box { .. } => panic!("a band was asked for"),
    }
}

#[test]
fn a_band_for_every_kit_comes_from_what_is_left() {
    // 12 x 2 in is left of one sheet: two bands of less than 7 x 1 in.
    assert_eq!(band_from(10, 1), Some(PaperId(0)));
    // Less than an inch is left, so no band is wide enough.
    assert_eq!(band_from(12, 1), None);
    // Two kits and their spare one leave three such offcuts.
    assert_eq!(band_from(10, 2), Some(PaperId(0)));
    // Three panels of 4 in fill their only sheet.
    assert_eq!(band_from(4, 2), None);
}
