//! Leading a session: the runner of `core`, and the record. Every finished set is on disk before the
//! next cue.

use std::collections::BTreeSet;

use sendaluna_core::facts::Position;
use sendaluna_core::gate::Gate;
use sendaluna_core::ids::{ItemId, SessionId, SignId};
use sendaluna_core::plan::UNWELL;
use sendaluna_core::record::{
    Body, By, Distress, Ending, How, LeaveReason, Moment, Pain, Place, SessionRecord, SetRecord,
};
use sendaluna_core::session::{
    Cue, NotNow, Pace, PacedTime, PainAnswer, PainKind, Part, Runner, SetId, State, Turn, answer_during,
    answer_to_distress,
};
use sendaluna_core::steps::{Change, down_for_pain};

use crate::clock::{Clock, Now};
use crate::error::BedsideError;
use crate::home::{Bedside, Known};

mod paced;

/// What "I did fewer" means at a moment.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Fewer {
    /// It ends the present set with what was done of it.
    EndsSet,
    /// It corrects the last set.
    Corrects {
        /// Done by now.
        most: u16,
    },
}

/// What is said of pain.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum Felt {
    /// How much, 0 to 10, and what kind.
    Level(u8, PainKind),
    /// What a helper sees, in place of a figure.
    Seen(Distress),
}

/// What came of an answer to "this hurts".
#[derive(Debug)]
pub struct Answered {
    /// The plan's answer, which is being carried out.
    pub answer: PainAnswer,
    /// One down, by the clinic's rule.
    pub stepped: Option<Change>,
    /// What happens now.
    pub cues: Vec<Cue>,
    /// Why a part of it could not be written down.
    pub unwritten: Option<BedsideError>,
}

/// A session under way.
pub struct Guide {
    session: SessionId,
    by: By,
    runner: Runner,
    pace: Pace,
    /// The runner's time against the device's.
    time: PacedTime,
    /// Pain at rest before the session, if it was asked today.
    pain_before: Option<u8>,
    easier: BTreeSet<ItemId>,
    /// Somebody has answered something.
    confirmed: bool,
    stopped_as_told: bool,
    /// The last set on disk, and what was done of it.
    last_set: Option<(SetId, u16)>,
    /// A finished set that could not be written yet.
    unsaved: Option<Cue>,
}

impl From<NotNow> for BedsideError {
    fn from(_: NotNow) -> Self {
        Self::NotNow
    }
}

impl Guide {
    pub(crate) fn new(session: SessionId, by: By, runner: Runner, pain_before: Option<u8>) -> Self {
        Self {
            session,
            by,
            runner,
            pace: Pace::default(),
            time: PacedTime::default(),
            pain_before,
            easier: BTreeSet::new(),
            confirmed: false,
            stopped_as_told: false,
            last_set: None,
            unsaved: None,
        }
    }

    /// Where the session stands.
    pub fn state(&self) -> State {
        self.runner.state()
    }

    /// Whether it waits for "ready", or will next.
    pub fn is_ready_welcome(&self) -> bool {
        matches!(self.state(), State::Prepare | State::Walking) || self.runner.is_getting_ready()
    }

    /// The items it leads.
    pub fn items(&self) -> impl Iterator<Item = &ItemId> {
        self.runner.parts().iter().map(|part| &part.item)
    }

    /// The item it stands in.
    pub fn item(&self) -> Option<&ItemId> {
        let turn = self.runner.turn()?;
        Some(&self.runner.parts()[turn.part].item)
    }

    /// The part and the turn it stands in.
    pub fn turn(&self) -> Option<(&Part, &Turn)> {
        let turn = self.runner.turn()?;
        Some((&self.runner.parts()[turn.part], turn))
    }

    /// The parts it leads.
    pub fn parts(&self) -> &[Part] {
        self.runner.parts()
    }

    /// The session's id.
    pub fn session(&self) -> &SessionId {
        &self.session
    }

    /// Who leads it.
    pub fn by(&self) -> By {
        self.by
    }

    /// The last set on disk, and what was done of it, corrections applied.
    pub fn last_set(&self) -> Option<&(SetId, u16)> {
        self.last_set.as_ref()
    }

    /// What "I did fewer" would mean now.
    pub fn fewer_means(&self) -> Option<Fewer> {
        let between_sets = matches!(
            self.state(),
            State::Resting | State::Prepare | State::Paused | State::Done | State::Stopped
        );
        match &self.last_set {
            _ if self.runner.can_end_set() => Some(Fewer::EndsSet),
            Some((_, done)) if between_sets && *done > 0 => Some(Fewer::Corrects { most: *done }),
            _ => None,
        }
    }

