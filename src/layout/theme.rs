//! Sizes, margins and voices: how a page looks.

use crate::fonts::FaceId;
use crate::page::Ink;

/// Which paper a handout is printed on, and for whose eyes.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct PageSetup {
    /// The paper.
    pub size: PageSize,
    /// Text of 18 pt and more (UKAAF G003: 16 pt at least, ideally 18 pt).
    pub large_print: bool,
    /// Greys only.
    pub gray: bool,
}

/// Paper for handouts, upright.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum PageSize {
    /// 8 1/2 × 11 in (ANSI Y14.1).
    #[default]
    Letter,
    /// 210 × 297 mm (ISO 216).
    A4,
    /// 5 1/2 × 8 1/2 in.
    HalfLetter,
    /// 148 × 210 mm (ISO 216).
    A5,
}

impl PageSize {
    /// Width and height in points.
    pub fn points(self) -> (f64, f64) {
        const MM: f64 = 72.0 / 25.4;
        match self {
            Self::Letter => (612.0, 792.0),
            Self::A4 => (210.0 * MM, 297.0 * MM),
            Self::HalfLetter => (396.0, 612.0),
            Self::A5 => (148.0 * MM, 210.0 * MM),
        }
    }

    /// The paper that two such pages fill side by side, if they are pages of a
    /// booklet: an a4 sheet is 1 mm wider than two a5 pages.
    pub fn doubled(self) -> Option<Self> {
        match self {
            Self::HalfLetter => Some(Self::Letter),
            Self::A5 => Some(Self::A4),
            Self::Letter | Self::A4 => None,
        }
    }

    /// Width and height in points of the paper lying on its long side.
    pub fn sideways(self) -> (f64, f64) {
        let (width, height) = self.points();
        (height, width)
    }
}

/// A way of setting words: base face, size, leading, colour.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Voice {
    /// Plain words.
    pub plain: FaceId,
    /// Strong words.
    pub strong: FaceId,
    /// Quoted words.
    pub quoted: FaceId,
    /// Size of the em in points.
    pub size: f64,
    /// From baseline to baseline.
    pub leading: f64,
    /// Its colour.
    pub ink: Ink,
}

impl Voice {
    /// Where the baseline lies below the top of a line.
    pub(crate) fn baseline(&self) -> f64 {
        self.leading / 2.0 + 0.33 * self.size
    }

    /// The same voice in another colour.
    #[must_use]
    pub(crate) fn in_ink(self, ink: Ink) -> Self {
        Self { ink, ..self }
    }
}

/// Everything that is fixed before the first block is set.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Theme {
    /// The paper.
    pub page: (f64, f64),
    /// Left edge of all that is printed.
    pub left: f64,
    /// Right edge of all that is printed.
    pub right: f64,
    /// Top edge of the text.
    pub top: f64,
    /// Bottom edge of the text.
    pub bottom: f64,
    /// Baseline of the foot.
    pub foot: f64,
    /// Width of the outer margin column; 0 if the page is too narrow for one.
    pub margin: f64,
    /// Between the margin column and the text, and between things side by side.
    pub gutter: f64,
    /// Heights are whole multiples of this half of the leading.
    pub unit: f64,
    /// Between blocks, and between steps.
    pub between: f64,
    /// Factor of large print.
    pub enlarged: f64,
    /// No line of running text is longer, whatever the page.
    pub measure: f64,
    /// Greys only.
    pub gray: bool,
    /// Running text.
    pub body: Voice,
    /// The sentence that opens the handout.
    pub lead: Voice,
    /// Remarks, captions, asides.
    pub remark: Voice,
    /// Cells of tables.
    pub cell: Voice,
    /// Words in drawings.
    pub label: Voice,
    /// Numerals of steps.
    pub numeral: Voice,
    /// Cautions (ANSI Z535.6 leaves the size open; UKAAF G003: 12 pt at least).
    pub caution: Voice,
    /// Title, headings of sections, headings within them.
    pub headings: [Voice; 4],
    /// The foot of pages.
    pub foot_voice: Voice,
}

/// Size of text in large print (UKAAF G003: ideally 18 pt).
const LARGE: f64 = 18.0;

