//! The description as a whole: title, kits, readers, what is done ahead.

use crate::diag::rules;
use crate::project::keys;
use crate::project::picture::COVER_ROOM;
use crate::project::read::desk::{Desk, quote};
use crate::project::read::draft::Draft;
use crate::project::read::pictures;
use crate::project::read::shape::Keys;
use crate::project::read::told::is_language;
use crate::project::read::trade;
use crate::project::tree::{Node, Value};
use crate::project::{CutBy, DoneAhead, HandedOutBy, Reader, Spares, Text, Work};

/// Reads what stands at the top of the description, apart from `unit`.
pub(crate) fn read(desk: &mut Desk<'_>, keys: &Keys<'_>, draft: &mut Draft) {
    draft.languages =
        keys.get("language").map(|node| languages(desk, node)).unwrap_or_default();
    let first = draft.languages.first().map(|it| it.words.clone());
    draft.language = first.unwrap_or_else(|| "en".to_owned());
    desk.language.clone_from(&draft.language);
    draft.title = desk.need(keys, "title").and_then(|node| desk.told(node));
    draft.about = keys.get("about").and_then(|node| desk.told(node));
    draft.photo = pictures::photo(desk, keys.get("photo"), COVER_ROOM);
    draft.edition = keys.get("edition").and_then(|node| desk.told(node));
    draft.fonts = desk.all_words(keys.get("fonts"));
    draft.kits =
        keys.get("kits").and_then(|node| desk.count(node, 1, 10_000)).unwrap_or(1);
    draft.spares =
        keys.get("spares").and_then(|node| spares(desk, node)).unwrap_or_default();
    draft.sheets_alike =
        keys.get("sheets alike").and_then(|node| desk.yes(node)).unwrap_or_default();
    draft.handed_out_by = keys.entry("handed out by").and_then(|entry| {
        let keys = desk.open(&entry.value, entry.site, "giver");
        let reach = keys.get("reach").and_then(|node| desk.told(node));
        let name = desk.need(&keys, "name").and_then(|node| desk.told(node))?;
        Some(HandedOutBy { name, reach })
    });
    draft.cautions = desk.all_told(keys.get("cautions"));
    draft.tips = desk.all_told(keys.get("tips"));
    draft.currency = keys.get("currency").and_then(|node| desk.words(node));
    let made = keys.get("cards made");
    draft.in_batches =
        made.and_then(|node| desk.one_of(node, &["one by one", "in batches"])) == Some(1);
    draft.gift = trade::gift(desk, keys.entry("gift set"));
    draft.minutes = trade::minutes(desk, keys.entry("minutes"));
    draft.done_ahead = done_ahead(desk, keys);
    draft.cut_by = cut_by(desk, keys);
}

fn languages(desk: &mut Desk<'_>, node: &Node) -> Vec<Text> {
    let mut all = desk.all_words(Some(node));
    all.retain(|text| {
        if !is_language(&text.words) {
            desk.fault(
                &rules::NOT_A_CHOICE,
                text.site,
                format!("{} is not the short name of a language", quote(&text.words)),
                "write `en`, `de`, `pt-BR` or the like",
            );
        }
        is_language(&text.words)
    });
    all
}

fn spares(desk: &mut Desk<'_>, node: &Node) -> Option<Spares> {
    let (text, _) = desk.raw(node)?;
    match text {
        "none" => Some(Spares::Kits(0)),
        "usual" => Some(Spares::Usual),
        _ if text.starts_with(|it: char| it.is_ascii_digit() || it == '-') => {
            desk.count(node, 0, 10_000).map(Spares::Kits)
        }
        _ => {
            desk.fault(
                &rules::NOT_A_CHOICE,
                node.site,
                format!("{} can't stand here", quote(text)),
                "write `none`, `usual`, or a number of kits",
            );
            None
        }
    }
}

/// What is done ahead for every reader, in their order.
fn done_ahead(desk: &mut Desk<'_>, keys: &Keys<'_>) -> Vec<DoneAhead> {
    let entry = keys.entry("done ahead");
    let keys = entry.map(|entry| desk.open(&entry.value, entry.site, "ahead"));
    let rows = Reader::ALL.iter().map(|reader| {
        let given = keys.as_ref().and_then(|keys| keys.get(reader.word()));
        let work = given.map_or_else(Vec::new, |node| work(desk, node));
        let site = given
            .map_or(keys.as_ref().map_or_else(Default::default, |it| it.site), |it| {
                it.site
            });
        DoneAhead { reader: *reader, work, site }
    });
    rows.collect()
}

fn work(desk: &mut Desk<'_>, node: &Node) -> Vec<Work> {
    if !matches!(node.value, Value::Keys(_)) {
        let some = some_work(desk, node);
        return Work::ALL.into_iter().filter(|work| some.contains(work)).collect();
    }
    let keys = desk.open(node, node.site, "all but");
    let Some(node) = desk.need(&keys, "all but") else { return Vec::new() };
    let some = some_work(desk, node);
    Work::ALL.into_iter().filter(|work| !some.contains(work)).collect()
}

fn some_work(desk: &mut Desk<'_>, node: &Node) -> Vec<Work> {
    let rows = desk.one_or_more(node);
    let some = rows.iter().filter_map(|row| {
        let (text, _) = desk.raw(row)?;
        let all_but = ["all but ", "everything but "];
        if let Some(rest) = all_but.iter().find_map(|it| text.strip_prefix(it)) {
            desk.fault(
                &rules::NOT_A_CHOICE,
                row.site,
                format!("{} can't stand here", quote(text)),
                format!("write `{{all but: [{rest}]}}`"),
            );
            return None;
        }
        let index = desk.one_of(row, keys::WORKS)?;
        Work::ALL.into_iter().find(|work| work.word() == keys::WORKS[index])
    });
    some.collect()
}

/// Who cuts the sheets for every reader, in their order.
fn cut_by(desk: &mut Desk<'_>, keys: &Keys<'_>) -> Vec<CutBy> {
    let entry = keys.entry("cut by");
    let keys = entry.map(|entry| desk.open(&entry.value, entry.site, "cut by"));
    let rows = Reader::ALL.iter().map(|reader| {
        let given = keys.as_ref().and_then(|keys| keys.get(reader.word()));
        let who = given.and_then(|node| desk.one_of(node, &["maker", "reader"]));
        let site = given.map_or_else(Default::default, |it| it.site);
        CutBy { reader: *reader, reader_cuts: who == Some(1), site }
    });
    rows.collect()
}
