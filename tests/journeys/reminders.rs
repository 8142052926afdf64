//! Reminders between the two programs: what the front says, and each answer in the record exactly once,
//! whoever fails when.

use std::cell::RefCell;
use std::path::Path;

use chrono::{DateTime, Duration, NaiveDate, NaiveTime, Utc};
use sendaluna::phone::{MOST, Notice, Schedules, plan};
use sendaluna_bedside::hand::{Break, WhichDay};
use sendaluna_bedside::reminding::{QuietWish, RemindingChange, Shows};
use sendaluna_bedside::settings::Change;
use sendaluna_bedside::types::{BreakWhy, By, Coded, IanaZone, NotTodayWhy, Weekday, Words};
use sendaluna_bedside::{Bedside, Now};
use sendaluna_core::calendar::front::Front;
use sendaluna_core::calendar::outbox::{Head, Line, ReminderAnswer, line_of};
use sendaluna_core::record::Body;
use sendaluna_store::Store;
use sendaluna_tests::device::{Device, KEYS, at, id};
use sendaluna_tests::world::World;

const MORNING: &str = "2026-03-10T07:00:00Z";

fn device() -> (Device, Now) {
    let now = at(MORNING);
    (Device::with("Europe/Dublin", &World::new(), &now), now)
}

fn tended(device: &Device, now: &Now) -> Front {
    let mut home = device.open();
    home.tend(&Words::new(["en"]), now).expect("tended");
    Bedside::front_of(device.folder()).expect("a front")
}

fn times(front: &Front, day: &str) -> Vec<String> {
    let day: NaiveDate = day.parse().expect("a date");
    let of_day = front.doc().days.iter().find(|known| known.day == day);
    of_day.map_or_else(Vec::new, |day| {
        day.slots.iter().map(|slot| slot.time.format("%H:%M").to_string()).collect()
    })
}

fn change(device: &Device, reminding: RemindingChange) {
    let change = Change { reminding: Some(reminding), ..Change::default() };
    device.open().change_settings(&change).expect("changed");
}

fn line(hour: u32, answer: ReminderAnswer) -> Line {
    let day: NaiveDate = "2026-03-10".parse().expect("a date");
    let time = NaiveTime::from_hms_opt(hour, 0, 0).expect("a time");
    Line { at: day.and_time(time).and_utc(), day, time, answer }
}

fn outbox(device: &Device, lines: &[Line]) -> Vec<u8> {
    let mut bytes = line_of(&Head { outbox: "one".into() });
    bytes.extend(lines.iter().flat_map(line_of));
    std::fs::write(path(device), &bytes).expect("written");
    bytes
}

fn path(device: &Device) -> std::path::PathBuf {
    device.folder().join("reminders").join("outbox.jsonl")
}

/// How many answers to reminders are in the record.
fn answers(device: &Device) -> usize {
    let record = Store::read(device.folder(), &KEYS).expect("read").expect("a record");
    let events = record.events().expect("whole");
    events.iter().filter(|event| matches!(event.body, Body::ReminderAnswered { .. })).count()
}

#[test]
fn the_front_says_when_and_whom_to_ring_and_no_word_of_health() {
    let (device, now) = device();
    let front = tended(&device, &now);
    assert!(!times(&front, "2026-03-10").is_empty());
    assert!(!front.doc().contacts.signs.is_empty());
    let words = serde_json::to_string(&front.doc().words).expect("plain");
    assert!(!words.to_lowercase().contains("exercise"));
    change(&device, RemindingChange { shows: Some(Shows::Exercises), ..RemindingChange::default() });
    assert!(tended(&device, &now).doc().words.now.contains("exercises"));
    #[cfg(unix)]
    {
        use std::os::unix::fs::PermissionsExt;
        let folder = device.folder().join("reminders");
        let mode = |path: &Path| std::fs::metadata(path).expect("there").permissions().mode() & 0o777;
        assert_eq!((mode(&folder), mode(&folder.join("front.json"))), (0o700, 0o600));
    }
}

#[test]
fn the_patients_wishes_are_in_the_front() {
    let (device, now) = device();
    change(
        &device,
        RemindingChange {
            times_min: Some(vec![1_200, 615, 615]),
            days_off: Some(vec![Weekday::Wednesday]),
            quiet: Some(QuietWish::Between { from_min: 0, to_min: 1_439 }),
            ..RemindingChange::default()
        },
    );
    let front = tended(&device, &now);
    // Quiet all day long: only the chosen times are left.
    assert_eq!(times(&front, "2026-03-10"), ["10:15", "20:00"]);
    assert!(times(&front, "2026-03-11").is_empty(), "a Wednesday");
    assert_eq!(times(&front, "2026-03-12"), ["10:15", "20:00"]);
    let (from, through) = ("2026-03-12".parse().expect("a date"), "2026-03-13".parse().expect("a date"));
    let rest = Break { from, through, why: BreakWhy::Own, words: None };
    device.open().declare_break(rest, By::Patient, &now).expect("declared");
    assert!(times(&tended(&device, &now), "2026-03-13").is_empty());
    let early = device.open().end_break(By::Patient, &now);
    assert_eq!(early.expect_err("no break yet").code(), "no-break");
    let in_it = at("2026-03-12T09:00:00Z");
    device.open().end_break(By::Patient, &in_it).expect("ended");
    assert_eq!(times(&tended(&device, &in_it), "2026-03-13"), ["10:15", "20:00"]);
    change(&device, RemindingChange { on: Some(false), ..RemindingChange::default() });
    assert!(!tended(&device, &now).doc().on);
    for wrong in [vec![1_440], (0..25).collect()] {
        let change = RemindingChange { times_min: Some(wrong), ..RemindingChange::default() };
        let change = Change { reminding: Some(change), ..Change::default() };
        assert!(device.open().change_settings(&change).is_err());
    }
}

