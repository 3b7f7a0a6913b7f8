//! Rules across several values, one function each: what fits into what.

use crate::diag::{Diagnostic, rules};
use crate::geom::{self, Length, Shape, Size, Unit};
use crate::project::read::desk::{Desk, quote};
use crate::project::read::draft::{Draft, at};
use crate::project::{
    BaseFrom, Outline, Paper, PaperKind, PatternOn, Runs, Stock, StockSheet, ToolId,
    ToolKind,
};
use crate::source::Site;

/// Checks what has been read; things at fault are left out.
pub(crate) fn check(desk: &mut Desk<'_>, draft: &Draft) {
    pieces_fit_their_sheets(desk, draft);
    bases_fit_their_sheets(desk, draft);
    greetings_fit_their_labels(desk, draft);
    labels_fit_their_paper(desk, draft);
    punches_fit_their_strips(desk, draft);
    trimmers_reach_across(desk, draft);
    something_is_made(desk, draft);
}

/// Where a size is too large, and the largest sheet of its paper.
struct TooLarge {
    sheet: StockSheet,
    only_turned: bool,
}

fn too_large(size: Size, paper: &Paper, may_turn: bool) -> Option<TooLarge> {
    let Stock::Sheets(sheets) = &paper.stock else { return None };
    let fits = |size: Size| sheets.iter().any(|sheet| size.fits(sheet.size));
    if fits(size) || (may_turn && fits(size.turned())) {
        return None;
    }
    let sheet = *sheets.iter().max_by_key(|sheet| sheet.size.area())?;
    Some(TooLarge { sheet, only_turned: !may_turn && fits(size.turned()) })
}

fn pieces_fit_their_sheets(desk: &mut Desk<'_>, draft: &Draft) {
    for piece in draft.pieces.iter().flatten() {
        let Some(paper) = at(&draft.papers, piece.of.0) else { continue };
        let free = paper.faces.iter().any(|face| face.runs == Runs::Any);
        let may_turn = free || piece.pattern == PatternOn::AnyWay;
        let Some(too) = too_large(piece.size, paper, may_turn) else { continue };
        let unit = desk.shown();
        let name = quote(&piece.name.words);
        let (size, sheet) = (piece.size.show(unit), too.sheet.size.show(unit));
        let mut note = Diagnostic::new(
            &rules::PIECE_LARGER_THAN_SHEET,
            piece.size_site,
            match too.only_turned {
                true => format!(
                    "{name} is {size}; the sheet is {sheet}, and its pattern allows no quarter turn"
                ),
                false => format!("{name} is {size}; the largest sheet is {sheet}"),
            },
        )
        .label(too.sheet.site, "the largest sheet of its paper");
        note = note.help(if too.only_turned {
            "it would fit with a quarter turn: write `pattern: any way` if that looks right"
                .to_owned()
        } else {
            elsewhere(draft, piece.size, unit)
        });
        desk.note(note);
    }
}

/// Which paper has a sheet that is large enough, or how large it must be.
fn elsewhere(draft: &Draft, size: Size, unit: Unit) -> String {
    let large = draft.papers.iter().flatten().find(|paper| {
        matches!(&paper.stock, Stock::Sheets(_)) && too_large(size, paper, true).is_none()
    });
    match large {
        Some(paper) => {
            format!("make it smaller; {} would hold it", quote(&paper.name.words))
        }
        None => {
            format!("make it smaller, or take a sheet of at least {}", size.show(unit))
        }
    }
}

