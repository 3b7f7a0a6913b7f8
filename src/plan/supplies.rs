//! What is needed, in whole packs.

use std::collections::{BTreeMap, BTreeSet};

use crate::geom::{Length, Size, Unit};
use crate::plan::cut::PaperCut;
use crate::plan::uses::{Kits, Uses, layers};
use crate::project::{
    Amount, BaseFrom, BaseId, GreetingId, Layer, Pack, PaperId, Project, Stock, ToolId,
    ToolKind,
};

/// What to buy and to have at hand, for all kits and for one.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Supplies {
    /// Kits including spares.
    pub kits: u32,
    /// How many of these are spares.
    pub spares: u32,
    /// One row for each thing, in the order in which they are listed.
    pub rows: Vec<Supply>,
}

/// A row of the supply list.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Supply {
    /// What it is.
    pub what: Good,
    /// How many one kit needs; `None` for things that are shared or that are
    /// cut for all kits together.
    pub per_kit: Option<u32>,
    /// How many all kits need together, spares included.
    pub needed: u32,
    /// In how many packs it is bought, if it is sold in packs. What is at hand
    /// already (offcuts, a few sheets of another size) is not bought.
    pub packs: Option<Packs>,
}

/// What a row of the supply list is about.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Good {
    /// Whole sheets of a paper.
    Sheets(PaperId),
    /// Scraps of a paper, so many pieces.
    Scraps(PaperId),
    /// Bought bases.
    Bases(BaseId),
    /// Envelopes for a base.
    Envelopes(BaseId),
    /// Foam squares of a kind.
    Foam(ToolId),
    /// Foam squares, when no tool was named.
    AnyFoam,
    /// Embellishments of a kind.
    Counted(ToolId),
    /// Ribbon of a kind, in steps of [`ribbon_step`].
    Ribbon(ToolId),
    /// A tool or consumable, once.
    Tool(ToolId),
    /// Labels of a greeting to stamp and punch.
    Labels(GreetingId),
}

/// Whole packs of something.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Packs {
    /// How many are in one; of an assorted pack, how many of one design.
    pub holds: u32,
    /// How many to buy.
    pub buy: u32,
    /// How many are left over.
    pub over: u32,
}

/// Counts what is needed for all kits and for one.
pub(crate) fn supplies(
    project: &Project,
    uses: &Uses,
    kits: &Kits,
    cuts: &[PaperCut],
) -> Supplies {
    let mut rows: Vec<Supply> =
        cuts.iter().map(|cut| paper(project, kits, cut)).collect();
    for (index, _) in uses.bases.iter().enumerate().filter(|(_, used)| **used > 0) {
        rows.extend(bases(project, uses, kits, BaseId(index)));
    }
    rows.extend(foam(project, kits));
    rows.extend(extras(project, kits));
    for (index, tool) in project.tools.iter().enumerate() {
        let listed = matches!(
            tool.kind,
            ToolKind::Foam { .. }
                | ToolKind::Ribbon { .. }
                | ToolKind::Embellishments { .. }
        );
        if !listed {
            let what = Good::Tool(ToolId(index));
            rows.push(Supply { what, per_kit: None, needed: 1, packs: None });
        }
    }
    Supplies { kits: kits.total(), spares: kits.spares, rows }
}

/// The sheets of a paper, or the scraps.
fn paper(project: &Project, kits: &Kits, cut: &PaperCut) -> Supply {
    let paper = &project.papers[cut.paper.0];
    let sheets = match &paper.stock {
        Stock::Scraps(..) => {
            let parts = cut.parts.iter();
            let per_kit = parts.fold(0_u32, |all, part| all.saturating_add(part.per_kit));
            return for_each_kit(Good::Scraps(cut.paper), per_kit, kits, None);
        }
        Stock::Sheets(sheets) => sheets,
    };
    let plans = if kits.apart { kits.total() } else { 1 };
    let patterns = || cut.patterns.iter();
    let each = patterns().fold(0_u32, |all, pattern| all.saturating_add(pattern.copies));
    let needed = each.saturating_mul(plans);

    // Of sizes that can be bought, all that is not at hand already is bought.
    let mut bought = 0_u32;
    let sizes: BTreeSet<Size> = sheets.iter().map(|sheet| sheet.size).collect();
    for size in sizes {
        let stock = || sheets.iter().filter(|sheet| sheet.size == size);
        if stock().all(|sheet| sheet.at_hand.is_some()) {
            continue;
        }
        let used = patterns().filter(|pattern| pattern.sheet == size);
        let used = used.fold(0_u32, |all, pattern| all.saturating_add(pattern.copies));
        let at_hand = stock().filter_map(|sheet| sheet.at_hand);
        let at_hand = at_hand.fold(0_u32, u32::saturating_add);
        let all = used.saturating_mul(plans).saturating_sub(at_hand);
        bought = bought.saturating_add(all);
    }
    let own_sheets = kits.apart || kits.total() == 1;
    Supply {
        what: Good::Sheets(cut.paper),
        per_kit: own_sheets.then_some(each),
        needed,
        packs: paper.pack.map(|pack| packs(pack, bought)),
    }
}