/// Keeps what it is handed.
#[derive(Default)]
struct Kept(RefCell<Vec<DateTime<Utc>>>);

impl Schedules for Kept {
    type Error = ();
    fn clear(&self) -> Result<(), ()> {
        self.0.borrow_mut().clear();
        Ok(())
    }
    fn put(&self, number: i32, notice: &Notice<'_>) -> Result<(), ()> {
        assert_eq!(usize::try_from(number), Ok(self.0.borrow().len()), "numbered from nought");
        assert!(!notice.text.is_empty());
        self.0.borrow_mut().push(notice.at);
        Ok(())
    }
}

#[test]
fn a_phone_is_handed_sixty_at_most_and_anew_each_time() {
    let (device, now) = device();
    let (front, zone) = (tended(&device, &now), IanaZone::named("Europe/Dublin").expect("a zone"));
    let all: usize = front.doc().days.iter().map(|day| day.slots.len()).sum();
    assert!(all > MOST, "{all} ahead");
    let kept = Kept::default();
    for hours in [0, 30] {
        let at = now.at + Duration::hours(hours);
        assert_eq!(plan(&kept, &front, at, &zone), Ok(MOST));
        let times = kept.0.borrow().clone();
        assert!(times.len() == MOST && times[0] >= at && times.is_sorted());
    }
}

#[test]
fn what_was_done_by_hand_answers_the_times_up_to_now() {
    let (device, now) = device();
    let before = tended(&device, &now);
    assert_eq!(before.doc().answered_until.timestamp(), 0);
    device.open().did(&id("slide"), WhichDay::Today, 1, 5, By::Patient, &now).expect("written");
    assert_eq!(tended(&device, &now).doc().answered_until, now.at);
}

#[test]
fn each_answer_is_in_the_record_once_whoever_fails_when() {
    let (device, now) = device();
    tended(&device, &now);
    let two = [line(9, ReminderAnswer::Later), line(14, ReminderAnswer::Start)];
    let bytes = outbox(&device, &two);

    // It fails before the write: nothing is in the record, and everything still waits.
    let mut home = device.open();
    home.refuse_writes(true).expect("refuses");
    home.tend(&Words::new(["en"]), &now).expect_err("the disk refuses");
    home.refuse_writes(false).expect("writes again");
    drop(home);
    assert_eq!((answers(&device), std::fs::read(path(&device)).expect("there")), (0, bytes.clone()));

    // It fails after the write, before the outbox is taken away: it lies there again.
    tended(&device, &now);
    assert_eq!(answers(&device), 2);
    assert!(!path(&device).exists());
    std::fs::write(path(&device), &bytes).expect("as if it had never been taken away");
    tended(&device, &now);
    assert_eq!(answers(&device), 2, "not a second time");

    // Another line in the same file, and a torn one: only what is whole and new counts.
    let mut more = bytes.clone();
    more.extend(line_of(&line(19, ReminderAnswer::Later)));
    more.extend_from_slice(b"{\"at\":\"2026");
    std::fs::write(path(&device), &more).expect("written");
    tended(&device, &now);
    assert_eq!(answers(&device), 3);

    // What is no outbox is passed over, and does not stand in the way.
    std::fs::write(path(&device), b"\xff\xfenonsense\n{}\n").expect("written");
    tended(&device, &now);
    assert_eq!(answers(&device), 3);
}

#[test]
fn not_today_is_asked_about_once_and_silences_the_day() {
    let (device, now) = device();
    tended(&device, &now);
    outbox(&device, &[line(9, ReminderAnswer::NotToday)]);
    let front = tended(&device, &now);
    assert!(times(&front, "2026-03-10").is_empty());
    assert!(!times(&front, "2026-03-11").is_empty());
    let words = Words::new(["en"]);
    let mut home = device.open();
    let asked = home.day(&words, &now).expect("a day").why_not.expect("asked");
    let said = home.not_today_because(asked.day, NotTodayWhy::Hurts, By::Patient, &words, &now);
    assert!(said.expect("noted").said.contains("Nobody at the clinic sees this now"));
    assert!(home.day(&words, &now).expect("a day").why_not.is_none(), "once");
    let other = asked.day + Duration::days(1);
    home.not_today_because(other, NotTodayWhy::Tired, By::Patient, &words, &now).expect_err("never said");
}
