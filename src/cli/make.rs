//! `make` and `check`: a handout, or everything that stands in its way.

use std::path::{Path, PathBuf};

use crate::cli::args::{Check, Ink, Make, PageName, PdfKind, ReaderName, UnitsName};
use crate::cli::batch::{self, Job, Made, Packet};
use crate::cli::files::{self, DiskFolder};
use crate::cli::{Failure, Halt, Streams, languages, names, notes};
use crate::diag::Diagnostic;
use crate::geom::Unit;
use crate::handout::{self, Hands, Template};
use crate::layout::{PageSetup, PageSize};
use crate::pdf::{Flavour, PdfInfo, Resolution};
use crate::plan::Plan;
use crate::project::{Project, Text};
use crate::words::Units;

/// Makes handouts and writes them, each whole or not at all; nothing is written if
/// the description is at fault.
pub(crate) fn run(asked: &Make, streams: &mut Streams<'_>) -> Result<(), Halt> {
    let page = asked.page.map(PageSize::from);
    if asked.booklet && page.is_some_and(|it| it.doubled().is_none()) {
        return Err(Halt::Failure(Failure {
            message: "a booklet is folded from small pages".to_owned(),
            hint: "leave `--page` out, or say `--page half-letter` or `--page a5`"
                .to_owned(),
        }));
    }
    let names = asked.names.as_deref().map(names::read).transpose()?;
    let mut readers = asked.readers.clone();
    readers.sort_unstable();
    readers.dedup();
    let read = notes::read(&asked.described)?;
    let folder = DiskFolder::around(&asked.described.description);
    let mut library = None;
    let mut said: Vec<Diagnostic> = Vec::new();
    let mut sources = None;
    let mut packets = Vec::new();
    let mut jobs = Vec::new();
    let mut done = Vec::new();
    for reader in &readers {
        let template = built_in(reader.template())?;
        let planned = read.planned(&asked.described, template.reader, streams)?;
        let project = &planned.project;
        add_new(&mut said, planned.notes);
        sources = Some(planned.sources);
        if library.is_none() {
            let (faces, faults) = languages::library(project, &folder);
            add_new(&mut said, faults);
            library = Some(faces);
        }
        let wanted = languages::wanted(&asked.language, project);
        for language in &wanted {
            add_new(&mut said, languages::notes(project, language));
            let personal = names.as_ref().filter(|_| template.hands == Hands::Reader);
            let options = handout::Options {
                units: asked.units.map(|units| in_units(units, project)),
                language: Some(language),
                true_size: asked.true_size,
                for_name: personal.is_some(),
                names: names.as_deref().unwrap_or_default(),
            };
            let named = asked.output.is_none() && *language != project.language;
            let suffix = (named || wanted.len() > 1).then_some(language.as_str());
            let at = packets.len();
            packets.push(packet(asked, project, &planned.plan, &template, &options));
            let several = readers.len() > 1 || names.is_some();
            let people = personal.into_iter().flatten().enumerate();
            jobs.extend(people.map(|(index, name)| {
                let path = of_person(asked, *reader, index + 1, name);
                let path = languages::file_for(&path, suffix);
                Job { packet: at, name: Some(name.clone()), path }
            }));
            if personal.is_none() {
                let path = output(asked, *reader, several);
                let path = languages::file_for(&path, suffix);
                jobs.push(Job { packet: at, name: None, path });
            }
        }
    }
    let mut faulty = said.iter().any(Diagnostic::is_error);
    if !faulty {
        if let Some(folder) =
            asked.output.as_ref().filter(|_| readers.len() > 1 || names.is_some())
        {
            files::folder(folder)?;
        }
        let library = library.unwrap_or_default();
        let made = batch::make(&library, &packets, &jobs, streams)?;
        faulty = made.iter().any(|it| it.pages.is_none());
        for one in &made {
            add_new(&mut said, one.notes.clone());
        }
        done = made;
    }
    if let Some(sources) = sources {
        notes::write(&said, &sources, asked.described.messages, streams);
    }
    if faulty {
        return Err(Halt::Description);
    }
    tell(&jobs, &done, streams)?;
    if asked.booklet {
        // Not being able to tell is no fault of the files.
        let _ = streams.err.write_all(HOW_TO_FOLD.as_bytes());
    }
    Ok(())
}

/// Says what was written; the copies of one packet in one line.
fn tell(jobs: &[Job], made: &[Made], streams: &mut Streams<'_>) -> Result<(), Failure> {
    for (index, job) in jobs.iter().enumerate() {
        let pages = made.get(index).map_or_else(String::new, pages_of);
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

/// How many pages were made, and on how many sheets if they are folded.
fn pages_of(made: &Made) -> String {
    let pages = made.pages.unwrap_or(0);
    let pages = if pages == 1 { "1 page".to_owned() } else { format!("{pages} pages") };
    match made.sheets {
        None => pages,
        Some(1) => format!("{pages} on 1 sheet"),
        Some(sheets) => format!("{pages} on {sheets} sheets"),
    }
}

/// A packet as it is laid out, whoever's copy it is.
fn packet(
    asked: &Make,
    project: &Project,
    plan: &Plan,
    template: &Template,
    options: &handout::Options<'_>,
) -> Packet {
    let size = match asked.page {
        Some(page) => PageSize::from(page),
        None if asked.booklet => usual_page(true, project.unit),
        None => usual_page(is_small(template), project.unit),
    };
    let setup =
        PageSetup { size, large_print: asked.large_print, gray: asked.ink == Ink::Gray };
    let sheet = size.doubled().filter(|_| asked.booklet).map(PageSize::sideways);
    let language = options.language.unwrap_or(&project.language);
    let told = |text: &Text| text.told_in(language).0.to_owned();
    let info = PdfInfo {
        author: project.handed_out_by.as_ref().map(|it| told(&it.name)),
        subject: project.about.as_ref().map(told),
        flavour: match asked.pdf {
            PdfKind::Tagged => Flavour::Tagged,
            PdfKind::Archive => Flavour::Archive1b,
        },
        pictures: Resolution(asked.picture_dots),
    };
    Packet {
        document: handout::write(project, plan, template, options.clone()),
        setup,
        sheet,
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
    let folder = DiskFolder::around(&asked.described.description);
    let read = notes::read(&asked.described)?;
    for reader in read.readers() {
        let planned = read.planned(&asked.described, reader, streams)?;
        add_new(&mut said, planned.notes);
        // Fonts are the same for every reader.
        if sources.is_none() {
            said.extend(languages::library(&planned.project, &folder).1);
        }
        sources = Some(planned.sources);
    }
    let faulty = said.iter().any(Diagnostic::is_error);
    if let Some(sources) = sources {
        notes::write(&said, &sources, asked.described.messages, streams);
    }
    if faulty {
        return Err(Halt::Description);
    }
    let verdict =
        if said.is_empty() { "all is well" } else { "nothing keeps it from being made" };
    streams.say(&format!("{}: {verdict}\n", asked.described.description.display()))?;
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
