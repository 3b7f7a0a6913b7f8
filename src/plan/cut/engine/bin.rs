//! A sheet whose parts can be taken out and put in again.
//!
//! The cuts are a tree of rows: parts side by side, or one over the other, each
//! row as small as its parts allow. Where there is room is worked out from the
//! sheet downwards, so that nothing has to be moved when a part is taken out.

use crate::geom::Axis;
use crate::plan::cut::engine::board::{Board, Lie};
use crate::plan::cut::engine::sketch::Sheet;

/// No node.
const NONE: u32 = u32::MAX;

/// What a node is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum What {
    /// A part: its kind and which way it lies.
    Part(u32, u32),
    /// Parts side by side (upright cuts) or one over the other.
    Row(Axis),
}

#[derive(Clone, Copy, Debug)]
struct Node {
    what: What,
    parent: u32,
    /// The first part of a row, and the next part in the row this is in.
    first: u32,
    next: u32,
    /// Least size, and the room there is.
    size: (i64, i64),
    room: (i64, i64),
}

/// A sheet with its parts.
#[derive(Clone, Debug)]
pub(super) struct Bin {
    nodes: Vec<Node>,
    unused: Vec<u32>,
    root: u32,
    /// Nodes from the root downwards.
    order: Vec<u32>,
    /// Area of the parts in square search units.
    pub(super) area: i64,
}

/// A place for a part: beside (or under) which node, and what it wastes.
#[derive(Clone, Copy, Debug)]
pub(super) struct Spot {
    at: u32,
    axis: Axis,
    /// Which way the part lies.
    pub(super) lie: usize,
    /// How little it fits; less is better.
    pub(super) score: i64,
}

impl Bin {
    /// An empty sheet.
    pub(super) fn new() -> Self {
        Self {
            nodes: Vec::new(),
            unused: Vec::new(),
            root: NONE,
            order: Vec::new(),
            area: 0,
        }
    }

    /// How many nodes can be taken out.
    pub(super) fn len(&self) -> usize {
        self.order.len()
    }

    /// The best place for a part; `skip` says for each place whether it is
    /// overlooked this time.
    pub(super) fn best_spot(
        &self,
        board: &Board,
        lies: &[Lie],
        skip: &mut dyn FnMut() -> bool,
    ) -> Option<Spot> {
        let reach = board.reach();
        let mut best: Option<Spot> = None;
        if self.root == NONE {
            let (width, height) = board.size;
            return lies
                .iter()
                .enumerate()
                .filter(|(_, it)| it.width <= width && it.height <= height)
                .map(|(lie, it)| Spot {
                    at: NONE,
                    axis: Axis::Level,
                    lie,
                    score: (width % it.width) * height + (height % it.height) * width,
                })
                .min_by_key(|it| it.score);
        }
        for &id in &self.order {
            let node = &self.nodes[id as usize];
            let parent = match node.parent {
                NONE => None,
                parent => Some(self.nodes[parent as usize].what),
            };
            for (lie, part) in lies.iter().enumerate() {
                for axis in [Axis::Upright, Axis::Level] {
                    if parent == Some(What::Row(axis)) {
                        continue;
                    }
                    let (size, fits) = match axis {
                        Axis::Upright => {
                            let size =
                                (node.size.0 + part.width, node.size.1.max(part.height));
                            (size, size.1 <= reach.0)
                        }
                        Axis::Level => {
                            let size =
                                (node.size.0.max(part.width), node.size.1 + part.height);
                            (size, size.0 <= reach.1)
                        }
                    };
                    if !fits || node.room.0 < size.0 || node.room.1 < size.1 {
                        continue;
                    }
                    let wasted = size.0 * size.1
                        - node.size.0 * node.size.1
                        - part.width * part.height;
                    // What remains beside the part is hard to use if it is narrow.
                    let beside = match axis {
                        Axis::Upright => (node.room.1 - part.height) * part.width,
                        Axis::Level => (node.room.0 - part.width) * part.height,
                    };
                    let score = wasted + beside;
                    if best.is_none_or(|it| score < it.score) && !skip() {
                        best = Some(Spot { at: id, axis, lie, score });
                    }
                }
            }
        }
        best
    }

    /// Puts a part into a place that was just found.
    pub(super) fn put(&mut self, board: &Board, kind: usize, spot: Spot) {
        let lie = board.lies[kind][spot.lie];
        let part = self.node(What::Part(small(kind), small(spot.lie)));
        self.nodes[part as usize].size = (lie.width, lie.height);
        self.area += lie.width * lie.height;
        if spot.at == NONE {
            self.root = part;
        } else if self.nodes[spot.at as usize].what == What::Row(spot.axis) {
            self.link(part, spot.at);
        } else {
            let parent = self.nodes[spot.at as usize].parent;
            let row = self.node(What::Row(spot.axis));
            self.replace(spot.at, row, parent);
            self.link(spot.at, row);
            self.link(part, row);
        }
        self.measure(board.size);
    }

    /// Takes a node out (by its place in the order) with all parts below it;
    /// gives their kinds.
    pub(super) fn take(&mut self, board: &Board, place: usize) -> Vec<usize> {
        let id = self.order[place];
        let parent = self.nodes[id as usize].parent;
        let mut kinds = Vec::new();
        if parent == NONE {
            self.root = NONE;
        } else {
            self.unlink(id, parent);
        }
        let mut open = vec![id];
        while let Some(id) = open.pop() {
            let node = self.nodes[id as usize];
            self.unused.push(id);
            if let What::Part(kind, _) = node.what {
                kinds.push(kind as usize);
                self.area -= node.size.0 * node.size.1;
            }
            let mut child = node.first;
            while child != NONE {
                open.push(child);
                child = self.nodes[child as usize].next;
            }
        }
        self.measure(board.size);
        kinds
    }

