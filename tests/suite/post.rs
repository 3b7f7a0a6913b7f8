//! What postal operators take as a letter, against their published figures.
//!
//! Sources: Domestic Mail Manual 101 of 2023-07-09 with Publication 25, Postal
//! Bulletin 22218 and the letter help of the postage calculator (US); Postal Guide
//! Lettermail of 2021 (CA); Ofcom's page on large letters (UK); Automationsfähige
//! Briefsendungen, about 2013 (DE); Domestic letters, 2025 (AU); Label
//! specification v1.1, 2026 (NO); BIPT FAQ 56 (BE).

use leafwright::geom::{Length, Size, Unit};
use leafwright::standards::Seen;
use leafwright::standards::post::{
    CLASSES, LetterClass, Limit, MailItem, Mass, Measure, Operator, PostHint, Verdict,
    Watch, Year, class_of, classes, hint,
};

/// Thousandths of an inch, rounded down to a whole unit.
fn mils(thousandths: i64) -> Length {
    Length::from_units((thousandths * Length::INCH.units()).div_euclid(1000))
}

/// The same, rounded up.
fn mils_up(thousandths: i64) -> Length {
    -mils(-thousandths)
}

/// Hundredths of a millimetre.
fn hundredths(count: i64) -> Length {
    Length::from_units(count * 144)
}

fn item(long: Length, short: Length, thickness: Length, mass_mg: u64) -> MailItem {
    let size = Size::new(long, short);
    MailItem { size, thickness, mass_mg, postcard: false, raised: false }
}

/// An item of half an ounce in thousandths of an inch: length, height, thickness.
fn inches(long: i64, short: i64, thick: i64) -> MailItem {
    item(mils(long), mils(short), mils_up(thick), 14_175)
}

/// An item of 15 g in hundredths of a millimetre: length, height, thickness.
fn metric(long: i64, short: i64, thick: i64) -> MailItem {
    item(hundredths(long), hundredths(short), hundredths(thick), 15_000)
}

fn verdict(hint: &PostHint) -> &'static str {
    match hint.verdict {
        Verdict::Class(class) => class.key,
        Verdict::Below => "below",
        Verdict::Beyond => "beyond",
    }
}

#[track_caller]
fn us(item: &MailItem, expected: &str) -> PostHint {
    let hint = hint(Operator::UnitedStates, item);
    assert_eq!(verdict(&hint), expected, "{item:?}");
    hint
}

fn class(key: &str) -> &'static LetterClass {
    CLASSES.iter().find(|class| class.key == key).expect(key)
}

#[test]
fn united_states_worked_examples() {
    // Domestic Mail Manual 101, 1.1 and 1.2: the A7 and the A2 envelope.
    us(&inches(7250, 5250, 50), "us-letter");
    us(&inches(5750, 4375, 50), "us-letter");
    // 1.2a and Postal Bulletin 22218: a square pays the surcharge, above
    // 6 1/8 in it is a large envelope, below 5 in it can't be mailed.
    let square = us(&inches(6000, 6000, 50), "us-nonmachinable");
    let why: Vec<_> = square.obstacles.iter().map(|it| it.requirement.limit).collect();
    assert_eq!(why, [Limit::RatioAtLeast(13)]);
    us(&inches(6500, 6500, 50), "us-flat");
    us(&inches(4500, 4500, 50), "below");
    us(&inches(5000, 5000, 50), "us-nonmachinable");
    // Publication 25, 1-2.3: 1.3 and 2.5 are both still fine.
    us(&inches(10_000, 4000, 50), "us-letter");
    us(&inches(10_125, 4000, 50), "us-nonmachinable");
    // 1.1: 1/4 in and 3.5 oz.
    us(&inches(7250, 5500, 260), "us-flat");
    us(&MailItem { mass_mg: 102_058, ..inches(7250, 5250, 100) }, "us-flat");
    // 1.2f: thin and larger than 4 1/4 x 6 in.
    let thin = us(&inches(5750, 4375, 8), "us-nonmachinable");
    assert!(matches!(thin.obstacles[0].requirement.limit, Limit::LargeAtLeast { .. }));
    // 6.2.2: a postcard is at most 0.016 in thick, and unfolded.
    let postcard =
        |long, short, thick| MailItem { postcard: true, ..inches(long, short, thick) };
    us(&postcard(5500, 4250, 12), "us-postcard");
    us(&postcard(6000, 4250, 20), "us-letter");
    // Folded, the same outline goes by the shape of a letter: 1.294.
    us(&inches(5500, 4250, 12), "us-nonmachinable");
}

