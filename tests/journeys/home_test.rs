//! Home tests through the use cases, with time as an argument: asked for, refused, timed, written down,
//! and read by the clinic.

use std::cell::RefCell;

use chrono::Duration;
use sendaluna_bedside::hand_back::Wishes;
use sendaluna_bedside::home_test::{Outcome, TestLead};
use sendaluna_bedside::lead::heard::{Heard, ToneName};
use sendaluna_bedside::types::{By, Held, How, SignId, TestId, TestResult, TimerState, Words};
use sendaluna_bedside::view::home_test::{TestPress, TestStageView, TestTold};
use sendaluna_bedside::{Bedside, Clock};
use sendaluna_clinic::report::{Ground, open_report};
use sendaluna_clinic::say::ClinicSpeaker;
use sendaluna_core::home_test::CHAIR_STAND_BELOW_AVERAGE;
use sendaluna_core::measure::FlagRule;
use sendaluna_tests::device::{Device, Hand, answered, at, code, world};
use sendaluna_tests::root;
use sendaluna_tests::world::World;
use serde_json::json;

/// Day 0 is 2026-03-02. Bending the hip over 90° is shut through week 12, up to 2026-05-24.
fn tested() -> World {
    let mut world = world();
    let test = |id, test, from_week| json!({ "id": id, "episode": "hip", "test": test, "from_week": from_week, "every_weeks": 4 });
    world.plan.home_tests = serde_json::from_value(json!([
        test("rise", "chair-stand", 10),
        test("walk", "timed-up-and-go", 13),
        test("stand", "four-stage-balance", 2),
    ]))
    .expect("the form");
    let bend: sendaluna_core::precaution::Precaution = serde_json::from_value(json!({
        "id": "bend", "episode": "hip", "side": "left",
        "rule": { "kind": "range", "joint": "hip", "motion": "flexion", "most_deg": 90.0 },
        "ends": { "kind": "through", "day": "2026-05-24", "week": 12 },
        "why": { "en": "The hip could slip out." },
    }))
    .expect("the form");
    world.statement.precautions.push(bend);
    world
}

fn home(world: &World) -> (Device, Bedside) {
    let device = Device::with("Europe/Berlin", world, &at("2026-03-05T08:00:00Z"));
    let home = device.open();
    (device, home)
}

fn test(id: &str) -> TestId {
    TestId::new(id).expect("an id")
}

fn words() -> Words {
    Words::new(["en"])
}

/// The names of the tests that a day asks for, and whether each can begin.
fn asked(home: &Bedside, now: &str) -> Vec<(String, bool)> {
    let day = home.day(&words(), &at(now)).expect("a plan");
    day.tests.iter().map(|test| (test.test.to_string(), test.can_begin)).collect()
}

fn began(world: &World, id: &str, now: &str) -> (Device, TestLead, Hand) {
    let (device, mut home) = home(world);
    let clock = Hand(RefCell::new(at(now)));
    answered(&mut home, &clock.now());
    let begun = home.begin_test(&test(id), true, By::Patient, &clock.now()).expect("begins");
    let known = home.known().expect("a plan");
    (device, TestLead::new(home, known, begun, words(), &clock), clock)
}

/// Lets time pass, waking the test at each of its deadlines, and taps at the end.
fn tap_after(lead: &mut TestLead, clock: &Hand, seconds: i64) -> TestStageView {
    pass(lead, clock, seconds);
    stage(&lead.press(TestPress::Tap, clock))
}

fn pass(lead: &mut TestLead, clock: &Hand, seconds: i64) {
    let until = clock.now().mono_ms + u64::try_from(seconds * 1000).expect("small");
    while let Some(wake) = lead.wake_at().filter(|wake| *wake <= until) {
        set(clock, wake);
        lead.wake(clock);
    }
    set(clock, until);
}

