//! The command: arguments in, files and messages out.
//!
//! Results go to standard output and messages to standard error. The exit code
//! says who can mend it: 0 all is well, 1 the description is at fault, 2 the
//! command line, a file or the disk is.

mod args;
mod batch;
mod cuts;
mod files;
mod formats;
mod help;
mod languages;
mod make;
mod names;
mod new;
mod notes;
mod plain;
mod why;

use std::ffi::OsString;
use std::io::Write;
use std::process::ExitCode;

use clap::Parser;

use crate::cli::args::{Arguments, Command};

/// The description is at fault.
const FAULTY_DESCRIPTION: u8 = 1;
/// The command line, a file or the disk is at fault.
const FAULTY_SURROUNDINGS: u8 = 2;

/// What the user can mend outside of the description.
#[derive(Debug)]
pub(crate) struct Failure {
    /// What went wrong; names the file.
    pub(crate) message: String,
    /// What to do.
    pub(crate) hint: String,
}

/// Why a command ended early.
#[derive(Debug)]
pub(crate) enum Halt {
    /// Messages about the description were written.
    Description,
    /// Something outside of the description.
    Failure(Failure),
}

impl From<Failure> for Halt {
    fn from(failure: Failure) -> Self {
        Self::Failure(failure)
    }
}

/// Where a command writes, and whether colours are welcome there.
pub(crate) struct Streams<'a> {
    /// Results.
    pub(crate) out: &'a mut dyn Write,
    /// Messages.
    pub(crate) err: &'a mut dyn Write,
    /// Messages go to a terminal that shows colours.
    pub(crate) colours: bool,
}

impl Streams<'_> {
    /// Writes a result; a reader that went away is no fault.
    pub(crate) fn say(&mut self, text: &str) -> Result<(), Failure> {
        match self.out.write_all(text.as_bytes()).and_then(|()| self.out.flush()) {
            Err(fault) if fault.kind() != std::io::ErrorKind::BrokenPipe => {
                Err(Failure {
                    message: format!("the result can't be written: {fault}"),
                    hint: "send it somewhere else".to_owned(),
                })
            }
            _ => Ok(()),
        }
    }
}

/// Runs the command that the arguments ask for.
pub fn run(
    arguments: impl IntoIterator<Item = OsString>,
    out: &mut dyn Write,
    err: &mut dyn Write,
    colours: bool,
) -> ExitCode {
    let mut streams = Streams { out, err, colours };
    let arguments = match Arguments::try_parse_from(arguments) {
        Ok(arguments) => arguments,
        Err(fault) => {
            // Help and version are results, everything else is a message.
            let text = fault.render();
            let text = if colours { text.ansi().to_string() } else { text.to_string() };
            let to = if fault.use_stderr() { streams.err } else { streams.out };
            let _ = to.write_all(text.as_bytes());
            return ExitCode::from(if fault.use_stderr() {
                FAULTY_SURROUNDINGS
            } else {
                0
            });
        }
    };
    let ended = match &arguments.command {
        Command::Make(asked) => make::run(asked, &mut streams),
        Command::Check(asked) => make::check(asked, &mut streams),
        Command::Cuts(asked) => cuts::run(asked, &mut streams),
        Command::Formats(asked) => formats::run(asked, &mut streams),
        Command::New(asked) => new::run(asked, &mut streams),
        Command::Why(asked) => why::run(asked, &mut streams),
        Command::Schema => help::schema(&mut streams),
        Command::Completions(asked) => help::completions(asked, &mut streams),
        Command::Manual => help::manual(&mut streams),
    };
    match ended {
        Ok(()) => ExitCode::SUCCESS,
        Err(Halt::Description) => ExitCode::from(FAULTY_DESCRIPTION),
        Err(Halt::Failure(failure)) => {
            let _ = writeln!(
                streams.err,
                "error: {}\nhelp: {}",
                failure.message, failure.hint
            );
            ExitCode::from(FAULTY_SURROUNDINGS)
        }
    }
}

/// Asks for a report when something breaks that no description should break.
pub fn apologise_for_panics() {
    let usual = std::panic::take_hook();
    std::panic::set_hook(Box::new(move |info| {
        usual(info);
        let _ = std::io::stderr().write_all(
            b"\nThis is a fault in leafwright, not in your description. \
              Please report it with the description and the lines above.\n",
        );
    }));
}
