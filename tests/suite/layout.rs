//! Where things stand on pages: nothing overlaps, nothing is lost, pages are full.

use std::collections::BTreeMap;

use leafwright::document::Block;
use leafwright::document::Document;
use leafwright::document::Inline;
use leafwright::document::Tone;
use leafwright::layout::{PageSetup, PageSize, Press, lay_out};
use leafwright::page::*;

use crate::drawings;
use crate::sample_pages;

const SIZES: [PageSize; 4] =
    [PageSize::Letter, PageSize::A4, PageSize::HalfLetter, PageSize::A5];

fn laid(document: &Document, size: PageSize, large_print: bool) -> Laid {
    let setup = PageSetup { size, large_print, gray: false };
    lay_out(&mut Press::new(), document, &setup).value.expect("pages")
}

/// The box that a run's letters take up: from the height of capitals to below the
/// line, as far as its words go.
fn ink(text: &Text) -> [f64; 4] {
    let run = &text.run;
    let trimmed = run.text.trim_end().len();
    let last = run.glyphs.iter().rposition(|it| it.text.start < trimmed);
    let end =
        last.map_or(0.0, |it| run.glyphs.get(it + 1).map_or(run.advance, |it| it.x));
    let (up, down) = (0.66 * run.size, 0.2 * run.size);
    if text.upwards {
        [text.x - up, text.y - end, text.x + down, text.y]
    } else {
        [text.x, text.y - up, text.x + end, text.y + down]
    }
}

fn texts(page: &Page) -> Vec<&Text> {
    let texts = page.items.iter().filter_map(|it| match &it.what {
        What::Text(text) => Some(text),
        What::Path(_) | What::Window(_) => None,
    });
    texts.filter(|it| !it.run.text.trim().is_empty()).collect()
}

fn said(page: &Page) -> String {
    let all: Vec<_> = texts(page).iter().map(|it| it.run.text.clone()).collect();
    all.join(" ").split_whitespace().collect::<Vec<_>>().join(" ")
}

#[test]
fn words_never_overlap_and_stay_a_quarter_inch_from_the_edges() {
    for size in SIZES {
        for large_print in [false, true] {
            for document in [sample_pages::handout(), sample_pages::crowded()] {
                let wide = matches!(size, PageSize::Letter | PageSize::A4);
                for (number, page) in
                    laid(&document, size, large_print).pages.iter().enumerate()
                {
                    let texts = texts(page);
                    let boxes: Vec<_> = texts.iter().map(|it| ink(it)).collect();
                    for (at, one) in boxes.iter().enumerate() {
                        let words = &texts[at].run.text;
                        let place =
                            format!("{size:?} {large_print} page {number}: {words}");
                        // A ruler of 6 in is too long for half a page, which is said.
                        if wide {
                            assert!(
                                one[0] >= 18.0 && one[2] <= page.width - 18.0,
                                "{place}"
                            );
                        }
                        assert!(
                            one[1] >= 18.0 && one[3] <= page.height - 18.0,
                            "{place}"
                        );
                        for (other, two) in boxes.iter().enumerate().skip(at + 1) {
                            let clear = one[2] <= two[0] + 0.6
                                || two[2] <= one[0] + 0.6
                                || one[3] <= two[1] + 0.6
                                || two[3] <= one[1] + 0.6;
                            assert!(clear, "{place} over {}", texts[other].run.text);
                        }
                    }
                }
            }
        }
    }
}

#[test]
fn no_words_are_smaller_than_nine_points() {
    for document in [sample_pages::handout(), sample_pages::crowded()] {
        for size in SIZES {
            for page in &laid(&document, size, false).pages {
                assert!(texts(page).iter().all(|it| it.run.size >= 9.0));
            }
            // UKAAF G003: large print is 16 pt and more; labels may be smaller.
            for page in &laid(&document, size, true).pages {
                assert!(texts(page).iter().all(|it| it.run.size >= 12.9));
            }
        }
    }
}

