//! Every way in which a plan document can be wrong.

use std::collections::BTreeSet;

use crate::bounds;
use crate::ids::{EpisodeId, ItemId};
use crate::plan::FORMAT;
use crate::plan::doc::{
    CareItem, Dose, Episode, Graded, Grows, Head, HomeTest, Item, Load, OwnMovement, PainRule, PlanDoc,
    Stage, Tier, When,
};
use crate::problem::{Problem, Problems};
use crate::text::{Lang, Text};

/// Problems of a document, whether or not the clinic's program has filled it yet.
pub fn problems(doc: &PlanDoc) -> Vec<Problem> {
    let mut p = Problems::default();
    let langs = &doc.head.languages;
    if doc.format != FORMAT {
        p.add("format", "other-format", vec![]);
    }
    p.within("head", |p| check_head(p, &doc.head));
    p.within("clinic", |p| check_contacts(p, doc));
    check_lists(&mut p, doc);
    p.each("episodes", &doc.episodes, |p, e: &Episode| check_text(p, "name", &e.name, langs));
    p.each("stages", &doc.stages, |p, stage| check_stage(p, doc, stage));
    p.each("items", &doc.items, |p, item| check_item(p, doc, item));
    p.each("care", &doc.care, |p, care| check_care(p, doc, care));
    p.within("pain", |p| check_pain(p, &doc.pain));
    check_signs(&mut p, doc);
    p.within("return_dose", |p| check_return(p, doc));
    p.each("home_tests", &doc.home_tests, |p, test| check_test(p, doc, test));
    p.each("movements", &doc.movements, |p, own| check_own(p, langs, own));
    p.into_found()
}

/// Problems of a document that was signed: what the clinic's program fills must be there.
pub fn problems_unfilled(doc: &PlanDoc) -> Vec<Problem> {
    let mut p = Problems::default();
    let mut needs = |field: &str, there: bool| {
        if !there {
            p.add(field, "missing", vec![]);
        }
    };
    needs("head.issued_at", doc.head.issued_at.is_some());
    needs("head.least_signers", doc.head.least_signers.is_some());
    needs("statements", !doc.statements.is_empty());
    needs("reply_secret", doc.reply_secret.is_some());
    for (i, item) in doc.items.iter().enumerate() {
        needs(&format!("items[{i}].facts"), item.facts.is_some());
        let easier_has_facts = item.easier.as_ref().is_none_or(|easier| easier.facts.is_some());
        needs(&format!("items[{i}].easier.facts"), easier_has_facts);
    }
    p.into_found()
}

/// Checks that ids in a list differ.
pub fn unique<T, I: Ord + ToString>(p: &mut Problems, name: &str, list: &[T], id: impl Fn(&T) -> &I) {
    let mut seen = BTreeSet::new();
    for (i, entry) in list.iter().enumerate() {
        if !seen.insert(id(entry)) {
            p.add(&format!("{name}[{i}]"), "repeated-id", vec![("id", id(entry).to_string())]);
        }
    }
}

/// Checks a text by language: there in each of the languages, not empty, not too long, nothing hidden.
pub fn check_text(p: &mut Problems, field: &str, text: &Text, langs: &[Lang]) {
    for lang in langs.iter().filter(|lang| !text.has(lang)) {
        p.add(field, "language-missing", vec![("lang", lang.to_string())]);
    }
    if text.iter().next().is_none() {
        p.add(field, "empty-text", vec![]);
    }
    for (lang, words) in text.iter() {
        p.words(&format!("{field}.{lang}"), words);
    }
}

fn check_head(p: &mut Problems, head: &Head) {
    p.line("called", &head.called);
    if let Some(reference) = &head.reference {
        p.line("reference", reference);
    }
    p.line("zone", &head.zone);
    p.bound("born", &bounds::BORN, head.born);
    p.bound_opt("height_cm", &bounds::HEIGHT_CM, head.height_cm);
    p.bound_opt("mass_kg", &bounds::MASS_KG, head.mass_kg);
    p.bound("revision", &bounds::REVISION, head.revision);
    if head.languages.is_empty() {
        p.add("languages", "missing", vec![]);
    }
    unique(p, "languages", &head.languages, |lang| lang);
}

