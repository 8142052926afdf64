//! The clinic's real program on the demo's own sources: keys, signers, statements, the check that
//! finds every kind of contradiction, and revisions.

use std::path::PathBuf;
use std::process::{Command, Output, Stdio};

use sendaluna_tests::programs::{error_code, json, program};
use sendaluna_tests::root;
use serde_json::Value;
use tempfile::TempDir;

const CHECK: [&str; 7] =
    ["plan", "check", "plan.toml", "--signers", "signers.jws", "--precautions", "precautions.jws"];

/// A clinic's desk: a folder with keys and a signed signers list.
struct Desk {
    folder: TempDir,
}

impl Desk {
    fn new() -> Self {
        let desk = Self { folder: tempfile::tempdir().expect("a folder") };
        for key in ["clinic", "surgeon", "therapist"] {
            desk.done(&["key", "new", "--out", &format!("{key}.key")]);
        }
        desk.done(&["key", "new", "--for", "reports", "--out", "reports.key"]);
        desk.fill("hip/signers.toml", "signers.toml");
        desk.done(&["signers", "sign", "signers.toml", "--key", "clinic.key", "--out", "signers.jws"]);
        desk
    }

    /// With the statement and the plan of one of the demo's folders.
    fn with(scenario: &str) -> Self {
        let desk = Self::new();
        desk.fill(&format!("{scenario}/plan.toml"), "plan.toml");
        desk.fill(&format!("{scenario}/precautions.toml"), "precautions.toml");
        desk.sign_statement("precautions", "surgeon");
        desk
    }

    fn path(&self, name: &str) -> PathBuf {
        self.folder.path().join(name)
    }

    fn run(&self, args: &[&str]) -> Output {
        let mut command = Command::new(program("sendaluna-clinic"));
        command.args(["--json", "--lang", "en"]).args(args).current_dir(self.folder.path());
        command
            .env("SENDALUNA_PASSPHRASE", "invented test words")
            .stdin(Stdio::null())
            .output()
            .expect("runs")
    }

    fn done(&self, args: &[&str]) -> Value {
        let out = self.run(args);
        assert!(out.status.success(), "{args:?}: {out:?}");
        json(&out)
    }

    /// A source of the demo, with day 0 set back 45 days from whenever this runs.
    fn fill(&self, source: &str, out: &str) {
        let mut command = Command::new("python3");
        command.arg(root().join("demo/fill.py")).arg(root().join("demo").join(source)).arg(self.path(out));
        let today = chrono::Utc::now().date_naive();
        command.args(["--day-zero", &(today - chrono::Days::new(45)).to_string()]);
        assert!(command.status().expect("runs").success());
    }

    fn sign_statement(&self, name: &str, by: &str) -> Value {
        let (source, key, out) = (format!("{name}.toml"), format!("{by}.key"), format!("{name}.jws"));
        self.done(&["precautions", "sign", &source, "--signers", "signers.jws", "--key", &key, "--out", &out])
    }

    fn sign_plan(&self, source: &str, statement: &str, by: &str, more: &[&str]) -> Output {
        let key = format!("{by}.key");
        let args =
            ["plan", "sign", source, "--signers", "signers.jws", "--precautions", statement, "--key", &key];
        self.run(&[&args[..], more].concat())
    }
}

#[test]
fn the_check_finds_every_kind_of_contradiction_and_signing_refuses() {
    let desk = Desk::with("contradictions");
    let check = desk.run(&CHECK);
    assert_eq!(check.status.code(), Some(1));
    let found = json(&check)["contradictions"].as_array().expect("a list").clone();
    for kind in [
        "movement",
        "range",
        "together",
        "action",
        "moment",
        "position",
        "weight-bearing",
        "resistance",
        "brace",
        "spine",
        "daily",
    ] {
        let one = found.iter().find(|c| c["precaution"] == format!("rule-{kind}"));
        let one = one.unwrap_or_else(|| panic!("{kind} is not found"));
        assert!(one["from"].is_string() && one["through"].is_string() && one["set_by"].is_string(), "{one}");
    }
    let signed = desk.sign_plan("plan.toml", "precautions.jws", "therapist", &["--out", "x.sendaluna"]);
    assert_eq!(error_code(&signed), "clinic-contradictions");
    assert!(!desk.path("x.sendaluna").exists());
}

/// "Hip flexion reaches …", with the week, and with what would pass instead.
#[test]
fn the_check_explains_in_numbers_and_names_what_would_pass() {
    let desk = Desk::with("contradictions");
    let check = json(&desk.run(&[&CHECK[..], &["--numbers"]].concat()));
    let found = check["contradictions"].as_array().expect("a list");
    let one = found.iter().find(|c| c["precaution"] == "rule-range").expect("a range is broken");
    let said = one["said"].as_str().expect("a sentence");
    assert!(said.contains("reaches 95°") && said.contains("through week 6"), "{said}");
    let resistance = found.iter().find(|c| c["precaution"] == "rule-resistance").expect("a band");
    let would_pass: Vec<_> = resistance["would_pass"].as_array().expect("a list").iter().collect();
    assert!(would_pass.iter().any(|id| *id == "long-arc-quad-partial"), "{would_pass:?}");
    assert!(would_pass.iter().all(|id| *id != "long-arc-quad-cuff"), "{would_pass:?}");
    let numbers = check["numbers"].as_array().expect("a list");
    assert!(numbers.iter().any(|n| n["of"] == "breaks-moment" && n["moments"][0]["nm_per_kg"].is_number()));
}

