//! Windows' and macOS's own voices, through the `tts` crate. Not run by any test.

use std::collections::VecDeque;
use std::sync::mpsc::{Receiver, Sender, channel};
use std::sync::{Arc, Mutex};

use tts::{Features, Tts, UtteranceId};

use super::voices::best_tag;
use super::{Engine, Happened, Hears, Manner, NoSpeech, Percent, Speech, plain};
use crate::locked;
use crate::queue::Ticket;

/// The way to the system's voices.
#[derive(Debug, Clone, Copy, Default)]
pub struct System;

impl Engine for System {
    fn open(&self, hears: Hears) -> Result<Box<dyn Speech>, NoSpeech> {
        let tts = Tts::default().map_err(|_| NoSpeech::NoService)?;
        let Features { utterance_callbacks, stop, .. } = tts.supported_features();
        if !(utterance_callbacks && stop) {
            return Err(NoSpeech::Refused);
        }
        let (to, told) = channel();
        listen(&tts, &to).map_err(|_| NoSpeech::Refused)?;
        let under_way = UnderWay::default();
        let known = Arc::clone(&under_way);
        let told_to = Arc::clone(&hears);
        std::thread::spawn(move || pass_on(&told, &known, &told_to));
        Ok(Box::new(Talking { tts, hears, under_way }))
    }
}

/// Oldest first. The numbers that the engine gives cannot be told apart on every system; their order can.
type UnderWay = Arc<Mutex<VecDeque<Ticket>>>;

#[derive(Debug, Clone, Copy)]
enum Told {
    Begins,
    Ends,
}

/// What the engine calls holds its lock: it must only send.
fn listen(tts: &Tts, to: &Sender<Told>) -> Result<(), tts::Error> {
    let send = |told: Told| {
        let to = to.clone();
        let call: Box<dyn FnMut(UtteranceId)> = Box::new(move |_| {
            let _ = to.send(told);
        });
        Some(call)
    };
    tts.on_utterance_begin(send(Told::Begins))?;
    tts.on_utterance_end(send(Told::Ends))?;
    tts.on_utterance_stop(send(Told::Ends))
}

fn pass_on(told: &Receiver<Told>, under_way: &UnderWay, hears: &Hears) {
    for told in told {
        // Held by whoever hands over an utterance, until it stands in its place.
        let mut known = locked(under_way);
        let happened = match told {
            Told::Begins => known.back().copied().map(Happened::Began),
            Told::Ends => known.pop_front().map(Happened::Over),
        };
        drop(known);
        if let Some(happened) = happened {
            hears(happened);
        }
    }
}

struct Talking {
    tts: Tts,
    hears: Hears,
    under_way: UnderWay,
}

impl Speech for Talking {
    fn manner(&mut self, manner: &Manner) -> Result<(), NoSpeech> {
        let voices = self.tts.voices().map_err(|_| NoSpeech::NoVoice)?;
        let tags: Vec<String> = voices.iter().map(|voice| voice.language().to_string()).collect();
        let tag = best_tag(tags.iter().map(String::as_str), &manner.lang).ok_or(NoSpeech::NoVoice)?;
        let voice = voices.iter().zip(&tags).find(|(_, other)| **other == tag).ok_or(NoSpeech::NoVoice)?.0;
        self.tts.set_voice(voice).map_err(|_| NoSpeech::Refused)?;
        let Features { rate, pitch, .. } = self.tts.supported_features();
        if rate {
            let ends = [self.tts.min_rate(), self.tts.normal_rate(), self.tts.max_rate()];
            self.tts.set_rate(between(manner.rate, ends)).map_err(|_| NoSpeech::Refused)?;
        }
        if pitch {
            let ends = [self.tts.min_pitch(), self.tts.normal_pitch(), self.tts.max_pitch()];
            self.tts.set_pitch(between(manner.pitch, ends)).map_err(|_| NoSpeech::Refused)?;
        }
        Ok(())
    }

    fn say(&mut self, ticket: Ticket, text: &str) -> Result<(), NoSpeech> {
        let line = plain(text);
        let mut under_way = locked(&self.under_way);
        let spoken = if line.is_empty() { Ok(None) } else { self.tts.speak(line, true) };
        match spoken.map_err(|_| NoSpeech::Refused)? {
            Some(_) => under_way.push_back(ticket),
            None => {
                drop(under_way);
                (self.hears)(Happened::Over(ticket));
            }
        }
        Ok(())
    }

    fn hush(&mut self) -> Result<(), NoSpeech> {
        self.tts.stop().map(|_| ()).map_err(|_| NoSpeech::Refused)
    }
}

/// A percentage between the slowest, the usual and the fastest, or the like.
fn between(percent: Percent, [least, usual, most]: [f32; 3]) -> f32 {
    let part = f32::from(percent.get()) / 100.0;
    let end = if part < 0.0 { least } else { most };
    (usual + part.abs() * (end - usual)).clamp(least, most)
}
