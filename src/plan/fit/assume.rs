//! What is taken for granted about papers whose figures are not given.

use crate::geom::Length;
use crate::project::{BaseFrom, Layer, Paper, PaperKind, Project, ToolKind};

/// A figure, and whether it was worked out rather than given.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Guess<T> {
    /// The figure.
    pub(super) is: T,
    /// Whether it rests on an assumption.
    pub(super) guessed: bool,
}

/// A sheet of paper, by what counts in an envelope.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Body {
    /// How thick it is.
    pub(super) thickness: Guess<Length>,
    /// Its substance in hundredths of a gram per square metre.
    pub(super) grams: Guess<u32>,
}

/// Foam squares whose thickness is not given (common practice, no source).
const FOAM: Length = Length::mm(2);

/// One wall of an envelope: 90 g/m2, the substance of 24 lb bond, and 0.10 mm.
/// US Government Paper Specification Standards V25 give 0.105 and 0.125 mm for
/// envelope papers of 66 and 80 g/m2; smoother ones are thinner.
pub(super) const ENVELOPE_WALL: Length = Length::from_units(1440);
/// See [`ENVELOPE_WALL`].
pub(super) const ENVELOPE_GRAMS: u32 = 9000;

/// The paper of an envelope in halves of its face: 2 1/2 faces, for two walls,
/// seams and flap (common practice, no source).
pub(super) const ENVELOPE_HALF_FACES: i128 = 5;

/// A bought base about which nothing is known: the middle of what is sold for
/// card bases, 200 to 300 g/m2 (common practice, no source).
const BASE_GRAMS: u32 = 25_000;

/// Units of a [`Length`] for hundredths of a gram per square metre, uncoated:
/// 1.2 um for each g/m2. Trade tables give 0.30 mm at 250 g/m2, and US
/// Government Paper Specification Standards K10 give 0.23 mm at 200 g/m2.
const UNITS_PER_GRAM: (i64, i64) = (1728, 10_000);

/// The sheet that a base is folded from.
pub(super) fn base(project: &Project, from: BaseFrom) -> Body {
    match from {
        BaseFrom::Made(paper) => sheet(&project.papers[paper.0]),
        BaseFrom::Bought(_) => {
            let grams = Guess { is: BASE_GRAMS, guessed: true };
            Body { thickness: thickness_at(grams.is), grams }
        }
    }
}

/// A sheet of a paper.
pub(super) fn sheet(paper: &Paper) -> Body {
    let grams = match (paper.grams, paper.thickness) {
        (Some(grams), _) => Guess { is: grams, guessed: false },
        (None, Some(thickness)) => Guess { is: grams_at(thickness), guessed: true },
        (None, None) => Guess { is: usual(paper.kind), guessed: true },
    };
    let thickness = match paper.thickness {
        Some(thickness) => Guess { is: thickness, guessed: false },
        None => thickness_at(grams.is),
    };
    Body { thickness, grams }
}

/// What raises a layer: the foam it is fixed with, else the thickest at hand.
pub(super) fn foam(project: &Project, layer: Option<&Layer>) -> Guess<Length> {
    let thickness = |kind: &ToolKind| match kind {
        ToolKind::Foam { thickness, .. } => Some(*thickness),
        _ => None,
    };
    let named = layer.and_then(|layer| layer.with);
    if let Some(given) = named.and_then(|tool| thickness(&project.tools[tool.0].kind)) {
        return given.map_or(Guess { is: FOAM, guessed: true }, |is| Guess {
            is,
            guessed: false,
        });
    }
    let mut all = project.tools.iter().filter_map(|tool| thickness(&tool.kind));
    let Some(first) = all.next() else { return Guess { is: FOAM, guessed: true } };
    let rest: Vec<_> = all.collect();
    let is =
        rest.iter().fold(first.unwrap_or(FOAM), |most, it| most.max(it.unwrap_or(FOAM)));
    Guess { is, guessed: first.is_none() || rest.iter().any(|it| *it != first) }
}

/// The middle of what is usual for a kind of paper: mats 150 to 220, patterned
/// sheets 120 to 200 g/m2, plain ones as for printing (common practice, no
/// source).
const fn usual(kind: PaperKind) -> u32 {
    match kind {
        PaperKind::Patterned => 16_000,
        PaperKind::Cardstock => 20_000,
        PaperKind::Plain => 9000,
    }
}

/// How thick an uncoated paper of a substance probably is.
fn thickness_at(grams: u32) -> Guess<Length> {
    let (units, per) = UNITS_PER_GRAM;
    let is = Length::from_units((i64::from(grams) * units + per / 2) / per);
    Guess { is, guessed: true }
}

/// What substance an uncoated paper of a thickness probably has.
fn grams_at(thickness: Length) -> u32 {
    let (units, per) = UNITS_PER_GRAM;
    let grams = i128::from(thickness.units()) * i128::from(per) / i128::from(units);
    u32::try_from(grams.max(0)).unwrap_or(u32::MAX)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_paper_of_250_grams_is_taken_for_0_30_mm() {
        // A trade table of uncoated papers: 250 g/m2 0.30 mm, 100 g/m2 0.13 mm.
        assert_eq!(thickness_at(25_000).is, Length::from_units(4320));
        assert_eq!(grams_at(Length::from_units(4320)), 25_000);
        assert_eq!(grams_at(Length::from_units(-1)), 0);
    }
}
