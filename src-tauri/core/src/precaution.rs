//! Precautions: what is not allowed, on which side, until when, and who says so. A statement is the
//! signed document that sets or lifts them; what is in force is everything ever accepted, minus
//! what was rightly lifted.

use std::collections::BTreeMap;

use chrono::{DateTime, Days, NaiveDate, Utc};
use serde::{Deserialize, Serialize};

use crate::digest::Digest;
use crate::facts::{Joint, Motion, Side};
use crate::ids::{EpisodeId, FamilyId, PersonId, PrecautionId};
use crate::plan::doc::Episode;
use crate::text::Text;

mod check;
pub use check::problems;

/// A precaution statement, as carried: format version 1.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct StatementDoc {
    /// Version of the format: 1.
    pub format: u32,
    /// For whom.
    pub person: PersonId,
    /// When it was signed.
    pub issued_at: DateTime<Utc>,
    /// The episodes that its precautions name, as the signer knew them.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub episodes: Vec<Episode>,
    /// "None" is said too: the signer has looked and sets no precaution.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub none: bool,
    /// Precautions set.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub precautions: Vec<Precaution>,
    /// Precautions lifted.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub lifts: Vec<Lift>,
    /// The clinic's own movements that the signer has seen, by the digest of their facts.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub movements_seen: Vec<Digest>,
    /// Set-backs recorded up to this moment no longer hold openings back.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub releases_set_backs_until: Option<DateTime<Utc>>,
}

impl StatementDoc {
    /// Whether it says something that only a holder of the right to set may say.
    pub fn sets(&self) -> bool {
        self.none || !self.precautions.is_empty() || !self.movements_seen.is_empty()
    }
}

/// One precaution. Its content never changes under its id.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Precaution {
    /// Stable id; changed content needs a new one.
    pub id: PrecautionId,
    /// The episode it follows from.
    pub episode: EpisodeId,
    /// The side, explicitly.
    pub side: PrecautionSide,
    /// What is not allowed.
    pub rule: Rule,
    /// Until when.
    pub ends: End,
    /// Why, and what it means, for the patient.
    pub why: Text,
}

/// The side a precaution is about.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case")]
pub enum PrecautionSide {
    /// Left.
    Left,
    /// Right.
    Right,
    /// Either side, and the trunk.
    Both,
}

impl PrecautionSide {
    /// Whether it is about this side.
    pub fn covers(self, side: Side) -> bool {
        matches!((self, side), (Self::Both, _) | (Self::Left, Side::Left) | (Self::Right, Side::Right))
    }
}

/// What is not allowed.
#[derive(Debug, Clone, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(tag = "kind", rename_all = "kebab-case", deny_unknown_fields)]
pub enum Rule {
    /// A movement and its whole family.
    Movement {
        /// The family.
        family: FamilyId,
    },
    /// A joint's range.
    Range {
        /// The joint.
        joint: Joint,
        /// In which direction.
        motion: Motion,
        /// The furthest allowed, in degrees; negative stops short of neutral.
        most_deg: f64,
        /// Only under these conditions, all of them; none means always.
        #[serde(default, skip_serializing_if = "Vec::is_empty")]
        only: Vec<Only>,
    },
    /// Ranges together: each is allowed, all at once are not.
    Together {
        /// The ranges.
        ranges: Vec<RangeOver>,
    },
    /// An active muscle action. Isometric counts as active; passive passes.
    Action {
        /// The joint.
        joint: Joint,
        /// In which direction the muscles pull.
        motion: Motion,
        /// Assisted is allowed.
        #[serde(default, skip_serializing_if = "std::ops::Not::not")]
        assisted_allowed: bool,
    },
    /// A static joint moment; active and isometric drive only.
    Moment {
        /// The joint.
        joint: Joint,
        /// In which direction the muscles pull.
        motion: Motion,
        /// The most allowed, in N·m per kg of body mass.
        most_nm_per_kg: f64,
    },
    /// A position.
    Position {
        /// Not in this position.
        not: ForbiddenPosition,
    },
    /// Weight bearing: a term *and* a most, in kg or per cent of body weight.
    WeightBearing {
        /// The term.
        term: WeightBearing,
        /// Most, in kg.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        most_kg: Option<f64>,
        /// Most, in per cent of body weight.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        most_percent: Option<f64>,
    },
    /// Outside resistance: no bands or weights.
    Resistance {},
    /// A brace or sling is on for everything but washing.
    Brace {
        /// Which, in the clinic's words.
        brace: Text,
    },
    /// The spine.
    Spine {
        /// No bending.
        #[serde(default, skip_serializing_if = "std::ops::Not::not")]
        no_bending: bool,
        /// No twisting.
        #[serde(default, skip_serializing_if = "std::ops::Not::not")]
        no_twisting: bool,
        /// The most that may be lifted, in kg.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        lift_most_kg: Option<f64>,
    },
    /// A rule for the day, not for an exercise.
    Daily {
        /// Which.
        rule: DailyRule,
    },
}

