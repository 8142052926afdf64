use super::*;
use crate::digest::Digest;
use crate::gate::{Cause, Gate, GateDay, Gates};
use crate::ids::{ItemId, MovementId, TestId};
use crate::library::Library;
use crate::plan::Plan;
use crate::plan::doc::{HomeTest, PlanDoc};
use crate::precaution::{Rule, Standing, WeightBearing};
use crate::record::{Body, By, Event, How, Stamp, State, genesis};
use crate::sample::{self, date, precaution, statement, through};
use proptest::prelude::*;

const KINDS: [TestKind; 3] = [TestKind::ChairStand, TestKind::TimedUpAndGo, TestKind::FourStageBalance];

fn test(kind: TestKind, from_week: u16, every_weeks: u16) -> HomeTest {
    let (id, episode) = (TestId::new("t").expect("an id"), sample::doc().episodes[0].id.clone());
    HomeTest { id, episode, test: kind, from_week, every_weeks }
}

/// The sample's plan, day 0 on Monday 2 March 2026, with one test.
fn plan(test: HomeTest) -> Plan {
    let doc = PlanDoc { home_tests: vec![test], ..sample::doc() };
    sample::signed(doc)
}

fn gate(kind: TestKind, rules: Vec<Rule>, day: &str) -> Gate {
    let plan = plan(test(kind, 1, 1));
    let set = |(i, rule)| precaution(&format!("p{i}"), rule, through("2026-05-24"));
    let standing = Standing::of(&[statement(rules.into_iter().enumerate().map(set).collect())]);
    let library = Library::shipped();
    let gates = Gates { plan: &plan, library: &library, standing: &standing, tightened: &[] };
    gates.test(&plan.doc().home_tests[0], &GateDay::new(date(day)))
}

fn state(bodies: Vec<(&str, Body)>) -> State {
    let mut prev = genesis();
    let mut state = State::default();
    for (seq, (day, body)) in (1u64..).zip(bodies) {
        let at = format!("{day}T10:00:00Z").parse().expect("a moment");
        let stamp = Stamp { at, offset_s: 0, boot: "b".into(), mono_ms: seq };
        let event = Event { seq, prev, stamp, by: By::Patient, body };
        prev = Digest::of(&event.to_bytes());
        state.apply(&event);
    }
    state
}

fn stands(stands: u16) -> TestResult {
    TestResult::ChairStand { stands, arms_used: false }
}

fn done(day: &str) -> (&str, Body) {
    let test = TestId::new("t").expect("an id");
    let (how, result) = (How::Counted, stands(9));
    (day, Body::HomeTestDone { test, day: date(day), result, how, helper: true, against_gate: false })
}

/// How many tests a day asks for, from week 3 on every four weeks: days 14, 42, 70 …
fn due_on(day: &str, state: &State) -> usize {
    due_at(day, &GateDay::new(date(day)), state)
}

fn due_at(day: &str, at: &GateDay, state: &State) -> usize {
    let plan = plan(test(TestKind::ChairStand, 3, 4));
    let (library, standing) = (Library::shipped(), Standing::default());
    let gates = Gates { plan: &plan, library: &library, standing: &standing, tightened: &state.tightened };
    due(&gates, date(day), at, state).len()
}

#[test]
fn every_act_is_a_movement_that_ships() {
    let library = Library::shipped();
    for (id, _) in KINDS.into_iter().flat_map(acts) {
        assert!(library.get(&MovementId::new(*id).expect("an id")).is_some(), "{id}");
    }
}

#[test]
fn a_test_is_due_once_in_every_so_many_weeks() {
    let none = State::default();
    for (day, expected) in [
        ("2026-03-01", 0),
        ("2026-03-15", 0),
        ("2026-03-16", 1),
        ("2026-04-12", 1),
        ("2026-04-13", 1),
        ("2026-06-28", 1),
        ("2026-06-29", 0),
    ] {
        assert_eq!(due_on(day, &none), expected, "{day}");
    }
    let once = state(vec![done("2026-03-16")]);
    for (day, expected) in
        [("2026-03-16", 0), ("2026-03-17", 0), ("2026-04-12", 0), ("2026-04-13", 1), ("2026-05-10", 1)]
    {
        assert_eq!(due_on(day, &once), expected, "{day}");
    }
}

