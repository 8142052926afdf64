//! The runner: a state machine over a count script. It owns no clock; the caller wakes it at
//! [`Runner::wake_at`] and says what time it is. Early wake-ups do nothing.

use crate::plan::Amount;
use crate::session::script::{Cue, Part, Phase, Script, SidesAtOnce, TimedCue, Turn};
use crate::session::{Arranged, turns};

/// Later than this after a deadline, a count would lie: the session pauses instead.
const LATE_MS: i64 = 2_000;
/// Time to get going again after a pause.
const GOING_ON_S: u16 = 3;

/// Where a session stands.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum State {
    /// Waiting for the patient: not begun, or getting into position.
    Prepare,
    /// Counting.
    Running,
    /// Between sets.
    Resting,
    /// A set is being written to disk.
    Saving,
    /// Steps are being walked; the patient says when they are done.
    Walking,
    /// Paused.
    Paused,
    /// Something hurts; waiting for the answer.
    Asking,
    /// Led to its end.
    Done,
    /// Stopped before its end.
    Stopped,
}

/// The request does not fit the present state; nothing has changed.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub struct NotNow(pub State);

/// Why time stands still.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Wait {
    Start,
    Ready,
    Steps,
    Saving,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum Clock {
    /// Offset 0 of the script is at this moment; until the offset it went on from is reached, nothing
    /// passes.
    Running { zero_ms: i64, floor_ms: u64 },
    /// Time stands still until something happens.
    Waiting(Wait),
    /// Paused or asking, from running at this offset or from a wait.
    Halted { asking: bool, from: From },
    /// Over.
    Over,
}

#[derive(Debug, Clone, Copy, PartialEq, Eq)]
enum From {
    Running { offset_ms: u64 },
    Waiting(Wait),
}

/// A session under way.
#[derive(Debug, Clone)]
pub struct Runner {
    parts: Vec<Part>,
    /// The turns that the script was compiled from.
    turns: Vec<Turn>,
    script: Script,
    /// The next cue.
    next: usize,
    /// The turn of the last cue.
    turn: usize,
    /// Courses of the tempo done in the present set.
    courses: u16,
    clock: Clock,
    stopped: bool,
}

impl Runner {
    /// A session of whole parts, not begun yet.
    pub fn new(arranged: &Arranged) -> Self {
        Self::with_turns(arranged.parts.clone(), turns(&arranged.parts, &arranged.blocks))
    }

    /// A session that goes on: turns that are finished are left out.
    pub fn going_on(arranged: &Arranged, mut is_finished: impl FnMut(&Part, &Turn) -> bool) -> Self {
        let mut left = turns(&arranged.parts, &arranged.blocks);
        left.retain(|turn| !is_finished(&arranged.parts[turn.part], turn));
        Self::with_turns(arranged.parts.clone(), left)
    }

    fn with_turns(parts: Vec<Part>, turns: Vec<Turn>) -> Self {
        let script = Script::compile(&parts, &turns);
        let clock = Clock::Waiting(Wait::Start);
        Self { parts, turns, script, next: 0, turn: 0, courses: 0, clock, stopped: false }
    }

    /// The parts.
    pub fn parts(&self) -> &[Part] {
        &self.parts
    }

    /// Where it stands.
    pub fn state(&self) -> State {
        match self.clock {
            Clock::Over if self.stopped => State::Stopped,
            Clock::Over => State::Done,
            Clock::Halted { asking: true, .. } => State::Asking,
            Clock::Halted { asking: false, .. } => State::Paused,
            Clock::Waiting(Wait::Start | Wait::Ready) => State::Prepare,
            Clock::Waiting(Wait::Steps) => State::Walking,
            Clock::Waiting(Wait::Saving) => State::Saving,
            Clock::Running { .. } => match self.last_cue() {
                Some(Cue::Rest { .. } | Cue::SetUp { .. } | Cue::ChangeSide { .. }) => State::Resting,
                Some(Cue::Tick { .. }) if self.courses == 0 && !self.is_in_course() => State::Resting,
                _ => State::Running,
            },
        }
    }

    /// The turn it stands in: which part, set and sides; `None` once there are none left.
    pub fn turn(&self) -> Option<&Turn> {
        self.turns.get(self.turn)
    }

    /// When it must be woken next, in ms; `None` while time stands still.
    pub fn wake_at(&self) -> Option<u64> {
        let Clock::Running { zero_ms, .. } = self.clock else { return None };
        let cue = self.script.cues.get(self.next)?;
        u64::try_from(zero_ms.saturating_add_unsigned(cue.at_ms)).ok()
    }

