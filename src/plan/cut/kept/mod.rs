//! A cutting plan that is kept: written beside the description and read back.
//!
//! A kept plan is followed instead of a new search, so that a printed handout stays
//! right when the program changes. It is only followed while it fits: what the
//! description says about the paper, its sheets and its parts must be what the plan
//! was made for. Nothing that is read is trusted; every cut is checked again.
//!
//! ```json
//! {"cutting plan": 1, "lengths in": "1/14400 mm", "papers": [
//!   {"paper": "meadow",
//!    "parts": [{"part": "sash", "letter": "A", "size": [2011680, 731520], "count": 1}],
//!    "patterns": [{"sheet": [2926080, 2926080], "sheets": 1,
//!                  "cuts": ["upright 2011680", "level 731520", "part 0", "waste", "offcut"]}]}
//! ]}
//! ```
//!
//! Each cut gives the extent of its left or top part; both parts follow, the left
//! or top one first. A cut that is `held` has parts that must stay where they lie, for
//! the sake of the pattern on the paper.

mod fault;

pub use fault::KeptFault;

use serde::{Deserialize, Serialize};

use crate::geom::{Axis, Length, Size};
use crate::plan::cut::{Leaf, PaperCut, Part, Pattern, Token, Tree, Turning, called};
use crate::project::{PaperId, Project};

/// The plans of all papers.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Kept {
    /// One row for each paper.
    pub papers: Vec<KeptPaper>,
}

/// The plan of one paper and what it was made for.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct KeptPaper {
    /// The name of the paper.
    pub paper: String,
    /// The parts by name; trees name them by their index here.
    pub parts: Vec<KeptPart>,
    /// Ways to cut a sheet.
    pub patterns: Vec<Pattern>,
}

/// A part as it was when the plan was made.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct KeptPart {
    /// What it is called.
    pub name: String,
    /// The letter that the diagrams call it by.
    pub letter: String,
    /// Width × height.
    pub size: Size,
    /// How many all kits need.
    pub count: u32,
}

