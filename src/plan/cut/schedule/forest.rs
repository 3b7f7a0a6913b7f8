//! The cut trees of one paper as a forest of plates, ready for ordering.
//!
//! A *plate* is a rectangle of paper that is cut in one direction only, into
//! children that lie side by side. Children whose plates are cut the other way
//! follow. Neighbours on a plate may change places, so only the extents count:
//! all children of one extent are taken off at one mark, and that is an [`Op`].
//!
//! * Waste on a plate is gathered into one strip. It is the *rest*: nobody
//!   measures it, it is what remains when the others are off. Without waste an
//!   offcut is the rest, because its size need not be exact either.
//! * On a plate without a rest the last child is what remains. An op of a single
//!   child may therefore need no mark at all ([`Op::single`]).
//! * Where the pattern on the paper says what lies beside what, a plate is *held*: it
//!   has two children, the first comes off and the second is the rest.
//! * Siblings that are cut alike are one plate with several instances: they come
//!   off at the same mark, so every order can treat them together.

use std::collections::BTreeMap;

use crate::geom::{Axis, Length, Size};
use crate::plan::cut::plates::{Child, Flat};
use crate::plan::cut::{Leaf, Pattern};

/// All plates of all patterns, parents before children.
#[derive(Clone, Debug, Default)]
pub(super) struct Forest {
    pub(super) plates: Vec<Plate>,
    pub(super) ops: Vec<Op>,
    /// The different marks, smallest first.
    pub(super) marks: Vec<Length>,
    /// The plate that each pattern is, or the leaf that it is uncut.
    pub(super) roots: Vec<Child>,
}

/// A rectangle that is cut in one direction.
#[derive(Clone, Debug)]
pub(super) struct Plate {
    pub(super) pattern: usize,
    pub(super) axis: Axis,
    pub(super) size: Size,
    /// It hangs in this plate, or is a whole sheet.
    pub(super) parent: Option<usize>,
    /// Its ops are `ops[first_op..first_op + n_ops]`.
    pub(super) first_op: usize,
    pub(super) n_ops: usize,
    /// What remains unmeasured when all ops are done.
    pub(super) rest: Option<Child>,
    /// What comes off and the rest lie so and not the other way round.
    pub(super) held: bool,
    /// Too narrow to hold well.
    pub(super) hard: bool,
}

/// Taking all children of one extent off a plate.
#[derive(Clone, Debug)]
pub(super) struct Op {
    pub(super) plate: usize,
    /// Index of the extent among the marks.
    pub(super) mark: usize,
    /// What comes off; alike plates stand once with their number.
    pub(super) children: Vec<(Child, usize)>,
    /// The op that yields its plate.
    pub(super) parent: Option<usize>,
    /// It may be what remains: one child, on a plate without a rest.
    pub(super) single: bool,
}

impl Forest {
    /// The ops of a plate.
    pub(super) fn ops_of(&self, plate: usize) -> std::ops::Range<usize> {
        let plate = &self.plates[plate];
        plate.first_op..plate.first_op + plate.n_ops
    }

    /// Whether a plate is turned by a quarter before it is cut.
    pub(super) fn is_turned(&self, plate: &Plate) -> bool {
        plate.parent.is_some_and(|above| self.plates[above].axis != plate.axis)
    }

    /// Builds the forest of several patterns.
    pub(super) fn new(patterns: &[Pattern], narrowest: Length) -> Self {
        let mut forest = Self::default();
        let mut lengths = Vec::new();
        for (idx, pattern) in patterns.iter().enumerate() {
            let root =
                forest.add(&Flat::new(&pattern.tree, pattern.sheet), &mut lengths, idx);
            forest.roots.push(root);
        }
        for plate in &mut forest.plates {
            plate.hard = plate.size.short() < narrowest;
        }
        let mut marks = lengths.clone();
        marks.sort_unstable();
        marks.dedup();
        for (op, length) in forest.ops.iter_mut().zip(&lengths) {
            op.mark = marks.binary_search(length).expect("every extent is a mark");
        }
        forest.marks = marks;
        forest
    }

    /// Adds the plates and ops of a pattern; alike siblings once.
    fn add(&mut self, flat: &Flat, lengths: &mut Vec<Length>, pattern: usize) -> Child {
        let Child::Plate(root) = flat.root else { return flat.root };
        let classes = flat.classes();
        let first = self.plates.len();
        let mut queue = vec![(root, None, None)];
        let mut next = 0;
        while let Some(&(row, parent, parent_op)) = queue.get(next) {
            let plate = first + next;
            next += 1;
            let row = &flat.rows[row];
            let rest = if row.held { Some(1) } else { rest_of(&row.children) };
            let mut groups: BTreeMap<Length, Vec<(Child, usize, usize)>> =
                BTreeMap::new();
            for (idx, &(extent, child)) in row.children.iter().enumerate() {
                if rest == Some(idx) {
                    continue;
                }
                let group = groups.entry(extent).or_default();
                let class = match child {
                    Child::Plate(plate) => Child::Plate(classes[plate]),
                    Child::Leaf(_) => child,
                };
                match group.iter_mut().find(|it| it.0 == class) {
                    Some(alike) => alike.2 += 1,
                    None => group.push((class, idx, 1)),
                }
            }
            let first_op = self.ops.len();
            let n_ops = groups.len();
            for (extent, group) in groups {
                let op = self.ops.len();
                let mut children = Vec::with_capacity(group.len());
                for (_, idx, count) in group {
                    let child = match row.children[idx].1 {
                        Child::Plate(below) => {
                            queue.push((below, Some(plate), Some(op)));
                            Child::Plate(first + queue.len() - 1)
                        }
                        leaf @ Child::Leaf(_) => leaf,
                    };
                    children.push((child, count));
                }
                // Finished parts come off first, what is cut further last.
                children.sort_by_key(|it| it.0);
                let count: usize = children.iter().map(|it| it.1).sum();
                let single = rest.is_none() && count == 1;
                self.ops.push(Op { plate, mark: 0, children, parent: parent_op, single });
                lengths.push(extent);
            }
            let rest = rest.map(|idx| match row.children[idx].1 {
                leaf @ Child::Leaf(_) => leaf,
                // Only on a plate that is held is the rest cut again: when the one
                // op is done, it is there.
                Child::Plate(below) => {
                    queue.push((below, Some(plate), Some(first_op)));
                    Child::Plate(first + queue.len() - 1)
                }
            });
            let (axis, size, held) = (row.axis, row.size, row.held);
            let hard = false;
            self.plates.push(Plate {
                pattern,
                axis,
                size,
                parent,
                first_op,
                n_ops,
                rest,
                held,
                hard,
            });
        }
        Child::Plate(first)
    }
}

/// Which child is the rest: the waste, else the largest offcut.
fn rest_of(children: &[(Length, Child)]) -> Option<usize> {
    let waste = children.iter().position(|it| it.1 == Child::Leaf(Leaf::Waste));
    let keep = (0..children.len())
        .filter(|&idx| children[idx].1 == Child::Leaf(Leaf::Keep))
        .max_by_key(|&idx| (children[idx].0, std::cmp::Reverse(idx)));
    waste.or(keep)
}
