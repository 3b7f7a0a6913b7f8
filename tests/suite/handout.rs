//! What a handout says, as an outline of its sections and sentences.

use leafwright::document::{Block, Document, Figure, Inline, Step};
use leafwright::handout::{self, Options, Template};
use leafwright::plan::{PlanOptions, plan};
use leafwright::project::{Project, Reader};

use crate::sample::orchard;

fn written(project: &Project, template: &str, reader: Reader) -> Document {
    let options = PlanOptions {
        reader,
        kits: if template == "travel" { Some(1) } else { None },
        ..PlanOptions::default()
    };
    let planned = plan(project, &options);
    let plan = planned.value.unwrap_or_else(|| panic!("{:#?}", planned.notes));
    let template = Template::built_in(template).unwrap();
    handout::write(project, &plan, &template, Options::default())
}

/// A document as plain lines, drawings by what they show.
fn outline(document: &Document) -> String {
    let mut out = String::new();
    for section in &document.sections {
        out += &format!("# {}\n", plain(&section.title));
        blocks(&section.blocks, &mut out);
    }
    out.replace('\u{a0}', "_")
}

fn plain(text: &[Inline]) -> String {
    text.iter().map(|it| it.text.as_str()).collect()
}

fn line(out: &mut String, text: String) {
    out.push_str(&text);
    out.push('\n');
}

fn blocks(blocks_: &[Block], out: &mut String) {
    for block in blocks_ {
        match block {
            Block::Heading { text, .. } => line(out, format!("## {}", plain(text))),
            Block::Paragraph(_, text) => line(out, plain(text)),
            Block::List(_, items) => {
                items.iter().for_each(|it| line(out, format!("- {}", plain(it))));
            }
            Block::Steps(steps) => {
                for Step { number, text, aside, .. } in steps {
                    let aside = aside.as_ref().map(|it| format!(" [{}]", plain(it)));
                    line(
                        out,
                        format!("{number}. {}{}", plain(text), aside.unwrap_or_default()),
                    );
                }
            }
            Block::Table(table) => {
                let heads: Vec<_> =
                    table.columns.iter().map(|it| plain(&it.head)).collect();
                line(out, format!("| {} |", heads.join(" | ")));
                for row in &table.rows {
                    let row: Vec<_> = row.iter().map(|it| plain(it)).collect();
                    line(out, format!("| {} |", row.join(" | ")));
                }
            }
            Block::Figure(figure) => line(out, drawn(figure)),
            Block::Figures(figures) => figures.iter().for_each(|it| line(out, drawn(it))),
            Block::Caution(caution) => {
                line(out, format!("{}: {}", caution.signal, plain(&caution.text)));
            }
            Block::Beside(figure, below) => {
                line(out, drawn(figure));
                blocks(below, out);
            }
            Block::Keep(below) => {
                blocks(below, out);
            }
        }
    }
}

fn drawn(figure: &Figure) -> String {
    let caption = figure.caption.as_ref().map(|it| format!(" ({})", plain(it)));
    format!("<{}>{}", figure.alt, caption.unwrap_or_default())
}

#[test]
fn peek() {
    use leafwright::{fonts, layout, pdf};
    for (name, reader) in [("class", Reader::Class), ("host", Reader::Class), ("kit", Reader::Kit), ("travel", Reader::Travel)] {
        let document = written(&orchard(), name, reader);
        eprintln!("=========== {name}\n{}", outline(&document));
        let mut press = layout::Press::new();
        let size = if name == "kit" || name == "travel" { layout::PageSize::HalfLetter } else { layout::PageSize::Letter };
        let setup = layout::PageSetup { size, large_print: false, gray: false };
        let laid = layout::lay_out(&mut press, &document, &setup);
        eprintln!("{:#?}", laid.notes);
        let bytes = pdf::write(&laid.value.unwrap(), &fonts::Library::new(), &pdf::PdfInfo::default()).unwrap();
        std::fs::write(format!("/tmp/hw-{name}.pdf"), bytes).unwrap();
    }
}
