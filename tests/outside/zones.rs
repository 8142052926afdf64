//! Prints the instants of every slot of two years in every zone of the current database, for an outside check
//! to compute again: first the database's release, then a line of JSON a zone. Slots are chosen times, so that
//! none may be missing; then the same times unchosen, of which those in quiet hours must be.

use std::io::{BufWriter, Write};

use chrono::{DateTime, Days, NaiveDate, NaiveTime, Utc};
use sendaluna_core::calendar::front::{
    Front, FrontContacts, FrontDay, FrontDoc, FrontSlot, FrontWords, MOST_DAYS, VERSION,
};
use sendaluna_core::calendar::{Quiet, Zone, reminders};
use sendaluna_zones::Rules;
use serde_json::json;

/// Times at which clocks change somewhere, and some at which they do not.
const TIMES: [&str; 10] =
    ["00:00", "00:30", "01:30", "01:45", "02:15", "02:30", "03:30", "08:00", "12:00", "23:45"];
const FIRST: &str = "2026-01-01";
const DAYS: u64 = 730;

fn main() -> std::io::Result<()> {
    let rules = Rules::newest();
    let mut names = rules.names();
    names.sort();
    let mut out = BufWriter::new(std::io::stdout());
    let head = json!({ "release": rules.release, "times": TIMES, "first": FIRST, "days": DAYS,
        "quiet": ["22:00", "06:00"] });
    writeln!(out, "{head}")?;
    let (chosen, unchosen) = (fronts(true), fronts(false));
    for name in names {
        let Some(zone) = rules.get(&name) else { continue };
        let line = json!({ "zone": name, "chosen": all(&chosen, &zone), "unchosen": all(&unchosen, &zone) });
        writeln!(out, "{line}")?;
    }
    out.flush()
}

fn all(fronts: &[Front], zone: &dyn Zone) -> Vec<i64> {
    let first: NaiveDate = FIRST.parse().expect("a date");
    let edge = |day: NaiveDate| day.and_time(NaiveTime::MIN).and_utc();
    let (from, to) = (edge(first - Days::new(3)), edge(first + Days::new(DAYS + 3)));
    let of = |front: &Front| reminders(front, from, to, zone);
    let mut all: Vec<_> = fronts.iter().flat_map(of).map(|r| (r.day, r.time, r.at.timestamp())).collect();
    all.sort_unstable();
    all.into_iter().map(|(.., at)| at).collect()
}

fn fronts(chosen: bool) -> Vec<Front> {
    let first: NaiveDate = FIRST.parse().expect("a date");
    let time = |text: &str| NaiveTime::parse_from_str(text, "%H:%M").expect("a time");
    let slots: Vec<FrontSlot> = TIMES.iter().map(|text| FrontSlot { time: time(text), chosen }).collect();
    let days: Vec<FrontDay> =
        (0..DAYS).map(|n| FrontDay { day: first + Days::new(n), slots: slots.clone() }).collect();
    let front = |days: &[FrontDay]| {
        let doc = FrontDoc {
            version: VERSION,
            made_at: DateTime::<Utc>::UNIX_EPOCH,
            on: true,
            sound: false,
            days: days.to_vec(),
            quiet: Quiet { from: time("22:00"), to: time("06:00") },
            // Heard of after the last day, so that none is left out for silence.
            heard_on: first + Days::new(2 * DAYS),
            answered_until: DateTime::<Utc>::UNIX_EPOCH,
            words: words(),
            contacts: contacts(),
        };
        Front::new(doc).expect("valid")
    };
    days.chunks(MOST_DAYS).map(front).collect()
}

fn words() -> FrontWords {
    let word = || "-".to_string();
    FrontWords {
        lang: word(),
        title: word(),
        now: word(),
        late: word(),
        after_silence: word(),
        start: word(),
        in_30_minutes: word(),
        not_today: word(),
    }
}

fn contacts() -> FrontContacts {
    let word = || "-".to_string();
    FrontContacts {
        clinic: word(),
        phone: word(),
        out_of_hours_phone: word(),
        emergency_phone: word(),
        emergency_advice: word(),
        signs: Vec::new(),
        cautions: Vec::new(),
    }
}
