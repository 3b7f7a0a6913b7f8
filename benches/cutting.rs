//! Measures the cut search on a folder of open instances: `cargo bench --bench
//! cutting -- FOLDER [SET …]`; or compares it with a naive recursion on random
//! sets: `cargo bench --bench cutting -- trials 100000 [SEED]`, or tries sets that
//! were cut from one sheet: `… -- cut-ups 10000`; or plans a hopeless set of pieces
//! of which no two are alike: `… -- different 10000`. See `benches/README.md`.

#![expect(clippy::print_stdout, reason = "a bench reports on the terminal")]
#![expect(clippy::disallowed_methods, reason = "a bench measures time")]

use std::fs;
use std::path::Path;
use std::time::Instant;

use leafwright::geom::{Length, Size};
use leafwright::plan::cut::{
    BUDGET, Kind, Limits, Problem, SheetKind, knapsack, replay, solve,
};
use serde_json::Value;

#[path = "../tests/suite/naive.rs"]
mod naive;

use naive::{Dice, Naive, cut_up, parts, problem, small};

fn main() {
    let args: Vec<String> =
        std::env::args().skip(1).filter(|it| !it.starts_with("--")).collect();
    let Some(folder) = args.first() else {
        println!("usage: cargo bench --bench cutting -- FOLDER [SET …]");
        return;
    };
    if folder == "trials" {
        let number = |place: usize| args.get(place).and_then(|it| it.parse::<u32>().ok());
        trials(number(1).unwrap_or(1_000), number(2).unwrap_or(1).into());
        return;
    }
    if folder == "cut-ups" {
        cut_ups(args.get(1).and_then(|it| it.parse().ok()).unwrap_or(100));
        return;
    }
    if folder == "different" {
        different(args.get(1).and_then(|it| it.parse().ok()).unwrap_or(1_000));
        return;
    }
    let chosen = |set: &str| args.len() == 1 || args[1..].iter().any(|it| it == set);
    for set in ["ngcut", "cgcut", "fmt59", "fuzz_small"] {
        if chosen(set) {
            values(folder, set, false);
            values(folder, set, true);
        }
    }
    if chosen("gcut") {
        unlimited(folder);
    }
    // The same once more with nothing that is worth keeping: the sheets alone.
    if chosen("craft100") || chosen("one") {
        kits(folder, false, limits());
        kits(folder, false, sheets_only());
    }
    if chosen("craft100") || chosen("many") {
        kits(folder, true, limits());
        kits(folder, true, sheets_only());
    }
}

/// The instances of a set, by name.
fn instances(folder: &str, set: &str) -> Vec<(String, Value)> {
    let mut paths: Vec<_> = fs::read_dir(Path::new(folder).join(set))
        .expect("the folder holds the set")
        .map(|it| it.expect("a readable folder").path())
        .collect();
    paths.sort();
    paths
        .iter()
        .map(|path| {
            let name = path.file_stem().expect("a name").to_string_lossy().into_owned();
            let text = fs::read_to_string(path).expect("a readable file");
            (name, serde_json::from_str(&text).expect("JSON"))
        })
        .collect()
}

fn number(value: &Value) -> i64 {
    value.as_i64().expect("a whole number")
}

/// Sheet, kinds and values of an instance; its units are tenths of millimetres.
fn read(instance: &Value, all_free: bool) -> (Size, Vec<Kind>, Vec<i64>) {
    let length = |it: &Value| Length::from_units(number(it) * 1440);
    let sheet = Size::new(length(&instance["sheet"][0]), length(&instance["sheet"][1]));
    let items = instance["items"].as_array().expect("items");
    let kinds = items
        .iter()
        .map(|it| Kind {
            size: Size::new(length(&it["w"]), length(&it["h"])),
            free: all_free || it["rot"].as_bool().unwrap_or(false),
            count: u32::try_from(number(&it["demand"])).expect("a count"),
        })
        .collect();
    let values = items.iter().map(|it| number(&it["value"])).collect();
    (sheet, kinds, values)
}

fn limits() -> Limits {
    Limits {
        stages: None,
        longest_cut: None,
        least_offcut: Length::from_units(1440),
        budget: BUDGET,
    }
}

/// No offcut is worth keeping.
fn sheets_only() -> Limits {
    Limits { least_offcut: Length::mm(10_000), ..limits() }
}

/// Nanoseconds this thread has run so far, where the system tells; a shared
/// machine does not spoil these.
fn run_time() -> Option<u64> {
    let text = fs::read_to_string("/proc/thread-self/schedstat").ok()?;
    text.split(' ').next()?.parse().ok()
}

/// Milliseconds that a call takes, of processor time if known. Of a short one the
/// quickest of five runs counts: a shared machine interrupts now and then.
fn timed<T>(call: impl Fn() -> T) -> (T, f64) {
    let (result, mut time) = timed_once(&call);
    for _ in 0..4 {
        if 40.0 < time {
            break;
        }
        time = time.min(timed_once(&call).1);
    }
    (result, time)
}

