//! An invented patient with three weeks of a record.

use chrono::{DateTime, NaiveDate, Utc};
use sendaluna_core::calendar::Waking;
use sendaluna_core::digest::Digest;
use sendaluna_core::library::{Library, Movement};
use sendaluna_core::measure::{Measured, Measures, Period, measure};
use sendaluna_core::plan::Plan;
use sendaluna_core::plan::doc::PlanDoc;
use sendaluna_core::precaution::Standing;
use sendaluna_core::record::{Body, By, Event, Stamp, genesis};
use serde_json::{Value, json};

/// The first day that is measured: a day after the plan came.
pub const FROM: &str = "2026-03-16";
/// The last.
pub const THROUGH: &str = "2026-04-05";
/// What somebody wrote who knows XML, and had a bad keyboard.
pub const WORDS: &str = "Stairs < 5 & \"still\" stiff\u{7}\u{FFFE} ]]> <b>ow</b> 😀";

/// The record, and what follows from it.
pub struct World {
    pub library: Library,
    pub periods: Vec<Period>,
    pub events: Vec<Event>,
    pub measures: Measures,
}

impl World {
    pub fn new() -> Self {
        let library = Library::shipped();
        let periods =
            vec![Period { plan: plan(&library), standing: Standing::default(), from: day("2026-03-15") }];
        let events = events();
        let waking = Waking { from_min: 480, to_min: 1260 };
        let measured =
            Measured { periods: &periods, events: &events, library: &library, waking, broken_from: None };
        let of_span = measure(&measured, day(FROM), day(THROUGH));
        Self { library, periods, events, measures: of_span }
    }

    /// The hash of the last event.
    pub fn head(&self) -> Digest {
        self.events.last().map_or_else(genesis, |event| Digest::of(&event.to_bytes()))
    }
}

pub fn day(text: &str) -> NaiveDate {
    text.parse().expect("a date")
}

pub fn at(text: &str) -> DateTime<Utc> {
    text.parse().expect("a moment")
}

fn plan(library: &Library) -> Plan {
    let mut doc: PlanDoc = serde_json::from_value(plan_doc()).expect("the form");
    for item in &mut doc.items {
        item.facts = library.get(&item.movement).map(Movement::digest);
    }
    Plan::new(doc).expect("the plan is valid")
}

fn plan_doc() -> Value {
    json!({
        "format": 1,
        "head": {
            "person": "p-c3w8fz51", "called": "Rosalind & Co", "born": 1952, "languages": ["en"],
            "zone": "Europe/Berlin", "plan": "plan-1", "revision": 2, "issued_at": "2026-03-14T10:00:00Z",
            "least_signers": 1, "last_day": "2026-06-28", "review_by": "2026-06-14",
        },
        "clinic": {
            "name": "Tolsey Harbour", "phone": "555-0164", "out_of_hours_phone": "555-0165",
            "emergency_phone": "112", "emergency_advice": { "en": "Ring 112." },
        },
        "episodes": [{
            "id": "knee", "name": { "en": "New knee" }, "side": "left",
            "day_zero": { "kind": "known", "date": "2026-03-09" },
        }],
        "stages": [{
            "id": "all", "episode": "knee", "name": { "en": "All" }, "from_week": 1, "through_week": 12,
            "items": [{ "item": "slide" }, { "item": "pump" }],
        }],
        "items": items(),
        "pain": {
            "rest_stop_today_at": 7, "slow_at": 4, "easier_at": 5, "stop_exercise_at": 6, "stop_today_at": 8,
            "rise_stop_exercise": 3, "sharp": "stop-exercise", "settle_minutes": 60, "next_morning_rise": 2,
        },
        "warning_signs": [{ "id": "breath", "tier": "emergency", "text": { "en": "Short of breath." } }],
        "return_dose": { "after_days": 7, "ring_after_days": 14 },
        "statements": [Digest::of(b"a statement")],
        "reply_secret": Digest::of(b"a secret"),
    })
}

fn items() -> Value {
    let tempo = json!({ "out_s": 2, "hold_s": 0, "back_s": 2, "pause_s": 1 });
    let item = |id: &str, movement: &str, when: Value| {
        json!({
            "id": id, "episode": "knee", "movement": movement, "side": "operated", "when": when,
            "dose": { "sets": 3, "repetitions": 10, "tempo": tempo, "rest_s": 20 },
        })
    };
    let daily = json!({ "kind": "times-a-day", "times": 1, "least_hours_between": 0 });
    let as_needed = json!({ "kind": "as-needed", "daily_most": 2 });
    json!([item("slide", "heel-slide", daily), item("pump", "ankle-pump", as_needed)])
}

/// A record in the making.
#[derive(Default)]
struct Diary(Vec<Event>);

impl Diary {
    /// At a moment in UTC, with the offset of the place in hours.
    fn add(&mut self, at_utc: &str, hours: i32, by: By, body: Value) {
        let body: Body = serde_json::from_value(body).expect("the form");
        let seq = self.0.len() as u64 + 1;
        let prev = self.0.last().map_or_else(genesis, |event| Digest::of(&event.to_bytes()));
        let stamp = Stamp { at: at(at_utc), offset_s: hours * 3600, boot: "b".into(), mono_ms: seq };
        self.0.push(Event { seq, prev, stamp, by, body });
    }

