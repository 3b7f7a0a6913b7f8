//! The search against a naive recursion that tries every cut on a unit raster.
//!
//! The recursion below is the definition of the problem and nothing else. Small
//! random sets are planned by both.

use std::collections::BTreeMap;

use leafwright::geom::{Length, Size};
use leafwright::plan::cut::{BUDGET, Kind, Limits, Problem, SheetKind, replay, solve};

/// A kind in small whole numbers: width, height, free to turn, count.
type Row = (u8, u8, bool, u8);

/// Numbers that look random and are the same everywhere (G. Marsaglia, xorshift
/// generators, 2003).
struct Dice(u64);

impl Dice {
    fn roll(&mut self, below: u64) -> u8 {
        self.0 ^= self.0 << 13;
        self.0 ^= self.0 >> 7;
        self.0 ^= self.0 << 17;
        u8::try_from(self.0 % below).expect("small")
    }
}

/// Which smaller sets can be cut from rectangles, found out by trying all cuts.
struct Naive<'a> {
    kinds: &'a [Row],
    known: BTreeMap<(u8, u8, Vec<u8>), bool>,
}

impl Naive<'_> {
    fn can(&mut self, width: u8, height: u8, set: &[u8]) -> bool {
        let total: u32 = set.iter().map(|&it| u32::from(it)).sum();
        if total == 0 {
            return true;
        }
        let area: u32 = set
            .iter()
            .zip(self.kinds)
            .map(|(&count, it)| u32::from(count) * u32::from(it.0) * u32::from(it.1))
            .sum();
        if u32::from(width) * u32::from(height) < area {
            return false;
        }
        let key = (width, height, set.to_vec());
        if let Some(&known) = self.known.get(&key) {
            return known;
        }
        let single = total == 1 && {
            let kind = set.iter().position(|&it| it == 1).expect("one part");
            let (w, h, free, _) = self.kinds[kind];
            (w, h) == (width, height) || (free && (h, w) == (width, height))
        };
        let can = single || self.cuts(width, height, set);
        self.known.insert(key, can);
        can
    }

    fn cuts(&mut self, width: u8, height: u8, set: &[u8]) -> bool {
        for part in parts(set) {
            let rest: Vec<u8> = set.iter().zip(&part).map(|(a, b)| a - b).collect();
            for at in 1..width {
                if self.can(at, height, &part) && self.can(width - at, height, &rest) {
                    return true;
                }
            }
            for at in 1..height {
                if self.can(width, at, &part) && self.can(width, height - at, &rest) {
                    return true;
                }
            }
        }
        false
    }

    /// The fewest sheets for a set.
    fn fewest(&mut self, sheet: (u8, u8), set: &[u8]) -> u32 {
        if set.iter().all(|&it| it == 0) {
            return 0;
        }
        let mut least = u32::MAX;
        let first = set.iter().position(|&it| 0 < it).expect("not empty");
        for part in parts(set) {
            if part[first] == 0 || !self.can(sheet.0, sheet.1, &part) {
                continue;
            }
            let rest: Vec<u8> = set.iter().zip(&part).map(|(a, b)| a - b).collect();
            least = least.min(1 + self.fewest(sheet, &rest));
        }
        least
    }
}

/// Every smaller set, the set itself and the empty one included.
fn parts(set: &[u8]) -> Vec<Vec<u8>> {
    let mut all = vec![Vec::new()];
    for &count in set {
        all = all
            .into_iter()
            .flat_map(|it: Vec<u8>| {
                (0..=count).map(move |one| {
                    let mut longer = it.clone();
                    longer.push(one);
                    longer
                })
            })
            .collect();
    }
    all
}

fn problem(sheet: (u8, u8), rows: &[Row]) -> Problem {
    let size = |width: u8, height: u8| {
        Size::new(Length::mm(i64::from(width)), Length::mm(i64::from(height)))
    };
    Problem {
        sheets: vec![SheetKind { size: size(sheet.0, sheet.1), at_hand: None }],
        kinds: rows
            .iter()
            .map(|&(width, height, free, count)| Kind {
                size: size(width, height),
                free,
                count: u32::from(count),
            })
            .collect(),
        limits: Limits {
            stages: None,
            longest_cut: None,
            least_offcut: Length::mm(1),
            budget: BUDGET,
        },
    }
}

/// A small random set: a sheet of 4–9 by 4–9, two to four kinds, one to three of
/// each.
fn small(dice: &mut Dice) -> ((u8, u8), Vec<Row>) {
    let sheet = (4 + dice.roll(6), 4 + dice.roll(6));
    let kinds = 2 + dice.roll(3);
    let rows = (0..kinds)
        .map(|_| {
            let side = |dice: &mut Dice, most: u8| 1 + dice.roll(u64::from(most));
            let width = side(dice, sheet.0);
            let height = side(dice, sheet.1);
            let free = dice.roll(2) == 0;
            (width, height, free, 1 + dice.roll(3).min(2))
        })
        .collect();
    (sheet, rows)
}

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
