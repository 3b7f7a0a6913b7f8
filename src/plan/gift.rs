//! The gift set that a kit may end as: how high the stack of finished cards is, and
//! the band or box that holds it.

use crate::geom::{Length, Size, Unit};
use crate::plan::Plan;
use crate::plan::cut::{Leaf, PaperCut};
use crate::project::{Gift, GiftKind, PaperId, Project};

/// A stack of finished cards with what holds it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct GiftSet {
    /// How many cards.
    pub cards: u32,
    /// Width × height of the largest envelope, or card where there is none.
    pub face: Size,
    /// How high the stack is: every card in its envelope.
    pub high: Length,
    /// What holds it.
    pub holds: Holder,
}

/// What holds a stack.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Holder {
    /// A band around the short way.
    Band {
        /// Length × width of the strip, its overlap included.
        strip: Size,
        /// A paper whose offcuts give one for each kit.
        from: Option<PaperId>,
    },
    /// A box.
    Box {
        /// Width × depth inside.
        inside: Size,
        /// How high inside.
        high: Length,
    },
}

/// How far the ends of a band lie over one another, and how much a box is larger
/// than what is in it (common practice, no source).
const OVERLAP: Length = Length::mm(15);
/// See [`OVERLAP`].
const EASE: Length = Length::mm(3);

/// The gift set, if the description wants one and there are cards.
pub fn gift_set(project: &Project, plan: &Plan) -> Option<GiftSet> {
    let Gift { kind, width } = project.gift?;
    let (mut cards, mut high, mut face) = (0_u32, Length::ZERO, Size::default());
    for fit in &plan.fits {
        let card = project.cards.get(fit.card.0)?;
        let base = &project.bases[card.base.0];
        let size = base.envelope.and_then(|it| it.size).unwrap_or(base.front);
        face = Size::new(face.width.max(size.long()), face.height.max(size.short()));
        cards = cards.saturating_add(card.count);
        let pile = fit.thickness.units().saturating_mul(i64::from(card.count));
        high = Length::from_units(high.units().saturating_add(pile));
    }
    if cards == 0 {
        return None;
    }
    let step = match project.unit {
        Unit::Inch => Length::inch(1, 8),
        Unit::Mm => Length::mm(1),
    };
    let holds = match kind {
        GiftKind::Band => {
            let around = (face.height + high) * 2 + OVERLAP;
            let strip = Size::new(up(around, step), width);
            Holder::Band { strip, from: offcut_for(plan, strip) }
        }
        GiftKind::Box => {
            let wide = |length: Length| up(length + EASE, step);
            let inside = Size::new(wide(face.width), wide(face.height));
            Holder::Box { inside, high: wide(high) }
        }
    };
    Some(GiftSet { cards, face, high, holds })
}

/// A paper whose offcuts give a strip for each kit that is cut from it.
fn offcut_for(plan: &Plan, strip: Size) -> Option<PaperId> {
    let enough = |cut: &&PaperCut| {
        let strips = cut.patterns.iter().fold(0_u32, |all, pattern| {
            let kept = pattern.tree.placements(pattern.sheet).into_iter();
            let kept = kept.filter(|it| it.leaf == Leaf::Keep);
            let each = kept.fold(0_u32, |sum, it| {
                sum.saturating_add(strips_from(it.rect.size, strip))
            });
            all.saturating_add(each.saturating_mul(pattern.copies))
        });
        0 < strips && cut.kits <= strips
    };
    plan.cuts.iter().find(enough).map(|cut| cut.paper)
}

/// How many strips come out of an offcut, all lying the same way.
fn strips_from(offcut: Size, strip: Size) -> u32 {
    let times = |long: Length, short: Length| {
        let times = long.units().checked_div(short.units()).unwrap_or(0).max(0);
        u32::try_from(times).unwrap_or(u32::MAX)
    };
    let lying = |it: Size| {
        times(offcut.width, it.width).saturating_mul(times(offcut.height, it.height))
    };
    lying(strip).max(lying(strip.turned()))
}

/// The next mark, upwards.
fn up(length: Length, step: Length) -> Length {
    let steps = length.units().div_euclid(step.units())
        + i64::from(length.units().rem_euclid(step.units()) != 0);
    Length::from_units(steps.saturating_mul(step.units()))
}
