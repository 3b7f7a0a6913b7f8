//! Ways through the file: links and bookmarks.

use lopdf::{Object, ObjectId, dictionary};

use super::Fault;
use super::finish::{Finisher, real, words};
use crate::page::Bookmark;
use crate::page::TagId;

/// A link of the file: its annotation and the tag that its words belong to.
pub(super) struct Linked {
    pub(super) annotation: ObjectId,
    pub(super) page: usize,
    pub(super) tag: TagId,
}

impl Finisher<'_> {
    /// Writes the links of all pages.
    pub(super) fn links(&mut self) -> Result<Vec<Linked>, Fault> {
        let mut links = Vec::new();
        let count = i64::try_from(self.pages.len()).map_err(Fault::new)?;
        for (index, page) in self.laid.pages.iter().enumerate() {
            let mut annotations = Vec::new();
            for link in &page.links {
                // A link that leads nowhere stays plain text.
                let Some(place) = self.laid.anchors.get(&link.to) else { continue };
                let [left, top, right, bottom] = link.area;
                let target = &self.laid.pages[place.page];
                let destination = vec![
                    self.pages[place.page].into(),
                    "XYZ".into(),
                    real(place.x),
                    real(target.height - place.y),
                    Object::Null,
                ];
                let number = count + i64::try_from(links.len()).map_err(Fault::new)?;
                let annotation = self.document.add_object(dictionary! {
                    "Type" => "Annot",
                    "Subtype" => "Link",
                    "Rect" => [left, page.height - bottom, right, page.height - top]
                        .map(real).to_vec(),
                    "Border" => vec![0.into(), 0.into(), 0.into()],
                    "F" => 4,
                    "Contents" => words(&link.says),
                    "Dest" => destination,
                    "StructParent" => number,
                });
                annotations.push(Object::Reference(annotation));
                links.push(Linked { annotation, page: index, tag: link.tag });
            }
            let id = self.pages[index];
            let dict = self.document.get_dictionary_mut(id).map_err(Fault::new)?;
            dict.set("StructParents", i64::try_from(index).map_err(Fault::new)?);
            dict.set("Tabs", "S");
            if annotations.is_empty() {
                dict.remove(b"Annots");
            } else {
                dict.set("Annots", annotations);
            }
        }
        Ok(links)
    }

    /// Writes the bookmarks, nested by level.
    pub(super) fn outline(&mut self) -> Option<ObjectId> {
        let marks = &self.laid.outline;
        if marks.is_empty() {
            return None;
        }
        let root = self.document.new_object_id();
        let ids: Vec<_> = marks.iter().map(|_| self.document.new_object_id()).collect();
        let parents = parents(marks);
        for (index, mark) in marks.iter().enumerate() {
            let siblings: Vec<_> =
                (0..marks.len()).filter(|it| parents[*it] == parents[index]).collect();
            let at = siblings.iter().position(|it| *it == index).unwrap_or(0);
            let children: Vec<_> =
                (0..marks.len()).filter(|it| parents[*it] == Some(index)).collect();
            let page = &self.laid.pages[mark.place.page];
            let mut entry = dictionary! {
                "Title" => words(&mark.title),
                "Parent" => parents[index].map_or(root, |it| ids[it]),
                "Dest" => vec![
                    self.pages[mark.place.page].into(),
                    "XYZ".into(),
                    real(0.0),
                    real(page.height - mark.place.y),
                    Object::Null,
                ],
            };
            if let Some(before) = at.checked_sub(1) {
                entry.set("Prev", ids[siblings[before]]);
            }
            if let Some(next) = siblings.get(at + 1) {
                entry.set("Next", ids[*next]);
            }
            if let (Some(first), Some(last)) = (children.first(), children.last()) {
                entry.set("First", ids[*first]);
                entry.set("Last", ids[*last]);
                // Closed at first: only sections are seen.
                entry.set("Count", -i64::try_from(children.len()).unwrap_or(0));
            }
            self.document.set_object(ids[index], entry);
        }
        let top: Vec<_> = (0..marks.len()).filter(|it| parents[*it].is_none()).collect();
        let (first, last) = (ids[top[0]], ids[top[top.len() - 1]]);
        self.document.set_object(
            root,
            dictionary! {
                "Type" => "Outlines",
                "First" => first,
                "Last" => last,
                "Count" => i64::try_from(top.len()).unwrap_or(0),
            },
        );
        Some(root)
    }
}

/// The parent of each bookmark: the last one before it with a lower level.
fn parents(marks: &[Bookmark]) -> Vec<Option<usize>> {
    let mut open: Vec<usize> = Vec::new();
    let mut parents = Vec::with_capacity(marks.len());
    for (index, mark) in marks.iter().enumerate() {
        while open.last().is_some_and(|it| marks[*it].level >= mark.level) {
            open.pop();
        }
        parents.push(open.last().copied());
        open.push(index);
    }
    parents
}
