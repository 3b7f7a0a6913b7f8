//! A small project made by hand, for the tests of the planner.

use leafwright::geom::{Axis, Length, Shape, Side, Size, Turn, Unit};
use leafwright::project::*;
use leafwright::source::Site;

/// So many 1/16 in.
pub(crate) fn sixteenths(number: i64) -> Length {
    Length::inch(number, 16)
}

/// Width × height in 1/16 in.
pub(crate) fn size(width: i64, height: i64) -> Size {
    Size::new(sixteenths(width), sixteenths(height))
}

pub(crate) fn text(words: &str) -> Text {
    Text { words: words.into(), ..Text::default() }
}

/// A project with one plain paper of 12 x 12 in and a bought base of 4 1/4 x
/// 5 1/2 in, and nothing on it yet.
pub(crate) fn project() -> Project {
    Project {
        title: text("A set"),
        photo: None,
        about: None,
        language: "en".into(),
        languages: Vec::new(),
        fonts: Vec::new(),
        edition: None,
        handed_out_by: None,
        unit: Unit::Inch,
        kits: 1,
        spares: Spares::Usual,
        sheets_alike: false,
        papers: vec![paper("leaf", size(192, 192), &[Runs::Any])],
        bases: vec![base("note", BaseFrom::Bought(None))],
        tools: Vec::new(),
        pieces: Vec::new(),
        late_cuts: Vec::new(),
        greetings: Vec::new(),
        cards: Vec::new(),
        cutting: Vec::new(),
        done_ahead: Vec::new(),
        cut_by: Vec::new(),
        cautions: Vec::new(),
        tips: Vec::new(),
        currency: None,
        in_batches: false,
        gift: None,
        minutes: Minutes::default(),
    }
}

/// A paper with faces that run so.
pub(crate) fn paper(name: &str, sheet: Size, runs: &[Runs]) -> Paper {
    let faces = runs.iter().enumerate();
    let stock = StockSheet { size: sheet, at_hand: None, site: Site::default() };
    Paper {
        name: text(name),
        kind: PaperKind::Patterned,
        stock: Stock::Sheets(vec![stock]),
        faces: faces
            .map(|(at, runs)| Face { name: text(&format!("face {at}")), runs: *runs })
            .collect(),
        grams: None,
        thickness: None,
        grain: None,
        pack: None,
        color: None,
        pictures: Vec::new(),
        order_number: None,
        sheets_alike: None,
        trade: Trade::default(),
    }
}

/// A base whose front is 4 1/4 x 5 1/2 in, folded along its long side.
pub(crate) fn base(name: &str, from: BaseFrom) -> Base {
    Base {
        name: text(name),
        front: size(68, 88),
        format: None,
        fold: FoldAlong::Long,
        from,
        comes: Comes::Scored,
        envelope: None,
        order_number: None,
        trade: Trade::default(),
    }
}

/// A piece of the first paper.
pub(crate) fn piece(name: &str, size: Size) -> Piece {
    Piece {
        name: text(name),
        of: PaperId(0),
        size,
        size_site: Site::default(),
        pattern: PatternOn::AsItRuns,
        spare: 0,
        count: None,
        mat: false,
        next_to: None,
        region: None,
    }
}

/// A tool of a kind.
pub(crate) fn tool(name: &str, kind: ToolKind) -> Tool {
    let (trade, lasts) = (Trade::default(), Lasts::default());
    Tool {
        name: text(name),
        kind,
        instead: None,
        color: None,
        order_number: None,
        trade,
        lasts,
    }
}

/// A card on the first base with layers.
pub(crate) fn card(name: &str, stands: Stands, layers: Vec<Layer>) -> Card {
    Card {
        name: text(name),
        count: 1,
        base: BaseId(0),
        stands,
        layers,
        extras: Vec::new(),
        inside: Inside::default(),
        envelope: Vec::new(),
        photo: None,
        tips: Vec::new(),
    }
}

/// A layer in the middle of the front.
pub(crate) fn layer(what: Placed) -> Layer {
    Layer {
        what,
        showing: None,
        turned: Turn::None,
        across: Along::Center,
        up: Along::Center,
        edge_to_edge: None,
        trim_flush: false,
        raised: 0,
        with: None,
        site: Site::default(),
    }
}

/// So far in from a side.
pub(crate) fn from(side: Side, inset: i64) -> Along {
    Along::From(side, sixteenths(inset), Site::default())
}

/// A greeting on a cut label of 2 x 1 in from the first paper.
pub(crate) fn greeting(name: &str) -> Greeting {
    Greeting {
        name: text(name),
        words: text(name),
        stamped: None,
        stamps: None,
        ink: None,
        label: Label {
            outline: Outline { shape: Shape::Rectangle, size: size(32, 16) },
            punch: None,
            site: Site::default(),
        },
        of: PaperId(0),
        narrowed: None,
        mat: None,
    }
}

/// `top` is cut off the piece by a level cut and makes `names`.
pub(crate) fn late_cut(
    piece: PieceId,
    whole: Size,
    top: i64,
    names: [&str; 2],
) -> LateCut {
    let at = sixteenths(top);
    let part = |name: &str, height: Length| LatePart {
        name: text(name),
        size: Size::new(whole.width, height),
        makes: 1,
        showing: None,
    };
    LateCut {
        piece,
        how: LateHow::CutOff { cut: Axis::Level, at },
        makes: vec![part(names[0], at), part(names[1], whole.height - at)],
        with: None,
        at_the_card: false,
        site: Site::default(),
    }
}
