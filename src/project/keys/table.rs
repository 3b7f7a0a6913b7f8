//! The table of keys in words: for `why`, and for the README.

use crate::project::keys::{GROUPS, Key, Takes, group};

/// What a key takes, as a phrase.
pub fn takes_in_words(takes: &Takes) -> String {
    match takes {
        Takes::Words => "words".to_owned(),
        Takes::WordsOrList => "words, or a list of them".to_owned(),
        Takes::Told => "words, or the words by language".to_owned(),
        Takes::ToldOrList => {
            "words, by language if you like, or a list of them".to_owned()
        }
        Takes::Count(least, most) => format!("a whole number from {least} to {most}"),
        Takes::Length => "a length".to_owned(),
        Takes::Size => "a size, width x height".to_owned(),
        Takes::YesNo => "`true` or `false`".to_owned(),
        Takes::OneOf(words) => listed(words),
        Takes::SomeOf(words) => format!("{}, or a list of these", listed(words)),
        Takes::Name(what) => format!("the name of a {what}"),
        Takes::Group(name) => format!("keys of its own: {}", keys_of(name)),
        Takes::Named(name) => {
            format!(
                "names of your own, each with the keys of {}: {}",
                group(name).a,
                keys_of(name)
            )
        }
        Takes::NamedAs(each) => {
            format!("names of your own, each with {}", takes_in_words(each))
        }
        Takes::List(name) => {
            format!(
                "a list, each row with the keys of {}: {}",
                group(name).a,
                keys_of(name)
            )
        }
        Takes::Rows(each) => format!("a list, each row {}", takes_in_words(each)),
        Takes::NamedLists(name) => {
            format!("names of your own, each with a list of rows with {}", keys_of(name))
        }
        Takes::Any(all) => {
            let all: Vec<_> = all.iter().map(takes_in_words).collect();
            all.join("; or ")
        }
    }
}

fn listed(words: &[&str]) -> String {
    let words: Vec<_> = words.iter().map(|word| format!("`{word}`")).collect();
    match words.split_last() {
        Some((last, rest)) if !rest.is_empty() => {
            format!("{} or {last}", rest.join(", "))
        }
        _ => words.concat(),
    }
}

fn keys_of(name: &str) -> String {
    let keys: Vec<_> =
        group(name).keys.iter().map(|key| format!("`{}`", key.name)).collect();
    keys.join(", ")
}

/// Every key in Markdown, a table for each group.
pub fn table() -> String {
    let mut text = String::new();
    for group in GROUPS {
        text.push_str(&format!(
            "\n**{}**\n\n| key | what it is for | for instance |\n|---|---|---|\n",
            group.a
        ));
        for key in group.keys {
            let Key { name, default, about, example, .. } = key;
            let default = match *default {
                "" => String::new(),
                default if default.starts_with("needed") => format!(" It is {default}."),
                default => format!(" If it is left out: {default}."),
            };
            let row = format!("| `{name}` | {about}{default} | `{example}` |\n");
            text.push_str(&row);
        }
    }
    text
}
