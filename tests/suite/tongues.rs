//! Languages: every file of messages says the same as the first, texts in several
//! languages reach their readers, and nothing of another language is left over.

use std::collections::{BTreeMap, BTreeSet};
use std::fs;

use leafwright::document::{Block, Document, Inline};
use leafwright::geom::{Length, Size, Unit};
use leafwright::handout::{self, Options, Template};
use leafwright::plan::{self, PlanOptions};
use leafwright::project::{self, Project};
use leafwright::words::{Units, Words};

use crate::diagnostics::read;
use crate::{demos, words};

/// The languages beside English.
const OTHERS: [&str; 3] = ["de", "fr", "es"];

/// The words that messages choose by, apart from numbers and plural categories
/// (Unicode CLDR, plural rules), which differ between languages.
fn choices(path: &str) -> BTreeMap<String, BTreeSet<String>> {
    let text = fs::read_to_string(path).unwrap();
    let mut all: BTreeMap<String, BTreeSet<String>> = BTreeMap::new();
    let mut last = String::new();
    for line in text.lines().filter(|it| !it.starts_with('#')) {
        if let Some((name, _)) = line.split_once(" = ").filter(|_| !line.starts_with(' '))
        {
            name.clone_into(&mut last);
        }
        let key = line.trim_start().trim_start_matches('*');
        let Some((key, _)) = key.strip_prefix('[').and_then(|it| it.split_once(']'))
        else {
            continue;
        };
        let plural = ["zero", "one", "two", "few", "many", "other"].contains(&key);
        if !plural && key.parse::<u32>().is_err() {
            all.entry(last.clone()).or_default().insert(key.to_owned());
        }
    }
    all
}

#[test]
fn every_language_is_a_file_of_messages() {
    let files: BTreeSet<String> = fs::read_dir("templates")
        .unwrap()
        .filter_map(|it| {
            let name = it.unwrap().file_name().into_string().unwrap();
            Some(name.strip_suffix(".ftl")?.to_owned())
        })
        .collect();
    let known: BTreeSet<String> = Words::languages().map(str::to_owned).collect();
    assert_eq!(files, known, "a file that no line of the list names, or the reverse");
    for language in OTHERS {
        assert!(Words::has(language) && Words::has(&format!("{language}-XX")));
        assert_eq!(Words::load(language, Units::Only(Unit::Mm)).language(), language);
    }
}

#[test]
fn every_language_has_the_messages_and_names_of_the_first() {
    let first = words::messages("templates/en.ftl");
    for language in OTHERS {
        let path = format!("templates/{language}.ftl");
        let these = words::messages(&path);
        for (name, fills) in &first {
            let Some(here) = these.get(name) else { panic!("{path} lacks `{name}`") };
            assert_eq!(here, fills, "`{name}` of {path} fills in other names");
        }
        for name in these.keys() {
            assert!(first.contains_key(name), "`{name}` of {path} is not in English");
        }
    }
}

#[test]
fn every_language_chooses_by_the_same_words() {
    let first = choices("templates/en.ftl");
    for language in OTHERS {
        let path = format!("templates/{language}.ftl");
        let these = choices(&path);
        for (name, words) in &first {
            // A language may do without a choice, but not make one of its own.
            let here = these.get(name).cloned().unwrap_or_default();
            assert!(here.is_subset(words), "`{name}` of {path}: {here:?}, not {words:?}");
            assert!(
                here.is_empty() || here == *words,
                "`{name}` of {path} knows only {here:?} of {words:?}"
            );
        }
    }
}

#[test]
fn french_has_a_space_that_does_not_break_before_its_tall_signs() {
    // Imprimerie nationale, Lexique des règles typographiques: a fixed space before
    // the colon, the semicolon, the question mark and inside guillemets.
    let text = fs::read_to_string("templates/fr.ftl").unwrap();
    for line in text.lines().filter(|it| !it.starts_with('#')) {
        let line = line.replace("{ \"\\u00A0\" }", "\u{a0}");
        for (at, sign) in line.char_indices().filter(|it| ":;?!»".contains(it.1)) {
            let before = line[..at].chars().next_back();
            assert_eq!(before, Some('\u{a0}'), "`{sign}` in {line}");
        }
        for (at, _) in line.match_indices('«') {
            assert!(line[at + 2..].starts_with('\u{a0}'), "{line}");
        }
    }
}

