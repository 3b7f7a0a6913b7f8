//! The designer's own way of cutting: carried out, verified, ordered.

use leafwright::diag::Diagnostic;
use leafwright::geom::{Axis, Length, Size};
use leafwright::plan::cut::{
    Leaf, OwnWay, Part, PartOf, Pattern, Turning, own_way, schedule,
};
use leafwright::project::{
    OwnAct, OwnCutting, OwnStep, PaperId, PatternOn, Piece, PieceId, Project, Text,
    Trimmer, TrimmerKind,
};
use leafwright::source::Site;

use crate::hand_made;
use crate::schedule::carry::check;

const TRIMMER: Trimmer = Trimmer {
    longest_cut: Some(Length::inch(12, 1)),
    sheets_at_once: 1,
    marks: Length::inch(1, 16),
    narrowest: Length::inch(1, 4),
    kind: TrimmerKind::Sliding,
};

const SASH: PieceId = PieceId(0);
const RIBBON: PieceId = PieceId(1);
const TILE: PieceId = PieceId(2);
const BANNER: PieceId = PieceId(3);

/// Sixteenths of an inch.
fn s(sixteenths: i64) -> Length {
    Length::inch(sixteenths, 16)
}

fn site(start: u32) -> Site {
    Site { file: 0, start, end: start + 1 }
}

fn text(words: &str, at: u32) -> Text {
    Text { words: words.into(), site: site(at), ..Text::default() }
}

/// Four pieces on 8 x 8 in: 5 1/2 x 2, two 5 1/2 x 1 1/4, two 2 3/4 x 3 1/2 and
/// one 2 1/2 x 5 1/2 in.
fn parts() -> (Project, Vec<Part>) {
    let rows = [
        ("sash", 88, 32, 1),
        ("ribbon", 88, 20, 2),
        ("tile", 44, 56, 2),
        ("banner", 40, 88, 1),
    ];
    let mut project = hand_made::project();
    let mut parts = Vec::new();
    for (idx, (name, width, height, count)) in rows.into_iter().enumerate() {
        let size = Size::new(s(width), s(height));
        let at = u32::try_from(idx).unwrap();
        project.pieces.push(Piece {
            name: text(name, 1000 + at),
            of: PaperId(0),
            size,
            size_site: site(2000 + at),
            pattern: PatternOn::AsItRuns,
            spare: 0,
            count: Some(count),
            mat: false,
            next_to: None,
            region: None,
        });
        parts.push(Part {
            of: PartOf::Piece(PieceId(idx)),
            letter: "A".into(),
            size,
            turning: Turning::Fixed,
            per_kit: count,
            count: 3 * count,
            late: Vec::new(),
            greetings: Vec::new(),
            site: site(2000 + at),
        });
    }
    (project, parts)
}

/// Steps with their index as site.
fn own(acts: Vec<(Option<&str>, OwnAct)>) -> OwnCutting {
    let steps = acts.into_iter().zip(0..).map(|((take, act), at)| OwnStep {
        take: take.map(|it| text(it, at)),
        act,
        site: site(at),
    });
    OwnCutting { paper: PaperId(0), steps: steps.collect(), site: site(900) }
}

fn trim(cut: Axis, to: i64, other: Option<&str>) -> (Option<&str>, OwnAct) {
    (None, OwnAct::TrimTo { cut, to: s(to), other: other.map(|it| text(it, 500)) })
}

fn off(cut: Axis, at: i64, piece: PieceId, times: u32) -> (Option<&'static str>, OwnAct) {
    let at = s(at);
    (
        None,
        OwnAct::CutOff {
            cut,
            at,
            piece: Some(piece),
            name: None,
            times,
            at_site: site(700),
        },
    )
}

fn take<'a>(name: &'a str, step: (Option<&str>, OwnAct)) -> (Option<&'a str>, OwnAct) {
    (Some(name), step.1)
}

fn across(piece: PieceId) -> (Option<&'static str>, OwnAct) {
    (None, OwnAct::Halve { cut: Axis::Upright, piece })
}

fn keep(name: &str) -> (Option<&str>, OwnAct) {
    (None, OwnAct::Keep(Some(text(name, 600))))
}

/// Her way as a sound one: trim, sash, ribbons, tiles, banner, an offcut.
fn sound() -> Vec<(Option<&'static str>, OwnAct)> {
    vec![
        trim(Axis::Upright, 88, Some("side")),
        off(Axis::Level, 32, SASH, 1),
        off(Axis::Level, 20, RIBBON, 2),
        across(TILE),
        take("side", off(Axis::Level, 88, BANNER, 1)),
        keep("side"),
    ]
}

