//! Envelopes, how the finished cards fit them, and what to ask at the post.

use std::collections::BTreeMap;

use crate::document::{Align, Block, Column, Inline, Section, Table, Text, Tone};
use crate::geom::{Length, Unit};
use crate::handout::writer::{Writer, sentences};
use crate::handout::{Hands, Kind, gift, of_blocks};
use crate::plan::{Fit, Room};
use crate::project::{BaseId, Reader};
use crate::standards::post::{Operator, Verdict, Watch, Year};

/// Whether a packet tells of envelopes.
pub(super) fn is_told(w: &Writer<'_>) -> bool {
    let wanted = w.template.sections.iter().any(|it| it.kind == Kind::Envelope);
    wanted && (0..w.project.bases.len()).any(|at| envelope(w, BaseId(at)).is_some())
}

pub(super) fn write(w: &Writer<'_>) -> Vec<Section> {
    let texts: Vec<Text> =
        (0..w.project.bases.len()).filter_map(|at| envelope(w, BaseId(at))).collect();
    if texts.is_empty() {
        return Vec::new();
    }
    let maker = w.template.hands == Hands::Maker;
    let mut blocks = Vec::new();
    let mut post = Vec::new();
    if maker {
        blocks.push(Block::Paragraph(Tone::Body, sentences(texts)));
        blocks.push(cards(w));
        post.push(w.tell("envelope-estimate", &[]));
    } else {
        // A reader has little room, so that she is told in running text.
        post.extend(texts);
        post.extend(at_most(w, "fit-in-short"));
    }
    let raised = w.plan.fronts.iter().any(|it| it.layers.iter().any(|it| it.raised > 0));
    let raised = if raised { "yes" } else { "no" };
    // Which class a raised card goes as is too doubtful for a few words.
    post.extend(hint(w).filter(|_| !maker && raised == "no"));
    post.push(w.tell("envelope-post", &[("raised", raised.into())]));
    blocks.push(Block::Paragraph(Tone::Body, sentences(post)));
    // Nobody posts at a class table.
    if maker && w.template.reader != Reader::Class {
        blocks.extend(classes(w));
        let watch = sentences(watch(w));
        blocks.extend((!watch.is_empty()).then_some(Block::Paragraph(Tone::Body, watch)));
    }
    let wanted = w.template.sections.iter().any(|it| it.kind == Kind::Gift);
    let gift = gift::told(w).filter(|_| wanted);
    let title = [("gift", if gift.is_some() { "yes" } else { "no" }.into())];
    blocks.extend(gift);
    of_blocks("envelope", w.tell("envelope-title", &title), blocks)
}

/// Which cards go into which envelope.
fn envelope(w: &Writer<'_>, id: BaseId) -> Option<Text> {
    let cards = w.project.cards.iter().filter(|it| it.base == id);
    let names: Vec<_> = cards.map(|it| w.user(&it.name)).collect();
    let envelope = w.project.bases[id.0].envelope.filter(|_| !names.is_empty())?;
    let count = u32::try_from(names.len()).unwrap_or(u32::MAX);
    // Where all are alike nobody needs their names.
    let all = if names.len() == w.project.cards.len() { "yes" } else { "no" };
    let cards = w.list(names);
    let mut values =
        vec![("cards", cards.into()), ("count", count.into()), ("all", all.into())];
    Some(match envelope.size {
        Some(size) => {
            values.push(("size", w.words.size(size).into()));
            w.tell("envelope-size", &values)
        }
        None => w.tell("envelope-with", &values),
    })
}

