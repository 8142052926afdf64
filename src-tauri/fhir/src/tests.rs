use std::collections::BTreeSet;

use sendaluna_core::measure::Measures;
use serde_json::Value;

use super::*;

mod world;

use world::{WORDS, World, at};

fn report(world: &World) -> FhirReport<'_> {
    FhirReport {
        reported: Reported {
            periods: &world.periods,
            events: &world.events,
            measures: &world.measures,
            library: &world.library,
            asks: Some("May I drive again, & when? <soon>"),
            withheld: 0,
        },
        device: Digest::of(b"the device"),
        clinic_key: Digest::of(b"the clinic"),
        head: world.head(),
        issued_at: at("2026-04-05T21:59:59Z"),
        offset_s: 7200,
    }
}

fn written(report: &FhirReport<'_>, lang: &str) -> Value {
    let text = document(report, &Words::new([lang])).expect("there is a plan");
    serde_json::from_str(&text).expect("JSON")
}

fn entries(bundle: &Value) -> &[Value] {
    bundle["entry"].as_array().expect("entries")
}

fn resources<'a>(bundle: &'a Value, kind: &str) -> Vec<&'a Value> {
    let all = entries(bundle).iter().map(|entry| &entry["resource"]);
    all.filter(|resource| resource["resourceType"] == kind).collect()
}

/// Observations with a code of LOINC.
fn coded<'a>(bundle: &'a Value, code: &str) -> Vec<&'a Value> {
    let all = resources(bundle, "Observation").into_iter();
    all.filter(|one| one["code"]["coding"][0]["code"] == code).collect()
}

fn named<'a>(all: &[&'a Value], text: &str) -> &'a Value {
    let found =
        all.iter().find(|one| one["code"]["text"].as_str().is_some_and(|said| said.starts_with(text)));
    found.unwrap_or_else(|| panic!("{text} is there"))
}

/// What a section says.
fn said<'a>(bundle: &'a Value, section: &str) -> &'a str {
    let sections = resources(bundle, "Composition")[0]["section"].as_array().expect("sections");
    let section = sections.iter().find(|one| one["id"] == section).expect("the section");
    section["text"]["div"].as_str().expect("it says something")
}

/// A figure of a part.
fn part<'a>(observation: &'a Value, id: &str) -> &'a Value {
    let parts = observation["component"].as_array().expect("parts");
    let part = parts.iter().find(|part| part["id"] == id).unwrap_or_else(|| panic!("{id} is there"));
    &part["valueQuantity"]["value"]
}

fn walk<'a>(value: &'a Value, all: &mut Vec<&'a Value>) {
    all.push(value);
    match value {
        Value::Array(inner) => inner.iter().for_each(|one| walk(one, all)),
        Value::Object(fields) => fields.values().for_each(|one| walk(one, all)),
        _ => {}
    }
}

fn within(value: &Value) -> Vec<&Value> {
    let mut all = Vec::new();
    walk(value, &mut all);
    all
}

#[test]
fn the_frame_comes_first_and_every_way_leads_to_an_entry() {
    let world = World::new();
    let bundle = written(&report(&world), "en");
    let kinds: Vec<&Value> =
        entries(&bundle).iter().take(4).map(|entry| &entry["resource"]["resourceType"]).collect();
    assert_eq!(kinds, ["Composition", "Patient", "Device", "Organization"]);
    let urls: BTreeSet<&str> =
        entries(&bundle).iter().filter_map(|entry| entry["fullUrl"].as_str()).collect();
    assert_eq!(urls.len(), entries(&bundle).len(), "no name twice");
    let ways: BTreeSet<&str> = within(&bundle).iter().filter_map(|one| one["reference"].as_str()).collect();
    let first = entries(&bundle)[0]["fullUrl"].as_str().expect("a name");
    assert_eq!(ways, urls.into_iter().filter(|url| *url != first).collect());
}

#[test]
fn names_are_uuids_of_version_8() {
    let world = World::new();
    let bundle = written(&report(&world), "en");
    for entry in entries(&bundle) {
        let url = entry["fullUrl"].as_str().expect("a name");
        let uuid: Vec<&str> = url.strip_prefix("urn:uuid:").expect("a URN").split('-').collect();
        assert_eq!(uuid.iter().map(|run| run.len()).collect::<Vec<_>>(), [8, 4, 4, 4, 12], "{url}");
        assert!(uuid[2].starts_with('8') && uuid[3].starts_with(['8', '9', 'a', 'b']), "{url}");
    }
}

