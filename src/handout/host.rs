//! What the host of a class needs besides: what to do when, how long it all takes,
//! and who is there.

use crate::document::{Align, Block, Column, Inline, Marker, Section, Table, Text, Tone};
use crate::handout::writer::{Writer, sentences};
use crate::handout::{When, cover, need, of_blocks};
use crate::plan::{Doing, Span, Timetable, timetable};
use crate::project::{CardId, Reader};

/// Longer lists are kept on paper of one's own.
const MOST_NAMES: u32 = 120;

/// What to do a week, a day and an hour before.
pub(super) fn countdown(w: &Writer<'_>) -> Vec<Section> {
    let supplies = &w.plan.supplies;
    let people = supplies.kits.saturating_sub(supplies.spares);
    let mut blocks = Vec::new();
    let mut part = |when: &str, items: Vec<Text>| {
        if !items.is_empty() {
            let text = w.tell("host-when", &[("when", when.into())]);
            let heading = Block::Heading { level: 2, text, anchor: None };
            blocks.push(Block::Keep(vec![heading, Block::List(Marker::Box, items)]));
        }
    };
    let mut week = vec![w.tell("host-buy", &[])];
    if !w.project.cards.is_empty() {
        let samples = Some(w.tell("host-samples", &[]));
        week.push(sentences(samples.into_iter().chain(stages(w))));
    }
    week.push(w.tell("host-print", &[("copies", people.saturating_add(1).into())]));
    part("week", week);

    let mut day = Vec::new();
    let works = cover::works(w, Some(When::Before));
    if !works.is_empty() {
        day.push(w.tell("host-ahead", &[("works", w.list(works).into())]));
    }
    let values = [("bags", supplies.kits.into()), ("spares", supplies.spares.into())];
    day.push(w.tell("host-bags", &values));
    part("day", day);

    let mut hour = table(w, people);
    hour.push(w.tell("host-places", &[("people", people.into())]));
    if !w.project.cards.is_empty() {
        hour.push(w.tell("host-show", &[]));
    }
    part("hour", hour);
    of_blocks("before", w.tell("host-title", &[]), blocks)
}

/// How many samples that makes: every card, and one as each work of the class
/// leaves it.
fn stages(w: &Writer<'_>) -> Option<Text> {
    let works = cover::works(w, None);
    // Finished cards show the last of them.
    let half_done = works.len().checked_sub(1).filter(|it| *it > 0)?;
    let works = works.into_iter().take(half_done).collect();
    let cards = u32::try_from(w.project.cards.len()).unwrap_or(u32::MAX);
    let half_done = u32::try_from(half_done).unwrap_or(u32::MAX);
    let values = [
        ("cards", cards.into()),
        ("stages", half_done.into()),
        ("works", w.list(works).into()),
    ];
    Some(w.tell("host-stages", &values))
}

/// The tools that the class works with: of some there are several.
fn table(w: &Writer<'_>, people: u32) -> Vec<Text> {
    let tasks = need::at_table(w);
    let (mut several, mut single) = (Vec::new(), Vec::new());
    for tool in need::tools(w, &tasks) {
        let lasts = w.project.tools[tool.0].lasts;
        match lasts.shared_by.zip(lasts.for_people(people)) {
            Some((shared, count)) if count > 1 => {
                let name = w.tool(tool).into();
                let values =
                    [("tool", name), ("people", shared.into()), ("count", count.into())];
                several.push(w.tell("host-shared", &values));
            }
            _ => single.push(need::item(w, tool)),
        }
    }
    single.extend(need::pen(w, &tasks));
    several.extend(single);
    several
}

