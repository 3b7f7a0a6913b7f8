//! The designer's own way of cutting: carried out step by step, and verified.
//!
//! What her words mean, for a part in hand that lies as it lay on the sheet:
//!
//! * `trim to: 5 1/2 in wide` is an upright cut 5 1/2 in from the left. The left
//!   part stays in hand; the right one is the other part, waste unless it is named.
//!   A part that is just so wide already is not cut.
//!   `trim to: 3 in high` is a level cut 3 in from the top; the top part stays.
//! * `cut off: 2 in high` is a level cut; 2 in come off at the top and the rest
//!   stays in hand. `cut off: 2 in wide` takes them off at the left. With `times`
//!   the next ones come off below or to the right of it. If the last one is just
//!   as large as what is left, it is what is left, without a cut.
//! * `halve: level` and `halve: upright` cut the part in hand in two equal parts,
//!   `halve: across` by a cut across its longer side and `halve: along` along it
//!   (reading turns the latter two into the former).
//! * `take: side` lays the part in hand aside and takes the one called `side`. A
//!   name goes on with what stays in hand when something is cut off its part.
//! * `keep: side` keeps a part as an offcut. What is neither used nor kept in the
//!   end is waste.
//!
//! Pieces must come off exactly in their size. All other orders are as good, and
//! nothing is rounded: a fault names both numbers and how far they are apart.

mod notes;
mod order;

use std::collections::BTreeMap;

use crate::diag::{Diagnostic, Outcome};
use crate::geom::{Axis, Length, Rect, Size};
use crate::plan::cut::plates::extent;
use crate::plan::cut::{Leaf, Part, PartOf, Schedule, Tree, Turning};
use crate::project::{OwnAct, OwnCutting, OwnStep, PieceId, Project, Text, Trimmer};
use crate::source::Site;

use notes::Notes;

/// Her own way of cutting a sheet, found to be sound.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct OwnWay {
    /// The cuts.
    pub tree: Tree,
    /// So many sheets are cut so for all kits.
    pub sheets: u32,
    /// The steps in her order; `schedule` orders the same cuts for the fewest
    /// marks instead.
    pub in_her_order: Schedule,
}

/// Carries out her own way of cutting on a sheet, and verifies it.
///
/// There is a value unless a note is an error.
pub fn own_way(
    own: &OwnCutting,
    project: &Project,
    parts: &[Part],
    sheet: Size,
    trimmer: &Trimmer,
) -> Outcome<OwnWay> {
    let notes = Notes { project, trimmer, all: Vec::new() };
    let paper = vec![Paper::new(Rect::whole(sheet), None)];
    let mut table = Table {
        parts,
        notes,
        paper,
        names: BTreeMap::new(),
        hand: Some(0),
        cuts: Vec::new(),
    };
    // After a step that can't be done it is anyone's guess what was meant.
    let ran = own.steps.iter().all(|step| table.step(step).is_some());
    let broken = table.notes.all.iter().any(Diagnostic::is_error);
    let sheets = if broken { None } else { table.count(own.site) };
    if ran {
        table.forgotten();
    }
    let errors = table.notes.all.iter().any(Diagnostic::is_error);
    let value = match sheets {
        Some(sheets) if !errors => {
            let tree = table.tree();
            let in_her_order = order::write_out(&table, &tree, sheet, sheets, trimmer);
            Some(OwnWay { tree, sheets, in_her_order })
        }
        _ => None,
    };
    Outcome { value, notes: table.notes.all }
}

/// A piece of paper on the table.
struct Paper {
    rect: Rect,
    /// The direction of the cut that made it.
    came_by: Option<Axis>,
    state: State,
}

#[derive(Clone, Copy, PartialEq, Eq)]
enum State {
    /// May still be cut.
    Lying,
    /// Cut into two others.
    Cut(Axis, usize, usize),
    /// Finished, by this step.
    Done(Leaf, Site),
}

impl Paper {
    const fn new(rect: Rect, came_by: Option<Axis>) -> Self {
        Self { rect, came_by, state: State::Lying }
    }
}

/// Cuts in a row at one mark from one part in hand.
struct Cuts {
    hand: usize,
    axis: Axis,
    mark: Length,
    off: Vec<usize>,
    stays: usize,
}

struct Table<'a> {
    parts: &'a [Part],
    notes: Notes<'a>,
    paper: Vec<Paper>,
    /// Which paper a name means, where it was given, and whether it was used.
    names: BTreeMap<&'a str, (usize, Site, bool)>,
    hand: Option<usize>,
    cuts: Vec<Cuts>,
}

