//! Sessions through the use cases, with time as an argument: led, stopped, gone on with, recorded.

use std::cell::RefCell;

use chrono::Duration;
use sendaluna_bedside::Clock;
use sendaluna_bedside::begin::Questions;
use sendaluna_bedside::guide::Felt;
use sendaluna_bedside::hand::WhichDay;
use sendaluna_bedside::types::{
    By, Cue, Ending, LeaveReason, PainAnswer, PainKind, SignId, State, Tier, Words,
};
use sendaluna_tests::device::{Device, Hand, answered, at, code, id, lead, set_done, world};

#[test]
fn a_session_is_led_recorded_and_ended_whole() {
    let device = Device::with("Europe/Berlin", &world(), &at("2026-03-05T08:00:00Z"));
    let mut home = device.open();
    let clock = Hand(RefCell::new(at("2026-03-05T09:00:00Z")));
    assert_eq!(code(home.begin(None, By::Patient, &clock.now()).map(|_| ())), "signs-not-asked");
    let before = home.before(None, &clock.now()).expect("a plan");
    assert_eq!((before.questions, before.confirm_date), (Questions::SignsAndPain, None));
    answered(&mut home, &clock.now());
    assert_eq!(home.before(None, &clock.now()).expect("a plan").questions, Questions::OneTap);
    let mut guide = home.begin(None, By::Patient, &clock.now()).expect("begins");
    let told = lead(&mut home, &mut guide, &clock, |_, _| false);
    assert_eq!((guide.state(), set_done(&told)), (State::Done, 2));
    let ending =
        guide.finish(&mut home, &clock.now(), Some(3), Some(2), Some("fine".into())).expect("written");
    assert_eq!(ending, Ending::Whole);
    let today = home.day(&Words::new(["en"]), &clock.now()).expect("a plan");
    assert_eq!((today.due[0].done, today.due[0].times, today.now.exercises), (1, 3, 0));
    assert!(today.due[0].times_said.contains("Again from"), "{}", today.due[0].times_said);
    assert_eq!(code(home.begin(None, By::Patient, &clock.now()).map(|_| ())), "nothing-due");
    assert_eq!(code(home.check_item(&id("slide"), &clock.now())), "too-soon");
    let mut later = clock.now();
    later.at += Duration::hours(3);
    assert_eq!(code(home.check_item(&id("slide"), &later)), "done");
    for _ in 0..2 {
        home.did(&id("slide"), WhichDay::Today, 2, 10, By::Patient, &clock.now()).expect("written");
    }
    assert_eq!(code(home.check_item(&id("slide"), &later)), "enough-today");
}

#[test]
fn after_a_crash_the_same_day_goes_on_from_the_last_finished_set() {
    let device = Device::with("Europe/Berlin", &world(), &at("2026-03-05T08:00:00Z"));
    let clock = Hand(RefCell::new(at("2026-03-05T09:00:00Z")));
    {
        let mut home = device.open();
        answered(&mut home, &clock.now());
        let mut guide = home.begin(None, By::Patient, &clock.now()).expect("begins");
        lead(&mut home, &mut guide, &clock, |_, told| set_done(told) == 1);
        // The program dies here: nothing is ended, nothing more is written.
    }
    let mut home = device.open();
    let before = home.before(None, &clock.now()).expect("a plan");
    assert!(before.open_session.is_some());
    assert!(home.day(&Words::new(["en"]), &clock.now()).expect("a plan").can_go_on);
    let mut guide = home.go_on(By::Patient, &clock.now()).expect("goes on");
    let told = lead(&mut home, &mut guide, &clock, |_, _| false);
    assert_eq!(set_done(&told), 1, "only the set that was left");
    assert_eq!(guide.finish(&mut home, &clock.now(), None, None, None).expect("written"), Ending::Whole);
    assert_eq!(code(home.go_on(By::Patient, &clock.now()).map(|_| ())), "no-open-session");
}