fn check_contacts(p: &mut Problems, doc: &PlanDoc) {
    let clinic = &doc.clinic;
    for (field, words) in [
        ("name", &clinic.name),
        ("phone", &clinic.phone),
        ("out_of_hours_phone", &clinic.out_of_hours_phone),
        ("emergency_phone", &clinic.emergency_phone),
    ] {
        p.line(field, words);
        if field != "name" && !words.chars().any(|c| c.is_ascii_digit()) {
            p.add(field, "not-a-number", vec![]);
        }
    }
    check_text(p, "emergency_advice", &clinic.emergency_advice, &doc.head.languages);
}

fn check_lists(p: &mut Problems, doc: &PlanDoc) {
    for (field, empty) in [
        ("episodes", doc.episodes.is_empty()),
        ("stages", doc.stages.is_empty()),
        ("items", doc.items.is_empty()),
    ] {
        if empty {
            p.add(field, "missing", vec![]);
        }
    }
    unique(p, "episodes", &doc.episodes, |e| &e.id);
    unique(p, "stages", &doc.stages, |s| &s.id);
    unique(p, "items", &doc.items, |i| &i.id);
    unique(p, "care", &doc.care, |c| &c.id);
    unique(p, "warning_signs", &doc.warning_signs, |s| &s.id);
    unique(p, "home_tests", &doc.home_tests, |t| &t.id);
    unique(p, "movements", &doc.movements, |m| &m.movement.id);
    unique(p, "statements", &doc.statements, |digest| digest);
    if doc.first_day().is_some_and(|first| doc.head.review_by < first) {
        p.add("head.review_by", "dates-reversed", vec![]);
    }
    if let Some(first) = doc.first_day() {
        let days = (doc.head.last_day - first).num_days() + 1;
        if days < 1 {
            p.add("head.last_day", "dates-reversed", vec![]);
        } else {
            p.bound("head.last_day", &bounds::PLAN_DAYS, days);
        }
    }
}

fn check_weeks(p: &mut Problems, from: u16, through: u16) {
    p.bound("from_week", &bounds::WEEK, from);
    p.bound("through_week", &bounds::WEEK, through);
    if from > through {
        p.add("through_week", "weeks-reversed", vec![]);
    }
}

fn check_episode(p: &mut Problems, doc: &PlanDoc, id: &EpisodeId) {
    if !doc.episodes.iter().any(|e| e.id == *id) {
        p.add("episode", "unknown-id", vec![("id", id.to_string())]);
    }
}

fn check_item_id(p: &mut Problems, doc: &PlanDoc, field: &str, id: &ItemId) {
    if !doc.items.iter().any(|item| item.id == *id) {
        p.add(field, "unknown-id", vec![("id", id.to_string())]);
    }
}

fn check_stage(p: &mut Problems, doc: &PlanDoc, stage: &Stage) {
    check_episode(p, doc, &stage.episode);
    check_text(p, "name", &stage.name, &doc.head.languages);
    check_weeks(p, stage.from_week, stage.through_week);
    if stage.items.is_empty() {
        p.add("items", "missing", vec![]);
    }
    unique(p, "items", &stage.items, |entry| &entry.item);
    p.each("items", &stage.items, |p, entry| {
        check_item_id(p, doc, "item", &entry.item);
        if let Some(dose) = &entry.dose {
            p.within("dose", |p| check_dose(p, doc, dose));
        }
        if let Some(when) = &entry.when {
            p.within("when", |p| check_when(p, when));
        }
    });
    p.each("rounds", &stage.rounds, |p, round| {
        p.bound("rounds", &bounds::ROUNDS, round.rounds);
        p.bound("rest_s", &bounds::REST_S, round.rest_s);
        if round.items.len() < 2 {
            p.add("items", "no-conditions", vec![]);
        }
        unique(p, "items", &round.items, |id| id);
        for (i, id) in round.items.iter().enumerate() {
            if !stage.items.iter().any(|entry| entry.item == *id) {
                p.add(&format!("items[{i}]"), "unknown-id", vec![("id", id.to_string())]);
            }
        }
    });
}

