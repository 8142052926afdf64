//! At which times of a day does the plan ask for something?

use std::collections::BTreeMap;

use chrono::{DateTime, Duration, NaiveDate, NaiveDateTime, NaiveTime, Timelike, Utc};

use super::{DueItem, History, Waking, due, hours_between, weekday};
use crate::gate::{GateDay, Gates};
use crate::ids::ItemId;
use crate::plan::doc::{Weekday, When};

/// At most so many times a day can be chosen.
pub const MOST_TIMES: usize = 24;

/// How long after getting up the first time lies, and how long before bed the last: common practice,
/// no source.
const AFTER_WAKING_MIN: u16 = 60;
const BEFORE_BED_MIN: u16 = 120;
/// Times that are worked out lie on quarters of an hour.
const QUARTER_MIN: u16 = 15;

/// A part of the day; it may go over midnight.
#[derive(Debug, Clone, Copy, PartialEq, Eq, serde::Serialize, serde::Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Quiet {
    /// From.
    pub from: NaiveTime,
    /// To, not included.
    pub to: NaiveTime,
}

impl Quiet {
    /// The hours of sleep.
    pub fn asleep(waking: Waking) -> Self {
        Self { from: time_of(waking.to_min), to: time_of(waking.from_min) }
    }

    /// Whether a time lies in it. From a time to the same time is no time at all.
    pub fn holds(&self, time: NaiveTime) -> bool {
        if self.from <= self.to {
            (self.from..self.to).contains(&time)
        } else {
            time >= self.from || time < self.to
        }
    }
}

/// When the patient wants to be reminded.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct TimesWish {
    /// Times of the day, in order; none if they are to be worked out from the plan.
    pub times: Vec<NaiveTime>,
    /// Days of the week without a reminder.
    pub days_off: Vec<Weekday>,
    /// When it is quiet, but for times that were chosen; `None` for the hours of sleep.
    pub quiet: Option<Quiet>,
    /// Breaks, both ends included.
    pub breaks: Vec<(NaiveDate, NaiveDate)>,
}

impl TimesWish {
    /// When it is quiet.
    pub fn quiet(&self, waking: Waking) -> Quiet {
        self.quiet.unwrap_or_else(|| Quiet::asleep(waking))
    }

    fn is_free(&self, day: NaiveDate) -> bool {
        self.days_off.contains(&weekday(day))
            || self.breaks.iter().any(|(from, through)| (*from..=*through).contains(&day))
    }
}

/// A time of a day at which the plan asks for something.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Slot {
    /// The day.
    pub day: NaiveDate,
    /// The time on the wall.
    pub time: NaiveTime,
    /// The patient chose that time.
    pub chosen: bool,
    /// It is only for what is done every so many waking hours.
    pub hourly: bool,
    /// What is asked for, in the plan's order.
    pub items: Vec<ItemId>,
}

/// What the days ahead are worked out from.
#[derive(Clone, Copy)]
pub struct Ahead<'a> {
    /// Plan and gates.
    pub gates: &'a Gates<'a>,
    /// The day by which gates are judged on a day.
    pub gate_day: &'a dyn Fn(NaiveDate) -> GateDay,
    /// The time on the wall of an instant.
    pub wall: &'a dyn Fn(DateTime<Utc>) -> NaiveDateTime,
    /// What was done so far.
    pub history: &'a History,
    /// When the patient is awake.
    pub waking: Waking,
    /// When they want to be reminded.
    pub wish: &'a TimesWish,
}

/// The slots of days, the first of them today. What was done today takes its slots away; the days
/// after it are worked out as if every slot were followed.
pub fn slots(ahead: &Ahead<'_>, today: NaiveDate, through: NaiveDate) -> Vec<Slot> {
    let mut followed = ahead.history.clone();
    let mut all = Vec::new();
    for day in today.iter_days().take_while(|day| *day <= through) {
        let at = (ahead.gate_day)(day);
        let items = due(ahead.gates, day, &at, &followed, ahead.waking).items;
        let asked: Vec<&DueItem> =
            items.iter().filter(|item| item.gate.is_open() && !item.rests_today && item.times > 0).collect();
        if !ahead.wish.is_free(day) {
            all.extend(slots_of(ahead, day, &asked));
        }
        for item in &asked {
            followed.done.entry(item.item.clone()).or_default().insert(day, item.times);
        }
    }
    all
}

fn slots_of(ahead: &Ahead<'_>, day: NaiveDate, asked: &[&DueItem]) -> Vec<Slot> {
    let base = base_times(ahead, asked);
    let chosen = &ahead.wish.times;
    let mut by_time: BTreeMap<NaiveTime, Vec<&DueItem>> = BTreeMap::new();
    for item in asked {
        for time in times_of(ahead, day, item, &base) {
            by_time.entry(time).or_default().push(item);
        }
    }
    let slot = |(time, items): (NaiveTime, Vec<&DueItem>)| Slot {
        day,
        time,
        chosen: chosen.contains(&time),
        hourly: items.iter().all(|item| is_hourly(item)),
        items: items.into_iter().map(|item| item.item.clone()).collect(),
    };
    by_time.into_iter().map(slot).collect()
}