fn bases_fit_their_sheets(desk: &mut Desk<'_>, draft: &Draft) {
    for base in draft.bases.iter().flatten() {
        let BaseFrom::Made(of) = base.from else { continue };
        let Some(paper) = at(&draft.papers, of.0) else { continue };
        let open = match base.fold {
            crate::project::FoldAlong::Long => {
                Size::new(base.front.width * 2, base.front.height)
            }
            crate::project::FoldAlong::Short => {
                Size::new(base.front.width, base.front.height * 2)
            }
        };
        let Some(too) = too_large(open, paper, true) else { continue };
        let unit = desk.shown();
        let (open, sheet) = (open.show(unit), too.sheet.size.show(unit));
        desk.note(
            Diagnostic::new(
                &rules::BASE_LARGER_THAN_SHEET,
                base.name.site,
                format!("the open base is {open}; the largest sheet is {sheet}"),
            )
            .label(too.sheet.site, "the largest sheet of its paper")
            .help("make the front smaller, or take a larger sheet"),
        );
    }
}

fn greetings_fit_their_labels(desk: &mut Desk<'_>, draft: &Draft) {
    for greeting in draft.greetings.iter().flatten() {
        let Some(stamped) = greeting.stamped else { continue };
        let Outline { shape, size: label } = greeting.label.outline;
        if geom::holds(shape, label, stamped) {
            continue;
        }
        let unit = desk.shown();
        let name = quote(&greeting.name.words);
        // Words so high may be so wide, if at all.
        let room = geom::widest(shape, label, stamped.height);
        let mark = match unit {
            Unit::Inch => Length::inch(1, 16),
            Unit::Mm => Length::MM,
        };
        let room = Length::from_units(room.units() - room.units() % mark.units());
        let help = match room {
            Length::ZERO => "take a larger label, or a smaller stamp".to_owned(),
            room => format!(
                "words as high as these may be {} wide; take a larger label, or a smaller stamp",
                room.show(unit)
            ),
        };
        let (stamped, left) = (stamped.show(unit), label.show(unit));
        let what = match (greeting.narrowed.is_some(), shape) {
            (true, _) => format!("after its second pass the label is {left}"),
            (_, Shape::Rectangle) => format!("the label is {left}"),
            _ => format!("the label is {left}, less at its corners"),
        };
        desk.note(
            Diagnostic::new(
                &rules::GREETING_LARGER_THAN_LABEL,
                greeting.name.site,
                format!("the words of {name} are {stamped}; {what}"),
            )
            .label(
                greeting.narrowed.as_ref().map_or(greeting.label.site, |it| it.site),
                "the label",
            )
            .help(help),
        );
    }
}

fn labels_fit_their_paper(desk: &mut Desk<'_>, draft: &Draft) {
    for greeting in draft.greetings.iter().flatten() {
        let Some(paper) = at(&draft.papers, greeting.of.0) else { continue };
        let punched = |tool: Option<ToolId>| match at(&draft.tools, tool?.0)?.kind {
            ToolKind::Punch(punch) => Some(punch.outline.size),
            _ => None,
        };
        let Size { width, height } = greeting.label.outline.size;
        let mat = greeting.mat.map_or(greeting.label.outline.size, |mat| {
            let around =
                Size::new(width + mat.shows.width * 2, height + mat.shows.height * 2);
            punched(mat.punched.map(|it| it.with)).unwrap_or(around)
        });
        let label = punched(greeting.label.punch).unwrap_or(greeting.label.outline.size);
        let rows: [(Option<&Paper>, Size, Site); 2] = [
            (Some(paper), label, greeting.label.site),
            (
                greeting.mat.and_then(|mat| at(&draft.papers, mat.of.0)),
                mat,
                greeting.mat.map_or(greeting.label.site, |mat| mat.site),
            ),
        ];
        for (paper, size, site) in rows {
            let Some(paper) = paper else { continue };
            label_fits(desk, paper, size, site);
        }
    }
}

