//! Sheets from which one part is cut at one place, for the sake of the pattern.
//!
//! On such a sheet the part is cut free by at most four cuts from edge to edge, one
//! along each of its sides. In which order they are made decides which strips are
//! left round it, and the strips are stock for the other parts. Every order is tried.
//! More strips than four could be cut off round a part, so this is not every way to
//! cut it free: the plan is called proven only if no plan whatever could do with
//! fewer sheets.

use crate::geom::{Axis, Length, Rect, Side, Size};
use crate::plan::cut::assign::{kinds, parts_in_patterns};
use crate::plan::cut::look::Found;
use crate::plan::cut::paper::{Bench, Known, enough, largest_kept, limits};
use crate::plan::cut::ties::Place;
use crate::plan::cut::{
    Bound, How, Kind, Leaf, Limits, Part, Pattern, Problem, SheetKind, Tree, solve,
};
use crate::project::StockSheet;

/// Looks for the fewest sheets when one part lies at its place on each sheet that it
/// is cut from. `whole` are the parts with rows as one.
pub(crate) fn look(
    bench: &Bench,
    whole: &[Part],
    place: Place,
    sheets: &[StockSheet],
    budget: u64,
) -> Found {
    let sheets_with_it = whole[place.part].count;
    let anywhere = solve(&bench.problem(sheets, kinds(whole).kinds, budget / 4));
    let bound = if anywhere.bound.sheets < sheets_with_it {
        // Each sheet has the place once.
        Bound { sheets: sheets_with_it, how: How::Pairs }
    } else {
        anywhere.bound
    };
    let mut others = whole.to_vec();
    others[place.part].count = 0;
    let mut merged = kinds(&others);
    let job = Around {
        kinds: merged.kinds.clone(),
        kind_in_place: merged.kinds.len(),
        sheets_with_it,
        stock: sheets,
        limits: Limits { budget: budget / 32, ..limits(&bench.trimmer, budget) },
    };
    merged.kinds.push(Kind { size: place.rect.size, free: false, count: sheets_with_it });
    merged.parts.push(vec![place.part]);

    let mut spent = anywhere.spent;
    let mut best: Option<(u32, std::cmp::Reverse<i128>, u32, Vec<Pattern>)> = None;
    for (index, sheet) in sheets.iter().enumerate() {
        let at_hand = sheet.at_hand.unwrap_or(u32::MAX);
        if at_hand < sheets_with_it || best.is_some() {
            continue;
        }
        for frame in frames(sheet.size, place.rect, job.limits.longest_cut) {
            let Some(patterns) = job.plan(index, &frame, &mut spent) else { continue };
            let count =
                patterns.iter().fold(0, |sum: u32, it| sum.saturating_add(it.copies));
            let kept = largest_kept(&patterns).map_or(0, |(_, size)| size.area());
            let cuts = patterns.iter().map(|it| it.tree.cuts()).sum();
            let rank = (count, std::cmp::Reverse(kept), cuts);
            if best.as_ref().is_none_or(|it| rank < (it.0, it.1, it.2)) {
                best = Some((rank.0, rank.1, rank.2, patterns));
            }
        }
    }
    let (count, found) = best.map_or((0, Vec::new()), |it| (it.0, it.3));
    let too_large = anywhere.too_large.iter();
    let kinds_of_all = kinds(whole);
    let too_large = too_large.filter_map(|it| kinds_of_all.parts.get(*it));
    let sheets_anywhere =
        anywhere.patterns.iter().fold(0, |sum: u32, it| sum.saturating_add(it.2));
    Found {
        enough: !found.is_empty(),
        patterns: parts_in_patterns(&found, &merged, whole),
        known: Known { bound, proven: count <= bound.sheets, largest: None, spent },
        too_large: too_large.flatten().copied().collect(),
        anywhere: Some(sheets_anywhere),
    }
}

/// What is asked for round a part in its place.
struct Around<'a> {
    /// The other parts.
    kinds: Vec<Kind>,
    /// What trees call the part in its place.
    kind_in_place: usize,
    sheets_with_it: u32,
    stock: &'a [StockSheet],
    limits: Limits,
}