/// A condition of a range.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case")]
pub enum Only {
    /// When not passive.
    Active,
    /// When the limb carries an outside load or body weight.
    Loaded,
    /// When done without the brace.
    WithoutBrace,
}

/// A range over a limit.
#[derive(Debug, Clone, Copy, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct RangeOver {
    /// The joint.
    pub joint: Joint,
    /// In which direction.
    pub motion: Motion,
    /// Beyond this, in degrees.
    pub over_deg: f64,
}

/// A position that can be forbidden.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case")]
pub enum ForbiddenPosition {
    /// Down on the floor.
    OnTheFloor,
    /// Face down.
    Prone,
    /// On the back.
    Supine,
    /// On the precaution's side.
    LyingOnSide,
    /// On a knee of the precaution's side; hands and knees too.
    Kneeling,
    /// Standing.
    Standing,
    /// Sitting lower than the knee.
    LowSeat,
}

/// Terms of weight bearing, gravest first.
#[derive(Debug, Clone, Copy, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case")]
pub enum WeightBearing {
    /// No weight at all.
    NonWeightBearing,
    /// The foot touches, no more than its own weight.
    TouchDown,
    /// A part of body weight.
    Partial,
    /// As comfort allows.
    AsTolerated,
    /// Full.
    Full,
}

/// Daily rules.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(rename_all = "kebab-case")]
pub enum DailyRule {
    /// No chair lower than the knee; exercises on a low seat are shut too.
    ChairNotBelowKnee,
    /// Sleep on your back.
    SleepOnYourBack,
    /// No driving.
    NoDriving,
    /// Legs not crossed.
    LegsNotCrossed,
    /// Walk with crutches or a frame.
    WalkWithAid,
    /// Keep the wound dry.
    KeepWoundDry,
    /// Another, said in the clinic's words.
    Other,
}

/// When a precaution ends.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(tag = "kind", rename_all = "kebab-case", deny_unknown_fields)]
pub enum End {
    /// Through a day, included.
    Through {
        /// The last gated day.
        day: NaiveDate,
        /// The week it came from, for words only.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        week: Option<u16>,
    },
    /// Until lifted by someone with the right, and not before a day even then.
    UntilLifted {
        /// The first day on which it can open.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        not_before: Option<NaiveDate>,
        /// The week after whose end it may be lifted, for words only.
        #[serde(default, skip_serializing_if = "Option::is_none")]
        week: Option<u16>,
    },
    /// Through a week of an episode whose day 0 is not yet known: shut until a new statement.
    DayZeroUnknown {
        /// The week.
        week: u16,
    },
}

/// A lift of a precaution.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "schema", derive(schemars::JsonSchema))]
#[serde(deny_unknown_fields)]
pub struct Lift {
    /// Which precaution.
    pub precaution: PrecautionId,
    /// The first day on which it no longer holds; if not given, at once.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub from: Option<NaiveDate>,
}

/// Somebody who signs, as patients read it: "Dr A. Example (surgeon)".
#[derive(Debug, Clone, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(deny_unknown_fields)]
pub struct Who {
    /// The name.
    pub name: String,
    /// Surgeon, therapist.
    pub role: Text,
}

/// A statement that was accepted, with what its signer had the right to.
#[derive(Debug, Clone, PartialEq)]
pub struct Accepted {
    /// Digest of the signed part.
    pub digest: Digest,
    /// Thumbprint of the key that signed.
    pub key: Digest,
    /// Who signed.
    pub signer: Who,
    /// Could set precautions.
    pub may_set: bool,
    /// Could lift precautions.
    pub may_lift: bool,
    /// What it says.
    pub doc: StatementDoc,
}

