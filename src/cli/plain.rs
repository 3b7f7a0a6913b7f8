//! A document as plain text for the terminal; drawings are left out.

use crate::document::{Block, Document, Marker, Table, Text};

/// As wide as a line of text gets.
const WIDTH: usize = 76;

/// A section as plain text.
#[derive(Clone, Debug)]
pub(crate) struct Told {
    /// The anchor of the section.
    pub(crate) anchor: String,
    /// Its heading.
    pub(crate) title: String,
    /// What stands below it.
    pub(crate) text: String,
}

/// The sections of a document.
pub(crate) fn text(document: &Document) -> Vec<Told> {
    let sections = document.sections.iter();
    let told = sections.map(|section| {
        let mut text = String::new();
        blocks(&mut text, &section.blocks);
        Told { anchor: section.anchor.clone(), title: words(&section.title), text }
    });
    told.collect()
}

fn blocks(text: &mut String, all: &[Block]) {
    for block in all {
        match block {
            Block::Heading { text: heading, .. } => {
                text.push_str(&words(heading));
                text.push_str("\n\n");
            }
            Block::Paragraph(_, paragraph) => {
                wrapped(text, "", "", &words(paragraph));
                text.push('\n');
            }
            Block::List(marker, items) => {
                let mark = match marker {
                    Marker::Dot => "- ",
                    Marker::Box => "[ ] ",
                };
                for item in items {
                    wrapped(text, mark, &" ".repeat(mark.len()), &words(item));
                }
                text.push('\n');
            }
            Block::Steps(steps) => {
                for step in steps {
                    let number = format!("{:>3}  ", step.number);
                    wrapped(text, &number, "     ", &words(&step.text));
                }
                text.push('\n');
            }
            Block::Table(table) => rows(text, table),
            Block::Caution(caution) => {
                wrapped(
                    text,
                    "",
                    "  ",
                    &format!("{}: {}", caution.signal, words(&caution.text)),
                );
                text.push('\n');
            }
            Block::Figure(_) | Block::Figures(_) | Block::Tiled(_) => {}
            Block::Beside(_, inner) | Block::Keep(inner) => blocks(text, inner),
        }
    }
}

fn rows(text: &mut String, table: &Table) {
    let heads: Vec<String> = table.columns.iter().map(|it| words(&it.head)).collect();
    let cells = table.rows.iter().map(|it| it.iter().map(words).collect());
    let all: Vec<Vec<String>> = std::iter::once(heads).chain(cells).collect();
    let width = |at: usize| {
        let cells = all.iter().filter_map(|it| it.get(at));
        cells.map(|it| it.chars().count()).max().unwrap_or(0)
    };
    for row in &all {
        let mut line = String::from(" ");
        for (at, cell) in row.iter().enumerate() {
            line.push(' ');
            line.push_str(cell);
            line.push_str(&" ".repeat(width(at) - cell.chars().count() + 1));
        }
        text.push_str(line.trim_end());
        text.push('\n');
    }
    text.push('\n');
}

/// The words of a text; spaces that hold together stay such.
fn words(text: &Text) -> String {
    text.iter().map(|it| it.text.as_str()).collect()
}

/// Breaks words into lines; no-break spaces become plain ones afterwards.
fn wrapped(text: &mut String, first: &str, other: &str, words: &str) {
    let mut line = first.to_owned();
    let mut begun = false;
    for word in words.split(' ').filter(|it| !it.is_empty()) {
        if begun && WIDTH < line.chars().count() + 1 + word.chars().count() {
            push(text, &line);
            other.clone_into(&mut line);
            begun = false;
        }
        if begun {
            line.push(' ');
        }
        line.push_str(word);
        begun = true;
    }
    push(text, &line);
}

fn push(text: &mut String, line: &str) {
    text.push_str(&line.trim_end().replace('\u{a0}', " "));
    text.push('\n');
}
