//! Public keys and their thumbprints.

use std::fmt;

use base64::Engine;
use base64::engine::general_purpose::URL_SAFE_NO_PAD;
use ed25519_dalek::{Signature, VerifyingKey};
use sendaluna_core::digest::Digest;
use serde::{Deserialize, Serialize};

/// An Ed25519 public key, written as the `x` of RFC 8037: 43 characters of unpadded base64url.
#[derive(Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(try_from = "String", into = "String")]
pub struct PublicKey(VerifyingKey);

/// A text that is no usable public key: not 32 bytes, not on the curve, or of small order.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct NotAKey;

impl fmt::Display for NotAKey {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str("not a usable Ed25519 public key")
    }
}

impl std::error::Error for NotAKey {}

impl PublicKey {
    /// From the 32 bytes.
    pub fn from_bytes(bytes: [u8; 32]) -> Result<Self, NotAKey> {
        let key = VerifyingKey::from_bytes(&bytes).map_err(|_| NotAKey)?;
        if key.is_weak() { Err(NotAKey) } else { Ok(Self(key)) }
    }

    /// From the written form.
    pub fn parse(x: &str) -> Result<Self, NotAKey> {
        let bytes = URL_SAFE_NO_PAD.decode(x).map_err(|_| NotAKey)?;
        Self::from_bytes(bytes.try_into().map_err(|_| NotAKey)?)
    }

    /// The RFC 7638 thumbprint: SHA-256 over the key's canonical JWK.
    pub fn thumbprint(&self) -> Digest {
        Digest::of(format!(r#"{{"crv":"Ed25519","kty":"OKP","x":"{self}"}}"#).as_bytes())
    }

    /// Whether a signature is this key's over a message. Strict: neither another encoding of the
    /// same signature nor one with a point of small order passes.
    pub fn verifies(&self, message: &[u8], signature: &[u8; 64]) -> bool {
        self.0.verify_strict(message, &Signature::from_bytes(signature)).is_ok()
    }
}

impl TryFrom<String> for PublicKey {
    type Error = NotAKey;
    fn try_from(x: String) -> Result<Self, NotAKey> {
        Self::parse(&x)
    }
}

impl From<PublicKey> for String {
    fn from(key: PublicKey) -> String {
        key.to_string()
    }
}

impl fmt::Display for PublicKey {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.write_str(&URL_SAFE_NO_PAD.encode(self.0.as_bytes()))
    }
}

impl fmt::Debug for PublicKey {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        write!(f, "{self}")
    }
}

#[cfg(feature = "schema")]
impl schemars::JsonSchema for PublicKey {
    fn inline_schema() -> bool {
        true
    }
    fn schema_name() -> std::borrow::Cow<'static, str> {
        "PublicKey".into()
    }
    fn json_schema(_: &mut schemars::SchemaGenerator) -> schemars::Schema {
        schemars::json_schema!({ "type": "string", "pattern": "^[A-Za-z0-9_-]{43}$" })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_thumbprint_is_that_of_rfc_8037_a_3() {
        let key = PublicKey::parse("11qYAYKxCrfVS_7TyWQHOg7hcvPapiMlrwIaaPcHURo").expect("RFC 8037 A.2");
        assert_eq!(key.thumbprint().to_string(), "kPrK_qmxVWaYVA9wwBF6Iuo3vVzz7TxHCTwXBygrS4k");
    }

    #[test]
    fn keys_of_small_order_are_refused() {
        // The eight points of small order on edwards25519, of which these are the canonical
        // encodings of orders 1, 2 and 4; any signature "verifies" under some of them.
        let zero = [0u8; 32];
        let mut one = zero;
        one[0] = 1;
        let mut minus_one = [0xff; 32];
        (minus_one[0], minus_one[31]) = (0xec, 0x7f);
        for weak in [zero, one, minus_one] {
            assert_eq!(PublicKey::from_bytes(weak), Err(NotAKey));
        }
    }
}
