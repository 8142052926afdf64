use super::*;
use crate::digest::Digest;
use crate::home_test::{Norm, Row, TestResult, Verdict};
use crate::ids::{SessionId, TestId};
use crate::plan::doc::Tier;
use crate::record::{Body, BreakWhy, By, Ending, How, Moment, Pain, SetBackKind, SetRecord, Stamp, genesis};
use crate::sample::{self, date, precaution, statement, through};
use crate::session::{PainAnswer, SetId, SidesAtOnce};
use chrono::{DateTime, Days, Utc};
use proptest::prelude::*;

/// A record in the making.
#[derive(Debug, Default, Clone)]
struct Diary {
    events: Vec<Event>,
    sessions: u32,
}

impl Diary {
    fn add(&mut self, day: &str, body: Body) -> &mut Self {
        let at: DateTime<Utc> = format!("{day}T10:00:00Z").parse().expect("a moment");
        let seq = self.events.len() as u64 + 1;
        let prev = self.events.last().map_or_else(genesis, |event| Digest::of(&event.to_bytes()));
        let stamp = Stamp { at, offset_s: 0, boot: "b".into(), mono_ms: seq };
        self.events.push(Event { seq, prev, stamp, by: By::Patient, body });
        self
    }

    /// A session of sets of one item: so many of so many, each.
    fn session(&mut self, day: &str, item: &str, sets: &[(u16, u16)], ending: Ending) -> &mut Self {
        self.sessions += 1;
        let session = SessionId::new(format!("s-{}", self.sessions)).expect("an id");
        let item = id(item);
        self.add(day, Body::SessionStarted { session: session.clone(), items: vec![item.clone()] });
        for (n, (done, of)) in sets.iter().enumerate() {
            let set = u8::try_from(n + 1).expect("few");
            let set = SetId { item: item.clone(), set, sides: SidesAtOnce::Left };
            let record = SetRecord { set, done: *done, of: *of, easier: false };
            self.add(day, Body::SetDone { session: session.clone(), record, how: How::Counted });
        }
        let end = Body::SessionEnded { session, ending, confirmed: true, effort: None, words: None };
        self.add(day, end)
    }

    fn pain(&mut self, day: &str, moment: Moment, level: u8, answer: PainAnswer) -> &mut Self {
        let pain =
            Pain { moment, level: Some(level), distress: None, kind: None, place: None, item: None, answer };
        self.add(day, Body::PainAnswered { session: None, pain })
    }

    fn by_hand(&mut self, day: &str, on: &str, sets: u8, each: u16) -> &mut Self {
        self.add(day, Body::DoneByHand { item: id("slide"), day: date(on), sets, each, against_gate: false })
    }

    fn own_break(&mut self, day: &str, from: &str, through: &str) -> &mut Self {
        let (from, through) = (date(from), date(through));
        self.add(day, Body::BreakDeclared { from, through, why: BreakWhy::Own, words: None })
    }
}

fn id(item: &str) -> ItemId {
    ItemId::new(item).expect("an id")
}

/// A plan that asks for the heel slide alone: 2 sets of 10, three times a day, from 2 March 2026.
fn slide_only(from: &str, times: u8) -> Period {
    let mut doc = sample::doc();
    doc.stages.truncate(1);
    doc.stages[0].items.retain(|entry| entry.item == id("slide"));
    if let Some(item) = doc.items.iter_mut().find(|item| item.id == id("slide")) {
        item.when = crate::plan::doc::When::TimesADay { times, least_hours_between: 0 };
    }
    Period { plan: sample::signed(doc), standing: Standing::default(), from: date(from) }
}

fn of(periods: &[Period], diary: &Diary, from: &str, through: &str) -> Measures {
    let library = Library::shipped();
    let measured = Measured {
        periods,
        events: &diary.events,
        library: &library,
        waking: Waking::default(),
        broken_from: None,
    };
    measure(&measured, date(from), date(through))
}

fn close(a: f64, b: f64) -> bool {
    (a - b).abs() < 1e-9
}

