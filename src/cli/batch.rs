//! Many handouts in one run: laid out and written by as many workers as there are
//! processors, each file whole or not at all.

use std::path::{Path, PathBuf};
use std::sync::atomic::{AtomicBool, AtomicUsize, Ordering};
use std::sync::mpsc::{SyncSender, sync_channel};
use std::thread;
use std::time::Duration;

use crate::cli::{Failure, Streams, files};
use crate::diag::Diagnostic;
use crate::document::Document;
use crate::fonts::Library;
use crate::handout;
use crate::layout::{self, PageSetup, Press};
use crate::page;
use crate::pdf::{self, PdfInfo, Ready};

/// A packet that is written once, or once for each name.
pub(crate) struct Packet {
    /// What it says.
    pub(crate) document: Document,
    /// On which pages.
    pub(crate) setup: PageSetup,
    /// The sheet that it is folded from, width and height in points, if it is a
    /// booklet.
    pub(crate) sheet: Option<(f64, f64)>,
    /// What the file says about itself.
    pub(crate) info: PdfInfo,
}

/// A file to be made.
pub(crate) struct Job {
    /// Index of its packet.
    pub(crate) packet: usize,
    /// Whose copy it is, if it bears a name.
    pub(crate) name: Option<String>,
    /// Where it is written.
    pub(crate) path: PathBuf,
}

/// A file that was made, or why it was not.
pub(crate) struct Made {
    /// Index of its job.
    pub(crate) job: usize,
    /// How many pages it has; `None` if the notes hold an error.
    pub(crate) pages: Option<usize>,
    /// On how many sheets they are, if it is a booklet.
    pub(crate) sheets: Option<usize>,
    /// What the layout has to say.
    pub(crate) notes: Vec<Diagnostic>,
}

/// After so many handouts a worker takes a fresh press, so that what it keeps does
/// not grow with the number of names.
const FRESH: usize = 64;

/// Makes every file, and tells how far it has come where messages go to a
/// terminal. The files are given back in the order of the jobs.
pub(crate) fn make(
    library: &Library,
    packets: &[Packet],
    jobs: &[Job],
    streams: &mut Streams<'_>,
) -> Result<Vec<Made>, Failure> {
    for folder in folders(jobs) {
        files::sweep(folder);
    }
    let workers = thread::available_parallelism().map_or(1, usize::from).min(jobs.len());
    if let [job] = jobs {
        // One handout needs no other thread, nor any progress to be told.
        let press = &mut Press::with(library.clone());
        return Ok(vec![one(press, &mut Ready::default(), packets, job, 0)?]);
    }
    let next = AtomicUsize::new(0);
    let stop = AtomicBool::new(false);
    // Bounded, so that finished files never pile up in front of the messages.
    let (sender, finished) = sync_channel(workers.saturating_mul(2).max(1));
    let mut made = Vec::with_capacity(jobs.len());
    let mut failed = None;
    thread::scope(|scope| {
        for _ in 0..workers {
            let sender = sender.clone();
            let (next, stop) = (&next, &stop);
            scope.spawn(move || work(library, packets, jobs, next, stop, &sender));
        }
        drop(sender);
        let mut progress = Progress::new(jobs.len());
        for result in finished {
            match result {
                Ok(one) => made.push(one),
                Err(failure) => {
                    stop.store(true, Ordering::Relaxed);
                    failed = failed.take().or(Some(failure));
                }
            }
            progress.tell(made.len(), streams);
        }
        progress.end(streams);
    });
    match failed {
        Some(failure) => Err(failure),
        None => {
            made.sort_by_key(|it| it.job);
            Ok(made)
        }
    }
}

/// The folders that files are written to.
fn folders(jobs: &[Job]) -> Vec<&Path> {
    let mut folders: Vec<&Path> = jobs.iter().filter_map(|it| it.path.parent()).collect();
    folders.sort_unstable();
    folders.dedup();
    folders
}

/// One worker: takes the next job until there is none.
fn work(
    library: &Library,
    packets: &[Packet],
    jobs: &[Job],
    next: &AtomicUsize,
    stop: &AtomicBool,
    sender: &SyncSender<Result<Made, Failure>>,
) {
    let mut press = Press::with(library.clone());
    let mut ready = Ready::default();
    let mut done = 0;
    while !stop.load(Ordering::Relaxed) {
        let index = next.fetch_add(1, Ordering::Relaxed);
        let Some(job) = jobs.get(index) else { return };
        if done == FRESH {
            (press, done) = (Press::with(library.clone()), 0);
        }
        done += 1;
        let result = one(&mut press, &mut ready, packets, job, index);
        // Nobody listens any more once a failure was told.
        if sender.send(result).is_err() {
            return;
        }
    }
}

/// Lays out and writes one file; its pages, unless the notes hold an error.
fn one(
    press: &mut Press,
    ready: &mut Ready,
    packets: &[Packet],
    job: &Job,
    index: usize,
) -> Result<Made, Failure> {
    let packet = &packets[job.packet];
    let named = job.name.as_ref().map(|name| handout::named(&packet.document, name));
    let document = named.as_ref().unwrap_or(&packet.document);
    let laid = layout::lay_out(press, document, &packet.setup);
    let faulty = laid.notes.iter().any(Diagnostic::is_error);
    let mut made = Made { job: index, pages: None, sheets: None, notes: laid.notes };
    let Some(mut laid) = laid.value.filter(|_| !faulty) else {
        return Ok(made);
    };
    made.pages = Some(laid.pages.len());
    if let Some(sheet) = packet.sheet {
        laid = page::fold(laid, sheet);
        made.sheets = Some(laid.pages.len() / 2);
    }
    let bytes = pdf::write_again(&laid, press.library(), &packet.info, ready);
    let bytes = bytes.map_err(|fault| Failure {
        message: format!("the PDF can't be made: {fault}"),
        hint: "this is a fault in leafwright; please report it".to_owned(),
    })?;
    files::write_whole(&job.path, &bytes)?;
    Ok(made)
}

/// How far a long run has come, on a terminal and after the first second.
struct Progress {
    began: std::time::Instant,
    all: usize,
    shown: bool,
}

impl Progress {
    #[expect(
        clippy::disallowed_methods,
        reason = "progress goes by the clock; nothing that is written depends on it"
    )]
    fn new(all: usize) -> Self {
        Self { began: std::time::Instant::now(), all, shown: false }
    }

    fn tell(&mut self, done: usize, streams: &mut Streams<'_>) {
        if !streams.colours || self.began.elapsed() < Duration::from_secs(1) {
            return;
        }
        self.shown = true;
        let full = done * 30 / self.all.max(1);
        let bar = "=".repeat(full) + &" ".repeat(30 - full.min(30));
        let _ = write!(streams.err, "\r[{bar}] {done} of {}", self.all);
        let _ = streams.err.flush();
    }

    fn end(&self, streams: &mut Streams<'_>) {
        if self.shown {
            let _ = write!(streams.err, "\r{}\r", " ".repeat(60));
        }
    }
}
