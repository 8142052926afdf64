//! When does the device remind?

use chrono::{DateTime, Duration, NaiveDate, NaiveDateTime, NaiveTime, Utc};

use super::Zone;
use super::front::{Front, FrontDay, FrontSlot};

/// A reminder is worth a catch-up for so long, if nothing else ends it: common practice, no source.
const OPEN: Duration = Duration::hours(4);
/// After so many days without an answer, there is one reminder a day.
pub const SILENT_DAYS: usize = 3;

/// What kind of reminder it is.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Kind {
    /// Time for what the plan asks.
    Ordinary,
    /// The one of the day, after some days without an answer: a kind question.
    AfterSilence,
}

impl Kind {
    /// Whether it asks kindly, after some days without an answer.
    pub fn asks_kindly(self) -> bool {
        self == Self::AfterSilence
    }
}

/// A reminder.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Reminder {
    /// The day of its slot.
    pub day: NaiveDate,
    /// The time of its slot, on the wall.
    pub time: NaiveTime,
    /// The instant.
    pub at: DateTime<Utc>,
    /// Until when it is worth a catch-up: the next time of the day, the quiet hours, the end of the
    /// day, or some hours.
    pub until: DateTime<Utc>,
    /// Which kind.
    pub kind: Kind,
}

/// The reminders from one instant on, up to another, not included, in order. A time on the wall is
/// taken by [`super::Civil::by_rfc_5545`]; in the quiet hours there is none but at times that the
/// patient chose. Nothing had an answer yet.
pub fn reminders(front: &Front, from: DateTime<Utc>, to: DateTime<Utc>, zone: &dyn Zone) -> Vec<Reminder> {
    let doc = front.doc();
    if !doc.on || from >= to {
        return Vec::new();
    }
    let near = |day: &&FrontDay| {
        let (first, last) = (from.date_naive(), to.date_naive());
        // A zone is at most a day from UTC, and a gap at most a day long.
        day.day >= first - Duration::days(2) && day.day <= last + Duration::days(2)
    };
    let mut all: Vec<Reminder> = doc
        .days
        .iter()
        .filter(near)
        .flat_map(|day| of_day(front, day, zone))
        .filter(|reminder| (from..to).contains(&reminder.at))
        .collect();
    all.sort_by_key(|reminder| (reminder.at, reminder.day, reminder.time));
    all
}

fn of_day(front: &Front, day: &FrontDay, zone: &dyn Zone) -> Vec<Reminder> {
    let kind = if is_silent(front, day.day) { Kind::AfterSilence } else { Kind::Ordinary };
    let at = |slot: &FrontSlot| zone.civil(day.day.and_time(slot.time)).by_rfc_5545();
    let wall = |at: DateTime<Utc>| (at.naive_utc() + Duration::seconds(zone.offset_s(at).into())).time();
    let quiet = front.doc().quiet;
    let heard: Vec<&FrontSlot> =
        day.slots.iter().filter(|slot| slot.chosen || !quiet.holds(wall(at(slot)))).collect();
    let last = if kind == Kind::AfterSilence { 1 } else { heard.len() };
    let reminder = |(n, slot): (usize, &&FrontSlot)| {
        let next = heard.get(n + 1).map(|next| day.day.and_time(next.time));
        let end = window_end(front, day.day, slot, next);
        let at = at(slot);
        let until = zone.civil(end).by_rfc_5545().min(at + OPEN).max(at);
        Reminder { day: day.day, time: slot.time, at, until, kind }
    };
    heard.iter().take(last).enumerate().map(reminder).collect()
}

/// Where a slot's window ends on the wall.
fn window_end(front: &Front, day: NaiveDate, slot: &FrontSlot, next: Option<NaiveDateTime>) -> NaiveDateTime {
    let midnight = (day + Duration::days(1)).and_time(NaiveTime::MIN);
    let quiet = day.and_time(front.doc().quiet.from);
    // A time that was chosen within the quiet hours has no quiet hours ahead of it.
    let quiet = Some(quiet).filter(|quiet| *quiet > day.and_time(slot.time));
    [Some(midnight), quiet, next].into_iter().flatten().min().unwrap_or(midnight)
}

/// Whether the days with slots since the patient was last heard of are so many that one reminder a day
/// is enough.
fn is_silent(front: &Front, day: NaiveDate) -> bool {
    let heard_on = front.doc().heard_on;
    let unanswered = |known: &&FrontDay| known.day > heard_on && known.day < day && !known.slots.is_empty();
    front.doc().days.iter().filter(unanswered).count() >= SILENT_DAYS
}

#[cfg(test)]
mod tests;
