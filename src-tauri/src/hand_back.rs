//! `hand-back`: what goes back to the clinic, written to a folder.

use std::path::{Path, PathBuf};

pub use sendaluna_bedside::hand_back::Wishes;

use sendaluna_bedside::hand_back::HandBack;
use sendaluna_bedside::types::{Value, Words};
use serde_json::json;

use crate::answer::{Desk, Trouble, now};

/// Names that say nothing of health.
const SEALED: &str = "report.sealed";
const TABLE: &str = "record.csv";
const PAGES: &str = "report.pdf";
const FHIR: &str = "report.fhir.json";

/// Makes it, writes it, and says what is in it and where it lies.
pub fn hand_back(desk: &Desk, out: &Path, wishes: &Wishes) -> Result<u8, Trouble> {
    let made = desk.open()?.hand_back(wishes, &desk.words, &now(desk))?;
    write_to(out, &made).map_err(|(path, e)| trouble(&path, &e))?;
    let all = &made.measures.overall;
    let of = |count: u32| Value::from(count);
    let lines = [
        desk.say("hand-back-days", &[("whole", of(all.whole)), ("due", of(all.days_due))]),
        desk.say("hand-back-words", &[("n", made.words.into())]),
        said(&desk.words, out),
    ];
    let written = json!({
        "sealed": out.join(SEALED),
        "pages": out.join(PAGES),
        "table": out.join(TABLE),
        "fhir": out.join(FHIR),
        "measures": made.measures,
    });
    desk.answer(&lines.join("\n"), &written);
    Ok(0)
}

/// Writes every file to a folder; what failed, and where.
pub fn write_to(folder: &Path, made: &HandBack) -> Result<(), (PathBuf, std::io::Error)> {
    std::fs::create_dir_all(folder).map_err(|e| (folder.to_path_buf(), e))?;
    let files = [
        (SEALED, &*made.sealed),
        (PAGES, &*made.pdf),
        (TABLE, made.table.as_bytes()),
        (FHIR, made.fhir.as_bytes()),
    ];
    for (name, bytes) in files {
        std::fs::write(folder.join(name), bytes).map_err(|e| (folder.join(name), e))?;
    }
    Ok(())
}

/// Where it lies, and what to do with it.
pub fn said(words: &Words, folder: &Path) -> String {
    let files = [
        ("folder", folder.display().to_string().into()),
        ("sealed", SEALED.into()),
        ("pages", PAGES.into()),
        ("table", TABLE.into()),
        ("fhir", FHIR.into()),
    ];
    let said = [words.say("hand-back-files", &files), words.say("hand-back-only-clinic", &[])];
    said.join("\n")
}

/// A file that could not be written.
pub fn trouble(path: &Path, error: &std::io::Error) -> Trouble {
    Trouble::FileNotWritten { path: path.display().to_string(), what: error.to_string() }
}