/// How thick and heavy each card is in its envelope, and the room that is left.
fn cards(w: &Writer<'_>) -> Block {
    let head = |name, align| Column { head: w.tell(name, &[]), align };
    let room = w.plan.fits.iter().any(|it| it.envelope.is_some());
    let mut columns = vec![
        head("fit-card", Align::Start),
        head("fit-thick", Align::End),
        head("fit-heavy", Align::End),
    ];
    if room {
        columns.push(head("fit-room", Align::Start));
    }
    let row = |fit: &Fit| {
        let mut row = vec![
            w.user(&w.project.cards[fit.card.0].name),
            thickness(w, fit.thickness),
            mass(w, fit.mass_mg),
        ];
        if room {
            row.push(fit.envelope.map_or_else(Text::new, |it| {
                let spare = w.words.size(it.spare);
                let tight = if it.room == Room::Tight { "yes" } else { "no" };
                w.tell("fit-spare", &[("size", spare.into()), ("tight", tight.into())])
            }));
        }
        row
    };
    let with_envelope =
        |it: &&Fit| w.project.bases[w.project.cards[it.card.0].base.0].envelope.is_some();
    let rows = w.plan.fits.iter().filter(with_envelope).map(row).collect();
    Block::Table(Table { summary: w.say("fit-summary", &[]), columns, rows })
}

/// Postage as a line of a packing list, with what the cards measure and weigh at
/// most; nothing if no card has an envelope.
pub(super) fn postage(w: &Writer<'_>) -> Option<Text> {
    at_most(w, "pack-postage")
}

/// What the cards measure and weigh at most, in their envelopes.
fn at_most(w: &Writer<'_>, message: &str) -> Option<Text> {
    let sent = |fit: &&Fit| {
        w.project.bases[w.project.cards[fit.card.0].base.0].envelope.is_some()
    };
    let fits = || w.plan.fits.iter().filter(sent);
    let thick = thickness(w, fits().map(|it| it.thickness).max()?);
    let heavy = mass(w, fits().map(|it| it.mass_mg).max()?);
    Some(w.tell(message, &[("thick", thick.into()), ("heavy", heavy.into())]))
}

/// Texts with semicolons between them.
fn chain(w: &Writer<'_>, texts: impl Iterator<Item = Text>) -> Text {
    let mut all = Text::new();
    for text in texts {
        if !all.is_empty() {
            all.push(Inline::plain(w.say("list-semicolon", &[])));
        }
        all.extend(text);
    }
    all
}

/// In tenths of a millimetre, rounded up as an estimate deserves.
pub(super) fn thickness(w: &Writer<'_>, length: Length) -> Text {
    let tenth = Length::MM.units() / 10;
    let up = length.units().div_euclid(tenth)
        + i64::from(length.units().rem_euclid(tenth) != 0);
    let number = tenths(w, u64::try_from(up).unwrap_or(0));
    w.tell("fit-mm", &[("number", number.into())])
}

/// In whole grams, rounded up; in tenths of an ounce before that where lengths
/// are in inches. 1 oz is 28.349523125 g exactly (NBS 1959).
fn mass(w: &Writer<'_>, milligrams: u64) -> Text {
    let grams = milligrams.div_ceil(1000).to_string();
    let grams = w.tell("fit-grams", &[("number", grams.into())]);
    if w.words.units().first() == Unit::Mm {
        return grams;
    }
    let ounces = (u128::from(milligrams) * 10_000_000).div_ceil(28_349_523_125);
    let ounces = tenths(w, u64::try_from(ounces).unwrap_or(u64::MAX));
    w.tell("fit-ounces", &[("number", ounces.into()), ("grams", grams.into())])
}

/// A number that counts tenths, with the decimal sign of the language.
fn tenths(w: &Writer<'_>, counted: u64) -> String {
    match counted % 10 {
        0 => (counted / 10).to_string(),
        rest => format!("{}{}{rest}", counted / 10, w.words.say("decimal-sign", &[])),
    }
}

/// What each operator would probably take the cards for, all in one sentence.
pub(super) fn hint(w: &Writer<'_>) -> Option<Text> {
    if w.plan.fits.iter().all(|it| it.hints.is_empty()) {
        return None;
    }
    let texts = Operator::ALL.iter().filter_map(|operator| {
        let place = w.tell("operator", &[("operator", word(*operator).into())]);
        let class = class(w, *operator)?;
        let values = [("operator", place.into()), ("class", class.into())];
        Some(w.tell("post-class-of", &values))
    });
    Some(w.tell("post-hint", &[("classes", chain(w, texts).into())]))
}

