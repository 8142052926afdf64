//! What happens on which day. Invented throughout.

use std::path::Path;

use chrono::{Days, NaiveDate};
use sendaluna_bedside::hand::{Break, WhichDay};
use sendaluna_bedside::hand_back::Wishes;
use sendaluna_bedside::types::{BreakWhy, By, ItemId, LeaveReason, SetBackKind, SignId, Words};

use crate::Trouble;
use crate::chance::Chance;
use crate::clinic::{Clinic, at};
use crate::patient::{Mood, Patient};

/// Days from the operation.
const HOME: i64 = 4;
const CALF: i64 = 18;
const SISTER: std::ops::RangeInclusive<i64> = 24..=26;
const SORE: std::ops::RangeInclusive<i64> = 36..=43;
/// It hurts so much that the plan says to stop for the day, and to ring.
const WORST: i64 = 40;
const FIRST_VISIT: i64 = 44;
const HOSPITAL: std::ops::RangeInclusive<i64> = 52..=54;
const SECOND_PLAN: i64 = 58;
const GARDEN: i64 = 66;
/// The last day that is lived: the eve of the end of week 12.
const LAST: i64 = 82;

/// Lives it; returns how many days.
pub fn live(clinic: &Clinic, data: &Path, day_zero: NaiveDate, seed: u64) -> Result<i64, Trouble> {
    let code = clinic.letter_code()?;
    let set = clinic.surgeon_states("precautions", 1)?;
    let first = clinic.plan("plan", vec![set], None, 2)?;
    let mut patient = Patient::new(data)?;
    patient.takes_in(&first, &code, at(day_zero, HOME, 12, 0))?;
    let mut life = Life { patient, chance: Chance::new(seed), day_zero };
    for day in HOME..=LAST {
        if day == SECOND_PLAN {
            let released = clinic.surgeon_states("release", day - 1)?;
            let lifted = clinic.therapist_states("lift", day - 1)?;
            let second = clinic.plan("plan-2", vec![released, lifted], Some(first.clone()), day - 1)?;
            life.patient.takes_in(&second, &code, at(day_zero, day, 7, 0))?;
        }
        life.day(day).map_err(|error| (day, error))?;
    }
    Ok(LAST - HOME + 1)
}

struct Life {
    patient: Patient,
    chance: Chance,
    day_zero: NaiveDate,
}

type Lived = Result<(), sendaluna_bedside::BedsideError>;

impl Life {
    fn day(&mut self, day: i64) -> Lived {
        match day {
            CALF => return self.calf(day),
            _ if SISTER.contains(&day) => return self.sister(day),
            _ if HOSPITAL.contains(&day) => return self.hospital(day),
            _ => {}
        }
        if day == *HOSPITAL.end() + 1 || day == WORST + 1 {
            let now = self.patient.is(at(self.day_zero, day, 8, 0));
            self.patient.home.spoke_to_clinic(By::Patient, &now)?;
        }
        // Some days nothing is written down; nobody knows why.
        if day > HOME && self.chance.in_hundred(9) {
            return Ok(());
        }
        let mood = self.mood(day);
        if day > HOME {
            self.patient.exercises(at(self.day_zero, day, 8, 30), &mood)?;
        }
        if !self.chance.in_hundred(25) {
            let again = Mood { words: None, hurts: None, ..mood.clone() };
            self.patient.exercises(at(self.day_zero, day, 13, 15), &again)?;
        }
        if self.chance.in_hundred(70) {
            let tired = self.chance.in_hundred(20);
            let evening = Mood {
                words: None,
                hurts: None,
                stops_after: tired.then_some(3),
                silent: self.chance.in_hundred(15),
                ..mood
            };
            self.patient.exercises(at(self.day_zero, day, 18, 40), &evening)?;
        }
        self.by_hand(day)?;
        if day == FIRST_VISIT {
            let now = self.patient.is(at(self.day_zero, day, 20, 0));
            let asks = Some("Is it all right that my hip aches in the evening?".to_string());
            let wishes = Wishes { asks, ..Wishes::default() };
            self.patient.home.hand_back(&wishes, &Words::new(["en"]), &now)?;
        }
        Ok(())
    }

