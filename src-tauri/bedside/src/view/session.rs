//! Before a session, in it, and after it.

use chrono::NaiveDate;
use sendaluna_core::facts::Position;
use sendaluna_core::ids::ItemId;
use sendaluna_core::record::{Distress, Ending, Place};
use sendaluna_core::session::{Pace, PainAnswer, PainKind, Phase};
use serde::{Deserialize, Serialize};

use crate::begin::Questions;
use crate::view::day::{SignView, StopView};
use crate::view::figure::FigureAsked;
use crate::view::step::{MorningView, StepOfferView};
use crate::view::window::ProblemView;

/// What is asked before a session, and what is coming.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct BeforeView {
    /// Today's date must be confirmed first.
    pub confirm_date: Option<DateView>,
    /// The questions.
    pub questions: Questions,
    /// Next morning's pain is asked too.
    pub morning: bool,
    /// The warning signs, gravest first.
    pub signs: Vec<SignView>,
    /// A session of today can be gone on with.
    pub can_go_on: bool,
    /// What is coming.
    pub coming: Vec<ComingView>,
    /// How long it takes, in minutes, rounded up.
    #[cfg_attr(feature = "types", ts(type = "number"))]
    pub minutes: u64,
    /// What to have ready.
    pub have_ready: Vec<String>,
    /// Somebody should be beside the patient for a part of it.
    pub beside_you: bool,
}

/// A date.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct DateView {
    /// As written.
    #[cfg_attr(feature = "types", ts(type = "string"))]
    pub day: NaiveDate,
    /// As people say it.
    pub said: String,
}

/// An item that is coming.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct ComingView {
    /// Its id.
    #[cfg_attr(feature = "types", ts(type = "string"))]
    pub item: ItemId,
    /// Its name.
    pub name: String,
    /// Which side.
    pub side: String,
    /// The position.
    #[cfg_attr(feature = "types", ts(as = "crate::view::names::PositionName"))]
    pub position: Position,
    /// Its figure.
    pub figure: FigureAsked,
    /// How much.
    pub dose: String,
}

/// What the answers before a session come to.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct AnsweredView {
    /// No session: ring.
    pub stop: Option<StopView>,
    /// Noted; the session may begin.
    pub noted: Option<String>,
    /// Pain had risen by this morning; the session may begin.
    pub morning: Option<MorningView>,
}

/// Where a session stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "kebab-case")]
#[expect(missing_docs, reason = "as `sendaluna_core::session::State`, where each is described")]
pub enum StageName {
    Prepare,
    Running,
    Resting,
    Walking,
    Paused,
    Asking,
    Done,
    Stopped,
}

/// What a session waits for.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "kebab-case")]
pub enum WaitsFor {
    /// "I am ready."
    Ready,
    /// "I have walked them."
    Steps,
}

/// What a session shows now.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[expect(clippy::struct_excessive_bools, reason = "each is a press that fits this moment or does not")]
pub struct StageView {
    /// Where it stands.
    pub stage: StageName,
    /// The item it stands in.
    pub item: Option<StageItemView>,
    /// The largest figure: the repetition or breath; the seconds of a rest, of changing sides or of
    /// the count-in; the minutes or steps.
    pub count: Option<u16>,
    /// The word beside it: "Hold", "Rest".
    pub phase: String,
    /// Seconds left of a hold.
    pub phase_left: Option<u16>,
    /// What the figure does.
    pub motion: Option<MotionView>,
    /// "of 10, round 2 of 2"
    pub of_said: String,
    /// "12 minutes left"
    pub left_said: String,
    /// The rounds of this exercise, on this side.
    pub tally: Vec<TallySetView>,
    /// The same in words.
    pub tally_said: String,
    /// What comes after a rest.
    pub next: Option<StageItemView>,
    /// Time stands still until this is said.
    pub waits_for: Option<WaitsFor>,
    /// "Ready" fits now.
    pub can_ready: bool,
    /// "Ready" says that somebody is beside the patient.
    pub asks_somebody: bool,
    /// What the space bar means now.
    pub main_press: Option<Press>,
    /// A helper leads: they may say what they see in place of a figure.
    pub helper: bool,
    /// The count goes by hand, and waits for a step.
    pub can_step: bool,
    /// How fast the count goes.
    #[cfg_attr(feature = "types", ts(as = "crate::view::names::PaceName"))]
    pub pace: Pace,
    /// Pausing fits now.
    pub can_pause: bool,
    /// Going on after a pause fits now.
    pub can_go_on: bool,
    /// Going on at once from a rest fits now.
    pub can_go_on_now: bool,
    /// "This hurts" fits now.
    pub can_hurts: bool,
    /// "I did fewer" fits now.
    pub can_fewer: bool,
    /// Between rounds: how many at most can be said. In a round, it ends the round.
    pub fewer_most: Option<u16>,
    /// There is an easier way, and it is allowed.
    pub can_easier: bool,
    /// Leaving this one out fits now.
    pub can_leave: bool,
    /// What is said aloud at this moment.
    pub said: Vec<String>,
    /// How hard it was is asked at the end.
    pub asks_effort: bool,
    /// It was stopped as told; nothing more is asked.
    pub as_told: bool,
}

