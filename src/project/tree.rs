//! The text of a description as one ordered tree of nodes that know their place.
//!
//! The only file that knows the YAML library. Nothing is interpreted here: a
//! plain scalar stays as it was typed (`yes`, `1/2`, `2026`, `4.10`), and keys
//! that are given twice both stay in the tree.

use std::collections::BTreeMap;

use serde_yaml::granit_parser::{
    Event, Marker, Options, Parser, ScalarStyle, Span, StructureStyle,
};

use crate::diag::{Diagnostic, rules};
use crate::project::syntax;
use crate::source::{Site, Source};

/// The most bytes that a description may have.
pub(super) const MOST_BYTES: usize = 4 << 20;
/// The most nodes, repeated ones counted each time.
const MOST_NODES: usize = 500_000;
/// The most rows of one list, and the most keys that stand together.
const MOST_ROWS: usize = 20_000;
/// The most levels of lists and keys within each other.
const MOST_LEVELS: usize = 64;

/// A value of the description.
#[derive(Clone, Debug)]
pub(super) struct Node {
    /// What it holds.
    pub(super) value: Value,
    /// Its first line, or the words.
    pub(super) site: Site,
}

/// What a node holds.
#[derive(Clone, Debug)]
pub(super) enum Value {
    /// Words, as typed; plain if they have no quotes.
    Words { text: String, plain: bool },
    /// Nothing; `hidden` if a `#` right after the key made it a remark.
    Nothing { hidden: bool },
    /// A list.
    List(Vec<Node>),
    /// Keys with their values, in the order of the text.
    Keys(Vec<Entry>),
}

/// A key with its value.
#[derive(Clone, Debug)]
pub(super) struct Entry {
    /// The key.
    pub(super) key: String,
    /// Where the key stands.
    pub(super) site: Site,
    /// What it is given.
    pub(super) value: Node,
    /// It stands between braces without a colon, as after a stray comma.
    pub(super) bare: bool,
}

/// A tree, and what kept it from growing further.
pub(super) struct Grown {
    /// All that was read, up to the fault.
    pub(super) root: Node,
    /// The first place where the text is no YAML, or a limit that it breaks.
    pub(super) fault: Option<Box<Diagnostic>>,
}

/// Reads the text of a file into a tree.
pub(super) fn grow(source: &Source, file: u16) -> Grown {
    let text = source.text.as_str();
    let site = Site { file, start: 0, end: 0 };
    let nothing = Node { value: Value::Nothing { hidden: false }, site };
    if MOST_BYTES < text.len() {
        let fault =
            Diagnostic::new(&rules::TOO_LARGE, site, "the file is larger than 4 MiB")
                .help("split the project in two");
        return Grown { root: nothing, fault: Some(Box::new(fault)) };
    }
    let mut options = Options::default();
    options.flow_nesting_limit = MOST_LEVELS;
    options.block_nesting_limit = MOST_LEVELS;
    options.emit_unresolved_aliases = true;
    let mut parser = Parser::new_from_str_with_options(text, options);
    let mut grower = Grower {
        text,
        file,
        open: Vec::new(),
        root: None,
        named: BTreeMap::new(),
        nodes: 0,
    };
    let mut fault = None;
    while let (Some(event), None) = (parser.next_event(), &fault) {
        fault = match event {
            Ok((event, span)) => grower.take(event, span).err(),
            Err(error) => {
                let bracket = grower.open.last().filter(|it| it.braces).map(|it| it.site);
                Some(Box::new(syntax::explain(&error, text, file, bracket)))
            }
        };
    }
    // What is still open ends here; limits no longer matter.
    while !grower.open.is_empty() {
        let _ = grower.end(site);
    }
    Grown { root: grower.root.unwrap_or(nothing), fault }
}

/// A list or a set of keys that is still being read.
struct Open {
    holds: Holds,
    site: Site,
    anchor: usize,
    nodes_before: usize,
    levels: usize,
    braces: bool,
}

enum Holds {
    List(Vec<Node>),
    Keys(Vec<Entry>, Option<(String, Site)>),
}

/// What an anchor names: the node, how many nodes it has, how deep it goes.
struct Named {
    node: Node,
    nodes: usize,
    levels: usize,
}

struct Grower<'a> {
    text: &'a str,
    file: u16,
    open: Vec<Open>,
    root: Option<Node>,
    named: BTreeMap<usize, Named>,
    nodes: usize,
}

