//! What needs a call, a talk, or a look at the file: each with its day and its rule.

use chrono::NaiveDate;
use serde::Serialize;

use crate::ids::{ItemId, PrecautionId, TestId};
use crate::measure::{Feeling, ItemMeasure, Measured, within};
use crate::plan::doc::Tier;
use crate::record::{Body, Event, SetBackKind};
use crate::session::PainAnswer;

/// An exercise that was left out this often is worth a talk: common practice, no source.
const SKIPPED: u32 = 3;
/// So many days of doing more than asked are, too: common practice, no source.
const OVERDONE_DAYS: u32 = 3;

/// Who should do something about it.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum FlagGroup {
    /// Ring today.
    RingToday,
    /// Talk about it.
    TalkAbout,
    /// Look at the file.
    TheFile,
}

/// A flag.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct Flag {
    /// Who should do something about it.
    pub group: FlagGroup,
    /// On which day; of a whole span, its last.
    pub day: NaiveDate,
    /// By which rule.
    pub rule: FlagRule,
}

/// The rule of a flag.
#[derive(Debug, Clone, PartialEq, Serialize)]
#[serde(tag = "rule", rename_all = "kebab-case")]
pub enum FlagRule {
    /// A warning sign of a tier that says to ring was new or worse.
    WarningSign {
        /// How grave.
        tier: Tier,
    },
    /// Pain was over the plan's limit for the day.
    PainOverLimit {
        /// 0 to 10; `None` if distress was seen instead.
        level: Option<u8>,
    },
    /// A fall.
    Fall,
    /// A stay in hospital.
    Readmission,
    /// Something was done that was not allowed on that day.
    AgainstGate {
        /// Which item.
        item: ItemId,
    },
    /// A home test was done that was not allowed on that day.
    TestAgainstGate {
        /// Which test.
        test: TestId,
    },
    /// Pain at rest rose by more than two points.
    RisingPain {
        /// By how many.
        change: f64,
    },
    /// An exercise was left out three times or more, with reasons.
    Skipped {
        /// Which item.
        item: ItemId,
        /// How often.
        times: u32,
    },
    /// More was done than asked, on three days or more.
    Overdone {
        /// Which item.
        item: ItemId,
        /// On how many days.
        days: u32,
    },
    /// A lift by someone without the right had no effect.
    LiftIgnored {
        /// Of which precaution.
        precaution: PrecautionId,
    },
    /// The clock jumped, and the patient confirmed the date.
    Clock {
        /// By how many seconds.
        jump_s: i64,
    },
    /// The record does not follow from this event on.
    ChainBroken {
        /// Its number, counted from 1.
        from: u64,
    },
}

impl FlagRule {
    /// Every code, as people read `flag-<code>`.
    pub const CODES: &'static [&'static str] = &[
        "warning-sign",
        "pain-over-limit",
        "fall",
        "readmission",
        "against-gate",
        "test-against-gate",
        "rising-pain",
        "skipped",
        "overdone",
        "lift-ignored",
        "clock",
        "chain-broken",
    ];

    fn group(&self) -> FlagGroup {
        match self {
            Self::WarningSign { .. }
            | Self::PainOverLimit { .. }
            | Self::Fall
            | Self::Readmission
            | Self::AgainstGate { .. }
            | Self::TestAgainstGate { .. } => FlagGroup::RingToday,
            Self::RisingPain { .. }
            | Self::Skipped { .. }
            | Self::Overdone { .. }
            | Self::LiftIgnored { .. } => FlagGroup::TalkAbout,
            Self::Clock { .. } | Self::ChainBroken { .. } => FlagGroup::TheFile,
        }
    }
}

pub(super) fn of_span(
    measured: &Measured<'_>,
    items: &[ItemMeasure],
    feeling: &Feeling,
    from: NaiveDate,
    through: NaiveDate,
) -> Vec<Flag> {
    let mut flags: Vec<Flag> = Vec::new();
    let mut raise = |day: NaiveDate, rule: FlagRule| {
        let flag = Flag { group: rule.group(), day, rule };
        if within(day, from, through) && !flags.contains(&flag) {
            flags.push(flag);
        }
    };
    for event in measured.events {
        for (day, rule) in of_event(event) {
            raise(day, rule);
        }
    }
    for measure in items {
        let (item, times) = (measure.item.clone(), measure.left.iter().map(|left| left.times).sum());
        if times >= SKIPPED {
            raise(through, FlagRule::Skipped { item: item.clone(), times });
        }
        if measure.days_beyond >= OVERDONE_DAYS {
            raise(through, FlagRule::Overdone { item, days: measure.days_beyond });
        }
    }
    if let Some(change) = feeling.change.filter(|_| feeling.rises()) {
        raise(through, FlagRule::RisingPain { change });
    }
    if let Some(from) = measured.broken_from {
        raise(through, FlagRule::ChainBroken { from });
    }
    flags.sort_by_key(|flag| (flag.group, flag.day));
    flags
}

fn of_event(event: &Event) -> Vec<(NaiveDate, FlagRule)> {
    let on = event.stamp.day();
    match &event.body {
        Body::SignsAnswered { gravest: Some(tier), .. } if *tier != Tier::Note => {
            vec![(on, FlagRule::WarningSign { tier: *tier })]
        }
        Body::PainAnswered { pain, .. } if pain.answer == PainAnswer::StopToday => {
            vec![(on, FlagRule::PainOverLimit { level: pain.level })]
        }
        Body::SetBack { what: SetBackKind::Fall, day } => vec![(*day, FlagRule::Fall)],
        Body::SetBack { what: SetBackKind::Readmission, day } => vec![(*day, FlagRule::Readmission)],
        Body::DoneByHand { item, day, against_gate: true, .. } => {
            vec![(*day, FlagRule::AgainstGate { item: item.clone() })]
        }
        Body::HomeTestDone { test, day, against_gate: true, .. } => {
            vec![(*day, FlagRule::TestAgainstGate { test: test.clone() })]
        }
        Body::PlanReceived { lifts_ignored, .. } => {
            let ignored =
                |precaution: &PrecautionId| (on, FlagRule::LiftIgnored { precaution: precaution.clone() });
            lifts_ignored.iter().map(ignored).collect()
        }
        Body::DateConfirmed { jump_s, .. } => vec![(on, FlagRule::Clock { jump_s: *jump_s })],
        _ => Vec::new(),
    }
}
