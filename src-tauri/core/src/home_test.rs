//! Home tests: is one due, may it be done, how is it timed, and what does its result say?
//!
//! The three tests of CDC STEADI. They are done only if the plan asks for them, with a helper beside the
//! patient, and only while no gate forbids anything that they ask of the body.

use crate::facts::ItemSide;
use crate::plan::doc::TestKind;

mod due;
mod result;
mod table;
mod timer;

pub(crate) use due::is_same_act;
pub use due::{DueTest, due};
pub use result::{Held, MOST_STANDS, NotHeld, Stance, TestResult};
pub use table::{AgeBand, CHAIR_STAND_BELOW_AVERAGE, Norm, Row, Verdict, verdict};
pub use timer::{Timer, TimerCue, TimerState};

/// What a test asks of the body: movements of the library that are the same acts, with the sides that do
/// them. Both sides do each, because the patient chooses the foot in front and the leg that stands.
///
/// - Chair stand: rising from a chair as high as the knee, arms crossed.
/// - Timed up and go: rising as one usually does, with the arms or without, and walking.
/// - Four-stage balance: one foot half before the other and wholly before it, and standing on one leg.
///   Feet side by side ask nothing that these do not.
pub fn acts(test: TestKind) -> &'static [(&'static str, ItemSide)] {
    match test {
        TestKind::ChairStand => &[("sit-to-stand", ItemSide::BothTogether)],
        TestKind::TimedUpAndGo => &[
            ("sit-to-stand", ItemSide::BothTogether),
            ("sit-to-stand-arms", ItemSide::BothTogether),
            ("walking", ItemSide::Alternating),
        ],
        TestKind::FourStageBalance => &[
            ("semi-tandem-stance", ItemSide::OneAfterTheOther),
            ("tandem-stance", ItemSide::OneAfterTheOther),
            ("one-leg-stance", ItemSide::OneAfterTheOther),
        ],
    }
}

#[cfg(test)]
mod tests;
