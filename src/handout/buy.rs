//! What to buy, in whole packs, with what is left over.

use std::collections::BTreeSet;

use crate::document::{Align, Block, Column, Inline, Section, Table, Text, Tone};
use crate::handout::writer::{Writer, sentences};
use crate::handout::{need, of_blocks};
use crate::plan::{Good, Supply, cost, ribbon_step};
use crate::project::{Reader, Stock, ToolId};

pub(super) fn write(w: &Writer<'_>) -> Vec<Section> {
    let supplies = &w.plan.supplies;
    let provided = need::provided(w);
    let rows = supplies.rows.iter();
    let bought: Vec<&Supply> = rows.filter(|it| is_bought(w, it, &provided)).collect();
    if bought.is_empty() {
        return Vec::new();
    }
    let shown = Shown {
        on_hand: bought.iter().any(|it| it.on_hand > 0),
        price: bought.iter().any(|it| it.cost.is_some()),
    };
    let head = |name, align| Column { head: w.tell(name, &[]), align };
    let mut columns = vec![
        Column { head: Text::new(), align: Align::Start },
        head("buy-what", Align::Start),
        head("buy-one-kit", Align::End),
        head("buy-all", Align::End),
    ];
    if shown.on_hand {
        columns.push(head("buy-on-hand", Align::End));
    }
    columns.push(head("buy-packs", Align::Start));
    columns.push(head("buy-over", Align::End));
    if shown.price {
        columns.push(head("buy-price", Align::End));
    }
    let rows = bought.iter().map(|it| row(w, it, shown)).collect();
    let kits = supplies.kits.saturating_sub(supplies.spares);
    let values = [("kits", kits.into()), ("spares", supplies.spares.into())];
    let mut blocks = vec![
        Block::Paragraph(Tone::Body, w.tell("buy-for", &values)),
        Block::Table(Table { summary: w.say("buy-summary", &[]), columns, rows }),
    ];
    let after = sentences([sheets_give(w), costs(w, &bought, kits)]);
    if !after.is_empty() {
        blocks.push(Block::Paragraph(Tone::Body, after));
    }
    of_blocks("buy", w.tell("buy-title", &[]), blocks)
}

/// Which columns there is anything for.
#[derive(Clone, Copy)]
struct Shown {
    on_hand: bool,
    price: bool,
}

/// Tools are listed with what to have at hand unless they have a price, are used up
/// or are shared at the table; what a buyer works with is her own. Labels are cut
/// from paper that is in the list already.
fn is_bought(w: &Writer<'_>, supply: &Supply, provided: &BTreeSet<ToolId>) -> bool {
    match supply.what {
        Good::Labels(_) => false,
        Good::Tape(tool) => provided.contains(&tool),
        Good::Tool(tool) => {
            let lasts = w.project.tools[tool.0].lasts;
            // Those who share it sit at the table.
            let table = || need::tools(w, &need::at_table(w)).contains(&tool);
            let class = w.template.reader == Reader::Class;
            let several =
                lasts.shared_by.is_some() && supply.needed > 1 && class && table();
            let listed = supply.cost.is_some() || lasts.cards.is_some() || several;
            listed && provided.contains(&tool)
        }
        _ => true,
    }
}

/// How many cards one sheet of each paper gives.
fn sheets_give(w: &Writer<'_>) -> Text {
    let rows =
        w.plan.supplies.rows.iter().filter_map(|row| {
            let (Good::Sheets(paper), Some(cards)) = (row.what, row.cards) else {
                return None;
            };
            let paper = w.user(&w.project.papers[paper.0].name);
            Some(w.tell(
                "buy-sheet-gives",
                &[("paper", paper.into()), ("cards", cards.into())],
            ))
        });
    let rows: Vec<Text> = rows.collect();
    if rows.is_empty() {
        return Text::new();
    }
    w.tell("buy-sheets-give", &[("papers", w.list(rows).into())])
}

/// What a kit and a card cost, if there are prices.
fn costs(w: &Writer<'_>, bought: &[&Supply], kits: u32) -> Text {
    let Some(cost) = cost(w.project, bought.iter().copied()) else { return Text::new() };
    let cards =
        w.project.cards.iter().fold(0_u32, |all, it| all.saturating_add(it.count));
    let all_cards = cards.saturating_mul(kits.max(1));
    let values = [
        ("all", money(w, cost.used_up).into()),
        ("kit", money(w, cost.each(kits)).into()),
        ("card", money(w, cost.each(all_cards)).into()),
        ("kits", kits.into()),
        ("some", if cost.incomplete { "yes" } else { "no" }.into()),
    ];
    let mut texts = vec![w.tell("buy-cost", &values)];
    if cost.tools > 0 {
        texts.push(w.tell("buy-cost-tools", &[("tools", money(w, cost.tools).into())]));
    }
    sentences(texts)
}

