//! What is too large is refused, and the message states the limit.

use crate::diagnostics::read;

fn said(text: &str) -> Vec<String> {
    let (_, outcome) = read("large.yaml", text);
    assert!(outcome.value.is_none());
    outcome.notes.iter().map(|it| it.message.clone()).collect()
}

#[test]
fn a_limit_is_stated_where_it_is_broken() {
    let rows = |count: usize| -> String {
        (0..count).map(|it| format!("  - {{name: Card {it}}}\n")).collect()
    };
    let set = "title: Many\nunit: in\nbases: {note: {format: a2-us, bought: true}}\n";
    let mut bomb = String::from("a0: &a0 [x, x, x, x, x, x, x, x, x]\n");
    for level in 1..30 {
        let row = vec![format!("*a{}", level - 1); 9].join(", ");
        bomb.push_str(&format!("a{level}: &a{level} [{row}]\n"));
    }
    let lists = (0..30).map(|it| format!("t{it}: [{}]\n", "a, ".repeat(19_000)));
    for (text, limit) in [
        (format!("title: {}", "x".repeat(5 << 20)), "larger than 4 MiB"),
        (bomb, "more than 500 000 values"),
        (lists.collect(), "more than 500 000 values"),
        (format!("{set}cards:\n{}", rows(100_000)), "more than 20 000 rows"),
        (format!("{set}cards:\n{}", rows(2_000)), "more than 1000 cards"),
        (
            format!("{set}pieces: {{a: {{of: b, size: 1e308 x 1 in}}}}"),
            "`1e308` is not a length",
        ),
        (
            format!("{set}pieces: {{a: {{of: b, size: 9999999999999999 x 1 in}}}}"),
            "longer than 100 m",
        ),
        (format!("{set}use: ../out.yaml"), "`../out.yaml` can't be opened"),
    ] {
        let said = said(&text);
        assert!(said.iter().any(|it| it.contains(limit)), "{limit}: {said:?}");
    }
}

#[test]
fn ten_thousand_pieces_are_read() {
    let pieces: String = (0..10_000)
        .map(|it| format!("  p{it}: {{of: oat, size: 2 x 1, count: 1}}\n"))
        .collect();
    let set = "title: Many\nunit: in\npapers: {oat: {sheet: letter}}\npieces:\n";
    let (_, outcome) = read("many.yaml", &format!("{set}{pieces}"));
    assert_eq!(outcome.value.expect("a project").pieces.len(), 10_000);
}
