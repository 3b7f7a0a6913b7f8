//! The file itself, read back by another library.

use leafwright::layout::{PageSetup, PageSize, Press, lay_out};
use leafwright::pdf::{Flavour, PdfInfo, write};

use crate::readback::{Read, Segment, number};
use crate::sample_pages;

fn bytes_of(setup: &PageSetup, info: &PdfInfo) -> Vec<u8> {
    let mut press = Press::new();
    let laid = lay_out(&mut press, &sample_pages::handout(), setup).value.expect("pages");
    write(&laid, press.library(), info).expect("a file")
}

fn read() -> Read {
    Read::new(&bytes_of(&PageSetup::default(), &PdfInfo::default()))
}

#[test]
fn six_inches_of_ruler_are_six_inches() {
    // PDF 32000-2, 8.3.2.3: a unit is 1/72 in. So 6 in are 432 units, 150 mm are
    // 425.197 units.
    let read = read();
    let is = |wanted: f64| move |it: &&Segment| (it.length() - wanted).abs() < 0.01;
    let page = (0..read.pages.len())
        .find(|it| read.segments(*it).iter().any(|it| is(432.0)(&it)))
        .expect("a ruler of 6 in");
    let last = read.segments(page);
    assert_eq!(last.iter().filter(is(432.0)).count(), 1);
    assert_eq!(last.iter().filter(is(150.0 * 72.0 / 25.4)).count(), 1);
    // Ticks of the first: every eighth, 9 units apart.
    let ruler = last.iter().find(is(432.0)).unwrap();
    let (left, y) = ruler.from;
    for eighth in 0..=48 {
        let x = left + 9.0 * f64::from(eighth);
        let tick = |it: &&Segment| {
            (it.from.0 - x).abs() < 0.01 && (it.from.1 - y).abs() < 0.01 && it.to.1 < y
        };
        assert!(last.iter().any(|it| tick(&it)), "no tick at {eighth}/8 in");
    }
}

#[test]
fn drawings_are_to_scale() {
    // ISO 5455: at 1:2 an edge of 8 in is 288 units long, one of 5 1/2 in 198.
    let read = read();
    let all: Vec<_> = (0..read.pages.len()).flat_map(|it| read.segments(it)).collect();
    for wanted in [288.0, 198.0] {
        let found = all.iter().filter(|it| (it.length() - wanted).abs() < 0.01).count();
        assert!(found >= 2, "no edge of {wanted}");
    }
    assert!(all.iter().any(|it| it.dashed), "folds are dashed");
}

#[test]
fn pages_are_as_large_as_their_paper() {
    // ISO 216 and ANSI Y14.1, in units of 1/72 in.
    let mm = |it: f64| it * 72.0 / 25.4;
    for (size, width, height) in [
        (PageSize::Letter, 612.0, 792.0),
        (PageSize::A4, mm(210.0), mm(297.0)),
        (PageSize::HalfLetter, 396.0, 612.0),
        (PageSize::A5, mm(148.0), mm(210.0)),
    ] {
        let setup = PageSetup { size, ..PageSetup::default() };
        let read = Read::new(&bytes_of(&setup, &PdfInfo::default()));
        for page in 0..read.pages.len() {
            let [left, bottom, right, top] = read.media_box(page);
            assert_eq!((left, bottom), (0.0, 0.0));
            assert!(
                (right - width).abs() < 0.001 && (top - height).abs() < 0.001,
                "{size:?}"
            );
        }
    }
}

#[test]
fn every_font_is_an_embedded_subset() {
    let read = read();
    let fonts = read.fonts();
    assert_eq!(fonts.len(), 5);
    for (name, descriptor) in fonts {
        let (tag, face) = name.split_once('+').expect("a subset's tag");
        assert!(
            tag.len() == 6 && tag.bytes().all(|it| it.is_ascii_uppercase()),
            "{name}"
        );
        assert!(face.starts_with("Source"), "{name}");
        assert!(descriptor.get(b"FontFile2").is_ok(), "{name}");
        assert!(descriptor.get(b"CIDSet").is_ok(), "{name}");
    }
}

