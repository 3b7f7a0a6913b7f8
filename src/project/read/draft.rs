//! What has been read so far: the model with gaps where a thing is at fault.

use crate::geom::{Size, Unit};
use crate::project::read::shape::Names;
use crate::project::{
    Base, Card, CutBy, DoneAhead, Gift, Greeting, HandedOutBy, LateCut, Minutes,
    OwnCutting, Paper, Photo, Piece, PieceId, Placed, Project, Spares, Text, Tool,
};
use crate::source::Site;

/// The project as far as it could be read.
///
/// A thing that is at fault is `None` at its index, so that others can still
/// name it without a second fault.
#[derive(Debug, Default)]
pub(crate) struct Draft {
    pub(crate) title: Option<Text>,
    pub(crate) about: Option<Text>,
    pub(crate) photo: Option<Photo>,
    pub(crate) language: String,
    pub(crate) languages: Vec<Text>,
    pub(crate) edition: Option<Text>,
    pub(crate) handed_out_by: Option<HandedOutBy>,
    pub(crate) kits: u32,
    pub(crate) spares: Spares,
    pub(crate) sheets_alike: bool,
    pub(crate) papers: Vec<Option<Paper>>,
    pub(crate) bases: Vec<Option<Base>>,
    pub(crate) tools: Vec<Option<Tool>>,
    pub(crate) pieces: Vec<Option<Piece>>,
    pub(crate) late_cuts: Vec<Option<LateCut>>,
    pub(crate) greetings: Vec<Option<Greeting>>,
    pub(crate) cards: Vec<Option<Card>>,
    pub(crate) cutting: Vec<Option<OwnCutting>>,
    pub(crate) done_ahead: Vec<DoneAhead>,
    pub(crate) cut_by: Vec<CutBy>,
    pub(crate) cautions: Vec<Text>,
    pub(crate) tips: Vec<Text>,
    pub(crate) fonts: Vec<Text>,
    pub(crate) currency: Option<Text>,
    pub(crate) in_batches: bool,
    pub(crate) gift: Option<Gift>,
    pub(crate) minutes: Minutes,
    /// Names of papers.
    pub(crate) paper_names: Names,
    /// Names of bases.
    pub(crate) base_names: Names,
    /// Names of tools.
    pub(crate) tool_names: Names,
    /// Names of pieces.
    pub(crate) piece_names: Names,
    /// Names of the parts of late cuts.
    pub(crate) part_names: Names,
    /// For each of these, its late cut and its index there.
    pub(crate) parts: Vec<Placed>,
    /// Names of greetings.
    pub(crate) greeting_names: Names,
    /// Where the description begins.
    pub(crate) site: Site,
}

/// The thing at an index, if it could be read.
pub(crate) fn at<T>(things: &[Option<T>], index: usize) -> Option<&T> {
    things.get(index)?.as_ref()
}

impl Draft {
    pub(crate) fn piece(&self, id: PieceId) -> Option<&Piece> {
        at(&self.pieces, id.0)
    }

    /// The size of what is placed, as it lies on the sheet or the label stands.
    pub(crate) fn size_of(&self, what: Placed) -> Option<Size> {
        match what {
            Placed::Piece(id) => Some(self.piece(id)?.size),
            Placed::Late(id, part) => {
                Some(at(&self.late_cuts, id.0)?.makes.get(part)?.size)
            }
            Placed::Greeting(id) => Some(at(&self.greetings, id.0)?.label.outline.size),
        }
    }

    /// The paper that shows of what is placed.
    pub(crate) fn paper_of(&self, what: Placed) -> Option<&Paper> {
        let id = match what {
            Placed::Piece(id) => self.piece(id)?.of,
            Placed::Late(id, _) => self.piece(at(&self.late_cuts, id.0)?.piece)?.of,
            Placed::Greeting(id) => at(&self.greetings, id.0)?.of,
        };
        at(&self.papers, id.0)
    }

    /// The checked project, if nothing in it was at fault.
    pub(crate) fn finish(self, unit: Unit) -> Option<Project> {
        Some(Project {
            title: self.title?,
            about: self.about,
            photo: self.photo,
            language: self.language,
            languages: self.languages,
            edition: self.edition,
            handed_out_by: self.handed_out_by,
            unit,
            kits: self.kits,
            spares: self.spares,
            sheets_alike: self.sheets_alike,
            papers: all(self.papers)?,
            bases: all(self.bases)?,
            tools: all(self.tools)?,
            pieces: all(self.pieces)?,
            late_cuts: all(self.late_cuts)?,
            greetings: all(self.greetings)?,
            cards: all(self.cards)?,
            cutting: all(self.cutting)?,
            done_ahead: self.done_ahead,
            cut_by: self.cut_by,
            cautions: self.cautions,
            tips: self.tips,
            fonts: self.fonts,
            currency: self.currency,
            in_batches: self.in_batches,
            gift: self.gift,
            minutes: self.minutes,
        })
    }
}

fn all<T>(things: Vec<Option<T>>) -> Option<Vec<T>> {
    things.into_iter().collect()
}
