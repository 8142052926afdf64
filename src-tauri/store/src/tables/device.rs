//! The device's own key: the seed that its reports are signed with.

use rusqlite::{Connection, OptionalExtension, params};
use zeroize::Zeroizing;

use crate::error::StoreError;

/// The table, of one row.
pub const CREATE: &str = "
CREATE TABLE device (
  one INTEGER PRIMARY KEY CHECK (one = 1),
  seed BLOB NOT NULL CHECK (length(seed) = 32)
) STRICT;
";

/// Reads it; `None` until the first report.
pub fn seed(db: &Connection) -> Result<Option<Zeroizing<[u8; 32]>>, StoreError> {
    let seed: Option<[u8; 32]> = db.query_row("SELECT seed FROM device", [], |row| row.get(0)).optional()?;
    Ok(seed.map(Zeroizing::new))
}

/// Writes it. A device keeps its first key.
pub fn put(db: &Connection, seed: &Zeroizing<[u8; 32]>) -> Result<(), StoreError> {
    db.execute(
        "INSERT INTO device (one, seed) VALUES (1, ?1) ON CONFLICT (one) DO NOTHING",
        params![seed.as_slice()],
    )?;
    Ok(())
}