/// Worked by hand. Six sets a day are asked for. Monday: all six. Tuesday: one set whole and one of 5 of
/// 10, 1.5 of 6. Wednesday: nothing. Thursday: two sets from memory. Together 9.5 of 24.
#[test]
fn a_week_worked_by_hand() {
    let whole = [(10, 10); 6];
    let mut diary = Diary::default();
    diary
        .session("2026-03-02", "slide", &whole, Ending::Whole)
        .session("2026-03-03", "slide", &[(10, 10), (5, 10)], Ending::Part)
        .by_hand("2026-03-05", "2026-03-05", 2, 10);
    let measures = of(&[slide_only("2026-03-02", 3)], &diary, "2026-03-02", "2026-03-05");
    let marks: Vec<_> = measures.days.iter().map(|day| day.mark).collect();
    assert_eq!(marks, [DayMark::Whole, DayMark::Part, DayMark::NoRecord, DayMark::Part]);
    let dose = measures.overall.dose;
    assert_eq!(dose.prescribed, 24);
    assert!(close(dose.counted, 7.5) && close(dose.remembered, 2.0) && close(dose.not_confirmed, 0.0));
    assert!(close(dose.percent().expect("due"), 100.0 * 9.5 / 24.0));
    assert_eq!((measures.weeks.len(), measures.weeks[0].week), (1, 1));
    assert_eq!(measures.items.len(), 1);
    assert!(close(measures.items[0].all.done(), 9.5));
}

#[test]
fn overdoing_one_day_hides_nothing_of_another() {
    let mut diary = Diary::default();
    diary.session("2026-03-02", "slide", &[(10, 10); 10], Ending::Whole);
    let measures = of(&[slide_only("2026-03-02", 3)], &diary, "2026-03-02", "2026-03-03");
    assert!(close(measures.overall.dose.done(), 6.0));
    assert!(close(measures.overall.dose.beyond, 4.0));
    assert_eq!(measures.overall.dose.prescribed, 12);
    assert_eq!(measures.items[0].days_beyond, 1);
}

#[test]
fn what_is_done_as_needed_is_neither_due_nor_overdone() {
    let mut period = slide_only("2026-03-02", 3);
    let mut doc = period.plan.doc().clone();
    let as_needed = crate::plan::doc::When::AsNeeded { daily_most: 2 };
    doc.items.iter_mut().filter(|item| item.id == id("slide")).for_each(|item| item.when = as_needed.clone());
    period.plan = Plan::new(doc).expect("valid");
    let mut diary = Diary::default();
    diary.session("2026-03-02", "slide", &[(10, 10); 5], Ending::Whole);
    let measures = of(&[period], &diary, "2026-03-02", "2026-03-03");
    let dose = measures.overall.dose;
    assert_eq!((dose.prescribed, dose.offered, measures.overall.days_due), (0, 4 + 4, 0));
    assert!(close(dose.as_needed, 4.0) && close(dose.beyond, 1.0) && close(dose.done(), 0.0));
}

#[test]
fn what_the_pain_rule_ended_is_told_apart_from_what_was_left() {
    let mut diary = Diary::default();
    diary.session("2026-03-02", "slide", &[(4, 10)], Ending::StoppedAsTold).session(
        "2026-03-03",
        "slide",
        &[(4, 10)],
        Ending::Part,
    );
    let all = of(&[slide_only("2026-03-02", 3)], &diary, "2026-03-02", "2026-03-04").overall;
    assert_eq!((all.days_due, all.stopped_as_told, all.part, all.no_record), (3, 1, 1, 1));
}

#[test]
fn nobody_answered_is_a_column_of_its_own() {
    let mut diary = Diary::default();
    diary.session("2026-03-02", "slide", &[(10, 10)], Ending::Part);
    if let Some(Body::SessionEnded { confirmed, .. }) = diary.events.last_mut().map(|event| &mut event.body) {
        *confirmed = false;
    }
    let dose = of(&[slide_only("2026-03-02", 3)], &diary, "2026-03-02", "2026-03-02").overall.dose;
    assert!(close(dose.not_confirmed, 1.0) && close(dose.counted, 0.0));
}

#[test]
fn breaks_are_told_both_ways_and_late_ones_apart() {
    let mut diary = Diary::default();
    diary.own_break("2026-03-03", "2026-03-03", "2026-03-04").own_break(
        "2026-03-07",
        "2026-03-06",
        "2026-03-07",
    );
    let measures = of(&[slide_only("2026-03-02", 3)], &diary, "2026-03-02", "2026-03-08");
    assert_eq!((measures.overall.days_due, measures.without_breaks.days_due), (7, 3));
    assert_eq!(measures.late_break_days, 2, "two of the four were declared after they began");
}

