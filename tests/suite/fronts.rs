//! Where layers sit, and what is said when they can't.

use leafwright::diag::Outcome;
use leafwright::geom::{Axis, Length, Rect, Side, Size, Turn};
use leafwright::plan::{Front, PlanOptions, plan};
use leafwright::project::*;
use leafwright::source::Site;

use crate::hand_made::*;

fn planned(project: &Project) -> Front {
    let plan = plan(project, &PlanOptions::default());
    assert!(!plan.has_errors(), "{:#?}", plan.notes);
    plan.value.expect("a plan without errors").fronts.remove(0)
}

fn rules(project: &Project) -> Vec<&'static str> {
    let plan = plan(project, &PlanOptions::default());
    assert_eq!(plan.value.is_none(), plan.has_errors());
    plan.notes.iter().map(|note| note.rule.name).collect()
}

/// A card with layers of pieces of these sizes, standing so.
fn with(stands: Stands, layers: Vec<(Size, Layer)>) -> Project {
    let mut project = project();
    for (at, (size, _)) in layers.iter().enumerate() {
        project.pieces.push(piece(&format!("p{at}"), *size));
    }
    let layers = layers.into_iter().map(|(_, layer)| layer).collect();
    project.cards.push(card("Card", stands, layers));
    project
}

fn nth(index: usize) -> Layer {
    layer(Placed::Piece(PieceId(index)))
}

fn at(x: i64, y: i64, width: i64, height: i64) -> Rect {
    Rect::new(sixteenths(x), sixteenths(y), size(width, height))
}

#[test]
fn the_fold_lies_along_the_longer_side_unless_said() {
    for (stands, along, size_, fold) in [
        (Stands::Tall, FoldAlong::Long, size(68, 88), Side::Left),
        (Stands::Wide, FoldAlong::Long, size(88, 68), Side::Top),
        (Stands::Tall, FoldAlong::Short, size(68, 88), Side::Top),
        (Stands::Wide, FoldAlong::Short, size(88, 68), Side::Left),
    ] {
        let mut project = with(stands, vec![(size(16, 16), nth(0))]);
        project.bases[0].fold = along;
        let front = planned(&project);
        assert_eq!((front.size, front.fold), (size_, fold));
    }
}

#[test]
fn layers_sit_from_each_side_and_in_the_middle() {
    // The front is 88 x 68, the piece 20 x 10 (in sixteenths of an inch).
    for (across, up, x, y) in [
        (Along::Center, Along::Center, 34, 29),
        (from(Side::Left, 3), from(Side::Top, 5), 3, 5),
        (from(Side::Right, 3), from(Side::Bottom, 5), 65, 53),
        (from(Side::Left, 0), from(Side::Bottom, 0), 0, 58),
    ] {
        let layer = Layer { across, up, ..nth(0) };
        let front = planned(&with(Stands::Wide, vec![(size(20, 10), layer)]));
        assert_eq!(front.layers[0].laid, at(x, y, 20, 10));
        assert_eq!(front.layers[0].rect, front.layers[0].laid);
    }
}

#[test]
fn layers_sit_by_an_earlier_layer() {
    let site = Site::default();
    let gap = sixteenths(2);
    let beyond = |side| Along::Beyond { of: 0, side, gap, site };
    let straddling = |side| Along::Straddling { of: 0, side, site };
    let within = |side| Along::Within { of: 0, side, inset: gap, site };
    // The earlier one lies at (20, 10) and is 30 x 20; the later one is 8 x 6.
    let first = Layer { across: from(Side::Left, 20), up: from(Side::Top, 10), ..nth(0) };
    for (across, up, x, y) in [
        (beyond(Side::Left), beyond(Side::Top), 10, 2),
        (beyond(Side::Right), beyond(Side::Bottom), 52, 32),
        (straddling(Side::Left), straddling(Side::Top), 16, 7),
        (straddling(Side::Right), straddling(Side::Bottom), 46, 27),
        (within(Side::Left), within(Side::Top), 22, 12),
        (within(Side::Right), within(Side::Bottom), 40, 22),
        (Along::CenterOf(0, site), Along::CenterOf(0, site), 31, 17),
    ] {
        let layers = vec![
            (size(30, 20), first.clone()),
            (size(8, 6), Layer { across, up, ..nth(1) }),
        ];
        let front = planned(&with(Stands::Wide, layers));
        assert_eq!(front.layers[1].laid, at(x, y, 8, 6));
    }
}