fn set(clock: &Hand, mono_ms: u64) {
    let mut now = clock.0.borrow_mut();
    let passed = i64::try_from(mono_ms - now.mono_ms).expect("small");
    now.at += Duration::milliseconds(passed);
    now.mono_ms = mono_ms;
}

fn stage(told: &[TestTold]) -> TestStageView {
    match told.last() {
        Some(TestTold::Stage { stage }) => (**stage).clone(),
        other => panic!("{other:?}"),
    }
}

fn ended(told: &[TestTold]) -> (String, bool) {
    match told {
        [TestTold::Ended { said, written }] => (said.clone(), *written),
        other => panic!("{other:?}"),
    }
}

#[test]
fn a_day_asks_for_its_tests_and_a_gate_shuts_what_bends_the_hip() {
    let (_device, home) = home(&tested());
    assert_eq!(asked(&home, "2026-03-05T09:00:00Z"), []);
    assert_eq!(asked(&home, "2026-03-09T09:00:00Z"), [("stand".to_string(), true)]);
    let week_10 = asked(&home, "2026-05-04T09:00:00Z");
    assert_eq!(week_10, [("rise".to_string(), false), ("stand".to_string(), true)]);
    let view = home.day(&words(), &at("2026-05-04T09:00:00Z")).expect("a plan").tests.remove(0);
    assert_eq!(view.gate.opens, "2026-05-25".parse().ok());
    assert!(view.gate.reasons[0].said.contains("The hip could slip out."), "{view:?}");
    assert_eq!(code(home.check_test(&test("rise"), &at("2026-05-24T09:00:00Z"))), "not-yet");
    assert_eq!(code(home.check_test(&test("rise"), &at("2026-05-25T09:00:00Z"))), "done");
    assert_eq!(code(home.check_test(&test("walk"), &at("2026-05-25T09:00:00Z"))), "done");
    assert_eq!(
        code(home.check_test(&test("walk"), &at("2026-05-24T23:00:00Z"))),
        "done",
        "the 25th in Berlin"
    );
    assert_eq!(code(home.check_test(&test("nothing"), &at("2026-05-25T09:00:00Z"))), "no-such-item");
    assert_eq!(code(home.check_test(&test("walk"), &at("2026-06-20T09:00:00Z"))), "not-in-plan-now");
}

#[test]
fn a_test_begins_only_after_the_days_questions_and_with_somebody_there() {
    let (_device, mut home) = home(&tested());
    let now = at("2026-03-09T09:00:00Z");
    let begin = |home: &Bedside, helper| code(home.begin_test(&test("stand"), helper, By::Patient, &now));
    assert_eq!(begin(&home, true), "signs-not-asked");
    answered(&mut home, &now);
    assert_eq!(begin(&home, false), "helper-needed");
    assert_eq!(begin(&home, true), "done");
    let before = home.before_test(&test("stand"), &words(), &now).expect("may begin");
    let cautions = before.cautions.join(" ");
    assert!(cautions.contains("beside you") && cautions.contains("stop and sit down"), "{cautions}");
    let breath = [SignId::new("breath").expect("an id")];
    home.answer_signs(&breath, By::Patient, &now).expect("written");
    assert_eq!(begin(&home, true), "must-ring-emergency");
    assert_eq!(asked(&home, "2026-03-09T10:00:00Z"), [], "not while a ring is owed");
}