#[test]
fn the_library_is_listed_and_drawn() {
    let desk = Desk::with("contradictions");
    let all = desk.done(&["library"]);
    assert!(all.as_array().expect("a list").len() >= 70);
    let one = desk.done(&["library", "straight-leg-raise"]);
    let moments = one[0]["numbers"]["moments"].as_array().expect("a list");
    assert!(moments.iter().any(|m| m["joint"] == "hip" && m["motion"] == "flexion"), "{one}");
    desk.done(&["library", "picture", "--out", "all.svg"]);
    let sheet = std::fs::read_to_string(desk.path("all.svg")).expect("written");
    assert!(sheet.contains("Straight leg lift") && sheet.matches("<svg").count() > 80);
    desk.done(&["library", "picture", "heel-slide", "--out", "one.svg"]);
    let unknown = desk.run(&["library", "picture", "no-such", "--out", "x.svg"]);
    assert_eq!(error_code(&unknown), "clinic-unknown-movement");
    assert!(!desk.path("x.svg").exists());
}

/// A clinic's own movement is drawn as it would be checked; one that no body could do is refused, and
/// the refusal names the place.
#[test]
fn a_movement_of_the_clinics_own_is_drawn_or_refused() {
    let desk = Desk::with("contradictions");
    let shipped = root().join("src-tauri/core/library/heel-slide.toml");
    let text = std::fs::read_to_string(shipped).expect("ships").replace("\"heel-slide\"", "\"our-slide\"");
    std::fs::write(desk.path("own.toml"), &text).expect("written");
    desk.done(&["library", "picture", "--own", "own.toml", "--out", "own.svg"]);
    let bent = text.replace("knee_flexion_deg = 90.0", "knee_flexion_deg = 190.0");
    std::fs::write(desk.path("bent.toml"), bent).expect("written");
    let refused = desk.run(&["library", "picture", "--own", "bent.toml", "--out", "x.svg"]);
    assert_eq!(error_code(&refused), "clinic-source");
    let said = json(&refused)["error"]["happened"].as_str().expect("a sentence").to_string();
    assert!(said.contains("poses[1].working.knee_flexion_deg") && said.contains("190"), "{said}");
}

#[test]
fn a_slip_of_the_pen_in_a_statement_is_found_before_anything_is_signed() {
    let desk = Desk::with("hip");
    let source = std::fs::read_to_string(desk.path("precautions.toml")).expect("there");
    let problems = |changed: &str, more: &[&str]| -> Vec<String> {
        std::fs::write(desk.path("precautions.toml"), changed).expect("written");
        desk.sign_statement("precautions", "surgeon");
        let found = json(&desk.run(&[&CHECK[..], more].concat()));
        let codes = found["problems"].as_array().expect("a list").iter();
        codes.map(|problem| problem["code"].as_str().expect("a code").to_string()).collect()
    };
    let typo = source.replace("family = \"straight-leg-raise\"", "family = \"straight-leg-rise\"");
    assert_ne!(typo, source);
    assert_eq!(problems(&typo, &[]), ["unknown-family"]);
    assert_eq!(problems(&source, &[]), [""; 0]);
    let first = desk.sign_plan("plan.toml", "precautions.jws", "therapist", &["--out", "x.sendaluna"]);
    assert!(first.status.success(), "{first:?}");
    let changed = source.replacen("week = 12", "week = 2", 1);
    assert!(problems(&changed, &["--previous", "x.sendaluna"]).contains(&"precaution-changed".to_string()));
    desk.fill("hip/lift.toml", "lift.toml");
    let lift = std::fs::read_to_string(desk.path("lift.toml")).expect("there");
    std::fs::write(desk.path("lift.toml"), lift.replace("\"straight-leg-raise\"", "\"straight-leg-rise\""))
        .expect("written");
    desk.sign_statement("lift", "surgeon");
    let found = json(&desk.run(&[&CHECK[..6], &["lift.jws", "--previous", "x.sendaluna"]].concat()));
    assert_eq!(found["problems"][0]["code"], "unknown-id");
    let week = source.replacen("week = 12", "week = 0", 1);
    std::fs::write(desk.path("precautions.toml"), week).expect("written");
    let signed = desk.run(&[
        "precautions",
        "sign",
        "precautions.toml",
        "--signers",
        "signers.jws",
        "--key",
        "surgeon.key",
        "--out",
        "w.jws",
    ]);
    assert_eq!(error_code(&signed), "clinic-problems");
}

