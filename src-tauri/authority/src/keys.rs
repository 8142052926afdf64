//! Private keys, sealed with a passphrase.
//!
//! A key file is an armoured age file (C2SP age, scrypt recipient) around a few lines of JSON, so
//! that it can be opened without this program too.

use std::io::{Read, Write};

use age::armor::{ArmoredReader, ArmoredWriter, Format};
use age::secrecy::{ExposeSecret, SecretString};
use base64::Engine;
use base64::engine::general_purpose::URL_SAFE_NO_PAD;
use ed25519_dalek::{Signer as _, SigningKey};
use sendaluna_core::Coded;
use sendaluna_exchange::key::PublicKey;
use serde::{Deserialize, Serialize};
use zeroize::Zeroizing;

/// scrypt's work factor, as a power of two: about half a second on an ordinary computer.
const WORK_FACTOR: u8 = 17;

/// What can go wrong with a key.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum KeyError {
    /// The passphrase does not open the file.
    WrongPassphrase,
    /// Not a key file of ours.
    NotAKeyFile,
    /// A key for another use: signing, or opening reports.
    OtherUse,
    /// The passphrase is shorter than eight characters.
    PassphraseTooShort,
    /// The operating system gave no random bytes.
    NoRandomness,
}

impl KeyError {
    /// One of each.
    pub const ALL: [Self; 5] = [
        Self::WrongPassphrase,
        Self::NotAKeyFile,
        Self::OtherUse,
        Self::PassphraseTooShort,
        Self::NoRandomness,
    ];
}

impl Coded for KeyError {
    fn code(&self) -> &'static str {
        match self {
            Self::WrongPassphrase => "key-passphrase",
            Self::NotAKeyFile => "key-file",
            Self::OtherUse => "key-use",
            Self::PassphraseTooShort => "key-passphrase-short",
            Self::NoRandomness => "key-no-randomness",
        }
    }
}

#[derive(Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
struct KeyFile {
    sendaluna_key: u32,
    #[serde(rename = "use")]
    purpose: Purpose,
    secret: String,
}

#[derive(Serialize, Deserialize, PartialEq)]
#[serde(rename_all = "kebab-case")]
enum Purpose {
    Signing,
    Reports,
}

/// A private key that signs: a person's, or the clinic's.
pub struct SecretKey(SigningKey);

impl SecretKey {
    /// A new key from the operating system's randomness.
    pub fn generate() -> Result<Self, KeyError> {
        let mut seed = Zeroizing::new([0u8; 32]);
        getrandom::fill(seed.as_mut()).map_err(|_| KeyError::NoRandomness)?;
        Ok(Self::from_seed(&seed))
    }

    /// The key of a seed (RFC 8032 §5.1.5).
    pub fn from_seed(seed: &[u8; 32]) -> Self {
        Self(SigningKey::from_bytes(seed))
    }

    /// The public key.
    pub fn public(&self) -> PublicKey {
        PublicKey::from_bytes(self.0.verifying_key().to_bytes()).expect("a generated key is not weak")
    }

    /// Signs a message.
    pub fn sign(&self, message: &[u8]) -> [u8; 64] {
        self.0.sign(message).to_bytes()
    }

    /// Seals it with a passphrase.
    pub fn seal(&self, passphrase: &str) -> Result<String, KeyError> {
        let secret = Zeroizing::new(URL_SAFE_NO_PAD.encode(self.0.as_bytes()));
        seal(Purpose::Signing, &secret, passphrase)
    }

    /// Opens a sealed key.
    pub fn open(file: &str, passphrase: &str) -> Result<Self, KeyError> {
        let secret = open(&Purpose::Signing, file, passphrase)?;
        let bytes = URL_SAFE_NO_PAD.decode(secret.as_bytes()).map_err(|_| KeyError::NotAKeyFile)?;
        let seed: Zeroizing<[u8; 32]> = Zeroizing::new(bytes.try_into().map_err(|_| KeyError::NotAKeyFile)?);
        Ok(Self::from_seed(&seed))
    }
}

/// The private key that opens reports.
pub struct ReportKey(age::x25519::Identity);

impl ReportKey {
    /// A new key.
    pub fn generate() -> Self {
        Self(age::x25519::Identity::generate())
    }

    /// From an identity in age's own form: `AGE-SECRET-KEY-1…`.
    pub fn from_identity(identity: &str) -> Result<Self, KeyError> {
        identity.parse().map(Self).map_err(|_| KeyError::NotAKeyFile)
    }

    /// The recipient that reports are sealed to: `age1…`.
    pub fn recipient(&self) -> String {
        self.0.to_public().to_string()
    }

    /// Seals it with a passphrase.
    pub fn seal(&self, passphrase: &str) -> Result<String, KeyError> {
        seal(Purpose::Reports, self.0.to_string().expose_secret(), passphrase)
    }

