//! Leading a session for whoever draws it: presses in, and what to show out. It owns no clock and no
//! thread; the shell wakes it at [`Lead::wake_at`].

pub mod heard;
mod shown;

use chrono::NaiveDate;
use sendaluna_core::plan::doc::Tier;
use sendaluna_core::record::{By, Ending, LeaveReason, Place};
use sendaluna_core::session::{Cue, Pace, PainAnswer, State};
use sendaluna_core::steps::Change as Stepped;
use sendaluna_words::Words;

use crate::clock::Clock;
use crate::error::BedsideError;
use crate::guide::{Felt, Fewer, Guide};
use crate::home::{Bedside, Known};
use crate::lead::heard::Heard;
use crate::lead::shown::Shown;
use crate::settings::Change;
use crate::stop::stop_view;
use crate::view::session::{EndedView, PainSaidView, Press, StageName, StageView, Told, WaitsFor};
use sendaluna_say::Speaker;

/// How many characters of free text are kept.
const MOST_WORDS: usize = 1_000;

/// A session being led. It holds the record until it is over.
pub struct Lead {
    home: Bedside,
    known: Known,
    words: Words,
    /// `None` once it has ended.
    guide: Option<Guide>,
    shown: Shown,
    /// The day it was begun or gone on with.
    day: NaiveDate,
    /// Whether the present item can be made easier, asked once for each.
    can_be_easier: bool,
}

impl Lead {
    /// A session that is about to be led.
    pub fn new(home: Bedside, known: Known, guide: Guide, words: Words, clock: &dyn Clock) -> Self {
        let doses = home.doses_today(&known, &clock.now());
        let shown = Shown::new(&home, &known, &words, &guide, &doses);
        let day = known.today(clock.now().at).session_day;
        let pace = known.settings.pace;
        let mut guide = guide;
        guide.set_pace(pace, clock);
        Self { day, home, known, words, guide: Some(guide), shown, can_be_easier: false }
    }

    /// What is to be heard since this was last asked, in order.
    pub fn take_heard(&mut self) -> Vec<Heard> {
        self.shown.take_heard()
    }

    /// Whether it goes on, so that the screen must stay on: not while it is paused, asks, or is over.
    pub fn is_going(&self) -> bool {
        let goes = |state| matches!(state, State::Prepare | State::Running | State::Resting | State::Walking);
        self.guide.as_ref().is_some_and(|guide| goes(guide.state()))
    }

    /// What the space bar, or a headset's key, means now.
    pub fn main_press(&self) -> Option<Press> {
        let guide = self.guide.as_ref()?;
        let asks = self.asks_somebody(guide);
        match guide.state() {
            // That somebody is there is said with the button for it.
            State::Prepare if asks => None,
            State::Prepare | State::Walking => Some(Press::Ready),
            State::Resting if guide.is_ready_welcome() && !asks => Some(Press::Ready),
            State::Running if guide.waits_for_step() => Some(Press::StepOn),
            State::Running | State::Resting => Some(Press::Pause),
            State::Paused | State::Saving => Some(Press::GoOn),
            State::Asking | State::Done | State::Stopped => None,
        }
    }

    /// Begins.
    pub fn start(&mut self, clock: &dyn Clock) -> Vec<Told> {
        let said = self.words.say("cue-if-it-hurts", &[]);
        let told = self.drive(clock, |guide, home| guide.start(home, clock));
        self.shown.say_first(said);
        told.into_iter().chain([self.stage(clock)]).collect()
    }

    /// When it must be woken next, in ms of [`crate::Now::mono_ms`].
    pub fn wake_at(&self) -> Option<u64> {
        self.guide.as_ref().and_then(Guide::wake_at)
    }

    /// It has ended; nothing more can be pressed.
    pub fn has_ended(&self) -> bool {
        self.guide.is_none()
    }

    /// The record.
    pub fn home(&self) -> &Bedside {
        &self.home
    }

    /// Gives the record back.
    pub fn into_home(self) -> Bedside {
        self.home
    }

