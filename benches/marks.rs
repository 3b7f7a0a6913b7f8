//! How often the mark is set: proven orders, and what ordering all sheets together
//! saves. `cargo bench --bench marks -- FOLDER`, a folder of kits as JSON.
//!
//! A kit is `{"sheet": [w, h], "kits": n, "items": [{"w", "h", "demand", "rot"}]}`
//! in whole units, taken as sixteenths of an inch. Each kit is cut three ways:
//! by the planner; the planner's trees as `tidy` rewrites them; and by a plain rule
//! (largest first, into the tightest free rectangle), which gives trees that nobody
//! chose for few marks.

#![expect(clippy::print_stdout, reason = "a bench reports to whoever runs it")]
#![expect(clippy::disallowed_methods, reason = "benches measure time")]

use std::fs;
use std::path::Path;
use std::time::{Duration, Instant};

use leafwright::geom::{Axis, Length, Rect, Size};
use leafwright::plan::cut::{
    Kind, Leaf, Limits, Pattern, Problem, SheetKind, TIDY_BUDGET, Tree, schedule, solve,
    tidy,
};
use leafwright::project::{Trimmer, TrimmerKind};

const TRIMMER: Trimmer = Trimmer {
    longest_cut: None,
    sheets_at_once: 3,
    marks: Length::inch(1, 16),
    narrowest: Length::inch(1, 4),
    kind: TrimmerKind::Sliding,
};

fn main() {
    let folder = std::env::args().skip(1).find(|it| !it.starts_with('-'));
    let Some(folder) = folder else {
        println!("which folder? cargo bench --bench marks -- FOLDER");
        return;
    };
    let mut paths: Vec<_> = fs::read_dir(&folder)
        .expect("a readable folder")
        .map(|it| it.expect("a readable folder").path())
        .filter(|it| it.extension().is_some_and(|it| it == "json"))
        .collect();
    paths.sort();
    let kits: Vec<Kit> = paths.iter().map(|it| Kit::read(it)).collect();
    println!("{} kits", kits.len());
    report("plain rule, one kit", kits.iter().map(|it| it.by_rule(1)));
    report("the same, tidied", kits.iter().map(|it| it.tidied(it.by_rule(1))));
    report("plain rule, all kits", kits.iter().map(|it| it.by_rule(it.kits)));
    report("planner, one kit", kits.iter().map(|it| it.planned(1)));
    report("the same, tidied", kits.iter().map(|it| it.tidied(it.planned(1))));
    report("planner, all kits", kits.iter().map(|it| it.planned(it.kits)));
    report("the same, tidied", kits.iter().map(|it| it.tidied(it.planned(it.kits))));
}

struct Kit {
    sheet: Size,
    kinds: Vec<Kind>,
    kits: u32,
}

impl Kit {
    fn read(path: &Path) -> Self {
        let text = fs::read_to_string(path).expect("a readable file");
        let kit: serde_json::Value = serde_json::from_str(&text).expect("JSON");
        let length = |it: &serde_json::Value| {
            Length::inch(it.as_i64().expect("a whole number"), 16)
        };
        let kinds = kit["items"].as_array().expect("items").iter();
        let kinds = kinds.map(|it| Kind {
            size: Size::new(length(&it["w"]), length(&it["h"])),
            free: it["rot"].as_bool().expect("a flag"),
            count: u32::try_from(it["demand"].as_u64().expect("a count"))
                .expect("a count"),
        });
        Self {
            sheet: Size::new(length(&kit["sheet"][0]), length(&kit["sheet"][1])),
            kinds: kinds.collect(),
            kits: u32::try_from(kit["kits"].as_u64().unwrap_or(1)).expect("a count"),
        }
    }

    fn planned(&self, kits: u32) -> Vec<Pattern> {
        let kinds = self.kinds.iter().map(|it| Kind { count: it.count * kits, ..*it });
        let solution = solve(&Problem {
            sheets: vec![SheetKind { size: self.sheet, at_hand: None }],
            kinds: kinds.collect(),
            limits: Limits {
                stages: None,
                longest_cut: None,
                least_offcut: Length::INCH,
                budget: 20_000_000,
            },
        });
        let patterns = solution.patterns.into_iter();
        patterns
            .map(|(_, tree, copies)| Pattern { sheet: self.sheet, tree, copies })
            .collect()
    }

    fn tidied(&self, mut plan: Vec<Pattern>) -> Vec<Pattern> {
        let free: Vec<bool> = self.kinds.iter().map(|it| it.free).collect();
        let tidied = tidy(&plan, &free, &TRIMMER, None, TIDY_BUDGET);
        for (pattern, tree) in plan.iter_mut().zip(tidied.trees) {
            pattern.tree = tree;
        }
        plan
    }

    /// Largest first, into the free rectangle that leaves the shortest strip.
    fn by_rule(&self, kits: u32) -> Vec<Pattern> {
        let mut kinds: Vec<(usize, &Kind)> = self.kinds.iter().enumerate().collect();
        kinds.sort_by_key(|it| (std::cmp::Reverse(it.1.size.area()), it.1.size));
        let mut sheets: Vec<Board> = Vec::new();
        for (part, kind) in kinds {
            for _ in 0..kind.count * kits {
                let lies = [(kind.size, false), (kind.size.turned(), true)];
                let lies = &lies[..1 + usize::from(kind.free)];
                let placed = sheets.iter_mut().any(|it| it.place(part, lies));
                if !placed {
                    let mut sheet = Board::new(self.sheet);
                    assert!(sheet.place(part, lies), "a piece is larger than the sheet");
                    sheets.push(sheet);
                }
            }
        }
        let mut patterns: Vec<Pattern> = Vec::new();
        for tree in sheets.iter().map(|it| it.tree(0)) {
            match patterns.iter_mut().find(|it| it.tree == tree) {
                Some(known) => known.copies += 1,
                None => patterns.push(Pattern { sheet: self.sheet, tree, copies: 1 }),
            }
        }
        patterns
    }
}

