//! What the search finds for the parts of a paper, with what is tied kept together.

use crate::plan::cut::assign::{kinds, parts_in_patterns};
use crate::plan::cut::in_place::{self, Missed};
use crate::plan::cut::paper::{Bench, Known, enough, patterns_of};
use crate::plan::cut::{Part, Pattern, solve};
use crate::project::StockSheet;

/// What was found.
pub(crate) struct Found {
    /// Ways to cut a sheet. Trees name whole parts: see `Ties::whole`.
    pub(crate) patterns: Vec<Pattern>,
    /// What is known about them.
    pub(crate) known: Known,
    /// Whole parts that fit no sheet.
    pub(crate) too_large: Vec<usize>,
    /// There is a plan, and no sheet in it that is not to be had.
    pub(crate) enough: bool,
    /// So many sheets would do if nothing asked for a place on the sheet.
    pub(crate) anywhere: Option<u32>,
    /// Why what asks for a place does not get it.
    pub(crate) missed: Option<Missed>,
}

/// Looks for the fewest sheets from which these parts can be cut.
pub(crate) fn look(
    bench: &Bench,
    parts: &[Part],
    sheets: &[StockSheet],
    budget: u64,
) -> Found {
    let whole = bench.ties.whole(parts);
    let mut places = bench.ties.places(parts);
    places.retain(|it| whole[it.part].count > 0);
    if !places.is_empty() {
        return in_place::look(bench, &whole, &places, sheets, budget);
    }
    let merged = kinds(&whole);
    let problem = bench.problem(sheets, merged.kinds.clone(), budget);
    let solution = solve(&problem);
    let too_large = solution.too_large.iter().filter_map(|it| merged.parts.get(*it));
    let found = patterns_of(&problem, &solution);
    Found {
        patterns: parts_in_patterns(&found, &merged, &whole),
        known: Known::of(&solution),
        too_large: too_large.flatten().copied().collect(),
        enough: enough(&problem, &solution),
        anywhere: None,
        missed: None,
    }
}
