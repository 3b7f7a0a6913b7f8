//! The program; see `cli` for what it can do.

use std::io::IsTerminal;
use std::process::ExitCode;

fn main() -> ExitCode {
    leafwright::cli::apologise_for_panics();
    let (mut out, mut err) = (std::io::stdout().lock(), std::io::stderr());
    let colours = err.is_terminal();
    leafwright::cli::run(std::env::args_os(), &mut out, &mut err, colours)
}
