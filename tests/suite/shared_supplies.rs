//! Papers, bases and tools that several descriptions share.

use std::collections::BTreeMap;
use std::ffi::OsString;
use std::fs;
use std::path::{Path, PathBuf};

use leafwright::cli;
use leafwright::diag::Outcome;
use leafwright::project::{self, Project};
use leafwright::source::{Folder, Source, Sources};

/// Files by their path.
struct Files(BTreeMap<&'static str, &'static str>);

impl Folder for Files {
    fn bytes(&self, path: &Path) -> Result<Vec<u8>, String> {
        let found = path.to_str().and_then(|it| self.0.get(it));
        found.map(|it| it.as_bytes().to_vec()).ok_or_else(|| "it is not there".to_owned())
    }
}

fn read(
    main: &str,
    files: &[(&'static str, &'static str)],
) -> (Sources, Outcome<Project>) {
    let files = Files(files.iter().copied().collect());
    project::read(Source::new("set/cards.yaml", main), &files)
}

const SUPPLIES: &str = "unit: mm
papers:
  oat: {kind: cardstock, sheet: 210 x 297}
  rye: {kind: cardstock, sheet: letter}
bases:
  note: {format: a6, made: {of: rye}}
  other: {format: a6, bought: true}
tools:
  big trimmer: {kind: lever trimmer, marks: 1}
  small trimmer: {kind: sliding trimmer, marks: 1 mm}
  glue: {kind: glue}
  spare words: {kind: stamp set}
  tag: {kind: punch, outline: tag 60 x 30}
";

const SET: &str = "title: Borrowed
unit: in
use: supplies.yaml
pieces:
  sash: {of: oat, size: 4 x 2}
cards:
  - {name: One, base: note, stands: tall, layers: [{piece: sash}]}
";

fn names(rows: impl Iterator<Item = String>) -> Vec<String> {
    rows.collect()
}

#[test]
fn what_is_named_is_taken_over_with_what_it_names() {
    let (_, outcome) = read(SET, &[("supplies.yaml", SUPPLIES)]);
    let project = outcome.value.unwrap_or_else(|| panic!("{:?}", outcome.notes));
    assert_eq!(outcome.notes, [], "nothing shared is said to be of no use");
    let papers = names(project.papers.iter().map(|it| it.name.words.clone()));
    assert_eq!(papers, ["oat", "rye"], "rye is named by the base");
    let bases = names(project.bases.iter().map(|it| it.name.words.clone()));
    assert_eq!(bases, ["note"]);
    let tools = names(project.tools.iter().map(|it| it.name.words.clone()));
    assert_eq!(tools, ["big trimmer", "glue"], "the first of each kind");
}

#[test]
fn each_file_has_its_own_unit() {
    let (_, outcome) = read(SET, &[("supplies.yaml", SUPPLIES)]);
    let project = outcome.value.expect("a project");
    // 4 in and 210 mm, in units of 1/14400 mm.
    assert_eq!(project.pieces[0].size.width.units(), 4 * 365_760);
    let project::Stock::Sheets(sheets) = &project.papers[0].stock else { panic!() };
    assert_eq!(sheets[0].size.width.units(), 210 * 14_400);
    let without = SUPPLIES.replacen("unit: mm\n", "", 1).leak();
    let (_, outcome) = read(SET, &[("supplies.yaml", without)]);
    assert!(
        outcome.notes.iter().any(|it| it.rule.name == "no-unit" && it.site.file == 1)
    );
}

#[test]
fn ones_own_entry_comes_first() {
    let own = SET.replace("pieces:", "papers:\n  oat: {sheet: 10 x 8}\npieces:");
    let (_, outcome) = read(&own, &[("supplies.yaml", SUPPLIES)]);
    let project = outcome.value.expect("a project");
    let oat: Vec<_> = project.papers.iter().filter(|it| it.name.words == "oat").collect();
    assert_eq!(oat.len(), 1);
    let project::Stock::Sheets(sheets) = &oat[0].stock else { panic!() };
    assert_eq!(sheets[0].size.width.units(), 10 * 365_760);
}

#[test]
fn faults_of_a_shared_file_are_marked_in_it() {
    let faulty = "papers:\n  oat: {sheet: a44}\n";
    let (sources, outcome) = read(SET, &[("supplies.yaml", faulty)]);
    let note = outcome.notes.iter().find(|it| it.rule.name == "unknown-format");
    let note = note.unwrap_or_else(|| panic!("{:?}", outcome.notes));
    let source = sources.of(note.site).expect("a file");
    assert_eq!(source.name, "set/supplies.yaml");
    assert_eq!(source.line_column(note.site.start as usize), (2, 16));
    let (_, outcome) = read(SET, &[("supplies.yaml", "papers: [")]);
    assert!(outcome.notes.iter().any(|it| it.rule.name == "unclosed-bracket"));
}

#[test]
fn two_shared_files_may_not_offer_one_name_and_circles_are_refused() {
    let both = SET.replace("use: supplies.yaml", "use: [supplies.yaml, more.yaml]");
    let more = "papers: {oat: {sheet: a4}}";
    let files = [("supplies.yaml", SUPPLIES), ("more.yaml", more)];
    let (_, outcome) = read(&both, &files);
    let rules: Vec<_> = outcome.notes.iter().map(|it| it.rule.name).collect();
    assert_eq!(rules, ["name-used-twice"]);
    let circle =
        [("supplies.yaml", "use: more.yaml"), ("more.yaml", "use: supplies.yaml")];
    let (_, outcome) = read(SET, &circle);
    assert!(outcome.notes.iter().any(|it| it.rule.name == "goes-in-a-circle"));
}

/// A folder of its own, with a description that uses a path.
fn check(name: &str, path: &str, lay: impl Fn(&Path)) -> String {
    let folder: PathBuf = Path::new(env!("CARGO_TARGET_TMPDIR")).join(name);
    let _ = fs::remove_dir_all(&folder);
    fs::create_dir_all(folder.join("set")).expect("a folder");
    fs::write(folder.join("outside.yaml"), SUPPLIES).expect("written");
    fs::write(folder.join("set/cards.yaml"), SET.replace("supplies.yaml", path))
        .expect("written");
    lay(&folder);
    let file = folder.join("set/cards.yaml");
    let (mut out, mut err) = (Vec::new(), Vec::new());
    let arguments =
        ["leafwright", "check", file.to_str().expect("plain"), "--messages", "short"];
    let _ = cli::run(arguments.map(OsString::from), &mut out, &mut err, false);
    String::from_utf8(err).expect("text")
}

#[test]
fn no_path_leads_out_of_the_folder() {
    let nothing = |_: &Path| {};
    for path in ["../outside.yaml", "/etc/hostname", "sub/../../outside.yaml"] {
        let said = check("leads-out", path, nothing);
        assert!(said.contains("leads out of the description's folder"), "{path}: {said}");
    }
    let below = check("leads-down", "mine/supplies.yaml", |folder| {
        fs::create_dir_all(folder.join("set/mine")).expect("a folder");
        fs::write(folder.join("set/mine/supplies.yaml"), SUPPLIES).expect("written");
    });
    assert!(!below.contains("error"), "{below}");
}

#[cfg(unix)]
#[test]
fn no_link_leads_out_of_the_folder() {
    let said = check("link-out", "link.yaml", |folder| {
        let link = folder.join("set/link.yaml");
        std::os::unix::fs::symlink(folder.join("outside.yaml"), link).expect("a link");
    });
    assert!(said.contains("leads out of the description's folder"), "{said}");
}
