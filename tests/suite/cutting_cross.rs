//! The search against a naive recursion that tries every cut on a unit raster.
//!
//! Small random sets are planned by both.

use std::collections::BTreeMap;

use leafwright::geom::{Length, Size};
use leafwright::plan::cut::{
    Kind, Problem, ReplayFault, Solution, knapsack, replay, solve,
};

use crate::naive::{Dice, Naive, Row, cut_up, parts, problem, small};

#[test]
fn the_fewest_sheets_are_those_of_a_naive_recursion() {
    let mut dice = Dice(20_250_301);
    for round in 0..600 {
        let (sheet, rows) = small(&mut dice);
        let set: Vec<u8> = rows.iter().map(|it| it.3).collect();
        let mut naive = Naive { kinds: &rows, known: BTreeMap::new() };
        let fewest = naive.fewest(sheet, &set);
        let problem = problem(sheet, &rows);
        let solution = solve(&problem);
        let sheets: u32 = solution.patterns.iter().map(|it| it.2).sum();
        assert_eq!(sheets, fewest, "round {round}: {sheet:?} {rows:?}");
        assert!(solution.proven, "round {round}: {sheet:?} {rows:?}");
        let ways: Vec<_> = solution
            .patterns
            .iter()
            .map(|it| (problem.sheets[0].size, &it.1, it.2))
            .collect();
        let offcut = solution.offcut.map(|it| (it.0, it.1));
        let held = replay(&problem.kinds, &problem.limits, &ways, &[], offcut);
        assert!(held.is_ok(), "round {round}: {held:?}");
    }
}

#[test]
fn the_largest_offcut_is_that_of_a_naive_recursion() {
    let mut dice = Dice(77_003);
    let mut seen = 0;
    while seen < 150 {
        let (sheet, rows) = small(&mut dice);
        let solution = solve(&problem(sheet, &rows));
        if solution.patterns.len() != 1 || solution.patterns[0].2 != 1 {
            continue;
        }
        seen += 1;
        // An offcut is one more part that must come out.
        let mut largest = 0;
        for width in 1..=sheet.0 {
            for height in 1..=sheet.1 {
                let area = u32::from(width) * u32::from(height);
                if area <= largest {
                    continue;
                }
                let mut with = rows.clone();
                with.push((width, height, false, 1));
                let set: Vec<u8> = with.iter().map(|it| it.3).collect();
                let mut naive = Naive { kinds: &with, known: BTreeMap::new() };
                if naive.can(sheet.0, sheet.1, &set) {
                    largest = area;
                }
            }
        }
        let mm = i128::from(Length::MM.units());
        let found = solution.offcut.map_or(0, |it| it.1.area() / mm / mm);
        assert_eq!(found, i128::from(largest), "{sheet:?} {rows:?}");
        assert!(solution.offcut.is_none_or(|it| it.2));
    }
}

#[test]
fn the_most_value_is_that_of_a_naive_recursion() {
    let mut dice = Dice(990_017);
    for round in 0..700 {
        let (sheet, rows) = small(&mut dice);
        let values: Vec<i64> =
            rows.iter().map(|_| 1 + i64::from(dice.roll(30))).collect();
        let set: Vec<u8> = rows.iter().map(|it| it.3).collect();
        let mut naive = Naive { kinds: &rows, known: BTreeMap::new() };
        let worth = |part: &[u8]| -> i64 {
            part.iter().zip(&values).map(|(&n, value)| i64::from(n) * value).sum()
        };
        let most = parts(&set)
            .iter()
            .filter(|part| naive.can(sheet.0, sheet.1, part))
            .map(|part| worth(part))
            .max();
        let problem = problem(sheet, &rows);
        let size = problem.sheets[0].size;
        let filled = knapsack::fill(size, &problem.kinds, &values, &problem.limits)
            .expect("small enough");
        assert_eq!(
            Some(filled.value),
            most,
            "round {round}: {sheet:?} {rows:?} {values:?}"
        );
        assert_eq!(filled.value, filled.bound, "round {round}: {sheet:?} {rows:?}");
    }
}