#[test]
fn the_next_day_begins_anew_and_closes_what_was_left_open() {
    let device = Device::with("Europe/Berlin", &world(), &at("2026-03-05T08:00:00Z"));
    let mut home = device.open();
    let clock = Hand(RefCell::new(at("2026-03-05T09:00:00Z")));
    answered(&mut home, &clock.now());
    drop(home.begin(None, By::Patient, &clock.now()).expect("begins"));
    let next = at("2026-03-06T09:00:00Z");
    assert_eq!(home.before(None, &next).expect("a plan").open_session, None);
    answered(&mut home, &next);
    drop(home.begin(None, By::Patient, &next).expect("begins"));
    let sessions = home.known().expect("a plan").state.sessions;
    assert_eq!((sessions[0].ending, sessions[0].confirmed), (Some(Ending::Part), false));
    assert_eq!(sessions[1].ending, None);
}

#[test]
fn signs_and_pain_stop_a_session_until_the_clinic_was_spoken_to() {
    let device = Device::with("Europe/Berlin", &world(), &at("2026-03-05T08:00:00Z"));
    let mut home = device.open();
    let now = at("2026-03-05T09:00:00Z");
    let breath = SignId::new("breath").expect("an id");
    assert_eq!(home.answer_signs(&[breath], By::Patient, &now).expect("answered"), Some(Tier::Emergency));
    assert_eq!(code(home.begin(None, By::Patient, &now).map(|_| ())), "must-ring-emergency");
    assert_eq!(code(home.begin(Some(&id("slide")), By::Patient, &now).map(|_| ())), "must-ring-emergency");
    home.spoke_to_clinic(By::Patient, &now).expect("written");
    // Pain at rest was not asked yet: the first questions of a day count only together.
    assert_eq!(home.before(None, &now).expect("a plan").questions, Questions::SignsAndPain);
    assert_eq!(code(home.begin(None, By::Patient, &now).map(|_| ())), "signs-not-asked");
    home.answer_pain_before(1, By::Patient, &now).expect("answered");
    home.begin(None, By::Patient, &now).expect("begins");
    // An emergency sign is a set-back: nothing opens until the clinic releases it.
    assert_eq!(code(home.check_item(&id("raise"), &at("2026-05-26T08:00:00Z"))), "not-yet");
    assert_eq!(home.answer_pain_before(7, By::Patient, &now).expect("answered"), PainAnswer::StopToday);
    assert_eq!(code(home.begin(None, By::Patient, &now).map(|_| ())), "must-ring");
    assert_eq!(code(home.answer_pain_before(11, By::Patient, &now).map(|_| ())), "figure-out-of-range");
}

#[test]
fn feeling_unwell_is_always_there_and_stops_the_day() {
    let device = Device::with("Europe/Berlin", &world(), &at("2026-03-05T08:00:00Z"));
    let mut home = device.open();
    let clock = Hand(RefCell::new(at("2026-03-05T09:00:00Z")));
    let contacts = home.contacts(&Words::new(["en"])).expect("a plan");
    assert!(contacts.signs.iter().any(|sign| sign.sign.as_str() == "unwell"));
    answered(&mut home, &clock.now());
    let mut guide = home.begin(None, By::Patient, &clock.now()).expect("begins");
    let done = |told: &[Cue]| told.iter().filter(|cue| matches!(cue, Cue::RepetitionDone { .. })).count();
    lead(&mut home, &mut guide, &clock, |_, told| done(told) == 3);
    guide.unwell(&mut home, &clock).expect("at any time");
    let ending = guide.finish(&mut home, &clock.now(), None, None, None).expect("written");
    assert_eq!(ending, Ending::StoppedAsTold);
    assert_eq!(home.known().expect("a plan").state.sessions[0].sets[0].0.done, 3);
    assert_eq!(code(home.begin(None, By::Patient, &clock.now()).map(|_| ())), "must-ring");
}

