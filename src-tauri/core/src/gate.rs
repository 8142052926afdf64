//! May this be done on this day; if not, when, and who says so?
//!
//! Every route that could *start* an exercise asks here. Recording what was done never does: what
//! was done against a gate is written down and advises to ring.

use chrono::NaiveDate;

use crate::facts::{ItemSide, Manner, Performed};
use crate::home_test::{acts, is_same_act};
use crate::ids::{ItemId, MovementId};
use crate::library::{Found, Library};
use crate::plan::Plan;
use crate::plan::doc::{Dose, HomeTest, Item};
use crate::precaution::{InForce, Precaution, Standing, Who};

mod breach;
mod walk;

pub use breach::{Measured, Quantity, breach, near_limit};
pub use walk::{Contradiction, NearLimit, Walk, walk};

/// The day on which gates are judged.
///
/// `day` is the earlier of the dates in the device's and the clinic's zone at the same instant (see
/// [`crate::calendar::Today`]), so that travel never opens a gate early.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct GateDay {
    day: NaiveDate,
    stands_still: Option<(Standstill, NaiveDate)>,
}

/// Why the plan's day stands still.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Standstill {
    /// The clinic has not looked again by the review-by day.
    PastReview,
    /// A set-back was recorded that the clinic has not released.
    SetBack,
}

impl GateDay {
    /// A day on which nothing stands still.
    pub fn new(day: NaiveDate) -> Self {
        Self { day, stands_still: None }
    }

    /// The day, standing still after review-by and from the day of a set-back on. What was open on
    /// that day stays open; nothing opens after it.
    pub fn held(day: NaiveDate, review_by: NaiveDate, set_back: Option<NaiveDate>) -> Self {
        let set_back = set_back.map(|on| (Standstill::SetBack, on));
        let review = Some((Standstill::PastReview, review_by)).filter(|_| day > review_by);
        let stands_still = [set_back, review].into_iter().flatten().min_by_key(|(_, on)| *on);
        Self { day, stands_still }
    }

    /// The day by which gates are judged.
    pub fn day(&self) -> NaiveDate {
        self.stands_still.map_or(self.day, |(_, on)| self.day.min(on))
    }

    /// Why it stands still, if it does.
    pub fn stands_still(&self) -> Option<Standstill> {
        self.stands_still.map(|(why, _)| why)
    }
}

/// Whether something may be done.
#[derive(Debug, Clone, PartialEq)]
pub enum Gate {
    /// It may.
    Open,
    /// It may not yet.
    NotYet(NotYet),
}

/// What is not allowed yet.
#[derive(Debug, Clone, PartialEq)]
pub struct NotYet {
    /// The latest opening day of the reasons; `None` if one is open-ended, lies past review-by, or
    /// the plan's day stands still.
    pub opens: Option<NaiveDate>,
    /// Every reason, with who says so.
    pub reasons: Vec<Reason>,
}

/// One reason.
#[derive(Debug, Clone, PartialEq)]
pub struct Reason {
    /// What it is.
    pub cause: Cause,
    /// The first day on which this reason no longer holds.
    pub opens: Option<NaiveDate>,
}

/// What keeps a gate shut.
#[derive(Debug, Clone, PartialEq)]
pub enum Cause {
    /// A precaution.
    Precaution {
        /// The precaution.
        precaution: Box<Precaution>,
        /// Who set it.
        set_by: Who,
        /// By how much the exercise breaks it.
        measured: Measured,
    },
    /// The movement's facts are not those that the item was checked with.
    FactsDiffer,
    /// This program does not know the movement.
    MovementUnknown(MovementId),
    /// The clinic's own movement, not yet seen by someone who may set precautions.
    MovementNotSeen,
    /// The plan's day stands still, so that what would have opened has not.
    StandsStill(Standstill),
    /// The patient was told to stop it.
    Tightened {
        /// Since when.
        since: NaiveDate,
    },
}

