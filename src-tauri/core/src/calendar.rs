//! What is due when? Days, weeks, stages, and what each form of "when" asks of a day.
//!
//! Day 0 is the day of the operation or injury. Week n is days 7(n-1) … 7n-1, so week 1 is days 0
//! to 6 and "through week 12" ends with day 83 and opens on day 84.

use std::collections::BTreeMap;

use chrono::{DateTime, Datelike, Days, Duration, NaiveDate, Utc};

use crate::gate::{Gate, GateDay, Gates};
use crate::ids::{CareId, EpisodeId, ItemId, StageId};
use crate::plan::Plan;
use crate::plan::doc::{Dose, Item, Stage, StageItem, Weekday, When};
use crate::steps::{Stand, StepOf, Stepped};

mod civil;
pub mod front;
pub mod outbox;
mod reminders;
mod slots;

pub use civil::{Civil, Zone};
pub use reminders::{Kind, Reminder, SILENT_DAYS, reminders};
pub use slots::{Ahead, MOST_TIMES, Quiet, Slot, TimesWish, minutes_of, slots};

/// The civil date in a zone at an instant.
pub fn date_in(zone: &dyn Zone, at: DateTime<Utc>) -> NaiveDate {
    (at.naive_utc() + Duration::seconds(zone.offset_s(at).into())).date()
}

/// One instant, as the two days it is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Today {
    /// The instant.
    pub now: DateTime<Utc>,
    /// Seconds east of UTC on the device.
    pub offset_s: i32,
    /// The civil date in the device's zone: what a session is done on.
    pub session_day: NaiveDate,
    /// The earlier of the dates in the device's and the clinic's zone: what gates are judged by.
    pub gate_day: NaiveDate,
}

impl Today {
    /// The days of an instant.
    pub fn new(now: DateTime<Utc>, device: &dyn Zone, clinic: &dyn Zone) -> Self {
        let session_day = date_in(device, now);
        Self {
            now,
            offset_s: device.offset_s(now),
            session_day,
            gate_day: session_day.min(date_in(clinic, now)),
        }
    }
}

/// The first and last day of a span of weeks, both included.
pub fn week_span(day_zero: NaiveDate, from_week: u16, through_week: u16) -> (NaiveDate, NaiveDate) {
    let day = |n: u64| day_zero.checked_add_days(Days::new(n)).unwrap_or(NaiveDate::MAX);
    let first = 7 * u64::from(from_week.saturating_sub(1));
    let last = (7 * u64::from(through_week)).saturating_sub(1);
    (day(first), day(last))
}

/// The last day of "through week n".
pub fn last_day_of_week(day_zero: NaiveDate, week: u16) -> NaiveDate {
    week_span(day_zero, week, week).1
}

/// The week of a day, counted from 1; `None` before day 0.
pub fn week_of(day_zero: NaiveDate, day: NaiveDate) -> Option<u16> {
    let days = u64::try_from((day - day_zero).num_days()).ok()?;
    u16::try_from(days / 7 + 1).ok()
}

/// When the patient is awake, in minutes after midnight.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Waking {
    /// From.
    pub from_min: u16,
    /// To.
    pub to_min: u16,
}

impl Default for Waking {
    /// Eight in the morning to nine at night: common practice, no source.
    fn default() -> Self {
        Self { from_min: 8 * 60, to_min: 21 * 60 }
    }
}

/// What was done so far, as far as "due" depends on it.
#[derive(Debug, Clone, Default, PartialEq)]
pub struct History {
    /// Times done, by item and day.
    pub done: BTreeMap<ItemId, BTreeMap<NaiveDate, u16>>,
    /// The latest time an item was done.
    pub last_done: BTreeMap<ItemId, DateTime<Utc>>,
    /// Items that hurt, and the day on which they were left for that.
    pub rests: BTreeMap<ItemId, NaiveDate>,
    /// Times of care, by care item and day.
    pub care: BTreeMap<CareId, BTreeMap<NaiveDate, u16>>,
    /// The latest day on which the patient spoke to the clinic.
    pub spoke: Option<NaiveDate>,
    /// Where items last stepped to.
    pub steps: BTreeMap<ItemId, Stepped>,
    /// After how many sessions an offer of one up was last answered with "not now".
    pub kept: BTreeMap<ItemId, usize>,
}

