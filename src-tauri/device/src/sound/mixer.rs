//! What a stream plays next: a tone, or silence. It runs where a device asks for samples, so it neither
//! waits nor asks for memory.

use std::sync::Arc;
use std::sync::mpsc::Receiver;

/// A tone that is cut off dies away for so long, in ms: at once, and it clicks.
const FADE_MS: u16 = 8;

/// What a stream is to play.
#[derive(Debug, Clone)]
pub enum Order {
    /// These samples. Whoever sends them keeps them as well, so that they are not freed here.
    Sound(Arc<[f32]>),
    /// Silence.
    Hush,
}

#[derive(Debug)]
struct Playing {
    samples: Arc<[f32]>,
    next: usize,
}

impl Playing {
    fn next(&mut self) -> Option<f32> {
        let sample = self.samples.get(self.next).copied();
        self.next += 1;
        sample
    }
}

/// Plays tones, one at a time.
#[derive(Debug)]
pub struct Mixer {
    orders: Receiver<Order>,
    playing: Option<Playing>,
    fading: Option<(Playing, f32)>,
    fade_step: f32,
}

impl Mixer {
    /// For a stream of so many samples a second.
    #[expect(clippy::cast_precision_loss, reason = "a rate has fewer digits than a float")]
    pub fn new(orders: Receiver<Order>, rate_hz: u32) -> Self {
        let fade_step = 1000.0 / (f32::from(FADE_MS) * rate_hz.max(1) as f32);
        Self { orders, playing: None, fading: None, fade_step }
    }

    /// Fills frames of so many channels, each alike.
    pub fn fill<T: cpal::Sample + cpal::FromSample<f32>>(&mut self, frames: &mut [T], channels: usize) {
        while let Ok(order) = self.orders.try_recv() {
            self.take(order);
        }
        for frame in frames.chunks_mut(channels.max(1)) {
            frame.fill(T::from_sample(self.next()));
        }
    }

    fn take(&mut self, order: Order) {
        if let Some(playing) = self.playing.take() {
            self.fading = Some((playing, 1.0));
        }
        if let Order::Sound(samples) = order {
            self.playing = Some(Playing { samples, next: 0 });
        }
    }

    fn next(&mut self) -> f32 {
        let sounding = self.playing.as_mut().map(Playing::next);
        if sounding == Some(None) {
            self.playing = None;
        }
        sounding.flatten().unwrap_or_default() + self.faded()
    }

    fn faded(&mut self) -> f32 {
        let Some((playing, left)) = &mut self.fading else { return 0.0 };
        *left -= self.fade_step;
        let sample = playing.next().filter(|_| *left > 0.0).map(|sample| sample * *left);
        if sample.is_none() {
            self.fading = None;
        }
        sample.unwrap_or_default()
    }
}

#[cfg(test)]
mod tests {
    use std::sync::mpsc::channel;

    use super::*;
    use crate::tone::{PEAK, Tone};

    const RATE_HZ: u32 = 48_000;

    #[test]
    fn a_tone_sounds_on_every_channel_and_then_silence() {
        let (orders, received) = channel();
        let mut mixer = Mixer::new(received, RATE_HZ);
        let samples: Arc<[f32]> = Tone::Tick.samples(RATE_HZ).into();
        orders.send(Order::Sound(Arc::clone(&samples))).expect("there");
        let mut frames = vec![1f32; 2 * samples.len() + 200];
        let (first, rest) = frames.split_at_mut(2 * 100);
        mixer.fill(first, 2);
        mixer.fill(rest, 2);
        for (i, frame) in frames.chunks(2).enumerate() {
            let expected = samples.get(i).copied().unwrap_or_default();
            assert!((frame[0] - expected).abs() < 1e-6 && (frame[1] - expected).abs() < 1e-6, "frame {i}");
        }
    }

    #[test]
    fn a_tone_that_is_cut_off_dies_away_without_a_click() {
        for order in [Order::Hush, Order::Sound(Tone::Back.samples(RATE_HZ).into())] {
            let (orders, received) = channel();
            let mut mixer = Mixer::new(received, RATE_HZ);
            orders.send(Order::Sound(Tone::Hold.samples(RATE_HZ).into())).expect("there");
            let mut before = vec![0f32; 4800];
            mixer.fill(&mut before, 1);
            let is_hush = matches!(order, Order::Hush);
            orders.send(order).expect("there");
            let mut after = vec![0f32; 9600];
            mixer.fill(&mut after, 1);
            let all = [before, after].concat();
            let leap = all.windows(2).map(|pair| (pair[1] - pair[0]).abs()).fold(0f32, f32::max);
            assert!(leap < 0.08, "{leap}");
            assert!(all.iter().all(|sample| sample.abs() <= 2.0 * PEAK));
            if is_hush {
                let fade = usize::from(FADE_MS) * 48;
                assert!(all[4800 + fade..].iter().all(|sample| *sample == 0.0), "it is silent");
            }
        }
    }

    #[test]
    fn whole_numbers_are_filled_as_well() {
        let (orders, received) = channel();
        let mut mixer = Mixer::new(received, RATE_HZ);
        orders.send(Order::Sound(vec![0.5].into())).expect("there");
        let mut frames = [7u16; 4];
        mixer.fill(&mut frames, 2);
        assert_eq!(frames, [49_152, 49_152, 32_768, 32_768]);
        // No channels is nobody's, and no reason to fail.
        mixer.fill(&mut frames, 0);
    }
}
