//! Takes some parts out and puts them in again, for as long as steps last.
//!
//! The ruin and recreate principle (G. Schrimpf, J. Schneider, H. Stamm-Wilbrandt
//! and G. Dueck, 2000) on trees of rows, with a fixed number of sheets: what can't
//! be put in waits outside, and the area outside is to become nothing (S. Gardeyn
//! and T. Wauters show how well this works for edge-to-edge cuts, 2022). Worse
//! states are accepted if they are not worse than some rounds ago (E. K. Burke and
//! Y. Bykov, late acceptance, 2017). It finds plans and proves nothing.

use crate::plan::cut::engine::bin::{Bin, Spot};
use crate::plan::cut::engine::board::Board;
use crate::plan::cut::engine::meter::Meter;
use crate::plan::cut::engine::sketch::Sheet;

/// A state may be as bad as the one so many rounds ago.
const MEMORY: usize = 60;
/// More parts than this are left to other methods.
const MOST_PARTS: usize = 600;
/// Areas of larger sheets (square search units) are not reckoned with.
const MOST_AREA: i128 = 1 << 60;

/// Numbers that look random and are the same everywhere: G. Marsaglia's xorshift
/// generator (2003).
pub(super) struct Dice(u64);

impl Dice {
    /// Dice that always roll the same row of numbers.
    pub(super) fn new(seed: u64) -> Self {
        Self(seed | 1)
    }

    /// A number below `most`, which must not be 0.
    pub(super) fn roll(&mut self, most: usize) -> usize {
        self.0 ^= self.0 << 13;
        self.0 ^= self.0 >> 7;
        self.0 ^= self.0 << 17;
        usize::try_from((self.0 >> 11) % most as u64).expect("below a usize")
    }
}

/// Looks for a plan with so many sheets.
pub(super) fn search(
    board: &Board,
    sheets: usize,
    meter: &mut Meter,
) -> Option<Vec<Sheet>> {
    let parts =
        board.wanted.iter().fold(0_usize, |sum, &it| sum.saturating_add(it as usize));
    if MOST_PARTS < parts || sheets == 0 || MOST_AREA < board.area() {
        return None;
    }
    let mut state = State {
        board,
        bins: vec![Bin::new(); sheets],
        outside: Vec::with_capacity(parts),
        saved: Vec::new(),
        dice: Dice::new(0x0123_4567_89AB),
        looks: 0,
    };
    for (kind, &wanted) in board.wanted.iter().enumerate() {
        state.outside.extend(std::iter::repeat_n(kind, wanted as usize));
    }
    state.recreate(0);
    let mut current = state.area_outside();
    let mut memory = [current; MEMORY];
    let mut round = 0_usize;
    while 0 < current {
        let looks = std::mem::take(&mut state.looks);
        if !meter.spend(looks / 4 + 8) {
            return None;
        }
        state.saved.clear();
        let outside = state.outside.clone();
        state.ruin();
        let order = state.dice.roll(6);
        state.recreate(order);
        let area = state.area_outside();
        if area <= current || area <= memory[round % MEMORY] {
            current = area;
        } else {
            for (index, bin) in state.saved.drain(..) {
                state.bins[index] = bin;
            }
            state.outside = outside;
        }
        memory[round % MEMORY] = current;
        round += 1;
    }
    Some(state.bins.iter().map(|it| it.draw(board)).collect())
}

struct State<'a> {
    board: &'a Board,
    bins: Vec<Bin>,
    /// Kinds of the parts that are not on a sheet.
    outside: Vec<usize>,
    /// Sheets as they were before this round.
    saved: Vec<(usize, Bin)>,
    dice: Dice,
    looks: u64,
}

impl State<'_> {
    fn area_of(&self, kind: usize) -> i64 {
        let lie = self.board.lies[kind][0];
        lie.width * lie.height
    }

    fn area_outside(&self) -> i64 {
        self.outside.iter().map(|&it| self.area_of(it)).sum()
    }

    /// Keeps a sheet as it is, to be put back if the round is no good.
    fn save(&mut self, bin: usize) {
        if self.saved.iter().all(|it| it.0 != bin) {
            self.saved.push((bin, self.bins[bin].clone()));
        }
    }

    /// Takes parts out of one to three sheets.
    fn ruin(&mut self) {
        for _ in 0..1 + self.dice.roll(3) {
            let bin = self.dice.roll(self.bins.len());
            self.save(bin);
            for _ in 0..1 + self.dice.roll(3) {
                let nodes = self.bins[bin].len();
                if nodes == 0 {
                    break;
                }
                let place = self.dice.roll(nodes);
                let kinds = self.bins[bin].take(self.board, place);
                self.outside.extend(kinds);
            }
        }
    }

    /// Puts in what can be put in, in one of several orders.
    fn recreate(&mut self, order: usize) {
        let mut waiting = std::mem::take(&mut self.outside);
        let lie = |kind: usize| self.board.lies[kind][0];
        match order {
            0 | 1 => waiting.sort_by_key(|&it| (-lie(it).width * lie(it).height, it)),
            2 => waiting.sort_by_key(|&it| (-lie(it).width.max(lie(it).height), it)),
            3 => waiting.sort_by_key(|&it| (-lie(it).width, it)),
            4 => waiting.sort_by_key(|&it| (-lie(it).height, it)),
            _ => {
                for place in (1..waiting.len()).rev() {
                    let other = self.dice.roll(place + 1);
                    waiting.swap(place, other);
                }
            }
        }
        let whole = self.board.size.0 * self.board.size.1;
        for kind in waiting {
            let area = self.area_of(kind);
            let mut best: Option<(usize, Spot)> = None;
            for bin in 0..self.bins.len() {
                if whole - self.bins[bin].area < area {
                    continue;
                }
                self.looks += self.bins[bin].len() as u64 + 1;
                let dice = &mut self.dice;
                let mut skip = || dice.roll(64) == 0;
                let spot = self.bins[bin].best_spot(
                    self.board,
                    &self.board.lies[kind],
                    &mut skip,
                );
                if let Some(spot) = spot
                    && best.is_none_or(|it| spot.score < it.1.score)
                {
                    best = Some((bin, spot));
                }
            }
            match best {
                Some((bin, spot)) => {
                    self.save(bin);
                    self.bins[bin].put(self.board, kind, spot);
                }
                None => self.outside.push(kind),
            }
        }
    }
}
