//! The record as CSV (RFC 4180): a line an event, for whoever wants to read it without a program.

use sendaluna_core::home_test::TestResult;
use sendaluna_core::record::{Body, Event};

const HEADER: &str = "date,time,what,item,set,done,of,level,words";

/// The table; the patient's words are in it or not.
pub fn table(events: &[Event], with_words: bool) -> String {
    let mut lines = format!("{HEADER}\r\n");
    for event in events {
        let fields = fields(event, with_words).map(|field| quoted(&field));
        lines.push_str(&fields.join(","));
        lines.push_str("\r\n");
    }
    lines
}

fn fields(event: &Event, with_words: bool) -> [String; 9] {
    let local = event.stamp.at.naive_utc() + chrono::Duration::seconds(event.stamp.offset_s.into());
    let (date, time) = (local.date().to_string(), local.time().format("%H:%M").to_string());
    let kind = serde_json::to_value(&event.body).unwrap_or_default();
    let what = kind.get("kind").and_then(serde_json::Value::as_str).unwrap_or_default().to_string();
    let [mut item, mut set, mut done, mut of, mut level, mut words] = std::array::from_fn(|_| String::new());
    match &event.body {
        Body::SetDone { record, .. } => {
            item = record.set.item.to_string();
            (set, done, of) = (record.set.set.to_string(), record.done.to_string(), record.of.to_string());
        }
        Body::SetCorrected { set: corrected, done: now, .. } => {
            item = corrected.item.to_string();
            (set, done) = (corrected.set.to_string(), now.to_string());
        }
        Body::DoneByHand { item: id, sets, each, .. } => {
            (item, set, done) = (id.to_string(), sets.to_string(), each.to_string());
        }
        Body::HomeTestDone { test, result, .. } => {
            item = test.to_string();
            (done, of) = figures(result);
        }
        Body::ItemLeft { item: id, .. }
        | Body::ItemEasier { item: id, .. }
        | Body::Tightened { item: id }
        | Body::TighteningEnded { item: id }
        | Body::StepKept { item: id, .. } => item = id.to_string(),
        Body::DoseStepped { item: id, to, .. } => (item, level) = (id.to_string(), to.to_string()),
        Body::PainAnswered { pain, .. } => {
            item = pain.item.as_ref().map(ToString::to_string).unwrap_or_default();
            level = pain.level.map(|level| level.to_string()).unwrap_or_default();
        }
        Body::SessionEnded { effort, words: said, .. } => {
            level = effort.map(|effort| effort.to_string()).unwrap_or_default();
            words = said.clone().filter(|_| with_words).unwrap_or_default();
        }
        Body::BreakDeclared { words: said, .. } => {
            words = said.clone().filter(|_| with_words).unwrap_or_default();
        }
        _ => {}
    }
    [date, time, what, item, set, done, of, level, words]
}

/// A home test's figures, and in what they are counted.
fn figures(result: &TestResult) -> (String, String) {
    let seconds = |tenths: u16| format!("{}.{}", tenths / 10, tenths % 10);
    match result {
        TestResult::ChairStand { stands, arms_used: false } => (stands.to_string(), "stands".into()),
        TestResult::ChairStand { stands, arms_used: true } => (stands.to_string(), "stands with arms".into()),
        TestResult::TimedUpAndGo { tenths_s } => (seconds(*tenths_s), "s".into()),
        TestResult::FourStageBalance { held_tenths_s } => {
            let held: Vec<String> = held_tenths_s.iter().map(|(_, held)| seconds(held.into())).collect();
            (held.join(" "), "s".into())
        }
    }
}

/// Quoted where it must be. What a spreadsheet would take for a formula is made words by an apostrophe.
fn quoted(field: &str) -> String {
    let field = match field.chars().next() {
        Some('=' | '+' | '-' | '@' | '\t' | '\r') => format!("'{field}"),
        _ => field.to_string(),
    };
    if field.contains([',', '"', '\n', '\r']) { format!("\"{}\"", field.replace('"', "\"\"")) } else { field }
}

#[cfg(test)]
mod tests {
    use super::quoted;

    #[test]
    fn fields_are_quoted_where_they_must_be() {
        for (field, written) in [
            ("plain", "plain"),
            ("a, b", "\"a, b\""),
            ("she said \"no\"", "\"she said \"\"no\"\"\""),
            ("two\nlines", "\"two\nlines\""),
            ("=1+1", "'=1+1"),
            ("", ""),
        ] {
            assert_eq!(quoted(field), written);
        }
    }
}
