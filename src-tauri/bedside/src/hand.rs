//! What was done without the program, recorded from memory. Recording never refuses: what was done
//! against a gate is written down and advises to ring.

use chrono::NaiveDate;
use sendaluna_core::gate::{Gate, GateDay};
use sendaluna_core::ids::{CareId, ItemId};
use sendaluna_core::record::{Body, BreakWhy, By, Care, SetBackKind};
use sendaluna_words::Words;

use crate::clock::Now;
use crate::error::BedsideError;
use crate::home::{Bedside, Known};
use crate::view::window::WrittenView;

/// More sets than this in a day are a slip of the finger.
const MOST_SETS: u8 = 20;
/// More repetitions, breaths, minutes or steps than this in a set are, too.
const MOST_EACH: u16 = 2_000;

/// A break may last so long; longer is a matter for the clinic: common practice, no source.
const LONGEST_BREAK_DAYS: i64 = 183;

/// A break.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct Break {
    /// First day.
    pub from: NaiveDate,
    /// Last day, included.
    pub through: NaiveDate,
    /// Who wants it.
    pub why: BreakWhy,
    /// Why, in the patient's words.
    pub words: Option<String>,
}

/// Which day something was done.
#[derive(Debug, Clone, Copy, PartialEq, Eq)]
pub enum WhichDay {
    /// Today.
    Today,
    /// Yesterday.
    Yesterday,
}

/// What was written down.
#[derive(Debug, Clone, PartialEq)]
pub struct Written {
    /// For which day.
    pub day: NaiveDate,
    /// It was not allowed on that day: ring the clinic.
    pub against: Option<Gate>,
}

impl Written {
    /// In words: with whom to ring, if it was done against a gate.
    pub fn view(&self, words: &Words) -> WrittenView {
        let mut said = vec![words.say("did-written", &[("day", words.day(self.day).into())])];
        let against = self.against.is_some();
        if against {
            said.extend(["did-against-gate", "caution-nobody-sees"].map(|id| words.say(id, &[])));
        }
        WrittenView { said: said.join("\n"), against }
    }
}

impl Bedside {
    /// Records an item done from memory.
    pub fn did(
        &mut self,
        id: &ItemId,
        day: WhichDay,
        sets: u8,
        each: u16,
        by: By,
        now: &Now,
    ) -> Result<Written, BedsideError> {
        if !(1..=MOST_SETS).contains(&sets) || each > MOST_EACH {
            return Err(BedsideError::FigureOutOfRange);
        }
        let known = self.known()?;
        let item = known.item(id)?;
        let day = date_of(&known, day, now);
        let set_back = known.state.set_back_since(known.standing.set_backs_released_until);
        let on = day.min(known.today(now.at).gate_day);
        let at = GateDay::held(on, known.plan.head().review_by, set_back);
        let due = self.due_day(&known, now).items.into_iter().find(|due| due.item == *id);
        let dose = due.map_or_else(|| known.dose_apart(item, now), |due| due.dose);
        let gate = known.gates(self.library()).item(item, &dose, &at);
        let against_gate = !gate.is_open();
        let mut bodies = known.after_break(now);
        bodies.push((by, Body::DoneByHand { item: id.clone(), day, sets, each, against_gate }));
        self.record_each(now, bodies)?;
        Ok(Written { day, against: Some(gate).filter(|_| against_gate) })
    }

    /// The date of one of the days that can be written down.
    pub fn date_of(&self, day: WhichDay, now: &Now) -> Result<NaiveDate, BedsideError> {
        Ok(date_of(&self.known()?, day, now))
    }

    /// Records care done.
    pub fn did_care(
        &mut self,
        id: &CareId,
        day: WhichDay,
        by: By,
        now: &Now,
    ) -> Result<Written, BedsideError> {
        let known = self.known()?;
        if !known.plan.doc().care.iter().any(|care| care.id == *id) {
            return Err(BedsideError::NoSuchItem(id.to_string()));
        }
        let day = date_of(&known, day, now);
        self.record(now, by, Body::CareDone { care: Care { care: id.clone(), day } })?;
        Ok(Written { day, against: None })
    }