fn verify(acts: Vec<(Option<&str>, OwnAct)>) -> (Option<OwnWay>, Vec<Diagnostic>) {
    let (project, parts) = parts();
    let sheet = Size::new(s(128), s(128));
    let found = own_way(&own(acts), &project, &parts, sheet, &TRIMMER);
    assert_eq!(found.value.is_none(), found.has_errors());
    (found.value, found.notes)
}

/// The one note that is made, as rule, first byte of its place and words.
#[track_caller]
fn only_note(acts: Vec<(Option<&str>, OwnAct)>) -> (&'static str, u32, String) {
    let (_, notes) = verify(acts);
    assert_eq!(notes.len(), 1, "{notes:?}");
    (notes[0].rule.name, notes[0].site.start, notes[0].message.clone())
}

#[test]
fn a_sound_way_is_carried_out_in_her_order() {
    let (found, notes) = verify(sound());
    let found = found.expect("it adds up");
    assert_eq!(notes, []);
    // Own arithmetic: seven parts and an offcut 2 1/2 x 2 1/2 in take six cuts:
    // 5 1/2; 2; 1 1/4 twice; 2 3/4; and 5 1/2 off the side.
    assert_eq!(found.tree.cuts(), 6);
    let order = &found.in_her_order;
    let marks: Vec<Length> = order.steps.iter().map(|it| it.mark).collect();
    assert_eq!(marks, [s(88), s(32), s(20), s(44), s(88)]);
    // All three kits: one sheet each.
    assert_eq!((order.marks, found.sheets, order.strokes), (5, 3, 18));
    let sheet = Size::new(s(128), s(128));
    let offcut = found.tree.placements(sheet);
    let offcut: Vec<Size> =
        offcut.iter().filter(|it| it.leaf == Leaf::Keep).map(|it| it.rect.size).collect();
    assert_eq!(offcut, [Size::new(s(40), s(40))]);
    // It can be carried out in her order, and in the best one with a mark less:
    // the side is cut at 5 1/2 in before the mark moves.
    let pattern = [Pattern { sheet, tree: found.tree.clone(), copies: found.sheets }];
    check(&pattern, order, &TRIMMER);
    let best = schedule(&pattern, &TRIMMER);
    check(&pattern, &best, &TRIMMER);
    assert_eq!((best.marks, best.proven), (4, true));
    assert_eq!((order.at_least, order.proven), (4, false));
}

#[test]
fn a_cut_beyond_the_part_in_hand_says_by_how_much() {
    let mut acts = sound();
    acts[1] = off(Axis::Level, 130, SASH, 1);
    assert_eq!(
        only_note(acts),
        (
            "own-cut-too-large",
            700,
            "the cut is at 8 1/8 in, but the part in hand is 8 in high: 1/8 in too little".into()
        )
    );
}

#[test]
fn a_piece_of_another_size_says_by_how_much() {
    let mut acts = sound();
    acts[0] = trim(Axis::Upright, 89, Some("side"));
    let (_, notes) = verify(acts);
    let other_size: Vec<&str> = notes
        .iter()
        .filter(|it| it.rule.name == "own-piece-other-size")
        .map(|it| it.message.as_str())
        .collect();
    assert_eq!(
        other_size[0],
        "what comes off for `sash` is 5 9/16 x 2 in, but the piece is 5 1/2 x 2 in: 1/16 in too wide"
    );
    // All pieces of the strip and of the side are told; a step that is done several
    // times is told once.
    assert_eq!(other_size.len(), 4);
}

#[test]
fn a_part_that_is_not_there_is_told() {
    let mut acts = sound();
    acts[4] = take("flank", off(Axis::Level, 88, BANNER, 1));
    let (name, at, message) = only_note(acts);
    assert_eq!((name, at), ("own-part-unknown", 4));
    assert_eq!(message, "no step before this one names a part `flank`");
}

#[test]
fn a_part_that_is_used_up_is_told() {
    let mut acts = sound();
    acts.swap(4, 5);
    let (name, at, message) = only_note(acts);
    assert_eq!((name, at), ("own-part-used-twice", 5));
    assert_eq!(message, "nothing is left of `side` to be cut");
}

#[test]
fn nothing_in_hand_is_told() {
    let mut acts = sound();
    acts[4].0 = None;
    assert_eq!(only_note(acts).0, "own-nothing-in-hand");
}

