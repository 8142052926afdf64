//! Home tests in a report: each result, and what the table says of it.

use sendaluna_core::home_test::{Held, Stance, TestResult};
use sendaluna_core::measure::TestMeasure;
use sendaluna_core::record::How;

use super::ReportSpeaker;

impl ReportSpeaker<'_> {
    /// A line a test: its day, what it came to, what the table says, and how it was done.
    pub fn home_test(&self, test: &TestMeasure) -> String {
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
        let stance = |(stance, tenths): (Stance, u8)| {
            let id = match stance {
                Stance::SideBySide => "report-stance-side-by-side",
                Stance::SemiTandem => "report-stance-semi-tandem",
                Stance::Tandem => "report-stance-tandem",
                Stance::OneLeg => "report-stance-one-leg",
            };
            self.words.say(id, &[("seconds", self.seconds(tenths.into()).into())])
        };
        held.iter().map(stance).collect::<Vec<_>>().join(&self.words.say("list-comma", &[]))
    }

    /// Seconds to a tenth; whole ones without.
    fn seconds(&self, tenths: u16) -> String {
        self.words.decimal(f64::from(tenths) / 10.0, usize::from(!tenths.is_multiple_of(10)))
    }
}
