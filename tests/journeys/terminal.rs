//! The patient's real program, from the outside. `tests/run` builds it first; waits are for the
//! program's own output, never for time.

use std::io::{BufRead, BufReader, Write};
use std::path::{Path, PathBuf};
use std::process::{Child, ChildStdout, Command, Stdio};

use sendaluna_tests::programs::{error_code, json, program};
use sendaluna_tests::world::World;
use serde_json::Value;
use tempfile::TempDir;

/// A folder with a plan file of two short sets, and its letter code.
struct Scene {
    folder: TempDir,
    world: World,
}

impl Scene {
    fn new() -> Self {
        let mut world = World::new();
        for item in &mut world.plan.items {
            item.dose = serde_json::from_value(serde_json::json!({
                "sets": 2, "repetitions": 1, "rest_s": 1,
                "tempo": { "out_s": 1, "hold_s": 0, "back_s": 1, "pause_s": 0 },
            }))
            .expect("the form");
        }
        world.plan.home_tests = serde_json::from_value(serde_json::json!([{
            "id": "go", "episode": "hip", "test": "timed-up-and-go", "from_week": 1, "every_weeks": 4,
        }]))
        .expect("the form");
        // Day 0 is set back from whenever this runs, so that stage and gate hold.
        let today = chrono::Utc::now().date_naive();
        let zero = today - chrono::Days::new(20);
        let zero_text = serde_json::json!({ "kind": "known", "date": zero });
        for episode in world.plan.episodes.iter_mut().chain(&mut world.statement.episodes) {
            episode.day_zero = serde_json::from_value(zero_text.clone()).expect("the form");
        }
        world.statement.precautions[0].ends =
            sendaluna_core::precaution::End::Through { day: zero + chrono::Days::new(83), week: Some(12) };
        world.plan.head.last_day = zero + chrono::Days::new(118);
        world.plan.head.review_by = zero + chrono::Days::new(100);
        Self { folder: tempfile::tempdir().expect("a folder"), world }
    }

    fn path(&self, name: &str) -> PathBuf {
        self.folder.path().join(name)
    }

    fn write(&self, name: &str, bytes: &[u8]) -> PathBuf {
        let path = self.path(name);
        std::fs::write(&path, bytes).expect("written");
        path
    }

    fn patient(&self, args: &[&str]) -> Command {
        let mut command = Command::new(program("sendaluna"));
        command.arg("--data").arg(self.path("home")).arg("--key-in-file").args(args);
        command.env("LC_ALL", "en_GB.UTF-8").env_remove("SENDALUNA_HOME").stdin(Stdio::null());
        command
    }

    fn received() -> Self {
        Self::new().taken_in()
    }

    /// With a heel slide of one round, or two after one whole session.
    fn stepping() -> Self {
        let mut scene = Self::new();
        let item = &mut scene.world.plan.items[0];
        let mut doses = [item.dose.clone(), item.dose.clone()];
        doses[0].sets = 1;
        item.graded = Some(
            serde_json::from_value(serde_json::json!({
                "doses": doses, "start": 1, "up_after_sessions": 1, "up_pain_at_most": 2, "down_pain_over": 4,
            }))
            .expect("the form"),
        );
        scene.taken_in()
    }

    fn taken_in(self) -> Self {
        let scene = self;
        let file = scene.write("plan.sendaluna", &scene.world.file());
        let code = scene.world.code();
        let args = ["receive", text(&file), "--code", &code, "--side", "left", "--yes"];
        let out = scene.patient(&args).output().expect("runs");
        assert!(out.status.success(), "{out:?}");
        scene
    }
}

fn text(path: &Path) -> &str {
    path.to_str().expect("plain")
}

