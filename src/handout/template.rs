//! Which sections a handout has, in which order: templates, as data.

use std::collections::BTreeMap;
use std::fmt;

use serde::Deserialize;

use crate::project::Reader;

/// The templates that come with the house: name and text.
pub const BUILT_IN: &[(&str, &str)] = &[
    ("class", include_str!("../../templates/class.yaml")),
    ("host", include_str!("../../templates/host.yaml")),
    ("kit", include_str!("../../templates/kit.yaml")),
    ("bench", include_str!("../../templates/bench.yaml")),
    ("travel", include_str!("../../templates/travel.yaml")),
];

/// Which sections a handout has, and for whom it is written.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Template {
    /// Whose share of the work divides it into what is done ahead and what not.
    pub reader: Reader,
    /// Who holds the handout in hand.
    pub hands: Hands,
    /// The name of the page format that suits it, as in the table of formats.
    pub page: Option<String>,
    /// Whether its pages are folded into a booklet.
    pub booklet: bool,
    /// In order.
    pub sections: Vec<Wanted>,
}

/// Who holds a handout in hand: it speaks only of her own work.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Hands {
    /// The reader, who finishes the cards.
    Reader,
    /// The class host or kit maker, who does what is done ahead.
    Maker,
}

/// A section that a template asks for.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Wanted {
    /// Which.
    pub kind: Kind,
    /// It starts on a new page.
    pub new_page: bool,
    /// Which drawings it has.
    pub drawings: Drawings,
    /// The designer's own way of cutting is compared with the best one found.
    pub own_way: bool,
    /// Only what is done then; `None` for all.
    pub when: Option<When>,
}

/// Which drawings a section has.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Drawings {
    /// None.
    LeftOut,
    /// All that belong to it.
    Drawn,
    /// On cards: all, and beside a step the front as it is then, where that says
    /// more than words.
    StepByStep,
    /// On cards: the front and its layers pulled apart, above the steps rather
    /// than beside them.
    Apart,
}

/// When work is done, seen from the table, the buyer's home or the journey.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum When {
    /// Before.
    Before,
    /// There.
    Here,
}

/// A kind of section.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Kind {
    /// Title, what it makes, the finished fronts.
    Cover,
    /// What can hurt, and how it does not.
    Cautions,
    /// Tools to have at hand.
    Need,
    /// What to buy, in whole packs.
    Buy,
    /// What the bag holds when it reaches its reader.
    Bag,
    /// How each sheet is divided, to scale.
    CutPlan,
    /// The steps at the trimmer.
    Cutting,
    /// Work that is done in one go for all cards.
    Prepare,
    /// The layers of each card pulled apart.
    Layers,
    /// A section for each card.
    Cards,
    /// What goes into the bag, ticked off while packing.
    Pack,
    /// Envelopes and the post.
    Envelope,
    /// Bars of known length that tell whether the printout is true to scale.
    CheckBar,
    /// What a host does a week, a day and an hour before.
    Countdown,
    /// The timetable of a class.
    Times,
    /// A list of those who take part.
    Attendance,
    /// A label for each bag.
    Labels,
    /// Bags against pieces, to be crossed out.
    Tally,
    /// The finished cards as a gift set.
    Gift,
    /// The sheets at true size.
    TrueSize,
}

impl Kind {
    /// Every kind, with its name in templates.
    pub const ALL: [(&'static str, Self); 20] = [
        ("cover", Self::Cover),
        ("cautions", Self::Cautions),
        ("need", Self::Need),
        ("buy", Self::Buy),
        ("bag", Self::Bag),
        ("cut plan", Self::CutPlan),
        ("cutting", Self::Cutting),
        ("prepare", Self::Prepare),
        ("layers", Self::Layers),
        ("cards", Self::Cards),
        ("pack", Self::Pack),
        ("envelope", Self::Envelope),
        ("check bar", Self::CheckBar),
        ("countdown", Self::Countdown),
        ("timetable", Self::Times),
        ("attendance", Self::Attendance),
        ("bag labels", Self::Labels),
        ("tally", Self::Tally),
        ("gift", Self::Gift),
        ("true size", Self::TrueSize),
    ];
}

/// Why a template can't be used.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct TemplateError {
    /// A lower-case phrase without a full stop; the user's words in backticks.
    pub message: String,
    /// What to write instead, if there is a guess.
    pub help: Option<String>,
}

impl fmt::Display for TemplateError {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&self.message)?;
        match &self.help {
            Some(help) => write!(f, "; {help}"),
            None => Ok(()),
        }
    }
}

impl std::error::Error for TemplateError {}

