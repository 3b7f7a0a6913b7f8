//! Whole packs, spares, and what one kit and all kits need.

use leafwright::geom::Side;
use leafwright::plan::{Good, PlanOptions, Supplies, Supply, packs, plan};
use leafwright::project::*;
use leafwright::source::Site;

use crate::hand_made::*;

fn supplied(project: &Project, options: &PlanOptions) -> Supplies {
    let plan = plan(project, options);
    plan.value.unwrap_or_else(|| panic!("{:#?}", plan.notes)).supplies
}

fn row(supplies: &Supplies, what: Good) -> Supply {
    *supplies.rows.iter().find(|row| row.what == what).expect("a row for it")
}

/// One card with a piece of 4 x 3 in, of which twelve lie on a sheet of 12 x 12.
fn small_set() -> Project {
    let mut project = project();
    project.pieces.push(piece("panel", size(64, 48)));
    let layer = layer(Placed::Piece(PieceId(0)));
    project.cards.push(card("Card", Stands::Wide, vec![layer]));
    project
}

#[test]
fn packs_are_never_short_and_never_one_too_many() {
    for holds in 1..=14 {
        for designs in (1..=holds).filter(|designs| holds % designs == 0) {
            for needed in 0..60_u32 {
                // Lays pack upon pack until the sheets of one design do.
                let (mut bought, mut have) = (0, 0);
                while have < needed {
                    bought += 1;
                    have += holds / designs;
                }
                let packs = packs(Pack { holds, designs }, needed);
                assert_eq!((packs.buy, packs.over), (bought, have - needed));
                assert_eq!(packs.holds, holds / designs);
            }
        }
    }
}

#[test]
fn a_pack_of_odd_content_does_not_fail() {
    let none = packs(Pack { holds: 0, designs: 0 }, 3);
    assert_eq!((none.holds, none.buy, none.over), (1, 3, 0));
    let most = packs(Pack { holds: u32::MAX, designs: 1 }, u32::MAX);
    assert_eq!((most.buy, most.over), (1, 0));
}

// One kit in ten, at least one: common practice, no source.
#[test]
fn spares_are_one_kit_in_ten_but_none_for_a_single_kit() {
    for (kits, spares) in [(1, 0), (2, 1), (10, 1), (11, 2), (12, 2), (40, 4), (41, 5)] {
        let options = PlanOptions { kits: Some(kits), ..PlanOptions::default() };
        let supplies = supplied(&small_set(), &options);
        assert_eq!((supplies.spares, supplies.kits), (spares, kits + spares));
    }
    let mut project = small_set();
    project.spares = Spares::Kits(0);
    project.kits = 12;
    assert_eq!(supplied(&project, &PlanOptions::default()).kits, 12);
}

#[test]
fn sheets_are_counted_over_all_kits_and_bought_in_packs() {
    let mut project = small_set();
    project.papers[0].pack = Some(Pack { holds: 2, designs: 1 });
    project.kits = 25;
    project.spares = Spares::Kits(0);
    let sheets =
        row(&supplied(&project, &PlanOptions::default()), Good::Sheets(PaperId(0)));
    assert_eq!((sheets.needed, sheets.per_kit), (3, None));
    let packs = sheets.packs.expect("sold in packs");
    assert_eq!((packs.buy, packs.over), (2, 1));
}

#[test]
fn where_each_cuts_her_own_nothing_is_pooled() {
    let mut project = small_set();
    project.kits = 25;
    project.spares = Spares::Kits(0);
    project.cut_by.push(CutBy {
        reader: Reader::Travel,
        reader_cuts: true,
        site: Site::default(),
    });
    let options = PlanOptions { reader: Reader::Travel, ..PlanOptions::default() };
    let sheets = row(&supplied(&project, &options), Good::Sheets(PaperId(0)));
    assert_eq!((sheets.needed, sheets.per_kit), (25, Some(1)));
}

#[test]
fn bases_and_their_envelopes_are_counted() {
    let mut project = small_set();
    let pack = Some(Pack { holds: 10, designs: 1 });
    project.bases[0].from = BaseFrom::Bought(pack);
    let site = Site::default();
    project.bases[0].envelope = Some(Envelope { size: None, with_base: true, site });
    project.cards[0].count = 3;
    project.kits = 4;
    let supplies = supplied(&project, &PlanOptions::default());
    let bases = row(&supplies, Good::Bases(BaseId(0)));
    assert_eq!((bases.per_kit, bases.needed), (Some(3), 15));
    assert_eq!(bases.packs.map(|packs| (packs.buy, packs.over)), Some((2, 5)));
    assert_eq!(row(&supplies, Good::Envelopes(BaseId(0))).needed, 15);
}

#[test]
fn foam_squares_are_counted_by_kind() {
    let mut project = small_set();
    let raised =
        |raised, with| Layer { raised, with, ..layer(Placed::Piece(PieceId(0))) };
    project.cards[0].count = 2;
    project.cards[0].layers = vec![raised(4, None), raised(3, None)];
    let supplies = supplied(&project, &PlanOptions::default());
    assert_eq!(row(&supplies, Good::AnyFoam).per_kit, Some(14));

    let foam = |pack| ToolKind::Foam { thickness: None, side: None, pack };
    let pack = Some(Pack { holds: 5, designs: 1 });
    project.cards[0].layers[1].with = Some(ToolId(1));
    project.tools = vec![tool("thin", foam(pack)), tool("thick", foam(None))];
    let supplies = supplied(&project, &PlanOptions::default());
    let thin = row(&supplies, Good::Foam(ToolId(0)));
    assert_eq!((thin.needed, thin.packs.map(|packs| packs.buy)), (8, Some(2)));
    assert_eq!(row(&supplies, Good::Foam(ToolId(1))).needed, 6);
    assert!(!supplies.rows.iter().any(|row| matches!(row.what, Good::Tool(_))));
}

#[test]
fn scraps_are_counted_by_the_piece() {
    let mut project = small_set();
    project.papers[0].stock = Stock::Scraps(size(48, 64), Site::default());
    project.kits = 2;
    project.spares = Spares::Kits(0);
    let supplies = supplied(&project, &PlanOptions::default());
    assert_eq!(row(&supplies, Good::Scraps(PaperId(0))).needed, 2);
}

#[test]
fn every_tool_is_listed_once() {
    let mut project = small_set();
    project.tools = vec![tool("ink", ToolKind::InkPad), tool("tape", ToolKind::Tape)];
    project.kits = 30;
    let layer = Layer { up: from(Side::Top, 0), ..layer(Placed::Piece(PieceId(0))) };
    project.cards[0].layers.push(layer);
    let supplies = supplied(&project, &PlanOptions::default());
    for tool in 0..2 {
        let row = row(&supplies, Good::Tool(ToolId(tool)));
        assert_eq!((row.needed, row.per_kit), (1, None));
    }
}
