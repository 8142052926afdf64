//! What is due, what is not yet, what was done, and whom to ring.

use sendaluna_bedside::BedsideError;
use sendaluna_bedside::front::contacts_of;
use sendaluna_bedside::hand::{Break, WhichDay};
use sendaluna_bedside::settings::Change;
use sendaluna_bedside::step::Way;
use sendaluna_bedside::types::Speaker;
use sendaluna_bedside::types::{By, CareId, ItemId, NotYet, SetBackKind, Tier};
use sendaluna_bedside::view::day::{ContactsView, DayView, GateView, ItemView, RuleView};
use serde_json::json;

use crate::answer::{Desk, Trouble, now};
use crate::args::{SetBack, StepWay};

/// `due`.
pub fn due(desk: &Desk) -> Result<u8, Trouble> {
    let day = desk.look()?.day(&desk.words, &now(desk))?;
    desk.answer(&day_text(desk, &day), &json!(day));
    Ok(0)
}

/// `gates`.
pub fn gates(desk: &Desk) -> Result<u8, Trouble> {
    let gates = desk.look()?.gates(&desk.words, &now(desk))?;
    let mut lines = gates.notices.clone();
    for item in &gates.items {
        lines.push(format!("{} ({}): {}", item.name, item.side, item.gate.said));
        lines.extend(reasons(&item.gate));
    }
    push_list(desk, &mut lines, "day-rules", gates.rules.iter().map(rule_line));
    push_list(desk, &mut lines, "day-lifts-ignored", gates.lifts_ignored.iter().cloned());
    desk.answer(&lines.join("\n"), &json!(gates));
    Ok(0)
}

/// `contacts`.
pub fn contacts(desk: &Desk) -> Result<u8, Trouble> {
    let in_record = desk.look().and_then(|home| Ok(home.contacts(&desk.words)?));
    // A record that is shut does not shut away whom to ring.
    let contacts = match in_record {
        Err(Trouble::Bedside(BedsideError::Store(error))) => {
            contacts_of(desk.folder()).ok_or(BedsideError::Store(error))?
        }
        contacts => contacts?,
    };
    desk.answer(&contacts_text(desk, &contacts), &json!(contacts));
    Ok(0)
}

/// `did`.
pub fn did(desk: &Desk, id: &str, yesterday: bool, sets: u8, each: u16) -> Result<u8, Trouble> {
    let day = if yesterday { WhichDay::Yesterday } else { WhichDay::Today };
    let mut home = desk.open()?;
    let known = home.known()?;
    let care = CareId::new(id).ok().filter(|id| known.plan.doc().care.iter().any(|care| care.id == *id));
    let written = match care {
        Some(care) => home.did_care(&care, day, By::Patient, &now(desk))?,
        None => home.did(&item_id(id)?, day, sets, each, By::Patient, &now(desk))?,
    };
    let view = written.view(&desk.words);
    let answer = json!({
        "written": true,
        "day": written.day,
        "from_memory": true,
        "against_gate": view.against,
        "said": view.said,
    });
    desk.answer(&view.said, &answer);
    Ok(0)
}

/// `stop-item`.
pub fn stop_item(desk: &Desk, id: &str, undo: bool) -> Result<u8, Trouble> {
    let id = item_id(id)?;
    let text = desk.open()?.stop_item(&id, undo, By::Patient, &desk.words, &now(desk))?.said;
    desk.answer(&text, &json!({ "item": id, "stopped": !undo }));
    Ok(0)
}

/// `step`.
pub fn step(desk: &Desk, way: StepWay, id: &str) -> Result<u8, Trouble> {
    let id = item_id(id)?;
    let to = match way {
        StepWay::Up => Way::Up,
        StepWay::Down => Way::Down,
    };
    let text = desk.open()?.step(&id, to, By::Patient, &desk.words, &now(desk))?.said;
    desk.answer(&text, &json!({ "item": id, "stepped": true, "said": text }));
    Ok(0)
}

/// `set-back`.
pub fn set_back(desk: &Desk, what: SetBack) -> Result<u8, Trouble> {
    let what = match what {
        SetBack::Fall => SetBackKind::Fall,
        SetBack::Readmission => SetBackKind::Readmission,
    };
    let text = desk.open()?.set_back_view(what, By::Patient, &desk.words, &now(desk))?.said;
    desk.answer(&text, &json!({ "set_back": true, "said": text }));
    Ok(0)
}

/// `break`.
pub fn declare_break(desk: &Desk, rest: Break) -> Result<u8, Trouble> {
    let text = desk.open()?.break_view(rest, By::Patient, &desk.words, &now(desk))?.said;
    desk.answer(&text, &json!({ "break": true, "said": text }));
    Ok(0)
}

/// `break --end`.
pub fn end_break(desk: &Desk) -> Result<u8, Trouble> {
    let text = desk.open()?.end_break_view(By::Patient, &desk.words, &now(desk))?.said;
    desk.answer(&text, &json!({ "break": false, "said": text }));
    Ok(0)
}

/// `spoke`.
pub fn spoke(desk: &Desk) -> Result<u8, Trouble> {
    let text = desk.open()?.spoke_view(By::Patient, &desk.words, &now(desk))?.said;
    desk.answer(&text, &json!({ "spoke": true }));
    Ok(0)
}

