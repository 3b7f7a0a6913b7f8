//! What is said when something can't be cut, or only by eye.

use crate::diag::{Diagnostic, rules};
use crate::geom::{Length, Size, Unit};
use crate::plan::cut::in_place::Missed;
use crate::plan::cut::paper::trimmer;
use crate::plan::cut::{KeptFault, Part, PartOf, ReplayFault, Turning};
use crate::project::{Paper, Project, StockSheet, Trimmer};
use crate::source::Site;
use crate::standards::{FORMATS, Format, FormatKind};

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
    name: &str,
    part: &Part,
) -> Diagnostic {
    let unit = project.unit;
    let needs = part.size.show(unit);
    let turned = part.turning == Turning::Free;
    let lies_on =
        |sheet: Size| part.size.fits(sheet) || (turned && part.size.turned().fits(sheet));
    if let Some(sheet) = sheets.iter().find(|sheet| lies_on(sheet.size)) {
        let longest = trimmer(project).longest_cut.unwrap_or_default();
        let message = format!(
            "`{name}` can't be cut from {}: the trimmer's longest cut is {}",
            sheet.size.show(unit),
            longest.show(unit),
        );
        return Diagnostic::new(&rules::CUT_TOO_LONG, part.site, message)
            .help("take a longer trimmer, or smaller sheets");
    }
    let largest = sheets.iter().map(|sheet| sheet.size).max_by_key(|size| size.area());
    let largest = largest.unwrap_or_default().show(unit);
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
    if let Some(format) = smallest_format(lies_on) {
        let size = format.size().show(unit);
        note = note.help(format!("a sheet of {} ({size}) would do", format.name));
    }
    note
}

/// The smallest standard sheet on which something lies, either way round.
fn smallest_format(lies_on: impl Fn(Size) -> bool) -> Option<&'static Format> {
    let sheets = FORMATS.iter().filter(|format| format.kind == FormatKind::Sheet);
    let large = sheets.filter(|it| lies_on(it.size()) || lies_on(it.size().turned()));
    large.min_by_key(|format| format.size().area())
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

/// Parts can't be cut free at their places on the sheet: what it takes, and what there
/// is.
pub(crate) fn not_in_its_place(
    project: &Project,
    called: &[(String, Site)],
    missed: Missed,
) -> Diagnostic {
    let names = at_their_places(called);
    let one = called.len() == 1;
    let take = if one { "takes" } else { "take" };
    let (message, help) = match missed {
        Missed::OffTheSheet => (
            format!("{names} would reach beyond the edge of the sheet"),
            "what lies next to a piece lies there with it: move the place",
        ),
        Missed::Cut(needs) => {
            let longest = trimmer(project).longest_cut.unwrap_or_default();
            let (needs, longest) = (needs.show(project.unit), longest.show(project.unit));
            let message = format!(
                "{names} {} a cut of {needs}; the trimmer's longest cut is {longest}",
                if one { "needs" } else { "need" }
            );
            (message, "take a longer trimmer, or leave `region` out")
        }
        Missed::Sheets(needs, at_hand) => {
            let message = format!(
                "{names} {take} {}; {at_hand} {} at hand",
                sheets(needs),
                if at_hand == 1 { "is" } else { "are" }
            );
            let help = match called.len() {
                0 | 1 => {
                    "each sheet has the place once: take more sheets, or leave `region` out"
                }
                _ => {
                    "each sheet has each place once: take more sheets, lay the places so that one straight cut parts them, or leave `region` out"
                }
            };
            (message, help)
        }
        Missed::Rest(needs, at_hand) => {
            let message = format!(
                "{names} {take} {} of {at_hand} at hand, and what is left of them does not do for the other parts",
                sheets(needs)
            );
            (
                message,
                "take more sheets, move the place towards a corner, or leave `region` out",
            )
        }
    };
    let (_, site) = called.first().cloned().unwrap_or_default();
    let note = Diagnostic::new(&rules::REGION_NOT_REACHED, site, message).help(help);
    let others = called.iter().skip(1);
    others.fold(note, |note, (_, site)| note.label(*site, "the other place"))
}

/// Parts at their places take more sheets than they would anywhere else: so many, and
/// so many. Perhaps only because each sheet has a place once.
pub(crate) fn takes_more_sheets(
    called: &[(String, Site)],
    (takes, anywhere): (u32, u32),
    once_on_each: bool,
) -> Option<Diagnostic> {
    let (_, site) = called.first()?;
    let message = format!(
        "with {} it takes {}; lying anywhere, {anywhere} would do",
        at_their_places(called),
        sheets(takes),
    );
    let help = match (once_on_each, called.len()) {
        (true, 1) => "each sheet has the place once; leave `region` out if any will do",
        (true, _) => {
            "each sheet has each place once, and those that no straight cut parts are not on one sheet; leave `region` out if any will do"
        }
        (false, _) => "move the place towards a corner, or leave `region` out",
    };
    let note = Diagnostic::new(&rules::REGION_TAKES_MORE_SHEETS, *site, message);
    Some(note.help(help))
}

/// What is said of one part, or of several.
fn at_their_places(called: &[(String, Site)]) -> String {
    let names: Vec<String> = called.iter().map(|it| format!("`{}`", it.0)).collect();
    let place = if called.len() == 1 { "its place" } else { "their places" };
    format!("{} at {place}", names.join(" and "))
}

fn sheets(number: u32) -> String {
    if number == 1 { "1 sheet".to_owned() } else { format!("{number} sheets") }
}

/// The parts of one kit don't lie on one sheet, so sheets can't be cut alike.
pub(crate) fn not_alike(paper: &Paper) -> Diagnostic {
    let name = &paper.name.words;
    Diagnostic::new(
        &rules::SHEETS_NOT_ALIKE,
        paper.name.site,
        format!("the sheets of `{name}` can't all be cut alike"),
    )
    .help("take a larger sheet, on which everything for one kit finds room")
}

/// A kept plan that can't be followed.
pub(crate) fn kept_not_followed(site: Site, unit: Unit, fault: &KeptFault) -> Diagnostic {
    Diagnostic::new(&rules::KEPT_PLAN_DOES_NOT_FIT, site, fault.message(unit))
        .help("the cuts were worked out anew; keep them with `cuts --keep`")
}

/// A plan that does not hold when it is carried out on imaginary paper.
pub(crate) fn does_not_hold(paper: &Paper, fault: ReplayFault) -> Diagnostic {
    let name = &paper.name.words;
    let message = format!("the cuts of `{name}` don't come out as they were planned");
    Diagnostic::new(&rules::CUTS_DO_NOT_COME_OUT, paper.name.site, message)
        .help("this is a fault in leafwright: please report it with the description")
        .help(fault.to_string())
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
                length.show(project.unit),
            );
            let help = format!(
                "the nearest marks are {} and {}",
                below.show(project.unit),
                (below + trimmer.marks).show(project.unit),
            );
            let note = Diagnostic::new(&rules::SIZE_OFF_THE_MARKS, part.site, message);
            notes.push(note.help(help));
        }
    }
}
