//! Pages two by two on sheets that are printed on both sides and folded once, one
//! inside the other (saddle stitch).

use crate::page::{Item, Laid, Link, Owner, Page, Place, Reads, Role};

/// Sides of sheets, in the order in which they are printed: for each side the pages
/// at its left and right, counted from 0. Pages from `count` on are empty.
///
/// The outermost sheet comes first: its front holds the last page and the first.
pub fn sides(count: usize) -> Vec<[usize; 2]> {
    let padded = count.div_ceil(4) * 4;
    let side = |side: usize| {
        let (low, high) = (side, padded - 1 - side);
        // Fronts have the later page at the left, backs the earlier one.
        if side.is_multiple_of(2) { [high, low] } else { [low, high] }
    };
    (0..padded / 2).map(side).collect()
}

/// Sets pages side by side on sheets of a size, larger by what two of them leave.
/// What is read keeps its order, and nothing changes its size.
#[must_use]
pub fn fold(laid: Laid, sheet: (f64, f64)) -> Laid {
    let Laid { mut pages, mut tags, mut outline, mut anchors, .. } = laid;
    let count = pages.len();
    let size = pages.first().map_or((0.0, 0.0), |it| (it.width, it.height));
    // Pages meet in the middle of the sheet, where it is folded.
    let left = [sheet.0 / 2.0 - size.0, sheet.0 / 2.0];
    let down = (sheet.1 - size.1) / 2.0;
    let sides = sides(count);
    let mut places = vec![(0, 0.0); count];
    for (number, side) in sides.iter().enumerate() {
        for (page, x) in side.iter().zip(left) {
            if let Some(place) = places.get_mut(*page) {
                *place = (number, x);
            }
        }
    }
    // The boxes of drawings know their page only by what stands on it.
    for (page, (_, x)) in pages.iter().zip(&places) {
        let mut owners: Vec<_> = page.items.iter().filter_map(owner).collect();
        owners.sort_unstable();
        owners.dedup();
        for id in owners {
            if let Role::Figure { area: Some(area), .. } = &mut tags.get_mut(id).role {
                *area = [area[0] + x, area[1] + down, area[2] + x, area[3] + down];
            }
        }
    }
    let moved = |place: Place| {
        let (page, x) = places[place.page];
        Place { page, x: place.x + x, y: place.y + down }
    };
    outline.iter_mut().for_each(|it| it.place = moved(it.place));
    anchors.values_mut().for_each(|it| *it = moved(*it));
    let folded = sides.iter().map(|side| {
        let mut whole = Page {
            width: sheet.0,
            height: sheet.1,
            filled: 0.0,
            items: Vec::new(),
            links: Vec::new(),
            reads: Vec::new(),
        };
        for (number, x) in side.iter().zip(left) {
            let Some(page) = pages.get_mut(*number) else { continue };
            whole.reads.push(Reads { from: whole.items.len(), rank: *number });
            whole.filled += page.filled / 2.0;
            whole.items.extend(page.items.drain(..).map(|mut it: Item| {
                it.shift(x, down);
                it
            }));
            whole.links.extend(page.links.drain(..).map(|it| shifted(it, x, down)));
        }
        whole
    });
    let pages = folded.collect();
    Laid { pages, tags, outline, anchors, folded: true, ..laid }
}

/// The tag of an item.
fn owner(item: &Item) -> Option<crate::page::TagId> {
    match item.owner {
        Owner::Tag(id) => Some(id),
        Owner::Running | Owner::Decoration => None,
    }
}

fn shifted(link: Link, x: f64, y: f64) -> Link {
    let [left, top, right, bottom] = link.area;
    Link { area: [left + x, top + y, right + x, bottom + y], ..link }
}
