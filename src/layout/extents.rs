//! How large drawings become, kept while a document is laid out: each is measured at
//! several places before it is drawn.

use std::collections::BTreeMap;

use crate::document::Drawing;
use crate::geom::Length;
use crate::geom::Scale;

/// Drawings that are alike in all of this are compared mark by mark.
type Key = (Length, Length, usize, u32, u32);

/// So many are kept of each kind; of more, the oldest are forgotten.
const KEPT: usize = 12;

/// Width and height of drawings at scales.
#[derive(Debug, Default)]
pub(crate) struct Extents(BTreeMap<Key, Vec<Known>>);

/// A drawing that was measured, with its width and height.
type Known = (Drawing, (f64, f64));

impl Extents {
    /// What is known of a drawing at a scale.
    pub(crate) fn known(&self, drawing: &Drawing, scale: Scale) -> Option<(f64, f64)> {
        let alike = self.0.get(&key(drawing, scale))?;
        alike.iter().find(|it| it.0 == *drawing).map(|it| it.1)
    }

    /// Keeps what was measured.
    pub(crate) fn keep(&mut self, drawing: &Drawing, scale: Scale, extent: (f64, f64)) {
        let alike = self.0.entry(key(drawing, scale)).or_default();
        if alike.len() == KEPT {
            alike.remove(0);
        }
        alike.push((drawing.clone(), extent));
    }
}

fn key(drawing: &Drawing, scale: Scale) -> Key {
    let size = drawing.size;
    (size.width, size.height, drawing.marks.len(), scale.drawn, scale.real)
}
