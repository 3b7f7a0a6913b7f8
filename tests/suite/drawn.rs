//! Sheets drawn for a terminal.

use leafwright::geom::{Axis, Length, Size, Unit};
use leafwright::plan::cut::{Leaf, Part, PartOf, Pencil, Tree, Turning, drawn};
use leafwright::project::PieceId;
use leafwright::source::Site;

use crate::random::Random;
use crate::schedule::made_up::{sheets, to_tree};

fn parts() -> Vec<Part> {
    let parts = (0..9).map(|idx| Part {
        of: PartOf::Piece(PieceId(idx)),
        letter: char::from(b'A' + u8::try_from(idx).unwrap()).to_string(),
        size: Size::default(),
        turning: Turning::Free,
        per_kit: 1,
        count: 1,
        late: Vec::new(),
        greetings: Vec::new(),
        site: Site::default(),
    });
    parts.collect()
}

/// 8 x 8 in: two 6 x 1 1/4, one 6 x 2 1/2, two 3 x 3 in, offcut 2 x 8 in.
fn example() -> (Size, Tree) {
    let q = |n| Length::inch(n, 4);
    let up = |at, first, second| Tree::cut(Axis::Upright, at, first, second);
    let level = |at, first, second| Tree::cut(Axis::Level, at, first, second);
    let [a, b, c] = [Tree::part(0), Tree::part(1), Tree::part(2)];
    let squares = up(q(12), c.clone(), c);
    let strips = level(q(12), squares, level(q(5), a.clone(), level(q(5), a, b)));
    (Size::new(q(32), q(32)), up(q(24), strips, Tree::Leaf(Leaf::Keep)))
}

#[test]
fn a_sheet_is_drawn_with_letters_and_sizes() {
    let (sheet, tree) = example();
    let pencil = Pencil { columns: 58, lines: 30, ..Pencil::new(Unit::Inch, false) };
    insta::assert_snapshot!(drawn(sheet, &tree, &parts(), &pencil), @r"
    ┏━━━━━━━━━━━━━━━━━━━━┯━━━━━━━━━━━━━━━━━━━━━┯━━━━━━━━━━━━━┓
    ┃                    │                     │             ┃
    ┃                    │                     │             ┃
    ┃                    │                     │             ┃
    ┃                    │                     │             ┃
    ┃         C          │          C          │             ┃
    ┃      3 x 3 in      │      3 x 3 in       │             ┃
    ┃                    │                     │             ┃
    ┃                    │                     │             ┃
    ┃                    │                     │             ┃
    ┃                    │                     │             ┃
    ┠────────────────────┴─────────────────────┤             ┃
    ┃                    A                     │             ┃
    ┃               6 x 1 1/4 in               │   offcut    ┃
    ┃                                          │  2 x 8 in   ┃
    ┠──────────────────────────────────────────┤             ┃
    ┃                    A                     │             ┃
    ┃               6 x 1 1/4 in               │             ┃
    ┃                                          │             ┃
    ┠──────────────────────────────────────────┤             ┃
    ┃                                          │             ┃
    ┃                                          │             ┃
    ┃                                          │             ┃
    ┃                    B                     │             ┃
    ┃               6 x 2 1/2 in               │             ┃
    ┃                                          │             ┃
    ┃                                          │             ┃
    ┃                                          │             ┃
    ┗━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━━┷━━━━━━━━━━━━━┛
    ");
}

#[test]
fn a_plain_drawing_has_only_ascii() {
    let (sheet, tree) = example();
    let pencil = Pencil { columns: 44, lines: 18, ..Pencil::new(Unit::Inch, true) };
    let shown = drawn(sheet, &tree, &parts(), &pencil);
    assert!(shown.is_ascii());
    insta::assert_snapshot!(shown, @r"
    +------------+------------+-------+
    |            |            |       |
    |     C      |     C      |       |
    |  3 x 3 in  |  3 x 3 in  |       |
    |            |            |       |
    +------------+------------+       |
    |            A            |       |
    |      6 x 1 1/4 in       |       |
    |                         |offcut |
    +-------------------------+ 2 x 8 |
    |            A            |       |
    |      6 x 1 1/4 in       |       |
    |                         |       |
    +-------------------------+       |
    |            B            |       |
    |      6 x 2 1/2 in       |       |
    |                         |       |
    +-------------------------+-------+
    ");
}

#[test]
fn drawings_keep_to_their_room() {
    let mut random = Random::new(5);
    for _ in 0..1000 {
        for node in sheets(&mut random, 1, 8, 4) {
            for ascii in [false, true] {
                let pencil = Pencil::new(Unit::Mm, ascii);
                let shown = drawn(node.size, &to_tree(&node), &parts(), &pencil);
                for line in shown.lines() {
                    assert!(line.chars().count() <= 72);
                    assert_eq!(line, line.trim_end());
                }
                assert!(shown.lines().count() <= 36);
                // The outline is closed.
                let first = shown.lines().next().unwrap().chars().count();
                assert_eq!(shown.lines().last().unwrap().chars().count(), first);
            }
        }
    }
}
