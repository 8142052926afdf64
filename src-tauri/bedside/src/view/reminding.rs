//! How the patient wants to be reminded.

use chrono::NaiveDate;
use sendaluna_core::plan::doc::Weekday;
use serde::Serialize;

use crate::reminding::Shows;

/// How the patient wants to be reminded, said.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[expect(clippy::struct_excessive_bools, reason = "each says another thing of it")]
pub struct RemindingView {
    /// At all.
    pub on: bool,
    /// Today's times, as people say them; empty if there are none.
    pub today_said: String,
    /// The patient has chosen the times.
    pub own_times: bool,
    /// The times of a day, in minutes after midnight: those chosen, else those of the week's busiest day.
    pub times_min: Vec<u16>,
    /// The same, as people say them.
    pub times: Vec<String>,
    /// So many times the plan asks for on the week's busiest day.
    pub asks_most: usize,
    /// The days of the week.
    pub days_off: Vec<DayOffView>,
    /// It is quiet in the hours of sleep, and not at hours of the patient's own.
    pub quiet_asleep: bool,
    /// Quiet from, in minutes after midnight.
    pub quiet_from_min: u16,
    /// Quiet to, in minutes after midnight.
    pub quiet_to_min: u16,
    /// Quiet from, as people say it.
    pub quiet_from: String,
    /// Quiet to, as people say it.
    pub quiet_to: String,
    /// A notice comes with a sound.
    pub sound: bool,
    /// How much a notice says.
    pub shows: Shows,
    /// The break that today lies in, if it does.
    pub break_said: Option<String>,
}

/// A day of the week.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct DayOffView {
    /// Which.
    #[cfg_attr(feature = "types", ts(as = "crate::view::names::Weekday"))]
    pub day: Weekday,
    /// Its name.
    pub name: String,
    /// It is without a reminder.
    pub off: bool,
}

/// "You said not today. Why was that?" It is asked once.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct WhyNotView {
    /// Of which day.
    #[cfg_attr(feature = "types", ts(type = "string"))]
    pub day: NaiveDate,
    /// The question.
    pub said: String,
}
