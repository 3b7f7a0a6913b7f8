//! Sets that nobody makes by hand end in a sound plan too.

use leafwright::plan::cut::Leaf;
use leafwright::plan::{Plan, PlanOptions, plan};
use leafwright::project::*;

use crate::hand_made::*;

fn planned(project: &Project) -> Plan {
    // The budget counts search steps, so this is the same on every machine.
    let outcome =
        plan(project, &PlanOptions { budget: 50_000, ..PlanOptions::default() });
    outcome.value.unwrap_or_else(|| panic!("{:#?}", outcome.notes.first()))
}

/// Checks that what is cut is what is wanted.
fn is_sound(plan: &Plan) {
    for cut in &plan.cuts {
        let mut come = vec![0_u64; cut.parts.len()];
        for pattern in &cut.patterns {
            for placed in pattern.tree.placements(pattern.sheet) {
                if let Leaf::Part { part, .. } = placed.leaf {
                    come[part] += u64::from(pattern.copies);
                }
            }
        }
        let wanted: Vec<u64> = cut.parts.iter().map(|part| part.count.into()).collect();
        assert_eq!(come, wanted);
    }
}

#[test]
fn a_great_many_kits_are_planned() {
    let mut project = project();
    project.kits = 10_000;
    project.spares = Spares::Kits(0);
    project.pieces = vec![
        Piece { count: Some(1000), ..piece("tile", size(16, 16)) },
        Piece { count: Some(3), ..piece("panel", size(61, 83)) },
    ];
    let plan = planned(&project);
    is_sound(&plan);
    assert_eq!(plan.cuts[0].parts[0].count, 10_000_000);
}

#[test]
fn a_great_many_pieces_and_cards_are_planned() {
    let mut project = project();
    project.kits = 3;
    for index in 0..150_i64 {
        let (width, height) = (8 + index % 37, 8 + index % 41);
        project.pieces.push(piece(&format!("piece {index}"), size(width, height)));
        let id = usize::try_from(index).expect("few");
        let raised = Layer { raised: 1, ..layer(Placed::Piece(PieceId(id))) };
        let layers = vec![layer(Placed::Piece(PieceId(id))), raised];
        project.cards.push(card(&format!("card {index}"), Stands::Tall, layers));
    }
    let plan = planned(&project);
    is_sound(&plan);
    assert_eq!(plan.fronts.len(), 150);
    assert_eq!(plan.work.tasks.len(), 1 + 1 + 300);
}

#[test]
fn numbers_beyond_all_sense_do_not_overflow() {
    let mut project = project();
    project.kits = 10_000;
    project.papers[0].stock =
        Stock::Scraps(size(64, 64), leafwright::source::Site::default());
    project.pieces = vec![piece("tile", size(16, 16))];
    let raised = Layer { raised: 9, ..layer(Placed::Piece(PieceId(0))) };
    let mut one = card("card", Stands::Tall, vec![raised; 50]);
    one.count = u32::MAX;
    project.cards = vec![one];
    let plan = planned(&project);
    assert!(plan.supplies.rows.iter().all(|row| row.needed > 0));
}