/// A sheet that fills up.
struct Board {
    spots: Vec<(Rect, Spot)>,
}

enum Spot {
    Free,
    Full(Leaf),
    Cut(Axis, Length, usize, usize),
}

impl Board {
    fn new(sheet: Size) -> Self {
        Self { spots: vec![(Rect::whole(sheet), Spot::Free)] }
    }

    fn place(&mut self, part: usize, lies: &[(Size, bool)]) -> bool {
        let free = |it: &usize| matches!(self.spots[*it].1, Spot::Free);
        let choices = (0..self.spots.len()).filter(free).flat_map(|spot| {
            let room = self.spots[spot].0.size;
            let fits = lies.iter().filter(move |it| it.0.fits(room));
            fits.map(move |&(size, turned)| {
                let over = (room.width - size.width).min(room.height - size.height);
                (over, spot, size, turned)
            })
        });
        let Some((_, mut spot, size, turned)) = choices.min() else { return false };
        let room = self.spots[spot].0.size;
        // The longer of the two strips that are left over is kept whole.
        let upright = room.width - size.width > room.height - size.height;
        let axes = [Axis::Level, Axis::Upright];
        for axis in if upright { [axes[1], axes[0]] } else { axes } {
            let (at, whole) = match axis {
                Axis::Upright => (size.width, self.spots[spot].0.size.width),
                Axis::Level => (size.height, self.spots[spot].0.size.height),
            };
            if at < whole {
                let (first, second) = self.spots[spot].0.split(axis, at);
                let n = self.spots.len();
                self.spots[spot].1 = Spot::Cut(axis, at, n, n + 1);
                self.spots.extend([(first, Spot::Free), (second, Spot::Free)]);
                spot = n;
            }
        }
        self.spots[spot].1 = Spot::Full(Leaf::Part { part, turned });
        true
    }

    fn tree(&self, spot: usize) -> Tree {
        match self.spots[spot].1 {
            Spot::Free => Tree::Leaf(Leaf::Waste),
            Spot::Full(leaf) => Tree::Leaf(leaf),
            Spot::Cut(axis, at, first, second) => {
                Tree::cut(axis, at, self.tree(first), self.tree(second))
            }
        }
    }
}

/// One table: by the number of cuts, and by the number of different sheets.
fn report(name: &str, plans: impl Iterator<Item = Vec<Pattern>>) {
    let plans: Vec<Vec<Pattern>> = plans.filter(|it| !it.is_empty()).collect();
    println!("\n{name}: {} plans", plans.len());
    let measured: Vec<Measured> = plans.iter().map(|it| Measured::new(it)).collect();
    for (name, of) in [
        ("up to 30 cuts", (|it| it.cuts <= 30) as fn(&&Measured) -> bool),
        ("31 to 60 cuts", |it| it.cuts > 30 && it.cuts <= 60),
        ("more cuts", |it| it.cuts > 60),
        ("one pattern", |it| it.patterns == 1),
        ("two patterns", |it| it.patterns == 2),
        ("three or more", |it| it.patterns > 2),
    ] {
        let rows: Vec<&Measured> = measured.iter().filter(of).collect();
        if rows.is_empty() {
            continue;
        }
        let sum = |of: fn(&Measured) -> u32| rows.iter().map(|it| of(it)).sum::<u32>();
        let (together, apart) = (sum(|it| it.marks), sum(|it| it.apart));
        let slowest = rows.iter().map(|it| it.time).max().unwrap_or_default();
        println!(
            "  {name:14} {:4} plans  proven {:5.1} %  marks {together:5}  at least {:5}  \
             sheet by sheet {apart:5} ({:+.1} %)  cuts {:5}  turns {:5}  slowest {:6.1} ms",
            rows.len(),
            100.0 * f64::from(sum(|it| u32::from(it.proven))) / rows.len() as f64,
            sum(|it| it.at_least),
            100.0 * (f64::from(together) / f64::from(apart.max(1)) - 1.0),
            sum(|it| it.cuts),
            sum(|it| it.turns),
            1000.0 * slowest.as_secs_f64(),
        );
    }
}

struct Measured {
    cuts: u32,
    patterns: usize,
    marks: u32,
    at_least: u32,
    turns: u32,
    proven: bool,
    /// Marks if each sheet is ordered as well as can be, one sheet after another.
    apart: u32,
    time: Duration,
}

impl Measured {
    fn new(plan: &[Pattern]) -> Self {
        let begun = Instant::now();
        let found = schedule(plan, &TRIMMER);
        let time = begun.elapsed();
        let apart =
            plan.iter().map(|it| schedule(std::slice::from_ref(it), &TRIMMER).marks);
        Self {
            cuts: found.laid.iter().map(Tree::cuts).sum(),
            patterns: plan.len(),
            marks: found.marks,
            at_least: found.at_least,
            turns: found.turns,
            proven: found.proven,
            apart: apart.sum(),
            time,
        }
    }
}