#[test]
fn the_same_report_gives_the_same_bytes_and_another_one_other_names() {
    let world = World::new();
    let (one, words) = (report(&world), Words::new(["en"]));
    assert_eq!(document(&one, &words), document(&one, &words));
    let later = FhirReport { issued_at: at("2026-04-05T22:00:00Z"), ..one };
    let longer = FhirReport { head: Digest::of(b"another event"), ..one };
    let all = [written(&one, "en"), written(&later, "en"), written(&longer, "en"), written(&one, "es")];
    let names: BTreeSet<&str> =
        all.iter().filter_map(|bundle| bundle["identifier"]["value"].as_str()).collect();
    assert_eq!(names.len(), all.len());
}

#[test]
fn answers_are_those_of_the_days_with_their_own_offset() {
    let world = World::new();
    let bundle = written(&report(&world), "en");
    let answers = |code: &str| -> Vec<(String, u64)> {
        let read = |one: &&Value| {
            let moment = one["effectiveDateTime"].as_str().expect("a moment").to_string();
            (moment, one["valueQuantity"]["value"].as_u64().expect("a whole figure"))
        };
        coded(&bundle, code).iter().map(read).collect()
    };
    let wanted = [
        ("2026-03-16T00:30:12+01:00", 4),
        ("2026-03-16T00:41:55+01:00", 6),
        ("2026-03-17T08:15:40+01:00", 8),
        ("2026-04-05T23:59:59+02:00", 0),
    ];
    assert_eq!(answers("72514-3"), wanted.map(|(at, level)| (at.to_string(), level)));
    assert_eq!(answers("82289-0"), [("2026-03-16T00:45:00+01:00".to_string(), 6)]);
    for early_or_late in ["too early", "too late"] {
        assert!(!said(&bundle, "words").contains(early_or_late));
    }
}

#[test]
fn an_answer_says_where_what_kind_and_who_gave_it() {
    let world = World::new();
    let bundle = written(&report(&world), "en");
    let pain = coded(&bundle, "72514-3");
    let during = named(&pain, "Pain during");
    assert_eq!(during["bodySite"]["text"], "Knee");
    let notes: Vec<&Value> =
        during["note"].as_array().expect("notes").iter().map(|note| &note["text"]).collect();
    assert_eq!(notes, ["During: Heel slide", "Sharp or stabbing"]);
    assert!(during["performer"][0]["reference"].is_string());
    assert_eq!(named(&pain, "Pain the next morning")["performer"][0]["display"], "A helper at home");
    assert!(
        said(&bundle, "feeling").contains("<td>6</td><td>Knee; During: Heel slide; Sharp or stabbing</td>")
    );
    let seen = named(&resources(&bundle, "Observation"), "Distress");
    assert_eq!(
        (&seen["valueCodeableConcept"]["text"], &seen["code"]["coding"]),
        (&"Some".into(), &Value::Null)
    );
}

#[test]
fn what_is_done_adds_up_to_what_was_due() {
    let world = World::new();
    let bundle = written(&report(&world), "en");
    let all = resources(&bundle, "Observation");
    for (name, due) in [("Days, with breaks", 21), ("Days, without breaks", 18)] {
        let days = named(&all, name);
        let parts = ["whole", "part", "stopped-as-told", "no-record"].map(|id| part(days, id).as_u64());
        assert_eq!((part(days, "due"), parts.iter().flatten().sum::<u64>()), (&due.into(), due));
    }
    let slide = named(&all, "Heel slide");
    let ratio = ["numerator", "denominator"].map(|side| slide["valueRatio"][side]["value"].to_string());
    assert_eq!(ratio, ["4.9", "63"]);
    let parts = ["counted", "remembered", "beyond"].map(|id| part(slide, id).to_string());
    assert_eq!(parts, ["1.9", "3", "1"]);
    assert_eq!(slide["note"][0]["text"], "Left out: it hurt (1).");
    let pump = named(&all, "Foot up and down");
    assert_eq!(pump["valueRatio"], Value::Null, "nothing was prescribed");
    assert_eq!((part(pump, "offered"), part(pump, "as-needed")), (&126.into(), &1.into()));
}

