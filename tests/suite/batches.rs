//! Whole batches: forty kits cut on paper fill the bags exactly; supplies are
//! neither short nor a pack too many, by a count of its own.

use std::collections::BTreeMap;
use std::fs;

use leafwright::geom::{Axis, Length, Size};
use leafwright::plan::cut::{Leaf, PartOf, Token, Tree};
use leafwright::plan::{Doing, Good, Plan, PlanOptions, Supply, cost, plan, timetable};
use leafwright::project::*;

use crate::demos;
use crate::diagnostics::read;
use crate::hand_made::*;
use crate::random::Random;

fn planned(project: &Project, options: &PlanOptions) -> Plan {
    let plan = plan(project, options);
    plan.value.unwrap_or_else(|| panic!("{:#?}", plan.notes))
}

/// What comes off a sheet, with its size, by cutting alone.
fn comes_off(sheet: Size, tree: &Tree) -> Vec<(Leaf, Size)> {
    let mut open = vec![sheet];
    let mut all = Vec::new();
    for token in tree.tokens() {
        let size = open.pop().expect("a tree is complete");
        match token {
            Token::Leaf(leaf) => all.push((leaf, size)),
            Token::Cut(axis, at) | Token::Held(axis, at) => {
                let whole = if axis == Axis::Upright { size.width } else { size.height };
                assert!(Length::ZERO < at && at < whole, "a cut lies on the paper");
                let (first, second) = match axis {
                    Axis::Upright => {
                        (Size::new(at, size.height), Size::new(whole - at, size.height))
                    }
                    Axis::Level => {
                        (Size::new(size.width, at), Size::new(size.width, whole - at))
                    }
                };
                open.extend([second, first]);
            }
        }
    }
    all
}

/// How many of a thing the bag of one kit takes, counted card by card.
fn in_one_bag(project: &Project, of: PartOf, greetings: &[GreetingId]) -> u32 {
    let mut count = 0;
    let mut late: BTreeMap<usize, BTreeMap<usize, u32>> = BTreeMap::new();
    for card in &project.cards {
        if of == PartOf::Base(card.base) {
            count += card.count;
        }
        for layer in card.layers.iter().chain(&card.inside.layers).chain(&card.envelope) {
            match (layer.what, of) {
                (Placed::Piece(piece), PartOf::Piece(of)) if piece == of => {
                    count += card.count;
                }
                (Placed::Late(cut, part), PartOf::Piece(of))
                    if project.late_cuts[cut.0].piece == of =>
                {
                    *late.entry(cut.0).or_default().entry(part).or_default() +=
                        card.count;
                }
                (Placed::Greeting(id), PartOf::Label(_) | PartOf::LabelMat(_))
                    if greetings.contains(&id) =>
                {
                    count += card.count;
                }
                _ => {}
            }
        }
    }
    for (cut, parts) in late {
        let makes = &project.late_cuts[cut].makes;
        let each = parts.iter().map(|(part, used)| used.div_ceil(makes[*part].makes));
        count += each.max().unwrap_or(0);
    }
    match of {
        PartOf::Piece(piece) => count + project.pieces[piece.0].spare,
        _ => count,
    }
}

#[test]
fn forty_kits_and_their_spares_are_cut_exactly() {
    for path in demos::paths() {
        let name = path.display().to_string();
        let text = fs::read_to_string(&path).expect("a readable demo");
        let mut project = read(&name, &text).1.value.expect("a sound demo");
        project.spares = Spares::Usual;
        let options =
            PlanOptions { kits: Some(40), budget: 200_000, ..PlanOptions::default() };
        let plan = planned(&project, &options);
        // Forty and one in ten.
        assert_eq!(plan.supplies.kits, 44, "{name}");
        for cut in plan.cuts.iter().filter(|cut| !cut.patterns.is_empty()) {
            let mut come = vec![0_u32; cut.parts.len()];
            for pattern in &cut.patterns {
                for (leaf, size) in comes_off(pattern.sheet, &pattern.tree) {
                    let Leaf::Part { part, turned } = leaf else { continue };
                    let wanted = cut.parts[part].size;
                    let lies = if turned { wanted.turned() } else { wanted };
                    assert_eq!(size, lies, "{name}");
                    come[part] += pattern.copies;
                }
            }
            for (part, come) in cut.parts.iter().zip(come) {
                let greetings: Vec<_> = part.greetings.iter().map(|it| it.0).collect();
                let bag = in_one_bag(&project, part.of, &greetings);
                assert_eq!(part.per_kit, bag, "{name}: {:?}", part.of);
                assert_eq!(come, bag * 44, "{name}: {:?}", part.of);
            }
        }
    }
}

