//! What is needed, in whole packs.

use std::collections::{BTreeMap, BTreeSet};

use crate::geom::{Length, Size, Unit};
use crate::plan::cut::PaperCut;
use crate::plan::uses::{Kits, Uses, layers, paper_of};
use crate::project::{
    Amount, BaseFrom, BaseId, Card, GreetingId, Layer, Pack, PaperId, Placed, Project,
    Stock, ToolId, ToolKind, Trade,
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

/// What everything that has to be bought costs, in hundredths of the currency.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Cost {
    /// What is used up: papers, bases, foam, tape, and whatever goes by cards.
    pub used_up: u64,
    /// Tools, which outlast the kits.
    pub tools: u64,
    /// Something that has to be bought has no price.
    pub incomplete: bool,
}

impl Cost {
    /// Its share in each of so many, rounded up to a whole hundredth.
    pub fn each(self, among: u32) -> u64 {
        self.used_up.div_ceil(u64::from(among.max(1)))
    }
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
    /// So many are there already: they need not be bought.
    pub on_hand: u32,
    /// So many have to be bought besides, one by one or in packs.
    pub lacking: u32,
    /// What it costs to buy them, in hundredths of the currency.
    pub cost: Option<u64>,
    /// How many cards one sheet gives, where a sheet gives any.
    pub cards: Option<u32>,
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
    /// Tape from a roll, counted in centimetres.
    Tape(ToolId),
    /// Embellishments of a kind.
    Counted(ToolId),
    /// Ribbon of a kind, in steps of [`ribbon_step`].
    Ribbon(ToolId),
    /// A tool or consumable, as many as are shared.
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
    rows.extend(tape(project, kits));
    rows.extend(extras(project, kits));
    rows.extend(packaging(project, kits));
    for (index, tool) in project.tools.iter().enumerate() {
        let listed = matches!(
            tool.kind,
            ToolKind::Foam { .. }
                | ToolKind::Ribbon { .. }
                | ToolKind::Embellishments { .. }
                | ToolKind::Packaging { .. }
        );
        // A roll of tape is its own runner, and has a row already.
        let rolled = tool.lasts.roll.is_some()
            && rows.iter().any(|it| it.what == Good::Tape(ToolId(index)));
        if !listed && !rolled {
            rows.push(of_tool(project, kits, ToolId(index)));
        }
    }
    Supplies { kits: kits.total(), spares: kits.spares, rows }
}

/// What has to be bought of some rows costs together; `None` if no price was given.
pub fn cost<'a>(
    project: &Project,
    rows: impl Iterator<Item = &'a Supply>,
) -> Option<Cost> {
    let mut cost = Cost::default();
    let mut any = false;
    for row in rows.filter(|row| row.lacking > 0) {
        // Envelopes come with their bases, and tape by its roll is one row more.
        let aside = matches!(row.what, Good::Envelopes(_) | Good::Scraps(_));
        let lasting = match row.what {
            Good::Tool(tool) => project.tools[tool.0].lasts.cards.is_none(),
            _ => false,
        };
        match row.cost {
            Some(price) => {
                any = true;
                let sum = if lasting { &mut cost.tools } else { &mut cost.used_up };
                *sum = sum.saturating_add(price);
            }
            None => cost.incomplete |= !aside && !lasting,
        }
    }
    any.then_some(cost)
}

/// A tool: one for all, one for each table that shares it, or as many as are used
/// up by the cards.
fn of_tool(project: &Project, kits: &Kits, id: ToolId) -> Supply {
    let tool = &project.tools[id.0];
    let cards = project.cards.iter().fold(0_u32, |all, it| all.saturating_add(it.count));
    let cards = cards.saturating_mul(kits.total());
    let needed = match (tool.lasts.for_people(kits.asked), tool.lasts.cards) {
        (Some(hands), _) => hands,
        (None, Some(enough)) => cards.div_ceil(enough.max(1)).max(1),
        (None, None) => 1,
    };
    bought(Good::Tool(id), None, needed, None, tool.trade)
}

