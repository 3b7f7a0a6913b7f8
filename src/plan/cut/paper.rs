//! One paper from its parts to its finished cutting plan.

use crate::diag::Diagnostic;
use crate::geom::{Length, Unit};
use crate::plan::cut::assign::{kinds, parts_in_patterns};
use crate::plan::cut::compared::beside_the_best;
use crate::plan::cut::faults::{fits_none, not_enough, note_sizes_off_the_marks};
use crate::plan::cut::{
    Bound, How, Kind, Limits, Offcut, PaperCut, Part, Pattern, Problem, ReplayFault,
    Replayed, SheetKind, Solution, TIDY_BUDGET, Turning, Way, replay, schedule, solve,
    tidy,
};
use crate::plan::uses::Kits;
use crate::project::{
    PaperId, Project, Stock, StockSheet, ToolKind, Trimmer, TrimmerKind,
};

/// Plans the cutting of one paper; `None` if some part can't be cut from it.
pub(crate) fn cut_paper(
    project: &Project,
    paper: PaperId,
    parts: Vec<Part>,
    kits: &Kits,
    budget: u64,
    notes: &mut Vec<Diagnostic>,
) -> Option<PaperCut> {
    let trimmer = trimmer(project);
    let described = &project.papers[paper.0];
    note_sizes_off_the_marks(project, &trimmer, &parts, notes);
    let sheets = match &described.stock {
        Stock::Sheets(sheets) => sheets,
        Stock::Scraps(..) => return Some(scraps(paper, parts, kits, &trimmer)),
    };

    // Search for the fewest sheets.
    let merged = kinds(&parts);
    let problem = problem(&usable(sheets, kits), &merged.kinds, &trimmer, budget);
    let solution = solve(&problem);
    if !solution.too_large.is_empty() {
        for kind in &solution.too_large {
            for part in merged.parts.get(*kind).into_iter().flatten() {
                notes.push(fits_none(project, described, sheets, &parts[*part]));
            }
        }
        return None;
    }
    if !enough(&problem, &solution) {
        notes.push(not_enough(described));
        return None;
    }

    // Name the parts that lie on the sheets, and choose the cuts that take the
    // fewest marks.
    let found = patterns_of(&problem, &solution);
    let mut patterns = parts_in_patterns(&found, &merged, &parts);
    let free: Vec<bool> =
        parts.iter().map(|part| part.turning == Turning::Free).collect();
    let tidied = tidy(&patterns, &free, &trimmer, TIDY_BUDGET.min(budget));
    for (pattern, tree) in patterns.iter_mut().zip(tidied.trees) {
        pattern.tree = tree;
    }

    // Order the cuts; the steps say where everything lies.
    let steps = schedule(&patterns, &trimmer);
    for (pattern, tree) in patterns.iter_mut().zip(&steps.laid) {
        pattern.tree = tree.clone();
    }

    // Carry the plan out before anyone else does.
    let offcut = kept(&patterns, &found, &solution);
    debug_assert_eq!(
        carry_out(&parts, &patterns, offcut, &problem.limits).map(|_| ()),
        Ok(()),
        "the plan does not hold",
    );
    let best = PaperCut {
        paper,
        kits: kits.cut_together(),
        offcut,
        bound: solution.bound,
        proven: solution.proven,
        schedule: steps,
        own: None,
        spent: solution.spent.saturating_add(tidied.spent),
        parts,
        patterns,
    };

    // Where the designer says how it is cut, that is how.
    match project.cutting.iter().find(|own| own.paper == paper) {
        Some(own) => beside_the_best(project, own, sheets[0].size, best, &trimmer, notes),
        None => Some(best),
    }
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
fn enough(problem: &Problem, solution: &Solution) -> bool {
    let have = problem.sheets.iter().enumerate().all(|(index, sheet)| {
        let used = solution.patterns.iter().filter(|(kind, ..)| *kind == index);
        let used = used.fold(0_u32, |all, (.., copies)| all.saturating_add(*copies));
        sheet.at_hand.is_none_or(|at_hand| used <= at_hand)
    });
    have && (problem.kinds.is_empty() || !solution.patterns.is_empty())
}

/// The sheets that a plan may use, those that can be bought first. A plan that each person carries out can't count
/// on the few that are at hand, where others can be bought.
fn usable(sheets: &[StockSheet], kits: &Kits) -> Vec<StockSheet> {
    let bought = sheets.iter().filter(|sheet| sheet.at_hand.is_none());
    let bought: Vec<StockSheet> = bought.copied().collect();
    if kits.apart && kits.total() > 1 && !bought.is_empty() {
        return bought;
    }
    let mut all = sheets.to_vec();
    all.sort_by_key(|sheet| sheet.at_hand.is_some());
    all
}

fn problem(
    sheets: &[StockSheet],
    kinds: &[Kind],
    trimmer: &Trimmer,
    budget: u64,
) -> Problem {
    let sheet = |it: &StockSheet| SheetKind { size: it.size, at_hand: it.at_hand };
    Problem {
        sheets: sheets.iter().map(sheet).collect(),
        kinds: kinds.to_vec(),
        limits: Limits {
            stages: None,
            longest_cut: trimmer.longest_cut,
            // Narrower than 1/2 in, nothing is cut from it again (common
            // practice, no source).
            least_offcut: Length::inch(1, 2).max(trimmer.narrowest),
            budget,
        },
    }
}

fn patterns_of(problem: &Problem, solution: &Solution) -> Vec<Pattern> {
    let patterns = solution.patterns.iter();
    patterns
        .map(|(sheet, tree, copies)| Pattern {
            sheet: problem.sheets[*sheet].size,
            tree: tree.clone(),
            copies: *copies,
        })
        .collect()
}

/// The kept offcut, by the pattern that it ended up in: a pattern of the search
/// may have been divided, but the sheets stay in order.
fn kept(named: &[Pattern], found: &[Pattern], solution: &Solution) -> Option<Offcut> {
    let (index, size, proven) = solution.offcut?;
    let sheets_before: u32 = found[..index].iter().map(|pattern| pattern.copies).sum();
    let mut sheets = 0;
    let pattern = named.iter().position(|pattern| {
        sheets += pattern.copies;
        sheets > sheets_before
    })?;
    Some(Offcut { pattern, size, proven })
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
        spent: 0,
    }
}
