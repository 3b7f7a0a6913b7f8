//! Greetings: words on labels.

use crate::diag::{Diagnostic, rules};
use crate::geom::{Shape, Size};
use crate::project::read::desk::{Desk, quote};
use crate::project::read::draft::{Draft, at};
use crate::project::read::mats::{self, Pass, RawMat};
use crate::project::read::shape::name_of;
use crate::project::read::tools::{SHAPES, of_kind};
use crate::project::tree::{Entry, Node, Value};
use crate::project::{Greeting, Label, Outline, PaperId, Text, ToolId, ToolKind};

/// The most greetings that are read.
const MOST: usize = 1000;

/// A greeting as it is described, before others are looked at.
struct Raw<'n> {
    entry: &'n Entry,
    words: Option<Text>,
    stamped: Option<Size>,
    stamps: Option<ToolId>,
    ink: Option<ToolId>,
    label: Option<Label>,
    of: Option<PaperId>,
    narrowed: Option<Option<Pass>>,
    mat: Option<Option<RawMat>>,
    like: Option<usize>,
    /// Something in it is at fault, and noted.
    noted: bool,
}

/// Reads every greeting; the papers and tools must have been read.
pub(crate) fn read(desk: &mut Desk<'_>, node: Option<&Node>, draft: &mut Draft) {
    let (names, mut entries) = desk.named(node, "greeting");
    draft.greeting_names = names;
    if MOST < entries.len() {
        let message = format!("there are more than {MOST} greetings");
        let help = "split the project in two";
        desk.fault(&rules::OUT_OF_RANGE, entries[MOST].site, message, help);
        entries.truncate(MOST);
    }
    let raws: Vec<Raw<'_>> =
        entries.iter().map(|entry| raw(desk, entry, draft)).collect();
    let any_noted = raws.iter().any(|raw| raw.noted);
    let greetings = (0..raws.len()).map(|index| settle(desk, &raws, index, any_noted));
    draft.greetings = greetings.collect();
}

fn raw<'n>(desk: &mut Desk<'_>, entry: &'n Entry, draft: &Draft) -> Raw<'n> {
    let before = desk.notes.len();
    let keys = desk.open(&entry.value, entry.site, "greeting");
    let words = keys.get("words").and_then(|node| desk.told(node));
    let stamped = keys.get("stamped").and_then(|node| desk.size(node));
    let stamps = keys.get("stamps").and_then(|node| {
        of_kind(desk, node, draft, "a stamp set", |kind| *kind == ToolKind::StampSet)
    });
    let ink = keys.get("ink").and_then(|node| ink(desk, node, draft));
    let label = keys.get("label").and_then(|node| label(desk, node, draft));
    let of = keys.get("of").and_then(|node| desk.resolve(node, &draft.paper_names));
    let narrowed = keys.get("narrowed").map(|node| mats::pass(desk, node));
    let mat = keys.get("mat").map(|node| mats::raw(desk, node, draft));
    let like =
        keys.get("like").and_then(|node| desk.resolve(node, &draft.greeting_names));
    let noted = before < desk.notes.len();
    let of = of.map(PaperId);
    Raw { entry, words, stamped, stamps, ink, label, of, narrowed, mat, like, noted }
}

/// An ink pad, or a pen to write with.
pub(crate) fn ink(desk: &mut Desk<'_>, node: &Node, draft: &Draft) -> Option<ToolId> {
    of_kind(desk, node, draft, "an ink pad or a pen", |kind| {
        matches!(kind, ToolKind::InkPad | ToolKind::Pen)
    })
}

fn label(desk: &mut Desk<'_>, node: &Node, draft: &Draft) -> Option<Label> {
    let site = node.site;
    if !matches!(node.value, Value::Keys(_)) {
        let punch = of_kind(desk, node, draft, "a punch", |kind| {
            matches!(kind, ToolKind::Punch(_))
        })?;
        let ToolKind::Punch(made) = at(&draft.tools, punch.0)?.kind else { return None };
        return Some(Label { outline: made.outline, punch: Some(punch), site });
    }
    if let Value::Keys(entries) = &node.value
        && let Some(entry) = entries.iter().find(|it| {
            matches!(it.key.as_str(), "punch" | "punched" | "punched with" | "with")
        })
    {
        let punch = desk.raw(&entry.value).map_or("", |it| it.0).to_owned();
        let message = format!("a label has no key {}", quote(&entry.key));
        let help =
            format!("a label that is punched is just named: write `label: {punch}`");
        desk.fault(&rules::UNKNOWN_KEY, entry.site, message, help);
        return None;
    }
    let keys = desk.open(node, node.site, "label");
    let shape =
        keys.get("shape").and_then(|node| desk.one_of(node, &SHAPES.map(|it| it.0)));
    let shape = shape.map_or(Shape::Rectangle, |index| SHAPES[index].1);
    let size = desk.need(&keys, "cut").and_then(|node| desk.size(node))?;
    Some(Label { outline: Outline { shape, size }, punch: None, site })
}

/// Looks up in other greetings what a greeting doesn't say itself.
fn settle(
    desk: &mut Desk<'_>,
    raws: &[Raw<'_>],
    index: usize,
    any_noted: bool,
) -> Option<Greeting> {
    let raw = &raws[index];
    let mut chain = vec![raw];
    let (mut at, mut least) = (index, index);
    while let Some(like) = raws[at].like.filter(|like| *like < raws.len()) {
        (at, least) = (like, least.min(like));
        if at == index {
            if least == index {
                let message =
                    format!("{} is like itself, by way of others", quote(&raw.entry.key));
                desk.note(
                    Diagnostic::new(&rules::GOES_IN_A_CIRCLE, raw.entry.site, message)
                        .help("describe one of them without `like`"),
                );
            }
            return None;
        }
        if raws.len() < chain.len() {
            return None;
        }
        chain.push(&raws[at]);
    }
    let words = chain.iter().find_map(|it| it.words.clone());
    let label = chain.iter().find_map(|it| it.label);
    let of = chain.iter().find_map(|it| it.of);
    let (Some(words), Some(label), Some(of)) = (&words, label, of) else {
        // What is missing may be what was noted, here or further along.
        if !any_noted {
            let missing = [
                ("words", words.is_none()),
                ("label", label.is_none()),
                ("of", of.is_none()),
            ];
            for (name, _) in missing.iter().filter(|it| it.1) {
                desk.fault(
                    &rules::MISSING_KEY,
                    raw.entry.site,
                    format!("a greeting needs `{name}`"),
                    format!("write `{name}:` in it, or in the one it is like"),
                );
            }
        }
        return None;
    };
    // What was noted where it stands is not noted again here.
    let pass = chain.iter().find_map(|it| it.narrowed.clone()).flatten();
    let (label, narrowed) = mats::narrow(desk, label, pass)?;
    let mat = chain.iter().find_map(|it| it.mat.clone()).flatten();
    let mat = mat.and_then(|mat| mats::settle(desk, &mat, label.outline));
    Some(Greeting {
        name: name_of(raw.entry),
        words: words.clone(),
        stamped: chain.iter().find_map(|it| it.stamped),
        stamps: chain.iter().find_map(|it| it.stamps),
        ink: chain.iter().find_map(|it| it.ink),
        label,
        of,
        narrowed,
        mat,
    })
}