fn row(plan: &Plan, what: Good) -> Supply {
    *plan.supplies.rows.iter().find(|row| row.what == what).expect("a row for it")
}

/// A card with a piece that takes a sheet of its own, on bought bases.
fn plain_set() -> Project {
    let mut project = project();
    project.papers[0].stock = match &project.papers[0].stock {
        Stock::Sheets(sheets) => {
            Stock::Sheets(vec![StockSheet { size: size(64, 48), ..sheets[0] }])
        }
        Stock::Scraps(..) => panic!("it comes in sheets"),
    };
    project.pieces.push(piece("panel", size(64, 48)));
    project.cards.push(card(
        "Card",
        Stands::Wide,
        vec![layer(Placed::Piece(PieceId(0)))],
    ));
    project
}

#[test]
fn nothing_is_short_and_no_pack_is_too_many() {
    let mut random = Random::new(4);
    for case in 0..1000 {
        let mut below = |bound: i64| u32::try_from(random.below(bound)).expect("small");
        let mut project = plain_set();
        let (kits, spares, each) = (1 + below(40), below(5), 1 + below(3));
        let designs = 1 + below(4);
        let holds = designs * (1 + below(9));
        let (on_hand, price) = (below(60), below(900));
        project.kits = kits;
        project.spares = Spares::Kits(spares);
        project.cards[0].count = each;
        project.papers[0].pack = Some(Pack { holds, designs });
        project.papers[0].trade = Trade { price: Some(price), on_hand };
        let options = PlanOptions { budget: 2000, ..PlanOptions::default() };
        let plan = planned(&project, &options);
        let row = row(&plan, Good::Sheets(PaperId(0)));
        // One sheet for each card: opens pack after pack until there are enough.
        let needed = (kits + spares) * each;
        let (mut there, mut opened) = (on_hand, 0);
        while there < needed {
            there += holds / designs;
            opened += 1;
        }
        let packs = row.packs.expect("it is sold in packs");
        assert_eq!((row.needed, packs.buy), (needed, opened), "case {case}");
        assert_eq!(packs.over, there - needed, "case {case}");
        assert_eq!(row.cost, Some(u64::from(opened * price)), "case {case}");
    }
}

#[test]
fn costs_are_shared_by_the_kits_that_were_asked_for() {
    let mut project = plain_set();
    (project.kits, project.spares) = (10, Spares::Kits(1));
    project.papers[0].pack = Some(Pack { holds: 4, designs: 1 });
    project.papers[0].trade = Trade { price: Some(250), on_hand: 0 };
    let mut trimmer = tool("shears", ToolKind::Scissors);
    trimmer.trade = Trade { price: Some(999), on_hand: 0 };
    project.tools.push(trimmer);
    project.bases[0].trade = Trade { price: Some(20), on_hand: 3 };
    let supplies = planned(&project, &PlanOptions::default()).supplies;
    let cost = cost(&project, supplies.rows.iter()).expect("there are prices");
    // Eleven sheets in three packs, and eight bases; the scissors last.
    assert_eq!((cost.used_up, cost.tools), (3 * 250 + 8 * 20, 999));
    assert_eq!(cost.each(10), 91);
    assert!(!cost.incomplete);
}

