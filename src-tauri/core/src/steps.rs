//! At which of its signed doses does an item stand, and where may it go from there?
//!
//! A graded dose and a ramp are both a list of doses, easiest first, that the clinic signed as a whole: a
//! [`Ladder`]. An item stands at one of them. Steps are counted from 1.
//!
//! - **Up** is one step, only with the patient's yes, by the clinic's rule ([`Look::up`]).
//! - **Down** is one step, at once, and nothing is asked: after pain, after a bad morning, by choice.
//! - **After a break** of the plan's `after_days` it stands at its start again, or lower if it stood lower.
//! - **Another list** in a new plan begins at its own start.
//!
//! An item with both a graded dose and a ramp goes by its graded dose.

use chrono::NaiveDate;

use crate::calendar::History;
use crate::digest::Digest;
use crate::ids::ItemId;
use crate::plan::Plan;
use crate::plan::doc::{Count, Dose, Graded, Grows, Item, Ramp, Tempo};
use crate::record::{Body, Moment, State, StepWhy};

mod up;

pub use up::{Look, NoUp, Up};

/// The doses that were signed for an item, easiest first.
#[derive(Debug, Clone, PartialEq)]
pub struct Ladder {
    doses: Vec<Dose>,
    start: u16,
    list: Digest,
}

impl Ladder {
    /// Of an item; `None` if its dose does not move.
    pub fn of(item: &Item) -> Option<Self> {
        let (doses, start) = match (&item.graded, item.ramp) {
            (Some(Graded { doses, start, .. }), _) => (doses.clone(), u16::from(*start)),
            (None, Some(ramp)) => (ramp_doses(&item.dose, ramp), 1),
            (None, None) => return None,
        };
        // A repeated movement under the same id is another exercise: its list is another one too.
        let list = serde_json::to_vec(&(&item.movement, start, &doses)).expect("doses are plain data");
        (!doses.is_empty()).then(|| Self { doses, start, list: Digest::of(&list) })
    }

    /// How many steps it has.
    pub fn steps(&self) -> u16 {
        u16::try_from(self.doses.len()).unwrap_or(u16::MAX)
    }

    /// The step to begin with.
    pub fn start(&self) -> u16 {
        self.start.clamp(1, self.steps())
    }

    /// The dose of a step; of one beyond the list, its nearest end.
    pub fn dose(&self, step: u16) -> &Dose {
        &self.doses[usize::from(step.clamp(1, self.steps())) - 1]
    }

    /// Which list it is: the same as long as movement, start and doses are.
    pub fn list(&self) -> Digest {
        self.list
    }
}

/// Every dose of a ramp, from its start to its cap.
fn ramp_doses(base: &Dose, ramp: Ramp) -> Vec<Dose> {
    let mut values: Vec<u16> = (ramp.start..ramp.cap).step_by(usize::from(ramp.step.max(1))).collect();
    values.push(ramp.cap);
    let with = |value: u16| {
        let mut dose = base.clone();
        set_amount(&mut dose, ramp.grows, value);
        dose
    };
    values.into_iter().map(with).collect()
}

fn set_amount(dose: &mut Dose, grows: Grows, value: u16) {
    match grows {
        Grows::Sets => dose.sets = u8::try_from(value).unwrap_or(u8::MAX),
        Grows::Repetitions => dose.repetitions = Some(Count::Exactly(value)),
        Grows::HoldS => dose.tempo = dose.tempo.map(|tempo| Tempo { hold_s: value, ..tempo }),
        Grows::Minutes => dose.minutes = Some(value),
    }
}

/// Where an item last stepped to, as recorded.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Stepped {
    /// To which step.
    pub to: u16,
    /// From which; of several steps between two sessions, from where the first of them went.
    pub from: u16,
    /// Of which list.
    pub list: Digest,
    /// On which day.
    pub on: NaiveDate,
    /// After how many sessions.
    pub sessions: usize,
}

/// Which step of how many a dose is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct StepOf {
    /// The step, counted from 1.
    pub step: u16,
    /// How many there are.
    pub of: u16,
}

/// Where an item stands on a day.
#[derive(Debug, Clone, PartialEq)]
pub struct Stand {
    /// Its doses.
    pub ladder: Ladder,
    /// The step it stands at.
    pub step: u16,
    /// The record of its last step within this list.
    stepped: Option<Stepped>,
}

impl Stand {
    /// Of an item on a day; `None` if its dose does not move.
    pub fn of(plan: &Plan, item: &Item, history: &History, day: NaiveDate) -> Option<Self> {
        let ladder = Ladder::of(item)?;
        let stepped = history.steps.get(&item.id).copied().filter(|stepped| stepped.list == ladder.list());
        let start = ladder.start();
        let reached = stepped.map_or(start, |stepped| stepped.to.clamp(1, ladder.steps()));
        let since = stepped.map_or(NaiveDate::MIN, |stepped| stepped.on);
        let is_over_start = reached > start;
        let is_back = is_over_start && history.back_on(plan, day, since).is_some();
        Some(Self { step: if is_back { start } else { reached }, ladder, stepped })
    }

    /// Which step of how many.
    pub fn step_of(&self) -> StepOf {
        StepOf { step: self.step, of: self.ladder.steps() }
    }