/// Tape, along the edges of everything that is fixed flat with it.
fn tape(project: &Project, kits: &Kits) -> Vec<Supply> {
    let mut used: BTreeMap<ToolId, i64> = BTreeMap::new();
    for card in &project.cards {
        for layer in layers(card).filter(|layer| layer.raised == 0) {
            if let Some(tool) = tape_under(project, layer) {
                let size = size_of(project, layer.what);
                let around = (size.width + size.height).units().saturating_mul(2);
                let all = used.entry(tool).or_default();
                *all = all.saturating_add(around.saturating_mul(i64::from(card.count)));
            }
        }
    }
    let centimetres = |units: i64| {
        u32::try_from(units.max(0).unsigned_abs().div_ceil(CENTIMETRE))
            .unwrap_or(u32::MAX)
    };
    let rows = used.into_iter().map(|(id, units)| {
        let tool = &project.tools[id.0];
        let needed = centimetres(units.saturating_mul(i64::from(kits.total())));
        let roll = tool.lasts.roll.map(|roll| {
            // A roll is taken for no longer than it is.
            let whole = roll.units().max(0).unsigned_abs() / CENTIMETRE;
            Pack { holds: u32::try_from(whole).unwrap_or(u32::MAX).max(1), designs: 1 }
        });
        // Rolls are counted, tape is measured: what is there is so many rolls.
        let trade = Trade {
            on_hand: roll.map_or(0, |it| it.holds.saturating_mul(tool.trade.on_hand)),
            price: tool.trade.price.filter(|_| roll.is_some()),
        };
        let row = bought(Good::Tape(id), Some(centimetres(units)), needed, roll, trade);
        match (roll, tool.lasts.for_people(kits.asked)) {
            (Some(roll), Some(hands)) => {
                for_hands(row, hands.saturating_mul(roll.holds), tool.trade.price)
            }
            _ => row,
        }
    });
    rows.collect()
}

/// Tape that several use at once: a roll for each, even if all need less than that.
fn for_hands(row: Supply, held: u32, price: Option<u32>) -> Supply {
    let Some(packs) = row.packs else { return row };
    let holds = packs.holds.max(1);
    let buy = packs.buy.max(held.saturating_sub(row.on_hand).div_ceil(holds));
    let more = (buy - packs.buy).saturating_mul(holds);
    Supply {
        packs: Some(Packs { buy, over: packs.over.saturating_add(more), ..packs }),
        lacking: row.lacking.saturating_add(more),
        cost: price.map(|price| u64::from(price) * u64::from(buy)),
        ..row
    }
}

/// Units of a [`Length`] in a centimetre.
const CENTIMETRE: u64 = Length::mm(10).units().unsigned_abs();

/// The tape that a flat layer is fixed with: the tool it names, else the first
/// tape or glue of the project.
fn tape_under(project: &Project, layer: &Layer) -> Option<ToolId> {
    let sticks = |tool: &ToolId| {
        matches!(project.tools[tool.0].kind, ToolKind::Tape | ToolKind::Glue { .. })
    };
    let first = || (0..project.tools.len()).map(ToolId).find(sticks);
    let tool = layer.with.or_else(first)?;
    (project.tools[tool.0].kind == ToolKind::Tape).then_some(tool)
}

/// The box around a layer as it was made.
fn size_of(project: &Project, what: Placed) -> Size {
    match what {
        Placed::Piece(piece) => project.pieces[piece.0].size,
        Placed::Late(late, part) => project.late_cuts[late.0].makes[part].size,
        Placed::Greeting(id) => project.greetings[id.0].label.outline.size,
    }
}

