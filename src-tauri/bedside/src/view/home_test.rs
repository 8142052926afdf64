//! A home test: on the day, before it, and while it is timed.

use sendaluna_core::home_test::TimerState;
use sendaluna_core::ids::TestId;
use serde::{Deserialize, Serialize};

use crate::view::day::GateView;
use crate::view::session::BeforeView;
use crate::view::window::ProblemView;

/// A test that the day asks for.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct TestView {
    /// Its id.
    #[cfg_attr(feature = "types", ts(type = "string"))]
    pub test: TestId,
    /// Its name.
    pub name: String,
    /// Until which day it is asked for.
    pub until_said: String,
    /// It can be begun now, questions apart.
    pub can_begin: bool,
    /// Its gate.
    pub gate: GateView,
}

/// What is asked and said before a test.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct TestBeforeView {
    /// Which test.
    #[cfg_attr(feature = "types", ts(type = "string"))]
    pub test: TestId,
    /// Its name.
    pub name: String,
    /// The questions, as before a session; nothing is coming but the test.
    pub before: BeforeView,
    /// How to get ready, what to do, and what the helper does.
    pub how: Vec<String>,
    /// What to mind.
    pub cautions: Vec<String>,
}

/// What a test shows now.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
pub struct TestStageView {
    /// Its name.
    pub name: String,
    /// Where it stands.
    #[cfg_attr(feature = "types", ts(as = "crate::view::names::TimerStateName"))]
    pub state: TimerState,
    /// What to do now.
    pub ask: String,
    /// The largest figure: stands, or seconds.
    #[cfg_attr(feature = "types", ts(type = "number | null"))]
    pub count: Option<u64>,
    /// What it counts, and what else there is to know: "seconds left".
    pub count_said: String,
    /// What the one tap says; `None` where none fits.
    pub tap: Option<String>,
    /// It can be done again.
    pub can_again: bool,
    /// The result, in words, once there is one.
    pub result: Vec<String>,
    /// How often the patient stood up, if that can be corrected.
    pub stands: Option<u16>,
    /// To how many at most.
    pub most_stands: u16,
    /// What is said aloud at this moment.
    pub said: Vec<String>,
}

/// What a test tells whoever draws it.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(tag = "told", rename_all = "kebab-case")]
pub enum TestTold {
    /// It stands so now.
    Stage {
        /// How.
        stage: Box<TestStageView>,
    },
    /// It could not be written; the test stands as it was.
    Problem {
        /// Why, and what to do.
        problem: ProblemView,
    },
    /// It is over, and this was the last word.
    Ended {
        /// As sentences.
        said: String,
        /// The result is written down.
        written: bool,
    },
}

/// What can be pressed in a test.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(tag = "press", rename_all = "kebab-case", deny_unknown_fields)]
pub enum TestPress {
    /// The one tap: begins, counts a stand, ends the walk, or says that the feet moved.
    Tap,
    /// Stop, and sit down.
    Stop,
    /// Once more from the beginning.
    Again,
    /// The result is right, or is so when corrected.
    Keep {
        /// How often the patient really stood up.
        stands: Option<u16>,
        /// The arms helped.
        arms_used: bool,
    },
    /// Go, and write nothing down.
    Leave,
}
