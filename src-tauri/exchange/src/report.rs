//! What goes back to the clinic: the signed record of a device, authenticated with the plan's reply
//! secret, and sealed so that only the clinic opens it.
//!
//! Inside the seal is one JSON object, `{"sendaluna_report":1,"report":JWS,"reply":HMAC}`. The JWS is of
//! type `sendaluna-report`, by the device's own key; the reply is HMAC-SHA-256 (RFC 2104) over its text
//! with the reply secret of the plan in force, in unpadded base64url. The seal is an age file (C2SP age)
//! to the recipient of the signers list.
//!
//! A report carries the whole record, every plan and every statement that it rests on, so that each
//! figure of it can be worked out again from the report alone. This finds damage and casual edits, and
//! says no more than that.

use std::io::Write as _;

use base64::Engine;
use base64::engine::general_purpose::URL_SAFE_NO_PAD;
use chrono::{DateTime, NaiveDate, Utc};
use hmac::{Hmac, KeyInit, Mac};
use sendaluna_core::Coded;
use sendaluna_core::calendar::Waking;
use sendaluna_core::digest::Digest;
use sendaluna_core::ids::PersonId;
use sendaluna_core::measure::Period;
use sendaluna_core::plan::Plan;
use sendaluna_core::plan::doc::PlanDoc;
use sendaluna_core::precaution::{Accepted, Standing, StatementDoc};
use sendaluna_core::record::{Body, Event, genesis};
use serde::{Deserialize, Serialize};
use sha2::Sha256;

use crate::device::DeviceKey;
use crate::jws::{PartKind, Unverified, compact, signing_input};
use crate::key::PublicKey;
use crate::refusal::Refusal;
use crate::signers::{Right, SignersDoc};

/// The format version that this program reads and writes.
pub const FORMAT: u32 = 1;

/// A report, as carried: format version 1.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct ReportDoc {
    /// Version of the format: 1.
    pub format: u32,
    /// When it was made.
    pub issued_at: DateTime<Utc>,
    /// The device's key.
    pub device: PublicKey,
    /// Thumbprint of the clinic key that it is for.
    pub clinic_key: Digest,
    /// For whom the record is.
    pub person: PersonId,
    /// Digest of the plan in force.
    pub plan: Digest,
    /// The first day that the measures are of.
    pub from: NaiveDate,
    /// The last.
    pub through: NaiveDate,
    /// Awake from, in minutes after midnight.
    pub awake_from_min: u16,
    /// Awake to.
    pub awake_to_min: u16,
    /// The head of the record in the report before; none in the first.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub extends: Option<Digest>,
    /// The record, from its first event on.
    pub record: Vec<Entry>,
    /// The hash of its last event.
    pub head: Digest,
    /// The highest signers list, as signed.
    pub signers: String,
    /// Every statement, as signed, in the order in which they were accepted.
    pub statements: Vec<String>,
    /// Every plan, as signed, in the order in which they were taken in.
    pub plans: Vec<String>,
    /// The measures, as the patient saw them: JSON.
    pub measures: String,
    /// What the patient wants to ask.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub asks: Option<String>,
}

impl ReportDoc {
    /// When the patient is awake.
    pub fn waking(&self) -> Waking {
        Waking { from_min: self.awake_from_min, to_min: self.awake_to_min }
    }
}

/// An event of the record.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Entry {
    /// Its canonical bytes, or those of what is left without the patient's words.
    pub event: String,
    /// The hash of the event as it was recorded, if its words were kept back.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub withheld: Option<Digest>,
}

impl Entry {
    /// An event, with the patient's words or without.
    pub fn new(event: &Event, with_words: bool) -> Self {
        let bytes = event.to_bytes();
        let bare = without_words(event).filter(|_| !with_words);
        let text = |bytes| String::from_utf8(bytes).expect("JSON is UTF-8");
        match bare {
            Some(bare) => Self { event: text(bare.to_bytes()), withheld: Some(Digest::of(&bytes)) },
            None => Self { event: text(bytes), withheld: None },
        }
    }
}

/// The event without the patient's words; `None` if there are none in it.
pub fn without_words(event: &Event) -> Option<Event> {
    let mut bare = event.clone();
    match &mut bare.body {
        Body::SessionEnded { words, .. } | Body::BreakDeclared { words, .. } => words.take().map(|_| bare),
        _ => None,
    }
}

