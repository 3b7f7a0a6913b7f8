//! `make` and `check`: a handout, or everything that stands in its way.

use std::path::{Path, PathBuf};

use crate::cli::args::{Check, Ink, Make, PageName, PdfKind, ReaderName, UnitsName};
use crate::cli::batch::{self, Job, Made, Packet};
use crate::cli::{Failure, Halt, Streams, files, names, notes};
use crate::diag::Diagnostic;
use crate::geom::Unit;
use crate::handout::{self, Hands, Template};
use crate::layout::{PageSetup, PageSize};
use crate::pdf::{Flavour, PdfInfo};
use crate::plan::Plan;
use crate::project::{Project, Reader};
use crate::words::Units;

/// Makes handouts and writes them, each whole or not at all; nothing is written if
/// the description is at fault.
pub(crate) fn run(asked: &Make, streams: &mut Streams<'_>) -> Result<(), Halt> {
    let names = asked.names.as_deref().map(names::read).transpose()?;
    let mut readers = asked.readers.clone();
    readers.sort_unstable();
    readers.dedup();
    let mut said: Vec<Diagnostic> = Vec::new();
    let mut sources = None;
    let mut packets = Vec::new();
    let mut jobs = Vec::new();
    for reader in &readers {
        let template = built_in(reader.template())?;
        let planned = notes::planned(&asked.described, template.reader, streams)?;
        add_new(&mut said, planned.notes);
        sources = Some(planned.sources);
        let personal = names.as_ref().filter(|_| template.hands == Hands::Reader);
        let options = handout::Options {
            units: asked.units.map(|units| in_units(units, &planned.project)),
            for_name: personal.is_some(),
            names: names.clone().unwrap_or_default(),
        };
        let at = packets.len();
        let project = &planned.project;
        packets.push(packet(asked, project, &planned.plan, &template, &options));
        let several = readers.len() > 1 || names.is_some();
        match personal {
            Some(names) => {
                jobs.extend(names.iter().enumerate().map(|(index, name)| Job {
                    packet: at,
                    name: Some(name.clone()),
                    path: of_person(asked, *reader, index + 1, name),
                }));
            }
            None => jobs.push(Job {
                packet: at,
                name: None,
                path: output(asked, *reader, several),
            }),
        }
    }
    if let Some(folder) = asked.output.as_ref().filter(|_| jobs.len() > 1) {
        files::folder(folder)?;
    }
    let made = batch::make(&packets, &jobs, streams)?;
    let mut faulty = false;
    for one in &made {
        faulty |= one.pages.is_none();
        add_new(&mut said, one.notes.clone());
    }
    if let Some(sources) = sources {
        notes::write(&said, &sources, asked.described.messages, streams);
    }
    if faulty {
        return Err(Halt::Description);
    }
    tell(&jobs, &made, streams)?;
    Ok(())
}

/// Says what was written; the copies of one packet in one line.
fn tell(jobs: &[Job], made: &[Made], streams: &mut Streams<'_>) -> Result<(), Failure> {
    for (index, job) in jobs.iter().enumerate() {
        let pages = made.get(index).and_then(|it| it.pages).unwrap_or(0);
        let pages =
            if pages == 1 { "1 page".to_owned() } else { format!("{pages} pages") };
        let copies = jobs.iter().filter(|it| it.packet == job.packet).count();
        if job.name.is_none() || copies == 1 {
            streams.say(&format!("{}: {pages}\n", job.path.display()))?;
        } else if jobs[..index].iter().all(|it| it.packet != job.packet) {
            let folder = job.path.parent().filter(|it| !it.as_os_str().is_empty());
            let folder = folder.unwrap_or(Path::new("."));
            streams
                .say(&format!("{}: {copies} copies, {pages} each\n", folder.display()))?;
        }
    }
    Ok(())
}

/// A packet as it is laid out, whoever's copy it is.
fn packet(
    asked: &Make,
    project: &Project,
    plan: &Plan,
    template: &Template,
    options: &handout::Options,
) -> Packet {
    let setup = PageSetup {
        size: asked
            .page
            .map_or_else(|| usual_page(template, project.unit), PageSize::from),
        large_print: asked.large_print,
        gray: asked.ink == Ink::Gray,
    };
    let info = PdfInfo {
        author: project.handed_out_by.as_ref().map(|it| it.name.words.clone()),
        subject: project.about.as_ref().map(|it| it.words.clone()),
        flavour: match asked.pdf {
            PdfKind::Tagged => Flavour::Tagged,
            PdfKind::Archive => Flavour::Archive1b,
        },
    };
    Packet {
        document: handout::write(project, plan, template, options.clone()),
        setup,
        info,
    }
}

fn in_units(units: UnitsName, project: &Project) -> Units {
    match units {
        UnitsName::In => Units::Only(Unit::Inch),
        UnitsName::Mm => Units::Only(Unit::Mm),
        UnitsName::Both => Units::Both(project.unit),
    }
}

/// Adds notes that were not said yet.
fn add_new(said: &mut Vec<Diagnostic>, notes: Vec<Diagnostic>) {
    for note in notes {
        if !said.iter().any(|it| same_note(it, &note)) {
            said.push(note);
        }
    }
}

/// The name of the description without its ending.
fn stem(asked: &Make) -> String {
    let stem = asked.described.description.file_stem();
    stem.map_or_else(|| "handout".into(), |it| it.to_string_lossy().into_owned())
}

/// Where a packet is written: the named file, or a file in the named folder.
fn output(asked: &Make, reader: ReaderName, several: bool) -> PathBuf {
    let usual = format!("{}-{}.pdf", stem(asked), reader.template());
    match (&asked.output, several) {
        (Some(file), false) => file.clone(),
        (Some(folder), true) => folder.join(usual),
        (None, _) => PathBuf::from(usual),
    }
}

/// Where the copy of a person is written.
fn of_person(asked: &Make, reader: ReaderName, number: usize, name: &str) -> PathBuf {
    let (stem, name) = (stem(asked), names::for_file(name));
    let dash = if name.is_empty() { "" } else { "-" };
    let file = format!("{stem}-{}-{number:03}{dash}{name}.pdf", reader.template());
    asked.output.as_ref().map_or_else(|| PathBuf::from(&file), |it| it.join(&file))
}

/// Says everything that is wrong with a description.
pub(crate) fn check(asked: &Check, streams: &mut Streams<'_>) -> Result<(), Halt> {
    // Readers differ in who cuts; what is wrong for any of them is said once.
    let mut said: Vec<Diagnostic> = Vec::new();
    let mut sources = None;
    for reader in Reader::ALL {
        let planned = notes::planned(&asked.described, reader, streams)?;
        add_new(&mut said, planned.notes);
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