impl Cause {
    /// Every code.
    pub const CODES: &'static [&'static str] = &[
        "precaution",
        "facts-differ",
        "movement-unknown",
        "movement-not-seen",
        "set-back",
        "past-review",
        "tightened",
    ];

    /// The stable code; people read the message `reason-<code>`.
    pub fn code(&self) -> &'static str {
        match self {
            Self::Precaution { .. } => "precaution",
            Self::FactsDiffer => "facts-differ",
            Self::MovementUnknown(_) => "movement-unknown",
            Self::MovementNotSeen => "movement-not-seen",
            Self::StandsStill(Standstill::SetBack) => "set-back",
            Self::StandsStill(Standstill::PastReview) => "past-review",
            Self::Tightened { .. } => "tightened",
        }
    }

    /// Whether it is the same precaution, by however much each is broken, or else the same altogether.
    fn is_same_rule(&self, other: &Self) -> bool {
        match (self, other) {
            (Self::Precaution { precaution: a, .. }, Self::Precaution { precaution: b, .. }) => a.id == b.id,
            (a, b) => a == b,
        }
    }
}

impl Gate {
    /// From the reasons that hold.
    fn from_reasons(mut reasons: Vec<Reason>, at: &GateDay, review_by: NaiveDate) -> Self {
        if reasons.is_empty() {
            return Self::Open;
        }
        if let Some(why) = at.stands_still() {
            // A day that has passed without opening anything would only mislead.
            for reason in &mut reasons {
                reason.opens = None;
            }
            reasons.insert(0, Reason { cause: Cause::StandsStill(why), opens: None });
        }
        let latest = reasons.iter().map(|r| r.opens).collect::<Option<Vec<_>>>();
        let opens = latest
            .and_then(|days| days.into_iter().max())
            .filter(|day| *day <= review_by && at.stands_still().is_none());
        Self::NotYet(NotYet { opens, reasons })
    }

    /// Whether it is open.
    pub fn is_open(&self) -> bool {
        matches!(self, Self::Open)
    }
}

/// An item that the patient was told to stop. The patient may always tighten.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Tightened {
    /// Which item.
    pub item: ItemId,
    /// Since when.
    pub since: NaiveDate,
}

/// All that gates are computed from.
#[derive(Debug, Clone, Copy)]
pub struct Gates<'a> {
    /// The plan in force.
    pub plan: &'a Plan,
    /// The movements that ship.
    pub library: &'a Library,
    /// The precautions in force.
    pub standing: &'a Standing,
    /// What the patient has tightened.
    pub tightened: &'a [Tightened],
}

