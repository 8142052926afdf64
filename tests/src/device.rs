//! A patient's device somewhere on earth, with time as an argument.

use std::cell::RefCell;

use chrono::Duration;
use sendaluna_bedside::guide::Guide;
use sendaluna_bedside::receive::Confirmation;
use sendaluna_bedside::types::{By, Coded, Cue, IanaZone, ItemId, KeyringOrFile, OperatedSide, State, Words};
use sendaluna_bedside::{Bedside, BedsideError, Clock, Now};
use tempfile::TempDir;

use crate::world::World;

/// Keys in a file, for tests.
pub const KEYS: KeyringOrFile = KeyringOrFile { file_only: true };

/// A clock that is set by hand.
pub struct Hand(pub RefCell<Now>);

impl Clock for Hand {
    fn now(&self) -> Now {
        self.0.borrow().clone()
    }
}

/// A reading at a moment.
pub fn at(text: &str) -> Now {
    Now { at: text.parse().expect("a moment"), mono_ms: 0, boot: "b".into() }
}

/// A patient's device somewhere on earth.
pub struct Device {
    folder: TempDir,
    zone: String,
}

impl Device {
    /// With nothing on it yet.
    pub fn new(zone: &str) -> Self {
        Self { folder: tempfile::tempdir().expect("a folder"), zone: zone.into() }
    }

    /// Its data folder.
    pub fn folder(&self) -> &std::path::Path {
        self.folder.path()
    }

    /// Opens it for use.
    pub fn open(&self) -> Bedside {
        let zone = IanaZone::named(&self.zone).expect("a zone");
        Bedside::open(self.folder.path(), &KEYS, zone).expect("opens")
    }

    /// With a plan taken in at a moment.
    pub fn with(zone: &str, world: &World, now: &Now) -> Self {
        let device = Self::new(zone);
        take_in(&mut device.open(), &world.file(), &world.code(), now);
        device
    }
}

/// A first plan is taken in, for the left side.
pub fn take_in(home: &mut Bedside, file: &[u8], code: &str, now: &Now) {
    let offer = home.offer(file, Some(code), now).expect("good");
    assert!(offer.first);
    let today = home.summary(&Words::new(["en"]), &offer, now).today;
    let said = Confirmation { sides: vec![OperatedSide::Left], today };
    home.take_in(&offer, Some(&said), now).expect("taken in");
}

/// An item's id.
pub fn id(text: &str) -> ItemId {
    ItemId::new(text).expect("an id")
}

/// Answers the questions of a day without trouble.
pub fn answered(home: &mut Bedside, now: &Now) {
    if let Some(day) = home.before(None, now).expect("a plan").confirm_date {
        home.confirm_date(day, now).expect("the device's date");
    }
    home.answer_signs(&[], By::Patient, now).expect("answered");
    home.answer_pain_before(1, By::Patient, now).expect("answered");
}

/// The code of a failure, or "done".
pub fn code<T>(result: Result<T, BedsideError>) -> &'static str {
    result.map_or_else(|error| error.code(), |_| "done")
}

/// A plan whose gate is the straight leg raise through week 12: day 0 on 2026-03-02.
pub fn world() -> World {
    let mut world = World::new();
    world.plan.stages[0]
        .items
        .push(serde_json::from_value(serde_json::json!({ "item": "raise" })).expect("the form"));
    world
}

/// Leads a session, answering as soon as it is asked, until something is so.
pub fn lead(
    home: &mut Bedside,
    guide: &mut Guide,
    clock: &Hand,
    until: impl Fn(&Guide, &[Cue]) -> bool,
) -> Vec<Cue> {
    let mut told = Vec::new();
    if guide.state() == State::Prepare && guide.wake_at().is_none() {
        told.extend(guide.start(home, clock).unwrap_or_default());
    }
    while !until(guide, &told) {
        let cues = match guide.state() {
            State::Prepare | State::Walking => guide.ready(home, clock).expect("it waits"),
            State::Done | State::Stopped => break,
            _ => {
                let wake = guide.wake_at().expect("time goes on");
                let mut now = clock.0.borrow_mut();
                let passed = i64::try_from(wake - now.mono_ms).expect("small");
                now.at += Duration::milliseconds(passed);
                now.mono_ms = wake;
                drop(now);
                guide.wake(home, clock).expect("led")
            }
        };
        told.extend(cues);
    }
    told
}

/// How many sets were done.
pub fn set_done(told: &[Cue]) -> usize {
    told.iter().filter(|cue| matches!(cue, Cue::SetDone { .. })).count()
}
