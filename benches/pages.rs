//! How long a handout takes, phase by phase, and how large it becomes.
//!
//! `cargo bench --bench pages` measures handouts of made-up sets;
//! `… -- write FILE CARDS` writes the description of one, for the command to be
//! measured from start to exit.

#![expect(clippy::print_stdout, reason = "a bench reports to whoever runs it")]
#![expect(clippy::disallowed_methods, reason = "benches measure time")]

use std::fmt::Write;
use std::time::{Duration, Instant};

use leafwright::document::Document;
use leafwright::handout::{self, Options, Template};
use leafwright::layout::{PageSetup, Press, lay_out};
use leafwright::page::{Laid, Role, What};
use leafwright::pdf::{self, PdfInfo};
use leafwright::plan::{PlanOptions, plan};
use leafwright::project;
use leafwright::source::{Empty, Source};

/// Each phase is run so often, and its quickest run counts: others ran beside it.
const RUNS: u32 = 9;

fn main() {
    let arguments: Vec<_> = std::env::args().skip(1).collect();
    let arguments: Vec<_> = arguments.iter().map(String::as_str).collect();
    if let ["write", file, cards, ..] = arguments[..] {
        let cards = cards.parse().expect("a number of cards");
        std::fs::write(file, description(cards)).expect("a file that can be written");
        return;
    }
    println!(
        "{:>6} {:>6} {:>7} {:>6} {:>8} {:>8} {:>8} {:>8} {:>8} {:>8} {:>7}",
        "cards",
        "pages",
        "chars",
        "draw",
        "read",
        "plan",
        "write",
        "press",
        "lay out",
        "pdf",
        "KB"
    );
    for cards in [4, 12, 40] {
        measure(cards);
    }
    growth();
}

/// The quickest of some runs, and what the last one made.
fn quickest<T>(mut run: impl FnMut() -> T) -> (Duration, T) {
    let mut best = Duration::MAX;
    let mut made = None;
    for _ in 0..RUNS {
        let start = Instant::now();
        made = Some(run());
        best = best.min(start.elapsed());
    }
    (best, made.expect("it ran"))
}

fn measure(cards: u32) {
    let text = description(cards);
    let (reading, project) = quickest(|| {
        let (_, read) = project::read(Source::new("bench.yaml", &text), &Empty);
        read.value.expect("a sound description")
    });
    let template = Template::built_in("class").expect("a template of the house");
    let options = PlanOptions { reader: template.reader, ..PlanOptions::default() };
    let (planning, plan) = quickest(|| plan(&project, &options).value.expect("a plan"));
    let (writing, document) =
        quickest(|| handout::write(&project, &plan, &template, Options::default()));
    let (opening, _) = quickest(Press::new);
    let setup = PageSetup::default();
    let (laying, laid) = quickest(|| {
        // Every run shapes anew.
        let mut press = Press::new();
        lay_out(&mut press, &document, &setup).value.expect("pages")
    });
    let press = Press::new();
    let info = PdfInfo::default();
    let (printing, bytes) =
        quickest(|| pdf::write(&laid, press.library(), &info).expect("a file"));
    let ms = |it: Duration| format!("{:.2}", it.as_secs_f64() * 1000.0);
    let (characters, drawings) = counted(&laid);
    println!(
        "{cards:>6} {:>6} {characters:>7} {drawings:>6} {:>8} {:>8} {:>8} {:>8} {:>8} {:>8} {:>7.1}",
        laid.pages.len(),
        ms(reading),
        ms(planning),
        ms(writing),
        ms(opening),
        ms(laying.saturating_sub(opening)),
        ms(printing),
        bytes.len() as f64 / 1000.0
    );
}

/// Characters that are printed, and drawings.
fn counted(laid: &Laid) -> (usize, usize) {
    let items = laid.pages.iter().flat_map(|it| &it.items);
    let characters = items.filter_map(|it| match &it.what {
        What::Text(text) => Some(text.run.text.chars().count()),
        What::Path(_) | What::Window(_) => None,
    });
    let is_drawing = |role: &Role| {
        matches!(role, Role::Figure { area: Some([_, top, _, bottom]), .. }
            if bottom - top > 20.0)
    };
    let drawings = laid.tags.all().filter(|it| is_drawing(&it.1.role)).count();
    (characters.sum(), drawings)
}