#[test]
fn numbers_quotes_and_units_are_those_of_the_language() {
    // CLDR 45: decimal sign and quotation marks of de, fr and es.
    let said = |language: &str| {
        let words = Words::load(language, Units::Both(Unit::Inch));
        let size = Size::new(Length::inch(11, 2), Length::inch(17, 4));
        let length =
            Words::load(language, Units::Only(Unit::Mm)).length(Length::inch(1, 8));
        let all = [words.size(size), length, words.quoted("Hm")];
        all.map(|it| it.replace('\u{a0}', " "))
    };
    assert_eq!(said("de"), ["5 1/2 × 4 1/4 Zoll (139,5 × 108 mm)", "3,18 mm", "„Hm“"]);
    assert_eq!(said("fr"), ["5 1/2 × 4 1/4 po (139,5 × 108 mm)", "3,18 mm", "« Hm »"]);
    assert_eq!(said("es"), ["5 1/2 × 4 1/4 in (139,5 × 108 mm)", "3,18 mm", "«Hm»"]);
}

/// A description that is read without an error.
fn sound(name: &str, text: &str) -> Project {
    let (_, outcome) = read(name, text);
    outcome.value.unwrap_or_else(|| panic!("{name}: {:?}", outcome.notes))
}

fn document(project: &Project, reader: &str, language: &str) -> Document {
    let template = Template::built_in(reader).unwrap();
    let options = PlanOptions { reader: template.reader, ..PlanOptions::default() };
    let plan = plan::plan(project, &options).value.unwrap();
    let options = Options { language: Some(language), ..Options::default() };
    handout::write(project, &plan, &template, options)
}

/// Every stretch of words of a document.
fn inlines(document: &Document) -> Vec<&Inline> {
    fn of<'a>(blocks: &'a [Block], all: &mut Vec<&'a Inline>) {
        for block in blocks {
            match block {
                Block::Heading { text, .. } | Block::Paragraph(_, text) => {
                    all.extend(text);
                }
                Block::List(_, rows) => all.extend(rows.iter().flatten()),
                Block::Steps(steps) => all.extend(steps.iter().flat_map(|it| &it.text)),
                Block::Table(table) => {
                    all.extend(table.columns.iter().flat_map(|it| &it.head));
                    all.extend(table.rows.iter().flatten().flatten());
                }
                Block::Figure(figure) => all.extend(figure.caption.iter().flatten()),
                Block::Tiled(tiled) => {
                    all.extend(tiled.figure.caption.iter().flatten());
                    all.extend(&tiled.joined);
                }
                Block::Figures(figures) => {
                    all.extend(figures.iter().flat_map(|it| it.caption.iter().flatten()));
                }
                Block::Caution(caution) => all.extend(&caution.text),
                Block::Beside(figure, blocks) => {
                    all.extend(figure.caption.iter().flatten());
                    of(blocks, all);
                }
                Block::Keep(blocks) => of(blocks, all),
            }
        }
    }
    let mut all = Vec::new();
    for section in &document.sections {
        all.extend(&section.title);
        of(&section.blocks, &mut all);
    }
    all
}

#[test]
fn nothing_of_our_own_is_left_in_english() {
    let english = [
        "the", "and", "of", "with", "is", "are", "for", "cut", "sheet", "sheets", "lay",
        "from", "label", "stamp", "left", "right", "fold", "each", "card", "cards",
        "wide",
    ];
    for path in demos::paths() {
        let text = fs::read_to_string(&path).unwrap();
        let project = sound(&path.to_string_lossy(), &text);
        for (language, reader) in [("de", "travel"), ("fr", "host"), ("es", "kit")] {
            let document = document(&project, reader, language);
            assert_eq!(document.language, language);
            // What the user wrote has a place, and a language of its own.
            for inline in inlines(&document) {
                if inline.site.is_some() {
                    let lang = inline.lang.as_deref().expect("a language of its own");
                    assert!(["en", "ar", "el", "ja"].contains(&lang), "{inline:?}");
                    continue;
                }
                // Titles of documents say that they are English.
                if inline.lang.as_deref() == Some("en") {
                    continue;
                }
                // The layout puts the scale in place of its name; keys stay as they are.
                let said =
                    inline.text.replace("{scale-of-", "").replace("sheets alike", "");
                for word in said.split(|it: char| !it.is_alphabetic()) {
                    let left = english.contains(&word.to_lowercase().as_str());
                    assert!(!left, "`{word}` in {language}: {}", inline.text);
                }
            }
        }
    }
}

