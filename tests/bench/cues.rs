//! How late a session's cues leave: twenty minutes in real time, while every core of the machine is
//! busy and the disk is written to; beside it a bare thread that only waits for deadlines. Figures, not a
//! verdict. What a cue is late by is measured where it is handed to voice and tones.

use std::io::Write;
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, AtomicU64, Ordering};
use std::sync::mpsc::channel;
use std::time::{Duration, Instant};

use sendaluna::clock::DeviceClock;
use sendaluna::hearing::Hears;
use sendaluna::leader::{Leader, Order};
use sendaluna_bedside::Clock;
use sendaluna_bedside::lead::Lead;
use sendaluna_bedside::lead::heard::Heard;
use sendaluna_bedside::types::{By, Words};
use sendaluna_bedside::view::session::{Press, StageName, Told};
use sendaluna_tests::device::{Device, answered, id};
use sendaluna_tests::world::World;
use serde_json::json;

/// How long is measured.
const FOR: Duration = Duration::from_mins(20);
/// How often the bare thread wakes.
const EVERY: Duration = Duration::from_millis(500);

fn main() {
    let busy = Arc::new(AtomicBool::new(true));
    let load = make_busy(&busy);
    let bare = std::thread::spawn(bare);
    let (late_ms, drift_ms) = measure();
    let bare_ms = bare.join().expect("the bare thread ends");
    busy.store(false, Ordering::Relaxed);
    for thread in load {
        thread.join().expect("the load ends");
    }
    report("cues of a session", late_ms);
    report("a bare thread", bare_ms);
    let mut out = std::io::stdout();
    let _ = writeln!(out, "drift of the session's deadlines over the whole: {drift_ms} ms");
}

/// Waits for deadlines on a channel that nothing comes from, as the session's thread does; gives how late it
/// woke for each, in whole ms.
fn bare() -> Vec<u64> {
    let (_keeps, nothing) = channel::<()>();
    let began = Instant::now();
    let mut late_ms = Vec::new();
    for n in 1.. {
        let deadline = began + EVERY * n;
        let _ = nothing.recv_timeout(deadline.saturating_duration_since(Instant::now()));
        late_ms.push(u64::try_from(deadline.elapsed().as_millis()).unwrap_or(u64::MAX));
        if began.elapsed() >= FOR {
            break;
        }
    }
    late_ms
}

/// Notes when something was first handed over to be heard since it was last asked; 0 is never.
struct Notes(Arc<AtomicU64>, Arc<DeviceClock>);

impl Hears for Notes {
    fn hear(&mut self, heard: Vec<Heard>) {
        if !heard.is_empty() {
            let _ = self.0.compare_exchange(0, self.1.now().mono_ms, Ordering::AcqRel, Ordering::Acquire);
        }
    }
    fn goes(&mut self, _: bool) {}
}

/// One spinning thread a core, and one that writes to the disk.
fn make_busy(busy: &Arc<AtomicBool>) -> Vec<std::thread::JoinHandle<()>> {
    let cores = std::thread::available_parallelism().map_or(2, std::num::NonZero::get);
    let spin = |busy: Arc<AtomicBool>| {
        move || {
            let mut n = 0u64;
            while busy.load(Ordering::Relaxed) {
                n = std::hint::black_box(n.wrapping_mul(31).wrapping_add(7));
            }
        }
    };
    let mut threads: Vec<_> = (0..cores).map(|_| std::thread::spawn(spin(Arc::clone(busy)))).collect();
    let busy = Arc::clone(busy);
    threads.push(std::thread::spawn(move || {
        let mut file = tempfile::tempfile().expect("a file");
        while busy.load(Ordering::Relaxed) {
            file.write_all(&[7; 8_192]).and_then(|()| file.sync_data()).expect("written");
        }
    }));
    threads
}

/// Leads a session, and gives how late each cue with a deadline left, in whole ms; and by how much the
/// deadlines of a round drift from the seconds of its dose.
fn measure() -> (Vec<u64>, u64) {
    let mut world = World::new();
    for item in &mut world.plan.items {
        let dose = json!({
            "sets": 20, "repetitions": 10, "rest_s": 5,
            "tempo": { "out_s": 1, "hold_s": 2, "back_s": 1, "pause_s": 1 },
        });
        item.dose = serde_json::from_value(dose).expect("the form");
    }
    let clock = Arc::new(DeviceClock::new());
    let mut now = clock.now();
    now.at = "2026-03-10T09:00:00Z".parse().expect("a moment");
    let device = Device::with("Europe/Dublin", &world, &now);
    let mut home = device.open();
    answered(&mut home, &now);
    let guide = home.begin(Some(&id("slide")), By::Patient, &now).expect("it is allowed");
    let known = home.known().expect("a plan");
    let lead = Lead::new(home, known, guide, Words::new(["en"]), &*clock);

    let (told, tell) = channel();
    let began = Instant::now();
    let reader = Arc::clone(&clock);
    let heard_at = Arc::new(AtomicU64::new(0));
    let heard = Arc::clone(&heard_at);
    // On the thread that has just handed over what is heard: each stage has its own.
    let sink = move |said: Told, due: Option<u64>| {
        let left_ms = match heard.swap(0, Ordering::AcqRel) {
            0 => reader.now().mono_ms,
            heard_ms => heard_ms,
        };
        let _ = told.send((said, due, left_ms));
    };
    let notes = Notes(Arc::clone(&heard_at), Arc::clone(&clock));
    let leader = Leader::start(lead, Arc::clone(&clock), Box::new(sink), |_| notes);
    let (mut late_ms, mut drift_ms, mut last_due) = (Vec::new(), 0, None::<u64>);
    while let Ok((said, due, left_ms)) = tell.recv() {
        if let Told::Stage { stage } = &said {
            if let Some(due_ms) = due {
                late_ms.push(left_ms.saturating_sub(due_ms));
                // Every deadline of this dose lies whole seconds from the one before.
                if stage.stage == StageName::Running {
                    let off = last_due.map_or(0, |last| due_ms.saturating_sub(last) % 1_000);
                    drift_ms += off.min(1_000 - off);
                    last_due = Some(due_ms);
                } else {
                    last_due = None;
                }
            }
            if stage.can_ready {
                leader.order(Order::Press(Press::Ready));
            }
            if began.elapsed() >= FOR || stage.stage == StageName::Done {
                break;
            }
        }
    }
    drop(tell);
    leader.end();
    (late_ms, drift_ms)
}

fn report(what: &str, mut late_ms: Vec<u64>) {
    late_ms.sort_unstable();
    let at = |share: usize| late_ms[(late_ms.len() - 1) * share / 1000];
    let mut out = std::io::stdout();
    let deadlines = late_ms.len();
    let _ = writeln!(out, "{what}: {deadlines} deadlines in {} s, under load; late by", FOR.as_secs());
    for (name, ms) in [("half", at(500)), ("99 %", at(990)), ("worst", at(1000))] {
        let _ = writeln!(out, "{name:>6}: {ms} ms");
    }
}
