//! `hand-back`: what goes back to the clinic, written to a folder.

use std::path::Path;

use sendaluna_bedside::hand_back::Wishes;
use sendaluna_bedside::types::Value;
use serde_json::json;

use crate::answer::{Desk, Trouble, now};

/// Names that say nothing of health.
const SEALED: &str = "report.sealed";
const TABLE: &str = "record.csv";

/// Makes it, writes it, and says what is in it and where it lies.
pub fn hand_back(desk: &Desk, out: &Path, wishes: &Wishes) -> Result<u8, Trouble> {
    let made = desk.open()?.hand_back(wishes, &now(desk))?;
    std::fs::create_dir_all(out).map_err(|e| trouble(out, &e))?;
    for (name, bytes) in [(SEALED, made.sealed.as_slice()), (TABLE, made.table.as_bytes())] {
        std::fs::write(out.join(name), bytes).map_err(|e| trouble(&out.join(name), &e))?;
    }
    let all = &made.measures.overall;
    let of = |count: u32| Value::from(count);
    let (folder, sealed, table) = (out.display().to_string(), SEALED, TABLE);
    let lines = [
        desk.say("hand-back-days", &[("whole", of(all.whole)), ("due", of(all.days_due))]),
        desk.say(
            "hand-back-files",
            &[("folder", folder.into()), ("sealed", sealed.into()), ("table", table.into())],
        ),
        desk.say("hand-back-words", &[("n", made.words.into())]),
        desk.say("hand-back-only-clinic", &[]),
    ];
    let written = json!({ "sealed": out.join(SEALED), "table": out.join(TABLE), "measures": made.measures });
    desk.answer(&lines.join("\n"), &written);
    Ok(0)
}

fn trouble(path: &Path, error: &std::io::Error) -> Trouble {
    Trouble::FileNotWritten { path: path.display().to_string(), what: error.to_string() }
}
