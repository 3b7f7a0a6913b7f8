//! Parts that the pattern on the paper ties together or to a place on the sheet.
//!
//! Pieces that lie next to each other come off the sheet as one *row*. The search is
//! given the row as one part; when it has found a place, the row is taken apart by
//! cuts that are held, so that no later step of the planning lets its parts change
//! places.

use crate::diag::{Diagnostic, rules};
use crate::geom::{Axis, Length, Rect, Side, Size};
use crate::plan::cut::{Leaf, Part, PartOf, Pattern, Token, Tree, Turning, called};
use crate::project::{NextTo, PieceId, Project, Region};
use crate::source::Site;

/// What is tied, of the parts of one paper.
#[derive(Clone, Debug, Default)]
pub(crate) struct Ties {
    rows: Vec<Row>,
    /// Parts that lie at one place of the sheet.
    regions: Vec<(usize, Region)>,
    /// How many parts the paper has; rows are numbered after them.
    n_parts: usize,
}

/// Parts that lie side by side, or one above another, in this order.
#[derive(Clone, Debug)]
struct Row {
    parts: Vec<usize>,
    /// Which way the cuts between them run.
    axis: Axis,
    /// All of them together.
    size: Size,
    turning: Turning,
}

/// The part or row that lies at one place of the sheet.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Place {
    /// Its index among whole parts.
    pub(crate) part: usize,
    /// Where it lies.
    pub(crate) rect: Rect,
    /// Where that is said.
    pub(crate) site: Site,
}

impl Ties {
    /// What is tied among the parts of a paper; pieces that can't be paired off are
    /// pointed out.
    pub(crate) fn of(
        project: &Project,
        parts: &[Part],
        notes: &mut Vec<Diagnostic>,
    ) -> Self {
        let mut ties = Self { n_parts: parts.len(), ..Self::default() };
        let part_of =
            |id: PieceId| parts.iter().position(|it| it.of == PartOf::Piece(id));
        let mut after: Vec<Option<(usize, NextTo)>> = vec![None; parts.len()];
        let mut has_before = vec![false; parts.len()];
        for (index, piece) in project.pieces.iter().enumerate() {
            let part = part_of(PieceId(index));
            if let (Some(region), Some(part)) = (piece.region, part) {
                ties.regions.push((part, region));
            }
            let Some(next) = piece.next_to else { continue };
            let other = part_of(next.piece);
            let per_kit = |it: Option<usize>| it.map_or(0, |it| parts[it].per_kit);
            if per_kit(part) != per_kit(other) {
                let other = &project.pieces[next.piece.0].name.words;
                notes.push(differ_in_number(
                    (&piece.name.words, per_kit(part)),
                    (other, per_kit(part_of(next.piece))),
                    next,
                ));
                continue;
            }
            let (Some(part), Some(other)) = (part, other) else { continue };
            let (first, second) = match next.side {
                Side::Right | Side::Bottom => (other, part),
                Side::Left | Side::Top => (part, other),
            };
            // All of these were seen to when the description was read.
            let axis = between(next.side);
            let flush = parts[first].size.along(axis) == parts[second].size.along(axis);
            if flush && after[first].is_none() && !has_before[second] {
                after[first] = Some((second, next));
                has_before[second] = true;
            }
        }
        for first in (0..parts.len()).filter(|it| !has_before[*it]) {
            let Some((_, next)) = after[first] else { continue };
            ties.rows.extend(row(parts, first, between(next.side), &after));
        }
        ties
    }

    /// Whether nothing is tied.
    pub(crate) fn is_empty(&self) -> bool {
        self.rows.is_empty() && self.regions.is_empty()
    }

    /// The parts as the search is given them: each row as one more part, and none of
    /// those that are in it.
    pub(crate) fn whole(&self, parts: &[Part]) -> Vec<Part> {
        let mut whole = parts.to_vec();
        for row in &self.rows {
            let Some(first) = row.parts.first().and_then(|it| parts.get(*it)) else {
                continue;
            };
            whole.push(Part {
                size: row.size,
                turning: row.turning,
                late: Vec::new(),
                greetings: Vec::new(),
                ..first.clone()
            });
        }
        for part in self.rows.iter().flat_map(|it| &it.parts) {
            (whole[*part].count, whole[*part].per_kit) = (0, 0);
        }
        whole
    }

    /// What a whole part is called in messages.
    pub(crate) fn called(
        &self,
        project: &Project,
        parts: &[Part],
        whole: usize,
    ) -> String {
        let names = match whole.checked_sub(self.n_parts).and_then(|it| self.rows.get(it))
        {
            Some(row) => row.parts.clone(),
            None => vec![whole],
        };
        let names = names.iter().filter_map(|it| parts.get(*it));
        let names: Vec<String> = names.map(|it| called(project, it.of)).collect();
        names.join("` and `")
    }

    /// The parts and rows that lie at places of their own on the sheet.
    pub(crate) fn places(&self, parts: &[Part]) -> Vec<Place> {
        let mut places: Vec<Place> = Vec::new();
        for (part, region) in &self.regions {
            let place = self.place(parts, *part, *region);
            // That a row is asked for at two places was seen when it was read.
            if !places.iter().any(|it| it.part == place.part) {
                places.push(place);
            }
        }
        places
    }

