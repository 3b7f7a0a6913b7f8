//! One size of sheet and what is wanted, in the whole numbers the search works on.

use crate::geom::Size;
use crate::plan::cut::{Kind, Limits};

/// More reachable sums than this are not told apart.
const MOST_SUMS: usize = 20_000;
/// Sheets up to so many units have one flag for each unit.
const MOST_UNITS: usize = 1 << 17;
/// Looks that may be taken to find the sums.
const MOST_LOOKS: usize = 30_000_000;

/// A sheet in units of the search: the largest measures that divide every
/// length which can lie across or along it.
///
/// What the last unit leaves of the sheet is no use to the pieces, but it adds to
/// an offcut; see [`Board::rest`].
#[derive(Clone, Debug)]
pub(super) struct Board {
    /// Width × height in whole search units.
    pub(super) size: (i64, i64),
    /// 1/14400 mm in a unit across and in a unit along.
    pub(super) unit: (i64, i64),
    /// What is left of the sheet's width and height, in 1/14400 mm.
    pub(super) rest: (i64, i64),
    /// The ways in which each kind can lie: width × height and whether turned.
    /// None if it can't be cut from this sheet.
    pub(super) lies: Vec<Vec<Lie>>,
    /// How many of each kind are wanted.
    pub(super) wanted: Vec<u32>,
    /// The longest cut, in 1/14400 mm.
    pub(super) longest: i64,
    /// The most runs of cuts in one direction from the sheet to a part, if they are
    /// limited; at least 2.
    pub(super) stages: Option<u8>,
}

/// A way in which a part can lie on a sheet.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Lie {
    /// Width in search units.
    pub(super) width: i64,
    /// Height in search units.
    pub(super) height: i64,
    /// Turned by a quarter.
    pub(super) turned: bool,
}

impl Lie {
    /// The area in square search units.
    pub(super) fn area(self) -> i128 {
        i128::from(self.width) * i128::from(self.height)
    }
}

/// The ways in which a kind can be cut from a sheet, in 1/14400 mm.
///
/// A part longer than the longest cut can only be had where it is as wide as
/// the whole sheet: no cut along its long side is needed then.
pub(super) fn lies(kind: &Kind, sheet: Size, limits: &Limits) -> Vec<(Size, bool)> {
    let mut lies = vec![(kind.size, false)];
    if kind.free && kind.size.width != kind.size.height {
        lies.push((kind.size.turned(), true));
    }
    let longest = limits.longest_cut;
    lies.retain(|(size, _)| {
        let uncut_across = size.width == sheet.width;
        let uncut_along = size.height == sheet.height;
        size.fits(sheet)
            && longest.is_none_or(|longest| {
                let upright = uncut_across || size.height <= longest;
                let level = uncut_along || size.width <= longest;
                let first = sheet.width <= longest || sheet.height <= longest;
                upright && level && (first || (uncut_across && uncut_along))
            })
    });
    lies
}

impl Board {
    /// Puts a sheet and what is wanted into search units.
    pub(super) fn new(
        sheet: Size,
        kinds: &[Kind],
        wanted: &[u32],
        limits: &Limits,
    ) -> Self {
        let real: Vec<_> = kinds.iter().map(|it| lies(it, sheet, limits)).collect();
        let mut unit = (0, 0);
        for (size, _) in real.iter().flatten() {
            unit.0 = gcd(unit.0, size.width.units());
            unit.1 = gcd(unit.1, size.height.units());
        }
        let unit = (unit.0.max(1), unit.1.max(1));
        let (width, height) = (sheet.width.units(), sheet.height.units());
        let longest = limits.longest_cut.map_or(i64::MAX, |it| it.units());
        let lie = |&(size, turned): &(Size, bool)| Lie {
            width: size.width.units() / unit.0,
            height: size.height.units() / unit.1,
            turned,
        };
        Self {
            size: (width / unit.0, height / unit.1),
            unit,
            rest: (width % unit.0, height % unit.1),
            lies: real.iter().map(|it| it.iter().map(lie).collect()).collect(),
            wanted: wanted.to_vec(),
            longest,
            stages: limits.stages.map(|it| it.max(2)),
        }
    }

