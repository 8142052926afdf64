//! What events add up to.

use std::collections::BTreeMap;

use chrono::{DateTime, Duration, NaiveDate, Utc};

use crate::calendar::History;
use crate::calendar::outbox::ReminderAnswer;
use crate::gate::Tightened;
use crate::home_test::TestResult;
use crate::ids::{ItemId, PrecautionId, SessionId, TestId};
use crate::plan::doc::Tier;
use crate::record::{
    Body, Ending, Event, How, LeaveReason, Moment, NotTodayWhy, Pain, SetBackKind, SetRecord, Stamp, StepWhy,
};
use crate::session::{PainAnswer, SetId};
use crate::steps::Stepped;

/// A clock this much behind the newest event is only the network setting it right.
const BEHIND: Duration = Duration::minutes(5);
/// A clock this much ahead of the newest event makes the date worth a question.
const AHEAD: Duration = Duration::days(7);

/// A session, as recorded.
#[derive(Debug, Clone, PartialEq)]
pub struct SessionRecord {
    /// Its id.
    pub id: SessionId,
    /// The day it began, on the device.
    pub day: NaiveDate,
    /// What it was to lead.
    pub items: Vec<ItemId>,
    /// Sets done, corrections applied.
    pub sets: Vec<(SetRecord, How)>,
    /// Items left out, and why.
    pub left: Vec<(ItemId, LeaveReason)>,
    /// Items for which the easier variant was taken.
    pub easier: Vec<ItemId>,
    /// How it ended; `None` while it is open.
    pub ending: Option<Ending>,
    /// Whether anybody answered in it.
    pub confirmed: bool,
    /// Effort, 0 to 10.
    pub effort: Option<u8>,
    /// Answers about pain in it.
    pub pain: Vec<Pain>,
}

impl SessionRecord {
    /// The record of a set.
    pub fn set(&self, set: &SetId) -> Option<&SetRecord> {
        self.sets.iter().find(|(record, _)| record.set == *set).map(|(record, _)| record)
    }
}

/// What was done of an item on a day.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct ItemDay {
    /// Times led, whole or in part.
    pub counted: u16,
    /// Times from memory.
    pub remembered: u16,
    /// Something was done against a gate.
    pub against_gate: bool,
}

/// A home test that was done.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct TestDone {
    /// Which.
    pub test: TestId,
    /// On which day.
    pub day: NaiveDate,
    /// What it came to.
    pub result: TestResult,
    /// How the record came about.
    pub how: How,
    /// Somebody was beside the patient.
    pub helper: bool,
    /// It was not allowed on that day.
    pub against_gate: bool,
}

/// What events add up to. The same events give the same state.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct State {
    /// Sessions, in order.
    pub sessions: Vec<SessionRecord>,
    /// Items by day.
    pub items: BTreeMap<ItemId, BTreeMap<NaiveDate, ItemDay>>,
    /// What "due" depends on.
    pub history: History,
    /// What the patient has tightened.
    pub tightened: Vec<Tightened>,
    /// Set-backs, with their moments.
    pub set_backs: Vec<(DateTime<Utc>, NaiveDate, SetBackKind)>,
    /// Lifts that were ignored when plans were taken in.
    pub lifts_ignored: Vec<PrecautionId>,
    /// Days on which the warning signs were asked, with the gravest that was new or worse.
    pub signs: BTreeMap<NaiveDate, Option<Tier>>,
    /// How many questions were answered on a day; what was told unasked is none.
    pub answers: BTreeMap<NaiveDate, u8>,
    /// Answers about pain, with their days.
    pub pain: Vec<(NaiveDate, Pain)>,
    /// Stops that said to ring and were not followed by a talk with the clinic: the newest moment
    /// and the gravest tier among them.
    pub must_ring: Option<(DateTime<Utc>, Tier)>,
    /// Home tests, in the order in which they were written down.
    pub tests: Vec<TestDone>,
    /// Breaks, both ends included, whoever wanted them.
    pub breaks: Vec<(NaiveDate, NaiveDate)>,
    /// Days on which "not today" was said to a reminder, and why, once that was asked.
    pub not_today: BTreeMap<NaiveDate, Option<NotTodayWhy>>,
    /// The latest moment at which something was begun or done: reminders up to then have had their answer.
    pub active_at: Option<DateTime<Utc>>,
    /// The newest event's stamp.
    pub newest: Option<Stamp>,
    /// By how many seconds the clock jumped, until the patient confirms the date.
    pub clock_jump_s: Option<i64>,
}

