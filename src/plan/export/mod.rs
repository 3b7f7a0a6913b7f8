//! The whole cutting as JSON, for other programs.
//!
//! Every length is written twice: as one would write it, and exactly in units of
//! 1/14400 mm. What the fields mean stands in `templates/cuts.schema.json`.

mod shape;

use crate::diag::{Diagnostic, Severity};
use crate::geom::{self, Axis, Unit};
use crate::plan::Plan;
use crate::plan::cut::{self, How, PaperCut, PartOf, Token, Turning, called};
use crate::project::{Project, Stock};
use crate::source::Sources;

/// Deeper trees are not written as such: most readers of JSON refuse more than 128
/// levels, and the steps say the same.
const DEEPEST: usize = 96;

/// The cutting of a plan as JSON, with the notes on its description.
pub fn cuts_json(
    project: &Project,
    plan: &Plan,
    notes: &[Diagnostic],
    sources: &Sources,
) -> String {
    let writer = Writer { project };
    let cutting = shape::Cutting {
        format: "leafwright cuts",
        version: shape::VERSION,
        title: &project.title.words,
        unit: match project.unit {
            Unit::Inch => "in",
            Unit::Mm => "mm",
        },
        units_per_mm: geom::Length::MM.units(),
        kits: plan.supplies.kits,
        spares: plan.supplies.spares,
        papers: plan.cuts.iter().map(|cut| writer.paper(cut)).collect(),
        notes: notes.iter().map(|it| note(it, sources)).collect(),
    };
    let mut json = serde_json::to_string_pretty(&cutting)
        .expect("strings, numbers and lists can always be written");
    json.push('\n');
    json
}

fn note<'a>(note: &'a Diagnostic, sources: &'a Sources) -> shape::Note<'a> {
    let source = sources.of(note.site);
    let start = usize::try_from(note.site.start).unwrap_or(usize::MAX);
    let place = source.map(|source| source.line_column(start));
    shape::Note {
        rule: note.rule.name,
        severity: match note.rule.severity {
            Severity::Error => "error",
            Severity::Warning => "warning",
            Severity::Advice => "advice",
        },
        file: source.map(|source| source.name.as_str()),
        line: place.map(|(line, _)| line),
        column: place.map(|(_, column)| column),
        message: &note.message,
        help: &note.help,
    }
}

struct Writer<'a> {
    project: &'a Project,
}

impl<'a> Writer<'a> {
    fn length(&self, length: geom::Length) -> shape::Length {
        let text = length.show(self.project.unit);
        shape::Length { text, units: length.units() }
    }

    fn size(&self, size: geom::Size) -> shape::Size {
        let (width, height) = (self.length(size.width), self.length(size.height));
        shape::Size { width, height }
    }

    fn rect(&self, rect: geom::Rect) -> shape::Rect {
        let (x, y) = (self.length(rect.x), self.length(rect.y));
        let shape::Size { width, height } = self.size(rect.size);
        shape::Rect { x, y, width, height }
    }

