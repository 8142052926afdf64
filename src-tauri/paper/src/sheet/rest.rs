//! Rules, pain, care, breaks, tests at home, cautions.

use sendaluna_core::facts::OperatedSide;
use sendaluna_core::gate::{Gate, GateDay, Standstill, day_rules};
use sendaluna_core::plan::doc::{CareItem, HomeTest, SharpPain, TestKind};
use sendaluna_words::Value;
use serde::Serialize;

use super::{Page, Rule};

/// A row of two cells.
#[derive(Debug, Serialize)]
pub(super) struct Row {
    pub what: String,
    pub then: String,
}

/// Something to do without a figure.
#[derive(Debug, Serialize)]
pub(super) struct Care {
    pub text: String,
    pub times: String,
    pub weeks: String,
}

/// A test at home.
#[derive(Debug, Serialize)]
pub(super) struct Test {
    pub name: String,
    pub when: String,
    /// What to do, sentence by sentence.
    pub how: Vec<String>,
    /// It may not be done before this, as far as it is known today.
    pub not_yet: Option<String>,
}

/// After a break.
#[derive(Debug, Serialize)]
pub(super) struct Return {
    pub start: String,
    pub doses: Vec<Row>,
    pub ring: String,
}

fn operated(side: OperatedSide) -> &'static str {
    match side {
        OperatedSide::Left => "sheet-side-left",
        OperatedSide::Right => "sheet-side-right",
        OperatedSide::Both => "sheet-side-both",
        OperatedSide::Neither => "sheet-side-neither",
    }
}