/// Whether something of a card is cut from a paper.
fn is_of(project: &Project, card: &Card, paper: PaperId) -> bool {
    let mat = |layer: &Layer| match layer.what {
        Placed::Greeting(id) => project.greetings[id.0].mat.map(|mat| mat.of),
        Placed::Piece(_) | Placed::Late(..) => None,
    };
    let made = project.bases[card.base.0].from == BaseFrom::Made(paper);
    made || layers(card)
        .any(|it| paper_of(project, it.what) == paper || mat(it) == Some(paper))
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
    let per_kit = own_sheets.then_some(each);
    let what = Good::Sheets(cut.paper);
    // Sheets of sizes that can't be bought are neither on the list nor on hand.
    let row = self::bought(what, per_kit, bought, paper.pack, paper.trade);
    let made = project.cards.iter().filter(|it| is_of(project, it, cut.paper));
    let made = made.fold(0_u32, |all, card| all.saturating_add(card.count));
    let cards = made.saturating_mul(kits.total()).checked_div(needed);
    Supply { needed, cards: cards.filter(|cards| *cards > 0), ..row }
}

/// A kind of bases and their envelopes; made bases come from their paper.
fn bases(project: &Project, uses: &Uses, kits: &Kits, id: BaseId) -> Vec<Supply> {
    let base = &project.bases[id.0];
    let per_kit = uses.bases[id.0];
    let mut rows = Vec::new();
    if let BaseFrom::Bought(pack) = base.from {
        let needed = per_kit.saturating_mul(kits.total());
        rows.push(bought(Good::Bases(id), Some(per_kit), needed, pack, base.trade));
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
        let (pack, trade) = match good {
            Good::Foam(tool) => match project.tools[tool.0].kind {
                ToolKind::Foam { pack, .. } => (pack, project.tools[tool.0].trade),
                _ => (None, Trade::default()),
            },
            _ => (None, Trade::default()),
        };
        bought(good, Some(per_kit), per_kit.saturating_mul(kits.total()), pack, trade)
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
        let (Good::Counted(id) | Good::Ribbon(id)) = good else {
            return for_each_kit(good, per_kit, kits, None);
        };
        let tool = &project.tools[id.0];
        let (pack, trade) = match tool.kind {
            ToolKind::Embellishments { pack } => (pack, tool.trade),
            ToolKind::Ribbon { roll } => {
                let roll =
                    roll.map(|roll| Pack { holds: steps(roll).max(1), designs: 1 });
                // Rolls are counted, ribbon is measured: what is there is so many rolls.
                let there =
                    roll.map_or(0, |it| it.holds.saturating_mul(tool.trade.on_hand));
                let price = tool.trade.price.filter(|_| roll.is_some());
                (roll, Trade { on_hand: there, price })
            }
            _ => (None, Trade::default()),
        };
        bought(good, Some(per_kit), per_kit.saturating_mul(kits.total()), pack, trade)
    });
    rows.collect()
}

/// Bags, boxes and stickers; nobody packs a single kit.
fn packaging(project: &Project, kits: &Kits) -> Vec<Supply> {
    if kits.total() < 2 {
        return Vec::new();
    }
    let tools = project.tools.iter().enumerate();
    let rows = tools.filter_map(|(at, tool)| {
        let ToolKind::Packaging { each, pack } = tool.kind else { return None };
        let needed = each.saturating_mul(kits.total());
        Some(bought(Good::Counted(ToolId(at)), Some(each), needed, pack, tool.trade))
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
    bought(what, Some(per_kit), needed, pack, Trade::default())
}

/// A row: what is on hand is taken off, the rest is bought, in whole packs where
/// there are packs.
fn bought(
    what: Good,
    per_kit: Option<u32>,
    needed: u32,
    pack: Option<Pack>,
    trade: Trade,
) -> Supply {
    let lacking = needed.saturating_sub(trade.on_hand);
    let packs = pack.map(|pack| {
        let packs = packs(pack, lacking);
        let unused = trade.on_hand.saturating_sub(needed);
        Packs { over: packs.over.saturating_add(unused), ..packs }
    });
    let times = packs.map_or(lacking, |packs| packs.buy);
    let cost = trade.price.map(|price| u64::from(price) * u64::from(times));
    let on_hand = trade.on_hand;
    Supply { what, per_kit, needed, packs, on_hand, lacking, cost, cards: None }
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
