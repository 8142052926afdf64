//! The clinic's signing. Private keys live here and nowhere in the patient's program.
//!
//! | module | question it answers |
//! |---|---|
//! | [`keys`] | a new key; a key sealed with a passphrase; a key opened again |
//! | [`sign`] | a signed part from what is to be said |

pub mod keys;
pub mod sign;

pub use keys::{KeyError, ReportKey, SecretKey};
