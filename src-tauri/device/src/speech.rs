//! Speech: the port that a session's voice speaks through, and what stands behind it.
//!
//! On Linux that is the desktop's own speech service, over its socket (`Dispatcher`). On Windows and macOS
//! it is the `tts` crate before the system's own voices (`System`).

use std::sync::Arc;

use crate::queue::Ticket;

#[cfg(target_os = "linux")]
mod dispatcher;
#[cfg(target_os = "linux")]
mod ssip;
#[cfg(not(target_os = "linux"))]
mod system;
mod voices;

#[cfg(target_os = "linux")]
pub use dispatcher::{Address, Dispatcher};
#[cfg(not(target_os = "linux"))]
pub use system::System;

/// Why nothing is spoken.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum NoSpeech {
    /// Nobody wants it.
    Off,
    /// The device has no speech service, or it cannot be reached.
    NoService,
    /// The service has nothing that speaks.
    NoModule,
    /// No voice speaks the language.
    NoVoice,
    /// The service has gone.
    Lost,
    /// The service does not answer.
    Unanswered,
    /// The service refuses.
    Refused,
}

impl NoSpeech {
    /// Every reason.
    pub const ALL: [Self; 7] = [
        Self::Off,
        Self::NoService,
        Self::NoModule,
        Self::NoVoice,
        Self::Lost,
        Self::Unanswered,
        Self::Refused,
    ];

    /// Its stable code.
    pub const fn code(self) -> &'static str {
        match self {
            Self::Off => "speech-off",
            Self::NoService => "speech-no-service",
            Self::NoModule => "speech-no-module",
            Self::NoVoice => "speech-no-voice",
            Self::Lost => "speech-lost",
            Self::Unanswered => "speech-unanswered",
            Self::Refused => "speech-refused",
        }
    }
}

/// A rate or a pitch: 0 is the voice's own, -100 the slowest or lowest, 100 the fastest or highest.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default)]
pub struct Percent(i8);

impl Percent {
    /// Takes what lies beyond an end for that end.
    pub fn new(value: i8) -> Self {
        Self(value.clamp(-100, 100))
    }

    /// From -100 to 100.
    pub const fn get(self) -> i8 {
        self.0
    }
}

/// How something is spoken.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Manner {
    /// The language, as a BCP 47 tag.
    pub lang: String,
    /// How fast.
    pub rate: Percent,
    /// How high.
    pub pitch: Percent,
}

/// What has happened to speech.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Happened {
    /// An utterance can be heard.
    Began(Ticket),
    /// An utterance is over, or was cut off.
    Over(Ticket),
    /// There is no speech any more.
    Lost(NoSpeech),
}

/// Where what has happened is told. It is called from threads of the engine's, and must only pass it on.
pub type Hears = Arc<dyn Fn(Happened) + Send + Sync>;

/// A way to speech.
pub trait Engine: Send {
    /// Opens it. It may take a second or two.
    fn open(&self, hears: Hears) -> Result<Box<dyn Speech>, NoSpeech>;
}

/// Speech that is to be had. Each call may take as long as a service may take to answer: about a second.
pub trait Speech: Send {
    /// From now on in this manner. [`NoSpeech::NoVoice`] if nobody speaks the language: the rest stays open.
    fn manner(&mut self, manner: &Manner) -> Result<(), NoSpeech>;
    /// Begins to say something. What happens to it is told to whoever hears.
    fn say(&mut self, ticket: Ticket, text: &str) -> Result<(), NoSpeech>;
    /// Says no more of what it is saying.
    fn hush(&mut self) -> Result<(), NoSpeech>;
}

/// The text on one line, without what a service could take for a command or a device for noise.
fn plain(text: &str) -> String {
    let words = text.split(|c: char| c.is_whitespace() || c.is_control()).filter(|word| !word.is_empty());
    words.collect::<Vec<_>>().join(" ")
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn codes_are_stable_and_no_two_alike() {
        let mut codes: Vec<_> = NoSpeech::ALL.iter().map(|reason| reason.code()).collect();
        assert!(codes.iter().all(|code| code.starts_with("speech-")));
        codes.sort_unstable();
        codes.dedup();
        assert_eq!(codes.len(), NoSpeech::ALL.len());
    }

    #[test]
    fn a_percentage_ends_where_voices_end() {
        let ends = [(-128, -100), (-100, -100), (0, 0), (100, 100), (127, 100)];
        assert!(ends.iter().all(|(given, taken)| Percent::new(*given).get() == *taken));
    }

    #[test]
    fn a_text_is_one_line() {
        assert_eq!(plain(" Lift\r\n.\r\nSTOP\tALL\u{0} now "), "Lift . STOP ALL now");
        assert_eq!(plain("\r\n"), "");
    }
}
