//! A kept plan is followed instead of a new search, as long as it fits.

use crate::diag::Diagnostic;
use crate::geom::Size;
use crate::plan::cut::alike::{every_sheet_alike, parts_of, toil};
use crate::plan::cut::demand::letter;
use crate::plan::cut::faults::kept_not_followed;
use crate::plan::cut::look::look;
use crate::plan::cut::paper::{Bench, Known, Wishes, carry_out, limits, trimmer};
use crate::plan::cut::ties::Ties;
use crate::plan::cut::{
    Alike, Kept, KeptFault, Leaf, PaperCut, Part, Pattern, ReplayFault, called, schedule,
};
use crate::plan::uses::Kits;
use crate::project::{PaperId, Project, Stock, StockSheet};

/// Steps to find out how few sheets would do; the plan itself is not searched for.
const STEPS_FOR_THE_BOUND: u64 = 4_000_000;

/// For each paper, the patterns of the kept plan if they fit; then its parts are
/// called by the letters that were printed. What does not fit is pointed out.
pub(crate) fn kept_patterns(
    project: &Project,
    demand: &mut [(PaperId, Vec<Part>)],
    wishes: Wishes<'_>,
    kits: &Kits,
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
        let fitting = Fitting { project, paper: *paper, sheets, kept };
        let alike = wishes.alike(project, *paper);
        match fitting.patterns(parts, alike.then(|| kits.cut_together())) {
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
    alike: bool,
) -> Result<PaperCut, ReplayFault> {
    let budget = STEPS_FOR_THE_BOUND.min(bench.budget);
    let found = look(bench, &bench.parts, &bench.sheets, budget);
    let sheets = sheets_of(&patterns);
    let known = found.known;
    let known = Known {
        proven: sheets <= known.bound.sheets,
        largest: known.largest.filter(|_| sheets_of(&found.patterns) == sheets),
        ..known
    };
    let found = found.patterns;
    if !alike {
        let followed = bench.ordered(bench.parts.clone(), patterns, known)?;
        if found.is_empty() || sheets <= sheets_of(&found) {
            return every_sheet_alike(bench, followed, false);
        }
        // The plan was made for something else once: what would a new one take?
        let known = Known { largest: None, ..known };
        let fewest = bench.finished(bench.parts.clone(), found, known)?;
        return Ok(PaperCut { fewest: Some(toil(&fewest)), ..followed });
    }
    // The parts of whole kits may be left over; that was seen when it was read.
    let all = kits_in(&patterns, &bench.parts);
    let followed = bench.ordered(parts_of(&bench.parts, all), patterns, known)?;
    let fewest =
        bench.finished(bench.parts.clone(), found, Known { largest: None, ..known })?;
    let compared = Alike {
        kits_per_sheet: all / sheets.max(1),
        left_over: all.saturating_sub(bench.kits),
        alike: toil(&followed),
        fewest: toil(&fewest),
        chosen: true,
    };
    let differs = fewest.patterns.len() > 1;
    Ok(PaperCut { alike: differs.then_some(compared), ..followed })
}

/// A paper, and the plans that were kept.
struct Fitting<'a> {
    project: &'a Project,
    paper: PaperId,
    sheets: &'a [StockSheet],
    kept: &'a Kept,
}

