//! A day, its items and their gates, and whom to ring.

use chrono::NaiveDate;
use sendaluna_core::facts::Position;
use sendaluna_core::ids::{CareId, ItemId, PrecautionId, SignId};
use sendaluna_core::plan::doc::Tier;
use serde::Serialize;

use crate::view::figure::FigureAsked;
use crate::view::home_test::TestView;
use crate::view::reminding::WhyNotView;
use crate::view::step::StepView;

/// A day.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct DayView {
    /// The date on the device.
    #[cfg_attr(feature = "types", ts(type = "string"))]
    pub date: NaiveDate,
    /// The date, as people say it.
    pub date_said: String,
    /// What the patient likes to be called.
    pub called: String,
    /// Where each episode stands: "Week 7 after: …".
    pub weeks: Vec<String>,
    /// The weeks of each episode whose day 0 is known.
    pub line: Vec<EpisodeWeeksView>,
    /// Things to know first: the plan's day stands still, a long break, a stop that said to ring.
    pub notices: Vec<String>,
    /// Exercises asked for now, allowed and not yet done.
    pub now: NowView,
    /// Items of today, in the plan's order.
    pub due: Vec<ItemView>,
    /// Items of the plan that are not allowed yet.
    pub not_yet: Vec<ItemView>,
    /// Tests that the clinic asks for, not yet done in their weeks.
    pub tests: Vec<TestView>,
    /// Care.
    pub care: Vec<CareView>,
    /// Rules of the day.
    pub rules: Vec<RuleView>,
    /// Lifts that have no effect.
    pub lifts_ignored: Vec<String>,
    /// Whom to ring, and when to stop.
    pub contacts: ContactsView,
    /// A session of today can be gone on with.
    pub can_go_on: bool,
    /// A session of what is due now can begin, questions apart.
    pub can_begin: bool,
    /// After so long a break the clinic is rung first; nothing begins until the patient says so.
    pub ring_first: bool,
    /// A stop that said to ring, until the patient has spoken to the clinic.
    pub stop: Option<StopView>,
    /// "You said not today. Why was that?"
    pub why_not: Option<WhyNotView>,
}

/// "Now: 6 exercises, 24 minutes".
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct NowView {
    /// How many exercises.
    pub exercises: usize,
    /// How many minutes, rounded up.
    #[cfg_attr(feature = "types", ts(type = "number"))]
    pub minutes: u64,
    /// The sentence.
    pub said: String,
}

/// An item.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[expect(clippy::struct_excessive_bools, reason = "each says another thing of it")]
pub struct ItemView {
    /// Its id.
    #[cfg_attr(feature = "types", ts(type = "string"))]
    pub item: ItemId,
    /// Its name.
    pub name: String,
    /// Which side.
    pub side: String,
    /// The position it is done in; `None` if this version does not know the movement.
    #[cfg_attr(feature = "types", ts(as = "Option<crate::view::names::PositionName>"))]
    pub position: Option<Position>,
    /// The position, in words.
    pub position_said: String,
    /// Its figure.
    pub figure: FigureAsked,
    /// How much, in sentences.
    pub dose: String,
    /// Where it stands among its signed doses, if its dose moves.
    pub step: Option<StepView>,
    /// How many rounds, for who writes it down by hand.
    pub sets: u8,
    /// How many repetitions, breaths, minutes or steps in each.
    pub each: u16,
    /// Times today.
    pub times: u16,
    /// Times done today.
    pub done: u16,
    /// How often, and how often done, in words.
    pub times_said: String,
    /// A session of everything due now leads it.
    pub is_due: bool,
    /// It can be started alone, now.
    pub can_start: bool,
    /// Somebody must be beside the patient.
    pub beside_you: bool,
    /// The clinic's note.
    pub note: Option<String>,
    /// How to get ready.
    pub set_up: String,
    /// How to do it.
    pub how: String,
    /// What one should feel.
    pub feel: String,
    /// What to keep an eye on, and when to stop it.
    pub faults: String,
    /// The patient has stopped it: "my clinic told me to stop this".
    pub tightened: bool,
    /// Its gate.
    pub gate: GateView,
}

/// A gate.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct GateView {
    /// It may be done.
    pub open: bool,
    /// The day on which it opens, if that is known.
    #[cfg_attr(feature = "types", ts(type = "string | null"))]
    pub opens: Option<NaiveDate>,
    /// The sentence: "Not yet. Opens …", or that it may be done.
    pub said: String,
    /// Every reason.
    pub reasons: Vec<ReasonView>,
}