#[test]
fn envelopes_at_home_and_abroad() {
    use Operator::{Abroad, Australia, Belgium, Canada, Germany, Norway, UnitedKingdom};
    // Box tests on the published limits; US figures in the test above.
    let by = [Canada, UnitedKingdom, Germany, Australia, Norway, Belgium, Abroad];
    let rows: [(&str, MailItem, [&str; 7]); 8] = [
        (
            "A7",
            metric(18_415, 13_335, 300),
            [
                "ca-standard",
                "uk-letter",
                "de-gross",
                "au-large",
                "no-small",
                "beyond",
                "abroad-letter",
            ],
        ),
        (
            "C6",
            metric(16_200, 11_400, 300),
            [
                "ca-standard",
                "uk-letter",
                "de-standard",
                "au-small",
                "no-small",
                "be-standardised",
                "abroad-letter",
            ],
        ),
        (
            "C5",
            metric(22_900, 16_200, 300),
            [
                "ca-other",
                "uk-letter",
                "de-gross",
                "au-large",
                "no-small",
                "beyond",
                "abroad-letter",
            ],
        ),
        (
            "DL",
            metric(22_000, 11_000, 300),
            [
                "ca-standard",
                "uk-letter",
                "de-standard",
                "au-small",
                "no-small",
                "be-standardised",
                "abroad-letter",
            ],
        ),
        (
            "A1 / 4 Bar",
            item(mils(5125), mils(3625), hundredths(200), 15_000),
            ["below", "uk-letter", "de-kompakt", "au-small", "below", "below", "below"],
        ),
        (
            "A2",
            item(mils(5750), mils(4375), hundredths(300), 15_000),
            [
                "ca-standard",
                "uk-letter",
                "de-gross",
                "au-small",
                "no-small",
                "be-standardised",
                "abroad-letter",
            ],
        ),
        (
            "square",
            metric(15_500, 15_500, 300),
            [
                "ca-standard",
                "uk-letter",
                "de-gross",
                "au-large",
                "no-small",
                "beyond",
                "abroad-letter",
            ],
        ),
        (
            "C6, 5.7 mm",
            metric(16_200, 11_400, 570),
            [
                "ca-other",
                "uk-large-letter",
                "de-kompakt",
                "au-large",
                "no-large",
                "beyond",
                "abroad-letter",
            ],
        ),
    ];
    for (name, item, expected) in rows {
        let found = by.map(|operator| verdict(&hint(operator, &item)));
        assert_eq!(found, expected, "{name}");
    }
    // The same envelopes in the United States: C6, DL, A1 are letters, C5 is not.
    us(&metric(16_200, 11_400, 300), "us-letter");
    us(&metric(22_900, 16_200, 300), "us-flat");
    us(&metric(22_000, 11_000, 300), "us-letter");
    us(&inches(5125, 3625, 80), "us-letter");
}

#[test]
fn an_a6_card_in_c6_is_a_small_letter_everywhere() {
    let hints = class_of(&metric(16_200, 11_400, 490));
    assert_eq!(hints.iter().map(|it| it.operator).collect::<Vec<_>>(), Operator::ALL);
    for hint in hints {
        let first = classes(hint.operator).find(|class| !class.postcard).unwrap();
        assert_eq!(hint.verdict, Verdict::Class(first));
        assert!(hint.obstacles.is_empty());
        // Only the French figures were not seen in a text of the operator.
        assert_eq!(hint.uncertain, hint.operator == Operator::France);
    }
}

/// What a class lets in: at least and at most, in units and milligrams.
struct Bounds {
    key: &'static str,
    long: [Length; 2],
    short: [Length; 2],
    thick: [Length; 2],
    mass: [u64; 2],
}

