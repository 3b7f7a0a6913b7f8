//! The designer's own way of cutting within the whole plan.

use leafwright::geom::Axis;
use leafwright::plan::{PlanOptions, plan};
use leafwright::project::*;
use leafwright::source::Site;

use crate::hand_made::*;

/// 8 x 8 in: two 6 x 1 1/4, one 6 x 2 1/2, two 3 x 3 (common practice, no source).
fn set() -> Project {
    let mut project = project();
    project.papers[0] = paper("stripes", size(128, 128), &[Runs::Up]);
    let counted = |name, size, count| Piece { count: Some(count), ..piece(name, size) };
    project.pieces = vec![
        counted("strip", size(96, 20), 2),
        counted("band", size(96, 40), 1),
        counted("tile", size(48, 48), 2),
    ];
    let site = Site::default();
    let step = |act| OwnStep { take: None, act, site };
    let cut_off = |at, piece, times| OwnAct::CutOff {
        cut: Axis::Level,
        at: sixteenths(at),
        piece: Some(PieceId(piece)),
        name: None,
        times,
        at_site: site,
    };
    let side = text("side");
    let (cut, to) = (Axis::Upright, sixteenths(96));
    let steps = vec![
        step(OwnAct::TrimTo { cut, to, other: Some(side.clone()) }),
        step(cut_off(40, 1, 1)),
        step(cut_off(20, 0, 2)),
        step(OwnAct::Halve { cut, piece: PieceId(2) }),
        step(OwnAct::Keep(Some(side))),
    ];
    project.cutting = vec![OwnCutting { paper: PaperId(0), steps, site }];
    project
}

#[test]
fn her_own_way_is_taken_and_compared_with_the_best() {
    let outcome = plan(&set(), &PlanOptions::default());
    let plan = outcome.value.unwrap_or_else(|| panic!("{:#?}", outcome.notes));
    let cut = &plan.cuts[0];
    let own = cut.own.expect("she gave one");
    assert_eq!((own.sheets, own.best_sheets), (1, 1));
    assert_eq!((own.cuts, own.best_cuts), (5, 5));
    assert_eq!((own.offcut, own.best_offcut), (Some(size(32, 128)), own.offcut));
    assert!(cut.proven);
    assert!(cut.offcut.is_some_and(|offcut| offcut.proven));
    assert_eq!(cut.patterns.len(), 1);
    // Her order: first the trim, and the halving last.
    let marks: Vec<_> = cut.schedule.steps.iter().map(|step| step.mark).collect();
    assert_eq!(marks, [96, 40, 20, 48].map(sixteenths));
}

#[test]
fn for_many_kits_her_way_is_repeated_and_the_best_may_do_with_fewer() {
    let mut project = set();
    project.kits = 10;
    project.spares = Spares::Kits(0);
    let cut = &plan(&project, &PlanOptions::default()).value.expect("a plan").cuts[0];
    let own = cut.own.expect("she gave one");
    assert_eq!((own.sheets, own.cuts), (10, 5));
    assert!(own.best_sheets <= 10);
    assert_eq!(cut.proven, own.sheets == cut.bound.sheets);
}

#[test]
fn what_does_not_add_up_is_an_error_of_the_plan() {
    let mut project = set();
    project.cutting[0].steps.remove(3);
    let outcome = plan(&project, &PlanOptions::default());
    assert!(outcome.value.is_none());
    assert!(outcome.has_errors());
}
