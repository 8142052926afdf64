//! Tones, made and not recorded. They differ in pitch and in rhythm, so that who hears one of the two badly
//! has the other.
//!
//! Every partial lies under 2 kHz: hearing with age is lost from the high end downwards (ISO 7029, median
//! thresholds by age). Pitches, lengths and loudness are common practice, no source.

use std::f32::consts::TAU;
use std::time::Duration;

/// The loudest that a sample gets, of 1: under full scale, because a voice sounds at the same time.
pub const PEAK: f32 = 0.4;
/// How long a note takes to swell, in ms: shorter, and it clicks.
const ATTACK_MS: u32 = 8;
/// How long a note takes to die away, in ms.
const RELEASE_MS: u32 = 30;
/// Silence before the first and after the last note, in ms, so that no edge is cut by a device.
const EDGE_MS: u32 = 2;
/// How strong the octave is beside the pitch itself, of 1: some body, without a shrill edge.
const OCTAVE: f32 = 0.2;

/// What a tone says.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub enum Tone {
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
    /// Are you ready? Time stands still until an answer comes.
    Ready,
}

/// A note of a tone.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct Note {
    /// The pitch, in hertz.
    pub pitch_hz: u16,
    /// How long it sounds, in ms, swelling and dying away included.
    pub length_ms: u32,
    /// Silence after it, in ms.
    pub gap_ms: u32,
}

const fn note(pitch_hz: u16, length_ms: u32, gap_ms: u32) -> Note {
    Note { pitch_hz, length_ms, gap_ms }
}

impl Tone {
    /// Every tone.
    pub const ALL: [Self; 7] =
        [Self::Out, Self::Hold, Self::Back, Self::Rest, Self::Done, Self::Tick, Self::Ready];

    /// Its name, as tests and logs give it.
    pub const fn name(self) -> &'static str {
        match self {
            Self::Out => "out",
            Self::Hold => "hold",
            Self::Back => "back",
            Self::Rest => "rest",
            Self::Done => "done",
            Self::Tick => "tick",
            Self::Ready => "ready",
        }
    }

    /// Its notes: out rises and ends long, back falls and begins long, hold stands still.
    pub const fn notes(self) -> &'static [Note] {
        match self {
            Self::Out => const { &[note(523, 70, 0), note(784, 130, 0)] },
            Self::Hold => const { &[note(659, 220, 0)] },
            Self::Back => const { &[note(698, 130, 0), note(466, 70, 0)] },
            Self::Rest => const { &[note(392, 180, 90), note(330, 260, 0)] },
            Self::Done => const { &[note(440, 110, 20), note(554, 110, 20), note(740, 280, 0)] },
            Self::Tick => const { &[note(880, 60, 0)] },
            Self::Ready => const { &[note(587, 90, 110), note(587, 90, 110), note(830, 150, 0)] },
        }
    }

    /// How long it lasts, silence at both ends included.
    pub fn length(self) -> Duration {
        let notes_ms: u32 = self.notes().iter().map(|n| n.length_ms + n.gap_ms).sum();
        Duration::from_millis(u64::from(2 * EDGE_MS + notes_ms))
    }

    /// Its samples, one channel, each within ±[`PEAK`].
    pub fn samples(self, rate_hz: u32) -> Vec<f32> {
        let silence = |ms: u32| std::iter::repeat_n(0.0, count(ms, rate_hz));
        let mut samples: Vec<f32> = silence(EDGE_MS).collect();
        for note in self.notes() {
            samples.extend(sounding(*note, rate_hz));
            samples.extend(silence(note.gap_ms));
        }
        samples.extend(silence(EDGE_MS));
        samples
    }
}

fn count(ms: u32, rate_hz: u32) -> usize {
    (u64::from(ms) * u64::from(rate_hz) / 1000).try_into().unwrap_or(usize::MAX)
}

#[expect(clippy::cast_precision_loss, reason = "a note has far fewer samples than a float has digits")]
fn sounding(note: Note, rate_hz: u32) -> impl Iterator<Item = f32> {
    let length = count(note.length_ms, rate_hz);
    let attack = count(ATTACK_MS, rate_hz).max(1) as f32;
    let release = count(RELEASE_MS, rate_hz).max(1) as f32;
    let step = f32::from(note.pitch_hz) / rate_hz.max(1) as f32;
    (0..length).map(move |i| {
        let swell = eased(i as f32 / attack) * eased((length - 1 - i) as f32 / release);
        let phase = (i as f32 * step).fract() * TAU;
        let wave = (phase.sin() + OCTAVE * (2.0 * phase).sin()) / (1.0 + OCTAVE);
        PEAK * swell * wave
    })
}

