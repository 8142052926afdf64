use super::*;
use crate::library::Library;
use crate::precaution::Standing;
use crate::sample::{self, date};
use chrono::Days;
use proptest::prelude::*;

fn time(text: &str) -> NaiveTime {
    text.parse().expect("a time")
}

fn on(history: &History, wish: &TimesWish, today: &str, through: &str) -> Vec<Slot> {
    let (plan, library, standing) = (sample::plan(), Library::shipped(), Standing::default());
    let gates = Gates { plan: &plan, library: &library, standing: &standing, tightened: &[] };
    let ahead = Ahead {
        gates: &gates,
        gate_day: &GateDay::new,
        wall: &|at| at.naive_utc(),
        history,
        waking: Waking::default(),
        wish,
    };
    slots(&ahead, date(today), date(through))
}

fn times_of_item(slots: &[Slot], item: &str) -> Vec<String> {
    let has = |slot: &&Slot| slot.items.iter().any(|id| id.as_str() == item);
    slots.iter().filter(has).map(|slot| slot.time.format("%H:%M").to_string()).collect()
}

fn id(text: &str) -> ItemId {
    ItemId::new(text).expect("an id")
}

#[test]
fn every_form_of_when_has_its_times() {
    // 2026-03-05 is a Thursday. Awake from eight to nine in the evening.
    let day = on(&History::default(), &TimesWish::default(), "2026-03-05", "2026-03-05");
    assert_eq!(
        times_of_item(&day, "pump"),
        ["08:00", "10:00", "12:00", "14:00", "16:00", "18:00", "20:00"],
        "every two waking hours"
    );
    assert_eq!(times_of_item(&day, "slide"), ["09:00", "14:00", "19:00"], "three times a day");
    assert_eq!(times_of_item(&day, "walk"), ["09:00"], "Thursday is one of its days");
    assert_eq!(times_of_item(&day, "curl"), ["09:00"], "so many days a week");
    assert_eq!(times_of_item(&day, "knee"), [""; 0], "as needed");
    let friday = on(&History::default(), &TimesWish::default(), "2026-03-06", "2026-03-06");
    assert_eq!(times_of_item(&friday, "walk"), [""; 0]);
}

#[test]
fn chosen_times_are_kept_to_even_at_night() {
    let wish = TimesWish {
        times: vec![time("06:30:00"), time("13:15:00"), time("22:00:00")],
        ..TimesWish::default()
    };
    let day = on(&History::default(), &wish, "2026-03-05", "2026-03-05");
    assert_eq!(times_of_item(&day, "slide"), ["06:30", "13:15", "22:00"]);
    assert_eq!(times_of_item(&day, "curl"), ["06:30"]);
    assert!(day.iter().filter(|slot| slot.time == time("22:00:00")).all(|slot| slot.chosen));
    assert!(day.iter().filter(|slot| slot.time == time("20:00:00")).all(|slot| !slot.chosen));
    // Fewer times than the plan asks for: that is the patient's choice.
    let once = TimesWish { times: vec![time("11:00:00")], ..TimesWish::default() };
    assert_eq!(
        times_of_item(&on(&History::default(), &once, "2026-03-05", "2026-03-05"), "slide"),
        ["11:00"]
    );
}

#[test]
fn quiet_hours_days_off_and_breaks_have_none() {
    let quiet = Some(Quiet { from: time("13:00:00"), to: time("15:30:00") });
    let nap = TimesWish { quiet, ..TimesWish::default() };
    let day = on(&History::default(), &nap, "2026-03-05", "2026-03-05");
    assert_eq!(times_of_item(&day, "slide"), ["09:00", "15:30", "19:00"], "waits for the end");
    assert!(!times_of_item(&day, "pump").contains(&"14:00".to_string()), "the next hour will do");
    let thursdays = TimesWish { days_off: vec![Weekday::Thursday], ..TimesWish::default() };
    assert!(on(&History::default(), &thursdays, "2026-03-05", "2026-03-05").is_empty());
    let away = TimesWish { breaks: vec![(date("2026-03-05"), date("2026-03-07"))], ..TimesWish::default() };
    let days = on(&History::default(), &away, "2026-03-04", "2026-03-08");
    assert!(days.iter().all(|slot| [date("2026-03-04"), date("2026-03-08")].contains(&slot.day)));
}

