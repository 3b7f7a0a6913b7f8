//! Files that several descriptions share: one's own papers, bases and tools.
//!
//! `use: my-supplies.yaml` takes over what the description names, and of the tools
//! that nobody needs to name (a trimmer, glue, a folder …) the first of each kind.
//! A thing of the same name in the description itself comes before a shared one.

use std::collections::BTreeSet;
use std::path::Path;

use crate::diag::{Diagnostic, rules};
use crate::geom::Unit;
use crate::project::read::desk::{Desk, quote};
use crate::project::read::tools;
use crate::project::tree::{self, Entry, Grown, Node, Value};
use crate::source::{Folder, Site, Source, Sources};

/// The most files that one description uses, by way of others too.
const MOST: usize = 16;
/// What a file may share.
const SECTIONS: [&str; 3] = ["papers", "bases", "tools"];
/// Tools that are used without being named.
const UNNAMED: [&str; 11] = [
    "sliding trimmer",
    "lever trimmer",
    "rotary trimmer",
    "scoring tool",
    "folder",
    "glue",
    "tape",
    "foam squares",
    "pen",
    "scissors",
    "knife",
];

/// The trees of the files that a description uses, in the order of their sites.
#[derive(Default)]
pub(crate) struct Shared {
    /// Each with where it is named.
    pub(crate) trees: Vec<(Node, Site)>,
    /// What is wrong with the files themselves.
    pub(crate) notes: Vec<Diagnostic>,
}

/// Opens every file that a description uses.
pub(crate) fn open(sources: &mut Sources, folder: &dyn Folder, root: &Node) -> Shared {
    let mut shared = Shared::default();
    let mut names: Vec<String> = Vec::new();
    follow(sources, folder, root, &mut Vec::new(), &mut names, &mut shared);
    shared
}

/// Opens what a tree uses; `chain` are the files that led to it.
fn follow(
    sources: &mut Sources,
    folder: &dyn Folder,
    root: &Node,
    chain: &mut Vec<String>,
    names: &mut Vec<String>,
    shared: &mut Shared,
) {
    for (path, site) in used(root) {
        let fault = |message: String, help: &str| {
            Diagnostic::new(&rules::FILE_NOT_THERE, site, message).help(help)
        };
        if chain.contains(&path) {
            let message = format!("{} uses itself, by way of others", quote(&path));
            shared.notes.push(
                Diagnostic::new(&rules::GOES_IN_A_CIRCLE, site, message)
                    .help("leave `use` out of one of them"),
            );
            continue;
        }
        if names.contains(&path) {
            continue;
        }
        if MOST <= names.len() {
            let message = format!("more than {MOST} files are used");
            shared.notes.push(fault(message, "put the supplies into fewer files"));
            return;
        }
        let bytes = match folder.bytes(Path::new(&path)) {
            Ok(bytes) => bytes,
            Err(why) => {
                let help = "name a file in the folder of the description, or below it";
                shared.notes.push(fault(why, help));
                continue;
            }
        };
        let Ok(text) = String::from_utf8(bytes) else {
            let message = format!("{} is not UTF-8 text", quote(&path));
            shared.notes.push(fault(message, "save it from a text editor as UTF-8"));
            continue;
        };
        names.push(path.clone());
        let main = sources.files.first().map_or("", |it| it.name.as_str());
        let name = Path::new(main).with_file_name(&path).display().to_string();
        let text = text.strip_prefix('\u{feff}').unwrap_or(&text);
        sources.files.push(Source::new(name, text));
        let index = sources.files.len() - 1;
        let file = u16::try_from(index).expect("no more than a few files are used");
        let Grown { root, fault } = tree::grow(&sources.files[index], file);
        shared.notes.extend(fault.map(|it| *it));
        chain.push(path);
        follow(sources, folder, &root, chain, names, shared);
        chain.pop();
        shared.trees.push((root, site));
    }
}

/// The files that a tree uses. What is no name of a file is noted when the key is
/// read.
fn used(root: &Node) -> Vec<(String, Site)> {
    let Some(node) = at(root, "use") else { return Vec::new() };
    let rows = match &node.value {
        Value::List(rows) => rows.as_slice(),
        _ => std::slice::from_ref(node),
    };
    let words = rows.iter().filter_map(|row| match &row.value {
        Value::Words { text, .. } => Some((text.trim().to_owned(), row.site)),
        _ => None,
    });
    words.filter(|(path, _)| !path.is_empty()).collect()
}

fn at<'n>(root: &'n Node, key: &str) -> Option<&'n Node> {
    let Value::Keys(entries) = &root.value else { return None };
    entries.iter().find(|it| it.key.trim() == key).map(|it| &it.value)
}