#[test]
fn a_chair_stand_is_counted_corrected_and_asked_for_no_more() {
    let (_device, mut lead, clock) = began(&tested(), "rise", "2026-05-25T09:00:00Z");
    let TestTold::Stage { stage: first } = lead.look() else { panic!("a stage") };
    assert_eq!((first.state, first.count, first.tap.as_deref()), (TimerState::Ready, None, Some("Start")));
    assert_eq!(tap_after(&mut lead, &clock, 1).count, Some(3));
    pass(&mut lead, &clock, 3);
    for n in 1..=9 {
        let shown = tap_after(&mut lead, &clock, 3);
        assert_eq!((shown.state, shown.count), (TimerState::Running, Some(n)), "{}", shown.count_said);
    }
    pass(&mut lead, &clock, 3);
    let TestTold::Stage { stage: done } = lead.look() else { panic!("a stage") };
    assert_eq!((done.state, done.stands), (TimerState::Done, Some(9)));
    let (said, written) = ended(&lead.press(TestPress::Keep { stands: Some(10), arms_used: false }, &clock));
    assert!(written && said.contains("You stood up 10 times."), "{said}");
    assert!(!said.contains("average") && said.contains("Your clinic will look at it with you."), "{said}");
    let home = lead.into_home();
    assert_eq!(asked(&home, "2026-05-26T09:00:00Z").iter().filter(|(id, _)| id == "rise").count(), 0);
    let measured = home.measures(None, &at("2026-05-26T09:00:00Z")).expect("days").tests;
    assert_eq!(measured[0].result, TestResult::ChairStand { stands: 10, arms_used: false });
    assert_eq!((measured[0].how, measured[0].helper), (How::Remembered, true), "corrected");
}

#[test]
fn a_walk_is_timed_between_two_taps() {
    let (_device, mut lead, clock) = began(&tested(), "walk", "2026-05-25T09:00:00Z");
    assert_eq!(tap_after(&mut lead, &clock, 1).state, TimerState::Running);
    let shown = tap_after(&mut lead, &clock, 14);
    assert_eq!((shown.state, shown.result), (TimerState::Done, vec!["It took 14 seconds.".to_string()]));
    let again = stage(&lead.press(TestPress::Again, &clock));
    assert_eq!((again.state, again.count), (TimerState::Ready, None));
    tap_after(&mut lead, &clock, 1);
    tap_after(&mut lead, &clock, 11);
    assert!(ended(&lead.press(TestPress::Keep { stands: None, arms_used: false }, &clock)).1);
    let measured = lead.into_home().measures(None, &clock.now()).expect("days").tests;
    assert_eq!((measured.len(), measured[0].how), (1, How::Counted));
    assert_eq!(measured[0].result, TestResult::TimedUpAndGo { tenths_s: 110 });
}

#[test]
fn stances_are_held_in_turn_and_a_stop_writes_nothing_down() {
    let (_device, mut lead, clock) = began(&tested(), "stand", "2026-03-09T09:00:00Z");
    tap_after(&mut lead, &clock, 1);
    pass(&mut lead, &clock, 10);
    let TestTold::Stage { stage: second } = lead.look() else { panic!("a stage") };
    assert!(second.ask.starts_with("2 of 4") && second.tap.is_some(), "{second:?}");
    tap_after(&mut lead, &clock, 5);
    let done = tap_after(&mut lead, &clock, 6);
    assert_eq!(done.result.len(), 2, "{done:?}");
    stage(&lead.press(TestPress::Again, &clock));
    tap_after(&mut lead, &clock, 1);
    let stopped = stage(&lead.press(TestPress::Stop, &clock));
    assert!(stopped.state == TimerState::Stopped && !stopped.can_again, "{stopped:?}");
    let told = lead.press(TestPress::Keep { stands: None, arms_used: false }, &clock);
    assert!(matches!(told.as_slice(), [TestTold::Problem { .. }]), "there is no result");
    assert!(!ended(&lead.press(TestPress::Leave, &clock)).1);
    let home = lead.into_home();
    assert_eq!(asked(&home, "2026-03-09T10:00:00Z"), [("stand".to_string(), true)]);
}

/// What was heard since this was last asked: each tone, and each text. What silences has neither.
fn heard(lead: &mut TestLead) -> Vec<(Option<ToneName>, String)> {
    let told = |heard| match heard {
        Heard::Cue { tone, text, .. } => (tone, text),
        Heard::Silence => (None, String::new()),
    };
    lead.take_heard().into_iter().map(told).collect()
}

