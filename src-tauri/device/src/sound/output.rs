//! The device's own output.

use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::mpsc::{Receiver, Sender, channel};
use std::sync::{Arc, Mutex};
use std::time::{Duration, Instant};

use cpal::traits::{DeviceTrait, HostTrait, StreamTrait};
use cpal::{BufferSize, ErrorKind, FromSample, SampleFormat, SizedSample, StreamConfig, SupportedBufferSize};

use super::{HearsLoss, Mixer, NoSound, Order, Output, Outputs};
use crate::locked;
use crate::tone::Tone;

/// A device asks for so much at a time, in ms. Two of these lie between a cue and its sound.
const PERIOD_MS: u32 = 20;
/// How long a device may take to open, where it can be told.
const OPEN_WITHIN: Duration = Duration::from_secs(2);
/// A stream that fails for so long without playing anything has gone.
const ILL_FOR: Duration = Duration::from_millis(500);

/// The output that the system has chosen.
#[derive(Debug, Clone, Copy, Default)]
pub struct Speakers;

impl Outputs for Speakers {
    fn open(&self, lost: HearsLoss) -> Result<Box<dyn Output>, NoSound> {
        let device = cpal::default_host().default_output_device().ok_or(NoSound::NoDevice)?;
        let usual = device.default_output_config().map_err(|error| reason(error.kind()))?;
        let mut config = usual.config();
        let mut open = |buffer_size| {
            config.buffer_size = buffer_size;
            let (orders, received) = channel();
            let stream = stream(&device, config, usual.sample_format(), received, &lost)?;
            Ok::<_, NoSound>((stream, orders))
        };
        let opened = open(small(usual.buffer_size(), usual.sample_rate()));
        let (stream, orders) = opened.or_else(|_| open(BufferSize::Default))?;
        stream.play().map_err(|error| reason(error.kind()))?;
        Ok(Box::new(Open::new(stream, orders, usual.sample_rate())))
    }
}

/// A small buffer, if the device has such.
fn small(supported: &SupportedBufferSize, rate_hz: u32) -> BufferSize {
    let frames = rate_hz * PERIOD_MS / 1000;
    match supported {
        SupportedBufferSize::Range { min, max } if min <= max => BufferSize::Fixed(frames.clamp(*min, *max)),
        _ => BufferSize::Default,
    }
}

fn stream(
    device: &cpal::Device,
    config: StreamConfig,
    format: SampleFormat,
    orders: Receiver<Order>,
    lost: &HearsLoss,
) -> Result<cpal::Stream, NoSound> {
    match format {
        SampleFormat::F32 => typed::<f32>(device, config, orders, lost),
        SampleFormat::I16 => typed::<i16>(device, config, orders, lost),
        SampleFormat::U16 => typed::<u16>(device, config, orders, lost),
        SampleFormat::I32 => typed::<i32>(device, config, orders, lost),
        SampleFormat::U8 => typed::<u8>(device, config, orders, lost),
        SampleFormat::F64 => typed::<f64>(device, config, orders, lost),
        _ => Err(NoSound::Form),
    }
}

fn typed<T: SizedSample + FromSample<f32>>(
    device: &cpal::Device,
    config: StreamConfig,
    orders: Receiver<Order>,
    lost: &HearsLoss,
) -> Result<cpal::Stream, NoSound> {
    let mut mixer = Mixer::new(orders, config.sample_rate);
    let channels = usize::from(config.channels);
    let health = Arc::new(Health::default());
    let (fills, fails, lost) = (Arc::clone(&health), health, Arc::clone(lost));
    let fill = move |frames: &mut [T], _: &cpal::OutputCallbackInfo| {
        fills.is_well();
        mixer.fill(frames, channels);
    };
    let failed = move |error: cpal::Error| {
        if fails.is_lost(error.kind(), Instant::now()) {
            lost(NoSound::Lost);
        }
    };
    let stream = device.build_output_stream::<T, _, _>(config, fill, failed, Some(OPEN_WITHIN));
    stream.map_err(|error| reason(error.kind()))
}

/// Whether a stream still plays. A sound server that is busy may fail at some moments and play on; one that has
/// gone fails without end.
#[derive(Default)]
struct Health {
    is_ill: AtomicBool,
    ill_since: Mutex<Option<Instant>>,
}

