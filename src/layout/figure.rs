//! Drawings in the text: which scale, what is said below, and rows of drawings.

use crate::diag::Diagnostic;
use crate::diag::rules;
use crate::document::Block;
use crate::document::Figure;
use crate::document::Inline;
use crate::document::ScaleWish;
use crate::geom::Scale;
use crate::page::Role;
use crate::page::TagId;
use crate::source::Site;

use super::around::SHARE;
use super::blocks::spaced;
use super::drawing;
use super::drawing::Picture;
use super::setter::{Frame, Setter};
use super::slab::{Slab, fuse};

/// A drawing with no side as long as this is seen badly, on wide and on narrow pages.
const TINY: [f64; 2] = [72.0, 60.0];

/// A drawing with what is said below it.
pub(crate) struct Drawn {
    /// At the left edge 0 until it is moved.
    pub(crate) slab: Slab,
    /// Its whole width.
    pub(crate) width: f64,
    /// Height of the drawing alone.
    picture: f64,
}

impl Drawn {
    /// Moves its left edge from 0.
    pub(crate) fn move_to(&mut self, x: f64) {
        self.slab.items.iter_mut().for_each(|it| it.shift(x, 0.0));
        for link in &mut self.slab.links {
            link.area[0] += x;
            link.area[2] += x;
        }
        for (_, area) in &mut self.slab.figures {
            area[0] += x;
            area[2] += x;
        }
    }
}

