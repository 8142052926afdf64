//! Migrations: only ever appended, each all-or-nothing, a backup of the file first.

use std::path::Path;

use rusqlite::Connection;

use crate::error::StoreError;
use crate::tables::{device, events, pin, plans, reports, settings, signers, statements};

/// Every migration, oldest first. The file's `user_version` counts those that have run.
pub const ALL: &[&[&str]] = &[
    &[pin::CREATE, signers::CREATE, statements::CREATE, plans::CREATE, events::CREATE, settings::CREATE],
    &[device::CREATE, reports::CREATE],
];

/// How many migrations a file has been through.
pub fn version(db: &Connection) -> Result<usize, StoreError> {
    let version: i64 = db.pragma_query_value(None, "user_version", |row| row.get(0))?;
    usize::try_from(version).map_err(|_| StoreError::NotReadable)
}

/// Brings a file up to date. A file that has been through more is refused.
pub fn run(db: &mut Connection, path: &Path, all: &[&[&str]]) -> Result<(), StoreError> {
    let done = version(db)?;
    if done > all.len() {
        return Err(StoreError::Newer);
    }
    if done > 0 && done < all.len() {
        back_up(db, path, done)?;
    }
    for (i, steps) in all.iter().enumerate().skip(done) {
        let tx = db.transaction_with_behavior(rusqlite::TransactionBehavior::Immediate)?;
        for sql in *steps {
            tx.execute_batch(sql)?;
        }
        tx.pragma_update(None, "user_version", i64::try_from(i + 1).unwrap_or(i64::MAX))?;
        tx.commit()?;
    }
    Ok(())
}

/// Copies the file, encrypted as it is, to `record.before-<n>.sqlite` beside it.
fn back_up(db: &Connection, path: &Path, done: usize) -> Result<(), StoreError> {
    db.query_row("PRAGMA wal_checkpoint(TRUNCATE)", [], |_| Ok(()))?;
    let backup = path.with_file_name(format!("record.before-{}.sqlite", done + 1));
    std::fs::copy(path, &backup)?;
    std::fs::File::open(&backup)?.sync_all()?;
    Ok(())
}
