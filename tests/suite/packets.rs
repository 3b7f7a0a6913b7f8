//! What a reader holds in hand: every demo for every reader, as finished pages.

use std::fs;

use leafwright::geom::Unit;
use leafwright::handout::{self, BUILT_IN, Options, Template};
use leafwright::layout::{PageSetup, PageSize, Press, lay_out};
use leafwright::page::*;
use leafwright::pdf::{self, PdfInfo};
use leafwright::plan::{PlanOptions, plan};

use crate::diagnostics::read;
use crate::page_checks::{WHITE, extent, letters, texts};

struct Packet {
    name: String,
    laid: Laid,
}

/// A demo for a reader, on the page that the reader's template asks for.
fn packet(demo: &str, reader: &str, press: &mut Press) -> Packet {
    packet_on(demo, reader, None, press)
}

/// The same on pages in the sizes of a unit, or else of the project's own.
fn packet_on(demo: &str, reader: &str, unit: Option<Unit>, press: &mut Press) -> Packet {
    let path = format!("demo-data/{demo}.yaml");
    let text = fs::read_to_string(&path).expect("a readable demo");
    let project = read(&path, &text).1.value.expect("a sound demo");
    let template = Template::built_in(reader).expect("a built-in template");
    let options = PlanOptions { reader: template.reader, ..PlanOptions::default() };
    let plan = plan(&project, &options).value.expect("a plan");
    let document = handout::write(&project, &plan, &template, Options::default());
    let small = matches!(template.page.as_deref(), Some("half-letter" | "a5"));
    let size = match (small, unit.unwrap_or(project.unit)) {
        (false, Unit::Inch) => PageSize::Letter,
        (false, Unit::Mm) => PageSize::A4,
        (true, Unit::Inch) => PageSize::HalfLetter,
        (true, Unit::Mm) => PageSize::A5,
    };
    let setup = PageSetup { size, ..PageSetup::default() };
    let laid = lay_out(press, &document, &setup);
    assert!(laid.notes.is_empty(), "{demo} for {reader}: {:#?}", laid.notes);
    Packet { name: format!("{demo} for {reader}"), laid: laid.value.expect("pages") }
}

fn packets() -> Vec<Packet> {
    let mut press = Press::new();
    let demos = ["orchard-evenings", "market-morning", "tide-post", "willow-week"];
    let all = demos.iter().flat_map(|demo| BUILT_IN.iter().map(move |it| (demo, it.0)));
    all.map(|(demo, reader)| packet(demo, reader, &mut press)).collect()
}

/// How much of the height between the white edges is used, the foot left out: the
/// union of what items cover, and of gaps no larger than those between blocks.
fn used(page: &Page) -> f64 {
    let items = page.items.iter().filter(|it| it.owner != Owner::Running);
    let mut spans: Vec<_> = items.map(extent).map(|it| (it[1], it[3])).collect();
    spans.sort_by(|one, two| one.0.total_cmp(&two.0));
    let (mut covered, mut until) = (0.0, spans.first().map_or(0.0, |it| it.0));
    for (top, bottom) in spans {
        if top - until > 40.0 {
            until = top;
        }
        covered += (bottom - until).max(0.0);
        until = until.max(bottom);
    }
    // The text of a page ends where the foot has its own room.
    covered / (page.height - 2.0 * 38.0)
}

#[test]
fn packets_keep_to_their_pages() {
    let mut press = Press::new();
    let budgets = [
        // Five cards at a class table: two sheets of letter, on both sides.
        ("orchard-evenings", "class", 4),
        ("tide-post", "class", 4),
        ("willow-week", "class", 4),
        // One sheet, folded once.
        ("market-morning", "kit", 4),
        ("orchard-evenings", "kit", 4),
        ("tide-post", "kit", 4),
        ("willow-week", "kit", 4),
        // Four half pages on both sides of a sheet.
        ("orchard-evenings", "travel", 8),
        ("market-morning", "travel", 8),
        ("tide-post", "travel", 8),
        ("willow-week", "travel", 8),
    ];
    for (demo, reader, most) in budgets {
        // Budgets are in letter and half-letter pages.
        let Packet { name, laid } = packet_on(demo, reader, Some(Unit::Inch), &mut press);
        assert!(laid.pages.len() <= most, "{name}: {} pages", laid.pages.len());
    }
    // Whoever thinks in millimetres prints on a5.
    let Packet { name, laid } = packet("tide-post", "travel", &mut press);
    assert!(laid.pages.len() <= 8, "{name}: {} pages", laid.pages.len());
}

