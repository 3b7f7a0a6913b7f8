//! Fewest cuts for a kit on one sheet: of all ways to divide it, an easy one.
//!
//! A branch and bound over the divisions that the frontier knows to be possible.
//! Every part but one needs a cut, and waste needs one more: where a division
//! can't be better than the best so far it is left. The search is short, and what
//! it finds is not claimed to be the fewest; without a result the first division
//! that comes to hand is taken.

use std::collections::BTreeMap;

use crate::geom::Axis;
use crate::plan::cut::engine::counts::Parts;
use crate::plan::cut::engine::frontier::Frontier;
use crate::plan::cut::engine::lane::Lane;

/// Divisions that are looked at for one sheet.
const MOST_LOOKS: u32 = 40_000;

/// Width × height in 1/14400 mm.
type Size = (i64, i64);

/// A first cut: the kit on its first side (or the kit itself, if only waste is
/// trimmed off), the axis, and the extent of the first side in 1/14400 mm.
pub(super) type FirstCut = (usize, Axis, i64);

/// What was found out about kits on rectangles.
pub(super) struct FewCuts {
    known: BTreeMap<(usize, Size), (u32, FirstCut)>,
    hopeless: BTreeMap<(usize, Size), u32>,
    looks: u32,
}

impl FewCuts {
    /// Looks for few cuts for a kit on a rectangle that it fits.
    pub(super) fn new<T: Lane>(frontier: &Frontier<T>, kit: usize, size: Size) -> Self {
        let mut few =
            Self { known: BTreeMap::new(), hopeless: BTreeMap::new(), looks: MOST_LOOKS };
        let board = &frontier.board;
        if board.real().0.max(board.real().1) <= board.longest {
            few.least(frontier, kit, size, u32::MAX / 2);
        }
        few
    }

    /// The first cut for a kit on a rectangle, if one was found.
    pub(super) fn first_cut(&self, kit: usize, size: Size) -> Option<FirstCut> {
        self.known.get(&(kit, size)).map(|it| it.1)
    }

    /// The fewest cuts found, if fewer than `limit`. It recurs as deep as there are
    /// parts on the sheet.
    fn least<T: Lane>(
        &mut self,
        frontier: &Frontier<T>,
        kit: usize,
        size: Size,
        limit: u32,
    ) -> Option<u32> {
        let vector = frontier.counts.vector(kit);
        if vector.iter().sum::<u32>() == 1 {
            return frontier.trims(&vector, size).filter(|it| *it < limit);
        }
        if let Some(&(known, _)) = self.known.get(&(kit, size)) {
            return Some(known).filter(|it| *it < limit);
        }
        let tried = self.hopeless.get(&(kit, size)).is_some_and(|it| limit <= *it);
        if tried || limit <= frontier.cuts_at_least(kit, size) || !frontier.has_table(kit)
        {
            return None;
        }
        let mut best: Option<(u32, FirstCut)> = None;
        for part in Parts::new(&frontier.counts, &vector) {
            let Some(looks) = self.looks.checked_sub(1) else { break };
            self.looks = looks;
            for cut in frontier.first_cuts(kit, part, size).into_iter().flatten() {
                let limit = best.map_or(limit, |it| it.0);
                if let Some(cuts) = self.with(frontier, kit, size, cut, limit) {
                    best = Some((cuts, cut));
                }
            }
        }
        match best {
            Some(best) => {
                self.known.insert((kit, size), best);
            }
            None => {
                self.hopeless.insert((kit, size), limit);
            }
        }
        best.map(|it| it.0)
    }

    /// The fewest cuts found with this cut first, if fewer than `limit`.
    fn with<T: Lane>(
        &mut self,
        frontier: &Frontier<T>,
        kit: usize,
        size: Size,
        (part, axis, at): FirstCut,
        limit: u32,
    ) -> Option<u32> {
        let (first, rest) = match axis {
            Axis::Upright => ((at, size.1), (size.0 - at, size.1)),
            Axis::Level => ((size.0, at), (size.0, size.1 - at)),
        };
        if part == kit {
            let cuts = self.least(frontier, kit, first, limit.checked_sub(1)?)?;
            return Some(cuts + 1);
        }
        let other = frontier.cuts_at_least(kit - part, rest) + 1;
        let one = self.least(frontier, part, first, limit.checked_sub(other)?)? + 1;
        let other = self.least(frontier, kit - part, rest, limit.checked_sub(one)?)?;
        Some(one + other)
    }
}

impl<T: Lane> Frontier<T> {
    /// How many cuts trim a rectangle to the one part it holds.
    fn trims(&self, vector: &[u32], size: Size) -> Option<u32> {
        let lie = self.lie_within(vector, size)?;
        let unit = self.board.unit;
        let trims = |lie: i64, room: i64| u32::from(lie < room);
        Some(trims(lie.width * unit.0, size.0) + trims(lie.height * unit.1, size.1))
    }

    /// No way to cut a kit from a rectangle needs fewer cuts than this.
    fn cuts_at_least(&self, kit: usize, size: Size) -> u32 {
        let parts: u32 = self.counts.vector(kit).iter().sum();
        let unit = self.board.unit;
        let whole = size.0 % unit.0 == 0 && size.1 % unit.1 == 0;
        let area = (size.0 / unit.0).saturating_mul(size.1 / unit.1);
        parts - 1 + u32::from(!whole || self.wastes(kit, area))
    }

    /// The first cuts, upright and level, that lay a part of a kit on the first
    /// side, as narrow as can be; for the kit itself, those that trim waste off.
    fn first_cuts(&self, kit: usize, part: usize, size: Size) -> [Option<FirstCut>; 2] {
        let unit = self.board.unit;
        let room = (size.0 / unit.0, size.1 / unit.1);
        let (row, line) = (self.at_height(room.1), self.at_width(room.0));
        let cut = |axis: Axis, lane: usize, room: i64, unit: i64, whole: i64| {
            let first = self.table(part)[lane];
            let needed = if part == kit {
                first.length()
            } else {
                first.plus(self.table(kit - part)[lane]).length()
            };
            let at = first.length() * unit;
            (needed <= room && at < whole).then_some((part, axis, at))
        };
        if !self.has_table(part) || (part != kit && !self.has_table(kit - part)) {
            return [None, None];
        }
        [
            cut(Axis::Upright, row, room.0, unit.0, size.0),
            cut(Axis::Level, line, room.1, unit.1, size.1),
        ]
    }
}
