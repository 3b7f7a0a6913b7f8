//! The cuts from edge to edge that free parts at their places on a sheet, and the
//! strips that are left round them.
//!
//! One part is freed by at most four cuts, one along each of its sides, in any order.
//! Several parts on one sheet are first parted by cuts between them.

use crate::geom::{Axis, Length, Rect, Side, Size};
use crate::plan::cut::{Leaf, Token, Tree};

/// Ways that are looked at to free the parts of one sheet.
const MOST_FRAMES: usize = 32;

/// One way to free parts at their places.
pub(super) struct Frame {
    /// Leaves below the number of all places are places, the others strips.
    tree: Tree,
    /// What is left round the parts: stock for others.
    pub(super) strips: Vec<Rect>,
    /// The longest cut it takes.
    longest: Length,
}

/// What is looked for on one sheet.
#[derive(Clone, Copy)]
pub(super) struct Wanted<'a> {
    /// All places, of all sheets.
    pub(super) places: &'a [Rect],
    /// Indexes of those that are to be on this sheet.
    pub(super) these: &'a [usize],
    /// The longest cut that the trimmer makes.
    pub(super) longest: Option<Length>,
}

impl Frame {
    /// The cuts, with what becomes of each place and of each strip.
    pub(super) fn filled(
        &self,
        places: &[Rect],
        place: impl Fn(usize) -> Leaf,
        strips: &[Tree],
    ) -> Tree {
        let mut tokens = Vec::new();
        for token in self.tree.tokens() {
            match token {
                Token::Leaf(Leaf::Part { part, .. }) => match part
                    .checked_sub(places.len())
                    .and_then(|strip| strips.get(strip))
                {
                    Some(strip) => tokens.extend(strip.tokens()),
                    None => tokens.push(Token::Leaf(place(part))),
                },
                other => tokens.push(other),
            }
        }
        Tree::from_tokens(&tokens).expect("a leaf gives way to one whole tree")
    }
}

/// Ways to free some parts from a sheet, those with the largest strips first; none if
/// no cuts from edge to edge part them, or only cuts that are too long.
pub(super) fn frames(sheet: Size, wanted: Wanted<'_>) -> Vec<Frame> {
    let whole = Rect::whole(sheet);
    let on_it = |rect: &Rect| {
        Length::ZERO <= rect.x
            && Length::ZERO <= rect.y
            && rect.right() <= whole.right()
            && rect.bottom() <= whole.bottom()
    };
    if !wanted.these.iter().all(|it| on_it(&wanted.places[*it])) {
        return Vec::new();
    }
    freed(whole, wanted)
}

/// The shortest that the longest cut can be where one part is freed from a sheet.
pub(super) fn least_longest_cut(sheet: Size, rect: Rect) -> Option<Length> {
    let wanted = Wanted { places: &[rect], these: &[0], longest: None };
    frames(sheet, wanted).iter().map(|it| it.longest).min()
}

/// Ways to free some parts from what is in hand.
fn freed(hand: Rect, wanted: Wanted<'_>) -> Vec<Frame> {
    let mut found = match wanted.these {
        [one] => around(hand, *one, wanted.places),
        _ => parted(hand, wanted),
    };
    found.retain(|it| wanted.longest.is_none_or(|longest| it.longest <= longest));
    let sorted = |frame: &Frame| {
        let mut strips = frame.strips.clone();
        strips.sort_unstable();
        strips
    };
    let mut seen: Vec<Vec<Rect>> = Vec::new();
    found.retain(|it| {
        let strips = sorted(it);
        let new = !seen.contains(&strips);
        if new {
            seen.push(strips);
        }
        new
    });
    if found.len() > MOST_FRAMES {
        let largest = |it: &Frame| it.strips.iter().map(|it| it.size.area()).max();
        found.sort_by_key(|it| std::cmp::Reverse(largest(it)));
        found.truncate(MOST_FRAMES);
    }
    found
}

