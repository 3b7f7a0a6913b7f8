//! The few numbers of a font file that shaping does not hand on (OpenType 1.9).

/// What a font file says about itself; lengths in font units.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Metrics {
    /// Units per em (`head`).
    pub units_per_em: u16,
    /// Left, bottom, right and top of the box around all glyphs (`head`).
    pub bounds: [i16; 4],
    /// Highest reach above the baseline (`hhea`).
    pub ascent: i16,
    /// Lowest reach, negative below the baseline (`hhea`).
    pub descent: i16,
    /// Rise and run of the caret (`hhea`).
    pub caret: [i16; 2],
    /// Weight from 1 to 1000 (`OS/2`).
    pub weight: u16,
    /// Whether the licence bits allow to embed a subset (`OS/2` fsType).
    pub may_be_embedded: bool,
    /// Advance of each glyph (`hmtx`).
    pub advances: Vec<u16>,
    /// PostScript name (`name` 6).
    pub postscript: String,
}

/// A table of a font file, read with care.
#[derive(Clone, Copy)]
struct Table<'a>(&'a [u8]);

impl Table<'_> {
    fn u16(self, at: usize) -> Result<u16, String> {
        let bytes = self.0.get(at..at + 2).ok_or("the font file is cut short")?;
        Ok(u16::from_be_bytes([bytes[0], bytes[1]]))
    }

    fn i16(self, at: usize) -> Result<i16, String> {
        Ok(self.u16(at)?.cast_signed())
    }

    fn u32(self, at: usize) -> Result<usize, String> {
        Ok(usize::from(self.u16(at)?) << 16 | usize::from(self.u16(at + 2)?))
    }
}

impl Metrics {
    /// Reads them from a TrueType or OpenType file with a single face.
    ///
    /// # Errors
    /// A sentence for the user if the file is no such font.
    pub fn read(bytes: &[u8]) -> Result<Self, String> {
        let file = Table(bytes);
        match bytes.get(..4) {
            Some(b"OTTO" | b"\0\x01\0\0" | b"true") => {}
            Some(b"ttcf") => return Err("collections of fonts can't be used".into()),
            _ => return Err("it is no TrueType or OpenType font".into()),
        }
        let table = |tag: &[u8; 4]| -> Result<Table<'_>, String> {
            for record in 0..usize::from(file.u16(4)?) {
                let at = 12 + 16 * record;
                if bytes.get(at..at + 4) == Some(tag) {
                    let (start, length) = (file.u32(at + 8)?, file.u32(at + 12)?);
                    let end = start.saturating_add(length);
                    let table = bytes.get(start..end);
                    return table.map(Table).ok_or("the font file is cut short".into());
                }
            }
            Err(format!("it has no table `{}`", String::from_utf8_lossy(tag)))
        };
        let (head, hhea, os2) = (table(b"head")?, table(b"hhea")?, table(b"OS/2")?);
        let units_per_em = head.u16(18)?;
        if !(16..=16_384).contains(&units_per_em) {
            return Err("its units per em are out of bounds".into());
        }
        let glyphs = usize::from(table(b"maxp")?.u16(4)?);
        let (hmtx, measured) = (table(b"hmtx")?, usize::from(hhea.u16(34)?));
        let advances = (0..glyphs)
            .map(|glyph| hmtx.u16(4 * glyph.min(measured.saturating_sub(1))))
            .collect::<Result<_, _>>()?;
        // Bit 1 alone forbids to embed, bit 8 to take a subset.
        let licence = os2.u16(8)?;
        Ok(Self {
            units_per_em,
            bounds: [head.i16(36)?, head.i16(38)?, head.i16(40)?, head.i16(42)?],
            ascent: hhea.i16(4)?,
            descent: hhea.i16(6)?,
            caret: [hhea.i16(18)?, hhea.i16(20)?],
            weight: os2.u16(4)?,
            may_be_embedded: licence & 0xf != 0x2 && licence & 0x100 == 0,
            advances,
            postscript: postscript(table(b"name")?).unwrap_or_else(|| "Unnamed".into()),
        })
    }
}

/// The PostScript name, in the characters that a PDF name may hold.
fn postscript(name: Table<'_>) -> Option<String> {
    let storage = usize::from(name.u16(4).ok()?);
    for record in 0..usize::from(name.u16(2).ok()?) {
        let at = 6 + 12 * record;
        if name.u16(at + 6).ok()? == 6 {
            let length = usize::from(name.u16(at + 8).ok()?);
            let start = storage + usize::from(name.u16(at + 10).ok()?);
            let raw = name.0.get(start..start + length)?;
            let kept = raw.iter().filter(|it| it.is_ascii_alphanumeric() || **it == b'-');
            return Some(kept.map(|it| char::from(*it)).collect());
        }
    }
    None
}

#[cfg(test)]
mod tests {
    use super::Metrics;

    #[test]
    fn a_text_file_is_no_font() {
        assert!(Metrics::read(b"hello").is_err());
        assert!(Metrics::read(b"").is_err());
        assert!(Metrics::read(b"\0\x01\0\0\0\x09").is_err());
    }
}
