//! How late a session's cues leave: five minutes in real time, while every core of the machine is
//! busy and the disk is written to. A figure, not a verdict.

use std::io::Write;
use std::sync::Arc;
use std::sync::atomic::{AtomicBool, Ordering};
use std::sync::mpsc::channel;
use std::time::{Duration, Instant};

use sendaluna::clock::DeviceClock;
use sendaluna::leader::{Leader, Order};
use sendaluna_bedside::Clock;
use sendaluna_bedside::lead::Lead;
use sendaluna_bedside::types::{By, Words};
use sendaluna_bedside::view::session::{Press, StageName, Told};
use sendaluna_tests::device::{Device, answered, id};
use sendaluna_tests::world::World;
use serde_json::json;

/// How long is measured.
const FOR: Duration = Duration::from_mins(5);

fn main() {
    let busy = Arc::new(AtomicBool::new(true));
    let load = make_busy(&busy);
    let late_ms = measure();
    busy.store(false, Ordering::Relaxed);
    for thread in load {
        thread.join().expect("the load ends");
    }
    report(late_ms);
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

/// Leads a session, and gives how late each cue with a deadline left, in whole ms.
fn measure() -> Vec<u64> {
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
    let sink = move |said: Told, due: Option<u64>| {
        let _ = told.send((said, due, reader.now().mono_ms));
    };
    let leader = Leader::start(lead, Arc::clone(&clock), Box::new(sink));
    let mut late_ms = Vec::new();
    while let Ok((said, due, left_ms)) = tell.recv() {
        if let Told::Stage { stage } = &said {
            if let Some(due_ms) = due {
                late_ms.push(left_ms.saturating_sub(due_ms));
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
    late_ms
}

fn report(mut late_ms: Vec<u64>) {
    late_ms.sort_unstable();
    let at = |share: usize| late_ms[(late_ms.len() - 1) * share / 1000];
    let mut out = std::io::stdout();
    let cues = late_ms.len();
    let _ = writeln!(out, "{cues} cues in {} s, under load; later than their deadline by", FOR.as_secs());
    for (name, ms) in [("half", at(500)), ("99 %", at(990)), ("worst", at(1000))] {
        let _ = writeln!(out, "{name:>6}: {ms} ms");
    }
}
