use super::*;
use chrono::NaiveDateTime;
use sendaluna_core::calendar::Civil;

struct Utc0;

impl Zone for Utc0 {
    fn offset_s(&self, _: DateTime<Utc>) -> i32 {
        0
    }
    fn civil(&self, local: NaiveDateTime) -> Civil {
        Civil::Once(local.and_utc())
    }
}

fn at(text: &str) -> DateTime<Utc> {
    format!("2026-03-{text}:00Z").parse().expect("a moment")
}

/// Days of March 2026 with three times each, quiet from ten to six; answered up to a moment.
fn front(days: std::ops::RangeInclusive<u32>, answered: &str) -> Box<Front> {
    let day = |day| {
        let times = ["09:00:00", "14:00:00", "19:00:00"].map(|time| serde_json::json!({ "time": time }));
        serde_json::json!({ "day": format!("2026-03-{day:02}"), "slots": times })
    };
    let word = |name: &'static str| (name.to_string(), serde_json::json!("words"));
    let words: serde_json::Map<_, _> =
        ["lang", "title", "now", "late", "after_silence", "start", "in_30_minutes", "not_today"]
            .map(word)
            .into_iter()
            .collect();
    let json = serde_json::json!({
        "version": 1, "made_at": "2026-03-04T06:00:00Z", "on": true, "sound": false,
        "days": days.map(day).collect::<Vec<_>>(),
        "quiet": { "from": "22:00:00", "to": "06:00:00" },
        "heard_on": "2026-03-04", "answered_until": at(answered), "words": words,
        "contacts": { "clinic": "c", "phone": "1", "out_of_hours_phone": "2", "emergency_phone": "3",
            "emergency_advice": "a", "signs": [], "cautions": [] },
    });
    Box::new(Front::read(&serde_json::to_vec(&json).expect("plain")).expect("valid"))
}

fn keeper(now: &str) -> Keeper {
    let mut keeper = Keeper::new(Memory::from_now(at(now)));
    keeper.on(Happened::Front(Some(front(4..=20, "01T00:00"))), at(now), &Utc0);
    keeper
}

/// What is to be done, but for what is to be kept in mind.
fn on(keeper: &mut Keeper, happened: Happened, now: &str) -> Vec<Do> {
    keeper.on(happened, at(now), &Utc0).into_iter().filter(|what| !matches!(what, Do::Remember(_))).collect()
}

fn shown(to_do: &[Do]) -> Option<(u64, Tone)> {
    to_do.iter().find_map(|what| match what {
        Do::Show(number, tone) => Some((*number, *tone)),
        _ => None,
    })
}

#[test]
fn a_reminder_comes_at_its_time_and_once() {
    let mut keeper = keeper("04T08:00");
    assert_eq!(keeper.wake_at(at("04T08:00"), &Utc0), Some(at("04T09:00")));
    assert_eq!(on(&mut keeper, Happened::Time, "04T08:59"), []);
    let to_do = keeper.on(Happened::Time, at("04T09:00"), &Utc0);
    assert!(matches!(to_do[0], Do::Remember(_)), "kept in mind before it is shown");
    assert_eq!(to_do[1], Do::Show(2, Tone::Now));
    assert_eq!(on(&mut keeper, Happened::Time, "04T09:00"), []);
    assert_eq!(
        keeper.wake_at(at("04T09:00"), &Utc0),
        Some(at("04T13:00")),
        "its window ends after four hours"
    );
    assert_eq!(on(&mut keeper, Happened::Time, "04T13:00"), [Do::Withdraw]);
    // The next takes the place of nothing.
    assert_eq!(on(&mut keeper, Happened::Time, "04T14:00"), [Do::Show(3, Tone::Now)]);
}

