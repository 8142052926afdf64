//! How long a report takes after two years of three sessions a day of ten exercises: its figures, its
//! sealed file, its two pages, and the clinic's reading of it. Figures, not a verdict. The measures are left
//! in `target/bench`, for the same pages by other programs.

use std::io::Write;
use std::time::{Duration, Instant};

use chrono::{DateTime, Days, NaiveDate, Utc};
use sendaluna_bedside::hand_back::Wishes;
use sendaluna_bedside::types::{By, Ending, ItemId, SessionId, Words};
use sendaluna_clinic::paper::printed_report;
use sendaluna_clinic::report::{Ground, Opened, open_report};
use sendaluna_core::library::{Library, Movement};
use sendaluna_core::record::{Body, How, Moment, Pain, SetRecord, Stamp};
use sendaluna_core::session::{PainAnswer, SetId, SidesAtOnce};
use sendaluna_store::{Store, StoreError, Writer};
use sendaluna_tests::device::{Device, KEYS, at};
use sendaluna_tests::root;
use sendaluna_tests::world::{World, day};
use serde_json::json;

const DAYS: u64 = 728;
const RUNS: usize = 5;
const MOVEMENTS: [&str; 10] = [
    "heel-slide",
    "quad-set",
    "glute-set",
    "ankle-pump",
    "short-arc-quad",
    "abduction-slide",
    "seated-knee-bend",
    "seated-knee-spread",
    "long-arc-quad",
    "calf-raise",
];

fn main() {
    let world = two_years();
    let device = Device::with("Europe/Berlin", &world, &at("2026-03-05T08:00:00Z"));
    let events = live(&device);
    let last: NaiveDate = day("2026-03-05") + Days::new(DAYS - 1);
    let now = at(&format!("{last}T20:00:00Z"));
    let words = Words::new(["en"]);

    let (measuring, measures) = median(|| device.open().measures(None, &now).expect("measured"));
    let (handing, made) = median(|| device.open().hand_back(&Wishes::default(), &words, &now).expect("made"));
    let ground = || Ground { signers: Some(world.signers.clone()), earlier: Vec::new() };
    let (opening, opened): (_, Opened) =
        median(|| open_report(&made.sealed, &world.reports, &ground()).expect("opens"));
    let (printing, pdf) = median(|| printed_report(&opened, &words, &[], now.at).expect("printed"));

    let folder = root().join("target/bench");
    std::fs::create_dir_all(&folder).expect("a folder");
    std::fs::write(folder.join("measures.json"), json!(measures).to_string()).expect("written");
    std::fs::write(folder.join("report.pdf"), pdf).expect("written");
    let mut out = std::io::stdout();
    let _ = writeln!(out, "{events} events, {} kB sealed; median of {RUNS}", made.sealed.len() / 1024);
    for (what, took) in [
        ("figures, the record opened anew", measuring),
        ("all that is handed back, pages included", handing),
        ("opened and worked out again at the clinic", opening),
        ("the two pages alone", printing),
    ] {
        let _ = writeln!(out, "{:>6} ms  {what}", took.as_millis());
    }
}

fn median<T>(mut work: impl FnMut() -> T) -> (Duration, T) {
    let mut made = work();
    let mut took: Vec<Duration> = (0..RUNS)
        .map(|_| {
            let began = Instant::now();
            made = work();
            began.elapsed()
        })
        .collect();
    took.sort_unstable();
    (took[RUNS / 2], made)
}

/// A plan of ten exercises, three times a day, for two years.
fn two_years() -> World {
    let library = Library::shipped();
    let mut world = World::new();
    let mut plan = world.plan.clone();
    let slide = plan.items[0].clone();
    plan.items = MOVEMENTS
        .iter()
        .zip(1..)
        .map(|(movement, order)| {
            let mut item = slide.clone();
            item.id = ItemId::new(*movement).expect("an id");
            item.movement = sendaluna_core::ids::MovementId::new(*movement).expect("an id");
            item.facts = library.get(&item.movement).map(Movement::digest);
            item.order = order;
            item.dose.sets = 1;
            item
        })
        .collect();
    let entry = |item: &sendaluna_core::plan::doc::Item| {
        serde_json::from_value(json!({ "item": item.id })).expect("the form")
    };
    plan.stages[0].items = plan.items.iter().map(entry).collect();
    plan.stages[0].through_week = 106;
    plan.head.last_day = day("2028-03-12");
    plan.head.review_by = day("2028-03-12");
    world.plan = plan;
    world
}

/// Writes the record, as the program does; returns how many events.
fn live(device: &Device) -> u64 {
    let mut store = Store::open(device.folder(), &KEYS).expect("opens");
    store
        .write(|writer| -> Result<u64, StoreError> {
            let mut events = 0;
            for day_number in 0..DAYS {
                for (session, hour) in [9, 13, 18].into_iter().enumerate() {
                    let date = day("2026-03-05") + Days::new(day_number);
                    let start = date.and_hms_opt(hour, 0, 0).expect("a time").and_utc();
                    events += lead(writer, start, day_number, session)?;
                }
            }
            Ok(events)
        })
        .expect("written")
}

fn lead(writer: &Writer<'_>, start: DateTime<Utc>, day: u64, number: usize) -> Result<u64, StoreError> {
    let session = SessionId::new(format!("s-{day}-{number}")).expect("an id");
    let level = u8::try_from((day * 7 + day / 90) % 5).expect("small");
    let pain = |moment| Pain::of_level(moment, level, PainAnswer::GoOn);
    let items: Vec<ItemId> = MOVEMENTS.iter().map(|id| ItemId::new(*id).expect("an id")).collect();
    let mut bodies = vec![
        Body::SignsAnswered { signs: vec![], gravest: None },
        Body::PainAnswered { session: None, pain: pain(Moment::Before) },
        Body::SessionStarted { session: session.clone(), items: items.clone() },
    ];
    bodies.extend(items.into_iter().map(|item| Body::SetDone {
        session: session.clone(),
        record: SetRecord {
            set: SetId { item, set: 1, sides: SidesAtOnce::Left },
            done: 10,
            of: 10,
            easier: false,
        },
        how: How::Counted,
    }));
    let words = day.is_multiple_of(7).then(|| "Walked to the gate and back.".to_string());
    let ending = Ending::Whole;
    bodies.push(Body::PainAnswered { session: Some(session.clone()), pain: pain(Moment::After) });
    bodies.push(Body::SessionEnded { session, ending, confirmed: true, effort: Some(4), words });
    let count = bodies.len() as u64;
    for (minute, body) in bodies.into_iter().enumerate() {
        let at = start + chrono::Duration::minutes(i64::try_from(minute).expect("small"));
        let mono_ms = u64::try_from(at.timestamp_millis()).unwrap_or(0);
        writer.append(Stamp { at, offset_s: 3600, boot: "b".into(), mono_ms }, By::Patient, body)?;
    }
    Ok(count)
}
