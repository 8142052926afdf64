//! What happens second by second. A session is arranged from due items, compiled once into a count
//! script of absolute offsets, and led by a runner without a timer of its own: it answers "when
//! must you be woken?" and "it is now T: what happens?".

mod arrange;
mod pace;
mod pain;
mod runner;
mod script;

pub use arrange::{Arranged, arrange};
pub use pace::{Pace, PacedTime};
pub use pain::{
    PainAnswer, PainKind, answer_at_rest, answer_during, answer_to_distress, answer_to_distress_at_rest,
};
pub use runner::{NotNow, Runner, State};
pub use script::{
    Block, CHANGE_SIDE_S, COUNT_IN_S, Cue, Part, Phase, SET_UP_S, Script, SetId, SidesAtOnce, TimedCue, Turn,
    closed_length_ms, turns,
};
