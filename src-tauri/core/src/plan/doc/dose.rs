//! How much, how often, and how a dose may move within what was signed.

use serde::{Deserialize, Serialize};

use crate::ids::ItemId;
use crate::text::Text;

/// How much. Exactly one of `repetitions`, `breaths`, `minutes`, `steps` is given.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Dose {
    /// Sets.
    pub sets: u8,
    /// Repetitions in a set: a number, or a range.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub repetitions: Option<Count>,
    /// Slow breaths in a set; the tempo gives in (`out_s`) and out (`back_s`).
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub breaths: Option<u16>,
    /// Minutes in a set.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub minutes: Option<u16>,
    /// Steps in a set, with a walking aid.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub steps: Option<Steps>,
    /// The course of one repetition or breath; needed with repetitions and breaths.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub tempo: Option<Tempo>,
    /// Rest between sets, in seconds.
    #[serde(default)]
    pub rest_s: u16,
    /// Outside load.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub load: Option<Load>,
}

/// A number of repetitions, or a range.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(untagged)]
pub enum Count {
    /// Just so many.
    Exactly(u16),
    /// From so many to so many.
    Between(Between),
}

/// A range of repetitions.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Between {
    /// Enough.
    pub least: u16,
    /// No more.
    pub most: u16,
}

/// Steps with a walking aid.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Steps {
    /// How many.
    pub steps: u16,
    /// The aid, in the clinic's words.
    pub aid: Text,
}

/// The course of one repetition, in whole seconds, because it is counted aloud.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Tempo {
    /// Moving out, in seconds.
    pub out_s: u16,
    /// Holding, in seconds.
    pub hold_s: u16,
    /// Moving back, in seconds.
    pub back_s: u16,
    /// Before the next, in seconds.
    pub pause_s: u16,
}

/// Outside load.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(tag = "kind", rename_all = "kebab-case", deny_unknown_fields)]
pub enum Load {
    /// A weight.
    Weight {
        /// In kg.
        load_kg: f64,
    },
    /// An elastic band.
    Band {
        /// Which one, in the clinic's words.
        name: Text,
    },
}

/// How often.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(tag = "kind", rename_all = "kebab-case", deny_unknown_fields)]
pub enum When {
    /// So many times every day.
    TimesADay {
        /// Times a day.
        times: u8,
        /// Least hours from one to the next.
        #[serde(default)]
        least_hours_between: u8,
    },
    /// Every so many waking hours.
    EveryWakingHours {
        /// Hours from one to the next.
        hours: u8,
    },
    /// On chosen weekdays.
    Weekdays {
        /// Which days.
        days: Vec<Weekday>,
        /// Times on such a day.
        times: u8,
    },
    /// So many days a week, none in a row.
    DaysAWeek {
        /// How many days.
        days: u8,
        /// Times on such a day.
        times: u8,
    },
    /// As needed.
    AsNeeded {
        /// At most so many times a day.
        daily_most: u8,
    },
}

/// A day of the week.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case")]
#[expect(missing_docs, reason = "the names say it")]
pub enum Weekday {
    Monday,
    Tuesday,
    Wednesday,
    Thursday,
    Friday,
    Saturday,
    Sunday,
}

/// A dose that grows with the days.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Ramp {
    /// What grows.
    pub grows: Grows,
    /// Where it starts.
    pub start: u16,
    /// By how much.
    pub step: u16,
    /// Every so many days.
    pub every_days: u16,
    /// Never beyond.
    pub cap: u16,
}

/// What a ramp changes.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case")]
pub enum Grows {
    /// Sets.
    Sets,
    /// Repetitions.
    Repetitions,
    /// Seconds held.
    HoldS,
    /// Minutes.
    Minutes,
}

/// An ordered list of doses, easiest first, with the clinic's rule for one up and one down.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Graded {
    /// The doses, easiest first.
    pub doses: Vec<Dose>,
    /// Which one to begin with, counted from 1.
    pub start: u8,
    /// One up after so many whole, counted sessions in a row …
    pub up_after_sessions: u8,
    /// … with pain during at most this …
    pub up_pain_at_most: u8,
    /// … and effort at most this.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub up_effort_at_most: Option<u8>,
    /// One down at once when pain during is over this.
    pub down_pain_over: u8,
}

/// What to restart on after days without a session.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct ReturnDose {
    /// After so many days without a session the doses below apply for the first session back.
    pub after_days: u16,
    /// Doses to restart on; an item that is not named keeps its own.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub doses: Vec<RestartDose>,
    /// After so many days, ring the clinic first.
    pub ring_after_days: u16,
}

/// One item's dose after a break.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct RestartDose {
    /// Which item.
    pub item: ItemId,
    /// How much.
    pub dose: Dose,
}
