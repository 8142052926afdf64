//! The kinds of event. This form is frozen: fields are only ever added, never changed or removed.

use chrono::{DateTime, NaiveDate, NaiveTime, Utc};
use serde::{Deserialize, Serialize};

use crate::calendar::outbox::ReminderAnswer;
use crate::digest::Digest;
use crate::home_test::TestResult;
use crate::ids::{CareId, ItemId, PersonId, PlanId, PrecautionId, SessionId, SignId, TestId};
use crate::plan::doc::Tier;
use crate::record::Stamp;
use crate::session::{PainAnswer, PainKind, SetId};

/// One event.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Event {
    /// Its number, counted from 1.
    pub seq: u64,
    /// The hash of the event before; of the first, [`crate::record::genesis`].
    pub prev: Digest,
    /// Where and when it was recorded.
    pub stamp: Stamp,
    /// Who did it.
    pub by: By,
    /// What it is.
    pub body: Body,
}

impl Event {
    /// The canonical bytes: JSON in field order, without white space.
    pub fn to_bytes(&self) -> Vec<u8> {
        serde_json::to_vec(self).expect("an event is plain data")
    }

    /// Reads canonical bytes; `None` if they are anything else.
    pub fn from_bytes(bytes: &[u8]) -> Option<Self> {
        let event: Self = serde_json::from_slice(bytes).ok()?;
        (event.to_bytes() == bytes).then_some(event)
    }
}

/// Who.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum By {
    /// The patient.
    Patient,
    /// A helper at home.
    Helper,
    /// The program itself.
    Program,
}

/// How a record came about.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum How {
    /// Led by the count, and somebody answered.
    Counted,
    /// Led by the count, and nobody answered.
    CountedNotConfirmed,
    /// From memory.
    Remembered,
}

/// When pain was asked.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
#[expect(missing_docs, reason = "the names say it")]
pub enum Moment {
    Before,
    During,
    After,
    NextMorning,
}

/// Where it hurts.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
#[expect(missing_docs, reason = "the names say it")]
pub enum Place {
    Hip,
    Thigh,
    Knee,
    Calf,
    Foot,
    Back,
    Shoulder,
    Elsewhere,
}

/// Distress seen by a helper, in place of a figure.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
#[expect(missing_docs, reason = "the names say it")]
pub enum Distress {
    None,
    Some,
    Much,
}

/// An answer about pain.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Pain {
    /// When it was asked.
    pub moment: Moment,
    /// 0 to 10; `None` if distress was seen instead.
    pub level: Option<u8>,
    /// Distress seen.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub distress: Option<Distress>,
    /// What kind.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub kind: Option<PainKind>,
    /// Where.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub place: Option<Place>,
    /// During which item.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub item: Option<ItemId>,
    /// What the plan's rule answered.
    pub answer: PainAnswer,
}

impl Pain {
    /// A figure of 0 to 10, and nothing more of it.
    pub fn of_level(moment: Moment, level: u8, answer: PainAnswer) -> Self {
        Self { moment, level: Some(level), distress: None, kind: None, place: None, item: None, answer }
    }
}

/// A set that was done.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct SetRecord {
    /// Which set.
    pub set: SetId,
    /// Repetitions, breaths, minutes or steps done.
    pub done: u16,
    /// How many were asked for.
    pub of: u16,
    /// Done as the easier variant.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub easier: bool,
}

/// Why an exercise was left out.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum LeaveReason {
    /// The patient chose to.
    Chose,
    /// It hurt, and the rule said so.
    Hurt,
    /// Too tired.
    Tired,
    /// No time.
    NoTime,
    /// Did not know how.
    Unsure,
    /// Nobody was there to help.
    NoHelper,
    /// Something was missing: a chair, a band.
    NothingAtHand,
}

/// How a session ended.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Ending {
    /// Every set was led.
    Whole,
    /// A part of it.
    Part,
    /// The pain rule or a warning sign said so.
    StoppedAsTold,
}

/// A set-back, which holds every opening until the clinic releases it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
#[expect(missing_docs, reason = "the names say it")]
pub enum SetBackKind {
    Fall,
    Readmission,
    EmergencySign,
    /// Another warning sign that the plan marks as one.
    MarkedSign,
}

/// Who wants a break.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum BreakWhy {
    /// The patient.
    #[default]
    Own,
    /// The clinic ordered it: nothing is due.
    Clinic,
    /// Days in hospital: nothing is due.
    Hospital,
}

impl BreakWhy {
    #[expect(clippy::trivially_copy_pass_by_ref, reason = "serde asks for a reference")]
    fn is_own(&self) -> bool {
        *self == Self::Own
    }
}

/// Why not on a day on which the patient said "not today".
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum NotTodayWhy {
    /// It hurts.
    Hurts,
    /// Unwell.
    Unwell,
    /// Too tired.
    Tired,
    /// No time.
    NoTime,
    /// Not at home.
    Away,
    /// The patient does not want to say.
    NotSaid,
}

/// Why a dose stepped up or down within what was signed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum StepWhy {
    /// The patient said yes to one up, or chose one down.
    Chose,
    /// Pain during was over the clinic's figure.
    Pain,
    /// Pain had risen by the next morning.
    NextMorning,
    /// There was a break.
    Break,
    /// A new plan has other doses.
    NewPlan,
}

/// Done or not done, without a figure.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Care {
    /// Which.
    pub care: CareId,
    /// On which day.
    pub day: NaiveDate,
}

