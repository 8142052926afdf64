//! What was handed over: files, as an argument, by a drop, or by a second start; and "start", pressed on a
//! reminder. The window never names a path; it asks for the next file.

use std::collections::VecDeque;
use std::path::PathBuf;
use std::sync::Mutex;
use std::sync::atomic::{AtomicBool, Ordering};

use tauri::ipc::Channel;

/// Files that wait to be looked at.
#[derive(Default)]
pub struct Files {
    waiting: Mutex<VecDeque<PathBuf>>,
    /// A session was asked for.
    begin: AtomicBool,
    watcher: Mutex<Option<Channel<bool>>>,
}

impl Files {
    /// Hands files over.
    pub fn offer(&self, paths: impl IntoIterator<Item = PathBuf>) {
        if let Ok(mut waiting) = self.waiting.lock() {
            waiting.extend(paths);
        }
        self.tell();
    }

    /// Takes the next file.
    pub fn next(&self) -> Option<PathBuf> {
        self.waiting.lock().ok()?.pop_front()
    }

    /// Hands a wish to begin a session over.
    pub fn offer_to_begin(&self) {
        self.begin.store(true, Ordering::Release);
        self.tell();
    }

    /// Whether a session was asked for; from then on it was not.
    pub fn take_begin(&self) -> bool {
        self.begin.swap(false, Ordering::AcqRel)
    }

    /// Whether any wait.
    pub fn wait(&self) -> bool {
        self.waiting.lock().is_ok_and(|waiting| !waiting.is_empty())
    }

    /// Tells this channel whenever something waits, from now on.
    pub fn watch(&self, channel: Channel<bool>) {
        if let Ok(mut watcher) = self.watcher.lock() {
            *watcher = Some(channel);
        }
        self.tell();
    }

    fn tell(&self) {
        let waits = self.wait() || self.begin.load(Ordering::Acquire);
        if let Ok(watcher) = self.watcher.lock()
            && let Some(channel) = watcher.as_ref().filter(|_| waits)
        {
            // A window that is gone needs no telling.
            let _ = channel.send(true);
        }
    }
}
