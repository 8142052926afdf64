//! A home test in the terminal, in real time; or its result, written down without the timer.

use std::time::Duration;

use chrono::NaiveDate;
use sendaluna_bedside::hand::WhichDay;
use sendaluna_bedside::home_test::{Outcome, TestLead};
use sendaluna_bedside::types::{By, Held, How, TestId, TestResult, TimerState, Words};
use sendaluna_bedside::view::home_test::{TestPress, TestStageView, TestTold, TestView};
use sendaluna_bedside::{Bedside, BedsideError, Clock};
use serde_json::json;

use crate::answer::{Desk, Trouble, complain, now, print};
use crate::hands::{Hands, Press};
use crate::questions::{ask, ask_for, is_yes};
use crate::session;

/// What was asked for on the command line.
pub struct Wishes {
    /// Which test; else those asked for now are listed.
    pub test: Option<String>,
    /// Warning signs.
    pub signs: Option<Vec<String>>,
    /// Pain this morning.
    pub morning: Option<u8>,
    /// Pain at rest.
    pub pain: Option<u8>,
    /// Today's date.
    pub today: Option<NaiveDate>,
    /// Somebody is beside the patient.
    pub helper: bool,
    /// A result, measured without the program.
    pub by_hand: ByHand,
    /// Measured yesterday, not today.
    pub yesterday: bool,
}

/// A result, measured without the program: one of these.
pub struct ByHand {
    /// How often somebody stood up.
    pub stands: Option<u16>,
    /// The arms helped.
    pub arms: bool,
    /// Seconds of the walk.
    pub seconds: Option<f64>,
    /// Seconds of each stance.
    pub held: Option<Vec<f64>>,
}

impl ByHand {
    /// The result, if there is one.
    fn result(&self) -> Result<Option<TestResult>, BedsideError> {
        if let Some(stands) = self.stands {
            return Ok(Some(TestResult::ChairStand { stands, arms_used: self.arms }));
        }
        if let Some(seconds) = self.seconds {
            let tenths_s = tenths(seconds).ok_or(BedsideError::NoTestResult)?;
            return Ok(Some(TestResult::TimedUpAndGo { tenths_s }));
        }
        let Some(held) = &self.held else { return Ok(None) };
        let tenths = held.iter().map(|seconds| u8::try_from(tenths(*seconds)?).ok());
        let held = tenths.collect::<Option<Vec<u8>>>().and_then(|tenths| Held::new(tenths).ok());
        let held_tenths_s = held.ok_or(BedsideError::NoTestResult)?;
        Ok(Some(TestResult::FourStageBalance { held_tenths_s }))
    }
}

/// Whole tenths of a second.
#[expect(clippy::cast_possible_truncation, clippy::cast_sign_loss, reason = "within the range of the type")]
fn tenths(seconds: f64) -> Option<u16> {
    let tenths = (seconds * 10.0).round();
    (0.0..=f64::from(u16::MAX)).contains(&tenths).then_some(tenths as u16)
}

/// `home-test`.
pub fn home_test(desk: &Desk, wishes: &Wishes) -> Result<u8, Trouble> {
    let Some(id) = &wishes.test else { return list(desk) };
    let id = TestId::new(id.as_str()).map_err(|_| BedsideError::NoSuchItem(id.clone()))?;
    if let Some(result) = wishes.by_hand.result()? {
        return write_down(desk, &id, result, wishes);
    }
    let mut home = desk.open()?;
    let known = home.known()?;
    // Whoever tells of a warning sign is heard first; else nobody answers questions for nothing.
    let told = wishes.signs.is_some();
    if !told {
        home.check_test(&id, &now(desk))?;
    }
    let before = home.before(None, &now(desk))?;
    if let Some(day) = before.confirm_date {
        session::confirm_date(desk, &mut home, day, wishes.today)?;
    }
    let answers = session::Wishes {
        only: None,
        signs: wishes.signs.clone(),
        morning: wishes.morning,
        pain: wishes.pain,
        today: wishes.today,
        go_on: false,
        anew: false,
        helper: false,
    };
    if let Some(code) = session::ask_before(desk, &mut home, &known, &before, &answers, By::Patient)? {
        return Ok(code);
    }
    introduce(desk, &home, &id)?;
    let question = desk.say("ask-test-helper", &[]);
    let helper = wishes.helper || ask_for(desk, &question, "--helper", |answer| is_yes(desk, answer))?;
    let begun = home.begin_test(&id, helper, By::Patient, &now(desk))?;
    let words = Words::new([desk.words.lang()]);
    let lead = TestLead::new(home, known, begun, words, &desk.clock);
    Ok(Timed { desk, lead, hands: Hands::new(), began: now(desk).mono_ms, asked: String::new() }.run())
}

fn list(desk: &Desk) -> Result<u8, Trouble> {
    let day = desk.look()?.day(&desk.words, &now(desk))?;
    let lines: Vec<String> = day.tests.iter().map(line).collect();
    let text = if lines.is_empty() { desk.say("test-none", &[]) } else { lines.join("\n") };
    desk.answer(&text, &json!({ "tests": day.tests }));
    Ok(0)
}

/// A test that is asked for, or not yet.
pub fn line(test: &TestView) -> String {
    let when = if test.gate.open { &test.until_said } else { &test.gate.said };
    format!("{} [{}]. {when}", test.name, test.test)
}

