//! Leading a session in the terminal: cues as lines, presses as they come.

use std::collections::BTreeMap;
use std::time::Duration;

use sendaluna_bedside::guide::{Felt, Guide};
use sendaluna_bedside::home::Known;
use sendaluna_bedside::say;
use sendaluna_bedside::step::Way;
use sendaluna_bedside::types::Speaker;
use sendaluna_bedside::types::{
    Change, Cue, Ending, ItemId, LeaveReason, MovementId, PainAnswer, PainKind, Place, Position, Prop, State,
    Tier,
};
use sendaluna_bedside::{Bedside, BedsideError, Clock};
use serde_json::{Value, json};

use crate::answer::{Desk, Trouble, now, print};
use crate::hands::{Hands, Press};
use crate::questions::{ask, is_yes, zero_to_ten};
use crate::session::stop_screen;

/// A session being led.
pub struct Led<'a> {
    desk: &'a Desk,
    known: &'a Known,
    home: Bedside,
    guide: Guide,
    hands: Hands,
    /// How much of each, in words.
    doses: BTreeMap<ItemId, String>,
    json: bool,
    began: u64,
}

impl<'a> Led<'a> {
    /// A session that is about to be led.
    pub fn new(desk: &'a Desk, known: &'a Known, home: Bedside, guide: Guide) -> Result<Self, Trouble> {
        let today = home.day(&desk.words, &now(desk))?;
        let doses = today.due.into_iter().map(|item| (item.item, item.dose)).collect();
        let (hands, json, began) = (Hands::new(), desk.json, now(desk).mono_ms);
        Ok(Self { desk, known, home, guide, hands, doses, json, began })
    }

    /// Leads it to its end. Returns the exit code.
    pub fn lead(mut self) -> Result<u8, Trouble> {
        self.introduce();
        let cues = self.guide.start(&mut self.home, &self.desk.clock)?;
        self.show(&cues);
        let mut kept: Option<Press> = None;
        while !matches!(self.guide.state(), State::Done | State::Stopped) {
            let press = kept.take().or_else(|| self.hands.wait(self.time_to_wake()));
            if let Some(press) = press {
                if self.must_wait(&press) {
                    // A script's "ready" comes before it is asked for: it is kept, and time goes on.
                    std::thread::sleep(self.time_to_wake());
                    kept = Some(press);
                } else {
                    self.press(press)?;
                }
            } else if self.hands.is_gone() && self.guide.wake_at().is_none() {
                let cues = self.guide.stop(&mut self.home, &self.desk.clock, false)?;
                self.show(&cues);
            }
            let cues = self.guide.wake(&mut self.home, &self.desk.clock)?;
            self.show(&cues);
        }
        self.hands.rest();
        self.finish()
    }

    fn must_wait(&self, press: &Press) -> bool {
        *press == Press::Ready && !self.guide.is_ready_welcome() && self.guide.wake_at().is_some()
    }

    /// How long until the next deadline; while time stands still, a moment.
    fn time_to_wake(&self) -> Duration {
        let now = self.desk.clock.now().mono_ms;
        let wait_ms = self.guide.wake_at().map_or(200, |at| at.saturating_sub(now));
        Duration::from_millis(wait_ms)
    }