#[test]
fn a_jump_of_eight_hours_over_two_times_brings_one_catch_up_or_none() {
    for (from, to, tone) in [
        ("04T08:30", "04T16:30", Some(Tone::Late)),
        ("04T12:00", "04T20:00", Some(Tone::Late)),
        ("04T13:30", "04T21:30", Some(Tone::Late)),
        ("04T08:59", "04T16:59", Some(Tone::Late)),
        ("04T18:00", "05T02:00", None),
    ] {
        let mut keeper = keeper(from);
        let first = on(&mut keeper, Happened::Time, to);
        assert_eq!(shown(&first).map(|(_, tone)| tone), tone, "{from} to {to}");
        assert!(first.iter().filter(|what| matches!(what, Do::Show(..))).count() <= 1);
        assert_eq!(on(&mut keeper, Happened::Time, to), [], "never two");
        // Set right again: what was dealt with does not come a second time.
        assert!(shown(&on(&mut keeper, Happened::Time, from)).is_none(), "{from} again");
    }
}

#[test]
fn the_next_takes_the_place_of_one_that_is_still_to_be_seen() {
    let mut keeper = keeper("04T08:00");
    let mut front = front(4..=4, "01T00:00").doc().clone();
    front.days[0].slots[1].time = "10:00:00".parse().expect("a time");
    keeper.on(Happened::Front(Some(Box::new(Front::new(front).expect("valid")))), at("04T08:00"), &Utc0);
    assert_eq!(on(&mut keeper, Happened::Time, "04T09:00"), [Do::Show(2, Tone::Now)]);
    assert_eq!(on(&mut keeper, Happened::Time, "04T10:00"), [Do::Show(3, Tone::Now)], "without taking back");
}

#[test]
fn asleep_over_days_there_is_no_pile() {
    let mut keeper = keeper("04T08:00");
    let to_do = on(&mut keeper, Happened::Time, "07T09:30");
    assert_eq!(to_do, [Do::Show(2, Tone::Late)]);
    let mut keeper = self::keeper("04T08:00");
    assert_eq!(on(&mut keeper, Happened::Time, "07T04:00"), [], "no window is open at night");
}

#[test]
fn put_off_it_comes_again_and_only_once() {
    let mut keeper = keeper("04T08:00");
    on(&mut keeper, Happened::Time, "04T09:00");
    let to_do = on(&mut keeper, Happened::Pressed(2, ReminderAnswer::Later), "04T09:05");
    assert!(matches!(&to_do[..], [Do::Write(line)] if line.answer == ReminderAnswer::Later));
    assert_eq!(keeper.wake_at(at("04T09:05"), &Utc0), Some(at("04T09:35")));
    assert_eq!(on(&mut keeper, Happened::Time, "04T09:35"), [Do::Show(3, Tone::Now)]);
    // A second press on the first notice counts no more.
    assert_eq!(on(&mut keeper, Happened::Pressed(2, ReminderAnswer::Start), "04T09:36"), []);
    // The next time takes the place of what was put off up to then.
    on(&mut keeper, Happened::Pressed(3, ReminderAnswer::Later), "04T13:45");
    assert_eq!(on(&mut keeper, Happened::Time, "04T14:00"), [Do::Show(4, Tone::Now)]);
    assert_eq!(on(&mut keeper, Happened::Time, "04T14:15"), []);
}

#[test]
fn not_today_means_today() {
    let mut keeper = keeper("04T08:00");
    on(&mut keeper, Happened::Time, "04T09:00");
    on(&mut keeper, Happened::Pressed(2, ReminderAnswer::NotToday), "04T09:05");
    assert_eq!(keeper.wake_at(at("04T09:05"), &Utc0), Some(at("05T09:00")));
    assert_eq!(on(&mut keeper, Happened::Time, "04T19:00"), []);
    assert_eq!(on(&mut keeper, Happened::Time, "05T09:00"), [Do::Show(3, Tone::Now)]);
}

#[test]
fn start_opens_the_window() {
    let mut keeper = keeper("04T08:00");
    on(&mut keeper, Happened::Time, "04T09:00");
    let to_do = on(&mut keeper, Happened::Pressed(2, ReminderAnswer::Start), "04T09:01");
    assert!(matches!(&to_do[..], [Do::Write(line), Do::Open] if line.answer == ReminderAnswer::Start));
}

