//! What was pressed, written at the end of the outbox for the record's program to drain.

use std::collections::VecDeque;
use std::fs::{File, OpenOptions};
use std::io::{self, Read, Seek, SeekFrom, Write};
use std::path::{Path, PathBuf};

use sendaluna_core::calendar::outbox::{FILE, Head, LOCK, Line, line_of};

/// Answers on their way to the disk.
pub struct Answers {
    folder: PathBuf,
    /// What could not be written yet, in order.
    waiting: VecDeque<Line>,
}

impl Answers {
    /// Of the folder that the two programs share.
    pub fn new(folder: &Path) -> Self {
        Self { folder: folder.to_path_buf(), waiting: VecDeque::new() }
    }

    /// Writes an answer, after those that wait.
    pub fn write(&mut self, line: Line) {
        self.waiting.push_back(line);
        self.write_waiting();
    }

    /// Some could not be written yet.
    pub fn are_waiting(&self) -> bool {
        !self.waiting.is_empty()
    }

    /// Writes what waits; what cannot be written goes on waiting.
    pub fn write_waiting(&mut self) {
        while let Some(line) = self.waiting.front()
            && self.append(line).is_ok()
        {
            self.waiting.pop_front();
        }
    }

    /// Writes a line and sees it to the disk, or leaves the file as it was.
    fn append(&self, line: &Line) -> io::Result<()> {
        // Not while the outbox is being drained.
        let lock =
            OpenOptions::new().write(true).create(true).truncate(false).open(self.folder.join(LOCK))?;
        lock.lock()?;
        // Not opened to append: on some systems what is only appended to cannot be cut back.
        let mut options = OpenOptions::new();
        options.read(true).write(true).create(true).truncate(false);
        let mut outbox = options.open(self.folder.join(FILE))?;
        let before = outbox.metadata()?.len();
        let mut bytes = Vec::new();
        if before == 0 {
            bytes = line_of(&Head { outbox: draw() });
        } else if !ends_well(&mut outbox)? {
            bytes.push(b'\n');
        }
        bytes.extend(line_of(line));
        outbox.seek(SeekFrom::End(0))?;
        let written = outbox.write_all(&bytes).and_then(|()| outbox.sync_all());
        if written.is_err() {
            // It is written again later: no part of it may stay.
            let _ = outbox.set_len(before);
        }
        written
    }
}

fn ends_well(outbox: &mut File) -> io::Result<bool> {
    let mut last = [0];
    outbox.seek(SeekFrom::End(-1))?;
    outbox.read_exact(&mut last)?;
    Ok(last == *b"\n")
}

fn draw() -> String {
    let mut bytes = [0u8; 16];
    // Without randomness, the moment keeps files apart.
    if getrandom::fill(&mut bytes).is_err() {
        return chrono::Utc::now().to_rfc3339();
    }
    format!("{:032x}", u128::from_be_bytes(bytes))
}

#[cfg(test)]
mod tests {
    use super::*;
    use sendaluna_core::calendar::outbox::{ReminderAnswer, waiting};

    fn line(answer: ReminderAnswer) -> Line {
        let at: chrono::DateTime<chrono::Utc> = "2026-03-04T09:00:00Z".parse().expect("a moment");
        Line { at, day: at.date_naive(), time: at.time(), answer }
    }

    fn lines(folder: &Path) -> Vec<Line> {
        waiting(&std::fs::read(folder.join(FILE)).expect("read"), None).expect("a file").lines
    }

    #[test]
    fn a_torn_line_is_ended_before_the_next() {
        let folder = tempfile::tempdir().expect("a folder");
        let later = line(ReminderAnswer::Later);
        let mut answers = Answers::new(folder.path());
        answers.write(later);
        let path = folder.path().join(FILE);
        let mut torn = std::fs::read(&path).expect("read");
        torn.extend_from_slice(b"{\"at\":\"20");
        std::fs::write(&path, &torn).expect("torn");
        answers.write(later);
        assert_eq!(lines(folder.path()), [later, later]);
    }

    #[test]
    fn what_could_not_be_written_is_written_later_in_order() {
        let folder = tempfile::tempdir().expect("a folder");
        let path = folder.path().join(FILE);
        std::fs::create_dir(&path).expect("in the way");
        let (later, start) = (line(ReminderAnswer::Later), line(ReminderAnswer::Start));
        let mut answers = Answers::new(folder.path());
        answers.write(later);
        answers.write(start);
        assert!(answers.are_waiting());
        std::fs::remove_dir(&path).expect("out of the way");
        answers.write_waiting();
        assert_eq!(lines(folder.path()), [later, start]);
        assert!(!answers.are_waiting());
        answers.write_waiting();
        assert_eq!(lines(folder.path()).len(), 2, "once");
    }
}
