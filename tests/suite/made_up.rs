//! Projects that nobody would think of, as descriptions: made from a number, and
//! the same on every run.

use std::fmt::Write;

use crate::random::Random;

/// Words of which names are made; some are long, some are in other scripts.
const WORDS: [&str; 16] = [
    "harvest",
    "lantern",
    "efficient",
    "fluffy",
    "waterwheel",
    "Überzug",
    "élan",
    "moss",
    "quarterdeck",
    "Ωμέγα",
    "jay",
    "thistledown",
    "northernmost",
    "fjord",
    "pip",
    "wharf",
];

/// A description that reads without a fault: 1 to 12 cards of 1 to 6 layers, names
/// of up to 40 characters.
pub(crate) fn description(seed: u64) -> String {
    let mut random = Random::new(seed.wrapping_mul(0x9e37_79b9).wrapping_add(77));
    for _ in 0..8 {
        random.below(2);
    }
    let cards = 1 + random.below(12);
    let mut names = Names { random: Random::new(seed), taken: 0 };
    let mut pieces = String::new();
    let mut shown = String::new();
    for number in 0..cards {
        let tall = random.below(2) == 0;
        // In quarters of an inch.
        let (stands, (wide, high)) =
            if tall { ("tall", (17, 22)) } else { ("wide", (22, 17)) };
        let name = names.next();
        writeln!(shown, "  - name: {name}").unwrap();
        writeln!(shown, "    base: {}\n    stands: {stands}", base(number)).unwrap();
        shown += "    layers:\n";
        let layers = 1 + random.below(6);
        for layer in 0..layers {
            if layer > 0 && random.below(3) == 0 {
                let up = 1 + random.below(high - 6);
                let greeting = random.below(3);
                writeln!(
                    shown,
                    "      - {{greeting: g{greeting}, raised: 3 squares, across: center, \
                     bottom: {}}}",
                    quarters(up)
                )
                .unwrap();
                continue;
            }
            if random.below(3) == 0 {
                let (left, top) = (1 + random.below(10), 1 + random.below(10));
                let (left, top) = (quarters(left), quarters(top));
                let place = format!("left: {left}, top: {top}");
                writeln!(shown, "      - {{piece: square, {place}}}").unwrap();
                continue;
            }
            // In halves of an inch, so that planning the cuts takes no time.
            let (width, height) =
                (2 + 2 * random.below(wide / 2), 2 + 2 * random.below(high / 2));
            let (left, up) =
                (random.below(wide - width + 1), random.below(high - height + 1));
            let paper = ["leaf", "plain"][usize::try_from(random.below(2)).unwrap()];
            let called = names.next();
            let size = format!("{} x {}", quarters(width), quarters(height));
            writeln!(pieces, "  {called}: {{of: {paper}, size: {size}}}").unwrap();
            let place = format!("left: {}, bottom: {}", quarters(left), quarters(up));
            writeln!(shown, "      - {{piece: {called}, {place}}}").unwrap();
        }
        match random.below(4) {
            0 => shown += "    inside: {words: We thought of you, ink: dark ink}\n",
            1 => shown += "    inside: {choose: when the card is sent}\n",
            _ => {}
        }
        if random.below(3) == 0 {
            shown += "    tips:\n      - Rub it down from the middle outwards, and leave \
                      a line of the base showing below.\n";
        }
    }
    let colour = ["#101010", "#ffff00", "#b5735c", "#efe6cf", "#0000ff"];
    let colour = colour[usize::try_from(random.below(5)).unwrap()];
    let unit = ["in", "mm"][usize::try_from(random.below(2)).unwrap()];
    let kits = 1 + random.below(3);
    let title = names.next();
    let about = names.next();
    let (long_stamp, long_paper) = (names.next(), names.next());
    format!(
        "title: {title}
about: {about}
unit: {unit}
kits: {kits}
papers:
  leaf:
    kind: patterned
    sheet: 12 x 12 in
    faces: {{{long_paper}: {{runs: up}}, b: {{runs: any}}}}
    weight: 120 gsm
    pack: {{sheets: 6}}
    colour: \"{colour}\"
  plain: {{kind: cardstock, sheet: letter, weight: 65 lb cover, pack: {{sheets: 25}}}}
bases:
  note: {{format: a2-us, bought: {{pack: 10, with: envelopes}}, comes: scored flat}}
  own: {{front: 4 1/4 x 5 1/2 in, made: {{of: plain}}}}
tools:
  trimmer: {{kind: sliding trimmer, longest cut: 12 in, sheets at once: 3, marks: 1/16 in, narrowest strip: 1/4 in}}
  {long_stamp}: {{kind: stamp set}}
  dark ink: {{kind: ink pad}}
  glue: {{kind: glue, dries: 20 min}}
  foam: {{kind: foam squares, thickness: 2 mm, pack: 100}}
pieces:
  square: {{of: leaf, size: 1 x 1 in}}
{pieces}greetings:
  g0: {{words: Thank you, stamped: 1 x 1/4 in, stamps: {long_stamp}, ink: dark ink, label: {{cut: 2 x 1/2 in}}, of: plain}}
  g1: {{like: g0, words: Hello}}
  g2: {{like: g0, words: Get well}}
cards:
{shown}done ahead:
  class: [cut]
  kit: {{all but: [fold, attach, stamp inside]}}
  travel: {{all but: [attach, stamp inside]}}
cut by: {{class: maker, travel: reader}}
"
    )
}

/// Every third card has a base of its own making.
fn base(card: i64) -> &'static str {
    if card % 3 == 2 { "own" } else { "note" }
}

/// So many quarters of an inch, as a mixed number.
fn quarters(count: i64) -> String {
    match (count / 4, count % 4) {
        (whole, 0) => format!("{whole} in"),
        (0, part) => format!("{part}/4 in"),
        (whole, part) => format!("{whole} {part}/4 in"),
    }
}

/// Names that differ from one another.
struct Names {
    random: Random,
    taken: usize,
}

impl Names {
    /// A name of up to 40 characters.
    fn next(&mut self) -> String {
        self.taken += 1;
        let mut name = format!("n{}", self.taken);
        let length = 6 + self.random.below(35);
        let limit = usize::try_from(length).unwrap();
        loop {
            let word = WORDS[usize::try_from(self.random.below(16)).unwrap()];
            if name.chars().count() + 1 + word.chars().count() > limit {
                return name;
            }
            name.push(' ');
            name.push_str(word);
        }
    }
}
