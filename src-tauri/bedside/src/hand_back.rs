//! What goes back to the clinic: the record with its measures, signed, and sealed so that only the clinic
//! opens it; and the same as a table that anybody reads. The patient sees all of it before it leaves, and
//! may keep their own words back.

use chrono::NaiveDate;
use sendaluna_core::calendar::{Zone, date_in};
use sendaluna_core::digest::Digest;
use sendaluna_core::measure::{Measured, Measures, Period, measure};
use sendaluna_core::plan::Plan;
use sendaluna_core::precaution::Accepted;
use sendaluna_core::record::{Event, genesis};
use sendaluna_exchange::device::DeviceKey;
use sendaluna_exchange::report::{Entry, FORMAT, ReportDoc, periods, seal, without_words, write};
use sendaluna_exchange::signers::SignersDoc;
use sendaluna_exchange::table::table;
use sendaluna_fhir::{FhirReport, document};
use sendaluna_paper::report::{PrintedReport, report};
use sendaluna_say::report::Reported;
use sendaluna_store::StoreError;
use sendaluna_words::Words;
use zeroize::Zeroizing;

use crate::clock::Now;
use crate::error::BedsideError;
use crate::home::{Bedside, Known};

mod shown;

/// How the patient wants it.
#[derive(Debug, Clone, PartialEq, Eq, Default)]
pub struct Wishes {
    /// First day; the day of the first plan if not given.
    pub from: Option<NaiveDate>,
    /// Their own words are kept back.
    pub without_words: bool,
    /// What they want to ask.
    pub asks: Option<String>,
}

/// What is ready to leave.
#[derive(Debug, Clone, PartialEq)]
pub struct HandBack {
    /// The measures.
    pub measures: Measures,
    /// The record as a table: CSV (RFC 4180), UTF-8.
    pub table: String,
    /// The sealed file.
    pub sealed: Vec<u8>,
    /// The report on two pages: a tagged PDF.
    pub pdf: Vec<u8>,
    /// The same as an FHIR R4 document, in JSON.
    pub fhir: String,
    /// How many times the patient's own words are in it.
    pub words: usize,
}

impl Bedside {
    /// The measures of a span, from the day of the first plan to today unless said otherwise.
    pub fn measures(&self, from: Option<NaiveDate>, now: &Now) -> Result<Measures, BedsideError> {
        let (known, ground) = self.known_ground()?;
        self.measured(&known, &ground, from, now)
    }

    /// Makes everything that goes back to the clinic, and notes where the record stood.
    pub fn hand_back(&mut self, wishes: &Wishes, words: &Words, now: &Now) -> Result<HandBack, BedsideError> {
        let (known, ground) = self.known_ground()?;
        let measures = self.measured(&known, &ground, wishes.from, now)?;
        let device = self.device_key()?;
        let doc = self.document(&known, &ground, &measures, wishes, &device, now)?;
        let (head, clinic_key, device_key) = (doc.head, doc.clinic_key, device.public().thumbprint());
        let bytes = write(&doc, &device, known.plan.reply_secret());
        let sealed = seal(&bytes, &ground.signers.reports_to).ok_or(BedsideError::NotSealed)?;
        self.store_mut().write(|w| w.report(now.at, doc.head))?;
        let events = leaving(&ground.events, wishes);
        let has_words = |event: &&Event| without_words(event).is_some();
        let reported = Reported {
            periods: &ground.periods,
            events: &events,
            measures: &measures,
            library: self.library(),
            asks: wishes.asks.as_deref(),
            withheld: kept_back(&ground.events, wishes),
        };
        let fhir = FhirReport {
            reported,
            device: device_key,
            clinic_key,
            head,
            issued_at: now.at,
            offset_s: self.device().offset_s(now.at),
        };
        let fhir = document(&fhir, words).ok_or(BedsideError::NoPlan)?;
        // Nobody has checked it yet.
        let day = date_in(self.device(), now.at);
        let pdf = report(&PrintedReport { reported, checked: &[], at: now.at, day }, words)?;
        let words = events.iter().filter(has_words).count();
        Ok(HandBack { table: table(&events, true), measures, sealed, pdf, fhir, words })
    }

    /// What is known and what a report rests on, from one reading of the record.
    pub(crate) fn known_ground(&self) -> Result<(Known, Ground), BedsideError> {
        let ground = self.ground()?;
        let known = self.known_of(&ground.events)?.ok_or(BedsideError::NoPlan)?;
        Ok((known, ground))
    }

