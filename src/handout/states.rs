//! Small drawings beside the steps of a card: the front as it is after the step, where
//! that says more than words.

use crate::document::{Drawing, Figure, Fill, Mark, ScaleWish, Stroke, Text};
use crate::geom::Turn;
use crate::handout::fronts::{self, Dimensions, Half};
use crate::handout::writer::{Writer, plain};
use crate::handout::{Drawings, Kind, When};
use crate::plan::{Act, Front, Set};
use crate::project::{Along, Layer};

/// The drawings beside steps that share a scale.
const STATES: u32 = 4;

/// The drawing beside the step of a task, if there is to be one.
pub(super) fn beside(w: &Writer<'_>, front: &Front, act: Act) -> Option<Figure> {
    let (half, at) = laid(w, front, act)?;
    tells(half.layers, half.sets, at).then(|| figure(w, half, at))
}

/// Which half a task lays a layer on, and which layer.
fn laid<'a>(w: &Writer<'a>, front: &'a Front, act: Act) -> Option<(Half<'a>, usize)> {
    let card = front.card;
    let its = w.project.cards.get(card.0)?;
    let half = |what, layers, sets| Half { card, front, what, layers, sets };
    match act {
        Act::Attach(_, at) => Some((half("front", &its.layers, &front.layers), at)),
        Act::AttachInside(_, at) => {
            Some((half("inside", &its.inside.layers, &front.inside), at))
        }
        _ => None,
    }
}

/// In which scale the drawings are and how to read them, if the handout has any.
pub(super) fn scale(w: &Writer<'_>, when: Option<When>) -> Option<Text> {
    let cards = w
        .template
        .sections
        .iter()
        .find(|it| it.kind == Kind::Cards && it.drawings == Drawings::StepByStep)?;
    let mine =
        w.mine().filter(|it| [when, cards.when].iter().flatten().all(|at| *at == it.1));
    let mut drawn = mine.filter(|(task, _)| {
        let front = task.act.card().and_then(|it| w.front(it));
        let laid = front.and_then(|it| laid(w, it, task.act));
        laid.is_some_and(|(half, at)| tells(half.layers, half.sets, at))
    });
    drawn.next()?;
    let scale = ScaleWish::shared_by(STATES);
    Some(w.tell("state-scale", &[("scale", scale.into())]))
}

/// Whether a drawing says more than words, and more than the front as a whole: of
/// several layers, this one is placed by another, lies across the outline of one that
/// is there already, or is turned.
fn tells(layers: &[Layer], sets: &[Set], at: usize) -> bool {
    let (Some(layer), Some(set)) = (layers.get(at), sets.get(at)) else { return false };
    let by_another = |along| !matches!(along, Along::From(..) | Along::Center);
    let across = |it: &Set| {
        let both = it.visible().overlap(set.visible());
        both.is_some_and(|both| both != it.visible() && both != set.visible())
    };
    at > 0
        && sets.len() > 2
        && (by_another(layer.across)
            || by_another(layer.up)
            || layer.turned != Turn::None
            || sets[..at].iter().any(across))
}

/// The half after a layer has been put on: what was there is plain.
fn figure(w: &Writer<'_>, half: Half<'_>, at: usize) -> Figure {
    let mut marks = fronts::base(w, half.front);
    for area in &mut marks {
        plainly(area, Stroke::Edge);
    }
    for set in &half.sets[..at] {
        let laid = fronts::layer(w, set);
        marks.extend(laid.into_iter().map(|mut it| {
            plainly(&mut it, Stroke::Thin);
            it
        }));
    }
    let (set, layer) = (&half.sets[at], &half.layers[at]);
    for mut mark in fronts::layer(w, set) {
        if let Mark::Area { line, fill, .. } = &mut mark {
            *line = Some(Stroke::Heavy);
            // A label is as white as what lies below it.
            if *fill == Fill::Paper {
                *fill = Fill::Strong;
            }
        }
        marks.push(mark);
    }
    let size = half.front.size;
    let mut dimensions = Dimensions::default();
    dimensions.add(fronts::from_left_or_right(set.placed(), size.width, layer.across));
    dimensions.add(fronts::from_top_or_bottom(set.placed(), size.height, layer.up));
    marks.extend(dimensions.marks(w));
    Figure {
        drawing: Drawing { size, marks },
        alt: alt(w, half, at),
        caption: None,
        scale: ScaleWish::Glance(STATES),
        says_scale: false,
    }
}

/// Takes the hatch from what is there already.
fn plainly(mark: &mut Mark, stroke: Stroke) {
    if let Mark::Area { line, fill, .. } = mark {
        *line = Some(stroke);
        *fill = Fill::Paper;
    }
}

fn alt(w: &Writer<'_>, half: Half<'_>, at: usize) -> String {
    let named = |set: &Set| w.placed_name(set.what);
    let before: Vec<Text> = half.sets[..at].iter().map(named).collect();
    let count = u32::try_from(before.len()).unwrap_or(u32::MAX);
    let place = w.place(half.front, half.layers, at).join(&w.say("list-comma", &[]));
    let values = [
        ("what", half.what.into()),
        ("card", w.bare(&w.project.cards[half.card.0].name).into()),
        ("fold", Writer::side(half.front.fold).into()),
        ("count", count.into()),
        ("before", plain(&w.list(before)).into()),
        ("raised", half.sets[at].raised.into()),
        ("name", plain(&named(&half.sets[at])).into()),
        ("place", place.into()),
    ];
    w.say("state-alt", &values)
}
