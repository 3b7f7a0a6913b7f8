//! Drawings at true size: where the page is too small, in parts that overlap and are
//! laid together by crosses.

mod clip;

use crate::diag::Diagnostic;
use crate::diag::rules;
use crate::document::Figure;
use crate::document::Inline;
use crate::document::Tiled;
use crate::geom::Scale;
use crate::page::Ink;
use crate::page::Item;
use crate::page::Line;
use crate::page::Owner;
use crate::page::Path;
use crate::page::Piece;
use crate::page::Role;
use crate::page::TagId;
use crate::page::What;
use crate::source::Site;

use super::blocks::spaced;
use super::drawing;
use super::setter::{Frame, Setter};
use super::slab::{Slab, fuse};

/// How far parts overlap: 10 mm leave room for a cross and for glue.
const OVERLAP: f64 = 10.0 * 72.0 / 25.4;

/// Half the length of a cross.
const ARM: f64 = 7.0;

/// What printers leave white, and a little more for the line at a part's edge.
const WHITE: f64 = 20.0;

/// More parts than anybody lays together.
const MOST: usize = 64;

/// A stretch of the drawing along one side, as one part shows it.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Window {
    from: f64,
    to: f64,
}

/// Divides a length into the fewest stretches that fit a room, all alike, each
/// overlapping its neighbours; `None` if there is no sense in it.
fn windows(length: f64, room: f64) -> Option<Vec<Window>> {
    if length <= room {
        return Some(vec![Window { from: 0.0, to: length }]);
    }
    let fits =
        |count: &usize| length / *count as f64 + OVERLAP * ends(*count) <= room + 1e-9;
    let count = (2..=MOST).find(fits)?;
    let core = length / count as f64;
    let window = |at: usize| Window {
        from: (core * at as f64 - OVERLAP / 2.0).max(0.0),
        to: (core * (at + 1) as f64 + OVERLAP / 2.0).min(length),
    };
    Some((0..count).map(window).collect())
}

/// How often half the overlap is added to the widest of so many parts, halved.
fn ends(count: usize) -> f64 {
    if count > 2 { 1.0 } else { 0.5 }
}

impl Setter<'_> {
    /// A drawing at true size.
    pub(crate) fn tiled(
        &mut self,
        tiled: &Tiled,
        frame: Frame,
        parent: TagId,
    ) -> Vec<Slab> {
        let tag = self.tags.add(parent, Role::Group);
        let whole = drawing::picture(self, &tiled.figure.drawing, Scale::FULL, tag);
        let room = self.theme.page.0 - 2.0 * WHITE;
        // Room for the words above a part, and for a heading above the first.
        let head = 4.4 * self.theme.remark.leading;
        let high = 0.88 * self.theme.height() - head;
        let (Some(across), Some(down)) =
            (windows(whole.width, room), windows(whole.height, high))
        else {
            return self.refused(&tiled.figure);
        };
        let parts = across.len() * down.len();
        if parts > MOST {
            return self.refused(&tiled.figure);
        }
        let mut slabs = Vec::new();
        for (row, vertical) in down.iter().enumerate() {
            for (column, level) in across.iter().enumerate() {
                let part = Part { row, column, across: &across, down: &down };
                let mut slab = self.words_of(tiled, &part, frame, tag);
                let left = (self.theme.page.0 - (level.to - level.from)) / 2.0;
                let left =
                    if parts == 1 { left.min(frame.wide.0) } else { left.max(WHITE) };
                let name = if parts == 1 { String::new() } else { part.name() };
                let alt = format!("{} {name}", tiled.figure.alt).trim_end().to_owned();
                let area = Some([0.0; 4]);
                let figure = self.tags.add(tag, Role::Figure { alt, area });
                let mut picture = Slab::blank(vertical.to - vertical.from);
                let shown = [level.from, vertical.from, level.to, vertical.to];
                picture.items = clip::within(&whole.items, shown, &part.cores(), figure);
                picture.items.extend(self.joins(&part, figure));
                for item in &mut picture.items {
                    item.shift(left - level.from, -vertical.from);
                }
                let right = left + level.to - level.from;
                picture.figures.push((figure, [left, 0.0, right, picture.height]));
                let top = slab.height;
                slab.height += picture.height;
                slab.absorb(picture, top);
                slabs.extend(spaced(vec![slab], self.theme.between));
            }
        }
        slabs
    }

    /// Notes that a drawing can't be printed at its size.
    fn refused(&mut self, figure: &Figure) -> Vec<Slab> {
        let message =
            format!("a drawing is too large to be laid together: {}", figure.alt);
        let rule = &rules::DRAWING_LARGER_THAN_PAGE;
        let note = Diagnostic::new(rule, Site::default(), message);
        self.notes.push(note.help("choose a larger page"));
        Vec::new()
    }

    /// What stands above a part: what it is part of, which part it is, how parts are
    /// joined, and a small map of them.
    fn words_of(
        &mut self,
        tiled: &Tiled,
        part: &Part<'_>,
        frame: Frame,
        parent: TagId,
    ) -> Slab {
        let voice = self.theme.remark;
        let parts = part.across.len() * part.down.len();
        let mut words = tiled.figure.caption.clone().unwrap_or_default();
        let mut map = 0.0;
        if parts > 1 {
            let says = tiled.part.replace("{part}", &part.name());
            let says = says.replace("{parts}", &parts.to_string());
            words.insert(0, Inline::strong(format!("{says}\u{2002}")));
            words.push(Inline::plain(" "));
            words.extend(tiled.joined.iter().cloned());
            map = 54.0;
        }
        let (left, width) = frame.wide;
        let tag = self.tags.add(parent, Role::Paragraph);
        let room = (width - map).min(self.theme.measure);
        let lines = self.paragraph(&words, &voice, tag, left, room);
        let mut slab = fuse(lines);
        if parts > 1 {
            slab.height = slab.height.max(36.0 + 4.0);
            slab.items.extend(self.map(part, left + width - 40.0));
        }
        slab.height += 0.5 * voice.leading;
        slab
    }

    /// A small picture of all parts, this one filled.
    fn map(&self, part: &Part<'_>, left: f64) -> Vec<Item> {
        let (columns, rows) = (part.across.len() as f64, part.down.len() as f64);
        let cell = (40.0 / columns).min(36.0 / rows);
        let mut items = Vec::new();
        for row in 0..part.down.len() {
            for column in 0..part.across.len() {
                let (x, y) = (left + cell * column as f64, 2.0 + cell * row as f64);
                let here = (row, column) == (part.row, part.column);
                let square = Piece::rect(x, y, cell, cell);
                let fill = here.then_some(Ink::ACCENT);
                items.push(self.decoration(vec![square], fill, Some((Ink::TEXT, 0.7))));
            }
        }
        items
    }

    /// Lines where this part meets others, and the crosses on them: both parts show
    /// them at the same places of the drawing.
    fn joins(&self, part: &Part<'_>, owner: TagId) -> Vec<Item> {
        let (level, vertical) = (part.across[part.column], part.down[part.row]);
        let (mut lines, mut crosses) = (Vec::new(), Vec::new());
        let places =
            |it: Window| [0.2, 0.8].map(|share| it.from + share * (it.to - it.from));
        for x in seams(part.across, part.column) {
            lines.push(Piece::line((x, vertical.from), (x, vertical.to)));
            crosses.extend(places(vertical).map(|y| (x, y)));
        }
        for y in seams(part.down, part.row) {
            lines.push(Piece::line((level.from, y), (level.to, y)));
            crosses.extend(places(level).map(|x| (x, y)));
        }
        let arms = crosses.into_iter().flat_map(|(x, y)| {
            [
                Piece::line((x - ARM, y), (x + ARM, y)),
                Piece::line((x, y - ARM), (x, y + ARM)),
            ]
        });
        let arms: Vec<_> = arms.collect();
        let ink = self.theme.ink(Ink::TEXT);
        let drawn = |pieces: Vec<Piece>, width: f64, dash: Vec<f64>| {
            let line = Some(Line { ink, width, dash, round: false });
            let path = Path { pieces, fill: None, line };
            Item { owner: Owner::Tag(owner), what: What::Path(path) }
        };
        if lines.is_empty() {
            return Vec::new();
        }
        // ISO 128-2, line 05.1: long dashes with two dots, narrow.
        let dash = vec![12.0, 3.0, 1.0, 3.0, 1.0, 3.0];
        vec![drawn(lines, 0.5, dash), drawn(arms, 0.7, Vec::new())]
    }
}

