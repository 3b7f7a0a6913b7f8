//! Card bases and their envelopes.

use crate::diag::{Diagnostic, rules};
use crate::geom::Size;
use crate::project::read::desk::{Desk, quote};
use crate::project::read::draft::Draft;
use crate::project::read::papers;
use crate::project::read::shape::{Keys, name_of};
use crate::project::read::trade;
use crate::project::tree::{Entry, Node, Value};
use crate::project::{
    Base, BaseFrom, Comes, Envelope, FoldAlong, Pack, PaperId, Text, Trade,
};
use crate::source::Site;
use crate::standards::{self, Format, FormatKind};

/// Reads every base; the papers must have been read.
pub(crate) fn read(desk: &mut Desk<'_>, node: Option<&Node>, draft: &mut Draft) {
    let (names, bases) = desk.named(node, "base");
    draft.bases = bases.iter().map(|entry| base(desk, entry, draft)).collect();
    draft.base_names = names;
}

fn base(desk: &mut Desk<'_>, entry: &Entry, draft: &Draft) -> Option<Base> {
    let keys = desk.open(&entry.value, entry.site, "base");
    let front = front(desk, &keys);
    let from = from(desk, &keys, draft);
    let comes = match keys.get("comes") {
        Some(node) => match desk.one_of(node, &["flat", "scored flat", "folded"]) {
            Some(0) => Comes::Flat,
            Some(1) => Comes::Scored,
            _ => Comes::Folded,
        },
        None if keys.get("made").is_some() => Comes::Flat,
        None => Comes::Folded,
    };
    if let (Comes::Folded, Some(made), Some(comes)) =
        (comes, keys.entry("made"), keys.entry("comes"))
    {
        desk.note(
            Diagnostic::new(
                &rules::ONE_OR_THE_OTHER,
                comes.value.site,
                "a base that is cut from a sheet can't come folded",
            )
            .label(made.site, "it is made here")
            .help("write `flat`, or `scored flat` if the sheets come scored"),
        );
    }
    let fold = match keys.get("fold") {
        Some(node) if desk.one_of(node, &["long side", "short side"]) == Some(1) => {
            FoldAlong::Short
        }
        _ => FoldAlong::Long,
    };
    let format = front.and_then(|(_, format)| format);
    let with = from.and_then(|(_, with)| with);
    let envelope = envelope(desk, keys.get("envelope"), format, with);
    let name = desk.printed(name_of(entry), &keys);
    let (front, format) = front?;
    let (order_number, trade) = bought(desk, &keys);
    Some(Base {
        name,
        front: Size::new(front.short(), front.long()),
        format: format.map(|it| it.name),
        fold,
        from: from?.0,
        comes,
        envelope,
        order_number,
        trade,
    })
}

/// What to write on the order of bought bases, and what they cost.
fn bought(desk: &mut Desk<'_>, keys: &Keys<'_>) -> (Option<Text>, Trade) {
    let made = keys.entry("made");
    for name in ["order number", "price", "on hand"] {
        if let (Some(made), Some(given)) = (made, keys.entry(name)) {
            let message = format!("`{name}` has no effect on a base that is made");
            desk.note(
                Diagnostic::new(&rules::KEY_WITHOUT_EFFECT, given.site, message)
                    .label(made.site, "it is made here")
                    .help("say it at the paper that it is cut from"),
            );
        }
    }
    let order_number = keys.get("order number").and_then(|node| desk.words(node));
    (order_number, trade::trade(desk, keys))
}

fn front(
    desk: &mut Desk<'_>,
    keys: &Keys<'_>,
) -> Option<(Size, Option<&'static Format>)> {
    desk.either_key(keys, "format", "front");
    if let Some(node) = keys.get("format") {
        return papers::size_or_format(desk, node, FormatKind::Card);
    }
    let node = desk.need(keys, "front")?;
    papers::size_or_format(desk, node, FormatKind::Card)
}

/// Where a base comes from, and where it says that envelopes come with it.
fn from(
    desk: &mut Desk<'_>,
    keys: &Keys<'_>,
    draft: &Draft,
) -> Option<(BaseFrom, Option<Site>)> {
    desk.either_key(keys, "bought", "made");
    if let Some(made) = keys.entry("made") {
        let keys = desk.open(&made.value, made.site, "made");
        let of = desk.need(&keys, "of")?;
        let paper = desk.resolve(of, &draft.paper_names)?;
        return Some((BaseFrom::Made(PaperId(paper)), None));
    }
    let Some(bought) = keys.entry("bought") else {
        desk.fault(
            &rules::MISSING_KEY,
            keys.site,
            "a card base is either bought or made",
            "write `bought: {pack: 12}`, or `made: {of: …}` with a paper",
        );
        return None;
    };
    if !matches!(bought.value.value, Value::Keys(_) | Value::Nothing { .. }) {
        if desk.yes(&bought.value)? {
            return Some((BaseFrom::Bought(None), None));
        }
        desk.missing(keys, "made");
        return None;
    }
    let keys = desk.open(&bought.value, bought.site, "bought");
    let pack = keys.get("pack").and_then(|node| desk.count(node, 1, 100_000));
    let with =
        keys.get("with").filter(|node| desk.one_of(node, &["envelopes"]).is_some());
    let pack = pack.map(|holds| Pack { holds, designs: 1 });
    Some((BaseFrom::Bought(pack), with.map(|node| node.site)))
}

fn envelope(
    desk: &mut Desk<'_>,
    node: Option<&Node>,
    format: Option<&'static Format>,
    with: Option<Site>,
) -> Option<Envelope> {
    let usual = format.and_then(standards::usual_envelope).map(|it| it.1);
    let Some(node) = node else {
        return with.map(|site| Envelope { size: usual, with_base: true, site });
    };
    let (text, _) = desk.raw(node)?;
    let size = match text {
        "none" | "no" => return None,
        "usual" | "yes" if usual.is_some() => usual,
        "usual" | "yes" => {
            desk.fault(
                &rules::UNKNOWN_FORMAT,
                node.site,
                format!(
                    "{} can't be known for a front with a size of its own",
                    quote(text)
                ),
                "write the size of the envelope, or give the base a format",
            );
            return None;
        }
        _ => {
            let size = papers::size_or_format(desk, node, FormatKind::Envelope)?.0;
            Some(Size::new(size.long(), size.short()))
        }
    };
    Some(Envelope { size, with_base: with.is_some(), site: node.site })
}