    fn place(&self, parts: &[Part], part: usize, region: Region) -> Place {
        let mut corner = (region.left, region.top);
        let (mut index, mut size) = (part, parts[part].size);
        for (at, row) in self.rows.iter().enumerate() {
            let Some(place) = row.parts.iter().position(|it| *it == part) else {
                continue;
            };
            let before: Length = row.parts[..place]
                .iter()
                .map(|it| parts[*it].size.along(row.axis.other()))
                .sum();
            match row.axis {
                Axis::Upright => corner.0 -= before,
                Axis::Level => corner.1 -= before,
            }
            (index, size) = (self.n_parts + at, row.size);
        }
        let rect = Rect::new(corner.0, corner.1, size);
        Place { part: index, rect, site: region.site }
    }

    /// The tree with every row taken apart into its parts.
    pub(crate) fn taken_apart(&self, tree: &Tree, parts: &[Part]) -> Tree {
        let mut tokens = Vec::new();
        for token in tree.tokens() {
            let row = match token {
                Token::Leaf(Leaf::Part { part, turned }) => part
                    .checked_sub(self.n_parts)
                    .and_then(|it| self.rows.get(it))
                    .map(|row| (row, turned)),
                Token::Leaf(_) | Token::Cut(..) | Token::Held(..) => None,
            };
            let Some((row, turned)) = row else {
                tokens.push(token);
                continue;
            };
            let axis = if turned { row.axis.other() } else { row.axis };
            for (index, &part) in row.parts.iter().enumerate() {
                if index + 1 < row.parts.len() {
                    let extent = parts[part].size.along(row.axis.other());
                    tokens.push(Token::Held(axis, extent));
                }
                tokens.push(Token::Leaf(Leaf::Part { part, turned }));
            }
        }
        Tree::from_tokens(&tokens).expect("a row is one tree")
    }

    /// The first part that does not lie where it is tied: its pattern and its index.
    ///
    /// This looks at rectangles only, whatever the cuts were thought to do.
    pub(crate) fn broken(&self, patterns: &[Pattern]) -> Option<(usize, usize)> {
        for (index, pattern) in patterns.iter().enumerate() {
            let placed = pattern.tree.placements(pattern.sheet);
            for it in &placed {
                let Leaf::Part { part, turned } = it.leaf else { continue };
                let lies = |rect: Rect| {
                    let at = rect.x >= Length::ZERO && rect.y >= Length::ZERO;
                    at && it.rect.x == rect.x && it.rect.y == rect.y && !turned
                };
                let mut asked = self.regions.iter().filter(|it| it.0 == part);
                if !asked.all(|(_, to)| lies(Rect::new(to.left, to.top, it.rect.size))) {
                    return Some((index, part));
                }
                let next = self.rows.iter().find_map(|row| {
                    let at = row.parts.iter().position(|it| *it == part)?;
                    Some((row, *row.parts.get(at + 1)?))
                });
                let Some((row, next)) = next else { continue };
                let axis = if turned { row.axis.other() } else { row.axis };
                let beside = placed.iter().any(|other| {
                    let same = other.leaf == Leaf::Part { part: next, turned };
                    let flush = other.rect.size.along(axis) == it.rect.size.along(axis);
                    let (x, y) = match axis {
                        Axis::Upright => (it.rect.right(), it.rect.y),
                        Axis::Level => (it.rect.x, it.rect.bottom()),
                    };
                    same && flush && (other.rect.x, other.rect.y) == (x, y)
                });
                if !beside {
                    return Some((index, part));
                }
            }
        }
        None
    }
}

/// Follows neighbours from the first one.
fn row(
    parts: &[Part],
    first: usize,
    axis: Axis,
    after: &[Option<(usize, NextTo)>],
) -> Option<Row> {
    let mut row = vec![first];
    let mut at = first;
    while let Some((next, _)) = after[at] {
        if row.contains(&next) {
            return None;
        }
        row.push(next);
        at = next;
    }
    let fixed = row.iter().any(|it| parts[*it].turning == Turning::Fixed);
    let along: Length = row.iter().map(|it| parts[*it].size.along(axis.other())).sum();
    let across = parts[first].size.along(axis);
    let size = match axis {
        Axis::Upright => Size::new(along, across),
        Axis::Level => Size::new(across, along),
    };
    let turning = if fixed { Turning::Fixed } else { Turning::Free };
    Some(Row { parts: row, axis, size, turning })
}

/// Which way the cut between two neighbours runs.
const fn between(side: Side) -> Axis {
    match side {
        Side::Left | Side::Right => Axis::Upright,
        Side::Top | Side::Bottom => Axis::Level,
    }
}

/// Pieces can't be paired off.
fn differ_in_number(
    (piece, count): (&str, u32),
    (other, other_count): (&str, u32),
    next: NextTo,
) -> Diagnostic {
    let message = format!(
        "a kit takes {count} x `{piece}` and {other_count} x `{other}`, which lie next to each other"
    );
    let help = match count < other_count {
        true => format!("write `spare: {}` at `{piece}`", other_count - count),
        false => format!("write `spare: {}` at `{other}`", count - other_count),
    };
    Diagnostic::new(&rules::NEIGHBOURS_DIFFER_IN_NUMBER, next.site, message).help(help)
}