#[test]
fn breaks_the_clinic_ordered_and_days_in_hospital_are_not_due() {
    let mut diary = Diary::default();
    let (from, through) = (date("2026-03-03"), date("2026-03-04"));
    diary
        .add("2026-03-02", Body::BreakDeclared { from, through, why: BreakWhy::Clinic, words: None })
        .add("2026-03-06", Body::SetBack { what: SetBackKind::Readmission, day: date("2026-03-06") })
        .add("2026-03-09", Body::SpokeToClinic { about: None });
    let measures = of(&[slide_only("2026-03-02", 3)], &diary, "2026-03-02", "2026-03-10");
    let due: Vec<bool> = measures.days.iter().map(|day| day.mark != DayMark::NotDue).collect();
    assert_eq!(due, [true, false, false, true, false, false, false, true, true]);
}

#[test]
fn a_break_that_was_ended_is_due_from_that_day_on() {
    let mut diary = Diary::default();
    let (from, through) = (date("2026-03-03"), date("2026-03-08"));
    let later = (date("2026-03-09"), date("2026-03-09"));
    let rest = |(from, through)| Body::BreakDeclared { from, through, why: BreakWhy::Clinic, words: None };
    diary
        .add("2026-03-02", rest((from, through)))
        .add("2026-03-02", rest(later))
        .add("2026-03-06", Body::BreakEnded { day: date("2026-03-06") });
    let measures = of(&[slide_only("2026-03-02", 3)], &diary, "2026-03-02", "2026-03-10");
    let due: Vec<bool> = measures.days.iter().map(|day| day.mark != DayMark::NotDue).collect();
    assert_eq!(due, [true, false, false, false, true, true, true, false, true]);
}

#[test]
fn gated_items_and_days_before_the_plan_are_not_due() {
    let gate = precaution(
        "a",
        crate::precaution::Rule::Position { not: crate::precaution::ForbiddenPosition::Supine },
        through("2026-03-05"),
    );
    let mut period = slide_only("2026-03-04", 3);
    period.standing = Standing::of(&[statement(vec![gate])]);
    let measures = of(&[period], &Diary::default(), "2026-03-02", "2026-03-07");
    let due: Vec<u32> =
        measures.days.iter().map(|d| d.items.iter().map(|(_, p)| p.prescribed).sum()).collect();
    assert_eq!(due, [0, 0, 0, 0, 6, 6]);
}

#[test]
fn a_revision_in_mid_week_counts_from_its_day() {
    let periods = [slide_only("2026-03-02", 3), slide_only("2026-03-05", 1)];
    let measures = of(&periods, &Diary::default(), "2026-03-02", "2026-03-08");
    assert_eq!(measures.overall.dose.prescribed, 3 * 6 + 4 * 2);
}

#[test]
fn pain_is_a_median_with_its_range_and_a_change_only_past_two_points() {
    let mut diary = Diary::default();
    for (day, level) in ["02", "03", "04"].into_iter().zip([2, 3, 6]) {
        diary.pain(&format!("2026-03-{day}"), Moment::Before, level, PainAnswer::GoOn);
    }
    for day in ["16", "17", "18"] {
        diary.pain(&format!("2026-03-{day}"), Moment::Before, 5, PainAnswer::GoOn);
    }
    let periods = [slide_only("2026-03-02", 3)];
    let measures = of(&periods, &diary, "2026-03-02", "2026-03-18");
    let week = measures.feeling.weeks[0].before.expect("answers");
    assert!(close(week.median, 3.0) && (week.least, week.most, week.answers) == (2, 6, 3));
    assert!(close(measures.feeling.change.expect("both ends"), 2.0));
    assert!(!measures.feeling.rises(), "two points are not past two points");
    diary.pain("2026-03-18", Moment::Before, 7, PainAnswer::GoOn).pain(
        "2026-03-18",
        Moment::Before,
        7,
        PainAnswer::GoOn,
    );
    diary.pain("2026-03-18", Moment::Before, 7, PainAnswer::GoOn).pain(
        "2026-03-18",
        Moment::Before,
        7,
        PainAnswer::GoOn,
    );
    let measures = of(&periods, &diary, "2026-03-02", "2026-03-18");
    assert!(measures.feeling.rises());
    assert!(measures.flags.iter().any(|flag| matches!(flag.rule, FlagRule::RisingPain { .. })));
}

