//! From the cards to the cutting: counting, turning, letters, and what is said.

use std::collections::BTreeMap;

use leafwright::geom::{Length, Size, Turn};
use leafwright::plan::cut::{Leaf, PaperCut, Part, PartOf, Turning};
use leafwright::plan::{PlanOptions, plan};
use leafwright::project::*;
use leafwright::source::Site;

use crate::hand_made::*;

/// Not for the best plan, only for a sound one.
fn options() -> PlanOptions {
    PlanOptions { budget: 1_000_000, ..PlanOptions::default() }
}

fn cuts(project: &Project) -> Vec<PaperCut> {
    let plan = plan(project, &options());
    plan.value.unwrap_or_else(|| panic!("{:#?}", plan.notes)).cuts
}

fn parts(project: &Project) -> Vec<Part> {
    cuts(project).into_iter().flat_map(|cut| cut.parts).collect()
}

fn notes(project: &Project) -> Vec<(&'static str, String)> {
    let plan = plan(project, &options());
    plan.notes.into_iter().map(|note| (note.rule.name, note.message)).collect()
}

/// Cards with these layers, on a paper with two faces that run so.
fn with(pieces: Vec<Piece>, cards: Vec<Vec<Layer>>, runs: [Runs; 2]) -> Project {
    let mut project = project();
    project.papers[0] = paper("leaf", size(192, 192), &runs);
    project.pieces = pieces;
    for layers in cards {
        project.cards.push(card("Card", Stands::Wide, layers));
    }
    project
}

fn on(piece: usize) -> Layer {
    layer(Placed::Piece(PieceId(piece)))
}

#[test]
fn pieces_are_counted_from_the_cards() {
    let pieces = vec![
        piece("a", size(16, 16)),
        Piece { spare: 2, ..piece("b", size(20, 16)) },
        piece("unused", size(24, 16)),
        Piece { count: Some(7), ..piece("d", size(28, 16)) },
    ];
    let cards = vec![vec![on(0), on(0), on(1)], vec![on(0)]];
    let mut project = with(pieces, cards, [Runs::Any; 2]);
    project.cards[1].count = 3;
    project.cards[1].inside.layers.push(on(1));
    project.kits = 5;
    project.spares = Spares::Kits(1);
    let parts = parts(&project);
    let counts: Vec<_> = parts.iter().map(|part| (part.per_kit, part.count)).collect();
    assert_eq!(counts, [(5, 30), (6, 36), (7, 42)]);
    let letters: Vec<_> = parts.iter().map(|part| part.letter.as_str()).collect();
    assert_eq!(letters, ["A", "B", "C"]);
}

#[test]
fn a_piece_is_cut_again_as_often_as_its_most_used_part_takes() {
    let whole = size(64, 20);
    let part = |index| layer(Placed::Late(LateId(0), index));
    let cards = vec![vec![part(0), part(0), part(1), on(0)], vec![part(1)]];
    let mut project = with(vec![piece("ribbon", whole)], cards, [Runs::Any; 2]);
    project.late_cuts.push(late_cut(PieceId(0), whole, 8, ["sill", "rail"]));
    let ribbon = &parts(&project)[0];
    assert_eq!((ribbon.per_kit, ribbon.late.as_slice()), (3, &[(LateId(0), 2)][..]));
    assert!(notes(&project).is_empty());

    // Halves that share a name: five of them take three cuts, and one is over.
    let halves =
        LatePart { name: text("cords"), size: size(64, 10), makes: 2, showing: None };
    project.late_cuts[0].makes = vec![halves];
    project.cards[0].layers = vec![part(0); 5];
    project.cards[1].layers = vec![];
    assert_eq!(parts(&project)[0].late, [(LateId(0), 3)]);
    let said = [("late-part-left-over", "1 x `cords` is left over in each kit".into())];
    assert_eq!(notes(&project), said);
}

#[test]
fn a_count_below_what_the_cards_use_is_a_fault() {
    let pieces = vec![Piece { count: Some(1), ..piece("a", size(16, 16)) }];
    let project = with(pieces, vec![vec![on(0), on(0)]], [Runs::Any; 2]);
    let said =
        ("count-too-low", "`a` has `count: 1`, but the cards of a kit use 2".into());
    assert_eq!(notes(&project), [said]);
}

