//! How fast a session goes: its runner knows only its own time.

use sendaluna_core::session::{Cue, Pace, Phase, Runner, State};

use super::Guide;
use crate::clock::{Clock, Now};
use crate::error::BedsideError;
use crate::home::Bedside;

impl Guide {
    /// When it must be woken next, in ms of [`Now::mono_ms`].
    pub fn wake_at(&self) -> Option<u64> {
        self.time.device_ms(self.runner.wake_at()?)
    }

    /// Time left in ms at its pace, waits apart.
    pub fn left_ms(&self, now: &Now) -> u64 {
        let left_ms = self.runner.left_ms(self.time.script_ms(now.mono_ms));
        left_ms * self.pace.percent(false).unwrap_or(100) / 100
    }

    /// How fast the count goes.
    pub fn pace(&self) -> Pace {
        self.pace
    }

    /// Has the count go faster or slower from now on.
    pub fn set_pace(&mut self, pace: Pace, clock: &dyn Clock) {
        self.settle_time(clock);
        self.pace = pace;
        self.settle_time(clock);
    }

    /// Whether the movement waits for a step by hand.
    pub fn waits_for_step(&self) -> bool {
        self.moves() && self.pace.percent(true).is_none()
    }

    /// Goes on with a count by hand: up to where the next movement, or something else, begins.
    pub fn step_on(&mut self, home: &mut Bedside, clock: &dyn Clock) -> Result<Vec<Cue>, BedsideError> {
        self.confirmed = true;
        let mut told = Vec::new();
        while self.waits_for_step()
            && let Some(deadline) = self.runner.wake_at()
        {
            self.time.put_forward(clock.now().mono_ms, deadline);
            let cues = self.wake(home, clock)?;
            let moves = |cue: &Cue| matches!(cue, Cue::Phase { phase, .. } if *phase != Phase::Pause);
            let is_there = cues.iter().any(moves);
            told.extend(cues);
            if is_there {
                break;
            }
        }
        Ok(told)
    }

    /// Whether a movement is under way: a count-in passes like a rest.
    fn moves(&self) -> bool {
        self.state() == State::Running && !self.runner.is_counting_in()
    }

    /// Has the script's time follow what the session does now.
    pub(super) fn settle_time(&mut self, clock: &dyn Clock) -> u64 {
        self.time.at(clock.now().mono_ms, self.pace.percent(self.moves()))
    }

    /// Something that happens to the runner now, in its own time.
    pub(super) fn timed<T>(&mut self, clock: &dyn Clock, act: impl FnOnce(&mut Runner, u64) -> T) -> T {
        let now_ms = self.settle_time(clock);
        let done = act(&mut self.runner, now_ms);
        self.settle_time(clock);
        done
    }
}
