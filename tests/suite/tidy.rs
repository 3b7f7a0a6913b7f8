//! Holds the shape of the house: layers, file lengths, first lines.

use std::fs;
use std::path::{Path, PathBuf};

/// Each module and what it may import besides itself, lowest first.
const LAYERS: &[(&str, &[&str])] = &[
    ("geom", &[]),
    ("raster", &[]),
    ("source", &[]),
    ("diag", &["source"]),
    ("standards", &["geom"]),
    ("project", &["geom", "raster", "source", "diag", "standards"]),
    ("plan", &["geom", "source", "diag", "standards", "project"]),
    ("document", &["geom", "raster", "source"]),
    ("words", &["geom", "project", "plan"]),
    (
        "handout",
        &[
            "geom",
            "raster",
            "source",
            "diag",
            "standards",
            "project",
            "plan",
            "document",
            "words",
        ],
    ),
    ("fonts", &[]),
    ("page", &["geom", "raster", "source", "fonts"]),
    ("layout", &["geom", "source", "diag", "fonts", "document", "page"]),
    ("pdf", &["geom", "raster", "fonts", "page"]),
    (
        "cli",
        &[
            "geom",
            "raster",
            "source",
            "diag",
            "standards",
            "project",
            "plan",
            "document",
            "words",
            "handout",
            "fonts",
            "page",
            "layout",
            "pdf",
        ],
    ),
];

/// Every Rust file below a path, or the path itself.
fn files(path: &Path) -> Vec<PathBuf> {
    if path.is_file() {
        return vec![path.to_path_buf()];
    }
    let mut found = Vec::new();
    let Ok(entries) = fs::read_dir(path) else { return found };
    for entry in entries {
        let path = entry.expect("a readable folder").path();
        if path.is_dir() || path.extension().is_some_and(|it| it == "rs") {
            found.extend(files(&path));
        }
    }
    found.sort();
    found
}

#[test]
fn imports_point_down() {
    for (layer, may) in LAYERS {
        let folder = Path::new("src").join(layer);
        let paths = if folder.is_dir() {
            files(&folder)
        } else {
            files(&folder.with_extension("rs"))
        };
        assert!(!paths.is_empty(), "there is no module `{layer}`");
        for path in paths {
            let text = fs::read_to_string(&path).expect("a readable file");
            for line in text.lines().filter(|it| !it.trim_start().starts_with("//")) {
                for used in line.split("crate::").skip(1) {
                    let used = used.split([':', ';', '{', ' ', '(', ',', ')']).next();
                    let used = used.expect("split gives at least one");
                    assert!(
                        used == *layer || may.contains(&used),
                        "{} may not import `{used}`",
                        path.display()
                    );
                }
            }
        }
    }
}

#[test]
fn every_module_has_its_layer() {
    for entry in fs::read_dir("src").expect("the house stands") {
        let path = entry.expect("a readable folder").path();
        let name = path.file_stem().expect("a name").to_string_lossy().into_owned();
        let known = LAYERS.iter().any(|(layer, _)| *layer == name);
        assert!(known || name == "lib" || name == "main", "`{name}` has no layer");
    }
}

#[test]
fn files_say_their_purpose_and_stay_short() {
    for folder in ["src", "tests", "benches"] {
        for path in files(Path::new(folder)) {
            let text = fs::read_to_string(&path).expect("a readable file");
            assert!(
                text.starts_with("//!"),
                "{} does not say what it is",
                path.display()
            );
            let lines = text.lines().count();
            assert!(lines <= 500, "{} has {lines} lines", path.display());
            let climbs = ["super", "super"].join("::");
            assert!(!text.contains(&climbs), "{} imports upwards", path.display());
        }
    }
}

#[test]
fn every_file_of_the_suite_is_used() {
    let main = fs::read_to_string("tests/suite/main.rs").expect("the suite");
    for path in files(Path::new("tests/suite")) {
        if path.parent() != Some(Path::new("tests/suite")) {
            continue;
        }
        let name = path.file_stem().expect("a name").to_string_lossy().into_owned();
        let line = format!("mod {name};");
        assert!(
            name == "main" || main.contains(&line),
            "tests/suite/{name}.rs is not run"
        );
    }
}