/// `settings`.
pub fn settings(desk: &Desk, language: Option<&str>, awake: Option<(u16, u16)>) -> Result<u8, Trouble> {
    if language.is_some() || awake.is_some() {
        desk.open()?.change_settings(&Change {
            language: language.map(str::to_string),
            awake_from_min: awake.map(|(from, _)| from),
            awake_to_min: awake.map(|(_, to)| to),
            ..Change::default()
        })?;
    }
    let home = desk.look()?;
    let settings = home.settings()?;
    let time = |min: u16| format!("{:02}:{:02}", min / 60, min % 60);
    let waking = settings.waking;
    let language = settings.language.unwrap_or_else(|| desk.words.lang().to_string());
    let args = [
        ("lang", language.as_str().into()),
        ("from", time(waking.from_min).into()),
        ("to", time(waking.to_min).into()),
    ];
    let json =
        json!({ "language": language, "awake_from": time(waking.from_min), "awake_to": time(waking.to_min) });
    desk.answer(&desk.say("settings-now", &args), &json);
    Ok(0)
}

/// Why something is not allowed yet.
pub fn reasons_said(desk: &Desk, not_yet: &NotYet) -> Result<Vec<String>, Trouble> {
    let home = desk.look()?;
    let known = home.known()?;
    let speaker = Speaker::new(&desk.words, Some(&known.plan));
    Ok(not_yet.reasons.iter().map(|reason| speaker.reason(reason)).collect())
}

/// An item's id, as typed.
pub fn item_id(text: &str) -> Result<ItemId, Trouble> {
    ItemId::new(text).map_err(|_| BedsideError::NoSuchItem(text.to_string()).into())
}

fn day_text(desk: &Desk, day: &DayView) -> String {
    let mut lines = vec![day.date_said.clone()];
    lines.extend(day.weeks.iter().cloned());
    lines.extend(day.notices.iter().cloned());
    lines.push(day.now.said.clone());
    lines.extend(day.due.iter().flat_map(|item| item_lines(desk, item)));
    if day.can_go_on {
        lines.push(desk.say("day-can-go-on", &[]));
    }
    let not_yet = day.not_yet.iter().flat_map(|item| {
        std::iter::once(format!("{} [{}] ({}): {}", item.name, item.item, item.side, item.gate.said))
            .chain(reasons(&item.gate))
    });
    push_list(desk, &mut lines, "day-not-yet", not_yet);
    let tests = day.tests.iter().map(crate::home_test::line);
    push_list(desk, &mut lines, "test-day", tests);
    let care =
        day.care.iter().map(|care| format!("{} [{}] ({}/{})", care.text, care.care, care.done, care.times));
    push_list(desk, &mut lines, "day-care", care);
    push_list(desk, &mut lines, "day-rules", day.rules.iter().map(rule_line));
    push_list(desk, &mut lines, "day-lifts-ignored", day.lifts_ignored.iter().cloned());
    lines.push(String::new());
    lines.push(contacts_text(desk, &day.contacts));
    lines.join("\n")
}

fn item_lines(desk: &Desk, item: &ItemView) -> Vec<String> {
    let mut lines = vec![
        format!("  {} [{}] ({}). {}", item.name, item.item, item.side, item.times_said),
        format!("    {}", item.dose),
    ];
    lines.extend(item.note.iter().map(|note| format!("    {note}")));
    if let Some(step) = &item.step {
        lines.push(format!("    {}", step.said));
        let how = || desk.say("steps-how-up", &[("item", item.item.as_str().into())]);
        lines.extend(step.up.iter().map(|up| format!("    {up} {}", how())));
    }
    lines
}

fn reasons(gate: &GateView) -> Vec<String> {
    gate.reasons.iter().map(|reason| format!("    {}", reason.said)).collect()
}

fn rule_line(rule: &RuleView) -> String {
    format!("{} {} {}", rule.text, rule.until_said, rule.set_by_said)
}

fn push_list(desk: &Desk, lines: &mut Vec<String>, title: &str, list: impl Iterator<Item = String>) {
    let list: Vec<_> = list.map(|line| format!("  {line}")).collect();
    if !list.is_empty() {
        lines.push(String::new());
        lines.push(desk.say(title, &[]));
        lines.extend(list);
    }
}

/// Whom to ring, and when to stop.
pub fn contacts_text(desk: &Desk, contacts: &ContactsView) -> String {
    let phone = |id: &str| {
        desk.say(
            id,
            &[
                ("clinic", contacts.clinic.as_str().into()),
                ("phone", contacts.phone.as_str().into()),
                ("night", contacts.out_of_hours_phone.as_str().into()),
                ("emergency", contacts.emergency_phone.as_str().into()),
            ],
        )
    };
    let mut lines = vec![phone("ring-clinic"), phone("ring-out-of-hours"), phone("ring-emergency")];
    lines.push(contacts.emergency_advice.clone());
    for (tier, title) in [
        (Tier::Emergency, "signs-emergency"),
        (Tier::RingToday, "signs-ring-today"),
        (Tier::Note, "signs-note"),
    ] {
        let signs = contacts.signs.iter().filter(|sign| sign.tier == tier);
        push_list(desk, &mut lines, title, signs.map(|sign| format!("{} [{}]", sign.text, sign.sign)));
    }
    lines.push(String::new());
    lines.extend(contacts.cautions.iter().cloned());
    lines.join("\n")
}
