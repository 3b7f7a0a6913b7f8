//! A sheet drawn with letters and lines, for a terminal.
//!
//! The drawing is to scale as far as characters allow: a character is taken to be
//! twice as high as wide. Where a strip would be too narrow to show, it is drawn
//! wider, and the sheet keeps its outline.

use crate::geom::{Length, Rect, Size, Unit};
use crate::plan::cut::{Leaf, Part, Tree};

/// How a sheet is drawn.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Pencil<'a> {
    /// Only letters and signs that every terminal has, no lines for boxes.
    pub ascii: bool,
    /// At most so many characters in a line; at least 20.
    pub columns: usize,
    /// At most so many lines; at least 8.
    pub lines: usize,
    /// The unit of sizes.
    pub unit: Unit,
    /// What an offcut is called.
    pub offcut: &'a str,
    /// What waste is called.
    pub waste: &'a str,
}

impl Pencil<'static> {
    /// 72 columns and 36 lines, in English.
    pub const fn new(unit: Unit, ascii: bool) -> Self {
        Self { ascii, columns: 72, lines: 36, unit, offcut: "offcut", waste: "waste" }
    }
}

/// Draws a sheet: every part with its letter and, if there is room, its size.
///
/// Lines end with a line break and have no blanks at the end.
pub fn drawn(sheet: Size, tree: &Tree, parts: &[Part], pencil: &Pencil) -> String {
    let placements = tree.placements(sheet);
    let edges = |of: fn(&Rect) -> [Length; 2]| {
        let mut edges: Vec<Length> =
            placements.iter().flat_map(|it| of(&it.rect)).collect();
        edges.sort_unstable();
        edges.dedup();
        edges
    };
    let (xs, ys) = (edges(|it| [it.x, it.right()]), edges(|it| [it.y, it.bottom()]));
    let (columns, lines) = room(sheet, pencil);
    let (columns, lines) = (spread(&xs, columns), spread(&ys, lines));
    let at = |edges: &[Length], places: &[usize], edge: Length| {
        places[edges.binary_search(&edge).unwrap_or(0)]
    };
    let mut canvas =
        Canvas::new(*columns.last().unwrap_or(&0), *lines.last().unwrap_or(&0));
    for placed in &placements {
        let rect = placed.rect;
        let left = at(&xs, &columns, rect.x);
        let right = at(&xs, &columns, rect.right());
        let top = at(&ys, &lines, rect.y);
        let bottom = at(&ys, &lines, rect.bottom());
        canvas.frame(left, top, right, bottom);
        let size = rect.size.show(pencil.unit);
        let (name, filling) = match placed.leaf {
            Leaf::Part { part, turned } => {
                let letter = parts.get(part).map_or("?", |it| it.letter.as_str());
                (
                    if turned { format!("{letter} turned") } else { letter.to_owned() },
                    None,
                )
            }
            Leaf::Keep => (pencil.offcut.to_owned(), None),
            Leaf::Waste => {
                (pencil.waste.to_owned(), Some(if pencil.ascii { '.' } else { '·' }))
            }
        };
        let inside = (left + 1, top + 1, right, bottom);
        canvas.write(inside, &name, &size, filling, placed.leaf == Leaf::Waste);
    }
    canvas.show(pencil.ascii)
}

/// How many steps right and down the sheet may take.
fn room(sheet: Size, pencil: &Pencil) -> (usize, usize) {
    let (most_columns, most_lines) =
        (pencil.columns.max(20) - 1, pencil.lines.max(8) - 1);
    let (width, height) = (sheet.width.units().max(1), sheet.height.units().max(1));
    // Two characters side by side are as wide as one is high.
    let scaled = |by: usize, over: i64, under: i64| {
        let length = by as i128 * i128::from(over) / i128::from(under.max(1));
        usize::try_from(length).unwrap_or(usize::MAX)
    };
    let lines = scaled(most_columns, height, width.saturating_mul(2));
    if lines <= most_lines {
        (most_columns, lines.max(2))
    } else {
        let columns = scaled(most_lines * 2, width, height);
        (columns.clamp(2, most_columns), most_lines)
    }
}

/// Places for edges along a line of `most` steps: to scale, but each apart from
/// the next, by more where there is room.
fn spread(edges: &[Length], most: usize) -> Vec<usize> {
    let whole = edges.last().map_or(1, |it| it.units().max(1));
    let scaled: Vec<usize> = edges
        .iter()
        .map(|it| {
            let at = (i128::from(it.units()) * 2 * most as i128 + i128::from(whole))
                / (2 * i128::from(whole));
            usize::try_from(at).unwrap_or(0)
        })
        .collect();
    for apart in [4, 3, 2, 1] {
        if apart * (edges.len().max(1) - 1) > most {
            continue;
        }
        let mut places = scaled.clone();
        for idx in 1..places.len() {
            places[idx] = places[idx].max(places[idx - 1] + apart);
        }
        let mut limit = most;
        for place in places.iter_mut().rev() {
            *place = (*place).min(limit);
            limit = place.saturating_sub(apart);
        }
        return places;
    }
    // More edges than can be told apart.
    scaled
}

