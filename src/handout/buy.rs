//! What to buy, in whole packs, with what is left over.

use crate::document::{Align, Block, Column, Inline, Section, Table, Text, Tone};
use crate::handout::of_blocks;
use crate::handout::writer::Writer;
use crate::plan::{Good, Supply, ribbon_step};
use crate::project::Stock;

pub(super) fn write(w: &Writer<'_>) -> Vec<Section> {
    let supplies = &w.plan.supplies;
    // Tools are bought once and listed with what to have at hand; labels are cut
    // from paper that is in the list already.
    let bought = |it: &&Supply| !matches!(it.what, Good::Tool(_) | Good::Labels(_));
    let rows: Vec<Vec<Text>> =
        supplies.rows.iter().filter(bought).map(|it| row(w, it)).collect();
    if rows.is_empty() {
        return Vec::new();
    }
    let head = |text, align| Column { head: text, align };
    let columns = vec![
        head(Text::new(), Align::Start),
        head(w.tell("buy-what", &[]), Align::Start),
        head(w.tell("buy-one-kit", &[]), Align::End),
        head(w.tell("buy-all", &[]), Align::End),
        head(w.tell("buy-packs", &[]), Align::Start),
        head(w.tell("buy-over", &[]), Align::End),
    ];
    let kits = supplies.kits.saturating_sub(supplies.spares);
    let values = [("kits", kits.into()), ("spares", supplies.spares.into())];
    let blocks = vec![
        Block::Paragraph(Tone::Body, w.tell("buy-for", &values)),
        Block::Table(Table { summary: w.say("buy-summary", &[]), columns, rows }),
    ];
    of_blocks("buy", w.tell("buy-title", &[]), blocks)
}

/// Whether a pack holds other designs as well, so that few of its sheets serve.
fn is_assorted(w: &Writer<'_>, what: Good) -> bool {
    let Good::Sheets(paper) = what else { return false };
    w.project.papers[paper.0].pack.is_some_and(|pack| pack.designs > 1)
}

fn row(w: &Writer<'_>, supply: &Supply) -> Vec<Text> {
    let number = |count: u32| {
        let said = match supply.what {
            Good::Ribbon(_) => {
                w.words.length(ribbon_step(w.project.unit) * i64::from(count))
            }
            _ => count.to_string(),
        };
        vec![Inline::plain(said)]
    };
    let packs = match supply.packs {
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
        None => Text::new(),
    };
    vec![
        Text::new(),
        good(w, supply.what),
        supply.per_kit.map(number).unwrap_or_default(),
        number(supply.needed),
        packs,
        supply.packs.map(|it| number(it.over)).unwrap_or_default(),
    ]
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
        Good::Bases(base) => (w.base(base), None),
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