    /// It is time: what is to be shown?
    pub fn wake(&mut self, clock: &dyn Clock) -> Vec<Told> {
        let mut told = self.drive(clock, |guide, home| guide.wake(home, clock));
        if !self.shown.is_fresh() && told.is_empty() {
            return told;
        }
        told.push(self.stage(clock));
        told
    }

    /// Something was pressed: what is to be shown?
    pub fn press(&mut self, press: &Press, clock: &dyn Clock) -> Vec<Told> {
        if let Press::Finish { effort, pain, words } = press {
            return self.finish(clock, *effort, *pain, words.clone());
        }
        if matches!(press, Press::GoOn | Press::Ready) && self.is_another_day(clock) {
            return self.end_of_the_day(clock);
        }
        // Whoever has pressed has heard enough: what comes next is not to wait for the end of a sentence.
        if !matches!(press, Press::Fewer { .. } | Press::Pace { .. } | Press::Finish { .. }) {
            self.shown.hear(Heard::Silence);
        }
        let mut told = match press {
            Press::HurtsAnswer { level, kind, place } => {
                self.hurts(clock, Felt::Level(*level, *kind), *place)
            }
            Press::Distress { seen } => self.hurts(clock, Felt::Seen(*seen), None),
            Press::Unwell => {
                let mut told = self.drive(clock, |guide, home| guide.unwell(home, clock));
                // Whatever could not be written: stop, and ring.
                told.push(self.stop());
                told
            }
            Press::Pace { pace } => self.set_pace(*pace, clock),
            press => self.drive(clock, |guide, home| simple(guide, home, clock, press)),
        };
        if let (Press::Fewer { done: Some(_) }, Some(guide)) = (press, &self.guide) {
            self.shown.correct(guide.last_set());
        }
        if !self.has_ended() {
            told.push(self.stage(clock));
        }
        told
    }

    /// From now on at another pace, and the next session too.
    fn set_pace(&mut self, pace: Pace, clock: &dyn Clock) -> Vec<Told> {
        if let Some(guide) = &mut self.guide {
            guide.set_pace(pace, clock);
        }
        let kept = self.home.change_settings(&Change { pace: Some(pace), ..Change::default() });
        kept.err().map(|error| self.problem(&error)).into_iter().collect()
    }

    /// Ends a session that nobody looks at any more, with what was done of it.
    pub fn abandon(&mut self, clock: &dyn Clock) {
        let over = |guide: &Guide| matches!(guide.state(), State::Done | State::Stopped);
        if self.guide.as_ref().is_some_and(over) {
            self.finish(clock, None, None, None);
        }
    }

    /// What is gone on with is gone on with the same day only.
    fn is_another_day(&self, clock: &dyn Clock) -> bool {
        self.known.today(clock.now().at).session_day != self.day
    }

    fn end_of_the_day(&mut self, clock: &dyn Clock) -> Vec<Told> {
        let mut told = self.drive(clock, |guide, home| guide.stop(home, clock, false));
        told.push(self.problem(&BedsideError::AnotherDay));
        told.push(self.stage(clock));
        told
    }

    fn hurts(&mut self, clock: &dyn Clock, felt: Felt, place: Option<Place>) -> Vec<Told> {
        let mut answered = None;
        let mut told = self.drive(clock, |guide, home| {
            let mut hurt = guide.answer_hurts(home, clock, felt, place)?;
            // The answer is read first: time goes on when the patient says so. Where it waits anyway,
            // there is nothing to pause.
            let _ = guide.pause(clock);
            let cues = std::mem::take(&mut hurt.cues);
            answered = Some(hurt);
            Ok(cues)
        });
        // It is not said that it goes on while it waits.
        self.shown.hush();
        if let Some(hurt) = answered {
            told.extend(hurt.unwritten.as_ref().map(|error| self.problem(error)));
            told.extend(self.pain_said(hurt.answer, hurt.stepped.as_ref()));
        }
        told
    }

