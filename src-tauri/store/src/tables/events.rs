//! The event log: append-only, hash-chained over canonical bytes.

use rusqlite::{Connection, OptionalExtension, params};
use sendaluna_core::digest::Digest;
use sendaluna_core::record::{Body, By, Event, Stamp, genesis};

use crate::error::StoreError;

/// The table. Triggers keep it append-only even for our own mistakes.
pub const CREATE: &str = "
CREATE TABLE events (seq INTEGER PRIMARY KEY, bytes BLOB NOT NULL) STRICT;
CREATE TRIGGER events_never_change BEFORE UPDATE ON events BEGIN SELECT RAISE(ABORT, 'append-only'); END;
CREATE TRIGGER events_never_go BEFORE DELETE ON events BEGIN SELECT RAISE(ABORT, 'append-only'); END;
";

/// The bytes of every event, in order.
pub fn all(db: &Connection) -> Result<Vec<Vec<u8>>, StoreError> {
    let mut select = db.prepare_cached("SELECT bytes FROM events ORDER BY seq")?;
    let rows = select.query_map([], |row| row.get(0))?;
    Ok(rows.collect::<Result<_, _>>()?)
}

/// Appends an event that follows from the last.
pub fn append(db: &Connection, stamp: Stamp, by: By, body: Body) -> Result<Event, StoreError> {
    let last: Option<(u64, Vec<u8>)> = db
        .query_row("SELECT seq, bytes FROM events ORDER BY seq DESC LIMIT 1", [], |row| {
            Ok((row.get::<_, i64>(0)?.unsigned_abs(), row.get(1)?))
        })
        .optional()?;
    let (seq, prev) = last.map_or((1, genesis()), |(seq, bytes)| (seq + 1, Digest::of(&bytes)));
    let event = Event { seq, prev, stamp, by, body };
    let seq = i64::try_from(seq).map_err(|_| StoreError::NotReadable)?;
    db.execute("INSERT INTO events (seq, bytes) VALUES (?1, ?2)", params![seq, event.to_bytes()])?;
    Ok(event)
}