    fn mood(&mut self, day: i64) -> Mood {
        let healing = u8::try_from((4 - day / 18).clamp(0, 4)).unwrap_or(0);
        let sore = SORE.contains(&day);
        let pain = if sore { 5 } else { healing } + self.chance.between(0, 1);
        let hurts = match () {
            () if day == WORST => Some(("heel-slide", 8)),
            () if sore && day % 3 == 0 => Some(("standing-knee-curl", 6)),
            () if self.chance.in_hundred(4) => Some(("heel-slide", 4)),
            () => None,
        };
        let leaves = match () {
            () if sore && day % 2 == 1 => vec![("seated-knee-spread", LeaveReason::Hurt)],
            () if self.chance.in_hundred(10) => vec![("quad-set", LeaveReason::Tired)],
            () => Vec::new(),
        };
        let words = match day {
            HOME => Some("Glad to be home. The stairs were hard."),
            12 => Some("Walked to the gate and back."),
            38 => Some("My hip aches more since Sunday. I carried the shopping."),
            44 => Some("Better today."),
            61 => Some("Slept through for the first time."),
            75 => Some("Did the whole round without thinking of it."),
            _ => None,
        };
        Mood {
            pain,
            hurts,
            leaves,
            words,
            effort: Some(self.chance.between(2, 5)),
            pain_after: Some(pain + self.chance.between(0, 1)),
            ..Mood::default()
        }
    }

    /// What was done without the program.
    fn by_hand(&mut self, day: i64) -> Lived {
        let now = self.patient.is(at(self.day_zero, day, 21, 0));
        let mut did = |item: &str, sets: u8, each: u16| {
            let Ok(item) = ItemId::new(item) else { return Ok(()) };
            self.patient.home.did(&item, WhichDay::Today, sets, each, By::Patient, &now).map(|_| ())
        };
        if day % 6 == 0 {
            did("ankle-pump", 1, 10)?;
        }
        // Twice what was asked, on some days: it is written down, and is a figure of its own.
        if (68..=80).contains(&day) && day % 4 == 0 {
            did("calf-raise", 4, 12)?;
        }
        if day == GARDEN {
            did("straight-leg-raise", 1, 5)?;
        }
        Ok(())
    }

    /// A calf that swells: ring today, no session; and it was nothing.
    fn calf(&mut self, day: i64) -> Lived {
        let now = self.patient.is(at(self.day_zero, day, 8, 30));
        let signs: Vec<SignId> = SignId::new("calf").into_iter().collect();
        self.patient.home.answer_signs(&signs, By::Patient, &now)?;
        let now = self.patient.is(at(self.day_zero, day, 11, 0));
        self.patient.home.spoke_to_clinic(By::Patient, &now)
    }

    /// A visit: a break that was declared in time, for the first of its days.
    fn sister(&mut self, day: i64) -> Lived {
        if day != *SISTER.start() {
            return Ok(());
        }
        let on = |day: i64| {
            self.day_zero
                .checked_add_days(Days::new(u64::try_from(day).unwrap_or(0)))
                .unwrap_or(self.day_zero)
        };
        let rest = Break {
            from: on(*SISTER.start()),
            through: on(*SISTER.end()),
            why: BreakWhy::Own,
            words: Some("My sister is here for three days.".to_string()),
        };
        let now = self.patient.is(at(self.day_zero, day, 7, 30));
        self.patient.home.declare_break(rest, By::Patient, &now)
    }

    fn hospital(&mut self, day: i64) -> Lived {
        if day != *HOSPITAL.start() {
            return Ok(());
        }
        let now = self.patient.is(at(self.day_zero, day, 9, 0));
        self.patient.home.set_back(SetBackKind::Readmission, By::Helper, &now)
    }
}