/// Lines by the sides that they leave a character on, and letters.
struct Canvas {
    columns: usize,
    lines: usize,
    /// Bits: 1 up, 2 right, 4 down, 8 left.
    strokes: Vec<u8>,
    letters: Vec<char>,
}

impl Canvas {
    fn new(last_column: usize, last_line: usize) -> Self {
        let (columns, lines) = (last_column + 1, last_line + 1);
        let n = columns * lines;
        Self { columns, lines, strokes: vec![0; n], letters: vec![' '; n] }
    }

    fn frame(&mut self, left: usize, top: usize, right: usize, bottom: usize) {
        for line in [top, bottom] {
            for column in left..right {
                self.strokes[line * self.columns + column] |= 2;
                self.strokes[line * self.columns + column + 1] |= 8;
            }
        }
        for column in [left, right] {
            for line in top..bottom {
                self.strokes[line * self.columns + column] |= 4;
                self.strokes[(line + 1) * self.columns + column] |= 1;
            }
        }
    }

    /// Writes name and size in the middle, as much of them as there is room for.
    fn write(
        &mut self,
        (left, top, right, bottom): (usize, usize, usize, usize),
        name: &str,
        size: &str,
        filling: Option<char>,
        whole_or_nothing: bool,
    ) {
        let (wide, high) = (right.saturating_sub(left), bottom.saturating_sub(top));
        if let Some(filling) = filling {
            for line in top..bottom {
                for column in left..right {
                    self.letters[line * self.columns + column] = filling;
                }
            }
        }
        let fits = |text: &str| text.chars().count() <= wide;
        let one = format!("{name}  {size}");
        let short = name.split(' ').next().unwrap_or_default();
        let bare = size.rsplit_once(' ').map_or(size, |it| it.0);
        let rows: Vec<&str> = if high >= 2 && fits(name) && fits(size) {
            vec![name, size]
        } else if high >= 2 && fits(name) && fits(bare) {
            vec![name, bare]
        } else if high >= 1 && fits(&one) {
            vec![&one]
        } else if high >= 1 && fits(name) {
            vec![name]
        } else if high >= 1 && fits(short) && !whole_or_nothing {
            vec![short]
        } else {
            return;
        };
        let first = top + (high - rows.len()) / 2;
        for (idx, row) in rows.iter().enumerate() {
            let n = row.chars().count();
            // A blank on either side where there is room, over the filling.
            let column = left + (wide - n) / 2;
            let padded = n + 2 <= wide;
            let from = column - usize::from(padded);
            let text: Vec<char> = match padded {
                true => format!(" {row} ").chars().collect(),
                false => row.chars().collect(),
            };
            for (at, letter) in text.into_iter().enumerate() {
                self.letters[(first + idx) * self.columns + from + at] = letter;
            }
        }
    }

    fn show(&self, ascii: bool) -> String {
        let mut shown = String::new();
        for line in 0..self.lines {
            let row = (0..self.columns).map(|column| {
                let at = line * self.columns + column;
                let border = line == 0
                    || column == 0
                    || line + 1 == self.lines
                    || column + 1 == self.columns;
                match self.strokes[at] {
                    0 => self.letters[at],
                    strokes if ascii => plain(strokes),
                    strokes => line_of(strokes, border),
                }
            });
            let row: String = row.collect();
            shown.push_str(row.trim_end());
            shown.push('\n');
        }
        shown
    }
}

fn plain(strokes: u8) -> char {
    match strokes {
        2 | 8 | 10 => '-',
        1 | 4 | 5 => '|',
        _ => '+',
    }
}

/// The box-drawing sign for the strokes; the outline of the sheet is heavy.
fn line_of(strokes: u8, border: bool) -> char {
    const LIGHT: [char; 16] =
        [' ', '╵', '╶', '└', '╷', '│', '┌', '├', '╴', '┘', '─', '┴', '┐', '┤', '┬', '┼'];
    const HEAVY: [char; 16] =
        [' ', '╹', '╺', '┗', '╻', '┃', '┏', '┠', '╸', '┛', '━', '┷', '┓', '┨', '┯', '╋'];
    (if border { HEAVY } else { LIGHT })[usize::from(strokes & 15)]
}
