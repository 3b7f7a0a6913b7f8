//! Notes on a description, written to the messages.

use crate::cli::args::{self, Messages};
use crate::cli::files::{self, DiskFolder};
use crate::cli::{Halt, Streams};
use crate::diag::render::{Style, json, render, short};
use crate::diag::{Diagnostic, Severity};
use crate::plan::cut::{Kept, KeptFault};
use crate::plan::{self, Plan, PlanOptions};
use crate::project::{self, Project, Reader, Reading};
use crate::source::Sources;

/// A description that was read and planned without a fault.
pub(crate) struct Planned {
    /// The files it consists of.
    pub(crate) sources: Sources,
    /// What it says.
    pub(crate) project: Project,
    /// What follows from it.
    pub(crate) plan: Plan,
    /// Warnings and advice, not yet written.
    pub(crate) notes: Vec<Diagnostic>,
}

/// A description that was read, to be planned for one reader or for several.
pub(crate) struct Described {
    sources: Sources,
    project: Option<Project>,
    notes: Vec<Diagnostic>,
    kept: Option<Result<Kept, KeptFault>>,
}

/// Reads and plans a description; writes every fault if there is one.
pub(crate) fn planned(
    asked: &args::Described,
    reader: Reader,
    streams: &mut Streams<'_>,
) -> Result<Planned, Halt> {
    let read = read(asked)?;
    read.planned(asked, reader, streams)
}

/// Reads a description.
pub(crate) fn read(asked: &args::Described) -> Result<Described, Halt> {
    let source = files::description(&asked.description)?;
    let folder = DiskFolder::around(&asked.description);
    let Reading { sources, outcome, sound_cards } = project::read_all(source, &folder);
    let mut notes = outcome.notes;
    // Where the cards can be looked at, their faults are told with the others.
    notes.extend(sound_cards.iter().flat_map(plan::check_cards));
    let kept = files::kept(&asked.description);
    Ok(Described { sources, project: outcome.value, notes, kept })
}

impl Described {
    /// Those for whom the plan may differ: of readers for whom sheets are cut
    /// alike only the first.
    pub(crate) fn readers(&self) -> Vec<Reader> {
        let apart = |reader: Reader| {
            let mut said = self.project.iter().flat_map(|it| &it.cut_by);
            said.any(|it| it.reader == reader && it.reader_cuts)
        };
        let mut readers: Vec<Reader> = Vec::new();
        for reader in Reader::ALL {
            if !readers.iter().any(|it| apart(*it) == apart(reader)) {
                readers.push(reader);
            }
        }
        readers
    }

    /// Plans it for a reader; writes every fault if there is one.
    pub(crate) fn planned(
        &self,
        asked: &args::Described,
        reader: Reader,
        streams: &mut Streams<'_>,
    ) -> Result<Planned, Halt> {
        let mut notes = self.notes.clone();
        let planned = self.project.clone().map(|project| {
            let options = PlanOptions {
                kits: asked.kits,
                reader,
                kept: self.kept.clone(),
                alike: asked.alike,
                ..PlanOptions::default()
            };
            let planned = plan::plan(&project, &options);
            notes.extend(planned.notes);
            (project, planned.value)
        });
        let sources = self.sources.clone();
        match planned {
            Some((project, Some(plan))) if !notes.iter().any(Diagnostic::is_error) => {
                Ok(Planned { sources, project, plan, notes })
            }
            _ => {
                notes.sort_by_key(|note| (note.site.file, note.site.start));
                write(&notes, &sources, asked.messages, streams);
                Err(Halt::Description)
            }
        }
    }
}

/// Writes notes, and a line that counts them.
pub(crate) fn write(
    notes: &[Diagnostic],
    sources: &Sources,
    form: Messages,
    streams: &mut Streams<'_>,
) {
    let style = if streams.colours { Style::Styled } else { Style::Plain };
    let mut text = String::new();
    for note in notes {
        match form {
            Messages::Long => {
                text.push_str(&render(note, sources, style));
                text.push_str("\n\n");
            }
            Messages::Short => {
                text.push_str(&short(note, sources));
                text.push('\n');
            }
            Messages::Json => {
                text.push_str(&json(note, sources));
                text.push('\n');
            }
        }
    }
    if form == Messages::Long && !notes.is_empty() {
        text.push_str(&count(notes));
        text.push('\n');
    }
    // That a message can't be written can't be told either.
    let _ = streams.err.write_all(text.as_bytes());
}

/// "2 errors, 1 warning".
fn count(notes: &[Diagnostic]) -> String {
    let kinds = [
        (Severity::Error, "error", "errors"),
        (Severity::Warning, "warning", "warnings"),
        (Severity::Advice, "piece of advice", "pieces of advice"),
    ];
    let mut counts = Vec::new();
    for (severity, one, many) in kinds {
        match notes.iter().filter(|note| note.rule.severity == severity).count() {
            0 => {}
            1 => counts.push(format!("1 {one}")),
            count => counts.push(format!("{count} {many}")),
        }
    }
    counts.join(", ")
}
