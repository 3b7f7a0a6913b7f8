//! Ribbon and embellishments: what lies ready, and the step that puts them on.

use crate::document::Text;
use crate::handout::writer::Writer;
use crate::project::{Amount, Extra};

/// How much of what: `3 × brads`, `8 in of cord`.
pub(super) fn item(w: &Writer<'_>, extra: &Extra) -> Text {
    let what = w.user(&w.project.tools[extra.what.0].name);
    match extra.amount {
        Amount::Count(1) => what,
        Amount::Count(count) => {
            w.tell("several", &[("count", count.into()), ("item", what.into())])
        }
        Amount::Length(length) => {
            let length = w.words.length(length);
            w.tell("so-long", &[("length", length.into()), ("item", what.into())])
        }
    }
}

/// The step that puts it on.
pub(super) fn step(w: &Writer<'_>, extra: &Extra) -> Text {
    let place = extra.place.as_ref();
    let values = [
        ("item", item(w, extra).into()),
        ("placed", if place.is_some() { "yes" } else { "no" }.into()),
        ("place", place.map(|it| w.user(it)).unwrap_or_default().into()),
    ];
    w.tell("add-extra", &values)
}
