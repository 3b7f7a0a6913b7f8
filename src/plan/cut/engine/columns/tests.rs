//! The bound by weights, looked at again by a naive recursion in whole numbers.

use super::*;
use crate::geom::{Length, Size};
use crate::plan::cut::engine::board::Lie;
use crate::plan::cut::{Kind, Limits};

/// A number that looks random (G. Marsaglia, xorshift generators, 2003).
fn roll(dice: &mut u64, below: u64) -> i64 {
    *dice ^= *dice << 13;
    *dice ^= *dice >> 7;
    *dice ^= *dice << 17;
    i64::try_from(*dice % below).expect("small")
}

/// The most weight that a sheet can hold, by trying every cut of every rectangle.
fn most_weight(sheet: (usize, usize), board: &Board, weights: &[i32]) -> i64 {
    let mut most = vec![vec![0_i64; sheet.1 + 1]; sheet.0 + 1];
    for width in 1..=sheet.0 {
        for height in 1..=sheet.1 {
            let mut best = 0;
            for (lies, &weight) in board.lies.iter().zip(weights) {
                let fits = |lie: &Lie| {
                    lie.width * board.unit.0 <= i64::try_from(width).expect("small")
                        && lie.height * board.unit.1
                            <= i64::try_from(height).expect("small")
                };
                if lies.iter().any(fits) {
                    best = best.max(i64::from(weight));
                }
            }
            for at in 1..width {
                best = best.max(most[at][height] + most[width - at][height]);
            }
            for at in 1..height {
                best = best.max(most[width][at] + most[width][height - at]);
            }
            most[width][height] = best;
        }
    }
    most[sheet.0][sheet.1]
}

#[test]
fn weights_prove_the_bound_that_they_are_said_to_prove() {
    let mut dice = 0x2545_F491_4F6C_DD1D_u64;
    for _ in 0..200 {
        let sheet = (6 + roll(&mut dice, 12), 6 + roll(&mut dice, 12));
        // One unit of length is 1/14400 mm here: the recursion walks all of them.
        let size = |sides: (i64, i64)| {
            Size::new(Length::from_units(sides.0), Length::from_units(sides.1))
        };
        let kinds: Vec<Kind> = (0..2 + roll(&mut dice, 5))
            .map(|_| Kind {
                size: size((1 + roll(&mut dice, 6), 1 + roll(&mut dice, 6))),
                free: roll(&mut dice, 2) == 0,
                count: 1 + u32::try_from(roll(&mut dice, 60)).expect("small"),
            })
            .collect();
        let limits = Limits {
            stages: None,
            longest_cut: None,
            least_offcut: Length::from_units(1),
            budget: u64::MAX,
        };
        let wanted: Vec<u32> = kinds.iter().map(|it| it.count).collect();
        let board = Board::new(size(sheet), &kinds, &wanted, &limits);
        let raster = Raster::new(&board).expect("a small sheet");
        let mut meter = Meter::new(u64::MAX);
        let relaxed =
            relax(&board, &raster, &[], u32::MAX, &mut meter).expect("few kinds");
        let whole = |side: i64| usize::try_from(side).expect("small");
        let mut master = Master::new(&wanted, &vec![1; kinds.len()]);
        let mut proven = 0;
        // The weights before each new way, and the last ones.
        for _ in kinds.len()..=relaxed.ways.len() {
            master.improve();
            let weights = whole_weights(&board, &master.weights()).0;
            assert!(weights.iter().all(|it| 0 <= *it), "{weights:?}");
            let most = most_weight((whole(sheet.0), whole(sheet.1)), &board, &weights);
            let rows = wanted.iter().zip(&weights);
            let all: i64 = rows.map(|(&n, &it)| i64::from(n) * i64::from(it)).sum();
            // No sheet holds more than `most`, so all take at least this many.
            proven = proven.max((all + most - 1) / most);
            let parts = dp::valued(&board.lies, &weights);
            let table = dp::inside(&raster, &parts, board.reach());
            master.add(dp::filling(&raster, &parts, &table, board.reach(), kinds.len()));
        }
        assert!(
            i64::from(relaxed.bound) <= proven,
            "{sheet:?} {kinds:?}: {} is said, {proven} is proven",
            relaxed.bound
        );
    }
}

