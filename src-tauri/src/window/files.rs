//! Files that were handed over: as an argument, by a drop, or by a second start. The window never
//! names a path; it asks for the next file.

use std::collections::VecDeque;
use std::path::PathBuf;
use std::sync::Mutex;

use tauri::ipc::Channel;

/// Files that wait to be looked at.
#[derive(Default)]
pub struct Files {
    waiting: Mutex<VecDeque<PathBuf>>,
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

    /// Whether any wait.
    pub fn wait(&self) -> bool {
        self.waiting.lock().is_ok_and(|waiting| !waiting.is_empty())
    }

    /// Tells this channel whenever files wait, from now on.
    pub fn watch(&self, channel: Channel<bool>) {
        if let Ok(mut watcher) = self.watcher.lock() {
            *watcher = Some(channel);
        }
        self.tell();
    }

    fn tell(&self) {
        let waits = self.wait();
        if let Ok(watcher) = self.watcher.lock()
            && let Some(channel) = watcher.as_ref().filter(|_| waits)
        {
            // A window that is gone needs no telling.
            let _ = channel.send(true);
        }
    }
}
