//! Compact JWS, as narrow as it can be: one algorithm, three header members in one order, a type for
//! each kind of part, strict base64url. Whatever else there is, is refused.

use base64::Engine;
use base64::engine::general_purpose::URL_SAFE_NO_PAD;
use sendaluna_core::digest::Digest;
use serde::de::DeserializeOwned;
use serde::{Deserialize, Serialize};
use serde_json::Value;

use crate::key::{NotAKey, PublicKey};
use crate::refusal::Refusal;
use crate::scan::{Found, scan};

/// The algorithm's name after RFC 9864, which replaces RFC 8037's `EdDSA`.
pub const ALGORITHM: &str = "Ed25519";

/// The kinds of signed part.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum PartKind {
    /// The signers list.
    Signers,
    /// A precaution statement.
    Precautions,
    /// The plan.
    Plan,
    /// A report, by the patient's device.
    Report,
}

impl PartKind {
    /// The `typ` of its header.
    pub fn typ(self) -> &'static str {
        match self {
            Self::Signers => "sendaluna-signers",
            Self::Precautions => "sendaluna-precautions",
            Self::Plan => "sendaluna-plan",
            Self::Report => "sendaluna-report",
        }
    }
}

#[derive(Serialize, Deserialize, PartialEq)]
#[serde(deny_unknown_fields)]
struct Header {
    alg: String,
    kid: Digest,
    typ: String,
}

/// The bytes a signature is over: header and payload of the one writer.
pub fn signing_input(kind: PartKind, key: Digest, payload: &[u8]) -> String {
    let header = Header { alg: ALGORITHM.into(), kid: key, typ: kind.typ().into() };
    let header = serde_json::to_vec(&header).expect("a header is plain data");
    format!("{}.{}", URL_SAFE_NO_PAD.encode(header), URL_SAFE_NO_PAD.encode(payload))
}

/// The whole part, from its signing input and signature.
pub fn compact(signing_input: &str, signature: &[u8; 64]) -> String {
    format!("{signing_input}.{}", URL_SAFE_NO_PAD.encode(signature))
}

/// A part whose form was checked and whose signature was not. Its payload cannot be read yet.
#[derive(Debug)]
pub struct Unverified {
    key: Digest,
    payload: Vec<u8>,
    signing_input: String,
    signature: [u8; 64],
}

impl Unverified {
    /// Checks the form of a part of a kind.
    pub fn parse(kind: PartKind, text: &str) -> Result<Self, Refusal> {
        let (signing_input, signature) = text.rsplit_once('.').ok_or(Refusal::Altered)?;
        let (header, payload) = signing_input.split_once('.').ok_or(Refusal::Altered)?;
        let decode = |text: &str| URL_SAFE_NO_PAD.decode(text).map_err(|_| Refusal::Altered);
        let key = check_header(kind, &decode(header)?)?;
        let signature = decode(signature)?.try_into().map_err(|_| Refusal::Altered)?;
        Ok(Self { key, payload: decode(payload)?, signing_input: signing_input.to_string(), signature })
    }

    /// The thumbprint of the key that is said to have signed.
    pub fn key(&self) -> Digest {
        self.key
    }

    /// Reads the payload without believing it: to find the key that a signers list names for itself.
    pub fn peek<T: DeserializeOwned + Serialize>(&self) -> Result<T, Refusal> {
        read_exact(&self.payload)
    }

    /// Verifies and only then hands out what the part says.
    pub fn verify<T: DeserializeOwned + Serialize>(&self, key: &PublicKey) -> Result<T, Refusal> {
        if key.thumbprint() != self.key {
            return Err(Refusal::SignerUnknown);
        }
        if !key.verifies(self.signing_input.as_bytes(), &self.signature) {
            return Err(Refusal::Altered);
        }
        read_exact(&self.payload)
    }
}

/// Tells apart what can be wrong with a header; whatever is right in itself must still be the one
/// writer's bytes.
fn check_header(kind: PartKind, bytes: &[u8]) -> Result<Digest, Refusal> {
    scanned(bytes)?;
    let Ok(Value::Object(members)) = serde_json::from_slice(bytes) else { return Err(Refusal::Altered) };
    if members.contains_key("crit") {
        return Err(Refusal::CriticalHeader);
    }
    if members.keys().any(|name| !matches!(name.as_str(), "alg" | "kid" | "typ")) {
        return Err(Refusal::StrangeHeader);
    }
    if members.get("alg").and_then(Value::as_str) != Some(ALGORITHM) {
        return Err(Refusal::WrongAlgorithm);
    }
    if members.get("typ").and_then(Value::as_str) != Some(kind.typ()) {
        return Err(Refusal::WrongType);
    }
    let header: Header = serde_json::from_slice(bytes).map_err(|_| Refusal::SignerUnknown)?;
    let again = serde_json::to_vec(&header).expect("a header is plain data");
    if again == bytes { Ok(header.kid) } else { Err(Refusal::Altered) }
}

fn scanned(bytes: &[u8]) -> Result<(), Refusal> {
    scan(bytes).map_err(|found| match found {
        Found::NotJson | Found::Unsafe => Refusal::Altered,
        Found::TooDeep => Refusal::TooDeep,
        Found::Duplicate => Refusal::DuplicateMember,
    })
}

/// Reads a payload: format version first, then the document, then the same bytes written again.
fn read_exact<T: DeserializeOwned + Serialize>(payload: &[u8]) -> Result<T, Refusal> {
    scanned(payload)?;
    let value: Value = serde_json::from_slice(payload).map_err(|_| Refusal::Altered)?;
    match value.get("format").and_then(Value::as_u64) {
        Some(1) => {}
        Some(n) if n > 1 => return Err(Refusal::NewerFormat),
        _ => return Err(Refusal::Altered),
    }
    let doc: T = serde_json::from_slice(payload).map_err(|e| {
        let said = e.to_string();
        if said.contains(&NotAKey.to_string()) {
            Refusal::WeakKey
        } else if said.contains("unknown field") || said.contains("unknown variant") {
            Refusal::NewerFormat
        } else {
            Refusal::Altered
        }
    })?;
    let again = serde_json::to_vec(&doc).map_err(|_| Refusal::Altered)?;
    if again == payload { Ok(doc) } else { Err(Refusal::Altered) }
}

#[cfg(test)]
mod tests;