    /// The position that an item of the session is done in.
    pub fn position_of(&self, item: &ItemId) -> Option<Position> {
        self.runner.parts().iter().find(|part| part.item == *item).map(|part| part.position)
    }

    /// Whether an item is done in its easier variant.
    pub fn is_easier(&self, item: &ItemId) -> bool {
        self.easier.contains(item)
    }

    /// An item whose easier variant was taken before a break of the program.
    pub(crate) fn keep_easier(&mut self, item: ItemId) {
        self.easier.insert(item);
    }

    /// A rule or a sign said to stop.
    pub fn is_stopped_as_told(&self) -> bool {
        self.stopped_as_told
    }

    /// Begins.
    pub fn start(&mut self, home: &mut Bedside, clock: &dyn Clock) -> Result<Vec<Cue>, BedsideError> {
        let cues = self.timed(clock, Runner::start)?;
        self.keep(home, clock, cues)
    }

    /// It is time: what happens?
    pub fn wake(&mut self, home: &mut Bedside, clock: &dyn Clock) -> Result<Vec<Cue>, BedsideError> {
        let cues = self.timed(clock, Runner::wake);
        self.keep(home, clock, cues)
    }

    /// The patient is in position, or has walked the steps.
    pub fn ready(&mut self, home: &mut Bedside, clock: &dyn Clock) -> Result<Vec<Cue>, BedsideError> {
        self.confirmed = true;
        let cues = self.timed(clock, Runner::ready)?;
        self.keep(home, clock, cues)
    }

    /// Tries again to write a finished set that could not be written.
    pub fn save_again(&mut self, home: &mut Bedside, clock: &dyn Clock) -> Result<Vec<Cue>, BedsideError> {
        let unsaved = self.unsaved.take().ok_or(BedsideError::NotNow)?;
        let mut cues = self.keep(home, clock, vec![unsaved])?;
        cues.remove(0);
        Ok(cues)
    }

    /// A finished set could not be written yet.
    pub fn is_unsaved(&self) -> bool {
        self.unsaved.is_some()
    }

    /// Pauses.
    pub fn pause(&mut self, clock: &dyn Clock) -> Result<(), BedsideError> {
        self.confirmed = true;
        Ok(self.timed(clock, Runner::pause)?)
    }

    /// Goes on after a pause.
    pub fn go_on(&mut self, home: &mut Bedside, clock: &dyn Clock) -> Result<Vec<Cue>, BedsideError> {
        self.confirmed = true;
        let cues = self.timed(clock, Runner::go_on)?;
        self.keep(home, clock, cues)
    }

    /// Goes on at once from a rest.
    pub fn go_on_now(&mut self, home: &mut Bedside, clock: &dyn Clock) -> Result<Vec<Cue>, BedsideError> {
        self.confirmed = true;
        let cues = self.timed(clock, Runner::go_on_now)?;
        self.keep(home, clock, cues)
    }

    /// "I did fewer": ends the present set with what was done; between sets, corrects the last one.
    pub fn fewer(
        &mut self,
        home: &mut Bedside,
        clock: &dyn Clock,
        done: Option<u16>,
    ) -> Result<Vec<Cue>, BedsideError> {
        self.confirmed = true;
        let Some(done) = done else {
            let cues = self.runner.end_set()?;
            return self.keep(home, clock, cues);
        };
        let (set, known) = self.last_set.clone().ok_or(BedsideError::NotNow)?;
        let body = Body::SetCorrected { session: self.session.clone(), set: set.clone(), done };
        home.record(&clock.now(), self.by, body)?;
        self.last_set = Some((set, done.min(known)));
        Ok(Vec::new())
    }

    /// Leaves out the rest of the present exercise.
    pub fn leave(
        &mut self,
        home: &mut Bedside,
        clock: &dyn Clock,
        reason: LeaveReason,
    ) -> Result<Vec<Cue>, BedsideError> {
        self.confirmed = true;
        let item = self.item().cloned().ok_or(BedsideError::NotNow)?;
        let cues = self.timed(clock, Runner::leave)?;
        let cues = self.keep(home, clock, cues)?;
        let body = Body::ItemLeft { session: self.session.clone(), item, reason };
        home.record(&clock.now(), self.by, body)?;
        Ok(cues)
    }