    /// "My clinic told me to stop this." The patient may always tighten.
    pub fn tighten(&mut self, id: &ItemId, by: By, now: &Now) -> Result<(), BedsideError> {
        self.known()?.item(id)?;
        self.record(now, by, Body::Tightened { item: id.clone() })?;
        Ok(())
    }

    /// Takes a tightening of one's own back.
    pub fn end_tightening(&mut self, id: &ItemId, by: By, now: &Now) -> Result<(), BedsideError> {
        self.known()?.item(id)?;
        self.record(now, by, Body::TighteningEnded { item: id.clone() })?;
        Ok(())
    }

    /// "My clinic told me to stop this", or that taken back.
    pub fn stop_item(
        &mut self,
        id: &ItemId,
        undo: bool,
        by: By,
        words: &Words,
        now: &Now,
    ) -> Result<WrittenView, BedsideError> {
        if undo {
            self.end_tightening(id, by, now)?;
        } else {
            self.tighten(id, by, now)?;
        }
        let said = words.say(if undo { "tighten-ended" } else { "tighten-done" }, &[]);
        Ok(WrittenView { said, against: false })
    }

    /// Declares a break, ahead or afterwards. Breaks of one's own are told both ways in the report; nothing
    /// is due in those that the clinic ordered, and on days in hospital.
    pub fn declare_break(&mut self, rest: Break, by: By, now: &Now) -> Result<(), BedsideError> {
        self.known()?;
        let Break { from, through, why, words } = rest;
        let days = (through - from).num_days();
        if !(0..LONGEST_BREAK_DAYS).contains(&days) {
            return Err(BedsideError::BreakDays);
        }
        let words = words.map(|words| words.trim().to_string()).filter(|words| !words.is_empty());
        self.record(now, by, Body::BreakDeclared { from, through, why, words })
    }

    /// The same, and what it means.
    pub fn break_view(
        &mut self,
        rest: Break,
        by: By,
        words: &Words,
        now: &Now,
    ) -> Result<WrittenView, BedsideError> {
        let days = [("from", words.day(rest.from).into()), ("through", words.day(rest.through).into())];
        let said = words.say("break-written", &days);
        self.declare_break(rest, by, now)?;
        Ok(WrittenView { said, against: false })
    }

    /// Exercising again from today on, before the last day of a break.
    pub fn end_break(&mut self, by: By, now: &Now) -> Result<(), BedsideError> {
        let known = self.known()?;
        let day = known.today(now.at).session_day;
        if known.state.break_on(day).is_none() {
            return Err(BedsideError::NoBreak);
        }
        self.record(now, by, Body::BreakEnded { day })
    }

    /// The same, and what it means.
    pub fn end_break_view(&mut self, by: By, words: &Words, now: &Now) -> Result<WrittenView, BedsideError> {
        self.end_break(by, now)?;
        Ok(WrittenView { said: words.say("break-ended", &[]), against: false })
    }

    /// A fall or a re-admission, and what to do now.
    pub fn set_back_view(
        &mut self,
        what: SetBackKind,
        by: By,
        words: &Words,
        now: &Now,
    ) -> Result<WrittenView, BedsideError> {
        self.set_back(what, by, now)?;
        let said = ["reason-set-back", "caution-nobody-sees"].map(|id| words.say(id, &[])).join("\n");
        Ok(WrittenView { said, against: false })
    }

    /// Records a fall or a re-admission: nothing opens until the clinic releases it.
    pub fn set_back(&mut self, what: SetBackKind, by: By, now: &Now) -> Result<(), BedsideError> {
        let day = self.known()?.today(now.at).gate_day;
        self.record(now, by, Body::SetBack { what, day })?;
        Ok(())
    }
}

fn date_of(known: &Known, day: WhichDay, now: &Now) -> NaiveDate {
    let today = known.today(now.at).session_day;
    match day {
        WhichDay::Today => today,
        WhichDay::Yesterday => today.pred_opt().unwrap_or(today),
    }
}
