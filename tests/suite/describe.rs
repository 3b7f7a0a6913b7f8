//! Reading a description: what it comes to, and that nothing brings it down.

use std::fs;

use crate::diagnostics::read;
use leafwright::diag::{Outcome, render};
use leafwright::geom::{Axis, Length, Shape, Side, Size, Turn, Unit};
use leafwright::project::{
    Along, BaseFrom, Comes, FaceId, Grain, LateHow, OwnAct, Pack, PaperId, PieceId,
    Placed, Project, Reader, Runs, Spares, Stock, ToolKind, Work,
};
use leafwright::source::Sources;

const DEMOS: [&str; 2] = ["demo-data/orchard-evenings.yaml", "demo-data/tide-post.yaml"];

fn demo(path: &str) -> String {
    fs::read_to_string(path).expect("a readable demo")
}

/// The project of a description without a fault.
fn sound(text: &str) -> Project {
    let (sources, outcome) = read("test.yaml", text);
    outcome.value.unwrap_or_else(|| panic!("{}", shown(&sources, &outcome.notes)))
}

fn shown(sources: &Sources, notes: &[leafwright::diag::Diagnostic]) -> String {
    let notes = notes.iter().map(|it| render::render(it, sources, render::Style::Plain));
    notes.collect::<Vec<_>>().join("\n")
}

fn inch(numerator: i64, denominator: i64) -> Length {
    Length::inch(numerator, denominator)
}

#[test]
fn the_demos_read_without_a_note() {
    for path in DEMOS {
        let (sources, outcome) = read(path, &demo(path));
        assert!(outcome.notes.is_empty(), "{}", shown(&sources, &outcome.notes));
        assert_eq!(outcome.value.expect("a project").cards.len(), 5);
    }
}

#[test]
fn a_demo_comes_to_what_it_says() {
    let project = sound(&demo(DEMOS[0]));
    assert_eq!(project.kits, 12);
    assert_eq!(project.unit, Unit::Inch);
    assert_eq!(project.spares, Spares::Usual);
    let orchard = &project.papers[0];
    let Stock::Sheets(sheets) = &orchard.stock else { panic!("sheets") };
    assert_eq!(sheets[0].size, Size::new(inch(12, 1), inch(12, 1)));
    assert_eq!(orchard.faces[0].runs, Runs::Up);
    assert_eq!(orchard.faces[1].runs, Runs::Any);
    assert_eq!(orchard.grams, Some(15_000));
    assert_eq!(orchard.color, Some([0x7a, 0x9a, 0x6b]));
    let oat = &project.papers[1];
    // 80 lb cover is 216.3 gsm by the definition of its basis size, 20 x 26 in.
    assert_eq!(oat.grams, Some(21_633));
    assert_eq!(oat.grain, Some(Grain::Upright));
    assert_eq!(oat.pack, Some(Pack { holds: 25, designs: 1 }));
    let note = &project.bases[0];
    assert_eq!(note.front, Size::new(inch(17, 4), inch(11, 2)));
    assert_eq!(note.comes, Comes::Scored);
    let envelope = note.envelope.expect("envelopes come with it");
    assert_eq!(envelope.size, Some(Size::new(inch(23, 4), inch(35, 8))));
    assert!(envelope.with_base);
    assert_eq!(project.bases[1].from, BaseFrom::Made(PaperId(1)));
    assert_eq!(project.bases[1].comes, Comes::Flat);
    let late = &project.late_cuts[0];
    assert_eq!(late.how, LateHow::CutOff { cut: Axis::Level, at: inch(1, 2) });
    assert_eq!(late.makes[1].size, Size::new(inch(11, 2), inch(5, 4)));
    assert_eq!(late.makes[0].showing, Some(FaceId(1)));
    assert!(late.at_the_card);
    let ToolKind::Punch(punch) = project.tools[1].kind else { panic!("a punch") };
    assert_eq!(punch.outline.shape, Shape::Rounded);
    assert_eq!(punch.takes_strips, Some(inch(11, 4)));
    let hello = &project.greetings[1];
    assert_eq!(hello.words.words, "Hello");
    assert_eq!(hello.label, project.greetings[0].label);
    let layers = &project.cards[1].layers;
    assert_eq!(layers[0].edge_to_edge, Some(Axis::Level));
    assert!(matches!(layers[0].up, Along::From(Side::Bottom, it, _) if it == inch(5, 4)));
    assert!(
        matches!(layers[1].up, Along::Beyond { of: 0, side: Side::Bottom, gap, .. } if gap == inch(1, 8))
    );
    assert!(matches!(layers[2].up, Along::Straddling { of: 0, side: Side::Top, .. }));
    assert_eq!((layers[2].across, layers[2].raised), (Along::Center, 4));
    assert_eq!(layers[0].showing, Some(FaceId(0)));
    assert!(project.cards[1].inside.chosen);
    let banner = &project.cards[2].layers[0];
    assert!(matches!(banner.across, Along::From(Side::Left, Length::ZERO, _)));
    assert_eq!(banner.edge_to_edge, Some(Axis::Upright));
    assert_eq!(
        project.done_ahead[0].work,
        [Work::Cut, Work::Punch],
        "in the order of the work, for {:?}",
        Reader::Class
    );
    assert!(!project.cut_by[2].reader_cuts);
}

