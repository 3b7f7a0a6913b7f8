//! Cards, what is inside them, and their layers.

use std::collections::BTreeMap;

use crate::diag::{Diagnostic, rules};
use crate::geom::{Size, Turn};
use crate::project::picture::CARD_ROOM;
use crate::project::read::desk::{Desk, quote};
use crate::project::read::draft::{Draft, at};
use crate::project::read::extras;
use crate::project::read::greetings::ink;
use crate::project::read::late::face;
use crate::project::read::pictures;
use crate::project::read::place::{self, Front, Seat, Shares};
use crate::project::read::runs;
use crate::project::read::shape::Keys;
use crate::project::tree::Node;
use crate::project::{
    BaseId, Card, FaceId, GreetingId, Inside, Layer, PieceId, Placed, Stands, ToolId,
};
use crate::source::Site;

/// The most cards that are read.
const MOST: usize = 1000;
/// The most layers that one card has in one place.
const MOST_LAYERS: usize = 100;

/// Reads every card; all else must have been read.
pub(crate) fn read(desk: &mut Desk<'_>, node: Option<&Node>, draft: &mut Draft) {
    let mut rows = node.map_or(&[][..], |node| desk.list(node));
    if MOST < rows.len() {
        let message = format!("there are more than {MOST} cards");
        let help = "give a card a `count` instead";
        desk.fault(&rules::OUT_OF_RANGE, rows[MOST].site, message, help);
        rows = &rows[..MOST];
    }
    draft.cards = rows.iter().map(|row| card(desk, row, draft)).collect();
    let mut first: BTreeMap<String, Site> = BTreeMap::new();
    for card in draft.cards.iter().flatten() {
        let words = card.name.words.clone();
        if let Some(first) = first.insert(words, card.name.site) {
            let message = format!("two cards are called {}", quote(&card.name.words));
            desk.note(
                Diagnostic::new(&rules::NAME_USED_TWICE, card.name.site, message)
                    .label(first, "first here")
                    .help("rename one, or give it a `count`"),
            );
        }
    }
}

fn card(desk: &mut Desk<'_>, node: &Node, draft: &Draft) -> Option<Card> {
    let keys = desk.open(node, node.site, "card");
    let name = desk.need(&keys, "name").and_then(|node| desk.told(node));
    let count = keys.get("count").and_then(|node| desk.count(node, 1, 1000)).unwrap_or(1);
    let stands = match keys.get("stands") {
        Some(node) if desk.one_of(node, &["tall", "wide"]) == Some(1) => Stands::Wide,
        _ => Stands::Tall,
    };
    let base = match keys.get("base") {
        Some(node) => desk.resolve(node, &draft.base_names),
        None if draft.bases.len() == 1 => Some(0),
        None => {
            desk.missing(&keys, "base");
            None
        }
    };
    let front = base.and_then(|base| at(&draft.bases, base));
    let front = Front {
        size: front.map(|base| match stands {
            Stands::Tall => base.front,
            Stands::Wide => base.front.turned(),
        }),
        fold: front.map(|base| place::fold_side(stands, base.fold)),
    };
    let layers = layers(desk, keys.get("layers"), front, draft);
    let extras = extras::read(desk, keys.get("extras"), draft);
    let inside = inside(desk, &keys, front, draft);
    let base_of = base.and_then(|base| at(&draft.bases, base));
    if let (Some(entry), Some(base)) = (keys.entry("envelope"), base_of)
        && base.envelope.is_none()
    {
        desk.note(
            Diagnostic::new(
                &rules::KEY_WITHOUT_EFFECT,
                entry.site,
                "`envelope` has no effect, since the base has no envelope",
            )
            .label(base.name.site, "this base")
            .help("give the base an `envelope`"),
        );
    }
    let envelope = base_of.and_then(|base| base.envelope?.size);
    let front = Front { size: envelope, fold: None };
    let envelope = self::layers(desk, keys.get("envelope"), front, draft);
    let photo = pictures::photo(desk, keys.get("photo"), CARD_ROOM);
    let tips = desk.all_told(keys.get("tips"));
    Some(Card {
        name: name?,
        count,
        base: BaseId(base?),
        stands,
        layers: layers?,
        extras: extras?,
        inside: inside?,
        envelope: envelope?,
        photo,
        tips,
    })
}

