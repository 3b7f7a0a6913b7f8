//! Sixty-odd slips in one description, each with the exact place that is marked.

use crate::diagnostics::read;

const SOUND: &str = "title: Meadow Days
unit: in
kits: 4
papers:
  meadow: {kind: patterned, sheet: 12 x 12 in, faces: {rows: {runs: up}, dots: {runs: any}}, weight: 150 gsm}
  oat: {kind: cardstock, sheet: letter, weight: 80 lb cover, grain: long, pack: {sheets: 24, designs: 6}}
  slate: {kind: cardstock, scraps: at least 4 x 4 in}
bases:
  note: {format: a2-us, bought: {pack: 12, with: envelopes}, comes: scored flat}
tools:
  trimmer: {kind: sliding trimmer, longest cut: 12 in, sheets at once: 3, marks: 1/16 in}
  tag: {kind: punch, outline: rounded 2 1/2 x 1 1/4 in, takes strips: 2 3/4 in wide}
  glue: {kind: glue, dries: 20 min}
  foam: {kind: foam squares, thickness: 2 mm, pack: 100}
  kind words: {kind: stamp set}
  plum ink: {kind: ink pad}
pieces:
  sash: {of: meadow, size: 5 1/2 x 2 in}
  ribbon: {of: meadow, size: 5 1/2 x 1 1/4 in, spare: 1}
  frame: {of: oat, size: {around: sash, border: 1/8 in}}
late cuts:
  - {piece: ribbon, cut off: 3/8 in high, makes: {sill: {showing: dots}, rail: {showing: rows}}, with: trimmer, when: at the card}
greetings:
  thanks: {words: Thank you, stamped: 1 7/8 x 1/2 in, stamps: kind words, ink: plum ink, label: tag, of: oat}
  hello: {like: thanks, words: Hello, mat: {of: slate, border: 1/16 in}}
cards:
  - name: One
    base: note
    stands: wide
    layers:
      - {piece: sash, edge to edge: true, bottom: 1/2 in}
      - {greeting: thanks, raised: 4 squares, across: center, bottom: 1 in}
    inside: {words: Well met, ink: plum ink}
  - name: Two
    base: note
    stands: wide
    layers:
      - {piece: rail, edge to edge: true, bottom: 1 in}
      - {piece: sill, edge to edge: true, below: rail, gap: 1/8 in}
      - {greeting: hello, straddling: top of rail, across: center}
  - name: Three
    stands: tall
    layers: [{piece: frame, turned: left, up: center}]
done ahead:
  class: [cut, punch]
cut by: {class: maker}
";

