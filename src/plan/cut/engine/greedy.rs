//! A quick plan: each part goes where it fits best.
//!
//! The free rectangles of all sheets begun so far are compared; the part is cut
//! from the one that it fits best, and what is left becomes two free rectangles
//! (the "guillotine" family of J. Jylänki's survey, 2010). Several orders are
//! tried and the best plan is taken.

use crate::geom::Axis;
use crate::plan::cut::engine::meter::Meter;
use crate::plan::cut::engine::sketch::{Sheet, Sketch};

/// A free rectangle is not cut further after so many turns of the paper.
const MOST_TURNS: u32 = 48;
/// Comparisons of a part with a free rectangle that make a step.
const LOOKS: u64 = 4;

/// More parts than this are not looked at one by one.
const MOST_PARTS: u64 = 20_000;
/// Of so few kinds, more parts than this are alike enough for the same sheet again
/// and again.
const FEW_KINDS: usize = 100;
const FEW_PARTS: u64 = 300;
/// No more parts of a kind are put on one sheet when there are very many.
const MOST_ALIKE: u32 = 5_000;

/// What the quick plan has to keep to, in 1/14400 mm.
#[derive(Clone, Debug)]
pub(super) struct Rules {
    /// Width × height of the sheet.
    pub(super) sheet: (i64, i64),
    /// For each kind, width × height of each way it can lie, and whether turned.
    pub(super) lies: Vec<Vec<(i64, i64, bool)>>,
    /// The longest cut.
    pub(super) longest: i64,
    /// The most turns of the paper.
    pub(super) stages: u32,
}

/// A rectangle not used so far.
#[derive(Clone, Copy, Debug)]
struct Free {
    sheet: usize,
    node: usize,
    size: (i64, i64),
    turns: u32,
    last: Option<Axis>,
}

/// Where and how a part is cut.
#[derive(Clone, Copy, Debug)]
struct Choice {
    free: usize,
    lie: (i64, i64, bool),
    first: Axis,
}

/// Cuts the parts in the given order; the order names kinds. Stops with `None`
/// when steps run out or more than `most` sheets are needed.
pub(super) fn cut_in_order(
    rules: &Rules,
    order: &[usize],
    most: usize,
    meter: &mut Meter,
) -> Option<Vec<Sheet>> {
    let mut sheets: Vec<Sheet> = Vec::new();
    let mut free: Vec<Free> = Vec::new();
    for &kind in order {
        let looks = u64::try_from(free.len()).unwrap_or(u64::MAX);
        if !meter.spend(looks / LOOKS + 1) {
            return None;
        }
        let choice = match best(rules, kind, &free) {
            Some(choice) => choice,
            None if sheets.len() < most => {
                let mut sketch = Sketch::default();
                let root = sketch.sheet();
                sheets.push(Sheet { sketch, root, holds: vec![0; rules.lies.len()] });
                free.push(Free {
                    sheet: sheets.len() - 1,
                    node: root,
                    size: rules.sheet,
                    turns: 0,
                    last: None,
                });
                let fresh = free.len() - 1;
                let mut choice = best(rules, kind, &free[fresh..])?;
                choice.free = fresh;
                choice
            }
            None => return None,
        };
        cut(rules, kind, choice, &mut free, &mut sheets);
    }
    Some(sheets)
}

/// The free rectangle that a part fits best: least is left beside it, then
/// least in all.
fn best(rules: &Rules, kind: usize, free: &[Free]) -> Option<Choice> {
    let mut best: Option<((i64, i128), Choice)> = None;
    for (index, open) in free.iter().enumerate() {
        for &lie in &rules.lies[kind] {
            let left = (open.size.0 - lie.0, open.size.1 - lie.1);
            if left.0 < 0 || left.1 < 0 {
                continue;
            }
            let area = i128::from(open.size.0) * i128::from(open.size.1);
            let score = (left.0.min(left.1), area);
            if best.as_ref().is_some_and(|(least, _)| *least <= score) {
                continue;
            }
            if let Some(first) = first_cut(rules, open, lie) {
                best = Some((score, Choice { free: index, lie, first }));
            }
        }
    }
    best.map(|(_, choice)| choice)
}

