//! Doses that step, through the use cases, with time as an argument: up with a yes, down at once, after a
//! break, in a new plan, and the question about the next morning's pain.

use std::cell::RefCell;

use chrono::Duration;
use sendaluna_bedside::before::PainBefore;
use sendaluna_bedside::begin::Questions;
use sendaluna_bedside::guide::Felt;
use sendaluna_bedside::lead::Lead;
use sendaluna_bedside::step::Way;
use sendaluna_bedside::types::{By, PainAnswer, PainKind, State, Words};
use sendaluna_bedside::view::day::ItemView;
use sendaluna_bedside::view::session::{Press, Told};
use sendaluna_bedside::{Bedside, Clock, Now};
use sendaluna_core::record::{SetBackKind, StepWhy};
use sendaluna_tests::device::{Device, Hand, answered, at, code, id, lead, world};
use sendaluna_tests::world::World;
use serde_json::json;

/// The heel slide graded: 1 round of 8, 2 of 8, 2 of 10, 2 of 12; it begins with the second.
fn stepping() -> World {
    let mut world = world();
    let tempo = json!({ "out_s": 2, "hold_s": 0, "back_s": 2, "pause_s": 1 });
    let dose = |sets: u8, n: u8| json!({ "sets": sets, "repetitions": n, "tempo": tempo, "rest_s": 20 });
    let graded = json!({
        "doses": [dose(1, 8), dose(2, 8), dose(2, 10), dose(2, 12)],
        "start": 2, "up_after_sessions": 2, "up_pain_at_most": 2, "down_pain_over": 4,
    });
    world.plan.items[0].graded = Some(serde_json::from_value(graded).expect("the form"));
    world.plan.return_dose.doses =
        vec![serde_json::from_value(json!({ "item": "slide", "dose": dose(1, 5) })).expect("the form")];
    world
}

/// A device with that plan, opened on a day, and its clock.
fn begun(world: &World) -> (Device, Bedside, Hand) {
    let now = at("2026-03-05T09:00:00Z");
    let device = Device::with("Europe/Berlin", world, &now);
    let home = device.open();
    (device, home, Hand(RefCell::new(now)))
}

fn pass(clock: &Hand, hours: i64) {
    clock.0.borrow_mut().at += Duration::hours(hours);
}

/// A whole session of what is due now: four answers, or three later the same day.
fn train(home: &mut Bedside, clock: &Hand) {
    match home.before(None, &clock.now()).expect("a plan").questions {
        Questions::SignsAndPain => answered(home, &clock.now()),
        _ => drop(home.answer_signs(&[], By::Patient, &clock.now()).expect("answered")),
    }
    let mut guide = home.begin(None, By::Patient, &clock.now()).expect("begins");
    lead(home, &mut guide, clock, |_, _| false);
    assert_eq!(guide.state(), State::Done);
    guide.finish(home, &clock.now(), Some(3), Some(1), None).expect("written");
}

fn words() -> Words {
    Words::new(["en"])
}

fn slide(home: &Bedside, now: &Now) -> ItemView {
    let day = home.day(&words(), now).expect("a plan");
    day.due.into_iter().find(|item| item.item == id("slide")).expect("of the day")
}

fn step(home: &mut Bedside, way: Way, now: &Now) -> &'static str {
    code(home.step(&id("slide"), way, By::Patient, &words(), now))
}

#[test]
fn after_whole_sessions_one_up_is_asked_once_and_comes_with_a_yes() {
    let (_device, mut home, clock) = begun(&stepping());
    assert_eq!(step(&mut home, Way::Up, &clock.now()), "up-not-yet");
    train(&mut home, &clock);
    assert_eq!(home.step_offer(&words(), &clock.now()).expect("a plan"), None);
    pass(&clock, 4);
    train(&mut home, &clock);
    let offer = home.step_offer(&words(), &clock.now()).expect("a plan").expect("two whole sessions");
    assert_eq!(
        offer.said,
        "Heel slide: your clinic allows one step up. Do it 10 times. Do this 2 rounds. Rest for 20 seconds between rounds."
    );
    let before = slide(&home, &clock.now()).step.expect("it steps");
    assert_eq!((before.said.as_str(), before.up), ("Step 2 of 4.", Some(offer.said)));
    let said = home.step(&id("slide"), Way::Up, By::Patient, &words(), &clock.now()).expect("allowed").said;
    assert!(said.starts_with("Good, one step up. From the next time, Heel slide: Do it 10 times."), "{said}");
    let after = slide(&home, &clock.now());
    assert_eq!((after.each, after.step.expect("it steps").said.as_str()), (10, "Step 3 of 4."));
    assert_eq!(step(&mut home, Way::Up, &clock.now()), "up-not-yet", "one at a time");
    pass(&clock, 4);
    train(&mut home, &clock);
    let done = home.known().expect("a plan").state.sessions[2].sets[0].0.clone();
    assert_eq!((done.done, done.of), (10, 10));
}

