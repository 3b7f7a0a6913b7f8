//! Every sheet cut the same way, beside the plan with the fewest sheets.

use leafwright::plan::cut::{Leaf, PaperCut};
use leafwright::plan::{PlanOptions, plan};
use leafwright::project::*;

use crate::hand_made::*;

/// Each kit takes a panel of 5 x 7 in and three tiles of 4 x 4 in, from 12 x 12 in.
fn set(kits: u32) -> Project {
    let mut project = project();
    project.kits = kits;
    project.spares = Spares::Kits(0);
    project.pieces = vec![
        Piece { count: Some(1), ..piece("panel", size(80, 112)) },
        Piece { count: Some(3), ..piece("tile", size(64, 64)) },
    ];
    project
}

fn cut(project: &Project, alike: bool) -> PaperCut {
    let options = PlanOptions { alike, ..PlanOptions::default() };
    let outcome = plan(project, &options);
    outcome.value.unwrap_or_else(|| panic!("{:#?}", outcome.notes)).cuts.remove(0)
}

fn sheets(cut: &PaperCut) -> u32 {
    cut.patterns.iter().map(|it| it.copies).sum()
}

#[test]
fn the_price_of_cutting_alike_stands_beside_the_fewest_sheets() {
    let project = set(5);
    let fewest = cut(&project, false);
    let beside = fewest.alike.expect("sheets are cut in several ways");
    assert!(fewest.patterns.len() > 1 && !beside.chosen);
    assert_eq!(beside.fewest.sheets, sheets(&fewest));
    assert_eq!(beside.fewest.marks, fewest.schedule.marks);

    let alike = cut(&project, true);
    assert_eq!(alike.patterns.len(), 1);
    assert_eq!(alike.alike.map(|it| (it.alike, it.chosen)), Some((beside.alike, true)));
    assert_eq!(sheets(&alike), beside.alike.sheets);
    assert!(alike.schedule.steps.len() < fewest.schedule.steps.len());
    assert_eq!(alike.proven, sheets(&alike) == fewest.bound.sheets);
}

#[test]
fn each_sheet_holds_whole_kits_and_what_is_left_over_is_told() {
    for kits in 2..8 {
        let project = set(kits);
        let cut = cut(&project, true);
        let [pattern] = cut.patterns.as_slice() else { panic!("one way to cut") };
        let placed = pattern.tree.placements(pattern.sheet);
        let on_sheet = |index| {
            let mine = placed
                .iter()
                .filter(|it| matches!(it.leaf, Leaf::Part { part, .. } if part == index));
            u32::try_from(mine.count()).expect("few")
        };
        let each = on_sheet(0);
        assert_eq!(on_sheet(1), 3 * each);
        let over = cut.alike.map_or(0, |it| it.left_over);
        assert_eq!(each * pattern.copies, kits + over);
        assert!(over < each, "a sheet less would do");
        for part in &cut.parts {
            assert_eq!(part.count, part.per_kit * (kits + over));
        }
    }
}

#[test]
fn one_kit_and_sheets_that_are_alike_anyway_have_no_other_plan() {
    assert_eq!(cut(&set(1), false).alike, None);
    let mut strips = set(6);
    strips.pieces = vec![Piece { count: Some(9), ..piece("tile", size(64, 64)) }];
    assert_eq!(cut(&strips, false).alike, None);
    assert_eq!(cut(&strips, true), cut(&strips, false));
}

#[test]
fn the_key_and_the_option_ask_for_the_same() {
    let by_option = cut(&set(5), true);
    let by_key = Project { sheets_alike: true, ..set(5) };
    assert_eq!(cut(&by_key, false), by_option);
}

#[test]
fn a_paper_may_ask_for_it_or_be_left_out() {
    let by_option = cut(&set(5), true);
    let mut by_paper = set(5);
    by_paper.papers[0].sheets_alike = Some(true);
    assert_eq!(cut(&by_paper, false), by_option);
    let mut not_this = Project { sheets_alike: true, ..set(5) };
    not_this.papers[0].sheets_alike = Some(false);
    assert_eq!(cut(&not_this, false), cut(&set(5), false));
    assert_eq!(cut(&not_this, true), by_option, "the option has the last word");
}