/// What the figure does, from the moment that this is told.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct MotionView {
    /// Which part of a repetition.
    #[cfg_attr(feature = "types", ts(as = "crate::view::names::PhaseName"))]
    pub phase: Phase,
    /// For how long, in seconds.
    pub seconds: u16,
    /// Of which repetition.
    pub number: u16,
}

/// An item, as a session shows it.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct StageItemView {
    /// Its id.
    #[cfg_attr(feature = "types", ts(type = "string"))]
    pub item: ItemId,
    /// Its name, or that of its easier variant.
    pub name: String,
    /// Which side works now.
    pub side: String,
    /// The position.
    #[cfg_attr(feature = "types", ts(as = "crate::view::names::PositionName"))]
    pub position: Position,
    /// The same in words.
    pub position_said: String,
    /// How to get ready.
    pub set_up: String,
    /// How to do it.
    pub how: String,
    /// What one should feel.
    pub feel: String,
    /// What to keep an eye on, and when to stop.
    pub faults: String,
    /// Its figure, as the side that works now does it.
    pub figure: FigureAsked,
    /// How much.
    pub dose: String,
    /// The clinic's note.
    pub note: Option<String>,
    /// Somebody must be beside the patient.
    pub beside_you: bool,
    /// It is done standing: hand on the rail, phone down.
    pub standing: bool,
}

/// A round: how much of it is done.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct TallySetView {
    /// Done.
    pub done: u16,
    /// Of so many.
    pub of: u16,
}

/// The plan's answer to pain.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct PainSaidView {
    /// The answer.
    #[cfg_attr(feature = "types", ts(as = "crate::view::names::PainAnswerName"))]
    pub answer: PainAnswer,
    /// As a sentence.
    pub said: String,
    /// The dose went one down, as a sentence.
    pub stepped: Option<String>,
    /// Nobody at the clinic sees this now.
    pub nobody_sees: String,
}

/// How a session ended.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct EndedView {
    /// How.
    #[cfg_attr(feature = "types", ts(as = "crate::view::names::EndingName"))]
    pub ending: Ending,
    /// As a sentence.
    pub said: String,
    /// Nobody at the clinic sees this now, if anything was said.
    pub nobody_sees: Option<String>,
    /// One up that the patient is asked about now.
    pub offer: Option<StepOfferView>,
}

/// What a session tells whoever draws it.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(tag = "told", rename_all = "kebab-case")]
pub enum Told {
    /// It stands so now.
    Stage {
        /// How.
        stage: Box<StageView>,
    },
    /// A press did not fit, or could not be written; the session stands as it was.
    Problem {
        /// Why, and what to do.
        problem: ProblemView,
    },
    /// The plan's answer to pain.
    Pain {
        /// The answer.
        pain: PainSaidView,
    },
    /// Stop, and ring.
    Stop {
        /// Whom.
        stop: StopView,
    },
    /// It has ended, and this was the last word.
    Ended {
        /// How.
        ended: EndedView,
    },
}

/// What can be pressed in a session.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(tag = "press", rename_all = "kebab-case", deny_unknown_fields)]
pub enum Press {
    /// In position, or the steps are walked.
    Ready,
    /// Pause.
    Pause,
    /// Go on after a pause.
    GoOn,
    /// Go on at once from a rest.
    GoOnNow,
    /// The next movement of a count by hand.
    StepOn,
    /// How fast the count goes from now on.
    Pace {
        /// Which.
        #[cfg_attr(feature = "types", ts(as = "crate::view::names::PaceName"))]
        pace: Pace,
    },
    /// This hurts: movement and voice stop.
    Hurts,
    /// How much, what kind and where.
    HurtsAnswer {
        /// 0 to 10.
        level: u8,
        /// What kind.
        #[cfg_attr(feature = "types", ts(as = "crate::view::names::PainKindName"))]
        kind: PainKind,
        /// Where.
        #[cfg_attr(feature = "types", ts(as = "Option<crate::view::names::PlaceName>"))]
        place: Option<Place>,
    },
    /// What a helper sees, in place of how much it hurts.
    Distress {
        /// How much distress.
        #[cfg_attr(feature = "types", ts(as = "crate::view::names::DistressName"))]
        seen: Distress,
    },
    /// I did fewer: ends the present round; between rounds, how many the last one really had.
    Fewer {
        /// How many.
        done: Option<u16>,
    },
    /// The easier way.
    Easier,
    /// Leave this one.
    Leave,
    /// I feel unwell or dizzy.
    Unwell,
    /// Stop the session.
    Stop,
    /// What the patient says of it, after its end.
    Finish {
        /// How hard it was, 0 to 10.
        effort: Option<u8>,
        /// Pain now, 0 to 10.
        pain: Option<u8>,
        /// A line of free text.
        words: Option<String>,
    },
}
