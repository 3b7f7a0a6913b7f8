//! What is known of a problem without any search: two bounds, and the rules that a
//! quick plan has to keep to.

use crate::plan::cut::engine::board::{Board, Lie};
use crate::plan::cut::engine::greedy::Rules;
use crate::plan::cut::engine::one::Job;

/// The fewest sheets by area.
pub(super) fn area_bound(job: &Job) -> u32 {
    let area: i128 = job
        .kinds
        .iter()
        .map(|it| it.size.area().saturating_mul(i128::from(it.count)))
        .fold(0, i128::saturating_add);
    let sheets = (area + job.sheet.area() - 1) / job.sheet.area();
    u32::try_from(sheets).unwrap_or(u32::MAX)
}

/// What the quick plan has to keep to.
pub(super) fn rules(job: &Job, board: &Board) -> Rules {
    let unit = board.unit;
    Rules {
        sheet: board.real(),
        lies: board
            .lies
            .iter()
            .map(|lies| {
                lies.iter()
                    .map(|it| (it.width * unit.0, it.height * unit.1, it.turned))
                    .collect()
            })
            .collect(),
        longest: board.longest,
        stages: job.limits.stages.map_or(u32::MAX, |it| u32::from(it).max(2)),
    }
}

/// Parts of which no two fit one sheet: wider and higher than half of it.
pub(super) fn pair_bound(board: &Board) -> u32 {
    let large = |lies: &Vec<Lie>| {
        lies.iter().all(|it| board.size.0 < it.width * 2 && board.size.1 < it.height * 2)
    };
    let pairs = board.lies.iter().zip(&board.wanted);
    pairs.filter(|it| large(it.0)).fold(0, |sum: u32, it| sum.saturating_add(*it.1))
}
