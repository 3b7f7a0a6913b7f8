//! The command as a user meets it: exit codes, streams, files written or not.

use std::ffi::OsString;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::ExitCode;

use leafwright::cli;

use crate::demos;

/// A folder of its own for one test, empty at first.
pub(crate) fn folder(name: &str) -> PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join(name);
    let _ = fs::remove_dir_all(&folder);
    fs::create_dir_all(&folder).expect("a folder for the test");
    folder
}

/// Exit code, results, messages.
pub(crate) fn run(arguments: &[&str]) -> (ExitCode, String, String) {
    let (mut out, mut err) = (Vec::new(), Vec::new());
    let arguments = std::iter::once("leafwright").chain(arguments.iter().copied());
    let code = cli::run(arguments.map(OsString::from), &mut out, &mut err, false);
    let text = |bytes| String::from_utf8(bytes).expect("text");
    (code, text(out), text(err))
}

/// Exit codes can't be compared; what they print as can.
pub(crate) fn same(code: ExitCode, number: u8) -> bool {
    format!("{code:?}") == format!("{:?}", ExitCode::from(number))
}

pub(crate) fn entries(folder: &Path) -> Vec<String> {
    let entries = fs::read_dir(folder).expect("the folder of the test");
    let names = entries.map(|it| it.expect("an entry").file_name());
    let mut names: Vec<_> = names.map(|it| it.to_string_lossy().into_owned()).collect();
    names.sort();
    names
}

#[test]
fn a_handout_is_written_and_named() {
    let folder = folder("a-handout");
    let file = folder.join("out.pdf");
    let file = file.to_str().expect("a plain path");
    let (code, out, err) = run(&["make", "demo-data/tide-post.yaml", "-o", file]);
    assert!(same(code, 0), "{err}");
    assert!(out.contains("out.pdf: "), "{out}");
    let bytes = fs::read(file).expect("the handout");
    assert!(bytes.starts_with(b"%PDF-1.7"));
    assert_eq!(entries(&folder), ["out.pdf"], "nothing else is left behind");
}

#[test]
fn a_booklet_says_how_it_is_printed() {
    let folder = folder("a-booklet");
    let file = folder.join("out.pdf");
    let file = file.to_str().expect("a plain path");
    let make = ["make", "demo-data/tide-post.yaml", "-o", file, "--booklet"];
    let (code, out, err) = run(&make);
    assert!(same(code, 0), "{err}");
    assert!(out.contains(" pages on ") && out.contains(" sheet"), "{out}");
    assert!(err.contains("flipped on the short edge"), "{err}");
    fs::remove_file(file).expect("the booklet");
    // A whole a4 page can't be folded from a larger one.
    let (code, _, err) = run(&[&make[..], &["--page", "a4"]].concat());
    assert!(same(code, 2) && err.contains("`--page a5`"), "{err}");
    assert_eq!(entries(&folder), [""; 0]);
}

#[test]
fn two_runs_give_the_same_bytes() {
    let folder = folder("same-bytes");
    let files = [folder.join("one.pdf"), folder.join("two.pdf")];
    for file in &files {
        let file = file.to_str().expect("a plain path");
        let (code, ..) = run(&["make", "demo-data/tide-post.yaml", "-o", file]);
        assert!(same(code, 0));
    }
    let [one, two] = files.map(|it| fs::read(it).expect("the handout"));
    assert!(one == two);
}

#[test]
fn a_faulty_description_writes_nothing() {
    let folder = folder("faulty");
    let description = folder.join("faulty.yaml");
    let faults = "title: Faulty\nunit: in\nkits: 0\npapers:\n  leaf: {sheet: 6 x 6 in}\n\
                  pieces:\n  tile: {of: leef, size: 2 x 2 in}\n  big: {of: leaf, size: 9 x 2 in}\n";
    fs::write(&description, faults).expect("a description");
    let file = folder.join("out.pdf");
    let (code, out, err) = run(&[
        "make",
        description.to_str().expect("a plain path"),
        "--messages",
        "short",
        "-o",
        file.to_str().expect("a plain path"),
    ]);
    assert!(same(code, 1), "{err}");
    assert_eq!(out, "");
    for place in ["faulty.yaml:3:", "faulty.yaml:7:", "faulty.yaml:8:"] {
        assert!(err.contains(place), "no word about {place} in\n{err}");
    }
    assert_eq!(entries(&folder), ["faulty.yaml"]);
}