impl History {
    /// Times an item was done on a day.
    pub fn times(&self, item: &ItemId, day: NaiveDate) -> u16 {
        self.done.get(item).and_then(|days| days.get(&day)).copied().unwrap_or(0)
    }

    /// The latest day before this one on which anything was done.
    fn last_day_before(&self, day: NaiveDate) -> Option<NaiveDate> {
        self.done.values().filter_map(|days| days.range(..day).next_back()).map(|(on, _)| *on).max()
    }

    /// The latest day after one, up to this one, that was the first after a break by the plan's return
    /// rule. The first day back counts, whatever was done on it so far.
    pub(crate) fn back_on(&self, plan: &Plan, day: NaiveDate, after: NaiveDate) -> Option<NaiveDate> {
        let after_days = i64::from(plan.doc().return_dose.after_days);
        let mut back = day;
        while let Some(before) = self.last_day_before(back).filter(|_| back > after) {
            if (back - before).num_days() >= after_days {
                return Some(back);
            }
            back = before;
        }
        None
    }

    /// Days in a span on which an item was done.
    fn days_done(&self, item: &ItemId, from: NaiveDate, to: NaiveDate) -> usize {
        if from > to {
            return 0;
        }
        self.done.get(item).map_or(0, |days| days.range(from..=to).filter(|(_, n)| **n > 0).count())
    }
}

/// Where an episode stands on a day.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct EpisodeDay {
    /// The episode.
    pub episode: EpisodeId,
    /// Days since day 0; `None` if that is not known, or still to come.
    pub day: Option<u16>,
    /// The week, counted from 1.
    pub week: Option<u16>,
}

/// An item that a day asks for or offers.
#[derive(Debug, Clone, PartialEq)]
pub struct DueItem {
    /// The item.
    pub item: ItemId,
    /// The stage that asks for it.
    pub stage: StageId,
    /// When it is asked for.
    pub when: When,
    /// How much, today.
    pub dose: Dose,
    /// Which step of its signed doses that is; `None` if it is no such dose.
    pub step: Option<StepOf>,
    /// How many times today; 0 if it is only offered, or not asked for on this day.
    pub times: u16,
    /// How many times at most: as often as asked, or the daily most of an as-needed item.
    pub most: u16,
    /// How many times it was done today.
    pub done: u16,
    /// Not before this moment, by the plan's spacing.
    pub not_before: Option<DateTime<Utc>>,
    /// It hurt today, and is left for today.
    pub rests_today: bool,
    /// Whether it may be done.
    pub gate: Gate,
}

impl DueItem {
    /// Whether it is asked for now: allowed, not yet done as often as asked, and not too soon after
    /// the last time.
    pub fn is_due_at(&self, now: DateTime<Utc>) -> bool {
        self.gate.is_open() && !self.rests_today && self.done < self.times && !self.is_too_soon(now)
    }

    /// Whether the plan's spacing has not passed yet.
    pub fn is_too_soon(&self, now: DateTime<Utc>) -> bool {
        self.not_before.is_some_and(|from| now < from)
    }

    /// Whether it was done today as often as the plan allows.
    pub fn is_enough_today(&self) -> bool {
        self.done >= self.most
    }
}

/// A care item that a day asks for.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct DueCare {
    /// The care item.
    pub care: CareId,
    /// Times today.
    pub times: u8,
    /// Times done today.
    pub done: u16,
}

/// How long there was no session.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Away {
    /// Not long.
    No,
    /// So long that the plan's return dose applies.
    Restart,
    /// So long that the clinic is to be rung first.
    RingFirst,
}

/// What a day asks.
#[derive(Debug, Clone, PartialEq)]
pub struct DueDay {
    /// Where each episode stands.
    pub episodes: Vec<EpisodeDay>,
    /// Items of the stages this day lies in, in the plan's order.
    pub items: Vec<DueItem>,
    /// Care items.
    pub care: Vec<DueCare>,
    /// How long there was no session.
    pub away: Away,
    /// The plan's last day has passed.
    pub over: bool,
}

/// The first day after this one on which a stage asks for an item.
pub fn next_day_of(plan: &Plan, id: &ItemId, after: NaiveDate) -> Option<NaiveDate> {
    let tomorrow = after.succ_opt()?;
    let of_stage = |stage: &Stage| {
        let zero = plan.episode(&stage.episode)?.day_zero.date()?;
        let (first, last) = week_span(zero, stage.from_week, stage.through_week);
        (last >= tomorrow).then(|| first.max(tomorrow))
    };
    let asks = |stage: &&Stage| stage.items.iter().any(|entry| entry.item == *id);
    plan.doc().stages.iter().filter(asks).filter_map(of_stage).min()
}

