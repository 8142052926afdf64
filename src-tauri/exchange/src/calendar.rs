//! The plan's times for the calendar of a phone or a family: an iCalendar file (RFC 5545).
//!
//! One event a week and time of day, with a rule for the days of that week, and an alarm at its start. An
//! event is named by what does not move (plan, week, the how-manieth time), so that a calendar that takes a
//! later file in changes its events and has none twice; one that is gone is cancelled. Titles say no word of
//! health. Our own writer, because no well-kept one writes a VTIMEZONE.

use std::collections::{BTreeMap, BTreeSet};

use chrono::{DateTime, Datelike, Duration, NaiveDate, NaiveDateTime, NaiveTime, Utc, Weekday};
use sendaluna_core::calendar::{Slot, Zone};
use sendaluna_core::digest::Digest;
use sendaluna_core::ids::PlanId;
use serde::{Deserialize, Serialize};

/// A content line is folded after so many octets (section 3.1).
const MOST_OCTETS: usize = 75;

/// A change of the zone's clocks.
#[derive(Debug, Clone, PartialEq, Eq)]
pub struct ZoneChange {
    /// When.
    pub at: DateTime<Utc>,
    /// Seconds east of UTC before it.
    pub before_s: i32,
    /// Seconds east of UTC after it.
    pub after_s: i32,
    /// What the time after it is called.
    pub name: String,
    /// Whether that is summer time.
    pub is_summer: bool,
}

/// The zone that the times are in.
pub struct CalendarZone<'a> {
    /// Its name in the IANA database; `None` if it has none, and the times are written in UTC.
    pub name: Option<&'a str>,
    /// Its rules.
    pub rules: &'a dyn Zone,
    /// What its time is called before the first change.
    pub first_name: String,
    /// Its changes, from before the first slot to after the last.
    pub changes: Vec<ZoneChange>,
}

/// What an earlier file said: which of its events are still ahead, and how often a file was made.
#[derive(Debug, Clone, PartialEq, Eq, Default, Serialize, Deserialize)]
pub struct Exported {
    /// How many files were made.
    pub files: u32,
    /// Events by their names, with their starts on the wall.
    pub events: BTreeMap<String, NaiveDateTime>,
}

/// Words of a file.
pub struct CalendarWords {
    /// The title of each event.
    pub summary: String,
}

/// A file, and what is to be kept for the next.
pub struct CalendarFile {
    /// Its text.
    pub text: String,
    /// What it says.
    pub exported: Exported,
}

/// One event: the days of a week at one time of day.
struct Event {
    uid: String,
    time: NaiveTime,
    /// In order, at least one.
    days: Vec<NaiveDate>,
}

/// Writes the slots ahead, in order of day and time, as a calendar file.
pub fn calendar(
    plan: &PlanId,
    slots: &[Slot],
    zone: &CalendarZone<'_>,
    words: &CalendarWords,
    before: &Exported,
    now: DateTime<Utc>,
) -> CalendarFile {
    let events = events(plan, slots);
    let today = (now.naive_utc() + Duration::seconds(zone.rules.offset_s(now).into())).date();
    let named: BTreeMap<String, NaiveDateTime> =
        events.iter().map(|event| (event.uid.clone(), event.days[0].and_time(event.time))).collect();
    let is_gone = |(uid, at): &(&String, &NaiveDateTime)| {
        !named.contains_key(*uid) && week_of(at.date()) >= week_of(today)
    };
    let gone: Vec<(&String, &NaiveDateTime)> = before.events.iter().filter(is_gone).collect();

    let mut out = Lines::default();
    out.line("BEGIN:VCALENDAR");
    out.line("VERSION:2.0");
    out.line("PRODID:-//Sendaluna//Times of a plan//EN");
    out.line("CALSCALE:GREGORIAN");
    out.line("METHOD:PUBLISH");
    if let (Some(name), Some(first)) = (zone.name, named.values().chain(gone.iter().map(|(_, at)| *at)).min())
    {
        write_zone(&mut out, zone, name, *first);
    }
    let write = Write { zone, words, sequence: before.files, now };
    for event in &events {
        write.event(&mut out, event);
    }
    for (uid, at) in gone {
        write.cancelled(&mut out, uid, *at);
    }
    out.line("END:VCALENDAR");
    CalendarFile { text: out.0, exported: Exported { files: before.files + 1, events: named } }
}

/// The Monday of a day's week.
fn week_of(day: NaiveDate) -> NaiveDate {
    day - Duration::days(day.weekday().num_days_from_monday().into())
}