/// Where one of the stretches meets its neighbours: in the middle of the overlap.
fn seams(all: &[Window], at: usize) -> impl Iterator<Item = f64> + '_ {
    let before = at.checked_sub(1).map(|it| (all[it].to + all[at].from) / 2.0);
    let after = all.get(at + 1).map(|it| (all[at].to + it.from) / 2.0);
    before.into_iter().chain(after)
}

/// One part of a drawing.
struct Part<'a> {
    row: usize,
    column: usize,
    across: &'a [Window],
    down: &'a [Window],
}

impl Part<'_> {
    /// A letter for its place from the top, a number for its place from the left.
    fn name(&self) -> String {
        let letter = u8::try_from(self.row).ok().filter(|it| *it < 26);
        match letter {
            Some(letter) => format!("{}{}", char::from(b'A' + letter), self.column + 1),
            None => format!("A{}.{}", self.row + 1, self.column + 1),
        }
    }

    /// What this part shows, and its neighbours do not.
    fn cores(&self) -> [f64; 4] {
        let edges = |all: &[Window], at: usize| {
            let (mut from, mut to) = (all[at].from, all[at].to);
            for seam in seams(all, at) {
                let middle = (all[at].from + all[at].to) / 2.0;
                if seam < middle { from = seam } else { to = seam }
            }
            (from, to)
        };
        let (left, right) = edges(self.across, self.column);
        let (top, bottom) = edges(self.down, self.row);
        [left, top, right, bottom]
    }
}

#[cfg(test)]
mod tests {
    use super::{OVERLAP, Window, ends, seams, windows};

    #[test]
    fn stretches_cover_the_whole_and_overlap_by_ten_millimetres() {
        for (length, room) in [(864.0, 572.0), (864.0, 540.0), (2_000.0, 300.0)] {
            let all = windows(length, room).expect("some parts");
            assert_eq!(all[0].from, 0.0);
            assert_eq!(all[all.len() - 1].to, length);
            for pair in all.windows(2) {
                approx::assert_abs_diff_eq!(
                    pair[0].to - pair[1].from,
                    OVERLAP,
                    epsilon = 1e-9
                );
            }
            assert!(all.iter().all(|it| it.to - it.from <= room + 1e-6));
            // One fewer would not do.
            let fewer = all.len() - 1;
            let least = length / fewer as f64 + OVERLAP * ends(fewer);
            assert!(fewer == 1 || least > room);
        }
        assert_eq!(windows(100.0, 100.0), Some(vec![Window { from: 0.0, to: 100.0 }]));
        assert_eq!(windows(1e6, 100.0), None);
    }

    #[test]
    fn neighbours_meet_at_one_line() {
        let all = windows(864.0, 300.0).unwrap();
        for at in 1..all.len() {
            let mine = seams(&all, at).next().unwrap();
            let theirs = seams(&all, at - 1).last().unwrap();
            assert_eq!(mine, theirs);
        }
    }
}