    fn ground(&self) -> Result<Ground, BedsideError> {
        let signers = self.store().signers()?.ok_or(BedsideError::NoPlan)?;
        let list = SignersDoc::read(&signers.part)?;
        let rows = self.store().statements()?.into_iter().map(|row| (row.accepted, row.part));
        let (statements, statement_parts): (Vec<Accepted>, Vec<String>) = rows.unzip();
        let plans = self.store().plans()?;
        let events = self.store().events()?;
        let statements = list.judge(statements);
        let named: Vec<(Digest, Plan)> = plans.iter().map(|row| (row.digest, row.plan.clone())).collect();
        let unreadable = |_| BedsideError::Store(StoreError::NotReadable);
        Ok(Ground {
            periods: periods(&named, &statements, &events).map_err(unreadable)?,
            events,
            signers: list,
            signers_part: signers.part,
            statement_parts,
            plan_parts: plans.into_iter().map(|row| row.part).collect(),
        })
    }

    pub(crate) fn measured(
        &self,
        known: &Known,
        ground: &Ground,
        from: Option<NaiveDate>,
        now: &Now,
    ) -> Result<Measures, BedsideError> {
        let first = ground.periods.first().map(|period| period.from).ok_or(BedsideError::NoPlan)?;
        let (from, through) = (from.unwrap_or(first), known.today(now.at).session_day);
        if from > through || through < first {
            return Err(BedsideError::NoDays);
        }
        let measured = Measured {
            periods: &ground.periods,
            events: &ground.events,
            library: self.library(),
            waking: known.settings.waking,
            broken_from: None,
        };
        Ok(measure(&measured, from, through))
    }

    fn document(
        &self,
        known: &Known,
        ground: &Ground,
        measures: &Measures,
        wishes: &Wishes,
        device: &DeviceKey,
        now: &Now,
    ) -> Result<ReportDoc, BedsideError> {
        let last = ground.events.last();
        let plan = ground.plan_parts.last().ok_or(BedsideError::NoPlan)?;
        Ok(ReportDoc {
            format: FORMAT,
            issued_at: now.at,
            device: device.public(),
            clinic_key: ground.signers.clinic_key.thumbprint(),
            person: known.plan.head().person.clone(),
            plan: Digest::of(plan.as_bytes()),
            from: measures.from,
            through: measures.through,
            awake_from_min: known.settings.waking.from_min,
            awake_to_min: known.settings.waking.to_min,
            extends: self.store().last_reported_head()?,
            record: ground.events.iter().map(|event| Entry::new(event, !wishes.without_words)).collect(),
            head: last.map_or_else(genesis, |event| Digest::of(&event.to_bytes())),
            signers: ground.signers_part.clone(),
            statements: ground.statement_parts.clone(),
            plans: ground.plan_parts.clone(),
            measures: serde_json::to_string(measures).expect("measures are plain data"),
            asks: wishes.asks.clone(),
        })
    }

    /// The device's key; made when it is first needed.
    fn device_key(&mut self) -> Result<DeviceKey, BedsideError> {
        if let Some(seed) = self.store().device_seed()? {
            return Ok(DeviceKey::from_seed(&seed));
        }
        let mut seed = Zeroizing::new([0u8; 32]);
        getrandom::fill(seed.as_mut()).map_err(|e| StoreError::Other(e.to_string()))?;
        self.store_mut().write(|w| w.device_seed(&seed))?;
        Ok(DeviceKey::from_seed(&seed))
    }
}

/// How many entries the patient keeps back.
fn kept_back(events: &[Event], wishes: &Wishes) -> usize {
    let is_kept = |event: &&Event| wishes.without_words && without_words(event).is_some();
    events.iter().filter(is_kept).count()
}

/// The record as it leaves: with the patient's words, or without.
fn leaving(events: &[Event], wishes: &Wishes) -> Vec<Event> {
    let bare = |event: &Event| without_words(event).filter(|_| wishes.without_words);
    events.iter().map(|event| bare(event).unwrap_or_else(|| event.clone())).collect()
}

/// What a report rests on.
pub(crate) struct Ground {
    periods: Vec<Period>,
    events: Vec<Event>,
    signers: SignersDoc,
    signers_part: String,
    statement_parts: Vec<String>,
    plan_parts: Vec<String>,
}
