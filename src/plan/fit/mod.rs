//! Whether a card goes into its envelope, and the envelope into the post: how
//! thick each card is, what it weighs, what clearance is left.
//!
//! Figures that rest on an assumption say so; see `assume` for the assumptions.

mod assume;
mod card;
mod stack;

pub use card::{Clearance, Fit, Room};

use crate::diag::{Diagnostic, rules};
use crate::geom::{Length, Unit};
use crate::plan::fronts::Front;
use crate::project::{Base, Project};
use crate::standards::post::Measure;

/// What most operators take as a small letter: Canada, the United Kingdom,
/// Germany, Australia, Norway and Belgium alike. The United States take 1/4 in.
const LETTER: Measure = Measure::mm(5);

/// How thick a filled envelope may be before it comes close to [`LETTER`]
/// (common practice, no source): a fold that springs back, a flap that is glued.
const CLOSE: Measure = Measure::Hundredths(450);

/// Measures every card in its envelope, in the order of the fronts, and notes
/// what will not go in or will hardly go as a letter.
pub fn fit(project: &Project, fronts: &[Front]) -> (Vec<Fit>, Vec<Diagnostic>) {
    let fits: Vec<Fit> =
        fronts.iter().map(|front| card::measure(project, front)).collect();
    let mut notes = Vec::new();
    for (index, base) in project.bases.iter().enumerate() {
        let on_base = |fit: &&Fit| project.cards[fit.card.0].base.0 == index;
        notes.extend(too_thick_for_envelope(project, base, fits.iter().filter(on_base)));
    }
    notes.extend(fits.iter().filter_map(|fit| thick_for_a_letter(project, fit)));
    (fits, notes)
}

/// One note for all cards on a base: the thickest of those that don't go in.
fn too_thick_for_envelope<'a>(
    project: &Project,
    base: &Base,
    fits: impl Iterator<Item = &'a Fit>,
) -> Option<Diagnostic> {
    let outside = fits.filter_map(|fit| {
        let clearance = fit.envelope.filter(|it| it.room == Room::TooThick)?;
        Some((fit, clearance))
    });
    // The first of equals, so that the note follows the order of the cards.
    let (fit, clearance) = outside.reduce(|most, it| {
        if most.0.card_thickness < it.0.card_thickness { it } else { most }
    })?;
    let card = &project.cards[fit.card.0].name;
    let site = base.envelope.map_or(base.name.site, |envelope| envelope.site);
    let message = format!(
        "`{}` is {}{} thick, but in its envelope of {} it has only {} to spare",
        card.words,
        if fit.card_estimated { "about " } else { "" },
        tenths(fit.card_thickness),
        clearance.envelope.show(project.unit),
        clearance.spare.short().show(Unit::Mm),
    );
    Some(
        Diagnostic::new(&rules::CARD_TOO_THICK_FOR_ENVELOPE, site, message)
            .label(card.site, "the thickest card on this base")
            .help("take a larger envelope, thinner foam squares, or raise fewer layers"),
    )
}

/// A filled envelope that is close to 5 mm, or thicker.
fn thick_for_a_letter(project: &Project, fit: &Fit) -> Option<Diagnostic> {
    fit.envelope?;
    if CLOSE.compare(fit.thickness).is_le() {
        return None;
    }
    let card = &project.cards[fit.card.0].name;
    let message = format!(
        "`{}` is about {} thick in its envelope; many postal operators take letters up to {}",
        card.words,
        tenths(fit.thickness),
        tenths(LETTER.length()),
    );
    Some(
        Diagnostic::new(&rules::CARD_THICK_FOR_A_LETTER, card.site, message).help(
            "raise fewer layers or take thinner foam squares, and check with your postal operator",
        ),
    )
}

/// In tenths of a millimetre, rounded up: an estimate deserves no more digits,
/// and what is over a limit must not look as if it kept to it.
fn tenths(length: Length) -> String {
    let tenth = Length::MM.units() / 10;
    let up = length.units().div_euclid(tenth)
        + i64::from(length.units().rem_euclid(tenth) != 0);
    (Length::from_units(up * tenth)).show(Unit::Mm)
}
