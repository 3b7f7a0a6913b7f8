//! What the documents say is true: paths exist, examples run, pictures are there.

use std::fs;
use std::path::Path;

use leafwright::project;
use leafwright::source::{Empty, Source};

use crate::demos;

fn text(path: &str) -> String {
    fs::read_to_string(path).unwrap_or_else(|fault| panic!("{path}: {fault}"))
}

/// What stands between backticks, outside of fenced blocks.
fn quoted(text: &str) -> Vec<String> {
    let mut inside = false;
    let mut plain = String::new();
    for line in text.lines() {
        if line.starts_with("```") {
            inside = !inside;
        } else if !inside {
            plain.push_str(line);
            plain.push('\n');
        }
    }
    plain.split('`').skip(1).step_by(2).map(str::to_owned).collect()
}

#[test]
fn paths_that_documents_name_exist() {
    let mut seen = 0;
    for document in ["README.md", "DEVELOPERS.md", "benches/README.md", "fonts/README.md"]
    {
        let below = Path::new(document).parent().expect("a file lies somewhere");
        for path in quoted(&text(document)) {
            let is_path = ["src/", "tests/", "templates/", "demo-data", "fonts/", ".ci/"]
                .iter()
                .any(|start| path.starts_with(start));
            if is_path && !path.contains([' ', '<', '*', '…']) {
                let found = Path::new(&path).exists() || below.join(&path).exists();
                assert!(found, "{document} names `{path}`, which is gone");
                seen += 1;
            }
        }
    }
    assert!(20 < seen, "only {seen} paths were found");
}

#[test]
fn pictures_of_the_readme_exist() {
    let readme = text("README.md");
    let pictures: Vec<&str> = readme
        .split("](")
        .skip(1)
        .filter_map(|it| it.split(')').next())
        .filter(|it| Path::new(it).extension().is_some_and(|it| it == "png"))
        .collect();
    assert!(!pictures.is_empty());
    for picture in pictures {
        assert!(Path::new(picture).exists(), "{picture} is gone");
    }
}

#[test]
fn the_example_of_the_readme_reads_clean() {
    let readme = text("README.md");
    let example = readme.split("```yaml\n").nth(1).and_then(|it| it.split("```").next());
    let example = example.expect("the README has an example");
    let (_, outcome) = project::read(Source::new("example.yaml", example), &Empty);
    assert_eq!(outcome.notes, [], "the example is faulty");
    let project = outcome.value.expect("no notes, so there is a project");
    assert_eq!(project.cards.len(), 1);
}

#[test]
fn demos_that_the_readme_names_are_all_the_demos() {
    let readme = text("README.md");
    for path in demos::paths() {
        let name = path.file_name().expect("a name").to_string_lossy().into_owned();
        assert!(readme.contains(&name), "the README doesn't mention {name}");
    }
}
