//! The play key of a headset or a keyboard, heard with the window hidden.
//!
//! On Linux as a player on the session bus (MPRIS, version 2.2), to which desktops hand these keys. On Windows
//! and macOS through the `souvlaki` crate. A player says nothing but the program's name: whoever looks at a
//! screen that is shut reads nothing about anybody's health.

use std::sync::Arc;
use std::sync::mpsc::{Sender, channel};

use crate::App;

#[cfg(target_os = "linux")]
mod player;
#[cfg(not(target_os = "linux"))]
mod system;

#[cfg(target_os = "linux")]
use player::serve;
#[cfg(not(target_os = "linux"))]
use system::serve;

/// What was pressed.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum Key {
    /// The one key that most headsets have: go on if it is paused, else pause.
    PlayPause,
    /// Go on.
    Play,
    /// Pause; a stop key as well.
    Pause,
    /// The next.
    Next,
}

/// A window as Windows numbers it (an `HWND`). No other system needs one.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct WindowHandle(pub usize);

/// Where keys go.
type Hears = Arc<dyn Fn(Key) + Send + Sync>;

/// Listens until it is dropped.
pub struct Keys {
    plays: Sender<bool>,
}

impl Keys {
    /// Begins to listen; comes back at once, and is quiet where nobody hands keys on. `hears` is called from a
    /// thread of its own, and must only pass the key on.
    pub fn listen(
        app: &App,
        window: Option<WindowHandle>,
        hears: impl Fn(Key) + Send + Sync + 'static,
    ) -> Self {
        let (plays, told) = channel();
        let (app, hears): (App, Hears) = (app.clone(), Arc::new(hears));
        std::thread::spawn(move || serve(&app, window, &hears, &told));
        Self { plays }
    }

    /// Whether something plays. Desktops hand keys to whoever does or did last.
    pub fn plays(&self, plays: bool) {
        let _ = self.plays.send(plays);
    }
}