impl Page<'_> {
    pub(super) fn episodes(&self) -> Vec<String> {
        let said = |episode: &sendaluna_core::plan::doc::Episode| {
            let side = self.say(operated(episode.side));
            let args: [(&str, Value<'_>); 3] = [
                ("name", self.speaker.text(&episode.name).into()),
                ("side", side.into()),
                ("day", self.speaker.day_zero(episode.day_zero).into()),
            ];
            self.speaker.words.say("sheet-after", &args)
        };
        self.printed.plan.doc().episodes.iter().map(said).collect()
    }

    pub(super) fn holds(&self) -> Vec<String> {
        let (head, words) = (self.printed.plan.head(), self.speaker.words);
        let review = words.day_and_year(head.review_by);
        let last = words.day_and_year(head.last_day);
        let mut said = vec![
            words.say("sheet-holds", &[("day", review.as_str().into()), ("last", last.into())]),
            self.say("sheet-newer"),
        ];
        let stands_still = self.gate_day().stands_still();
        said.extend(stands_still.map(|why| match why {
            Standstill::PastReview => self.say("reason-past-review"),
            Standstill::SetBack => self.say("reason-set-back"),
        }));
        if head.review_by < head.last_day {
            said.push(words.say("sheet-review", &[("day", review.into())]));
        }
        said
    }

    pub(super) fn cautions(&self) -> Vec<String> {
        let phone = self.printed.plan.doc().clinic.emergency_phone.as_str();
        let said = |id: &str| self.speaker.words.say(id, &[("phone", phone.into())]);
        ["caution-plan-is-clinics", "caution-nobody-sees", "not-yet-caution", "caution-emergency"]
            .into_iter()
            .chain(["caution-not-medical"])
            .map(said)
            .collect()
    }

    pub(super) fn pain(&self) -> Vec<Row> {
        let rule = &self.printed.plan.doc().pain;
        let at = |id: &str, level: u8| self.speaker.words.say(id, &[("level", level.into())]);
        let row = |what: String, then: &str| Row { what, then: self.say(then) };
        let sharp = match rule.sharp {
            SharpPain::StopExercise => "sheet-pain-stop-do",
            SharpPain::StopToday => "sheet-pain-today-do",
        };
        let minutes = [("minutes", rule.settle_minutes.into())];
        vec![
            row(at("sheet-pain-rest", rule.rest_stop_today_at), "sheet-pain-rest-do"),
            row(at("sheet-pain-during", rule.slow_at), "sheet-pain-slow-do"),
            row(at("sheet-pain-during", rule.easier_at), "sheet-pain-easier-do"),
            row(at("sheet-pain-during", rule.stop_exercise_at), "sheet-pain-stop-do"),
            row(at("sheet-pain-rise", rule.rise_stop_exercise), "sheet-pain-stop-do"),
            row(self.say("sheet-pain-sharp"), sharp),
            row(at("sheet-pain-during", rule.stop_today_at), "sheet-pain-today-do"),
            row(self.speaker.words.say("sheet-pain-settle", &minutes), "sheet-pain-settle-do"),
            row(at("sheet-pain-morning", rule.next_morning_rise), "sheet-pain-morning-do"),
        ]
    }

    pub(super) fn rules(&self) -> Vec<Rule> {
        let review_by = self.printed.plan.head().review_by;
        let rules = day_rules(self.printed.standing, &self.gate_day(), review_by);
        let said = |rule: sendaluna_core::gate::DayRule| Rule {
            text: self.speaker.text(&rule.precaution.why),
            until: self.speaker.rule_ends(&rule),
            set_by: self.speaker.who(&rule.set_by),
        };
        rules.into_iter().map(said).collect()
    }

    pub(super) fn not_opened(&self) -> Vec<String> {
        let standing = self.printed.standing;
        standing.ignored_lifts.iter().map(|lift| self.speaker.ignored_lift(standing, lift)).collect()
    }

    pub(super) fn gate_day(&self) -> GateDay {
        GateDay::held(self.printed.day, self.printed.plan.head().review_by, self.printed.set_back)
    }

    pub(super) fn care(&self) -> Vec<Care> {
        let said = |care: &CareItem| Care {
            text: self.speaker.text(&care.text),
            times: self.speaker.words.say("sheet-care-times", &[("times", care.times.into())]),
            weeks: self.span(care.from_week, care.through_week),
        };
        self.printed.plan.doc().care.iter().map(said).collect()
    }

    pub(super) fn return_dose(&self) -> Return {
        let (plan, words) = (self.printed.plan, self.speaker.words);
        let rule = &plan.doc().return_dose;
        let row = |restart: &sendaluna_core::plan::doc::RestartDose| {
            let item = plan.item(&restart.item)?;
            let what = self.speaker.name(self.printed.library, plan, &item.movement);
            Some(Row { what, then: self.speaker.dose(&restart.dose) })
        };
        let doses: Vec<Row> = rule.doses.iter().filter_map(row).collect();
        let start = if doses.is_empty() { "sheet-return-same" } else { "sheet-return-start" };
        Return {
            start: words.say(start, &[("days", rule.after_days.into())]),
            doses,
            ring: words.say("sheet-return-ring", &[("days", rule.ring_after_days.into())]),
        }
    }

    pub(super) fn tests(&self) -> Vec<Test> {
        let printed = self.printed;
        let said = |test: &HomeTest| {
            let (name, how) = match test.test {
                TestKind::ChairStand => ("test-chair-stand", CHAIR_STAND),
                TestKind::TimedUpAndGo => ("test-timed-up-and-go", TIMED_UP_AND_GO),
                TestKind::FourStageBalance => ("test-four-stage-balance", FOUR_STAGE_BALANCE),
            };
            let args = [("from", test.from_week.into()), ("every", test.every_weeks.into())];
            let gate = self.gates().test(test, &self.gate_day());
            Test {
                name: self.say(name),
                when: self.speaker.words.say("sheet-test-weeks", &args),
                how: how.iter().map(|id| self.say(id)).collect(),
                not_yet: match gate {
                    Gate::Open => None,
                    Gate::NotYet(not_yet) => Some(self.speaker.opens(&not_yet)),
                },
            }
        };
        printed.plan.doc().home_tests.iter().map(said).collect()
    }
}

const CHAIR_STAND: &[&str] = &[
    "test-chair-stand-place",
    "test-chair-stand-how",
    "test-chair-stand-go",
    "sheet-test-chair-stand-count",
];
const TIMED_UP_AND_GO: &[&str] = &[
    "test-timed-up-and-go-place",
    "test-timed-up-and-go-how",
    "test-timed-up-and-go-go",
    "sheet-test-timed-up-and-go-time",
];
const FOUR_STAGE_BALANCE: &[&str] = &[
    "test-four-stage-balance-place",
    "test-four-stage-balance-how",
    "test-four-stage-balance-go",
    "test-stance-side-by-side",
    "test-stance-semi-tandem",
    "test-stance-tandem",
    "test-stance-one-leg",
    "sheet-test-four-stage-balance-time",
];
