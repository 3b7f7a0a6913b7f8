//! Cards in their envelopes: thickness, mass, room.

use leafwright::diag::{Diagnostic, Severity};
use leafwright::geom::{Length, Side, Size, Unit};
use leafwright::plan::{Fit, PlanOptions, Room, fit, plan};
use leafwright::project::*;
use leafwright::source::Site;
use leafwright::standards::post::{Operator, Verdict};
use leafwright::standards::{FormatKind, format};

use crate::hand_made::{
    base, card, from, greeting, layer, paper, piece, project, size, text, tool,
};

fn hundredths(count: i64) -> Length {
    Length::from_units(count * 144)
}

#[track_caller]
fn fitted(project: &Project) -> (Vec<Fit>, Vec<Diagnostic>) {
    let planned = plan(project, &PlanOptions::default());
    let plan = planned.value.unwrap_or_else(|| panic!("no plan: {:?}", planned.notes));
    let (fits, notes) = fit(project, &plan.fronts);
    assert_eq!(plan.fits, fits);
    assert!(notes.iter().all(|note| planned.notes.contains(note)));
    (fits, notes)
}

fn envelope(size: Size) -> Option<Envelope> {
    Some(Envelope { size: Some(size), with_base: false, site: Site::default() })
}

fn mm(width: i64, height: i64) -> Size {
    Size::new(Length::mm(width), Length::mm(height))
}

fn foam(thickness: Option<Length>) -> Tool {
    tool("squares", ToolKind::Foam { thickness, side: None, pack: None })
}

/// A base made of a paper, one piece in its middle and another upon it; the
/// sizes of both are in 1/16 in.
fn matted(front: Size, mat: Size, panel: Size) -> Project {
    let mut project = project();
    project.papers.push(paper("board", size(384, 384), &[Runs::Any]));
    project.bases = vec![Base { front, ..base("note", BaseFrom::Made(PaperId(1))) }];
    project.pieces = vec![piece("mat", mat), piece("panel", panel)];
    let layers = vec![layer(Placed::Piece(PieceId(0))), layer(Placed::Piece(PieceId(1)))];
    project.cards = vec![card("Hello", Stands::Tall, layers)];
    project
}

#[test]
fn masses_of_cards() {
    // Arithmetic: area x substance. An A6 base of 250 g/m2 (A5 flat): 7.77 g.
    let mut project = matted(mm(105, 148), size(64, 80), size(60, 76));
    project.cards[0].layers.clear();
    project.papers[1].grams = Some(25_000);
    let (fits, _) = fitted(&project);
    assert_eq!(fits[0].mass_mg, 7770);
    assert!(!fits[0].mass_estimated);

    // 8 1/2 x 5 1/2 in of 80 lb cover (216.33 g/m2): 6.52 g.
    project.bases[0].front = size(68, 88);
    project.papers[1].grams = Some(21_633);
    let (fits, _) = fitted(&project);
    assert_eq!(fits[0].mass_mg.div_ceil(10), 653);

    // With a mat of 4 x 5 1/4 in and a panel of 3 3/4 x 5 in of 65 lb cover
    // (175.77 g/m2), in an A2 envelope of 24 lb bond: 14.7 g.
    let mut project = matted(size(68, 88), size(64, 84), size(60, 80));
    project.papers[0].grams = Some(17_577);
    project.papers[1].grams = Some(21_633);
    project.bases[0].envelope = envelope(size(92, 70));
    let (fits, _) = fitted(&project);
    let tenths = (fits[0].mass_mg + 50) / 100;
    assert_eq!(tenths, 147, "{} mg", fits[0].mass_mg);
    assert!(fits[0].mass_estimated, "the envelope is an estimate");
}

/// Base, mat and panel of 0.30 mm, the panel on foam of 2 mm, in an envelope.
fn stacked() -> Project {
    let mut project = matted(size(68, 88), size(64, 84), size(60, 80));
    for paper in &mut project.papers {
        paper.thickness = Some(hundredths(30));
    }
    project.tools = vec![foam(Some(Length::mm(2)))];
    project.cards[0].layers[1].raised = 4;
    project.bases[0].envelope = envelope(size(104, 76));
    project
}

