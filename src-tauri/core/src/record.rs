//! What happened. The record is an append-only list of events, each carrying the hash of the one
//! before over its canonical bytes; the state is what the events add up to. A mistake is corrected
//! by a later event.

use chrono::{DateTime, Duration, NaiveDate, Utc};
use serde::{Deserialize, Serialize};

use crate::digest::Digest;

mod event;
mod state;

pub use event::{
    Body, BreakWhy, By, Care, Distress, Ending, Event, How, LeaveReason, Moment, NotTodayWhy, Pain, Place,
    SetBackKind, SetRecord, StepWhy,
};
pub(crate) use state::last_day_once_ended;
pub use state::{ItemDay, SessionRecord, State, TestDone};

/// Where and when something was recorded.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Stamp {
    /// When, by the device's clock.
    pub at: DateTime<Utc>,
    /// Seconds east of UTC on the device.
    pub offset_s: i32,
    /// Which boot of the device, as a random number of the program's run.
    pub boot: String,
    /// Ms since that boot began, by a clock that nobody sets.
    pub mono_ms: u64,
}

impl Stamp {
    /// The civil date on the device.
    pub fn day(&self) -> NaiveDate {
        (self.at.naive_utc() + Duration::seconds(self.offset_s.into())).date()
    }
}

/// The hash before the first event.
pub fn genesis() -> Digest {
    Digest::of(b"sendaluna-record-1")
}

/// A broken place in the chain: the event with this number does not follow from those before it.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Broken {
    /// The event's number, counted from 1.
    pub seq: u64,
}

/// Reads a chain from stored bytes, in order. Whatever does not parse, is not in canonical form, or
/// does not carry the hash of the event before, breaks it.
pub fn read_chain<B: AsRef<[u8]>>(
    stored: impl IntoIterator<Item = B>,
) -> Result<(Vec<Event>, Digest), Broken> {
    let mut events = Vec::new();
    let mut head = genesis();
    for (seq, bytes) in (1u64..).zip(stored) {
        let event = Event::from_bytes(bytes.as_ref()).ok_or(Broken { seq })?;
        if event.prev != head || event.seq != seq {
            return Err(Broken { seq });
        }
        head = Digest::of(bytes.as_ref());
        events.push(event);
    }
    Ok((events, head))
}

#[cfg(test)]
mod tests;