/// The form that is written and read.
const VERSION: u64 = 1;
/// Plans beyond these are not kept beside a new one.
const MOST_PLANS: usize = 64;
const UNIT: &str = "1/14400 mm";
/// A sheet is not longer than 100 m.
const LONGEST: i64 = Length::mm(100_000).units();

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct File {
    #[serde(rename = "cutting plan")]
    version: u64,
    #[serde(rename = "lengths in")]
    unit: String,
    papers: Vec<PaperRow>,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct PaperRow {
    paper: String,
    parts: Vec<PartRow>,
    patterns: Vec<PatternRow>,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct PartRow {
    part: String,
    letter: String,
    size: [i64; 2],
    count: u32,
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct PatternRow {
    sheet: [i64; 2],
    sheets: u32,
    cuts: Vec<String>,
}

impl Kept {
    /// What is kept of the cutting of all papers. Scraps have no plan, and a
    /// designer's own way stands in the description.
    pub fn new(project: &Project, cuts: &[PaperCut]) -> Self {
        let planned =
            cuts.iter().filter(|cut| cut.own.is_none() && !cut.patterns.is_empty());
        let papers = planned.map(|cut| KeptPaper {
            paper: project.papers[cut.paper.0].name.words.clone(),
            parts: kept_parts(project, &cut.parts),
            patterns: cut.patterns.clone(),
        });
        Self { papers: papers.collect() }
    }

    /// This plan with what an older one holds for other numbers of kits: where
    /// readers cut their own sheets, each way of working has its plan.
    #[must_use]
    pub fn beside(mut self, older: Self) -> Self {
        let described = |one: &KeptPaper, other: &KeptPaper| {
            let same = one
                .parts
                .iter()
                .zip(&other.parts)
                .all(|(one, other)| one.name == other.name && one.size == other.size);
            one.paper == other.paper && one.parts.len() == other.parts.len() && same
        };
        for paper in older.papers {
            let fits = self.papers.iter().any(|it| described(it, &paper));
            let same = self.papers.iter().any(|it| {
                let counts = it.parts.iter().map(|it| it.count);
                described(it, &paper) && counts.eq(paper.parts.iter().map(|it| it.count))
            });
            if fits && !same && self.papers.len() < MOST_PLANS {
                self.papers.push(paper);
            }
        }
        self
    }

    /// The plan as JSON, with a line break at the end.
    pub fn to_json(&self) -> String {
        let sides = |it: Size| [it.width.units(), it.height.units()];
        let papers = self.papers.iter().map(|it| PaperRow {
            paper: it.paper.clone(),
            parts: it
                .parts
                .iter()
                .map(|it| PartRow {
                    part: it.name.clone(),
                    letter: it.letter.clone(),
                    size: sides(it.size),
                    count: it.count,
                })
                .collect(),
            patterns: it
                .patterns
                .iter()
                .map(|it| PatternRow {
                    sheet: sides(it.sheet),
                    sheets: it.copies,
                    cuts: it.tree.tokens().map(word).collect(),
                })
                .collect(),
        });
        let file = File { version: VERSION, unit: UNIT.into(), papers: papers.collect() };
        let mut json = serde_json::to_string_pretty(&file)
            .expect("strings and numbers can be written");
        json.push('\n');
        json
    }

    /// Reads a plan back. It is sound in itself, but may not fit the description.
    ///
    /// # Errors
    /// The first thing that is wrong with the text.
    pub fn from_json(text: &str) -> Result<Self, KeptFault> {
        // The version first, so that a later form is told as such.
        let loose: serde_json::Value = serde_json::from_str(text)
            .map_err(|it| KeptFault::NotReadable(it.to_string()))?;
        match loose.get("cutting plan").and_then(serde_json::Value::as_u64) {
            Some(VERSION) => {}
            Some(other) => return Err(KeptFault::OtherVersion(other)),
            None => return Err(KeptFault::NotReadable("it is no cutting plan".into())),
        }
        let file: File = serde_json::from_value(loose)
            .map_err(|it| KeptFault::NotReadable(it.to_string()))?;
        if file.unit != UNIT {
            return Err(KeptFault::OutOfForm(format!(
                "its lengths are in {}",
                file.unit
            )));
        }
        let papers: Result<Vec<KeptPaper>, KeptFault> =
            file.papers.into_iter().map(read_paper).collect();
        Ok(Self { papers: papers? })
    }

    /// The patterns of a paper and the letters of its parts, if a plan still fits
    /// what is described.
    ///
    /// `sheets` are the sizes that the paper comes in.
    ///
    /// # Errors
    /// The first thing that does not fit.
    pub fn patterns_for(
        &self,
        project: &Project,
        paper: PaperId,
        parts: &[Part],
        sheets: &[Size],
    ) -> Result<(Vec<Pattern>, Vec<String>), KeptFault> {
        let name = &project.papers[paper.0].name.words;
        let mut first = KeptFault::NoSuchPaper(name.clone());
        for (index, kept) in self.papers.iter().filter(|it| it.paper == *name).enumerate()
        {
            match kept.patterns_for(project, parts, sheets) {
                Ok(patterns) => return Ok(patterns),
                Err(fault) if index == 0 => first = fault,
                Err(_) => {}
            }
        }
        Err(first)
    }
}

impl KeptPaper {
    fn patterns_for(
        &self,
        project: &Project,
        parts: &[Part],
        sheets: &[Size],
    ) -> Result<(Vec<Pattern>, Vec<String>), KeptFault> {
        let now = kept_parts(project, parts);
        // Which part of the description each part of the plan is.
        let mut which = Vec::with_capacity(self.parts.len());
        for part in &self.parts {
            let at = now.iter().position(|it| it.name == part.name);
            let at = at.ok_or_else(|| KeptFault::OtherParts(part.name.clone()))?;
            if which.contains(&at) {
                return Err(KeptFault::OutOfForm(format!(
                    "`{}` is in it twice",
                    part.name
                )));
            }
            if part.size != now[at].size {
                let (name, size) = (part.name.clone(), now[at].size);
                return Err(KeptFault::OtherSize(name, part.size, size));
            }
            which.push(at);
        }
        if let Some(missing) =
            (0..now.len()).find(|it| now[*it].count > 0 && !which.contains(it))
        {
            return Err(KeptFault::OtherParts(now[missing].name.clone()));
        }
        let mut made = vec![0_u64; now.len()];
        let mut patterns = Vec::with_capacity(self.patterns.len());
        for pattern in &self.patterns {
            if !sheets.contains(&pattern.sheet) {
                return Err(KeptFault::OtherSheet(pattern.sheet));
            }
            for placed in pattern.tree.placements(pattern.sheet) {
                let Leaf::Part { part, turned } = placed.leaf else { continue };
                let Some(&at) = which.get(part) else {
                    return Err(KeptFault::OutOfForm(format!("there is no part {part}")));
                };
                let (name, part) = (&now[at].name, &parts[at]);
                let wanted = if turned { part.size.turned() } else { part.size };
                if placed.rect.size != wanted {
                    let (comes, name) = (placed.rect.size, name.clone());
                    return Err(KeptFault::DoesNotComeOut(name, comes, wanted));
                }
                if turned && part.turning == Turning::Fixed {
                    return Err(KeptFault::Turned(name.clone()));
                }
                made[at] = made[at].saturating_add(u64::from(pattern.copies));
            }
            let tokens: Vec<Token> = pattern
                .tree
                .tokens()
                .map(|it| match it {
                    Token::Leaf(Leaf::Part { part, turned }) => {
                        Token::Leaf(Leaf::Part { part: which[part], turned })
                    }
                    Token::Leaf(_) | Token::Cut(..) | Token::Held(..) => it,
                })
                .collect();
            let tree = Tree::from_tokens(&tokens).expect("it was one tree before");
            patterns.push(Pattern { tree, ..pattern.clone() });
        }
        for (part, made) in now.iter().zip(made) {
            if made != u64::from(part.count) {
                let (name, count) = (part.name.clone(), u64::from(part.count));
                return Err(KeptFault::OtherCount(name, made, count));
            }
        }
        let mut letters: Vec<String> = now.into_iter().map(|it| it.letter).collect();
        for (part, at) in self.parts.iter().zip(which) {
            letters[at].clone_from(&part.letter);
        }
        Ok((patterns, letters))
    }
}

fn kept_parts(project: &Project, parts: &[Part]) -> Vec<KeptPart> {
    let parts = parts.iter().map(|it| KeptPart {
        name: called(project, it.of),
        letter: it.letter.clone(),
        size: it.size,
        count: it.count,
    });
    parts.collect()
}

/// A cut or leaf as it is written.
fn word(token: Token) -> String {
    match token {
        Token::Cut(Axis::Upright, at) => format!("upright {}", at.units()),
        Token::Cut(Axis::Level, at) => format!("level {}", at.units()),
        Token::Held(Axis::Upright, at) => format!("upright {} held", at.units()),
        Token::Held(Axis::Level, at) => format!("level {} held", at.units()),
        Token::Leaf(Leaf::Waste) => "waste".into(),
        Token::Leaf(Leaf::Keep) => "offcut".into(),
        Token::Leaf(Leaf::Part { part, turned: false }) => format!("part {part}"),
        Token::Leaf(Leaf::Part { part, turned: true }) => format!("part {part} turned"),
    }
}

fn token(word: &str) -> Option<Token> {
    let mut words = word.split(' ');
    let token = match (words.next()?, words.next()) {
        (axis @ ("upright" | "level"), Some(at)) => {
            let axis = if axis == "level" { Axis::Level } else { Axis::Upright };
            let at = length(at.parse().ok()?)?;
            match words.next() {
                None => Token::Cut(axis, at),
                Some("held") => Token::Held(axis, at),
                Some(_) => return None,
            }
        }
        ("waste", None) => Token::Leaf(Leaf::Waste),
        ("offcut", None) => Token::Leaf(Leaf::Keep),
        ("part", Some(part)) => {
            let turned = match words.next() {
                None => false,
                Some("turned") => true,
                Some(_) => return None,
            };
            Token::Leaf(Leaf::Part { part: part.parse().ok()?, turned })
        }
        _ => return None,
    };
    words.next().is_none().then_some(token)
}

/// `A` to `ZZZZ`.
fn is_letter(word: &str) -> bool {
    (1..=4).contains(&word.len()) && word.bytes().all(|it| it.is_ascii_uppercase())
}

fn length(units: i64) -> Option<Length> {
    (0 < units && units <= LONGEST).then_some(Length::from_units(units))
}

fn size([width, height]: [i64; 2]) -> Result<Size, KeptFault> {
    match (length(width), length(height)) {
        (Some(width), Some(height)) => Ok(Size::new(width, height)),
        _ => Err(KeptFault::OutOfForm(format!("a size is {width} x {height}"))),
    }
}

fn read_paper(row: PaperRow) -> Result<KeptPaper, KeptFault> {
    let mut parts = Vec::with_capacity(row.parts.len());
    for part in row.parts {
        let known = parts.iter().any(|it: &KeptPart| it.letter == part.letter);
        if known || !is_letter(&part.letter) {
            let letter = format!("a part has the letter `{}`", part.letter);
            return Err(KeptFault::OutOfForm(letter));
        }
        parts.push(KeptPart {
            name: part.part,
            letter: part.letter,
            size: size(part.size)?,
            count: part.count,
        });
    }
    let mut patterns = Vec::with_capacity(row.patterns.len());
    for pattern in row.patterns {
        let sheet = size(pattern.sheet)?;
        let tokens = pattern
            .cuts
            .into_iter()
            .map(|it| token(&it).ok_or(KeptFault::UnknownCut(it)));
        let tokens: Vec<Token> = tokens.collect::<Result<_, _>>()?;
        let tree = Tree::from_tokens(&tokens).ok_or_else(|| {
            KeptFault::OutOfForm("cuts are missing or left over".into())
        })?;
        if pattern.sheets == 0 {
            return Err(KeptFault::OutOfForm("a pattern is for no sheet".into()));
        }
        for placed in tree.placements(sheet) {
            let Size { width, height } = placed.rect.size;
            if width <= Length::ZERO || height <= Length::ZERO {
                return Err(KeptFault::OutOfForm("a cut lies beyond its paper".into()));
            }
            if let Leaf::Part { part, .. } = placed.leaf
                && part >= parts.len()
            {
                return Err(KeptFault::OutOfForm(format!("there is no part {part}")));
            }
        }
        patterns.push(Pattern { sheet, tree, copies: pattern.sheets });
    }
    Ok(KeptPaper { paper: row.paper, parts, patterns })
}