impl Accepted {
    /// Whether someone who may set precautions has looked, and set some or said "none".
    pub fn has_looked(&self) -> bool {
        self.may_set && (self.doc.none || !self.doc.precautions.is_empty())
    }
}

/// A precaution in force, and who set it.
#[derive(Debug, Clone, PartialEq)]
pub struct InForce {
    /// The precaution.
    pub precaution: Precaution,
    /// Who set it.
    pub set_by: Who,
    /// The first day on which it no longer holds; `None` while it is open-ended.
    pub opens: Option<NaiveDate>,
}

/// A lift by someone without the right.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct IgnoredLift {
    /// Which precaution.
    pub precaution: PrecautionId,
    /// Who tried.
    pub by: Who,
    /// Who had set it, if it is known.
    pub set_by: Option<Who>,
}

/// Everything that accepted statements add up to.
#[derive(Debug, Clone, PartialEq, Default)]
pub struct Standing {
    /// Precautions, with their opening days, by id.
    pub in_force: Vec<InForce>,
    /// Lifts that were ignored.
    pub ignored_lifts: Vec<IgnoredLift>,
    /// Facts of the clinic's own movements that someone who may set precautions has seen.
    pub movements_seen: Vec<Digest>,
    /// Set-backs up to this moment are released.
    pub set_backs_released_until: Option<DateTime<Utc>>,
}

impl Standing {
    /// Adds up statements. Their order does not matter, and absence never lifts anything. Should
    /// one id ever come with two contents, both stand.
    pub fn of(statements: &[Accepted]) -> Self {
        let mut set: BTreeMap<&PrecautionId, Vec<(&Precaution, &Who)>> = BTreeMap::new();
        let mut lifted: BTreeMap<&PrecautionId, Option<NaiveDate>> = BTreeMap::new();
        let mut standing = Self::default();
        let mut ordered: Vec<&Accepted> = statements.iter().collect();
        ordered.sort_by_key(|s| (s.doc.issued_at, s.digest));
        for statement in &ordered {
            if statement.may_set {
                for precaution in &statement.doc.precautions {
                    let same_id = set.entry(&precaution.id).or_default();
                    if !same_id.iter().any(|(known, _)| *known == precaution) {
                        same_id.push((precaution, &statement.signer));
                    }
                }
                standing.movements_seen.extend(&statement.doc.movements_seen);
            }
            if statement.may_lift {
                for lift in &statement.doc.lifts {
                    lifted
                        .entry(&lift.precaution)
                        .and_modify(|from| *from = (*from).min(lift.from))
                        .or_insert(lift.from);
                }
                // Nobody releases what has not happened yet.
                let release =
                    statement.doc.releases_set_backs_until.map(|at| at.min(statement.doc.issued_at));
                standing.set_backs_released_until = standing.set_backs_released_until.max(release);
            }
        }
        for statement in ordered.iter().filter(|s| !s.may_lift) {
            for lift in &statement.doc.lifts {
                standing.ignored_lifts.push(IgnoredLift {
                    precaution: lift.precaution.clone(),
                    by: statement.signer.clone(),
                    set_by: set.get(&lift.precaution).map(|set| set[0].1.clone()),
                });
            }
        }
        standing.in_force = set
            .into_values()
            .flatten()
            .map(|(precaution, set_by)| InForce {
                opens: opening_day(precaution, lifted.get(&precaution.id)),
                precaution: precaution.clone(),
                set_by: set_by.clone(),
            })
            .collect();
        standing
    }
}

/// The first day on which a precaution no longer holds. A lift opens at once or from its day, but
/// never before the precaution's own "not before".
fn opening_day(precaution: &Precaution, lift: Option<&Option<NaiveDate>>) -> Option<NaiveDate> {
    let lifted_from = lift.map(|from| from.unwrap_or(NaiveDate::MIN));
    match precaution.ends {
        End::Through { day, .. } => {
            let own = day.checked_add_days(Days::new(1));
            match (own, lifted_from) {
                (Some(own), Some(lifted)) => Some(own.min(lifted)),
                (own, lifted) => own.or(lifted),
            }
        }
        End::UntilLifted { not_before, .. } => {
            lifted_from.map(|from| from.max(not_before.unwrap_or(NaiveDate::MIN)))
        }
        End::DayZeroUnknown { .. } => lifted_from,
    }
}

#[cfg(test)]
mod tests;