fn inside(
    desk: &mut Desk<'_>,
    keys: &Keys<'_>,
    front: Front,
    draft: &Draft,
) -> Option<Inside> {
    let Some(entry) = keys.entry("inside") else { return Some(Inside::default()) };
    let keys = desk.open(&entry.value, entry.site, "inside");
    desk.either_key(&keys, "words", "choose");
    let words = keys.get("words").and_then(|node| desk.told(node));
    // Who writes so in place of the words means that they are chosen.
    let later = ["later", "chosen later", "to be chosen", "chosen when the card is sent"];
    let is_later = words.as_ref().is_some_and(|it| {
        it.told.is_empty() && later.contains(&it.words.trim().to_lowercase().as_str())
    });
    let words = words.filter(|_| !is_later);
    let ink = keys.get("ink").and_then(|node| ink(desk, node, draft));
    let chosen = keys
        .get("choose")
        .map(|node| desk.one_of(node, &["when the card is sent", "later"]));
    let among = desk.all_told(keys.get("among"));
    if let (Some(among), None, false) = (keys.entry("among"), chosen, is_later) {
        let message = "`among` has no effect without `choose`";
        let help = "write `choose: when the card is sent` with it";
        desk.fault(&rules::KEY_WITHOUT_EFFECT, among.site, message, help);
    }
    let layers = layers(desk, keys.get("layers"), front, draft)?;
    Some(Inside { words, ink, chosen: chosen.is_some() || is_later, among, layers })
}

/// Reads layers from the base upwards.
fn layers(
    desk: &mut Desk<'_>,
    node: Option<&Node>,
    front: Front,
    draft: &Draft,
) -> Option<Vec<Layer>> {
    let Some(node) = node else { return Some(Vec::new()) };
    let mut rows = desk.list(node);
    if MOST_LAYERS < rows.len() {
        let message = format!("there are more than {MOST_LAYERS} layers");
        let help = "no card carries so many; look for a list that was pasted twice";
        desk.fault(&rules::OUT_OF_RANGE, rows[MOST_LAYERS].site, message, help);
        rows = &rows[..MOST_LAYERS];
    }
    let mut layers: Vec<Option<Layer>> = Vec::new();
    let mut seats: Vec<Seat> = Vec::new();
    for row in rows {
        let (layer, seat) = layer(desk, row, front, &seats, draft);
        layers.push(layer);
        seats.push(seat);
    }
    runs::space(desk, &mut layers, &seats, front);
    // Those that show around later ones, from the last to the first, so that one
    // can show around another.
    for index in (0..layers.len()).rev() {
        place::behind(desk, index, &mut layers, &seats);
    }
    layers.into_iter().collect()
}

fn layer(
    desk: &mut Desk<'_>,
    node: &Node,
    front: Front,
    seats: &[Seat],
    draft: &Draft,
) -> (Option<Layer>, Seat) {
    let keys = desk.open(node, node.site, "layer");
    let (what, name) = placed(desk, &keys, draft);
    let called = keys.get("called").and_then(|node| desk.words(node));
    let turned = turned(desk, &keys);
    let size = what.and_then(|what| draft.size_of(what));
    let size = size.map(|size| if turned.swaps() { size.turned() } else { size });
    let behind = keys.get("behind").and_then(|node| desk.words(node));
    let name = called.map_or(name, |it| it.words);
    let mut seat = Seat { name, size, behind, evenly: Shares::default() };
    let placing = place::read(desk, &keys, front, seats, &mut seat);
    let showing = showing(desk, &keys, what, draft);
    let trim_flush =
        keys.get("trim flush").and_then(|node| desk.yes(node)).unwrap_or(false);
    let raised = keys.get("raised").and_then(|node| raised(desk, node)).unwrap_or(0);
    let with = keys.get("with").and_then(|node| desk.resolve(node, &draft.tool_names));
    let layer = what.zip(placing).map(|(what, placing)| Layer {
        what,
        showing,
        turned,
        across: placing.across,
        up: placing.up,
        edge_to_edge: placing.edge_to_edge,
        trim_flush,
        raised,
        with: with.map(ToolId),
        site: keys
            .entry("piece")
            .or(keys.entry("greeting"))
            .map_or(node.site, |it| it.value.site),
    });
    (layer, seat)
}

