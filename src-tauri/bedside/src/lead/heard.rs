//! What a session and a home test sound like: what each cue says aloud, its tone, and how long that matters.

use sendaluna_core::home_test::TimerCue;
use sendaluna_core::plan::doc::TestKind;
use sendaluna_core::session::{Cue, Phase};

/// A tone. How it sounds is the device's.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum ToneName {
    /// Move out.
    Out,
    /// Hold.
    Hold,
    /// Move back.
    Back,
    /// Rest, or let go.
    Rest,
    /// A set or the session is done.
    Done,
    /// One second of a count.
    Tick,
    /// Are you ready? Time stands still.
    Ready,
}

/// Something to be heard now.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Heard {
    /// A cue.
    Cue {
        /// Its tone.
        tone: Option<ToneName>,
        /// What is said; empty if only a tone sounds.
        text: String,
        /// How long it may still begin, in ms.
        matters_ms: u64,
        /// It cuts off what is being said.
        urgent: bool,
    },
    /// Silence at once.
    Silence,
}

/// A number of a count is no use once the next one is due.
const COUNT_MS: u64 = 900;
/// A sentence about what comes.
const SENTENCE_MS: u64 = 12_000;
/// What time waits for can be said late.
const WAIT_MS: u64 = 60_000;

impl Heard {
    /// A sentence without a tone.
    pub fn sentence(text: &str) -> Self {
        Self::Cue { tone: None, text: aloud(text), matters_ms: SENTENCE_MS, urgent: false }
    }

    /// A sentence that silences everything else.
    pub fn urgent(text: &str) -> Self {
        Self::Cue { tone: None, text: aloud(text), matters_ms: WAIT_MS, urgent: true }
    }

    /// A cue with what it says, if it says anything.
    pub fn of(cue: &Cue, text: Option<&str>) -> Self {
        let (tone, matters_ms) = match cue {
            Cue::Phase { phase, .. } => (Some(tone_of(*phase)), COUNT_MS),
            Cue::CountIn { .. } | Cue::Tick { .. } => (Some(ToneName::Tick), COUNT_MS),
            Cue::Minute { .. } => (Some(ToneName::Tick), SENTENCE_MS),
            Cue::AwaitReady { .. } | Cue::AwaitSteps { .. } => (Some(ToneName::Ready), WAIT_MS),
            Cue::ChangeSide { .. } | Cue::Rest { .. } => (Some(ToneName::Rest), SENTENCE_MS),
            Cue::End => (Some(ToneName::Done), SENTENCE_MS),
            // The rest after a round has a tone of its own, at the same moment.
            Cue::SetUp { .. } | Cue::SetDone { .. } | Cue::GoingOn { .. } | Cue::LostTime => {
                (None, SENTENCE_MS)
            }
            Cue::RepetitionDone { .. } => (None, 0),
        };
        Self::Cue { tone, text: text.map(aloud).unwrap_or_default(), matters_ms, urgent: false }
    }

    /// A cue of a home test with what it says, if it says anything. Seconds tick where somebody stands still;
    /// who walks or counts stands is not hurried by them.
    pub fn of_test(kind: TestKind, cue: TimerCue, text: Option<&str>) -> Self {
        let stands_still = kind == TestKind::FourStageBalance;
        let (tone, matters_ms) = match cue {
            TimerCue::CountIn { .. } => (Some(ToneName::Tick), COUNT_MS),
            TimerCue::Go if stands_still => (Some(ToneName::Hold), COUNT_MS),
            TimerCue::Go => (Some(ToneName::Out), COUNT_MS),
            TimerCue::Second { .. } => (stands_still.then_some(ToneName::Tick), COUNT_MS),
            TimerCue::Stood { .. } => (None, COUNT_MS),
            TimerCue::Held { .. } => (Some(ToneName::Rest), SENTENCE_MS),
            // What was held sounds at the same moment.
            TimerCue::End if stands_still => (None, SENTENCE_MS),
            TimerCue::End => (Some(ToneName::Done), SENTENCE_MS),
            TimerCue::Stopped | TimerCue::LostTime => return Self::urgent(text.unwrap_or_default()),
        };
        Self::Cue { tone, text: text.map(aloud).unwrap_or_default(), matters_ms, urgent: false }
    }

    /// Whether there is anything to hear.
    pub fn is_something(&self) -> bool {
        !matches!(self, Self::Cue { tone: None, text, .. } if text.is_empty())
    }
}

fn tone_of(phase: Phase) -> ToneName {
    match phase {
        Phase::Out => ToneName::Out,
        Phase::Hold => ToneName::Hold,
        Phase::Back => ToneName::Back,
        Phase::Pause => ToneName::Rest,
    }
}

/// As it is said aloud: without the marks that set directions apart on a screen.
fn aloud(text: &str) -> String {
    text.chars().filter(|c| !matches!(c, '\u{200e}' | '\u{200f}' | '\u{2066}'..='\u{2069}')).collect()
}
