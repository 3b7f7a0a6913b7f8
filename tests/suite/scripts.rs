//! Scripts: greetings in letters that the committed faces lack, set from fonts that the
//! description names, and found again in the file in the order in which they are read.

use std::fs;
use std::path::Path;

use leafwright::fonts::Library;
use leafwright::handout::{self, Options, Template};
use leafwright::layout::{self, PageSetup, PageSize, Press};
use leafwright::page::{Laid, Run, What};
use leafwright::plan::{self, PlanOptions};

use crate::command::{entries, folder, run, same};
use crate::diagnostics::read;
use crate::readback::Read;

const HERE: &str = "tests/suite/scripts";

/// The pages of the description of this folder in one language.
fn laid(language: &str) -> Laid {
    let text = fs::read_to_string(format!("{HERE}/lantern-words.yaml")).unwrap();
    let (_, outcome) = read("lantern-words.yaml", &text);
    let project = outcome.value.expect("a sound description");
    let template = Template::built_in("class").unwrap();
    let options = PlanOptions { reader: template.reader, ..PlanOptions::default() };
    let plan = plan::plan(&project, &options).value.unwrap();
    let options = Options { language: Some(language), ..Options::default() };
    let document = handout::write(&project, &plan, &template, options);
    let mut library = Library::new();
    for font in &project.fonts {
        let bytes = fs::read(Path::new(HERE).join(&font.words)).unwrap();
        library.add(&bytes).unwrap();
    }
    let setup = PageSetup { size: PageSize::A4, large_print: false, gray: false };
    let outcome = layout::lay_out(&mut Press::with(library), &document, &setup);
    assert_eq!(outcome.notes, [], "every character has a glyph");
    outcome.value.unwrap()
}

fn runs(laid: &Laid) -> Vec<&Run> {
    let items = laid.pages.iter().flat_map(|it| &it.items);
    let mut runs = Vec::new();
    for item in items {
        if let What::Text(text) = &item.what {
            runs.push(&*text.run);
        }
    }
    runs
}

#[test]
fn lines_that_run_leftwards_stand_so_and_say_what_was_written() {
    let laid = laid("en");
    let runs = runs(&laid);
    let thanks = runs.iter().find(|it| it.text.trim() == "شكرا").expect("the greeting");
    assert!(thanks.leftwards);
    // Each glyph further right says what is read earlier.
    let said: Vec<_> = thanks.glyphs.iter().map(|it| it.text.start).collect();
    assert!(said.windows(2).all(|it| it[1] <= it[0]), "{said:?}");
    let places: Vec<_> = thanks.glyphs.iter().map(|it| it.x).collect();
    assert!(places.is_sorted(), "{places:?}");
    // Letters are joined: the third is in its middle form, not the one it has alone.
    let hello = runs.iter().find(|it| it.text.trim() == "مرحبا").expect("the other one");
    let last = |run: &Run| run.glyphs[0].id;
    assert_ne!(
        last(thanks),
        last(hello),
        "an alef after a beh is joined, after a reh is not"
    );
    // What comes later in a line is read later, wherever it stands.
    let at = |words: &str| runs.iter().position(|it| it.text.trim() == words);
    assert!(at("شكرا").zip(at("لك")).is_some_and(|(a, b)| a < b));
}

#[test]
fn quotes_stay_on_the_sides_of_the_sentence() {
    // UAX #9: what is isolated does not pull the signs around it along. The quote that
    // opens is left of the words, in a sentence that runs from left to right.
    let laid = laid("en");
    for page in &laid.pages {
        for item in &page.items {
            let What::Text(text) = &item.what else { continue };
            assert!(
                !text.run.leftwards || !text.run.text.contains(['\u{201c}', '\u{201d}'])
            );
            assert!(
                !text.run.text.contains(['\u{2068}', '\u{2069}']),
                "marks are not said"
            );
        }
    }
}

#[test]
fn a_quote_behind_words_that_run_leftwards_is_not_taken_for_one_of_them() {
    // UAX #9, 2.6: a left-to-right mark ends what runs leftwards, for readers that put
    // the signs of a page in order by their places.
    let laid = laid("en");
    let runs = runs(&laid);
    let pairs = runs.windows(2).filter(|it| it[0].leftwards && !it[1].leftwards);
    let behind: Vec<&str> = pairs.map(|it| it[1].text.as_str()).collect();
    assert!(behind.contains(&"\u{200e}\u{201d}"), "{behind:?}");
    assert!(!behind.iter().any(|it| it.starts_with('\u{201d}')), "{behind:?}");
}

#[test]
fn japanese_breaks_between_any_letters_but_not_before_a_full_stop() {
    // JIS X 4051, 4.2: no line begins with 、 。 」 or ends with 「.
    let laid = laid("en");
    let lines: Vec<&Run> = runs(&laid)
        .into_iter()
        .filter(|it| it.text.chars().any(|it| ('\u{3040}'..'\u{30ff}').contains(&it)))
        .collect();
    let tip: Vec<&str> = lines.iter().map(|it| it.text.trim()).collect();
    assert!(tip.len() > 3, "the tip takes more than one line: {tip:?}");
    for line in tip {
        assert!(!line.starts_with(['、', '。', '」']), "{line}");
        assert!(!line.ends_with('「'), "{line}");
    }
}