/// What a layer is, and the name that later layers call it by.
fn placed(
    desk: &mut Desk<'_>,
    keys: &Keys<'_>,
    draft: &Draft,
) -> (Option<Placed>, String) {
    desk.either_key(keys, "piece", "greeting");
    if let Some(node) = keys.get("greeting") {
        let name = desk.raw(node).map_or("", |it| it.0).to_owned();
        if name.is_empty() {
            return (None, name);
        }
        let found = desk.resolve(node, &draft.greeting_names);
        return (found.map(|it| Placed::Greeting(GreetingId(it))), name);
    }
    let Some(node) = keys.get("piece") else {
        if !keys.means("piece") && !keys.means("greeting") {
            let help = "write `piece: …` or `greeting: …` with a name";
            let message = "a layer is a piece or a greeting, and this is neither";
            desk.fault(&rules::MISSING_KEY, keys.site, message, help);
        }
        return (None, String::new());
    };
    let Some((name, _)) = desk.raw(node) else { return (None, String::new()) };
    let piece = draft.piece_names.find(name).map(|it| Placed::Piece(PieceId(it)));
    let part = || draft.parts.get(draft.part_names.find(name)?).copied();
    let found = piece.or_else(part);
    if found.is_none() {
        let known = [&draft.piece_names, &draft.part_names];
        desk.unknown_name(name, node.site, "piece", &known);
    }
    (found, name.to_owned())
}

fn turned(desk: &mut Desk<'_>, keys: &Keys<'_>) -> Turn {
    desk.either_key(keys, "turned", "pattern");
    if let Some(node) = keys.get("pattern") {
        let _ = desk.one_of(node, &["upright"]);
    }
    let Some(node) = keys.get("turned") else { return Turn::None };
    match desk.one_of(node, &["left", "right", "over"]) {
        Some(0) => Turn::Left,
        Some(1) => Turn::Right,
        Some(_) => Turn::Over,
        None => Turn::None,
    }
}

/// The face that shows: as the layer says, or as the late cut says.
fn showing(
    desk: &mut Desk<'_>,
    keys: &Keys<'_>,
    what: Option<Placed>,
    draft: &Draft,
) -> Option<FaceId> {
    let what = what?;
    let Some(node) = keys.get("showing") else {
        let Placed::Late(id, part) = what else { return None };
        return at(&draft.late_cuts, id.0)?.makes.get(part)?.showing;
    };
    let paper = draft.paper_of(what)?;
    let paper = draft.paper_names.find(&paper.name.words)?;
    face(desk, node, draft, paper)
}

/// How many foam squares: `4 squares`.
fn raised(desk: &mut Desk<'_>, node: &Node) -> Option<u32> {
    let (text, _) = desk.raw(node)?;
    if matches!(text, "yes" | "true") {
        desk.fault(
            &rules::NOT_A_NUMBER,
            node.site,
            "it isn't said on how many foam squares",
            "write `raised: 4 squares`, for instance",
        );
        return None;
    }
    let number = text.split_once(' ').map_or(text, |(number, rest)| match rest.trim() {
        "square" | "squares" | "foam square" | "foam squares" => number,
        _ => text,
    });
    desk.count_in(number, node.site, 0, 100)
}

/// Half the difference of two sizes, each way.
pub(crate) fn border(outer: Size, inner: Size) -> Size {
    Size::new((outer.width - inner.width).half(), (outer.height - inner.height).half())
}
