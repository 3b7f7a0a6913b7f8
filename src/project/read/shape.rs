//! The shape of a description: sets of keys, lists, and names that users make up.

use std::collections::BTreeMap;

use crate::diag::{Diagnostic, rules};
use crate::project::Text;
use crate::project::keys::{self, Group};
use crate::project::read::desk::{Desk, either, quote};
use crate::project::tree::{Entry, Node, Value};
use crate::source::Site;

/// Words that are likely to be tried for keys: in which group, which, for which.
const OTHER_WORDS: [(&str, &str, &str); 16] = [
    ("tool", "shape", "outline"),
    ("project", "variants", "use"),
    ("card", "cautions", "tips"),
    ("late cut", "third", "thirds"),
    ("late cut", "into thirds", "thirds"),
    ("paper", "size", "sheet"),
    ("paper", "sides", "faces"),
    ("base", "size", "front"),
    ("layer", "face", "showing"),
    ("layer", "side", "showing"),
    ("layer", "layer", "piece"),
    ("layer", "gaps", "across"),
    ("layer", "glue", "with"),
    ("greeting", "paper", "of"),
    ("piece", "paper", "of"),
    ("label", "size", "cut"),
];

/// The keys of one thing, each known and given once.
pub(crate) struct Keys<'n> {
    /// What it is a thing of.
    pub(crate) group: &'static Group,
    /// Where the thing is named, or begins.
    pub(crate) site: Site,
    found: Vec<(&'static str, &'n Entry)>,
    /// Keys that were meant, but misspelt.
    misspelt: Vec<&'static str>,
    /// It has no keys at all, but something else.
    shapeless: bool,
}

