//! Tools, and what is used up.

use crate::diag::{Diagnostic, rules};
use crate::geom::{Length, MOST_OUTLINE, Shape, Size, Unit};
use crate::project::keys;
use crate::project::read::desk::{Desk, either, quote};
use crate::project::read::draft::{Draft, at};
use crate::project::read::papers;
use crate::project::read::shape::{Keys, name_of};
use crate::project::read::trade;
use crate::project::tree::{Entry, Node};
use crate::project::{Outline, Punch, Tool, ToolId, ToolKind, Trimmer, TrimmerKind};
use crate::source::Site;

/// The words for shapes.
pub(crate) const SHAPES: [(&str, Shape); 5] = [
    ("rectangle", Shape::Rectangle),
    ("rounded", Shape::Rounded),
    ("circle", Shape::Circle),
    ("oval", Shape::Oval),
    ("tag", Shape::Tag),
];

/// The keys that every tool has.
const EVERY: [&str; 6] =
    ["kind", "instead", "order number", "price", "on hand", "shared by"];
/// Other words for kinds of tools, with those that stand in the table.
const ALSO: [(&str, &str); 29] = [
    ("trimmer", "sliding trimmer"),
    ("bag", "packaging"),
    ("bags", "packaging"),
    ("box", "packaging"),
    ("paper trimmer", "sliding trimmer"),
    ("guillotine", "lever trimmer"),
    ("die", "punch"),
    ("cutting die", "punch"),
    ("stamp", "stamp set"),
    ("stamps", "stamp set"),
    ("ink", "ink pad"),
    ("craft knife", "knife"),
    ("scoring board", "scoring tool"),
    ("bone folder", "folder"),
    ("glue stick", "glue"),
    ("liquid glue", "glue"),
    ("double-sided tape", "tape"),
    ("tape runner", "tape"),
    ("foam", "foam squares"),
    ("foam dots", "foam squares"),
    ("foam pads", "foam squares"),
    ("foam tape", "foam squares"),
    ("heat gun", "heat tool"),
    ("pencil", "pen"),
    ("cord", "ribbon"),
    ("twine", "ribbon"),
    ("embellishment", "embellishments"),
    ("brads", "embellishments"),
    ("gems", "embellishments"),
];

/// Reads every tool.
pub(crate) fn read(desk: &mut Desk<'_>, node: Option<&Node>, draft: &mut Draft) {
    let (names, tools) = desk.named(node, "tool");
    draft.tools = tools.iter().map(|entry| tool(desk, entry)).collect();
    draft.tool_names = names;
}

