//! The names of those for whom handouts are made, from a table of names.

use std::path::Path;

use crate::cli::{Failure, files};

/// As many as there may be kits.
const MOST: usize = 10_000;

/// Reads names from a file with one line for each person: the column that is headed
/// `name`, else the first one.
pub(crate) fn read(path: &Path) -> Result<Vec<String>, Failure> {
    let shown = path.display();
    let fail = |what: String| Failure {
        message: format!("`{shown}` {what}"),
        hint: "give each person a line, with the name first or in a column headed `name`"
            .to_owned(),
    };
    let text =
        files::text(path).map_err(|fault| fail(format!("can't be read: {fault}")))?;
    let mut lines = csv::ReaderBuilder::new()
        .has_headers(false)
        .flexible(true)
        .trim(csv::Trim::All)
        .from_reader(text.as_bytes());
    let mut names = Vec::new();
    let mut column = 0;
    for (index, line) in lines.records().enumerate() {
        let line = line.map_err(|fault| fail(format!("can't be read: {fault}")))?;
        if index == 0
            && let Some(at) = line.iter().position(|it| it.eq_ignore_ascii_case("name"))
        {
            column = at;
            continue;
        }
        let name: String = line.get(column).unwrap_or_default().chars().collect();
        let name: String = name.chars().filter(|it| !it.is_control()).collect();
        if !name.trim().is_empty() {
            names.push(name.trim().to_owned());
        }
        if names.len() > MOST {
            return Err(fail(format!("has more than {MOST} names")));
        }
    }
    if names.is_empty() {
        return Err(fail("has no name in it".to_owned()));
    }
    Ok(names)
}

/// A name as a part of a file name: letters and digits, the rest as dashes.
pub(crate) fn for_file(name: &str) -> String {
    let mut all = String::new();
    for letter in name.chars().flat_map(char::to_lowercase) {
        if letter.is_alphanumeric() {
            all.push(letter);
        } else if !all.is_empty() && !all.ends_with('-') {
            all.push('-');
        }
        if all.len() > 60 {
            break;
        }
    }
    all.trim_end_matches('-').to_owned()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_name_makes_a_plain_part_of_a_file_name() {
        assert_eq!(for_file("Ada  of the Mill"), "ada-of-the-mill");
        assert_eq!(for_file("../Zoë?"), "zoë");
        assert_eq!(for_file("--"), "");
    }
}
