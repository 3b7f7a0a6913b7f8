//! Notes as text: with an excerpt of the description, or on one line.

use annotate_snippets::{
    Annotation, AnnotationKind, Group, Level, Origin, Renderer, Snippet,
};
use serde_json::json;

use crate::diag::{Diagnostic, Severity};
use crate::source::{Site, Source, Sources};

/// Excerpts with more bytes than this are left out.
const MOST_SHOWN: usize = 20_000;

/// Whether a text may carry colours for a terminal.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Style {
    /// Letters only: for pipes, files and tests.
    #[default]
    Plain,
    /// With the escape sequences that a terminal shows as colours.
    Styled,
}

/// A note with its place, an excerpt that marks it, and what to write instead.
///
/// The text ends without a line break.
pub fn render(note: &Diagnostic, sources: &Sources, style: Style) -> String {
    let level = match note.rule.severity {
        Severity::Error => Level::ERROR,
        Severity::Warning => Level::WARNING,
        Severity::Advice => Level::INFO.with_name("advice"),
    };
    let title = level.primary_title(note.message.as_str()).id(note.rule.name);
    let mut group = Group::with_title(title);
    let mut files: Vec<u16> = vec![note.site.file];
    for (site, _) in &note.labels {
        if !files.contains(&site.file) {
            files.push(site.file);
        }
    }
    for file in files {
        let Some(source) = sources.files.get(usize::from(file)) else { continue };
        let mut marks = Vec::new();
        if file == note.site.file {
            marks.push((note.site, None));
        }
        marks.extend(
            note.labels
                .iter()
                .filter(|(site, _)| site.file == file)
                .map(|(site, text)| (*site, Some(text.as_str()))),
        );
        group = match excerpt(source, &marks) {
            Some(excerpt) => group.element(excerpt),
            None => group.element(place(source, marks[0].0)),
        };
    }
    for help in &note.help {
        group = group.element(Level::HELP.message(help.as_str()));
    }
    let renderer = match style {
        Style::Plain => Renderer::plain(),
        Style::Styled => Renderer::styled(),
    };
    renderer.render(&[group])
}

/// A note on one line, for editors: `file:line:column: error[rule]: message`.
pub fn short(note: &Diagnostic, sources: &Sources) -> String {
    let place = sources.of(note.site).map_or_else(String::new, |source| {
        let (line, column) = source.line_column(note.site.start as usize);
        format!("{}:{line}:{column}: ", source.name)
    });
    let Diagnostic { rule, message, .. } = note;
    format!("{place}{}[{}]: {message}", rule.severity.word(), rule.name)
}

/// A note on one line of JSON, for programs.
///
/// Lines and columns count from 1, columns in characters; `to` is one past the
/// last character.
pub fn json(note: &Diagnostic, sources: &Sources) -> String {
    let place = |site: Site| {
        let source = sources.of(site);
        let at = |byte: u32| {
            let (line, column) =
                source.map_or((1, 1), |source| source.line_column(byte as usize));
            json!({ "line": line, "column": column })
        };
        let file = source.map_or("", |source| source.name.as_str());
        json!({ "file": file, "from": at(site.start), "to": at(site.end) })
    };
    let labels = note.labels.iter();
    let labels = labels.map(|(site, text)| json!({ "at": place(*site), "text": text }));
    json!({
        "rule": note.rule.name,
        "severity": note.rule.severity.word(),
        "at": place(note.site),
        "message": note.message,
        "labels": labels.collect::<Vec<_>>(),
        "help": note.help,
    })
    .to_string()
}

impl Severity {
    /// The word that a message starts with.
    pub const fn word(self) -> &'static str {
        match self {
            Self::Error => "error",
            Self::Warning => "warning",
            Self::Advice => "advice",
        }
    }
}

/// The lines from the first mark to the last, with the marks.
///
/// Only these lines are handed on, so that a note costs no more in a large file;
/// `None` if they are too long to be read.
fn excerpt<'a>(
    source: &'a Source,
    marks: &[(Site, Option<&'a str>)],
) -> Option<Snippet<'a, Annotation<'a>>> {
    let text = source.text.as_str();
    let ranges: Vec<(usize, usize)> =
        marks.iter().map(|(site, _)| on_signs(text, *site)).collect();
    let first = ranges.iter().map(|it| it.0).min().unwrap_or(0);
    let last = ranges.iter().map(|it| it.1).max().unwrap_or(0);
    let start = text[..first].rfind('\n').map_or(0, |at| at + 1);
    let end = text[last..].find('\n').map_or(text.len(), |at| last + at);
    let end = last + text[last..end].trim_end_matches('\r').len();
    if MOST_SHOWN < end - start {
        return None;
    }
    let line = text[..start].matches('\n').count() + 1;
    let snippet = Snippet::source(&text[start..end])
        .line_start(line)
        .path(source.name.as_str())
        .fold(true);
    let marks = marks.iter().zip(ranges).map(|((_, label), (from, to))| {
        let span = from - start..to - start;
        match label {
            None => AnnotationKind::Primary.span(span),
            Some(label) => AnnotationKind::Context.span(span).label(*label),
        }
    });
    Some(snippet.annotations(marks.collect::<Vec<_>>()))
}

/// Only the file, the line and the column.
fn place(source: &Source, site: Site) -> Origin<'_> {
    let (line, column) = source.line_column(site.start as usize);
    Origin::path(source.name.as_str()).line(line).char_column(column)
}

/// A site cut down to one line and to whole characters of the text.
fn on_signs(text: &str, site: Site) -> (usize, usize) {
    let mut start = (site.start as usize).min(text.len());
    while !text.is_char_boundary(start) {
        start -= 1;
    }
    let mut end = (site.end as usize).clamp(start, text.len());
    while !text.is_char_boundary(end) {
        end -= 1;
    }
    let line = text[start..end].find(['\n', '\r']).map_or(end, |at| start + at);
    (start, line)
}
