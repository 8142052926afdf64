//! SHA-256 digests, written as 43 characters of unpadded base64url.

use std::fmt;

use base64::Engine;
use base64::engine::general_purpose::URL_SAFE_NO_PAD;
use serde::{Deserialize, Serialize};
use sha2::{Digest as _, Sha256};

/// A SHA-256 digest (FIPS 180-4). Also the form of an RFC 7638 key thumbprint.
#[derive(Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Hash, Serialize, Deserialize)]
#[serde(try_from = "String", into = "String")]
pub struct Digest([u8; 32]);

/// A text that is not 43 characters of strict unpadded base64url.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct NotADigest;

impl fmt::Display for NotADigest {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("not a digest: 43 characters of unpadded base64url")
    }
}

impl std::error::Error for NotADigest {}

impl Digest {
    /// The digest of some bytes.
    pub fn of(bytes: &[u8]) -> Self {
        Self(Sha256::digest(bytes).into())
    }

    /// The digest of several runs of bytes, one after the other.
    pub fn of_parts(parts: &[&[u8]]) -> Self {
        let mut hash = Sha256::new();
        for part in parts {
            hash.update(part);
        }
        Self(hash.finalize().into())
    }

    /// The 32 bytes.
    pub fn bytes(&self) -> &[u8; 32] {
        &self.0
    }

    /// Reads the written form.
    pub fn parse(text: &str) -> Result<Self, NotADigest> {
        let bytes = URL_SAFE_NO_PAD.decode(text).map_err(|_| NotADigest)?;
        Ok(Self(bytes.try_into().map_err(|_| NotADigest)?))
    }
}

impl TryFrom<String> for Digest {
    type Error = NotADigest;
    fn try_from(text: String) -> Result<Self, NotADigest> {
        Self::parse(&text)
    }
}

impl From<Digest> for String {
    fn from(digest: Digest) -> String {
        digest.to_string()
    }
}

impl fmt::Display for Digest {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&URL_SAFE_NO_PAD.encode(self.0))
    }
}

impl fmt::Debug for Digest {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{self}")
    }
}

#[cfg(feature = "schema")]
impl schemars::JsonSchema for Digest {
    fn inline_schema() -> bool {
        true
    }
    fn schema_name() -> std::borrow::Cow<'static, str> {
        "Digest".into()
    }
    fn json_schema(_: &mut schemars::SchemaGenerator) -> schemars::Schema {
        schemars::json_schema!({ "type": "string", "pattern": "^[A-Za-z0-9_-]{43}$" })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn agrees_with_the_published_digest_of_abc() {
        // FIPS 180-4 example, SHA-256("abc") = ba7816bf…15ad.
        let digest = Digest::of(b"abc");
        assert_eq!(digest.bytes()[..4], [0xba, 0x78, 0x16, 0xbf]);
        assert_eq!(digest.bytes()[30..], [0x15, 0xad]);
        assert_eq!(Digest::of_parts(&[b"a", b"", b"bc"]), digest);
    }

    #[test]
    fn stray_bits_and_padding_are_refused() {
        let text = Digest::of(b"abc").to_string();
        assert_eq!(Digest::parse(&text), Ok(Digest::of(b"abc")));
        assert!(Digest::parse(&format!("{text}=")).is_err());
        let stray = format!("{}B", &text[..42]);
        assert!(
            text.ends_with(['A', 'E', 'I', 'M', 'Q', 'U', 'Y', 'c', 'g', 'k', 'o', 's', 'w', '0', '4', '8'])
        );
        assert!(Digest::parse(&stray).is_err());
    }
}
