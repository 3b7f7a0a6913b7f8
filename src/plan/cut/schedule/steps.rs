//! From an order of marks to the steps at the trimmer.
//!
//! What a step takes off lies at the left or the top of the part in hand, so that
//! the edge at the rule is a factory edge or the cut made just before, and the
//! rest ends up at the right or the bottom. That fixes where everything lies on
//! the sheet: [`Schedule::laid`] are the given trees with neighbours exchanged so
//! that they show the cuts as the steps make them.

use crate::geom::{Axis, Length, Rect, Size};
use crate::plan::cut::plates::{Child, extent};
use crate::plan::cut::schedule::forest::Forest;
use crate::plan::cut::schedule::{Becomes, Hand, Schedule, Step};
use crate::plan::cut::{Leaf, Pattern, Tree};
use crate::project::Trimmer;

/// Carries out an order of marks; `None` if it leaves something uncut, or sets a
/// mark for nothing.
pub(super) fn carry_out(
    forest: &Forest,
    patterns: &[Pattern],
    trimmer: &Trimmer,
    settings: &[usize],
) -> Option<Carried> {
    let mut bench = Bench::new(forest, patterns);
    for &mark in settings {
        let before = bench.steps.len();
        bench.set_mark(mark);
        if bench.steps.len() == before {
            return None;
        }
    }
    if bench.n_done < forest.ops.len() {
        return None;
    }
    bench.name_parts();
    let mut schedule = Schedule { steps: bench.steps, ..Schedule::default() };
    for step in &schedule.steps {
        schedule.marks += u32::from(step.moves);
        schedule.turns += u32::from(step.turn);
        schedule.strokes = schedule.strokes.saturating_add(step.strokes(trimmer));
    }
    Some(Carried { schedule, lying: bench.lying })
}

/// An order of marks, carried out.
pub(super) struct Carried {
    /// The steps, without the trees.
    pub(super) schedule: Schedule,
    /// The children of each plate as they lie, with their extents.
    lying: Vec<Vec<(Length, Child)>>,
}

impl Carried {
    /// The schedule with the trees laid as the steps cut them.
    pub(super) fn finished(self, forest: &Forest) -> Schedule {
        let laid = (0..forest.roots.len()).map(|idx| self.laid(forest, idx)).collect();
        Schedule { laid, ..self.schedule }
    }

    /// The tree of a pattern with everything where the steps cut it.
    fn laid(&self, forest: &Forest, pattern: usize) -> Tree {
        let root = match forest.roots[pattern] {
            Child::Leaf(leaf) => return Tree::Leaf(leaf),
            Child::Plate(plate) => plate,
        };
        // Plates stand after their parents, so all below is built first. A plate
        // with several instances is copied for all but one.
        let last = forest.plates.iter().rposition(|it| it.pattern == pattern);
        let mut trees: Vec<Option<Tree>> = vec![None; forest.plates.len()];
        for plate in (root..=last.unwrap_or(root)).rev() {
            let axis: Axis = forest.plates[plate].axis;
            let mut tree = None;
            let lying = &self.lying[plate];
            for (idx, &(at, child)) in lying.iter().enumerate().rev() {
                let child = match child {
                    Child::Leaf(leaf) => Tree::Leaf(leaf),
                    Child::Plate(below) => {
                        let again = lying[..idx].iter().any(|it| it.1 == child);
                        let tree = &mut trees[below];
                        let tree = if again { tree.clone() } else { tree.take() };
                        tree.expect("built before")
                    }
                };
                tree = Some(match tree {
                    None => child,
                    Some(rest) if forest.plates[plate].held => {
                        Tree::held(axis, at, child, rest)
                    }
                    Some(rest) => Tree::cut(axis, at, child, rest),
                });
            }
            trees[plate] = tree;
        }
        trees[root].take().expect("the root is built last")
    }
}

