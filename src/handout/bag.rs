//! What a bag holds when it reaches the place where the cards are finished:
//! ticked off when it is packed, or when it is opened.

use crate::document::{Align, Block, Column, Inline, Marker, Section, Table, Text, Tone};
use crate::geom::Size;
use crate::handout::writer::{Writer, sentences};
use crate::handout::{Hands, When, envelope, extras, need, of_blocks, prepare, punched};
use crate::plan::cut::{Part, PartOf};
use crate::plan::{Act, Packed, Task};
use crate::project::{
    Amount, BaseFrom, BaseId, CardId, Comes, GreetingId, PaperId, Placed, ToolKind,
};

/// A line: how many, what, and its size.
struct Row {
    count: u32,
    what: Text,
    /// What stands for it at the head of a table: a letter, or a short name.
    short: Option<Text>,
    size: Option<Size>,
}

impl Row {
    fn new(count: u32, what: Text, size: Option<Size>) -> Self {
        Self { count, what, short: None, size }
    }

    fn headed(self, short: Text) -> Self {
        Self { short: Some(short), ..self }
    }

    /// Headed by the letter of its part.
    fn lettered(self, part: &Part) -> Self {
        self.headed(vec![Inline::strong(part.letter.clone())])
    }
}

/// What lies in each bag and how many, by a letter or a short name.
pub(super) fn heads(w: &Writer<'_>) -> Vec<(Text, u32)> {
    let rows = rows(w).into_iter();
    rows.map(|row| (row.short.unwrap_or(row.what), row.count)).collect()
}

/// The bag as it is opened.
pub(super) fn received(w: &Writer<'_>) -> Vec<Section> {
    let Some(table) = table(w) else { return Vec::new() };
    of_blocks("bag", w.tell("bag-title", &[]), vec![table])
}

/// The bag as it is packed, with the tools that go along on a journey.
pub(super) fn packed(w: &Writer<'_>) -> Vec<Section> {
    let Some(table) = table(w) else { return Vec::new() };
    let mut blocks = Vec::new();
    if w.template.hands == Hands::Maker {
        let kits = w.kits();
        let spares = w.plan.supplies.spares;
        let values = [("kits", kits.into()), ("spares", spares.into())];
        let texts = [Some(w.tell("pack-bags", &values)), packaging(w)];
        let text = sentences(texts.into_iter().flatten());
        blocks.push(Block::Paragraph(Tone::Body, text));
        blocks.push(table);
    } else {
        let cards = by_card(w);
        if cards.is_empty() {
            blocks.push(table);
        } else {
            blocks.push(Block::Paragraph(Tone::Body, w.tell("pack-cards", &[])));
            blocks.push(Block::List(Marker::Box, cards));
        }
        let tucked = blocks.len() > 1;
        let here: Vec<&Task> =
            w.mine().filter(|it| it.1 == When::Here).map(|it| it.0).collect();
        let mut tools = if tucked { besides(w) } else { Vec::new() };
        tools.extend(need::items(w, &here));
        tools.extend(envelope::postage(w));
        if !tools.is_empty() {
            let message = if tucked { "pack-besides" } else { "pack-tools" };
            blocks.push(Block::Paragraph(Tone::Body, w.tell(message, &[])));
            blocks.push(Block::List(Marker::Box, tools));
            let hint = envelope::hint(w);
            blocks.extend(hint.map(|it| Block::Paragraph(Tone::Remark, it)));
        }
        blocks.push(Block::Paragraph(Tone::Remark, w.tell("pack-flat", &[])));
    }
    let hands = if w.template.hands == Hands::Maker { "maker" } else { "reader" };
    of_blocks("pack", w.tell("pack-title", &[("hands", hands.into())]), blocks)
}

/// What goes into the envelope of each card, for those that have one: its base and
/// the parts that are cut.
fn by_card(w: &Writer<'_>) -> Vec<Text> {
    let packing = w.plan.work.packing(w.project, w.template.reader);
    let rows = packing.parts.iter().filter_map(|packed| {
        let card = &w.project.cards[packed.card.0];
        w.project.bases[card.base.0].envelope?;
        let name = w.user(&card.name);
        let parts = w.list(tucked_in(w, packed));
        let values = [("card", name.into()), ("parts", parts.into())];
        Some(w.tell("pack-card", &values))
    });
    rows.collect()
}