fn write_down(desk: &Desk, id: &TestId, result: TestResult, wishes: &Wishes) -> Result<u8, Trouble> {
    let mut home = desk.open()?;
    let which = if wishes.yesterday { WhichDay::Yesterday } else { WhichDay::Today };
    let day = home.date_of(which, &now(desk))?;
    let outcome = Outcome { result, day, how: How::Remembered, helper: wishes.helper };
    let view = home.did_test(id, &outcome, By::Patient, &desk.words, &now(desk))?;
    let answer = json!({ "written": true, "day": day, "against_gate": view.against, "said": view.said });
    desk.answer(&view.said, &answer);
    Ok(0)
}

fn introduce(desk: &Desk, home: &Bedside, id: &TestId) -> Result<(), Trouble> {
    if !desk.json {
        let view = home.before_test(id, &desk.words, &now(desk))?;
        let lines: Vec<String> = std::iter::once(view.name).chain(view.how).chain(view.cautions).collect();
        print(&lines.join("\n"));
    }
    Ok(())
}

/// A test being timed.
struct Timed<'a> {
    desk: &'a Desk,
    lead: TestLead,
    hands: Hands,
    began: u64,
    /// What was asked for last, so that it is said once.
    asked: String,
}

impl Timed<'_> {
    /// Leads it to its end. Returns the exit code: 0 if a result is written down.
    fn run(mut self) -> u8 {
        if self.hands.is_terminal() && !self.desk.json {
            self.line(&self.desk.say("test-keys", &[]));
        }
        self.show(&[self.lead.look()]);
        loop {
            while !matches!(self.lead.state(), TimerState::Done | TimerState::Stopped) {
                self.step();
            }
            self.hands.rest();
            let press = self.verdict();
            let told = self.lead.press(press, &self.desk.clock);
            self.show(&told);
            match told.last() {
                Some(TestTold::Ended { written, .. }) => return u8::from(!written),
                Some(TestTold::Problem { .. }) => return 1,
                _ => self.hands.resume(),
            }
        }
    }

    /// Waits for a press or the next deadline.
    fn step(&mut self) {
        let now = self.desk.clock.now().mono_ms;
        let wait_ms = self.lead.wake_at().map_or(200, |at| at.saturating_sub(now));
        let press = match self.hands.wait(Duration::from_millis(wait_ms)) {
            Some(Press::Space | Press::Ready | Press::Now) => Some(TestPress::Tap),
            Some(_) => Some(TestPress::Stop),
            None if self.hands.is_gone() && self.lead.waits_for_a_tap() => Some(TestPress::Stop),
            None => None,
        };
        let mut told = self.lead.wake(&self.desk.clock);
        told.extend(press.into_iter().flat_map(|press| self.lead.press(press, &self.desk.clock)));
        self.show(&told);
    }

    /// What is to become of the result; of none, nothing.
    fn verdict(&mut self) -> TestPress {
        let TestTold::Stage { stage } = self.lead.look() else { return TestPress::Leave };
        if stage.state == TimerState::Stopped {
            return TestPress::Leave;
        }
        let stands = stage.stands;
        let Some(answer) = self.ask("ask-test-right") else { return TestPress::Leave };
        let right = is_yes(self.desk, &answer) == Some(true);
        let corrected = answer.parse().ok().filter(|_| stands.is_some());
        let again = self.desk.say("answers-again", &[]).split(' ').any(|word| word == answer);
        if !right && corrected.is_none() {
            return if again { TestPress::Again } else { TestPress::Leave };
        }
        let arms = stands.and_then(|_| self.ask("ask-test-arms"));
        let arms_used = arms.is_some_and(|answer| is_yes(self.desk, &answer) == Some(true));
        TestPress::Keep { stands: corrected, arms_used }
    }

    /// A line at the terminal, or the next of the script.
    fn ask(&mut self, id: &str) -> Option<String> {
        let question = self.desk.say(id, &[]);
        if self.hands.is_terminal() {
            return ask(self.desk, &question, "").ok();
        }
        if !self.desk.json {
            print(&question);
        }
        self.hands.line().map(|line| line.trim().to_lowercase())
    }

    fn show(&mut self, told: &[TestTold]) {
        for told in told {
            if self.desk.json {
                let mut line = json!(told);
                line["at_ms"] = json!(self.desk.clock.now().mono_ms.saturating_sub(self.began));
                print(&line.to_string());
                continue;
            }
            match told {
                TestTold::Stage { stage } => self.show_stage(stage),
                TestTold::Ended { said, .. } => self.line(said),
                TestTold::Problem { problem } => {
                    complain(&format!("{}\n{}", problem.happened, problem.to_do));
                }
            }
        }
    }

    fn show_stage(&mut self, stage: &TestStageView) {
        for said in &stage.said {
            self.line(said);
        }
        let ask = match &stage.tap {
            Some(tap) => format!("{} [{tap}]", stage.ask),
            None => stage.result.join("\n"),
        };
        if ask != self.asked {
            self.line(&ask);
            self.asked = ask;
        }
    }

    /// Prints lines; in raw mode a line break alone does not return to the margin.
    fn line(&self, text: &str) {
        if self.desk.json || text.is_empty() {
            return;
        }
        if self.hands.is_terminal() {
            print(&format!("{}\r", text.replace('\n', "\r\n")));
        } else {
            print(text);
        }
    }
}