    fn paper(&self, cut: &PaperCut) -> shape::Paper<'a> {
        let paper = &self.project.papers[cut.paper.0];
        let used = |size: Option<geom::Size>| {
            let patterns = cut.patterns.iter();
            let of_size = patterns.filter(|it| size.is_none_or(|size| it.sheet == size));
            of_size.fold(0_u32, |all, pattern| all.saturating_add(pattern.copies))
        };
        let (stock, sheets) = match &paper.stock {
            Stock::Scraps(..) => ("scraps", Vec::new()),
            Stock::Sheets(sheets) => {
                let rows = sheets.iter().map(|sheet| shape::Sheet {
                    size: self.size(sheet.size),
                    at_hand: sheet.at_hand,
                    used: used(Some(sheet.size)),
                });
                ("sheets", rows.collect())
            }
        };
        let schedule = &cut.schedule;
        shape::Paper {
            name: &paper.name.words,
            kits_together: cut.kits,
            stock,
            sheets,
            sheets_used: used(None),
            sheets_at_least: cut.bound.sheets,
            known_by: known_by(cut.bound.how),
            proven: cut.proven,
            parts: cut.parts.iter().map(|part| self.part(part)).collect(),
            patterns: cut.patterns.iter().map(|it| self.pattern(cut, it)).collect(),
            steps: schedule.steps.iter().map(|step| self.step(cut, step)).collect(),
            marks: schedule.marks,
            marks_at_least: schedule.at_least,
            strokes: schedule.strokes,
            turns: schedule.turns,
            offcut: cut.offcut.map(|offcut| shape::Offcut {
                pattern: offcut.pattern,
                size: self.size(offcut.size),
                proven: offcut.proven,
            }),
            own_way: cut.own.map(|own| shape::OwnWay {
                sheets: own.sheets,
                cuts: own.cuts,
                offcut: own.offcut.map(|size| self.size(size)),
                best_sheets: own.best_sheets,
                best_cuts: own.best_cuts,
                best_offcut: own.best_offcut.map(|size| self.size(size)),
            }),
            every_sheet_alike: cut.alike.map(|it| shape::Alike {
                chosen: it.chosen,
                kits_per_sheet: it.kits_per_sheet,
                kits_left_over: it.left_over,
                alike: toil(it.alike),
                fewest: toil(it.fewest),
            }),
            fewest_sheets: cut.fewest.map(toil),
            search_steps: cut.spent,
        }
    }

    fn part(&self, part: &cut::Part) -> shape::Part {
        shape::Part {
            letter: part.letter.clone(),
            name: called(self.project, part.of),
            kind: match part.of {
                PartOf::Piece(_) => "piece",
                PartOf::Base(_) => "base",
                PartOf::Label(_) => "label",
                PartOf::LabelMat(_) => "mat",
            },
            size: self.size(part.size),
            may_turn: part.turning == Turning::Free,
            per_kit: part.per_kit,
            count: part.count,
        }
    }

    fn pattern(&self, cut: &PaperCut, pattern: &cut::Pattern) -> shape::Pattern {
        let deep = depth(&pattern.tree) > DEEPEST;
        shape::Pattern {
            sheet: self.size(pattern.sheet),
            copies: pattern.copies,
            cuts: pattern.tree.cuts(),
            tree: if deep { None } else { self.tree(cut, &pattern.tree) },
        }
    }

    /// A tree as nested cuts, built from its end: both sides of a cut are ready
    /// when it is reached.
    fn tree(&self, cut: &PaperCut, tree: &cut::Tree) -> Option<shape::Tree> {
        let tokens: Vec<Token> = tree.tokens().collect();
        let mut done = Vec::new();
        for token in tokens.into_iter().rev() {
            let tree = match token {
                Token::Leaf(cut::Leaf::Waste) => shape::Tree::Waste,
                Token::Leaf(cut::Leaf::Keep) => shape::Tree::Offcut,
                Token::Leaf(cut::Leaf::Part { part, turned }) => {
                    shape::Tree::Part { letter: letter(cut, part), turned }
                }
                Token::Cut(axis, at) | Token::Held(axis, at) => {
                    let first = Box::new(done.pop()?);
                    let second = Box::new(done.pop()?);
                    let (runs, at) = (runs(axis), self.length(at));
                    shape::Tree::Cut { runs, at, first, second }
                }
            };
            done.push(tree);
        }
        done.pop()
    }

    fn step(&self, cut: &PaperCut, step: &cut::Step) -> shape::Step {
        let made = |(rect, becomes): &(geom::Rect, cut::Becomes)| shape::Made {
            rect: self.rect(*rect),
            becomes: match *becomes {
                cut::Becomes::Part(part) => {
                    shape::Becomes::Part { letter: letter(cut, part) }
                }
                cut::Becomes::Aside(number) => shape::Becomes::Aside { number },
                cut::Becomes::InHand => shape::Becomes::Hand,
                cut::Becomes::Keep => shape::Becomes::Offcut,
                cut::Becomes::Waste => shape::Becomes::Waste,
            },
        };
        shape::Step {
            pattern: step.pattern,
            hand: match step.hand {
                cut::Hand::Sheet => shape::Hand::Sheet,
                cut::Hand::Aside(number) => shape::Hand::Aside { number },
                cut::Hand::Same => shape::Hand::Same,
            },
            in_hand: self.rect(step.in_hand),
            alike: step.alike.iter().map(|rect| self.rect(*rect)).collect(),
            runs: runs(step.axis),
            from_far_side: step.from_far_side,
            turn: step.turn,
            mark: self.length(step.mark),
            moves: step.moves,
            times: step.times,
            off: step.off.iter().map(made).collect(),
            stays: made(&step.stays),
            slack: step.slack,
            hard_to_hold: step.hard_to_hold,
            copies: step.copies,
        }
    }
}

const fn toil(it: cut::Toil) -> shape::Toil {
    shape::Toil { sheets: it.sheets, marks: it.marks, steps: it.steps }
}

/// How many cuts lie within one another at most.
fn depth(tree: &cut::Tree) -> usize {
    let (mut deepest, mut open) = (0, vec![(tree, 0)]);
    while let Some((tree, depth)) = open.pop() {
        deepest = deepest.max(depth);
        if let cut::Tree::Cut(cut) = tree {
            open.push((&cut.first, depth + 1));
            open.push((&cut.second, depth + 1));
        }
    }
    deepest
}

fn letter(cut: &PaperCut, part: usize) -> String {
    cut.parts.get(part).map_or_else(String::new, |part| part.letter.clone())
}

const fn runs(axis: Axis) -> &'static str {
    match axis {
        Axis::Level => "level",
        Axis::Upright => "upright",
    }
}

const fn known_by(how: How) -> &'static str {
    match how {
        How::Area => "area",
        How::Pairs => "pairs",
        How::Search => "search",
        How::Weights => "weights",
    }
}