#[test]
fn text_is_read_in_order_and_with_its_fractions() {
    let read = read();
    let first = read.text(0);
    let order = [
        "Meadow Days",
        "for an evening at the table",
        "Thank you",
        "efficient fluffy offices. Read on at the cut plan, where every piece has a letter",
        "a label of 2 1/2 × 1 1/4 in; keep",
        "CAUTION",
        "cuts skin",
        "What you need",
        "Count What Note",
        "note bases, 4 1/4 × 5 1/2 in",
    ];
    let mut from = 0;
    for words in order {
        let at = first[from..].find(words);
        from += at.unwrap_or_else(|| panic!("no `{words}` in order in: {first}"));
    }
    let all: Vec<_> = (0..read.pages.len()).map(|it| read.text(it)).collect();
    let all = all.join(" ");
    assert!(all.contains("1 Lay the sheet with the rows upright"), "{all}");
    let third = "3 Set the edge at 1 1/4 in and cut twice: two ribbons. 1 1/4 in, twice";
    assert!(all.contains(third), "{all}");
}

#[test]
fn the_file_says_what_it_is() {
    let info = PdfInfo { author: Some("The harvest table".into()), ..PdfInfo::default() };
    let read = Read::new(&bytes_of(&PageSetup::default(), &info));
    let catalog = read.document.catalog().unwrap();
    assert_eq!(catalog.get(b"Lang").unwrap().as_str().unwrap(), b"en");
    let preferences = read.dict(catalog.get(b"ViewerPreferences").unwrap());
    assert_eq!(preferences.get(b"PrintScaling").unwrap().as_name().unwrap(), b"None");
    assert!(preferences.get(b"DisplayDocTitle").unwrap().as_bool().unwrap());
    let marked = read.dict(catalog.get(b"MarkInfo").unwrap());
    assert!(marked.get(b"Marked").unwrap().as_bool().unwrap());
    let about = read.dict(read.document.trailer.get(b"Info").unwrap());
    assert_eq!(about.get(b"Title").unwrap().as_str().unwrap(), b"Meadow Days");
    assert_eq!(about.get(b"Author").unwrap().as_str().unwrap(), b"The harvest table");
    let metadata = catalog.get(b"Metadata").unwrap().as_reference().unwrap();
    let xmp = read.document.get_object(metadata).unwrap().as_stream().unwrap();
    let xmp = String::from_utf8(xmp.content.clone()).unwrap();
    for line in [
        "<pdfuaid:part>1</pdfuaid:part>",
        "<pdfaid:part>2</pdfaid:part>",
        "<pdfaid:conformance>A</pdfaid:conformance>",
        ">Meadow Days</rdf:li>",
        "<rdf:li>The harvest table</rdf:li>",
    ] {
        assert!(xmp.contains(line), "no {line}");
    }
}

#[test]
fn everything_drawn_is_tagged_or_an_artifact() {
    let read = read();
    for page in 0..read.pages.len() {
        let drawn = read.marked(page);
        assert!(
            drawn.iter().any(|it| it.1.is_some())
                && drawn.iter().any(|it| it.1.is_none())
        );
    }
}

#[test]
fn tags_tell_what_is_what() {
    let tags = read().tags();
    for (kind, least) in [
        ("H1", 5),
        ("H2", 4),
        ("H3", 1),
        ("P", 20),
        ("L", 7),
        ("LI", 20),
        ("Lbl", 20),
        ("LBody", 20),
        ("Table", 1),
        ("TR", 6),
        ("TH", 4),
        ("TD", 20),
        ("Figure", 13),
        ("Caption", 9),
        ("Link", 1),
    ] {
        let count = tags.lines().filter(|it| it.trim() == kind).count();
        assert!(count >= least, "{count} of {kind}:\n{tags}");
    }
    // Matterhorn Protocol 14-003: no level is skipped.
    let levels =
        tags.lines().filter_map(|it| it.trim().strip_prefix('H')?.parse::<u8>().ok());
    let mut last = 0;
    for level in levels {
        assert!(level <= last + 1, "H{level} after H{last}");
        last = level;
    }
}

#[test]
fn every_figure_has_an_alternative_and_a_box() {
    let read = read();
    let mut figures = 0;
    for object in read.document.objects.values() {
        let Ok(dict) = object.as_dict() else { continue };
        if dict.get(b"S").and_then(lopdf::Object::as_name).ok() != Some(b"Figure") {
            continue;
        }
        figures += 1;
        assert!(!dict.get(b"Alt").unwrap().as_str().unwrap().is_empty());
        let layout = read.dict(dict.get(b"A").unwrap());
        let edges = layout.get(b"BBox").unwrap().as_array().unwrap();
        let edges: Vec<_> = edges.iter().map(number).collect();
        assert!(edges[0] < edges[2] && edges[1] < edges[3]);
        assert!(edges.iter().all(|it| (0.0..=792.0).contains(it)), "{edges:?}");
    }
    assert!(figures >= 13);
}

