//! Files that are broken or mean harm: a message for each, and never a panic.

use std::ffi::OsString;
use std::fs;
use std::path::Path;

use leafwright::cli;
use leafwright::diag::rules;
use leafwright::project;
use leafwright::raster::{Fault, MOST_BYTES, open};
use leafwright::source::Source;

use crate::paint::{Drawer, jpeg, png, shade};
use crate::random::Random;

/// The bytes of a PNG chunk.
fn chunk(kind: &[u8; 4], data: &[u8]) -> Vec<u8> {
    let mut bytes = u32::try_from(data.len()).expect("short").to_be_bytes().to_vec();
    bytes.extend(kind);
    bytes.extend(data);
    bytes.extend(crc(&bytes[4..]).to_be_bytes());
    bytes
}

/// The check value of a chunk (ISO/IEC 15948, annex D).
fn crc(bytes: &[u8]) -> u32 {
    let mut crc = u32::MAX;
    for byte in bytes {
        crc ^= u32::from(*byte);
        for _ in 0..8 {
            crc = if crc & 1 == 1 { 0xedb8_8320 ^ (crc >> 1) } else { crc >> 1 };
        }
    }
    !crc
}

/// A PNG file whose head says so, with what stands for its pixels.
fn claims(width: u32, height: u32, depth: u8, color: u8, pixels: &[u8]) -> Vec<u8> {
    let mut head = width.to_be_bytes().to_vec();
    head.extend(height.to_be_bytes());
    head.extend([depth, color, 0, 0, 0]);
    let mut bytes = b"\x89PNG\r\n\x1a\n".to_vec();
    bytes.extend(chunk(b"IHDR", &head));
    bytes.extend(chunk(b"IDAT", pixels));
    bytes.extend(chunk(b"IEND", b""));
    bytes
}

/// A JPEG file whose frame is changed: the place of a byte after its marker.
fn framed(changes: &[(usize, u8)]) -> Vec<u8> {
    let mut bytes = jpeg(64, 48, shade);
    let frame = bytes.windows(2).position(|it| it == [0xff, 0xc0]).expect("a frame");
    for (at, value) in changes {
        bytes[frame + at] = *value;
    }
    bytes
}

/// A JPEG file whose picture ends after a part of it.
fn part(bytes: &[u8], of: usize) -> Vec<u8> {
    bytes[..bytes.len() * of / 100].to_vec()
}