/// What an event is.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(tag = "kind", rename_all = "kebab-case", deny_unknown_fields)]
pub enum Body {
    /// A plan was taken in.
    PlanReceived {
        /// For whom.
        person: PersonId,
        /// Which plan.
        plan: PlanId,
        /// Which revision.
        revision: u32,
        /// Digest of the plan part.
        digest: Digest,
        /// Number of the signers list.
        signers: u32,
        /// Lifts in it that were ignored, because the signer has no right to lift.
        #[serde(default, skip_serializing_if = "Vec::is_empty")]
        lifts_ignored: Vec<PrecautionId>,
    },
    /// The patient confirmed today's date, because the clock had jumped.
    DateConfirmed {
        /// The date.
        day: NaiveDate,
        /// By how many seconds the clock differed from the newest event.
        jump_s: i64,
    },
    /// A session began.
    SessionStarted {
        /// Its id.
        session: SessionId,
        /// What it is to lead.
        items: Vec<ItemId>,
    },
    /// A session went on after a break of the program.
    SessionResumed {
        /// Its id.
        session: SessionId,
    },
    /// The warning signs were asked: which are new or worse.
    SignsAnswered {
        /// Signs that are; none is a good answer.
        signs: Vec<SignId>,
        /// The gravest tier among them.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        gravest: Option<Tier>,
    },
    /// Pain was asked.
    PainAnswered {
        /// In which session.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        session: Option<SessionId>,
        /// The answer.
        pain: Pain,
    },
    /// A set was done in a session.
    SetDone {
        /// In which session.
        session: SessionId,
        /// The set.
        #[serde(rename = "record")]
        record: SetRecord,
        /// How the record came about.
        how: How,
    },
    /// A set's count was corrected, downwards only.
    SetCorrected {
        /// In which session.
        session: SessionId,
        /// Which set.
        set: SetId,
        /// What was really done.
        done: u16,
    },
    /// An exercise was left out, or its rest.
    ItemLeft {
        /// In which session.
        session: SessionId,
        /// Which item.
        item: ItemId,
        /// Why.
        reason: LeaveReason,
    },
    /// The easier variant was taken.
    ItemEasier {
        /// In which session.
        session: SessionId,
        /// Which item.
        item: ItemId,
    },
    /// A session ended.
    SessionEnded {
        /// Its id.
        session: SessionId,
        /// How.
        ending: Ending,
        /// Whether anybody answered in it.
        confirmed: bool,
        /// Effort, 0 to 10.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        effort: Option<u8>,
        /// In the patient's words.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        words: Option<String>,
    },
    /// Something was done without the program, and is recorded from memory.
    DoneByHand {
        /// Which item.
        item: ItemId,
        /// On which day.
        day: NaiveDate,
        /// Sets.
        sets: u8,
        /// Repetitions, breaths, minutes or steps a set.
        each: u16,
        /// It was not allowed on that day.
        against_gate: bool,
    },
    /// Care was done.
    CareDone {
        /// Which, and when.
        care: Care,
    },
    /// The patient was told to stop an item.
    Tightened {
        /// Which item.
        item: ItemId,
    },
    /// The patient took a tightening of their own back.
    TighteningEnded {
        /// Which item.
        item: ItemId,
    },
    /// A set-back.
    SetBack {
        /// Which.
        #[serde(rename = "what")]
        what: SetBackKind,
        /// On which day.
        day: NaiveDate,
    },
    /// A break was declared.
    BreakDeclared {
        /// First day.
        from: NaiveDate,
        /// Last day, included.
        through: NaiveDate,
        /// Who wants it.
        #[serde(default, skip_serializing_if = "BreakWhy::is_own")]
        why: BreakWhy,
        /// Why, in the patient's words.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        words: Option<String>,
    },
    /// A break is over before its last day.
    BreakEnded {
        /// The first day that it does not hold any more.
        day: NaiveDate,
    },
    /// The patient spoke to the clinic: after a sign or pain that said to ring, or a long break.
    SpokeToClinic {
        /// When the stop was shown, if there was one.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        about: Option<DateTime<Utc>>,
    },
    /// A dose stepped within what was signed.
    DoseStepped {
        /// Of which item.
        item: ItemId,
        /// From which step, counted from 1.
        from: u16,
        /// To which step.
        to: u16,
        /// Digest of the list of doses that it stepped in.
        list: Digest,
        /// Why.
        why: StepWhy,
    },
    /// One up was offered, and the patient said "not now".
    StepKept {
        /// Of which item.
        item: ItemId,
        /// At which step it stays.
        at: u16,
    },
    /// A home test was done. A later one of the same test and day takes its place.
    HomeTestDone {
        /// Which test of the plan.
        test: TestId,
        /// On which day.
        day: NaiveDate,
        /// What it came to.
        result: TestResult,
        /// Counted: as it was timed. Remembered: by hand, or corrected.
        how: How,
        /// Somebody was beside the patient.
        helper: bool,
        /// It was not allowed on that day.
        against_gate: bool,
    },
    /// A reminder was answered.
    ReminderAnswered {
        /// When it was pressed.
        at: DateTime<Utc>,
        /// The day of its slot.
        day: NaiveDate,
        /// The time of its slot, on the wall.
        time: NaiveTime,
        /// What was pressed.
        answer: ReminderAnswer,
    },
    /// Why not on a day on which "not today" was said.
    NotTodayBecause {
        /// The day.
        day: NaiveDate,
        /// Why.
        why: NotTodayWhy,
    },
}
