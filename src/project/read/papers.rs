//! Papers: sheets, faces, weights, packs.

use crate::diag::rules;
use crate::geom::Size;
use crate::project::read::desk::{Desk, either, quote};
use crate::project::read::draft::Draft;
use crate::project::read::pictures;
use crate::project::read::shape::{Keys, name_of};
use crate::project::read::trade;
use crate::project::tree::{Entry, Node, Value};
use crate::project::{
    Face, Grain, Pack, Paper, PaperKind, Runs, Stock, StockSheet, Text,
};
use crate::source::Site;
use crate::standards::{self, Format, FormatKind, GRADES};

/// Reads every paper.
pub(crate) fn read(desk: &mut Desk<'_>, node: Option<&Node>, draft: &mut Draft) {
    let (names, papers) = desk.named(node, "paper");
    draft.papers = papers.iter().map(|entry| paper(desk, entry)).collect();
    draft.paper_names = names;
}

fn paper(desk: &mut Desk<'_>, entry: &Entry) -> Option<Paper> {
    let keys = desk.open(&entry.value, entry.site, "paper");
    desk.either_key(&keys, "faces", "runs");
    let patterned = keys.get("faces").or(keys.get("runs")).is_some();
    let kind = match keys.get("kind") {
        None if patterned => PaperKind::Patterned,
        None => PaperKind::Plain,
        Some(node) => match desk.one_of(node, &["patterned", "cardstock", "plain"]) {
            Some(0) => PaperKind::Patterned,
            Some(1) => PaperKind::Cardstock,
            _ => PaperKind::Plain,
        },
    };
    let faces = faces(desk, &keys, kind);
    let grams = keys.get("weight").and_then(|node| weight(desk, node));
    let thickness = keys.get("thickness").and_then(|node| desk.thickness(node));
    let pack = keys.get("pack").and_then(|node| pack(desk, node));
    let color = keys.get("colour").and_then(|node| color(desk, node));
    let order_number = keys.get("order number").and_then(|node| desk.words(node));
    let sheets_alike = keys.get("sheets alike").and_then(|node| desk.yes(node));
    let trade = trade::trade(desk, &keys);
    let stock = stock(desk, &keys)?;
    let grain = keys.get("grain").and_then(|node| grain(desk, node, &stock));
    let name = desk.printed(name_of(entry), &keys);
    let pictures = pictures::of_paper(desk, &keys, &faces, &stock);
    Some(Paper {
        name,
        kind,
        stock,
        faces,
        grams,
        thickness,
        grain,
        pack,
        color,
        pictures,
        order_number,
        sheets_alike,
        trade,
    })
}

fn stock(desk: &mut Desk<'_>, keys: &Keys<'_>) -> Option<Stock> {
    desk.either_key(keys, "sheet", "sheets");
    desk.either_key(keys, "sheet", "scraps");
    desk.either_key(keys, "sheets", "scraps");
    if let Some(node) = keys.get("scraps") {
        let (text, _) = desk.raw(node)?;
        let size =
            desk.size_in(text.strip_prefix("at least").unwrap_or(text), node.site)?;
        return Some(Stock::Scraps(size, node.site));
    }
    let rows = match (keys.get("sheet"), keys.get("sheets")) {
        (Some(node), _) => std::slice::from_ref(node),
        (None, Some(node)) => desk.one_or_more(node),
        (None, None) => {
            desk.missing(keys, "sheet");
            return None;
        }
    };
    let rows: Vec<_> = rows.iter().map(|row| sheet(desk, row)).collect();
    let sheets: Vec<StockSheet> = rows.into_iter().collect::<Option<_>>()?;
    (!sheets.is_empty()).then_some(Stock::Sheets(sheets))
}

fn sheet(desk: &mut Desk<'_>, node: &Node) -> Option<StockSheet> {
    if !matches!(node.value, Value::Keys(_)) {
        let size = size_or_format(desk, node, FormatKind::Sheet)?.0;
        return Some(StockSheet { size, at_hand: None, site: node.site });
    }
    let keys = desk.open(node, node.site, "sheet");
    let at_hand = keys.get("at hand").and_then(|node| desk.count(node, 1, 100_000));
    let given = desk.need(&keys, "size")?;
    let size = size_or_format(desk, given, FormatKind::Sheet)?.0;
    Some(StockSheet { size, at_hand, site: given.site })
}

