//! One paper from its parts to its finished cutting plan.

use crate::diag::Diagnostic;
use crate::geom::{Length, Size, Unit};
use crate::plan::cut::alike::every_sheet_alike;
use crate::plan::cut::compared::beside_the_best;
use crate::plan::cut::faults::{
    does_not_hold, fits_none, not_alike, not_enough, not_in_its_place,
    note_sizes_off_the_marks, takes_more_sheets,
};
use crate::plan::cut::follow::{follow, sheets_of};
use crate::plan::cut::look::look;
use crate::plan::cut::select::tidy_with;
use crate::plan::cut::ties::{Place, Ties};
use crate::plan::cut::{
    Bound, How, Kept, Kind, Leaf, Limits, Offcut, PaperCut, Part, Pattern, Problem,
    ReplayFault, Replayed, SheetKind, Solution, TIDY_BUDGET, Tree, Turning, Way, replay,
    schedule,
};
use crate::plan::uses::Kits;
use crate::project::{
    PaperId, Project, Stock, StockSheet, ToolKind, Trimmer, TrimmerKind,
};
use crate::source::Site;

/// How the cutting is to be planned.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Wishes<'a> {
    /// Search steps that may be spent on each paper.
    pub(crate) budget: u64,
    /// A plan that was kept, to be followed while it fits.
    pub(crate) kept: Option<&'a Kept>,
    /// Every sheet of every paper is cut the same way, whatever the description
    /// says and even if that takes more sheets.
    pub(crate) alike: bool,
}

impl Wishes<'_> {
    /// Whether every sheet of a paper is cut the same way.
    pub(crate) fn alike(self, project: &Project, paper: PaperId) -> bool {
        let said = project.papers[paper.0].sheets_alike;
        self.alike || said.unwrap_or(project.sheets_alike)
    }
}

/// A paper on the bench: what is to be cut from it, and with what.
pub(crate) struct Bench {
    pub(crate) paper: PaperId,
    pub(crate) parts: Vec<Part>,
    /// Which of them lie together or at one place.
    pub(crate) ties: Ties,
    /// The sheets that may be used, those that can be bought first.
    pub(crate) sheets: Vec<StockSheet>,
    pub(crate) trimmer: Trimmer,
    pub(crate) kits: u32,
    pub(crate) budget: u64,
    /// Only the number of sheets is asked for, not what they leave.
    pub(crate) sheets_only: bool,
}

/// What a search found out about a plan.
#[derive(Clone, Copy)]
pub(crate) struct Known {
    pub(crate) bound: Bound,
    pub(crate) proven: bool,
    /// The area of the largest offcut that a plan with so few sheets can leave, in
    /// square units, if that is known.
    pub(crate) largest: Option<i128>,
    pub(crate) spent: u64,
}

/// Plans the cutting of one paper; `None` if some part can't be cut from it.
///
/// `followed` are the patterns of a kept plan that fits.
pub(crate) fn cut_paper(
    project: &Project,
    (paper, parts): (PaperId, Vec<Part>),
    followed: Option<Vec<Pattern>>,
    kits: &Kits,
    wishes: Wishes<'_>,
    notes: &mut Vec<Diagnostic>,
) -> Option<PaperCut> {
    let trimmer = trimmer(project);
    let described = &project.papers[paper.0];
    note_sizes_off_the_marks(project, &trimmer, &parts, notes);
    let sheets = match &described.stock {
        Stock::Sheets(sheets) => sheets,
        Stock::Scraps(..) => return Some(scraps(paper, parts, kits, &trimmer)),
    };
    let ties = Ties::of(project, &parts, notes);
    let bench = Bench {
        paper,
        ties,
        parts,
        sheets: usable(sheets, kits),
        trimmer,
        kits: kits.cut_together(),
        budget: wishes.budget,
        sheets_only: false,
    };
    let alike = wishes.alike(project, paper);
    if let Some(patterns) = followed {
        return held(project, paper, follow(&bench, patterns, alike), notes);
    }

    // Search for the fewest sheets.
    let found = look(&bench, &bench.parts, &bench.sheets, bench.budget);
    if !found.too_large.is_empty() {
        let whole = bench.ties.whole(&bench.parts);
        for part in found.too_large {
            let name = bench.ties.called(project, &bench.parts, part);
            notes.push(fits_none(project, described, sheets, &name, &whole[part]));
        }
        return None;
    }
    let places = bench.ties.places(&bench.parts);
    let called = |it: &Place| {
        let name = bench.ties.called(project, &bench.parts, it.part);
        (name, it.site)
    };
    let called: Vec<(String, Site)> = places.iter().map(called).collect();
    if !found.enough {
        notes.push(match found.missed {
            Some(missed) if found.anywhere.is_some_and(|it| it > 0) => {
                not_in_its_place(project, &called, missed)
            }
            _ => not_enough(described),
        });
        return None;
    }
    let takes = sheets_of(&found.patterns);
    if let Some(anywhere) = found.anywhere
        && anywhere < takes
    {
        let any = |it: &Pattern| places.iter().any(|place| holds(it, place.part));
        let once = found.patterns.iter().all(any);
        notes.extend(takes_more_sheets(&called, (takes, anywhere), once));
    }

    // Choose the cuts that take the fewest marks, and put them in order.
    let best = bench.finished(bench.parts.clone(), found.patterns, found.known);
    let best = held(project, paper, best, notes)?;

    // Where the designer says how it is cut, that is how.
    if let Some(own) = project.cutting.iter().find(|own| own.paper == paper) {
        let sheet = sheets[0].size;
        return beside_the_best(project, own, sheet, best, &trimmer, notes);
    }
    // Some would rather cut every sheet the same.
    match every_sheet_alike(&bench, best, alike) {
        Ok(cut) => {
            if alike && cut.patterns.len() > 1 {
                notes.push(not_alike(described));
            }
            Some(cut)
        }
        Err(fault) => held(project, paper, Err(fault), notes),
    }
}

