//! What the items on the pages mean, as a tree (ISO 14289-1, PDF/UA-1).

/// Names a tag of a [`Tags`].
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct TagId(u32);

impl TagId {
    /// The whole document.
    pub const ROOT: Self = Self(0);

    /// Place in the tree's list.
    pub fn index(self) -> usize {
        self.0 as usize
    }
}

/// What a part of the document is (ISO 32000-1, 14.8.4).
#[derive(Clone, Debug, PartialEq)]
pub enum Role {
    /// The whole.
    Document,
    /// A part under one heading.
    Section,
    /// A heading of level 1 to 3.
    Heading(u8),
    /// A paragraph.
    Paragraph,
    /// A list; the flag says that its labels are numbers.
    List {
        /// Numbers, not marks.
        numbered: bool,
    },
    /// One entry of a list.
    Entry,
    /// The mark or number of an entry.
    Label,
    /// What the entry says.
    Body,
    /// A table with what it shows.
    Table(String),
    /// A row of a table.
    Row,
    /// The head of a column.
    Head,
    /// A cell.
    Cell,
    /// A drawing with what it shows, and the box it takes up on its page: left,
    /// top, right and bottom.
    Figure {
        /// Never empty.
        alt: String,
        /// On the page on which it stands.
        area: Option<[f64; 4]>,
    },
    /// What is said below a drawing.
    Caption,
    /// Words that lead elsewhere.
    Link,
    /// Words that differ from those around them.
    Span,
    /// Parts that belong together.
    Group,
    /// A remark beside the text.
    Note,
}

/// One node of the tree.
#[derive(Clone, Debug, PartialEq)]
pub struct Tag {
    /// What it is.
    pub role: Role,
    /// What it is part of; the root is its own parent.
    pub parent: TagId,
    /// Its language, if it is not the document's.
    pub language: Option<String>,
    /// What it says, where its signs are drawn and not written.
    pub says: Option<String>,
}

/// The tree, in the order in which it is read.
#[derive(Clone, Debug, PartialEq)]
pub struct Tags(Vec<Tag>);

impl Tags {
    /// A tree with only its root.
    pub fn new() -> Self {
        Self(vec![Tag {
            role: Role::Document,
            parent: TagId::ROOT,
            language: None,
            says: None,
        }])
    }

    /// Adds a tag after all others within its parent.
    pub fn add(&mut self, parent: TagId, role: Role) -> TagId {
        let id = TagId(u32::try_from(self.0.len()).expect("fewer tags than bytes"));
        self.0.push(Tag { role, parent, language: None, says: None });
        id
    }

    /// The tag of an id.
    pub fn get(&self, id: TagId) -> &Tag {
        &self.0[id.index()]
    }

    /// The tag of an id, to be changed.
    pub fn get_mut(&mut self, id: TagId) -> &mut Tag {
        &mut self.0[id.index()]
    }

    /// Every tag with its id, parents before children.
    pub fn all(&self) -> impl Iterator<Item = (TagId, &Tag)> {
        (0..).map(TagId).zip(&self.0)
    }

    /// Takes back all tags but the first so many: what they were to hold was set
    /// otherwise.
    pub fn truncate(&mut self, count: usize) {
        self.0.truncate(count.max(1));
    }

    /// How many there are.
    pub fn count(&self) -> usize {
        self.0.len()
    }
}

impl Default for Tags {
    fn default() -> Self {
        Self::new()
    }
}
