//! The order of work, what is done ahead, and what is packed.

use std::collections::BTreeSet;

use leafwright::geom::Shape;
use leafwright::plan::{Act, Good, Plan, PlanOptions, Task, WorkPlan, plan};
use leafwright::project::*;
use leafwright::source::Site;

use crate::hand_made::*;

const TRIMMER: ToolId = ToolId(0);
const PUNCH: ToolId = ToolId(1);
const WORDS: ToolId = ToolId(2);
const RED: ToolId = ToolId(3);
const BLUE: ToolId = ToolId(4);
const GLUE: ToolId = ToolId(5);
const FOAM: ToolId = ToolId(6);

/// Two cards: a rail cut from a ribbon, and a panel, each with a greeting.
fn set() -> Project {
    let mut project = project();
    let outline = Outline { shape: Shape::Rectangle, size: size(32, 16) };
    project.tools = vec![
        tool(
            "trimmer",
            ToolKind::Trimmer(Trimmer {
                longest_cut: None,
                sheets_at_once: 1,
                marks: sixteenths(1),
                narrowest: sixteenths(4),
                kind: TrimmerKind::Sliding,
            }),
        ),
        tool(
            "punch",
            ToolKind::Punch(Punch {
                outline,
                reach: Some(sixteenths(18)),
                takes_strips: Some(sixteenths(36)),
            }),
        ),
        tool("words", ToolKind::StampSet),
        tool("red", ToolKind::InkPad),
        tool("blue", ToolKind::InkPad),
        tool("glue", ToolKind::Glue { dries: 20 }),
        tool("foam", ToolKind::Foam { thickness: None, side: None, pack: None }),
    ];
    let ribbon = size(88, 20);
    project.pieces = vec![piece("ribbon", ribbon), piece("panel", size(40, 40))];
    let mut late = late_cut(PieceId(0), ribbon, 8, ["sill", "rail"]);
    late.at_the_card = true;
    project.late_cuts.push(late);
    for (name, ink) in [("hello", RED), ("thanks", BLUE), ("again", RED)] {
        let mut greeting = greeting(name);
        (greeting.stamps, greeting.ink) = (Some(WORDS), Some(ink));
        greeting.label.punch = Some(PUNCH);
        project.greetings.push(greeting);
    }
    let raised = |id| Layer { raised: 4, ..layer(Placed::Greeting(GreetingId(id))) };
    let first = vec![
        layer(Placed::Late(LateId(0), 1)),
        layer(Placed::Late(LateId(0), 0)),
        raised(0),
    ];
    let second = vec![layer(Placed::Piece(PieceId(1))), raised(1)];
    project.cards = vec![
        card("One", Stands::Wide, first),
        card("Two", Stands::Tall, second),
        card("Three", Stands::Tall, vec![raised(2)]),
    ];
    project.cards[1].inside =
        Inside { words: Some(text("Well done")), ink: Some(BLUE), ..Inside::default() };
    project.cards[0].inside.among = vec![text("Write soon"), text("See you")];
    project
}

fn planned(project: &Project) -> Plan {
    let plan = plan(project, &PlanOptions::default());
    plan.value.unwrap_or_else(|| panic!("{:#?}", plan.notes))
}

fn place(work: &WorkPlan, act: Act) -> usize {
    work.tasks.iter().position(|task| task.act == act).unwrap_or_else(|| {
        panic!("{act:?} is not among {:#?}", work.tasks);
    })
}

fn in_order(work: &WorkPlan, acts: &[Act]) {
    let places: Vec<_> = acts.iter().map(|act| place(work, *act)).collect();
    assert!(places.is_sorted(), "{acts:?} stand at {places:?}");
}

#[test]
fn what_is_needed_stands_before() {
    let work = planned(&set()).work;
    for (at, task) in work.tasks.iter().enumerate() {
        assert!(task.needs.iter().all(|need| need.0 < at), "{task:?}");
    }
    let acts: BTreeSet<_> = work.tasks.iter().map(|task| task.act).collect();
    assert_eq!(acts.len(), work.tasks.len(), "each once");
}

#[test]
fn a_card_comes_together_in_a_sensible_order() {
    let work = planned(&set()).work;
    let (paper, late, one, two) = (PaperId(0), LateId(0), CardId(0), CardId(1));
    let hello = GreetingId(0);
    in_order(
        &work,
        &[
            Act::CutPaper(paper),
            Act::StampGreeting(hello),
            Act::PunchLabel(hello),
            Act::LateCut(late),
            Act::Attach(one, 0),
            Act::Attach(one, 1),
            Act::Attach(one, 2),
            Act::ChooseInside(one),
        ],
    );
    in_order(
        &work,
        &[
            Act::StampInside(two),
            Act::FoldBase(BaseId(0)),
            Act::Attach(two, 0),
            Act::Attach(two, 1),
        ],
    );
}

