//! A kept plan is followed instead of a new search, as long as it fits.

use crate::diag::Diagnostic;
use crate::geom::Size;
use crate::plan::cut::assign::kinds;
use crate::plan::cut::demand::letter;
use crate::plan::cut::faults::kept_not_followed;
use crate::plan::cut::paper::{Bench, Known, Wishes, carry_out, limits, trimmer};
use crate::plan::cut::{
    Kept, KeptFault, PaperCut, Part, Pattern, ReplayFault, Solution, solve,
};
use crate::project::{PaperId, Project, Stock, StockSheet};

/// Steps to find out how few sheets would do; the plan itself is not searched for.
const STEPS_FOR_THE_BOUND: u64 = 4_000_000;

/// For each paper, the patterns of the kept plan if they fit; then its parts are
/// called by the letters that were printed. What does not fit is pointed out.
pub(crate) fn kept_patterns(
    project: &Project,
    demand: &mut [(PaperId, Vec<Part>)],
    wishes: Wishes<'_>,
    notes: &mut Vec<Diagnostic>,
) -> Vec<Option<Vec<Pattern>>> {
    let Some(kept) = wishes.kept else { return vec![None; demand.len()] };
    let mut followed = Vec::with_capacity(demand.len());
    // The letters of plans that are followed stay; no other part may have them.
    let mut letters: Vec<String> = Vec::new();
    for (paper, parts) in demand.iter_mut() {
        // Scraps are not planned, and a designer's own way needs no keeping.
        let own = project.cutting.iter().any(|it| it.paper == *paper);
        let described = &project.papers[paper.0];
        let (Stock::Sheets(sheets), false) = (&described.stock, own) else {
            followed.push(None);
            continue;
        };
        match fitting(project, *paper, parts, sheets, kept, wishes.alike) {
            Ok((patterns, printed)) if printed.iter().all(|it| !letters.contains(it)) => {
                for (part, printed) in parts.iter_mut().zip(&printed) {
                    part.letter.clone_from(printed);
                }
                letters.extend(printed);
                followed.push(Some(patterns));
            }
            Ok(_) => followed.push(None),
            Err(fault) => {
                let site = described.name.site;
                notes.push(kept_not_followed(site, project.unit, &fault));
                followed.push(None);
            }
        }
    }
    let mut next = (0..).map(letter).filter(|it| !letters.contains(it));
    let papers = demand.iter_mut().zip(&followed);
    for ((_, parts), _) in papers.filter(|(_, followed)| followed.is_none()) {
        for (part, letter) in parts.iter_mut().zip(&mut next) {
            part.letter = letter;
        }
    }
    followed
}

/// Orders the cuts of a kept plan, with what can be said about the fewest sheets.
pub(crate) fn follow(
    bench: &Bench,
    patterns: Vec<Pattern>,
) -> Result<PaperCut, ReplayFault> {
    let budget = STEPS_FOR_THE_BOUND.min(bench.budget);
    let solution: Solution = solve(&bench.problem(kinds(&bench.parts).kinds, budget));
    let sheets = patterns.iter().fold(0, |sum: u32, it| sum.saturating_add(it.copies));
    let found = solution.patterns.iter().map(|(.., copies)| *copies);
    let as_many = found.fold(0, u32::saturating_add) == sheets;
    let known = Known::of(&solution);
    let known = Known {
        proven: sheets <= known.bound.sheets,
        largest: known.largest.filter(|_| as_many),
        ..known
    };
    bench.ordered(bench.parts.clone(), patterns, known)
}

/// The patterns, and the letters of the parts.
fn fitting(
    project: &Project,
    paper: PaperId,
    parts: &[Part],
    sheets: &[StockSheet],
    kept: &Kept,
    alike: bool,
) -> Result<(Vec<Pattern>, Vec<String>), KeptFault> {
    let sizes: Vec<Size> = sheets.iter().map(|it| it.size).collect();
    let (patterns, letters) = kept.patterns_for(project, paper, parts, &sizes)?;
    if alike && patterns.len() > 1 {
        return Err(KeptFault::NotAlike(patterns.len()));
    }
    for sheet in sheets {
        let of_size = patterns.iter().filter(|it| it.sheet == sheet.size);
        let used = of_size.fold(0, |sum: u32, it| sum.saturating_add(it.copies));
        let others = sheets.iter().any(|it| it.size == sheet.size && it.at_hand.is_none());
        if let Some(at_hand) = sheet.at_hand.filter(|it| *it < used && !others) {
            return Err(KeptFault::MoreSheets(sheet.size, used, at_hand));
        }
    }
    // The trimmer may be another one now.
    let limits = limits(&trimmer(project), 0);
    match carry_out(parts, &patterns, None, &limits) {
        Ok(_) => Ok((patterns, letters)),
        Err(ReplayFault::CutTooLong { length, .. }) => {
            let longest = limits.longest_cut.unwrap_or_default();
            Err(KeptFault::CutTooLong(length, longest))
        }
        Err(fault) => Err(KeptFault::OutOfForm(fault.to_string())),
    }
}
