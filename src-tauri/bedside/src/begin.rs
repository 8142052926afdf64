//! May a session begin, and what is asked first?

use std::collections::BTreeMap;

use chrono::NaiveDate;
use sendaluna_core::calendar::{Away, DueItem, due};
use sendaluna_core::gate::Gate;
use sendaluna_core::ids::{ItemId, SessionId, SignId};
use sendaluna_core::plan::UNWELL;
use sendaluna_core::plan::doc::{Dose, Tier, When};
use sendaluna_core::record::{Body, By, Distress, Ending, Moment, Pain, SessionRecord, SetBackKind};
use sendaluna_core::session::{
    Arranged, PainAnswer, Runner, SetId, answer_at_rest, answer_to_distress_at_rest, arrange,
};
use serde::Serialize;

use crate::clock::Now;
use crate::error::BedsideError;
use crate::guide::Guide;
use crate::home::{Bedside, Known};

/// What is asked before a session.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Before {
    /// Today's date must be confirmed, because the clock has jumped.
    pub confirm_date: Option<NaiveDate>,
    /// The questions.
    pub questions: Questions,
    /// Next morning's pain is asked too.
    pub morning: bool,
    /// A session of today that can be gone on with.
    pub open_session: Option<SessionId>,
}

/// The questions before a session. Few, or people learn to say no.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "kebab-case")]
pub enum Questions {
    /// The first session of the day: the warning signs, and pain at rest.
    SignsAndPain,
    /// Later that day: one tap, "nothing new or worse".
    OneTap,
    /// Hourly items ask nothing.
    None,
}

impl Bedside {
    /// What is asked before a session of everything due, or of one item.
    pub fn before(&self, only: Option<&ItemId>, now: &Now) -> Result<Before, BedsideError> {
        let known = self.known()?;
        let today = known.today(now.at).session_day;
        let hourly = only
            .and_then(|id| known.plan.item(id))
            .is_some_and(|item| matches!(item.when, When::EveryWakingHours { .. }));
        let questions = match (known.state.was_asked(today), hourly) {
            (false, _) => Questions::SignsAndPain,
            (true, true) => Questions::None,
            (true, false) => Questions::OneTap,
        };
        Ok(Before {
            confirm_date: known.state.clock_jump_at(now.at).map(|_| today),
            questions,
            morning: known.asks_morning(now),
            open_session: known.state.open_session(today).map(|session| session.id.clone()),
        })
    }

    /// The patient confirms today's date.
    pub fn confirm_date(&mut self, day: NaiveDate, now: &Now) -> Result<(), BedsideError> {
        let known = self.known()?;
        if day != known.today(now.at).session_day {
            return Err(BedsideError::DateDiffers);
        }
        if let Some(jump_s) = known.state.clock_jump_at(now.at) {
            self.record(now, By::Patient, Body::DateConfirmed { day, jump_s })?;
        }
        Ok(())
    }

    /// The warning signs that are new or worse; none is a good answer. [`UNWELL`] is always among
    /// those that can be chosen. Returns the gravest tier.
    pub fn answer_signs(
        &mut self,
        signs: &[SignId],
        by: By,
        now: &Now,
    ) -> Result<Option<Tier>, BedsideError> {
        let known = self.known()?;
        let gravest = gravest(&known, signs)?;
        let of_plan = &known.plan.doc().warning_signs;
        let set_back = of_plan.iter().any(|sign| sign.set_back && signs.contains(&sign.id));
        let what = match gravest {
            Some(Tier::Emergency) => Some(SetBackKind::EmergencySign),
            _ if set_back => Some(SetBackKind::MarkedSign),
            _ => None,
        };
        let day = known.today(now.at).gate_day;
        let mut bodies = vec![Body::SignsAnswered { signs: signs.to_vec(), gravest }];
        bodies.extend(what.map(|what| Body::SetBack { what, day }));
        self.record_all(now, by, bodies)?;
        Ok(gravest)
    }

    /// Pain at rest, before a session, 0 to 10.
    pub fn answer_pain_before(&mut self, level: u8, by: By, now: &Now) -> Result<PainAnswer, BedsideError> {
        if level > 10 {
            return Err(BedsideError::FigureOutOfRange);
        }
        let known = self.known()?;
        let answer = answer_at_rest(&known.plan.doc().pain, level);
        let pain = Pain::of_level(Moment::Before, level, answer);
        self.record(now, by, Body::PainAnswered { session: None, pain })?;
        Ok(answer)
    }

