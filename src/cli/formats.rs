//! `formats`: sizes that have a name, with where the figures come from.

use std::fmt::Write;

use crate::cli::args::Formats;
use crate::cli::{Failure, Halt, Streams};
use crate::geom::Unit;
use crate::standards::{FORMATS, Format, FormatKind, Seen};

/// Lists the formats, by kind.
pub(crate) fn run(asked: &Formats, streams: &mut Streams<'_>) -> Result<(), Halt> {
    let wanted = asked.filter.as_deref().unwrap_or("").to_lowercase();
    let mut text = String::new();
    for (kind, head) in [
        (FormatKind::Sheet, "Sheets"),
        (FormatKind::Card, "Card fronts"),
        (FormatKind::Envelope, "Envelopes"),
    ] {
        let rows: Vec<&Format> = FORMATS
            .iter()
            .filter(|it| it.kind == kind && it.name.contains(&wanted))
            .collect();
        if rows.is_empty() {
            continue;
        }
        line(&mut text, head);
        for format in &rows {
            let size = format.size();
            let name = format.name;
            let (inch, mm) = (size.show(Unit::Inch), size.show(Unit::Mm));
            line(&mut text, &format!("  {name:<14} {mm:<18} {inch}"));
        }
        line(&mut text, "");
        line(&mut text, "  from:");
        let mut said = Vec::new();
        for format in rows {
            let from = format.from;
            if said.contains(&from.title) {
                continue;
            }
            said.push(from.title);
            let seen = match from.seen {
                Seen::Document => "",
                Seen::Repeated => " (as repeated by secondary texts)",
                Seen::Practice => " (no standard)",
            };
            line(&mut text, &format!("  - {}, {}{seen}", from.title, from.section));
        }
        line(&mut text, "");
    }
    if text.is_empty() {
        return Err(Halt::Failure(Failure {
            message: format!("no format has `{wanted}` in its name"),
            hint: "leave the name out to see all of them".to_owned(),
        }));
    }
    streams.say(&text)?;
    Ok(())
}

fn line(text: &mut String, words: &str) {
    writeln!(text, "{words}").expect("a string takes every text");
}
