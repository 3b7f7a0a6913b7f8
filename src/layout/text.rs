//! Words into lines: shaped once, broken at any width.

use std::ops::Range;
use std::sync::Arc;

use crate::document::Inline;
use crate::document::Look;
use crate::fonts::FaceId;
use crate::page::Glyph;
use crate::page::Run;

use super::press::{Key, Press, Stretch, fractions};
use super::theme::Voice;

/// A text at a width.
#[derive(Clone, Debug, Default)]
pub(crate) struct Lines {
    /// From the top.
    pub(crate) lines: Vec<Line>,
    /// Characters that no face has, with the part of the text they stand in.
    pub(crate) missing: Vec<(char, u16)>,
}

/// One line of text.
#[derive(Clone, Debug)]
pub(crate) struct Line {
    /// In the order in which they are read.
    pub(crate) runs: Vec<Placed>,
    /// Its width without the space at its end.
    pub(crate) width: f64,
    /// It starts at the right, as in languages that run so.
    pub(crate) leftwards: bool,
}

/// A run at its place in a line.
#[derive(Clone, Debug)]
pub(crate) struct Placed {
    /// From the start of the line.
    pub(crate) x: f64,
    /// The glyphs.
    pub(crate) run: Arc<Run>,
    /// Which inline of the text it belongs to.
    pub(crate) part: u16,
}

/// Breaks a text into lines of at most a width.
pub(crate) fn set(
    press: &mut Press,
    text: &[Inline],
    voice: &Voice,
    width: f64,
) -> Arc<Lines> {
    let key = key(text, voice);
    lines(press, &key, width, None)
}

/// Breaks a text into lines of at most a width; the first so many are shorter, since
/// something stands beside them.
pub(crate) fn set_around(
    press: &mut Press,
    text: &[Inline],
    voice: &Voice,
    width: f64,
    short: (usize, f64),
) -> Arc<Lines> {
    let key = key(text, voice);
    lines(press, &key, width, Some(short))
}

/// Words in one face.
pub(crate) fn set_words(
    press: &mut Press,
    text: &str,
    face: FaceId,
    size: f64,
    width: f64,
) -> Arc<Lines> {
    let text = clean(text);
    let stretches = vec![Stretch { range: (0, text.len()), face, part: 0 }];
    lines(press, &Key { size: thousandths(size), text, stretches }, width, None)
}

/// How wide a text is without a break, and how wide its longest word.
pub(crate) fn widths(press: &mut Press, text: &[Inline], voice: &Voice) -> (f64, f64) {
    let shaped = press.shaped(&key(text, voice));
    let widths = shaped.layout.calculate_content_widths();
    (f64::from(widths.max), f64::from(widths.min))
}

/// What the shaper needs to know.
fn key(text: &[Inline], voice: &Voice) -> Key {
    let mut all = String::new();
    let mut stretches = Vec::with_capacity(text.len());
    for (part, inline) in (0..).zip(text) {
        let start = all.len();
        all.push_str(&clean(&inline.text));
        let face = match inline.look {
            Look::Plain => voice.plain,
            Look::Strong => voice.strong,
            Look::Quoted => voice.quoted,
        };
        if all.len() > start {
            stretches.push(Stretch { range: (start, all.len()), face, part });
        }
    }
    Key { size: thousandths(voice.size), text: all, stretches }
}

/// Units that stay with their number, whoever wrote them.
const UNITS: [&str; 12] =
    ["in", "mm", "cm", "m", "ft", "pt", "g", "gsm", "lb", "min", "h", "%"];

/// Control characters mean nothing on paper. A number like `5 1/2 in` is never parted
/// at the end of a line, nor a size like `8 x 8 in`, which is given its proper sign; so
/// is the apostrophe in a word.
fn clean(text: &str) -> String {
    let mut clean = String::with_capacity(text.len() + 4);
    let mut letters = text.char_indices();
    while let Some((at, letter)) = letters.next() {
        let rest = &text[at + letter.len_utf8()..];
        let measured = letter == ' ' && ends_measured(&clean);
        if measured && is_times(rest) {
            clean.push_str("\u{a0}×\u{a0}");
            // The sign and the space after it.
            letters.nth(1);
            continue;
        }
        let tied = measured
            && clean.ends_with(|it: char| it.is_ascii_digit())
            && stays_with_number(rest);
        let within = || {
            clean.ends_with(char::is_alphabetic) && rest.starts_with(char::is_alphabetic)
        };
        clean.push(match letter {
            ' ' if tied => '\u{a0}',
            '\'' if within() => '\u{2019}',
            it if it.is_control() || matches!(it, '\u{2028}' | '\u{2029}') => ' ',
            it => it,
        });
    }
    clean
}