#[test]
fn no_page_but_the_last_is_half_empty() {
    for size in SIZES {
        let laid = laid(&sample_pages::long(8), size, false);
        let (_, all_but_last) = laid.pages.split_last().unwrap();
        assert!(all_but_last.len() > 20);
        for (number, page) in all_but_last.iter().enumerate() {
            assert!(page.filled >= 0.5, "{size:?} page {number}: {:.2}", page.filled);
        }
        let mean = all_but_last.iter().map(|it| it.filled).sum::<f64>();
        let mean = mean / all_but_last.len() as f64;
        assert!(mean > 0.8, "{size:?}: {mean:.2}");
    }
}

#[test]
fn a_step_is_never_parted_from_its_drawing() {
    for size in SIZES {
        for document in [sample_pages::long(5), sample_pages::crowded()] {
            let laid = laid(&document, size, false);
            let page_of = |wanted: TagId| {
                let holds = |tag: TagId| {
                    let mut tag = tag;
                    while tag != wanted && tag != TagId::ROOT {
                        tag = laid.tags.get(tag).parent;
                    }
                    tag == wanted
                };
                let mut pages = Vec::new();
                for (number, page) in laid.pages.iter().enumerate() {
                    let own =
                        |it: &Item| matches!(it.owner, Owner::Tag(tag) if holds(tag));
                    if page.items.iter().any(own) {
                        pages.push(number);
                    }
                }
                pages
            };
            let mut steps = 0;
            for (id, tag) in laid.tags.all() {
                if !matches!(tag.role, Role::Figure { .. }) {
                    continue;
                }
                // A drawing in the body of an entry is the drawing of a step.
                let body = laid.tags.get(tag.parent);
                if body.role == Role::Body && !page_of(id).is_empty() {
                    steps += 1;
                    assert_eq!(page_of(body.parent).len(), 1, "{size:?}");
                }
            }
            assert!(steps > 0);
        }
    }
}

#[test]
fn all_words_of_a_document_are_printed() {
    for size in SIZES {
        let laid = laid(&sample_pages::handout(), size, false);
        let all: String = laid.pages.iter().map(|it| said(it) + " ").collect();
        for words in [
            "Meadow Days",
            "efficient fluffy offices",
            "CAUTION",
            "strip of oat cardstock, 2 3/4 × 11 in",
            "Trimmer that takes 12 in",
            "Scale 1:",
            "Halve what is left",
            "With love",
            "Print at 100 %",
            "before you post a raised card",
        ] {
            let spread = all.replace(char::is_whitespace, "");
            assert!(spread.contains(&words.replace(' ', "")), "{size:?}: {words}");
        }
    }
}

#[test]
fn foots_count_the_pages() {
    let laid = laid(&sample_pages::handout(), PageSize::Letter, false);
    let count = laid.pages.len();
    for (number, page) in laid.pages.iter().enumerate() {
        assert!(said(page).ends_with(&format!("Page {} of {count}", number + 1)));
    }
}

#[test]
fn heads_of_tables_come_again() {
    let mut document = sample_pages::handout();
    document.sections[1].blocks[0] = Block::Table(sample_pages::supplies(90));
    let laid = laid(&document, PageSize::Letter, false);
    let heads =
        laid.pages.iter().filter(|it| said(it).contains("Count What Note")).count();
    let again = laid.pages.iter().filter(|it| said(it).contains("continued")).count();
    assert!(heads >= 3 && again == heads - 1, "{heads} heads, {again} again");
}

#[test]
fn no_line_of_a_paragraph_is_left_alone() {
    let paragraph = |index: usize| {
        let words =
            "Lay the strip on the card and rub it down. ".repeat(60 + index % 9 * 7);
        Block::Paragraph(Tone::Body, vec![Inline::plain(words.as_str())])
    };
    let mut document = sample_pages::handout();
    document.sections.truncate(1);
    document.sections[0].blocks = (0..20).map(paragraph).collect();
    for size in SIZES {
        let laid = laid(&document, size, false);
        // Lines of each paragraph, page by page; lines are told by their height.
        let mut lines: BTreeMap<(TagId, usize), Vec<String>> = BTreeMap::new();
        for (number, page) in laid.pages.iter().enumerate() {
            for item in &page.items {
                if let (Owner::Tag(tag), What::Text(text)) = (item.owner, &item.what) {
                    let line = format!("{:.1}", text.y);
                    lines.entry((tag, number)).or_default().push(line);
                }
            }
        }
        lines.values_mut().for_each(|it| it.dedup());
        let mut parted = 0;
        for ((tag, number), here) in &lines {
            let Some(there) = lines.get(&(*tag, number + 1)) else { continue };
            parted += 1;
            assert!(here.len() > 1 && there.len() > 1, "{size:?}, page {}", number + 1);
        }
        assert!(parted > 0, "{size:?}: no paragraph goes on over a page");
    }
}

