//! Cutting one paper: worked examples, limits, and what must hold for any plan.

use leafwright::geom::{Length, Size};
use leafwright::plan::cut::{
    BUDGET, How, Kind, Limits, Problem, Replayed, SheetKind, Solution, replay, solve,
};

/// No limits but a half-inch offcut.
fn limits() -> Limits {
    Limits {
        stages: None,
        longest_cut: None,
        least_offcut: Length::inch(1, 2),
        budget: BUDGET,
    }
}

/// Lengths in quarter inches: a sheet, and (width, height, free, count) of kinds.
fn quarters(sheet: (i64, i64), kinds: &[(i64, i64, bool, u32)]) -> Problem {
    let size =
        |(width, height)| Size::new(Length::inch(width, 4), Length::inch(height, 4));
    Problem {
        sheets: vec![SheetKind { size: size(sheet), at_hand: None }],
        kinds: kinds
            .iter()
            .map(|&(width, height, free, count)| Kind {
                size: size((width, height)),
                free,
                count,
            })
            .collect(),
        limits: limits(),
    }
}

/// Plans, and carries the plan out on imaginary paper.
#[track_caller]
fn cut(problem: &Problem) -> (Solution, Replayed) {
    let solution = solve(problem);
    let ways: Vec<_> = solution
        .patterns
        .iter()
        .map(|(sheet, tree, copies)| (problem.sheets[*sheet].size, tree, *copies))
        .collect();
    let offcut = solution.offcut.map(|(pattern, size, _)| (pattern, size));
    let replayed =
        replay(&problem.kinds, &problem.limits, &ways, &solution.too_large, offcut)
            .expect("the plan holds");
    if problem.sheets.len() == 1 && problem.sheets[0].at_hand.is_none() {
        assert!(u64::from(solution.bound.sheets) <= replayed.sheets);
        assert_eq!(solution.proven, u64::from(solution.bound.sheets) == replayed.sheets);
    }
    (solution, replayed)
}

/// A size in quarter inches.
fn size(width: i64, height: i64) -> Size {
    Size::new(Length::inch(width, 4), Length::inch(height, 4))
}

// Common practice, no source: sets that paper crafters cut.

#[test]
fn a_six_inch_sheet_yields_a_set_and_a_strip() {
    let problem =
        quarters((24, 24), &[(4, 20, true, 2), (6, 20, true, 1), (10, 10, true, 2)]);
    let (solution, replayed) = cut(&problem);
    assert_eq!((replayed.sheets, solution.proven), (1, true));
    let (_, offcut, proven) = solution.offcut.expect("a strip is left");
    assert!(proven);
    assert_eq!((offcut.short(), offcut.long()), (Length::inch(1, 1), Length::inch(6, 1)));
}

#[test]
fn a_twelve_inch_sheet_yields_four_sets_and_a_wide_strip() {
    let problem =
        quarters((48, 48), &[(4, 20, true, 8), (6, 20, true, 4), (10, 10, true, 8)]);
    let (solution, replayed) = cut(&problem);
    assert_eq!((replayed.sheets, solution.proven), (1, true));
    let (_, offcut, proven) = solution.offcut.expect("a strip is left");
    assert!(proven);
    assert_eq!(
        (offcut.short(), offcut.long()),
        (Length::inch(2, 1), Length::inch(12, 1))
    );
}

#[test]
fn an_eight_inch_sheet_takes_five_cuts_and_leaves_one_strip() {
    let problem =
        quarters((32, 32), &[(24, 5, false, 2), (24, 10, false, 1), (12, 12, false, 2)]);
    let (solution, replayed) = cut(&problem);
    assert_eq!((replayed.sheets, solution.proven), (1, true));
    assert_eq!(solution.offcut, Some((0, size(8, 32), true)));
    assert_eq!(replayed.cuts, [5]);
}

/// How many sheets of each size a plan takes.
fn taken(problem: &Problem, solution: &Solution) -> Vec<u32> {
    let mut taken = vec![0; problem.sheets.len()];
    for (sheet, _, copies) in &solution.patterns {
        taken[*sheet] += copies;
    }
    taken
}

#[test]
fn a_scrap_is_used_where_that_saves_a_sheet() {
    let mut problem = quarters((24, 24), &[(24, 12, false, 2), (8, 8, false, 1)]);
    problem.sheets.push(SheetKind { size: size(10, 9), at_hand: Some(1) });
    let (solution, _) = cut(&problem);
    assert_eq!(taken(&problem, &solution), [1, 1]);
    assert!(solution.proven);
    // Where it saves nothing it stays in the drawer.
    problem.kinds[1].count = 3;
    problem.kinds[0].count = 1;
    let (solution, _) = cut(&problem);
    assert_eq!(taken(&problem, &solution), [1, 0]);
}

#[test]
fn of_two_sizes_the_one_with_less_paper_is_bought() {
    let mut problem = quarters((48, 48), &[(20, 20, false, 1)]);
    problem.sheets.push(SheetKind { size: size(24, 24), at_hand: None });
    let (solution, _) = cut(&problem);
    assert_eq!((taken(&problem, &solution), solution.proven), (vec![0, 1], true));
    problem.kinds[0].count = 5;
    let (solution, _) = cut(&problem);
    assert_eq!(taken(&problem, &solution), [1, 1]);
}

