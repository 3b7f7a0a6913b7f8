//! The one table of keys: what each takes, what goes without saying, what it
//! is for, and an example.
//!
//! Unknown keys, help, the schema for editors and the reading itself all go by
//! this table: a key that isn't in it can't be read.

mod cards;
mod pictures;
mod pieces;
mod schema;
mod stock;
mod table;
mod whole;

pub use schema::schema;
pub(super) use stock::KINDS;
pub use table::{table, takes_in_words};
pub(super) use whole::WORKS;

/// A set of keys that stand together, such as those of a paper.
#[derive(Debug)]
pub struct Group {
    /// What it is called in the table.
    pub name: &'static str,
    /// What a message calls it.
    pub a: &'static str,
    /// Its keys, in the order in which help lists them.
    pub keys: &'static [Key],
}

/// A key of the description.
#[derive(Debug)]
pub struct Key {
    /// The key as it is written.
    pub name: &'static str,
    /// Another spelling of it, if there is one.
    pub also: Option<&'static str>,
    /// What it takes.
    pub takes: Takes,
    /// What goes without saying; empty if nothing does, `needed` if it must be
    /// given.
    pub default: &'static str,
    /// What it is for, in a sentence.
    pub about: &'static str,
    /// A value, as it is written after the colon.
    pub example: &'static str,
}

/// What a key takes.
#[derive(Debug)]
pub enum Takes {
    /// Words.
    Words,
    /// Words, or a list of them.
    WordsOrList,
    /// Words to print, in one language or in several.
    Told,
    /// Words to print, or a list of them.
    ToldOrList,
    /// A whole number between two.
    Count(u32, u32),
    /// A length.
    Length,
    /// A size, width x height.
    Size,
    /// Yes or no.
    YesNo,
    /// One of these words.
    OneOf(&'static [&'static str]),
    /// One of these words, or a list of them.
    SomeOf(&'static [&'static str]),
    /// The name of something that is described elsewhere.
    Name(&'static str),
    /// Keys of its own: those of a group.
    Group(&'static str),
    /// Names that the user makes up, each with the keys of a group.
    Named(&'static str),
    /// Names that are given elsewhere, each with one of these.
    NamedAs(&'static Takes),
    /// A list of things with the keys of a group.
    List(&'static str),
    /// A list of these.
    Rows(&'static Takes),
    /// Names that the user makes up, each with a list of things with the keys of
    /// a group.
    NamedLists(&'static str),
    /// Any of these.
    Any(&'static [Takes]),
}

impl Key {
    /// The same key with another spelling.
    const fn or(mut self, also: &'static str) -> Self {
        self.also = Some(also);
        self
    }
}

/// A row of the table.
const fn key(
    name: &'static str,
    takes: Takes,
    default: &'static str,
    about: &'static str,
    example: &'static str,
) -> Key {
    Key { name, also: None, takes, default, about, example }
}

/// What a thing is called on paper.
const PRINTED: Key = key(
    "printed as",
    Takes::Told,
    "the name that it has here",
    "What it is called on paper, in one language or in several.",
    "{en: Sash, de: Schärpe}",
);

/// Every group, from the whole to the parts.
pub static GROUPS: &[&Group] = &[
    &whole::PROJECT,
    &whole::SUPPLIES,
    &whole::GIVER,
    &whole::AHEAD,
    &whole::ALL_BUT,
    &whole::CUT_BY,
    &whole::GIFT,
    &whole::MINUTES,
    &whole::STEP,
    &stock::PAPER,
    &stock::SHEET,
    &stock::FACE,
    &stock::PACK,
    &stock::BASE,
    &stock::BOUGHT,
    &stock::MADE,
    &stock::TOOL,
    &pieces::PIECE,
    &pieces::AROUND,
    &pieces::NEXT_TO,
    &pieces::REGION,
    &pieces::LATE,
    &pieces::PART,
    &pieces::GREETING,
    &pieces::LABEL,
    &pieces::NARROWED,
    &pieces::MAT,
    &cards::CARD,
    &cards::EXTRA,
    &cards::LAYER,
    &cards::INSIDE,
    &pictures::PICTURE,
    &pictures::PHOTO,
];

/// The group of that name.
pub fn group(name: &str) -> &'static Group {
    GROUPS
        .iter()
        .find(|group| group.name == name)
        .expect("every group that is asked for is in the table; a test asks for all")
}

impl Group {
    /// The key of that spelling.
    pub fn find(&self, written: &str) -> Option<&'static Key>
    where
        Self: 'static,
    {
        let keys: &'static [Key] = self.keys;
        keys.iter().find(|key| key.name == written || key.also == Some(written))
    }
}

/// The groups that have a key of that spelling.
pub fn homes(written: &str) -> impl Iterator<Item = &'static Group> {
    GROUPS.iter().copied().filter(move |group| group.find(written).is_some())
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Every group that a key leads to.
    fn leads(takes: &Takes) -> Vec<&'static str> {
        match takes {
            Takes::Group(name)
            | Takes::Named(name)
            | Takes::List(name)
            | Takes::NamedLists(name) => vec![name],
            Takes::Rows(takes) | Takes::NamedAs(takes) => leads(takes),
            Takes::Any(all) => all.iter().flat_map(leads).collect(),
            _ => Vec::new(),
        }
    }

    #[test]
    fn every_group_is_reached_and_every_key_stands_once() {
        // A file that is used is a whole of its own.
        let mut reached = vec!["project", "supplies"];
        for group in GROUPS {
            for (index, key) in group.keys.iter().enumerate() {
                reached.extend(leads(&key.takes));
                assert!(!key.about.is_empty() && !key.example.is_empty(), "{}", key.name);
                assert!(
                    group.keys[index + 1..].iter().all(|it| it.name != key.name),
                    "`{}` twice in {}",
                    key.name,
                    group.a
                );
            }
        }
        for name in &reached {
            let _ = super::group(name);
        }
        for group in GROUPS {
            assert!(reached.contains(&group.name), "nothing leads to {}", group.a);
        }
    }

    #[test]
    fn no_key_is_a_word_that_yaml_takes_for_true_or_false() {
        // YAML 1.1, "Boolean Language-Independent Type": y, n, yes, no, on, off.
        for key in GROUPS.iter().flat_map(|it| it.keys) {
            let word = key.name;
            assert!(
                !["y", "n", "yes", "no", "on", "off", "true", "false"].contains(&word)
            );
        }
    }
}