#[test]
fn the_most_demanding_face_that_shows_binds_a_piece() {
    let shown = |face| Layer { showing: Some(FaceId(face)), ..on(0) };
    let runs = [Runs::Up, Runs::Any];
    for (cards, turning) in [
        (vec![vec![on(0)]], Turning::Fixed),
        (vec![vec![shown(0)]], Turning::Fixed),
        (vec![vec![shown(1)]], Turning::Free),
        (vec![vec![shown(1)], vec![shown(0)]], Turning::Fixed),
    ] {
        let project = with(vec![piece("a", size(16, 20))], cards, runs);
        assert_eq!(parts(&project)[0].turning, turning);
    }
    let mut any_way = piece("a", size(16, 20));
    any_way.pattern = PatternOn::AnyWay;
    assert_eq!(
        parts(&with(vec![any_way], vec![vec![on(0)]], runs))[0].turning,
        Turning::Free
    );
    let alone = Piece { count: Some(1), ..piece("a", size(16, 20)) };
    let both_ways = [Runs::BothWays, Runs::Any];
    assert_eq!(parts(&with(vec![alone], vec![], both_ways))[0].turning, Turning::Fixed);
}

#[test]
fn the_parts_of_a_late_cut_bind_their_piece() {
    let whole = size(64, 20);
    for (showing, turning) in [(0, Turning::Fixed), (1, Turning::Free)] {
        let cards = vec![vec![layer(Placed::Late(LateId(0), 0))]];
        let runs = [Runs::BothWays, Runs::Any];
        let mut project = with(vec![piece("ribbon", whole)], cards, runs);
        let mut late = late_cut(PieceId(0), whole, 8, ["sill", "rail"]);
        late.makes[0].showing = Some(FaceId(showing));
        project.late_cuts.push(late);
        assert_eq!(parts(&project)[0].turning, turning);
    }
}

// Paper folds well with the grain and cracks across it: New York City College of
// Technology, page on grain. Sizes are own arithmetic.
#[test]
fn a_made_base_is_folded_with_the_grain() {
    let flat = size(136, 88);
    for (grain, along, size, turning) in [
        (None, FoldAlong::Long, flat, Turning::Free),
        (Some(Grain::Upright), FoldAlong::Long, flat, Turning::Fixed),
        (Some(Grain::Level), FoldAlong::Long, flat.turned(), Turning::Fixed),
        (Some(Grain::Level), FoldAlong::Short, size(68, 176), Turning::Fixed),
        (Some(Grain::Upright), FoldAlong::Short, size(176, 68), Turning::Fixed),
    ] {
        let mut project = with(vec![], vec![vec![]], [Runs::Any; 2]);
        project.bases[0].from = BaseFrom::Made(PaperId(0));
        project.bases[0].fold = along;
        project.papers[0].grain = grain;
        let base = &parts(&project)[0];
        assert_eq!(base.of, PartOf::Base(BaseId(0)));
        assert_eq!((base.size, base.turning), (size, turning));
        assert!(notes(&project).is_empty());
    }
}

#[test]
fn a_base_that_only_fits_across_the_grain_is_cut_so_with_a_warning() {
    let mut project = with(vec![], vec![vec![]], [Runs::Any; 2]);
    project.bases[0].from = BaseFrom::Made(PaperId(0));
    let sheet = StockSheet { size: size(140, 90), at_hand: None, site: Site::default() };
    project.papers[0].stock = Stock::Sheets(vec![sheet]);
    project.papers[0].grain = Some(Grain::Level);
    assert_eq!(parts(&project)[0].size, size(136, 88));
    assert_eq!(notes(&project)[0].0, "fold-across-the-grain");
}

#[test]
fn a_pattern_stands_upright_on_a_made_base() {
    let mut project = with(vec![], vec![vec![]], [Runs::Up, Runs::Any]);
    project.bases[0].from = BaseFrom::Made(PaperId(0));
    let base = &parts(&project)[0];
    assert_eq!((base.size, base.turning), (size(88, 136), Turning::Fixed));
    project.cards.push(card("Other", Stands::Tall, vec![]));
    assert_eq!(notes(&project)[0].0, "pattern-turned");
}

