//! How fast the count goes: as prescribed, slower, or by hand.
//!
//! A count script knows only its own time. This turns the device's time into that, from the last change of
//! pace on, so that nothing drifts.

use serde::{Deserialize, Serialize};

/// A pace that can be chosen. Never faster than prescribed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
#[serde(rename_all = "kebab-case")]
pub enum Pace {
    /// As prescribed.
    #[default]
    Prescribed,
    /// A second of the count takes a second and a quarter.
    Slower,
    /// A second of the count takes a second and a half.
    Slowest,
    /// A movement goes on when the patient says so; rests pass as prescribed.
    ByHand,
}

impl Pace {
    /// How long 100 ms of the count take, in ms; `None` while time stands still.
    pub fn percent(self, moving: bool) -> Option<u64> {
        match self {
            Self::Slower => Some(125),
            Self::Slowest => Some(150),
            Self::ByHand if moving => None,
            Self::Prescribed | Self::ByHand => Some(100),
        }
    }
}

/// The script's time against the device's.
#[derive(Debug, Clone, Copy, Default)]
pub struct PacedTime {
    device_ms: u64,
    script_ms: u64,
    percent: Option<u64>,
}

impl PacedTime {
    /// The script's time now, at a pace from now on if it is another than before.
    pub fn at(&mut self, device_ms: u64, percent: Option<u64>) -> u64 {
        let script_ms = self.script_ms(device_ms);
        if self.percent != percent {
            *self = Self { device_ms, script_ms, percent };
        }
        script_ms
    }

    /// The script's time at a moment of the device's.
    pub fn script_ms(&self, device_ms: u64) -> u64 {
        let passed = device_ms.saturating_sub(self.device_ms);
        self.script_ms + self.percent.map_or(0, |percent| passed * 100 / percent)
    }

    /// The first moment of the device's at which a moment of the script's has come; `None` while time
    /// stands still.
    pub fn device_ms(&self, script_ms: u64) -> Option<u64> {
        let ahead = script_ms.saturating_sub(self.script_ms);
        Some(self.device_ms + (ahead * self.percent?).div_ceil(100))
    }

    /// Puts the script's time forward, never back.
    pub fn put_forward(&mut self, device_ms: u64, script_ms: u64) {
        let script_ms = self.script_ms(device_ms).max(script_ms);
        *self = Self { device_ms, script_ms, percent: self.percent };
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    #[test]
    fn a_slower_count_takes_longer_and_one_by_hand_stands() {
        let mut time = PacedTime::default();
        assert_eq!(time.at(0, Pace::Prescribed.percent(true)), 0);
        assert_eq!(time.at(1_000, Pace::Slowest.percent(true)), 1_000);
        assert_eq!(time.device_ms(3_000), Some(4_000));
        assert_eq!(time.at(4_000, Pace::ByHand.percent(true)), 3_000);
        assert_eq!(time.device_ms(3_500), None);
        time.put_forward(9_000, 3_500);
        assert_eq!(time.at(20_000, Pace::ByHand.percent(false)), 3_500);
        assert_eq!(time.at(20_100, Pace::ByHand.percent(false)), 3_600, "a rest passes");
    }

    proptest! {
        /// Whatever is chosen when: the script's time never goes back, and a deadline of the script's has come
        /// at the moment that is named for it, and not a ms before.
        #[test]
        fn time_never_goes_back(steps in proptest::collection::vec((0u64..5_000, 0usize..5), 1..40)) {
            let percents = [Some(100), Some(125), Some(150), None, Some(100)];
            let mut time = PacedTime::default();
            let (mut device, mut before) = (0, 0);
            for (passed, pace) in steps {
                device += passed;
                let script = time.at(device, percents[pace]);
                prop_assert!(script >= before);
                before = script;
                if let Some(at) = time.device_ms(script + 777) {
                    prop_assert!(time.script_ms(at) >= script + 777);
                    prop_assert!(at == 0 || time.script_ms(at - 1) < script + 777);
                }
            }
        }
    }
}
