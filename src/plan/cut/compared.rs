//! The designer's own way of cutting, beside the best plan found.

use crate::diag::{Diagnostic, rules};
use crate::geom::Size;
use crate::plan::cut::alike::toil;
use crate::plan::cut::ties::Ties;
use crate::plan::cut::{
    Leaf, Offcut, OwnCompared, PaperCut, Pattern, Tree, called, own_way,
};
use crate::project::{OwnCutting, Project, Trimmer};

/// The plan with her cuts in her order; `None` if they don't add up.
pub(crate) fn beside_the_best(
    project: &Project,
    own: &OwnCutting,
    sheet: Size,
    best: PaperCut,
    trimmer: &Trimmer,
    notes: &mut Vec<Diagnostic>,
) -> Option<PaperCut> {
    let outcome = own_way(own, project, &best.parts, sheet, trimmer);
    notes.extend(outcome.notes);
    let hers = outcome.value?;

    let tree = hers.in_her_order.laid.first().unwrap_or(&hers.tree).clone();
    let offcut = largest_offcut(&tree, sheet);
    let patterns = vec![Pattern { sheet, tree, copies: hers.sheets }];
    let ties = Ties::of(project, &best.parts, &mut Vec::new());
    if let Some((_, part)) = ties.broken(&patterns) {
        let name = called(project, best.parts[part].of);
        let message = format!("these steps don't cut `{name}` where it is to lie");
        let note = Diagnostic::new(&rules::OWN_PIECE_OUT_OF_PLACE, own.site, message);
        notes.push(
            note.label(best.parts[part].site, "the piece")
                .help("change the steps, or leave `next to` or `region` out there"),
        );
        return None;
    }
    let compared = OwnCompared {
        sheets: hers.sheets,
        cuts: cuts(&patterns),
        best_sheets: sheets(&best.patterns),
        best_cuts: cuts(&best.patterns),
        offcut,
        best_offcut: best.offcut.map(|offcut| offcut.size),
    };
    // With as few sheets as can be, no plan keeps more than the best one does.
    let as_few = hers.sheets <= sheets(&best.patterns);
    let none_larger = best.offcut.is_none_or(|best| {
        best.proven && offcut.is_some_and(|hers| hers.area() >= best.size.area())
    });
    let fewer = sheets(&best.patterns) < hers.sheets;
    Some(PaperCut {
        fewest: fewer.then(|| toil(&best)),
        proven: hers.sheets <= best.bound.sheets,
        offcut: offcut.map(|size| Offcut {
            pattern: 0,
            size,
            proven: as_few && none_larger && best.proven,
        }),
        schedule: hers.in_her_order,
        own: Some(compared),
        patterns,
        ..best
    })
}

fn sheets(patterns: &[Pattern]) -> u32 {
    patterns.iter().fold(0, |all, it| all.saturating_add(it.copies))
}

/// Cuts on a sheet, on average and rounded up.
fn cuts(patterns: &[Pattern]) -> u32 {
    let cuts = patterns.iter();
    let all =
        cuts.map(|it| u64::from(it.copies) * u64::from(it.tree.cuts())).sum::<u64>();
    let each = all.div_ceil(u64::from(sheets(patterns)).max(1));
    u32::try_from(each).unwrap_or(u32::MAX)
}

fn largest_offcut(tree: &Tree, sheet: Size) -> Option<Size> {
    let placements = tree.placements(sheet).into_iter();
    let kept = placements.filter(|it| it.leaf == Leaf::Keep).map(|it| it.rect.size);
    kept.max_by_key(|size| size.area())
}
