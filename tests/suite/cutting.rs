//! Cutting one paper: worked examples, limits, and what must hold for any plan.

use leafwright::geom::{Length, Size};
use leafwright::plan::cut::{
    BUDGET, Kind, Limits, Problem, Replayed, SheetKind, Solution, replay, solve,
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
    assert!(u64::from(solution.bound.sheets) <= replayed.sheets);
    assert_eq!(solution.proven, u64::from(solution.bound.sheets) == replayed.sheets);
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