    /// Time left in ms if nothing interrupts; waits apart.
    pub fn left_ms(&self, now_ms: u64) -> u64 {
        let offset = match self.clock {
            Clock::Running { zero_ms, floor_ms } => {
                u64::try_from(ms(now_ms) - zero_ms).unwrap_or(0).max(floor_ms)
            }
            Clock::Halted { from: From::Running { offset_ms }, .. } => offset_ms,
            Clock::Over => self.script.length_ms,
            _ => self.next_cue_at(),
        };
        self.script.length_ms.saturating_sub(offset)
    }

    /// Whether it will wait for "ready" next: whoever says so early need not wait for the question.
    pub fn is_getting_ready(&self) -> bool {
        let next = self.script.cues.get(self.next).map(|timed| &timed.cue);
        self.state() == State::Resting && matches!(next, Some(Cue::AwaitReady { .. }))
    }

    /// Whether it counts down to the first repetition of a round.
    pub fn is_counting_in(&self) -> bool {
        matches!(self.last_cue(), Some(Cue::CountIn { .. }))
    }

    /// Begins.
    pub fn start(&mut self, now_ms: u64) -> Result<Vec<Cue>, NotNow> {
        self.leave_wait(now_ms, Wait::Start)
    }

    /// The patient is in position, perhaps before being asked, or has walked the steps.
    pub fn ready(&mut self, now_ms: u64) -> Result<Vec<Cue>, NotNow> {
        if self.is_getting_ready() {
            let mut cues = self.go_on_now(now_ms)?;
            cues.extend(self.leave_wait(now_ms, Wait::Ready)?);
            return Ok(cues);
        }
        let wait = if self.clock == Clock::Waiting(Wait::Steps) { Wait::Steps } else { Wait::Ready };
        self.leave_wait(now_ms, wait)
    }

    /// The finished set is on disk.
    pub fn saved(&mut self, now_ms: u64) -> Result<Vec<Cue>, NotNow> {
        self.leave_wait(now_ms, Wait::Saving)
    }

    /// It is now so late: what happens? Woken early, nothing does.
    pub fn wake(&mut self, now_ms: u64) -> Vec<Cue> {
        let mut happened = Vec::new();
        let Some(deadline) = self.wake_at() else { return happened };
        if ms(now_ms) - ms(deadline) > LATE_MS {
            // From the last thing that happened: what was slept through was not done.
            let last = self.next.checked_sub(1).map(|last| self.script.cues[last].at_ms);
            let offset_ms = last.unwrap_or_else(|| self.next_cue_at());
            self.clock = Clock::Halted { asking: false, from: From::Running { offset_ms } };
            return vec![Cue::LostTime];
        }
        while self.wake_at().is_some_and(|at| at <= now_ms) {
            happened.push(self.step());
        }
        happened
    }

    /// Pauses.
    pub fn pause(&mut self, now_ms: u64) -> Result<(), NotNow> {
        self.halt(now_ms, false)
    }

    /// Something hurts: movement and voice stop until there is an answer.
    pub fn hurts(&mut self, now_ms: u64) -> Result<(), NotNow> {
        self.halt(now_ms, true)
    }

    /// Goes on after a pause, from the start of the repetition that was under way. Not while
    /// something hurts and there is no answer yet.
    pub fn go_on(&mut self, now_ms: u64) -> Result<Vec<Cue>, NotNow> {
        match self.clock {
            Clock::Halted { asking: false, from } => Ok(self.resume(now_ms, from)),
            _ => Err(NotNow(self.state())),
        }
    }

    /// Goes on after the answer to "this hurts", likewise.
    pub fn answered(&mut self, now_ms: u64) -> Result<Vec<Cue>, NotNow> {
        match self.clock {
            Clock::Halted { asking: true, from } => Ok(self.resume(now_ms, from)),
            _ => Err(NotNow(self.state())),
        }
    }

    fn resume(&mut self, now_ms: u64, from: From) -> Vec<Cue> {
        match from {
            From::Waiting(wait) => {
                self.clock = Clock::Waiting(wait);
                Vec::new()
            }
            From::Running { offset_ms } => {
                let (next, base_ms) = self.where_to_go_on(offset_ms);
                self.next = next;
                let lead_ms = 1000 * i64::from(GOING_ON_S);
                let zero_ms = ms(now_ms) + lead_ms - ms(base_ms);
                self.clock = Clock::Running { zero_ms, floor_ms: base_ms };
                vec![Cue::GoingOn { seconds: GOING_ON_S }]
            }
        }
    }

