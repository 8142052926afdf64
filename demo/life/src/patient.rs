//! The patient of the story, and the hands that work the program.

use std::cell::RefCell;
use std::path::Path;

use chrono::{DateTime, Duration, Utc};
use sendaluna_bedside::guide::{Felt, Guide};
use sendaluna_bedside::receive::Confirmation;
use sendaluna_bedside::types::{
    By, Cue, IanaZone, ItemId, KeyringOrFile, LeaveReason, OperatedSide, PainKind, Place, State,
};
use sendaluna_bedside::{Bedside, BedsideError, Clock, Now};

use crate::Trouble;

/// A clock that only the story moves.
struct Hand(RefCell<Now>);

impl Clock for Hand {
    fn now(&self) -> Now {
        self.0.borrow().clone()
    }
}

/// What the patient means to do in a session.
#[derive(Debug, Clone, Default)]
pub struct Mood {
    /// Pain at rest before it.
    pub pain: u8,
    /// Says at this item that it hurts, and how much.
    pub hurts: Option<(&'static str, u8)>,
    /// Leaves these items out, for a reason.
    pub leaves: Vec<(&'static str, LeaveReason)>,
    /// Stops after so many rounds.
    pub stops_after: Option<usize>,
    /// Effort afterwards, if asked.
    pub effort: Option<u8>,
    /// Pain afterwards.
    pub pain_after: Option<u8>,
    /// A line of their own.
    pub words: Option<&'static str>,
    /// Nobody answers anything.
    pub silent: bool,
}

/// The patient's device.
pub struct Patient {
    /// What they can do.
    pub home: Bedside,
    clock: Hand,
}

impl Patient {
    pub fn new(folder: &Path) -> Result<Self, Trouble> {
        let zone = IanaZone::named("Europe/Madrid").ok_or("no such zone")?;
        let home = Bedside::open(folder, &KeyringOrFile { file_only: true }, zone)?;
        let start = Now { at: DateTime::<Utc>::UNIX_EPOCH, mono_ms: 0, boot: "demo".into() };
        Ok(Self { home, clock: Hand(RefCell::new(start)) })
    }

    /// It is now so late.
    pub fn is(&self, at: DateTime<Utc>) -> Now {
        let mut now = self.clock.0.borrow_mut();
        let passed = (at - now.at).num_milliseconds().max(0);
        now.mono_ms += u64::try_from(passed).unwrap_or(0);
        now.at = at;
        now.clone()
    }

    /// Takes a plan in.
    pub fn takes_in(&mut self, file: &[u8], code: &str, at: DateTime<Utc>) -> Result<(), BedsideError> {
        let now = self.is(at);
        let offer = self.home.offer(file, Some(code), &now)?;
        let said = Confirmation { sides: vec![OperatedSide::Left], today: now.at.date_naive() };
        self.home.take_in(&offer, Some(&said), &now)?;
        Ok(())
    }

    /// A session of everything that is due, if anything is. What the program refuses, does not happen.
    pub fn exercises(&mut self, at: DateTime<Utc>, mood: &Mood) -> Result<(), BedsideError> {
        let now = self.is(at);
        let before = self.home.before(None, &now)?;
        if let Some(day) = before.confirm_date {
            self.home.confirm_date(day, &now)?;
        }
        if self.home.check_session(None, &now).is_err() {
            return Ok(());
        }
        self.home.answer_signs(&[], By::Patient, &now)?;
        self.home.answer_pain_before(mood.pain, By::Patient, &now)?;
        let Ok(guide) = self.home.begin(None, By::Patient, &now) else { return Ok(()) };
        self.is_led(guide, mood)
    }

    fn is_led(&mut self, mut guide: Guide, mood: &Mood) -> Result<(), BedsideError> {
        let Self { home, clock } = self;
        let mut rounds = 0;
        let mut hurt = false;
        guide.start(home, clock)?;
        loop {
            let here = guide.item().map(ItemId::to_string).unwrap_or_default();
            let cues = match guide.state() {
                State::Done | State::Stopped => break,
                State::Prepare if guide.wake_at().is_none() => {
                    let leaves = mood.leaves.iter().find(|(item, _)| *item == here);
                    match leaves {
                        Some((_, reason)) => guide.leave(home, clock, *reason)?,
                        None => guide.ready(home, clock)?,
                    }
                }
                State::Walking => guide.ready(home, clock)?,
                State::Running if !hurt && mood.hurts.is_some_and(|(item, _)| item == here) => {
                    hurt = true;
                    let level = mood.hurts.map_or(0, |(_, level)| level);
                    guide.hurts(clock)?;
                    let place = Some(Place::Hip);
                    guide.answer_hurts(home, clock, Felt::Level(level, PainKind::Stretching), place)?.cues
                }
                _ => {
                    sleep_until(clock, guide.wake_at());
                    guide.wake(home, clock)?
                }
            };
            rounds += cues.iter().filter(|cue| matches!(cue, Cue::SetDone { .. })).count();
            if mood.stops_after.is_some_and(|most| rounds >= most) {
                guide.stop(home, clock, false)?;
            }
        }
        let (effort, pain) = if mood.silent { (None, None) } else { (mood.effort, mood.pain_after) };
        guide.finish(home, &clock.now(), effort, pain, mood.words.map(str::to_string))?;
        Ok(())
    }
}

fn sleep_until(clock: &Hand, wake: Option<u64>) {
    let mut now = clock.0.borrow_mut();
    let wake = wake.unwrap_or(now.mono_ms + 1000);
    let passed = wake.saturating_sub(now.mono_ms);
    now.at += Duration::milliseconds(i64::try_from(passed).unwrap_or(0));
    now.mono_ms += passed;
}
