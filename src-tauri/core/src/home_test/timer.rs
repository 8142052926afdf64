//! The time of a test, as a state machine without a clock. It answers "when do you next need waking?" and
//! "it is now T: what happens?". Deadlines are absolute, so nothing drifts.

use serde::Serialize;

use crate::home_test::result::{Held, MOST_WALK_TENTHS, Stance, TestResult, WHOLE_TENTHS};
use crate::plan::doc::TestKind;

/// "Three, two, one" before a chair stand.
const COUNT_IN_MS: u64 = 3_000;
/// The chair stand's time (CDC STEADI).
const CHAIR_STAND_MS: u64 = 30_000;
/// A stance's time (CDC STEADI).
const STANCE_MS: u64 = 10_000;
/// An unsteady hand taps twice, and nobody stands up twice in this time: common practice, no source.
const BOUNCE_MS: u64 = 500;
/// Who is woken so late has slept through a part of the test: common practice, no source.
const LATE_MS: u64 = 2_000;
/// A tick, so that what is shown goes on.
const TICK_MS: u64 = 1_000;

/// Where a test stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(rename_all = "kebab-case")]
pub enum TimerState {
    /// It waits for the tap that begins it, or the next stance.
    Ready,
    /// "Three, two, one".
    CountIn,
    /// Time is taken.
    Running,
    /// It has its result.
    Done,
    /// It was stopped, or time was lost. It has no result.
    Stopped,
}

/// What happened.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Serialize)]
#[serde(tag = "cue", rename_all = "kebab-case")]
pub enum TimerCue {
    /// So many seconds until it begins.
    CountIn {
        /// Seconds.
        left: u64,
    },
    /// It begins.
    Go,
    /// A second has passed.
    Second {
        /// Seconds left; of the timed up and go, seconds passed.
        shown: u64,
    },
    /// The patient stood up once more.
    Stood {
        /// How often by now.
        stands: u16,
    },
    /// A stance is over.
    Held {
        /// Which.
        stance: Stance,
        /// How long it was held, in tenths of a second.
        tenths_s: u8,
    },
    /// The test has its result.
    End,
    /// It was stopped.
    Stopped,
    /// The device slept through a part of it, so that it has no result.
    LostTime,
}

/// The time of one test.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Timer {
    kind: TestKind,
    state: TimerState,
    /// When the present state began.
    began_ms: u64,
    /// Whole seconds of it that have been told.
    told_s: u64,
    tapped_ms: Option<u64>,
    stands: u16,
    held: Vec<u8>,
    walk_tenths: u16,
    lost: bool,
}

impl Timer {
    /// Of a test that has not begun.
    pub fn new(kind: TestKind) -> Self {
        Self {
            kind,
            state: TimerState::Ready,
            began_ms: 0,
            told_s: 0,
            tapped_ms: None,
            stands: 0,
            held: Vec::new(),
            walk_tenths: 0,
            lost: false,
        }
    }

    /// Of which test.
    pub fn kind(&self) -> TestKind {
        self.kind
    }

    /// Where it stands.
    pub fn state(&self) -> TimerState {
        self.state
    }

    /// How often the patient stood up so far.
    pub fn stands(&self) -> u16 {
        self.stands
    }

    /// The stance that is asked for now; `None` in another test, and after the last.
    pub fn stance(&self) -> Option<Stance> {
        let balance = self.kind == TestKind::FourStageBalance;
        Stance::ALL.get(self.held.len()).copied().filter(|_| balance)
    }

    /// The device slept through a part of it.
    pub fn has_lost_time(&self) -> bool {
        self.lost
    }

    /// What is shown of time: seconds left, or passed in the timed up and go; `None` while none is taken.
    pub fn seconds(&self) -> Option<u64> {
        match self.length_ms() {
            Some(length) => Some((length / TICK_MS).saturating_sub(self.told_s)),
            None => (self.state == TimerState::Running).then_some(self.told_s),
        }
    }

    /// The result, once it has one. Whether the arms helped is asked afterwards.
    pub fn result(&self) -> Option<TestResult> {
        if self.state != TimerState::Done {
            return None;
        }
        match self.kind {
            TestKind::ChairStand => Some(TestResult::ChairStand { stands: self.stands, arms_used: false }),
            TestKind::TimedUpAndGo => Some(TestResult::TimedUpAndGo { tenths_s: self.walk_tenths }),
            TestKind::FourStageBalance => {
                let held_tenths_s = Held::new(self.held.clone()).ok()?;
                Some(TestResult::FourStageBalance { held_tenths_s })
            }
        }
    }

    /// When it must be woken next; `None` while no time is taken.
    pub fn wake_at(&self) -> Option<u64> {
        matches!(self.state, TimerState::CountIn | TimerState::Running)
            .then(|| self.began_ms + (self.told_s + 1) * TICK_MS)
    }