#[test]
fn tool_ink_and_number_go_with_the_task() {
    let work = planned(&set()).work;
    let task = |act| &work.tasks[place(&work, act)];
    let stamp = task(Act::StampGreeting(GreetingId(1)));
    assert_eq!((stamp.tool, stamp.ink, stamp.times), (Some(WORDS), Some(BLUE), 1));
    assert_eq!(task(Act::PunchLabel(GreetingId(1))).tool, Some(PUNCH));
    assert_eq!(task(Act::CutPaper(PaperId(0))).tool, Some(TRIMMER));
    assert_eq!(task(Act::LateCut(LateId(0))).tool, Some(TRIMMER));
    let flat = task(Act::Attach(CardId(1), 0));
    assert_eq!((flat.tool, flat.waits), (Some(GLUE), 20));
    let raised = task(Act::Attach(CardId(1), 1));
    assert_eq!((raised.tool, raised.waits), (Some(FOAM), 0));
}

#[test]
fn while_glue_dries_the_next_card_is_gone_on_with() {
    let work = planned(&set()).work;
    for (at, task) in work.tasks.iter().enumerate().skip(1) {
        let before = &work.tasks[at - 1];
        let waits = before.waits > 0 && task.needs.iter().any(|need| need.0 == at - 1);
        let others = work.tasks[at..].iter().any(|later| {
            let ready = later.needs.iter().all(|need| need.0 < at - 1);
            ready && matches!(later.act, Act::Attach(..) | Act::LateCut(_))
        });
        assert!(!waits || !others, "{:?} waits for {:?}", task.act, before.act);
    }
}

/// Changes of tool and ink over tasks in an order.
fn changes<'a>(tasks: impl Iterator<Item = &'a Task>) -> u32 {
    let (mut tool, mut ink, mut changes) = (None, None, 0);
    for task in tasks {
        for (wanted, held) in [(task.tool, &mut tool), (task.ink, &mut ink)] {
            if wanted.is_some() && wanted != *held {
                changes += u32::from(held.is_some());
                *held = wanted;
            }
        }
    }
    changes
}

fn is_preparing(task: &Task) -> bool {
    !matches!(
        task.act,
        Act::Attach(..) | Act::LateCut(_) | Act::ChooseInside(_) | Act::TrimFlush(..)
    )
}

/// The fewest changes over every order of the preparing that keeps `before`.
fn fewest(tasks: &[&Task], before: &[Vec<usize>], done: &mut Vec<usize>, best: &mut u32) {
    let so_far = changes(done.iter().map(|at| tasks[*at]));
    if so_far >= *best {
        return;
    }
    if done.len() == tasks.len() {
        *best = so_far;
        return;
    }
    for at in 0..tasks.len() {
        if !done.contains(&at) && before[at].iter().all(|it| done.contains(it)) {
            done.push(at);
            fewest(tasks, before, done, best);
            done.pop();
        }
    }
}

#[test]
fn no_order_of_the_preparing_changes_tools_less_often() {
    let work = planned(&set()).work;
    let tasks: Vec<&Task> = work.tasks.iter().filter(|task| is_preparing(task)).collect();
    assert!(tasks.len() > 7, "too easy");
    let at = |act: Act| tasks.iter().position(|task| task.act == act);
    let before: Vec<Vec<usize>> = tasks
        .iter()
        .map(|task| {
            let mut before: Vec<usize> = task.needs.iter().map(|need| need.0).collect();
            before.extend(match task.act {
                Act::PunchLabel(id) => at(Act::StampGreeting(id)),
                Act::FoldBase(_) => at(Act::StampInside(CardId(1))),
                _ => None,
            });
            before
        })
        .collect();
    let mut best = u32::MAX;
    fewest(&tasks, &before, &mut Vec::new(), &mut best);
    assert_eq!(changes(tasks.iter().copied()), best);
    assert!(work.fewest, "and it is known to be so");
    assert_eq!(changes(work.tasks.iter()), work.changes());
}

#[test]
fn a_base_is_scored_and_folded_as_far_as_it_does_not_come_so() {
    let mut project = set();
    for (comes, score, fold) in [
        (Comes::Flat, true, true),
        (Comes::Scored, false, true),
        (Comes::Folded, false, false),
    ] {
        project.bases[0].comes = comes;
        let work = planned(&project).work;
        let has = |act| work.tasks.iter().any(|task| task.act == act);
        assert_eq!(has(Act::ScoreBase(BaseId(0))), score);
        assert_eq!(has(Act::FoldBase(BaseId(0))), fold);
    }
    project.bases[0].from = BaseFrom::Made(PaperId(0));
    let work = planned(&project).work;
    let score = &work.tasks[place(&work, Act::ScoreBase(BaseId(0)))];
    assert_eq!(score.needs.len(), 1, "a made base is cut first");
    assert_eq!(score.times, 3);
}

#[test]
fn what_hangs_over_is_trimmed_before_the_next_layer() {
    let mut project = set();
    project.pieces[1].size = size(70, 40);
    project.cards[1].layers[0].trim_flush = true;
    let work = planned(&project).work;
    let two = CardId(1);
    in_order(&work, &[Act::Attach(two, 0), Act::TrimFlush(two, 0), Act::Attach(two, 1)]);
}

