//! What goes back to the clinic, opened in full before it leaves.

use serde::{Deserialize, Serialize};

/// What the clinic will be able to read.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct HandBackView {
    /// "From Thursday 5 March to Monday 9 March."
    pub days_said: String,
    /// The figures, a sentence each.
    pub figures: Vec<String>,
    /// Exercise by exercise.
    pub exercises: Vec<String>,
    /// What the patient wrote down in words.
    pub words: Vec<OwnWordsView>,
    /// "23 entries"
    pub entries_said: String,
    /// The whole record, as the table that leaves.
    pub table: String,
}

/// Words that the patient wrote down.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct OwnWordsView {
    /// On which day.
    pub day_said: String,
    /// The words.
    pub words: String,
}

/// How the patient wants it.
#[derive(Debug, Clone, PartialEq, Eq, Default, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(deny_unknown_fields)]
pub struct HandBackAsked {
    /// Their own words stay at home.
    pub without_words: bool,
    /// What they want to ask; empty if nothing.
    pub asks: String,
}