/// Whether a text ends with a number or with the unit of one.
fn ends_measured(text: &str) -> bool {
    let number = |it: &str| it.ends_with(|it: char| it.is_ascii_digit());
    let word = text.rsplit([' ', '\u{a0}']).next().unwrap_or_default();
    let before = text[..text.len() - word.len()].trim_end();
    number(text) || (UNITS.contains(&word) && number(before))
}

/// Whether a text starts with the sign between two numbers of a size.
fn is_times(rest: &str) -> bool {
    let next = rest.strip_prefix("x ").or_else(|| rest.strip_prefix("× "));
    next.is_some_and(|it| it.starts_with(|it: char| it.is_ascii_digit()))
}

/// Whether a text starts with a fraction or a unit, which stay with a number before
/// them.
fn stays_with_number(rest: &str) -> bool {
    let word = rest.split(|it: char| !it.is_alphanumeric() && it != '/' && it != '%');
    let word = word.take(1).next().unwrap_or_default();
    UNITS.contains(&word) || fractions(word).first().is_some_and(|it| it.start == 0)
}

/// A size as a whole number.
fn thousandths(size: f64) -> u32 {
    #[expect(
        clippy::cast_possible_truncation,
        clippy::cast_sign_loss,
        reason = "clamped"
    )]
    let whole = (size * 1000.0).round().clamp(0.0, 1e9) as u32;
    whole
}

/// The lines of a text, made once for each width.
fn lines(
    press: &mut Press,
    key: &Key,
    width: f64,
    short: Option<(usize, f64)>,
) -> Arc<Lines> {
    if key.text.is_empty() {
        return Arc::new(Lines::default());
    }
    let shaped = press.shaped(key);
    let (count, narrow) = short.unwrap_or_default();
    let shape = (width.to_bits(), count, narrow.to_bits());
    if let Some(ready) = shaped.broken.get(&shape) {
        return Arc::clone(ready);
    }
    #[expect(clippy::cast_possible_truncation, reason = "points are small")]
    let [limit, narrow] = [width, narrow].map(|it| it.is_finite().then_some(it as f32));
    match (limit, narrow, count) {
        (Some(limit), Some(narrow), 1..) => {
            let mut breaker = shaped.layout.break_lines();
            breaker.state_mut().set_layout_max_advance(limit);
            for line in 0.. {
                let most = if line < count { narrow.min(limit) } else { limit };
                breaker.state_mut().set_line_max_advance(most);
                if breaker.break_next().is_none() {
                    break;
                }
            }
            breaker.finish();
        }
        _ => shaped.layout.break_all_lines(limit),
    }
    let layout = std::mem::take(&mut shaped.layout);
    let lines = Arc::new(collect(press, &layout, &key.text));
    let shaped = press.shaped(key);
    shaped.layout = layout;
    shaped.broken.insert(shape, Arc::clone(&lines));
    lines
}

/// Copies what the shaper made into runs of our own.
fn collect(press: &Press, layout: &parley::Layout<u16>, text: &str) -> Lines {
    let mut all = Lines::default();
    for line in layout.lines() {
        let metrics = line.metrics();
        let mut placed: Vec<Placed> = Vec::new();
        let mut starts: Vec<usize> = Vec::new();
        let mut x = 0.0;
        for run in line.runs() {
            let face = press.face_of(run.font());
            let leftwards = run.is_rtl();
            let mut open = Open::new(face, f64::from(run.font_size()), leftwards);
            // In the order in which they are read; `Open` puts them in place.
            for cluster in run.clusters() {
                let part = cluster.style().brush;
                // A run that reads leftwards stays in one piece.
                if open.part.is_some_and(|it| it != part && !leftwards) {
                    x = open.close(x, &mut placed);
                }
                open.part = open.part.or(Some(part));
                let range = cluster.text_range();
                if text[range.clone()].chars().all(is_silent) {
                    continue;
                }
                let squeezed = is_fraction_gap(text, &range);
                let advance =
                    f64::from(cluster.advance()) * if squeezed { 0.55 } else { 1.0 };
                open.add(&cluster, &text[range.clone()], advance);
                if cluster.glyphs().any(|it| it.id == 0) {
                    let lacking = text[range].chars().filter(|it| !is_silent(*it));
                    all.missing.extend(lacking.map(|it| (it, part)));
                }
            }
            x = open.close(x, &mut placed);
            starts.resize(placed.len(), run.text_range().start);
        }
        if placed.iter().any(|it| it.run.leftwards) {
            // As they are read; each knows its place.
            let mut read: Vec<_> = starts.into_iter().zip(placed).collect();
            read.sort_by_key(|it| it.0);
            placed = read.into_iter().map(|it| it.1).collect();
            if !layout.is_rtl() {
                placed = marked(placed);
            }
        }
        let hanging = f64::from(metrics.hanging_advance);
        all.lines.push(Line {
            runs: placed,
            width: (x - hanging).max(0.0),
            leftwards: layout.is_rtl(),
        });
    }
    all
}

