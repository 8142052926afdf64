//! What is heard when: which utterance begins, which waits, which is dropped. A state machine without a
//! clock, a thread or a device; time comes in as an argument.
//!
//! The policy, in the order in which it is applied:
//!
//! 1. Nothing is heard before it is due, and nothing begins after it has stopped mattering: it is dropped.
//! 2. One utterance at a time. What is being said is said to its end, with the exceptions in 5 and 6.
//! 3. What matters for at most [`COUNT_AT_MOST`] is a count. A new count takes the place of one that waits.
//! 4. Everything else is a sentence. Sentences wait in turn, at most [`MOST_WAITING`]; then the oldest goes.
//! 5. What is urgent cuts off whatever is being said and is not urgent itself, and clears what waits.
//! 6. An utterance that has not begun [`GRACE`] after it stopped mattering, or that goes on beyond all
//!    measure, is cut off: an engine that has lost its tongue must not keep the rest from being said.
//! 7. A tone waits for nobody. Words that come with a tone begin when it has sounded, so that neither covers the
//!    other for ears that hear badly; unless they are urgent, or would stop mattering.

use std::collections::VecDeque;
use std::time::{Duration, Instant};

use crate::tone::Tone;

/// What matters for so long at most is a count.
pub const COUNT_AT_MOST: Duration = Duration::from_secs(2);
/// So many utterances wait at most.
pub const MOST_WAITING: usize = 4;
/// So many cues are kept at most that are not due yet; beyond that the newest is dropped.
pub const MOST_COMING: usize = 32;
/// So much later than it matters may an utterance begin that was handed over in time.
pub const GRACE: Duration = Duration::from_millis(400);
/// An utterance may last so long, whatever its length.
const LASTS: Duration = Duration::from_secs(4);
/// And so much longer for each character: the slowest voice says about eight a second.
const LASTS_PER_CHARACTER: Duration = Duration::from_millis(250);

/// Something to be heard.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Heard {
    /// What is said.
    pub text: Option<String>,
    /// What sounds.
    pub tone: Option<Tone>,
    /// From when on.
    pub due: Instant,
    /// How long after that it may still begin.
    pub how_long_it_matters: Duration,
    /// It cuts off what is being said.
    pub urgent: bool,
}

/// The number of an utterance; never used twice.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Hash, PartialOrd, Ord)]
pub struct Ticket(pub u64);

/// What is to be done now.
#[derive(Debug, Clone, PartialEq, Eq)]
pub enum Act {
    /// Begin to say this, but not after `until`.
    Begin {
        /// Its number.
        ticket: Ticket,
        /// What is said.
        text: String,
        /// When it stops mattering.
        until: Instant,
    },
    /// Sound this, but not after `until`.
    Sound {
        /// Which.
        tone: Tone,
        /// When it stops mattering.
        until: Instant,
    },
    /// Say no more of what is being said.
    Hush,
}

#[derive(Debug, Clone)]
struct Line {
    text: String,
    from: Instant,
    until: Instant,
    is_count: bool,
    urgent: bool,
}

#[derive(Debug, Clone)]
struct Saying {
    ticket: Ticket,
    urgent: bool,
    /// When it is cut off if nothing is heard of it.
    over_by: Instant,
    lasts: Duration,
}

/// What is being said and what waits.
#[derive(Debug, Default)]
pub struct Queue {
    saying: Option<Saying>,
    waiting: VecDeque<Line>,
    coming: Vec<Heard>,
    tickets: u64,
}

impl Queue {
    /// Takes something in.
    pub fn offer(&mut self, heard: Heard, now: Instant) -> Vec<Act> {
        if heard.due <= now || self.coming.len() < MOST_COMING {
            self.coming.push(heard);
        }
        self.at(now)
    }

