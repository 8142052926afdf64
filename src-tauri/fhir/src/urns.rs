//! Names of the parts of a document.

use std::fmt::Write as _;

use chrono::SecondsFormat;
use sendaluna_core::digest::Digest;
use serde_json::{Value, json};

use crate::FhirReport;

/// Makes a name from what tells this document from every other, and a word for the part.
pub(crate) struct Urns {
    seed: String,
}

impl Urns {
    /// Of a report in a language: two languages are two documents.
    pub(crate) fn of(report: &FhirReport<'_>, lang: &str) -> Self {
        let at = report.issued_at.to_rfc3339_opts(SecondsFormat::AutoSi, true);
        Self { seed: format!("{}/{at}/{lang}", report.head) }
    }

    /// A UUID of version 8 (RFC 9562, 5.8) from SHA-256.
    pub(crate) fn urn(&self, part: &str) -> String {
        let digest = Digest::of(format!("{}/{part}", self.seed).as_bytes());
        let mut urn = "urn:uuid:".to_string();
        for (n, byte) in digest.bytes()[..16].iter().enumerate() {
            let byte = match n {
                6 => byte & 0x0f | 0x80,
                8 => byte & 0x3f | 0x80,
                _ => *byte,
            };
            let dash = if matches!(n, 4 | 6 | 8 | 10) { "-" } else { "" };
            let _ = write!(urn, "{dash}{byte:02x}");
        }
        urn
    }

    /// Leads to a part.
    pub(crate) fn way(&self, part: &str) -> Value {
        json!({ "reference": self.urn(part) })
    }
}

/// A key as a URI (RFC 9278).
pub(crate) fn thumbprint_uri(key: Digest) -> String {
    format!("urn:ietf:params:oauth:jwk-thumbprint:sha-256:{key}")
}