fn timed_once<T>(call: impl FnOnce() -> T) -> (T, f64) {
    let (start, before) = (Instant::now(), run_time());
    let result = call();
    let elapsed = start.elapsed().as_secs_f64() * 1000.0;
    let time = match (before, run_time()) {
        // The system counts in ticks of some milliseconds.
        (Some(before), Some(after)) if 8.0 < elapsed => (after - before) as f64 / 1e6,
        _ => elapsed,
    };
    (result, time)
}

/// Middle, 95 of 100, and longest.
fn spread(times: &mut [f64]) -> String {
    times.sort_by(f64::total_cmp);
    let at = |part: usize| times[(times.len() - 1) * part / 100];
    let total: f64 = times.iter().sum();
    format!(
        "median {:.2} ms, 95 % {:.2} ms, worst {:.2} ms, total {:.2} s",
        at(50),
        at(95),
        at(100),
        total / 1000.0
    )
}

/// One sheet, most value, counts limited.
fn values(folder: &str, set: &str, free: bool) {
    let (mut times, mut proven, mut wrong) = (Vec::new(), 0, Vec::new());
    for (name, instance) in instances(folder, set) {
        let (sheet, kinds, values) = read(&instance, free);
        let (filled, time) = timed(|| knapsack::fill(sheet, &kinds, &values, &limits()));
        times.push(time);
        let Some(filled) = filled else {
            println!("  {set} {name}: not planned");
            continue;
        };
        let known = &instance["known"];
        let key = if free {
            "measured_guillotine_rotated"
        } else {
            "measured_guillotine_oriented"
        };
        let expected = if set == "fuzz_small" {
            known["guillotine_opt_proto"].as_i64()
        } else {
            known[key]["lb"].as_i64().or_else(|| {
                (!free).then(|| known["guillotine_oriented_opt"].as_i64()).flatten()
            })
        };
        let sure = filled.value == filled.bound;
        proven += u32::from(sure);
        if expected.is_some_and(|it| it != filled.value) && !(set == "fuzz_small" && free)
        {
            wrong.push(format!("{name}: {} not {expected:?}", filled.value));
        }
        if std::env::var("EACH").is_ok() || !sure {
            println!(
                "  {set} {name}: {}..{} {time:.2} ms {} steps",
                filled.value, filled.bound, filled.spent
            );
        }
    }
    let turned = if free { "free to turn" } else { "as they lie" };
    println!(
        "{set}, {turned}: {proven} of {} proven, {}",
        times.len(),
        spread(&mut times)
    );
    println!("  other than known: {wrong:?}");
}

/// One sheet, most value, no limit to counts.
fn unlimited(folder: &str) {
    for free in [false, true] {
        let (mut times, mut wrong) = (Vec::new(), Vec::new());
        for (name, instance) in instances(folder, "gcut") {
            if name == "gcut13" {
                continue;
            }
            let (sheet, kinds, values) = read(&instance, free);
            let (value, time) =
                timed(|| knapsack::unlimited(sheet, &kinds, &values, &limits()));
            times.push(time);
            let key = if free {
                "unconstrained_guillotine_rotated_opt"
            } else {
                "unconstrained_guillotine_oriented_opt"
            };
            if value != instance["known"][key].as_i64() {
                wrong.push(format!("{name}: {value:?}"));
            }
        }
        println!("gcut without limits, free {free}: {}", spread(&mut times));
        println!("  other than known: {wrong:?}");
    }
}

/// Fewest sheets for sets as crafters cut them.
fn kits(folder: &str, many: bool, limits: Limits) {
    let (mut times, mut proven, mut kept, mut worse) = (Vec::new(), 0, 0, Vec::new());
    let mut cuts = 0;
    for (name, instance) in instances(folder, "craft100") {
        let (sheet, mut kinds, _) = read(&instance, false);
        let times_kit = number(&instance["kits"]);
        if many && times_kit == 1 {
            continue;
        }
        if many {
            for kind in &mut kinds {
                kind.count *= u32::try_from(times_kit).expect("a count");
            }
        }
        let problem = Problem {
            sheets: vec![SheetKind { size: sheet, at_hand: None }],
            kinds,
            limits,
        };
        let (solution, time) = timed(|| solve(&problem));
        times.push(time);
        let ways: Vec<_> =
            solution.patterns.iter().map(|it| (sheet, &it.1, it.2)).collect();
        let offcut = solution.offcut.map(|it| (it.0, it.1));
        let held =
            replay(&problem.kinds, &problem.limits, &ways, &solution.too_large, offcut)
                .expect("the plan holds");
        cuts += held.cuts.iter().sum::<u32>();
        let known = &instance["known"][if many { "N_kits" } else { "one_kit" }];
        let sheets = i64::try_from(held.sheets).expect("few sheets");
        proven += u32::from(solution.proven);
        let largest = solution.offcut.is_some_and(|it| it.2) && solution.proven;
        kept += u32::from(largest);
        if sheets != number(&known["sheets"]) {
            worse.push(format!("{name}: {sheets} not {}", known["sheets"]));
        }
        if i64::from(solution.bound.sheets) > number(&known["sheets"]) {
            worse.push(format!(
                "{name}: BOUND {} beyond {}",
                solution.bound.sheets, known["sheets"]
            ));
        }
        if let (false, true, Some(pair), Some(found)) = (
            many,
            largest,
            known["largest_leftover_rectangle_on_one_sheet"].as_array(),
            solution.offcut,
        ) {
            let area = number(&pair[0]) * number(&pair[1]);
            let mine = found.1.area() / (1440 * 1440);
            if i128::from(area) != mine {
                worse.push(format!("{name}: offcut {mine} not {area}"));
            }
        }
        if std::env::var("EACH").is_ok() || !solution.proven || 50.0 < time {
            println!(
                "  {name}: {} kinds, {times_kit} kits, {sheets} sheets, bound {:?}, offcut proven {largest}, {time:.2} ms, {} steps",
                problem.kinds.len(),
                solution.bound,
                solution.spent
            );
        }
    }
    let which = if many { "many kits" } else { "one kit" };
    println!(
        "craft100, {which}: {proven} of {} proven, {kept} offcuts proven, {cuts} cuts in all patterns, {}",
        times.len(),
        spread(&mut times)
    );
    println!("  other than known: {worse:?}");
}