/// Every kind of slip in one file; the place of each is marked.
const SLIPS: &str = "\
title: Slips
unit: in
kits: twelve # not-a-number
papers:
  leaf: {kind: patterned, sheet: 6 x 6 in}
  oat: {kind: cardstock, sheat: letter} # unknown-key
pieces:
  tile: {of: leaf, size: 2 x 2 in}
  wide: {of: leaf, size: 9 x 2 in} # piece-larger-than-sheet
  flat: {of: leaf, size: 5 x 0 in} # zero-size
  band: {of: laef, size: 5 x 1 in} # unknown-name
  tile: {of: leaf, size: 1 x 1 in} # duplicate-key
bases:
  note: {format: a2-us, bought: {pack: 10, with: envelopes}, comes: folded}
cards:
  - name: Over the edge
    base: note
    stands: wide
    layers:
      - {piece: tile, left: 4 in} # layer-off-the-front
";

#[test]
fn all_faults_are_told_at_once_each_at_its_place() {
    let folder = folder("slips");
    let description = folder.join("slips.yaml");
    fs::write(&description, SLIPS).expect("a description");
    let path = description.to_str().expect("a plain path");
    let (code, out, err) = run(&["make", path, "--messages", "short"]);
    assert!(same(code, 1), "{err}");
    assert_eq!(out, "");
    let mut wanted = 0;
    for (line, text) in (1..).zip(SLIPS.lines()) {
        let Some((_, rule)) = text.split_once(" # ") else { continue };
        let told = err.lines().any(|it| {
            it.contains(&format!("slips.yaml:{line}:"))
                && it.contains(&format!("error[{rule}]"))
        });
        assert!(told, "line {line}, {rule}, is missing in\n{err}");
        wanted += 1;
    }
    assert_eq!(err.matches("error[").count(), wanted, "{err}");
    assert_eq!(entries(&folder), ["slips.yaml"]);
    let (_, _, err) = run(&["check", path]);
    assert!(err.contains("did you mean `sheet`?"), "{err}");
}

#[test]
fn a_handout_that_is_there_survives_a_fault() {
    let folder = folder("survives");
    let description = folder.join("faulty.yaml");
    fs::write(&description, "title: [").expect("a description");
    let file = folder.join("out.pdf");
    fs::write(&file, "the last good one").expect("a handout");
    let (code, ..) = run(&[
        "make",
        description.to_str().expect("a plain path"),
        "-o",
        file.to_str().expect("a plain path"),
    ]);
    assert!(same(code, 1));
    assert_eq!(fs::read_to_string(&file).expect("the handout"), "the last good one");
}

#[test]
fn a_missing_file_is_not_the_descriptions_fault() {
    let (code, out, err) = run(&["check", "demo-data/no-such-thing.yaml"]);
    assert!(same(code, 2));
    assert_eq!(out, "");
    assert!(err.contains("no-such-thing.yaml"), "{err}");
}

#[test]
fn a_place_that_cannot_be_written_is_not_the_descriptions_fault() {
    let folder = folder("unwritable");
    let file = folder.join("no").join("such").join("folder.pdf");
    let file = file.to_str().expect("a plain path");
    let (code, _, err) = run(&["make", "demo-data/tide-post.yaml", "-o", file]);
    assert!(same(code, 2));
    assert!(err.contains("can't be written"), "{err}");
    assert_eq!(entries(&folder), Vec::<String>::new());
}

#[test]
fn a_wrong_command_line_is_told_with_the_way_out() {
    for wrong in [&["mak"][..], &[], &["make"], &["make", "a.yaml", "--kits", "0"]] {
        let (code, out, err) = run(wrong);
        assert!(same(code, 2), "{wrong:?}");
        assert_eq!(out, "", "{wrong:?}");
        assert!(!err.is_empty(), "{wrong:?}");
    }
}

