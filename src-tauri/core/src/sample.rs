//! A small invented plan for the tests of this crate.

use chrono::NaiveDate;

use crate::digest::Digest;
use crate::facts::{ItemSide, Manner, OperatedSide, Performed};
use crate::ids::{EpisodeId, MovementId, PrecautionId};
use crate::library::Library;
use crate::plan::Plan;
use crate::plan::doc::PlanDoc;
use crate::precaution::{
    Accepted, End, InForce, Precaution, PrecautionSide, Rule, Standing, StatementDoc, Who,
};
use crate::text::{Lang, Text};

pub fn date(text: &str) -> NaiveDate {
    text.parse().expect("a date")
}

pub fn doc() -> PlanDoc {
    toml::from_str(PLAN).expect("the sample parses")
}

pub fn plan() -> Plan {
    signed(doc())
}

/// Fills what the clinic's program fills.
pub fn signed(mut doc: PlanDoc) -> Plan {
    let library = Library::shipped();
    let facts = |id: &MovementId| library.get(id).map(crate::library::Movement::digest);
    for item in &mut doc.items {
        item.facts = facts(&item.movement);
        if let Some(easier) = &mut item.easier {
            easier.facts = facts(&easier.movement);
        }
    }
    doc.head.issued_at = Some("2026-03-03T09:00:00Z".parse().expect("a moment"));
    doc.head.least_signers = Some(1);
    doc.statements = vec![Digest::of(b"a statement")];
    doc.reply_secret = Some(Digest::of(b"a secret"));
    Plan::new(doc).expect("the sample is valid")
}

pub fn words(text: &str) -> Text {
    Text::one(Lang::english(), text)
}

pub fn precaution(id: &str, rule: Rule, ends: End) -> Precaution {
    Precaution {
        id: PrecautionId::new(id).expect("an id"),
        episode: EpisodeId::new("hip").expect("an id"),
        side: PrecautionSide::Left,
        rule,
        ends,
        why: words("because"),
    }
}

pub fn through(day: &str) -> End {
    End::Through { day: date(day), week: None }
}

pub fn statement(precautions: Vec<Precaution>) -> Accepted {
    let doc = StatementDoc {
        format: 1,
        person: crate::ids::PersonId::new("p-1").expect("an id"),
        issued_at: "2026-03-02T09:00:00Z".parse().expect("a moment"),
        episodes: vec![],
        none: false,
        precautions,
        lifts: vec![],
        movements_seen: vec![],
        releases_set_backs_until: None,
    };
    let digest = Digest::of(format!("{doc:?}").as_bytes());
    Accepted {
        digest,
        key: Digest::of(b"a key"),
        signer: who("A surgeon"),
        may_set: true,
        may_lift: true,
        doc,
    }
}

pub fn who(name: &str) -> Who {
    Who { name: name.into(), role: words("surgeon") }
}

pub fn in_force(precaution: Precaution) -> InForce {
    Standing::of(&[statement(vec![precaution])]).in_force.remove(0)
}

/// A movement of the library, done by the left as the operated side.
pub fn left(movement: &str) -> Performed {
    performed(movement, ItemSide::Operated)
}

pub fn performed(movement: &str, side: ItemSide) -> Performed {
    let library = Library::shipped();
    let id = MovementId::new(movement).expect("an id");
    let movement = library.get(&id).unwrap_or_else(|| panic!("{id} ships"));
    let manner = Manner {
        side,
        operated: OperatedSide::Left,
        load: None,
        with_brace: false,
        size: crate::facts::BodySize { height_cm: Some(170), mass_kg: Some(70) },
    };
    Performed::new(movement, &manner)
}

const PLAN: &str = r#"
format = 1
statements = []
[head]
person = "p-1"
called = "Ada"
born = 1951
languages = ["en"]
zone = "Europe/Berlin"
plan = "plan-1"
revision = 1
last_day = "2026-06-28"
review_by = "2026-06-14"
[clinic]
name = "Hillside"
phone = "555-0100"
out_of_hours_phone = "555-0101"
emergency_phone = "112"
emergency_advice = { en = "Ring 112." }
[[episodes]]
id = "hip"
name = { en = "New hip" }
side = "left"
day_zero = { kind = "known", date = "2026-03-02" }
[[stages]]
id = "early"
episode = "hip"
name = { en = "Early" }
from_week = 1
through_week = 12
items = [{ item = "pump" }, { item = "slide" }, { item = "walk" }, { item = "curl" }, { item = "knee" }]
[[stages]]
id = "late"
episode = "hip"
name = { en = "Late" }
from_week = 13
through_week = 17
items = [{ item = "raise" }, { item = "pump", when = { kind = "as-needed", daily_most = 3 } }]
[[items]]
id = "pump"
episode = "hip"
movement = "ankle-pump"
side = "both-together"
when = { kind = "every-waking-hours", hours = 2 }
dose = { sets = 1, repetitions = 10, tempo = { out_s = 1, hold_s = 0, back_s = 1, pause_s = 0 } }
[[items]]
id = "slide"
episode = "hip"
movement = "heel-slide"
side = "operated"
when = { kind = "times-a-day", times = 3, least_hours_between = 3 }
dose = { sets = 2, repetitions = 10, rest_s = 30, tempo = { out_s = 3, hold_s = 2, back_s = 3, pause_s = 1 } }
easier = { movement = "heel-slide-strap" }
[[items]]
id = "walk"
episode = "hip"
movement = "knee-rolls"
side = "alternating"
when = { kind = "weekdays", days = ["monday", "thursday"], times = 1 }
dose = { sets = 1, repetitions = { least = 8, most = 12 }, tempo = { out_s = 2, hold_s = 1, back_s = 2, pause_s = 0 } }
[[items]]
id = "curl"
episode = "hip"
movement = "standing-knee-curl"
side = "one-after-the-other"
when = { kind = "days-a-week", days = 3, times = 1 }
dose = { sets = 2, repetitions = 8, rest_s = 20, tempo = { out_s = 2, hold_s = 0, back_s = 2, pause_s = 1 } }
[[items]]
id = "knee"
episode = "hip"
movement = "heel-prop"
side = "operated"
when = { kind = "as-needed", daily_most = 2 }
dose = { sets = 1, minutes = 2 }
[[items]]
id = "raise"
episode = "hip"
movement = "straight-leg-raise"
side = "operated"
when = { kind = "times-a-day", times = 2 }
dose = { sets = 2, repetitions = 8, rest_s = 30, tempo = { out_s = 2, hold_s = 5, back_s = 2, pause_s = 1 } }
[pain]
rest_stop_today_at = 7
slow_at = 4
easier_at = 5
stop_exercise_at = 6
stop_today_at = 8
rise_stop_exercise = 3
sharp = "stop-exercise"
settle_minutes = 60
next_morning_rise = 2
[[warning_signs]]
id = "breath"
tier = "emergency"
text = { en = "New or worse: short of breath." }
[return_dose]
after_days = 7
ring_after_days = 14
doses = [{ item = "slide", dose = { sets = 1, repetitions = 5, tempo = { out_s = 3, hold_s = 0, back_s = 3, pause_s = 1 } } }]
"#;
