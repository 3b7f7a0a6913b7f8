//! Sheets as drawings: how a sheet is divided, and the part in hand at a cut.

use crate::document::{Drawing, Fill, Mark, Stroke};
use crate::geom::{Axis, Length, Rect, Shape, Side, Size, Turn};
use crate::handout::fronts::Dimensions;
use crate::handout::writer::Writer;
use crate::plan::cut::{Becomes, Leaf, PaperCut, Step, Tree};
use crate::project::FaceId;

/// A whole sheet of a pattern with all its cuts, numbered as the steps are.
pub(super) fn divided(w: &Writer<'_>, cut: &PaperCut, pattern: usize) -> Drawing {
    let tree = tree(cut, pattern);
    let sheet = cut.patterns[pattern].sheet;
    let whole = Rect::whole(sheet);
    let mut marks = vec![area(whole, Some(Stroke::Edge), paper(w, cut))];
    let of = &w.project.papers[cut.paper.0];
    marks.extend(w.patterns.sheet(of, sheet, whole));
    let placements = tree.placements(sheet);
    for placement in &placements {
        let rect = placement.rect;
        match placement.leaf {
            Leaf::Waste => marks.push(area(rect, None, Fill::Waste)),
            Leaf::Keep => {
                marks.push(area(rect, None, Fill::Kept));
                if is_large(rect.size) {
                    marks.push(name(rect, w.say("name-offcut", &[]), None));
                }
            }
            Leaf::Part { part, .. } => {
                if let Some(part) = cut.parts.get(part) {
                    let long = w.part_short(part);
                    marks.push(name(rect, part.letter.clone(), Some(long)));
                }
            }
        }
    }
    if directed(w, cut) {
        let largest = placements.iter().map(|it| it.rect).max_by_key(|it| it.size.area());
        marks.extend(largest.map(|rect| runs(w, cut, corner(rect))));
    }
    for line in lines(tree, whole) {
        marks.push(Mark::Line { along: line, line: Stroke::Cut });
    }
    for (along, number) in numbers(cut, pattern) {
        let side = number_side(along, sheet);
        marks.push(Mark::CutNumber { side, along, text: number });
    }
    marks.extend(dimensions(tree, sheet).marks(w));
    Drawing { size: sheet, marks }
}

/// The part in hand at a step: its edge at the rule, the mark, what comes off.
pub(super) fn in_hand(w: &Writer<'_>, cut: &PaperCut, step: &Step) -> Drawing {
    let size = step.in_hand.size;
    let here = |rect: Rect| {
        Rect::new(rect.x - step.in_hand.x, rect.y - step.in_hand.y, rect.size)
    };
    let whole = Rect::whole(size);
    let mut marks = vec![area(whole, Some(Stroke::Edge), paper(w, cut))];
    let of = &w.project.papers[cut.paper.0];
    let sheet = cut.patterns.get(step.pattern).map(|it| it.sheet).unwrap_or_default();
    marks.extend(w.patterns.sheet(of, sheet, step.in_hand));
    for (rect, becomes) in step.off.iter().chain([&step.stays]) {
        let rect = here(*rect);
        match becomes {
            Becomes::Waste => marks.push(area(rect, None, Fill::Waste)),
            Becomes::Keep => marks.push(area(rect, None, Fill::Kept)),
            Becomes::Part(part) => {
                if let Some(part) = cut.parts.get(*part) {
                    marks.push(name(rect, part.letter.clone(), None));
                }
            }
            Becomes::Aside(_) | Becomes::InHand => {}
        }
    }
    for (rect, _) in &step.off {
        let along = cut_line(step, here(*rect), whole);
        marks.push(Mark::Line { along, line: Stroke::Cut });
    }
    let side = rule_side(step);
    marks.push(Mark::Rule { side, rect: whole });
    if let Some((first, _)) = step.off.first() {
        let along = here(*first);
        let side = match step.axis {
            Axis::Upright => Side::Bottom,
            Axis::Level => Side::Right,
        };
        let text = w.words.length(step.mark);
        marks.push(Mark::Dimension { side, along, text, tier: 0 });
    }
    Drawing { size, marks }
}

