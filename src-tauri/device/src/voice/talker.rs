//! The thread that waits for the speech service, so that nobody else has to.

use std::sync::Arc;
use std::sync::mpsc::{Receiver, Sender, channel};
use std::time::{Duration, Instant};

use super::Patience;
use super::run::Order as Told;
use crate::Have;
use crate::queue::Ticket;
use crate::speech::{Engine, Happened, Manner, NoSpeech, Speech};

/// A service that is not there is looked for again at most so often.
const LOOK_AGAIN_AFTER: Duration = Duration::from_secs(5);

pub(super) enum Order {
    /// Speak in this manner; `None`: not at all.
    Manner(Option<Manner>),
    Say {
        ticket: Ticket,
        text: String,
        until: Instant,
    },
    Hush,
    /// What was opened at the so many-eth try has gone.
    Lost(u64, NoSpeech),
}

pub(super) fn start(engine: Box<dyn Engine>, manner: Option<Manner>, tell: Sender<Told>) -> Sender<Order> {
    let (orders, received) = channel();
    let patience = Patience::new(LOOK_AGAIN_AFTER);
    let talker = Talker { engine, tell, manner, patience, tries: 0, speech: None, handed: None };
    std::thread::spawn(move || talker.run(&received));
    orders
}

struct Talker {
    engine: Box<dyn Engine>,
    tell: Sender<Told>,
    manner: Option<Manner>,
    patience: Patience,
    tries: u64,
    speech: Option<Box<dyn Speech>>,
    /// The last utterance that was handed over.
    handed: Option<Ticket>,
}

impl Talker {
    fn run(mut self, orders: &Receiver<Order>) {
        self.look(Instant::now());
        for order in orders {
            match order {
                Order::Manner(manner) => self.manner(manner),
                Order::Say { ticket, text, until } => self.say(ticket, &text, until),
                Order::Hush => {
                    let hushed = self.speech.as_mut().map_or(Ok(()), |speech| speech.hush());
                    self.unless_lost(hushed);
                }
                Order::Lost(of, reason) if of == self.tries && self.speech.is_some() => self.lose(reason),
                // Let go of already, for a reason that was told.
                Order::Lost(..) => {}
            }
        }
    }

    fn manner(&mut self, manner: Option<Manner>) {
        self.manner = manner;
        self.patience.forget();
        if self.manner.is_none() {
            self.speech = None;
        }
        self.look(Instant::now());
    }

    /// Sees to it that there is speech in the manner that is wanted, and tells whether there is.
    fn look(&mut self, now: Instant) {
        let Some(manner) = self.manner.clone() else { return self.tell_state(Have::No(NoSpeech::Off)) };
        if !self.patience.may_try(now) {
            return;
        }
        match self.opened().and_then(|speech| speech.manner(&manner)) {
            Ok(()) => self.tell_state(Have::Yes),
            Err(reason) => self.lose(reason),
        }
    }

    fn opened(&mut self) -> Result<&mut Box<dyn Speech>, NoSpeech> {
        match &mut self.speech {
            Some(speech) => Ok(speech),
            none => {
                self.tries += 1;
                let (of, tell) = (self.tries, self.tell.clone());
                let hears = move |happened| {
                    let _ = tell.send(Told::Happened(of, happened));
                };
                Ok(none.insert(self.engine.open(Arc::new(hears))?))
            }
        }
    }

    fn say(&mut self, ticket: Ticket, text: &str, until: Instant) {
        if self.speech.is_none() {
            self.look(Instant::now());
        }
        if Instant::now() > until {
            return self.over(ticket);
        }
        let Some(speech) = &mut self.speech else { return self.over(ticket) };
        self.handed = Some(ticket);
        let said = speech.say(ticket, text);
        self.unless_lost(said);
    }

    fn unless_lost(&mut self, done: Result<(), NoSpeech>) {
        if let Err(reason) = done {
            self.lose(reason);
        }
    }

    fn lose(&mut self, reason: NoSpeech) {
        if self.speech.take().is_some() && reason != NoSpeech::NoVoice {
            // It was there: look again as soon as something is to be said.
            self.patience.forget();
        }
        self.tell_state(Have::No(reason));
        if let Some(ticket) = self.handed.take() {
            self.over(ticket);
        }
    }

    fn over(&self, ticket: Ticket) {
        let _ = self.tell.send(Told::Happened(self.tries, Happened::Over(ticket)));
    }

    fn tell_state(&self, state: Have<NoSpeech>) {
        let _ = self.tell.send(Told::Speech(state));
    }
}
