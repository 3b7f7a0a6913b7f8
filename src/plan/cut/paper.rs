//! One paper from its parts to its finished cutting plan.

use crate::diag::{Diagnostic, rules};
use crate::geom::{Length, Size, Unit};
use crate::plan::cut::assign::{kinds, parts_in_patterns};
use crate::plan::cut::{
    Bound, How, Kind, Limits, Offcut, PaperCut, Part, PartOf, Pattern, Problem,
    ReplayFault, Replayed, SheetKind, Solution, TIDY_BUDGET, Turning, Way, replay,
    schedule, solve, tidy,
};
use crate::plan::say;
use crate::plan::uses::Kits;
use crate::project::{
    Paper, PaperId, Project, Stock, StockSheet, ToolKind, Trimmer, TrimmerKind,
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
        Stock::Scraps(size, _) => {
            return scraps(project, paper, *size, parts, kits, notes);
        }
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
    if solution.patterns.is_empty() && !merged.kinds.is_empty() {
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
    Some(PaperCut {
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
    })
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

/// The sheets that a plan may use. A plan that each person carries out can't count
/// on the few that are at hand, where others can be bought.
fn usable(sheets: &[StockSheet], kits: &Kits) -> Vec<StockSheet> {
    let bought = sheets.iter().filter(|sheet| sheet.at_hand.is_none());
    let bought: Vec<StockSheet> = bought.copied().collect();
    if kits.apart && kits.total() > 1 && !bought.is_empty() {
        bought
    } else {
        sheets.to_vec()
    }
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

/// Scraps are not planned: each part only has to be small enough.
fn scraps(
    project: &Project,
    paper: PaperId,
    size: Size,
    parts: Vec<Part>,
    kits: &Kits,
    notes: &mut Vec<Diagnostic>,
) -> Option<PaperCut> {
    let fits = |part: &Part| {
        let turned = part.turning == Turning::Free && part.size.turned().fits(size);
        part.size.fits(size) || turned
    };
    let too_large = parts.iter().filter(|part| !fits(part));
    let before = notes.len();
    notes.extend(too_large.map(|part| {
        let described = &project.papers[paper.0];
        let message = format!(
            "`{}` needs {}, but the scraps of `{}` are only sure to be {}",
            called(project, part.of),
            say::size(part.size, project.unit),
            described.name.words,
            say::size(size, project.unit),
        );
        Diagnostic::new(&rules::PART_FITS_NO_SHEET, part.site, message)
            .label(described.name.site, "the paper it is cut from")
            .help("look for larger scraps and say how large they are at least")
    }));
    (notes.len() == before).then(|| PaperCut {
        paper,
        kits: kits.cut_together(),
        parts,
        patterns: Vec::new(),
        bound: Bound { sheets: 0, how: How::Area },
        proven: true,
        offcut: None,
        schedule: schedule(&[], &trimmer(project)),
        own: None,
        spent: 0,
    })
}

/// What a part is called in messages.
pub(crate) fn called(project: &Project, part: PartOf) -> String {
    match part {
        PartOf::Piece(id) => project.pieces[id.0].name.words.clone(),
        PartOf::Base(id) => format!("{}, unfolded", project.bases[id.0].name.words),
        PartOf::Label(id) => format!("label of {}", project.greetings[id.0].name.words),
        PartOf::LabelMat(id) => format!("mat of {}", project.greetings[id.0].name.words),
    }
}

fn fits_none(
    project: &Project,
    paper: &Paper,
    sheets: &[StockSheet],
    part: &Part,
) -> Diagnostic {
    let unit = project.unit;
    let name = called(project, part.of);
    let needs = say::size(part.size, unit);
    let turned = part.turning == Turning::Free;
    let lies_on =
        |sheet: Size| part.size.fits(sheet) || (turned && part.size.turned().fits(sheet));
    if let Some(sheet) = sheets.iter().find(|sheet| lies_on(sheet.size)) {
        let longest = trimmer(project).longest_cut.unwrap_or_default();
        let message = format!(
            "`{name}` can't be cut from {}: the trimmer's longest cut is {}",
            say::size(sheet.size, unit),
            say::length(longest, unit),
        );
        return Diagnostic::new(&rules::CUT_TOO_LONG, part.site, message)
            .help("take a longer trimmer, or smaller sheets");
    }
    let largest = sheets.iter().map(|sheet| sheet.size).max_by_key(|size| size.area());
    let largest = say::size(largest.unwrap_or_default(), unit);
    let name_of_paper = &paper.name.words;
    let message = format!(
        "`{name}` is {needs}, and no sheet of `{name_of_paper}` is so large ({largest})"
    );
    let mut note = Diagnostic::new(&rules::PART_FITS_NO_SHEET, part.site, message)
        .label(paper.name.site, "the paper it is cut from");
    if sheets.iter().any(|sheet| part.size.turned().fits(sheet.size)) {
        note = note.help(
            "it would fit after a quarter turn, but its pattern or fold must not be turned",
        );
    }
    note
}

fn not_enough(paper: &Paper) -> Diagnostic {
    let name = &paper.name.words;
    Diagnostic::new(
        &rules::NOT_ENOUGH_SHEETS,
        paper.name.site,
        format!("the sheets of `{name}` that are at hand don't do for all the kits"),
    )
    .help("make fewer kits, or name a size of sheet that can be bought")
}

/// Sizes that lie between two marks of the trimmer; the plan keeps them.
fn note_sizes_off_the_marks(
    project: &Project,
    trimmer: &Trimmer,
    parts: &[Part],
    notes: &mut Vec<Diagnostic>,
) {
    let marks = trimmer.marks.units();
    if marks <= 0 {
        return;
    }
    let off = |length: Length| length.units() % marks != 0;
    for part in parts {
        let Size { width, height } = part.size;
        let sides = [(width, "wide"), (height, "high")];
        for (length, word) in sides.into_iter().filter(|(length, _)| off(*length)) {
            let below = Length::from_units(length.units() / marks * marks);
            let message = format!(
                "`{}` is {} {word}, between two marks of the trimmer",
                called(project, part.of),
                say::length(length, project.unit),
            );
            let help = format!(
                "the nearest marks are {} and {}",
                say::length(below, project.unit),
                say::length(below + trimmer.marks, project.unit),
            );
            let note = Diagnostic::new(&rules::SIZE_OFF_THE_MARKS, part.site, message);
            notes.push(note.help(help));
        }
    }
}
