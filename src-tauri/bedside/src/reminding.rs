//! How the patient wants to be reminded, at which times, and what "not today" is about.

use chrono::{Days, Duration, NaiveDate, NaiveTime};
use sendaluna_core::calendar::outbox::ReminderAnswer;
use sendaluna_core::calendar::{Ahead, MOST_TIMES, Quiet, Slot, TimesWish, minutes_of, slots};
use sendaluna_core::gate::GateDay;
use sendaluna_core::plan::doc::Weekday;
use sendaluna_core::record::{Body, By, NotTodayWhy};
use sendaluna_exchange::calendar::{CalendarWords, CalendarZone, Exported, ZoneChange, calendar};
use sendaluna_words::Words;
use serde::{Deserialize, Serialize};

use crate::clock::Now;
use crate::error::BedsideError;
use crate::home::{Bedside, Known};
use crate::say::ring_clinic;
use crate::view::reminding::{DayOffView, RemindingView, WhyNotView};
use crate::view::window::WrittenView;

/// The setting that says what the last calendar file held.
const EXPORTED: &str = "calendar";

/// How much a notice says.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Default, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(ts_rs::TS))]
#[serde(rename_all = "kebab-case")]
pub enum Shows {
    /// No word of health: anybody may see it.
    #[default]
    Little,
    /// That it is about exercises.
    Exercises,
}

/// How the patient wants to be reminded.
#[derive(Debug, Clone, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default, deny_unknown_fields)]
pub struct Reminding {
    /// At all.
    pub on: bool,
    /// Times of the day, in order; none if they are worked out from the plan.
    pub times: Vec<NaiveTime>,
    /// Days of the week without a reminder.
    pub days_off: Vec<Weekday>,
    /// When it is quiet; `None` for the hours of sleep.
    pub quiet: Option<Quiet>,
    /// With a sound.
    pub sound: bool,
    /// How much a notice says.
    pub shows: Shows,
}

impl Default for Reminding {
    fn default() -> Self {
        Self {
            on: true,
            times: Vec::new(),
            days_off: Vec::new(),
            quiet: None,
            sound: true,
            shows: Shows::Little,
        }
    }
}

/// When it is to be quiet.
#[derive(Debug, Clone, Copy, PartialEq, Eq, Deserialize)]
#[serde(rename_all = "kebab-case", tag = "when")]
pub enum QuietWish {
    /// In the hours of sleep.
    Asleep,
    /// From a minute after midnight to another, over midnight if it is earlier.
    Between {
        /// From.
        from_min: u16,
        /// To, not included.
        to_min: u16,
    },
}

/// What is changed of it; what is not given stays.
#[derive(Debug, Clone, PartialEq, Eq, Default, Deserialize)]
#[serde(deny_unknown_fields, default)]
pub struct RemindingChange {
    /// At all.
    pub on: Option<bool>,
    /// Times of the day, in minutes after midnight; none to have them worked out from the plan.
    pub times_min: Option<Vec<u16>>,
    /// Days of the week without a reminder.
    pub days_off: Option<Vec<Weekday>>,
    /// When it is quiet.
    pub quiet: Option<QuietWish>,
    /// With a sound.
    pub sound: Option<bool>,
    /// How much a notice says.
    pub shows: Option<Shows>,
}

impl Reminding {
    /// With a change.
    pub(crate) fn with(mut self, change: &RemindingChange) -> Result<Self, BedsideError> {
        self.on = change.on.unwrap_or(self.on);
        self.sound = change.sound.unwrap_or(self.sound);
        self.shows = change.shows.unwrap_or(self.shows);
        if let Some(times) = &change.times_min {
            let read: Option<Vec<NaiveTime>> = times.iter().map(|min| time_of(*min)).collect();
            let mut times = read.filter(|t| t.len() <= MOST_TIMES).ok_or(BedsideError::FigureOutOfRange)?;
            times.sort_unstable();
            times.dedup();
            self.times = times;
        }
        if let Some(days) = &change.days_off {
            let mut days = days.clone();
            days.dedup();
            self.days_off = days;
        }
        match change.quiet {
            Some(QuietWish::Asleep) => self.quiet = None,
            Some(QuietWish::Between { from_min, to_min }) => {
                let ends = time_of(from_min).zip(time_of(to_min));
                let (from, to) = ends.ok_or(BedsideError::FigureOutOfRange)?;
                self.quiet = Some(Quiet { from, to });
            }
            None => {}
        }
        Ok(self)
    }
}

