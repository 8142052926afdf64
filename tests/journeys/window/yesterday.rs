//! A patient's data as if a plan had been taken in yesterday, and one exercise led from first cue to last.
//!
//! ```text
//! cargo run -p sendaluna-tests --bin yesterday -- DATA PLAN CODE ITEM
//! ```

use std::cell::RefCell;
use std::path::Path;

use chrono::{Days, Utc};
use sendaluna_bedside::types::{By, IanaZone, State};
use sendaluna_bedside::{Bedside, Clock, Now};
use sendaluna_tests::device::{Hand, KEYS, answered, id, lead, take_in};

const EFFORT: u8 = 2;
const PAIN_AFTER: u8 = 1;

fn main() {
    let args: Vec<String> = std::env::args().skip(1).collect();
    let [data, plan, code, item] = args.as_slice() else { panic!("DATA PLAN CODE ITEM") };
    let now = Now { at: Utc::now() - Days::new(1), mono_ms: 0, boot: "yesterday".into() };
    let clock = Hand(RefCell::new(now));
    let mut home = Bedside::open(Path::new(data), &KEYS, IanaZone::of_device()).expect("opens");
    take_in(&mut home, &std::fs::read(plan).expect("a plan file"), code, &clock.now());
    answered(&mut home, &clock.now());
    let mut guide = home.begin(Some(&id(item)), By::Patient, &clock.now()).expect("due");
    lead(&mut home, &mut guide, &clock, |_, _| false);
    assert_eq!(guide.state(), State::Done);
    guide.finish(&mut home, &clock.now(), Some(EFFORT), Some(PAIN_AFTER), None).expect("written");
}
