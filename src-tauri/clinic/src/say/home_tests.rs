//! Home tests in a report: each result, and what the table says of it.

use sendaluna_core::home_test::{Held, Row, TestResult, Verdict};
use sendaluna_core::measure::{Measures, TestMeasure};
use sendaluna_core::record::How;

use super::ClinicSpeaker;

impl ClinicSpeaker<'_> {
    /// A title and a line a test; nothing if there was none.
    pub(super) fn home_tests(&self, measures: &Measures) -> Vec<String> {
        if measures.tests.is_empty() {
            return Vec::new();
        }
        let title = self.words.say("report-tests", &[]);
        let line = |test: &TestMeasure| format!("  {}", self.home_test(test));
        std::iter::once(title).chain(measures.tests.iter().map(line)).collect()
    }

    fn home_test(&self, test: &TestMeasure) -> String {
        let helper = if test.helper { "report-test-helper" } else { "report-test-alone" };
        let how = match test.how {
            How::Counted => "report-test-timed",
            How::CountedNotConfirmed | How::Remembered => "report-test-by-hand",
        };
        let mut said = vec![self.result(&test.result)];
        said.extend(test.verdict.as_ref().map(|verdict| self.verdict(verdict)));
        said.extend([helper, how].map(|id| self.words.say(id, &[])));
        said.extend(test.against_gate.then(|| self.words.say("report-test-against-gate", &[])));
        let day = self.words.day_and_year(test.day);
        let args =
            [("day", day.into()), ("test", test.test.as_str().into()), ("said", said.join(" ").into())];
        self.words.say("report-test", &args)
    }

    fn result(&self, result: &TestResult) -> String {
        match result {
            TestResult::ChairStand { stands, arms_used } => {
                let id = if *arms_used { "report-chair-stand-arms" } else { "report-chair-stand" };
                self.words.say(id, &[("n", (*stands).into())])
            }
            TestResult::TimedUpAndGo { tenths_s } => {
                self.words.say("report-timed-up-and-go", &[("seconds", self.seconds(*tenths_s).into())])
            }
            TestResult::FourStageBalance { held_tenths_s } => {
                let held = self.stances(held_tenths_s);
                self.words.say("report-four-stage-balance", &[("held", held.into())])
            }
        }
    }

    fn stances(&self, held: &Held) -> String {
        let stance = |(stance, tenths): (_, u8)| {
            let name = serde_json::to_value(stance).unwrap_or_default();
            let id = format!("report-stance-{}", name.as_str().unwrap_or_default());
            self.words.say(&id, &[("seconds", self.seconds(tenths.into()).into())])
        };
        held.iter().map(stance).collect::<Vec<_>>().join(", ")
    }

    fn verdict(&self, verdict: &Verdict) -> String {
        match verdict {
            Verdict::ChairStand { ages, men, women, .. } => {
                let args = [
                    ("younger", ages[0].into()),
                    ("older", ages[1].into()),
                    ("men", self.row(men).into()),
                    ("women", self.row(women).into()),
                ];
                self.words.say("report-chair-stand-table", &args)
            }
            Verdict::TimedUpAndGo { risk } => {
                self.words.say(if *risk { "report-walk-risk" } else { "report-walk-no-risk" }, &[])
            }
            Verdict::FourStageBalance { risk } => {
                self.words.say(if *risk { "report-tandem-risk" } else { "report-tandem-no-risk" }, &[])
            }
        }
    }

    fn row(&self, row: &Row) -> String {
        let below: Vec<String> = row.below.iter().map(ToString::to_string).collect();
        self.words.say(&format!("norm-{}", row.norm.code()), &[("below", below.join(" / ").into())])
    }

    /// Seconds to a tenth; whole ones without.
    fn seconds(&self, tenths: u16) -> String {
        self.words.decimal(f64::from(tenths) / 10.0, usize::from(!tenths.is_multiple_of(10)))
    }
}
