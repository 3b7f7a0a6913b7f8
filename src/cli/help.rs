//! `schema`, `completions` and `manual`: help for editors, shells and readers.

use clap::CommandFactory;

use crate::cli::args::{Arguments, Completions};
use crate::cli::{Failure, Halt, Streams};
use crate::project::keys;

/// Prints the JSON schema of descriptions.
pub(crate) fn schema(streams: &mut Streams<'_>) -> Result<(), Halt> {
    streams.say(&format!("{:#}\n", keys::schema()))?;
    Ok(())
}

/// Prints completions for a shell.
pub(crate) fn completions(
    asked: &Completions,
    streams: &mut Streams<'_>,
) -> Result<(), Halt> {
    let mut bytes = Vec::new();
    let mut command = Arguments::command();
    clap_complete::generate(asked.shell, &mut command, "leafwright", &mut bytes);
    streams.say(&String::from_utf8_lossy(&bytes))?;
    Ok(())
}

/// Prints the manual page: of the program, then of each command.
pub(crate) fn manual(streams: &mut Streams<'_>) -> Result<(), Halt> {
    let mut bytes = Vec::new();
    clap_mangen::Man::new(Arguments::command()).render(&mut bytes).map_err(|fault| {
        Failure {
            message: format!("the manual page can't be made: {fault}"),
            hint: "this is a fault in leafwright; please report it".to_owned(),
        }
    })?;
    streams.say(&String::from_utf8_lossy(&bytes))?;
    Ok(())
}