/// What a day asks. `session_day` is the civil date on the device; `at` judges gates, and while the
/// plan's day stands still no stage begins either.
pub fn due(
    gates: &Gates<'_>,
    session_day: NaiveDate,
    at: &GateDay,
    history: &History,
    waking: Waking,
) -> DueDay {
    let plan = gates.plan;
    let doc = plan.doc();
    let plan_day = if at.stands_still().is_some() { session_day.min(at.day()) } else { session_day };
    let over = session_day > doc.head.last_day;
    let away = away(plan, session_day, history);
    let asked = Asked { plan, session_day, history, waking, away };
    let mut items: Vec<DueItem> = Vec::new();
    for stage in doc.stages.iter().filter(|stage| !over && stage_holds(plan, stage, plan_day)) {
        for entry in &stage.items {
            let known = items.iter().any(|due| due.item == entry.item);
            if let Some(item) = plan.item(&entry.item).filter(|_| !known) {
                items.push(asked.item(gates, at, stage, entry, item));
            }
        }
    }
    items.sort_by_key(|due| plan.item(&due.item).map(|item| item.order));
    DueDay {
        episodes: episode_days(plan, session_day),
        items,
        care: care_due(plan, plan_day, session_day, over, history),
        away,
        over,
    }
}

fn episode_days(plan: &Plan, day: NaiveDate) -> Vec<EpisodeDay> {
    let of = |e: &crate::plan::doc::Episode| EpisodeDay {
        episode: e.id.clone(),
        day: e.day_zero.date().and_then(|zero| u16::try_from((day - zero).num_days()).ok()),
        week: e.day_zero.date().and_then(|zero| week_of(zero, day)),
    };
    plan.doc().episodes.iter().map(of).collect()
}

fn weeks_hold(plan: &Plan, episode: &EpisodeId, from: u16, through: u16, day: NaiveDate) -> bool {
    let zero = plan.episode(episode).and_then(|episode| episode.day_zero.date());
    zero.is_some_and(|zero| {
        let (first, last) = week_span(zero, from, through);
        (first..=last).contains(&day)
    })
}

fn stage_holds(plan: &Plan, stage: &Stage, day: NaiveDate) -> bool {
    weeks_hold(plan, &stage.episode, stage.from_week, stage.through_week, day)
}

fn care_due(plan: &Plan, plan_day: NaiveDate, day: NaiveDate, over: bool, history: &History) -> Vec<DueCare> {
    let holds = |care: &&crate::plan::doc::CareItem| {
        !over && weeks_hold(plan, &care.episode, care.from_week, care.through_week, plan_day)
    };
    let due = |care: &crate::plan::doc::CareItem| DueCare {
        care: care.id.clone(),
        times: care.times,
        done: history.care.get(&care.id).and_then(|days| days.get(&day)).copied().unwrap_or(0),
    };
    plan.doc().care.iter().filter(holds).map(due).collect()
}

/// How long there was no session before this day: the first day back counts as one, whatever was
/// done on it so far. A talk with the clinic since then takes the place of "ring first".
pub(crate) fn away(plan: &Plan, day: NaiveDate, history: &History) -> Away {
    let rule = &plan.doc().return_dose;
    let days_since = |on: Option<NaiveDate>| on.map(|on| (day - on).num_days());
    let gap = days_since(history.last_day_before(day)).unwrap_or(0);
    let silent = days_since(history.spoke).map_or(gap, |since| since.min(gap));
    if silent >= i64::from(rule.ring_after_days) {
        Away::RingFirst
    } else if gap >= i64::from(rule.after_days) {
        Away::Restart
    } else {
        Away::No
    }
}

struct Asked<'a> {
    plan: &'a Plan,
    session_day: NaiveDate,
    history: &'a History,
    waking: Waking,
    away: Away,
}