    fn speaker(&self) -> Speaker<'_> {
        Speaker::new(&self.desk.words, Some(&self.known.plan))
    }

    fn introduce(&self) {
        if self.json {
            return;
        }
        let minutes = self.guide.left_ms(&self.desk.clock.now()).div_ceil(60_000);
        let exercises = self.guide.items().count();
        let mut lines = vec![
            self.desk.say("day-now", &[("exercises", exercises.into()), ("minutes", minutes.into())]),
            self.desk.say("cue-if-it-hurts", &[]),
        ];
        if self.hands.is_terminal() {
            lines.push(self.desk.say("session-keys", &[]));
        }
        self.line(&lines.join("\n"));
    }

    fn press(&mut self, press: Press) -> Result<(), Trouble> {
        let (home, clock) = (&mut self.home, &self.desk.clock);
        let state = self.guide.state();
        let result = match press {
            Press::Ready | Press::Space | Press::Now if self.guide.is_ready_welcome() => {
                self.guide.ready(home, clock)
            }
            Press::Space | Press::Ready if matches!(state, State::Paused) => self.guide.go_on(home, clock),
            Press::Space => return self.pause(),
            Press::Now => self.guide.go_on_now(home, clock),
            Press::Ready => Ok(Vec::new()),
            Press::Hurts(words) => return self.hurts(&words),
            Press::Fewer(done) => return self.fewer(done),
            Press::Easier => self.guide.easier(home, clock),
            Press::Leave => self.guide.leave(home, clock, LeaveReason::Chose),
            Press::Unwell => return self.unwell(),
            Press::Stop => self.guide.stop(home, clock, false),
        };
        self.show_or_say(result)
    }

    /// What does not fit the moment is said, and the session goes on.
    fn show_or_say(&mut self, result: Result<Vec<Cue>, BedsideError>) -> Result<(), Trouble> {
        match result {
            Ok(cues) => self.show(&cues),
            Err(
                error @ (BedsideError::NotNow | BedsideError::NoEasierWay | BedsideError::FigureOutOfRange),
            ) => {
                let (happened, _) = say::error(&self.speaker(), &error);
                self.line(&happened);
            }
            Err(error) => return Err(error.into()),
        }
        Ok(())
    }

    fn pause(&mut self) -> Result<(), Trouble> {
        let paused = self.guide.pause(&self.desk.clock);
        if paused.is_ok() {
            self.line(&self.desk.say("session-paused", &[]));
        }
        self.show_or_say(paused.map(|()| Vec::new()))
    }

    fn unwell(&mut self) -> Result<(), Trouble> {
        let result = self.guide.unwell(&mut self.home, &self.desk.clock);
        let stopped = result.is_ok();
        self.show_or_say(result)?;
        if stopped {
            self.hands.rest();
            stop_screen(self.desk, self.known, &self.home, Tier::RingToday)?;
        }
        Ok(())
    }

    fn hurts(&mut self, words: &[String]) -> Result<(), Trouble> {
        if let Err(error) = self.guide.hurts(&self.desk.clock) {
            return self.show_or_say(Err(error));
        }
        self.hands.rest();
        let said = |i: usize| words.get(i).map(String::as_str);
        let level = match said(0).and_then(zero_to_ten) {
            Some(level) => level,
            None => self.ask("ask-pain-how-much", zero_to_ten).unwrap_or(10),
        };
        let kind = match said(1).and_then(pain_kind) {
            Some(kind) => kind,
            None => self.ask("ask-pain-kind", pain_kind).unwrap_or(PainKind::Sharp),
        };
        let place = match said(2) {
            Some(word) => place(word),
            None => self.ask("ask-pain-place", place),
        };
        self.hands.resume();
        let answered =
            self.guide.answer_hurts(&mut self.home, &self.desk.clock, Felt::Level(level, kind), place);
        match answered {
            Ok(answered) => {
                self.pain_answer(answered.answer, answered.stepped.as_ref())?;
                self.show(&answered.cues);
                answered.unwritten.map_or(Ok(()), |error| Err(error.into()))
            }
            Err(error) => self.show_or_say(Err(error)),
        }
    }

    fn pain_answer(&self, answer: PainAnswer, stepped: Option<&Change>) -> Result<(), Trouble> {
        let id = match answer {
            PainAnswer::GoOn => "hurts-go-on",
            PainAnswer::Gently => "hurts-gently",
            PainAnswer::Easier => "hurts-easier",
            PainAnswer::StopExercise => "hurts-stop-exercise",
            PainAnswer::StopToday => "hurts-stop-today",
        };
        let caution = match answer {
            PainAnswer::GoOn | PainAnswer::Gently | PainAnswer::Easier => "caution-nobody-sees-if-worried",
            PainAnswer::StopExercise | PainAnswer::StopToday => "caution-nobody-sees",
        };
        let smaller =
            stepped.map(|change| self.home.stepped_said(&self.known.plan, change, &self.desk.words));
        let said = [Some(self.desk.say(id, &[])), smaller, Some(self.desk.say(caution, &[]))];
        let said = said.into_iter().flatten().collect::<Vec<_>>().join(" ");
        if self.json {
            let contacts = (answer == PainAnswer::StopToday).then(|| self.home.contacts(&self.desk.words));
            let contacts = contacts.transpose()?;
            print(&json!({ "pain_answer": answer, "said": said, "contacts": contacts }).to_string());
            return Ok(());
        }
        self.line(&said);
        if answer == PainAnswer::StopToday {
            self.hands.rest();
            stop_screen(self.desk, self.known, &self.home, Tier::RingToday)?;
        }
        Ok(())
    }

    fn fewer(&mut self, done: Option<u16>) -> Result<(), Trouble> {
        let between_sets = matches!(self.guide.state(), State::Resting | State::Prepare);
        let done = match (between_sets, done) {
            (false, _) => None,
            (true, Some(done)) => Some(done),
            (true, None) => {
                self.hands.rest();
                let done = self.ask("ask-how-many", |answer| answer.parse().ok());
                self.hands.resume();
                let Some(done) = done else { return Ok(()) };
                Some(done)
            }
        };
        let result = self.guide.fewer(&mut self.home, &self.desk.clock, done);
        self.show_or_say(result)
    }

    /// Asks during a session: a line at the terminal, or the next of the script.
    fn ask<T>(&mut self, id: &str, read: impl Fn(&str) -> Option<T>) -> Option<T> {
        let question = self.desk.say(id, &[]);
        self.ask_said(&question, read)
    }

    fn ask_said<T>(&mut self, question: &str, read: impl Fn(&str) -> Option<T>) -> Option<T> {
        if self.hands.is_terminal() {
            return ask(self.desk, question, "").ok().and_then(|answer| read(&answer));
        }
        if !self.json {
            print(question);
        }
        self.hands.line().and_then(|line| read(line.trim()))
    }

    fn show(&self, cues: &[Cue]) {
        for cue in cues {
            self.show_one(cue);
        }
    }

    fn show_one(&self, cue: &Cue) {
        let speaker = self.speaker();
        let item = match cue {
            Cue::SetUp { set, .. } | Cue::AwaitReady { set } | Cue::ChangeSide { set, .. } => Some(&set.item),
            _ => self.guide.item(),
        };
        let movement = item.and_then(|id| self.known.plan.item(id)).map(|item| {
            let easier = item.easier.as_ref().filter(|_| self.guide.is_easier(&item.id));
            easier.map_or(&item.movement, |easier| &easier.movement)
        });
        let name =
            movement.map_or_else(String::new, |id| speaker.name(self.home.library(), &self.known.plan, id));
        let ended_early = *cue == Cue::End && self.guide.state() == State::Stopped;
        // A rest counted down would sound like the count-in that follows it.
        let rests = matches!(cue, Cue::Tick { .. }) && self.guide.state() == State::Resting;
        let said = speaker.cue(cue, &name).filter(|_| !ended_early && !rests);
        if self.json {
            let mut line = json!(cue);
            line["at_ms"] = json!(self.desk.clock.now().mono_ms.saturating_sub(self.began));
            line["said"] = said.map_or(Value::Null, Value::from);
            print(&line.to_string());
            return;
        }
        if let Some(said) = said {
            self.line(&said);
        }
        if let (Cue::SetUp { set, .. }, Some(movement)) = (cue, movement) {
            self.set_up(&set.item, movement);
        }
    }

    /// How to get ready and how to do it; standing work first says where the hand goes.
    fn set_up(&self, id: &ItemId, movement: &MovementId) {
        let speaker = self.speaker();
        let (library, plan) = (self.home.library(), &self.known.plan);
        let found = library.find(plan, movement);
        let rail = found.is_some_and(|found| found.movement().props.contains(&Prop::Rail));
        let stands = matches!(self.guide.position_of(id), Some(Position::Standing | Position::BentOver));
        let mut lines = Vec::new();
        if stands && rail {
            lines.push(self.desk.say("cue-hand-on-rail", &[]));
        }
        lines.push(speaker.set_up(library, plan, movement));
        lines.push(speaker.how(library, plan, movement));
        lines.push(speaker.faults(library, plan, movement));
        lines.extend(self.doses.get(id).cloned());
        if let Some(item) = plan.item(id) {
            if item.beside_you {
                lines.push(self.desk.say("cue-beside-you", &[]));
            }
            lines.extend(item.note.as_ref().map(|note| speaker.text(note)));
        }
        for line in lines {
            self.line(&format!("  {line}"));
        }
    }

    /// Prints lines; in raw mode a line break alone does not return to the margin.
    fn line(&self, text: &str) {
        if self.json {
            return;
        }
        if self.hands.is_terminal() {
            print(&format!("{}\r", text.replace('\n', "\r\n")));
        } else {
            print(text);
        }
    }

    fn asks_effort(&self) -> bool {
        self.guide.items().any(|item| self.home.asks_effort(&self.known.plan, item))
    }

    /// What the patient says of it. After a stop nobody is asked how hard it was, and the last line
    /// is whom to ring.
    fn finish(mut self) -> Result<u8, Trouble> {
        let stopped = self.guide.state() == State::Stopped;
        let told = self.guide.is_stopped_as_told();
        let effort = if self.asks_effort() && !stopped { self.ask("ask-effort", zero_to_ten) } else { None };
        let pain = if told { None } else { self.ask("ask-pain-after", zero_to_ten) };
        let line = |line: &str| Some(line.to_string()).filter(|line| !line.is_empty());
        let words = if told { None } else { self.ask("ask-words", line) };
        let said_something = pain.is_some() || words.is_some();
        let clinic = &self.known.plan.doc().clinic;
        let ring = [("clinic", clinic.name.clone().into()), ("phone", clinic.phone.clone().into())];
        let ring = self.desk.say("ring-clinic", &ring);
        let ending = self.guide.finish(&mut self.home, &now(self.desk), effort, pain, words)?;
        let id = match ending {
            Ending::Whole => "ended-whole",
            Ending::Part => "ended-part",
            Ending::StoppedAsTold => "ended-stopped-as-told",
        };
        let mut said = self.desk.say(id, &[]);
        if said_something {
            said = format!("{said}\n{}", self.desk.say("caution-nobody-sees-if-worried", &[]));
        }
        if told {
            said = format!("{said}\n{ring}");
        }
        if self.json {
            print(&json!({ "ending": ending, "said": said }).to_string());
        } else {
            print(&said);
        }
        if ending != Ending::StoppedAsTold {
            self.offer_step()?;
        }
        Ok(u8::from(ending == Ending::StoppedAsTold))
    }

    /// Asks once about one up, if the clinic's rule allows one. Without an answer nothing changes.
    fn offer_step(&mut self) -> Result<(), Trouble> {
        let desk = self.desk;
        let Some(offer) = self.home.step_offer(&desk.words, &now(desk))? else { return Ok(()) };
        let question = desk.say("ask-step", &[("offer", offer.said.as_str().into())]);
        if self.json {
            print(&json!({ "offer": offer }).to_string());
        }
        let Some(yes) = self.ask_said(&question, |answer| is_yes(desk, answer)) else { return Ok(()) };
        let way = if yes { Way::Up } else { Way::Stay };
        let written = self.home.step(&offer.item, way, self.guide.by(), &desk.words, &now(desk))?;
        if self.json {
            print(&json!({ "yes": yes, "said": written.said }).to_string());
        }
        self.line(&written.said);
        Ok(())
    }
}

fn pain_kind(word: &str) -> Option<PainKind> {
    match word.to_lowercase().as_str() {
        "1" | "stretching" => Some(PainKind::Stretching),
        "2" | "sharp" => Some(PainKind::Sharp),
        _ => None,
    }
}

fn place(word: &str) -> Option<Place> {
    match word.to_lowercase().as_str() {
        "1" | "hip" => Some(Place::Hip),
        "2" | "thigh" => Some(Place::Thigh),
        "3" | "knee" => Some(Place::Knee),
        "4" | "calf" => Some(Place::Calf),
        "5" | "foot" => Some(Place::Foot),
        "6" | "back" => Some(Place::Back),
        "7" | "shoulder" => Some(Place::Shoulder),
        "8" | "elsewhere" => Some(Place::Elsewhere),
        _ => None,
    }
}
