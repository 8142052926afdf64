//! Home tests: what each came to, and what the table says of it.

use chrono::NaiveDate;
use serde::Serialize;

use crate::home_test::{TestResult, Verdict, verdict};
use crate::ids::TestId;
use crate::measure::{Measured, Period, within};
use crate::record::{How, State};

/// A home test that was done.
#[derive(Debug, Clone, PartialEq, Serialize)]
pub struct TestMeasure {
    /// Which test of the plan.
    pub test: TestId,
    /// On which day.
    pub day: NaiveDate,
    /// What it came to.
    pub result: TestResult,
    /// What the table says of it; `None` only without any plan.
    pub verdict: Option<Verdict>,
    /// How the record came about.
    pub how: How,
    /// Somebody was beside the patient.
    pub helper: bool,
    /// It was not allowed on that day.
    pub against_gate: bool,
}

pub(super) fn of_span(measured: &Measured<'_>, from: NaiveDate, through: NaiveDate) -> Vec<TestMeasure> {
    let mut done = State::of(measured.events).tests;
    done.retain(|test| within(test.day, from, through));
    done.sort_by_key(|test| test.day);
    let measure = |test: crate::record::TestDone| TestMeasure {
        verdict: born(measured.periods, test.day).map(|born| verdict(&test.result, born, test.day)),
        test: test.test,
        day: test.day,
        result: test.result,
        how: test.how,
        helper: test.helper,
        against_gate: test.against_gate,
    };
    done.into_iter().map(measure).collect()
}

/// The year of birth, as the plan in force on a day says it; before any plan, as the first does.
fn born(periods: &[Period], day: NaiveDate) -> Option<u16> {
    let in_force = periods.iter().rfind(|period| period.from <= day).or(periods.first())?;
    Some(in_force.plan.head().born)
}
