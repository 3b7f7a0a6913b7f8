//! Sheets that are made up for tests, with extents out of a small set.

use leafwright::geom::{Axis, Length, Size};
use leafwright::plan::cut::{Leaf, Tree};

use crate::random::Random;

/// A rectangle that is cut one way into children, as the tests make them up.
pub(crate) struct Node {
    pub(crate) axis: Axis,
    pub(crate) size: Size,
    /// Extent, and how it is cut further; in the order on the sheet.
    pub(crate) children: Vec<(Length, Result<Node, Leaf>)>,
}

/// Makes up a rectangle that is cut further, with extents out of a small set.
fn make_up(random: &mut Random, size: Size, axis: Axis, depth: u32, n: &mut u32) -> Node {
    let whole = if axis == Axis::Upright { size.width } else { size.height };
    let mut extents = Vec::new();
    let mut left = whole;
    for _ in 0..random.below(4) + 1 {
        let mut extent = sixty_fourths(random.below(6) + 1) * 4;
        if random.below(3) == 0 {
            extent = extents.last().copied().unwrap_or(extent);
        }
        if extent < left {
            extents.push(extent);
            left -= extent;
        }
    }
    let mut children = Vec::new();
    for extent in extents {
        let other = match axis {
            Axis::Upright => Size { width: extent, ..size },
            Axis::Level => Size { height: extent, ..size },
        };
        let cut = *n > 0 && depth > 0 && random.below(3) > 0;
        let child = if cut {
            *n -= 1;
            Ok(make_up(random, other, axis.other(), depth - 1, n))
        } else {
            Err(Leaf::Part {
                part: usize::try_from(random.below(5)).unwrap(),
                turned: false,
            })
        };
        children.push((extent, child));
    }
    let rest = match random.below(4) {
        0 => Leaf::Part { part: 7, turned: false },
        1 => Leaf::Keep,
        _ => Leaf::Waste,
    };
    let place = usize::try_from(random.below(3)).unwrap().min(children.len());
    children.insert(place, (left, Err(rest)));
    if children.len() == 1 {
        // Nothing to cut: cut it in two at any rate.
        children[0] = (left.half(), Err(Leaf::Part { part: 8, turned: false }));
        children.push((left - left.half(), Err(Leaf::Waste)));
    }
    Node { axis, size, children }
}

pub(crate) fn to_tree(node: &Node) -> Tree {
    let mut tree: Option<Tree> = None;
    for (extent, child) in node.children.iter().rev() {
        let child = match child {
            Ok(node) => to_tree(node),
            Err(leaf) => Tree::Leaf(*leaf),
        };
        tree = Some(match tree {
            None => child,
            Some(rest) => Tree::cut(node.axis, *extent, child, rest),
        });
    }
    tree.expect("a node has children")
}

/// A few sheets that were made up.
pub(crate) fn sheets(random: &mut Random, n: usize, nodes: u32, depth: u32) -> Vec<Node> {
    let n = 1 + usize::try_from(random.below(n as i64)).unwrap();
    (0..n)
        .map(|_| {
            let size = Size::new(
                sixty_fourths(random.below(30) * 4 + 20),
                sixty_fourths(random.below(30) * 4 + 20),
            );
            let axis = if random.below(2) == 0 { Axis::Upright } else { Axis::Level };
            make_up(random, size, axis, depth, &mut nodes.clone())
        })
        .collect()
}

fn sixty_fourths(n: i64) -> Length {
    Length::inch(n, 64)
}