/// A cut between parts, and the ways to free those on either side.
fn parted(hand: Rect, wanted: Wanted<'_>) -> Vec<Frame> {
    let mut found = Vec::new();
    for axis in [Axis::Upright, Axis::Level] {
        let ends = |index: usize| {
            let rect = wanted.places[index];
            match axis {
                Axis::Upright => (rect.x - hand.x, rect.right() - hand.x),
                Axis::Level => (rect.y - hand.y, rect.bottom() - hand.y),
            }
        };
        let mut lines: Vec<Length> =
            wanted.these.iter().map(|it| ends(*it)).flat_map(|it| [it.0, it.1]).collect();
        lines.sort_unstable();
        lines.dedup();
        for at in lines {
            let (before, after): (Vec<usize>, Vec<usize>) =
                wanted.these.iter().partition(|it| ends(**it).1 <= at);
            let cuts_through = after.iter().any(|it| ends(*it).0 < at);
            if before.is_empty() || after.is_empty() || cuts_through {
                continue;
            }
            let (one, other) = hand.split(axis, at);
            let longest = hand.size.along(axis);
            let firsts = freed(one, Wanted { these: &before, ..wanted });
            let seconds = freed(other, Wanted { these: &after, ..wanted });
            for first in &firsts {
                for second in &seconds {
                    found.push(first.beside(second, (axis, at, longest), wanted.places));
                }
            }
        }
    }
    found
}

impl Frame {
    /// Two frames with a cut between them.
    fn beside(
        &self,
        second: &Self,
        (axis, at, longest): (Axis, Length, Length),
        places: &[Rect],
    ) -> Self {
        let moved = second.tree.tokens().map(|token| match token {
            Token::Leaf(Leaf::Part { part, .. }) if places.len() <= part => {
                Token::Leaf(leaf(part + self.strips.len()))
            }
            other => other,
        });
        let moved: Vec<Token> = moved.collect();
        let moved = Tree::from_tokens(&moved).expect("only names were exchanged");
        Self {
            tree: Tree::held(axis, at, self.tree.clone(), moved),
            strips: [&self.strips[..], &second.strips[..]].concat(),
            longest: longest.max(self.longest).max(second.longest),
        }
    }
}

/// Every order of the cuts that free one part.
fn around(hand: Rect, place: usize, places: &[Rect]) -> Vec<Frame> {
    let rect = places[place];
    let mut sides = Vec::new();
    if hand.x < rect.x {
        sides.push(Side::Left);
    }
    if hand.y < rect.y {
        sides.push(Side::Top);
    }
    if rect.right() < hand.right() {
        sides.push(Side::Right);
    }
    if rect.bottom() < hand.bottom() {
        sides.push(Side::Bottom);
    }
    let in_order = |order: Vec<Side>| {
        let (mut hand, mut longest) = (hand, Length::ZERO);
        let (mut strips, mut cuts) = (Vec::new(), Vec::new());
        for side in order {
            let (axis, at, first) = cut(hand, rect, side);
            longest = longest.max(hand.size.along(axis));
            let (one, other) = hand.split(axis, at);
            let (strip, rest) = if first { (one, other) } else { (other, one) };
            strips.push(strip);
            cuts.push((axis, at, first));
            hand = rest;
        }
        // From the inside out: every cut takes its strip off what is left.
        let mut tree = Tree::Leaf(leaf(place));
        for (index, (axis, at, first)) in cuts.into_iter().enumerate().rev() {
            let strip = Tree::Leaf(leaf(places.len() + index));
            tree = match first {
                true => Tree::held(axis, at, strip, tree),
                false => Tree::held(axis, at, tree, strip),
            };
        }
        Frame { tree, strips, longest }
    };
    orders(&sides).into_iter().map(in_order).collect()
}

const fn leaf(part: usize) -> Leaf {
    Leaf::Part { part, turned: false }
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
