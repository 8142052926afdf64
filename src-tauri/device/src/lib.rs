//! What the device does for a session: it speaks, sounds, stays awake, and hears a headset's key.
//!
//! Texts and plain enums come in; this room knows no other. A [`Device`] is had while a session is led, and
//! everything is let go when it is dropped. Nothing here blocks whoever calls: each part has a thread of its
//! own, and what a device cannot do is a reason with a stable code, never a panic and never a wait.
//!
//! Run and tested on Linux. On Windows and macOS the same traits stand before other crates; that code has
//! been compiled nowhere but against those crates' interfaces, and run nowhere.

pub mod awake;
#[cfg(target_os = "linux")]
mod bus;
pub mod keys;
pub mod queue;
pub mod sound;
pub mod speech;
pub mod tone;
pub mod voice;

use std::sync::{Mutex, MutexGuard, PoisonError};

pub use awake::Awake;
pub use keys::{Key, Keys, WindowHandle};
pub use queue::Heard;
pub use sound::NoSound;
pub use speech::NoSpeech;
pub use tone::Tone;
pub use voice::{State, Voice, Wish};

/// What is behind a lock. Whoever panicked holding it left it as it was: here nothing is half done.
pub(crate) fn locked<T>(mutex: &Mutex<T>) -> MutexGuard<'_, T> {
    mutex.lock().unwrap_or_else(PoisonError::into_inner)
}

/// What a program is called.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct App {
    /// As a service knows it: small letters, digits and `_`, as in `sendaluna`.
    pub id: String,
    /// As people know it.
    pub name: String,
    /// Why the screen stays on, in the language of people: a desktop may show it.
    pub why_awake: String,
}

/// Whether something is to be had, and if not, why.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Have<R> {
    /// It is being found out.
    NotYet,
    /// It is.
    Yes,
    /// It is not.
    No(R),
}

/// Everything that a device does for one session.
pub struct Device {
    /// What it says and sounds.
    pub voice: Voice,
    /// What keeps its screen on.
    pub awake: Awake,
    /// What hears a headset's key.
    pub keys: Keys,
}

impl Device {
    /// Begins. `hears` is called from a thread of its own for every key; `window` is needed on Windows only.
    pub fn open(
        app: &App,
        wish: &Wish,
        window: Option<WindowHandle>,
        hears: impl Fn(Key) + Send + Sync + 'static,
    ) -> Self {
        Self {
            voice: Voice::open(wish, voice::Ports::of_this_device(app)),
            awake: Awake::new(app),
            keys: Keys::listen(app, window, hears),
        }
    }

    /// Whether a session runs now: then the screen stays on, and the play key means pause.
    pub fn runs(&self, runs: bool) {
        self.awake.keep(runs);
        self.keys.plays(runs);
    }
}
