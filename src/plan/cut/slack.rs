//! What takes up the difference if a sheet is not quite as large as it should be.
//!
//! A sheet that is bought may be 1/16 in short or over. What comes off at a mark is
//! exact all the same; the difference ends up in what stays. Mostly that is waste or
//! an offcut, but where the pieces fill the sheet, one of them gets it.

use std::collections::BTreeMap;

use crate::geom::{Axis, Rect};
use crate::plan::cut::{Becomes, Leaf, PaperCut};

/// What takes up the difference on the sheets of one pattern.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Slack {
    /// Index of the pattern.
    pub pattern: usize,
    /// Parts that get it if the sheet is too narrow or too wide.
    pub in_width: Vec<TakesUp>,
    /// Parts that get it if the sheet is not as high as it should be.
    pub in_height: Vec<TakesUp>,
}

/// A part that takes up the difference.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct TakesUp {
    /// Index of the part.
    pub part: usize,
    /// So many of those on a sheet take it up.
    pub count: u32,
    /// So many are on a sheet.
    pub of: u32,
}

/// What takes up the difference, for every pattern where a part does.
pub fn slack(cut: &PaperCut) -> Vec<Slack> {
    // Whether a rectangle still has the difference in its width and its height.
    let mut open: BTreeMap<(usize, Rect), [bool; 2]> = BTreeMap::new();
    let mut found: Vec<Slack> = Vec::new();
    found.resize_with(cut.patterns.len(), Slack::default);
    for (index, pattern) in cut.patterns.iter().enumerate() {
        found[index].pattern = index;
        let _ = open.insert((index, Rect::whole(pattern.sheet)), [true, true]);
    }
    for step in &cut.schedule.steps {
        for place in std::iter::once(&step.in_hand).chain(&step.alike) {
            let moved = |rect: Rect| {
                let (x, y) = (place.x - step.in_hand.x, place.y - step.in_hand.y);
                Rect::new(rect.x + x, rect.y + y, rect.size)
            };
            let left = open.remove(&(step.pattern, *place)).unwrap_or_default();
            let measured = match step.axis {
                Axis::Upright => [false, left[1]],
                Axis::Level => [left[0], false],
            };
            let off = step.off.iter().map(|it| (*it, measured));
            for ((rect, becomes), left) in off.chain([(step.stays, left)]) {
                match becomes {
                    Becomes::Part(part) => {
                        let Some(slack) = found.get_mut(step.pattern) else { continue };
                        take_up(&mut slack.in_width, part, left[0]);
                        take_up(&mut slack.in_height, part, left[1]);
                    }
                    Becomes::Aside(_) | Becomes::InHand => {
                        let _ = open.insert((step.pattern, moved(rect)), left);
                    }
                    Becomes::Keep | Becomes::Waste => {}
                }
            }
        }
    }
    for slack in &mut found {
        let pattern = &cut.patterns[slack.pattern];
        let placed = pattern.tree.placements(pattern.sheet);
        for row in slack.in_width.iter_mut().chain(&mut slack.in_height) {
            let mine = placed.iter().filter(
                |it| matches!(it.leaf, Leaf::Part { part, .. } if part == row.part),
            );
            row.of = u32::try_from(mine.count()).unwrap_or(u32::MAX);
        }
    }
    found.retain(|it| !it.in_width.is_empty() || !it.in_height.is_empty());
    found
}

fn take_up(rows: &mut Vec<TakesUp>, part: usize, takes: bool) {
    match rows.iter_mut().find(|it| it.part == part) {
        _ if !takes => {}
        Some(row) => row.count = row.count.saturating_add(1),
        None => rows.push(TakesUp { part, count: 1, of: 0 }),
    }
}
