//! What a window needs besides: how the patient wants it, what went wrong, what was written.

use sendaluna_core::session::Pace;
use serde::Serialize;

use crate::settings::{Hearing, Theme};
use crate::view::day::{ContactsView, DayView};
use crate::view::reminding::RemindingView;

/// What went wrong, in the patient's words.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct ProblemView {
    /// A stable code.
    pub code: String,
    /// What happened, and that nothing was lost.
    pub happened: String,
    /// What to do.
    pub to_do: String,
    /// Why something is not allowed yet, with who says so.
    pub reasons: Vec<String>,
    /// Whom to ring, if a plan is held.
    pub ring: Option<String>,
}

/// A language that ships.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct LanguageView {
    /// Its tag.
    pub lang: String,
    /// Its own name.
    pub name: String,
    /// It is written from right to left.
    pub rtl: bool,
}

/// How the patient wants it.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct SettingsView {
    /// The language.
    pub language: String,
    /// Text size, in per cent.
    pub text: u16,
    /// Light, dark, or as the device.
    pub theme: Theme,
    /// Awake from, in minutes after midnight.
    pub awake_from_min: u16,
    /// Awake to, in minutes after midnight.
    pub awake_to_min: u16,
    /// Awake from, as people say it.
    pub awake_from: String,
    /// Awake to, as people say it.
    pub awake_to: String,
    /// How a session is to be heard.
    pub hearing: Hearing,
    /// How fast the count goes.
    #[cfg_attr(feature = "types", ts(as = "crate::view::names::PaceName"))]
    pub pace: Pace,
}

/// What a window needs first.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct StartView {
    /// How the patient wants it.
    pub settings: SettingsView,
    /// Languages that ship.
    pub languages: Vec<LanguageView>,
    /// A plan is held.
    pub has_plan: bool,
    /// The first two minutes have not been gone through.
    pub first_time: bool,
    /// The record cannot be used: this is all that can be shown.
    pub problem: Option<ProblemView>,
    /// Whom to ring, where the record cannot be used but can be looked at.
    pub contacts: Option<ContactsView>,
    /// Today, if a plan is held.
    pub day: Option<DayView>,
    /// How the patient wants to be reminded, if a plan is held.
    pub reminding: Option<RemindingView>,
    /// Whether reminders start when the device does; `None` if this device cannot. The shell knows.
    pub starts_at_login: Option<bool>,
}

/// What was written down.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct WrittenView {
    /// The sentence.
    pub said: String,
    /// It was done against a gate: ring the clinic.
    pub against: bool,
}