#[test]
fn keys_and_rights_are_minded() {
    let desk = Desk::with("hip");
    let again = desk.run(&["key", "new", "--out", "surgeon.key"]);
    assert_eq!(error_code(&again), "clinic-file", "a key is never written over another");
    let by_surgeon = desk.sign_plan("plan.toml", "precautions.jws", "surgeon", &["--out", "x.sendaluna"]);
    assert_eq!(error_code(&by_surgeon), "clinic-no-right");
    let by_clinic = desk.sign_plan("plan.toml", "precautions.jws", "clinic", &["--out", "x.sendaluna"]);
    assert_eq!(error_code(&by_clinic), "clinic-not-a-signer");
    let wrong_passphrase = Command::new(program("sendaluna-clinic"))
        .args(["--json", "signers", "sign", "signers.toml", "--key", "clinic.key", "--out", "y.jws"])
        .current_dir(desk.folder.path())
        .env("SENDALUNA_PASSPHRASE", "other words entirely")
        .output()
        .expect("runs");
    assert_eq!(error_code(&wrong_passphrase), "key-passphrase");
    std::fs::write(desk.path("broken.toml"), "number = 1\nclinc = \"typo\"\n").expect("written");
    let broken = desk.run(&["signers", "sign", "broken.toml", "--key", "clinic.key", "--out", "y.jws"]);
    assert_eq!(error_code(&broken), "clinic-source");
}

#[test]
fn a_revision_carries_every_statement_on_and_a_lift_without_the_right_lifts_nothing() {
    let desk = Desk::with("hip");
    assert_eq!(desk.done(&CHECK)["ok"], true);
    let first = desk.sign_plan("plan.toml", "precautions.jws", "therapist", &["--out", "x.sendaluna"]);
    assert!(first.status.success(), "{first:?}");
    let shown = desk.done(&["plan", "show", "x.sendaluna"]);
    assert_eq!(shown["revision"], 1);
    assert_eq!(desk.done(&["letter-code", "--signers", "signers.jws"])["letter_code"], shown["letter_code"]);
    let previous = ["--previous", "x.sendaluna", "--out", "y.sendaluna"];
    let stale = desk.sign_plan("plan.toml", "precautions.jws", "therapist", &previous);
    assert_eq!(error_code(&stale), "clinic-revision-not-newer");
    desk.fill("hip/plan-2.toml", "plan-2.toml");
    desk.fill("hip/lift.toml", "lift.toml");
    assert_eq!(desk.sign_statement("lift", "therapist")["lifts_without_right"], 1);
    let second = desk.sign_plan("plan-2.toml", "lift.jws", "therapist", &previous);
    assert!(second.status.success(), "{second:?}");
    let later = desk.done(&["plan", "show", "y.sendaluna"]);
    assert_eq!(later["precautions"], shown["precautions"]);
    assert_eq!(later["lifts_ignored"][0], "straight-leg-raise");
}

#[test]
fn what_a_revoked_key_had_set_must_be_stated_again() {
    let desk = Desk::with("hip");
    let first = desk.sign_plan("plan.toml", "precautions.jws", "therapist", &["--out", "x.sendaluna"]);
    assert!(first.status.success(), "{first:?}");
    desk.done(&["key", "new", "--out", "second.key"]);
    let list = std::fs::read_to_string(desk.path("signers.toml")).expect("there");
    let revoked = list.replacen(
        "key_file = \"surgeon.key.pub\"",
        "key_file = \"surgeon.key.pub\"\nrevoked = 2026-01-01",
        1,
    );
    let another = "\n[[signers]]\nid = \"second\"\nname = \"Dr Second\"\nrole = { en = \"surgeon\" }\n\
                   key_file = \"second.key.pub\"\nfrom = 2020-01-01\nrights = [\"set-precautions\"]\n";
    let number = revoked.replacen("number = 1", "number = 2", 1);
    assert_ne!(number, revoked);
    std::fs::write(desk.path("signers.toml"), number + another).expect("written");
    desk.done(&["signers", "sign", "signers.toml", "--key", "clinic.key", "--out", "signers.jws"]);
    std::fs::write(desk.path("none.toml"), "person = \"p-c3w8fz51nd9r0jya\"\nnone = true\n")
        .expect("written");
    desk.sign_statement("none", "second");
    desk.fill("hip/plan-2.toml", "plan-2.toml");
    let previous = ["--previous", "x.sendaluna", "--out", "y.sendaluna"];
    let without = desk.sign_plan("plan-2.toml", "none.jws", "therapist", &previous);
    assert_eq!(error_code(&without), "clinic-problems");
    assert!(
        json(&without)["check"]["problems"]
            .as_array()
            .expect("a list")
            .iter()
            .all(|p| p["code"] == "not-restated")
    );
    desk.sign_statement("precautions", "second");
    let restated = desk.sign_plan("plan-2.toml", "precautions.jws", "therapist", &previous);
    assert!(restated.status.success(), "{restated:?}");
}
