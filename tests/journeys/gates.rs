//! Days, zones, lifts and set-backs through the use cases: every route that could start an exercise
//! is held against the gate.

use sendaluna_bedside::BedsideError;
use sendaluna_bedside::hand::WhichDay;
use sendaluna_bedside::receive::Confirmation;
use sendaluna_bedside::types::{By, Coded, OperatedSide, SetBackKind, Words};
use sendaluna_bedside::{Bedside, Now};
use sendaluna_tests::device::{Device, answered, at, code, id, world};
use sendaluna_tests::world::{World, day};

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
}

#[test]
fn a_fall_holds_by_the_clinics_date_even_where_it_is_later_already() {
    let mut world = world();
    world.plan.head.zone = "America/New_York".into();
    let device = Device::with("Pacific/Kiritimati", &world, &at("2026-03-05T08:00:00Z"));
    let mut home = device.open();
    // The 25th in Kiritimati, the 24th in New York: the gate that opens on the 25th stays shut.
    home.set_back(SetBackKind::Fall, By::Patient, &at("2026-05-24T20:00:00Z")).expect("written");
    assert_eq!(code(home.check_item(&id("raise"), &at("2026-05-26T08:00:00Z"))), "not-yet");
}