impl<'a> Table<'a> {
    /// Does one step; `None` if the ones after it would be pointless.
    fn step(&mut self, step: &'a OwnStep) -> Option<()> {
        if let Some(name) = &step.take {
            self.hand = Some(self.named(name)?);
        }
        let site = step.site;
        match &step.act {
            OwnAct::Take => Some(()),
            OwnAct::TrimTo { cut, to, other } => {
                let hand = self.in_hand(site)?;
                if extent(self.paper[hand].rect.size, *cut) == *to && other.is_none() {
                    return Some(());
                }
                let (kept, off) = self.cut(hand, *cut, *to, site)?;
                self.go_on(hand, kept);
                self.cuts.push(Cuts {
                    hand,
                    axis: *cut,
                    mark: *to,
                    off: vec![kept],
                    stays: off,
                });
                self.call(other.as_ref(), off)
            }
            OwnAct::CutOff { cut, at, piece, name, times, at_site } => {
                let target = piece.map(|it| (it, *at_site));
                self.cut_off(*cut, *at, target, name.as_ref(), *times, site, *at_site)
            }
            OwnAct::Halve { cut, piece } => self.halve(*cut, *piece, site),
            OwnAct::Is(piece) => {
                let hand = self.in_hand(site)?;
                self.hand = None;
                self.is_piece(hand, *piece, site);
                Some(())
            }
            OwnAct::Keep(name) => {
                let kept = match name {
                    Some(name) => self.named(name)?,
                    None => self.in_hand(site)?,
                };
                self.paper[kept].state = State::Done(Leaf::Keep, site);
                if self.hand == Some(kept) {
                    self.hand = None;
                }
                Some(())
            }
        }
    }

    #[expect(clippy::too_many_arguments, reason = "one for each word of the step")]
    fn cut_off(
        &mut self,
        cut: Axis,
        at: Length,
        piece: Option<(PieceId, Site)>,
        name: Option<&'a Text>,
        times: u32,
        site: Site,
        at_site: Site,
    ) -> Option<()> {
        let first = self.in_hand(site)?;
        let mut off = Vec::new();
        let mut hand = first;
        for time in 1..=times {
            // The last one may be what is left.
            let whole = extent(self.paper[hand].rect.size, cut) == at;
            let last = time == times && whole && (piece.is_some() || name.is_some());
            let came = if last && time > 1 {
                self.hand = None;
                hand
            } else {
                let (came, rest) = self.cut(hand, cut, at, at_site)?;
                off.push(came);
                self.go_on(hand, rest);
                hand = rest;
                came
            };
            match piece {
                Some((piece, site)) => self.is_piece(came, piece, site),
                None => self.call(name, came)?,
            }
        }
        self.cuts.push(Cuts { hand: first, axis: cut, mark: at, off, stays: hand });
        Some(())
    }

    fn halve(&mut self, cut: Axis, piece: PieceId, site: Site) -> Option<()> {
        let hand = self.in_hand(site)?;
        let mark = extent(self.paper[hand].rect.size, cut).half();
        let (one, other) = self.cut(hand, cut, mark, site)?;
        self.cuts.push(Cuts { hand, axis: cut, mark, off: vec![one], stays: other });
        self.hand = None;
        self.is_piece(one, piece, site);
        if self.paper[one].state != State::Lying {
            self.is_piece(other, piece, site);
        }
        Some(())
    }

    /// Cuts a part; the left or top one is first.
    fn cut(
        &mut self,
        hand: usize,
        axis: Axis,
        at: Length,
        site: Site,
    ) -> Option<(usize, usize)> {
        let rect = self.paper[hand].rect;
        if at <= Length::ZERO || at >= extent(rect.size, axis) {
            self.notes.cut_too_large(axis, at, rect.size, site);
            return None;
        }
        self.notes.cut_too_long(rect.size.along(axis), site);
        let (first, second) = rect.split(axis, at);
        let n = self.paper.len();
        self.paper[hand].state = State::Cut(axis, n, n + 1);
        self.paper.extend([first, second].map(|it| Paper::new(it, Some(axis))));
        Some((n, n + 1))
    }

    /// What was called `from` is now `to`, and that is in hand.
    fn go_on(&mut self, from: usize, to: usize) {
        for named in self.names.values_mut() {
            if named.0 == from {
                named.0 = to;
            }
        }
        self.hand = Some(to);
    }

    fn in_hand(&mut self, site: Site) -> Option<usize> {
        if self.hand.is_none() {
            self.notes.nothing_in_hand(site);
        }
        self.hand
    }