#[test]
fn flags_say_whom_they_are_for_and_by_which_rule() {
    let mut diary = Diary::default();
    let left = |session: &str| Body::ItemLeft {
        session: SessionId::new(session).expect("an id"),
        item: id("slide"),
        reason: LeaveReason::Tired,
    };
    diary
        .add("2026-03-02", Body::SignsAnswered { signs: vec![], gravest: Some(Tier::RingToday) })
        .add("2026-03-02", Body::SignsAnswered { signs: vec![], gravest: Some(Tier::Note) })
        .pain("2026-03-03", Moment::During, 9, PainAnswer::StopToday)
        .add("2026-03-04", Body::SetBack { what: SetBackKind::Fall, day: date("2026-03-04") })
        .add("2026-03-05", left("a"))
        .add("2026-03-06", left("b"))
        .add("2026-03-07", left("c"))
        .add("2026-03-07", Body::DateConfirmed { day: date("2026-03-07"), jump_s: 700_000 });
    diary.add(
        "2026-03-07",
        Body::DoneByHand { item: id("slide"), day: date("2026-03-06"), sets: 1, each: 5, against_gate: true },
    );
    let measures = of(&[slide_only("2026-03-02", 3)], &diary, "2026-03-02", "2026-03-08");
    let rules: Vec<_> = measures.flags.iter().map(|flag| (flag.group, flag.day, flag.rule.clone())).collect();
    let (ring, talk, file) = (FlagGroup::RingToday, FlagGroup::TalkAbout, FlagGroup::TheFile);
    assert_eq!(
        rules,
        [
            (ring, date("2026-03-02"), FlagRule::WarningSign { tier: Tier::RingToday }),
            (ring, date("2026-03-03"), FlagRule::PainOverLimit { level: Some(9) }),
            (ring, date("2026-03-04"), FlagRule::Fall),
            (ring, date("2026-03-06"), FlagRule::AgainstGate { item: id("slide") }),
            (talk, date("2026-03-08"), FlagRule::Skipped { item: id("slide"), times: 3 }),
            (file, date("2026-03-07"), FlagRule::Clock { jump_s: 700_000 }),
        ]
    );
}

#[test]
fn a_slope_is_the_median_of_all_slopes() {
    // By hand, between (0,0) (1,1) (2,2) (3,4): 1, 1, 4/3, 1, 3/2 and 2; between the middle two, 7/6.
    let trend = theil_sen(&[(0.0, 0.0), (1.0, 1.0), (2.0, 2.0), (3.0, 4.0)]).expect("a slope");
    assert!(close(trend.slope, 7.0 / 6.0), "{trend:?}");
    assert!(trend.low <= trend.slope && trend.slope <= trend.high);
    assert_eq!(theil_sen(&[(1.0, 2.0)]), None);
    assert_eq!(theil_sen(&[(1.0, 2.0), (1.0, 5.0)]), None);
}

fn day_of_march() -> impl Strategy<Value = String> {
    (2u32..29).prop_map(|day| format!("2026-03-{day:02}"))
}

fn any_diary() -> impl Strategy<Value = Diary> {
    let set = (0u16..=12).prop_map(|done| (done, 10u16));
    let session = (day_of_march(), proptest::collection::vec(set, 1..8), any::<bool>());
    proptest::collection::vec(session, 0..12).prop_map(|mut all| {
        all.sort_by(|a, b| a.0.cmp(&b.0));
        let mut diary = Diary::default();
        for (day, sets, told) in all {
            let ending = if told { Ending::StoppedAsTold } else { Ending::Part };
            diary.session(&day, "slide", &sets, ending);
        }
        diary
    })
}

