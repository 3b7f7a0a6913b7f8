//! Files in, files out: the only place that opens them.

use std::fs;
use std::io::{self, Read, Write};
use std::path::{Component, Path, PathBuf};

use crate::cli::Failure;
use crate::plan::cut::{Kept, KeptFault};
use crate::source::{Folder, Source};

/// A description may not be larger; the reader of descriptions says so too.
const MOST_BYTES: u64 = 64 * 1024 * 1024;

/// The folder that a description lies in.
pub(crate) struct DiskFolder {
    root: PathBuf,
}

impl DiskFolder {
    /// The folder around a file.
    pub(crate) fn around(file: &Path) -> Self {
        let root = file.parent().filter(|it| !it.as_os_str().is_empty());
        Self { root: root.unwrap_or(Path::new(".")).to_path_buf() }
    }
}

impl Folder for DiskFolder {
    fn bytes(&self, path: &Path) -> Result<Vec<u8>, String> {
        let plain = path.components().all(|it| matches!(it, Component::Normal(_)));
        if !plain {
            return Err(format!(
                "`{}` leads out of the description's folder",
                path.display()
            ));
        }
        // A link may still lead out: compare where the paths really end.
        let file = self.root.join(path);
        let inside = file
            .canonicalize()
            .and_then(|file| Ok(file.starts_with(self.root.canonicalize()?)))
            .map_err(|fault| format!("`{}` can't be opened: {fault}", path.display()))?;
        if !inside {
            return Err(format!(
                "`{}` leads out of the description's folder",
                path.display()
            ));
        }
        // A pipe or a device would be waited for.
        if !file.is_file() {
            return Err(format!("`{}` is not a file", path.display()));
        }
        read_bounded(&file)
            .map_err(|fault| format!("`{}` can't be read: {fault}", path.display()))
    }
}

/// Reads a description.
pub(crate) fn description(path: &Path) -> Result<Source, Failure> {
    let name = path.display().to_string();
    let bytes = read_bounded(path).map_err(|fault| Failure {
        message: format!("`{name}` can't be read: {fault}"),
        hint: "name a description, such as demo-data/orchard-evenings.yaml".to_owned(),
    })?;
    let text = String::from_utf8(bytes).map_err(|fault| Failure {
        message: format!(
            "`{name}` is not UTF-8 text: byte {} is not a character",
            fault.utf8_error().valid_up_to() + 1
        ),
        hint: "save it from a text editor as UTF-8".to_owned(),
    })?;
    Ok(Source::new(name, text.strip_prefix('\u{feff}').unwrap_or(&text)))
}

/// Where the cutting plan of a description is kept.
pub(crate) fn kept_beside(description: &Path) -> PathBuf {
    description.with_extension("cuts.json")
}

/// The cutting plan that is kept beside a description, if there is one; or why it
/// can't be read.
pub(crate) fn kept(description: &Path) -> Option<Result<Kept, KeptFault>> {
    let path = kept_beside(description);
    let bytes = match read_bounded(&path) {
        Ok(bytes) => bytes,
        Err(fault) if fault.kind() == io::ErrorKind::NotFound => return None,
        Err(fault) => return Some(Err(KeptFault::NotReadable(fault.to_string()))),
    };
    let text = String::from_utf8(bytes);
    Some(match text {
        Ok(text) => Kept::from_json(&text),
        Err(_) => Err(KeptFault::NotReadable("it is not UTF-8 text".to_owned())),
    })
}

/// A text that was saved as UTF-8, without its byte order mark.
pub(crate) fn text(path: &Path) -> io::Result<String> {
    let text = String::from_utf8(read_bounded(path)?)
        .map_err(|_| io::Error::other("it is not UTF-8 text"))?;
    Ok(text.strip_prefix('\u{feff}').map(str::to_owned).unwrap_or(text))
}

/// Makes a folder, if there is none yet.
pub(crate) fn folder(path: &Path) -> Result<(), Failure> {
    fs::create_dir_all(path).map_err(|fault| Failure {
        message: format!("the folder `{}` can't be made: {fault}", path.display()),
        hint: "name another folder with -o".to_owned(),
    })
}

/// Removes what an interrupted run left half written in a folder.
pub(crate) fn sweep(folder: &Path) {
    let folder = if folder.as_os_str().is_empty() { Path::new(".") } else { folder };
    let Ok(entries) = fs::read_dir(folder) else { return };
    for entry in entries.flatten() {
        let name = entry.file_name();
        let name = name.to_string_lossy();
        let left = name.strip_prefix('.').and_then(|it| it.strip_suffix(".part"));
        let process = left.and_then(|it| it.rsplit_once(".pdf.")).map(|it| it.1);
        let process = process.and_then(|it| it.parse::<u32>().ok());
        if process.is_some_and(|it| it != std::process::id() && !runs(it)) {
            // What can't be removed does no harm.
            let _ = fs::remove_file(entry.path());
        }
    }
}

/// Whether a process may still be running; it may wherever that can't be seen.
fn runs(process: u32) -> bool {
    !Path::new("/proc/self").exists()
        || Path::new("/proc").join(process.to_string()).exists()
}

fn read_bounded(path: &Path) -> io::Result<Vec<u8>> {
    let file = fs::File::open(path)?;
    if file.metadata()?.is_dir() {
        return Err(io::Error::other("it is a folder"));
    }
    let mut bytes = Vec::new();
    file.take(MOST_BYTES + 1).read_to_end(&mut bytes)?;
    if bytes.len() as u64 > MOST_BYTES {
        return Err(io::Error::other("it is larger than 64 MiB"));
    }
    Ok(bytes)
}

/// Writes a file where there is none yet.
pub(crate) fn write_new(path: &Path, bytes: &[u8]) -> Result<(), Failure> {
    let file = fs::OpenOptions::new().write(true).create_new(true).open(path);
    file.and_then(|mut file| file.write_all(bytes)).map_err(|fault| {
        let there = fault.kind() == io::ErrorKind::AlreadyExists;
        Failure {
            message: match there {
                true => {
                    format!("`{}` is there already, and stays as it is", path.display())
                }
                false => format!("`{}` can't be written: {fault}", path.display()),
            },
            hint: "name another file".to_owned(),
        }
    })
}

/// Writes a whole file or nothing: to a temporary file beside it, then renamed.
pub(crate) fn write_whole(path: &Path, bytes: &[u8]) -> Result<(), Failure> {
    let fail = |fault: &io::Error| Failure {
        message: format!("`{}` can't be written: {fault}", path.display()),
        hint: "name another file with -o".to_owned(),
    };
    let name =
        path.file_name().ok_or_else(|| fail(&io::Error::other("it has no name")))?;
    let mut part = std::ffi::OsString::from(".");
    part.push(name);
    part.push(format!(".{}.part", std::process::id()));
    let part = path.with_file_name(part);
    let written = fs::File::create(&part)
        .and_then(|mut file| {
            file.write_all(bytes)?;
            file.sync_all()
        })
        .and_then(|()| fs::rename(&part, path));
    written.map_err(|fault| {
        // What is half written must not stay; that it can't be removed adds nothing.
        let _ = fs::remove_file(&part);
        fail(&fault)
    })
}
