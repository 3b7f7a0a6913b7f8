//! What pages are built from: level slabs that are never cut.

use std::rc::Rc;

use crate::page::Item;
use crate::page::Link;
use crate::page::TagId;

/// A page never breaks here.
pub(crate) const NEVER: f64 = f64::INFINITY;

/// A part of the text as high as one line, one drawing, one row: pages break only
/// between slabs. Its items stand at their final x; their y counts from its top.
#[derive(Clone, Debug, Default)]
pub(crate) struct Slab {
    /// Space above it, left out at the top of a page.
    pub(crate) above: f64,
    /// Its own height.
    pub(crate) height: f64,
    /// What is drawn.
    pub(crate) items: Vec<Item>,
    /// What leads elsewhere.
    pub(crate) links: Vec<Link>,
    /// What is found at its top.
    pub(crate) marks: Vec<Mark>,
    /// The boxes of drawings.
    pub(crate) figures: Vec<(TagId, [f64; 4])>,
    /// How bad it is to break the page below it; 0 is fine, [`NEVER`] forbids it.
    pub(crate) after: f64,
    /// What is drawn again above it if it starts a page.
    pub(crate) head: Option<Rc<Slab>>,
}

/// Something that is found at the top of a slab.
#[derive(Clone, Debug)]
pub(crate) enum Mark {
    /// A place that links lead to.
    Anchor(String),
    /// An entry of the outline.
    Heading(u8, String),
}

impl Slab {
    /// An empty slab of a height.
    pub(crate) fn blank(height: f64) -> Self {
        Self { height, ..Self::default() }
    }

    /// Takes over all that another slab holds, moved down by `dy`.
    pub(crate) fn absorb(&mut self, other: Self, dy: f64) {
        self.items.extend(other.items.into_iter().map(|mut item| {
            item.shift(0.0, dy);
            item
        }));
        self.links.extend(other.links.into_iter().map(|mut link| {
            link.area[1] += dy;
            link.area[3] += dy;
            link
        }));
        self.marks.extend(other.marks);
        self.figures.extend(other.figures.into_iter().map(|(tag, mut area)| {
            area[1] += dy;
            area[3] += dy;
            (tag, area)
        }));
    }
}

/// How high slabs are on top of each other, the space above the first left out.
pub(crate) fn height(slabs: &[Slab]) -> f64 {
    let above = slabs.first().map_or(0.0, |it| it.above);
    slabs.iter().map(|it| it.above + it.height).sum::<f64>() - above
}

/// Makes one slab of several.
pub(crate) fn fuse(slabs: Vec<Slab>) -> Slab {
    let mut fused = Slab::default();
    for (index, slab) in slabs.into_iter().enumerate() {
        if index == 0 {
            fused.above = slab.above;
            fused.head.clone_from(&slab.head);
        } else {
            fused.height += slab.above;
        }
        fused.after = slab.after;
        let (dy, height) = (fused.height, slab.height);
        fused.absorb(slab, dy);
        fused.height += height;
    }
    fused
}

/// Puts `beside` next to the slabs, at their top: the slabs that stand beside it
/// become one that is never cut, those below it stay apart.
pub(crate) fn abreast(slabs: Vec<Slab>, mut beside: Slab, first: Order) -> Vec<Slab> {
    let mut lead = Vec::new();
    let mut rest = Vec::new();
    let mut reach = 0.0;
    for slab in slabs {
        if lead.is_empty() || reach + slab.above < beside.height && rest.is_empty() {
            reach += slab.height + if lead.is_empty() { 0.0 } else { slab.above };
            lead.push(slab);
        } else {
            rest.push(slab);
        }
    }
    let mut lead = if lead.is_empty() { Slab::default() } else { fuse(lead) };
    let height = lead.height.max(beside.height);
    if rest.is_empty() {
        lead.after = beside.after;
    }
    match first {
        Order::Slabs => lead.absorb(beside, 0.0),
        Order::Beside => {
            beside.above = lead.above;
            beside.after = lead.after;
            beside.head = lead.head.take();
            beside.absorb(lead, 0.0);
            lead = beside;
        }
    }
    lead.height = height;
    let mut all = vec![lead];
    all.extend(rest);
    all
}

/// Which of two things abreast is read first.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Order {
    /// The slabs.
    Slabs,
    /// What stands beside them.
    Beside,
}
