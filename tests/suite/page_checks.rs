//! What must hold on every page of every handout: nothing overlaps, nothing is cut
//! off, all can be read.

use leafwright::fonts::FaceId;
use leafwright::page::*;

/// A quarter inch: what the printers of homes leave white (common practice, no
/// source).
pub(crate) const WHITE: f64 = 18.0;

/// Words may touch by so much: boxes are drawn around the tallest letters.
const TOUCH: f64 = 0.6;

/// WCAG 2.2, 1.4.3: text of any size; 1.4.11: lines of a diagram.
const TEXT_CONTRAST: f64 = 4.5;
const LINE_CONTRAST: f64 = 3.0;

/// The texts of a page that say something.
pub(crate) fn texts(page: &Page) -> impl Iterator<Item = (&Item, &Text)> {
    page.items.iter().filter_map(|item| match &item.what {
        What::Text(text) if !text.run.text.trim().is_empty() => Some((item, text)),
        _ => None,
    })
}

/// The box that letters take up: left, top, right and bottom, from the height of
/// capitals to below the line, as far as the words go.
pub(crate) fn letters(text: &Text) -> [f64; 4] {
    let run = &text.run;
    let trimmed = run.text.trim_end().len();
    let last = run.glyphs.iter().rposition(|it| it.text.start < trimmed);
    let end = last.and_then(|it| run.glyphs.get(it + 1)).map_or(run.advance, |it| it.x);
    let (up, down) = (0.66 * run.size, 0.2 * run.size);
    if text.upwards {
        [text.x - up, text.y - end, text.x + down, text.y]
    } else {
        [text.x, text.y - up, text.x + end, text.y + down]
    }
}

/// What of the box has ink in it: a capital letter alone has nothing below its line.
fn inked(text: &Text) -> [f64; 4] {
    let mut edges = letters(text);
    let said = text.run.text.trim();
    if said.len() == 1 && said.chars().all(|it| it.is_ascii_uppercase() && it != 'Q') {
        edges[if text.upwards { 2 } else { 3 }] -= 0.2 * text.run.size;
    }
    edges
}

/// The box around an item; handles of curves are near enough to the curve.
pub(crate) fn extent(item: &Item) -> [f64; 4] {
    let (pieces, half) = match &item.what {
        What::Text(text) => return letters(text),
        What::Path(path) => {
            (path.pieces.as_slice(), path.line.as_ref().map_or(0.0, |it| it.width / 2.0))
        }
        What::Window(window) => (std::slice::from_ref(&window.outline), 0.0),
    };
    let mut around = [f64::INFINITY, f64::INFINITY, f64::NEG_INFINITY, f64::NEG_INFINITY];
    let mut hold = |(x, y): (f64, f64)| {
        around = [
            around[0].min(x - half),
            around[1].min(y - half),
            around[2].max(x + half),
            around[3].max(y + half),
        ];
    };
    for piece in pieces {
        hold(piece.start);
        for step in &piece.steps {
            match step {
                PathStep::To(x, y) => hold((*x, *y)),
                PathStep::Curve(points) => points.iter().for_each(|it| hold(*it)),
            }
        }
    }
    around
}

/// Whether two boxes share more than a touch.
fn meet(one: &[f64; 4], two: &[f64; 4], touch: f64) -> bool {
    one[2] > two[0] + touch
        && two[2] > one[0] + touch
        && one[3] > two[1] + touch
        && two[3] > one[1] + touch
}

/// Everything that is wrong with the pages, a line each.
pub(crate) fn faults(laid: &Laid) -> Vec<String> {
    let mut faults = Vec::new();
    for (number, page) in laid.pages.iter().enumerate() {
        let mut fault =
            |what: String| faults.push(format!("page {}: {what}", number + 1));
        overlaps(page, &mut fault);
        edges(page, &mut fault);
        contrasts(laid, page, &mut fault);
        sizes(page, &mut fault);
    }
    faults
}

/// Words upon words.
fn overlaps(page: &Page, fault: &mut impl FnMut(String)) {
    let mut boxes: Vec<_> =
        texts(page).map(|(_, it)| (letters(it), &it.run.text)).collect();
    boxes.sort_by(|one, two| one.0[1].total_cmp(&two.0[1]));
    for (at, (one, words)) in boxes.iter().enumerate() {
        let below = boxes[at + 1..].iter().take_while(|it| it.0[1] < one[3]);
        for (two, others) in below {
            if meet(one, two, TOUCH) {
                fault(format!("`{words}` and `{others}` overlap"));
            }
        }
    }
}

