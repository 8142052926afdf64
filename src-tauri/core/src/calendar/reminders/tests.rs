use super::*;
use crate::calendar::Civil;
use crate::calendar::front::tests::front;
use crate::calendar::front::{FrontDoc, FrontSlot};
use proptest::prelude::*;

/// UTC, but for an hour that is skipped or comes twice: (from this time on the wall, of so many hours).
struct Sets {
    at: DateTime<Utc>,
    before_s: i32,
    after_s: i32,
}

impl Zone for Sets {
    fn offset_s(&self, at: DateTime<Utc>) -> i32 {
        if at < self.at { self.before_s } else { self.after_s }
    }
    fn civil(&self, local: NaiveDateTime) -> Civil {
        let by = |offset_s: i32| local.and_utc() - Duration::seconds(offset_s.into());
        let (before, after) = (by(self.before_s), by(self.after_s));
        match (before < self.at, after >= self.at) {
            (true, false) => Civil::Once(before),
            (false, true) => Civil::Once(after),
            (false, false) => Civil::Skipped { by_offset_before: before, by_offset_after: after },
            (true, true) => Civil::Twice { first: before, second: after },
        }
    }
}

const UTC_ALWAYS: Sets = Sets { at: DateTime::UNIX_EPOCH, before_s: 0, after_s: 0 };

fn at(text: &str) -> DateTime<Utc> {
    text.parse().expect("a moment")
}

fn of(doc: FrontDoc, zone: &dyn Zone) -> Vec<Reminder> {
    let front = Front::new(doc).expect("valid");
    reminders(&front, at("2026-03-01T00:00:00Z"), at("2026-06-01T00:00:00Z"), zone)
}

#[test]
fn a_time_that_does_not_exist_and_one_that_comes_twice_come_once() {
    // One o'clock UTC on 29 March: clocks go from two to three. On 25 October they go back.
    let spring = Sets { at: at("2026-03-29T01:00:00Z"), before_s: 3600, after_s: 7200 };
    let mut doc = front(&[("2026-03-29", &["01:30:00", "02:30:00", "03:30:00"])]);
    doc.days[0].slots.iter_mut().for_each(|slot| slot.chosen = true);
    let ats: Vec<_> = of(doc, &spring).into_iter().map(|reminder| reminder.at).collect();
    assert_eq!(ats, [at("2026-03-29T00:30:00Z"), at("2026-03-29T01:30:00Z"), at("2026-03-29T01:30:00Z")]);
    let autumn = Sets { at: at("2026-03-29T01:00:00Z"), before_s: 7200, after_s: 3600 };
    let mut doc = front(&[("2026-03-29", &["02:30:00"])]);
    doc.days[0].slots[0].chosen = true;
    let ats: Vec<_> = of(doc, &autumn).into_iter().map(|reminder| reminder.at).collect();
    assert_eq!(ats, [at("2026-03-29T00:30:00Z")], "the first of the two");
}

#[test]
fn a_gap_never_moves_a_time_into_the_quiet_hours() {
    let spring = Sets { at: at("2026-03-29T01:00:00Z"), before_s: 3600, after_s: 7200 };
    let mut doc = front(&[("2026-03-29", &["02:30:00"])]);
    doc.quiet = super::super::Quiet {
        from: "03:00:00".parse().expect("a time"),
        to: "05:00:00".parse().expect("a time"),
    };
    assert!(of(doc.clone(), &spring).is_empty(), "half past three on the wall");
    doc.days[0].slots[0].chosen = true;
    assert_eq!(of(doc, &spring).len(), 1, "unless it was chosen");
}

#[test]
fn a_window_ends_with_the_next_time_the_quiet_hours_or_the_day() {
    let untils = |doc: FrontDoc| -> Vec<_> { of(doc, &UTC_ALWAYS).iter().map(|r| r.until).collect() };
    let doc = front(&[("2026-03-05", &["09:00:00", "11:00:00", "17:00:00", "20:30:00"])]);
    assert_eq!(
        untils(doc),
        ["2026-03-05T11:00:00Z", "2026-03-05T15:00:00Z", "2026-03-05T20:30:00Z", "2026-03-05T22:00:00Z"]
            .map(at)
    );
    let mut late = front(&[("2026-03-05", &["23:30:00"])]);
    late.days[0].slots[0].chosen = true;
    assert_eq!(untils(late), [at("2026-03-06T00:00:00Z")]);
}

#[test]
fn after_three_days_without_an_answer_there_is_one_a_day() {
    let times: &[&str] = &["09:00:00", "14:00:00"];
    let days = ["2026-03-05", "2026-03-06", "2026-03-07", "2026-03-08", "2026-03-09"].map(|day| (day, times));
    let mut doc = front(&days);
    let kinds = |doc: FrontDoc| -> Vec<_> { of(doc, &UTC_ALWAYS).iter().map(|r| (r.day, r.kind)).collect() };
    let all = kinds(doc.clone());
    assert_eq!(all.iter().filter(|(_, kind)| *kind == Kind::Ordinary).count(), 6);
    let kind: Vec<_> =
        all.iter().filter(|(_, kind)| *kind == Kind::AfterSilence).map(|(day, _)| *day).collect();
    assert_eq!(kind, [days[3].0, days[4].0].map(|day| day.parse::<NaiveDate>().expect("a date")));
    doc.heard_on = "2026-03-06".parse().expect("a date");
    assert!(kinds(doc).iter().all(|(_, kind)| *kind == Kind::Ordinary), "heard of since");
}

#[test]
fn who_wants_none_gets_none() {
    let mut doc = front(&[("2026-03-05", &["09:00:00"])]);
    doc.on = false;
    assert!(of(doc, &UTC_ALWAYS).is_empty());
}

proptest! {
    /// However a span of time is cut, each slot comes exactly once.
    #[test]
    fn each_slot_comes_once_however_time_is_cut(
        minutes in proptest::collection::btree_set(0u32..1440, 1..8),
        cuts in proptest::collection::btree_set(0i64..10 * 86_400, 0..12),
        change_s in 0i64..10 * 86_400, before_h in -11i32..=13, after_h in -11i32..=13,
    ) {
        let start = at("2026-03-04T00:00:00Z");
        let zone = Sets { at: start + Duration::seconds(change_s), before_s: before_h * 3600, after_s: after_h * 3600 };
        let slots: Vec<_> = minutes.iter().map(|min| FrontSlot {
            time: NaiveTime::from_hms_opt(min / 60, min % 60, 0).expect("a time"),
            chosen: true,
        }).collect();
        let mut doc = front(&[("2026-03-06", &[]), ("2026-03-07", &[]), ("2026-03-08", &[])]);
        doc.days.iter_mut().for_each(|day| day.slots.clone_from(&slots));
        let front = Front::new(doc).expect("valid");
        let mut edges: Vec<_> = cuts.iter().map(|s| start + Duration::seconds(*s)).collect();
        edges.insert(0, start - Duration::days(2));
        edges.push(start + Duration::days(12));
        let cut: Vec<_> = edges.windows(2).flat_map(|two| reminders(&front, two[0], two[1], &zone)).collect();
        let mut names: Vec<_> = cut.iter().map(|r| (r.day, r.time)).collect();
        names.sort();
        let whole: Vec<_> = front.doc().days.iter().flat_map(|day| day.slots.iter().map(|slot| (day.day, slot.time))).collect();
        prop_assert_eq!(names, whole);
        for reminder in cut {
            prop_assert_eq!(reminder.at, zone.civil(reminder.day.and_time(reminder.time)).by_rfc_5545());
            prop_assert!(reminder.until >= reminder.at);
        }
    }
}
