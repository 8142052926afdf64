//! Leads a dozen cues at a real tempo and tells when each was handed over: what the harness in
//! `tests/journeys/window/sound.py` listens to. On the standard output, a JSON object a line.
//!
//! `speaks` leads the cues; `speaks --tones` tells what every tone is made of.

use std::io::Write;
use std::sync::mpsc::{Receiver, channel};
use std::time::{Duration, Instant, SystemTime, UNIX_EPOCH};

use sendaluna_device::{App, Device, Heard, Key, Tone, Wish};

const SETTLES_WITHIN: Duration = Duration::from_secs(10);
const SENTENCE: Duration = Duration::from_secs(8);
const COUNT: Duration = Duration::from_millis(800);
/// From one cue to the next, in ms.
const TEMPO_MS: u64 = 1250;
/// And from the first, a sentence, so that it comes to its end. A service tells of an end some 400 ms late.
const FIRST_MS: u64 = 3200;

/// A dozen cues: text and tone.
const CUES: [(&str, Option<Tone>); 12] = [
    ("Heel slide, lying on your back", Some(Tone::Ready)),
    ("3", Some(Tone::Tick)),
    ("2", Some(Tone::Tick)),
    ("1", Some(Tone::Tick)),
    ("Go", Some(Tone::Out)),
    ("Hold", Some(Tone::Hold)),
    ("", Some(Tone::Tick)),
    ("4", None),
    ("Back", Some(Tone::Back)),
    ("Rest", Some(Tone::Rest)),
    ("A long sentence that is cut off before anybody has heard the end of it", None),
    ("Done", Some(Tone::Done)),
];
/// Which of them is cut off, and after how long.
const CUT: (usize, Duration) = (10, Duration::from_millis(900));

fn main() -> std::io::Result<()> {
    if std::env::args().any(|arg| arg == "--tones") {
        return Tone::ALL.into_iter().try_for_each(tell_tone);
    }
    let app = App { id: "speaks".into(), name: "Speaks".into(), why_awake: "Exercises".into() };
    let (pressed, keys) = channel();
    let device = Device::open(&app, &Wish::new("en"), None, move |key| {
        let _ = pressed.send(key);
    });
    device.runs(true);
    let state = device.voice.settled(SETTLES_WITHIN);
    tell(&format!(r#""speech":"{:?}","tones":"{:?}""#, state.speech, state.tones))?;
    lead(&device, &keys)?;
    let is_quiet = device.voice.quiet(SETTLES_WITHIN);
    tell(&format!(r#""quiet":{is_quiet},"awake":"{:?}""#, device.awake.state()))
}

fn lead(device: &Device, keys: &Receiver<Key>) -> std::io::Result<()> {
    let start = Instant::now();
    let mut due = start + Duration::from_millis(300);
    for (i, (text, tone)) in CUES.into_iter().enumerate() {
        wait(due, keys)?;
        let how_long_it_matters = if text.len() > 5 { SENTENCE } else { COUNT };
        let said = (!text.is_empty()).then(|| text.to_string());
        let began = Instant::now();
        device.voice.say(Heard { text: said, tone, due, how_long_it_matters, urgent: false });
        let took_us = began.elapsed().as_micros();
        let tone = tone.map_or("", Tone::name);
        tell(&format!(r#""cue":{i},"text":"{text}","tone":"{tone}","took_us":{took_us}"#))?;
        if i == CUT.0 {
            wait(due + CUT.1, keys)?;
            device.voice.cut();
            tell(r#""cut":true"#)?;
        }
        due += Duration::from_millis(if i == 0 { FIRST_MS } else { TEMPO_MS });
    }
    Ok(())
}

/// Sleeps to a moment, or a little longer while keys come.
fn wait(until: Instant, keys: &Receiver<Key>) -> std::io::Result<()> {
    while let Ok(key) = keys.recv_timeout(until.saturating_duration_since(Instant::now())) {
        tell(&format!(r#""key":"{key:?}""#))?;
    }
    Ok(())
}

fn tell_tone(tone: Tone) -> std::io::Result<()> {
    let notes = tone.notes().iter().map(|n| format!("[{},{},{}]", n.pitch_hz, n.length_ms, n.gap_ms));
    tell(&format!(r#""tone":"{}","notes":[{}]"#, tone.name(), notes.collect::<Vec<_>>().join(",")))
}

/// A line, with the moment: seconds since 1970.
fn tell(members: &str) -> std::io::Result<()> {
    let at_s = SystemTime::now().duration_since(UNIX_EPOCH).unwrap_or_default().as_secs_f64();
    let mut out = std::io::stdout().lock();
    writeln!(out, r#"{{"at_s":{at_s:.6},{members}}}"#)?;
    out.flush()
}