    /// Drives the session on, and takes note of its cues.
    fn drive(
        &mut self,
        clock: &dyn Clock,
        act: impl FnOnce(&mut Guide, &mut Bedside) -> Result<Vec<Cue>, BedsideError>,
    ) -> Vec<Told> {
        let Some(guide) = &mut self.guide else { return vec![self.problem(&BedsideError::NotNow)] };
        self.shown.hush();
        let item = guide.item().cloned();
        match act(guide, &mut self.home) {
            Ok(cues) => {
                let speaker = Speaker::new(&self.words, Some(&self.known.plan));
                self.shown.take(&cues, guide, &speaker);
                if cues.iter().any(|cue| matches!(cue, Cue::SetUp { .. })) || guide.item() != item.as_ref() {
                    self.can_be_easier = guide.can_be_easier(&self.home, &clock.now()).unwrap_or(false);
                }
                Vec::new()
            }
            Err(error) => vec![self.problem(&error)],
        }
    }

    fn problem(&self, error: &BedsideError) -> Told {
        Told::Problem { problem: crate::say::problem(&self.words, Some(&self.known), error) }
    }

    fn stop(&self) -> Told {
        let speaker = Speaker::new(&self.words, Some(&self.known.plan));
        Told::Stop { stop: stop_view(&self.known.plan, &speaker, Tier::RingToday) }
    }

    fn pain_said(&mut self, answer: PainAnswer, stepped: Option<&Stepped>) -> Vec<Told> {
        let (id, caution) = match answer {
            PainAnswer::GoOn => ("hurts-go-on", "caution-nobody-sees-if-worried"),
            PainAnswer::Gently => ("hurts-gently", "caution-nobody-sees-if-worried"),
            PainAnswer::Easier => ("hurts-easier", "caution-nobody-sees-if-worried"),
            PainAnswer::StopExercise => ("hurts-stop-exercise", "caution-nobody-sees"),
            PainAnswer::StopToday => ("hurts-stop-today", "caution-nobody-sees"),
        };
        let (said, nobody_sees) = (self.words.say(id, &[]), self.words.say(caution, &[]));
        self.shown.hear(Heard::urgent(&said));
        let stepped = stepped.map(|change| self.home.stepped_said(&self.known.plan, change, &self.words));
        let pain = Told::Pain { pain: PainSaidView { answer, said, stepped, nobody_sees } };
        if answer == PainAnswer::StopToday { vec![pain, self.stop()] } else { vec![pain] }
    }

    fn finish(
        &mut self,
        clock: &dyn Clock,
        effort: Option<u8>,
        pain: Option<u8>,
        words: Option<String>,
    ) -> Vec<Told> {
        let over = |guide: &Guide| matches!(guide.state(), State::Done | State::Stopped);
        if [effort, pain].into_iter().flatten().any(|level| level > 10) {
            return vec![self.problem(&BedsideError::FigureOutOfRange)];
        }
        let Some(guide) = self.guide.as_mut().filter(|guide| over(guide)) else {
            return vec![self.problem(&BedsideError::NotNow)];
        };
        let words = words.map(|words| words.trim().chars().take(MOST_WORDS).collect::<String>());
        let words = words.filter(|words| !words.is_empty());
        let said_something = pain.is_some() || words.is_some();
        match guide.finish(&mut self.home, &clock.now(), effort, pain, words) {
            Ok(ending) => {
                self.guide = None;
                let id = match ending {
                    Ending::Whole => "ended-whole",
                    Ending::Part if self.shown.is_nothing_done() => "ended-none",
                    Ending::Part => "ended-part",
                    Ending::StoppedAsTold => "ended-stopped-as-told",
                };
                let nobody_sees =
                    said_something.then(|| self.words.say("caution-nobody-sees-if-worried", &[]));
                // What is asked beyond the session never stands in the way of its end.
                let offer = self.home.step_offer(&self.words, &clock.now()).ok().flatten();
                let offer = offer.filter(|_| ending != Ending::StoppedAsTold);
                let said = self.words.say(id, &[]);
                vec![Told::Ended { ended: EndedView { ending, said, nobody_sees, offer } }]
            }
            Err(error) => vec![self.problem(&error)],
        }
    }

    /// What the session shows now, for a page that begins to look on.
    pub fn look(&self, clock: &dyn Clock) -> Told {
        self.stage(clock)
    }

