//! A tree of cuts while the search still works on it.

use crate::geom::{Axis, Length};
use crate::plan::cut::engine::board::Board;
use crate::plan::cut::engine::ways;
use crate::plan::cut::{Leaf, Tree};

/// So many parts side by side are cut off one after the other; more are halved
/// first, so that no tree grows deeper than its turns of the paper.
const IN_A_ROW: usize = 16;

/// Nodes of one or several trees of cuts, in lengths of 1/14400 mm.
///
/// Nodes are numbers, so that a leaf can be cut in place and a deep tree is
/// neither walked nor dropped by recursion.
#[derive(Clone, Debug, Default)]
pub(super) struct Sketch {
    nodes: Vec<Node>,
}

/// One sheet: its cuts and what it holds.
#[derive(Clone, Debug)]
pub(super) struct Sheet {
    /// The cuts.
    pub(super) sketch: Sketch,
    /// The root of the cuts.
    pub(super) root: usize,
    /// How many of each kind.
    pub(super) holds: Vec<u32>,
}

impl Sheet {
    /// A sheet without cuts, for so many kinds.
    pub(super) fn empty(kinds: usize) -> Self {
        let mut sketch = Sketch::default();
        let root = sketch.sheet();
        Self { sketch, root, holds: vec![0; kinds] }
    }

    /// The same parts on a larger sheet, of which this one is the left or the top
    /// part.
    pub(super) fn beside(
        mut self,
        upright: bool,
        at: (i64, i64),
        whole: (i64, i64),
    ) -> Self {
        let root = self.sketch.sheet();
        let axis = if upright { Axis::Upright } else { Axis::Level };
        let (at, extent) = if upright { (at.0, whole.0) } else { (at.1, whole.1) };
        if at < extent {
            let rest = self.sketch.sheet();
            self.sketch.nodes[root] = Node::Cut(axis, at, self.root, rest);
            self.root = root;
        }
        self
    }

    /// Whether the paper is turned no more often than the limits allow.
    pub(super) fn keeps_to(&self, board: &Board) -> bool {
        board.stages.is_none_or(|most| {
            let tree = self.sketch.tree(self.root, board.real(), i64::MAX);
            ways::turns(&tree) <= u32::from(most)
        })
    }

    /// The sheet with no more of each kind than `most`: what is more becomes
    /// waste.
    pub(super) fn at_most(&self, most: &[u32]) -> Self {
        let mut sheet = self.clone();
        for (holds, &most) in sheet.holds.iter_mut().zip(most) {
            *holds = most.min(*holds);
        }
        let mut left = sheet.holds.clone();
        let mut open = vec![sheet.root];
        while let Some(node) = open.pop() {
            match sheet.sketch.nodes[node] {
                Node::Free => {}
                Node::Part(part, _) if 0 < left[part] => left[part] -= 1,
                Node::Part(..) => sheet.sketch.nodes[node] = Node::Free,
                Node::Cut(_, _, first, second) => open.extend([second, first]),
            }
        }
        sheet.sketch.clear(sheet.root);
        sheet
    }
}

/// What is known of a rectangle so far.
#[derive(Clone, Copy, Debug)]
enum Node {
    /// Not used.
    Free,
    /// A part, by its index, perhaps turned.
    Part(usize, bool),
    /// Cut once: the extent of the first part, and both parts.
    Cut(Axis, i64, usize, usize),
}

impl Sketch {
    /// A new rectangle, not cut so far.
    pub(super) fn sheet(&mut self) -> usize {
        self.nodes.push(Node::Free);
        self.nodes.len() - 1
    }

    /// Cuts a leaf; nothing happens if all of it is on one side.
    ///
    /// `at` is the extent of the left or top part, `extent` that of the leaf.
    /// The parts are given back in this order.
    pub(super) fn cut(
        &mut self,
        leaf: usize,
        axis: Axis,
        at: i64,
        extent: i64,
    ) -> (usize, Option<usize>) {
        if at == extent {
            return (leaf, None);
        }
        let (first, second) = (self.sheet(), self.sheet());
        self.nodes[leaf] = Node::Cut(axis, at, first, second);
        (first, Some(second))
    }

    /// Makes a leaf of the given size one part, and trims the rest off.
    pub(super) fn place(
        &mut self,
        leaf: usize,
        size: (i64, i64),
        part: (usize, bool),
        lies: (i64, i64),
        level_first: bool,
    ) {
        let axes = if level_first || lies.0 == size.0 {
            [Axis::Level, Axis::Upright]
        } else {
            [Axis::Upright, Axis::Level]
        };
        let mut leaf = leaf;
        for axis in axes {
            leaf = match axis {
                Axis::Upright => self.cut(leaf, axis, lies.0, size.0).0,
                Axis::Level => self.cut(leaf, axis, lies.1, size.1).0,
            };
        }
        self.nodes[leaf] = Node::Part(part.0, part.1);
    }