impl Theme {
    /// The look of a page.
    pub(crate) fn new(setup: &PageSetup) -> Self {
        let page = setup.size.points();
        let wide = page.0 > 500.0;
        // Body 11.25 pt, on narrow pages 11 pt, in large print 18 pt.
        let (size, row) = if wide { (11.25, 14.0) } else { (11.0, 12.5) };
        let k = if setup.large_print { LARGE / size } else { 1.0 };
        // In large print lesser text is no smaller than the body, and headings need
        // not tower over it.
        let least = if setup.large_print { LARGE } else { 0.0 };
        let towers = if setup.large_print { 0.8 } else { 1.0 };
        let leading = row * k;
        let serif = |size: f64, leading: f64| Voice {
            plain: FaceId::SERIF,
            strong: FaceId::SERIF_STRONG,
            quoted: FaceId::SERIF_ITALIC,
            size: (size * k).max(least),
            leading: leading * k,
            ink: Ink::TEXT,
        };
        let sans = |size: f64, leading: f64| Voice {
            plain: FaceId::SANS,
            strong: FaceId::SANS_STRONG,
            quoted: FaceId::SERIF_ITALIC,
            size: (size * k).max(least),
            leading: leading * k,
            ink: Ink::TEXT,
        };
        let bold = |size: f64, leading: f64| Voice {
            plain: FaceId::SANS_STRONG,
            ..sans(size, leading)
        };
        let edge = if wide { 46.0 } else { 36.0 };
        let margin = match (wide, setup.large_print) {
            (true, false) => 76.0,
            (true, true) => 60.0,
            (false, _) => 0.0,
        };
        Self {
            page,
            left: edge,
            right: page.0 - edge,
            top: if wide { edge - 2.0 } else { 30.0 },
            bottom: page.1 - if wide { 52.0 } else { 37.0 },
            foot: page.1 - if wide { 30.0 } else { 23.5 },
            margin,
            gutter: 14.0,
            unit: leading / 2.0,
            between: if wide { leading / 2.0 } else { 0.36 * leading },
            enlarged: k,
            measure: 36.5 * 11.25 * k,
            gray: setup.gray,
            body: serif(size, row),
            lead: serif(if wide { 13.0 } else { 12.5 }, 1.25 * row),
            remark: sans(10.0, row),
            cell: sans(if wide { 10.5 } else { 10.0 }, row),
            // In large print labels of drawings grow less than text: there is no more
            // room in a drawing, and it is better seen than crowded.
            label: Voice {
                size: if setup.large_print { 13.0 } else { 9.25 },
                ..sans(9.25, 11.0)
            },
            numeral: bold(16.0, row).in_ink(Ink::ACCENT),
            caution: Voice {
                plain: FaceId::SANS,
                ..sans(12.0, if wide { 14.5 } else { 13.75 })
            },
            headings: [
                bold(towers * if wide { 25.0 } else { 20.0 }, towers * 2.0 * row),
                bold(towers * if wide { 16.0 } else { 14.0 }, 1.5 * row),
                bold(12.0, row),
                bold(11.0, row).in_ink(Ink::ACCENT),
            ],
            foot_voice: sans(9.0, 11.0).in_ink(Ink::QUIET),
        }
    }

    /// Left edge of the text.
    pub(crate) fn text_left(&self) -> f64 {
        if self.margin > 0.0 { self.left + self.margin + self.gutter } else { self.left }
    }

    /// Height of a page's text.
    pub(crate) fn height(&self) -> f64 {
        self.bottom - self.top
    }

    /// Rounds a height up to the rhythm of the lines.
    pub(crate) fn snap(&self, height: f64) -> f64 {
        (height / self.unit - 1e-6).ceil() * self.unit
    }

    /// The colour as it is printed in this setup.
    pub(crate) fn ink(&self, ink: Ink) -> Ink {
        if self.gray { ink.gray() } else { ink }
    }
}

#[cfg(test)]
mod tests {
    use super::{PageSetup, PageSize, Theme};

    #[test]
    fn everything_stays_a_quarter_inch_from_the_edges() {
        for size in [PageSize::Letter, PageSize::A4, PageSize::HalfLetter, PageSize::A5] {
            for large_print in [false, true] {
                let theme = Theme::new(&PageSetup { size, large_print, gray: false });
                assert!(theme.left >= 18.0 && theme.page.0 - theme.right >= 18.0);
                assert!(theme.top >= 18.0 && theme.page.1 - theme.foot >= 22.0);
            }
        }
    }
}
