//! Time, as an argument.

use chrono::{DateTime, Utc};
use sendaluna_core::record::Stamp;

/// A reading of the device's clocks.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Now {
    /// The wall clock.
    pub at: DateTime<Utc>,
    /// Ms on a clock that nobody sets.
    pub mono_ms: u64,
    /// Which start of that clock.
    pub boot: String,
}

impl Now {
    /// As a stamp, with the device's offset from UTC.
    pub fn stamp(&self, offset_s: i32) -> Stamp {
        Stamp { at: self.at, offset_s, boot: self.boot.clone(), mono_ms: self.mono_ms }
    }
}

/// Reads the clocks. The shell owns the only real one.
pub trait Clock {
    /// A reading.
    fn now(&self) -> Now;
}
