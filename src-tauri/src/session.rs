//! A session in the terminal, in real time: counts and phases as lines, the space bar to pause.

use std::time::Duration;

use chrono::NaiveDate;
use sendaluna_bedside::begin::Questions;
use sendaluna_bedside::guide::Guide;
use sendaluna_bedside::home::Known;
use sendaluna_bedside::say::Speaker;
use sendaluna_bedside::types::{
    By, Cue, Ending, ItemId, LeaveReason, PainAnswer, PainKind, Place, Position, SignId, State, Tier,
};
use sendaluna_bedside::{Bedside, BedsideError, Clock};
use serde_json::{Value, json};

use crate::answer::{Desk, Trouble, now, print};
use crate::hands::{Hands, Press};
use crate::questions::{ask, ask_for, is_none, is_yes, zero_to_ten};
use crate::today::{contacts_text, item_id};

/// What was asked for on the command line.
pub struct Wishes {
    /// Only this item.
    pub only: Option<String>,
    /// Warning signs.
    pub signs: Option<Vec<String>>,
    /// Pain at rest.
    pub pain: Option<u8>,
    /// Today's date.
    pub today: Option<NaiveDate>,
    /// Go on with today's open session.
    pub go_on: bool,
    /// Begin anew.
    pub anew: bool,
    /// A helper leads.
    pub helper: bool,
}

/// `session`.
pub fn session(desk: &Desk, wishes: &Wishes) -> Result<u8, Trouble> {
    let by = if wishes.helper { By::Helper } else { By::Patient };
    let only = wishes.only.as_deref().map(item_id).transpose()?;
    let mut home = desk.open()?;
    let known = home.known()?;
    if let Some(id) = &only {
        // Said before any question is asked, so that nobody answers questions for nothing.
        home.check_item(id, &now(desk))?;
    }
    let before = home.before(only.as_ref(), &now(desk))?;
    if let Some(day) = before.confirm_date {
        confirm_date(desk, &mut home, day, wishes.today)?;
    }
    if let Some(code) = ask_before(desk, &mut home, &known, before.questions, wishes, by)? {
        return Ok(code);
    }
    let goes_on = before.open_session.is_some() && only.is_none() && wants_to_go_on(desk, wishes)?;
    let guide =
        if goes_on { home.go_on(by, &now(desk))? } else { home.begin(only.as_ref(), by, &now(desk))? };
    Led { desk, known: &known, home, guide, hands: Hands::new(), json: desk.json, began: now(desk).mono_ms }
        .lead()
}

fn confirm_date(
    desk: &Desk,
    home: &mut Bedside,
    day: NaiveDate,
    said: Option<NaiveDate>,
) -> Result<(), Trouble> {
    let day_said = desk.words.day_and_year(day);
    let confirmed = match said {
        Some(said) => said,
        None => {
            let question = desk.say("ask-date", &[("day", day_said.into())]);
            let right = ask_for(desk, &question, "--today", |answer| is_yes(desk, answer))?;
            if right { day } else { NaiveDate::MIN }
        }
    };
    Ok(home.confirm_date(confirmed, &now(desk))?)
}

/// The questions before a session. An exit code if an answer says: no session.
fn ask_before(
    desk: &Desk,
    home: &mut Bedside,
    known: &Known,
    questions: Questions,
    wishes: &Wishes,
    by: By,
) -> Result<Option<u8>, Trouble> {
    if questions == Questions::None && wishes.signs.is_none() && wishes.pain.is_none() {
        return Ok(None);
    }
    let signs = match &wishes.signs {
        Some(signs) => chosen_signs(signs)?,
        None => ask_signs(desk, home, questions)?,
    };
    let gravest = home.answer_signs(&signs, by, &now(desk))?;
    if let Some(tier @ (Tier::Emergency | Tier::RingToday)) = gravest {
        stop_screen(desk, known, home, tier)?;
        return Ok(Some(1));
    }
    if gravest == Some(Tier::Note) {
        say(desk, "signs-noted");
    }
    if questions == Questions::SignsAndPain || wishes.pain.is_some() {
        let level = match wishes.pain {
            Some(level) => level,
            None => ask_for(desk, &desk.say("ask-pain-now", &[]), "--pain", zero_to_ten)?,
        };
        if home.answer_pain_before(level, by, &now(desk))? == PainAnswer::StopToday {
            stop_screen(desk, known, home, Tier::RingToday)?;
            return Ok(Some(1));
        }
    }
    Ok(None)
}

