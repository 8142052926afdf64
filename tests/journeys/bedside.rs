//! What a patient does, through the use cases, with time as an argument: every route that could
//! start an exercise is held against the gate.

use std::cell::RefCell;

use chrono::{DateTime, Duration, Utc};
use sendaluna_bedside::begin::Questions;
use sendaluna_bedside::guide::Guide;
use sendaluna_bedside::hand::WhichDay;
use sendaluna_bedside::receive::Confirmation;
use sendaluna_bedside::types::{
    By, Cue, Ending, IanaZone, ItemId, KeyringOrFile, LeaveReason, OperatedSide, PainAnswer, PainKind,
    SetBackKind, SignId, State, Tier, Words,
};
use sendaluna_bedside::{Bedside, BedsideError, Clock, Now};
use sendaluna_core::Coded;
use sendaluna_tests::world::{World, day};
use tempfile::TempDir;

const KEYS: KeyringOrFile = KeyringOrFile { file_only: true };

/// A clock that is set by hand.
struct Hand(RefCell<Now>);

impl Clock for Hand {
    fn now(&self) -> Now {
        self.0.borrow().clone()
    }
}

fn at(text: &str) -> Now {
    Now { at: text.parse().expect("a moment"), mono_ms: 0, boot: "b".into() }
}

/// A patient's device somewhere on earth.
struct Device {
    folder: TempDir,
    zone: &'static str,
}

impl Device {
    fn new(zone: &'static str) -> Self {
        Self { folder: tempfile::tempdir().expect("a folder"), zone }
    }

    fn open(&self) -> Bedside {
        let zone = IanaZone::named(self.zone).expect("a zone");
        Bedside::open(self.folder.path(), &KEYS, zone).expect("opens")
    }

    /// With a plan taken in at a moment.
    fn with(zone: &'static str, world: &World, now: &Now) -> Self {
        let device = Self::new(zone);
        let mut home = device.open();
        let offer = home.offer(&world.file(), Some(&world.code()), now).expect("good");
        assert!(offer.first);
        let today = home.summary(&Words::new(["en"]), &offer, now).today;
        let said = Confirmation { sides: vec![OperatedSide::Left], today };
        home.take_in(&offer, Some(&said), now).expect("taken in");
        device
    }
}

fn id(text: &str) -> ItemId {
    ItemId::new(text).expect("an id")
}

/// Answers the questions of a day without trouble.
fn answered(home: &mut Bedside, now: &Now) {
    if let Some(day) = home.before(None, now).expect("a plan").confirm_date {
        home.confirm_date(day, now).expect("the device's date");
    }
    home.answer_signs(&[], By::Patient, now).expect("answered");
    home.answer_pain_before(1, By::Patient, now).expect("answered");
}

fn code<T>(result: Result<T, BedsideError>) -> &'static str {
    result.map_or_else(|error| error.code(), |_| "done")
}

/// A plan whose gate is the straight leg raise through week 12: day 0 on 2026-03-02.
fn world() -> World {
    let mut world = World::new();
    world.plan.stages[0]
        .items
        .push(serde_json::from_value(serde_json::json!({ "item": "raise" })).expect("the form"));
    world
}

#[test]
fn through_week_12_opens_on_2026_05_25_by_every_route() {
    let device = Device::with("Europe/Berlin", &world(), &at("2026-03-05T08:00:00Z"));
    let english = Words::new(["en"]);
    for (moment, open) in [("2026-05-24T21:59:00Z", false), ("2026-05-24T22:01:00Z", true)] {
        let mut home = device.open();
        let now = at(moment);
        let gates = home.gates(&english, &now).expect("a plan");
        let raise = gates.items.iter().find(|item| item.item == id("raise")).expect("listed");
        assert_eq!(raise.gate.open, open);
        if !open {
            assert_eq!(raise.gate.opens, Some(day("2026-05-25")));
            assert_eq!(raise.gate.said, "Not yet. Opens Monday 25 May 2026, 12 weeks after the operation.");
        }
        let due = home.day(&english, &now).expect("a plan");
        assert_eq!(due.due.iter().any(|item| item.item == id("raise")), open);
        assert_eq!(due.not_yet.iter().any(|item| item.item == id("raise")), !open);
        assert_eq!(home.check_item(&id("raise"), &now).is_ok(), open);
        answered(&mut home, &now);
        let one = home.begin(Some(&id("raise")), By::Patient, &now);
        assert_eq!(code(one.map(|_| ())), if open { "done" } else { "not-yet" });
        // The plan's break rule says to ring first after so long; the item alone was asked for.
        let all = home.begin(None, By::Patient, &now);
        if let Ok(all) = all {
            assert_eq!(all.items().any(|item| *item == id("raise")), open);
        }
    }
}