impl Asked<'_> {
    fn item(
        &self,
        gates: &Gates<'_>,
        at: &GateDay,
        stage: &Stage,
        entry: &StageItem,
        item: &Item,
    ) -> DueItem {
        let (dose, step) = self.dose(entry, item);
        let dose = in_round(self.plan, &stage.id, &item.id, dose);
        let when = entry.when.as_ref().unwrap_or(&item.when);
        let times = self.times(when, item, stage);
        let spacing = hours_between(when);
        let last = self.history.last_done.get(&item.id);
        DueItem {
            item: item.id.clone(),
            stage: stage.id.clone(),
            gate: gates.item(item, &dose, at),
            when: when.clone(),
            dose,
            step,
            times,
            most: if let When::AsNeeded { daily_most } = when { (*daily_most).into() } else { times },
            done: self.history.times(&item.id, self.session_day),
            rests_today: self.history.rests.get(&item.id) == Some(&self.session_day),
            not_before: last.filter(|_| spacing > 0).map(|last| *last + Duration::hours(spacing.into())),
        }
    }

    /// The dose: the plan's return dose after a gap, else what the stage says, the step at which a dose
    /// that moves stands, or what the item says.
    fn dose(&self, entry: &StageItem, item: &Item) -> (Dose, Option<StepOf>) {
        let restart = &self.plan.doc().return_dose.doses;
        if self.away != Away::No
            && let Some(restart) = restart.iter().find(|restart| restart.item == item.id)
        {
            return (restart.dose.clone(), None);
        }
        if let Some(dose) = &entry.dose {
            return (dose.clone(), None);
        }
        match Stand::of(self.plan, item, self.history, self.session_day) {
            Some(stand) => (stand.dose().clone(), Some(stand.step_of())),
            None => (item.dose.clone(), None),
        }
    }

    fn times(&self, when: &When, item: &Item, stage: &Stage) -> u16 {
        match when {
            When::TimesADay { times, .. } => (*times).into(),
            When::EveryWakingHours { hours } => {
                let awake = self.waking.to_min.saturating_sub(self.waking.from_min);
                awake / (60 * u16::from(*hours)) + 1
            }
            When::Weekdays { days, times } => {
                if days.contains(&weekday(self.session_day)) {
                    (*times).into()
                } else {
                    0
                }
            }
            When::DaysAWeek { days, times } => self.days_a_week(*days, *times, item, stage),
            When::AsNeeded { .. } => 0,
        }
    }

    /// So many days of the episode's week, none in a row: not after a day on which it was done, and
    /// not once the week has had its days.
    fn days_a_week(&self, days: u8, times: u8, item: &Item, stage: &Stage) -> u16 {
        let day = self.session_day;
        let zero = self.plan.episode(&stage.episode).and_then(|episode| episode.day_zero.date());
        let Some(week) = zero.and_then(|zero| week_of(zero, day)) else { return 0 };
        let first = week_span(zero.unwrap_or(day), week, week).0;
        let Some(yesterday) = day.pred_opt() else { return 0 };
        let done_yesterday = self.history.times(&item.id, yesterday) > 0;
        let done_this_week = self.history.days_done(&item.id, first, yesterday);
        if done_yesterday || done_this_week >= usize::from(days) { 0 } else { times.into() }
    }
}

/// The least hours between two times, by the plan.
fn hours_between(when: &When) -> u8 {
    match when {
        When::TimesADay { least_hours_between, .. } => *least_hours_between,
        When::EveryWakingHours { hours } => *hours,
        _ => 0,
    }
}

/// A dose as a stage has it done: an item of a round has the round's sets and rest.
pub(crate) fn in_round(plan: &Plan, stage: &StageId, item: &ItemId, dose: Dose) -> Dose {
    let stage = plan.doc().stages.iter().find(|known| known.id == *stage);
    let round = stage.and_then(|stage| stage.rounds.iter().find(|round| round.items.contains(item)));
    match round {
        Some(round) => Dose { sets: round.rounds, rest_s: round.rest_s, ..dose },
        None => dose,
    }
}

/// The day of the week of a date.
pub fn weekday(day: NaiveDate) -> Weekday {
    match day.weekday() {
        chrono::Weekday::Mon => Weekday::Monday,
        chrono::Weekday::Tue => Weekday::Tuesday,
        chrono::Weekday::Wed => Weekday::Wednesday,
        chrono::Weekday::Thu => Weekday::Thursday,
        chrono::Weekday::Fri => Weekday::Friday,
        chrono::Weekday::Sat => Weekday::Saturday,
        chrono::Weekday::Sun => Weekday::Sunday,
    }
}

#[cfg(test)]
mod tests;