#[test]
fn nothing_is_due_while_the_day_stands_still_a_ring_is_owed_or_a_break_lasts() {
    let day = "2026-03-18";
    let held = GateDay::held(date(day), date("2026-06-14"), Some(date("2026-03-17")));
    assert_eq!(due_at(day, &held, &State::default()), 0);
    let (from, through) = (date("2026-03-17"), date("2026-03-18"));
    let why = crate::record::BreakWhy::Own;
    let rest = state(vec![("2026-03-17", Body::BreakDeclared { from, through, why, words: None })]);
    assert_eq!((due_on(day, &rest), due_on("2026-03-19", &rest)), (0, 1));
    let over = |day| (day, Body::BreakEnded { day: date(day) });
    let declared = ("2026-03-17", Body::BreakDeclared { from, through, why, words: None });
    assert_eq!(due_on(day, &state(vec![declared.clone(), over(day)])), 1, "exercising again");
    assert_eq!(state(vec![declared.clone(), over(day)]).breaks, [(from, from)]);
    assert_eq!(state(vec![declared, over("2026-03-17")]).breaks, [], "nothing is left of it");
    let signs = Body::SignsAnswered { signs: vec![], gravest: Some(crate::plan::doc::Tier::RingToday) };
    let rung = |mut events: Vec<(&'static str, Body)>| {
        events.insert(0, (day, signs.clone()));
        due_on(day, &state(events))
    };
    assert_eq!(rung(vec![]), 0);
    assert_eq!(rung(vec![(day, Body::SpokeToClinic { about: None })]), 1);
    let by_hand = |day| {
        let item = ItemId::new("slide").expect("an id");
        (day, Body::DoneByHand { item, day: date(day), sets: 1, each: 1, against_gate: false })
    };
    // Fourteen days without anything done: the clinic is rung first.
    assert_eq!(due_on(day, &state(vec![by_hand("2026-03-04")])), 0);
    assert_eq!(due_on(day, &state(vec![by_hand("2026-03-05")])), 1);
}

/// Rising bends the hip to 95° (the movement `sit-to-stand`), whatever the clinic's prescription says.
#[test]
fn a_limit_of_the_hip_shuts_what_rises_from_a_chair_until_it_ends() {
    let rule = |most_deg| Rule::Range {
        joint: crate::facts::Joint::Hip,
        motion: crate::facts::Motion::Flexion,
        most_deg,
        only: vec![],
    };
    for kind in [TestKind::ChairStand, TestKind::TimedUpAndGo] {
        let Gate::NotYet(shut) = gate(kind, vec![rule(90.0)], "2026-05-24") else { panic!("{kind:?}") };
        assert_eq!((shut.opens, shut.reasons.len()), (Some(date("2026-05-25")), 1), "{kind:?}");
        assert!(gate(kind, vec![rule(90.0)], "2026-05-25").is_open(), "{kind:?}");
        assert!(gate(kind, vec![rule(95.0)], "2026-05-24").is_open(), "{kind:?}");
    }
    assert!(gate(TestKind::FourStageBalance, vec![rule(90.0)], "2026-05-24").is_open());
}

#[test]
fn no_weight_on_a_leg_shuts_every_test_and_the_brace_does_too() {
    let weight = |term| Rule::WeightBearing { term, most_kg: None, most_percent: None };
    for kind in KINDS {
        assert!(
            !gate(kind, vec![weight(WeightBearing::NonWeightBearing)], "2026-05-24").is_open(),
            "{kind:?}"
        );
        assert!(gate(kind, vec![weight(WeightBearing::Full)], "2026-05-24").is_open(), "{kind:?}");
        let brace = Rule::Brace { brace: sample::words("the splint") };
        assert!(!gate(kind, vec![brace], "2026-05-24").is_open(), "{kind:?}");
    }
    let half = Rule::WeightBearing { term: WeightBearing::Partial, most_kg: None, most_percent: Some(60.0) };
    assert!(gate(TestKind::ChairStand, vec![half.clone()], "2026-05-24").is_open());
    assert!(!gate(TestKind::FourStageBalance, vec![half.clone()], "2026-05-24").is_open(), "on one leg");
    assert!(!gate(TestKind::TimedUpAndGo, vec![half], "2026-05-24").is_open(), "each step bears it all");
}