fn time_of(min: u16) -> Option<NaiveTime> {
    NaiveTime::from_hms_opt(u32::from(min) / 60, u32::from(min) % 60, 0)
}

impl Known {
    /// The plan's times from today on, as the patient wants them.
    pub fn slots_ahead(&self, home: &Bedside, now: &Now, through: NaiveDate) -> Vec<Slot> {
        let today = self.today(now.at).session_day;
        let set_back = self.state.set_back_since(self.standing.set_backs_released_until);
        let review_by = self.plan.head().review_by;
        let gates = self.gates(home.library());
        let wish = self.times_wish();
        let ahead = Ahead {
            gates: &gates,
            gate_day: &|day| GateDay::held(day, review_by, set_back),
            wall: &|at| self.wall(at),
            history: &self.state.history,
            waking: self.waking(),
            wish: &wish,
        };
        slots(&ahead, today, through)
    }

    fn times_wish(&self) -> TimesWish {
        let reminding = &self.settings.reminding;
        TimesWish {
            times: reminding.times.clone(),
            days_off: reminding.days_off.clone(),
            quiet: reminding.quiet,
            breaks: self.state.breaks.clone(),
        }
    }

    /// When it is quiet.
    pub fn quiet(&self) -> Quiet {
        self.times_wish().quiet(self.waking())
    }
}

impl Bedside {
    /// "Not today", said in the program.
    pub fn not_today(&mut self, by: By, words: &Words, now: &Now) -> Result<WrittenView, BedsideError> {
        let today = self.known()?.today(now.at);
        let time = (now.at.naive_utc() + Duration::seconds(today.offset_s.into())).time();
        let (day, answer) = (today.session_day, ReminderAnswer::NotToday);
        self.record(now, by, Body::ReminderAnswered { at: now.at, day, time, answer })?;
        let said = words.say("not-today-done", &[("day", words.day(day).into())]);
        Ok(WrittenView { said, against: false })
    }

    /// Why not, on a day on which "not today" was said. It is asked once.
    pub fn not_today_because(
        &mut self,
        day: NaiveDate,
        why: NotTodayWhy,
        by: By,
        words: &Words,
        now: &Now,
    ) -> Result<WrittenView, BedsideError> {
        let known = self.known()?;
        if !known.state.not_today.contains_key(&day) {
            return Err(BedsideError::NotNow);
        }
        self.record(now, by, Body::NotTodayBecause { day, why })?;
        let mut said = vec![words.say("not-today-thanks", &[])];
        if matches!(why, NotTodayWhy::Hurts | NotTodayWhy::Unwell) {
            said.extend([words.say("caution-nobody-sees", &[]), ring_clinic(words, &known)]);
        }
        Ok(WrittenView { said: said.join("\n"), against: false })
    }

    /// The plan's times ahead, as a calendar file; `None` if there are none.
    pub fn calendar_file(&mut self, words: &Words, now: &Now) -> Result<Option<String>, BedsideError> {
        let known = self.known()?;
        let ahead = known.slots_ahead(self, now, known.plan.head().last_day);
        let (Some(first), Some(last)) = (ahead.first(), ahead.last()) else { return Ok(None) };
        let day = Duration::days(1);
        let zone = self.device();
        let (from, to) = (first.day - day, last.day + day);
        let changes =
            zone.changes(from.and_time(NaiveTime::MIN).and_utc(), to.and_time(NaiveTime::MIN).and_utc());
        let change = |change: sendaluna_zones::Change| ZoneChange {
            at: change.at,
            before_s: change.before_s,
            after_s: change.after_s,
            name: change.name,
            is_summer: change.is_summer,
        };
        let zone = CalendarZone {
            name: zone.name(),
            rules: zone,
            first_name: zone.name_of_time(from.and_time(NaiveTime::MIN).and_utc()),
            changes: changes.into_iter().map(change).collect(),
        };
        let before: Exported = self
            .store()
            .setting(EXPORTED)?
            .and_then(|json| serde_json::from_str(&json).ok())
            .unwrap_or_default();
        let words = CalendarWords { summary: words.say("calendar-summary", &[]) };
        let file = calendar(&known.plan.head().plan, &ahead, &zone, &words, &before, now.at);
        let exported = serde_json::to_string(&file.exported).unwrap_or_default();
        self.store_mut().write(|w| w.setting(EXPORTED, &exported))?;
        Ok(Some(file.text))
    }
}