fn check_item(p: &mut Problems, doc: &PlanDoc, item: &Item) {
    check_episode(p, doc, &item.episode);
    if let Some(note) = &item.note {
        check_text(p, "note", note, &doc.head.languages);
    }
    p.within("dose", |p| check_dose(p, doc, &item.dose));
    p.within("when", |p| check_when(p, &item.when));
    if let Some(ramp) = &item.ramp {
        p.within("ramp", |p| {
            p.bound("every_days", &bounds::EVERY_DAYS, ramp.every_days);
            let (bound, given) = match ramp.grows {
                Grows::Sets => (bounds::SETS, true),
                Grows::Repetitions => (bounds::REPETITIONS, item.dose.repetitions.is_some()),
                Grows::HoldS => (bounds::HOLD_S, item.dose.tempo.is_some()),
                Grows::Minutes => (bounds::MINUTES, item.dose.minutes.is_some()),
            };
            if !given {
                p.add("grows", "missing", vec![]);
            }
            p.bound("start", &bound, ramp.start);
            p.bound("cap", &bound, ramp.cap);
            p.bound("step", &bounds::Bound { least: 1.0, ..bound }, ramp.step);
            if ramp.start > ramp.cap {
                p.add("cap", "counts-reversed", vec![]);
            }
        });
    }
    if let Some(graded) = &item.graded {
        p.within("graded", |p| check_graded(p, doc, graded));
    }
}

fn check_graded(p: &mut Problems, doc: &PlanDoc, graded: &Graded) {
    if graded.doses.len() < 2 {
        p.add("doses", "no-conditions", vec![]);
    }
    p.each("doses", &graded.doses, |p, dose| check_dose(p, doc, dose));
    if graded.start == 0 || usize::from(graded.start) > graded.doses.len() {
        p.add("start", "unknown-id", vec![("id", graded.start.to_string())]);
    }
    p.bound("up_after_sessions", &bounds::SESSIONS, graded.up_after_sessions);
    p.bound("up_pain_at_most", &bounds::PAIN, graded.up_pain_at_most);
    p.bound_opt("up_effort_at_most", &bounds::EFFORT, graded.up_effort_at_most);
    p.bound("down_pain_over", &bounds::PAIN, graded.down_pain_over);
    if graded.up_pain_at_most > graded.down_pain_over {
        p.add("down_pain_over", "pain-order", vec![]);
    }
}

fn check_dose(p: &mut Problems, doc: &PlanDoc, dose: &Dose) {
    let given =
        [dose.repetitions.is_some(), dose.breaths.is_some(), dose.minutes.is_some(), dose.steps.is_some()];
    if given.iter().filter(|given| **given).count() != 1 {
        p.add("", "one-amount", vec![]);
    }
    p.bound("sets", &bounds::SETS, dose.sets);
    p.bound("rest_s", &bounds::REST_S, dose.rest_s);
    p.bound_opt("breaths", &bounds::BREATHS, dose.breaths);
    p.bound_opt("minutes", &bounds::MINUTES, dose.minutes);
    if let Some(range) = dose.repetitions.map(super::doc::Count::range) {
        p.bound("repetitions", &bounds::REPETITIONS, range.least);
        p.bound("repetitions", &bounds::REPETITIONS, range.most);
        if range.least > range.most {
            p.add("repetitions", "counts-reversed", vec![]);
        }
    }
    if let Some(steps) = &dose.steps {
        p.bound("steps.steps", &bounds::STEPS, steps.steps);
        check_text(p, "steps.aid", &steps.aid, &doc.head.languages);
    }
    match &dose.tempo {
        Some(tempo) => {
            p.bound("tempo.out_s", &bounds::OUT_S, tempo.out_s);
            p.bound("tempo.hold_s", &bounds::HOLD_S, tempo.hold_s);
            p.bound("tempo.back_s", &bounds::BACK_S, tempo.back_s);
            p.bound("tempo.pause_s", &bounds::PAUSE_S, tempo.pause_s);
        }
        None if dose.repetitions.is_some() || dose.breaths.is_some() => {
            p.add("tempo", "tempo-missing", vec![]);
        }
        None => {}
    }
    match &dose.load {
        Some(Load::Weight { load_kg }) => p.bound("load.load_kg", &bounds::LOAD_KG, *load_kg),
        Some(Load::Band { name }) => check_text(p, "load.name", name, &doc.head.languages),
        None => {}
    }
}

