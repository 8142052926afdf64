//! What a clinic can do: keys, the signers list, precaution statements, checking and signing plans,
//! and looking at a signed file.
//!
//! | module | question it answers |
//! |---|---|
//! | [`source`] | what did a person write, in TOML? |
//! | [`sign`] | how does it become a signed part or file? |
//! | [`check`] | does the plan contradict any precaution, on any day? |
//! | [`numbers`] | what does each item ask of the body? |
//! | [`show`] | what does a signed file say? |
//! | [`paper`] | what is printed of a plan file? |
//! | [`report`] | is a patient's report whole, and does every figure follow? |
//! | [`schema`] | which fields are there, for editors and for the documentation? |
//! | [`say`] | how is it said? |
//! | [`cli`] | the command line |

pub mod check;
pub mod cli;
pub mod error;
pub mod numbers;
pub mod paper;
pub mod report;
pub mod say;
pub mod schema;
pub mod show;
pub mod sign;
pub mod source;

pub use error::ClinicError;
