//! Opening the record: one writer at a time, key first, migrations, then checks.

use std::fs::{File, OpenOptions, TryLockError};
use std::io::Write;
use std::path::Path;
use std::sync::{Mutex, OnceLock};

use chrono::{DateTime, Utc};
use rusqlite::{Connection, OpenFlags, Transaction, TransactionBehavior};
use sendaluna_core::digest::Digest;
use sendaluna_core::record::{Body, By, Event, Stamp, read_chain};
use zeroize::Zeroizing;

use crate::error::StoreError;
use crate::key::{Key, KeyPort};
use crate::migrations;
use crate::tables::{device, events, pin, plans, reports, settings, signers, statements};

const DATABASE: &str = "record.sqlite";
const LOCK: &str = "record.lock";

/// An open record.
pub struct Store {
    db: Connection,
    /// Held while this program may write.
    writer: Option<File>,
}

impl Store {
    /// Opens the record of a data folder for reading and writing, and makes it if there is none.
    pub fn open(folder: &Path, keys: &dyn KeyPort) -> Result<Self, StoreError> {
        Self::open_with(folder, keys, migrations::ALL)
    }

    pub(crate) fn open_with(folder: &Path, keys: &dyn KeyPort, all: &[&[&str]]) -> Result<Self, StoreError> {
        make_folder(folder)?;
        let writer = lock(folder)?;
        let path = folder.join(DATABASE);
        let key = if is_there(folder)? { keys.existing(folder)? } else { keys.for_new(folder)? };
        let flags = OpenFlags::SQLITE_OPEN_READ_WRITE
            | OpenFlags::SQLITE_OPEN_CREATE
            | OpenFlags::SQLITE_OPEN_NO_MUTEX;
        let mut db = connect(&path, flags, &key)?;
        if migrations::version(&db)? > all.len() {
            return Err(StoreError::Newer);
        }
        set_up(&db)?;
        migrations::run(&mut db, &path, all)?;
        mark_made(&writer)?;
        Ok(Self { db, writer: Some(writer) })
    }

    /// Opens the record for reading, beside a program that may be writing; `None` if there is none.
    /// On a full disk or in a read-only folder, what was last written whole is shown.
    pub fn read(folder: &Path, keys: &dyn KeyPort) -> Result<Option<Self>, StoreError> {
        if !is_there(folder)? {
            return Ok(None);
        }
        let key = keys.existing(folder)?;
        let db = match look(folder, &key) {
            Err(StoreError::DiskFull | StoreError::NoAccess(_) | StoreError::Other(_)) => {
                look_without_writing(folder, &key)?
            }
            result => result?,
        };
        let version = migrations::version(&db)?;
        if version > migrations::ALL.len() {
            return Err(StoreError::Newer);
        }
        if version < migrations::ALL.len() {
            drop(db);
            return Self::open(folder, keys).map(Some);
        }
        Ok(Some(Self { db, writer: None }))
    }