#[test]
fn home_tests_carry_their_figures_and_what_the_table_says() {
    let world = World::new();
    let bundle = written(&report(&world), "en");
    let [with_arms] = coded(&bundle, "93125-3")[..] else { panic!("one test with the arms") };
    assert_eq!((&with_arms["valueQuantity"]["value"], &with_arms["device"]), (&6.into(), &Value::Null));
    assert!(with_arms["interpretation"][0]["text"].as_str().is_some_and(|said| said.contains("scores 0")));
    let [stands] = coded(&bundle, "66247-8")[..] else { panic!("one test without") };
    assert_eq!(
        (&stands["effectiveDateTime"], &stands["valueQuantity"]["value"]),
        (&"2026-03-27".into(), &9.into())
    );
    assert_eq!(stands["referenceRange"][0]["low"]["value"], 12);
    assert_eq!(stands["referenceRange"][1]["appliesTo"][0]["text"], "Women");
    let [walk] = coded(&bundle, "89423-8")[..] else { panic!("one walk") };
    assert_eq!(
        (&walk["valueQuantity"]["value"], &walk["valueQuantity"]["code"]),
        (&13.4.into(), &"s".into())
    );
    let balance = named(&resources(&bundle, "Observation"), "Four-stage balance");
    assert_eq!(part(balance, "tandem").to_string(), "6.5");
    assert_eq!(balance["component"][3]["dataAbsentReason"]["text"], "Not tried");
}

#[test]
fn flags_name_their_group_and_their_day() {
    let world = World::new();
    let bundle = written(&report(&world), "en");
    let flags = resources(&bundle, "Flag");
    let told: Vec<(&Value, &Value)> =
        flags.iter().map(|flag| (&flag["category"][0]["text"], &flag["period"]["start"])).collect();
    let ring = Value::from("Ring today");
    assert_eq!(told, [(&ring, &"2026-03-17".into()), (&ring, &"2026-03-18".into())]);
    assert!(said(&bundle, "flags").contains("<p>Ring today</p><ul><li>Tuesday 17 March 2026: pain 8"));
}

#[test]
fn words_are_escaped_and_what_xml_cannot_hold_is_gone() {
    let world = World::new();
    let words = written(&report(&world), "en");
    let words = said(&words, "words");
    for escaped in [
        "Stairs &lt; 5 &amp; \"still\" stiff ]]&gt; &lt;b&gt;ow&lt;/b&gt; 😀",
        "=visit &amp; cake",
        "May I drive again, &amp; when? &lt;soon&gt;",
    ] {
        assert!(words.contains(escaped), "{words}");
    }
    assert!(WORDS.contains('\u{7}') && !words.contains(['\u{7}', '\u{FFFE}']));
}

#[test]
fn nothing_in_it_is_empty_in_any_language() {
    let world = World::new();
    for lang in sendaluna_words::LANGUAGES {
        let bundle = written(&report(&world), lang);
        for one in within(&bundle) {
            let is_empty = match one {
                Value::Null => true,
                Value::String(text) => text.trim().is_empty() || text.starts_with("fhir-"),
                Value::Array(all) => all.is_empty(),
                Value::Object(fields) => fields.is_empty(),
                Value::Bool(_) | Value::Number(_) => false,
            };
            assert!(!is_empty, "{lang}: {bundle:#}");
        }
        assert_eq!(bundle["language"], *lang);
        assert!(said(&bundle, "codes").contains("LOINC® is a registered"), "{lang}");
    }
}

#[test]
fn a_report_of_nothing_is_whole_too_and_says_so() {
    let world = World::new();
    let measures = Measures { items: vec![], flags: vec![], tests: vec![], ..world.measures.clone() };
    let all = report(&world);
    let reported = Reported { events: &[], measures: &measures, asks: None, withheld: 2, ..all.reported };
    let nothing = FhirReport { reported, ..all };
    let bundle = written(&nothing, "en");
    assert!(said(&bundle, "words").contains("2 entries were kept back by the patient."));
    assert!(said(&bundle, "feeling").contains("Nobody answered about pain."));
    assert!(said(&bundle, "flags").contains("Nothing that needs a call or a talk."));
    assert_eq!(entries(&bundle).len(), 6, "the frame and the days");
}

#[test]
fn without_a_plan_there_is_no_document() {
    let world = World::new();
    let all = report(&world);
    let reported = Reported { periods: &[], ..all.reported };
    assert_eq!(document(&FhirReport { reported, ..all }, &Words::new(["en"])), None);
}