/// Random small sets: both exact methods against the naive recursion.
fn trials(rounds: u32, seed: u64) {
    let mut dice = Dice(0x1234_5678_9ABC_DEF1 ^ (seed << 32));
    let mut differences = 0;
    for _ in 0..rounds {
        let (sheet, rows) = small(&mut dice);
        let set: Vec<u8> = rows.iter().map(|it| it.3).collect();
        let mut naive = Naive { kinds: &rows, known: std::collections::BTreeMap::new() };
        let problem = problem(sheet, &rows);
        let solution = solve(&problem);
        let sheets: u32 = solution.patterns.iter().map(|it| it.2).sum();
        let values: Vec<i64> =
            rows.iter().map(|_| 1 + i64::from(dice.roll(40))).collect();
        let worth = |part: &Vec<u8>| -> i64 {
            part.iter().zip(&values).map(|(&n, value)| i64::from(n) * value).sum()
        };
        let all = parts(&set);
        let most =
            all.iter().filter(|it| naive.can(sheet.0, sheet.1, it)).map(worth).max();
        let size = problem.sheets[0].size;
        let filled = knapsack::fill(size, &problem.kinds, &values, &problem.limits);
        let filled = filled.expect("small enough");
        let fewest = naive.fewest(sheet, &set);
        if (sheets, solution.proven) != (fewest, true)
            || Some(filled.value) != most
            || filled.bound != filled.value
        {
            differences += 1;
            println!(
                "  {sheet:?} {rows:?} {values:?}: {sheets} not {fewest}, {filled:?} not {most:?}"
            );
        }
    }
    println!("{rounds} random sets: {differences} differences");
}

/// Sets that were cut from one sheet must fit one.
fn cut_ups(rounds: u32) {
    let mut dice = Dice(0xFEDC_BA98_7654_3211);
    let mut refused = 0;
    let mut missed = 0;
    for round in 0..rounds {
        let pieces = 3 + usize::from(dice.roll(22));
        let mut problem = problem((1, 1), &[]);
        problem.sheets[0].size = Size::new(Length::inch(12, 1), Length::inch(12, 1));
        problem.kinds = cut_up(&mut dice, (192, 192), pieces);
        let solution = solve(&problem);
        let sheets: u32 = solution.patterns.iter().map(|it| it.2).sum();
        refused += u32::from(1 < solution.bound.sheets);
        missed += u32::from(1 < sheets);
        if (round + 1) % 500 == 0 {
            println!("  {} so far: {refused} refused, {missed} not found", round + 1);
        }
    }
    println!(
        "{rounds} sets cut from one sheet: {refused} said not to fit, {missed} not found"
    );
}

/// A hopeless set: so many pieces, no two of them alike.
fn different(pieces: u32) {
    let mut problem = problem((1, 1), &[]);
    let sheet = Size::new(Length::inch(12, 1), Length::inch(12, 1));
    problem.sheets[0].size = sheet;
    problem.kinds = (0..i64::from(pieces))
        .map(|it| Kind {
            size: Size::new(Length::mm(20 + it % 100), Length::mm(20 + it / 100)),
            free: it % 2 == 0,
            count: 1,
        })
        .collect();
    let (solution, time) = timed(|| solve(&problem));
    let ways: Vec<_> = solution.patterns.iter().map(|it| (sheet, &it.1, it.2)).collect();
    let offcut = solution.offcut.map(|it| (it.0, it.1));
    let held =
        replay(&problem.kinds, &problem.limits, &ways, &solution.too_large, offcut)
            .expect("the plan holds");
    println!(
        "{pieces} different pieces: {} sheets, no plan with fewer than {}, {time:.0} ms, {} steps",
        held.sheets, solution.bound.sheets, solution.spent
    );
}