/// The published figures once more, in millimetres and grams; 0 for none.
fn of_mm(
    key: &'static str,
    long: [i64; 2],
    short: [i64; 2],
    thick: [i64; 2],
    grams: [u64; 2],
) -> Bounds {
    let mm = |pair: [i64; 2]| pair.map(Length::mm);
    Bounds {
        key,
        long: mm(long),
        short: mm(short),
        thick: thick.map(hundredths),
        mass: grams.map(|it| it * 1000),
    }
}

/// And in thousandths of an inch; the mass is the last whole milligram.
fn of_mils(key: &'static str, long: i64, short: i64, thick: i64, mass_mg: u64) -> Bounds {
    Bounds {
        key,
        long: [mils_up(5000), mils(long)],
        short: [mils_up(3500), mils(short)],
        thick: [mils_up(7), mils(thick)],
        mass: [0, mass_mg],
    }
}

#[test]
fn every_limit_holds_exactly_and_not_one_unit_further() {
    // 3.5 oz = 99 223.33 mg, 13 oz = 368 543.80 mg (1 oz = 28.349523125 g).
    let rows = [
        of_mils("us-postcard", 6000, 4250, 16, 99_223),
        of_mils("us-letter", 11_500, 6125, 250, 99_223),
        of_mils("us-nonmachinable", 11_500, 6125, 250, 99_223),
        of_mils("us-flat", 15_000, 12_000, 750, 368_543),
        of_mm("ca-standard", [140, 245], [90, 156], [18, 500], [2, 50]),
        of_mm("ca-other", [140, 380], [90, 270], [18, 2000], [3, 500]),
        of_mm("uk-letter", [0, 240], [0, 165], [0, 500], [0, 100]),
        of_mm("uk-large-letter", [0, 353], [0, 250], [0, 2500], [0, 750]),
        of_mm("de-standard", [140, 235], [90, 125], [0, 500], [0, 20]),
        of_mm("de-kompakt", [100, 235], [70, 125], [0, 1000], [0, 50]),
        of_mm("de-gross", [100, 353], [70, 250], [0, 2000], [0, 500]),
        of_mm("de-maxi", [100, 353], [70, 250], [0, 5000], [0, 1000]),
        of_mm("au-small", [0, 240], [0, 130], [0, 500], [0, 250]),
        of_mm("au-large", [0, 360], [0, 260], [0, 2000], [0, 500]),
        of_mm("no-small", [140, 250], [90, 176], [0, 500], [0, 2000]),
        of_mm("no-large", [140, 353], [90, 250], [0, 2000], [0, 2000]),
        of_mm("be-standardised", [140, 235], [90, 125], [15, 500], [0, 50]),
    ];
    let keys: Vec<_> = CLASSES.iter().map(|class| class.key).collect();
    let probed: Vec<_> = rows.iter().map(|row| row.key).collect();
    // The last two limit the sum of the sides and have a test of their own.
    assert_eq!(keys[..keys.len() - 2], probed);
    for Bounds { key, long, short, thick, mass } in rows {
        let clamp = |it: Length, to: [Length; 2]| it.max(to[0]).min(to[1]);
        let times =
            |it: Length, over, under| Length::from_units(it.units() * over / under);
        let one = Length::from_units(1);
        let takes =
            |item: MailItem| class(key).requirements().all(|it| it.limit.holds(&item));
        // A face whose sides are about 8 : 5, which every shape rule lets in.
        let long_at = |it| item(it, clamp(times(it, 5, 8), short), thick[1], mass[1]);
        let short_at = |it| item(clamp(times(it, 8, 5), long), it, thick[1], mass[1]);
        let plain = long_at(long[0].max(Length::mm(90)));
        let thick_at = |thickness| MailItem { thickness, ..plain };
        let mass_at = |mass_mg| MailItem { mass_mg, ..plain };

        assert!(takes(long_at(long[1])) && !takes(long_at(long[1] + one)), "{key} long");
        assert!(
            takes(short_at(short[1])) && !takes(short_at(short[1] + one)),
            "{key} high"
        );
        assert!(
            takes(thick_at(thick[1])) && !takes(thick_at(thick[1] + one)),
            "{key} thick"
        );
        assert!(takes(mass_at(mass[1])) && !takes(mass_at(mass[1] + 1)), "{key} heavy");
        for (name, least, at) in [
            ("short", long[0], &long_at as &dyn Fn(Length) -> MailItem),
            ("low", short[0], &short_at),
            ("thin", thick[0], &thick_at),
        ] {
            let open = least == Length::ZERO;
            assert!(open || takes(at(least)) && !takes(at(least - one)), "{key} {name}");
        }
        assert!(mass[0] == 0 || takes(mass_at(mass[0])) && !takes(mass_at(mass[0] - 1)));
    }
}

