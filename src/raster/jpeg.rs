//! The head of a JPEG file (ITU-T T.81, annex B): what it holds, and whether all
//! of it is there.

/// What the head of a file says.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) struct Head {
    pub(super) width: u32,
    pub(super) height: u32,
    /// Bits of each value.
    pub(super) precision: u8,
    /// 1 for greys, 3 for colours, 4 for printing inks.
    pub(super) components: u8,
    /// Coded in a way that every decoder knows: baseline or progressive, by
    /// Huffman.
    pub(super) usual: bool,
    /// A reader that follows the PDF standard takes its colours for what they are.
    pub(super) plain_colors: bool,
    /// How many times it goes over the picture.
    pub(super) scans: usize,
    /// Values that a decoder keeps until it has gone over all of it; 0 where it goes
    /// over it once.
    pub(super) kept: u64,
    /// It has an end.
    pub(super) whole: bool,
}

/// How many values there are for 100 pixels, by how finely each component is sampled
/// (T.81, A.1.1).
fn shares(components: &[u8]) -> u64 {
    let blocks = components.chunks_exact(3).map(|it| {
        let (across, down) = (it[1] >> 4, it[1] & 15);
        u64::from(across) * u64::from(down)
    });
    let finest = blocks.clone().max().unwrap_or(1).max(1);
    blocks.sum::<u64>() * 100 / finest
}

/// Reads the head of a file that starts as a JPEG file does; `None` if its
/// segments make no sense or end before the picture starts.
pub(super) fn head(bytes: &[u8]) -> Option<Head> {
    let mut at = 2;
    let mut head: Option<Head> = None;
    // The colour transform that an application segment states (ISO 32000-1, table
    // 13, "ColorTransform").
    let mut transform = None;
    let mut ids = [0_u8; 3];
    loop {
        while *bytes.get(at)? == 0xff && *bytes.get(at + 1)? == 0xff {
            at += 1;
        }
        let (0xff, marker) = (*bytes.get(at)?, *bytes.get(at + 1)?) else { return None };
        at += 2;
        if matches!(marker, 0x01 | 0xd0..=0xd8) {
            continue;
        }
        if marker == 0xd9 {
            return None;
        }
        let long =
            usize::from(u16::from_be_bytes([*bytes.get(at)?, *bytes.get(at + 1)?]));
        let segment = bytes.get(at + 2..at.checked_add(long)?)?;
        match marker {
            // Frames; c4, c8 and cc are tables and the like.
            0xc0..=0xcf if !matches!(marker, 0xc4 | 0xc8 | 0xcc) => {
                let [precision, h1, h0, w1, w0, components, parts @ ..] = segment else {
                    return None;
                };
                for (id, part) in ids.iter_mut().zip(parts.chunks(3)) {
                    *id = part[0];
                }
                let (width, height) =
                    (u16::from_be_bytes([*w1, *w0]), u16::from_be_bytes([*h1, *h0]));
                head = Some(Head {
                    width: u32::from(width),
                    height: u32::from(height),
                    precision: *precision,
                    components: *components,
                    usual: marker <= 0xc2,
                    plain_colors: true,
                    scans: 0,
                    kept: if marker == 0xc2 {
                        u64::from(width) * u64::from(height) * shares(parts) / 100
                    } else {
                        0
                    },
                    whole: false,
                });
            }
            0xee if segment.starts_with(b"Adobe") => transform = segment.get(11).copied(),
            0xda => break,
            _ => {}
        }
        at += long;
    }
    let mut head = head?;
    head.plain_colors = match (head.components, transform) {
        (1, _) => true,
        // Letters for names of components mean colours that are not transformed.
        (3, None) => ids != *b"RGB",
        (3, Some(transform)) => transform == 1,
        _ => false,
    };
    // In coded data ff is followed by 00; other pairs are markers.
    let pairs = bytes[at..].windows(2).filter(|it| it[0] == 0xff);
    for pair in pairs {
        match pair[1] {
            0xda => head.scans += 1,
            0xd9 => head.whole = true,
            _ => {}
        }
    }
    head.scans += 1;
    Some(head)
}