#[test]
fn labels_of_one_size_are_one_part_and_punched_ones_take_a_strip() {
    let mut project = with(vec![], vec![], [Runs::Any; 2]);
    let punch = |outline: Size, strip: Option<i64>| {
        let outline = Outline { shape: leafwright::geom::Shape::Rounded, size: outline };
        let takes_strips = strip.map(sixteenths);
        tool("punch", ToolKind::Punch(Punch { outline, reach: None, takes_strips }))
    };
    project.tools = vec![punch(size(40, 20), Some(44))];
    for name in ["cut", "cut too", "punched", "punched too"] {
        project.greetings.push(greeting(name));
    }
    for punched in [2, 3] {
        project.greetings[punched].label.punch = Some(ToolId(0));
    }
    let border = sixteenths(1);
    project.greetings[0].mat = Some(LabelMat::cut(PaperId(0), border, Site::default()));
    let layers = (0..4).map(|it| layer(Placed::Greeting(GreetingId(it)))).collect();
    project.cards.push(card("Card", Stands::Wide, layers));
    project.cards[0].count = 2;

    let seen = |project: &Project| {
        let parts = parts(project).into_iter();
        parts.map(|part| (part.of, part.size, part.per_kit)).collect::<Vec<_>>()
    };
    let first = PartOf::Label(GreetingId(0));
    let third = PartOf::Label(GreetingId(2));
    let mat = PartOf::LabelMat(GreetingId(0));
    let labels = |punched: Size, strips: u32| {
        [(first, size(32, 16), 4), (third, punched, strips), (mat, size(34, 18), 2)]
    };
    // The four labels of a kit share a strip: four times 24 sixteenths of an inch.
    assert_eq!(seen(&project), labels(size(44, 96), 1));
    // The strip is too narrow for the outline to lie across.
    project.tools = vec![punch(size(40, 20), Some(24))];
    assert_eq!(seen(&project), labels(size(176, 24), 1));
    // An outline that stands tall lies down only if it is turned.
    project.tools = vec![punch(size(20, 40), Some(44))];
    assert_eq!(seen(&project), labels(size(96, 44), 1));
    project.tools = vec![punch(size(40, 20), None)];
    // How long a strip the punch takes is not said: each label has its own.
    assert_eq!(seen(&project), labels(size(44, 24), 4));
    let greetings = parts(&project)[1].greetings.clone();
    assert_eq!(greetings, [(GreetingId(2), 2), (GreetingId(3), 2)]);
}

/// What the patterns of a paper yield, counted leaf by leaf.
fn yields(cut: &PaperCut) -> BTreeMap<usize, u32> {
    let mut yields = BTreeMap::new();
    for pattern in &cut.patterns {
        for placement in pattern.tree.placements(pattern.sheet) {
            if let Leaf::Part { part, turned } = placement.leaf {
                let size = cut.parts[part].size;
                let lies = if turned { size.turned() } else { size };
                assert_eq!(placement.rect.size, lies, "{placement:?}");
                *yields.entry(part).or_insert(0) += pattern.copies;
            }
        }
    }
    yields
}

#[test]
fn parts_of_one_size_are_searched_together_and_told_apart_again() {
    let pieces = vec![
        piece("a", size(32, 48)),
        piece("b", size(48, 32)),
        piece("c", size(32, 48)),
        piece("d", size(60, 40)),
    ];
    let cards = vec![vec![on(0), on(1), on(1), on(2), on(3), on(3), on(3)]];
    let mut project = with(pieces, cards, [Runs::Any; 2]);
    project.spares = Spares::Kits(0);
    for kits in [1, 2, 3, 7, 20] {
        project.kits = kits;
        let cut = &cuts(&project)[0];
        let wanted: BTreeMap<usize, u32> =
            cut.parts.iter().map(|part| part.count).enumerate().collect();
        assert_eq!(yields(cut), wanted);
        assert_eq!(wanted.values().sum::<u32>(), 7 * kits);
    }
}

// Four quarters of a sheet of 8 x 8 in: own arithmetic.
#[test]
fn a_quartered_sheet_takes_one_sheet_for_four() {
    let pieces = vec![Piece { count: Some(4), ..piece("a", size(64, 64)) }];
    let mut project = with(pieces, vec![], [Runs::Up, Runs::Any]);
    let sheet = StockSheet { size: size(128, 128), at_hand: None, site: Site::default() };
    project.papers[0].stock = Stock::Sheets(vec![sheet]);
    let cut = &cuts(&project)[0];
    assert_eq!((cut.patterns.len(), cut.patterns[0].copies), (1, 1));
    assert_eq!((cut.bound.sheets, cut.proven), (1, true));
    assert_eq!(cut.patterns[0].tree.cuts(), 3);
    assert_eq!(cut.schedule.marks, 1);
}