/// Says after words that run leftwards where the line goes on as before: readers that
/// go by places take a quote or a bracket behind them for a part of them, and put it
/// first (UAX #9, 2.6: a left-to-right mark).
fn marked(placed: Vec<Placed>) -> Vec<Placed> {
    let mut all: Vec<Placed> = Vec::with_capacity(placed.len() + 1);
    for it in placed {
        let after = all.last().is_some_and(|last| last.run.leftwards);
        let run = &*it.run;
        let lead = run.text.len() - run.text.trim_start().len();
        let first = run.text[lead..].chars().next().filter(|it| !it.is_alphanumeric());
        let long = lead + first.map_or(0, char::len_utf8);
        let alone = run.glyphs.iter().any(|it| it.text == (lead..long));
        let (true, false, true, Some(first)) = (after, run.leftwards, alone, first)
        else {
            all.push(it);
            continue;
        };
        // The mark is said along with one sign only; the rest stands on its own.
        let (mut own, rest): (Vec<_>, Vec<_>) =
            run.glyphs.iter().cloned().partition(|it| it.text.start < long);
        let text = format!("{}\u{200e}{first}", &run.text[..lead]);
        for glyph in own.iter_mut().filter(|it| it.text.end == long) {
            glyph.text.end = text.len();
        }
        let shift = rest.first().map_or(run.advance, |it| it.x);
        let one = Run { glyphs: own, advance: shift, text, ..run.clone() };
        all.push(Placed { run: Arc::new(one), ..it });
        if rest.is_empty() {
            continue;
        }
        let moved = |it: Glyph| Glyph {
            x: it.x - shift,
            text: it.text.start - long..it.text.end - long,
            ..it
        };
        let rest = Run {
            glyphs: rest.into_iter().map(moved).collect(),
            advance: run.advance - shift,
            text: run.text[long..].to_owned(),
            ..run.clone()
        };
        all.push(Placed { x: it.x + shift, run: Arc::new(rest), part: it.part });
    }
    all
}

/// Whether a character only steers how others are set: marks of direction, of
/// joining and of variants (Unicode 16, property `Default_Ignorable_Code_Point`).
fn is_silent(character: char) -> bool {
    matches!(
        character,
        '\u{200b}'..='\u{200f}'
            | '\u{202a}'..='\u{202e}'
            | '\u{2060}'..='\u{2069}'
            | '\u{fe00}'..='\u{fe0f}'
            | '\u{feff}'
            | '\u{e0000}'..='\u{e0fff}'
    )
}

/// Whether a letter is of those that Arabic script joins (Unicode, block Arabic).
fn is_joined_letter(letter: char) -> bool {
    matches!(letter, '\u{621}'..='\u{64a}' | '\u{671}'..='\u{6d3}')
}

/// Whether a cluster is the gap of a number like `5 1/2`, which is set closer.
fn is_fraction_gap(text: &str, range: &Range<usize>) -> bool {
    matches!(&text[range.clone()], " " | "\u{a0}")
        && text[..range.start].ends_with(|it: char| it.is_ascii_digit())
        && {
            let rest = &text[range.end..];
            let digits = rest.bytes().take_while(u8::is_ascii_digit).count();
            let end = &rest[digits..];
            (1..=3).contains(&digits)
                && end.starts_with('/')
                && end[1..].starts_with(|it: char| it.is_ascii_digit())
        }
}

/// A run that is being filled.
struct Open {
    face: FaceId,
    size: f64,
    leftwards: bool,
    part: Option<u16>,
    glyphs: Vec<Glyph>,
    text: String,
    x: f64,
}

impl Open {
    fn new(face: FaceId, size: f64, leftwards: bool) -> Self {
        let (glyphs, text) = (Vec::new(), String::new());
        Self { face, size, leftwards, part: None, glyphs, text, x: 0.0 }
    }

