//! What is said of a second pass of a punch, and of mats that are punched.

use crate::document::Text;
use crate::geom::{Axis, Length, Side, Size};
use crate::handout::prepare::greeting_of;
use crate::handout::writer::{Writer, sentences};
use crate::plan::cut::PartOf;
use crate::plan::{Act, Task};
use crate::project::{GreetingId, LabelMat, PunchedMat, Stock, ToolKind};

/// The second pass for each label of a step that is narrowed, once for those that
/// are narrowed alike.
pub(super) fn narrow(w: &Writer<'_>, group: &[&Task]) -> Vec<Text> {
    let mut said = Vec::new();
    let mut texts = Vec::new();
    for greeting in group.iter().filter_map(|it| greeting_of(it.act)) {
        let greeting = &w.project.greetings[greeting.0];
        let Some(narrowed) = &greeting.narrowed else { continue };
        let alike = (narrowed.take_off, narrowed.side, greeting.label.outline);
        if said.contains(&alike) {
            continue;
        }
        said.push(alike);
        let side = match narrowed.side {
            Side::Left => "left",
            Side::Right => "right",
            Side::Top => "top",
            Side::Bottom => "bottom",
        };
        let all = group.iter().filter_map(|it| greeting_of(it.act));
        let all = all.filter(|it| {
            let other = &w.project.greetings[it.0];
            let by = other.narrowed.as_ref().map(|it| (it.take_off, it.side));
            by == Some((alike.0, alike.1)) && other.label.outline == alike.2
        });
        let whole = all.count() == group.len();
        let held = narrowed.held_with.as_ref();
        let label = w.quoted(&greeting.words);
        let values = [
            ("which", if whole { "all" } else { "some" }.into()),
            ("label", label.into()),
            ("by", w.words.length(narrowed.take_off).into()),
            ("side", side.into()),
            ("size", w.words.size(greeting.label.outline.size).into()),
            ("held", if held.is_some() { "yes" } else { "no" }.into()),
            ("with", held.map(|it| w.user(it)).unwrap_or_default().into()),
            ("words", if greeting.stamped.is_some() { "yes" } else { "no" }.into()),
            ("off", w.words.length(narrowed.take_off.half()).into()),
        ];
        texts.push(w.tell("narrow-labels", &values));
    }
    texts
}

/// Punches mats out of their strips.
pub(super) fn mats(
    w: &Writer<'_>,
    group: &[&Task],
    times: fn(&Writer<'_>, &Task) -> u32,
) -> Text {
    let mut strips: Vec<Text> = Vec::new();
    for greeting in group.iter().filter_map(|it| greeting_of(it.act)) {
        let Some(mat) = w.project.greetings[greeting.0].mat else { continue };
        let paper = &w.project.papers[mat.of.0];
        let strip = match (&paper.stock, w.part(PartOf::LabelMat(greeting))) {
            (Stock::Sheets(_), Some(part)) => {
                vec![crate::document::Inline::strong(part.letter.clone())]
            }
            _ => w.tell("scraps-of", &[("paper", w.user(&paper.name).into())]),
        };
        if !strips.contains(&strip) {
            strips.push(strip);
        }
    }
    let count = group.iter().fold(0_u32, |sum, it| sum.saturating_add(times(w, it)));
    let tool = group[0].tool.map(|it| w.tool_name(it));
    let values = [
        ("tool", tool.unwrap_or_else(|| w.tell("a-punch", &[])).into()),
        ("count", count.into()),
        ("strips", w.list(strips).into()),
    ];
    w.tell("punch-mats", &values)
}

/// How a punched mat is halved and its halves are laid, and what shows then.
pub(super) fn mat(
    w: &Writer<'_>,
    mat: &LabelMat,
    punched: &PunchedMat,
    name: Text,
) -> [Text; 2] {
    let level = punched.halved == Axis::Level;
    let together = punched.moved < Length::ZERO;
    let moved = if together { -punched.moved } else { punched.moved };
    let lay = if moved == Length::ZERO {
        Text::new()
    } else {
        let values = [
            ("mat", name.into()),
            ("halves", if level { "level" } else { "upright" }.into()),
            ("slid", if together { "together" } else { "apart" }.into()),
            ("by", w.words.length(moved).into()),
        ];
        w.tell("mat-halve", &values)
    };
    let trim = if punched.trim == Length::ZERO {
        Text::new()
    } else {
        let values = [
            ("by", w.words.length(punched.trim).into()),
            ("halves", if level { "level" } else { "upright" }.into()),
        ];
        w.tell("mat-trim", &values)
    };
    let (across, up) = (mat.shows.width, mat.shows.height);
    let which = match (across == up, across == Length::ZERO, up == Length::ZERO) {
        (true, ..) => "all",
        (_, true, _) => "up",
        (_, _, true) => "across",
        _ => "both",
    };
    let values = [
        ("which", which.into()),
        ("across", w.words.length(across).into()),
        ("up", w.words.length(up).into()),
    ];
    [sentences([lay, trim]), w.tell("mat-shows", &values)]
}

/// What a mat is in the bag once it is punched, and its size.
pub(super) fn in_bag(
    w: &Writer<'_>,
    greeting: GreetingId,
    count: u32,
) -> Option<(Text, Size)> {
    let punched = w.project.greetings[greeting.0].mat?.punched?;
    let ToolKind::Punch(punch) = w.project.tools[punched.with.0].kind else {
        return None;
    };
    let label = w.label(greeting);
    w.is_ahead(Act::PunchMat(greeting)).then(|| {
        let name = match count {
            1 => w.tell("mat-of-label", &[("label", label.into())]),
            _ => w.tell("bag-mats", &[]),
        };
        (name, punch.outline.size)
    })
}