impl<'n> Keys<'n> {
    /// The value of a key.
    pub(crate) fn get(&self, name: &'static str) -> Option<&'n Node> {
        self.entry(name).map(|entry| &entry.value)
    }

    /// A key with its value.
    pub(crate) fn entry(&self, name: &'static str) -> Option<&'n Entry> {
        debug_assert!(self.group.find(name).is_some(), "`{name}` is not in the table");
        self.found.iter().find(|(it, _)| *it == name).map(|(_, entry)| *entry)
    }

    /// Whether a key was meant, but misspelt.
    pub(crate) fn means(&self, name: &'static str) -> bool {
        self.shapeless || self.misspelt.contains(&name)
    }

    /// The keys that were given, in the order of the text.
    pub(crate) fn given(&self) -> impl Iterator<Item = (&'static str, &'n Entry)> {
        self.found.iter().copied()
    }
}

impl Desk<'_> {
    /// Opens a node as the keys of a group; `site` is where the thing is named.
    pub(crate) fn open<'n>(
        &mut self,
        node: &'n Node,
        site: Site,
        group: &str,
    ) -> Keys<'n> {
        let group = keys::group(group);
        let mut found: Vec<(&'static str, &'n Entry)> = Vec::new();
        let mut misspelt = Vec::new();
        let mut shapeless = false;
        let entries: &[Entry] = match &node.value {
            Value::Keys(entries) => entries,
            Value::Nothing { hidden: false } => &[],
            Value::Nothing { hidden: true } => {
                self.nothing(node);
                &[]
            }
            Value::Words { .. } | Value::List(_) => {
                let message = format!("{} has keys of its own", group.a);
                let first = group.keys.first().map_or("", |key| key.name);
                let needed = group.keys.iter().filter(|it| it.default == "needed");
                let needed: Vec<_> =
                    needed.map(|it| format!("{}: {}", it.name, it.example)).collect();
                let help = match (group.name, needed.is_empty()) {
                    ("project", _) => "start with a line `title: …`".to_owned(),
                    ("inside", _) => {
                        "write `{words: …}`, or `{choose: when the card is sent}`"
                            .to_owned()
                    }
                    (_, true) => format!("write `{{{first}: …}}`, or indented lines"),
                    (_, false) => {
                        format!("write `{{{}}}`, for instance", needed.join(", "))
                    }
                };
                self.fault(&rules::WRONG_SHAPE, node.site, message, help);
                shapeless = true;
                &[]
            }
        };
        for (index, entry) in entries.iter().enumerate() {
            let Some(key) = group.find(entry.key.trim()) else {
                let before = index.checked_sub(1).and_then(|it| entries.get(it));
                misspelt.extend(self.unknown_key(group, entry, before));
                continue;
            };
            if let Some((_, first)) = found.iter().find(|(name, _)| *name == key.name) {
                let note = twice(entry, first.site);
                self.note(note);
                continue;
            }
            found.push((key.name, entry));
        }
        Keys { group, site, found, misspelt, shapeless }
    }

    /// The value of a key that must be given.
    pub(crate) fn need<'n>(
        &mut self,
        keys: &Keys<'n>,
        name: &'static str,
    ) -> Option<&'n Node> {
        let value = keys.get(name);
        if value.is_none() {
            self.missing(keys, name);
        }
        value
    }

    /// Notes that a key is missing, unless it was misspelt.
    pub(crate) fn missing(&mut self, keys: &Keys<'_>, name: &'static str) {
        if keys.means(name) {
            return;
        }
        let example = keys.group.find(name).map_or("…", |key| key.example);
        let message = format!("{} needs `{name}`", keys.group.a);
        let help = format!("write `{name}: {example}`, for instance");
        self.fault(&rules::MISSING_KEY, keys.site, message, help);
    }

    /// Notes two keys that rule each other out, and says whether both are there.
    pub(crate) fn either_key(
        &mut self,
        keys: &Keys<'_>,
        a: &'static str,
        b: &'static str,
    ) {
        if let (Some(first), Some(second)) = (keys.entry(a), keys.entry(b)) {
            self.note(
                Diagnostic::new(
                    &rules::ONE_OR_THE_OTHER,
                    second.site,
                    format!("`{a}` and `{b}` rule each other out"),
                )
                .label(first.site, "the other one")
                .help("keep the one that is meant"),
            );
        }
    }

    /// Notes an unknown key; gives the one that is likely meant.
    fn unknown_key(
        &mut self,
        group: &'static Group,
        entry: &Entry,
        before: Option<&Entry>,
    ) -> Option<&'static str> {
        let written = entry.key.trim();
        if entry.bare {
            self.fault(
                &rules::COMMA_IN_BRACES,
                entry.site,
                format!(
                    "{} is read as a key of its own, since a comma stands before it",
                    quote(written)
                ),
                match written {
                    "center" | "centre" => "write `across: center`, `up: center` or both",
                    _ if written.starts_with(|it: char| it.is_ascii_digit()) => {
                        "write decimals with a point"
                    }
                    _ => "put the words in quotes, or on a line of their own",
                },
            );
            return None;
        }
        let names = || group.keys.iter().map(|key| key.name);
        let homes: Vec<_> = keys::homes(written).map(|home| home.a).take(3).collect();
        let other = OTHER_WORDS.iter().find(|it| it.0 == group.name && it.1 == written);
        let near = || self.near(written, names()).filter(|_| homes.is_empty());
        let meant = other.map(|it| it.2).or_else(near);
        let help = match meant {
            Some(name) if other.is_some() => {
                let example = group.find(name).map_or("…", |key| key.example);
                format!("write `{name}: {example}`, for instance")
            }
            Some(name) => format!("did you mean `{name}`?"),
            None if !homes.is_empty() && self.stands_in_braces(entry.site) => {
                format!("it is a key of {}, not of {}", homes.join(", of "), group.a)
            }
            None if !homes.is_empty() => format!(
                "it is a key of {}: is the line indented too far or too little?",
                homes.join(", of ")
            ),
            None if written == "<<" => {
                "write the keys out, or say `like`, where a key of that name is known"
                    .to_owned()
            }
            None => match before {
                Some(before) if matches!(before.value.value, Value::Nothing { .. }) => {
                    format!(
                        "indent the line if it belongs to {}",
                        quote(before.key.trim())
                    )
                }
                _ => {
                    let names: Vec<_> = names().collect();
                    format!("{} has {}", group.a, either(&names).replace(" or ", " and "))
                }
            },
        };
        let message = format!("{} has no key {}", group.a, quote(written));
        self.fault(&rules::UNKNOWN_KEY, entry.site, message, help);
        meant
    }

    /// Whether a brace is opened before a place on its line.
    fn stands_in_braces(&self, site: Site) -> bool {
        let text = self.sources.of(site).map_or("", |it| it.text.as_str());
        let before = text.get(..site.start as usize).unwrap_or_default();
        before.rsplit('\n').next().is_some_and(|line| line.contains('{'))
    }

    /// The rows of a list.
    pub(crate) fn list<'n>(&mut self, node: &'n Node) -> &'n [Node] {
        match &node.value {
            Value::List(rows) => return rows,
            Value::Nothing { .. } => self.nothing(node),
            Value::Words { .. } | Value::Keys(_) => self.fault(
                &rules::WRONG_SHAPE,
                node.site,
                "a list belongs here",
                "start each row with a dash, on lines of their own",
            ),
        }
        &[]
    }

    /// The rows of a list, or the one value that stands for a list.
    pub(crate) fn one_or_more<'n>(&mut self, node: &'n Node) -> &'n [Node] {
        match node.value {
            Value::Words { .. } => std::slice::from_ref(node),
            _ => self.list(node),
        }
    }

    /// Words, or a list of them.
    pub(crate) fn all_words(&mut self, node: Option<&Node>) -> Vec<Text> {
        let rows = node.map_or(&[][..], |node| self.one_or_more(node));
        rows.iter().filter_map(|row| self.words(row)).collect()
    }

    /// The things under names that the user made up, each name once.
    pub(crate) fn named<'n>(
        &mut self,
        node: Option<&'n Node>,
        what: &'static str,
    ) -> (Names, Vec<&'n Entry>) {
        let mut names = Names::new(what);
        let mut things = Vec::new();
        let Some(node) = node else { return (names, things) };
        let entries: &[Entry] = match &node.value {
            Value::Keys(entries) => entries,
            Value::Nothing { .. } => {
                self.nothing(node);
                &[]
            }
            Value::Words { .. } | Value::List(_) => {
                self.fault(
                    &rules::WRONG_SHAPE,
                    node.site,
                    format!("each {what} has a name here, with a colon after it"),
                    "write `name: {…}` on lines of their own, without dashes",
                );
                &[]
            }
        };
        for entry in entries {
            if self.is_stray_section(entry, what) {
                continue;
            }
            match names.add(entry.key.trim(), entry.site) {
                None => things.push(entry),
                Some(first) => {
                    let note = twice(entry, first);
                    self.note(note);
                }
            }
        }
        (names, things)
    }

    /// Notes a section of the description that is indented as if it were a thing
    /// of the section before it.
    fn is_stray_section(&mut self, entry: &Entry, what: &str) -> bool {
        let Value::Keys(inner) = &entry.value.value else { return false };
        let section = keys::group("project").find(entry.key.trim()).is_some();
        let known = keys::GROUPS.iter().find(|group| group.name == what);
        let own =
            |it: &Entry| known.is_none_or(|group| group.find(it.key.trim()).is_some());
        if !section || inner.is_empty() || inner.iter().any(own) {
            return false;
        }
        self.fault(
            &rules::WRONG_INDENT,
            entry.site,
            format!("{} is indented as if it were a {what}", quote(entry.key.trim())),
            "start the line in the first column",
        );
        true
    }

    /// The index of the thing that a node names.
    pub(crate) fn resolve(&mut self, node: &Node, names: &Names) -> Option<usize> {
        let (name, _) = self.raw(node)?;
        let found = names.find(name);
        if found.is_none() {
            self.unknown_name(name, node.site, names.what, &[names]);
        }
        found
    }

    /// Notes a name that nothing has.
    pub(crate) fn unknown_name(
        &mut self,
        name: &str,
        site: Site,
        what: &str,
        known: &[&Names],
    ) {
        let message = format!("there is no {what} called {}", quote(name));
        let all =
            || known.iter().flat_map(|it| it.list.iter().map(|(it, _)| it.as_str()));
        let help = match self.near(name, all()) {
            Some(name) => format!("did you mean `{name}`?"),
            None if all().next().is_none() => format!("describe a {what} first"),
            None => {
                let names: Vec<_> = all().take(8).collect();
                format!("write {}", either(&names))
            }
        };
        self.fault(&rules::UNKNOWN_NAME, site, message, help);
    }
}