#[test]
fn sums_of_sides_are_limited_abroad() {
    // India Post, Croatian Post, Bring, Åland Post: 900 mm in all, 600 mm long.
    // La Poste (second hand): 1000 mm in all.
    let one = Length::from_units(1);
    for (key, sum, grams) in [("abroad-letter", 900, 2000), ("fr-letter", 1000, 3000)] {
        let at = |long: Length, short: Length| {
            let item = item(long, short, Length::mm(10), grams * 1000);
            class(key).requirements().all(|it| it.limit.holds(&item))
        };
        let rest = Length::mm(sum - 610);
        assert!(at(Length::mm(600), rest) && !at(Length::mm(600), rest + one), "{key}");
        assert!(!at(Length::mm(600) + one, rest - one), "{key}");
        assert!(at(Length::mm(140), Length::mm(90)), "{key}");
        assert!(!at(Length::mm(140) - one, Length::mm(90)), "{key}");
        assert!(!at(Length::mm(140), Length::mm(90) - one), "{key}");
    }
    let heavy = |key: &str, mass_mg| {
        let item = MailItem { mass_mg, ..metric(16_200, 11_400, 3000) };
        class(key).requirements().all(|it| it.limit.holds(&item))
    };
    assert!(heavy("abroad-letter", 2_000_000) && !heavy("abroad-letter", 2_000_001));
    assert!(heavy("fr-letter", 3_000_000) && !heavy("fr-letter", 3_000_001));
    let thicker =
        MailItem { thickness: hundredths(3000) + one, ..metric(16_200, 11_400, 0) };
    assert_eq!(verdict(&hint(Operator::France, &thicker)), "beyond");
}

#[test]
fn shapes_are_judged_to_the_unit() {
    let one = Length::from_units(1);
    let face = |long, short| item(long, short, mils(50), 15_000);
    // Publication 25, 1-2.3: from 1.3 to 2.5, both included.
    us(&face(mils(6500), mils(5000)), "us-letter");
    us(&face(mils(6500) - one, mils(5000)), "us-nonmachinable");
    us(&face(mils(10_000), mils(4000)), "us-letter");
    us(&face(mils(10_000) + one, mils(4000)), "us-nonmachinable");
    // The 1.4 of the German classes is known from news only, and says so.
    let german = |long, short| {
        let hint = hint(Operator::Germany, &face(long, short));
        (verdict(&hint), hint.uncertain)
    };
    assert_eq!(german(Length::mm(140), Length::mm(100)), ("de-standard", false));
    assert_eq!(german(Length::mm(140), Length::mm(100) + one), ("de-gross", true));
    // A card that lies across the reader is the same card.
    us(&face(mils(4000), mils(10_000)), "us-letter");
}

#[test]
fn thin_envelopes_must_be_small() {
    // Domestic Mail Manual 101, 1.2f: 0.009 in beyond 4 1/4 in or 6 in.
    let one = Length::from_units(1);
    let thin = |long, short, thickness| item(long, short, thickness, 15_000);
    us(&thin(mils(6000), mils(4250), mils_up(8)), "us-letter");
    us(&thin(mils(6000) + one, mils(4250), mils_up(8)), "us-nonmachinable");
    us(&thin(mils(6000), mils(4250) + one, mils_up(8)), "us-nonmachinable");
    us(&thin(mils(6000), mils(4250) + one, mils_up(9)), "us-letter");
    us(&thin(mils(6000), mils(4250) + one, mils(9)), "us-nonmachinable");
}