/// The sheets that a plan takes, after replay.
#[track_caller]
fn sheets(problem: &Problem) -> (u32, Solution) {
    let solution = solve(problem);
    let ways: Vec<_> = solution
        .patterns
        .iter()
        .map(|it| (problem.sheets[it.0].size, &it.1, it.2))
        .collect();
    let offcut = solution.offcut.map(|it| (it.0, it.1));
    replay(&problem.kinds, &problem.limits, &ways, &solution.too_large, offcut)
        .expect("the plan holds");
    (solution.patterns.iter().map(|it| it.2).sum(), solution)
}

#[test]
fn what_was_one_sheet_is_never_said_not_to_fit() {
    let mut dice = Dice(5_550_001);
    for round in 0..60 {
        let pieces = 3 + usize::from(dice.roll(18));
        let mut problem = problem((1, 1), &[]);
        problem.sheets[0].size = Size::new(Length::inch(12, 1), Length::inch(12, 1));
        problem.kinds = cut_up(&mut dice, (192, 192), pieces);
        let (sheets, solution) = sheets(&problem);
        assert!(solution.bound.sheets <= 1, "round {round}: {:?}", problem.kinds);
        assert_eq!(sheets, 1, "round {round}: {:?}", problem.kinds);
    }
}

#[test]
fn scaling_swapping_and_reordering_change_nothing_and_more_parts_need_no_less() {
    let mut dice = Dice(424_243);
    for round in 0..250 {
        let (sheet, rows) = small(&mut dice);
        let plain = problem(sheet, &rows);
        let (fewest, solution) = sheets(&plain);
        assert!(solution.proven);
        let mut doubled = plain.clone();
        let mut swapped = plain.clone();
        let double = |size: Size| Size::new(size.width * 2, size.height * 2);
        for kind in &mut doubled.kinds {
            kind.size = double(kind.size);
        }
        doubled.sheets[0].size = double(doubled.sheets[0].size);
        doubled.limits.least_offcut = doubled.limits.least_offcut * 2;
        for kind in &mut swapped.kinds {
            kind.size = kind.size.turned();
        }
        swapped.sheets[0].size = swapped.sheets[0].size.turned();
        let mut reordered = plain.clone();
        reordered.kinds.reverse();
        for (what, other) in
            [("doubled", &doubled), ("swapped", &swapped), ("reordered", &reordered)]
        {
            let (count, other) = sheets(other);
            assert_eq!(count, fewest, "round {round}, {what}: {sheet:?} {rows:?}");
            let area = |it: &Solution| it.offcut.map_or(0, |it| it.1.area());
            let factor = if what == "doubled" { 4 } else { 1 };
            assert_eq!(area(&other), area(&solution) * factor, "round {round}, {what}");
        }
        let mut more = plain.clone();
        more.kinds[0].count += 1;
        assert!(fewest <= sheets(&more).0, "round {round}: {sheet:?} {rows:?}");
    }
}

#[test]
fn lengths_without_a_common_measure_are_planned_alike() {
    // A hundredth of a millimetre more on the sheet changes no count, but leaves
    // no coarse measure: the search works on sums of sides then.
    let mut dice = Dice(31_337);
    for round in 0..120 {
        let (sheet, rows) = small(&mut dice);
        let plain = problem(sheet, &rows);
        let (fewest, _) = sheets(&plain);
        let mut odd = plain.clone();
        for (index, kind) in odd.kinds.iter_mut().enumerate() {
            // Slightly smaller parts on a sheet with the same room.
            let less = Length::from_units(7 * (i64::try_from(index).expect("few") + 1));
            kind.size = Size::new(kind.size.width - less, kind.size.height - less);
        }
        let (count, solution) = sheets(&odd);
        assert!(count <= fewest && solution.proven, "round {round}: {sheet:?} {rows:?}");
    }
}

