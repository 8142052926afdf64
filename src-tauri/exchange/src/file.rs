//! The plan file: `{"sendaluna":1,"signers":JWS,"precautions":[JWS,…],"plan":JWS}`, exactly so.

use serde::{Deserialize, Serialize};
use serde_json::Value;

use crate::refusal::Refusal;
use crate::scan::{Found, scan};

/// How large a file may be, in bytes.
pub const SIZE_LIMIT: usize = 1 << 20;

/// The format version of the file.
const VERSION: u32 = 1;

/// A plan file, its parts not verified yet.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct PlanFile {
    sendaluna: u32,
    /// The signers list.
    pub signers: String,
    /// Precaution statements.
    pub precautions: Vec<String>,
    /// The plan.
    pub plan: String,
}

impl PlanFile {
    /// A file of these parts.
    pub fn new(signers: String, precautions: Vec<String>, plan: String) -> Self {
        Self { sendaluna: VERSION, signers, precautions, plan }
    }

    /// The bytes of the one writer: fixed order, no white space, no final newline.
    pub fn to_bytes(&self) -> Vec<u8> {
        serde_json::to_vec(self).expect("strings are plain data")
    }

    /// Reads a file; its bytes must be those of the one writer.
    pub fn read(bytes: &[u8]) -> Result<Self, Refusal> {
        if bytes.len() > SIZE_LIMIT {
            return Err(Refusal::TooLarge);
        }
        scan(bytes).map_err(|found| match found {
            Found::TooDeep => Refusal::TooDeep,
            Found::Duplicate => Refusal::DuplicateMember,
            _ if bytes.starts_with(br#"{"sendaluna":"#) => Refusal::Altered,
            _ => Refusal::NotOurs,
        })?;
        let value: Value = serde_json::from_slice(bytes).map_err(|_| Refusal::NotOurs)?;
        match value.get("sendaluna").and_then(Value::as_u64) {
            Some(n) if n > u64::from(VERSION) => return Err(Refusal::NewerFormat),
            Some(1) => {}
            Some(_) => return Err(Refusal::Altered),
            None => return Err(Refusal::NotOurs),
        }
        let file: Self = serde_json::from_value(value).map_err(|_| Refusal::Altered)?;
        if file.to_bytes() == bytes { Ok(file) } else { Err(Refusal::Altered) }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn only_the_one_writers_bytes_are_read() {
        let file = PlanFile::new("a".into(), vec!["b".into()], "c".into());
        let bytes = file.to_bytes();
        assert_eq!(bytes, br#"{"sendaluna":1,"signers":"a","precautions":["b"],"plan":"c"}"#);
        assert_eq!(PlanFile::read(&bytes), Ok(file));
        for (other, refusal) in [
            (&br#"{"sendaluna":1,"signers":"a","precautions":["b"],"plan":"c"} "#[..], Refusal::Altered),
            (br#"{"signers":"a","sendaluna":1,"precautions":["b"],"plan":"c"}"#, Refusal::Altered),
            (br#"{"sendaluna":1,"signers":"\u0061","precautions":["b"],"plan":"c"}"#, Refusal::Altered),
            (br#"{"sendaluna":1,"signers":"a","precautions":["b"],"plan":"c","x":1}"#, Refusal::Altered),
            (
                br#"{"sendaluna":1,"signers":"a","signers":"a","precautions":[],"plan":""}"#,
                Refusal::DuplicateMember,
            ),
            (br#"{"sendaluna":2,"shape":"unknown"}"#, Refusal::NewerFormat),
            (br#"{"sendaluna":0}"#, Refusal::Altered),
            (br#"{"sendaluna":1,"signers":"a","#, Refusal::Altered),
            (b"%PDF-1.7", Refusal::NotOurs),
            (br#"{"a":1}"#, Refusal::NotOurs),
            (b"", Refusal::NotOurs),
        ] {
            assert_eq!(PlanFile::read(other), Err(refusal), "{}", String::from_utf8_lossy(other));
        }
    }

    #[test]
    fn endless_data_is_refused() {
        assert_eq!(PlanFile::read(&vec![b'{'; SIZE_LIMIT + 1]), Err(Refusal::TooLarge));
        assert_eq!(PlanFile::read(&vec![b'['; SIZE_LIMIT]), Err(Refusal::TooDeep));
    }
}
