//! Where the record's key is kept: the platform's keyring, else a file that only its owner reads.

use std::fs::{File, OpenOptions};
use std::io::{self, Read, Write};
use std::path::Path;

use zeroize::Zeroizing;

use crate::error::StoreError;

const KEY_FILE: &str = "record.key";
const NAME_FILE: &str = "record.name";
const SERVICE: &str = "sendaluna";

/// A database key: 32 random bytes.
pub struct Key(Zeroizing<[u8; 32]>);

impl Key {
    fn generate() -> Result<Self, StoreError> {
        let mut bytes = Zeroizing::new([0u8; 32]);
        getrandom::fill(bytes.as_mut()).map_err(|e| StoreError::Other(e.to_string()))?;
        Ok(Self(bytes))
    }

    /// The raw-key form of `SQLCipher`'s `PRAGMA key`, which skips the slow stretching of passphrases.
    pub fn pragma(&self) -> Zeroizing<String> {
        Zeroizing::new(format!("x'{}'", hex(&self.0[..])))
    }
}

/// Gives the key of a data folder.
pub trait KeyPort {
    /// The key of a record that exists.
    fn existing(&self, folder: &Path) -> Result<Key, StoreError>;
    /// The key for a record that is about to be made; the same again if making it was interrupted.
    fn for_new(&self, folder: &Path) -> Result<Key, StoreError>;
}

/// The platform's keyring if it answers, else a file with mode 0600 in the data folder.
#[derive(Debug, Clone, Copy, Default)]
pub struct KeyringOrFile {
    /// Does not ask the keyring.
    pub file_only: bool,
}

impl KeyPort for KeyringOrFile {
    fn existing(&self, folder: &Path) -> Result<Key, StoreError> {
        if let Some(key) = read_key_file(folder)? {
            return Ok(key);
        }
        let name = read_to_string(&folder.join(NAME_FILE))?.ok_or(StoreError::KeyMissing)?;
        read_keyring(&name).ok_or(StoreError::KeyMissing)
    }

    fn for_new(&self, folder: &Path) -> Result<Key, StoreError> {
        match self.existing(folder) {
            Err(StoreError::KeyMissing) => {}
            result => return result,
        }
        let key = Key::generate()?;
        let name = hex(&Key::generate()?.0[..8]);
        if !self.file_only && write_keyring(&name, &key) {
            write_private(&folder.join(NAME_FILE), name.as_bytes())?;
        } else {
            write_private(&folder.join(KEY_FILE), hex(&key.0[..]).as_bytes())?;
        }
        Ok(key)
    }
}

fn read_keyring(name: &str) -> Option<Key> {
    let secret = keyring::Entry::new(SERVICE, name).ok()?.get_secret().ok()?;
    Some(Key(Zeroizing::new(secret.try_into().ok()?)))
}

/// Whether the keyring took the key and gives it back.
fn write_keyring(name: &str, key: &Key) -> bool {
    let written = keyring::Entry::new(SERVICE, name).and_then(|entry| entry.set_secret(&key.0[..]));
    written.is_ok() && read_keyring(name).is_some_and(|read| read.0 == key.0)
}

fn read_key_file(folder: &Path) -> Result<Option<Key>, StoreError> {
    let Some(text) = read_to_string(&folder.join(KEY_FILE))? else { return Ok(None) };
    let bytes = unhex(text.trim()).ok_or(StoreError::KeyMissing)?;
    Ok(Some(Key(Zeroizing::new(bytes))))
}

fn read_to_string(path: &Path) -> Result<Option<Zeroizing<String>>, StoreError> {
    let mut text = Zeroizing::new(String::new());
    match File::open(path).and_then(|mut file| file.read_to_string(&mut text)) {
        Ok(_) => Ok(Some(text)),
        Err(e) if e.kind() == io::ErrorKind::NotFound => Ok(None),
        Err(e) => Err(e.into()),
    }
}

/// Writes a file that only its owner reads, whole or not at all.
fn write_private(path: &Path, bytes: &[u8]) -> Result<(), StoreError> {
    let beside = path.with_extension("new");
    let mut options = OpenOptions::new();
    options.write(true).create(true).truncate(true);
    #[cfg(unix)]
    std::os::unix::fs::OpenOptionsExt::mode(&mut options, 0o600);
    let mut file = options.open(&beside)?;
    file.write_all(bytes)?;
    file.sync_all()?;
    std::fs::rename(&beside, path)?;
    Ok(())
}

fn hex(bytes: &[u8]) -> String {
    use std::fmt::Write as _;
    bytes.iter().fold(String::new(), |mut text, byte| {
        let _ = write!(text, "{byte:02x}");
        text
    })
}

fn unhex(text: &str) -> Option<[u8; 32]> {
    let mut bytes = [0u8; 32];
    if text.len() != 64 || !text.is_ascii() {
        return None;
    }
    for (i, byte) in bytes.iter_mut().enumerate() {
        *byte = u8::from_str_radix(&text[2 * i..2 * i + 2], 16).ok()?;
    }
    Some(bytes)
}
