//! What the shells show: plain data in the patient's words. With the feature `types`, each also
//! describes itself to the window's language.

pub mod day;
pub mod figure;
pub mod hand_back;
pub mod home_test;
#[cfg(feature = "types")]
pub mod names;
pub mod past;
pub mod receive;
pub mod reminding;
pub mod session;
pub mod step;
pub mod window;
