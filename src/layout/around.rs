//! A drawing at the right, with text that runs around it: narrow pages have no width
//! to leave empty below a drawing.

use crate::document::Block;
use crate::document::Figure;
use crate::document::Tone;
use crate::geom::Scale;
use crate::page::Role;
use crate::page::TagId;

use super::blocks::spaced;
use super::setter::{Frame, Notch, Setter};
use super::slab::{Order, Slab, abreast, height};

/// The share of the measure that such a drawing may take.
pub(crate) const SHARE: f64 = 0.44;

/// The fewest points that a line beside the drawing may have, in large print
/// likewise more.
const NARROWEST: f64 = 122.0;

impl Setter<'_> {
    /// Blocks that run around a drawing; `None` if the lines beside it would become
    /// too short.
    pub(crate) fn around(
        &mut self,
        figure: &Figure,
        blocks: &[Block],
        frame: Frame,
        parent: TagId,
    ) -> Option<Vec<Slab>> {
        let room = (SHARE * frame.width, 0.62 * self.theme.height());
        let scale = self.scale_of(figure, room);
        self.around_at(figure, scale, blocks, frame, parent)
    }

    /// The same, at a scale.
    fn around_at(
        &mut self,
        figure: &Figure,
        scale: Scale,
        blocks: &[Block],
        frame: Frame,
        parent: TagId,
    ) -> Option<Vec<Slab>> {
        let before = self.tags.count();
        let group = self.tags.add(parent, Role::Group);
        let right = frame.left + frame.width;
        let mut drawn = self.draw_at(figure, scale, SHARE * frame.width, group);
        let at = right - drawn.width;
        let edge = at - self.theme.gutter;
        if edge - frame.left < NARROWEST * self.theme.enlarged {
            self.tags.truncate(before);
            return None;
        }
        drawn.move_to(at);
        let deep = drawn.slab.height;
        let beside = Frame {
            width: edge - frame.left,
            margin: None,
            wide: (frame.left, edge - frame.left),
            ..frame
        };
        let mut slabs: Vec<Slab> = Vec::new();
        for block in blocks {
            let steps = match block {
                Block::Steps(steps) => steps.as_slice(),
                _ => &[],
            };
            if steps.is_empty() {
                let left = deep - self.reach(&slabs);
                let set = match block {
                    Block::Paragraph(..) | Block::List(..) => {
                        self.notch = Some(Notch { edge, deep: left });
                        self.block(block, frame, group)
                    }
                    _ if left > 0.0 => self.block(block, beside, group),
                    _ => self.block(block, frame, group),
                };
                self.notch = None;
                let above = self.above(&slabs);
                slabs.extend(spaced(set, above));
                continue;
            }
            let list = self.tags.add(group, Role::List { numbered: true });
            for step in steps {
                let left = deep - self.reach(&slabs);
                // The drawing of a step makes way as a whole.
                let frame =
                    if step.figure.is_some() && left > 0.0 { beside } else { frame };
                self.notch = Some(Notch { edge, deep: left });
                let room = self.room_of_step(frame);
                let mut set = self.step(step, frame, room, list);
                self.notch = None;
                if let Some(last) = set.last_mut() {
                    last.after = last.after.max(60.0);
                }
                let above = self.above(&slabs);
                slabs.extend(spaced(set, above));
            }
        }
        let mut both = abreast(slabs, drawn.slab, Order::Beside);
        if both[0].height > self.theme.height() {
            self.tags.truncate(before);
            return None;
        }
        // What tells of a drawing is rather not parted from it.
        both.iter_mut().for_each(|it| it.after = it.after.max(200.0));
        Some(both)
    }

    /// How far down the next block starts.
    fn reach(&self, slabs: &[Slab]) -> f64 {
        if slabs.is_empty() { 0.0 } else { height(slabs) + self.theme.between }
    }

    /// The space above the next block.
    fn above(&self, slabs: &[Slab]) -> f64 {
        if slabs.is_empty() { 0.0 } else { self.theme.between }
    }

    /// A drawing with its caption beside it, below the words that lead to it; `None`
    /// if it is too wide for that.
    pub(crate) fn captioned_aside(
        &mut self,
        lead: &Block,
        figure: &Figure,
        frame: Frame,
        parent: TagId,
    ) -> Option<Vec<Slab>> {
        let room = self.room_alone(frame);
        let scale = self.scale_of(figure, room);
        let caption = self.caption(figure, scale);
        let bare = Figure { caption: None, says_scale: false, ..figure.clone() };
        let blocks = [lead.clone(), Block::Paragraph(Tone::Remark, caption)];
        self.around_at(&bare, scale, &blocks, frame, parent)
    }
}