    /// It is `now`.
    pub fn at(&mut self, now: Instant) -> Vec<Act> {
        let mut acts = Vec::new();
        self.give_up(now, &mut acts);
        self.coming.sort_by_key(|heard| heard.due);
        let due = self.coming.partition_point(|heard| heard.due <= now);
        for heard in self.coming.drain(..due).collect::<Vec<_>>() {
            self.arrive(heard, now, &mut acts);
        }
        self.begin(now, &mut acts);
        acts
    }

    /// An utterance can be heard.
    pub fn began(&mut self, ticket: Ticket, now: Instant) {
        if let Some(saying) = self.saying.as_mut().filter(|saying| saying.ticket == ticket) {
            saying.over_by = now + saying.lasts;
        }
    }

    /// An utterance is over, said to its end or not.
    pub fn over(&mut self, ticket: Ticket, now: Instant) -> Vec<Act> {
        if self.saying.as_ref().is_some_and(|saying| saying.ticket == ticket) {
            self.saying = None;
        }
        self.at(now)
    }

    /// Silence: nothing goes on, waits or comes.
    pub fn cut(&mut self) -> Vec<Act> {
        self.waiting.clear();
        self.coming.clear();
        self.saying.take().map_or_else(Vec::new, |_| vec![Act::Hush])
    }

    /// When time must be told next.
    pub fn wake_at(&self) -> Option<Instant> {
        let coming = self.coming.iter().map(|heard| heard.due);
        let saying = self.saying.iter().map(|saying| saying.over_by);
        let next = self.waiting.front().filter(|_| self.saying.is_none()).map(|line| line.from);
        coming.chain(saying).chain(next).min()
    }

    /// Nothing is being said, waits or comes.
    pub fn is_idle(&self) -> bool {
        self.saying.is_none() && self.waiting.is_empty() && self.coming.is_empty()
    }

    fn give_up(&mut self, now: Instant, acts: &mut Vec<Act>) {
        if self.saying.take_if(|saying| saying.over_by <= now).is_some() {
            acts.push(Act::Hush);
        }
    }

    fn arrive(&mut self, heard: Heard, now: Instant, acts: &mut Vec<Act>) {
        let until = heard.due + heard.how_long_it_matters;
        if until < now {
            return;
        }
        if heard.urgent {
            self.waiting.retain(|line| line.urgent);
            if self.saying.take_if(|saying| !saying.urgent).is_some() {
                acts.push(Act::Hush);
            }
        }
        if let Some(tone) = heard.tone {
            acts.push(Act::Sound { tone, until });
        }
        if let Some(text) = heard.text {
            let sounds = heard.tone.filter(|_| !heard.urgent).map_or(Duration::ZERO, Tone::length);
            let is_count = heard.how_long_it_matters <= COUNT_AT_MOST;
            let from = (now + sounds).min(until);
            self.wait(Line { text, from, until, is_count, urgent: heard.urgent });
        }
    }

    fn wait(&mut self, line: Line) {
        if line.is_count {
            self.waiting.retain(|other| !other.is_count || other.urgent);
        }
        self.waiting.push_back(line);
        if self.waiting.len() > MOST_WAITING {
            let oldest = self.waiting.iter().position(|line| !line.urgent).unwrap_or_default();
            self.waiting.remove(oldest);
        }
    }

    fn begin(&mut self, now: Instant, acts: &mut Vec<Act>) {
        self.waiting.retain(|line| now <= line.until);
        if self.saying.is_some() {
            return;
        }
        let next = self.waiting.pop_front_if(|line| line.from <= now);
        let Some(Line { text, until, urgent, .. }) = next else { return };
        self.tickets += 1;
        let ticket = Ticket(self.tickets);
        let characters = u32::try_from(text.chars().count()).unwrap_or(u32::MAX);
        let lasts = LASTS + LASTS_PER_CHARACTER.saturating_mul(characters);
        self.saying = Some(Saying { ticket, urgent, over_by: until + GRACE, lasts });
        acts.push(Act::Begin { ticket, text, until });
    }
}

#[cfg(test)]
mod tests;