impl Fitting<'_> {
    /// The patterns of the kept plan, and the letters of the parts.
    ///
    /// Where sheets are to be cut alike, for so many kits, the plan may leave the
    /// parts of whole kits over, as long as it takes no sheet too many.
    fn patterns(
        &self,
        parts: &[Part],
        alike: Option<u32>,
    ) -> Result<(Vec<Pattern>, Vec<String>), KeptFault> {
        let Some(kits) = alike else { return self.exactly(parts) };
        let first = match self.exactly(parts) {
            Ok((patterns, _)) if patterns.len() > 1 => {
                return Err(KeptFault::NotAlike(patterns.len()));
            }
            Ok(fits) => return Ok(fits),
            Err(fault) => fault,
        };
        let name = &self.project.papers[self.paper.0].name.words;
        let plans = self.kept.papers.iter().filter(|it| it.paper == *name);
        for plan in plans.filter(|it| it.patterns.len() == 1) {
            let Some(part) = plan.parts.first() else { continue };
            let of_part =
                parts.iter().find(|it| called(self.project, it.of) == part.name);
            let all = of_part.and_then(|it| part.count.checked_div(it.per_kit));
            let sheets = sheets_of(&plan.patterns);
            let (Some(all), true) = (all, sheets > 0) else { continue };
            if all % sheets != 0 || all < kits || all - kits >= all / sheets {
                continue;
            }
            if let Ok(fits) = self.exactly(&parts_of(parts, all)) {
                return Ok(fits);
            }
        }
        Err(first)
    }

    /// A part that would not lie where the pattern on the paper ties it.
    fn out_of_place(&self, parts: &[Part], patterns: &[Pattern]) -> Option<String> {
        let ties = Ties::of(self.project, parts, &mut Vec::new());
        if ties.is_empty() {
            return None;
        }
        // The order of the cuts decides where everything lies.
        let laid = schedule(patterns, &trimmer(self.project)).laid;
        let laid = patterns.iter().zip(laid);
        let laid: Vec<Pattern> =
            laid.map(|(it, tree)| Pattern { tree, ..it.clone() }).collect();
        let (_, part) = ties.broken(&laid)?;
        Some(called(self.project, parts[part].of))
    }

    /// A plan that makes as many as are wanted, neither more nor fewer.
    fn exactly(&self, parts: &[Part]) -> Result<(Vec<Pattern>, Vec<String>), KeptFault> {
        let sizes: Vec<Size> = self.sheets.iter().map(|it| it.size).collect();
        let (patterns, letters) =
            self.kept.patterns_for(self.project, self.paper, parts, &sizes)?;
        for sheet in self.sheets {
            let of_size = patterns.iter().filter(|it| it.sheet == sheet.size);
            let used = of_size.fold(0, |sum: u32, it| sum.saturating_add(it.copies));
            let mut same = self.sheets.iter().filter(|it| it.size == sheet.size);
            let any = same.any(|it| it.at_hand.is_none());
            if let Some(at_hand) = sheet.at_hand.filter(|it| *it < used && !any) {
                return Err(KeptFault::MoreSheets(sheet.size, used, at_hand));
            }
        }
        // The trimmer may be another one now.
        let limits = limits(&trimmer(self.project), 0);
        match carry_out(parts, &patterns, None, &limits) {
            Ok(_) => match self.out_of_place(parts, &patterns) {
                None => Ok((patterns, letters)),
                Some(part) => Err(KeptFault::OutOfPlace(part)),
            },
            Err(ReplayFault::CutTooLong { length, .. }) => {
                let longest = limits.longest_cut.unwrap_or_default();
                Err(KeptFault::CutTooLong(length, longest))
            }
            Err(fault) => Err(KeptFault::OutOfForm(fault.to_string())),
        }
    }
}

/// How many whole kits the patterns make.
fn kits_in(patterns: &[Pattern], parts: &[Part]) -> u32 {
    let Some(kit) = parts.iter().position(|it| it.per_kit > 0) else { return 0 };
    let made = patterns.iter().fold(0, |sum: u32, pattern| {
        let leaves = pattern.tree.placements(pattern.sheet).into_iter();
        let mine =
            leaves.filter(|it| matches!(it.leaf, Leaf::Part { part, .. } if part == kit));
        let each = u32::try_from(mine.count()).unwrap_or(u32::MAX);
        sum.saturating_add(each.saturating_mul(pattern.copies))
    });
    made / parts[kit].per_kit
}

/// How many sheets patterns take.
pub(crate) fn sheets_of(patterns: &[Pattern]) -> u32 {
    patterns.iter().fold(0, |sum, it| sum.saturating_add(it.copies))
}
