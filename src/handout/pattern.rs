//! The part of a pattern that lands on each piece: where the plan cuts it, turned
//! as it is turned.
//!
//! Pieces of one kind are given to the cards in the order in which both are listed;
//! a maker may swap them.

use std::collections::BTreeMap;
use std::sync::Arc;

use crate::document::{Mark, Stroke};
use crate::geom::{Length, Rect, Shape, Side, Size, Turn};
use crate::handout::lie::{self, Lie, Looked};
use crate::handout::sheets;
use crate::plan::cut::{Leaf, PaperCut, PartOf};
use crate::plan::{Front, Plan, Set};
use crate::project::{
    CardId, FaceId, FacePicture, LateHow, LateId, Paper, PaperId, Placed, Project,
};
use crate::raster::Picture;

/// What of the patterns is seen, worked out once for a handout.
#[derive(Default)]
pub(super) struct Patterns {
    /// Every picture, each once.
    pub(super) pictures: Vec<Arc<Picture>>,
    /// By layer, which is known by its address in the plan.
    layers: BTreeMap<*const Set, Mark>,
    /// The mats of labels, likewise.
    mats: BTreeMap<*const Set, Mark>,
    /// The bases of cards.
    bases: BTreeMap<CardId, Mark>,
}

impl Patterns {
    /// Works out what is seen where.
    pub(super) fn new(project: &Project, plan: &Plan) -> Self {
        let mut all = Self::default();
        let of_papers = project.papers.iter().flat_map(|it| &it.pictures);
        of_papers.for_each(|it| all.add(&it.picture));
        let photos = project.cards.iter().map(|it| &it.photo);
        let photos = photos.chain([&project.photo]).flatten();
        photos.for_each(|it| all.add(&it.picture));
        if project.papers.iter().all(|it| it.pictures.is_empty()) {
            return all;
        }
        let cutter = Cutter { project, cut: cut_out(project, plan) };
        let mut used: BTreeMap<Use, usize> = BTreeMap::new();
        for front in &plan.fronts {
            let card = &project.cards[front.card.0];
            let base = Use::Part(PartOf::Base(card.base));
            let number = used.get(&base).copied().unwrap_or(0);
            if let Some(mark) = all.on_base(&cutter, front, number) {
                all.bases.insert(front.card, mark);
            }
            let mut here: BTreeMap<Use, usize> = BTreeMap::from([(base, 1)]);
            for set in front.layers.iter().chain(&front.inside).chain(&front.envelope) {
                for (kind, marks) in uses(project, plan, set) {
                    let before = here.entry(kind).or_default();
                    let number = used.get(&kind).copied().unwrap_or(0) + *before;
                    *before += 1;
                    let mark = all.on_layer(&cutter, set, kind, number);
                    if let Some(mark) = mark {
                        let address: *const Set = set;
                        match marks {
                            Seen::Layer => all.layers.insert(address, mark),
                            Seen::Mat => all.mats.insert(address, mark),
                        };
                    }
                }
            }
            // Every copy of the card takes as many.
            let count = usize::try_from(card.count).unwrap_or(usize::MAX);
            for (kind, here) in here {
                let all = used.entry(kind).or_default();
                *all = all.saturating_add(here.saturating_mul(count));
            }
        }
        all
    }

    fn add(&mut self, picture: &Arc<Picture>) {
        if self.number(picture).is_none() {
            self.pictures.push(Arc::clone(picture));
        }
    }

    /// The number of a picture in the document.
    pub(super) fn number(&self, picture: &Arc<Picture>) -> Option<usize> {
        self.pictures.iter().position(|it| Arc::ptr_eq(it, picture))
    }

    /// What is seen on a layer of a card.
    pub(super) fn layer(&self, set: &Set) -> Option<Mark> {
        let address: *const Set = set;
        self.layers.get(&address).cloned()
    }

    /// What is seen on the mat under a label.
    pub(super) fn mat(&self, set: &Set) -> Option<Mark> {
        let address: *const Set = set;
        self.mats.get(&address).cloned()
    }

    /// What is seen on the front of a base.
    pub(super) fn base(&self, card: CardId) -> Option<Mark> {
        self.bases.get(&card).cloned()
    }

    /// What is seen of the side that lies up on a part of a sheet, the part's
    /// corner at the origin.
    pub(super) fn sheet(&self, paper: &Paper, sheet: Size, part: Rect) -> Option<Mark> {
        let picture = of_face(paper, FaceId(0)).filter(|it| it.sheet == sheet)?;
        let lie = Lie::on_sheet(sheet, part, picture.covers, Looked::Front);
        let place = Rect::whole(part.size);
        self.mark(picture, lie, place, (place, Shape::Rectangle), None)
    }