/// Which way the first cut should run, if the limits allow any: the one that
/// leaves the larger rectangle whole.
fn first_cut(rules: &Rules, open: &Free, lie: (i64, i64, bool)) -> Option<Axis> {
    let (width, height) = open.size;
    let left = (width - lie.0, height - lie.1);
    if left == (0, 0) {
        return Some(Axis::Level);
    }
    let level = (left.1 == 0 || width <= rules.longest)
        && (left.0 == 0 || lie.1 <= rules.longest)
        && turns(open, Axis::Level, left) <= rules.stages;
    let upright = (left.0 == 0 || height <= rules.longest)
        && (left.1 == 0 || lie.0 <= rules.longest)
        && turns(open, Axis::Upright, left) <= rules.stages;
    let below = i128::from(width) * i128::from(left.1);
    let beside = i128::from(height) * i128::from(left.0);
    match (level, upright) {
        (false, false) => None,
        (true, false) => Some(Axis::Level),
        (false, true) => Some(Axis::Upright),
        (true, true) if beside <= below => Some(Axis::Level),
        (true, true) => Some(Axis::Upright),
    }
}

/// Turns of the paper after the first cut of a part; if it is as wide (or high)
/// as the free rectangle there is only the other cut.
fn turns(open: &Free, first: Axis, left: (i64, i64)) -> u32 {
    let cut = match first {
        Axis::Level if left.1 == 0 => Axis::Upright,
        Axis::Upright if left.0 == 0 => Axis::Level,
        Axis::Level | Axis::Upright => first,
    };
    open.turns + u32::from(open.last != Some(cut))
}

/// Cuts a part from a free rectangle.
fn cut(
    rules: &Rules,
    kind: usize,
    choice: Choice,
    free: &mut Vec<Free>,
    sheets: &mut [Sheet],
) {
    let open = free.swap_remove(choice.free);
    let sheet = &mut sheets[open.sheet];
    sheet.holds[kind] += 1;
    let (mut node, mut size) = (open.node, open.size);
    let (mut turned, mut last) = (open.turns, open.last);
    for axis in [choice.first, choice.first.other()] {
        let (at, extent) = match axis {
            Axis::Upright => (choice.lie.0, size.0),
            Axis::Level => (choice.lie.1, size.1),
        };
        let (one, other) = sheet.sketch.cut(node, axis, at, extent);
        if let Some(other) = other {
            let rest = match axis {
                Axis::Upright => (extent - at, size.1),
                Axis::Level => (size.0, extent - at),
            };
            turned += u32::from(last != Some(axis));
            last = Some(axis);
            if turned <= rules.stages.min(MOST_TURNS) {
                let sheet = open.sheet;
                free.push(Free { sheet, node: other, size: rest, turns: turned, last });
            }
        }
        match axis {
            Axis::Upright => size.0 = at,
            Axis::Level => size.1 = at,
        }
        node = one;
    }
    let lie = (choice.lie.0, choice.lie.1);
    sheet.sketch.place(node, size, (kind, choice.lie.2), lie, true);
}

/// A quick plan for any number of parts: the best of some orders, or the same
/// sheet again and again if there are very many. There is always a plan.
pub(super) fn plan(
    rules: &Rules,
    wanted: &[u32],
    enough: u32,
    meter: &mut Meter,
) -> Vec<(Sheet, u32)> {
    let parts = wanted.iter().fold(0_u64, |sum, &it| sum + u64::from(it));
    let alike = wanted.len() <= FEW_KINDS && FEW_PARTS < parts;
    if parts <= MOST_PARTS && !alike {
        let enough = usize::try_from(enough).unwrap_or(usize::MAX);
        if let Some(sheets) = best_order(rules, wanted, enough, meter) {
            return sheets.into_iter().map(|it| (it, 1)).collect();
        }
    }
    again_and_again(rules, wanted, meter)
}

