//! Home tests: which the day asks for, what is asked and said before one, and its result written down.
//! Beginning one asks every gate, and for a helper; recording never refuses.

use chrono::NaiveDate;
use sendaluna_core::calendar::Away;
use sendaluna_core::gate::{Gate, GateDay};
use sendaluna_core::home_test::{DueTest, TestResult, due};
use sendaluna_core::ids::TestId;
use sendaluna_core::plan::doc::{HomeTest, TestKind};
use sendaluna_core::record::{Body, By, How};
use sendaluna_words::Words;

use crate::begin::check_may_begin;
use crate::clock::Now;
use crate::day::contacts;
use crate::error::BedsideError;
use crate::home::{Bedside, Known};
use crate::view::home_test::TestBeforeView;
use crate::view::session::{BeforeView, DateView};
use crate::view::window::WrittenView;
use sendaluna_say::Speaker;

mod lead;
mod say;

pub use lead::TestLead;
pub(crate) use say::{name, result};

/// A test that may be timed now.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Begun {
    /// Which test of the plan.
    pub test: TestId,
    /// Of which kind.
    pub kind: TestKind,
    /// Who answers.
    pub by: By,
}

/// What a test came to, as it is written down.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Outcome {
    /// The result.
    pub result: TestResult,
    /// On which day.
    pub day: NaiveDate,
    /// As it was timed, or from memory.
    pub how: How,
    /// Somebody was beside the patient.
    pub helper: bool,
}

impl Bedside {
    /// What is asked and said before a test. Refused, before anybody answers for nothing, if it could not
    /// begin anyway.
    pub fn before_test(&self, id: &TestId, words: &Words, now: &Now) -> Result<TestBeforeView, BedsideError> {
        let known = self.known()?;
        let test = self.check_due(&known, id, now)?;
        let before = self.before(None, now)?;
        let speaker = Speaker::new(words, Some(&known.plan));
        Ok(TestBeforeView {
            test: id.clone(),
            name: name(words, test.kind),
            before: BeforeView {
                confirm_date: before.confirm_date.map(|day| DateView { day, said: words.day_and_year(day) }),
                questions: before.questions,
                morning: before.morning,
                signs: contacts(&known.plan, &speaker).signs,
                can_go_on: false,
                coming: Vec::new(),
                minutes: 0,
                have_ready: Vec::new(),
                beside_you: true,
            },
            how: say::how(words, test.kind),
            cautions: say::cautions(words),
        })
    }

    /// Whether a test could begin now, questions and helper apart.
    pub fn check_test(&self, id: &TestId, now: &Now) -> Result<(), BedsideError> {
        self.check_due(&self.known()?, id, now).map(|_| ())
    }

    /// Begins a test: only with a helper beside the patient.
    pub fn begin_test(&self, id: &TestId, helper: bool, by: By, now: &Now) -> Result<Begun, BedsideError> {
        let known = self.known()?;
        check_may_begin(&known, now)?;
        let due = self.check_due(&known, id, now)?;
        if !helper {
            return Err(BedsideError::HelperNeeded);
        }
        Ok(Begun { test: due.test, kind: due.kind, by })
    }

    /// Writes a result down. One that was measured while no gate allowed it is flagged, and says to ring.
    pub fn did_test(
        &mut self,
        id: &TestId,
        outcome: &Outcome,
        by: By,
        words: &Words,
        now: &Now,
    ) -> Result<WrittenView, BedsideError> {
        let known = self.known()?;
        let test = of_plan(&known, id)?;
        let Outcome { result, day, how, helper } = outcome.clone();
        if result.kind() != test.test || !result.can_be() {
            return Err(BedsideError::NoTestResult);
        }
        let set_back = known.state.set_back_since(known.standing.set_backs_released_until);
        let on = day.min(known.today(now.at).gate_day);
        let at = GateDay::held(on, known.plan.head().review_by, set_back);
        let against_gate = !known.gates(self.library()).test(test, &at).is_open();
        let said = say::written(words, &result, against_gate);
        self.record(
            now,
            by,
            Body::HomeTestDone { test: id.clone(), day, result, how, helper, against_gate },
        )?;
        Ok(WrittenView { said, against: against_gate })
    }

    /// The tests that the day asks for.
    pub(crate) fn tests_due(&self, known: &Known, now: &Now) -> Vec<DueTest> {
        let gates = known.gates(self.library());
        due(&gates, known.today(now.at).session_day, &known.gate_day(now.at), &known.state)
    }

    fn check_due(&self, known: &Known, id: &TestId, now: &Now) -> Result<DueTest, BedsideError> {
        let test = of_plan(known, id)?;
        if let Some((_, tier)) = known.state.must_ring {
            return Err(BedsideError::MustRing(tier));
        }
        if let Gate::NotYet(not_yet) = known.gates(self.library()).test(test, &known.gate_day(now.at)) {
            return Err(BedsideError::NotYet { what: id.to_string(), not_yet: Box::new(not_yet) });
        }
        match self.tests_due(known, now).into_iter().find(|due| due.test == *id) {
            Some(due) if due.rests_today => Err(BedsideError::RestsToday),
            Some(due) => Ok(due),
            None if self.due_day(known, now).away == Away::RingFirst => Err(BedsideError::AwayTooLong),
            None => Err(BedsideError::NotInPlanNow(None)),
        }
    }
}

fn of_plan<'a>(known: &'a Known, id: &TestId) -> Result<&'a HomeTest, BedsideError> {
    let tests = &known.plan.doc().home_tests;
    tests.iter().find(|test| test.id == *id).ok_or_else(|| BedsideError::NoSuchItem(id.to_string()))
}
