//! Sheets from which parts are cut at their places, for the sake of the pattern.
//!
//! On such a sheet the parts are cut free by cuts from edge to edge (`frames`). In
//! which order they are made decides which strips are left round them, and the strips
//! are stock for the other parts. Every order is tried, and parts that ask for
//! different places are tried on one sheet, where cuts part them, and each on sheets of
//! its own. More strips than four could be cut off round a part, so this is not every
//! way to cut it free: the plan is called proven only if no plan whatever could do with
//! fewer sheets.

use crate::geom::{Length, Rect};
use crate::plan::cut::assign::{kinds, parts_in_patterns};
use crate::plan::cut::frames::{Frame, Wanted, frames, least_longest_cut};
use crate::plan::cut::look::Found;
use crate::plan::cut::paper::{Bench, Known, enough, largest_kept, limits};
use crate::plan::cut::ties::Place;
use crate::plan::cut::{
    Bound, How, Kind, Leaf, Limits, Part, Pattern, Problem, SheetKind, Tree, solve,
};
use crate::project::StockSheet;

/// More parts than this are not put in their places on one sheet.
const MOST_ON_A_SHEET: usize = 4;

/// Why parts are not in their places; of several reasons the one that came last.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) enum Missed {
    /// One of them, or what lies next to it, would reach beyond the sheet.
    OffTheSheet,
    /// To free one of them takes a cut of this length.
    Cut(Length),
    /// They take so many sheets, and so many are at hand.
    Sheets(u32, u32),
    /// They take so many sheets of those at hand, which leaves too few for the rest.
    Rest(u32, u32),
}

/// Looks for the fewest sheets when some parts lie at their places on each sheet that
/// they are cut from. `whole` are the parts with rows as one.
pub(crate) fn look(
    bench: &Bench,
    whole: &[Part],
    places: &[Place],
    sheets: &[StockSheet],
    budget: u64,
) -> Found {
    let anywhere = solve(&bench.problem(sheets, kinds(whole).kinds, budget / 4));
    let least = least_sheets(whole, places);
    let bound = if anywhere.bound.sheets < least {
        Bound { sheets: least, how: How::Pairs }
    } else {
        anywhere.bound
    };
    let mut others = whole.to_vec();
    for place in places {
        others[place.part].count = 0;
    }
    let mut merged = kinds(&others);
    let rects: Vec<Rect> = places.iter().map(|it| it.rect).collect();
    let job = Around {
        kinds: merged.kinds.clone(),
        rects: &rects,
        counts: places.iter().map(|it| whole[it.part].count).collect(),
        stock: sheets,
        limits: Limits { budget: budget / 32, ..limits(&bench.trimmer, budget) },
    };
    for (place, count) in places.iter().zip(&job.counts) {
        merged.kinds.push(Kind { size: place.rect.size, free: false, count: *count });
        merged.parts.push(vec![place.part]);
    }

    let mut spent = anywhere.spent;
    let mut best: Option<Ranked> = None;
    let mut missed = None;
    for index in 0..sheets.len() {
        if best.is_some() {
            break;
        }
        for together in [true, false] {
            if !together && places.len() < 2 {
                continue;
            }
            match job.best(index, together, &mut spent) {
                Ok(found) => {
                    if best.as_ref().is_none_or(|best| found.rank < best.rank) {
                        best = Some(found);
                    }
                }
                Err(reason) => missed = missed.max(Some(reason)),
            }
        }
    }
    let found = best.map_or_else(Vec::new, |it| it.patterns);
    let count = sheets_in(&found);
    let too_large = anywhere.too_large.iter();
    let kinds_of_all = kinds(whole);
    let too_large = too_large.filter_map(|it| kinds_of_all.parts.get(*it));
    let sheets_anywhere =
        anywhere.patterns.iter().fold(0, |sum: u32, it| sum.saturating_add(it.2));
    Found {
        enough: !found.is_empty(),
        patterns: parts_in_patterns(&found, &merged, whole),
        known: Known { bound, proven: count <= bound.sheets, largest: None, spent },
        too_large: too_large.flatten().copied().collect(),
        anywhere: Some(sheets_anywhere),
        missed: missed.filter(|_| found.is_empty()),
    }
}

/// Each sheet has a place once, and only one of two that overlap.
fn least_sheets(whole: &[Part], places: &[Place]) -> u32 {
    let count = |it: &Place| whole[it.part].count;
    let mut least = 0;
    for (index, one) in places.iter().enumerate() {
        least = least.max(count(one));
        for other in &places[index + 1..] {
            if one.rect.overlap(other.rect).is_some() {
                least = least.max(count(one).saturating_add(count(other)));
            }
        }
    }
    least
}