fn texts(lead: &mut TestLead) -> Vec<String> {
    heard(lead).into_iter().map(|(_, text)| text).filter(|text| !text.is_empty()).collect()
}

#[test]
fn a_chair_stand_can_be_done_by_ear() {
    let (_device, mut lead, clock) = began(&tested(), "rise", "2026-05-25T09:00:00Z");
    lead.start();
    let sit = "Sit down and cross your arms. Feet flat on the floor.";
    assert_eq!(texts(&mut lead), ["If you feel unsafe, stop and sit down.", sit]);
    tap_after(&mut lead, &clock, 1);
    pass(&mut lead, &clock, 3);
    let tick = |n: &str| (Some(ToneName::Tick), n.to_string());
    let silence = (None, String::new());
    let go = (Some(ToneName::Out), "Go.".to_string());
    assert_eq!(heard(&mut lead), [silence, tick("3"), tick("2"), tick("1"), go]);
    for _ in 0..2 {
        tap_after(&mut lead, &clock, 3);
    }
    assert_eq!(heard(&mut lead), [(None, "1".to_string()), (None, "2".to_string())], "seconds hurry nobody");
    assert!(lead.is_going());
    pass(&mut lead, &clock, 24);
    assert_eq!(texts(&mut lead), ["That is the end. Sit down and rest.", "You stood up 2 times."]);
    assert!(!lead.is_going() && lead.main_press().is_none(), "a headset's key keeps no result");
}

#[test]
fn stances_can_be_held_by_ear() {
    let (_device, mut lead, clock) = began(&tested(), "stand", "2026-03-09T09:00:00Z");
    lead.start();
    assert_eq!(texts(&mut lead)[1], "1 of 4: feet side by side, close together.");
    let key = lead.main_press().expect("a tap");
    lead.press(key, &clock);
    assert_eq!(lead.take_heard()[0], Heard::Silence, "time begins: the instruction is cut off");
    lead.press(TestPress::Again, &clock);
    lead.take_heard();
    lead.press(key, &clock);
    pass(&mut lead, &clock, 10);
    let first = heard(&mut lead);
    assert_eq!(first[1], (Some(ToneName::Hold), "Hold".to_string()));
    let ticks = first.iter().filter(|(tone, text)| *tone == Some(ToneName::Tick) && text.is_empty()).count();
    assert_eq!(ticks, 9, "the tenth second ends it");
    let last: Vec<&str> = first.iter().skip(11).map(|(_, text)| text.as_str()).collect();
    assert_eq!(last.first(), Some(&"Feet side by side: 10 seconds."));
    assert!(last[1].starts_with("2 of 4"), "{last:?}");
    tap_after(&mut lead, &clock, 5);
    lead.take_heard();
    lead.press(TestPress::Stop, &clock);
    let stopped = lead.take_heard();
    assert!(matches!(stopped.as_slice(), [Heard::Cue { urgent: true, .. }]), "{stopped:?}");
    lead.press(TestPress::Again, &clock);
    assert!(texts(&mut lead)[0].starts_with("1 of 4"), "how to stand is said again");
}

#[test]
fn what_was_begun_yesterday_is_not_timed_today() {
    let (_device, mut lead, clock) = began(&tested(), "stand", "2026-03-09T20:00:00Z");
    pass(&mut lead, &clock, 4 * 3600);
    let (said, written) = ended(&lead.press(TestPress::Tap, &clock));
    assert!(!written && said.contains("another day"), "{said}");
}