    /// It is now so late: what happens? Woken too early, nothing does.
    pub fn wake(&mut self, now_ms: u64) -> Vec<TimerCue> {
        let mut cues = Vec::new();
        while let Some(due) = self.wake_at().filter(|due| *due <= now_ms) {
            if now_ms - due > LATE_MS {
                (self.state, self.lost) = (TimerState::Stopped, true);
                cues.push(TimerCue::LostTime);
                break;
            }
            cues.extend(self.second(due));
        }
        cues
    }

    /// The one tap: begins; then counts a stand, ends the walk, or says that the feet moved.
    pub fn tap(&mut self, now_ms: u64) -> Vec<TimerCue> {
        let before = self.state;
        let mut cues = self.wake(now_ms);
        // What ended in the meantime is not begun anew by the tap that was meant for it.
        let bounces = self.tapped_ms.is_some_and(|last| now_ms.saturating_sub(last) < BOUNCE_MS);
        if before != self.state || bounces {
            return cues;
        }
        self.tapped_ms = Some(now_ms);
        match self.state {
            TimerState::Ready => {
                let counts_in = self.kind == TestKind::ChairStand;
                self.enter(if counts_in { TimerState::CountIn } else { TimerState::Running }, now_ms);
                cues.push(if counts_in {
                    TimerCue::CountIn { left: COUNT_IN_MS / TICK_MS }
                } else {
                    TimerCue::Go
                });
            }
            TimerState::Running => cues.extend(self.tapped_while_running(now_ms)),
            TimerState::CountIn | TimerState::Done | TimerState::Stopped => {}
        }
        cues
    }

    /// Stops it. What has its result keeps it.
    pub fn stop(&mut self) -> Vec<TimerCue> {
        if matches!(self.state, TimerState::Done | TimerState::Stopped) {
            return Vec::new();
        }
        self.state = TimerState::Stopped;
        vec![TimerCue::Stopped]
    }

    fn enter(&mut self, state: TimerState, at_ms: u64) {
        (self.state, self.began_ms, self.told_s) = (state, at_ms, 0);
    }

    /// How long the present state lasts; `None` if no time is taken, or it lasts until a tap.
    fn length_ms(&self) -> Option<u64> {
        match (self.state, self.kind) {
            (TimerState::CountIn, _) => Some(COUNT_IN_MS),
            (TimerState::Running, TestKind::ChairStand) => Some(CHAIR_STAND_MS),
            (TimerState::Running, TestKind::FourStageBalance) => Some(STANCE_MS),
            _ => None,
        }
    }

    /// A whole second of the present state is over.
    fn second(&mut self, due_ms: u64) -> Vec<TimerCue> {
        self.told_s += 1;
        let passed_ms = self.told_s * TICK_MS;
        match self.length_ms() {
            Some(length) if passed_ms >= length => self.ran_out(due_ms),
            Some(length) => {
                let left = (length - passed_ms) / TICK_MS;
                vec![match self.state {
                    TimerState::CountIn => TimerCue::CountIn { left },
                    _ => TimerCue::Second { shown: left },
                }]
            }
            // Nobody has tapped for so long that nobody will.
            None if passed_ms >= u64::from(MOST_WALK_TENTHS) * 100 => self.stop(),
            None => vec![TimerCue::Second { shown: self.told_s }],
        }
    }

    fn ran_out(&mut self, due_ms: u64) -> Vec<TimerCue> {
        match (self.state, self.kind) {
            (TimerState::CountIn, _) => {
                self.enter(TimerState::Running, due_ms);
                vec![TimerCue::Go]
            }
            (_, TestKind::FourStageBalance) => self.held_for(WHOLE_TENTHS),
            _ => {
                self.state = TimerState::Done;
                vec![TimerCue::End]
            }
        }
    }

    fn tapped_while_running(&mut self, now_ms: u64) -> Vec<TimerCue> {
        let tenths = (now_ms.saturating_sub(self.began_ms) + 50) / 100;
        match self.kind {
            TestKind::ChairStand => {
                self.stands += 1;
                vec![TimerCue::Stood { stands: self.stands }]
            }
            TestKind::TimedUpAndGo => {
                self.walk_tenths = u16::try_from(tenths).unwrap_or(MOST_WALK_TENTHS);
                self.state = TimerState::Done;
                vec![TimerCue::End]
            }
            // Who moved before time was up has not held the stance, however little was missing.
            TestKind::FourStageBalance => {
                self.held_for(u8::try_from(tenths).unwrap_or(WHOLE_TENTHS).min(WHOLE_TENTHS - 1))
            }
        }
    }

    /// A stance is over: the next one, or the end.
    fn held_for(&mut self, tenths_s: u8) -> Vec<TimerCue> {
        let Some(stance) = self.stance() else { return Vec::new() };
        self.held.push(tenths_s);
        let over = tenths_s < WHOLE_TENTHS || self.held.len() == Stance::ALL.len();
        self.state = if over { TimerState::Done } else { TimerState::Ready };
        let held = TimerCue::Held { stance, tenths_s };
        if over { vec![held, TimerCue::End] } else { vec![held] }
    }
}