#[test]
fn the_end_of_a_session_carries_the_offer_and_not_now_is_heard() {
    let (_device, mut home, clock) = begun(&stepping());
    train(&mut home, &clock);
    pass(&clock, 4);
    answered(&mut home, &clock.now());
    let guide = home.begin(None, By::Patient, &clock.now()).expect("begins");
    let known = home.known().expect("a plan");
    let mut lead = Lead::new(home, known, guide, words(), &clock);
    lead.start(&clock);
    for _ in 0..2_000 {
        let Some(wake) = lead.wake_at() else {
            let told = lead.press(&Press::Ready, &clock);
            if told.iter().any(|told| matches!(told, Told::Problem { .. })) {
                break;
            }
            continue;
        };
        let passed = i64::try_from(wake - clock.now().mono_ms).expect("small");
        clock.0.borrow_mut().at += Duration::milliseconds(passed);
        clock.0.borrow_mut().mono_ms = wake;
        lead.wake(&clock);
    }
    let told = lead.press(&Press::Finish { effort: None, pain: Some(1), words: None }, &clock);
    let Some(Told::Ended { ended }) = told.last() else { panic!("it has ended: {told:?}") };
    assert_eq!(ended.offer.as_ref().map(|offer| offer.item.clone()), Some(id("slide")));
    let mut home = lead.into_home();
    assert_eq!(step(&mut home, Way::Stay, &clock.now()), "done");
    assert_eq!(home.step_offer(&words(), &clock.now()).expect("a plan"), None);
    assert_eq!(slide(&home, &clock.now()).step.map(|step| step.step), Some(2));
    assert_eq!(step(&mut home, Way::Up, &clock.now()), "done", "who asks may");
}

#[test]
fn a_day_that_has_asked_eight_times_asks_no_more() {
    let (_device, mut home, clock) = begun(&stepping());
    train(&mut home, &clock);
    pass(&clock, 4);
    train(&mut home, &clock);
    home.answer_signs(&[], By::Patient, &clock.now()).expect("answered");
    assert_eq!(home.step_offer(&words(), &clock.now()).expect("a plan"), None);
    pass(&clock, 20);
    assert!(home.step_offer(&words(), &clock.now()).expect("a plan").is_some(), "but the next day");
}

#[test]
fn pain_over_the_figure_goes_one_down_at_once_and_down_needs_no_leave() {
    let (_device, mut home, clock) = begun(&stepping());
    answered(&mut home, &clock.now());
    let mut guide = home.begin(None, By::Patient, &clock.now()).expect("begins");
    lead(&mut home, &mut guide, &clock, |guide, _| guide.state() == State::Running);
    guide.hurts(&clock).expect("it stops");
    let hurt =
        guide.answer_hurts(&mut home, &clock, Felt::Level(5, PainKind::Stretching), None).expect("answered");
    assert_eq!(hurt.answer, PainAnswer::StopExercise);
    let stepped = hurt.stepped.expect("one down");
    assert_eq!((stepped.from, stepped.to, stepped.why), (2, 1, StepWhy::Pain));
    guide.finish(&mut home, &clock.now(), None, None, None).expect("written");
    let item = slide(&home, &clock.now());
    assert_eq!((item.each, item.sets, item.step.map(|step| step.can_down)), (8, 1, Some(false)));
    assert_eq!(step(&mut home, Way::Down, &clock.now()), "least-step");
    assert_eq!(step(&mut home, Way::Up, &clock.now()), "rests-today");
    let raise = home.step(&id("raise"), Way::Down, By::Patient, &words(), &clock.now());
    assert_eq!(code(raise), "no-steps");
    let (_device, mut home, clock) = begun(&stepping());
    assert_eq!(step(&mut home, Way::Down, &clock.now()), "done");
    assert_eq!(slide(&home, &clock.now()).sets, 1);
}

#[test]
fn the_next_mornings_pain_is_asked_once_and_a_rise_makes_the_day_smaller() {
    let (_device, mut home, clock) = begun(&stepping());
    train(&mut home, &clock);
    assert!(!home.before(None, &clock.now()).expect("a plan").morning, "not on the day itself");
    pass(&clock, 22);
    let view = home.before_view(None, false, &words(), &clock.now()).expect("may begin");
    assert!(view.morning && view.coming[0].dose.starts_with("Do it 8 times. Do this 2 rounds."));
    let pain = PainBefore { morning: Some(3), now: Some(1), seen: None };
    let answer = home.answer_before(&[], pain, By::Patient, &words(), &clock.now()).expect("answered");
    assert_eq!(answer.stop, None);
    let morning = answer.morning.expect("two points over yesterday's");
    assert_eq!(
        morning.said,
        [
            "It hurt more this morning than before you exercised yesterday. Tell your clinic.",
            "Heel slide goes one step down today: Do it 8 times.",
        ]
    );
    assert_eq!(morning.nobody_sees, "Nobody at the clinic sees this now. Ring them.");
    let view = home.before_view(None, false, &words(), &clock.now()).expect("may begin");
    assert_eq!((view.morning, view.coming[0].dose.as_str()), (false, "Do it 8 times."));
    let events: Vec<_> = home.known().expect("a plan").state.pain.into_iter().rev().take(2).collect();
    assert_eq!(events.iter().map(|(_, pain)| pain.level).collect::<Vec<_>>(), [Some(1), Some(3)]);
    // Two days without a session: there is no next morning to ask about.
    pass(&clock, 48);
    assert!(!home.before(None, &clock.now()).expect("a plan").morning);
}