const SEVERAL: &str = "title: {en: Meadow Days, de: Wiesentage, pt-BR: Dias de prado}
about: Six note cards.
unit: mm
language: [en, de]
papers:
  oat: {kind: cardstock, sheet: a4, printed as: {de: Hafer}}
bases:
  note: {format: a6, bought: true}
pieces:
  sash: {of: oat, size: 105 x 40 mm, printed as: {de: Schärpe}}
tools:
  tape: {kind: tape, printed as: a roll of tape}
greetings:
  thanks: {words: {en: Thank you, de: Danke}, label: {cut: 50 x 20 mm}, of: oat}
cards:
  - name: {en: Thanks, de: Dank}
    base: note
    layers: [{piece: sash, top: 20 mm}, {greeting: thanks, bottom: 10 mm}]
    tips: [{en: Take your time., de: Nur keine Eile.}, {de: Fertig!}]
";

#[test]
fn texts_in_several_languages_reach_their_readers() {
    let project = sound("several.yaml", SEVERAL);
    assert_eq!(project.language, "en");
    let words = |language: &str| -> String {
        let document = document(&project, "class", language);
        let all: Vec<String> =
            inlines(&document).iter().map(|it| it.text.clone()).collect();
        format!("{} | {}", document.title, all.join(" "))
    };
    let (english, german, brazilian) = (words("en"), words("de"), words("pt"));
    for said in
        ["Meadow Days", "sash", "oat", "“Thank you”", "Take your time.", "Fertig!"]
    {
        assert!(english.contains(said), "`{said}` in {english}");
    }
    for said in
        ["Wiesentage", "Schärpe", "Hafer", "„Danke“", "Nur keine Eile.", "Six note"]
    {
        assert!(german.contains(said), "`{said}` in {german}");
    }
    assert!(!german.contains("sash") && !german.contains("Thank you"), "{german}");
    assert!(english.contains("a roll of tape") && german.contains("a roll of tape"));
    // A kind of Portuguese will do for readers of Portuguese.
    assert!(brazilian.starts_with("Dias de prado"), "{brazilian}");
}

#[test]
fn words_of_another_language_say_which() {
    let project = sound("several.yaml", SEVERAL);
    let document = document(&project, "class", "de");
    for inline in inlines(&document) {
        let german =
            ["Wiesentage", "Schärpe", "Hafer", "Dank", "Nur keine Eile.", "Fertig!"];
        let told = german.contains(&inline.text.as_str()) || inline.text == "„Danke“";
        let lang = (inline.site.is_some() && !told).then_some("en");
        assert_eq!(inline.lang.as_deref(), lang, "{inline:?}");
    }
}

#[test]
fn a_text_that_is_not_told_in_the_language_is_noted_where_others_are() {
    let project = sound("several.yaml", SEVERAL);
    let note = project::untold(&project, "de").expect("some texts are English only");
    assert_eq!(note.rule.name, "text-not-told");
    assert!(note.message.starts_with("`Six note cards.`"), "{}", note.message);
    let english = project::untold(&project, "en").expect("a tip is German only");
    assert!(english.message.starts_with("`Fertig!`"), "{}", english.message);
    // Nothing is told in French at all: then that was not the plan.
    assert_eq!(project::untold(&project, "fr"), None);
}

#[test]
fn what_is_no_language_is_refused_where_it_stands() {
    let said = |text: &str| -> Vec<String> {
        let (_, outcome) = read("wrong.yaml", &format!("{text}\n"));
        let errors = outcome.notes.iter().filter(|it| it.is_error());
        errors.map(|it| format!("{} {}", it.site.start, it.rule.name)).collect()
    };
    assert_eq!(said("title: {en: A, german: B}"), ["15 not-a-choice"]);
    assert_eq!(said("title: {en: A, EN: B}"), ["15 duplicate-key"]);
    assert_eq!(said("title: {words: A}"), ["7 wrong-shape"]);
    assert_eq!(said("title: {en: [A]}"), ["12 wrong-shape"]);
    assert_eq!(said("title: A\nlanguage: [en, x]"), ["24 not-a-choice"]);
}