/// A description with all that it takes to place layers.
const STOCK: &str = "title: Meadow Days
unit: in
papers:
  meadow: {sheet: 8 x 8 in, faces: {rows: {runs: up}, dots: {runs: any}}}
  oat: {kind: cardstock, sheet: letter}
bases:
  note: {format: a2-us, bought: {pack: 12, with: envelopes}}
";

#[test]
fn a_mat_is_larger_all_round_and_shares_the_middle() {
    let project = sound(&format!(
        "{STOCK}pieces:
  tile: {{of: meadow, size: 2 x 3 in}}
  frame: {{of: oat, size: {{around: tile, border: 1/8 in}}}}
  larger: {{of: oat, size: {{around: frame, border: 1/8 in}}}}
cards:
  - name: One
    stands: tall
    layers:
      - {{piece: larger, behind: frame}}
      - {{piece: frame, behind: tile}}
      - {{piece: tile, left: 1 in, up: center}}
"
    ));
    assert_eq!(project.pieces[1].size, Size::new(inch(9, 4), inch(13, 4)));
    assert_eq!(project.pieces[2].size, Size::new(inch(5, 2), inch(7, 2)));
    assert!(project.pieces[1].mat && !project.pieces[0].mat);
    let layers = &project.cards[0].layers;
    for (layer, left) in layers.iter().zip([inch(3, 4), inch(7, 8), inch(1, 1)]) {
        assert!(matches!(layer.across, Along::From(Side::Left, it, _) if it == left));
        assert_eq!(layer.up, Along::Center);
    }
}

#[test]
fn layers_can_be_placed_in_every_way() {
    let project = sound(&format!(
        "{STOCK}pieces:
  sash: {{of: meadow, size: 5 1/2 x 2 in}}
  tile: {{of: meadow, size: 1 x 1 in}}
cards:
  - name: One
    stands: wide
    layers:
      - {{piece: sash, along: fold, edge to edge: true}}
      - {{piece: tile, called: first, within: sash, right: 1/4 in, showing: dots}}
      - {{piece: tile, called: second, left of: first, gap: 1/8 in, turned: right}}
      - {{piece: tile, centered on: first}}
      - {{piece: tile, straddling: bottom of sash, left: 1 in}}
    inside:
      layers: [{{piece: tile}}]
    envelope: [{{piece: tile, left: 1/4 in, bottom: 1/4 in}}]
"
    ));
    let card = &project.cards[0];
    let [sash, first, second, third, fourth] = &card.layers[..] else {
        panic!("five layers")
    };
    // A wide card with its fold along the long side folds at the top.
    assert!(matches!(sash.up, Along::From(Side::Top, Length::ZERO, _)));
    assert_eq!(sash.edge_to_edge, Some(Axis::Level));
    assert!(
        matches!(first.across, Along::Within { of: 0, side: Side::Right, inset, .. } if inset == inch(1, 4))
    );
    assert!(matches!(first.up, Along::CenterOf(0, _)));
    assert_eq!(first.showing, Some(FaceId(1)));
    assert!(matches!(second.across, Along::Beyond { of: 1, side: Side::Left, .. }));
    assert!(matches!(second.up, Along::CenterOf(1, _)));
    assert_eq!(second.turned, Turn::Right);
    assert!(matches!(third.across, Along::CenterOf(1, _)));
    assert!(matches!(fourth.up, Along::Straddling { of: 0, side: Side::Bottom, .. }));
    assert_eq!(card.inside.layers[0].across, Along::Center);
    assert_eq!(card.envelope[0].what, Placed::Piece(PieceId(1)));
}

