//! Reports that were made: where the record stood then.

use rusqlite::{Connection, OptionalExtension, params};
use sendaluna_core::digest::Digest;

use crate::error::StoreError;
use crate::tables::digest;

/// The table.
pub const CREATE: &str = "
CREATE TABLE reports (
  id INTEGER PRIMARY KEY,
  made_at TEXT NOT NULL,
  head TEXT NOT NULL
) STRICT;
";

/// The head of the record in the last report.
pub fn last_head(db: &Connection) -> Result<Option<Digest>, StoreError> {
    let head: Option<String> =
        db.query_row("SELECT head FROM reports ORDER BY id DESC LIMIT 1", [], |row| row.get(0)).optional()?;
    head.map(|head| digest(&head)).transpose()
}

/// Notes a report.
pub fn put(db: &Connection, made_at: &str, head: Digest) -> Result<(), StoreError> {
    db.execute("INSERT INTO reports (made_at, head) VALUES (?1, ?2)", params![made_at, head.to_string()])?;
    Ok(())
}