/// An amount in hundredths of the currency: `3.90 EUR`.
fn money(w: &Writer<'_>, hundredths: u64) -> Text {
    let sign = w.words.say("decimal-sign", &[]);
    let amount = format!("{}{sign}{:02}", hundredths / 100, hundredths % 100);
    match &w.project.currency {
        Some(currency) => {
            let currency = w.user(currency);
            w.tell("money", &[("amount", amount.into()), ("currency", currency.into())])
        }
        None => vec![Inline::plain(amount)],
    }
}

/// A length of tape in tenths of a metre, rounded up.
fn metres(w: &Writer<'_>, centimetres: u32) -> Text {
    let tenths = centimetres.div_ceil(10);
    let sign = w.words.say("decimal-sign", &[]);
    let number = format!("{}{sign}{}", tenths / 10, tenths % 10);
    w.tell("metres", &[("number", number.into())])
}

/// Whether a pack holds other designs as well, so that few of its sheets serve.
fn is_assorted(w: &Writer<'_>, what: Good) -> bool {
    let Good::Sheets(paper) = what else { return false };
    w.project.papers[paper.0].pack.is_some_and(|pack| pack.designs > 1)
}

fn row(w: &Writer<'_>, supply: &Supply, shown: Shown) -> Vec<Text> {
    let number = |count: u32| match supply.what {
        Good::Tape(_) => metres(w, count),
        Good::Ribbon(_) => {
            let length = ribbon_step(w.project.unit) * i64::from(count);
            vec![Inline::plain(w.words.length(length))]
        }
        _ => vec![Inline::plain(count.to_string())],
    };
    let packs = match supply.packs {
        Some(packs) if packs.buy == 0 => w.tell("buy-none", &[]),
        Some(packs) if matches!(supply.what, Good::Tape(_)) => {
            let holds = metres(w, packs.holds);
            let values = [("rolls", packs.buy.into()), ("holds", holds.into())];
            w.tell("buy-rolls-of", &values)
        }
        Some(packs) => {
            let values = [("packs", packs.buy.into()), ("holds", packs.holds.into())];
            if let Good::Ribbon(_) = supply.what {
                w.tell("buy-rolls", &[("packs", packs.buy.into())])
            } else if is_assorted(w, supply.what) {
                w.tell("buy-packs-assorted", &values)
            } else {
                w.tell("buy-packs-of", &values)
            }
        }
        // What comes with something else, or lies about, is not bought.
        None if matches!(supply.what, Good::Envelopes(_) | Good::Scraps(_)) => {
            Text::new()
        }
        None if supply.lacking == 0 => w.tell("buy-none", &[]),
        None if supply.on_hand > 0 || supply.cost.is_some() => number(supply.lacking),
        None => Text::new(),
    };
    let mut row = vec![
        Text::new(),
        good(w, supply.what),
        supply.per_kit.map(number).unwrap_or_default(),
        number(supply.needed),
    ];
    if shown.on_hand {
        let there = (supply.on_hand > 0).then(|| number(supply.on_hand));
        row.push(there.unwrap_or_default());
    }
    row.push(packs);
    row.push(supply.packs.map(|it| number(it.over)).unwrap_or_default());
    if shown.price {
        let cost = supply.cost.filter(|it| *it > 0);
        row.push(cost.map(|it| money(w, it)).unwrap_or_default());
    }
    row
}

/// What is bought, with its size and what to write on the order.
fn good(w: &Writer<'_>, good: Good) -> Text {
    let project = w.project;
    let (name, order) = match good {
        Good::Sheets(paper) | Good::Scraps(paper) => {
            let paper = &project.papers[paper.0];
            let name = w.user(&paper.name);
            let (size, scraps) = match &paper.stock {
                Stock::Sheets(sizes) => {
                    (sizes.first().map(|it| it.size).unwrap_or_default(), false)
                }
                Stock::Scraps(size, _) => (*size, true),
            };
            let size = w.words.size(size);
            let values = [("paper", name.into()), ("size", size.into())];
            let name = if scraps {
                w.tell("good-scraps", &values)
            } else {
                w.tell("good-sheets", &values)
            };
            (name, paper.order_number.as_ref())
        }
        Good::Bases(base) => (w.base(base), project.bases[base.0].order_number.as_ref()),
        Good::Envelopes(base) => {
            let size = project.bases[base.0].envelope.and_then(|it| it.size);
            let base = w.base(base);
            let name = match size {
                Some(size) => {
                    let size = w.words.size(size);
                    let values = [("base", base.into()), ("size", size.into())];
                    w.tell("good-envelopes-size", &values)
                }
                None => w.tell("good-envelopes", &[("base", base.into())]),
            };
            (name, None)
        }
        Good::Foam(tool)
        | Good::Tool(tool)
        | Good::Tape(tool)
        | Good::Counted(tool)
        | Good::Ribbon(tool) => {
            (w.tool(tool), project.tools[tool.0].order_number.as_ref())
        }
        Good::AnyFoam => (w.tell("good-foam", &[]), None),
        Good::Labels(greeting) => (w.label(greeting), None),
    };
    match order {
        Some(number) => {
            let number = w.user(number);
            w.tell("good-order", &[("good", name.into()), ("number", number.into())])
        }
        None => name,
    }
}