    /// The one gate for writes: everything in it is written, or nothing.
    pub fn write<T, E: From<StoreError>>(
        &mut self,
        change: impl FnOnce(&Writer<'_>) -> Result<T, E>,
    ) -> Result<T, E> {
        if self.writer.is_none() {
            return Err(StoreError::InUse.into());
        }
        let begin = self.db.transaction_with_behavior(TransactionBehavior::Immediate);
        let writer = Writer { tx: begin.map_err(StoreError::from)? };
        let result = change(&writer)?;
        writer.tx.commit().map_err(StoreError::from)?;
        Ok(result)
    }

    /// The pinned clinic and person.
    pub fn pin(&self) -> Result<Option<pin::Pin>, StoreError> {
        pin::get(&self.db)
    }

    /// The highest signers list.
    pub fn signers(&self) -> Result<Option<signers::Row>, StoreError> {
        signers::highest(&self.db)
    }

    /// Every statement ever accepted.
    pub fn statements(&self) -> Result<Vec<statements::Row>, StoreError> {
        statements::all(&self.db)
    }

    /// Every plan ever accepted, oldest first.
    pub fn plans(&self) -> Result<Vec<plans::Row>, StoreError> {
        plans::all(&self.db)
    }

    /// Every event, with the chain checked.
    pub fn events(&self) -> Result<Vec<Event>, StoreError> {
        let stored = events::all(&self.db)?;
        let (events, _) = read_chain(stored).map_err(|broken| StoreError::ChainBroken(broken.seq))?;
        Ok(events)
    }

    /// The seed of the device's key; `None` until the first report.
    pub fn device_seed(&self) -> Result<Option<Zeroizing<[u8; 32]>>, StoreError> {
        device::seed(&self.db)
    }

    /// The head of the record in the last report.
    pub fn last_reported_head(&self) -> Result<Option<Digest>, StoreError> {
        reports::last_head(&self.db)
    }

    /// A setting, as JSON.
    pub fn setting(&self, name: &str) -> Result<Option<String>, StoreError> {
        settings::get(&self.db, name)
    }
}

/// A look as on a full disk.
#[cfg(test)]
pub(crate) fn tests_look_without_writing(folder: &Path, keys: &dyn KeyPort) -> Result<Store, StoreError> {
    let db = look_without_writing(folder, &keys.existing(folder)?)?;
    Ok(Store { db, writer: None })
}

#[cfg(test)]
impl Store {
    /// How many pages the file has.
    pub(crate) fn page_count(&self) -> Result<i64, StoreError> {
        Ok(self.db.pragma_query_value(None, "page_count", |row| row.get(0))?)
    }

    /// Lets the file grow to so many pages, as a full disk would.
    pub(crate) fn limit_pages(&self, pages: i64) -> Result<(), StoreError> {
        Ok(self.db.pragma_update_and_check(None, "max_page_count", pages, |_| Ok(()))?)
    }
}

/// A transaction under way.
pub struct Writer<'a> {
    tx: Transaction<'a>,
}

impl Writer<'_> {
    /// Pins clinic and person.
    pub fn pin(&self, pin: &pin::Pin) -> Result<(), StoreError> {
        pin::put(&self.tx, pin)
    }

    /// Keeps a signers list.
    pub fn signers(&self, row: &signers::Row) -> Result<(), StoreError> {
        signers::put(&self.tx, row)
    }

    /// Keeps a statement; one that is kept already stays as it is.
    pub fn statement(&self, row: &statements::Row) -> Result<(), StoreError> {
        statements::put(&self.tx, row)
    }

    /// Keeps a plan; one that is kept already stays as it is.
    pub fn plan(&self, row: &plans::Row) -> Result<(), StoreError> {
        plans::put(&self.tx, row)
    }

    /// Appends an event to the chain.
    pub fn append(&self, stamp: Stamp, by: By, body: Body) -> Result<Event, StoreError> {
        events::append(&self.tx, stamp, by, body)
    }

    /// Keeps the seed of the device's key; the first one stays.
    pub fn device_seed(&self, seed: &Zeroizing<[u8; 32]>) -> Result<(), StoreError> {
        device::put(&self.tx, seed)
    }

    /// Notes that a report was made, and where the record stood.
    pub fn report(&self, made_at: DateTime<Utc>, head: Digest) -> Result<(), StoreError> {
        reports::put(&self.tx, &made_at.to_rfc3339(), head)
    }

    /// Keeps a setting, as JSON.
    pub fn setting(&self, name: &str, json: &str) -> Result<(), StoreError> {
        settings::put(&self.tx, name, json)
    }
}

/// What the lock file holds once a record was made.
const MADE: &[u8] = b"made\n";

/// Whether there is a record. A file of no bytes is what an interrupted first start leaves, unless
/// the record was made before: then something has emptied it.
fn is_there(folder: &Path) -> Result<bool, StoreError> {
    let has_bytes = std::fs::metadata(folder.join(DATABASE)).is_ok_and(|file| file.len() > 0);
    let was_made = std::fs::read(folder.join(LOCK)).is_ok_and(|held| held == MADE);
    if was_made && !has_bytes { Err(StoreError::NotReadable) } else { Ok(has_bytes) }
}

