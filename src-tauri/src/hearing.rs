//! What a session or a home test sounds like on this device: it passes what is to be heard on to voice and tones, keeps the
//! screen on, and takes a headset's key for a press. All of it goes on when the window is hidden.

use std::time::{Duration, Instant};

use sendaluna_bedside::lead::heard::{Heard, ToneName};
use sendaluna_bedside::settings::Hearing;
use sendaluna_bedside::types::Words;
use sendaluna_device::speech::Percent;
use sendaluna_device::{App, Device, Have, Key, NoSpeech, Tone, Voice, Wish};

/// The last words of a session may take so long.
const LAST_WORDS: Duration = Duration::from_secs(6);
/// How long the settings wait to learn what this device can do.
const SETTLES: Duration = Duration::from_secs(10);

/// Whoever hears a session or a home test.
pub trait Hears: Send {
    /// What is to be heard now.
    fn hear(&mut self, heard: Vec<Heard>);
    /// It goes on, or stands.
    fn goes(&mut self, goes: bool);
}

/// The device does.
pub struct Ears {
    device: Device,
    goes: bool,
}

impl Ears {
    /// For what is led in these words, as the patient wants to hear it. What comes back opens them; it is given
    /// what is called, from a thread of its own, when a headset's key is pressed.
    pub fn of(hearing: Hearing, words: &Words) -> impl FnOnce(Box<dyn Fn() + Send + Sync>) -> Self + use<> {
        let words = Words::new([words.lang()]);
        move |pressed| Self::open(hearing, &words, pressed)
    }

    fn open(hearing: Hearing, words: &Words, pressed: Box<dyn Fn() + Send + Sync>) -> Self {
        let hears = move |key: Key| {
            // Play, pause and both in one are the same key to whoever has only one.
            if !matches!(key, Key::Next) {
                pressed();
            }
        };
        Self { device: Device::open(&app(words), &wish(hearing, words.lang()), None, hears), goes: false }
    }
}

impl Hears for Ears {
    fn hear(&mut self, heard: Vec<Heard>) {
        for heard in heard {
            match heard {
                Heard::Silence => self.device.voice.cut(),
                Heard::Cue { tone, text, matters_ms, urgent } => {
                    self.device.voice.say(cue(tone, text, matters_ms, urgent));
                }
            }
        }
    }

    fn goes(&mut self, goes: bool) {
        if self.goes != goes {
            self.goes = goes;
            self.device.runs(goes);
        }
    }
}

impl Drop for Ears {
    fn drop(&mut self) {
        self.device.runs(false);
        self.device.voice.quiet(LAST_WORDS);
    }
}

/// Lets the patient hear a sample as set; why it cannot be heard, in words, if it cannot.
pub fn try_out(hearing: Hearing, words: &Words) -> String {
    let voice = Voice::open(
        &wish(hearing, words.lang()),
        sendaluna_device::voice::Ports::of_this_device(&app(words)),
    );
    let state = voice.settled(SETTLES);
    for tone in [ToneName::Out, ToneName::Hold, ToneName::Back, ToneName::Done] {
        voice.say(cue(Some(tone), String::new(), 5_000, false));
        voice.quiet(LAST_WORDS);
    }
    voice.say(cue(None, words.say("settings-sample", &[]), 5_000, false));
    voice.quiet(LAST_WORDS);
    let speech = match state.speech {
        Have::No(NoSpeech::NoVoice) if hearing.speech => Some("ears-no-voice"),
        Have::No(_) | Have::NotYet if hearing.speech => Some("ears-no-speech"),
        _ => None,
    };
    let tones = match state.tones {
        Have::No(_) | Have::NotYet if hearing.tones => Some("ears-no-tones"),
        _ => None,
    };
    // Where neither is to be had, the second says both.
    let said = if speech.is_some() && tones.is_some() { tones } else { speech.or(tones) };
    said.map_or_else(String::new, |id| words.say(id, &[]))
}

fn app(words: &Words) -> App {
    App { id: "sendaluna".into(), name: "Sendaluna".into(), why_awake: words.say("ears-why-awake", &[]) }
}

fn wish(hearing: Hearing, lang: &str) -> Wish {
    Wish {
        rate: Percent::new(hearing.rate),
        pitch: Percent::new(hearing.pitch),
        speech: hearing.speech,
        tones: hearing.tones,
        ..Wish::new(lang)
    }
}

fn cue(tone: Option<ToneName>, text: String, matters_ms: u64, urgent: bool) -> sendaluna_device::Heard {
    sendaluna_device::Heard {
        text: Some(text).filter(|text| !text.is_empty()),
        tone: tone.map(|tone| match tone {
            ToneName::Out => Tone::Out,
            ToneName::Hold => Tone::Hold,
            ToneName::Back => Tone::Back,
            ToneName::Rest => Tone::Rest,
            ToneName::Done => Tone::Done,
            ToneName::Tick => Tone::Tick,
            ToneName::Ready => Tone::Ready,
        }),
        due: Instant::now(),
        how_long_it_matters: Duration::from_millis(matters_ms),
        urgent,
    }
}
