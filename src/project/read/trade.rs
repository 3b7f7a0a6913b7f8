//! What things cost, how far they go, and how long work takes.

use crate::diag::rules;
use crate::geom::{Length, Unit};
use crate::project::read::desk::{Desk, quote};
use crate::project::read::shape::Keys;
use crate::project::tree::{Entry, Node};
use crate::project::{Gift, GiftKind, Lasts, Minutes, Trade, Work};

/// The price of something, and how much of it is there already.
pub(crate) fn trade(desk: &mut Desk<'_>, keys: &Keys<'_>) -> Trade {
    let price = keys.get("price").and_then(|node| price(desk, node));
    let on_hand = keys.get("on hand").and_then(|node| desk.count(node, 0, 1_000_000));
    Trade { price, on_hand: on_hand.unwrap_or(0) }
}

/// How far one of a tool goes.
pub(crate) fn lasts(desk: &mut Desk<'_>, keys: &Keys<'_>) -> Lasts {
    Lasts {
        shared_by: keys.get("shared by").and_then(|node| desk.count(node, 1, 10_000)),
        cards: keys.get("enough for").and_then(|node| desk.count(node, 1, 100_000)),
        roll: keys.get("roll").and_then(|node| roll(desk, node)),
    }
}

/// An amount of money, in hundredths: `3.90`, `4`.
fn price(desk: &mut Desk<'_>, node: &Node) -> Option<u32> {
    let (text, _) = desk.raw(node)?;
    let (whole, part) = text.split_once('.').unwrap_or((text, "00"));
    let digits = |it: &str| it.bytes().all(|it| it.is_ascii_digit());
    let sound = !whole.is_empty()
        && whole.len() <= 6
        && (1..=2).contains(&part.len())
        && digits(whole)
        && digits(part);
    if !sound {
        desk.fault(
            &rules::NOT_A_NUMBER,
            node.site,
            format!("{} is not a price", quote(text)),
            "write a number with two decimals, such as `3.90`, and the currency once, as `currency: EUR`",
        );
        return None;
    }
    let part: u32 = format!("{part:0<2}").parse().ok()?;
    Some(whole.parse::<u32>().ok()? * 100 + part)
}

/// The length of a roll, which may be told in metres or yards.
fn roll(desk: &mut Desk<'_>, node: &Node) -> Option<Length> {
    let (text, _) = desk.raw(node)?;
    let (number, unit) = text.trim().rsplit_once(' ').unwrap_or((text.trim(), ""));
    // 1 yd = 36 in = 914.4 mm exactly (NBS, Federal Register 1959-07-01).
    let times = match unit {
        "m" | "metres" | "meters" => Some((1000, "mm")),
        "yd" | "yards" => Some((36, "in")),
        _ => None,
    };
    let Some((times, unit)) = times else { return desk.some_length(node) };
    let count = desk.count_in(number, node.site, 1, 1000)?;
    desk.length_in(&format!("{} {unit}", count * times), node.site)
}

/// The finished cards as a gift set; a band is 1 1/2 in wide unless it is said.
pub(crate) fn gift(desk: &mut Desk<'_>, entry: Option<&Entry>) -> Option<Gift> {
    let entry = entry?;
    let keys = desk.open(&entry.value, entry.site, "gift set");
    let width = keys.get("width").and_then(|node| desk.some_length(node));
    let node = desk.need(&keys, "kind")?;
    let kind = match desk.one_of(node, &["band", "box"])? {
        0 => GiftKind::Band,
        _ => GiftKind::Box,
    };
    let usual = match desk.shown() {
        Unit::Inch => Length::inch(3, 2),
        Unit::Mm => Length::mm(40),
    };
    Some(Gift { kind, width: width.unwrap_or(usual) })
}

/// How long things take.
pub(crate) fn minutes(desk: &mut Desk<'_>, entry: Option<&Entry>) -> Minutes {
    let Some(entry) = entry else { return Minutes::default() };
    let keys = desk.open(&entry.value, entry.site, "minutes");
    let mut time = |name| keys.get(name).and_then(|node| seconds(desk, node));
    Minutes {
        set_up: time("set up"),
        once: Work::ALL.map(|work| time(work.word())),
        clean_up: time("clean up"),
        lasts: time("class lasts"),
    }
}

/// A time in seconds: `2 min`, `30 s`, `1 h`; a bare number counts minutes.
fn seconds(desk: &mut Desk<'_>, node: &Node) -> Option<u32> {
    let (text, _) = desk.raw(node)?;
    let (number, unit) = text.split_once(' ').unwrap_or((text, "min"));
    let times = match unit.trim() {
        "s" | "sec" | "seconds" => 1,
        "min" | "mins" | "minute" | "minutes" => 60,
        "h" | "hour" | "hours" => 3600,
        _ => {
            desk.fault(
                &rules::NOT_A_NUMBER,
                node.site,
                format!("{} is not a time", quote(text)),
                "write a number and `min` or `s`, such as `2 min`",
            );
            return None;
        }
    };
    Some(desk.count_in(number, node.site, 0, 10_000)? * times)
}