impl Setter<'_> {
    /// Draws a figure within a room: width and height.
    pub(crate) fn draw(
        &mut self,
        figure: &Figure,
        room: (f64, f64),
        parent: TagId,
    ) -> Drawn {
        let lines = if figure.caption.is_some() || figure.says_scale { 2.0 } else { 0.0 };
        let above = (room.0, room.1 - lines * self.theme.remark.leading);
        let scale = self.scale_of(figure, above);
        self.draw_at(figure, scale, room.0, parent)
    }

    /// Draws a figure at a scale; its caption may be as wide as its room.
    pub(crate) fn draw_at(
        &mut self,
        figure: &Figure,
        scale: Scale,
        room: f64,
        parent: TagId,
    ) -> Drawn {
        let role = Role::Figure { alt: figure.alt.clone(), area: None };
        let tag = self.tags.add(parent, role);
        let mut picture = self.checked(figure, scale, tag);
        let mut slab = Slab::default();
        let area = [0.0, 0.0, picture.width, picture.height];
        let width = picture.width;
        slab.items.append(&mut picture.items);
        slab.figures.push((tag, area));
        slab.height = self.theme.snap(picture.height);
        // What is left over by the rhythm goes above and below alike.
        let slack = (slab.height - picture.height) / 2.0;
        slab.items.iter_mut().for_each(|it| it.shift(0.0, slack));
        slab.figures[0].1[1] += slack;
        slab.figures[0].1[3] += slack;
        let picture = slab.height;
        let words = self.caption(figure, scale);
        let mut whole = width;
        if !words.is_empty() {
            let tag = self.tags.add(tag, Role::Caption);
            let voice = self.theme.remark;
            let room = room.max(width);
            let measure = width.max(150.0 * self.theme.enlarged).min(room.max(width));
            let (most, _) = super::text::widths(self.press, &words, &voice);
            whole = whole.max(most.min(measure));
            let lines = self.paragraph(&words, &voice, tag, 0.0, measure);
            let lines = spaced(lines, 0.0);
            let below = slab.height;
            let lines = fuse(lines);
            slab.height += lines.height;
            slab.absorb(lines, below);
        }
        Drawn { slab, width: whole, picture }
    }

    /// How large a drawing becomes in a room, with what is said below it.
    pub(crate) fn size(&mut self, figure: &Figure, room: (f64, f64)) -> (f64, f64) {
        let scale = self.scale_of(figure, room);
        let (width, height) = drawing::extent(self, &figure.drawing, scale);
        let lines = if figure.caption.is_some() || figure.says_scale { 1.0 } else { 0.0 };
        (width, height + lines * self.theme.remark.leading)
    }

    /// The scale that a figure wishes for and can have.
    pub(crate) fn scale_of(&mut self, figure: &Figure, room: (f64, f64)) -> Scale {
        match figure.scale {
            ScaleWish::Full => Scale::FULL,
            ScaleWish::Shared(number)
            | ScaleWish::Finer(number)
            | ScaleWish::Glance(number) => match self.scales.get(&number) {
                Some(scale) => *scale,
                None => self.largest(figure, room),
            },
            ScaleWish::Largest => self.largest(figure, room),
        }
    }

    /// The words below a drawing, with its scale.
    pub(crate) fn caption(&self, figure: &Figure, scale: Scale) -> Vec<Inline> {
        let mut words = figure.caption.clone().unwrap_or_default();
        if figure.says_scale && !self.phrases.scale.is_empty() {
            let ratio = format!("{}:{}", scale.drawn, scale.real);
            let says = self.phrases.scale.replace("{scale}", &ratio);
            if let Some(last) = words.last() {
                // After a sentence it is another one; nothing hangs at a line's end.
                let ended = last.text.trim_end().ends_with(['.', '!', '?', '…', '。']);
                words.push(Inline::plain(if ended { " " } else { " ·\u{a0}" }));
            }
            // The scale is one thing and not parted at a line's end.
            words.push(Inline::plain(says.replace(' ', "\u{a0}")));
        }
        words
    }

    /// The drawing at a scale; an error is noted if the page has no room for it.
    fn checked(&mut self, figure: &Figure, scale: Scale, tag: TagId) -> Picture {
        let picture = drawing::picture(self, &figure.drawing, scale, tag);
        let page = (self.theme.right - self.theme.left, self.theme.height());
        // A hair's breadth of labels may stand over; a drawing may not.
        if picture.width > page.0 + 8.0 || picture.height > page.1 {
            let message = format!("a drawing does not fit on the page: {}", figure.alt);
            let note = Diagnostic::new(
                &rules::DRAWING_LARGER_THAN_PAGE,
                Site::default(),
                message,
            );
            self.notes.push(note.help("choose a larger page"));
        }
        picture
    }

    /// The largest scale of ISO 5455 at which a drawing fits with its labels.
    ///
    /// Labels keep their size. Where they alone stand over the room by a little, a
    /// drawing that is large enough to be seen is better than one that fits; where
    /// they need more than there is, no smaller scale would help.
    pub(crate) fn largest(&mut self, figure: &Figure, room: (f64, f64)) -> Scale {
        let smaller = [50, 100, 200, 500, 1000].map(|real| Scale { drawn: 1, real });
        let size = figure.drawing.size;
        let page = (self.theme.right - self.theme.left, 0.9 * self.theme.height());
        // The scale before, at which only labels stand over, and by how much.
        let mut before: Option<(f64, bool, Scale)> = None;
        // Whether the page holds it at that scale.
        let mut held = false;
        // ISO 5455 lets its series be extended where need be: the drawing of a card
        // beside its steps would else drop from 1:2 to 1:5.
        let beside = figure.says_scale && figure.caption.is_none();
        // Where no scale is said, none has to be read off a ruler.
        let silent = !figure.says_scale && self.theme.margin == 0.0;
        let finer = beside || matches!(figure.scale, ScaleWish::Finer(_));
        let between: &[u32] = if finer { &[3, 4] } else { &[] };
        let below: &[u32] = if silent { &[6, 7, 8] } else { &[] };
        let one_to = |real: &u32| Scale { drawn: 1, real: *real };
        let [full, half, fifth, rest @ ..] = Scale::RECOMMENDED;
        let scales = [full, half]
            .into_iter()
            .chain(between.iter().map(one_to))
            .chain([fifth])
            .chain(below.iter().map(one_to))
            .chain(rest)
            .chain(smaller);
        let tiny = TINY[usize::from(self.theme.margin == 0.0)];
        // Labels that stand over a little beat a drawing in which none has room.
        let enough = if beside { 1.22 } else { 1.0 };
        for scale in scales {
            let bare = (scale.on_page(size.width).0, scale.on_page(size.height).0);
            if bare.0 > room.0 || bare.1 > room.1 {
                continue;
            }
            let tiny = bare.0.max(bare.1) < tiny * self.theme.enlarged;
            if let Some((_, true, larger)) = before
                && tiny
            {
                return larger;
            }
            let (width, height) = drawing::extent(self, &figure.drawing, scale);
            let over = (width / room.0).max(height / room.1);
            if over <= enough {
                return scale;
            }
            if let Some((least, _, larger)) = before
                && over > least - 0.02
            {
                if held {
                    return larger;
                }
                continue;
            }
            held = width <= page.0 && height <= page.1;
            before = Some((over, over < 1.35 && held, scale));
        }
        before.map_or(Scale { drawn: 1, real: 1000 }, |it| it.2)
    }

    /// A drawing on its own.
    pub(crate) fn single(
        &mut self,
        figure: &Figure,
        frame: Frame,
        parent: TagId,
    ) -> Vec<Slab> {
        let room = self.room_alone(frame);
        let mut drawn = self.draw(figure, room, parent);
        let fits = drawn.width <= frame.width + 6.0;
        // Labels that stand over do so at both sides alike.
        let over = (drawn.width - frame.wide.1).max(0.0);
        drawn.move_to(if fits { frame.left } else { frame.wide.0 - over / 2.0 });
        vec![drawn.slab]
    }

    /// The room of a drawing on its own.
    pub(crate) fn room_alone(&self, frame: Frame) -> (f64, f64) {
        (frame.wide.1 + 4.0, 0.72 * self.theme.height())
    }

    /// The share of a row that one of several drawings gets.
    fn room_of_row(&self, frame: Frame, count: usize) -> (f64, f64) {
        let most = if frame.wide.1 > 380.0 { 4 } else { 2 };
        let abreast = count.clamp(1, most) as f64;
        let gaps = (abreast - 1.0) * self.theme.gutter;
        ((frame.wide.1 - gaps) / abreast, 0.45 * self.theme.height())
    }

    /// Rows of drawings at one scale.
    pub(crate) fn figures(
        &mut self,
        figures: &[Figure],
        frame: Frame,
        parent: TagId,
    ) -> Vec<Slab> {
        let group = self.tags.add(parent, Role::Group);
        let room = self.room_of_row(frame, figures.len());
        // Drawings in a row are compared: they have one scale whatever they wish.
        let least = figures
            .iter()
            .filter(|it| it.scale == ScaleWish::Largest)
            .map(|it| self.largest(it, room))
            .max_by_key(|it| it.real);
        let row = self.scale_of_row(figures, frame);
        let mut drawn = Vec::new();
        for figure in figures {
            if let Some(scale) = row {
                drawn.push(self.draw_at(figure, scale, room.0, group));
                continue;
            }
            drawn.push(match (figure.scale, least) {
                (ScaleWish::Largest, Some(scale)) => {
                    self.draw_at(figure, scale, room.0, group)
                }
                _ => self.draw(figure, room, group),
            });
        }
        let (left, width) = frame.wide;
        let mut slabs = Vec::new();
        let gutter = self.theme.gutter;
        let rows = rows(drawn, width, 0.5 * gutter);
        let widths: Vec<Vec<f64>> =
            rows.iter().map(|row| row.iter().map(|it| it.width).collect()).collect();
        let lanes = lanes(&widths, width - 0.5 * gutter * (most(&widths) - 1.0));
        for (row, own) in rows.into_iter().zip(widths) {
            let picture = row.iter().map(|it| it.picture).fold(0.0, f64::max);
            let (lanes, count) = match &lanes {
                Some(lanes) => (lanes, lanes.len() as f64),
                None => (&own, own.len() as f64),
            };
            let taken: f64 = lanes.iter().sum();
            let free = (width - taken) / (count - 1.0).max(1.0);
            let gap = free.clamp(gutter * 0.5, 2.5 * gutter);
            let inside = taken + gap * (count - 1.0) <= frame.width;
            let mut x = if inside { frame.left } else { left };
            let mut slab = Slab::default();
            for (mut one, lane) in row.into_iter().zip(lanes) {
                one.move_to(x);
                x += lane + gap;
                // Their feet stand on one line, and so do their captions.
                let down = picture - one.picture;
                slab.height = slab.height.max(down + one.slab.height);
                slab.absorb(one.slab, down);
            }
            slabs.extend(spaced(vec![slab], self.theme.unit));
        }
        slabs
    }

    /// The scale at which drawings that say none stand in one row on a narrow page.
    fn scale_of_row(&mut self, figures: &[Figure], frame: Frame) -> Option<Scale> {
        let silent = figures.iter().all(|it| !it.says_scale);
        if frame.margin.is_some() || !silent || !(4..=6).contains(&figures.len()) {
            return None;
        }
        let gaps = (figures.len() - 1) as f64 * 0.5 * self.theme.gutter;
        [5, 6, 7, 8].map(|real| Scale { drawn: 1, real }).into_iter().find(|scale| {
            let widths = figures.iter().map(|it| {
                let words = self.caption(it, *scale);
                let voice = self.theme.remark;
                let words = super::text::widths(self.press, &words, &voice).0;
                drawing::extent(self, &it.drawing, *scale).0.max(words)
            });
            widths.sum::<f64>() + gaps <= frame.wide.1
        })
    }

    /// Finds, before anything is set, the scale that drawings of one number share.
    pub(crate) fn share_scales(&mut self, blocks: &[Block], frame: Frame) {
        for block in blocks {
            match block {
                Block::Steps(steps) => {
                    let room = self.room_of_step(frame);
                    for figure in steps.iter().filter_map(|it| it.figure.as_ref()) {
                        self.share(figure, self.room_of_state(figure, room));
                    }
                }
                Block::Figure(figure) => self.share(figure, self.room_alone(frame)),
                Block::Figures(figures) => {
                    let room = self.room_of_row(frame, figures.len());
                    figures.iter().for_each(|it| self.share(it, room));
                    if let Some(scale) = self.scale_of_row(figures, frame) {
                        for figure in figures {
                            if let ScaleWish::Shared(number) = figure.scale {
                                self.scales.insert(number, scale);
                            }
                        }
                    }
                }
                Block::Beside(figure, blocks) => {
                    let (left, width) = frame.wide;
                    let whole = Frame { left, width, ..frame };
                    let share = if frame.margin.is_some() { 0.52 } else { SHARE };
                    let room = self.room_beside(whole, share);
                    let room = room.unwrap_or_else(|| self.room_alone(frame));
                    self.share(figure, room);
                    let half = 0.45 * width;
                    let inner =
                        Frame { left, width: half, margin: None, wide: (left, half) };
                    self.share_scales(blocks, inner);
                }
                Block::Keep(blocks) => self.share_scales(blocks, frame),
                Block::Heading { .. }
                | Block::Paragraph(..)
                | Block::List(..)
                | Block::Table(_)
                | Block::Tiled(_)
                | Block::Caution(_) => {}
            }
        }
    }

    /// A text that says the scales that drawings share.
    pub(crate) fn with_scales(&self, text: &[Inline]) -> Vec<Inline> {
        let mut text = text.to_vec();
        for inline in text.iter_mut().filter(|it| it.text.contains("{scale-of-")) {
            for (number, scale) in &self.scales {
                let ratio = format!("{}:{}", scale.drawn, scale.real);
                inline.text = inline.text.replace(&ScaleWish::shared_by(*number), &ratio);
            }
        }
        text
    }

    /// Lets one drawing have its say on a shared scale.
    fn share(&mut self, figure: &Figure, room: (f64, f64)) {
        let (ScaleWish::Shared(number)
        | ScaleWish::Finer(number)
        | ScaleWish::Glance(number)) = figure.scale
        else {
            return;
        };
        let lines = if figure.caption.is_some() || figure.says_scale { 2.0 } else { 0.0 };
        let room = (room.0, room.1 - lines * self.theme.remark.leading);
        let scale = self.largest(figure, room);
        let shared = self.scales.entry(number).or_insert(scale);
        if scale.real > shared.real {
            *shared = scale;
        }
    }
}