impl Around<'_> {
    /// The fewest sheets if the part is cut free in one way from sheets of one size.
    fn plan(&self, sheet: usize, frame: &Frame, spent: &mut u64) -> Option<Vec<Pattern>> {
        let size = self.stock[sheet].size;
        if self.kinds.is_empty() {
            return Some(self.sheets(size, frame, Vec::new(), self.sheets_with_it));
        }
        // All sheets the same way, if the parts can be shared out evenly.
        let number = self.sheets_with_it;
        let even = self.kinds.iter().all(|it| it.count % number == 0);
        if let Some(patterns) = even.then(|| self.alike(frame, spent)).flatten() {
            return Some(self.sheets(size, frame, patterns, number));
        }
        let mut stock: Vec<SheetKind> = self.stock.iter().map(whole_sheet).collect();
        if let Some(at_hand) = &mut stock[sheet].at_hand {
            *at_hand -= number;
        }
        let strip = |it: &Rect| SheetKind { size: it.size, at_hand: Some(number) };
        stock.extend(frame.strips.iter().map(|it| strip(&it.1)));
        let (kinds, limits) = (self.kinds.clone(), self.limits);
        let problem = Problem { sheets: stock, kinds, limits };
        let solution = solve(&problem);
        *spent = spent.saturating_add(solution.spent);
        if !solution.too_large.is_empty() || !enough(&problem, &solution) {
            return None;
        }
        let whole_sheets = self.stock.len();
        let (whole, strips): (Vec<_>, Vec<_>) =
            solution.patterns.into_iter().partition(|it| it.0 < whole_sheets);
        let strips = strips.into_iter().map(|it| (it.0 - whole_sheets, it.1, it.2));
        let mut patterns = self.sheets(size, frame, strips.collect(), number);
        patterns.extend(whole.into_iter().map(|(index, tree, copies)| Pattern {
            sheet: self.stock[index].size,
            tree,
            copies,
        }));
        Some(patterns)
    }

    /// What is cut from the strips of one sheet, if every sheet is cut alike.
    fn alike(&self, frame: &Frame, spent: &mut u64) -> Option<Vec<(usize, Tree, u32)>> {
        let number = self.sheets_with_it;
        let share = |it: &Kind| Kind { count: it.count / number, ..*it };
        let strip = |it: &Rect| SheetKind { size: it.size, at_hand: Some(1) };
        let problem = Problem {
            sheets: frame.strips.iter().map(|it| strip(&it.1)).collect(),
            kinds: self.kinds.iter().map(share).collect(),
            limits: self.limits,
        };
        let solution = solve(&problem);
        *spent = spent.saturating_add(solution.spent);
        let whole = solution.too_large.is_empty() && enough(&problem, &solution);
        let all = solution.patterns.into_iter().map(|it| (it.0, it.1, number));
        whole.then(|| all.collect())
    }

    /// The sheets with the part in its place, their strips cut as is given: by index
    /// of the strip, the cuts and on how many sheets.
    fn sheets(
        &self,
        size: Size,
        frame: &Frame,
        cut: Vec<(usize, Tree, u32)>,
        number: u32,
    ) -> Vec<Pattern> {
        // For each strip how it is cut on so many sheets, the next one last.
        let mut runs: Vec<Vec<(Tree, u32)>> = Vec::new();
        for (_, strip) in &frame.strips {
            let keep = strip.size.short() >= self.limits.least_offcut;
            let leaf = if keep { Leaf::Keep } else { Leaf::Waste };
            runs.push(vec![(Tree::Leaf(leaf), number)]);
        }
        for (strip, tree, copies) in cut {
            let run = &mut runs[strip];
            run[0].1 = run[0].1.saturating_sub(copies);
            run.push((tree, copies));
        }
        let mut patterns = Vec::new();
        let mut left = number;
        while left > 0 {
            for run in &mut runs {
                while run.len() > 1 && run.last().is_some_and(|it| it.1 == 0) {
                    let _ = run.pop();
                }
            }
            let next = runs.iter().filter_map(|run| run.last().map(|it| it.1));
            let copies = next.min().unwrap_or(left).clamp(1, left);
            let trees = runs.iter_mut().map(|run| {
                let last = run.last_mut().expect("a strip has its leaf");
                last.1 = last.1.saturating_sub(copies);
                last.0.clone()
            });
            let leaf = Leaf::Part { part: self.kind_in_place, turned: false };
            let tree = frame.tree(size, Tree::Leaf(leaf), trees.collect());
            patterns.push(Pattern { sheet: size, tree, copies });
            left -= copies;
        }
        patterns
    }
}

fn whole_sheet(sheet: &StockSheet) -> SheetKind {
    SheetKind { size: sheet.size, at_hand: sheet.at_hand }
}

