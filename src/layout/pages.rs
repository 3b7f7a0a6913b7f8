//! Slabs onto pages: the breaks that cost least over a whole run, found by dynamic
//! programming.

use std::collections::BTreeMap;

use crate::document::Inline;
use crate::document::Section;
use crate::page::Bookmark;
use crate::page::Item;
use crate::page::Owner;
use crate::page::Page;
use crate::page::Place;
use crate::page::Role;
use crate::page::TagId;

use super::blocks::plain;
use super::setter::{Setter, Stand};
use super::slab::{Mark, Slab};
use super::text::widths;

/// What one more page costs: paper is what the reader pays with.
const PAGE: f64 = 3_000.0;
/// What an empty page would cost; grows with the square of what is empty.
const EMPTY: f64 = 1_500.0;
/// What a page costs that is not even half full.
const SPARSE: f64 = 4_000.0;
/// What a break costs that was forbidden, where nothing else is possible.
const FORBIDDEN: f64 = 1e7;

/// Finds where the pages of a run start: indices of slabs, the first being 0.
pub(crate) fn breaks(slabs: &[Slab], height: f64) -> Vec<usize> {
    let count = slabs.len();
    // Cheapest way to have set all slabs before an index, and where its last page
    // starts.
    let mut best = vec![(f64::INFINITY, 0_usize); count + 1];
    best[0].0 = 0.0;
    for start in 0..count {
        let (so_far, _) = best[start];
        if so_far.is_infinite() {
            continue;
        }
        let mut used = slabs[start].head.as_ref().map_or(0.0, |it| it.height);
        for end in start + 1..=count {
            let slab = &slabs[end - 1];
            used += slab.height + if end - 1 == start { 0.0 } else { slab.above };
            // One slab alone is set however high it is: there is no better place.
            if used > height + 0.01 && end > start + 1 {
                break;
            }
            let cost = so_far + PAGE + price(slab.after, used / height, end == count);
            if cost < best[end].0 {
                best[end] = (cost, start);
            }
        }
    }
    let mut starts = Vec::new();
    let mut end = count;
    while end > 0 {
        end = best[end].1;
        starts.push(end);
    }
    starts.reverse();
    starts
}

/// What it costs to end a page here.
fn price(after: f64, filled: f64, last: bool) -> f64 {
    if last {
        // The last page ends where the text ends; a handful of lines on a page of
        // their own is a pity all the same.
        return if filled < 0.12 { 300.0 } else { 0.0 };
    }
    let empty = (1.0 - filled).max(0.0);
    let sparse = if filled < 0.5 { SPARSE } else { 0.0 };
    after.min(FORBIDDEN) + EMPTY * empty * empty + sparse
}

/// Pages that are being filled.
#[derive(Default)]
pub(crate) struct Pages {
    pub(crate) pages: Vec<Page>,
    pub(crate) outline: Vec<Bookmark>,
    pub(crate) anchors: BTreeMap<String, Place>,
}

impl Pages {
    /// Sets a run of slabs on pages of its own.
    pub(crate) fn fill(&mut self, slabs: Vec<Slab>, setter: &mut Setter<'_>) {
        let theme = setter.theme;
        let mut starts = breaks(&slabs, theme.height());
        starts.push(slabs.len());
        let mut slabs = slabs.into_iter();
        for pair in starts.windows(2) {
            let mut page = Page {
                width: theme.page.0,
                height: theme.page.1,
                filled: 0.0,
                items: Vec::new(),
                links: Vec::new(),
                reads: Vec::new(),
            };
            let mut y = theme.top;
            for index in pair[0]..pair[1] {
                let slab = slabs.next().expect("every slab stands on one page");
                if index == pair[0] {
                    if let Some(head) = &slab.head {
                        self.put(&mut page, Slab::clone(head), y, setter);
                        y += head.height;
                    }
                } else {
                    y += slab.above;
                }
                let height = slab.height;
                self.put(&mut page, slab, y, setter);
                y += height;
            }
            page.filled = (y - theme.top) / theme.height();
            self.pages.push(page);
        }
    }

