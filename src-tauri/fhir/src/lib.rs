//! The report as a FHIR R4 (4.0.1) document: a Bundle that an electronic record can take in, beside the
//! pages that people read.
//!
//! It claims no profile. Codes are LOINC's where LOINC has one that means just that, else a thing is named
//! by its text, in the clinic's language; parts that a program should find carry an `id` that is the same
//! in every language. Nothing in it is made by chance, so that the same report gives the same bytes.

use chrono::{DateTime, Utc};
use sendaluna_core::digest::Digest;
use sendaluna_core::plan::Plan;
use sendaluna_core::record::Event;
use sendaluna_say::report::{ReportSpeaker, Reported};
use sendaluna_words::Words;

mod codes;
mod done;
mod element;
mod feeling;
mod flags;
mod frame;
mod home_tests;
mod own_words;
mod section;
mod strings;
mod urns;
mod xhtml;

use urns::Urns;

/// What is written.
#[derive(Debug, Clone, Copy)]
pub struct FhirReport<'a> {
    /// What it is made from. What lies outside the days of the measures is not in the document.
    pub reported: Reported<'a>,
    /// Thumbprint of the device's key (RFC 7638).
    pub device: Digest,
    /// Thumbprint of the clinic's key.
    pub clinic_key: Digest,
    /// Hash of the last event of the record.
    pub head: Digest,
    /// When the report is made.
    pub issued_at: DateTime<Utc>,
    /// Seconds east of UTC where it is made.
    pub offset_s: i32,
}

/// The document, as JSON; `None` without a plan.
pub fn document(report: &FhirReport<'_>, words: &Words) -> Option<String> {
    let plan = &report.reported.periods.last()?.plan;
    let speaker = ReportSpeaker::new(words, report.reported.library, report.reported.periods);
    let mut bundle = Writer { report, words, speaker, plan, urns: Urns::of(report, words.lang()) }.bundle();
    strings::clean(&mut bundle);
    bundle.sort_all_objects();
    Some(format!("{bundle:#}\n"))
}

/// Writes a report, part by part.
struct Writer<'a> {
    report: &'a FhirReport<'a>,
    words: &'a Words,
    speaker: ReportSpeaker<'a>,
    plan: &'a Plan,
    urns: Urns,
}

impl Writer<'_> {
    fn say(&self, id: &str) -> String {
        self.words.say(id, &[])
    }

    /// Events of the days that are measured.
    fn events(&self) -> impl Iterator<Item = &Event> {
        let days = self.report.reported.measures.from..=self.report.reported.measures.through;
        self.report.reported.events.iter().filter(move |event| days.contains(&event.stamp.day()))
    }
}

#[cfg(test)]
mod tests;
