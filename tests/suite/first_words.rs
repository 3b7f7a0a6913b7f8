//! What somebody writes who has never written a description: it is understood, or
//! the message says the very words that would be.

use crate::diagnostics::read;

const SET: &str = "title: Night Train
unit: in
papers:
  stations: {sheet: 8 x 8, faces: {roofs: {runs: up}, tickets: {runs: any}}}
  cream: {kind: cardstock, sheet: letter}
bases:
  note: {format: a2-us, bought: {pack: 10}}
tools:
  trimmer: {kind: trimmer, longest cut: 12}
  ticket punch: {kind: die, outline: tag 2 1/2 x 1 1/4}
  words: {kind: stamps}
  black ink: {kind: ink}
  dots: {kind: foam dots, thickness: 1 mm}
  stick: {kind: glue stick}
  crease: {kind: bone folder}
pieces:
  rail: {of: stations, size: 5 1/2 x 1 1/4}
  panel: {of: stations, size: 2 x 5 1/2}
late cuts:
  - {piece: rail, cut off: 3/8 in from the top, makes: {sleeper: {}, track: {}}}
greetings:
  on my way: {words: Nearly there, stamps: words, ink: black ink, label: ticket punch, of: cream}
cards:
  - name: One
    stands: wide
    layers:
      - {piece: track, edge to edge: yes, bottom: 1}
      - {piece: sleeper, edge to edge: yes, top: 1}
      - {greeting: on my way, raised: 4, across: centre, up: centre}
    inside: {choose: later}
  - {name: Two, stands: tall, layers: [{piece: panel, along: fold}]}
";

#[test]
fn first_words_are_understood() {
    let (_, outcome) = read("first.yaml", SET);
    assert!(outcome.value.is_some(), "{:?}", outcome.notes);
    assert!(outcome.notes.is_empty(), "{:?}", outcome.notes);
}

#[test]
fn or_the_message_says_what_would_be() {
    for (sound, tried, cure) in [
        (
            "outline: tag 2 1/2 x 1 1/4",
            "shape: tag, size: 2 x 1",
            "write `outline: rounded 2 1/2 x 1 1/4 in`",
        ),
        ("raised: 4,", "raised: yes,", "write `raised: 4 squares`"),
        ("along: fold", "left: fold", "write `along: fold` instead"),
        (
            "piece: panel, along",
            "piece: panel, face: roofs, along",
            "write `showing: dots`",
        ),
        (
            "across: centre, up",
            "center, up",
            "write `across: center`, `up: center` or both",
        ),
        (
            "of: cream}",
            "of: cream, narrowed: 3/8 in}",
            "write `{take off: 3/8 in, side: top}`",
        ),
        (
            "title:",
            "done ahead: {kit: everything but attach}\ntitle:",
            "write `{all but: [attach]}`",
        ),
        (
            "of: cream}",
            "of: cream, runs: up}",
            "it is a key of a paper, of a face, not of a greeting",
        ),
    ] {
        assert!(SET.contains(sound), "{sound}");
        let (_, outcome) = read("first.yaml", &SET.replacen(sound, tried, 1));
        let help: Vec<&String> = outcome.notes.iter().flat_map(|it| &it.help).collect();
        assert!(help.iter().any(|it| it.starts_with(cure)), "{tried}: {help:?}");
    }
}