    fn node(&mut self, what: What) -> u32 {
        let node = Node {
            what,
            parent: NONE,
            first: NONE,
            next: NONE,
            size: (0, 0),
            room: (0, 0),
        };
        if let Some(id) = self.unused.pop() {
            self.nodes[id as usize] = node;
            return id;
        }
        self.nodes.push(node);
        small(self.nodes.len() - 1)
    }

    /// Makes a node the first in a row.
    fn link(&mut self, id: u32, row: u32) {
        self.nodes[id as usize].parent = row;
        self.nodes[id as usize].next = self.nodes[row as usize].first;
        self.nodes[row as usize].first = id;
    }

    /// Puts a node in the place of another.
    fn replace(&mut self, old: u32, new: u32, parent: u32) {
        self.nodes[new as usize].parent = parent;
        self.nodes[new as usize].next = self.nodes[old as usize].next;
        self.nodes[old as usize].next = NONE;
        if parent == NONE {
            self.root = new;
            return;
        }
        self.point(parent, old, new);
    }

    /// Lets whatever pointed to a node in a row point to another.
    fn point(&mut self, row: u32, old: u32, new: u32) {
        if self.nodes[row as usize].first == old {
            self.nodes[row as usize].first = new;
            return;
        }
        let mut child = self.nodes[row as usize].first;
        while self.nodes[child as usize].next != old {
            child = self.nodes[child as usize].next;
        }
        self.nodes[child as usize].next = new;
    }

    /// Takes a node out of a row; a row of one is that one.
    fn unlink(&mut self, id: u32, row: u32) {
        let next = self.nodes[id as usize].next;
        self.point(row, id, next);
        let only = self.nodes[row as usize].first;
        if self.nodes[only as usize].next == NONE {
            let above = self.nodes[row as usize].parent;
            self.replace(row, only, above);
            self.unused.push(row);
        }
    }

    /// Works out least sizes and the room there is.
    fn measure(&mut self, sheet: (i64, i64)) {
        self.order.clear();
        if self.root == NONE {
            return;
        }
        self.order.push(self.root);
        let mut next = 0;
        while next < self.order.len() {
            let mut child = self.nodes[self.order[next] as usize].first;
            while child != NONE {
                self.order.push(child);
                child = self.nodes[child as usize].next;
            }
            next += 1;
        }
        for place in (0..self.order.len()).rev() {
            let id = self.order[place] as usize;
            let What::Row(axis) = self.nodes[id].what else { continue };
            let mut size = (0, 0);
            let mut child = self.nodes[id].first;
            while child != NONE {
                let it = self.nodes[child as usize].size;
                size = match axis {
                    Axis::Upright => (size.0 + it.0, size.1.max(it.1)),
                    Axis::Level => (size.0.max(it.0), size.1 + it.1),
                };
                child = self.nodes[child as usize].next;
            }
            self.nodes[id].size = size;
        }
        self.nodes[self.root as usize].room = sheet;
        for place in 0..self.order.len() {
            let Node { what, size, room, first, .. } =
                self.nodes[self.order[place] as usize];
            let What::Row(axis) = what else { continue };
            let mut child = first;
            while child != NONE {
                let it = &mut self.nodes[child as usize];
                it.room = match axis {
                    Axis::Upright => (it.size.0 + room.0 - size.0, room.1),
                    Axis::Level => (room.0, it.size.1 + room.1 - size.1),
                };
                child = it.next;
            }
        }
    }

    /// The sheet with its cuts.
    pub(super) fn draw(&self, board: &Board) -> Sheet {
        let mut sheet = Sheet::empty(board.wanted.len());
        if self.root == NONE {
            return sheet;
        }
        let unit = board.unit;
        let longest = board.longest;
        let mut open = vec![(self.root, board.real(), sheet.root)];
        while let Some((id, size, leaf)) = open.pop() {
            let node = &self.nodes[id as usize];
            let least = (node.size.0 * unit.0, node.size.1 * unit.1);
            let axis = match node.what {
                What::Part(kind, lie) => {
                    let lie = board.lies[kind as usize][lie as usize];
                    let part = (kind as usize, lie.turned);
                    sheet.holds[part.0] += 1;
                    sheet.sketch.place(leaf, size, part, least, size.0 <= longest);
                    continue;
                }
                What::Row(axis) => axis,
            };
            let (mut leaf, mut size) = (leaf, size);
            if axis == Axis::Upright && longest < size.1 {
                leaf = sheet.sketch.cut(leaf, Axis::Level, least.1, size.1).0;
                size.1 = least.1;
            } else if axis == Axis::Level && longest < size.0 {
                leaf = sheet.sketch.cut(leaf, Axis::Upright, least.0, size.0).0;
                size.0 = least.0;
            }
            let mut child = node.first;
            while child != NONE {
                let it = &self.nodes[child as usize];
                if it.next == NONE {
                    open.push((child, size, leaf));
                    break;
                }
                let (at, extent) = match axis {
                    Axis::Upright => (it.size.0 * unit.0, size.0),
                    Axis::Level => (it.size.1 * unit.1, size.1),
                };
                let (one, rest) = sheet.sketch.cut(leaf, axis, at, extent);
                match axis {
                    Axis::Upright => {
                        open.push((child, (at, size.1), one));
                        size.0 -= at;
                    }
                    Axis::Level => {
                        open.push((child, (size.0, at), one));
                        size.1 -= at;
                    }
                }
                leaf = rest.expect("every part of a row takes room");
                child = it.next;
            }
        }
        sheet
    }
}

/// Nodes and kinds are few.
fn small(index: usize) -> u32 {
    u32::try_from(index).expect("nodes and kinds are few")
}
