//! Reads and plans slips of the hand: `cargo bench --bench mutations -- 10000 [FROM]`;
//! and texts that break a limit: `… -- limits`. See `benches/README.md`.

#![expect(clippy::print_stdout, reason = "a bench reports on the terminal")]
#![expect(clippy::disallowed_methods, reason = "a bench measures time")]

use std::fs;
use std::sync::OnceLock;
use std::time::Instant;

use leafwright::diag::{Diagnostic, render};
use leafwright::plan::{PlanOptions, plan};
use leafwright::project::{self, Project};
use leafwright::source::{Empty, Source, Sources};

#[path = "../tests/suite/mutate.rs"]
mod mutate;
#[path = "../tests/suite/random.rs"]
mod random;

fn main() {
    let args: Vec<String> =
        std::env::args().skip(1).filter(|it| !it.starts_with("--")).collect();
    if args.first().is_some_and(|it| it == "limits") {
        limits();
        return;
    }
    let number = |at: usize| args.get(at).and_then(|it| it.parse::<u64>().ok());
    slips(number(0).unwrap_or(1_000), number(1).unwrap_or(0));
}

fn read(text: &str) -> (Sources, Option<Project>, Vec<Diagnostic>) {
    let (sources, outcome) = project::read(Source::new("text.yaml", text), &Empty);
    (sources, outcome.value, outcome.notes)
}

/// Milliseconds of processor time that this thread has used; by the clock where the
/// system doesn't tell.
fn spent() -> f64 {
    static START: OnceLock<Instant> = OnceLock::new();
    let told = fs::read_to_string("/proc/thread-self/schedstat").ok();
    let nanos = told.and_then(|it| it.split(' ').next()?.parse::<f64>().ok());
    let clock = || START.get_or_init(Instant::now).elapsed().as_secs_f64() * 1e3;
    nanos.map_or_else(clock, |it| it / 1e6)
}

/// So many slips in the demos; each must give a plan or an error.
fn slips(count: u64, from: u64) {
    let mut texts: Vec<String> = Vec::new();
    for entry in fs::read_dir("demo-data").expect("the demos") {
        let path = entry.expect("an entry").path();
        if path.extension().is_some_and(|it| it == "yaml") {
            texts.push(fs::read_to_string(path).expect("a demo"));
        }
    }
    texts.sort();
    let (mut plans, mut refused) = (0, 0);
    let mut slowest: Vec<(f64, u64)> = Vec::new();
    for seed in from..from + count {
        let which = usize::try_from(seed).unwrap_or(0) % texts.len();
        let text = mutate::mutated(&texts[which], seed);
        let start = spent();
        let (_, project, mut notes) = read(&text);
        let mut planned = false;
        if let Some(project) = project {
            let plan = plan(&project, &PlanOptions::default());
            planned = plan.value.is_some();
            notes.extend(plan.notes);
        }
        let errors = notes.iter().any(Diagnostic::is_error);
        assert_ne!(planned, errors, "seed {seed}");
        if planned {
            plans += 1;
        } else {
            refused += 1;
        }
        slowest.push((spent() - start, seed));
    }
    slowest.sort_unstable_by(|a, b| b.0.total_cmp(&a.0));
    println!("{count} slips: {plans} planned, {refused} refused with a message");
    for (time, seed) in slowest.iter().take(5) {
        println!("  {:.2} s, seed {seed}", time / 1e3);
    }
}

/// Texts that are too large or hostile, with the time until they are refused.
fn limits() {
    let mut bomb = String::from("a0: &a0 [x, x, x, x, x, x, x, x, x]\n");
    for level in 1..30 {
        let row = vec![format!("*a{}", level - 1); 9].join(", ");
        bomb.push_str(&format!("a{level}: &a{level} [{row}]\n"));
    }
    let cards = |count: usize| {
        let rows: String =
            (0..count).map(|it| format!("  - {{name: Card {it}}}\n")).collect();
        format!(
            "title: Many\nunit: in\nbases: {{note: {{format: a2-us, bought: true}}}}\ncards:\n{rows}"
        )
    };
    let pieces: String = (0..10_000)
        .map(|it| format!("  p{it}: {{of: oat, size: 2 x 1, count: 1}}\n"))
        .collect();
    let pieces = format!(
        "title: Many\nunit: in\npapers: {{oat: {{sheet: letter}}}}\npieces:\n{pieces}"
    );
    let texts = [
        ("alias bomb", bomb),
        ("5 MiB", format!("title: {}", "x".repeat(5 << 20))),
        ("600 000 values", format!("tips: [{}]", "a, ".repeat(600_000))),
        (
            "in many lists",
            (0..32).map(|it| format!("t{it}: [{}]\n", "a, ".repeat(19_000))).collect(),
        ),
        ("100 000 cards", cards(100_000)),
        (
            "1e308 lengths",
            "title: A\nunit: in\npapers:\n  oat: {sheet: 1e308 x 1e308 in}\n".to_owned(),
        ),
        ("path out", "title: A\nuse: ../out.yaml\n".to_owned()),
        ("10 000 pieces", pieces),
    ];
    for (what, text) in &texts {
        // The system may count in ticks of some milliseconds, so that several are timed.
        let times = 8;
        let (mut sound, mut said) = (false, String::new());
        let start = spent();
        for _ in 0..times {
            let (sources, value, notes) = read(text);
            // With the notes written out, as the command does it.
            for note in &notes {
                let _ = render::render(note, &sources, render::Style::Plain);
            }
            let error = notes.into_iter().find(Diagnostic::is_error);
            (sound, said) =
                (value.is_some(), error.map_or_else(String::new, |it| it.message));
        }
        let time = (spent() - start) / f64::from(times);
        println!("{what:16} {time:7.1} ms  read: {sound:5}  {said}");
    }
}