/// How many drawings the fullest row has.
fn most(rows: &[Vec<f64>]) -> f64 {
    rows.iter().map(Vec::len).max().unwrap_or(1) as f64
}

/// How wide the places are in which drawings of all rows stand below each other;
/// `None` if that takes more than the room, and each row has to go by its own widths.
fn lanes(rows: &[Vec<f64>], room: f64) -> Option<Vec<f64>> {
    let mut lanes: Vec<f64> = Vec::new();
    for row in rows {
        lanes.resize(lanes.len().max(row.len()), 0.0);
        for (lane, width) in lanes.iter_mut().zip(row) {
            *lane = lane.max(*width);
        }
    }
    (rows.len() < 2 || lanes.iter().sum::<f64>() <= room).then_some(lanes)
}

/// Breaks drawings into rows of about as many each.
fn rows(drawn: Vec<Drawn>, width: f64, gutter: f64) -> Vec<Vec<Drawn>> {
    let count = drawn.len();
    // How many rows it takes when each is filled as far as it goes.
    let mut needed = 1;
    let mut x = 0.0;
    for one in &drawn {
        if x > 0.0 && x + one.width > width {
            needed += 1;
            x = 0.0;
        }
        x += one.width + gutter;
    }
    let each = count.div_ceil(needed);
    let mut rows: Vec<Vec<Drawn>> = Vec::new();
    let mut x = 0.0;
    for one in drawn {
        let full = rows.last().is_none_or(|it| it.len() == each);
        if full || x + one.width > width {
            rows.push(Vec::new());
            x = 0.0;
        }
        x += one.width + gutter;
        rows.last_mut().expect("there is a row").push(one);
    }
    rows
}

#[cfg(test)]
mod tests {
    use super::lanes;

    #[test]
    fn drawings_of_all_rows_stand_below_each_other() {
        let rows = [vec![40.0, 60.0, 50.0], vec![55.0, 30.0]];
        assert_eq!(lanes(&rows, 170.0), Some(vec![55.0, 60.0, 50.0]));
    }

    #[test]
    fn without_room_for_that_each_row_goes_by_its_own_widths() {
        let rows = [vec![40.0, 60.0, 50.0], vec![55.0, 30.0]];
        assert_eq!(lanes(&rows, 160.0), None);
        assert_eq!(lanes(&rows[..1], 10.0), Some(vec![40.0, 60.0, 50.0]));
    }
}