#[test]
fn scraps_alone_serve_or_there_is_no_plan() {
    let mut problem = quarters((11, 6), &[(10, 5, true, 2)]);
    problem.sheets[0].at_hand = Some(2);
    let (solution, _) = cut(&problem);
    assert_eq!((taken(&problem, &solution), solution.proven), (vec![2], true));
    problem.sheets[0].at_hand = Some(1);
    let solution = solve(&problem);
    assert!(solution.patterns.is_empty() && solution.proven);
}

#[test]
fn many_parts_from_scraps_and_new_sheets() {
    let mut problem = quarters(
        (48, 48),
        &[(17, 22, true, 30), (9, 13, true, 40), (5, 20, false, 25), (7, 7, false, 60)],
    );
    let (alone, _) = cut(&problem);
    problem.sheets.push(SheetKind { size: size(34, 44), at_hand: Some(6) });
    let (solution, _) = cut(&problem);
    let taken = taken(&problem, &solution);
    assert!(taken[0] < self::taken(&problem, &alone)[0], "{taken:?}");
}

#[test]
fn a_part_larger_than_the_sheet_is_named_and_left_out() {
    let problem =
        quarters((24, 24), &[(25, 3, false, 1), (10, 10, false, 1), (3, 25, true, 2)]);
    let (solution, replayed) = cut(&problem);
    assert_eq!(solution.too_large, [0, 2]);
    assert_eq!(replayed.sheets, 1);
}

#[test]
fn a_pattern_that_stands_upright_is_never_turned() {
    // Two upright strips fit side by side; the third would fit only if turned.
    let problem =
        quarters((24, 24), &[(10, 24, false, 2), (4, 20, false, 1), (20, 4, false, 1)]);
    let (solution, replayed) = cut(&problem);
    assert_eq!((replayed.sheets, solution.proven), (2, true));
    let mut free = problem.clone();
    free.kinds[2].free = true;
    free.kinds[1].count = 0;
    assert_eq!(cut(&free).1.sheets, 1);
}

#[test]
fn large_parts_that_cannot_share_a_sheet_prove_the_number() {
    // Seven parts just over half a sheet each way: a quarter of the area each.
    let (solution, replayed) =
        cut(&quarters((24, 24), &[(13, 13, true, 7), (5, 9, true, 3)]));
    assert_eq!((replayed.sheets, solution.proven), (7, true));
    assert_eq!(solution.bound.how, How::Pairs);
}

#[test]
fn no_cut_is_longer_than_the_trimmer() {
    // A3 on a 12 in trimmer: the first cut must run across the short side.
    let sheet = Size::new(Length::mm(297), Length::mm(420));
    let kind = |width, height, free, count| Kind {
        size: Size::new(Length::mm(width), Length::mm(height)),
        free,
        count,
    };
    let mut problem = Problem {
        sheets: vec![SheetKind { size: sheet, at_hand: None }],
        kinds: vec![
            kind(148, 210, false, 2),
            kind(99, 200, true, 3),
            kind(30, 60, true, 5),
        ],
        limits: Limits { longest_cut: Some(Length::inch(12, 1)), ..limits() },
    };
    let (_, replayed) = cut(&problem);
    assert!(replayed.sheets <= 2);
    // A strip as long as the sheet can't be cut at all.
    problem.kinds.push(kind(100, 420, false, 1));
    assert_eq!(cut(&problem).0.too_large, [3]);
    // Both sides are longer than the cut: nothing comes off.
    problem.limits.longest_cut = Some(Length::mm(250));
    assert_eq!(cut(&problem).0.too_large, [0, 1, 2, 3]);
}

#[test]
fn no_more_turns_than_allowed() {
    let mut problem = quarters(
        (48, 48),
        &[(17, 22, true, 3), (9, 13, true, 4), (5, 20, false, 2), (7, 7, false, 6)],
    );
    for stages in [0, 1, 2, 3, 4] {
        problem.limits.stages = Some(stages);
        let (_, replayed) = cut(&problem);
        assert!(replayed.sheets <= 3, "{stages} turns: {} sheets", replayed.sheets);
    }
}

#[test]
fn ten_thousand_different_parts_still_get_a_plan() {
    let kind = |index: i64| Kind {
        size: Size::new(
            Length::from_units(300_000 + 997 * index),
            Length::from_units(300_000 + 1_009 * ((index * 7919) % 10_000)),
        ),
        free: index % 2 == 0,
        count: 1,
    };
    let problem = Problem {
        sheets: vec![SheetKind { size: size(48, 48), at_hand: None }],
        kinds: (0..10_000).map(kind).collect(),
        limits: limits(),
    };
    cut(&problem);
}

#[test]
fn a_huge_number_of_parts_still_gets_a_plan() {
    let mut problem =
        quarters((48, 48), &[(17, 22, true, u32::MAX), (9, 13, true, 400_000)]);
    cut(&problem);
    // One sheet that holds very many: the tree must not grow deep.
    problem.sheets[0].size = Size::new(Length::INCH * 4_000, Length::INCH * 40);
    problem.kinds[0].count = 30_000;
    cut(&problem);
}

#[test]
fn odd_sizes_are_refused_or_planned_but_never_fatal() {
    let sides = [i64::MIN, -1, 0, 1, 14_400, (1 << 40) - 1, 1 << 40, 1 << 41, i64::MAX];
    for &width in &sides {
        for &height in &sides {
            let odd = Size::new(Length::from_units(width), Length::from_units(height));
            let mut problem = quarters((24, 24), &[(10, 10, false, 1)]);
            problem.kinds.push(Kind { size: odd, free: true, count: 2 });
            let _ = solve(&problem);
            problem.kinds.pop();
            problem.sheets[0].size = odd;
            let _ = solve(&problem);
        }
    }
}
