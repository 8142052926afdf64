//! The thread that keeps to the policy. It neither speaks nor sounds itself, so that it is never late.

use std::sync::mpsc::{Receiver, RecvTimeoutError, Sender, SyncSender};
use std::sync::{Arc, Mutex};
use std::time::{Duration, Instant};

use super::{State, Wish, player, talker};
use crate::queue::{Act, Heard, Queue};
use crate::sound::NoSound;
use crate::speech::{Happened, NoSpeech};
use crate::{Have, locked};

/// So long after it was handed over a tone has sounded through: what lies in a device's buffers.
const BUFFERED: Duration = Duration::from_millis(120);

/// What the thread is told.
pub(super) enum Order {
    Say(Heard),
    Cut,
    Wish(Wish),
    Wait(Until, SyncSender<()>),
    End,
    /// By whoever talks; of its so many-eth try.
    Happened(u64, Happened),
    Speech(Have<NoSpeech>),
    /// By an output, of its so many-eth try.
    Broke(u64, NoSound),
    Tones(Have<NoSound>),
}

/// What is waited for.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub(super) enum Until {
    Quiet,
    Settled,
}

pub(super) struct Run {
    queue: Queue,
    wish: Wish,
    talker: Sender<talker::Order>,
    player: Sender<player::Order>,
    state: Arc<Mutex<State>>,
    sounds_until: Option<Instant>,
    waiting: Vec<(Until, SyncSender<()>)>,
}

impl Run {
    pub(super) fn new(
        wish: Wish,
        talker: Sender<talker::Order>,
        player: Sender<player::Order>,
        state: Arc<Mutex<State>>,
    ) -> Self {
        let queue = Queue::default();
        Self { queue, wish, talker, player, state, sounds_until: None, waiting: Vec::new() }
    }

    pub(super) fn until_end(mut self, orders: &Receiver<Order>) {
        loop {
            let order = match self.wake_at() {
                Some(at) => orders.recv_timeout(at.saturating_duration_since(Instant::now())),
                None => orders.recv().map_err(|_| RecvTimeoutError::Disconnected),
            };
            let now = Instant::now();
            match order {
                Ok(Order::End) | Err(RecvTimeoutError::Disconnected) => return self.silence(),
                Ok(order) => self.take(order, now),
                Err(RecvTimeoutError::Timeout) => {
                    let acts = self.queue.at(now);
                    self.act(acts, now);
                }
            }
            self.tell_who_waits(now);
        }
    }

    fn wake_at(&self) -> Option<Instant> {
        let quiet = self.sounds_until.filter(|_| !self.waiting.is_empty());
        self.queue.wake_at().into_iter().chain(quiet).min()
    }

    fn take(&mut self, order: Order, now: Instant) {
        match order {
            Order::Say(heard) => {
                let acts = self.queue.offer(self.wanted(heard), now);
                self.act(acts, now);
            }
            Order::Cut | Order::End => self.silence(),
            Order::Wish(wish) => self.wish(wish, now),
            Order::Wait(until, done) => self.waiting.push((until, done)),
            Order::Happened(_, Happened::Began(ticket)) => self.queue.began(ticket, now),
            Order::Happened(_, Happened::Over(ticket)) => {
                let acts = self.queue.over(ticket, now);
                self.act(acts, now);
            }
            Order::Happened(of, Happened::Lost(reason)) => self.talk(talker::Order::Lost(of, reason)),
            Order::Broke(of, reason) => self.play(player::Order::Lost(of, reason)),
            Order::Speech(speech) => self.state().speech = speech,
            Order::Tones(tones) => self.state().tones = tones,
        }
    }

    /// What of it is wanted.
    fn wanted(&self, mut heard: Heard) -> Heard {
        heard.text = heard.text.filter(|_| self.wish.speech);
        heard.tone = heard.tone.filter(|_| self.wish.tones);
        heard
    }

    fn wish(&mut self, wish: Wish, now: Instant) {
        if !wish.speech {
            let acts = self.queue.cut();
            self.act(acts, now);
        }
        self.talk(talker::Order::Manner(wish.manner()));
        self.play(player::Order::Want(wish.tones));
        self.wish = wish;
    }

    fn act(&mut self, acts: Vec<Act>, now: Instant) {
        for act in acts {
            match act {
                Act::Begin { ticket, text, until } => self.talk(talker::Order::Say { ticket, text, until }),
                Act::Hush => self.talk(talker::Order::Hush),
                Act::Sound { tone, until } => {
                    self.sounds_until = Some(now + tone.length() + BUFFERED);
                    self.play(player::Order::Sound { tone, until });
                }
            }
        }
    }

    fn silence(&mut self) {
        let acts = self.queue.cut();
        self.act(acts, Instant::now());
        self.play(player::Order::Hush);
        self.sounds_until = None;
    }

    fn tell_who_waits(&mut self, now: Instant) {
        self.sounds_until = self.sounds_until.filter(|until| *until > now);
        let is_quiet = self.queue.is_idle() && self.sounds_until.is_none();
        let state = *self.state();
        let is_settled = state.speech != Have::NotYet && state.tones != Have::NotYet;
        self.waiting.retain(|(until, done)| {
            let is_so = match until {
                Until::Quiet => is_quiet,
                Until::Settled => is_settled,
            };
            if is_so {
                // Whoever has stopped waiting is not there to be told.
                let _ = done.try_send(());
            }
            !is_so
        });
    }

    fn state(&self) -> std::sync::MutexGuard<'_, State> {
        locked(&self.state)
    }

    /// Both threads live as long as this one.
    fn talk(&self, order: talker::Order) {
        let _ = self.talker.send(order);
    }

    fn play(&self, order: player::Order) {
        let _ = self.player.send(order);
    }
}
