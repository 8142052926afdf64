//! The one real clock.

use std::time::Instant;

use chrono::Utc;
use sendaluna_bedside::{Clock, Now};

/// Reads the device's clocks.
pub struct DeviceClock {
    began: Instant,
    boot: String,
}

impl DeviceClock {
    /// A clock that counts from now.
    pub fn new() -> Self {
        let mut bytes = [0u8; 8];
        // Without randomness the reading only tells runs of the program apart less well.
        let _ = getrandom::fill(&mut bytes);
        Self { began: Instant::now(), boot: format!("{:016x}", u64::from_be_bytes(bytes)) }
    }
}

impl Default for DeviceClock {
    fn default() -> Self {
        Self::new()
    }
}

impl Clock for DeviceClock {
    fn now(&self) -> Now {
        Now {
            at: Utc::now(),
            mono_ms: u64::try_from(self.began.elapsed().as_millis()).unwrap_or(u64::MAX),
            boot: self.boot.clone(),
        }
    }
}
