//! The patient's encrypted record: one `SQLCipher` database in one data folder.
//!
//! One file per table with its queries; all writes go through [`Store::write`]; migrations are only
//! ever appended, run all-or-nothing after a backup, and a newer file is refused. One program at a
//! time may write to a data folder.

mod error;
mod key;
mod migrations;
mod open;
pub mod tables;

pub use error::StoreError;
pub use key::{Key, KeyPort, KeyringOrFile};
pub use open::{Store, Writer};

#[cfg(test)]
mod tests;
