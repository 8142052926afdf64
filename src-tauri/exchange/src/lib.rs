//! What travels between clinic and home.
//!
//! A file holds three kinds of signed part, each a compact JWS (RFC 7515 §7.1) with Ed25519
//! (RFC 8037, RFC 9864): the signers list, precaution statements, and the plan. The accepted bytes
//! are exact: what is read is written again by the one writer and must be the same, so every
//! changed byte is refused and there is no "equivalent" file.
//!
//! | module | question it answers |
//! |---|---|
//! | [`file`](mod@file) | are these bytes one of our files? |
//! | [`jws`] | is this part what it says, signed by this key? |
//! | [`key`] | which key is this? |
//! | [`signers`] | who may sign what? |
//! | [`letter`] | is this the clinic on the letter? |
//! | [`codes`] | how does a file travel on paper? |
//! | [`pictures`] | which codes are in this photo? |
//! | [`receive`] | may this plan be taken in, given what is held? |
//! | [`device`] | who kept this record? |
//! | [`report`] | what goes back to the clinic, and does it hold? |
//! | [`calendar`] | how do the plan's times go into a calendar? |
//! | [`table`] | how does the record look in a spreadsheet? |
//! | [`refusal`] | if not, why? |

pub mod calendar;
pub mod codes;
pub mod device;
pub mod file;
pub mod jws;
pub mod key;
pub mod letter;
pub mod pictures;
pub mod receive;
pub mod refusal;
pub mod report;
pub mod scan;
pub mod signers;
pub mod table;