/// The note for a key or name that is given a second time.
pub(crate) fn twice(entry: &Entry, first: Site) -> Diagnostic {
    let message = format!("{} is given twice", quote(entry.key.trim()));
    Diagnostic::new(&rules::DUPLICATE_KEY, entry.site, message)
        .label(first, "first here")
        .help("remove one of them, or rename it")
}

/// Names that the user made up, with where they stand.
#[derive(Debug, Default)]
pub(crate) struct Names {
    /// What they are names of: `paper`.
    pub(crate) what: &'static str,
    /// In the order of the description.
    pub(crate) list: Vec<(String, Site)>,
    by_name: BTreeMap<String, usize>,
}

impl Names {
    pub(crate) fn new(what: &'static str) -> Self {
        Self { what, ..Self::default() }
    }

    /// Adds a name, or gives the place where it was added before.
    pub(crate) fn add(&mut self, name: &str, site: Site) -> Option<Site> {
        if let Some(first) = self.by_name.get(name) {
            return Some(self.list[*first].1);
        }
        self.by_name.insert(name.to_owned(), self.list.len());
        self.list.push((name.to_owned(), site));
        None
    }

    pub(crate) fn find(&self, name: &str) -> Option<usize> {
        self.by_name.get(name).copied()
    }
}

/// The name of an entry as words of the model.
pub(crate) fn name_of(entry: &Entry) -> Text {
    Text { words: entry.key.trim().to_owned(), site: entry.site, ..Text::default() }
}