/// What is replaced by what, the rule that is broken then, and what is marked.
const SLIPS: &[(&str, &str, &str, &str)] = &[
    ("label: tag, of", "label: {punch: tag}, of", "unknown-key", "punch"),
    ("across: center, bottom: 1 in", "gaps: equal, bottom: 1 in", "unknown-key", "gaps"),
    ("title: Meadow Days", "titel: Meadow Days", "unknown-key", "titel"),
    ("title: Meadow Days", "title:", "empty-value", "title"),
    ("title: Meadow Days", "title: [Meadow, Days]", "wrong-shape", "[Meadow, Days]"),
    ("title: Meadow Days", "title: Days #2", "hash-cuts-words", "Days"),
    ("unit: in", "unit: inch", "not-a-choice", "inch"),
    ("unit: in", "unit: in\nunit: mm", "duplicate-key", "unit"),
    ("kits: 4", "kits: four", "not-a-number", "four"),
    ("kits: 4", "kits: 0", "out-of-range", "0"),
    ("kits: 4", "kits: 99999999999999999999", "out-of-range", "99999999999999999999"),
    ("kind: patterned", "kind: paterned", "not-a-choice", "paterned"),
    ("sheet: 12 x 12 in", "sheet: 12 in", "not-a-size", "12 in"),
    ("sheet: 12 x 12 in", "sheet: 12 x 0 in", "zero-size", "12 x 0 in"),
    ("sheet: 12 x 12 in", "sheet: 1e308 x 12 in", "not-a-length", "1e308 x 12 in"),
    ("sheet: 12 x 12 in", "sheet: 12 x 99999 in", "too-long", "12 x 99999 in"),
    ("sheet: letter", "sheet: leter", "unknown-format", "leter"),
    ("{runs: up}", "{runs: down}", "not-a-choice", "down"),
    ("dots: {runs: any}}", "dots: {}, spots: {}}", "out-of-range", "spots"),
    ("weight: 150 gsm", "weight: heavy", "not-a-weight", "heavy"),
    ("weight: 150 gsm", "weight: 65 lb", "weight-without-grade", "65 lb"),
    ("weight: 150 gsm", "weight: 1 gsm", "out-of-range", "1 gsm"),
    ("weight: 150 gsm", "colour: grene", "not-a-colour", "grene"),
    ("grain: long", "grain: sideways", "not-a-choice", "sideways"),
    ("designs: 6", "designs: 7", "out-of-range", "7"),
    ("scraps: at least 4 x 4 in", "scraps: some", "not-a-size", "some"),
    (
        "scraps: at least 4 x 4 in",
        "scraps: 4 x 4 in, sheet: a4",
        "one-or-the-other",
        "scraps",
    ),
    ("format: a2-us, ", "", "missing-key", "note"),
    ("format: a2-us", "format: a2", "unknown-format", "a2"),
    ("bought: {pack: 12, with: envelopes}, ", "", "missing-key", "note"),
    ("with: envelopes", "with: stamps", "not-a-choice", "stamps"),
    ("comes: scored flat", "comes: scored", "not-a-choice", "scored"),
    (
        "kind: sliding trimmer",
        "kind: slidding trimmer",
        "not-a-choice",
        "slidding trimmer",
    ),
    ("longest cut: 12 in", "longest cut: 12 furlongs", "not-a-length", "12 furlongs"),
    ("sheets at once: 3", "sheets at once: 300", "out-of-range", "300"),
    ("marks: 1/16 in", "marks: 1/0 in", "not-a-length", "1/0 in"),
    (
        "rounded 2 1/2 x 1 1/4 in",
        "round 2 1/2 x 1 1/4 in",
        "not-a-choice",
        "round 2 1/2 x 1 1/4 in",
    ),
    (
        "takes strips: 2 3/4 in wide",
        "takes strips: 1 in wide",
        "punch-larger-than-strip",
        "tag",
    ),
    ("dries: 20 min", "dries: soon", "not-a-number", "soon"),
    ("thickness: 2 mm", "thickness: 2", "no-unit", "2"),
    (
        "of: meadow, size: 5 1/2 x 2 in",
        "of: medow, size: 5 1/2 x 2 in",
        "unknown-name",
        "medow",
    ),
    (
        "size: 5 1/2 x 2 in",
        "size: 5 1/2 x 13 in",
        "piece-larger-than-sheet",
        "5 1/2 x 13 in",
    ),
    ("size: 5 1/2 x 2 in", "size: 5 1/3 x 2 in", "off-ruler", "5 1/3 x 2 in"),
    ("size: 5 1/2 x 2 in", "size: 5,5 x 2 in", "comma-in-braces", "5 x 2 in"),
    ("spare: 1", "spare: -1", "out-of-range", "-1"),
    ("around: sash", "around: frame", "goes-in-a-circle", "frame"),
    ("border: 1/8 in}}", "}}", "missing-key", "{around: sash, }"),
    ("piece: ribbon, cut", "piece: ribon, cut", "unknown-name", "ribon"),
    ("cut off: 3/8 in high", "cut off: 3/8 in", "direction-unclear", "3/8 in"),
    (
        "cut off: 3/8 in high",
        "cut off: 3 in high",
        "late-cut-larger-than-piece",
        "3 in high",
    ),
    ("{showing: dots}", "{showing: spots}", "unknown-name", "spots"),
    (", rail: {showing: rows}", "", "part-count", "makes"),
    ("when: at the card", "when: someday", "not-a-choice", "someday"),
    (
        "stamped: 1 7/8 x 1/2 in",
        "stamped: 3 x 1/2 in",
        "greeting-larger-than-label",
        "thanks",
    ),
    ("ink: plum ink, label", "ink: glue, label", "not-a-choice", "glue"),
    ("label: tag", "label: tagg", "unknown-name", "tagg"),
    ("like: thanks", "like: thank", "unknown-name", "thank"),
    (
        "mat: {of: slate, border: 1/16 in}",
        "mat: {of: slate}",
        "missing-key",
        "{of: slate}",
    ),
    ("stands: tall", "stands: upright", "not-a-choice", "upright"),
    ("name: Three", "name: Two", "name-used-twice", "Two"),
    ("raised: 4 squares", "raised: four squares", "not-a-number", "four squares"),
    ("below: rail", "below: sash", "unknown-layer", "sash"),
    (
        "below: rail, gap: 1/8 in",
        "gap: 1/8 in, bottom: 1 in",
        "key-without-effect",
        "gap",
    ),
    ("straddling: top of rail", "straddling: rail", "not-a-choice", "rail"),
    ("across: center, bottom: 1 in", "left: 1 in, right: 1 in", "placed-twice", "right"),
    ("turned: left", "turned: round", "not-a-choice", "round"),
    ("piece: rail, edge", "peace: rail, edge", "unknown-key", "peace"),
    (
        "{words: Well met, ink",
        "{words: Well met, choose: when the card is sent, ink",
        "one-or-the-other",
        "choose",
    ),
    ("class: [cut, punch]", "class: [cut, punsh]", "not-a-choice", "punsh"),
    ("class: maker", "class: nobody", "not-a-choice", "nobody"),
    ("done ahead:", " done ahead:", "wrong-indent", "d"),
];

#[test]
fn the_description_that_slips_are_made_in_is_sound() {
    let (_, outcome) = read("sound.yaml", SOUND);
    assert!(outcome.value.is_some() && outcome.notes.is_empty(), "{:?}", outcome.notes);
}

#[test]
fn every_slip_is_marked_at_its_exact_place() {
    assert!(60 <= SLIPS.len(), "{}", SLIPS.len());
    let mut wrong = Vec::new();
    for (sound, slip, rule, marked) in SLIPS {
        assert!(SOUND.contains(sound), "`{sound}` is gone");
        let text = SOUND.replacen(sound, slip, 1);
        let at = SOUND.find(sound).expect("it is there");
        let (_, outcome) = read("slip.yaml", &text);
        let found: Vec<(&str, &str, usize)> = outcome
            .notes
            .iter()
            .map(|note| {
                let start = note.site.start as usize;
                let marked = &text[start..note.site.end as usize];
                (note.rule.name, marked, start.abs_diff(at))
            })
            .collect();
        // Near the slip, too: the same word may stand elsewhere.
        let told = found.iter().any(|it| it.0 == *rule && it.1 == *marked && it.2 < 120);
        if !told {
            wrong.push(format!("{slip}: {rule} at `{marked}`, not among {found:?}"));
        }
    }
    assert!(wrong.is_empty(), "{}", wrong.join("\n"));
}
