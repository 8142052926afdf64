//! How much and how often, in short sentences.

use chrono::{Days, NaiveDate, NaiveTime};
use sendaluna_core::calendar::DueItem;
use sendaluna_core::plan::Amount;
use sendaluna_core::plan::doc::{Dose, Graded, Grows, Load, Ramp, Tempo, Weekday, When};
use sendaluna_words::Value;

use crate::Speaker;

impl Speaker<'_> {
    /// A dose, in short sentences.
    pub fn dose(&self, dose: &Dose) -> String {
        let say = |id: &str, args: &[(&str, Value<'_>)]| self.words.say(id, args);
        let mut sentences = Vec::new();
        match dose.amount() {
            Some(Amount::Repetitions { least, most, tempo }) => {
                sentences.push(if least == most {
                    say("dose-repetitions", &[("n", most.into())])
                } else {
                    say("dose-repetitions-range", &[("least", least.into()), ("most", most.into())])
                });
                if tempo.hold_s > 0 {
                    sentences.push(say("dose-hold", &[("n", tempo.hold_s.into())]));
                }
            }
            Some(Amount::Breaths { breaths, .. }) => {
                sentences.push(say("dose-breaths", &[("n", breaths.into())]));
            }
            Some(Amount::Minutes(minutes)) => sentences.push(say("dose-minutes", &[("n", minutes.into())])),
            Some(Amount::Steps(steps)) => {
                let aid = dose.steps.as_ref().map_or_else(String::new, |steps| self.text(&steps.aid));
                sentences.push(say("dose-steps", &[("n", steps.into()), ("aid", aid.into())]));
            }
            None => {}
        }
        if dose.sets > 1 {
            sentences.push(say("dose-sets", &[("n", dose.sets.into())]));
            if dose.rest_s > 0 {
                sentences.push(say("dose-rest", &[("n", dose.rest_s.into())]));
            }
        }
        match &dose.load {
            Some(Load::Weight { load_kg }) => {
                sentences.push(say("dose-weight", &[("kg", self.words.decimal(*load_kg, 1).into())]));
            }
            Some(Load::Band { name }) => {
                sentences.push(say("dose-band", &[("band", self.text(name).into())]));
            }
            None => {}
        }
        sentences.join(" ")
    }

    /// The tempo of a repetition or a breath, to be counted without the program; empty if there is none.
    pub fn tempo(&self, dose: &Dose) -> String {
        match dose.amount() {
            Some(Amount::Repetitions { tempo: Tempo { out_s, hold_s, back_s, pause_s }, .. }) => {
                let id = if hold_s > 0 { "sheet-tempo" } else { "sheet-tempo-no-hold" };
                let args = [
                    ("out", out_s.into()),
                    ("hold", hold_s.into()),
                    ("back", back_s.into()),
                    ("pause", pause_s.into()),
                ];
                self.words.say(id, &args)
            }
            Some(Amount::Breaths { tempo, .. }) => {
                self.words.say("sheet-breath", &[("in", tempo.out_s.into()), ("out", tempo.back_s.into())])
            }
            _ => String::new(),
        }
    }

    /// How often today, and how often done; and from when on again, where the plan asks for a rest between.
    pub fn times(&self, due: &DueItem, again_from: Option<NaiveTime>) -> String {
        let words = self.words;
        let counts = [("times", due.times.into()), ("done", due.done.into()), ("most", due.most.into())];
        let said = match (due.times, due.most) {
            (0, 0) => words.say("times-not-today", &[]),
            (0, _) => words.say("times-as-needed", &counts),
            _ => words.say("times-today", &counts),
        };
        let Some(from) = again_from else { return said };
        let time = from.format("%H:%M").to_string();
        format!("{said} {}", words.say("times-again-from", &[("time", time.into())]))
    }

    /// How often, in short sentences.
    pub fn when(&self, when: &When) -> String {
        let say = |id: &str, args: &[(&str, Value<'_>)]| self.words.say(id, args);
        let that_day = |times: u8| {
            if times > 1 { say("when-times-that-day", &[("times", times.into())]) } else { String::new() }
        };
        let sentences = match when {
            When::TimesADay { times, least_hours_between } => {
                let apart = *least_hours_between > 0 && *times > 1;
                let apart =
                    apart.then(|| say("when-hours-between", &[("hours", (*least_hours_between).into())]));
                [say("when-times-a-day", &[("times", (*times).into())]), apart.unwrap_or_default()]
            }
            When::EveryWakingHours { hours } => {
                [say("when-every-hours", &[("hours", (*hours).into())]), String::new()]
            }
            When::Weekdays { days, times } => {
                let days: Vec<String> = days.iter().map(|day| self.weekday(*day)).collect();
                [say("when-weekdays", &[("days", self.words.list(&days).into())]), that_day(*times)]
            }
            When::DaysAWeek { days, times } => {
                [say("when-days-a-week", &[("days", (*days).into())]), that_day(*times)]
            }
            When::AsNeeded { daily_most } => {
                [say("when-as-needed", &[("most", (*daily_most).into())]), String::new()]
            }
        };
        sentences.join(" ").trim_end().to_string()
    }

    /// The seven days of the week, in short.
    pub fn week(&self) -> Vec<String> {
        (0..7).map(|day| self.words.weekday_short(after_monday(day))).collect()
    }

    fn weekday(&self, day: Weekday) -> String {
        self.words.weekday(after_monday(day as u64))
    }

    /// A ramp, to be gone up by hand.
    pub fn ramp(&self, ramp: &Ramp) -> String {
        let grows = match ramp.grows {
            Grows::Sets => "sets",
            Grows::Repetitions => "repetitions",
            Grows::HoldS => "hold",
            Grows::Minutes => "minutes",
        };
        let args = [
            ("grows", grows.into()),
            ("start", ramp.start.into()),
            ("step", ramp.step.into()),
            ("days", ramp.every_days.into()),
            ("cap", ramp.cap.into()),
        ];
        format!("{} {}", self.words.say("sheet-ramp", &args), self.words.say("sheet-ramp-yes", &[]))
    }

    /// A graded dose, step by step, and the clinic's rule for one up and one down.
    pub fn graded(&self, graded: &Graded) -> Vec<String> {
        let of = graded.doses.len();
        let step = |(n, dose): (usize, &Dose)| {
            let args = [("n", (n + 1).into()), ("of", of.into()), ("dose", self.dose(dose).into())];
            self.words.say("sheet-graded-step", &args)
        };
        let mut said: Vec<String> = graded.doses.iter().enumerate().map(step).collect();
        said.push(self.words.say("sheet-graded-start", &[("n", graded.start.into())]));
        let mut up: Vec<(&str, Value<'_>)> =
            vec![("sessions", graded.up_after_sessions.into()), ("pain", graded.up_pain_at_most.into())];
        let id = match graded.up_effort_at_most {
            Some(effort) => {
                up.push(("effort", effort.into()));
                "sheet-graded-up-effort"
            }
            None => "sheet-graded-up",
        };
        said.push(self.words.say(id, &up));
        said.push(self.words.say("sheet-graded-down", &[("pain", graded.down_pain_over.into())]));
        said
    }
}

/// A Monday, and as many days on.
fn after_monday(days: u64) -> NaiveDate {
    let monday = NaiveDate::from_ymd_opt(2024, 1, 1).unwrap_or_default();
    monday.checked_add_days(Days::new(days)).unwrap_or(monday)
}
