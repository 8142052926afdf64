//! Settings: a name and a JSON value.

use rusqlite::{Connection, OptionalExtension, params};

use crate::error::StoreError;

/// The table.
pub const CREATE: &str = "
CREATE TABLE settings (name TEXT PRIMARY KEY, json TEXT NOT NULL) STRICT;
";

/// Reads one.
pub fn get(db: &Connection, name: &str) -> Result<Option<String>, StoreError> {
    Ok(db.query_row("SELECT json FROM settings WHERE name = ?1", [name], |row| row.get(0)).optional()?)
}

/// Writes one.
pub fn put(db: &Connection, name: &str, json: &str) -> Result<(), StoreError> {
    db.execute(
        "INSERT INTO settings (name, json) VALUES (?1, ?2) ON CONFLICT (name) DO UPDATE SET json = ?2",
        params![name, json],
    )?;
    Ok(())
}