/// A size, or the name of a format; a format may be said to lie `wide`.
pub(crate) fn size_or_format(
    desk: &mut Desk<'_>,
    node: &Node,
    kind: FormatKind,
) -> Option<(Size, Option<&'static Format>)> {
    let (text, _) = desk.raw(node)?;
    let (name, wide) = match text.rsplit_once(' ') {
        Some((name, "wide")) => (name, true),
        Some((name, "tall")) => (name, false),
        _ => (text, false),
    };
    if let Some(format) = standards::format(name, kind) {
        let size = format.size();
        return Some((if wide { size.turned() } else { size }, Some(format)));
    }
    if text.starts_with(|it: char| it.is_numeric() || "-.".contains(it)) {
        return desk.size_in(text, node.site).map(|size| (size, None));
    }
    unknown_format(desk, text, node.site, kind);
    None
}

/// Notes a format that nobody knows.
pub(crate) fn unknown_format(
    desk: &mut Desk<'_>,
    text: &str,
    site: Site,
    kind: FormatKind,
) {
    let what = match kind {
        FormatKind::Sheet => "sheet",
        FormatKind::Card => "card",
        FormatKind::Envelope => "envelope",
    };
    let longer = standards::names(kind)
        .find(|it| it.strip_prefix(text).is_some_and(|rest| rest.starts_with('-')));
    let help = match longer.or_else(|| desk.near(text, standards::names(kind))) {
        Some(name) => format!("did you mean `{name}`?"),
        None => "write a size instead, such as `8 x 8 in`".to_owned(),
    };
    let message = format!("no {what} has a format called {}", quote(text));
    desk.fault(&rules::UNKNOWN_FORMAT, site, message, help);
}

fn faces(desk: &mut Desk<'_>, keys: &Keys<'_>, kind: PaperKind) -> Vec<Face> {
    let usual = match kind {
        PaperKind::Patterned => Runs::Up,
        PaperKind::Cardstock | PaperKind::Plain => Runs::Any,
    };
    let Some(node) = keys.get("faces") else {
        let runs = keys.get("runs").and_then(|node| runs(desk, node)).unwrap_or(usual);
        return vec![Face { name: Text { site: keys.site, ..Text::default() }, runs }];
    };
    let (_, entries) = desk.named(Some(node), "face");
    if let Some(third) = entries.get(2) {
        desk.fault(
            &rules::OUT_OF_RANGE,
            third.site,
            "a sheet of paper has two faces at most",
            "describe a third design as a paper of its own",
        );
    }
    let faces = entries.iter().map(|entry| {
        let keys = desk.open(&entry.value, entry.site, "face");
        let runs = keys.get("runs").and_then(|node| runs(desk, node)).unwrap_or(usual);
        Face { name: desk.printed(name_of(entry), &keys), runs }
    });
    faces.collect()
}

fn runs(desk: &mut Desk<'_>, node: &Node) -> Option<Runs> {
    const WORDS: [(&str, Runs); 3] =
        [("up", Runs::Up), ("both ways", Runs::BothWays), ("any", Runs::Any)];
    let index = desk.one_of(node, &WORDS.map(|it| it.0))?;
    Some(WORDS[index].1)
}

fn grain(desk: &mut Desk<'_>, node: &Node, stock: &Stock) -> Option<Grain> {
    let size = match stock {
        Stock::Sheets(sheets) => sheets[0].size,
        Stock::Scraps(size, _) => *size,
    };
    let lies_wide = size.height < size.width;
    match desk.one_of(node, &["up", "across", "long", "short"])? {
        0 => Some(Grain::Upright),
        1 => Some(Grain::Level),
        _ if size.width == size.height => {
            desk.fault(
                &rules::DIRECTION_UNCLEAR,
                node.site,
                "a square sheet has no long side for the grain to run along",
                "write `up` or `across`, as the sheet lies",
            );
            None
        }
        2 => Some(if lies_wide { Grain::Level } else { Grain::Upright }),
        _ => Some(if lies_wide { Grain::Upright } else { Grain::Level }),
    }
}

