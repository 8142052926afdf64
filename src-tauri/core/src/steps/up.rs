//! May one up be offered now? By the clinic's rule, and never past a gate.

use chrono::NaiveDate;

use crate::calendar::{Away, DueDay, DueItem, in_round};
use crate::gate::{Gate, GateDay, Gates, NotYet};
use crate::ids::ItemId;
use crate::plan::Amount;
use crate::plan::doc::{Dose, Graded, Item};
use crate::record::{Distress, Ending, Pain, SessionRecord, State, StepWhy};
use crate::session::PainAnswer;
use crate::steps::{Change, Stand};

/// One up that may be offered.
#[derive(Debug, Clone, PartialEq)]
pub struct Up {
    /// The step, to be recorded with the patient's yes.
    pub change: Change,
    /// How much it would be.
    pub dose: Dose,
}

/// Why there is no step up now.
#[derive(Debug, Clone, PartialEq)]
pub enum NoUp {
    /// The item's dose does not move.
    NoSteps,
    /// It stands at the most that was signed.
    Top,
    /// No stage of today asks for it with these doses.
    NotOfToday,
    /// The plan's day stands still.
    StandsStill,
    /// The clinic is to be rung first.
    Rings,
    /// There was a break: today is the first day back.
    AfterBreak,
    /// It hurt today.
    RestsToday,
    /// The bigger dose is not allowed yet.
    Gated(Box<NotYet>),
    /// The clinic's rule for one up is not met yet.
    RuleNotMet,
}

/// What one up depends on.
#[derive(Debug, Clone, Copy)]
pub struct Look<'a> {
    /// What gates are computed from.
    pub gates: &'a Gates<'a>,
    /// What the record adds up to.
    pub state: &'a State,
    /// What the day asks.
    pub due: &'a DueDay,
    /// The civil date on the device.
    pub day: NaiveDate,
    /// The day by which gates are judged.
    pub at: &'a GateDay,
}

impl Look<'_> {
    /// One up of an item, if the clinic's rule allows it now.
    pub fn up(&self, id: &ItemId) -> Result<Up, NoUp> {
        self.up_since(id, 0)
    }

    /// The first item of the day that allows one up and was not answered with "not now" since.
    pub fn offer(&self) -> Option<Up> {
        let of = |due: &DueItem| {
            let kept = self.state.history.kept.get(&due.item).copied().unwrap_or(0);
            self.up_since(&due.item, kept).ok()
        };
        self.due.items.iter().find_map(of)
    }

    /// One up, counting only sessions after so many.
    fn up_since(&self, id: &ItemId, sessions: usize) -> Result<Up, NoUp> {
        let item = self.gates.plan.item(id).ok_or(NoUp::NoSteps)?;
        let stand = Stand::of(self.gates.plan, item, &self.state.history, self.day).ok_or(NoUp::NoSteps)?;
        let due = self.due.items.iter().find(|due| due.item == *id).ok_or(NoUp::NotOfToday)?;
        self.check_day(due)?;
        let change = stand.to(id, stand.step + 1, StepWhy::Chose);
        let dose = in_round(self.gates.plan, &due.stage, id, stand.ladder.dose(change.to).clone());
        if stand.step >= stand.ladder.steps() || dose == due.dose {
            return Err(NoUp::Top);
        }
        let row = Row { look: self, item, due, first: stand.stepped.map_or(0, |s| s.sessions).max(sessions) };
        // What went down today was too much today.
        let fell = stand.stepped.is_some_and(|stepped| stepped.on == self.day && stepped.to < stepped.from);
        if fell || !row.meets_rule() {
            return Err(NoUp::RuleNotMet);
        }
        match self.gates.item(item, &dose, self.at) {
            Gate::Open => Ok(Up { change, dose }),
            Gate::NotYet(not_yet) => Err(NoUp::Gated(Box::new(not_yet))),
        }
    }

    fn check_day(&self, due: &DueItem) -> Result<(), NoUp> {
        match () {
            () if self.state.must_ring.is_some() || self.due.away == Away::RingFirst => Err(NoUp::Rings),
            () if self.at.stands_still().is_some() => Err(NoUp::StandsStill),
            () if self.due.away == Away::Restart => Err(NoUp::AfterBreak),
            () if due.rests_today => Err(NoUp::RestsToday),
            () if due.step.is_none() => Err(NoUp::NotOfToday),
            () => Ok(()),
        }
    }
}

