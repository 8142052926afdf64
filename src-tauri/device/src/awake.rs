//! The screen stays on while a session runs.
//!
//! On Linux by asking the desktop (the idle inhibition interface of freedesktop.org, else the desktop
//! portal's). On Windows and macOS through the `keepawake` crate, which asks the system. Whoever asked and is
//! gone holds nothing: a crash lets go by itself.

use std::sync::mpsc::{Receiver, Sender, channel};
use std::sync::{Arc, Mutex};

use crate::{App, Have, locked};

#[cfg(target_os = "linux")]
mod desktop;
#[cfg(not(target_os = "linux"))]
mod system;

#[cfg(target_os = "linux")]
use desktop::Asker;
#[cfg(not(target_os = "linux"))]
use system::Asker;

/// Why the screen may turn itself off.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash)]
pub enum NoAwake {
    /// Nobody asks for more: no session runs.
    Off,
    /// There is nobody to ask.
    NoDesktop,
    /// Who was asked refuses.
    Refused,
}

impl NoAwake {
    /// Every reason.
    pub const ALL: [Self; 3] = [Self::Off, Self::NoDesktop, Self::Refused];

    /// Its stable code.
    pub const fn code(self) -> &'static str {
        match self {
            Self::Off => "awake-off",
            Self::NoDesktop => "awake-no-desktop",
            Self::Refused => "awake-refused",
        }
    }
}

/// Keeps the screen on. Lets go when it is dropped.
pub struct Awake {
    orders: Sender<bool>,
    state: Arc<Mutex<Have<NoAwake>>>,
}

impl Awake {
    /// Asks for nothing yet.
    pub fn new(app: &App) -> Self {
        Self::asking(Asker::new(app))
    }

    fn asking(asker: Asker) -> Self {
        let (orders, received) = channel();
        let state = Arc::new(Mutex::new(Have::No(NoAwake::Off)));
        let tell = Arc::clone(&state);
        std::thread::spawn(move || run(&asker, &received, &tell));
        Self { orders, state }
    }

    /// Keeps it on, or lets it be. Comes back at once.
    pub fn keep(&self, on: bool) {
        if on {
            let mut state = locked(&self.state);
            if *state != Have::Yes {
                *state = Have::NotYet;
            }
        }
        let _ = self.orders.send(on);
    }

    /// Whether it stays on, as far as it is known.
    pub fn state(&self) -> Have<NoAwake> {
        *locked(&self.state)
    }
}

/// Asks and lets go in one thread: some systems count what each thread has asked for.
fn run(asker: &Asker, orders: &Receiver<bool>, state: &Mutex<Have<NoAwake>>) {
    let mut held = None;
    while let Ok(first) = orders.recv() {
        // Only the last of several counts.
        let on = orders.try_iter().last().unwrap_or(first);
        let granted = match held.take() {
            _ if !on => Err(NoAwake::Off),
            Some(held) => Ok(held),
            None => asker.ask(),
        };
        *locked(state) = granted.as_ref().map_or_else(|reason| Have::No(*reason), |_| Have::Yes);
        held = granted.ok();
    }
}
