//! How often one kit uses each thing.

use crate::project::{
    Card, FaceId, Greeting, GreetingId, LateId, Layer, Paper, PaperId, Piece, PieceId,
    Placed, Project, Reader, Runs, Spares,
};

/// How often the cards of one kit use each thing, by its index in the project.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub(crate) struct Uses {
    /// Pieces laid on a card as they were cut.
    pub(crate) pieces: Vec<u32>,
    /// Parts of late cuts, by late cut and by what it makes.
    pub(crate) parts: Vec<Vec<u32>>,
    /// Greetings.
    pub(crate) greetings: Vec<u32>,
    /// Bases.
    pub(crate) bases: Vec<u32>,
}

impl Uses {
    /// Counts what is on the cards of one kit.
    pub(crate) fn count(project: &Project) -> Self {
        let mut uses = Self {
            pieces: vec![0; project.pieces.len()],
            parts: project.late_cuts.iter().map(|it| vec![0; it.makes.len()]).collect(),
            greetings: vec![0; project.greetings.len()],
            bases: vec![0; project.bases.len()],
        };
        for card in &project.cards {
            add(&mut uses.bases[card.base.0], card.count);
            for layer in layers(card) {
                let seen = match layer.what {
                    Placed::Piece(piece) => &mut uses.pieces[piece.0],
                    Placed::Late(late, part) => &mut uses.parts[late.0][part],
                    Placed::Greeting(greeting) => &mut uses.greetings[greeting.0],
                };
                add(seen, card.count);
            }
        }
        uses
    }

    /// How often one kit cuts a piece again: as often as the part takes that is
    /// used most, seen by how many of it each cut makes.
    pub(crate) fn late_cuts(&self, project: &Project, late: LateId) -> u32 {
        let makes = &project.late_cuts[late.0].makes;
        let used = self.parts[late.0].iter().zip(makes);
        used.map(|(used, part)| used.div_ceil(part.makes.max(1))).max().unwrap_or(0)
    }

    /// How many of a piece the cards of one kit use, whole or cut again.
    pub(crate) fn of_piece(&self, project: &Project, piece: PieceId) -> u32 {
        let late = late_cuts_of(project, piece).map(|late| self.late_cuts(project, late));
        late.fold(self.pieces[piece.0], u32::saturating_add)
    }
}

/// Everything that is placed for a card: on the front, inside, on the envelope.
pub(crate) fn layers(card: &Card) -> impl Iterator<Item = &Layer> {
    card.layers.iter().chain(&card.inside.layers).chain(&card.envelope)
}

/// The late cuts that start from a piece.
pub(crate) fn late_cuts_of(
    project: &Project,
    piece: PieceId,
) -> impl Iterator<Item = LateId> {
    let cuts = project.late_cuts.iter().enumerate();
    cuts.filter(move |(_, late)| late.piece == piece).map(|(index, _)| LateId(index))
}

/// What a layer is called.
pub(crate) fn name_of(project: &Project, what: Placed) -> &str {
    match what {
        Placed::Piece(piece) => &project.pieces[piece.0].name.words,
        Placed::Late(late, part) => &project.late_cuts[late.0].makes[part].name.words,
        Placed::Greeting(greeting) => &project.greetings[greeting.0].name.words,
    }
}

/// The paper that a layer shows.
pub(crate) fn paper_of(project: &Project, what: Placed) -> PaperId {
    match what {
        Placed::Piece(piece) => piece_of(project, piece).of,
        Placed::Late(late, _) => piece_of(project, project.late_cuts[late.0].piece).of,
        Placed::Greeting(greeting) => greeting_of(project, greeting).of,
    }
}

/// The face that a layer shows: as the layer says, else as the late cut says,
/// else the one that lies up when cutting.
pub(crate) fn face_of(project: &Project, layer: &Layer) -> FaceId {
    let said = match layer.what {
        Placed::Late(late, part) => project.late_cuts[late.0].makes[part].showing,
        Placed::Piece(_) | Placed::Greeting(_) => None,
    };
    layer.showing.or(said).unwrap_or(FaceId(0))
}

/// Which way the pattern of a face stands.
pub(crate) fn runs(paper: &Paper, face: FaceId) -> Runs {
    paper.faces.get(face.0).map_or(Runs::Any, |face| face.runs)
}

/// A piece by its index.
pub(crate) fn piece_of(project: &Project, piece: PieceId) -> &Piece {
    &project.pieces[piece.0]
}

/// A greeting by its index.
pub(crate) fn greeting_of(project: &Project, greeting: GreetingId) -> &Greeting {
    &project.greetings[greeting.0]
}

fn add(seen: &mut u32, times: u32) {
    *seen = seen.saturating_add(times);
}

/// How many kits there are, and how many of them are cut together.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct Kits {
    /// Kits that were asked for.
    pub(crate) asked: u32,
    /// Spare kits on top.
    pub(crate) spares: u32,
    /// Each person cuts her own sheets.
    pub(crate) apart: bool,
}

impl Kits {
    /// Counts the kits: as asked, with the spares that the project wants.
    ///
    /// Usual are no spares for one kit, else one kit in ten, at least one (common
    /// practice, no source).
    pub(crate) fn count(project: &Project, asked: Option<u32>, reader: Reader) -> Self {
        let asked = asked.unwrap_or(project.kits).max(1);
        let spares = match project.spares {
            Spares::Kits(kits) => kits,
            Spares::Usual if asked == 1 => 0,
            Spares::Usual => asked.div_ceil(10),
        };
        let mut said = project.cut_by.iter();
        let apart = said.any(|it| it.reader == reader && it.reader_cuts);
        Self { asked, spares, apart }
    }

    /// All kits, spares included.
    pub(crate) const fn total(&self) -> u32 {
        self.asked.saturating_add(self.spares)
    }

    /// How many kits one cutting plan is for.
    pub(crate) const fn cut_together(&self) -> u32 {
        if self.apart { 1 } else { self.total() }
    }
}
