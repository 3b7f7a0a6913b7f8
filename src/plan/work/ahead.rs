//! What is done before a packet reaches its reader.

use std::collections::BTreeSet;

use crate::diag::{Diagnostic, rules};
use crate::plan::work::{Act, Task, TaskId};
use crate::project::{DoneAhead, Project, Reader, Work};

/// For each reader the tasks that are done ahead, in order.
///
/// A late cut that is to be made at the card is done ahead only if all that needs
/// it is. What is chosen when a card is sent never is.
pub(crate) fn ahead(
    project: &Project,
    tasks: &[Task],
    notes: &mut Vec<Diagnostic>,
) -> Vec<(Reader, Vec<TaskId>)> {
    let readers = Reader::ALL.into_iter();
    readers
        .map(|reader| {
            let said = project.done_ahead.iter().find(|it| it.reader == reader);
            let Some(said) = said else { return (reader, Vec::new()) };
            let ahead = chosen(project, tasks, said);
            note_too_early(tasks, &ahead, said, notes);
            let ids = (0..tasks.len()).filter(|index| ahead[*index]).map(TaskId);
            (reader, ids.collect())
        })
        .collect()
}

/// For each task whether it is done ahead.
fn chosen(project: &Project, tasks: &[Task], said: &DoneAhead) -> Vec<bool> {
    let mut ahead: Vec<bool> = tasks
        .iter()
        .map(|task| {
            let sent = matches!(task.act, Act::ChooseInside(_));
            said.work.contains(&task.work) && !sent
        })
        .collect();
    // Needs stand before what needs them, so that going backwards sees all users
    // of a late cut before it.
    let mut used_later = vec![false; tasks.len()];
    for (index, task) in tasks.iter().enumerate().rev() {
        let at_the_card = match task.act {
            Act::LateCut(late) => project.late_cuts[late.0].at_the_card,
            _ => false,
        };
        if at_the_card && used_later[index] {
            ahead[index] = false;
        }
        if !ahead[index] {
            for need in &task.needs {
                used_later[need.0] = true;
            }
        }
    }
    ahead
}

/// Notes work that needs other work which is not done ahead, each pair once.
fn note_too_early(
    tasks: &[Task],
    ahead: &[bool],
    said: &DoneAhead,
    notes: &mut Vec<Diagnostic>,
) {
    let mut pairs: BTreeSet<(Work, Work)> = BTreeSet::new();
    for (task, _) in tasks.iter().zip(ahead).filter(|(_, ahead)| **ahead) {
        let missing = task.needs.iter().filter(|need| !ahead[need.0]);
        pairs.extend(missing.map(|need| (task.work, tasks[need.0].work)));
    }
    for (work, needs) in pairs {
        let (work, needs) = (work.word(), needs.word());
        let reader = said.reader.word();
        let message = format!(
            "for `{reader}`, `{work}` is done ahead but needs `{needs}`, which is not"
        );
        notes.push(
            Diagnostic::new(&rules::DONE_AHEAD_TOO_EARLY, said.site, message)
                .help(format!("add `{needs}`, or take `{work}` out")),
        );
    }
}
