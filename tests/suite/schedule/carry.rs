//! Carries schedules out on imaginary paper; shares nothing with the scheduler.

use std::collections::{BTreeMap, BTreeSet};

use leafwright::geom::{Axis, Length, Rect, Size};
use leafwright::plan::cut::{Becomes, Hand, Leaf, Pattern, Placement, Schedule};
use leafwright::project::Trimmer;

/// Carries a schedule out on imaginary paper and compares what lies there in the
/// end with what the patterns ask for.
#[track_caller]
pub(crate) fn check(patterns: &[Pattern], found: &Schedule, trimmer: &Trimmer) {
    let mut fresh: Vec<Vec<Rect>> = patterns
        .iter()
        .map(|it| vec![Rect { x: Length::ZERO, y: Length::ZERO, size: it.sheet }])
        .collect();
    let mut aside: BTreeMap<u32, (usize, Vec<Rect>)> = BTreeMap::new();
    let mut in_hand: (usize, Vec<Rect>) = (0, Vec::new());
    let mut ends: Vec<Vec<(Rect, Becomes)>> = vec![Vec::new(); patterns.len()];
    let (mut mark, mut marks, mut strokes, mut turns) = (None, 0, 0, 0);
    for step in &found.steps {
        assert_eq!(
            step.moves,
            mark != Some(step.mark),
            "the mark is moved if it changes"
        );
        marks += u32::from(step.moves);
        turns += u32::from(step.turn);
        mark = Some(step.mark);
        // Take the part in hand; nothing may be left in hand beside it.
        let taken = match step.hand {
            Hand::Sheet => (step.pattern, std::mem::take(&mut fresh[step.pattern])),
            Hand::Aside(number) => aside.remove(&number).expect("it lies aside"),
            Hand::Same => std::mem::take(&mut in_hand),
        };
        assert!(in_hand.1.is_empty(), "a part in hand is forgotten");
        assert_eq!(taken.0, step.pattern);
        assert_eq!(step.copies, patterns[step.pattern].copies);
        let mut said = vec![step.in_hand];
        said.extend(&step.alike);
        let as_set = |rects: &[Rect]| rects.iter().copied().collect::<BTreeSet<_>>();
        assert_eq!(as_set(&said), as_set(&taken.1), "other parts lie there");
        assert_eq!(said.len(), taken.1.len());
        assert_eq!(step.off.len(), step.times as usize);
        assert!(step.times > 0, "a step cuts");
        let n = u64::from(step.copies) * said.len() as u64;
        let high = u64::from(trimmer.sheets_at_once);
        strokes += n.div_ceil(high) * u64::from(step.times);
        // Cut each of them: from the left or the top, always one mark wide.
        for hand in said {
            let (mut x, mut y) = (hand.x, hand.y);
            let (mut width, mut height) = (hand.size.width, hand.size.height);
            let mut parts = Vec::new();
            for (_, becomes) in &step.off {
                let off = match step.axis {
                    Axis::Upright => Size { width: step.mark, height },
                    Axis::Level => Size { width, height: step.mark },
                };
                parts.push((Rect { x, y, size: off }, *becomes));
                match step.axis {
                    Axis::Upright => {
                        x += step.mark;
                        width -= step.mark;
                    }
                    Axis::Level => {
                        y += step.mark;
                        height -= step.mark;
                    }
                }
                assert!(
                    width > Length::ZERO && height > Length::ZERO,
                    "nothing stays in hand"
                );
            }
            parts.push((Rect { x, y, size: Size { width, height } }, step.stays.1));
            if hand == step.in_hand {
                let told: Vec<_> =
                    step.off.iter().chain([&step.stays]).copied().collect();
                assert_eq!(told, parts, "the step tells other places");
            }
            for (rect, becomes) in parts {
                match becomes {
                    Becomes::InHand => {
                        in_hand.0 = step.pattern;
                        in_hand.1.push(rect);
                    }
                    Becomes::Aside(number) => {
                        let pile =
                            aside.entry(number).or_insert((step.pattern, Vec::new()));
                        assert_eq!(pile.0, step.pattern);
                        pile.1.push(rect);
                    }
                    _ => ends[step.pattern].push((rect, becomes)),
                }
            }
        }
    }
    assert!(aside.is_empty() && in_hand.1.is_empty(), "parts are left uncut");
    assert_eq!((found.marks, found.turns), (marks, turns));
    assert_eq!(u64::from(found.strokes), strokes);
    let late = found.steps.iter().skip_while(|it| !it.hard_to_hold);
    assert!(
        late.into_iter().all(|it| it.hard_to_hold),
        "what is hard to hold comes last"
    );
    for (idx, pattern) in patterns.iter().enumerate() {
        let laid = found.laid[idx].placements(pattern.sheet);
        // The sizes of parts and offcuts are those that were asked for.
        let asked = pattern.tree.placements(pattern.sheet);
        assert_eq!(wanted(&laid), wanted(&asked), "pattern {idx} became another");
        if fresh[idx].is_empty() {
            let mut laid: Vec<(Rect, Becomes)> =
                laid.iter().map(|it| (it.rect, becomes(it.leaf))).collect();
            laid.sort_unstable();
            ends[idx].sort_unstable();
            assert_eq!(ends[idx], laid, "the drawing shows another sheet");
        } else {
            assert_eq!(laid.len(), 1, "a sheet was never taken");
        }
    }
}

fn becomes(leaf: Leaf) -> Becomes {
    match leaf {
        Leaf::Waste => Becomes::Waste,
        Leaf::Keep => Becomes::Keep,
        Leaf::Part { part, .. } => Becomes::Part(part),
    }
}

/// Sizes of all parts and offcuts, sorted, and the area of the waste.
pub(crate) fn wanted(placements: &[Placement]) -> (Vec<(Leaf, Size)>, i128) {
    let mut kept = Vec::new();
    let mut waste = 0;
    for it in placements {
        if it.leaf == Leaf::Waste {
            let Size { width, height } = it.rect.size;
            waste += i128::from(width.units()) * i128::from(height.units());
        } else {
            kept.push((it.leaf, it.rect.size));
        }
    }
    kept.sort_unstable();
    (kept, waste)
}