#[test]
fn her_own_way_of_cutting_is_read_step_by_step() {
    let project = sound(&format!(
        "{STOCK}pieces:
  sash: {{of: meadow, size: 5 1/2 x 2 in, count: 1}}
  ribbon: {{of: meadow, size: 5 1/2 x 1 1/4 in, count: 2}}
  tile: {{of: meadow, size: 2 3/4 x 3 1/2 in, count: 2}}
  banner: {{of: meadow, size: 2 1/2 x 5 1/2 in, count: 1, pattern: any way}}
cutting:
  meadow:
    - {{trim to: 5 1/2 in wide, other part: side}}
    - {{cut off: 2 in high, for: sash}}
    - {{cut off: 1 1/4 in high, for: ribbon, times: 2}}
    - {{halve: across, for: tile}}
    - {{take: side, cut off: 5 1/2 in high, for: banner}}
    - {{keep: rest}}
"
    ));
    let steps = &project.cutting[0].steps;
    assert!(
        matches!(&steps[0].act, OwnAct::TrimTo { cut: Axis::Upright, to, other: Some(it) }
            if *to == inch(11, 2) && it.words == "side")
    );
    assert!(matches!(
        steps[2].act,
        OwnAct::CutOff { cut: Axis::Level, times: 2, piece: Some(PieceId(1)), .. }
    ));
    // What is left is 5 1/2 x 3 1/2 in: across it means from top to bottom.
    assert_eq!(steps[3].act, OwnAct::Halve { cut: Axis::Upright, piece: PieceId(2) });
    assert_eq!(steps[4].take.as_ref().map(|it| it.words.as_str()), Some("side"));
    assert_eq!(steps[5].act, OwnAct::Keep(None));
}

#[test]
fn values_stay_as_they_were_typed() {
    let project = sound(
        "title: yes
edition: 4.10
about: 2026
papers: {oat: {sheet: a4, order number: 0x10}}
pieces: {no: {of: oat, size: 10 x 20 mm, count: 3}}
tips: [1/2, ~x]
",
    );
    assert_eq!(project.title.words, "yes");
    assert_eq!(project.edition.expect("an edition").words, "4.10");
    assert_eq!(project.about.expect("a text").words, "2026");
    assert_eq!(project.papers[0].order_number.as_ref().expect("one").words, "0x10");
    assert_eq!(project.pieces[0].name.words, "no");
    assert_eq!(project.tips[0].words, "1/2");
    // No unit is stated: lengths are shown in the unit that they were given in.
    assert_eq!(project.unit, Unit::Mm);
}

#[test]
fn spacing_and_remarks_do_not_change_the_project() {
    let text = demo(DEMOS[0]);
    let spaced = text.replace('\n', "   # a remark\n\n").replace(": ", ":  ");
    let windows = text.replace('\n', "\r\n");
    assert_eq!(sound(&text), sound(&spaced));
    assert_eq!(sound(&text), sound(&windows));
    assert_eq!(sound(&text), sound(&format!("\u{feff}---\n{text}...\n")));
}

#[test]
fn an_anchor_may_repeat_what_was_written() {
    let project = sound(
        "title: Twice
unit: mm
papers: {oat: &oat {sheet: a4}, rye: *oat}
pieces: {a: {of: rye, size: 10 x 20, count: 1}, b: {of: oat, size: 10 x 20, count: 1}}
",
    );
    assert_eq!(project.papers[0].stock, project.papers[1].stock);
}

fn is_refused(text: &str, rule: &str) -> Outcome<Project> {
    let (sources, outcome) = read("test.yaml", text);
    assert!(outcome.value.is_none());
    assert!(outcome.notes.iter().any(|it| it.rule.name == rule), "{:?}", outcome.notes);
    let _ = shown(&sources, &outcome.notes);
    outcome
}