/// Whether parts can be cut from a rectangle, by trying every cut and every division.
fn can(size: (i64, i64), set: &[u32], board: &Board, known: &mut Known) -> bool {
    let pieces: u32 = set.iter().sum();
    let area = board.lies.iter().zip(set);
    let area: i128 = area.map(|(it, &n)| it[0].area() * i128::from(n)).sum();
    if pieces == 0 || i128::from(size.0) * i128::from(size.1) < area {
        return pieces == 0;
    }
    let key = (size, set.to_vec());
    if let Some(&known) = known.get(&key) {
        return known;
    }
    let same = |it: &Lie| (it.width, it.height) == size;
    let one = set.iter().position(|it| *it == 1);
    let mut yes = pieces == 1 && one.is_some_and(|it| board.lies[it].iter().any(same));
    for part in parts(set) {
        let rest: Vec<u32> = set.iter().zip(&part).map(|(a, b)| a - b).collect();
        let mut both =
            |one, other| can(one, &part, board, known) && can(other, &rest, board, known);
        yes = yes
            || (1..size.0).any(|at| both((at, size.1), (size.0 - at, size.1)))
            || (1..size.1).any(|at| both((size.0, at), (size.0, size.1 - at)));
    }
    known.insert(key, yes);
    yes
}

type Known = std::collections::BTreeMap<((i64, i64), Vec<u32>), bool>;

/// Every smaller set.
fn parts(set: &[u32]) -> Vec<Vec<u32>> {
    set.iter().fold(vec![Vec::new()], |all, &count| {
        let longer = |it: &Vec<u32>| {
            let it = it.clone();
            (0..=count).map(move |one| it.iter().copied().chain([one]).collect())
        };
        all.iter().flat_map(longer).collect()
    })
}

/// The fewest sheets, by trying every way to fill one.
fn fewest(sheet: (i64, i64), set: &[u32], board: &Board, known: &mut Known) -> u32 {
    let Some(first) = set.iter().position(|it| 0 < *it) else { return 0 };
    let mut least = u32::MAX;
    for part in parts(set) {
        if 0 < part[first] && can(sheet, &part, board, known) {
            let rest: Vec<u32> = set.iter().zip(&part).map(|(a, b)| a - b).collect();
            least = least.min(1 + fewest(sheet, &rest, board, known));
        }
    }
    least
}

#[test]
fn ways_within_the_counts_never_prove_more_than_the_fewest_sheets() {
    let mut dice = 0x9E37_79B9_7F4A_7C15_u64;
    let mut higher = 0;
    for _ in 0..400 {
        let size = |dice: &mut u64, least, most| {
            let side = |dice: &mut u64| Length::from_units(least + roll(dice, most));
            Size::new(side(dice), side(dice))
        };
        let sheet = size(&mut dice, 5, 4);
        let mut kinds: Vec<Kind> = (0..2 + roll(&mut dice, 2))
            .map(|_| Kind {
                size: size(&mut dice, 1, 5),
                free: roll(&mut dice, 2) == 0,
                count: 1 + u32::try_from(roll(&mut dice, 3)).expect("small"),
            })
            .collect();
        // One more of the smallest, so that lengths have no common measure.
        let unit = Size::new(Length::from_units(1), Length::from_units(1));
        kinds.push(Kind { size: unit, free: false, count: 1 });
        let limits = Limits {
            stages: None,
            longest_cut: None,
            least_offcut: unit.width,
            budget: u64::MAX,
        };
        let wanted: Vec<u32> = kinds.iter().map(|it| it.count).collect();
        let board = Board::new(sheet, &kinds, &wanted, &limits);
        if board.lies.iter().any(Vec::is_empty) {
            continue;
        }
        let raster = Raster::new(&board).expect("a small sheet");
        let mut meter = Meter::new(u64::MAX);
        let relaxed = relax(&board, &raster, &[], u32::MAX, &mut meter);
        let mut relaxed = relaxed.expect("few kinds");
        let before = relaxed.bound;
        relax_properly(&board, &raster, &mut relaxed, u32::MAX, &mut meter);
        let true_least = fewest(board.size, &wanted, &board, &mut Known::new());
        let bound = relaxed.bound;
        assert!(before <= bound && bound <= true_least, "{sheet:?} {kinds:?}: {bound}");
        higher += u32::from(before < bound);
    }
    assert!(0 < higher, "the counts never helped");
}