#[test]
fn greek_and_cyrillic_are_in_the_committed_faces() {
    for (language, title) in [("el", "Λόγια φαναριών"), ("ru", "Слова фонаря")]
    {
        let laid = laid(language);
        assert_eq!(laid.title, title);
        let run = runs(&laid).into_iter().find(|it| it.text.contains(title));
        let face = run.expect("the title").face;
        assert!(face.index() < 5, "{title} is set in a face of the user's");
    }
}

#[test]
fn one_file_is_made_for_each_language_and_says_which() {
    let folder = folder("scripts");
    let file = folder.join("out.pdf");
    let file = file.to_str().expect("a plain path");
    let description = format!("{HERE}/lantern-words.yaml");
    let (code, out, err) = run(&["make", &description, "-o", file]);
    assert!(same(code, 0), "{err}");
    assert_eq!(out.lines().count(), 3, "{out}");
    assert_eq!(entries(&folder), ["out-ar.pdf", "out-en.pdf", "out-ja.pdf"]);
    assert!(err.contains("no-words-in-language"), "{err}");
    let english = Read::new(&fs::read(folder.join("out-en.pdf")).unwrap());
    let fonts = english.fonts();
    assert!(fonts.iter().any(|it| it.0.contains("Naskh")), "{fonts:?}");
    // The order of the file is that in which it is read.
    let pages: String = (0..english.pages.len()).map(|it| english.text(it)).collect();
    let text: String = pages.split_whitespace().collect();
    for words in ["شكرالك", "مرحبا", "السلامعليكم،منالقلب؟", "お誕生日おめでとう、友達"]
    {
        assert!(text.contains(words), "`{words}` in {text}");
    }
    let (code, out, err) =
        run(&["make", &description, "--language", "de,fr", "-o", file]);
    assert!(same(code, 0), "{err}");
    assert!(out.contains("out-de.pdf") && out.contains("out-fr.pdf"), "{out}");
    for language in ["de", "fr"] {
        let bytes = fs::read(folder.join(format!("out-{language}.pdf"))).unwrap();
        let read = Read::new(&bytes);
        let root = read.document.catalog().unwrap();
        let lang = root.get(b"Lang").and_then(lopdf::Object::as_str).unwrap();
        assert_eq!(lang, language.as_bytes());
    }
}

#[test]
fn a_demo_in_three_scripts_says_its_words_in_their_order() {
    let folder = folder("scripts-demo");
    let file = folder.join("words.pdf");
    let to = file.to_str().expect("a plain path");
    let (code, _, err) = run(&["make", "demo-data/word-table.yaml", "-o", to]);
    assert!(same(code, 0), "{err}");
    assert_eq!(err, "");
    let read = Read::new(&fs::read(&file).unwrap());
    let pages: String = (0..read.pages.len()).map(|it| read.text(it)).collect();
    let text: String = pages.split_whitespace().collect();
    let text = text.replace('\u{200e}', "");
    // On the label, and in quotes in the sentences.
    for words in ["شكرالكمنالقلب", "お誕生日おめでとう", "Καλώςήρθατε"]
    {
        for said in [words, &format!("“{words}”")] {
            assert!(text.contains(said), "`{said}` in {text}");
        }
    }
    let faces: Vec<_> = read.fonts().into_iter().map(|it| it.0).collect();
    let own = |name: &str| faces.iter().any(|it| it.contains(name));
    assert!(own("WordTableArabic") && own("WordTableJapanese"), "{faces:?}");
}

#[test]
fn without_the_font_each_character_is_named_where_it_stands() {
    let folder = folder("scripts-without");
    let text = fs::read_to_string(format!("{HERE}/lantern-words.yaml")).unwrap();
    let row = "fonts: [arabic.ttf, japanese.otf]";
    let line = |text: &str, words: &str| {
        let at = text.find(words).unwrap();
        text[..at].matches('\n').count() + 1
    };
    let file = folder.join("words.yaml");
    let path = file.to_str().expect("a plain path");
    let make = || run(&["make", path, "--language", "en", "--messages", "short"]);

    let bare = text.replace(row, "spares: none");
    fs::write(&file, &bare).unwrap();
    let (code, out, err) = make();
    assert!(same(code, 1), "{err}");
    assert_eq!(out, "");
    let place = format!("words.yaml:{}:", line(&bare, "hello: {like"));
    let found = err.lines().any(|it| it.contains(&place) && it.contains("`م` (U+0645)"));
    assert!(found, "{err}");

    fs::write(&file, &text).unwrap();
    let (code, _, err) = make();
    assert!(same(code, 1), "{err}");
    let place = format!("words.yaml:{}:", line(&text, row));
    assert!(err.contains(&place) && err.contains("font-unusable"), "{err}");
    assert_eq!(entries(&folder), ["words.yaml"]);
}
