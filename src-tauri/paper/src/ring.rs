//! When to stop, and whom to ring, as every page says it.

use sendaluna_core::plan::Plan;
use sendaluna_core::plan::doc::Tier;
use sendaluna_say::Speaker;
use serde::Serialize;

/// Warning signs of one tier.
#[derive(Debug, Serialize)]
pub(crate) struct OfTier {
    pub tier: &'static str,
    pub title: String,
    pub signs: Vec<String>,
}

/// Warning signs, the gravest first.
pub(crate) fn signs(speaker: &Speaker<'_>, plan: &Plan) -> Vec<OfTier> {
    let signs = speaker.signs(plan);
    let phone = plan.doc().clinic.emergency_phone.as_str();
    let of = |tier: Tier, name: &'static str, id: &str| {
        let these = signs.iter().filter(|sign| sign.tier == tier);
        let signs: Vec<String> = these.map(|sign| apart(speaker, &sign.text)).collect();
        let title = speaker.words.say(id, &[("phone", phone.into())]);
        (!signs.is_empty()).then_some(OfTier { tier: name, title, signs })
    };
    [
        of(Tier::Emergency, "emergency", "sheet-stop-emergency"),
        of(Tier::RingToday, "ring-today", "sheet-stop-ring"),
        of(Tier::Note, "note", "sheet-stop-note"),
    ]
    .into_iter()
    .flatten()
    .collect()
}

/// Whom, and which number.
pub(crate) fn whom(speaker: &Speaker<'_>, plan: &Plan) -> Vec<(String, String)> {
    let say = |id: &str| speaker.words.say(id, &[]);
    let clinic = &plan.doc().clinic;
    let by_day = [clinic.name.clone(), say("sheet-whom-day")].join(&say("list-comma"));
    vec![
        (by_day, clinic.phone.clone()),
        (say("sheet-whom-night"), clinic.out_of_hours_phone.clone()),
        (say("sheet-whom-emergency"), clinic.emergency_phone.clone()),
    ]
}

/// A text of the clinic's that may be in another language: its full stop stays at its own end.
fn apart(speaker: &Speaker<'_>, text: &str) -> String {
    if speaker.words.is_right_to_left() { format!("\u{2068}{text}\u{2069}") } else { text.to_string() }
}