fn events(plan: &PlanId, slots: &[Slot]) -> Vec<Event> {
    let times: Vec<NaiveTime> =
        slots.iter().map(|slot| slot.time).collect::<BTreeSet<_>>().into_iter().collect();
    let rank = |time: &NaiveTime| times.binary_search(time).unwrap_or_default();
    let mut weeks: BTreeMap<(NaiveDate, usize), Vec<NaiveDate>> = BTreeMap::new();
    for slot in slots {
        weeks.entry((week_of(slot.day), rank(&slot.time))).or_default().push(slot.day);
    }
    let event = |((week, rank), days): ((NaiveDate, usize), Vec<NaiveDate>)| {
        let name = Digest::of(format!("sendaluna calendar\n{plan}\n{week}\n{rank}").as_bytes());
        let name: String = name.to_string().chars().filter(char::is_ascii_alphanumeric).take(32).collect();
        Event { uid: format!("{name}@sendaluna"), time: times[rank], days }
    };
    weeks.into_iter().map(event).collect()
}

/// The zone, as every change of its clocks that the events meet, each written out: what a rule would make of
/// years that nobody decided yet is left to a later file.
fn write_zone(out: &mut Lines, zone: &CalendarZone<'_>, name: &str, first: NaiveDateTime) {
    let first = zone.rules.civil(first).by_rfc_5545();
    out.line("BEGIN:VTIMEZONE");
    out.line(&format!("TZID:{name}"));
    if zone.changes.first().is_none_or(|change| change.at > first) {
        let offset_s =
            zone.changes.first().map_or_else(|| zone.rules.offset_s(first), |change| change.before_s);
        let start = NaiveDate::from_ymd_opt(1970, 1, 1).expect("a date").and_time(NaiveTime::MIN);
        let change = ZoneChange {
            at: start.and_utc(),
            before_s: offset_s,
            after_s: offset_s,
            name: zone.first_name.clone(),
            is_summer: false,
        };
        write_change(out, &change, start);
    }
    for change in &zone.changes {
        // On the clock as it stood before.
        write_change(out, change, change.at.naive_utc() + Duration::seconds(change.before_s.into()));
    }
    out.line("END:VTIMEZONE");
}

fn write_change(out: &mut Lines, change: &ZoneChange, start: NaiveDateTime) {
    let kind = if change.is_summer { "DAYLIGHT" } else { "STANDARD" };
    out.line(&format!("BEGIN:{kind}"));
    out.line(&format!("DTSTART:{}", local(start)));
    out.line(&format!("TZOFFSETFROM:{}", offset(change.before_s)));
    out.line(&format!("TZOFFSETTO:{}", offset(change.after_s)));
    out.line(&format!("TZNAME:{}", text(&change.name)));
    out.line(&format!("END:{kind}"));
}

struct Write<'a> {
    zone: &'a CalendarZone<'a>,
    words: &'a CalendarWords,
    sequence: u32,
    now: DateTime<Utc>,
}

impl Write<'_> {
    fn event(&self, out: &mut Lines, event: &Event) {
        let (first, last) = (event.days[0], event.days[event.days.len() - 1]);
        self.head(out, &event.uid, first.and_time(event.time));
        if event.days.len() > 1 {
            let days: Vec<&str> = event.days.iter().map(|day| short(day.weekday())).collect();
            let until = self.zone.rules.civil(last.and_time(event.time)).by_rfc_5545();
            out.line(&format!("RRULE:FREQ=WEEKLY;BYDAY={};UNTIL={}", days.join(","), utc(until)));
        }
        out.line("DURATION:PT15M");
        out.line("STATUS:CONFIRMED");
        out.line("BEGIN:VALARM");
        out.line("ACTION:DISPLAY");
        out.line(&format!("DESCRIPTION:{}", text(&self.words.summary)));
        out.line("TRIGGER:PT0S");
        out.line("END:VALARM");
        out.line("END:VEVENT");
    }

    fn cancelled(&self, out: &mut Lines, uid: &str, at: NaiveDateTime) {
        self.head(out, uid, at);
        out.line("STATUS:CANCELLED");
        out.line("END:VEVENT");
    }

    fn head(&self, out: &mut Lines, uid: &str, at: NaiveDateTime) {
        out.line("BEGIN:VEVENT");
        out.line(&format!("UID:{uid}"));
        out.line(&format!("DTSTAMP:{}", utc(self.now)));
        out.line(&format!("SEQUENCE:{}", self.sequence));
        out.line(&match self.zone.name {
            Some(name) => format!("DTSTART;TZID={name}:{}", local(at)),
            None => format!("DTSTART:{}", utc(self.zone.rules.civil(at).by_rfc_5545())),
        });
        out.line(&format!("SUMMARY:{}", text(&self.words.summary)));
        out.line("CLASS:PRIVATE");
        out.line("TRANSP:TRANSPARENT");
    }
}

fn local(at: NaiveDateTime) -> String {
    at.format("%Y%m%dT%H%M%S").to_string()
}

fn utc(at: DateTime<Utc>) -> String {
    at.format("%Y%m%dT%H%M%SZ").to_string()
}

