//! What has to be cut from a paper.

use crate::diag::{Diagnostic, rules};
use crate::geom::Size;
use crate::plan::cut::blanks::{base_blank, label_blank, mat_blank};
use crate::plan::uses::{Kits, Uses, face_of, late_cuts_of, layers, runs};
use crate::project::{
    BaseFrom, BaseId, FaceId, GreetingId, LateId, Paper, PaperId, PatternOn, PieceId,
    Placed, Project, Runs, Stock,
};
use crate::source::Site;

/// A kind of rectangle that has to be cut from one paper.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Part {
    /// What it is.
    pub of: PartOf,
    /// The letter that the diagram and the lists call it by: `A`, `B`, … `AA`.
    /// No two parts of a project share a letter.
    pub letter: String,
    /// Width × height as it lies on the sheet with the pattern upright.
    pub size: Size,
    /// Whether it may be turned by a quarter on the sheet.
    pub turning: Turning,
    /// How many one kit needs; of labels on a strip: how many strips.
    pub per_kit: u32,
    /// How many are cut by one plan: for all kits with spares, or for one kit
    /// where each person cuts her own sheets.
    pub count: u32,
    /// Late cuts that are made from it, with their number in one kit.
    pub late: Vec<(LateId, u32)>,
    /// Greetings whose labels or mats are made from it, with their number in one
    /// kit; labels of one size and paper are one part.
    pub greetings: Vec<(GreetingId, u32)>,
    /// Where its size is described.
    pub site: Site,
}

impl Part {
    /// How many labels or mats are punched from each, one after another; 1 for
    /// everything else.
    pub fn on_each(&self) -> u32 {
        let labels = self.greetings.iter().map(|it| it.1);
        let labels = labels.fold(0_u32, u32::saturating_add);
        labels.checked_div(self.per_kit).unwrap_or(1).max(1)
    }
}

/// What a part is in the project.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum PartOf {
    /// A piece.
    Piece(PieceId),
    /// A made base, unfolded.
    Base(BaseId),
    /// The label of a greeting (the first of several), or the strip that it is
    /// punched from.
    Label(GreetingId),
    /// The mat under the label of a greeting (the first of several).
    LabelMat(GreetingId),
}

/// Whether a part may be turned by a quarter on the sheet.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Turning {
    /// It must lie as its size says.
    Fixed,
    /// It may lie either way.
    Free,
}

/// What is cut from each paper, in the order of the project's papers; papers
/// from which nothing is cut are left out.
pub(crate) fn demand(
    project: &Project,
    uses: &Uses,
    kits: &Kits,
    notes: &mut Vec<Diagnostic>,
) -> Vec<(PaperId, Vec<Part>)> {
    let mut by_paper: Vec<Vec<Part>> = vec![Vec::new(); project.papers.len()];
    add_pieces(project, uses, &mut by_paper, notes);
    add_bases(project, uses, &mut by_paper, notes);
    add_labels(project, uses, &mut by_paper);

    for (index, part) in by_paper.iter_mut().flatten().enumerate() {
        part.letter = letter(index);
        part.count = part.per_kit.saturating_mul(kits.cut_together());
    }
    let papers = by_paper.into_iter().enumerate();
    papers
        .filter(|(_, parts)| !parts.is_empty())
        .map(|(index, parts)| (PaperId(index), parts))
        .collect()
}

/// Whether a paper has a sheet (or scraps) from which the size can be cut
/// without a turn.
pub(crate) fn fits_a_sheet(paper: &Paper, size: Size) -> bool {
    match &paper.stock {
        Stock::Sheets(sheets) => sheets.iter().any(|sheet| size.fits(sheet.size)),
        Stock::Scraps(scraps, _) => size.fits(*scraps),
    }
}

fn add_pieces(
    project: &Project,
    uses: &Uses,
    by_paper: &mut [Vec<Part>],
    notes: &mut Vec<Diagnostic>,
) {
    let fixed = fixed_by_pattern(project);
    for (index, piece) in project.pieces.iter().enumerate() {
        let id = PieceId(index);
        let used = uses.of_piece(project, id);
        if let Some(count) = piece.count.filter(|count| *count < used) {
            let name = &piece.name.words;
            let message = format!(
                "`{name}` has `count: {count}`, but the cards of a kit use {used}"
            );
            notes.push(
                Diagnostic::new(&rules::COUNT_TOO_LOW, piece.name.site, message)
                    .help(format!("write `count: {used}`, or leave `count` out")),
            );
        }
        let per_kit = piece.count.unwrap_or(used).max(used).saturating_add(piece.spare);
        if per_kit == 0 {
            continue;
        }
        let mut late: Vec<_> = late_cuts_of(project, id)
            .map(|late| (late, uses.late_cuts(project, late)))
            .collect();
        late.retain(|(_, times)| *times > 0);
        for (late, times) in &late {
            note_left_over(project, uses, *late, *times, notes);
        }
        by_paper[piece.of.0].push(Part {
            of: PartOf::Piece(id),
            letter: String::new(),
            size: piece.size,
            turning: turning(fixed[index]),
            per_kit,
            count: 0,
            late,
            greetings: Vec::new(),
            site: piece.size_site,
        });
    }
}

