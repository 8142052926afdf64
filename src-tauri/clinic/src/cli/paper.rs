//! Plan sheet and letter, printed.

use chrono::{DateTime, Utc};
use sendaluna_core::library::Library;
use sendaluna_exchange::receive::Received;
use sendaluna_words::Words;
use serde_json::json;

use super::args::{PaperArgs, Print};
use super::{Answer, read_bytes, write, written};
use crate::error::ClinicError;
use crate::paper::{plan_letter, plan_sheet};
use crate::sign::open;

pub(super) fn sheet(words: &Words, args: &PaperArgs, now: DateTime<Utc>) -> Result<Answer, ClinicError> {
    let received = open(&read_bytes(&args.file)?, now)?;
    let pdf = plan_sheet(
        &received,
        &Library::shipped(),
        &page_words(&received, &args.print),
        args.print.large,
        now,
    )?;
    put(words, args, &pdf)
}

pub(super) fn letter(words: &Words, args: &PaperArgs, now: DateTime<Utc>) -> Result<Answer, ClinicError> {
    let file = read_bytes(&args.file)?;
    let received = open(&file, now)?;
    let pdf = plan_letter(&file, &received, &page_words(&received, &args.print), args.print.large, now)?;
    put(words, args, &pdf)
}

/// The language asked for, else the patient's.
fn page_words(received: &Received, print: &Print) -> Words {
    let of_plan = received.plan.head().languages.iter().map(sendaluna_core::text::Lang::as_str);
    Words::new(print.language.as_deref().into_iter().chain(of_plan))
}

fn put(words: &Words, args: &PaperArgs, pdf: &[u8]) -> Result<Answer, ClinicError> {
    write(&args.out, pdf)?;
    Ok(written(words, &args.out, json!({ "written": args.out, "bytes": pdf.len() })))
}
