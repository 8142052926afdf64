//! Precaution statements, as signed. None ever goes: absence never lifts.

use rusqlite::{Connection, params};
use sendaluna_core::precaution::{Accepted, StatementDoc, Who};

use crate::error::StoreError;
use crate::tables::digest;

/// The table. Rights are those of the day it was accepted.
pub const CREATE: &str = "
CREATE TABLE statements (
  digest TEXT PRIMARY KEY,
  key TEXT NOT NULL,
  signer TEXT NOT NULL,
  may_set INTEGER NOT NULL,
  may_lift INTEGER NOT NULL,
  doc TEXT NOT NULL,
  part TEXT NOT NULL
) STRICT;
";

/// A statement.
#[derive(Debug, Clone, PartialEq)]
pub struct Row {
    /// What it says, and what its signer could.
    pub accepted: Accepted,
    /// The part.
    pub part: String,
}

type Columns = (String, String, String, bool, bool, String, String);

/// Every statement.
pub fn all(db: &Connection) -> Result<Vec<Row>, StoreError> {
    let mut select = db.prepare_cached(
        "SELECT digest, key, signer, may_set, may_lift, doc, part FROM statements ORDER BY rowid",
    )?;
    let rows = select.query_map([], |row| {
        Ok((row.get(0)?, row.get(1)?, row.get(2)?, row.get(3)?, row.get(4)?, row.get(5)?, row.get(6)?))
    })?;
    rows.map(|row| {
        let (d, key, signer, may_set, may_lift, doc, part): Columns = row?;
        let doc: StatementDoc = serde_json::from_str(&doc).map_err(|_| StoreError::NotReadable)?;
        let signer: Who = serde_json::from_str(&signer).map_err(|_| StoreError::NotReadable)?;
        Ok(Row {
            accepted: Accepted { digest: digest(&d)?, key: digest(&key)?, signer, may_set, may_lift, doc },
            part,
        })
    })
    .collect()
}

/// Keeps a statement.
pub fn put(db: &Connection, row: &Row) -> Result<(), StoreError> {
    let said = &row.accepted;
    let json = |value: serde_json::Result<String>| value.map_err(|_| StoreError::NotReadable);
    let (doc, signer) = (json(serde_json::to_string(&said.doc))?, json(serde_json::to_string(&said.signer))?);
    db.execute(
        "INSERT INTO statements (digest, key, signer, may_set, may_lift, doc, part) VALUES (?1, ?2, ?3, ?4, ?5, ?6, ?7)
         ON CONFLICT (digest) DO NOTHING",
        params![said.digest.to_string(), said.key.to_string(), signer, said.may_set, said.may_lift, doc, row.part],
    )?;
    Ok(())
}
