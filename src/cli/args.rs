//! What can be said on the command line.

use std::path::PathBuf;

use clap::{Args, Parser, Subcommand, ValueEnum};

/// Plans a set of hand-made cards and prints the handout for it.
#[derive(Debug, Parser)]
#[command(
    name = "leafwright",
    version,
    about = "From a description of a set of hand-made cards to a printed handout",
    long_about = "From a description of a set of hand-made cards to a printed handout: \
                  checks that every piece fits, works out the straight cuts with the fewest \
                  sheets, counts what to buy in whole packs, puts the work in order, and lays \
                  out a PDF that is true to scale.",
    after_help = "Start here:\n  leafwright make demo-data/orchard-evenings.yaml\n\n\
                  Exit codes: 0 all is well; 1 the description is at fault; \
                  2 the command line, a file or the disk is."
)]
pub(crate) struct Arguments {
    #[command(subcommand)]
    pub(crate) command: Command,
}

#[derive(Debug, Subcommand)]
pub(crate) enum Command {
    /// Make a handout from a description.
    #[command(after_help = "Examples:\n  leafwright make harbour.yaml\n  \
                            leafwright make harbour.yaml --for travel --page a5\n  \
                            leafwright make harbour.yaml --kits 12 -o table.pdf\n  \
                            leafwright make harbour.yaml --for class,host -o evening\n  \
                            leafwright make harbour.yaml --names people.csv -o evening")]
    Make(Make),
    /// Say everything that is wrong with a description; write nothing.
    Check(Check),
    /// Show how the sheets are cut.
    #[command(after_help = "Examples:\n  leafwright cuts harbour.yaml\n  \
                            leafwright cuts harbour.yaml --kits 12 --json > cuts.json")]
    Cuts(Cuts),
    /// List the sizes of sheets, cards and envelopes that have a name.
    Formats(Formats),
    /// Write a description to start from, with remarks that say what each line is for.
    #[command(after_help = "Examples:\n  leafwright new harbour.yaml\n  \
                            leafwright new --for travel ferry.yaml")]
    New(New),
    /// Explain a message by its rule, or a key of the description.
    #[command(after_help = "Examples:\n  leafwright why piece-larger-than-sheet\n  \
                            leafwright why edge to edge")]
    Why(Why),
    /// Print the JSON schema of descriptions, for editors that complete and check.
    Schema,
    /// Print completions for a shell.
    Completions(Completions),
    /// Print the manual page.
    Manual,
}

/// The description and how many kits are made of it.
#[derive(Args, Debug)]
pub(crate) struct Described {
    /// The description, a YAML file.
    pub(crate) description: PathBuf,
    /// How many kits, instead of the number in the description.
    #[arg(long, value_name = "N", value_parser = clap::value_parser!(u32).range(1..=10_000))]
    pub(crate) kits: Option<u32>,
    /// Cut every sheet of a paper the same way: fewer steps, sometimes more sheets.
    #[arg(long)]
    pub(crate) alike: bool,
    /// How messages are written: with the place shown, one line each, or one line of JSON each.
    #[arg(long, value_enum, default_value = "long", value_name = "FORM")]
    pub(crate) messages: Messages,
}

#[derive(Args, Debug)]
pub(crate) struct Make {
    #[command(flatten)]
    pub(crate) described: Described,
    /// Who the handout is for; several are made in one run.
    #[arg(
        long = "for",
        value_enum,
        value_delimiter = ',',
        default_value = "class",
        value_name = "READER"
    )]
    pub(crate) readers: Vec<ReaderName>,
    /// A table of names, one person a line: everyone gets a copy with her name on it.
    #[arg(long, value_name = "FILE")]
    pub(crate) names: Option<PathBuf>,
    /// The page it is printed on [default: what suits the reader and the unit].
    #[arg(long, value_enum, value_name = "SIZE")]
    pub(crate) page: Option<PageName>,
    /// The units that lengths are given in [default: the description's].
    #[arg(long, value_enum, value_name = "UNITS")]
    pub(crate) units: Option<UnitsName>,
    /// The language, or several with commas between: one PDF each [default: the
    /// description's].
    #[arg(long, value_name = "TAG", value_delimiter = ',', value_parser = language)]
    pub(crate) language: Vec<String>,
    /// Where to write the PDF [default: NAME-READER.pdf in this folder]; with several
    /// readers or with names, the folder to write them to.
    #[arg(short, long, value_name = "FILE")]
    pub(crate) output: Option<PathBuf>,
    /// Leave out colours.
    #[arg(long, value_enum, default_value = "colour", value_name = "INK")]
    pub(crate) ink: Ink,
    /// Set in 18 pt for readers who see little.
    #[arg(long)]
    pub(crate) large_print: bool,
    /// How finely pictures are printed at most, in dots an inch.
    #[arg(long, default_value_t = 300, value_name = "DOTS",
          value_parser = clap::value_parser!(u32).range(72..=1200))]
    pub(crate) picture_dots: u32,
    /// Add every sheet at true size, in parts where it is larger than the page.
    #[arg(long)]
    pub(crate) true_size: bool,
    /// Set small pages two by two on sheets that are printed on both sides, folded
    /// and stapled: half-letter on letter, a5 on a4.
    #[arg(long)]
    pub(crate) booklet: bool,
    /// The kind of PDF: the usual one, or one for archives that want PDF/A-1b.
    #[arg(long, value_enum, default_value = "tagged", value_name = "KIND")]
    pub(crate) pdf: PdfKind,
}

