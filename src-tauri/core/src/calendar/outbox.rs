//! What was pressed on a reminder, on its way into the record: `outbox.jsonl`, one line of JSON each.
//!
//! The first line names the file. Whoever drains it keeps that name and how far they have got with what they
//! made of it, in one write; so each line counts exactly once, whoever fails in between. A line counts once
//! it ends; a torn one does not, and whoever writes next ends it first.

use chrono::{DateTime, NaiveDate, NaiveTime, Utc};
use serde::{Deserialize, Serialize};

/// The file's name, in the folder of the front.
pub const FILE: &str = "outbox.jsonl";
/// Held by whoever writes to it or drains it.
pub const LOCK: &str = "outbox.lock";
/// The longest file that is read.
pub const MOST_BYTES: usize = 1024 * 1024;

/// What was pressed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum ReminderAnswer {
    /// Start.
    Start,
    /// In 30 minutes.
    Later,
    /// Not today.
    NotToday,
}

/// The first line.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Head {
    /// The file's name, drawn when it was begun.
    pub outbox: String,
}

/// An answer.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Line {
    /// When it was pressed.
    pub at: DateTime<Utc>,
    /// The day of the slot.
    pub day: NaiveDate,
    /// The time of the slot, on the wall.
    pub time: NaiveTime,
    /// What was pressed.
    pub answer: ReminderAnswer,
}

/// How far a file was drained.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
pub struct Drained {
    /// Which file.
    pub outbox: String,
    /// So many bytes of it.
    pub bytes: usize,
}

/// What of a file is still to be drained.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Waiting {
    /// The answers, oldest first.
    pub lines: Vec<Line>,
    /// How far the file is drained with them.
    pub then: Drained,
}

/// A line of a file, with its end.
pub fn line_of<T: Serialize>(of: &T) -> Vec<u8> {
    let mut line = serde_json::to_vec(of).expect("a line is plain data");
    line.push(b'\n');
    line
}

/// Reads what waits in a file. What is no line of ours is passed over; a file without its first line
/// holds nothing.
pub fn waiting(bytes: &[u8], drained: Option<&Drained>) -> Option<Waiting> {
    let bytes = &bytes[..bytes.len().min(MOST_BYTES)];
    let whole = &bytes[..=bytes.iter().rposition(|byte| *byte == b'\n')?];
    let (head, _) = split(whole)?;
    let name = serde_json::from_slice::<Head>(head).ok()?.outbox;
    let done = drained.filter(|drained| drained.outbox == name).map_or(0, |drained| drained.bytes);
    let rest = whole.get(done.max(head.len() + 1)..).unwrap_or_default();
    let lines = rest.split(|byte| *byte == b'\n').filter_map(|line| serde_json::from_slice(line).ok());
    Some(Waiting { lines: lines.collect(), then: Drained { outbox: name, bytes: whole.len().max(done) } })
}

fn split(bytes: &[u8]) -> Option<(&[u8], &[u8])> {
    let end = bytes.iter().position(|byte| *byte == b'\n')?;
    Some((&bytes[..end], &bytes[end + 1..]))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn line(at: &str, answer: ReminderAnswer) -> Line {
        let at: DateTime<Utc> = at.parse().expect("a moment");
        Line { at, day: at.date_naive(), time: at.time(), answer }
    }

    fn file(lines: &[Line]) -> Vec<u8> {
        let mut bytes = line_of(&Head { outbox: "a1".into() });
        bytes.extend(lines.iter().flat_map(line_of));
        bytes
    }

    #[test]
    fn each_line_counts_once() {
        let one = line("2026-03-04T09:00:00Z", ReminderAnswer::Later);
        let two = line("2026-03-04T09:30:00Z", ReminderAnswer::Start);
        let first = waiting(&file(&[one]), None).expect("a file");
        assert_eq!(first.lines, [one]);
        let second = waiting(&file(&[one, two]), Some(&first.then)).expect("a file");
        assert_eq!(second.lines, [two]);
        assert_eq!(waiting(&file(&[one, two]), Some(&second.then)).expect("a file").lines, []);
        // Another file begins anew, whatever was drained of the one before.
        let other = Drained { outbox: "b2".into(), bytes: 9_999 };
        assert_eq!(waiting(&file(&[one, two]), Some(&other)).expect("a file").lines, [one, two]);
    }

    #[test]
    fn what_is_torn_or_foreign_is_passed_over() {
        let one = line("2026-03-04T09:00:00Z", ReminderAnswer::Later);
        let two = line("2026-03-04T09:30:00Z", ReminderAnswer::NotToday);
        let whole = file(&[one, two]);
        for cut in 0..whole.len() {
            let known = waiting(&whole[..cut], None).map(|waiting| waiting.lines).unwrap_or_default();
            assert!(known.len() < 2 && known.iter().all(|line| *line == one), "cut at {cut}");
        }
        // A torn line that was ended later, and something foreign.
        let mut bytes = file(&[one]);
        bytes.extend_from_slice(b"{\"at\":\"2026-\n[1]\n\xff\xfe\n");
        bytes.extend(line_of(&two));
        assert_eq!(waiting(&bytes, None).expect("a file").lines, [one, two]);
        assert_eq!(waiting(b"", None), None);
        assert_eq!(waiting(b"no head\n", None), None);
    }
}