#[test]
fn far_east_of_the_clinic_the_clinics_date_decides() {
    let mut world = world();
    world.plan.head.zone = "America/New_York".into();
    let device = Device::with("Pacific/Kiritimati", &world, &at("2026-03-05T08:00:00Z"));
    let mut home = device.open();
    // 25 May in Kiritimati begins at 10:00 UTC on the 24th; in New York at 04:00 UTC on the 25th.
    for (moment, open) in
        [("2026-05-24T10:30:00Z", false), ("2026-05-25T03:59:00Z", false), ("2026-05-25T04:00:00Z", true)]
    {
        let now = at(moment);
        answered(&mut home, &now);
        assert_eq!(home.check_item(&id("raise"), &now).is_ok(), open, "{moment}");
        assert_eq!(home.begin(Some(&id("raise")), By::Patient, &now).is_ok(), open, "{moment}");
    }
}

#[test]
fn a_zone_that_is_not_known_opens_nothing_early() {
    let mut world = world();
    world.plan.head.zone = "Mars/Olympus".into();
    let device = Device::with("Europe/Berlin", &world, &at("2026-03-05T08:00:00Z"));
    let home = device.open();
    assert!(home.check_item(&id("raise"), &at("2026-05-25T11:59:00Z")).is_err());
    assert!(home.check_item(&id("raise"), &at("2026-05-25T12:00:00Z")).is_ok());
}

#[test]
fn a_lift_without_the_right_keeps_the_gate_on_old_and_new_devices_and_under_another_plan() {
    let mut world = world();
    let now = at("2026-03-07T08:00:00Z");
    let old = Device::with("Europe/Berlin", &world, &at("2026-03-05T08:00:00Z"));
    world.renew(2);
    let revision_2 = world.file_with(vec![world.statement_part(), world.lift_by_the_therapist()]);
    let fresh = Device::new("Europe/Berlin");
    for (device, code) in [(&old, None), (&fresh, Some(world.code()))] {
        let mut home = device.open();
        let offer = home.offer(&revision_2, code.as_deref(), &now).expect("good");
        let said = Confirmation { sides: vec![OperatedSide::Left], today: day("2026-03-07") };
        let taken = home.take_in(&offer, Some(&said), &now).expect("taken in");
        assert_eq!(taken.lifts_ignored.len(), 1);
        assert_eq!(code_of_check(&home, &now), "not-yet");
        let gates = home.gates(&Words::new(["es"]), &now).expect("a plan");
        assert_eq!(gates.lifts_ignored.len(), 1);
    }
    // Without the surgeon's statement the file is refused, and what was in force stays.
    let without = world.file_with(vec![world.lift_by_the_therapist()]);
    let mut home = fresh.open();
    assert_eq!(code(home.offer(&without, None, &now).map(|_| ())), "statement-none");
    // Under another plan id, resting on a new statement that says "none", the gate stands.
    world.plan.head.plan = sendaluna_core::ids::PlanId::new("another").expect("an id");
    world.plan.head.issued_at = Some("2026-03-08T09:00:00Z".parse().expect("a moment"));
    world.statement.precautions.clear();
    world.statement.none = true;
    let later = at("2026-03-09T08:00:00Z");
    let offer = home.offer(&world.file(), None, &later).expect("good");
    home.take_in(&offer, None, &later).expect("taken in");
    assert_eq!(code_of_check(&home, &later), "not-yet");
}

fn code_of_check(home: &Bedside, now: &Now) -> &'static str {
    code(home.check_item(&id("raise"), now))
}

#[test]
fn the_side_is_asked_and_nothing_is_kept_until_it_is_right() {
    let world = world();
    let device = Device::new("Europe/Berlin");
    let mut home = device.open();
    let now = at("2026-03-05T08:00:00Z");
    let offer = home.offer(&world.file(), Some(&world.code()), &now).expect("good");
    let said = |side, today: &str| Confirmation { sides: vec![side], today: day(today) };
    assert_eq!(code(home.take_in(&offer, None, &now).map(|_| ())), "side-differs");
    let wrong = said(OperatedSide::Right, "2026-03-05");
    assert_eq!(code(home.take_in(&offer, Some(&wrong), &now).map(|_| ())), "side-differs");
    let yesterday = said(OperatedSide::Left, "2026-03-04");
    assert_eq!(code(home.take_in(&offer, Some(&yesterday), &now).map(|_| ())), "date-differs");
    assert_eq!(code(home.known().map(|_| ())), "no-plan");
    let right = said(OperatedSide::Left, "2026-03-05");
    assert_eq!(code(home.take_in(&offer, Some(&right), &now).map(|_| ())), "done");
    let again = home.offer(&world.file(), None, &now).expect("the same again");
    assert!(home.take_in(&again, None, &now).expect("a success").same_again);
}