    /// Distress that a helper sees before a session, in place of pain at rest.
    pub fn answer_distress_before(&mut self, seen: Distress, by: By, now: &Now) -> Result<(), BedsideError> {
        let answer = answer_to_distress_at_rest(seen);
        let pain = Pain {
            moment: Moment::Before,
            level: None,
            distress: Some(seen),
            kind: None,
            place: None,
            item: None,
            answer,
        };
        self.record(now, by, Body::PainAnswered { session: None, pain })
    }

    /// The patient has spoken to the clinic: after a stop, or after a long break.
    pub fn spoke_to_clinic(&mut self, by: By, now: &Now) -> Result<(), BedsideError> {
        let about = self.known()?.state.must_ring.map(|(about, _)| about);
        self.record(now, by, Body::SpokeToClinic { about })?;
        Ok(())
    }

    /// Whether a session of everything due, or of one item, could begin now, questions apart: said
    /// before any question is asked, so that nobody answers for nothing.
    pub fn check_session(&self, only: Option<&ItemId>, now: &Now) -> Result<(), BedsideError> {
        let known = self.known()?;
        if let Some((_, tier)) = known.state.must_ring {
            return Err(BedsideError::MustRing(tier));
        }
        let open = known.state.open_session(known.today(now.at).session_day);
        if only.is_none() && open.is_some() {
            return Ok(());
        }
        self.chosen(&known, only, now).map(|_| ())
    }

    /// Whether an item could be started now, questions apart.
    pub fn check_item(&self, id: &ItemId, now: &Now) -> Result<(), BedsideError> {
        self.chosen(&self.known()?, Some(id), now).map(|_| ())
    }

    /// Begins a session of everything that is due and allowed, or of one item. An older session
    /// that was never ended is closed as a part.
    pub fn begin(&mut self, only: Option<&ItemId>, by: By, now: &Now) -> Result<Guide, BedsideError> {
        let known = self.known()?;
        check_may_begin(&known, now)?;
        let today = known.today(now.at).session_day;
        let chosen = self.chosen(&known, only, now)?;
        let arranged = arrange(&known.plan, self.library(), &chosen.iter().collect::<Vec<_>>());
        if arranged.parts.is_empty() {
            return Err(BedsideError::NothingDue);
        }
        for stale in known.state.sessions.iter().filter(|s| s.ending.is_none()) {
            let ending = Body::SessionEnded {
                session: stale.id.clone(),
                ending: Ending::Part,
                confirmed: false,
                effort: None,
                words: None,
            };
            self.record(now, By::Program, ending)?;
        }
        self.record_each(now, known.after_break(now))?;
        let session = new_session_id()?;
        let items = arranged.parts.iter().map(|part| part.item.clone()).collect();
        self.record(now, by, Body::SessionStarted { session: session.clone(), items })?;
        Ok(guide(&known, session, today, by, Runner::new(&arranged)))
    }

    /// Goes on with today's open session from the last finished set. Asks every gate again.
    pub fn go_on(&mut self, by: By, now: &Now) -> Result<Guide, BedsideError> {
        let known = self.known()?;
        check_may_begin(&known, now)?;
        let today = known.today(now.at).session_day;
        let open = known.state.open_session(today).ok_or(BedsideError::NoOpenSession)?;
        let runner = self.runner_of_open(&known, open, now);
        let session = open.id.clone();
        self.record(now, by, Body::SessionResumed { session: session.clone() })?;
        let mut guide = guide(&known, session, today, by, runner);
        for item in &open.easier {
            if self.easier_is_open(item, now)? {
                guide.keep_easier(item.clone());
            }
        }
        Ok(guide)
    }

    /// What is left of today's open session. What a newer plan no longer has, or what is shut by now,
    /// is not led.
    pub(crate) fn left_of_open(&self, known: &Known, now: &Now) -> Vec<DueItem> {
        let Some(open) = known.state.open_session(known.today(now.at).session_day) else { return Vec::new() };
        let wanted = |id: &&ItemId| !open.left.iter().any(|(left, _)| left == *id);
        let due = open.items.iter().filter(wanted).filter_map(|id| self.due_item(known, id, now).ok());
        due.filter(|due| due.gate.is_open() && !due.rests_today).collect()
    }

    /// What is left to lead of today's open session.
    pub(crate) fn runner_of_open(&self, known: &Known, open: &SessionRecord, now: &Now) -> Runner {
        let chosen = self.left_of_open(known, now);
        let arranged: Arranged = arrange(&known.plan, self.library(), &chosen.iter().collect::<Vec<_>>());
        Runner::going_on(&arranged, |part, turn| {
            let is_it = |set: &SetId| set.item == part.item && set.set == turn.set && set.sides == turn.sides;
            open.sets.iter().any(|(record, _)| is_it(&record.set))
        })
    }