fn sheets_in(patterns: &[Pattern]) -> u32 {
    patterns.iter().fold(0, |sum: u32, it| sum.saturating_add(it.copies))
}

/// What is asked for round parts in their places.
struct Around<'a> {
    /// The other parts. What trees call a place follows after these.
    kinds: Vec<Kind>,
    rects: &'a [Rect],
    /// How many are wanted of each place.
    counts: Vec<u32>,
    stock: &'a [StockSheet],
    limits: Limits,
}

/// Sheets on which the same parts are in their places, and ways to free them.
struct Setting {
    number: u32,
    frames: Vec<Frame>,
}

/// A plan; those of less rank are better.
struct Ranked {
    /// Sheets, the largest offcut's area, cuts.
    rank: (u32, std::cmp::Reverse<i128>, u32),
    patterns: Vec<Pattern>,
}

impl Around<'_> {
    /// The best plan that cuts the places from sheets of one size.
    fn best(
        &self,
        sheet: usize,
        together: bool,
        spent: &mut u64,
    ) -> Result<Ranked, Missed> {
        let settings = self.settings(sheet, together)?;
        let number =
            settings.iter().fold(0, |sum: u32, it| sum.saturating_add(it.number));
        let at_hand = self.stock[sheet].at_hand.unwrap_or(u32::MAX);
        if at_hand < number {
            return Err(Missed::Sheets(number, at_hand));
        }
        // One way after another is exchanged for a better one.
        let mut chosen = vec![0; settings.len()];
        let mut best = self.ranked(sheet, &settings, &chosen, spent);
        for index in 0..settings.len() {
            for frame in 0..settings[index].frames.len() {
                let before = std::mem::replace(&mut chosen[index], frame);
                if before == frame {
                    continue;
                }
                let found = self.ranked(sheet, &settings, &chosen, spent);
                let better = match (&found, &best) {
                    (Some(found), Some(best)) => found.rank < best.rank,
                    (found, _) => found.is_some(),
                };
                if better {
                    best = found;
                } else {
                    chosen[index] = before;
                }
            }
        }
        best.ok_or(Missed::Rest(number, at_hand))
    }

    /// Which places share a sheet: as many as cuts can part, or each has its own.
    fn settings(&self, sheet: usize, together: bool) -> Result<Vec<Setting>, Missed> {
        let size = self.stock[sheet].size;
        let frames_of = |these: &[usize]| {
            let longest = self.limits.longest_cut;
            frames(size, Wanted { places: self.rects, these, longest })
        };
        let mut left = self.counts.clone();
        let mut settings = Vec::new();
        while let Some(first) = left.iter().position(|it| *it > 0) {
            let mut these = vec![first];
            let mut frames = frames_of(&these);
            if frames.is_empty() {
                let needs = least_longest_cut(size, self.rects[first]);
                return Err(needs.map_or(Missed::OffTheSheet, Missed::Cut));
            }
            let others = (first + 1..left.len()).filter(|it| together && left[*it] > 0);
            for other in others {
                if these.len() == MOST_ON_A_SHEET {
                    break;
                }
                these.push(other);
                let found = frames_of(&these);
                if found.is_empty() {
                    let _ = these.pop();
                } else {
                    frames = found;
                }
            }
            let number = these.iter().map(|it| left[*it]).min().unwrap_or(0);
            these.iter().for_each(|it| left[*it] -= number);
            settings.push(Setting { number, frames });
        }
        Ok(settings)
    }

    fn ranked(
        &self,
        sheet: usize,
        settings: &[Setting],
        chosen: &[usize],
        spent: &mut u64,
    ) -> Option<Ranked> {
        let frames = settings.iter().zip(chosen);
        let frames: Vec<(&Frame, u32)> =
            frames.map(|(it, chosen)| (&it.frames[*chosen], it.number)).collect();
        let patterns = self.plan(sheet, &frames, spent)?;
        let kept = largest_kept(&patterns).map_or(0, |(_, size)| size.area());
        let cuts = patterns.iter().map(|it| it.tree.cuts()).sum();
        let rank = (sheets_in(&patterns), std::cmp::Reverse(kept), cuts);
        Some(Ranked { rank, patterns })
    }

    /// The fewest sheets if the places are cut free in these ways, each from so many
    /// sheets.
    fn plan(
        &self,
        sheet: usize,
        frames: &[(&Frame, u32)],
        spent: &mut u64,
    ) -> Option<Vec<Pattern>> {
        if self.kinds.is_empty() {
            let bare = |it: &(&Frame, u32)| self.sheets(sheet, *it, Vec::new());
            return Some(frames.iter().flat_map(bare).collect());
        }
        // All sheets the same way, if the parts can be shared out evenly.
        if let [one] = *frames {
            let even = self.kinds.iter().all(|it| it.count % one.1 == 0);
            if let Some(cut) = even.then(|| self.alike(one, spent)).flatten() {
                return Some(self.sheets(sheet, one, cut));
            }
        }
        let mut stock: Vec<SheetKind> = self.stock.iter().map(whole_sheet).collect();
        if let Some(at_hand) = &mut stock[sheet].at_hand {
            let number = frames.iter().fold(0, |sum: u32, it| sum.saturating_add(it.1));
            *at_hand = at_hand.saturating_sub(number);
        }
        for (frame, number) in frames {
            let strip = |it: &Rect| SheetKind { size: it.size, at_hand: Some(*number) };
            stock.extend(frame.strips.iter().map(strip));
        }
        let (kinds, limits) = (self.kinds.clone(), self.limits);
        let problem = Problem { sheets: stock, kinds, limits };
        let solution = solve(&problem);
        *spent = spent.saturating_add(solution.spent);
        if !solution.too_large.is_empty() || !enough(&problem, &solution) {
            return None;
        }
        let (whole, strips): (Vec<_>, Vec<_>) =
            solution.patterns.into_iter().partition(|it| it.0 < self.stock.len());
        let mut patterns = Vec::new();
        let mut first = self.stock.len();
        for &(frame, number) in frames {
            let end = first + frame.strips.len();
            let mine = strips.iter().filter(|it| (first..end).contains(&it.0));
            let cut = mine.map(|it| (it.0 - first, it.1.clone(), it.2)).collect();
            patterns.extend(self.sheets(sheet, (frame, number), cut));
            first = end;
        }
        patterns.extend(whole.into_iter().map(|(index, tree, copies)| Pattern {
            sheet: self.stock[index].size,
            tree,
            copies,
        }));
        Some(patterns)
    }

    /// What is cut from the strips of one sheet, if every sheet is cut alike.
    fn alike(
        &self,
        (frame, number): (&Frame, u32),
        spent: &mut u64,
    ) -> Option<Vec<(usize, Tree, u32)>> {
        let share = |it: &Kind| Kind { count: it.count / number, ..*it };
        let strip = |it: &Rect| SheetKind { size: it.size, at_hand: Some(1) };
        let problem = Problem {
            sheets: frame.strips.iter().map(strip).collect(),
            kinds: self.kinds.iter().map(share).collect(),
            limits: self.limits,
        };
        let solution = solve(&problem);
        *spent = spent.saturating_add(solution.spent);
        let whole = solution.too_large.is_empty() && enough(&problem, &solution);
        let all = solution.patterns.into_iter().map(|it| (it.0, it.1, number));
        whole.then(|| all.collect())
    }

    /// The sheets with parts in their places, their strips cut as is given: by index
    /// of the strip, the cuts and on how many sheets.
    fn sheets(
        &self,
        sheet: usize,
        (frame, number): (&Frame, u32),
        cut: Vec<(usize, Tree, u32)>,
    ) -> Vec<Pattern> {
        // For each strip how it is cut on so many sheets, the next one last.
        let mut runs: Vec<Vec<(Tree, u32)>> = Vec::new();
        for strip in &frame.strips {
            let keep = strip.size.short() >= self.limits.least_offcut;
            let leaf = if keep { Leaf::Keep } else { Leaf::Waste };
            runs.push(vec![(Tree::Leaf(leaf), number)]);
        }
        for (strip, tree, copies) in cut {
            let run = &mut runs[strip];
            run[0].1 = run[0].1.saturating_sub(copies);
            run.push((tree, copies));
        }
        let place = |it: usize| Leaf::Part { part: self.kinds.len() + it, turned: false };
        let size = self.stock[sheet].size;
        let mut patterns = Vec::new();
        let mut left = number;
        while left > 0 {
            for run in &mut runs {
                while run.len() > 1 && run.last().is_some_and(|it| it.1 == 0) {
                    let _ = run.pop();
                }
            }
            let next = runs.iter().filter_map(|run| run.last().map(|it| it.1));
            let copies = next.min().unwrap_or(left).clamp(1, left);
            let trees = runs.iter_mut().map(|run| {
                let last = run.last_mut().expect("a strip has its leaf");
                last.1 = last.1.saturating_sub(copies);
                last.0.clone()
            });
            let trees: Vec<Tree> = trees.collect();
            let tree = frame.filled(self.rects, place, &trees);
            patterns.push(Pattern { sheet: size, tree, copies });
            left -= copies;
        }
        patterns
    }
}

fn whole_sheet(sheet: &StockSheet) -> SheetKind {
    SheetKind { size: sheet.size, at_hand: sheet.at_hand }
}
