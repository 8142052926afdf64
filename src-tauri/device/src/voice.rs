//! The one place that a session talks to. It takes what is to be heard and comes back at once; threads of its
//! own speak and sound, after the policy of [`crate::queue`].

use std::sync::mpsc::{Sender, channel, sync_channel};
use std::sync::{Arc, Mutex};
use std::time::{Duration, Instant};

use crate::queue::Heard;
use crate::sound::{NoSound, Outputs, Speakers};
use crate::speech::{Engine, Manner, NoSpeech, Percent};
use crate::{App, Have, locked};

mod player;
mod run;
mod talker;

use run::{Order, Run, Until};

/// What is wanted.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Wish {
    /// The language, as a BCP 47 tag.
    pub lang: String,
    /// How fast it is spoken.
    pub rate: Percent,
    /// How high it is spoken.
    pub pitch: Percent,
    /// Whether it is spoken.
    pub speech: bool,
    /// Whether it sounds.
    pub tones: bool,
}

impl Wish {
    /// Speech in a language, as its voice comes, and tones.
    pub fn new(lang: impl Into<String>) -> Self {
        let (rate, pitch) = (Percent::default(), Percent::default());
        Self { lang: lang.into(), rate, pitch, speech: true, tones: true }
    }

    fn manner(&self) -> Option<Manner> {
        let manner = || Manner { lang: self.lang.clone(), rate: self.rate, pitch: self.pitch };
        self.speech.then(manner)
    }
}

/// What is to be had.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct State {
    /// Speech, in the language that is wanted.
    pub speech: Have<NoSpeech>,
    /// Tones.
    pub tones: Have<NoSound>,
}

/// What a voice speaks and sounds through.
pub struct Ports {
    /// Speech.
    pub speech: Box<dyn Engine>,
    /// Tones.
    pub tones: Box<dyn Outputs>,
}

impl Ports {
    /// What this device has.
    pub fn of_this_device(app: &App) -> Self {
        #[cfg(target_os = "linux")]
        let speech = {
            use crate::speech::{Address, Dispatcher};
            Box::new(Dispatcher::new(Address::of_environment(), app))
        };
        #[cfg(not(target_os = "linux"))]
        let speech = {
            let _ = app;
            Box::new(crate::speech::System)
        };
        Self { speech, tones: Box::new(Speakers) }
    }
}

/// A voice. Silence when it is dropped.
pub struct Voice {
    orders: Sender<Order>,
    state: Arc<Mutex<State>>,
}

impl Voice {
    /// Begins to look for speech and an output. Comes back at once.
    pub fn open(wish: &Wish, ports: Ports) -> Self {
        let (orders, received) = channel();
        let state = Arc::new(Mutex::new(State { speech: Have::NotYet, tones: Have::NotYet }));
        let talker = talker::start(ports.speech, wish.manner(), orders.clone());
        let player = player::start(ports.tones, wish.tones, orders.clone());
        let run = Run::new(wish.clone(), talker, player, Arc::clone(&state));
        std::thread::spawn(move || run.until_end(&received));
        Self { orders, state }
    }

    /// Lets something be heard, when it is due.
    pub fn say(&self, heard: Heard) {
        self.order(Order::Say(heard));
    }

    /// Silence at once; nothing that waits is said any more.
    pub fn cut(&self) {
        self.order(Order::Cut);
    }

    /// From now on as wished.
    pub fn wish(&self, wish: Wish) {
        {
            let mut state = locked(&self.state);
            state.speech = Have::NotYet;
            state.tones = Have::NotYet;
        }
        self.order(Order::Wish(wish));
    }

    /// What is to be had, as far as it is known.
    pub fn state(&self) -> State {
        *locked(&self.state)
    }

    /// What is to be had, as soon as it is known: for a page of settings, not for whoever paces.
    pub fn settled(&self, at_most: Duration) -> State {
        self.wait(Until::Settled, at_most);
        self.state()
    }

    /// Waits until nothing is said, sounds or waits; `false` if that takes longer. For the last words of a
    /// session, before the voice is dropped.
    pub fn quiet(&self, at_most: Duration) -> bool {
        self.wait(Until::Quiet, at_most)
    }

    fn wait(&self, until: Until, at_most: Duration) -> bool {
        let (done, is_done) = sync_channel(1);
        self.order(Order::Wait(until, done));
        is_done.recv_timeout(at_most).is_ok()
    }

    /// The thread takes orders as long as there is a voice.
    fn order(&self, order: Order) {
        let _ = self.orders.send(order);
    }
}

impl Drop for Voice {
    fn drop(&mut self) {
        self.order(Order::End);
    }
}

/// Whether to try again: at once the first time, then at most so often.
struct Patience {
    every: Duration,
    tried_at: Option<Instant>,
}

impl Patience {
    fn new(every: Duration) -> Self {
        Self { every, tried_at: None }
    }

    fn may_try(&mut self, now: Instant) -> bool {
        let may = self.tried_at.is_none_or(|at| now.saturating_duration_since(at) >= self.every);
        if may {
            self.tried_at = Some(now);
        }
        may
    }

    fn forget(&mut self) {
        self.tried_at = None;
    }
}

#[cfg(test)]
mod tests;