impl Grower<'_> {
    fn take(&mut self, event: Event<'_>, span: Span) -> Result<(), Box<Diagnostic>> {
        let site = self.site(span);
        match event {
            Event::DocumentStart(..) if self.root.is_some() => Err(self.fault(
                &rules::BROKEN_LINE,
                site,
                "a second description starts here",
                "keep one description in a file, and remove the line `---`",
            )),
            Event::Scalar(text, style, anchor, _) => {
                self.count(1, site)?;
                let plain = style == ScalarStyle::Plain;
                let value = if plain && matches!(&*text, "" | "~") {
                    Value::Nothing { hidden: false }
                } else {
                    Value::Words { text: text.into_owned(), plain }
                };
                self.place(Node { value, site }, anchor, 1, 0)
            }
            Event::SequenceStart(style, anchor, _) => {
                self.start(Holds::List(Vec::new()), style, anchor, site)
            }
            Event::MappingStart(style, anchor, _) => {
                self.start(Holds::Keys(Vec::new(), None), style, anchor, site)
            }
            Event::SequenceEnd | Event::MappingEnd => self.end(site),
            Event::Alias(anchor) => {
                let Some(named) = self.named.get(&anchor) else {
                    return Err(self.fault(
                        &rules::BAD_ALIAS,
                        site,
                        "this stands inside the very thing that it repeats",
                        "write it out instead",
                    ));
                };
                let (nodes, levels) = (named.nodes, named.levels);
                self.count(nodes, site)?;
                if MOST_LEVELS < self.open.len() + levels {
                    return Err(self.too_deep(site));
                }
                let node = self.named[&anchor].node.clone();
                self.place(node, 0, nodes, levels)
            }
            Event::UnresolvedAlias(name) => Err(self.fault(
                &rules::BAD_ALIAS,
                site,
                &format!("nothing before this is marked `&{name}`"),
                "put words that start with `*` in quotes",
            )),
            _ => Ok(()),
        }
    }

    fn start(
        &mut self,
        holds: Holds,
        style: StructureStyle,
        anchor: usize,
        site: Site,
    ) -> Result<(), Box<Diagnostic>> {
        if MOST_LEVELS <= self.open.len() {
            return Err(self.too_deep(site));
        }
        let nodes_before = self.nodes;
        self.count(1, site)?;
        let braces = style == StructureStyle::Flow;
        self.open.push(Open { holds, site, anchor, nodes_before, levels: 0, braces });
        Ok(())
    }

    fn end(&mut self, site: Site) -> Result<(), Box<Diagnostic>> {
        let Some(open) = self.open.pop() else { return Ok(()) };
        let value = match open.holds {
            Holds::List(nodes) => Value::List(nodes),
            Holds::Keys(entries, _) => Value::Keys(entries),
        };
        let mut place = open.site;
        if open.braces && place.start < site.end {
            place.end = site.end;
        }
        let nodes = self.nodes - open.nodes_before;
        self.place(Node { value, site: place }, open.anchor, nodes, open.levels + 1)
    }

    /// Puts a finished node where it belongs.
    fn place(
        &mut self,
        node: Node,
        anchor: usize,
        nodes: usize,
        levels: usize,
    ) -> Result<(), Box<Diagnostic>> {
        if anchor != 0 {
            // What an anchor keeps is a copy, and so counts.
            self.count(nodes, node.site)?;
            self.named.insert(anchor, Named { node: node.clone(), nodes, levels });
        }
        let (text, file) = (self.text, self.file);
        let Some(open) = self.open.last_mut() else {
            self.root = Some(node);
            return Ok(());
        };
        open.levels = open.levels.max(levels);
        let rows = match &open.holds {
            Holds::List(nodes) => nodes.len(),
            Holds::Keys(entries, _) => entries.len(),
        };
        if MOST_ROWS <= rows {
            let site = node.site;
            return Err(self.fault(
                &rules::TOO_LARGE,
                site,
                "a list or a set of keys has more than 20 000 rows",
                "look for rows that were pasted too often; a card may have a `count`",
            ));
        }
        match &mut open.holds {
            Holds::List(nodes) => nodes.push(node),
            Holds::Keys(entries, waiting) => match waiting.take() {
                None => match node.value {
                    Value::Words { text, .. } => *waiting = Some((text, node.site)),
                    _ => {
                        let site = node.site;
                        return Err(self.fault(
                            &rules::BROKEN_LINE,
                            site,
                            "a key must be a word or some words",
                            "write a word before the colon",
                        ));
                    }
                },
                Some((key, site)) => {
                    let mut value = node;
                    let after = text.get(site.end as usize..).unwrap_or_default();
                    let after = after.trim_start_matches(['"', '\'']).trim_start();
                    let nothing = matches!(value.value, Value::Nothing { .. });
                    let bare = open.braces && nothing && !after.starts_with(':');
                    if nothing {
                        value.site = Site { file, ..site };
                        value.value = Value::Nothing { hidden: hidden(after) };
                    }
                    entries.push(Entry { key, site, value, bare });
                }
            },
        }
        Ok(())
    }

    fn count(&mut self, nodes: usize, site: Site) -> Result<(), Box<Diagnostic>> {
        self.nodes = self.nodes.saturating_add(nodes);
        if self.nodes <= MOST_NODES {
            return Ok(());
        }
        Err(self.fault(
            &rules::TOO_LARGE,
            site,
            "the description has more than 500 000 values",
            "split the project in two",
        ))
    }

    fn too_deep(&self, site: Site) -> Box<Diagnostic> {
        self.fault(
            &rules::TOO_LARGE,
            site,
            "lists and keys are nested more than 64 levels deep here",
            "look for a bracket that is opened too often",
        )
    }

    fn fault(
        &self,
        rule: &'static crate::diag::Rule,
        site: Site,
        message: &str,
        help: &str,
    ) -> Box<Diagnostic> {
        Box::new(Diagnostic::new(rule, site, message).help(help))
    }

    fn site(&self, span: Span) -> Site {
        Site {
            file: self.file,
            start: byte(self.text, &span.start),
            end: byte(self.text, &span.end),
        }
    }
}

/// Whether what follows a key is a remark that looks like a value.
fn hidden(after_key: &str) -> bool {
    let line = after_key.lines().next().unwrap_or_default();
    let Some(value) = line.strip_prefix(':') else { return false };
    let mut signs = value.trim_start().chars();
    signs.next() == Some('#') && signs.next().is_some_and(|it| !it.is_whitespace())
}

/// The byte that a marker of the parser points at.
pub(super) fn byte(text: &str, marker: &Marker) -> u32 {
    let byte = marker.byte_offset().unwrap_or(text.len()).min(text.len());
    u32::try_from(byte).unwrap_or(u32::MAX)
}
