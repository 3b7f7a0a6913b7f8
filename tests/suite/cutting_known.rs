//! Published problems with known best values, for the most value on one sheet.
//!
//! Data and values were typed in from the sources named beside them.

use leafwright::geom::{Length, Size};
use leafwright::plan::cut::{BUDGET, Kind, Limits, knapsack, replay};

/// Width, height, count, value of one part; units are millimetres here.
type Row = (i64, i64, u32, i64);

/// A published problem: the sheet, the parts, the best value as they lie and the
/// best value if all may be turned, where known.
struct Known {
    name: &'static str,
    sheet: (i64, i64),
    rows: &'static [Row],
    lying: i64,
    turned: Option<i64>,
}

fn limits() -> Limits {
    Limits { stages: None, longest_cut: None, least_offcut: Length::MM, budget: BUDGET }
}

fn size(width: i64, height: i64) -> Size {
    Size::new(Length::mm(width), Length::mm(height))
}

fn kinds(rows: &[Row], free: bool) -> (Vec<Kind>, Vec<i64>) {
    let kind = |&(width, height, count, _): &Row| Kind {
        size: size(width, height),
        free,
        count,
    };
    (rows.iter().map(kind).collect(), rows.iter().map(|it| it.3).collect())
}

/// Fills one sheet and carries the filling out on imaginary paper.
#[track_caller]
fn check(known: &Known, free: bool, expected: i64) {
    let (kinds, values) = kinds(known.rows, free);
    let sheet = size(known.sheet.0, known.sheet.1);
    let filled = knapsack::fill(sheet, &kinds, &values, &limits()).expect("small enough");
    assert_eq!((filled.value, filled.bound), (expected, expected), "{}", known.name);
    let mut come: Vec<Kind> = kinds.iter().map(|it| Kind { count: 0, ..*it }).collect();
    for leaf in filled.tree.placements(sheet) {
        if let leafwright::plan::cut::Leaf::Part { part, .. } = leaf.leaf {
            come[part].count += 1;
        }
    }
    let value: i64 =
        come.iter().zip(&values).map(|(it, value)| i64::from(it.count) * value).sum();
    assert_eq!(value, expected, "{}", known.name);
    assert!(come.iter().zip(&kinds).all(|(come, it)| come.count <= it.count));
    replay(&come, &limits(), &[(sheet, &filled.tree, 1)], &[], None).expect("it holds");
}

#[test]
fn published_problems_get_their_best_value() {
    for known in KNOWN {
        check(known, false, known.lying);
        if let Some(turned) = known.turned {
            check(known, true, turned);
        }
    }
}

#[test]
fn without_limits_on_counts_the_published_values_come_out() {
    // J. E. Beasley, J. Oper. Res. Soc. 36 (1985), problem gcut1; both values from
    // G. F. Cintra's page on unconstrained guillotine cutting (IME, USP).
    let sheet = size(250, 250);
    for (free, expected) in [(false, 56_460), (true, 58_136)] {
        let (kinds, values) = kinds(GCUT1, free);
        assert_eq!(
            knapsack::unlimited(sheet, &kinds, &values, &limits()),
            Some(expected)
        );
    }
    // With one part of each: H. Becker (2022).
    let (kinds, values) = kinds(GCUT1, false);
    let filled = knapsack::fill(sheet, &kinds, &values, &limits()).expect("small enough");
    assert_eq!((filled.value, filled.bound), (48_368, 48_368));
}

#[test]
fn a_part_that_would_fill_a_hole_may_be_needed_elsewhere() {
    // Found by random trials, 59 confirmed by two exact methods: a search that
    // throws away boxes whose hole takes another part stops at 57.
    let rows = [
        (4, 4, false, 1, 4),
        (4, 3, false, 1, 27),
        (2, 6, true, 1, 13),
        (5, 5, false, 3, 2),
        (4, 1, false, 1, 13),
    ];
    let kinds: Vec<Kind> = rows
        .iter()
        .map(|&(width, height, free, count, _)| Kind {
            size: size(width, height),
            free,
            count,
        })
        .collect();
    let values: Vec<i64> = rows.iter().map(|it| it.4).collect();
    let filled = knapsack::fill(size(8, 10), &kinds, &values, &limits()).expect("small");
    assert_eq!((filled.value, filled.bound), (59, 59));
}

const GCUT1: &[Row] = &[
    (167, 184, 1, 30728),
    (114, 118, 1, 13452),
    (167, 152, 1, 25384),
    (83, 140, 1, 11620),
    (70, 86, 1, 6020),
    (143, 166, 1, 23738),
    (120, 160, 1, 19200),
    (66, 148, 1, 9768),
    (87, 141, 1, 12267),
    (69, 165, 1, 11385),
];