/// Whether something that is left over is put by as an offcut rather than with
/// the scraps: an inch wide at least (common practice, no source).
pub(super) fn is_large(size: Size) -> bool {
    size.short() >= Length::INCH
}

/// The edge of the part in hand that is lined up with the mark.
pub(super) fn rule_side(step: &Step) -> Side {
    match (step.axis, step.from_far_side) {
        (Axis::Upright, false) => Side::Left,
        (Axis::Upright, true) => Side::Right,
        (Axis::Level, false) => Side::Top,
        (Axis::Level, true) => Side::Bottom,
    }
}

/// Whether the pattern that lies up has a direction, or has pieces that must come
/// from a certain place.
pub(super) fn directed(w: &Writer<'_>, cut: &PaperCut) -> bool {
    use crate::project::Runs;
    let faces = &w.project.papers[cut.paper.0].faces;
    let mut pieces = w.project.pieces.iter().filter(|it| it.of == cut.paper);
    faces.first().is_some_and(|it| it.runs != Runs::Any)
        || pieces.any(|it| it.next_to.is_some() || it.region.is_some())
}

/// The cuts of a pattern, lying as the steps make them.
pub(super) fn tree(cut: &PaperCut, pattern: usize) -> &Tree {
    cut.schedule.laid.get(pattern).unwrap_or(&cut.patterns[pattern].tree)
}

fn paper(w: &Writer<'_>, cut: &PaperCut) -> Fill {
    w.fill(cut.paper, Some(FaceId(0)), Turn::None)
}

pub(super) fn area(rect: Rect, line: Option<Stroke>, fill: Fill) -> Mark {
    Mark::Area { rect, shape: Shape::Rectangle, line, fill }
}

fn name(rect: Rect, short: String, long: Option<String>) -> Mark {
    let may_turn = rect.size.width < rect.size.height;
    Mark::Name { rect, short, long, may_turn }
}

/// An arrow for the direction of the pattern.
fn runs(w: &Writer<'_>, cut: &PaperCut, rect: Rect) -> Mark {
    let faces = &w.project.papers[cut.paper.0].faces;
    let both_ways =
        faces.first().is_some_and(|it| it.runs == crate::project::Runs::BothWays);
    Mark::Runs { rect, turn: Turn::None, both_ways }
}

/// A corner of a part that its name leaves free.
fn corner(rect: Rect) -> Rect {
    let side = Length::from_units(rect.size.short().units() / 4);
    let gap = Length::from_units(side.units() / 3);
    Rect::new(rect.right() - side - gap, rect.y + gap, Size::new(side, side))
}

/// Every cut of a tree as a box without width or without height.
fn lines(tree: &Tree, whole: Rect) -> Vec<Rect> {
    let mut lines = Vec::new();
    let mut open = vec![(tree, whole)];
    while let Some((tree, rect)) = open.pop() {
        if let Tree::Cut(cut) = tree {
            let (first, second) = rect.split(cut.axis, cut.at);
            lines.push(match cut.axis {
                Axis::Upright => upright(second.x, rect),
                Axis::Level => level(second.y, rect),
            });
            open.push((&cut.second, second));
            open.push((&cut.first, first));
        }
    }
    lines
}

fn upright(x: Length, across: Rect) -> Rect {
    Rect::new(x, across.y, Size::new(Length::ZERO, across.size.height))
}

fn level(y: Length, across: Rect) -> Rect {
    Rect::new(across.x, y, Size::new(across.size.width, Length::ZERO))
}

/// The cut that takes `off` from the part `hand`.
fn cut_line(step: &Step, off: Rect, hand: Rect) -> Rect {
    match (step.axis, step.from_far_side) {
        (Axis::Upright, false) => upright(off.right(), hand),
        (Axis::Upright, true) => upright(off.x, hand),
        (Axis::Level, false) => level(off.bottom(), hand),
        (Axis::Level, true) => level(off.y, hand),
    }
}

/// Whether each step has its own drawing; beyond so many steps the numbers in the
/// plans must do, or the handout is not brief.
pub(super) fn draws_steps(cut: &PaperCut) -> bool {
    cut.schedule.steps.len() <= 24
}

