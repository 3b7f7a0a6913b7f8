//! One card: its stack, its mass, its envelope.

use crate::geom::{Length, Size};
use crate::plan::fit::assume::{self, Guess};
use crate::plan::fit::stack::{Slab, highest};
use crate::plan::fronts::{Front, Set};
use crate::project::{CardId, Layer, Placed, Project};
use crate::standards::post::{MailItem, PostHint, class_of};

/// A card as it is sent: how thick, how heavy, and how it goes into its envelope.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Fit {
    /// Which card.
    pub card: CardId,
    /// The folded card at its thickest, without its envelope.
    pub card_thickness: Length,
    /// Whether a thickness that was not given went into that.
    pub card_estimated: bool,
    /// The filled envelope at its thickest; the card alone if it has none.
    pub thickness: Length,
    /// Whether that is an estimate, as it is with any envelope: its walls are
    /// taken for 0.1 mm each.
    pub estimated: bool,
    /// The filled envelope in milligrams; the card alone if it has none. Glue,
    /// foam, ink and stamps are left out.
    pub mass_mg: u64,
    /// Whether a substance that was not given went into the mass.
    pub mass_estimated: bool,
    /// How it goes into its envelope; `None` if the size of that is not known.
    pub envelope: Option<Clearance>,
    /// What each postal operator probably takes the filled envelope for; empty
    /// if its size is not known.
    pub hints: Vec<PostHint>,
}

/// A card in its envelope, both with the longer side level.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Clearance {
    /// Width × height of the folded card.
    pub card: Size,
    /// Width × height of the envelope.
    pub envelope: Size,
    /// By how much the envelope is wider and higher; less than nothing if the
    /// card is larger.
    pub spare: Size,
    /// What that means for the card.
    pub room: Room,
}

/// How a card goes into its envelope.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Room {
    /// With room to spare.
    Enough,
    /// It goes in, but with less room than is usual.
    Tight,
    /// Its face would go in, but not with its thickness.
    TooThick,
    /// Its face is larger than the envelope.
    TooLarge,
}

/// The room that is usual in all, each way (common practice, no source: 3 to
/// 6 mm), and the thickness from which a card needs its thickness besides.
const USUAL_ROOM: Length = Length::mm(3);
/// See [`USUAL_ROOM`].
const THICK: Length = Length::mm(2);

/// Square units of 1/14400 mm times hundredths of a gram per square metre, for
/// one milligram.
const PER_MILLIGRAM: i128 = 14_400 * 14_400 * 100_000;

/// Measures a card as it lies finished.
pub(super) fn measure(project: &Project, front: &Front) -> Fit {
    let card = &project.cards[front.card.0];
    let base = &project.bases[card.base.0];
    let paper = assume::base(project, base.from);
    let mut pile = Pile::default();
    pile.weigh(base.front.area() * 2, paper.grams);

    // Inside and front lie over one another in the closed card.
    let mut slabs = pile.lay(project, &front.inside, &card.inside.layers);
    slabs.extend(pile.lay(project, &front.layers, &card.layers));
    let (layers, exact) = highest(&slabs);
    let card_thickness = paper.thickness.is * 2 + layers;
    pile.thickness_guessed |= paper.thickness.guessed || !exact;
    let card_estimated = pile.thickness_guessed;
    let mut thickness = card_thickness;

    if let Some(envelope) = base.envelope {
        let on_it = pile.lay(project, &front.envelope, &card.envelope);
        let (layers, _) = highest(&on_it);
        thickness += assume::ENVELOPE_WALL * 2 + layers;
        pile.thickness_guessed = true;
        // An envelope of unknown size is about as large as its card.
        let face = envelope.size.unwrap_or(base.front).area();
        let paper = face * assume::ENVELOPE_HALF_FACES / 2;
        pile.weigh(paper, Guess { is: assume::ENVELOPE_GRAMS, guessed: true });
    }

    let mass_mg = u64::try_from(pile.mass / PER_MILLIGRAM).unwrap_or(u64::MAX);
    let envelope = base.envelope.and_then(|envelope| envelope.size);
    let hints = envelope.map(|size| {
        let raised = pile.raised;
        class_of(&MailItem { size, thickness, mass_mg, postcard: false, raised })
    });
    Fit {
        card: front.card,
        card_thickness,
        card_estimated,
        thickness,
        estimated: pile.thickness_guessed,
        mass_mg,
        mass_estimated: pile.mass_guessed,
        envelope: envelope.map(|size| clearance(base.front, size, card_thickness)),
        hints: hints.unwrap_or_default(),
    }
}

/// How a folded card lies in an envelope, longer side along longer side.
fn clearance(front: Size, envelope: Size, thickness: Length) -> Clearance {
    let card = Size::new(front.long(), front.short());
    let envelope = Size::new(envelope.long(), envelope.short());
    let spare = Size::new(envelope.width - card.width, envelope.height - card.height);
    let usual = if THICK < thickness { USUAL_ROOM + thickness } else { USUAL_ROOM };
    let least = spare.short();
    let room = if least < Length::ZERO {
        Room::TooLarge
    } else if least < thickness {
        Room::TooThick
    } else if least < usual {
        Room::Tight
    } else {
        Room::Enough
    };
    Clearance { card, envelope, spare, room }
}

/// What has been put together so far.
#[derive(Default)]
struct Pile {
    /// In [`PER_MILLIGRAM`]ths of a milligram.
    mass: i128,
    mass_guessed: bool,
    thickness_guessed: bool,
    raised: bool,
}

impl Pile {
    fn weigh(&mut self, area: i128, grams: Guess<u32>) {
        self.mass = self.mass.saturating_add(area.saturating_mul(i128::from(grams.is)));
        self.mass_guessed |= grams.guessed;
    }

    /// Adds layers to the mass, and tells where they lie and how thick.
    fn lay(&mut self, project: &Project, sets: &[Set], layers: &[Layer]) -> Vec<Slab> {
        let mut slabs = Vec::new();
        for (index, set) in sets.iter().enumerate() {
            let paper = assume::sheet(&project.papers[set.paper.0]);
            self.weigh(set.rect.size.area(), paper.grams);
            self.thickness_guessed |= paper.thickness.guessed;
            slabs.push(Slab { at: set.rect, thickness: paper.thickness.is });
            if let (Some(at), Placed::Greeting(greeting)) = (set.mat, set.what)
                && let Some(mat) = project.greetings[greeting.0].mat
            {
                let paper = assume::sheet(&project.papers[mat.of.0]);
                self.weigh(at.size.area(), paper.grams);
                self.thickness_guessed |= paper.thickness.guessed;
                // Halves that are slid together lie on each other in the middle.
                let overlap = mat.punched.is_some_and(|it| it.moved < Length::ZERO);
                let sheets = if overlap { 2 } else { 1 };
                slabs.push(Slab { at, thickness: paper.thickness.is * sheets });
            }
            if 0 < set.raised {
                // Foam lies under the whole layer, mat included, and is counted
                // at its full thickness.
                let foam = assume::foam(project, layers.get(index));
                self.thickness_guessed |= foam.guessed;
                self.raised = true;
                let at = set.mat.unwrap_or(set.rect);
                slabs.push(Slab { at, thickness: foam.is });
            }
        }
        slabs
    }
}
