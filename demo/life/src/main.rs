//! Twelve weeks of an invented patient, lived through the real use cases, with a clock of their own:
//! sessions led to the last round, days without a record, a declared break, pain that rises for a while,
//! a stay in hospital, something done against a gate, entries from memory. Always the same from the same
//! seed and day.
//!
//! ```text
//! sendaluna-life SOURCES DATA DAY0 [SEED]
//! ```
//!
//! `SOURCES` holds the clinic's filled sources, and takes its keys, its signed parts and its plan files;
//! `DATA` becomes the patient's data folder.

use std::io::Write as _;
use std::path::PathBuf;
use std::process::ExitCode;

use chrono::NaiveDate;

mod chance;
mod clinic;
mod patient;
mod story;

/// Anything that went wrong, as its type says it: it is read by whoever changes the story.
struct Trouble(String);

impl<E: std::fmt::Debug> From<E> for Trouble {
    fn from(error: E) -> Self {
        Self(format!("{error:?}"))
    }
}

fn main() -> ExitCode {
    match run() {
        Ok(days) => {
            let _ = writeln!(std::io::stdout(), "Lived: {days} days.");
            ExitCode::SUCCESS
        }
        Err(Trouble(what)) => {
            let _ = writeln!(std::io::stderr(), "{what}");
            ExitCode::FAILURE
        }
    }
}

fn run() -> Result<i64, Trouble> {
    let mut args = std::env::args_os().skip(1);
    let mut path = || args.next().map(PathBuf::from).ok_or("SOURCES DATA DAY0 [SEED]");
    let (sources, data) = (path()?, path()?);
    let day_zero: NaiveDate = path()?.to_string_lossy().parse()?;
    let seed: u64 = path().ok().map_or(Ok(7), |seed| seed.to_string_lossy().parse())?;
    let clinic = clinic::Clinic::open(&sources, day_zero)?;
    story::live(&clinic, &data, day_zero, seed)
}