fn check_when(p: &mut Problems, when: &When) {
    match when {
        When::TimesADay { times, least_hours_between } => {
            p.bound("times", &bounds::TIMES, *times);
            p.bound("least_hours_between", &bounds::LEAST_HOURS, *least_hours_between);
        }
        When::EveryWakingHours { hours } => p.bound("hours", &bounds::HOURS, *hours),
        When::Weekdays { days, times } => {
            p.bound("times", &bounds::TIMES, *times);
            if days.is_empty() {
                p.add("days", "missing", vec![]);
            }
            if days.iter().collect::<BTreeSet<_>>().len() != days.len() {
                p.add("days", "repeated-day", vec![]);
            }
        }
        When::DaysAWeek { days, times } => {
            p.bound("times", &bounds::TIMES, *times);
            p.bound("days", &bounds::DAYS_A_WEEK, *days);
        }
        When::AsNeeded { daily_most } => p.bound("daily_most", &bounds::DAILY_MOST, *daily_most),
    }
}

fn check_care(p: &mut Problems, doc: &PlanDoc, care: &CareItem) {
    check_episode(p, doc, &care.episode);
    check_text(p, "text", &care.text, &doc.head.languages);
    p.bound("times", &bounds::TIMES, care.times);
    check_weeks(p, care.from_week, care.through_week);
}

fn check_pain(p: &mut Problems, pain: &PainRule) {
    let levels = [
        ("slow_at", pain.slow_at),
        ("easier_at", pain.easier_at),
        ("stop_exercise_at", pain.stop_exercise_at),
        ("stop_today_at", pain.stop_today_at),
    ];
    for (field, level) in levels.into_iter().chain([
        ("rest_stop_today_at", pain.rest_stop_today_at),
        ("rise_stop_exercise", pain.rise_stop_exercise),
        ("next_morning_rise", pain.next_morning_rise),
    ]) {
        p.bound(field, &bounds::Bound { least: 1.0, ..bounds::PAIN }, level);
    }
    for pair in levels.windows(2) {
        if pair[0].1 > pair[1].1 {
            p.add(pair[1].0, "pain-order", vec![]);
        }
    }
    p.bound("settle_minutes", &bounds::SETTLE_MINUTES, pain.settle_minutes);
}

fn check_signs(p: &mut Problems, doc: &PlanDoc) {
    p.each("warning_signs", &doc.warning_signs, |p, sign| {
        check_text(p, "text", &sign.text, &doc.head.languages);
    });
    if doc.warning_signs.is_empty() {
        p.add("warning_signs", "no-warning-signs", vec![]);
    } else if !doc.warning_signs.iter().any(|sign| sign.tier == Tier::Emergency) {
        p.add("warning_signs", "no-emergency-sign", vec![]);
    }
}

fn check_return(p: &mut Problems, doc: &PlanDoc) {
    let rule = &doc.return_dose;
    p.bound("after_days", &bounds::AFTER_DAYS, rule.after_days);
    p.bound("ring_after_days", &bounds::AFTER_DAYS, rule.ring_after_days);
    if rule.after_days > rule.ring_after_days {
        p.add("ring_after_days", "counts-reversed", vec![]);
    }
    unique(p, "doses", &rule.doses, |restart| &restart.item);
    p.each("doses", &rule.doses, |p, restart| {
        check_item_id(p, doc, "item", &restart.item);
        p.within("dose", |p| check_dose(p, doc, &restart.dose));
    });
}

fn check_test(p: &mut Problems, doc: &PlanDoc, test: &HomeTest) {
    check_episode(p, doc, &test.episode);
    p.bound("from_week", &bounds::WEEK, test.from_week);
    p.bound("every_weeks", &bounds::WEEK, test.every_weeks);
}

fn check_own(p: &mut Problems, langs: &[Lang], own: &OwnMovement) {
    check_text(p, "name", &own.name, langs);
    check_text(p, "set_up", &own.set_up, langs);
    check_text(p, "how", &own.how, langs);
    check_text(p, "faults", &own.faults, langs);
    if let Some(feel) = &own.feel {
        check_text(p, "feel", feel, langs);
    }
}
