//! The tree of tags as the file holds it: which children, in which order.

use super::content::Sequence;
use crate::page::Role;
use crate::page::TagId;
use crate::page::Tags;

/// A child of a tag.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Kid {
    /// Another tag.
    Tag(TagId),
    /// A sequence of marked content: its page and its id there.
    Content(usize, usize),
}

/// Children of every tag, in reading order.
pub(super) struct Tree {
    kids: Vec<Vec<Kid>>,
    /// The page that each tag starts on.
    pages: Vec<Option<usize>>,
}

impl Tree {
    /// Orders children by where their content stands; tags without any content are
    /// left out, but for cells of rows that have some.
    pub(super) fn of(tags: &Tags, sequences: &[Vec<Sequence>]) -> Self {
        let count = tags.count();
        // Each child with the number of its first sequence in the whole document.
        let mut placed: Vec<Vec<(usize, Kid)>> = vec![Vec::new(); count];
        let mut first = vec![usize::MAX; count];
        let mut pages = vec![None; count];
        let all = sequences.iter().enumerate().flat_map(|(page, on_page)| {
            on_page.iter().enumerate().map(move |(id, it)| (it.rank, page, id, it.tag))
        });
        let mut all: Vec<_> = all.collect();
        all.sort_by_key(|it| it.0);
        for (number, (_, page, id, tag)) in all.into_iter().enumerate() {
            let at = tag.index();
            placed[at].push((number, Kid::Content(page, id)));
            first[at] = first[at].min(number);
            pages[at].get_or_insert(page);
        }
        // Parents come before their children, so backwards each subtree is known.
        let parents: Vec<_> = tags.all().map(|(_, tag)| tag.parent.index()).collect();
        for at in (1..count).rev() {
            let parent = parents[at];
            if first[at] < first[parent] {
                first[parent] = first[at];
                pages[parent] = pages[at];
            }
        }
        let mut before: Vec<usize> = first.clone();
        for (id, tag) in tags.all().skip(1) {
            let (at, parent) = (id.index(), tag.parent.index());
            if first[at] != usize::MAX {
                placed[parent].push((first[at], Kid::Tag(id)));
                before[parent] = first[at];
            } else if matches!(tag.role, Role::Cell | Role::Head)
                && first[parent] != usize::MAX
            {
                // An empty cell stands behind the one before it.
                placed[parent].push((before[parent], Kid::Tag(id)));
            }
        }
        let kids = placed
            .into_iter()
            .map(|mut kids| {
                kids.sort_by_key(|it| it.0);
                kids.into_iter().map(|it| it.1).collect()
            })
            .collect();
        Self { kids, pages }
    }

    /// The children of a tag.
    pub(super) fn kids(&self, tag: TagId) -> &[Kid] {
        &self.kids[tag.index()]
    }

    /// The page that a tag starts on.
    pub(super) fn page(&self, tag: TagId) -> Option<usize> {
        self.pages[tag.index()]
    }
}

/// The standard structure type of a role (ISO 32000-1, 14.8.4).
pub(super) fn structure_type(role: &Role) -> &'static str {
    match role {
        Role::Document => "Document",
        Role::Section => "Sect",
        Role::Heading(1) => "H1",
        Role::Heading(2) => "H2",
        Role::Heading(_) => "H3",
        Role::Paragraph => "P",
        Role::List { .. } => "L",
        Role::Entry => "LI",
        Role::Label => "Lbl",
        Role::Body => "LBody",
        Role::Table(_) => "Table",
        Role::Row => "TR",
        Role::Head => "TH",
        Role::Cell => "TD",
        Role::Figure { .. } => "Figure",
        Role::Caption => "Caption",
        Role::Link => "Link",
        Role::Span => "Span",
        Role::Group => "Div",
        Role::Note => "Note",
    }
}