#[test]
fn this_hurts_leads_to_each_of_its_answers() {
    for (level, kind, answer) in [
        (2, PainKind::Stretching, PainAnswer::GoOn),
        // Pain before was 1: a rise of three stops this exercise, whatever the level allows.
        (4, PainKind::Stretching, PainAnswer::StopExercise),
        (1, PainKind::Sharp, PainAnswer::StopExercise),
        (9, PainKind::Stretching, PainAnswer::StopToday),
    ] {
        let device = Device::with("Europe/Berlin", &world(), &at("2026-03-05T08:00:00Z"));
        let mut home = device.open();
        let clock = Hand(RefCell::new(at("2026-03-05T09:00:00Z")));
        answered(&mut home, &clock.now());
        let mut guide = home.begin(None, By::Patient, &clock.now()).expect("begins");
        let done = |told: &[Cue]| told.iter().filter(|cue| matches!(cue, Cue::RepetitionDone { .. })).count();
        lead(&mut home, &mut guide, &clock, |_, told| done(told) == 4);
        guide.hurts(&clock).expect("at any time");
        assert_eq!(guide.wake_at(), None, "movement and voice stop");
        let given =
            guide.answer_hurts(&mut home, &clock, Felt::Level(level, kind), None).expect("answered").answer;
        assert_eq!(given, answer);
        lead(&mut home, &mut guide, &clock, |_, _| false);
        let ending = guide.finish(&mut home, &clock.now(), None, None, None).expect("written");
        let expected = match answer {
            PainAnswer::GoOn => Ending::Whole,
            PainAnswer::StopToday => Ending::StoppedAsTold,
            _ => Ending::Part,
        };
        assert_eq!(ending, expected);
        let sets = &home.known().expect("a plan").state.sessions[0].sets;
        assert_eq!(sets[0].0.done, if answer == PainAnswer::GoOn { 10 } else { 4 }, "what was done is kept");
    }
}

#[test]
fn fewer_leave_and_corrections_are_recorded() {
    let device = Device::with("Europe/Berlin", &world(), &at("2026-03-05T08:00:00Z"));
    let mut home = device.open();
    let clock = Hand(RefCell::new(at("2026-03-05T09:00:00Z")));
    answered(&mut home, &clock.now());
    let mut guide = home.begin(None, By::Patient, &clock.now()).expect("begins");
    lead(&mut home, &mut guide, &clock, |_, told| set_done(told) == 1);
    assert_eq!(guide.state(), State::Resting);
    guide.fewer(&mut home, &clock, Some(7)).expect("corrects");
    assert_eq!(code(guide.easier(&mut home, &clock).map(|_| ())), "no-easier-way");
    guide.leave(&mut home, &clock, LeaveReason::Tired).expect("leaves");
    let ending = guide.finish(&mut home, &clock.now(), None, None, None).expect("written");
    assert_eq!(ending, Ending::Part);
    let session = home.known().expect("a plan").state.sessions.remove(0);
    assert_eq!((session.sets[0].0.done, session.left[0].1), (7, LeaveReason::Tired));
}

#[test]
fn what_hurt_is_left_for_the_day_and_offered_again_the_next() {
    let device = Device::with("Europe/Berlin", &world(), &at("2026-03-05T08:00:00Z"));
    let mut home = device.open();
    let clock = Hand(RefCell::new(at("2026-03-05T09:00:00Z")));
    answered(&mut home, &clock.now());
    let mut guide = home.begin(None, By::Patient, &clock.now()).expect("begins");
    lead(&mut home, &mut guide, &clock, |guide, told| guide.state() == State::Prepare && !told.is_empty());
    guide.hurts(&clock).expect("at any time");
    let answer = guide
        .answer_hurts(&mut home, &clock, Felt::Level(3, PainKind::Sharp), None)
        .expect("answered")
        .answer;
    assert_eq!(answer, PainAnswer::StopExercise);
    guide.finish(&mut home, &clock.now(), None, None, None).expect("written");
    assert_eq!(code(home.begin(None, By::Patient, &clock.now()).map(|_| ())), "nothing-due");
    assert_eq!(code(home.check_item(&id("slide"), &clock.now())), "rests-today");
    let english = Words::new(["en"]);
    let due = home.day(&english, &clock.now()).expect("a plan");
    assert_eq!(due.due[0].times_said, "Left for today, because it hurt.");
    let gates = home.gates(&english, &clock.now()).expect("a plan");
    assert_eq!(gates.items[0].gate.said, "Left for today, because it hurt.");
    assert_eq!(code(home.check_item(&id("slide"), &at("2026-03-06T09:00:00Z"))), "done");
}

