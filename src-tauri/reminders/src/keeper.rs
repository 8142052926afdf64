//! What is to be done now, and when must it be woken? A state machine without a clock, a disk or a bus: what
//! happens comes in with its moment, and what is to be done comes out.

use std::collections::VecDeque;

use chrono::{DateTime, Days, Duration, NaiveDate, NaiveTime, Utc};
use sendaluna_core::calendar::front::{Front, MOST_DAYS};
use sendaluna_core::calendar::outbox::{Line, ReminderAnswer};
use sendaluna_core::calendar::{Kind, Reminder, Zone, date_in, reminders};

use crate::memory::{Memory, Span};

/// "In 30 minutes."
pub const PUT_OFF: Duration = Duration::minutes(30);
/// A reminder this much behind its time says so.
const LATE: Duration = Duration::minutes(2);
/// A clock set back by more than this was wrong before.
const WAS_WRONG: Duration = Duration::hours(26);
/// How far ahead the next reminder is looked for: to the end of any front.
const AHEAD: Days = Days::new(MOST_DAYS as u64 + 2);
/// How soon showing is tried again, and how late at most.
const FIRST_RETRY: Duration = Duration::seconds(2);
const LAST_RETRY: Duration = Duration::minutes(5);

/// How a notice speaks.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Tone {
    /// At its time.
    Now,
    /// Later than its time.
    Late,
    /// After some days without an answer.
    AfterSilence,
}

/// Something that happened.
#[derive(Debug, Clone, PartialEq)]
pub enum Happened {
    /// A deadline has come, or the clock was set: look again.
    Time,
    /// `front.json` is another one; `None` if there is none any more.
    Front(Option<Box<Front>>),
    /// Something was pressed on the notice with this number.
    Pressed(u64, ReminderAnswer),
    /// The notice with this number was put away without an answer.
    PutAway(u64),
    /// The notice with this number could not be shown, or the bus has lost it.
    Lost(u64),
}

/// Something to be done, in order.
#[derive(Debug, Clone, PartialEq)]
pub enum Do {
    /// Keep this in mind, before anything after it.
    Remember(Memory),
    /// Write an answer down.
    Write(Line),
    /// Show a notice in place of any other.
    Show(u64, Tone),
    /// Take the notice back.
    Withdraw,
    /// Open the window on the session.
    Open,
}

/// A notice that is to be seen.
#[derive(Debug, Clone, Copy, PartialEq)]
struct Showing {
    number: u64,
    tone: Tone,
    day: NaiveDate,
    time: NaiveTime,
    until: DateTime<Utc>,
    /// When it is shown again, because showing failed.
    retry_at: Option<DateTime<Utc>>,
    /// How long after a failure.
    wait: Duration,
}

/// Keeps the reminders of one patient.
pub struct Keeper {
    front: Option<Box<Front>>,
    memory: Memory,
    showing: Option<Showing>,
    numbers: u64,
}

impl Keeper {
    /// With what was kept in mind. A notice that was to be seen when it last ended is shown again.
    pub fn new(memory: Memory) -> Self {
        let again = |Span { day, time, until }| {
            let retry_at = Some(DateTime::UNIX_EPOCH);
            Showing { number: 1, tone: Tone::Late, day, time, until, retry_at, wait: FIRST_RETRY }
        };
        Self { front: None, showing: memory.shown.map(again), memory, numbers: 1 }
    }

    /// When it must be woken next; `None` if nothing is ahead.
    pub fn wake_at(&self, now: DateTime<Utc>, zone: &dyn Zone) -> Option<DateTime<Utc>> {
        let showing = self.showing.iter().flat_map(|s| [Some(s.until), s.retry_at]);
        let put_off = self.memory.put_off.map(|put_off| put_off.until);
        let next = self.ahead(self.memory.seen_until, now + AHEAD, zone).first().map(|next| next.at);
        showing.flatten().chain(put_off).chain(next).min()
    }

    /// Something happened, in the zone that the device is in by now.
    pub fn on(&mut self, happened: Happened, now: DateTime<Utc>, zone: &dyn Zone) -> VecDeque<Do> {
        let before = self.memory.clone();
        let mut to_do = VecDeque::new();
        match happened {
            Happened::Time => {}
            Happened::Front(front) => self.front = front,
            Happened::Pressed(number, answer) => self.pressed(number, answer, now, zone, &mut to_do),
            Happened::PutAway(number) => self.showing = self.showing.filter(|s| s.number != number),
            Happened::Lost(number) => self.lost(number, now),
        }
        self.forget_put_off(now, zone);
        self.time(now, zone, &mut to_do);
        self.let_go(now, zone, &mut to_do);
        self.memory.shown = self.showing.map(|Showing { day, time, until, .. }| Span { day, time, until });
        if self.memory != before {
            to_do.push_front(Do::Remember(self.memory.clone()));
        }
        to_do
    }