    /// Takes the easier variant, if the plan has one and its gate is open.
    pub fn easier(&mut self, home: &mut Bedside, clock: &dyn Clock) -> Result<Vec<Cue>, BedsideError> {
        let id = self.item().cloned().ok_or(BedsideError::NotNow)?;
        if self.easier.contains(&id) || !home.easier_is_open(&id, &clock.now())? {
            return Err(BedsideError::NoEasierWay);
        }
        self.confirmed = true;
        let cues = self.timed(clock, Runner::easier)?;
        let cues = self.keep(home, clock, cues)?;
        let body = Body::ItemEasier { session: self.session.clone(), item: id.clone() };
        home.record(&clock.now(), self.by, body)?;
        self.easier.insert(id);
        Ok(cues)
    }

    /// "This hurts": movement and voice stop.
    pub fn hurts(&mut self, clock: &dyn Clock) -> Result<(), BedsideError> {
        self.confirmed = true;
        Ok(self.timed(clock, Runner::hurts)?)
    }

    /// How much, what kind and where; the plan's rule answers and is carried out. Where the rule
    /// says "easier" and there is no easier way that is allowed, this exercise is stopped. The answer
    /// comes first and stands even if it cannot be written down.
    pub fn answer_hurts(
        &mut self,
        home: &mut Bedside,
        clock: &dyn Clock,
        felt: Felt,
        place: Option<Place>,
    ) -> Result<Answered, BedsideError> {
        if matches!(felt, Felt::Level(level, _) if level > 10) {
            return Err(BedsideError::FigureOutOfRange);
        }
        if self.state() != State::Asking {
            return Err(BedsideError::NotNow);
        }
        let item = self.item().cloned();
        let known = home.known()?;
        let mut answer = match felt {
            Felt::Level(level, kind) => answer_during(&known.plan.doc().pain, self.pain_before, level, kind),
            Felt::Seen(distress) => answer_to_distress(distress),
        };
        let (level, kind, distress) = match felt {
            Felt::Level(level, kind) => (Some(level), Some(kind), None),
            Felt::Seen(distress) => (None, None, Some(distress)),
        };
        let stepped = item.as_ref().zip(level);
        let stepped = stepped.and_then(|(item, level)| steps_down(&known, item, level, &clock.now()));
        if answer == PainAnswer::Easier && !self.can_be_easier(home, &clock.now())? {
            answer = PainAnswer::StopExercise;
        }
        let done = match answer {
            PainAnswer::GoOn | PainAnswer::Gently => match self.timed(clock, Runner::answered) {
                Ok(cues) => self.keep(home, clock, cues),
                Err(not_now) => Err(not_now.into()),
            },
            PainAnswer::Easier => self.easier(home, clock),
            PainAnswer::StopExercise => self.leave(home, clock, LeaveReason::Hurt),
            PainAnswer::StopToday => self.stop(home, clock, true),
        };
        let pain = Pain { moment: Moment::During, level, distress, kind, place, item, answer };
        let mut bodies = vec![(self.by, Body::PainAnswered { session: Some(self.session.clone()), pain })];
        bodies.extend(stepped.clone().map(|change| (By::Program, change.into())));
        let written = home.record_each(&clock.now(), bodies);
        let stepped = stepped.filter(|_| written.is_ok());
        let (cues, failed) = match done {
            Ok(cues) => (cues, None),
            Err(error) => (Vec::new(), Some(error)),
        };
        Ok(Answered { answer, stepped, cues, unwritten: failed.or(written.err()) })
    }

    /// "I feel unwell or dizzy": stops at once, for today, and says to ring. It stops first, and is
    /// written down then, at any moment, even when there is nothing left to stop.
    pub fn unwell(&mut self, home: &mut Bedside, clock: &dyn Clock) -> Result<Vec<Cue>, BedsideError> {
        let stopped = match self.stop(home, clock, true) {
            Err(BedsideError::NotNow) => Ok(Vec::new()),
            result => result,
        };
        let unwell = SignId::new(UNWELL).into_iter().collect::<Vec<_>>();
        home.answer_signs(&unwell, self.by, &clock.now())?;
        stopped
    }

    /// Stops the session; as told, if a rule or a sign said so.
    pub fn stop(
        &mut self,
        home: &mut Bedside,
        clock: &dyn Clock,
        as_told: bool,
    ) -> Result<Vec<Cue>, BedsideError> {
        self.confirmed = true;
        self.stopped_as_told |= as_told;
        let result = self.stop_and_keep(home, clock);
        if self.state() == State::Saving {
            // To stop comes before a set that cannot be written.
            self.unsaved = None;
            self.runner.give_up();
        }
        result
    }