#[test]
fn thicknesses_of_stacks() {
    // Arithmetic: 2 x 0.30 + 0.30 + 0.30 + 2.0 + 2 x 0.10 = 3.4 mm.
    let (fits, notes) = fitted(&stacked());
    assert_eq!(fits[0].card_thickness, hundredths(320));
    assert_eq!(fits[0].thickness, hundredths(340));
    assert_eq!((fits[0].card_estimated, fits[0].estimated), (false, true));
    assert_eq!(notes, []);

    // A second foam layer and panel: 5.7 mm, over 5 mm, under 1/4 in.
    let mut project = stacked();
    let again = project.cards[0].layers[1].clone();
    project.cards[0].layers.push(again);
    let (fits, notes) = fitted(&project);
    assert_eq!(fits[0].thickness, hundredths(570));
    let names: Vec<_> = notes.iter().map(|note| note.rule.name).collect();
    assert_eq!(names, ["card-thick-for-a-letter"]);
    assert_eq!(
        notes[0].message,
        "`Hello` is about 5.7 mm thick in its envelope; many postal operators take letters up to 5 mm"
    );
    assert_eq!(notes[0].rule.severity, Severity::Advice);
    let class_in = |operator| {
        let mut hints = fits[0].hints.iter();
        match hints.find(|hint| hint.operator == operator).unwrap().verdict {
            Verdict::Class(class) => class.key,
            Verdict::Below | Verdict::Beyond => "none",
        }
    };
    assert_eq!(class_in(Operator::UnitedKingdom), "uk-large-letter");
    assert_eq!(class_in(Operator::UnitedStates), "us-letter");
}

#[test]
fn layers_that_lie_apart_are_not_stacked() {
    let mut project = stacked();
    project.pieces = vec![piece("low", size(68, 40)), piece("high", size(68, 40))];
    project.cards[0].layers[0].up = from(Side::Bottom, 0);
    project.cards[0].layers[1].up = from(Side::Top, 0);
    let (fits, _) = fitted(&project);
    assert_eq!(fits[0].card_thickness, hundredths(60 + 230));
    // What lies inside is under both.
    let inside = layer(Placed::Piece(PieceId(0)));
    project.cards[0].inside.layers = vec![inside];
    let (fits, _) = fitted(&project);
    assert_eq!(fits[0].card_thickness, hundredths(60 + 230 + 30));
}

#[test]
fn a_mat_lies_under_its_label_and_foam_under_both() {
    let mut project = stacked();
    let mat = LabelMat::cut(PaperId(1), Length::inch(1, 16), Site::default());
    project.greetings = vec![Greeting { mat: Some(mat), ..greeting("hello") }];
    project.papers[1].thickness = Some(hundredths(50));
    project.cards[0].layers =
        vec![Layer { raised: 2, ..layer(Placed::Greeting(GreetingId(0))) }];
    let (fits, _) = fitted(&project);
    assert_eq!(fits[0].card_thickness, hundredths(2 * 50 + 200 + 50 + 30));
    assert!(!fits[0].card_estimated);
    project.papers.push(Paper { thickness: None, ..project.papers[1].clone() });
    project.greetings[0].mat = Some(LabelMat { of: PaperId(2), ..mat });
    assert!(fitted(&project).0[0].card_estimated);
}

#[test]
fn the_envelope_carries_layers_of_its_own() {
    let mut project = stacked();
    project.cards[0].envelope = vec![Layer {
        across: from(Side::Left, 2),
        up: from(Side::Bottom, 0),
        turned: leafwright::geom::Turn::Right,
        ..layer(Placed::Piece(PieceId(1)))
    }];
    let (fits, _) = fitted(&project);
    assert_eq!(fits[0].card_thickness, hundredths(320));
    assert_eq!(fits[0].thickness, hundredths(370));
}

#[test]
fn what_is_not_given_is_estimated_and_says_so() {
    // 1.2 um for each g/m2 (trade table: 0.30 mm at 250 g/m2); foam 2 mm.
    let mut project = stacked();
    project.tools.clear();
    for paper in &mut project.papers {
        paper.thickness = None;
        paper.grams = Some(25_000);
    }
    let (fits, _) = fitted(&project);
    assert_eq!(fits[0].card_thickness, hundredths(320));
    assert!(fits[0].card_estimated);
    // One unknown paper among given ones is enough, as is the mat of a label.
    let mut layered = stacked();
    layered.papers[0].thickness = None;
    assert!(fitted(&layered).0[0].card_estimated);
    layered.cards[0].layers.clear();
    assert!(!fitted(&layered).0[0].card_estimated);
    // A bought base of which nothing is known is taken for 250 g/m2.
    project.bases[0].from = BaseFrom::Bought(None);
    project.bases[0].envelope = None;
    let (fits, _) = fitted(&project);
    assert_eq!(fits[0].thickness, hundredths(320));
    assert!(fits[0].mass_estimated && fits[0].envelope.is_none());
    assert_eq!(fits[0].hints, []);
}

#[test]
fn the_foam_that_a_layer_names_is_the_one_under_it() {
    let mut project = stacked();
    project.tools.push(Tool { name: text("thin"), ..foam(Some(Length::mm(1))) });
    assert_eq!(fitted(&project).0[0].card_thickness, hundredths(320));
    assert!(fitted(&project).0[0].card_estimated, "either foam may be meant");
    project.cards[0].layers[1].with = Some(ToolId(1));
    assert_eq!(fitted(&project).0[0].card_thickness, hundredths(220));
    assert!(!fitted(&project).0[0].card_estimated);
}

