//! Formats of sheets, cards and envelopes.

use crate::geom::{Length, Size};
use crate::standards::{Citation, Seen};

/// What a format is a format of.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum FormatKind {
    /// A sheet of paper as it is sold.
    Sheet,
    /// The front of a folded card.
    Card,
    /// An envelope.
    Envelope,
}

/// A named size.
#[derive(Debug, PartialEq, Eq)]
pub struct Format {
    /// The name in descriptions.
    pub name: &'static str,
    /// Other names for it.
    pub also: &'static [&'static str],
    /// What it is a format of.
    pub kind: FormatKind,
    /// The shorter side.
    pub short: Length,
    /// The longer side.
    pub long: Length,
    /// For a card: the name of the envelope that usually goes with it.
    pub envelope: Option<&'static str>,
    /// Where the figures come from.
    pub from: &'static Citation,
}

impl Format {
    /// The size as it stands tall.
    pub const fn size(&self) -> Size {
        Size::new(self.short, self.long)
    }
}

static ISO_216: Citation = Citation {
    title: "ISO 216:2007, trimmed sizes of writing paper",
    section: "Table 1 (A4 in the document; the other sizes as repeated by its readers)",
    seen: Seen::Repeated,
};
static ISO_217: Citation = Citation {
    title: "ISO 217:2013, untrimmed sizes of paper",
    section: "sizes RA and SRA",
    seen: Seen::Repeated,
};
static ISO_269: Citation = Citation {
    title: "ISO 269, sizes of correspondence envelopes",
    section: "table of sizes and content",
    seen: Seen::Repeated,
};
static Y14_1: Citation = Citation {
    title: "ASME Y14.1, drawing sheet size and format",
    section: "sheet sizes A and B",
    seen: Seen::Repeated,
};
static ANNOUNCEMENT: Citation = Citation {
    title: "lists of announcement envelopes by North American envelope makers",
    section: "sizes and largest enclosure",
    seen: Seen::Repeated,
};
static PRACTICE: Citation =
    Citation { title: "common practice, no source", section: "", seen: Seen::Practice };

const fn mm(millimetres: i64) -> Length {
    Length::mm(millimetres)
}

/// `eighths` eighths of an inch.
const fn e(eighths: i64) -> Length {
    Length::inch(eighths, 8)
}

const fn sheet(
    name: &'static str,
    also: &'static [&'static str],
    short: Length,
    long: Length,
    from: &'static Citation,
) -> Format {
    Format { name, also, kind: FormatKind::Sheet, short, long, envelope: None, from }
}

const fn card(
    name: &'static str,
    short: Length,
    long: Length,
    envelope: &'static str,
    from: &'static Citation,
) -> Format {
    let envelope = Some(envelope);
    Format { name, also: &[], kind: FormatKind::Card, short, long, envelope, from }
}

const fn envelope(
    name: &'static str,
    also: &'static [&'static str],
    short: Length,
    long: Length,
    from: &'static Citation,
) -> Format {
    Format { name, also, kind: FormatKind::Envelope, short, long, envelope: None, from }
}