    /// The dose of its step.
    pub fn dose(&self) -> &Dose {
        self.ladder.dose(self.step)
    }

    fn to(&self, item: &ItemId, to: u16, why: StepWhy) -> Change {
        Change { item: item.clone(), from: self.step, to, list: self.ladder.list(), why }
    }
}

/// A step to be recorded.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Change {
    /// Which item.
    pub item: ItemId,
    /// From which step.
    pub from: u16,
    /// To which step.
    pub to: u16,
    /// Of which list.
    pub list: Digest,
    /// Why.
    pub why: StepWhy,
}

impl From<Change> for Body {
    fn from(change: Change) -> Self {
        let Change { item, from, to, list, why } = change;
        Self::DoseStepped { item, from, to, list, why }
    }
}

/// Why there is no step down.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum NoDown {
    /// The item's dose does not move.
    NoSteps,
    /// It stands at the least that was signed.
    Least,
}

/// One down by choice: never asked about, never refused but where nothing smaller was signed.
pub fn down(plan: &Plan, item: &Item, history: &History, day: NaiveDate) -> Result<Change, NoDown> {
    let stand = Stand::of(plan, item, history, day).ok_or(NoDown::NoSteps)?;
    if stand.step <= 1 { Err(NoDown::Least) } else { Ok(stand.to(&item.id, stand.step - 1, StepWhy::Chose)) }
}

/// One down because of pain during the session under way, once a session at most.
pub fn down_for_pain(plan: &Plan, item: &Item, state: &State, day: NaiveDate, level: u8) -> Option<Change> {
    item.graded.as_ref().filter(|graded| level > graded.down_pain_over)?;
    let stand = Stand::of(plan, item, &state.history, day)?;
    let moved = stand.stepped.is_some_and(|stepped| stepped.sessions == state.sessions.len());
    (stand.step > 1 && !moved).then(|| stand.to(&item.id, stand.step - 1, StepWhy::Pain))
}

/// The level at rest before the session of the day before, if there was one: what the next morning's
/// pain is held against.
pub fn level_before_yesterday(state: &State, day: NaiveDate) -> Option<u8> {
    let yesterday = day.pred_opt()?;
    let trained = state.sessions.iter().any(|session| session.day == yesterday && !session.sets.is_empty());
    let before = |(on, pain): &&(NaiveDate, _)| *on == yesterday && is_before(pain);
    let level = state.pain.iter().rev().find(before).and_then(|(_, pain)| pain.level);
    level.filter(|_| trained)
}

fn is_before(pain: &crate::record::Pain) -> bool {
    pain.moment == Moment::Before
}

/// Whether the next morning's pain has risen so far that the plan says: one down, tell the clinic.
pub fn rose_overnight(plan: &Plan, before: u8, morning: u8) -> bool {
    morning >= before.saturating_add(plan.doc().pain.next_morning_rise)
}

/// One down of everything done the day before, to below what was done then.
pub fn down_next_morning(plan: &Plan, state: &State, day: NaiveDate) -> Vec<Change> {
    let yesterday = day.pred_opt().unwrap_or(day);
    let was_done = |item: &Item| {
        let of_yesterday = state.sessions.iter().filter(|session| session.day == yesterday);
        of_yesterday.flat_map(|session| &session.sets).any(|(record, _)| record.set.item == item.id)
    };
    let change = |item: &Item| {
        let stand = Stand::of(plan, item, &state.history, day)?;
        let since = stand.stepped.filter(|stepped| stepped.sessions == state.sessions.len());
        let done = since.map_or(stand.step, |stepped| stepped.from);
        let to = stand.step.min(done.saturating_sub(1)).max(1);
        (to < stand.step).then(|| stand.to(&item.id, to, StepWhy::NextMorning))
    };
    plan.doc().items.iter().filter(|item| was_done(item)).filter_map(change).collect()
}

/// What a break did: items that stand lower than their last step was. Recorded when they are next done.
pub fn after_break(plan: &Plan, history: &History, day: NaiveDate) -> Vec<Change> {
    let change = |item: &Item| {
        let stand = Stand::of(plan, item, history, day)?;
        let recorded = stand.stepped.filter(|stepped| stepped.to > stand.step)?;
        Some(Change { from: recorded.to, ..stand.to(&item.id, stand.step, StepWhy::Break) })
    };
    plan.doc().items.iter().filter_map(change).collect()
}

/// What a new plan does: an item whose list is another one begins at its start.
pub fn in_new_plan(old: &Plan, new: &Plan, history: &History, day: NaiveDate) -> Vec<Change> {
    let change = |item: &Item| {
        let ladder = Ladder::of(item)?;
        let before = old.item(&item.id).and_then(|item| Stand::of(old, item, history, day));
        let same = before.as_ref().is_some_and(|before| before.ladder.list() == ladder.list());
        let known = history.done.contains_key(&item.id) || history.steps.contains_key(&item.id);
        let (from, to) = (before.map_or(ladder.start(), |before| before.step), ladder.start());
        let change = Change { item: item.id.clone(), from, to, list: ladder.list(), why: StepWhy::NewPlan };
        (known && !same).then_some(change)
    };
    new.doc().items.iter().filter_map(change).collect()
}

#[cfg(test)]
mod tests;
