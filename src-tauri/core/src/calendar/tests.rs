use super::*;
use crate::gate::GateDay;
use crate::library::Library;
use crate::precaution::Standing;
use crate::sample::{self, date};
use proptest::prelude::*;

fn due_on(day: &str, history: &History) -> DueDay {
    let (plan, library, standing) = (sample::plan(), Library::shipped(), Standing::default());
    let gates = Gates { plan: &plan, library: &library, standing: &standing, tightened: &[] };
    due(&gates, date(day), &GateDay::new(date(day)), history, Waking::default())
}

fn item<'a>(day: &'a DueDay, id: &str) -> &'a DueItem {
    day.items.iter().find(|due| due.item.as_str() == id).unwrap_or_else(|| panic!("{id} is of the day"))
}

fn done(days: &[(&str, &str, u16)]) -> History {
    let mut history = History::default();
    for (id, day, times) in days {
        let id = ItemId::new(*id).expect("an id");
        history.done.entry(id).or_default().insert(date(day), *times);
    }
    history
}

#[test]
fn weeks_are_counted_from_day_zero() {
    let zero = date("2026-03-02");
    for (day, week) in
        [("2026-03-02", 1), ("2026-03-08", 1), ("2026-03-09", 2), ("2026-05-24", 12), ("2026-05-25", 13)]
    {
        assert_eq!(week_of(zero, date(day)), Some(week), "{day}");
    }
    assert_eq!(week_of(zero, date("2026-03-01")), None);
    // "Through week 6" ends with day 41.
    assert_eq!(last_day_of_week(zero, 6), zero + Days::new(41));
    assert_eq!(week_span(zero, 13, 17), (date("2026-05-25"), date("2026-06-28")));
}

#[test]
fn every_form_of_when_asks_for_its_times() {
    // 2026-03-05 is a Thursday, 2026-03-06 a Friday.
    let thursday = due_on("2026-03-05", &History::default());
    assert_eq!(item(&thursday, "pump").times, 7, "08:00 to 21:00, every two hours");
    assert_eq!(item(&thursday, "slide").times, 3);
    assert_eq!(item(&thursday, "walk").times, 1);
    assert_eq!(item(&thursday, "curl").times, 1);
    assert_eq!((item(&thursday, "knee").times, item(&thursday, "knee").most), (0, 2));
    assert_eq!(item(&due_on("2026-03-06", &History::default()), "walk").times, 0);
}

#[test]
fn days_a_week_are_never_in_a_row_nor_too_many() {
    let yesterday = done(&[("curl", "2026-03-04", 1)]);
    assert_eq!(item(&due_on("2026-03-05", &yesterday), "curl").times, 0);
    assert_eq!(item(&due_on("2026-03-06", &yesterday), "curl").times, 1);
    let full = done(&[("curl", "2026-03-02", 1), ("curl", "2026-03-04", 1), ("curl", "2026-03-06", 1)]);
    assert_eq!(item(&due_on("2026-03-08", &full), "curl").times, 0);
    // The next week of the episode begins on day 7.
    assert_eq!(item(&due_on("2026-03-09", &full), "curl").times, 1);
}

#[test]
fn a_stage_brings_its_items_and_its_own_doses() {
    let early = due_on("2026-05-24", &History::default());
    assert!(early.items.iter().all(|due| due.item.as_str() != "raise"));
    let late = due_on("2026-05-25", &History::default());
    assert_eq!(item(&late, "raise").times, 2);
    assert_eq!((item(&late, "pump").times, item(&late, "pump").most), (0, 3));
    assert!(due_on("2026-06-29", &History::default()).over);
    assert!(due_on("2026-06-29", &History::default()).items.is_empty());
    assert!(due_on("2026-03-01", &History::default()).items.is_empty(), "before day 0");
}

#[test]
fn no_stage_begins_while_the_plans_day_stands_still() {
    let (plan, library, standing) = (sample::plan(), Library::shipped(), Standing::default());
    let gates = Gates { plan: &plan, library: &library, standing: &standing, tightened: &[] };
    let at = GateDay::held(date("2026-05-26"), date("2026-05-24"), None);
    let day = due(&gates, date("2026-05-26"), &at, &History::default(), Waking::default());
    assert!(day.items.iter().all(|due| due.item.as_str() != "raise"));
    assert!(day.items.iter().any(|due| due.item.as_str() == "slide"));
}