#[test]
fn receive_due_gates_and_did_answer_in_words_and_json() {
    let scene = Scene::received();
    let due = json(&scene.patient(&["due", "--json"]).output().expect("runs"));
    assert_eq!(due["due"][0]["item"], "slide");
    assert_eq!(due["not_yet"][0]["item"], "raise");
    assert_eq!(due["not_yet"][0]["gate"]["reasons"][0]["set_by"], "A surgeon (surgeon)");
    let words = scene.patient(&["due"]).output().expect("runs");
    let words = String::from_utf8(words.stdout).expect("text");
    for said in [
        "Not yet. Opens",
        "12 weeks after the operation",
        "Nobody at the clinic sees this now",
        "112",
        "not a medical device",
    ] {
        assert!(words.contains(said), "{said}");
    }
    let gates = json(&scene.patient(&["gates", "--json"]).output().expect("runs"));
    assert_eq!(gates["items"].as_array().map(Vec::len), Some(2));
    let did = scene.patient(&["did", "raise", "--each", "5", "--json"]).output().expect("runs");
    assert!(did.status.success(), "recording never refuses");
    assert_eq!(json(&did)["against_gate"], true);
    let spanish = scene.patient(&["--lang", "es", "due"]).output().expect("runs");
    assert!(String::from_utf8(spanish.stdout).expect("text").contains("Todavía no. Se abre"));
}

#[test]
fn what_is_not_allowed_cannot_be_started() {
    let scene = Scene::received();
    let out =
        scene.patient(&["session", "--only", "raise", "--signs", "none", "--pain", "0", "--json"]).output();
    assert_eq!(error_code(&out.expect("runs")), "not-yet");
    let out =
        scene.patient(&["session", "--only", "nothing", "--signs", "none", "--pain", "0", "--json"]).output();
    assert_eq!(error_code(&out.expect("runs")), "no-such-item");
}