/// A description with what it takes over from the files that it uses.
pub(crate) fn joined(desk: &mut Desk<'_>, root: &Node, shared: &Shared) -> Node {
    let mut whole = root.clone();
    let Value::Keys(_) = &whole.value else { return whole };
    let mut offers: Vec<(usize, &Entry)> = Vec::new();
    for (tree, site) in &shared.trees {
        let start = Site { end: tree.site.start, ..tree.site };
        let keys = desk.open(tree, start, "supplies");
        if let Some(node) = keys.get("use") {
            let _ = desk.all_words(Some(node));
        }
        let unit = keys.get("unit").and_then(|node| unit(desk, node));
        desk.shared_units.push((tree.site.file, unit));
        for (section, name) in SECTIONS.into_iter().enumerate() {
            let Some(node) = keys.get(name) else { continue };
            match &node.value {
                Value::Keys(entries) => {
                    for entry in entries {
                        offer(desk, &mut offers, section, entry, *site);
                    }
                }
                _ => {
                    // Says what belongs there.
                    let _ = desk.named(Some(node), "paper");
                }
            }
        }
    }
    let own: Vec<BTreeSet<String>> = SECTIONS
        .into_iter()
        .map(|name| match at(root, name).map(|it| &it.value) {
            Some(Value::Keys(entries)) => {
                entries.iter().map(|it| it.key.trim().to_owned()).collect()
            }
            _ => BTreeSet::new(),
        })
        .collect();
    offers.retain(|(section, entry)| !own[*section].contains(entry.key.trim()));
    for (section, entry) in wanted(root, &offers) {
        add(&mut whole, SECTIONS[section], entry);
    }
    whole
}

/// What a bare number means.
pub(crate) fn unit(desk: &mut Desk<'_>, node: &Node) -> Option<Unit> {
    match desk.one_of(node, &["in", "mm"])? {
        0 => Some(Unit::Inch),
        _ => Some(Unit::Mm),
    }
}

/// Adds a thing to those that are offered, unless another file offers its name.
fn offer<'n>(
    desk: &mut Desk<'_>,
    offers: &mut Vec<(usize, &'n Entry)>,
    section: usize,
    entry: &'n Entry,
    used_at: Site,
) {
    let name = entry.key.trim();
    let first =
        offers.iter().find(|(other, it)| *other == section && it.key.trim() == name);
    let Some((_, first)) = first else {
        offers.push((section, entry));
        return;
    };
    let message = format!("{} is already the name of another thing here", quote(name));
    desk.note(
        Diagnostic::new(&rules::NAME_USED_TWICE, entry.site, message)
            .label(first.site, "first here")
            .label(used_at, "the file is used here")
            .help("rename one, or remove it"),
    );
}

/// The offers that a description names, those that these name, and of the tools
/// that are used unnamed the first of each kind.
fn wanted<'n>(root: &Node, offers: &[(usize, &'n Entry)]) -> Vec<(usize, &'n Entry)> {
    let mut named = BTreeSet::new();
    mentions(root, &mut named);
    let mut taken = vec![false; offers.len()];
    loop {
        let mut more = false;
        for (at, (_, entry)) in offers.iter().enumerate() {
            if !taken[at] && named.contains(entry.key.trim()) {
                (taken[at], more) = (true, true);
                mentions(&entry.value, &mut named);
            }
        }
        if !more {
            break;
        }
    }
    let mut kinds: BTreeSet<String> = BTreeSet::new();
    if let Some(Value::Keys(entries)) = at(root, "tools").map(|it| &it.value) {
        kinds.extend(entries.iter().filter_map(kind));
    }
    let chosen = offers.iter().zip(&taken).filter(|(_, taken)| **taken);
    kinds.extend(chosen.filter_map(|((_, entry), _)| kind(entry)));
    for ((section, entry), taken) in offers.iter().zip(&mut taken) {
        let Some(kind) = kind(entry).filter(|_| SECTIONS[*section] == "tools") else {
            continue;
        };
        let unnamed = UNNAMED.contains(&kind.as_str());
        let alike = |other: &String| {
            *other == kind || (other.ends_with("trimmer") && kind.ends_with("trimmer"))
        };
        if unnamed && !*taken && !kinds.iter().any(alike) {
            *taken = true;
            kinds.insert(kind);
        }
    }
    offers.iter().zip(taken).filter(|(_, taken)| *taken).map(|(it, _)| *it).collect()
}

fn kind(entry: &Entry) -> Option<String> {
    match &at(&entry.value, "kind")?.value {
        Value::Words { text, .. } => Some(tools::kind_called(text)),
        _ => None,
    }
}

/// Gathers every value that may be a name.
fn mentions(node: &Node, named: &mut BTreeSet<String>) {
    match &node.value {
        Value::Words { text, .. } => {
            named.insert(text.trim().to_owned());
        }
        Value::Nothing { .. } => {}
        Value::List(rows) => rows.iter().for_each(|row| mentions(row, named)),
        Value::Keys(entries) => {
            // The designer's own cutting names papers as keys.
            for entry in entries {
                if let Value::List(_) = entry.value.value {
                    named.insert(entry.key.trim().to_owned());
                }
                mentions(&entry.value, named);
            }
        }
    }
}

/// Adds an entry to a section of a description, which may not be there yet.
fn add(root: &mut Node, section: &str, entry: &Entry) {
    let Value::Keys(sections) = &mut root.value else { return };
    let found = sections.iter().position(|it| it.key.trim() == section);
    let index = found.unwrap_or_else(|| {
        let site = entry.site;
        let value = Node { value: Value::Keys(Vec::new()), site };
        let key = section.to_owned();
        sections.push(Entry { key, site, value, bare: false });
        sections.len() - 1
    });
    match &mut sections[index].value.value {
        Value::Keys(entries) => entries.push(entry.clone()),
        nothing @ Value::Nothing { hidden: false } => {
            *nothing = Value::Keys(vec![entry.clone()]);
        }
        _ => {}
    }
}
