//! Folded booklets: the right pages on the right sides, and nothing changes its size.

use leafwright::layout::{PageSetup, PageSize, Press, lay_out};
use leafwright::page::{Item, Laid, What, fold, sides};
use leafwright::pdf::{self, PdfInfo};
use lopdf::Object;

use crate::page_checks::{faults, texts};
use crate::readback::Read;
use crate::sample_pages;

fn laid(size: PageSize) -> Laid {
    let setup = PageSetup { size, ..PageSetup::default() };
    let mut document = sample_pages::handout();
    // The last section has a ruler of 6 in, which a small page can't hold.
    document.sections.pop();
    lay_out(&mut Press::new(), &document, &setup).value.expect("pages")
}

fn folded(size: PageSize) -> Laid {
    fold(laid(size), size.doubled().expect("a small page").sideways())
}

#[test]
fn sides_are_those_of_a_stapled_booklet() {
    // Fold sheets by hand, number the pages, and unfold them: front and back of each
    // sheet from the outermost inwards (common practice, no source).
    let by_hand: [(usize, &[[usize; 2]]); 3] = [
        (4, &[[4, 1], [2, 3]]),
        (8, &[[8, 1], [2, 7], [6, 3], [4, 5]]),
        (12, &[[12, 1], [2, 11], [10, 3], [4, 9], [8, 5], [6, 7]]),
    ];
    for (pages, wanted) in by_hand {
        let counted = sides(pages).into_iter().map(|it| it.map(|page| page + 1));
        assert_eq!(counted.collect::<Vec<_>>(), wanted);
        // Pages that are missing are added at the end.
        for fewer in pages - 3..pages {
            assert_eq!(sides(fewer), sides(pages));
        }
    }
    assert_eq!(sides(0), [[0; 2]; 0]);
}

#[test]
fn pages_meet_in_the_fold() {
    for (size, width, height, left) in [
        // ANSI letter is twice half-letter; ISO 216: a4 is 297 mm long, two a5 296 mm.
        (PageSize::HalfLetter, 792.0, 612.0, 0.0),
        (PageSize::A5, 297.0 * 72.0 / 25.4, 210.0 * 72.0 / 25.4, 0.5 * 72.0 / 25.4),
    ] {
        let (flat, folded) = (laid(size), folded(size));
        let count = flat.pages.len();
        assert!(count > 2, "a booklet is worth its while");
        let page_width = flat.pages[0].width;
        for (side, pages) in folded.pages.iter().zip(sides(count)) {
            assert!((side.width - width).abs() < 1e-9);
            assert!((side.height - height).abs() < 1e-9);
            let mut items = side.items.iter();
            for (number, x) in pages.iter().zip([left, left + page_width]) {
                let Some(page) = flat.pages.get(*number) else { continue };
                for was in &page.items {
                    let is = items.next().expect("no item is lost");
                    assert!((first(is).0 - first(was).0 - x).abs() < 1e-9);
                    assert!((first(is).1 - first(was).1).abs() < 1e-9);
                }
            }
            assert!(items.next().is_none());
        }
        assert_eq!(faults(&folded), [""; 0]);
    }
}

/// Some point of an item.
fn first(item: &Item) -> (f64, f64) {
    match &item.what {
        What::Text(text) => (text.x, text.y),
        What::Path(path) => path.pieces[0].start,
        What::Window(window) => window.outline.start,
    }
}

#[test]
fn a_booklet_is_read_from_its_first_page_to_its_last() {
    let mut press = Press::new();
    let setup = PageSetup { size: PageSize::HalfLetter, ..PageSetup::default() };
    let flat = lay_out(&mut press, &sample_pages::handout(), &setup).value.unwrap();
    let sheet = PageSize::Letter.sideways();
    let booklet = fold(flat.clone(), sheet);
    let file =
        |laid: &Laid| pdf::write(laid, press.library(), &PdfInfo::default()).unwrap();
    let (flat, booklet) = (Read::new(&file(&flat)), Read::new(&file(&booklet)));
    // The same tree, whatever the order on the sheets.
    assert_eq!(flat.tags(), booklet.tags());
    let catalog = booklet.document.catalog().unwrap();
    let viewing = booklet.dict(catalog.get(b"ViewerPreferences").unwrap());
    let duplex = viewing.get(b"Duplex").and_then(Object::as_name).unwrap();
    // ISO 32000-1, 12.2, table 150.
    assert_eq!(duplex, b"DuplexFlipShortEdge");
    let none = viewing.get(b"PrintScaling").and_then(Object::as_name).unwrap();
    assert_eq!(none, b"None");
}

#[test]
fn the_check_bar_of_a_booklet_is_true() {
    // ISO 32000-1, 8.3.2.3: 72 units are an inch. The handout's bar has 6 in, which
    // a small page can't hold; that of the demos has 3 in and 80 mm.
    let text = std::fs::read_to_string("demo-data/market-morning.yaml").unwrap();
    let document = crate::pages_hold::written("market-morning", &text, "kit");
    let mut press = Press::new();
    for size in [PageSize::HalfLetter, PageSize::A5] {
        let setup = PageSetup { size, ..PageSetup::default() };
        let flat = lay_out(&mut press, &document, &setup).value.expect("pages");
        let booklet = fold(flat, size.doubled().unwrap().sideways());
        assert!(booklet.pages.iter().all(|it| texts(it).next().is_some()));
        let file = pdf::write(&booklet, press.library(), &PdfInfo::default()).unwrap();
        let file = Read::new(&file);
        for bar in [216.0, 80.0 * 72.0 / 25.4] {
            let mut all = (0..file.pages.len()).flat_map(|page| file.segments(page));
            assert!(all.any(|it| (it.length() - bar).abs() < 0.01), "no bar of {bar}");
        }
    }
}
