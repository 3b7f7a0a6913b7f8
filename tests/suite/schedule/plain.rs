//! The fewest marks by plain search, without any of the scheduler's reasoning.

use std::collections::{BTreeMap, VecDeque};

use leafwright::geom::Length;
use leafwright::plan::cut::Leaf;

use crate::schedule::made_up::Node;

/// Every child that has to come off, for plain search.
#[derive(Default)]
pub(crate) struct Plain {
    /// Extent, the node it lies on, whether the node can't be held well.
    pub(crate) children: Vec<(Length, usize, bool)>,
    /// For each node the child that it is, and whether something unmeasured stays.
    nodes: Vec<(Option<usize>, bool)>,
}

impl Plain {
    pub(crate) fn new(sheets: &[Node], narrowest: Length) -> Self {
        let mut plain = Self::default();
        let mut open: Vec<(&Node, Option<usize>)> =
            sheets.iter().map(|it| (it, None)).collect();
        while let Some((node, above)) = open.pop() {
            let idx = plain.nodes.len();
            let leaf = |want: Leaf| {
                node.children.iter().position(|it| it.1.as_ref().err() == Some(&want))
            };
            let rest = leaf(Leaf::Waste).or(leaf(Leaf::Keep));
            plain.nodes.push((above, rest.is_some()));
            let hard = node.size.width.min(node.size.height) < narrowest;
            for (at, (extent, child)) in node.children.iter().enumerate() {
                if rest == Some(at) {
                    continue;
                }
                if let Ok(below) = child {
                    open.push((below, Some(plain.children.len())));
                }
                plain.children.push((*extent, idx, hard));
            }
        }
        plain
    }

    /// Fewest settings by plain search over which children are off, cut by cut.
    pub(crate) fn fewest(&self) -> u32 {
        let all: u32 = (1 << self.children.len()) - 1;
        let mut seen = BTreeMap::new();
        let mut queue = VecDeque::from([(0_u32, 0_u32, None)]);
        while let Some((settings, off, mark)) = queue.pop_front() {
            if off == all {
                return settings;
            }
            if seen.insert((off, mark), ()).is_some() {
                continue;
            }
            let soft_left = (0..self.children.len())
                .any(|it| off >> it & 1 == 0 && !self.children[it].2);
            for (idx, &(extent, node, hard)) in self.children.iter().enumerate() {
                let ready = self.nodes[node].0.is_none_or(|it| off >> it & 1 == 1);
                if off >> idx & 1 == 1 || !ready || hard && soft_left {
                    continue;
                }
                let mut then = off | 1 << idx;
                // The last one on a node where nothing else stays is off as well.
                let left: Vec<usize> = (0..self.children.len())
                    .filter(|&it| self.children[it].1 == node && then >> it & 1 == 0)
                    .collect();
                if let ([last], false) = (left.as_slice(), self.nodes[node].1) {
                    then |= 1 << last;
                }
                if mark == Some(extent) {
                    queue.push_front((settings, then, mark));
                } else {
                    queue.push_back((settings + 1, then, Some(extent)));
                }
            }
        }
        unreachable!("everything can be cut off")
    }
}