#[test]
fn tape_goes_along_all_edges_and_comes_in_rolls() {
    let mut project = plain_set();
    let mut tape = tool("tape", ToolKind::Tape);
    tape.lasts.roll = Some(Length::mm(1000));
    tape.trade = Trade { price: Some(300), on_hand: 1 };
    project.tools.push(tape);
    (project.kits, project.spares) = (5, Spares::Kits(0));
    // 4 x 3 in: 14 in around, 355.6 mm; five of them 1.778 m (1 in = 25.4 mm: NBS,
    // Federal Register 1959-07-01).
    let row = row(&planned(&project, &PlanOptions::default()), Good::Tape(ToolId(0)));
    assert_eq!((row.per_kit, row.needed), (Some(36), 178));
    let packs = row.packs.expect("it comes in rolls");
    assert_eq!((packs.buy, packs.over, row.cost), (1, 22, Some(300)));
}

#[test]
fn shared_tools_are_counted_by_table_and_ink_by_cards() {
    let mut project = plain_set();
    (project.kits, project.spares) = (13, Spares::Kits(2));
    let mut punch = tool("punch", ToolKind::Other);
    punch.lasts.shared_by = Some(4);
    let mut ink = tool("ink", ToolKind::InkPad);
    ink.lasts.cards = Some(7);
    project.tools = vec![punch, ink];
    let plan = planned(&project, &PlanOptions::default());
    assert_eq!(row(&plan, Good::Tool(ToolId(0))).needed, 4);
    assert_eq!(row(&plan, Good::Tool(ToolId(1))).needed, 3);
}

/// Three cards of one layer each, glued with glue that dries.
fn class() -> Project {
    let mut project = plain_set();
    project.tools.push(tool("glue", ToolKind::Glue { dries: 20 }));
    for name in ["Two", "Three"] {
        project.cards.push(Card { name: text(name), ..project.cards[0].clone() });
    }
    project.minutes = Minutes {
        set_up: Some(600),
        once: [Some(120); 9],
        clean_up: Some(300),
        lasts: Some(3600),
    };
    project
}

#[test]
fn a_timetable_adds_up_and_leaves_out_the_last_cards() {
    let mut project = class();
    let plan = planned(&project, &PlanOptions::default());
    let times = timetable(&project, &plan, Reader::Class);
    // By hand: 10 to set up; a sheet for each of three cards, and three folds, at 2
    // minutes and half as long again: 18; 3 for each card; 5 to clear up; a tenth.
    let minutes: Vec<_> = times.rows.iter().map(|it| it.minutes).collect();
    assert_eq!(minutes, [10, 18, 3, 3, 3, 5, 5], "{:?}", times.rows);
    assert_eq!((times.total, times.estimated), (47, false));
    assert!(times.left_out.is_empty() && times.fits);

    project.minutes.lasts = Some(44 * 60);
    let times = timetable(&project, &plan, Reader::Class);
    assert_eq!((times.left_out, times.saves), (vec![CardId(2)], 4));
    assert!(times.fits);

    project.minutes.lasts = Some(60);
    let times = timetable(&project, &plan, Reader::Class);
    assert_eq!(times.left_out.len(), 2, "one card is always made");
    assert!(!times.fits);
    project.minutes = Minutes::default();
    assert!(timetable(&project, &plan, Reader::Class).estimated);
}

/// What a class takes without some of its cards, added up from the minutes alone.
fn added_up(project: &Project, prepared: u64, out: &[usize]) -> u64 {
    let said = &project.minutes;
    let attach = u64::from(said.once[0].expect("given"));
    let cards = project.cards.iter().enumerate().filter(|it| !out.contains(&it.0));
    // Half as long again for a beginner, and a tenth in reserve.
    let cards = cards.map(|it| it.1.layers.len() as u64 * (attach * 3 / 2));
    let (set_up, clean_up) = (said.set_up.expect("given"), said.clean_up.expect("given"));
    let mut rows = vec![u64::from(set_up), prepared, u64::from(clean_up)];
    rows.extend(cards);
    let reserve = rows.iter().sum::<u64>() / 10;
    rows.push(reserve);
    rows.iter().map(|it| it.div_ceil(60)).sum()
}

