//! The designer's own steps in her own order.

use crate::geom::Size;
use crate::plan::cut::own::{State, Table};
use crate::plan::cut::{Becomes, Hand, Leaf, Pattern, Schedule, Step, Tree, schedule};
use crate::project::Trimmer;

/// Writes out her cuts one after another, with what she has in hand each time.
pub(super) fn write_out(
    table: &Table,
    tree: &Tree,
    sheet: Size,
    sheets: u32,
    trimmer: &Trimmer,
) -> Schedule {
    let pattern = Pattern { sheet, tree: tree.clone(), copies: sheets };
    // Her order can be no better than the best of the same cuts.
    let best = schedule(std::slice::from_ref(&pattern), trimmer);
    let mut written = Schedule {
        laid: vec![pattern.tree],
        at_least: best.at_least,
        spent: best.spent,
        ..Schedule::default()
    };
    let cuts: Vec<_> = table.cuts.iter().filter(|it| !it.off.is_empty()).collect();
    let mut numbers: Vec<Option<u32>> = vec![None; table.paper.len()];
    let (mut fresh, mut mark, mut in_hand) = (0, None, None);
    for (idx, cut) in cuts.iter().enumerate() {
        let next = cuts.get(idx + 1).map(|it| it.hand);
        let hand = match (in_hand, numbers[cut.hand]) {
            (Some(hand), _) if hand == cut.hand => Hand::Same,
            (_, Some(number)) => Hand::Aside(number),
            (_, None) => Hand::Sheet,
        };
        in_hand = None;
        let mut becomes = |paper: usize| {
            let rect = table.paper[paper].rect;
            let becomes = match table.paper[paper].state {
                State::Lying | State::Done(Leaf::Waste, _) => Becomes::Waste,
                State::Done(Leaf::Keep, _) => Becomes::Keep,
                State::Done(Leaf::Part { part, .. }, _) => Becomes::Part(part),
                State::Cut(..) if next == Some(paper) => {
                    in_hand = next;
                    Becomes::InHand
                }
                State::Cut(..) => {
                    fresh += 1;
                    numbers[paper] = Some(fresh);
                    Becomes::Aside(fresh)
                }
            };
            (rect, becomes)
        };
        let off = cut.off.iter().map(|&it| becomes(it)).collect();
        let stays = becomes(cut.stays);
        let from = &table.paper[cut.hand];
        let step = Step {
            pattern: 0,
            in_hand: from.rect,
            alike: Vec::new(),
            hand,
            axis: cut.axis,
            from_far_side: false,
            mark: cut.mark,
            moves: mark != Some(cut.mark),
            times: u32::try_from(cut.off.len()).unwrap_or(u32::MAX),
            off,
            stays,
            slack: matches!(stays.1, Becomes::Part(_)),
            copies: sheets,
            turn: from.came_by.is_some_and(|it| it != cut.axis),
            hard_to_hold: from.rect.size.short() < trimmer.narrowest,
        };
        mark = Some(cut.mark);
        written.marks += u32::from(step.moves);
        written.turns += u32::from(step.turn);
        written.strokes = written.strokes.saturating_add(step.strokes(trimmer));
        written.steps.push(step);
    }
    written.proven = written.marks == written.at_least;
    written
}