impl Known {
    /// The day on which "not today" was said and not asked why yet: today or yesterday.
    pub fn asks_why_not(&self, now: &Now) -> Option<NaiveDate> {
        let today = self.today(now.at).session_day;
        let recent = self.state.not_today.range(today - Days::new(1)..=today);
        recent.rev().find(|(_, why)| why.is_none()).map(|(day, _)| *day)
    }

    /// How the patient wants to be reminded, said.
    pub(crate) fn reminding_view(&self, home: &Bedside, words: &Words, now: &Now) -> RemindingView {
        let reminding = &self.settings.reminding;
        let today = self.today(now.at).session_day;
        let ahead = self.slots_ahead(home, now, today + Days::new(6));
        let of_today: Vec<&Slot> = ahead.iter().filter(|slot| slot.day == today).collect();
        let (most, day) = busiest(&ahead);
        let times = if reminding.times.is_empty() { day } else { reminding.times.clone() };
        let quiet = self.quiet();
        RemindingView {
            on: reminding.on,
            today_said: words.list(&of_today.iter().map(|slot| said(slot.time)).collect::<Vec<_>>()),
            own_times: !reminding.times.is_empty(),
            times_min: times.iter().map(|time| minutes_of(*time)).collect(),
            times: times.iter().map(|time| said(*time)).collect(),
            asks_most: most,
            days_off: week(words, today, &reminding.days_off),
            quiet_asleep: reminding.quiet.is_none(),
            quiet_from_min: minutes_of(quiet.from),
            quiet_to_min: minutes_of(quiet.to),
            quiet_from: said(quiet.from),
            quiet_to: said(quiet.to),
            sound: reminding.sound,
            shows: reminding.shows,
            break_said: self.break_said(words, today),
        }
    }

    fn break_said(&self, words: &Words, today: NaiveDate) -> Option<String> {
        let (from, through) = self.state.break_on(today)?;
        let args = [("from", words.day(from).into()), ("through", words.day(through).into())];
        Some(words.say("remind-break-now", &args))
    }

    /// The question why, if it is open.
    pub(crate) fn why_not_view(&self, words: &Words, now: &Now) -> Option<WhyNotView> {
        let day = self.asks_why_not(now)?;
        Some(WhyNotView { day, said: words.say("not-today-ask", &[("day", words.day(day).into())]) })
    }
}

/// The day with most times of those ahead, but for what is done by the hour: how many, and which.
fn busiest(ahead: &[Slot]) -> (usize, Vec<NaiveTime>) {
    let times = |slots: &[Slot]| -> Vec<NaiveTime> {
        slots.iter().filter(|slot| !slot.hourly).map(|slot| slot.time).collect()
    };
    let days = ahead.chunk_by(|one, next| one.day == next.day).map(times);
    let day = days.max_by_key(Vec::len).unwrap_or_default();
    (day.len(), day)
}

/// A week of days from today on, and whether each is without a reminder.
fn week(words: &Words, today: NaiveDate, off: &[Weekday]) -> Vec<DayOffView> {
    let monday = today.week(chrono::Weekday::Mon).first_day();
    let day = |date: NaiveDate| {
        let day = sendaluna_core::calendar::weekday(date);
        DayOffView { day, name: words.weekday(date), off: off.contains(&day) }
    };
    monday.iter_days().take(7).map(day).collect()
}

fn said(time: NaiveTime) -> String {
    time.format("%H:%M").to_string()
}