/// Whether a set can be cut from a rectangle with so many more turns of the paper, by
/// trying every cut; `level` is the direction of the cut before. A last cut that only
/// frees a part from waste is free.
fn can_in_stages(
    size: (u8, u8),
    set: &[u8],
    rows: &[Row],
    (level, turns): (Option<bool>, u32),
) -> bool {
    let total: u32 = set.iter().map(|&it| u32::from(it)).sum();
    if total == 0 {
        return true;
    }
    let area =
        |(&count, it): (&u8, &Row)| u32::from(count) * u32::from(it.0) * u32::from(it.1);
    if u32::from(size.0) * u32::from(size.1) < set.iter().zip(rows).map(area).sum() {
        return false;
    }
    if total == 1 {
        let kind = set.iter().position(|&it| it == 1).expect("one part");
        let (w, h, free, _) = rows[kind];
        let trimmed = |w, h| (w == size.0 && h <= size.1) || (h == size.1 && w <= size.0);
        if trimmed(w, h) || (free && trimmed(h, w)) {
            return true;
        }
    }
    for part in parts(set) {
        let rest: Vec<u8> = set.iter().zip(&part).map(|(a, b)| a - b).collect();
        for along in [false, true] {
            let turned = u32::from(level != Some(along));
            let Some(left) = turns.checked_sub(turned) else { continue };
            let next = (Some(along), left);
            let whole = if along { size.1 } else { size.0 };
            let side = |at| if along { (size.0, at) } else { (at, size.1) };
            let both = |at| {
                can_in_stages(side(at), &part, rows, next)
                    && can_in_stages(side(whole - at), &rest, rows, next)
            };
            if (1..whole).any(both) {
                return true;
            }
        }
    }
    false
}

/// The fewest sheets with so few turns, by trying every set for the first sheet.
fn fewest_in_stages(sheet: (u8, u8), set: &[u8], rows: &[Row], stages: u32) -> u32 {
    let Some(first) = set.iter().position(|&it| 0 < it) else { return 0 };
    if can_in_stages(sheet, set, rows, (None, stages)) {
        return 1;
    }
    let mut least = u32::MAX;
    for part in parts(set) {
        if part[first] == 0 || part == set {
            continue;
        }
        if can_in_stages(sheet, &part, rows, (None, stages)) {
            let rest: Vec<u8> = set.iter().zip(&part).map(|(a, b)| a - b).collect();
            least = least.min(1 + fewest_in_stages(sheet, &rest, rows, stages));
        }
    }
    least
}

/// A small sheet, and two or three kinds of part for it.
fn small_set(dice: &mut Dice) -> ((u8, u8), Vec<Row>) {
    let sheet = (3 + dice.roll(4), 3 + dice.roll(4));
    let rows = (0..2 + dice.roll(2))
        .map(|_| {
            let width = 1 + dice.roll(u64::from(sheet.0));
            let height = 1 + dice.roll(u64::from(sheet.1));
            (width, height, dice.roll(2) == 0, 1 + dice.roll(2))
        })
        .collect();
    (sheet, rows)
}

#[test]
fn with_few_turns_the_fewest_sheets_are_those_of_a_naive_recursion() {
    let mut dice = Dice(7_070_707);
    let mut dearer = [0; 2];
    for round in 0..400 {
        let (sheet, rows) = small_set(&mut dice);
        let set: Vec<u8> = rows.iter().map(|it| it.3).collect();
        let any = sheets(&problem(sheet, &rows)).0;
        for stages in [2_u8, 3] {
            let mut limited = problem(sheet, &rows);
            limited.limits.stages = Some(stages);
            let (count, solution) = sheets(&limited);
            let fewest = fewest_in_stages(sheet, &set, &rows, stages.into());
            assert_eq!(
                (count, solution.proven),
                (fewest, true),
                "round {round}, {stages}: {sheet:?} {rows:?}"
            );
            dearer[usize::from(stages - 2)] += u32::from(any < count);
        }
    }
    // The limit has to cost a sheet now and then, or nothing is tried.
    assert!(0 < dearer[0], "{dearer:?}");
}

#[test]
fn a_sheet_that_takes_four_turns_is_not_had_with_three() {
    // Each cut frees one part over the whole rectangle in hand, and turns the paper.
    let rows = [
        (3, 8, false, 1),
        (5, 3, false, 1),
        (2, 5, false, 1),
        (3, 3, false, 1),
        (3, 2, false, 1),
    ];
    let mut limited = problem((8, 8), &rows);
    for (stages, expected) in [(2, 2), (3, 2), (4, 1)] {
        limited.limits.stages = Some(stages);
        let fits = can_in_stages((8, 8), &[1; 5], &rows, (None, stages.into()));
        assert_eq!(fits, expected == 1, "{stages}");
        let (count, solution) = sheets(&limited);
        assert_eq!((count, solution.proven), (expected, true), "{stages}");
    }
}

