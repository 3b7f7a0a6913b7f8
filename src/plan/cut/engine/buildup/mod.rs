//! Best-first search from the bottom up: small rectangles are joined to larger.
//!
//! A *build* is a finished rectangle with the counts it holds. Two builds are laid
//! side by side or one over the other, in the manner of P. Y. Wang (1983); the
//! build with the highest bound is joined next, as K. V. Viswanathan and A. Bagchi
//! (1993) do. The bound is what the build holds and the most that can lie around
//! it, once plain and once with prices on the counts; the lower one holds. Of
//! builds with the same counts only those with the smallest boxes are used. No
//! other dominance is: a larger count in the same box may be worse, because the
//! part may be needed elsewhere (M. Russo, M. Boccia, A. Sforza and C. Sterle
//! review such faults, 2020).

mod draw;

use std::cmp::Reverse;
use std::collections::BinaryHeap;

use crate::geom::Axis;
use crate::plan::cut::engine::board::Board;
use crate::plan::cut::engine::dp::Table;
use crate::plan::cut::engine::meter::Meter;
use crate::plan::cut::engine::packed::{Packed, Places};
use crate::plan::cut::engine::raster::Raster;

/// Builds at most; each takes some hundred bytes.
const MOST_BUILDS: usize = 1_500_000;
/// Marks the end of a chain, and no build.
const NONE: u32 = u32::MAX;

/// Values and bounds for one search.
#[derive(Clone, Copy)]
pub(super) struct Bounds<'a> {
    /// The value of one part of each kind.
    pub(super) values: &'a [i32],
    /// The most value around a box, plain.
    pub(super) plain: &'a Table,
    /// The same with prices, scaled.
    pub(super) priced: &'a Table,
    /// Value less price of one part of each kind, scaled.
    pub(super) reduced: &'a [i32],
    /// What is refunded, scaled.
    pub(super) refund: i64,
    /// A value of 1 in scaled units.
    pub(super) scale: i64,
    /// How many sheets there are.
    pub(super) sheets: u32,
    /// The most value on the other sheets together, plain and with prices.
    pub(super) others: (i64, i64),
}

/// How a build came about.
#[derive(Clone, Copy, Debug)]
enum How {
    /// One part: its kind and which way it lies.
    Part(u32, u32),
    /// Two builds side by side (upright cut) or one over the other.
    Join(Axis, u32, u32),
}

/// A finished rectangle.
#[derive(Clone, Copy, Debug)]
struct Build<P> {
    counts: P,
    x: u32,
    y: u32,
    value: i32,
    reduced: i32,
    how: How,
    /// Runs of cuts down to the parts if upright cuts come next, and if level ones do.
    /// Nothing if they are not limited.
    runs: (u8, u8),
    /// The next build with the same mark in the table of counts.
    next: u32,
}

/// A build that has been joined with all before it.
#[derive(Clone, Copy, Debug)]
struct Member<P> {
    reduced: i32,
    value: i32,
    id: u32,
    counts: P,
}

/// Builds with the same box, by falling reduced value.
struct Group<P> {
    x: u32,
    y: u32,
    width: i64,
    height: i64,
    members: Vec<Member<P>>,
}

/// The search and what it has found.
pub(super) struct Search<'a, P> {
    board: &'a Board,
    raster: &'a Raster,
    bounds: Bounds<'a>,
    places: Places<P>,
    builds: Vec<Build<P>>,
    open: BinaryHeap<(i64, i32, Reverse<u32>)>,
    groups: Vec<Group<P>>,
    group_at: Vec<u32>,
    table: Vec<u32>,
    /// The value to beat.
    best: i64,
    /// The build that is worth the most, if it beats the value given. With a second
    /// sheet: two builds that hold all that is wanted.
    pub(super) found: Option<(u32, Option<u32>)>,
    /// The most value on the other sheets, plain and with prices, if this one is worth
    /// its share.
    others: (i64, i64),
    /// A kind that is laid as far to the right and down as can be.
    pub(super) far: Option<usize>,
    /// Builds that can be the sheet that is worth its share; all the rest has to go on
    /// the other sheets.
    pub(super) full: Vec<u32>,
}

/// How a search ended.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum End {
    /// Nothing is worth more than what was found (or was to be beaten).
    Proven,
    /// Steps or memory ran out; nothing is worth more than this.
    Open(i64),
}