/// The times that items share: those chosen, else as many as the item asked for most often needs.
fn base_times(ahead: &Ahead<'_>, asked: &[&DueItem]) -> Vec<NaiveTime> {
    if !ahead.wish.times.is_empty() {
        return ahead.wish.times.clone();
    }
    let by_times = || asked.iter().filter(|item| !is_hourly(item));
    let most = by_times().map(|item| item.times).max().unwrap_or(0);
    let apart_h = by_times().filter(|item| item.times > 1).map(|item| hours_between(&item.when)).max();
    let quiet = ahead.wish.quiet(ahead.waking);
    let spread = spread(ahead.waking, most, apart_h.unwrap_or(0));
    let mut times: Vec<NaiveTime> = spread.into_iter().filter_map(|time| out_of(quiet, time)).collect();
    times.dedup();
    times
}

/// So many times of a day, evenly spread.
fn spread(waking: Waking, times: u16, apart_h: u8) -> Vec<NaiveTime> {
    let first = waking.from_min + AFTER_WAKING_MIN;
    let last = waking.to_min.saturating_sub(BEFORE_BED_MIN).max(first);
    if times == 1 {
        return vec![time_of((first + AFTER_WAKING_MIN).min(last))];
    }
    let gaps = times.saturating_sub(1).max(1);
    let even = (last - first) / gaps / QUARTER_MIN * QUARTER_MIN;
    let gap = even.max(u16::from(apart_h) * 60);
    let fits = |min: &u16| *min <= waking.to_min && *min < 24 * 60;
    (0..times).map(|n| first.saturating_add(n.saturating_mul(gap))).filter(fits).map(time_of).collect()
}

/// A worked-out time that falls into the quiet hours waits for their end; not over midnight.
fn out_of(quiet: Quiet, time: NaiveTime) -> Option<NaiveTime> {
    if !quiet.holds(time) {
        return Some(time);
    }
    Some(quiet.to).filter(|to| *to > time)
}

/// The times at which an item is still asked for.
fn times_of(ahead: &Ahead<'_>, day: NaiveDate, item: &DueItem, base: &[NaiveTime]) -> Vec<NaiveTime> {
    let mut times = if is_hourly(item) { hourly(ahead, item) } else { some_of(base, item) };
    let left = usize::from(item.times.saturating_sub(item.done));
    if item.done > 0 {
        times.drain(..times.len().saturating_sub(left));
    }
    let too_soon = item.not_before.map(ahead.wall);
    times.retain(|time| too_soon.is_none_or(|from| day.and_time(*time) >= from));
    times
}

fn is_hourly(item: &DueItem) -> bool {
    matches!(item.when, When::EveryWakingHours { .. })
}

/// Every so many waking hours, but for the quiet ones.
fn hourly(ahead: &Ahead<'_>, item: &DueItem) -> Vec<NaiveTime> {
    let quiet = ahead.wish.quiet(ahead.waking);
    let step = u16::from(hours_between(&item.when)) * 60;
    let at = |n: u16| ahead.waking.from_min + n * step;
    let on_the_day = |min: &u16| *min < 24 * 60;
    let all = (0..item.times).map(at).filter(on_the_day).map(time_of);
    all.filter(|time| !quiet.holds(*time)).collect()
}

/// As many of the shared times as an item needs, evenly spread, and no closer than the plan says.
fn some_of(base: &[NaiveTime], item: &DueItem) -> Vec<NaiveTime> {
    let (wanted, known) = (usize::from(item.times), base.len());
    let apart = Duration::hours(hours_between(&item.when).into());
    let even = |n: usize| if wanted < 2 { 0 } else { n * (known - 1) / (wanted - 1) };
    let picked: Vec<usize> =
        if wanted >= known { (0..known).collect() } else { (0..wanted).map(even).collect() };
    let mut times: Vec<NaiveTime> = Vec::new();
    for index in picked {
        let fits =
            |time: &&NaiveTime| times.last().is_none_or(|last| **time > *last && **time - *last >= apart);
        if let Some(time) = base[index..].iter().find(fits) {
            times.push(*time);
        }
    }
    times
}

/// A time of the day; midnight at its end is its last minute.
fn time_of(min: u16) -> NaiveTime {
    let min = u32::from(min.min(24 * 60 - 1));
    NaiveTime::from_hms_opt(min / 60, min % 60, 0).expect("within a day")
}

/// Minutes after midnight.
pub fn minutes_of(time: NaiveTime) -> u16 {
    u16::try_from(time.num_seconds_from_midnight() / 60).expect("within a day")
}

#[cfg(test)]
mod tests;