#[test]
fn a_morning_no_worse_leaves_everything_as_it_is() {
    let (_device, mut home, clock) = begun(&stepping());
    train(&mut home, &clock);
    pass(&clock, 22);
    let pain = PainBefore { morning: Some(2), now: Some(2), seen: None };
    let answer = home.answer_before(&[], pain, By::Patient, &words(), &clock.now()).expect("answered");
    assert_eq!((answer.morning, answer.stop), (None, None));
    assert_eq!(slide(&home, &clock.now()).step.map(|step| step.step), Some(2));
    let wrong = PainBefore { morning: Some(11), ..PainBefore::default() };
    assert_eq!(
        code(home.answer_before(&[], wrong, By::Patient, &words(), &clock.now())),
        "figure-out-of-range"
    );
}

#[test]
fn after_a_break_it_begins_again_where_the_clinic_lets_it_start() {
    let (_device, mut home, clock) = begun(&stepping());
    train(&mut home, &clock);
    pass(&clock, 4);
    train(&mut home, &clock);
    assert_eq!(step(&mut home, Way::Up, &clock.now()), "done");
    pass(&clock, 24 * 8);
    let day = home.day(&words(), &clock.now()).expect("a plan");
    assert!(day.notices.iter().any(|notice| notice.starts_with("Exercises that had gone up begin again")));
    let item = slide(&home, &clock.now());
    assert_eq!((item.sets, item.each), (1, 5), "the return dose");
    assert_eq!(
        item.step.expect("it steps").said,
        "Smaller today, after your break. After that, step 2 of 4."
    );
    if let Some(day) = home.before(None, &clock.now()).expect("a plan").confirm_date {
        home.confirm_date(day, &clock.now()).expect("the device's date");
    }
    assert_eq!(step(&mut home, Way::Up, &clock.now()), "up-not-yet");
    train(&mut home, &clock);
    pass(&clock, 24);
    let item = slide(&home, &clock.now());
    assert_eq!((item.sets, item.each, item.step.map(|step| step.step)), (2, 8, Some(2)));
}

#[test]
fn a_new_plan_with_other_doses_begins_at_its_own_start() {
    let mut world = stepping();
    let (_device, mut home, clock) = begun(&world);
    train(&mut home, &clock);
    pass(&clock, 4);
    train(&mut home, &clock);
    assert_eq!(step(&mut home, Way::Up, &clock.now()), "done");
    pass(&clock, 24);
    world.renew(2);
    let take_in = |home: &mut Bedside, world: &World, now: &Now| {
        let offer = home.offer(&world.file(), None, now).expect("good");
        home.take_in(&offer, None, now).expect("taken in");
    };
    take_in(&mut home, &world, &clock.now());
    assert_eq!(slide(&home, &clock.now()).step.map(|step| step.step), Some(3), "the same doses: it holds");
    world.renew(3);
    world.plan.items[0].graded.as_mut().expect("graded").doses.pop();
    take_in(&mut home, &world, &clock.now());
    let item = slide(&home, &clock.now());
    assert_eq!(item.step.map(|step| (step.step, step.of)), Some((2, 3)));
}

#[test]
fn a_yes_never_passes_a_gate_that_has_shut_since() {
    let (_device, mut home, clock) = begun(&stepping());
    train(&mut home, &clock);
    pass(&clock, 4);
    train(&mut home, &clock);
    home.tighten(&id("slide"), By::Patient, &clock.now()).expect("always");
    assert_eq!(step(&mut home, Way::Up, &clock.now()), "not-yet");
    assert_eq!(step(&mut home, Way::Down, &clock.now()), "done", "down is never gated");
    home.end_tightening(&id("slide"), By::Patient, &clock.now()).expect("written");
    assert_eq!(step(&mut home, Way::Up, &clock.now()), "up-not-yet", "the row begins again");
    home.set_back(SetBackKind::Fall, By::Patient, &clock.now()).expect("written");
    assert_eq!(step(&mut home, Way::Up, &clock.now()), "must-ring");
}