impl<'a, P: Packed> Search<'a, P> {
    /// Prepares to look for a value above `beat`.
    pub(super) fn new(
        board: &'a Board,
        raster: &'a Raster,
        bounds: Bounds<'a>,
        beat: i64,
    ) -> Option<Self> {
        let places = Places::new(&board.wanted)?;
        // With prices, all parts together are worth the same however they are divided
        // among the sheets, so on one sheet they are worth at least its share of it.
        let priced = (beat + 1) * bounds.scale - bounds.refund;
        let more = i64::from(bounds.sheets) - 1;
        let share = (priced * more).div_euclid(more + 1);
        let others = (bounds.others.0, bounds.others.1.min(share));
        let mut search = Self {
            board,
            raster,
            bounds,
            places,
            builds: Vec::new(),
            open: BinaryHeap::new(),
            groups: Vec::new(),
            group_at: vec![NONE; raster.cells()],
            table: vec![NONE; 1 << 12],
            best: beat,
            found: None,
            others,
            far: None,
            full: Vec::new(),
        };
        for (kind, lies) in board.lies.iter().enumerate() {
            if board.wanted[kind] == 0 {
                continue;
            }
            for (index, lie) in lies.iter().enumerate() {
                let build = Build {
                    counts: search.places.one(kind),
                    x: small(raster.x.floor(lie.width)),
                    y: small(raster.y.floor(lie.height)),
                    value: search.bounds.values[kind],
                    reduced: search.bounds.reduced[kind],
                    how: How::Part(small(kind), small(index)),
                    runs: if board.stages.is_some() { (1, 1) } else { (0, 0) },
                    next: NONE,
                };
                search.add(build);
            }
        }
        Some(search)
    }

    /// Joins builds until nothing better can come, or steps run out.
    pub(super) fn run(&mut self, meter: &mut Meter) -> End {
        while let Some((bound, _, Reverse(id))) = self.open.pop() {
            let ceiling = bound.div_euclid(self.bounds.scale);
            if ceiling <= self.best {
                return End::Proven;
            }
            let looks = self.join_all(id);
            if !meter.spend(looks) || MOST_BUILDS <= self.builds.len() {
                return End::Open(ceiling);
            }
        }
        End::Proven
    }

    /// What the best build is worth, or the value that was to be beaten.
    pub(super) fn best(&self) -> i64 {
        self.best
    }

    /// Joins a build with every build before it and itself; gives the steps.
    fn join_all(&mut self, id: u32) -> u64 {
        let build = self.builds[id as usize];
        self.close(id, build);
        let reach = self.board.reach();
        let whole = self.board.size;
        let (width, height) =
            (self.raster.x.at[build.x as usize], self.raster.y.at[build.y as usize]);
        let mut looks = 1;
        let mut made = Vec::new();
        for group in &self.groups {
            looks += 1;
            let beside = width + group.width;
            if beside <= whole.0 && height.max(group.height) <= reach.0 {
                let x = self.raster.x.floor(beside);
                let y = build.y.max(group.y) as usize;
                looks += self.scan(group, &build, x, y, |other| {
                    made.push((x, y, How::Join(Axis::Upright, id, other)));
                });
            }
            let over = height + group.height;
            if over <= whole.1 && width.max(group.width) <= reach.1 {
                let x = build.x.max(group.x) as usize;
                let y = self.raster.y.floor(over);
                looks += self.scan(group, &build, x, y, |other| {
                    made.push((x, y, How::Join(Axis::Level, id, other)));
                });
            }
        }
        for (x, y, how) in made {
            let How::Join(axis, _, other) = how else { continue };
            let other = &self.builds[other as usize];
            let Some(runs) = self.runs(axis, build.runs, other.runs) else { continue };
            self.add(Build {
                counts: build.counts.plus(other.counts),
                x: small(x),
                y: small(y),
                value: build.value + other.value,
                reduced: build.reduced + other.reduced,
                how,
                runs,
                next: NONE,
            });
        }
        looks / 4 + 1
    }

    /// The runs of cuts down to the parts of two builds that are joined, unless they are
    /// too many. Where cuts of the other direction come next, the join is a run more.
    fn runs(&self, axis: Axis, one: (u8, u8), other: (u8, u8)) -> Option<(u8, u8)> {
        let Some(most) = self.board.stages else { return Some((0, 0)) };
        let runs = match axis {
            Axis::Upright => one.0.max(other.0),
            Axis::Level => one.1.max(other.1),
        };
        let turned = runs.saturating_add(1);
        (runs <= most).then_some(match axis {
            Axis::Upright => (runs, turned),
            Axis::Level => (turned, runs),
        })
    }