impl Template {
    /// A template that comes with the house, by its name in [`BUILT_IN`].
    ///
    /// # Errors
    /// There is none of that name.
    pub fn built_in(name: &str) -> Result<Self, TemplateError> {
        let texts: Vec<(&str, &str)> = BUILT_IN.to_vec();
        Self::parse(choose("template", name, &texts)?)
    }

    /// A template from its text.
    ///
    /// # Errors
    /// It is no YAML, or asks for something that there is not.
    pub fn parse(text: &str) -> Result<Self, TemplateError> {
        let raw: Raw = serde_yaml::from_str(text).map_err(|fault| TemplateError {
            message: format!("the template can't be read: {fault}"),
            help: None,
        })?;
        let readers = Reader::ALL.map(|it| (it.word(), it));
        let hands = [("reader", Hands::Reader), ("maker", Hands::Maker)];
        let sections = raw.sections.iter().map(wanted).collect::<Result<Vec<_>, _>>()?;
        if sections.is_empty() {
            return Err(TemplateError {
                message: "the template asks for no section".to_owned(),
                help: Some("list some under `sections:`, such as `- cover`".to_owned()),
            });
        }
        Ok(Self {
            reader: choose("reader", &raw.reader, &readers)?,
            hands: match &raw.hands {
                Some(word) => choose("value of `hands`", word, &hands)?,
                None => Hands::Reader,
            },
            page: raw.page,
            booklet: raw.booklet,
            sections,
        })
    }
}

/// The shape of the file.
#[derive(Deserialize)]
#[serde(deny_unknown_fields)]
struct Raw {
    reader: String,
    hands: Option<String>,
    page: Option<String>,
    #[serde(default)]
    booklet: bool,
    sections: Vec<RawSection>,
}

/// A section by its name alone, or with options.
#[derive(Deserialize)]
#[serde(untagged)]
enum RawSection {
    Name(String),
    With(BTreeMap<String, BTreeMap<String, String>>),
}

fn wanted(raw: &RawSection) -> Result<Wanted, TemplateError> {
    let nothing = BTreeMap::new();
    let (name, options) = match raw {
        RawSection::Name(name) => (name, &nothing),
        RawSection::With(map) => match map.iter().next() {
            Some(pair) if map.len() == 1 => pair,
            _ => {
                return Err(TemplateError {
                    message: "a section has more than one name".to_owned(),
                    help: Some("put a dash before each section".to_owned()),
                });
            }
        },
    };
    let mut wanted = Wanted {
        kind: choose("section", name, &Kind::ALL)?,
        new_page: false,
        drawings: Drawings::Drawn,
        own_way: false,
        when: None,
    };
    type Set = fn(&mut Wanted);
    let known: [(&str, &[(&str, Set)]); 4] = [
        (
            "starts",
            &[
                ("below", |it| it.new_page = false),
                ("on a new page", |it| it.new_page = true),
            ],
        ),
        (
            "drawings",
            &[
                ("drawn", |it| it.drawings = Drawings::Drawn),
                ("step by step", |it| it.drawings = Drawings::StepByStep),
                ("apart", |it| it.drawings = Drawings::Apart),
                ("left out", |it| it.drawings = Drawings::LeftOut),
            ],
        ),
        (
            "own way",
            &[
                ("compared", |it| it.own_way = true),
                ("left out", |it| it.own_way = false),
            ],
        ),
        (
            "when",
            &[
                ("before", |it| it.when = Some(When::Before)),
                ("here", |it| it.when = Some(When::Here)),
                ("always", |it| it.when = None),
            ],
        ),
    ];
    for (option, value) in options {
        let values = choose("option", option, &known)?;
        choose(&format!("value of `{option}`"), value, values)?(&mut wanted);
    }
    Ok(wanted)
}

/// The thing of that name, or an error that names the one that was meant.
fn choose<T: Copy>(
    what: &str,
    name: &str,
    among: &[(&str, T)],
) -> Result<T, TemplateError> {
    if let Some((_, it)) = among.iter().find(|(known, _)| *known == name) {
        return Ok(*it);
    }
    let near = among
        .iter()
        .map(|(known, _)| (strsim::osa_distance(known, name), *known))
        .filter(|(distance, known)| *distance <= known.chars().count().div_ceil(3))
        .min();
    let help = match near {
        Some((_, known)) => format!("did you mean `{known}`?"),
        None => {
            let all: Vec<_> =
                among.iter().map(|(known, _)| format!("`{known}`")).collect();
            format!("there are {}", all.join(", "))
        }
    };
    let message = format!("there is no {what} `{name}`");
    Err(TemplateError { message, help: Some(help) })
}