/// Leads a session, answering as soon as it is asked, until something is so.
fn lead(
    home: &mut Bedside,
    guide: &mut Guide,
    clock: &Hand,
    until: impl Fn(&Guide, &[Cue]) -> bool,
) -> Vec<Cue> {
    let mut told = Vec::new();
    if guide.state() == State::Prepare && guide.wake_at().is_none() {
        told.extend(guide.start(home, clock).unwrap_or_default());
    }
    while !until(guide, &told) {
        let cues = match guide.state() {
            State::Prepare | State::Walking => guide.ready(home, clock).expect("it waits"),
            State::Done | State::Stopped => break,
            _ => {
                let wake = guide.wake_at().expect("time goes on");
                let mut now = clock.0.borrow_mut();
                let passed = i64::try_from(wake - now.mono_ms).expect("small");
                now.at += Duration::milliseconds(passed);
                now.mono_ms = wake;
                drop(now);
                guide.wake(home, clock).expect("led")
            }
        };
        told.extend(cues);
    }
    told
}

fn set_done(told: &[Cue]) -> usize {
    told.iter().filter(|cue| matches!(cue, Cue::SetDone { .. })).count()
}

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
        let (given, _) = guide.answer_hurts(&mut home, &clock, level, kind, None).expect("answered");
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
fn a_clock_that_jumped_asks_for_the_date_first() {
    let device = Device::with("Europe/Berlin", &world(), &at("2026-03-05T08:00:00Z"));
    let mut home = device.open();
    for jumped in ["2026-03-13T08:00:00Z", "2026-03-01T08:00:00Z"] {
        let now = at(jumped);
        let today = day(&jumped[..10]);
        assert_eq!(home.before(None, &now).expect("a plan").confirm_date, Some(today));
        assert_eq!(code(home.begin(None, By::Patient, &now).map(|_| ())), "date-not-confirmed");
        assert_eq!(code(home.confirm_date(day("2026-04-01"), &now)), "date-differs");
        home.confirm_date(today, &now).expect("confirmed");
        assert_eq!(home.before(None, &now).expect("a plan").confirm_date, None);
    }
}

#[test]
fn a_jump_of_the_clock_is_asked_about_whatever_else_was_done_before() {
    let device = Device::with("Europe/Berlin", &world(), &at("2026-03-05T08:00:00Z"));
    let mut home = device.open();
    let now = at("2026-03-15T08:00:00Z");
    home.did(&id("slide"), WhichDay::Today, 1, 5, By::Patient, &now).expect("written");
    assert_eq!(home.before(None, &now).expect("a plan").confirm_date, Some(day("2026-03-15")));
    assert_eq!(code(home.begin(None, By::Patient, &now).map(|_| ())), "date-not-confirmed");
    home.confirm_date(day("2026-03-15"), &now).expect("confirmed");
    assert_eq!(home.before(None, &now).expect("a plan").confirm_date, None);
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
    let (answer, _) = guide.answer_hurts(&mut home, &clock, 3, PainKind::Sharp, None).expect("answered");
    assert_eq!(answer, PainAnswer::StopExercise);
    guide.finish(&mut home, &clock.now(), None, None, None).expect("written");
    assert_eq!(code(home.begin(None, By::Patient, &clock.now()).map(|_| ())), "nothing-due");
    assert_eq!(code(home.check_item(&id("slide"), &clock.now())), "rests-today");
    assert_eq!(code(home.check_item(&id("slide"), &at("2026-03-06T09:00:00Z"))), "done");
}

