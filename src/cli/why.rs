//! `why`: what a message means, and what a key is for.

use crate::cli::args::Why;
use crate::cli::{Failure, Halt, Streams};
use crate::diag::{self, Rule, rules};
use crate::project::keys::{self, GROUPS, Group, Key};

/// Explains a rule or a key, or lists the rules.
pub(crate) fn run(asked: &Why, streams: &mut Streams<'_>) -> Result<(), Halt> {
    let written = asked.name.join(" ");
    // As it stands in a message: `error[no-unit]`.
    let name = written.rsplit_once('[').map_or(written.as_str(), |it| it.1);
    let name = name.trim_matches([' ', ']', '`', ':']);
    if name.is_empty() {
        streams.say(&list())?;
        return Ok(());
    }
    let mut texts: Vec<String> = rules::find(name).map(rule).into_iter().collect();
    let homes = GROUPS.iter().filter_map(|group| Some((group, group.find(name)?)));
    texts.extend(homes.map(|(group, it)| key(group, it)));
    if texts.is_empty() {
        let known = || {
            let keys = GROUPS.iter().flat_map(|it| it.keys).map(|it| it.name);
            rules::all().map(|it| it.name).chain(keys)
        };
        let hint = match diag::near(name, known()) {
            Some(near) => format!("did you mean `{near}`?"),
            None => "leafwright why, without a name, lists the rules".to_owned(),
        };
        let message = format!("no rule and no key is called `{name}`");
        return Err(Halt::Failure(Failure { message, hint }));
    }
    streams.say(&texts.join("\n"))?;
    Ok(())
}

/// Every rule with what it is about.
fn list() -> String {
    let row = |rule: &Rule| format!("{:<30} {}\n", rule.name, rule.what);
    rules::all().map(row).collect()
}

fn rule(rule: &'static Rule) -> String {
    let Rule { name, severity, what, why, example, cure } = rule;
    let mut text = format!("{}[{name}]: {what}\n{why}\n", severity.word());
    if !example.is_empty() {
        text.push_str(&format!("\nSo it comes about:\n{}", indented(example)));
    }
    if !cure.is_empty() {
        text.push_str(&format!("\nSo it is mended:\n{}", indented(cure)));
    }
    text
}

fn key(group: &Group, key: &Key) -> String {
    let Key { name, also, takes, default, about, example } = key;
    let mut text = format!("`{name}`, a key of {}\n{about}\n", group.a);
    text.push_str(&format!("It takes {}.\n", keys::takes_in_words(takes)));
    match *default {
        "" => {}
        "needed" => text.push_str("It is needed.\n"),
        default if default.starts_with("needed") => {
            text.push_str(&format!("It is {default}.\n"));
        }
        default => text.push_str(&format!("If it is left out: {default}.\n")),
    }
    if let Some(also) = also {
        text.push_str(&format!("It may be spelt `{also}`.\n"));
    }
    text.push_str(&format!(
        "\nFor instance:\n{}",
        indented(&format!("{name}: {example}"))
    ));
    text
}

fn indented(lines: &str) -> String {
    lines.lines().map(|line| format!("    {line}\n")).collect()
}
