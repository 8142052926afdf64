//! The thread that opens the output, so that nobody waits for a device.

use std::sync::Arc;
use std::sync::mpsc::{Receiver, Sender, channel};
use std::time::{Duration, Instant};

use super::Patience;
use super::run::Order as Told;
use crate::Have;
use crate::sound::{NoSound, Output, Outputs};
use crate::tone::Tone;

/// An output that is not there is looked for again at most so often.
const LOOK_AGAIN_AFTER: Duration = Duration::from_secs(3);

pub(super) enum Order {
    /// Whether tones are wanted.
    Want(bool),
    Sound {
        tone: Tone,
        until: Instant,
    },
    Hush,
    /// What was opened at the so many-eth try has gone.
    Lost(u64, NoSound),
}

pub(super) fn start(outputs: Box<dyn Outputs>, wanted: bool, tell: Sender<Told>) -> Sender<Order> {
    let (orders, received) = channel();
    let patience = Patience::new(LOOK_AGAIN_AFTER);
    let player = Player { outputs, tell, patience, tries: 0, output: None };
    std::thread::spawn(move || player.run(wanted, &received));
    orders
}

struct Player {
    outputs: Box<dyn Outputs>,
    tell: Sender<Told>,
    patience: Patience,
    tries: u64,
    output: Option<Box<dyn Output>>,
}

impl Player {
    fn run(mut self, wanted: bool, orders: &Receiver<Order>) {
        self.want(wanted);
        for order in orders {
            match order {
                Order::Want(wanted) => self.want(wanted),
                Order::Sound { tone, until } => self.sound(tone, until),
                Order::Hush => {
                    if let Some(output) = &mut self.output {
                        output.hush();
                    }
                }
                Order::Lost(of, reason) if of == self.tries && self.output.is_some() => {
                    self.output = None;
                    self.tell_state(Have::No(reason));
                }
                // Let go of already, for a reason that was told.
                Order::Lost(..) => {}
            }
        }
    }

    fn want(&mut self, wanted: bool) {
        self.patience.forget();
        if wanted {
            self.look(Instant::now());
        } else {
            self.output = None;
            self.tell_state(Have::No(NoSound::Off));
        }
    }

    fn look(&mut self, now: Instant) {
        if self.output.is_none() {
            if !self.patience.may_try(now) {
                return;
            }
            self.tries += 1;
            let (of, tell) = (self.tries, self.tell.clone());
            let lost = move |reason| {
                let _ = tell.send(Told::Broke(of, reason));
            };
            match self.outputs.open(Arc::new(lost)) {
                Ok(output) => self.output = Some(output),
                Err(reason) => return self.tell_state(Have::No(reason)),
            }
        }
        self.tell_state(Have::Yes);
    }

    fn sound(&mut self, tone: Tone, until: Instant) {
        if self.output.is_none() {
            self.look(Instant::now());
        }
        // Opening may have taken so long that the moment is past.
        if let Some(output) = self.output.as_mut().filter(|_| Instant::now() <= until) {
            output.sound(tone);
        }
    }

    fn tell_state(&self, state: Have<NoSound>) {
        let _ = self.tell.send(Told::Tones(state));
    }
}
