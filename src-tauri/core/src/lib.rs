//! The rules of Sendaluna.
//!
//! Everything here is a function of its arguments: no clock, no disk, no network, no randomness
//! and no text for people. Time enters as `now`, `today` or `zone`; words are chosen elsewhere by
//! the stable codes that these types carry.
//!
//! | module | question it answers |
//! |---|---|
//! | [`body`] | where is every joint, and what must the muscles hold? |
//! | [`plan`] | what did the clinic write? |
//! | [`precaution`] | what is not allowed, until when, and who says so? |
//! | [`library`] | what movements ship with us? |
//! | [`facts`] | what does an exercise ask of the body, left and right, as performed? |
//! | [`gate`] | may this be done on this day; if not, when, and who says so? |
//! | [`calendar`] | what is due when? |
//! | [`steps`] | at which of its signed doses does an item stand, and may it go one up? |
//! | [`session`] | what happens second by second? |
//! | [`home_test`] | is a test due, may it be done, and what does its result say? |
//! | [`record`] | what happened? |

pub mod body;
pub mod bounds;
pub mod calendar;
pub mod digest;
pub mod facts;
pub mod gate;
pub mod home_test;
pub mod ids;
pub mod library;
pub mod measure;
pub mod plan;
pub mod precaution;
pub mod problem;
pub mod record;
pub mod session;
pub mod steps;
pub mod text;

#[cfg(test)]
mod sample;

/// Something that went wrong and carries a stable code.
///
/// People never read the code: it names the Fluent pair `err-<code>` (what happened) and
/// `do-<code>` (what to do next), which is filled with [`Coded::args`].
pub trait Coded {
    /// The stable code, in kebab case.
    fn code(&self) -> &'static str;
    /// Names and values for the messages.
    fn args(&self) -> Vec<(&'static str, String)> {
        Vec::new()
    }
}