/// Whether a part lies on the sheets of a pattern.
fn holds(pattern: &Pattern, part: usize) -> bool {
    let mut leaves = pattern.tree.placements(pattern.sheet).into_iter();
    leaves.any(|it| matches!(it.leaf, Leaf::Part { part: other, .. } if other == part))
}

/// A plan that was carried out; one that does not hold is never printed.
fn held(
    project: &Project,
    paper: PaperId,
    plan: Result<PaperCut, ReplayFault>,
    notes: &mut Vec<Diagnostic>,
) -> Option<PaperCut> {
    let fault = match plan {
        Ok(cut) => return Some(cut),
        Err(fault) => fault,
    };
    notes.push(does_not_hold(&project.papers[paper.0], fault));
    None
}

impl Known {
    /// What the search says about its own plan.
    pub(crate) fn of(solution: &Solution) -> Self {
        let offcut = solution.offcut.filter(|(.., proven)| *proven);
        Self {
            bound: solution.bound,
            proven: solution.proven,
            largest: offcut.map(|(_, size, _)| size.area()),
            spent: solution.spent,
        }
    }
}

impl Bench {
    /// What the search is asked for.
    pub(crate) fn problem(
        &self,
        sheets: &[StockSheet],
        kinds: Vec<Kind>,
        budget: u64,
    ) -> Problem {
        let sheet = |it: &StockSheet| SheetKind { size: it.size, at_hand: it.at_hand };
        let mut limits = limits(&self.trimmer, budget);
        if self.sheets_only {
            // Nothing that comes off a sheet is as large as this.
            let sides = sheets.iter().map(|it| it.size.long());
            limits.least_offcut =
                sides.max().unwrap_or(Length::ZERO) + Length::inch(1, 1);
        }
        Problem { sheets: sheets.iter().map(sheet).collect(), kinds, limits }
    }

    /// Makes a plan that was found easy to cut, takes apart what lies together, and
    /// then orders its cuts. The patterns name whole parts.
    pub(crate) fn finished(
        &self,
        parts: Vec<Part>,
        mut patterns: Vec<Pattern>,
        known: Known,
    ) -> Result<PaperCut, ReplayFault> {
        let whole = self.ties.whole(&parts);
        let free: Vec<bool> =
            whole.iter().map(|part| part.turning == Turning::Free).collect();
        let budget = TIDY_BUDGET.min(self.budget);
        let apart = |tree: &Tree| self.ties.taken_apart(tree, &parts);
        let tidied = tidy_with(&patterns, &free, &self.trimmer, apart, None, budget);
        for (pattern, tree) in patterns.iter_mut().zip(tidied.trees) {
            let tree = tree.without_useless_cuts();
            pattern.tree = self.ties.taken_apart(&tree, &parts);
        }
        let spent = known.spent.saturating_add(tidied.spent);
        self.ordered(parts, patterns, Known { spent, ..known })
    }

    /// Orders the cuts of a plan, and carries it out before anyone else does.
    pub(crate) fn ordered(
        &self,
        parts: Vec<Part>,
        mut patterns: Vec<Pattern>,
        known: Known,
    ) -> Result<PaperCut, ReplayFault> {
        let steps = schedule(&patterns, &self.trimmer);
        // The steps say where everything lies.
        for (pattern, tree) in patterns.iter_mut().zip(&steps.laid) {
            pattern.tree = tree.clone();
        }
        let offcut = largest_kept(&patterns).map(|(pattern, size)| Offcut {
            pattern,
            size,
            proven: known.largest.is_some_and(|largest| size.area() >= largest),
        });
        carry_out(&parts, &patterns, offcut, &limits(&self.trimmer, self.budget))?;
        if let Some((pattern, part)) = self.ties.broken(&patterns) {
            return Err(ReplayFault::OutOfPlace { pattern, part });
        }
        Ok(PaperCut {
            paper: self.paper,
            kits: self.kits,
            offcut,
            bound: known.bound,
            proven: known.proven,
            schedule: steps,
            own: None,
            alike: None,
            fewest: None,
            spent: known.spent,
            parts,
            patterns,
        })
    }
}

