//! Pain and effort: medians and ranges by week, and whether pain changed.

use chrono::NaiveDate;
use serde::Serialize;

use crate::measure::trend::{Trend, median, theil_sen};
use crate::measure::{WeekMeasure, within};
use crate::record::{Body, Event, Moment};

/// A change of pain is called one only past this many points of ten: Farrar 2001, Pain 94:149; Childs
/// 2005, Spine (from memory).
pub(super) const CHANGE: f64 = 2.0;
/// Days at either end of a span that are compared.
const ENDS: i64 = 7;

/// Answers of 0 to 10.
#[derive(Debug, Clone, Copy, PartialEq, Serialize)]
pub struct Levels {
    /// The middle one.
    pub median: f64,
    /// The least.
    pub least: u8,
    /// The most.
    pub most: u8,
    /// How many.
    pub answers: usize,
}

/// A week's pain and effort.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct PainWeek {
    /// Which week, as in the measure.
    pub week: u16,
    /// Before a session, at rest.
    pub before: Option<Levels>,
    /// During.
    pub during: Option<Levels>,
    /// After.
    pub after: Option<Levels>,
    /// The next morning.
    pub next_morning: Option<Levels>,
    /// Effort of strengthening sessions.
    pub effort: Option<Levels>,
}

/// Pain and effort in a span.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Feeling {
    /// Week by week.
    pub weeks: Vec<PainWeek>,
    /// The slope of pain at rest, in points a week, with its interval.
    pub trend: Option<Trend>,
    /// By how much the median at rest of the last seven days is over that of the first seven.
    pub change: Option<f64>,
    /// The worst pain during a session, and on which day.
    pub worst: Option<(NaiveDate, u8)>,
}

impl Feeling {
    /// Pain at rest rose by more than two points.
    pub fn rises(&self) -> bool {
        self.change.is_some_and(|change| change > CHANGE)
    }
}

pub(super) fn of_span(
    events: &[Event],
    weeks: &[WeekMeasure],
    from: NaiveDate,
    through: NaiveDate,
) -> Feeling {
    let answers = answers(events, from, through);
    let rest: Vec<(NaiveDate, u8)> =
        answers.iter().filter(|a| a.moment == Some(Moment::Before)).map(|a| (a.day, a.level)).collect();
    let points: Vec<(f64, f64)> =
        rest.iter().map(|(day, level)| (week_part(*day, from), f64::from(*level))).collect();
    let during = answers.iter().filter(|a| a.moment == Some(Moment::During));
    Feeling {
        weeks: weeks.iter().map(|week| pain_week(&answers, week)).collect(),
        trend: theil_sen(&points),
        change: change(&rest, from, through),
        worst: during.map(|a| (a.day, a.level)).max_by_key(|(_, level)| *level),
    }
}

/// An answer; effort has no moment.
struct Answer {
    day: NaiveDate,
    moment: Option<Moment>,
    level: u8,
}

fn answers(events: &[Event], from: NaiveDate, through: NaiveDate) -> Vec<Answer> {
    let read = |event: &Event| {
        let day = event.stamp.day();
        match &event.body {
            Body::PainAnswered { pain, .. } => {
                Some(Answer { day, moment: Some(pain.moment), level: pain.level? })
            }
            Body::SessionEnded { effort, .. } => Some(Answer { day, moment: None, level: (*effort)? }),
            _ => None,
        }
    };
    events.iter().filter_map(read).filter(|answer| within(answer.day, from, through)).collect()
}

#[expect(clippy::cast_precision_loss, reason = "days of a life")]
fn week_part(day: NaiveDate, from: NaiveDate) -> f64 {
    (day - from).num_days() as f64 / 7.0
}

fn pain_week(answers: &[Answer], week: &WeekMeasure) -> PainWeek {
    let of = |moment: Option<Moment>| {
        let these = answers.iter().filter(|a| a.moment == moment && within(a.day, week.from, week.through));
        levels(these.map(|a| a.level).collect())
    };
    PainWeek {
        week: week.week,
        before: of(Some(Moment::Before)),
        during: of(Some(Moment::During)),
        after: of(Some(Moment::After)),
        next_morning: of(Some(Moment::NextMorning)),
        effort: of(None),
    }
}

fn levels(mut all: Vec<u8>) -> Option<Levels> {
    all.sort_unstable();
    let sorted: Vec<f64> = all.iter().copied().map(f64::from).collect();
    Some(Levels { median: median(&sorted)?, least: *all.first()?, most: *all.last()?, answers: all.len() })
}

fn change(rest: &[(NaiveDate, u8)], from: NaiveDate, through: NaiveDate) -> Option<f64> {
    let apart = (through - from).num_days() >= 2 * ENDS - 1;
    let of = |days: &dyn Fn(NaiveDate) -> bool| {
        levels(rest.iter().filter(|(day, _)| days(*day)).map(|(_, level)| *level).collect())
    };
    let first = of(&|day| (day - from).num_days() < ENDS)?;
    let last = of(&|day| (through - day).num_days() < ENDS)?;
    apart.then_some(last.median - first.median)
}
