//! The plan document, as carried: our own format, version 1. Field order is the order in which the
//! one writer writes. Fields marked *filled* are written by the clinic's program when it signs.

use chrono::{DateTime, NaiveDate, Utc};
use serde::{Deserialize, Serialize};

use crate::digest::Digest;
use crate::facts::{ItemSide, OperatedSide};
use crate::ids::{CareId, EpisodeId, ItemId, MovementId, PersonId, PlanId, SignId, StageId, TestId};
use crate::library::Movement;
use crate::text::{Lang, Text};

mod dose;

pub use dose::{
    Between, Count, Dose, Graded, Grows, Load, Ramp, RestartDose, ReturnDose, Steps, Tempo, Weekday, When,
};

/// A plan for one person.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct PlanDoc {
    /// Version of the format: 1.
    pub format: u32,
    /// Whose plan, which revision, for how long.
    pub head: Head,
    /// Whom to ring.
    pub clinic: Contacts,
    /// *Filled.* SHA-256 of every precaution statement the plan rests on, in the file's order.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub statements: Vec<Digest>,
    /// Operations and injuries.
    pub episodes: Vec<Episode>,
    /// Spans of weeks and what is done in them.
    pub stages: Vec<Stage>,
    /// Dosed exercises.
    pub items: Vec<Item>,
    /// Ice, elevation, stockings, walking.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub care: Vec<CareItem>,
    /// What pain decides.
    pub pain: PainRule,
    /// Signs that stop a session, in three tiers.
    pub warning_signs: Vec<WarningSign>,
    /// What to restart on after days without a session.
    pub return_dose: ReturnDose,
    /// Home tests, if prescribed.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub home_tests: Vec<HomeTest>,
    /// The clinic's own movements.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub movements: Vec<OwnMovement>,
    /// *Filled.* Random, 256 bits in base64url: authenticates the report to the clinic.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub reply_secret: Option<Digest>,
}

/// Whose plan, which revision, for how long.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Head {
    /// Random, given by the clinic once.
    pub person: PersonId,
    /// What the person likes to be called.
    pub called: String,
    /// Year of birth.
    pub born: u16,
    /// The clinic's own reference.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub reference: Option<String>,
    /// Stature in cm; if not given, moments are judged for the tallest of the bounds.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub height_cm: Option<u16>,
    /// Body mass in kg; if not given, the worst of the bounds decides.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub mass_kg: Option<u16>,
    /// Languages the plan is written in; the first is the patient's.
    pub languages: Vec<Lang>,
    /// The clinic's time zone, as in the IANA database.
    pub zone: String,
    /// The plan, through all its revisions.
    pub plan: PlanId,
    /// Counts up from 1.
    pub revision: u32,
    /// *Filled.* When it was signed.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub issued_at: Option<DateTime<Utc>>,
    /// *Filled.* SHA-256 of the plan part that this one supersedes.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub supersedes: Option<Digest>,
    /// *Filled.* The signers list must carry at least this number.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub least_signers: Option<u32>,
    /// Last day on which anything is due.
    pub last_day: NaiveDate,
    /// After this day the plan's day stands still until the clinic has looked again.
    pub review_by: NaiveDate,
}

/// Whom to ring.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Contacts {
    /// The clinic's name.
    pub name: String,
    /// Telephone in working hours.
    pub phone: String,
    /// Telephone out of hours.
    pub out_of_hours_phone: String,
    /// The local emergency number.
    pub emergency_phone: String,
    /// What to do in an emergency, in the clinic's words.
    pub emergency_advice: Text,
}

/// An operation or injury.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Episode {
    /// Stable id.
    pub id: EpisodeId,
    /// The procedure or injury, in plain words.
    pub name: Text,
    /// The operated or injured side.
    pub side: OperatedSide,
    /// The day of the operation or injury.
    pub day_zero: DayZero,
}

/// Day 0 of an episode.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(tag = "kind", rename_all = "kebab-case", deny_unknown_fields)]
pub enum DayZero {
    /// Known.
    Known {
        /// The date.
        date: NaiveDate,
    },
    /// Estimated; counts as given, and is said to be an estimate.
    Estimated {
        /// The date.
        date: NaiveDate,
    },
    /// Not yet known: dated gates stay shut and no stage begins.
    NotYetKnown {},
}

impl DayZero {
    /// The date, if there is one.
    pub fn date(self) -> Option<NaiveDate> {
        match self {
            Self::Known { date } | Self::Estimated { date } => Some(date),
            Self::NotYetKnown {} => None,
        }
    }
}

/// A span of weeks and what is done in it.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Stage {
    /// Stable id.
    pub id: StageId,
    /// The episode whose weeks are counted.
    pub episode: EpisodeId,
    /// What the stage is called.
    pub name: Text,
    /// First week; week 1 is days 0 to 6.
    pub from_week: u16,
    /// Last week, included.
    pub through_week: u16,
    /// What is done, with doses of the stage's own where they differ.
    pub items: Vec<StageItem>,
    /// Items done in rounds.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub rounds: Vec<Round>,
}