/// What cuts must keep to.
pub(crate) fn limits(trimmer: &Trimmer, budget: u64) -> Limits {
    Limits {
        stages: None,
        longest_cut: trimmer.longest_cut,
        // Narrower than 1/2 in, nothing is cut from it again (common practice, no
        // source).
        least_offcut: Length::inch(1, 2).max(trimmer.narrowest),
        budget,
    }
}

/// The largest offcut by area, with the first pattern that leaves it.
pub(crate) fn largest_kept(patterns: &[Pattern]) -> Option<(usize, Size)> {
    let mut largest: Option<(usize, Size)> = None;
    for (index, pattern) in patterns.iter().enumerate() {
        for placed in pattern.tree.placements(pattern.sheet) {
            let size = placed.rect.size;
            if placed.leaf == Leaf::Keep
                && largest.is_none_or(|(_, most)| most.area() < size.area())
            {
                largest = Some((index, size));
            }
        }
    }
    largest
}

/// Carries a plan out on imaginary paper and counts what comes out.
pub(crate) fn carry_out(
    parts: &[Part],
    patterns: &[Pattern],
    offcut: Option<Offcut>,
    limits: &Limits,
) -> Result<Replayed, ReplayFault> {
    let wanted = parts.iter().map(|part| Kind {
        size: part.size,
        free: part.turning == Turning::Free,
        count: part.count,
    });
    let wanted: Vec<Kind> = wanted.collect();
    let ways = patterns.iter().map(|it| (it.sheet, &it.tree, it.copies));
    let ways: Vec<Way> = ways.collect();
    let offcut = offcut.map(|offcut| (offcut.pattern, offcut.size));
    replay(&wanted, limits, &ways, &[], offcut)
}

/// The trimmer that is described, or a plain one: marks of 1/16 in or 1 mm, and
/// nothing narrower than 1/4 in or 6 mm to be held (common practice, no source).
pub(crate) fn trimmer(project: &Project) -> Trimmer {
    let described = project.tools.iter().find_map(|tool| match tool.kind {
        ToolKind::Trimmer(trimmer) => Some(trimmer),
        _ => None,
    });
    let (marks, narrowest) = match project.unit {
        Unit::Inch => (Length::inch(1, 16), Length::inch(1, 4)),
        Unit::Mm => (Length::mm(1), Length::mm(6)),
    };
    described.unwrap_or(Trimmer {
        longest_cut: None,
        sheets_at_once: 1,
        marks,
        narrowest,
        kind: TrimmerKind::Sliding,
    })
}

/// Whether there is a plan, and no sheet in it that is not to be had.
pub(crate) fn enough(problem: &Problem, solution: &Solution) -> bool {
    let have = problem.sheets.iter().enumerate().all(|(index, sheet)| {
        let used = solution.patterns.iter().filter(|(kind, ..)| *kind == index);
        let used = used.fold(0_u32, |all, (.., copies)| all.saturating_add(*copies));
        sheet.at_hand.is_none_or(|at_hand| used <= at_hand)
    });
    have && (problem.kinds.is_empty() || !solution.patterns.is_empty())
}

/// The sheets that a plan may use, those that can be bought first. A plan that each person carries out can't count
/// on the few that are at hand, where others can be bought.
pub(crate) fn usable(sheets: &[StockSheet], kits: &Kits) -> Vec<StockSheet> {
    let bought = sheets.iter().filter(|sheet| sheet.at_hand.is_none());
    let bought: Vec<StockSheet> = bought.copied().collect();
    if kits.apart && kits.total() > 1 && !bought.is_empty() {
        return bought;
    }
    let mut all = sheets.to_vec();
    all.sort_by_key(|sheet| sheet.at_hand.is_some());
    all
}

/// The sheets that a search found, with their sizes.
pub(crate) fn patterns_of(problem: &Problem, solution: &Solution) -> Vec<Pattern> {
    let patterns = solution.patterns.iter();
    patterns
        .map(|(sheet, tree, copies)| Pattern {
            sheet: problem.sheets[*sheet].size,
            tree: tree.clone(),
            copies: *copies,
        })
        .collect()
}

/// Scraps are not planned: whether a part is small enough was seen when the
/// description was read.
fn scraps(paper: PaperId, parts: Vec<Part>, kits: &Kits, trimmer: &Trimmer) -> PaperCut {
    PaperCut {
        paper,
        kits: kits.cut_together(),
        parts,
        patterns: Vec::new(),
        bound: Bound { sheets: 0, how: How::Area },
        proven: true,
        offcut: None,
        schedule: schedule(&[], trimmer),
        own: None,
        alike: None,
        fewest: None,
        spent: 0,
    }
}