    fn add(&mut self, cluster: &parley::Cluster<'_, u16>, words: &str, advance: f64) {
        let start = self.text.len();
        // A space is a space, whether a line may break at it or not.
        let said = words.chars().filter(|it| *it != '\u{ad}' && !is_silent(*it));
        self.text.extend(said.map(|it| if it == '\u{a0}' { ' ' } else { it }));
        let end = self.text.len();
        if cluster.is_ligature_continuation() {
            // The glyph of the ligature says this too.
            if let Some(glyph) = self.glyphs.last_mut() {
                glyph.text.end = end;
            }
        }
        // Several glyphs of a cluster, such as a letter and its marks, say a
        // character each, and the last one the rest.
        let count = cluster.glyphs().count();
        let mut says = start;
        let mut x = if self.leftwards { -self.x - advance } else { self.x };
        if self.leftwards && advance == 0.0 && words.starts_with(is_joined_letter) {
            // A letter that another one's glyph makes room for: readers that go by
            // places need to see that it comes after that one.
            x -= 0.02;
        }
        for (place, glyph) in cluster.glyphs().enumerate() {
            let next = self.text[says..].chars().next().map_or(0, char::len_utf8);
            let until = if place + 1 == count { end } else { says + next };
            #[expect(
                clippy::cast_possible_truncation,
                reason = "a font has no more glyphs"
            )]
            let id = glyph.id as u16;
            let at = x + f64::from(glyph.x);
            let rise = f64::from(glyph.y);
            self.glyphs.push(Glyph { id, x: at, rise, text: says..until });
            says = until;
            x += f64::from(glyph.advance);
        }
        self.x += advance;
    }

    /// Puts the run in its place and starts the next; gives where that stands.
    fn close(&mut self, x: f64, placed: &mut Vec<Placed>) -> f64 {
        let next = Self::new(self.face, self.size, self.leftwards);
        let Self { face, size, leftwards, part, mut glyphs, text, x: advance } =
            std::mem::replace(self, next);
        if leftwards {
            glyphs.iter_mut().for_each(|it| it.x += advance);
            glyphs.reverse();
        }
        if !glyphs.is_empty() {
            let run = Run { face, size, glyphs, text, advance, leftwards };
            placed.push(Placed { x, run: Arc::new(run), part: part.unwrap_or(0) });
        }
        x + advance
    }
}

#[cfg(test)]
mod tests {
    use super::{Press, clean, set_words};
    use crate::fonts::FaceId;

    #[test]
    fn thai_breaks_between_words() {
        // Hello, thanks, water, table: words from memory, as any dictionary has them.
        let words = ["สวัสดี", "ขอบคุณ", "น้ำ", "โต๊ะ"];
        let text = words.concat();
        // A face without these letters sets a box for each, which is wide enough here.
        let lines = set_words(&mut Press::new(), &text, FaceId::SERIF, 10.0, 60.0);
        let mut starts = Vec::new();
        for line in &lines.lines {
            let said: String = line.runs.iter().map(|it| it.run.text.as_str()).collect();
            starts.push(said);
        }
        assert!(starts.len() > 1, "{starts:?}");
        for line in starts {
            let begins = words.iter().any(|it| line.starts_with(it));
            assert!(begins, "a line begins within a word: {line}");
        }
    }

    #[test]
    fn numbers_keep_their_fractions_and_units() {
        assert_eq!(clean("Cut 5 1/2 in off"), "Cut 5\u{a0}1/2\u{a0}in off");
        assert_eq!(clean("200 mm, 40 inches"), "200\u{a0}mm, 40 inches");
        assert_eq!(clean("4 1/4 × 5 1/2"), "4\u{a0}1/4\u{a0}×\u{a0}5\u{a0}1/2");
        assert_eq!(clean("8 x 8 in each"), "8\u{a0}×\u{a0}8\u{a0}in each");
        assert_eq!(clean("9 mm x 6 mm"), "9\u{a0}mm\u{a0}×\u{a0}6\u{a0}mm");
        assert_eq!(clean("plan x 3"), "plan x 3");
        assert_eq!(clean("3 x tile"), "3 x tile");
        assert_eq!(clean("the keeper's 'own'"), "the keeper\u{2019}s 'own'");
        assert_eq!(clean("on 24 11/2026"), "on 24 11/2026");
        assert_eq!(clean("a\tb"), "a b");
    }
}
