//! The key of a patient's device. It signs that device's reports and nothing else; the clinic's keys
//! are never here.

use ed25519_dalek::{Signer as _, SigningKey};
use zeroize::Zeroizing;

use crate::key::PublicKey;

/// A device's key.
pub struct DeviceKey(SigningKey);

impl DeviceKey {
    /// The key of 32 random bytes (RFC 8032 §5.1.5).
    pub fn from_seed(seed: &Zeroizing<[u8; 32]>) -> Self {
        Self(SigningKey::from_bytes(seed))
    }

    /// The public key.
    pub fn public(&self) -> PublicKey {
        PublicKey::from_bytes(self.0.verifying_key().to_bytes()).expect("a generated key is not weak")
    }

    /// Signs a message.
    pub(crate) fn sign(&self, message: &[u8]) -> [u8; 64] {
        self.0.sign(message).to_bytes()
    }
}
