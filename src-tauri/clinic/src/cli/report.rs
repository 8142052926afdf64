//! A patient's report, opened.

use chrono::{DateTime, Utc};
use sendaluna_authority::ReportKey;
use sendaluna_exchange::table::table;
use sendaluna_words::Words;
use serde_json::json;

use super::args::{Key, ReportCommand};
use super::{Answer, read_bytes, read_passphrase, read_signers, write};
use crate::error::ClinicError;
use crate::paper::{fhir_report, printed_report};
use crate::report::{Ground, open_report};
use crate::say::ClinicSpeaker;
use crate::source::read_text;

/// Opens it; the answer is no if it is not vouched for.
pub(super) fn answer(
    words: &Words,
    speaker: &ClinicSpeaker<'_>,
    command: &ReportCommand,
    now: DateTime<Utc>,
) -> Result<Answer, ClinicError> {
    let ReportCommand::Open { file, key, signers, before, pdf, csv, fhir, language } = command;
    let ground = Ground {
        signers: signers.as_deref().map(read_signers).transpose()?,
        earlier: before.iter().map(|path| read_bytes(path)).collect::<Result<_, _>>()?,
    };
    let sealed = read_bytes(file)?;
    let opened = open_report(&sealed, &report_key(words, key)?, &ground)?;
    let view = speaker.report(&opened);
    let written = language.as_deref().map(|language| Words::new([language]));
    let written = written.as_ref().unwrap_or(words);
    if let Some(path) = pdf {
        let checked = ClinicSpeaker::new(written).checked(&opened);
        write(path, &printed_report(&opened, written, &checked, now)?)?;
    }
    if let Some(path) = fhir {
        write(path, fhir_report(&opened, written)?.as_bytes())?;
    }
    if let Some(path) = csv {
        write(path, table(&opened.report.events, true).as_bytes())?;
    }
    Ok(Answer { text: view.lines.join("\n"), json: json!(view), ok: view.vouched_for })
}

fn report_key(words: &Words, key: &Key) -> Result<ReportKey, ClinicError> {
    let sealed = read_text(&key.key)?;
    Ok(ReportKey::open(&sealed, &read_passphrase(words, &key.passphrase, false)?)?)
}
