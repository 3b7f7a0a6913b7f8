//! What is put onto a card last: ribbon by length, embellishments by count.

use crate::diag::{Diagnostic, rules};
use crate::project::read::desk::{Desk, quote};
use crate::project::read::draft::{Draft, at};
use crate::project::tree::Node;
use crate::project::{Amount, Extra, ToolId, ToolKind};

/// The most extras that one card has.
const MOST: usize = 100;

/// Reads the extras of a card; the tools must have been read.
pub(crate) fn read(
    desk: &mut Desk<'_>,
    node: Option<&Node>,
    draft: &Draft,
) -> Option<Vec<Extra>> {
    let mut rows = node.map_or(&[][..], |node| desk.list(node));
    if MOST < rows.len() {
        let message = format!("there are more than {MOST} extras");
        let help = "give an extra a `count`";
        desk.fault(&rules::OUT_OF_RANGE, rows[MOST].site, message, help);
        rows = &rows[..MOST];
    }
    let rows: Vec<Option<Extra>> = rows.iter().map(|it| extra(desk, it, draft)).collect();
    rows.into_iter().collect()
}

fn extra(desk: &mut Desk<'_>, node: &Node, draft: &Draft) -> Option<Extra> {
    let keys = desk.open(node, node.site, "extra");
    desk.either_key(&keys, "count", "length");
    let what = desk.need(&keys, "what");
    let tool = what.and_then(|node| desk.resolve(node, &draft.tool_names));
    let count = keys.get("count").map(|node| desk.count(node, 1, 1000));
    let length = keys.get("length").map(|node| desk.some_length(node));
    let place = keys.get("where").and_then(|node| desk.words(node));
    let site = what.map_or(node.site, |it| it.site);
    let known = at(&draft.tools, tool?)?;
    let by_count =
        matches!(known.kind, ToolKind::Embellishments { .. } | ToolKind::Other);
    let by_length = matches!(known.kind, ToolKind::Ribbon { .. });
    if !by_count && !by_length {
        let name = quote(&known.name.words);
        desk.note(
            Diagnostic::new(
                &rules::NOT_A_CHOICE,
                site,
                format!("{name} is a tool, and stays on no card"),
            )
            .label(known.name.site, "it is described here")
            .help("name something of `kind: ribbon` or `kind: embellishments`"),
        );
        return None;
    }
    let amount = match (by_length, length) {
        (true, Some(length)) => Amount::Length(length?),
        (true, None) => {
            desk.missing(&keys, "length");
            return None;
        }
        (false, None) => Amount::Count(count.unwrap_or(Some(1))?),
        (false, Some(_)) => {
            let site = keys.entry("length").map_or(node.site, |it| it.site);
            let message = format!("{} comes by count", quote(&known.name.words));
            desk.note(
                Diagnostic::new(&rules::NOT_A_CHOICE, site, message)
                    .label(known.name.site, "it is described here")
                    .help("write `count`, or describe it as `kind: ribbon`"),
            );
            return None;
        }
    };
    Some(Extra { what: ToolId(tool?), amount, place, site })
}