/// Files by the dozen, none of them a picture that can be used.
fn hostile() -> Vec<(String, Vec<u8>)> {
    let (plain, photo) = (png(64, 48, shade), jpeg(64, 48, shade));
    let mut all: Vec<(String, Vec<u8>)> = Vec::new();
    let mut add = |name: &str, bytes: Vec<u8>| all.push((name.to_owned(), bytes));
    add("nothing", Vec::new());
    add("one byte", vec![0x89]);
    add("zeros", vec![0; 4096]);
    for (name, start) in [
        ("gif", &b"GIF89a\x01\0\x01\0"[..]),
        ("webp", b"RIFF\x10\0\0\0WEBPVP8 "),
        ("tiff", b"II*\0\x08\0\0\0"),
        ("tiff the other way", b"MM\0*\0\0\0\x08"),
        ("heic", b"\0\0\0\x18ftypheic\0\0\0\0"),
        ("avif", b"\0\0\0\x18ftypavif\0\0\0\0"),
        ("bmp", b"BM\x3a\0\0\0"),
        ("pdf", b"%PDF-1.7\n"),
        ("svg", b"<svg xmlns='http://www.w3.org/2000/svg'/>"),
        ("words", b"title: not a picture\n"),
    ] {
        add(name, start.to_vec());
    }
    for percent in [3, 10, 20, 40, 60, 80, 95] {
        add(&format!("png, {percent} in 100 of it"), part(&plain, percent));
        add(&format!("jpeg, {percent} in 100 of it"), part(&photo, percent));
    }
    for (name, width, height) in [
        ("no width", 0, 10),
        ("no height", 10, 0),
        ("a billion wide", 1_000_000_000, 1),
        ("as much as fits", u32::MAX, u32::MAX),
        ("a long line", 40_000, 2),
        ("too many pixels", 7_000, 7_000),
        ("nothing behind it", 5_000, 5_000),
    ] {
        add(
            &format!("png with {name}"),
            claims(width, height, 8, 2, &[0x78, 0x9c, 3, 0]),
        );
    }
    add("png of 3 bits", claims(8, 8, 3, 2, b""));
    add("png of colour kind 5", claims(8, 8, 8, 5, b""));
    add("png with no palette", claims(8, 8, 8, 3, &[0x78, 0x9c, 3, 0, 0, 0, 0, 1]));
    add("png with rubbish for pixels", claims(64, 64, 8, 2, &[0x55; 600]));
    add("png with a false check value", {
        let mut bytes = plain.clone();
        bytes[29] ^= 0xff;
        bytes
    });
    add("png with a chunk of 4 GiB", {
        let mut bytes = b"\x89PNG\r\n\x1a\n".to_vec();
        bytes.extend([0xff; 4]);
        bytes.extend(b"IHDR");
        bytes
    });
    add("only the start of a jpeg", vec![0xff, 0xd8, 0xff]);
    add("jpeg of fill bytes", [vec![0xff, 0xd8], vec![0xff; 5000]].concat());
    add("jpeg with its end at once", vec![0xff, 0xd8, 0xff, 0xd9]);
    add("jpeg with a segment of no length", vec![0xff, 0xd8, 0xff, 0xe0, 0, 0, 1, 2]);
    add("jpeg with no height", framed(&[(5, 0), (6, 0)]));
    add("jpeg with no width", framed(&[(7, 0), (8, 0)]));
    add("jpeg of 60000 x 60000", framed(&[(5, 0xea), (6, 0x60), (7, 0xea), (8, 0x60)]));
    add("jpeg of 12 bits", framed(&[(4, 12)]));
    add("jpeg of four inks", framed(&[(9, 4)]));
    add("jpeg of nine components", framed(&[(9, 9)]));
    add("jpeg without loss", framed(&[(1, 0xc3)]));
    add("jpeg by arithmetic", framed(&[(1, 0xc9)]));
    add("png without its end", plain[..plain.len() - 12].to_vec());
    add("png with a false check value of its pixels", {
        let mut bytes = plain.clone();
        let end = bytes.len() - 13;
        bytes[end] ^= 1;
        bytes
    });
    add("progressive jpeg of 36 million pixels", {
        let side = 6000_u16.to_be_bytes();
        let [high, low] = [side[0], side[1]];
        let changes = [(1, 0xc2), (5, high), (6, low), (7, high), (8, low)];
        // As long as a file of that size is at least.
        let mut bytes = framed(&changes);
        let end = bytes.split_off(bytes.len() - 2);
        bytes.resize(100_000, 0);
        [bytes, end].concat()
    });
    add("jpeg that goes over it a thousand times", {
        let mut bytes = photo.clone();
        let end = bytes.split_off(bytes.len() - 2);
        for _ in 0..1000 {
            bytes.extend([0xff, 0xda, 0, 8, 1, 1, 0, 0, 63, 0]);
        }
        [bytes, end].concat()
    });
    all
}

#[test]
fn every_hostile_file_is_refused_with_its_name_and_its_line() {
    let files = hostile();
    assert!(files.len() >= 40, "{}", files.len());
    for (name, bytes) in files {
        let fault = open(&bytes).expect_err(&name);
        let folder = Drawer([("rows.png", bytes)].into());
        let text = "title: Hostile\nunit: in\npapers:\n  rows:\n    sheet: 8 x 6 in\n    pictures: rows.png\n";
        let (sources, read) = project::read(Source::new("hostile.yaml", text), &folder);
        let notes: Vec<_> = read
            .notes
            .iter()
            .filter(|it| it.rule == &rules::PICTURE_NOT_USABLE)
            .collect();
        let [note] = &notes[..] else { panic!("{name}: {:#?}", read.notes) };
        let line = sources.files[0].line_column(note.site.start as usize).0;
        assert_eq!(line, 6, "{name}");
        assert!(note.message.contains("`rows.png`"), "{name}: {}", note.message);
        assert!(note.message.contains(&fault.to_string()), "{name}: {}", note.message);
        assert!(!note.help.is_empty(), "{name}");
    }
}