/// The base of a card and its parts, as they are packed together.
fn tucked_in(w: &Writer<'_>, packed: &Packed) -> Vec<Text> {
    let card = &w.project.cards[packed.card.0];
    let layers = packed.layers.iter().map(|at| &card.layers[*at]);
    let inside = packed.inside.iter().map(|at| &card.inside.layers[*at]);
    let outside = packed.envelope.iter().map(|at| &card.envelope[*at]);
    let mut parts: Vec<(Text, u32)> = vec![(w.tell("pack-base", &[]), 1)];
    let mut cut_again = Vec::new();
    for layer in layers.chain(inside).chain(outside) {
        // A piece that is cut again at the card is packed whole, once for all its
        // parts.
        let what = match layer.what {
            Placed::Late(late, _) if !w.is_ahead(Act::LateCut(late)) => {
                if cut_again.contains(&late) {
                    continue;
                }
                cut_again.push(late);
                Placed::Piece(w.project.late_cuts[late.0].piece)
            }
            what => what,
        };
        let name = w.placed(what);
        match parts.iter_mut().find(|it| it.0 == name) {
            Some(part) => part.1 += 1,
            None => parts.push((name, 1)),
        }
    }
    parts.into_iter().map(|(item, count)| counted(w, item, count)).collect()
}

/// A thing, with its number if there are several.
fn counted(w: &Writer<'_>, item: Text, count: u32) -> Text {
    match count {
        1 => item,
        _ => w.tell("several", &[("count", count.into()), ("item", item.into())]),
    }
}

/// What goes into no card's envelope: sheets, foam, and what belongs to cards that
/// have none.
fn besides(w: &Writer<'_>) -> Vec<Text> {
    let packing = w.plan.work.packing(w.project, w.template.reader);
    let in_envelope = |card: CardId| {
        let base = w.project.cards[card.0].base;
        w.project.bases[base.0].envelope.is_some()
            && packing.parts.iter().any(|it| it.card == card)
    };
    let mut items = Vec::new();
    let cards = || (0..w.project.cards.len()).map(CardId);
    let message = if cards().any(in_envelope) { "pack-card-apart" } else { "pack-card" };
    for (at, card) in w.project.cards.iter().enumerate() {
        if in_envelope(CardId(at)) {
            continue;
        }
        let packed = packing.parts.iter().find(|it| it.card == CardId(at));
        let parts = match packed {
            Some(packed) => tucked_in(w, packed),
            None => vec![w.tell("pack-base", &[])],
        };
        let name = w.user(&card.name);
        let values = [("card", name.into()), ("parts", w.list(parts).into())];
        items.push(w.tell(message, &values));
    }
    for cut in &w.plan.cuts {
        if !w.is_ahead(Act::CutPaper(cut.paper)) {
            let sheets = whole_sheets(w, cut.paper);
            items.extend(sheets.into_iter().map(|row| {
                let count = row.count.to_string();
                sentences([vec![Inline::plain(count)], row.what])
            }));
        }
    }
    let foam = foam(w);
    if foam > 0 {
        items.push(w.tell("foam-squares", &[("count", foam.into())]));
    }
    items
}

/// How many foam squares one kit takes.
fn foam(w: &Writer<'_>) -> u32 {
    let sets = w.plan.fronts.iter().flat_map(|front| {
        let count = w.project.cards[front.card.0].count;
        let sets = front.layers.iter().chain(&front.inside).chain(&front.envelope);
        sets.map(move |it| it.raised.saturating_mul(count))
    });
    sets.fold(0_u32, u32::saturating_add)
}

/// What each kit is packed in.
fn packaging(w: &Writer<'_>) -> Option<Text> {
    let items = w.project.tools.iter().filter_map(|tool| {
        let ToolKind::Packaging { each, .. } = tool.kind else { return None };
        Some(counted(w, w.user(&tool.name), each))
    });
    let items: Vec<Text> = items.collect();
    (w.kits() > 1 && !items.is_empty())
        .then(|| w.tell("pack-packaging", &[("items", w.list(items).into())]))
}