/// Things that a printer would cut off, or that run into the foot.
fn edges(page: &Page, fault: &mut impl FnMut(String)) {
    let foot = texts(page).filter(|it| it.0.owner == Owner::Running);
    let foot = foot.map(|it| letters(it.1)[1]).filter(|it| *it > 0.8 * page.height);
    let foot = foot.fold(page.height, f64::min);
    for item in &page.items {
        let [left, top, right, bottom] = extent(item);
        let inside = left >= WHITE - 0.01
            && top >= WHITE - 0.01
            && right <= page.width - WHITE + 0.01
            && bottom <= page.height - WHITE + 0.01;
        if !inside && left <= right {
            fault(format!("{} stands too far out", told(item)));
        }
        if item.owner != Owner::Running && bottom > foot && left <= right {
            fault(format!("{} runs into the foot", told(item)));
        }
    }
}

fn told(item: &Item) -> String {
    let at = extent(item).map(|it| format!("{it:.1}")).join(" ");
    match &item.what {
        What::Text(text) => format!("`{}` ({at})", text.run.text),
        What::Path(_) => format!("a line or area ({at})"),
        What::Window(_) => format!("a picture ({at})"),
    }
}

/// The tags of an item and of all that it is part of, from inside out.
pub(crate) fn roles<'a>(laid: &'a Laid, item: &Item) -> Vec<&'a Role> {
    let Owner::Tag(mut id) = item.owner else { return Vec::new() };
    let mut roles = Vec::new();
    while id != TagId::ROOT {
        let tag = laid.tags.get(id);
        roles.push(&tag.role);
        id = tag.parent;
    }
    roles
}

/// Words that can't be told from what is behind them, outlines from the paper.
fn contrasts(laid: &Laid, page: &Page, fault: &mut impl FnMut(String)) {
    let mut areas: Vec<([f64; 4], Ink)> = Vec::new();
    for item in &page.items {
        match &item.what {
            What::Text(text) => {
                let own = inked(text);
                let mut behind = vec![Ink::PAPER];
                for (area, ink) in &areas {
                    let covers = area[0] <= own[0] + TOUCH
                        && area[1] <= own[1] + TOUCH
                        && area[2] >= own[2] - TOUCH
                        && area[3] >= own[3] - TOUCH;
                    if covers {
                        behind = vec![*ink];
                    } else if meet(area, &own, TOUCH) {
                        behind.push(*ink);
                    }
                }
                for ink in behind {
                    let ratio = text.ink.contrast(ink);
                    if ratio < TEXT_CONTRAST {
                        let words = &text.run.text;
                        fault(format!("`{words}` stands at {ratio:.2} : 1 on {ink:?}"));
                    }
                }
            }
            // Nobody knows what a picture shows: words on it need a plate of their own.
            What::Window(_) => areas.push((extent(item), Ink([0x60, 0x60, 0x60]))),
            What::Path(path) => {
                if let Some(fill) = path.fill {
                    areas.push((extent(item), fill));
                }
                let drawn =
                    roles(laid, item).iter().any(|it| matches!(it, Role::Figure { .. }));
                let outline = path.pieces.iter().any(|it| it.closed);
                // What is as light as the paper is a halo around the line itself.
                let line = path.line.as_ref().filter(|it| it.ink != Ink::PAPER);
                if let (Some(line), true) = (line, drawn && outline) {
                    for other in path.fill.into_iter().chain([Ink::PAPER]) {
                        let ratio = line.ink.contrast(other);
                        if ratio < LINE_CONTRAST {
                            fault(format!("an outline stands at {ratio:.2} : 1"));
                        }
                    }
                }
            }
        }
    }
}

/// Words that are too small: running text is serif and at least 11 pt, nothing is
/// below 9 pt (what UKAAF G003 asks for is larger still: that is large print).
fn sizes(page: &Page, fault: &mut impl FnMut(String)) {
    for (_, text) in texts(page) {
        let least = match text.run.face {
            FaceId::SERIF | FaceId::SERIF_STRONG => 11.0,
            _ => 9.0,
        };
        if text.run.size < least {
            fault(format!("`{}` has only {} pt", text.run.text, text.run.size));
        }
    }
}