    fn mark(
        &self,
        picture: &FacePicture,
        lie: Lie,
        place: Rect,
        (rect, shape): (Rect, Shape),
        line: Option<Stroke>,
    ) -> Option<Mark> {
        let whole = lie.laid_on(place);
        // What the picture doesn't reach keeps its hatch.
        rect.overlap(whole)?;
        let number = self.number(&picture.picture)?;
        Some(Mark::Picture { rect, shape, line, number, whole, turn: lie.turn })
    }

    fn on_layer(
        &self,
        cutter: &Cutter<'_>,
        set: &Set,
        kind: Use,
        number: usize,
    ) -> Option<Mark> {
        let line = Some(Stroke::Edge);
        let project = cutter.project;
        if let (Use::Part(PartOf::LabelMat(id)), Some(place)) = (kind, set.mat) {
            let paper = project.greetings[id.0].mat?.of;
            let picture = of_face(&project.papers[paper.0], FaceId(0))?;
            let piece = cutter.piece(kind, number)?;
            let lie = piece.seen(None, picture)?.turned(set.turned);
            let fits = lie.size == place.size;
            return fits
                .then(|| self.mark(picture, lie, place, (place, set.shape), line))?;
        }
        let face = set.showing.unwrap_or(FaceId(0));
        let picture = of_face(&project.papers[set.paper.0], face)?;
        let (piece, part) = match set.what {
            Placed::Piece(_) => (cutter.piece(kind, number)?, None),
            Placed::Late(late, at) => cutter.late(late, at, number)?,
            Placed::Greeting(id) => {
                let piece = cutter.piece(kind, number)?;
                let label = project.greetings[id.0].label.outline.size;
                let room = piece.size;
                if !label.fits(room) {
                    return None;
                }
                let x = (room.width - label.width).half();
                let y = (room.height - label.height).half();
                (piece, Some(Rect::new(x, y, label)))
            }
        };
        let lie = piece.seen(part, picture)?.turned(set.turned);
        let fits = lie.size == set.laid.size;
        fits.then(|| self.mark(picture, lie, set.laid, (set.rect, set.shape), line))?
    }

    /// The front of a base is its right or lower half when it lies open with its
    /// outer side up.
    fn on_base(&self, cutter: &Cutter<'_>, front: &Front, number: usize) -> Option<Mark> {
        let project = cutter.project;
        let base = project.cards[front.card.0].base;
        let piece = cutter.piece(Use::Part(PartOf::Base(base)), number)?;
        let picture = of_face(&project.papers[piece.paper.0], FaceId(0))?;
        let Size { width, height } = front.size;
        let (open, at) = match front.fold {
            Side::Left | Side::Right => {
                (Size::new(width * 2, height), Rect::new(width, Length::ZERO, front.size))
            }
            Side::Top | Side::Bottom => (
                Size::new(width, height * 2),
                Rect::new(Length::ZERO, height, front.size),
            ),
        };
        // It was cut as it stands, or a quarter turned.
        let turn = if piece.size == open { Turn::None } else { Turn::Right };
        let back =
            if turn == Turn::None { at } else { lie::turned(at, open, Turn::Left) };
        let lie = piece.seen(Some(back), picture)?.turned(turn);
        let place = Rect::whole(front.size);
        let fits = lie.size == place.size;
        fits.then(|| self.mark(picture, lie, place, (place, Shape::Rectangle), None))?
    }
}

/// What kind of thing a layer uses up.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
enum Use {
    /// A part as it was cut from the sheet; labels by the first of their kind.
    Part(PartOf),
    /// A part of a late cut.
    Late(LateId, usize),
}

/// Where on a layer something is seen.
#[derive(Clone, Copy)]
enum Seen {
    Layer,
    Mat,
}

/// What a layer uses up: itself, and perhaps a mat.
fn uses(project: &Project, plan: &Plan, set: &Set) -> Vec<(Use, Seen)> {
    match set.what {
        Placed::Piece(piece) => vec![(Use::Part(PartOf::Piece(piece)), Seen::Layer)],
        Placed::Late(late, part) => vec![(Use::Late(late, part), Seen::Layer)],
        Placed::Greeting(id) => {
            // Labels of one size and paper are one part, and so are mats.
            let parts = || plan.cuts.iter().flat_map(|it| &it.parts);
            let mine = parts().filter(|it| it.greetings.iter().any(|it| it.0 == id));
            let with_mat = project.greetings[id.0].mat.is_some();
            mine.filter_map(|part| match part.of {
                PartOf::Label(_) => Some((Use::Part(part.of), Seen::Layer)),
                PartOf::LabelMat(_) if with_mat => Some((Use::Part(part.of), Seen::Mat)),
                _ => None,
            })
            .collect()
        }
    }
}

fn of_face(paper: &Paper, face: FaceId) -> Option<&FacePicture> {
    paper.pictures.iter().find(|it| it.face == face)
}