/// Why a report cannot be vouched for.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum ReportFault {
    /// Not a report of ours.
    NotOurs,
    /// A newer format.
    NewerFormat,
    /// Damaged or altered: the device's signature does not fit.
    Altered,
    /// For another clinic.
    ClinicOther,
    /// A plan or a statement in it does not hold.
    Ground(Refusal),
    /// The record does not follow from this event on.
    ChainBroken(u64),
    /// A plan that the record names is not in it.
    PlanMissing,
}

impl ReportFault {
    /// One of each.
    pub fn all() -> Vec<Self> {
        vec![
            Self::NotOurs,
            Self::NewerFormat,
            Self::Altered,
            Self::ClinicOther,
            Self::Ground(Refusal::Altered),
            Self::ChainBroken(1),
            Self::PlanMissing,
        ]
    }
}

impl Coded for ReportFault {
    fn code(&self) -> &'static str {
        match self {
            Self::NotOurs => "report-not-ours",
            Self::NewerFormat => "report-newer-format",
            Self::Altered => "report-altered",
            Self::ClinicOther => "report-clinic-other",
            Self::Ground(_) => "report-ground",
            Self::ChainBroken(_) => "report-chain-broken",
            Self::PlanMissing => "report-plan-missing",
        }
    }

    fn args(&self) -> Vec<(&'static str, String)> {
        match self {
            Self::ChainBroken(seq) => vec![("seq", seq.to_string())],
            Self::Ground(refusal) => vec![("code", refusal.code().to_string())],
            _ => Vec::new(),
        }
    }
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct Envelope {
    sendaluna_report: u32,
    report: String,
    reply: String,
}

/// Signs a report, authenticates it, and wraps it: what is to be sealed.
pub fn write(doc: &ReportDoc, device: &DeviceKey, reply_secret: Digest) -> Vec<u8> {
    let payload = serde_json::to_vec(doc).expect("a report is plain data");
    let input = signing_input(PartKind::Report, device.public().thumbprint(), &payload);
    let report = compact(&input, &device.sign(input.as_bytes()));
    let reply = URL_SAFE_NO_PAD.encode(reply(reply_secret, &report).finalize().into_bytes());
    let envelope = Envelope { sendaluna_report: FORMAT, report, reply };
    serde_json::to_vec(&envelope).expect("an envelope is plain data")
}

fn reply(secret: Digest, report: &str) -> Hmac<Sha256> {
    let mut mac = Hmac::new_from_slice(secret.bytes()).expect("a key of any length will do");
    mac.update(report.as_bytes());
    mac
}

/// Seals bytes to an age recipient; `None` if it is none.
pub fn seal(bytes: &[u8], recipient: &str) -> Option<Vec<u8>> {
    let recipient: age::x25519::Recipient = recipient.parse().ok()?;
    let one = std::iter::once(&recipient as &dyn age::Recipient);
    let encryptor = age::Encryptor::with_recipients(one).ok()?;
    let mut sealed = Vec::new();
    let mut writer = encryptor.wrap_output(&mut sealed).ok()?;
    writer.write_all(bytes).ok()?;
    writer.finish().ok()?;
    Some(sealed)
}

/// A report whose signature and chain hold.
#[derive(Debug, Clone)]
pub struct Report {
    /// What it says.
    pub doc: ReportDoc,
    /// The events; words that were kept back are absent.
    pub events: Vec<Event>,
    /// How many events had their words kept back.
    pub withheld: usize,
    jws: String,
    reply: Vec<u8>,
}

impl Report {
    /// Reads what was sealed: the device's signature, then the chain of the record.
    pub fn read(bytes: &[u8]) -> Result<Self, ReportFault> {
        let envelope: Envelope = serde_json::from_slice(bytes).map_err(|_| ReportFault::NotOurs)?;
        match envelope.sendaluna_report {
            FORMAT => {}
            newer if newer > FORMAT => return Err(ReportFault::NewerFormat),
            _ => return Err(ReportFault::Altered),
        }
        let reply = URL_SAFE_NO_PAD.decode(&envelope.reply).map_err(|_| ReportFault::Altered)?;
        let part = Unverified::parse(PartKind::Report, &envelope.report).map_err(|_| ReportFault::Altered)?;
        let said: ReportDoc = part.peek().map_err(|_| ReportFault::Altered)?;
        let doc: ReportDoc = part.verify(&said.device).map_err(|_| ReportFault::Altered)?;
        let events = read_chain(&doc)?;
        let withheld = doc.record.iter().filter(|entry| entry.withheld.is_some()).count();
        Ok(Self { doc, events, withheld, jws: envelope.report, reply })
    }

