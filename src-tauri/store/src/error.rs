//! What can go wrong with the record on disk.

use std::io;

use sendaluna_core::Coded;

/// A failure of the store. Whatever was on disk before is still there.
#[derive(Debug)]
pub enum StoreError {
    /// Another program is writing to this data folder.
    InUse,
    /// The file was written by a newer version.
    Newer,
    /// The key is not where it was kept.
    KeyMissing,
    /// The file does not open with the key, or is no record.
    NotReadable,
    /// The event chain is broken at this event.
    ChainBroken(u64),
    /// The disk is full.
    DiskFull,
    /// The folder or file may not be written or read.
    NoAccess(String),
    /// Anything else that the disk or the database says.
    Other(String),
}

impl StoreError {
    /// One of each, for tables and tests.
    pub fn all() -> Vec<Self> {
        vec![
            Self::InUse,
            Self::Newer,
            Self::KeyMissing,
            Self::NotReadable,
            Self::ChainBroken(0),
            Self::DiskFull,
            Self::NoAccess(String::new()),
            Self::Other(String::new()),
        ]
    }
}

impl Coded for StoreError {
    fn code(&self) -> &'static str {
        match self {
            Self::InUse => "store-in-use",
            Self::Newer => "store-newer",
            Self::KeyMissing => "store-key-missing",
            Self::NotReadable => "store-not-readable",
            Self::ChainBroken(_) => "store-chain-broken",
            Self::DiskFull => "store-disk-full",
            Self::NoAccess(_) => "store-no-access",
            Self::Other(_) => "store-other",
        }
    }

    fn args(&self) -> Vec<(&'static str, String)> {
        match self {
            Self::ChainBroken(seq) => vec![("seq", seq.to_string())],
            Self::NoAccess(what) | Self::Other(what) => vec![("what", what.clone())],
            _ => Vec::new(),
        }
    }
}

impl From<io::Error> for StoreError {
    fn from(error: io::Error) -> Self {
        match error.kind() {
            io::ErrorKind::StorageFull | io::ErrorKind::QuotaExceeded | io::ErrorKind::FileTooLarge => {
                Self::DiskFull
            }
            io::ErrorKind::PermissionDenied | io::ErrorKind::ReadOnlyFilesystem => {
                Self::NoAccess(error.to_string())
            }
            _ => Self::Other(error.to_string()),
        }
    }
}

impl From<rusqlite::Error> for StoreError {
    fn from(error: rusqlite::Error) -> Self {
        use rusqlite::ffi;
        let Some(sqlite) = error.sqlite_error() else { return Self::Other(error.to_string()) };
        match (sqlite.code, sqlite.extended_code) {
            (rusqlite::ErrorCode::DiskFull, _)
            | (
                _,
                ffi::SQLITE_IOERR_WRITE
                | ffi::SQLITE_IOERR_SHMSIZE
                | ffi::SQLITE_IOERR_SHMMAP
                | ffi::SQLITE_IOERR_FSYNC
                | ffi::SQLITE_IOERR_TRUNCATE,
            ) => Self::DiskFull,
            (rusqlite::ErrorCode::NotADatabase | rusqlite::ErrorCode::DatabaseCorrupt, _) => {
                Self::NotReadable
            }
            (rusqlite::ErrorCode::DatabaseBusy | rusqlite::ErrorCode::DatabaseLocked, _) => Self::InUse,
            (
                rusqlite::ErrorCode::CannotOpen
                | rusqlite::ErrorCode::ReadOnly
                | rusqlite::ErrorCode::PermissionDenied,
                _,
            ) => Self::NoAccess(error.to_string()),
            _ => Self::Other(error.to_string()),
        }
    }
}