#[test]
fn the_easier_way_is_kept_when_a_session_goes_on() {
    let mut world = world();
    let library = sendaluna_core::library::Library::shipped();
    let strap = sendaluna_core::ids::MovementId::new("heel-slide-strap").expect("an id");
    let facts = library.get(&strap).map(sendaluna_core::library::Movement::digest);
    world.plan.items[0].easier = Some(sendaluna_core::plan::doc::Easier { movement: strap, facts });
    let device = Device::with("Europe/Berlin", &world, &at("2026-03-05T08:00:00Z"));
    let clock = Hand(RefCell::new(at("2026-03-05T09:00:00Z")));
    {
        let mut home = device.open();
        answered(&mut home, &clock.now());
        let mut guide = home.begin(None, By::Patient, &clock.now()).expect("begins");
        guide.start(&mut home, &clock).expect("starts");
        guide.easier(&mut home, &clock).expect("there is one, and it is open");
        lead(&mut home, &mut guide, &clock, |_, told| set_done(told) == 1);
    }
    let mut home = device.open();
    let guide = home.go_on(By::Patient, &clock.now()).expect("goes on");
    assert!(guide.is_easier(&id("slide")));
}

#[test]
fn a_session_goes_on_without_what_a_newer_plan_no_longer_has() {
    let mut world = world();
    let device = Device::with("Europe/Berlin", &world, &at("2026-03-05T08:00:00Z"));
    let now = at("2026-03-05T09:00:00Z");
    let mut home = device.open();
    answered(&mut home, &now);
    drop(home.begin(None, By::Patient, &now).expect("begins"));
    world.plan.items.retain(|item| item.id != id("slide"));
    world.plan.stages[0].items.retain(|entry| entry.item != id("slide"));
    world.renew(2);
    let offer = home.offer(&world.file(), None, &now).expect("good");
    home.take_in(&offer, None, &now).expect("taken in");
    let guide = home.go_on(By::Patient, &now).expect("goes on");
    assert_eq!(guide.items().count(), 0);
}

#[test]
fn what_was_done_yesterday_does_not_make_today_too_soon() {
    let device = Device::with("Europe/Berlin", &world(), &at("2026-03-05T08:00:00Z"));
    let mut home = device.open();
    let now = at("2026-03-06T09:00:00Z");
    home.did(&id("slide"), WhichDay::Yesterday, 2, 10, By::Patient, &now).expect("written");
    assert_eq!(code(home.check_item(&id("slide"), &now)), "done");
}

#[test]
fn no_plan_can_make_feeling_unwell_a_small_thing() {
    let mut world = world();
    let note =
        serde_json::json!({ "id": "unwell", "tier": "note", "text": { "en": "New or worse: tired." } });
    world.plan.warning_signs.push(serde_json::from_value(note).expect("the form"));
    let device = Device::with("Europe/Berlin", &world, &at("2026-03-05T08:00:00Z"));
    let mut home = device.open();
    let unwell = SignId::new("unwell").expect("an id");
    let tier = home.answer_signs(&[unwell], By::Patient, &at("2026-03-05T09:00:00Z")).expect("answered");
    assert_eq!(tier, Some(Tier::RingToday));
}