    /// "Ready" would begin what nobody does alone. It can be said while one is still getting ready.
    fn asks_somebody(&self, guide: &Guide) -> bool {
        guide.is_ready_welcome() && guide.state() != State::Walking && self.shown.needs_somebody()
    }

    fn stage(&self, clock: &dyn Clock) -> Told {
        let Some(guide) = &self.guide else { return self.problem(&BedsideError::NotNow) };
        let at = guide.state();
        let (item, next) = self.shown.items(guide);
        let fewer = guide.fewer_means();
        let stage = StageView {
            stage: stage_name(at),
            count: self.shown.count(),
            phase: self.shown.phase().to_string(),
            phase_left: self.shown.phase_left(),
            motion: self.shown.motion(),
            of_said: self.shown.of_said().to_string(),
            left_said: {
                let minutes = guide.left_ms(&clock.now()).div_ceil(60_000);
                self.words.say("stage-minutes-left", &[("n", minutes.into())])
            },
            tally: self.shown.tally().to_vec(),
            tally_said: self.shown.tally_said(&self.words),
            item,
            next,
            waits_for: match at {
                State::Walking => Some(WaitsFor::Steps),
                State::Prepare => Some(WaitsFor::Ready),
                _ => None,
            },
            can_ready: guide.is_ready_welcome(),
            asks_somebody: self.asks_somebody(guide),
            main_press: self.main_press(),
            helper: guide.by() == By::Helper,
            can_step: guide.waits_for_step(),
            pace: guide.pace(),
            can_pause: matches!(at, State::Running | State::Resting),
            can_go_on: matches!(at, State::Paused | State::Saving),
            can_go_on_now: at == State::Resting && !guide.is_ready_welcome(),
            can_hurts: can_go(at),
            can_fewer: fewer.is_some(),
            fewer_most: match fewer {
                Some(Fewer::Corrects { most }) => Some(most),
                _ => None,
            },
            can_easier: self.can_be_easier && can_go(at),
            can_leave: can_go(at),
            said: self.shown.said().to_vec(),
            asks_effort: self.shown.asks_effort() && at == State::Done,
            as_told: guide.is_stopped_as_told(),
        };
        Told::Stage { stage: Box::new(stage) }
    }
}

fn simple(
    guide: &mut Guide,
    home: &mut Bedside,
    clock: &dyn Clock,
    press: &Press,
) -> Result<Vec<Cue>, BedsideError> {
    match press {
        Press::Ready => guide.ready(home, clock),
        Press::Pause => guide.pause(clock).map(|()| Vec::new()),
        Press::GoOn if guide.is_unsaved() => guide.save_again(home, clock),
        Press::GoOn => guide.go_on(home, clock),
        Press::GoOnNow => guide.go_on_now(home, clock),
        Press::Hurts => guide.hurts(clock).map(|()| Vec::new()),
        Press::Fewer { done } => guide.fewer(home, clock, *done),
        Press::Easier => guide.easier(home, clock),
        Press::Leave => guide.leave(home, clock, LeaveReason::Chose),
        Press::Stop => guide.stop(home, clock, false),
        Press::StepOn => guide.step_on(home, clock),
        Press::Pace { .. }
        | Press::Distress { .. }
        | Press::HurtsAnswer { .. }
        | Press::Unwell
        | Press::Finish { .. } => Err(BedsideError::NotNow),
    }
}

/// Whether there is something under way that can hurt, be eased or be left.
fn can_go(state: State) -> bool {
    !matches!(state, State::Done | State::Stopped | State::Saving | State::Asking)
}

/// A set that could not be written stands like a pause: going on tries again.
fn stage_name(state: State) -> StageName {
    match state {
        State::Prepare => StageName::Prepare,
        State::Running => StageName::Running,
        State::Resting => StageName::Resting,
        State::Walking => StageName::Walking,
        State::Paused | State::Saving => StageName::Paused,
        State::Asking => StageName::Asking,
        State::Done => StageName::Done,
        State::Stopped => StageName::Stopped,
    }
}