fn ask_signs(desk: &Desk, home: &Bedside, questions: Questions) -> Result<Vec<SignId>, Trouble> {
    let contacts = home.contacts(&desk.words)?;
    let mut question =
        vec![desk.say(if questions == Questions::OneTap { "ask-signs-again" } else { "ask-signs" }, &[])];
    question.extend(contacts.signs.iter().enumerate().map(|(i, sign)| format!("  {}. {}", i + 1, sign.text)));
    question.push(desk.say("ask-signs-how", &[]));
    let read = |answer: &str| -> Option<Vec<SignId>> {
        if answer.is_empty() || is_yes(desk, answer) == Some(false) || is_none(desk, answer) {
            return Some(Vec::new());
        }
        let numbers = answer.split([' ', ',']).filter(|word| !word.is_empty());
        numbers
            .map(|word| word.parse::<usize>().ok()?.checked_sub(1))
            .map(|i| i.and_then(|i| contacts.signs.get(i)).map(|sign| sign.sign.clone()))
            .collect()
    };
    ask_for(desk, &question.join("\n"), "--signs", read)
}

fn chosen_signs(signs: &[String]) -> Result<Vec<SignId>, Trouble> {
    let wanted = signs.iter().filter(|sign| *sign != "none");
    let id =
        |sign: &String| SignId::new(sign.as_str()).map_err(|_| BedsideError::NoSuchItem(sign.clone()).into());
    wanted.map(id).collect()
}

fn wants_to_go_on(desk: &Desk, wishes: &Wishes) -> Result<bool, Trouble> {
    if wishes.go_on || wishes.anew {
        return Ok(wishes.go_on);
    }
    ask_for(desk, &desk.say("ask-go-on", &[]), "--go-on", |answer| {
        if answer.is_empty() { Some(true) } else { is_yes(desk, answer) }
    })
}

/// The warning stop.
fn stop_screen(desk: &Desk, known: &Known, home: &Bedside, tier: Tier) -> Result<(), Trouble> {
    let clinic = &known.plan.doc().clinic;
    let phones = [
        ("clinic", clinic.name.as_str().into()),
        ("phone", clinic.phone.as_str().into()),
        ("night", clinic.out_of_hours_phone.as_str().into()),
        ("emergency", clinic.emergency_phone.as_str().into()),
    ];
    let said = desk.say(if tier == Tier::Emergency { "stop-emergency" } else { "stop-ring-today" }, &phones);
    let advice = Speaker::new(&desk.words, Some(&known.plan)).text(&clinic.emergency_advice);
    let mut lines = vec![said];
    if tier == Tier::Emergency {
        lines.push(advice);
    }
    lines.push(desk.say("caution-nobody-sees", &[]));
    lines.push(contacts_text(desk, &home.contacts(&desk.words)?));
    lines.push(desk.say("stop-when-spoken", &[]));
    let json = json!({ "stopped": true, "tier": tier, "said": lines[0], "nobody_sees": desk.say("caution-nobody-sees", &[]) });
    desk.answer(&lines.join("\n"), &json);
    Ok(())
}

fn say(desk: &Desk, id: &str) {
    if !desk.json {
        print(&desk.say(id, &[]));
    }
}

/// A session being led.
struct Led<'a> {
    desk: &'a Desk,
    known: &'a Known,
    home: Bedside,
    guide: Guide,
    hands: Hands,
    json: bool,
    began: u64,
}

