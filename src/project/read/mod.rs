//! From the text of a description to the checked model.
//!
//! Text → tree → keys → meaning → rules. Every fault is noted and none stops the
//! others, apart from a text that is no YAML at all.

mod bases;
mod cards;
mod desk;
mod draft;
mod extras;
mod faults;
mod fit_rules;
mod greetings;
mod late;
mod mats;
mod palette;
mod papers;
mod pictures;
mod pieces;
mod place;
mod places;
mod runs;
mod shape;
mod shared;
mod sound;
mod told;
mod tools;
mod trade;
mod use_rules;
mod ways;
mod whole;

pub use told::is_language;

use crate::diag::{Diagnostic, Outcome, Rule, rules};
use crate::project::Project;
use crate::project::read::desk::Desk;
use crate::project::read::draft::Draft;
use crate::project::read::shared::Shared;
use crate::project::tree::{self, Grown, Node};
use crate::source::{Folder, Site, Source, Sources};

/// Reads a description; `folder` holds the files that it may name.
///
/// The project is there only if nothing in the description is an error. The
/// notes are in the order of their places.
pub fn read(source: Source, folder: &dyn Folder) -> (Sources, Outcome<Project>) {
    let Reading { sources, outcome, .. } = read_all(source, folder);
    (sources, outcome)
}

/// What comes of reading a description, whether or not it is at fault.
#[derive(Clone, Debug)]
pub struct Reading {
    /// The files it consists of.
    pub sources: Sources,
    /// The project, if nothing is an error, and every note.
    pub outcome: Outcome<Project>,
    /// If something is an error: the project with those cards only of which
    /// everything could be read, to look at how their layers lie.
    pub sound_cards: Option<Project>,
}

/// Reads a description as [`read`] does, and keeps what is sound in a faulty one.
pub fn read_all(source: Source, folder: &dyn Folder) -> Reading {
    let mut sources = Sources { files: vec![source] };
    let Grown { root, fault } = tree::grow(&sources.files[0], 0);
    let shared = match fault {
        None => shared::open(&mut sources, folder, &root),
        Some(_) => Shared::default(),
    };
    if let Some(fault) = fault.as_ref().filter(|it| it.rule == &rules::TOO_LARGE) {
        // Nothing is made of half a flood: the limit is told at once.
        let outcome = Outcome { value: None, notes: vec![(**fault).clone()] };
        return Reading { sources, outcome, sound_cards: None };
    }
    let (mut outcome, mut sound_cards) = meaning(&sources, &root, shared, folder);
    if let Some(fault) = fault {
        sound_cards = None;
        // What stands before the fault is read all the same, but only what it
        // says by itself can be judged.
        outcome.value = None;
        outcome
            .notes
            .retain(|note| stands_alone(note.rule) && note.site.end < fault.site.start);
        outcome.notes.push(*fault);
    }
    Reading { sources, outcome, sound_cards }
}

/// Whether a rule is broken whatever the rest of the description says.
fn stands_alone(rule: &Rule) -> bool {
    let of_a_value = rules::VALUES.contains(&rule) && *rule != rules::UNKNOWN_NAME;
    let of_a_key = [
        &rules::UNKNOWN_KEY,
        &rules::DUPLICATE_KEY,
        &rules::COMMA_IN_BRACES,
        &rules::HASH_HIDES_VALUE,
        &rules::HASH_CUTS_WORDS,
        &rules::WRONG_SHAPE,
        &rules::EMPTY_VALUE,
    ];
    of_a_value || of_a_key.contains(&rule)
}

fn meaning(
    sources: &Sources,
    root: &Node,
    mut shared: Shared,
    folder: &dyn Folder,
) -> (Outcome<Project>, Option<Project>) {
    let mut desk = Desk::new(sources, folder);
    for note in std::mem::take(&mut shared.notes) {
        desk.note(note);
    }
    let joined = match shared.trees.is_empty() {
        true => None,
        false => Some(shared::joined(&mut desk, root, &shared)),
    };
    let root = joined.as_ref().unwrap_or(root);
    let keys = desk.open(root, Site { end: root.site.start, ..root.site }, "project");
    desk.unit = keys.get("unit").and_then(|node| shared::unit(&mut desk, node));
    let _ = desk.all_words(keys.get("use"));
    let mut draft = Draft { site: root.site, ..Draft::default() };
    whole::read(&mut desk, &keys, &mut draft);
    papers::read(&mut desk, keys.get("papers"), &mut draft);
    bases::read(&mut desk, keys.get("bases"), &mut draft);
    tools::read(&mut desk, keys.get("tools"), &mut draft);
    pieces::read(&mut desk, keys.get("pieces"), &mut draft);
    late::read(&mut desk, keys.get("late cuts"), &mut draft);
    greetings::read(&mut desk, keys.get("greetings"), &mut draft);
    cards::read(&mut desk, keys.get("cards"), &mut draft);
    ways::read(&mut desk, keys.get("cutting"), &mut draft);
    fit_rules::check(&mut desk, &draft);
    places::check(&mut desk, &draft);
    palette::check(&mut desk, &draft);
    if !desk.has_errors() {
        use_rules::check(&mut desk, &draft);
    }
    let (unit, sound) = (desk.shown(), !desk.has_errors());
    let sound_cards = if sound { None } else { sound::sound_cards(&draft, unit) };
    let value = if sound { draft.finish(unit) } else { None };
    let mut notes = desk.notes;
    notes.sort_by_key(|note: &Diagnostic| {
        (note.site.file, note.site.start, note.rule.severity)
    });
    (Outcome { value, notes }, sound_cards)
}
