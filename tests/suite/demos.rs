//! The demos: read, planned for every reader, and carried out.

use std::collections::BTreeMap;
use std::fs;
use std::path::{Path, PathBuf};
use std::sync::LazyLock;

use leafwright::diag::render;
use leafwright::fonts::Library;
use leafwright::geom::Rect;
use leafwright::layout::Press;
use leafwright::plan::cut::{Becomes, Leaf, PaperCut};
use leafwright::plan::{Good, Plan, PlanOptions, cuts_json, plan};
use leafwright::project::{Project, Reader, Stock};
use leafwright::source::Sources;

use crate::diagnostics::read;
use crate::json_schema::fault;

/// The description of every demo, in the order of their names.
pub(crate) fn paths() -> Vec<PathBuf> {
    let folder = fs::read_dir("demo-data").expect("the demos");
    let mut paths: Vec<_> = folder.map(|it| it.expect("an entry").path()).collect();
    paths.retain(|path| path.extension().is_some_and(|it| it == "yaml"));
    paths.sort();
    assert!(paths.len() >= 2);
    paths
}

/// A press with the fonts that demos bring, besides the committed faces.
pub(crate) fn press() -> Press {
    static LIBRARY: LazyLock<Library> = LazyLock::new(|| {
        let mut library = Library::new();
        for path in paths() {
            let text = fs::read_to_string(&path).expect("a readable demo");
            let (_, outcome) = read(&path.display().to_string(), &text);
            for font in outcome.value.expect("a sound demo").fonts {
                let bytes = fs::read(path.with_file_name(&font.words)).expect("a font");
                library.add(&bytes).expect("a font that can be used");
            }
        }
        library
    });
    Press::with(LIBRARY.clone())
}

/// Every demo that reads, planned for a reader.
fn demos(reader: Reader) -> Vec<(String, Sources, Project, Plan)> {
    paths().iter().map(|path| planned(path, reader)).collect()
}

fn planned(path: &Path, reader: Reader) -> (String, Sources, Project, Plan) {
    let name = path.display().to_string();
    let text = fs::read_to_string(path).expect("a readable demo");
    let (sources, outcome) = read(&name, &text);
    let said = |notes: &[leafwright::diag::Diagnostic]| {
        let notes = notes.iter().map(|it| render::short(it, &sources));
        notes.collect::<Vec<_>>().join("\n")
    };
    let project = outcome.value.unwrap_or_else(|| panic!("{}", said(&outcome.notes)));
    // Any sound plan does here, not only the best.
    let plan = plan(
        &project,
        &PlanOptions { reader, budget: 500_000, ..PlanOptions::default() },
    );
    assert!(plan.notes.is_empty(), "{}", said(&plan.notes));
    (name, sources, project, plan.value.expect("no note is an error"))
}

#[test]
fn every_demo_is_planned_for_every_reader_without_a_note() {
    let schema = fs::read_to_string("templates/cuts.schema.json").expect("the schema");
    let schema = serde_json::from_str(&schema).expect("the schema is JSON");
    for reader in Reader::ALL {
        for (name, sources, project, plan) in demos(reader) {
            let json = cuts_json(&project, &plan, &[], &sources);
            let json = serde_json::from_str(&json).expect("what is written is JSON");
            assert_eq!(fault(&schema, &schema, &json, ""), None, "{name}");
        }
    }
}

#[test]
fn the_sheets_of_every_demo_yield_what_its_kits_need() {
    for reader in Reader::ALL {
        for (name, _, project, plan) in demos(reader) {
            let scraps = |cut: &&PaperCut| {
                matches!(project.papers[cut.paper.0].stock, Stock::Scraps(..))
            };
            for cut in plan.cuts.iter().filter(|cut| !scraps(cut)) {
                let (mut come, mut stepped) = (BTreeMap::new(), BTreeMap::new());
                for pattern in &cut.patterns {
                    for placed in pattern.tree.placements(pattern.sheet) {
                        if let Leaf::Part { part, .. } = placed.leaf {
                            *come.entry(part).or_insert(0) += pattern.copies;
                        }
                    }
                }
                for step in &cut.schedule.steps {
                    let made = step.off.iter().chain([&step.stays]);
                    for (_, becomes) in made {
                        if let Becomes::Part(part) = *becomes {
                            let alike = u32::try_from(step.alike.len()).expect("few") + 1;
                            *stepped.entry(part).or_insert(0) += step.copies * alike;
                        }
                    }
                }
                assert_eq!(come, stepped, "{name}: the steps do what the sheet shows");
                for (index, part) in cut.parts.iter().enumerate() {
                    let comes = come.get(&index).copied().unwrap_or(0);
                    let own = cut.own.is_some();
                    assert!(comes == part.count || own && comes > part.count, "{name}");
                    assert_eq!(part.count, part.per_kit * cut.kits);
                }
            }
            let kits = plan.supplies.kits;
            let cards: u32 = project.cards.iter().map(|card| card.count).sum();
            let bases = plan.supplies.rows.iter().filter_map(|row| match row.what {
                Good::Bases(_) => Some(row.needed),
                _ => None,
            });
            assert!(bases.sum::<u32>() <= cards * kits);
        }
    }
}

#[test]
fn every_layer_of_the_demos_lies_on_its_front() {
    for (name, _, project, plan) in demos(Reader::Class) {
        assert_eq!(plan.fronts.len(), project.cards.len());
        for (front, card) in plan.fronts.iter().zip(&project.cards) {
            assert_eq!(front.layers.len(), card.layers.len());
            for set in &front.layers {
                let whole = Rect::whole(front.size);
                assert_eq!(set.visible().overlap(whole), Some(set.visible()), "{name}");
            }
        }
    }
}

#[test]
fn every_demo_is_worked_in_an_order_that_can_be_kept() {
    for reader in Reader::ALL {
        for (name, _, project, plan) in demos(reader) {
            for (at, task) in plan.work.tasks.iter().enumerate() {
                assert!(task.needs.iter().all(|need| need.0 < at), "{name}: {task:?}");
            }
            let ahead = plan.work.ahead(reader);
            for id in ahead {
                let needs = &plan.work.tasks[id.0].needs;
                assert!(needs.iter().all(|need| ahead.contains(need)), "{name}");
            }
            let packing = plan.work.packing(&project, reader);
            assert!(packing.goods.iter().any(|good| matches!(good, Good::Bases(_))));
        }
    }
}