/// The timetable of the class, and what to leave out when it gets late.
pub(super) fn times(w: &Writer<'_>) -> Vec<Section> {
    if w.template.reader != Reader::Class || w.project.cards.is_empty() {
        return Vec::new();
    }
    let times = timetable(w.project, w.plan, w.template.reader);
    let head = |name, align| Column { head: w.tell(name, &[]), align };
    let columns = vec![
        head("time-from", Align::End),
        head("time-what", Align::Start),
        head("time-minutes", Align::End),
    ];
    let row = |span: &Span| {
        let clock = format!("{}:{:02}", span.from / 60, span.from % 60);
        vec![
            vec![Inline::plain(clock)],
            doing(w, span.what),
            vec![Inline::plain(span.minutes.to_string())],
        ]
    };
    let rows = times.rows.iter().map(row).collect();
    let table = Table { summary: w.say("time-summary", &[]), columns, rows };
    let mut blocks =
        vec![Block::Paragraph(Tone::Body, totals(w, &times)), Block::Table(table)];
    let late = late(w, &times);
    if !late.is_empty() {
        blocks.push(Block::Paragraph(Tone::Body, late));
    }
    // It hangs on the wall, and who looks at it has no time to turn a page.
    of_blocks("times", w.tell("time-title", &[]), vec![Block::Keep(blocks)])
}

fn doing(w: &Writer<'_>, what: Doing) -> Text {
    let word = match what {
        Doing::Card(card) => return w.user(&w.project.cards[card.0].name),
        Doing::SetUp => "setup",
        Doing::Preparing => "preparing",
        Doing::Waiting => "waiting",
        Doing::CleanUp => "cleanup",
        Doing::Buffer => "buffer",
    };
    w.tell("time-doing", &[("what", word.into())])
}

fn totals(w: &Writer<'_>, times: &Timetable) -> Text {
    let fits = if times.total <= times.lasts { "yes" } else { "no" };
    let estimated = if times.estimated { "yes" } else { "no" };
    let values = [
        ("total", times.total.into()),
        ("lasts", times.lasts.into()),
        ("fits", fits.into()),
        ("estimated", estimated.into()),
    ];
    w.tell("time-total", &values)
}

/// What to leave out so that it fits, or when it gets late.
fn late(w: &Writer<'_>, times: &Timetable) -> Text {
    let name = |card: CardId| w.user(&w.project.cards[card.0].name);
    if times.left_out.is_empty() {
        let Some((card, minutes)) = times.spare else { return Text::new() };
        let values = [("card", name(card).into()), ("minutes", minutes.into())];
        return w.tell("time-when-late", &values);
    }
    let out: Vec<Text> = times.left_out.iter().map(|it| name(*it)).collect();
    let values = [
        ("count", u32::try_from(out.len()).unwrap_or(u32::MAX).into()),
        ("cards", w.list(out).into()),
        ("lasts", times.lasts.into()),
        ("saves", times.saves.into()),
        ("fits", if times.fits { "yes" } else { "no" }.into()),
    ];
    w.tell("time-leave-out", &values)
}

/// A list of everybody, in two halves side by side.
pub(super) fn attendance(w: &Writer<'_>) -> Vec<Section> {
    let supplies = &w.plan.supplies;
    let names = &w.options.names;
    let listed = u32::try_from(names.len()).unwrap_or(u32::MAX);
    let people = supplies.kits.saturating_sub(supplies.spares).max(listed);
    if !(2..=MOST_NAMES).contains(&people) {
        return Vec::new();
    }
    let half = people.div_ceil(2);
    let head = |name, align| Column { head: w.tell(name, &[]), align };
    let columns = [(); 2].map(|()| {
        [
            head("attendance-number", Align::End),
            head("attendance-name", Align::Start),
            Column { head: Text::new(), align: Align::Start },
        ]
    });
    let cells = |number: u32| {
        if number > people {
            return [Text::new(), Text::new(), Text::new()];
        }
        let at = usize::try_from(number - 1).unwrap_or(usize::MAX);
        // Without names there is a line to write on.
        let blank = "_".repeat(24);
        let name = names.get(at).cloned().unwrap_or(blank);
        [vec![Inline::plain(number.to_string())], vec![Inline::plain(name)], Text::new()]
    };
    let rows =
        (1..=half).map(|at| cells(at).into_iter().chain(cells(at + half)).collect());
    let table = Table {
        summary: w.say("attendance-summary", &[]),
        columns: columns.into_iter().flatten().collect(),
        rows: rows.collect(),
    };
    let spares = w.tell("attendance-spares", &[("spares", supplies.spares.into())]);
    let blocks = vec![Block::Paragraph(Tone::Body, spares), Block::Table(table)];
    of_blocks("attendance", w.tell("attendance-title", &[]), blocks)
}
