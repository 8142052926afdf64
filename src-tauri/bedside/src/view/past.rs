//! What I did.

use serde::Serialize;

/// What was done, newest week first.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct PastView {
    /// Weeks, newest first.
    pub weeks: Vec<PastWeekView>,
    /// Pain, oldest first.
    pub pain: Vec<LevelPointView>,
    /// Effort, oldest first.
    pub effort: Vec<LevelPointView>,
    /// All of it in a sentence.
    pub said: String,
}

/// A week of seven days.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct PastWeekView {
    /// "Week 3"
    pub title: String,
    /// Its days.
    pub days: Vec<PastDayView>,
}

/// A day.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct PastDayView {
    /// The date, as people say it.
    pub day_said: String,
    /// Its sessions, and what was written down from memory.
    pub sessions: Vec<PastSessionView>,
    /// It lies ahead, or before the plan came: no record is missing.
    pub outside: bool,
    /// The day in a sentence.
    pub said: String,
}

/// A session, or what was done from memory.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct PastSessionView {
    /// Whole or a part.
    pub mark: PastMark,
    /// From memory.
    pub remembered: bool,
    /// In words.
    pub said: String,
}

/// How much of a session was done.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "kebab-case")]
pub enum PastMark {
    /// The whole.
    Whole,
    /// A part.
    Part,
}

/// An answer of 0 to 10, about pain or effort.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct LevelPointView {
    /// The date, as people say it.
    pub day_said: String,
    /// When: before, during or after a session, or the next morning.
    pub moment_said: String,
    /// 0 to 10.
    pub level: u8,
}