    /// Opens a sealed key.
    pub fn open(file: &str, passphrase: &str) -> Result<Self, KeyError> {
        let secret = open(&Purpose::Reports, file, passphrase)?;
        Self::from_identity(&secret)
    }

    /// Opens what was sealed to it; `None` if it was sealed to another key, or is damaged.
    pub fn unseal(&self, sealed: &[u8]) -> Option<Vec<u8>> {
        age::decrypt(&self.0, sealed).ok()
    }
}

fn seal(purpose: Purpose, secret: &str, passphrase: &str) -> Result<String, KeyError> {
    if passphrase.chars().count() < 8 {
        return Err(KeyError::PassphraseTooShort);
    }
    let file = KeyFile { sendaluna_key: 1, purpose, secret: secret.to_string() };
    let plain = Zeroizing::new(serde_json::to_vec(&file).expect("a key file is plain data"));
    let mut recipient = age::scrypt::Recipient::new(SecretString::from(passphrase.to_string()));
    recipient.set_work_factor(WORK_FACTOR);
    let encryptor = age::Encryptor::with_recipients(std::iter::once(&recipient as &dyn age::Recipient))
        .expect("one passphrase is a valid set of recipients");
    let written = || -> std::io::Result<Vec<u8>> {
        let armor = ArmoredWriter::wrap_output(Vec::new(), Format::AsciiArmor)?;
        let mut writer = encryptor.wrap_output(armor)?;
        writer.write_all(&plain)?;
        writer.finish()?.finish()
    };
    let bytes = written().expect("writing to memory does not fail");
    Ok(String::from_utf8(bytes).expect("armour is ASCII"))
}

fn open(purpose: &Purpose, file: &str, passphrase: &str) -> Result<Zeroizing<String>, KeyError> {
    let decryptor =
        age::Decryptor::new(ArmoredReader::new(file.as_bytes())).map_err(|_| KeyError::NotAKeyFile)?;
    if !decryptor.is_scrypt() {
        return Err(KeyError::NotAKeyFile);
    }
    let mut identity = age::scrypt::Identity::new(SecretString::from(passphrase.to_string()));
    identity.set_max_work_factor(WORK_FACTOR + 3);
    let mut plain = Zeroizing::new(Vec::new());
    decryptor
        .decrypt(std::iter::once(&identity as &dyn age::Identity))
        .map_err(|_| KeyError::WrongPassphrase)?
        .read_to_end(&mut plain)
        .map_err(|_| KeyError::NotAKeyFile)?;
    let file: KeyFile = serde_json::from_slice(&plain).map_err(|_| KeyError::NotAKeyFile)?;
    if file.purpose != *purpose {
        return Err(KeyError::OtherUse);
    }
    Ok(Zeroizing::new(file.secret))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn signatures_are_those_of_rfc_8032() {
        // RFC 8032 §7.1, TEST 2 and TEST 3 (seeds from memory, outputs recomputed).
        for (seed, message, signature) in [
            (
                "4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb",
                "72",
                "92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac1e43e15996e458f3613d0f11d8c387b2eaeb4302aeeb00d291612bb0c00",
            ),
            (
                "c5aa8df43f9f837bedb7442f31dcb7b166d38535076f094b85ce3a2e0b4458f7",
                "af82",
                "6291d657deec24024827e69c3abe01a30ce548a284743a445e3680d7db5ac3ac18ff9b538d16f290ae67f760984dc6594a7c15e9716ed28dc027beceea1ec40a",
            ),
            (
                "9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60",
                "",
                "e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39701cf9b46bd25bf5f0595bbe24655141438e7a100b",
            ),
        ] {
            let key = SecretKey::from_seed(&hex(seed).try_into().expect("32 bytes"));
            let made = key.sign(&hex(message));
            assert_eq!(made.to_vec(), hex(signature));
            assert!(key.public().verifies(&hex(message), &made));
        }
    }

    #[test]
    fn a_sealed_key_opens_with_its_passphrase_only() {
        let key = SecretKey::generate().expect("randomness");
        let file = key.seal("eight or more").expect("sealed");
        assert!(file.starts_with("-----BEGIN AGE ENCRYPTED FILE-----"));
        let again = SecretKey::open(&file, "eight or more").expect("opened");
        assert_eq!(again.public(), key.public());
        assert_eq!(SecretKey::open(&file, "another one").err(), Some(KeyError::WrongPassphrase));
        assert_eq!(ReportKey::open(&file, "eight or more").err(), Some(KeyError::OtherUse));
        assert_eq!(SecretKey::open("hello", "eight or more").err(), Some(KeyError::NotAKeyFile));
        assert_eq!(key.seal("short").err(), Some(KeyError::PassphraseTooShort));
    }

    fn hex(text: &str) -> Vec<u8> {
        let digit = |i: usize| u8::from_str_radix(&text[i..i + 2], 16).expect("hex");
        (0..text.len()).step_by(2).map(digit).collect()
    }
}
