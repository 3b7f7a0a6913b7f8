//! What postal operators take as a letter: classes by size, thickness, mass and
//! shape, and the class that an item falls into.
//!
//! Facts for a hint, never a price or a promise: operators change their classes,
//! so whatever is printed from here names the year and sends the reader to her
//! postal operator.

mod limits;
mod rows;

pub use limits::{Limit, Mass, Measure};
pub use rows::CLASSES;

use crate::geom::{Length, Size};
use crate::standards::{Citation, Seen};

/// Whose classes they are, by country.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Operator {
    /// United States.
    UnitedStates,
    /// Canada.
    Canada,
    /// United Kingdom.
    UnitedKingdom,
    /// Germany.
    Germany,
    /// Australia.
    Australia,
    /// Norway.
    Norway,
    /// Belgium.
    Belgium,
    /// France.
    France,
    /// Letters to another country, as several operators describe them alike.
    Abroad,
}

impl Operator {
    /// Every operator, in the order of [`CLASSES`].
    pub const ALL: [Self; 9] = [
        Self::UnitedStates,
        Self::Canada,
        Self::UnitedKingdom,
        Self::Germany,
        Self::Australia,
        Self::Norway,
        Self::Belgium,
        Self::France,
        Self::Abroad,
    ];
}

/// A class of letter of one operator.
#[derive(Debug, PartialEq, Eq)]
pub struct LetterClass {
    /// A name that is unique among all classes.
    pub key: &'static str,
    /// Whose class it is.
    pub operator: Operator,
    /// What the operator calls it.
    pub name: &'static str,
    /// Only for a single unfolded card that travels without an envelope.
    pub postcard: bool,
    /// Size, thickness and mass.
    pub size: &'static [Requirement],
    /// Shape, and whatever else costs a surcharge.
    pub shape: &'static [Requirement],
    /// What the operator also asks that no figure decides; it matters as soon as
    /// layers are raised.
    pub raised: &'static [Watch],
    /// The document that the class is taken from.
    pub from: &'static Citation,
    /// Its year.
    pub year: Year,
}

impl LetterClass {
    /// Everything that a figure decides.
    pub fn requirements(&self) -> impl Iterator<Item = &'static Requirement> {
        self.size.iter().chain(self.shape)
    }
}

/// One limit of a class, and where it is laid down.
#[derive(Debug, PartialEq, Eq)]
pub struct Requirement {
    /// The limit.
    pub limit: Limit,
    /// Where it is laid down.
    pub from: &'static Citation,
}

/// The year of a source.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Year {
    /// The document bears it.
    Issued(u16),
    /// The document bears none; it was read then.
    Read(u16),
}

/// What an operator asks and no figure decides.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Watch {
    /// The contents must not make the thickness uneven.
    Even,
    /// It must bend.
    Bends,
}

/// Something to post.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct MailItem {
    /// Width × height of the outside; the address runs along the longer side.
    pub size: Size,
    /// At its thickest.
    pub thickness: Length,
    /// In milligrams.
    pub mass_mg: u64,
    /// A single unfolded card without an envelope.
    pub postcard: bool,
    /// Something in it is raised on foam.
    pub raised: bool,
}

/// What one operator probably takes an item for.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct PostHint {
    /// Which operator.
    pub operator: Operator,
    /// As what.
    pub verdict: Verdict,
    /// Why it is none of the cheaper classes: everything that bars it there.
    pub obstacles: Vec<Obstacle>,
    /// No text of the operator's own was seen for the limit that decides.
    pub uncertain: bool,
    /// What to look at since layers are raised: it may cost more, or not.
    pub watch: &'static [Watch],
}

/// What becomes of an item.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Verdict {
    /// The cheapest class that takes it.
    Class(&'static LetterClass),
    /// Too small, too thin or too light for any class.
    Below,
    /// Beyond every class that is listed here; often a parcel.
    Beyond,
}

/// A limit that keeps an item out of a class.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Obstacle {
    /// The class.
    pub class: &'static LetterClass,
    /// The limit that it breaks.
    pub requirement: &'static Requirement,
}

/// The classes of an operator, from the cheapest up.
pub fn classes(operator: Operator) -> impl Iterator<Item = &'static LetterClass> {
    CLASSES.iter().filter(move |class| class.operator == operator)
}

/// What each operator probably takes an item for, in the order of [`Operator::ALL`].
pub fn class_of(item: &MailItem) -> Vec<PostHint> {
    Operator::ALL.iter().map(|operator| hint(*operator, item)).collect()
}

/// What one operator probably takes an item for.
pub fn hint(operator: Operator, item: &MailItem) -> PostHint {
    let mut obstacles = Vec::new();
    let mut uncertain = false;
    let mut verdict = Verdict::Beyond;
    for class in classes(operator).filter(|class| item.postcard || !class.postcard) {
        let broken: Vec<_> =
            class.requirements().filter(|it| !it.limit.holds(item)).collect();
        if broken.is_empty() {
            uncertain |= class.from.seen != Seen::Document;
            verdict = Verdict::Class(class);
            break;
        }
        // A class that only hearsay closes may be open after all.
        uncertain |= broken.iter().all(|it| it.from.seen != Seen::Document);
        let below = broken.iter().any(|it| it.limit.is_minimum());
        verdict = if below { Verdict::Below } else { Verdict::Beyond };
        obstacles.extend(
            broken.into_iter().map(|requirement| Obstacle { class, requirement }),
        );
    }
    let watch = match verdict {
        Verdict::Class(class) if item.raised => class.raised,
        Verdict::Class(_) | Verdict::Below | Verdict::Beyond => &[],
    };
    PostHint { operator, verdict, obstacles, uncertain, watch }
}