#[test]
fn across_the_middle_shuts_the_balance_test_alone() {
    let rule = Rule::Range {
        joint: crate::facts::Joint::Hip,
        motion: crate::facts::Motion::Adduction,
        most_deg: 0.0,
        only: vec![],
    };
    let open = |kind| gate(kind, vec![rule.clone()], "2026-05-24").is_open();
    assert_eq!(KINDS.map(open), [true, true, false]);
}

#[test]
fn what_the_clinic_told_to_stop_or_what_hurt_today_is_not_tested() {
    let mut doc = sample::doc();
    doc.items[0].movement = MovementId::new("sit-to-stand-low").expect("an id");
    doc.home_tests = vec![test(TestKind::ChairStand, 1, 1)];
    let item = doc.items[0].id.clone();
    let plan = sample::signed(doc);
    let (library, standing, day) = (Library::shipped(), Standing::default(), date("2026-03-05"));
    let first = |state: &State| {
        let tightened = &state.tightened;
        let gates = Gates { plan: &plan, library: &library, standing: &standing, tightened };
        due(&gates, day, &GateDay::new(day), state).remove(0)
    };
    assert!(first(&State::default()).can_begin());
    let stopped = first(&state(vec![("2026-03-05", Body::Tightened { item: item.clone() })]));
    let Gate::NotYet(not_yet) = &stopped.gate else { panic!("the same act") };
    assert!(matches!(not_yet.reasons[0].cause, Cause::Tightened { .. }) && !stopped.can_begin());
    let mut hurt = State::default();
    hurt.history.rests.insert(item, day);
    assert!(first(&hurt).gate.is_open() && !first(&hurt).can_begin());
}

#[test]
fn a_later_result_of_the_same_day_takes_the_place_of_the_first() {
    let state = state(vec![done("2026-03-16"), done("2026-03-17"), done("2026-03-16")]);
    assert_eq!(state.tests.len(), 2);
}