#[test]
fn done_elsewhere_it_is_taken_back() {
    let mut keeper = keeper("04T08:00");
    on(&mut keeper, Happened::Time, "04T09:00");
    let to_do = on(&mut keeper, Happened::Front(Some(front(4..=20, "04T09:10"))), "04T09:10");
    assert_eq!(to_do, [Do::Withdraw]);
    // And what was put off comes no more.
    on(&mut keeper, Happened::Time, "04T14:00");
    on(&mut keeper, Happened::Pressed(3, ReminderAnswer::Later), "04T14:01");
    assert_eq!(on(&mut keeper, Happened::Front(Some(front(4..=20, "04T14:10"))), "04T14:10"), []);
    assert_eq!(on(&mut keeper, Happened::Time, "04T14:31"), []);
    // Without a front nothing reminds.
    on(&mut keeper, Happened::Time, "04T19:00");
    assert_eq!(on(&mut keeper, Happened::Front(None), "04T19:01"), [Do::Withdraw]);
    assert_eq!(keeper.wake_at(at("04T19:01"), &Utc0), None);
}

#[test]
fn what_could_not_be_shown_is_tried_again_while_its_window_is_open() {
    let mut keeper = keeper("04T08:00");
    on(&mut keeper, Happened::Time, "04T09:00");
    let second = |s: i64| at("04T09:00") + Duration::seconds(s);
    let mut now = second(0);
    let mut tries = 0;
    keeper.on(Happened::Lost(2), now, &Utc0);
    while let Some(wake) = keeper.wake_at(now, &Utc0).filter(|wake| *wake < at("04T14:00")) {
        assert!(wake > now, "never woken in vain");
        now = wake;
        let to_do = keeper.on(Happened::Time, now, &Utc0);
        if to_do.iter().any(|what| matches!(what, Do::Show(2, Tone::Now))) {
            tries += 1;
            keeper.on(Happened::Lost(2), now, &Utc0);
        }
    }
    assert!((40..60).contains(&tries), "{tries} tries in four hours");
    assert!(now <= at("04T13:00"));
}

#[test]
fn what_was_shown_at_last_is_not_shown_again() {
    let mut keeper = keeper("04T08:00");
    on(&mut keeper, Happened::Time, "04T09:00");
    keeper.on(Happened::Lost(2), at("04T09:00"), &Utc0);
    assert_eq!(on(&mut keeper, Happened::Time, "04T09:01"), [Do::Show(2, Tone::Now)]);
    assert_eq!(keeper.wake_at(at("04T09:01"), &Utc0), Some(at("04T13:00")), "at the end of its window");
    assert_eq!(on(&mut keeper, Happened::Time, "04T12:59"), []);
}

#[test]
fn in_another_zone_the_times_are_those_of_its_wall() {
    struct East;
    impl Zone for East {
        fn offset_s(&self, _: DateTime<Utc>) -> i32 {
            2 * 3600
        }
        fn civil(&self, local: NaiveDateTime) -> Civil {
            Civil::Once(local.and_utc() - Duration::hours(2))
        }
    }
    // Back west, what was shown does not come once more.
    let mut traveller = keeper("04T05:00");
    traveller.on(Happened::Time, at("04T07:00"), &East);
    assert!(shown(&on(&mut traveller, Happened::Time, "04T09:00")).is_none());
    assert_eq!(on(&mut traveller, Happened::Time, "04T12:00"), [Do::Withdraw]);
    assert_eq!(traveller.wake_at(at("04T12:00"), &Utc0), Some(at("04T14:00")));
    let mut keeper = keeper("04T05:00");
    assert_eq!(keeper.wake_at(at("04T05:00"), &Utc0), Some(at("04T09:00")));
    assert_eq!(keeper.wake_at(at("04T05:00"), &East), Some(at("04T07:00")));
    let to_do = keeper.on(Happened::Time, at("04T07:00"), &East);
    assert!(shown(&to_do.into_iter().collect::<Vec<_>>()).is_some());
}