    /// Whether whoever made it has the plan with this secret.
    pub fn is_authentic(&self, reply_secret: Digest) -> bool {
        reply(reply_secret, &self.jws).verify_slice(&self.reply).is_ok()
    }

    /// Whether it goes on from where an earlier report ended, by the same device.
    pub fn extends(&self, earlier: &Self) -> bool {
        let ends_at = earlier.doc.record.len();
        let same = self.doc.device == earlier.doc.device && self.doc.person == earlier.doc.person;
        same && head_after(&self.doc.record, ends_at) == Some(earlier.doc.head)
    }

    /// The plans that it rests on, each since the day on which it was taken in, with everything that
    /// stood then. Every signature is verified; the clinic's list judges its signers.
    pub fn periods(&self, clinic_key: Digest) -> Result<Vec<Period>, ReportFault> {
        let signers = SignersDoc::read(&self.doc.signers).map_err(ReportFault::Ground)?;
        if signers.clinic_key.thumbprint() != clinic_key || self.doc.clinic_key != clinic_key {
            return Err(ReportFault::ClinicOther);
        }
        let statement = |text: &String| read_statement(text, &signers);
        let statements = self.doc.statements.iter().map(statement).collect::<Result<Vec<_>, _>>();
        let statements = signers.judge(statements.map_err(ReportFault::Ground)?);
        let plan = |text: &String| read_plan(text, &signers);
        let plans = self.doc.plans.iter().map(plan).collect::<Result<Vec<_>, _>>();
        periods(&plans.map_err(ReportFault::Ground)?, &statements, &self.events)
    }
}

fn read_chain(doc: &ReportDoc) -> Result<Vec<Event>, ReportFault> {
    let mut head = genesis();
    let mut events = Vec::with_capacity(doc.record.len());
    for (seq, entry) in (1u64..).zip(&doc.record) {
        let event = Event::from_bytes(entry.event.as_bytes()).ok_or(ReportFault::ChainBroken(seq))?;
        if event.seq != seq || event.prev != head {
            return Err(ReportFault::ChainBroken(seq));
        }
        head = entry.withheld.unwrap_or_else(|| Digest::of(entry.event.as_bytes()));
        events.push(event);
    }
    if head == doc.head { Ok(events) } else { Err(ReportFault::ChainBroken(events.len() as u64)) }
}

fn head_after(record: &[Entry], count: usize) -> Option<Digest> {
    let last = record.get(count.checked_sub(1)?)?;
    Some(last.withheld.unwrap_or_else(|| Digest::of(last.event.as_bytes())))
}

fn read_statement(text: &str, signers: &SignersDoc) -> Result<Accepted, Refusal> {
    let part = Unverified::parse(PartKind::Precautions, text)?;
    let signer = signers.signer(part.key())?;
    let doc: StatementDoc = part.verify(&signer.key)?;
    Ok(Accepted {
        digest: Digest::of(text.as_bytes()),
        key: part.key(),
        signer: signer.who(),
        may_set: signer.may(Right::SetPrecautions),
        may_lift: signer.may(Right::LiftPrecautions),
        doc,
    })
}

fn read_plan(text: &str, signers: &SignersDoc) -> Result<(Digest, Plan), Refusal> {
    let part = Unverified::parse(PartKind::Plan, text)?;
    let doc: PlanDoc = part.verify(&signers.signer(part.key())?.key)?;
    let plan = Plan::new(doc).map_err(|_| Refusal::Invalid("plans".into()))?;
    Ok((Digest::of(text.as_bytes()), plan))
}

/// Plans since the days on which they were taken in. What stood in each is everything that it or a plan
/// before it rests on.
pub fn periods(
    plans: &[(Digest, Plan)],
    statements: &[Accepted],
    events: &[Event],
) -> Result<Vec<Period>, ReportFault> {
    let mut known: Vec<Digest> = Vec::new();
    let mut periods = Vec::new();
    for event in events {
        let Body::PlanReceived { digest, .. } = &event.body else { continue };
        let named = plans.iter().find(|(known, _)| known == digest);
        let (_, plan) = named.ok_or(ReportFault::PlanMissing)?;
        known.extend(&plan.doc().statements);
        let stood: Vec<Accepted> = statements.iter().filter(|s| known.contains(&s.digest)).cloned().collect();
        let from = event.stamp.day();
        periods.push(Period { plan: plan.clone(), standing: Standing::of(&stood), from });
    }
    Ok(periods)
}

#[cfg(test)]
mod tests;
