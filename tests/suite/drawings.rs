//! Drawings to lay out: a cut sheet, paper in hand, fronts, rulers, every shape.

use leafwright::document::{Drawing, Fill, Mark, Stroke};
use leafwright::geom::{Length, Rect, Shape, Side, Size, Turn};

/// Eighths of an inch.
pub(crate) fn eighths(count: i64) -> Length {
    Length::inch(count, 8)
}

/// A box in eighths of an inch.
pub(crate) fn boxed(x: i64, y: i64, width: i64, height: i64) -> Rect {
    Rect::new(eighths(x), eighths(y), Size::new(eighths(width), eighths(height)))
}

/// A rectangle.
pub(crate) fn area(rect: Rect, line: Stroke, fill: Fill) -> Mark {
    Mark::Area { rect, shape: Shape::Rectangle, line: Some(line), fill }
}

/// The pattern of a paper face.
pub(crate) fn face(index: u8) -> Fill {
    Fill::Face { index, color: None, turn: Turn::None }
}

/// A name that may turn.
pub(crate) fn name(rect: Rect, short: &str, long: &str) -> Mark {
    let long = (!long.is_empty()).then(|| long.to_string());
    Mark::Name { rect, short: short.into(), long, may_turn: true }
}

/// A dimension.
pub(crate) fn dimension(side: Side, along: Rect, text: &str, tier: u8) -> Mark {
    Mark::Dimension { side, along, text: text.into(), tier }
}

/// An 8 × 8 in sheet cut into pieces, with names, cuts and dimensions.
pub(crate) fn cut_plan() -> Drawing {
    let pieces = [
        (boxed(0, 0, 44, 16), "A", "sash", 0),
        (boxed(0, 16, 44, 10), "B", "ribbon", 1),
        (boxed(0, 26, 44, 10), "B", "ribbon", 1),
        (boxed(0, 36, 22, 28), "C", "tile", 2),
        (boxed(22, 36, 22, 28), "C", "tile", 2),
        (boxed(44, 0, 20, 44), "D", "banner", 3),
    ];
    let mut marks = vec![area(boxed(0, 0, 64, 64), Stroke::Edge, Fill::Paper)];
    for (rect, _, _, index) in pieces {
        marks.push(area(rect, Stroke::Thin, face(index)));
    }
    marks.push(area(boxed(44, 44, 20, 20), Stroke::Thin, Fill::Kept));
    marks.push(name(boxed(44, 44, 20, 20), "", "kept"));
    for (rect, short, long, _) in pieces {
        marks.push(name(rect, short, long));
        marks.push(Mark::Runs { rect, turn: Turn::None, both_ways: short == "B" });
    }
    marks.push(Mark::CutNumber {
        side: Side::Top,
        along: boxed(44, 0, 0, 64),
        text: "1".into(),
    });
    for (number, y) in [(2, 16), (3, 26), (4, 36)] {
        marks.push(Mark::CutNumber {
            side: Side::Left,
            along: boxed(0, y, 44, 0),
            text: number.to_string(),
        });
    }
    marks.push(dimension(Side::Top, boxed(0, 0, 44, 0), "5 1/2 in", 0));
    marks.push(dimension(Side::Top, boxed(44, 0, 20, 0), "2 1/2 in", 0));
    marks.push(dimension(Side::Top, boxed(0, 0, 64, 0), "8 in", 1));
    for (y, height, text) in [(0, 16, "2 in"), (16, 10, "1 1/4 in"), (26, 10, "1 1/4 in")]
    {
        marks.push(dimension(Side::Left, boxed(0, y, 0, height), text, 0));
    }
    marks.push(dimension(Side::Left, boxed(0, 36, 0, 28), "3 1/2 in", 0));
    marks.push(dimension(Side::Left, boxed(0, 0, 0, 64), "8 in", 1));
    marks.push(dimension(Side::Right, boxed(0, 0, 0, 44), "5 1/2 in", 0));
    marks.push(dimension(Side::Bottom, boxed(0, 0, 22, 0), "2 3/4 in", 0));
    marks.push(dimension(Side::Bottom, boxed(22, 0, 22, 0), "2 3/4 in", 0));
    Drawing { size: Size::new(eighths(64), eighths(64)), marks }
}

/// The paper in hand, lying against the rule, with one cut to make.
pub(crate) fn in_hand(width: i64, height: i64, cut: i64, text: &str) -> Drawing {
    let whole = boxed(0, 0, width, height);
    let marks = vec![
        area(boxed(0, 0, cut, height), Stroke::Edge, face(0)),
        area(boxed(cut, 0, width - cut, height), Stroke::Edge, Fill::Paper),
        Mark::Line { along: boxed(cut, 0, 0, height), line: Stroke::Cut },
        Mark::Rule { side: Side::Bottom, rect: whole },
        name(boxed(0, 0, cut, height), "A", "sash"),
        dimension(Side::Top, boxed(0, 0, cut, 0), text, 0),
    ];
    Drawing { size: Size::new(eighths(width), eighths(height)), marks }
}