impl Gates<'_> {
    /// An item at a dose, on a day.
    pub fn item(&self, item: &Item, dose: &Dose, at: &GateDay) -> Gate {
        self.movement(item, &item.movement, item.facts, dose, at)
    }

    /// An item's easier variant at a dose, on a day; `None` if it has none.
    pub fn easier(&self, item: &Item, dose: &Dose, at: &GateDay) -> Option<Gate> {
        let easier = item.easier.as_ref()?;
        Some(self.movement(item, &easier.movement, easier.facts, dose, at))
    }

    /// A home test on a day: open only if everything that it asks of the body is, at the worst that it can
    /// be done, without a brace. What the patient was told to stop keeps it shut too, if it is the same act.
    pub fn test(&self, test: &HomeTest, at: &GateDay) -> Gate {
        let stopped = self.tightened.iter().filter(|t| is_same_act(self, test.test, &t.item));
        let mut reasons: Vec<Reason> =
            stopped.map(|t| Reason { cause: Cause::Tightened { since: t.since }, opens: None }).collect();
        for (movement, side) in acts(test.test) {
            for reason in self.act_reasons(test, movement, *side, at) {
                let is_known = reasons.iter().any(|known| known.cause.is_same_rule(&reason.cause));
                reasons.extend(Some(reason).filter(|_| !is_known));
            }
        }
        Gate::from_reasons(reasons, at, self.plan.head().review_by)
    }

    fn act_reasons(&self, test: &HomeTest, movement: &str, side: ItemSide, at: &GateDay) -> Vec<Reason> {
        let id = MovementId::new(movement).ok();
        let found = id.as_ref().and_then(|id| self.library.get(id));
        let (Some(found), Some(episode)) = (found, self.plan.episode(&test.episode)) else {
            let cause = id.map_or(Cause::FactsDiffer, Cause::MovementUnknown);
            return vec![Reason { cause, opens: None }];
        };
        let manner = Manner {
            side,
            operated: episode.side,
            load: None,
            with_brace: false,
            size: self.plan.doc().size(),
        };
        precaution_reasons(&Performed::new(found, &manner), self.standing, at.day())
    }

    fn movement(
        &self,
        item: &Item,
        movement: &MovementId,
        checked_with: Option<crate::digest::Digest>,
        dose: &Dose,
        at: &GateDay,
    ) -> Gate {
        let mut reasons: Vec<Reason> = self
            .tightened
            .iter()
            .filter(|t| t.item == item.id)
            .map(|t| Reason { cause: Cause::Tightened { since: t.since }, opens: None })
            .collect();
        let found = self.library.find(self.plan, movement);
        let manner = self.plan.doc().manner(item, dose);
        if let (Some(found), Some(manner)) = (found, manner) {
            reasons.extend(self.facts_reasons(found, checked_with));
            let performed = Performed::new(found.movement(), &manner);
            reasons.extend(precaution_reasons(&performed, self.standing, at.day()));
        } else {
            let cause = Cause::MovementUnknown(movement.clone());
            reasons.push(Reason { cause, opens: None });
        }
        Gate::from_reasons(reasons, at, self.plan.head().review_by)
    }

    fn facts_reasons(&self, found: Found<'_>, checked_with: Option<crate::digest::Digest>) -> Option<Reason> {
        let digest = found.movement().digest();
        if checked_with != Some(digest) {
            return Some(Reason { cause: Cause::FactsDiffer, opens: None });
        }
        let unseen = matches!(found, Found::Own(_))
            && !self.standing.in_force.is_empty()
            && !self.standing.movements_seen.contains(&digest);
        unseen.then_some(Reason { cause: Cause::MovementNotSeen, opens: None })
    }
}

/// The precautions in force on a day that an exercise, as performed, breaks.
pub fn precaution_reasons(performed: &Performed, standing: &Standing, day: NaiveDate) -> Vec<Reason> {
    let holds = |p: &&InForce| p.opens.is_none_or(|opens| day < opens);
    let reason = |p: &InForce| {
        breach(&p.precaution, performed).map(|measured| Reason {
            cause: Cause::Precaution {
                precaution: Box::new(p.precaution.clone()),
                set_by: p.set_by.clone(),
                measured,
            },
            opens: p.opens,
        })
    };
    standing.in_force.iter().filter(holds).filter_map(reason).collect()
}

/// A rule for the day that holds: every precaution is one, because life is not only exercises.
#[derive(Debug, Clone, PartialEq)]
pub struct DayRule {
    /// The precaution it is.
    pub precaution: Precaution,
    /// Who set it.
    pub set_by: Who,
    /// The first day on which it no longer holds, as [`NotYet::opens`].
    pub opens: Option<NaiveDate>,
}

/// The rules of the day that hold on a day.
pub fn day_rules(standing: &Standing, at: &GateDay, review_by: NaiveDate) -> Vec<DayRule> {
    standing
        .in_force
        .iter()
        .filter(|p| p.opens.is_none_or(|opens| at.day() < opens))
        .map(|p| DayRule {
            precaution: p.precaution.clone(),
            set_by: p.set_by.clone(),
            opens: p.opens.filter(|day| *day <= review_by && at.stands_still().is_none()),
        })
        .collect()
}

#[cfg(test)]
mod library_tests;
#[cfg(test)]
mod tests;