fn table(w: &Writer<'_>) -> Option<Block> {
    let rows = rows(w);
    if rows.is_empty() {
        return None;
    }
    let head = |text, align| Column { head: text, align };
    let columns = vec![
        head(Text::new(), Align::Start),
        head(w.tell("bag-count", &[]), Align::End),
        head(w.tell("bag-what", &[]), Align::Start),
        head(w.tell("bag-size", &[]), Align::Start),
    ];
    let rows = rows.into_iter().map(|row| {
        vec![
            Text::new(),
            vec![Inline::plain(row.count.to_string())],
            row.what,
            row.size.map(|it| vec![Inline::plain(w.words.size(it))]).unwrap_or_default(),
        ]
    });
    let (summary, rows) = (w.say("bag-summary", &[]), rows.collect());
    Some(Block::Table(Table { summary, columns, rows }))
}

fn rows(w: &Writer<'_>) -> Vec<Row> {
    let mut rows = bought_bases(w);
    rows.extend(cut_parts(w));
    let foam = foam(w);
    if foam > 0 {
        rows.push(Row::new(foam, w.tell("bag-foam", &[("count", foam.into())]), None));
    }
    for (at, card) in w.project.cards.iter().enumerate() {
        for (index, extra) in card.extras.iter().enumerate() {
            if w.is_ahead(Act::AddExtra(CardId(at), index)) {
                continue;
            }
            let (count, what) = match extra.amount {
                Amount::Count(count) => {
                    (count, w.user(&w.project.tools[extra.what.0].name))
                }
                Amount::Length(_) => (1, extras::item(w, extra)),
            };
            let count = count.saturating_mul(card.count);
            match rows.iter_mut().find(|row| row.what == what) {
                Some(row) => row.count = row.count.saturating_add(count),
                None => rows.push(Row::new(count, what, None)),
            }
        }
    }
    for (at, base) in w.project.bases.iter().enumerate() {
        let count = bases(w, BaseId(at));
        if let (Some(envelope), true) = (base.envelope, count > 0) {
            let values = [("count", count.into())];
            let what = w.tell("bag-envelopes", &values);
            rows.push(Row::new(count, what, envelope.size));
        }
    }
    rows
}

/// How many cards of a kit are made on a base.
fn bases(w: &Writer<'_>, base: BaseId) -> u32 {
    let cards = w.project.cards.iter().filter(|it| it.base == base);
    cards.fold(0, |sum, it| sum.saturating_add(it.count))
}

