//! What a drawing is drawn on: items so far, how far they reach, what is taken.

use crate::document::Drawing;
use crate::document::Stroke;
use crate::fonts::FaceId;
use crate::geom::Length;
use crate::geom::Rect;
use crate::geom::Scale;
use crate::geom::Side;
use crate::page::Ink;
use crate::page::Item;
use crate::page::Line;
use crate::page::Owner;
use crate::page::Path;
use crate::page::Piece;
use crate::page::Text;
use crate::page::What;
use crate::page::Window;

use super::Picture;
use crate::layout::setter::Setter;
use crate::layout::text;

/// A box: left, top, right and bottom, in points.
pub(super) type Edges = [f64; 4];

/// An area as it was drawn, for names to look for free places.
#[derive(Clone, Copy, Debug)]
pub(super) struct Drawn {
    pub(super) edges: Edges,
    /// The largest part of it that is a box: words and signs stand in there.
    pub(super) core: Edges,
    /// What shines through between the hatch.
    pub(super) ground: Option<Ink>,
}

/// A drawing that is being made; the area's top left corner is the origin.
pub(super) struct Canvas {
    pub(super) scale: Scale,
    owner: Owner,
    pub(super) items: Vec<Item>,
    pub(super) bounds: Edges,
    /// The area itself.
    pub(super) area: Edges,
    /// Boxes of words and signs: nothing else may be written there.
    pub(super) taken: Vec<Edges>,
    pub(super) drawn: Vec<Drawn>,
    /// Boxes of pictures, each with the number of areas that were drawn before it.
    pub(super) pictures: Vec<(usize, Edges)>,
    /// How far things outside reach from the area: left, top, right, bottom.
    pub(super) reach: [f64; 4],
    /// Size of words.
    pub(super) size: f64,
    gray: bool,
}

impl Canvas {
    pub(super) fn new(
        setter: &Setter<'_>,
        drawing: &Drawing,
        scale: Scale,
        owner: Owner,
    ) -> Self {
        let width = scale.on_page(drawing.size.width).0;
        let height = scale.on_page(drawing.size.height).0;
        let area = [0.0, 0.0, width, height];
        Self {
            scale,
            owner,
            items: Vec::new(),
            bounds: area,
            area,
            taken: Vec::new(),
            drawn: Vec::new(),
            pictures: Vec::new(),
            reach: [0.0; 4],
            size: setter.theme.label.size,
            gray: setter.theme.gray,
        }
    }

    /// A length on the page.
    pub(super) fn on(&self, length: Length) -> f64 {
        self.scale.on_page(length).0
    }

    /// A box on the page.
    pub(super) fn edges(&self, rect: Rect) -> Edges {
        [self.on(rect.x), self.on(rect.y), self.on(rect.right()), self.on(rect.bottom())]
    }

    /// Notes that something reaches this far.
    pub(super) fn cover(&mut self, edges: Edges) {
        self.bounds = [
            self.bounds[0].min(edges[0]),
            self.bounds[1].min(edges[1]),
            self.bounds[2].max(edges[2]),
            self.bounds[3].max(edges[3]),
        ];
    }

    /// Whether nothing is written in a box.
    pub(super) fn is_free(&self, edges: Edges) -> bool {
        self.taken.iter().all(|it| !overlap(*it, edges))
    }

    /// Draws a path.
    pub(super) fn path(
        &mut self,
        pieces: Vec<Piece>,
        fill: Option<Ink>,
        line: Option<Line>,
    ) {
        let gray = self.gray;
        let printed = move |ink: Ink| if gray { ink.gray() } else { ink };
        let fill = fill.map(printed);
        let line = line.map(|it| Line { ink: printed(it.ink), ..it });
        let path = Path { pieces, fill, line };
        self.items.push(Item { owner: self.owner, what: What::Path(path) });
    }

    /// Clears a place for words or a sign of the hatch below, if it lies well within
    /// an area.
    pub(super) fn clear(&mut self, spot: Edges) {
        let below = self.drawn.iter().rposition(|it| within(spot, inset(it.core, -0.1)));
        if self.on_picture(spot, below) {
            self.blank(spot, Ink::PAPER);
        } else if let Some(ground) = below.and_then(|it| self.drawn[it].ground) {
            self.blank(spot, ground);
        }
    }

    /// Whether a picture is seen in a box, above a certain area.
    fn on_picture(&self, spot: Edges, area: Option<usize>) -> bool {
        let mut pictures = self.pictures.iter();
        pictures.any(|(at, edges)| {
            area.is_none_or(|area| *at > area) && overlap(*edges, spot)
        })
    }

    /// Draws a light line below one that crosses a picture: no picture is so light
    /// and so dark at once that both are lost on it.
    pub(super) fn halo(&mut self, pieces: &[Piece], edges: Edges, line: &Line) {
        let near = inset(edges, -0.5);
        if self.pictures.iter().any(|it| overlap(it.1, near)) {
            let light = Line {
                ink: Ink::PAPER,
                width: line.width + 2.0,
                dash: Vec::new(),
                round: line.round,
            };
            self.path(pieces.to_vec(), None, Some(light));
        }
    }

    /// Draws a part of a picture.
    pub(super) fn window(&mut self, window: Window) {
        self.items.push(Item { owner: self.owner, what: What::Window(window) });
    }

    /// Draws straight lines of one look.
    pub(super) fn strokes(&mut self, pieces: Vec<Piece>, ink: Ink, width: f64) {
        let line = Line { ink, width, dash: Vec::new(), round: false };
        self.path(pieces, None, Some(line));
    }