/// The same handout over and over, up to a thousand pages: time for each page.
fn growth() {
    let text = description(12);
    let (_, read) = project::read(Source::new("bench.yaml", &text), &Empty);
    let project = read.value.expect("a sound description");
    let template = Template::built_in("class").expect("a template of the house");
    let options = PlanOptions { reader: template.reader, ..PlanOptions::default() };
    let plan = plan(&project, &options).value.expect("a plan");
    let once = handout::write(&project, &plan, &template, Options::default());
    println!("{:>6} {:>10} {:>10} {:>9}", "pages", "lay out", "pdf", "KB/page");
    for times in [1, 10, 100] {
        let document = repeated(&once, times);
        let start = Instant::now();
        let mut press = Press::new();
        let laid = lay_out(&mut press, &document, &PageSetup::default());
        let laid = laid.value.expect("pages");
        let middle = Instant::now();
        let bytes = pdf::write(&laid, press.library(), &PdfInfo::default());
        let end = Instant::now();
        let pages = laid.pages.len() as f64;
        println!(
            "{:>6} {:>7.2} ms {:>7.2} ms {:>9.1}",
            laid.pages.len(),
            (middle - start).as_secs_f64() * 1000.0 / pages,
            (end - middle).as_secs_f64() * 1000.0 / pages,
            bytes.expect("a file").len() as f64 / 1000.0 / pages
        );
    }
}

/// A document many times over, each time with other words.
fn repeated(once: &Document, times: usize) -> Document {
    let mut document = once.clone();
    for time in 1..times {
        document.sections.extend(once.sections.iter().cloned().map(|mut section| {
            section.anchor = format!("{}-{time}", section.anchor);
            section
        }));
    }
    document
}

/// A set of so many cards, each with pieces and greetings of its own.
fn description(cards: u32) -> String {
    let (mut pieces, mut greetings, mut set) =
        (String::new(), String::new(), String::new());
    for card in 1..=cards {
        let part = card % 4;
        writeln!(pieces, "  band {card}: {{of: hedge, size: 5 1/2 x 1 {part}/8 in}}")
            .expect("a string takes every text");
        writeln!(pieces, "  block {card}: {{of: hedge, size: 2 x 2 {part}/8 in}}")
            .expect("a string takes every text");
        writeln!(
            greetings,
            "  wish {card}:\n    words: With every good wish, number {card}\n    \
             stamped: 1 1/2 x 3/8 in\n    stamps: garden words\n    ink: moss ink\n    \
             label: {{cut: 2 x 3/4 in}}\n    of: cream"
        )
        .expect("a string takes every text");
        write!(
            set,
            "  - name: Hedge {card}
    base: note
    stands: wide
    layers:
      - {{piece: band {card}, edge to edge: true, bottom: 3/4 in}}
      - {{piece: block {card}, left: 1/2 in, top: 3/8 in}}
      - {{greeting: wish {card}, raised: 3 squares, right: 1/4 in, top: 1/2 in}}
    inside: {{words: \"We walked along the hedge and thought of you, {card}\", ink: moss ink}}
    tips:
      - Rub the band down from the middle outwards, so that no air stays below it, and let it lie under a book.
      - Leave a line of the base showing below the band; card {card} looks best with a narrow one.
      - If the block sits askew, lift it with the tip of a knife before the glue has dried.
"
        )
        .expect("a string takes every text");
    }
    let pieces = pieces.replace(" 0/8", "").replace("2/8", "1/4");
    format!(
        "title: Along the hedge
about: A set of {cards} cards for a long evening at a large table.
unit: in
kits: 1
papers:
  hedge: {{kind: patterned, sheet: 12 x 12 in, faces: {{leaves: {{runs: up}}, berries: {{runs: any}}}}, weight: 120 gsm, pack: {{sheets: 12}}}}
  cream: {{kind: cardstock, sheet: letter, weight: 80 lb cover, pack: {{sheets: 25}}}}
bases:
  note: {{format: a2-us, bought: {{pack: 10, with: envelopes}}, comes: scored flat}}
tools:
  trimmer: {{kind: sliding trimmer, longest cut: 12 in, sheets at once: 3, marks: 1/16 in, narrowest strip: 1/4 in}}
  garden words: {{kind: stamp set}}
  moss ink: {{kind: ink pad}}
  glue: {{kind: glue, dries: 20 min}}
  foam: {{kind: foam squares, thickness: 2 mm, pack: 100}}
pieces:
{pieces}greetings:
{greetings}cards:
{set}"
    )
}
