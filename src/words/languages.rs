//! The languages there are words for: one line and one file of messages for each.

/// A language with its messages.
pub(super) struct Language {
    /// As in BCP 47.
    pub(super) tag: &'static str,
    /// Its file under `templates/`.
    pub(super) messages: &'static str,
}

/// Every language; the first stands in where another has no words.
pub(super) const LANGUAGES: &[Language] = &[
    Language { tag: "en", messages: include_str!("../../templates/en.ftl") },
    Language { tag: "de", messages: include_str!("../../templates/de.ftl") },
    Language { tag: "fr", messages: include_str!("../../templates/fr.ftl") },
    Language { tag: "es", messages: include_str!("../../templates/es.ftl") },
];

/// The language of a tag, or the one that it is a kind of: `en` for `en-GB`.
pub(super) fn find(tag: &str) -> Option<&'static Language> {
    let primary = tag.split('-').next().unwrap_or(tag);
    LANGUAGES
        .iter()
        .find(|it| it.tag.eq_ignore_ascii_case(tag))
        .or_else(|| LANGUAGES.iter().find(|it| it.tag.eq_ignore_ascii_case(primary)))
}