#[test]
fn with_few_turns_the_most_value_is_that_of_a_naive_recursion() {
    // The search that builds up from parts; what is proven above may be the other's.
    let mut dice = Dice(60_660);
    for round in 0..300 {
        let (sheet, rows) = small_set(&mut dice);
        let set: Vec<u8> = rows.iter().map(|it| it.3).collect();
        let values: Vec<i64> =
            rows.iter().map(|_| 1 + i64::from(dice.roll(40))).collect();
        for stages in [2_u8, 3] {
            let mut limited = problem(sheet, &rows);
            limited.limits.stages = Some(stages);
            let size = limited.sheets[0].size;
            let filled = knapsack::fill(size, &limited.kinds, &values, &limited.limits)
                .expect("small enough");
            let worth = |part: &Vec<u8>| -> i64 {
                part.iter().zip(&values).map(|(&n, value)| i64::from(n) * value).sum()
            };
            let most = parts(&set)
                .iter()
                .filter(|it| can_in_stages(sheet, it, &rows, (None, stages.into())))
                .map(worth)
                .max();
            assert_eq!(
                (Some(filled.value), filled.bound),
                (most, filled.value),
                "round {round}, {stages}: {sheet:?} {rows:?} {values:?}"
            );
            let held = replay(
                &limited
                    .kinds
                    .iter()
                    .map(|it| Kind { count: 0, ..*it })
                    .collect::<Vec<_>>(),
                &limited.limits,
                &[(size, &filled.tree, 1)],
                &[],
                None,
            );
            assert!(
                !matches!(held, Err(ReplayFault::TooManyTurns { .. })),
                "round {round}, {stages}: {sheet:?} {rows:?}"
            );
        }
    }
}

#[test]
fn with_few_turns_many_parts_are_planned_by_strips() {
    // 90 strips 6 wide and 4 high on sheets of 20 by 13, and 60 squares of 5: more
    // smaller sets than can be looked at, so that the linear programme plans them.
    let mut limited = problem((20, 13), &[(6, 4, false, 90), (5, 5, true, 60)]);
    limited.kinds[0].count = 900;
    limited.kinds[1].count = 600;
    for stages in [2_u8, 3] {
        limited.limits.stages = Some(stages);
        let (count, solution) = sheets(&limited);
        // By area no fewer than (900 × 24 + 600 × 25) / 260, rounded up.
        assert!(141 <= count && solution.proven, "{count} {:?}", solution.bound);
    }
}

#[test]
fn doubling_all_lengths_changes_nothing_with_limits_either() {
    // The longest cut, the least offcut and the turns are doubled or kept with them.
    let mut dice = Dice(424_243);
    let mut proven = 0;
    for round in 0..150 {
        let (sheet, rows) = small(&mut dice);
        let mut plain = problem(sheet, &rows);
        plain.limits.longest_cut =
            Some(Length::mm(i64::from(sheet.0.min(sheet.1) + dice.roll(4))));
        plain.limits.least_offcut = Length::mm(i64::from(1 + dice.roll(2)));
        plain.limits.stages = [None, Some(2), Some(3)][usize::from(dice.roll(3))];
        let (fewest, solution) = sheets(&plain);
        let twice = |it: Size| Size::new(it.width * 2, it.height * 2);
        let mut double = plain.clone();
        double.sheets[0].size = twice(plain.sheets[0].size);
        for kind in &mut double.kinds {
            kind.size = twice(kind.size);
        }
        double.limits.longest_cut = plain.limits.longest_cut.map(|it| it * 2);
        double.limits.least_offcut = plain.limits.least_offcut * 2;
        let (count, doubled) = sheets(&double);
        assert_eq!(
            (fewest, solution.proven, solution.too_large.clone()),
            (count, doubled.proven, doubled.too_large.clone()),
            "round {round}: {plain:?}"
        );
        let size = |it: &Solution| it.offcut.map(|it| (it.1, it.2));
        let once = size(&solution).map(|it| (twice(it.0), it.1));
        assert_eq!(once, size(&doubled), "round {round}: {plain:?}");
        proven += u32::from(solution.proven);
    }
    assert!(100 < proven, "{proven}");
}
