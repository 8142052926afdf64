//! Tones on the device's own output, on a stream that is open while a session is led.
//!
//! The stream plays silence between tones: a headset that is woken by a sound would swallow its beginning.

use std::sync::Arc;

use crate::tone::Tone;

mod mixer;
mod output;

pub use mixer::{Mixer, Order};
pub use output::Speakers;

/// Why no tone sounds.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum NoSound {
    /// Nobody wants any.
    Off,
    /// The device has no output.
    NoDevice,
    /// Another program has it for itself.
    Busy,
    /// This program may not use it.
    Denied,
    /// It takes samples in a form that is not made here.
    Form,
    /// It has gone.
    Lost,
    /// It fails, and does not say why.
    Failed,
}

impl NoSound {
    /// Every reason.
    pub const ALL: [Self; 7] =
        [Self::Off, Self::NoDevice, Self::Busy, Self::Denied, Self::Form, Self::Lost, Self::Failed];

    /// Its stable code.
    pub const fn code(self) -> &'static str {
        match self {
            Self::Off => "tones-off",
            Self::NoDevice => "tones-no-device",
            Self::Busy => "tones-busy",
            Self::Denied => "tones-denied",
            Self::Form => "tones-form",
            Self::Lost => "tones-lost",
            Self::Failed => "tones-failed",
        }
    }
}

/// Where it is told that an output has gone. It is called from threads of the output's.
pub type HearsLoss = Arc<dyn Fn(NoSound) + Send + Sync>;

/// A way to an output.
pub trait Outputs: Send {
    /// Opens it. It may take a second or two.
    fn open(&self, lost: HearsLoss) -> Result<Box<dyn Output>, NoSound>;
}

/// An output that is open.
pub trait Output: Send {
    /// Sounds a tone, in the place of one that sounds.
    fn sound(&mut self, tone: Tone);
    /// Silence, at once.
    fn hush(&mut self);
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn codes_are_stable_and_no_two_alike() {
        let mut codes: Vec<_> = NoSound::ALL.iter().map(|reason| reason.code()).collect();
        assert!(codes.iter().all(|code| code.starts_with("tones-")));
        codes.sort_unstable();
        codes.dedup();
        assert_eq!(codes.len(), NoSound::ALL.len());
    }
}
