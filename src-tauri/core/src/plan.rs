//! What the clinic wrote. A [`Plan`] can only exist if its document is valid.

use chrono::{DateTime, NaiveDate, Utc};

use crate::digest::Digest;
use crate::facts::{BodySize, ItemSide, Manner, OperatedSide};
use crate::ids::{EpisodeId, ItemId};
use crate::problem::Problem;

pub(crate) mod check;
pub mod doc;

pub use check::problems;

use doc::{Between, Count, Dose, Episode, Head, Item, PlanDoc, StageItem, Tempo};

/// The format version that this program reads and writes.
pub const FORMAT: u32 = 1;

/// The sign that is always there, whatever the plan lists: "I feel unwell or dizzy". No session, and
/// ring the clinic today.
pub const UNWELL: &str = "unwell";

/// A valid plan.
#[derive(Debug, Clone, PartialEq)]
pub struct Plan {
    doc: PlanDoc,
    issued_at: DateTime<Utc>,
    reply_secret: Digest,
}

impl Plan {
    /// Checks a document; every problem is reported at once, with its place.
    pub fn new(doc: PlanDoc) -> Result<Self, Vec<Problem>> {
        let mut problems = problems(&doc);
        problems.extend(check::problems_unfilled(&doc));
        match (doc.head.issued_at, doc.reply_secret) {
            (Some(issued_at), Some(reply_secret)) if problems.is_empty() => {
                Ok(Self { doc, issued_at, reply_secret })
            }
            _ => Err(problems),
        }
    }

    /// The document.
    pub fn doc(&self) -> &PlanDoc {
        &self.doc
    }

    /// The head.
    pub fn head(&self) -> &Head {
        &self.doc.head
    }

    /// When it was signed.
    pub fn issued_at(&self) -> DateTime<Utc> {
        self.issued_at
    }

    /// The secret that authenticates a report.
    pub fn reply_secret(&self) -> Digest {
        self.reply_secret
    }

    /// An item.
    pub fn item(&self, id: &ItemId) -> Option<&Item> {
        self.doc.items.iter().find(|item| item.id == *id)
    }

    /// How many times an item does every set: one side after the other does it twice.
    pub fn passes(&self, item: &Item) -> u32 {
        let operated = self.episode(&item.episode).map_or(OperatedSide::Neither, |episode| episode.side);
        let both = item.side == ItemSide::OneAfterTheOther;
        if both { u32::try_from(item.side.working(operated).len()).unwrap_or(1) } else { 1 }
    }

    /// An episode.
    pub fn episode(&self, id: &EpisodeId) -> Option<&Episode> {
        self.doc.episodes.iter().find(|episode| episode.id == *id)
    }
}

impl PlanDoc {
    /// The earliest day 0 that is known.
    pub fn first_day(&self) -> Option<NaiveDate> {
        self.episodes.iter().filter_map(|e| e.day_zero.date()).min()
    }

    /// Stature and mass, as far as the clinic gave them.
    pub fn size(&self) -> BodySize {
        BodySize { height_cm: self.head.height_cm, mass_kg: self.head.mass_kg }
    }

    /// How an item has its movement done with this dose; `None` if its episode is unknown.
    pub fn manner<'a>(&self, item: &Item, dose: &'a Dose) -> Option<Manner<'a>> {
        let episode = self.episodes.iter().find(|e| e.id == item.episode)?;
        Some(Manner {
            side: item.side,
            operated: episode.side,
            load: dose.load.as_ref(),
            with_brace: item.with_brace,
            size: self.size(),
        })
    }
}

impl StageItem {
    /// The dose in this stage.
    pub fn dose<'a>(&'a self, item: &'a Item) -> &'a Dose {
        self.dose.as_ref().unwrap_or(&item.dose)
    }
}

/// What one set of a dose consists of.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Amount {
    /// Repetitions at a tempo; of a range, `least` is enough.
    Repetitions {
        /// Enough.
        least: u16,
        /// No more.
        most: u16,
        /// The course of one.
        tempo: Tempo,
    },
    /// Slow breaths at a tempo.
    Breaths {
        /// How many.
        breaths: u16,
        /// The course of one.
        tempo: Tempo,
    },
    /// Minutes.
    Minutes(u16),
    /// Steps with a walking aid; the patient says when they are done.
    Steps(u16),
}

impl Amount {
    /// How many repetitions, breaths, minutes or steps are enough.
    pub fn least(self) -> u16 {
        match self {
            Self::Repetitions { least, .. } => least,
            other => other.most(),
        }
    }

    /// How many repetitions, breaths, minutes or steps at most.
    pub fn most(self) -> u16 {
        match self {
            Self::Repetitions { most, .. } => most,
            Self::Breaths { breaths, .. } => breaths,
            Self::Minutes(minutes) => minutes,
            Self::Steps(steps) => steps,
        }
    }
}

impl Dose {
    /// What one set consists of; `None` only in a document that is not yet a valid plan.
    pub fn amount(&self) -> Option<Amount> {
        let repetitions = self.repetitions.zip(self.tempo).map(|(count, tempo)| {
            let Between { least, most } = count.range();
            Amount::Repetitions { least, most, tempo }
        });
        let breaths = self.breaths.zip(self.tempo).map(|(breaths, tempo)| Amount::Breaths { breaths, tempo });
        repetitions
            .or(breaths)
            .or(self.minutes.map(Amount::Minutes))
            .or(self.steps.as_ref().map(|steps| Amount::Steps(steps.steps)))
    }
}

impl Count {
    /// As a range.
    pub fn range(self) -> Between {
        match self {
            Self::Exactly(n) => Between { least: n, most: n },
            Self::Between(range) => range,
        }
    }
}

#[cfg(test)]
mod tests;
