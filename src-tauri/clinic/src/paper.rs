//! What the clinic writes for others to read: the sheet for the fridge, the letter, a report on two pages
//! or as FHIR.

use chrono::{DateTime, NaiveDate, Utc};
use sendaluna_core::calendar::date_in;
use sendaluna_core::library::Library;
use sendaluna_core::plan::Plan;
use sendaluna_core::precaution::{Accepted, Standing};
use sendaluna_exchange::codes::split;
use sendaluna_exchange::letter::LetterCode;
use sendaluna_exchange::receive::Received;
use sendaluna_exchange::report::ReportFault;
use sendaluna_fhir::{FhirReport, document};
use sendaluna_paper::letter::{Letter, letter};
use sendaluna_paper::report::{PrintedReport, report};
use sendaluna_paper::sheet::PlanSheet;
use sendaluna_paper::{Paper, sheet};
use sendaluna_say::report::Reported;
use sendaluna_words::Words;
use sendaluna_zones::IanaZone;

use crate::error::ClinicError;
use crate::report::Opened;

/// The plan sheet, as it holds from today on, as a PDF.
pub fn plan_sheet(
    received: &Received,
    library: &Library,
    words: &Words,
    large: bool,
    now: DateTime<Utc>,
) -> Result<Vec<u8>, ClinicError> {
    let accepted: Vec<Accepted> = received.statements.iter().map(|(accepted, _)| accepted.clone()).collect();
    let printed = PlanSheet {
        plan: &received.plan,
        standing: &Standing::of(&accepted),
        library,
        day: today(&received.plan, now),
        set_back: None,
        tightened: &[],
        history: None,
        at: now,
    };
    Ok(sheet::plan_sheet(&printed, words, Paper { large })?)
}

/// The letter for a plan file, as a PDF.
pub fn plan_letter(
    file: &[u8],
    received: &Received,
    words: &Words,
    large: bool,
    now: DateTime<Utc>,
) -> Result<Vec<u8>, ClinicError> {
    let pieces = split(file)?;
    let contacts = &received.plan.doc().clinic;
    let printed = Letter {
        called: &received.plan.head().called,
        clinic: &contacts.name,
        phone: &contacts.phone,
        revision: received.plan.head().revision,
        code: &LetterCode::of(received.clinic_key).to_string(),
        pieces: pieces.as_deref(),
        day: today(&received.plan, now),
        at: now,
    };
    Ok(letter(&printed, words, Paper { large })?)
}

/// A patient's report, opened and checked, as a PDF. `checked` says what was found.
pub fn printed_report(
    opened: &Opened,
    words: &Words,
    checked: &[String],
    now: DateTime<Utc>,
) -> Result<Vec<u8>, ClinicError> {
    let library = Library::shipped();
    let last = opened.periods.last().ok_or(ReportFault::PlanMissing)?;
    let printed =
        PrintedReport { reported: reported(opened, &library), checked, at: now, day: today(&last.plan, now) };
    Ok(report(&printed, words)?)
}

/// A patient's report as an FHIR R4 document, from what was worked out again.
pub fn fhir_report(opened: &Opened, words: &Words) -> Result<String, ClinicError> {
    let library = Library::shipped();
    let doc = &opened.report.doc;
    let fhir = FhirReport {
        reported: reported(opened, &library),
        device: doc.device.thumbprint(),
        clinic_key: doc.clinic_key,
        head: doc.head,
        issued_at: doc.issued_at,
        offset_s: opened.report.events.last().map_or(0, |event| event.stamp.offset_s),
    };
    Ok(document(&fhir, words).ok_or(ReportFault::PlanMissing)?)
}

fn reported<'a>(opened: &'a Opened, library: &'a Library) -> Reported<'a> {
    Reported {
        periods: &opened.periods,
        events: &opened.report.events,
        measures: &opened.measures,
        library,
        asks: opened.report.doc.asks.as_deref(),
        withheld: opened.report.withheld,
    }
}

fn today(plan: &Plan, now: DateTime<Utc>) -> NaiveDate {
    let zone = IanaZone::named(&plan.head().zone).unwrap_or_else(IanaZone::last_on_earth);
    date_in(&zone, now)
}
