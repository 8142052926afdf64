//! Plans, as signed. History stays.

use rusqlite::{Connection, params};
use sendaluna_core::digest::Digest;
use sendaluna_core::plan::Plan;
use sendaluna_core::plan::doc::PlanDoc;

use crate::error::StoreError;
use crate::tables::digest;

/// The table.
pub const CREATE: &str = "
CREATE TABLE plans (
  digest TEXT PRIMARY KEY,
  doc TEXT NOT NULL,
  part TEXT NOT NULL
) STRICT;
";

/// A plan.
#[derive(Debug, Clone, PartialEq)]
pub struct Row {
    /// Digest of the part.
    pub digest: Digest,
    /// What it says.
    pub plan: Plan,
    /// The part.
    pub part: String,
}

/// Every plan, in the order in which they were taken in.
pub fn all(db: &Connection) -> Result<Vec<Row>, StoreError> {
    let mut select = db.prepare_cached("SELECT digest, doc, part FROM plans ORDER BY rowid")?;
    let rows = select.query_map([], |row| Ok((row.get(0)?, row.get(1)?, row.get(2)?)))?;
    rows.map(|row| {
        let (d, doc, part): (String, String, String) = row?;
        let doc: PlanDoc = serde_json::from_str(&doc).map_err(|_| StoreError::NotReadable)?;
        let plan = Plan::new(doc).map_err(|_| StoreError::NotReadable)?;
        Ok(Row { digest: digest(&d)?, plan, part })
    })
    .collect()
}

/// Keeps a plan.
pub fn put(db: &Connection, row: &Row) -> Result<(), StoreError> {
    let doc = serde_json::to_string(row.plan.doc()).map_err(|_| StoreError::NotReadable)?;
    db.execute(
        "INSERT INTO plans (digest, doc, part) VALUES (?1, ?2, ?3) ON CONFLICT (digest) DO NOTHING",
        params![row.digest.to_string(), doc, row.part],
    )?;
    Ok(())
}
