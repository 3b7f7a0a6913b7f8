//! A cutting plan that is kept beside the description and read back.

use leafwright::geom::{Axis, Length, Size, Unit};
use leafwright::plan::cut::{
    Kept, KeptFault, KeptPaper, KeptPart, Leaf, Part, PartOf, Pattern, Tree, Turning,
};
use leafwright::plan::{Plan, PlanOptions, plan};
use leafwright::project::*;
use leafwright::source::Site;

use crate::hand_made::{self, piece, size};
use crate::random::Random;

fn s(sixteenths: i64) -> Length {
    Length::inch(sixteenths, 16)
}

/// Two pieces on a sheet of 12 x 12 in, cut from two sheets.
fn example() -> (Project, Vec<Part>, Kept) {
    let mut project = hand_made::project();
    let sizes = [("sash", Size::new(s(88), s(32))), ("tile", Size::new(s(44), s(56)))];
    let mut parts = Vec::new();
    for (idx, (name, size)) in sizes.into_iter().enumerate() {
        project.pieces.push(hand_made::piece(name, size));
        parts.push(Part {
            of: PartOf::Piece(PieceId(idx)),
            letter: "A".into(),
            size,
            turning: Turning::Fixed,
            per_kit: 1,
            count: 2,
            late: Vec::new(),
            greetings: Vec::new(),
            site: Site::default(),
        });
    }
    // The plan names the parts the other way round.
    let tile = Tree::part(0);
    let sash = Tree::part(1);
    let waste = || Tree::Leaf(Leaf::Waste);
    let row = Tree::cut(
        Axis::Upright,
        s(44),
        Tree::cut(Axis::Level, s(56), tile, waste()),
        waste(),
    );
    let tree = Tree::cut(
        Axis::Level,
        s(32),
        Tree::cut(Axis::Upright, s(88), sash, waste()),
        row,
    );
    let sheet = Size::new(s(192), s(192));
    let kept_part = |idx: usize| KeptPart {
        name: sizes[idx].0.into(),
        letter: ["D", "E"][idx].into(),
        size: sizes[idx].1,
        count: 2,
    };
    let kept = Kept {
        papers: vec![KeptPaper {
            paper: "leaf".into(),
            parts: vec![kept_part(1), kept_part(0)],
            patterns: vec![Pattern { sheet, tree, copies: 2 }],
        }],
    };
    (project, parts, kept)
}

fn follow(
    project: &Project,
    parts: &[Part],
    kept: &Kept,
) -> Result<Vec<Pattern>, KeptFault> {
    let followed =
        kept.patterns_for(project, PaperId(0), parts, &[Size::new(s(192), s(192))])?;
    Ok(followed.0)
}

#[test]
fn a_kept_plan_reads_back_the_same_and_fits() {
    let (project, parts, kept) = example();
    let json = kept.to_json();
    let read = Kept::from_json(&json).expect("it was written so");
    assert_eq!(read, kept);
    assert_eq!(read.to_json(), json);
    let patterns = follow(&project, &parts, &read).expect("it fits");
    // Parts are found by name: the first leaf is the sash.
    let first = patterns[0].tree.placements(patterns[0].sheet)[0].leaf;
    assert_eq!(first, Leaf::Part { part: 0, turned: false });
}

#[test]
fn a_plan_that_no_longer_fits_is_refused_with_both_numbers() {
    let (project, parts, kept) = example();
    let refused = |parts: &[Part]| follow(&project, parts, &kept).unwrap_err();

    let mut other = parts.clone();
    other[0].size.height = s(30);
    assert_eq!(
        refused(&other).message(Unit::Inch),
        "`sash` is 5 1/2 x 2 in in the kept plan and 5 1/2 x 1 7/8 in in the description"
    );
    let mut other = parts.clone();
    other[1].count = 3;
    assert_eq!(
        refused(&other).message(Unit::Inch),
        "the kept plan makes 2 of `tile`; 3 are needed"
    );
    assert_eq!(refused(&parts[..1]), KeptFault::OtherParts("tile".into()));

    let mut more = project.clone();
    more.pieces.push(hand_made::piece("rail", Size::new(s(8), s(8))));
    let mut other = parts.clone();
    other.push(Part { of: PartOf::Piece(PieceId(2)), ..parts[0].clone() });
    let fault = follow(&more, &other, &kept).unwrap_err();
    assert_eq!(fault, KeptFault::OtherParts("rail".into()));

    let fault =
        kept.patterns_for(&project, PaperId(0), &parts, &[Size::new(s(136), s(176))]);
    assert_eq!(fault.unwrap_err(), KeptFault::OtherSheet(Size::new(s(192), s(192))));

    let mut renamed = project.clone();
    renamed.papers[0].name.words = "bark".into();
    let fault = follow(&renamed, &parts, &kept).unwrap_err();
    assert_eq!(fault, KeptFault::NoSuchPaper("bark".into()));
}