    /// Goes on at once from a rest or from getting ready.
    pub fn go_on_now(&mut self, now_ms: u64) -> Result<Vec<Cue>, NotNow> {
        if self.state() != State::Resting {
            return Err(NotNow(self.state()));
        }
        let is_beginning = |cue: &TimedCue| {
            matches!(cue.cue, Cue::AwaitReady { .. } | Cue::CountIn { .. } | Cue::SetUp { .. })
        };
        let ahead = &self.script.cues[self.next..];
        let Some(skip) = ahead.iter().position(is_beginning) else { return Err(NotNow(self.state())) };
        self.next += skip;
        self.run_from(now_ms, self.next_cue_at());
        Ok(self.wake(now_ms))
    }

    /// Parts of which something is left to lead.
    pub fn parts_left(&self) -> impl Iterator<Item = &Part> {
        let is_left = |i: usize| self.turns.iter().any(|turn| turn.part == i);
        self.parts.iter().enumerate().filter(move |(i, _)| is_left(*i)).map(|(_, part)| part)
    }

    /// The length of what it leads in ms, waits apart.
    pub fn length_ms(&self) -> u64 {
        self.script.length_ms
    }

    /// Whether the present set can be ended with what was done of it.
    pub fn can_end_set(&self) -> bool {
        let in_set = matches!(
            self.clock,
            Clock::Running { .. } | Clock::Halted { asking: false, from: From::Running { .. } }
        );
        in_set && self.courses_done() > 0
    }

    /// Ends the present set with what was done of it; not possible before its first repetition.
    pub fn end_set(&mut self) -> Result<Vec<Cue>, NotNow> {
        let is_end = |cue: &TimedCue| matches!(cue.cue, Cue::SetDone { .. });
        match self.script.cues[self.next..].iter().position(is_end) {
            Some(skip) if self.can_end_set() => {
                self.next += skip;
                Ok(vec![self.step()])
            }
            _ => Err(NotNow(self.state())),
        }
    }

    /// Leaves out the rest of the present exercise. What was done of its set is finished first.
    pub fn leave(&mut self, now_ms: u64) -> Result<Vec<Cue>, NotNow> {
        let Some(part) = self.open_turn()?.map(|turn| turn.part) else { return Err(NotNow(self.state())) };
        let left = self.turns[self.turn + 1..].iter().filter(|turn| turn.part != part).copied().collect();
        Ok(self.finish_then_lead(now_ms, left))
    }

    /// Goes on with the easier variant, from getting ready for it: what is left of the present set, and
    /// the rest of the exercise. What was done of the set counts.
    pub fn easier(&mut self, now_ms: u64) -> Result<Vec<Cue>, NotNow> {
        if self.open_turn()?.is_none() {
            return Err(NotNow(self.state()));
        }
        let left = self.turns[self.turn..].to_vec();
        self.script = Script::compile(&self.parts, &left).skipping(self.courses);
        self.turns = left;
        (self.next, self.turn) = (0, 0);
        self.run_from(now_ms, 0);
        Ok(self.wake(now_ms))
    }

    /// Stops the session. What was done of the present set is finished first.
    pub fn stop(&mut self, now_ms: u64) -> Result<Vec<Cue>, NotNow> {
        self.open_turn()?;
        self.stopped = true;
        Ok(self.finish_then_lead(now_ms, Vec::new()))
    }

    /// Stops a session whose finished set cannot be written: the set is given up.
    pub fn give_up(&mut self) {
        self.stopped = true;
        self.clock = Clock::Over;
    }

    /// The present turn, unless the session is over or a set is just being saved.
    fn open_turn(&self) -> Result<Option<Turn>, NotNow> {
        match self.clock {
            Clock::Over | Clock::Waiting(Wait::Saving) => Err(NotNow(self.state())),
            _ => Ok(self.turns.get(self.turn).copied()),
        }
    }

    fn finish_then_lead(&mut self, now_ms: u64, left: Vec<Turn>) -> Vec<Cue> {
        let done = self.courses_done();
        let partial = self.script.cues[self.next..]
            .iter()
            .find(|cue| matches!(cue.cue, Cue::SetDone { .. }))
            .filter(|_| done > 0)
            .map(|cue| self.with_done(&cue.cue));
        self.script = Script::compile(&self.parts, &left);
        self.turns = left;
        (self.next, self.turn, self.courses) = (0, 0, 0);
        if let Some(partial) = partial {
            self.clock = Clock::Waiting(Wait::Saving);
            return vec![partial];
        }
        self.run_from(now_ms, 0);
        self.wake(now_ms)
    }

