//! The keys as Windows and macOS hand them out, through `souvlaki`. Not run by any test.

use std::sync::Arc;
use std::sync::mpsc::Receiver;

use souvlaki::{MediaControlEvent, MediaControls, MediaPlayback, PlatformConfig};

use super::{Hears, Key, WindowHandle};
use crate::App;

/// Listens until `told` ends.
pub(super) fn serve(app: &App, window: Option<WindowHandle>, hears: &Hears, told: &Receiver<bool>) {
    let mut controls = listening(app, window, hears);
    for plays in told {
        if let Some(controls) = &mut controls {
            let playback = if plays {
                MediaPlayback::Playing { progress: None }
            } else {
                MediaPlayback::Paused { progress: None }
            };
            // A system that does not take it goes on handing keys as before.
            let _ = controls.set_playback(playback);
        }
    }
}

fn listening(app: &App, window: Option<WindowHandle>, hears: &Hears) -> Option<MediaControls> {
    // Without a window, the crate would panic on Windows.
    if cfg!(windows) && window.is_none() {
        return None;
    }
    let hwnd = window.map(|window| std::ptr::with_exposed_provenance_mut(window.0));
    let config = PlatformConfig { display_name: &app.name, dbus_name: &app.id, hwnd };
    let mut controls = MediaControls::new(config).ok()?;
    let hears = Arc::clone(hears);
    let pass_on = move |event| {
        if let Some(key) = key(&event) {
            hears(key);
        }
    };
    controls.attach(pass_on).ok()?;
    Some(controls)
}

fn key(event: &MediaControlEvent) -> Option<Key> {
    match event {
        MediaControlEvent::Toggle => Some(Key::PlayPause),
        MediaControlEvent::Play => Some(Key::Play),
        MediaControlEvent::Pause | MediaControlEvent::Stop => Some(Key::Pause),
        MediaControlEvent::Next => Some(Key::Next),
        _ => None,
    }
}
