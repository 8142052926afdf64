//! One up and one down, within the doses that the clinic signed. Up only with the patient's yes; down at
//! once, and never asked about.

use sendaluna_core::calendar::{Away, DueDay};
use sendaluna_core::ids::ItemId;
use sendaluna_core::plan::Plan;
use sendaluna_core::plan::doc::{Dose, Item};
use sendaluna_core::record::{Body, By, Moment, Pain};
use sendaluna_core::session::PainAnswer;
use sendaluna_core::steps::{
    Change, Ladder, Look, NoDown, NoUp, Stand, Up, after_break, down, down_next_morning,
    level_before_yesterday, rose_overnight,
};
use sendaluna_words::Words;
use serde::Deserialize;

use crate::clock::Now;
use crate::error::BedsideError;
use crate::home::{Bedside, Known};
use crate::view::step::{MorningView, StepOfferView, StepView};
use crate::view::window::WrittenView;
use sendaluna_say::Speaker;

/// A patient answers so many questions a day at most: common practice, no source.
const MOST_ANSWERS: u8 = 8;

/// Where a dose is to step.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Way {
    /// One up: the patient's yes.
    Up,
    /// One down.
    Down,
    /// "Not now": it stays where it is.
    Stay,
}

impl Bedside {
    /// One up, one down, or "not now".
    pub fn step(
        &mut self,
        id: &ItemId,
        way: Way,
        by: By,
        words: &Words,
        now: &Now,
    ) -> Result<WrittenView, BedsideError> {
        let known = self.known()?;
        let item = known.item(id)?;
        let day = known.today(now.at).session_day;
        let history = &known.state.history;
        let (body, said) = match way {
            Way::Up => (self.checked_up(&known, id, now)?.change.into(), "steps-up-done"),
            Way::Down => (down(&known.plan, item, history, day)?.into(), "steps-down-done"),
            Way::Stay => {
                let stand = Stand::of(&known.plan, item, history, day).ok_or(BedsideError::NoSteps)?;
                (Body::StepKept { item: id.clone(), at: stand.step }, "steps-kept")
            }
        };
        self.record(now, by, body)?;
        let known = self.known()?;
        let speaker = Speaker::new(words, Some(&known.plan));
        let item = known.item(id)?;
        let name = speaker.name(self.library(), &known.plan, &item.movement);
        let dose = Stand::of(&known.plan, item, &known.state.history, day)
            .map_or_else(String::new, |stand| speaker.dose(stand.dose()));
        Ok(WrittenView {
            said: words.say(said, &[("name", name.into()), ("dose", dose.into())]),
            against: false,
        })
    }

    /// The one up that the patient is asked about now, if the clinic's rule allows one, it was not
    /// answered with "not now", and the day has not asked enough already.
    pub fn step_offer(&self, words: &Words, now: &Now) -> Result<Option<StepOfferView>, BedsideError> {
        let known = self.known()?;
        if !known.may_ask(now) || known.keeps_steps(now) {
            return Ok(None);
        }
        let due = self.due_day(&known, now);
        let view = |look: &Look<'_>| self.offer_view(&known, &look.offer()?, words);
        Ok(self.look_up(&known, &due, now, view))
    }

    fn offer_view(&self, known: &Known, up: &Up, words: &Words) -> Option<StepOfferView> {
        let speaker = Speaker::new(words, Some(&known.plan));
        let item = known.plan.item(&up.change.item)?;
        let name = speaker.name(self.library(), &known.plan, &item.movement);
        let args = [("name", name.into()), ("dose", speaker.dose(&up.dose).into())];
        let said = words.say("steps-offer", &args);
        Some(StepOfferView { item: item.id.clone(), said, figure: crate::figure::of_item(&known.plan, item) })
    }

    /// Whether it is asked how hard an item was: it strengthens, or one up depends on it.
    pub fn asks_effort(&self, plan: &Plan, id: &ItemId) -> bool {
        let Some(item) = plan.item(id) else { return false };
        let found = self.library().find(plan, &item.movement);
        let depends = item.graded.as_ref().is_some_and(|graded| graded.up_effort_at_most.is_some());
        depends || found.is_some_and(|found| found.movement().strengthens)
    }

    fn checked_up(&self, known: &Known, id: &ItemId, now: &Now) -> Result<Up, BedsideError> {
        if known.state.clock_jump_at(now.at).is_some() {
            return Err(BedsideError::DateNotConfirmed(known.today(now.at).session_day));
        }
        if known.keeps_steps(now) {
            return Err(BedsideError::UpNotYet);
        }
        let due = self.due_day(known, now);
        let up = self.look_up(known, &due, now, |look| look.up(id));
        up.map_err(|why| match why {
            NoUp::NoSteps => BedsideError::NoSteps,
            NoUp::Top => BedsideError::TopStep,
            NoUp::RestsToday => BedsideError::RestsToday,
            NoUp::Gated(not_yet) => BedsideError::NotYet { what: id.to_string(), not_yet },
            NoUp::Rings => match known.state.must_ring {
                Some((_, tier)) => BedsideError::MustRing(tier),
                None => BedsideError::AwayTooLong,
            },
            NoUp::NotOfToday | NoUp::StandsStill | NoUp::AfterBreak | NoUp::RuleNotMet => {
                BedsideError::UpNotYet
            }
        })
    }

