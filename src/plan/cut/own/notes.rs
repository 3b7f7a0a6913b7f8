//! What is said about the designer's own way of cutting.

use crate::diag::{Diagnostic, rules};
use crate::geom::{Axis, Length, Size};
use crate::plan::cut::Part;
use crate::plan::cut::called;
use crate::plan::cut::plates::extent;
use crate::project::{PieceId, Project, Text, Trimmer};
use crate::source::Site;

pub(super) struct Notes<'a> {
    pub(super) project: &'a Project,
    pub(super) trimmer: &'a Trimmer,
    pub(super) all: Vec<Diagnostic>,
}

impl Notes<'_> {
    fn length(&self, length: Length) -> String {
        length.show(self.project.unit)
    }

    fn size(&self, size: Size) -> String {
        size.show(self.project.unit)
    }

    fn piece(&self, piece: PieceId) -> &Text {
        &self.project.pieces[piece.0].name
    }

    pub(super) fn cut_too_large(
        &mut self,
        axis: Axis,
        at: Length,
        hand: Size,
        site: Site,
    ) {
        let way = match axis {
            Axis::Upright => "wide",
            Axis::Level => "high",
        };
        let whole = extent(hand, axis);
        let (at_said, whole_said) = (self.length(at), self.length(whole));
        let over = if at == whole {
            "so there is nothing to cut".to_owned()
        } else {
            format!("{} too little", self.length(at - whole))
        };
        let message = format!(
            "the cut is at {at_said}, but the part in hand is {whole_said} {way}: {over}"
        );
        let help = match at == whole {
            true => "say only what it is `for:`, without a cut".to_owned(),
            false => format!("the part in hand is {}", self.size(hand)),
        };
        self.all
            .push(Diagnostic::new(&rules::OWN_CUT_TOO_LARGE, site, message).help(help));
    }

    pub(super) fn cut_too_long(&mut self, length: Length, site: Site) {
        if let Some(longest) = self.trimmer.longest_cut.filter(|it| *it < length) {
            let message = format!(
                "the cut is {} long; the trimmer cuts {}",
                self.length(length),
                self.length(longest)
            );
            let note = Diagnostic::new(&rules::OWN_CUT_TOO_LONG, site, message)
                .help("cut the part the other way first");
            self.all.push(note);
        }
    }

    pub(super) fn nothing_in_hand(&mut self, site: Site) {
        let message = "nothing is in hand for this step";
        let note = Diagnostic::new(&rules::OWN_NOTHING_IN_HAND, site, message)
            .help("say `take:` with the name of the part that is cut next");
        self.all.push(note);
    }

    pub(super) fn part_unknown(&mut self, name: &Text, known: &[&str]) {
        let message = format!("no step before this one names a part `{}`", name.words);
        let note = Diagnostic::new(&rules::OWN_PART_UNKNOWN, name.site, message);
        self.all.push(if known.is_empty() {
            note.help("name a part where it comes off: `other part: side`")
        } else {
            note.help(format!("write one of: `{}`", known.join("`, `")))
        });
    }

    pub(super) fn used_twice(&mut self, name: &Text, before: Site) {
        let message = format!("nothing is left of `{}` to be cut", name.words);
        let note = Diagnostic::new(&rules::OWN_PART_USED_TWICE, name.site, message)
            .label(before, "this step finished it");
        self.all.push(note);
    }

    pub(super) fn name_twice(&mut self, name: &Text, before: Site) {
        let message = format!("another part is called `{}` already", name.words);
        let note = Diagnostic::new(&rules::OWN_NAME_TWICE, name.site, message)
            .label(before, "here")
            .help("give this part a name of its own");
        self.all.push(note);
    }

    pub(super) fn other_paper(&mut self, piece: PieceId, site: Site) {
        let piece = self.piece(piece);
        let message = format!("`{}` is not among the pieces of this paper", piece.words);
        let note = Diagnostic::new(&rules::OWN_PIECE_OTHER_PAPER, site, message)
            .label(piece.site, "it is described here");
        self.all.push(note);
    }

    pub(super) fn turned(
        &mut self,
        piece: PieceId,
        comes: Size,
        part: &Part,
        site: Site,
    ) {
        let message = format!(
            "`{}` comes off {} as it lies on the sheet, so its pattern would lie on its side; it is described as {}",
            self.piece(piece).words,
            self.size(comes),
            self.size(part.size)
        );
        let note = Diagnostic::new(&rules::OWN_PIECE_TURNED, site, message)
            .label(part.site, "its size, with the pattern upright");
        self.all.push(note);
    }

    pub(super) fn other_size(
        &mut self,
        piece: PieceId,
        comes: Size,
        part: &Part,
        site: Site,
    ) {
        // The nearer way round tells how far it is off.
        let off = |size: Size| {
            let (width, height) = (comes.width - size.width, comes.height - size.height);
            (width, height, width.units().abs().saturating_add(height.units().abs()))
        };
        let (upright, turned) = (off(part.size), off(part.size.turned()));
        let (width, height, _) = if turned.2 < upright.2 { turned } else { upright };
        let by = |length: Length, less: &str, more: &str| match length.units().signum() {
            0 => None,
            1 => Some(format!("{} {more}", self.length(length))),
            _ => Some(format!("{} {less}", self.length(-length))),
        };
        let by: Vec<String> =
            [by(width, "too narrow", "too wide"), by(height, "too low", "too high")]
                .into_iter()
                .flatten()
                .collect();
        let message = format!(
            "what comes off for `{}` is {}, but the piece is {}: {}",
            self.piece(piece).words,
            self.size(comes),
            self.size(part.size),
            by.join(" and ")
        );
        let note = Diagnostic::new(&rules::OWN_PIECE_OTHER_SIZE, site, message)
            .label(part.site, "the size of the piece");
        // Of several alike it is said once.
        let said = |it: &Diagnostic| {
            it.site.start == note.site.start && it.message == note.message
        };
        if !self.all.iter().any(said) {
            self.all.push(note);
        }
    }

    pub(super) fn missing(&mut self, part: &Part, makes: u32, site: Site) {
        let message = format!(
            "a kit needs {} of `{}`, but this way makes {makes}",
            part.per_kit,
            called(self.project, part.of)
        );
        let note = Diagnostic::new(&rules::OWN_PIECES_MISSING, site, message)
            .label(part.site, "described here")
            .help("add a step for it, or leave the cutting of this paper out");
        self.all.push(note);
    }

    pub(super) fn spare(&mut self, part: &Part, makes: u32, kits: u32, site: Site) {
        let kits_said = match kits {
            1 => "a kit needs".to_owned(),
            n => format!("{n} kits need"),
        };
        let message = format!(
            "{kits_said} {} of `{}`, but this way makes {makes}",
            kits.saturating_mul(part.per_kit),
            called(self.project, part.of)
        );
        let note = Diagnostic::new(&rules::OWN_PIECES_TO_SPARE, site, message)
            .label(part.site, "described here");
        self.all.push(note);
    }

    pub(super) fn forgotten(&mut self, name: &str, site: Site) {
        let message = format!("the part `{name}` is not used, so it counts as waste");
        let note = Diagnostic::new(&rules::OWN_PART_FORGOTTEN, site, message)
            .help(format!("add the step `{{keep: {name}}}` if it is worth keeping"));
        self.all.push(note);
    }
}
