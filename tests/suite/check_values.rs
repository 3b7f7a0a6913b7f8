//! Lengths, formats, paper weights and envelopes against published figures.
//!
//! Where a figure follows from a definition by arithmetic alone, the definition is
//! named. Ratios of envelopes are in `fit.rs`, what is rounded to a ruler in `words.rs`.

use leafwright::geom::{Length, Pt, Size, Unit};
use leafwright::plan::{Plan, PlanOptions, plan};
use leafwright::project::{Paper, Project};
use leafwright::standards::{FormatKind, GRADES, format, grams_of_pounds};

use crate::diagnostics::read;

fn inch(text: &str) -> Length {
    Length::parse(text, Some(Unit::Inch)).expect("a length")
}

fn sheet(name: &str) -> Size {
    format(name, FormatKind::Sheet).expect(name).size()
}

fn near(found: f64, published: f64, digit: f64) {
    assert!((found - published).abs() <= digit / 2.0 + 1e-9, "{found}, {published}");
}

/// NBS Circular 572, addendum of 1960-01-22: 1 in is 25.4 mm exactly.
#[test]
fn inches_are_millimetres_exactly() {
    for (inches, hundred_thousandths) in [
        ("1", 2_540_000),
        ("1/16", 158_750),
        ("1/8", 317_500),
        ("1/4", 635_000),
        ("5 1/2", 13_970_000),
        ("8 1/2", 21_590_000),
        ("11", 27_940_000),
        ("12", 30_480_000),
    ] {
        assert_eq!(inch(inches).units() * 100_000, hundred_thousandths * 14_400);
    }
    // ASME Y14.1, size A.
    assert_eq!(sheet("letter").show(Unit::Mm), "215.9 x 279.4 mm");
}

/// ISO 32000-2:2020, 8.3.2.3: the unit of user space is 1/72 in.
#[test]
fn lengths_on_a_page_are_seventy_seconds_of_an_inch() {
    let pt = |length| Pt::true_size(length).0;
    near(pt(Length::MM), 2.834_646, 1e-6);
    near(Length::MM.as_mm() / pt(Length::MM), 0.352_778, 1e-6);
    // ISO 216, and the definition of the inch.
    near(pt(sheet("a4").width), 595.276, 1e-3);
    near(pt(sheet("a4").height), 841.890, 1e-3);
    assert_eq!([pt(sheet("letter").width), pt(sheet("letter").height)], [612.0, 792.0]);
    near(pt(Length::mm(50)), 141.732, 1e-3);
    near(pt(Length::mm(100)), 283.465, 1e-3);
}

/// ISO 216:2007, 4.3: the largest of the series has a square metre, each other half of
/// the one before; sides are whole millimetres.
#[test]
fn the_a_series_comes_from_a_square_metre() {
    // A0 is 841 x 1189 mm; a3 is three halvings away from it.
    let (mut short, mut long) = (841, 1189);
    near(f64::from(short * long) / 1e6, 0.999_949, 1e-6);
    for name in ["a1", "a2", "a3", "a4", "a5", "a6", "a7", "a8"] {
        (short, long) = (long / 2, short);
        let size = Size::new(Length::mm(short.into()), Length::mm(long.into()));
        if let Some(known) = format(name, FormatKind::Sheet) {
            assert_eq!(known.size(), size, "{name}");
        }
    }
    let ratio = |size: Size| size.height.as_mm() / size.width.as_mm();
    near(ratio(sheet("a4")), 1.4143, 1e-4);
    // ASME Y14.1: 8 1/2 x 11 in.
    near(ratio(sheet("letter")), 1.2941, 1e-4);
    // A card for DL is a third of A4 (ISO 269, content of the envelopes).
    let dl = format("dl", FormatKind::Card).expect("a card").size();
    assert_eq!(dl.show(Unit::Mm), "99 x 210 mm");
    assert_eq!(dl.width + dl.width + dl.width, sheet("a4").height);
}

fn planned(text: &str) -> (Project, Plan) {
    let project = read("check.yaml", text).1.value.expect("a sound description");
    let plan = plan(&project, &PlanOptions::default()).value.expect("a plan");
    (project, plan)
}

/// How many sheets so many pieces take.
fn sheets_of(sheet: &str, size: &str, count: u32) -> u32 {
    let text = format!(
        "title: A\nunit: in\npapers: {{oat: {{kind: cardstock, sheet: {sheet}}}}}\n\
         pieces: {{flat: {{of: oat, size: {size}, count: {count}}}}}\n"
    );
    planned(&text).1.cuts[0].patterns.iter().map(|it| it.copies).sum()
}