/// Notes parts of a late cut of which more come off than the cards use.
fn note_left_over(
    project: &Project,
    uses: &Uses,
    late: LateId,
    times: u32,
    notes: &mut Vec<Diagnostic>,
) {
    for (part, used) in project.late_cuts[late.0].makes.iter().zip(&uses.parts[late.0]) {
        let over = times.saturating_mul(part.makes).saturating_sub(*used);
        // A part that is used nowhere was pointed out when it was read.
        if over > 0 && *used > 0 {
            let name = &part.name.words;
            let message = format!("{over} x `{name}` is left over in each kit");
            notes.push(Diagnostic::new(
                &rules::LATE_PART_LEFT_OVER,
                part.name.site,
                message,
            ));
        }
    }
}

/// For each piece, whether a face with a direction shows wherever it is used.
///
/// The most demanding use decides. A piece that is on no card is taken to show
/// the face that lies up when cutting.
fn fixed_by_pattern(project: &Project) -> Vec<bool> {
    let mut seen: Vec<Option<bool>> = vec![None; project.pieces.len()];
    for layer in project.cards.iter().flat_map(layers) {
        let piece = match layer.what {
            Placed::Piece(piece) => piece,
            Placed::Late(late, _) => project.late_cuts[late.0].piece,
            Placed::Greeting(_) => continue,
        };
        let paper = &project.papers[project.pieces[piece.0].of.0];
        let runs = runs(paper, face_of(project, layer));
        let fixed = seen[piece.0].get_or_insert(false);
        *fixed |= runs != Runs::Any;
    }
    let pieces = project.pieces.iter().zip(seen);
    pieces
        .map(|(piece, seen)| match piece.pattern {
            PatternOn::AnyWay => false,
            PatternOn::AsItRuns => seen.unwrap_or_else(|| {
                runs(&project.papers[piece.of.0], FaceId(0)) != Runs::Any
            }),
        })
        .collect()
}

fn add_bases(
    project: &Project,
    uses: &Uses,
    by_paper: &mut [Vec<Part>],
    notes: &mut Vec<Diagnostic>,
) {
    for (index, base) in project.bases.iter().enumerate() {
        let per_kit = uses.bases[index];
        let BaseFrom::Made(of) = base.from else { continue };
        if per_kit == 0 {
            continue;
        }
        let (size, turning) = base_blank(project, BaseId(index), of, notes);
        by_paper[of.0].push(Part {
            of: PartOf::Base(BaseId(index)),
            letter: String::new(),
            size,
            turning,
            per_kit,
            count: 0,
            late: Vec::new(),
            greetings: Vec::new(),
            site: base.name.site,
        });
    }
}

/// Labels, then mats; those of one paper and size are one part.
fn add_labels(project: &Project, uses: &Uses, by_paper: &mut [Vec<Part>]) {
    for (index, greeting) in project.greetings.iter().enumerate() {
        let (id, per_kit) = (GreetingId(index), uses.greetings[index]);
        if per_kit > 0 {
            let shown = project.cards.iter().flat_map(layers);
            let shown = shown.filter(|layer| layer.what == Placed::Greeting(id));
            let paper = &project.papers[greeting.of.0];
            let mut faces = shown.map(|layer| runs(paper, face_of(project, layer)));
            let part = Part {
                of: PartOf::Label(id),
                letter: String::new(),
                size: label_blank(project, greeting),
                turning: turning(faces.any(|runs| runs != Runs::Any)),
                per_kit,
                count: 0,
                late: Vec::new(),
                greetings: vec![(id, per_kit)],
                site: greeting.label.site,
            };
            pool(&mut by_paper[greeting.of.0], part);
        }
    }
    for (index, greeting) in project.greetings.iter().enumerate() {
        let (id, per_kit) = (GreetingId(index), uses.greetings[index]);
        let Some(mat) = greeting.mat.filter(|_| per_kit > 0) else { continue };
        let part = Part {
            of: PartOf::LabelMat(id),
            letter: String::new(),
            size: mat_blank(project, greeting, mat),
            turning: turning(runs(&project.papers[mat.of.0], FaceId(0)) != Runs::Any),
            per_kit,
            count: 0,
            late: Vec::new(),
            greetings: vec![(id, per_kit)],
            site: mat.site,
        };
        pool(&mut by_paper[mat.of.0], part);
    }
}

/// Adds a label or mat to the part that is cut alike, if there is one.
fn pool(parts: &mut Vec<Part>, new: Part) {
    let alike = |part: &&mut Part| {
        let same_kind = matches!(
            (part.of, new.of),
            (PartOf::Label(_), PartOf::Label(_))
                | (PartOf::LabelMat(_), PartOf::LabelMat(_))
        );
        same_kind && part.size == new.size && part.turning == new.turning
    };
    match parts.iter_mut().find(alike) {
        Some(part) => {
            part.per_kit = part.per_kit.saturating_add(new.per_kit);
            part.greetings.extend(new.greetings);
        }
        None => parts.push(new),
    }
}

const fn turning(fixed: bool) -> Turning {
    if fixed { Turning::Fixed } else { Turning::Free }
}

/// `A` to `Z`, then `AA`, `AB` and so on.
pub(crate) fn letter(index: usize) -> String {
    let mut rest = index + 1;
    let mut letters = Vec::new();
    while rest > 0 {
        let digit = u8::try_from((rest - 1) % 26).expect("a remainder below 26");
        letters.push(char::from(b'A' + digit));
        rest = (rest - 1) / 26;
    }
    letters.iter().rev().collect()
}

#[cfg(test)]
mod tests {
    use super::letter;

    #[test]
    fn letters_go_on_after_z() {
        assert_eq!(
            [0, 25, 26, 51, 52, 701, 702].map(letter),
            ["A", "Z", "AA", "AZ", "BA", "ZZ", "AAA"]
        );
    }
}
