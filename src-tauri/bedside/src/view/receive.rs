//! Taking a plan in.

use chrono::NaiveDate;
use serde::Serialize;

use crate::view::figure::FigureView;

use crate::view::day::ContactsView;
use crate::view::window::ProblemView;

/// The summary of an offered plan.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct SummaryView {
    /// Which plan this is, to the byte: what is confirmed is what was read.
    pub digest: String,
    /// Whose plan.
    pub called: String,
    /// Year of birth.
    pub born: u16,
    /// The clinic.
    pub clinic: String,
    /// Which revision.
    pub revision: u32,
    /// Operations and injuries, with their days.
    pub episodes: Vec<EpisodeView>,
    /// How many exercises.
    pub exercises: usize,
    /// Exercises that are not allowed yet, and when they open.
    pub not_yet: Vec<NotYetView>,
    /// Lifts that have no effect.
    pub lifts_ignored: Vec<String>,
    /// Whom to ring.
    pub contacts: ContactsView,
    /// Today's date, to be confirmed.
    #[cfg_attr(feature = "types", ts(type = "string"))]
    pub today: NaiveDate,
    /// The same, as people say it.
    pub today_said: String,
    /// The side is to be asked.
    pub first: bool,
    /// It is in force already.
    pub same_again: bool,
}

/// An operation or injury.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct EpisodeView {
    /// What it was.
    pub name: String,
    /// When, as people say it.
    pub day_said: String,
}

/// An exercise that is not allowed yet.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct NotYetView {
    /// Its name.
    pub name: String,
    /// The day on which it opens, if that is known.
    #[cfg_attr(feature = "types", ts(type = "string | null"))]
    pub opens: Option<NaiveDate>,
    /// The sentence.
    pub said: String,
    /// Its figure, if this version knows the movement.
    pub figure: Option<FigureView>,
}

/// Where taking a file in stands.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(tag = "step", rename_all = "kebab-case")]
pub enum OfferView {
    /// The code on the letter is wanted.
    Code {
        /// Why the one that was typed did not fit.
        problem: Option<ProblemView>,
    },
    /// It is good: this is what it says.
    Summary {
        /// What it says.
        summary: Box<SummaryView>,
    },
    /// It was refused; what is held stays.
    Refused {
        /// Why, and what to do.
        problem: ProblemView,
    },
}
