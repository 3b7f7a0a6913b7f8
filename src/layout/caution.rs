//! Cautions, in the form of ANSI Z535.6 and ISO/IEC Guide 37: an alert triangle, a
//! signal word in bold capitals, then hazard, consequence and avoidance.

use crate::document::Caution;
use crate::document::Inline;
use crate::page::Ink;
use crate::page::Item;
use crate::page::Line;
use crate::page::Owner;
use crate::page::Path;
use crate::page::Piece;
use crate::page::Role;
use crate::page::TagId;
use crate::page::What;

use super::setter::{Frame, Setter};
use super::slab::{Slab, fuse, height};

impl Setter<'_> {
    /// A caution behind a rule at its side.
    pub(crate) fn caution(
        &mut self,
        caution: &Caution,
        frame: Frame,
        parent: TagId,
    ) -> Vec<Slab> {
        let group = self.tags.add(parent, Role::Group);
        let voice = self.theme.caution;
        let (left, width) = (frame.left, frame.width);
        let side = 1.15 * voice.size;
        let words_left = left + side + 0.35 * voice.size;
        let mut triangle = None;
        if caution.triangle {
            let tag = self
                .tags
                .add(group, Role::Figure { alt: caution.signal.clone(), area: None });
            let bottom = voice.baseline() + 0.08 * voice.size;
            triangle = Some((tag, self.triangle(left, bottom, side, tag), side, bottom));
        }
        // The signal word runs into the text: a page of cautions in which every other
        // line is a signal word is not read.
        let tag = self.tags.add(group, Role::Paragraph);
        let mut words = vec![Inline::strong(format!("{}\u{2002}", caution.signal))];
        words.extend(caution.text.iter().cloned());
        let room = width - (words_left - left);
        let measure = room.min(self.theme.measure * 1.05);
        let mut slabs = self.paragraph(&words, &voice, tag, words_left, measure);
        if slabs.is_empty() {
            slabs.push(Slab::blank(voice.leading));
        }
        if let Some((tag, items, side, bottom)) = triangle {
            slabs[0].items.splice(0..0, items);
            slabs[0].figures.push((tag, [left, bottom - side, left + side, bottom]));
        }
        // Cautions are short; only a very long one is ever cut.
        let mut slabs = if height(&slabs) <= 0.5 * self.theme.height() {
            vec![fuse(slabs)]
        } else {
            slabs
        };
        for slab in &mut slabs {
            let side = Piece::rect(frame.left - 8.0, 1.5, 2.0, slab.height - 3.0);
            let rule = self.decoration(vec![side], Some(Ink::TEXT), None);
            slab.items.insert(0, rule);
        }
        slabs
    }

    /// The safety alert sign: a triangle with an exclamation mark.
    fn triangle(&self, left: f64, bottom: f64, side: f64, tag: TagId) -> Vec<Item> {
        let ink = self.theme.ink(Ink::TEXT);
        let (high, middle) = (0.866 * side, left + side / 2.0);
        let points = [(middle, bottom - high), (left + side, bottom), (left, bottom)];
        let line = |width: f64| Line { ink, width, dash: Vec::new(), round: true };
        let outline = Path {
            pieces: vec![Piece::polygon(&points)],
            fill: None,
            line: Some(line(0.075 * side)),
        };
        let dot = (middle, bottom - 0.17 * high);
        let mark = Path {
            pieces: vec![
                Piece::line(
                    (middle, bottom - 0.62 * high),
                    (middle, bottom - 0.36 * high),
                ),
                Piece::line(dot, dot),
            ],
            fill: None,
            line: Some(line(0.11 * side)),
        };
        [outline, mark]
            .map(|path| Item { owner: Owner::Tag(tag), what: What::Path(path) })
            .into()
    }
}