#[test]
fn canonical_bytes_of_a_result_are_frozen() {
    let held = Held::new(vec![100, 100, 42]).expect("in order");
    for (result, text) in [
        (stands(11), r#"{"of":"chair-stand","stands":11,"arms_used":false}"#),
        (TestResult::TimedUpAndGo { tenths_s: 119 }, r#"{"of":"timed-up-and-go","tenths_s":119}"#),
        (
            TestResult::FourStageBalance { held_tenths_s: held },
            r#"{"of":"four-stage-balance","held_tenths_s":[100,100,42]}"#,
        ),
    ] {
        assert_eq!(serde_json::to_string(&result).expect("plain data"), text);
        assert_eq!(serde_json::from_str::<TestResult>(text).expect("read"), result);
    }
}

#[test]
fn stances_come_in_order_and_the_first_that_was_not_held_is_the_last() {
    for good in [vec![0], vec![100, 99], vec![100, 100, 100, 0], vec![100; 4]] {
        assert!(Held::new(good.clone()).is_ok(), "{good:?}");
    }
    for bad in [vec![], vec![100], vec![100; 3], vec![99, 100], vec![100; 5], vec![101], vec![0, 0]] {
        assert!(Held::new(bad.clone()).is_err(), "{bad:?}");
    }
}

/// Both edges of every row, for somebody who is that old on either side of the birthday.
#[test]
fn the_chair_stands_table_is_read_at_both_edges_of_every_age() {
    let norms = |score, born| match verdict(&stands(score), born, date("2026-06-01")) {
        Verdict::ChairStand { men, women, .. } => (men.norm, women.norm),
        other => panic!("{other:?}"),
    };
    for band in CHAIR_STAND_BELOW_AVERAGE {
        // Born so that the younger age is the first of the band, and so that the older is the last.
        for born in [2026 - band.from - 1, 2026 - band.through] {
            assert_eq!(norms(band.men_below - 1, born).0, Norm::BelowAverage, "{band:?}");
            assert_eq!(norms(band.men_below, born).0, Norm::NotBelowAverage, "{band:?}");
            assert_eq!(norms(band.women_below - 1, born).1, Norm::BelowAverage, "{band:?}");
            assert_eq!(norms(band.women_below, born).1, Norm::NotBelowAverage, "{band:?}");
        }
    }
    assert_eq!(norms(5, 1967), (Norm::NoNorm, Norm::NoNorm), "58 or 59");
    assert_eq!(norms(5, 1930), (Norm::NoNorm, Norm::NoNorm), "95 or 96");
    // 74 or 75: eleven are below the younger men's row and not below the older's.
    assert_eq!(norms(11, 1951), (Norm::ByBirthday, Norm::NotBelowAverage));
    assert_eq!(norms(5, 1966), (Norm::ByBirthday, Norm::ByBirthday), "59 has no norm, 60 has");
}

#[test]
fn arms_make_the_score_nought_and_twelve_seconds_or_a_short_tandem_are_a_risk() {
    let armed = TestResult::ChairStand { stands: 20, arms_used: true };
    let Verdict::ChairStand { score, men, .. } = verdict(&armed, 1951, date("2026-06-01")) else { panic!() };
    assert_eq!((score, men.norm), (0, Norm::BelowAverage));
    assert_eq!(men.below, [12, 11]);
    let walk = |tenths_s| verdict(&TestResult::TimedUpAndGo { tenths_s }, 1951, date("2026-06-01"));
    assert_eq!(walk(119), Verdict::TimedUpAndGo { risk: false });
    assert_eq!(walk(120), Verdict::TimedUpAndGo { risk: true });
    let held = |tenths: Vec<u8>| {
        let held_tenths_s = Held::new(tenths).expect("in order");
        verdict(&TestResult::FourStageBalance { held_tenths_s }, 1951, date("2026-06-01"))
    };
    assert_eq!(held(vec![100, 100, 99]), Verdict::FourStageBalance { risk: true });
    assert_eq!(held(vec![100, 50]), Verdict::FourStageBalance { risk: true });
    assert_eq!(held(vec![100, 100, 100, 0]), Verdict::FourStageBalance { risk: false });
}

/// Wakes a timer at each of its deadlines until it needs no more, and says when that was.
fn run(timer: &mut Timer) -> u64 {
    let mut last = 0;
    while let Some(at) = timer.wake_at() {
        timer.wake(at);
        last = at;
    }
    last
}

#[test]
fn a_chair_stand_counts_in_counts_taps_for_thirty_seconds_and_ends() {
    let mut timer = Timer::new(TestKind::ChairStand);
    assert_eq!(timer.tap(1_000), [TimerCue::CountIn { left: 3 }]);
    assert_eq!((timer.wake_at(), timer.wake(1_999)), (Some(2_000), vec![]));
    assert!(
        timer.tap(2_500).contains(&TimerCue::CountIn { left: 2 }),
        "a tap in the count-in counts nothing"
    );
    assert_eq!(timer.wake(4_000), [TimerCue::CountIn { left: 1 }, TimerCue::Go]);
    for n in 0..7 {
        let cues = timer.tap(5_000 + 2_000 * n);
        assert!(matches!(cues.last(), Some(TimerCue::Stood { .. })));
        assert!(timer.tap(5_100 + 2_000 * n).is_empty(), "an unsteady hand");
    }
    assert_eq!(timer.tap(34_000 - 1).last(), Some(&TimerCue::LostTime));
    let mut timer = Timer::new(TestKind::ChairStand);
    timer.tap(0);
    timer.wake(1_000);
    timer.wake(2_000);
    timer.wake(3_000);
    timer.tap(4_000);
    assert_eq!(run(&mut timer), 33_000);
    assert!(timer.tap(33_700).is_empty(), "the tap that comes too late begins nothing");
    assert_eq!(timer.result(), Some(stands(1)));
}

#[test]
fn a_walk_is_timed_between_two_taps_and_rounded_to_tenths() {
    let mut timer = Timer::new(TestKind::TimedUpAndGo);
    assert_eq!(timer.tap(10_000), [TimerCue::Go]);
    for second in 1..=11 {
        timer.wake(10_000 + second * 1_000);
    }
    assert_eq!(timer.seconds(), Some(11));
    assert_eq!(timer.tap(21_950), [TimerCue::End]);
    assert_eq!(timer.result(), Some(TestResult::TimedUpAndGo { tenths_s: 120 }));
    let mut timer = Timer::new(TestKind::TimedUpAndGo);
    timer.tap(0);
    assert_eq!(run(&mut timer), 300_000);
    assert_eq!((timer.state(), timer.result()), (TimerState::Stopped, None));
}

#[test]
fn four_stances_are_held_in_turn_and_the_first_that_is_not_ends_it() {
    let mut timer = Timer::new(TestKind::FourStageBalance);
    timer.tap(0);
    assert_eq!(run(&mut timer), 10_000);
    assert_eq!((timer.state(), timer.stance()), (TimerState::Ready, Some(Stance::SemiTandem)));
    timer.tap(20_000);
    timer.wake(21_000);
    assert_eq!(timer.tap(22_400).last(), Some(&TimerCue::End));
    let held_tenths_s = Held::new(vec![100, 24]).expect("in order");
    assert_eq!(timer.result(), Some(TestResult::FourStageBalance { held_tenths_s }));
    let mut timer = Timer::new(TestKind::FourStageBalance);
    for stance in 0..4 {
        timer.tap(stance * 20_000);
        run(&mut timer);
    }
    assert!(timer.result().is_some_and(|result| result.can_be()) && timer.stance().is_none());
}

#[test]
fn who_slept_through_a_part_of_it_has_no_result() {
    let mut timer = Timer::new(TestKind::FourStageBalance);
    timer.tap(0);
    assert_eq!(timer.wake(60_000), [TimerCue::LostTime]);
    assert_eq!((timer.state(), timer.has_lost_time(), timer.result()), (TimerState::Stopped, true, None));
}

proptest! {
    /// However it is tapped, woken and stopped: no panic, no result that cannot be, no more stands than taps,
    /// and after its end nothing changes.
    #[test]
    fn no_hand_brings_a_timer_out_of_order(kind in 0usize..3, acts in proptest::collection::vec((0u8..8, 1u64..3_000), 0..120)) {
        let mut timer = Timer::new(KINDS[kind]);
        let (mut now, mut taps) = (0, 0u16);
        for (act, passed) in acts {
            now += passed;
            let before = timer.clone();
            match act {
                0..=3 => { timer.tap(now); taps += 1; }
                4..=6 => { timer.wake(now); }
                _ => { timer.stop(); }
            }
            prop_assert!(timer.stands() <= taps);
            prop_assert_eq!(timer.result().is_some(), timer.state() == TimerState::Done);
            prop_assert!(timer.result().is_none_or(|result| result.kind() == KINDS[kind]));
            if matches!(before.state(), TimerState::Done | TimerState::Stopped) {
                prop_assert_eq!(&before.result(), &timer.result());
                prop_assert_eq!(before.state(), timer.state());
            }
        }
    }

    /// More precautions never open a test.
    #[test]
    fn adding_a_precaution_never_opens_a_test(kind in 0usize..3, picks in proptest::collection::vec(0usize..4, 0..4), extra in 0usize..4) {
        let rule = |i: &usize| match i {
            0 => Rule::Resistance {},
            1 => Rule::Brace { brace: sample::words("a splint") },
            2 => Rule::Position { not: crate::precaution::ForbiddenPosition::Standing },
            _ => Rule::WeightBearing { term: WeightBearing::TouchDown, most_kg: None, most_percent: Some(10.0) },
        };
        let rules: Vec<Rule> = picks.iter().map(rule).collect();
        let more: Vec<Rule> = rules.iter().cloned().chain([rule(&extra)]).collect();
        let (few, many) = (gate(KINDS[kind], rules, "2026-04-01"), gate(KINDS[kind], more, "2026-04-01"));
        prop_assert!(few.is_open() || !many.is_open());
    }
}