/// The state of the work while the steps are made.
struct Bench<'a> {
    forest: &'a Forest,
    patterns: &'a [Pattern],
    by_mark: Vec<Vec<usize>>,
    done: Vec<bool>,
    n_done: usize,
    n_soft_left: usize,
    steps: Vec<Step>,
    /// The plate of each step, and the plates that it yields.
    traces: Vec<Trace>,
    /// Where the remainders of each plate lie, one for each instance.
    rests: Vec<Vec<Rect>>,
    /// The children of each plate as they lie, with their extents.
    lying: Vec<Vec<(Length, Child)>>,
}

struct Trace {
    plate: usize,
    /// One for each of the step's `off`, then for what stays.
    yields: Vec<Child>,
    /// What stays is still the same plate.
    goes_on: bool,
}

impl<'a> Bench<'a> {
    fn new(forest: &'a Forest, patterns: &'a [Pattern]) -> Self {
        let mut by_mark = vec![Vec::new(); forest.marks.len()];
        let mut n_soft_left = 0;
        for (idx, op) in forest.ops.iter().enumerate() {
            by_mark[op.mark].push(idx);
            n_soft_left += usize::from(!forest.plates[op.plate].hard);
        }
        let mut rests = vec![Vec::new(); forest.plates.len()];
        for root in &forest.roots {
            if let Child::Plate(plate) = *root {
                rests[plate].push(Rect::whole(forest.plates[plate].size));
            }
        }
        Self {
            forest,
            patterns,
            by_mark,
            done: vec![false; forest.ops.len()],
            n_done: 0,
            n_soft_left,
            steps: Vec::new(),
            traces: Vec::new(),
            rests,
            lying: vec![Vec::new(); forest.plates.len()],
        }
    }

    /// Does everything that can be done at one mark, the part in hand first.
    fn set_mark(&mut self, mark: usize) {
        let n_before = self.steps.len();
        loop {
            let ready = |&&op: &&usize| {
                let it = &self.forest.ops[op];
                let late = !self.forest.plates[it.plate].hard || self.n_soft_left == 0;
                !self.done[op] && it.parent.is_none_or(|above| self.done[above]) && late
            };
            let next = self.by_mark[mark].iter().filter(ready).min_by_key(|&&op| {
                let plate = self.forest.ops[op].plate;
                let (hand, place) = match self.traces.last() {
                    Some(last) if last.goes_on && last.plate == plate => (0, 0),
                    Some(last) => {
                        let at =
                            last.yields.iter().position(|it| *it == Child::Plate(plate));
                        let other = self.forest.plates[plate].pattern
                            != self.forest.plates[last.plate].pattern;
                        at.map_or((2 + usize::from(other), 0), |at| (1, at))
                    }
                    None => (4, 0),
                };
                (hand, place, op)
            });
            match next {
                Some(&op) => {
                    let moves = self.steps.len() == n_before;
                    self.cut(op, moves);
                }
                None => break,
            }
        }
    }