/// Whether it says that the patient is at it.
fn is_active(body: &Body) -> bool {
    matches!(
        body,
        Body::SessionStarted { .. }
            | Body::SessionResumed { .. }
            | Body::SetDone { .. }
            | Body::DoneByHand { .. }
    )
}

/// The last day of a break once it was ended: `day` is not in it any more. One of which nothing is left ends
/// before it begins.
pub(crate) fn last_day_once_ended(from: NaiveDate, through: NaiveDate, ended: NaiveDate) -> NaiveDate {
    match ended.pred_opt() {
        Some(before) if (from..=through).contains(&ended) => before,
        _ => through,
    }
}

impl State {
    /// Adds up events.
    pub fn of<'a>(events: impl IntoIterator<Item = &'a Event>) -> Self {
        let mut state = Self::default();
        for event in events {
            state.apply(event);
        }
        state
    }

    /// By how many seconds the clock at a moment has jumped against the record, if that is worth a
    /// question: behind the newest event, or far ahead of it, and not confirmed since.
    pub fn clock_jump_at(&self, at: DateTime<Utc>) -> Option<i64> {
        self.clock_jump_s.or(self.jump_s_at(at))
    }

    fn jump_s_at(&self, at: DateTime<Utc>) -> Option<i64> {
        let since = at - self.newest.as_ref()?.at;
        (since < -BEHIND || since > AHEAD).then(|| since.num_seconds())
    }

    /// The break that a day lies in, the latest that was declared.
    pub fn break_on(&self, day: NaiveDate) -> Option<(NaiveDate, NaiveDate)> {
        self.breaks.iter().rev().find(|(from, through)| (*from..=*through).contains(&day)).copied()
    }

    /// Whether warning signs and pain at rest were both asked on a day.
    pub fn was_asked(&self, day: NaiveDate) -> bool {
        let pain = self.pain.iter().any(|(on, pain)| *on == day && pain.moment == Moment::Before);
        pain && self.signs.contains_key(&day)
    }

    /// The session that is open on a day: begun that day and not ended.
    pub fn open_session(&self, day: NaiveDate) -> Option<&SessionRecord> {
        self.sessions.iter().rev().find(|session| session.day == day && session.ending.is_none())
    }

    /// The first day of a set-back that was not released by this moment.
    pub fn set_back_since(&self, released_until: Option<DateTime<Utc>>) -> Option<NaiveDate> {
        let holds = |at: &DateTime<Utc>| released_until.is_none_or(|until| *at > until);
        self.set_backs.iter().filter(|(at, ..)| holds(at)).map(|(_, day, _)| *day).min()
    }

    /// Applies the next event.
    pub fn apply(&mut self, event: &Event) {
        let day = event.stamp.day();
        self.clock_jump_s = self.clock_jump_s.or(self.jump_s_at(event.stamp.at));
        match &event.body {
            Body::PlanReceived { lifts_ignored, .. } => self.lifts_ignored.extend_from_slice(lifts_ignored),
            Body::DateConfirmed { .. } => self.clock_jump_s = None,
            Body::SessionStarted { session, items } => self.session_started(session, items, day),
            Body::SignsAnswered { gravest, .. } => self.signs_answered(event, *gravest),
            Body::PainAnswered { session, pain } => self.pain_answered(event, session.as_ref(), pain),
            Body::SetDone { session, record, how } => self.set_done(event, session, record, *how),
            Body::SetCorrected { session, set, done } => self.set_corrected(session, set, *done),
            Body::ItemLeft { session, item, reason } => {
                self.in_session(session, |s| s.left.push((item.clone(), *reason)));
                if *reason == LeaveReason::Hurt {
                    self.history.rests.insert(item.clone(), day);
                }
            }
            Body::ItemEasier { session, item } => {
                self.in_session(session, |s| s.easier.push(item.clone()));
            }
            Body::SessionEnded { session, ending, confirmed, effort, words } => {
                self.answered(day, u8::from(effort.is_some()) + u8::from(words.is_some()));
                self.in_session(session, |s| {
                    (s.ending, s.confirmed, s.effort) = (Some(*ending), *confirmed, *effort);
                });
            }
            Body::DoneByHand { item, day, against_gate, .. } => {
                let on = self.item_day(item, *day);
                on.remembered += 1;
                on.against_gate |= against_gate;
                self.count_time(item, *day, &event.stamp);
            }
            Body::CareDone { care } => {
                let days = self.history.care.entry(care.care.clone()).or_default();
                *days.entry(care.day).or_default() += 1;
            }
            Body::Tightened { item } => {
                if !self.tightened.iter().any(|t| t.item == *item) {
                    self.tightened.push(Tightened { item: item.clone(), since: day });
                }
            }
            Body::TighteningEnded { item } => self.tightened.retain(|t| t.item != *item),
            Body::SetBack { what, day } => {
                self.set_backs.push((event.stamp.at, *day, *what));
                self.stopped(event, Some(Tier::RingToday));
            }
            Body::SessionResumed { .. } => {}
            Body::BreakDeclared { from, through, .. } => self.breaks.push((*from, *through)),
            Body::BreakEnded { day } => {
                for (from, through) in &mut self.breaks {
                    *through = last_day_once_ended(*from, *through, *day);
                }
                self.breaks.retain(|(from, through)| from <= through);
            }
            Body::HomeTestDone { test, day, result, how, helper, against_gate } => {
                self.test_done(TestDone {
                    test: test.clone(),
                    day: *day,
                    result: result.clone(),
                    how: *how,
                    helper: *helper,
                    against_gate: *against_gate,
                });
            }
            Body::SpokeToClinic { .. } => {
                self.must_ring = None;
                self.history.spoke = self.history.spoke.max(Some(day));
            }
            Body::DoseStepped { item, from, to, list, why } => {
                self.answered(day, u8::from(*why == StepWhy::Chose && to > from));
                self.stepped(item, Stepped { to: *to, from: *from, list: *list, on: day, sessions: 0 });
            }
            Body::StepKept { item, .. } => {
                self.answered(day, 1);
                self.history.kept.insert(item.clone(), self.sessions.len());
            }
            Body::ReminderAnswered { day, answer, .. } => {
                if *answer == ReminderAnswer::NotToday {
                    self.not_today.entry(*day).or_default();
                }
            }
            Body::NotTodayBecause { day, why } => {
                self.not_today.insert(*day, Some(*why));
            }
        }
        if is_active(&event.body) {
            self.active_at = self.active_at.max(Some(event.stamp.at));
        }
        self.newest = Some(event.stamp.clone());
    }

    fn in_session(&mut self, id: &SessionId, change: impl FnOnce(&mut SessionRecord)) {
        if let Some(session) = self.sessions.iter_mut().rev().find(|session| session.id == *id) {
            change(session);
        }
    }

    fn item_day(&mut self, item: &ItemId, day: NaiveDate) -> &mut ItemDay {
        self.items.entry(item.clone()).or_default().entry(day).or_default()
    }

    /// Counts a time done. What was done on another day says nothing of when it was last done.
    fn count_time(&mut self, item: &ItemId, day: NaiveDate, stamp: &Stamp) {
        let days = self.history.done.entry(item.clone()).or_default();
        *days.entry(day).or_default() += 1;
        if day == stamp.day() {
            let last = self.history.last_done.entry(item.clone()).or_insert(stamp.at);
            *last = (*last).max(stamp.at);
        }
    }

    fn test_done(&mut self, done: TestDone) {
        self.tests.retain(|known| (&known.test, known.day) != (&done.test, done.day));
        self.tests.push(done);
    }

    fn session_started(&mut self, id: &SessionId, items: &[ItemId], day: NaiveDate) {
        self.sessions.push(SessionRecord {
            id: id.clone(),
            day,
            items: items.to_vec(),
            sets: Vec::new(),
            left: Vec::new(),
            easier: Vec::new(),
            ending: None,
            confirmed: false,
            effort: None,
            pain: Vec::new(),
        });
    }

    fn signs_answered(&mut self, event: &Event, gravest: Option<Tier>) {
        let day = event.stamp.day();
        self.answered(day, 1);
        let worst = self.signs.entry(day).or_insert(gravest);
        // The gravest tier is the least, and none at all the mildest.
        *worst = match (*worst, gravest) {
            (Some(a), Some(b)) => Some(a.min(b)),
            (a, b) => a.or(b),
        };
        if matches!(gravest, Some(Tier::Emergency | Tier::RingToday)) {
            self.stopped(event, gravest);
        }
    }

    fn answered(&mut self, day: NaiveDate, answers: u8) {
        let sum = self.answers.entry(day).or_default();
        *sum = sum.saturating_add(answers);
    }

    /// Keeps the latest step. Of several between two sessions, the first says what was last done.
    fn stepped(&mut self, item: &ItemId, stepped: Stepped) {
        let sessions = self.sessions.len();
        let before =
            self.history.steps.get(item).filter(|s| s.sessions == sessions && s.list == stepped.list);
        let from = before.map_or(stepped.from, |before| before.from);
        self.history.steps.insert(item.clone(), Stepped { from, sessions, ..stepped });
    }

    fn stopped(&mut self, event: &Event, tier: Option<Tier>) {
        let tier = tier.unwrap_or(Tier::RingToday);
        let gravest = self.must_ring.map_or(tier, |(_, known)| known.min(tier));
        self.must_ring = Some((event.stamp.at, gravest));
    }

    fn pain_answered(&mut self, event: &Event, session: Option<&SessionId>, pain: &Pain) {
        let day = event.stamp.day();
        self.answered(day, u8::from(pain.moment != Moment::During));
        if let Some(session) = session {
            self.in_session(session, |s| s.pain.push(pain.clone()));
        }
        self.pain.push((day, pain.clone()));
        if let (PainAnswer::StopExercise, Some(item)) = (pain.answer, &pain.item) {
            self.history.rests.insert(item.clone(), day);
        }
        if pain.answer == PainAnswer::StopToday {
            self.stopped(event, Some(Tier::RingToday));
        }
    }

    /// A set done. The first set of an item in a session makes it a time done that day.
    fn set_done(&mut self, event: &Event, id: &SessionId, record: &SetRecord, how: How) {
        let item = &record.set.item;
        let mut session_day = None;
        self.in_session(id, |session| {
            let first = !session.sets.iter().any(|(known, _)| known.set.item == *item);
            session.sets.push((record.clone(), how));
            session_day = Some(session.day).filter(|_| first);
        });
        if let Some(day) = session_day {
            self.item_day(item, day).counted += 1;
            self.count_time(item, day, &event.stamp);
        }
    }

    /// Corrections only ever go downwards.
    fn set_corrected(&mut self, id: &SessionId, set: &SetId, done: u16) {
        self.in_session(id, |session| {
            if let Some((record, _)) = session.sets.iter_mut().rev().find(|(record, _)| record.set == *set) {
                record.done = record.done.min(done);
            }
        });
    }
}