    fn stop_and_keep(&mut self, home: &mut Bedside, clock: &dyn Clock) -> Result<Vec<Cue>, BedsideError> {
        if self.is_unsaved() {
            self.save_again(home, clock)?;
        }
        let cues = self.timed(clock, Runner::stop)?;
        self.keep(home, clock, cues)
    }

    /// Ends the record of the session with what the patient says of it, all of it or nothing. Returns
    /// how it ended.
    pub fn finish(
        &mut self,
        home: &mut Bedside,
        now: &Now,
        effort: Option<u8>,
        pain: Option<u8>,
        words: Option<String>,
    ) -> Result<Ending, BedsideError> {
        if effort.into_iter().chain(pain).any(|level| level > 10) {
            return Err(BedsideError::FigureOutOfRange);
        }
        let session = self.session.clone();
        let mut bodies = Vec::new();
        if let Some(level) = pain {
            let pain = Pain::of_level(Moment::After, level, PainAnswer::GoOn);
            bodies.push(Body::PainAnswered { session: Some(session.clone()), pain });
        }
        let known = home.known()?;
        let record = known.state.sessions.iter().find(|s| s.id == session);
        let ending = match self.state() {
            _ if self.stopped_as_told => Ending::StoppedAsTold,
            State::Done if record.is_some_and(is_whole) => Ending::Whole,
            _ => Ending::Part,
        };
        let confirmed = self.confirmed || effort.is_some() || pain.is_some() || words.is_some();
        bodies.push(Body::SessionEnded { session, ending, confirmed, effort, words });
        home.record_all(now, self.by, bodies)?;
        Ok(ending)
    }

    /// Whether the present item has an easier variant that was not taken yet and is allowed.
    pub fn can_be_easier(&self, home: &Bedside, now: &Now) -> Result<bool, BedsideError> {
        match self.item() {
            Some(item) if !self.easier.contains(item) => home.easier_is_open(item, now),
            _ => Ok(false),
        }
    }

    /// Writes every finished set before anything more is led.
    fn keep(
        &mut self,
        home: &mut Bedside,
        clock: &dyn Clock,
        mut cues: Vec<Cue>,
    ) -> Result<Vec<Cue>, BedsideError> {
        while let (State::Saving, Some(Cue::SetDone { set, done, of })) = (self.state(), cues.last()) {
            let easier = self.easier.contains(&set.item);
            let record = SetRecord { set: set.clone(), done: *done, of: *of, easier };
            let how = if self.confirmed { How::Counted } else { How::CountedNotConfirmed };
            let kept = (set.clone(), *done);
            let body = Body::SetDone { session: self.session.clone(), record, how };
            if let Err(error) = home.record(&clock.now(), self.by, body) {
                self.unsaved = cues.pop();
                return Err(error);
            }
            self.last_set = Some(kept);
            cues.extend(self.timed(clock, Runner::saved)?);
        }
        Ok(cues)
    }
}

/// One down of an item that hurts, by the clinic's rule.
fn steps_down(known: &Known, item: &ItemId, level: u8, now: &Now) -> Option<Change> {
    let item = known.plan.item(item)?;
    down_for_pain(&known.plan, item, &known.state, known.today(now.at).session_day, level)
}

/// Every item done, nothing left out and nothing done short.
fn is_whole(session: &SessionRecord) -> bool {
    let was_done = |item: &ItemId| session.sets.iter().any(|(record, _)| record.set.item == *item);
    session.left.is_empty()
        && session.items.iter().all(was_done)
        && session.sets.iter().all(|(record, _)| record.done >= record.of)
}

impl Bedside {
    /// Whether an item has an easier variant that is allowed now.
    pub(crate) fn easier_is_open(&self, id: &ItemId, now: &Now) -> Result<bool, BedsideError> {
        let known = self.known()?;
        let item = known.item(id)?;
        let due = self.due_day(&known, now).items.into_iter().find(|due| due.item == *id);
        let dose = due.map_or_else(|| known.dose_apart(item, now), |due| due.dose);
        let gate = known.gates(self.library()).easier(item, &dose, &known.gate_day(now.at));
        Ok(matches!(gate, Some(Gate::Open)))
    }
}
