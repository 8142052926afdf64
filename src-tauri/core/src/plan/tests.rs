use super::*;
use crate::sample;

/// A change to the sample, and the one problem it should raise.
fn problem_of(change: impl FnOnce(&mut PlanDoc)) -> Vec<(&'static str, String)> {
    let mut doc = sample::doc();
    change(&mut doc);
    problems(&doc).into_iter().map(|p| (p.code, p.place)).collect()
}

#[test]
fn the_sample_has_no_problem() {
    assert_eq!(problem_of(|_| {}), []);
}

#[test]
fn each_fault_is_found_at_its_place() {
    let one = |code, place: &str| vec![(code, place.to_string())];
    assert_eq!(problem_of(|d| d.head.height_cm = Some(99)), one("out-of-bounds", "head.height_cm"));
    assert_eq!(problem_of(|d| d.items[1].dose.sets = 0), one("out-of-bounds", "items[1].dose.sets"));
    assert_eq!(problem_of(|d| d.items[1].dose.minutes = Some(3)), one("one-amount", "items[1].dose"));
    assert_eq!(problem_of(|d| d.items[1].dose.tempo = None), one("tempo-missing", "items[1].dose.tempo"));
    assert_eq!(
        problem_of(|d| d.stages[0].through_week = 0),
        vec![
            ("out-of-bounds", "stages[0].through_week".to_string()),
            ("weeks-reversed", "stages[0].through_week".to_string()),
        ]
    );
    assert_eq!(
        problem_of(|d| d.items[2].id = d.items[1].id.clone()),
        vec![("repeated-id", "items[2]".to_string()), ("unknown-id", "stages[0].items[2].item".to_string()),]
    );
    assert_eq!(problem_of(|d| d.pain.easier_at = 3), one("pain-order", "pain.easier_at"));
    assert_eq!(problem_of(|d| d.pain.stop_today_at = 11), one("out-of-bounds", "pain.stop_today_at"));
    assert_eq!(problem_of(|d| d.warning_signs.clear()), one("no-warning-signs", "warning_signs"));
    assert_eq!(
        problem_of(|d| d.warning_signs[0].tier = doc::Tier::Note),
        one("no-emergency-sign", "warning_signs")
    );
    assert_eq!(
        problem_of(|d| d.clinic.emergency_advice = sample::words("a\u{202E}b")),
        one("hidden-characters", "clinic.emergency_advice.en")
    );
    assert_eq!(problem_of(|d| d.head.called = "  ".into()), one("empty-text", "head.called"));
    assert_eq!(problem_of(|d| d.head.called = "A\nRing 999".into()), one("hidden-characters", "head.called"));
    assert_eq!(problem_of(|d| d.clinic.phone = "ask the desk".into()), one("not-a-number", "clinic.phone"));
    assert_eq!(problem_of(|d| d.format = 2), one("other-format", "format"));
    assert_eq!(problem_of(|d| d.stages[0].items.clear()), one("missing", "stages[0].items"));
    let before = sample::date("2026-03-01");
    assert_eq!(problem_of(|d| d.head.review_by = before), one("dates-reversed", "head.review_by"));
    assert_eq!(
        problem_of(|d| d.head.last_day = sample::date("2026-03-01")),
        one("dates-reversed", "head.last_day")
    );
    let spanish = || crate::text::Lang::new("es").expect("a tag");
    assert!(problem_of(|d| d.head.languages.push(spanish())).iter().all(|p| p.0 == "language-missing"));
}

#[test]
fn all_problems_are_reported_at_once() {
    let found = problem_of(|d| {
        d.head.born = 1800;
        d.items[0].dose.rest_s = 9_999;
        d.return_dose.ring_after_days = 3;
    });
    assert_eq!(found.len(), 3, "{found:?}");
}

#[test]
fn a_document_that_was_not_filled_is_no_plan() {
    let problems = Plan::new(sample::doc()).expect_err("not filled");
    assert!(problems.iter().all(|p| p.code == "missing"));
    assert!(problems.iter().any(|p| p.place == "items[1].easier.facts"));
    assert!(problems.iter().any(|p| p.place == "head.issued_at"));
}

#[test]
fn writing_and_reading_a_plan_gives_the_same_bytes() {
    let plan = sample::plan();
    let bytes = serde_json::to_vec(plan.doc()).expect("plain data");
    let again: PlanDoc = serde_json::from_slice(&bytes).expect("the same form");
    assert_eq!(&again, plan.doc());
    assert_eq!(serde_json::to_vec(&again).expect("plain data"), bytes);
}

#[test]
fn an_unknown_field_is_never_passed_over() {
    let mut value = serde_json::to_value(sample::plan().doc()).expect("plain data");
    value["items"][0]["dose"]["novel"] = 1.into();
    let error = serde_json::from_value::<PlanDoc>(value).expect_err("closed");
    assert!(error.to_string().contains("unknown field"));
}