#[test]
fn a_layer_may_be_placed_by_a_later_one_but_not_in_a_circle() {
    let site = Site::default();
    let behind = |of| Layer {
        across: Along::CenterOf(of, site),
        up: Along::CenterOf(of, site),
        ..nth(1 - of)
    };
    let panel = Layer { across: from(Side::Left, 10), up: from(Side::Top, 10), ..nth(1) };
    let layers = vec![(size(24, 24), behind(1)), (size(20, 20), panel)];
    let front = planned(&with(Stands::Wide, layers));
    assert_eq!(front.layers[0].laid, at(8, 8, 24, 24));

    let circle = vec![(size(24, 24), behind(1)), (size(20, 20), behind(0))];
    let faults = rules(&with(Stands::Wide, circle));
    assert!(!faults.is_empty());
    assert!(faults.iter().all(|it| *it == "layers-in-a-circle"), "{faults:?}");
}

#[test]
fn a_quarter_turn_exchanges_width_and_height() {
    let layer = Layer { turned: Turn::Right, ..nth(0) };
    let front = planned(&with(Stands::Tall, vec![(size(20, 10), layer)]));
    assert_eq!(front.layers[0].laid, at(29, 34, 10, 20));
}

#[test]
fn edge_to_edge_takes_the_whole_front_and_no_less() {
    let across = || Layer { edge_to_edge: Some(Axis::Level), ..nth(0) };
    let exact = with(Stands::Wide, vec![(size(88, 20), across())]);
    assert_eq!(planned(&exact).layers[0].laid, at(0, 24, 88, 20));

    let short = with(Stands::Wide, vec![(size(87, 20), across())]);
    assert_eq!(rules(&short), ["layer-does-not-reach"]);

    let long = with(Stands::Wide, vec![(size(90, 20), across())]);
    assert_eq!(rules(&long), ["layer-off-the-front"; 2]);

    let flush = Layer { trim_flush: true, ..across() };
    let front = planned(&with(Stands::Wide, vec![(size(90, 20), flush)]));
    assert_eq!(front.layers[0].laid, at(-1, 24, 90, 20));
    assert_eq!(front.layers[0].rect, at(0, 24, 88, 20));

    let aside = Layer { across: from(Side::Left, 1), trim_flush: true, ..across() };
    let aside = with(Stands::Wide, vec![(size(90, 20), aside)]);
    assert_eq!(rules(&aside), ["layer-does-not-reach"]);
}

#[test]
fn what_hangs_over_is_said_with_both_numbers() {
    let layer = Layer { across: from(Side::Left, 80), ..nth(0) };
    let project = with(Stands::Wide, vec![(size(20, 10), layer)]);
    let plan: Outcome<_> = plan(&project, &PlanOptions::default());
    assert!(plan.value.is_none());
    assert_eq!(plan.notes.len(), 1);
    assert_eq!(
        plan.notes[0].message,
        "`p0` hangs 3/4 in over the right edge of the front"
    );
    assert_eq!(
        plan.notes[0].help,
        ["move it 3/4 in to the left, or say `trim flush: true`; \
             the front is 5 1/2 in wide"]
    );
}

