//! An order of marks for forests that are too large to search.

use crate::plan::cut::schedule::forest::Forest;

/// Sets whichever mark serves most ops that are ready, and so on to the end.
pub(super) fn order(forest: &Forest) -> Vec<usize> {
    let mut work = Work {
        forest,
        ready: vec![Vec::new(); forest.marks.len()],
        waiting: vec![Vec::new(); forest.ops.len()],
        late: Vec::new(),
        done: vec![false; forest.ops.len()],
        n_left: forest.plates.iter().map(|it| it.n_ops).collect(),
        n_soft: 0,
    };
    for (idx, op) in forest.ops.iter().enumerate() {
        work.n_soft += usize::from(!forest.plates[op.plate].hard);
        if let Some(above) = op.parent {
            work.waiting[above].push(idx);
        }
    }
    for (idx, op) in forest.ops.iter().enumerate() {
        if op.parent.is_none() {
            work.is_ready(idx);
        }
    }
    work.release_late();
    let mut settings = Vec::new();
    loop {
        let most = (0..work.ready.len()).rev().max_by_key(|&mark| work.ready[mark].len());
        match most {
            Some(mark) if !work.ready[mark].is_empty() => {
                let mut useful = false;
                while let Some(op) = work.ready[mark].pop() {
                    useful |= !work.done[op];
                    work.finish(op);
                }
                settings.extend(useful.then_some(mark));
            }
            _ => return settings,
        }
    }
}

struct Work<'a> {
    forest: &'a Forest,
    /// Ops that can be done, by mark. An op that remained over may still stand here.
    ready: Vec<Vec<usize>>,
    /// The ops on the plates that an op yields.
    waiting: Vec<Vec<usize>>,
    /// Ops on plates that are hard to hold, while others are left.
    late: Vec<usize>,
    done: Vec<bool>,
    n_left: Vec<usize>,
    n_soft: usize,
}

impl Work<'_> {
    fn is_ready(&mut self, op: usize) {
        let it = &self.forest.ops[op];
        if self.forest.plates[it.plate].hard && self.n_soft > 0 {
            self.late.push(op);
        } else {
            self.ready[it.mark].push(op);
        }
    }

    fn release_late(&mut self) {
        if self.n_soft == 0 {
            for op in std::mem::take(&mut self.late) {
                self.ready[self.forest.ops[op].mark].push(op);
            }
        }
    }

    /// Does an op, and the one that then remains without a mark.
    fn finish(&mut self, op: usize) {
        let mut next = Some(op);
        while let Some(op) = next.take() {
            if std::mem::replace(&mut self.done[op], true) {
                continue;
            }
            let plate = self.forest.ops[op].plate;
            self.n_left[plate] -= 1;
            self.n_soft -= usize::from(!self.forest.plates[plate].hard);
            for below in std::mem::take(&mut self.waiting[op]) {
                self.is_ready(below);
            }
            self.release_late();
            if self.n_left[plate] == 1 {
                let last = self.forest.ops_of(plate).find(|&op| !self.done[op]);
                next = last.filter(|&op| self.forest.ops[op].single);
            }
        }
    }
}