/// The sample was born in 1951: 74 or 75 in March 2026. What lies outside the span is not told.
#[test]
fn home_tests_are_told_with_what_the_table_says_and_flagged_against_a_gate() {
    let test = |day: &str, result: TestResult, against_gate| {
        let test = TestId::new("up").expect("an id");
        Body::HomeTestDone { test, day: date(day), result, how: How::Counted, helper: true, against_gate }
    };
    let mut diary = Diary::default();
    diary
        .add("2026-03-04", test("2026-03-04", TestResult::ChairStand { stands: 9, arms_used: false }, true))
        .add("2026-03-05", test("2026-03-05", TestResult::TimedUpAndGo { tenths_s: 134 }, false))
        .add("2026-03-20", test("2026-03-20", TestResult::TimedUpAndGo { tenths_s: 110 }, false));
    let measures = of(&[slide_only("2026-03-02", 3)], &diary, "2026-03-02", "2026-03-08");
    let told: Vec<_> = measures.tests.iter().map(|test| (test.day, test.verdict.clone())).collect();
    let row = |below: &[u16]| Row { below: below.to_vec(), norm: Norm::BelowAverage };
    let (men, women) = (row(&[12, 11]), row(&[10]));
    assert_eq!(
        told,
        [
            (date("2026-03-04"), Some(Verdict::ChairStand { score: 9, ages: [74, 75], men, women })),
            (date("2026-03-05"), Some(Verdict::TimedUpAndGo { risk: true })),
        ]
    );
    let against = FlagRule::TestAgainstGate { test: TestId::new("up").expect("an id") };
    let flag = Flag { group: FlagGroup::RingToday, day: date("2026-03-04"), rule: against };
    assert_eq!(measures.flags, [flag]);
    let without = of(&[slide_only("2026-03-02", 3)], &Diary::default(), "2026-03-02", "2026-03-08");
    assert!(!serde_json::to_string(&without).expect("plain data").contains("tests"), "as before");
}

proptest! {
    #[test]
    fn doing_more_never_lowers_the_dose(diary in any_diary(), on in day_of_march(), each in 1u16..15) {
        let periods = [slide_only("2026-03-02", 3)];
        let before = of(&periods, &diary, "2026-03-02", "2026-03-29").overall.dose;
        let mut more = diary.clone();
        more.by_hand("2026-03-30", &on, 1, each);
        let after = of(&periods, &more, "2026-03-02", "2026-03-29").overall.dose;
        prop_assert!(after.done() >= before.done() - 1e-9);
        prop_assert_eq!(after.prescribed, before.prescribed);
        prop_assert!(after.done() <= f64::from(after.prescribed) + 1e-9);
    }

    #[test]
    fn a_break_never_raises_a_denominator(diary in any_diary(), from in day_of_march(), days in 0u64..10) {
        let periods = [slide_only("2026-03-02", 3)];
        let before = of(&periods, &diary, "2026-03-02", "2026-03-29");
        let mut resting = diary.clone();
        let last = date(&from).checked_add_days(Days::new(days)).expect("a day").to_string();
        resting.own_break("2026-03-30", &from, &last);
        let after = of(&periods, &resting, "2026-03-02", "2026-03-29");
        prop_assert_eq!(after.overall.dose.prescribed, before.overall.dose.prescribed);
        prop_assert!(after.without_breaks.dose.prescribed <= before.without_breaks.dose.prescribed);
        prop_assert!(after.without_breaks.days_due <= before.without_breaks.days_due);
    }

    #[test]
    fn weeks_and_items_add_up_to_the_whole(diary in any_diary()) {
        let measures = of(&[slide_only("2026-03-02", 3)], &diary, "2026-03-02", "2026-03-29");
        let days: u32 = measures.weeks.iter().map(|week| week.all.days_due).sum();
        let sets: u32 = measures.weeks.iter().map(|week| week.all.dose.prescribed).sum();
        let done: f64 = measures.weeks.iter().map(|week| week.all.dose.done()).sum();
        let by_item: f64 = measures.items.iter().map(|item| item.all.done()).sum();
        prop_assert_eq!((days, sets), (measures.overall.days_due, measures.overall.dose.prescribed));
        prop_assert!(close(done, measures.overall.dose.done()) && close(by_item, done));
        let all = measures.overall;
        prop_assert_eq!(all.whole + all.part + all.stopped_as_told + all.no_record, all.days_due);
    }

    #[test]
    fn a_day_without_a_record_is_neither_done_nor_refused(diary in any_diary()) {
        let measures = of(&[slide_only("2026-03-02", 3)], &diary, "2026-03-02", "2026-03-29");
        for day in measures.days.iter().filter(|day| day.mark == DayMark::NoRecord) {
            prop_assert!(day.items.iter().all(|(_, p)| p.done() == 0.0 && p.beyond == 0.0));
        }
        prop_assert!(measures.items.iter().all(|item| item.left.is_empty()));
    }
}

mod stepped;