    fn look_up<T>(&self, known: &Known, due: &DueDay, now: &Now, ask: impl FnOnce(&Look<'_>) -> T) -> T {
        let (gates, at) = (known.gates(self.library()), known.gate_day(now.at));
        let day = known.today(now.at).session_day;
        ask(&Look { gates: &gates, state: &known.state, due, day, at: &at })
    }

    /// Where an item stands, for its page; `None` if its dose does not move, or not today.
    pub(crate) fn step_view(
        &self,
        known: &Known,
        due: &DueDay,
        item: &Item,
        speaker: &Speaker<'_>,
        now: &Now,
    ) -> Option<StepView> {
        let day = known.today(now.at).session_day;
        let stand = Stand::of(&known.plan, item, &known.state.history, day)?;
        let other_dose = due.items.iter().any(|due| due.item == item.id && due.step.is_none());
        let restarts = known.plan.doc().return_dose.doses.iter().any(|restart| restart.item == item.id);
        let is_back = other_dose && restarts && due.away != Away::No;
        if other_dose && !is_back {
            return None;
        }
        let at = stand.step_of();
        let args = [("step", at.step.into()), ("steps", at.of.into())];
        let said = speaker.words.say(if is_back { "steps-at-after-break" } else { "steps-at" }, &args);
        let may = known.state.clock_jump_at(now.at).is_none() && !known.keeps_steps(now);
        let up = may.then(|| self.look_up(known, due, now, |look| look.up(&item.id)).ok()).flatten();
        let up = up.and_then(|up| self.offer_view(known, &up, speaker.words)).map(|offer| offer.said);
        Some(StepView { step: at.step, of: at.of, said, up, can_down: at.step > 1 })
    }

    /// The next morning's pain, 0 to 10: asked once, and held against the level before yesterday's session.
    /// Where it has risen as far as the plan says, everything done then goes one down.
    pub fn answer_pain_morning(
        &mut self,
        level: u8,
        by: By,
        words: &Words,
        now: &Now,
    ) -> Result<Option<MorningView>, BedsideError> {
        if level > 10 {
            return Err(BedsideError::FigureOutOfRange);
        }
        let known = self.known()?;
        let day = known.today(now.at).session_day;
        let before = level_before_yesterday(&known.state, day);
        let rose = before.is_some_and(|before| rose_overnight(&known.plan, before, level));
        let changes = if rose { down_next_morning(&known.plan, &known.state, day) } else { Vec::new() };
        let pain = Pain::of_level(Moment::NextMorning, level, PainAnswer::GoOn);
        let mut bodies = vec![(by, Body::PainAnswered { session: None, pain })];
        bodies.extend(changes.iter().cloned().map(|change| (By::Program, change.into())));
        self.record_each(now, bodies)?;
        Ok(rose.then(|| self.morning_view(&known.plan, &changes, words)))
    }

    fn morning_view(&self, plan: &Plan, changes: &[Change], words: &Words) -> MorningView {
        let mut said = vec![words.say("morning-rose", &[])];
        said.extend(changes.iter().map(|change| self.say_step(plan, change, "morning-stepped", words)));
        MorningView { said, nobody_sees: words.say("caution-nobody-sees", &[]) }
    }

    /// One down because it hurt, in words.
    pub fn stepped_said(&self, plan: &Plan, change: &Change, words: &Words) -> String {
        self.say_step(plan, change, "steps-down-hurt", words)
    }

    /// A step in words: which exercise, and how much from now on.
    fn say_step(&self, plan: &Plan, change: &Change, id: &str, words: &Words) -> String {
        let speaker = Speaker::new(words, Some(plan));
        let item = plan.item(&change.item);
        let name = item.map_or_else(String::new, |item| speaker.name(self.library(), plan, &item.movement));
        let dose = item.and_then(Ladder::of).map(|ladder| speaker.dose(ladder.dose(change.to)));
        words.say(id, &[("name", name.into()), ("dose", dose.unwrap_or_default().into())])
    }
}

impl Known {
    /// Whether next morning's pain is asked now: once, before the first session of the day after one.
    pub(crate) fn asks_morning(&self, now: &Now) -> bool {
        let day = self.today(now.at).session_day;
        let was = |(on, pain): &(chrono::NaiveDate, Pain)| *on == day && pain.moment == Moment::NextMorning;
        let asked = self.state.pain.iter().any(was);
        !asked && !self.state.was_asked(day) && level_before_yesterday(&self.state, day).is_some()
    }

    /// Whether another question may be asked today.
    fn may_ask(&self, now: &Now) -> bool {
        let day = self.today(now.at).session_day;
        self.state.answers.get(&day).is_none_or(|answers| *answers < MOST_ANSWERS)
            && self.state.clock_jump_at(now.at).is_none()
    }

    /// While a session of today can be gone on with, its doses stay as they are.
    fn keeps_steps(&self, now: &Now) -> bool {
        self.state.open_session(self.today(now.at).session_day).is_some()
    }

    /// What a break did to doses that had gone up, to be recorded with the first thing done after it.
    pub(crate) fn after_break(&self, now: &Now) -> Vec<(By, Body)> {
        let changes = after_break(&self.plan, &self.state.history, self.today(now.at).session_day);
        changes.into_iter().map(|change| (By::Program, change.into())).collect()
    }

    /// A dose of an item on a day that does not ask for it.
    pub(crate) fn dose_apart(&self, item: &Item, now: &Now) -> Dose {
        let day = self.today(now.at).session_day;
        let stand = Stand::of(&self.plan, item, &self.state.history, day);
        stand.map_or_else(|| item.dose.clone(), |stand| stand.dose().clone())
    }
}

impl From<NoDown> for BedsideError {
    fn from(why: NoDown) -> Self {
        match why {
            NoDown::NoSteps => Self::NoSteps,
            NoDown::Least => Self::LeastStep,
        }
    }
}