#[test]
fn a_part_that_fits_no_sheet_is_said_with_both_sizes() {
    let pieces = vec![piece("a", size(88, 20))];
    let mut project = with(pieces, vec![vec![on(0)]], [Runs::Up, Runs::Any]);
    let sheet = StockSheet { size: size(80, 96), at_hand: None, site: Site::default() };
    project.papers[0].stock = Stock::Sheets(vec![sheet]);
    let plan = plan(&project, &options());
    assert!(plan.value.is_none());
    let note = &plan.notes[0];
    assert_eq!(note.rule.name, "part-fits-no-sheet");
    let message =
        "`a` is 5 1/2 x 1 1/4 in, and no sheet of `leaf` is so large (5 x 6 in)";
    assert_eq!(note.message, message);
    assert!(note.help[0].contains("quarter turn"), "{:?}", note.help);
}

#[test]
fn a_trimmer_that_is_too_short_is_said() {
    let pieces = vec![piece("a", size(88, 20))];
    let mut project = with(pieces, vec![vec![on(0)]], [Runs::Any; 2]);
    project.tools.push(tool(
        "trimmer",
        ToolKind::Trimmer(Trimmer {
            longest_cut: Some(sixteenths(80)),
            sheets_at_once: 1,
            marks: sixteenths(1),
            narrowest: sixteenths(4),
            kind: TrimmerKind::Lever,
        }),
    ));
    assert_eq!(notes(&project)[0].0, "cut-too-long");
}

#[test]
fn sizes_between_the_marks_draw_advice_and_stay_as_they_are() {
    let third = Size::new(Length::from_units(Length::INCH.units() / 3), sixteenths(16));
    let project = with(vec![piece("a", third)], vec![vec![on(0)]], [Runs::Any; 2]);
    assert_eq!(parts(&project)[0].size, third);
    let plan = plan(&project, &options());
    assert_eq!(plan.notes[0].rule.name, "size-off-the-marks");
    assert_eq!(plan.notes[0].help, ["the nearest marks are 5/16 in and 3/8 in"]);
}

#[test]
fn a_project_without_cards_is_only_cut() {
    let pieces = vec![Piece { count: Some(6), ..piece("a", size(64, 64)) }];
    let mut project = with(pieces, vec![], [Runs::Any; 2]);
    project.bases.clear();
    let plan = plan(&project, &options()).value.expect("a plan");
    assert_eq!(plan.cuts[0].patterns[0].copies, 1);
    assert_eq!(plan.work.tasks.len(), 1);
    let nothing = project_of_nothing();
    assert!(leafwright::plan::plan(&nothing, &options()).value.is_some());
}

fn project_of_nothing() -> Project {
    let mut project = project();
    project.papers.clear();
    project.bases.clear();
    project
}

#[test]
fn the_same_project_gives_the_same_plan() {
    let layers = vec![on(0), Layer { turned: Turn::Right, ..on(1) }];
    let pieces = vec![piece("a", size(40, 30)), piece("b", size(20, 44))];
    let mut project = with(pieces, vec![layers], [Runs::Any; 2]);
    project.kits = 9;
    let options = options();
    assert_eq!(plan(&project, &options), plan(&project, &options));
}

#[test]
fn a_cut_that_frees_nothing_is_not_made() {
    use leafwright::geom::Axis;
    use leafwright::plan::cut::Tree;
    let leaf = Tree::Leaf;
    let cut = |at, first, second| Tree::cut(Axis::Upright, sixteenths(at), first, second);
    let waste =
        || cut(8, leaf(Leaf::Waste), cut(8, leaf(Leaf::Waste), leaf(Leaf::Waste)));
    let tree = cut(32, cut(16, Tree::part(0), waste()), waste());
    let tidied = cut(32, cut(16, Tree::part(0), leaf(Leaf::Waste)), leaf(Leaf::Waste));
    assert_eq!(tree.without_useless_cuts(), tidied);
    // An offcut is kept with what was to be cut from it.
    let tree = cut(32, Tree::part(0), cut(32, leaf(Leaf::Keep), waste()));
    assert_eq!(tree.without_useless_cuts(), cut(32, Tree::part(0), leaf(Leaf::Keep)));
    assert_eq!(waste().without_useless_cuts(), leaf(Leaf::Waste));
}

#[test]
fn parts_of_one_size_share_sheets_in_as_few_ways_as_can_be() {
    // Four lie on a sheet: two sheets of the second alone, and one that is shared.
    let mut project = with(Vec::new(), Vec::new(), [Runs::Any; 2]);
    project.pieces = vec![
        Piece { count: Some(2), ..piece("a", size(96, 96)) },
        Piece { count: Some(10), ..piece("b", size(96, 96)) },
    ];
    let cut = &cuts(&project)[0];
    let copies: Vec<u32> = cut.patterns.iter().map(|it| it.copies).collect();
    assert_eq!(copies.iter().sum::<u32>(), 3);
    assert_eq!(copies.len(), 2);
}