#[test]
fn no_card_is_left_out_that_could_be_made_in_any_length_of_a_class() {
    let mut random = Random::new(90);
    let mut left_out = [0; 6];
    for round in 0..300 {
        let mut project = class();
        // What dries would have to be waited for; that is tested by itself.
        project.tools.clear();
        for number in 3..3 + random.below(3) {
            let name = text(&format!("Card {number}"));
            project.cards.push(Card { name, ..project.cards[0].clone() });
        }
        for card in &mut project.cards {
            let layers = random.below(3);
            card.layers.extend((0..layers).map(|_| layer(Placed::Piece(PieceId(0)))));
        }
        let seconds = |random: &mut Random, most| {
            Some(u32::try_from(30 + random.below(most)).expect("small"))
        };
        let once = seconds(&mut random, 300);
        project.minutes = Minutes {
            set_up: seconds(&mut random, 900),
            once: [once; 9],
            clean_up: seconds(&mut random, 900),
            lasts: Some(u32::try_from(60 * (1 + random.below(180))).expect("small")),
        };
        let plan = planned(&project, &PlanOptions::default());
        let times = timetable(&project, &plan, Reader::Class);
        let cut = &plan.cuts[0];
        let sheets: u32 = cut.patterns.iter().map(|it| it.copies).sum();
        let folds = project.cards.len() as u64;
        let once = u64::from(once.expect("given"));
        let sheets = u64::from(sheets.div_ceil(cut.kits));
        let prepared = sheets * once * 3 / 2 + folds * once * 3 / 2;
        let all = project.cards.len();
        assert_eq!(u64::from(times.total), added_up(&project, prepared, &[]), "{round}");
        // Tries all that could be left out: the fewest cards, then the latest ones.
        let lasts = u64::from(times.lasts);
        let fits = |out: &[usize]| added_up(&project, prepared, out) <= lasts;
        let found: Vec<usize> = times.left_out.iter().map(|it| it.0).collect();
        let last_ones: Vec<usize> = (1..all).rev().collect();
        assert_eq!(times.fits, fits(&last_ones), "{round}");
        let rest = added_up(&project, prepared, &found);
        assert_eq!(times.saves, times.total - u32::try_from(rest).unwrap(), "{round}");
        if fits(&[]) {
            assert!(found.is_empty(), "{round}: {times:?}");
        } else if !times.fits {
            assert_eq!(found, last_ones, "{round}: {times:?}");
        } else if let Some(one) = last_ones.iter().find(|it| fits(&[**it])) {
            assert_eq!(found, [*one], "{round}: {times:?}");
        } else {
            assert!(fits(&found), "{round}: {times:?}");
            // Every one of them has to be left out.
            for at in 0..found.len() {
                let mut fewer = found.clone();
                fewer.remove(at);
                assert!(!fits(&fewer), "{round}: {times:?}");
            }
        }
        left_out[found.len()] += 1;
    }
    assert!(left_out[..3].iter().all(|it| *it > 10), "{left_out:?}");
}

#[test]
fn time_is_only_waited_where_nothing_else_can_be_done() {
    let mut project = class();
    let over = layer(Placed::Piece(PieceId(0)));
    project.cards[0].layers.push(over);
    let wait = |project: &Project| {
        let plan = planned(project, &PlanOptions::default());
        let times = timetable(project, &plan, Reader::Class);
        times.rows.iter().find(|it| it.what == Doing::Waiting).map(|it| it.minutes)
    };
    // The second layer waits 20 minutes; two other cards of 3 minutes lie between.
    assert_eq!(wait(&project), Some(14));
    project.cards.truncate(1);
    assert_eq!(wait(&project), Some(20));
}

#[test]
fn in_batches_every_card_gets_its_first_layer_first() {
    let mut project = class();
    project.tools.clear();
    for card in &mut project.cards {
        card.layers.push(layer(Placed::Piece(PieceId(0))));
    }
    project.in_batches = true;
    let plan = planned(&project, &PlanOptions::default());
    let layers: Vec<_> = plan
        .work
        .tasks
        .iter()
        .filter_map(|task| match task.act {
            leafwright::plan::Act::Attach(card, layer) => Some((layer, card.0)),
            _ => None,
        })
        .collect();
    assert_eq!(layers, [(0, 0), (0, 1), (0, 2), (1, 0), (1, 1), (1, 2)]);
}
