//! The fewest sheets for a kit, from the knowledge which kits fit one sheet.

use crate::plan::cut::engine::counts::{Counts, Parts};
use crate::plan::cut::engine::meter::Meter;

/// More sheets than any kit takes.
const MANY: u32 = u32::MAX / 2;

/// How a kit is divided among as few equal sheets as possible.
#[derive(Clone, Debug)]
pub(super) struct Fewest<'a> {
    counts: &'a Counts,
    fits: Vec<bool>,
    /// The fewest sheets for the whole kit.
    pub(super) sheets: u32,
    /// For each kit the fewest sheets; only filled if they are more than two.
    table: Vec<u32>,
}

impl<'a> Fewest<'a> {
    /// Finds the fewest sheets by looking at every division of every kit, unless
    /// steps run out. `fits[0]`, the empty kit, must be true, and every single
    /// part must fit.
    pub(super) fn new(
        counts: &'a Counts,
        fits: Vec<bool>,
        meter: &mut Meter,
    ) -> Option<Self> {
        let all = counts.all();
        let mut fewest = Self { counts, fits, sheets: 1, table: Vec::new() };
        if fewest.fits[all] {
            return Some(fewest);
        }
        if (1..all).any(|part| fewest.fits[part] && fewest.fits[all - part]) {
            fewest.sheets = 2;
            return Some(fewest);
        }
        fewest.fill(meter)?;
        fewest.sheets = fewest.table[all];
        Some(fewest)
    }

    /// Takes the fewest sheets as known. `fits` may then leave out kits that no
    /// plan of interest has on a sheet.
    pub(super) fn known(
        counts: &'a Counts,
        fits: Vec<bool>,
        sheets: u32,
        meter: &mut Meter,
    ) -> Option<Self> {
        let mut fewest = Self { counts, fits, sheets, table: Vec::new() };
        if 2 < sheets {
            fewest.fill(meter)?;
        }
        Some(fewest)
    }

    fn fill(&mut self, meter: &mut Meter) -> Option<()> {
        let counts = self.counts;
        let mut vector = counts.vector(0);
        self.table = vec![MANY; counts.len()];
        self.table[0] = 0;
        for number in 1..counts.len() {
            counts.step(&mut vector);
            if self.fits[number] {
                self.table[number] = 1;
                continue;
            }
            if !meter.spend(Counts::splits(&vector) / 32 + 1) {
                return None;
            }
            let lowest = vector.iter().position(|&it| 0 < it).expect("not the empty kit");
            let one = counts.weights()[lowest];
            let mut rest = vector.clone();
            rest[lowest] -= 1;
            // Some sheet holds a part of the first kind: look at that sheet.
            let mut least = MANY;
            for part in std::iter::once(0).chain(Parts::new(counts, &rest)) {
                if self.fits[part + one] {
                    least = least.min(self.table[number - one - part] + 1);
                }
            }
            self.table[number] = least;
        }
        Some(())
    }

    /// Whether the number of sheets that is taken as known is enough.
    pub(super) fn possible(&self) -> bool {
        let all = self.counts.all();
        match self.sheets {
            2 => (0..=all).any(|kit| self.fits[kit] && self.fits[all - kit]),
            sheets => self.enough(all, sheets),
        }
    }

    /// Whether a kit can be cut from so many sheets.
    fn enough(&self, kit: usize, sheets: u32) -> bool {
        match (kit, sheets) {
            (0, _) => true,
            (_, 0) => false,
            (_, 1) => self.fits[kit],
            _ if self.table.is_empty() => {
                kit == self.counts.all() && self.sheets <= sheets
            }
            _ => self.table[kit] <= sheets,
        }
    }

    /// Every kit that may be left for one sheet when the other sheets, of the
    /// fewest, hold the rest; it need not be known to fit.
    pub(super) fn last_sheets(&self) -> Vec<usize> {
        let all = self.counts.all();
        (1..=all).filter(|&kit| self.enough(all - kit, self.sheets - 1)).collect()
    }

    /// Divides a kit among so many sheets, which must be enough.
    pub(super) fn divide(&self, kit: usize, sheets: u32) -> Vec<usize> {
        let mut kits = Vec::new();
        let mut left = kit;
        let mut sheets = sheets;
        while left != 0 {
            let vector = self.counts.vector(left);
            let part = Parts::new(self.counts, &vector)
                .find(|&part| self.fits[part] && self.enough(left - part, sheets - 1))
                .expect("so many sheets are enough");
            kits.push(part);
            left -= part;
            sheets -= 1;
        }
        kits
    }
}