    /// Puts one slab on a page, its top at `y`.
    fn put(&mut self, page: &mut Page, slab: Slab, y: f64, setter: &mut Setter<'_>) {
        let number = self.pages.len();
        for mark in &slab.marks {
            let place = Place { page: number, x: setter.theme.left, y };
            match mark {
                Mark::Anchor(name) => {
                    self.anchors.entry(name.clone()).or_insert(place);
                }
                Mark::Heading(level, title) => {
                    let title = title.clone();
                    self.outline.push(Bookmark { level: *level, title, place });
                }
            }
        }
        let mut whole = Slab::default();
        whole.absorb(slab, y);
        for (tag, area) in whole.figures {
            if let Role::Figure { area: slot, .. } = &mut setter.tags.get_mut(tag).role {
                *slot = Some(area);
            }
        }
        page.items.append(&mut whole.items);
        page.links.append(&mut whole.links);
    }

    /// Makes every link say where it leads, for those who hear it on its own.
    pub(crate) fn name_links(&mut self, sections: &[Section]) {
        for link in self.pages.iter_mut().flat_map(|it| &mut it.links) {
            let section = sections.iter().find(|it| it.anchor == link.to);
            let title = section.map(|it| plain(&it.title)).unwrap_or_default();
            if !title.is_empty() && title != link.says {
                link.says = format!("{}: {title}", link.says);
            }
        }
    }

    /// Writes the foot of every page.
    pub(crate) fn foot(&mut self, setter: &mut Setter<'_>) {
        let theme = setter.theme;
        let count = self.pages.len();
        let phrases = setter.phrases;
        for (index, page) in self.pages.iter_mut().enumerate() {
            let number = phrases
                .page_of
                .replace("{page}", &(index + 1).to_string())
                .replace("{pages}", &count.to_string());
            let width = theme.right - theme.left;
            let sides =
                [(phrases.left.as_str(), Stand::Start), (number.as_str(), Stand::End)];
            let voice = theme.foot_voice;
            // What the number takes, and some air; never more than half.
            let words = [Inline::plain(number.as_str())];
            let reserved = match widths(setter.press, &words, &voice).0 {
                0.0 => 0.0,
                taken => (taken + 2.0 * voice.size).min(width / 2.0),
            };
            for (words, stand) in sides {
                let words = [Inline::plain(words)];
                let room = if stand == Stand::Start { width - reserved } else { width };
                let set =
                    setter.stand(&words, &voice, TagId::ROOT, theme.left, room, stand);
                // A long title is cut rather than run into the page number.
                let Some(line) = set.into_iter().next() else { continue };
                let top = theme.foot - voice.baseline();
                page.items.extend(line.items.into_iter().map(|mut item: Item| {
                    item.shift(0.0, top);
                    item.owner = Owner::Running;
                    item
                }));
            }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::breaks;
    use crate::layout::slab::{NEVER, Slab};

    fn slabs(heights: &[f64]) -> Vec<Slab> {
        heights.iter().map(|it| Slab::blank(*it)).collect()
    }

    #[test]
    fn no_more_pages_than_it_takes() {
        assert_eq!(breaks(&slabs(&[40.0; 5]), 100.0), [0, 2, 4]);
        assert_eq!(breaks(&slabs(&[100.0]), 100.0), [0]);
        assert_eq!(breaks(&[], 100.0), [] as [usize; 0]);
    }

    #[test]
    fn what_belongs_together_stays_together() {
        let mut run = slabs(&[30.0, 30.0, 20.0, 30.0, 30.0]);
        run[2].after = NEVER;
        // First fit would break after the third, which the fourth must not leave.
        assert_eq!(breaks(&run, 100.0), [0, 2]);
    }

    #[test]
    fn a_slab_that_is_too_high_gets_a_page() {
        assert_eq!(breaks(&slabs(&[30.0, 300.0, 30.0]), 100.0), [0, 1, 2]);
    }
}
