//! Ribbon by length, embellishments by count, and shares of a piece.

use leafwright::geom::{Length, Size};
use leafwright::plan::{Good, PlanOptions, plan, ribbon_step};
use leafwright::project::{Project, Reader, ToolId};

use crate::diagnostics::read;
use crate::handout::{outline, written};

const SET: &str = "title: Tied Up
unit: in
kits: 4
spares: none
papers:
  oat: {kind: cardstock, sheet: letter}
bases:
  note: {format: a2-us, bought: true}
tools:
  brads: {kind: embellishments, pack: 5}
  cord: {kind: ribbon, roll: 50 in}
pieces:
  sash: {of: oat, size: 5 1/4 x 2 in}
  third: {of: oat, size: {third of: sash}}
  half: {of: oat, size: {half of: sash, cut: lengthwise}}
  framed third: {of: oat, size: {around: third, border: 1/8 in}}
cards:
  - name: Parcel
    count: 2
    stands: wide
    layers: [{piece: sash}, {piece: framed third, behind: third}, {piece: third}, {piece: half, top: 1/8 in}]
    extras:
      - {what: cord, length: 8 1/4 in, where: round the fold and tied in front}
      - {what: brads, count: 3}
";

fn project() -> Project {
    let (_, outcome) = read("tied.yaml", SET);
    outcome.value.unwrap_or_else(|| panic!("{:?}", outcome.notes))
}

#[test]
fn shares_of_a_piece_follow_its_size() {
    let project = project();
    let sizes: Vec<Size> = project.pieces.iter().map(|it| it.size).collect();
    let inch = |over, under| Length::inch(over, under);
    assert_eq!(sizes[1], Size::new(inch(7, 4), inch(2, 1)), "5 1/4 / 3 = 1 3/4");
    assert_eq!(sizes[2], Size::new(inch(21, 4), inch(1, 1)), "2 / 2 = 1");
    assert_eq!(sizes[3], Size::new(inch(2, 1), inch(9, 4)), "and 1/8 in all round");
    assert!(project.pieces[3].mat && !project.pieces[1].mat);
}

#[test]
fn extras_are_counted_and_bought_in_packs_and_rolls() {
    let project = project();
    let plan = plan(&project, &PlanOptions::default()).value.expect("a plan");
    let row = |good| plan.supplies.rows.iter().find(|it| it.what == good).expect("a row");
    // 2 cards of 3 brads in 4 kits: 24, in packs of 5.
    let brads = row(Good::Counted(ToolId(0)));
    assert_eq!((brads.per_kit, brads.needed), (Some(6), 24));
    let packs = brads.packs.expect("packs");
    assert_eq!((packs.buy, packs.over), (5, 1));
    // 2 cards of 8 1/4 in in 4 kits: 66 in, in rolls of 50 in.
    let cord = row(Good::Ribbon(ToolId(1)));
    let step = ribbon_step(project.unit);
    assert_eq!(step * i64::from(cord.needed), Length::inch(66, 1));
    assert_eq!(cord.packs.expect("rolls").buy, 2);
    assert!(!plan.supplies.rows.iter().any(|it| matches!(it.what, Good::Tool(_))));
}

#[test]
fn the_handout_says_where_extras_go() {
    let said = outline(&written(&project(), "class", Reader::Class)).replace('_', " ");
    assert!(
        said.contains("Add 8 1/4 in of cord: round the fold and tied in front."),
        "{said}"
    );
    assert!(said.contains("Add 3 × brads."), "{said}");
}