#[test]
fn clearances_of_usual_cards() {
    // ISO 269 and lists of North American envelopes: envelope less card.
    let sixteenth = |number| Length::inch(number, 16);
    for (card, outer, spare) in [
        (size(80, 112), size(116, 84), [sixteenth(4), sixteenth(4)]),
        (size(68, 88), size(92, 70), [sixteenth(4), sixteenth(2)]),
        (mm(105, 148), mm(162, 114), [Length::mm(14), Length::mm(9)]),
        (mm(148, 210), mm(229, 162), [Length::mm(19), Length::mm(14)]),
        (mm(99, 210), mm(220, 110), [Length::mm(10), Length::mm(11)]),
    ] {
        let mut project = matted(card, size(16, 16), size(16, 16));
        project.cards[0].layers.clear();
        // The envelope may be written either way round.
        for outer in [outer, outer.turned()] {
            project.bases[0].envelope = envelope(outer);
            let clearance = fitted(&project).0[0].envelope.unwrap();
            assert_eq!([clearance.spare.width, clearance.spare.height], spare);
            assert_eq!(clearance.room, Room::Enough, "{card:?}");
        }
    }
}

#[test]
fn envelopes_are_as_long_as_the_tables_say() {
    // Length over height of ISO 269 and of the North American envelopes, as the
    // postal limits on shape look at it; to three digits.
    for (name, ratio) in [
        ("a1-us", 1.414),
        ("a2-us", 1.314),
        ("a6-us", 1.368),
        ("a7-us", 1.381),
        ("a8-us", 1.477),
        ("a9-us", 1.522),
        ("a10-us", 1.583),
        ("slimline-us", 2.290),
        ("no-10-us", 2.303),
        ("c6", 1.421),
        ("b6", 1.408),
        ("dl", 2.0),
        ("c5", 1.414),
        ("c6/c5", 2.009),
    ] {
        let size = format(name, FormatKind::Envelope).expect(name).size();
        let found = size.long().as_mm() / size.short().as_mm();
        assert!((found - ratio).abs() < 0.000_51, "{name}: {found}");
    }
}

#[test]
fn a_thick_card_wants_its_thickness_besides() {
    // The card is 3.2 mm thick: common practice asks W + t <= envelope.
    let mut project = stacked();
    let front = project.bases[0].front;
    let mut room = |spare: Length| {
        let outer = Size::new(front.height + Length::mm(20), front.width + spare);
        project.bases[0].envelope = envelope(outer);
        let (fits, notes) = fitted(&project);
        (fits[0].envelope.unwrap().room, notes)
    };
    let one = Length::from_units(1);
    assert_eq!(room(hundredths(620)), (Room::Enough, vec![]));
    assert_eq!(room(hundredths(620) - one), (Room::Tight, vec![]));
    assert_eq!(room(hundredths(320)), (Room::Tight, vec![]));
    let (found, notes) = room(hundredths(310));
    assert_eq!(found, Room::TooThick);
    assert_eq!(notes.len(), 1);
    assert_eq!(notes[0].rule.severity, Severity::Warning);
    assert!(
        notes[0].message.starts_with("`Hello` is 3.2 mm thick, but in its envelope of ")
    );
    assert!(notes[0].message.ends_with(" it has only 3.1 mm to spare"));
    assert_eq!(room(hundredths(320) - one).0, Room::TooThick);
    assert_eq!(room(Length::ZERO).0, Room::TooThick);
}

#[test]
fn the_note_on_a_base_names_its_thickest_card_only() {
    let mut project = stacked();
    project.unit = Unit::Mm;
    project.bases[0].envelope = envelope(size(92, 69));
    let mut thicker = card("Higher", Stands::Tall, project.cards[0].layers.clone());
    thicker.layers.push(layer(Placed::Piece(PieceId(1))));
    project.cards.push(thicker);
    let (_, notes) = fitted(&project);
    assert_eq!(notes.len(), 1);
    assert!(notes[0].message.starts_with("`Higher` is 3.5 mm thick"));
}

#[test]
fn a_letter_is_thick_from_four_and_a_half_millimetres() {
    // 5 mm of most operators, less half a millimetre (common practice).
    let mut project = stacked();
    project.bases[0].envelope = envelope(size(192, 192));
    let mut notes = |thickness| {
        project.tools[0] = foam(Some(thickness));
        fitted(&project).1.len()
    };
    assert_eq!(notes(hundredths(310)), 0);
    assert_eq!(notes(hundredths(310) + Length::from_units(1)), 1);
}