#[derive(Args, Debug)]
pub(crate) struct Check {
    #[command(flatten)]
    pub(crate) described: Described,
}

#[derive(Args, Debug)]
pub(crate) struct Cuts {
    #[command(flatten)]
    pub(crate) described: Described,
    /// Whose way of working counts: whether sheets are cut together.
    #[arg(long = "for", value_enum, default_value = "class", value_name = "READER")]
    pub(crate) reader: ReaderName,
    /// Write JSON (see templates/cuts.schema.json) instead of text.
    #[arg(long)]
    pub(crate) json: bool,
    /// Keep the plan beside the description: later runs cut the same way.
    #[arg(long)]
    pub(crate) keep: bool,
    /// Draw sheets with letters and signs that every terminal has.
    #[arg(long)]
    pub(crate) ascii: bool,
}

#[derive(Args, Debug)]
pub(crate) struct Formats {
    /// Only names that contain this.
    pub(crate) filter: Option<String>,
}

#[derive(Args, Debug)]
pub(crate) struct New {
    /// Where to write it; nothing that is there is overwritten.
    #[arg(default_value = "my-cards.yaml")]
    pub(crate) file: PathBuf,
    /// Who will finish the cards.
    #[arg(long = "for", value_enum, default_value = "class", value_name = "READER")]
    pub(crate) reader: ReaderName,
}

#[derive(Args, Debug)]
pub(crate) struct Why {
    /// A rule, as messages name it in brackets, or a key; without it, all rules are listed.
    pub(crate) name: Vec<String>,
}

#[derive(Args, Debug)]
pub(crate) struct Completions {
    /// The shell that is to complete.
    #[arg(value_enum)]
    pub(crate) shell: clap_complete::Shell,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(crate) enum Messages {
    /// With an excerpt that shows the place.
    Long,
    /// One line each: FILE:LINE:COLUMN: error, rule and message.
    Short,
    /// One object each, a line each.
    Json,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, ValueEnum)]
pub(crate) enum ReaderName {
    /// A person at a class table.
    Class,
    /// The host of the class, who prepares it.
    Host,
    /// The buyer of a kit.
    Kit,
    /// The maker of the kits, who cuts and bags them.
    Bench,
    /// Someone who finishes the cards on a journey.
    Travel,
}

impl ReaderName {
    /// The name of the template for this reader.
    pub(crate) const fn template(self) -> &'static str {
        match self {
            Self::Class => "class",
            Self::Host => "host",
            Self::Kit => "kit",
            Self::Bench => "bench",
            Self::Travel => "travel",
        }
    }
}

#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(crate) enum PageName {
    /// 8 1/2 × 11 in.
    Letter,
    /// 210 × 297 mm.
    A4,
    /// 5 1/2 × 8 1/2 in.
    HalfLetter,
    /// 148 × 210 mm.
    A5,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(crate) enum UnitsName {
    /// Inches.
    In,
    /// Millimetres.
    Mm,
    /// Both, the description's first.
    Both,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(crate) enum Ink {
    /// With the accent and the colours of the papers.
    Colour,
    /// Greys only.
    Gray,
}

#[derive(Clone, Copy, Debug, PartialEq, Eq, ValueEnum)]
pub(crate) enum PdfKind {
    /// Tagged for screen readers, for print and for archives (PDF 1.7).
    Tagged,
    /// Without tags, as PDF/A-1b wants it (PDF 1.4).
    Archive,
}

/// The short name of a language, such as `de` or `pt-BR`.
fn language(text: &str) -> Result<String, String> {
    if crate::project::is_language(text) {
        Ok(text.to_owned())
    } else {
        Err("write the short name of a language, such as `en` or `pt-BR`".to_owned())
    }
}