#[test]
fn refusals_are_said_and_leave_what_was_in_force() {
    let scene = Scene::received();
    let before = scene.patient(&["due", "--json"]).output().expect("runs").stdout;
    let good = scene.world.file();
    let mut altered = good.clone();
    altered[good.len() / 2] ^= 1;
    let stranger = World::new();
    for (name, bytes, code) in [
        ("altered", altered, "file-altered"),
        ("cut", good[..good.len() - 1].to_vec(), "file-altered"),
        ("stranger", stranger.file(), "clinic-other"),
        ("photo", b"\x89PNG\r\n\x1a\n".to_vec(), "no-codes"),
        ("letter", b"%PDF-1.7".to_vec(), "file-not-ours"),
        ("newer", br#"{"sendaluna":2}"#.to_vec(), "format-newer"),
        ("huge", vec![b' '; 3_000_000], "file-too-large"),
    ] {
        let file = scene.write(name, &bytes);
        let out = scene.patient(&["receive", text(&file), "--json"]).output().expect("runs");
        assert_eq!(error_code(&out), code, "{name}");
    }
    let same =
        scene.patient(&["receive", text(&scene.path("plan.sendaluna")), "--json"]).output().expect("runs");
    assert_eq!(json(&same)["same_again"], true);
    let missing = scene.patient(&["receive", text(&scene.path("nowhere")), "--json"]).output().expect("runs");
    assert_eq!(error_code(&missing), "file-not-read");
    assert_eq!(scene.patient(&["due", "--json"]).output().expect("runs").stdout, before);
}

#[test]
fn the_first_file_needs_its_code_and_the_right_side() {
    let scene = Scene::new();
    let file = scene.write("plan.sendaluna", &scene.world.file());
    let code = scene.world.code();
    let receive = |args: &[&str]| {
        let all = [&["receive", text(&file), "--json"], args].concat();
        scene.patient(&all).output().expect("runs")
    };
    assert_eq!(error_code(&receive(&[])), "code-needed");
    assert_eq!(error_code(&receive(&["--code", "0000-0000-0001"])), "code-mistyped");
    assert_eq!(error_code(&receive(&["--code", &World::new().code()])), "code-other-clinic");
    assert_eq!(error_code(&receive(&["--code", &code])), "not-answered");
    assert_eq!(error_code(&receive(&["--code", &code, "--side", "right", "--yes"])), "side-differs");
    assert_eq!(
        error_code(&receive(&["--code", &code, "--side", "left", "--yes", "--today", "2020-01-01"])),
        "date-differs"
    );
    let careless = code.to_lowercase().replace('-', " ").replace('0', "o").replace('1', "l");
    let out = receive(&["--code", &careless, "--side", "left", "--yes"]);
    assert!(out.status.success(), "{out:?}");
}

#[test]
fn a_full_disk_while_receiving_is_said_and_nothing_is_half_there() {
    let scene = Scene::new();
    let file = scene.write("plan.sendaluna", &scene.world.file());
    let code = scene.world.code();
    // Files may not grow over a few blocks, as on a full disk; the signal is ignored, so that the
    // program sees the error.
    let full = |blocks: u32| {
        let mut shell = Command::new("bash");
        shell.args(["-c", "trap '' XFSZ; ulimit -f \"$1\"; shift; exec \"$@\"", "full", &blocks.to_string()]);
        shell.arg(program("sendaluna")).arg("--data").arg(scene.path("home"));
        shell.args([
            "--key-in-file",
            "--json",
            "receive",
            text(&file),
            "--code",
            &code,
            "--side",
            "left",
            "--yes",
        ]);
        shell.stdin(Stdio::null()).output().expect("runs")
    };
    for blocks in [0, 4, 16, 40] {
        let out = full(blocks);
        assert_eq!(error_code(&out), "store-disk-full", "{blocks} blocks");
    }
    let due = scene.patient(&["due", "--json"]).output().expect("runs");
    assert_eq!(error_code(&due), "no-plan");
    let args = ["receive", text(&file), "--code", &code, "--side", "left", "--yes"];
    assert!(scene.patient(&args).output().expect("runs").status.success(), "with room again it goes through");
}

/// A session under way, led in JSON lines.
struct Running {
    child: Child,
    lines: std::io::Lines<BufReader<ChildStdout>>,
}

impl Running {
    fn start(scene: &Scene, args: &[&str]) -> Self {
        Self::of(scene, &[&["session", "--signs", "none", "--pain", "1"], args].concat())
    }

    fn of(scene: &Scene, args: &[&str]) -> Self {
        let mut command = scene.patient(&[args, &["--json"]].concat());
        let mut child = command.stdin(Stdio::piped()).stdout(Stdio::piped()).spawn().expect("runs");
        let lines = BufReader::new(child.stdout.take().expect("piped")).lines();
        Self { child, lines }
    }

    fn say(&mut self, line: &str) {
        let stdin = self.child.stdin.as_mut().expect("piped");
        writeln!(stdin, "{line}").expect("written");
    }

    /// Reads until a cue.
    fn until(&mut self, cue: &str) -> Value {
        self.until_so(cue, |line| line["cue"] == cue)
    }

    fn until_so(&mut self, what: &str, is_so: impl Fn(&Value) -> bool) -> Value {
        for line in self.lines.by_ref() {
            let line: Value = serde_json::from_str(&line.expect("a line")).expect("JSON");
            if is_so(&line) {
                return line;
            }
        }
        panic!("it ended before {what}");
    }

    fn end(mut self) -> Vec<Value> {
        drop(self.child.stdin.take());
        let rest =
            self.lines.map(|line| serde_json::from_str(&line.expect("a line")).expect("JSON")).collect();
        self.child.wait().expect("ends");
        rest
    }
}

#[test]
fn kill_9_in_mid_session_loses_no_finished_set_and_the_same_day_goes_on() {
    let scene = Scene::received();
    let mut running = Running::start(&scene, &["--anew"]);
    running.until("await-ready");
    let looking = json(&scene.patient(&["due", "--json"]).output().expect("runs"));
    assert_eq!(looking["can_go_on"], true, "one may look while a session runs");
    let second =
        scene.patient(&["session", "--signs", "none", "--pain", "1", "--json"]).output().expect("runs");
    assert_eq!(error_code(&second), "store-in-use");
    running.say("ready");
    let done = running.until("set-done");
    assert_eq!((&done["set"]["set"], &done["done"]), (&1.into(), &1.into()));
    running.until("rest");
    running.child.kill().expect("SIGKILL");
    running.child.wait().expect("dead");
    let due = json(&scene.patient(&["due", "--json"]).output().expect("runs"));
    assert_eq!(due["can_go_on"], true);
    let mut again = Running::start(&scene, &["--go-on"]);
    again.until("await-ready");
    again.say("ready");
    let done = again.until("set-done");
    assert_eq!(done["set"]["set"], 2, "only what was left is led");
    let rest = again.end();
    assert_eq!(rest.last().expect("an ending")["ending"], "whole");
    let due = json(&scene.patient(&["due", "--json"]).output().expect("runs"));
    assert_eq!((&due["can_go_on"], &due["due"][0]["done"]), (&false.into(), &1.into()));
}

#[test]
fn pain_over_the_limit_stops_the_day_until_the_clinic_was_spoken_to() {
    let scene = Scene::received();
    let mut running = Running::start(&scene, &[]);
    running.until("await-ready");
    running.say("ready");
    running.until("phase");
    running.say("hurts 9 sharp hip");
    let rest = running.end();
    assert!(rest.iter().any(|line| line["pain_answer"] == "stop-today"), "{rest:?}");
    assert_eq!(rest.last().expect("an ending")["ending"], "stopped-as-told");
    let again = scene.patient(&["session", "--signs", "none", "--json"]).output().expect("runs");
    assert_eq!(error_code(&again), "must-ring");
    assert!(scene.patient(&["spoke"]).output().expect("runs").status.success());
    let mut running = Running::start(&scene, &["--anew"]);
    running.until("await-ready");
    running.say("stop");
    assert_eq!(running.end().last().expect("an ending")["ending"], "part");
}

#[test]
fn one_up_is_asked_after_a_session_and_one_down_is_always_there() {
    let scene = Scene::stepping();
    let early = scene.patient(&["step", "up", "slide", "--json"]).output().expect("runs");
    assert_eq!(error_code(&early), "up-not-yet");
    let mut running = Running::start(&scene, &[]);
    running.until("await-ready");
    running.say("ready");
    running.until("end");
    // Effort is not asked of a slide. Pain, no words, and the answer to one up.
    for answer in ["1", "", "yes"] {
        running.say(answer);
    }
    let rest = running.end();
    let offer = rest.iter().find(|line| line["offer"]["item"] == "slide");
    assert!(offer.is_some() && rest.last().is_some_and(|line| line["yes"] == true), "{rest:?}");
    let due = json(&scene.patient(&["due", "--json"]).output().expect("runs"));
    assert_eq!((&due["due"][0]["step"]["said"], &due["due"][0]["sets"]), (&"Step 2 of 2.".into(), &2.into()));
    let up = scene.patient(&["step", "up", "slide", "--json"]).output().expect("runs");
    assert_eq!(error_code(&up), "top-step");
    let down = scene.patient(&["step", "down", "slide"]).output().expect("runs");
    assert!(String::from_utf8(down.stdout).expect("text").starts_with("One step down. From the next time"));
    let down = scene.patient(&["step", "down", "slide", "--json"]).output().expect("runs");
    assert_eq!(error_code(&down), "least-step");
    let none = scene.patient(&["step", "down", "raise", "--json"]).output().expect("runs");
    assert_eq!(error_code(&none), "no-steps");
}

#[test]
fn warning_signs_stop_a_session_before_it_begins() {
    let scene = Scene::received();
    let out = scene.patient(&["session", "--signs", "breath", "--json"]).output().expect("runs");
    assert_eq!(out.status.code(), Some(1));
    let answer = json(&out);
    assert_eq!((&answer["stopped"], &answer["tier"]), (&true.into(), &"emergency".into()));
    assert!(answer["said"].as_str().is_some_and(|said| said.contains("112")));
}

#[test]
fn a_home_test_is_timed_by_lines_with_somebody_there_and_written_down() {
    let scene = Scene::received();
    let run =
        |args: &[&str]| scene.patient(&[&["home-test", "--json"], args].concat()).output().expect("runs");
    assert_eq!(json(&run(&[]))["tests"][0]["test"], "go");
    assert_eq!(error_code(&run(&["go", "--signs", "none", "--pain", "1"])), "not-answered");
    let mut timed = Running::of(&scene, &["home-test", "go", "--signs", "none", "--helper"]);
    timed.until_so("the chair", |line| line["stage"]["state"] == "ready");
    timed.say("tap");
    timed.until_so("two seconds", |line| line["stage"]["count"] == 2);
    timed.say("tap");
    let done = timed.until_so("the end", |line| line["stage"]["state"] == "done");
    assert!(done["stage"]["result"][0].as_str().is_some_and(|said| said.contains("seconds")), "{done}");
    timed.say("yes");
    assert_eq!(timed.end().last().expect("a last word")["written"], true);
    assert_eq!(json(&run(&[]))["tests"], serde_json::json!([]), "once in its weeks");
    assert_eq!(error_code(&run(&["go", "--stands", "4"])), "no-test-result");
    let by_hand = json(&run(&["go", "--seconds", "13.4", "--yesterday"]));
    assert_eq!((&by_hand["written"], &by_hand["against_gate"]), (&true.into(), &false.into()));
}
