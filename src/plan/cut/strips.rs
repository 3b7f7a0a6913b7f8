//! Strips for a punch: as many labels of a kit on each as a sheet has room for.

use crate::geom::{Axis, Size};
use crate::plan::cut::blanks::strip_runs;
use crate::plan::cut::follow::sheets_of;
use crate::plan::cut::look::look;
use crate::plan::cut::paper::{Bench, Wishes, trimmer, usable};
use crate::plan::cut::ties::Ties;
use crate::plan::cut::{Part, PartOf, Turning};
use crate::plan::uses::Kits;
use crate::project::{PaperId, Project, Punch, Stock, StockSheet, ToolKind};

/// Steps to compare strips with labels one by one; the plan itself is searched for
/// afterwards.
const STEPS_TO_COMPARE: u64 = 1_000_000;

/// Shorter and shorter strips are tried so often before each label gets its own.
const TRIES: usize = 3;

/// Joins the labels of a kit that are punched from one paper to strips, where that
/// takes no more sheets.
///
/// All strips are equally long and each holds whole labels of one kit, so that
/// neither a bag nor the sum of all bags is short or gets one too many. Between two
/// labels a strip is as long as between two that were cut apart: each keeps what the
/// punch holds it by.
pub(crate) fn joined(
    project: &Project,
    (paper, parts): (PaperId, &mut Vec<Part>),
    kits: &Kits,
    wishes: Wishes<'_>,
) {
    let described = &project.papers[paper.0];
    let Stock::Sheets(sheets) = &described.stock else { return };
    // A picture of the paper lies on labels one by one, and her own way of cutting
    // names them so.
    let own = project.cutting.iter().any(|it| it.paper == paper);
    if own || !described.pictures.is_empty() {
        return;
    }
    let lengths: Vec<Vec<u32>> = parts
        .iter()
        .map(|part| match punch_of(project, part) {
            Some(punch) => lengths(part, punch, sheets),
            None => Vec::new(),
        })
        .collect();
    if lengths.iter().all(Vec::is_empty) {
        return;
    }
    let sheets = |parts: &[Part]| {
        let bench = Bench {
            paper,
            ties: Ties::of(project, parts, &mut Vec::new()),
            parts: parts.to_vec(),
            sheets: usable(sheets, kits),
            trimmer: trimmer(project),
            kits: kits.cut_together(),
            budget: wishes.budget.min(STEPS_TO_COMPARE),
            sheets_only: true,
        };
        let found = look(&bench, parts, &bench.sheets, bench.budget);
        let cut = found.enough && found.too_large.is_empty();
        cut.then(|| sheets_of(&found.patterns))
    };
    let Some(apart) = sheets(parts) else { return };
    for attempt in 0..TRIES {
        let mut strips = parts.clone();
        for (part, lengths) in strips.iter_mut().zip(&lengths) {
            if let (Some(labels), Some(punch)) =
                (lengths.get(attempt), punch_of(project, part))
            {
                part.size = strip_of(part.size, punch, *labels);
                part.per_kit /= labels;
                part.count /= labels;
            }
        }
        if strips == *parts {
            return;
        }
        if sheets(&strips).is_some_and(|together| together <= apart) {
            *parts = strips;
            return;
        }
    }
}

/// The punch that takes the labels or mats of a part, if it takes strips.
fn punch_of(project: &Project, part: &Part) -> Option<Punch> {
    let tool = match part.of {
        PartOf::Label(id) => project.greetings[id.0].label.punch?,
        PartOf::LabelMat(id) => project.greetings[id.0].mat?.punched?.with,
        PartOf::Piece(_) | PartOf::Base(_) => return None,
    };
    match project.tools[tool.0].kind {
        ToolKind::Punch(punch) if punch.takes_strips.is_some() => Some(punch),
        _ => None,
    }
}

/// How many labels a strip may hold, most first: a share of the labels of a kit
/// without a remainder, on a strip that fits a sheet.
fn lengths(part: &Part, punch: Punch, sheets: &[StockSheet]) -> Vec<u32> {
    let fits = |size: Size| sheets.iter().any(|sheet| size.fits(sheet.size));
    let mut lengths = Vec::new();
    for labels in 2..=part.per_kit {
        let size = strip_of(part.size, punch, labels);
        if !(fits(size) || part.turning == Turning::Free && fits(size.turned())) {
            break;
        }
        if part.per_kit.is_multiple_of(labels) {
            lengths.push(labels);
        }
    }
    lengths.reverse();
    lengths
}

/// Width × height of a strip for so many labels, from that for one.
fn strip_of(one: Size, punch: Punch, labels: u32) -> Size {
    let labels = i64::from(labels);
    match strip_runs(punch) {
        Axis::Level => Size::new(one.width * labels, one.height),
        Axis::Upright => Size::new(one.width, one.height * labels),
    }
}
