//! Which tests a day asks for.

use chrono::NaiveDate;

use crate::calendar::{Away, away, week_of, week_span};
use crate::gate::{Gate, GateDay, Gates};
use crate::home_test::acts;
use crate::ids::{ItemId, TestId};
use crate::plan::doc::{HomeTest, TestKind};
use crate::record::State;

/// A test that a day asks for.
#[derive(Debug, Clone, PartialEq)]
pub struct DueTest {
    /// The test.
    pub test: TestId,
    /// Which it is.
    pub kind: TestKind,
    /// The last day on which this round of it is asked for.
    pub through: NaiveDate,
    /// The same act hurt in an exercise today, and was left for today.
    pub rests_today: bool,
    /// Whether it may be done.
    pub gate: Gate,
}

impl DueTest {
    /// Whether it can be begun.
    pub fn can_begin(&self) -> bool {
        self.gate.is_open() && !self.rests_today
    }
}

/// The tests that a day asks for: each once in every so many weeks, from its first week on, until it is
/// done. None while the plan is over or its day stands still, while the clinic is to be rung first, and
/// none in a break.
pub fn due(gates: &Gates<'_>, session_day: NaiveDate, at: &GateDay, state: &State) -> Vec<DueTest> {
    let doc = gates.plan.doc();
    let in_break = state.breaks.iter().any(|(from, through)| (*from..=*through).contains(&session_day));
    let over = session_day > doc.head.last_day;
    let ring_first = away(gates.plan, session_day, &state.history) == Away::RingFirst;
    if over || at.stands_still().is_some() || state.must_ring.is_some() || ring_first || in_break {
        return Vec::new();
    }
    let due = |test: &HomeTest| {
        let (from, through) = round_of(gates, test, session_day)?;
        let done =
            |done: &crate::record::TestDone| done.test == test.id && (from..=through).contains(&done.day);
        let rests = |item: &ItemId| {
            state.history.rests.get(item) == Some(&session_day) && is_same_act(gates, test.test, item)
        };
        (!state.tests.iter().any(done)).then(|| DueTest {
            test: test.id.clone(),
            kind: test.test,
            through,
            rests_today: doc.items.iter().any(|item| rests(&item.id)),
            gate: gates.test(test, at),
        })
    };
    doc.home_tests.iter().filter_map(due).collect()
}

/// The days, both included, in which a test is asked for once.
fn round_of(gates: &Gates<'_>, test: &HomeTest, day: NaiveDate) -> Option<(NaiveDate, NaiveDate)> {
    let zero = gates.plan.episode(&test.episode)?.day_zero.date()?;
    let since = week_of(zero, day)?.checked_sub(test.from_week)?;
    let first = test.from_week + since - since % test.every_weeks;
    Some(week_span(zero, first, first + test.every_weeks - 1))
}

/// Whether an item is of the same family as something that a test asks for.
pub(crate) fn is_same_act(gates: &Gates<'_>, test: TestKind, item: &ItemId) -> bool {
    let family = |movement: &crate::ids::MovementId| {
        gates.library.find(gates.plan, movement).map(|found| found.movement().family.clone())
    };
    let Some(of_item) = gates.plan.item(item).and_then(|item| family(&item.movement)) else { return false };
    let ids = acts(test).iter().filter_map(|(id, _)| crate::ids::MovementId::new(*id).ok());
    ids.filter_map(|id| family(&id)).any(|of_act| of_act == of_item)
}