impl Health {
    /// It has asked for samples. This is where nobody may wait.
    fn is_well(&self) {
        self.is_ill.store(false, Ordering::Release);
    }

    /// Something has failed: is it lost by now?
    fn is_lost(&self, kind: ErrorKind, now: Instant) -> bool {
        match kind {
            ErrorKind::Xrun | ErrorKind::DeviceChanged | ErrorKind::RealtimeDenied => false,
            ErrorKind::DeviceNotAvailable | ErrorKind::HostUnavailable | ErrorKind::StreamInvalidated => true,
            _ => {
                let mut since = locked(&self.ill_since);
                if !self.is_ill.swap(true, Ordering::AcqRel) {
                    *since = Some(now);
                }
                since.is_some_and(|since| now.saturating_duration_since(since) >= ILL_FOR)
            }
        }
    }
}

fn reason(kind: ErrorKind) -> NoSound {
    match kind {
        ErrorKind::DeviceNotAvailable | ErrorKind::HostUnavailable => NoSound::NoDevice,
        ErrorKind::DeviceBusy => NoSound::Busy,
        ErrorKind::PermissionDenied => NoSound::Denied,
        ErrorKind::UnsupportedConfig | ErrorKind::UnsupportedOperation => NoSound::Form,
        ErrorKind::StreamInvalidated => NoSound::Lost,
        _ => NoSound::Failed,
    }
}

/// A stream, and every tone in its rate. Dropped in this order: the tones outlive the stream.
struct Open {
    _stream: cpal::Stream,
    orders: Sender<Order>,
    tones: Vec<(Tone, Arc<[f32]>)>,
}

impl Open {
    fn new(stream: cpal::Stream, orders: Sender<Order>, rate_hz: u32) -> Self {
        let tones = Tone::ALL.map(|tone| (tone, tone.samples(rate_hz).into())).into();
        Self { _stream: stream, orders, tones }
    }

    /// A stream that has gone takes no orders, and has told so itself.
    fn order(&self, order: Order) {
        let _ = self.orders.send(order);
    }
}

impl Output for Open {
    fn sound(&mut self, tone: Tone) {
        if let Some((_, samples)) = self.tones.iter().find(|(made, _)| *made == tone) {
            self.order(Order::Sound(Arc::clone(samples)));
        }
    }

    fn hush(&mut self) {
        self.order(Order::Hush);
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn what_goes_wrong_has_a_reason() {
        let cases = [
            (ErrorKind::DeviceNotAvailable, NoSound::NoDevice),
            (ErrorKind::HostUnavailable, NoSound::NoDevice),
            (ErrorKind::DeviceBusy, NoSound::Busy),
            (ErrorKind::PermissionDenied, NoSound::Denied),
            (ErrorKind::UnsupportedConfig, NoSound::Form),
            (ErrorKind::StreamInvalidated, NoSound::Lost),
            (ErrorKind::BackendError, NoSound::Failed),
        ];
        for (kind, expected) in cases {
            assert_eq!(reason(kind), expected);
        }
    }

    #[test]
    fn a_stream_is_lost_when_it_says_so_or_fails_without_end() {
        let start = Instant::now();
        let after = |ms| start + Duration::from_millis(ms);
        let health = Health::default();
        assert!(!health.is_lost(ErrorKind::Xrun, start));
        assert!(health.is_lost(ErrorKind::DeviceNotAvailable, start));
        assert!(!health.is_lost(ErrorKind::BackendError, start));
        assert!(!health.is_lost(ErrorKind::BackendError, after(499)));
        health.is_well();
        assert!(!health.is_lost(ErrorKind::BackendError, after(600)), "it has played meanwhile");
        assert!(!health.is_lost(ErrorKind::BackendError, after(1099)));
        assert!(health.is_lost(ErrorKind::BackendError, after(1100)));
    }

    #[test]
    fn the_buffer_is_small_where_the_device_lets_it_be() {
        let range = |min, max| SupportedBufferSize::Range { min, max };
        assert_eq!(small(&range(64, 8192), 48_000), BufferSize::Fixed(960));
        assert_eq!(small(&range(2048, 8192), 48_000), BufferSize::Fixed(2048));
        assert_eq!(small(&SupportedBufferSize::Unknown, 48_000), BufferSize::Default);
    }
}