/// Fills one sheet, cuts it as often as possible, and goes on with the rest. When
/// steps run out, every part left gets a sheet of its own.
fn again_and_again(
    rules: &Rules,
    wanted: &[u32],
    meter: &mut Meter,
) -> Vec<(Sheet, u32)> {
    let mut left = wanted.to_vec();
    let mut plan = Vec::new();
    let whole = i128::from(rules.sheet.0) * i128::from(rules.sheet.1);
    let mut kinds: Vec<usize> = (0..wanted.len()).filter(|&it| 0 < wanted[it]).collect();
    let area = |kind: usize| {
        let (width, height, _) = rules.lies[kind][0];
        i128::from(width) * i128::from(height)
    };
    kinds.sort_by_key(|&it| std::cmp::Reverse(area(it)));
    while !kinds.is_empty() {
        let mut order = Vec::new();
        for &kind in &kinds {
            let fit = u32::try_from(whole / area(kind)).unwrap_or(u32::MAX);
            order.extend(std::iter::repeat_n(
                kind,
                left[kind].min(fit).min(MOST_ALIKE) as usize,
            ));
        }
        let enough_left = meter.spend(order.len() as u64);
        let sheet = if enough_left { fill_one(rules, &order, meter) } else { None };
        let sheet = sheet.unwrap_or_else(|| {
            let mut ample = Meter::new(u64::MAX);
            fill_one(rules, &kinds[..1], &mut ample).expect("every part fits a sheet")
        });
        let times = kinds
            .iter()
            .filter(|&&it| 0 < sheet.holds[it])
            .map(|&it| left[it] / sheet.holds[it])
            .min()
            .expect("a sheet holds something");
        for &kind in &kinds {
            left[kind] -= sheet.holds[kind] * times;
        }
        plan.push((sheet, times));
        kinds.retain(|&it| 0 < left[it]);
    }
    plan
}

/// One sheet with as many of the parts as fit, in the given order.
fn fill_one(rules: &Rules, order: &[usize], meter: &mut Meter) -> Option<Sheet> {
    let mut sheets = vec![Sheet::empty(rules.lies.len())];
    let mut free = vec![Free {
        sheet: 0,
        node: sheets[0].root,
        size: rules.sheet,
        turns: 0,
        last: None,
    }];
    let mut over = None;
    for &kind in order {
        if over == Some(kind) {
            continue;
        }
        if !meter.spend(free.len() as u64 / LOOKS + 1) {
            return None;
        }
        match best(rules, kind, &free) {
            Some(choice) => cut(rules, kind, choice, &mut free, &mut sheets),
            None => over = Some(kind),
        }
    }
    sheets.pop().filter(|it| it.holds.iter().any(|&it| 0 < it))
}

/// Tries some orders of the parts and gives the plan with the fewest sheets, the
/// first found of equal ones; stops early at `enough` sheets.
pub(super) fn best_order(
    rules: &Rules,
    wanted: &[u32],
    enough: usize,
    meter: &mut Meter,
) -> Option<Vec<Sheet>> {
    let size = |kind: usize| {
        let (width, height, _) = rules.lies[kind][0];
        (width, height)
    };
    let area = |kind| i128::from(size(kind).0) * i128::from(size(kind).1);
    let keys: [&dyn Fn(usize) -> (i128, i128); 5] = [
        &|it| (area(it), 0),
        &|it| (i128::from(size(it).0.max(size(it).1)), area(it)),
        &|it| (i128::from(size(it).0.min(size(it).1)), area(it)),
        &|it| (i128::from(size(it).0), i128::from(size(it).1)),
        &|it| (i128::from(size(it).1), i128::from(size(it).0)),
    ];
    let mut best: Option<Vec<Sheet>> = None;
    for key in keys {
        let mut kinds: Vec<usize> =
            (0..wanted.len()).filter(|&it| 0 < wanted[it]).collect();
        kinds.sort_by_key(|&it| std::cmp::Reverse(key(it)));
        let order: Vec<usize> = kinds
            .into_iter()
            .flat_map(|it| std::iter::repeat_n(it, wanted[it] as usize))
            .collect();
        let most = best.as_ref().map_or(usize::MAX, |it| it.len() - 1);
        if let Some(plan) = cut_in_order(rules, &order, most, meter) {
            best = Some(plan);
        }
        if best.as_ref().is_some_and(|it| it.len() <= enough) {
            break;
        }
    }
    best
}
