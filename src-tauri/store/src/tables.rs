//! One file per table: its migration, its row, its queries. All SQL is static.

pub mod device;
pub mod events;
pub mod pin;
pub mod plans;
pub mod reports;
pub mod settings;
pub mod signers;
pub mod statements;

use sendaluna_core::digest::Digest;

use crate::error::StoreError;

/// Reads a column that holds something with a written form.
fn parsed<T: TryFrom<String>>(text: String) -> Result<T, StoreError> {
    T::try_from(text).map_err(|_| StoreError::NotReadable)
}

fn digest(text: &str) -> Result<Digest, StoreError> {
    Digest::parse(text).map_err(|_| StoreError::NotReadable)
}