    /// Reminders from a moment on that nobody has answered by saying "not today" or by doing it already.
    fn ahead(&self, from: DateTime<Utc>, to: DateTime<Utc>, zone: &dyn Zone) -> Vec<Reminder> {
        let Some(front) = &self.front else { return Vec::new() };
        let mut front = front.clone();
        front.hear(self.memory.heard_on);
        let answered = front.doc().answered_until;
        let mut ahead = reminders(&front, from, to, zone);
        ahead.retain(|r| Some(r.day) != self.memory.not_today && r.at > answered);
        ahead.retain(|r| Some((r.day, r.time)) > self.memory.dealt_with);
        ahead
    }

    /// Whether a time is still asked for: not done elsewhere, not moved.
    fn asks(&self, day: NaiveDate, time: NaiveTime, zone: &dyn Zone) -> bool {
        self.front.as_ref().is_some_and(|front| {
            let at = zone.civil(day.and_time(time)).by_rfc_5545();
            front.asks(day, time) && at > front.doc().answered_until
        })
    }

    /// What was put off and is not asked for any more, or lies long back, comes no more.
    fn forget_put_off(&mut self, now: DateTime<Utc>, zone: &dyn Zone) {
        let put_off = self.memory.put_off.filter(|put_off| now <= put_off.until + PUT_OFF);
        self.memory.put_off = put_off.filter(|put_off| self.asks(put_off.day, put_off.time, zone));
    }

    /// Takes back a notice that nobody asks for any more, or whose window is over. What has taken its place
    /// by then needs no taking back.
    fn let_go(&mut self, now: DateTime<Utc>, zone: &dyn Zone, to_do: &mut VecDeque<Do>) {
        if let Some(showing) = self.showing
            && (!self.asks(showing.day, showing.time, zone) || showing.until <= now)
        {
            self.showing = None;
            to_do.push_back(Do::Withdraw);
        }
    }

    /// What has come due since it was last looked: the latest of it, if its window is open.
    fn time(&mut self, now: DateTime<Utc>, zone: &dyn Zone, to_do: &mut VecDeque<Do>) {
        if self.memory.seen_until - now > WAS_WRONG {
            self.memory.seen_until = now;
            self.memory.dealt_with = None;
        }
        let due = self.ahead(self.memory.seen_until, now + Duration::nanoseconds(1), zone);
        if let Some(latest) = due.last() {
            // From the next moment on, so that this one never comes again.
            self.memory.seen_until = latest.at + Duration::nanoseconds(1);
            self.memory.dealt_with = Some((latest.day, latest.time));
            self.memory.put_off = None;
            if latest.until > now {
                let tone = match latest.kind {
                    Kind::AfterSilence => Tone::AfterSilence,
                    Kind::Ordinary if now - latest.at > LATE => Tone::Late,
                    Kind::Ordinary => Tone::Now,
                };
                self.show(tone, latest.day, latest.time, latest.until, to_do);
            }
        }
        if let Some(put_off) = self.memory.put_off.filter(|put_off| put_off.until <= now) {
            self.memory.put_off = None;
            self.show(Tone::Now, put_off.day, put_off.time, put_off.until + PUT_OFF, to_do);
        }
        if let Some(showing) = self.showing
            && showing.retry_at.is_some_and(|at| at <= now)
            && showing.until > now
            && self.asks(showing.day, showing.time, zone)
        {
            self.showing = Some(Showing { retry_at: None, ..showing });
            to_do.push_back(Do::Show(showing.number, showing.tone));
        }
    }

    fn show(
        &mut self,
        tone: Tone,
        day: NaiveDate,
        time: NaiveTime,
        until: DateTime<Utc>,
        to_do: &mut VecDeque<Do>,
    ) {
        self.numbers += 1;
        self.showing =
            Some(Showing { number: self.numbers, tone, day, time, until, retry_at: None, wait: FIRST_RETRY });
        to_do.push_back(Do::Show(self.numbers, tone));
    }

    fn pressed(
        &mut self,
        number: u64,
        answer: ReminderAnswer,
        now: DateTime<Utc>,
        zone: &dyn Zone,
        to_do: &mut VecDeque<Do>,
    ) {
        // A notice that was replaced meanwhile asks nothing any more.
        let Some(showing) = self.showing.filter(|showing| showing.number == number) else { return };
        self.showing = None;
        self.memory.heard_on = self.memory.heard_on.max(Some(date_in(zone, now)));
        let (day, time) = (showing.day, showing.time);
        to_do.push_back(Do::Write(Line { at: now, day, time, answer }));
        match answer {
            ReminderAnswer::Start => to_do.push_back(Do::Open),
            ReminderAnswer::Later => self.memory.put_off = Some(Span { day, time, until: now + PUT_OFF }),
            ReminderAnswer::NotToday => {
                self.memory.not_today = Some(day);
                self.memory.put_off = None;
            }
        }
    }

    /// Showing failed, or the bus is gone: tried again while the window is open.
    fn lost(&mut self, number: u64, now: DateTime<Utc>) {
        if let Some(showing) = self.showing.as_mut().filter(|showing| showing.number == number) {
            showing.retry_at = Some(now + showing.wait);
            showing.wait = (showing.wait * 2).min(LAST_RETRY);
        }
    }
}

#[cfg(test)]
mod tests;