impl Led<'_> {
    fn lead(mut self) -> Result<u8, Trouble> {
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
        *press == Press::Ready && !matches!(self.guide.state(), State::Prepare | State::Walking)
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
            Press::Ready | Press::Space | Press::Now if matches!(state, State::Prepare | State::Walking) => {
                self.guide.ready(home, clock)
            }
            Press::Space if matches!(state, State::Paused) => self.guide.go_on(home, clock),
            Press::Space => self.guide.pause(clock).map(|()| {
                say(self.desk, "session-paused");
                Vec::new()
            }),
            Press::Now => self.guide.go_on_now(home, clock),
            Press::Ready => Ok(Vec::new()),
            Press::Hurts(words) => return self.hurts(&words),
            Press::Fewer(done) => return self.fewer(done),
            Press::Easier => self.guide.easier(home, clock),
            Press::Leave => self.guide.leave(home, clock, LeaveReason::Chose),
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
                let (happened, _) = self.speaker().error(&error);
                self.line(&happened);
            }
            Err(error) => return Err(error.into()),
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
        let answered = self.guide.answer_hurts(&mut self.home, &self.desk.clock, level, kind, place);
        match answered {
            Ok((answer, cues)) => {
                self.pain_answer(answer)?;
                self.show(&cues);
                Ok(())
            }
            Err(error) => self.show_or_say(Err(error)),
        }
    }

    fn pain_answer(&self, answer: PainAnswer) -> Result<(), Trouble> {
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
        let said = format!("{} {}", self.desk.say(id, &[]), self.desk.say(caution, &[]));
        if self.json {
            print(&json!({ "pain_answer": answer, "said": said }).to_string());
            return Ok(());
        }
        self.line(&said);
        if answer == PainAnswer::StopToday {
            stop_screen(self.desk, self.known, &self.home, Tier::RingToday)?;
        }
        Ok(())
    }

    fn fewer(&mut self, done: Option<u16>) -> Result<(), Trouble> {
        let between_sets = matches!(self.guide.state(), State::Resting | State::Prepare | State::Walking);
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
        if self.hands.is_terminal() {
            return ask(self.desk, &question, "").ok().and_then(|answer| read(&answer));
        }
        if !self.json {
            print(&question);
        }
        self.hands.line().and_then(|line| read(line.trim()))
    }

    fn show(&self, cues: &[Cue]) {
        cues.iter().for_each(|cue| self.show_one(cue));
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
        let said = speaker.cue(cue, &name);
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
    fn set_up(&self, id: &ItemId, movement: &sendaluna_bedside::types::MovementId) {
        let speaker = self.speaker();
        let (library, plan) = (self.home.library(), &self.known.plan);
        let stands = matches!(self.guide.position_of(id), Some(Position::Standing | Position::BentOver));
        let mut lines = Vec::new();
        if stands {
            lines.push(self.desk.say("cue-hand-on-rail", &[]));
        }
        lines.push(speaker.set_up(library, plan, movement));
        lines.push(speaker.how(library, plan, movement));
        lines.push(speaker.faults(library, plan, movement));
        if let Some(item) = plan.item(id) {
            if item.beside_you {
                lines.push(self.desk.say("cue-beside-you", &[]));
            }
            lines.extend(item.note.as_ref().map(|note| speaker.text(note)));
        }
        lines.iter().for_each(|line| self.line(&format!("  {line}")));
    }

    /// Prints lines; in raw mode a line break alone does not return to the margin.
    fn line(&self, text: &str) {
        if self.json {
            return;
        }
        if self.hands.is_terminal() {
            print(&format!("{}\r", text.replace('\n', "\r\n")))
        } else {
            print(text)
        }
    }

    fn finish(mut self) -> Result<u8, Trouble> {
        let strengthens = self.guide.items().any(|id| {
            let item = self.known.plan.item(id);
            let found = item.and_then(|item| self.home.library().find(&self.known.plan, &item.movement));
            found.is_some_and(|found| found.movement().strengthens)
        });
        let effort = if strengthens { self.ask("ask-effort", zero_to_ten) } else { None };
        let pain = self.ask("ask-pain-after", zero_to_ten);
        let words = self.ask("ask-words", |line| Some(line.to_string()).filter(|line| !line.is_empty()));
        let said_something = pain.is_some() || words.is_some();
        let Self { desk, mut home, guide, json, .. } = self;
        let ending = guide.finish(&mut home, &now(desk), effort, pain, words)?;
        let id = match ending {
            Ending::Whole => "ended-whole",
            Ending::Part => "ended-part",
            Ending::StoppedAsTold => "ended-stopped-as-told",
        };
        let mut said = desk.say(id, &[]);
        if said_something {
            said = format!("{said}\n{}", desk.say("caution-nobody-sees-if-worried", &[]));
        }
        if json {
            print(&json!({ "ending": ending, "said": said }).to_string())
        } else {
            print(&said)
        }
        Ok(u8::from(ending == Ending::StoppedAsTold))
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