#[test]
fn a_plan_whose_cuts_do_not_make_the_parts_is_refused() {
    let (project, parts, mut kept) = example();
    let json = kept.to_json();
    // The sash comes off 1/16 in too narrow.
    let cut = |at: i64| format!("upright {}", s(at).units());
    let read =
        Kept::from_json(&json.replace(&cut(88), &cut(87))).expect("sound in itself");
    let fault = follow(&project, &parts, &read).unwrap_err();
    assert_eq!(
        fault.message(Unit::Inch),
        "the kept plan cuts `sash` 5 7/16 x 2 in, but it is 5 1/2 x 2 in"
    );
    // A part turned against its pattern.
    let (tall, wide) = (Size::new(s(32), s(88)), Size::new(s(88), s(32)));
    kept.papers[0].patterns = vec![Pattern {
        sheet: Size::new(s(192), s(192)),
        tree: Tree::cut(
            Axis::Upright,
            tall.width,
            Tree::cut(
                Axis::Level,
                tall.height,
                Tree::Leaf(Leaf::Part { part: 1, turned: true }),
                Tree::Leaf(Leaf::Waste),
            ),
            Tree::Leaf(Leaf::Keep),
        ),
        copies: 2,
    }];
    assert_eq!(parts[0].size, wide);
    let fault = follow(&project, &parts, &kept).unwrap_err();
    assert_eq!(fault, KeptFault::Turned("sash".into()));
}

#[test]
fn what_is_no_kept_plan_is_refused() {
    let (_, _, kept) = example();
    let json = kept.to_json();
    for (from, to, says) in [
        ("{", "[", "the kept plan can't be read"),
        (
            "\"cutting plan\": 1",
            "\"cutting plan\": 2",
            "of version 2; this program reads 1",
        ),
        ("\"cutting plan\": 1", "\"cutting\": 1", "it is no cutting plan"),
        ("1/14400 mm", "furlongs", "its lengths are in furlongs"),
        ("\"waste\"", "\"wasted\"", "a cut `wasted`"),
        ("\"part 0\"", "\"part 7\"", "there is no part 7"),
        ("\"sheets\": 2", "\"sheets\": 0", "for no sheet"),
        ("\"part 0\",", "", "cuts are missing or left over"),
        ("level 731520", "level 99999999", "a cut lies beyond its paper"),
        ("level 731520", "level -5", "a cut `level -5`"),
        ("level 731520", "level 99999999999999999999", "a cut `level 9999"),
    ] {
        let text = json.replacen(from, to, 1);
        assert_ne!(text, json, "{from}");
        let fault = Kept::from_json(&text).unwrap_err().message(Unit::Inch);
        assert!(fault.contains(says), "{fault}");
    }
}

#[test]
fn no_damage_to_a_kept_plan_makes_a_panic() {
    let (project, parts, kept) = example();
    let json = kept.to_json();
    let mut random = Random::new(77);
    let mut refused = 0;
    for _ in 0..3000 {
        let mut bytes = json.clone().into_bytes();
        for _ in 0..=random.below(3) {
            let at = usize::try_from(random.below(bytes.len() as i64)).unwrap();
            match random.below(3) {
                0 => bytes[at] = b' ' + u8::try_from(random.below(90)).unwrap(),
                1 => drop(bytes.remove(at)),
                _ => bytes.insert(at, b'0' + u8::try_from(random.below(10)).unwrap()),
            }
        }
        let Ok(text) = String::from_utf8(bytes) else { continue };
        match Kept::from_json(&text).and_then(|it| follow(&project, &parts, &it)) {
            Ok(patterns) => assert!(!patterns.is_empty()),
            Err(fault) => {
                refused += 1;
                assert!(!fault.message(Unit::Mm).is_empty());
            }
        }
    }
    assert!(refused > 2000, "damage is not seen");
}

/// Panels and tiles of one paper, strips of another, for some kits.
fn set(kits: u32) -> Project {
    let mut project = hand_made::project();
    project.kits = kits;
    project.spares = Spares::Kits(0);
    project.papers.push(hand_made::paper("oat", size(136, 176), &[]));
    project.pieces = vec![
        Piece { count: Some(1), ..piece("panel", size(80, 112)) },
        Piece { count: Some(3), ..piece("tile", size(64, 64)) },
        Piece { count: Some(2), of: PaperId(1), ..piece("strip", size(100, 20)) },
    ];
    project
}

/// The plan and the messages about the kept one.
fn planned(project: &Project, kept: Option<&Kept>, alike: bool) -> (Plan, Vec<String>) {
    let kept = kept.map(|kept| Kept::from_json(&kept.to_json()));
    let outcome = plan(project, &PlanOptions { kept, alike, ..PlanOptions::default() });
    let notes = outcome.notes.into_iter();
    let about = notes.filter(|it| it.rule.name == "kept-plan-does-not-fit");
    let about = about.map(|it| it.message).collect();
    (outcome.value.expect("it can be cut"), about)
}