    /// Every width (or height) up to the sheet's that parts side by side can
    /// make, in order, with the sheet's own. `None` if there are too many.
    ///
    /// Each copy of a free kind adds one of its two sides; this is J. C. Herz's
    /// canonical dissection (1972), bounded by how many are wanted.
    pub(super) fn sums(&self, upright: bool) -> Option<Vec<i64>> {
        let most = if upright { self.size.1 } else { self.size.0 };
        let sides = |lies: &Vec<Lie>| -> Vec<i64> {
            lies.iter().map(|it| if upright { it.height } else { it.width }).collect()
        };
        let rows = self.lies.iter().map(sides).zip(self.wanted.iter().copied());
        let mut sums = match usize::try_from(most) {
            Ok(units) if units <= MOST_UNITS => sums_by_unit(rows, units)?,
            _ => sums_by_list(rows, most)?,
        };
        if sums.last() != Some(&most) {
            sums.push(most);
        }
        Some(sums)
    }

    /// The sheet in 1/14400 mm.
    pub(super) fn real(&self) -> (i64, i64) {
        (self.size.0 * self.unit.0 + self.rest.0, self.size.1 * self.unit.1 + self.rest.1)
    }

    /// The greatest height at which an upright cut is possible, and the greatest
    /// width at which a level cut is, in search units.
    pub(super) fn reach(&self) -> (i64, i64) {
        (self.longest / self.unit.1, self.longest / self.unit.0)
    }

    /// The sheet's area in square 1/14400 mm.
    pub(super) fn real_area(&self) -> i128 {
        let real = self.real();
        i128::from(real.0) * i128::from(real.1)
    }

    /// The area of all parts in square search units.
    pub(super) fn parts_area(&self) -> i128 {
        let rows = self.lies.iter().zip(&self.wanted);
        rows.map(|(it, &n)| it[0].area() * i128::from(n)).sum()
    }

    /// The area of the sheet in square search units.
    pub(super) fn area(&self) -> i128 {
        i128::from(self.size.0) * i128::from(self.size.1)
    }
}

/// The sums with one flag for each unit.
///
/// The flag is the least number of copies of the kind at hand that the sum takes.
fn sums_by_unit(
    rows: impl ExactSizeIterator<Item = (Vec<i64>, u32)>,
    most: usize,
) -> Option<Vec<i64>> {
    const NONE: u32 = u32::MAX;
    if MOST_LOOKS / (most + 1) < rows.len() {
        return None;
    }
    let mut copies = vec![NONE; most + 1];
    copies[0] = 0;
    for (sides, wanted) in rows {
        for flag in &mut copies {
            *flag = if *flag == NONE { NONE } else { 0 };
        }
        let sides: Vec<usize> =
            sides.into_iter().filter_map(|it| usize::try_from(it).ok()).collect();
        for sum in 0..=most {
            let used = copies[sum];
            if used < wanted {
                for side in &sides {
                    if let Some(flag) = copies.get_mut(sum + side) {
                        *flag = (*flag).min(used + 1);
                    }
                }
            }
        }
    }
    let reached = copies.iter().enumerate().filter(|it| *it.1 != NONE);
    Some(reached.filter_map(|it| i64::try_from(it.0).ok()).collect())
}

/// The sums as a sorted list, for sheets with very many units.
fn sums_by_list(
    rows: impl Iterator<Item = (Vec<i64>, u32)>,
    most: i64,
) -> Option<Vec<i64>> {
    let mut sums = vec![0];
    let mut looks = 0;
    for (sides, wanted) in rows {
        let mut newest = sums.clone();
        for _ in 0..wanted {
            let mut next: Vec<i64> = newest
                .iter()
                .flat_map(|sum| sides.iter().map(move |side| sum + side))
                .filter(|&sum| sum <= most && sums.binary_search(&sum).is_err())
                .collect();
            next.sort_unstable();
            next.dedup();
            if next.is_empty() {
                break;
            }
            sums.extend(&next);
            sums.sort_unstable();
            looks += sums.len() + newest.len() * sides.len();
            if MOST_SUMS < sums.len() || MOST_LOOKS < looks {
                return None;
            }
            newest = next;
        }
    }
    Some(sums)
}

/// The greatest common divisor.
fn gcd(mut a: i64, mut b: i64) -> i64 {
    while b != 0 {
        (a, b) = (b, a % b);
    }
    a
}
