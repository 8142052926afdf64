//! What is kept in mind from one start to the next.

use chrono::{DateTime, Datelike, NaiveDate, NaiveTime, Utc};
use serde::{Deserialize, Serialize};

/// Kept in `memory.json`, beside the front.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Memory {
    /// Times before this moment were dealt with.
    pub seen_until: DateTime<Utc>,
    /// The latest slot that was dealt with: further west its time comes once more.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub dealt_with: Option<(NaiveDate, NaiveTime)>,
    /// A notice that is to be seen, and until when.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub shown: Option<Span>,
    /// A reminder that was put off, and until when.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub put_off: Option<Span>,
    /// The day on which "not today" was said.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub not_today: Option<NaiveDate>,
    /// The last day on which something was pressed.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub heard_on: Option<NaiveDate>,
}

/// A slot, and until when something holds.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Span {
    /// The day of its slot.
    pub day: NaiveDate,
    /// The time of its slot, on the wall.
    pub time: NaiveTime,
    /// Until when.
    pub until: DateTime<Utc>,
}

impl Memory {
    /// Of a first start: what is past is not caught up with.
    pub fn from_now(now: DateTime<Utc>) -> Self {
        Self {
            seen_until: now,
            dealt_with: None,
            shown: None,
            put_off: None,
            not_today: None,
            heard_on: None,
        }
    }

    /// Reads it; what cannot be read, or cannot be meant, is as on a first start.
    pub fn read(bytes: &[u8], now: DateTime<Utc>) -> Self {
        let read: Option<Self> = serde_json::from_slice(bytes).ok();
        read.filter(Self::is_of_our_time).unwrap_or_else(|| Self::from_now(now))
    }

    /// Whether a day, a month or a zone more or less is still a date.
    fn is_of_our_time(&self) -> bool {
        let spans = || self.shown.iter().chain(&self.put_off);
        let moments = spans().map(|span| span.until.date_naive()).chain([self.seen_until.date_naive()]);
        let days = spans()
            .map(|span| span.day)
            .chain(self.not_today)
            .chain(self.heard_on)
            .chain(self.dealt_with.map(|(day, _)| day));
        moments.chain(days).all(|day| (1970..=9999).contains(&day.year()))
    }

    /// Its bytes.
    pub fn to_bytes(&self) -> Vec<u8> {
        serde_json::to_vec(self).expect("a memory is plain data")
    }
}
