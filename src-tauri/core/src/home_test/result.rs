//! What a test came to.

use serde::{Deserialize, Serialize};

use crate::plan::doc::TestKind;

/// More stands than this in 30 seconds are a slip of the finger: common practice, no source.
pub const MOST_STANDS: u16 = 60;
/// Less than this, in tenths of a second, nobody needs to rise, walk 3 m and back: common practice, no
/// source.
const LEAST_WALK_TENTHS: u16 = 10;
/// Nor more than this.
pub(super) const MOST_WALK_TENTHS: u16 = 3_000;
/// A stance is held for 10 s (CDC STEADI).
pub(super) const WHOLE_TENTHS: u8 = 100;

/// What a test came to.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(tag = "of", rename_all = "kebab-case", deny_unknown_fields)]
pub enum TestResult {
    /// 30-second chair stand.
    ChairStand {
        /// How often the patient stood up.
        stands: u16,
        /// The arms helped.
        arms_used: bool,
    },
    /// Timed up and go.
    TimedUpAndGo {
        /// From "go" until seated again, in tenths of a second.
        tenths_s: u16,
    },
    /// Four-stage balance.
    FourStageBalance {
        /// How long each stance was held, in tenths of a second.
        held_tenths_s: Held,
    },
}

impl TestResult {
    /// Of which test.
    pub fn kind(&self) -> TestKind {
        match self {
            Self::ChairStand { .. } => TestKind::ChairStand,
            Self::TimedUpAndGo { .. } => TestKind::TimedUpAndGo,
            Self::FourStageBalance { .. } => TestKind::FourStageBalance,
        }
    }

    /// Whether it can be.
    pub fn can_be(&self) -> bool {
        match self {
            Self::ChairStand { stands, .. } => *stands <= MOST_STANDS,
            Self::TimedUpAndGo { tenths_s } => (LEAST_WALK_TENTHS..=MOST_WALK_TENTHS).contains(tenths_s),
            Self::FourStageBalance { .. } => true,
        }
    }
}

/// A stance of the four-stage balance test, in the order of the test.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Stance {
    /// Feet side by side.
    SideBySide,
    /// One foot half before the other.
    SemiTandem,
    /// One foot wholly before the other.
    Tandem,
    /// On one leg.
    OneLeg,
}

impl Stance {
    /// All, in order.
    pub const ALL: [Self; 4] = [Self::SideBySide, Self::SemiTandem, Self::Tandem, Self::OneLeg];
}

/// How long each stance was held, in tenths of a second: 10 s each, and the first that was not held ends
/// the test.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(try_from = "Vec<u8>", into = "Vec<u8>")]
pub struct Held(Vec<u8>);

/// Why numbers are not [`Held`].
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct NotHeld;

impl std::fmt::Display for NotHeld {
    fn fmt(&self, f: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        f.write_str("one to four stances, 10 s each, the last one alone shorter")
    }
}

impl std::error::Error for NotHeld {}

impl Held {
    /// From tenths of a second, a stance each.
    pub fn new(tenths: Vec<u8>) -> Result<Self, NotHeld> {
        let Some((last, before)) = tenths.split_last() else { return Err(NotHeld) };
        let whole = before.iter().all(|held| *held == WHOLE_TENTHS);
        let ends = *last < WHOLE_TENTHS || tenths.len() == Stance::ALL.len();
        let fits = *last <= WHOLE_TENTHS && tenths.len() <= Stance::ALL.len();
        if whole && ends && fits { Ok(Self(tenths)) } else { Err(NotHeld) }
    }

    /// How long a stance was held, in tenths of a second; `None` if the test ended before it.
    pub fn of(&self, stance: Stance) -> Option<u8> {
        Stance::ALL.iter().zip(&self.0).find(|(known, _)| **known == stance).map(|(_, held)| *held)
    }

    /// Every stance that was tried.
    pub fn iter(&self) -> impl Iterator<Item = (Stance, u8)> + '_ {
        Stance::ALL.into_iter().zip(self.0.iter().copied())
    }
}

impl TryFrom<Vec<u8>> for Held {
    type Error = NotHeld;
    fn try_from(tenths: Vec<u8>) -> Result<Self, NotHeld> {
        Self::new(tenths)
    }
}

impl From<Held> for Vec<u8> {
    fn from(held: Held) -> Self {
        held.0
    }
}