#[test]
fn a_name_given_twice_is_told() {
    let mut acts = sound();
    acts.insert(1, trim(Axis::Level, 120, Some("side")));
    assert_eq!(only_note(acts).0, "own-name-twice");
}

#[test]
fn a_pattern_that_would_lie_on_its_side_is_told() {
    // 2 1/2 in high and 5 1/2 in wide: the banner, but lying.
    let acts = vec![
        trim(Axis::Upright, 88, None),
        off(Axis::Level, 40, BANNER, 1),
        off(Axis::Level, 32, SASH, 1),
        off(Axis::Level, 20, RIBBON, 2),
    ];
    let (_, notes) = verify(acts);
    let names: Vec<&str> = notes.iter().map(|it| it.rule.name).collect();
    assert_eq!(names, ["own-piece-turned"]);
}

#[test]
fn missing_and_surplus_pieces_are_counted() {
    let mut acts = sound();
    acts[2] = off(Axis::Level, 20, RIBBON, 1);
    acts[3] = trim(Axis::Level, 56, None);
    acts.insert(4, across(TILE));
    let (name, at, message) = only_note(acts);
    assert_eq!((name, at), ("own-pieces-missing", 900));
    assert_eq!(message, "a kit needs 2 of `ribbon`, but this way makes 1");

    let (project, mut parts) = parts();
    parts[1].per_kit = 1;
    let sheet = Size::new(s(128), s(128));
    let found = own_way(&own(sound()), &project, &parts, sheet, &TRIMMER);
    assert_eq!(found.notes.len(), 1);
    assert_eq!(found.notes[0].rule.name, "own-pieces-to-spare");
    assert_eq!(found.notes[0].message, "a kit needs 1 of `ribbon`, but this way makes 2");
    assert!(found.value.is_some(), "a warning does not stop her");
}

#[test]
fn a_sheet_may_serve_several_kits_and_a_kit_take_several_sheets() {
    let (project, mut parts) = parts();
    let sheet = Size::new(s(128), s(128));
    for (per_kit, kits, sheets) in [(1, 6, 3), (2, 3, 3), (4, 3, 6)] {
        for part in &mut parts {
            part.per_kit = per_kit;
            part.count = per_kit * kits;
        }
        // All pieces of this sheet are two tiles.
        let tiles = [Part { of: PartOf::Piece(TILE), ..parts[2].clone() }];
        let acts = vec![
            trim(Axis::Upright, 88, None),
            trim(Axis::Level, 56, None),
            (None, OwnAct::Halve { cut: Axis::Upright, piece: TILE }),
        ];
        let found = own_way(&own(acts), &project, &tiles, sheet, &TRIMMER);
        assert_eq!(found.notes, []);
        assert_eq!(found.value.map(|it| it.sheets), Some(sheets));
    }
}

#[test]
fn a_forgotten_part_and_a_long_cut_are_told() {
    let mut acts = sound();
    acts.truncate(4);
    acts.push((None, OwnAct::Take));
    let (_, notes) = verify(acts);
    let names: Vec<&str> = notes.iter().map(|it| it.rule.name).collect();
    assert_eq!(names, ["own-pieces-missing", "own-part-forgotten"]);

    let (project, parts) = parts();
    let short = Trimmer { longest_cut: Some(s(100)), ..TRIMMER };
    let sheet = Size::new(s(128), s(128));
    let found = own_way(&own(sound()), &project, &parts, sheet, &short);
    assert_eq!(found.notes[0].rule.name, "own-cut-too-long");
    assert_eq!(found.notes[0].message, "the cut is 8 in long; the trimmer cuts 6 1/4 in");
}

#[test]
fn the_last_of_several_may_be_what_is_left() {
    let (project, parts) = parts();
    let ribbons = [Part { per_kit: 3, count: 3, ..parts[1].clone() }];
    let acts = vec![off(Axis::Level, 20, RIBBON, 3)];
    let sheet = Size::new(s(88), s(60));
    let found = own_way(&own(acts), &project, &ribbons, sheet, &TRIMMER);
    assert_eq!(found.notes, []);
    let found = found.value.expect("it adds up");
    assert_eq!((found.tree.cuts(), found.in_her_order.steps[0].times), (2, 2));
    assert!(found.in_her_order.steps[0].slack);
}

#[test]
fn a_trim_of_what_is_that_wide_already_is_no_cut() {
    let mut acts = sound();
    acts.insert(0, trim(Axis::Level, 128, None));
    let (found, notes) = verify(acts);
    assert_eq!(notes, []);
    assert_eq!(found.map(|it| it.tree.cuts()), Some(6));
}