    /// Takes all children of an op off its plate.
    fn cut(&mut self, op: usize, moves: bool) {
        let it = &self.forest.ops[op];
        let plate = &self.forest.plates[it.plate];
        let (axis, mark) = (plate.axis, self.forest.marks[it.mark]);
        let first = self.lying[it.plate].is_empty();
        self.finish(op);
        let left: Vec<usize> =
            self.forest.ops_of(it.plate).filter(|&op| !self.done[op]).collect();
        let mut yields = Vec::new();
        for &(child, count) in &it.children {
            yields.extend(std::iter::repeat_n(child, count));
        }
        // What stays: the rest, a single child that is left over, the last of
        // these children, or the plate with what is still to come off.
        let (stays, goes_on) = match (left.as_slice(), plate.rest) {
            ([], Some(rest)) => (rest, false),
            ([], None) => (yields.pop().expect("an op has children"), false),
            (&[last], None) if self.forest.ops[last].single => {
                self.finish(last);
                (self.forest.ops[last].children[0].0, false)
            }
            _ => (Child::Plate(it.plate), true),
        };
        let times = yields.len();
        let mut places = Vec::with_capacity(self.rests[it.plate].len());
        for rest in std::mem::take(&mut self.rests[it.plate]) {
            let mut here = Vec::with_capacity(times + 1);
            let mut rest = rest;
            for _ in 0..times {
                let (off, after) = rest.split(axis, mark);
                here.push(off);
                rest = after;
            }
            here.push(rest);
            places.push(here);
        }
        for (idx, child) in yields.iter().chain([&stays]).enumerate() {
            if let Child::Plate(below) = *child {
                self.rests[below].extend(places.iter().map(|here| here[idx]));
            }
            if idx < times {
                self.lying[it.plate].push((mark, *child));
            } else if !goes_on {
                self.lying[it.plate].push((extent(places[0][idx].size, axis), *child));
            }
        }
        let whole = |here: &Vec<Rect>| hull(here[0], here[times]);
        let named = |idx: usize| (places[0][idx], Becomes::Waste);
        self.steps.push(Step {
            pattern: plate.pattern,
            in_hand: whole(&places[0]),
            alike: places[1..].iter().map(whole).collect(),
            hand: Hand::Sheet,
            axis,
            from_far_side: false,
            mark,
            moves,
            times: u32::try_from(times).unwrap_or(u32::MAX),
            off: (0..times).map(named).collect(),
            stays: named(times),
            slack: !goes_on && !left_over(plate.rest),
            copies: self.patterns[plate.pattern].copies,
            turn: first && self.forest.is_turned(plate),
            hard_to_hold: plate.hard,
        });
        yields.push(stays);
        self.traces.push(Trace { plate: it.plate, yields, goes_on });
    }

    fn finish(&mut self, op: usize) {
        self.done[op] = true;
        self.n_done += 1;
        let hard = self.forest.plates[self.forest.ops[op].plate].hard;
        self.n_soft_left -= usize::from(!hard);
    }

    /// Says what the parts in hand are called and what becomes of all parts.
    fn name_parts(&mut self) {
        let mut numbers: Vec<Option<u32>> = vec![None; self.forest.plates.len()];
        let mut fresh = 0;
        let mut in_hand = None;
        for idx in 0..self.steps.len() {
            let plate = self.traces[idx].plate;
            self.steps[idx].hand = match (in_hand, numbers[plate]) {
                (Some(hand), _) if hand == plate => Hand::Same,
                (_, Some(number)) => Hand::Aside(number),
                (_, None) => Hand::Sheet,
            };
            let next = self.traces.get(idx + 1).map(|it| it.plate);
            in_hand = None;
            let mut becomes = Vec::with_capacity(self.traces[idx].yields.len());
            for child in &self.traces[idx].yields {
                becomes.push(match *child {
                    Child::Leaf(Leaf::Waste) => Becomes::Waste,
                    Child::Leaf(Leaf::Keep) => Becomes::Keep,
                    Child::Leaf(Leaf::Part { part, .. }) => Becomes::Part(part),
                    Child::Plate(below) if Some(below) == next => {
                        in_hand = next;
                        Becomes::InHand
                    }
                    Child::Plate(below) => {
                        let number = *numbers[below].get_or_insert_with(|| {
                            fresh += 1;
                            fresh
                        });
                        Becomes::Aside(number)
                    }
                });
            }
            let step = &mut self.steps[idx];
            step.stays.1 = becomes.pop().expect("something stays");
            for (off, becomes) in step.off.iter_mut().zip(becomes) {
                off.1 = becomes;
            }
        }
    }
}

/// Whether the rest of a plate is not used.
fn left_over(rest: Option<Child>) -> bool {
    matches!(rest, Some(Child::Leaf(Leaf::Waste | Leaf::Keep)))
}

/// The rectangle from the corner of one to the far corner of another.
fn hull(first: Rect, last: Rect) -> Rect {
    let size = Size::new(last.right() - first.x, last.bottom() - first.y);
    Rect::new(first.x, first.y, size)
}
