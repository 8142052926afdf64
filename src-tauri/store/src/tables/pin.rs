//! The one clinic and the one person of this data folder.

use rusqlite::{Connection, OptionalExtension, params};
use sendaluna_core::digest::Digest;
use sendaluna_core::ids::PersonId;

use crate::error::StoreError;
use crate::tables::{digest, parsed};

/// The table, of one row.
pub const CREATE: &str = "
CREATE TABLE pin (
  one INTEGER PRIMARY KEY CHECK (one = 1),
  clinic_key TEXT NOT NULL,
  person TEXT NOT NULL
) STRICT;
";

/// Clinic and person.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Pin {
    /// Thumbprint of the clinic key.
    pub clinic_key: Digest,
    /// The person.
    pub person: PersonId,
}

/// Reads it.
pub fn get(db: &Connection) -> Result<Option<Pin>, StoreError> {
    let row: Option<(String, String)> = db
        .query_row("SELECT clinic_key, person FROM pin", [], |row| Ok((row.get(0)?, row.get(1)?)))
        .optional()?;
    row.map(|(key, person)| Ok(Pin { clinic_key: digest(&key)?, person: parsed(person)? })).transpose()
}

/// Writes it.
pub fn put(db: &Connection, pin: &Pin) -> Result<(), StoreError> {
    db.execute(
        "INSERT INTO pin (one, clinic_key, person) VALUES (1, ?1, ?2)
         ON CONFLICT (one) DO UPDATE SET clinic_key = ?1, person = ?2",
        params![pin.clinic_key.to_string(), pin.person.as_str()],
    )?;
    Ok(())
}
