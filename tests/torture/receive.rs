//! Receiving signed files: every refusal, and the attack list of The Update Framework (rollback,
//! freeze, mix-and-match, wrong key, key compromise, endless data) with its control.

use chrono::NaiveDate;
use sendaluna_authority::sign;
use sendaluna_core::Coded;
use sendaluna_core::digest::Digest;
use sendaluna_core::plan::doc::DayZero;
use sendaluna_core::precaution::{End, Rule, Standing};
use sendaluna_exchange::file::{PlanFile, SIZE_LIMIT};
use sendaluna_exchange::receive::{Held, HeldPlan, Received, receive};
use sendaluna_exchange::refusal::Refusal;
use sendaluna_exchange::signers::Right;
use sendaluna_tests::world::{World, day};

fn first(world: &World, file: &[u8]) -> Result<Received, Refusal> {
    receive(file, Some(&world.code()), None, day("2026-03-10"))
}

fn again(file: &[u8], held: &Held) -> Result<Received, Refusal> {
    receive(file, None, Some(held), day("2026-03-10"))
}

fn held(received: &Received) -> Held {
    let head = received.plan.head();
    Held {
        clinic_key: received.clinic_key,
        person: head.person.clone(),
        signers_number: received.signers.number,
        signers_digest: received.signers_part.digest,
        plans: vec![HeldPlan {
            plan: head.plan.clone(),
            revision: head.revision,
            digest: received.plan_part.digest,
            issued_at: received.plan.issued_at(),
        }],
        statements: received.statements.iter().map(|(accepted, _)| accepted.clone()).collect(),
    }
}

fn refused(result: Result<Received, Refusal>) -> &'static str {
    result.map_or_else(|refusal| refusal.code(), |_| "accepted")
}

#[test]
fn a_good_file_is_taken_with_the_right_code_only() {
    let world = World::new();
    let file = world.file();
    let received = first(&world, &file).expect("good");
    assert!(!received.same_again);
    assert_eq!(received.statements.len(), 1);
    let today = day("2026-03-10");
    assert_eq!(refused(receive(&file, None, None, today)), "code-needed");
    let other = World::new().code();
    assert_eq!(refused(receive(&file, Some(&other), None, today)), "code-other-clinic");
    let mut mistyped = world.code().into_bytes();
    mistyped[0] = if mistyped[0] == b'A' { b'B' } else { b'A' };
    let mistyped = String::from_utf8(mistyped).expect("ASCII");
    assert_eq!(refused(receive(&file, Some(&mistyped), None, today)), "code-mistyped");
    assert_eq!(refused(again(&file, &held(&received))), "accepted");
    assert!(again(&file, &held(&received)).expect("the same again").same_again);
}

#[test]
fn every_changed_byte_and_every_truncation_is_refused() {
    let world = World::new();
    let file = world.file();
    let held = held(&first(&world, &file).expect("good"));
    for at in 0..file.len() {
        let mut changed = file.clone();
        changed[at] ^= 0x01;
        assert_ne!(refused(again(&changed, &held)), "accepted", "byte {at}");
        assert_ne!(refused(again(&file[..at], &held)), "accepted", "cut at {at}");
    }
    for more in [" ", "\n", "\0", "{}"] {
        assert_ne!(refused(again(&[&file, more.as_bytes()].concat(), &held)), "accepted");
    }
}

#[test]
fn rollback_is_refused_and_the_same_again_is_a_success() {
    let mut world = World::new();
    let one = world.file();
    world.plan.head.revision = 2;
    world.plan.head.issued_at = Some("2026-03-05T09:00:00Z".parse().expect("a moment"));
    let two = world.file();
    let held_two = held(&first(&world, &two).expect("good"));
    assert_eq!(refused(again(&one, &held_two)), "plan-older");
    world.plan.head.called = "Eve".into();
    assert_eq!(refused(again(&world.file(), &held_two)), "plan-changed");
    // An older plan under another id is no newer for that.
    world.plan.head.plan = sendaluna_core::ids::PlanId::new("another").expect("an id");
    world.plan.head.issued_at = Some("2026-03-04T09:00:00Z".parse().expect("a moment"));
    assert_eq!(refused(again(&world.file(), &held_two)), "plan-older");
    world.plan.head.issued_at = Some("2026-03-06T09:00:00Z".parse().expect("a moment"));
    assert_eq!(refused(again(&world.file(), &held_two)), "accepted");
}

#[test]
fn the_signers_list_only_counts_up() {
    let mut world = World::new();
    world.signers.number = 2;
    let held = held(&first(&world, &world.file()).expect("good"));
    world.signers.clinic = "Hillside and Sons".into();
    world.renew(2);
    assert_eq!(refused(again(&world.file(), &held)), "signers-changed");
    world.signers.number = 1;
    world.plan.head.least_signers = Some(1);
    assert_eq!(refused(again(&world.file(), &held)), "signers-older");
    world.signers.number = 3;
    assert_eq!(refused(again(&world.file(), &held)), "accepted");
    // A plan can ask for a list at least as new as itself.
    world.plan.head.least_signers = Some(4);
    assert_eq!(refused(again(&world.file(), &held)), "signers-older");
}