#[test]
fn only_the_last_page_of_a_packet_may_be_half_empty() {
    let mut thin = Vec::new();
    for Packet { name, laid } in packets() {
        let used: Vec<_> = laid.pages.iter().map(used).collect();
        let (_, all_but_last) = used.split_last().expect("a page");
        for (number, used) in all_but_last.iter().enumerate() {
            assert!(*used >= 0.5, "{name}, page {}: {used:.2}", number + 1);
        }
        let mean = all_but_last.iter().sum::<f64>() / all_but_last.len().max(1) as f64;
        if mean < 0.75 {
            thin.push(format!("{name}: {mean:.2} of {used:.2?}"));
        }
    }
    assert!(thin.is_empty(), "{thin:#?}");
}

#[test]
fn nothing_stands_nearer_than_a_quarter_inch_to_the_edge() {
    for Packet { name, laid } in packets() {
        for (number, page) in laid.pages.iter().enumerate() {
            for item in &page.items {
                let [left, top, right, bottom] = extent(item);
                let inside = left >= WHITE
                    && top >= WHITE
                    && right <= page.width - WHITE
                    && bottom <= page.height - WHITE;
                assert!(inside, "{name}, page {}: {item:?}", number + 1);
            }
        }
    }
}

#[test]
fn no_words_of_a_packet_stand_on_others() {
    for Packet { name, laid } in packets() {
        for (number, page) in laid.pages.iter().enumerate() {
            let all: Vec<_> =
                texts(page).map(|it| (letters(it.1), &it.1.run.text)).collect();
            for (at, (one, words)) in all.iter().enumerate() {
                for (two, others) in &all[at + 1..] {
                    let clear = one[2] <= two[0] + 0.6
                        || two[2] <= one[0] + 0.6
                        || one[3] <= two[1] + 0.6
                        || two[3] <= one[1] + 0.6;
                    assert!(clear, "{name}, page {}: {words} on {others}", number + 1);
                }
            }
        }
    }
}

/// Sizes of type that can be read at a table: cautions after UKAAF G003 (clear print is
/// 12 pt and more), steps and labels by common practice, no source.
#[test]
fn type_is_large_enough_to_be_read_at_a_table() {
    for Packet { name, laid } in packets() {
        let mut cautions = 0;
        for page in &laid.pages {
            let mut caution = None;
            for (item, text) in texts(page) {
                let Owner::Tag(tag) = item.owner else { continue };
                let (size, words) = (text.run.size, text.run.text.trim());
                assert!(size >= 9.0, "{name}: {words} is set in {size}");
                if ["WARNING", "CAUTION", "NOTICE"].contains(&words) {
                    (caution, cautions) = (Some(tag), cautions + 1);
                }
                if caution == Some(tag) {
                    assert!(size >= 12.0, "{name}: {words} is set in {size}");
                }
                let said = laid.tags.get(tag);
                let step = laid.tags.get(said.parent).role == Role::Body;
                if step && said.role == Role::Paragraph {
                    assert!(size >= 11.0 || size == 10.0, "{name}: {words} in {size}");
                }
            }
        }
        assert!(cautions > 0, "{name} has no caution");
    }
}

#[test]
fn a_packet_comes_out_the_same_whatever_was_laid_out_before() {
    let info = PdfInfo::default();
    let mut used = Press::new();
    packet("orchard-evenings", "class", &mut used);
    for (demo, reader) in [("tide-post", "travel"), ("market-morning", "kit")] {
        let [one, two] = [&mut Press::new(), &mut used].map(|press| {
            let laid = packet(demo, reader, press).laid;
            pdf::write(&laid, press.library(), &info).expect("bytes")
        });
        assert!(one == two, "{demo} for {reader}");
    }
}
