//! The one who sets: what every kind of block needs at hand.

use std::collections::BTreeMap;

use crate::diag::Diagnostic;
use crate::diag::rules;
use crate::document::Foot;
use crate::document::Inline;
use crate::document::Look;
use crate::geom::Scale;
use crate::page::Ink;
use crate::page::Item;
use crate::page::Line as Stroke;
use crate::page::Link;
use crate::page::Owner;
use crate::page::Path;
use crate::page::Piece;
use crate::page::Role;
use crate::page::TagId;
use crate::page::Tags;
use crate::page::Text;
use crate::page::What;

use super::extents::Extents;
use super::press::Press;
use super::slab::Slab;
use super::text;
use super::text::Line;
use super::theme::{Theme, Voice};

/// Where a block may stand: its left edge and width, the margin column beside it,
/// and the widest that tables and drawings may become.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Frame {
    /// Left edge.
    pub(crate) left: f64,
    /// Width.
    pub(crate) width: f64,
    /// Left edge and width of the margin column, if there is one.
    pub(crate) margin: Option<(f64, f64)>,
    /// Left edge and width for what does not fit otherwise.
    pub(crate) wide: (f64, f64),
}

/// Holds all that grows while a document is laid out.
pub(crate) struct Setter<'a> {
    pub(crate) press: &'a mut Press,
    pub(crate) theme: Theme,
    pub(crate) phrases: &'a Foot,
    pub(crate) tags: Tags,
    pub(crate) notes: Vec<Diagnostic>,
    /// Scales that drawings share, by their number.
    pub(crate) scales: BTreeMap<u32, Scale>,
    /// How large drawings become.
    pub(crate) extents: Extents,
    /// Level of the last heading; the next goes at most one deeper.
    pub(crate) level: u8,
    /// What stands at the right of the lines that are set next.
    pub(crate) notch: Option<Notch>,
    /// Characters that were reported already, with the note if it has no place yet.
    reported: BTreeMap<char, Option<usize>>,
}

/// Something at the right that the first lines of a text make way for.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Notch {
    /// Lines beside it end here.
    pub(crate) edge: f64,
    /// How far it reaches below the top of the next line.
    pub(crate) deep: f64,
}

/// Which side of its room a line stands on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Stand {
    /// Where its language starts.
    Start,
    /// At the other side.
    End,
}

impl<'a> Setter<'a> {
    pub(crate) fn new(press: &'a mut Press, theme: Theme, phrases: &'a Foot) -> Self {
        Self {
            press,
            theme,
            phrases,
            tags: Tags::new(),
            notes: Vec::new(),
            scales: BTreeMap::new(),
            extents: Extents::default(),
            level: 0,
            notch: None,
            reported: BTreeMap::new(),
        }
    }

    /// Sets a text as lines of one tag, each a slab of the voice's leading.
    pub(crate) fn paragraph(
        &mut self,
        words: &[Inline],
        voice: &Voice,
        tag: TagId,
        left: f64,
        width: f64,
    ) -> Vec<Slab> {
        self.stand(words, voice, tag, left, width, Stand::Start)
    }

