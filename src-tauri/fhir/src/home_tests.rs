//! Home tests: each with its figure and what its table says.

use sendaluna_core::home_test::{Held, Norm, Row, Stance, TestResult, Verdict};
use sendaluna_core::measure::TestMeasure;
use sendaluna_core::record::How;
use serde_json::{Value, json};

use crate::Writer;
use crate::codes::{CHAIR_STAND, CHAIR_STAND_WITH_ARMS, Category, UP_AND_GO, Unit, loinc, not_performed};
use crate::element::{Element, concept, notes};
use crate::section::{Entry, Section};
use crate::xhtml::Narrative;

/// Heads of the table of tests.
const HEADS: [&str; 5] = ["fhir-when", "fhir-test", "fhir-result", "fhir-verdict", "report-page-also"];

impl Writer<'_> {
    /// `None` if there were none: few plans ask for any.
    pub(crate) fn home_tests(&self) -> Option<Section> {
        let tests = &self.report.reported.measures.tests;
        let rows: Vec<[String; 5]> = tests.iter().map(|test| self.test_row(test)).collect();
        let entry =
            |test: &TestMeasure| Entry::new(format!("test-{}-{}", test.test, test.day), self.test(test));
        (!tests.is_empty()).then(|| Section {
            id: "tests",
            title: self.say("fhir-tests"),
            author: None,
            narrative: Narrative::default().table(&HEADS.map(|id| self.say(id)), &rows),
            entries: tests.iter().map(entry).collect(),
        })
    }

    fn test(&self, test: &TestMeasure) -> Value {
        let timed = (test.how == How::Counted).then(|| self.urns.way("device"));
        let observed = self
            .observation(Category::Activity, self.test_code(&test.result))
            .with("effectiveDateTime", test.day.to_string())
            .with("performer", vec![self.urns.way("patient")])
            .with_some("interpretation", self.test_verdict(test).map(|said| vec![concept(&said)]))
            .with_each("note", notes(&self.test_notes(test)))
            .with_some("device", timed);
        match &test.result {
            TestResult::ChairStand { stands, arms_used } => observed
                .with("valueQuantity", self.quantity((*stands).into(), Unit::Stands))
                .with_each("referenceRange", self.ranges(*arms_used, test.verdict.as_ref())),
            TestResult::TimedUpAndGo { tenths_s } => {
                observed.with("valueQuantity", self.quantity(f64::from(*tenths_s) / 10.0, Unit::Seconds))
            }
            TestResult::FourStageBalance { held_tenths_s } => {
                observed.with("component", self.stances(held_tenths_s))
            }
        }
        .into()
    }

    /// Standing up with the arms is a test of its own, not a part of the one without.
    fn test_code(&self, result: &TestResult) -> Value {
        let said = self.test_name(result);
        match result {
            TestResult::ChairStand { arms_used: false, .. } => loinc(&CHAIR_STAND, &said),
            TestResult::ChairStand { arms_used: true, .. } => loinc(&CHAIR_STAND_WITH_ARMS, &said),
            TestResult::TimedUpAndGo { .. } => loinc(&UP_AND_GO, &said),
            TestResult::FourStageBalance { .. } => concept(&said),
        }
    }

    fn test_name(&self, result: &TestResult) -> String {
        self.say(match result {
            TestResult::ChairStand { arms_used: false, .. } => "fhir-chair-stand",
            TestResult::ChairStand { arms_used: true, .. } => "fhir-chair-stand-arms",
            TestResult::TimedUpAndGo { .. } => "fhir-timed-up-and-go",
            TestResult::FourStageBalance { .. } => "fhir-four-stage-balance",
        })
    }

    fn test_verdict(&self, test: &TestMeasure) -> Option<String> {
        match &test.result {
            TestResult::ChairStand { stands, arms_used: true } => {
                Some(self.words.say("report-chair-stand-arms", &[("n", (*stands).into())]))
            }
            _ => test.verdict.as_ref().map(|verdict| self.speaker.verdict(verdict)),
        }
    }

    fn test_notes(&self, test: &TestMeasure) -> Vec<String> {
        let helper = if test.helper { "report-test-helper" } else { "report-test-alone" };
        let how = match test.how {
            How::Counted => "report-test-timed",
            How::CountedNotConfirmed | How::Remembered => "report-test-by-hand",
        };
        let against = test.against_gate.then_some("report-test-against-gate");
        [helper, how].into_iter().chain(against).map(|id| self.say(id)).collect()
    }

    /// The limits of the table, where one holds for the whole year of birth.
    fn ranges(&self, arms_used: bool, verdict: Option<&Verdict>) -> Vec<Value> {
        if arms_used {
            return vec![json!({ "text": self.say("fhir-no-norm-with-arms") })];
        }
        let Some(Verdict::ChairStand { men, women, .. }) = verdict else { return Vec::new() };
        let rows = [("fhir-men", men), ("fhir-women", women)];
        rows.into_iter().filter_map(|(who, row)| self.range(who, row)).collect()
    }

    fn range(&self, who: &str, row: &Row) -> Option<Value> {
        let (Norm::BelowAverage | Norm::NotBelowAverage, [below]) = (row.norm, row.below.as_slice()) else {
            return None;
        };
        Some(json!({
            "low": self.quantity((*below).into(), Unit::Stands),
            "appliesTo": [concept(&self.say(who))],
            "text": self.say("fhir-below-average"),
        }))
    }

    fn stances(&self, held: &Held) -> Vec<Value> {
        let stance = |stance: Stance| {
            let said = self.say(stance_message(stance));
            match held.of(stance) {
                Some(tenths) => {
                    self.component(stance_id(stance), &said, f64::from(tenths) / 10.0, Unit::Seconds)
                }
                None => Element::new()
                    .with("id", stance_id(stance))
                    .with("code", concept(&said))
                    .with("dataAbsentReason", not_performed(&self.say("fhir-not-tried")))
                    .into(),
            }
        };
        Stance::ALL.map(stance).into()
    }

    fn test_row(&self, test: &TestMeasure) -> [String; 5] {
        let result = match &test.result {
            TestResult::ChairStand { stands, .. } => stands.to_string(),
            TestResult::TimedUpAndGo { tenths_s } => self.seconds(*tenths_s),
            TestResult::FourStageBalance { held_tenths_s } => {
                let held = held_tenths_s.iter().map(|(stance, tenths)| {
                    let args = [
                        ("stance", self.say(stance_message(stance)).into()),
                        ("held", self.seconds(tenths.into()).into()),
                    ];
                    self.words.say("fhir-held", &args)
                });
                held.collect::<Vec<_>>().join(&self.say("list-semicolon"))
            }
        };
        let verdict = self.test_verdict(test).unwrap_or_default();
        let also = self.test_notes(test).join(" ");
        [test.day.to_string(), self.test_name(&test.result), result, verdict, also]
    }

    /// "13.4 s"; whole ones without a decimal.
    fn seconds(&self, tenths: u16) -> String {
        let seconds = self.words.decimal(f64::from(tenths) / 10.0, usize::from(!tenths.is_multiple_of(10)));
        format!("{seconds} {}", self.say(Unit::Seconds.message()))
    }
}

/// The same in every language.
fn stance_id(stance: Stance) -> &'static str {
    match stance {
        Stance::SideBySide => "side-by-side",
        Stance::SemiTandem => "semi-tandem",
        Stance::Tandem => "tandem",
        Stance::OneLeg => "one-leg",
    }
}

fn stance_message(stance: Stance) -> &'static str {
    match stance {
        Stance::SideBySide => "fhir-stance-side-by-side",
        Stance::SemiTandem => "fhir-stance-semi-tandem",
        Stance::Tandem => "fhir-stance-tandem",
        Stance::OneLeg => "fhir-stance-one-leg",
    }
}
