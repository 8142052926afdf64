//! The clinic's signed list of who may sign what, and where reports are sealed to.

use std::collections::BTreeSet;

use chrono::{DateTime, NaiveDate, Utc};
use sendaluna_core::bounds;
use sendaluna_core::digest::Digest;
use sendaluna_core::ids::SignerId;
use sendaluna_core::plan::FORMAT;
use sendaluna_core::precaution::{Accepted, Who};
use sendaluna_core::problem::{Problem, Problems};
use sendaluna_core::text::Text;
use serde::{Deserialize, Serialize};

use crate::jws::{PartKind, Unverified};
use crate::key::PublicKey;
use crate::refusal::Refusal;

/// The signers list, as carried: format version 1. Signed by the clinic key that it names.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct SignersDoc {
    /// Version of the format: 1.
    pub format: u32,
    /// Counts only ever up.
    pub number: u32,
    /// When it was signed.
    pub issued_at: DateTime<Utc>,
    /// The clinic's name.
    pub clinic: String,
    /// The clinic key.
    pub clinic_key: PublicKey,
    /// Who may sign what.
    pub signers: Vec<Signer>,
    /// The age recipient that reports are sealed to.
    pub reports_to: String,
}

/// Somebody who signs.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Signer {
    /// Stable id.
    pub id: SignerId,
    /// What patients read.
    pub name: String,
    /// Surgeon, therapist; by language.
    pub role: Text,
    /// The key.
    pub key: PublicKey,
    /// The first day of signing.
    pub from: NaiveDate,
    /// The last day of signing.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub until: Option<NaiveDate>,
    /// Since when the key is not to be trusted, for anything it ever signed.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub revoked: Option<NaiveDate>,
    /// What this person may do.
    pub rights: Vec<Right>,
}

/// Rights.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case")]
pub enum Right {
    /// Write plans.
    WritePlans,
    /// Set precautions.
    SetPrecautions,
    /// Lift precautions.
    LiftPrecautions,
}

impl Signer {
    /// Whether this person may.
    pub fn may(&self, right: Right) -> bool {
        self.rights.contains(&right)
    }

    /// Name and role, as patients read them.
    pub fn who(&self) -> Who {
        Who { name: self.name.clone(), role: self.role.clone() }
    }

    /// Refuses a signature of this person at a moment, seen today.
    pub fn check(&self, issued_at: DateTime<Utc>, today: NaiveDate) -> Result<(), Refusal> {
        let issued = issued_at.date_naive();
        if self.revoked.is_some() {
            return Err(Refusal::SignerRevoked(self.name.clone()));
        }
        if issued < self.from || today < self.from {
            return Err(Refusal::SignerNotYetValid(self.name.clone()));
        }
        if self.until.is_some_and(|until| issued > until) {
            return Err(Refusal::SignerExpired(self.name.clone()));
        }
        Ok(())
    }
}

impl SignersDoc {
    /// Reads a signed list: verified with the clinic key that it names.
    pub fn read(part: &str) -> Result<Self, Refusal> {
        let part = Unverified::parse(PartKind::Signers, part)?;
        let said: Self = part.peek()?;
        let list: Self = part.verify(&said.clinic_key)?;
        if list.problems().is_empty() { Ok(list) } else { Err(Refusal::SignersInvalid) }
    }

    /// The one signer whose key has this thumbprint.
    pub fn signer(&self, key: Digest) -> Result<&Signer, Refusal> {
        self.signers.iter().find(|signer| signer.key.thumbprint() == key).ok_or(Refusal::SignerUnknown)
    }

    /// Statements as this list, the highest held, judges them: what a revoked key lifted is not
    /// lifted. What it set stays, because the strictest wins.
    pub fn judge(&self, statements: impl IntoIterator<Item = Accepted>) -> Vec<Accepted> {
        let judged = |mut statement: Accepted| {
            let revoked = self.signer(statement.key).is_ok_and(|signer| signer.revoked.is_some());
            statement.may_lift &= !revoked;
            statement
        };
        statements.into_iter().map(judged).collect()
    }

    /// Every problem of the list, each with its place.
    pub fn problems(&self) -> Vec<Problem> {
        let mut p = Problems::default();
        if self.format != FORMAT {
            p.add("format", "missing", vec![]);
        }
        p.bound("number", &bounds::NUMBER, self.number);
        p.line("clinic", &self.clinic);
        if !self.reports_to.starts_with("age1") || self.reports_to.len() != 62 {
            p.add("reports_to", "not-a-key", vec![]);
        }
        let mut ids = BTreeSet::new();
        let mut keys = BTreeSet::from([self.clinic_key.to_string()]);
        p.each("signers", &self.signers, |p, signer| {
            p.line("name", &signer.name);
            for (lang, words) in signer.role.iter() {
                p.line(&format!("role.{lang}"), words);
            }
            if signer.role.iter().next().is_none() {
                p.add("role", "empty-text", vec![]);
            }
            if !ids.insert(signer.id.clone()) {
                p.add("id", "repeated-id", vec![("id", signer.id.to_string())]);
            }
            if !keys.insert(signer.key.to_string()) {
                p.add("key", "repeated-id", vec![("id", signer.key.to_string())]);
            }
            if signer.rights.is_empty() {
                p.add("rights", "no-rights", vec![]);
            }
            if signer.until.is_some_and(|until| until < signer.from) {
                p.add("until", "dates-reversed", vec![]);
            }
        });
        if self.signers.is_empty() {
            p.add("signers", "missing", vec![]);
        }
        p.into_found()
    }
}