    pub(crate) fn chosen(
        &self,
        known: &Known,
        only: Option<&ItemId>,
        now: &Now,
    ) -> Result<Vec<DueItem>, BedsideError> {
        let day = self.due_day(known, now);
        let chosen = match only {
            Some(id) => vec![self.one(known, id, now)?],
            None => day.items.into_iter().filter(|due| due.is_due_at(now.at)).collect(),
        };
        match day.away {
            Away::RingFirst => Err(BedsideError::AwayTooLong),
            _ if chosen.is_empty() => Err(BedsideError::NothingDue),
            _ => Ok(chosen),
        }
    }

    /// One item, if its gate, its daily most and its spacing allow.
    fn one(&self, known: &Known, id: &ItemId, now: &Now) -> Result<DueItem, BedsideError> {
        let due = self.due_item(known, id, now)?;
        match due.gate {
            Gate::NotYet(not_yet) => {
                Err(BedsideError::NotYet { what: id.to_string(), not_yet: Box::new(not_yet) })
            }
            Gate::Open if due.rests_today => Err(BedsideError::RestsToday),
            Gate::Open if due.is_enough_today() => Err(BedsideError::EnoughToday),
            Gate::Open if due.is_too_soon(now.at) => {
                Err(BedsideError::TooSoon(known.local_time(due.not_before.unwrap_or(now.at))))
            }
            Gate::Open => Ok(due),
        }
    }

    /// Today's doses, by item.
    pub(crate) fn doses_today(&self, known: &Known, now: &Now) -> BTreeMap<ItemId, Dose> {
        self.due_day(known, now).items.into_iter().map(|due| (due.item, due.dose)).collect()
    }

    pub(crate) fn due_day(&self, known: &Known, now: &Now) -> sendaluna_core::calendar::DueDay {
        let gates = known.gates(self.library());
        let at = known.gate_day(now.at);
        due(&gates, known.today(now.at).session_day, &at, &known.state.history, known.waking())
    }

    /// One item with today's dose and gate. An item of no stage of today is not yet, or no longer,
    /// part of the plan: it cannot be started, gate or no gate.
    fn due_item(&self, known: &Known, id: &ItemId, now: &Now) -> Result<DueItem, BedsideError> {
        let item = known.item(id)?;
        if let Some(due) = self.due_day(known, now).items.into_iter().find(|due| due.item == *id) {
            return Ok(due);
        }
        let dose = known.dose_apart(item, now);
        let gate = known.gates(self.library()).item(item, &dose, &known.gate_day(now.at));
        match gate {
            Gate::NotYet(not_yet) => {
                Err(BedsideError::NotYet { what: id.to_string(), not_yet: Box::new(not_yet) })
            }
            Gate::Open => Err(BedsideError::NotInPlanNow(known.next_day_of(id, now))),
        }
    }
}

/// The gravest tier of warning signs; [`UNWELL`] is always known.
pub(crate) fn gravest(known: &Known, signs: &[SignId]) -> Result<Option<Tier>, BedsideError> {
    let of_plan = &known.plan.doc().warning_signs;
    let tier = |id: &SignId| match of_plan.iter().find(|sign| sign.id == *id) {
        Some(sign) if id.as_str() == UNWELL => Ok(sign.tier.min(Tier::RingToday)),
        Some(sign) => Ok(sign.tier),
        None if id.as_str() == UNWELL => Ok(Tier::RingToday),
        None => Err(BedsideError::NoSuchSign(id.to_string())),
    };
    let tiers = signs.iter().map(tier).collect::<Result<Vec<_>, _>>()?;
    Ok(tiers.into_iter().min())
}

fn guide(known: &Known, session: SessionId, day: NaiveDate, by: By, runner: Runner) -> Guide {
    let before = known.state.pain.iter().rev().find(|(on, p)| *on == day && p.moment == Moment::Before);
    Guide::new(session, by, runner, before.and_then(|(_, pain)| pain.level))
}

pub(crate) fn check_may_begin(known: &Known, now: &Now) -> Result<(), BedsideError> {
    let today = known.today(now.at).session_day;
    if known.state.clock_jump_at(now.at).is_some() {
        return Err(BedsideError::DateNotConfirmed(today));
    }
    if let Some((_, tier)) = known.state.must_ring {
        return Err(BedsideError::MustRing(tier));
    }
    if !known.state.was_asked(today) {
        return Err(BedsideError::SignsNotAsked);
    }
    Ok(())
}

fn new_session_id() -> Result<SessionId, BedsideError> {
    let mut bytes = [0u8; 8];
    getrandom::fill(&mut bytes).map_err(|e| sendaluna_store::StoreError::Other(e.to_string()))?;
    let text = format!("s{:016x}", u64::from_be_bytes(bytes));
    SessionId::new(text).map_err(|e| sendaluna_store::StoreError::Other(e.to_string()).into())
}