#[test]
fn a_compromised_key_is_revoked_for_everything_it_ever_signed() {
    let mut world = World::new();
    let revoked = |world: &mut World, i: usize| {
        world.signers.number += 1;
        world.signers.signers[i].revoked = Some(day("2026-03-01"));
    };
    revoked(&mut world, 0);
    assert_eq!(refused(first(&world, &world.file())), "signer-revoked");
    let mut world = World::new();
    revoked(&mut world, 1);
    assert_eq!(refused(first(&world, &world.file())), "signer-revoked");
}

#[test]
fn what_a_revoked_key_lifted_is_not_lifted() {
    let mut world = World::new();
    let received = first(&world, &world.file_with(vec![world.statement_part(), world.lift_by_the_surgeon()]))
        .expect("good");
    let accepted: Vec<_> = received.statements.iter().map(|(accepted, _)| accepted.clone()).collect();
    let opens = |world: &World| Standing::of(&world.signers.judge(accepted.clone())).in_force[0].opens;
    assert_eq!(opens(&world), Some(NaiveDate::MIN), "lifted at once");
    world.signers.number = 2;
    world.signers.signers[0].revoked = Some(day("2026-03-09"));
    assert_eq!(
        opens(&world),
        NaiveDate::from_ymd_opt(2026, 5, 25),
        "the precaution stays, the lift does not"
    );
}

#[test]
fn signers_sign_within_their_days_and_rights() {
    let change = |change: fn(&mut World)| {
        let mut world = World::new();
        change(&mut world);
        refused(first(&world, &world.file()))
    };
    assert_eq!(change(|w| w.signers.signers[0].from = day("2026-03-04")), "signer-not-yet-valid");
    assert_eq!(change(|w| w.signers.signers[1].until = Some(day("2026-03-02"))), "signer-expired");
    assert_eq!(
        change(|w| w.signers.signers[1].rights = vec![Right::LiftPrecautions]),
        "signer-without-right"
    );
    assert_eq!(change(|w| w.signers.signers[0].rights = vec![Right::WritePlans]), "signer-without-right");
    assert_eq!(change(|w| drop(w.signers.signers.remove(0))), "signer-unknown");
    assert_eq!(change(|w| w.signers.signers[0].key = w.signers.clinic_key), "signers-invalid");
    assert_eq!(change(|w| w.signers.signers[0].key = w.signers.signers[1].key), "signers-invalid");
    assert_eq!(change(|w| w.signers.signers.clear()), "signers-invalid");
}

#[test]
fn parts_are_not_mixed_and_matched() {
    let world = World::new();
    let (file, statement) = (world.parts(), world.statement_part());
    let build = |statements: Vec<String>| {
        PlanFile::new(file.signers.clone(), statements, file.plan.clone()).to_bytes()
    };
    assert_eq!(refused(first(&world, &build(vec![]))), "statement-missing");
    assert_eq!(refused(first(&world, &build(vec![statement.clone(), statement.clone()]))), "statement-extra");
    let mut other = World::new();
    other.same_keys_as(&world);
    other.statement.precautions[0].id = sendaluna_core::ids::PrecautionId::new("other").expect("an id");
    assert_eq!(refused(first(&world, &build(vec![other.statement_part()]))), "statement-missing");
    assert_eq!(
        refused(first(&world, &build(vec![statement.clone(), other.statement_part()]))),
        "statement-extra"
    );
    // A statement where the plan belongs, and the plan where a statement belongs.
    let swapped = PlanFile::new(file.signers.clone(), vec![file.plan.clone()], statement).to_bytes();
    assert_eq!(refused(first(&world, &swapped)), "part-type");
    // Another clinic's whole file, and another clinic's signers under this plan.
    let stranger = World::new();
    let held = held(&first(&world, &world.file()).expect("good"));
    assert_eq!(refused(again(&stranger.file(), &held)), "clinic-other");
    let mixed =
        PlanFile::new(stranger.parts().signers, file.precautions.clone(), file.plan.clone()).to_bytes();
    assert_eq!(refused(receive(&mixed, Some(&stranger.code()), None, day("2026-03-10"))), "signer-unknown");
}

#[test]
fn a_lost_clinic_key_needs_a_newly_typed_code_and_gates_are_kept() {
    let world = World::new();
    let held = held(&first(&world, &world.file()).expect("good"));
    let mut anew = World::new();
    anew.plan.head.revision = 2;
    anew.plan.head.issued_at = Some("2026-03-06T09:00:00Z".parse().expect("a moment"));
    let file = anew.file();
    assert_eq!(refused(again(&file, &held)), "clinic-other");
    let received =
        receive(&file, Some(&anew.code()), Some(&held), day("2026-03-10")).expect("the new letter");
    let all: Vec<_> =
        held.statements.iter().cloned().chain(received.statements.iter().map(|(s, _)| s.clone())).collect();
    assert!(!Standing::of(&all).in_force.is_empty());
}

