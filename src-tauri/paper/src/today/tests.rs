use sendaluna_core::calendar::{History, Waking, due};
use sendaluna_core::digest::Digest;
use sendaluna_core::gate::{GateDay, Gates};
use sendaluna_core::library::{Library, Movement};
use sendaluna_core::plan::Plan;
use sendaluna_core::plan::doc::PlanDoc;
use sendaluna_core::precaution::Standing;
use sendaluna_words::{LANGUAGES, Words};
use serde_json::{Value, json};

use super::*;

const MOVEMENTS: &[&str] =
    &["heel-slide", "quad-set", "straight-leg-raise", "standing-knee-curl", "long-arc-quad"];

/// A plan that asks for so many exercises, each with much to say.
fn plan(exercises: usize, library: &Library) -> Plan {
    let tempo = json!({ "out_s": 2, "hold_s": 5, "back_s": 2, "pause_s": 1 });
    let item = |n: usize| {
        json!({
            "id": format!("item-{n}"), "episode": "knee", "movement": MOVEMENTS[n % MOVEMENTS.len()],
            "side": "operated", "order": n, "beside_you": true,
            "when": { "kind": "times-a-day", "times": 3 },
            "dose": { "sets": 3, "repetitions": { "least": 8, "most": 12 }, "rest_s": 60, "tempo": tempo },
            "note": { "en": "Stop at a right angle, even if the knee would bend further than that today." },
        })
    };
    let asked: Vec<Value> = (0..exercises).map(|n| json!({ "item": format!("item-{n}") })).collect();
    let sign = |n: usize| {
        let tier = if n < 4 { "emergency" } else { "ring-today" };
        let text = "New or worse: redness around the wound, fluid from it, or a wound that opens.";
        json!({ "id": format!("sign-{n}"), "tier": tier, "text": { "en": text } })
    };
    let doc = json!({
        "format": 1,
        "head": {
            "person": "p-1", "called": "Ada", "born": 1951, "languages": ["en"], "zone": "Europe/Berlin",
            "plan": "plan-1", "revision": 1, "last_day": "2026-06-28", "review_by": "2026-06-14",
            "issued_at": "2026-03-03T09:00:00Z", "least_signers": 1,
        },
        "clinic": {
            "name": "Hillside", "phone": "555-0100", "out_of_hours_phone": "555-0101",
            "emergency_phone": "112", "emergency_advice": { "en": "Ring 112." },
        },
        "episodes": [{
            "id": "knee", "name": { "en": "New knee" }, "side": "left",
            "day_zero": { "kind": "known", "date": "2026-03-02" },
        }],
        "stages": [{
            "id": "early", "episode": "knee", "name": { "en": "Early" }, "from_week": 1, "through_week": 12,
            "items": asked,
        }],
        "items": (0..exercises).map(item).collect::<Vec<_>>(),
        "pain": {
            "rest_stop_today_at": 7, "slow_at": 4, "easier_at": 5, "stop_exercise_at": 6, "stop_today_at": 8,
            "rise_stop_exercise": 3, "sharp": "stop-exercise", "settle_minutes": 60, "next_morning_rise": 2,
        },
        "warning_signs": (0..8).map(sign).collect::<Vec<_>>(),
        "return_dose": { "after_days": 7, "ring_after_days": 14 },
    });
    let mut doc: PlanDoc = serde_json::from_value(doc).expect("the plan parses");
    for item in &mut doc.items {
        item.facts = library.get(&item.movement).map(Movement::digest);
    }
    doc.statements = vec![Digest::of(b"a statement")];
    doc.reply_secret = Some(Digest::of(b"a secret"));
    Plan::new(doc).expect("the plan is valid")
}

/// The press refuses a second page.
fn is_one_page(exercises: usize, lang: &str) -> Result<(), NotPrinted> {
    let (library, standing) = (Library::shipped(), Standing::of(&[]));
    let plan = plan(exercises, &library);
    let gates = Gates { plan: &plan, library: &library, standing: &standing, tightened: &[] };
    let date: NaiveDate = "2026-04-01".parse().expect("a date");
    let day = due(&gates, date, &GateDay::new(date), &History::default(), Waking::default());
    let asked: Vec<Asked<'_>> = day.items.iter().map(|due| Asked { due, again_from: None }).collect();
    assert_eq!(asked.iter().filter(|asked| is_left(asked.due)).count(), exercises, "all of them are open");
    let printed = TodayPage {
        plan: &plan,
        standing: &standing,
        library: &library,
        date,
        gate_day: date,
        episodes: &day.episodes,
        asked,
        shut: plan.doc().items.iter().take(3).map(|item| Shut { item, opens: None }).collect(),
        notices: Vec::new(),
        held: None,
        at: "2026-04-01T09:00:00Z".parse().expect("a moment"),
    };
    today_page(&printed, &Words::new([lang])).map(|_| ())
}

#[test]
fn today_is_one_page_however_much_is_asked() {
    for exercises in [1, 6, 14, 40] {
        is_one_page(exercises, "en").unwrap_or_else(|error| panic!("{exercises}: {error:?}"));
    }
}

#[test]
fn today_is_one_page_in_every_language() {
    for lang in LANGUAGES {
        is_one_page(14, lang).unwrap_or_else(|error| panic!("{lang}: {error:?}"));
    }
}
