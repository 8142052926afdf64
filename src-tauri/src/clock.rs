//! The one real clock.

use std::time::Duration;

use chrono::Utc;
use sendaluna_bedside::{Clock, Now};

/// Reads the device's clocks.
pub struct DeviceClock {
    began: Duration,
    boot: String,
}

impl DeviceClock {
    /// A clock that counts from now.
    pub fn new() -> Self {
        let mut bytes = [0u8; 8];
        // Without randomness the reading only tells runs of the program apart less well.
        let _ = getrandom::fill(&mut bytes);
        Self { began: since_boot(), boot: format!("{:016x}", u64::from_be_bytes(bytes)) }
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
            mono_ms: u64::try_from(since_boot().saturating_sub(self.began).as_millis()).unwrap_or(u64::MAX),
            boot: self.boot.clone(),
        }
    }
}

/// Time that nobody sets, and that goes on while the device sleeps: whoever slept through a count
/// has not done it.
#[cfg(any(target_os = "linux", target_os = "android"))]
fn since_boot() -> Duration {
    let time = rustix::time::clock_gettime(rustix::time::ClockId::Boottime);
    Duration::new(u64::try_from(time.tv_sec).unwrap_or(0), u32::try_from(time.tv_nsec).unwrap_or(0))
}

/// Time that nobody sets. Whether it goes on while the device sleeps is the system's choice.
#[cfg(not(any(target_os = "linux", target_os = "android")))]
fn since_boot() -> Duration {
    static FIRST: std::sync::LazyLock<std::time::Instant> = std::sync::LazyLock::new(std::time::Instant::now);
    FIRST.elapsed()
}