#[test]
fn headings_are_followed_by_something() {
    for size in SIZES {
        let laid = laid(&sample_pages::long(6), size, false);
        for mark in &laid.outline {
            let page = &laid.pages[mark.place.page];
            let below =
                texts(page).iter().filter(|it| it.y > mark.place.y + 20.0).count();
            // The foot alone is no text.
            assert!(below > 2, "{size:?}: {}", mark.title);
        }
    }
}

#[test]
fn a_character_that_no_face_has_is_an_error_with_its_place() {
    let mut document = sample_pages::handout();
    let site = leafwright::source::Site { file: 0, start: 7, end: 9 };
    document.sections[0].title =
        vec![Inline { site: Some(site), ..Inline::plain("Meadow \u{624b} Days") }];
    let outcome = lay_out(&mut Press::new(), &document, &PageSetup::default());
    assert!(outcome.has_errors());
    let note = &outcome.notes[0];
    assert_eq!(note.rule.name, "unprintable-character");
    assert_eq!((note.site.start, note.site.end), (7, 9));
    assert!(note.message.contains('\u{624b}') && note.message.contains("U+624B"));
}

#[test]
fn a_drawing_at_true_size_that_does_not_fit_is_refused() {
    let setup = PageSetup { size: PageSize::A5, ..PageSetup::default() };
    let outcome = lay_out(&mut Press::new(), &sample_pages::handout(), &setup);
    assert!(outcome.notes.iter().any(|it| it.rule.name == "drawing-larger-than-page"));
    let outcome =
        lay_out(&mut Press::new(), &sample_pages::handout(), &PageSetup::default());
    assert_eq!(outcome.notes, []);
}

#[test]
fn drawings_that_share_a_scale_have_one() {
    // The four fronts of the first page are two sizes but one scale: 1:5 or 1:2.
    let laid = laid(&sample_pages::handout(), PageSize::Letter, false);
    let first = said(&laid.pages[0]);
    assert_eq!(first.matches("Scale 1:").count(), 4);
    assert!(
        first.matches("Scale 1:5").count() == 4
            || first.matches("Scale 1:2").count() == 4
    );
}

#[test]
fn odd_words_are_set_or_refused_but_never_panic() {
    let mut press = Press::new();
    let long = "x".repeat(3_000);
    for words in [
        "",
        " ",
        "\u{a0}\u{a0}",
        "\n\n\t\u{0}\u{2028}",
        "a\u{ad}b\u{200b}c\u{200d}d",
        "e\u{301}\u{323}\u{302} o\u{308}",
        "\u{5e9}\u{5dc}\u{5d5}\u{5dd} 1/2 abc",
        "\u{1f600} \u{1f469}\u{200d}\u{1f469}\u{200d}\u{1f467}",
        "1/ /1 1/2/3 1/0 999/1000 12 1/2 3/4",
        "ffi ffl fj Ωμέγα Ѣ Ā №",
        &long,
    ] {
        for size in SIZES {
            let setup = PageSetup { size, ..PageSetup::default() };
            let mut document = sample_pages::handout();
            document.title = words.into();
            document.foot.left = words.into();
            let mut drawing = drawings::cut_plan();
            for mark in &mut drawing.marks {
                use leafwright::document::Mark::{CutNumber, Dimension, Name};
                match mark {
                    Name { short, long, .. } => {
                        *short = words.into();
                        *long = Some(words.into());
                    }
                    Dimension { text, .. } | CutNumber { text, .. }
                        if words.len() < 99 =>
                    {
                        *text = words.into();
                    }
                    _ => {}
                }
            }
            let section = &mut document.sections[0];
            section.title = sample_pages::words(words);
            section.blocks.push(Block::Figure(sample_pages::figure(drawing, words)));
            let mut table = sample_pages::supplies(3);
            table.rows[1][3] = sample_pages::words(words);
            section.blocks.push(Block::Table(table));
            let laid = lay_out(&mut press, &document, &setup);
            let fits = laid.value.expect("pages");
            let info = leafwright::pdf::PdfInfo::default();
            leafwright::pdf::write(&fits, press.library(), &info).expect("a file");
        }
    }
}