fn ahead(reader: Reader, work: &[Work]) -> DoneAhead {
    DoneAhead { reader, work: work.to_vec(), site: Site::default() }
}

#[test]
fn labels_may_be_punched_ahead_and_stamped_at_the_table() {
    let mut project = set();
    project.done_ahead = vec![ahead(Reader::Class, &[Work::Cut, Work::Punch])];
    let work = planned(&project).work;
    let ahead = work.ahead(Reader::Class);
    assert_eq!(ahead.len(), 4);
    assert!(work.ahead(Reader::Kit).is_empty());
}

#[test]
fn what_needs_undone_work_cannot_be_done_ahead() {
    let mut project = set();
    project.done_ahead = vec![ahead(Reader::Kit, &[Work::Punch])];
    let plan = plan(&project, &PlanOptions::default());
    assert!(plan.value.is_none());
    assert_eq!(plan.notes.len(), 1);
    assert_eq!(plan.notes[0].rule.name, "done-ahead-too-early");
    assert!(plan.notes[0].message.contains("`punch` is done ahead but needs `cut`"));
}

#[test]
fn a_cut_at_the_card_is_left_to_who_makes_the_card() {
    let mut project = set();
    let all_but = |left: &[Work]| {
        let all = Work::ALL.into_iter();
        all.filter(|work| !left.contains(work)).collect::<Vec<_>>()
    };
    project.done_ahead = vec![
        ahead(Reader::Kit, &all_but(&[Work::Fold, Work::Attach, Work::Inside])),
        ahead(Reader::Travel, &all_but(&[])),
    ];
    let work = planned(&project).work;
    let done = |reader: Reader, act| {
        work.ahead(reader).iter().any(|id| work.tasks[id.0].act == act)
    };
    assert!(!done(Reader::Kit, Act::LateCut(LateId(0))));
    assert!(done(Reader::Kit, Act::PunchLabel(GreetingId(0))));
    assert!(done(Reader::Travel, Act::LateCut(LateId(0))));
    assert!(!done(Reader::Travel, Act::ChooseInside(CardId(0))));
}

#[test]
fn a_bag_holds_what_is_left_to_do() {
    let mut project = set();
    project.done_ahead = vec![
        ahead(Reader::Class, &[]),
        ahead(Reader::Kit, &[Work::Cut, Work::Stamp, Work::Punch]),
    ];
    let plan = planned(&project);
    let class = plan.work.packing(&project, Reader::Class);
    assert!(class.parts.is_empty(), "nothing is cut yet");
    assert_eq!(
        class.goods,
        [
            Good::Sheets(PaperId(0)),
            Good::Bases(BaseId(0)),
            Good::Foam(FOAM),
            Good::Tool(TRIMMER),
            Good::Tool(PUNCH),
            Good::Tool(WORDS),
            Good::Tool(RED),
            Good::Tool(BLUE),
            Good::Tool(GLUE),
        ]
    );
    let kit = plan.work.packing(&project, Reader::Kit);
    assert_eq!(
        kit.goods,
        [
            Good::Bases(BaseId(0)),
            Good::Foam(FOAM),
            Good::Tool(TRIMMER),
            Good::Tool(BLUE),
            Good::Tool(GLUE),
        ]
    );
    let layers: Vec<_> = kit.parts.iter().map(|packed| packed.layers.clone()).collect();
    assert_eq!(layers, [vec![0, 1, 2], vec![0, 1], vec![0]]);
}

#[test]
fn a_large_set_is_put_in_order_too() {
    let mut project = set();
    let pads = 40;
    for pad in 0..pads {
        project.tools.push(tool(&format!("ink {pad}"), ToolKind::InkPad));
        let mut greeting = greeting(&format!("greeting {pad}"));
        greeting.ink = Some(ToolId(7 + pad));
        greeting.stamps = Some(if pad % 2 == 0 { WORDS } else { PUNCH });
        project.greetings.push(greeting);
        let id = GreetingId(project.greetings.len() - 1);
        let layers = vec![layer(Placed::Greeting(id))];
        project.cards.push(card(&format!("Card {pad}"), Stands::Wide, layers));
    }
    let work = planned(&project).work;
    for (at, task) in work.tasks.iter().enumerate() {
        assert!(task.needs.iter().all(|need| need.0 < at), "{task:?}");
    }
}

#[test]
fn words_that_are_chosen_on_the_way_take_a_pen() {
    let mut project = project();
    project.tools = vec![tool("pen", ToolKind::Pen)];
    project.cards = vec![card("One", Stands::Wide, Vec::new())];
    // Nothing to choose from was named: whatever comes to mind is written.
    project.cards[0].inside.chosen = true;
    let work = planned(&project).work;
    let task = &work.tasks[place(&work, Act::ChooseInside(CardId(0)))];
    assert_eq!(task.tool, Some(ToolId(0)));
    let packing = work.packing(&project, Reader::Travel);
    assert!(packing.goods.contains(&Good::Tool(ToolId(0))));
}
