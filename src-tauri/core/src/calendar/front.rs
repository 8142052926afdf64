//! What stands outside the record, in `front.json`: what reminds, and whom to ring. It can be read while
//! the record is shut, so it holds as little as does that.
//!
//! A file is at most [`MOST_BYTES`] long. It is checked whole before anything in it is used.

use chrono::{DateTime, NaiveDate, NaiveTime, Utc};
use serde::{Deserialize, Serialize};

use super::slots::{MOST_TIMES, Quiet};
use crate::plan::doc::Tier;

/// The folder within the data folder that both programs share.
pub const FOLDER: &str = "reminders";
/// The file's name in it.
pub const FILE: &str = "front.json";
/// The form that this version reads and writes.
pub const VERSION: u32 = 1;
/// The longest file that is read.
pub const MOST_BYTES: usize = 512 * 1024;
/// Days ahead at most.
pub const MOST_DAYS: usize = 120;
const MOST_TEXT: usize = 1_000;
const MOST_LIST: usize = 200;

/// The file as it is written.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct FrontDoc {
    /// The form.
    pub version: u32,
    /// When it was made.
    pub made_at: DateTime<Utc>,
    /// Whether the patient wants to be reminded.
    pub on: bool,
    /// With a sound.
    pub sound: bool,
    /// Days ahead with their times, in order.
    pub days: Vec<FrontDay>,
    /// When it is quiet, but for times that were chosen.
    pub quiet: Quiet,
    /// The last day on which anything was heard of the patient.
    pub heard_on: NaiveDate,
    /// Times up to this moment have had their answer.
    pub answered_until: DateTime<Utc>,
    /// What a notice says.
    pub words: FrontWords,
    /// Whom to ring, and when to stop.
    pub contacts: FrontContacts,
}

/// A day with its times.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct FrontDay {
    /// Which.
    pub day: NaiveDate,
    /// Its times, in order.
    pub slots: Vec<FrontSlot>,
}

/// A time of a day.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct FrontSlot {
    /// On the wall.
    pub time: NaiveTime,
    /// The patient chose it.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub chosen: bool,
}

/// What a notice says, in the patient's language and as plainly as the patient wants.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct FrontWords {
    /// The language.
    pub lang: String,
    /// The title of a notice.
    pub title: String,
    /// At its time.
    pub now: String,
    /// Later than its time, because the device was off or asleep.
    pub late: String,
    /// After some days without an answer.
    pub after_silence: String,
    /// "Start".
    pub start: String,
    /// "In 30 minutes".
    pub in_30_minutes: String,
    /// "Not today".
    pub not_today: String,
}

impl FrontWords {
    fn all(&self) -> [&str; 8] {
        [
            &self.lang,
            &self.title,
            &self.now,
            &self.late,
            &self.after_silence,
            &self.start,
            &self.in_30_minutes,
            &self.not_today,
        ]
    }
}

/// Whom to ring, and when to stop.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct FrontContacts {
    /// The clinic.
    pub clinic: String,
    /// In working hours.
    pub phone: String,
    /// Out of hours.
    pub out_of_hours_phone: String,
    /// The emergency number.
    pub emergency_phone: String,
    /// What to do in an emergency.
    pub emergency_advice: String,
    /// Warning signs, gravest first.
    pub signs: Vec<FrontSign>,
    /// Cautions, always shown with them.
    pub cautions: Vec<String>,
}

/// A warning sign.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct FrontSign {
    /// Its id.
    pub sign: String,
    /// What it asks for.
    pub tier: Tier,
    /// In words.
    pub text: String,
}

/// Why a file cannot be used. Whoever reads it keeps what they had.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum FrontFault {
    /// Longer than [`MOST_BYTES`].
    TooLong,
    /// Not the JSON of this form: torn, or something else.
    NotReadable,
    /// Of a newer version.
    Newer,
    /// Something in it is outside what can be meant: this.
    OutOfBounds(&'static str),
}

/// A file that was checked.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Front(FrontDoc);

impl Front {
    /// Reads a file's bytes.
    pub fn read(bytes: &[u8]) -> Result<Self, FrontFault> {
        /// What every form begins with.
        #[derive(Deserialize)]
        struct Head {
            version: u32,
        }
        if bytes.len() > MOST_BYTES {
            return Err(FrontFault::TooLong);
        }
        let head: Head = serde_json::from_slice(bytes).map_err(|_| FrontFault::NotReadable)?;
        if head.version > VERSION {
            return Err(FrontFault::Newer);
        }
        let doc: FrontDoc = serde_json::from_slice(bytes).map_err(|_| FrontFault::NotReadable)?;
        Self::new(doc)
    }

    /// Checks what is to be written.
    pub fn new(doc: FrontDoc) -> Result<Self, FrontFault> {
        let holds = |holds: bool, what| if holds { Ok(()) } else { Err(FrontFault::OutOfBounds(what)) };
        holds(doc.version == VERSION, "version")?;
        holds(doc.days.len() <= MOST_DAYS, "days")?;
        holds(doc.days.windows(2).all(|two| two[0].day < two[1].day), "order of days")?;
        for day in &doc.days {
            holds(day.slots.len() <= 2 * MOST_TIMES, "times")?;
            holds(day.slots.windows(2).all(|two| two[0].time < two[1].time), "order of times")?;
        }
        let contacts = &doc.contacts;
        holds(contacts.signs.len() <= MOST_LIST && contacts.cautions.len() <= MOST_LIST, "signs")?;
        let texts = doc.words.all().into_iter().chain(contacts.all());
        holds(texts.into_iter().all(is_text), "texts")?;
        Ok(Self(doc))
    }

    /// What it holds.
    pub fn doc(&self) -> &FrontDoc {
        &self.0
    }

    /// Whether a time is still asked for.
    pub fn asks(&self, day: NaiveDate, time: NaiveTime) -> bool {
        let of_day = |known: &FrontDay| known.day == day && known.slots.iter().any(|slot| slot.time == time);
        self.0.on && self.0.days.iter().any(of_day)
    }

    /// The patient was heard of on this day too.
    pub fn hear(&mut self, on: Option<NaiveDate>) {
        self.0.heard_on = on.map_or(self.0.heard_on, |on| on.max(self.0.heard_on));
    }

    /// Its bytes.
    pub fn to_bytes(&self) -> Vec<u8> {
        serde_json::to_vec_pretty(&self.0).expect("a front is plain data")
    }
}

impl FrontContacts {
    fn all(&self) -> impl Iterator<Item = &str> {
        let own = [
            &self.clinic,
            &self.phone,
            &self.out_of_hours_phone,
            &self.emergency_phone,
            &self.emergency_advice,
        ];
        let signs = self.signs.iter().flat_map(|sign| [&sign.sign, &sign.text]);
        own.into_iter().chain(signs).chain(&self.cautions).map(String::as_str)
    }
}

/// Something that can be shown: not empty, not endless, nothing that steers a screen.
fn is_text(text: &str) -> bool {
    !text.is_empty()
        && text.chars().count() <= MOST_TEXT
        && !text.chars().any(|c| c.is_control() && c != '\n')
}

#[cfg(test)]
pub(crate) mod tests;