/// The sessions that count for one up: those since the item stands where it does, without a break.
struct Row<'a> {
    look: &'a Look<'a>,
    item: &'a Item,
    due: &'a DueItem,
    /// How many sessions do not count.
    first: usize,
}

impl Row<'_> {
    fn meets_rule(&self) -> bool {
        match (&self.item.graded, self.item.ramp) {
            (Some(graded), _) => self.meets_graded(graded),
            (None, Some(ramp)) => self.meets_ramp(ramp.every_days),
            (None, None) => false,
        }
    }

    /// So many whole, counted sessions in a row, with pain and effort within the clinic's figures.
    fn meets_graded(&self, graded: &Graded) -> bool {
        let is_within = |session: &&SessionRecord| {
            let effort =
                graded.up_effort_at_most.is_none_or(|most| session.effort.is_some_and(|e| e <= most));
            effort && self.pain(session).all(|pain| is_at_most(pain, graded.up_pain_at_most))
        };
        let good = |session: &&SessionRecord| self.is_whole(session) && is_within(session);
        self.sessions().rev().take_while(good).count() >= usize::from(graded.up_after_sessions)
    }

    /// So many days since it was first really done at this step; the latest time whole and without pain
    /// that asked for less.
    fn meets_ramp(&self, every_days: u16) -> bool {
        let is_easy = |session: &SessionRecord| {
            self.is_whole(session) && self.pain(session).all(|pain| pain.answer < PainAnswer::Easier)
        };
        let first = self.sessions().find(|session| self.is_whole(session)).map(|session| session.day);
        let days = first.map(|first| (self.look.day - first).num_days());
        let is_latest_easy = self.sessions().next_back().is_some_and(is_easy);
        is_latest_easy && days.is_some_and(|days| days >= i64::from(every_days))
    }

    /// Sessions that led the item, in order. One in which it was neither begun nor left out says nothing,
    /// unless it was stopped as told.
    fn sessions(&self) -> impl DoubleEndedIterator<Item = &SessionRecord> {
        let history = &self.look.state.history;
        let back = history.back_on(self.look.gates.plan, self.look.day, NaiveDate::MIN);
        let says = |session: &&SessionRecord| {
            let begun = session.sets.iter().any(|(record, _)| record.set.item == self.item.id);
            let left = session.left.iter().any(|(item, _)| *item == self.item.id);
            let told = session.ending == Some(Ending::StoppedAsTold);
            session.items.contains(&self.item.id) && (begun || left || told)
        };
        let ended = self.look.state.sessions.iter().skip(self.first).filter(|s| s.ending.is_some());
        ended.filter(move |session| back.is_none_or(|back| session.day > back)).filter(says)
    }

    /// Every set of the present dose was done, counted and answered for, and nothing was made easier.
    fn is_whole(&self, session: &SessionRecord) -> bool {
        let of_item = || session.sets.iter().map(|(record, _)| record).filter(|r| r.set.item == self.item.id);
        let asked = u32::from(self.due.dose.sets) * self.look.gates.plan.passes(self.item);
        let enough = self.due.dose.amount().map_or(0, Amount::least);
        let left = session.left.iter().any(|(item, _)| *item == self.item.id);
        session.confirmed
            && session.ending != Some(Ending::StoppedAsTold)
            && !left
            && !session.easier.contains(&self.item.id)
            && u32::try_from(of_item().count()) == Ok(asked)
            && of_item().all(|record| record.of == enough && record.done >= enough && !record.easier)
    }

    fn pain<'s>(&self, session: &'s SessionRecord) -> impl Iterator<Item = &'s Pain> {
        let id = self.item.id.clone();
        session.pain.iter().filter(move |pain| pain.item.as_ref() == Some(&id))
    }
}

/// Distress that was seen in place of a figure is no figure at most so much, unless there was none.
fn is_at_most(pain: &Pain, most: u8) -> bool {
    pain.level.map_or(pain.distress == Some(Distress::None), |level| level <= most)
}