#[test]
fn a_document_that_says_nothing_has_a_page() {
    let document = Document { sections: Vec::new(), ..sample_pages::handout() };
    assert_eq!(laid(&document, PageSize::Letter, false).pages.len(), 1);
}

#[test]
fn pages_can_be_handed_to_another_thread() {
    fn check<T: Send + Sync>() {}
    check::<Laid>();
}

#[test]
fn a_press_keeps_nothing_that_shows() {
    let mut press = Press::new();
    let setup = PageSetup::default();
    let fresh =
        lay_out(&mut Press::new(), &sample_pages::handout(), &setup).value.unwrap();
    lay_out(&mut press, &sample_pages::crowded(), &setup);
    let used = lay_out(&mut press, &sample_pages::handout(), &setup).value.unwrap();
    assert_eq!(format!("{:?}", fresh.pages), format!("{:?}", used.pages));
}

#[test]
fn text_stands_out_from_its_paper() {
    // WCAG 2.2, 1.4.6: 7 : 1 for text; the accent is large or strong: 4.5 : 1.
    assert!(Ink::TEXT.contrast(Ink::PAPER) >= 7.0);
    assert!(Ink::QUIET.contrast(Ink::PAPER) >= 7.0);
    assert!(Ink::ACCENT.contrast(Ink::PAPER) >= 4.5);
    // WCAG 2.2, 1.4.11: 3 : 1 for lines of a diagram.
    assert!(Ink::RULE.contrast(Ink::PAPER) >= 3.0);
    // A mid-grey, apart from both black and white.
    let gray = Ink::ACCENT.gray();
    assert!(gray.contrast(Ink::PAPER) >= 4.5 && gray.contrast(Ink::TEXT) >= 2.0);
}

#[test]
fn contrast_is_that_of_wcag() {
    // W3C, Web Content Accessibility Guidelines 2.2: definitions of contrast ratio
    // and relative luminance, worked out to six places; the last two pairs are test
    // values of open colour libraries.
    let white = [0xff, 0xff, 0xff];
    let pairs = [
        ([0x00, 0x00, 0x00], white, 21.0),
        ([0x76, 0x76, 0x76], white, 4.542_225),
        ([0x77, 0x77, 0x77], white, 4.478_089),
        ([0x59, 0x59, 0x59], white, 7.004_729),
        ([0x94, 0x94, 0x94], white, 3.033_470),
        ([0x95, 0x95, 0x95], white, 2.995_346),
        ([0xff, 0x00, 0x00], white, 3.998_477),
        ([0x00, 0x00, 0xff], white, 8.592_471),
        ([0x00, 0x80, 0x00], white, 5.137_403),
        ([0xff, 0xff, 0x00], white, 1.073_839),
        ([0xff, 0x81, 0x00], [0x64, 0x00, 0x3a], 5.235_370),
        ([0xe5, 0xe5, 0xe5], [0xaa, 0xbb, 0x00], 1.698_093),
    ];
    for (one, two, ratio) in pairs {
        approx::assert_abs_diff_eq!(Ink(one).contrast(Ink(two)), ratio, epsilon = 1e-6);
    }
    approx::assert_abs_diff_eq!(
        Ink([0x76; 3]).luminance(),
        0.181_164_244_250,
        epsilon = 1e-12
    );
    let orange = Ink([0xff, 0x81, 0x00]).luminance();
    approx::assert_abs_diff_eq!(orange, 0.369_605_138_046, epsilon = 1e-12);
}
