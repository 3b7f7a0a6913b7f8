//! Tags as structure elements (ISO 32000-1, 14.7): who is whose child, and what each
//! says beyond its type.

use std::collections::BTreeMap;

use lopdf::{Dictionary, Object, ObjectId, dictionary};

use super::Fault;
use super::content::Sequence;
use super::finish::{Finisher, real, words};
use super::navigation::Linked;
use super::tree::{Kid, structure_type};
use crate::page::Role;
use crate::page::TagId;

impl Finisher<'_> {
    /// Writes the tree of tags.
    pub(super) fn tags(
        &mut self,
        sequences: &[Vec<Sequence>],
        links: &[Linked],
    ) -> Result<ObjectId, Fault> {
        let tags = &self.laid.tags;
        let ids: Vec<_> = tags.all().map(|_| self.document.new_object_id()).collect();
        let root = self.document.new_object_id();
        let mut of_tag: BTreeMap<TagId, Vec<&Linked>> = BTreeMap::new();
        for link in links {
            of_tag.entry(link.tag).or_default().push(link);
        }
        let mut written = vec![false; ids.len()];
        written[0] = true;
        for (tag, node) in tags.all() {
            // Parents come first: what no parent holds is no part of the tree.
            if !written[tag.index()] {
                continue;
            }
            let page = self.tree.page(tag);
            let mut kids = Vec::new();
            for kid in self.tree.kids(tag) {
                match *kid {
                    Kid::Tag(child) => {
                        written[child.index()] = true;
                        kids.push(ids[child.index()].into());
                    }
                    Kid::Content(at, id) => {
                        let id = i64::try_from(id).map_err(Fault::new)?;
                        kids.push(if Some(at) == page {
                            id.into()
                        } else {
                            dictionary! {
                                "Type" => "MCR", "Pg" => self.pages[at], "MCID" => id
                            }
                            .into()
                        });
                    }
                }
            }
            for link in of_tag.remove(&tag).unwrap_or_default() {
                let reference = dictionary! {
                    "Type" => "OBJR", "Pg" => self.pages[link.page], "Obj" => link.annotation
                };
                kids.push(reference.into());
            }
            let parent = if tag == TagId::ROOT { root } else { ids[node.parent.index()] };
            let mut element = dictionary! {
                "Type" => "StructElem",
                "S" => structure_type(&node.role),
                "P" => parent,
            };
            match kids.len() {
                0 => {}
                1 => element.set("K", kids.remove(0)),
                _ => element.set("K", kids),
            }
            if let Some(page) = page {
                element.set("Pg", self.pages[page]);
            }
            if let Some(says) = &node.says {
                element.set("ActualText", words(says));
            }
            if let Some(language) = &node.language {
                element.set("Lang", words(language));
            }
            self.attributes(&node.role, tag, &mut element);
            self.document.set_object(ids[tag.index()], element);
        }
        let mut numbers = Vec::new();
        for (index, tags) in sequences.iter().enumerate() {
            let parents: Vec<Object> =
                tags.iter().map(|it| ids[it.tag.index()].into()).collect();
            numbers.push(i64::try_from(index).map_err(Fault::new)?.into());
            numbers.push(self.document.add_object(parents).into());
        }
        for (index, link) in links.iter().enumerate() {
            let number = sequences.len() + index;
            numbers.push(i64::try_from(number).map_err(Fault::new)?.into());
            numbers.push(ids[link.tag.index()].into());
        }
        let next = i64::try_from(sequences.len() + links.len()).map_err(Fault::new)?;
        let parents = self.document.add_object(dictionary! { "Nums" => numbers });
        self.document.set_object(
            root,
            dictionary! {
                "Type" => "StructTreeRoot",
                "K" => vec![ids[0].into()],
                "ParentTree" => parents,
                "ParentTreeNextKey" => next,
            },
        );
        Ok(root)
    }

    /// What an element says beyond its type.
    fn attributes(&self, role: &Role, tag: TagId, element: &mut Dictionary) {
        match role {
            Role::Figure { alt, area } => {
                element.set("Alt", words(alt));
                if let (Some([left, top, right, bottom]), Some(page)) =
                    (area, self.tree.page(tag))
                {
                    let height = self.laid.pages[page].height;
                    let bounds = [*left, height - bottom, *right, height - top];
                    let bounds: Vec<_> = bounds.map(real).to_vec();
                    element.set(
                        "A",
                        dictionary! {
                            "O" => "Layout", "BBox" => bounds, "Placement" => "Block"
                        },
                    );
                }
            }
            Role::List { numbered } => {
                let numbering = if *numbered { "Decimal" } else { "Disc" };
                element.set(
                    "A",
                    dictionary! { "O" => "List", "ListNumbering" => numbering },
                );
            }
            Role::Table(summary) if !summary.is_empty() => {
                element.set(
                    "A",
                    dictionary! { "O" => "Table", "Summary" => words(summary) },
                );
            }
            Role::Head => {
                element.set("A", dictionary! { "O" => "Table", "Scope" => "Column" });
            }
            Role::Note => {
                element.set("ID", Object::string_literal(format!("note{}", tag.index())));
            }
            Role::Document
            | Role::Section
            | Role::Heading(_)
            | Role::Paragraph
            | Role::Entry
            | Role::Label
            | Role::Body
            | Role::Table(_)
            | Role::Row
            | Role::Cell
            | Role::Caption
            | Role::Link
            | Role::Span
            | Role::Group => {}
        }
    }
}
