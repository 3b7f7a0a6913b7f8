//! `make` and `check`: a handout, or everything that stands in its way.

use std::path::PathBuf;

use crate::cli::args::{Check, Ink, Make, PageName, PdfKind, UnitsName};
use crate::cli::notes::{self, Planned};
use crate::cli::{Failure, Halt, Streams, files};
use crate::diag::Diagnostic;
use crate::geom::Unit;
use crate::handout::{self, Template};
use crate::layout::{self, PageSetup, PageSize, Press};
use crate::page;
use crate::pdf::{self, Flavour, PdfInfo};
use crate::project::Reader;
use crate::words::Units;

/// Makes a handout and writes it, or nothing.
pub(crate) fn run(asked: &Make, streams: &mut Streams<'_>) -> Result<(), Halt> {
    let name = asked.reader.template();
    let template = built_in(name)?;
    let planned = notes::planned(&asked.described, template.reader, streams)?;
    let Planned { sources, project, plan, mut notes } = planned;
    let units = asked.units.map(|units| match units {
        UnitsName::In => Units::Only(Unit::Inch),
        UnitsName::Mm => Units::Only(Unit::Mm),
        UnitsName::Both => Units::Both(project.unit),
    });
    let options = handout::Options { units, true_size: asked.true_size };
    let document = handout::write(&project, &plan, &template, options);
    let size = match asked.page {
        Some(page) => PageSize::from(page),
        None if asked.booklet => usual_page(true, project.unit),
        None => usual_page(is_small(&template), project.unit),
    };
    let sheet = size.doubled();
    if asked.booklet && sheet.is_none() {
        return Err(Halt::Failure(Failure {
            message: "a booklet is folded from small pages".to_owned(),
            hint: "leave `--page` out, or say `--page half-letter` or `--page a5`"
                .to_owned(),
        }));
    }
    let setup =
        PageSetup { size, large_print: asked.large_print, gray: asked.ink == Ink::Gray };
    let mut press = Press::new();
    let laid = layout::lay_out(&mut press, &document, &setup);
    notes.extend(laid.notes);
    let faulty = notes.iter().any(Diagnostic::is_error);
    notes::write(&notes, &sources, asked.described.messages, streams);
    let Some(mut laid) = laid.value.filter(|_| !faulty) else {
        return Err(Halt::Description);
    };
    let pages = laid.pages.len();
    if let Some(sheet) = sheet.filter(|_| asked.booklet) {
        laid = page::fold(laid, sheet.sideways());
    }
    let info = PdfInfo {
        author: project.handed_out_by.as_ref().map(|it| it.name.words.clone()),
        subject: project.about.as_ref().map(|it| it.words.clone()),
        flavour: match asked.pdf {
            PdfKind::Tagged => Flavour::Tagged,
            PdfKind::Archive => Flavour::Archive1b,
        },
    };
    let bytes = pdf::write(&laid, press.library(), &info).map_err(|fault| Failure {
        message: format!("the PDF can't be made: {fault}"),
        hint: "this is a fault in leafwright; please report it".to_owned(),
    })?;
    let output = asked.output.clone().unwrap_or_else(|| {
        let stem = asked.described.description.file_stem();
        let stem = stem.map_or_else(|| "handout".into(), |it| it.to_string_lossy());
        PathBuf::from(format!("{stem}-{name}.pdf"))
    });
    files::write_whole(&output, &bytes)?;
    let pages = if pages == 1 { "1 page".to_owned() } else { format!("{pages} pages") };
    if !asked.booklet {
        streams.say(&format!("{}: {pages}\n", output.display()))?;
        return Ok(());
    }
    let sheets = match laid.pages.len() / 2 {
        1 => "1 sheet".to_owned(),
        count => format!("{count} sheets"),
    };
    streams.say(&format!("{}: {pages} on {sheets}\n", output.display()))?;
    // Not being able to tell is no fault of the file.
    let _ = streams.err.write_all(HOW_TO_FOLD.as_bytes());
    Ok(())
}

/// What is said about a booklet, for whoever stands at the printer.
const HOW_TO_FOLD: &str = "\
print on both sides at 100 %, flipped on the short edge; keep the sheets in order,
fold the pile once in the middle, page 1 outside, and staple it in the fold
";

/// Says everything that is wrong with a description.
pub(crate) fn check(asked: &Check, streams: &mut Streams<'_>) -> Result<(), Halt> {
    // Readers differ in who cuts; what is wrong for any of them is said once.
    let mut said: Vec<Diagnostic> = Vec::new();
    let mut sources = None;
    for reader in Reader::ALL {
        let planned = notes::planned(&asked.described, reader, streams)?;
        for note in planned.notes {
            if !said.iter().any(|it| same_note(it, &note)) {
                said.push(note);
            }
        }
        sources = Some(planned.sources);
    }
    if let Some(sources) = sources {
        notes::write(&said, &sources, asked.described.messages, streams);
    }
    streams.say(&format!("{}: all is well\n", asked.described.description.display()))?;
    Ok(())
}

/// Sites compare as equal, so that places are compared by hand here.
fn same_note(one: &Diagnostic, other: &Diagnostic) -> bool {
    one == other && (one.site.file, one.site.start) == (other.site.file, other.site.start)
}

/// A template that comes with the house.
pub(crate) fn built_in(name: &str) -> Result<Template, Failure> {
    Template::built_in(name).map_err(|fault| Failure {
        message: fault.message,
        hint: fault.help.unwrap_or_else(|| "choose another reader".to_owned()),
    })
}

/// Whether a template asks for small pages.
fn is_small(template: &Template) -> bool {
    matches!(template.page.as_deref(), Some("half-letter" | "a5"))
}

/// The page that suits the project's unit.
fn usual_page(small: bool, unit: Unit) -> PageSize {
    match (small, unit) {
        (false, Unit::Inch) => PageSize::Letter,
        (false, Unit::Mm) => PageSize::A4,
        (true, Unit::Inch) => PageSize::HalfLetter,
        (true, Unit::Mm) => PageSize::A5,
    }
}

impl From<PageName> for PageSize {
    fn from(name: PageName) -> Self {
        match name {
            PageName::Letter => Self::Letter,
            PageName::A4 => Self::A4,
            PageName::HalfLetter => Self::HalfLetter,
            PageName::A5 => Self::A5,
        }
    }
}