fn tool(desk: &mut Desk<'_>, entry: &Entry) -> Option<Tool> {
    let keys = desk.open(&entry.value, entry.site, "tool");
    let instead = keys.get("instead").and_then(|node| desk.told(node));
    let name = desk.printed(name_of(entry), &keys);
    let order_number = keys.get("order number").and_then(|node| desk.words(node));
    let kind = desk.need(&keys, "kind").and_then(|node| kind_word(desk, node))?;
    let own: &[&str] = match kind {
        "sliding trimmer" | "lever trimmer" | "rotary trimmer" => {
            &["longest cut", "sheets at once", "marks", "narrowest strip"]
        }
        "punch" => &["outline", "reach", "takes strips"],
        "glue" => &["dries", "enough for"],
        "tape" => &["roll", "enough for"],
        "foam squares" => &["thickness", "size", "pack"],
        "ink pad" | "pen" => &["colour", "enough for"],
        "ribbon" => &["roll"],
        "embellishments" => &["pack"],
        "packaging" => &["pack", "for each kit"],
        _ => &[],
    };
    for (name, given) in keys.given() {
        if !own.contains(&name) && !EVERY.contains(&name) {
            let message = format!("`{name}` has no effect on a tool of this kind");
            let help = "remove it, or correct the kind";
            desk.note(
                Diagnostic::new(&rules::KEY_WITHOUT_EFFECT, given.site, message)
                    .label(keys.get("kind").map_or(keys.site, |it| it.site), "the kind")
                    .help(help),
            );
        }
    }
    let kind = match kind {
        "sliding trimmer" => trimmer(desk, &keys, TrimmerKind::Sliding),
        "lever trimmer" => trimmer(desk, &keys, TrimmerKind::Lever),
        "rotary trimmer" => trimmer(desk, &keys, TrimmerKind::Rotary),
        "punch" => punch(desk, &keys)?,
        "stamp set" => ToolKind::StampSet,
        "ink pad" => ToolKind::InkPad,
        "scissors" => ToolKind::Scissors,
        "knife" => ToolKind::Knife,
        "scoring tool" => ToolKind::ScoringTool,
        "folder" => ToolKind::Folder,
        "glue" => {
            let dries =
                keys.get("dries").and_then(|node| minutes(desk, node)).unwrap_or(0);
            ToolKind::Glue { dries }
        }
        "tape" => ToolKind::Tape,
        "foam squares" => ToolKind::Foam {
            thickness: keys.get("thickness").and_then(|node| desk.thickness(node)),
            side: keys.get("size").and_then(|node| desk.some_length(node)),
            pack: keys.get("pack").and_then(|node| papers::pack(desk, node)),
        },
        "ribbon" => ToolKind::Ribbon {
            roll: keys.get("roll").and_then(|node| desk.some_length(node)),
        },
        "embellishments" => ToolKind::Embellishments {
            pack: keys.get("pack").and_then(|node| papers::pack(desk, node)),
        },
        "packaging" => {
            let each = keys.get("for each kit").and_then(|it| desk.count(it, 1, 1000));
            let pack = keys.get("pack").and_then(|node| papers::pack(desk, node));
            ToolKind::Packaging { each: each.unwrap_or(1), pack }
        }
        "heat tool" => ToolKind::Heat,
        "pen" => ToolKind::Pen,
        _ => ToolKind::Other,
    };
    let color = keys.get("colour").and_then(|node| papers::color(desk, node));
    let (trade, lasts) = (trade::trade(desk, &keys), trade::lasts(desk, &keys));
    Some(Tool { name, kind, instead, color, order_number, trade, lasts })
}

/// The word of the table for a kind, if there is one, else the word itself.
pub(crate) fn kind_called(text: &str) -> String {
    let low = text.trim().to_lowercase();
    ALSO.iter().find(|it| it.0 == low).map_or(low, |it| it.1.to_owned())
}

