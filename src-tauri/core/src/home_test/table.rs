//! What the tables of CDC STEADI say of a result. It belongs to the clinic's report, never to the
//! patient's screen.

use chrono::{Datelike, NaiveDate};
use serde::Serialize;

use crate::home_test::result::{Stance, TestResult, WHOLE_TENTHS};

/// A row of the chair stand's table: fewer stands than this are below average.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct AgeBand {
    /// From this age, in whole years.
    pub from: u16,
    /// To this age, included.
    pub through: u16,
    /// For men.
    pub men_below: u16,
    /// For women.
    pub women_below: u16,
}

/// CDC STEADI, 30-Second Chair Stand, 2017: below-average scores (public domain; from memory).
pub const CHAIR_STAND_BELOW_AVERAGE: [AgeBand; 7] = [
    AgeBand { from: 60, through: 64, men_below: 14, women_below: 12 },
    AgeBand { from: 65, through: 69, men_below: 12, women_below: 11 },
    AgeBand { from: 70, through: 74, men_below: 12, women_below: 10 },
    AgeBand { from: 75, through: 79, men_below: 11, women_below: 10 },
    AgeBand { from: 80, through: 84, men_below: 10, women_below: 9 },
    AgeBand { from: 85, through: 89, men_below: 8, women_below: 8 },
    AgeBand { from: 90, through: 94, men_below: 7, women_below: 4 },
];

/// Timed up and go of 12 s or more: risk of falling (CDC STEADI).
const RISK_WALK_TENTHS: u16 = 120;

/// What a table says of a result.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
#[serde(tag = "of", rename_all = "kebab-case")]
pub enum Verdict {
    /// 30-second chair stand. A plan does not say whether somebody is a man or a woman, so both rows are
    /// given; nor on which day they were born, so they may be of either age.
    ChairStand {
        /// The score: 0 if the arms helped.
        score: u16,
        /// The younger and the older age that the year of birth allows.
        ages: [u16; 2],
        /// By the row for men.
        men: Row,
        /// By the row for women.
        women: Row,
    },
    /// Timed up and go.
    TimedUpAndGo {
        /// 12 s or more: risk of falling.
        risk: bool,
    },
    /// Four-stage balance.
    FourStageBalance {
        /// The tandem stance was held for less than 10 s, or not reached: risk of falling.
        risk: bool,
    },
}

/// A score against a row of the chair stand's table.
#[derive(Debug, Clone, PartialEq, Eq, Serialize)]
pub struct Row {
    /// Fewer than this is below average: of the younger age, and of the older where it differs.
    pub below: Vec<u16>,
    /// What it says.
    pub norm: Norm,
}

/// What a row says of a score.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum Norm {
    /// Below average.
    BelowAverage,
    /// Not below average.
    NotBelowAverage,
    /// One or the other, by whether this year's birthday has passed.
    ByBirthday,
    /// The table has no row for the age.
    NoNorm,
}

impl Norm {
    /// Every code, as people read `norm-<code>`.
    pub const CODES: &'static [&'static str] =
        &["below-average", "not-below-average", "by-birthday", "no-norm"];

    /// The stable code.
    pub fn code(self) -> &'static str {
        match self {
            Self::BelowAverage => "below-average",
            Self::NotBelowAverage => "not-below-average",
            Self::ByBirthday => "by-birthday",
            Self::NoNorm => "no-norm",
        }
    }
}

/// What the table says of a result, for somebody born in a year, on the day of the test.
pub fn verdict(result: &TestResult, born: u16, day: NaiveDate) -> Verdict {
    match result {
        TestResult::ChairStand { stands, arms_used } => {
            let score = if *arms_used { 0 } else { *stands };
            let older = u16::try_from(day.year()).unwrap_or(0).saturating_sub(born);
            let ages = [older.saturating_sub(1), older];
            let men = row(score, ages, |band| band.men_below);
            let women = row(score, ages, |band| band.women_below);
            Verdict::ChairStand { score, ages, men, women }
        }
        TestResult::TimedUpAndGo { tenths_s } => {
            Verdict::TimedUpAndGo { risk: *tenths_s >= RISK_WALK_TENTHS }
        }
        TestResult::FourStageBalance { held_tenths_s } => {
            let tandem = held_tenths_s.of(Stance::Tandem);
            Verdict::FourStageBalance { risk: tandem.is_none_or(|held| held < WHOLE_TENTHS) }
        }
    }
}

fn row(score: u16, ages: [u16; 2], below: impl Fn(&AgeBand) -> u16) -> Row {
    let limits = ages.map(|age| {
        let band = CHAIR_STAND_BELOW_AVERAGE.iter().find(|band| (band.from..=band.through).contains(&age));
        band.map(&below)
    });
    let norms = limits.map(|limit| match limit {
        Some(limit) if score < limit => Norm::BelowAverage,
        Some(_) => Norm::NotBelowAverage,
        None => Norm::NoNorm,
    });
    let mut below: Vec<u16> = limits.into_iter().flatten().collect();
    below.dedup();
    Row { below, norm: if norms[0] == norms[1] { norms[0] } else { Norm::ByBirthday } }
}