/// The same as a table, with the document that each class is taken from.
fn classes(w: &Writer<'_>) -> Option<Block> {
    let head = |name| Column { head: w.tell(name, &[]), align: Align::Start };
    let columns = vec![head("post-where"), head("post-as"), head("post-source")];
    let rows: Vec<Vec<Text>> = Operator::ALL
        .iter()
        .filter_map(|operator| {
            let place = w.tell("operator", &[("operator", word(*operator).into())]);
            let class = class(w, *operator)?;
            let of = |fit: &Fit| {
                let hint = fit.hints.iter().find(|it| it.operator == *operator)?;
                match hint.verdict {
                    Verdict::Class(class) => Some(class.from.title),
                    Verdict::Below | Verdict::Beyond => {
                        hint.obstacles.first().map(|it| it.class.from.title)
                    }
                }
            };
            let source = w.plan.fits.iter().find_map(of).unwrap_or_default();
            // Titles of documents stay as they are, in the language that we have them.
            let source = Inline { lang: Some("en".to_owned()), ..Inline::plain(source) };
            Some(vec![place, class, vec![source]])
        })
        .collect();
    let summary = w.say("post-summary", &[]);
    (!rows.is_empty()).then_some(Block::Table(Table { summary, columns, rows }))
}

/// Where raised layers may cost more, by what no figure decides.
fn watch(w: &Writer<'_>) -> Vec<Text> {
    let mut found: BTreeMap<&[Watch], Vec<Text>> = BTreeMap::new();
    for operator in Operator::ALL {
        let hints = w.plan.fits.iter().flat_map(|it| &it.hints);
        let mut hints = hints.filter(|it| it.operator == operator);
        if let Some(hint) = hints.find(|it| !it.watch.is_empty()) {
            let place = w.tell("operator", &[("operator", word(operator).into())]);
            found.entry(hint.watch).or_default().push(place);
        }
    }
    let texts = found.into_iter().map(|(watch, places)| {
        let how = match watch {
            [Watch::Even] => "even",
            [Watch::Bends] => "bends",
            _ => "both",
        };
        let values = [("how", how.into()), ("operators", w.list(places).into())];
        w.tell("post-watch", &values)
    });
    texts.collect()
}

/// The class of one operator; where the cards differ, which cards are what.
fn class(w: &Writer<'_>, operator: Operator) -> Option<Text> {
    let mut found: BTreeMap<String, (Text, Vec<Text>)> = BTreeMap::new();
    for fit in &w.plan.fits {
        let Some(hint) = fit.hints.iter().find(|it| it.operator == operator) else {
            continue;
        };
        let (key, text) = match hint.verdict {
            Verdict::Class(class) => {
                let (year, seen) = match class.year {
                    Year::Issued(year) => (year, "issued"),
                    Year::Read(year) => (year, "read"),
                };
                let values = [
                    ("class", class.name.into()),
                    ("year", year.to_string().into()),
                    ("seen", seen.into()),
                ];
                (class.key.to_owned(), w.tell("post-class", &values))
            }
            Verdict::Below => ("~below".to_owned(), w.tell("post-below", &[])),
            Verdict::Beyond => ("~beyond".to_owned(), w.tell("post-beyond", &[])),
        };
        let name = w.user(&w.project.cards[fit.card.0].name);
        found.entry(key).or_insert_with(|| (text, Vec::new())).1.push(name);
    }
    let mut groups: Vec<(Text, Vec<Text>)> = found.into_values().collect();
    // What most cards are is said first, the others by name.
    groups.sort_by_key(|(_, names)| std::cmp::Reverse(names.len()));
    let mut groups = groups.into_iter();
    let mut text = groups.next()?.0;
    for (other, names) in groups {
        let values = [("class", other.into()), ("cards", w.list(names).into())];
        text.push(Inline::plain(w.say("list-comma", &[])));
        text.extend(w.tell("post-class-but", &values));
    }
    Some(text)
}

const fn word(operator: Operator) -> &'static str {
    match operator {
        Operator::UnitedStates => "us",
        Operator::Canada => "ca",
        Operator::UnitedKingdom => "uk",
        Operator::Germany => "de",
        Operator::Australia => "au",
        Operator::Norway => "no",
        Operator::Belgium => "be",
        Operator::France => "fr",
        Operator::Abroad => "abroad",
    }
}