/// A pack: how many it holds, or that and of how many designs.
pub(crate) fn pack(desk: &mut Desk<'_>, node: &Node) -> Option<Pack> {
    if !matches!(node.value, Value::Keys(_)) {
        return Some(Pack { holds: desk.count(node, 1, 100_000)?, designs: 1 });
    }
    let keys = desk.open(node, node.site, "pack");
    let holds =
        desk.need(&keys, "sheets").and_then(|node| desk.count(node, 1, 100_000))?;
    let Some(node) = keys.get("designs") else { return Some(Pack { holds, designs: 1 }) };
    let designs = desk.count(node, 1, 1000)?;
    if holds % designs != 0 {
        desk.fault(
            &rules::OUT_OF_RANGE,
            node.site,
            format!(
                "{holds} sheets can't be the same number of each of {designs} designs"
            ),
            "count the sheets and the designs of a pack again",
        );
        return None;
    }
    Some(Pack { holds, designs })
}

/// Hundredths of a gram per square metre.
fn weight(desk: &mut Desk<'_>, node: &Node) -> Option<u32> {
    let (text, _) = desk.raw(node)?;
    let end =
        text.find(|it: char| !it.is_ascii_digit() && it != '.').unwrap_or(text.len());
    let (number, unit) = (hundredths(&text[..end]), text[end..].trim().to_lowercase());
    let message = format!("{} is not a weight of paper", quote(text));
    let help = "write `120 gsm`, or `65 lb cover`";
    let grams = match (number, unit.as_str()) {
        (Some(number), "gsm" | "g/m2" | "g/m²") => Some(number),
        (Some(_), "lb" | "lbs" | "#") => {
            let grades: Vec<_> = GRADES.iter().map(|it| it.name).collect();
            desk.fault(
                &rules::WEIGHT_WITHOUT_GRADE,
                node.site,
                format!("{} may be one of several papers", quote(text)),
                format!("add the grade: {}", either(&grades)),
            );
            return None;
        }
        (Some(number), unit) => {
            let grade = unit
                .trim_start_matches("lbs")
                .trim_start_matches("lb")
                .trim_start_matches('#')
                .trim();
            let grade =
                GRADES.iter().find(|it| it.name == grade || it.also.contains(&grade));
            let pounds = unit.starts_with("lb") || unit.starts_with('#');
            grade
                .filter(|_| pounds)
                .and_then(|grade| standards::grams_of_pounds(number, grade))
        }
        (None, _) => None,
    };
    match grams {
        // No paper weighs less than 5 gsm, and no board more than 5000.
        Some(grams) if (500..=500_000).contains(&grams) => Some(grams),
        Some(_) => {
            let message = format!("{} is the weight of no paper", quote(text));
            desk.fault(&rules::OUT_OF_RANGE, node.site, message, help);
            None
        }
        None => {
            desk.fault(&rules::NOT_A_WEIGHT, node.site, message, help);
            None
        }
    }
}

/// A decimal number in hundredths.
fn hundredths(text: &str) -> Option<u32> {
    let (whole, part) = text.split_once('.').unwrap_or((text, "0"));
    if 2 < part.len() || part.is_empty() || 6 < whole.len() {
        return None;
    }
    let part: u32 = format!("{part:0<2}").parse().ok()?;
    Some(whole.parse::<u32>().ok()? * 100 + part)
}

pub(crate) fn color(desk: &mut Desk<'_>, node: &Node) -> Option<[u8; 3]> {
    let (text, _) = desk.raw(node)?;
    if let Some(color) = standards::color(text) {
        return Some(color);
    }
    let digits = text.strip_prefix('#').unwrap_or(text);
    let number = u32::from_str_radix(digits, 16).ok().filter(|_| digits.len() == 6);
    match number {
        Some(number) if !digits.starts_with('+') => {
            let [_, red, green, blue] = number.to_be_bytes();
            Some([red, green, blue])
        }
        _ => {
            let help = match desk.near(text, standards::color_names()) {
                Some(name) => format!("did you mean `{name}`?"),
                None => "write six digits in quotes, such as `\"#7a9a6b\"`".to_owned(),
            };
            let message = format!("{} is not a colour", quote(text));
            desk.fault(&rules::NOT_A_COLOUR, node.site, message, help);
            None
        }
    }
}
