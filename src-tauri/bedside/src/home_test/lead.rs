//! Leading a test for whoever draws it: presses in, and what to show out. It owns no clock and no thread;
//! the shell wakes it at [`TestLead::wake_at`].

use chrono::NaiveDate;
use sendaluna_core::home_test::{MOST_STANDS, TestResult, Timer, TimerCue, TimerState};
use sendaluna_core::plan::doc::TestKind;
use sendaluna_core::record::How;
use sendaluna_words::Words;

use crate::clock::Clock;
use crate::error::BedsideError;
use crate::home::{Bedside, Known};
use crate::home_test::{Begun, Outcome, say};
use crate::lead::heard::Heard;
use crate::view::home_test::{TestPress, TestStageView, TestTold};

/// A test being led. It holds the record until it is over.
pub struct TestLead {
    home: Bedside,
    known: Known,
    words: Words,
    begun: Begun,
    /// The day on which it was begun.
    day: NaiveDate,
    timer: Timer,
    said: Vec<String>,
    heard: Vec<Heard>,
    ended: bool,
}

impl TestLead {
    /// A test that is about to be timed.
    pub fn new(home: Bedside, known: Known, begun: Begun, words: Words, clock: &dyn Clock) -> Self {
        let day = known.today(clock.now().at).session_day;
        let timer = Timer::new(begun.kind);
        Self { home, known, words, begun, day, timer, said: Vec::new(), heard: Vec::new(), ended: false }
    }

    /// Begins: what is to be shown? What to mind and how to get ready is heard.
    pub fn start(&mut self) -> Vec<TestTold> {
        self.heard.push(Heard::sentence(&self.words.say("test-unsafe", &[])));
        self.ask_aloud();
        vec![self.look()]
    }

    /// When it must be woken next, in ms of [`crate::Now::mono_ms`].
    pub fn wake_at(&self) -> Option<u64> {
        self.timer.wake_at()
    }

    /// It is over; nothing more can be pressed.
    pub fn has_ended(&self) -> bool {
        self.ended
    }

    /// Where its time stands.
    pub fn state(&self) -> TimerState {
        self.timer.state()
    }

    /// Time alone will not bring it on.
    pub fn waits_for_a_tap(&self) -> bool {
        let walks = self.begun.kind == TestKind::TimedUpAndGo;
        self.timer.state() == TimerState::Ready || (walks && self.timer.state() == TimerState::Running)
    }

    /// What is to be heard since this was last asked.
    pub fn take_heard(&mut self) -> Vec<Heard> {
        std::mem::take(&mut self.heard)
    }

    /// It goes on, and the screen must stay on.
    pub fn is_going(&self) -> bool {
        !self.ended && !matches!(self.timer.state(), TimerState::Done | TimerState::Stopped)
    }

    /// What a headset's key means now.
    pub fn main_press(&self) -> Option<TestPress> {
        self.tap().map(|_| TestPress::Tap)
    }

    /// Gives the record back.
    pub fn into_home(self) -> Bedside {
        self.home
    }

    /// What it shows now.
    pub fn look(&self) -> TestTold {
        TestTold::Stage { stage: Box::new(self.stage()) }
    }

    /// It is time: what is to be shown?
    pub fn wake(&mut self, clock: &dyn Clock) -> Vec<TestTold> {
        let cues = self.timer.wake(clock.now().mono_ms);
        self.take(&cues);
        if cues.is_empty() { Vec::new() } else { vec![self.look()] }
    }

    /// Something was pressed: what is to be shown?
    pub fn press(&mut self, press: TestPress, clock: &dyn Clock) -> Vec<TestTold> {
        let waits = !matches!(self.timer.state(), TimerState::CountIn | TimerState::Running);
        if waits && matches!(press, TestPress::Tap | TestPress::Again) && self.is_another_day(clock) {
            return self.end(self.words.say("test-another-day", &[]), false);
        }
        match press {
            TestPress::Tap => {
                // Time begins now: who taps has heard enough of how to get ready.
                if self.timer.state() == TimerState::Ready {
                    self.heard.push(Heard::Silence);
                }
                let cues = self.timer.tap(clock.now().mono_ms);
                self.take(&cues);
            }
            TestPress::Stop => {
                let cues = self.timer.stop();
                self.take(&cues);
            }
            TestPress::Again => {
                self.timer = Timer::new(self.begun.kind);
                self.said.clear();
                self.ask_aloud();
            }
            TestPress::Keep { stands, arms_used } => return self.keep(stands, arms_used, clock),
            TestPress::Leave => return self.end(self.words.say("test-nothing-written", &[]), false),
        }
        vec![self.look()]
    }

    /// What was asked before it holds for that day alone.
    fn is_another_day(&self, clock: &dyn Clock) -> bool {
        self.known.today(clock.now().at).session_day != self.day
    }

    fn keep(&mut self, stands: Option<u16>, arms_used: bool, clock: &dyn Clock) -> Vec<TestTold> {
        let Some(timed) = self.timer.result() else { return vec![self.problem(&BedsideError::NotNow)] };
        let (result, how) = corrected(timed, stands, arms_used);
        let outcome = Outcome { result, day: self.day, how, helper: true };
        let Begun { test, by, .. } = self.begun.clone();
        match self.home.did_test(&test, &outcome, by, &self.words, &clock.now()) {
            Ok(written) => self.end(written.said, true),
            Err(error) => vec![self.problem(&error)],
        }
    }

    fn end(&mut self, said: String, written: bool) -> Vec<TestTold> {
        self.ended = true;
        vec![TestTold::Ended { said, written }]
    }