/// By arithmetic from the formats: 2 x 148 = 296 mm of 297 (ISO 216), 2 x 5 1/2 in = 11
/// in (ASME Y14.1), and on 12 x 12 in two by two.
#[test]
fn sheets_yield_the_bases_that_arithmetic_finds() {
    assert_eq!([1, 2, 3].map(|it| sheets_of("a4", "148 x 210 mm", it)), [1, 1, 2]);
    assert_eq!([1, 2, 3].map(|it| sheets_of("letter", "5 1/2 x 8 1/2", it)), [1, 1, 2]);
    // A plain arrangement yields four; mixed turns more, but never more than the area.
    assert_eq!(sheets_of("12 x 12 in", "4 1/4 x 5 1/2", 4), 1);
    assert_eq!(sheets_of("12 x 12 in", "4 1/4 x 5 1/2", 7), 2);
}

/// US Government Paper Specification Standards, Vol. 11 (1999): 500 sheets of the basis
/// size of a grade; 1 lb is 453.59237 g.
#[test]
fn pounds_of_a_grade_are_grams_of_a_square_metre() {
    let grams = |pounds: u32, grade: &str| {
        let grade = GRADES.iter().find(|it| it.name == grade).expect(grade);
        f64::from(grams_of_pounds(pounds * 100, grade).expect("paper")) / 100.0
    };
    // 453.59237 g / (500 x 0.0254 m x 0.0254 m) is 1406.139; over the basis size.
    for (grade, factor) in
        [("bond", 3.7597), ("cover", 2.7041), ("text", 1.4801), ("index", 1.8080)]
    {
        near(grams(1000, grade) / 1000.0, factor, 1.1e-4);
    }
    let known: [(&str, &[(u32, f64)]); 5] = [
        // L20 says nominal 135, 175 and 215 for the first three.
        (
            "cover",
            &[
                (50, 135.2),
                (65, 175.8),
                (80, 216.3),
                (100, 270.4),
                (110, 297.5),
                (130, 351.5),
            ],
        ),
        // K10 says nominal 165, 200, 255 and 305.
        ("index", &[(90, 162.7), (110, 198.9), (140, 253.1), (170, 307.4)]),
        // An encyclopaedia of printing, "Grammage": 75.2 for 20 lb.
        ("bond", &[(20, 75.2), (24, 90.2), (28, 105.3), (32, 120.3)]),
        // A91 says nominal 105, 120 and 150 for the last three.
        ("text", &[(60, 88.8), (70, 103.6), (80, 118.4), (100, 148.0)]),
        // Q60 says 195.
        ("bristol", &[(89, 195.2)]),
    ];
    for (grade, rows) in known {
        for (pounds, published) in rows {
            near(grams(*pounds, grade), *published, 0.11);
        }
    }
    // And back: 176, 250 and 300 g/m2 are 65.1, 92.5 and 110.9 lb of cover.
    for (tenths, published) in [(651, 176.0), (925, 250.0), (1109, 300.0)] {
        near(grams(tenths, "cover") / 10.0, published, 0.3);
    }
}

/// A paper as a description weighs and measures it.
fn paper(rest: &str) -> Paper {
    let text = format!(
        "title: A\npapers: {{oat: {{kind: cardstock, sheet: letter, {rest}}}}}\n\
         pieces: {{flat: {{of: oat, size: 4 x 5 in, count: 1}}}}\n"
    );
    planned(&text).0.papers.remove(0)
}

/// Vol. 12 (2008), L70: a point of board is 0.001 in. K10 and A91: bulk is thickness over
/// substance.
#[test]
fn thickness_is_read_as_it_is_published() {
    for (points, mm) in [(8, 0.203), (10, 0.254), (12, 0.305), (15, 0.381), (24, 0.610)] {
        let written = format!("thickness: 0.{points:03} in");
        near(paper(&written).thickness.expect("given").as_mm(), mm, 1.1e-3);
    }
    // Thickness in um over g/m2: 230 / 200 of index, 200 / 150 of smooth text; and by
    // definition 100 at 1.0, 120 um at 80 g/m2 and 1.5.
    for (grams, mm, bulk) in
        [(200, "0.23", 1.150), (150, "0.2", 1.333), (100, "0.1", 1.0), (80, "0.12", 1.5)]
    {
        let paper = paper(&format!("weight: {grams} gsm, thickness: {mm} mm"));
        let grams = f64::from(paper.grams.expect("given")) / 100.0;
        near(1000.0 * paper.thickness.expect("given").as_mm() / grams, bulk, 1e-3);
    }
}

/// Lists of North American envelopes, from the definition of the inch.
#[test]
fn envelopes_in_millimetres() {
    for (name, wide, high) in [
        ("a7-us", 184.150, 133.350),
        ("a2-us", 146.050, 111.125),
        ("a6-us", 165.1, 120.65),
    ] {
        let size = format(name, FormatKind::Envelope).expect(name).size();
        near(size.long().as_mm(), wide, 1e-3);
        near(size.short().as_mm(), high, 1e-3);
    }
}