#[test]
fn help_is_a_result() {
    let (code, out, err) = run(&["--help"]);
    assert!(same(code, 0));
    assert_eq!(err, "");
    for command in ["make", "check", "cuts", "formats"] {
        assert!(out.contains(command), "{out}");
    }
}

#[test]
fn cuts_are_shown_and_every_demo_checks_clean() {
    for path in demos::paths() {
        let path = path.to_str().expect("a plain path");
        let (code, _, err) = run(&["check", path]);
        assert!(same(code, 0), "{path}: {err}");
        let (code, out, _) = run(&["cuts", path, "--kits", "2"]);
        assert!(same(code, 0));
        assert!(out.contains("mark"), "{out}");
    }
}

#[test]
fn formats_name_their_sources() {
    let (code, out, _) = run(&["formats", "a4"]);
    assert!(same(code, 0));
    assert!(out.contains("210 x 297 mm") && out.contains("ISO 216"), "{out}");
}

#[test]
fn a_kept_plan_is_found_beside_its_description_and_damage_is_no_fault() {
    let folder = folder("kept-plan");
    let file = folder.join("post.yaml");
    fs::copy("demo-data/tide-post.yaml", &file).expect("a description");
    let file = file.to_str().expect("a plain path");
    let (code, first, _) = run(&["cuts", file, "--keep"]);
    assert!(same(code, 0));
    assert_eq!(entries(&folder), ["post.cuts.json", "post.yaml"]);
    let (code, again, err) = run(&["cuts", file]);
    assert!(same(code, 0) && !err.contains("kept"), "{err}");
    assert_eq!(again, first);

    fs::write(folder.join("post.cuts.json"), "{\"cutting plan\": 1, ").expect("written");
    let (code, again, err) = run(&["cuts", file, "--messages", "short"]);
    assert!(same(code, 0));
    assert_eq!(again, first);
    assert!(
        err.contains("warning[kept-plan-does-not-fit]: the kept plan can't be read"),
        "{err}"
    );
    let (code, ..) = run(&["cuts", file, "--keep"]);
    assert!(same(code, 0), "a new plan takes the place of the damaged one");
    let (_, _, err) = run(&["check", file, "--messages", "short"]);
    assert!(!err.contains("kept"), "{err}");
}

#[test]
fn everybody_gets_a_copy_with_her_name() {
    let folder = folder("copies");
    let names = folder.join("people.csv");
    fs::write(&names, "table,Name\n1,Ada Mill\n1,\"Brook, Zoë\"\n2,\n2,Ada Mill\n")
        .expect("names");
    let to = folder.join("out");
    let (to_text, names) = (to.to_str().expect("plain"), names.to_str().expect("plain"));
    // What an interrupted run left behind is swept away.
    fs::create_dir_all(&to).expect("a folder");
    fs::write(to.join(".tide-post-class-001.pdf.4294967294.part"), "half")
        .expect("a file");
    let asked = ["make", "demo-data/tide-post.yaml", "--names", names, "-o", to_text];
    let (code, out, err) = run(&[&asked[..], &["--for", "class,host"]].concat());
    assert!(same(code, 0), "{err}");
    assert!(out.contains("3 copies"), "{out}");
    assert_eq!(
        entries(&to),
        [
            "tide-post-class-001-ada-mill.pdf",
            "tide-post-class-002-brook-zoë.pdf",
            "tide-post-class-003-ada-mill.pdf",
            "tide-post-host.pdf",
        ]
    );
    let bytes = |name: &str| fs::read(to.join(name)).expect("a copy");
    let [one, two] =
        [1, 3].map(|it| bytes(&format!("tide-post-class-00{it}-ada-mill.pdf")));
    assert!(one == two, "the same name gives the same bytes");
    assert!(one != bytes("tide-post-class-002-brook-zoë.pdf"));
}

#[test]
fn a_table_without_names_is_refused() {
    let folder = folder("no-names");
    let names = folder.join("people.csv");
    fs::write(&names, "name,table\n,1\n").expect("names");
    let names = names.to_str().expect("a plain path");
    let (code, _, err) = run(&["make", "demo-data/tide-post.yaml", "--names", names]);
    assert!(same(code, 2));
    assert!(err.contains("has no name in it"), "{err}");
}
