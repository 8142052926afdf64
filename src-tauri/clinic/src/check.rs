//! The check before signing: every problem of the document, and every item held against every
//! precaution for every day of the plan.

use std::collections::BTreeSet;

use sendaluna_core::gate::{Walk, walk};
use sendaluna_core::library::{Library, Movement};
use sendaluna_core::plan::doc::PlanDoc;
use sendaluna_core::precaution::{Accepted, IgnoredLift, Precaution, Rule, Standing};
use sendaluna_core::problem::{Problem, Problems};
use sendaluna_zones::IanaZone;

/// What the check found.
#[derive(Debug, Clone, Default)]
pub struct CheckReport {
    /// Problems of the document.
    pub problems: Vec<Problem>,
    /// Contradictions, and what comes close to a limit.
    pub walk: Walk,
    /// Lifts that will have no effect.
    pub ignored_lifts: Vec<IgnoredLift>,
    /// What the statements add up to.
    pub standing: Standing,
}

impl CheckReport {
    /// Nothing stands against signing.
    pub fn is_clean(&self) -> bool {
        self.problems.is_empty() && self.walk.contradictions.is_empty()
    }
}

/// Checks a plan, filled or not, against statements.
pub fn check(doc: &PlanDoc, library: &Library, statements: &[Accepted]) -> CheckReport {
    let standing = Standing::of(statements);
    let mut problems = sendaluna_core::plan::problems(doc);
    problems.extend(own_problems(doc, library, statements));
    let walk = if problems.is_empty() { walk(doc, library, &standing) } else { Walk::default() };
    CheckReport { problems, walk, ignored_lifts: standing.ignored_lifts.clone(), standing }
}

/// What only shows beside the zone database, the library and the statements.
fn own_problems(doc: &PlanDoc, library: &Library, statements: &[Accepted]) -> Vec<Problem> {
    let mut p = Problems::default();
    if IanaZone::named(&doc.head.zone).is_none() {
        p.add("head.zone", "zone-unknown", vec![("zone", doc.head.zone.clone())]);
    }
    for (i, item) in doc.items.iter().enumerate() {
        let easier = item.easier.as_ref().map(|easier| ("easier.movement", &easier.movement));
        for (field, movement) in [("movement", &item.movement)].into_iter().chain(easier) {
            if library.find_in(doc, movement).is_none() {
                p.add(&format!("items[{i}].{field}"), "unknown-id", vec![("id", movement.to_string())]);
            }
        }
    }
    for (i, own) in doc.movements.iter().enumerate() {
        if library.get(&own.movement.id).is_some() {
            p.add(
                &format!("movements[{i}].movement.id"),
                "repeated-id",
                vec![("id", own.movement.id.to_string())],
            );
        }
    }
    for (i, episode) in doc.episodes.iter().enumerate() {
        let said = statements.iter().flat_map(|s| &s.doc.episodes).filter(|said| said.id == episode.id);
        let differs = said.into_iter().any(|said| {
            said.side != episode.side
                || (said.day_zero.date().is_some() && said.day_zero.date() != episode.day_zero.date())
        });
        if differs {
            p.add(&format!("episodes[{i}]"), "episode-differs", vec![("id", episode.id.to_string())]);
        }
    }
    if statements.iter().any(|s| s.doc.person != doc.head.person) {
        p.add("head.person", "person-differs", vec![]);
    }
    check_statements(&mut p, doc, library, statements);
    if !statements.iter().any(Accepted::has_looked) {
        p.add("statements", "statement-none", vec![]);
    }
    p.into_found()
}

/// Statements against the plan that rests on them: a family that no movement has would shut
/// nothing, a lift of what nobody set would lift nothing, changed content under an old id is
/// refused by every device, and the patient reads the reasons in the plan's languages.
fn check_statements(p: &mut Problems, doc: &PlanDoc, library: &Library, statements: &[Accepted]) {
    let set: Vec<&Precaution> = statements.iter().flat_map(|s| &s.doc.precautions).collect();
    for (i, precaution) in set.iter().enumerate() {
        let place = format!("precautions.{}", precaution.id);
        let own = doc.movements.iter().map(|own| &own.movement);
        let shipped = library.iter().map(|movement| -> &Movement { movement });
        if let Some(family) = unknown_family(precaution, shipped.chain(own)) {
            p.add(&format!("{place}.rule.family"), "unknown-family", family);
        }
        if set[..i].iter().any(|earlier| earlier.id == precaution.id && earlier != precaution) {
            p.add(&place, "precaution-changed", vec![("id", precaution.id.to_string())]);
        }
        for lang in doc.head.languages.iter().filter(|lang| !precaution.why.has(lang)) {
            p.add(&format!("{place}.why"), "language-missing", vec![("lang", lang.to_string())]);
        }
    }
    for lift in statements.iter().flat_map(|s| &s.doc.lifts) {
        if !set.iter().any(|precaution| precaution.id == lift.precaution) {
            p.add("lifts", "unknown-id", vec![("id", lift.precaution.to_string())]);
        }
    }
}

/// The family that a precaution names and no movement has, with the families that there are.
pub fn unknown_family<'a>(
    precaution: &Precaution,
    movements: impl Iterator<Item = &'a Movement>,
) -> Option<Vec<(&'static str, String)>> {
    let Rule::Movement { family } = &precaution.rule else { return None };
    let known: BTreeSet<&str> = movements.map(|movement| movement.family.as_str()).collect();
    let said =
        || vec![("id", family.to_string()), ("known", known.iter().copied().collect::<Vec<_>>().join(", "))];
    (!known.contains(family.as_str())).then(said)
}