/// The cuts of a pattern with the numbers of their steps: the first of several in
/// a row, and of several in one line. Cuts that end inside the sheet are left to
/// the drawings of the steps, if there are any.
fn numbers(cut: &PaperCut, pattern: usize) -> Vec<(Rect, String)> {
    let sheet = cut.patterns[pattern].sheet;
    let mut numbers: Vec<(Rect, String)> = Vec::new();
    let steps = cut.schedule.steps.iter().enumerate();
    for (at, step) in steps.filter(|it| it.1.pattern == pattern) {
        let number = (at + 1).to_string();
        for hand in [step.in_hand].iter().chain(&step.alike) {
            let (x, y) = (hand.x - step.in_hand.x, hand.y - step.in_hand.y);
            let Some((off, _)) = step.off.first() else { continue };
            let off = Rect::new(off.x + x, off.y + y, off.size);
            let line = cut_line(step, off, *hand);
            let in_line = |other: Rect| match step.axis {
                Axis::Upright => other.size.width == Length::ZERO && other.x == line.x,
                Axis::Level => other.size.height == Length::ZERO && other.y == line.y,
            };
            let known = numbers.iter().any(|it| it.1 == number && in_line(it.0));
            if !known && (ends_outside(line, sheet) || !draws_steps(cut)) {
                numbers.push((line, number.clone()));
            }
        }
    }
    numbers
}

/// Whether an end of a cut lies on the edge of the sheet.
fn ends_outside(line: Rect, sheet: Size) -> bool {
    if line.size.width == Length::ZERO {
        line.y == Length::ZERO || line.bottom() == sheet.height
    } else {
        line.x == Length::ZERO || line.right() == sheet.width
    }
}

/// The side of the sheet that the end of a cut is nearest to, of the two that
/// have no dimensions.
fn number_side(along: Rect, sheet: Size) -> Side {
    if along.size.width == Length::ZERO {
        let (top, bottom) = (along.y, sheet.height - along.bottom());
        if top <= bottom { Side::Top } else { Side::Bottom }
    } else {
        let (left, right) = (along.x, sheet.width - along.right());
        if right <= left { Side::Right } else { Side::Left }
    }
}

/// The sides of the sheet, and how its first cuts divide them.
fn dimensions(tree: &Tree, sheet: Size) -> Dimensions {
    let mut dimensions = Dimensions::default();
    let whole = Rect::whole(sheet);
    dimensions.add(Some((Side::Bottom, Length::ZERO, sheet.width)));
    dimensions.add(Some((Side::Left, Length::ZERO, sheet.height)));
    let chain = chain(tree, whole);
    for (part, rect) in &chain {
        dimensions.add(Some(stretch(tree, *rect)));
        // How the part next to the dimensions is divided the other way.
        let beside = match axis(tree) {
            Some(Axis::Upright) => rect.x == Length::ZERO,
            Some(Axis::Level) => rect.bottom() == sheet.height,
            None => false,
        };
        if beside {
            for (_, below) in self::chain(part, *rect) {
                if axis(part).is_some() {
                    dimensions.add(Some(stretch(part, below)));
                }
            }
        }
    }
    dimensions
}

fn axis(tree: &Tree) -> Option<Axis> {
    match tree {
        Tree::Leaf(_) => None,
        Tree::Cut(cut) => Some(cut.axis),
    }
}

/// The stretch that a part takes up along the side which its cuts divide.
fn stretch(divided: &Tree, rect: Rect) -> (Side, Length, Length) {
    match axis(divided) {
        Some(Axis::Upright) | None => (Side::Bottom, rect.x, rect.right()),
        Some(Axis::Level) => (Side::Left, rect.y, rect.bottom()),
    }
}

/// The parts of a tree between cuts that run one way.
fn chain(tree: &Tree, rect: Rect) -> Vec<(&Tree, Rect)> {
    let Some(first) = axis(tree) else { return Vec::new() };
    let mut parts = Vec::new();
    let mut open = vec![(tree, rect)];
    while let Some((tree, rect)) = open.pop() {
        match tree {
            Tree::Cut(cut) if cut.axis == first => {
                let (left, right) = rect.split(cut.axis, cut.at);
                open.push((&cut.second, right));
                open.push((&cut.first, left));
            }
            Tree::Cut(_) | Tree::Leaf(_) => parts.push((tree, rect)),
        }
    }
    parts
}