#[test]
fn bookmarks_are_nested_and_links_lead_somewhere() {
    let read = read();
    let contents = read.document.get_toc().expect("bookmarks");
    let titles: Vec<_> =
        contents.toc.iter().map(|it| (it.level, it.title.as_str())).collect();
    assert!(titles.contains(&(1, "Make the cards")), "{titles:?}");
    assert!(titles.contains(&(2, "Thank you")), "{titles:?}");
    let mut links = 0;
    for page in &read.pages {
        for annotation in read.document.get_page_annotations(*page).unwrap() {
            let to = annotation.get(b"Dest").unwrap().as_array().unwrap();
            assert!(read.pages.contains(&to[0].as_reference().unwrap()));
            assert!(!annotation.get(b"Contents").unwrap().as_str().unwrap().is_empty());
            assert_eq!(annotation.get(b"F").unwrap().as_i64().unwrap(), 4);
            links += 1;
        }
    }
    assert!(links >= 1);
}

#[test]
fn the_same_pages_give_the_same_bytes() {
    for flavour in [Flavour::Tagged, Flavour::Archive1b] {
        let info = PdfInfo { flavour, ..PdfInfo::default() };
        let once = bytes_of(&PageSetup::default(), &info);
        let again = bytes_of(&PageSetup::default(), &info);
        assert!(once == again, "{flavour:?}");
        let gray = PageSetup { gray: true, ..PageSetup::default() };
        assert!(once != bytes_of(&gray, &info));
    }
}

#[test]
fn gray_pages_have_no_colour() {
    let setup = PageSetup { gray: true, ..PageSetup::default() };
    let read = Read::new(&bytes_of(&setup, &PdfInfo::default()));
    for page in &read.pages {
        let content = read.document.get_page_content(*page);
        for operation in lopdf::content::Content::decode(&content).unwrap().operations {
            if matches!(operation.operator.as_str(), "rg" | "RG") {
                let levels: Vec<_> = operation.operands.iter().map(number).collect();
                assert!(levels[0] == levels[1] && levels[1] == levels[2], "{levels:?}");
            }
        }
    }
}

#[test]
fn the_archive_flavour_is_plain() {
    let info = PdfInfo { flavour: Flavour::Archive1b, ..PdfInfo::default() };
    let bytes = bytes_of(&PageSetup::default(), &info);
    assert!(bytes.starts_with(b"%PDF-1.4"));
    let holds = |words: &[u8]| bytes.windows(words.len()).any(|it| it == words);
    assert!(holds(b"<pdfaid:part>1<") && !holds(b"/ObjStm") && holds(b"\nxref"));
}

#[test]
fn a_run_to_the_left_is_read_as_it_is_said() {
    // ISO 32000-1, 14.8.2.3.3: reading order is that of the content, wherever glyphs
    // stand. The title, set from right to left by hand.
    let mut press = Press::new();
    let setup = PageSetup::default();
    let mut laid =
        lay_out(&mut press, &sample_pages::handout(), &setup).value.expect("pages");
    let title = laid.pages[0].items.iter_mut().find_map(|it| match &mut it.what {
        leafwright::page::What::Text(text) => Some(text),
        leafwright::page::What::Path(_) | leafwright::page::What::Window(_) => None,
    });
    let title = title.expect("a title");
    let run = leafwright::page::Run::clone(&title.run);
    let ends = run.glyphs.iter().skip(1).map(|it| it.x).chain([run.advance]);
    let ends: Vec<_> = ends.collect();
    let mut glyphs = run.glyphs.clone();
    for (glyph, end) in glyphs.iter_mut().zip(ends) {
        glyph.x = run.advance - end;
    }
    glyphs.reverse();
    title.run = std::sync::Arc::new(leafwright::page::Run {
        glyphs,
        leftwards: true,
        ..run.clone()
    });
    let file = write(&laid, press.library(), &PdfInfo::default()).expect("a file");
    assert!(Read::new(&file).text(0).starts_with("Meadow Days"));
}
