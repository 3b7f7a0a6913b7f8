//! Words that the user wrote in several languages.

use crate::diag::{Diagnostic, rules};
use crate::project::{Project, Text};

/// Words in one of the languages that they were written in.
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
pub struct Told {
    /// As in BCP 47.
    pub language: String,
    /// The words.
    pub words: String,
}

impl Text {
    /// The words for readers of a language; those that were written first if there
    /// are none for them. With the language that they are in, if that was said.
    pub fn told_in(&self, language: &str) -> (&str, Option<&str>) {
        let told = self.find(language).or(self.told.first());
        told.map_or((&self.words, None), |it| (&it.words, Some(&it.language)))
    }

    /// Whether they were written for readers of a language, where that was said.
    pub fn is_told_in(&self, language: &str) -> bool {
        self.find(language).is_some()
    }

    /// The very language, or else one of its kind: `pt` for readers of `pt-BR`.
    fn find(&self, language: &str) -> Option<&Told> {
        let same = |it: &&Told| it.language.eq_ignore_ascii_case(language);
        let akin =
            |it: &&Told| primary(&it.language).eq_ignore_ascii_case(primary(language));
        self.told.iter().find(same).or_else(|| self.told.iter().find(akin))
    }
}

/// The language of a tag without its region, script and the like.
pub fn primary(language: &str) -> &str {
    language.split('-').next().unwrap_or(language)
}

/// Says which texts are not told to readers of a language, where some are.
///
/// A description that speaks one language only was meant so: then there is nothing
/// to say.
pub fn untold(project: &Project, language: &str) -> Option<Diagnostic> {
    let own = primary(&project.language).eq_ignore_ascii_case(primary(language));
    let told = |text: &&Text| text.is_told_in(language) || (own && text.told.is_empty());
    let texts = printed(project);
    if !texts.iter().any(|text| text.is_told_in(language)) {
        return None;
    }
    let missing: Vec<&Text> = texts.into_iter().filter(|it| !told(it)).collect();
    let (first, rest) = missing.split_first()?;
    let words = first.told_in(language).0;
    let short: String = words.chars().take(40).collect();
    let cut = if short.len() < words.len() { "…" } else { "" };
    let others = match rest.len() {
        0 => " is".to_owned(),
        1 => " and 1 other text are".to_owned(),
        count => format!(" and {count} other texts are"),
    };
    let message = format!(
        "`{short}{cut}`{others} not told in `{language}`, and printed as written"
    );
    let help = format!(
        "write `{{{}: …, {language}: …}}`; for names of things: `printed as: {{{language}: …}}`",
        project.language
    );
    let mut note = Diagnostic::new(&rules::TEXT_NOT_TOLD, first.site, message).help(help);
    for other in rest.iter().take(3) {
        note = note.label(other.site, "this neither");
    }
    Some(note)
}

/// Every text of a description that handouts print, in its order.
fn printed(project: &Project) -> Vec<&Text> {
    let mut all = vec![&project.title];
    all.extend(&project.about);
    all.extend(
        project
            .handed_out_by
            .iter()
            .flat_map(|it| std::iter::once(&it.name).chain(&it.reach)),
    );
    for paper in &project.papers {
        all.push(&paper.name);
        all.extend(paper.faces.iter().map(|it| &it.name));
    }
    all.extend(project.bases.iter().map(|it| &it.name));
    for tool in &project.tools {
        all.push(&tool.name);
        all.extend(&tool.instead);
    }
    all.extend(project.pieces.iter().map(|it| &it.name));
    all.extend(project.late_cuts.iter().flat_map(|it| &it.makes).map(|it| &it.name));
    all.extend(project.greetings.iter().map(|it| &it.words));
    for card in &project.cards {
        all.push(&card.name);
        all.extend(&card.inside.words);
        all.extend(&card.inside.among);
        all.extend(&card.tips);
    }
    all.extend(&project.cautions);
    all.extend(&project.tips);
    all.retain(|it| !it.words.is_empty());
    all.sort_by_key(|it| (it.site.file, it.site.start));
    // What is like another has its words from there.
    all.dedup_by_key(|it| (it.site.file, it.site.start, it.site.end));
    all
}
