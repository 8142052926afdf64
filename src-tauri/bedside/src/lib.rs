//! What a patient can do, as use cases: receive a plan, see what is due and what is not yet, be led
//! through a session, record by hand, set things.
//!
//! Everything that could start an exercise asks [`sendaluna_core::gate`]; recording never refuses.
//! Time is always an argument ([`Now`], [`Clock`]). What the shells show is plain data ([`view`]); how
//! it is drawn is not known here.
//!
//! | module | question it answers |
//! |---|---|
//! | [`home`] | what is in this data folder? |
//! | [`receive`] | may this plan come in; what does it say? |
//! | [`day`] | what is due today, what is not yet, and whom to ring? |
//! | [`start`] | what does a window need first? |
//! | [`handed`] | which plan file was handed over, as a file or in pictures? |
//! | [`intake`] | where does taking a file in stand? |
//! | [`past`] | what was done so far? |
//! | [`before`] | what is asked before a session, and what is coming? |
//! | [`step`] | may a dose go one up, and what does one down do? |
//! | [`lead`] | what does a session show now, and what does a press do? |
//! | [`ring`] | what is dialled? |
//! | [`view`] | what do the shells show? |
//! | [`begin`] | may a session begin, and what is asked first? |
//! | [`guide`] | what happens now in the session? |
//! | [`front`] | what may be known while the record is shut? |
//! | [`figure`] | how does somebody look who does this exercise? |
//! | [`home_test`] | which test is due, may it begin, and what does it show now? |
//! | [`hand`] | what was done without the program? |
//! | [`hand_back`] | what goes back to the clinic? |
//! | [`sheet`] | how does the plan look on paper? |
//! | [`reminding`] | what reminds, and what was pressed on it? |
//! | [`settings`] | how does the patient want it? |
//! | [`summary`] | what does an offered plan say? |
//! | [`say`] | how is what went wrong said? |

pub mod before;
pub mod begin;
pub mod clock;
pub mod day;
pub mod error;
pub mod figure;
pub mod front;
pub mod guide;
pub mod hand;
pub mod hand_back;
pub mod handed;
pub mod home;
pub mod home_test;
pub mod intake;
pub mod lead;
pub mod past;
pub mod receive;
pub mod reminding;
pub mod ring;
pub mod say;
pub mod settings;
pub mod sheet;
pub mod start;
pub mod step;
pub mod stop;
pub mod summary;
pub mod view;
mod weeks;

pub use clock::{Clock, Now};
pub use error::BedsideError;
pub use home::Bedside;

/// What the shells need of the rooms below, so that they know only this one.
pub mod types {
    pub use sendaluna_core::Coded;
    pub use sendaluna_core::calendar::front::Front;
    pub use sendaluna_core::facts::{OperatedSide, Position, Side};
    pub use sendaluna_core::gate::NotYet;
    pub use sendaluna_core::home_test::{Held, TestResult, TimerState};
    pub use sendaluna_core::ids::{CareId, ItemId, MovementId, SessionId, SignId, TestId};
    pub use sendaluna_core::library::Prop;
    pub use sendaluna_core::plan::doc::Weekday;
    pub use sendaluna_core::plan::doc::{TestKind, Tier};
    pub use sendaluna_core::record::{
        BreakWhy, By, Ending, How, LeaveReason, NotTodayWhy, Place, SetBackKind,
    };
    pub use sendaluna_core::session::{Cue, Pace, PainAnswer, PainKind, Phase, State};
    pub use sendaluna_core::steps::Change;
    pub use sendaluna_exchange::file::SIZE_LIMIT;
    pub use sendaluna_exchange::pictures::{PICTURE_LIMIT, is_picture};
    pub use sendaluna_figure::Part;
    pub use sendaluna_say::Speaker;
    pub use sendaluna_store::{KeyPort, KeyringOrFile, StoreError};
    pub use sendaluna_words::{Value, Words};
    pub use sendaluna_zones::IanaZone;
}
