//! From a document to finished pages: words are shaped once, blocks become slabs,
//! slabs are set on pages where the breaks cost least.

mod around;
mod blocks;
mod caution;
mod drawing;
mod extents;
mod figure;
mod pages;
mod press;
mod setter;
mod slab;
mod steps;
mod table;
mod text;
mod theme;
mod tiles;

pub use press::Press;
pub use theme::{PageSetup, PageSize};

use std::sync::Arc;

use crate::diag::Outcome;
use crate::document::Document;
use crate::document::Start;
use crate::page::Laid;

use pages::Pages;
use setter::{Frame, Setter};
use theme::Theme;

/// Lays a document out on pages.
///
/// The same document on the same press gives the same pages, whatever else the
/// press was used for.
pub fn lay_out(
    press: &mut Press,
    document: &Document,
    setup: &PageSetup,
) -> Outcome<Laid> {
    let theme = Theme::new(setup);
    let mut setter = Setter::new(press, theme, &document.foot);
    let left = theme.text_left();
    let frame = Frame {
        left,
        width: theme.right - left,
        margin: (theme.margin > 0.0).then_some((theme.left, theme.margin)),
        wide: (theme.left, theme.right - theme.left),
    };
    // Drawings that share a scale need to know each other before any is drawn.
    for section in &document.sections {
        setter.share_scales(&section.blocks, frame);
    }
    // Sections that follow one another are one run of slabs.
    let mut pages = Pages::default();
    let mut run = Vec::new();
    for (index, section) in document.sections.iter().enumerate() {
        if section.start == Start::NewPage && !run.is_empty() {
            pages.fill(std::mem::take(&mut run), &mut setter);
        }
        run.extend(setter.section(section, index == 0, frame));
    }
    if !run.is_empty() || pages.pages.is_empty() {
        if run.is_empty() {
            // Even a document that says nothing has a page.
            run.push(slab::Slab::default());
        }
        pages.fill(run, &mut setter);
    }
    pages.foot(&mut setter);
    pages.name_links(&document.sections);
    let Pages { pages, outline, anchors } = pages;
    let Setter { tags, notes, .. } = setter;
    let laid = Laid {
        title: document.title.clone(),
        language: document.language.clone(),
        pages,
        tags,
        outline,
        anchors,
        pictures: document
            .pictures
            .iter()
            .map(|it| if setup.gray { Arc::new(it.gray()) } else { Arc::clone(it) })
            .collect(),
        folded: false,
    };
    Outcome { value: Some(laid), notes }
}