#[test]
fn what_a_file_is_told_to_be_is_what_is_wrong_with_it() {
    let files = hostile();
    let fault = |wanted: &str| {
        let (_, bytes) = files.iter().find(|it| it.0 == wanted).expect(wanted);
        open(bytes).expect_err(wanted)
    };
    assert_eq!(fault("gif"), Fault::OtherKind(Some("GIF")));
    assert_eq!(fault("heic"), Fault::OtherKind(Some("HEIC")));
    assert_eq!(fault("jpeg of four inks"), Fault::PrintingInks);
    assert_eq!(fault("jpeg of 12 bits"), Fault::RareCoding);
    assert_eq!(fault("jpeg, 60 in 100 of it"), Fault::CutShort(64, 48));
    assert_eq!(fault("png, 60 in 100 of it"), Fault::CutShort(64, 48));
    assert_eq!(fault("png with nothing behind it"), Fault::CutShort(5000, 5000));
    assert_eq!(fault("png without its end"), Fault::CutShort(64, 48));
    let progressive = fault("progressive jpeg of 36 million pixels");
    assert_eq!(progressive, Fault::ManyGoes(6000, 6000));
    assert_eq!(fault("png with too many pixels"), Fault::TooManyPixels(7000, 7000));
    let large = [png(4, 4, shade), vec![0; MOST_BYTES]].concat();
    assert_eq!(open(&large).unwrap_err(), Fault::TooManyBytes(large.len()));
}

#[test]
fn no_change_to_a_file_makes_it_panic() {
    let mut random = Random::new(41);
    let seeds = [png(40, 30, shade), jpeg(40, 30, shade), png(40, 30, |_, _| [9, 9, 9])];
    for round in 0..600 {
        let mut bytes = seeds[round % seeds.len()].clone();
        for _ in 0..=random.below(6) {
            let long = i64::try_from(bytes.len()).expect("short");
            if long == 0 {
                break;
            }
            let at = usize::try_from(random.below(long)).expect("not below zero");
            match random.below(3) {
                0 => bytes[at] = u8::try_from(random.below(256)).expect("a byte"),
                1 => drop(bytes.remove(at)),
                _ => bytes.truncate(at.max(1)),
            }
        }
        if let Ok(picture) = open(&bytes) {
            assert!(picture.pixels() > 0);
            let _ = picture.gray().shrunk(7, 5).print();
        }
    }
}

#[test]
fn pictures_lie_below_the_folder_of_the_description() {
    let folder = Path::new(env!("CARGO_TARGET_TMPDIR")).join("pictures-below");
    let _ = fs::remove_dir_all(&folder);
    fs::create_dir_all(folder.join("project/scans")).expect("a folder for the test");
    fs::write(folder.join("outside.png"), png(80, 60, shade)).expect("a picture");
    fs::write(folder.join("project/scans/inside.png"), png(80, 60, shade))
        .expect("one more");
    #[cfg(unix)]
    std::os::unix::fs::symlink(
        "../../outside.png",
        folder.join("project/scans/link.png"),
    )
    .expect("a link");
    let absolute = folder.join("outside.png");
    let absolute = absolute.to_str().expect("a plain path");
    let mut cases = vec![
        ("scans/inside.png", true),
        ("../outside.png", false),
        ("scans/../../outside.png", false),
        (absolute, false),
        ("scans", false),
        ("scans/none.png", false),
    ];
    if cfg!(unix) {
        cases.push(("scans/link.png", false));
    }
    for (path, allowed) in cases {
        let text = format!(
            "title: Below\nunit: in\npapers:\n  rows:\n    sheet: 8 x 6 in\n    pictures: {path}\n\
             pieces: {{a: {{of: rows, size: 2 x 2 in, count: 1}}}}\n"
        );
        let file = folder.join("project/below.yaml");
        fs::write(&file, text).expect("a description");
        let (mut out, mut err) = (Vec::new(), Vec::new());
        let arguments =
            ["leafwright", "check", "--messages", "short"].map(OsString::from);
        let arguments = arguments.into_iter().chain([file.into_os_string()]);
        cli::run(arguments, &mut out, &mut err, false);
        let err = String::from_utf8(err).expect("text");
        assert_eq!(!err.contains("picture-not-found"), allowed, "{path}: {err}");
        if !allowed {
            assert!(err.contains("below.yaml:6:"), "{path}: {err}");
        }
    }
}