/// A piece where it was cut.
#[derive(Clone, Copy, Debug)]
struct CutOut {
    paper: PaperId,
    sheet: Size,
    /// Where it lies on the sheet.
    rect: Rect,
    /// It lies a quarter turned.
    turned: bool,
    /// Its size as it is described.
    size: Size,
}

impl CutOut {
    /// How a picture of one of its faces lies on it, or on a part of it as it is
    /// described.
    fn seen(self, part: Option<Rect>, picture: &FacePicture) -> Option<Lie> {
        if picture.sheet != self.sheet {
            return None;
        }
        let part = part.unwrap_or(Rect::whole(self.size));
        let there =
            if self.turned { lie::turned(part, self.size, Turn::Left) } else { part };
        let Rect { x, y, .. } = self.rect;
        let cut = Rect::new(x + there.x, y + there.y, there.size);
        let looked = if picture.face.0 == 0 { Looked::Front } else { Looked::Back };
        let lie = Lie::on_sheet(self.sheet, cut, picture.covers, looked);
        Some(if self.turned { lie.turned(Turn::Right) } else { lie })
    }
}

/// Where the parts of one kind are cut.
struct Cuts {
    /// Those of one kit.
    pieces: Vec<CutOut>,
    /// The late cuts that are made from them, with their number in one kit.
    late: Vec<(LateId, u32)>,
}

/// Finds where things were cut.
struct Cutter<'a> {
    project: &'a Project,
    /// By part.
    cut: BTreeMap<PartOf, Cuts>,
}

impl Cutter<'_> {
    /// The so-and-so-many-th piece of a kind.
    fn piece(&self, kind: Use, number: usize) -> Option<CutOut> {
        let Use::Part(of) = kind else { return None };
        let pieces = &self.cut.get(&of)?.pieces;
        pieces.get(number.checked_rem(pieces.len())?).copied()
    }

    /// The piece that the so-and-so-many-th part of a late cut comes from, and
    /// where on it.
    fn late(
        &self,
        id: LateId,
        at: usize,
        number: usize,
    ) -> Option<(CutOut, Option<Rect>)> {
        let cut = &self.project.late_cuts[id.0];
        let of = PartOf::Piece(cut.piece);
        let Cuts { pieces, late } = self.cut.get(&of)?;
        // Those that are cut again come last among their kind.
        let again =
            |it: &[(LateId, u32)]| it.iter().map(|it| it.1 as usize).sum::<usize>();
        let place = late.iter().position(|it| it.0 == id)?;
        let first = pieces.len().saturating_sub(again(late)) + again(&late[..place]);
        let makes = (cut.makes.get(at)?.makes.max(1)) as usize;
        let piece = self.piece(Use::Part(of), first + number / makes)?;
        let whole = Rect::whole(piece.size);
        // The first part is the left or upper one: any edge will do, says the step.
        let (axis, off) = match cut.how {
            LateHow::Thirds { cut } => {
                let third = |extent: Length| Length::from_units(extent.units() / 3);
                let nth = if makes > 1 { number % makes } else { at };
                let off = third(piece.size.along(cut.other()));
                let rest = (0..nth).fold(whole, |rest, _| rest.split(cut, off).1);
                return Some((piece, Some(rest.split(cut, off).0)));
            }
            LateHow::Halve { cut } => (cut, piece.size.along(cut.other()).half()),
            LateHow::CutOff { cut, at } => (cut, at),
        };
        let (first, second) = whole.split(axis, off);
        let second_one = if makes > 1 { number % makes == 1 } else { at == 1 };
        Some((piece, Some(if second_one { second } else { first })))
    }
}

/// Where the pieces of one kit are cut, for papers that have pictures.
fn cut_out(project: &Project, plan: &Plan) -> BTreeMap<PartOf, Cuts> {
    let mut all = BTreeMap::new();
    for cut in &plan.cuts {
        if project.papers[cut.paper.0].pictures.is_empty() {
            continue;
        }
        let mut pieces: Vec<Vec<CutOut>> = vec![Vec::new(); cut.parts.len()];
        for pattern in 0..cut.patterns.len() {
            of_sheet(cut, pattern, &mut pieces);
        }
        for (part, pieces) in cut.parts.iter().zip(pieces) {
            all.insert(part.of, Cuts { pieces, late: part.late.clone() });
        }
    }
    all
}

fn of_sheet(cut: &PaperCut, pattern: usize, pieces: &mut [Vec<CutOut>]) {
    let sheet = cut.patterns[pattern].sheet;
    for placement in sheets::tree(cut, pattern).placements(sheet) {
        let Leaf::Part { part, turned } = placement.leaf else { continue };
        let (Some(known), Some(pieces)) = (cut.parts.get(part), pieces.get_mut(part))
        else {
            continue;
        };
        if pieces.len() < usize::try_from(known.per_kit).unwrap_or(usize::MAX) {
            let (paper, rect) = (cut.paper, placement.rect);
            pieces.push(CutOut { paper, sheet, rect, turned, size: known.size });
        }
    }
}