#[test]
fn a_raised_layer_is_neither_trimmed_nor_too_small_for_its_squares() {
    let over =
        Layer { across: from(Side::Left, 80), trim_flush: true, raised: 1, ..nth(0) };
    assert_eq!(
        rules(&with(Stands::Wide, vec![(size(20, 20), over)])),
        ["raised-layer-trimmed"]
    );
    // 1 x 1 in has room for 3 x 3 squares of 6 mm that stay 2 mm from the edge.
    let nine = Layer { raised: 9, ..nth(0) };
    assert!(rules(&with(Stands::Wide, vec![(size(16, 16), nine)])).is_empty());
    let ten = Layer { raised: 10, ..nth(0) };
    let ten = with(Stands::Wide, vec![(size(16, 16), ten)]);
    assert_eq!(
        plan(&ten, &PlanOptions::default()).notes[0].rule.name,
        "too-many-squares"
    );
}

#[test]
fn a_mat_shows_all_round_and_is_what_the_place_is_meant_for() {
    let mut project = project();
    let mut hello = greeting("hello");
    hello.mat = Some(LabelMat::cut(PaperId(0), sixteenths(2), Site::default()));
    project.greetings.push(hello);
    let layer = Layer {
        across: from(Side::Left, 4),
        up: from(Side::Bottom, 4),
        ..layer(Placed::Greeting(GreetingId(0)))
    };
    project.cards.push(card("Card", Stands::Wide, vec![layer]));
    let set = planned(&project).layers[0];
    assert_eq!(set.mat, Some(at(4, 44, 36, 20)));
    assert_eq!(set.laid, at(6, 46, 32, 16));
    assert_eq!(set.visible(), at(4, 44, 36, 20));
}

#[test]
fn the_face_that_shows_is_the_layers_then_the_late_cuts_then_the_first() {
    let whole = size(40, 20);
    let mut project = with(Stands::Wide, vec![(whole, nth(0))]);
    project.papers[0] = paper("leaf", size(192, 192), &[Runs::Any, Runs::Any]);
    let mut late = late_cut(PieceId(0), whole, 8, ["sill", "rail"]);
    late.makes[0].showing = Some(FaceId(1));
    project.late_cuts.push(late);
    let late = |part| layer(Placed::Late(LateId(0), part));
    let layers = &mut project.cards[0].layers;
    layers.push(late(0));
    layers.push(late(1));
    layers.push(Layer { showing: Some(FaceId(0)), ..late(0) });
    let front = planned(&project);
    let shown: Vec<_> =
        front.layers.iter().map(|set| set.showing.map(|it| it.0)).collect();
    assert_eq!(shown, [Some(0), Some(1), Some(0), Some(0)]);
    assert_eq!(front.layers[1].laid.size, Size::new(whole.width, sixteenths(8)));
}

#[test]
fn a_pattern_that_is_laid_on_its_side_is_pointed_out() {
    for (runs, turn, said) in [
        (Runs::Up, Turn::Over, true),
        (Runs::Up, Turn::Left, true),
        (Runs::BothWays, Turn::Over, false),
        (Runs::BothWays, Turn::Right, true),
        (Runs::Any, Turn::Right, false),
    ] {
        let layer = Layer { turned: turn, ..nth(0) };
        let mut project = with(Stands::Wide, vec![(size(20, 10), layer)]);
        project.papers[0].faces[0].runs = runs;
        let plan = plan(&project, &PlanOptions::default());
        assert!(plan.value.is_some());
        assert_eq!(plan.notes.iter().any(|it| it.rule.name == "pattern-turned"), said);
    }
}

#[test]
fn layers_on_an_envelope_need_its_size_and_lie_on_it() {
    let mut project = with(Stands::Wide, vec![(size(20, 10), nth(0))]);
    project.cards[0].envelope.push(Layer { across: from(Side::Right, 0), ..nth(0) });
    assert_eq!(rules(&project), ["envelope-size-unknown"]);
    project.bases[0].envelope = Some(Envelope {
        size: Some(size(92, 70)),
        with_base: true,
        site: Site::default(),
    });
    assert_eq!(planned(&project).envelope[0].laid, at(72, 30, 20, 10));
    project.bases[0].envelope = Some(Envelope {
        size: Some(Size::new(Length::mm(100), Length::mm(100))),
        with_base: true,
        site: Site::default(),
    });
    assert_eq!(rules(&project), ["card-larger-than-envelope"]);
}