#[test]
fn recording_never_refuses_and_the_clinic_reads_the_table() {
    let world = tested();
    let (_device, mut home) = home(&world);
    let now = at("2026-03-09T09:00:00Z");
    let outcome = |result| Outcome {
        result,
        day: "2026-03-09".parse().expect("a day"),
        how: How::Remembered,
        helper: false,
    };
    let mut write =
        |id: &str, result| home.did_test(&test(id), &outcome(result), By::Patient, &words(), &now);
    let armed = TestResult::ChairStand { stands: 11, arms_used: true };
    let against = write("rise", armed).expect("written all the same");
    assert!(against.against && against.said.contains("Ring your clinic"), "{}", against.said);
    let held = Held::new(vec![100, 100, 42]).expect("in order");
    let held = TestResult::FourStageBalance { held_tenths_s: held };
    assert!(!write("stand", held.clone()).expect("written").against);
    assert_eq!(code(write("rise", held)), "no-test-result", "of another test");
    assert_eq!(
        code(write("rise", TestResult::ChairStand { stands: 61, arms_used: false })),
        "no-test-result"
    );
    let made = home.hand_back(&Wishes::default(), &Words::new(["en"]), &now).expect("made");
    assert!(made.table.contains("home-test-done,rise,,11,stands with arms,,"), "{}", made.table);
    let seen = home.to_hand_back(&words(), &now).expect("opened in full").figures.join(" ");
    assert!(
        seen.contains("A test, Monday 9 March: You stood up 11 times.") && !seen.contains("risk"),
        "{seen}"
    );
    let opened = open_report(&made.sealed, &world.reports, &Ground::default()).expect("opens");
    assert!(opened.is_vouched_for());
    let flagged = FlagRule::TestAgainstGate { test: test("rise") };
    assert!(opened.measures.flags.iter().any(|flag| flag.rule == flagged));
    let words = words();
    let view = ClinicSpeaker::new(&words).report(&opened);
    let said = view.lines.join("\n");
    for part in [
        "11 with the arms, which scores 0",
        "at 74 or 75 years",
        "men, below average (under 12 / 11); women, below average (under 10)",
        "Nobody was beside the patient.",
        "It was not allowed on that day.",
        "tandem 4.2 s",
        "Tandem under 10 s: risk of falling",
        "the home test rise was done while it was not allowed",
    ] {
        assert!(said.contains(part), "{part}: {said}");
    }
    let json = json!(view.measures.tests);
    assert_eq!(json[0]["verdict"]["men"]["norm"], "below-average");
    assert_eq!(json[1]["verdict"]["risk"], true);
}

#[test]
fn outside_its_ages_the_table_has_no_norm() {
    let mut world = tested();
    world.plan.head.born = 1980;
    let (_device, mut home) = home(&world);
    let now = at("2026-03-09T09:00:00Z");
    let result = TestResult::ChairStand { stands: 3, arms_used: false };
    let day = "2026-03-09".parse().expect("a day");
    let outcome = Outcome { result, day, how: How::Remembered, helper: true };
    home.did_test(&test("rise"), &outcome, By::Helper, &words(), &now).expect("written");
    let made = home.hand_back(&Wishes::default(), &Words::new(["en"]), &now).expect("made");
    let opened = open_report(&made.sealed, &world.reports, &Ground::default()).expect("opens");
    let words = words();
    let said = ClinicSpeaker::new(&words).report(&opened).lines.join("\n");
    assert!(said.contains("men, no norm; women, no norm"), "{said}");
}

/// The table as it is written beside its source.
#[test]
fn the_chair_stands_table_is_that_of_its_source() {
    let path = root().join("tests/outside/chair-stand-below-average.csv");
    let text = std::fs::read_to_string(path).expect("there");
    let rows: Vec<Vec<u16>> = text
        .lines()
        .skip(1)
        .map(|line| line.split(',').take(4).map(|field| field.parse().expect("a number")).collect())
        .collect();
    let table: Vec<Vec<u16>> = CHAIR_STAND_BELOW_AVERAGE
        .iter()
        .map(|band| vec![band.from, band.through, band.men_below, band.women_below])
        .collect();
    assert_eq!(table, rows);
}
