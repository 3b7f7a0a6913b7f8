//! `new`: a description to start from.

use crate::cli::args::{New, ReaderName};
use crate::cli::{Halt, Streams, files};

/// A starter for each of those who finish the cards; who prepares them for others
/// starts from the same.
const fn starter(reader: ReaderName) -> &'static str {
    match reader {
        ReaderName::Class | ReaderName::Host => {
            include_str!("../../templates/starters/class.yaml")
        }
        ReaderName::Kit | ReaderName::Bench => {
            include_str!("../../templates/starters/kit.yaml")
        }
        ReaderName::Travel => include_str!("../../templates/starters/travel.yaml"),
    }
}

/// Writes a starter where nothing is yet.
pub(crate) fn run(asked: &New, streams: &mut Streams<'_>) -> Result<(), Halt> {
    let path = &asked.file;
    files::write_new(path, starter(asked.reader).as_bytes())?;
    let path = path.display();
    streams
        .say(&format!("{path}: written; change it, then: leafwright check {path}\n"))?;
    Ok(())
}