/// Every format: sheets, cards, envelopes; each kind sorted by name.
///
/// North American names end in `-us`, since they collide with ISO names: the
/// A2 envelope has nothing to do with an A2 sheet.
pub static FORMATS: &[Format] = &[
    sheet("a2", &[], mm(420), mm(594), &ISO_216),
    sheet("a3", &[], mm(297), mm(420), &ISO_216),
    sheet("a4", &[], mm(210), mm(297), &ISO_216),
    sheet("a5", &[], mm(148), mm(210), &ISO_216),
    sheet("a6", &[], mm(105), mm(148), &ISO_216),
    sheet("a7", &[], mm(74), mm(105), &ISO_216),
    sheet("a8", &[], mm(52), mm(74), &ISO_216),
    sheet("b4", &[], mm(250), mm(353), &ISO_216),
    sheet("b5", &[], mm(176), mm(250), &ISO_216),
    sheet("half-letter", &["statement"], e(44), e(68), &Y14_1),
    sheet("legal", &[], e(68), e(112), &Y14_1),
    sheet("letter", &["us letter"], e(68), e(88), &Y14_1),
    sheet("ra3", &[], mm(305), mm(430), &ISO_217),
    sheet("ra4", &[], mm(215), mm(305), &ISO_217),
    sheet("sra3", &[], mm(320), mm(450), &ISO_217),
    sheet("sra4", &[], mm(225), mm(320), &ISO_217),
    sheet("tabloid", &["ledger"], e(88), e(136), &Y14_1),
    card("a1-us", e(28), e(39), "a1-us", &ANNOUNCEMENT),
    card("a10-us", e(46), e(74), "a10-us", &ANNOUNCEMENT),
    card("a2-us", e(34), e(44), "a2-us", &ANNOUNCEMENT),
    card("a5", mm(148), mm(210), "c5", &ISO_269),
    card("a6", mm(105), mm(148), "c6", &ISO_269),
    card("a6-us", e(36), e(50), "a6-us", &ANNOUNCEMENT),
    card("a7", mm(74), mm(105), "c7", &ISO_269),
    card("a7-us", e(40), e(56), "a7-us", &ANNOUNCEMENT),
    card("a8-us", e(42), e(63), "a8-us", &ANNOUNCEMENT),
    card("a9-us", e(44), e(68), "a9-us", &ANNOUNCEMENT),
    card("b6", mm(120), mm(170), "b6", &PRACTICE),
    card("dl", mm(99), mm(210), "dl", &ISO_269),
    card("no-10-us", e(31), e(72), "no-10-us", &PRACTICE),
    card("slimline-us", e(28), e(68), "slimline-us", &PRACTICE),
    card("square", mm(145), mm(145), "square", &PRACTICE),
    card("square-5-us", e(40), e(40), "square-5-us", &PRACTICE),
    card("square-6-us", e(48), e(48), "square-6-us", &PRACTICE),
    envelope("a1-us", &["4 bar"], e(29), e(41), &ANNOUNCEMENT),
    envelope("a10-us", &[], e(48), e(76), &ANNOUNCEMENT),
    envelope("a2-us", &["5 1/2 bar"], e(35), e(46), &ANNOUNCEMENT),
    envelope("a6-us", &["6 bar"], e(38), e(52), &ANNOUNCEMENT),
    envelope("a7-us", &[], e(42), e(58), &ANNOUNCEMENT),
    envelope("a8-us", &[], e(44), e(65), &ANNOUNCEMENT),
    envelope("a9-us", &[], e(46), e(70), &ANNOUNCEMENT),
    envelope("b4", &[], mm(250), mm(353), &ISO_269),
    envelope("b5", &[], mm(176), mm(250), &ISO_269),
    envelope("b6", &[], mm(125), mm(176), &ISO_269),
    envelope("c4", &[], mm(229), mm(324), &ISO_269),
    envelope("c5", &[], mm(162), mm(229), &ISO_269),
    envelope("c6", &[], mm(114), mm(162), &ISO_269),
    envelope("c6/c5", &[], mm(114), mm(229), &ISO_269),
    envelope("c7", &[], mm(81), mm(114), &ISO_216),
    envelope("c7/c6", &[], mm(81), mm(162), &ISO_269),
    envelope("dl", &[], mm(110), mm(220), &ISO_269),
    envelope("no-10-us", &[], e(33), e(76), &ANNOUNCEMENT),
    envelope("slimline-us", &[], e(31), e(71), &ANNOUNCEMENT),
    envelope("square", &[], mm(155), mm(155), &PRACTICE),
    envelope("square-5-us", &[], e(42), e(42), &PRACTICE),
    envelope("square-6-us", &[], e(52), e(52), &PRACTICE),
];