#[test]
fn a_kept_plan_is_followed_to_the_letter() {
    for (kits, alike) in [(1, false), (5, false), (5, true), (6, true)] {
        let project = set(kits);
        let (first, _) = planned(&project, None, alike);
        let kept = Kept::new(&project, &first.cuts);
        let (again, notes) = planned(&project, Some(&kept), alike);
        assert_eq!(notes, Vec::<String>::new());
        for (one, other) in first.cuts.iter().zip(&again.cuts) {
            assert_eq!(one.parts, other.parts);
            assert_eq!(one.patterns, other.patterns);
            assert_eq!(one.schedule, other.schedule);
            assert_eq!((one.alike, one.proven), (other.alike, other.proven));
        }
    }
}

#[test]
fn a_wasteful_plan_is_followed_but_not_called_the_best() {
    let project = set(2);
    // Every strip on a sheet of its own, though one sheet holds all of them.
    let (first, _) = planned(&project, None, false);
    let mut kept = Kept::new(&project, &first.cuts);
    let waste = || Tree::Leaf(Leaf::Waste);
    let tall = Tree::cut(Axis::Level, s(20), Tree::part(0), waste());
    let tree = Tree::cut(Axis::Upright, s(100), tall, waste());
    kept.papers[1].patterns =
        vec![Pattern { tree, copies: 4, ..kept.papers[1].patterns[0].clone() }];
    let (plan, notes) = planned(&project, Some(&kept), false);
    assert_eq!(notes, Vec::<String>::new());
    assert_eq!(plan.cuts[1].patterns[0].copies, 4);
    assert!(!plan.cuts[1].proven);
    let fewest = plan.cuts[1].fewest.expect("fewer sheets would do");
    assert_eq!((fewest.sheets, fewest.marks), (1, first.cuts[1].schedule.marks));
    assert_eq!(plan.cuts[0].fewest, None);
    assert!(plan.cuts[0].proven, "the other paper is cut as well as can be");
}

#[test]
fn what_was_printed_keeps_its_letters_when_another_piece_is_added() {
    let project = set(3);
    let (first, _) = planned(&project, None, false);
    let kept = Kept::new(&project, &first.cuts);
    let letters = |plan: &Plan| -> Vec<Vec<String>> {
        let cuts = plan.cuts.iter();
        cuts.map(|cut| cut.parts.iter().map(|it| it.letter.clone()).collect()).collect()
    };
    assert_eq!(letters(&first), [vec!["A", "B"], vec!["C"]]);
    let mut more = project.clone();
    more.pieces.insert(1, Piece { count: Some(1), ..piece("rail", size(40, 8)) });
    let (plan, notes) = planned(&more, Some(&kept), false);
    assert_eq!(letters(&plan), [vec!["A", "B", "D"], vec!["C"]]);
    assert_eq!(notes, ["`rail` is only in one of the kept plan and the description"]);
}

#[test]
fn a_plan_that_does_not_fit_is_told_and_made_anew() {
    let project = set(3);
    let (first, _) = planned(&project, None, false);
    let kept = Kept::new(&project, &first.cuts);
    let more = set(4);
    let (plan, notes) = planned(&more, Some(&kept), false);
    assert_eq!(plan, planned(&more, None, false).0);
    assert_eq!(
        notes,
        [
            "the kept plan makes 3 of `panel`; 4 are needed",
            "the kept plan makes 6 of `strip`; 8 are needed"
        ]
    );
    // One file serves both, where both were kept.
    let both = Kept::new(&more, &plan.cuts).beside(kept);
    for project in [project, more] {
        assert_eq!(planned(&project, Some(&both), false).1, Vec::<String>::new());
    }
}

#[test]
fn a_file_that_is_damaged_anywhere_is_told_and_never_breaks_anything() {
    let project = set(3);
    let (first, _) = planned(&project, None, false);
    let json = Kept::new(&project, &first.cuts).to_json();
    for at in 0..json.len() / 7 {
        let mut bytes = json.clone().into_bytes();
        bytes[at * 7] = b"0}x-9 "[at % 6];
        let damaged = String::from_utf8(bytes).expect("it was ASCII");
        let read = Kept::from_json(&damaged);
        let broken = read.is_err();
        let kept = Some(read);
        let budget = 20_000;
        let options = PlanOptions { kept, budget, ..PlanOptions::default() };
        let outcome = plan(&project, &options);
        assert!(outcome.value.is_some());
        assert!(!broken || !outcome.notes.is_empty(), "{damaged}");
    }
}

#[test]
fn a_plan_that_the_trimmer_can_no_longer_cut_is_made_anew() {
    let project = set(1);
    let (first, _) = planned(&project, None, false);
    let kept = Kept::new(&project, &first.cuts);
    let mut shorter = project.clone();
    let trimmer = Trimmer {
        longest_cut: Some(s(180)),
        sheets_at_once: 1,
        marks: s(1),
        narrowest: s(4),
        kind: TrimmerKind::Sliding,
    };
    shorter.tools = vec![hand_made::tool("trimmer", ToolKind::Trimmer(trimmer))];
    let outcome =
        plan(&shorter, &PlanOptions { kept: Some(Ok(kept)), ..PlanOptions::default() });
    let said: Vec<&str> = outcome.notes.iter().map(|it| it.message.as_str()).collect();
    let expected = "the kept plan has a cut of 12 in; the trimmer's longest is 11 1/4 in";
    assert!(said.contains(&expected), "{said:#?}");
}