    /// Leaves what was one part unused.
    pub(super) fn release(&mut self, root: usize, part: usize) {
        for node in &mut self.nodes {
            if matches!(node, Node::Part(it, _) if *it == part) {
                *node = Node::Free;
            }
        }
        self.clear(root);
    }

    /// Takes back cuts that only divide what is not used.
    fn clear(&mut self, root: usize) {
        let mut order = vec![root];
        let mut next = 0;
        while let Some(&node) = order.get(next) {
            if let Node::Cut(_, _, first, second) = self.nodes[node] {
                order.extend([first, second]);
            }
            next += 1;
        }
        for node in order.into_iter().rev() {
            if let Node::Cut(_, _, first, second) = self.nodes[node]
                && matches!(self.nodes[first], Node::Free)
                && matches!(self.nodes[second], Node::Free)
            {
                self.nodes[node] = Node::Free;
            }
        }
    }

    /// The finished tree below a rectangle of this size.
    ///
    /// Cuts of one direction are brought together, and what they leave over is
    /// pushed to the far side and left in one piece. It is kept if its shorter
    /// side reaches `least_offcut`.
    pub(super) fn tree(&self, root: usize, size: (i64, i64), least_offcut: i64) -> Tree {
        let mut tasks = vec![Task::Visit(Some(root), size)];
        let mut done: Vec<Tree> = Vec::new();
        while let Some(task) = tasks.pop() {
            match task {
                Task::Visit(node, size) => match node.map(|it| self.nodes[it]) {
                    Some(Node::Part(part, turned)) => {
                        done.push(Tree::Leaf(Leaf::Part { part, turned }));
                    }
                    Some(Node::Cut(axis, ..)) => self.open(node, axis, size, &mut tasks),
                    Some(Node::Free) | None => {
                        let kept = size.0.min(size.1) >= least_offcut.max(1);
                        done.push(Tree::Leaf(if kept {
                            Leaf::Keep
                        } else {
                            Leaf::Waste
                        }));
                    }
                },
                Task::Join(axis, extents) => {
                    let parts = done.split_off(done.len() - extents.len());
                    done.push(join(axis, &extents, parts));
                }
            }
        }
        done.pop().expect("the root was visited")
    }

    /// Lists what is to be done for a rectangle that is cut along `axis` first:
    /// its parts in order, what is left over last, and then to join them.
    fn open(
        &self,
        node: Option<usize>,
        axis: Axis,
        size: (i64, i64),
        tasks: &mut Vec<Task>,
    ) {
        let extent = if axis == Axis::Upright { size.0 } else { size.1 };
        let part = |extent| match axis {
            Axis::Upright => (extent, size.1),
            Axis::Level => (size.0, extent),
        };
        let mut extents = Vec::new();
        let mut visits = Vec::new();
        let mut rest = 0;
        let mut row = vec![(node.expect("a cut is a node"), extent)];
        while let Some((node, extent)) = row.pop() {
            match self.nodes[node] {
                Node::Cut(along, at, first, second) if along == axis => {
                    row.push((second, extent - at));
                    row.push((first, at));
                }
                Node::Free => rest += extent,
                Node::Part(..) | Node::Cut(..) => {
                    extents.push(extent);
                    visits.push(Task::Visit(Some(node), part(extent)));
                }
            }
        }
        if 0 < rest {
            extents.push(rest);
            visits.push(Task::Visit(None, part(rest)));
        }
        tasks.push(Task::Join(axis, extents));
        tasks.extend(visits.into_iter().rev());
    }
}

/// What is to be done to finish a tree.
enum Task {
    /// Finish what lies below a node, or an unused rectangle, of this size.
    Visit(Option<usize>, (i64, i64)),
    /// Join so many finished parts of these extents by cuts along the axis.
    Join(Axis, Vec<i64>),
}

/// One tree from parts that lie in a row.
fn join(axis: Axis, extents: &[i64], parts: Vec<Tree>) -> Tree {
    let mut row: Vec<(i64, Tree)> = extents.iter().copied().zip(parts).collect();
    while IN_A_ROW < row.len() {
        let mut halves = Vec::with_capacity(row.len().div_ceil(2));
        let mut open = row.into_iter();
        while let Some(first) = open.next() {
            halves.push(match open.next() {
                Some(second) => both(axis, first, second),
                None => first,
            });
        }
        row = halves;
    }
    let mut row = row.into_iter().rev();
    let last = row.next().expect("a cut has two parts");
    row.fold(last, |second, first| both(axis, first, second)).1
}

/// Two neighbours as one.
fn both(axis: Axis, first: (i64, Tree), second: (i64, Tree)) -> (i64, Tree) {
    let at = Length::from_units(first.0);
    (first.0 + second.0, Tree::cut(axis, at, first.1, second.1))
}
