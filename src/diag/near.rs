//! What was likely meant by a word that nobody knows.

/// The word that is most likely meant, if one is near enough; looks at the first
/// 2000 words only.
pub fn near<'w>(written: &str, words: impl Iterator<Item = &'w str>) -> Option<&'w str> {
    if 60 < written.len() {
        return None;
    }
    let written = written.to_lowercase();
    words
        .take(2000)
        .filter(|word| word.len() <= 60)
        .map(|word| (strsim::damerau_levenshtein(&written, &word.to_lowercase()), word))
        .min_by_key(|(distance, _)| *distance)
        .filter(|(distance, word)| {
            let longer = word.chars().count().max(written.chars().count());
            distance * 2 < longer && *distance <= 1 + longer / 5
        })
        .map(|(_, word)| word)
}
