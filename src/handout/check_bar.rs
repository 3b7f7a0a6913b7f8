//! Bars of known length that tell whether the printout is true to scale.

use crate::document::{Block, Drawing, Figure, Mark, ScaleWish, Section, Tone};
use crate::geom::{Length, Rect, Size};
use crate::handout::of_blocks;
use crate::handout::writer::Writer;
use crate::words::{Units, Words};

/// Short enough for the narrowest page.
const INCHES: i64 = 3;
const MILLIMETRES: i64 = 80;

pub(super) fn write(w: &Writer<'_>) -> Vec<Section> {
    let (inch, mm) = (Length::inch(INCHES, 1), Length::mm(MILLIMETRES));
    let (high, gap) = (Length::mm(4), Length::mm(4));
    let inch_bar = Rect::whole(Size::new(inch, high));
    let mm_bar = Rect::new(Length::ZERO, high + gap, Size::new(mm, high));
    let drawing = Drawing {
        size: Size::new(inch.max(mm), mm_bar.bottom()),
        marks: vec![Mark::RulerInch { rect: inch_bar }, Mark::RulerMm { rect: mm_bar }],
    };
    // The bars stand for both units, whatever the reader's are.
    let own = |unit| {
        let words = Words::load(w.words.language(), Units::Only(unit));
        words.length(if unit == crate::geom::Unit::Inch { inch } else { mm })
    };
    let values = || {
        let inches = own(crate::geom::Unit::Inch);
        let millimetres = own(crate::geom::Unit::Mm);
        [("inches", inches.into()), ("millimetres", millimetres.into())]
    };
    let figure = Figure {
        drawing,
        alt: w.say("check-alt", &values()),
        caption: None,
        scale: ScaleWish::Full,
        says_scale: false,
    };
    let text = w.tell("check-text", &values());
    let text = vec![Block::Paragraph(Tone::Body, text)];
    let blocks = vec![Block::Keep(vec![Block::Beside(figure, text)])];
    of_blocks("check-bar", w.tell("check-title", &[]), blocks)
}