    /// Names the members of a group that can be joined into a box and leave the
    /// bound above the best; gives the looks it took.
    fn scan(
        &self,
        group: &Group<P>,
        build: &Build<P>,
        x: usize,
        y: usize,
        mut join: impl FnMut(u32),
    ) -> u64 {
        let bounds = &self.bounds;
        let needed = (self.best + 1) * bounds.scale
            - bounds.refund
            - self.others.1
            - i64::from(bounds.priced.get(x, y))
            - i64::from(build.reduced);
        let plain_needed = self.best + 1
            - self.others.0
            - i64::from(bounds.plain.get(x, y))
            - i64::from(build.value);
        let mut looks = 0;
        for member in &group.members {
            if i64::from(member.reduced) < needed {
                break;
            }
            looks += 1;
            if plain_needed <= i64::from(member.value)
                && self.places.within(build.counts, member.counts)
            {
                join(member.id);
            }
        }
        looks
    }

    /// Puts a build among those that later ones are joined with.
    fn close(&mut self, id: u32, build: Build<P>) {
        let cell = build.x as usize * self.raster.y.len() + build.y as usize;
        if self.group_at[cell] == NONE {
            self.group_at[cell] = small(self.groups.len());
            self.groups.push(Group {
                x: build.x,
                y: build.y,
                width: self.raster.x.at[build.x as usize],
                height: self.raster.y.at[build.y as usize],
                members: Vec::new(),
            });
        }
        let members = &mut self.groups[self.group_at[cell] as usize].members;
        let place = members.partition_point(|it| build.reduced <= it.reduced);
        let Build { counts, value, reduced, .. } = build;
        members.insert(place, Member { reduced, value, id, counts });
    }

    /// Takes a new build on, unless its bound is too low or one with the same
    /// counts has a box that fits into its box.
    fn add(&mut self, build: Build<P>) {
        let bounds = &self.bounds;
        let (x, y) = (build.x as usize, build.y as usize);
        let priced = bounds.refund
            + self.others.1
            + i64::from(build.reduced)
            + i64::from(bounds.priced.get(x, y));
        let around = i64::from(bounds.plain.get(x, y)) + self.others.0;
        let plain = (i64::from(build.value) + around) * bounds.scale + (bounds.scale - 1);
        let bound = priced.min(plain);
        if bound < (self.best + 1) * bounds.scale {
            return;
        }
        // Whether nothing more needs to lie around it.
        let alone = (self.best + 1) * bounds.scale
            <= bounds.refund + self.others.1 + i64::from(build.reduced)
            && self.best < i64::from(build.value) + self.others.0;
        let mark = build.counts.mark(self.table.len());
        let mut same = self.table[mark];
        while same != NONE {
            let known = &self.builds[same as usize];
            if known.counts == build.counts
                && known.x <= build.x
                && known.y <= build.y
                && known.runs.0 <= build.runs.0
                && known.runs.1 <= build.runs.1
            {
                return;
            }
            same = known.next;
        }
        let id = small(self.builds.len());
        self.builds.push(Build { next: self.table[mark], ..build });
        self.table[mark] = id;
        if self.table.len() < self.builds.len() {
            self.widen();
        }
        if 1 < self.bounds.sheets {
            if self.bounds.sheets == 2
                && let Some(other) =
                    self.with_counts(self.places.missing_to_all(build.counts))
            {
                self.best += 1;
                self.found = Some((id, Some(other)));
            }
            if alone {
                self.full.push(id);
            }
        } else if self.best < i64::from(build.value) {
            self.best = i64::from(build.value);
            self.found = Some((id, None));
        }
        self.open.push((bound, build.value, Reverse(id)));
    }

    /// A build with these counts, if there is one.
    fn with_counts(&self, counts: P) -> Option<u32> {
        let mut same = self.table[counts.mark(self.table.len())];
        while same != NONE && self.builds[same as usize].counts != counts {
            same = self.builds[same as usize].next;
        }
        (same != NONE).then_some(same)
    }

    /// Doubles the table of counts.
    fn widen(&mut self) {
        let size = self.table.len() * 4;
        self.table.clear();
        self.table.resize(size, NONE);
        for (id, build) in self.builds.iter_mut().enumerate() {
            let mark = build.counts.mark(size);
            build.next = self.table[mark];
            self.table[mark] = small(id);
        }
    }
}

/// Positions, kinds and builds are fewer than 2^32.
fn small(index: usize) -> u32 {
    u32::try_from(index).expect("positions and builds are few")
}