/// A reason.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct ReasonView {
    /// The precaution, if it is one.
    #[cfg_attr(feature = "types", ts(type = "string | null"))]
    pub precaution: Option<PrecautionId>,
    /// Who set it.
    pub set_by: Option<String>,
    /// The first day on which this reason no longer holds.
    #[cfg_attr(feature = "types", ts(type = "string | null"))]
    pub opens: Option<NaiveDate>,
    /// The sentence.
    pub said: String,
}

/// A care item.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct CareView {
    /// Its id.
    #[cfg_attr(feature = "types", ts(type = "string"))]
    pub care: CareId,
    /// What it is.
    pub text: String,
    /// Times today.
    pub times: u8,
    /// Times done today.
    pub done: u16,
    /// Both, in words.
    pub done_said: String,
}

/// A rule of the day.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct RuleView {
    /// The precaution it is.
    #[cfg_attr(feature = "types", ts(type = "string"))]
    pub precaution: PrecautionId,
    /// What it says.
    pub text: String,
    /// Who set it.
    pub set_by: String,
    /// The same, as a sentence.
    pub set_by_said: String,
    /// The first day on which it no longer holds.
    #[cfg_attr(feature = "types", ts(type = "string | null"))]
    pub opens: Option<NaiveDate>,
    /// Until when, in words.
    pub until_said: String,
}

/// Whom to ring, and when to stop.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct ContactsView {
    /// The clinic.
    pub clinic: String,
    /// In working hours.
    pub phone: String,
    /// Out of hours.
    pub out_of_hours_phone: String,
    /// The emergency number.
    pub emergency_phone: String,
    /// What to do in an emergency.
    pub emergency_advice: String,
    /// Warning signs, gravest first.
    pub signs: Vec<SignView>,
    /// Cautions, always shown with them.
    pub cautions: Vec<String>,
}

/// A warning sign.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct SignView {
    /// Its id.
    #[cfg_attr(feature = "types", ts(type = "string"))]
    pub sign: SignId,
    /// What it asks for.
    #[cfg_attr(feature = "types", ts(as = "crate::view::names::Tier"))]
    pub tier: Tier,
    /// In words.
    pub text: String,
}

/// Every gate.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct GatesView {
    /// The day by which they are judged.
    #[cfg_attr(feature = "types", ts(type = "string"))]
    pub date: NaiveDate,
    /// Things to know first.
    pub notices: Vec<String>,
    /// Items of the plan.
    pub items: Vec<ItemView>,
    /// Rules of the day.
    pub rules: Vec<RuleView>,
    /// Lifts that have no effect.
    pub lifts_ignored: Vec<String>,
}

/// The weeks of an episode.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct EpisodeWeeksView {
    /// What the episode is.
    pub name: String,
    /// Where it stands: "Week 7 after: …".
    pub said: String,
    /// Its weeks, from the first to the plan's last.
    pub weeks: Vec<WeekView>,
}

/// A week.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct WeekView {
    /// Counted from 1.
    pub number: u16,
    /// It lies behind.
    pub past: bool,
    /// It is this week.
    pub now: bool,
    /// Its stages, in words.
    pub stages: Vec<String>,
    /// What opens in it.
    pub gates: Vec<OpensView>,
    /// All of it as one sentence, for whoever does not see the line.
    pub said: String,
}

/// An exercise that opens in a week.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct OpensView {
    /// "Straight leg raise: opens Monday 25 May".
    pub said: String,
    /// Its figure.
    pub figure: FigureAsked,
}

/// A stop that says to ring.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct StopView {
    /// How grave it is.
    #[cfg_attr(feature = "types", ts(as = "crate::view::names::Tier"))]
    pub tier: Tier,
    /// The sentence.
    pub said: String,
    /// What to say and do, in the clinic's words; only in an emergency.
    pub advice: Option<String>,
    /// Nobody at the clinic sees this now.
    pub nobody_sees: String,
    /// The clinic.
    pub clinic: String,
    /// In working hours.
    pub phone: String,
    /// Out of hours.
    pub out_of_hours_phone: String,
    /// The emergency number.
    pub emergency_phone: String,
}