const KNOWN: &[Known] = &[
    // P. Y. Wang, Operations Research 31 (1983); data reprinted in the appendix of
    // H. Becker, doctoral thesis, UFRGS (2022), optimum from its table of 59 instances.
    Known {
        name: "wang20",
        sheet: (70, 40),
        lying: 2721,
        turned: None,
        rows: &[
            (11, 19, 4, 209),
            (12, 21, 3, 252),
            (14, 23, 4, 322),
            (17, 9, 1, 153),
            (18, 29, 3, 522),
            (21, 31, 3, 651),
            (23, 33, 3, 759),
            (24, 15, 1, 360),
            (24, 15, 2, 360),
            (25, 16, 4, 400),
            (27, 17, 2, 459),
            (32, 22, 2, 704),
            (34, 24, 2, 816),
            (35, 25, 2, 875),
            (36, 26, 1, 936),
            (37, 27, 1, 999),
            (38, 28, 1, 1064),
            (39, 29, 1, 1131),
            (41, 30, 1, 1230),
            (43, 31, 1, 1333),
        ],
    },
    // J. F. Oliveira and J. S. Ferreira (1990); data reprinted in the appendix of
    // H. Becker, doctoral thesis, UFRGS (2022), optimum from its table of 59 instances.
    Known {
        name: "OF1",
        sheet: (40, 70),
        lying: 2737,
        turned: None,
        rows: &[
            (5, 29, 1, 145),
            (39, 9, 4, 351),
            (9, 55, 1, 495),
            (15, 31, 1, 465),
            (16, 11, 2, 176),
            (21, 23, 3, 483),
            (14, 29, 4, 406),
            (19, 16, 3, 304),
            (36, 9, 2, 324),
            (4, 22, 2, 88),
        ],
    },
    // J. F. Oliveira and J. S. Ferreira (1990); data and optimum as for the one before.
    Known {
        name: "OF2",
        sheet: (40, 70),
        lying: 2690,
        turned: None,
        rows: &[
            (18, 22, 2, 396),
            (10, 40, 1, 400),
            (27, 13, 3, 351),
            (18, 23, 2, 414),
            (8, 29, 4, 232),
            (4, 16, 1, 64),
            (9, 47, 1, 423),
            (19, 19, 4, 361),
            (16, 13, 2, 208),
            (16, 36, 4, 576),
        ],
    },
    // N. Christofides and C. Whitlock, Operations Research 25 (1977), first problem;
    // optimum as lying in H. Becker (2022). Free to turn: computed by two engines here.
    Known {
        name: "cgcut1",
        sheet: (15, 10),
        lying: 244,
        turned: Some(260),
        rows: &[
            (8, 4, 2, 66),
            (3, 7, 1, 35),
            (8, 2, 3, 24),
            (3, 4, 5, 17),
            (3, 3, 2, 11),
            (3, 2, 2, 8),
            (2, 1, 1, 2),
        ],
    },
    // The same, second problem.
    Known {
        name: "cgcut2",
        sheet: (40, 70),
        lying: 2892,
        turned: Some(2901),
        rows: &[
            (21, 22, 1, 582),
            (31, 13, 1, 403),
            (9, 35, 3, 315),
            (9, 24, 3, 216),
            (30, 7, 2, 210),
            (11, 13, 3, 143),
            (10, 14, 1, 140),
            (14, 8, 3, 110),
            (12, 8, 3, 94),
            (13, 7, 3, 90),
        ],
    },
    // The same, third problem.
    Known {
        name: "cgcut3",
        sheet: (40, 70),
        lying: 1860,
        turned: Some(1920),
        rows: &[
            (31, 43, 4, 500),
            (30, 41, 2, 480),
            (29, 39, 4, 460),
            (28, 38, 4, 440),
            (27, 37, 3, 420),
            (26, 36, 4, 410),
            (25, 35, 3, 400),
            (24, 34, 4, 380),
            (33, 23, 4, 360),
            (22, 32, 3, 340),
            (31, 21, 3, 320),
            (29, 18, 3, 300),
            (17, 27, 2, 280),
            (15, 24, 2, 240),
            (16, 25, 4, 260),
            (15, 24, 1, 240),
            (23, 14, 4, 220),
            (21, 12, 3, 180),
            (19, 11, 4, 160),
            (9, 17, 1, 140),
        ],
    },
    // J. E. Beasley, Operations Research 33 (1985), problems 1 to 12 of his second
    // set. Best values without the edge-to-edge rule are published and equal the ones
    // here (values from memory); with all parts free to turn: computed by two engines.
    Known {
        name: "ngcut1",
        sheet: (10, 10),
        lying: 164,
        turned: Some(193),
        rows: &[
            (3, 7, 2, 35),
            (8, 2, 2, 40),
            (10, 2, 1, 27),
            (5, 4, 3, 23),
            (2, 9, 2, 43),
        ],
    },
    Known {
        name: "ngcut2",
        sheet: (10, 10),
        lying: 230,
        turned: Some(250),
        rows: &[
            (1, 10, 3, 28),
            (5, 3, 2, 40),
            (9, 3, 3, 63),
            (6, 1, 3, 13),
            (3, 8, 3, 31),
            (4, 1, 1, 10),
            (7, 3, 2, 44),
        ],
    },
    Known {
        name: "ngcut3",
        sheet: (10, 10),
        lying: 247,
        turned: Some(259),
        rows: &[
            (3, 2, 2, 7),
            (7, 2, 3, 20),
            (4, 5, 2, 60),
            (4, 1, 2, 9),
            (1, 10, 1, 14),
            (8, 4, 1, 79),
            (4, 2, 2, 11),
            (3, 7, 3, 52),
            (6, 2, 3, 13),
            (9, 1, 2, 21),
        ],
    },
    Known {
        name: "ngcut4",
        sheet: (15, 10),
        lying: 268,
        turned: Some(268),
        rows: &[
            (15, 2, 2, 34),
            (7, 3, 1, 27),
            (9, 1, 1, 14),
            (8, 3, 1, 71),
            (12, 2, 2, 61),
        ],
    },
    Known {
        name: "ngcut5",
        sheet: (15, 10),
        lying: 358,
        turned: Some(370),
        rows: &[
            (10, 3, 2, 34),
            (9, 3, 1, 48),
            (12, 2, 3, 72),
            (11, 3, 1, 91),
            (12, 3, 3, 37),
            (11, 1, 3, 15),
            (2, 10, 1, 36),
        ],
    },
    Known {
        name: "ngcut6",
        sheet: (15, 10),
        lying: 289,
        turned: Some(298),
        rows: &[
            (2, 9, 1, 50),
            (10, 2, 3, 29),
            (2, 4, 1, 11),
            (2, 8, 2, 30),
            (3, 8, 1, 46),
            (4, 1, 1, 7),
            (6, 4, 3, 32),
            (10, 3, 1, 74),
            (11, 2, 1, 48),
            (4, 5, 1, 32),
        ],
    },
    Known {
        name: "ngcut7",
        sheet: (20, 20),
        lying: 430,
        turned: Some(430),
        rows: &[
            (1, 9, 3, 26),
            (16, 3, 1, 113),
            (18, 3, 1, 127),
            (20, 2, 1, 104),
            (3, 1, 2, 4),
        ],
    },
    Known {
        name: "ngcut8",
        sheet: (20, 20),
        lying: 834,
        turned: Some(886),
        rows: &[
            (15, 3, 1, 110),
            (6, 6, 3, 93),
            (13, 1, 2, 38),
            (8, 7, 2, 144),
            (18, 5, 3, 185),
            (12, 4, 1, 78),
            (8, 3, 1, 25),
        ],
    },
    Known {
        name: "ngcut9",
        sheet: (20, 20),
        lying: 924,
        turned: Some(924),
        rows: &[
            (14, 2, 1, 45),
            (1, 5, 1, 10),
            (20, 4, 2, 139),
            (12, 3, 3, 92),
            (11, 8, 2, 145),
            (11, 6, 2, 123),
            (7, 9, 1, 166),
            (17, 5, 1, 252),
            (7, 14, 2, 161),
            (1, 7, 3, 12),
        ],
    },
    Known {
        name: "ngcut10",
        sheet: (30, 30),
        lying: 1452,
        turned: Some(1452),
        rows: &[
            (1, 30, 3, 75),
            (25, 7, 1, 279),
            (27, 9, 3, 409),
            (30, 2, 3, 65),
            (26, 7, 3, 235),
        ],
    },
    Known {
        name: "ngcut11",
        sheet: (30, 30),
        lying: 1688,
        turned: Some(1786),
        rows: &[
            (3, 23, 3, 118),
            (29, 5, 1, 244),
            (21, 2, 3, 81),
            (17, 11, 3, 371),
            (14, 7, 2, 254),
            (8, 5, 2, 78),
            (21, 8, 1, 293),
        ],
    },
    Known {
        name: "ngcut12",
        sheet: (30, 30),
        lying: 1865,
        turned: Some(1932),
        rows: &[
            (16, 6, 1, 132),
            (24, 1, 3, 29),
            (6, 28, 3, 351),
            (8, 23, 3, 275),
            (5, 1, 3, 10),
            (6, 26, 2, 259),
            (2, 30, 2, 110),
            (9, 11, 3, 240),
            (4, 30, 1, 265),
            (16, 13, 1, 507),
        ],
    },
];