    /// The same, on a side of its room.
    pub(crate) fn stand(
        &mut self,
        words: &[Inline],
        voice: &Voice,
        tag: TagId,
        left: f64,
        width: f64,
        stand: Stand,
    ) -> Vec<Slab> {
        let short = self.notch.filter(|it| stand == Stand::Start && it.deep > 0.0);
        let lines = match short {
            Some(Notch { edge, deep }) => {
                #[expect(
                    clippy::cast_possible_truncation,
                    clippy::cast_sign_loss,
                    reason = "a page has few lines"
                )]
                let count = (deep / voice.leading).ceil() as usize;
                let short = (count, (edge - left).min(width));
                text::set_around(self.press, words, voice, width, short)
            }
            None => text::set(self.press, words, voice, width),
        };
        if let (Some(notch), Some(_)) = (&mut self.notch, short) {
            notch.deep -= lines.lines.len() as f64 * voice.leading;
        }
        self.report(&lines.missing, words);
        let owners = self.owners(words, tag);
        let count = lines.lines.len();
        let mut slabs = Vec::with_capacity(count);
        for (index, line) in lines.lines.iter().enumerate() {
            let mut slab = Slab::blank(voice.leading);
            // A single line of a paragraph is no sight on a page of its own.
            let lone = count > 1 && (index == 0 || index + 2 == count);
            slab.after = if index + 1 == count {
                0.0
            } else if lone {
                2_200.0
            } else {
                60.0
            };
            let free = width - line.width;
            let x = left
                + match (stand, line.leftwards) {
                    (Stand::Start, false) | (Stand::End, true) => 0.0,
                    (Stand::End, false) | (Stand::Start, true) => free,
                };
            self.line(&mut slab, line, words, &owners, voice, (x, voice.baseline()));
            slabs.push(slab);
        }
        slabs
    }

    /// The least width at which a short text takes no more lines than at `width`, so
    /// that no word is left alone in its last line.
    pub(crate) fn balanced(
        &mut self,
        words: &[Inline],
        voice: &Voice,
        width: f64,
    ) -> f64 {
        let count = text::set(self.press, words, voice, width).lines.len();
        if !(2..=4).contains(&count) {
            return width;
        }
        let (mut least, mut most) = (width / 2.0, width);
        while most - least > 4.0 {
            let middle = (least + most) / 2.0;
            if text::set(self.press, words, voice, middle).lines.len() > count {
                least = middle;
            } else {
                most = middle;
            }
        }
        most
    }

    /// Puts the runs of a line into a slab.
    fn line(
        &self,
        slab: &mut Slab,
        line: &Line,
        words: &[Inline],
        owners: &[TagId],
        voice: &Voice,
        (x, y): (f64, f64),
    ) {
        for placed in &line.runs {
            let part = usize::from(placed.part);
            let tag = owners[part];
            let link = words[part].link.as_ref();
            // Strong words that lead somewhere look like other strong words.
            let quiet = words[part].look == Look::Strong;
            let ink = if link.is_some() && !quiet { Ink::ACCENT } else { voice.ink };
            let at = x + placed.x;
            if let Some(to) = link {
                let area =
                    [at, y - voice.size, at + placed.run.advance, y + 0.3 * voice.size];
                let says = words[part].text.clone();
                slab.links.push(Link { area, to: to.clone(), says, tag });
            }
            let run = placed.run.clone();
            let ink = self.theme.ink(ink);
            let text = Text { run, x: at, y, upwards: false, ink };
            slab.items.push(Item { owner: Owner::Tag(tag), what: What::Text(text) });
        }
    }

    /// The tags of the parts of a text: its own, or one below it for links and
    /// other languages.
    fn owners(&mut self, words: &[Inline], tag: TagId) -> Vec<TagId> {
        words
            .iter()
            .map(|inline| {
                if inline.link.is_none() && inline.lang.is_none() {
                    return tag;
                }
                let role = if inline.link.is_some() { Role::Link } else { Role::Span };
                let own = self.tags.add(tag, role);
                self.tags.get_mut(own).language.clone_from(&inline.lang);
                own
            })
            .collect()
    }

    /// Notes every character that can't be printed, once.
    pub(crate) fn report(&mut self, missing: &[(char, u16)], words: &[Inline]) {
        for (character, part) in missing {
            let inline = words.get(usize::from(*part));
            let place = inline.and_then(|it| it.site);
            let site = place.unwrap_or_default();
            if let Some(known) = self.reported.get_mut(character) {
                // A drawing may have shown it before the text that tells its place.
                if let (Some(at), Some(_)) = (*known, place) {
                    self.notes[at].site = site;
                    *known = None;
                }
                continue;
            }
            let unplaced = place.is_none().then_some(self.notes.len());
            self.reported.insert(*character, unplaced);
            let code = u32::from(*character);
            let message =
                format!("no font has the character `{character}` (U+{code:04X})");
            let note = Diagnostic::new(&rules::UNPRINTABLE_CHARACTER, site, message)
                .help(
                    "name a font file that has it, such as `fonts: [letters.ttf]`, or write \
                     it in other characters",
                );
            self.notes.push(note);
        }
    }

    /// A path that only pleases the eye.
    pub(crate) fn decoration(
        &self,
        pieces: Vec<Piece>,
        fill: Option<Ink>,
        line: Option<(Ink, f64)>,
    ) -> Item {
        let line = line.map(|(ink, width)| Stroke {
            ink: self.theme.ink(ink),
            width,
            dash: Vec::new(),
            round: false,
        });
        let fill = fill.map(|it| self.theme.ink(it));
        Item { owner: Owner::Decoration, what: What::Path(Path { pieces, fill, line }) }
    }

    /// A thin level rule.
    pub(crate) fn rule(
        &self,
        left: f64,
        right: f64,
        y: f64,
        ink: Ink,
        width: f64,
    ) -> Item {
        self.decoration(
            vec![Piece::line((left, y), (right, y))],
            None,
            Some((ink, width)),
        )
    }
}