fn label_fits(desk: &mut Desk<'_>, paper: &Paper, size: Size, site: Site) {
    let unit = desk.shown();
    match &paper.stock {
        Stock::Scraps(least, scraps) => {
            if size.fits(*least) || size.turned().fits(*least) {
                return;
            }
            let (size, scrap) = (size.show(unit), least.show(unit));
            desk.note(
                Diagnostic::new(
                    &rules::LABEL_LARGER_THAN_SCRAP,
                    site,
                    format!("this is {size}; the scraps are at least {scrap}"),
                )
                .label(*scraps, "the scraps")
                .help("ask for larger scraps"),
            );
        }
        Stock::Sheets(_) => {
            let Some(too) = too_large(size, paper, true) else { return };
            let (size, sheet) = (size.show(unit), too.sheet.size.show(unit));
            desk.note(
                Diagnostic::new(
                    &rules::PIECE_LARGER_THAN_SHEET,
                    site,
                    format!("this is {size}; the largest sheet is {sheet}"),
                )
                .label(too.sheet.site, "the largest sheet of its paper")
                .help("make it smaller, or take a larger sheet"),
            );
        }
    }
}

fn punches_fit_their_strips(desk: &mut Desk<'_>, draft: &Draft) {
    for tool in draft.tools.iter().flatten() {
        let ToolKind::Punch(punch) = tool.kind else { continue };
        let (Some(strip), short) = (punch.takes_strips, punch.outline.size.short())
        else {
            continue;
        };
        if short <= strip {
            continue;
        }
        let unit = desk.shown();
        desk.fault(
            &rules::PUNCH_LARGER_THAN_STRIP,
            tool.name.site,
            format!(
                "the outline is {} across; the strips are {} wide",
                short.show(unit),
                strip.show(unit)
            ),
            "measure the outline and the slot of the punch again",
        );
    }
}

fn trimmers_reach_across(desk: &mut Desk<'_>, draft: &Draft) {
    let trimmers = draft.tools.iter().flatten().filter_map(|tool| match &tool.kind {
        ToolKind::Trimmer(trimmer) => Some((tool, trimmer.longest_cut?)),
        _ => None,
    });
    let Some((tool, longest)) = trimmers.max_by_key(|(_, longest)| *longest) else {
        return;
    };
    let any_without_limit = draft.tools.iter().flatten().any(|tool| {
        matches!(&tool.kind, ToolKind::Trimmer(trimmer) if trimmer.longest_cut.is_none())
    });
    if any_without_limit {
        return;
    }
    for paper in draft.papers.iter().flatten() {
        let Stock::Sheets(sheets) = &paper.stock else { continue };
        for sheet in sheets.iter().filter(|sheet| longest < sheet.size.long()) {
            let unit = desk.shown();
            let (long, cut) = (sheet.size.long().show(unit), longest.show(unit));
            desk.note(
                Diagnostic::new(
                    &rules::TRIMMER_SHORTER_THAN_SHEET,
                    sheet.site,
                    format!("the sheet is {long} long; the longest cut is {cut}"),
                )
                .label(tool.name.site, "this trimmer")
                .help("the first cut is planned the short way; have a knife and a ruler ready"),
            );
        }
    }
}

fn something_is_made(desk: &mut Desk<'_>, draft: &Draft) {
    let counted =
        draft.pieces.iter().any(|it| it.as_ref().is_none_or(|it| it.count.is_some()));
    if draft.cards.is_empty() && !counted && !desk.has_errors() {
        desk.fault(
            &rules::NOTHING_TO_MAKE,
            Site { end: draft.site.start, ..draft.site },
            "there are no cards here, and no piece has a count",
            "add `cards:`, or give pieces a `count`",
        );
    }
    for greeting in draft.greetings.iter().flatten() {
        let Some(paper) = at(&draft.papers, greeting.of.0) else { continue };
        let plain = paper.faces.iter().any(|face| face.name.words.is_empty());
        if paper.kind == PaperKind::Patterned && !plain {
            desk.fault(
                &rules::LABEL_ON_PATTERN,
                greeting.name.site,
                format!(
                    "the label of {} is made of patterned paper",
                    quote(&greeting.name.words)
                ),
                "take a plain paper, so that the words can be read",
            );
        }
    }
}
