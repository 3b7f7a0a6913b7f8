//! What can be checked without a plan: punches and envelopes.

use crate::diag::{Diagnostic, rules};
use crate::geom::{Length, Size};
use crate::project::{Base, Project, Punch, ToolKind};
use crate::source::Site;

/// Notes what will not go together, whatever is planned.
pub(crate) fn check(project: &Project, notes: &mut Vec<Diagnostic>) {
    for tool in &project.tools {
        if let ToolKind::Punch(punch) = &tool.kind {
            reach(project, punch, tool.name.site, &tool.name.words, notes);
        }
    }
    for base in &project.bases {
        envelope(project, base, notes);
    }
}

/// The punch reaches as far into the strip as its outline is long there.
fn reach(
    project: &Project,
    punch: &Punch,
    site: Site,
    name: &str,
    notes: &mut Vec<Diagnostic>,
) {
    let Some(reach) = punch.reach else { return };
    let needed = along(punch);
    if reach < needed {
        let unit = project.unit;
        let message = format!(
            "`{name}` reaches {} into the paper, but its outline takes {}",
            reach.show(unit),
            needed.show(unit),
        );
        notes.push(
            Diagnostic::new(&rules::PUNCH_DOES_NOT_REACH, site, message)
                .help(format!("write `reach: {}` or more", needed.show(unit))),
        );
    }
}

/// The extent of the outline along the strip that is pushed into the punch: the
/// shorter side, unless the longer one is too wide to lie across the strip.
fn along(punch: &Punch) -> Length {
    let Size { width, height } = punch.outline.size;
    match punch.takes_strips {
        Some(strip) if width.max(height) > strip => width.max(height),
        Some(_) | None => width.min(height),
    }
}

/// The folded card goes into its envelope, either way round.
fn envelope(project: &Project, base: &Base, notes: &mut Vec<Diagnostic>) {
    let Some(envelope) = base.envelope else { return };
    let Some(size) = envelope.size else { return };
    let fits = base.front.short() <= size.short() && base.front.long() <= size.long();
    if !fits {
        let unit = project.unit;
        let message = format!(
            "`{}` folds to {}, but its envelope is {}",
            base.name.words,
            base.front.show(unit),
            size.show(unit),
        );
        notes.push(
            Diagnostic::new(&rules::CARD_LARGER_THAN_ENVELOPE, envelope.site, message)
                .help("take a larger envelope, or a smaller base"),
        );
    }
}