/// A card front with layers.
pub(crate) fn front(tall: bool, label: &str) -> Drawing {
    let (width, height) = if tall { (34, 44) } else { (44, 34) };
    let whole = boxed(0, 0, width, height);
    let band = boxed(0, height - 20, width, 12);
    let tag = boxed(width / 2 - 10, height - 19, 20, 10);
    let marks = vec![
        area(whole, Stroke::Edge, Fill::Paper),
        area(band, Stroke::Edge, face(0)),
        Mark::Area {
            rect: tag,
            shape: Shape::Rounded,
            line: Some(Stroke::Edge),
            fill: Fill::Strong,
        },
        name(tag, label, ""),
        name(whole, "", "base"),
        name(band, "A", "sash"),
        Mark::Line { along: boxed(0, 0, width, 0), line: Stroke::Fold },
        dimension(Side::Right, boxed(0, height - 8, 0, 8), "1 in", 0),
        dimension(Side::Right, boxed(0, height - 20, 0, 12), "1 1/2 in", 0),
        dimension(
            Side::Bottom,
            boxed(0, 0, width, 0),
            if tall { "4 1/4 in" } else { "5 1/2 in" },
            0,
        ),
    ];
    Drawing { size: Size::new(eighths(width), eighths(height)), marks }
}

/// A ruler of six inches and one of fifteen centimetres.
pub(crate) fn rulers() -> Drawing {
    let size = Size::new(eighths(48), eighths(8));
    let cm = Rect::new(Length::ZERO, eighths(5), Size::new(Length::mm(150), eighths(2)));
    let marks =
        vec![Mark::RulerInch { rect: boxed(0, 0, 48, 2) }, Mark::RulerMm { rect: cm }];
    Drawing { size, marks }
}

/// Every shape, fill, line and turn there is.
pub(crate) fn shapes() -> Drawing {
    let mut marks = vec![area(boxed(0, 0, 64, 40), Stroke::Edge, Fill::Waste)];
    let shapes =
        [Shape::Rectangle, Shape::Rounded, Shape::Circle, Shape::Oval, Shape::Tag];
    for (index, shape) in (0_u8..).zip(shapes) {
        let rect =
            boxed(1 + 13 * i64::from(index), 1, 10, if index == 2 { 10 } else { 14 });
        let fill = Fill::Face { index, color: None, turn: Turn::Right };
        marks.push(Mark::Area { rect, shape, line: Some(Stroke::Edge), fill });
        marks.push(name(rect, &format!("{index}"), "shape"));
        let turn = [Turn::None, Turn::Right, Turn::Over, Turn::Left, Turn::None];
        let turn = turn[usize::from(index)];
        marks.push(Mark::Runs { rect, turn, both_ways: index == 4 });
    }
    for index in 0_u8..8 {
        let rect = boxed(8 * i64::from(index), 18, 8, 10);
        let color = (index == 7).then_some([0x20, 0x60, 0x30]);
        let fill = Fill::Face { index, color, turn: Turn::None };
        marks.push(area(rect, Stroke::Thin, fill));
        marks.push(name(rect, &format!("F{index}"), "face"));
    }
    let lines = [Stroke::Edge, Stroke::Cut, Stroke::Fold, Stroke::Ghost, Stroke::Thin];
    for (index, line) in (0_i64..).zip(lines) {
        marks.push(Mark::Line { along: boxed(0, 30 + 2 * index, 30, 0), line });
    }
    marks.push(area(boxed(34, 30, 8, 8), Stroke::Fold, Fill::Strong));
    marks.push(area(boxed(44, 30, 8, 8), Stroke::Ghost, Fill::Kept));
    marks.push(area(boxed(54, 30, 8, 8), Stroke::Cut, Fill::Paper));
    marks.push(name(boxed(54, 30, 8, 8), "", "trimmed"));
    for side in [Side::Left, Side::Top, Side::Right, Side::Bottom] {
        marks.push(Mark::Rule { side, rect: boxed(0, 0, 64, 40) });
        marks.push(dimension(side, boxed(0, 0, 64, 40), "8 in", 1));
        marks.push(dimension(side, boxed(8, 8, 2, 2), "1/4 in", 0));
        marks.push(Mark::CutNumber {
            side,
            along: boxed(20, 20, 0, 0),
            text: "12".into(),
        });
        marks.push(Mark::CutNumber {
            side,
            along: boxed(21, 21, 0, 0),
            text: "13".into(),
        });
    }
    Drawing { size: Size::new(eighths(64), eighths(40)), marks }
}