    fn problem(&self, error: &BedsideError) -> TestTold {
        TestTold::Problem { problem: crate::say::problem(&self.words, Some(&self.known), error) }
    }

    /// Takes note of what is said and heard of this moment.
    fn take(&mut self, cues: &[TimerCue]) {
        let kind = self.begun.kind;
        self.said.clear();
        for cue in cues {
            let said = self.said_of(cue);
            self.heard.push(Heard::of_test(kind, *cue, said.as_deref()));
            self.said.extend(said);
        }
        self.heard.retain(Heard::is_something);
        match cues.last() {
            Some(TimerCue::Held { .. }) => self.ask_aloud(),
            // What was held is said stance by stance.
            Some(TimerCue::End) if kind != TestKind::FourStageBalance => self.result_aloud(),
            _ => {}
        }
    }

    fn said_of(&self, cue: &TimerCue) -> Option<String> {
        let words = &self.words;
        let number = |n: u64| words.say("cue-number", &[("n", n.into())]);
        let id = match cue {
            TimerCue::CountIn { left } => return Some(number(*left)),
            TimerCue::Stood { stands } => return Some(number((*stands).into())),
            TimerCue::Held { stance, tenths_s } => return Some(say::held(words, *stance, *tenths_s)),
            TimerCue::Go if self.begun.kind == TestKind::FourStageBalance => "stage-hold",
            TimerCue::Go => "test-go",
            TimerCue::End => "test-end",
            TimerCue::Stopped => "test-stopped",
            TimerCue::LostTime => "test-lost-time",
            TimerCue::Second { .. } => return None,
        };
        Some(words.say(id, &[]))
    }

    /// How to get ready is heard.
    fn ask_aloud(&mut self) {
        self.heard.push(Heard::sentence(&self.ask()));
    }

    /// The bare figure is heard.
    fn result_aloud(&mut self) {
        let said = self.timer.result().map_or_else(Vec::new, |result| say::result(&self.words, &result));
        self.heard.extend(said.iter().map(|sentence| Heard::sentence(sentence)));
    }

    fn stage(&self) -> TestStageView {
        let (words, timer) = (&self.words, &self.timer);
        let result = timer.result();
        TestStageView {
            name: say::name(words, self.begun.kind),
            state: timer.state(),
            ask: self.ask(),
            count: self.count(),
            count_said: self.count_said(),
            tap: self.tap().map(|id| words.say(id, &[])),
            can_again: result.is_some() || timer.has_lost_time(),
            stands: match result {
                Some(TestResult::ChairStand { stands, .. }) => Some(stands),
                _ => None,
            },
            most_stands: MOST_STANDS,
            result: result.map_or_else(Vec::new, |result| say::result(words, &result)),
            said: self.said.clone(),
        }
    }

    fn ask(&self) -> String {
        let id = match (self.timer.state(), self.begun.kind) {
            (TimerState::Ready | TimerState::Running, TestKind::FourStageBalance) => {
                return self
                    .timer
                    .stance()
                    .map_or_else(String::new, |stance| say::stance(&self.words, stance));
            }
            (TimerState::Ready | TimerState::CountIn, TestKind::ChairStand) => "test-chair-stand-sit",
            (TimerState::Running, TestKind::ChairStand) => "test-chair-stand-go",
            (TimerState::Running, _) => "test-timed-up-and-go-go",
            (TimerState::Done, _) => "test-end",
            (TimerState::Stopped, _) if self.timer.has_lost_time() => "test-lost-time",
            (TimerState::Stopped, _) => "test-stopped",
            _ => "test-timed-up-and-go-sit",
        };
        self.words.say(id, &[])
    }

    fn count(&self) -> Option<u64> {
        match (self.timer.state(), self.begun.kind) {
            (TimerState::Running, TestKind::ChairStand) => Some(self.timer.stands().into()),
            _ => self.timer.seconds(),
        }
    }

    fn count_said(&self) -> String {
        let words = &self.words;
        let left = |n: u64| words.say("test-seconds-left", &[("n", n.into())]);
        match (self.timer.state(), self.begun.kind, self.timer.seconds()) {
            (TimerState::CountIn, ..) => words.say("test-get-ready", &[]),
            (TimerState::Running, TestKind::TimedUpAndGo, _) => words.say("test-seconds", &[]),
            (TimerState::Running, TestKind::ChairStand, Some(n)) => left(n),
            (TimerState::Running, TestKind::FourStageBalance, _) => words.say("test-seconds-to-go", &[]),
            _ => String::new(),
        }
    }

    fn tap(&self) -> Option<&'static str> {
        match (self.timer.state(), self.begun.kind) {
            (TimerState::Ready, TestKind::ChairStand) => Some("test-tap-start"),
            (TimerState::Ready, TestKind::TimedUpAndGo) => Some("test-tap-go"),
            (TimerState::Ready, TestKind::FourStageBalance) => Some("test-tap-still"),
            (TimerState::Running, TestKind::ChairStand) => Some("test-tap-stood"),
            (TimerState::Running, TestKind::TimedUpAndGo) => Some("test-tap-seated"),
            (TimerState::Running, TestKind::FourStageBalance) => Some("test-tap-moved"),
            _ => None,
        }
    }
}

/// A result as the patient says it was. It counts as timed only if nothing timed is corrected.
fn corrected(timed: TestResult, said: Option<u16>, arms_used: bool) -> (TestResult, How) {
    let TestResult::ChairStand { stands: counted, .. } = timed else { return (timed, How::Counted) };
    let stands = said.unwrap_or(counted);
    let how = if stands == counted { How::Counted } else { How::Remembered };
    (TestResult::ChairStand { stands, arms_used }, how)
}