#[test]
fn hostile_texts_are_refused() {
    let mut bomb = String::from("a0: &a0 [x, x, x, x, x, x, x, x, x]\n");
    for level in 1..30 {
        let row = vec![format!("*a{}", level - 1); 9].join(", ");
        bomb.push_str(&format!("a{level}: &a{level} [{row}]\n"));
    }
    is_refused(&bomb, "too-large");
    is_refused(&format!("title: {}", "[".repeat(20_000)), "too-large");
    is_refused(&format!("title: {}", "{a: ".repeat(20_000)), "too-large");
    let deep: String = (0..1_000).map(|it| format!("{}a:\n", " ".repeat(it))).collect();
    is_refused(&deep, "too-large");
    is_refused(&"- ".repeat(20_000), "too-large");
    is_refused(&format!("title: {}", "x".repeat(5 << 20)), "too-large");
    is_refused(&format!("tips: [{}]", "a, ".repeat(600_000)), "too-large");
    is_refused("a: &a [*a]", "bad-alias");
    is_refused("\0", "broken-line");
    for sign in ["-", "4 ", "1/", "x", "¼", "'", "9"] {
        let length = sign.repeat(100_000);
        let text = format!("title: A\npapers: {{oat: {{sheet: \"1 x {length}\"}}}}");
        let (_, outcome) = read("test.yaml", &text);
        assert!(outcome.value.is_none());
    }
}

#[test]
fn many_faults_do_not_take_for_ever() {
    // Thousands of unknown names against thousands of known ones.
    let mut text =
        String::from("title: Many\nunit: mm\npapers: {oat: {sheet: a4}}\npieces:\n");
    for index in 0..5_000 {
        text.push_str(&format!(
            "  piece number {index}: {{like: peice number {index}}}\n"
        ));
    }
    let outcome = is_refused(&text, "unknown-name");
    assert!(outcome.notes.len() <= 500);
    let line: String = (0..15_000).map(|it| format!("key number {it}: 1, ")).collect();
    is_refused(&format!("{{title: One line, {line}}}"), "unknown-key");
    let ring: String = (0..10_000)
        .map(|it| format!("  p{it}: {{like: p{}}}\n", (it + 1) % 10_000))
        .collect();
    let text = format!("title: Ring\npieces:\n{ring}");
    let outcome = is_refused(&text, "goes-in-a-circle");
    assert_eq!(outcome.notes.len(), 1);
}

/// A small generator of numbers, so that a failing edit can be found again.
struct Dice(u64);

impl Dice {
    fn below(&mut self, most: usize) -> usize {
        self.0 = self
            .0
            .wrapping_mul(6_364_136_223_846_793_005)
            .wrapping_add(1_442_695_040_888_963_407);
        usize::try_from(self.0 >> 33).unwrap_or(0) % most.max(1)
    }
}

#[test]
fn edits_of_the_demos_never_bring_it_down() {
    const SCRAPS: [&str; 24] = [
        "{",
        "}",
        "[",
        "]",
        ":",
        ": ",
        ",",
        "#",
        " #",
        "\t",
        "\n",
        "  ",
        "-",
        "- ",
        "*a",
        "&a ",
        "\"",
        "'",
        "0",
        "99999999999",
        "1/0",
        "é¼",
        "like: thanks",
        "|",
    ];
    let mut refused = 0;
    for (which, path) in DEMOS.iter().enumerate() {
        let text = demo(path);
        let lines: Vec<&str> = text.lines().collect();
        for round in 0..400 {
            let mut dice = Dice(round * 2 + u64::try_from(which).unwrap_or(0));
            let mut edited = text.clone();
            for _ in 0..=dice.below(3) {
                let mut at = dice.below(edited.len());
                while !edited.is_char_boundary(at) {
                    at -= 1;
                }
                match dice.below(4) {
                    0 => edited.insert_str(at, SCRAPS[dice.below(SCRAPS.len())]),
                    1 => drop(edited.remove(at)),
                    2 => {
                        let line = lines[dice.below(lines.len())];
                        edited = edited.replacen(line, lines[dice.below(lines.len())], 1);
                    }
                    _ => {
                        let word = edited[at..]
                            .split([' ', '\n'])
                            .next()
                            .unwrap_or("")
                            .to_owned();
                        if !word.is_empty() {
                            edited =
                                edited.replace(&word, SCRAPS[dice.below(SCRAPS.len())]);
                        }
                    }
                }
            }
            let (sources, outcome) = read(path, &edited);
            assert_eq!(outcome.value.is_none(), outcome.has_errors(), "round {round}");
            refused += usize::from(outcome.value.is_none());
            let _ = shown(&sources, &outcome.notes);
        }
    }
    assert!(200 < refused, "the edits do too little: {refused} of 800 refused");
}
