//! What cutting means, by a naive recursion that tries every cut, and small sets.
//!
//! The recursion is the definition of the problem and nothing else.

use std::collections::BTreeMap;

use leafwright::geom::{Length, Size};
use leafwright::plan::cut::{BUDGET, Kind, Limits, Problem, SheetKind};

/// A kind in small whole numbers: width, height, free to turn, count.
pub(crate) type Row = (u8, u8, bool, u8);

/// Numbers that look random and are the same everywhere (G. Marsaglia, xorshift
/// generators, 2003).
pub(crate) struct Dice(pub(crate) u64);

impl Dice {
    pub(crate) fn roll(&mut self, below: u64) -> u8 {
        self.0 ^= self.0 << 13;
        self.0 ^= self.0 >> 7;
        self.0 ^= self.0 << 17;
        u8::try_from(self.0 % below).expect("small")
    }
}

/// Which smaller sets can be cut from rectangles, found out by trying all cuts.
pub(crate) struct Naive<'a> {
    pub(crate) kinds: &'a [Row],
    pub(crate) known: BTreeMap<(u8, u8, Vec<u8>), bool>,
}

impl Naive<'_> {
    pub(crate) fn can(&mut self, width: u8, height: u8, set: &[u8]) -> bool {
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
    pub(crate) fn fewest(&mut self, sheet: (u8, u8), set: &[u8]) -> u32 {
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
pub(crate) fn parts(set: &[u8]) -> Vec<Vec<u8>> {
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

pub(crate) fn problem(sheet: (u8, u8), rows: &[Row]) -> Problem {
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
pub(crate) fn small(dice: &mut Dice) -> ((u8, u8), Vec<Row>) {
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

/// A set that comes from cutting up one sheet at random: it fits one sheet.
pub(crate) fn cut_up(dice: &mut Dice, sheet: (i64, i64), pieces: usize) -> Vec<Kind> {
    let mut open = vec![sheet];
    while open.len() < pieces {
        let largest = (0..open.len()).max_by_key(|&it| open[it].0 * open[it].1);
        let (width, height) = open.swap_remove(largest.expect("never empty"));
        let upright = if width == height { dice.roll(2) == 0 } else { height < width };
        let long = width.max(height);
        let at = (long * (2 + i64::from(dice.roll(7))) / 10).max(1);
        if upright {
            open.extend([(at, height), (width - at, height)]);
        } else {
            open.extend([(width, at), (width, height - at)]);
        }
    }
    open.into_iter()
        .map(|(width, height)| {
            let size = Size::new(Length::inch(width, 16), Length::inch(height, 16));
            let free = dice.roll(3) == 0;
            let size = if free && dice.roll(2) == 0 { size.turned() } else { size };
            Kind { size, free, count: 1 }
        })
        .collect()
}