/// An offset from UTC (section 3.3.14); seconds only where there are any.
fn offset(seconds: i32) -> String {
    let sign = if seconds < 0 { '-' } else { '+' };
    let s = seconds.unsigned_abs();
    let (hours, minutes, rest) = (s / 3600, s / 60 % 60, s % 60);
    let rest = if rest == 0 { String::new() } else { format!("{rest:02}") };
    format!("{sign}{hours:02}{minutes:02}{rest}")
}

fn short(day: Weekday) -> &'static str {
    match day {
        Weekday::Mon => "MO",
        Weekday::Tue => "TU",
        Weekday::Wed => "WE",
        Weekday::Thu => "TH",
        Weekday::Fri => "FR",
        Weekday::Sat => "SA",
        Weekday::Sun => "SU",
    }
}

/// A text value (section 3.3.11).
fn text(plain: &str) -> String {
    let mut escaped = String::new();
    for c in plain.chars() {
        match c {
            '\\' | ';' | ',' => escaped.extend(['\\', c]),
            '\n' => escaped.push_str("\\n"),
            c if c.is_control() => {}
            c => escaped.push(c),
        }
    }
    escaped
}

/// Content lines: each ends with CRLF, and is folded between characters (section 3.1).
#[derive(Default)]
struct Lines(String);

impl Lines {
    fn line(&mut self, line: &str) {
        let mut octets = 0;
        for c in line.chars() {
            if octets + c.len_utf8() > MOST_OCTETS {
                self.0.push_str("\r\n ");
                octets = 1;
            }
            self.0.push(c);
            octets += c.len_utf8();
        }
        self.0.push_str("\r\n");
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use sendaluna_core::calendar::Civil;
    use sendaluna_core::ids::ItemId;

    struct Plus1;

    impl Zone for Plus1 {
        fn offset_s(&self, _: DateTime<Utc>) -> i32 {
            3600
        }
        fn civil(&self, local: NaiveDateTime) -> Civil {
            Civil::Once(local.and_utc() - Duration::hours(1))
        }
    }

    fn slot(day: &str, time: &str) -> Slot {
        Slot {
            day: day.parse().expect("a date"),
            time: time.parse().expect("a time"),
            chosen: false,
            hourly: false,
            items: vec![ItemId::new("slide").expect("an id")],
        }
    }

    fn file(slots: &[Slot], before: &Exported) -> CalendarFile {
        let zone = CalendarZone {
            name: Some("Europe/Berlin"),
            rules: &Plus1,
            first_name: "CET".into(),
            changes: Vec::new(),
        };
        let words = CalendarWords { summary: "It is time; rest, then go".into() };
        let now = "2026-03-04T07:00:00Z".parse().expect("a moment");
        calendar(&PlanId::new("plan-1").expect("an id"), slots, &zone, &words, before, now)
    }

    #[test]
    fn a_later_file_changes_the_same_events_and_cancels_what_is_gone() {
        let two =
            [slot("2026-03-04", "09:00:00"), slot("2026-03-04", "14:00:00"), slot("2026-03-05", "09:00:00")];
        let first = file(&two, &Exported::default());
        assert_eq!(first.exported.events.len(), 2);
        assert!(first.text.contains("RRULE:FREQ=WEEKLY;BYDAY=WE,TH;UNTIL=20260305T080000Z\r\n"));
        assert!(first.text.contains("SUMMARY:It is time\\; rest\\, then go\r\n"));
        // The patient moves the first time, and the second is gone.
        let moved = [slot("2026-03-04", "10:30:00"), slot("2026-03-05", "10:30:00")];
        let second = file(&moved, &first.exported);
        let kept = second.exported.events.keys().next().expect("one event");
        assert!(first.exported.events.contains_key(kept), "the same name");
        assert_eq!(second.text.matches("SEQUENCE:1").count(), 2);
        assert_eq!(second.text.matches("STATUS:CANCELLED").count(), 1);
        let third = file(&moved, &second.exported);
        assert_eq!(third.text.matches("STATUS:CANCELLED").count(), 0, "cancelled once");
    }

    #[test]
    fn long_lines_are_folded_between_characters() {
        let mut lines = Lines::default();
        lines.line(&"é".repeat(200));
        assert!(lines.0.ends_with("\r\n"));
        assert!(lines.0.split("\r\n").all(|line| line.len() <= MOST_OCTETS));
        assert_eq!(lines.0.replace("\r\n ", "").trim_end(), "é".repeat(200));
    }

    #[test]
    fn offsets_are_written_as_the_standard_has_them() {
        for (seconds, written) in
            [(3600, "+0100"), (-12_600, "-0330"), (20_700, "+0545"), (-2_670, "-004430")]
        {
            assert_eq!(offset(seconds), written);
        }
    }
}
