//! `make` and `check`: a handout, or everything that stands in its way.

use std::path::PathBuf;

use crate::cli::args::{Check, Ink, Make, PageName, PdfKind, UnitsName};
use crate::cli::files::{self, DiskFolder};
use crate::cli::notes::{self, Planned};
use crate::cli::{Failure, Halt, Streams, languages};
use crate::diag::Diagnostic;
use crate::geom::Unit;
use crate::handout::{self, Template};
use crate::layout::{self, PageSetup, PageSize, Press};
use crate::pdf::{self, Flavour, PdfInfo};
use crate::project::{Reader, Text};
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
    let setup = PageSetup {
        size: asked
            .page
            .map_or_else(|| usual_page(&template, project.unit), PageSize::from),
        large_print: asked.large_print,
        gray: asked.ink == Ink::Gray,
    };
    let folder = DiskFolder::around(&asked.described.description);
    let (library, faults) = languages::library(&project, &folder);
    notes.extend(faults);
    let mut press = Press::with(library);
    let wanted = languages::wanted(&asked.language, &project);
    let mut handouts = Vec::new();
    for language in &wanted {
        let options = handout::Options { units, language: Some(language) };
        let document = handout::write(&project, &plan, &template, options);
        let laid = layout::lay_out(&mut press, &document, &setup);
        let more = languages::notes(&project, language).into_iter().chain(laid.notes);
        for note in more {
            if !notes.iter().any(|it| same_note(it, &note)) {
                notes.push(note);
            }
        }
        handouts.extend(laid.value.map(|laid| (language, laid)));
    }
    let faulty = notes.iter().any(Diagnostic::is_error);
    notes::write(&notes, &sources, asked.described.messages, streams);
    if faulty || handouts.len() < wanted.len() {
        return Err(Halt::Description);
    }
    let usual = || {
        let stem = asked.described.description.file_stem();
        let stem = stem.map_or_else(|| "handout".into(), |it| it.to_string_lossy());
        PathBuf::from(format!("{stem}-{name}.pdf"))
    };
    // All are made before the first is written.
    let mut files = Vec::new();
    for (language, laid) in handouts {
        let told = |text: &Text| text.told_in(language).0.to_owned();
        let info = PdfInfo {
            author: project.handed_out_by.as_ref().map(|it| told(&it.name)),
            subject: project.about.as_ref().map(told),
            flavour: match asked.pdf {
                PdfKind::Tagged => Flavour::Tagged,
                PdfKind::Archive => Flavour::Archive1b,
            },
        };
        let bytes =
            pdf::write(&laid, press.library(), &info).map_err(|fault| Failure {
                message: format!("the PDF can't be made: {fault}"),
                hint: "this is a fault in leafwright; please report it".to_owned(),
            })?;
        let named = asked.output.is_none() && *language != project.language;
        let suffix = (named || wanted.len() > 1).then_some(language.as_str());
        let output = asked.output.clone().unwrap_or_else(usual);
        files.push((languages::file_for(&output, suffix), bytes, laid.pages.len()));
    }
    for (output, bytes, pages) in files {
        files::write_whole(&output, &bytes)?;
        let pages =
            if pages == 1 { "1 page".to_owned() } else { format!("{pages} pages") };
        streams.say(&format!("{}: {pages}\n", output.display()))?;
    }
    Ok(())
}

/// Says everything that is wrong with a description.
pub(crate) fn check(asked: &Check, streams: &mut Streams<'_>) -> Result<(), Halt> {
    // Readers differ in who cuts; what is wrong for any of them is said once.
    let mut said: Vec<Diagnostic> = Vec::new();
    let mut sources = None;
    let folder = DiskFolder::around(&asked.described.description);
    for reader in Reader::ALL {
        let planned = notes::planned(&asked.described, reader, streams)?;
        for note in planned.notes {
            if !said.iter().any(|it| same_note(it, &note)) {
                said.push(note);
            }
        }
        let (_, faults) = languages::library(&planned.project, &folder);
        said.extend(faults.into_iter().filter(|_| sources.is_none()));
        sources = Some(planned.sources);
    }
    let faulty = said.iter().any(Diagnostic::is_error);
    if let Some(sources) = sources {
        notes::write(&said, &sources, asked.described.messages, streams);
    }
    if faulty {
        return Err(Halt::Description);
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

/// The page that a template asks for, in the sizes of the project's unit.
fn usual_page(template: &Template, unit: Unit) -> PageSize {
    let small = matches!(template.page.as_deref(), Some("half-letter" | "a5"));
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