#[test]
fn a_limit_known_at_second_hand_makes_the_hint_uncertain() {
    // The mass of a British Letter was not seen in a text of the operator.
    let heavy = hint(
        Operator::UnitedKingdom,
        &MailItem { mass_mg: 100_001, ..metric(16_200, 11_400, 300) },
    );
    assert_eq!((verdict(&heavy), heavy.uncertain), ("uk-large-letter", true));
    // A thickness was, so that the mass decides nothing.
    let thick = hint(
        Operator::UnitedKingdom,
        &MailItem { mass_mg: 100_001, ..metric(16_200, 11_400, 501) },
    );
    assert_eq!((verdict(&thick), thick.uncertain), ("uk-large-letter", false));
    assert_eq!(thick.obstacles.len(), 2);
}

#[test]
fn raised_layers_are_something_to_watch() {
    // Domestic Mail Manual 101, 1.2d and 1.2e: uneven, stiff.
    let flat = inches(7250, 5250, 150);
    let raised = MailItem { raised: true, ..flat };
    assert_eq!(us(&raised, "us-letter").watch, [Watch::Even, Watch::Bends]);
    assert_eq!(us(&flat, "us-letter").watch, []);
}

#[test]
fn masses_and_thicknesses_convert_exactly() {
    // 1 oz = 28.349523125 g: 28.35, 99.22 and 368.5 g for 1, 3.5 and 13 oz.
    for (halves, below_mg) in [(2, 28_349), (7, 99_223), (26, 368_543)] {
        let mass = Mass::HalfOunces(halves);
        assert!(mass.compare(below_mg).is_lt() && mass.compare(below_mg + 1).is_gt());
    }
    // 64 000 oz are 1 814 369.48 g exactly.
    assert!(Mass::HalfOunces(128_000).compare(1_814_369_480).is_eq());
    // 0.007, 0.009, 0.016, 0.25 in: 0.1778, 0.2286, 0.4064, 6.35 mm.
    for (mils, mm) in [(7, 0.1778), (9, 0.2286), (16, 0.4064), (250, 6.35)] {
        let measure = Measure::Mils(mils);
        assert!((measure.length().as_mm() - mm).abs() < 0.000_05);
        assert_eq!(measure.unit(), Unit::Inch);
    }
    assert_eq!(Measure::Hundredths(18).length(), hundredths(18));
}

#[test]
fn classes_are_sorted_unique_and_cited() {
    assert!(CLASSES.is_sorted_by_key(|class| class.operator));
    let mut keys: Vec<_> = CLASSES.iter().map(|class| class.key).collect();
    keys.sort_unstable();
    keys.dedup();
    assert_eq!(keys.len(), CLASSES.len());
    for operator in Operator::ALL {
        assert!(classes(operator).next().is_some(), "{operator:?} has no class");
    }
    for class in CLASSES {
        let from = class.from;
        let (Year::Issued(year) | Year::Read(year)) = class.year;
        let told = format!("{}{}", from.title, from.section).contains(&year.to_string());
        assert!(told, "{}: the source doesn't name {year}", class.key);
        assert!(!class.name.is_empty() && !class.size.is_empty());
        for requirement in class.requirements() {
            let cited = requirement.from;
            assert!(!cited.title.is_empty() && !cited.section.is_empty());
            assert!(cited.seen != Seen::Practice, "{}: hearsay", class.key);
        }
    }
}

#[test]
fn a_dearer_class_takes_at_least_what_a_cheaper_one_takes() {
    for pair in CLASSES.windows(2).filter(|it| it[0].operator == it[1].operator) {
        for long in (70..400).step_by(11) {
            for short in (50..long).step_by(13) {
                for thick in [20, 490, 900, 1900] {
                    let item = metric(long * 100, short * 100, thick);
                    let takes = |class: &LetterClass| {
                        class.requirements().all(|it| it.limit.holds(&item))
                    };
                    assert!(
                        takes(&pair[1]) || !takes(&pair[0]) || pair[0].postcard,
                        "{} takes {long} x {short} mm, {} doesn't",
                        pair[0].key,
                        pair[1].key
                    );
                }
            }
        }
    }
}