/// In what state a base lies in the bag.
fn state(w: &Writer<'_>, base: BaseId) -> &'static str {
    let comes = w.project.bases[base.0].comes;
    let comes = match () {
        () if w.is_ahead(Act::FoldBase(base)) => Comes::Folded,
        () if w.is_ahead(Act::ScoreBase(base)) => comes.max(Comes::Scored),
        () => comes,
    };
    Writer::comes(comes)
}

fn bought_bases(w: &Writer<'_>) -> Vec<Row> {
    let bought = w.project.bases.iter().enumerate();
    let bought = bought.filter(|it| matches!(it.1.from, BaseFrom::Bought(_)));
    bought
        .filter_map(|(at, base)| {
            let count = bases(w, BaseId(at));
            let values = [
                ("base", w.base(BaseId(at)).into()),
                ("state", state(w, BaseId(at)).into()),
            ];
            let what = w.tell("bag-base", &values);
            let size = match state(w, BaseId(at)) {
                "folded" => base.front,
                _ => prepare::unfolded(base.front, base.fold).0,
            };
            let row = Row::new(count, what, Some(size)).headed(w.base(BaseId(at)));
            (count > 0).then_some(row)
        })
        .collect()
}

/// Everything that is cut from sheets, in the state in which it lies in the bag.
fn cut_parts(w: &Writer<'_>) -> Vec<Row> {
    let mut rows = Vec::new();
    for cut in &w.plan.cuts {
        if !w.is_ahead(Act::CutPaper(cut.paper)) {
            rows.extend(whole_sheets(w, cut.paper));
            continue;
        }
        for part in &cut.parts {
            let name = w.part_named(part);
            let whole =
                |what| Row::new(part.per_kit, what, Some(part.size)).lettered(part);
            match part.of {
                PartOf::Piece(_) => {
                    let mut left = part.per_kit;
                    for (late, times) in &part.late {
                        if !w.is_ahead(Act::LateCut(*late)) {
                            continue;
                        }
                        left = left.saturating_sub(*times);
                        for made in &w.project.late_cuts[late.0].makes {
                            let count = made.makes.saturating_mul(*times);
                            let name = w.user(&made.name);
                            rows.push(Row::new(count, name, Some(made.size)));
                        }
                    }
                    if left > 0 {
                        rows.push(Row { count: left, ..whole(name) });
                    }
                }
                PartOf::Base(base) => {
                    let base_name = w.lettered(w.base(base), Some(part));
                    let state = state(w, base);
                    let values = [("base", base_name.into()), ("state", state.into())];
                    let mut row = whole(w.tell("bag-base", &values));
                    if state == "folded" {
                        row.size = Some(w.project.bases[base.0].front);
                    }
                    rows.push(row);
                }
                PartOf::Label(greeting) => {
                    rows.push(labels(w, part, greeting, name).lettered(part));
                }
                PartOf::LabelMat(greeting) => {
                    if !w.is_ahead(Act::MatLabel(greeting)) {
                        let count = singly(part);
                        rows.push(match punched::in_bag(w, greeting, count) {
                            Some((what, size)) => {
                                let what = w.lettered(what, Some(part));
                                Row::new(count, what, Some(size)).lettered(part)
                            }
                            None => whole(name),
                        });
                    }
                }
            }
        }
    }
    rows
}

/// The labels or mats of one kit, once they are punched from their strips.
fn singly(part: &Part) -> u32 {
    part.per_kit.saturating_mul(part.on_each())
}

/// The labels that are cut as one part, in one row.
fn labels(w: &Writer<'_>, part: &Part, first: GreetingId, strip: Text) -> Row {
    let outline = &w.project.greetings[first.0].label;
    let whole = outline.punch.is_none() || w.is_ahead(Act::PunchLabel(first));
    let count = if whole { singly(part) } else { part.per_kit };
    if part.greetings.len() <= 1 {
        let (what, size) = label(w, first, strip, part.size);
        return Row::new(count, what, Some(size));
    }
    let stamped = part.greetings.iter().all(|it| w.is_ahead(Act::StampGreeting(it.0)));
    let words = part.greetings.iter();
    let words = words.map(|it| w.quoted(&w.project.greetings[it.0.0].words)).collect();
    let name = if stamped {
        w.tell("labels-named", &[("words", w.list(words).into())])
    } else {
        w.tell("label-blank", &[("count", count.into())])
    };
    let what = if whole { w.lettered(name, Some(part)) } else { strip };
    let stamped = if stamped { "yes" } else { "no" };
    let matted = part.greetings.iter().all(|it| w.is_ahead(Act::MatLabel(it.0)));
    let matted = if matted { "several" } else { "no" };
    let values =
        [("label", what.into()), ("stamped", stamped.into()), ("matted", matted.into())];
    let size = if whole { outline.outline.size } else { part.size };
    let what = w.tell("bag-label", &values);
    Row::new(count, what, Some(size))
}

/// A label, or the strip it will be punched from.
fn label(w: &Writer<'_>, greeting: GreetingId, strip: Text, size: Size) -> (Text, Size) {
    let label = &w.project.greetings[greeting.0].label;
    let punched = w.is_ahead(Act::PunchLabel(greeting));
    let (what, size) = if punched || label.punch.is_none() {
        (w.placed(Placed::Greeting(greeting)), label.outline.size)
    } else {
        (strip, size)
    };
    let stamped = if w.is_ahead(Act::StampGreeting(greeting)) { "yes" } else { "no" };
    let matted = if w.is_ahead(Act::MatLabel(greeting)) { "yes" } else { "no" };
    let values =
        [("label", what.into()), ("stamped", stamped.into()), ("matted", matted.into())];
    (w.tell("bag-label", &values), size)
}

/// The sheets of a paper that the reader cuts herself.
fn whole_sheets(w: &Writer<'_>, paper: PaperId) -> Vec<Row> {
    let Some(cut) = w.cut_of(paper) else { return Vec::new() };
    // Sheets that are cut for several kits together lie in no single bag.
    if cut.kits > 1 {
        return Vec::new();
    }
    cut.patterns
        .iter()
        .map(|pattern| {
            let paper = w.user(&w.project.papers[paper.0].name);
            let values =
                [("paper", paper.clone().into()), ("count", pattern.copies.into())];
            let what = w.tell("bag-sheets", &values);
            Row::new(pattern.copies, what, Some(pattern.sheet)).headed(paper)
        })
        .collect()
}