    /// Fills a box.
    pub(super) fn blank(&mut self, edges: Edges, ink: Ink) {
        let [left, top, right, bottom] = edges;
        let piece = Piece::rect(left, top, right - left, bottom - top);
        self.path(vec![piece], Some(ink), None);
    }

    /// Writes shaped words with their baseline starting at a point.
    pub(super) fn write(&mut self, word: &Word, x: f64, y: f64, upwards: bool, ink: Ink) {
        let ink = if self.gray { ink.gray() } else { ink };
        for placed in &word.runs {
            let (x, y) = if upwards { (x, y - placed.0) } else { (x + placed.0, y) };
            let text = Text { run: placed.1.clone(), x, y, upwards, ink };
            self.items.push(Item { owner: self.owner, what: What::Text(text) });
        }
    }

    /// Moves everything so that nothing stands left of or above the origin.
    pub(super) fn finish(mut self) -> Picture {
        let [left, top, right, bottom] = self.bounds;
        for item in &mut self.items {
            item.shift(-left, -top);
        }
        Picture { width: right - left, height: bottom - top, items: self.items }
    }
}

/// A few words in one line.
pub(super) struct Word {
    runs: Vec<(f64, std::sync::Arc<crate::page::Run>)>,
    /// How wide they are.
    pub(super) width: f64,
}

impl Word {
    /// Shapes words in a face, in one line.
    pub(super) fn new(
        setter: &mut Setter<'_>,
        words: &str,
        face: FaceId,
        size: f64,
    ) -> Self {
        let mut lines = Self::broken(setter, words, face, size, f64::INFINITY);
        lines.pop().unwrap_or(Self { runs: Vec::new(), width: 0.0 })
    }

    /// Whether it is a letter or number that reaches no lower than the line.
    pub(super) fn is_letter(&self) -> bool {
        let says = self.runs.iter().flat_map(|it| it.1.text.chars());
        self.runs.len() == 1
            && says.clone().count() <= 2
            && says
                .clone()
                .all(|it| it != 'Q' && (it.is_ascii_uppercase() || it.is_ascii_digit()))
    }

    /// Shapes words in lines of at most a width.
    pub(super) fn lines(setter: &mut Setter<'_>, words: &str, width: f64) -> Vec<Self> {
        let size = setter.theme.label.size;
        Self::broken(setter, words, FaceId::SANS, size, width)
    }

    fn broken(
        setter: &mut Setter<'_>,
        words: &str,
        face: FaceId,
        size: f64,
        width: f64,
    ) -> Vec<Self> {
        let lines = text::set_words(setter.press, words, face, size, width);
        if !lines.missing.is_empty() {
            setter.report(&lines.missing, &[crate::document::Inline::plain(words)]);
        }
        let word = |line: &text::Line| Self {
            runs: line.runs.iter().map(|it| (it.x, it.run.clone())).collect(),
            width: line.width,
        };
        lines.lines.iter().map(word).collect()
    }

    /// Whether there is nothing to write.
    pub(super) fn is_empty(&self) -> bool {
        self.runs.is_empty()
    }
}

/// Whether two boxes have an area in common.
pub(super) fn overlap(one: Edges, two: Edges) -> bool {
    one[0] < two[2] && two[0] < one[2] && one[1] < two[3] && two[1] < one[3]
}

/// Whether a box lies within another.
pub(super) fn within(inner: Edges, outer: Edges) -> bool {
    inner[0] >= outer[0]
        && inner[1] >= outer[1]
        && inner[2] <= outer[2]
        && inner[3] <= outer[3]
}

/// A box, smaller by so much on each side.
pub(super) fn inset(edges: Edges, by: f64) -> Edges {
    [edges[0] + by, edges[1] + by, edges[2] - by, edges[3] - by]
}

/// Place of a side in arrays of four.
pub(super) fn index(side: Side) -> usize {
    match side {
        Side::Left => 0,
        Side::Top => 1,
        Side::Right => 2,
        Side::Bottom => 3,
    }
}

/// The look of a line (ISO 128-2: dashes of 12, gaps of 3, long dashes of 24 line
/// widths; wide lines are twice the narrow ones).
pub(super) fn look(stroke: Stroke) -> Line {
    const NARROW: f64 = 0.6;
    const WIDE: f64 = 1.2;
    let (ink, width) = match stroke {
        Stroke::Edge => (Ink::TEXT, WIDE * 0.75),
        Stroke::Heavy => (Ink::TEXT, WIDE * 1.4),
        Stroke::Cut => (Ink::ACCENT, WIDE * 1.2),
        Stroke::Fold => (Ink::TEXT, NARROW),
        Stroke::Punch => (Ink::TEXT, NARROW * 0.75),
        Stroke::Ghost => (Ink::QUIET, NARROW),
        Stroke::Thin => (Ink::QUIET, NARROW * 0.75),
    };
    let dash = match stroke {
        Stroke::Fold => vec![12.0 * NARROW, 3.0 * NARROW],
        Stroke::Punch => vec![4.0 * NARROW, 3.0 * NARROW],
        Stroke::Ghost => {
            [24.0, 3.0, 0.5, 3.0, 0.5, 3.0].iter().map(|it| it * NARROW).collect()
        }
        Stroke::Edge | Stroke::Heavy | Stroke::Cut | Stroke::Thin => Vec::new(),
    };
    Line { ink, width, dash, round: false }
}