    /// The part that has a name, which can still be cut.
    fn named(&mut self, name: &'a Text) -> Option<usize> {
        let Some((paper, _, used)) = self.names.get_mut(name.words.as_str()) else {
            let known: Vec<&str> = self.names.keys().copied().collect();
            self.notes.part_unknown(name, &known);
            return None;
        };
        *used = true;
        let paper = *paper;
        match self.paper[paper].state {
            State::Lying => Some(paper),
            State::Done(_, site) => {
                self.notes.used_twice(name, site);
                None
            }
            State::Cut(..) => {
                // All of it was cut into pieces by the last step that had it.
                self.notes.used_twice(name, name.site);
                None
            }
        }
    }

    fn call(&mut self, name: Option<&'a Text>, paper: usize) -> Option<()> {
        let Some(name) = name else { return Some(()) };
        if let Some((_, before, _)) = self.names.get(name.words.as_str()) {
            let before = *before;
            self.notes.name_twice(name, before);
            return None;
        }
        self.names.insert(&name.words, (paper, name.site, false));
        Some(())
    }

    /// Finishes a part as a piece, if it has its size.
    fn is_piece(&mut self, paper: usize, piece: PieceId, site: Site) {
        let comes = self.paper[paper].rect.size;
        let found = self.parts.iter().position(|it| it.of == PartOf::Piece(piece));
        let Some(part) = found else {
            self.notes.other_paper(piece, site);
            return;
        };
        let wanted = &self.parts[part];
        let turned = comes != wanted.size;
        if turned && comes != wanted.size.turned() {
            self.notes.other_size(piece, comes, wanted, site);
            return;
        }
        if turned && wanted.turning == Turning::Fixed {
            self.notes.turned(piece, comes, wanted, site);
        }
        self.paper[paper].state = State::Done(Leaf::Part { part, turned }, site);
    }

    /// Compares what a sheet yields with what a kit needs; how many sheets all
    /// kits take.
    fn count(&mut self, site: Site) -> Option<u32> {
        let mut yields = vec![0_u32; self.parts.len()];
        for paper in &self.paper {
            if let State::Done(Leaf::Part { part, .. }, _) = paper.state {
                yields[part] += 1;
            }
        }
        let needed: Vec<usize> =
            (0..self.parts.len()).filter(|&it| self.parts[it].count > 0).collect();
        let per_kit = |it: &usize| self.parts[*it].per_kit.max(1);
        // A sheet may serve several kits, or a kit take several sheets alike.
        let kits = needed.iter().map(|it| yields[*it] / per_kit(it)).min().unwrap_or(0);
        let alike = (1..=needed.iter().map(per_kit).max().unwrap_or(1)).find(|n| {
            needed.iter().all(|it| yields[*it].saturating_mul(*n) >= per_kit(it))
        });
        let sheets_a_kit = match alike {
            Some(n)
                if n == 1
                    || needed
                        .iter()
                        .all(|it| yields[*it].saturating_mul(n) == per_kit(it)) =>
            {
                n
            }
            _ => 1,
        };
        for it in &needed {
            let makes = yields[*it].saturating_mul(sheets_a_kit);
            if makes < per_kit(it) {
                self.notes.missing(&self.parts[*it], makes, site);
            } else if kits > 0 && makes > kits.saturating_mul(per_kit(it)) {
                self.notes.spare(&self.parts[*it], makes, kits, site);
            }
        }
        let sheets = needed.iter().map(|it| match yields[*it] {
            0 => None,
            n => Some(self.parts[*it].count.div_ceil(n)),
        });
        sheets.max().unwrap_or(Some(1))
    }

    fn forgotten(&mut self) {
        let sites: Vec<(&str, Site)> = self
            .names
            .iter()
            .filter(|(_, (paper, _, used))| {
                !used && self.paper[*paper].state == State::Lying
            })
            .map(|(name, (_, site, _))| (*name, *site))
            .collect();
        for (name, site) in sites {
            self.notes.forgotten(name, site);
        }
    }

    /// The tree of all cuts; what is left lying is waste.
    fn tree(&self) -> Tree {
        let mut trees: Vec<Option<Tree>> = Vec::new();
        trees.resize_with(self.paper.len(), || None);
        // Both parts of a cut stand after the paper they come from.
        for (idx, paper) in self.paper.iter().enumerate().rev() {
            trees[idx] = Some(match paper.state {
                State::Lying => Tree::Leaf(Leaf::Waste),
                State::Done(leaf, _) => Tree::Leaf(leaf),
                State::Cut(axis, first, second) => {
                    let at = extent(self.paper[first].rect.size, axis);
                    let mut take = |it: usize| trees[it].take().expect("built before");
                    let first = take(first);
                    Tree::cut(axis, at, first, take(second))
                }
            });
        }
        trees[0].take().expect("the sheet is built last")
    }
}
