//! Signers lists, as signed.

use rusqlite::{Connection, OptionalExtension, params};
use sendaluna_core::digest::Digest;

use crate::error::StoreError;
use crate::tables::digest;

/// The table. A clinic that had to change its key counts anew.
pub const CREATE: &str = "
CREATE TABLE signers (
  digest TEXT PRIMARY KEY,
  clinic_key TEXT NOT NULL,
  number INTEGER NOT NULL,
  part TEXT NOT NULL,
  UNIQUE (clinic_key, number)
) STRICT;
";

/// A list.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Row {
    /// Digest of the part.
    pub digest: Digest,
    /// Thumbprint of the clinic key.
    pub clinic_key: Digest,
    /// Its number.
    pub number: u32,
    /// The part.
    pub part: String,
}

/// The highest list of the pinned clinic.
pub fn highest(db: &Connection) -> Result<Option<Row>, StoreError> {
    let row: Option<(String, String, u32, String)> = db
        .query_row(
            "SELECT s.digest, s.clinic_key, s.number, s.part FROM signers s
             JOIN pin p ON p.clinic_key = s.clinic_key ORDER BY s.number DESC LIMIT 1",
            [],
            |row| Ok((row.get(0)?, row.get(1)?, row.get(2)?, row.get(3)?)),
        )
        .optional()?;
    row.map(|(d, key, number, part)| Ok(Row { digest: digest(&d)?, clinic_key: digest(&key)?, number, part }))
        .transpose()
}

/// Keeps a list.
pub fn put(db: &Connection, row: &Row) -> Result<(), StoreError> {
    db.execute(
        "INSERT INTO signers (digest, clinic_key, number, part) VALUES (?1, ?2, ?3, ?4)
         ON CONFLICT (digest) DO NOTHING",
        params![row.digest.to_string(), row.clinic_key.to_string(), row.number, row.part],
    )?;
    Ok(())
}
