//! The rectangles that bases, labels and mats are cut as.

use crate::diag::{Diagnostic, rules};
use crate::geom::{Axis, Length, Size};
use crate::plan::cut::{Turning, demand::fits_a_sheet};
use crate::plan::uses::runs;
use crate::project::{
    Base, BaseId, FaceId, FoldAlong, Grain, Greeting, LabelMat, PaperId, Project, Punch,
    Runs, Stands, ToolKind,
};

/// What is left round a punched outline for the punch to hold, both sides
/// together: 1/8 in each (common practice, no source).
const HOLD: Length = Length::inch(1, 4);

/// The rectangle that a label takes from its paper.
///
/// A cut label takes its own size. A punched label takes a piece of strip: as
/// wide as the punch takes strips, and as long as the outline with 1/8 in before
/// and behind it. The longer side of the outline lies across the strip if the
/// strip is wide enough, else the shorter. A punch that takes paper of any width
/// is given 1/8 in all round.
pub(crate) fn label_blank(project: &Project, greeting: &Greeting) -> Size {
    let label = greeting.label;
    let punch = label.punch.and_then(|tool| match project.tools[tool.0].kind {
        ToolKind::Punch(punch) => Some(punch),
        _ => None,
    });
    match punch {
        Some(punch) => punch_blank(punch),
        None => label.outline.size,
    }
}

/// The piece of strip that a punch takes for one label.
fn punch_blank(punch: Punch) -> Size {
    let Size { width, height } = punch.outline.size;
    let Some(strip) = punch.takes_strips else {
        return Size::new(width + HOLD, height + HOLD);
    };
    match strip_runs(punch) {
        Axis::Upright => Size::new(strip, height + HOLD),
        Axis::Level => Size::new(width + HOLD, strip),
    }
}

/// Which way a strip runs past the outline of a punch.
pub(crate) fn strip_runs(punch: Punch) -> Axis {
    let Size { width, height } = punch.outline.size;
    let across = punch.takes_strips.is_none_or(|strip| {
        if width >= height { width <= strip } else { height > strip }
    });
    if across { Axis::Upright } else { Axis::Level }
}

/// The rectangle that the mat under a label takes: what shows all round if it is
/// cut, the piece of strip if it is punched.
pub(crate) fn mat_blank(project: &Project, greeting: &Greeting, mat: LabelMat) -> Size {
    if let Some(punched) = mat.punched
        && let ToolKind::Punch(punch) = project.tools[punched.with.0].kind
    {
        return punch_blank(punch);
    }
    let Size { width, height } = greeting.label.outline.size;
    Size::new(width + mat.shows.width * 2, height + mat.shows.height * 2)
}

/// The rectangle that a base is cut as, unfolded, and whether it may be turned.
///
/// A pattern with a direction stands upright on the front. Else the fold runs
/// with the grain, if the grain is known and the sheet is large enough for it.
pub(crate) fn base_blank(
    project: &Project,
    id: BaseId,
    of: PaperId,
    notes: &mut Vec<Diagnostic>,
) -> (Size, Turning) {
    let base = &project.bases[id.0];
    let paper = &project.papers[of.0];
    let (flat, fold) = unfolded(base);
    let with_grain = |fold: Axis| match paper.grain {
        Some(Grain::Level) => fold == Axis::Level,
        Some(Grain::Upright) => fold == Axis::Upright,
        None => true,
    };
    let across_the_grain = || {
        let name = &base.name.words;
        let message = format!("the fold of `{name}` runs across the grain");
        Diagnostic::new(&rules::FOLD_ACROSS_THE_GRAIN, base.name.site, message)
            .label(paper.name.site, "the grain of this paper")
            .help("score the fold well, or take sheets with the grain the other way")
    };

    if runs(paper, FaceId(0)) != Runs::Any {
        let cards = || project.cards.iter().filter(|card| card.base == id);
        let wide = cards().all(|card| card.stands == Stands::Wide);
        if let Some(other) = cards().find(|card| (card.stands == Stands::Wide) != wide) {
            let name = &base.name.words;
            let message = format!(
                "`{name}` is used for tall and wide cards, but its paper has a top"
            );
            notes.push(
                Diagnostic::new(&rules::PATTERN_TURNED, base.name.site, message)
                    .label(other.name.site, "the pattern lies on its side here")
                    .help("describe two bases, one for tall and one for wide cards"),
            );
        }
        let (size, fold) =
            if wide { (flat.turned(), fold.other()) } else { (flat, fold) };
        if !with_grain(fold) {
            notes.push(across_the_grain());
        }
        return (size, Turning::Fixed);
    }
    if paper.grain.is_none() {
        return (flat, Turning::Free);
    }
    let size = if with_grain(fold) { flat } else { flat.turned() };
    if fits_a_sheet(paper, size) || !fits_a_sheet(paper, size.turned()) {
        return (size, Turning::Fixed);
    }
    notes.push(across_the_grain());
    (size.turned(), Turning::Fixed)
}

/// Width × height of an unfolded base whose front stands tall, and which way its
/// fold runs.
fn unfolded(base: &Base) -> (Size, Axis) {
    let Size { width, height } = base.front;
    match base.fold {
        FoldAlong::Long => (Size::new(width * 2, height), Axis::Upright),
        FoldAlong::Short => (Size::new(width, height * 2), Axis::Level),
    }
}