    /// By the patient, in winter.
    fn note(&mut self, at_utc: &str, body: Value) {
        self.add(at_utc, 1, By::Patient, body);
    }

    /// The last evening before the days that are measured.
    fn too_early(&mut self) {
        self.note("2026-03-15T20:00:00Z", pain("before", json!({ "level": 9 })));
        self.note("2026-03-15T20:30:00Z", ended("s-0", json!({ "effort": 9, "words": "too early" })));
    }

    /// Half past midnight on the first day that is measured, and in UTC the day before.
    fn first_night(&mut self) {
        let started = json!({ "kind": "session-started", "session": "s-1", "items": ["slide"] });
        self.note("2026-03-15T23:30:12Z", pain("before", json!({ "level": 4 })));
        self.note("2026-03-15T23:31:00Z", started);
        for (set, done) in [(1, 10), (2, 7), (3, 2)] {
            let set = json!({ "item": "slide", "set": set, "sides": "left" });
            let record = json!({ "set": set, "done": done, "of": 10 });
            let body = json!({ "kind": "set-done", "session": "s-1", "record": record, "how": "counted" });
            self.note("2026-03-15T23:40:00Z", body);
        }
        let hurts = json!({
            "level": 6, "kind": "sharp", "place": "knee", "item": "slide", "answer": "stop-exercise",
        });
        let left = json!({ "kind": "item-left", "session": "s-1", "item": "slide", "reason": "hurt" });
        self.note("2026-03-15T23:41:55Z", pain("during", hurts));
        self.note("2026-03-15T23:42:00Z", left);
        self.note("2026-03-15T23:45:00Z", ended("s-1", json!({ "effort": 6, "words": WORDS })));
    }

    fn days_after(&mut self) {
        let sore = json!({ "level": 8, "answer": "stop-today" });
        let away = json!({
            "kind": "break-declared", "from": "2026-03-19", "through": "2026-03-21", "words": "=visit & cake",
        });
        self.add("2026-03-17T07:15:40Z", 1, By::Helper, pain("next-morning", sore));
        self.add("2026-03-18T09:05:00Z", 1, By::Helper, pain("before", json!({ "distress": "some" })));
        self.note("2026-03-18T10:00:00Z", by_hand("slide", "2026-03-17", 4, false));
        self.note("2026-03-18T10:01:00Z", by_hand("pump", "2026-03-18", 1, true));
        self.note("2026-03-19T10:00:00Z", away);
    }

    fn tests(&mut self) {
        let with_arms = json!({ "of": "chair-stand", "stands": 6, "arms_used": true });
        let without = json!({ "of": "chair-stand", "stands": 9, "arms_used": false });
        let walk = json!({ "of": "timed-up-and-go", "tenths_s": 134 });
        let stand = json!({ "of": "four-stage-balance", "held_tenths_s": [100, 100, 65] });
        for (day, test, result, how) in [
            ("2026-03-20", "chair", with_arms, "remembered"),
            ("2026-03-27", "chair", without, "counted"),
            ("2026-03-28", "walk", walk, "counted"),
            ("2026-03-28", "stand", stand, "counted"),
        ] {
            let body = json!({
                "kind": "home-test-done", "test": test, "day": day, "result": result, "how": how,
                "helper": true, "against_gate": false,
            });
            self.note(&format!("{day}T10:00:00Z"), body);
        }
    }

    /// By summer time, the last second that is measured and the first that is not.
    fn last_night(&mut self) {
        self.add("2026-04-05T21:59:59Z", 2, By::Patient, pain("after", json!({ "level": 0 })));
        self.add("2026-04-05T22:00:00Z", 2, By::Patient, pain("after", json!({ "level": 10 })));
        self.add("2026-04-05T22:10:00Z", 2, By::Patient, ended("s-2", json!({ "words": "too late" })));
    }
}

fn events() -> Vec<Event> {
    let mut diary = Diary::default();
    diary.too_early();
    diary.first_night();
    diary.days_after();
    diary.tests();
    diary.last_night();
    diary.0
}

fn pain(moment: &str, more: Value) -> Value {
    let pain = with(json!({ "moment": moment, "level": null, "answer": "go-on" }), more);
    json!({ "kind": "pain-answered", "pain": pain })
}

fn ended(session: &str, more: Value) -> Value {
    with(json!({ "kind": "session-ended", "session": session, "ending": "part", "confirmed": true }), more)
}

fn with(mut value: Value, more: Value) -> Value {
    if let (Value::Object(fields), Value::Object(more)) = (&mut value, more) {
        fields.extend(more);
    }
    value
}

fn by_hand(item: &str, on: &str, sets: u8, against_gate: bool) -> Value {
    json!({
        "kind": "done-by-hand", "item": item, "day": on, "sets": sets, "each": 10,
        "against_gate": against_gate,
    })
}