    /// Lets the next cue happen, whatever the time.
    fn step(&mut self) -> Cue {
        let timed = self.script.cues[self.next].clone();
        self.next += 1;
        self.turn = timed.turn;
        let cue = self.with_done(&timed.cue);
        match &cue {
            Cue::RepetitionDone { .. } => self.courses += 1,
            Cue::AwaitReady { .. } => self.clock = Clock::Waiting(Wait::Ready),
            Cue::AwaitSteps { .. } => self.clock = Clock::Waiting(Wait::Steps),
            Cue::SetDone { .. } => {
                self.courses = 0;
                self.clock = Clock::Waiting(Wait::Saving);
            }
            Cue::End => self.clock = Clock::Over,
            _ => {}
        }
        cue
    }

    /// A set-done cue with what was really done.
    fn with_done(&self, cue: &Cue) -> Cue {
        match cue {
            Cue::SetDone { set, of, .. } => {
                let steps = matches!(self.parts[self.turns[self.turn].part].work, Amount::Steps(_));
                let done = if steps { *of } else { self.courses_done() };
                Cue::SetDone { set: set.clone(), done, of: *of }
            }
            cue => cue.clone(),
        }
    }

    /// Repetitions done on each working side in the present set.
    fn courses_done(&self) -> u16 {
        let alternates = self.turns.get(self.turn).is_some_and(|turn| {
            matches!(turn.sides, SidesAtOnce::TurnsFromLeft | SidesAtOnce::TurnsFromRight)
        });
        if alternates { self.courses / 2 } else { self.courses }
    }

    fn halt(&mut self, now_ms: u64, asking: bool) -> Result<(), NotNow> {
        let from = match self.clock {
            Clock::Running { zero_ms, floor_ms } => {
                let offset_ms = u64::try_from(ms(now_ms) - zero_ms).unwrap_or(0).max(floor_ms);
                From::Running { offset_ms }
            }
            Clock::Waiting(wait @ (Wait::Ready | Wait::Steps)) if asking => From::Waiting(wait),
            Clock::Halted { from, asking: false } if asking => from,
            _ => return Err(NotNow(self.state())),
        };
        self.clock = Clock::Halted { asking, from };
        Ok(())
    }

    fn leave_wait(&mut self, now_ms: u64, wait: Wait) -> Result<Vec<Cue>, NotNow> {
        if self.clock != Clock::Waiting(wait) {
            return Err(NotNow(self.state()));
        }
        self.run_from(now_ms, self.next_cue_at());
        Ok(self.wake(now_ms))
    }

    fn run_from(&mut self, now_ms: u64, offset_ms: u64) {
        let zero_ms = ms(now_ms) - ms(offset_ms);
        self.clock = Clock::Running { zero_ms, floor_ms: offset_ms };
    }

    fn next_cue_at(&self) -> u64 {
        self.script.cues.get(self.next).map_or(self.script.length_ms, |cue| cue.at_ms)
    }

    fn last_cue(&self) -> Option<&Cue> {
        Some(&self.script.cues.get(self.next.checked_sub(1)?)?.cue)
    }

    /// Whether a repetition is under way.
    fn is_in_course(&self) -> bool {
        self.course_start().is_some()
    }

    /// The cue with which the repetition under way began.
    fn course_start(&self) -> Option<usize> {
        let said = &self.script.cues[..self.next];
        let begins = |cue: &TimedCue| matches!(cue.cue, Cue::Phase { phase: Phase::Out, .. });
        let ends = |cue: &TimedCue| {
            matches!(cue.cue, Cue::RepetitionDone { .. } | Cue::SetDone { .. } | Cue::CountIn { .. })
        };
        let last = said.iter().rposition(|cue| begins(cue) || ends(cue))?;
        begins(&said[last]).then_some(last)
    }

    /// The cue and offset to go on from: the start of the repetition under way, the start of the
    /// count-in under way, else where it was.
    fn where_to_go_on(&self, offset_ms: u64) -> (usize, u64) {
        let counting_in = self.is_counting_in().then(|| {
            let said = &self.script.cues[..self.next];
            said.iter().rposition(|cue| !matches!(cue.cue, Cue::CountIn { .. })).map_or(0, |last| last + 1)
        });
        match self.course_start().or(counting_in) {
            Some(start) => (start, self.script.cues[start].at_ms),
            None => (self.next, offset_ms.min(self.next_cue_at())),
        }
    }
}

fn ms(ms: u64) -> i64 {
    i64::try_from(ms).unwrap_or(i64::MAX)
}

#[cfg(test)]
mod properties;
#[cfg(test)]
mod tests;
