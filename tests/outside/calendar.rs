//! Calendar files of a plan over a change of clocks, for an outside check to read, at a moment of our choice.
//!
//! ```text
//! cargo run -p sendaluna-tests --bin calendar -- Europe/Berlin Pacific/Apia
//! ```
//!
//! Prints a line of JSON a zone: the `first` file, a `second` with nothing changed, a `third` after the patient
//! chose one time of day, and what reminders are told before and after that (`front`, `front_after`).

use std::io::Write;

use sendaluna_bedside::Bedside;
use sendaluna_bedside::reminding::RemindingChange;
use sendaluna_bedside::settings::Change;
use sendaluna_bedside::types::Words;
use sendaluna_tests::device::{Device, at};
use sendaluna_tests::world::World;
use serde_json::{Value, json};

/// Day 0 is 2026-03-02, the last day 2026-06-28: clocks change in America, in Europe and on Lord Howe Island.
const NOW: &str = "2026-03-03T10:30:00Z";
const CHOSEN_MIN: u16 = 10 * 60 + 15;

fn main() -> std::io::Result<()> {
    let mut out = std::io::stdout();
    for zone in std::env::args().skip(1) {
        writeln!(out, "{}", files(&zone))?;
    }
    Ok(())
}

fn files(zone: &str) -> Value {
    let now = at(NOW);
    let words = Words::new(["en"]);
    let device = Device::with(zone, &World::new(), &now);
    let mut home = device.open();
    let file = |home: &mut Bedside| home.calendar_file(&words, &now).expect("a plan").expect("times ahead");
    let (first, second) = (file(&mut home), file(&mut home));
    home.tend(&words, &now).expect("tended");
    let front = told(&device);
    let chosen = RemindingChange { times_min: Some(vec![CHOSEN_MIN]), ..RemindingChange::default() };
    home.change_settings(&Change { reminding: Some(chosen), ..Change::default() }).expect("changed");
    let third = file(&mut home);
    home.tend(&words, &now).expect("tended");
    json!({ "zone": zone, "first": first, "second": second, "third": third,
        "front": front, "front_after": told(&device) })
}

/// What the reminder program is told.
fn told(device: &Device) -> Value {
    let front = std::fs::read(device.folder().join("reminders").join("front.json")).expect("a front");
    serde_json::from_slice(&front).expect("JSON")
}
