//! Words to print, in one language or in several.

use crate::diag::rules;
use crate::project::read::desk::{Desk, quote};
use crate::project::read::shape::{Keys, twice};
use crate::project::tree::{Entry, Node, Value};
use crate::project::{Text, Told};

impl Desk<'_> {
    /// Words to print: `Thank you`, or `{en: Thank you, de: Danke}`.
    pub(crate) fn told(&mut self, node: &Node) -> Option<Text> {
        let Value::Keys(entries) = &node.value else { return self.words(node) };
        if !entries.iter().any(|it| is_language(it.key.trim())) {
            // Whatever it is, it was not meant for several languages.
            return self.words(node);
        }
        let mut told: Vec<(Told, &Entry)> = Vec::new();
        for entry in entries {
            let language = entry.key.trim();
            if !is_language(language) {
                self.fault(
                    &rules::NOT_A_CHOICE,
                    entry.site,
                    format!("{} is not the short name of a language", quote(language)),
                    "write `en`, `de`, `pt-BR` or the like before each colon",
                );
                continue;
            }
            let same =
                |it: &&(Told, &Entry)| it.0.language.eq_ignore_ascii_case(language);
            if let Some((_, first)) = told.iter().find(same) {
                let note = twice(entry, first.site);
                self.note(note);
                continue;
            }
            let Some(text) = self.words(&entry.value) else { continue };
            let language = language.to_owned();
            told.push((Told { language, words: text.words }, entry));
        }
        let (first, _) = told.first()?;
        let words = first.words.clone();
        let told = told.into_iter().map(|it| it.0).collect();
        Some(Text { words, told, site: node.site })
    }

    /// Words to print, or a list of them.
    pub(crate) fn all_told(&mut self, node: Option<&Node>) -> Vec<Text> {
        let rows = match node {
            Some(node) if matches!(node.value, Value::Keys(_)) => {
                std::slice::from_ref(node)
            }
            Some(node) => self.one_or_more(node),
            None => &[],
        };
        rows.iter().filter_map(|row| self.told(row)).collect()
    }

    /// What a thing is called on paper, if not by the name that it has in the
    /// description.
    pub(crate) fn printed(&mut self, name: Text, keys: &Keys<'_>) -> Text {
        let Some(text) = keys.get("printed as").and_then(|node| self.told(node)) else {
            return name;
        };
        let language = self.language.clone();
        let told = if text.told.is_empty() {
            vec![Told { language, words: text.words }]
        } else if text.is_told_in(&language) {
            text.told
        } else {
            let own = Told { language, words: name.words.clone() };
            std::iter::once(own).chain(text.told).collect()
        };
        Text { told, ..name }
    }
}

/// A language tag in its usual shape (BCP 47, section 2.1), not whether anyone
/// speaks it.
pub fn is_language(text: &str) -> bool {
    let mut parts = text.split('-');
    let first = parts.next().unwrap_or_default();
    (2..=3).contains(&first.len())
        && first.bytes().all(|it| it.is_ascii_alphabetic())
        && text.len() <= 35
        && parts.all(|it| {
            (1..=8).contains(&it.len()) && it.bytes().all(|it| it.is_ascii_alphanumeric())
        })
}
