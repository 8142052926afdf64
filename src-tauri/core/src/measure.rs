//! How is it going? What was due, what was done, how it felt, and what needs a call.
//!
//! Every measure has its numerator and its denominator; a percentage comes second. The definitions:
//!
//! - **Due**: what the plan in force *on that day* asked for. Not due: days before a plan was taken in,
//!   gated items, breaks that the clinic ordered, days in hospital. Breaks that the patient declared are
//!   told both ways; those declared after they began are told apart.
//! - **A day** is whole if every due item was done as often as asked, part if anything was done, stopped
//!   as told if the pain rule or a warning sign said so and it is not whole, and else has no record.
//!   Silence is not failure, and not proof.
//! - **Dose**: sets done over sets prescribed. A set counts by the part of it that was done, at most
//!   once, and an item at most as often as asked on that day, so that overdoing one cannot hide another.
//!   What was overdone is a figure of its own, and so is what was done as needed.
//! - **Home tests**: each result with its day, and what its table says of it.
//! - **Counted**, **counted, not confirmed** and **remembered** are columns, always.

use chrono::NaiveDate;
use serde::Serialize;

use crate::calendar::Waking;
use crate::ids::ItemId;
use crate::library::Library;
use crate::plan::Plan;
use crate::precaution::Standing;
use crate::record::{Event, How, LeaveReason};

mod days;
mod feeling;
mod flags;
mod home_tests;
mod trend;

pub use days::{Adherence, DayMark, DayMeasure, ItemMeasure, WeekMeasure};
pub use feeling::{Feeling, Levels, PainWeek};
pub use flags::{Flag, FlagGroup, FlagRule};
pub use home_tests::TestMeasure;
pub use trend::{Trend, theil_sen};

/// A plan, and since when it is in force.
#[derive(Debug, Clone)]
pub struct Period {
    /// The plan.
    pub plan: Plan,
    /// What its statements add up to.
    pub standing: Standing,
    /// The day on which it was taken in.
    pub from: NaiveDate,
}

/// What is measured.
#[derive(Debug, Clone, Copy)]
pub struct Measured<'a> {
    /// Plans in force, the earliest first.
    pub periods: &'a [Period],
    /// The record, in order.
    pub events: &'a [Event],
    /// The movements that ship.
    pub library: &'a Library,
    /// When the patient is awake: how often "every so many waking hours" is.
    pub waking: Waking,
    /// The event from which on the chain of the record is broken.
    pub broken_from: Option<u64>,
}

/// Every measure of a span of days, both ends included.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Measures {
    /// First day.
    pub from: NaiveDate,
    /// Last day.
    pub through: NaiveDate,
    /// Day by day.
    pub days: Vec<DayMeasure>,
    /// Week by week, counted from day 0 of the first episode.
    pub weeks: Vec<WeekMeasure>,
    /// Item by item, in the order of the plan that asked for it last.
    pub items: Vec<ItemMeasure>,
    /// Everything, with breaks that the patient declared counted as due.
    pub overall: Adherence,
    /// Everything, with those breaks left out.
    pub without_breaks: Adherence,
    /// Days of breaks that were declared only after they had begun.
    pub late_break_days: u32,
    /// Pain and effort.
    pub feeling: Feeling,
    /// What needs a call or a talk.
    pub flags: Vec<Flag>,
    /// Home tests. Left out where there are none, so that earlier reports stay as they were.
    #[serde(skip_serializing_if = "Vec::is_empty")]
    pub tests: Vec<TestMeasure>,
}

impl Measures {
    /// The exercise of which the least part was done; `None` if all was done that was asked.
    pub fn least_done(&self) -> Option<&ItemMeasure> {
        let due = self.items.iter().filter(|item| item.all.prescribed > 0);
        let part = |item: &&ItemMeasure| item.all.done() / f64::from(item.all.prescribed);
        due.min_by(|a, b| part(a).total_cmp(&part(b))).filter(|item| part(item) < 1.0)
    }
}

/// Sets, by how their record came about. Of one item on one day, or added up.
#[derive(Debug, Clone, Copy, PartialEq, Default, Serialize)]
pub struct Portion {
    /// Sets prescribed.
    pub prescribed: u32,
    /// Led by the count, and somebody answered.
    pub counted: f64,
    /// Led by the count, and nobody answered.
    pub not_confirmed: f64,
    /// From memory.
    pub remembered: f64,
    /// Sets that were only offered, to be done as needed.
    pub offered: u32,
    /// Done of what was offered.
    pub as_needed: f64,
    /// Done beyond what was prescribed and offered.
    pub beyond: f64,
}

impl Portion {
    /// Sets done, at most those prescribed.
    pub fn done(&self) -> f64 {
        self.counted + self.not_confirmed + self.remembered
    }

    /// Done over prescribed, in per cent; `None` if nothing was prescribed.
    pub fn percent(&self) -> Option<f64> {
        (self.prescribed > 0).then(|| 100.0 * self.done() / f64::from(self.prescribed))
    }

    fn add(&mut self, other: &Self) {
        self.prescribed += other.prescribed;
        self.counted += other.counted;
        self.not_confirmed += other.not_confirmed;
        self.remembered += other.remembered;
        self.offered += other.offered;
        self.as_needed += other.as_needed;
        self.beyond += other.beyond;
    }

    /// Puts a part of a set where its record belongs, and what is beyond the prescribed apart.
    fn put(&mut self, part: f64, how: How) {
        let room = (f64::from(self.prescribed) - self.done()).max(0.0);
        let within = part.min(room);
        let offered = (f64::from(self.offered) - self.as_needed).max(0.0).min(part - within);
        self.as_needed += offered;
        self.beyond += part - within - offered;
        match how {
            How::Counted => self.counted += within,
            How::CountedNotConfirmed => self.not_confirmed += within,
            How::Remembered => self.remembered += within,
        }
    }
}

/// How often an item was left out for a reason.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Left {
    /// Why.
    pub reason: LeaveReason,
    /// How often.
    pub times: u32,
}

/// Measures a span of days.
pub fn measure(measured: &Measured<'_>, from: NaiveDate, through: NaiveDate) -> Measures {
    let days = days::of_span(measured, from, through);
    let weeks = days::weeks(measured, &days);
    let items = days::items(measured, &days);
    let (overall, without_breaks) = days::overall(&days);
    let feeling = feeling::of_span(measured.events, &weeks, from, through);
    let flags = flags::of_span(measured, &items, &feeling, from, through);
    Measures {
        from,
        through,
        late_break_days: days::late_break_days(&days),
        days,
        weeks,
        items,
        overall,
        without_breaks,
        feeling,
        flags,
        tests: home_tests::of_span(measured, from, through),
    }
}

/// Whether a day lies in a span.
fn within(day: NaiveDate, from: NaiveDate, through: NaiveDate) -> bool {
    (from..=through).contains(&day)
}

/// The last name that an item had.
fn last_plan_with<'a>(periods: &'a [Period], item: &ItemId) -> Option<&'a Plan> {
    periods.iter().rev().map(|period| &period.plan).find(|plan| plan.item(item).is_some())
}

#[cfg(test)]
mod tests;
