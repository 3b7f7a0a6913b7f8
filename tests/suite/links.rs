//! Letters of pieces lead to where the piece is drawn, read back from the file.

use std::collections::BTreeMap;

use leafwright::handout::Options;
use leafwright::layout::{PageSetup, PageSize, Press, lay_out};
use leafwright::pdf::{self, PdfInfo};
use lopdf::{Dictionary, Object};

use crate::packing_lists::packet;
use crate::readback::Read;

/// A link of a file: the page it stands on, what it says, and the page it leads to.
struct Link {
    on: usize,
    says: String,
    to: usize,
    annotation: Dictionary,
}

fn links(demo: &str, reader: &str) -> (Read, Vec<Link>) {
    let (_, _, document) = packet(demo, reader, Options::default());
    let mut press = Press::new();
    let setup = PageSetup { size: PageSize::HalfLetter, ..PageSetup::default() };
    let laid = lay_out(&mut press, &document, &setup).value.expect("pages");
    let bytes = pdf::write(&laid, press.library(), &PdfInfo::default()).expect("bytes");
    let file = Read::new(&bytes);
    let mut found = Vec::new();
    for (on, page) in file.pages.iter().enumerate() {
        let dict = file.document.get_dictionary(*page).expect("a page");
        let Ok(all) = dict.get(b"Annots").and_then(Object::as_array) else { continue };
        for it in all {
            let id = it.as_reference().expect("a reference");
            let annotation = file.document.get_dictionary(id).expect("one").clone();
            let says = annotation.get(b"Contents").and_then(lopdf::decode_text_string);
            let dest =
                annotation.get(b"Dest").and_then(Object::as_array).expect("a place");
            let target = dest[0].as_reference().expect("a page");
            let to = file.pages.iter().position(|it| *it == target).expect("its page");
            found.push(Link { on, says: says.expect("words"), to, annotation });
        }
    }
    (file, found)
}

#[test]
fn letters_lead_to_the_plan_of_their_sheet() {
    let (file, links) = links("tide-post", "travel");
    let mut by_title: BTreeMap<&str, usize> = BTreeMap::new();
    for link in &links {
        // PDF/UA-1, 7.18: a link says where it leads and belongs to a tag.
        assert!(!link.says.is_empty());
        assert!(link.annotation.has(b"StructParent"), "{}", link.says);
        if let Some((letter, title)) = link.says.split_once(": ") {
            assert!(letter.len() == 1, "{}", link.says);
            assert!(file.text(link.to).contains(title), "{}", link.says);
            *by_title.entry(title).or_default() += 1;
        }
    }
    assert!(by_title.contains_key("Cut plan: tide"), "{by_title:?}");
    assert!(by_title.contains_key("Cut plan: chalk"), "{by_title:?}");
    // From steps of cards as well, pages later.
    let far = |it: &&Link| it.on > it.to + 3 && it.says.starts_with("A: ");
    assert!(links.iter().find(far).is_some());
}

#[test]
fn where_sheets_come_cut_letters_lead_to_the_one_card_they_are_for() {
    let (file, links) = links("market-morning", "class");
    let says: Vec<&str> = links.iter().map(|it| it.says.as_str()).collect();
    assert!(says.contains(&"A: Good morning"), "{says:?}");
    // Two cards take a crate, so that its letter leads nowhere.
    assert!(!says.iter().any(|it| it.starts_with("C: ")), "{says:?}");
    // A letter on the page of its own card is no link.
    for link in links.iter().filter(|it| it.says == "A: Good morning") {
        assert!(file.text(link.to).contains("Good morning"));
        assert!(link.on < link.to, "it stands in its own section");
    }
}
