//! The folder that the reminders and the record's program share: `reminders` in the data folder.

use std::fs::{File, OpenOptions, TryLockError};
use std::io::{self, Read, Write};
use std::path::{Path, PathBuf};

use sendaluna_core::calendar::front::{FILE, FOLDER, Front, MOST_BYTES};

const MEMORY: &str = "memory.json";
const LOCK: &str = "reminders.lock";

/// The folder.
#[derive(Debug, Clone)]
pub struct Folder(PathBuf);

/// Why there is no front.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum NoFront {
    /// There is no file.
    Missing,
    /// It cannot be read, or cannot be used.
    Unusable,
}

impl Folder {
    /// Of a data folder; made if there is none.
    pub fn of(data: &Path) -> io::Result<Self> {
        let path = data.join(FOLDER);
        let mut builder = std::fs::DirBuilder::new();
        builder.recursive(true);
        #[cfg(unix)]
        std::os::unix::fs::DirBuilderExt::mode(&mut builder, 0o700);
        builder.create(&path)?;
        Ok(Self(path))
    }

    /// Where it lies.
    pub fn path(&self) -> &Path {
        &self.0
    }

    /// The only one that reminds from this folder, for as long as the file lives; `None` if another does.
    pub fn claim(&self) -> io::Result<Option<File>> {
        let file = OpenOptions::new().write(true).create(true).truncate(false).open(self.0.join(LOCK))?;
        match file.try_lock() {
            Ok(()) => Ok(Some(file)),
            Err(TryLockError::WouldBlock) => Ok(None),
            Err(TryLockError::Error(error)) => Err(error),
        }
    }

    /// Reads the front; never more of it than can be meant.
    pub fn front(&self) -> Result<Front, NoFront> {
        let file = match File::open(self.0.join(FILE)) {
            Err(error) if error.kind() == io::ErrorKind::NotFound => return Err(NoFront::Missing),
            file => file.map_err(|_| NoFront::Unusable)?,
        };
        let mut bytes = Vec::new();
        file.take(MOST_BYTES as u64 + 1).read_to_end(&mut bytes).map_err(|_| NoFront::Unusable)?;
        Front::read(&bytes).map_err(|_| NoFront::Unusable)
    }

    /// What was kept in mind.
    pub fn memory(&self) -> io::Result<Vec<u8>> {
        std::fs::read(self.0.join(MEMORY))
    }

    /// Keeps something in mind: the whole of it, or what was there before.
    pub fn remember(&self, bytes: &[u8]) -> io::Result<()> {
        let mut file = tempfile::NamedTempFile::new_in(&self.0)?;
        file.write_all(bytes)?;
        file.as_file().sync_all()?;
        file.persist(self.0.join(MEMORY)).map_err(|error| error.error)?;
        Ok(())
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn one_reminds_from_a_folder() {
        let data = tempfile::tempdir().expect("a folder");
        let folder = Folder::of(data.path()).expect("made");
        let first = folder.claim().expect("asked");
        assert!(first.is_some());
        assert!(folder.claim().expect("asked").is_none());
        drop(first);
        assert!(folder.claim().expect("asked").is_some());
    }
}
