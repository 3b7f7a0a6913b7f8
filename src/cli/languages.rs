//! The languages that a handout is made in, and the fonts for their scripts.

use std::path::{Path, PathBuf};

use crate::cli::files::DiskFolder;
use crate::diag::{Diagnostic, rules};
use crate::fonts::Library;
use crate::project::{self, Project};
use crate::source::{Folder, Site};
use crate::words::Words;

/// More fonts than this are not read.
const MOST_FONTS: usize = 32;

/// The languages to make handouts in: those that are asked for, else those that the
/// description says; each once, in order.
pub(crate) fn wanted(asked: &[String], project: &Project) -> Vec<String> {
    let own: Vec<String> = project.languages.iter().map(|it| it.words.clone()).collect();
    let all = match (asked, own.as_slice()) {
        ([], []) => std::slice::from_ref(&project.language),
        ([], own) => own,
        (asked, _) => asked,
    };
    let mut once: Vec<String> = Vec::new();
    for language in all {
        if !once.iter().any(|it| it.eq_ignore_ascii_case(language)) {
            once.push(language.clone());
        }
    }
    once
}

/// What may surprise in a handout of this language.
pub(crate) fn notes(project: &Project, language: &str) -> Vec<Diagnostic> {
    let mut notes: Vec<Diagnostic> =
        project::untold(project, language).into_iter().collect();
    if !Words::has(language) {
        let said = project.languages.iter().find(|it| it.words == language);
        let known: Vec<_> = Words::languages().map(|it| format!("`{it}`")).collect();
        let message =
            format!("there are no sentences in `{language}`: they are printed in `en`");
        let help = format!("there are sentences in {}", known.join(", "));
        let site = said.map_or_else(Site::default, |it| it.site);
        notes.push(
            Diagnostic::new(&rules::NO_WORDS_IN_LANGUAGE, site, message).help(help),
        );
    }
    notes
}

/// The faces of the house with those that the description names after them.
pub(crate) fn library(
    project: &Project,
    folder: &DiskFolder,
) -> (Library, Vec<Diagnostic>) {
    let mut library = Library::new();
    let mut notes = Vec::new();
    for (index, path) in project.fonts.iter().enumerate() {
        let added = if index < MOST_FONTS {
            folder
                .bytes(Path::new(&path.words))
                .and_then(|bytes| library.add(&bytes).map(|_| ()))
        } else {
            Err(format!("there are more than {MOST_FONTS} fonts"))
        };
        if let Err(fault) = added {
            let message = format!("the font `{}` can't be used: {fault}", path.words);
            let help = "name a TrueType or OpenType file below the description's folder";
            notes.push(
                Diagnostic::new(&rules::FONT_UNUSABLE, path.site, message).help(help),
            );
        }
    }
    (library, notes)
}

/// The file of one language, where there are several or it is not the usual one.
pub(crate) fn file_for(output: &Path, language: Option<&str>) -> PathBuf {
    let Some(language) = language else { return output.to_path_buf() };
    let stem = output
        .file_stem()
        .map_or_else(String::new, |it| it.to_string_lossy().into_owned());
    let name = match output.extension() {
        Some(end) => format!("{stem}-{language}.{}", end.to_string_lossy()),
        None => format!("{stem}-{language}"),
    };
    output.with_file_name(name)
}