#[test]
fn a_memory_of_no_time_of_ours_is_none() {
    let now = at("04T10:00");
    let good = Memory { heard_on: Some(now.date_naive()), ..Memory::from_now(now) };
    assert_eq!(Memory::read(&good.to_bytes(), now), good);
    for (field, wrong) in [
        ("seen_until", serde_json::json!("+262142-12-31T23:59:59Z")),
        ("heard_on", serde_json::json!("-262143-01-01")),
        ("not_today", serde_json::json!("+262142-12-31")),
        (
            "put_off",
            serde_json::json!({ "day": "2026-03-04", "time": "09:00:00", "until": "+262142-12-31T00:00:00Z" }),
        ),
    ] {
        let mut json: serde_json::Value = serde_json::from_slice(&good.to_bytes()).expect("JSON");
        json[field] = wrong;
        let bytes = serde_json::to_vec(&json).expect("JSON");
        assert!(serde_json::from_slice::<Memory>(&bytes).is_ok(), "{field} has the form");
        assert_eq!(Memory::read(&bytes, now), Memory::from_now(now), "{field}");
    }
}

#[test]
fn a_notice_that_was_to_be_seen_is_shown_again_after_a_start() {
    let mut keeper = keeper("04T08:00");
    let kept = keeper.on(Happened::Time, at("04T09:00"), &Utc0);
    let Do::Remember(memory) = kept[0].clone() else { panic!("kept in mind") };
    let memory = Memory::read(&memory.to_bytes(), at("04T10:00"));
    let mut again = Keeper::new(memory.clone());
    let to_do = again.on(Happened::Front(Some(front(4..=20, "01T00:00"))), at("04T10:00"), &Utc0);
    assert_eq!(shown(&to_do.into_iter().collect::<Vec<_>>()), Some((1, Tone::Late)));
    // Done elsewhere while this program did not run: it does not flash up.
    let mut done = Keeper::new(memory.clone());
    let to_do = done.on(Happened::Front(Some(front(4..=20, "04T09:30"))), at("04T10:00"), &Utc0);
    assert!(shown(&to_do.into_iter().collect::<Vec<_>>()).is_none());
    let mut much_later = Keeper::new(memory);
    let to_do = much_later.on(Happened::Front(Some(front(4..=20, "01T00:00"))), at("04T13:30"), &Utc0);
    assert!(shown(&to_do.into_iter().collect::<Vec<_>>()).is_none(), "its window is over");
    assert_eq!(Memory::read(b"{torn", at("04T10:00")), Memory::from_now(at("04T10:00")));
}

#[test]
fn after_three_days_without_an_answer_it_asks_kindly_once_a_day() {
    let mut keeper = keeper("04T20:00");
    let mut tones = Vec::new();
    for day in 5..=8 {
        for hour in ["09", "14", "19"] {
            let to_do = on(&mut keeper, Happened::Time, &format!("{day:02}T{hour}:00"));
            tones.extend(shown(&to_do).map(|(_, tone)| (day, tone)));
        }
    }
    assert_eq!(tones.iter().filter(|(_, tone)| *tone == Tone::Now).count(), 9);
    assert_eq!(tones[9..], [(8, Tone::AfterSilence)]);
    assert_eq!(
        shown(&on(&mut keeper, Happened::Time, "09T09:00")).map(|(_, tone)| tone),
        Some(Tone::AfterSilence)
    );
    // A press is an answer.
    let number = keeper.numbers;
    on(&mut keeper, Happened::Pressed(number, ReminderAnswer::Later), "09T09:10");
    assert_eq!(shown(&on(&mut keeper, Happened::Time, "09T14:00")).map(|(_, tone)| tone), Some(Tone::Now));
}

#[test]
fn a_clock_that_was_far_wrong_does_not_silence_it() {
    let mut keeper = keeper("04T08:00");
    keeper.on(Happened::Time, at("18T09:00"), &Utc0);
    assert_eq!(on(&mut keeper, Happened::Time, "04T08:00"), []);
    assert!(keeper.wake_at(at("04T08:00"), &Utc0).is_some_and(|wake| wake <= at("18T13:00")));
    assert_eq!(shown(&on(&mut keeper, Happened::Time, "04T09:00")).map(|(_, tone)| tone), Some(Tone::Now));
}