fn mark_made(mut lock: &File) -> Result<(), StoreError> {
    if lock.metadata()?.len() == 0 {
        lock.write_all(MADE)?;
        lock.sync_all()?;
    }
    Ok(())
}

/// Opens to look, as one of several.
fn look(folder: &Path, key: &Key) -> Result<Connection, StoreError> {
    let flags = OpenFlags::SQLITE_OPEN_READ_WRITE | OpenFlags::SQLITE_OPEN_NO_MUTEX;
    let db = connect(&folder.join(DATABASE), flags, key)?;
    db.busy_timeout(std::time::Duration::from_secs(5))?;
    db.query_row("SELECT count(*) FROM settings", [], |_| Ok(()))?;
    Ok(db)
}

/// Opens the file as it lies there, without any file beside it.
fn look_without_writing(folder: &Path, key: &Key) -> Result<Connection, StoreError> {
    let path = folder.join(DATABASE);
    let path = path.to_str().ok_or_else(|| StoreError::Other("the path is not text".into()))?;
    let escaped = path.replace('%', "%25").replace('?', "%3f").replace('#', "%23");
    let flags =
        OpenFlags::SQLITE_OPEN_READ_ONLY | OpenFlags::SQLITE_OPEN_URI | OpenFlags::SQLITE_OPEN_NO_MUTEX;
    connect(Path::new(&format!("file:{escaped}?immutable=1")), flags, key)
}

fn make_folder(folder: &Path) -> Result<(), StoreError> {
    let mut builder = std::fs::DirBuilder::new();
    builder.recursive(true);
    #[cfg(unix)]
    std::os::unix::fs::DirBuilderExt::mode(&mut builder, 0o700);
    Ok(builder.create(folder)?)
}

fn lock(folder: &Path) -> Result<File, StoreError> {
    let file = OpenOptions::new().write(true).create(true).truncate(false).open(folder.join(LOCK))?;
    match file.try_lock() {
        Ok(()) => Ok(file),
        Err(TryLockError::WouldBlock) => Err(StoreError::InUse),
        Err(TryLockError::Error(e)) => Err(e.into()),
    }
}

/// Opens the file and gives it its key. What goes wrong is said by us, not by the cipher on stderr.
fn connect(path: &Path, flags: OpenFlags, key: &Key) -> Result<Connection, StoreError> {
    keep_cipher_up();
    let db = Connection::open_with_flags(path, flags)?;
    db.pragma_update_and_check(None, "cipher_log_level", "NONE", |_| Ok(())).or_else(no_answer)?;
    db.pragma_update(None, "key", key.pragma().as_str())?;
    Ok(db)
}

/// The cipher takes itself down when its last connection in a program closes, and a connection that another
/// thread opens at that moment finds none. One of no data stays open as long as the program.
fn keep_cipher_up() {
    static KEPT: OnceLock<Option<Mutex<Connection>>> = OnceLock::new();
    KEPT.get_or_init(|| {
        let db = Connection::open_in_memory().ok()?;
        db.pragma_update_and_check(None, "cipher_log_level", "NONE", |_| Ok(())).or_else(no_answer).ok()?;
        db.pragma_update(None, "key", "nothing").ok()?;
        Some(Mutex::new(db))
    });
}

/// Some pragmas answer with a row, some with none.
fn no_answer(error: rusqlite::Error) -> rusqlite::Result<()> {
    if error == rusqlite::Error::QueryReturnedNoRows { Ok(()) } else { Err(error) }
}

fn set_up(db: &Connection) -> Result<(), StoreError> {
    db.pragma_update(None, "journal_mode", "WAL")?;
    db.pragma_update(None, "synchronous", "FULL")?;
    db.pragma_update(None, "foreign_keys", "ON")?;
    db.busy_timeout(std::time::Duration::from_secs(5))?;
    Ok(())
}

#[cfg(feature = "faults")]
impl Store {
    /// Refuses every write from now on, as a disk would that has turned read-only, or stops refusing.
    pub fn refuse_writes(&self, refuse: bool) -> Result<(), StoreError> {
        Ok(self.db.pragma_update(None, "query_only", refuse)?)
    }
}