#[test]
fn care_is_counted_by_the_day_it_was_done_even_while_the_plans_day_stands_still() {
    let mut doc = sample::doc();
    doc.care = vec![crate::plan::doc::CareItem {
        id: CareId::new("ice").expect("an id"),
        episode: EpisodeId::new("hip").expect("an id"),
        care: crate::plan::doc::Care::Ice,
        text: sample::words("Ice"),
        times: 3,
        from_week: 1,
        through_week: 17,
    }];
    let (plan, library, standing) = (sample::signed(doc), Library::shipped(), Standing::default());
    let gates = Gates { plan: &plan, library: &library, standing: &standing, tightened: &[] };
    let mut history = History::default();
    history.care.entry(CareId::new("ice").expect("an id")).or_default().insert(date("2026-03-05"), 2);
    let held = GateDay::held(date("2026-03-06"), date("2026-06-14"), Some(date("2026-03-05")));
    let day = due(&gates, date("2026-03-06"), &held, &history, Waking::default());
    assert_eq!((day.care[0].done, day.care[0].times), (0, 3));
}

#[test]
fn an_unknown_day_zero_begins_no_stage() {
    let mut doc = sample::doc();
    doc.episodes[0].day_zero = crate::plan::doc::DayZero::NotYetKnown {};
    let (plan, library, standing) = (sample::signed(doc), Library::shipped(), Standing::default());
    let gates = Gates { plan: &plan, library: &library, standing: &standing, tightened: &[] };
    let at = GateDay::new(date("2026-03-05"));
    let day = due(&gates, date("2026-03-05"), &at, &History::default(), Waking::default());
    assert!(day.items.is_empty());
    assert_eq!(day.episodes[0].week, None);
}

#[test]
fn done_counts_down_and_spacing_is_kept() {
    let mut history = done(&[("slide", "2026-03-05", 2)]);
    let at: DateTime<Utc> = "2026-03-05T10:00:00Z".parse().expect("a moment");
    history.last_done.insert(ItemId::new("slide").expect("an id"), at);
    let day = due_on("2026-03-05", &history);
    assert_eq!(item(&day, "slide").not_before, Some(at + Duration::hours(3)));
    assert!(!item(&day, "slide").is_due_at(at + Duration::minutes(179)));
    assert!(item(&day, "slide").is_due_at(at + Duration::hours(3)));
    let day = due_on("2026-03-05", &done(&[("slide", "2026-03-05", 3)]));
    assert!(!item(&day, "slide").is_due_at(at + Duration::hours(9)) && item(&day, "slide").is_enough_today());
}

#[test]
fn after_days_without_a_session_the_return_dose_applies() {
    let last = |day| done(&[("pump", day, 1)]);
    let sets = |day: &DueDay| item(day, "slide").dose.sets;
    let six = due_on("2026-03-15", &last("2026-03-09"));
    assert_eq!((six.away, sets(&six)), (Away::No, 2));
    let seven = due_on("2026-03-16", &last("2026-03-09"));
    assert_eq!((seven.away, sets(&seven)), (Away::Restart, 1));
    let first_day_back = done(&[("pump", "2026-03-09", 1), ("pump", "2026-03-16", 1)]);
    let still_back = due_on("2026-03-16", &first_day_back);
    assert_eq!((still_back.away, sets(&still_back)), (Away::Restart, 1), "also after the first set");
    let fourteen = due_on("2026-03-23", &last("2026-03-09"));
    assert_eq!(fourteen.away, Away::RingFirst);
    let spoke = History { spoke: Some(date("2026-03-22")), ..last("2026-03-09") };
    assert_eq!(due_on("2026-03-23", &spoke).away, Away::Restart);
    let before = History { spoke: Some(date("2026-03-01")), ..last("2026-03-09") };
    assert_eq!(due_on("2026-03-23", &before).away, Away::RingFirst);
}

/// A zone of one offset.
struct Fixed(i32);

impl Zone for Fixed {
    fn offset_s(&self, _: DateTime<Utc>) -> i32 {
        self.0
    }
    fn civil(&self, local: chrono::NaiveDateTime) -> Civil {
        Civil::Once(local.and_utc() - Duration::seconds(self.0.into()))
    }
}

proptest! {
    /// Wherever the device is, gates are never judged by a later day than the clinic's.
    #[test]
    fn the_gate_day_is_the_earlier_date(at_s in 1_700_000_000i64..1_900_000_000, device in -43_200i32..=50_400, clinic in -43_200i32..=50_400) {
        let now = DateTime::from_timestamp(at_s, 0).expect("a moment");
        let today = Today::new(now, &Fixed(device), &Fixed(clinic));
        prop_assert!(today.gate_day <= date_in(&Fixed(clinic), now));
        prop_assert!(today.gate_day <= today.session_day);
        prop_assert!((today.session_day - today.gate_day).num_days() <= 2);
    }

    #[test]
    fn weeks_and_spans_agree(day in 0u64..1800) {
        let zero = date("2026-03-02");
        let on = zero + Days::new(day);
        let week = week_of(zero, on).expect("after day 0");
        let (first, last) = week_span(zero, week, week);
        prop_assert!(first <= on && on <= last);
        prop_assert_eq!((last - first).num_days(), 6);
    }
}