/// An item in a stage.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct StageItem {
    /// Which item.
    pub item: ItemId,
    /// The dose in this stage, if not the item's own.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub dose: Option<Dose>,
    /// When in this stage, if not the item's own.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub when: Option<When>,
}

/// Several items done in turn, several times.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Round {
    /// In this order; each contributes one set a round.
    pub items: Vec<ItemId>,
    /// How many rounds.
    pub rounds: u8,
    /// Rest between rounds, in seconds.
    pub rest_s: u16,
}

/// A dosed exercise.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Item {
    /// Stable id.
    pub id: ItemId,
    /// The episode it serves.
    pub episode: EpisodeId,
    /// The movement, from the library or the clinic's own.
    pub movement: MovementId,
    /// *Filled.* Digest of the movement's facts that the item was checked with.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub facts: Option<Digest>,
    /// Which side does it.
    pub side: ItemSide,
    /// How much.
    pub dose: Dose,
    /// How often.
    pub when: When,
    /// The easier variant that may take its place during a session.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub easier: Option<Easier>,
    /// Someone must be beside the patient.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub beside_you: bool,
    /// Done with the brace or sling on.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub with_brace: bool,
    /// Place in a session; lower comes first.
    #[serde(default)]
    pub order: u16,
    /// A note for the patient.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub note: Option<Text>,
    /// A dose that grows with the days.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub ramp: Option<Ramp>,
    /// An ordered list of doses with the clinic's rule.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub graded: Option<Graded>,
}

/// The easier variant of an item, with the same dose.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Easier {
    /// The movement.
    pub movement: MovementId,
    /// *Filled.* Digest of its facts.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub facts: Option<Digest>,
}

/// Something done or not done, without a figure.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct CareItem {
    /// Stable id.
    pub id: CareId,
    /// The episode whose weeks are counted.
    pub episode: EpisodeId,
    /// What it is.
    pub care: Care,
    /// In the clinic's words.
    pub text: Text,
    /// Times a day.
    pub times: u8,
    /// First week.
    pub from_week: u16,
    /// Last week, included.
    pub through_week: u16,
}

/// Kinds of care.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case")]
#[expect(missing_docs, reason = "the names say it")]
pub enum Care {
    Ice,
    Elevation,
    Stockings,
    Walking,
    Other,
}

/// At which pain to do what. Levels are 0-10; each is the lowest at which its answer is given.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct PainRule {
    /// At rest, before a session: no session today, ring the clinic.
    pub rest_stop_today_at: u8,
    /// During: go on gently.
    pub slow_at: u8,
    /// During: take the easier variant.
    pub easier_at: u8,
    /// During: stop this exercise.
    pub stop_exercise_at: u8,
    /// During: stop for today and ring.
    pub stop_today_at: u8,
    /// During, risen by so much over the level before: stop this exercise.
    pub rise_stop_exercise: u8,
    /// Sharp pain, at any level from 1: what it does.
    pub sharp: SharpPain,
    /// Pain should have settled after so many minutes.
    pub settle_minutes: u16,
    /// Next morning, risen by so much over the level before the session: one down, tell the clinic.
    pub next_morning_rise: u8,
}

/// What sharp pain does, as against a stretching one.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case")]
pub enum SharpPain {
    /// Stop this exercise.
    StopExercise,
    /// Stop for today and ring.
    StopToday,
}

/// A warning sign.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct WarningSign {
    /// Stable id.
    pub id: SignId,
    /// What it asks for.
    pub tier: Tier,
    /// In plain words, "new or worse".
    pub text: Text,
    /// Whether it is a set-back, which holds every opening until the clinic releases it.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub set_back: bool,
}

/// What a warning sign asks for; the first is the gravest.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case")]
pub enum Tier {
    /// The emergency number, now.
    Emergency,
    /// Ring the clinic today; no session.
    RingToday,
    /// Note it and carry on.
    Note,
}

/// A home test. Done only with a helper, and only if no gate forbids it.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct HomeTest {
    /// Stable id.
    pub id: TestId,
    /// The episode whose weeks are counted.
    pub episode: EpisodeId,
    /// Which test.
    pub test: TestKind,
    /// First week.
    pub from_week: u16,
    /// Every so many weeks.
    pub every_weeks: u16,
}

/// The tests of CDC STEADI.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case")]
pub enum TestKind {
    /// 30-second chair stand.
    ChairStand,
    /// Timed up and go.
    TimedUpAndGo,
    /// Four-stage balance.
    FourStageBalance,
}

/// A movement of the clinic's own, in the library's form, with its words.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct OwnMovement {
    /// The movement; its id must not be one of the library's.
    pub movement: Movement,
    /// Its name.
    pub name: Text,
    /// How to get ready.
    pub set_up: Text,
    /// How to do it.
    pub how: Text,
    /// What one should feel.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub feel: Option<Text>,
    /// Usual faults.
    pub faults: Text,
}