/// One order in which a part is cut free, with the strips that this leaves.
struct Frame {
    /// The side on which each strip comes off, and where it lies, in order.
    strips: Vec<(Side, Rect)>,
}

impl Frame {
    fn new(sheet: Size, rect: Rect, sides: &[Side]) -> Self {
        let mut hand = Rect::whole(sheet);
        let mut strips = Vec::with_capacity(sides.len());
        for &side in sides {
            let (axis, at, first) = cut(hand, rect, side);
            let (one, other) = hand.split(axis, at);
            let (strip, rest) = if first { (one, other) } else { (other, one) };
            strips.push((side, strip));
            hand = rest;
        }
        Self { strips }
    }

    /// The longest cut it takes.
    fn longest_cut(&self) -> Length {
        let lengths = self.strips.iter().map(|(side, strip)| match side {
            Side::Left | Side::Right => strip.size.height,
            Side::Top | Side::Bottom => strip.size.width,
        });
        lengths.max().unwrap_or_default()
    }

    /// The cuts, with what becomes of the part and of each strip.
    fn tree(&self, sheet: Size, part: Tree, strips: Vec<Tree>) -> Tree {
        // From the inside out: every cut takes its strip off what is left.
        let mut tree = part;
        let mut cuts = Vec::with_capacity(strips.len());
        let mut hand = Rect::whole(sheet);
        for &(side, strip) in &self.strips {
            let first = matches!(side, Side::Left | Side::Top);
            let (axis, extent, whole) = match side {
                Side::Left | Side::Right => {
                    (Axis::Upright, strip.size.width, hand.size.width)
                }
                Side::Top | Side::Bottom => {
                    (Axis::Level, strip.size.height, hand.size.height)
                }
            };
            let at = if first { extent } else { whole - extent };
            let (one, other) = hand.split(axis, at);
            hand = if first { other } else { one };
            cuts.push((axis, at, first));
        }
        for ((axis, at, first), strip) in cuts.into_iter().zip(strips).rev() {
            tree = if first {
                Tree::held(axis, at, strip, tree)
            } else {
                Tree::held(axis, at, tree, strip)
            };
        }
        tree
    }
}

/// The cut along one side of a part: which way it runs, the extent of the first part,
/// and whether the strip is that one.
fn cut(hand: Rect, rect: Rect, side: Side) -> (Axis, Length, bool) {
    match side {
        Side::Left => (Axis::Upright, rect.x - hand.x, true),
        Side::Right => (Axis::Upright, rect.right() - hand.x, false),
        Side::Top => (Axis::Level, rect.y - hand.y, true),
        Side::Bottom => (Axis::Level, rect.bottom() - hand.y, false),
    }
}

/// Every order of the cuts that free a part; of those that leave the same strips, one.
fn frames(sheet: Size, rect: Rect, longest: Option<Length>) -> Vec<Frame> {
    let whole = Rect::whole(sheet);
    let on_it = Length::ZERO <= rect.x
        && Length::ZERO <= rect.y
        && rect.right() <= whole.right()
        && rect.bottom() <= whole.bottom();
    if !on_it {
        return Vec::new();
    }
    let mut sides = Vec::new();
    if Length::ZERO < rect.x {
        sides.push(Side::Left);
    }
    if Length::ZERO < rect.y {
        sides.push(Side::Top);
    }
    if rect.right() < whole.right() {
        sides.push(Side::Right);
    }
    if rect.bottom() < whole.bottom() {
        sides.push(Side::Bottom);
    }
    let mut frames: Vec<Frame> = Vec::new();
    let mut seen: Vec<Vec<Rect>> = Vec::new();
    for order in orders(&sides) {
        let frame = Frame::new(sheet, rect, &order);
        if longest.is_some_and(|longest| longest < frame.longest_cut()) {
            continue;
        }
        let mut strips: Vec<Rect> = frame.strips.iter().map(|it| it.1).collect();
        strips.sort_unstable();
        if !seen.contains(&strips) {
            seen.push(strips);
            frames.push(frame);
        }
    }
    frames
}

/// Every order of a few sides.
fn orders(sides: &[Side]) -> Vec<Vec<Side>> {
    let mut orders = vec![Vec::new()];
    for _ in sides {
        let longer = orders.iter().flat_map(|order: &Vec<Side>| {
            let left = sides.iter().filter(|it| !order.contains(it));
            left.map(|it| [&order[..], &[*it]].concat())
        });
        orders = longer.collect();
    }
    orders
}
