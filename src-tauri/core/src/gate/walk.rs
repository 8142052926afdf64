//! The clinic's check before signing: every item, through every day of the plan, against every
//! precaution.

use chrono::NaiveDate;

use crate::calendar::week_span;
use crate::facts::{Manner, Performed};
use crate::gate::{Cause, Measured, Reason, breach, near_limit};
use crate::ids::{ItemId, MovementId, StageId};
use crate::library::{Found, Library, Movement};
use crate::plan::doc::{Dose, Item, PlanDoc, Stage};
use crate::precaution::{InForce, Precaution, Standing};

/// An item that a stage asks for while something forbids it.
#[derive(Debug, Clone, PartialEq)]
pub struct Contradiction {
    /// The stage.
    pub stage: StageId,
    /// The item.
    pub item: ItemId,
    /// The movement: the item's own or its easier variant.
    pub movement: MovementId,
    /// The first day on which it is asked for and forbidden; `None` if the episode has no day 0.
    pub from: Option<NaiveDate>,
    /// The last such day.
    pub through: Option<NaiveDate>,
    /// What forbids it.
    pub reason: Reason,
    /// Movements of the same family, or easier and harder ones, that nothing forbids on those days.
    pub would_pass: Vec<MovementId>,
}

/// An item that comes within 10° of a range limit.
#[derive(Debug, Clone, PartialEq)]
pub struct NearLimit {
    /// The item.
    pub item: ItemId,
    /// The movement.
    pub movement: MovementId,
    /// The precaution.
    pub precaution: Precaution,
    /// How close it comes.
    pub measured: Measured,
}

/// What the walk found.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Walk {
    /// Contradictions: they stop the signing.
    pub contradictions: Vec<Contradiction>,
    /// Close to a limit: the clinic is warned.
    pub near: Vec<NearLimit>,
}

/// Walks a plan's document, filled or not, through all its days.
pub fn walk(doc: &PlanDoc, library: &Library, standing: &Standing) -> Walk {
    let mut found = Walk::default();
    for stage in &doc.stages {
        let span = stage_span(doc, stage);
        for entry in &stage.items {
            let Some(item) = doc.items.iter().find(|item| item.id == entry.item) else { continue };
            let graded = item.graded.iter().flat_map(|graded| &graded.doses);
            let restart = doc.return_dose.doses.iter().filter(|r| r.item == item.id).map(|r| &r.dose);
            let mut doses = vec![entry.dose(item)];
            doses.extend(graded.chain(restart));
            let step = Step { doc, library, standing, stage, item, span };
            let movements = [Some(&item.movement), item.easier.as_ref().map(|easier| &easier.movement)];
            for movement in movements.into_iter().flatten() {
                for dose in &doses {
                    step.look(movement, dose, &mut found);
                }
            }
        }
    }
    found
}

/// One item of one stage.
struct Step<'a> {
    doc: &'a PlanDoc,
    library: &'a Library,
    standing: &'a Standing,
    stage: &'a Stage,
    item: &'a Item,
    span: Option<(NaiveDate, NaiveDate)>,
}

impl Step<'_> {
    fn look(&self, movement: &MovementId, dose: &Dose, found: &mut Walk) {
        let known = self.library.find_in(self.doc, movement);
        let Some((known, manner)) = known.zip(self.doc.manner(self.item, dose)) else {
            let cause = Cause::MovementUnknown(movement.clone());
            self.contradict(movement, Reason { cause, opens: None }, Vec::new(), found);
            return;
        };
        let unseen = !self.standing.movements_seen.contains(&known.movement().digest());
        if matches!(known, Found::Own(_)) && unseen && !self.standing.in_force.is_empty() {
            let reason = Reason { cause: Cause::MovementNotSeen, opens: None };
            self.contradict(movement, reason, Vec::new(), found);
        }
        let performed = Performed::new(known.movement(), &manner);
        for p in &self.standing.in_force {
            if let Some(measured) = breach(&p.precaution, &performed) {
                let precaution = Box::new(p.precaution.clone());
                let cause = Cause::Precaution { precaution, set_by: p.set_by.clone(), measured };
                let would_pass = self.would_pass(known.movement(), &manner);
                self.contradict(movement, Reason { cause, opens: p.opens }, would_pass, found);
            } else if let Some(measured) = near_limit(&p.precaution, &performed)
                && self.gated_span(p.opens).is_some_and(|span| span.is_none_or(|(from, to)| from <= to))
            {
                let near = NearLimit {
                    item: self.item.id.clone(),
                    movement: movement.clone(),
                    precaution: p.precaution.clone(),
                    measured,
                };
                if !found.near.contains(&near) {
                    found.near.push(near);
                }
            }
        }
    }

    /// The days of the stage before an opening day: `None` if there are none, `Some(None)` if the
    /// episode has no day 0.
    #[expect(clippy::option_option, reason = "no such day, and no such calendar, differ")]
    fn gated_span(&self, opens: Option<NaiveDate>) -> Option<Option<(NaiveDate, NaiveDate)>> {
        let Some((from, to)) = self.span else { return Some(None) };
        let last = opens.map_or(to, |opens| to.min(opens.pred_opt().unwrap_or(opens)));
        (from <= last).then_some(Some((from, last)))
    }

    /// Relatives of a movement that break no precaution that holds when the stage begins, done in the
    /// same manner.
    fn would_pass(&self, movement: &Movement, manner: &Manner<'_>) -> Vec<MovementId> {
        let leads = |id: &Option<MovementId>, to: &Movement| id.as_ref() == Some(&to.id);
        let is_kin = |other: &&Movement| {
            other.id != movement.id
                && (other.family == movement.family
                    || leads(&movement.easier, other)
                    || leads(&movement.harder, other)
                    || leads(&other.harder, movement))
        };
        let holds = |p: &&InForce| self.gated_span(p.opens).is_some();
        let passes = |other: &&Movement| {
            let performed = Performed::new(other, manner);
            !self.standing.in_force.iter().filter(holds).any(|p| breach(&p.precaution, &performed).is_some())
        };
        let all = self.library.iter().map(|other| -> &Movement { other });
        all.filter(is_kin).filter(passes).map(|other| other.id.clone()).collect()
    }

    fn contradict(
        &self,
        movement: &MovementId,
        reason: Reason,
        would_pass: Vec<MovementId>,
        found: &mut Walk,
    ) {
        let Some(span) = self.gated_span(reason.opens) else { return };
        let contradiction = Contradiction {
            stage: self.stage.id.clone(),
            item: self.item.id.clone(),
            movement: movement.clone(),
            from: span.map(|(from, _)| from),
            through: span.map(|(_, through)| through),
            reason,
            would_pass,
        };
        if !found.contradictions.contains(&contradiction) {
            found.contradictions.push(contradiction);
        }
    }
}

fn stage_span(doc: &PlanDoc, stage: &Stage) -> Option<(NaiveDate, NaiveDate)> {
    let episode = doc.episodes.iter().find(|episode| episode.id == stage.episode)?;
    let (from, to) = week_span(episode.day_zero.date()?, stage.from_week, stage.through_week);
    Some((from, to.min(doc.head.last_day)))
}