#[test]
fn someone_elses_plan_or_statement_is_refused() {
    let world = World::new();
    let held = held(&first(&world, &world.file()).expect("good"));
    let someone = || sendaluna_core::ids::PersonId::new("p-someone").expect("an id");
    let mut other = World::new();
    other.same_keys_as(&world);
    other.plan.head.person = someone();
    assert_eq!(refused(first(&other, &other.file())), "person-other");
    other.statement.person = someone();
    assert_eq!(refused(again(&other.file(), &held)), "person-other");
}

#[test]
fn precautions_keep_their_content_and_must_have_been_looked_at() {
    let mut world = World::new();
    let held = held(&first(&world, &world.file()).expect("good"));
    world.renew(2);
    world.statement.precautions[0].rule = Rule::Resistance {};
    assert_eq!(refused(again(&world.file(), &held)), "precaution-changed");
    let mut none = World::new();
    none.statement.precautions.clear();
    none.statement.none = true;
    assert_eq!(refused(first(&none, &none.file())), "accepted");
    none.statement.none = false;
    assert_eq!(refused(first(&none, &none.file())), "part-invalid");
    // Only lifts, by nobody who has looked.
    none.statement.lifts = vec![sendaluna_core::precaution::Lift {
        precaution: sendaluna_core::ids::PrecautionId::new("raise").expect("an id"),
        from: None,
    }];
    assert_eq!(refused(first(&none, &none.file())), "statement-none");
}

#[test]
fn a_lift_without_the_right_is_taken_in_and_ignored() {
    let world = World::new();
    let lift = world.lift_by_the_therapist();
    let digest = Digest::of(lift.as_bytes());
    let file = world.file_with(vec![world.statement_part(), lift]);
    let received = first(&world, &file).expect("taken in");
    assert_eq!(received.plan.doc().statements[1], digest);
    let accepted: Vec<_> = received.statements.iter().map(|(accepted, _)| accepted.clone()).collect();
    let standing = Standing::of(&accepted);
    assert_eq!(standing.ignored_lifts.len(), 1);
    assert_eq!(standing.in_force[0].opens, NaiveDate::from_ymd_opt(2026, 5, 25));
}

#[test]
fn whoever_signs_must_mean_the_same_operation() {
    let mut world = World::new();
    world.statement.episodes[0].side = sendaluna_core::facts::OperatedSide::Right;
    assert_eq!(refused(first(&world, &world.file())), "episode-differs");
    let mut world = World::new();
    world.statement.episodes[0].day_zero = DayZero::Known { date: day("2026-03-01") };
    assert_eq!(refused(first(&world, &world.file())), "episode-differs");
    world.statement.episodes[0].day_zero = DayZero::NotYetKnown {};
    world.statement.precautions[0].ends = End::DayZeroUnknown { week: 12 };
    assert_eq!(refused(first(&world, &world.file())), "accepted");
}

#[test]
fn signed_but_invalid_is_refused_with_its_place() {
    let mut world = World::new();
    world.plan.items[0].dose.sets = 0;
    let refusal = first(&world, &world.file()).expect_err("not valid");
    assert_eq!(refusal, Refusal::Invalid("items[0].dose.sets".into()));
}

#[test]
fn hostile_files_are_refused_whole() {
    let world = World::new();
    assert_eq!(refused(first(&world, &vec![b'{'; SIZE_LIMIT + 1])), "file-too-large");
    assert_eq!(refused(first(&world, &b"[".repeat(SIZE_LIMIT))), "file-too-deep");
    assert_eq!(refused(first(&world, b"\x89PNG\r\n")), "file-not-ours");
    assert_eq!(refused(first(&world, br#"{"sendaluna":2}"#)), "format-newer");
    let mut newer = serde_json::to_value(&world.plan).expect("plain data");
    newer["novel"] = true.into();
    assert_eq!(refused(first(&world, &world.file_with_plan(&newer))), "format-newer");
    newer["format"] = 2.into();
    assert_eq!(refused(first(&world, &world.file_with_plan(&newer))), "format-newer");
}

#[test]
fn every_refusal_has_a_code_of_its_own() {
    let mut codes: Vec<_> = Refusal::all().iter().map(Coded::code).collect();
    codes.sort_unstable();
    let all = codes.len();
    codes.dedup();
    assert_eq!(codes.len(), all);
}

#[test]
fn signing_is_deterministic() {
    // RFC 8032: no randomness enters a signature.
    let world = World::new();
    assert_eq!(sign::plan(&world.plan, &world.therapist), sign::plan(&world.plan, &world.therapist));
}
