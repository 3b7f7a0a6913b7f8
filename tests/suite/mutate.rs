//! Edits that a slip of the hand might make, the same on every run.

use crate::random::Random;

/// Values that stand where others belong.
const VALUES: [&str; 30] = [
    "0",
    "-1",
    "1",
    "99999999999999999999",
    "1e308",
    "1e308 in",
    "100 m",
    "0 x 0 in",
    "1/0 in",
    "1/64 in",
    "12 x 12 in",
    "100000 mm",
    "0.001 mm",
    "4 1/4",
    "yes",
    "no",
    "~",
    "[]",
    "{}",
    "[a, b]",
    "{a: b}",
    "\"\"",
    "'",
    "\"",
    "*a",
    "&a b",
    "# gone",
    "é¼½",
    "top of thanks",
    "any",
];

/// The text with one to three edits: lines lost, doubled or swapped, values put
/// elsewhere, wrong indents, huge numbers, signs lost.
pub(crate) fn mutated(text: &str, seed: u64) -> String {
    let mut random = Random::new(seed.wrapping_mul(2_654_435_761));
    let mut below = |limit: usize| {
        let limit = i64::try_from(limit.max(1)).unwrap_or(i64::MAX);
        usize::try_from(random.below(limit)).unwrap_or(0)
    };
    let mut lines: Vec<String> = text.lines().map(str::to_owned).collect();
    for _ in 0..=below(3) {
        if lines.is_empty() {
            break;
        }
        let (at, other) = (below(lines.len()), below(lines.len()));
        match below(9) {
            0 => drop(lines.remove(at)),
            1 => lines.insert(other, lines[at].clone()),
            2 => lines.swap(at, other),
            3 => {
                let indent = " ".repeat(below(7));
                lines[at] = format!("{indent}{}", lines[at].trim_start());
            }
            4 => {
                // The value of one line for another.
                let value = lines[other].split_once(": ").map(|it| it.1.to_owned());
                if let (Some((key, _)), Some(value)) = (lines[at].split_once(": "), value)
                {
                    lines[at] = format!("{key}: {value}");
                }
            }
            5 => {
                let value = VALUES[below(VALUES.len())];
                if let Some((key, _)) = lines[at].split_once(": ") {
                    lines[at] = format!("{key}: {value}");
                }
            }
            6 => {
                // One of the values between braces.
                let line = lines[at].clone();
                let mut parts: Vec<&str> = line.split(", ").collect();
                let part = below(parts.len());
                let value = VALUES[below(VALUES.len())];
                let key = parts[part].split_once(": ").map_or("", |it| it.0);
                let new = format!("{key}: {value}");
                parts[part] = &new;
                lines[at] = parts.join(", ");
            }
            7 => {
                // A number becomes a huge one, or nothing.
                let digits = ["", "999999", "4294967296", "9223372036854775807"];
                let new = digits[below(digits.len())];
                if let Some(digit) = lines[at].find(|it: char| it.is_ascii_digit()) {
                    lines[at].replace_range(digit..=digit, new);
                }
            }
            _ => {
                let signs = lines[at].chars().count();
                let lost = below(signs);
                let kept =
                    lines[at].chars().enumerate().filter(|(index, _)| *index != lost);
                lines[at] = kept.map(|it| it.1).collect();
            }
        }
    }
    lines.join("\n") + "\n"
}
