//! A letter from messages that do not ship yet: for whoever translates, and for pages set right to left.
//!
//! ```text
//! cargo run -p sendaluna-tests --bin letter -- ar LETTER.ftl OUT.pdf
//! ```

use std::process::ExitCode;

use chrono::{DateTime, NaiveDate, Utc};
use sendaluna_paper::Paper;
use sendaluna_paper::letter::{Letter, letter};
use sendaluna_words::Words;

fn main() -> ExitCode {
    let args: Vec<String> = std::env::args().skip(1).collect();
    let [lang, texts, out] = args.as_slice() else { return ExitCode::from(2) };
    let Ok(texts) = std::fs::read_to_string(texts) else { return ExitCode::FAILURE };
    let words = Words::unshipped(lang, texts);
    let pieces: Vec<String> = (1..=3).map(|n| format!("SENDALUNA1:00:{n}:3:{n}")).collect();
    let printed = Letter {
        called: "Anselmo",
        clinic: "Tolsey Harbour Hip Clinic",
        phone: "555-0164",
        revision: 2,
        code: "0123-4567-89AB",
        pieces: Some(&pieces),
        day: NaiveDate::from_ymd_opt(2026, 5, 25).unwrap_or_default(),
        at: DateTime::<Utc>::UNIX_EPOCH,
    };
    match letter(&printed, &words, Paper::default()).map(|pdf| std::fs::write(out, pdf)) {
        Ok(Ok(())) => ExitCode::SUCCESS,
        _ => ExitCode::FAILURE,
    }
}