/// From 0 to 1 without a corner at either end.
fn eased(part: f32) -> f32 {
    let part = part.clamp(0.0, 1.0);
    part * part * (3.0 - 2.0 * part)
}

#[cfg(test)]
mod tests {
    use super::*;

    const RATE_HZ: u32 = 48_000;

    /// How much of a pitch is in some samples (Goertzel's algorithm), as an amplitude.
    #[expect(clippy::cast_precision_loss, reason = "few samples")]
    fn strength(samples: &[f32], pitch_hz: f64) -> f64 {
        let turn = std::f64::consts::TAU * pitch_hz / f64::from(RATE_HZ);
        let (mut one, mut two) = (0.0, 0.0);
        for sample in samples {
            let next = f64::from(*sample) + 2.0 * turn.cos() * one - two;
            (two, one) = (one, next);
        }
        let power = one * one + two * two - 2.0 * turn.cos() * one * two;
        power.max(0.0).sqrt() * 2.0 / samples.len() as f64
    }

    fn dominant_hz(samples: &[f32]) -> u16 {
        let strongest = (200..4000u16)
            .max_by(|a, b| strength(samples, f64::from(*a)).total_cmp(&strength(samples, f64::from(*b))));
        strongest.expect("a pitch")
    }

    #[test]
    fn every_note_sounds_at_its_pitch() {
        for tone in Tone::ALL {
            let samples = tone.samples(RATE_HZ);
            let mut at = count(EDGE_MS, RATE_HZ);
            for note in tone.notes() {
                let end = at + count(note.length_ms, RATE_HZ);
                let off_hz = dominant_hz(&samples[at..end]).abs_diff(note.pitch_hz);
                assert!(off_hz <= 6, "{tone:?}: {note:?} is {off_hz} Hz off");
                at = end + count(note.gap_ms, RATE_HZ);
            }
        }
    }

    #[test]
    fn nothing_of_it_lies_where_old_ears_hear_little() {
        for tone in Tone::ALL {
            assert!(tone.notes().iter().all(|n| 2 * n.pitch_hz < 2000), "{tone:?}");
            let samples = tone.samples(RATE_HZ);
            let above = (2100..12_000).step_by(50).map(|hz| strength(&samples, f64::from(hz)));
            let most = above.fold(0.0, f64::max);
            assert!(most < f64::from(PEAK) / 100.0, "{tone:?}: {most}");
        }
    }

    #[test]
    fn it_lasts_as_long_as_it_says_at_every_rate() {
        for rate_hz in [8_000, 44_100, 48_000, 96_000, 192_000] {
            for tone in Tone::ALL {
                let ms = u64::try_from(tone.samples(rate_hz).len()).expect("few") * 1000 / u64::from(rate_hz);
                let said_ms = u64::try_from(tone.length().as_millis()).expect("short");
                assert!(ms.abs_diff(said_ms) <= 1, "{tone:?} at {rate_hz} Hz: {ms} ms");
            }
        }
    }

    #[test]
    fn it_stays_under_full_scale_and_begins_and_ends_in_silence() {
        for tone in Tone::ALL {
            let samples = tone.samples(RATE_HZ);
            let loudest = samples.iter().fold(0f32, |most, s| most.max(s.abs()));
            assert!(loudest <= PEAK && loudest > PEAK / 2.0, "{tone:?}: {loudest}");
            assert!(samples.first() == Some(&0.0) && samples.last() == Some(&0.0), "{tone:?}");
            let leap = samples.windows(2).map(|pair| (pair[1] - pair[0]).abs()).fold(0f32, f32::max);
            assert!(leap < 0.08, "{tone:?} clicks: {leap}");
        }
    }

    #[test]
    fn no_two_share_their_pitches_or_their_rhythm() {
        let pitches = |tone: Tone| tone.notes().iter().map(|n| n.pitch_hz).collect::<Vec<_>>();
        let rhythm = |tone: Tone| tone.notes().iter().map(|n| (n.length_ms, n.gap_ms)).collect::<Vec<_>>();
        for (i, one) in Tone::ALL.into_iter().enumerate() {
            for other in Tone::ALL.into_iter().skip(i + 1) {
                assert_ne!(pitches(one), pitches(other), "{one:?}, {other:?}");
                assert_ne!(rhythm(one), rhythm(other), "{one:?}, {other:?}");
                assert_ne!(one.name(), other.name());
            }
        }
    }

    #[test]
    fn the_word_of_a_phase_follows_at_once() {
        let most = Duration::from_millis(250);
        for tone in [Tone::Out, Tone::Hold, Tone::Back, Tone::Tick] {
            assert!(tone.length() <= most, "{tone:?}: {:?}", tone.length());
        }
    }
}