/// A kind of bases and their envelopes; made bases come from their paper.
fn bases(project: &Project, uses: &Uses, kits: &Kits, id: BaseId) -> Vec<Supply> {
    let base = &project.bases[id.0];
    let per_kit = uses.bases[id.0];
    let mut rows = Vec::new();
    if let BaseFrom::Bought(pack) = base.from {
        rows.push(for_each_kit(Good::Bases(id), per_kit, kits, pack));
    }
    if base.envelope.is_some() {
        rows.push(for_each_kit(Good::Envelopes(id), per_kit, kits, None));
    }
    rows
}

/// The foam squares under raised layers, by kind.
fn foam(project: &Project, kits: &Kits) -> Vec<Supply> {
    let mut used: BTreeMap<Good, u32> = BTreeMap::new();
    for card in &project.cards {
        for layer in layers(card).filter(|layer| layer.raised > 0) {
            let good = foam_under(project, layer).map_or(Good::AnyFoam, Good::Foam);
            let squares = used.entry(good).or_default();
            *squares = squares.saturating_add(layer.raised.saturating_mul(card.count));
        }
    }
    let rows = used.into_iter().map(|(good, per_kit)| {
        let pack = match good {
            Good::Foam(tool) => match project.tools[tool.0].kind {
                ToolKind::Foam { pack, .. } => pack,
                _ => None,
            },
            _ => None,
        };
        for_each_kit(good, per_kit, kits, pack)
    });
    rows.collect()
}

/// The steps in which lengths of ribbon are counted: 1/8 in or 1 mm.
pub const fn ribbon_step(unit: Unit) -> Length {
    match unit {
        Unit::Inch => Length::inch(1, 8),
        Unit::Mm => Length::MM,
    }
}

/// Ribbon and embellishments, by kind.
fn extras(project: &Project, kits: &Kits) -> Vec<Supply> {
    let step = ribbon_step(project.unit).units();
    let steps = |length: Length| u32::try_from(length.units() / step).unwrap_or(u32::MAX);
    let mut used: BTreeMap<Good, u32> = BTreeMap::new();
    for card in &project.cards {
        for extra in &card.extras {
            let (good, much) = match extra.amount {
                Amount::Count(count) => (Good::Counted(extra.what), count),
                Amount::Length(length) => {
                    // What is needed is rounded up.
                    let up = Length::from_units(length.units() + step - 1);
                    (Good::Ribbon(extra.what), steps(up))
                }
            };
            let seen = used.entry(good).or_default();
            *seen = seen.saturating_add(much.saturating_mul(card.count));
        }
    }
    let rows = used.into_iter().map(|(good, per_kit)| {
        let tool = |it: ToolId| &project.tools[it.0].kind;
        let pack = match good {
            Good::Counted(it) => match *tool(it) {
                ToolKind::Embellishments { pack } => pack,
                _ => None,
            },
            Good::Ribbon(it) => match *tool(it) {
                ToolKind::Ribbon { roll } => {
                    roll.map(|roll| Pack { holds: steps(roll).max(1), designs: 1 })
                }
                _ => None,
            },
            _ => None,
        };
        for_each_kit(good, per_kit, kits, pack)
    });
    rows.collect()
}

/// The foam that a raised layer stands on: the one it names, else the first of
/// the project.
pub(crate) fn foam_under(project: &Project, layer: &Layer) -> Option<ToolId> {
    let is_foam =
        |tool: &ToolId| matches!(project.tools[tool.0].kind, ToolKind::Foam { .. });
    let first = || (0..project.tools.len()).map(ToolId).find(is_foam);
    layer.with.filter(is_foam).or_else(first)
}

fn for_each_kit(what: Good, per_kit: u32, kits: &Kits, pack: Option<Pack>) -> Supply {
    let needed = per_kit.saturating_mul(kits.total());
    let packs = pack.map(|pack| packs(pack, needed));
    Supply { what, per_kit: Some(per_kit), needed, packs }
}

/// The fewest whole packs in which there are as many as needed. Of an assorted
/// pack only one design counts.
pub fn packs(pack: Pack, needed: u32) -> Packs {
    let holds = (pack.holds / pack.designs.max(1)).max(1);
    let buy = needed.div_ceil(holds);
    // Fits: less than one more pack than needed.
    let over = u64::from(buy) * u64::from(holds) - u64::from(needed);
    Packs {
        holds,
        buy,
        over: u32::try_from(over).expect("less than one pack is left over"),
    }
}