#[test]
fn what_was_done_takes_its_times_away() {
    let mut history = History::default();
    history.done.entry(id("slide")).or_default().insert(date("2026-03-05"), 1);
    let day = on(&history, &TimesWish::default(), "2026-03-05", "2026-03-05");
    assert_eq!(times_of_item(&day, "slide"), ["14:00", "19:00"]);
    history.done.entry(id("slide")).or_default().insert(date("2026-03-05"), 3);
    assert_eq!(
        times_of_item(&on(&history, &TimesWish::default(), "2026-03-05", "2026-03-05"), "slide"),
        [""; 0]
    );
    // Done a moment ago: the plan's spacing takes the next time away too.
    let mut hourly = History::default();
    hourly.done.entry(id("pump")).or_default().insert(date("2026-03-05"), 1);
    hourly.last_done.insert(id("pump"), "2026-03-05T09:30:00Z".parse().expect("a moment"));
    let days = on(&hourly, &TimesWish::default(), "2026-03-05", "2026-03-06");
    let pump = times_of_item(&days, "pump");
    assert_eq!(pump[..5], ["12:00", "14:00", "16:00", "18:00", "20:00"]);
    assert_eq!(pump[5], "08:00", "the day after is whole");
}

#[test]
fn so_many_days_a_week_lie_a_day_apart() {
    // The episode's weeks begin on Mondays.
    let week = on(&History::default(), &TimesWish::default(), "2026-03-09", "2026-03-15");
    let curl: Vec<NaiveDate> =
        week.iter().filter(|slot| slot.items.contains(&id("curl"))).map(|slot| slot.day).collect();
    assert_eq!(curl, [date("2026-03-09"), date("2026-03-11"), date("2026-03-13")]);
}

proptest! {
    /// Whatever the patient wishes: times in order, none twice, none in a quiet hour but a chosen one, and
    /// of no item more than the plan asks for.
    #[test]
    fn wishes_are_kept(
        chosen in proptest::collection::btree_set(0u16..1440, 0..6),
        from in 0u16..1440, to in 0u16..1440,
        wakes in 0u16..700, sleeps in 800u16..=1440,
        start in 0u64..110,
    ) {
        let (plan, library, standing) = (sample::plan(), Library::shipped(), Standing::default());
        let gates = Gates { plan: &plan, library: &library, standing: &standing, tightened: &[] };
        let quiet = Quiet { from: time_of(from), to: time_of(to) };
        let wish = TimesWish {
            times: chosen.into_iter().map(time_of).collect(),
            quiet: Some(quiet),
            ..TimesWish::default()
        };
        let waking = Waking { from_min: wakes, to_min: sleeps };
        let history = History::default();
        let ahead = Ahead {
            gates: &gates,
            gate_day: &GateDay::new,
            wall: &|at| at.naive_utc(),
            history: &history,
            waking,
            wish: &wish,
        };
        let today = date("2026-03-02") + Days::new(start);
        let all = slots(&ahead, today, today + Days::new(13));
        prop_assert!(all.windows(2).all(|two| (two[0].day, two[0].time) < (two[1].day, two[1].time)));
        for slot in &all {
            prop_assert!(slot.chosen || !quiet.holds(slot.time));
            prop_assert!(!slot.items.is_empty());
        }
        for day in today.iter_days().take(14) {
            let due = due(&gates, day, &GateDay::new(day), &history, waking);
            for item in due.items.iter().filter(|item| item.gate.is_open()) {
                let is_asked = |slot: &&Slot| slot.day == day && slot.items.contains(&item.item);
                prop_assert!(all.iter().filter(is_asked).count() <= usize::from(item.times));
            }
        }
    }
}