/// The kind of a tool; a word that is near no kind is the user's own.
fn kind_word(desk: &mut Desk<'_>, node: &Node) -> Option<&'static str> {
    let (text, _) = desk.raw(node)?;
    let low = kind_called(text);
    if let Some(kind) = keys::KINDS.iter().find(|kind| **kind == low) {
        return Some(kind);
    }
    let near = desk.near(text, keys::KINDS.iter().copied());
    let Some(kind) = near else { return Some("other") };
    desk.fault(
        &rules::NOT_A_CHOICE,
        node.site,
        format!("{} is not a kind of tool", quote(text)),
        format!("did you mean `{kind}`?"),
    );
    None
}

fn trimmer(desk: &mut Desk<'_>, keys: &Keys<'_>, kind: TrimmerKind) -> ToolKind {
    let (marks, narrowest) = match desk.shown() {
        Unit::Inch => (Length::inch(1, 16), Length::inch(1, 4)),
        Unit::Mm => (Length::mm(1), Length::mm(6)),
    };
    let mut length = |name| keys.get(name).and_then(|node| desk.some_length(node));
    let longest_cut = length("longest cut");
    let marks = length("marks").unwrap_or(marks);
    let narrowest = length("narrowest strip").unwrap_or(narrowest);
    let sheets_at_once =
        keys.get("sheets at once").and_then(|node| desk.count(node, 1, 100));
    let sheets_at_once = sheets_at_once.unwrap_or(1);
    ToolKind::Trimmer(Trimmer { longest_cut, sheets_at_once, marks, narrowest, kind })
}

fn punch(desk: &mut Desk<'_>, keys: &Keys<'_>) -> Option<ToolKind> {
    let mut width = |name| {
        let node = keys.get(name)?;
        desk.length_and_way(node).map(|(length, _)| length)
    };
    let (reach, takes_strips) = (width("reach"), width("takes strips"));
    let node = desk.need(keys, "outline")?;
    let (text, _) = desk.raw(node)?;
    let outline = outline(desk, text, node.site)?;
    if MOST_OUTLINE < outline.size.long() {
        desk.fault(
            &rules::OUT_OF_RANGE,
            node.site,
            format!("no punch cuts out more than {}", MOST_OUTLINE.show(desk.shown())),
            "look for a wrong unit or a missing sign",
        );
        return None;
    }
    Some(ToolKind::Punch(Punch { outline, reach, takes_strips }))
}

/// A shape and its size: `rounded 2 x 1 in`, `circle 1 in`.
fn outline(desk: &mut Desk<'_>, text: &str, site: Site) -> Option<Outline> {
    let (word, rest) = text.split_once(' ').unwrap_or((text, ""));
    let known = SHAPES.iter().find(|(name, _)| *name == word);
    let Some((_, shape)) = known else {
        if word.starts_with(|it: char| it.is_alphabetic()) {
            let names = SHAPES.map(|it| it.0);
            let help = match desk.near(word, names.iter().copied()) {
                Some(name) => format!("did you mean `{name}`?"),
                None => format!("write {}", either(&names)),
            };
            let message = format!("{} is not a shape", quote(word));
            desk.fault(&rules::NOT_A_CHOICE, site, message, help);
            return None;
        }
        let size = desk.size_in(text, site)?;
        return Some(Outline { shape: Shape::Rectangle, size });
    };
    let round = *shape == Shape::Circle && !rest.contains(['x', '×']);
    if round {
        let across = desk.length_in(rest, site)?;
        if across == Length::ZERO {
            let help = "write how wide it is";
            desk.fault(&rules::ZERO_SIZE, site, "this circle has no width", help);
            return None;
        }
        return Some(Outline { shape: Shape::Circle, size: Size::new(across, across) });
    }
    Some(Outline { shape: *shape, size: desk.size_in(rest, site)? })
}

/// A time in minutes: `20 min`, `2 h`.
fn minutes(desk: &mut Desk<'_>, node: &Node) -> Option<u32> {
    let (text, _) = desk.raw(node)?;
    let (number, unit) = text.split_once(' ').unwrap_or((text, ""));
    let times = match unit.trim() {
        "min" | "mins" | "minute" | "minutes" => 1,
        "h" | "hour" | "hours" => 60,
        _ => {
            desk.fault(
                &rules::NOT_A_NUMBER,
                node.site,
                format!("{} is not a time", quote(text)),
                "write a number and `min` or `h`, such as `20 min`",
            );
            return None;
        }
    };
    Some(desk.count_in(number, node.site, 0, 10_000)? * times)
}

/// The tool that a node names, if it is of the right kind; `a` says which.
pub(crate) fn of_kind(
    desk: &mut Desk<'_>,
    node: &Node,
    draft: &Draft,
    a: &str,
    fits: impl Fn(&ToolKind) -> bool,
) -> Option<ToolId> {
    let index = desk.resolve(node, &draft.tool_names)?;
    if let Some(tool) = at(&draft.tools, index)
        && !fits(&tool.kind)
    {
        let message = format!("{} is not {a}", quote(&tool.name.words));
        let note = Diagnostic::new(&rules::NOT_A_CHOICE, node.site, message)
            .label(tool.name.site, "it is described here")
            .help(format!("name {a}"));
        desk.note(note);
        return None;
    }
    Some(ToolId(index))
}