#[test]
fn the_easier_way_is_kept_when_a_session_goes_on() {
    let mut world = world();
    let library = sendaluna_core::library::Library::shipped();
    let strap = sendaluna_core::ids::MovementId::new("heel-slide-strap").expect("an id");
    let facts = library.get(&strap).map(|movement| movement.facts.digest());
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
fn what_the_plan_asks_for_later_is_not_called_allowed_now() {
    let mut world = World::new();
    world.plan.stages[0].from_week = 3;
    let device = Device::with("Europe/Berlin", &world, &at("2026-03-05T08:00:00Z"));
    let home = device.open();
    let now = at("2026-03-05T09:00:00Z");
    let gates = home.gates(&Words::new(["en"]), &now).expect("a plan");
    assert_eq!(gates.items[0].gate.said, "Not now. Your plan asks for it from Monday 16 March 2026.");
    assert_eq!(code(home.check_item(&id("slide"), &now)), "not-in-plan-now");
}

#[test]
fn a_lifted_gate_opens_without_naming_the_weeks_it_did_not_wait() {
    let mut world = world();
    let dated = {
        let mut doc = world.statement.clone();
        doc.precautions.clear();
        let from = serde_json::json!({ "precaution": "raise", "from": "2026-04-06" });
        doc.lifts = vec![serde_json::from_value(from).expect("the form")];
        sendaluna_authority::sign::statement(&doc, &world.surgeon)
    };
    let device = Device::with("Europe/Berlin", &world, &at("2026-03-05T08:00:00Z"));
    world.renew(2);
    let mut home = device.open();
    let now = at("2026-03-07T08:00:00Z");
    let offer = home.offer(&world.file_with(vec![world.statement_part(), dated]), None, &now).expect("good");
    home.take_in(&offer, None, &now).expect("taken in");
    let gates = home.gates(&Words::new(["en"]), &now).expect("a plan");
    let raise = gates.items.iter().find(|item| item.item == id("raise")).expect("listed");
    assert_eq!(raise.gate.said, "Not yet. Opens Monday 6 April 2026.");
}

#[test]
fn recording_never_refuses_and_says_when_it_was_not_allowed() {
    let device = Device::with("Europe/Berlin", &world(), &at("2026-03-05T08:00:00Z"));
    let mut home = device.open();
    let now = at("2026-03-06T08:00:00Z");
    let allowed = home.did(&id("slide"), WhichDay::Yesterday, 2, 8, By::Patient, &now).expect("written");
    assert_eq!((allowed.day, allowed.against.is_some()), (day("2026-03-05"), false));
    let against =
        home.did(&id("raise"), WhichDay::Today, 1, 5, By::Patient, &now).expect("written all the same");
    assert!(against.against.is_some());
    let state = home.known().expect("a plan").state;
    assert!(state.items[&id("raise")][&day("2026-03-06")].against_gate);
    assert_eq!(
        code(home.did(&id("nothing"), WhichDay::Today, 1, 1, By::Patient, &now).map(|_| ())),
        "no-such-item"
    );
}

#[test]
fn the_patient_may_tighten_and_a_set_back_holds_every_opening() {
    let device = Device::with("Europe/Berlin", &world(), &at("2026-03-05T08:00:00Z"));
    let mut home = device.open();
    let now = at("2026-03-06T08:00:00Z");
    home.tighten(&id("slide"), By::Patient, &now).expect("written");
    assert_eq!(code(home.check_item(&id("slide"), &now)), "not-yet");
    home.end_tightening(&id("slide"), By::Patient, &now).expect("written");
    assert_eq!(code(home.check_item(&id("slide"), &now)), "done");
    home.set_back(SetBackKind::Fall, By::Patient, &now).expect("written");
    assert_eq!(code(home.check_item(&id("slide"), &now)), "done", "what was open stays open");
    assert_eq!(code(home.begin(None, By::Patient, &now).map(|_| ())), "must-ring", "but ring first");
    assert_eq!(code(home.check_item(&id("raise"), &at("2026-06-01T08:00:00Z"))), "not-yet");
}

#[test]
fn past_review_by_nothing_opens() {
    let mut world = world();
    world.plan.head.review_by = day("2026-05-20");
    let device = Device::with("Europe/Berlin", &world, &at("2026-03-05T08:00:00Z"));
    let home = device.open();
    assert_eq!(code(home.check_item(&id("raise"), &at("2026-05-26T08:00:00Z"))), "not-yet");
    let shown = home.day(&Words::new(["en"]), &at("2026-05-26T08:00:00Z")).expect("a plan");
    assert!(
        shown.notices.iter().any(|notice| notice.contains("to look at your plan by now")),
        "{:?}",
        shown.notices
    );
}

#[test]
fn every_failure_has_a_code_of_its_own() {
    let mut codes: Vec<_> = BedsideError::all().iter().map(Coded::code).collect();
    codes.sort_unstable();
    codes.dedup();
    assert_eq!(codes.len(), BedsideError::all().len());
    let moment: DateTime<Utc> = at("2026-03-06T08:00:00Z").at;
    assert_eq!(moment.timestamp(), 1_772_784_000);
}
