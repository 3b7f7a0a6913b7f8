//! What is said when something can't be cut, or only by eye.

use crate::diag::{Diagnostic, rules};
use crate::geom::{Length, Size};
use crate::plan::cut::paper::trimmer;
use crate::plan::cut::{Part, PartOf, Turning};
use crate::plan::say;
use crate::project::{Paper, Project, StockSheet, Trimmer};

/// What a part is called in messages.
pub(crate) fn called(project: &Project, part: PartOf) -> String {
    match part {
        PartOf::Piece(id) => project.pieces[id.0].name.words.clone(),
        PartOf::Base(id) => format!("{}, unfolded", project.bases[id.0].name.words),
        PartOf::Label(id) => format!("label of {}", project.greetings[id.0].name.words),
        PartOf::LabelMat(id) => format!("mat of {}", project.greetings[id.0].name.words),
    }
}

/// A part that can be cut from no sheet: it is too large, or the trimmer too short.
pub(crate) fn fits_none(
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

/// The sheets at hand don't do, and no size can be bought.
pub(crate) fn not_enough(paper: &Paper) -> Diagnostic {
    let name = &paper.name.words;
    Diagnostic::new(
        &rules::NOT_ENOUGH_SHEETS,
        paper.name.site,
        format!("the sheets of `{name}` that are at hand don't do for all the kits"),
    )
    .help("make fewer kits, or name a size of sheet that can be bought")
}

/// Sizes that lie between two marks of the trimmer; the plan keeps them.
pub(crate) fn note_sizes_off_the_marks(
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
