//! `new`, `why`, `schema`, completions, the manual, and messages for programs.

use std::ffi::OsString;
use std::fs;
use std::path::{Path, PathBuf};
use std::process::ExitCode;

use leafwright::cli;
use leafwright::diag::rules;
use leafwright::project::keys::{self, GROUPS};
use serde_json::Value;

fn folder(name: &str) -> PathBuf {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join(name);
    let _ = fs::remove_dir_all(&folder);
    fs::create_dir_all(&folder).expect("a folder for the test");
    folder
}

fn run(arguments: &[&str]) -> (ExitCode, String, String) {
    let (mut out, mut err) = (Vec::new(), Vec::new());
    let arguments = std::iter::once("leafwright").chain(arguments.iter().copied());
    let code = cli::run(arguments.map(OsString::from), &mut out, &mut err, false);
    let text = |bytes| String::from_utf8(bytes).expect("text");
    (code, text(out), text(err))
}

fn same(code: ExitCode, number: u8) -> bool {
    format!("{code:?}") == format!("{:?}", ExitCode::from(number))
}

#[test]
fn a_starter_for_each_reader_checks_clean_and_is_never_overwritten() {
    let folder = folder("starters");
    for reader in ["class", "host", "kit", "bench", "travel"] {
        let file = folder.join(format!("{reader}.yaml"));
        let file = file.to_str().expect("a plain path");
        let (code, out, err) = run(&["new", "--for", reader, file]);
        assert!(same(code, 0) && out.contains("check"), "{err}");
        let (code, _, err) = run(&["check", file]);
        assert!(same(code, 0) && err.is_empty(), "{reader}: {err}");
        fs::write(file, "mine").expect("changed");
        let (code, out, err) = run(&["new", "--for", reader, file]);
        assert!(same(code, 2) && out.is_empty(), "{err}");
        assert!(err.contains("is there already"), "{err}");
        assert_eq!(fs::read_to_string(file).expect("it is there"), "mine");
    }
}

#[test]
fn why_explains_every_rule_and_every_key() {
    for rule in rules::all() {
        let (code, out, _) = run(&["why", rule.name]);
        assert!(same(code, 0), "{}", rule.name);
        let said = [rule.what, rule.why].iter().all(|it| out.contains(it));
        assert!(said && out.contains("So it is mended"), "{out}");
        let bracketed = format!("error[{}]", rule.name);
        assert_eq!(run(&["why", &bracketed]).1, out);
    }
    for group in GROUPS {
        for key in group.keys {
            let words: Vec<&str> = key.name.split(' ').collect();
            let (code, out, _) = run(&[&["why"], words.as_slice()].concat());
            assert!(same(code, 0) && out.contains(key.about), "{}", key.name);
        }
    }
    let (code, out, err) = run(&["why", "no-unti"]);
    assert!(same(code, 2) && out.is_empty());
    assert!(err.contains("did you mean `no-unit`?"), "{err}");
    let (code, out, _) = run(&["why"]);
    assert!(same(code, 0));
    assert_eq!(out.lines().count(), rules::all().count());
}

#[test]
fn the_schema_is_printed() {
    let (code, out, _) = run(&["schema"]);
    assert!(same(code, 0));
    assert_eq!(serde_json::from_str::<Value>(&out).expect("JSON"), keys::schema());
}

#[test]
fn completions_and_the_manual_know_the_commands() {
    for shell in ["bash", "zsh", "fish", "elvish", "powershell"] {
        let (code, out, _) = run(&["completions", shell]);
        assert!(same(code, 0) && out.contains("check"), "{shell}");
    }
    let (code, out, _) = run(&["manual"]);
    assert!(same(code, 0) && out.contains(".TH leafwright"), "{out}");
}

#[test]
fn messages_for_programs_are_one_object_on_each_line() {
    let folder = folder("json-messages");
    let file = folder.join("slips.yaml");
    let text = "title: Slips\nunit: in\nkits: twelve\npapers:\n  oat: {sheat: letter}\n";
    fs::write(&file, text).expect("a description");
    let file = file.to_str().expect("a plain path");
    let (code, out, err) = run(&["check", file, "--messages", "json"]);
    assert!(same(code, 1) && out.is_empty());
    let notes: Vec<Value> =
        err.lines().map(|line| serde_json::from_str(line).expect("JSON")).collect();
    let first = &notes[0];
    assert_eq!(first["rule"], "not-a-number");
    assert_eq!(first["severity"], "error");
    assert_eq!(first["at"]["from"], serde_json::json!({ "line": 3, "column": 7 }));
    assert_eq!(first["at"]["to"], serde_json::json!({ "line": 3, "column": 13 }));
    assert_eq!(first["at"]["file"], file);
    assert_eq!(notes.len(), 2);
    assert_eq!(notes[1]["help"][0], "did you mean `sheet`?");
}

#[test]
fn the_readme_lists_every_key() {
    let readme = fs::read_to_string("README.md").expect("the README");
    let (before, rest) = readme.split_once("<!-- keys -->\n").expect("where it begins");
    let (kept, after) = rest.split_once("<!-- end of keys -->").expect("where it ends");
    let table = keys::table() + "\n";
    if kept != table {
        let text = format!("{before}<!-- keys -->\n{table}<!-- end of keys -->{after}");
        fs::write("README.md", text).expect("the README is rewritten");
        panic!("the keys in README.md were out of date and have been rewritten");
    }
}
